"""Thin wheels and stabilisers: against plate elements of Morley's kind, and what Python sees."""

from functools import cache

import hubwright as hw
import numpy as np
import pytest
from scipy.linalg import eigh
from scipy.optimize import brentq
from skfem import Basis, BilinearForm, ElementTriMorley, MeshTri, condense, solve
from skfem.helpers import dd, ddot, eye, trace


def ring_mesh(ratio: float, rings: int) -> MeshTri:
    """A disc between the radii `ratio` and 1: as many rings as asked for, triangles about square."""
    radii = ratio ** (1 - np.arange(rings + 1) / rings)
    around = round(2 * np.pi * rings / np.log(1 / ratio))
    angle = 2 * np.pi * np.arange(around) / around
    points = np.array([[r * np.cos(angle), r * np.sin(angle)] for r in radii])
    points = points.transpose(1, 0, 2).reshape(2, -1)
    triangles = []
    for ring in range(rings):
        for at in range(around):
            a, b = ring * around + at, ring * around + (at + 1) % around
            c, d = a + around, b + around
            triangles += [(a, b, d), (a, d, c)]
    return MeshTri(points, np.array(triangles).T)


def rim_deflection(ratio: float, poisson: float, rings: int) -> float:
    """Deflection over P a2 / D under a load at one point of the rim, by Morley's plate elements."""
    mesh = ring_mesh(ratio, rings)
    basis = Basis(mesh, ElementTriMorley())

    def moment(curvature):  # type: ignore[no-untyped-def]
        return (1 - poisson) * curvature + poisson * eye(trace(curvature), 2)

    @BilinearForm
    def bending(u, v, _):  # type: ignore[no-untyped-def]
        return ddot(moment(dd(u)), dd(v))

    # Straight sides lose some of the disc; the clamp is on the corners of its circle.
    middle = mesh.p[:, mesh.facets].mean(axis=1)
    facets = np.flatnonzero(np.hypot(*middle) < ratio * 1.0001)
    facets = np.intersect1d(facets, mesh.boundary_facets())
    held = basis.get_dofs(facets).all()
    load = np.zeros(basis.N)
    tip = int(np.argmax(mesh.p[0]))
    load[basis.nodal_dofs[0, tip]] = 1.0
    w = solve(*condense(bending.assemble(basis), load, D=held))
    return float(w[basis.nodal_dofs[0, tip]])


@cache
def extrapolated(ratio: float, poisson: float) -> float:
    """From two meshes: the error of Morley's element falls with the square of its size."""
    coarse, fine = (rim_deflection(ratio, poisson, rings) for rings in (10, 20))
    return fine + (fine - coarse) / 3


def stiffness(diameter: float, flange: float, thickness: float, poisson: float) -> float:
    """N/mm of a wheel in mm with a modulus of 12 GPa, by elements."""
    rigidity = 12e3 * thickness**3 / 12 / (1 - poisson**2)
    return rigidity / (diameter / 2) ** 2 / extrapolated(flange / diameter, poisson)


@pytest.mark.parametrize(("flange", "poisson"), [("50 mm", 0.2), ("80 mm", 0.2), ("40 mm", 0.3)])
def test_side_stiffness_against_plate_elements(flange: str, poisson: float) -> None:
    found = hw.wheel.thin_wheel(
        diameter="125 mm", flange=flange, thickness="1 mm", modulus="12 GPa", poisson=poisson
    )
    wanted = stiffness(125, float(flange.split()[0]), 1, poisson)
    assert found.stiffness.m_as("N/mm") == pytest.approx(wanted, rel=0.01)


