"""The joint between hub, spindle and wheel: limits and fits, and sizes measured warm."""

from hubwright._core import (
    At20,
    Expansion,
    Fit,
    Judgement,
    Limits,
    RankedFit,
    Step,
    Working,
    at_20_c,
    deviation_by_formula,
    fit,
    fits_for,
    grade_by_formula,
    limits,
    published_expansion,
    tolerance_factor,
)

__all__ = [
    "At20",
    "Expansion",
    "Fit",
    "Judgement",
    "Limits",
    "RankedFit",
    "Step",
    "Working",
    "at_20_c",
    "deviation_by_formula",
    "fit",
    "fits_for",
    "grade_by_formula",
    "limits",
    "published_expansion",
    "tolerance_factor",
]
