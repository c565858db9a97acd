"""The rules over a million mountings in NumPy: what hubwright's block loops are measured against.

`cargo bench --bench peers` writes the columns and hubwright's outcomes and calls this with the folder,
hubwright's seconds and the day. Every cell is compared. In this rack every heading asks, so that a
missing datum is always a blank, a NaN; anything else is turned down before the clock starts. The terms
are hubwright's usual ones: federal law of the United States, flanges alike within 0.5 mm, hole and
spigot measured within 5 µm.

Exit codes: 0, 1 a cell disagrees, 2 no rack of blanks alone.
"""

import sys
import time
from collections.abc import Callable
from functools import reduce
from pathlib import Path

import numpy as np
from tables import (
    CAUTION, INCH, LEFT, NO_NUT, NOT_CHECKED, PASS, REFUSE, RIGHT, UNKNOWN,
    Array, Cells, Demands, Flange, Machine, Rack, Shape, choose, rim,
)  # fmt: skip

OUTCOMES = ("refuse", "unknown", "caution", "pass", "not checked")
BLANK = 0x7FF8_0000_0000_0002
DIAMOND, VITRIFIED = 2, 0
CLOCKWISE, ANTICLOCKWISE = 0, 1
CAST_IRON = 1  # and steel before it
TOLERANCE, WITHIN = 0.5e6, 5e3
RUNS = 3
SHOWN = 3


def degrees(angle: float) -> float:
    """An angle as hubwright counts it: whole nanoradians."""
    return float(np.rint(np.deg2rad(angle) * 1e9))


def over_speed(r: Rack) -> Cells:
    """Can the spindle turn faster, in turns or at the rim, than the wheel is marked for?"""
    speed, marked = r["spindle.greatest_speed"], r["wheel.marked_rim_speed"]
    too_many_turns = speed > r["wheel.marked_speed"]
    rounded = r.rim_at_marked_speed * 1000 <= marked * 1005
    too_fast_rim = (rim(r["wheel.diameter"], speed) > marked) & ~rounded
    blank = r.blank("spindle.greatest_speed", "wheel.marked_speed", "wheel.marked_rim_speed", "wheel.diameter")
    return choose((too_many_turns | too_fast_rim, REFUSE), (blank, UNKNOWN))


def markings_disagree(r: Rack) -> Cells:
    """Do the speeds marked in turns and at the rim disagree?"""
    blank = r.blank("wheel.marked_speed", "wheel.marked_rim_speed", "wheel.diameter")
    return choose((blank, UNKNOWN), (r.rim_at_marked_speed > r["wheel.marked_rim_speed"], CAUTION))


def marking_disagrees(r: Rack) -> Cells:
    """Does the wheel's own marking say otherwise than the mounting does?"""
    says = r["wheel.marking_says"]
    return choose(((says > 1) | r.blank("wheel.marking_says"), UNKNOWN), (says == 1, CAUTION))


def burst_margin(r: Rack) -> Cells:
    """By the tensile strength given, does the wheel burst too near to the spindle's greatest speed?"""
    hole = np.maximum(r["wheel.hole"], r["wheel.largest_hole"]) / 2e9
    radius = r["wheel.diameter"] / 2e9
    turning = r["spindle.greatest_speed"] / 1e6 * (np.pi / 30)
    poisson, density = r["wheel.poisson_ratio"] / 1e9, r["wheel.density"] / 1e3
    hoop = density * turning**2 / 4 * ((3 + poisson) * radius**2 + (1 - poisson) * hole**2)
    found = np.floor(r["wheel.tensile_strength"] / 1e3 / hoop * 1e9)
    shape = "wheel.shape"
    flat = r.is_one(shape, Shape.TYPE_1, Shape.CUTTING_OFF)
    return choose(
        (~(flat | r.blank(shape)), NOT_CHECKED),
        (flat & ((found < 1e9) | (found < r["wheel.burst_factor"])), REFUSE),
        (r.blank(shape, "wheel.burst_factor") | np.isnan(found), UNKNOWN),
    )


def hole_large_for_wheel(r: Rack) -> Cells:
    """Is the hole over a quarter of a cutting-off wheel, or over half (two thirds) of a straight one?"""
    hole, wheel = r["wheel.hole"], r["wheel.diameter"]
    shape = r["wheel.shape"]
    other = ~(r.cuts_off | (shape == Shape.TYPE_1) | r.blank("wheel.shape"))
    precision = r.is_one("machine.kind", Machine.SURFACE, Machine.CYLINDRICAL)
    two_thirds = 3 * hole <= 2 * wheel
    straight_small = (2 * hole <= wheel) | (precision & two_thirds)
    return choose(
        (other, NOT_CHECKED),
        (r.blank("wheel.shape", "wheel.hole", "wheel.diameter"), UNKNOWN),
        (r.cuts_off & (4 * hole > wheel), REFUSE),
        (r.cuts_off, PASS),
        (straight_small, PASS),
        (r.blank("machine.kind") & two_thirds, UNKNOWN),
        otherwise=CAUTION,
    )


