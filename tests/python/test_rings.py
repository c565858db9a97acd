"""Rings, press fits and wheel strength: against finite elements, by name, and with bad input."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
import pint
import pytest
from skfem import (
    Basis,
    BilinearForm,
    ElementLineP2,
    ElementQuad2,
    ElementVector,
    LinearForm,
    MeshLine,
    MeshQuad,
    condense,
    solve,
)

import hubwright as hw
from hubwright import joint, wheel

ureg = pint.get_application_registry()


@dataclass
class Part:
    """A ring of the finite-element model, in SI units."""

    outside: float
    modulus: float
    poisson: float
    density: float
    expansion: float = 0.0
    rise: float = 0.0
    misfit: float | None = None  # on radius; None is bonded

    def material(self) -> wheel.Elastic:
        return wheel.Elastic(
            modulus=ureg.Quantity(self.modulus, "Pa"),
            poisson=self.poisson,
            density=ureg.Quantity(self.density, "kg/m^3"),
            expansion=ureg.Quantity(self.expansion, "1/K"),
        )


def radial_elements(bore: float, parts: Sequence[Part], omega: float) -> tuple[list[float], list[float]]:
    """Pressures between rings and hoop stress inside each, by quadratic elements along the radius.

    Virtual work in plane stress, for every ring by itself; displacements are joined where rings meet,
    the outer one moved outwards by the misfit. A pressure is the reaction at the joint.
    """
    matrices, loads, bases = [], [], []
    inside = bore
    for part in parts:
        stiff = part.modulus / (1 - part.poisson**2)
        warm = part.expansion * part.rise

        @BilinearForm
        def work(u, v, w):  # type: ignore[no-untyped-def]
            r = w.x[0]
            radial = stiff * (u.grad[0] + part.poisson * u / r)
            hoop = stiff * (u / r + part.poisson * u.grad[0])
            return (radial * v.grad[0] + hoop * v / r) * r

        @LinearForm
        def load(v, w):  # type: ignore[no-untyped-def]
            r = w.x[0]
            thermal = stiff * (1 + part.poisson) * warm
            return (part.density * omega**2 * r * v + thermal * (v.grad[0] + v / r)) * r

        basis = Basis(MeshLine(np.linspace(inside, part.outside, 401)), ElementLineP2(), intorder=6)
        matrices.append(work.assemble(basis).toarray())
        loads.append(load.assemble(basis))
        bases.append(basis)
        inside = part.outside

    # Number the unknowns of all rings one after the other, then join the last of one to the first of the next.
    sizes = [len(load) for load in loads]
    starts = np.cumsum([0, *sizes])
    ends = [(basis.nodal_dofs[0, 0], basis.nodal_dofs[0, -1]) for basis in bases]
    total = starts[-1]
    K, f = np.zeros((total, total)), np.concatenate(loads)
    for at, matrix in enumerate(matrices):
        span = slice(starts[at], starts[at + 1])
        K[span, span] = matrix
    shift, same = np.zeros(total), np.arange(total)
    for at in range(1, len(parts)):
        first, last = starts[at] + ends[at][0], starts[at - 1] + ends[at - 1][1]
        same[first] = last
        shift[first] = parts[at].misfit or 0.0
    free, column = np.unique(same, return_inverse=True)
    T = np.zeros((total, len(free)))
    T[np.arange(total), column] = 1
    if bore == 0:
        T = np.delete(T, column[ends[0][0]], axis=1)  # nothing moves at the centre
    u = T @ np.linalg.solve(T.T @ K @ T, T.T @ (f - K @ shift)) + shift

    pressures, hoops = [], []
    inside = bore
    for at, part in enumerate(parts):
        span = slice(starts[at], starts[at + 1])
        if at > 0:
            first = ends[at][0]
            pressures.append(float((matrices[at] @ u[span] - loads[at])[first] / inside))
        if inside > 0:
            strain = u[span][ends[at][0]] / inside - part.expansion * part.rise
            radial = -pressures[-1] if at > 0 else 0.0
            hoops.append(float(part.modulus * strain + part.poisson * radial))
        else:
            hoops.append(float("nan"))
        inside = part.outside
    return pressures, hoops


def hubwright_rings(bore: float, parts: Sequence[Part], omega: float) -> wheel.WheelRings:
    rings = []
    for at, part in enumerate(parts):
        held: dict[str, object] = {}
        if at > 0:
            held = {"bonded": True} if part.misfit is None else {"interference": ureg.Quantity(2 * part.misfit, "m")}
        rings.append(
            wheel.Ring(
                diameter=ureg.Quantity(2 * part.outside, "m"),
                material=part.material(),
                rise=ureg.Quantity(part.rise, "kelvin"),
                **held,  # type: ignore[arg-type]
            )
        )
    return wheel.rings(rings, bore=ureg.Quantity(2 * bore, "m"), speed=ureg.Quantity(omega, "rad/s"))


STEEL = (206e9, 0.3, 7850.0, 11.5e-6)


@pytest.mark.parametrize(
    ("bore", "parts", "omega"),
    [
        (0.0254, [Part(0.09, *STEEL), Part(0.1, 60e9, 0.25, 3300)], 800.0),
        (0.0635, [Part(0.17, 71e9, 0.33, 2750, 23e-6, 20), Part(0.175, 45e9, 0.22, 2900, 5e-6, 60)], 600.0),
        (0.0, [Part(0.03, *STEEL), Part(0.09, 71e9, 0.33, 2750, 23e-6, 15, misfit=4e-5)], 500.0),
        (
            0.01,
            [
                Part(0.03, *STEEL, rise=5),
                Part(0.08, 71e9, 0.33, 2750, 23e-6, 15, misfit=6e-5),
                Part(0.1, 15e9, 0.2, 2300, 6e-6, 30),
                Part(0.104, *STEEL, rise=10, misfit=3e-5),
            ],
            300.0,
        ),
    ],
    ids=["bonded rim", "warm rim", "solid shaft", "four rings"],
)
def test_rings_are_as_finite_elements_have_them(bore: float, parts: list[Part], omega: float) -> None:
    pressures, hoops = radial_elements(bore, parts, omega)
    found = hubwright_rings(bore, parts, omega)
    got = [interface.pressure.m_as("Pa") for interface in found.interfaces]
    assert got == pytest.approx(pressures, rel=1e-6)
    assert not any(interface.open for interface in found.interfaces)
    for ring, hoop in zip(found.rings, hoops, strict=True):
        if not np.isnan(hoop):
            assert ring.inside.hoop.m_as("Pa") == pytest.approx(hoop, rel=1e-6)


@pytest.mark.parametrize(("a", "b", "h"), [(0.015875, 0.1, 0.02), (0.0635, 0.1775, 0.05)])
def test_a_spinning_ring_is_as_finite_elements_of_its_true_thickness_have_it(a: float, b: float, h: float) -> None:
    """Half of a ring in r and z, all three stresses: what plane stress leaves out is there."""
    modulus, nu, rho, omega = 48e9, 0.22, 2250.0, 300.0
    lam, mu = modulus * nu / (1 + nu) / (1 - 2 * nu), modulus / 2 / (1 + nu)
    r = a + (b - a) * np.linspace(0, 1, 61) ** 1.5
    mesh = MeshQuad.init_tensor(r, np.linspace(0, h / 2, 9)).with_boundaries(
        {"middle": lambda x: x[1] == 0, "bore": lambda x: np.isclose(x[0], a)}
    )
    basis = Basis(mesh, ElementVector(ElementQuad2()), intorder=6)

    @BilinearForm
    def work(u, v, w):  # type: ignore[no-untyped-def]
        def strains(u):  # type: ignore[no-untyped-def]
            return u.grad[0][0], u[0] / w.x[0], u.grad[1][1], u.grad[0][1] + u.grad[1][0]

        (er, et, ez, g), (dr, dt, dz, dg) = strains(u), strains(v)
        bulk = lam * (er + et + ez)
        return ((bulk + 2 * mu * er) * dr + (bulk + 2 * mu * et) * dt + (bulk + 2 * mu * ez) * dz + mu * g * dg) * w.x[0]

    @LinearForm
    def spin(v, w):  # type: ignore[no-untyped-def]
        return rho * omega**2 * w.x[0] * v[0] * w.x[0]

    fixed = basis.get_dofs("middle").all("u^2")
    u = solve(*condense(work.assemble(basis), spin.assemble(basis), D=fixed))
    # The hole's surface is free, so that there the mean of σt over the thickness follows from u / r and the mean of σz.
    bore = basis.boundary("bore")
    field = bore.interpolate(u)
    er, et, ez = field.grad[0][0], field[0] / a, field.grad[1][1]
    hoop = lam * (er + et + ez) + 2 * mu * et
    mean = float((hoop * bore.dx).sum() / bore.dx.sum())
    found = wheel.strength(
        diameter=ureg.Quantity(2 * b, "m"), hole=ureg.Quantity(2 * a, "m"), density="2250 kg/m3", poisson=nu,
        speed=ureg.Quantity(omega, "rad/s"),
    )  # fmt: skip
    assert found.hoop.m_as("Pa") == pytest.approx(mean, rel=3e-4)


def test_a_press_fit_is_as_finite_elements_have_it() -> None:
    bore, omega = 0.008, 471.0
    parts = [Part(0.02, *STEEL, rise=15), Part(0.0375, 71e9, 0.33, 2750, 23.5e-6, 25, misfit=1.5e-5)]
    fit = joint.press_fit(
        shaft=parts[0].material(), hub=parts[1].material(), diameter="40 mm", shaft_bore="16 mm", hub_diameter="75 mm",
        least_interference="30 um", greatest_interference="40 um", speed=ureg.Quantity(omega, "rad/s"),
        shaft_rise="15 K", hub_rise="25 K", length="30 mm", friction=0.15,
    )  # fmt: skip
    [pressure], [shaft_hoop, hub_hoop] = radial_elements(bore, parts, omega)
    assert fit.least.pressure.m_as("Pa") == pytest.approx(pressure, rel=1e-6)
    assert fit.least.hub_bore.hoop.m_as("Pa") == pytest.approx(hub_hoop, rel=1e-6)
    assert fit.least.shaft_inside.hoop.m_as("Pa") == pytest.approx(shaft_hoop, rel=1e-6)
    area = 2 * np.pi * 0.02 * 0.03
    assert fit.push_off is not None and fit.torque is not None
    assert fit.push_off.m_as("N") == pytest.approx(0.15 * pressure * area, rel=1e-6)
    assert fit.torque.m_as("N*m") == pytest.approx(0.15 * pressure * area * 0.02, rel=1e-6)
    # At its loosening speed nothing presses any more.
    loose = fit.least.loosening_speed
    assert loose is not None
    [gone], _ = radial_elements(bore, parts, loose.m_as("rad/s"))
    assert abs(gone) < 1e-6 * pressure


def fit(**changes: object) -> joint.PressFit:
    """A fit that is sound but for what is changed."""
    given: dict[str, object] = {
        "shaft": "steel", "hub": "steel", "diameter": "25 mm", "shaft_bore": "0 mm", "hub_diameter": "45 mm",
        "least_interference": "10 um", "greatest_interference": "20 um",
    }  # fmt: skip
    return joint.press_fit(**(given | changes))  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("changes", "error", "says"),
    [
        ({"least_interference": "-5 um"}, hw.OutOfRangeError, "`least_interference` is -5 um"),
        ({"hub_diameter": "24 mm"}, hw.OutOfRangeError, "`hub_diameter` is 24 mm, not above the joint's 25 mm"),
        ({"diameter": pint.Quantity(float("nan"), "mm")}, hw.OutOfRangeError, "`diameter` is NaN"),
        ({"friction": 0.1}, hw.MissingError, "`length` is missing"),
        ({"length": "20 mm"}, hw.MissingError, "`friction` is missing"),
        ({"length": "20 mm", "friction": -0.1}, hw.OutOfRangeError, "`friction` is -0.1"),
        ({"length": "20 mm", "friction": "a little"}, hw.TextError, "`friction` is \"a little\""),
        ({"length": "20 mm", "friction": pint.Quantity(0.1, "mm")}, hw.UnitError, "`friction` is "),
        ({"length": "20 mm", "friction": True}, hw.UnitError, "`friction` is True"),
        ({"smoothing": 0.8}, hw.MissingError, "`shaft_roughness` is missing"),
        ({"shaft_roughness": "4 um", "hub_roughness": "4 um"}, hw.MissingError, "`smoothing` is missing"),
        ({"smoothing": 0.8, "shaft_roughness": "4 um"}, hw.MissingError, "`hub_roughness` is missing"),
        ({"shaft": "steal"}, hw.TextError, "`shaft` is \"steal\", not one of: steel"),
        ({"hub": 206e9}, hw.TextError, "`hub` is \"206000000000.0\""),
        ({"hub_yield": 300}, hw.UnitError, "`hub_yield` is 300 without a unit"),
        ({"speed": pint.Quantity(50, "Hz")}, hw.UnitError, "`speed` is "),
    ],
)
def test_what_makes_no_press_fit_is_refused_by_name(
    changes: dict[str, object], error: type[Exception], says: str
) -> None:
    with pytest.raises(error) as caught:
        fit(**changes)
    assert str(caught.value).startswith(says)
    assert "\nhint: " in str(caught.value)


@pytest.mark.parametrize(
    ("call", "says"),
    [
        (lambda: wheel.Elastic(modulus="0 GPa", poisson=0.3, density="7850 kg/m3"), "`modulus` is 0 GPa"),
        (lambda: wheel.Elastic(modulus="206 GPa", poisson=0.5, density="7850 kg/m3"), "`poisson` is 0.5, not between"),
        (lambda: wheel.Ring(diameter="1 m", material="steel", bonded=True, interference="1 um"), "`bonded` is "),
        (lambda: wheel.rings([], bore="0 mm", speed="0 rpm"), "`rings` is missing"),
        (
            lambda: wheel.rings([wheel.Ring(diameter="9 mm", material="steel")], bore="9 mm", speed="0 rpm"),
            "`rings[0].diameter` is 9 mm, not above 9 mm",
        ),
        (
            lambda: wheel.strength(
                diameter="200 mm", hole="200 mm", density="2250 kg/m3", poisson=0.2, speed="3000 rpm"
            ),
            "`hole` is 200 mm",
        ),
        (
            lambda: wheel.strength(
                diameter="200 mm", hole="50 mm", density="2250 kg/m3", poisson=0.2, speed="3000 rpm", thickness="9 mm"
            ),
            "`fragment_angle` is missing",
        ),
    ],
)
def test_what_makes_no_ring_or_wheel_is_refused_by_name(call: Callable[[], object], says: str) -> None:
    with pytest.raises(hw.HubwrightError) as caught:
        call()
    assert str(caught.value).startswith(says)
    assert "\nhint: " in str(caught.value)


def test_a_result_says_which_constants_were_used() -> None:
    found = fit(hub=wheel.Elastic(modulus="71 GPa", poisson=0.33, density="2750 kg/m3"))
    assert (found.shaft.name, found.shaft.source.status) == ("steel", "from memory, unverified")
    assert (found.hub.name, found.hub.source.status) == (None, "as stated by the user")


def test_yielding_is_a_field_and_no_error() -> None:
    found = fit(greatest_interference="90 um", hub_yield="300 MPa")
    assert found.stays_elastic is False
    assert found.hub_factor is not None and found.hub_factor < 1
    assert "IT YIELDS" in repr(found)
    assert fit().stays_elastic is None


def test_friction_and_ranges_are_offered_by_name_with_their_source() -> None:
    by_name = {one.name: one for one in joint.friction_ranges()}
    dry = by_name["steel on steel, shrunk, degreased, up to 300 C"]
    assert (dry.least, dry.greatest, dry.source.status) == (0.2, 0.2, "from memory, unverified")
    assert any(one.name.startswith("tensile strength") and one.unit == "MPa" for one in wheel.material_ranges())
    assert [metal.name for metal in joint.metals()] == ["steel", "cast iron", "aluminium", "brass"]
    known = {str(source) for source in hw.sources()}
    for one in [*joint.friction_ranges(), *wheel.material_ranges(), *joint.metals()]:
        assert str(one.source) in known


def test_the_marked_speed_is_the_limit_of_what_strength_allows() -> None:
    given = {"diameter": "200 mm", "hole": "31.75 mm", "density": "2250 kg/m3", "poisson": "0.22", "speed": "3000 rpm"}
    found = wheel.strength(**given, tensile_strength="20 MPa", burst_factor=3, marked_speed="2900 rpm")  # type: ignore[arg-type]
    assert found.greatest_speed is not None
    assert (found.greatest_speed.m_as("rpm"), found.capped, found.above_marked) == (pytest.approx(2900), True, True)
    assert "ABOVE THE MARKED SPEED" in repr(found)
    assert wheel.strength(**given, tensile_strength="20 MPa", burst_factor=3).greatest_speed is None  # type: ignore[arg-type]


def test_a_mounting_is_refused_for_its_burst_margin() -> None:
    strong = {"tensile_strength": "20 MPa", "density": "2250 kg/m3", "poisson_ratio": 0.22, "burst_factor": 3}
    spindle = hw.Spindle(greatest_speed="3000 rpm")

    def found(**changes: object) -> hw.Finding:
        parts = {"shape": "type-1", "diameter": "200 mm", "hole": "31.75 mm"} | strong | changes
        finding = hw.check(hw.Mounting("m", spindle=spindle, wheel=hw.Wheel(**parts))).finding("burst-margin")  # type: ignore[arg-type]
        assert finding is not None
        return finding

    passed = found()
    assert (passed.outcome, passed.demanded, passed.unit) == ("pass", 3.0, "")
    assert passed.found == pytest.approx(11.1201, abs=1e-4)
    assert found(tensile_strength="5 MPa").outcome == "refuse"
    assert found(density=hw.UNKNOWN).outcome == "unknown"
