"""Measuring and setting as a Python user meets them; fits and distributions by SciPy, chance by NumPy."""

import inspect
import math
from typing import Any

import numpy as np
import pint
import pytest
from scipy import integrate, optimize, stats

import hubwright as hw
from hubwright import gauge

ureg = pint.get_application_registry()
Z = np.array([2, 7, 12, 17, 22, 27, 32, 37, 42.0])
D = np.array([30.2004, 30.6993, 31.2002, 31.7009, 32.1995, 32.6997, 33.2006, 33.6998, 34.1996])


def lengths(values: np.ndarray) -> list[str]:
    """As a person would type them."""
    return [f"{value:.6f} mm" for value in values]


# --- Fitting ------------------------------------------------------------------


def test_a_cone_fit_is_that_of_scipy() -> None:
    found = gauge.cone_fit(positions=Z * ureg.mm, diameters=D * ureg.mm)
    line = stats.linregress(Z, D)
    t, u = line.slope / 2, line.stderr / 2
    assert found.cone.half_angle.m_as("radian") == pytest.approx(math.atan(t), rel=1e-12)
    assert found.cone.u_half_angle.m_as("radian") == pytest.approx(u / (1 + t * t), rel=1e-9)
    # 95.45 % of Student's distribution with seven degrees of freedom.
    k = stats.t.ppf(stats.norm.cdf(2), len(Z) - 2)
    assert found.cone.expanded_half_angle.m_as("radian") == pytest.approx(k * u / (1 + t * t), rel=1e-9)
    assert found.cone.diameter_at("0 mm").m_as("mm") == pytest.approx(line.intercept, rel=1e-12)
    assert found.residuals_um == pytest.approx((D - line.intercept - line.slope * Z) * 1e3, abs=1e-6)
    typed = gauge.cone_fit(positions=lengths(Z), diameters=lengths(D))
    assert typed.cone.half_angle.m_as("degree") == pytest.approx(found.cone.half_angle.m_as("degree"), rel=1e-9)


def test_a_fit_by_angle_and_radius_is_the_same_cone() -> None:
    def flank(z: Any, alpha: float, radius: float) -> Any:
        return 2 * (radius + (z - 22) * np.tan(alpha))

    (alpha, radius), covariance = optimize.curve_fit(flank, Z, D, p0=[0.04, 16])
    found = gauge.cone_fit(positions=lengths(Z), diameters=lengths(D))
    assert found.cone.half_angle.m_as("radian") == pytest.approx(alpha, rel=1e-6)
    assert found.cone.u_half_angle.m_as("radian") == pytest.approx(math.sqrt(covariance[0, 0]), rel=1e-4)
    assert found.cone.diameter.m_as("mm") == pytest.approx(2 * radius, rel=1e-9)
    assert found.cone.u_diameter.m_as("mm") == pytest.approx(2 * math.sqrt(covariance[1, 1]), rel=1e-4)


def test_a_bend_is_that_of_a_parabola_by_numpy() -> None:
    chance = np.random.default_rng(7)
    for sag in (0.0, 0.004, -0.006):
        d = 30 + Z / 10 + sag * (1 - ((Z - 22) / 20) ** 2) + chance.normal(0, 0.0005, len(Z))
        found = gauge.cone_fit(positions=lengths(Z), diameters=lengths(d))
        (curve, *_), covariance = np.polyfit(Z, d, 2, cov=True)
        assert found.bow_on_diameter.m_as("mm") == pytest.approx(-curve * 400, abs=2e-6)
        k = stats.t.ppf(stats.norm.cdf(2), len(Z) - 3)
        assert found.least_bow is not None
        assert found.least_bow.m_as("mm") == pytest.approx(k * math.sqrt(covariance[0, 0]) * 400, rel=1e-2)
        seen = abs(curve) > k * math.sqrt(covariance[0, 0])
        assert (found.bow is not hw.FlankBow.NOT_SEEN) == seen
        assert seen == (sag != 0)
    assert "no bend seen" in gauge.cone_fit(positions=lengths(Z), diameters=lengths(D)).straightness_says


