//! The rules, one file a subject, and what a rule is.
//!
//! A rule judges in two steps. Its `judge` reads the [`Facts`] and answers
//! with the number of one of its cases and the two figures it compared, no
//! words, so that a million mountings take a fraction of a second. A
//! [`Finding`](super::Finding) with words is built from that for what is shown.

mod balance;
mod blotter;
mod fit;
mod flange;
mod guard;
mod holding;
mod key;
mod nut;
mod plate;
mod seat;
mod speed;
mod taper;
mod thin;
mod thread;
mod wheel;

use super::facts::{Facts, is_blank};
use super::fields::{FIELDS, Field};
use super::rack::{BLOCK, Block};
use super::terms::Terms;
use super::verdict::Outcome;
use crate::source::Source;

/// Every rule, in the order in which a mounting is gone over.
pub static RULES: [&Rule; 40] = [
    &speed::OVER_SPEED,
    &speed::MARKINGS_DISAGREE,
    &wheel::MARKING_DISAGREES,
    &wheel::BURST_MARGIN,
    &wheel::HOLE_LARGE_FOR_WHEEL,
    &wheel::CUTTING_OFF_TOO_THICK,
    &wheel::WHEEL_TOO_OLD,
    &wheel::BUSHING,
    &flange::FLANGE_BELOW_ONE_THIRD,
    &flange::FLANGE_BELOW_TABLE,
    &flange::FLANGES_UNLIKE,
    &plate::FLANGE_RELIEF,
    &plate::LAND_WIDTH,
    &plate::FLANGE_TOO_THIN,
    &plate::FLANGE_MATERIAL,
    &holding::FLANGE_DISHES,
    &fit::HUB_RUN_OUT,
    &blotter::BLOTTER_MISSING,
    &blotter::BLOTTER_TOO_SMALL,
    &blotter::BLOTTER_REUSED,
    &fit::WHEEL_BINDS,
    &fit::SPIGOT_SIZE,
    &fit::WHEEL_LOOSE,
    &thread::THREAD_HAND,
    &thread::NUT_BOTTOMS,
    &thread::THREAD_REACH,
    &holding::NUT_UNSCREWS,
    &holding::WHEEL_SLIPS_IN_FLANGES,
    &nut::NUT_OVERLOADED,
    &holding::LAND_PRESSURE,
    &key::KEY_OVERLOADED,
    &key::KEY_FIT,
    &taper::SEAT_FIT,
    &taper::SEAT_OVERLOADED,
    &taper::TAPER_STICKS,
    &seat::SEAT_TOUCHES_SHOULDER,
    &thin::THIN_WHEEL,
    &thin::CUT_TOO_DEEP,
    &balance::UNBALANCE,
    &guard::GUARD_OPEN,
];

/// The rule with a slug.
pub fn find_rule(slug: &str) -> Option<&'static Rule> {
    RULES.iter().find(|rule| rule.slug == slug).copied()
}

/// What a rule's figures are measured in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Measure {
    /// No figures.
    Nothing,
    /// Rotational speed.
    Turns,
    /// Rim speed.
    Rim,
    /// Length.
    Size,
    /// Angle.
    Angle,
    /// Stress.
    Stress,
    /// Torque.
    Torque,
    /// Unbalance.
    Unbalance,
    /// Force.
    Force,
    /// Date.
    Day,
    /// Plain factor.
    Factor,
}

/// Which side of the demand is room.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Side {
    /// What was found must be at least the demand.
    Least,
    /// What was found must be at most the demand.
    Most,
}

/// One way a rule can turn out.
#[derive(Clone, Copy, Debug)]
pub struct Case {
    /// How bad it is.
    pub outcome: Outcome,
    /// What its figures are.
    pub measure: Measure,
    /// Which side of the demand is room.
    pub side: Side,
    /// Who demands it.
    pub source: Source,
    /// What it says, with `{found}` and `{demanded}` for the figures.
    pub says: &'static str,
}

/// What every rule says when a datum it needs is missing.
pub(crate) const CANT_TELL: u8 = 0;
/// What every rule says when nobody asks for a datum it needs.
pub(crate) const NOBODY_ASKS: u8 = 1;
/// Number of a rule's own first case.
pub(crate) const OWN: u8 = 2;

