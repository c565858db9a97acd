//! Which way a nut comes off.

use crate::units::words;

words! {
    /// Which way the spindle turns, seen from the nut.
    Rotation, "rotation" {
        /// As the hands of a clock.
        Clockwise = "clockwise" ["cw"];
        /// Against the hands of a clock.
        Anticlockwise = "anticlockwise" ["ccw", "counterclockwise"];
        /// Both ways: the spindle is reversed in use.
        Both = "both" ["either", "reversing"];
    }
}

/// Which way a nut comes off, and whether running or braking takes it there, in a sentence or two.
///
/// # Source
///
/// Statics; Mich. Admin. Code R 408.10115 for the rule of hands.
///
/// # Example
///
/// ```
/// use hubwright::joint::{Rotation, loosening};
///
/// let says = loosening(false, Some(Rotation::Anticlockwise));
/// assert!(says.starts_with("Seen from the nut, a right-hand thread comes off anticlockwise."));
/// assert!(says.contains("tighten it"));
/// ```
pub fn loosening(left_hand: bool, rotation: Option<Rotation>) -> String {
    let (hand, off) = if left_hand { ("left", "clockwise") } else { ("right", "anticlockwise") };
    let first = format!("Seen from the nut, a {hand}-hand thread comes off {off}.");
    let takes = |rotation| if rotation == Rotation::Clockwise { "left" } else { "right" };
    match rotation {
        None => first,
        Some(Rotation::Both) => format!(
            "{first} The spindle runs both ways, and one of them loosens the nut: key the loose flange or lock the nut."
        ),
        Some(rotation) if takes(rotation) == hand => format!(
            "{first} The spindle runs {rotation}: drag and run-up tighten it; braking reverses the torque and tends to loosen it."
        ),
        Some(rotation) => format!(
            "{first} The spindle runs {rotation}: drag and run-up loosen it, so it takes a {}-hand thread; only braking tightens it.",
            takes(rotation)
        ),
    }
}
