"""
Compiled part of hubwright.
"""

from _typeshed import SupportsGetItem
from datetime import date
from hubwright._typing import MeasuredLike, Names, PlainLike, QuantitiesLike, QuantityLike, RatioLike, Scalar, SpanLike, TaperLike, ThreadLike, WantedLike
from hubwright.words import Abrasive, Along, Answer, BlotterNeed, Bond, Carries, Fastening, Feature, Filler, FitBasis, FitKind, FlangeKind, FlankBow, GapOutcome, GrindKind, GuardBand, KeyFit, KeyStandard, LargeEnd, MachineKind, MarkingSays, Material, Metal, MoveTool, NamingOutcome, NutLock, Outcome, Print, Restriction, Rotation, Ruling, Running, Shape, SizeOutcome, Spread, ThreadHand, Toward
from os import PathLike
from pathlib import Path
from typing import Any, Final, SupportsIndex, final

__all__ = ["__version__", "AngleGrade", "AngleTolerance", "ArrowColumn", "ArrowTable", "At20", "Balance", "BalanceWeights", "BlockStack", "Blotter", "BlotterLimits", "Boring", "BrazedKey", "Budget", "Centring", "Chances", "Checked", "ConeFit", "Counts", "CriticalSpeed", "Decision", "Dish", "Division", "Dressing", "DrillStep", "Elastic", "ElasticLimit", "Expansion", "Finding", "Fit", "Flange", "FlangeLimits", "Fragment", "Grain", "Ground", "HeavySpot", "Held", "HeldBy", "Hole", "HoleCircle", "HoleLimits", "Hub", "Influence", "InfluenceCoefficient", "Interface", "Jacked", "Judgement", "Key", "KeySize", "KeyStock", "KeyStrength", "KeyTrim", "KeyWidths", "Keyway", "Limit", "Limits", "Machine", "Marking", "MeasuredCone", "Mounting", "Nut", "OverRollers", "Piece", "PinSpanner", "Point", "PressFit", "Pressed", "PrintExpected", "PrintRead", "Problem", "Published", "PublishedGap", "Pushed", "RankedFit", "Ring", "RingFound", "RingSlices", "RoundNut", "Row", "Rows", "Rule", "RunOut", "Seat", "SeatFound", "SharedBalance", "SineBar", "SlideCorrection", "SlideSetting", "Source", "SpeedForRim", "Spindle", "StabiliserDisc", "Stabilisers", "StandOff", "Step", "Strength", "Stub", "SuperabrasiveLimits", "Tailstock", "TapDrill", "Taper", "TaperCandidate", "TaperNaming", "ThinWheel", "Thread", "ThreadLimits", "ThreeWires", "Tightened", "TiltRunOut", "ToolHeight", "TrialRuns", "Truing", "TwoBalls", "TwoDiameters", "UnbalanceSum", "UnbalanceVector", "Unknown", "Unscrewing", "Verdict", "Wear", "Wheel", "WheelRings", "Working", "WornSpeed", "at_20_c", "balance", "balance_grades", "block_stack", "blotter_limits", "boring", "brazed_key", "budget", "centre_slot", "chances", "check", "check_file", "check_report_name", "check_rows", "chord_height", "compare_holding", "cone_fit", "correct_slide", "creep_stroke", "decide", "deviation_by_formula", "disk_distance", "disk_taper", "dividing", "dress", "elastic_limit", "field_list", "finest_grade", "fit", "fits_for", "fitted_roughness", "flange_limits", "friction_ranges", "grade_by_formula", "grind", "grinding_ranges", "grinding_ratio", "hand_force", "holding", "hole_circle", "hole_limits", "influence_coefficient", "jacking_screw", "key_for", "key_stock", "key_strength", "keyway", "largest_diameter", "limits", "loosening", "material_ranges", "metals", "name_taper", "nut", "over_rollers", "pin_spanner", "press_fit", "published_expansion", "published_gaps", "read_marking", "report_schema", "rim_speed", "rim_speed_column", "ring_volume", "rings", "round_nuts", "rules", "run_out", "seat", "shared_balance", "sine_bar", "slide_setting", "sources", "spanner_torque", "specific_energy", "speed_for_rim", "stabilisers", "stand_off", "standard_tapers", "strength", "stub", "superabrasive_limits", "tailstock", "taper", "taper_grade", "thin_wheel", "thread", "three_weights", "through_feed", "through_feed_angle", "tilt_run_out", "tolerance_factor", "tool_height", "trial_runs", "truing", "two_balls", "two_diameters", "two_weights", "unbalance", "wear", "word_lists", "worn_speed", "write_demo", "write_template"]

__version__: Final[str]

@final
class AngleGrade:
    """
    A tolerance grade of a cone's angle at one length, from memory: it may caution, never refuse.
    """
    def __repr__(self, /) -> str: ...
    @property
    def cone_angle(self, /) -> Scalar:
        """
        Tolerance of the included angle, in degrees.
        """
    @property
    def grade(self, /) -> int:
        """
        AT1 to AT12, as a number.
        """
    @property
    def length(self, /) -> Scalar:
        """
        Length of the cone, in mm.
        """
    @property
    def on_diameter(self, /) -> Scalar:
        """
        The same as a difference of diameter over the length, in mm.
        """
    @property
    def source(self, /) -> Source:
        """
        Where it comes from.
        """

@final
class AngleTolerance:
    """
    How much the half angles may differ: what `SeatFound.angle_tolerance` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def closed_by(self, /) -> Scalar | None:
        """
        The hub may be this much more closed than the spindle, never more open; None when no angle will do.
        """
    @property
    def force(self, /) -> Scalar:
        """
        Force of the nut, in N.
        """
    @property
    def open_by(self, /) -> Scalar | None:
        """
        What a hub too open would have to keep to. It is no tolerance: such a hub hangs by its small
        end, rocks and frets.
        """
    @property
    def share(self, /) -> float:
        """
        Share of the length that is to be in contact.
        """

@final
class ArrowColumn:
    """
    A column of numbers that any Arrow program can take.
    """
    def __arrow_c_array__(self, /, requested_schema: "object" = None) -> "tuple[object, object]":
        """
        The column by Arrow's C interface: a schema and an array capsule.
        """
    def __len__(self, /) -> int: ...
    def __repr__(self, /) -> str: ...
    @property
    def name(self, /) -> str:
        """
        What it holds, with its unit.
        """

@final
class ArrowTable:
    """
    A table that any Arrow program can take.
    """
    def __arrow_c_stream__(self, /, requested_schema: "object" = None) -> "object":
        """
        The table by Arrow's C interface: a stream capsule.
        """
    def __len__(self, /) -> int: ...
    def __repr__(self, /) -> str: ...
    @property
    def column_names(self, /) -> list[str]:
        """
        The names of its columns.
        """

@final
class At20:
    """
    A size measured warm or cold, brought to 20 °C: what `at_20_c` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def expansion(self, /) -> Scalar:
        """
        Expansion of the part, in 1/K.
        """
    @property
    def instrument_expansion(self, /) -> Scalar | None:
        """
        Expansion of the instrument, in 1/K; None where it was not given.
        """
    @property
    def measured(self, /) -> Scalar:
        """
        Size as measured, in mm.
        """
    @property
    def size(self, /) -> Scalar:
        """
        Size at 20 °C, in mm.
        """
    @property
    def temperature(self, /) -> Scalar:
        """
        Temperature of the part, in °C.
        """
    def working(self, /) -> Working:
        """
        How the size came about; the last step's result is `size` in mm.
        """

@final
class Balance:
    """
    What `balance` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def eccentricity(self, /) -> Scalar | None:
        """
        Distance of the centre of mass from the axis, in mm; None without an unbalance.
        """
    @property
    def force(self, /) -> Scalar | None:
        """
        Force that turns with the unbalance, in N.
        """
    @property
    def mass_at_radius(self, /) -> Scalar | None:
        """
        Mass at the radius of the weights that would balance it, in kg.
        """
    @property
    def permissible(self, /) -> Scalar | None:
        """
        Unbalance that the grade allows, in g mm; None without a grade.
        """
    @property
    def permissible_eccentricity(self, /) -> Scalar | None:
        """
        Distance of the centre of mass from the axis that the grade allows, in mm.
        """
    @property
    def permissible_mass(self, /) -> Scalar | None:
        """
        The same as a mass at the radius of the weights, in kg; None without a radius.
        """
    @property
    def reached(self, /) -> Scalar | None:
        """
        Grade that the unbalance comes to at this speed: the number behind the G, in mm/s.
        """
    @property
    def within(self, /) -> bool | None:
        """
        Whether it keeps to the grade; None without a grade or without an unbalance.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `permissible` in g mm, or `reached` in mm/s without a grade.
        """

@final
class BalanceWeights:
    """
    What `two_weights` or `three_weights` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def least_weight(self, /) -> Scalar | None:
        """
        The least mass of each weight that would reach, in kg; None where it does, and where one weight alone moves.
        """
    @property
    def positions(self, /) -> list[Scalar]:
        """
        Where the weights that move go, in degrees from the mark, smallest first; the nearest to it where it is out of reach.
        """
    @property
    def reach(self, /) -> Scalar:
        """
        The most that those that move can balance, in g mm.
        """
    @property
    def reached(self, /) -> bool:
        """
        Whether they balance it.
        """
    @property
    def residual(self, /) -> Scalar:
        """
        What is left over once they are there, in g mm.
        """
    @property
    def says(self, /) -> str:
        """
        In words: where they go, or what could be reached and what is left.
        """
    def svg(self, /) -> str:
        """
        A polar picture as SVG text: the mark at the top, angles clockwise.
        """
    @property
    def to_balance(self, /) -> UnbalanceVector:
        """
        What they have to balance: the unbalance and the stuck weight.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `residual` in g mm.
        """

@final
class BlockStack:
    """
    What `block_stack` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def blocks(self, /) -> list[Scalar]:
        """
        The blocks in mm, largest first.
        """
    @property
    def height(self, /) -> Scalar:
        """
        The height wanted, in mm.
        """
    @property
    def off_um(self, /) -> float:
        """
        That less the height wanted, in µm.
        """
    @property
    def sum(self, /) -> Scalar:
        """
        What they come to, in mm.
        """

@final
class Blotter:
    """
    The blotter between the wheel and one flange.

    Every datum may be given, `hubwright.UNKNOWN` (asked for and not known) or left
    out (not asked for). Quantities are text such as `"125 mm"` or pint quantities.

    Args:
        present: Whether there is one.
        diameter: Outside diameter.
        hole: Hole.
        thickness: Thickness.
        used_before: Whether it was clamped before.
        fixed_by_maker: Whether the wheel's maker fixed it to the wheel.
        friction: Least friction of flange and wheel through it.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, present: bool | str | Unknown | None = None, diameter: QuantityLike | Unknown | None = None, hole: QuantityLike | Unknown | None = None, thickness: QuantityLike | Unknown | None = None, used_before: bool | str | Unknown | None = None, fixed_by_maker: bool | str | Unknown | None = None, friction: PlainLike | Unknown | None = None) -> Blotter: ...
    def __repr__(self, /) -> str: ...
    @property
    def diameter(self, /) -> Scalar | Unknown | None:
        """
        Outside diameter.
        """
    @property
    def fixed_by_maker(self, /) -> bool | Unknown | None:
        """
        Whether the wheel's maker fixed it to the wheel.
        """
    @property
    def friction(self, /) -> float | Unknown | None:
        """
        Least friction of flange and wheel through it.
        """
    @property
    def hole(self, /) -> Scalar | Unknown | None:
        """
        Hole.
        """
    @property
    def present(self, /) -> bool | Unknown | None:
        """
        Whether there is one.
        """
    @property
    def thickness(self, /) -> Scalar | Unknown | None:
        """
        Thickness.
        """
    @property
    def used_before(self, /) -> bool | Unknown | None:
        """
        Whether it was clamped before.
        """

@final
class BlotterLimits:
    """
    What `blotter_limits` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def greatest_hole(self, /) -> Limit | None:
        """
        Greatest hole that leaves the land covered; None without a land.
        """
    @property
    def least_diameter(self, /) -> Limit | None:
        """
        Least outside diameter: that of the flange.
        """
    @property
    def need(self, /) -> BlotterNeed:
        """
        Whether the wheel needs blotters.
        """

@final
class Boring:
    """
    What `boring` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def large_diameter(self, /) -> Scalar:
        """
        Diameter of the bore's large end, in mm.
        """
    @property
    def steps(self, /) -> list[DrillStep]:
        """
        Larger drills for the wide part of the bore, smallest first; they only save boring.
        """
    @property
    def through(self, /) -> DrillStep:
        """
        The largest drill that may go through.
        """

@final
class BrazedKey:
    """
    What `brazed_key` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def advice(self, /) -> str:
        """
        When to braze, and why; common practice, no source.
        """
    @property
    def area(self, /) -> Scalar:
        """
        Bottom and both walls, in mm².
        """
    @property
    def assumes(self, /) -> str:
        """
        What the shear stress takes for granted.
        """
    @property
    def bottom(self, /) -> Scalar:
        """
        Bottom of the key, which alone is counted for the torque, in mm².
        """
    @property
    def carries(self, /) -> bool | None:
        """
        Whether it keeps to what is allowed; None without a torque and an allowed stress.
        """
    @property
    def cold_gap(self, /) -> Scalar:
        """
        Gap on one side when cold, in mm; negative binds.
        """
    @property
    def filler_volume(self, /) -> Scalar:
        """
        Filler that gap and channels take, in mm³; nothing is added for what runs off.
        """
    @property
    def gap_outcome(self, /) -> GapOutcome | None:
        """
        How the hot gap compares with it: `too narrow`, `within`, `too wide`.
        """
    @property
    def hot_gap(self, /) -> Scalar:
        """
        Gap on one side when hot, in mm; negative binds.
        """
    @property
    def published(self, /) -> PublishedGap | None:
        """
        Published gap of the filler; None without a filler.
        """
    @property
    def shear(self, /) -> Scalar | None:
        """
        Shear stress of the bottom, in MPa; None without a torque.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `filler_volume` in mm³, or `shear` in MPa.
        """

@final
class Budget:
    """
    What `budget` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def coverage(self, /) -> float:
        """
        Coverage factor for 95 %: 2 for infinitely many degrees of freedom.
        """
    @property
    def dof(self, /) -> float:
        """
        Effective degrees of freedom.
        """
    @property
    def expanded(self, /) -> Scalar:
        """
        Coverage factor times standard uncertainty, in mm.
        """
    @property
    def influences(self, /) -> list[Influence]:
        """
        The errors that went in.
        """
    @property
    def standard(self, /) -> Scalar:
        """
        Combined standard uncertainty, in mm.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `expanded` in µm.
        """

@final
class Centring:
    """
    What `centre_slot` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def cut(self, /) -> Scalar:
        """
        How deep the corner at the wide mark has cut since it touched, in mm.
        """
    @property
    def feed_left(self, /) -> Scalar | None:
        """
        Feed from here to the depth given, in mm; None without one.
        """
    @property
    def lean(self, /) -> Scalar:
        """
        How much the keyway would lean against the key, in degrees.
        """
    @property
    def left_over(self, /) -> Scalar | None:
        """
        Greatest offset that the move can leave, in mm; None where neither uncertainty is given.
        """
    @property
    def left_over_lean(self, /) -> Scalar | None:
        """
        How much the keyway then leans at most, in degrees.
        """
    @property
    def move_tool(self, /) -> MoveTool:
        """
        Which way to move the tool; the work goes the other way instead.
        """
    @property
    def offset(self, /) -> Scalar:
        """
        How far the tool is off centre, and so how far to move it, in mm.
        """
    @property
    def wall_difference(self, /) -> Scalar:
        """
        How much higher one wall of the keyway would be than the other, if cut like this, in mm.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `lean` in degrees.
        """

@final
class Chances:
    """
    How often a guard band lets bad parts pass and holds good ones back: shares of all parts.
    """
    def __repr__(self, /) -> str: ...
    @property
    def accepted(self, /) -> float:
        """
        Parts that are accepted.
        """
    @property
    def false_accept(self, /) -> float:
        """
        Bad parts that are accepted.
        """
    @property
    def false_reject(self, /) -> float:
        """
        Good parts that are not accepted.
        """

@final
class Checked:
    """
    A rack of mountings, judged: iterate over it for its rows.

    Attributes:
        counts: How many rows passed, cautioned, were refused, unknown and unreadable; they add up.
        problems: The rows that could not be read, and why.
        clear: Whether nothing is refused, unknown or unreadable.
        unread: Headings that nothing reads, each with the known heading most like it.
        notes: How the table was read: which sheet, hidden rows, decimal commas.
    """
    def __bool__(self, /) -> bool: ...
    def __getitem__(self, at: SupportsIndex, /) -> Row: ...
    def __iter__(self, /) -> Rows: ...
    def __len__(self, /) -> int: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def clear(self, /) -> bool:
        """
        Whether nothing is refused, unknown or unreadable.
        """
    @property
    def counts(self, /) -> Counts:
        """
        How many rows came out which way.
        """
    @property
    def name(self, /) -> str:
        """
        File name, or `table`.
        """
    @property
    def notes(self, /) -> list[str]:
        """
        How the table was read: which sheet, hidden rows, decimal commas.
        """
    @property
    def problems(self, /) -> list[Problem]:
        """
        The rows that could not be read, and why.
        """
    def report(self, /, path: str | PathLike[str], *, progress: Any | None = None) -> None:
        """
        Writes a report, whole or not at all.

        Args:
            path: Where to; its ending says what: `.html` to print, `.txt`, `.xlsx` and `.csv` with the
                rows as they came and their verdicts before them, `.json` for programs.
            progress: As for `check_file`.

        Raises:
            TextError: Another ending.
            FileError: The file can't be written; an older one is as it was.
        """
    def to_arrow(self, /) -> ArrowTable:
        """
        The verdicts as an Arrow table: row, mounting, verdict, because, and a column of outcomes for each rule.
        """
    @property
    def unread(self, /) -> list[tuple[str, str | None]]:
        """
        Headings that nothing reads, each with the known heading most like it.
        """

@final
class ConeFit:
    """
    What `cone_fit` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def bow(self, /) -> FlankBow:
        """
        Whether a bend was seen.
        """
    @property
    def bow_on_diameter(self, /) -> Scalar:
        """
        How much larger than the chord the middle is on diameter, in mm.
        """
    @property
    def cone(self, /) -> MeasuredCone:
        """
        The cone; its plane is the mean position.
        """
    @property
    def form(self, /) -> Scalar:
        """
        From the lowest residual to the highest on diameter, in mm.
        """
    @property
    def least_bow(self, /) -> Scalar | None:
        """
        The smallest bend on diameter that would have been seen, in mm; None where none would.
        """
    @property
    def residuals_um(self, /) -> list[float]:
        """
        Measured less fitted diameter in µm, in the order of the readings.
        """
    @property
    def scatter(self, /) -> Scalar:
        """
        Standard deviation of the readings about the cone, in mm.
        """
    @property
    def straightness(self, /) -> Scalar:
        """
        The same on one side and square to the flank, in mm.
        """
    @property
    def straightness_says(self, /) -> str:
        """
        What was seen of the flank's straightness, in words.
        """
    @property
    def u_reading(self, /) -> Scalar:
        """
        What the uncertainties were reckoned with: the scatter, or more where more was stated; in mm.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is the half angle in degrees.
        """

@final
class Counts:
    """
    How many mountings came out which way; they add up to the rows.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __repr__(self, /) -> str: ...
    @property
    def cautioned(self, /) -> int:
        """
        Something to know or put right.
        """
    @property
    def passed(self, /) -> int:
        """
        Nothing to say.
        """
    @property
    def refused(self, /) -> int:
        """
        A rule is broken.
        """
    @property
    def unknown(self, /) -> int:
        """
        An essential datum is missing.
        """
    @property
    def unreadable(self, /) -> int:
        """
        The row could not be read.
        """

@final
class CriticalSpeed:
    """
    The lowest speeds at which a wave stands still in a thin wheel.
    """
    def __repr__(self, /) -> str: ...
    @property
    def greatest(self, /) -> Scalar:
        """
        Greatest of the three.
        """
    @property
    def least(self, /) -> Scalar:
        """
        Least of three conditions: free at the hole, free at the flange, held by the flange.
        """
    @property
    def nodes(self, /) -> int:
        """
        Nodal diameters of its wave.
        """
    @property
    def note(self, /) -> str:
        """
        What to think of it: it is computed without damping.
        """
    @property
    def reached(self, /) -> bool | None:
        """
        Whether the speed given reaches the least of them; None without a speed.
        """
    @property
    def speed(self, /) -> Scalar:
        """
        With the stresses of a wheel that is free at its own hole.
        """

@final
class Decision:
    """
    What `decide` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def accept_high(self, /) -> Scalar | None:
        """
        Upper end of what is accepted.
        """
    @property
    def accept_low(self, /) -> Scalar | None:
        """
        Lower end of what is accepted; None without a lower limit, or where nothing is.
        """
    @property
    def chance_within(self, /) -> float:
        """
        How likely the value itself lies within its limits.
        """
    @property
    def factor(self, /) -> float:
        """
        Width of the guard band in standard uncertainties.
        """
    @property
    def guard_band(self, /) -> GuardBand:
        """
        The guard band chosen.
        """
    @property
    def reject_high(self, /) -> Scalar | None:
        """
        Above this a value is certainly outside.
        """
    @property
    def reject_low(self, /) -> Scalar | None:
        """
        Below this a value is certainly outside; None without a lower limit.
        """
    @property
    def ruling(self, /) -> Ruling:
        """
        What can be said: `within`, `outside` or `can't tell`.
        """
    @property
    def source(self, /) -> Source:
        """
        Where the two guard bands come from: from memory.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `chance_within`.
        """

@final
class Dish:
    """
    How the loose flange bends under the greatest preload.
    """
    def __repr__(self, /) -> str: ...
    @property
    def land_tilt(self, /) -> Scalar:
        """
        What the slope makes over the width of the land, in mm: the blotter has to give it.
        """
    @property
    def rim_lift(self, /) -> Scalar:
        """
        How far the rim lifts off, in mm.
        """
    @property
    def room(self, /) -> Scalar:
        """
        Depth of the recess less `sag`; below zero the flange touches the wheel at its hole.
        """
    @property
    def sag(self, /) -> Scalar:
        """
        Sag at the hole with what shear adds, in mm: times 1 + 0.25 (h / span)², a fit to finite elements.
        """
    @property
    def slope(self, /) -> Scalar:
        """
        Slope of the land, which opens outwards.
        """
    @property
    def thin_sag(self, /) -> Scalar:
        """
        Sag at the hole, of a thin plate, in mm.
        """

@final
class Division:
    """
    One way to set a dividing head.
    """
    def __repr__(self, /) -> str: ...
    @property
    def circle(self, /) -> int:
        """
        In this circle of holes; zero where whole turns do.
        """
    @property
    def holes(self, /) -> int:
        """
        Holes to go on besides.
        """
    @property
    def turns(self, /) -> int:
        """
        Whole turns of the crank.
        """

@final
class Dressing:
    """
    What `dress` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def dresser_width(self, /) -> Scalar | None:
        """
        Width of the dresser, in mm; None while it is not given and can't be had from tip and depth.
        """
    @property
    def exact_thread_height(self, /) -> Scalar | None:
        """
        The same of the round tip, in mm.
        """
    @property
    def lead(self, /) -> Scalar:
        """
        Travel in a turn of the wheel, in mm.
        """
    @property
    def overlap(self, /) -> float | None:
        """
        How many times each point is passed; None without a width.
        """
    @property
    def skips(self, /) -> bool:
        """
        Whether the overlap is below 1, so that part of the face is never touched.
        """
    @property
    def thread_height(self, /) -> Scalar | None:
        """
        Height of the thread left on the wheel as a parabola, in mm; None without a tip.
        """
    @property
    def thread_mean(self, /) -> Scalar | None:
        """
        Mean deviation of the parabola, in mm; of the wheel, not of the work.
        """
    @property
    def traverse(self, /) -> Scalar:
        """
        Speed of the dresser along the face.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `overlap`, or `traverse` in mm/s without a width.
        """

@final
class DrillStep:
    """
    One drill, and how far it may go.
    """
    def __repr__(self, /) -> str: ...
    @property
    def depth(self, /) -> Scalar:
        """
        How deep its full diameter may go from the large end, in mm.
        """
    @property
    def drill(self, /) -> Scalar:
        """
        Diameter of the drill, in mm.
        """
    @property
    def stock_at_large_end(self, /) -> Scalar:
        """
        Stock left on one side at the large end, in mm.
        """
    @property
    def stock_left(self, /) -> Scalar:
        """
        Stock left on one side at that depth, in mm.
        """

@final
class Elastic:
    """
    An elastic material by its own constants.

    Where a material is asked for, the name of a metal does too: see `hubwright.joint.metals`.

    Args:
        modulus: Modulus of elasticity, above zero.
        poisson: Poisson's ratio, above 0 and below 0.5.
        density: Density, above zero.
        expansion: Thermal expansion, where heat is asked about.

    Raises:
        UnitError, TextError, OutOfRangeError: As for `hubwright.wheel.rim_speed`.

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.Elastic(modulus="60 GPa", poisson=0.25, density="3300 kg/m3")
        <Elastic E 60 GPa, Poisson's ratio 0.25, 3300 kg/m3 (as stated by the user)>
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, modulus: QuantityLike, poisson: PlainLike, density: QuantityLike, expansion: QuantityLike | None = None) -> Elastic: ...
    def __repr__(self, /) -> str: ...
    @property
    def density(self, /) -> Scalar:
        """
        Density.
        """
    @property
    def expansion(self, /) -> Scalar | None:
        """
        Thermal expansion; None when it was not given.
        """
    @property
    def modulus(self, /) -> Scalar:
        """
        Modulus of elasticity, in MPa.
        """
    @property
    def name(self, /) -> str | None:
        """
        Name of the metal when the constants were taken by name; None when they were stated.
        """
    @property
    def poisson(self, /) -> float:
        """
        Poisson's ratio.
        """
    @property
    def source(self, /) -> Source:
        """
        Where the constants come from.
        """

@final
class ElasticLimit:
    """
    Greatest pressure in the bore of a hub that stays elastic, by two criteria.
    """
    def __repr__(self, /) -> str: ...
    @property
    def greatest_shear(self, /) -> Scalar:
        """
        By the greatest shear stress, which is more cautious, in MPa.
        """
    @property
    def von_mises(self, /) -> Scalar:
        """
        After von Mises, for ductile hubs, in MPa.
        """

@final
class Expansion:
    """
    Published expansion of a metal; which figure of the range to take is the user's choice.
    """
    def __repr__(self, /) -> str: ...
    @property
    def least(self, /) -> Scalar:
        """
        Least of the published figures, in 1/K.
        """
    @property
    def metal(self, /) -> Metal:
        """
        The metal.
        """
    @property
    def most(self, /) -> Scalar:
        """
        Greatest of the published figures, in 1/K.
        """
    @property
    def source(self, /) -> Source:
        """
        Where they stand.
        """

@final
class Finding:
    """
    What one rule found about one mounting.
    """
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    @property
    def advice(self, /) -> str:
        """
        How to put it right; empty when nothing is wrong.
        """
    @property
    def demanded(self, /) -> Any | None:
        """
        The figure demanded: a pint quantity, a date, or None.
        """
    @property
    def found(self, /) -> Any | None:
        """
        The figure found: a pint quantity, a date, or None.
        """
    @property
    def margin(self, /) -> float | None:
        """
        Room to the demand in `unit`; negative when it is missed, None without figures.
        """
    @property
    def missing(self, /) -> list[str]:
        """
        Headings of the data that are missing.
        """
    @property
    def outcome(self, /) -> Outcome:
        """
        How the mounting fares.
        """
    @property
    def rule(self, /) -> Rule:
        """
        The rule.
        """
    @property
    def says(self, /) -> str:
        """
        What was found, in a sentence.
        """
    @property
    def share(self, /) -> float | None:
        """
        Margin as a share of the demand, by which findings are ranked.
        """
    @property
    def source(self, /) -> Source | None:
        """
        Who demands it; None when nothing could be judged.
        """
    @property
    def unit(self, /) -> str:
        """
        Unit of `margin`: `mm`, `m/s`, `rpm`, `deg`, `MPa`, `g mm`, `days`, or empty.
        """

@final
class Fit:
    """
    A hole and a shaft of one nominal size: what `fit` found. Clearances are on diameter.
    """
    def __repr__(self, /) -> str: ...
    @property
    def basis(self, /) -> FitBasis:
        """
        Which part is made to nominal size.
        """
    @property
    def classes(self, /) -> str:
        """
        Both classes, such as `H7/g6`.
        """
    @property
    def hole(self, /) -> Limits:
        """
        Limits of the hole.
        """
    @property
    def kind(self, /) -> FitKind:
        """
        Clearance, transition or interference.
        """
    @property
    def least_clearance_nm(self, /) -> int:
        """
        Least clearance in whole nm; negative is interference.
        """
    @property
    def least_clearance_um(self, /) -> float:
        """
        Least clearance in µm; negative is interference.
        """
    @property
    def most_clearance_nm(self, /) -> int:
        """
        Most clearance in whole nm.
        """
    @property
    def most_clearance_um(self, /) -> float:
        """
        Most clearance in µm.
        """
    @property
    def nominal(self, /) -> Scalar:
        """
        Nominal size, in mm.
        """
    @property
    def shaft(self, /) -> Limits:
        """
        Limits of the shaft.
        """
    def working(self, /) -> Working:
        """
        How the clearances came about; the last step's result is `most_clearance_um`.
        """

@final
class Flange:
    """
    A flange: the fixed one of the hub or the loose one.

    Every datum may be given, `hubwright.UNKNOWN` (asked for and not known) or left
    out (not asked for). Quantities are text such as `"125 mm"` or pint quantities.

    Args:
        kind: Kind, which decides the table it is judged by.
        diameter: Outside diameter of the face that bears on the wheel.
        land: Width of the land that bears on the wheel, on one side.
        recess: Depth of the recess inside the land.
        undercut: Width of the undercut at the hole, on one side.
        thickness_at_hole: Thickness of the plate at the hole; of adaptor flanges with the pilot.
        thickness_at_edge: Thickness of the plate at the edge of the recess.
        material: What it is made of.
        shown_stiff: Whether it was shown to be as strong and stiff as one of steel.
        run_out: Run-out of its face on the running spindle, total reading.
        keyed: Whether it is keyed to the hub, so that it can't turn the nut.
        hole: Hole of the flange itself.
        modulus: Modulus of elasticity of what it is made of.
        poisson_ratio: Poisson's ratio of what it is made of.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, kind: str | Unknown | None = None, diameter: QuantityLike | Unknown | None = None, land: QuantityLike | Unknown | None = None, recess: QuantityLike | Unknown | None = None, undercut: QuantityLike | Unknown | None = None, thickness_at_hole: QuantityLike | Unknown | None = None, thickness_at_edge: QuantityLike | Unknown | None = None, material: str | Unknown | None = None, shown_stiff: bool | str | Unknown | None = None, run_out: QuantityLike | Unknown | None = None, keyed: bool | str | Unknown | None = None, hole: QuantityLike | Unknown | None = None, modulus: QuantityLike | Unknown | None = None, poisson_ratio: PlainLike | Unknown | None = None) -> Flange: ...
    def __repr__(self, /) -> str: ...
    @property
    def diameter(self, /) -> Scalar | Unknown | None:
        """
        Outside diameter of the face that bears on the wheel.
        """
    @property
    def hole(self, /) -> Scalar | Unknown | None:
        """
        Hole of the flange itself.
        """
    @property
    def keyed(self, /) -> bool | Unknown | None:
        """
        Whether it is keyed to the hub, so that it can't turn the nut.
        """
    @property
    def kind(self, /) -> FlangeKind | Unknown | None:
        """
        Kind, which decides the table it is judged by.
        """
    @property
    def land(self, /) -> Scalar | Unknown | None:
        """
        Width of the land that bears on the wheel, on one side.
        """
    @property
    def material(self, /) -> Material | Unknown | None:
        """
        What it is made of.
        """
    @property
    def modulus(self, /) -> Scalar | Unknown | None:
        """
        Modulus of elasticity of what it is made of.
        """
    @property
    def poisson_ratio(self, /) -> float | Unknown | None:
        """
        Poisson's ratio of what it is made of.
        """
    @property
    def recess(self, /) -> Scalar | Unknown | None:
        """
        Depth of the recess inside the land.
        """
    @property
    def run_out(self, /) -> Scalar | Unknown | None:
        """
        Run-out of its face on the running spindle, total reading.
        """
    @property
    def shown_stiff(self, /) -> bool | Unknown | None:
        """
        Whether it was shown to be as strong and stiff as one of steel.
        """
    @property
    def thickness_at_edge(self, /) -> Scalar | Unknown | None:
        """
        Thickness of the plate at the edge of the recess.
        """
    @property
    def thickness_at_hole(self, /) -> Scalar | Unknown | None:
        """
        Thickness of the plate at the hole; of adaptor flanges with the pilot.
        """
    @property
    def undercut(self, /) -> Scalar | Unknown | None:
        """
        Width of the undercut at the hole, on one side.
        """

@final
class FlangeLimits:
    """
    What `flange_limits` found; None where nothing is demanded.
    """
    def __repr__(self, /) -> str: ...
    @property
    def greatest_land(self, /) -> Limit | None:
        """
        Greatest width of the land.
        """
    @property
    def least_diameter(self, /) -> Limit | None:
        """
        Least diameter of the flange: the larger of ratio and table.
        """
    @property
    def least_land(self, /) -> Limit | None:
        """
        Least width of the land that bears on the wheel.
        """
    @property
    def least_recess(self, /) -> Limit | None:
        """
        Least depth of the recess of a relieved flange.
        """
    @property
    def least_thickness_at_edge(self, /) -> Limit | None:
        """
        Least thickness at the edge of the recess or undercut.
        """
    @property
    def least_thickness_at_hole(self, /) -> Limit | None:
        """
        Least thickness at the hole; in Tables O-5 and O-7 it includes the pilot.
        """
    @property
    def least_undercut(self, /) -> Limit | None:
        """
        Least width of the undercut at the hole of an adaptor or sleeve flange.
        """
    @property
    def next_row_diameter(self, /) -> Limit | None:
        """
        For a wheel between two listed sizes, the diameter that the next row asks for.
        """
    def working(self, /) -> Working:
        """
        How the least diameter came about.
        """

@final
class Fragment:
    """
    A sector of a wheel that flies off.
    """
    @property
    def centre(self, /) -> Scalar:
        """
        Distance of its centre of mass from the axis.
        """
    @property
    def energy(self, /) -> Scalar:
        """
        Its energy, flight and spin together, in J.
        """
    @property
    def flight(self, /) -> Scalar:
        """
        The part of it that is flight, in J.
        """
    @property
    def mass(self, /) -> Scalar:
        """
        Its mass, in kg.
        """
    @property
    def speed(self, /) -> Scalar:
        """
        Speed of its centre of mass.
        """

@final
class Grain:
    """
    The grain in a marking.
    """
    def __repr__(self, /) -> str: ...
    @property
    def greatest(self, /) -> Scalar:
        """
        The same mean size; of diamond and CBN the sieve it passes. In mm.
        """
    @property
    def least(self, /) -> Scalar:
        """
        Mean size of a bonded wheel's grain; of diamond and CBN the sieve it stays on. In mm.
        """
    @property
    def number(self, /) -> int:
        """
        Its number.
        """
    @property
    def source(self, /) -> Source:
        """
        Where the size is from.
        """

@final
class Ground:
    """
    What `grind` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def above_marked(self, /) -> bool:
        """
        Whether the wheel turns faster than it is marked for.
        """
    @property
    def aggressiveness(self, /) -> float:
        """
        Work speed over rim speed, times the root of depth over equivalent diameter.
        """
    @property
    def chip_thickness(self, /) -> Scalar | None:
        """
        Greatest thickness of a chip, in mm; None without cutting points and chip width ratio.
        """
    @property
    def chip_volume(self, /) -> Scalar | None:
        """
        Mean volume of a chip, in mm³.
        """
    @property
    def chips_per_second(self, /) -> float | None:
        """
        Chips in a second; None without the density of cutting points.
        """
    @property
    def contact_length(self, /) -> Scalar:
        """
        Length of contact by geometry, in mm; the real one is 1.5 to 2 times as long or more.
        """
    @property
    def equivalent_chip_thickness(self, /) -> Scalar:
        """
        Equivalent chip thickness, in mm.
        """
    @property
    def equivalent_diameter(self, /) -> Scalar:
        """
        Diameter of the wheel that would touch flat work over the same length, in mm.
        """
    @property
    def force(self, /) -> Scalar | None:
        """
        Force along the rim, in N.
        """
    @property
    def kind(self, /) -> GrindKind:
        """
        How wheel and work meet.
        """
    @property
    def power(self, /) -> Scalar | None:
        """
        Power that grinding takes, in W; None without a specific energy.
        """
    @property
    def power_share(self, /) -> float | None:
        """
        Power over what reaches the wheel; None without both.
        """
    @property
    def removal_rate(self, /) -> Scalar:
        """
        Volume ground away in a time, in mm³/s.
        """
    @property
    def rim_speed(self, /) -> Scalar:
        """
        Speed of the wheel's rim.
        """
    @property
    def speed_ratio(self, /) -> float:
        """
        Rim speed over work speed.
        """
    @property
    def spindle_carries(self, /) -> bool | None:
        """
        Whether the spindle has the power and the torque; None while neither can be compared.
        """
    @property
    def torque(self, /) -> Scalar | None:
        """
        Torque on the spindle, in N m.
        """
    @property
    def torque_share(self, /) -> float | None:
        """
        Torque over what the spindle has; None without both.
        """
    @property
    def width_removal_rate(self, /) -> Scalar:
        """
        The same of each millimetre of width, in mm²/s, which is mm³/(mm s).
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `torque` in N m, or `contact_length` in mm without a specific energy.
        """

