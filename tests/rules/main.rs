//! Every rule against the law: a row for every case that it declares, for
//! every blank, and for data that nobody asks for.
//!
//! What is expected comes from the law and from `design/RULES.md`, worked out
//! by hand. A row names its case by outcome, source and template, so that a
//! case without a row, or a row without a case, fails below.

mod balance;
mod blotter;
mod fit;
mod flange;
mod guard;
mod holding;
mod key;
mod nut;
mod plate;
mod seat;
mod speed;
mod taper;
mod thin;
mod thread;
mod wheel;

use hubwright::joint::KeyFit;
use hubwright::mounting::rules::Case;
use hubwright::mounting::{
    Datum, Finding, Law, MarkingSays, Material, Mounting, Outcome, RULES, Rotation, Rule, Terms,
    ThreadHand, YesNo, check, find_rule,
};
use hubwright::source::Source;
use hubwright::units::{
    Angle, AngularVelocity, BalanceGrade, Date, Force, Length, Mass, MassDensity, Pressure, Ratio,
    Time, Torque, Unbalance, Velocity, degree, grade_number, gram_millimeter, inch, kilogram,
    kilogram_per_cubic_meter, megapascal, meter_per_second, millimeter, newton, newton_meter,
    revolution_per_minute, second,
};
use hubwright::wheel::{Abrasive, Bond, FlangeKind, MachineKind, Shape};

fn mm(size: f64) -> Datum<Length> {
    Length::new::<millimeter>(size).into()
}

fn inches(size: f64) -> Datum<Length> {
    Length::new::<inch>(size).into()
}

fn rpm(turns: f64) -> Datum<AngularVelocity> {
    AngularVelocity::new::<revolution_per_minute>(turns).into()
}

fn rim(speed: f64) -> Datum<Velocity> {
    Velocity::new::<meter_per_second>(speed).into()
}

fn mpa(stress: f64) -> Datum<Pressure> {
    Pressure::new::<megapascal>(stress).into()
}

fn density(density: f64) -> Datum<MassDensity> {
    MassDensity::new::<kilogram_per_cubic_meter>(density).into()
}

fn kn(force: f64) -> Datum<Force> {
    Force::new::<newton>(force * 1e3).into()
}

fn gpa(modulus: f64) -> Datum<Pressure> {
    Pressure::new::<megapascal>(modulus * 1e3).into()
}

fn torque(torque: f64) -> Datum<Torque> {
    Torque::new::<newton_meter>(torque).into()
}

fn kg(mass: f64) -> Datum<Mass> {
    Mass::new::<kilogram>(mass).into()
}

fn gmm(amount: f64) -> Datum<Unbalance> {
    Unbalance::new::<gram_millimeter>(amount).into()
}

fn grade(number: f64) -> Datum<BalanceGrade> {
    BalanceGrade::new::<grade_number>(number).into()
}

fn seconds(time: f64) -> Datum<Time> {
    Time::new::<second>(time).into()
}

fn plain(number: f64) -> Datum<Ratio> {
    Ratio::from(number).into()
}

fn deg(angle: f64) -> Datum<Angle> {
    Angle::new::<degree>(angle).into()
}

fn day(text: &str) -> Date {
    Date::read(text).expect("a day of the calendar")
}

