"""The rules over a million mountings in NumPy: what hubwright's block loops are measured against.

`cargo bench --bench peers` writes the columns and hubwright's outcomes and calls this with the
folder, hubwright's seconds and the day. Every cell is compared. In this rack every heading asks, so
that a missing datum is always a blank: NaN.

Exit codes: 0, 1 a cell disagrees, 3 hubwright is less than ten times as fast.
"""

import sys
import time
from collections.abc import Callable
from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from tables import O5, O7, O8, Array, Demands, banded, nothing, relieved, unrelieved

REFUSE, UNKNOWN, CAUTION, PASS, NOT_CHECKED = (np.uint8(code) for code in range(5))
Mask = NDArray[np.bool_]
Cells = NDArray[np.uint8]

# Codes of words, in the order of hubwright's lists.
TYPE_1, CUTTING_OFF, TYPE_4, TYPE_6T, TYPE_11T, TYPE_27, TYPE_27A, TYPE_28, DISC = 0, 1, 3, 6, 9, 14, 15, 16, 18
BENCH, CYLINDRICAL, SURFACE, CUTTING_MACHINE, TOOL, INTERNAL, TOP = 0, 1, 2, 3, 4, 5, 8
UNRELIEVED, RELIEVED, ADAPTOR, HEAVY, SLEEVE = range(5)
YES, NO = 0, 1
TWO_INCHES, TOLERANCE, WITHIN = 50.8e6, 0.5e6, 5e3


def degrees(angle: float) -> float:
    """An angle as hubwright counts it: nanoradians."""
    return float(np.rint(angle * np.pi / 180 * 1e9))


def choose(*cases: tuple[Mask, np.uint8 | Cells], otherwise: np.uint8 | Cells = PASS) -> Cells:
    """The first case whose mask holds."""
    masks, outcomes = zip(*cases, strict=True)
    return np.select(masks, outcomes, otherwise).astype(np.uint8, copy=False)


class Rack:
    """The columns, and the masks that several rules share."""

    def __init__(self, columns: dict[str, Array]) -> None:
        self.columns = columns

    def __getitem__(self, name: str) -> Array:
        return self.columns[name]

    def prepare(self) -> None:
        """Compute the shared masks; part of the time that is measured."""
        shape, fastening = self["wheel.shape"], self["wheel.fastening"]
        self.nan = {name: np.isnan(column) for name, column in self.columns.items()}
        self.cuts_off = (shape == CUTTING_OFF) | (shape == TYPE_27A)
        self.special = np.isin(shape, (TYPE_27, TYPE_28, TYPE_6T, TYPE_11T))
        self.disc = shape == DISC
        self.threaded = (fastening == 1) | (fastening == 2)
        self.without_flanges = ~self.nan["wheel.fastening"] & (fastening != 0)
        self.held_otherwise = self.without_flanges & ~self.threaded
        self.unplaced = self.nan["wheel.shape"] | self.nan["wheel.fastening"]
        self.ready, self.demands, self.no_table = {}, {}, {}
        for side in ("fixed", "loose"):
            self._look_up(side)

    def _look_up(self, side: str) -> None:
        kind, wheel, hole = self[f"{side}_flange.kind"], self["wheel.nominal_diameter"], self["wheel.hole"]
        undercut = kind >= ADAPTOR
        no_table = self.held_otherwise | self.special | self.disc | (self["wheel.shape"] == TYPE_27A)
        blank = self.unplaced | self.nan[f"{side}_flange.kind"] | self.nan["wheel.nominal_diameter"]
        blank |= undercut & self.nan["wheel.hole"]
        flat = (kind == UNRELIEVED) & ~self.threaded
        no_table |= ~blank & flat & (wheel >= TWO_INCHES)
        ready = ~no_table & ~blank
        out = nothing(len(wheel))
        by_o6 = np.flatnonzero(ready & ((kind == RELIEVED) | flat))
        relieved(out, by_o6, wheel[by_o6], kind[by_o6] == RELIEVED)
        by_o4 = np.flatnonzero(ready & (kind == UNRELIEVED) & self.threaded)
        unrelieved(out, by_o4, wheel[by_o4])
        for code, table in ((ADAPTOR, O5), (HEAVY, O7), (SLEEVE, O8)):
            at = np.flatnonzero(ready & (kind == code))
            banded(out, at, table, wheel[at], hole[at], code == HEAVY)
            if code == SLEEVE:
                rest = at[np.isnan(out.diameter[at])]
                out.next[rest] = np.nan
                relieved(out, rest, wheel[rest], np.ones(len(rest), bool))
            else:
                out.adaptor[at] = True
        self.ready[side], self.demands[side], self.no_table[side] = ready, out, no_table

    def any_nan(self, *names: str) -> Mask:
        """Where any of these is blank."""
        return np.logical_or.reduce([self.nan[name] for name in names])

    def on_sides(self, one: Callable[[str], Cells]) -> Cells:
        """The worse of two sides; the fixed one alone for wheels with a thread of their own."""
        fixed = one("fixed")
        return np.where(self.threaded, fixed, np.minimum(fixed, one("loose")))

    def tabled(self, side: str, cases: Cells) -> Cells:
        """`cases` where the table can be asked."""
        return choose((self.no_table[side], NOT_CHECKED), (~self.ready[side], UNKNOWN), otherwise=cases)


