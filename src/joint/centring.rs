//! Centring a slotting tool in a bore by the two marks that its corners leave.

use super::key::{narrower, outside};
use crate::error::Error;
use crate::source::{Source, Status};
use crate::tables::laws::ARITHMETIC;
use crate::units::{
    Angle, Exact, Length, degree, figure, meter, millimeter, positive_length, radian, shown_mm,
    words, zero_or_more,
};
use crate::working::{Step, Working};

/// That equal marks mean a centred tool, and how the tool is moved.
pub const EQUAL_MARKS: Source = Source::new(
    "equal-marks",
    "common practice, no source",
    "",
    "equal touch marks mean a centred tool",
    Status::Practice,
);

words! {
    /// Which way the tool has to go.
    MoveTool, "way" {
        /// Nowhere: the marks are equal as far as they were read.
        Stay = "stay" [];
        /// Toward the left mark.
        Left = "left" [];
        /// Toward the right mark.
        Right = "right" [];
    }
}

/// The two marks that a flat slotting tool has cut in a bore.
///
/// Fed straight up, a tool touches a bore with its corners. Each corner cuts a flat at the
/// height `H` of the edge, from its own side to where the bore passes `H`, so that the marks
/// are `b/2 ± e − √(r² − H²)` wide, with `b` the tool's width and `e` its offset:
/// `e = (wide − narrow) / 2` exactly, whatever the bore. The tool stands off centre
/// toward the wide mark and has to go toward the narrow one; or the work the other way.
/// The bore then tells how deep the tool is: `H = √(r² − ((b − left − right) / 2)²)`.
///
/// A keyway off centre by `e` goes onto a shaft whose keyway is central when the
/// hub is turned a little, and then leans against the key by `asin(e / r)`.
///
/// The offset left after the move is at most what one mark is measured within, plus the
/// fixture's repeatability: how far off the work can lie when it is put back.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) for a tool as wide as the bore, a mark that is not
/// above zero (one mark alone tells no offset), marks that together are as wide as the
/// tool, a corner beyond the bore; [`NotFinite`](crate::ErrorKind::NotFinite) for NaN and infinite ones.
///
/// # Source
///
/// Geometry of the circle; that equal marks mean centred is common practice, no source.
///
/// # Example
///
/// A 4 mm tool in a 22 mm bore leaves marks of 0.60 mm on the left and 0.36 mm on the right: it
/// stands 0.12 mm too far left and has to go right.
///
/// ```
/// use hubwright::joint::{MoveTool, SlotMarks};
/// use hubwright::units::{Length, millimeter};
///
/// let mm = Length::new::<millimeter>;
/// let found = SlotMarks::new(mm(22.0), mm(4.0), mm(0.60), mm(0.36)).solve()?;
/// assert_eq!(found.move_tool, MoveTool::Right);
/// assert!((found.offset.get::<millimeter>() - 0.12).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct SlotMarks {
    /// Diameter of the bore.
    pub bore: Length,
    /// Width of the tool.
    pub tool_width: Length,
    /// Width of the mark on the left.
    pub left_mark: Length,
    /// Width of the mark on the right.
    pub right_mark: Length,
    /// How well one mark is measured, either way.
    pub measured_within: Option<Length>,
    /// How far off the work can lie when the fixture takes it again, either way.
    pub repeatability: Option<Length>,
    /// Depth of the keyway at the middle, for the feed that is left.
    pub depth: Option<Length>,
}

/// What [`SlotMarks::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Centring {
    /// What was asked.
    pub marks: SlotMarks,
    /// How far the tool is off centre, and so how far to move it.
    pub offset: Length,
    /// Which way to move the tool; the work goes the other way instead.
    pub move_tool: MoveTool,
    /// How much higher one wall of the keyway would be than the other, if it were cut like this.
    pub wall_difference: Length,
    /// How much the keyway would lean against the key.
    pub lean: Angle,
    /// How deep the corner at the wide mark has cut since it touched.
    pub cut: Length,
    /// Greatest offset that the move can leave; `None` where neither uncertainty is given.
    pub left_over: Option<Length>,
    /// How much the keyway then leans at most.
    pub left_over_lean: Option<Angle>,
    /// Feed from here to the depth given, at the middle.
    pub feed_left: Option<Length>,
}

impl SlotMarks {
    /// Two marks, taken as exact.
    pub fn new(bore: Length, tool_width: Length, left_mark: Length, right_mark: Length) -> Self {
        Self {
            bore,
            tool_width,
            left_mark,
            right_mark,
            measured_within: None,
            repeatability: None,
            depth: None,
        }
    }

    /// With how well one mark is measured, either way.
    #[must_use]
    pub fn with_measured_within(mut self, within: Length) -> Self {
        self.measured_within = Some(within);
        self
    }

    /// With how far off the work can lie when the fixture takes it again.
    #[must_use]
    pub fn with_repeatability(mut self, repeatability: Length) -> Self {
        self.repeatability = Some(repeatability);
        self
    }

    /// With the depth of the keyway, for the feed that is left.
    #[must_use]
    pub fn with_depth(mut self, depth: Length) -> Self {
        self.depth = Some(depth);
        self
    }

