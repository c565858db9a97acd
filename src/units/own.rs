//! Quantities of balancing and grinding that the library of units has no name for.
//!
//! They are used like its own: `Unbalance::new::<gram_millimeter>(120.0)`.

/// A unit of one of these quantities.
pub trait UnitOf<K> {
    /// What one of it is in units of the SI.
    const IN_SI: f64;
}

macro_rules! own {
    ($(
        $(#[doc = $doc:literal])+
        $name:ident {$($(#[doc = $unit_doc:literal])+ $unit:ident = $factor:expr;)+}
    )+) => {$(
        $(#[doc = $doc])+
        #[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl $name {
            /// So many of a unit.
            pub fn new<U: UnitOf<Self>>(value: f64) -> Self {
                Self(value * U::IN_SI)
            }

            /// As a number of a unit.
            pub fn get<U: UnitOf<Self>>(self) -> f64 {
                self.0 / U::IN_SI
            }

            /// Neither NaN nor infinite.
            pub fn is_finite(self) -> bool {
                self.0.is_finite()
            }
        }

        $(
            $(#[doc = $unit_doc])+
            #[allow(non_camel_case_types, reason = "units are named like those of the library")]
            #[derive(Clone, Copy, Debug)]
            pub struct $unit;

            impl UnitOf<$name> for $unit {
                const IN_SI: f64 = $factor;
            }
        )+
    )+};
}

own! {
    /// Stiffness against a force at one place: force over deflection.
    SideStiffness {
        /// Newton a metre.
        newton_per_meter = 1.0;
        /// Newton a millimetre.
        newton_per_millimeter = 1e3;
    }
    /// Frequency of a vibration.
    Frequency {
        /// Hertz.
        hertz = 1.0;
    }
    /// Unbalance: a mass times its distance from the axis.
    Unbalance {
        /// Gram millimetre.
        gram_millimeter = 1e-6;
        /// Kilogram metre.
        kilogram_meter = 1.0;
    }
    /// Balance quality grade: how fast the centre of mass goes round, G2.5 being 2.5 mm/s.
    BalanceGrade {
        /// The number behind the G: millimetres a second.
        grade_number = 1e-3;
    }
    /// Energy that it takes to grind away a volume.
    SpecificEnergy {
        /// Joule a cubic millimetre.
        joule_per_cubic_millimeter = 1e9;
        /// Joule a cubic metre.
        joule_per_cubic_meter = 1.0;
    }
    /// Volume ground away in a time.
    RemovalRate {
        /// Cubic millimetre a second.
        cubic_millimeter_per_second = 1e-9;
        /// Cubic metre a second.
        cubic_meter_per_second = 1.0;
    }
    /// Volume ground away in a time by each millimetre of width.
    WidthRemovalRate {
        /// Cubic millimetre a second and millimetre of width.
        cubic_millimeter_per_second_millimeter = 1e-6;
        /// Square metre a second.
        square_meter_per_second = 1.0;
    }
    /// Cutting points in an area of the wheel's face.
    GrainDensity {
        /// One a square millimetre.
        per_square_millimeter = 1e6;
        /// One a square metre.
        per_square_meter = 1.0;
    }
}
