//! The Python package's compiled part: conversions and docstrings, no formula.

mod arrow;
mod balance;
mod braze;
mod checked;
mod column;
mod dicts;
mod errors;
mod files;
mod gauge;
mod grind;
mod holding;
mod joint;
mod key;
mod keyway;
mod marking;
mod nut;
mod nut_locks;
mod parts;
mod press;
mod pushed;
mod quantity;
mod rings;
mod seat;
mod spanner;
mod strength;
mod stub;
mod taper;
mod thin;
mod thread;
mod trials;
mod unbalance;
mod verdict;
mod warmth;
mod wheel;
mod words;

use pyo3::prelude::*;

/// Compiled part of hubwright.
#[pymodule]
mod _core {
    #[pymodule_export]
    use super::arrow::ArrowColumn;
    #[pymodule_export]
    use super::arrow::ArrowTable;
    #[pymodule_export]
    use super::balance::{
        Balance, SharedBalance, SuperabrasiveLimits, balance, balance_grades, shared_balance,
        superabrasive_limits,
    };
    #[pymodule_export]
    use super::braze::{BrazedKey, PublishedGap, brazed_key, published_gaps};
    #[pymodule_export]
    use super::checked::{Checked, Counts, Problem, Row, Rows};
    #[pymodule_export]
    use super::column::rim_speed_column;
    #[pymodule_export]
    use super::files::{
        check_file, check_report_name, check_rows, report_schema, write_demo, write_template,
    };
    #[pymodule_export]
    use super::gauge::correct::{SlideCorrection, correct_slide};
    #[pymodule_export]
    use super::gauge::decide::{Budget, Chances, Decision, Influence, budget, chances, decide};
    #[pymodule_export]
    use super::gauge::naming::{
        TaperCandidate, TaperNaming, disk_distance, disk_taper, name_taper,
    };
    #[pymodule_export]
    use super::gauge::seat::{Boring, DrillStep, StandOff, boring, stand_off};
    #[pymodule_export]
    use super::gauge::setting::{
        BlockStack, RunOut, SineBar, SlideSetting, Tailstock, ToolHeight, block_stack, run_out,
        sine_bar, slide_setting, tailstock, tool_height,
    };
    #[pymodule_export]
    use super::gauge::{
        ConeFit, MeasuredCone, OverRollers, TwoBalls, TwoDiameters, cone_fit, over_rollers,
        two_balls, two_diameters,
    };
    #[pymodule_export]
    use super::grind::{
        Ground, Wear, creep_stroke, fitted_roughness, grind, grinding_ranges, grinding_ratio,
        ring_volume, specific_energy, through_feed, through_feed_angle, wear,
    };
    #[pymodule_export]
    use super::holding::{Dish, Held, Unscrewing, holding};
    #[pymodule_export]
    use super::joint::{
        Fit, Judgement, Limits, RankedFit, deviation_by_formula, fit, fits_for, grade_by_formula,
        limits, tolerance_factor,
    };
    #[pymodule_export]
    use super::key::{KeySize, KeyStrength, KeyTrim, KeyWidths, key_for, key_strength};
    #[pymodule_export]
    use super::keyway::{Centring, KeyStock, Keyway, centre_slot, chord_height, key_stock, keyway};
    #[pymodule_export]
    use super::marking::{Grain, Marking, read_marking};
    #[pymodule_export]
    use super::nut::{Tightened, loosening, nut};
    #[pymodule_export]
    use super::nut_locks::{HeldBy, Piece, compare_holding};
    #[pymodule_export]
    use super::parts::{
        Blotter, Flange, Hub, Key, Machine, Mounting, Nut, Seat, Spindle, Unknown, Wheel,
        field_list,
    };
    #[pymodule_export]
    use super::press::{
        ElasticLimit, PressFit, Pressed, elastic_limit, friction_ranges, press_fit,
    };
    #[pymodule_export]
    use super::pushed::{AngleTolerance, PrintExpected, PrintRead, Pushed, RingSlices, TiltRunOut};
    #[pymodule_export]
    use super::rings::{
        Elastic, Interface, Point, Published, Ring, RingFound, WheelRings, material_ranges, metals,
        rings,
    };
    #[pymodule_export]
    use super::seat::{SeatFound, seat, tilt_run_out};
    #[pymodule_export]
    use super::spanner::{
        Division, Hole, HoleCircle, Jacked, PinSpanner, dividing, hand_force, hole_circle,
        jacking_screw, pin_spanner, spanner_torque,
    };
    #[pymodule_export]
    use super::strength::{Fragment, Strength, strength};
    #[pymodule_export]
    use super::stub::{Dressing, Stub, WornSpeed, dress, stub, worn_speed};
    #[pymodule_export]
    use super::taper::{AngleGrade, Taper, finest_grade, standard_tapers, taper, taper_grade};
    #[pymodule_export]
    use super::thin::{
        CriticalSpeed, StabiliserDisc, Stabilisers, ThinWheel, stabilisers, thin_wheel,
    };
    #[pymodule_export]
    use super::thread::{RoundNut, TapDrill, Thread, ThreadLimits, ThreeWires, round_nuts, thread};
    #[pymodule_export]
    use super::trials::{
        BalanceWeights, InfluenceCoefficient, TrialRuns, influence_coefficient, three_weights,
        trial_runs, two_weights,
    };
    #[pymodule_export]
    use super::unbalance::{HeavySpot, Truing, UnbalanceSum, UnbalanceVector, truing, unbalance};
    #[pymodule_export]
    use super::verdict::{Finding, Rule, Source, Verdict, check, rules, sources};
    #[pymodule_export]
    use super::warmth::{At20, Expansion, at_20_c, published_expansion};
    #[pymodule_export]
    use super::wheel::{
        BlotterLimits, FlangeLimits, HoleLimits, Limit, SpeedForRim, Step, Working, blotter_limits,
        flange_limits, hole_limits, largest_diameter, rim_speed, speed_for_rim,
    };
    #[pymodule_export]
    use super::words::word_lists;
    #[pymodule_export]
    #[allow(non_upper_case_globals, reason = "Python's name for it")]
    const __version__: &str = env!("CARGO_PKG_VERSION");
}
