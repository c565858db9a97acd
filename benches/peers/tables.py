"""A rack of mountings in columns, and Tables O-4 to O-8 of 29 CFR 1910.215 to look its wheels up in.

The tables are typed in inches, apart from `src/tables`, and looked up in whole nanometres. They are laid
out under each other as one list of entries, so that a lookup is a `searchsorted` for the number of the
entry, and the demands of a million flanges are that list indexed by a million numbers.
"""

from collections.abc import Callable
from dataclasses import dataclass
from functools import cached_property, reduce

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
Mask = NDArray[np.bool_]
Index = NDArray[np.intp]
Cells = NDArray[np.uint8]
REFUSE, UNKNOWN, CAUTION, PASS, NOT_CHECKED = (np.uint8(code) for code in range(5))
INCH = 25.4e6
LISTED_WITHIN = 0.5e6

# Wheel, flange, thickness.
O4 = INCH * np.array(
    [[1, 5 / 8, 1 / 8], [2, 1, 1 / 8], [3, 1, 3 / 16], [4, 11 / 8, 3 / 16], [5, 7 / 4, 1 / 4], [6, 2, 3 / 8]]
)
# Wheel, flange, least land, greatest land, thickness at the hole, at the edge.
O6 = INCH * np.array(
    [
        [1, 3 / 8, 1 / 16, 1 / 8, 1 / 16, 1 / 16],
        [2, 3 / 4, 1 / 8, 3 / 16, 1 / 8, 3 / 32],
        [3, 1, 1 / 8, 3 / 16, 3 / 16, 3 / 32],
        [4, 11 / 8, 1 / 8, 3 / 16, 3 / 16, 1 / 8],
        [5, 7 / 4, 3 / 16, 1 / 4, 1 / 4, 1 / 8],
        [6, 2, 1 / 4, 1 / 2, 3 / 8, 3 / 16],
        [7, 5 / 2, 1 / 4, 1 / 2, 3 / 8, 3 / 16],
        [8, 3, 1 / 4, 1 / 2, 3 / 8, 3 / 16],
        [10, 7 / 2, 5 / 16, 5 / 8, 3 / 8, 1 / 4],
        [12, 4, 5 / 16, 5 / 8, 1 / 2, 5 / 16],
        [14, 9 / 2, 3 / 8, 3 / 4, 1 / 2, 5 / 16],
        [16, 11 / 2, 1 / 2, 1, 1 / 2, 5 / 16],
        [18, 6, 1 / 2, 1, 5 / 8, 3 / 8],
        [20, 7, 5 / 8, 5 / 4, 5 / 8, 3 / 8],
        [22, 15 / 2, 5 / 8, 5 / 4, 5 / 8, 7 / 16],
        [24, 8, 3 / 4, 5 / 4, 5 / 8, 7 / 16],
        [26, 17 / 2, 3 / 4, 5 / 4, 5 / 8, 1 / 2],
        [28, 10, 7 / 8, 3 / 2, 3 / 4, 1 / 2],
        [30, 10, 7 / 8, 3 / 2, 3 / 4, 5 / 8],
        [36, 12, 1, 2, 7 / 8, 3 / 4],
        [42, 14, 1, 2, 7 / 8, 3 / 4],
        [48, 16, 5 / 4, 2, 9 / 8, 1],
        [60, 20, 5 / 4, 2, 5 / 4, 9 / 8],
        [72, 24, 3 / 2, 5 / 2, 11 / 8, 5 / 4],
    ]
)