    fn check(&self) -> Result<(), Error> {
        positive_length("bore", self.bore)?;
        narrower("tool_width", self.tool_width, "bore", self.bore)?;
        for (name, mark) in [("left_mark", self.left_mark), ("right_mark", self.right_mark)] {
            if let Err(mut error) = positive_length(name, mark) {
                let hint = "one mark alone tells only which corner is nearer: feed on until both \
                            corners have touched, or move the tool away from the mark";
                error.set_hint(hint.into());
                return Err(error);
            }
        }
        let room = |width: f64, hint: &str| {
            let together = self.left_mark.exact() + self.right_mark.exact();
            if together < width {
                return Ok(());
            }
            let range = format!("not below {} with the other mark", figure(width / 1e6, 4));
            let given = self.left_mark.exact().max(self.right_mark.exact()) / 1e6;
            let wide = if self.left_mark < self.right_mark { "right_mark" } else { "left_mark" };
            Err(outside(wide, given, range, "mm", String::new(), hint.into()))
        };
        room(
            self.tool_width.exact(),
            "marks that meet in the middle are one: the tool is past its corners, and tells no offset",
        )?;
        for (name, size) in
            [("measured_within", self.measured_within), ("repeatability", self.repeatability)]
        {
            if let Some(size) = size {
                zero_or_more(name, size.get::<millimeter>(), "mm", "0.01 mm")?;
            }
        }
        if let Some(depth) = self.depth {
            positive_length("depth", depth)?;
        }
        let corner = self.tool_width / 2.0 + (self.left_mark - self.right_mark).abs() / 2.0;
        if corner < self.bore / 2.0 {
            return Ok(());
        }
        let (mark, given) = if self.left_mark > self.right_mark {
            ("left_mark", self.left_mark)
        } else {
            ("right_mark", self.right_mark)
        };
        let [corner, radius] =
            [corner.exact(), self.bore.exact() / 2.0].map(|nm| figure(nm / 1e6, 4));
        let range = format!(
            "too large beside the other: a corner of the tool would lie {corner} mm from the middle of a bore of radius {radius}"
        );
        let hint = "measure both marks, the tool and the bore again";
        Err(outside(mark, shown_mm(given), range, "mm", String::new(), hint.into()))
    }

    /// The offset, the way to move and what is left.
    ///
    /// # Errors
    ///
    /// See [`SlotMarks`].
    pub fn solve(self) -> Result<Centring, Error> {
        self.check()?;
        let m = |length: Length| length.get::<meter>();
        let (r, b) = (m(self.bore) / 2.0, m(self.tool_width));
        let (left, right) = (self.left_mark, self.right_mark);
        let offset = (left - right).abs() / 2.0;
        let e = m(offset);
        let within = self.measured_within.unwrap_or_default();
        let move_tool = if offset.exact() <= within.exact() {
            MoveTool::Stay
        } else if left > right {
            MoveTool::Right
        } else {
            MoveTool::Left
        };
        // Height of the bore at a distance from its middle plane.
        let height = |x: f64| ((r - x) * (r + x)).sqrt();
        let edge = height((b - m(left) - m(right)) / 2.0);
        let lean = |offset: Length| Angle::new::<radian>((m(offset) / r).asin());
        let given = self.measured_within.is_some() || self.repeatability.is_some();
        // A tool that stays leaves what was read of its offset too.
        let stays = if move_tool == MoveTool::Stay { offset } else { Length::default() };
        let left_over = given.then(|| stays + within + self.repeatability.unwrap_or_default());
        Ok(Centring {
            marks: self,
            offset,
            move_tool,
            wall_difference: Length::new::<meter>(height(b / 2.0 - e) - height(b / 2.0 + e)),
            lean: lean(offset),
            cut: Length::new::<meter>(edge - height(b / 2.0 + e)),
            left_over,
            // No tool stands further off than the bore is wide.
            left_over_lean: left_over
                .map(|most| lean(if m(most) < r { most } else { self.bore / 2.0 })),
            feed_left: self.depth.map(|depth| Length::new::<meter>(r + m(depth) - edge)),
        })
    }
}

impl Centring {
    /// The steps, recomputed; the last one's result is `lean` in degrees.
    pub fn working(&self) -> Working {
        let Ok(again) = self.marks.solve() else { return Working::default() };
        let mm = |length: Length| figure(length.get::<millimeter>(), 4);
        let (wide, narrow) = if self.marks.left_mark < self.marks.right_mark {
            (self.marks.right_mark, self.marks.left_mark)
        } else {
            (self.marks.left_mark, self.marks.right_mark)
        };
        Working {
            steps: vec![
                Step {
                    symbol: "offset",
                    relation: "(wide mark − narrow mark) / 2",
                    numbers: format!("({} − {}) / 2", mm(wide), mm(narrow)),
                    result: again.offset.get::<millimeter>(),
                    unit: "mm",
                    source: EQUAL_MARKS,
                },
                Step {
                    symbol: "lean",
                    relation: "asin(offset / r)",
                    numbers: format!("asin({} / {})", mm(again.offset), mm(self.marks.bore / 2.0)),
                    result: again.lean.get::<degree>(),
                    unit: "deg",
                    source: ARITHMETIC,
                },
            ],
        }
    }
}
