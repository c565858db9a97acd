"""Balance: against vector sums, quadrature and SciPy's least squares, in columns of made-up readings, and with bad input."""

import cmath
import math
from collections.abc import Callable
from typing import Any
from xml.etree import ElementTree

import numpy as np
import pint
import pytest
from scipy.integrate import dblquad, quad
from scipy.optimize import least_squares, minimize

import hubwright as hw
from hubwright import wheel

ureg = pint.get_application_registry()
Spot = wheel.HeavySpot


def gmm(quantity: Any) -> float:
    return float(quantity.m_as("g*mm"))


def vector(found: wheel.UnbalanceVector) -> complex:
    return cmath.rect(gmm(found.amount), float(found.angle.m_as("rad")))


def test_a_grade_is_its_unbalance_and_its_grams_at_the_ring() -> None:
    found = wheel.balance(mass="20 kg", speed="1500 rpm", grade="G1", radius="200 mm")
    # U = m e and e ω = 1 mm/s, with pint's own arithmetic.
    omega = ureg.Quantity(1500, "rpm").to("rad/s").magnitude
    assert gmm(found.permissible) == pytest.approx(20e3 * 1.0 / omega, rel=1e-12)
    assert found.permissible_mass is not None
    assert found.permissible_mass.m_as("g") == pytest.approx(20e3 / omega / 200, rel=1e-12)
    again = wheel.balance(mass=ureg("20 kg"), speed=ureg("1500 rpm"), unbalance=found.permissible)
    assert again.reached is not None
    assert again.reached.m_as("mm/s") == pytest.approx(1.0, rel=1e-12)
    assert again.force is not None
    assert again.force.m_as("N") == pytest.approx(gmm(found.permissible) * 1e-6 * omega**2, rel=1e-12)


@pytest.mark.parametrize("grade", ["G2.5", "2.5 mm/s", ureg("2.5 mm/s"), ureg("0.0025 m/s")])
def test_a_grade_is_taken_by_its_letter_or_its_speed(grade: Any) -> None:
    found = wheel.balance(mass="3 kg", speed="2850 rpm", grade=grade, unbalance="25.12 g mm")
    assert found.within is True
    assert wheel.balance(mass="3 kg", speed="2850 rpm", grade=grade, unbalance="25.14 g mm").within is False


@pytest.mark.parametrize(("round_", "width", "depth"), [(22.0, 6.0, 2.8), (22.0, 4.0, 1.8), (40.0, 12.0, 3.3)])
def test_slots_take_away_what_quadrature_finds(round_: float, width: float, depth: float) -> None:
    radius, length, density = round_ / 2, 18.0, 7.85e-3  # g/mm3

    def moment(low: Callable[[float], float], high: Callable[[float], float]) -> float:
        taken, _ = dblquad(lambda y, x: y, -width / 2, width / 2, low, high)
        return float(taken) * length * density

    def surface(x: float) -> float:
        return math.sqrt(radius**2 - x**2)

    sizes = {"width": f"{width} mm", "depth": f"{depth} mm", "length": "18 mm", "density": "7850 kg/m3"}
    in_hub = Spot.hub_slot(bore=f"{round_} mm", **sizes)
    in_shaft = Spot.shaft_slot(diameter=f"{round_} mm", **sizes)
    assert gmm(in_hub.unbalance) == pytest.approx(moment(surface, lambda x: radius + depth), rel=1e-9)
    assert gmm(in_shaft.unbalance) == pytest.approx(moment(lambda x: radius - depth, surface), rel=1e-9)


def test_causes_add_up_as_vectors_and_at_worst_in_a_line() -> None:
    spots = [
        Spot.lump(mass="1.5 g", radius="30 mm", angle="20 deg"),
        Spot.hole(diameter="5 mm", depth="8 mm", radius="20 mm", density="7850 kg/m3", angle="110 deg"),
        Spot.run_out(mass="2 kg", run_out="0.01 mm"),
        Spot.clearance(mass="2 kg", clearance="0.02 mm"),
    ]
    found = wheel.unbalance(spots)
    hole = 7.85e-3 * math.pi * 25 * 8 / 4 * 20
    known = cmath.rect(45, math.radians(20)) - cmath.rect(hole, math.radians(110))
    assert abs(vector(found.known) - known) < 1e-9
    assert gmm(found.greatest) == pytest.approx(abs(known) + 10 + 20, rel=1e-12)
    # The least that two vectors of any direction leave, searched for.
    left = minimize(
        lambda a: abs(known + 10 * cmath.exp(1j * a[0]) + 20 * cmath.exp(1j * a[1])),
        [cmath.phase(-known)] * 2,
        method="Nelder-Mead",
    )
    assert gmm(found.least) == pytest.approx(float(left.fun), abs=1e-6)


