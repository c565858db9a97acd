//! Parallel keys: which key goes with a shaft, how deep it sits, how wide its keyways are.

use std::sync::LazyLock;

use super::class::Class;
use super::fits::Fit;
use super::keyway::chord;
use super::limits::Limits;
use crate::error::{Error, ErrorKind};
use crate::source::Source;
use crate::tables::keys::{
    B17_1, B17_1_DEPTHS, B17_1_OVER_KEY, DIN_6885_1, DIN_6885_2, FITS_RECALLED, INCH,
    LENGTHS_RECALLED, MACHINE_TOOL, Metric, PARALLEL, STANDARD_LENGTHS, TRIMS, Trim,
};
use crate::tables::laws::ARITHMETIC;
use crate::units::{Exact, Length, below, figure, millimeter, positive_length, shown_mm, words};
use crate::working::{Step, Working};

words! {
    /// The standard that a key is taken from.
    KeyStandard, "standard" {
        /// ISO 773 and DIN 6885-1, the usual form.
        Din6885Part1 = "DIN 6885-1" ["ISO 773", "DIN 6885"];
        /// DIN 6885-2, deeper in the shaft and shallower in the hub, for machine tools.
        Din6885Part2 = "DIN 6885-2" ["machine tool form"];
        /// Square inch keys.
        B17Square = "ANSI B17.1 square" ["B17.1 square"];
        /// Rectangular inch keys.
        B17Rectangular = "ANSI B17.1 rectangular" ["B17.1 rectangular", "ANSI B17.1 flat", "B17.1 flat"];
    }
}

words! {
    /// How tightly a key sits in its keyways.
    KeyFit, "fit of the key" {
        /// Slides: H9 in the shaft, D10 in the hub.
        Free = "free" ["sliding"];
        /// The usual one: N9 in the shaft, JS9 in the hub.
        Normal = "normal" ["light"];
        /// Tight in both: P9.
        Close = "close" ["tight"];
    }
}

impl KeyFit {
    /// Classes of the keyways in shaft and hub.
    pub const fn classes(self) -> [&'static str; 2] {
        match self {
            Self::Free => ["H9", "D10"],
            Self::Normal => ["N9", "JS9"],
            Self::Close => ["P9", "P9"],
        }
    }
}

/// Class of the width of key steel.
const KEY_CLASS: &str = "h9";

/// Lengths and edges of a key; all recalled.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct KeyTrim {
    /// Shortest length of this key.
    pub least_length: Length,
    /// Longest length of this key.
    pub most_length: Length,
    /// Least and greatest chamfer of the key's edges.
    pub chamfer: [Length; 2],
    /// Least and greatest radius in the corners of the keyway.
    pub corner_radius: [Length; 2],
    /// Where they come from.
    pub source: Source,
}

impl KeyTrim {
    /// Standard lengths of this key, shortest first.
    pub fn lengths(&self) -> impl Iterator<Item = Length> + use<> {
        let (least, most) = (self.least_length, self.most_length);
        STANDARD_LENGTHS
            .iter()
            .map(|mm| Length::new::<millimeter>(*mm as f64))
            .filter(move |length| *length >= least && *length <= most)
    }
}

