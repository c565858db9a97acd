//! What may stand anywhere in a marking: speeds, sizes, type, restrictions.

use super::{Marking, Restriction, ShapeMark, Unread};
use crate::units::{
    AngularVelocity, Decimal, Length, Velocity, foot_per_minute, inch, meter_per_second,
    millimeter, number, revolution_per_minute,
};

/// Sizes without a unit are millimetres from this diameter up: no wheel is so many inches.
const SURELY_MM: f64 = 50.0;

const THOUSANDS: &str = "its mark or blank may be one of thousands";
const NO_UNIT: &str = "it has no unit, and may be inches or millimetres";
const NO_PLACE: &str = "it has no place in the order of the standards that hubwright knows";
const NO_RESTRICTION: &str = "it is no restriction that hubwright knows";

/// A marking while it is read: its characters, and which of them are spoken for.
pub(super) struct Scan {
    /// As it came, but for signs that stand for plainer ones.
    chars: Vec<char>,
    taken: Vec<bool>,
    /// What was taken and not read, with its place.
    unread: Vec<(usize, Unread)>,
}

/// A run of letters and digits that nothing has taken.
#[derive(Clone, Debug)]
pub(super) struct Token {
    /// Place of its first character.
    pub start: usize,
    /// In capitals.
    pub text: String,
    /// As it came.
    pub came: String,
    /// Whether something that was taken stands between it and the one before.
    pub apart: bool,
}

impl Scan {
    pub(super) fn new(text: &str) -> Self {
        let plain = text.trim().replace("⁻¹", "-1").replace('″', "\"");
        let chars: Vec<char> = plain
            .chars()
            .map(|c| match c {
                '×' | '✕' | '⨯' => 'x',
                '–' | '—' | '−' | '‐' | '‑' => '-',
                c if c.is_whitespace() => ' ',
                c => c,
            })
            .collect();
        Self { taken: vec![false; chars.len()], chars, unread: Vec::new() }
    }

    fn at(&self, place: usize) -> char {
        match self.taken.get(place) {
            Some(false) => self.chars[place].to_ascii_uppercase(),
            _ => '\0',
        }
    }

    fn text(&self, from: usize, to: usize) -> String {
        self.chars.get(from..to).unwrap_or_default().iter().collect()
    }

    pub(super) fn take(&mut self, from: usize, to: usize) {
        for place in from..to.min(self.taken.len()) {
            self.taken[place] = true;
        }
    }

    pub(super) fn not_read(&mut self, from: usize, to: usize, why: &'static str) {
        let text = self.text(from, to).trim().to_owned();
        self.take(from, to);
        self.unread.push((from, Unread { text, why }));
    }

    /// Whether a word begins here.
    fn begins(&self, place: usize) -> bool {
        place == 0 || !self.chars[place - 1].is_alphanumeric()
    }

    fn blanks(&self, mut place: usize) -> usize {
        while self.at(place) == ' ' {
            place += 1;
        }
        place
    }

    fn digits(&self, mut place: usize) -> usize {
        while self.at(place).is_ascii_digit() {
            place += 1;
        }
        place
    }

    /// The end of one of these words at this place, where no letter or digit follows.
    fn word(&self, place: usize, words: &[&str]) -> Option<(usize, usize)> {
        words.iter().enumerate().find_map(|(which, word)| {
            let fits = word.chars().enumerate().all(|(i, c)| self.at(place + i) == c);
            let end = place + word.len();
            (fits && !self.at(end).is_alphanumeric()).then_some((which, end))
        })
    }

    /// The end of a number with at most one mark.
    fn decimal(&self, place: usize) -> usize {
        let end = self.digits(place);
        if matches!(self.at(end), '.' | ',') && self.at(end + 1).is_ascii_digit() {
            self.digits(end + 1)
        } else {
            end
        }
    }

    fn value(&self, from: usize, to: usize) -> Option<f64> {
        number(&self.text(from, to).replace(',', "."), Decimal::Point).ok()
    }

