"""What hubwright raises. Each is a `ValueError`, `TypeError` or `OSError` too.

`str(error)` names the argument, the value and the range, and has a line that begins with `hint:`.
A part that breaks a rule is no error: that is a finding.
"""


class HubwrightError(Exception):
    """Anything hubwright can't compute. `code` stays the same between versions."""

    def __init__(self, message: str, code: str = "") -> None:
        super().__init__(message, code)  # both, so that pickle can rebuild it
        self.code = code

    def __str__(self) -> str:
        return str(self.args[0])


class OutOfRangeError(HubwrightError, ValueError):
    """A number outside what a formula or table covers, or no finite number."""


class UnitError(HubwrightError, TypeError):
    """No unit, or a unit of another kind."""


class TextError(HubwrightError, ValueError):
    """Text that is not a quantity of the wanted kind, or a word that is not on the list."""


class MissingError(HubwrightError, ValueError):
    """Something that is needed was not given."""


class TableError(HubwrightError, ValueError):
    """A table, its headings or its columns can't be used."""


class FileError(HubwrightError, OSError):
    """A file could not be read or written."""