/// A 200 mm straight wheel on a surface grinder that every rule passes or
/// leaves aside: it has no bushing and is neither a cutting-off wheel nor thin.
fn sound() -> Mounting {
    let mut m = Mounting { name: "sound".into(), ..Mounting::default() };
    m.machine.kind = MachineKind::Surface.into();
    m.machine.guard_exposure = deg(140.0);
    m.machine.guard_start = deg(-20.0);
    m.spindle.greatest_speed = rpm(2850.0);
    m.spindle.rotation = Rotation::Anticlockwise.into();
    m.wheel.shape = Shape::Type1.into();
    m.wheel.diameter = mm(200.0);
    m.wheel.thickness = mm(20.0);
    m.wheel.hole = mm(50.82);
    m.wheel.nominal_hole = mm(50.8);
    m.wheel.abrasive = Abrasive::AluminiumOxide.into();
    m.wheel.bond = Bond::Vitrified.into();
    // 3340 rpm run a 200 mm rim at 34.98 m/s.
    m.wheel.marked_speed = rpm(3340.0);
    m.wheel.marked_rim_speed = rim(35.0);
    m.wheel.use_before = day("2028-01-01").into();
    m.wheel.marking_says = MarkingSays::Same.into();
    m.wheel.tensile_strength = mpa(20.0);
    m.wheel.density = density(2250.0);
    m.wheel.poisson_ratio = plain(0.22);
    m.wheel.burst_factor = plain(3.0);
    // 2 mm deep, where 60 mm of the wheel stand out of the flanges.
    m.machine.depth_of_cut = mm(2.0);
    m.machine.work_clearance = mm(3.0);
    // Above the rows of O-6 for 7 in and for 8 in, between which the wheel lies.
    for flange in [&mut m.fixed_flange, &mut m.loose_flange] {
        flange.kind = FlangeKind::Relieved.into();
        flange.diameter = mm(80.0);
        flange.land = mm(10.0);
        flange.recess = mm(2.0);
        flange.thickness_at_hole = mm(12.0);
        flange.thickness_at_edge = mm(8.0);
        flange.material = Material::Steel.into();
        flange.run_out = mm(0.005);
    }
    m.loose_flange.keyed = YesNo::Yes.into();
    for blotter in [&mut m.fixed_blotter, &mut m.loose_blotter] {
        blotter.present = YesNo::Yes.into();
        blotter.diameter = mm(82.0);
        blotter.hole = mm(52.0);
        blotter.thickness = mm(0.5);
        blotter.used_before = YesNo::No.into();
        blotter.fixed_by_maker = YesNo::No.into();
    }
    m.hub.spigot = mm(50.77);
    m.hub.spigot_run_out = mm(0.004);
    m.hub.clearance_limit = mm(0.1);
    m.hub.material = Material::Steel.into();
    // The stack is 0.5 + 20 + 0.5 + 12 = 33 mm; the hub holds 24 to 50 - 12 = 38 mm.
    m.hub.thread_from = mm(24.0);
    m.hub.thread_to = mm(50.0);
    m.hub.flange_stop = mm(18.0);
    // A taper seat with 0.03 mm left between hub and shoulder.
    m.hub.stand_off = mm(0.08);
    m.hub.draw_up = mm(0.05);
    m.hub.least_gap = mm(0.02);
    m.nut.thread_hand = ThreadHand::Right.into();
    m.nut.length = mm(12.0);
    m.key.shaft_diameter = mm(22.0);
    m.key.nominal_width = mm(6.0);
    m.key.width = mm(6.0);
    m.key.height = mm(6.0);
    m.key.length = mm(20.0);
    m.key.shaft_keyway = mm(5.99);
    m.key.hub_keyway = mm(6.0);
    m.key.fit = KeyFit::Normal.into();
    m.key.torque = Torque::new::<newton_meter>(13.2).into();
    m.key.allowed_shear = mpa(60.0);
    m.key.allowed_bearing = mpa(90.0);
    // A thread M40×1.5 over a bore of 22 mm, its nut on a face 42 to 60 mm across.
    m.hub.thread_bore = mm(22.0);
    (m.hub.thread_slot_width, m.hub.thread_slot_depth) = (mm(0.0), mm(0.0));
    m.hub.thread_proof_stress = mpa(400.0);
    m.nut.thread_diameter = mm(40.0);
    m.nut.thread_pitch = mm(1.5);
    m.nut.tightening_torque = torque(50.0);
    m.nut.thread_friction = plain(0.12);
    m.nut.face_friction = plain(0.1);
    m.nut.face_diameter = mm(60.0);
    m.nut.face_hole = mm(42.0);
    m.nut.proof_stress = mpa(300.0);
    m.nut.greatest_thread_friction = plain(0.16);
    m.nut.greatest_face_friction = plain(0.14);
    m.spindle.cutting_torque = torque(10.0);
    m.spindle.run_up_time = seconds(3.0);
    m.spindle.stop_time = seconds(3.0);
    m.wheel.land_pressure = mpa(8.0);
    m.hub.slip_factor = plain(1.5);
    for flange in [&mut m.fixed_flange, &mut m.loose_flange] {
        flange.hole = mm(45.0);
        flange.modulus = mpa(206e3);
        flange.poisson_ratio = plain(0.3);
    }
    for blotter in [&mut m.fixed_blotter, &mut m.loose_blotter] {
        blotter.friction = plain(0.15);
    }
    m.wheel.mass = kg(1.3);
    m.hub.rotor_mass = kg(3.0);
    m.hub.balance_grade = grade(2.5);
    m.hub.residual_unbalance = gmm(12.0);
    m.hub.bare_unbalance = gmm(8.0);
    // A taper 1:10 from 30 mm, 40 mm long, in a hub of 48 mm with a flange of 90 mm from 28 mm on.
    m.seat.length = mm(40.0);
    m.seat.small_diameter = mm(30.0);
    m.seat.taper = plain(0.1);
    m.seat.mismatch = deg(-0.5 / 60.0);
    m.seat.friction = plain(0.12);
    m.seat.nut_force = kn(8.0);
    m.seat.nut_diameter = mm(48.0);
    m.seat.hub_diameter = mm(48.0);
    m.seat.step_from = mm(28.0);
    m.seat.step_diameter = mm(90.0);
    m.seat.spindle_bore = mm(0.0);
    m.seat.overhang_small = mm(15.0);
    m.seat.overhang_large = mm(30.0);
    (m.seat.hub_modulus, m.seat.spindle_modulus) = (gpa(206.0), gpa(206.0));
    (m.seat.hub_poisson, m.seat.spindle_poisson) = (plain(0.3), plain(0.3));
    m.seat.share = plain(0.75);
    m.seat.hub_yield = mpa(300.0);
    m.seat.spindle_yield = mpa(600.0);
    m.seat.yield_factor = plain(1.5);
    m.seat.puller = YesNo::Yes.into();
    m.seat.puller_force = kn(10.0);
    m
}

