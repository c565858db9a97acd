//! Polar pictures of balance, measured as scenes: on their page, labels apart, arrows to scale, weights
//! where they go.

use std::f64::consts::TAU;

use hubwright::draw::{
    Fill, Mark, Point, Scene, Stroke, svg, trials_picture, unbalance_picture, weights_picture,
};
use hubwright::solid::UnbalanceVector;
use hubwright::units::{Angle, Length, Mass, Unbalance, gram, gram_millimeter, millimeter, radian};
use hubwright::wheel::{BalanceWeights, HeavySpot, TrialRun, trial_runs, unbalance};
use proptest::prelude::*;
use proptest::test_runner::FileFailurePersistence;

fn cases(cases: u32) -> ProptestConfig {
    let regressions = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/polar.proptest-regressions");
    let mut config = ProptestConfig {
        failure_persistence: Some(Box::new(FileFailurePersistence::Direct(regressions))),
        ..ProptestConfig::default()
    };
    if std::env::var_os("PROPTEST_CASES").is_none() {
        config.cases = cases;
    }
    config
}

fn rad(angle: f64) -> Angle {
    Angle::new::<radian>(angle)
}

fn gmm(amount: f64) -> Unbalance {
    Unbalance::new::<gram_millimeter>(amount)
}

/// The middle of the page's circle, from its four ticks.
fn centre(scene: &Scene) -> Point {
    let ticks: Vec<_> = scene.marks.iter().filter_map(tick).collect();
    let sum = |get: fn(&Point) -> f64| ticks.iter().map(get).sum::<f64>() / ticks.len() as f64;
    assert_eq!(ticks.len(), 4);
    Point::new(sum(|p| p.x), sum(|p| p.y))
}

/// The middle of a tick: a thick line 3 mm long.
fn tick(mark: &Mark) -> Option<Point> {
    let Mark::Line { points, stroke: Stroke::Outline } = mark else { return None };
    let [a, b] = points.as_slice() else { return None };
    let middle = Point::new(f64::midpoint(a.x, b.x), f64::midpoint(a.y, b.y));
    ((a.x - b.x).hypot(a.y - b.y) - 3.0).abs().lt(&1e-9).then_some(middle)
}

/// Angle from the top, clockwise, and distance from the middle.
fn seen(scene: &Scene, p: Point) -> (f64, f64) {
    let middle = centre(scene);
    let (x, y) = (p.x - middle.x, middle.y - p.y);
    (x.atan2(y).rem_euclid(TAU), x.hypot(y))
}

/// Every arrow from the middle: its line, angle and length.
fn arrows(scene: &Scene) -> Vec<(Stroke, f64, f64)> {
    let middle = centre(scene);
    let from_middle = |mark: &Mark| {
        let Mark::Line { points, stroke } = mark else { return None };
        let [from, to] = points.as_slice() else { return None };
        let starts = (from.x - middle.x).hypot(from.y - middle.y) < 1e-9;
        starts.then(|| {
            let (angle, length) = seen(scene, *to);
            (*stroke, angle, length)
        })
    };
    scene.marks.iter().filter_map(from_middle).collect()
}

/// Every weight: its fill, angle and distance.
fn weights(scene: &Scene) -> Vec<(Fill, f64, f64)> {
    let disc = |mark: &Mark| {
        let Mark::Area { points, fill, stroke: Some(Stroke::Outline) } = mark else { return None };
        // Its first point stands for its last again.
        let points = &points[1..];
        let sum =
            |get: fn(&Point) -> f64| points.iter().map(get).sum::<f64>() / points.len() as f64;
        let (angle, radius) = seen(scene, Point::new(sum(|p| p.x), sum(|p| p.y)));
        Some((*fill, angle, radius))
    };
    scene.marks.iter().filter_map(disc).collect()
}

fn tidy(scene: &Scene) -> Result<(), TestCaseError> {
    for mark in &scene.marks {
        let bounds = mark.bounds().expect("not empty");
        prop_assert!(bounds.within(scene.page()), "{mark:?} in {:?}", scene.page());
    }
    let texts = scene.texts();
    for (at, text) in texts.iter().enumerate() {
        for other in &texts[at + 1..] {
            let apart = !text.bounds().overlaps(other.bounds());
            prop_assert!(apart, "{:?} lies over {:?}", text.text, other.text);
        }
    }
    prop_assert!(svg(scene).starts_with("<svg"));
    Ok(())
}

/// Whether two angles are the same but for a whole turn.
fn same(a: f64, b: f64) -> bool {
    let apart = (a - b).rem_euclid(TAU);
    apart.min(TAU - apart) < 1e-6
}