@final
class HeavySpot:
    """
    One cause of unbalance. Make it with one of its methods; each takes an angle from a mark, where it is known.

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.HeavySpot.clearance(mass="1.35 kg", clearance="0.03 mm")
        <HeavySpot clearance: 20.25 g mm, anywhere>
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __repr__(self, /) -> str: ...
    @property
    def angle(self, /) -> Scalar | None:
        """
        Where it makes the rotor heavy, opposite of a slot or hole; None where it may be anywhere.
        """
    @staticmethod
    def clearance(*, mass: QuantityLike, clearance: QuantityLike, angle: QuantityLike | None = None) -> HeavySpot:
        """
        A wheel that hangs to one side of its clearance.

        Args:
            mass: Mass of the wheel.
            clearance: Clearance between hole and spigot, on diameter.
            angle: Where it hangs to.
        """
    @staticmethod
    def hole(*, diameter: QuantityLike, depth: QuantityLike, radius: QuantityLike, density: QuantityLike, angle: QuantityLike | None = None) -> HeavySpot:
        """
        A round hole along the axis, such as one for a pin spanner.

        Args:
            diameter: Diameter of the hole.
            depth: Its depth.
            radius: Radius of the circle that it lies on.
            density: Density of the hub.
            angle: Where the hole is.
        """
    @staticmethod
    def hub_slot(*, bore: QuantityLike, width: QuantityLike, depth: QuantityLike, length: QuantityLike, density: QuantityLike, angle: QuantityLike | None = None) -> HeavySpot:
        """
        A key slot in the hub's bore, as it stands empty.

        Args:
            bore: Diameter of the bore.
            width: Width of the slot.
            depth: Its depth at the middle.
            length: Its length.
            density: Density of the hub.
            angle: Where the slot is.
        """
    @staticmethod
    def key(*, bore: QuantityLike, depth: QuantityLike, width: QuantityLike, height: QuantityLike, length: QuantityLike, density: QuantityLike, angle: QuantityLike | None = None) -> HeavySpot:
        """
        A key on the bottom of its slot in the bore.

        Args:
            bore: Diameter of the bore.
            depth: Depth of the slot at the middle.
            width: Width of the key.
            height: Height of the key.
            length: Length of the key.
            density: Density of the key.
            angle: Where the key is.
        """
    @staticmethod
    def lump(*, mass: QuantityLike, radius: QuantityLike, angle: QuantityLike | None = None) -> HeavySpot:
        """
        A lump, such as filler left from brazing.

        Args:
            mass: Its mass.
            radius: Its distance from the axis.
            angle: Where it is.
        """
    @property
    def name(self, /) -> str:
        """
        What it is.
        """
    @staticmethod
    def run_out(*, mass: QuantityLike, run_out: QuantityLike, angle: QuantityLike | None = None) -> HeavySpot:
        """
        A mass on a seat that runs out.

        Args:
            mass: Mass on that seat.
            run_out: Run-out, total reading.
            angle: Where the reading is greatest.
        """
    @staticmethod
    def shaft_slot(*, diameter: QuantityLike, width: QuantityLike, depth: QuantityLike, length: QuantityLike, density: QuantityLike, angle: QuantityLike | None = None) -> HeavySpot:
        """
        A key slot in a shaft or taper, as it stands empty.

        Args:
            diameter: Diameter of the shaft.
            width: Width of the slot.
            depth: Its depth at the middle.
            length: Its length.
            density: Density of the shaft.
            angle: Where the slot is.
        """
    @property
    def unbalance(self, /) -> Scalar:
        """
        How much, in g mm.
        """

@final
class Held:
    """
    What `holding` found. Ranges are pairs, least and greatest.
    """
    def __repr__(self, /) -> str: ...
    @property
    def asked(self, /) -> Scalar:
        """
        Greatest torque asked: cutting with run-up or braking, in N m.
        """
    @property
    def carries_face(self, /) -> tuple[Scalar, Scalar]:
        """
        Torque that one blotter carries by friction, in N m.
        """
    @property
    def carries_keyed(self, /) -> tuple[Scalar, Scalar]:
        """
        Torque that both flanges carry with the loose one keyed, in N m.
        """
    @property
    def carries_loosening(self, /) -> tuple[Scalar, Scalar]:
        """
        Unkeyed, where it loosens it.
        """
    @property
    def carries_tightening(self, /) -> tuple[Scalar, Scalar]:
        """
        Unkeyed, where the torque tightens the nut.
        """
    @property
    def dish(self, /) -> Dish | None:
        """
        How the loose flange bends; None unless asked for.
        """
    @property
    def factor_keyed(self, /) -> tuple[float, float]:
        """
        `carries_keyed` over `asked`.
        """
    @property
    def factor_unkeyed(self, /) -> tuple[float, float]:
        """
        One face over `asked`: how an unkeyed flange is designed.
        """
    @property
    def inertia(self, /) -> tuple[Scalar, Scalar]:
        """
        Torque of running the wheel up, and of braking it.
        """
    @property
    def keyed_margin(self, /) -> float | None:
        """
        What holds a keyed nut over what its own inertia asks; None without its mass.
        """
    @property
    def land_pressure(self, /) -> tuple[Scalar, Scalar]:
        """
        Pressure on the land, in MPa.
        """
    @property
    def nut_slips(self, /) -> tuple[Scalar, Scalar]:
        """
        Torque at which the loose flange slips under the nut, in N m.
        """
    @property
    def preload(self, /) -> tuple[Scalar, Scalar]:
        """
        Force of the nut, in N.
        """
    @property
    def preload_asked(self, /) -> tuple[Scalar, Scalar] | None:
        """
        Preload that `factor` asks for, keyed and unkeyed, in N; None without one.
        """
    @property
    def pressure_asked(self, /) -> tuple[Scalar, Scalar] | None:
        """
        Pressure on the land below which the wheel slips at `factor`, keyed and unkeyed, in MPa.
        """
    @property
    def release(self, /) -> tuple[Scalar, Scalar]:
        """
        Torque that the thread holds against loosening, in N m; below zero it runs back by itself.
        """
    @property
    def says(self, /) -> list[str]:
        """
        What was found, a sentence each.
        """
    def svg(self, /) -> str:
        """
        The path of torque as SVG text.
        """
    @property
    def takes_along(self, /) -> Answer:
        """
        Whether a slipping loose flange takes the nut along whatever the torque.
        """
    @property
    def unscrewing(self, /) -> list[Unscrewing]:
        """
        The unkeyed nut: as running takes it, or both ways where that was not said.
        """
    @property
    def within_pressure(self, /) -> bool | None:
        """
        Whether it stays within `pressure_limit`; None without one.
        """
    def working(self, /) -> Working:
        """
        The steps at the least frictions; the last one's result is the least of `carries_loosening` in N m.
        """

@final
class HeldBy:
    """
    How one way of holding the nut fares.
    """
    def __repr__(self, /) -> str: ...
    @property
    def at_nut(self, /) -> tuple[Scalar, Scalar] | None:
        """
        Torque that reaches the nut, in N m; None for a piece while the nut's mass is not given.
        """
    @property
    def backlash(self, /) -> Scalar | None:
        """
        How far the flange turns before the piece takes hold.
        """
    @property
    def bearing(self, /) -> Scalar | None:
        """
        Greatest bearing stress on it, in MPa.
        """
    @property
    def carries(self, /) -> Scalar | None:
        """
        Torque that the piece carries, in N m.
        """
    @property
    def over_all_stacks(self, /) -> bool | None:
        """
        Whether it holds over all the stacks; None while its reach or they are not given.
        """
    @property
    def says(self, /) -> str:
        """
        In a sentence or two.
        """
    @property
    def shear(self, /) -> Scalar | None:
        """
        Shear stress in it, in MPa.
        """
    @property
    def turns(self, /) -> Answer:
        """
        Whether start, stop and cutting torque turn the nut back.
        """
    @property
    def way(self, /) -> NutLock:
        """
        The way.
        """

@final
class Hole:
    """
    One hole of a circle.
    """
    def __repr__(self, /) -> str: ...
    @property
    def angle(self, /) -> Scalar:
        """
        Angle from the x axis, anticlockwise, in degrees.
        """
    @property
    def x(self, /) -> Scalar:
        """
        Place along x, from the centre, in mm.
        """
    @property
    def y(self, /) -> Scalar:
        """
        Place along y, in mm.
        """

@final
class HoleCircle:
    """
    Holes evenly on a circle.
    """
    def __repr__(self, /) -> str: ...
    @property
    def chord(self, /) -> Scalar:
        """
        Straight distance between the centres of neighbours, in mm.
        """
    @property
    def diameter(self, /) -> Scalar:
        """
        Diameter of the circle, in mm.
        """
    @property
    def holes(self, /) -> list[Hole]:
        """
        The holes in order.
        """
    @property
    def spacing(self, /) -> Scalar:
        """
        Angle between neighbours, in degrees.
        """

@final
class HoleLimits:
    """
    What `hole_limits` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def binding(self, /) -> bool:
        """
        Whether the law says "shall" (cutting-off wheels) or "should" (type 1).
        """
    @property
    def greatest_hole(self, /) -> Limit | None:
        """
        Greatest hole; None where the law gives none for the shape.
        """

@final
class Hub:
    """
    The hub.

    Every datum may be given, `hubwright.UNKNOWN` (asked for and not known) or left
    out (not asked for). Quantities are text such as `"125 mm"` or pint quantities.

    Args:
        spigot: Diameter of the spigot that the wheel sits on.
        smallest_spigot: Smallest spigot found in several directions.
        largest_spigot: Largest spigot found in several directions.
        spigot_run_out: Run-out of the spigot on the running spindle, total reading.
        run_out_limit: Run-out asked for, of spigot and flange face.
        clearance_limit: Greatest clearance asked for between hole and spigot, on diameter.
        material: What the spigot is made of.
        warmer_by: How much warmer than when measured the spigot gets.
        expansion: Thermal expansion of the spigot.
        thread_from: From the fixed flange's land to the first full thread.
        thread_to: From the fixed flange's land to the end of the thread.
        flange_stop: From the fixed flange's land to the shoulder that would stop the loose flange.
        stabilisers: Thickness of both stabiliser discs together.
        stabiliser_diameter: Diameter of the stabilisers.
        stand_off: Gap between its face and the spindle's shoulder, with its taper put on by hand.
        draw_up: How far the nut draws it up its taper.
        least_gap: Least gap to be left between its face and the shoulder when it is drawn up.
        thread_bore: Bore inside the thread for the nut.
        thread_slot_width: Width of the key slot through that thread.
        thread_slot_depth: Depth of that slot, from the crests of the thread.
        thread_proof_stress: Proof stress of the thread for the nut.
        rotor_mass: Mass of all that turns with it: wheel, flanges, hub, nut.
        balance_grade: Balance quality grade asked for, such as G2.5.
        residual_unbalance: Unbalance left after balancing, as measured.
        bare_unbalance: Unbalance of the bare hub: key slot, key, spanner holes, filler.
        slip_factor: Factor against slipping in the flanges asked for.
        loose_share: Share of the torque that goes through the loose flange, where it is known: a half where both sides are alike.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, spigot: QuantityLike | Unknown | None = None, smallest_spigot: QuantityLike | Unknown | None = None, largest_spigot: QuantityLike | Unknown | None = None, spigot_run_out: QuantityLike | Unknown | None = None, run_out_limit: QuantityLike | Unknown | None = None, clearance_limit: QuantityLike | Unknown | None = None, material: str | Unknown | None = None, warmer_by: QuantityLike | Unknown | None = None, expansion: QuantityLike | Unknown | None = None, thread_from: QuantityLike | Unknown | None = None, thread_to: QuantityLike | Unknown | None = None, flange_stop: QuantityLike | Unknown | None = None, stabilisers: QuantityLike | Unknown | None = None, stabiliser_diameter: QuantityLike | Unknown | None = None, stand_off: QuantityLike | Unknown | None = None, draw_up: QuantityLike | Unknown | None = None, least_gap: QuantityLike | Unknown | None = None, thread_bore: QuantityLike | Unknown | None = None, thread_slot_width: QuantityLike | Unknown | None = None, thread_slot_depth: QuantityLike | Unknown | None = None, thread_proof_stress: QuantityLike | Unknown | None = None, rotor_mass: QuantityLike | Unknown | None = None, balance_grade: QuantityLike | Unknown | None = None, residual_unbalance: QuantityLike | Unknown | None = None, bare_unbalance: QuantityLike | Unknown | None = None, slip_factor: PlainLike | Unknown | None = None, loose_share: PlainLike | Unknown | None = None) -> Hub: ...
    def __repr__(self, /) -> str: ...
    @property
    def balance_grade(self, /) -> Scalar | Unknown | None:
        """
        Balance quality grade asked for, such as G2.5.
        """
    @property
    def bare_unbalance(self, /) -> Scalar | Unknown | None:
        """
        Unbalance of the bare hub: key slot, key, spanner holes, filler.
        """
    @property
    def clearance_limit(self, /) -> Scalar | Unknown | None:
        """
        Greatest clearance asked for between hole and spigot, on diameter.
        """
    @property
    def draw_up(self, /) -> Scalar | Unknown | None:
        """
        How far the nut draws it up its taper.
        """
    @property
    def expansion(self, /) -> Scalar | Unknown | None:
        """
        Thermal expansion of the spigot.
        """
    @property
    def flange_stop(self, /) -> Scalar | Unknown | None:
        """
        From the fixed flange's land to the shoulder that would stop the loose flange.
        """
    @property
    def largest_spigot(self, /) -> Scalar | Unknown | None:
        """
        Largest spigot found in several directions.
        """
    @property
    def least_gap(self, /) -> Scalar | Unknown | None:
        """
        Least gap to be left between its face and the shoulder when it is drawn up.
        """
    @property
    def loose_share(self, /) -> float | Unknown | None:
        """
        Share of the torque that goes through the loose flange, where it is known: a half where both sides are alike.
        """
    @property
    def material(self, /) -> Material | Unknown | None:
        """
        What the spigot is made of.
        """
    @property
    def residual_unbalance(self, /) -> Scalar | Unknown | None:
        """
        Unbalance left after balancing, as measured.
        """
    @property
    def rotor_mass(self, /) -> Scalar | Unknown | None:
        """
        Mass of all that turns with it: wheel, flanges, hub, nut.
        """
    @property
    def run_out_limit(self, /) -> Scalar | Unknown | None:
        """
        Run-out asked for, of spigot and flange face.
        """
    @property
    def slip_factor(self, /) -> float | Unknown | None:
        """
        Factor against slipping in the flanges asked for.
        """
    @property
    def smallest_spigot(self, /) -> Scalar | Unknown | None:
        """
        Smallest spigot found in several directions.
        """
    @property
    def spigot(self, /) -> Scalar | Unknown | None:
        """
        Diameter of the spigot that the wheel sits on.
        """
    @property
    def spigot_run_out(self, /) -> Scalar | Unknown | None:
        """
        Run-out of the spigot on the running spindle, total reading.
        """
    @property
    def stabiliser_diameter(self, /) -> Scalar | Unknown | None:
        """
        Diameter of the stabilisers.
        """
    @property
    def stabilisers(self, /) -> Scalar | Unknown | None:
        """
        Thickness of both stabiliser discs together.
        """
    @property
    def stand_off(self, /) -> Scalar | Unknown | None:
        """
        Gap between its face and the spindle's shoulder, with its taper put on by hand.
        """
    @property
    def thread_bore(self, /) -> Scalar | Unknown | None:
        """
        Bore inside the thread for the nut.
        """
    @property
    def thread_from(self, /) -> Scalar | Unknown | None:
        """
        From the fixed flange's land to the first full thread.
        """
    @property
    def thread_proof_stress(self, /) -> Scalar | Unknown | None:
        """
        Proof stress of the thread for the nut.
        """
    @property
    def thread_slot_depth(self, /) -> Scalar | Unknown | None:
        """
        Depth of that slot, from the crests of the thread.
        """
    @property
    def thread_slot_width(self, /) -> Scalar | Unknown | None:
        """
        Width of the key slot through that thread.
        """
    @property
    def thread_to(self, /) -> Scalar | Unknown | None:
        """
        From the fixed flange's land to the end of the thread.
        """
    @property
    def warmer_by(self, /) -> Scalar | Unknown | None:
        """
        How much warmer than when measured the spigot gets.
        """

@final
class Influence:
    """
    One error that adds to the uncertainty of a length.

    Args:
        name: What it is.
        spread: `"normal"` (the size is a standard uncertainty), `"uniform"`, `"triangular"` or `"u-shaped"` (the
            size is a half width).
        size: Its size on the result, zero or above.
        dof: Degrees of freedom where it was found by repeating; infinite unless given.

    Raises:
        UnitError, TextError, OutOfRangeError: No length, another word, or no number.

    Examples:
        >>> import hubwright as hw
        >>> hw.gauge.Influence("resolution", spread="uniform", size="0.5 um")
        <Influence resolution 0.2887 µm>
    """
    def __new__(cls, /, name: str, *, spread: str, size: QuantityLike, dof: PlainLike | None = None) -> Influence: ...
    def __repr__(self, /) -> str: ...
    @property
    def dof(self, /) -> float:
        """
        Degrees of freedom.
        """
    @property
    def name(self, /) -> str:
        """
        What it is.
        """
    @property
    def size(self, /) -> Scalar:
        """
        Its size on the result, in mm.
        """
    @property
    def spread(self, /) -> Spread:
        """
        How it is spread.
        """
    @property
    def standard(self, /) -> Scalar:
        """
        Its standard uncertainty, in mm.
        """

@final
class InfluenceCoefficient:
    """
    What a unit of unbalance does to the reading of one machine at one speed.

    Keep it for the next wheel there.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __repr__(self, /) -> str: ...
    @property
    def angle(self, /) -> Scalar:
        """
        How far the phase runs ahead of the unbalance, in degrees.
        """
    def correct(self, /, *, reading: PlainLike, phase: QuantityLike) -> UnbalanceVector:
        """
        The weight that balances another reading of this machine at this speed, without a trial run.

        Args:
            reading: Reading of the meter, in the unit of the trial.
            phase: Its phase.

        Raises:
            OutOfRangeError: A reading below zero.
        """
    @property
    def correction(self, /) -> UnbalanceVector:
        """
        The weight that balances, once the trial weight is off again.
        """
    @property
    def original(self, /) -> UnbalanceVector:
        """
        The unbalance that was there.
        """
    @property
    def size(self, /) -> float:
        """
        Reading for each g mm.
        """
    @property
    def weak(self, /) -> bool:
        """
        Whether the trial weight moved the reading by less than a quarter of it: take a heavier one.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is the amount of `correction` in g mm.
        """

@final
class Interface:
    """
    Where two rings meet.
    """
    def __repr__(self, /) -> str: ...
    @property
    def bonded(self, /) -> bool:
        """
        Whether the rings are bonded.
        """
    @property
    def diameter(self, /) -> Scalar:
        """
        Nominal diameter.
        """
    @property
    def gap(self, /) -> Scalar:
        """
        Clearance on diameter where it has.
        """
    @property
    def loosening_speed(self, /) -> Scalar | None:
        """
        The speed from which on a shrunk ring is loose, zero when it is so at a standstill;
        None when it never comes loose, and for a bond.
        """
    @property
    def open(self, /) -> bool:
        """
        Whether a shrunk ring has let go.
        """
    @property
    def pressure(self, /) -> Scalar:
        """
        Pressure, in MPa: negative is the tension of a bond, zero an open joint.
        """
    @property
    def tension(self, /) -> Scalar:
        """
        Tension of the bond, in MPa; zero under pressure.
        """

@final
class Jacked:
    """
    A jacking screw at work: what `jacking_screw` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def clearance(self, /) -> Scalar | None:
        """
        Least clearance, on diameter, of the draw screw in the jacking thread, in mm; below zero where it
        does not pass.
        """
    @property
    def clears(self, /) -> bool | None:
        """
        Whether the draw screw passes; None without one.
        """
    @property
    def force(self, /) -> tuple[Scalar, Scalar]:
        """
        Force that it pushes with, least and greatest, in N.
        """

@final
class Judgement:
    """
    A measured size between its limits, or past one.
    """
    def __repr__(self, /) -> str: ...
    @property
    def amount_nm(self, /) -> int:
        """
        By how much, in nm: past the limit, or within it from the nearer one.
        """
    @property
    def limits(self, /) -> Limits:
        """
        The limits it was judged by.
        """
    @property
    def measured(self, /) -> Scalar:
        """
        The size judged, in mm.
        """
    @property
    def outcome(self, /) -> SizeOutcome:
        """
        How it fares: `within`, `too large` or `too small`.
        """

@final
class Key:
    """
    The key between shaft and hub.

    Every datum may be given, `hubwright.UNKNOWN` (asked for and not known) or left
    out (not asked for). Quantities are text such as `"125 mm"` or pint quantities.

    Args:
        shaft_diameter: Diameter of the shaft at the key.
        nominal_width: Width it is listed by, which its limits go by.
        width: Width, as measured.
        height: Height.
        length: Length that carries: inside the hub, without round ends.
        bearing_height: Height over which its side bears, where that is less than half of its height.
        shaft_keyway: Width of the keyway in the shaft, as measured.
        hub_keyway: Width of the keyway in the hub, as measured.
        fit: Fit asked for.
        torque: Torque that it carries.
        allowed_shear: Shear stress allowed.
        allowed_bearing: Bearing stress allowed, of the weakest of key, shaft and hub.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, shaft_diameter: QuantityLike | Unknown | None = None, nominal_width: QuantityLike | Unknown | None = None, width: QuantityLike | Unknown | None = None, height: QuantityLike | Unknown | None = None, length: QuantityLike | Unknown | None = None, bearing_height: QuantityLike | Unknown | None = None, shaft_keyway: QuantityLike | Unknown | None = None, hub_keyway: QuantityLike | Unknown | None = None, fit: str | Unknown | None = None, torque: QuantityLike | Unknown | None = None, allowed_shear: QuantityLike | Unknown | None = None, allowed_bearing: QuantityLike | Unknown | None = None) -> Key: ...
    def __repr__(self, /) -> str: ...
    @property
    def allowed_bearing(self, /) -> Scalar | Unknown | None:
        """
        Bearing stress allowed, of the weakest of key, shaft and hub.
        """
    @property
    def allowed_shear(self, /) -> Scalar | Unknown | None:
        """
        Shear stress allowed.
        """
    @property
    def bearing_height(self, /) -> Scalar | Unknown | None:
        """
        Height over which its side bears, where that is less than half of its height.
        """
    @property
    def fit(self, /) -> KeyFit | Unknown | None:
        """
        Fit asked for.
        """
    @property
    def height(self, /) -> Scalar | Unknown | None:
        """
        Height.
        """
    @property
    def hub_keyway(self, /) -> Scalar | Unknown | None:
        """
        Width of the keyway in the hub, as measured.
        """
    @property
    def length(self, /) -> Scalar | Unknown | None:
        """
        Length that carries: inside the hub, without round ends.
        """
    @property
    def nominal_width(self, /) -> Scalar | Unknown | None:
        """
        Width it is listed by, which its limits go by.
        """
    @property
    def shaft_diameter(self, /) -> Scalar | Unknown | None:
        """
        Diameter of the shaft at the key.
        """
    @property
    def shaft_keyway(self, /) -> Scalar | Unknown | None:
        """
        Width of the keyway in the shaft, as measured.
        """
    @property
    def torque(self, /) -> Scalar | Unknown | None:
        """
        Torque that it carries.
        """
    @property
    def width(self, /) -> Scalar | Unknown | None:
        """
        Width, as measured.
        """

@final
class KeySize:
    """
    What `key_for` found. Depths are at the middle of the keyway.
    """
    def __repr__(self, /) -> str: ...
    @property
    def across_hub(self, /) -> Scalar:
        """
        From the bottom of the hub's keyway to the far side of the bore, d + t2, in mm.
        """
    @property
    def across_shaft(self, /) -> Scalar:
        """
        From the bottom of the shaft's keyway to the far side, d − t1, in mm.
        """
    @property
    def bearing_height(self, /) -> Scalar:
        """
        Height over which the key's side bears, for `key_strength`: the lesser of `t1 − y` and `h − t1 + y`, less the
        greatest chamfer where `trim` has one; in mm.
        """
    @property
    def chord_height(self, /) -> Scalar:
        """
        Height of the circle over the mouth of the keyway y, in mm.
        """
    @property
    def depth_tolerance(self, /) -> Scalar | None:
        """
        How much deeper than that either may be, never shallower; None where it was not read.
        """
    @property
    def height(self, /) -> Scalar:
        """
        Height h, in mm.
        """
    @property
    def hub_depth(self, /) -> Scalar:
        """
        Depth in the hub t2, in mm.
        """
    @property
    def hub_wall(self, /) -> Scalar:
        """
        Height of the keyway's wall in the hub, t2 + y, in mm.
        """
    @property
    def shaft(self, /) -> Scalar:
        """
        Diameter of the shaft, in mm.
        """
    @property
    def shaft_depth(self, /) -> Scalar:
        """
        Depth in the shaft t1, in mm.
        """
    @property
    def shaft_wall(self, /) -> Scalar:
        """
        Height of the keyway's wall in the shaft, t1 − y, in mm.
        """
    @property
    def source(self, /) -> Source:
        """
        Where width, height and depths come from.
        """
    @property
    def standard(self, /) -> KeyStandard:
        """
        The standard asked.
        """
    @property
    def trim(self, /) -> KeyTrim | None:
        """
        Lengths, chamfer and corner radius; None where they are not known.
        """
    @property
    def width(self, /) -> Scalar:
        """
        Width b, in mm.
        """
    def widths(self, /, fit: str) -> KeyWidths | None:
        """
        Width limits of key and keyways.

        Args:
            fit: `free`, `normal` or `close`.

        Returns:
            KeyWidths: None for inch keys, whose tolerances were not read.

        Raises:
            TextError: Another word.

        Source: ISO 286-1 for the limits; which classes make which fit is from memory.

        Examples:
            >>> import hubwright as hw
            >>> widths = hw.joint.key_for("12 mm", "DIN 6885-1").widths("normal")
            >>> widths
            <KeyWidths normal: N9 in the shaft, JS9 in the hub>
            >>> widths.in_hub_um
            (-15.0, 45.0)
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `across_hub` in mm.
        """

@final
class KeyStock:
    """
    What `key_stock` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def channels(self, /) -> Scalar:
        """
        Filler that the channels of the chamfers hold, in mm³.
        """
    @property
    def class_(self, /) -> str:
        """
        Class of the width, such as `h6`.
        """
    @property
    def clears_corners(self, /) -> bool | None:
        """
        Whether the chamfers clear the corners of the slot; None without their radius.
        """
    @property
    def height(self, /) -> Scalar:
        """
        Height to cut it to, in mm.
        """
    @property
    def least_clearance_um(self, /) -> float:
        """
        Least clearance in the slot in µm, both sides together; negative is interference.
        """
    @property
    def length(self, /) -> Scalar:
        """
        Length to cut it to, in mm.
        """
    @property
    def most_clearance_um(self, /) -> float:
        """
        Most clearance in the slot in µm, both sides together.
        """
    @property
    def source(self, /) -> Source:
        """
        Who says that the class makes this fit.
        """
    @property
    def width(self, /) -> tuple[Scalar, Scalar]:
        """
        Least and greatest width, in mm.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `length` in mm.
        """

@final
class KeyStrength:
    """
    What `key_strength` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def bearing(self, /) -> Scalar:
        """
        Bearing stress, in MPa.
        """
    @property
    def bearing_height(self, /) -> Scalar:
        """
        Height over which the side bears, in mm.
        """
    @property
    def bearing_length(self, /) -> Scalar | None:
        """
        Length at which the allowed bearing stress is reached, in mm; None without one.
        """
    @property
    def carries(self, /) -> bool | None:
        """
        Whether every stress whose allowed value is given keeps to it; None when none is.
        """
    @property
    def force(self, /) -> Scalar:
        """
        Force at the surface of the shaft, in N.
        """
    @property
    def shear(self, /) -> Scalar:
        """
        Shear stress, in MPa.
        """
    @property
    def shear_length(self, /) -> Scalar | None:
        """
        Length at which the allowed shear stress is reached, in mm; None without one.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `bearing` in MPa.
        """

@final
class KeyTrim:
    """
    Lengths and edges of a key, all from memory.
    """
    def __repr__(self, /) -> str: ...
    @property
    def chamfer(self, /) -> tuple[Scalar, Scalar]:
        """
        Least and greatest chamfer of its edges, in mm.
        """
    @property
    def corner_radius(self, /) -> tuple[Scalar, Scalar]:
        """
        Least and greatest radius in the corners of its keyway, in mm.
        """
    @property
    def least_length(self, /) -> Scalar:
        """
        Shortest length of this key, in mm.
        """
    @property
    def lengths(self, /) -> list[Scalar]:
        """
        Standard lengths of this key, in mm, shortest first.
        """
    @property
    def most_length(self, /) -> Scalar:
        """
        Longest length of this key, in mm.
        """
    @property
    def source(self, /) -> Source:
        """
        Where they come from.
        """

@final
class KeyWidths:
    """
    Widths of key and keyways that make a fit. Every pair has the smaller figure first.
    """
    def __repr__(self, /) -> str: ...
    @property
    def classes(self, /) -> tuple[str, str]:
        """
        Classes of the keyways in shaft and hub.
        """
    @property
    def fit(self, /) -> KeyFit:
        """
        The fit asked for.
        """
    @property
    def hub_keyway(self, /) -> tuple[Scalar, Scalar]:
        """
        Least and greatest width of the keyway in the hub, in mm.
        """
    @property
    def in_hub_um(self, /) -> tuple[float, float]:
        """
        Least and most clearance in the hub in µm; negative is interference.
        """
    @property
    def in_shaft_um(self, /) -> tuple[float, float]:
        """
        Least and most clearance in the shaft in µm; negative is interference.
        """
    @property
    def key(self, /) -> tuple[Scalar, Scalar]:
        """
        Least and greatest width of the key, in mm.
        """
    @property
    def shaft_keyway(self, /) -> tuple[Scalar, Scalar]:
        """
        Least and greatest width of the keyway in the shaft, in mm.
        """
    @property
    def source(self, /) -> Source:
        """
        Which classes make the fit.
        """