# --- Uncertainty ---------------------------------------------------------------


def test_uncertainties_are_those_of_a_monte_carlo() -> None:
    chance = np.random.default_rng(1)
    n = 200_000
    m1, m2 = 60.5125 + chance.normal(0, 0.001, n), 65.5125 + chance.normal(0, 0.001, n)
    apart = 50 + chance.normal(0, 0.0005, n) - chance.normal(0, 0.0005, n)
    found = gauge.over_rollers(
        over_low="60.5125 mm", over_high="65.5125 mm", height_low="0 mm", height_high="50 mm", roller="10 mm",
        u_over="1 um", u_height="0.5 um", u_roller="0 mm",
    )  # fmt: skip
    drawn = np.arctan((m2 - m1) / 2 / apart)
    assert found.cone.u_half_angle.m_as("radian") == pytest.approx(drawn.std(), rel=0.01)
    by_part = math.sqrt(sum((c * u.m_as("mm")) ** 2 for _, c, u in found.sensitivities))
    assert found.cone.u_half_angle.m_as("degree") == pytest.approx(by_part, rel=1e-9)

    r1, r2 = 20 + chance.normal(0, 0.00025, n), 16 + chance.normal(0, 0.00025, n)
    c = (76 + chance.normal(0, 0.005, n) + r2) - (-8 + chance.normal(0, 0.005, n) + r1)
    balls = gauge.two_balls(
        ball_large="40 mm", ball_small="32 mm", depth_to_large="-8 mm", depth_to_small="76 mm",
        u_ball="0.5 um", u_depth="5 um",
    )  # fmt: skip
    assert balls.cone.u_half_angle.m_as("radian") == pytest.approx(np.arcsin((r1 - r2) / c).std(), rel=0.01)

    d = 7.5 + chance.normal(0, 0.002, n) - chance.normal(0, 0.002, n)
    drawn = np.arctan(d / 2 / (30 + chance.normal(0, 0.005, n)))
    assert nose().cone.u_half_angle.m_as("radian") == pytest.approx(drawn.std(), rel=0.01)


def nose(large: str = "38.5 mm") -> gauge.TwoDiameters:
    return gauge.two_diameters(
        small_diameter="31 mm", large_diameter=large, apart="30 mm", u_diameter="2 um", u_apart="5 um"
    )


def test_a_budget_has_the_factor_of_student() -> None:
    found = gauge.budget(
        [
            gauge.Influence("repeat", spread="normal", size=0.6 / math.sqrt(5) * ureg.um, dof=4),
            gauge.Influence("gauge", spread="normal", size="0.4 um"),
            gauge.Influence("temperature", spread="uniform", size="1.15 um"),
            gauge.Influence("swing", spread="u-shaped", size="0.3 um"),
        ]
    )
    parts = [0.6 / math.sqrt(5), 0.4, 1.15 / math.sqrt(3), 0.3 / math.sqrt(2)]
    u = math.hypot(*parts)
    assert found.standard.m_as("um") == pytest.approx(u, rel=1e-12)
    assert found.dof == pytest.approx(u**4 / (parts[0] ** 4 / 4), rel=1e-12)
    k = stats.t.ppf(stats.norm.cdf(2), found.dof)
    assert found.coverage == pytest.approx(k, rel=1e-9)
    assert found.expanded.m_as("um") == pytest.approx(k * u, rel=1e-9)
    assert found.working().steps[-1].result == found.expanded.m_as("um")
    assert [one.name for one in found.influences][0] == "repeat"


# --- Deciding -----------------------------------------------------------------