/// What [`key_for`] found. Depths are at the middle of the keyway, from where the
/// circle of shaft or bore would be.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct KeySize {
    /// Diameter of the shaft.
    pub shaft: Length,
    /// The standard asked.
    pub standard: KeyStandard,
    /// Width, b.
    pub width: Length,
    /// Height, h.
    pub height: Length,
    /// Depth in the shaft, t1.
    pub shaft_depth: Length,
    /// Depth in the hub, t2.
    pub hub_depth: Length,
    /// How much deeper than that either keyway may be, never shallower; `None` where it was not read.
    pub depth_tolerance: Option<Length>,
    /// From the chord across the mouth of the keyway to the circle, y.
    pub chord_height: Length,
    /// Height of the keyway's wall in the shaft, t1 − y.
    pub shaft_wall: Length,
    /// Height of the keyway's wall in the hub, t2 + y.
    pub hub_wall: Length,
    /// Height over which the key's side bears: the lesser of `t1 − y` in the shaft and `h − t1 + y` in the hub, less the
    /// greatest chamfer where `trim` has one.
    pub bearing_height: Length,
    /// From the bottom of the shaft's keyway to the far side of the shaft, d − t1.
    pub across_shaft: Length,
    /// From the bottom of the hub's keyway to the far side of the bore, d + t2.
    pub across_hub: Length,
    /// Lengths and edges, where they are recalled.
    pub trim: Option<KeyTrim>,
    /// Where width, height and depths come from.
    pub source: Source,
}

/// The fit of a key in its keyways.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct KeyWidths {
    /// The fit asked for.
    pub fit: KeyFit,
    /// Keyway of the shaft as the hole, key as the shaft.
    pub in_shaft: Fit,
    /// Keyway of the hub as the hole, key as the shaft.
    pub in_hub: Fit,
    /// Which classes make the fit; the limits cite their own source.
    pub source: Source,
}

/// The key that goes with a shaft.
///
/// Width, height and depths stand in the table. With `y` the chord height, the
/// keyway's wall is `t1 − y` high in the shaft and `t2 + y` in the hub. An inch
/// keyway has walls of `H/2` in the shaft and `H/2 + 0.005 in` in the hub, so that
/// `S = D − y − H/2` and `T = D − y + H/2 + 0.005 in` are
/// measured across shaft and bore.
///
/// Range: DIN 6885-1 over 6 to 500 mm, DIN 6885-2 the shafts from 12 to 50 mm that
/// the print lists, ANSI B17.1 over 5/16 to 6½ in (rectangular over 7/16 in).
/// A step includes its upper end.
///
/// # Errors
///
/// [`ErrorKind::NotFinite`] for NaN and infinite diameters, [`ErrorKind::OutOfRange`] for a shaft
/// outside the table.
///
/// # Source
///
/// DIN 6885-1 and -2, ANSI B17.1-1967, all in reprints; lengths, chamfers and
/// corner radii from memory.
///
/// # Example
///
/// A 22 mm shaft takes a key of 6 × 6 mm, whose keyways measure 18.5 mm across the
/// shaft and 24.8 mm across the bore.
///
/// ```
/// use hubwright::joint::{KeyStandard, key_for};
/// use hubwright::units::{Length, millimeter};
///
/// let key = key_for(Length::new::<millimeter>(22.0), KeyStandard::Din6885Part1)?;
/// let mm = |length: Length| (length.get::<millimeter>() * 1e6).round() / 1e6;
/// assert_eq!((mm(key.width), mm(key.height)), (6.0, 6.0));
/// assert_eq!((mm(key.across_shaft), mm(key.across_hub)), (18.5, 24.8));
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn key_for(shaft_diameter: Length, standard: KeyStandard) -> Result<KeySize, Error> {
    positive_length("shaft_diameter", shaft_diameter)?;
    match standard {
        KeyStandard::Din6885Part1 => metric(shaft_diameter, standard, &PARALLEL),
        KeyStandard::Din6885Part2 => metric(shaft_diameter, standard, &MACHINE_TOOL),
        KeyStandard::B17Square | KeyStandard::B17Rectangular => b17(shaft_diameter, standard),
    }
}

fn nm(whole: i64) -> Length {
    Length::from_exact(whole as f64)
}

