//! What a wheel is: its shape, what it is made of, how and on what it runs.

use crate::units::words;

words! {
    /// Shape of a wheel, by the type numbers that ANSI B7.1 and ISO 525 share.
    Shape, "wheel shape" {
        /// Straight.
        Type1 = "type-1" ["1", "straight"];
        /// Straight, for cutting off.
        Type1CuttingOff = "type-1-cutting-off" ["1 cutting-off", "cutting-off", "cut-off", "type-41", "41"];
        /// Cylinder.
        Type2 = "type-2" ["2", "cylinder"];
        /// Tapered on both sides.
        Type4 = "type-4" ["4", "tapered"];
        /// Recessed on one side.
        Type5 = "type-5" ["5", "recessed one side"];
        /// Straight cup.
        Type6 = "type-6" ["6", "straight cup"];
        /// Straight cup modified for terrazzo.
        Type6Terrazzo = "type-6-terrazzo" ["6 terrazzo"];
        /// Recessed on both sides.
        Type7 = "type-7" ["7", "recessed two sides", "recessed both sides"];
        /// Flaring cup.
        Type11 = "type-11" ["11", "flaring cup"];
        /// Flaring cup modified for terrazzo.
        Type11Terrazzo = "type-11-terrazzo" ["11 terrazzo"];
        /// Dish.
        Type12 = "type-12" ["12", "dish"];
        /// Saucer.
        Type13 = "type-13" ["13", "saucer"];
        /// Cone or plug, types 16 to 19.
        Type16 = "type-16" ["16", "type-17", "17", "type-18", "18", "type-19", "19", "cone", "plug"];
        /// Relieved or recessed and relieved, types 20 to 26.
        Type20 = "type-20" ["20", "type-21", "21", "type-22", "22", "type-23", "23", "type-24", "24",
                            "type-25", "25", "type-26", "26", "relieved"];
        /// Depressed centre.
        Type27 = "type-27" ["27", "depressed centre", "depressed center"];
        /// Depressed centre, for cutting off.
        Type27A = "type-27a" ["27a", "type-42", "42"];
        /// Saucer with depressed centre.
        Type28 = "type-28" ["28"];
        /// Flap or semi-flexible disc.
        Type29 = "type-29" ["29"];
        /// Abrasive disc with inserted nuts, washer or stud.
        Disc = "disc" ["abrasive disc"];
    }
}

impl Shape {
    /// Whether the wheel is made for cutting off.
    pub const fn cuts_off(self) -> bool {
        matches!(self, Self::Type1CuttingOff | Self::Type27A)
    }

    /// Types 27 and 28 and the modified types for terrazzo, whose flanges may
    /// differ and need no third of the wheel: 29 CFR 1910.215(c)(1)(i), (c)(4).
    pub const fn special_flanges(self) -> bool {
        matches!(self, Self::Type27 | Self::Type28 | Self::Type6Terrazzo | Self::Type11Terrazzo)
    }
}

words! {
    /// How a wheel is held.
    Fastening, "fastening" {
        /// Between two flanges.
        Flanges = "flanges" ["flange"];
        /// By a threaded hole or inserted nut of its own.
        ThreadedInsert = "threaded insert" ["threaded hole", "insert"];
        /// By a projecting stud of its own.
        Stud = "stud" ["projecting stud"];
        /// Cemented or screwed to a plate.
        Plate = "plate" ["plate mounted"];
        /// In a chuck: cylinders, cups and segments.
        Chuck = "chuck" ["segments"];
        /// On a mandrel of its own.
        Mandrel = "mandrel" ["mounted wheel", "mounted point"];
    }
}

impl Fastening {
    /// Whether the wheel brings a thread or stud of its own.
    pub const fn threaded(self) -> bool {
        matches!(self, Self::ThreadedInsert | Self::Stud)
    }
}

words! {
    /// Abrasive of a wheel.
    Abrasive, "abrasive" {
        /// Aluminium oxide.
        AluminiumOxide = "aluminium oxide" ["aluminum oxide", "A", "corundum"];
        /// Silicon carbide.
        SiliconCarbide = "silicon carbide" ["C"];
        /// Diamond.
        Diamond = "diamond" ["D"];
        /// Cubic boron nitride.
        Cbn = "CBN" ["B", "cubic boron nitride"];
    }
}

words! {
    /// Bond of a wheel.
    Bond, "bond" {
        /// Vitrified.
        Vitrified = "vitrified" ["V", "ceramic"];
        /// Resin.
        Resin = "resin" ["B", "resinoid"];
        /// Resin with fabric layers.
        ReinforcedResin = "reinforced resin" ["BF", "reinforced", "resinoid reinforced"];
        /// Rubber.
        Rubber = "rubber" ["R"];
        /// Rubber with fabric layers.
        ReinforcedRubber = "reinforced rubber" ["RF"];
        /// Shellac.
        Shellac = "shellac" ["E"];
        /// Magnesite.
        Magnesite = "magnesite" ["MG"];
        /// Metal, sintered.
        Metal = "metal" ["M"];
        /// Electroplated.
        Electroplated = "electroplated" ["G", "galvanic", "plated"];
        /// Silicate.
        Silicate = "silicate" ["S"];
        /// Oxychloride.
        Oxychloride = "oxychloride" ["O"];
        /// Plastic.
        Plastic = "plastic" ["PL"];
    }
}

impl Bond {
    /// Whether the bond is a resin, reinforced or not.
    pub const fn resin(self) -> bool {
        matches!(self, Self::Resin | Self::ReinforcedResin)
    }
}

words! {
    /// Kind of machine, which decides how far its guard may be open.
    MachineKind, "machine kind" {
        /// Bench and floor stands.
        Bench = "bench" ["bench grinder", "floor stand", "pedestal", "off-hand grinder"];
        /// Cylindrical grinders.
        Cylindrical = "cylindrical" ["cylindrical grinder", "centreless", "centerless"];
        /// Surface grinders.
        Surface = "surface" ["surface grinder"];
        /// Cutting-off machines.
        CuttingOff = "cutting-off" ["cutting-off machine", "cut-off saw", "abrasive saw"];
        /// Tool and cutter grinders.
        Tool = "tool" ["tool grinder", "tool and cutter grinder", "cutter grinder"];
        /// Internal grinders.
        Internal = "internal" ["internal grinder"];
        /// Swing frame grinders.
        SwingFrame = "swing frame" ["swing frame grinder"];
        /// Automatic snagging machines.
        Snagging = "snagging" ["automatic snagging"];
        /// Top grinding.
        Top = "top" ["top grinding"];
        /// Portable and hand-held grinders.
        Portable = "portable" ["hand-held", "angle grinder"];
    }
}