/// Federal law, judged on the day before Thanksgiving of 2026.
fn terms() -> Terms {
    Terms::default().with_today(day("2026-11-25"))
}

/// What a row expects of the rule.
enum Expect {
    /// One of its cases, by all that tells it from the others.
    Case { outcome: Outcome, source: Source, says: &'static str },
    /// No case: a datum is missing, and this is what it says.
    Missing { outcome: Outcome, says: String },
}

/// A mounting, and how it fares by one rule.
struct Row {
    name: String,
    mounting: Mounting,
    terms: Terms,
    expect: Option<Expect>,
    /// Found, demanded and margin, in the finding's unit.
    figures: Option<[f64; 3]>,
    /// Part of what the finding says once its figures are filled in.
    saying: &'static str,
}

/// The sound mounting with something changed.
fn row(name: impl Into<String>, change: impl FnOnce(&mut Mounting)) -> Row {
    let mut mounting = sound();
    change(&mut mounting);
    let name = name.into();
    Row { name, mounting, terms: terms(), expect: None, figures: None, saying: "" }
}

impl Row {
    fn under(mut self, laws: &[Law]) -> Self {
        self.terms = self.terms.with_laws(laws);
        self
    }

    fn on_terms(mut self, change: impl FnOnce(Terms) -> Terms) -> Self {
        self.terms = change(self.terms);
        self
    }

    fn is(mut self, outcome: Outcome, source: Source, says: &'static str) -> Self {
        self.expect = Some(Expect::Case { outcome, source, says });
        self
    }

    fn refuse(self, source: Source, says: &'static str) -> Self {
        self.is(Outcome::Refuse, source, says)
    }

    fn caution(self, source: Source, says: &'static str) -> Self {
        self.is(Outcome::Caution, source, says)
    }