def test_the_gain_of_stabilisers_against_plate_elements() -> None:
    """Common practice, no source: 125 x 1 mm, 80 mm stabilisers over flanges of 50 mm."""
    found = hw.wheel.stabilisers(
        diameter="125 mm", flange="50 mm", thickness="1 mm", poisson=0.2, clearance="0 mm", stabiliser="80 mm"
    )
    wanted = extrapolated(50 / 125, 0.2) / extrapolated(80 / 125, 0.2)
    assert found.gain == pytest.approx(wanted, rel=0.01)
    assert found.depth.m_as("mm") == pytest.approx(22.5)
    assert "not the bursting speed" in found.note
    back = hw.wheel.stabilisers(
        diameter="125 mm", flange="50 mm", thickness="1 mm", poisson=0.2, clearance="0 mm", gain=found.gain
    )
    assert back.diameter.m_as("mm") == pytest.approx(80)


def shapes_matrices(
    ratio: float, bore: float, poisson: float, nodes: int
) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Ritz by powers of the radius, (r - b)^2 r^j: bending, turning and mass of one wave."""
    points, weights = np.polynomial.legendre.leggauss(60)
    r = ratio + (1 - ratio) * (points + 1) / 2
    area = weights * (1 - ratio) / 2 * r
    bases = [np.polynomial.Chebyshev.basis(j, domain=[ratio, 1]) for j in range(12)]
    square = np.polynomial.Polynomial([ratio**2, -2 * ratio, 1])
    shapes = [square * base.convert(kind=np.polynomial.Polynomial) for base in bases]
    value, slope, bend = (np.array([shape.deriv(k)(r) if k else shape(r) for shape in shapes]) for k in range(3))
    around = slope / r - nodes**2 * value / r**2
    twist = nodes * (slope / r - value / r**2)
    k = (3 + poisson) / 8
    radial = k * (1 + bore**2 - bore**2 / r**2 - r**2)
    hoop = k * (1 + bore**2 + bore**2 / r**2) - (1 + 3 * poisson) / 8 * r**2
    bending = (
        (bend * area) @ bend.T
        + (around * area) @ around.T
        + poisson * ((bend * area) @ around.T + (around * area) @ bend.T)
        + 2 * (1 - poisson) * (twist * area) @ twist.T
    )
    turning = (slope * radial * area) @ slope.T + (value * hoop * nodes**2 / r**2 * area) @ value.T
    return bending, turning, (value * area) @ value.T


def test_frequencies_and_critical_speed_against_polynomials() -> None:
    """A disc of 230 x 1.6 mm by Ritz's method in SciPy, its hole free."""
    ratio, bore, poisson = 76 / 230, 22.2 / 230, 0.2
    found = hw.wheel.thin_wheel(
        diameter="230 mm", flange="76 mm", thickness="1.6 mm", modulus="12 GPa", poisson=poisson,
        density="2400 kg/m3", hole="22.2 mm", speed="6000 rpm",
    )  # fmt: skip
    rigidity = 12e9 * 0.0016**3 / 12 / (1 - poisson**2)
    pace = np.sqrt(rigidity / 2400 / 0.0016) / 0.115**2
    spin = 6000 * np.pi / 30 / pace
    for nodes in range(4):
        bending, turning, mass = shapes_matrices(ratio, bore, poisson, nodes)
        for got, speed in ((found.frequencies, 0.0), (found.turning_frequencies, spin)):
            wanted = np.sqrt(eigh(bending + speed**2 * turning, mass, eigvals_only=True)[0])
            assert got[nodes].m_as("Hz") == pytest.approx(wanted * pace / 2 / np.pi, rel=3e-4)

    def lags(speed: float, nodes: int) -> float:
        bending, turning, mass = shapes_matrices(ratio, bore, poisson, nodes)
        return float(eigh(bending + speed**2 * turning, mass, eigvals_only=True)[0] - (nodes * speed) ** 2)

    standing = [brentq(lags, 0.1, 60, args=(nodes,)) for nodes in range(2, 9)]
    assert found.critical.nodes == 2 + int(np.argmin(standing))
    assert found.critical.speed.m_as("rad/s") == pytest.approx(min(standing) * pace, rel=3e-4)
    assert found.critical.least < found.critical.speed < found.critical.greatest
    assert found.critical.reached and "no limit" in found.critical.note


