"""A seat in NumPy and SciPy by the method of `src/solid/cone`: what its kernel is measured against.

`cargo bench --bench peers -- seat` hands over geometries with hubwright's seconds and answers, and calls
this with the file. The same meshes, elements, loads and conditions are built with arrays, the stiffness is
factored and solved by LAPACK's banded Cholesky, contact is found by an active set of segments. Every answer
is compared.

Exit codes: 0, 1 an answer differs by more than 1e-6 of it.
"""

import json
import sys
import time
from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from scipy.linalg import cho_solve_banded, cholesky_banded

Array = NDArray[np.float64]

RUNS = 5
# Seconds of each factorisation with its solves, hub and spindle in turn.
LAPACK: list[float] = []
GAUSS = np.array([-np.sqrt(0.6), 0.0, np.sqrt(0.6)])
WEIGHTS = np.array([5.0, 8.0, 5.0]) / 9.0


def shape(at: Array) -> Array:
    """The three parabolas of a line's nodes."""
    return np.array([at * (at - 1) / 2, 1 - at * at, at * (at + 1) / 2])


def slope(at: Array) -> Array:
    return np.array([at - 0.5, -2 * at, at + 0.5])


def element_tables() -> tuple[Array, Array, Array, Array, Array]:
    """Shapes, their slopes, corner shapes with slopes, and weights, at the nine points of an element."""
    u, v = (grid.ravel() for grid in np.meshgrid(GAUSS, GAUSS, indexing="ij"))
    weight = np.outer(WEIGHTS, WEIGHTS).ravel()
    nu, nv, du, dv = shape(u), shape(v), slope(u), slope(v)
    n = np.einsum("ap,bp->abp", nu, nv).reshape(9, -1)
    by_u = np.einsum("ap,bp->abp", du, nv).reshape(9, -1)
    by_v = np.einsum("ap,bp->abp", nu, dv).reshape(9, -1)
    ends = [np.array([(1 - at) / 2, (1 + at) / 2]) for at in (u, v)]
    signs = np.array([-0.5, 0.5])
    corner = np.stack(
        [
            np.einsum("a,bp->abp", signs, ends[1]).reshape(4, -1),
            np.einsum("ap,b->abp", ends[0], signs).reshape(4, -1),
            np.einsum("ap,bp->abp", ends[0], ends[1]).reshape(4, -1),
        ]
    )
    return n, by_u, by_v, corner, weight


TABLES = element_tables()


def stiffness(corners: Array, modulus: float, poisson: float) -> Array:
    """Stiffness of all elements: corners are (elements, 4, 2)."""
    n, by_u, by_v, corner, weight = TABLES
    shear = modulus / (2 * (1 + poisson))
    lame = 2 * shear * poisson / (1 - 2 * poisson)
    (xu, ru), (xv, rv), (_, radius) = np.einsum("kcp,ecd->kdep", corner, corners)
    det = xu * rv - ru * xv
    w = 2 * np.pi * radius * np.abs(det) * weight
    x = (rv[:, None] * by_u - ru[:, None] * by_v) / det[:, None]
    r = (xu[:, None] * by_v - xv[:, None] * by_u) / det[:, None]
    h = n / radius[:, None]
    zero = np.zeros_like(x)
    # Strains along, across, round and sheared, of displacements along and across.
    strain = np.stack([np.stack([x, zero, zero, r], 1), np.stack([zero, r, h, x], 1)], 3)
    strain = strain.transpose(0, 1, 2, 3, 4).reshape(len(x), 4, 18, -1)
    law = np.full((4, 4), lame) * np.array([1, 1, 1, 0])[:, None] * np.array([1, 1, 1, 0])
    law += np.diag([2 * shear] * 3 + [shear])
    stress = np.einsum("ij,ejap->eiap", law, strain) * w[:, None, None]
    flat = strain.transpose(0, 2, 1, 3).reshape(len(x), 18, -1)
    return flat @ stress.transpose(0, 1, 3, 2).reshape(len(x), -1, 18)


