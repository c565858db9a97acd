"""The closed lists of words that arguments and cells take, and results hold.

Every member is its word: `Shape.TYPE_1 == "type-1"`.
"""

from enum import StrEnum


class Outcome(StrEnum):
    """How a mounting fares by a rule, worst first."""

    REFUSE = "refuse"
    """A rule is broken."""
    UNKNOWN = "unknown"
    """A datum is missing that the row should have."""
    CAUTION = "caution"
    """Something to know or to put right."""
    PASS = "pass"
    """Judged and good."""
    NOT_CHECKED = "not_checked"
    """Nobody gave the data, or the rule does not apply."""


class Law(StrEnum):
    """A law that the user works under."""

    US = "us"
    """United States, federal: 29 CFR 1910."""
    US_MI = "us-mi"
    """Michigan."""
    US_WA = "us-wa"
    """Washington."""
    US_CA = "us-ca"
    """California."""
    JP = "jp"
    """Japan."""


class Shape(StrEnum):
    """Shape of a wheel, by the type numbers that ANSI B7.1 and ISO 525 share."""

    TYPE_1 = "type-1"
    """Straight."""
    TYPE_1_CUTTING_OFF = "type-1-cutting-off"
    """Straight, for cutting off."""
    TYPE_2 = "type-2"
    """Cylinder."""
    TYPE_4 = "type-4"
    """Tapered on both sides."""
    TYPE_5 = "type-5"
    """Recessed on one side."""
    TYPE_6 = "type-6"
    """Straight cup."""
    TYPE_6_TERRAZZO = "type-6-terrazzo"
    """Straight cup modified for terrazzo."""
    TYPE_7 = "type-7"
    """Recessed on both sides."""
    TYPE_11 = "type-11"
    """Flaring cup."""
    TYPE_11_TERRAZZO = "type-11-terrazzo"
    """Flaring cup modified for terrazzo."""
    TYPE_12 = "type-12"
    """Dish."""
    TYPE_13 = "type-13"
    """Saucer."""
    TYPE_16 = "type-16"
    """Cone or plug, types 16 to 19."""
    TYPE_20 = "type-20"
    """Relieved or recessed and relieved, types 20 to 26."""
    TYPE_27 = "type-27"
    """Depressed centre."""
    TYPE_27A = "type-27a"
    """Depressed centre, for cutting off."""
    TYPE_28 = "type-28"
    """Saucer with depressed centre."""
    TYPE_29 = "type-29"
    """Flap or semi-flexible disc."""
    DISC = "disc"
    """Abrasive disc with inserted nuts, washer or stud."""


class Fastening(StrEnum):
    """How a wheel is held."""

    FLANGES = "flanges"
    """Between two flanges."""
    THREADED_INSERT = "threaded insert"
    """By a threaded hole or inserted nut of its own."""
    STUD = "stud"
    """By a projecting stud of its own."""
    PLATE = "plate"
    """Cemented or screwed to a plate."""
    CHUCK = "chuck"
    """In a chuck: cylinders, cups and segments."""
    MANDREL = "mandrel"
    """On a mandrel of its own."""


class Abrasive(StrEnum):
    """Abrasive of a wheel."""

    ALUMINIUM_OXIDE = "aluminium oxide"
    """Aluminium oxide."""
    SILICON_CARBIDE = "silicon carbide"
    """Silicon carbide."""
    DIAMOND = "diamond"
    """Diamond."""
    CBN = "CBN"
    """Cubic boron nitride."""


class Bond(StrEnum):
    """Bond of a wheel."""

    VITRIFIED = "vitrified"
    """Vitrified."""
    RESIN = "resin"
    """Resin."""
    REINFORCED_RESIN = "reinforced resin"
    """Resin with fabric layers."""
    RUBBER = "rubber"
    """Rubber."""
    REINFORCED_RUBBER = "reinforced rubber"
    """Rubber with fabric layers."""
    SHELLAC = "shellac"
    """Shellac."""
    MAGNESITE = "magnesite"
    """Magnesite."""
    METAL = "metal"
    """Metal, sintered."""
    ELECTROPLATED = "electroplated"
    """Electroplated."""
    SILICATE = "silicate"
    """Silicate."""
    OXYCHLORIDE = "oxychloride"
    """Oxychloride."""
    PLASTIC = "plastic"
    """Plastic."""