    /// Speeds, each a number and a unit.
    pub(super) fn speeds(&mut self, marking: &mut Marking) {
        const UNITS: [&str; 18] = [
            "M/S", "M/SEC", "M/MIN", "SFPM", "SFM", "FPM", "FT/MIN", "RPM", "R.P.M.", "R/MIN",
            "REV/MIN", "U/MIN", "1/MIN", "MIN-1", "/MIN", "MIN^-1", "S.F.P.M.", "T/MIN",
        ];
        const RIM: [&str; 8] =
            ["M/S", "M/SEC", "M/MIN", "SFPM", "SFM", "FPM", "FT/MIN", "S.F.P.M."];
        let mut place = 0;
        while place < self.chars.len() {
            if !self.at(place).is_ascii_digit()
                || !self.begins(place)
                || (place > 1
                    && matches!(self.at(place - 1), '.' | ',')
                    && self.at(place - 2).is_ascii_digit())
            {
                place += 1;
                continue;
            }
            let end = self.decimal(place);
            let Some((which, last)) = self.word(self.blanks(end), &UNITS) else {
                place = end;
                continue;
            };
            let unit = UNITS[which];
            let written = self.text(place, end);
            let grouped =
                |text: &str| text.rsplit_once(['.', ',']).is_some_and(|(_, r)| r.len() == 3);
            let small = matches!(unit, "M/S" | "M/SEC");
            let first = self.words_before(place);
            if !small && (grouped(&written) || self.follows_thousands(place, end)) {
                let from = if grouped(&written) { place } else { self.group_before(place) };
                self.not_read(from, last, THOUSANDS);
            } else if let Some(value) = self.value(place, end).filter(|value| *value > 0.0) {
                self.take(first, last);
                if RIM.contains(&unit) {
                    let speed = match unit {
                        "M/S" | "M/SEC" => Velocity::new::<meter_per_second>(value),
                        "M/MIN" => Velocity::new::<meter_per_second>(value / 60.0),
                        _ => Velocity::new::<foot_per_minute>(value),
                    };
                    marking.rim_speed = Some(lower(marking.rim_speed, speed, &mut marking.doubts));
                } else {
                    let speed = AngularVelocity::new::<revolution_per_minute>(value);
                    marking.speed = Some(lower(marking.speed, speed, &mut marking.doubts));
                }
            }
            place = last;
        }
    }

    /// Whether `250 rpm` has a group of digits before it, as in `12 250 rpm`.
    fn follows_thousands(&self, place: usize, end: usize) -> bool {
        end - place == 3 && self.group_before(place) < place
    }

    /// The start of one to three digits with one blank between them and this place.
    fn group_before(&self, place: usize) -> usize {
        let mut start = place.saturating_sub(1);
        if place == 0 || !matches!(self.at(start), ' ' | '\'' | '’') {
            return place;
        }
        let end = start;
        while start > 0 && self.at(start - 1).is_ascii_digit() {
            start -= 1;
        }
        if (1..=3).contains(&(end - start)) && self.begins(start) { start } else { place }
    }

    /// Where the words before a speed begin that only announce it, such as `max.` or `n =`.
    fn words_before(&self, place: usize) -> usize {
        const WORDS: [&str; 8] =
            ["MAX", "MAXIMUM", "NMAX", "VMAX", "VS", "SPEED", "OPERATING", "MOS"];
        let mut first = place;
        loop {
            let (mut end, mut equals) = (first, false);
            while end > 0 && matches!(self.at(end - 1), ' ' | '=' | ':' | '.' | '≤' | '<') {
                equals |= matches!(self.at(end - 1), '=' | '≤' | '<');
                end -= 1;
            }
            let mut start = end;
            while start > 0 && self.at(start - 1).is_alphabetic() {
                start -= 1;
            }
            let word: String = (start..end).map(|at| self.at(at)).collect();
            let announces =
                WORDS.contains(&word.as_str()) || (equals && matches!(word.as_str(), "N" | "V"));
            if !announces || !self.begins(start) {
                return first;
            }
            first = start;
        }
    }

    /// `type 41`, `T41`.
    pub(super) fn type_number(&mut self, marking: &mut Marking) {
        for place in 0..self.chars.len() {
            if !self.begins(place) {
                continue;
            }
            let named = self.word(place, &["TYPE", "TYP", "FORM"]).map(|(_, end)| self.blanks(end));
            let short = (self.at(place) == 'T').then_some(place + 1);
            let Some(from) = named.or(short).filter(|from| self.at(*from).is_ascii_digit()) else {
                continue;
            };
            let mut end = self.digits(from);
            if self.at(end) == 'A' && self.text(from, end) == "27" {
                end += 1;
            }
            if end - from > 3 || self.at(end).is_alphanumeric() || marking.shape.is_some() {
                continue;
            }
            marking.shape = Some(ShapeMark::Type(self.text(from, end).to_uppercase()));
            self.take(place, end);
        }
    }