class Body:
    """Nodes and elements on lines that run from the large end to the small one."""

    def __init__(self, edges: Array, layers: Array, corner: list[Array], before: int) -> None:
        self.x, self.radii = [], []
        for at, (edge, nodes) in enumerate(zip(edges, corner, strict=True)):
            self.x.append(edge)
            self.radii.append(nodes)
            if at + 1 < len(edges):
                self.x.append((edge + edges[at + 1]) / 2)
                count = 2 * layers[at] + 1
                self.radii.append((nodes[:count] + corner[at + 1][:count]) / 2)
        self.first = np.concatenate([[0], np.cumsum([len(nodes) for nodes in self.radii])])
        self.before = before
        place = [(column, layer) for column in range(len(layers)) for layer in range(layers[column])]
        column, layer = np.array(place).T
        lines = 2 * column[:, None] + np.arange(3)
        self.elements = (self.first[lines][:, :, None] + 2 * layer[:, None, None] + np.arange(3)).reshape(-1, 9)
        points = np.column_stack([np.repeat(self.x, [len(nodes) for nodes in self.radii]), np.concatenate(self.radii)])
        self.points = points
        self.corners = points[self.elements[:, [0, 2, 6, 8]]]


def seat_edges(case: dict, columns: int) -> Array:
    share = np.arange(columns + 1) / columns
    edges = case["length"] * (share / 2 + (1 - np.cos(np.pi * share)) / 4)
    start = 1
    for place, _ in case["steps"][:-1]:
        nearest = start + int(np.argmin(np.abs(edges[start:columns] - place)))
        edges[nearest] = place
        start = nearest + 1
    return edges


def hub_body(case: dict, edges: Array, fine: dict) -> Body:
    levels = sorted({radius for _, radius in case["steps"]})
    places = np.array([place for place, _ in case["steps"]])
    middles = (edges[:-1] + edges[1:]) / 2
    outside = np.array([case["steps"][min(int(np.searchsorted(places, x, side="right")), len(places) - 1)][1] for x in middles])
    layers = np.array([fine["hub"] + fine["step"] * sum(levels[0] < level <= o for level in levels) for o in outside])[::-1]
    corner = []
    for at, x in enumerate(edges[::-1]):
        most = max(layers[max(at - 1, 0)], layers[min(at, len(layers) - 1)])
        seat = case["small"] + x * case["slope"]
        nodes = [np.linspace(seat, levels[0], 2 * fine["hub"] + 1)]
        for low, high in zip(levels[:-1], levels[1:], strict=True):
            nodes.append(np.linspace(low, high, 2 * fine["step"] + 1)[1:])
        corner.append(np.concatenate(nodes)[: 2 * most + 1])
    return Body(edges[::-1], layers, corner, 0)


def overhang(length: float, neighbour: float, count: int) -> Array:
    if length <= 0:
        return np.zeros(0)
    ratio = 1.0
    if count * neighbour < length:
        low, high = 1.0, 1.0 + length / neighbour
        for _ in range(100):
            ratio = (low + high) / 2
            if neighbour * np.sum(ratio ** np.arange(count)) < length:
                low = ratio
            else:
                high = ratio
    widths = ratio ** np.arange(count)
    return np.cumsum(widths) * length / widths.sum()


def spindle_body(case: dict, edges: Array, fine: dict) -> Body:
    small = overhang(case["overhangs"][0], edges[1] - edges[0], fine["overhang"])
    large = overhang(case["overhangs"][1], edges[-1] - edges[-2], fine["overhang"])
    lines = np.concatenate([edges[-1] + large[::-1], edges[::-1], edges[0] - small])
    z = np.arange(fine["spindle"] + 1) / fine["spindle"]
    share = 1 - (1 - z) ** 1.5
    share = np.interp(np.arange(2 * fine["spindle"] + 1) / 2, np.arange(len(share)), share)
    outside = case["small"] + np.clip(lines, 0, case["length"]) * case["slope"]
    corner = [case["bore"] + (o - case["bore"]) * share for o in outside]
    return Body(lines, np.full(len(lines) - 1, fine["spindle"]), corner, len(large))