def rim(diameter: Array, turns: Array) -> Array:
    """Rim speed in whole µm/s."""
    return np.rint(diameter / 1e9 / 2 * (turns / 1e6 * (np.pi / 30)) * 1e6)


def over_speed(r: Rack) -> Cells:
    n, d, turns, marked = r["spindle.greatest_speed"], r["wheel.diameter"], r["wheel.marked_speed"], r["wheel.marked_rim_speed"]
    rounded = rim(d, turns) * 1000 <= marked * 1005
    breach = (n > turns) | ((rim(d, n) > marked) & ~rounded)
    blank = r.any_nan("spindle.greatest_speed", "wheel.marked_speed", "wheel.marked_rim_speed", "wheel.diameter")
    return choose((breach, REFUSE), (blank, UNKNOWN))


def markings_disagree(r: Rack) -> Cells:
    blank = r.any_nan("wheel.marked_speed", "wheel.marked_rim_speed", "wheel.diameter")
    apart = rim(r["wheel.diameter"], r["wheel.marked_speed"]) > r["wheel.marked_rim_speed"]
    return choose((blank, UNKNOWN), (apart, CAUTION))


def hole_large_for_wheel(r: Rack) -> Cells:
    hole, d, kind = r["wheel.hole"], r["wheel.diameter"], r["machine.kind"]
    straight = r["wheel.shape"] == TYPE_1
    precision = (kind == SURFACE) | (kind == CYLINDRICAL)
    two_thirds = 3 * hole <= 2 * d
    small = np.where(r.cuts_off, 4 * hole <= d, np.where(precision, two_thirds, 2 * hole <= d))
    return choose(
        (r.any_nan("wheel.shape", "wheel.hole", "wheel.diameter"), UNKNOWN),
        (~(straight | r.cuts_off), NOT_CHECKED),
        (small, PASS),
        (r.cuts_off, REFUSE),
        (r.nan["machine.kind"] & two_thirds, UNKNOWN),
        otherwise=CAUTION,
    )


def cutting_off_too_thick(r: Rack) -> Cells:
    d = r["wheel.diameter"] / 25.4e6
    most = np.where(d <= 6, 3 / 16, np.where(d <= 12, 1 / 4, np.where(d <= 23, 3 / 8, 1 / 2))) * 25.4e6
    return choose(
        (~r.cuts_off & ~r.nan["wheel.shape"], NOT_CHECKED),
        (r.any_nan("wheel.shape", "wheel.thickness", "wheel.diameter"), UNKNOWN),
        (r["wheel.thickness"] > most, CAUTION),
    )


