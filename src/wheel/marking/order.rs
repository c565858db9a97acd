//! The part of a marking that has an order: abrasive, grain, grade, structure, bond.

use super::scan::{Scan, Token};
use super::{BONDED, Grain, Marking, SUPERBONDS};
use crate::wheel::shape::Abrasive;

/// Structures are 0 to 14 and more; over this a number is something else.
const GREATEST_STRUCTURE: u16 = 20;

const NO_STRUCTURE: &str = "it is no number of a structure";
const NO_GRAIN: &str = "it is no FEPA size; it may be a mesh";
const MAY_BE_SHARE: &str = "it may be a bond or a share of abrasive";

/// Whether a word begins with D or B and the number of a known grain.
pub(super) fn starts_superabrasive(token: &Token) -> bool {
    let number = token.text.strip_prefix(['D', 'B']).map(leading_digits).unwrap_or_default();
    number.parse().is_ok_and(|number| Grain::superabrasive(number).is_some())
}

fn leading_digits(text: &str) -> &str {
    let end = text.find(|c: char| !c.is_ascii_digit()).unwrap_or(text.len());
    &text[..end]
}

fn leading_letters(text: &str) -> &str {
    let end = text.find(|c: char| !c.is_ascii_alphabetic()).unwrap_or(text.len());
    &text[..end]
}

/// A place in the words: how far they were read.
struct Cursor<'a> {
    tokens: &'a [Token],
    token: usize,
    within: usize,
}

impl<'a> Cursor<'a> {
    /// What is left of the word, or the next one where it is used up and nothing stands between.
    fn rest(&self) -> &'a str {
        match self.tokens.get(self.token) {
            Some(token) if self.within < token.text.len() => &token.text[self.within..],
            Some(_) => self
                .tokens
                .get(self.token + 1)
                .filter(|next| !next.apart)
                .map_or("", |next| next.text.as_str()),
            None => "",
        }
    }

    /// Whether what is left belongs to a word that was begun.
    fn inside(&self) -> bool {
        self.within > 0
            && self.tokens.get(self.token).is_some_and(|token| self.within < token.text.len())
    }

    /// Goes on by so many characters of [`Cursor::rest`].
    fn advance(&mut self, scan: &mut Scan, by: usize) {
        let (start, end) = self.span(by);
        scan.take(start, end);
        self.pass(by);
    }

    fn pass(&mut self, by: usize) {
        if self.tokens.get(self.token).is_some_and(|token| self.within >= token.text.len()) {
            self.token += 1;
            self.within = 0;
        }
        self.within += by;
    }

    /// Where the next so many characters stand in the marking.
    fn span(&self, by: usize) -> (usize, usize) {
        let (token, within) = match self.tokens.get(self.token) {
            Some(token) if self.within >= token.text.len() => (self.tokens.get(self.token + 1), 0),
            token => (token, self.within),
        };
        let start = token.map_or(0, |token| token.start) + within;
        (start, start + by)
    }
}

/// Reads the ordered part, bonded or superabrasive, whichever begins first.
pub(super) fn read(scan: &mut Scan, marking: &mut Marking) {
    let tokens = scan.tokens();
    let hard = tokens.iter().position(|token| starts_superabrasive(token) || split(&tokens, token));
    let bonded = (0..tokens.len()).find_map(|at| begins(&tokens, at).map(|within| (at, within)));
    match (bonded, hard) {
        (Some((at, _)), Some(hard)) if hard <= at => superabrasive(scan, marking, &tokens, hard),
        (Some((at, within)), _) => bonded_wheel(scan, marking, &tokens, at, within),
        (None, Some(hard)) => superabrasive(scan, marking, &tokens, hard),
        (None, None) => {
            // A diamond wheel whose grain is given in another way.
            let diamond = |token: &Token| {
                token.text == "D"
                    || token.text.starts_with('D') && !leading_digits(&token.text[1..]).is_empty()
            };
            if let Some(at) = tokens.iter().position(diamond) {
                superabrasive(scan, marking, &tokens, at);
            }
        }
    }
}