@final
class Keyway:
    """
    What `keyway` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def across(self, /) -> Scalar:
        """
        From the bottom to the far side of bore or shaft at the given depth, in mm.
        """
    @property
    def across_deepest(self, /) -> Scalar | None:
        """
        The same at the greatest depth; None without a tolerance.
        """
    @property
    def chord_height(self, /) -> Scalar:
        """
        Height of the circle over the mouth y, in mm.
        """
    @property
    def feed(self, /) -> Scalar:
        """
        Feed of a flat tool from first touch to the given depth, in mm.
        """
    @property
    def last_infeed(self, /) -> Scalar | None:
        """
        Feed at the last stroke, in mm; None without an infeed.
        """
    @property
    def minutes(self, /) -> float | None:
        """
        Minutes to depth; None without infeed and strokes a minute.
        """
    @property
    def strokes(self, /) -> int | None:
        """
        Strokes to depth; None without an infeed.
        """
    @property
    def wall(self, /) -> Scalar:
        """
        Least height of the walls: t + y in a hub, t − y in a shaft, in mm.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `feed` in mm, or `strokes`.
        """

@final
class Limit:
    """
    A least or greatest size, and who says so.
    """
    def __repr__(self, /) -> str: ...
    @property
    def governs(self, /) -> str:
        """
        What gives it: `ratio`, `table` or `clause`.
        """
    @property
    def source(self, /) -> Source:
        """
        Where it comes from.
        """
    @property
    def value(self, /) -> Scalar:
        """
        The size, in mm.
        """

@final
class Limits:
    """
    Limits of size of a hole or shaft: what `limits` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def class_(self, /) -> str:
        """
        Tolerance class, such as `H7`.
        """
    @property
    def feature(self, /) -> Feature:
        """
        Whether it is a hole or a shaft.
        """
    def judge(self, /, measured: QuantityLike) -> Judgement:
        """
        Judges a measured size on whole nanometres: a size on a limit is within.

        Args:
            measured: The size, at 20 °C and without the uncertainty of measuring.

        Returns:
            Judgement: `.outcome` and `.amount_nm`.

        Raises:
            UnitError, TextError: No length.
            OutOfRangeError: A size that is not above zero, or no finite number.

        Examples:
            >>> import hubwright as hw
            >>> hw.joint.limits("20 H7").judge("20.0243 mm")
            <Judgement too large by 3.3 µm>
        """
    @property
    def largest(self, /) -> Scalar:
        """
        Largest size allowed, in mm.
        """
    @property
    def lower_nm(self, /) -> int:
        """
        Lower deviation in whole nm.
        """
    @property
    def lower_um(self, /) -> float:
        """
        Lower deviation in µm.
        """
    @property
    def nominal(self, /) -> Scalar:
        """
        Nominal size, in mm.
        """
    @property
    def smallest(self, /) -> Scalar:
        """
        Smallest size allowed, in mm.
        """
    @property
    def source(self, /) -> Source:
        """
        Where the limits come from, with the weakest status among the figures used.
        """
    @property
    def tolerance_um(self, /) -> float:
        """
        Width of the tolerance in µm.
        """
    @property
    def upper_nm(self, /) -> int:
        """
        Upper deviation in whole nm.
        """
    @property
    def upper_um(self, /) -> float:
        """
        Upper deviation in µm.
        """
    def working(self, /) -> Working:
        """
        How the limits came about; the last step's result is `largest` in mm.
        """

@final
class Machine:
    """
    The machine that the spindle belongs to.

    Every datum may be given, `hubwright.UNKNOWN` (asked for and not known) or left
    out (not asked for). Quantities are text such as `"125 mm"` or pint quantities.

    Args:
        kind: Kind of machine, which decides how far its guard may be open.
        guard_exposure: Angle over which the guard leaves the wheel open.
        guard_start: Where the opening starts, above the horizontal through the spindle; negative below it.
        work_below_spindle: Whether the work has to touch the wheel below the height of the spindle.
        side_load: Side load on one point of the wheel's rim.
        depth_of_cut: Greatest depth that the wheel cuts into the work.
        work_clearance: Clearance kept from flanges and stabilisers to work, vice and magnet.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, kind: str | Unknown | None = None, guard_exposure: QuantityLike | Unknown | None = None, guard_start: QuantityLike | Unknown | None = None, work_below_spindle: bool | str | Unknown | None = None, side_load: QuantityLike | Unknown | None = None, depth_of_cut: QuantityLike | Unknown | None = None, work_clearance: QuantityLike | Unknown | None = None) -> Machine: ...
    def __repr__(self, /) -> str: ...
    @property
    def depth_of_cut(self, /) -> Scalar | Unknown | None:
        """
        Greatest depth that the wheel cuts into the work.
        """
    @property
    def guard_exposure(self, /) -> Scalar | Unknown | None:
        """
        Angle over which the guard leaves the wheel open.
        """
    @property
    def guard_start(self, /) -> Scalar | Unknown | None:
        """
        Where the opening starts, above the horizontal through the spindle; negative below it.
        """
    @property
    def kind(self, /) -> MachineKind | Unknown | None:
        """
        Kind of machine, which decides how far its guard may be open.
        """
    @property
    def side_load(self, /) -> Scalar | Unknown | None:
        """
        Side load on one point of the wheel's rim.
        """
    @property
    def work_below_spindle(self, /) -> bool | Unknown | None:
        """
        Whether the work has to touch the wheel below the height of the spindle.
        """
    @property
    def work_clearance(self, /) -> Scalar | Unknown | None:
        """
        Clearance kept from flanges and stabilisers to work, vice and magnet.
        """

@final
class Marking:
    """
    A marking, read: what `read_marking` found. What a marking does not say is `None`.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    @property
    def abrasive(self, /) -> Abrasive | None:
        """
        Abrasive.
        """
    @property
    def abrasive_share(self, /) -> float | None:
        """
        Share of the wheel that is abrasive, by its structure.
        """
    @property
    def bond(self, /) -> Bond | None:
        """
        Bond.
        """
    @property
    def concentration(self, /) -> int | None:
        """
        Concentration of diamond or CBN; 100 is a quarter of the rim.
        """
    @property
    def diameter(self, /) -> Scalar | None:
        """
        Nominal diameter, in mm.
        """
    @property
    def doubts(self, /) -> list[str]:
        """
        Parts that could be meant otherwise than they were read.
        """
    def fill(self, /, wheel: Wheel | None = None) -> Wheel:
        """
        A wheel with what the marking says where nothing was known.

        Of two speeds the lower counts; what else differs stays as it was, and the rule
        `marking-disagrees` then tells of it.

        Args:
            wheel: What is known of the wheel; nothing when left out.

        Examples:
            >>> import hubwright as hw
            >>> marking = hw.wheel.read_marking("A 60 K 7 V 35 m/s")
            >>> wheel = marking.fill(hw.Wheel(diameter="200 mm"))
            >>> wheel.bond, str(wheel.marked_rim_speed)
            (<Bond.VITRIFIED: 'vitrified'>, '35.0 meter / second')
        """
    @property
    def grade(self, /) -> str | None:
        """
        Grade, A the softest and Z the hardest.
        """
    @property
    def grain(self, /) -> Grain | None:
        """
        Grain.
        """
    @property
    def hole(self, /) -> Scalar | None:
        """
        Nominal hole, in mm.
        """
    @property
    def in_words(self, /) -> list[str]:
        """
        The marking in words, a part a line, with how sure each figure is.
        """
    @property
    def prefix(self, /) -> str | None:
        """
        What the maker writes before the abrasive.
        """
    @property
    def restrictions(self, /) -> list[tuple[Restriction, str]]:
        """
        Restrictions of use, each its mark and what it says.
        """
    @property
    def rim_speed(self, /) -> Scalar | None:
        """
        Rim speed, in m/s: a limit.
        """
    @property
    def shape(self, /) -> str | None:
        """
        Shape as it is marked, such as `"type 41"` or `"1A1"`.
        """
    @property
    def speed(self, /) -> Scalar | None:
        """
        Rotational speed, in rpm: a limit.
        """
    @property
    def stripe(self, /) -> str | None:
        """
        The stripe to look for on a wheel of this rim speed; from memory, and no permission.
        """
    @property
    def structure(self, /) -> int | None:
        """
        Structure, 0 the densest.
        """
    @property
    def suffix(self, /) -> str | None:
        """
        What the maker writes after the bond.
        """
    @property
    def thickness(self, /) -> Scalar | None:
        """
        Nominal thickness, in mm.
        """
    @property
    def unread(self, /) -> list[tuple[str, str]]:
        """
        Parts that were not read, each with the reason.
        """

@final
class MeasuredCone:
    """
    A cone as measured, whichever way: its angle, a diameter, and how well both are known.

    Positions are those of the readings: heights over the plate, depths below the face, or wherever they were
    counted from.
    """
    def __repr__(self, /) -> str: ...
    @property
    def diameter(self, /) -> Scalar:
        """
        Diameter at `plane`, in mm.
        """
    def diameter_at(self, /, position: QuantityLike) -> Scalar:
        """
        Diameter at a position.

        Args:
            position: In the positions of the readings.

        Returns:
            The diameter, a length.

        Raises:
            UnitError, TextError: No length.
        """
    @property
    def dof(self, /) -> float:
        """
        Degrees of freedom; infinite where the uncertainties were stated.
        """
    @property
    def expanded_half_angle(self, /) -> Scalar:
        """
        Its expanded uncertainty, 95 %, in degrees.
        """
    @property
    def half_angle(self, /) -> Scalar:
        """
        Half of the included angle, in degrees.
        """
    @property
    def large_end(self, /) -> LargeEnd:
        """
        Where the large end lies: `high` at the greater positions, `low` at the smaller ones.
        """
    @property
    def per_side(self, /) -> float:
        """
        Change of radius over length.
        """
    @property
    def plane(self, /) -> Scalar:
        """
        Position where diameter and angle have errors of their own, in mm.
        """
    def position_of(self, /, diameter: QuantityLike) -> Scalar:
        """
        Position at which the cone has a diameter: where a gauge plane lies.

        Args:
            diameter: The diameter looked for.

        Returns:
            The position, a length.

        Raises:
            UnitError, TextError: No length.
        """
    @property
    def slope(self, /) -> float:
        """
        Change of diameter over position: below zero where the large end lies low.
        """
    @property
    def span(self, /) -> tuple[Scalar, Scalar]:
        """
        Least and greatest position that was measured, in mm.
        """
    @property
    def u_diameter(self, /) -> Scalar:
        """
        Its standard uncertainty, in mm.
        """
    def u_diameter_at(self, /, position: QuantityLike) -> Scalar:
        """
        Standard uncertainty of the diameter at a position.

        Args:
            position: In the positions of the readings.

        Returns:
            The uncertainty, a length.

        Raises:
            UnitError, TextError: No length.
        """
    @property
    def u_half_angle(self, /) -> Scalar:
        """
        Its standard uncertainty, in degrees.
        """

@final
class Mounting:
    """
    One wheel on one hub on one spindle.

    Args:
        name: What the shop calls it.
        machine: The machine.
        spindle: The spindle.
        wheel: The wheel.
        fixed_flange: The fixed flange.
        loose_flange: The loose flange.
        fixed_blotter: The fixed blotter.
        loose_blotter: The loose blotter.
        hub: The hub.
        nut: The nut.
        key: The key.
        seat: The seat.

    Examples:
        >>> import hubwright as hw
        >>> mounting = hw.Mounting(
        ...     name="surface grinder",
        ...     spindle=hw.Spindle(greatest_speed="3400 rpm"),
        ...     wheel=hw.Wheel(diameter="200 mm", marked_speed="2850 rpm"),
        ... )
        >>> hw.check(mounting).worst
        <Outcome.REFUSE: 'refuse'>
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, name: str = "", *, machine: Machine | None = None, spindle: Spindle | None = None, wheel: Wheel | None = None, fixed_flange: Flange | None = None, loose_flange: Flange | None = None, fixed_blotter: Blotter | None = None, loose_blotter: Blotter | None = None, hub: Hub | None = None, nut: Nut | None = None, key: Key | None = None, seat: Seat | None = None) -> Mounting: ...
    def __repr__(self, /) -> str: ...
    @property
    def fixed_blotter(self, /) -> Blotter:
        """
        The fixed blotter.
        """
    @property
    def fixed_flange(self, /) -> Flange:
        """
        The fixed flange.
        """
    @property
    def hub(self, /) -> Hub:
        """
        The hub.
        """
    @property
    def key(self, /) -> Key:
        """
        The key.
        """
    @property
    def loose_blotter(self, /) -> Blotter:
        """
        The loose blotter.
        """
    @property
    def loose_flange(self, /) -> Flange:
        """
        The loose flange.
        """
    @property
    def machine(self, /) -> Machine:
        """
        The machine.
        """
    @property
    def name(self, /) -> str:
        """
        What the shop calls it.
        """
    @property
    def nut(self, /) -> Nut:
        """
        The nut.
        """
    @property
    def seat(self, /) -> Seat:
        """
        The seat.
        """
    @property
    def spindle(self, /) -> Spindle:
        """
        The spindle.
        """
    @property
    def wheel(self, /) -> Wheel:
        """
        The wheel.
        """

@final
class Nut:
    """
    The nut.

    Every datum may be given, `hubwright.UNKNOWN` (asked for and not known) or left
    out (not asked for). Quantities are text such as `"125 mm"` or pint quantities.

    Args:
        thread_hand: Hand of its thread.
        length: Length of thread in it.
        thread_diameter: Major diameter of its thread.
        thread_pitch: Pitch of its thread, which has one start and flanks at 60°.
        tightening_torque: Torque it is tightened with.
        thread_friction: Least friction in its thread.
        face_friction: Least friction under its face.
        face_diameter: Outside diameter of the face it bears with.
        face_hole: Inside diameter of that face.
        proof_stress: Its proof stress.
        greatest_thread_friction: Greatest friction in its thread.
        greatest_face_friction: Greatest friction under its face.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, thread_hand: str | Unknown | None = None, length: QuantityLike | Unknown | None = None, thread_diameter: QuantityLike | Unknown | None = None, thread_pitch: QuantityLike | Unknown | None = None, tightening_torque: QuantityLike | Unknown | None = None, thread_friction: PlainLike | Unknown | None = None, face_friction: PlainLike | Unknown | None = None, face_diameter: QuantityLike | Unknown | None = None, face_hole: QuantityLike | Unknown | None = None, proof_stress: QuantityLike | Unknown | None = None, greatest_thread_friction: PlainLike | Unknown | None = None, greatest_face_friction: PlainLike | Unknown | None = None) -> Nut: ...
    def __repr__(self, /) -> str: ...
    @property
    def face_diameter(self, /) -> Scalar | Unknown | None:
        """
        Outside diameter of the face it bears with.
        """
    @property
    def face_friction(self, /) -> float | Unknown | None:
        """
        Least friction under its face.
        """
    @property
    def face_hole(self, /) -> Scalar | Unknown | None:
        """
        Inside diameter of that face.
        """
    @property
    def greatest_face_friction(self, /) -> float | Unknown | None:
        """
        Greatest friction under its face.
        """
    @property
    def greatest_thread_friction(self, /) -> float | Unknown | None:
        """
        Greatest friction in its thread.
        """
    @property
    def length(self, /) -> Scalar | Unknown | None:
        """
        Length of thread in it.
        """
    @property
    def proof_stress(self, /) -> Scalar | Unknown | None:
        """
        Its proof stress.
        """
    @property
    def thread_diameter(self, /) -> Scalar | Unknown | None:
        """
        Major diameter of its thread.
        """
    @property
    def thread_friction(self, /) -> float | Unknown | None:
        """
        Least friction in its thread.
        """
    @property
    def thread_hand(self, /) -> ThreadHand | Unknown | None:
        """
        Hand of its thread.
        """
    @property
    def thread_pitch(self, /) -> Scalar | Unknown | None:
        """
        Pitch of its thread, which has one start and flanks at 60°.
        """
    @property
    def tightening_torque(self, /) -> Scalar | Unknown | None:
        """
        Torque it is tightened with.
        """

@final
class OverRollers:
    """
    What `over_rollers` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def cone(self, /) -> MeasuredCone:
        """
        The cone; positions are heights over the plate.
        """
    @property
    def diameters(self, /) -> tuple[Scalar, Scalar]:
        """
        Diameters at the heights of the rollers' axes, lower and upper, in mm.
        """
    @property
    def sensitivities(self, /) -> list[tuple[str, float, Scalar]]:
        """
        Name, sensitivity (degrees per mm) and standard uncertainty of each reading.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is the half angle in degrees.
        """

@final
class Piece:
    """
    One way of keeping the nut from being turned back, with the sizes of its piece.

    Args:
        way: `keyed washer`, `flats`, `pin`, `tongue`, `other hand of thread` or `nothing`.
        diameter: Diameter at which it takes the torque; as all sizes, above zero, and not for the last two ways.
        width: Width of lug, tongue or flat; diameter of a pin.
        thickness: Thickness along the axis; of a pin, how far it reaches into the hub.
        depth: Depth over which the side of lug or tongue bears.
        count: How many share the torque.
        clearance: Play in the slot.
        reach: From the fixed flange's land, where it can hold: (from, to).

    Raises:
        UnitError, TextError: Not a quantity of its kind, or another word.

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.Piece("tongue", diameter="17 mm", width="4 mm", thickness="2 mm", depth="1.5 mm")
        <Piece tongue>
    """
    def __new__(cls, /, way: str, *, diameter: QuantityLike | None = None, width: QuantityLike | None = None, thickness: QuantityLike | None = None, depth: QuantityLike | None = None, count: SupportsIndex = 1, clearance: QuantityLike | None = None, reach: tuple[QuantityLike, QuantityLike] | None = None) -> Piece: ...
    def __repr__(self, /) -> str: ...
    def stress(self, /, torque: QuantityLike) -> tuple[Scalar | None, Scalar | None]:
        """
        Shear and greatest bearing stress under a torque, in MPa; None where there is none.

        Args:
            torque: The torque.

        Raises:
            OutOfRangeError: A size that is not above zero.
        """

@final
class PinSpanner:
    """
    Pins of a spanner in their holes: what `pin_spanner` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def bearing(self, /) -> Scalar:
        """
        Pressure between pin and hole, in MPa.
        """
    @property
    def breaks_out(self, /) -> bool | None:
        """
        Whether a hole breaks out of the nut; None without the nut.
        """
    @property
    def inner_edge(self, /) -> Scalar | None:
        """
        Metal between hole and the inside of the nut, in mm.
        """
    @property
    def outer_edge(self, /) -> Scalar | None:
        """
        Metal between hole and the outside of the nut, in mm; below zero where the hole breaks out.
        """
    @property
    def pin_load(self, /) -> Scalar:
        """
        Force on each pin, in N.
        """
    @property
    def shear(self, /) -> Scalar:
        """
        Shear stress of a pin, in MPa.
        """

@final
class Point:
    """
    Stress and displacement at one diameter.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __repr__(self, /) -> str: ...
    @property
    def diameter(self, /) -> Scalar:
        """
        Where.
        """
    @property
    def hoop(self, /) -> Scalar:
        """
        Hoop stress, in MPa; negative is compression.
        """
    @property
    def outwards(self, /) -> Scalar:
        """
        How far it moves outwards, on radius, in mm.
        """
    @property
    def radial(self, /) -> Scalar:
        """
        Radial stress, in MPa; negative is pressure.
        """
    @property
    def von_mises(self, /) -> Scalar:
        """
        The stress by which a ductile material yields, after von Mises, in MPa.
        """

@final
class PressFit:
    """
    What `press_fit` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def cool_shaft_by(self, /) -> Scalar | None:
        """
        How much colder than the hub the shaft has to be instead.
        """
    @property
    def greatest(self, /) -> Pressed:
        """
        At the greatest interference, running and warm as given.
        """
    @property
    def greatest_at_rest(self, /) -> Pressed:
        """
        At the greatest interference, standing still and not warmed.
        """
    @property
    def heat_hub_by(self, /) -> Scalar | None:
        """
        How much warmer than the shaft the hub has to be, to go on with the clearance wanted.
        """
    @property
    def hub(self, /) -> Elastic:
        """
        Material of the hub.
        """
    @property
    def hub_factor(self, /) -> float | None:
        """
        The same for the hub.
        """
    @property
    def least(self, /) -> Pressed:
        """
        At the least interference, running and warm as given.
        """
    @property
    def least_at_rest(self, /) -> Pressed:
        """
        At the least interference, standing still and not warmed.
        """
    @property
    def push_off(self, /) -> Scalar | None:
        """
        Force along the shaft that friction holds, likewise.
        """
    @property
    def shaft(self, /) -> Elastic:
        """
        Material of the shaft: its constants, and whether they were stated or recalled.
        """
    @property
    def shaft_factor(self, /) -> float | None:
        """
        Yield stress of the shaft over its greatest von Mises stress, running or at rest, at the
        greatest interference; below 1 it yields.
        """
    @property
    def stays_elastic(self, /) -> bool | None:
        """
        Whether every part whose yield stress is given stays elastic; None when none is given.
        """
    @property
    def torque(self, /) -> Scalar | None:
        """
        Torque that friction holds at the least interference, running or at rest, whichever is less;
        None without length and friction.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed.
        """

@final
class Pressed:
    """
    A press fit at one interference, speed and warmth.
    """
    def __repr__(self, /) -> str: ...
    @property
    def gap(self, /) -> Scalar:
        """
        Clearance on diameter when it is.
        """
    @property
    def hub_bore(self, /) -> Point:
        """
        At the bore of the hub, in the joint.
        """
    @property
    def hub_outside(self, /) -> Point:
        """
        At the outside of the hub.
        """
    @property
    def hub_von_mises(self, /) -> Scalar:
        """
        Greatest von Mises stress of the hub, in MPa.
        """
    @property
    def interference(self, /) -> Scalar:
        """
        Effective interference on diameter; below zero where smoothing takes it all.
        """
    @property
    def loosening_speed(self, /) -> Scalar | None:
        """
        The speed from which on the hub is loose at this warmth, zero when it is so at a
        standstill; None when it never comes loose.
        """
    @property
    def open(self, /) -> bool:
        """
        Whether the hub is loose.
        """
    @property
    def pressure(self, /) -> Scalar:
        """
        Pressure in the joint, in MPa; zero when it is open.
        """
    @property
    def shaft_inside(self, /) -> Point:
        """
        At the bore of the shaft, or its centre.
        """
    @property
    def shaft_surface(self, /) -> Point:
        """
        At the surface of the shaft, in the joint.
        """
    @property
    def shaft_von_mises(self, /) -> Scalar:
        """
        Greatest von Mises stress of the shaft, in MPa.
        """

@final
class PrintExpected:
    """
    The print to expect: what `SeatFound.expected_print` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def begins_at(self, /) -> Carries:
        """
        The end it begins at.
        """
    @property
    def length(self, /) -> Scalar:
        """
        How long it is, along the surface.
        """
    @property
    def share(self, /) -> float:
        """
        Its share of the surface's length.
        """

@final
class PrintRead:
    """
    What a print says: what `SeatFound.mismatch_from_print` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def bounds(self, /) -> tuple[Scalar, Scalar] | None:
        """
        Between which the mismatch lies, for a print over the whole length.
        """
    @property
    def elastic_length(self, /) -> Scalar | None:
        """
        Part of the ring that the force alone pressed together.
        """
    @property
    def mismatch(self, /) -> Scalar | None:
        """
        Half angle of the hub less that of the spindle; None unless the print is a ring from one end.
        """
    @property
    def print(self, /) -> Print:
        """
        The print.
        """
    @property
    def says(self, /) -> str:
        """
        What it means, with its figures.
        """

@final
class Problem:
    """
    A row that could not be read.
    """
    def __repr__(self, /) -> str: ...
    @property
    def code(self, /) -> str:
        """
        Code of the error.
        """
    @property
    def message(self, /) -> str:
        """
        What is wrong with it, and how to put it right.
        """
    @property
    def name(self, /) -> str:
        """
        What the shop calls the mounting.
        """
    @property
    def number(self, /) -> int:
        """
        Its number in the table.
        """

@final
class Published:
    """
    A published figure or range, offered by name and never taken silently.
    """
    def __repr__(self, /) -> str: ...
    @property
    def greatest(self, /) -> float:
        """
        Greatest of the range; the same where there is one figure.
        """
    @property
    def least(self, /) -> float:
        """
        Least of the range, or the one figure, in `unit`.
        """
    @property
    def name(self, /) -> str:
        """
        What it is of.
        """
    @property
    def source(self, /) -> Source:
        """
        Who says so.
        """
    @property
    def unit(self, /) -> str:
        """
        Unit of both; empty for plain numbers.
        """

@final
class PublishedGap:
    """
    Published gap of a brazing filler, on one side of the part.
    """
    def __repr__(self, /) -> str: ...
    @property
    def filler(self, /) -> Filler:
        """
        The filler.
        """
    @property
    def least(self, /) -> Scalar:
        """
        Least gap, in mm.
        """
    @property
    def most(self, /) -> Scalar:
        """
        Greatest gap, in mm.
        """
    @property
    def source(self, /) -> Source:
        """
        Who says so.
        """

@final
class Pushed:
    """
    A seat under a force: what `SeatFound.push` found.
    """
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def along(self, /) -> list[tuple[Scalar, Scalar, Scalar, Scalar, bool]]:
        """
        Pressure on each segment: rows of place (distance of its middle from the small end), length,
        pressure, hoop stress in the hub's bore, and whether it touches.
        """
    @property
    def barely_closes(self, /) -> bool:
        """
        Whether it closes so barely that the force for it hangs on the mesh.
        """
    @property
    def carries(self, /) -> Carries:
        """
        The end that carries.
        """
    @property
    def contact(self, /) -> float:
        """
        Share of the length in contact, from the end that carries to where contact ends.
        """
    @property
    def draw_up(self, /) -> Scalar:
        """
        How far the hub moves from the first touch on, shortening and stretch included.
        """
    @property
    def end_pressure(self, /) -> Scalar:
        """
        Mean pressure on the tenth of the length at the end that carries, in MPa.
        """
    @property
    def force(self, /) -> Scalar:
        """
        Force of the nut, in N.
        """
    @property
    def force_for_95(self, /) -> Scalar | None:
        """
        Force that closes 95 % of the length, in N; None when none does.
        """
    @property
    def force_to_close(self, /) -> Scalar | None:
        """
        Force that closes all of it, in N; None when none does.
        """
    @property
    def holds_itself(self, /) -> bool:
        """
        Whether the taper holds itself.
        """
    @property
    def hub_factor(self, /) -> float | None:
        """
        Yield stress of the hub over the greater of hoop stress and pressure; below 1 it yields.
        """
    @property
    def hub_hoop(self, /) -> Scalar:
        """
        Greatest hoop stress in the hub's bore, in MPa.
        """
    @property
    def mismatch(self, /) -> Scalar:
        """
        Half angle of the hub less that of the spindle.
        """
    @property
    def never_closes(self, /) -> tuple[Scalar, Scalar] | None:
        """
        The first segment that never closes, from and to, seen from the small end; None when there is none.
        """
    @property
    def normal_force(self, /) -> Scalar:
        """
        Sum of all pressure, in N.
        """
    @property
    def peak_pressure(self, /) -> Scalar:
        """
        Greatest pressure of a segment, in MPa; the edge itself presses harder, until it beds in.
        """
    @property
    def release_force(self, /) -> Scalar:
        """
        Push that takes the hub off once the nut is off, in N; below zero it comes off by itself.
        """
    @property
    def slip_torque(self, /) -> Scalar:
        """
        Torque at which it slips while the nut stays on, in N m.
        """
    @property
    def spindle_factor(self, /) -> float | None:
        """
        Yield stress of the spindle over the pressure.
        """
    @property
    def stays_elastic(self, /) -> bool | None:
        """
        Whether every part whose yield stress is given stays elastic; None when none is given.
        """
    @property
    def touching(self, /) -> float:
        """
        Share of the length of the segments that touch; it goes in steps of a segment.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed.
        """

@final
class RankedFit:
    """
    A preferred fit that lies inside the window asked for.
    """
    def __repr__(self, /) -> str: ...
    @property
    def fit(self, /) -> Fit:
        """
        The fit.
        """
    @property
    def share(self, /) -> float:
        """
        Share of the window that it uses, up to 1.
        """
    @property
    def source(self, /) -> Source:
        """
        The list of preferred fits that it stands in.
        """

@final
class Ring:
    """
    One of several concentric rings: the innermost, or one bonded or shrunk on the one inside it.

    Args:
        diameter: Outside diameter.
        material: An `Elastic`, or the name of a metal.
        bonded: Whether it is bonded to the ring inside it.
        interference: Interference on diameter with the ring inside it, when it is shrunk or
            pressed on; zero or above.
        rise: How much warmer it is than when it was measured.

    Raises:
        TextError: Bonded and shrunk at once, or a name that is no metal's.
        UnitError, TextError, OutOfRangeError: As for `hubwright.wheel.rim_speed`.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, diameter: QuantityLike, material: Elastic | str, bonded: bool = False, interference: QuantityLike | None = None, rise: QuantityLike | None = None) -> Ring: ...
    def __repr__(self, /) -> str: ...
    @property
    def bonded(self, /) -> bool:
        """
        Whether it is bonded to the ring inside it.
        """
    @property
    def diameter(self, /) -> Scalar:
        """
        Outside diameter.
        """
    @property
    def interference(self, /) -> Scalar | None:
        """
        Interference on diameter with the ring inside it; None unless it is shrunk on.
        """
    @property
    def material(self, /) -> Elastic:
        """
        What it is made of.
        """
    @property
    def rise(self, /) -> Scalar:
        """
        How much warmer it is than when it was measured.
        """

@final
class RingFound:
    """
    A ring with what presses on it.
    """
    def __repr__(self, /) -> str: ...
    def at(self, /, diameter: QuantityLike) -> Point:
        """
        Stress and displacement at any diameter of the ring.

        Args:
            diameter: From the ring's bore to its outside.

        Raises:
            OutOfRangeError: A diameter outside of the ring.
        """
    @property
    def inside(self, /) -> Point:
        """
        At its bore; at the centre of a solid disc.
        """
    @property
    def outside(self, /) -> Point:
        """
        At its outside diameter.
        """
    @property
    def ring(self, /) -> Ring:
        """
        The ring.
        """
    @property
    def von_mises(self, /) -> Scalar:
        """
        Its greatest von Mises stress, which is at one of the two surfaces.
        """

@final
class RingSlices:
    """
    A quick estimate of a seat under a force: what `SeatFound.ring_slices` found.
    """
    @property
    def contact(self, /) -> float:
        """
        Share of the length in contact: always more than it is.
        """
    @property
    def contact_corrected(self, /) -> float:
        """
        The same less 0.27 of the radius at the end that carries, while it is not the whole length.
        """
    @property
    def draw_up(self, /) -> Scalar:
        """
        How far the hub moves from the first touch on.
        """
    @property
    def force_to_close(self, /) -> Scalar:
        """
        Force that closes all of it, in N.
        """
    @property
    def hoops(self, /) -> tuple[Scalar, Scalar]:
        """
        Hoop stress in the hub's bore at the small and at the large end, in MPa.
        """
    @property
    def how_far_off(self, /) -> str:
        """
        How far it can be off.
        """
    @property
    def pressures(self, /) -> tuple[Scalar, Scalar]:
        """
        Pressure at the small and at the large end, in MPa.
        """
    @property
    def release_force(self, /) -> Scalar:
        """
        Push that takes the hub off once the nut is off, in N.
        """
    @property
    def slip_torque(self, /) -> Scalar:
        """
        Torque at which it slips while the nut stays on, in N m.
        """

@final
class RoundNut:
    """
    A slotted round nut.
    """
    def __repr__(self, /) -> str: ...
    @property
    def diameter(self, /) -> Scalar:
        """
        Diameter of its thread, in mm.
        """
    @property
    def outside(self, /) -> Scalar:
        """
        Greatest outside diameter, in mm.
        """
    @property
    def pitch(self, /) -> Scalar:
        """
        Pitch of its thread, in mm.
        """
    @property
    def source(self, /) -> Source:
        """
        Where it stands.
        """
    @property
    def thickness(self, /) -> Scalar:
        """
        Greatest thickness, in mm.
        """

@final
class Row:
    """
    One row of a rack.
    """
    def __repr__(self, /) -> str: ...
    @property
    def name(self, /) -> str:
        """
        What the shop calls the mounting.
        """
    @property
    def number(self, /) -> int:
        """
        Its number in the table, as the program that holds it counts.
        """
    @property
    def problem(self, /) -> Problem | None:
        """
        Why the row could not be read; None when it could.
        """
    @property
    def verdict(self, /) -> Verdict | None:
        """
        What was found; None when the row could not be read.
        """
    @property
    def worst(self, /) -> Any | None:
        """
        The worst outcome; None when the row could not be read.
        """

@final
class Rows:
    """
    The rows of a rack, one after the other.
    """
    def __iter__(self, /) -> Rows: ...
    def __next__(self, /) -> Row: ...

@final
class Rule:
    """
    A rule of a mounting.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __repr__(self, /) -> str: ...
    @property
    def advice(self, /) -> str:
        """
        How to put it right.
        """
    @property
    def asks(self, /) -> str:
        """
        What it asks.
        """
    @property
    def essential(self, /) -> bool:
        """
        Whether every mounting must pass it, so that missing data are never passed over.
        """
    @property
    def manual(self, /) -> str:
        """
        Why it is there and how it judges.
        """
    @property
    def needs(self, /) -> list[str]:
        """
        Headings of the data it can't judge without.
        """
    @property
    def reaches(self, /) -> list[Outcome]:
        """
        Every outcome it can reach, worst first.
        """
    @property
    def slug(self, /) -> str:
        """
        Its name, stable between versions.
        """
    @property
    def sources(self, /) -> list[Source]:
        """
        The sources it cites.
        """
    @property
    def uses(self, /) -> list[str]:
        """
        Headings of the data it reads besides.
        """

