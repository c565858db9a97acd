//! Ways of keeping the nut from being turned back, side by side.

use std::f64::consts::PI;

use super::{Answer, HoldingFound};
use crate::error::{Error, ErrorKind};
use crate::units::{
    Angle, Length, Pressure, Torque, Words, meter, millimeter, newton_meter, pascal, positive,
    positive_length, radian, shown_mm, words, zero_or_more,
};

words! {
    /// What keeps the loose flange, or a washer on it, from turning the nut.
    NutLock, "way of holding the nut" {
        /// A washer with a key or lug in a slot of the hub.
        KeyedWasher = "keyed washer" ["key"];
        /// Flats on the hub, and a hole to match.
        Flats = "flats" ["flat"];
        /// A pin through flange and hub.
        Pin = "pin" ["dowel"];
        /// A tongue of the washer, bent into a slot.
        Tongue = "tongue" ["tab"];
        /// The other hand of thread, and nothing else.
        OtherHand = "other hand of thread" ["left-hand thread"];
        /// Nothing.
        Nothing = "nothing" [];
    }
}

/// One way, with the sizes of its piece.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Piece {
    /// Which way.
    pub way: NutLock,
    /// Diameter at which it takes the torque; zero for a way without a piece.
    pub diameter: Length,
    /// Width of lug, tongue or flat, or diameter of a pin.
    pub width: Length,
    /// Thickness along the axis; of a pin, how far it reaches into the hub.
    pub thickness: Length,
    /// Depth in the slot over which the side of lug or tongue bears.
    pub depth: Length,
    /// How many there are.
    pub count: u32,
    /// Play in the slot, across; of flats and pins on one side.
    pub clearance: Length,
    /// From the fixed flange's land, where slot, flats or hole begin and end.
    pub reach: Option<[Length; 2]>,
}

/// How one way fares.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Compared {
    /// The way.
    pub piece: Piece,
    /// Least and greatest torque that reaches the nut; `None` for a positive piece while the nut's own inertia is not given.
    pub at_nut: Option<[Torque; 2]>,
    /// Whether start, stop and cutting torque turn the nut back.
    pub turns: Answer,
    /// Torque that the piece has to carry: what the loose flange brings.
    pub carries: Option<Torque>,
    /// Shear stress in it; `None` for flats and where there is none.
    pub shear: Option<Pressure>,
    /// Greatest bearing stress on it.
    pub bearing: Option<Pressure>,
    /// How far the flange turns before the piece takes hold.
    pub backlash: Option<Angle>,
    /// Whether it holds over all the stacks given; `None` while either is not given.
    pub over_all_stacks: Option<bool>,
}

impl Piece {
    /// A way without a piece: another hand of thread, or nothing.
    pub fn none(way: NutLock) -> Self {
        let zero = Length::new::<meter>(0.0);
        Self {
            way,
            diameter: zero,
            width: zero,
            thickness: zero,
            depth: zero,
            count: 1,
            clearance: zero,
            reach: None,
        }
    }

    /// A piece: the diameter it acts at, its width, its thickness and how deep it bears.
    pub fn new(
        way: NutLock,
        diameter: Length,
        width: Length,
        thickness: Length,
        depth: Length,
    ) -> Self {
        Self { diameter, width, thickness, depth, ..Self::none(way) }
    }

    /// Several of them that share alike.
    #[must_use]
    pub fn with_count(mut self, count: u32) -> Self {
        self.count = count;
        self
    }

    /// With its play.
    #[must_use]
    pub fn with_clearance(mut self, clearance: Length) -> Self {
        self.clearance = clearance;
        self
    }

    /// With where it can hold, from the fixed flange's land.
    #[must_use]
    pub fn with_reach(mut self, reach: [Length; 2]) -> Self {
        self.reach = Some(reach);
        self
    }

    /// Whether it has a piece that carries.
    pub fn positive(&self) -> bool {
        !matches!(self.way, NutLock::OtherHand | NutLock::Nothing)
    }

    fn check(&self) -> Result<(), Error> {
        if self.positive() {
            positive_length("diameter", self.diameter)?;
            positive_length("width", self.width)?;
            positive_length("thickness", self.thickness)?;
            if matches!(self.way, NutLock::KeyedWasher | NutLock::Tongue) {
                positive_length("depth", self.depth)?;
            }
            positive("count", f64::from(self.count), "", "1")?;
        }
        zero_or_more("clearance", self.clearance.get::<millimeter>(), "mm", "0.1 mm")?;
        match self.reach {
            Some([from, to]) if from > to => Err(ErrorKind::OutOfRange {
                argument: "reach".into(),
                given: shown_mm(to),
                range: format!("below its beginning of {}", shown_mm(from)),
                unit: "mm",
                authority: String::new(),
                hint: "give where it begins first, where it ends second".into(),
            }
            .into()),
            _ => Ok(()),
        }
    }