def test_decisions_have_the_chances_of_the_normal_distribution() -> None:
    for x in np.linspace(24.998, 25.016, 19):
        found = gauge.decide(f"{x:.6f} mm", u="0.9 um", low="25 mm", high="25.013 mm", guard_band="one-sided 95 %")
        normal = stats.norm(x, 0.0009)
        inside = normal.cdf(25.013) - normal.cdf(25)
        assert found.chance_within == pytest.approx(inside, abs=1e-9)
        assert (found.ruling is hw.Ruling.WITHIN) == (inside >= 0.95)
        assert (found.ruling is hw.Ruling.OUTSIDE) == (inside < 0.05)
    assert found.accept_high is not None
    assert found.accept_high.m_as("mm") == pytest.approx(25.013 - stats.norm.ppf(0.95) * 0.0009, abs=1e-9)
    angle = gauge.decide("2.864 deg", u=0.001 * ureg.degree, low="2.861 deg", high="2.867 deg", guard_band="full")
    assert angle.ruling is hw.Ruling.WITHIN
    assert angle.accept_low is not None and angle.reject_high is not None
    assert angle.accept_low.m_as("degree") == pytest.approx(2.863)
    assert angle.reject_high.m_as("degree") == pytest.approx(2.869)
    assert angle.working().steps[-1].result == angle.chance_within
    with pytest.raises(hw.HubwrightError, match="`high`"):
        gauge.decide("25 mm", u="1 um", high="3 deg", guard_band="full")
    with pytest.raises(hw.HubwrightError, match="`measured`"):
        gauge.decide("25 s", u="1 um", high="3 mm", guard_band="full")


def test_chances_are_those_of_an_integral() -> None:
    found = gauge.chances(
        process_mean="25.0065 mm", process_spread="3.2 um", u="0.9 um", low="25 mm", high="25.013 mm", guard_band="full"
    )
    low, high = 0.0 + 1.8, 13.0 - 1.8

    def taken(x: float) -> Any:
        return stats.norm.pdf(x, 6.5, 3.2) * (stats.norm.cdf((high - x) / 0.9) - stats.norm.cdf((low - x) / 0.9))

    bad = integrate.quad(taken, -30, 0)[0] + integrate.quad(taken, 13, 40)[0]
    good = integrate.quad(taken, 0, 13)[0]
    assert found.false_accept == pytest.approx(bad, rel=1e-6)
    assert found.accepted == pytest.approx(bad + good, rel=1e-6)
    assert found.false_reject == pytest.approx(stats.norm.cdf(6.5 / 3.2) - stats.norm.cdf(-6.5 / 3.2) - good, rel=1e-6)


# --- Naming, setting, correcting -------------------------------------------------


def test_a_nose_is_named_or_copied_and_its_gauge_plane_found() -> None:
    named = gauge.name_taper(nose(), made_within="0.01 deg", gauge_diameter="35 mm")
    assert named.outcome is hw.NamingOutcome.ONE
    assert [one.name for one in named.candidates] == ["1:4", "3 in/ft"]
    assert named.gauge_plane is not None and named.u_gauge_plane is not None
    assert named.gauge_plane.m_as("mm") == pytest.approx(16)
    assert str(named) == named.says
    own = gauge.name_taper(nose("37.8 mm").cone, made_within="0.01 deg")
    assert own.outcome is hw.NamingOutcome.NONE
    assert "copy it, half angle 6.465" in own.says
    with pytest.raises(hw.UnitError, match="measured cone"):
        gauge.name_taper("1:4", made_within="0.01 deg")  # type: ignore[arg-type]