    /// `RE1` to `RE6`.
    pub(super) fn restrictions(&mut self, marking: &mut Marking) {
        for place in 0..self.chars.len() {
            if !self.begins(place) || self.at(place) != 'R' || self.at(place + 1) != 'E' {
                continue;
            }
            let from = self.blanks(place + 2);
            let end = self.digits(from);
            if end == from || end - from > 2 || self.at(end).is_alphanumeric() {
                continue;
            }
            match format!("RE{}", self.text(from, end)).parse::<Restriction>() {
                Ok(restriction) => {
                    if !marking.restrictions.contains(&restriction) {
                        marking.restrictions.push(restriction);
                    }
                    self.take(place, end);
                }
                Err(_) => self.not_read(place, end, NO_RESTRICTION),
            }
        }
    }

    /// `300 x 30 x 32`, with `300/150` for a wheel that tapers and fractions for inches.
    pub(super) fn sizes(&mut self, marking: &mut Marking) {
        let mut place = 0;
        while place < self.chars.len() {
            if !self.at(place).is_ascii_digit() || !self.begins(place) {
                place += 1;
                continue;
            }
            let (mut sizes, mut inches) = (vec![self.size(place)], false);
            let mut end = sizes[0].1;
            loop {
                let mark = self.blanks(end);
                if let Some((_, past)) = self.inch_mark(mark) {
                    (end, inches) = (past, true);
                }
                let cross = self.blanks(end);
                let next = self.blanks(cross + 1);
                if self.at(cross) != 'X' || !self.at(next).is_ascii_digit() {
                    break;
                }
                let size = self.size(next);
                end = size.1;
                sizes.push(size);
            }
            // `A 4 X 0 V` is a grain, a grade and a structure.
            let before = (0..place).rev().find(|at| !matches!(self.at(*at), ' ' | '-'));
            let grain = before.is_some_and(|at| matches!(self.at(at), 'A' | 'C'));
            if sizes.len() < 2 || (sizes.len() == 2 && grain) {
                place = self.decimal(place).max(place + 1);
                continue;
            }
            let mut mm = false;
            if let Some((_, past)) = self.word(self.blanks(end), &["MM"]) {
                (end, mm) = (past, true);
            }
            self.set_sizes(marking, place, end, &sizes, [mm, inches]);
            place = end;
        }
    }

    fn set_sizes(
        &mut self,
        marking: &mut Marking,
        from: usize,
        end: usize,
        sizes: &[(Option<f64>, usize, bool)],
        [mm, inches]: [bool; 2],
    ) {
        let fraction = sizes.iter().any(|(.., fraction)| *fraction);
        let large = sizes[0].0.is_some_and(|first| first >= SURELY_MM);
        let known = marking.diameter.is_some() || sizes.iter().any(|(value, ..)| value.is_none());
        if known || sizes.len() > 3 || (mm && (inches || fraction)) {
            return self.not_read(from, end, NO_PLACE);
        }
        if !(mm || inches || fraction || large) {
            return self.not_read(from, end, NO_UNIT);
        }
        if fraction && !inches {
            marking.doubts.push("the sizes have no unit: a fraction was taken for inches".into());
        }
        let build = |value: f64| {
            if inches || fraction {
                Length::new::<inch>(value)
            } else {
                Length::new::<millimeter>(value)
            }
        };
        let size = |which: usize| sizes.get(which).and_then(|(value, ..)| *value).map(build);
        (marking.diameter, marking.thickness, marking.hole) = (size(0), size(1), size(2));
        self.take(from, end);
    }

    fn inch_mark(&self, place: usize) -> Option<(usize, usize)> {
        if self.at(place) == '"' {
            return Some((0, place + 1));
        }
        self.word(place, &["IN", "INCH", "INCHES"])
    }

    /// A size, where it ends, and whether it has a fraction: `22,23`, `1-1/4`, `300/150`.
    fn size(&self, place: usize) -> (Option<f64>, usize, bool) {
        let first = self.decimal(place);
        let value = self.value(place, first);
        let fraction = |from: usize| -> Option<(f64, usize)> {
            let slash = self.digits(from);
            let end = self.digits(slash + 1);
            if slash == from || self.at(slash) != '/' || end == slash + 1 {
                return None;
            }
            let (top, bottom) = (self.value(from, slash)?, self.value(slash + 1, end)?);
            let of_inches = top < bottom && [2.0, 4.0, 8.0, 16.0, 32.0, 64.0].contains(&bottom);
            of_inches.then_some((top / bottom, end))
        };
        if let Some((value, end)) = fraction(place) {
            return (Some(value), end, true);
        }
        if matches!(self.at(first), '-' | ' ')
            && let Some((part, end)) = fraction(first + 1)
        {
            return (value.map(|whole| whole + part), end, true);
        }
        // The smaller diameter or thickness of a wheel that tapers is not kept.
        if self.at(first) == '/' && self.at(first + 1).is_ascii_digit() {
            return (value, self.decimal(first + 1), false);
        }
        (value, first, false)
    }