def test_a_stabiliser_against_numbers_along_its_radius() -> None:
    """Sag of the disc by solving the plate's equation with SciPy's boundary values, region by region."""
    hole, pressed, held, rim, h, force = 0.01, 0.0225, 0.0385, 0.04, 0.005, 6000.0
    modulus, poisson = 206e9, 0.3
    rigidity = modulus * h**3 / 12 / (1 - poisson**2)

    # Slope s and moment m over D by the differences of r s' + s - s / r = Q r / D, fine enough for 1e-5.
    r = np.linspace(hole, rim, 6001)
    step = r[1] - r[0]
    shear = np.where((r > pressed) & (r < held), force / (2 * np.pi * r) / rigidity, 0.0)
    matrix = np.zeros((3, len(r)))
    matrix[0, 2:] = 1 / step**2 + 1 / (2 * step * r[1:-1])
    matrix[1, 1:-1] = -2 / step**2 - 1 / r[1:-1] ** 2
    matrix[2, :-2] = 1 / step**2 - 1 / (2 * step * r[1:-1])
    # A free edge: s' + nu s / r = 0, with a point outside that the equation itself does away with.
    for edge, near, sign in ((0, 1, -1.0), (-1, -2, 1.0)):
        beyond = -2 * step * poisson / r[edge]
        matrix[1, edge] = -2 / step**2 - 1 / r[edge] ** 2 + (1 / step**2) * sign * beyond
        matrix[1, edge] += beyond / (2 * step * r[edge])
        matrix[0 if edge == 0 else 2, near] = 2 / step**2
    from scipy.linalg import solve_banded

    slope = solve_banded((1, 1), matrix, shear)
    inside = r <= held
    sag = abs(np.trapezoid(slope[inside], r[inside]))
    found = hw.wheel.stabilisers(
        diameter="125 mm", flange="50 mm", thickness="1 mm", poisson=0.2, clearance="2 mm", stabiliser="80 mm",
        disc_thickness="5 mm", disc_hole="20 mm", disc_modulus="206 GPa", disc_poisson=0.3, land="3 mm",
        pressed_at="45 mm", nut_force="6 kN", relief="0.2 mm",
    )  # fmt: skip
    shear_part = 1 + 0.25 * (h / (held - pressed)) ** 2
    assert found.disc.sag.m_as("m") == pytest.approx(sag * shear_part, rel=2e-3)
    assert found.disc.bears_at_rim
    assert found.disc.land_pressure.m_as("MPa") == pytest.approx(6000 / (np.pi * (40**2 - 37**2)))


def test_the_steps_end_in_the_result() -> None:
    found = hw.wheel.thin_wheel(
        diameter="230 mm", flange="76 mm", thickness="1.6 mm", modulus="12 GPa", poisson=0.2,
        flexural_strength="25 MPa", strength_factor=3,
    )  # fmt: skip
    assert found.working().steps[-1].result == found.allowed_side_load.m_as("N")
    assert found.critical is None and found.frequencies is None
    assert found.small is False or found.deflection.m_as("mm") < 0.8


WHEEL = {
    "diameter": "125 mm",
    "flange": "50 mm",
    "thickness": "1 mm",
    "modulus": "12 GPa",
    "poisson": 0.2,
}
PAIR = {
    "diameter": "125 mm",
    "flange": "50 mm",
    "thickness": "1 mm",
    "poisson": 0.2,
    "clearance": "2 mm",
}