# Bands of wheels: over, whether the lower end belongs to it, up to;
# then rows of hole, flange, thickness at the hole, at the edge.
Band = tuple[float, bool, float, list[list[float]]]
O5: list[Band] = [
    (12, True, 14, [[4, 6, 7 / 8, 3 / 8], [5, 7, 7 / 8, 3 / 8], [6, 8, 7 / 8, 3 / 8]]),
    (14, False, 18, [[h, h + 2, 7 / 8, 3 / 8] for h in (4, 5, 6, 7, 8)]),
    (18, False, 24, [[h, h + 2, 1, 1 / 2] for h in (6, 7, 8, 10, 12)]),
    (24, False, 30, [[12, 15, 1, 1 / 2]]),
    (30, False, 36, [[12, 15, 11 / 8, 7 / 8]]),
]
O7: list[Band] = [
    (20, True, 20, [[6, 8, 1, 1 / 2], [8, 10, 3 / 2, 3 / 4]]),
    (24, True, 24, [[12, 15, 2, 1]]),
    (30, True, 30, [[12, 15, 2, 1]]),
    (36, True, 36, [[12, 15, 2, 1]]),
]
O8: list[Band] = [
    (12, True, 14, [[5, 7, 1 / 2, 7 / 16]]),
    (14, False, 20, [[5, 7, 5 / 8, 7 / 16], [6, 8, 5 / 8, 7 / 16], [8, 10, 5 / 8, 7 / 16],
                     [10, 11.5, 5 / 8, 7 / 16], [12, 13.5, 5 / 8, 7 / 16]]),
    (20, False, 30, [[8, 10, 3 / 4, 1 / 2], [10, 11.5, 3 / 4, 1 / 2], [12, 13.5, 3 / 4, 1 / 2],
                     [16, 17.5, 3 / 4, 1 / 2]]),
    (30, False, 42, [[h, h + 1.5, 3 / 4, 1 / 2] for h in (12, 16, 18, 20)]),
    (42, False, 60, [[16, 20, 1, 3 / 4], [20, 24, 1, 3 / 4], [24, 29, 9 / 8, 7 / 8]]),
]  # fmt: skip


@dataclass
class Demands:
    """What the tables demand of one flange of every mounting; NaN where they demand nothing."""

    diameter: Array
    next: Array
    least_land: Array
    greatest_land: Array
    at_hole: Array
    at_edge: Array
    adaptor: Mask
    flat: Mask


class Entries:
    """Every table's entries under each other. Entry 0 demands nothing."""

    def __init__(self) -> None:
        self.numbers = [[np.nan] * 6]
        self.adaptor, self.flat = [False], [False]

    def add(self, rows: Array, adaptor: bool = False, flat: bool = False) -> tuple[int, Array]:
        """Append rows of size, flange, least and greatest land, thickness at hole and edge.

        A row makes two entries, for sizes that are listed and for sizes between it and the next; one more
        comes first, for sizes below all. Returns the first entry and the edges between entries.
        """
        first = len(self.numbers)
        self.numbers.append([np.nan, rows[0, 1], *[np.nan] * 4])
        for row, after in zip(rows, [*rows[1:], None], strict=True):
            _, diameter, least, greatest, hole, edge = row
            self.numbers.append([diameter, np.nan, least, greatest, hole, edge])
            over, wide = (np.nan, greatest) if after is None else (after[1], after[3])
            self.numbers.append([diameter, over, least, wide, hole, edge])
        added = len(self.numbers) - first
        self.adaptor += [adaptor] * added
        self.flat += [flat] * added
        low, high = rows[:, 0] - LISTED_WITHIN, np.nextafter(rows[:, 0] + LISTED_WITHIN, np.inf)
        return first, np.column_stack([low, high]).ravel()

    def add_bands(self, bands: list[Band], adaptor: bool = False) -> list[tuple[int, Array]]:
        """Append each band's rows, which are looked up by hole."""
        nan = np.nan
        added = []
        for *_, rows in bands:
            wide = [[hole, flange, nan, nan, at_hole, at_edge] for hole, flange, at_hole, at_edge in rows]
            added.append(self.add(INCH * np.array(wide), adaptor))
        return added


def _flat(rows: Array) -> Array:
    """The same sizes for flat flanges, which have no land and one thickness."""
    out = rows.copy()
    out[:, [2, 3, 5]] = np.nan
    return out


