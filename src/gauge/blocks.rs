//! Gauge blocks wrung to a height.

use super::check::{ruled_out, uncertainty};
use crate::error::{Error, ErrorKind};
use crate::units::{Exact, Length, positive_length};

/// Blocks that are wrung together at most: common practice, no source.
const MOST_BLOCKS: usize = 5;
/// Blocks in a set at most; the greatest sold have some 120.
const MOST_IN_SET: usize = 200;

/// What [`block_stack`] found.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct BlockStack {
    /// The height wanted.
    pub height: Length,
    /// The blocks, largest first.
    pub blocks: Vec<Length>,
    /// What they come to.
    pub sum: Length,
    /// That less the height wanted.
    pub off: Length,
}

/// The fewest blocks of a set that make a height to within so much; of as many, the nearest.
///
/// Each block of the set is there once. At most five are wrung together.
///
/// # Errors
///
/// [`Missing`](crate::ErrorKind::Missing) for an empty set, [`OutOfRange`](crate::ErrorKind::OutOfRange) when no five blocks come near enough (the
/// nearest is told), for a set of more than 200 blocks and lengths that are not above zero.
///
/// # Source
///
/// Every choice of up to five is tried.
///
/// # Example
///
/// 24.615 mm from seven blocks.
///
/// ```
/// use hubwright::gauge::block_stack;
/// use hubwright::units::{Length, micrometer, millimeter};
///
/// let mm = Length::new::<millimeter>;
/// let set = [1.005, 1.01, 1.11, 1.5, 2.0, 20.0, 21.0].map(mm);
/// let found = block_stack(mm(24.615), &set, Length::new::<micrometer>(0.5))?;
/// assert_eq!(found.blocks, [mm(21.0), mm(1.5), mm(1.11), mm(1.005)]);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn block_stack(height: Length, set: &[Length], within: Length) -> Result<BlockStack, Error> {
    positive_length("height", height)?;
    uncertainty("within", within)?;
    if set.is_empty() {
        return Err(ErrorKind::Missing {
            argument: "blocks".into(),
            why: "there is none to choose from".into(),
            hint: "list the blocks of the set, like [\"1.005 mm\", \"1.01 mm\"]".into(),
        }
        .into());
    }
    if set.len() > MOST_IN_SET {
        return Err(ErrorKind::OutOfRange {
            argument: "blocks".into(),
            given: set.len() as f64,
            range: format!("more than {MOST_IN_SET}"),
            unit: "",
            authority: String::new(),
            hint: "give the blocks of one set".into(),
        }
        .into());
    }
    for block in set {
        positive_length("blocks", *block)?;
    }
    let sizes: Vec<i64> = set.iter().map(|block| block.exact() as i64).collect();
    let (target, within) = (height.exact() as i64, within.exact() as i64);
    let search = Search::of(&sizes);
    let mut nearest: Option<Choice> = None;
    for count in 1..=MOST_BLOCKS.min(sizes.len()) {
        let Some(found) = search.nearest(target, count) else { continue };
        if nearest.as_ref().is_none_or(|best| found.off.abs() < best.off.abs()) {
            nearest = Some(found);
        }
        // Later ones have more blocks.
        if nearest.as_ref().is_some_and(|best| best.off.abs() <= within) {
            break;
        }
    }
    let nearest = nearest.ok_or_else(|| none_near(height, Length::default()))?;
    if nearest.off.abs() > within {
        let sum = Length::from_exact((target + nearest.off) as f64);
        return Err(none_near(height, sum));
    }
    let mut places = nearest.places;
    places.sort_unstable_by_key(|at| -sizes[*at]);
    Ok(BlockStack {
        height,
        blocks: places.iter().map(|at| set[*at]).collect(),
        sum: Length::from_exact((target + nearest.off) as f64),
        off: Length::from_exact(nearest.off as f64),
    })
}

fn none_near(height: Length, nearest: Length) -> Error {
    let range = "out of reach: the nearest that up to five blocks make is";
    let hint = "take a greater set, or allow more, like within=\"5 um\"";
    ruled_out("height", height, range, nearest, hint)
}

/// Some blocks by their places in the set, and how far off they are, in nm.
struct Choice {
    places: Vec<usize>,
    off: i64,
}

/// Single blocks and sums of two, each in order of size.
struct Search<'a> {
    sizes: &'a [i64],
    pairs: Vec<(i64, [usize; 2])>,
}

impl<'a> Search<'a> {
    fn of(sizes: &'a [i64]) -> Self {
        let mut pairs: Vec<_> = (0..sizes.len())
            .flat_map(|a| (0..a).map(move |b| (sizes[a] + sizes[b], [b, a])))
            .collect();
        pairs.sort_unstable();
        Self { sizes, pairs }
    }

    /// The choice of so many blocks that comes nearest.
    fn nearest(&self, target: i64, count: usize) -> Option<Choice> {
        let mut best: Option<Choice> = None;
        let mut take = |sum: i64, places: &[usize], more: &[usize]| {
            let off = sum - target;
            if best.as_ref().is_none_or(|best| off.abs() < best.off.abs()) {
                best = Some(Choice { places: [places, more].concat(), off });
            }
            best.as_ref().map_or(i64::MAX, |best| best.off.abs())
        };
        let singles = || self.sizes.iter().copied().enumerate();
        match count {
            1 => singles().for_each(|(at, size)| {
                take(size, &[at], &[]);
            }),
            2 => self.with_a_pair(target, 0, &[], &mut take),
            3 => singles().for_each(|(at, size)| self.with_a_pair(target, size, &[at], &mut take)),
            4 => self
                .pairs
                .iter()
                .for_each(|(sum, at)| self.with_a_pair(target, *sum, at, &mut take)),
            _ => {
                for (sum, [a, b]) in &self.pairs {
                    // Each five is met with its smallest place alone.
                    for (at, size) in singles().take(*a) {
                        self.with_a_pair(target, sum + size, &[at, *a, *b], &mut take);
                    }
                }
            }
        }
        best
    }

    /// Offers the pair nearest to what is left that uses no block twice.
    fn with_a_pair(
        &self,
        target: i64,
        sum: i64,
        used: &[usize],
        take: &mut impl FnMut(i64, &[usize], &[usize]) -> i64,
    ) {
        let left = target - sum;
        let from = self.pairs.partition_point(|(pair, _)| *pair < left);
        let mut best = i64::MAX;
        let above = self.pairs[from..].iter();
        let below = self.pairs[..from].iter().rev();
        let mut offer = |(pair, at): &(i64, [usize; 2])| {
            if (pair - left).abs() >= best {
                return false;
            }
            if at.iter().all(|place| !used.contains(place)) {
                best = take(sum + pair, used, at);
                return false;
            }
            true
        };
        let _ = above.into_iter().all(&mut offer);
        let _ = below.into_iter().all(&mut offer);
    }
}