def test_the_lathe_is_set_and_corrected() -> None:
    wanted = gauge.slide_setting("1:5", travel="30 mm", along="flank")
    assert wanted.rise.m_as("mm") == pytest.approx(30 * math.sin(math.atan(0.1)), rel=1e-12)
    found = gauge.correct_slide(
        rise_read=wanted.rise + 0.02 * ureg.mm, rise_wanted=wanted.rise, travel="30 mm", along="flank", u_rise="1 um",
        pivot_radius="120 mm",
    )  # fmt: skip
    off = math.asin((wanted.rise.m_as("mm") + 0.02) / 30) - math.atan(0.1)
    assert found.error.m_as("radian") == pytest.approx(off, rel=1e-9)
    assert found.tap is not None
    assert found.tap.m_as("mm") == pytest.approx(120 * off, rel=1e-9)
    assert found.toward is hw.Toward.SMALLER
    hub = gauge.correct_slide(measured=nose(), wanted=nose("38.45 mm"), part="hub", length="40 mm")
    assert hub.u_error.m_as("degree") == pytest.approx(math.sqrt(2) * nose().cone.u_half_angle.m_as("degree"), rel=1e-2)
    assert hub.advice.startswith("hub too open by ")
    assert gauge.correct_slide(measured=nose(), wanted="3 in/ft").toward is hw.Toward.STAY
    bar = gauge.sine_bar("3 in/ft", centres="100 mm", set="included")
    wrung = gauge.block_stack(bar.stack, ["4.6 mm", "1.005 mm", "1.01 mm", "20 mm", "3 mm", "0.61 mm"], within="0.5 um")
    assert [block.m_as("mm") for block in wrung.blocks] == pytest.approx([20, 3, 1.005, 0.61])
    error = math.asin(wrung.sum.m_as("mm") / 100) - 2 * math.atan(0.125)
    assert bar.angle_error(wrung.sum).m_as("radian") == pytest.approx(error, rel=1e-6)
    assert gauge.tailstock("1:20", between_centres="200 mm").by_rule.m_as("mm") == pytest.approx(5)


def test_a_tool_off_centre_cuts_what_a_numeric_fit_finds() -> None:
    found = gauge.tool_height("1:5", small_diameter="20 mm", length="35 mm", off="-0.8 mm")
    z = np.linspace(0, 35, 20001)
    r = np.hypot(math.sqrt(100 - 0.64) + 0.1 * z, 0.8)
    chord = (r[-1] - r[0]) / 35
    assert found.half_angle.m_as("radian") == pytest.approx(math.atan(chord), rel=1e-9)
    sag = (r[0] + chord * z) - r
    assert found.bow.m_as("mm") == pytest.approx(sag.max(), rel=1e-6)
    assert found.bow_at.m_as("mm") == pytest.approx(z[sag.argmax()], abs=0.01)


def test_run_out_drilling_and_stand_off() -> None:
    told = gauge.run_out("0.01 mm", travel="40 mm")
    assert told.both_ends.m_as("radian") == pytest.approx(math.atan(0.01 / 40))
    assert told.is_usual
    assert "common practice, no source" in str(told.source)
    bore = gauge.boring("1:5", small_diameter="25 mm", length="40 mm", stock="0.5 mm", drills=np.array([22, 24, 30]) * ureg.mm)
    assert bore.through.drill.m_as("mm") == pytest.approx(24)
    assert bore.steps[0].depth.m_as("mm") == pytest.approx((33 - 30 - 1) * 5)
    seat = gauge.stand_off("1:5", spindle_diameter="40 mm", hub_diameter="39.99 mm", interference="8 um", u_hub="1 um")
    assert seat.stand_off.m_as("mm") == pytest.approx(0.05)
    assert seat.gap.m_as("mm") == pytest.approx(0.01)
    assert not seat.clears, "2 um are 0.01 mm of travel"


def test_a_hub_that_meets_its_shoulder_is_refused() -> None:
    hub = hw.Hub(stand_off="0.04 mm", draw_up="0.05 mm")
    found = hw.check(hw.Mounting(hub=hub)).finding("seat-touches-shoulder")
    assert found is not None and found.outcome is hw.Outcome.REFUSE
    unknown = hw.Hub(stand_off=hw.UNKNOWN, draw_up="0.05 mm")
    found = hw.check(hw.Mounting(hub=unknown)).finding("seat-touches-shoulder")
    assert found is not None and found.outcome is hw.Outcome.UNKNOWN


# --- Bad input ------------------------------------------------------------------

ROLLERS = {
    "over_low": "60 mm", "over_high": "65 mm", "height_low": "0 mm", "height_high": "50 mm", "roller": "10 mm",
    "u_over": "1 um", "u_height": "1 um", "u_roller": "1 um",
}  # fmt: skip
BALLS = {"ball_large": "40 mm", "ball_small": "32 mm", "depth_to_large": "-8 mm", "depth_to_small": "76 mm", "u_ball": "1 um", "u_depth": "1 um"}
FIT = {"positions": ["0 mm", "10 mm", "20 mm"], "diameters": ["30 mm", "31 mm", "32 mm"]}
CUT = {"small_diameter": "30 mm", "large_diameter": "35 mm", "apart": "40 mm", "u_diameter": "1 um", "u_apart": "0 mm", "wanted": "1:8"}


