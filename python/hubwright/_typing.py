"""Names for type checkers only, so that `import hubwright` does not import pint."""

from typing import TYPE_CHECKING, Any, TypeAlias

if TYPE_CHECKING:
    from collections.abc import Sequence

    import pint

    from hubwright._core import ConeFit, MeasuredCone, OverRollers, Taper, Thread, TwoBalls, TwoDiameters

    Scalar: TypeAlias = pint.Quantity[Any]
    Names: TypeAlias = str | list[str]
    QuantityLike: TypeAlias = str | pint.Quantity[Any]
    PlainLike: TypeAlias = float | str | pint.Quantity[Any]
    SpanLike: TypeAlias = PlainLike | tuple[PlainLike, PlainLike]
    QuantitiesLike: TypeAlias = Sequence[QuantityLike] | pint.Quantity[Any]
    ThreadLike: TypeAlias = str | Thread
    TaperLike: TypeAlias = str | Taper
    RatioLike: TypeAlias = PlainLike | Taper
    MeasuredLike: TypeAlias = MeasuredCone | OverRollers | TwoBalls | TwoDiameters | ConeFit
    WantedLike: TypeAlias = TaperLike | MeasuredLike