def cutting_off_too_thick(r: Rack) -> Cells:
    """Is a cutting-off wheel over 3/16 in thick up to 6 in, 1/4 up to 12, 3/8 up to 23, 1/2 above?"""
    wheel, thickness = r["wheel.diameter"], r["wheel.thickness"]
    thick = thickness > INCH / 2
    for most, up_to in ((3 / 8, 23), (1 / 4, 12), (3 / 16, 6)):
        thick |= (thickness > most * INCH) & (wheel <= up_to * INCH)
    return choose(
        (~(r.cuts_off | r.blank("wheel.shape")), NOT_CHECKED),
        (r.blank("wheel.shape", "wheel.thickness", "wheel.diameter"), UNKNOWN),
        (thick, CAUTION),
    )


def wheel_too_old(r: Rack) -> Cells:
    """Is today past the use-before date? The other dates count only where nobody asks for this one."""
    return choose((r.blank("wheel.use_before"), UNKNOWN), (r["wheel.use_before"] < r.today, CAUTION))


def bushing(r: Rack) -> Cells:
    """Is a reducing bushing too wide, touching a flange, nested, or too short?"""
    width, thickness = r["wheel.bushing_width"], r["wheel.thickness"]
    touches, nested = "wheel.bushing_touches_flange", "wheel.bushing_nested"
    return choose(
        ((width > thickness) | r.yes(touches), REFUSE),
        (r.blank("wheel.bushing_width", "wheel.thickness", touches), UNKNOWN),
        (r.yes(nested), CAUTION),
        (r.blank(nested), UNKNOWN),
        (2 * width < thickness, CAUTION),
    )


def flange_below_one_third(r: Rack) -> Cells:
    """Is a flange below a third of the wheel, a quarter of a cutting-off one?"""
    wheel = r["wheel.diameter"]

    def one(side: str) -> Cells:
        flange = r[f"{side}_flange.diameter"]
        held = (3 * flange >= wheel) | (r.cuts_off & (4 * flange >= wheel))
        blank = r.blank("wheel.diameter", f"{side}_flange.diameter")
        in_hole = flange <= r["wheel.hole"]
        internal = r.internal & ~r.cuts_off
        return choose(
            (blank, UNKNOWN), ((~held & ~internal) | in_hole, REFUSE), (held, PASS), otherwise=CAUTION
        )

    portable = r.is_one("machine.kind", Machine.PORTABLE)
    exempt = r.held_otherwise | (r.threaded & portable) | r.special
    blank = r.unplaced | (r.threaded & r.blank("machine.kind")) | r.blank("wheel.hole")
    return choose((exempt, NOT_CHECKED), (blank, UNKNOWN), otherwise=r.on_sides(one))


def flange_below_table(r: Rack) -> Cells:
    """Is a flange below its table's row for this wheel (adaptors: a caution), or below the next row?"""

    def one(side: str, asks: Demands) -> Cells:
        found = r[f"{side}_flange.diameter"]
        small = found < asks.diameter
        return choose(
            (r.blank(f"{side}_flange.diameter"), UNKNOWN),
            (small & ~asks.adaptor, REFUSE),
            (small | (found < asks.next), CAUTION),
            (np.isnan(asks.diameter), NOT_CHECKED),
        )

    return choose((r.cuts_off, NOT_CHECKED), otherwise=r.by_table(one))


def flanges_unlike(r: Rack) -> Cells:
    """Do the flanges differ in diameter or land by more than the tolerance?"""
    names = [f"{side}_flange.{size}" for size in ("diameter", "land") for side in ("fixed", "loose")]
    diameter, other_diameter, land, other_land = (r[name] for name in names)
    unlike = (np.abs(diameter - other_diameter) > TOLERANCE) | (np.abs(land - other_land) > TOLERANCE)
    return choose(
        (r.without_flanges | r.unlike_flanges, NOT_CHECKED),
        (r.unplaced, UNKNOWN),
        (unlike, REFUSE),
        (r.blank(*names), UNKNOWN),
    )


def flange_relief(r: Rack) -> Cells:
    """Is a flange's recess or undercut too shallow, or there where the flange must be flat?"""
    flat = r.threaded | (r["wheel.shape"] == Shape.TYPE_27A)

    def one(side: str) -> Cells:
        kind, recess = r[f"{side}_flange.kind"], r[f"{side}_flange.recess"]
        no_kind, no_recess = r.blank(f"{side}_flange.kind"), r.blank(f"{side}_flange.recess")
        hollow = (recess > 0) | (kind == Flange.RELIEVED)
        cut = kind >= Flange.ADAPTOR
        no_depth = (cut & r.blank(f"{side}_flange.undercut")) | (~cut & no_recess)
        enough = (cut & (r[f"{side}_flange.undercut"] >= INCH / 8)) | (~cut & (recess >= INCH / 16))
        return choose(
            ((flat & hollow) | (~flat & (kind == Flange.UNRELIEVED)), REFUSE),
            (no_kind | (flat & no_recess) | (~flat & no_depth), UNKNOWN),
            (flat | enough, PASS),
            otherwise=REFUSE,
        )

    return choose(
        (r.held_otherwise | r.special, NOT_CHECKED),
        (r.unplaced | (~flat & r.blank("wheel.diameter")), UNKNOWN),
        (~flat & (r["wheel.diameter"] < 2 * INCH), NOT_CHECKED),
        otherwise=r.on_sides(one),
    )


