"""Thin wheels beside SciPy: the same series and the same elements, in one run.

`python benches/thin.py` with hubwright built for release, NumPy and SciPy. Exit code 1 where they disagree.
"""

import sys
import time
from collections.abc import Callable

import hubwright as hw
import numpy as np
from scipy.linalg import eigh, solve

WHEELS = [(230.0, flange, 1.6, 22.2) for flange in (60.0, 76.0, 100.0, 125.0, 150.0)]
MODULUS, POISSON, DENSITY = 12e9, 0.2, 2400.0
ELEMENTS = 8
LAST = 24
RUNS = 5


def shape(power: float, log: bool, scale: float, r: float) -> list[float]:
    """r^power, or r^power ln r, and its first three derivatives."""
    falling = [1.0, power, power * (power - 1), power * (power - 1) * (power - 2)]
    if not log:
        return [scale * falling[k] * r ** (power - k) for k in range(4)]
    out, tail = [], 0.0
    for k in range(4):
        out.append(r ** (power - k) * (falling[k] * np.log(r) + tail))
        tail = (power - k) * tail + falling[k]
    return out


def statics(ratio: float) -> tuple[float, float]:
    """Deflection and moment by the series of waves, each from four equations."""
    waves = max(24, int(np.ceil(10 / (1 - ratio))))
    deflection = at_clamp = term = 0.0
    for n in range(waves + 1):
        if n == 0:
            kinds = [(0, False, 1.0), (2, False, 1.0), (0, True, 1.0), (2, True, 1.0)]
        elif n == 1:
            kinds = [(1, False, 1.0), (3, False, 1.0), (-1, False, 1.0), (1, True, 1.0)]
        else:
            kinds = [(n, False, 1.0), (n + 2, False, 1.0), (-n, False, ratio**n), (2 - n, False, ratio ** (n - 2))]
        clamp, rim = (np.array([shape(*kind, r) for kind in kinds]).T for r in (ratio, 1.0))
        rows = np.array([clamp[0], clamp[1], rim[2] + POISSON * (rim[1] - n * n * rim[0]), rim[0]])
        size = np.abs(rows).max(axis=1)
        found = solve(rows / size[:, None], np.array([0.0, 0.0, 0.0, 1.0]) / size)
        w = rim @ found
        shear = w[3] + w[2] - w[1] - n * n * (w[1] - 2 * w[0]) - (1 - POISSON) * n * n * (w[1] - w[0])
        term = 1 / abs(shear) / (2 * np.pi if n == 0 else np.pi)
        deflection += term
        at_clamp += term * abs(clamp[2] @ found)
    return deflection + term * (waves - 1) / 2, at_clamp


GAUSS, WEIGHTS = (array / 2 + shift for array, shift in zip(np.polynomial.legendre.leggauss(6), (0.5, 0.0), strict=True))


def stress(r: np.ndarray, ratio: float, bore: float | None) -> tuple[np.ndarray, np.ndarray]:
    """Radial and hoop stress of rotation; held at the clamp where there is no bore."""
    k, hoop = (3 + POISSON) / 8, (1 + 3 * POISSON) / 8
    if bore is None:
        square = ratio**2
        even = ((1 - POISSON**2) * square / 8 + k * (1 + POISSON) / square) / (
            (1 - POISSON) + (1 + POISSON) / square
        )
        odd = k - even
    else:
        odd = -k * bore**2
    return k - odd + odd / r**2 - k * r**2, k - odd - odd / r**2 - hoop * r**2