@pytest.mark.parametrize(
    ("call", "good", "bad", "kind", "says"),
    [
        (gauge.over_rollers, ROLLERS, {"over_high": "60 mm"}, hw.OutOfRangeError, "a cylinder"),
        (gauge.over_rollers, ROLLERS, {"over_high": "400 mm"}, hw.OutOfRangeError, "a plate"),
        (gauge.over_rollers, ROLLERS, {"height_high": "0 mm"}, hw.OutOfRangeError, "one height"),
        (gauge.over_rollers, ROLLERS, {"large_end": "low"}, hw.OutOfRangeError, "said to be low"),
        (gauge.over_rollers, ROLLERS, {"large_end": "left"}, hw.TextError, "high, low"),
        (gauge.over_rollers, ROLLERS, {"u_over": 1}, hw.UnitError, "`u_over`"),
        (gauge.two_balls, BALLS, {"ball_small": "45 mm"}, hw.OutOfRangeError, "`ball_small`"),
        (gauge.two_balls, BALLS, {"depth_to_small": "-1 mm"}, hw.OutOfRangeError, "don't fit"),
        (gauge.cone_fit, FIT, {"positions": ["0 mm", "10 mm"], "diameters": ["30 mm", "31 mm"]}, hw.MissingError, "three readings"),
        (gauge.cone_fit, FIT, {"positions": ["0 mm", "20 mm", "10 mm"]}, hw.OutOfRangeError, "order"),
        (gauge.cone_fit, FIT, {"positions": ["0 mm", "10 mm"]}, hw.HubwrightError, "`diameters`"),
        (gauge.cone_fit, FIT, {"positions": "0 mm"}, hw.UnitError, "several"),
        (gauge.cone_fit, FIT, {"positions": [0, 10, 20]}, hw.UnitError, "`positions`"),
        (gauge.cone_fit, FIT, {"large_end": "first"}, hw.OutOfRangeError, "said to be low"),
        (gauge.correct_slide, CUT, {"large_diameter": "25 mm"}, hw.OutOfRangeError, "wrong end"),
        (gauge.correct_slide, CUT, {"rise_read": "3 mm"}, hw.MissingError, "one way of three"),
        (gauge.correct_slide, CUT, {"wanted": None}, hw.MissingError, "`wanted`"),
        (gauge.correct_slide, CUT, {"apart": None}, hw.MissingError, "`apart`"),
        (gauge.correct_slide, CUT, {"wanted": "8 deg"}, hw.TextError, "half angle"),
        (gauge.correct_slide, CUT, {"part": "nut"}, hw.TextError, "hub, spindle"),
    ],
)
def test_what_makes_no_sense_is_told(call, good, bad, kind, says) -> None:  # type: ignore[no-untyped-def]
    call(**good)
    with pytest.raises(kind) as caught:
        call(**(good | bad))
    text = str(caught.value)
    assert says in text, text
    assert "\nhint: " in text


def test_results_are_frozen_and_show_their_working() -> None:
    results: list[Any] = [
        gauge.over_rollers(**ROLLERS), gauge.two_balls(**BALLS), nose(), gauge.cone_fit(**FIT),  # type: ignore[arg-type]
        gauge.correct_slide(**CUT), gauge.slide_setting("1:5", travel="30 mm", along="axis"),  # type: ignore[arg-type]
        gauge.stand_off("1:5", spindle_diameter="40 mm", hub_diameter="39.99 mm"),
    ]  # fmt: skip
    for result in results:
        steps = result.working().steps
        assert steps and all(str(step.source) for step in steps)
        with pytest.raises(AttributeError):
            result.cone = 1
    for name in gauge.__all__:
        assert inspect.getdoc(getattr(gauge, name)), name