    /// Shear and greatest bearing stress under a torque.
    ///
    /// Lug and tongue: `F / (b t)` and `F / (depth t)`, with `F = 2 T / (d n)`. Pin: `4 F / (π b²)` and `F / (b t)`. Flats
    /// bear over the outer half of each, under a pressure that grows with the distance from its middle:
    /// `12 T / (n b² t)`.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for sizes not above zero.
    pub fn stress(&self, torque: Torque) -> Result<[Option<Pressure>; 2], Error> {
        self.check()?;
        if !self.positive() {
            return Ok([None; 2]);
        }
        let m = |length: Length| length.get::<meter>();
        let (b, t, n) = (m(self.width), m(self.thickness), f64::from(self.count));
        let torque = torque.get::<newton_meter>();
        let force = 2.0 * torque / (m(self.diameter) * n);
        let [shear, bearing] = match self.way {
            NutLock::Flats => [None, Some(12.0 * torque / (n * b * b * t))],
            NutLock::Pin => [Some(4.0 * force / (PI * b * b)), Some(force / (b * t))],
            _ => [Some(force / (b * t)), Some(force / (m(self.depth) * t))],
        };
        Ok([shear, bearing].map(|stress| stress.map(Pressure::new::<pascal>)))
    }

    /// How far the flange turns before the piece takes hold.
    fn backlash(&self) -> Angle {
        let m = |length: Length| length.get::<meter>();
        // A flat has play at its ends, half of its width from the middle.
        let arm = if self.way == NutLock::Flats { self.width } else { self.diameter };
        Angle::new::<radian>((2.0 * m(self.clearance) / m(arm)).atan())
    }
}

impl HoldingFound {
    /// How ways of holding the nut fare on this wheel, over the stacks that the hub has to hold.
    ///
    /// A piece carries what the loose flange can bring: its share of the greatest torque asked, and no more than its blotter
    /// carries. Behind a piece nothing but the nut's own inertia reaches the nut.
    ///
    /// # Errors
    ///
    /// As [`Piece::stress`], and for a reach or stacks that end before they begin.
    pub fn compare(
        &self,
        pieces: &[Piece],
        stacks: Option<[Length; 2]>,
    ) -> Result<Vec<Compared>, Error> {
        if let Some([least, greatest]) = stacks {
            super::ordered("stacks", [shown_mm(least), shown_mm(greatest)], "mm")?;
        }
        pieces.iter().map(|piece| self.one(*piece, stacks)).collect()
    }

    fn one(&self, piece: Piece, stacks: Option<[Length; 2]>) -> Result<Compared, Error> {
        let nm = |torque: Torque| torque.get::<newton_meter>();
        let brings = (self.of.loose_share[1] * nm(self.asked)).min(nm(self.carries_face[1]));
        let brings = Torque::new::<newton_meter>(brings);
        let [shear, bearing] = piece.stress(brings)?;
        if piece.positive() {
            let spin = self.of.nut_spin;
            let turns = match self.keyed_margin {
                Some(margin) if margin > 1.0 && nm(self.release[0]) > 0.0 => Answer::No,
                None if nm(self.release[0]) > 0.0 => Answer::No,
                _ => Answer::Perhaps,
            };
            let within =
                |[from, to]: [Length; 2], [least, most]: [Length; 2]| from <= least && most <= to;
            return Ok(Compared {
                piece,
                at_nut: spin.map(|spin| [spin; 2]),
                turns,
                carries: Some(brings),
                shear,
                bearing,
                backlash: Some(piece.backlash()),
                over_all_stacks: piece.reach.zip(stacks).map(|(reach, all)| within(reach, all)),
            });
        }
        let all: Vec<_> = self
            .unscrewing
            .iter()
            .filter(|one| {
                self.of
                    .running
                    .is_none_or(|is| (is == one.running) == (piece.way == NutLock::Nothing))
            })
            .collect();
        let worst = all.iter().map(|one| one.turns).max_by_key(|turns| *turns as u8);
        let least = all.iter().map(|one| nm(one.at_nut[0])).fold(f64::INFINITY, f64::min);
        let greatest = all.iter().map(|one| nm(one.at_nut[1])).fold(0.0, f64::max);
        Ok(Compared {
            piece,
            at_nut: Some([least, greatest].map(Torque::new::<newton_meter>)),
            turns: worst.unwrap_or(Answer::Perhaps),
            carries: None,
            shear: None,
            bearing: None,
            backlash: None,
            over_all_stacks: Some(true),
        })
    }
}

impl Compared {
    /// What is to be said of it, in a sentence or two.
    pub fn says(&self) -> String {
        let way = self.piece.way.word();
        match (self.piece.way, self.turns) {
            (NutLock::OtherHand, _) => "The hand of thread follows the running direction; another hand trades braking against running and keys nothing.".into(),
            (NutLock::Nothing, Answer::No) => "Start, stop and cutting torque do not turn the nut; that is not to say that it will not come loose: a loose flange can walk under a turning load, and vibration and creep of the blotters eat preload.".into(),
            (NutLock::Nothing, Answer::Perhaps) => "At some of the frictions given, start, stop or cutting torque turn the nut back.".into(),
            (NutLock::Nothing, Answer::Yes) => "Start, stop or cutting torque turn the nut back.".into(),
            (_, Answer::No) => {
                let stack = match self.over_all_stacks {
                    Some(true) => " It holds over all the stacks given.",
                    Some(false) => " It does NOT hold over all the stacks given.",
                    None => "",
                };
                format!("The {way} takes what the loose flange brings, walking too; only the nut's own inertia reaches the nut.{stack}")
            }
            _ => format!("The {way} takes what the loose flange brings, but the nut does not hold against its own inertia, or its thread runs back by itself."),
        }
    }
}