class MarkingSays(StrEnum):
    """How a wheel's marking compares with what is said of the wheel."""

    SAME = "the same"
    """The same, as far as both say anything."""
    OTHER_SPEED = "another speed"
    """Another speed."""
    OTHER_SIZE = "another size"
    """Another diameter, thickness or hole."""
    OTHER_SHAPE = "another shape"
    """Another shape."""
    OTHER_ABRASIVE = "another abrasive"
    """Another abrasive."""
    OTHER_BOND = "another bond"
    """Another bond."""


class Restriction(StrEnum):
    """What a wheel must not be used for, by the mark on it."""

    NOT_HAND_HELD = "RE1"
    """Not for hand-held grinding."""
    NO_HAND_CUTTING_OFF = "RE2"
    """Not for hand-held cutting-off."""
    NOT_WET = "RE3"
    """Not for wet grinding."""
    ONLY_ENCLOSED = "RE4"
    """Only in a working area that is closed all round."""
    NOT_FACE_GRINDING = "RE6"
    """Not for face grinding."""


class MachineKind(StrEnum):
    """Kind of machine, which decides how far its guard may be open."""

    BENCH = "bench"
    """Bench and floor stands."""
    CYLINDRICAL = "cylindrical"
    """Cylindrical grinders."""
    SURFACE = "surface"
    """Surface grinders."""
    CUTTING_OFF = "cutting-off"
    """Cutting-off machines."""
    TOOL = "tool"
    """Tool and cutter grinders."""
    INTERNAL = "internal"
    """Internal grinders."""
    SWING_FRAME = "swing frame"
    """Swing frame grinders."""
    SNAGGING = "snagging"
    """Automatic snagging machines."""
    TOP = "top"
    """Top grinding."""
    PORTABLE = "portable"
    """Portable and hand-held grinders."""


class FlangeKind(StrEnum):
    """Kind of flange."""

    UNRELIEVED = "unrelieved"
    """Straight, flat over its whole face."""
    RELIEVED = "relieved"
    """Straight, recessed so that only its land bears."""
    ADAPTOR = "adaptor"
    """Adaptor, for wheels with large holes."""
    ADAPTOR_HEAVY = "adaptor-heavy"
    """Adaptor for heavy duty."""
    SLEEVE = "sleeve"
    """Of a wheel sleeve, for precision grinding."""


class BlotterNeed(StrEnum):
    """Whether a wheel needs blotters."""

    NEEDED = "needed"
    """It does."""
    ASK_THE_MAKER = "ask the maker"
    """The law exempts "certain" wheels of this sort without saying which."""
    NOT_NEEDED = "not needed"
    """It does not."""


class Material(StrEnum):
    """What a flange or hub is made of."""

    STEEL = "steel"
    """Steel."""
    CAST_IRON = "cast iron"
    """Cast iron."""
    ALUMINIUM = "aluminium"
    """Aluminium alloy."""
    BRASS = "brass"
    """Brass or bronze."""
    OTHER = "other"
    """Anything else."""


class Rotation(StrEnum):
    """Which way the spindle turns, seen from the nut."""

    CLOCKWISE = "clockwise"
    """As the hands of a clock."""
    ANTICLOCKWISE = "anticlockwise"
    """Against the hands of a clock."""
    BOTH = "both"
    """Both ways: the spindle is reversed in use."""


class ThreadHand(StrEnum):
    """Hand of the thread that holds the wheel."""

    RIGHT = "right"
    """Right-hand."""
    LEFT = "left"
    """Left-hand."""
    NO_NUT = "no nut"
    """No central nut: the flange is held by its own screws."""


class YesNo(StrEnum):
    """Yes or no."""

    YES = "yes"
    """Yes."""
    NO = "no"
    """No."""


class Feature(StrEnum):
    """What a tolerance class is for."""

    HOLE = "hole"
    """A hole: letters in capitals."""
    SHAFT = "shaft"
    """A shaft: small letters."""


class FitKind(StrEnum):
    """Whether a shaft is loose in its hole, tight, or either by chance."""

    CLEARANCE = "clearance"
    """Never tight: the least clearance is zero or more."""
    TRANSITION = "transition"
    """Loose or tight, as the two sizes fall out."""
    INTERFERENCE = "interference"
    """Never loose: the most clearance is zero or less."""