def test_truing_leaves_what_quadrature_finds() -> None:
    """The first moment of the ring between a shifted hole and the rim, in polar coordinates about the axis."""
    outer, inner, off, rho_h = 100.0, 16.0, 0.06, 2250e-6 * 20

    def edge(angle: float, radius: float) -> float:
        """From the axis to a circle whose centre is off it."""
        return off * math.cos(angle) + math.sqrt(radius**2 - (off * math.sin(angle)) ** 2)

    def moment(rim: Callable[[float], float]) -> float:
        def strip(a: float) -> float:
            return (rim(a) ** 3 - edge(a, inner) ** 3) / 3 * math.cos(a)

        return rho_h * float(quad(strip, 0, 2 * math.pi, epsabs=1e-9)[0])

    found = wheel.truing(
        diameter="200 mm", hole="32 mm", thickness="20 mm", density="2250 kg/m3", eccentricity="0.06 mm"
    )
    assert gmm(found.before) == pytest.approx(moment(lambda a: edge(a, outer)), rel=1e-6)
    assert gmm(found.after) == pytest.approx(-moment(lambda a: outer - off), rel=1e-6)


@pytest.mark.parametrize("count", [2, 3])
@pytest.mark.parametrize("stuck", [None, 77.0])
@pytest.mark.parametrize("amount", [0.0, 180.0, 700.0, 2600.0])
def test_weights_close_the_polygon_or_come_as_near_as_any(count: int, stuck: float | None, amount: float) -> None:
    place = wheel.two_weights if count == 2 else wheel.three_weights
    held = {} if stuck is None else {"stuck_at": f"{stuck} deg"}
    found = place(unbalance=f"{amount} g mm", angle="200 deg", weight="10 g", radius="54 mm", **held)
    fixed = cmath.rect(amount, math.radians(200))
    if stuck is not None:
        fixed += cmath.rect(540, math.radians(stuck))

    def left(angles: Any) -> float:
        return abs(fixed + sum(cmath.rect(540, float(a)) for a in angles))

    there = left([float(at.m_as("rad")) for at in found.positions])
    assert there == pytest.approx(gmm(found.residual), abs=1e-3)
    free = len(found.positions)
    assert free == count - (stuck is not None)
    rng = np.random.default_rng(1)
    best = min(
        minimize(left, rng.uniform(0, 2 * math.pi, free), method="Nelder-Mead", options={"xatol": 1e-9}).fun
        for _ in range(8)
    )
    assert there <= best + 1e-3
    assert found.reached == (best < 0.01)
    assert (found.least_weight is None) == (found.reached or free == 1)


def readings(heavy: complex, trial: float, angles: np.ndarray, noise: np.ndarray) -> tuple[float, np.ndarray]:
    """What a meter shows that reads 0.02 for each g mm."""
    return 0.02 * abs(heavy), 0.02 * np.abs(heavy + trial * np.exp(1j * angles)) + noise


@pytest.mark.parametrize("runs", [3, 4, 6])
def test_trial_runs_agree_with_least_squares_of_another_library(runs: int) -> None:
    rng = np.random.default_rng(runs)
    angles = np.arange(runs) * 2 * np.pi / runs
    heavy = cmath.rect(300, 1.1)
    base, seen = readings(heavy, 200, angles, rng.normal(0, 0.05, runs))
    trials = [(float(a), ureg.Quantity(t, "rad")) for a, t in zip(seen, angles, strict=True)]
    found = wheel.trial_runs(baseline=base, trials=trials, trial="200 g mm")

    # The linear way, by another library's solver.
    rows = np.column_stack([np.ones(runs), np.cos(angles), np.sin(angles)])
    (square, x, y), *_ = np.linalg.lstsq(rows, seen**2 - base**2, rcond=None)
    direct = cmath.rect(200 * base / math.sqrt(square), math.atan2(y, x))
    assert abs(vector(found.candidates[0]) - direct) < 1e-6
    assert found.quality == pytest.approx(math.hypot(x, y) / (2 * base) / math.sqrt(square) - 1, abs=1e-9)

    # All readings fitted, the baseline among them.
    def off(p: np.ndarray) -> np.ndarray:
        model = np.abs(p[0] + (p[1] - 1j * p[2]) * np.exp(1j * angles))
        return np.append(model - seen, p[0] - base)

    fit = least_squares(off, [base, x / (2 * base), y / (2 * base)], xtol=1e-15, ftol=1e-15, gtol=1e-15)
    best = 200 * fit.x[0] / math.hypot(*fit.x[1:]) * cmath.exp(1j * math.atan2(fit.x[2], fit.x[1]))
    assert found.fitted is not None and found.scatter is not None
    assert abs(vector(found.fitted) - best) < 1e-4
    assert found.scatter == pytest.approx(float(np.sqrt(np.mean(fit.fun**2))), rel=1e-5)
    # And near to what made the readings.
    assert abs(vector(found.fitted) - heavy) < 15