fn metric(shaft: Length, standard: KeyStandard, table: &[Metric]) -> Result<KeySize, Error> {
    let size = shaft.exact() as i64;
    let listed = standard == KeyStandard::Din6885Part2;
    let source = if listed { DIN_6885_2 } else { DIN_6885_1 };
    let holds =
        |row: &&Metric| size <= row.up_to && (size > row.over || listed && size == row.over);
    let Some(row) = table.iter().find(holds) else {
        return Err(no_metric_row(size, table, listed, source));
    };
    let [width, height] = [nm(row.width), nm(row.height)];
    let y = chord(shaft, width);
    let trim = TRIMS.iter().find(|trim| trim.width * 1_000_000 == row.width).map(trimmed);
    let shaft_wall = nm(row.shaft_depth) - y;
    Ok(KeySize {
        shaft,
        standard,
        width,
        height,
        shaft_depth: nm(row.shaft_depth),
        hub_depth: nm(row.hub_depth),
        depth_tolerance: row.depth_tolerance.map(nm),
        chord_height: y,
        shaft_wall,
        hub_wall: nm(row.hub_depth) + y,
        bearing_height: bears(height, shaft_wall, trim),
        across_shaft: nm(size - row.shaft_depth),
        across_hub: nm(size + row.hub_depth),
        trim,
        source,
    })
}

/// Height over which a key's side bears.
fn bears(height: Length, shaft_wall: Length, trim: Option<KeyTrim>) -> Length {
    let chamfer = trim.map_or(Length::default(), |trim| trim.chamfer[1]);
    let in_hub = height - shaft_wall;
    (if in_hub < shaft_wall { in_hub } else { shaft_wall }) - chamfer
}

fn trimmed(row: &Trim) -> KeyTrim {
    let um = |pair: [i64; 2]| pair.map(|um| nm(um * 1000));
    let [least_length, most_length] = row.length.map(|mm| nm(mm * 1_000_000));
    KeyTrim {
        least_length,
        most_length,
        chamfer: um(row.chamfer),
        corner_radius: um(row.radius),
        source: LENGTHS_RECALLED,
    }
}

fn b17(shaft: Length, standard: KeyStandard) -> Result<KeySize, Error> {
    let size = shaft.exact() as i64;
    let flat = standard == KeyStandard::B17Rectangular;
    let mut rows = INCH.iter().filter(|row| !flat || row.flat.is_some());
    let first = rows.clone().next();
    let Some(row) = rows.find(|row| size > row.over && size <= row.up_to) else {
        let from = first.map_or(0, |row| row.over);
        let to = INCH[INCH.len() - 1].up_to;
        let inches = |nm: i64| figure(nm as f64 / 25.4e6, 4);
        let hint = "the table knows no key for this shaft: choose one and give its sizes yourself";
        return Err(outside(
            "shaft_diameter",
            size as f64 / 25.4e6,
            format!("not from over {} up to {}", inches(from), inches(to)),
            "in",
            B17_1.to_string(),
            hint.into(),
        ));
    };
    let width = nm(row.width);
    let height = if flat { row.flat.unwrap_or(row.width) } else { row.width };
    let y = chord(shaft, width);
    let (shaft_wall, hub_wall) = (nm(height) / 2.0, nm(height) / 2.0 + nm(B17_1_OVER_KEY));
    Ok(KeySize {
        shaft,
        standard,
        width,
        height: nm(height),
        shaft_depth: shaft_wall + y,
        hub_depth: hub_wall - y,
        depth_tolerance: None,
        chord_height: y,
        shaft_wall,
        hub_wall,
        bearing_height: bears(nm(height), shaft_wall, None),
        across_shaft: shaft - y - shaft_wall,
        across_hub: shaft - y + hub_wall,
        trim: None,
        source: B17_1,
    })
}

