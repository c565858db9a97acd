"""Joints between parts: press and shrink fits."""

from hubwright._core import (
    Elastic,
    ElasticLimit,
    Point,
    PressFit,
    Pressed,
    Published,
    elastic_limit,
    friction_ranges,
    metals,
    press_fit,
)

__all__ = [
    "Elastic",
    "ElasticLimit",
    "Point",
    "PressFit",
    "Pressed",
    "Published",
    "elastic_limit",
    "friction_ranges",
    "metals",
    "press_fit",
]
