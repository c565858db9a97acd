"""Grinding: against exact arcs, quadrature and pint's arithmetic, with text and pint, and with bad input."""

import math
from collections.abc import Callable
from typing import Any

import numpy as np
import pint
import pytest
from scipy.integrate import quad
from scipy.optimize import brentq

import hubwright as hw
from hubwright import wheel

ureg = pint.get_application_registry()


def cut(kind: str, wheel_d: float, work_d: float | None, depth: float, **more: Any) -> wheel.Ground:
    held = {} if work_d is None else {"work_diameter": f"{work_d} mm"}
    return wheel.grind(
        kind=kind, wheel_diameter=f"{wheel_d} mm", speed="2000 rpm", depth=f"{depth} mm",
        width="10 mm", work_speed="0.3 m/s", **held, **more,
    )  # fmt: skip


@pytest.mark.parametrize(
    ("kind", "wheel_d", "work_d", "depth"),
    [("surface", 200.0, None, 0.02), ("external", 400.0, 50.0, 0.008), ("internal", 30.0, 45.0, 0.004)],
)
def test_the_contact_is_as_long_as_the_arc_where_wheel_and_work_overlap(
    kind: str, wheel_d: float, work_d: float | None, depth: float
) -> None:
    """Circles that overlap by the depth: the arc from the deepest point to where they cross."""
    rs = wheel_d / 2
    if work_d is None:
        arc = rs * math.acos(1 - depth / rs)
    else:
        rw = work_d / 2
        apart = rs + rw - depth if kind == "external" else rw - rs + depth
        cosine = (rs**2 + apart**2 - rw**2) / (2 * rs * apart)
        arc = rs * math.acos(min(1, cosine if kind == "external" else -cosine))
    found = cut(kind, wheel_d, work_d, depth)
    assert found.contact_length.m_as("mm") == pytest.approx(arc, rel=2e-3)
    assert found.kind == kind


def test_what_a_cut_takes_is_what_pint_makes_of_it() -> None:
    q = ureg.Quantity
    found = cut("surface", 200, None, 0.02, specific_energy="40 J/mm3", grains="3 1/mm2", chip_width_ratio=12)
    rim = (q(200, "mm") / 2 * q(2000, "rpm").to("rad/s") / q(1, "rad")).to("m/s")
    rate = q(0.02, "mm") * q(10, "mm") * q(0.3, "m/s")
    power = q(40, "J/mm^3") * rate
    for ours, theirs in [
        (found.rim_speed, rim),
        (found.removal_rate, rate),
        (found.width_removal_rate, rate / q(10, "mm")),
        (found.equivalent_chip_thickness, q(0.02, "mm") * q(0.3, "m/s") / rim),
        (found.power, power),
        (found.force, power / rim),
        (found.torque, power / (q(2000, "rpm").to("rad/s") / q(1, "rad"))),
    ]:
        assert ours is not None
        assert (ours / theirs).m_as("dimensionless") == pytest.approx(1, rel=1e-12)
    # Chips, half as wide and thick on average as at their end, carry away what is ground.
    assert found.chip_volume is not None and found.chip_thickness is not None
    assert found.chips_per_second is not None
    assert found.chips_per_second * found.chip_volume.m_as("mm^3") == pytest.approx(rate.m_as("mm^3/s"))
    thick, long = found.chip_thickness.m_as("mm"), found.contact_length.m_as("mm")
    assert 12 * thick / 2 * thick / 2 * long == pytest.approx(found.chip_volume.m_as("mm^3"), rel=1e-9)


def test_energy_is_taken_in_every_unit_of_energy_and_no_pressure() -> None:
    takes = [cut("surface", 200, None, 0.02, specific_energy=u).power for u in ("40 J/mm3", ureg("40 J/mm^3"), ureg("40 W*s/mm^3"))]
    assert all(power is not None and power.m_as("W") == pytest.approx(2400) for power in takes)
    with pytest.raises(hw.UnitError, match="specific_energy"):
        cut("surface", 200, None, 0.02, specific_energy=ureg("40 GPa"))