    fn pass(self, source: Source, says: &'static str) -> Self {
        self.is(Outcome::Pass, source, says)
    }

    /// The rule does not apply, and says why.
    fn aside(self, source: Source, says: &'static str) -> Self {
        self.is(Outcome::NotChecked, source, says)
    }

    /// Something is blank.
    fn unknown(self, blank: &str) -> Self {
        self.missing(Outcome::Unknown, format!("blank: {blank}"))
    }

    /// Nobody asks, and not every mounting has to pass.
    fn not_checked(self, lacks: &str) -> Self {
        self.missing(Outcome::NotChecked, format!("nobody asks for: {lacks}"))
    }

    /// Nobody asks, and every mounting has to pass.
    fn not_given(self, lacks: &str) -> Self {
        self.missing(Outcome::Unknown, format!("not given: {lacks}"))
    }

    fn missing(mut self, outcome: Outcome, says: String) -> Self {
        self.expect = Some(Expect::Missing { outcome, says });
        self
    }

    /// What is found, what is demanded, and the room between them.
    fn figures(mut self, found: f64, demanded: f64, margin: f64) -> Self {
        self.figures = Some([found, demanded, margin]);
        self
    }

    fn saying(mut self, part: &'static str) -> Self {
        self.saying = part;
        self
    }

    /// What is wrong with the finding, if anything.
    fn wrong_with(&self, found: &Finding) -> Option<String> {
        let said = match self.expect.as_ref().expect("every row expects something") {
            Expect::Case { outcome, source, says } => {
                found.outcome == *outcome
                    && found.source == Some(*source)
                    && fills(says, &found.says)
            }
            Expect::Missing { outcome, says } => {
                found.outcome == *outcome && found.source.is_none() && found.says == *says
            }
        };
        let figures = [
            found.found.map(|figure| figure.number()),
            found.demanded.map(|figure| figure.number()),
            found.margin,
        ];
        // Half a nanometre, in mm; speeds and angles are stepped as finely.
        let near =
            |found: &Option<f64>, wanted: f64| found.is_some_and(|n| (n - wanted).abs() < 5e-7);
        let met =
            self.figures.is_none_or(|wanted| figures.iter().zip(wanted).all(|(f, w)| near(f, w)));
        let sound = said && met && found.says.contains(self.saying);
        (!sound).then(|| format!("{}\n    found {found}\n    with {figures:?}", self.name))
    }
}

/// Whether a sentence is this template with its figures filled in.
fn fills(template: &str, says: &str) -> bool {
    let template = template.replace("{demanded}", "{found}");
    let mut pieces = template.split("{found}");
    let Some(mut rest) = pieces.next().and_then(|first| says.strip_prefix(first)) else {
        return false;
    };
    for piece in pieces {
        match rest.split_once(piece) {
            // A figure is never empty; the template's end is sought from the end.
            _ if piece.is_empty() => rest = "",
            Some((figure, after)) if !figure.is_empty() => rest = after,
            _ => return false,
        }
    }
    // What a rule adds follows a semicolon.
    rest.is_empty() || rest.starts_with("; ")
}

/// The rows of one rule.
struct Table {
    rule: &'static Rule,
    rows: Vec<Row>,
    blanks: Vec<String>,
}

impl Table {
    fn of(slug: &str) -> Self {
        let rule = find_rule(slug).expect("a rule of that slug");
        Self { rule, rows: Vec::new(), blanks: Vec::new() }
    }

    fn row(mut self, row: Row) -> Self {
        self.rows.push(row);
        self
    }

    /// A datum that is asked for and blank can't be told.
    fn blank(mut self, heading: &str, change: impl FnOnce(&mut Mounting)) -> Self {
        self.blanks.push(heading.to_owned());
        self.row(row(format!("blank {heading}"), change).unknown(heading))
    }

    /// A datum that nobody asks for is unknown to an essential rule, and
    /// leaves any other unchecked.
    fn unasked(self, heading: &str, change: impl FnOnce(&mut Mounting)) -> Self {
        let row = row(format!("nobody asks for {heading}"), change);
        let row =
            if self.rule.essential { row.not_given(heading) } else { row.not_checked(heading) };
        self.row(row)
    }