def _up_to_last(first: int, edges: Array, size: Array) -> Index:
    """Entries of a table that says nothing of sizes above its last row."""
    place = np.searchsorted(edges, size, side="right")
    return np.where(place == len(edges), 0, first + place)


_ENTRIES = Entries()
_O6_FIRST, _O6_EDGES = _ENTRIES.add(O6)
# The note to O-6 lets small wheels have flat flanges of its diameters: no lands there.
_SMALL_FIRST, _ = _ENTRIES.add(_flat(O6), flat=True)
_O4_FIRST, _O4_EDGES = _ENTRIES.add(
    np.column_stack([O4[:, :2], np.full((len(O4), 2), np.nan), O4[:, 2], O4[:, 2]]), flat=True
)
_O5_BANDS, _O7_BANDS = (_ENTRIES.add_bands(table, adaptor=True) for table in (O5, O7))
_O8_BANDS = _ENTRIES.add_bands(O8)
_NUMBERS = np.array(_ENTRIES.numbers).T.copy()
_ADAPTOR, _FLAT = np.array(_ENTRIES.adaptor), np.array(_ENTRIES.flat)


def o6_entries(wheel: Array) -> Index:
    """Entries of Table O-6, with lands."""
    return _O6_FIRST + np.searchsorted(_O6_EDGES, wheel, side="right")


def small_entries(o6: Index) -> Index:
    """The same entries for flat flanges."""
    return o6 + (_SMALL_FIRST - _O6_FIRST)


def o4_entries(wheel: Array) -> Index:
    """Entries of Table O-4."""
    return _up_to_last(_O4_FIRST, _O4_EDGES, wheel)


def _banded(
    bands: list[Band], added: list[tuple[int, Array]], wheel: Array, hole: Array, singles: bool
) -> Index:
    """Entries of a table of bands; where `singles`, a wheel above a listed one falls to it."""
    out = np.zeros(len(wheel), np.intp)
    for (over, included, up_to, _), (first, edges) in zip(bands, added, strict=True):
        low = over * INCH
        here = wheel >= low - LISTED_WITHIN if included else wheel > low + LISTED_WITHIN
        if not singles:
            here &= wheel <= up_to * INCH + LISTED_WITHIN
        out[here] = _up_to_last(first, edges, hole[here])
    return out


def o5_entries(wheel: Array, hole: Array) -> Index:
    """Entries of Table O-5."""
    return _banded(O5, _O5_BANDS, wheel, hole, singles=False)


def o7_entries(wheel: Array, hole: Array) -> Index:
    """Entries of Table O-7, which lists single wheels."""
    return _banded(O7, _O7_BANDS, wheel, hole, singles=True)


def o8_entries(wheel: Array, hole: Array, o6: Index) -> Index:
    """Entries of Table O-8, and of O-6 for what it does not list."""
    found = _banded(O8, _O8_BANDS, wheel, hole, singles=False)
    return np.where(np.isnan(_NUMBERS[0, found]), o6, found)


def demands(entries: Index) -> Demands:
    """What these entries demand."""
    diameter, after, least_land, greatest_land, at_hole, at_edge = (column[entries] for column in _NUMBERS)
    return Demands(
        diameter, after, least_land, greatest_land, at_hole, at_edge, _ADAPTOR[entries], _FLAT[entries]
    )


class Shape:
    """Codes of wheel shapes, in the order of hubwright's list, as are all codes here."""

    TYPE_1, CUTTING_OFF, TYPE_4, TYPE_6_TERRAZZO, TYPE_11_TERRAZZO = 0, 1, 3, 6, 9
    TYPE_27, TYPE_27A, TYPE_28, DISC = 14, 15, 16, 18


class Fastening:
    """How a wheel is held; beyond studs, without any flange."""

    FLANGES, INSERT, STUD = range(3)


class Flange:
    """Kinds of flanges; from adaptors on, undercut at the hole."""

    UNRELIEVED, RELIEVED, ADAPTOR, HEAVY, SLEEVE = range(5)


