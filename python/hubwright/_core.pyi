"""
Compiled part of hubwright.
"""

from datetime import date
from hubwright._typing import Names, PlainLike, QuantityLike, Scalar
from hubwright.words import Abrasive, BlotterNeed, Bond, Fastening, Filler, FlangeKind, GapOutcome, KeyFit, KeyStandard, MachineKind, Material, MoveTool, Outcome, Rotation, Shape, ThreadHand
from os import PathLike
from pathlib import Path
from typing import Any, Final, SupportsIndex, final

__all__ = ["__version__", "ArrowColumn", "ArrowTable", "Blotter", "BlotterLimits", "BrazedKey", "Centring", "Checked", "Counts", "Finding", "Flange", "FlangeLimits", "HoleLimits", "Hub", "Key", "KeySize", "KeyStock", "KeyStrength", "KeyTrim", "KeyWidths", "Keyway", "Limit", "Machine", "Mounting", "Nut", "Problem", "PublishedGap", "Row", "Rows", "Rule", "Source", "SpeedForRim", "Spindle", "Step", "Unknown", "Verdict", "Wheel", "Working", "blotter_limits", "brazed_key", "centre_slot", "check", "check_file", "check_rows", "chord_height", "field_list", "flange_limits", "hole_limits", "key_for", "key_stock", "key_strength", "keyway", "largest_diameter", "published_gaps", "rim_speed", "rim_speed_column", "rules", "sources", "speed_for_rim", "word_lists", "write_demo"]

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
        key: The key.

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
    def __new__(cls, /, name: str = "", *, machine: Machine | None = None, spindle: Spindle | None = None, wheel: Wheel | None = None, fixed_flange: Flange | None = None, loose_flange: Flange | None = None, fixed_blotter: Blotter | None = None, loose_blotter: Blotter | None = None, hub: Hub | None = None, nut: Nut | None = None, key: Key | None = None) -> Mounting: ...
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

def field_list() -> list[tuple[str, str, str, str, list[str], list[str], str, str]]:
    """
    Every field of a mounting, as rows of place, attribute, heading, kind, units, words, what `none` says, and doc.
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
        height: Height of the key; half of it bears.
        length: Length that carries: inside the hub, without round ends.
        allowed_shear: Shear stress allowed; your figure, with your factor in it.
        allowed_bearing: Bearing stress allowed, of the weakest of key, shaft and hub.
        bearing_height: Height over which the side bears, where it is less than half of the key's.
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
        <KeyStrength shear 10 MPa, bearing 20 MPa>
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

def published_gaps() -> list[PublishedGap]:
    """
    Published gaps of brazing fillers, hot and on one side of the part, each with its source.

    Examples:
        >>> import hubwright as hw
        >>> hw.joint.published_gaps()[-1]
        <PublishedGap any: 0.03 mm to 0.08 mm: an encyclopaedia's article on brazing (read)>
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
