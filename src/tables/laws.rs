//! The laws and practices that rules cite, one constant a clause.
//!
//! 29 CFR is United States federal law and public; the states named here run
//! plans of their own beside it.

use crate::source::{Source, Status};

macro_rules! clauses {
    ($($(#[$doc:meta])* $name:ident = $key:literal, $title:literal, $locator:literal, $status:ident;)+) => {
        $($(#[$doc])* pub const $name: Source = Source::new($key, $title, "", $locator, Status::$status);)+
        /// Every clause in this file.
        pub const ALL: &[Source] = &[$($name),+];
    };
}

clauses! {
    /// Shapes of wheels: straight wheels and their holes.
    WHEEL_SHAPES = "29cfr1910.211-b", "29 CFR 1910.211", "(b)(1)", Reprint;
    /// Cutting-off wheels: hole and thickness.
    CUTTING_OFF_WHEELS = "29cfr1910.211-b-13", "29 CFR 1910.211", "(b)(13)", Reprint;
    /// Guards: exposure angles, machine by machine.
    GUARD_ANGLES = "29cfr1910.215-b", "29 CFR 1910.215", "(b)(3)-(8)", Reprint;
    /// Guards of portable grinders.
    GUARD_PORTABLE = "29cfr1910.243-c", "29 CFR 1910.243", "(c)(3)-(4)", Reprint;
    /// Flanges at least a third of the wheel, and what is exempt.
    FLANGE_THIRD = "29cfr1910.215-c1", "29 CFR 1910.215", "(c)(1)", Reprint;
    /// Both flanges alike.
    FLANGES_ALIKE = "29cfr1910.215-c4", "29 CFR 1910.215", "(c)(4)", Reprint;
    /// Recess and undercut.
    FLANGE_RECESS = "29cfr1910.215-c5", "29 CFR 1910.215", "(c)(5)", Reprint;
    /// Thickness of flanges, by their tables.
    FLANGE_TABLES = "29cfr1910.215-tables", "29 CFR 1910.215", "Tables O-4, O-6 and O-8", Reprint;
    /// Adaptor flanges; for which wheels the two tables are meant is recalled.
    ADAPTOR_TABLES = "29cfr1910.215-o5-o7", "29 CFR 1910.215", "Tables O-5 and O-7, and for which wheels they are meant", Memory;
    /// Blotters, and what needs none.
    BLOTTERS = "29cfr1910.215-c6", "29 CFR 1910.215", "(c)(6)", Reprint;
    /// The driving flange runs true.
    DRIVING_FLANGE = "29cfr1910.215-c7", "29 CFR 1910.215", "(c)(7)", Reprint;
    /// Speed checked against the marking before mounting.
    MARKED_SPEED = "29cfr1910.215-d1", "29 CFR 1910.215", "(d)(1)", Reprint;
    /// The wheel fits freely; size of the spindle.
    FREE_FIT = "29cfr1910.215-d2", "29 CFR 1910.215", "(d)(2)", Reprint;
    /// Bushings.
    BUSHINGS = "29cfr1910.215-d4", "29 CFR 1910.215", "(d)(4)", Reprint;
    /// Blotters cover the flange.
    BLOTTER_COVERS = "29cfr1910.215-d5", "29 CFR 1910.215", "(d)(5)", Reprint;
    /// Nut thread against the rotation.
    THREAD_HAND_MI = "mi-r408.10115-1", "screw statics; Mich. Admin. Code R 408.10115", "(1)", Reprint;
    /// Thread of a wheel that brings its own.
    THREADED_WHEEL_MI = "mi-r408.10115-5", "screw statics; Mich. Admin. Code R 408.10115", "(5)", Reprint;
    /// Threads fill the nut.
    THREAD_FILLS_MI = "mi-r408.10115-2", "Mich. Admin. Code R 408.10115", "(2)", Reprint;
    /// Threads reach inside the flange, not past half the hole.
    THREAD_REACH_MI = "mi-r408.10115-3", "Mich. Admin. Code R 408.10115", "(3)", Reprint;
    /// Flanges of steel, cast iron or as stiff, in Michigan and Washington.
    FLANGE_MATERIAL_STATES = "mi-r408.10142", "Mich. Admin. Code R 408.10142(2); WAC 296-307-19012(3)", "", Reprint;
    /// Guards of tool grinders in Michigan.
    GUARD_TOOL_MI = "mi-r408.10199", "Mich. Admin. Code R 408.10199", "Table 1", Reprint;
    /// New blotters at every mounting.
    NEW_BLOTTERS_WA = "wa-296-806-40524", "WAC 296-806-40524", "", Reprint;
    /// Use-before dates of organic wheels.
    USE_BEFORE = "en12413", "EN 12413", "use-before date", Memory;
    /// Statics, geometry and arithmetic on the figures given.
    ARITHMETIC = "arithmetic", "arithmetic on the figures given", "", Computed;
    /// Stress and bursting speed of a plain wheel by the figures given.
    BURSTING = "bursting", "theory of rotating discs (Timoshenko and Goodier) on the figures given", "", Computed;
    /// A limit the user asked for.
    ASKED = "asked", "the limit given with the mounting", "", Input;
    /// Thermal expansion from memory: steel 11.5, cast iron 10.5, aluminium 23, brass 19 µm/m/K.
    EXPANSION = "expansion", "thermal expansion of common metals", "", Memory;
    /// Nothing but custom.
    PRACTICE = "practice", "common practice, no source", "", Practice;
}