@final
class RunOut:
    """
    What `run_out` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def both_ends(self, /) -> Scalar:
        """
        The same with the ends out to opposite sides, in degrees: the worst there is.
        """
    @property
    def is_usual(self, /) -> bool:
        """
        Whether it is no more than the 0.01 mm that is usually taken for good enough.
        """
    @property
    def one_end(self, /) -> Scalar:
        """
        Greatest error of the half angle with one end true, in degrees.
        """
    @property
    def run_out(self, /) -> Scalar:
        """
        Run-out of the original, total reading, in mm.
        """
    @property
    def source(self, /) -> Source:
        """
        Who says so: common practice, no source.
        """
    @property
    def travel(self, /) -> Scalar:
        """
        Travel of the indicator, in mm.
        """

@final
class Seat:
    """
    The taper of the spindle that the hub sits on, and how it is drawn up.

    Every datum may be given, `hubwright.UNKNOWN` (asked for and not known) or left
    out (not asked for). Quantities are text such as `"125 mm"` or pint quantities.

    Args:
        length: Length over which hub and taper engage.
        small_diameter: Diameter at the small end.
        taper: Change of diameter over length: 0.2 for a taper of 1:5.
        mismatch: Half angle of the hub less that of the spindle: above zero the hub is too open.
        friction: Friction in it.
        nut_force: Force with which the spindle's nut draws the hub up.
        nut_diameter: Outside diameter of the face by which that nut or its washer bears on the hub.
        hub_diameter: Outside diameter of the hub at the small end.
        step_from: Distance from the small end at which the hub's outside diameter changes.
        step_diameter: Outside diameter of the hub from there on.
        spindle_bore: Bore of the spindle.
        overhang_small: How far the spindle reaches beyond the small end.
        overhang_large: How far the spindle reaches beyond the large end.
        hub_modulus: Modulus of elasticity of the hub.
        hub_poisson: Poisson's ratio of the hub.
        spindle_modulus: Modulus of elasticity of the spindle.
        spindle_poisson: Poisson's ratio of the spindle.
        share: Share of the length that is to carry.
        hub_yield: Stress at which the hub yields.
        spindle_yield: Stress at which the spindle yields.
        yield_factor: Factor against yielding asked for.
        puller: Whether there is a jacking thread or a puller for the hub.
        puller_force: Force that the puller or the jacking screws give.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, length: QuantityLike | Unknown | None = None, small_diameter: QuantityLike | Unknown | None = None, taper: PlainLike | Unknown | None = None, mismatch: QuantityLike | Unknown | None = None, friction: PlainLike | Unknown | None = None, nut_force: QuantityLike | Unknown | None = None, nut_diameter: QuantityLike | Unknown | None = None, hub_diameter: QuantityLike | Unknown | None = None, step_from: QuantityLike | Unknown | None = None, step_diameter: QuantityLike | Unknown | None = None, spindle_bore: QuantityLike | Unknown | None = None, overhang_small: QuantityLike | Unknown | None = None, overhang_large: QuantityLike | Unknown | None = None, hub_modulus: QuantityLike | Unknown | None = None, hub_poisson: PlainLike | Unknown | None = None, spindle_modulus: QuantityLike | Unknown | None = None, spindle_poisson: PlainLike | Unknown | None = None, share: PlainLike | Unknown | None = None, hub_yield: QuantityLike | Unknown | None = None, spindle_yield: QuantityLike | Unknown | None = None, yield_factor: PlainLike | Unknown | None = None, puller: bool | str | Unknown | None = None, puller_force: QuantityLike | Unknown | None = None) -> Seat: ...
    def __repr__(self, /) -> str: ...
    @property
    def friction(self, /) -> float | Unknown | None:
        """
        Friction in it.
        """
    @property
    def hub_diameter(self, /) -> Scalar | Unknown | None:
        """
        Outside diameter of the hub at the small end.
        """
    @property
    def hub_modulus(self, /) -> Scalar | Unknown | None:
        """
        Modulus of elasticity of the hub.
        """
    @property
    def hub_poisson(self, /) -> float | Unknown | None:
        """
        Poisson's ratio of the hub.
        """
    @property
    def hub_yield(self, /) -> Scalar | Unknown | None:
        """
        Stress at which the hub yields.
        """
    @property
    def length(self, /) -> Scalar | Unknown | None:
        """
        Length over which hub and taper engage.
        """
    @property
    def mismatch(self, /) -> Scalar | Unknown | None:
        """
        Half angle of the hub less that of the spindle: above zero the hub is too open.
        """
    @property
    def nut_diameter(self, /) -> Scalar | Unknown | None:
        """
        Outside diameter of the face by which that nut or its washer bears on the hub.
        """
    @property
    def nut_force(self, /) -> Scalar | Unknown | None:
        """
        Force with which the spindle's nut draws the hub up.
        """
    @property
    def overhang_large(self, /) -> Scalar | Unknown | None:
        """
        How far the spindle reaches beyond the large end.
        """
    @property
    def overhang_small(self, /) -> Scalar | Unknown | None:
        """
        How far the spindle reaches beyond the small end.
        """
    @property
    def puller(self, /) -> bool | Unknown | None:
        """
        Whether there is a jacking thread or a puller for the hub.
        """
    @property
    def puller_force(self, /) -> Scalar | Unknown | None:
        """
        Force that the puller or the jacking screws give.
        """
    @property
    def share(self, /) -> float | Unknown | None:
        """
        Share of the length that is to carry.
        """
    @property
    def small_diameter(self, /) -> Scalar | Unknown | None:
        """
        Diameter at the small end.
        """
    @property
    def spindle_bore(self, /) -> Scalar | Unknown | None:
        """
        Bore of the spindle.
        """
    @property
    def spindle_modulus(self, /) -> Scalar | Unknown | None:
        """
        Modulus of elasticity of the spindle.
        """
    @property
    def spindle_poisson(self, /) -> float | Unknown | None:
        """
        Poisson's ratio of the spindle.
        """
    @property
    def spindle_yield(self, /) -> Scalar | Unknown | None:
        """
        Stress at which the spindle yields.
        """
    @property
    def step_diameter(self, /) -> Scalar | Unknown | None:
        """
        Outside diameter of the hub from there on.
        """
    @property
    def step_from(self, /) -> Scalar | Unknown | None:
        """
        Distance from the small end at which the hub's outside diameter changes.
        """
    @property
    def taper(self, /) -> float | Unknown | None:
        """
        Change of diameter over length: 0.2 for a taper of 1:5.
        """
    @property
    def yield_factor(self, /) -> float | Unknown | None:
        """
        Factor against yielding asked for.
        """

@final
class SeatFound:
    """
    A seat whose compliance is known: what `seat` found. Ask it as often as you like.
    """
    def __repr__(self, /) -> str: ...
    def angle_tolerance(self, /, force: QuantityLike, share: PlainLike) -> AngleTolerance:
        """
        How much the half angles may differ, so that a force keeps a share of the length in contact.

        Args:
            force: Force of the nut, above zero.
            share: Share of the length, above 0 and up to 1.

        Returns:
            AngleTolerance: `.closed_by`; the hub is never more open than the spindle.
        """
    def compliances(self, /) -> tuple[list[list[float]], list[list[float]]]:
        """
        Gap in metres that a pressure of 1 Pa on one segment (column) opens on another (row), once for
        pressure and once for pull along the seat toward the large end: what it can be solved from by
        other means.
        """
    def drawing(self, /, force: QuantityLike, mismatch: QuantityLike, film: QuantityLike) -> str:
        """
        A drawing as SVG: hub and spindle in half section, the pressure along the seat, and the print to expect.

        Args:
            force: Force of the nut, above zero.
            mismatch: Half angle of the hub less that of the spindle.
            film: Thickness of the marking paste of the print, below 100 um.
        """
    def expected_print(self, /, mismatch: QuantityLike, *, film: QuantityLike, force: QuantityLike | None = None) -> PrintExpected:
        """
        The print to expect of a mismatch.

        Args:
            mismatch: Half angle of the hub less that of the spindle.
            film: Thickness of the paste, below 100 um.
            force: Force along the axis while it is printed; none unless given.
        """
    def force_for(self, /, share: PlainLike, mismatch: QuantityLike) -> Scalar | None:
        """
        Force that closes a share of the length against a mismatch; None when none does.

        Args:
            share: Share of the length, above 0 and up to 1.
            mismatch: Half angle of the hub less that of the spindle.

        A nut cannot cure an angle: this says how much it would take.
        """
    @property
    def friction(self, /) -> float:
        """
        Friction in it.
        """
    @property
    def half_angle(self, /) -> Scalar:
        """
        Half angle of the taper.
        """
    @property
    def large_diameter(self, /) -> Scalar:
        """
        Diameter at the large end.
        """
    def mismatch_from_print(self, /, print: str, *, film: QuantityLike, print_length: QuantityLike | None = None, force: QuantityLike | None = None) -> PrintRead:
        """
        The mismatch that a print of marking paste shows.

        Args:
            print: What it looks like: "small end" or "large end" for a full ring from there, "whole length",
                "three patches", "one patch", "middle" or "both ends".
            film: Thickness of the paste; 1 to 5 um is usual, and the mismatch goes with it.
            print_length: Length of a ring, along the surface.
            force: Force along the axis while it was printed; none unless given.

        Returns:
            PrintRead: `.mismatch` of a ring from one end, `.bounds` of a print over the whole length, `.says` of any.

        Raises:
            MissingError: A ring without a length.
            OutOfRangeError: A ring longer than the seat, or shorter than film and force make it.

        Source: common practice, no source, for what prints mean; geometry and contact for the figures.
        """
    def push(self, /, force: QuantityLike, mismatch: QuantityLike) -> Pushed:
        """
        What a force does: which end carries, how much of the length, and what it holds.

        Args:
            force: Force of the nut, above zero.
            mismatch: Half angle of the hub less that of the spindle, up to 0.5 deg either way: above zero
                the hub is too open and the small end carries.

        Returns:
            Pushed: `.carries`, `.contact`, `.force_for_95`, `.force_to_close`, `.draw_up`, `.slip_torque`,
            `.release_force`, `.end_pressure`, `.hub_hoop`, and `.along()` for the pressure along the seat.

        Raises:
            UnitError, TextError, OutOfRangeError: As for `hubwright.wheel.rim_speed`; yielding is no error.
        """
    def push_column(self, /, force: Any, mismatch: Any, *, units: "dict[str, str] | None" = None) -> "dict[str, Any]":
        """
        `push` of every row of two columns, bit for bit, on as many threads as the machine has.

        Rows that `push` would refuse come out as NaN and as an empty text.

        Args:
            force: Forces: a pint array, or a NumPy array, buffer or Arrow column with its unit in `units`.
            mismatch: Mismatches, likewise.
            units: Units of the columns that carry none, such as `{"force": "kN", "mismatch": "arcmin"}`.

        Returns:
            A dict of columns: `carries` (texts), `contact` and `touching` (arrays), and pint arrays
            `force_for_95`, `force_to_close`, `draw_up`, `slip_torque`, `release_force`, `end_pressure`,
            `peak_pressure`, `hub_hoop`. NaN stands where no force closes it, too.

        Raises:
            UnitError: A column without a unit, or with one of another kind.
            TableError: Columns of unlike length.
        """
    def ring_slices(self, /, force: QuantityLike, mismatch: QuantityLike) -> RingSlices:
        """
        A quick estimate by ring slices; `.how_far_off` says how wrong it can be.

        Args:
            force: Force of the nut, above zero.
            mismatch: Half angle of the hub less that of the spindle.
        """
    def rocking(self, /, force: QuantityLike, mismatch: QuantityLike, moment: QuantityLike) -> Scalar:
        """
        How far a moment tilts the hub on its seat: an order of magnitude, not verified by anything.

        Args:
            force: Force of the nut, above zero.
            mismatch: Half angle of the hub less that of the spindle.
            moment: Moment across the axis, above zero.
        """
    @property
    def segments(self, /) -> list[tuple[Scalar, Scalar]]:
        """
        Ends of the segments along the seat, from the small end.
        """
    def with_friction(self, /, friction: PlainLike) -> SeatFound:
        """
        The same seat with another friction; the bodies are not solved again.
        """

@final
class SharedBalance:
    """
    What `shared_balance` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def governs(self, /) -> str:
        """
        Name of the machine that allows least.
        """
    @property
    def machines(self, /) -> list[tuple[str, Balance]]:
        """
        Each machine by name, with what its grade allows there.
        """
    @property
    def permissible(self, /) -> Scalar:
        """
        What it allows, in g mm.
        """

@final
class SineBar:
    """
    What `sine_bar` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def angle(self, /) -> Scalar:
        """
        The angle it makes, in degrees.
        """
    def angle_error(self, /, stack: QuantityLike) -> Scalar:
        """
        The angle that a stack of another height makes less the one wanted.

        Args:
            stack: Height that was wrung.

        Returns:
            The error, an angle.

        Raises:
            UnitError, TextError: No length.
        """
    @property
    def centres(self, /) -> Scalar:
        """
        Distance of the bar's rollers, in mm.
        """
    @property
    def stack(self, /) -> Scalar:
        """
        Height of the blocks under one roller, in mm.
        """
    @property
    def stack_per_minute(self, /) -> Scalar:
        """
        What a minute of arc changes of that, in mm.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `stack` in mm.
        """

@final
class SlideCorrection:
    """
    What `correct_slide` found.
    """
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    @property
    def advice(self, /) -> str:
        """
        What to do, in a sentence.
        """
    @property
    def error(self, /) -> Scalar:
        """
        Half angle cut less half angle wanted, in degrees.
        """
    @property
    def expanded_error(self, /) -> Scalar:
        """
        Its expanded uncertainty, 95 %, in degrees.
        """
    @property
    def expanded_per_side(self, /) -> Scalar:
        """
        Its expanded uncertainty, in mm.
        """
    @property
    def expanded_tap(self, /) -> Scalar | None:
        """
        Its expanded uncertainty, in mm.
        """
    @property
    def per_side(self, /) -> Scalar:
        """
        The error as a rise on one side over the length, in mm; below zero where the angle is too small.
        """
    @property
    def tap(self, /) -> Scalar | None:
        """
        How far to move it at the pivot radius, in mm; None without one.
        """
    @property
    def toward(self, /) -> Toward:
        """
        To which side to move the slide: `smaller`, `larger`, or `stay` within the uncertainty.
        """
    @property
    def u_error(self, /) -> Scalar:
        """
        Its standard uncertainty, in degrees.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `error` in degrees.
        """

@final
class SlideSetting:
    """
    What `slide_setting` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def along(self, /) -> Along:
        """
        Along what.
        """
    @property
    def half_angle(self, /) -> Scalar:
        """
        What the slide's scale has to show, to begin with, in degrees.
        """
    @property
    def rise(self, /) -> Scalar:
        """
        What the indicator has to show over the travel, on one side, in mm.
        """
    @property
    def rise_per_minute(self, /) -> Scalar:
        """
        What a minute of arc changes of that, in mm.
        """
    @property
    def taper(self, /) -> Taper:
        """
        The taper wanted.
        """
    @property
    def travel(self, /) -> Scalar:
        """
        How far the indicator travels, in mm.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `rise` in mm.
        """

@final
class Source:
    """
    A citation: where a number or a rule comes from.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    @property
    def edition(self, /) -> str:
        """
        Edition; empty when the work has none.
        """
    @property
    def key(self, /) -> str:
        """
        Short key, stable between versions.
        """
    @property
    def locator(self, /) -> str:
        """
        Clause, table or page.
        """
    @property
    def status(self, /) -> str:
        """
        How it was obtained.
        """
    @property
    def title(self, /) -> str:
        """
        Title of the work.
        """

@final
class SpeedForRim:
    """
    What `speed_for_rim` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def capped(self, /) -> bool:
        """
        Whether the marked speed held it down, so that the rim runs slower than asked.
        """
    @property
    def diameter(self, /) -> Scalar:
        """
        Outside diameter asked about.
        """
    @property
    def marked_speed(self, /) -> Scalar | None:
        """
        Rotational speed marked on the wheel; None when it was not given.
        """
    @property
    def rim_speed(self, /) -> Scalar:
        """
        Rim speed asked for.
        """
    @property
    def speed(self, /) -> Scalar:
        """
        The rotational speed to set, never above the marked one.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed.
        """

@final
class Spindle:
    """
    The spindle.

    Every datum may be given, `hubwright.UNKNOWN` (asked for and not known) or left
    out (not asked for). Quantities are text such as `"125 mm"` or pint quantities.

    Args:
        greatest_speed: Greatest speed that the spindle can reach, belts and inverter at their fastest.
        rotation: Which way it turns, seen from the nut.
        cutting_torque: Greatest torque of cutting.
        run_up_time: Time it takes from rest to its greatest speed.
        stop_time: Time it takes from its greatest speed to rest.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, greatest_speed: QuantityLike | Unknown | None = None, rotation: str | Unknown | None = None, cutting_torque: QuantityLike | Unknown | None = None, run_up_time: QuantityLike | Unknown | None = None, stop_time: QuantityLike | Unknown | None = None) -> Spindle: ...
    def __repr__(self, /) -> str: ...
    @property
    def cutting_torque(self, /) -> Scalar | Unknown | None:
        """
        Greatest torque of cutting.
        """
    @property
    def greatest_speed(self, /) -> Scalar | Unknown | None:
        """
        Greatest speed that the spindle can reach, belts and inverter at their fastest.
        """
    @property
    def rotation(self, /) -> Rotation | Unknown | None:
        """
        Which way it turns, seen from the nut.
        """
    @property
    def run_up_time(self, /) -> Scalar | Unknown | None:
        """
        Time it takes from rest to its greatest speed.
        """
    @property
    def stop_time(self, /) -> Scalar | Unknown | None:
        """
        Time it takes from its greatest speed to rest.
        """

@final
class StabiliserDisc:
    """
    A stabiliser's disc under the nut.
    """
    def __repr__(self, /) -> str: ...
    @property
    def bears_at_rim(self, /) -> bool | None:
        """
        Whether the relief given is deeper than that, so that only the rim bears; None without a relief.
        """
    @property
    def land_pressure(self, /) -> Scalar:
        """
        Pressure on its land, in MPa.
        """
    @property
    def sag(self, /) -> Scalar:
        """
        How far its hole sinks below its land, in mm: the relief has to be deeper.
        """

@final
class Stabilisers:
    """
    What `stabilisers` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def depth(self, /) -> Scalar:
        """
        Greatest depth of cut, in mm; zero or less where nothing is left.
        """
    @property
    def diameter(self, /) -> Scalar:
        """
        Diameter of the stabilisers, in mm.
        """
    @property
    def disc(self, /) -> StabiliserDisc | None:
        """
        The disc under the nut; None when it was not given.
        """
    @property
    def flange_depth(self, /) -> Scalar:
        """
        Greatest depth of cut between the flanges alone, in mm.
        """
    @property
    def gain(self, /) -> float:
        """
        Stiffness against a side load on one point of the rim, over that between the flanges.
        """
    @property
    def load_gain(self, /) -> float:
        """
        Side load on one point that breaks the wheel, over that between the flanges.
        """
    @property
    def note(self, /) -> str:
        """
        What stabilisers do and what they don't.
        """
    @property
    def ring_gain(self, /) -> float:
        """
        The same for a load spread evenly round the rim.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed.
        """

@final
class StandOff:
    """
    What `stand_off` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def bore_to_make(self, /) -> Scalar:
        """
        Diameter of the bore at its face that makes it, in mm.
        """
    @property
    def clears(self, /) -> bool:
        """
        Whether the gap that is left is the least one or more, uncertainty taken off.
        """
    @property
    def draw_up(self, /) -> Scalar:
        """
        How far the hub travels as it is drawn up, in mm.
        """
    @property
    def expanded(self, /) -> Scalar:
        """
        Expanded uncertainty of stand-off and gap, 95 %, in mm.
        """
    @property
    def gap(self, /) -> Scalar:
        """
        Gap that is left then, in mm.
        """
    @property
    def stand_off(self, /) -> Scalar:
        """
        Gap between the hub's face and the shoulder by hand, in mm; below zero the faces meet first.
        """
    @property
    def stand_off_to_make(self, /) -> Scalar:
        """
        Stand-off to make by hand, so that the least gap is left for certain, in mm.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `gap` in mm.
        """

@final
class Step:
    """
    One step of a working.

    Attributes are text but `result`, the number in `unit`.
    """
    @property
    def numbers(self, /) -> str: ...
    @property
    def relation(self, /) -> str: ...
    @property
    def result(self, /) -> float: ...
    @property
    def source(self, /) -> Source: ...
    @property
    def symbol(self, /) -> str: ...
    @property
    def unit(self, /) -> str: ...

@final
class Strength:
    """
    What `strength` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def above_marked(self, /) -> bool:
        """
        Whether the speed asked about is above the marked one.
        """
    @property
    def bursting_speed(self, /) -> Scalar | None:
        """
        Speed at which the hoop stress reaches the strength given. No wheel may be run near it.
        """
    @property
    def capped(self, /) -> bool:
        """
        Whether the marked speed holds it down.
        """
    @property
    def fragment(self, /) -> Fragment | None:
        """
        The fragment asked about, at the speed asked about.
        """
    @property
    def greatest_speed(self, /) -> Scalar | None:
        """
        Greatest speed that keeps the factor asked for, never above the marked one; None without
        a strength, a factor or a marking.
        """
    @property
    def hoop(self, /) -> Scalar:
        """
        Hoop stress at the hole, the greatest in the wheel, in MPa.
        """
    @property
    def radial(self, /) -> Scalar:
        """
        Greatest radial stress, in MPa.
        """
    @property
    def radial_at(self, /) -> Scalar:
        """
        Diameter at which it is.
        """
    @property
    def rim_hoop(self, /) -> Scalar:
        """
        Hoop stress at the rim, in MPa.
        """
    @property
    def rim_speed(self, /) -> Scalar:
        """
        Speed of the rim.
        """
    @property
    def speed_factor(self, /) -> float | None:
        """
        Bursting speed over speed; None without a strength.
        """
    @property
    def stress_factor(self, /) -> float | None:
        """
        Strength over hoop stress; None without a strength.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed.
        """

@final
class Stub:
    """
    What `stub` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def left(self, /) -> Scalar | None:
        """
        What is left of it now, on radius, in mm; None without a worn diameter.
        """
    @property
    def left_share(self, /) -> float | None:
        """
        What is left now as a share of the volume that can be used.
        """
    @property
    def lost(self, /) -> Scalar | None:
        """
        What the larger flange takes away, on radius, in mm; None without one.
        """
    @property
    def lost_share(self, /) -> float | None:
        """
        What it takes away as a share of the volume that can be used.
        """
    @property
    def stub_diameter(self, /) -> Scalar:
        """
        Diameter at which the wheel is used up, in mm.
        """
    @property
    def usable(self, /) -> Scalar:
        """
        What can be used of the new wheel, on radius, in mm.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `usable` in mm.
        """

@final
class SuperabrasiveLimits:
    """
    What the tables ask of a superabrasive wheel, by its diameter.
    """
    def __repr__(self, /) -> str: ...
    @property
    def high_speed_run_out(self, /) -> Scalar:
        """
        The same of a CBN wheel for high speed, in mm.
        """
    @property
    def mass(self, /) -> Scalar | None:
        """
        Greatest mass out of balance, in kg, taken for the rim; None outside 75 to 750 mm.
        """
    @property
    def mass_source(self, /) -> Source:
        """
        Who gives the mass.
        """
    @property
    def run_out_source(self, /) -> Source:
        """
        Who gives the run-outs.
        """
    @property
    def side_run_out(self, /) -> Scalar:
        """
        Greatest side run-out of a standard wheel, in mm.
        """

@final
class Tailstock:
    """
    What `tailstock` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def between_centres(self, /) -> Scalar:
        """
        Distance of the part's centres, in mm.
        """
    @property
    def by_rule(self, /) -> Scalar:
        """
        What the usual rule says, in mm: a little more.
        """
    @property
    def offset(self, /) -> Scalar:
        """
        How far to move the tailstock across, in mm.
        """
    @property
    def taper(self, /) -> Taper:
        """
        The taper wanted.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `offset` in mm.
        """

@final
class TapDrill:
    """
    A hole before tapping.
    """
    def __repr__(self, /) -> str: ...
    @property
    def drill(self, /) -> Scalar:
        """
        Diameter of the hole, in mm.
        """
    @property
    def percent(self, /) -> float:
        """
        Height of the thread it leaves, in % of a full one: (d - hole) / (1.299 P).
        """
    @property
    def thread(self, /) -> Thread:
        """
        The thread to be tapped.
        """
    @property
    def within(self, /) -> bool | None:
        """
        Whether the hole lies within the limits of the minor diameter; None without a class of nuts.
        """

@final
class Taper:
    """
    A cone: what `taper` found.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __repr__(self, /) -> str: ...
    def axial_shift(self, /, diameter_change: QuantityLike) -> Scalar:
        """
        How far two cones of this taper move along the axis for a change of diameter.

        Args:
            diameter_change: Change on diameter; its sign is kept.

        Returns:
            The shift, a length.

        Raises:
            UnitError, TextError, OutOfRangeError: No length.

        Examples:
            >>> import hubwright as hw
            >>> print(f"{hw.joint.taper('1:4').axial_shift('0.02 mm'):.2f~P}")
            0.08 mm
        """
    @property
    def cone_angle(self, /) -> Scalar:
        """
        The included angle, in degrees.
        """
    def diameter_at(self, /, diameter: QuantityLike, distance: QuantityLike) -> Scalar:
        """
        Diameter at a plane a distance toward the large end from one where it is known.

        Args:
            diameter: Known diameter, above zero.
            distance: How far toward the large end; negative toward the small end.

        Returns:
            The diameter, a length.

        Raises:
            UnitError, TextError, OutOfRangeError: No lengths, or a plane beyond the apex.

        Examples:
            >>> import hubwright as hw
            >>> print(f"{hw.joint.taper('1:5').diameter_at('30 mm', '35 mm'):.3f~P}")
            37.000 mm
        """
    @property
    def half_angle(self, /) -> Scalar:
        """
        Half of the included angle, in degrees: what the top slide is set to.
        """
    @property
    def half_angle_text(self, /) -> str:
        """
        The half angle in degrees, minutes and seconds.
        """
    @property
    def in_per_ft(self, /) -> float:
        """
        Inches on diameter a foot.
        """
    @property
    def large_diameter(self, /) -> Scalar | None:
        """
        Diameter of the large end of a numbered taper, in mm: the gauge diameter of metric and steep ones.
        """
    @property
    def length(self, /) -> Scalar | None:
        """
        From one to the other, in mm.
        """
    @property
    def machine(self, /) -> str | None:
        """
        Series and number; None where it was not asked for by number.
        """
    @property
    def on_diameter(self, /) -> float:
        """
        Change of diameter over length.
        """
    @property
    def one_in(self, /) -> float:
        """
        X of the taper 1:X.
        """
    @property
    def per_side(self, /) -> float:
        """
        Change of radius over length.
        """
    @property
    def slant_of_one_side(self, /) -> float:
        """
        Slant of one flank where the other one is square to something: the tangent of the included angle.
        """
    @property
    def small_diameter(self, /) -> Scalar | None:
        """
        Diameter of its small end, in mm.
        """
    @property
    def source(self, /) -> Source:
        """
        Where it comes from.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `cone_angle` in degrees.
        """

@final
class TaperCandidate:
    """
    A standard taper that a measured cone can be.
    """
    def __repr__(self, /) -> str: ...
    @property
    def gauge_diameter(self, /) -> Scalar | None:
        """
        Diameter at the gauge plane, in mm; None where the taper has no number.
        """
    @property
    def gauge_plane(self, /) -> Scalar | None:
        """
        Position of the gauge plane in those of the readings, in mm.
        """
    @property
    def name(self, /) -> str:
        """
        Its name.
        """
    @property
    def off(self, /) -> Scalar:
        """
        Measured half angle less that of the taper, in degrees.
        """
    @property
    def taper(self, /) -> Taper:
        """
        The taper.
        """

@final
class TaperNaming:
    """
    What `name_taper` found.
    """
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    @property
    def allowed(self, /) -> Scalar:
        """
        How far off a taper's half angle may be to fit, in degrees.
        """
    @property
    def candidates(self, /) -> list[TaperCandidate]:
        """
        The tapers that fit, nearest first.
        """
    @property
    def cone(self, /) -> MeasuredCone:
        """
        The cone as measured: the numbers to copy.
        """
    @property
    def gauge_plane(self, /) -> Scalar | None:
        """
        Position at which the cone has the gauge diameter asked for, in mm.
        """
    @property
    def nearest(self, /) -> TaperCandidate:
        """
        The nearest of all, whether it fits or not.
        """
    @property
    def outcome(self, /) -> NamingOutcome:
        """
        One taper, not to be told, or none.
        """
    @property
    def says(self, /) -> str:
        """
        The names, or the numbers to copy, in words.
        """
    @property
    def u_gauge_plane(self, /) -> Scalar | None:
        """
        Its standard uncertainty, in mm.
        """

@final
class ThinWheel:
    """
    What `thin_wheel` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def allowed_side_load(self, /) -> Scalar | None:
        """
        Side load on one point of the rim that the strength allows, in N; None without a strength.
        """
    @property
    def clamp_moment(self, /) -> float:
        """
        Bending moment per length at the flange in line with a load on one point, over that load.
        """
    @property
    def critical(self, /) -> CriticalSpeed | None:
        """
        Speed at which a wave stands; None without density and hole, or where none ever does.
        """
    @property
    def deflection(self, /) -> Scalar | None:
        """
        How far that load pushes the rim aside, in mm.
        """
    @property
    def frequencies(self, /) -> list[Scalar] | None:
        """
        Frequencies at rest with 0 to 3 nodal diameters, in Hz; None without density and hole.
        """
    @property
    def ring_clamp_moment(self, /) -> float:
        """
        The same for a load spread evenly.
        """
    @property
    def ring_stiffness(self, /) -> Scalar:
        """
        Side load spread evenly round the rim over its deflection, in N/mm.
        """
    @property
    def small(self, /) -> bool | None:
        """
        Whether that is less than half of the thickness, as the theory wants; otherwise the rim gives less.
        """
    @property
    def stiffness(self, /) -> Scalar:
        """
        Side load on one point of the rim over its deflection there, in N/mm.
        """
    @property
    def turning_frequencies(self, /) -> list[Scalar] | None:
        """
        The same at the speed given, felt on the turning wheel.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed.
        """

@final
class Thread:
    """
    A screw thread: what `thread` found.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    @property
    def designation(self, /) -> str:
        """
        As it is written on a drawing, such as `M20x1-6H`.
        """
    @property
    def diameter(self, /) -> Scalar:
        """
        Nominal diameter, d, in mm.
        """
    def in_class(self, /, class_: str) -> Thread:
        """
        The same thread in another class.

        Args:
            class_: 4g, 6e, 6g, 6h, 4H, 5H, 6H or 7H; 2A or 2B for a unified thread.

        Returns:
            Thread: with the limits of that class.

        Raises:
            UnitError, TextError: No text, or no such class.
            OutOfRangeError: The table gives nothing for this thread.

        Examples:
            >>> import hubwright as hw
            >>> hw.joint.thread("M20x1").in_class("6H").limits.pitch_least
            <Quantity(19.35, 'millimeter')>
        """
    @property
    def lead_angle(self, /) -> Scalar:
        """
        Angle at which it rises at its pitch diameter, in degrees.
        """
    @property
    def left_hand(self, /) -> bool:
        """
        Whether its hand is left.
        """
    @property
    def limits(self, /) -> ThreadLimits | None:
        """
        Limits of size; None when the designation names no class.
        """
    @property
    def minor_diameter(self, /) -> Scalar:
        """
        Basic minor diameter, D1, in mm.
        """
    @property
    def pitch(self, /) -> Scalar:
        """
        Pitch, P, in mm; with one start it is the lead too.
        """
    @property
    def pitch_diameter(self, /) -> Scalar:
        """
        Basic pitch diameter, d2, in mm.
        """
    @property
    def root_diameter(self, /) -> Scalar:
        """
        Diameter at the root of a screw, d3, in mm.
        """
    @property
    def series(self, /) -> str:
        """
        Series: `M`, `UNC` or `UNF`.
        """
    @property
    def source(self, /) -> Source:
        """
        Where profile and stress area come from.
        """
    @property
    def stress_area(self, /) -> Scalar:
        """
        Nominal stress area of a screw, in mm².
        """
    def tap_drill(self, /, drill: QuantityLike | None = None) -> TapDrill:
        """
        The hole to drill before tapping, and how much thread it leaves.

        Args:
            drill: Diameter of the hole, above zero and below the thread; without it the diameter less the pitch.

        Returns:
            TapDrill: `.drill`, `.percent` and `.within`.

        Raises:
            UnitError, TextError: No length.
            OutOfRangeError: A hole that leaves no thread.

        Source: common practice.

        Examples:
            >>> import hubwright as hw
            >>> hw.joint.thread("M8-6H").tap_drill("6.8 mm")
            <TapDrill 6.8 mm, 73.9 % thread, within 6H>
        """
    @property
    def threads_per_inch(self, /) -> float:
        """
        Threads an inch.
        """
    def three_wires(self, /, wire: QuantityLike | None = None) -> ThreeWires:
        """
        Size over three wires of a screw or plug.

        M = d2 + w (1 + √(1/sin² α + cot² α tan² φ)) - P/2 cot α, with w the wires, α 30°, φ the lead angle.

        Args:
            wire: Diameter of the wires, 0.506 to 1.01 pitches; without it the best wire, P / (2 cos α).

        Returns:
            ThreeWires: `.best_wire`, `.basic`, and `.greatest` and `.least` for a class of screws.

        Raises:
            UnitError, TextError: No length.
            OutOfRangeError: A wire that does not touch the flanks or does not stand out.

        Source: ASME B1.2 and NBS Handbook H28, from memory. The measuring force is not in it.

        Examples:
            >>> import hubwright as hw
            >>> hw.joint.thread("M20x1.5-6g").three_wires("0.895 mm")
            <ThreeWires 20.2404 to 20.3804 mm over wires of 0.895 mm, best 0.866 mm>
        """
    def working(self, /) -> Working:
        """
        The steps of the profile; the last one's result is `stress_area` in mm².
        """

@final
class ThreadLimits:
    """
    Limits of size of a thread, in mm.
    """
    def __repr__(self, /) -> str: ...
    @property
    def class_(self, /) -> str:
        """
        The class, such as `6H`.
        """
    @property
    def internal(self, /) -> bool:
        """
        Whether it is for internal threads.
        """
    @property
    def major_greatest(self, /) -> Scalar | None:
        """
        Greatest major diameter; None for a nut.
        """
    @property
    def major_least(self, /) -> Scalar:
        """
        Least major diameter.
        """
    @property
    def minor_greatest(self, /) -> Scalar | None:
        """
        Greatest minor diameter; None for a screw.
        """
    @property
    def minor_least(self, /) -> Scalar | None:
        """
        Least minor diameter; None for a screw.
        """
    @property
    def pitch_greatest(self, /) -> Scalar:
        """
        Greatest pitch diameter.
        """
    @property
    def pitch_least(self, /) -> Scalar:
        """
        Least pitch diameter.
        """
    @property
    def source(self, /) -> Source:
        """
        Where they come from, with the weakest status among the figures used.
        """

@final
class ThreeWires:
    """
    Size over three wires.
    """
    def __repr__(self, /) -> str: ...
    @property
    def basic(self, /) -> Scalar:
        """
        Size over the wires at the basic pitch diameter, in mm.
        """
    @property
    def best_wire(self, /) -> Scalar:
        """
        Best wire, in mm: it touches at the pitch diameter.
        """
    @property
    def greatest(self, /) -> Scalar | None:
        """
        At the greatest pitch diameter; None without a class of screws.
        """
    @property
    def least(self, /) -> Scalar | None:
        """
        At the least pitch diameter; None without a class of screws.
        """
    def pitch_diameter(self, /, over_wires: QuantityLike) -> Scalar:
        """
        Pitch diameter that a size over these wires stands for.

        Args:
            over_wires: The size measured, above the pitch diameter.

        Returns:
            Pitch diameter, in mm.

        Raises:
            UnitError, TextError, OutOfRangeError: No length, or one below the pitch diameter.

        Examples:
            >>> import hubwright as hw
            >>> wires = hw.joint.thread("M20x1.5-6g").three_wires()
            >>> print(f"{wires.pitch_diameter('20.220 mm'):.3f~P}")
            18.921 mm
        """
    @property
    def thread(self, /) -> Thread:
        """
        The thread measured.
        """
    @property
    def wire(self, /) -> Scalar:
        """
        The wires used, in mm.
        """