def gram(body: Body, case: dict, stuff: tuple[float, float], level: int, face: tuple[float, float], count: int) -> Array:
    """`Fᵀ K⁻¹ F` for the normal and tangential loads of all segments, from the large end."""
    blocks = stiffness(body.corners, *stuff)
    dofs = (2 * body.elements[:, :, None] + np.arange(2)).reshape(len(blocks), 18)
    size = 2 * len(body.points)
    rows = np.broadcast_to(dofs[:, :, None], blocks.shape).ravel()
    columns = np.broadcast_to(dofs[:, None, :], blocks.shape).ravel()
    values = blocks.ravel()
    line = len(body.x) - 1
    radii, first = body.radii[line], body.first[line]
    spread = np.zeros(len(radii))
    for layer in range((len(radii) - 1) // 2):
        low, high = radii[2 * layer], radii[2 * layer + 2]
        start, end = max(low, face[0]), min(high, face[1])
        if end > start:
            radius = (start + end) / 2 + GAUSS * (end - start) / 2
            area = 2 * np.pi * radius * WEIGHTS * (end - start) / 2
            spread[2 * layer : 2 * layer + 3] += shape((2 * radius - low - high) / (high - low)) @ area
    faced = 2 * (first + np.arange(len(radii)))
    on_axis = 2 * np.flatnonzero(body.points[:, 1] == 0) + 1
    held = np.zeros(size, bool)
    held[on_axis] = True
    keep = (rows >= columns) & ~held[rows] & ~held[columns]
    rows, columns, values = rows[keep], columns[keep], values[keep]
    width = int((rows - columns).max())
    width = max(width, int(faced[-1] - faced[0]))
    band = np.bincount((rows - columns) * size + columns, values, (width + 1) * size).reshape(width + 1, size)
    band[0, on_axis] = 1.0
    pairs = np.tril(np.outer(spread, spread)) * band[0].max() / (spread @ spread)
    i, j = np.tril_indices(len(spread))
    np.add.at(band, (faced[i] - faced[j], faced[j]), pairs[i, j])
    loads = np.zeros((size, 2 * count))
    cosine = 1 / np.hypot(1, case["slope"])
    sine = case["slope"] * cosine
    for segment in range(count):
        at = 2 * (body.before + segment)
        high, low = body.x[at], body.x[at + 2]
        place = (low + high) / 2 + GAUSS * (high - low) / 2
        ring = 2 * np.pi * (case["small"] + place * case["slope"]) * WEIGHTS * (high - low) / 2 / cosine
        pulls = (shape(GAUSS) @ ring)[::-1]
        nodes = 2 * (body.first[at : at + 3] + level)
        for kind, way in enumerate(((-sine, cosine), (cosine, sine))):
            loads[nodes, 2 * segment + kind] += pulls * way[0]
            loads[nodes + 1, 2 * segment + kind] += pulls * way[1]
            loads[faced, 2 * segment + kind] -= spread * pulls.sum() * way[0] / spread.sum()
    start = time.perf_counter()
    factor = cholesky_banded(band, overwrite_ab=True, lower=True, check_finite=False)
    solved = cho_solve_banded((factor, True), loads, check_finite=False)
    LAPACK.append(time.perf_counter() - start)
    return loads.T @ solved


def geometry(case: dict, fine: dict) -> tuple[Array, Array, Array, Array]:
    """Edges of the segments, their areas, and both compliances."""
    edges = seat_edges(case, fine["columns"])
    count = len(edges) - 1
    seat = case["small"]
    nut = case["steps"][0][1]
    hub = gram(hub_body(case, edges, fine), case, tuple(case["hub"]), 0, (seat, nut), count)
    spindle = gram(spindle_body(case, edges, fine), case, tuple(case["spindle"]), 2 * fine["spindle"], (case["bore"], seat), count)
    both = (hub + spindle)[::-1, ::-1]
    cosine = 1 / np.hypot(1, case["slope"])
    ends = np.column_stack([edges[:-1], edges[1:]])
    area = 2 * np.pi / cosine * (seat * np.diff(ends) + case["slope"] / 2 * np.diff(ends**2))[:, 0]
    # Turned round, the tangential load of a segment stands before the normal one.
    return edges, area, both[1::2, 1::2] / area[:, None], both[1::2, 0::2] / area[:, None]


def push(case: dict, edges: Array, area: Array, compliance: Array, force: float, angle: float) -> Array:
    """Pressures by an active set of segments: all to begin with, those that pull dropped, those that overlap taken on."""
    slope = case["slope"]
    cosine = 1 / np.hypot(1, slope)
    sine = slope * cosine
    ends = np.column_stack([edges[:-1], edges[1:]])
    moment = 2 * np.pi / cosine**2 * (case["small"] / 2 * np.diff(ends**2) + slope / 3 * np.diff(ends**3))[:, 0]
    reach = moment / area
    gap = np.tan(abs(angle)) * (reach if angle > 0 else edges[-1] / cosine - reach)
    weight = area * (sine + case["friction"] * cosine)
    touching = np.ones(len(area), bool)
    for _ in range(60):
        on = np.flatnonzero(touching)
        both = np.linalg.solve(compliance[np.ix_(on, on)], np.column_stack([np.ones(len(on)), -gap[on]]))
        advance = (force - weight[on] @ both[:, 1]) / (weight[on] @ both[:, 0])
        pressure = np.zeros(len(area))
        pressure[on] = both @ [advance, 1.0]
        now = np.where(touching, pressure >= 0, gap - advance + compliance @ pressure < -1e-15)
        if (now == touching).all():
            break
        touching = now
    return pressure


def main(path: Path) -> int:
    """Time, compare, report."""
    given = json.loads(path.read_text())
    worst, slower = 0.0, []
    for case in given["cases"]:
        seconds = []
        LAPACK.clear()
        for _ in range(1 + RUNS):
            start = time.perf_counter()
            edges, area, normal, along = geometry(case, given["fine"])
            seconds.append(time.perf_counter() - start)
        compliance = normal - case["friction"] * along
        times = []
        for state in case["states"]:
            start = time.perf_counter()
            pressure = push(case, edges, area, compliance, state["force"], state["mismatch"])
            times.append(time.perf_counter() - start)
            theirs = np.array(state["pressures"])
            worst = max(worst, float(np.abs(pressure - theirs).max() / theirs.max()))
        ours, best = case["seconds"], min(seconds[1:])
        lapack = min(hub + spindle for hub, spindle in zip(LAPACK[0::2], LAPACK[1::2], strict=True))
        each = float(np.median(times))
        slower.append((ours / best, each / case["push_seconds"]))
        print(
            f"{case['name']}: geometry NumPy and LAPACK {best * 1e3:.1f} ms, {lapack * 1e3:.1f} of them LAPACK, hubwright {ours * 1e3:.2f} ms "
            f"({ours / best:.2f} of it); a push {each * 1e6:.0f} µs against {case['push_seconds'] * 1e6:.2f} µs"
        )
        print(
            f"    all forces of both signs for one friction, hubwright: {case['path_seconds'] * 1e6:.0f} µs; "
            f"against the fine mesh ({case['fine_seconds'] * 1e3:.0f} ms): {case['against_fine']}"
        )
    print(f"greatest difference of a pressure, over the greatest pressure of its seat: {worst:.1e}")
    print(f"geometry at most {max(ratio for ratio, _ in slower):.2f} of NumPy's time, a push at least {min(times for _, times in slower):.0f} times as fast")
    return int(worst > 1e-6)


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1])))