impl KeySize {
    /// Width limits of key and keyways, and the clearance between them.
    ///
    /// The key is h9. `None` for inch keys, whose tolerances were not read.
    ///
    /// ```
    /// use hubwright::joint::{KeyFit, KeyStandard, key_for};
    /// use hubwright::units::{Length, millimeter};
    ///
    /// let key = key_for(Length::new::<millimeter>(12.0), KeyStandard::Din6885Part1)?;
    /// let widths = key.widths(KeyFit::Normal).expect("a metric key");
    /// let hub = widths.in_hub.hole; // 4 JS9
    /// assert_eq!((hub.upper_nm, hub.lower_nm), (15_000, -15_000));
    /// # Ok::<(), hubwright::Error>(())
    /// ```
    pub fn widths(&self, fit: KeyFit) -> Option<KeyWidths> {
        let metric = matches!(self.standard, KeyStandard::Din6885Part1 | KeyStandard::Din6885Part2);
        if metric { widths(self.width, fit).ok() } else { None }
    }

    /// The steps, recomputed; the last one's result is `across_hub` in mm.
    pub fn working(&self) -> Working {
        let Ok(again) = key_for(self.shaft, self.standard) else { return Working::default() };
        let mm = |length: Length| length.get::<millimeter>();
        let shown = |length: Length| figure(mm(length), 4);
        let Self { shaft, width, shaft_depth, hub_depth, chord_height, source, .. } = again;
        let inch = source == B17_1;
        let depth_source = if inch { B17_1_DEPTHS } else { source };
        let step = |symbol, relation, numbers: String, result: Length, source| Step {
            symbol,
            relation,
            numbers,
            result: mm(result),
            unit: "mm",
            source,
        };
        let table = format!("for a shaft of {} mm", shown(shaft));
        Working {
            steps: vec![
                step("b", "from the table", table.clone(), width, source),
                step("h", "from the table", table.clone(), again.height, source),
                step(
                    "y",
                    "(d − √(d² − b²)) / 2",
                    format!("({0} − √({0}² − {1}²)) / 2", shown(shaft), shown(width)),
                    chord_height,
                    ARITHMETIC,
                ),
                step(
                    "t1",
                    if inch { "H/2 + y" } else { "from the table" },
                    if inch {
                        format!("{} / 2 + {}", shown(again.height), shown(chord_height))
                    } else {
                        table.clone()
                    },
                    shaft_depth,
                    depth_source,
                ),
                step(
                    "t2",
                    if inch { "H/2 + 0.127 − y" } else { "from the table" },
                    if inch {
                        format!("{} / 2 + 0.127 − {}", shown(again.height), shown(chord_height))
                    } else {
                        table
                    },
                    hub_depth,
                    depth_source,
                ),
                step(
                    "wall in the shaft",
                    "t1 − y",
                    format!("{} − {}", shown(shaft_depth), shown(chord_height)),
                    again.shaft_wall,
                    ARITHMETIC,
                ),
                step(
                    "wall in the hub",
                    "t2 + y",
                    format!("{} + {}", shown(hub_depth), shown(chord_height)),
                    again.hub_wall,
                    ARITHMETIC,
                ),
                step(
                    "height that bears",
                    "min(t1 − y, h − t1 + y) − chamfer",
                    format!(
                        "min({0}, {1} − {0}) − {2}",
                        shown(again.shaft_wall),
                        shown(again.height),
                        again.trim.map_or("0".into(), |trim| shown(trim.chamfer[1]))
                    ),
                    again.bearing_height,
                    if again.trim.is_some() { LENGTHS_RECALLED } else { ARITHMETIC },
                ),
                step(
                    "across the shaft",
                    "d − t1",
                    format!("{} − {}", shown(shaft), shown(shaft_depth)),
                    again.across_shaft,
                    depth_source,
                ),
                step(
                    "across the bore",
                    "d + t2",
                    format!("{} + {}", shown(shaft), shown(hub_depth)),
                    again.across_hub,
                    depth_source,
                ),
            ],
        }
    }
}

/// Width limits of key and keyways for a nominal width of up to 500 mm.
pub(crate) fn widths(width: Length, fit: KeyFit) -> Result<KeyWidths, Error> {
    let [shaft, hub] = fit.classes();
    let key: Class = KEY_CLASS.parse()?;
    let [in_shaft, in_hub] =
        [Fit::of(width, shaft.parse()?, key)?, Fit::of(width, hub.parse()?, key)?];
    Ok(KeyWidths { fit, in_shaft, in_hub, source: FITS_RECALLED })
}