def wheel_too_old(r: Rack, today: float) -> Cells:
    return choose((r.nan["wheel.use_before"], UNKNOWN), (today > r["wheel.use_before"], CAUTION))


def bushing(r: Rack) -> Cells:
    width, thickness = r["wheel.bushing_width"], r["wheel.thickness"]
    names = ("bushing_width", "bushing_touches_flange", "bushing_nested", "thickness")
    return choose(
        ((width > thickness) | (r["wheel.bushing_touches_flange"] == YES), REFUSE),
        (r.any_nan(*(f"wheel.{name}" for name in names)), UNKNOWN),
        ((r["wheel.bushing_nested"] == YES) | (2 * width < thickness), CAUTION),
    )


def flange_below_one_third(r: Rack) -> Cells:
    wheel = r["wheel.diameter"]
    times = np.where(r.cuts_off, 4.0, 3.0)
    internal = (r["machine.kind"] == INTERNAL) & ~r.cuts_off

    def one(side: str) -> Cells:
        blank = r.any_nan("wheel.diameter", f"{side}_flange.diameter")
        held = times * r[f"{side}_flange.diameter"] >= wheel
        return choose((blank, UNKNOWN), (held, PASS), (internal, CAUTION), otherwise=REFUSE)

    both = np.minimum(one("fixed"), one("loose"))
    exempt = r.without_flanges | r.special | r.disc
    return choose((exempt, NOT_CHECKED), (r.unplaced, UNKNOWN), otherwise=both)


def flange_below_table(r: Rack) -> Cells:
    def one(side: str) -> Cells:
        found, asks = r[f"{side}_flange.diameter"], r.demands[side]
        cases = choose(
            (r.nan[f"{side}_flange.diameter"], UNKNOWN),
            (found < asks.diameter, np.where(asks.adaptor, CAUTION, REFUSE)),
            (found < asks.next, CAUTION),
            (np.isnan(asks.diameter), NOT_CHECKED),
        )
        return r.tabled(side, cases)

    return choose((r.cuts_off, NOT_CHECKED), otherwise=r.on_sides(one))


def flanges_unlike(r: Rack) -> Cells:
    names = ("fixed_flange.diameter", "loose_flange.diameter", "fixed_flange.land", "loose_flange.land")
    diameters, lands = np.abs(r[names[0]] - r[names[1]]), np.abs(r[names[2]] - r[names[3]])
    return choose(
        (r.without_flanges | r.special, NOT_CHECKED),
        (r.unplaced, UNKNOWN),
        ((diameters > TOLERANCE) | (lands > TOLERANCE), REFUSE),
        (r.any_nan(*names), UNKNOWN),
    )


def flange_relief(r: Rack) -> Cells:
    flat = r.threaded | (r["wheel.shape"] == TYPE_27A)

    def one(side: str) -> Cells:
        kind, recess = r[f"{side}_flange.kind"], r[f"{side}_flange.recess"]
        no_kind, no_recess = r.nan[f"{side}_flange.kind"], r.nan[f"{side}_flange.recess"]
        undercut = kind >= ADAPTOR
        found = np.where(undercut, r[f"{side}_flange.undercut"], recess)
        least = np.where(undercut, 25.4e6 / 8, 25.4e6 / 16)
        where_flat = choose(((recess > 0) | (kind == RELIEVED), REFUSE), (no_kind | no_recess, UNKNOWN))
        elsewhere = choose(
            (kind == UNRELIEVED, REFUSE), (no_kind | np.isnan(found), UNKNOWN), (found >= least, PASS), otherwise=REFUSE
        )
        return np.where(flat, where_flat, elsewhere)

    return choose(
        (r.held_otherwise | r.special | r.disc, NOT_CHECKED),
        (r.unplaced | (~flat & r.nan["wheel.diameter"]), UNKNOWN),
        (~flat & (r["wheel.diameter"] < TWO_INCHES), NOT_CHECKED),
        otherwise=r.on_sides(one),
    )