/// Whether a word is D or B alone and the next one is the number of a known grain.
fn split(tokens: &[Token], token: &Token) -> bool {
    let next = tokens.iter().find(|next| next.start > token.start);
    matches!(token.text.as_str(), "D" | "B")
        && next.is_some_and(|next| {
            leading_digits(&next.text)
                .parse()
                .is_ok_and(|number| Grain::superabrasive(number).is_some())
        })
}

/// Where in a word A or C stands with a known grain behind it.
fn begins(tokens: &[Token], at: usize) -> Option<usize> {
    let token = &tokens[at];
    token.text.char_indices().take(5).find_map(|(within, c)| {
        if !matches!(c, 'A' | 'C') {
            return None;
        }
        let cursor = Cursor { tokens, token: at, within: within + 1 };
        grain_of(leading_digits(cursor.rest())).map(|_| within)
    })
}

/// The grain of a run of digits, and how many of them: the maker may add one of its own.
fn grain_of(digits: &str) -> Option<(Grain, usize)> {
    let known = |length: usize| {
        let grain = digits.get(..length)?.parse().ok().and_then(Grain::bonded)?;
        Some((grain, length))
    };
    if digits.is_empty() || digits.len() > 5 {
        return None;
    }
    known(digits.len()).or_else(|| known(digits.len() - 1))
}

fn bonded_wheel(
    scan: &mut Scan,
    marking: &mut Marking,
    tokens: &[Token],
    at: usize,
    within: usize,
) {
    let token = &tokens[at];
    if within > 0 {
        marking.prefix = Some(token.text[..within].to_owned());
    } else if let Some(before) = at.checked_sub(1).map(|before| &tokens[before])
        && before.text.len() <= 3
        && !token.apart
    {
        marking.prefix = Some(before.text.clone());
        scan.take(before.start, before.start + before.text.len());
    }
    scan.take(token.start, token.start + within + 1);
    let alumina = token.text[within..].starts_with('A');
    marking.abrasive =
        Some(if alumina { Abrasive::AluminiumOxide } else { Abrasive::SiliconCarbide });
    let mut cursor = Cursor { tokens, token: at, within: within + 1 };
    let digits = leading_digits(cursor.rest());
    if let Some((grain, length)) = grain_of(digits) {
        marking.grain = Some(grain);
        if length < digits.len() {
            marking.doubts.push(format!(
                "{digits} is no grain: read as {} with a figure of the maker's",
                grain.number
            ));
        }
    }
    cursor.advance(scan, digits.len());
    grade(scan, marking, &mut cursor);
    structure(scan, marking, &mut cursor);
    bond(scan, marking, &mut cursor);
    if let (Some(grade), None) = (marking.grade, marking.bond)
        && BONDED.iter().any(|(letters, _)| letters.len() == 1 && letters.starts_with(grade))
    {
        marking.doubts.push(format!("{grade} was read as the grade; it may be the bond"));
    }
    suffix(scan, marking, &mut cursor);
}

fn grade(scan: &mut Scan, marking: &mut Marking, cursor: &mut Cursor<'_>) {
    let letters = leading_letters(cursor.rest());
    let pair = letters.len() == 2 && BONDED.iter().any(|(bond, _)| *bond == letters);
    if letters.is_empty() || pair || letters.len() > 4 {
        return;
    }
    marking.grade = letters.chars().next();
    cursor.advance(scan, 1);
}

fn structure(scan: &mut Scan, marking: &mut Marking, cursor: &mut Cursor<'_>) {
    loop {
        let digits = leading_digits(cursor.rest());
        if digits.is_empty() {
            return;
        }
        let number = digits.parse::<u16>().ok().filter(|n| *n <= GREATEST_STRUCTURE);
        match number.filter(|_| digits.len() <= 2 && marking.structure.is_none()) {
            Some(number) => {
                marking.structure = u8::try_from(number).ok();
                cursor.advance(scan, digits.len());
            }
            None => {
                let (from, to) = cursor.span(digits.len());
                scan.not_read(from, to, NO_STRUCTURE);
                cursor.pass(digits.len());
            }
        }
    }
}

