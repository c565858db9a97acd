"""
Compiled part of hubwright.
"""

from datetime import date
from hubwright._typing import Names, QuantityLike, Scalar
from hubwright.words import Abrasive, BlotterNeed, Bond, Fastening, Feature, FitBasis, FitKind, FlangeKind, MachineKind, Material, Metal, Outcome, Rotation, Shape, SizeOutcome, ThreadHand
from os import PathLike
from pathlib import Path
from typing import Any, Final, SupportsIndex, final

__all__ = ["__version__", "ArrowColumn", "ArrowTable", "At20", "Blotter", "BlotterLimits", "Checked", "Counts", "Expansion", "Finding", "Fit", "Flange", "FlangeLimits", "HoleLimits", "Hub", "Judgement", "Limit", "Limits", "Machine", "Mounting", "Nut", "Problem", "RankedFit", "Row", "Rows", "Rule", "Source", "SpeedForRim", "Spindle", "Step", "Unknown", "Verdict", "Wheel", "Working", "at_20_c", "blotter_limits", "check", "check_file", "check_rows", "deviation_by_formula", "field_list", "fit", "fits_for", "flange_limits", "grade_by_formula", "hole_limits", "largest_diameter", "limits", "published_expansion", "rim_speed", "rim_speed_column", "rules", "sources", "speed_for_rim", "tolerance_factor", "word_lists", "write_demo"]

__version__: Final[str]

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
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, present: bool | str | Unknown | None = None, diameter: QuantityLike | Unknown | None = None, hole: QuantityLike | Unknown | None = None, thickness: QuantityLike | Unknown | None = None, used_before: bool | str | Unknown | None = None, fixed_by_maker: bool | str | Unknown | None = None) -> Blotter: ...
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
class Checked:
    """
    A rack of mountings, judged: iterate over it for its rows.

    Attributes:
        counts: How many rows passed, cautioned, were refused, unknown and unreadable; they add up.
        problems: The rows that could not be read, and why.
        clear: Whether nothing is refused, unknown or unreadable.
        unread: Headings that nothing reads, each with the known heading most like it.
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
    def problems(self, /) -> list[Problem]:
        """
        The rows that could not be read, and why.
        """
    def report(self, /, path: str | PathLike[str]) -> None:
        """
        Writes a report, whole or not at all.

        Args:
            path: Where to; its ending says what: `.html` or `.txt`.

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
        Unit of `margin`: `mm`, `m/s`, `rpm`, `deg`, `days`, or empty.
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
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, kind: str | Unknown | None = None, diameter: QuantityLike | Unknown | None = None, land: QuantityLike | Unknown | None = None, recess: QuantityLike | Unknown | None = None, undercut: QuantityLike | Unknown | None = None, thickness_at_hole: QuantityLike | Unknown | None = None, thickness_at_edge: QuantityLike | Unknown | None = None, material: str | Unknown | None = None, shown_stiff: bool | str | Unknown | None = None, run_out: QuantityLike | Unknown | None = None, keyed: bool | str | Unknown | None = None) -> Flange: ...
    def __repr__(self, /) -> str: ...
    @property
    def diameter(self, /) -> Scalar | Unknown | None:
        """
        Outside diameter of the face that bears on the wheel.
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
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, spigot: QuantityLike | Unknown | None = None, smallest_spigot: QuantityLike | Unknown | None = None, largest_spigot: QuantityLike | Unknown | None = None, spigot_run_out: QuantityLike | Unknown | None = None, run_out_limit: QuantityLike | Unknown | None = None, clearance_limit: QuantityLike | Unknown | None = None, material: str | Unknown | None = None, warmer_by: QuantityLike | Unknown | None = None, expansion: QuantityLike | Unknown | None = None, thread_from: QuantityLike | Unknown | None = None, thread_to: QuantityLike | Unknown | None = None, flange_stop: QuantityLike | Unknown | None = None, stabilisers: QuantityLike | Unknown | None = None) -> Hub: ...
    def __repr__(self, /) -> str: ...
    @property
    def clearance_limit(self, /) -> Scalar | Unknown | None:
        """
        Greatest clearance asked for between hole and spigot, on diameter.
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
    def material(self, /) -> Material | Unknown | None:
        """
        What the spigot is made of.
        """
    @property
    def run_out_limit(self, /) -> Scalar | Unknown | None:
        """
        Run-out asked for, of spigot and flange face.
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
    def stabilisers(self, /) -> Scalar | Unknown | None:
        """
        Thickness of both stabiliser discs together.
        """
    @property
    def thread_from(self, /) -> Scalar | Unknown | None:
        """
        From the fixed flange's land to the first full thread.
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
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, kind: str | Unknown | None = None, guard_exposure: QuantityLike | Unknown | None = None, guard_start: QuantityLike | Unknown | None = None, work_below_spindle: bool | str | Unknown | None = None) -> Machine: ...
    def __repr__(self, /) -> str: ...
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
    def work_below_spindle(self, /) -> bool | Unknown | None:
        """
        Whether the work has to touch the wheel below the height of the spindle.
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
    def __new__(cls, /, name: str = "", *, machine: Machine | None = None, spindle: Spindle | None = None, wheel: Wheel | None = None, fixed_flange: Flange | None = None, loose_flange: Flange | None = None, fixed_blotter: Blotter | None = None, loose_blotter: Blotter | None = None, hub: Hub | None = None, nut: Nut | None = None) -> Mounting: ...
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
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, thread_hand: str | Unknown | None = None, length: QuantityLike | Unknown | None = None) -> Nut: ...
    def __repr__(self, /) -> str: ...
    @property
    def length(self, /) -> Scalar | Unknown | None:
        """
        Length of thread in it.
        """
    @property
    def thread_hand(self, /) -> ThreadHand | Unknown | None:
        """
        Hand of its thread.
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
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, greatest_speed: QuantityLike | Unknown | None = None, rotation: str | Unknown | None = None) -> Spindle: ...
    def __repr__(self, /) -> str: ...
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
        use_before: Use-before date on the wheel.
        made: Date of manufacture.
        bushing_width: Width of the reducing bushing in the hole.
        bushing_touches_flange: Whether the bushing touches a flange.
        bushing_nested: Whether one bushing sits in another.
        warmer_by: How much warmer than when measured the wheel gets at its hole.
        expansion: Thermal expansion of the wheel.
    """
    def __eq__(self, value: object, /) -> bool: ...
    def __ne__(self, value: object, /) -> bool: ...
    def __new__(cls, /, *, shape: str | Unknown | None = None, diameter: QuantityLike | Unknown | None = None, nominal_diameter: QuantityLike | Unknown | None = None, thickness: QuantityLike | Unknown | None = None, hole: QuantityLike | Unknown | None = None, nominal_hole: QuantityLike | Unknown | None = None, smallest_hole: QuantityLike | Unknown | None = None, largest_hole: QuantityLike | Unknown | None = None, marked_speed: QuantityLike | Unknown | None = None, marked_rim_speed: QuantityLike | Unknown | None = None, fastening: str | Unknown | None = None, abrasive: str | Unknown | None = None, bond: str | Unknown | None = None, use_before: date | str | Unknown | None = None, made: date | str | Unknown | None = None, bushing_width: QuantityLike | Unknown | None = None, bushing_touches_flange: bool | str | Unknown | None = None, bushing_nested: bool | str | Unknown | None = None, warmer_by: QuantityLike | Unknown | None = None, expansion: QuantityLike | Unknown | None = None) -> Wheel: ...
    def __repr__(self, /) -> str: ...
    @property
    def abrasive(self, /) -> Abrasive | Unknown | None:
        """
        Abrasive.
        """
    @property
    def bond(self, /) -> Bond | Unknown | None:
        """
        Bond.
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

