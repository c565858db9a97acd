"""Holding a wheel on, as a Python user meets it, against finite elements and statics worked out anew."""

import itertools
import math
import pickle
from typing import Any

import numpy as np
import pint
import pytest
from skfem import Basis, BilinearForm, ElementQuad2, ElementVector, FacetBasis, LinearForm, MeshQuad, asm, condense, solve
from skfem.helpers import grad

import hubwright as hw
from hubwright import wheel

ureg = pint.get_application_registry()

GIVEN: dict[str, Any] = {
    "thread": "M16x2", "thread_friction": 0.14, "face_friction": 0.12, "face_inside": "17 mm", "face_outside": "25 mm",
    "land_inside": "60 mm", "land_outside": "76 mm", "blotter_friction": 0.15, "cutting_torque": "14 N m",
    "preload": "9 kN", "diameter": "200 mm", "hole": "32 mm", "thickness": "20 mm", "density": "2250 kg/m3",
    "speed": "3000 rpm", "stop_time": "0.5 s",
}  # fmt: skip
FLANGE: dict[str, Any] = {
    "flange_hole": "20 mm", "flange_thickness": "8 mm", "flange_modulus": "206 GPa", "flange_poisson": 0.3, "recess": "2 mm",
}  # fmt: skip


def held(**changes: Any) -> wheel.Held:
    given = {key: value for key, value in {**GIVEN, **changes}.items() if value is not None}
    return wheel.holding(**given)


def sag_by_elements(hole: float, load: float, land: float, rim: float, thickness: float) -> float:
    """Sag at the hole, in m, under 9 kN: quadratic quads about the axis, the load and the land as narrow rings."""
    modulus, nu, force, half = 206e9, 0.3, 9000.0 / (2 * math.pi), 0.0005  # force over an angle of one radian
    breaks = [hole, load - half, load + half, land - half, land + half, rim]
    radii = np.unique(np.concatenate([np.linspace(a, b, 9) for a, b in itertools.pairwise(breaks)]))
    mesh = MeshQuad.init_tensor(radii, np.linspace(0, thickness, 9))
    basis = Basis(mesh, ElementVector(ElementQuad2()), intorder=4)
    lame, shear = modulus * nu / (1 + nu) / (1 - 2 * nu), modulus / 2 / (1 + nu)

    @BilinearForm
    def stiffness(u: Any, v: Any, w: Any) -> Any:
        r, du, dv = w.x[0], grad(u), grad(v)
        strains = [(d[0, 0], d[1, 1], one[0] / r, d[0, 1] + d[1, 0]) for d, one in ((du, u), (dv, v))]
        a, b = strains
        volume = (a[0] + a[1] + a[2]) * (b[0] + b[1] + b[2])
        return (lame * volume + 2 * shear * (a[0] * b[0] + a[1] * b[1] + a[2] * b[2]) + shear * a[3] * b[3]) * r

    @LinearForm
    def push(v: Any, w: Any) -> Any:
        return v[1] * w.x[0]

    top = mesh.facets_satisfying(lambda x: np.isclose(x[1], thickness) & (abs(x[0] - load) < half))
    below = mesh.facets_satisfying(lambda x: np.isclose(x[1], 0) & (abs(x[0] - land) < half))
    pushed = asm(push, FacetBasis(mesh, basis.elem, facets=top))
    bears = asm(push, FacetBasis(mesh, basis.elem, facets=below))
    matrix = asm(stiffness, basis).tolil()
    # An even pressure on the land; one node holds the ring axially, and the land's mean sinking is taken off after.
    load_vector = -force / pushed.sum() * pushed + force / bears.sum() * bears
    fixed = basis.nodal_dofs[1, np.argmin(abs(mesh.p[0] - rim) + abs(mesh.p[1]))]
    found = solve(*condense(matrix.tocsr(), load_vector, D=np.array([fixed])))
    corner = basis.nodal_dofs[1, np.argmin(abs(mesh.p[0] - hole) + abs(mesh.p[1] - thickness / 2))]
    return float(bears @ found / bears.sum() - found[corner])


@pytest.mark.parametrize(
    ("hole", "load", "land", "rim", "thickness"),
    [(10, 13.5, 34, 38, 4), (10, 13.5, 34, 38, 8), (10, 13.5, 34, 38, 12), (16, 22, 50, 56, 10), (21, 25, 36, 40, 5)],
)
def test_a_flange_sags_as_finite_elements_say(hole: float, load: float, land: float, rim: float, thickness: float) -> None:
    found = held(
        face_inside=2 * (load - 2) * ureg.mm, face_outside=2 * (load + 2) * ureg.mm,
        land_inside=2 * (2 * land - rim) * ureg.mm, land_outside=2 * rim * ureg.mm,
        **{**FLANGE, "flange_hole": 2 * hole * ureg.mm, "flange_thickness": thickness * ureg.mm},
    ).dish  # fmt: skip
    assert found is not None
    by_elements = sag_by_elements(*(size / 1e3 for size in (hole, load, land, rim, thickness)))
    # The thin plate alone is low; with what shear adds it comes near, a little high on a narrow ring, on the safe side.
    assert found.thin_sag.m_as("m") < by_elements
    assert -0.025 < found.sag.m_as("m") / by_elements - 1 < 0.045