    /// `1A1`, `11V9`, `14A1R`: a word of its own.
    pub(super) fn shape_code(&mut self, marking: &mut Marking) {
        const CORES: [&str; 11] = ["1", "2", "3", "4", "6", "9", "11", "12", "13", "14", "15"];
        let tokens = self.tokens();
        // An F8 or F10 after a maker's number looks the same: a code needs a grain of its kind.
        let superabrasive =
            tokens.iter().any(super::order::starts_superabrasive) || tokens.len() == 1;
        for token in tokens.iter().filter(|_| superabrasive) {
            let text = token.text.as_str();
            let letters = text.find(|c: char| !c.is_ascii_digit()).unwrap_or(text.len());
            let (core, rest) = text.split_at(letters);
            let digits = rest.find(|c: char| !c.is_ascii_alphabetic()).unwrap_or(rest.len());
            let (section, rest) = rest.split_at(digits);
            let place = rest.find(|c: char| !c.is_ascii_digit()).unwrap_or(rest.len());
            let (place, done) = rest.split_at(place);
            let fits = CORES.contains(&core)
                && (1..=3).contains(&section.len())
                && place.parse().is_ok_and(|place: u8| (1..=10).contains(&place))
                && done.len() <= 3
                && done.chars().all(|c| "BCHMPQRSTVWY".contains(c));
            if fits && marking.shape.is_none() {
                marking.shape = Some(ShapeMark::Code(text.to_owned()));
                self.take(token.start, token.start + text.chars().count());
            }
        }
    }

    /// `200-20-5-31.75` of a wheel with a shape code: diameter, thickness, depth of the rim, hole.
    pub(super) fn dashed_sizes(&mut self, marking: &mut Marking) {
        if !matches!(marking.shape, Some(ShapeMark::Code(_))) || marking.diameter.is_some() {
            return;
        }
        for place in 0..self.chars.len() {
            if !self.at(place).is_ascii_digit() || !self.begins(place) {
                continue;
            }
            let (mut sizes, mut end) = (Vec::new(), place);
            loop {
                let last = self.decimal(end);
                sizes.extend(self.value(end, last));
                if self.at(last) != '-' || !self.at(last + 1).is_ascii_digit() {
                    end = last;
                    break;
                }
                end = last + 1;
            }
            if let [diameter, thickness, rim, hole] = sizes[..]
                && diameter >= SURELY_MM
                && rim.max(hole) < diameter
            {
                let mm = |size| Some(Length::new::<millimeter>(size));
                (marking.diameter, marking.thickness, marking.hole) =
                    (mm(diameter), mm(thickness), mm(hole));
                return self.take(place, end);
            }
        }
    }

    /// The words that nothing has taken, in order.
    pub(super) fn tokens(&self) -> Vec<Token> {
        let mut all: Vec<Token> = Vec::new();
        let (mut place, mut apart) = (0, false);
        while place < self.chars.len() {
            if !self.at(place).is_alphanumeric() {
                apart |= self.taken[place];
                place += 1;
                continue;
            }
            let start = place;
            while self.at(place).is_alphanumeric() {
                place += 1;
            }
            let came = self.text(start, place);
            // No mark of the standards has other letters: such a word is only handed back.
            let text = if came.is_ascii() { came.to_ascii_uppercase() } else { String::new() };
            all.push(Token { start, text, came, apart });
            apart = false;
        }
        all
    }

    /// Hands over what was not read, in order.
    pub(super) fn leave(mut self, marking: &mut Marking) {
        for token in self.tokens() {
            self.unread.push((token.start, Unread { text: token.came, why: NO_PLACE }));
        }
        self.unread.sort_by_key(|(place, _)| *place);
        marking.unread = self.unread.into_iter().map(|(_, unread)| unread).collect();
    }
}

/// The lower of two limits, and a word about it.
fn lower<T: PartialOrd + Copy>(known: Option<T>, read: T, doubts: &mut Vec<String>) -> T {
    match known {
        Some(known) if known != read => {
            doubts.push("it names two speeds of a kind: the lower one counts".into());
            if known < read { known } else { read }
        }
        _ => read,
    }
}