def test_two_runs_leave_two_answers_and_a_third_chooses() -> None:
    angles = np.radians([10.0, 130.0, 250.0])
    heavy = cmath.rect(130, 1.3)
    base, seen = readings(heavy, 100, angles, np.zeros(3))
    trials = [(float(a), ureg.Quantity(t, "rad")) for a, t in zip(seen, angles, strict=True)]
    two = wheel.trial_runs(baseline=base, trials=trials[:2], trial_mass="2 g", radius="50 mm")
    assert len(two.candidates) == 2 and two.quality is None
    assert min(abs(vector(one) - heavy) for one in two.candidates) < 1e-6
    for one in two.candidates:
        _, again = readings(vector(one), 100, angles[:2], np.zeros(2))
        share = base / (0.02 * abs(vector(one)))
        # Each gives the readings it was found from, up to how much a g mm moves the meter.
        assert np.allclose(again * share, seen[:2], rtol=1e-9)
    three = wheel.trial_runs(baseline=base, trials=trials, trial="100 g mm")
    assert abs(vector(three.candidates[0]) - heavy) < 1e-6
    assert abs(vector(three.candidates[0]) + vector(three.corrections[0])) < 1e-9
    assert not three.doubtful


def test_one_run_with_phase_and_the_next_wheel_without_one() -> None:
    alpha, heavy, trial = cmath.rect(0.021, 0.4), cmath.rect(190, 2.0), cmath.rect(200, 0.5)

    def seen(u: complex) -> tuple[float, Any]:
        v = alpha * u
        return abs(v), ureg.Quantity(cmath.phase(v), "rad")

    (v0, p0), (v1, p1) = seen(heavy), seen(heavy + trial)
    found = wheel.influence_coefficient(
        baseline=v0, baseline_phase=p0, with_trial=v1, with_trial_phase=p1,
        trial_mass="4 g", radius="50 mm", trial_angle=ureg.Quantity(0.5, "rad"),
    )  # fmt: skip
    assert abs(vector(found.correction) + heavy) < 1e-9
    assert found.size == pytest.approx(0.021) and not found.weak
    other = cmath.rect(70, 5.0)
    reading, phase = seen(other)
    assert abs(vector(found.correct(reading=reading, phase=phase)) + other) < 1e-9


def test_the_machine_that_allows_least_governs() -> None:
    machines = [("surface", "2850 rpm", "G2.5"), ("tool", ureg("8000 rpm"), "6.3 mm/s")]
    found = wheel.shared_balance(mass="2 kg", machines=machines, unbalance="15.5 g mm")
    assert found.governs == "tool"
    assert [(name, one.within) for name, one in found.machines] == [("surface", True), ("tool", False)]


def test_tables_come_with_their_sources() -> None:
    limits = wheel.superabrasive_limits("250 mm")
    assert limits.mass is not None
    assert limits.mass.m_as("g") == pytest.approx(2)
    assert "JIS B 4131" in str(limits.mass_source)
    grades = wheel.balance_grades()
    assert [grade.least for grade in grades[:4]] == [0.4, 1.0, 2.5, 6.3]
    known = {str(source) for source in hw.sources()}
    assert {str(limits.mass_source), str(limits.run_out_source)} <= known


def test_pictures_are_svg_with_what_they_show_written_below() -> None:
    weights = wheel.two_weights(unbalance="450 g mm", angle="40 deg", weight="10 g", radius="54 mm")
    runs = wheel.trial_runs(baseline=10, trials=[(7, "0 deg"), (12, "120 deg"), (18, "240 deg")], trial="50 g mm")
    causes = wheel.unbalance([Spot.lump(mass="1 g", radius="30 mm", angle="10 deg")])
    for picture, says in [
        (weights.svg(), "1  weight at 154.6°"),
        (runs.svg(), "A  heavy side: 58.8 g mm at 220.1°"),
        (causes.svg(), "A  lump: 30 g mm at 10°"),
    ]:
        root = ElementTree.fromstring(picture)
        assert says in [text.text for text in root.iter("{http://www.w3.org/2000/svg}text")]