def land_width(r: Rack) -> Cells:
    """Is a land narrower or wider than Table O-6 allows?"""

    def one(side: str, asks: Demands) -> Cells:
        land = r[f"{side}_flange.land"]
        return choose(
            (np.isnan(asks.least_land), NOT_CHECKED),
            (r.blank(f"{side}_flange.land"), UNKNOWN),
            ((land < asks.least_land) | (land > asks.greatest_land), REFUSE),
        )

    return r.by_table(one)


def flange_too_thin(r: Rack) -> Cells:
    """Is a flange thinner than its table asks, at the hole or at the edge of the recess?"""

    def one(side: str, asks: Demands) -> Cells:
        hole, edge = f"{side}_flange.thickness_at_hole", f"{side}_flange.thickness_at_edge"
        # A flat flange has one thickness.
        thin = (r[hole] < asks.at_hole) | ((r[edge] < asks.at_edge) & ~asks.flat)
        return choose(
            (np.isnan(asks.at_hole), NOT_CHECKED),
            (thin & ~asks.adaptor, REFUSE),
            (thin, CAUTION),
            (r.blank(hole) | (r.blank(edge) & ~asks.flat), UNKNOWN),
        )

    return r.by_table(one)


def flange_material(r: Rack) -> Cells:
    """Is a flange of something else than steel or cast iron?"""

    def one(side: str) -> Cells:
        material, shown = f"{side}_flange.material", f"{side}_flange.shown_stiff"
        soft = (r[material] > CAST_IRON) & ~r.yes(shown)
        return choose((r.blank(material) | (soft & r.blank(shown)), UNKNOWN), (soft, CAUTION))

    return choose((r.held_otherwise, NOT_CHECKED), otherwise=r.on_sides(one))


def hub_run_out(r: Rack) -> Cells:
    """Is the run-out of flange face or spigot above the limit?"""
    face, spigot, limit = "fixed_flange.run_out", "hub.spigot_run_out", "hub.run_out_limit"
    over = (r[face] > r[limit]) | (r[spigot] > r[limit])
    return choose((r.blank(face, spigot, limit), UNKNOWN), (over, CAUTION))


def blotter_missing(r: Rack) -> Cells:
    """Is there no blotter on a side that needs one? Of some wheels only their makers know."""
    bond = r["wheel.bond"]
    diamond = (r["wheel.abrasive"] == DIAMOND) & ~r.blank("wheel.bond")
    exempt_shape = r.is_one("wheel.shape", Shape.TYPE_4, Shape.TYPE_27, Shape.TYPE_28, Shape.DISC)
    in_part = r.cuts_off | r.is_one("wheel.shape", Shape.TYPE_6_TERRAZZO, Shape.TYPE_11_TERRAZZO)
    exempt = exempt_shape | (diamond & (bond != VITRIFIED))
    ask_the_maker = r.internal | (diamond & (bond == VITRIFIED)) | (~diamond & in_part)
    blank = r.unplaced | r.blank("wheel.abrasive", "wheel.bond")

    def one(side: str) -> Cells:
        present = f"{side}_blotter.present"
        return choose(
            (r.yes(present), PASS),
            (r.blank(present) | blank, UNKNOWN),
            (ask_the_maker, CAUTION),
            otherwise=REFUSE,
        )

    return choose((r.held_otherwise | exempt, NOT_CHECKED), otherwise=r.on_sides(one))


def blotter_too_small(r: Rack) -> Cells:
    """Does a blotter leave part of the bearing surface uncovered?"""

    def one(side: str) -> Cells:
        present, outside, hole = (f"{side}_blotter.{name}" for name in ("present", "diameter", "hole"))
        flange, land = f"{side}_flange.diameter", f"{side}_flange.land"
        uncovered = (r[outside] < r[flange]) | (r[hole] > r[flange] - 2 * r[land])
        blank = r.blank(present, outside, hole, flange, land)
        return choose((r.no(present), NOT_CHECKED), (uncovered, REFUSE), (blank, UNKNOWN))

    return r.on_sides(one)


def blotter_reused(r: Rack) -> Cells:
    """Was a blotter used before that the maker did not fix to the wheel?"""

    def one(side: str) -> Cells:
        present, used = f"{side}_blotter.present", f"{side}_blotter.used_before"
        fixed = f"{side}_blotter.fixed_by_maker"
        new = r.no(used) | r.yes(fixed)
        return choose(
            (r.no(present), NOT_CHECKED),
            (r.blank(used) | (new & r.blank(present)) | (~new & r.blank(fixed)), UNKNOWN),
            (new, PASS),
            otherwise=CAUTION,
        )

    return r.on_sides(one)


