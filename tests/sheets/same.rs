//! One table says the same as CSV, as an Office Open XML and as an OpenDocument workbook.

use hubwright::mounting::{FIELDS, Field, Outcome};
use hubwright::sheet::{Cell, Checked};
use hubwright::units::Date;
use proptest::prelude::*;
use proptest::test_runner::FileFailurePersistence;

use crate::make::{checked, labels, ods, ods_row, row, xlsx};

/// Failures are kept beside the tests; the default would make a folder at the top level.
fn config() -> ProptestConfig {
    let regressions =
        concat!(env!("CARGO_MANIFEST_DIR"), "/tests/sheets/same.proptest-regressions");
    let mut config = ProptestConfig {
        failure_persistence: Some(Box::new(FileFailurePersistence::Direct(regressions))),
        ..ProptestConfig::default()
    };
    // PROPTEST_CASES asks for more of everything.
    if std::env::var_os("PROPTEST_CASES").is_none() {
        config.cases = 64;
    }
    config
}

/// A cell before it is written.
#[derive(Clone, Debug)]
enum Value {
    Blank,
    Text(String),
    /// Hundredths.
    Number(i64),
    Truth(bool),
    Day(i64),
}

impl Value {
    fn cell(&self) -> Cell<'_> {
        match self {
            Self::Blank => Cell::Blank,
            Self::Text(text) => Cell::Text(text),
            Self::Number(hundredths) => Cell::Number(*hundredths as f64 / 100.0),
            Self::Truth(truth) => Cell::Truth(*truth),
            Self::Day(day) => Cell::Day(*day),
        }
    }

    /// As a CSV file has it, in quotes always.
    fn quoted(&self) -> String {
        let text = match self {
            Self::Blank => String::new(),
            Self::Text(text) => text.replace('"', "\"\""),
            Self::Number(hundredths) => (*hundredths as f64 / 100.0).to_string(),
            Self::Truth(truth) => if *truth { "yes" } else { "no" }.into(),
            Self::Day(day) => Date::from_days(*day).to_string(),
        };
        format!("\"{text}\"")
    }
}

/// What may stand under a field: mostly what it takes.
fn value(field: &'static Field) -> BoxedStrategy<Value> {
    let words = (field.sort.words)();
    let fitting = if field.sort.name == "date" {
        (10_000_i64..25_000).prop_map(Value::Day).boxed()
    } else if words == ["no", "yes"] || words == ["yes", "no"] {
        prop_oneof![any::<bool>().prop_map(Value::Truth), Just(Value::Text("Yes".into()))].boxed()
    } else if !words.is_empty() {
        prop::sample::select(words.to_vec()).prop_map(|word: &str| Value::Text(word.into())).boxed()
    } else {
        (1_i64..500_000).prop_map(Value::Number).boxed()
    };
    prop_oneof![
        12 => fitting,
        2 => Just(Value::Blank),
        1 => Just(Value::Text("none".into())),
        1 => Just(Value::Text("5/16 in".into())),
        1 => Just(Value::Text("about 3 & <more> \"or\" so".into())),
        1 => Just(Value::Number(-300)),
    ]
    .boxed()
}

/// Places of fields, and rows of a name and what stands under each.
fn table() -> impl Strategy<Value = (Vec<usize>, Vec<Vec<Value>>)> {
    prop::sample::subsequence((0..FIELDS.len()).collect::<Vec<_>>(), 1..12).prop_flat_map(
        |places| {
            let name = prop_oneof![
                "[a-zA-Z&<>'äöü€]{1,12}".prop_map(Value::Text),
                Just(Value::Text("two words".into())),
                Just(Value::Blank)
            ];
            let mut row = vec![name.boxed()];
            row.extend(places.iter().map(|place| value(&FIELDS[*place])));
            // A row that is blank all over is no row anywhere, but takes a number.
            (Just(places), prop::collection::vec(row, 1..8))
        },
    )
}

/// Labels and outcomes of all rows; none is the outcome of one that can't be read.
fn told(checked: &Checked) -> Vec<((usize, String), Option<Outcome>)> {
    let worst = (0..checked.len()).map(|row| checked.worst(row));
    labels(checked).into_iter().zip(worst).collect()
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn a_table_says_the_same_in_every_format((places, rows) in table()) {
        let headings: Vec<String> = std::iter::once("name".to_owned())

.chain(places.iter().map(|place| &FIELDS[*place]).map(|field| match (field.sort.units)().first() {
                Some(unit) => format!("{} [{unit}]", field.heading()),
                None => field.heading(),
            }))
            .collect();
        let heads: Vec<Cell<'_>> = headings.iter().map(|heading| Cell::Text(heading)).collect();
        let filled = |row: &&Vec<Value>| row.iter().any(|value| !matches!(value, Value::Blank));
        prop_assume!(rows.iter().any(|row| filled(&row)));
        let mut csv = headings.join(",") + "\n";
        let (mut in_xlsx, mut in_ods) = (row(1, &heads), ods_row(&heads));
        for (number, values) in (2..).zip(&rows) {
            csv += &(values.iter().map(Value::quoted).collect::<Vec<_>>().join(",") + "\n");
            in_xlsx += &row(number, &values.iter().map(Value::cell).collect::<Vec<_>>());
            in_ods += &ods_row(&values.iter().map(Value::cell).collect::<Vec<_>>());
        }
        let plain = checked(&csv);
        let expected = told(&plain);
        prop_assert_eq!(plain.len(), rows.iter().filter(filled).count(), "no row is lost");
        for (what, other) in [("xlsx", checked(xlsx(&in_xlsx).zip())), ("ods", checked(ods(&in_ods).zip()))] {
            prop_assert_eq!(other.counts, plain.counts, "{}\n{}", what, csv);
            prop_assert_eq!(&told(&other), &expected, "{}\n{}", what, csv);
        }
    }
}