@pytest.mark.parametrize(
    ("change", "error", "says"),
    [
        ({"flange": "130 mm"}, hw.OutOfRangeError, "`flange` is 130 mm, not below the wheel's 125 mm"),
        ({"thickness": "6 mm"}, hw.OutOfRangeError, "`thickness` is 6 mm, above a tenth of what stands out of `flange`, 3.75 mm"),
        ({"density": "2400 kg/m3"}, hw.MissingError, "`hole` is missing"),
        ({"flexural_strength": "25 MPa"}, hw.MissingError, "`strength_factor` is missing"),
        ({"speed": "6000 rpm"}, hw.MissingError, "`density` is missing"),
        ({"diameter": "125"}, hw.UnitError, "without a unit"),
    ],
)
def test_what_a_thin_wheel_refuses(change: dict[str, str], error: type[Exception], says: str) -> None:
    with pytest.raises(error, match=says) as caught:
        hw.wheel.thin_wheel(**(WHEEL | change))  # type: ignore[arg-type]
    assert "hint:" in str(caught.value)


@pytest.mark.parametrize(
    ("change", "error", "says"),
    [
        ({}, hw.MissingError, "`stabiliser` is missing"),
        ({"stabiliser": "80 mm", "gain": 3}, hw.UnitError, "each follows from the other"),
        ({"stabiliser": "40 mm"}, hw.OutOfRangeError, "below the flange's 50 mm"),
        ({"gain": 1e6}, hw.OutOfRangeError, "`gain` is 1000000, outside 1 to"),
        ({"stabiliser": "80 mm", "relief": "0.2 mm"}, hw.MissingError, "`disc_thickness` is missing"),
        ({"stabiliser": "80 mm", "land": "3 mm"}, hw.MissingError, "`disc_thickness` is missing"),
    ],
)
def test_what_stabilisers_refuse(change: dict[str, str | int], error: type[Exception], says: str) -> None:
    with pytest.raises(error, match=says) as caught:
        hw.wheel.stabilisers(**(PAIR | change))  # type: ignore[arg-type]
    assert "hint:" in str(caught.value)


def test_a_stabiliser_disc_is_pressed_by_its_flange_and_is_no_block() -> None:
    given = {
        "diameter": "125 mm", "flange": "50 mm", "thickness": "1 mm", "poisson": 0.2, "clearance": "2 mm",
        "stabiliser": "80 mm", "disc_thickness": "3 mm", "disc_hole": "20 mm", "disc_modulus": "206 GPa",
        "disc_poisson": 0.3, "land": "5 mm", "pressed_at": "50 mm", "nut_force": "6 kN", "relief": "0.3 mm",
    }  # fmt: skip
    assert hw.wheel.stabilisers(**given).disc is not None
    with pytest.raises(hw.OutOfRangeError, match="pressed_at.*above the flange's 50"):
        hw.wheel.stabilisers(**{**given, "pressed_at": "65 mm"})
    # (80 - 5 - 50) / 2 = 12.5 mm of span.
    with pytest.raises(hw.OutOfRangeError, match="disc_thickness.*7.5 mm"):
        hw.wheel.stabilisers(**{**given, "disc_thickness": "8 mm"})
    nothing = hw.wheel.stabilisers(**{**given, "clearance": "30 mm"})
    assert "NOTHING LEFT TO CUT WITH" in repr(nothing)


def test_a_density_in_another_unit_is_told() -> None:
    sizes = {"diameter": "230 mm", "flange": "76 mm", "thickness": "1.6 mm", "modulus": "12 GPa", "poisson": 0.2}
    with pytest.raises(hw.OutOfRangeError, match="density.*200 to 30000"):
        hw.wheel.thin_wheel(**sizes, density="2.4 kg/m3", hole="22 mm")
    with pytest.raises(hw.OutOfRangeError, match="density.*200 to 30000"):
        hw.Wheel(density="2.4 kg/m3")
    load = hw.wheel.thin_wheel(**sizes, flexural_strength="25 MPa", strength_factor=6)
    # A sixth of the reference case of 9.4328 N, never rounded up.
    assert "1.572 N allowed" in repr(load)