class Machine:
    """Kinds of machines."""

    BENCH, CYLINDRICAL, SURFACE, CUTTING_OFF, TOOL, INTERNAL, TOP, PORTABLE = 0, 1, 2, 3, 4, 5, 8, 9


YES, NO = 0, 1
RIGHT, LEFT, NO_NUT = range(3)


def either(*masks: Mask) -> Mask:
    """Where any of these holds."""
    return reduce(np.logical_or, masks)


def choose(*cases: tuple[Mask, np.uint8 | Cells], otherwise: np.uint8 | Cells = PASS) -> Cells:
    """The first case whose mask holds, as `np.select` has it.

    Reckoned instead of copied under a mask, which takes NumPy many times as long on bytes: a byte that
    overflows wraps around, and comes back.
    """
    out = np.full(len(cases[0][0]), otherwise)
    for mask, outcome in reversed(cases):
        out += (outcome - out) * mask.view(np.uint8)
    return out


class Rack:
    """The columns of a rack, and what several rules share, each worked out once."""

    def __init__(self, columns: dict[str, Array], today: float) -> None:
        self.columns = columns
        self.today = today
        self._blank: dict[str, Mask] = {}

    def __getitem__(self, name: str) -> Array:
        return self.columns[name]

    def blank(self, *names: str) -> Mask:
        """Where any of these is blank."""
        for name in names:
            if name not in self._blank:
                self._blank[name] = np.isnan(self.columns[name])
        return either(*(self._blank[name] for name in names))

    def is_one(self, name: str, *codes: int) -> Mask:
        """Where a word is one of these."""
        return either(*(self.columns[name] == code for code in codes))

    def yes(self, name: str) -> Mask:
        """Where the answer is known to be yes."""
        return self.is_one(name, YES)

    def no(self, name: str) -> Mask:
        """Where the answer is known to be no."""
        return self.is_one(name, NO)

    @cached_property
    def cuts_off(self) -> Mask:
        """Wheels made for cutting off."""
        return self.is_one("wheel.shape", Shape.CUTTING_OFF, Shape.TYPE_27A)

    @cached_property
    def special(self) -> Mask:
        """Types 27 and 28, the modified types for terrazzo, and discs: flanges of their own sort."""
        return self.unlike_flanges | self.is_one("wheel.shape", Shape.DISC)

    @cached_property
    def unlike_flanges(self) -> Mask:
        """Shapes whose flanges may differ."""
        terrazzo = Shape.TYPE_6_TERRAZZO, Shape.TYPE_11_TERRAZZO
        return self.is_one("wheel.shape", Shape.TYPE_27, Shape.TYPE_28, *terrazzo)

    @cached_property
    def threaded(self) -> Mask:
        """Wheels that bring a thread of their own, and so have one flange, the fixed one."""
        return self.is_one("wheel.fastening", Fastening.INSERT, Fastening.STUD)

    @cached_property
    def without_flanges(self) -> Mask:
        """Wheels known to be held by something else than two flanges."""
        return np.greater(self["wheel.fastening"], Fastening.FLANGES)

    @cached_property
    def held_otherwise(self) -> Mask:
        """Wheels known to be held without any flange."""
        return np.greater(self["wheel.fastening"], Fastening.STUD)

    @cached_property
    def unplaced(self) -> Mask:
        """Wheels of which nobody can tell whether a rule of flanges applies."""
        return self.blank("wheel.shape", "wheel.fastening")

    @cached_property
    def no_nut(self) -> Mask:
        """Mountings known to have no central nut."""
        return self.without_flanges | self.is_one("nut.thread_hand", NO_NUT)

    @cached_property
    def internal(self) -> Mask:
        """Wheels on internal grinders."""
        return self.is_one("machine.kind", Machine.INTERNAL)

    @cached_property
    def rim_at_marked_speed(self) -> Array:
        """Rim speed at the turns marked on the wheel."""
        return rim(self["wheel.diameter"], self["wheel.marked_speed"])

    @cached_property
    def stack(self) -> tuple[Array, Array]:
        """From the fixed land to the inner face of the loose flange, and to half of the wheel."""
        fixed, loose = self.blotter("fixed"), self.blotter("loose")
        wheel, discs = self["wheel.thickness"], self["hub.stabilisers"]
        return wheel + fixed + loose + discs, fixed + discs / 2 + wheel / 2

    def blotter(self, side: str) -> Array:
        """Thickness of a blotter; nothing where there is none."""
        present = f"{side}_blotter.present"
        thickness = np.where(self.no(present), 0.0, self[f"{side}_blotter.thickness"])
        thickness[self.blank(present)] = np.nan
        return thickness

    @cached_property
    def o6(self) -> Index:
        """Where every wheel stands in Table O-6."""
        return o6_entries(self.listed_by)

    @cached_property
    def listed_by(self) -> Array:
        """The diameter the tables go by: the nominal one where it is near, otherwise the larger."""
        nominal, measured = self["wheel.nominal_diameter"], self["wheel.diameter"]
        near = np.abs(nominal - measured) <= 0.03 * measured
        return np.where(near, nominal, np.maximum(nominal, measured))

    @cached_property
    def tabled(self) -> dict[str, tuple[Mask, Mask, Demands]]:
        """What `tables` gives for either side."""
        return {side: self.tables(side) for side in ("fixed", "loose")}

    def tables(self, side: str) -> tuple[Mask, Mask, Demands]:
        """Where no table is about a flange, where that can't be told, and what the tables demand."""
        kind, wheel, hole = self[f"{side}_flange.kind"], self.listed_by, self["wheel.hole"]
        none = self.held_otherwise | self.special | (self["wheel.shape"] == Shape.TYPE_27A)
        blank = self.unplaced | self.blank(f"{side}_flange.kind", "wheel.nominal_diameter", "wheel.diameter")
        blank |= (kind >= Flange.ADAPTOR) & self.blank("wheel.hole")
        flat = ~blank & (kind == Flange.UNRELIEVED)
        none |= flat & ~self.threaded & (wheel >= 2 * INCH)

        def rows(mask: Mask) -> Index:
            return np.flatnonzero(mask & ~none & ~blank)

        entries = self.o6.copy()
        small = rows(flat & ~self.threaded)
        entries[small] = small_entries(self.o6[small])
        threaded = rows(flat & self.threaded)
        entries[threaded] = o4_entries(wheel[threaded])
        adaptor, heavy, sleeve = (rows(kind == code) for code in (Flange.ADAPTOR, Flange.HEAVY, Flange.SLEEVE))
        entries[adaptor] = o5_entries(wheel[adaptor], hole[adaptor])
        entries[heavy] = o7_entries(wheel[heavy], hole[heavy])
        entries[sleeve] = o8_entries(wheel[sleeve], hole[sleeve], self.o6[sleeve])
        return none, blank, demands(entries)

    def on_sides(self, one: Callable[[str], Cells]) -> Cells:
        """The worse of two sides; the fixed one alone for wheels with a thread of their own."""
        fixed = one("fixed")
        return choose((self.threaded, fixed), otherwise=np.minimum(fixed, one("loose")))

    def by_table(self, one: Callable[[str, Demands], Cells]) -> Cells:
        """The same where the tables can be asked."""

        def side(name: str) -> Cells:
            none, blank, asks = self.tabled[name]
            return choose((none, NOT_CHECKED), (blank, UNKNOWN), otherwise=one(name, asks))

        return self.on_sides(side)


def rim(diameter: Array, turns: Array) -> Array:
    """Rim speed in whole µm/s, from nm and millionths of a turn a minute."""
    return np.rint(diameter / 1e9 / 2 * (turns / 1e6 * (np.pi / 30)) * 1e6)