class FitBasis(StrEnum):
    """Which part of a fit is made to nominal size, the other being varied."""

    HOLE_BASIS = "hole basis"
    """An H hole: one reamer, many shafts."""
    SHAFT_BASIS = "shaft basis"
    """An h shaft: one bar, many holes."""
    BOTH = "both"
    """H and h at once."""
    NEITHER = "neither"
    """Neither H nor h."""


class SizeOutcome(StrEnum):
    """How a measured size fares between its limits."""

    WITHIN = "within"
    """On the limits or between them."""
    TOO_LARGE = "too large"
    """Above the largest size."""
    TOO_SMALL = "too small"
    """Below the smallest size."""


class Metal(StrEnum):
    """Metals whose expansion is published."""

    STEEL = "steel"
    """Plain carbon and low alloy steel."""
    GREY_CAST_IRON = "grey cast iron"
    """Grey cast iron."""
    DUCTILE_CAST_IRON = "ductile cast iron"
    """Ductile cast iron."""
    ALUMINIUM = "aluminium"
    """Aluminium alloy."""
    BRASS = "brass"
    """Brass."""


class KeyStandard(StrEnum):
    """The standard that a key is taken from."""

    DIN_6885_1 = "DIN 6885-1"
    """ISO 773 and DIN 6885-1, the usual form."""
    DIN_6885_2 = "DIN 6885-2"
    """DIN 6885-2, deeper in the shaft and shallower in the hub, for machine tools."""
    B17_1_SQUARE = "ANSI B17.1 square"
    """Square inch keys."""
    B17_1_RECTANGULAR = "ANSI B17.1 rectangular"
    """Rectangular inch keys."""


class KeyFit(StrEnum):
    """How tightly a key sits in its keyways."""

    FREE = "free"
    """Slides: H9 in the shaft, D10 in the hub."""
    NORMAL = "normal"
    """The usual one: N9 in the shaft, JS9 in the hub."""
    CLOSE = "close"
    """Tight in both: P9."""


class CutIn(StrEnum):
    """Which part a keyway is cut in."""

    HUB = "hub"
    """In the bore of a hub."""
    SHAFT = "shaft"
    """In a shaft."""


class MoveTool(StrEnum):
    """Which way a slotting tool has to go."""

    STAY = "stay"
    """Nowhere: the marks are equal as far as they were read."""
    LEFT = "left"
    """Toward the left mark."""
    RIGHT = "right"
    """Toward the right mark."""


class Filler(StrEnum):
    """A brazing filler, and how it is used."""

    SILVER_FLUX = "silver, flux"
    """Silver with flux."""
    SILVER_MAKER = "silver, maker's note"
    """Silver with flux, as a maker of fillers has it."""
    SILVER_ATMOSPHERE = "silver, atmosphere"
    """Silver in a controlled atmosphere."""
    COPPER = "copper"
    """Copper in a furnace."""
    NICKEL = "nickel"
    """Nickel."""
    COPPER_PHOSPHORUS = "copper-phosphorus"
    """Copper-phosphorus, which is not for steel."""
    ANY = "any"
    """Any filler that is drawn in by the gap."""


class GapOutcome(StrEnum):
    """How a gap compares with the published range."""

    TOO_NARROW = "too narrow"
    """Narrower than the range: filler may not get in."""
    WITHIN = "within"
    """On the range's ends or between them."""
    TOO_WIDE = "too wide"
    """Wider than the range: the filler may not hold in it."""


class Carries(StrEnum):
    """The end of a seat that carries."""

    SMALL_END = "small end"
    """The small end: the hub is too open."""
    LARGE_END = "large end"
    """The large end: the hub is too closed."""
    BOTH_ENDS = "both ends"
    """Both, because the angles agree."""


class Print(StrEnum):
    """What a print of marking paste looks like."""

    SMALL_END = "small end"
    """A full ring that begins at the small end and ends somewhere."""
    LARGE_END = "large end"
    """A full ring that begins at the large end and ends somewhere."""
    WHOLE_LENGTH = "whole length"
    """All round, over the whole length or nearly so."""
    THREE_PATCHES = "three patches"
    """Three patches round the seat."""
    ONE_PATCH = "one patch"
    """One patch on one side."""
    MIDDLE = "middle"
    """A ring in the middle that reaches neither end."""
    BOTH_ENDS = "both ends"
    """A ring at each end and nothing between them."""