proptest! {
    #![proptest_config(cases(200))]

    #[test]
    fn weights_are_drawn_where_they_go(
        amount in 0.1..2000.0_f64,
        angle in 0.0..TAU,
        count in 2..=3_usize,
        grams in 1.0..20.0_f64,
        stuck in prop::option::of(0.0..TAU),
    ) {
        let heavy = UnbalanceVector::new(gmm(amount), rad(angle));
        let ring = Length::new::<millimeter>(54.0);
        let mut asked = BalanceWeights::new(heavy, count, Mass::new::<gram>(grams), ring);
        if let Some(stuck) = stuck {
            asked = asked.with_stuck(rad(stuck));
        }
        let found = asked.solve().expect("weights");
        let scene = weights_picture(&found);
        tidy(&scene)?;
        let drawn = weights(&scene);
        prop_assert_eq!(drawn.len(), count);
        let mut wanted: Vec<_> = found.positions.iter().map(|at| at.get::<radian>()).collect();
        wanted.extend(stuck);
        for ((fill, angle, radius), wanted) in drawn.iter().zip(&wanted) {
            prop_assert!(same(*angle, *wanted) && (radius - 30.0).abs() < 1e-6);
            prop_assert!(matches!(fill, Fill::Tone | Fill::HatchRising));
        }
        let hatched = drawn.iter().filter(|(fill, ..)| *fill == Fill::HatchRising).count();
        prop_assert_eq!(hatched, usize::from(stuck.is_some()));
        let arrows = arrows(&scene);
        prop_assert!(same(arrows[0].1, angle), "{arrows:?}");
        if stuck.is_some() {
            // Both arrows are drawn to one scale.
            let both = found.to_balance.amount.get::<gram_millimeter>() / amount;
            prop_assert!((arrows[1].2 / arrows[0].2 - both).abs() < 1e-6 * both.max(1.0));
        }
        let said = scene.texts().iter().any(|text| text.text.starts_with("out of reach"));
        prop_assert_eq!(said, !found.reached);
    }

    #[test]
    fn causes_are_drawn_to_scale_with_their_sum(
        spots in prop::collection::vec((0.5..50.0_f64, prop::option::of(0.0..TAU)), 1..6),
    ) {
        let lump = |(amount, angle): &(f64, Option<f64>)| {
            let spot = HeavySpot::lump(Mass::new::<gram>(*amount), Length::new::<millimeter>(1.0));
            let spot = spot.expect("a lump");
            angle.map_or(Ok(spot.clone()), |angle| spot.at(rad(angle))).expect("an angle")
        };
        let found = unbalance(&spots.iter().map(lump).collect::<Vec<_>>()).expect("causes");
        let scene = unbalance_picture(&found);
        tidy(&scene)?;
        let arrows = arrows(&scene);
        let placed: Vec<_> = spots.iter().filter_map(|(amount, angle)| Some((*amount, (*angle)?))).collect();
        // The longest arrow, or the reach of them all, is 24 mm.
        let reach = found.greatest.get::<gram_millimeter>();
        let scale = 24.0 / placed.iter().map(|(amount, _)| *amount).fold(reach, f64::max);
        for ((amount, angle), (stroke, drawn, length)) in placed.iter().zip(&arrows) {
            prop_assert!(same(*drawn, *angle) && (length / scale / amount - 1.0).abs() < 1e-6);
            prop_assert_eq!(*stroke, Stroke::Thin);
        }
        let unknown = spots.iter().any(|(_, angle)| angle.is_none());
        let dashed = scene.texts().iter().any(|text| text.text.starts_with("dashed"));
        prop_assert_eq!(dashed, unknown);
    }

    #[test]
    fn both_answers_of_two_trials_are_drawn(angle in 0.0..TAU, amount in 20.0..90.0_f64) {
        let reading = |at: f64| {
            let (x, y) = (amount * angle.cos() + 50.0 * at.cos(), amount * angle.sin() + 50.0 * at.sin());
            TrialRun { reading: x.hypot(y), angle: rad(at) }
        };
        let runs = [reading(0.0), reading(TAU / 3.0), reading(TAU * 2.0 / 3.0)];
        for runs in [&runs[..2], &runs[..]] {
            let found = trial_runs(amount, runs, gmm(50.0)).expect("readings");
            let scene = trials_picture(&found);
            tidy(&scene)?;
            let (arrows, weights) = (arrows(&scene), weights(&scene));
            prop_assert_eq!((arrows.len(), weights.len()), (found.candidates.len(), found.candidates.len()));
            prop_assert!(arrows.iter().any(|(_, drawn, _)| {
                let apart = (drawn - angle).rem_euclid(TAU);
                apart.min(TAU - apart) < 1e-4
            }), "{arrows:?}");
            for ((_, heavy, _), (_, light, _)) in arrows.iter().zip(&weights) {
                prop_assert!(same(heavy + TAU / 2.0, *light));
            }
        }
    }
}