/// An argument that a table or formula does not take.
#[cold]
pub(super) fn outside(
    argument: &str,
    given: f64,
    range: String,
    unit: &'static str,
    authority: String,
    hint: String,
) -> Error {
    ErrorKind::OutOfRange { argument: argument.into(), given, range, unit, authority, hint }.into()
}

/// How far the table reaches, and between which of its shafts a gap lies.
#[cold]
fn no_metric_row(size: i64, table: &[Metric], listed: bool, source: Source) -> Error {
    let mm = |nm: i64| figure(nm as f64 / 1e6, 3);
    let (first, last) = (table[0], table[table.len() - 1]);
    let gap = table.windows(2).find(|pair| size > pair[0].up_to && size < pair[1].over);
    let (range, hint) = match gap {
        Some(pair) => (
            format!("between {} and {}", mm(pair[0].up_to), mm(pair[1].over)),
            "the print lists a key for either and none in between: take DIN 6885-1, or choose one",
        ),
        None if listed => (
            format!("outside {} to {}", mm(first.over), mm(last.up_to)),
            "take DIN 6885-1, which reaches from over 6 to 500 mm",
        ),
        None => (
            format!("not from over {} up to {}", mm(first.over), mm(last.up_to)),
            "the table knows no key for this shaft: choose one and give its sizes yourself",
        ),
    };
    outside("shaft_diameter", size as f64 / 1e6, range, "mm", source.to_string(), hint.into())
}

/// A key or slot that is narrower than the shaft or bore it is in.
pub(super) fn narrower(
    argument: &str,
    width: Length,
    of: &str,
    diameter: Length,
) -> Result<(), Error> {
    below(argument, shown_mm(width), shown_mm(diameter), "mm", "4 mm").map_err(|mut error| {
        error.set_hint(format!("it has to be narrower than its {of}: check both and their units"));
        error
    })
}

/// A key that is no longer than its hub.
pub(super) fn inside_hub(length: Length, hub_length: Option<Length>) -> Result<(), Error> {
    let Some(hub) = hub_length else { return Ok(()) };
    positive_length("hub_length", hub)?;
    if length.exact() <= hub.exact() {
        return Ok(());
    }
    let range = format!("above the hub's {}", figure(shown_mm(hub), 4));
    let hint = "only what is inside the hub carries: give that length, or correct one of the two";
    Err(outside("length", shown_mm(length), range, "mm", String::new(), hint.into()))
}

/// Deviations in nm of key and keyways of one listed width, for the rules.
pub(crate) struct Deviations {
    /// Nominal width, in nm.
    pub(crate) nominal: f64,
    /// Lower and upper deviation of the key.
    pub(crate) key: [f64; 2],
    /// Lower and upper deviation of shaft and hub, by fit.
    pub(crate) keyways: [[[f64; 2]; 2]; 3],
}

/// Every width that DIN 6885-1 lists.
pub(crate) static DEVIATIONS: LazyLock<Vec<Deviations>> = LazyLock::new(|| {
    let pair = |limits: &Limits| [limits.lower_nm as f64, limits.upper_nm as f64];
    let row = |row: &Metric| {
        let of = |fit| widths(nm(row.width), fit).ok();
        let [free, normal, close] = [of(KeyFit::Free)?, of(KeyFit::Normal)?, of(KeyFit::Close)?];
        let keyways =
            [free, normal, close].map(|of| [pair(&of.in_shaft.hole), pair(&of.in_hub.hole)]);
        Some(Deviations { nominal: row.width as f64, key: pair(&free.in_hub.shaft), keyways })
    };
    PARALLEL.iter().filter_map(row).collect()
});