/// A rule's answer in numbers: a case and the two figures compared.
#[derive(Clone, Copy, Debug)]
pub struct Judged {
    pub(crate) case: u8,
    /// How bad it is, as [`rank`] has it: all that a block loop keeps.
    pub(crate) rank: f64,
    /// What was found, in the whole steps of [`Facts`]; NaN without figures.
    pub found: f64,
    /// What was demanded.
    pub demanded: f64,
}

impl Judged {
    /// Something is blank.
    pub(crate) const CANT_TELL: Self =
        Self { case: CANT_TELL, rank: rank(Outcome::Unknown), found: f64::NAN, demanded: f64::NAN };
    /// Nobody asks, of a rule that not every mounting must pass.
    pub(crate) const NOBODY_ASKS: Self = Self::nobody_asks(false);

    /// Nobody asks: unknown to a rule that every mounting must pass.
    pub(crate) const fn nobody_asks(essential: bool) -> Self {
        let rank = if essential { rank(Outcome::Unknown) } else { RANK_NOBODY_ASKS };
        Self { case: NOBODY_ASKS, rank, ..Self::CANT_TELL }
    }
}

/// A rule of a mounting.
pub struct Rule {
    /// Its name, stable between versions.
    pub slug: &'static str,
    /// What it asks.
    pub asks: &'static str,
    /// Whether every mounting must pass it, so that missing data are never passed over.
    pub essential: bool,
    /// How to put it right.
    pub advice: &'static str,
    /// Its manual: why it is there and how it judges.
    pub manual: &'static str,
    /// Its cases, in order; every outcome it can reach is here.
    pub cases: &'static [Case],
    needs: &'static [(&'static str, &'static str)],
    uses: &'static [(&'static str, &'static str)],
    adds: Option<fn(&Facts, &Terms) -> Option<String>>,
    judge: fn(&Facts, &Terms) -> Judged,
    block: fn(&Block<'_>, &Terms, &mut [Outcome; BLOCK]),
}

impl Rule {
    /// Judges one mounting, in numbers.
    pub(crate) fn judge(&self, facts: &Facts, terms: &Terms) -> Judged {
        (self.judge)(facts, terms)
    }

    /// Judges a block of mountings; only the outcomes are kept.
    pub(crate) fn judge_block(&self, block: &Block<'_>, terms: &Terms, out: &mut [Outcome; BLOCK]) {
        (self.block)(block, terms, out);
    }

    /// A sentence more about a finding, such as what it does at the rim.
    pub(crate) fn adds(&self, facts: &Facts, terms: &Terms) -> Option<String> {
        self.adds.and_then(|adds| adds(facts, terms))
    }

    /// The fields without which it can't judge.
    pub fn needs(&self) -> impl Iterator<Item = &'static Field> {
        fields_named(self.needs)
    }

    /// The fields that it reads besides, when they are there or asked for.
    pub fn uses(&self) -> impl Iterator<Item = &'static Field> {
        fields_named(self.uses)
    }

    /// The case that an answer names; `None` when a datum is missing.
    pub(crate) fn case(&self, judged: Judged) -> Option<&'static Case> {
        self.cases.get(usize::from(judged.case.checked_sub(OWN)?))
    }

    /// How bad an answer is.
    pub(crate) fn outcome(&self, judged: Judged) -> Outcome {
        match (self.case(judged), judged.case) {
            (Some(case), _) => case.outcome,
            (None, NOBODY_ASKS) if !self.essential => Outcome::NotChecked,
            _ => Outcome::Unknown,
        }
    }

    /// Every outcome it can reach, worst first.
    pub fn reaches(&self) -> Vec<Outcome> {
        let mut all: Vec<_> = self.cases.iter().map(|case| case.outcome).collect();
        all.push(Outcome::Unknown);
        if !self.essential {
            all.push(Outcome::NotChecked);
        }
        all.sort_unstable();
        all.dedup();
        all
    }

    /// The sources it cites, each once.
    pub fn sources(&self) -> Vec<Source> {
        let mut all = Vec::new();
        for case in self.cases {
            if !all.contains(&case.source) {
                all.push(case.source);
            }
        }
        all
    }
}

