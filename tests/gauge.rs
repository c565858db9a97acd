//! Measuring, naming and setting tapers against worked examples, geometry done another way,
//! and seeded simulation.
//!
//! Nothing expected here was read off the program. Where a figure is not arithmetic that stands
//! beside it, its source is named.

mod gauge {
    mod chance;
    mod maker;
    mod measuring;
    mod setting;
}

use hubwright::Error;
use hubwright::units::{Angle, Length, degree, micrometer, millimeter, radian};
use hubwright::working::Working;
use proptest::prelude::ProptestConfig;
use proptest::test_runner::FileFailurePersistence;

fn mm(size: f64) -> Length {
    Length::new::<millimeter>(size)
}

fn um(size: f64) -> Length {
    Length::new::<micrometer>(size)
}

fn deg(angle: f64) -> Angle {
    Angle::new::<degree>(angle)
}

fn rad(angle: Angle) -> f64 {
    angle.get::<radian>()
}

/// That a figure is what a source says, to a relative error.
#[track_caller]
fn near(found: f64, wanted: f64, relative: f64) {
    assert!((found - wanted).abs() <= relative * wanted.abs(), "{found} is not {wanted}");
}

/// That the last step of a working is a result, bit for bit.
#[track_caller]
fn ends_in(working: &Working, result: f64) {
    assert_eq!(working.steps.last().expect("steps").result, result, "{working}");
    assert!(!working.to_string().contains("NaN"), "{working}");
}

/// That a refusal says what it should, in two lines.
#[track_caller]
fn told<T: std::fmt::Debug>(result: Result<T, Error>, code: &str, holds: &[&str]) {
    let error = result.expect_err("a refusal");
    let text = error.to_string();
    assert_eq!(error.code(), code, "{text}");
    let lines: Vec<_> = text.lines().collect();
    assert!(lines.len() == 2 && lines[1].starts_with("hint: "), "{text}");
    assert!(!lines[0].ends_with('.') && !text.contains("invalid"), "{text}");
    for part in holds {
        assert!(text.contains(part), "{part:?} is not in {text:?}");
    }
}

/// Reproducible chance: splitmix64, and normal numbers by Box and Muller.
struct Chance(u64);

impl Chance {
    fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// Above 0 and below 1.
    fn share(&mut self) -> f64 {
        ((self.bits() >> 11) as f64 + 0.5) / (1_u64 << 53) as f64
    }

    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.share()
    }

    fn normal(&mut self, spread: f64) -> f64 {
        let (a, b) = (self.share(), self.share());
        spread * (-2.0 * a.ln()).sqrt() * (std::f64::consts::TAU * b).cos()
    }

    fn one_of<T: Copy>(&mut self, all: &[T]) -> T {
        all[(self.share() * all.len() as f64) as usize]
    }
}

/// Mean and standard deviation.
fn spread(all: &[f64]) -> (f64, f64) {
    let n = all.len() as f64;
    let mean = all.iter().sum::<f64>() / n;
    (mean, (all.iter().map(|x| (x - mean).powi(2)).sum::<f64>() / (n - 1.0)).sqrt())
}

fn config() -> ProptestConfig {
    let file = FileFailurePersistence::Direct("tests/gauge/found.proptest-regressions");
    ProptestConfig { failure_persistence: Some(Box::new(file)), ..ProptestConfig::default() }
}