def test_power_and_torque_are_compared_with_what_the_spindle_has() -> None:
    energy = {"specific_energy": "40 J/mm3"}
    found = cut("surface", 200, None, 0.02, **energy, spindle_power="3 kW", efficiency=0.9)
    assert found.power_share == pytest.approx(2400 / 2700)
    assert found.spindle_carries is True and found.torque_share is None
    found = cut("surface", 200, None, 0.02, **energy, spindle_torque="11 N m")
    assert found.spindle_carries is False
    assert "MORE THAN THE SPINDLE HAS" in repr(found)
    with pytest.raises(hw.MissingError, match="specific_energy"):
        cut("surface", 200, None, 0.02, spindle_torque="11 N m")
    assert cut("surface", 200, None, 0.02, marked_speed="1999 rpm").above_marked


def test_groover_s_energy_and_ratio_come_out() -> None:
    u = wheel.specific_energy(force="25 N", rim_speed="1508 m/min", removal_rate="1050 mm3/min")
    assert u.m_as("J/mm^3") == pytest.approx(35.9, abs=0.01)
    bore = wheel.ring_volume(outside="252.5 mm", inside="250 mm", length="125 mm")
    rim = wheel.ring_volume(outside="150 mm", inside="149.75 mm", length="20 mm")
    assert wheel.grinding_ratio(ground=bore, worn=rim) == pytest.approx(104.8, abs=0.05)


def test_wear_is_what_a_root_finder_finds() -> None:
    found = wheel.wear(ground="80000 mm3", ratio=18, diameter="200 mm", width="20 mm")
    worn = brentq(lambda w: math.pi * 20 * (100**2 - (100 - w) ** 2) - 80000 / 18, 0, 50, xtol=1e-14)
    assert found.radial.m_as("mm") == pytest.approx(worn, rel=1e-9)
    assert found.diameter_left.m_as("mm") == pytest.approx(200 - 2 * worn, rel=1e-12)


def test_the_thread_of_a_dresser_is_as_high_and_as_rough_as_its_profile() -> None:
    found = wheel.dress(speed="2900 rpm", traverse="5.8 mm/s", tip_radius="0.25 mm", depth="0.02 mm")
    lead, r = 0.12, 0.25
    x = np.linspace(-lead / 2, lead / 2, 200_001)
    arc = r - np.sqrt(r**2 - x**2)
    parabola = x**2 / (2 * r)
    assert found.exact_thread_height is not None and found.thread_height is not None
    assert found.exact_thread_height.m_as("mm") == pytest.approx(arc.max(), rel=1e-9)
    assert found.thread_height.m_as("mm") == pytest.approx(parabola.max(), rel=1e-9)
    mean = np.trapezoid(np.abs(parabola - np.trapezoid(parabola, x) / lead), x) / lead
    assert found.thread_mean is not None
    assert found.thread_mean.m_as("mm") == pytest.approx(mean, rel=1e-6)
    # The chord of the tip at that depth.
    half = brentq(lambda h: r - math.sqrt(r**2 - h**2) - 0.02, 0, r)
    assert found.dresser_width is not None
    assert found.dresser_width.m_as("mm") == pytest.approx(2 * half, rel=1e-9)
    assert found.overlap == pytest.approx(2 * half / lead, rel=1e-9)


def test_a_worn_wheel_keeps_its_rim_speed_up_to_its_markings() -> None:
    for worn in np.linspace(60, 199, 9):
        found = wheel.worn_speed(
            diameter="200 mm", worn_diameter=f"{worn} mm", rim_speed="30 m/s",
            marked_speed="3340 rpm", marked_rim_speed="35 m/s",
        )  # fmt: skip
        free = 30e3 / (math.pi * worn) * 60
        assert found.free_speed.m_as("rpm") == pytest.approx(free)
        assert found.speed.m_as("rpm") == pytest.approx(min(free, 3340))
        assert found.capped == (free > 3340)