def wheel_binds(r: Rack) -> Cells:
    """Can the hole at its smallest bind on the spigot at its largest, cold or warm?"""
    hole = np.minimum(r["wheel.hole"], r["wheel.smallest_hole"])
    spigot, rise = np.maximum(r["hub.spigot"], r["hub.largest_spigot"]), r["hub.warmer_by"]
    cold = hole - spigot
    opens = hole * (r["wheel.warmer_by"] / 1e3) * (r["wheel.expansion"] / 1e12)
    closes = spigot * (rise / 1e3) * (r["hub.expansion"] / 1e12)
    closes[rise == 0] = 0.0  # also where nobody says how much it expands
    warm = np.rint(cold + opens - closes)
    blank = r.blank("wheel.fastening") | np.isnan(cold)
    blank |= r.blank("hub.warmer_by", "wheel.warmer_by", "wheel.expansion")
    blank |= (rise > 0) & r.blank("hub.expansion")
    return choose(
        (r.without_flanges, NOT_CHECKED),
        (cold < -WITHIN, REFUSE),
        (blank, UNKNOWN),
        (warm < -WITHIN, REFUSE),
        ((cold <= WITHIN) | (warm <= WITHIN), CAUTION),
    )


def spigot_size(r: Rack) -> Cells:
    """Is the spigot above its nominal size, or more than 0.002 in below?"""
    nominal, spigot = r["wheel.nominal_hole"], r["hub.spigot"]
    largest, smallest = np.maximum(spigot, r["hub.largest_spigot"]), np.minimum(spigot, r["hub.smallest_spigot"])
    blank = r.blank("wheel.fastening", "wheel.nominal_hole") | np.isnan(largest + smallest)
    return choose(
        (r.without_flanges, NOT_CHECKED),
        (blank, UNKNOWN),
        (largest > nominal, REFUSE),
        (smallest < nominal - 0.002 * INCH, CAUTION),
    )


def wheel_loose(r: Rack) -> Cells:
    """Is the clearance between hole and spigot more than was asked for?"""
    hole = np.maximum(r["wheel.hole"], r["wheel.largest_hole"])
    clearance = hole - np.minimum(r["hub.spigot"], r["hub.smallest_spigot"])
    blank = r.blank("wheel.fastening", "hub.clearance_limit") | np.isnan(clearance)
    return choose(
        (r.without_flanges, NOT_CHECKED), (blank, UNKNOWN), (clearance > r["hub.clearance_limit"], CAUTION)
    )


def thread_hand(r: Rack) -> Cells:
    """Does the running direction loosen the nut?"""
    rotation, hand, keyed = r["spindle.rotation"], r["nut.thread_hand"], r.yes("loose_flange.keyed")
    tightens = ((rotation == ANTICLOCKWISE) & (hand == RIGHT)) | ((rotation == CLOCKWISE) & (hand == LEFT))
    blank = r.blank("wheel.fastening", "spindle.rotation", "nut.thread_hand")
    return choose(
        (r.held_otherwise | r.is_one("nut.thread_hand", NO_NUT), NOT_CHECKED),
        (blank, UNKNOWN),
        (r.threaded & tightens, PASS),
        (r.threaded, REFUSE),
        (r.blank("loose_flange.keyed"), UNKNOWN),
        (tightens & keyed, PASS),
        (tightens | keyed, CAUTION),
        otherwise=REFUSE,
    )


def nut_bottoms(r: Rack) -> Cells:
    """Does nut or loose flange bottom before it grips, or does the thread not fill the nut?"""
    held, _ = r.stack
    whole = held + r["loose_flange.thickness_at_hole"]
    room = r["hub.thread_to"] - r["nut.length"]
    start, stop = "hub.thread_from", "hub.flange_stop"
    return choose(
        (r.no_nut, NOT_CHECKED),
        (r.blank("wheel.fastening", "nut.thread_hand"), UNKNOWN),
        ((whole < r[start]) | (held < r[stop]) | (whole > room), REFUSE),
        (np.isnan(whole) | np.isnan(room) | r.blank(start, stop), UNKNOWN),
    )


def thread_reach(r: Rack) -> Cells:
    """Does the thread fail to reach inside the flange, or run past half of the hole?"""
    held, half = r.stack
    whole, start = held + r["loose_flange.thickness_at_hole"], r["hub.thread_from"]
    return choose(
        (r.no_nut, NOT_CHECKED),
        (r.blank("wheel.fastening", "nut.thread_hand"), UNKNOWN),
        ((start >= whole) | (start < half), CAUTION),
        (np.isnan(whole) | r.blank("hub.thread_from"), UNKNOWN),
    )


def key_overloaded(r: Rack) -> Cells:
    """Is the key sheared or pressed beyond the stresses allowed?"""
    names = [f"key.{name}" for name in ("torque", "shaft_diameter", "width", "height", "length")]
    torque, shaft, width, height, length = (r[name] for name in names)
    force = 2.0 * (torque / 1e6) / (shaft / 1e9)
    bears = np.fmin(height / 2.0, r["key.bearing_height"])
    sheared = np.rint(force / (width / 1e9 * (length / 1e9)) * 1e3)
    pressed = np.rint(force / (bears / 1e9 * (length / 1e9)) * 1e3)
    over = (sheared > r["key.allowed_shear"]) | (pressed > r["key.allowed_bearing"])
    blank = r.blank(*names, "key.bearing_height", "key.allowed_shear", "key.allowed_bearing")
    return choose((over, REFUSE), (blank, UNKNOWN))  # The rack asks for the height everywhere: it is given or blank.


# Lower and upper deviations in µm of keyways in shaft and hub, free, normal and close, from over 3 to 6 mm.
KEYWAYS = 1e3 * np.array([[[0, 30], [30, 78]], [[-30, 0], [-15, 15]], [[-42, -12], [-42, -12]]])
KEY = 1e3 * np.array([-30, 0])