def matrices(ratio: float, nodes: int, bore: float | None) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Bending, turning and mass by cubic elements."""
    radius = ratio ** (1 - np.arange(ELEMENTS + 1) / ELEMENTS)
    out = np.zeros((3, 2 * ELEMENTS + 2, 2 * ELEMENTS + 2))
    s = GAUSS
    for element in range(ELEMENTS):
        long = radius[element + 1] - radius[element]
        r = radius[element] + s * long
        area = WEIGHTS * long * r
        value = np.array([1 + s * s * (2 * s - 3), long * s * (1 - s) ** 2, s * s * (3 - 2 * s), long * s * s * (s - 1)])
        slope = np.array([6 * s * (s - 1) / long, 1 + s * (3 * s - 4), 6 * s * (1 - s) / long, s * (3 * s - 2)])
        bend = np.array([(12 * s - 6) / long**2, (6 * s - 4) / long, (6 - 12 * s) / long**2, (6 * s - 2) / long])
        around, twist = slope / r - nodes**2 * value / r**2, nodes * (slope / r - value / r**2)
        radial, hoop = stress(r, ratio, bore)
        at = slice(2 * element, 2 * element + 4)
        cross = (bend * area) @ around.T
        out[0, at, at] += (bend * area) @ bend.T + (around * area) @ around.T + POISSON * (cross + cross.T)
        out[0, at, at] += 2 * (1 - POISSON) * (twist * area) @ twist.T
        out[1, at, at] += (slope * radial * area) @ slope.T + nodes**2 * (value * hoop * area / r**2) @ value.T
        out[2, at, at] += (value * area) @ value.T
    return tuple(out[:, 2:, 2:])


def vibration(ratio: float, hole: float) -> tuple[list[float], float]:
    """Frequencies of 0 to 3 nodal diameters at rest, and the lowest standing wave with a free hole, of three conditions."""
    frequencies = []
    for nodes in range(4):
        bending, _, mass = matrices(ratio, nodes, hole)
        frequencies.append(float(np.sqrt(eigh(bending, mass, eigvals_only=True, subset_by_index=[0, 0])[0])))
    speeds = []
    for bore in (hole, ratio, None):
        best = np.inf
        for nodes in range(2, LAST + 1):
            bending, turning, mass = matrices(ratio, nodes, bore)
            most = eigh(nodes**2 * mass - turning, bending, eigvals_only=True, subset_by_index=[15, 15])[0]
            best = min(best, 1 / np.sqrt(most)) if most > 0 else best
        speeds.append(float(best))
    return frequencies, speeds[0]


def best(run: Callable[[], object], times: int) -> float:
    """Seconds of one call: the best of several runs."""
    out = []
    for _ in range(RUNS):
        start = time.perf_counter()
        for _ in range(times):
            run()
        out.append((time.perf_counter() - start) / times)
    return min(out)


def main() -> int:
    """Compare, time, report."""
    still = ours_whole = theirs_still = theirs_whole = 0.0
    for diameter, flange, thickness, hole in WHEELS:
        ratio = flange / diameter
        sizes = {
            "diameter": f"{diameter} mm", "flange": f"{flange} mm", "thickness": f"{thickness} mm",
            "modulus": f"{MODULUS} Pa", "poisson": POISSON,
        }  # fmt: skip
        mass = {"density": f"{DENSITY} kg/m3", "hole": f"{hole} mm"}
        found = hw.wheel.thin_wheel(**sizes, **mass)
        kw, km = statics(ratio)
        frequencies, speed = vibration(ratio, hole / diameter)
        a, h = diameter / 2e3, thickness / 1e3
        rigidity = MODULUS * h**3 / 12 / (1 - POISSON**2)
        pace = np.sqrt(rigidity / DENSITY / h) / a**2
        ours = [found.stiffness.m_as("N/m"), found.clamp_moment, found.critical.speed.m_as("rad/s")]
        ours += [f.m_as("Hz") for f in found.frequencies]
        theirs = [rigidity / a**2 / kw, km, speed * pace, *(f * pace / 2 / np.pi for f in frequencies)]
        if not np.allclose(ours, theirs, rtol=1e-7, atol=0):
            print(f"{diameter} in {flange}: hubwright {ours}, SciPy {theirs}")
            return 1
        still += best(lambda sizes=sizes: hw.wheel.thin_wheel(**sizes), 200)
        ours_whole += best(lambda sizes=sizes, mass=mass: hw.wheel.thin_wheel(**sizes, **mass), 20)
        theirs_still += best(lambda ratio=ratio: statics(ratio), 5)
        theirs_whole += best(lambda ratio=ratio, hole=hole, d=diameter: vibration(ratio, hole / d), 1)
    n = len(WHEELS)
    print(
        f"side stiffness: SciPy {theirs_still / n * 1e3:.2f} ms, hubwright {still / n * 1e6:.0f} us: {theirs_still / still:.0f} times"
    )
    # hubwright's whole call holds the statics too.
    print(
        f"frequencies and critical speed: SciPy {theirs_whole / n * 1e3:.1f} ms, hubwright {ours_whole / n * 1e3:.2f} ms "
        f"with the statics: {theirs_whole / ours_whole:.0f} times; {n} wheels agreed within 1e-7"
    )
    return 0


if __name__ == "__main__":
    sys.exit(main())