def land_width(r: Rack) -> Cells:
    def one(side: str) -> Cells:
        land, asks = r[f"{side}_flange.land"], r.demands[side]
        cases = choose(
            (np.isnan(asks.least_land), NOT_CHECKED),
            (r.nan[f"{side}_flange.land"], UNKNOWN),
            ((land < asks.least_land) | (land > asks.greatest_land), REFUSE),
        )
        return r.tabled(side, cases)

    return r.on_sides(one)


def flange_too_thin(r: Rack) -> Cells:
    def one(side: str) -> Cells:
        hole, asks = r[f"{side}_flange.thickness_at_hole"], r.demands[side]
        edge = np.where(asks.flat, hole, r[f"{side}_flange.thickness_at_edge"])
        thin = (hole < asks.at_hole) | (edge < asks.at_edge)
        cases = choose(
            (np.isnan(asks.at_hole), NOT_CHECKED),
            (thin, np.where(asks.adaptor, CAUTION, REFUSE)),
            (np.isnan(hole) | np.isnan(edge), UNKNOWN),
        )
        return r.tabled(side, cases)

    return r.on_sides(one)


def flange_material(r: Rack) -> Cells:
    def one(side: str) -> Cells:
        material = r[f"{side}_flange.material"]
        return choose((r.nan[f"{side}_flange.material"], UNKNOWN), (material <= 1, PASS), otherwise=CAUTION)

    return choose((r.held_otherwise, NOT_CHECKED), otherwise=r.on_sides(one))


def hub_run_out(r: Rack) -> Cells:
    names = ("fixed_flange.run_out", "hub.spigot_run_out", "hub.run_out_limit")
    over = np.maximum(r[names[0]], r[names[1]]) > r[names[2]]
    return choose((r.any_nan(*names), UNKNOWN), (over, CAUTION))


def blotter_missing(r: Rack) -> Cells:
    shape, bond = r["wheel.shape"], r["wheel.bond"]
    diamond = (r["wheel.abrasive"] == 2) & ~r.nan["wheel.bond"]
    vitrified_diamond = diamond & (bond == 0)
    exempt = (diamond & (bond != 0)) | (~diamond & (r.special | r.disc | (shape == TYPE_4)))
    certain = vitrified_diamond | r.cuts_off | (r["machine.kind"] == INTERNAL)
    blank = r.unplaced | r.any_nan("wheel.abrasive", "wheel.bond")

    def one(side: str) -> Cells:
        present = r[f"{side}_blotter.present"]
        missing = r.nan[f"{side}_blotter.present"] | ((present == NO) & blank)
        return choose((present == YES, PASS), (missing, UNKNOWN), (certain, CAUTION), otherwise=REFUSE)

    return choose((r.held_otherwise | exempt, NOT_CHECKED), otherwise=r.on_sides(one))


def blotter_too_small(r: Rack) -> Cells:
    def one(side: str) -> Cells:
        outside, hole = r[f"{side}_blotter.diameter"], r[f"{side}_blotter.hole"]
        diameter, land = r[f"{side}_flange.diameter"], r[f"{side}_flange.land"]
        blotter = (f"{side}_blotter.{name}" for name in ("present", "diameter", "hole"))
        blank = r.any_nan(*blotter, f"{side}_flange.diameter", f"{side}_flange.land")
        open_ = (outside < diameter) | (hole > diameter - 2 * land)
        return choose((r[f"{side}_blotter.present"] == NO, NOT_CHECKED), (open_, REFUSE), (blank, UNKNOWN))

    return r.on_sides(one)


def blotter_reused(r: Rack) -> Cells:
    def one(side: str) -> Cells:
        present, used, fixed = (f"{side}_blotter.{name}" for name in ("present", "used_before", "fixed_by_maker"))
        new = (r[used] == NO) | (r[fixed] == YES)
        return choose(
            (r[present] == NO, NOT_CHECKED),
            (r.nan[used], UNKNOWN),
            (new, np.where(r.nan[present], UNKNOWN, PASS)),
            (r.nan[fixed], UNKNOWN),
            otherwise=CAUTION,
        )

    return r.on_sides(one)