def key_fit(r: Rack) -> Cells:
    """Are the widths of key and keyways outside the limits of the fit asked for? The rack has keys of 6 mm."""
    nominal, fit = r["key.nominal_width"], np.nan_to_num(r["key.fit"]).astype(np.intp)
    off = np.zeros(len(nominal), bool)
    for name, lower, upper in (
        ("width", *KEY),
        ("shaft_keyway", *(KEYWAYS[fit, 0, end] for end in (0, 1))),
        ("hub_keyway", *(KEYWAYS[fit, 1, end] for end in (0, 1))),
    ):
        width = r[f"key.{name}"]
        off |= (width < nominal + lower) | (width > nominal + upper)
    blank = r.blank("key.fit", "key.nominal_width", "key.width", "key.shaft_keyway", "key.hub_keyway")
    return choose((blank, UNKNOWN), (off, CAUTION))


def nut_overloaded(r: Rack) -> Cells:
    """Does the nut's torque stress the thread beyond 0.9 of its proof stress, or strip it?"""
    major, pitch = r["nut.thread_diameter"] / 1e9, r["nut.thread_pitch"] / 1e9
    height = np.sqrt(0.75) * pitch
    middle, round_, minor = major - 0.75 * height, major - 13 / 12 * height, major - 1.25 * height
    slope, rub = pitch / (np.pi * middle), r["nut.thread_friction"] / 1e9 / np.sqrt(0.75)
    thread = middle / 2 * (slope + rub) / (1 - slope * rub)
    radius = (r["nut.face_diameter"] + r["nut.face_hole"]) / 4e9
    force = r["nut.tightening_torque"] / 1e6 / (thread + r["nut.face_friction"] / 1e9 * radius)
    # What is left out of bore and slot makes a thread no weaker.
    bore, width, depth = (
        np.nan_to_num(r[f"hub.thread_{size}"]) / 1e9 for size in ("bore", "slot_width", "slot_depth")
    )
    slotted, bottom, circle = (width > 0) & (depth > 0), major / 2 - depth, round_ / 2
    lost = (circle - bottom) * np.minimum(width, 2 * np.sqrt(np.maximum(circle**2 - bottom**2, 0)))
    area = np.pi / 4 * (round_**2 - bore**2) - np.where(slotted & (bottom < circle), lost, 0)
    clear = np.where(slotted, np.minimum(np.where(bore > 0, 2 * bottom, circle + bottom), round_), round_)
    modulus = np.pi / 12 * (clear**3 - bore**3)
    stress = np.hypot(force / area, np.sqrt(3) * force * thread / modulus)
    stress = np.where((area <= 0) | (modulus <= 0), np.inf, np.ceil(stress * 1e3))
    engaged = np.fmin(r["nut.length"], np.maximum(r["hub.thread_to"] - r["hub.thread_from"], 0))
    whole = (1 - np.minimum(width / minor, 1) / 2) * 0.65 * np.pi * engaged / 1e9
    hub, nut = r["hub.thread_proof_stress"] * 0.9, r["nut.proof_stress"] * 0.9
    over = stress > np.floor(hub)
    over |= np.ceil(force / (0.75 * minor * whole) * 1e3) > np.floor(hub / np.sqrt(3))
    over |= np.ceil(force / (0.875 * major * whole) * 1e3) > np.floor(nut / np.sqrt(3))
    blank = r.blank("hub.thread_bore", "hub.thread_slot_width", "hub.thread_slot_depth", "nut.length", "hub.thread_from", "hub.thread_to")
    return choose(
        (r.no_nut, NOT_CHECKED),
        (r.blank("wheel.fastening", "nut.thread_hand"), UNKNOWN),
        (over, REFUSE),
        (blank | np.isnan(force) | np.isnan(hub) | np.isnan(nut), UNKNOWN),
    )


def thin_wheel(r: Rack) -> Cells:
    """Is a thin wheel bent too far, or may a wave stand in it? No wheel of this rack has a modulus or an allowed stress."""
    wheel, thickness, support = r["wheel.diameter"], r["wheel.thickness"], r["hub.stabiliser_diameter"]
    thick = (20 * thickness > wheel - support) | (100 * support < 5 * wheel) | (100 * support > 98 * wheel)
    flat = r.cuts_off | r.is_one("wheel.shape", Shape.TYPE_1, Shape.TYPE_27A) | r.blank("wheel.shape")
    return choose((~flat | thick, NOT_CHECKED), otherwise=UNKNOWN)


def cut_too_deep(r: Rack) -> Cells:
    """Is the cut deeper than the wheel stands out of flanges and stabilisers, less clearance?"""
    flanges = ("fixed_flange.diameter", "loose_flange.diameter")
    widest = reduce(np.fmax, (r[name] for name in (*flanges, "hub.stabiliser_diameter")))
    depth, clearance = r["machine.depth_of_cut"], r["machine.work_clearance"]
    left = np.floor((r["wheel.diameter"] - widest) / 2 - np.nan_to_num(clearance))
    names = ("machine.depth_of_cut", "machine.work_clearance", "wheel.diameter", *flanges)
    blank = r.blank(*names, "hub.stabiliser_diameter")
    return choose((depth > left, REFUSE), (blank, UNKNOWN))


