"""The wheel: how fast it may turn, and what may hold it."""

from hubwright._core import (
    ArrowColumn,
    BlotterLimits,
    FlangeLimits,
    HoleLimits,
    Limit,
    SpeedForRim,
    Step,
    Working,
    blotter_limits,
    flange_limits,
    hole_limits,
    largest_diameter,
    rim_speed,
    rim_speed_column,
    speed_for_rim,
)

__all__ = [
    "ArrowColumn",
    "BlotterLimits",
    "FlangeLimits",
    "HoleLimits",
    "Limit",
    "SpeedForRim",
    "Step",
    "Working",
    "blotter_limits",
    "flange_limits",
    "hole_limits",
    "largest_diameter",
    "rim_speed",
    "rim_speed_column",
    "speed_for_rim",
]
