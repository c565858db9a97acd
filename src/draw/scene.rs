//! A scene: shapes in mm on a page.
//!
//! `x` runs to the right and `y` down, both from the upper left corner of the
//! page. Colours can't be chosen: lines and fills come from two short lists
//! that stay apart in black and white.

/// A place on the page, in mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// From the left edge.
    pub x: f64,
    /// From the upper edge.
    pub y: f64,
}

impl Point {
    /// A place on the page.
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }
}

/// A kind of line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Stroke {
    /// Thick: an edge that is known.
    Outline,
    /// Thin: dimensions, breaks, roots of threads.
    Thin,
    /// Thin chain line: an axis.
    Axis,
    /// Dashed: an edge that is not known.
    Dashed,
}

impl Stroke {
    /// Width in mm. Widths of 0.35 and 0.18 are one of the pairs in use for drawings of this
    /// size; common practice, no source.
    pub const fn width(self) -> f64 {
        match self {
            Self::Outline => 0.35,
            Self::Dashed => 0.25,
            Self::Thin | Self::Axis => 0.18,
        }
    }

    /// Lengths of dashes and gaps in turn, in mm; empty for an unbroken line.
    pub const fn dashes(self) -> &'static [f64] {
        match self {
            Self::Outline | Self::Thin => &[],
            Self::Axis => &[5.0, 0.9, 0.7, 0.9],
            Self::Dashed => &[1.5, 0.8],
        }
    }
}

/// What an area is filled with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Fill {
    /// Nothing.
    Empty,
    /// A pale tone.
    Pale,
    /// A middle tone.
    Tone,
    /// Ink all over.
    Solid,
    /// Thin lines that rise to the right.
    HatchRising,
    /// Thin lines that fall to the right, closer together.
    HatchFalling,
}

/// Which point of a text is put at its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Anchor {
    /// Its beginning.
    Start,
    /// Its middle.
    Middle,
    /// Its end.
    End,
}

/// A line of text.
#[derive(Clone, Debug, PartialEq)]
pub struct Text {
    /// Where the anchor lies, on the line that letters stand on.
    pub at: Point,
    /// Size of the type in mm.
    pub size: f64,
    /// Which point of the text lies there.
    pub anchor: Anchor,
    /// Whether it runs up the page instead of along it.
    pub turned: bool,
    /// The text.
    pub text: String,
}

impl Text {
    /// A level text.
    pub fn new(at: Point, size: f64, anchor: Anchor, text: impl Into<String>) -> Self {
        Self { at, size, anchor, turned: false, text: text.into() }
    }

    /// Its length in mm, guessed from its letters and never too short in the
    /// usual sans-serif types.
    pub fn length(&self) -> f64 {
        text_length(&self.text, self.size)
    }

    /// The box that it covers.
    pub fn bounds(&self) -> Bounds {
        let length = self.length();
        let before = match self.anchor {
            Anchor::Start => 0.0,
            Anchor::Middle => length / 2.0,
            Anchor::End => length,
        };
        let (up, down) = (0.78 * self.size, 0.24 * self.size);
        let Point { x, y } = self.at;
        if self.turned {
            Bounds { left: x - up, right: x + down, top: y + before - length, bottom: y + before }
        } else {
            Bounds { left: x - before, right: x - before + length, top: y - up, bottom: y + down }
        }
    }
}

/// Length in mm of a text set in a type of so many mm.
pub(super) fn text_length(text: &str, size: f64) -> f64 {
    // Widths of a wide sans-serif type, as shares of its size.
    let width = |c: char| match c {
        'i' | 'j' | 'l' | '.' | ',' | ':' | ';' | '\'' | '|' | '!' | ' ' => 0.35,
        'f' | 'r' | 't' | '(' | ')' | '-' | '/' | '"' => 0.42,
        'm' | 'w' | 'M' | 'W' | '%' | '@' => 0.98,
        'A'..='Z' | 'Ø' => 0.79,
        c if c.is_ascii() => 0.64,
        // Chinese and Japanese signs are as wide as the type is high.
        _ => 1.0,
    };
    text.chars().map(width).sum::<f64>() * size
}

/// Which way a dimension line runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Direction {
    /// Along the page.
    Level,
    /// Up the page.
    Plumb,
}

/// How much of a size its dimension line covers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Reach {
    /// All of it, with an arrowhead at either end.
    Whole,
    /// Half of a diameter: from the axis, which the line runs past, to an
    /// arrowhead at the surface.
    Half,
    /// The same with its text below the end of the line.
    HalfTextBelow,
}

