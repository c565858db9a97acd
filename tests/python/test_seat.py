"""Seats on tapers: against SciPy's least squares, against elements of scikit-fem, and with bad input."""

import numpy as np
import pint
import pytest
from scipy.optimize import nnls
from skfem import Basis, BilinearForm, ElementQuad2, ElementVector, FacetBasis, LinearForm, MeshQuad, condense, solve

import hubwright as hw
from hubwright import joint

ureg = pint.get_application_registry()


def plain(friction: float = 0.12, **more: object) -> joint.SeatFound:
    """A steel hub of 48 mm on a taper 1:5 from 28 mm, 35 mm long."""
    figures: dict[str, object] = {
        "hub": "steel", "spindle": "steel", "small_diameter": "28 mm", "taper": 1 / 5, "length": "35 mm",
        "hub_diameter": "48 mm", "nut_diameter": "48 mm", "friction": friction,
        "overhang_small": "15 mm", "overhang_large": "30 mm",
    }  # fmt: skip
    return joint.seat(**{**figures, **more})  # type: ignore[arg-type]


def areas(seat: joint.SeatFound) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Area of each segment, its mean reach along the generator from the small end, and the whole generator."""
    slope, small = 0.1, 0.014
    ends = np.array([[end.m_as("m") for end in both] for both in seat.segments])
    cosine = 1 / np.hypot(1, slope)
    # ∫ 2πR ds and ∫ 2πR s ds of a straight generator, exactly.
    area = 2 * np.pi / cosine * (small * np.diff(ends) + slope / 2 * np.diff(ends**2))
    moment = 2 * np.pi / cosine**2 * (small / 2 * np.diff(ends**2) + slope / 3 * np.diff(ends**3))
    return area[:, 0], (moment / area)[:, 0], ends


@pytest.mark.parametrize("minutes", [-4.0, -1.0, 2.0, 5.0])
@pytest.mark.parametrize("force", [500.0, 4000.0, 30000.0])
def test_without_friction_contact_is_a_quadratic_programme(minutes: float, force: float) -> None:
    """Least work under a force: `min ½ p·A C p + p·A g0` with p >= 0, as non-negative least squares."""
    seat = plain(friction=1e-12)  # a friction of nothing is refused
    normal, _ = (np.array(matrix) for matrix in seat.compliances())
    area, reach, _ = areas(seat)
    cosine = 1 / np.hypot(1, 0.1)
    whole = 0.035 / cosine
    tangent = np.tan(np.deg2rad(abs(minutes) / 60))
    gap = tangent * (reach if minutes > 0 else whole - reach)
    found = seat.push(ureg.Quantity(force, "N"), ureg.Quantity(minutes, "arcmin"))
    # At the draw-up found the approach is known, and the pressures follow without the force.
    approach = found.draw_up.m_as("m") * np.sin(np.arctan(0.1))
    work = area[:, None] * normal
    work = (work + work.T) / 2
    scale = np.sqrt(np.diag(work))
    root = np.linalg.cholesky(work / np.outer(scale, scale)).T
    right = np.linalg.solve(root.T, area * (approach - gap) / scale)
    pressure = nnls(root, right)[0] / scale
    ours = np.array([row[2].m_as("Pa") for row in found.along()])
    assert np.abs(ours - pressure).max() < 1e-7 * ours.max()
    # And those pressures are the force.
    sine = np.sin(np.arctan(0.1))
    assert pressure @ area * sine == pytest.approx(force, rel=1e-8)


def test_a_state_with_friction_is_held_by_trial_and_error() -> None:
    """Segments that pull are dropped and those that overlap taken on, until none is left of either."""
    seat = plain(friction=0.3)
    normal, along = (np.array(matrix) for matrix in seat.compliances())
    compliance = normal - 0.3 * along
    area, reach, _ = areas(seat)
    sine, cosine = 0.1 / np.hypot(1, 0.1), 1 / np.hypot(1, 0.1)
    for minutes, force in [(3.0, 2000.0), (-3.0, 9000.0), (0.4, 9000.0), (-12.0, 700.0)]:
        whole = 0.035 / cosine
        gap = np.tan(np.deg2rad(abs(minutes) / 60)) * (reach if minutes > 0 else whole - reach)
        touching = np.ones(len(area), bool)
        for _ in range(60):
            on = np.flatnonzero(touching)
            system = np.zeros((len(on) + 1, len(on) + 1))
            system[:-1, :-1] = compliance[np.ix_(on, on)] * 1e12
            system[:-1, -1] = -1
            system[-1, :-1] = area[on] * (sine + 0.3 * cosine) * 1e6
            solved = np.linalg.solve(system, np.append(-gap[on] * 1e6, force))
            pressure = np.zeros(len(area))
            pressure[on] = solved[:-1] * 1e6
            left = gap - solved[-1] / 1e6 + compliance @ pressure
            now = np.where(touching, pressure >= 0, left < -1e-13)
            if (now == touching).all():
                break
            touching = now
        else:
            pytest.fail("no state holds")
        ours = np.array([row[2].m_as("Pa") for row in seat.push(f"{force} N", f"{minutes} arcmin").along()])
        assert np.abs(ours - pressure).max() < 1e-6 * pressure.max(), (minutes, force)


@BilinearForm
def round_stiffness(u, v, w):  # type: ignore[no-untyped-def]
    """Virtual work round the axis; x runs along it, y out from it. Steel."""
    young, nu = 206e9, 0.3
    shear = young / (2 * (1 + nu))
    lam = young * nu / ((1 + nu) * (1 - 2 * nu))
    radius = w.x[1]

    def strains(d):  # type: ignore[no-untyped-def]
        return d.grad[0][0], d.grad[1][1], d[1] / radius, d.grad[0][1] + d.grad[1][0]

    a, b = strains(u), strains(v)
    swell = a[0] + a[1] + a[2]
    normal = sum((lam * swell + 2 * shear * a[i]) * b[i] for i in range(3))
    return 2 * np.pi * radius * (normal + shear * a[3] * b[3])


def test_a_matched_seat_is_drawn_up_as_scikit_fem_has_it() -> None:
    """A hub and a spindle of scikit-fem's elements, pressed by the pressures found: the gap closes evenly.

    Where the angles agree, the advance less what both bodies give along the normal must be the same on the
    whole seat, since no gap is left anywhere.
    """
    seat = plain()
    pushed = seat.push("20 kN", "0 arcmin")
    rows = pushed.along()
    slope, small, length = 0.1, 0.014, 0.035
    sine, cosine = slope / np.hypot(1, slope), 1 / np.hypot(1, slope)
    place = np.array([row[0].m_as("m") for row in rows])
    half = np.array([row[1].m_as("m") for row in rows]) / 2
    pressures = np.array([row[2].m_as("Pa") for row in rows])
    edges = np.append(place - half, length)

    def pressure(x):  # type: ignore[no-untyped-def]
        """Constant on each segment, as the model has it."""
        return pressures[np.clip(np.searchsorted(edges, x, side="right") - 1, 0, len(pressures) - 1)]

    def body(outer, inner, x_edges, layers):  # type: ignore[no-untyped-def]
        mesh = MeshQuad.init_tensor(x_edges, np.linspace(0, 1, layers + 1))
        x, z = mesh.p
        points = np.vstack([x, inner(x) + (outer(x) - inner(x)) * (1 - (1 - z) ** 1.5)])
        return MeshQuad(points, mesh.t)

    def radius(x):  # type: ignore[no-untyped-def]
        return small + slope * np.clip(x, 0, length)

    def normal_gap(mesh, on_seat, face, sign):  # type: ignore[no-untyped-def]
        """Mean displacement along the normal on each segment, the loaded face held in the mean."""
        basis = Basis(mesh, ElementVector(ElementQuad2()), intorder=5)
        stiff = round_stiffness.assemble(basis)
        facets = FacetBasis(mesh, ElementVector(ElementQuad2()), facets=mesh.facets_satisfying(on_seat), intorder=7)
        pull = sign * np.array([-(sine + 0.12 * cosine), cosine - 0.12 * sine])

        @LinearForm
        def load(v, w):  # type: ignore[no-untyped-def]
            return 2 * np.pi * w.x[1] * pressure(w.x[0]) * (pull[0] * v[0] + pull[1] * v[1])

        facing = FacetBasis(mesh, ElementVector(ElementQuad2()), facets=mesh.facets_satisfying(face), intorder=5)

        @LinearForm
        def push(v, w):  # type: ignore[no-untyped-def]
            return 2 * np.pi * w.x[1] * v[0]

        force, spread = load.assemble(facets), push.assemble(facing)
        along = np.zeros(basis.N)
        along[basis.nodal_dofs[0]] = along[basis.facet_dofs[0]] = along[basis.interior_dofs[0]] = 1
        force = force - spread * (along @ force) / (along @ spread)
        fixed = basis.nodal_dofs[0][:1]  # any one holds it; the mean is taken off below
        on_axis = np.concatenate([basis.nodal_dofs[1][mesh.p[1] < 1e-12], basis.facet_dofs[1][np.isin(np.arange(mesh.facets.shape[1]), mesh.facets_satisfying(lambda x: x[1] < 1e-12))]])
        moved = solve(*condense(stiff, force, D=np.concatenate([fixed, on_axis])))
        moved = moved - along * (spread @ moved) / (spread @ along)

        means = []
        for low, high in zip(edges[:-1], edges[1:], strict=True):

            @LinearForm
            def mean(v, w, low=low, high=high):  # type: ignore[no-untyped-def]
                inside = (w.x[0] >= low) & (w.x[0] < high)
                return 2 * np.pi * w.x[1] * inside * (-sine * v[0] + cosine * v[1])

            weights = mean.assemble(facets)
            area = 2 * np.pi * (small + slope * (low + high) / 2) * (high - low) / cosine
            means.append(weights @ moved / area)
        return np.array(means)

    hub_edges = edges
    hub = body(lambda x: np.full_like(x, 0.024), radius, hub_edges, 8)
    spindle_edges = np.concatenate([np.linspace(-0.015, 0, 17)[:-1], edges, length + np.linspace(0, 0.03, 25)[1:]])
    spindle = body(radius, lambda x: np.zeros_like(x), spindle_edges, 10)
    near = 1e-9
    bore = normal_gap(hub, lambda x: np.abs(x[1] - radius(x[0])) < near, lambda x: np.abs(x[0]) < near, 1.0)
    surface = normal_gap(
        spindle,
        lambda x: (np.abs(x[1] - radius(x[0])) < near) & (x[0] > 0) & (x[0] < length),
        lambda x: np.abs(x[0] + 0.015) < near,
        -1.0,
    )
    approach = pushed.draw_up.m_as("m") * sine
    left = (bore - surface) - approach
    # The meshes differ: what is left of the gap is small beside the approach, most so away from the ends.
    assert np.abs(left).max() < 0.02 * approach
    assert np.abs(left[4:-4]).max() < 0.005 * approach


def test_a_column_is_its_rows() -> None:
    seat = plain()
    forces, angles = np.array([500.0, 8000.0, -1.0]), np.array([-3.0, 2.0, 1.0])
    found = seat.push_column(forces, angles, units={"force": "N", "mismatch": "arcmin"})
    for row in range(2):
        one = seat.push(f"{forces[row]} N", f"{angles[row]} arcmin")
        assert found["carries"][row] == one.carries
        assert found["contact"][row] == one.contact
        assert found["slip_torque"][row] == one.slip_torque
        assert found["end_pressure"][row] == one.end_pressure
        assert found["force_for_95"][row] == one.force_for_95
    assert found["carries"][2] == "" and np.isnan(found["contact"][2])
    with pytest.raises(hw.TableError, match="rows"):
        seat.push_column(forces, angles[:2], units={"force": "N", "mismatch": "arcmin"})
    with pytest.raises(hw.UnitError, match="mismatch"):
        seat.push_column(forces, angles, units={"force": "N"})


def test_a_seat_answers_in_pint_and_words() -> None:
    pushed = plain(hub_yield="350 MPa").push("8 kN", "-3 arcmin")
    assert pushed.carries is hw.Carries.LARGE_END
    assert pushed.slip_torque.check("[force] * [length]")
    assert pushed.draw_up.check("[length]") and pushed.mismatch.to("arcmin").m == pytest.approx(-3)
    assert pushed.stays_elastic is True and pushed.spindle_factor is None
    assert "a nut cannot cure an angle" in str(pushed)
    assert "μ Σ p ∫R dA" in str(pushed.working())
    tolerance = plain().angle_tolerance("8 kN", 0.75)
    assert plain().push("8 kN", -tolerance.closed_by).contact == pytest.approx(0.75, abs=0.01)


def test_a_print_is_read_back() -> None:
    seat = plain()
    read = seat.mismatch_from_print("small end", film="1.5 um", print_length="5.156620011 mm")
    assert read.mismatch.to("arcmin").m == pytest.approx(1, rel=1e-6)
    made = seat.expected_print("-2 arcmin", film="2 um", force="300 N")
    back = seat.mismatch_from_print(made.begins_at, film="2 um", print_length=made.length, force="300 N")
    assert back.mismatch.to("arcmin").m == pytest.approx(-2, rel=1e-9)
    assert back.elastic_length.m_as("mm") > 0
    whole = seat.mismatch_from_print("whole length", film="1.5 um")
    assert whole.mismatch is None
    assert whole.bounds[1].m_as("arcsec") == pytest.approx(1.5e-6 / (0.035 * np.hypot(1, 0.1)) * 206264.806, rel=1e-6)
    assert "jaws" in seat.mismatch_from_print(hw.Print.THREE_PATCHES, film="2 um").says
    with pytest.raises(hw.MissingError, match="print_length"):
        seat.mismatch_from_print("small end", film="2 um")
    with pytest.raises(hw.TextError, match="three patches"):
        seat.mismatch_from_print("blotchy", film="2 um")


def test_a_seat_is_drawn() -> None:
    svg = plain().drawing("8 kN", "-3 arcmin", "2 um")
    assert svg.startswith("<svg") and "large end carries" in svg


@pytest.mark.parametrize(
    ("figure", "says"),
    [
        ({"length": "-25 mm"}, "`length` is -25 mm, not above 0"),
        ({"hub_diameter": "35.5 mm"}, "thinner than a shell"),
        ({"friction": 0}, "`friction` is 0, not above 0"),
        ({"taper": 5}, "outside 0.001 to 1"),
        ({"nut_diameter": "60 mm"}, "not on the hub's face"),
        ({"steps": [("34.5 mm", "60 mm")]}, r"`steps\[0\].from`"),
        ({"steps": [("12 mm", "60")]}, r"`steps\[0\].diameter` is .*without a unit"),
    ],
)
def test_figures_that_make_no_seat_are_told_by_name(figure: dict[str, object], says: str) -> None:
    with pytest.raises(hw.HubwrightError, match=says):
        plain(**figure)


def test_a_mismatch_beyond_small_angles_is_refused() -> None:
    with pytest.raises(hw.OutOfRangeError, match="`mismatch` is .*outside -0.5 to 0.5"):
        plain().push("8 kN", "40 arcmin")
    with pytest.raises(hw.UnitError, match="mismatch"):
        plain().push("8 kN", 3)


def test_a_mounting_is_judged_by_its_seat() -> None:
    seat = hw.Seat(
        length="40 mm", small_diameter="30 mm", taper=0.1, mismatch="-0.5 arcmin", friction=0.12,
        nut_force="2 kN", nut_diameter="48 mm", hub_diameter="48 mm", step_from="28 mm", step_diameter="90 mm",
        overhang_small="15 mm", overhang_large="30 mm", hub_modulus="206 GPa", hub_poisson=0.3,
        spindle_modulus="206 GPa", spindle_poisson=0.3, hub_yield="300 MPa", yield_factor=1.5, puller="no",
    )  # fmt: skip
    verdict = hw.check(hw.Mounting(seat=seat))
    found = {finding.rule.slug: finding for finding in verdict.findings}
    assert found["seat-fit"].outcome == "caution"
    # On 64 columns of another programme 0.32 of the length carries, in whole segments.
    assert float(found["seat-fit"].found) == pytest.approx(0.3228, abs=0.03)
    assert found["seat-overloaded"].outcome == "pass"
    assert found["taper-sticks"].outcome == "caution"
