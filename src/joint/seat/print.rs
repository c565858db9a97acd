//! What a print of marking paste says about a seat, and the print to expect.

use super::{Carries, SeatFound, check, mismatched};
use crate::error::{Error, ErrorKind};
use crate::solid::cone::End;
use crate::units::{
    Angle, Force, Length, degree, meter, millimeter, newton, radian, shown_mm, words, zero_or_more,
};

words! {
    /// What a print of marking paste looks like.
    Print, "print" {
        /// A full ring that begins at the small end and ends somewhere.
        SmallEnd = "small end" ["ring from the small end"];
        /// A full ring that begins at the large end and ends somewhere.
        LargeEnd = "large end" ["ring from the large end"];
        /// All round, over the whole length or nearly so.
        Whole = "whole length" ["whole", "full"];
        /// Three patches round the seat.
        ThreePatches = "three patches" ["three spots"];
        /// One patch on one side.
        OnePatch = "one patch" ["one spot", "one side"];
        /// A ring in the middle that reaches neither end.
        Middle = "middle" ["middle only"];
        /// A ring at each end and nothing between them.
        BothEnds = "both ends" ["ends only"];
    }
}

impl Print {
    /// What it means for the parts.
    pub const fn means(self) -> &'static str {
        match self {
            Self::SmallEnd => {
                "the hub's angle is too open: the small end carries, where it rocks and frets"
            }
            Self::LargeEnd => "the hub's angle is too closed: the large end carries",
            Self::Whole => {
                "the angles agree to within the bounds given; it does not prove that they are \
                 equal, nor that the seat is round or carries evenly under load"
            }
            Self::ThreePatches => {
                "the hub was squeezed by the jaws of its chuck: it is out of round, and its angle can't be told"
            }
            Self::OnePatch => {
                "the hub sat tilted, or on dirt or a burr: clean both cones and print again"
            }
            Self::Middle => {
                "the generator is curved, full in the middle: a tool off centre height or a worn slide; no angle can be told"
            }
            Self::BothEnds => {
                "the generator is curved, hollow in the middle: a tool off centre height or a worn slide; no angle can be told"
            }
        }
    }
}

/// What a print says: what [`SeatFound::mismatch_from_print`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct PrintRead {
    /// The print.
    pub print: Print,
    /// Half angle of the hub less that of the spindle; `None` unless the print is a ring from one end.
    pub mismatch: Option<Angle>,
    /// Between which the mismatch lies, for a print over the whole length.
    pub bounds: Option<[Angle; 2]>,
    /// Part of the ring that the force alone pressed together.
    pub elastic_length: Option<Length>,
}

/// The print to expect: what [`SeatFound::expected_print`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct PrintExpected {
    /// The end it begins at.
    pub from: Carries,
    /// How long it is, along the surface.
    pub length: Length,
    /// Its share of the surface's length.
    pub share: f64,
}

impl SeatFound {
    /// Length of the print along the surface over that of the surface: the elastic contact and what the
    /// film bridges beyond it. Not capped.
    fn printed(&self, end: End, tangent: f64, film: f64, force: f64) -> [f64; 2] {
        let generator = self.generator();
        let elastic = if force > 0.0 { self.side(end).1.share(force / tangent) } else { 0.0 };
        [elastic, elastic + film / tangent / generator]
    }

    /// Length of the seat along its surface, in metres.
    fn generator(&self) -> f64 {
        let [_, cosine] = self.cone().sine_cosine();
        self.cone().length / cosine
    }

    /// The mismatch whose print is so long; longer prints come from smaller mismatches.
    fn tangent_of(&self, end: End, share: f64, film: f64, force: f64) -> Option<f64> {
        let most = super::GREATEST_MISMATCH.to_radians().tan();
        let printed = |tangent: f64| self.printed(end, tangent, film, force)[1];
        if printed(most) > share {
            return None;
        }
        let (mut low, mut high) = (most * 1e-9, most);
        // Halving the logarithm so often leaves nothing between them.
        for _ in 0..200 {
            let middle = (low * high).sqrt();
            if printed(middle) > share { low = middle } else { high = middle }
        }
        Some((low * high).sqrt())
    }

    /// The print to expect of a mismatch, with a film of marking paste of some thickness.
    ///
    /// At no force the blued length is `e / tan Δ`; a force adds the length that it closes.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`](ErrorKind::OutOfRange) or [`NotFinite`](ErrorKind::NotFinite) for a
    /// film not between 0 and 100 µm, a force below zero and a mismatch beyond 0.5°.
    pub fn expected_print(
        &self,
        mismatch: Angle,
        film: Length,
        force: Force,
    ) -> Result<PrintExpected, Error> {
        check::film(film)?;
        check::mismatch(mismatch)?;
        zero_or_more("force", force.get::<newton>(), "N", "200 N")?;
        let (end, tangent) = mismatched(mismatch);
        let share = match tangent > 0.0 {
            true => {
                let (film, force) = (film.get::<meter>(), force.get::<newton>());
                self.printed(end, tangent, film, force)[1].min(1.0)
            }
            false => 1.0,
        };
        let from = match (tangent > 0.0, end) {
            (false, _) => Carries::Both,
            (true, End::Small) => Carries::Small,
            (true, End::Large) => Carries::Large,
        };
        Ok(PrintExpected { from, length: Length::new::<meter>(share * self.generator()), share })
    }

