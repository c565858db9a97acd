//! Writing a scene as SVG.
//!
//! The text can stand in a page of HTML, several times over: it has no ids,
//! no scripts, no links and no colours of its own. Lines take the colour of
//! the text around them, so that they are black on paper and pale on a dark
//! screen.

use super::scene::{Anchor, Fill, Mark, Point, Scene, Stroke, Text};
use crate::units::figure;

/// Writes a scene as SVG.
///
/// The drawing is as wide as its page in mm and shrinks where there is less
/// room.
///
/// # Example
///
/// ```
/// use hubwright::draw::{Mark, Point, Scene, Stroke, svg};
///
/// let mut scene = Scene::new("a line", 20.0, 10.0);
/// let points = vec![Point::new(1.0, 5.0), Point::new(19.0, 5.0)];
/// scene.marks.push(Mark::Line { points, stroke: Stroke::Outline });
/// assert!(svg(&scene).contains("M1 5L19 5"));
/// ```
pub fn svg(scene: &Scene) -> String {
    let (width, height) = (number(scene.width), number(scene.height));
    let mut out = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 {width} {height}\" \
         width=\"{width}mm\" style=\"max-width:100%;height:auto\" fill=\"none\" stroke=\"currentColor\" \
         stroke-linejoin=\"round\" font-family=\"Helvetica,Arial,'Liberation Sans',sans-serif\">\
         <title>{}</title>",
        escaped(&scene.title)
    );
    for mark in scene.marks.iter().flat_map(Mark::plain) {
        match mark {
            Mark::Line { points, stroke } => out += &line(&path(&points), stroke),
            Mark::Area { points, fill, stroke } => out += &area(&points, fill, stroke),
            Mark::Text(text) => out += &written(&text),
            // Taken apart above.
            Mark::Dimension(_) => {}
        }
    }
    out + "</svg>"
}

/// A number of at most three decimals, with a point wherever the reader lives.
fn number(value: f64) -> String {
    figure(if value.is_finite() { value } else { 0.0 }, 3)
}

fn path(points: &[Point]) -> String {
    let place = |(at, p): (usize, &Point)| {
        format!("{}{} {}", if at == 0 { 'M' } else { 'L' }, number(p.x), number(p.y))
    };
    points.iter().enumerate().map(place).collect()
}

fn line(path: &str, stroke: Stroke) -> String {
    let dashes: Vec<_> = stroke.dashes().iter().map(|dash| number(*dash)).collect();
    let dashes = match dashes.is_empty() {
        true => String::new(),
        false => format!(" stroke-dasharray=\"{}\"", dashes.join(" ")),
    };
    format!("<path d=\"{path}\" stroke-width=\"{}\"{dashes}/>", number(stroke.width()))
}

fn area(points: &[Point], fill: Fill, stroke: Option<Stroke>) -> String {
    let closed = path(points) + "Z";
    let toned = |share: f64| {
        let share = number(share);
        format!(
            "<path d=\"{closed}\" fill=\"currentColor\" fill-opacity=\"{share}\" stroke=\"none\"/>"
        )
    };
    let hatched = |rises, spacing| {
        let path: String = hatch(points, rises, spacing).iter().map(|line| path(line)).collect();
        if path.is_empty() { path } else { line(&path, Stroke::Thin) }
    };
    let inside = match fill {
        Fill::Empty => String::new(),
        Fill::Pale => toned(0.14),
        Fill::Tone => toned(0.4),
        Fill::Solid => toned(1.0),
        Fill::HatchRising => hatched(true, 1.5),
        Fill::HatchFalling => hatched(false, 1.1),
    };
    inside + &stroke.map_or_else(String::new, |stroke| line(&closed, stroke))
}

/// Lines at 45° within an area, by where they cross its edges.
///
/// The lines of all areas are one set across the page, so that two areas of
/// one part hatch alike.
fn hatch(corners: &[Point], rises: bool, spacing: f64) -> Vec<[Point; 2]> {
    // Across the lines, from which a line is counted, and along them.
    let across = |p: &Point| if rises { p.x + p.y } else { p.x - p.y };
    let step = spacing * std::f64::consts::SQRT_2;
    let places = corners.iter().map(across);
    let (low, high) = places
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| (low.min(at), high.max(at)));
    let mut lines = Vec::new();
    // No page is that large.
    if !(high - low).is_finite() || high - low > 1e4 {
        return lines;
    }
    let mut count = (low / step).ceil();
    while count * step < high {
        let at = count * step;
        let mut crossings: Vec<Point> = Vec::new();
        for (a, b) in corners.iter().zip(corners.iter().cycle().skip(1)) {
            let (from, to) = (across(a) - at, across(b) - at);
            // A corner on the line belongs to one of its two edges.
            if (from < 0.0) != (to < 0.0) {
                let share = from / (from - to);
                crossings.push(Point::new(a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)));
            }
        }
        crossings.sort_by(|a, b| a.x.total_cmp(&b.x));
        lines.extend(crossings.chunks_exact(2).map(|pair| [pair[0], pair[1]]));
        count += 1.0;
    }
    lines
}

fn written(text: &Text) -> String {
    let anchor = match text.anchor {
        Anchor::Start => "start",
        Anchor::Middle => "middle",
        Anchor::End => "end",
    };
    let (x, y) = (number(text.at.x), number(text.at.y));
    let turned =
        if text.turned { format!(" transform=\"rotate(-90 {x} {y})\"") } else { String::new() };
    format!(
        "<text x=\"{x}\" y=\"{y}\" font-size=\"{}\" text-anchor=\"{anchor}\"{turned} \
         fill=\"currentColor\" stroke=\"none\">{}</text>",
        number(text.size),
        escaped(&text.text)
    )
}

/// A text as XML holds it: signs of the markup replaced; controls, turns of
/// the reading direction, and what XML forbids left out.
fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out += "&amp;",
            '<' => out += "&lt;",
            '>' => out += "&gt;",
            '"' => out += "&quot;",
            '\'' => out += "&#39;",
            '\t' | '\n' | '\r' => out.push(' '),
            c if c.is_control() || turns(c) || matches!(c, '\u{fffe}' | '\u{ffff}') => {}
            c => out.push(c),
        }
    }
    out
}

/// Whether a character turns the reading direction of those after it.
fn turns(c: char) -> bool {
    matches!(c, '\u{61c}' | '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}