    /// Checks every row and reports all that fail.
    #[track_caller]
    fn holds(self) {
        let wrong: Vec<_> = self.rows.iter().filter_map(|row| self.judge(row)).collect();
        assert!(wrong.is_empty(), "{}:\n  {}", self.rule.slug, wrong.join("\n  "));
    }

    fn judge(&self, row: &Row) -> Option<String> {
        row.wrong_with(&finding(self.rule.slug, &row.mounting, &row.terms))
    }
}

/// What one rule finds.
fn finding(slug: &str, mounting: &Mounting, terms: &Terms) -> Finding {
    let verdict = check(mounting, terms).expect("a mounting whose data are in range");
    let found = verdict.findings.into_iter().find(|found| found.rule.slug == slug);
    found.expect("one finding a rule")
}

fn tables() -> Vec<Table> {
    let subjects = [
        speed::tables(),
        wheel::tables(),
        flange::tables(),
        plate::tables(),
        fit::tables(),
        blotter::tables(),
        thread::tables(),
        nut::tables(),
        holding::tables(),
        guard::tables(),
        key::tables(),
        seat::tables(),
        balance::tables(),
        taper::tables(),
        thin::tables(),
    ];
    subjects.into_iter().flatten().collect()
}

/// A case as a row names it.
fn named(outcome: Outcome, source: Source, says: &str) -> String {
    format!("{outcome} [{source}] {says}")
}

#[test]
fn every_case_of_every_rule_has_a_row_and_every_row_a_case() {
    let tables = tables();
    for rule in RULES {
        let rows = tables.iter().filter(|table| table.rule == rule).flat_map(|table| &table.rows);
        let mut tested: Vec<_> = rows
            .filter_map(|row| match row.expect {
                Some(Expect::Case { outcome, source, says }) => Some(named(outcome, source, says)),
                _ => None,
            })
            .collect();
        let of = |case: &Case| named(case.outcome, case.source, case.says);
        let mut declared: Vec<_> = rule.cases.iter().map(of).collect();
        declared.sort();
        tested.sort();
        tested.dedup();
        assert_eq!(tested, declared, "cases of {}", rule.slug);
    }
}

#[test]
fn every_rule_is_tried_with_each_datum_it_needs_blank_and_with_one_unasked() {
    let tables = tables();
    for rule in RULES {
        let of_rule: Vec<_> = tables.iter().filter(|table| table.rule == rule).collect();
        for field in rule.needs() {
            let tried = of_rule.iter().any(|table| table.blanks.contains(&field.heading()));
            assert!(tried, "{} with a blank {}", rule.slug, field.heading());
        }
        let unasked = of_rule.iter().flat_map(|table| &table.rows).any(|row| match &row.expect {
            Some(Expect::Missing { says, .. }) => !says.starts_with("blank"),
            _ => false,
        });
        assert!(unasked, "{} with a datum that nobody asks for", rule.slug);
    }
}

#[test]
fn the_sound_mounting_passes_every_rule_that_is_asked_of_it() {
    let verdict = check(&sound(), &terms()).expect("a sound mounting");
    let aside: Vec<_> = verdict.with(Outcome::NotChecked).map(|f| f.rule.slug).collect();
    // It has no bushing and is not made for cutting off.
    assert_eq!(aside, ["cutting-off-too-thick", "bushing", "thin-wheel"], "{verdict}");
    assert_eq!(verdict.worst, Outcome::Pass, "{verdict}");
}

#[test]
fn a_mounting_of_which_nothing_is_known_fails_by_every_essential_rule_and_no_other() {
    let verdict = check(&Mounting::default(), &terms()).expect("an empty mounting");
    for found in &verdict.findings {
        let wanted = if found.rule.essential { Outcome::Unknown } else { Outcome::NotChecked };
        assert_eq!(found.outcome, wanted, "{found}");
    }
    assert!(!verdict.clear());
}