    /// The mismatch that a print of marking paste shows.
    ///
    /// A full ring from one end is read back: its length along the surface is that of the elastic
    /// contact under the force and `e / tan Δ` beyond it, where the gap is thinner than the film
    /// `e`. A print over the whole length proves no more than bounds, `e / L` to either side when there is no force. Any
    /// other print tells no angle; [`Print::means`] says what it tells.
    ///
    /// The film is the weak figure: 1 to 5 µm is usual, and the mismatch goes with it.
    ///
    /// # Errors
    ///
    /// [`Missing`](ErrorKind::Missing) for a ring without a length;
    /// [`OutOfRange`](ErrorKind::OutOfRange) or [`NotFinite`](ErrorKind::NotFinite) for a film not between 0 and
    /// 100 µm, a force below zero, and a ring that is longer than the seat or shorter than a mismatch of 0.5° leaves.
    ///
    /// # Source
    ///
    /// Common practice, no source, for what prints mean; geometry and [`Seat`](super::Seat) for the figures.
    ///
    /// # Example
    ///
    /// A ring of 5.16 mm from the small end, printed by hand with a film of 1.5 µm, is a hub one minute of arc too open.
    ///
    /// ```
    /// use hubwright::joint::{Print, Seat};
    /// use hubwright::tables::materials::{Elastic, Metal};
    /// use hubwright::units::{Force, Length, degree, micrometer, millimeter};
    ///
    /// let mm = Length::new::<millimeter>;
    /// let steel = Elastic::from(Metal::Steel);
    /// let seat = Seat::new(steel, steel, mm(28.0), 0.2, mm(35.0), mm(45.0), mm(45.0)).solve(0.12)?;
    /// let film = Length::new::<micrometer>(1.5);
    /// let read = seat.mismatch_from_print(Print::SmallEnd, Some(mm(5.157)), film, Force::default())?;
    /// let minutes = read.mismatch.unwrap_or_default().get::<degree>() * 60.0;
    /// assert!((minutes - 1.0).abs() < 1e-3);
    /// # Ok::<(), hubwright::Error>(())
    /// ```
    pub fn mismatch_from_print(
        &self,
        print: Print,
        length: Option<Length>,
        film: Length,
        force: Force,
    ) -> Result<PrintRead, Error> {
        check::film(film)?;
        let newtons = force.get::<newton>();
        zero_or_more("force", newtons, "N", "200 N")?;
        let micro = film.get::<meter>();
        let nothing = PrintRead { print, mismatch: None, bounds: None, elastic_length: None };
        let end = match print {
            Print::SmallEnd => End::Small,
            Print::LargeEnd => End::Large,
            Print::Whole => {
                let most = super::GREATEST_MISMATCH.to_radians().tan();
                let bound = |end| {
                    // So thick a film, or so great a force, prints any mismatch all over.
                    let tangent = self.tangent_of(end, 1.0, micro, newtons).unwrap_or(most);
                    Angle::new::<radian>(tangent.atan())
                };
                return Ok(PrintRead {
                    bounds: Some([-bound(End::Large), bound(End::Small)]),
                    ..nothing
                });
            }
            _ => return Ok(nothing),
        };
        let Some(length) = length else {
            return Err(ErrorKind::Missing {
                argument: "print_length".into(),
                why: "the angle follows from the length of the ring".into(),
                hint: "measure the ring along the surface, from its end to where the colour stops"
                    .into(),
            }
            .into());
        };
        let most = self.generator();
        crate::units::positive_length("print_length", length)?;
        let given = length.get::<meter>();
        let refused = |range, hint| check::misplaced("print_length", shown_mm(length), range, hint);
        if given >= most {
            let whole = Length::new::<meter>(most).get::<millimeter>();
            let range = format!("not below the seat's {whole:.3}");
            return Err(refused(range, "a print over the whole length is \"whole length\""));
        }
        let Some(tangent) = self.tangent_of(end, given / most, micro, newtons) else {
            let range =
                format!("shorter than a mismatch of {} deg leaves", super::GREATEST_MISMATCH);
            return Err(refused(
                range,
                "check film and force: the print is shorter than they make it",
            ));
        };
        let angle = Angle::new::<radian>(tangent.atan());
        let [elastic, _] = self.printed(end, tangent, micro, newtons);
        Ok(PrintRead {
            mismatch: Some(if end == End::Small { angle } else { -angle }),
            elastic_length: Some(Length::new::<meter>(elastic * most)),
            ..nothing
        })
    }
}

impl PrintRead {
    /// What the print means, with its figures.
    pub fn says(&self) -> String {
        let minutes = |angle: Angle| crate::units::figure(angle.get::<degree>() * 60.0, 3);
        let means = self.print.means();
        match (self.mismatch, self.bounds) {
            (Some(angle), _) => {
                format!("{means}; the half angles differ by {} arcmin", minutes(angle))
            }
            (None, Some([least, most])) => {
                format!(
                    "{means}; the half angles differ by {} to {} arcmin",
                    minutes(least),
                    minutes(most)
                )
            }
            (None, None) => means.into(),
        }
    }
}