fn fields_named(names: &'static [(&str, &str)]) -> impl Iterator<Item = &'static Field> {
    names.iter().filter_map(|(place, name)| {
        FIELDS.iter().find(|field| field.place == *place && field.name == *name)
    })
}

impl std::fmt::Debug for Rule {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Rule").field("slug", &self.slug).finish_non_exhaustive()
    }
}

impl PartialEq for Rule {
    fn eq(&self, other: &Self) -> bool {
        self.slug == other.slug
    }
}

/// What missing data come to: nothing missing, a blank, or nobody asking.
#[inline(always)]
pub(crate) fn missing<const N: usize>(needed: [f64; N], nobody_asks: Judged) -> Option<Judged> {
    // Looked at all together: a branch for each would be guessed wrong too often.
    let blank = needed.iter().fold(false, |any, fact| any | is_blank(*fact));
    let lacking = needed.iter().fold(false, |any, fact| any | fact.is_nan());
    let answer = if blank { Judged::CANT_TELL } else { nobody_asks };
    lacking.then_some(answer)
}

/// How bad an outcome is, worst lowest, as a number that four mountings are
/// compared by at once.
pub(crate) const fn rank(outcome: Outcome) -> f64 {
    2.0 * outcome as u8 as f64
}

/// One side that passes does not speak for a side that nobody asks about, so
/// that this ranks just before a pass.
const RANK_NOBODY_ASKS: f64 = rank(Outcome::Pass) - 1.0;

/// The outcome of a rank.
#[inline(always)]
pub(crate) fn outcome_of(rank: f64) -> Outcome {
    // Ranks are whole: 0, 2, 4, 5 (nobody asks), 6 and 8.
    if rank < 1.0 {
        Outcome::Refuse
    } else if rank < 3.0 {
        Outcome::Unknown
    } else if rank < 4.5 {
        Outcome::Caution
    } else if (rank - 6.0).abs() < 0.5 {
        Outcome::Pass
    } else {
        Outcome::NotChecked
    }
}

/// Fails to compile when a case of practice or memory refuses.
pub(crate) const fn only_grounded_refusals(cases: &[Case]) {
    let mut at = 0;
    while at < cases.len() {
        let refuses = matches!(cases[at].outcome, Outcome::Refuse);
        assert!(
            !refuses || cases[at].source.status.may_refuse(),
            "practice and memory can't refuse"
        );
        at += 1;
    }
}

/// The worse of the answers on two flanges.
#[inline(always)]
pub(crate) fn worse(a: Judged, b: Judged) -> Judged {
    if b.rank < a.rank { b } else { a }
}

/// The worse of the answers on two flanges, the one with less room where they tie.
pub(crate) fn worse_by_room(cases: &[Case], a: Judged, b: Judged) -> Judged {
    let room = |judged: Judged| {
        let side = cases.get(usize::from(judged.case.wrapping_sub(OWN))).map(|case| case.side);
        match side {
            Some(Side::Most) => judged.demanded - judged.found,
            _ => judged.found - judged.demanded,
        }
    };
    if a.rank == b.rank && room(b) < room(a) { b } else { worse(a, b) }
}

