//! The words of a mounting that belong to no part in particular.

pub use crate::joint::Rotation;
use crate::units::words;

words! {
    /// Yes or no.
    YesNo, "yes or no" {
        /// Yes.
        Yes = "yes" ["y", "true", "1", "x"];
        /// No.
        No = "no" ["n", "false", "0", "none"];
    }
}

words! {
    /// Hand of the thread that holds the wheel.
    ThreadHand, "thread hand" {
        /// Right-hand.
        Right = "right" ["rh", "right-hand"];
        /// Left-hand.
        Left = "left" ["lh", "left-hand"];
        /// No central nut: the flange is held by its own screws.
        NoNut = "no nut" ["screws"];
    }
}

words! {
    /// What a flange or hub is made of.
    Material, "material" {
        /// Steel.
        Steel = "steel" ["hardened steel", "mild steel"];
        /// Cast iron.
        CastIron = "cast iron" ["iron"];
        /// Aluminium alloy.
        Aluminium = "aluminium" ["aluminum", "alu"];
        /// Brass or bronze.
        Brass = "brass" ["bronze"];
        /// Anything else.
        Other = "other" ["plastic", "zinc"];
    }
}