@final
class Tightened:
    """
    A tightened nut: what `nut` found. Ranges are pairs, least and greatest.
    """
    def __repr__(self, /) -> str: ...
    @property
    def greatest_preload(self, /) -> tuple[Scalar, Scalar] | None:
        """
        Preload at that torque, in N.
        """
    @property
    def greatest_torque(self, /) -> Scalar | None:
        """
        The torque at which, whatever the friction, the screw stays within `utilisation` of its proof stress.
        """
    @property
    def holds_itself(self, /) -> bool:
        """
        Whether the thread holds itself at its least friction, without the face.
        """
    @property
    def loosening_torque(self, /) -> tuple[Scalar, Scalar]:
        """
        Torque to loosen it, in N m.
        """
    def loosens(self, /, rotation: str | None = None) -> str:
        """
        Which way it comes off, and whether running or braking takes it there.

        Args:
            rotation: Which way the spindle runs, seen from the nut: `clockwise`, `anticlockwise` or `both`.

        Returns:
            A sentence or two.

        Raises:
            TextError: Another word.
        """
    @property
    def net_area(self, /) -> Scalar:
        """
        Area of the screw that carries, less bore and slot, in mm².
        """
    @property
    def nut_shear(self, /) -> Scalar | None:
        """
        Greatest shear stress of the nut's threads, in MPa.
        """
    @property
    def overloaded(self, /) -> bool | None:
        """
        Whether screw or threads are stressed beyond `utilisation` of proof; None while that can't be told.
        """
    @property
    def preload(self, /) -> tuple[Scalar, Scalar]:
        """
        Force between nut and what it clamps, in N.
        """
    @property
    def proof_share(self, /) -> float | None:
        """
        `stress` over the proof stress of the screw; None without one.
        """
    @property
    def screw_shear(self, /) -> Scalar | None:
        """
        Greatest shear stress of the screw's threads, in MPa; None without an engagement.
        """
    @property
    def stress(self, /) -> Scalar:
        """
        Greatest of tension and torsion together, in MPa.
        """
    @property
    def tension(self, /) -> tuple[Scalar, Scalar]:
        """
        Tension in that area, in MPa.
        """
    @property
    def thread(self, /) -> Thread:
        """
        Its thread.
        """
    @property
    def thread_release(self, /) -> tuple[Scalar, Scalar]:
        """
        The part of it that the thread alone holds; below zero where the thread runs back by itself.
        """
    @property
    def torque(self, /) -> tuple[Scalar, Scalar]:
        """
        Tightening torque, in N m.
        """
    def working(self, /) -> Working:
        """
        The steps at the least friction; the last one's result is the greatest preload in N.
        """

@final
class TiltRunOut:
    """
    Run-out of a wheel on a tilted seat: what `tilt_run_out` found.
    """
    @property
    def axial(self, /) -> Scalar:
        """
        Total reading of an indicator on the side of the wheel, at its rim.
        """
    @property
    def radial(self, /) -> Scalar:
        """
        Total reading on the rim.
        """
    @property
    def tilt(self, /) -> Scalar:
        """
        Angle between the axes of hub and spindle.
        """

@final
class ToolHeight:
    """
    What `tool_height` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def angle_error(self, /) -> Scalar:
        """
        That less the half angle set, in degrees: zero or below.
        """
    @property
    def bow(self, /) -> Scalar:
        """
        How much smaller than the chord the flank is at the worst, on one side, in mm.
        """
    @property
    def bow_at(self, /) -> Scalar:
        """
        Where that is, from the small end, in mm.
        """
    @property
    def half_angle(self, /) -> Scalar:
        """
        Half angle from end to end, in degrees.
        """
    @property
    def per_side(self, /) -> Scalar:
        """
        The error as a rise on one side over the length, in mm: zero or below.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `half_angle` in degrees.
        """

@final
class TrialRuns:
    """
    What `trial_runs` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def candidates(self, /) -> list[UnbalanceVector]:
        """
        What the unbalance may be, smallest first: one answer from three runs or more, two from two.
        """
    @property
    def corrections(self, /) -> list[UnbalanceVector]:
        """
        The weight that balances each of them.
        """
    @property
    def doubtful(self, /) -> bool:
        """
        Whether that is more than 5 %: run them again.
        """
    @property
    def fitted(self, /) -> UnbalanceVector | None:
        """
        The answer that fits all readings best, by least squares; None from two runs.
        """
    @property
    def quality(self, /) -> float | None:
        """
        How far the two ways to the trial weight's effect are apart, as a share; None from two runs.
        """
    @property
    def scatter(self, /) -> float | None:
        """
        Root of the mean square of what the readings are off that answer, in their unit.
        """
    def svg(self, /) -> str:
        """
        A polar picture as SVG text: the mark at the top, angles clockwise.
        """
    @property
    def weak(self, /) -> bool:
        """
        Whether, by any of the answers, the trial weight is less than a quarter of the unbalance; common practice.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is the amount of the last of `candidates` in g mm.
        """

@final
class Truing:
    """
    What `truing` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def after(self, /) -> Scalar:
        """
        Unbalance after truing, in g mm, heavy on the other side.
        """
    @property
    def before(self, /) -> Scalar:
        """
        Unbalance before truing, in g mm, heavy on the side the wheel sits off to.
        """
    @property
    def rim_run_out(self, /) -> Scalar:
        """
        Run-out of the rim before truing, total reading, in mm.
        """
    @property
    def stock(self, /) -> Scalar:
        """
        The most that truing takes off, on radius, in mm.
        """
    @property
    def trued_diameter(self, /) -> Scalar:
        """
        Diameter after truing, in mm.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `after` in g mm.
        """

@final
class TwoBalls:
    """
    What `two_balls` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def centres_apart(self, /) -> Scalar:
        """
        Distance of the balls' centres, in mm.
        """
    @property
    def cone(self, /) -> MeasuredCone:
        """
        The cone; positions are depths below the face.
        """
    @property
    def diameters(self, /) -> tuple[Scalar, Scalar]:
        """
        Diameters of the bore at the depths of the centres, large and small ball, in mm.
        """
    @property
    def sensitivities(self, /) -> list[tuple[str, float, Scalar]]:
        """
        Name, sensitivity (degrees per mm) and standard uncertainty of each reading.
        """
    @property
    def touch(self, /) -> tuple[Scalar, Scalar]:
        """
        Depths at which the balls touch the bore, in mm.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is the half angle in degrees.
        """

@final
class TwoDiameters:
    """
    What `two_diameters` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def cone(self, /) -> MeasuredCone:
        """
        The cone; positions are counted from the small diameter's plane.
        """
    @property
    def sensitivities(self, /) -> list[tuple[str, float, Scalar]]:
        """
        Name, sensitivity (degrees per mm) and standard uncertainty of each reading.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is the half angle in degrees.
        """

@final
class UnbalanceSum:
    """
    What `unbalance` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def anywhere(self, /) -> Scalar:
        """
        Those that may lie anywhere, as if all lay at one angle, in g mm.
        """
    @property
    def greatest(self, /) -> Scalar:
        """
        The most that it can come to, in g mm.
        """
    @property
    def known(self, /) -> UnbalanceVector:
        """
        Those whose angle is known, together.
        """
    @property
    def least(self, /) -> Scalar:
        """
        The least that it can come to, in g mm.
        """
    @property
    def spots(self, /) -> list[HeavySpot]:
        """
        The causes.
        """
    def svg(self, /) -> str:
        """
        A polar picture as SVG text: arrows to scale, and a circle for what may lie anywhere.
        """
    def working(self, /) -> Working:
        """
        One step a cause, then their sum; the last one's result is `greatest` in g mm.
        """

@final
class UnbalanceVector:
    """
    An unbalance with the angle at which it makes the rotor heavy.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __repr__(self, /) -> str: ...
    @property
    def amount(self, /) -> Scalar:
        """
        How much, in g mm.
        """
    @property
    def angle(self, /) -> Scalar:
        """
        Where, in degrees from the mark.
        """

@final
class Unknown:
    """
    Type of `hubwright.UNKNOWN`: a datum that should be known and isn't.

    Every rule that needs it says CAN'T TELL. A datum that is left out is not
    asked for, which is another thing.
    """
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /) -> Unknown: ...
    def __reduce__(self, /) -> tuple[Any, tuple[()]]: ...
    def __repr__(self, /) -> str: ...

@final
class Unscrewing:
    """
    An unkeyed nut in one direction of running. Ranges are pairs, least and greatest.
    """
    def __repr__(self, /) -> str: ...
    @property
    def at_nut(self, /) -> tuple[Scalar, Scalar]:
        """
        What of it reaches the nut, in N m.
        """
    @property
    def demand(self, /) -> Scalar:
        """
        Torque on the wheel in the hand that loosens: braking, or cutting with run-up; in N m.
        """
    @property
    def holds(self, /) -> tuple[Scalar, Scalar]:
        """
        Torque that its thread holds, in N m.
        """
    @property
    def running(self, /) -> Running:
        """
        What running does to the nut.
        """
    @property
    def turns(self, /) -> Answer:
        """
        Whether start, stop and cutting torque turn it back; `no` is not to say that it will not come loose.
        """

@final
class Verdict:
    """
    Everything found about one mounting, worst first.
    """
    def __bool__(self, /) -> bool: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def clear(self, /) -> bool:
        """
        Whether nothing is refused or unknown.
        """
    def finding(self, /, slug: str) -> Finding | None:
        """
        The finding of one rule; None when it was left out.

        Raises:
            TextError: There is no such rule.
        """
    @property
    def findings(self, /) -> list[Finding]:
        """
        One finding a rule, worst first, and among equals the one with the least room.
        """
    @property
    def headline(self, /) -> str:
        """
        What is worst, in one line.
        """
    @property
    def laws(self, /) -> list[str]:
        """
        The laws it was judged under.
        """
    @property
    def left_out(self, /) -> list[str]:
        """
        The rules that were left out at the user's word.
        """
    @property
    def name(self, /) -> str:
        """
        What the shop calls the mounting.
        """
    @property
    def worst(self, /) -> Outcome:
        """
        The worst outcome.
        """

@final
class Wear:
    """
    What `wear` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def diameter_left(self, /) -> Scalar:
        """
        Diameter of the wheel after, in mm.
        """
    @property
    def radial(self, /) -> Scalar:
        """
        Wear on radius, in mm.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `radial` in µm.
        """
    @property
    def worn(self, /) -> Scalar:
        """
        Volume worn off the wheel, in mm³.
        """