/// Declares a rule: its cases, the fields it needs, and one body from which
/// the scalar judgement and the block loops are made.
macro_rules! rule {
    (
        $(#[doc = $doc:literal])+
        $name:ident = $slug:literal, essential $essential:literal;
        asks $asks:literal;
        needs $($place:ident . $field:ident),+;
        $(uses $($use_place:ident . $use_field:ident),+;)?
        cases { $($case:ident: $outcome:ident, $measure:ident $side:ident, $source:expr, $says:literal;)+ }
        advice $advice:literal;
        $(adds $adds:expr;)?
        judge |$f:ident, $t:ident| $body:block
    ) => {
        $(#[doc = $doc])+
        pub static $name: crate::mounting::rules::Rule = {
            #[derive(Clone, Copy)]
            #[repr(u8)]
            #[allow(clippy::enum_variant_names, reason = "cases are named for what they find")]
            enum It { $($case),+ }

            impl It {
                /// This case with the figures compared.
                #[inline(always)]
                fn with(self, found: f64, demanded: f64) -> crate::mounting::rules::Judged {
                    let case = self as u8 + crate::mounting::rules::OWN;
                    let rank = match self {
                        $(Self::$case => const { crate::mounting::rules::rank(crate::mounting::verdict::Outcome::$outcome) }),+
                    };
                    crate::mounting::rules::Judged { case, rank, found, demanded }
                }

                /// This case, which compares nothing.
                #[inline(always)]
                #[allow(dead_code, reason = "most rules compare figures in every case")]
                fn bare(self) -> crate::mounting::rules::Judged {
                    self.with(f64::NAN, f64::NAN)
                }
            }

            const CASES: &[crate::mounting::rules::Case] = &[$(crate::mounting::rules::Case {
                outcome: crate::mounting::verdict::Outcome::$outcome,
                measure: crate::mounting::rules::Measure::$measure,
                side: crate::mounting::rules::Side::$side,
                source: $source,
                says: $says,
            }),+];
            const _: () = crate::mounting::rules::only_grounded_refusals(CASES);

            #[allow(dead_code, reason = "not every rule names it")]
            const CANT_TELL: crate::mounting::rules::Judged = crate::mounting::rules::Judged::CANT_TELL;
            #[allow(dead_code, reason = "not every rule names it")]
            const NOBODY_ASKS: crate::mounting::rules::Judged =
                crate::mounting::rules::Judged::nobody_asks($essential);

            #[inline(always)]
            #[allow(dead_code, reason = "not every rule needs all of its data")]
            fn missing<const N: usize>(needed: [f64; N]) -> Option<crate::mounting::rules::Judged> {
                crate::mounting::rules::missing(needed, NOBODY_ASKS)
            }

            fn judge(
                $f: &crate::mounting::facts::Facts,
                $t: &crate::mounting::terms::Terms,
            ) -> crate::mounting::rules::Judged {
                /// The worse of the answers on two flanges, the one with less room where they tie.
                #[allow(dead_code, reason = "for rules that judge two flanges")]
                fn both(
                    a: crate::mounting::rules::Judged,
                    b: crate::mounting::rules::Judged,
                ) -> crate::mounting::rules::Judged {
                    crate::mounting::rules::worse_by_room(CASES, a, b)
                }
                $body
            }

            /// The same body for the block loop, which keeps ranks only and so need not look at room.
            #[inline(always)]
            fn judge_rank(
                $f: &crate::mounting::facts::Facts,
                $t: &crate::mounting::terms::Terms,
            ) -> f64 {
                #[inline(always)]
                fn body(
                    $f: &crate::mounting::facts::Facts,
                    $t: &crate::mounting::terms::Terms,
                ) -> crate::mounting::rules::Judged {
                    #[allow(unused_imports, reason = "for rules that judge two flanges")]
                    use crate::mounting::rules::worse as both;
                    $body
                }
                let judged = body($f, $t);
                judged.rank
            }

            /// That the fields named exist is checked here, when this compiles.
            #[allow(dead_code, reason = "never called")]
            fn needs(f: &crate::mounting::facts::Facts) -> impl Sized + '_ {
                (($(f.$place.$field,)+), ($($(f.$use_place.$use_field,)+)?))
            }

            #[inline(always)]
            fn block(
                block: &crate::mounting::rack::Block<'_>,
                terms: &crate::mounting::terms::Terms,
                out: &mut [crate::mounting::verdict::Outcome; crate::mounting::rack::BLOCK],
            ) {
                // A copy of the terms stays in registers; behind a reference it stops the vectors.
                let (mut ranks, terms) = ([0.0; crate::mounting::rack::BLOCK], *terms);
                for (row, rank) in ranks.iter_mut().enumerate() {
                    *rank = judge_rank(&block.row(row), &terms);
                }
                for (out, rank) in out.iter_mut().zip(&ranks) {
                    *out = crate::mounting::rules::outcome_of(*rank);
                }
            }

            crate::mounting::rules::Rule {
                slug: $slug,
                asks: $asks,
                essential: $essential,
                advice: $advice,
                manual: concat!($($doc, "\n"),+),
                cases: CASES,
                needs: &[$((stringify!($place), stringify!($field))),+],
                uses: &[$($((stringify!($use_place), stringify!($use_field))),+)?],
                adds: rule!(@adds $($adds)?),
                judge: |facts, terms| judge(facts, terms),
                block: crate::mounting::rack::fastest!(block),
            }
        };
    };
    (@adds) => { None };
    (@adds $adds:expr) => { Some($adds) };
}
pub(crate) use rule;