fn bond(scan: &mut Scan, marking: &mut Marking, cursor: &mut Cursor<'_>) {
    let rest = cursor.rest();
    let letters = leading_letters(rest);
    let pair = BONDED.iter().find(|(bond, _)| bond.len() == 2 && *bond == letters);
    let one = BONDED.iter().find(|(bond, _)| bond.len() == 1 && letters.starts_with(*bond));
    // A word of several letters is no bond, but `VBE` may be a bond and the maker's letters.
    let Some((text, bond)) = pair.or(one).filter(|_| letters.len() <= 4) else { return };
    marking.bond = Some(*bond);
    if pair.is_some() && rest.len() > letters.len() {
        marking.doubts.push(format!(
            "{rest} was read as the bond {text}; it may be {} and the maker's {}",
            &text[..1],
            &rest[1..]
        ));
    }
    cursor.advance(scan, text.len());
}

/// What the maker adds: the rest of the bond's word, or one short word after it.
fn suffix(scan: &mut Scan, marking: &mut Marking, cursor: &mut Cursor<'_>) {
    if marking.bond.is_none() {
        return;
    }
    let (rest, inside) = (cursor.rest(), cursor.inside());
    let plain_word = |came: &str| came.len() > 2 && came.chars().all(|c| c.is_lowercase());
    let came = cursor.tokens.get(cursor.token + usize::from(!inside));
    let word = !inside && came.is_some_and(|token| plain_word(&token.came));
    if rest.is_empty() || rest.len() > 6 || word {
        return;
    }
    marking.suffix = Some(rest.to_owned());
    cursor.advance(scan, rest.len());
}

fn superabrasive(scan: &mut Scan, marking: &mut Marking, tokens: &[Token], at: usize) {
    let token = &tokens[at];
    marking.abrasive =
        Some(if token.text.starts_with('D') { Abrasive::Diamond } else { Abrasive::Cbn });
    let mut cursor = Cursor { tokens, token: at, within: 0 };
    cursor.advance(scan, 1);
    let digits = leading_digits(cursor.rest());
    marking.grain = digits.parse().ok().and_then(Grain::superabrasive);
    if marking.grain.is_some() {
        cursor.advance(scan, digits.len());
    } else if !digits.is_empty() {
        let (from, to) = cursor.span(digits.len());
        scan.not_read(from, to, NO_GRAIN);
        cursor.pass(digits.len());
    }
    loop {
        let rest = cursor.rest();
        let letters = leading_letters(rest);
        let digits = leading_digits(&rest[letters.len()..]);
        let share = digits.parse().ok().filter(|number| (25..=200).contains(number));
        let whole = letters.len() + digits.len() == rest.len() || letters.len() == 1;
        let bond = SUPERBONDS.iter().find(|(bond, _)| *bond == letters);
        if rest.is_empty() {
            return;
        } else if letters == "C" && share.is_some() && marking.concentration.is_none() {
            marking.concentration = share;
            cursor.advance(scan, letters.len() + digits.len());
        } else if letters == "V" && digits.len() == 3 {
            let (from, to) = cursor.span(letters.len() + digits.len());
            scan.not_read(from, to, MAY_BE_SHARE);
            cursor.pass(letters.len() + digits.len());
        } else if let Some((text, bond)) = bond.filter(|_| marking.bond.is_none() && whole) {
            marking.bond = Some(*bond);
            cursor.advance(scan, text.len());
            let next = leading_letters(cursor.rest());
            if !(next == "C" && marking.concentration.is_none()) {
                suffix(scan, marking, &mut cursor);
            }
        } else if letters.len() == 1 && marking.grade.is_none() && marking.bond.is_none() {
            marking.grade = letters.chars().next();
            cursor.advance(scan, 1);
            let number = leading_digits(cursor.rest());
            let share =
                number.parse().ok().filter(|n| [25, 50, 75, 100, 125, 150, 175, 200].contains(n));
            if share.is_some() && marking.concentration.is_none() {
                marking.concentration = share;
                marking
                    .doubts
                    .push(format!("{number} after the grade was read as the concentration"));
                cursor.advance(scan, number.len());
            }
        } else {
            return;
        }
    }
}