def test_the_torque_path_comes_out_by_statics() -> None:
    found = held(loose_share=0.5)
    # A ring of friction summed up in slices.
    r = np.linspace(0.030, 0.038, 20001)
    mid = (r[1:] + r[:-1]) / 2
    area = math.pi * (0.038**2 - 0.030**2)
    face = float(np.sum(0.15 * 9000 / area * 2 * math.pi * mid**2 * np.diff(r)))
    assert found.carries_face[0].m_as("N*m") == pytest.approx(face, rel=1e-8)
    # A screw as vectors: friction on a flank whose normal leans by 30 degrees, exactly; it differs by 3e-4.
    rise, flank = math.atan(2 / (math.pi * joint_pitch()[0])), math.radians(30)
    axial, tangential = np.array([0, 0, 1.0]), np.array([0, math.cos(rise), math.sin(rise)])
    normal = np.cross(np.array([math.cos(flank), 0, math.sin(flank)]), tangential)
    normal /= np.linalg.norm(normal)
    normal *= math.copysign(1, normal[2])
    # Turned back: friction acts along the helix, against the sliding down it.
    reaction = normal + 0.14 * tangential
    release = 9000 * joint_pitch()[0] / 2e3 * float(reaction[1] / (reaction @ axial))
    assert found.release[0].m_as("N*m") == pytest.approx(release, rel=5e-4)
    assert found.carries_tightening[0].m_as("N*m") == pytest.approx(face + 0.12 * 9000 * 0.0105, rel=1e-8)
    assert found.carries_loosening[0].m_as("N*m") == pytest.approx(face + found.release[0].m_as("N*m"), rel=1e-8)
    assert found.working().steps[-1].result == found.carries_loosening[0].m_as("N*m")


def joint_pitch() -> tuple[float]:
    return (hw.joint.thread("M16x2").pitch_diameter.m_as("mm"),)


def test_both_hands_and_both_directions() -> None:
    for thread, rotation, running in [
        ("M16x2", "anticlockwise", "tightens"), ("M16x2", "clockwise", "loosens"),
        ("M16x2-LH", "anticlockwise", "loosens"), ("M16x2-LH", "clockwise", "tightens"),
    ]:  # fmt: skip
        (one,) = held(thread=thread, rotation=rotation).unscrewing
        assert one.running == running
        demand = 14 if running == "loosens" else held().inertia[1].m_as("N*m")
        assert one.demand.m_as("N*m") == pytest.approx(demand)
    assert [one.running for one in held(rotation="both").unscrewing] == ["tightens", "loosens"]
    # A gentle cut and a hard stop: braking turns the nut back that running tightens.
    hard = held(stop_time="0.1 s", rotation="anticlockwise")
    assert hard.unscrewing[0].turns == hw.words.Answer.YES
    assert held(face_friction=0.03, rotation="anticlockwise", stop_time="0.1 s").unscrewing[0].turns == "no"


def test_friction_is_a_range_and_so_is_the_answer() -> None:
    rough = held(preload=None, torque="25 N m", thread_friction=(0.08, 0.16), face_friction=(0.08, 0.16))
    for least, greatest in (rough.preload, rough.release, rough.nut_slips, rough.land_pressure):
        assert least.magnitude < 0.75 * greatest.magnitude
    assert rough.takes_along == "perhaps" or rough.takes_along == "yes"
    rng = np.random.default_rng(7)
    for thread, face in rng.uniform(0.08, 0.16, (20, 2)):
        point = held(preload=None, torque="25 N m", thread_friction=thread, face_friction=face)
        for name in ("preload", "release", "nut_slips", "carries_loosening"):
            low, high = (side.magnitude for side in getattr(rough, name))
            assert low * (1 - 1e-12) <= getattr(point, name)[0].magnitude <= high * (1 + 1e-12)


def test_why_unkeyed_comes_loose_and_keyed_does_not_is_said() -> None:
    found = held(nut_mass="45 g", nut_outside="24 mm")
    tongue = wheel.Piece("tongue", diameter="17 mm", width="4 mm", thickness="2 mm", depth="1.5 mm", reach=("10 mm", "60 mm"))
    nothing, keyed, other = wheel.compare_holding(
        found, [wheel.Piece("nothing"), tongue, wheel.Piece("other hand of thread")], stacks=("20 mm", "40 mm")
    )
    assert keyed.turns == "no" and keyed.over_all_stacks and keyed.at_nut is not None
    assert keyed.at_nut[1].m_as("N*m") < 0.01
    assert found.keyed_margin is not None and found.keyed_margin > 1000
    assert "walk" in nothing.says or "turn the nut back" in nothing.says
    assert nothing.at_nut is not None and nothing.at_nut[1].m_as("N*m") > 100 * keyed.at_nut[1].m_as("N*m")
    assert other.way == hw.words.NutLock.OTHER_HAND_OF_THREAD
    assert any("common practice, no source" in sentence for sentence in found.says)
    assert any("walks" in sentence for sentence in found.says)
    assert "svg" in found.svg() and "takes the nut along" in found.svg()
    assert tongue.stress("6 N m")[0].m_as("MPa") == pytest.approx(88.23529412)  # type: ignore[union-attr]
    assert pickle.loads(pickle.dumps(nothing.turns)) == nothing.turns