def seat_touches_shoulder(r: Rack) -> Cells:
    """Drawn up, does the hub's face meet the spindle's shoulder before the taper seats?"""
    by_hand, drawn, least = (r[f"hub.{name}"] for name in ("stand_off", "draw_up", "least_gap"))
    return choose(
        (by_hand < drawn, REFUSE),
        (np.isnan(by_hand) | np.isnan(drawn), UNKNOWN),
        (by_hand == drawn, CAUTION),
        (np.isnan(least), UNKNOWN),
        (by_hand - drawn < least, CAUTION),
    )


def unbalance(r: Rack) -> Cells:
    """Is the residual unbalance above the grade asked for? In this rack every heading asks for it."""
    turning = r["spindle.greatest_speed"] / 1e6 * (np.pi / 30)
    allowed = np.floor(r["hub.rotor_mass"] * r["hub.balance_grade"] / turning / 1e6)
    residual = r["hub.residual_unbalance"]
    return choose((np.isnan(allowed) | np.isnan(residual), UNKNOWN), (residual > allowed, CAUTION))


def seat_fit(r: Rack) -> Cells:
    """Does the small end of the taper carry? No seat of this rack has a modulus, so that none is solved."""
    open_ = r["seat.mismatch"] > 0
    return choose((open_, CAUTION), (np.isnan(r["seat.hub_modulus"]), UNKNOWN))


def seat_overloaded(r: Rack) -> Cells:
    """Is the seat stressed beyond yield over the factor? No seat of this rack has a modulus."""
    return choose((np.isnan(r["seat.hub_modulus"]), UNKNOWN))


def taper_sticks(r: Rack) -> Cells:
    """Does the taper hold itself without a puller, or with too weak a one?"""
    friction, slope = r["seat.friction"], r["seat.taper"] / 2
    holds = np.ceil(r["seat.nut_force"] * (friction - slope) / (friction + slope))
    alone = (friction > slope) & r.no("seat.puller")
    names = [f"seat.{name}" for name in ("taper", "friction", "puller", "nut_force", "puller_force")]
    return choose(
        (friction <= slope, PASS),
        (alone | (r["seat.puller_force"] < holds), CAUTION),
        (r.blank(*names), UNKNOWN),
    )


def least_grip(r: Rack) -> tuple[Array, Array, Array]:
    """Least force of the nut in N, the arm of its thread that holds, and the middle radius of its face, in metres."""
    pitch = r["nut.thread_pitch"] / 1e9
    middle = r["nut.thread_diameter"] / 1e9 - 0.75 * np.sqrt(0.75) * pitch
    inside = np.where(np.isnan(r["nut.face_hole"]), np.nan, np.fmax(r["nut.face_hole"], r["loose_flange.hole"]))
    slope, radius = pitch / (np.pi * middle), (r["nut.face_diameter"] + inside) / 4e9
    rough = np.maximum(r["nut.thread_friction"], r["nut.greatest_thread_friction"])
    rough = np.where(np.isnan(r["nut.thread_friction"]), r["nut.greatest_thread_friction"], rough) / 1e9 / np.sqrt(0.75)
    under = np.fmax(r["nut.face_friction"], r["nut.greatest_face_friction"]) / 1e9
    under = np.where(np.isnan(r["nut.greatest_face_friction"]), np.nan, under)
    force = r["nut.tightening_torque"] / 1e6 / (middle / 2 * (slope + rough) / (1 - slope * rough) + under * radius)
    slick = np.fmin(r["nut.thread_friction"], r["nut.greatest_thread_friction"]) / 1e9 / np.sqrt(0.75)
    slick = np.where(np.isnan(r["nut.thread_friction"]), np.nan, slick)
    return force, middle / 2 * (slick - slope) / (1 + slope * slick), radius


def asked(r: Rack) -> tuple[Array, Array, Array]:
    """Torques of cutting, run-up and braking, in N m."""
    fourth = (r["wheel.diameter"] / 2e9) ** 4 - (r["wheel.hole"] / 2e9) ** 4
    inertia = np.pi / 2 * r["wheel.density"] / 1e3 * r["wheel.thickness"] / 1e9 * fourth
    turning = inertia * r["spindle.greatest_speed"] / 1e6 * np.pi / 30
    times = (r[f"spindle.{name}_time"] / 1e6 for name in ("run_up", "stop"))
    run_up, braking = (turning / time for time in times)
    return r["spindle.cutting_torque"] / 1e6, run_up, braking


def land(r: Rack, flange: str) -> tuple[Array, Array]:
    """Outside radius of a land, and its width, in metres."""
    outer = r[f"{flange}.diameter"] / 2e9
    return outer, np.minimum(outer, r[f"{flange}.land"] / 1e9)


def greatest_force(r: Rack) -> Array:
    """Greatest force of the nut in N."""
    pitch = r["nut.thread_pitch"] / 1e9
    middle = r["nut.thread_diameter"] / 1e9 - 0.75 * np.sqrt(0.75) * pitch
    angle = np.arctan(pitch / (np.pi * middle)) + np.arctan(r["nut.thread_friction"] / 1e9 / np.sqrt(0.75))
    radius = (r["nut.face_diameter"] + r["nut.face_hole"]) / 4e9
    return r["nut.tightening_torque"] / 1e6 / (middle / 2 * np.tan(angle) + r["nut.face_friction"] / 1e9 * radius)