@final
class Wheel:
    """
    The wheel, as it was when new.

    Every datum may be given, `hubwright.UNKNOWN` (asked for and not known) or left
    out (not asked for). Quantities are text such as `"125 mm"` or pint quantities.

    Args:
        shape: Shape, by its type number.
        diameter: Outside diameter of the new wheel.
        nominal_diameter: Size the diameter is sold by, when the wheel is of a listed inch size.
        thickness: Thickness.
        hole: Hole, as measured.
        nominal_hole: Size the hole is sold by; nominal size of the spigot too.
        smallest_hole: Smallest hole found in several directions.
        largest_hole: Largest hole found in several directions.
        marked_speed: Rotational speed marked on the wheel.
        marked_rim_speed: Rim speed marked on the wheel.
        fastening: How it is held; taken for flanges when nobody asks.
        abrasive: Abrasive.
        bond: Bond.
        marking_says: How its marking compares with the rest; a column `wheel marking` fills this in.
        use_before: Use-before date on the wheel.
        made: Date of manufacture.
        bushing_width: Width of the reducing bushing in the hole.
        bushing_touches_flange: Whether the bushing touches a flange.
        bushing_nested: Whether one bushing sits in another.
        warmer_by: How much warmer than when measured the wheel gets at its hole.
        expansion: Thermal expansion of the wheel.
        tensile_strength: Tensile strength, by the wheel's maker.
        density: Density.
        poisson_ratio: Poisson's ratio.
        burst_factor: Factor against bursting asked for: bursting speed over speed, squared.
        modulus: Modulus of elasticity, in bending.
        allowed_bending: Bending stress allowed: flexural strength of the bond over a factor.
        mass: Mass.
        land_pressure: Greatest pressure of the flanges' lands that its maker allows.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, shape: str | Unknown | None = None, diameter: QuantityLike | Unknown | None = None, nominal_diameter: QuantityLike | Unknown | None = None, thickness: QuantityLike | Unknown | None = None, hole: QuantityLike | Unknown | None = None, nominal_hole: QuantityLike | Unknown | None = None, smallest_hole: QuantityLike | Unknown | None = None, largest_hole: QuantityLike | Unknown | None = None, marked_speed: QuantityLike | Unknown | None = None, marked_rim_speed: QuantityLike | Unknown | None = None, fastening: str | Unknown | None = None, abrasive: str | Unknown | None = None, bond: str | Unknown | None = None, marking_says: str | Unknown | None = None, use_before: date | str | Unknown | None = None, made: date | str | Unknown | None = None, bushing_width: QuantityLike | Unknown | None = None, bushing_touches_flange: bool | str | Unknown | None = None, bushing_nested: bool | str | Unknown | None = None, warmer_by: QuantityLike | Unknown | None = None, expansion: QuantityLike | Unknown | None = None, tensile_strength: QuantityLike | Unknown | None = None, density: QuantityLike | Unknown | None = None, poisson_ratio: PlainLike | Unknown | None = None, burst_factor: PlainLike | Unknown | None = None, modulus: QuantityLike | Unknown | None = None, allowed_bending: QuantityLike | Unknown | None = None, mass: QuantityLike | Unknown | None = None, land_pressure: QuantityLike | Unknown | None = None) -> Wheel: ...
    def __repr__(self, /) -> str: ...
    @property
    def abrasive(self, /) -> Abrasive | Unknown | None:
        """
        Abrasive.
        """
    @property
    def allowed_bending(self, /) -> Scalar | Unknown | None:
        """
        Bending stress allowed: flexural strength of the bond over a factor.
        """
    @property
    def bond(self, /) -> Bond | Unknown | None:
        """
        Bond.
        """
    @property
    def burst_factor(self, /) -> float | Unknown | None:
        """
        Factor against bursting asked for: bursting speed over speed, squared.
        """
    @property
    def bushing_nested(self, /) -> bool | Unknown | None:
        """
        Whether one bushing sits in another.
        """
    @property
    def bushing_touches_flange(self, /) -> bool | Unknown | None:
        """
        Whether the bushing touches a flange.
        """
    @property
    def bushing_width(self, /) -> Scalar | Unknown | None:
        """
        Width of the reducing bushing in the hole.
        """
    @property
    def density(self, /) -> Scalar | Unknown | None:
        """
        Density.
        """
    @property
    def diameter(self, /) -> Scalar | Unknown | None:
        """
        Outside diameter of the new wheel.
        """
    @property
    def expansion(self, /) -> Scalar | Unknown | None:
        """
        Thermal expansion of the wheel.
        """
    @property
    def fastening(self, /) -> Fastening | Unknown | None:
        """
        How it is held; taken for flanges when nobody asks.
        """
    @property
    def hole(self, /) -> Scalar | Unknown | None:
        """
        Hole, as measured.
        """
    @property
    def land_pressure(self, /) -> Scalar | Unknown | None:
        """
        Greatest pressure of the flanges' lands that its maker allows.
        """
    @property
    def largest_hole(self, /) -> Scalar | Unknown | None:
        """
        Largest hole found in several directions.
        """
    @property
    def made(self, /) -> date | Unknown | None:
        """
        Date of manufacture.
        """
    @property
    def marked_rim_speed(self, /) -> Scalar | Unknown | None:
        """
        Rim speed marked on the wheel.
        """
    @property
    def marked_speed(self, /) -> Scalar | Unknown | None:
        """
        Rotational speed marked on the wheel.
        """
    @property
    def marking_says(self, /) -> MarkingSays | Unknown | None:
        """
        How its marking compares with the rest; a column `wheel marking` fills this in.
        """
    @property
    def mass(self, /) -> Scalar | Unknown | None:
        """
        Mass.
        """
    @property
    def modulus(self, /) -> Scalar | Unknown | None:
        """
        Modulus of elasticity, in bending.
        """
    @property
    def nominal_diameter(self, /) -> Scalar | Unknown | None:
        """
        Size the diameter is sold by, when the wheel is of a listed inch size.
        """
    @property
    def nominal_hole(self, /) -> Scalar | Unknown | None:
        """
        Size the hole is sold by; nominal size of the spigot too.
        """
    @property
    def poisson_ratio(self, /) -> float | Unknown | None:
        """
        Poisson's ratio.
        """
    @property
    def shape(self, /) -> Shape | Unknown | None:
        """
        Shape, by its type number.
        """
    @property
    def smallest_hole(self, /) -> Scalar | Unknown | None:
        """
        Smallest hole found in several directions.
        """
    @property
    def tensile_strength(self, /) -> Scalar | Unknown | None:
        """
        Tensile strength, by the wheel's maker.
        """
    @property
    def thickness(self, /) -> Scalar | Unknown | None:
        """
        Thickness.
        """
    @property
    def use_before(self, /) -> date | Unknown | None:
        """
        Use-before date on the wheel.
        """
    @property
    def warmer_by(self, /) -> Scalar | Unknown | None:
        """
        How much warmer than when measured the wheel gets at its hole.
        """

@final
class WheelRings:
    """
    What `rings` found, from the inside outwards.
    """
    def __repr__(self, /) -> str: ...
    @property
    def bond_factor(self, /) -> float | None:
        """
        Strength over tension; None without a strength or without tension.
        """
    @property
    def bond_strength(self, /) -> Scalar | None:
        """
        Strength of the bond; None when it was not given.
        """
    @property
    def bond_tension(self, /) -> Scalar:
        """
        Greatest tension of a bond, in MPa; zero where there is none.
        """
    @property
    def bore(self, /) -> Scalar:
        """
        Bore of the innermost ring; zero for a solid disc.
        """
    @property
    def interfaces(self, /) -> list[Interface]:
        """
        Where they meet.
        """
    @property
    def rings(self, /) -> list[RingFound]:
        """
        The rings.
        """
    @property
    def speed(self, /) -> Scalar:
        """
        Rotational speed.
        """

@final
class Working:
    """
    How a result came about, step by step; the last step is the result.

    It prints as numbered lines.
    """
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    @property
    def steps(self, /) -> list[Step]:
        """
        The steps in order.
        """

@final
class WornSpeed:
    """
    What `worn_speed` found.
    """
    def __repr__(self, /) -> str: ...
    @property
    def capped(self, /) -> bool:
        """
        Whether a marking holds that down.
        """
    @property
    def free_speed(self, /) -> Scalar:
        """
        Speed that the worn wheel would need, whatever is marked.
        """
    @property
    def new_speed(self, /) -> Scalar:
        """
        Speed to set with the new wheel, never above a marking.
        """
    @property
    def rim_limit_speed(self, /) -> Scalar | None:
        """
        Speed at which the worn wheel's rim would reach the marked rim speed; the marking in turns still caps.
        """
    @property
    def rim_speed_if_kept(self, /) -> Scalar:
        """
        Rim speed of the worn wheel where the speed of the new one is kept.
        """
    @property
    def speed(self, /) -> Scalar:
        """
        Speed to set with the worn wheel, never above a marking.
        """
    def working(self, /) -> Working:
        """
        The steps, recomputed; the last one's result is `speed` in rev/min.
        """
    @property
    def worn_rim_speed(self, /) -> Scalar:
        """
        Rim speed of the worn wheel at the speed to set.
        """

def at_20_c(measured: QuantityLike, temperature: QuantityLike, expansion: QuantityLike, *, instrument_expansion: QuantityLike | None = None) -> At20:
    """
    The size that a part has at 20 °C, at which limits hold.

    L₂₀ = L · (1 + αᵢ (t − 20 °C)) / (1 + α (t − 20 °C)).

    Args:
        measured: Size that the instrument shows, above zero.
        temperature: Temperature of the part as a thermometer shows it, like `"23.5 °C"`; -20 to 60 °C.
        expansion: Expansion of the part, like `"11.5 um/m/K"`; `published_expansion` has ranges.
        instrument_expansion: Expansion of the instrument, where it was as warm as the part and reads
            right at 20 °C. Without it the reading is taken for the true size at this temperature.

    Returns:
        At20: `.size`.

    Raises:
        UnitError, TextError, OutOfRangeError: As for `Limits.judge`, and outside the ranges above.

    Source: ISO 1 for 20 °C (from memory); linear thermal expansion.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.at_20_c("40.010 mm", "28 °C", "23.6 um/m/K")
        <At20 40.002448 mm>
        >>> hw.joint.at_20_c("40.010 mm", "28 °C", "23.6 um/m/K", instrument_expansion="11.5 um/m/K")
        <At20 40.006128 mm>
    """

def balance(*, mass: QuantityLike, speed: QuantityLike, grade: QuantityLike | None = None, unbalance: QuantityLike | None = None, radius: QuantityLike | None = None) -> Balance:
    """
    What a balance grade allows a rotor at a speed, and what its unbalance comes to.

    U = m e, G = e ω, so that a grade allows U = m G / ω; F = U ω² turns with it. One rigid rotor in one
    plane, without resonance.

    Args:
        mass: Mass of all that turns: wheel, hub, flanges, nut.
        speed: Rotational speed, above zero.
        grade: Grade asked for, like `"G2.5"` or `"2.5 mm/s"`.
        unbalance: Unbalance that it has, zero or above, like `"120 g mm"`.
        radius: Radius of the ring that weights sit on, for masses.

    Returns:
        Balance: `.permissible`, `.permissible_mass`, `.reached`, `.force`, `.within` and more.

    Raises:
        UnitError, TextError: No quantities of these kinds.
        OutOfRangeError: A figure that is not above zero.

    Source: ISO 21940-11, from memory.

    Examples:
        >>> import hubwright as hw
        >>> found = hw.wheel.balance(mass="12 kg", speed="1450 rpm", grade="G6.3", radius="80 mm")
        >>> print(f"{found.permissible:.1f~P}, {found.permissible_mass.m_as('g'):.2f} g at the ring")
        497.9 g·mm, 6.22 g at the ring
        >>> hw.wheel.balance(mass="3 kg", speed="2850 rpm", grade="G2.5", unbalance="30 g mm")
        <Balance 25.13 g mm allowed, 30 g mm is G2.9845, ABOVE THE GRADE>
    """

def balance_grades() -> list[Published]:
    """
    Balance grades with what they are used for, each with its source. Finest first.

    Returns:
        One `Published` a grade, in mm/s.

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.balance_grades()[2]
        <Published machine tools: 2.5 mm/s [common practice, no source]>
    """

def block_stack(height: QuantityLike, blocks: QuantitiesLike, *, within: QuantityLike) -> BlockStack:
    """
    The fewest blocks of a set that make a height to within so much; of as many, the nearest.

    Args:
        height: The height wanted, above zero.
        blocks: The blocks of your set, each once: a list of lengths, or an array with a unit; 200 at most.
        within: How far off the stack may be.

    Returns:
        BlockStack: `.blocks`, `.sum`, `.off_um`.

    Raises:
        UnitError, TextError: No lengths.
        MissingError: No blocks.
        OutOfRangeError: No five blocks come near enough; the message says how near.

    Source: every choice of up to five is tried. That no more than five are wrung is common practice, no source.

    Examples:
        >>> import hubwright as hw
        >>> hw.gauge.block_stack("24.615 mm", ["1.005 mm", "1.11 mm", "1.5 mm", "20 mm", "21 mm"], within="0.5 um")
        <BlockStack 21 mm + 1.5 mm + 1.11 mm + 1.005 mm, 0 µm off>
    """

def blotter_limits(shape: str, flange_diameter: QuantityLike, *, land: QuantityLike | None = None, abrasive: str | None = None, bond: str | None = None) -> BlotterLimits:
    """
    Whether a wheel needs blotters, and the sizes that cover a flange.

    Args:
        shape: Shape of the wheel.
        flange_diameter: Diameter of the flange, above zero.
        land: Width of its land, at most half of the flange.
        abrasive: Abrasive of the wheel; one that is not given is taken for one that needs blotters.
        bond: Bond of the wheel, likewise.

    Returns:
        BlotterLimits: `.need`, `.least_diameter`, `.greatest_hole`.

    Raises:
        UnitError, TextError, OutOfRangeError: As for `rim_speed`.

    Source: 29 CFR 1910.215(c)(6) and (d)(5).

    Examples:
        >>> import hubwright as hw
        >>> limits = hw.wheel.blotter_limits("type-1", "80 mm", land="8 mm")
        >>> limits.need
        <BlotterNeed.NEEDED: 'needed'>
        >>> print(limits.greatest_hole.value)
        64.0 millimeter
    """

def boring(taper: TaperLike, *, small_diameter: QuantityLike, length: QuantityLike, stock: QuantityLike, drills: QuantitiesLike) -> Boring:
    """
    Drilling before a taper is bored: which drill, how deep, what is left on each side.

    Args:
        taper: The taper, as text or what `hubwright.joint.taper` gave.
        small_diameter: Diameter of the bore's small end.
        length: Length of the bore.
        stock: Least stock to leave on one side, zero or above.
        drills: The drills of the shop: a list of lengths, or an array with a unit.

    Returns:
        Boring: `.through`, `.steps`, `.large_diameter`.

    Raises:
        UnitError, TextError: No taper or no lengths.
        MissingError: No drills.
        OutOfRangeError: The smallest drill leaves too little.

    Source: geometry; the stock to leave is yours.

    Examples:
        >>> import hubwright as hw
        >>> found = hw.gauge.boring(
        ...     "3 in/ft", small_diameter="25 mm", length="40 mm", stock="0.5 mm", drills=["22 mm", "24 mm", "28 mm"],
        ... )
        >>> found
        <Boring 24 mm through, 1 larger>
        >>> found.steps[0]
        <DrillStep 28 mm, 24 mm deep, 0.5 mm left>
    """

def brazed_key(*, bore: QuantityLike, slot_width: QuantityLike, depth: QuantityLike, key_width: QuantityLike, length: QuantityLike, rise: QuantityLike | None = None, hub_expansion: QuantityLike | None = None, key_expansion: QuantityLike | None = None, chamfer: QuantityLike | None = None, filler: str | None = None, torque: QuantityLike | None = None, sound_share: PlainLike | None = None, allowed_shear: QuantityLike | None = None, hub_length: QuantityLike | None = None) -> BrazedKey:
    """
    A key brazed into a hub: gap when hot, filler, and the stress that a torque makes.

    Args:
        bore: Diameter of the bore.
        slot_width: Width of the slot, below the bore.
        depth: Depth of the slot at the middle, t2.
        key_width: Width of the key.
        length: Length that is brazed.
        rise: How much hotter than when measured it is brazed, up to 1500 K; with both expansions.
        hub_expansion: Mean expansion of the hub over the rise, more than at room temperature.
        key_expansion: Mean expansion of the key over the rise.
        chamfer: Chamfer of the key's bottom edges.
        filler: A filler of `published_gaps()`, such as `"silver, flux"`.
        torque: Torque on the key; with `sound_share`.
        sound_share: Share of the bottom that the filler has wetted, above 0 to 1.
        allowed_shear: Shear stress allowed of the joint.
        hub_length: Length of the hub, which the key may not pass.

    Returns:
        BrazedKey: `.hot_gap`, `.gap_outcome`, `.filler_volume`, `.shear`, `.carries`, `.assumes`, `.advice`.

    Raises:
        MissingError: One of several arguments that belong together.
        UnitError, TextError: No quantities of these kinds, or another filler.
        OutOfRangeError: A slot as wide as the bore, a key longer than its hub, a share outside 0 to 1.

    Conservative: the bottom alone takes the torque, in even shear; walls are not counted.

    Source: linear thermal expansion; geometry; statics; each published gap has its own.

    Examples:
        >>> import hubwright as hw
        >>> found = hw.joint.brazed_key(
        ...     bore="22 mm", slot_width="4.06 mm", depth="1.8 mm", key_width="4 mm", length="18 mm",
        ...     rise="630 K", hub_expansion="20 um/m/K", key_expansion="12 um/m/K", filler="any",
        ...     torque="4 N m", sound_share=0.7, allowed_shear="25 MPa",
        ... )
        >>> found
        <BrazedKey gap 0.0405 mm a side, filler 5.81 mm³, shear 7.215 MPa>
        >>> found.gap_outcome
        <GapOutcome.WITHIN: 'within'>
        >>> found.advice.split(":")[0]
        'Braze before the last facing and finish boring'
    """

def budget(influences: SupportsGetItem[int, Influence]) -> Budget:
    """
    The uncertainty of a length from all that adds to it: root sum of squares, Welch-Satterthwaite, 95 %.

    Args:
        influences: A list of `Influence`, at least one.

    Returns:
        Budget: `.standard`, `.dof`, `.coverage`, `.expanded`.

    Raises:
        MissingError: An empty list.

    Source: JCGM 100, from memory.

    Examples:
        >>> import hubwright as hw
        >>> hw.gauge.budget([
        ...     hw.gauge.Influence("resolution", spread="uniform", size="0.5 um"),
        ...     hw.gauge.Influence("gauge", spread="normal", size="0.4 um"),
        ... ])
        <Budget u 0.0005 mm, U 0.001 mm (k 2)>
    """

def centre_slot(*, bore: QuantityLike, tool_width: QuantityLike, left_mark: QuantityLike, right_mark: QuantityLike, measured_within: QuantityLike | None = None, repeatability: QuantityLike | None = None, depth: QuantityLike | None = None) -> Centring:
    """
    Where a slotting tool stands in a bore, by the two marks that its corners leave.

    Each corner cuts a flat from its side to where the bore passes the edge: the tool is off centre by half of
    the difference of the marks, toward the wide one, and has to go toward the narrow one.

    Args:
        bore: Diameter of the bore.
        tool_width: Width of the tool, below the bore.
        left_mark: Width of the mark on the left, above zero.
        right_mark: Width of the mark on the right, above zero.
        measured_within: How well one mark is measured, either way; a smaller offset says `stay`.
        repeatability: How far off the work can lie when the fixture takes it again, either way.
        depth: Depth of the keyway at the middle, for the feed that is left.

    Returns:
        Centring: `.offset`, `.move_tool`, `.lean`, `.left_over`, `.feed_left`.

    Raises:
        UnitError, TextError: No lengths.
        OutOfRangeError: A mark of no width, marks that meet, a tool as wide as the bore.

    Source: geometry of the circle; that equal marks mean a centred tool is common practice, no source.

    Examples:
        >>> import hubwright as hw
        >>> found = hw.joint.centre_slot(
        ...     bore="22 mm", tool_width="4 mm", left_mark="0.60 mm", right_mark="0.36 mm",
        ...     measured_within="0.02 mm", repeatability="0.01 mm", depth="1.8 mm",
        ... )
        >>> found
        <Centring move the tool right by 0.12 mm>
        >>> print(f"{found.left_over:.2f~P} at most is left, {found.feed_left:.3f~P} to go")
        0.03 mm at most is left, 1.906 mm to go
    """

def chances(*, process_mean: QuantityLike, process_spread: QuantityLike, u: QuantityLike, guard_band: str, low: QuantityLike | None = None, high: QuantityLike | None = None) -> Chances:
    """
    How often a guard band lets bad parts pass and holds good ones back.

    Parts and errors of measuring are taken for normal.

    Args:
        process_mean: Mean size of the parts.
        process_spread: Their standard deviation, above zero.
        u: Standard uncertainty of a measurement, above zero.
        low: Lower limit.
        high: Upper limit.
        guard_band: `"one-sided 95 %"` or `"full"`.

    Returns:
        Chances: `.false_accept`, `.false_reject`, `.accepted`.

    Raises:
        UnitError, TextError, MissingError, OutOfRangeError: As for `decide`.

    Source: JCGM 106, from memory.

    Examples:
        >>> import hubwright as hw
        >>> hw.gauge.chances(
        ...     process_mean="25.0065 mm", process_spread="3.2 um", u="0.9 um", low="25 mm", high="25.013 mm",
        ...     guard_band="one-sided 95 %",
        ... )
        <Chances 0.049 % bad and accepted, 8.929 % good and held back>
    """

def check(mounting: Mounting, *, laws: Names | None = None, without: Names | None = None, today: Any | None = None, flange_tolerance: QuantityLike | None = None, measured_within: QuantityLike | None = None, show: str | None = None) -> Verdict:
    """
    Judges a mounting by every rule.

    Args:
        mounting: One wheel on one hub on one spindle.
        laws: Laws you work under, a list or one text with commas: `us` (when none is given), `us-mi`,
            `us-wa`, `us-ca`, `jp`.
        without: Slugs of rules to leave out, likewise; the verdict says so.
        today: The date that use-before dates are compared with; the computer's when left out.
        flange_tolerance: How much two flanges may differ; 0.5 mm (common practice) when left out.
        measured_within: How well hole and spigot are measured; 0.005 mm (common practice) when left out.
        show: `"mm"` or `"in"`: units in which findings are worded.

    Returns:
        Verdict: All findings, worst first.

    Raises:
        TextError: An unknown law, rule or unit.
        UnitError, OutOfRangeError: A tolerance that is no length above zero.

    Examples:
        >>> import hubwright as hw
        >>> verdict = hw.check(hw.Mounting(
        ...     spindle=hw.Spindle(greatest_speed="3400 rpm"), wheel=hw.Wheel(marked_speed="2850 rpm")))
        >>> verdict.finding("over-speed").says
        'the spindle can turn 3400 rpm, the wheel is marked 2850 rpm'
    """

def check_file(path: str | PathLike[str], *, sheet: str | None = None, mapping: "dict[str, str] | None" = None, decimal: str | None = None, most_megabytes: SupportsIndex = 256, laws: Names | None = None, without: Names | None = None, today: Any | None = None, flange_tolerance: QuantityLike | None = None, measured_within: QuantityLike | None = None, show: str | None = None, progress: Any | None = None) -> Checked:
    """
    Checks a rack kept in a workbook (.xlsx, .ods) or a CSV file.

    What kind of file it is, the sheet that holds mountings, the row of headings under titles,
    separator and decimal marks are found out from the file; `Checked.notes` says what was found.

    Args:
        path: The file.
        sheet: Name of the sheet; the one with headings that are known when left out.
        mapping: Headings of the file, each with the heading of ours that it stands for, such as
            `{"Scheibe": "wheel diameter [mm]"}`; with `""` its column is left out.
        decimal: `"point"` or `"comma"` for numbers held as text; found out column by column when left out.
        most_megabytes: Most that a workbook may unpack to, and that is kept of any table (256).
        laws: As for `check`.
        without: As for `check`.
        today: As for `check`.
        flange_tolerance: As for `check`.
        measured_within: As for `check`.
        show: `"mm"` or `"in"`; what most headings are written in when left out.
        progress: Called with the share that is done, from 0 to 1; an exception in it stops the work.

    Returns:
        Checked: Rows, counts and problems.

    Raises:
        FileError: The file can't be read.
        TableError: It is no table of mountings. A bad row spoils only itself.

    Examples:
        >>> import hubwright as hw
        >>> hw.check_file("no-such-rack.csv")
        Traceback (most recent call last):
        ...
        hubwright.errors.FileError: "no-such-rack.csv" could not be read: No such file or directory (os error 2)
        hint: check the path, and that it is an .xlsx, .ods or CSV file
    """

def check_report_name(path: str | PathLike[str]) -> None:
    """
    Raises a TextError unless a report can have this name.
    """

def check_rows(table: Any, *, units: "dict[str, str] | None" = None, mapping: "dict[str, str] | None" = None, laws: Names | None = None, without: Names | None = None, today: Any | None = None, flange_tolerance: QuantityLike | None = None, measured_within: QuantityLike | None = None, show: str | None = None, progress: Any | None = None) -> Checked:
    """
    Checks a rack held in a table.

    Args:
        table: Anything with an Arrow stream (a pandas or polars DataFrame, a pyarrow Table), or a
            list of dicts. Its column names are headings such as `wheel diameter [mm]`.
        units: Units of columns whose names state none, such as `{"wheel diameter": "mm"}`.
        mapping: As for `check_file`.
        laws: As for `check`.
        without: As for `check`.
        today: As for `check`.
        flange_tolerance: As for `check`.
        measured_within: As for `check`.
        show: As for `check_file`.
        progress: As for `check_file`.

    Returns:
        Checked: Rows, counts and problems; rows count from 1.

    Raises:
        TableError: It is no table of mountings. A bad row spoils only itself.

    Examples:
        >>> import hubwright as hw
        >>> rack = hw.check_rows([
        ...     {"name": "surface", "spindle greatest speed [rpm]": 3400, "wheel marked speed [rpm]": 2850},
        ... ])
        >>> rack.counts.refused
        1
    """

def chord_height(diameter: QuantityLike, width: QuantityLike) -> Scalar:
    """
    Height of a circle over its chord, y = (d − √(d² − b²)) / 2.

    Args:
        diameter: Diameter of the circle, above zero.
        width: Width of the slot, above zero and below the diameter.

    Returns:
        The height, in mm.

    Raises:
        UnitError, TextError, OutOfRangeError: As for `keyway`.

    Source: geometry of the circle.

    Examples:
        >>> import hubwright as hw
        >>> print(f"{hw.joint.chord_height('20 mm', '6 mm'):.4f~P}")
        0.4606 mm
    """

def compare_holding(held: Held, pieces: SupportsGetItem[int, Piece], *, stacks: tuple[QuantityLike, QuantityLike] | None = None) -> list[HeldBy]:
    """
    Ways of holding the nut side by side: what reaches it, stress in the piece, play, and the stacks it holds over.

    Args:
        held: What `holding` found.
        pieces: The ways, each a `Piece`.
        stacks: Least and greatest stack that the hub has to hold, as (least, greatest).

    Returns:
        list[HeldBy]: One for each piece, in their order.

    Raises:
        OutOfRangeError: A size not above zero, or a range that ends before it begins.

    Source: statics; `12 T / (n b² t)` for flats is a pressure that grows with the distance from their middle.

    Examples:
        >>> import hubwright as hw
        >>> found = hw.wheel.holding(
        ...     thread="M16x2", thread_friction=0.14, face_friction=0.12, face_inside="17 mm", face_outside="25 mm",
        ...     land_inside="60 mm", land_outside="76 mm", blotter_friction=0.15, cutting_torque="14 N m",
        ...     preload="9 kN",
        ... )
        >>> tongue = hw.wheel.Piece("tongue", diameter="17 mm", width="4 mm", thickness="2 mm", depth="1.5 mm")
        >>> hw.wheel.compare_holding(found, [tongue, hw.wheel.Piece("nothing")])
        [<HeldBy tongue, nut turned back: no>, <HeldBy nothing, nut turned back: perhaps>]
    """

def cone_fit(*, positions: QuantitiesLike, diameters: QuantitiesLike, u_diameter: QuantityLike | None = None, u_position: QuantityLike | None = None, u_shared: QuantityLike | None = None, large_end: str | None = None) -> ConeFit:
    """
    The cone of least squares through diameters at three or more planes, and whether its flank is straight.

    Args:
        positions: Positions along the axis, increasing: a list of lengths, or an array with a unit.
        diameters: The diameter at each.
        u_diameter: Standard uncertainty of a diameter, each for itself. Where the readings scatter more, their
            scatter counts.
        u_position: Standard uncertainty of a position, each for itself.
        u_shared: Standard uncertainty that all diameters share, as of the instrument's setting.
        large_end: `"high"` (last) or `"low"` (first) where it is known, to be held against the readings.

    Returns:
        ConeFit: `.cone`, `.form`, `.bow`, `.straightness_says` and more.

    Raises:
        UnitError, TextError: No lengths, or another word.
        MissingError: Fewer than three readings.
        ColumnError, OutOfRangeError: Positions without diameters, or out of order; a cylinder, a plate, the wrong
            end named.

    Source: least squares; JCGM 100, from memory.

    Examples:
        >>> import hubwright as hw
        >>> fit = hw.gauge.cone_fit(
        ...     positions=["2 mm", "12 mm", "22 mm", "32 mm", "42 mm"],
        ...     diameters=["30.2004 mm", "31.2002 mm", "32.1995 mm", "33.2006 mm", "34.1996 mm"],
        ... )
        >>> fit
        <ConeFit half angle 2.86206° ± 0.00155°, bend not seen>
    """

def correct_slide(*, rise_read: QuantityLike | None = None, rise_wanted: QuantityLike | None = None, travel: QuantityLike | None = None, along: str | None = None, u_rise: QuantityLike | None = None, small_diameter: QuantityLike | None = None, large_diameter: QuantityLike | None = None, apart: QuantityLike | None = None, u_diameter: QuantityLike | None = None, u_apart: QuantityLike | None = None, measured: MeasuredLike | None = None, wanted: WantedLike | None = None, length: QuantityLike | None = None, pivot_radius: QuantityLike | None = None, part: str | None = None) -> SlideCorrection:
    """
    From what a slide cuts and what is wanted to how far it has to go, and to which side.

    What was cut is given in one of three ways: the rise of an indicator read and wanted over a travel; two
    diameters of a test cut; or a measured cone. An error no greater than its expanded uncertainty is no reason to
    move anything.

    Args:
        rise_read: Rise read over the travel.
        rise_wanted: Rise wanted, as `slide_setting` has it or as read off an original.
        travel: Travel of the indicator.
        along: `"flank"` (the top slide moves) or `"axis"` (the saddle moves).
        u_rise: Standard uncertainty of the difference of the two rises.
        small_diameter: Small diameter of a test cut.
        large_diameter: Its large diameter.
        apart: Distance of their planes.
        u_diameter: Standard uncertainty of a diameter.
        u_apart: Standard uncertainty of the distance.
        measured: A measured cone instead of the two diameters.
        wanted: The taper wanted (text, or what `hubwright.joint.taper` gave), or the measured cone it has to fit.
        length: Length over which the error is told, such as that of the seat; the travel, the distance of the
            planes or the measured span unless given.
        pivot_radius: From the slide's pivot to where it is tapped and indicated.
        part: `"hub"` or `"spindle"`, for the words.

    Returns:
        SlideCorrection: `.error`, `.per_side`, `.toward`, `.tap`, `.advice`.

    Raises:
        UnitError, TextError, OutOfRangeError: No quantities of their kind, a cylinder, a plate, the wrong end named.
        MissingError: Arguments that belong together and came alone.

    Source: geometry; uncertainties by JCGM 100, from memory.

    Examples:
        >>> import hubwright as hw
        >>> found = hw.gauge.correct_slide(
        ...     small_diameter="30 mm", large_diameter="35.024 mm", apart="40 mm", u_diameter="2.1 um",
        ...     u_apart="0 mm", wanted="1:8", pivot_radius="120 mm", part="hub",
        ... )
        >>> print(found)
        hub too open by 12 µm per side over 40 mm (± 3); move the slide toward the smaller angle; tap 35.9 µm (± 8.9) at 120 mm from the pivot
    """

def creep_stroke(*, wheel_diameter: QuantityLike, depth: QuantityLike, length: QuantityLike) -> Scalar:
    """
    How far the table goes in a creep feed pass: L + √(a (D - a)).

    Args:
        wheel_diameter: Diameter of the wheel.
        depth: Depth of cut, below the wheel's radius.
        length: Length of the work.

    Returns:
        The travel.

    Raises:
        UnitError, TextError, OutOfRangeError: No lengths, or not above zero.

    Source: Groover, problem 25.10.

    Examples:
        >>> import hubwright as hw
        >>> print(f"{hw.wheel.creep_stroke(wheel_diameter='250 mm', depth='25 mm', length='200 mm'):.0f~P}")
        275 mm
    """

def decide(measured: QuantityLike, *, u: QuantityLike, guard_band: str, low: QuantityLike | None = None, high: QuantityLike | None = None) -> Decision:
    """
    Judges a measured length or angle by its limits, with a guard band.

    It is within when it stays the guard band inside of its limits, outside when it lies the guard band beyond one,
    and otherwise can't be told.

    Args:
        measured: A length or an angle.
        u: Its standard uncertainty, above zero.
        low: Lower limit.
        high: Upper limit.
        guard_band: `"one-sided 95 %"` (1.645 u) or `"full"` (2 u). Which one an edition asks for is yours to know.

    Returns:
        Decision: `.ruling`, `.chance_within`, `.accept_low`, `.accept_high` and more.

    Raises:
        UnitError, TextError: Neither lengths nor angles, or not all of one kind.
        MissingError: No limit.
        OutOfRangeError: An uncertainty that is not above zero, or limits in the wrong order.

    Source: ISO 14253-1 and JCGM 106, from memory.

    Examples:
        >>> import hubwright as hw
        >>> hw.gauge.decide("25.0118 mm", u="0.9 um", low="25 mm", high="25.013 mm", guard_band="one-sided 95 %")
        <Decision can't tell, 90.9 % within, guard band one-sided 95 %>
        >>> hw.gauge.decide("2.86 deg", u="0.001 deg", high="2.87 deg", guard_band="full").ruling
        <Ruling.WITHIN: 'within'>
    """

def deviation_by_formula(nominal: QuantityLike, letter: str) -> Scalar:
    """
    Fundamental deviation of a shaft as the formula gives it; the printed table wins where they differ.

    Args:
        nominal: Nominal size, above 0 to 500 mm.
        letter: Letter of a shaft that has a formula at this size.

    Returns:
        The deviation, a length in whole µm.

    Raises:
        UnitError, TextError, OutOfRangeError: No length, outside the range, or another letter.

    Source: ISO 286-1, as reprinted in Machine Drawing (Narayana), Table 15.4.

    Examples:
        >>> import hubwright as hw
        >>> print(f"{hw.joint.deviation_by_formula('2 mm', 'f').to('um'):.0f~P}")
        -7 µm
    """

def disk_distance(taper: TaperLike, small: QuantityLike, large: QuantityLike) -> Scalar:
    """
    How far apart the centres of two disks must be for straightedges on both to make a taper.

    Args:
        taper: The taper, as text or what `hubwright.joint.taper` gave.
        small: Diameter of the small disk.
        large: Diameter of the large disk.

    Returns:
        The distance, a length.

    Raises:
        UnitError, TextError, OutOfRangeError: No taper, no lengths, or disks of one size.

    Source: Machinery's Handbook, 31st edition, p. 701.

    Examples:
        >>> import hubwright as hw
        >>> print(f"{hw.gauge.disk_distance('3/4 in/ft', '1-1/4 in', '1-1/2 in').m_as('in'):.3f} in")
        4.002 in
    """

def disk_taper(small: QuantityLike, large: QuantityLike, centres_apart: QuantityLike) -> Taper:
    """
    The taper of the two straightedges that touch two disks, sin α = (D − d) / (2 C).

    Args:
        small: Diameter of the small disk.
        large: Diameter of the large disk.
        centres_apart: Distance of their centres.

    Returns:
        Taper: `.slant_of_one_side` is the slant where one side is square to something.

    Raises:
        UnitError, TextError, OutOfRangeError: No lengths, disks of one size, or one inside the other.

    Source: Machinery's Handbook, 31st edition, p. 701.

    Examples:
        >>> import hubwright as hw
        >>> print(f"{hw.gauge.disk_taper('1 in', '1-1/2 in', '5 in').in_per_ft:.4f} in/ft")
        1.2015 in/ft
    """

def dividing(divisions: int, ratio: int, circles: SupportsGetItem[int, int] | None = None) -> list[Division]:
    """
    Turns of a dividing head's crank from one division to the next.

    Args:
        divisions: How many, 1 to 1000.
        ratio: Turns of the crank for one of the work, 1 to 1000; 40 on most heads.
        circles: Holes of the plates' circles; without them 15 to 49, as on three common plates, from memory.

    Returns:
        Every circle that divides exactly; none when none does.

    Raises:
        UnitError, OutOfRangeError: Not whole numbers, or outside the ranges above.

    Source: arithmetic.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.dividing(6, 40)[0]
        <Division 6 turns and 10 holes in the circle of 15>
    """

def dress(*, speed: QuantityLike, lead: QuantityLike | None = None, traverse: QuantityLike | None = None, overlap: PlainLike | None = None, dresser_width: QuantityLike | None = None, tip_radius: QuantityLike | None = None, depth: QuantityLike | None = None) -> Dressing:
    """
    Lead, overlap and thread of a dressing pass: s = v / n, U = b / s, s² / (8 r).

    Args:
        speed: Rotational speed of the wheel while it is dressed.
        lead: Travel in a turn of the wheel, or
        traverse: speed of the dresser, or
        overlap: how many times each point is to be passed.
        dresser_width: Width of the dresser where it cuts; without it that of a round tip at `depth`.
        tip_radius: Radius of the diamond's tip.
        depth: Depth of dressing, below that radius.

    Returns:
        Dressing: `.lead`, `.traverse`, `.overlap`, `.thread_height` and more.

    Raises:
        MissingError: None of lead, traverse and overlap, or an overlap without a width.
        UnitError, TextError: No quantities of these kinds, or more than one of the three.
        OutOfRangeError: A figure not above zero, or a lead that a tip of this radius leaves ridges in.

    Source: geometry.

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.dress(speed="2900 rpm", lead="0.12 mm", dresser_width="0.8 mm", tip_radius="0.25 mm")
        <Dressing lead 0.12 mm, overlap 6.67>
        >>> found = hw.wheel.dress(speed="1410 rpm", overlap=2, dresser_width="0.273 mm")
        >>> print(f"{found.traverse.m_as('mm/min'):.1f} mm/min")
        192.5 mm/min
    """

def elastic_limit(diameter: QuantityLike, hub_diameter: QuantityLike, hub_yield: QuantityLike) -> ElasticLimit:
    """
    Pressure in its bore that a hub at rest carries without yielding.

    Args:
        diameter: Diameter of the joint, above zero.
        hub_diameter: Outside diameter of the hub, above that of the joint.
        hub_yield: Stress at which the hub yields, above zero.

    Returns:
        ElasticLimit: `.von_mises` and `.greatest_shear`.

    Raises:
        UnitError, TextError, OutOfRangeError: As for `hubwright.wheel.rim_speed`.

    Source: Lamé; Timoshenko and Goodier, Theory of Elasticity.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.elastic_limit("25 mm", "45 mm", "300 MPa")
        <ElasticLimit 117.8897 MPa after von Mises, 103.7037 MPa by shear>
    """

def field_list() -> list[tuple[str, str, str, str, list[str], list[str], str, str]]:
    """
    Every field of a mounting, as rows of place, attribute, heading, kind, units, words, what `none` says, and doc.
    """

def finest_grade(cone_error: QuantityLike, length: QuantityLike) -> AngleGrade | None:
    """
    The finest grade whose tolerance holds an error of the cone's included angle.

    Args:
        cone_error: Error of the included angle: twice that of the half angle.
        length: Length of the cone, over 6 to 630 mm.

    Returns:
        AngleGrade: None when even AT12 is exceeded.

    Raises:
        UnitError, TextError, OutOfRangeError: No angle, no length, or another length.

    Source: ISO 1947, from memory: it may caution, never refuse.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.finest_grade("0.01 deg", "40 mm")
        <AngleGrade AT6 over 40 mm: 0.01 mm on diameter>
    """

def fit(fit: str) -> Fit:
    """
    Limits of hole and shaft, and the clearance between them.

    Args:
        fit: Nominal size, hole and shaft, like `"20 H7/g6"` or `"1-1/4 in H7/g6"`.

    Returns:
        Fit: `.kind`, `.most_clearance_um`, `.least_clearance_um` (negative is interference),
        `.hole` and `.shaft`.

    Raises:
        TextError, OutOfRangeError: As for `limits`.

    Source: ISO 286-1 as for `limits`; the rest is arithmetic.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.fit("20 H7/g6")
        <Fit 20 mm H7/g6, clearance: 7 to 41 µm>
    """

def fits_for(nominal: QuantityLike, least_clearance: QuantityLike, most_clearance: QuantityLike) -> list[RankedFit]:
    """
    Preferred fits whose clearance always lies inside a window, best first.

    The best uses the largest share of the window: its tolerances are the widest that still serve,
    so it costs least to make. Equal shares come in the order of the lists, first choice before the
    rest, H holes before h shafts.

    Args:
        nominal: Nominal size, above 0 to 3150 mm.
        least_clearance: Least clearance on diameter that will do; negative is interference.
        most_clearance: Most clearance on diameter that will do, above the least.

    Returns:
        list[RankedFit]: Empty where no preferred fit lies inside.

    Raises:
        UnitError, TextError: No lengths.
        OutOfRangeError: A nominal size outside the standard, or a window that is none.

    Source: ANSI B4.2-1978, ten preferred fits of each basis, and ISO 286-1:2010, fits with H
    holes, both read once in a reprint; each result names its list.

    Examples:
        >>> import hubwright as hw
        >>> for found in hw.joint.fits_for("25 mm", "5 um", "45 um")[:2]:
        ...     print(found)
        <RankedFit 25 mm H7/g6, clearance: 7 to 41 µm, 85 % of the window>
        <RankedFit 25 mm G7/h6, clearance: 7 to 41 µm, 85 % of the window>
    """

def fitted_roughness(*, tested_roughness: QuantityLike, tested_thickness: QuantityLike, exponent: PlainLike, chip_thickness: QuantityLike) -> Scalar:
    """
    Roughness by a law fitted to your own tests: Ra = R1 (h_eq / h1)^x. It predicts nothing outside them.

    Args:
        tested_roughness: Roughness found in a test.
        tested_thickness: Equivalent chip thickness of that test.
        exponent: Exponent fitted to two tests or more, 0 to 2; 0.15 to 0.6 are recalled.
        chip_thickness: Equivalent chip thickness asked about.

    Returns:
        The roughness that the curve passes through.

    Raises:
        UnitError, TextError, OutOfRangeError: No lengths, or an exponent outside 0 to 2.

    Source: a fitted form; its figures are yours.

    Examples:
        >>> import hubwright as hw
        >>> ra = hw.wheel.fitted_roughness(
        ...     tested_roughness="0.9 um", tested_thickness="1 um", exponent=0.35, chip_thickness="0.12 um",
        ... )
        >>> print(f"{ra.m_as('um'):.3f} um")
        0.429 um
    """

def flange_limits(shape: str, diameter: QuantityLike, kind: str, *, hole: QuantityLike | None = None) -> FlangeLimits:
    """
    Least dimensions of a flange for a wheel.

    The diameter is the larger of a third of the new wheel (a quarter for cutting-off wheels) and
    the row of the flange's table at or below the wheel.

    Args:
        shape: Shape of the wheel, such as `"type-1"` or `Shape.TYPE_1`.
        diameter: Diameter of the new wheel, above zero.
        kind: Kind of flange: `unrelieved`, `relieved`, `adaptor`, `adaptor-heavy` or `sleeve`.
        hole: Hole of the wheel; needed for adaptors and sleeves.

    Returns:
        FlangeLimits: Each limit a `Limit` with value, source and what governs it, or None.

    Raises:
        MissingError: An adaptor or sleeve without the hole.
        UnitError, TextError, OutOfRangeError: As for `rim_speed`.

    Source: 29 CFR 1910.215(c)(1), (c)(5) and Tables O-4 to O-8.

    Examples:
        >>> import hubwright as hw
        >>> limits = hw.wheel.flange_limits("type-1", "14 in", "relieved")
        >>> print(f"{limits.least_diameter.value.to('in'):.3f~P}", limits.least_diameter.governs)
        4.667 in ratio
    """

def friction_ranges() -> list[Published]:
    """
    Published friction of press and shrink fits, by pairing and way of joining.

    Of a pressed-in pair the greater figure is where it lets go, the smaller one while it slips.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.friction_ranges()[0]
        <Published steel on steel, oil pressure, mineral oil: 0.12 [DIN 7190-1, friction of interference fits (from memory, unverified)]>
    """

def grade_by_formula(nominal: QuantityLike, grade: str) -> Scalar:
    """
    Standard tolerance as the formula gives it; the printed table wins where they differ.

    Args:
        nominal: Nominal size, above 0 to 500 mm.
        grade: `IT01`, `IT0`, `IT1` or `IT5` to `IT11`.

    Returns:
        The tolerance, a length.

    Raises:
        UnitError, TextError, OutOfRangeError: No length, outside the range, or another grade.

    Source: ISO 286-1, as reprinted in Machine Drawing (Narayana), Table 15.4.

    Examples:
        >>> import hubwright as hw
        >>> print(f"{hw.joint.grade_by_formula('20 mm', 'IT6').to('um'):.0f~P}")
        13 µm
    """

def grind(*, kind: str, wheel_diameter: QuantityLike, speed: QuantityLike, depth: QuantityLike, width: QuantityLike, work_speed: QuantityLike, work_diameter: QuantityLike | None = None, specific_energy: QuantityLike | None = None, spindle_power: QuantityLike | None = None, efficiency: PlainLike | None = None, spindle_torque: QuantityLike | None = None, grains: QuantityLike | None = None, chip_width_ratio: PlainLike | None = None, marked_speed: QuantityLike | None = None) -> Ground:
    """
    What a cut removes, how thick its chips are, and what it asks of the spindle.

    Q = a b vw, h_eq = a vw / vs, l = √(a d_e) with d_e = ds dw / (dw ± ds), h = √(4 / (C r) · vw / vs · √(a / d_e)),
    P = u Q, F = P / vs, T = P / ω. Specific energy, cutting points and chip shape are shop data; published
    ranges are wide: see `grinding_ranges`.

    Args:
        kind: `surface`, `external` or `internal`.
        wheel_diameter: Diameter of the wheel as it is now.
        speed: Rotational speed of the wheel.
        depth: Depth of cut, below the wheel's radius.
        width: Width of cut.
        work_speed: Speed of the work past the wheel.
        work_diameter: Diameter of round work; of a bore, above the wheel's.
        specific_energy: Energy to grind away a volume, like `"40 J/mm3"`; yours, for this work on this machine.
        spindle_power: Power of the spindle, to be compared with.
        efficiency: The share of it that reaches the wheel, above 0 and up to 1; needed with `spindle_power`, 1 where that is measured at the wheel.
        spindle_torque: Torque that the spindle has at this speed, to be compared with.
        grains: Cutting points in an area of the wheel's face, like `"2 1/mm2"`.
        chip_width_ratio: Width of a chip over its thickness.
        marked_speed: Rotational speed marked on the wheel.

    Returns:
        Ground: `.removal_rate`, `.equivalent_chip_thickness`, `.contact_length`, `.power`, `.torque`, `.spindle_carries` and more.

    Raises:
        MissingError: Round work without its diameter, or one of power and efficiency.
        UnitError, TextError: No quantities of these kinds, or another kind of grinding.
        OutOfRangeError: A figure not above zero, a cut as deep as the wheel's radius, a bore no larger than its wheel.

    Source: kinematics; Malkin and Guo; Rowe; recalled, and checked against Groover's problems.

    Examples:
        >>> import hubwright as hw
        >>> found = hw.wheel.grind(
        ...     kind="surface", wheel_diameter="200 mm", speed="2900 rpm", depth="15 um", width="15 mm",
        ...     work_speed="0.25 m/s", specific_energy="35 J/mm3", spindle_power="2.2 kW", efficiency=0.85,
        ... )
        >>> found
        <Ground 56.25 mm3/s, 1969 W, MORE THAN THE SPINDLE HAS>
        >>> print(f"{found.equivalent_chip_thickness.m_as('um'):.3f} um, contact {found.contact_length:.2f~P}")
        0.123 um, contact 1.73 mm
    """

def grinding_ranges() -> list[Published]:
    """
    Published ranges of grinding practice, each with its source. They are wide: your own tests come first.

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.grinding_ranges()[7]
        <Published grinding ratio: 95 to 125 [Groover, Fundamentals of Modern Manufacturing:4th edition, chapter 25, grinding (read)]>
    """

def grinding_ratio(*, ground: QuantityLike, worn: QuantityLike) -> float:
    """
    Grinding ratio: volume ground away over volume of the wheel worn off.

    Args:
        ground: Volume ground away; of a bore or a shaft by `ring_volume`.
        worn: Volume worn off the wheel, likewise.

    Returns:
        The ratio.

    Raises:
        UnitError, TextError, OutOfRangeError: No volumes, or not above zero.

    Source: definition; Groover, problem 25.3.

    Examples:
        >>> import hubwright as hw
        >>> bore = hw.wheel.ring_volume(outside="252.5 mm", inside="250 mm", length="125 mm")
        >>> rim = hw.wheel.ring_volume(outside="150 mm", inside="149.75 mm", length="20 mm")
        >>> print(f"{hw.wheel.grinding_ratio(ground=bore, worn=rim):.1f}")
        104.8
    """

def hand_force(torque: QuantityLike, length: QuantityLike) -> Scalar:
    """
    Force of the hand that a torque takes, F = T / L.

    Args:
        torque: The torque, above zero.
        length: From the nut's axis to the hand, above zero.

    Returns:
        Force, in N.

    Raises:
        UnitError, TextError, OutOfRangeError: Not quantities of their kind, or not above zero.

    Source: statics.

    Examples:
        >>> import hubwright as hw
        >>> print(f"{hw.joint.hand_force('36 N m', '180 mm'):.0f~P}")
        200 N
    """

def holding(*, thread: ThreadLike, thread_friction: SpanLike, face_friction: SpanLike, face_inside: QuantityLike, face_outside: QuantityLike, land_inside: QuantityLike, land_outside: QuantityLike, blotter_friction: SpanLike, cutting_torque: QuantityLike, torque: QuantityLike | None = None, preload: QuantityLike | None = None, diameter: QuantityLike | None = None, thickness: QuantityLike | None = None, density: QuantityLike | None = None, speed: QuantityLike | None = None, hole: QuantityLike | None = None, run_up_time: QuantityLike | None = None, stop_time: QuantityLike | None = None, rotation: str | None = None, loose_share: SpanLike | None = None, factor: PlainLike | None = None, pressure_limit: QuantityLike | None = None, flange_hole: QuantityLike | None = None, flange_thickness: QuantityLike | None = None, flange_modulus: QuantityLike | None = None, flange_poisson: PlainLike | None = None, recess: QuantityLike | None = None, nut_mass: QuantityLike | None = None, nut_outside: QuantityLike | None = None) -> Held:
    """
    What holds a wheel on between two flanges: preload, pressure on the land, friction that drives the wheel, how the loose
    flange dishes, and whether anything turns the nut back. Frictions are ranges, and so is what follows.

    A pass says that start, stop and cutting torque do not turn the nut, never that it will not come loose: a loose flange can
    walk under a turning load, and vibration and creep of the blotters eat preload. Key it.

    Args:
        thread: Thread of the nut, like `"M16x2"`; its hand counts with `rotation`.
        thread_friction: Friction in it, above 0 and up to 1: a number, or (least, greatest).
        face_friction: Friction between nut, or the washer that turns with it, and loose flange.
        face_inside: Inside diameter of that face.
        face_outside: Outside diameter of that face.
        land_inside: Inside diameter of the flanges' lands; of two unlike ones give the narrower.
        land_outside: Outside diameter of them.
        blotter_friction: Friction of flange and wheel through a blotter.
        cutting_torque: Greatest torque of cutting, zero or above.
        torque: Torque on the nut, above zero; or instead
        preload: force that it clamps with, taken as exact: give the least you are sure of.
        diameter: Diameter of the wheel, with
        thickness: its thickness,
        density: its density,
        speed: its speed, and
        hole: its hole ("0 mm" unless given), for the torque of its inertia.
        run_up_time: Time from rest to speed, with the wheel; without it run-up is not in what is asked, and an unkeyed nut
            that it would loosen is not told to hold.
        stop_time: Time from speed to rest, likewise.
        rotation: Which way the spindle runs, seen from the nut; without it, or with `both`, both ways are told.
        loose_share: Share of the torque through the loose flange, 0 to 1; 0.5 (both sides alike) to 1 (the other has
            slipped) unless given.
        factor: Factor against slipping asked for, 1 or more.
        pressure_limit: Greatest pressure allowed on the land.
        flange_hole: Hole of the loose flange, with
        flange_thickness: thickness of its plate behind the recess,
        flange_modulus: modulus of elasticity,
        flange_poisson: Poisson's ratio, and
        recess: depth of the recess, for how far it dishes.
        nut_mass: Mass of the nut, with the wheel, `speed` and one of the times, for a keyed flange.
        nut_outside: Outside diameter of the nut, with `nut_mass`; its inside is the thread's pitch diameter.

    Returns:
        Held: `.preload`, `.land_pressure`, `.factor_keyed`, `.factor_unkeyed`, `.takes_along`, `.unscrewing`, `.dish`,
        `.says`, `.svg()` and more.

    Raises:
        MissingError: Neither torque nor preload, or one of several arguments that belong together.
        UnitError, TextError: Not a quantity of its kind, or torque and preload both.
        OutOfRangeError: A friction, size, time or torque that makes no sense.

    Source: Shigley, power screws and disc clutches; Timoshenko and Woinowsky-Krieger for the flange.

    Examples:
        >>> import hubwright as hw
        >>> found = hw.wheel.holding(
        ...     thread="M16x2", thread_friction=0.14, face_friction=0.12, face_inside="17 mm", face_outside="25 mm",
        ...     land_inside="60 mm", land_outside="76 mm", blotter_friction=(0.15, 0.3), cutting_torque="14 N m",
        ...     preload="9 kN", diameter="200 mm", hole="32 mm", thickness="20 mm", density="2250 kg/m3",
        ...     speed="3000 rpm", stop_time="0.5 s", rotation="anticlockwise",
        ... )
        >>> found
        <Held 46.11 to 92.22 N m a face; nut turned back: no>
        >>> found.says[0]
        'If the loose flange slips, it takes the nut along whatever the torque: 0.12 × 10.5 = 1.3 mm at the face beats 0.9 mm at the thread.'
    """

def hole_circle(holes: int, diameter: QuantityLike, start: QuantityLike | None = None) -> HoleCircle:
    """
    Coordinates of holes that lie evenly on a circle.

    Args:
        holes: How many, 1 to 1000.
        diameter: Diameter of the circle, above zero.
        start: Angle of the first hole from the x axis, anticlockwise; zero unless given.

    Returns:
        HoleCircle: `.holes`, each with `.angle`, `.x` and `.y`; `.chord` and `.spacing`.

    Raises:
        UnitError, TextError, OutOfRangeError: Not quantities of their kind, or outside the ranges above.

    Source: geometry.

    Examples:
        >>> import hubwright as hw
        >>> six = hw.joint.hole_circle(6, "60 mm")
        >>> six
        <HoleCircle 6 holes on 60 mm, 30 mm apart>
        >>> six.holes[1]
        <Hole 60° 15 mm, 25.980762 mm>
    """

def hole_limits(shape: str, diameter: QuantityLike, *, machine_kind: str | None = None) -> HoleLimits:
    """
    Greatest hole of a wheel.

    Args:
        shape: Shape of the wheel.
        diameter: Diameter of the new wheel, above zero.
        machine_kind: Kind of machine; surface and cylindrical grinders may have two thirds.

    Returns:
        HoleLimits: `.greatest_hole` and `.binding`.

    Raises:
        UnitError, TextError, OutOfRangeError: As for `rim_speed`.

    Source: 29 CFR 1910.211(b)(1) and (b)(13).

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.hole_limits("type-1-cutting-off", "180 mm").greatest_hole
        <Limit 45 mm by ratio: 29 CFR 1910.211(b)(13) (read in a reprint)>
    """

def influence_coefficient(*, baseline: PlainLike, baseline_phase: QuantityLike, with_trial: PlainLike, with_trial_phase: QuantityLike, trial_angle: QuantityLike, trial: QuantityLike | None = None, trial_mass: QuantityLike | None = None, radius: QuantityLike | None = None) -> InfluenceCoefficient:
    """
    Unbalance from one trial run with phase: α = (V1 - V0) / U_t, and -V0 / α balances.

    Args:
        baseline: Reading without the trial weight, above zero, in any unit of the meter.
        baseline_phase: Its phase.
        with_trial: Reading with the trial weight, in the same unit.
        with_trial_phase: Its phase.
        trial_angle: Where the trial weight is, counted the same way round as the phases.
        trial: The trial weight as an unbalance, or
        trial_mass: its mass, with
        radius: its radius.

    Returns:
        InfluenceCoefficient: `.correction`, `.original`, `.weak`, `.correct()`.

    Raises:
        MissingError: No trial weight.
        UnitError, TextError, OutOfRangeError: A baseline of zero, or a trial weight that did nothing.

    Source: statics of a rigid rotor.

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.influence_coefficient(
        ...     baseline=4.2, baseline_phase="63 deg", with_trial=5.1, with_trial_phase="118 deg",
        ...     trial="200 g mm", trial_angle="30 deg",
        ... )
        <InfluenceCoefficient correct with 192.315 g mm at 103°>
    """

def jacking_screw(*, thread: ThreadLike, torque: QuantityLike, thread_friction: SpanLike, tip_friction: SpanLike, tip: QuantityLike, draw_screw: ThreadLike | None = None) -> Jacked:
    """
    Force of a jacking screw that pushes a hub off its taper, and whether the draw screw passes its thread.

    Args:
        thread: Jacking thread in the hub: a thread or its designation.
        torque: Torque on the screw, above zero.
        thread_friction: Friction in the thread, above 0 and up to 1: a number, or (least, greatest).
        tip_friction: Friction under the tip, likewise.
        tip: Diameter of the flat tip, above zero.
        draw_screw: The screw that draws the hub on, through the jacking thread.

    Returns:
        Jacked: `.force`, `.clearance` and `.clears`.

    Raises:
        UnitError, TextError, OutOfRangeError: Not quantities of their kind, or outside the ranges above.

    Source: Shigley, power screws.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.jacking_screw(
        ...     thread="M20x1.5", torque="50 N m", thread_friction=(0.12, 0.18), tip_friction=(0.12, 0.18),
        ...     tip="12 mm", draw_screw="M12",
        ... )
        <Jacked 16.96 to 26.01 kN>
    """

def key_for(shaft_diameter: QuantityLike, standard: str) -> KeySize:
    """
    The key that goes with a shaft, and how deep it sits.

    Args:
        shaft_diameter: Over 6 to 500 mm (DIN 6885-1), 12 to 50 mm as listed (DIN 6885-2), over 5/16 to
            6-1/2 in (ANSI B17.1; rectangular over 7/16 in). A step includes its upper end.
        standard: `"DIN 6885-1"` (or `"ISO 773"`), `"DIN 6885-2"` for machine tools, `"ANSI B17.1 square"` or
            `"ANSI B17.1 rectangular"`.

    Returns:
        KeySize: `.width`, `.height`, `.shaft_depth`, `.hub_depth`, `.across_shaft`, `.across_hub`, `.widths(fit)`.

    Raises:
        UnitError, TextError: No length, or another standard.
        OutOfRangeError: A shaft outside the table; the message says how far it reaches.

    Source: DIN 6885-1 and -2, ANSI B17.1-1967, all in reprints; `.trim` is from memory.

    Examples:
        >>> import hubwright as hw
        >>> key = hw.joint.key_for("22 mm", "DIN 6885-1")
        >>> key
        <KeySize 6 mm x 6 mm, DIN 6885-1>
        >>> print(f"{key.across_shaft:.1f~P}, {key.across_hub:.1f~P}")
        18.5 mm, 24.8 mm
        >>> inch = hw.joint.key_for("1 in", "ANSI B17.1 square")
        >>> print(f"S {inch.across_shaft.m_as('in'):.3f} in, T {inch.across_hub.m_as('in'):.3f} in")
        S 0.859 in, T 1.114 in
    """

def key_stock(*, slot_width: QuantityLike, fit: str, height: QuantityLike, length: QuantityLike, proud: QuantityLike | None = None, long: QuantityLike | None = None, chamfer: QuantityLike | None = None, corner_radius: QuantityLike | None = None, hub_length: QuantityLike | None = None) -> KeyStock:
    """
    Key steel to make for a slot that is there already.

    Args:
        slot_width: Width of the slot, as measured.
        fit: `"push"` (no shake, for a key to be brazed; taken for h6) or a class for shafts, like `"h9"`.
        height: Height of the finished key.
        length: Length of the finished key.
        proud: Height left on, to come off when the hub is finished, zero or more.
        long: Length left on, likewise.
        chamfer: Chamfer of both bottom edges, which makes channels for the filler.
        corner_radius: Radius in the corners of the slot.
        hub_length: Length of the finished hub, which the finished key may not pass.

    Returns:
        KeyStock: `.width` (least, greatest), `.height`, `.length`, `.channels`, `.clears_corners`.

    Raises:
        UnitError, TextError: No lengths, or no class for shafts.
        OutOfRangeError: A key longer than its hub, a chamfer that leaves no bottom, figures not above zero.

    Source: ISO 286-1 for the limits; that a key to be brazed is a push with no shake is common practice, no source.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.key_stock(
        ...     slot_width="4.02 mm", fit="push", height="4 mm", length="18 mm", proud="0.3 mm", long="1 mm",
        ... )
        <KeyStock 4.012 to 4.02 mm wide, 4.3 mm high, 19 mm long>
    """

def key_strength(*, torque: QuantityLike, shaft_diameter: QuantityLike, width: QuantityLike, height: QuantityLike, length: QuantityLike, allowed_shear: QuantityLike | None = None, allowed_bearing: QuantityLike | None = None, bearing_height: QuantityLike | None = None, hub_length: QuantityLike | None = None) -> KeyStrength:
    """
    Shear and bearing stress of a key from a torque, τ = 2 T / (d b L) and p = 2 T / (d c L).

    Args:
        torque: Torque that the key carries, above zero.
        shaft_diameter: Diameter of the shaft.
        width: Width of the key, below the shaft's diameter.
        height: Height of the key; half of it bears unless `bearing_height` is given.
        length: Length that carries: inside the hub, without round ends.
        allowed_shear: Shear stress allowed; your figure, with your factor in it.
        allowed_bearing: Bearing stress allowed, of the weakest of key, shaft and hub.
        bearing_height: Height over which the side bears, half of the key's at most: `key_for(...).bearing_height`. Half
            is too much in a shallow keyway; in the hubs of DIN 6885-2 a quarter bears.
        hub_length: Length of the hub, which the key may not pass.

    Returns:
        KeyStrength: `.shear`, `.bearing`, `.shear_length`, `.bearing_length`, `.carries`.

    Raises:
        UnitError, TextError: No quantities of these kinds.
        OutOfRangeError: A figure that is not above zero, a key longer than its hub, as wide as its shaft.

    Even load along the key; no friction, shock or fatigue.

    Source: statics of keys (Shigley; Mott; Machinery's Handbook).

    Examples:
        >>> import hubwright as hw
        >>> found = hw.joint.key_strength(
        ...     torque="13.2 N m", shaft_diameter="22 mm", width="6 mm", height="6 mm", length="20 mm",
        ...     allowed_shear="60 MPa", allowed_bearing="90 MPa",
        ... )
        >>> found
        <KeyStrength shear 10 MPa, bearing 20 MPa over 3 mm>
        >>> print(found.carries, f"{found.bearing_length:.2f~P}")
        True 4.44 mm
    """

def keyway(*, cut_in: str, diameter: QuantityLike, width: QuantityLike, depth: QuantityLike, depth_tolerance: QuantityLike | None = None, infeed: QuantityLike | None = None, strokes_per_minute: PlainLike | None = None) -> Keyway:
    """
    A keyway: how deep it is by the ways it is measured, and the strokes it takes.

    A flat tool touches a bore first with its two corners, so that it goes t + y from first touch; a shaft it
    touches at the crown.

    Args:
        cut_in: `"hub"` or `"shaft"`.
        diameter: Diameter of bore or shaft.
        width: Width of the keyway, below the diameter.
        depth: Depth at the middle, from where the circle would be: t2 of a hub, t1 of a shaft.
        depth_tolerance: How much deeper it may be, zero or more.
        infeed: Feed at each stroke; some 0.02 mm by hand on a shaper is common practice, no source.
        strokes_per_minute: Strokes that the machine makes in a minute, a plain number above zero.

    Returns:
        Keyway: `.across`, `.wall`, `.feed`, `.strokes`, `.minutes`. Strokes that take out spring are not counted.

    Raises:
        UnitError, TextError: No lengths.
        OutOfRangeError: A slot as wide as the bore, a keyway without walls, figures that are not above zero.

    Source: geometry of the circle.

    Examples:
        >>> import hubwright as hw
        >>> found = hw.joint.keyway(
        ...     cut_in="hub", diameter="22 mm", width="4 mm", depth="1.8 mm", depth_tolerance="0.1 mm",
        ...     infeed="0.02 mm", strokes_per_minute=50,
        ... )
        >>> print(f"{found.feed:.3f~P}, {found.strokes} strokes, {found.minutes} min")
        1.983 mm, 100 strokes, 2.0 min
        >>> print(f"{found.across:.1f~P} to {found.across_deepest:.1f~P} across")
        23.8 mm to 23.9 mm across
    """

def largest_diameter(speed: QuantityLike, rim_speed: QuantityLike) -> Scalar:
    """
    Largest wheel that a spindle may turn without passing a rim speed, d = v / (π · n).

    Args:
        speed: Greatest speed of the spindle, above zero.
        rim_speed: Rim speed marked on the wheel, above zero.

    Returns:
        Diameter, in mm.

    Raises:
        UnitError, TextError, OutOfRangeError: As for `rim_speed`.

    Source: kinematics of rigid rotation.

    Examples:
        >>> import hubwright as hw
        >>> print(f"{hw.wheel.largest_diameter('2850 rpm', '35 m/s'):.1f~P}")
        234.5 mm
    """

def limits(size: str) -> Limits:
    """
    Limits of size of a hole or shaft from its nominal size and tolerance class.

    Holes have capitals, shafts small letters. Without a unit the nominal size is in mm. The
    printed tables decide, also where the formulas behind them say otherwise.

    Args:
        size: Nominal size and class, like `"20 H7"`, `"20H7"`, `"Ø31.75 js6"` or `"1-1/4 in H7"`;
            above 0 to 3150 mm.

    Returns:
        Limits: `.upper_um`, `.lower_um`, `.largest`, `.smallest`, `.source` and more.

    Raises:
        UnitError: No text.
        TextError: Text that is no size with a class, or a class that the standard lacks.
        OutOfRangeError: A size at which the table of this class gives nothing.

    Source: ISO 286-1, in reprints; the status in `.source` says where a figure is recalled.

    Examples:
        >>> import hubwright as hw
        >>> hole = hw.joint.limits("20 H7")
        >>> hole
        <Limits 20 mm H7 +21 0 µm>
        >>> hole.upper_um, hole.lower_um
        (21.0, 0.0)
        >>> print(hole.source)
        ISO 286-1, tolerances and deviations (read in a reprint)
    """

def loosening(thread: ThreadLike, rotation: str | None = None) -> str:
    """
    Which way a nut comes off, and whether running or braking takes it there, in a sentence or two.

    Args:
        thread: A thread or its designation.
        rotation: Which way the spindle runs, seen from the nut: `clockwise`, `anticlockwise` or `both`.

    Returns:
        The sentence.

    Raises:
        UnitError, TextError, OutOfRangeError: No thread, or another word.

    Source: statics; Mich. Admin. Code R 408.10115.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.loosening("M20x1.5-LH")
        'Seen from the nut, a left-hand thread comes off clockwise.'
    """

def material_ranges() -> list[Published]:
    """
    Published ranges of what bonded abrasive wheels are like. They are wide: ask the wheel's maker.

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.material_ranges()[1]
        <Published tensile strength, vitrified: 2.35 to 13.7 MPa [a wheel maker's safety page (read)]>
    """

def metals() -> list[Elastic]:
    """
    Common metals with their usual constants, from memory; take them by name, as `"steel"`.

    Returns:
        One `Elastic` a metal.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.metals()[0]
        <Elastic steel, E 206 GPa, Poisson's ratio 0.3, 7850 kg/m3, 11.5 um/m/K (from memory, unverified)>
    """

def name_taper(measured: MeasuredLike, *, made_within: QuantityLike, gauge_diameter: QuantityLike | None = None) -> TaperNaming:
    """
    Which standard tapers a measured cone can be, nearest first; or that none fits, with the numbers to copy.

    A taper fits when its half angle is no further off than `made_within` and three standard uncertainties.
    One is named only where it is no further off than `made_within`. Numbered tapers must fit by size too.

    Args:
        measured: What `over_rollers`, `two_balls`, `two_diameters` or `cone_fit` gave.
        made_within: How far the half angle of a standard taper may be made wrong.
        gauge_diameter: Diameter of a gauge plane that is looked for.

    Returns:
        TaperNaming: `.outcome`, `.candidates`, `.says`, `.gauge_plane`.

    Raises:
        UnitError: Nothing that was measured.
        OutOfRangeError: An allowance below zero, or a gauge diameter that is not above it.

    Source: the tables of standard tapers; what share of a numbered taper counts as its size is common practice,
    no source.

    Examples:
        >>> import hubwright as hw
        >>> nose = hw.gauge.two_diameters(
        ...     small_diameter="31 mm", large_diameter="38.5 mm", apart="30 mm", u_diameter="2 um", u_apart="5 um",
        ... )
        >>> hw.gauge.name_taper(nose, made_within="0.01 deg")
        <TaperNaming one taper: 1:4, 3 in/ft>
        >>> own = hw.gauge.two_diameters(
        ...     small_diameter="31 mm", large_diameter="37.8 mm", apart="30 mm", u_diameter="2 um", u_apart="5 um",
        ... )
        >>> hw.gauge.name_taper(own, made_within="0.01 deg")
        <TaperNaming none fits: copy it>
    """

def nut(*, thread: ThreadLike, thread_friction: SpanLike, face_friction: SpanLike, face_inside: QuantityLike, face_outside: QuantityLike, torque: QuantityLike | None = None, preload: QuantityLike | None = None, bore: QuantityLike | None = None, slot_width: QuantityLike | None = None, slot_depth: QuantityLike | None = None, proof_stress: QuantityLike | None = None, utilisation: PlainLike | None = None, nut_proof_stress: QuantityLike | None = None, engagement: QuantityLike | None = None, screw_class: str | None = None, nut_class: str | None = None) -> Tightened:
    """
    A nut tightened by a torque, or to a preload: what each does, and what the thread carries.

    T = F [d2/2 tan(φ + ρ') + μ r] tightens and F [d2/2 tan(ρ' - φ) + μ r] loosens, with r the mean radius of
    the face that turns. Frictions are ranges, and so is what follows. The screw carries tension and torsion
    together on its stress area less bore and key slot; the peak of stress at a slot and the bending it brings
    are not in it.

    Args:
        thread: A thread or its designation, like `"M20x1.5-LH"`.
        thread_friction: Friction in the thread, above 0 and up to 1: a number, or (least, greatest).
        face_friction: Friction under the face that turns, likewise.
        face_inside: Inside diameter of that face.
        face_outside: Outside diameter of that face.
        torque: Tightening torque, above zero; or instead
        preload: Force to clamp with, above zero.
        bore: Bore through the screw.
        slot_width: Width of a key slot through the thread, with
        slot_depth: its depth from the crests.
        proof_stress: Proof stress of the screw, with
        utilisation: the share of it that may be used, above 0 and up to 1; VDI 2230 tabulates 0.9.
        nut_proof_stress: Proof stress of the nut.
        engagement: Length over which screw and nut engage, with
        screw_class: class of the screw, such as `"6g"`, and
        nut_class: class of the nut, such as `"6H"`.

    Returns:
        Tightened: `.preload`, `.torque`, `.loosening_torque`, `.stress`, `.overloaded`, `.greatest_torque` and more.

    Raises:
        MissingError: Neither torque nor preload, or one of several arguments that belong together.
        UnitError, TextError: Not a quantity of its kind, or torque and preload both.
        OutOfRangeError: Friction, length, torque or stress not above zero, or no room for bore or slot.

    Source: Shigley, power screws; VDI 2230 for stresses; shear areas of FED-STD-H28, from memory.

    Examples:
        >>> import hubwright as hw
        >>> found = hw.joint.nut(
        ...     thread="M20x1.5", thread_friction=(0.12, 0.16), face_friction=(0.12, 0.16),
        ...     face_inside="21 mm", face_outside="30 mm", torque="60 N m",
        ... )
        >>> found
        <Tightened M20x1.5 60 N m, 14.83 to 19.4 kN>
        >>> least, greatest = found.loosening_torque
        >>> print(f"{least.m_as('N*m'):.1f} to {greatest.m_as('N*m'):.1f} N m")
        38.6 to 68.9 N m
        >>> found.loosens("anticlockwise")
        'Seen from the nut, a right-hand thread comes off anticlockwise. The spindle runs anticlockwise: drag and run-up tighten it; braking reverses the torque and tends to loosen it.'
    """

def over_rollers(*, over_low: QuantityLike, over_high: QuantityLike, height_low: QuantityLike, height_high: QuantityLike, roller: QuantityLike, u_over: QuantityLike, u_height: QuantityLike, u_roller: QuantityLike, large_end: str | None = None) -> OverRollers:
    """
    A plug or spindle nose on a plate, measured over two equal rollers at two heights.

    tan α = (M₂ − M₁) / (2 (h₂ − h₁)), D = M − d (1 + sec α) at the height of the rollers' axes.

    Args:
        over_low: Reading over the lower rollers.
        over_high: Reading over the upper rollers.
        height_low: Blocks under the lower rollers; "0 mm" on the plate.
        height_high: Blocks under the upper rollers, above `height_low`.
        roller: Diameter of a roller.
        u_over: Standard uncertainty of a reading; zero is your word that it is exact.
        u_height: Standard uncertainty of a height.
        u_roller: Standard uncertainty of the rollers' diameter.
        large_end: `"high"` or `"low"` where it is known, to be held against the readings.

    Returns:
        OverRollers: `.cone`, `.diameters`, `.sensitivities`.

    Raises:
        UnitError, TextError: No lengths, or another word.
        OutOfRangeError: Rollers at one height or out of order, a cylinder, a plate, the wrong end named, rollers
            that leave no room for a cone.

    Source: geometry; uncertainties by JCGM 100, from memory. Two heights can't show an error of form.

    Examples:
        >>> import hubwright as hw
        >>> nose = hw.gauge.over_rollers(
        ...     over_low="60.5125 mm", over_high="65.5125 mm", height_low="0 mm", height_high="50 mm",
        ...     roller="10 mm", u_over="1 um", u_height="0.3 um", u_roller="0.5 um",
        ... )
        >>> nose
        <OverRollers half angle 2.86241° ± 0.00162°>
        >>> print(f"{nose.cone.diameter_at('0 mm'):.3f~P}")
        40.000 mm
    """

def pin_spanner(*, torque: QuantityLike, pins: int, circle: QuantityLike, pin: QuantityLike, depth: QuantityLike, hole: QuantityLike | None = None, nut_inside: QuantityLike | None = None, nut_outside: QuantityLike | None = None) -> PinSpanner:
    """
    Load of a pin spanner's pins, and what metal their holes leave.

    Each pin carries T / (n R); shear is that over π p² / 4, bearing over p t. Bending of a pin between spanner
    and nut is not in it: keep the spanner on the face.

    Args:
        torque: Torque, above zero.
        pins: Pins that carry, 1 to 12: 1 of a hook spanner, 2 of a face spanner.
        circle: Diameter of the circle of holes; twice the reach of a hook spanner's pin.
        pin: Diameter of a pin, below the circle.
        depth: How deep a pin stands in its hole, above zero.
        hole: Diameter of the holes, no smaller than the pin, with
        nut_inside: inside diameter of the nut, and
        nut_outside: its outside diameter.

    Returns:
        PinSpanner: `.pin_load`, `.shear`, `.bearing`, `.outer_edge`, `.inner_edge`, `.breaks_out`.

    Raises:
        MissingError: One or two of hole, inside and outside.
        UnitError, TextError, OutOfRangeError: Not quantities of their kind, or outside the ranges above.

    Source: statics.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.pin_spanner(
        ...     torque="60 N m", pins=2, circle="30 mm", pin="4 mm", depth="5 mm",
        ...     hole="4.2 mm", nut_inside="20 mm", nut_outside="40 mm",
        ... )
        <PinSpanner 2000 N a pin, shear 159.1549 MPa, bearing 100 MPa>
    """

def press_fit(*, shaft: Elastic | str, hub: Elastic | str, diameter: QuantityLike, shaft_bore: QuantityLike, hub_diameter: QuantityLike, least_interference: QuantityLike, greatest_interference: QuantityLike, smoothing: PlainLike | None = None, shaft_roughness: QuantityLike | None = None, hub_roughness: QuantityLike | None = None, speed: QuantityLike | None = None, shaft_rise: QuantityLike | None = None, hub_rise: QuantityLike | None = None, length: QuantityLike | None = None, friction: PlainLike | None = None, shaft_yield: QuantityLike | None = None, hub_yield: QuantityLike | None = None, clearance: QuantityLike | None = None, cold_contraction: QuantityLike | None = None) -> PressFit:
    """
    A hub pressed or shrunk on a shaft: pressure, stresses, torque, loosening speed, heating.

    Args:
        shaft: Material of the shaft: an `Elastic`, or the name of a metal (`metals()`).
        hub: Material of the hub, likewise.
        diameter: Diameter of the joint.
        shaft_bore: Bore of the shaft; "0 mm" for a solid one.
        hub_diameter: Outside diameter of the hub.
        least_interference: Least interference on diameter, zero or above.
        greatest_interference: Greatest interference on diameter.
        smoothing: Factor c: joining flattens c times the sum of both roughnesses. Without it the interferences
            are effective ones. DIN 7190 is recalled to have 0.8 in its 2001 edition and said to have 0.4 now.
        shaft_roughness: Rz of the shaft, with `smoothing`.
        hub_roughness: Rz of the bore, with `smoothing`.
        speed: Rotational speed; a standstill unless given.
        shaft_rise: How much warmer the shaft is than when it was measured.
        hub_rise: How much warmer the hub is.
        length: Length of the joint, for torque and push-off force.
        friction: Friction in the joint, from 0 to 2; `friction_ranges()` lists published values.
        shaft_yield: Stress at which the shaft yields.
        hub_yield: Stress at which the hub yields.
        clearance: Clearance on diameter wanted while joining, for heating and cooling.
        cold_contraction: Mean contraction of the shaft when it is cooled (steel about 8.5 um/m/K, from memory).

    Returns:
        PressFit: `.least` and `.greatest` hold pressure and stresses at both interferences, `.torque` and
        `.push_off` what friction holds, `.hub_factor` and `.shaft_factor` yield over stress.

    Raises:
        MissingError: One of several arguments that belong together, or heat without an expansion.
        UnitError, TextError, OutOfRangeError: As for `hubwright.wheel.rim_speed`; yielding is no error.

    Lamé's elastic rings of equal length. At the ends of a hub on a longer shaft the pressure peaks: the torque
    is 1 to 12 % more, and fretting starts there.

    Source: Lamé; Timoshenko and Goodier, Theory of Elasticity.

    Examples:
        >>> import hubwright as hw
        >>> fit = hw.joint.press_fit(
        ...     shaft="steel", hub="steel", diameter="25 mm", shaft_bore="0 mm", hub_diameter="45 mm",
        ...     least_interference="18 um", greatest_interference="30 um",
        ...     length="20 mm", friction=0.12, hub_yield="300 MPa",
        ... )
        >>> fit
        <PressFit 51.2711 MPa to 85.4519 MPa>
        >>> print(f"{fit.torque.m_as('N*m'):.1f} N m, {fit.hub_factor:.2f}")
        120.8 N m, 1.38
    """

def published_expansion(metal: str) -> Expansion:
    """
    Published range of a metal's expansion at room temperature.

    Args:
        metal: `steel`, `grey cast iron`, `ductile cast iron`, `aluminium` or `brass`.

    Returns:
        Expansion: `.least`, `.most` and `.source`.

    Raises:
        TextError: Another metal.

    Source: Callister and Rethwisch, Fundamentals of Materials Science and Engineering, 3rd edition,
    Table B.6.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.published_expansion("aluminium")
        <Expansion aluminium 21.5 to 23.6 µm/m/K>
    """

def published_gaps() -> list[PublishedGap]:
    """
    Published gaps of brazing fillers, hot and on one side of the part, each with its source.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.published_gaps()[-1]
        <PublishedGap any: 0.03 mm to 0.08 mm: an encyclopaedia's article on brazing (read)>
    """

def read_marking(text: str) -> Marking:
    """
    Reads what is written on a wheel.

    Bonded wheels by the order of ISO 525: maker's prefix, abrasive (A, C), grain (FEPA F), grade, structure,
    bond, maker's suffix. Diamond and CBN by the shape codes of ISO 6104, the grain (D126, B151), concentration
    (C100) and bond. Sizes, type, speeds and restrictions may stand anywhere; blanks and hyphens don't matter.
    Nothing is guessed: see `.unread` and `.doubts`.

    Args:
        text: The marking, up to 200 characters.

    Raises:
        TextError: An empty or longer text.

    Source: ISO 525 as set out in a reprint; ISO 6104, EN 12413 and most FEPA sizes from memory.

    Examples:
        >>> import hubwright as hw
        >>> marking = hw.wheel.read_marking("38A60-K8VBE max. 3820 rpm")
        >>> marking
        <Marking 38A 60 K 8 V BE 3820 rpm>
        >>> for line in marking.in_words[:3]:
        ...     print(line)
        aluminium oxide
        grain 60: 260 µm on average [FEPA 42-1 and ISO 8486-1, mean sizes (from memory, unverified)]
        grade K, on a scale from A, soft, to Z, hard
    """

def report_schema() -> str:
    """
    The JSON Schema of reports that end in `.json`.
    """

def rim_speed(diameter: QuantityLike, speed: QuantityLike) -> Scalar:
    """
    Speed of the rim of a turning wheel, v = ω · d / 2.

    Args:
        diameter: Outside diameter, above zero.
        speed: Rotational speed; its sign is kept.

    Returns:
        Rim speed, in m/s.

    Raises:
        UnitError: No unit, or one of another kind; `Hz` and `1/s` name no turn or angle.
        TextError: Text that is not one number and one unit.
        OutOfRangeError: A diameter that is not above zero, or no finite number.

    Source: kinematics of rigid rotation.

    Examples:
        >>> import hubwright as hw
        >>> print(f"{hw.wheel.rim_speed('200 mm', '3000 rpm'):.1f~P}")
        31.4 m/s
    """

def rim_speed_column(diameter: Any, speed: Any, *, units: "dict[str, str] | None" = None, out: Any | None = None) -> Any:
    """
    `rim_speed` of every row of two columns, bit for bit.

    Rows that `rim_speed` would refuse come out as NaN.

    Args:
        diameter: Outside diameters: a pint array, or a NumPy array, buffer or Arrow column with its
            unit in `units`.
        speed: Rotational speeds, likewise.
        units: Units of the columns that carry none, such as `{"diameter": "mm", "speed": "rpm"}`.
        out: A writable NumPy array of floats to put the metres a second into.

    Returns:
        A pint array in m/s; an Arrow column (`ArrowColumn`, m/s) when both columns are Arrow's.

    Raises:
        UnitError: A column without a unit, or with one of another kind.
        TableError: Columns of unlike length.

    Source: kinematics of rigid rotation.

    Examples:
        >>> import numpy as np
        >>> import hubwright as hw
        >>> hw.wheel.rim_speed_column(
        ...     np.array([200.0, 300.0]), np.array([3000.0, 2000.0]),
        ...     units={"diameter": "mm", "speed": "rpm"},
        ... ).magnitude.round(1)
        array([31.4, 31.4])
    """

def ring_volume(*, outside: QuantityLike, inside: QuantityLike, length: QuantityLike) -> Scalar:
    """
    Volume between two diameters over a length: ground off a bore or a shaft, or worn off a wheel.

    Args:
        outside: Larger diameter.
        inside: Smaller diameter, zero or above.
        length: Length or width.

    Returns:
        The volume, in mm³.

    Raises:
        UnitError, TextError, OutOfRangeError: No lengths, or an inside not below the outside.

    Examples:
        >>> import hubwright as hw
        >>> print(f"{hw.wheel.ring_volume(outside='150 mm', inside='149.75 mm', length='20 mm'):.1f~P}")
        1177.1 mm³
    """

def rings(rings: SupportsGetItem[int, Ring], *, bore: QuantityLike, speed: QuantityLike, bond_strength: QuantityLike | None = None) -> WheelRings:
    """
    A wheel of several rings that turn together: a core with a bonded rim, or more.

    Args:
        rings: The rings from the inside outwards.
        bore: Bore of the innermost ring; "0 mm" for a solid disc.
        speed: Rotational speed.
        bond_strength: Tension that the bond carries, above zero, to be compared with.

    Returns:
        WheelRings: `.rings` with stresses, `.interfaces` with pressures, `.bond_tension`, `.bond_factor`.

    Raises:
        MissingError: No ring, no word on how a ring is held, or heat without an expansion.
        UnitError, TextError, OutOfRangeError: As for `rim_speed`.

    Plane stress: rings of one width, thin against their diameter, elastic, without keyways or
    holes. A shrunk ring that would be pulled is open.

    Source: Timoshenko and Goodier, Theory of Elasticity.

    Examples:
        >>> import hubwright as hw
        >>> rim = hw.wheel.Elastic(modulus="60 GPa", poisson=0.25, density="3300 kg/m3")
        >>> found = hw.wheel.rings(
        ...     [hw.wheel.Ring(diameter="180 mm", material="steel"),
        ...      hw.wheel.Ring(diameter="200 mm", material=rim, bonded=True)],
        ...     bore="50.8 mm", speed="800 rad/s", bond_strength="10 MPa",
        ... )
        >>> print(f"{found.bond_tension:.3f~P}, {found.bond_factor:.2f}")
        1.746 MPa, 5.73
    """

def round_nuts() -> list[RoundNut]:
    """
    Slotted round nuts of DIN 546, M8 to M20.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.round_nuts()[-1]
        <RoundNut M20x2.5 outside 32 mm, 14 mm thick>
    """

def rules() -> list[Rule]:
    """
    Every rule, in the order in which a mounting is gone over.

    Examples:
        >>> import hubwright as hw
        >>> hw.rules()[0].slug
        'over-speed'
    """

def run_out(run_out: QuantityLike, *, travel: QuantityLike) -> RunOut:
    """
    The angle error that run-out of an indicated original can cause.

    Indicating again with the spindle turned by half a turn, and taking the mean, leaves none of it.

    Args:
        run_out: Run-out of the original where it is indicated, total reading, zero or above.
        travel: Travel of the indicator, above zero.

    Returns:
        RunOut: `.one_end`, `.both_ends`, `.is_usual`.

    Raises:
        UnitError, TextError, OutOfRangeError: No lengths.

    Source: geometry. That 0.01 mm is good enough to copy from is common practice, no source.

    Examples:
        >>> import hubwright as hw
        >>> hw.gauge.run_out("0.01 mm", travel="40 mm")
        <RunOut up to 0.00716° at one end, 0.01432° at both>
    """

def seat(*, hub: Elastic | str, spindle: Elastic | str, small_diameter: QuantityLike, taper: RatioLike, length: QuantityLike, hub_diameter: QuantityLike, nut_diameter: QuantityLike, friction: PlainLike, steps: SupportsGetItem[int, tuple[QuantityLike, QuantityLike]] | None = None, spindle_bore: QuantityLike | None = None, overhang_small: QuantityLike | None = None, overhang_large: QuantityLike | None = None, hub_yield: QuantityLike | None = None, spindle_yield: QuantityLike | None = None, fine: bool = False) -> SeatFound:
    """
    A hub that a nut pushes onto the taper of a spindle, ready for any force and mismatch.

    Args:
        hub: Material of the hub: an `Elastic`, or the name of a metal (`metals()`).
        spindle: Material of the spindle, likewise.
        small_diameter: Diameter at the small end.
        taper: A taper such as `"1:5"` or `"Morse 3"`, or its change of diameter over length, from 0.001 to 1.
        length: Engaged length, 0.1 to 20 times the small diameter.
        hub_diameter: Outside diameter of the hub at the small end.
        nut_diameter: Outside diameter of the face by which nut or washer bears on the hub; it begins at the
            seat. It matters most of all: a push beside the seat rolls the hub.
        friction: Friction in the seat, above 0 and up to 1; `friction_ranges()` lists published values.
        steps: Where the hub's outside diameter changes, as pairs of distance from the small end and diameter
            from there on.
        spindle_bore: Bore of the spindle; solid unless given.
        overhang_small: How far the spindle reaches beyond the small end; it ends there unless given.
        overhang_large: How far it reaches beyond the large end.
        hub_yield: Stress at which the hub yields.
        spindle_yield: Stress at which the spindle yields.
        fine: On a mesh of 64 segments instead of 40, to see what the mesh does; it takes ten times as long.

    Returns:
        SeatFound: `.push(force, mismatch)`, `.force_for(share, mismatch)`, `.angle_tolerance(force, share)`,
        `.mismatch_from_print(print, film=...)`.

    Raises:
        UnitError, TextError: As for `hubwright.wheel.rim_speed`.
        OutOfRangeError: Figures that make no seat, such as a hub thinner than a shell.

    Smooth, round, elastic cones, pushed on once, with one friction all over. Against a mesh of four times the elements
    the length in contact is within 0.003 of the seat and the force for 95 % within 1 %. No experiment is behind it.

    Source: finite elements; Johnson, Contact Mechanics; Kikuchi and Oden.

    Examples:
        >>> import hubwright as hw
        >>> seat = hw.joint.seat(
        ...     hub="steel", spindle="steel", small_diameter="25 mm", taper="1:5", length="25 mm",
        ...     hub_diameter="40 mm", nut_diameter="40 mm", friction=0.12,
        ...     overhang_small="15 mm", overhang_large="30 mm",
        ... )
        >>> pushed = seat.push("8 kN", "3 arcmin")
        >>> print(f"{pushed.carries}, {pushed.contact:.2f}, {pushed.slip_torque:.1f~P}")
        small end, 0.48, 56.8 m·N
        >>> print(f"{pushed.force_for_95.to('kN'):.1f~P}")
        21.3 kN
    """

def shared_balance(*, mass: QuantityLike, machines: SupportsGetItem[int, tuple[str, QuantityLike, QuantityLike]], unbalance: QuantityLike | None = None, radius: QuantityLike | None = None) -> SharedBalance:
    """
    What may be left in one hub that serves several machines: the least of what they allow.

    Args:
        mass: Mass of all that turns.
        machines: For each machine its name, greatest speed and grade.
        unbalance: Unbalance that it has, to be judged on each.
        radius: Radius of the ring that weights sit on.

    Returns:
        SharedBalance: `.machines`, `.governs`, `.permissible`.

    Raises:
        MissingError: No machine.
        UnitError, TextError, OutOfRangeError: As for `balance`.

    Source: ISO 21940-11, from memory.

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.shared_balance(
        ...     mass="2 kg", machines=[("surface", "2850 rpm", "G2.5"), ("tool", "8000 rpm", "G6.3")],
        ... )
        <SharedBalance 15.04 g mm allowed by tool>
    """

def sine_bar(taper: TaperLike, *, centres: QuantityLike, set: str) -> SineBar:
    """
    The stack under a sine bar that makes the half or the included angle of a taper, h = L sin φ.

    Args:
        taper: The taper, as text or what `hubwright.joint.taper` gave.
        centres: Distance of the bar's rollers, above zero.
        set: `"half"` or `"included"`; with the included angle a cone on the bar has its upper flank level.

    Returns:
        SineBar: `.stack`; `block_stack(bar.stack, ...)` says what to wring.

    Raises:
        UnitError, TextError, OutOfRangeError: No taper, no length, another word, or 90° and more.

    Source: geometry.

    Examples:
        >>> import hubwright as hw
        >>> hw.gauge.sine_bar("Morse 2", centres="100 mm", set="included")
        <SineBar 4.9919 mm for 2.86133°>
    """

def slide_setting(taper: TaperLike, *, travel: QuantityLike, along: str) -> SlideSetting:
    """
    How to set the top slide: the angle to begin with, and the indicator's rise to set it by.

    Args:
        taper: The taper, as text or what `hubwright.joint.taper` gave.
        travel: How far the indicator travels, above zero.
        along: `"flank"` (the top slide moves) or `"axis"` (the saddle moves).

    Returns:
        SlideSetting: `.rise`, `.rise_per_minute`, `.half_angle`.

    Raises:
        UnitError, TextError, OutOfRangeError: No taper, no length, or another word.

    Source: geometry; travel · sin α along the flank, travel · tan α along the axis.

    Examples:
        >>> import hubwright as hw
        >>> hw.gauge.slide_setting("3 in/ft", travel="25 mm", along="flank")
        <SlideSetting 3.1009 mm over 25 mm along the flank, 7.22 µm a minute of arc>
    """

def sources() -> list[Source]:
    """
    Every source that rules, tables and kernels cite.

    Examples:
        >>> import hubwright as hw
        >>> [str(source) for source in hw.sources() if source.locator == "Table O-6"]
        ['29 CFR 1910.215, Table O-6 (read in a reprint)']
    """

def spanner_torque(force: QuantityLike, length: QuantityLike) -> Scalar:
    """
    Torque of a hand on a spanner, T = F L.

    Args:
        force: Force of the hand, square to the spanner, above zero.
        length: From the nut's axis to the hand, above zero.

    Returns:
        Torque, in N m.

    Raises:
        UnitError, TextError, OutOfRangeError: Not quantities of their kind, or not above zero.

    Source: statics.

    Examples:
        >>> import hubwright as hw
        >>> print(f"{hw.joint.spanner_torque('200 N', '180 mm').m_as('N*m'):.0f} N m")
        36 N m
    """

def specific_energy(*, force: QuantityLike, rim_speed: QuantityLike, removal_rate: QuantityLike) -> Scalar:
    """
    Specific energy of a job from the force along the rim: u = F v / Q.

    Args:
        force: Force along the rim.
        rim_speed: Speed of the rim.
        removal_rate: Volume ground away in a time, like `"1050 mm3/min"`.

    Returns:
        The energy, in J/mm³.

    Raises:
        UnitError, TextError, OutOfRangeError: No quantities of these kinds, or not above zero.

    Source: statics; Groover, problem 25.4.

    Examples:
        >>> import hubwright as hw
        >>> u = hw.wheel.specific_energy(force="25 N", rim_speed="1508 m/min", removal_rate="1050 mm3/min")
        >>> print(f"{u.m_as('J/mm^3'):.1f} J/mm3")
        35.9 J/mm3
    """

def speed_for_rim(diameter: QuantityLike, rim_speed: QuantityLike, *, marked_speed: QuantityLike | None = None) -> SpeedForRim:
    """
    Rotational speed at which the rim reaches a speed, capped at the marked one.

    Args:
        diameter: Outside diameter of the wheel as it is now, above zero.
        rim_speed: Rim speed wanted, above zero.
        marked_speed: Rotational speed marked on the wheel: a ceiling however small the wheel has worn.

    Returns:
        SpeedForRim: `.speed`, and `.capped` when the marked speed held it down.

    Raises:
        UnitError, TextError, OutOfRangeError: As for `rim_speed`.

    Source: kinematics; the cap is 29 CFR 1910.215(d)(1).

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.speed_for_rim("280 mm", "35 m/s", marked_speed="1910 rpm")
        <SpeedForRim 1910 rpm, capped at the marked speed>
    """

def stabilisers(*, diameter: QuantityLike, flange: QuantityLike, thickness: QuantityLike, poisson: PlainLike, clearance: QuantityLike, stabiliser: QuantityLike | None = None, gain: PlainLike | None = None, disc_thickness: QuantityLike | None = None, disc_hole: QuantityLike | None = None, disc_modulus: QuantityLike | None = None, disc_poisson: PlainLike | None = None, land: QuantityLike | None = None, pressed_at: QuantityLike | None = None, nut_force: QuantityLike | None = None, relief: QuantityLike | None = None) -> Stabilisers:
    """
    What stabilisers add to the side stiffness of a thin wheel, and the depth of cut they leave.

    They raise the stiffness against side load, not the bursting speed; the speed marked on the wheel stays the limit.

    Args:
        diameter: Outside diameter of the wheel, above zero.
        flange: Diameter of the flanges, 0.05 to 0.98 of the wheel.
        thickness: Thickness of the wheel, at most a tenth of what stands out of the stabilisers.
        poisson: Poisson's ratio of the wheel, above 0 and below 0.5.
        clearance: Clearance kept between stabiliser and work, vice or magnet, zero or more.
        stabiliser: Diameter of the stabilisers, at least the flanges'; or instead
        gain: the stiffness asked for over that between the flanges, 1 or more: the smallest diameter is found.
        disc_thickness: Thickness of a stabiliser at its relief, with
        disc_hole: its hole,
        disc_modulus: its modulus of elasticity,
        disc_poisson: its Poisson's ratio,
        land: width of the land at its rim, on one side,
        pressed_at: diameter of the circle on which the flange presses, and
        nut_force: force of the nut.
        relief: Depth of its relief, with all of these.

    Returns:
        Stabilisers: `.diameter`, `.gain`, `.depth`, and with a disc `.disc.sag`, which its relief has to exceed so that
        only the rim bears.

    Raises:
        MissingError: Neither stabiliser nor gain, or part of a disc.
        TextError, UnitError: As for `rim_speed`.
        OutOfRangeError: Stabilisers smaller than the flanges or as large as the wheel, a wheel too thick, a gain
            that no stabiliser reaches, a land that leaves nothing to dish.

    Source: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells; geometry.

    Examples:
        >>> import hubwright as hw
        >>> found = hw.wheel.stabilisers(
        ...     diameter="125 mm", flange="50 mm", thickness="1 mm", poisson=0.2, clearance="2 mm", stabiliser="80 mm",
        ... )
        >>> print(f"{found.gain:.1f} times as stiff, {found.depth:.1f~P} deep")
        3.3 times as stiff, 20.5 mm deep
    """

def stand_off(taper: TaperLike, *, spindle_diameter: QuantityLike, hub_diameter: QuantityLike, interference: QuantityLike | None = None, least_gap: QuantityLike | None = None, u_spindle: QuantityLike | None = None, u_hub: QuantityLike | None = None) -> StandOff:
    """
    How far a taper hub stands off its shoulder by hand, and what is left when it is drawn up.

    Stand-off (D − d) / C, draw-up δ / C, with C the taper on diameter. Both cones are taken for straight and of
    one angle.

    Args:
        taper: The taper of both, as text or what `hubwright.joint.taper` gave.
        spindle_diameter: Diameter of the spindle's cone in the plane of its shoulder.
        hub_diameter: Diameter of the hub's bore in the plane of its face.
        interference: Interference on diameter to draw it up to; nothing by hand.
        least_gap: Gap to leave in any case, beyond the uncertainty.
        u_spindle: Standard uncertainty of the spindle's diameter; exact unless given.
        u_hub: Standard uncertainty of the bore's diameter; exact unless given.

    Returns:
        StandOff: `.stand_off`, `.draw_up`, `.gap`, `.clears`, `.stand_off_to_make`, `.bore_to_make`.

    Raises:
        UnitError, TextError, OutOfRangeError: No taper or no lengths. A hub that touches is no error.

    Source: geometry; uncertainties by JCGM 100, from memory.

    Examples:
        >>> import hubwright as hw
        >>> hw.gauge.stand_off(
        ...     "1:4", spindle_diameter="40 mm", hub_diameter="39.98 mm", interference="12.5 um", least_gap="0.02 mm",
        ... )
        <StandOff 0.08 mm by hand, 0.03 mm left>
    """

def standard_tapers() -> list[str]:
    """
    Names of the standard cones without a size of their own, each as `taper` takes it.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.standard_tapers()[:3]
        ['1:3', '1:4', '1:5']
    """

def strength(*, diameter: QuantityLike, hole: QuantityLike, density: QuantityLike, poisson: PlainLike, speed: QuantityLike, tensile_strength: QuantityLike | None = None, burst_factor: PlainLike | None = None, marked_speed: QuantityLike | None = None, thickness: QuantityLike | None = None, fragment_angle: QuantityLike | None = None) -> Strength:
    """
    What a plain wheel of one material carries as it turns, and when it would burst.

    The speed marked on the wheel is the limit, whatever is computed here.

    Args:
        diameter: Outside diameter, above zero.
        hole: Hole, below the diameter; "0 mm" for a wheel without one.
        density: Density, above zero.
        poisson: Poisson's ratio, above 0 and below 0.5.
        speed: Rotational speed, above zero.
        tensile_strength: Tensile strength that the wheel's maker gives.
        burst_factor: Factor on stress asked for, (bursting speed / speed) squared, 1 or more.
        marked_speed: Rotational speed marked on the wheel.
        thickness: Thickness, for the fragment.
        fragment_angle: Included angle of a fragment, up to 360 degrees.

    Returns:
        Strength: `.hoop`, and with a strength `.stress_factor`, `.bursting_speed`; with a factor and a
        marking `.greatest_speed`; with thickness and angle `.fragment`.

    Raises:
        MissingError: Thickness without an angle, or the other way round.
        UnitError, TextError, OutOfRangeError: As for `rim_speed`.

    Flat wheels of one material and thickness; no fabric, recess, crack, side load or clamping.

    Source: Timoshenko and Goodier, Theory of Elasticity; the cap is 29 CFR 1910.215(d)(1).

    Examples:
        >>> import hubwright as hw
        >>> found = hw.wheel.strength(
        ...     diameter="200 mm", hole="31.75 mm", density="2250 kg/m3", poisson=0.22,
        ...     speed="3000 rpm", tensile_strength="20 MPa", burst_factor=3, marked_speed="3340 rpm",
        ... )
        >>> found
        <Strength hoop 1.7985 MPa, factor on stress 11.120>
        >>> print(f"{found.greatest_speed:.0f~P}", found.capped)
        3340 rpm True
    """

def stub(*, diameter: QuantityLike, flange: QuantityLike, clearance: QuantityLike, stabiliser: QuantityLike | None = None, worn_diameter: QuantityLike | None = None, larger_flange: QuantityLike | None = None) -> Stub:
    """
    What flange or stabiliser leave of a wheel, and what a larger flange would cost.

    Args:
        diameter: Diameter of the new wheel.
        flange: Diameter of the flanges.
        clearance: Clearance that flange or stabiliser need from the work, on radius; zero or above.
        stabiliser: Diameter of the stabilisers.
        worn_diameter: Diameter that the wheel has worn to.
        larger_flange: Diameter of flanges that might replace these.

    Returns:
        Stub: `.stub_diameter`, `.usable`, `.left`, `.lost`, `.lost_share`.

    Raises:
        UnitError, TextError: No lengths.
        OutOfRangeError: A flange that covers the wheel, or a wheel worn below its stub.

    Source: geometry.

    Examples:
        >>> import hubwright as hw
        >>> found = hw.wheel.stub(diameter="200 mm", flange="80 mm", clearance="2 mm", larger_flange="100 mm")
        >>> found
        <Stub 84 mm, usable 58 mm on radius>
        >>> print(f"{found.lost:.0f~P} or {found.lost_share:.0%} lost by the larger flange")
        10 mm or 11% lost by the larger flange
    """

def superabrasive_limits(diameter: QuantityLike) -> SuperabrasiveLimits:
    """
    How much a superabrasive wheel may be out of balance and run out at its sides.

    Args:
        diameter: Outside diameter, up to 750 mm.

    Returns:
        SuperabrasiveLimits: `.mass`, `.side_run_out`, `.high_speed_run_out`.

    Raises:
        UnitError, TextError, OutOfRangeError: No length, or one outside the table.

    Source: Marinescu et al., Tables 4.4 and 4.5 (JIS B 4131).

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.superabrasive_limits("200 mm")
        <SuperabrasiveLimits 0.001 kg, side run-out 0.02 mm>
    """

def tailstock(taper: TaperLike, *, between_centres: QuantityLike) -> Tailstock:
    """
    How far to move the tailstock across for a taper between centres, L sin α.

    Args:
        taper: The taper, as text or what `hubwright.joint.taper` gave.
        between_centres: Distance of the part's centres, above zero.

    Returns:
        Tailstock: `.offset`, and `.by_rule`, L (D − d) / (2 l).

    Raises:
        UnitError, TextError, OutOfRangeError: No taper or no length.

    Source: geometry; ball centres are taken for granted.

    Examples:
        >>> import hubwright as hw
        >>> hw.gauge.tailstock("1:20", between_centres="200 mm")
        <Tailstock 4.9984 mm, by rule 5 mm>
    """

def taper(name: str) -> Taper:
    """
    A taper from its name or number.

    Args:
        name: A ratio (`"1:5"`, `"7/24"`), a change of diameter over a length (`"3 in/ft"`, `"0.05 in/in"`,
            `"5 %"`), an angle that says which it is (`"8 deg 30 min included"`, `"4.25 deg half"`), or a series
            and number (`"Morse 3"`, `"B&S 9"`, `"Jarno 8"`, `"Jacobs 33"`, `"metric 80"`, `"steep 40"`).

    Returns:
        Taper: `.half_angle`, `.cone_angle`, `.in_per_ft`, `.per_side`, `.on_diameter`, `.diameter_at()`,
        `.axial_shift()` and more.

    Raises:
        UnitError: No text.
        TextError: Text that is no taper, an angle that doesn't say whether it is the included or the half one,
            or a number that its series lacks.
        OutOfRangeError: A cylinder (under 1:10000) or a plate (over 120° included).

    Source: ISO 1119 as adopted in GOST R 53440-2009, Table 1; tables of standard tapers for the series. 7:24
    and the gauge diameters of metric and steep tapers are from memory: `.source` says so.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.taper("1:5")
        <Taper 1:5, half angle 5.710593°>
        >>> hw.joint.taper("Morse 3")
        <Taper Morse 3, 1:19.9203, half angle 1.437822°>
        >>> hw.joint.taper("3 in/ft").half_angle_text
        '7° 7\\' 30.1"'
    """

def taper_grade(grade: int, length: QuantityLike) -> AngleGrade:
    """
    Tolerance of a cone's angle by its grade and length.

    Args:
        grade: 1 to 12, for AT1 to AT12.
        length: Length of the cone, over 6 to 630 mm.

    Returns:
        AngleGrade: `.cone_angle` and `.on_diameter`.

    Raises:
        UnitError, TextError, OutOfRangeError: No length, or another grade or length.

    Source: ISO 1947, from memory: it may caution, never refuse.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.taper_grade(7, "50 mm")
        <AngleGrade AT7 over 50 mm: 0.01575 mm on diameter>
    """

def thin_wheel(*, diameter: QuantityLike, flange: QuantityLike, thickness: QuantityLike, modulus: QuantityLike, poisson: PlainLike, density: QuantityLike | None = None, hole: QuantityLike | None = None, flexural_strength: QuantityLike | None = None, strength_factor: PlainLike | None = None, speed: QuantityLike | None = None) -> ThinWheel:
    """
    How stiff a thin wheel is against a side load, what it allows, and where it vibrates.

    A thin plate, clamped at the flanges and free at the rim. For a wheel between stabilisers give
    their diameter as `flange`.

    Args:
        diameter: Outside diameter, above zero.
        flange: Diameter over which flanges or stabilisers hold it, 0.05 to 0.98 of the wheel.
        thickness: Thickness, at most a tenth of what stands out of the flange.
        modulus: Modulus of elasticity in bending, above zero.
        poisson: Poisson's ratio, above 0 and below 0.5.
        density: Density, for frequencies and critical speed, with
        hole: the hole, not above the flange; "0 mm" for a wheel without one.
        flexural_strength: Flexural strength of the bond, with
        strength_factor: the factor asked for, 1 or more.
        speed: Rotational speed, with density and hole.

    Returns:
        ThinWheel: `.stiffness`, `.clamp_moment`; with a strength `.allowed_side_load`; with density and hole
        `.frequencies` and `.critical`, which is computed without damping and so a warning, no limit.

    Raises:
        MissingError: One of two arguments that belong together, or a speed without density and hole.
        OutOfRangeError: A flange as large as the wheel, a wheel too thick, or a number that makes no sense.
        UnitError, TextError: As for `rim_speed`.

    Source: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells; Leissa, NASA SP-160.

    Examples:
        >>> import hubwright as hw
        >>> found = hw.wheel.thin_wheel(
        ...     diameter="230 mm", flange="76 mm", thickness="1.6 mm", modulus="12 GPa", poisson=0.2,
        ...     density="2400 kg/m3", hole="22.2 mm", flexural_strength="25 MPa", strength_factor=1,
        ... )
        >>> print(f"{found.stiffness:.2f~P}, {found.allowed_side_load:.2f~P}")
        2.94 N/mm, 9.43 N
        >>> found.critical.nodes
        3
    """

def thread(designation: str) -> Thread:
    """
    What a thread's designation stands for: profile, stress area and limits.

    Args:
        designation: Like `"M20"`, `"M20x1.5"`, `"M20x1-6H"`, `"M20x1-6g-LH"`, `"1/4-20 UNC-2B"`,
            `"#10-32 UNF"`, `"1-1/8-12 UNF-2A LH"`. Metric diameters 1 to 300 mm with the pitches of ISO 261,
            classes 4g 6e 6g 6h 4H 5H 6H 7H as far as the table goes; UNC and UNF no. 4 to 1½ in, 2A and 2B.

    Returns:
        Thread: `.pitch_diameter`, `.stress_area`, `.limits`, `.tap_drill()`, `.three_wires()` and more.

    Raises:
        UnitError: No text.
        TextError: Text that is no thread, or a thread or class that there is not.
        OutOfRangeError: A pitch that the diameter does not allow, or a class at which the table gives nothing.

    Source: ISO 68-1, ISO 261, ISO 965-1, ISO 898-1, ASME B1.1; `.limits.source` says what is recalled.

    Examples:
        >>> import hubwright as hw
        >>> nut = hw.joint.thread("M20x1-6H")
        >>> nut.limits
        <ThreadLimits 6H pitch diameter 19.35 mm to 19.51 mm>
        >>> nut.tap_drill()
        <TapDrill 19 mm, 77 % thread, within 6H>
        >>> print(f"{hw.joint.thread('M8').stress_area:.1f~P}")
        36.6 mm²
    """

def three_weights(*, unbalance: QuantityLike, angle: QuantityLike, weight: QuantityLike, radius: QuantityLike, stuck_at: QuantityLike | None = None) -> BalanceWeights:
    """
    Where three equal weights go: one at φ + 180°, two at φ + 180° ± acos((U / m r - 1) / 2).

    With one stuck, the other two balance it as well.

    Args:
        unbalance: Unbalance without the weights, zero or above.
        angle: Where the rotor is heavy, from the ring's mark.
        weight: Mass of one weight.
        radius: Radius of its centre of mass.
        stuck_at: Where one of them is stuck.

    Returns:
        BalanceWeights: `.positions`, `.reached`, `.residual`, `.says`, `.svg()`.

    Raises:
        UnitError, TextError, OutOfRangeError: As for `two_weights`.

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.three_weights(unbalance="450 g mm", angle="250 deg", weight="10 g", radius="54 mm")
        <BalanceWeights move the weights to 70°, 164.8°, 335.2°>
    """

def through_feed(*, diameter: QuantityLike, speed: QuantityLike, angle: QuantityLike) -> Scalar:
    """
    How fast work is fed through a centreless grinder: v = π d n sin α.

    Args:
        diameter: Diameter of the regulating wheel.
        speed: Its rotational speed.
        angle: Its inclination, below 90 degrees.

    Returns:
        The feed, without slip.

    Raises:
        UnitError, TextError, OutOfRangeError: No quantities of these kinds, or not above zero.

    Source: Groover, problems 25.7 and 25.9.

    Examples:
        >>> import hubwright as hw
        >>> feed = hw.wheel.through_feed(diameter="125 mm", speed="200 rpm", angle="2.5 deg")
        >>> print(f"{feed.m_as('mm/min'):.0f} mm/min")
        3426 mm/min
    """

def through_feed_angle(*, diameter: QuantityLike, speed: QuantityLike, feed: QuantityLike) -> Scalar:
    """
    The inclination of the regulating wheel that feeds work through at a speed.

    Args:
        diameter: Diameter of the regulating wheel.
        speed: Its rotational speed.
        feed: The feed, below its rim speed.

    Returns:
        The angle.

    Raises:
        UnitError, TextError, OutOfRangeError: No quantities of these kinds, or a feed not below the rim speed.

    Source: Groover, problem 25.8.

    Examples:
        >>> import hubwright as hw
        >>> angle = hw.wheel.through_feed_angle(diameter="150 mm", speed="500 rpm", feed="7 m/min")
        >>> print(f"{angle.m_as('deg'):.1f} deg")
        1.7 deg
    """

def tilt_run_out(tilt: QuantityLike, *, wheel_diameter: QuantityLike, overhang: QuantityLike) -> TiltRunOut:
    """
    Run-out at the rim of a wheel whose seat is tilted: axial `tilt * diameter`, radial twice `tilt * overhang`.

    Args:
        tilt: Angle between the axes of hub and spindle, 0 to 0.5 deg. `SeatFound.rocking` gives its order of magnitude
            under a moment.
        wheel_diameter: Diameter of the wheel.
        overhang: Distance of the wheel's middle from that of the seat.

    Raises:
        UnitError, TextError, OutOfRangeError: As for `hubwright.wheel.rim_speed`.

    Source: geometry.

    Examples:
        >>> import hubwright as hw
        >>> found = hw.joint.tilt_run_out("20e-6 rad", wheel_diameter="250 mm", overhang="60 mm")
        >>> print(f"{found.axial.to('um'):.1f~P}, {found.radial.to('um'):.1f~P}")
        5.0 µm, 2.4 µm
    """

def tolerance_factor(size: QuantityLike) -> Scalar:
    """
    Standard tolerance factor, i = 0.45 ∛D + 0.001 D in µm with D in mm.

    Args:
        size: D, above 0 to 500 mm.

    Returns:
        The factor, a length.

    Raises:
        UnitError, TextError, OutOfRangeError: No length, or outside the range.

    Source: ISO 286-1, as reprinted in Machine Drawing (Narayana), Table 15.4.

    Examples:
        >>> import hubwright as hw
        >>> print(f"{hw.joint.tolerance_factor('125 mm').to('um'):.3f~P}")
        2.375 µm
    """

def tool_height(taper: TaperLike, *, small_diameter: QuantityLike, length: QuantityLike, off: QuantityLike) -> ToolHeight:
    """
    What a tool above or below the axis does to a taper: no cone but a hyperboloid.

    Args:
        taper: What the slide is set to, as text or what `hubwright.joint.taper` gave.
        small_diameter: Diameter that is cut at the small end.
        length: Length of the taper.
        off: How far off the axis the tool is, either way; less than the small end's radius.

    Returns:
        ToolHeight: `.angle_error`, `.per_side`, `.bow`: a nose gets a waist, a bore bulges inward.

    Raises:
        UnitError, TextError, OutOfRangeError: No taper, no lengths, or a tool too far off.

    Source: geometry.

    Examples:
        >>> import hubwright as hw
        >>> hw.gauge.tool_height("1:5", small_diameter="20 mm", length="35 mm", off="0.5 mm")
        <ToolHeight -0.00526° off, -3.24 µm per side, 0.24 µm bow>
    """

def trial_runs(*, baseline: PlainLike, trials: SupportsGetItem[int, tuple[PlainLike, QuantityLike]], trial: QuantityLike | None = None, trial_mass: QuantityLike | None = None, radius: QuantityLike | None = None) -> TrialRuns:
    """
    Unbalance from the size of the readings alone: a baseline, and the same trial weight at several angles.

    A_i² - A0² = T² + 2 A0 T cos(θ_i - φ). Three runs or more give T twice, from the mean and from the
    differences, and their ratio less one is `.quality`. Two leave two answers.

    Args:
        baseline: Reading without the trial weight, above zero, in any unit of the meter.
        trials: For each run the reading and where the trial weight was, like `[(7, "0 deg"), (12, "120 deg")]`.
        trial: The trial weight as an unbalance, or
        trial_mass: its mass, with
        radius: its radius.

    Returns:
        TrialRuns: `.candidates`, `.corrections`, `.fitted`, `.quality`, `.doubtful`, `.weak`, `.svg()`.

    Raises:
        MissingError: No trial weight.
        UnitError, TextError, OutOfRangeError: Fewer than two runs, a baseline of zero, or readings that
            contradict one another so far that no unbalance gives them.

    Source: statics of a rigid rotor.

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.trial_runs(
        ...     baseline=10, trials=[(7, "0 deg"), (12, "120 deg"), (18, "240 deg")], trial="50 g mm",
        ... )
        <TrialRuns correct with 58.79 g mm at 40.1°, READINGS AGREE BADLY>
    """

def truing(*, diameter: QuantityLike, hole: QuantityLike, thickness: QuantityLike, density: QuantityLike, eccentricity: QuantityLike) -> Truing:
    """
    What truing its rim on the hub does to the balance of a wheel that sits off centre.

    Args:
        diameter: Outside diameter before truing.
        hole: Hole, below the diameter.
        thickness: Thickness.
        density: Density.
        eccentricity: How far the wheel sits off the axis: half of the clearance that it hangs in.

    Returns:
        Truing: `.before`, `.after`, `.stock`, `.rim_run_out`, `.trued_diameter`.

    Raises:
        UnitError, TextError, OutOfRangeError: No quantities of these kinds, or a wheel that truing would use up.

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.truing(
        ...     diameter="200 mm", hole="32 mm", thickness="20 mm", density="2250 kg/m3", eccentricity="0.06 mm",
        ... )
        <Truing 82.652 g mm before, 2.171 g mm after>
    """

def two_balls(*, ball_large: QuantityLike, ball_small: QuantityLike, depth_to_large: QuantityLike, depth_to_small: QuantityLike, u_ball: QuantityLike, u_depth: QuantityLike, length: QuantityLike | None = None) -> TwoBalls:
    """
    A taper bore, its large end up, in which a large and then a small ball come to rest.

    sin α = (R₁ − R₂) / c, with c the distance of the centres.

    Args:
        ball_large: Diameter of the large ball.
        ball_small: Diameter of the small ball.
        depth_to_large: From the face down to the top of the large ball; negative where it stands proud.
        depth_to_small: From the face down to the top of the small ball.
        u_ball: Standard uncertainty of a ball's diameter; zero is your word that it is exact.
        u_depth: Standard uncertainty of a depth.
        length: Length of the bore, past which the small ball can't rest.

    Returns:
        TwoBalls: `.cone`, `.centres_apart`, `.diameters`, `.touch`, `.sensitivities`.

    Raises:
        UnitError, TextError: No lengths.
        OutOfRangeError: Balls that don't fit, a cylinder or a plate.

    Source: geometry; uncertainties by JCGM 100, from memory. Two balls can't show an error of form.

    Examples:
        >>> import hubwright as hw
        >>> hw.gauge.two_balls(
        ...     ball_large="40 mm", ball_small="32 mm", depth_to_large="-8 mm", depth_to_small="76 mm",
        ...     u_ball="0.5 um", u_depth="5 um",
        ... )
        <TwoBalls half angle 2.86598° ± 0.00074°>
    """

def two_diameters(*, small_diameter: QuantityLike, large_diameter: QuantityLike, apart: QuantityLike, u_diameter: QuantityLike, u_apart: QuantityLike) -> TwoDiameters:
    """
    A cone from two diameters and the distance of their planes, tan α = (D − d) / (2 L).

    Args:
        small_diameter: The small diameter.
        large_diameter: The large diameter.
        apart: Distance of their planes along the axis.
        u_diameter: Standard uncertainty of a diameter; zero is your word that it is exact.
        u_apart: Standard uncertainty of the distance.

    Returns:
        TwoDiameters: `.cone`, `.sensitivities`.

    Raises:
        UnitError, TextError: No lengths.
        OutOfRangeError: The wrong end named, a cylinder or a plate.

    Source: geometry; uncertainties by JCGM 100, from memory. Two planes can't show an error of form.

    Examples:
        >>> import hubwright as hw
        >>> hw.gauge.two_diameters(
        ...     small_diameter="31 mm", large_diameter="38.5 mm", apart="30 mm", u_diameter="2 um", u_apart="5 um",
        ... )
        <TwoDiameters half angle 7.12502° ± 0.00582°>
    """

def two_weights(*, unbalance: QuantityLike, angle: QuantityLike, weight: QuantityLike, radius: QuantityLike, stuck_at: QuantityLike | None = None) -> BalanceWeights:
    """
    Where two equal weights go on their ring: φ + 180° ± acos(U / 2 m r).

    An unbalance beyond their reach is no error: the result says what could be reached, and where.

    Args:
        unbalance: Unbalance without the weights, zero or above.
        angle: Where the rotor is heavy, from the ring's mark.
        weight: Mass of one weight.
        radius: Radius of its centre of mass.
        stuck_at: Where one of them is stuck.

    Returns:
        BalanceWeights: `.positions`, `.reached`, `.residual`, `.says`, `.svg()`.

    Raises:
        UnitError, TextError, OutOfRangeError: No quantities of these kinds, or a weight or radius not above zero.

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.two_weights(unbalance="450 g mm", angle="40 deg", weight="10 g", radius="54 mm")
        <BalanceWeights move the weights to 154.6°, 285.4°>
        >>> hw.wheel.two_weights(unbalance="500 g mm", angle="40 deg", weight="4 g", radius="54 mm").reached
        False
    """

def unbalance(spots: SupportsGetItem[int, HeavySpot]) -> UnbalanceSum:
    """
    What several causes of unbalance come to: those of known angle as vectors, the others at worst.

    Args:
        spots: The causes, made with `HeavySpot.clearance`, `.run_out`, `.hub_slot`, `.shaft_slot`, `.key`, `.hole`, `.lump`.

    Returns:
        UnbalanceSum: `.known`, `.greatest`, `.least`, `.svg()`.

    Raises:
        MissingError: No cause.

    Examples:
        >>> import hubwright as hw
        >>> Spot = hw.wheel.HeavySpot
        >>> found = hw.wheel.unbalance([
        ...     Spot.hub_slot(bore="22 mm", width="4 mm", depth="1.8 mm", length="18 mm", density="7850 kg/m3", angle="0 deg"),
        ...     Spot.key(bore="22 mm", depth="1.8 mm", width="4 mm", height="4 mm", length="18 mm", density="7850 kg/m3", angle="0 deg"),
        ...     Spot.clearance(mass="1.35 kg", clearance="0.03 mm"),
        ... ])
        >>> found
        <UnbalanceSum 8.317 to 32.183 g mm>
    """

def wear(*, ground: QuantityLike, ratio: PlainLike, diameter: QuantityLike, width: QuantityLike) -> Wear:
    """
    How much a wheel wears by grinding a volume away, at the grinding ratio of the job.

    Args:
        ground: Volume ground away.
        ratio: Grinding ratio of the job; yours, see `grinding_ratio`.
        diameter: Diameter of the wheel before.
        width: Width of the wheel that grinds.

    Returns:
        Wear: `.radial`, `.worn`, `.diameter_left`.

    Raises:
        UnitError, TextError, OutOfRangeError: No quantities of these kinds, or more wear than there is wheel.

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.wear(ground="3000 mm3", ratio=18, diameter="200 mm", width="20 mm")
        <Wear 0.0133 mm on radius, 199.9735 mm left>
    """

def word_lists() -> list[tuple[str, list[str]]]:
    """
    The words of every class of `hubwright.words`, as the compiled part knows them.
    """

def worn_speed(*, diameter: QuantityLike, worn_diameter: QuantityLike, rim_speed: QuantityLike, marked_speed: QuantityLike | None = None, marked_rim_speed: QuantityLike | None = None) -> WornSpeed:
    """
    The speed to set as a wheel wears, to keep its rim going, capped at what is marked on it.

    Args:
        diameter: Diameter of the new wheel.
        worn_diameter: Diameter it has worn to, or will: that of its stub, for one.
        rim_speed: Rim speed to keep.
        marked_speed: Rotational speed marked on the wheel: a ceiling however small it has worn.
        marked_rim_speed: Rim speed marked on the wheel.

    Returns:
        WornSpeed: `.speed`, `.new_speed`, `.capped`, `.rim_speed_if_kept`.

    Raises:
        UnitError, TextError, OutOfRangeError: No quantities of these kinds, or a worn diameter not below the new one.

    Source: kinematics; the cap is 29 CFR 1910.215(d)(1).

    Examples:
        >>> import hubwright as hw
        >>> hw.wheel.worn_speed(diameter="200 mm", worn_diameter="155 mm", rim_speed="30 m/s", marked_speed="3340 rpm")
        <WornSpeed 2864.79 rpm new, 3340 rpm worn, held down by the marking>
    """

def write_demo(folder: str | PathLike[str]) -> tuple[list[Path], str]:
    """
    Writes the demo rack, in three dialects, into a folder.

    Args:
        folder: Where to; it is made where it is missing.

    Returns:
        The files written, and the date the demo is judged on.
    """

def write_template(path: str | PathLike[str], *, show: str = "mm") -> None:
    """
    Writes an empty rack to fill in: every heading with its unit, words to choose from, a note and an example.

    Args:
        path: Where to: a new `.xlsx` file.
        show: `"mm"` or `"in"`.

    Raises:
        TextError: Another ending or other units.
        FileError: The file can't be written, or is there already.
    """
