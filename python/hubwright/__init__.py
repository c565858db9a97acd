"""Dimensions, tolerances and safety checks for grinding-wheel hubs and mountings.

Start with `check_file("rack.csv")` for a rack kept in a sheet, `check(Mounting(...))` for one
mounting, and `hubwright.wheel` for the sizes and speeds behind the rules. Quantities go in as text
such as `"125 mm"` or as pint quantities, and come out as pint quantities.

The wheel's own marking, the machine's manual, local law and a competent person come first.
"""

from hubwright import errors, joint, wheel, words
from hubwright._core import (
    Blotter,
    Checked,
    Counts,
    Finding,
    Flange,
    Hub,
    Machine,
    Mounting,
    Nut,
    Problem,
    Row,
    Rule,
    Source,
    Spindle,
    Unknown,
    Verdict,
    Wheel,
    __version__,
    check,
    check_file,
    check_rows,
    rules,
    sources,
)
from hubwright.errors import (
    FileError,
    HubwrightError,
    MissingError,
    OutOfRangeError,
    TableError,
    TextError,
    UnitError,
)
from hubwright.words import (
    Abrasive,
    BlotterNeed,
    Bond,
    Fastening,
    FlangeKind,
    Law,
    MachineKind,
    Material,
    Outcome,
    Rotation,
    Shape,
    ThreadHand,
    YesNo,
)

UNKNOWN = Unknown()
"""A datum that should be known and isn't: every rule that needs it says CAN'T TELL."""

__all__ = [
    "UNKNOWN",
    "Abrasive",
    "Blotter",
    "BlotterNeed",
    "Bond",
    "Checked",
    "Counts",
    "Fastening",
    "FileError",
    "Finding",
    "Flange",
    "FlangeKind",
    "Hub",
    "HubwrightError",
    "Law",
    "Machine",
    "MachineKind",
    "Material",
    "MissingError",
    "Mounting",
    "Nut",
    "OutOfRangeError",
    "Outcome",
    "Problem",
    "Rotation",
    "Row",
    "Rule",
    "Shape",
    "Source",
    "Spindle",
    "TableError",
    "TextError",
    "ThreadHand",
    "UnitError",
    "Unknown",
    "Verdict",
    "Wheel",
    "YesNo",
    "__version__",
    "check",
    "check_file",
    "check_rows",
    "errors",
    "joint",
    "rules",
    "sources",
    "wheel",
    "words",
]