/// A dimension line.
#[derive(Clone, Debug, PartialEq)]
pub struct Dimension {
    /// Where the size begins; on the axis when only half of it is drawn.
    pub from: Point,
    /// Where it ends.
    pub to: Point,
    /// How far to the right of `to`, or below it, the line lies; negative for left or above.
    pub offset: f64,
    /// Which way the line runs.
    pub direction: Direction,
    /// How much of the size it covers.
    pub reach: Reach,
    /// What it says.
    pub text: String,
}

/// Size of type of dimensions, in mm.
pub const TYPE_SIZE: f64 = 3.0;
/// How far half a dimension runs past the axis.
pub(super) const OVERRUN: f64 = 3.0;
const ARROW_LENGTH: f64 = 2.4;
const ARROW_HALF_WIDTH: f64 = 0.4;
/// How far an extension line runs past the dimension line.
const PAST: f64 = 1.0;
/// From a dimension line to its text.
const TEXT_GAP: f64 = 0.9;

impl Dimension {
    /// The length it covers on the page: half of the size for half a dimension.
    pub fn length(&self) -> f64 {
        match self.direction {
            Direction::Level => (self.to.x - self.from.x).abs(),
            Direction::Plumb => (self.to.y - self.from.y).abs(),
        }
    }

    /// Lines, arrowheads and text.
    fn plain(&self) -> Vec<Mark> {
        let level = self.direction == Direction::Level;
        // Along the line, and across it to where the line lies.
        let split = |p: Point| if level { (p.x, p.y) } else { (p.y, p.x) };
        let join = |along, across| {
            if level { Point::new(along, across) } else { Point::new(across, along) }
        };
        let ((a, from_across), (b, to_across)) = (split(self.from), split(self.to));
        let line = to_across + self.offset;
        let ahead = if b >= a { 1.0 } else { -1.0 };
        let mut all = Vec::new();
        let mut thin = |points: Vec<Point>| {
            all.push(Mark::Line { points, stroke: Stroke::Thin });
        };
        let extension = |along: f64, across: f64| {
            let away = (line - across).signum();
            let gap = 0.6_f64.min((line - across).abs());
            vec![join(along, across + away * gap), join(along, line + away * PAST)]
        };
        let whole = self.reach == Reach::Whole;
        if line != to_across {
            thin(extension(b, to_across));
        }
        if whole && line != from_across {
            thin(extension(a, from_across));
        }
        let inside = !whole || self.length() >= 2.0 * ARROW_LENGTH + 1.0;
        let tail = 2.0 * ARROW_LENGTH;
        let (start, end) = match (whole, inside) {
            (false, _) => (a - ahead * OVERRUN, b),
            (true, true) => (a, b),
            (true, false) => (a - ahead * tail, b + ahead * tail),
        };
        thin(vec![join(start, line), join(end, line)]);
        let arrow = |tip: f64, points: f64| Mark::Area {
            points: vec![
                join(tip, line),
                join(tip - points * ARROW_LENGTH, line - ARROW_HALF_WIDTH),
                join(tip - points * ARROW_LENGTH, line + ARROW_HALF_WIDTH),
            ],
            fill: Fill::Solid,
            stroke: None,
        };
        let outward = if inside { ahead } else { -ahead };
        all.push(arrow(b, outward));
        if whole {
            all.push(arrow(a, -outward));
        }
        all.push(Mark::Text(self.label(a, b, line)));
        all
    }

    fn label(&self, a: f64, b: f64, line: f64) -> Text {
        let middle = f64::midpoint(a, b);
        let text = |at, anchor, turned| Text {
            at,
            size: TYPE_SIZE,
            anchor,
            turned,
            text: self.text.clone(),
        };
        match (self.direction, self.reach) {
            // Clear of the extension lines, which a long text lies over.
            (Direction::Level, _) => {
                text(Point::new(middle, line - PAST - TEXT_GAP / 2.0), Anchor::Middle, false)
            }
            (_, Reach::HalfTextBelow) => {
                let below = Point::new(line, a + OVERRUN + TEXT_GAP + 0.78 * TYPE_SIZE);
                text(below, Anchor::Middle, false)
            }
            // A text longer than its line begins where the line does, clear of what stands below.
            (_, Reach::Half) if text_length(&self.text, TYPE_SIZE) > self.length() => {
                text(Point::new(line - TEXT_GAP, a + OVERRUN), Anchor::Start, true)
            }
            _ => text(Point::new(line - TEXT_GAP, middle), Anchor::Middle, true),
        }
    }
}