def test_a_stub_is_what_flange_and_clearance_leave() -> None:
    found = wheel.stub(
        diameter="200 mm", flange="80 mm", clearance="2 mm", worn_diameter="150 mm", larger_flange="100 mm"
    )
    assert found.stub_diameter.m_as("mm") == pytest.approx(84)
    assert found.left is not None and found.left.m_as("mm") == pytest.approx(33)

    def ring(inside: float, outside: float) -> float:
        return float(quad(lambda r: 2 * math.pi * r, inside / 2, outside / 2)[0])

    assert found.lost_share == pytest.approx(ring(84, 104) / ring(84, 200))
    assert found.left_share == pytest.approx(ring(84, 150) / ring(84, 200))


def test_ranges_are_offered_and_their_sources_known() -> None:
    ranges = wheel.grinding_ranges()
    assert any("specific energy" in row.name for row in ranges)
    known = {str(source) for source in hw.sources()}
    assert {str(row.source) for row in ranges} <= known


BAD: list[tuple[Callable[[], object], type[Exception], list[str]]] = [
    (lambda: cut("external", 400, None, 0.008), hw.MissingError, ["`work_diameter`"]),
    (lambda: cut("internal", 45, 30, 0.004), hw.OutOfRangeError, ["`work_diameter`", "30 mm", "45"]),
    (lambda: cut("sideways", 400, 50, 0.008), hw.TextError, ["`kind`", "surface", "internal"]),
    (lambda: cut("surface", 200, None, 100), hw.OutOfRangeError, ["`depth`", "100 mm"]),
    (lambda: cut("surface", 200, None, 0.02, spindle_power="3 kW"), hw.MissingError, ["`efficiency`"]),
    (lambda: cut("surface", 200, None, 0.02, efficiency=0.9), hw.MissingError, ["`spindle_power`"]),
    (lambda: cut("surface", 200, None, 0.02, specific_energy=40), hw.UnitError, ["`specific_energy`", "J/mm3"]),
    (lambda: cut("surface", 200, None, 0.02, grains="3"), hw.UnitError, ["`grains`", "1/mm2"]),
    (
        lambda: wheel.stub(diameter="200 mm", flange="80 mm", clearance="2 mm", worn_diameter="82 mm"),
        hw.OutOfRangeError,
        ["`worn_diameter`", "82 mm", "stub of 84", "take the wheel off"],
    ),
    (lambda: wheel.dress(speed="2900 rpm"), hw.MissingError, ["`lead`", "overlap"]),
    (lambda: wheel.dress(speed="2900 rpm", lead="0.1 mm", overlap=4), hw.UnitError, ["`lead`", "leave all but one"]),
    (lambda: wheel.dress(speed="2900 rpm", overlap=4), hw.MissingError, ["`dresser_width`"]),
    (lambda: wheel.wear(ground="1 m", ratio=18, diameter="200 mm", width="20 mm"), hw.TextError, ["`ground`"]),
    (lambda: wheel.grinding_ratio(ground="0 mm3", worn="1 mm3"), hw.OutOfRangeError, ["`ground`"]),
]


@pytest.mark.parametrize(("call", "error", "holds"), BAD)
def test_bad_input_is_told(call: Callable[[], object], error: type[Exception], holds: list[str]) -> None:
    with pytest.raises(error) as raised:
        call()
    for part in [*holds, "hint: "]:
        assert part in str(raised.value)


def test_a_cut_past_the_middle_and_a_power_without_energy_are_told() -> None:
    cut = {
        "kind": "external", "wheel_diameter": "200 mm", "speed": "2850 rpm", "width": "10 mm", "work_speed": "0.25 m/s",
        "work_diameter": "10 mm",
    }  # fmt: skip
    with pytest.raises(hw.OutOfRangeError, match="depth.*half of the work"):
        hw.wheel.grind(**cut, depth="5 mm")
    with pytest.raises(hw.MissingError, match="specific_energy"):
        hw.wheel.grind(**cut, depth="0.01 mm", spindle_torque="5 N m")
