"""Tables O-4 to O-8 of 29 CFR 1910.215 for NumPy, and looking a wheel up in them.

Typed in inches apart from `src/tables`; looked up in whole nanometres.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
INCH = 25.4e6
LISTED_WITHIN = 0.5e6

# Wheel, flange, thickness.
O4 = INCH * np.array(
    [[1, 5 / 8, 1 / 8], [2, 1, 1 / 8], [3, 1, 3 / 16], [4, 11 / 8, 3 / 16], [5, 7 / 4, 1 / 4], [6, 2, 3 / 8]]
)
# Wheel, flange, least land, greatest land, thickness at the hole, at the edge.
O6 = INCH * np.array(
    [
        [1, 3 / 8, 1 / 16, 1 / 8, 1 / 16, 1 / 16],
        [2, 3 / 4, 1 / 8, 3 / 16, 1 / 8, 3 / 32],
        [3, 1, 1 / 8, 3 / 16, 3 / 16, 3 / 32],
        [4, 11 / 8, 1 / 8, 3 / 16, 3 / 16, 1 / 8],
        [5, 7 / 4, 3 / 16, 1 / 4, 1 / 4, 1 / 8],
        [6, 2, 1 / 4, 1 / 2, 3 / 8, 3 / 16],
        [7, 5 / 2, 1 / 4, 1 / 2, 3 / 8, 3 / 16],
        [8, 3, 1 / 4, 1 / 2, 3 / 8, 3 / 16],
        [10, 7 / 2, 5 / 16, 5 / 8, 3 / 8, 1 / 4],
        [12, 4, 5 / 16, 5 / 8, 1 / 2, 5 / 16],
        [14, 9 / 2, 3 / 8, 3 / 4, 1 / 2, 5 / 16],
        [16, 11 / 2, 1 / 2, 1, 1 / 2, 5 / 16],
        [18, 6, 1 / 2, 1, 5 / 8, 3 / 8],
        [20, 7, 5 / 8, 5 / 4, 5 / 8, 3 / 8],
        [22, 15 / 2, 5 / 8, 5 / 4, 5 / 8, 7 / 16],
        [24, 8, 3 / 4, 5 / 4, 5 / 8, 7 / 16],
        [26, 17 / 2, 3 / 4, 5 / 4, 5 / 8, 1 / 2],
        [28, 10, 7 / 8, 3 / 2, 3 / 4, 1 / 2],
        [30, 10, 7 / 8, 3 / 2, 3 / 4, 5 / 8],
        [36, 12, 1, 2, 7 / 8, 3 / 4],
        [42, 14, 1, 2, 7 / 8, 3 / 4],
        [48, 16, 5 / 4, 2, 9 / 8, 1],
        [60, 20, 5 / 4, 2, 5 / 4, 9 / 8],
        [72, 24, 3 / 2, 5 / 2, 11 / 8, 5 / 4],
    ]
)

# Bands of wheels: over, whether the lower end belongs to it, up to; then rows of hole, flange, at hole, at edge.
Band = tuple[float, bool, float, list[list[float]]]
O5: list[Band] = [
    (12, True, 14, [[4, 6, 7 / 8, 3 / 8], [5, 7, 7 / 8, 3 / 8], [6, 8, 7 / 8, 3 / 8]]),
    (14, False, 18, [[h, h + 2, 7 / 8, 3 / 8] for h in (4, 5, 6, 7, 8)]),
    (18, False, 24, [[h, h + 2, 1, 1 / 2] for h in (6, 7, 8, 10, 12)]),
    (24, False, 30, [[12, 15, 1, 1 / 2]]),
    (30, False, 36, [[12, 15, 11 / 8, 7 / 8]]),
]
O7: list[Band] = [
    (20, True, 20, [[6, 8, 1, 1 / 2], [8, 10, 3 / 2, 3 / 4]]),
    (24, True, 24, [[12, 15, 2, 1]]),
    (30, True, 30, [[12, 15, 2, 1]]),
    (36, True, 36, [[12, 15, 2, 1]]),
]
O8: list[Band] = [
    (12, True, 14, [[5, 7, 1 / 2, 7 / 16]]),
    (14, False, 20, [[5, 7, 5 / 8, 7 / 16], [6, 8, 5 / 8, 7 / 16], [8, 10, 5 / 8, 7 / 16],
                     [10, 11.5, 5 / 8, 7 / 16], [12, 13.5, 5 / 8, 7 / 16]]),
    (20, False, 30, [[8, 10, 3 / 4, 1 / 2], [10, 11.5, 3 / 4, 1 / 2], [12, 13.5, 3 / 4, 1 / 2],
                     [16, 17.5, 3 / 4, 1 / 2]]),
    (30, False, 42, [[h, h + 1.5, 3 / 4, 1 / 2] for h in (12, 16, 18, 20)]),
    (42, False, 60, [[16, 20, 1, 3 / 4], [20, 24, 1, 3 / 4], [24, 29, 9 / 8, 7 / 8]]),
]  # fmt: skip


@dataclass
class Demands:
    """What the tables demand of one flange of every mounting; NaN where they demand nothing."""

    diameter: Array
    next: Array
    least_land: Array
    greatest_land: Array
    at_hole: Array
    at_edge: Array
    adaptor: NDArray[np.bool_]
    flat: NDArray[np.bool_]


def _locate(size: Array, listed: Array) -> tuple[NDArray[np.intp], NDArray[np.bool_], NDArray[np.bool_]]:
    """Row at or below, whether there is one, and whether the next row is to be looked at."""
    below = np.searchsorted(listed, size + LISTED_WITHIN, side="right")
    row = np.maximum(below - 1, 0)
    some = below > 0
    is_listed = some & (size - listed[row] <= LISTED_WITHIN)
    return row, some, ~is_listed & (below < len(listed))


def nothing(rows: int) -> Demands:
    """No demands yet."""
    numbers = [np.full(rows, np.nan) for _ in range(6)]
    return Demands(*numbers, np.zeros(rows, bool), np.zeros(rows, bool))


def relieved(out: Demands, at: NDArray[np.intp], wheel: Array, lands: NDArray[np.bool_]) -> None:
    """Table O-6 for the rows `at`; `lands` tells which of them it gives lands."""
    row, some, further = _locate(wheel, O6[:, 0])
    after = np.minimum(row + some, len(O6) - 1)
    nan = np.nan
    out.diameter[at] = np.where(some, O6[row, 1], nan)
    out.next[at] = np.where(further, O6[after, 1], nan)
    out.least_land[at] = np.where(some & lands, O6[row, 2], nan)
    out.greatest_land[at] = np.where(some & lands, np.where(further, O6[after, 3], O6[row, 3]), nan)
    out.at_hole[at] = np.where(some, O6[row, 4], nan)
    out.at_edge[at] = np.where(some, O6[row, 5], nan)


def unrelieved(out: Demands, at: NDArray[np.intp], wheel: Array) -> None:
    """Table O-4 for the rows `at`."""
    row, some, further = _locate(wheel, O4[:, 0])
    after = np.minimum(row + some, len(O4) - 1)
    out.diameter[at] = np.where(some, O4[row, 1], np.nan)
    out.next[at] = np.where(further, O4[after, 1], np.nan)
    out.at_hole[at] = out.at_edge[at] = np.where(some, O4[row, 2], np.nan)
    out.flat[at] = True


def banded(out: Demands, at: NDArray[np.intp], bands: list[Band], wheel: Array, hole: Array, single: bool) -> None:
    """Table O-5, O-7 or O-8 for the rows `at`; `single` is for O-7, which lists single wheels."""
    left = np.ones(len(at), bool)
    last = len(bands) - 1
    for number, (over, included, up_to, rows) in enumerate(bands):
        low, high = over * INCH, up_to * INCH
        lower = wheel >= low - LISTED_WITHIN if included else wheel > low + LISTED_WITHIN
        here = left & lower & (wheel <= high + LISTED_WITHIN)
        if single:
            end = bands[number + 1][0] * INCH - LISTED_WITHIN if number < last else np.inf
            here |= left & (wheel >= high) & (wheel < end)
        left &= ~here
        if not here.any():
            continue
        table = INCH * np.array(rows)
        row, some, further = _locate(hole[here], table[:, 0])
        after = np.minimum(row + some, len(table) - 1)
        places = at[here]
        out.diameter[places] = np.where(some, table[row, 1], np.nan)
        out.next[places] = np.where(further, table[after, 1], np.nan)
        out.at_hole[places] = np.where(some, table[row, 2], np.nan)
        out.at_edge[places] = np.where(some, table[row, 3], np.nan)