/// One thing on the page: a line, an area, a text or a dimension.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub enum Mark {
    /// A line through points, open.
    Line {
        /// The points.
        points: Vec<Point>,
        /// How it is drawn.
        stroke: Stroke,
    },
    /// An area within points.
    Area {
        /// Its corners.
        points: Vec<Point>,
        /// What it is filled with.
        fill: Fill,
        /// How its edge is drawn; `None` for no edge.
        stroke: Option<Stroke>,
    },
    /// A text.
    Text(Text),
    /// A dimension line with its text.
    Dimension(Dimension),
}

impl Mark {
    /// A rectangle by its upper left and lower right corners.
    pub fn rectangle(from: Point, to: Point, fill: Fill, stroke: Option<Stroke>) -> Self {
        let points = vec![from, Point::new(to.x, from.y), to, Point::new(from.x, to.y)];
        Self::Area { points, fill, stroke }
    }

    /// The lines, areas and texts that it consists of.
    pub fn plain(&self) -> Vec<Self> {
        match self {
            Self::Dimension(dimension) => dimension.plain(),
            other => vec![other.clone()],
        }
    }

    /// The box that it covers, width of lines included; `None` when it is empty.
    pub fn bounds(&self) -> Option<Bounds> {
        match self {
            Self::Line { points, stroke } => Bounds::of(points, stroke.width() / 2.0),
            Self::Area { points, stroke, .. } => {
                Bounds::of(points, stroke.map_or(0.0, |stroke| stroke.width() / 2.0))
            }
            Self::Text(text) => Some(text.bounds()),
            Self::Dimension(dimension) => Bounds::around(&dimension.plain()),
        }
    }
}

/// A box on the page, in mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bounds {
    /// Its left edge.
    pub left: f64,
    /// Its upper edge.
    pub top: f64,
    /// Its right edge.
    pub right: f64,
    /// Its lower edge.
    pub bottom: f64,
}

impl Bounds {
    fn of(points: &[Point], more: f64) -> Option<Self> {
        let corner = |p: &Point| Self {
            left: p.x - more,
            top: p.y - more,
            right: p.x + more,
            bottom: p.y + more,
        };
        points.iter().map(corner).reduce(Self::with)
    }

    fn around(marks: &[Mark]) -> Option<Self> {
        marks.iter().filter_map(Mark::bounds).reduce(Self::with)
    }

    /// The least box around two.
    #[must_use]
    pub fn with(self, other: Self) -> Self {
        Self {
            left: self.left.min(other.left),
            top: self.top.min(other.top),
            right: self.right.max(other.right),
            bottom: self.bottom.max(other.bottom),
        }
    }

    /// Whether it lies within another.
    pub fn within(self, other: Self) -> bool {
        self.left >= other.left
            && self.top >= other.top
            && self.right <= other.right
            && self.bottom <= other.bottom
    }

    /// Whether it shares some area with another.
    pub fn overlaps(self, other: Self) -> bool {
        self.left < other.right
            && other.left < self.right
            && self.top < other.bottom
            && other.top < self.bottom
    }
}

/// Shapes on a page; later ones lie over earlier ones.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Scene {
    /// What it shows, for those who can't see it.
    pub title: String,
    /// Width of the page in mm.
    pub width: f64,
    /// Height of the page in mm.
    pub height: f64,
    /// What is on it.
    pub marks: Vec<Mark>,
}

impl Scene {
    /// An empty page.
    pub fn new(title: impl Into<String>, width: f64, height: f64) -> Self {
        Self { title: title.into(), width, height, marks: Vec::new() }
    }

    /// The box of the whole page.
    pub fn page(&self) -> Bounds {
        Bounds { left: 0.0, top: 0.0, right: self.width, bottom: self.height }
    }

    /// The box that the marks cover; `None` on an empty page.
    pub fn bounds(&self) -> Option<Bounds> {
        Bounds::around(&self.marks)
    }

    /// Every text, those of dimensions among them.
    pub fn texts(&self) -> Vec<Text> {
        let plain = self.marks.iter().flat_map(Mark::plain);
        plain
            .filter_map(|mark| if let Mark::Text(text) = mark { Some(text) } else { None })
            .collect()
    }

    /// Every dimension.
    pub fn dimensions(&self) -> impl Iterator<Item = &Dimension> {
        self.marks.iter().filter_map(|mark| match mark {
            Mark::Dimension(dimension) => Some(dimension),
            _ => None,
        })
    }
}