def flange_dishes(r: Rack) -> Cells:
    """Does the loose flange bend so far under the nut that its recess touches the wheel?"""
    rim, width = land(r, "loose_flange")
    hole, face, recess = r["loose_flange.hole"], r["nut.face_diameter"], r["loose_flange.recess"]
    inside = np.where(np.isnan(hole), r["nut.face_hole"], np.maximum(hole, r["nut.face_hole"]))
    a, load, held = hole / 2e9, (face + inside) / 4e9, rim - width / 2
    edge = r["loose_flange.thickness_at_edge"]
    h = np.fmin(r["loose_flange.thickness_at_hole"] - recess, edge) / 1e9
    nu = r["loose_flange.poisson_ratio"] / 1e9
    stiff = r["loose_flange.modulus"] / 1e3 * h**3 / (12 * (1 - nu**2))
    # Slope a r + b / r inside, with k r ln r beside it between load and land; bending free at hole and rim.
    k, g, log, step = greatest_force(r) / stiff / (4 * np.pi), (1 + nu) / (1 - nu), np.log(held / load), held**2 - load**2
    a1 = -k * (step / (2 * g) + rim**2 * log) / (rim**2 - a**2)
    b1 = g * a**2 * a1
    a2, b2 = a1 - k / 2, b1 + k * load**2 / 2
    beyond = a2 * step / 2 + b2 * log + k * (held**2 * log / 2 - step / 4)
    within = a1 * (load**2 - a**2) / 2 + b1 * np.log(load / a)
    sag = np.ceil(-(beyond + within) * (1 + 0.25 * (h / (held - load)) ** 2) * 1e9)
    sag = np.where(h <= 0, np.inf, sag)
    names = "loose_flange.diameter", "loose_flange.land", "loose_flange.recess", "loose_flange.thickness_at_hole"
    return choose(
        (r.no_nut, NOT_CHECKED),
        (r.blank("wheel.fastening", "nut.thread_hand"), UNKNOWN),
        (recess == 0, NOT_CHECKED),
        (face <= hole, CAUTION),
        (load >= rim - width, NOT_CHECKED),
        (sag > recess, REFUSE),
        (np.isnan(sag) | np.isnan(edge) | r.blank(*names), UNKNOWN),
    )


def nut_unscrews(r: Rack) -> Cells:
    """Can start, stop or cutting torque turn the nut back?"""
    force, arm, radius = least_grip(r)
    cutting, run_up, braking = asked(r)
    rotation, hand = r["spindle.rotation"], r["nut.thread_hand"]
    tightens = ((rotation == ANTICLOCKWISE) & (hand == RIGHT)) | ((rotation == CLOCKWISE) & (hand == LEFT))
    one_way = (rotation == ANTICLOCKWISE) | (rotation == CLOCKWISE)
    running = cutting + run_up
    demand = np.where(tightens, braking, np.where(one_way, running, np.maximum(running, braking)))
    hold = np.floor(force * arm * 1e6)
    under = np.fmax(r["nut.face_friction"], r["nut.greatest_face_friction"]) / 1e9 * radius
    blank = np.isnan(force * cutting * run_up * braking * radius * arm) | r.blank("spindle.rotation")
    share, all_of_it = r["hub.loose_share"], np.ceil(demand * 1e6)
    slick = np.fmin(r["nut.face_friction"], r["nut.greatest_face_friction"]) / 1e9 * radius
    slick = np.where(np.isnan(r["nut.face_friction"]), np.nan, slick)
    return choose(
        (r.no_nut, NOT_CHECKED),
        (r.blank("wheel.fastening", "nut.thread_hand", "loose_flange.keyed"), UNKNOWN),
        (arm + slick <= 0, REFUSE),
        (r.yes("loose_flange.keyed"), PASS),
        (arm <= 0, REFUSE),
        (blank | r.blank("loose_flange.hole"), UNKNOWN),
        (under <= arm, PASS),
        (all_of_it <= hold, PASS),
        (np.isnan(share), UNKNOWN),
        (np.ceil(demand * (share / 1e9) * 1e6) > hold, REFUSE),
        otherwise=CAUTION,
    )


def wheel_slips_in_flanges(r: Rack) -> Cells:
    """Can the flanges carry cutting and inertia torque, times the factor asked for, by friction?"""
    force, arm, radius = least_grip(r)
    carried = []
    for side in ("fixed", "loose"):
        outer, width = land(r, f"{side}_flange")
        inner = outer - width
        even = 2 / 3 * (inner**2 + inner * outer + outer**2) / (inner + outer)
        carried.append(r[f"{side}_blotter.friction"] / 1e9 * force * even)
    fixed, loose = carried
    nut = r["nut.face_friction"] / 1e9 * radius * force
    free = r.yes("loose_flange.keyed") | r.blank("loose_flange.keyed")
    unkeyed = fixed + np.fmin(np.fmin(loose, nut), force * np.where(arm < 0, 0, arm))
    carries = np.floor(np.where(free, fixed + loose, unkeyed) * 1e6)
    cutting, run_up, braking = asked(r)
    demand = cutting + np.fmax(run_up, braking)
    counted = np.floor(np.where(free, fixed + loose, fixed) * 1e6)
    wanted = np.ceil(demand * r["hub.slip_factor"] / 1e9 * 1e6)
    return choose(
        (r.no_nut, NOT_CHECKED),
        (r.blank("wheel.fastening", "nut.thread_hand"), UNKNOWN),
        (carries < np.ceil(demand * 1e6), REFUSE),
        (r.blank("loose_flange.keyed", "loose_flange.hole") | np.isnan(fixed + loose + nut + arm + wanted + run_up + braking), UNKNOWN),
        (counted < wanted, CAUTION),
    )


