"""Names for type checkers only, so that `import hubwright` does not import pint."""

from typing import TYPE_CHECKING, Any, TypeAlias

if TYPE_CHECKING:
    import pint

    from hubwright._core import Thread

    Scalar: TypeAlias = pint.Quantity[Any]
    Names: TypeAlias = str | list[str]
    QuantityLike: TypeAlias = str | pint.Quantity[Any]
    PlainLike: TypeAlias = float | str | pint.Quantity[Any]
    SpanLike: TypeAlias = PlainLike | tuple[PlainLike, PlainLike]
    ThreadLike: TypeAlias = str | Thread