def test_margins_of_the_land_go_both_ways() -> None:
    found = held(factor=1.5, pressure_limit="8 MPa")
    assert found.within_pressure and found.pressure_asked is not None
    keyed, unkeyed = found.pressure_asked
    assert keyed.m_as("MPa") < found.land_pressure[0].m_as("MPa")
    assert unkeyed.m_as("MPa") == pytest.approx(2 * keyed.m_as("MPa"))
    assert held(pressure_limit="5 MPa").within_pressure is False
    assert held().within_pressure is None


@pytest.mark.parametrize(
    ("changes", "error", "names"),
    [
        ({"preload": None}, hw.MissingError, "torque"),
        ({"torque": "20 N m"}, hw.UnitError, "preload"),
        ({"thread_friction": (0.2, 0.1)}, hw.OutOfRangeError, "thread_friction"),
        ({"face_friction": "much"}, hw.TextError, "face_friction"),
        ({"face_inside": "30 mm"}, hw.OutOfRangeError, "face_inside"),
        ({"land_inside": "80 mm"}, hw.OutOfRangeError, "land_inside"),
        ({"blotter_friction": 0}, hw.OutOfRangeError, "blotter_friction"),
        ({"speed": None}, hw.MissingError, "speed"),
        ({"density": None}, hw.MissingError, "density"),
        ({"stop_time": "0 s"}, hw.OutOfRangeError, "stop_time"),
        ({"stop_time": "3 m"}, hw.TextError, "stop_time"),
        ({"flange_hole": "20 mm"}, hw.MissingError, "flange_thickness"),
        ({**FLANGE, "flange_hole": "40 mm"}, hw.OutOfRangeError, "flange_hole"),
        ({"nut_mass": "45 g"}, hw.MissingError, "nut_outside"),
        ({"loose_share": 2}, hw.OutOfRangeError, "loose_share"),
        ({"rotation": "left"}, hw.TextError, "rotation"),
    ],
)
def test_what_makes_no_sense_is_told(changes: dict[str, Any], error: type[Exception], names: str) -> None:
    with pytest.raises(error, match=f"`{names}`") as caught:
        held(**changes)
    assert "hint: " in str(caught.value)


def test_what_was_not_given_is_never_a_no() -> None:
    given = {
        "thread": "M16x2", "thread_friction": 0.14, "face_friction": 0.12, "face_inside": "17 mm", "face_outside": "25 mm",
        "land_inside": "60 mm", "land_outside": "76 mm", "blotter_friction": (0.15, 0.3), "cutting_torque": "1 N m",
        "preload": "9 kN", "rotation": "anticlockwise", "diameter": "200 mm", "thickness": "20 mm", "density": "2250 kg/m3",
        "speed": "3000 rpm",
    }  # fmt: skip
    # Running tightens: braking is what loosens.
    known = hw.wheel.holding(**given, stop_time="0.5 s").unscrewing[0]
    assert known.turns == "no"
    found = hw.wheel.holding(**given, run_up_time="0.5 s")
    assert found.unscrewing[0].turns == "perhaps"
    assert "how hard it is braked was not given" in found.says[1]
    loosened = hw.wheel.holding(**{**given, "rotation": "clockwise"}, stop_time="0.5 s")
    assert loosened.unscrewing[0].turns == "perhaps"
    assert "how fast it is run up was not given" in loosened.says[1]


def test_a_nut_is_asked_by_the_harder_of_start_and_stop() -> None:
    given = {
        "thread": "M16x2", "thread_friction": 0.14, "face_friction": 0.12, "face_inside": "17 mm", "face_outside": "25 mm",
        "land_inside": "60 mm", "land_outside": "76 mm", "blotter_friction": 0.15, "cutting_torque": "1 N m",
        "preload": "9 kN", "diameter": "200 mm", "thickness": "20 mm", "density": "2250 kg/m3", "speed": "3000 rpm",
        "nut_mass": "0.05 kg", "nut_outside": "26 mm",
    }  # fmt: skip
    both = hw.wheel.holding(**given, run_up_time="0.1 s", stop_time="3 s").keyed_margin
    one = hw.wheel.holding(**given, stop_time="0.1 s").keyed_margin
    assert both == one
    with pytest.raises(hw.OutOfRangeError, match="nut_outside"):
        hw.wheel.holding(**{**given, "nut_outside": "14 mm"}, stop_time="3 s")