def check_file(path: str | PathLike[str], *, decimal: str | None = None, laws: Names | None = None, without: Names | None = None, today: Any | None = None, flange_tolerance: QuantityLike | None = None, measured_within: QuantityLike | None = None, show: str | None = None, progress: Any | None = None) -> Checked:
    """
    Checks a rack kept in a CSV file.

    Separator, byte order mark and decimal mark are found out from the file.

    Args:
        path: The file.
        decimal: `"point"` or `"comma"`; found out from the file when left out.
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
        hint: check the path and that the file is a table saved as CSV
    """

def check_rows(table: Any, *, units: "dict[str, str] | None" = None, laws: Names | None = None, without: Names | None = None, today: Any | None = None, flange_tolerance: QuantityLike | None = None, measured_within: QuantityLike | None = None, show: str | None = None, progress: Any | None = None) -> Checked:
    """
    Checks a rack held in a table.

    Args:
        table: Anything with an Arrow stream (a pandas or polars DataFrame, a pyarrow Table), or a
            list of dicts. Its column names are headings such as `wheel diameter [mm]`.
        units: Units of columns whose names state none, such as `{"wheel diameter": "mm"}`.
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

def field_list() -> list[tuple[str, str, str, str, list[str], list[str], str, str]]:
    """
    Every field of a mounting, as rows of place, attribute, heading, kind, units, words, what `none` says, and doc.
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

def rules() -> list[Rule]:
    """
    Every rule, in the order in which a mounting is gone over.

    Examples:
        >>> import hubwright as hw
        >>> hw.rules()[0].slug
        'over-speed'
    """

def sources() -> list[Source]:
    """
    Every source that rules, tables and kernels cite.

    Examples:
        >>> import hubwright as hw
        >>> [str(source) for source in hw.sources() if source.locator == "Table O-6"]
        ['29 CFR 1910.215, Table O-6 (read in a reprint)']
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

def word_lists() -> list[tuple[str, list[str]]]:
    """
    The words of every class of `hubwright.words`, as the compiled part knows them.
    """

def write_demo(folder: str | PathLike[str]) -> tuple[list[Path], str]:
    """
    Writes the demo rack, in three dialects, into a folder.

    Args:
        folder: Where to; it is made where it is missing.

    Returns:
        The files written, and the date the demo is judged on.
    """