class LargeEnd(StrEnum):
    """Where the large end of a cone lies, by the positions of its readings."""

    HIGH = "high"
    """At the greater positions: the last reading, the upper roller."""
    LOW = "low"
    """At the smaller positions: the first reading, the mouth of a bore."""


class FlankBow(StrEnum):
    """Whether the flank of a cone was seen to be bent."""

    NOT_SEEN = "not seen"
    """No bend was seen: there may be one that is less than the smallest that would show."""
    LARGE_IN_THE_MIDDLE = "large in the middle"
    """The middle is too large: a barrel, or a bore worn hollow."""
    SMALL_IN_THE_MIDDLE = "small in the middle"
    """The middle is too small: a waist, or a bore that bulges inward."""
    CANT_TELL = "can't tell"
    """The readings can't show any."""


class NamingOutcome(StrEnum):
    """What naming a taper came to."""

    ONE = "one taper"
    """One taper fits, maybe under several names."""
    CANT_TELL = "can't tell"
    """Several tapers fit, or one only if it is made worse than allowed: what was measured can't tell."""
    NONE = "none fits: copy it"
    """None fits: copy it."""


class Along(StrEnum):
    """What an indicator travels along."""

    FLANK = "flank"
    """The flank: the top slide moves it."""
    AXIS = "axis"
    """The axis: the saddle moves it."""


class SetAngle(StrEnum):
    """Which angle something is set to."""

    HALF = "half"
    """Half of the included angle."""
    INCLUDED = "included"
    """The included angle."""


class TaperPart(StrEnum):
    """What is being turned."""

    HUB = "hub"
    """A taper bore."""
    SPINDLE = "spindle"
    """A taper nose or plug."""


class Toward(StrEnum):
    """To which side the slide has to move."""

    SMALLER = "smaller"
    """The slide's angle has to become smaller."""
    LARGER = "larger"
    """The slide's angle has to become larger."""
    STAY = "stay"
    """The error is no more than its uncertainty: there is nothing to go by."""


class GuardBand(StrEnum):
    """How far from a limit a measured value has to stay."""

    ONE_SIDED = "one-sided 95 %"
    """1.645 standard uncertainties: 95 % on the one side that matters."""
    FULL = "full"
    """The whole expanded uncertainty, twice the standard one."""


class Ruling(StrEnum):
    """What can be said of a measured value."""

    WITHIN = "within"
    """It keeps to its limits."""
    OUTSIDE = "outside"
    """It does not."""
    CANT_TELL = "can't tell"
    """It is too near to a limit for what it was measured with."""


class Spread(StrEnum):
    """How an error is spread, and what its size says."""

    NORMAL = "normal"
    """Normally; the size is a standard uncertainty."""
    UNIFORM = "uniform"
    """Anything within plus or minus the size, as by a scale's resolution."""
    TRIANGULAR = "triangular"
    """Likelier in the middle, within plus or minus the size."""
    U_SHAPED = "u-shaped"
    """Likelier at plus and minus the size, as of something that swings."""


class GrindKind(StrEnum):
    """How wheel and work meet."""

    SURFACE = "surface"
    """Flat work under the wheel's rim."""
    EXTERNAL = "external"
    """Round work from outside."""
    INTERNAL = "internal"
    """A bore from inside."""


class Running(StrEnum):
    """What running does to the nut."""

    TIGHTENS = "tightens"
    """Drag and run-up tighten it; braking loosens it."""
    LOOSENS = "loosens"
    """Drag and run-up loosen it; braking tightens it."""


class Answer(StrEnum):
    """What can be told over whole ranges of friction."""

    NO = "no"
    """It does not happen at any friction in its range."""
    PERHAPS = "perhaps"
    """It happens at some frictions and not at others."""
    YES = "yes"
    """It happens at every friction in its range."""


class NutLock(StrEnum):
    """What keeps the loose flange from turning the nut."""

    KEYED_WASHER = "keyed washer"
    """A washer with a key or lug in a slot of the hub."""
    FLATS = "flats"
    """Flats on the hub, and a hole to match."""
    PIN = "pin"
    """A pin through flange and hub."""
    TONGUE = "tongue"
    """A tongue of the washer, bent into a slot."""
    OTHER_HAND_OF_THREAD = "other hand of thread"
    """The other hand of thread, and nothing else."""
    NOTHING = "nothing"
    """Nothing."""