def land_pressure(r: Rack) -> Cells:
    """Is the pressure on the land above the limit given?"""
    force, allowed = greatest_force(r), r["wheel.land_pressure"]
    over, blank = np.zeros(len(force), bool), np.isnan(force * allowed)
    for flange in ("fixed_flange", "loose_flange"):
        outer, width = land(r, flange)
        over |= np.ceil(force / (np.pi * width * (2 * outer - width)) * 1e3) > allowed
        blank |= np.isnan(width)
    return choose(
        (r.no_nut, NOT_CHECKED),
        (r.blank("wheel.fastening", "nut.thread_hand"), UNKNOWN),
        # Both sides are told by the worse of them, and blank is worse than pressed too hard.
        (blank, UNKNOWN),
        (over, CAUTION),
    )


def guard_open(r: Rack) -> Cells:
    """Is the guard open further than this machine allows, or does the opening start too high?"""
    kind, exposure, start = r["machine.kind"], r["machine.guard_exposure"], r["machine.guard_start"]
    bench, flat = kind == Machine.BENCH, r.is_one("machine.kind", Machine.SURFACE, Machine.CUTTING_OFF)
    upper = bench | (kind == Machine.CYLINDRICAL)
    # Where the work is asked for and blank, a bench's guard over 90° can't be told up to 125°.
    over_90 = bench & (exposure > degrees(90)) & ~r.yes("machine.work_below_spindle")
    over = (exposure > degrees(180)) | (flat & (exposure > degrees(150))) | (bench & (exposure > degrees(125)))
    over |= over_90 & ~r.blank("machine.work_below_spindle")
    over |= (kind == Machine.TOP) & (exposure > degrees(60))
    high = (upper & (start > degrees(65))) | (flat & (start > degrees(-15)))
    blank = r.blank("machine.guard_exposure") | ((upper | flat) & r.blank("machine.guard_start"))
    return choose(
        (r.blank("machine.kind"), UNKNOWN),
        (r.internal, NOT_CHECKED),
        (over & (kind == Machine.TOOL), CAUTION),
        (over | high, REFUSE),
        (over_90 | blank, UNKNOWN),
    )


def judge(
    columns: dict[str, Array], rules: list[Callable[[Rack], Cells]], today: float
) -> tuple[list[Cells], Cells]:
    """The outcomes of every rule, and the worst of each mounting."""
    rack = Rack(columns, today)
    cells = [rule(rack) for rule in rules]
    return cells, reduce(np.minimum, cells)


def show_disagreements(slug: str, ours: Cells, theirs: Cells, columns: dict[str, Array]) -> bool:
    """Print where a rule disagrees; whether it does anywhere."""
    rows = np.flatnonzero(ours != theirs)
    for row in rows[:SHOWN]:
        print(f"{slug}, row {row}: NumPy {OUTCOMES[ours[row]]}, hubwright {OUTCOMES[theirs[row]]}")
        print("   ", ", ".join(f"{name} {column[row]:.0f}" for name, column in columns.items()))
    if len(rows):
        print(f"{slug}: {len(rows)} cells disagree")
    return bool(len(rows))


def main(folder: Path, rust_seconds: float, today: float) -> int:
    """Load, time, compare, report."""
    columns = {path.stem: np.fromfile(path, "<f8") for path in sorted(folder.glob("*.f64"))}
    if any((column.view("<u8")[np.isnan(column)] != BLANK).any() for column in columns.values()):
        print("a datum is missing that is no blank: these rules are for racks in which every heading asks")
        return 2
    slugs = (folder / "rules.txt").read_text().splitlines()
    rules = [globals()[slug.replace("-", "_")] for slug in slugs]
    rows = len(columns["wheel.diameter"])
    expected = np.fromfile(folder / "cells.u8", np.uint8).reshape(len(slugs), rows)

    seconds = []
    for _ in range(1 + RUNS):  # the first warms up
        start = time.perf_counter()
        cells, worst = judge(columns, rules, today)
        seconds.append(time.perf_counter() - start)
    best = min(seconds[1:])

    apart = [show_disagreements(*row, columns) for row in zip(slugs, cells, expected, strict=True)]
    if any(apart) or (worst != expected.min(axis=0)).any():
        return 1
    ratio = best / rust_seconds
    print(
        f"NumPy {best:.2f} s, hubwright {rust_seconds:.3f} s: {ratio:.1f} times as fast on one thread; "
        f"{len(slugs)} rules x {rows} mountings, every cell agreed"
    )
    return 0


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1]), float(sys.argv[2]), float(sys.argv[3])))