def test_a_mounting_is_judged_by_its_grade() -> None:
    hub = hw.Hub(rotor_mass="3 kg", balance_grade="G2.5", residual_unbalance="30 g mm")
    mounting = hw.Mounting(spindle=hw.Spindle(greatest_speed="2850 rpm"), hub=hub)
    finding = next(f for f in hw.check(mounting).findings if f.rule.slug == "unbalance")
    assert finding.outcome is hw.Outcome.CAUTION
    assert finding.unit == "g mm"
    assert finding.margin == pytest.approx(3e3 * 2.5 / (2850 * math.pi / 30) - 30, abs=2e-6)
    assert finding.found is not None
    assert finding.found.m_as("g*mm") == pytest.approx(30)


BAD: list[tuple[Callable[[], object], type[Exception], list[str]]] = [
    (lambda: wheel.balance(mass="3 kg", speed="2850 rpm", grade="2.5"), hw.UnitError, ["`grade`", "without a unit", "G2.5"]),
    (lambda: wheel.balance(mass="3 kg", speed="2850 rpm", grade="G2,5"), hw.TextError, ["`grade`", "G2,5"]),
    (lambda: wheel.balance(mass="3 kg", speed="50 Hz"), hw.TextError, ["`speed`"]),
    (lambda: wheel.balance(mass="3 mm", speed="2850 rpm"), hw.TextError, ["`mass`"]),
    (lambda: wheel.balance(mass="0 kg", speed="2850 rpm"), hw.OutOfRangeError, ["`mass`", "above 0"]),
    (lambda: wheel.shared_balance(mass="2 kg", machines=[]), hw.MissingError, ["`machines`"]),
    (lambda: wheel.unbalance([]), hw.MissingError, ["`spots`"]),
    (
        lambda: wheel.two_weights(unbalance="-1 g mm", angle="0 deg", weight="10 g", radius="54 mm"),
        hw.OutOfRangeError,
        ["`unbalance`", "-1 g mm"],
    ),
    (
        lambda: wheel.trial_runs(baseline=0, trials=[(7, "0 deg"), (12, "120 deg")], trial="50 g mm"),
        hw.OutOfRangeError,
        ["`baseline`", "not above 0"],
    ),
    (
        lambda: wheel.trial_runs(baseline=10, trials=[(9, "0 deg"), (9.5, "120 deg"), (8, "240 deg")], trial="50 g mm"),
        hw.OutOfRangeError,
        ["`trials`", "contradict"],
    ),
    (
        lambda: wheel.trial_runs(baseline=10, trials=[(7, "0 deg"), (12, "120 deg")], trial_mass="4 g"),
        hw.MissingError,
        ["`trial`", "radius"],
    ),
    (
        lambda: wheel.trial_runs(baseline=10, trials=[(7, "0 mm"), (12, "120 deg")], trial="50 g mm"),
        hw.TextError,
        ["`trials`", "0 mm"],
    ),
    (
        lambda: hw.check(hw.Mounting(wheel=hw.Wheel(mass="4 kg"), hub=hw.Hub(rotor_mass="3 kg"))),
        hw.errors.TableError,
        ["wheel mass of 4 kg", "hub rotor mass of 3 kg"],
    ),
]


@pytest.mark.parametrize(("call", "error", "holds"), BAD)
def test_bad_input_is_told(call: Callable[[], object], error: type[Exception], holds: list[str]) -> None:
    with pytest.raises(error) as raised:
        call()
    for part in [*holds, "hint: "]:
        assert part in str(raised.value)


def test_weights_too_light_say_what_could_be_reached() -> None:
    found = wheel.two_weights(unbalance="500 g mm", angle="40 deg", weight="4 g", radius="54 mm")
    assert not found.reached
    assert "the weights reach 432 g mm" in found.says and "68 g mm are left" in found.says
    assert found.least_weight is not None
    assert found.least_weight.m_as("g") == pytest.approx(500 / 2 / 54)


def test_a_trial_weight_that_did_nothing_is_told() -> None:
    for runs in (
        [(10, "0 deg"), (10, "120 deg")],
        [(10.0001, "0 deg"), (10, "120 deg")],
        [(10, "0 deg"), (10, "120 deg"), (10, "240 deg")],
    ):
        with pytest.raises(hw.OutOfRangeError, match="the trial weight did nothing that shows"):
            hw.wheel.trial_runs(baseline=10, trials=runs, trial="50 g mm")
    # 1000 g mm at 57 deg and 5 g mm of trial: what is read to a thousandth tells too little.
    light = hw.wheel.trial_runs(baseline=10, trials=[(10.027, "0 deg"), (10.023, "120 deg"), (9.95, "240 deg")], trial="5 g mm")
    assert light.weak and "TRIAL WEIGHT TOO LIGHT" in repr(light)
    with pytest.raises(hw.MissingError, match="grade"):
        hw.wheel.balance(mass="3 kg", speed="2850 rpm")