def wheel_binds(r: Rack) -> Cells:
    hole, spigot = r["wheel.smallest_hole"], r["hub.largest_spigot"]
    rise, grows = r["hub.warmer_by"], r["hub.expansion"]
    cold = hole - spigot
    opens = np.nan_to_num(hole * (r["wheel.warmer_by"] / 1e3) * (r["wheel.expansion"] / 1e12))
    closes = np.nan_to_num(spigot * (rise / 1e3) * (grows / 1e12))
    warm = np.rint(cold + opens - closes)
    heat = r.any_nan("hub.warmer_by", "wheel.warmer_by", "wheel.expansion") | ((rise > 0) & r.nan["hub.expansion"])
    return choose(
        (r.without_flanges, NOT_CHECKED),
        (cold < -WITHIN, REFUSE),
        (r.any_nan("wheel.fastening", "wheel.smallest_hole", "hub.largest_spigot") | heat, UNKNOWN),
        (warm < -WITHIN, REFUSE),
        (np.minimum(cold, warm) <= WITHIN, CAUTION),
    )


def spigot_size(r: Rack) -> Cells:
    nominal = r["wheel.nominal_hole"]
    return choose(
        (r.any_nan("wheel.nominal_hole", "hub.largest_spigot", "hub.smallest_spigot"), UNKNOWN),
        (r["hub.largest_spigot"] > nominal, REFUSE),
        (r["hub.smallest_spigot"] < nominal - 0.002 * 25.4e6, CAUTION),
    )


def wheel_loose(r: Rack) -> Cells:
    clearance = r["wheel.largest_hole"] - r["hub.smallest_spigot"]
    blank = r.any_nan("hub.clearance_limit", "wheel.largest_hole", "hub.smallest_spigot")
    return choose((blank, UNKNOWN), (clearance > r["hub.clearance_limit"], CAUTION))


def thread_hand(r: Rack) -> Cells:
    rotation, hand, keyed = r["spindle.rotation"], r["nut.thread_hand"], r["loose_flange.keyed"] == YES
    tightens = ((rotation == 1) & (hand == 0)) | ((rotation == 0) & (hand == 1))
    blank = r.any_nan("wheel.fastening", "spindle.rotation", "nut.thread_hand", "loose_flange.keyed")
    return choose(
        (r.without_flanges | (hand == 2), NOT_CHECKED),
        (blank, UNKNOWN),
        (tightens & keyed, PASS),
        (tightens | keyed, CAUTION),
        otherwise=REFUSE,
    )


def stack(r: Rack) -> tuple[Array, Array, Array, Array]:
    """Wheel, fixed blotter, loose blotter, discs."""

    def blotter(side: str) -> Array:
        present = r[f"{side}_blotter.present"]
        thickness = np.where(present == NO, 0.0, r[f"{side}_blotter.thickness"])
        return np.where(r.nan[f"{side}_blotter.present"], np.nan, thickness)

    return r["wheel.thickness"], blotter("fixed"), blotter("loose"), r["hub.stabilisers"]


def no_nut(r: Rack, cases: Cells) -> Cells:
    """`cases` where there is a central nut."""
    none = r.without_flanges | (r["nut.thread_hand"] == 2)
    return choose((none, NOT_CHECKED), (r.any_nan("wheel.fastening", "nut.thread_hand"), UNKNOWN), otherwise=cases)


def nut_bottoms(r: Rack) -> Cells:
    wheel, fixed, loose, discs = stack(r)
    held = wheel + fixed + loose + discs
    whole = held + r["loose_flange.thickness_at_hole"]
    room = r["hub.thread_to"] - r["nut.length"]
    wrong = (whole < r["hub.thread_from"]) | (held < r["hub.flange_stop"]) | (whole > room)
    blank = np.isnan(whole) | np.isnan(room) | r.any_nan("hub.thread_from", "hub.flange_stop")
    return no_nut(r, choose((wrong, REFUSE), (blank, UNKNOWN)))


def thread_reach(r: Rack) -> Cells:
    wheel, fixed, loose, discs = stack(r)
    end = wheel + fixed + loose + discs + r["loose_flange.thickness_at_hole"]
    start = r["hub.thread_from"]
    wrong = (start >= end) | (start < fixed + discs / 2 + wheel / 2)
    return no_nut(r, choose((wrong, CAUTION), (np.isnan(end) | r.nan["hub.thread_from"], UNKNOWN)))


def guard_open(r: Rack) -> Cells:
    kind, exposure, start = r["machine.kind"], r["machine.guard_exposure"], r["machine.guard_start"]
    bench = kind == BENCH
    at_125 = bench & (r["machine.work_below_spindle"] == YES)
    flat = (kind == SURFACE) | (kind == CUTTING_MACHINE)
    most = np.select(
        [at_125, bench, flat, kind == TOP], [degrees(125), degrees(90), degrees(150), degrees(60)], degrees(180)
    )
    highest = np.select([bench | (kind == CYLINDRICAL), flat], [degrees(65), degrees(-15)], np.inf)
    maybe = bench & r.nan["machine.work_below_spindle"]
    over = exposure > most
    blank = r.nan["machine.guard_exposure"] | (r.nan["machine.guard_start"] & (highest < np.inf))
    return choose(
        (r.nan["machine.kind"], UNKNOWN),
        (kind == INTERNAL, NOT_CHECKED),
        (over & ~(maybe & (exposure <= degrees(125))), np.where(kind == TOOL, CAUTION, REFUSE)),
        (start > highest, REFUSE),
        ((maybe & over) | blank, UNKNOWN),
    )


def judge(rack: Rack, slugs: list[str], today: float) -> tuple[dict[str, Cells], Cells]:
    """The outcome of every rule, and the worst of each mounting."""
    rack.prepare()
    cells: dict[str, Cells] = {}
    for slug in slugs:
        name = slug.replace("-", "_")
        cells[slug] = wheel_too_old(rack, today) if name == "wheel_too_old" else globals()[name](rack)
    worst = np.full(len(rack["wheel.diameter"]), NOT_CHECKED)
    for outcomes in cells.values():
        np.minimum(worst, outcomes, out=worst)
    return cells, worst


def main(folder: Path, rust_seconds: float, today: float) -> int:
    """Time, compare, report."""
    columns = {path.stem: np.fromfile(path, "<f8") for path in sorted(folder.glob("*.f64"))}
    slugs = (folder / "rules.txt").read_text().splitlines()
    rack = Rack(columns)
    rows = len(columns["wheel.diameter"])
    expected = np.fromfile(folder / "cells.u8", np.uint8).reshape(len(slugs), rows)
    seconds = []
    with np.errstate(invalid="ignore"):
        for _ in range(4):  # the first warms up
            start = time.perf_counter()
            cells, _worst = judge(rack, slugs, today)
            seconds.append(time.perf_counter() - start)
    best = min(seconds[1:])
    apart = {slug: np.flatnonzero(cells[slug] != theirs) for slug, theirs in zip(slugs, expected, strict=True)}
    for slug, places in apart.items():
        for row in places[:3]:
            print(f"{slug}, row {row}: NumPy {cells[slug][row]}, hubwright {expected[slugs.index(slug), row]}")
            print("   ", {name: column[row] for name, column in columns.items()})
        if len(places):
            print(f"{slug}: {len(places)} cells disagree")
    if any(map(len, apart.values())):
        return 1
    ratio = best / rust_seconds
    print(
        f"NumPy {best:.2f} s, hubwright {rust_seconds:.3f} s: {ratio:.1f} times as fast on one thread; "
        f"{len(slugs)} rules x {rows} mountings, every cell agreed"
    )
    return 0 if ratio >= 10 else 3


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1]), float(sys.argv[2]), float(sys.argv[3])))
