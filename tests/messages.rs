//! What people are told when something can't be computed, and what a bad row or file spoils.

#[cfg(feature = "sheets")]
use hubwright::error::CODES;
use hubwright::mounting::{Columns, FIELDS, Field, Takes, Terms};
use hubwright::units::{
    AngularVelocity, Date, Decimal, Length, Shop, Words, millimeter, read, revolution_per_minute,
};
use hubwright::wheel::{FlangeKind, Shape, flange_limits, rim_speed, rim_speed_column};
use hubwright::{Error, ErrorKind};

fn mm(size: f64) -> Length {
    Length::new::<millimeter>(size)
}

fn field(heading: &str) -> &'static Field {
    FIELDS.iter().find(|field| field.heading() == heading).expect("a field of a mounting")
}

/// That a message is one line of what is wrong and one `hint:` line, and
/// holds every one of `holds`.
#[track_caller]
fn assert_told(error: &Error, code: &str, holds: &[&str]) {
    let text = error.to_string();
    assert_eq!(error.code(), code, "{text}");
    let lines: Vec<_> = text.lines().collect();
    let [wrong, hint] = lines[..] else { panic!("two lines: {text:?}") };
    let hint = hint.strip_prefix("hint: ").unwrap_or_else(|| panic!("no hint: {text:?}"));
    assert!(hint.trim().len() > 5, "an empty hint: {text:?}");
    // ANCHORS.md, the shape of a message: no full stop, no "invalid".
    assert!(!wrong.ends_with('.') && !text.to_lowercase().contains("invalid"), "{text:?}");
    for part in holds {
        assert!(text.contains(part), "{part:?} is not in {text:?}");
    }
}

/// Every error that the core makes without a file, with its code and what its message holds.
fn samples() -> Vec<(Error, &'static str, Vec<&'static str>)> {
    let mut all: Vec<(Error, &str, Vec<&str>)> = Vec::new();
    let turns = AngularVelocity::new::<revolution_per_minute>;
    let mut add = |error: Option<Error>, code, holds: &[&'static str]| {
        all.push((
            error.unwrap_or_else(|| panic!("no error for {code} {holds:?}")),
            code,
            holds.into(),
        ));
    };
    add(rim_speed(mm(f64::NAN), turns(1.0)).err(), "not-finite", &["`diameter`", "NaN", "mm"]);
    add(rim_speed(mm(1.0), turns(f64::INFINITY)).err(), "not-finite", &["`speed`", "inf", "rpm"]);
    add(rim_speed(mm(-2.0), turns(1.0)).err(), "out-of-range", &["`diameter`", "-2 mm", "above 0"]);
    add(
        field("wheel diameter").read("20000 mm", None, Decimal::Point).err(),
        "out-of-range",
        // 10 m is the most that a length may be.
        &["`wheel diameter`", "20000 mm", "10000 mm"],
    );
    add(
        read::<Length>("2,5 mm").err(),
        "not-a-quantity",
        &["`value`", "\"2,5 mm\"", "decimal comma"],
    );
    add(read::<Length>("125").err(), "no-unit", &["`value`", "125", "length", "mm"]);
    add(
        "type-99".parse::<Shape>().err(),
        "unknown-word",
        &["`wheel shape`", "\"type-99\"", "type-27a", "type-1-cutting-off"],
    );
    add(Terms::default().without("no-rule").err(), "unknown-word", &["\"no-rule\"", "over-speed"]);
    add(
        flange_limits(Shape::Type1, mm(355.6), FlangeKind::Sleeve, None).err(),
        "missing",
        &["`hole`", "sleeve", "127 mm"],
    );
    add(
        Columns::new().set("wheel", "colour", vec![]).err(),
        "missing",
        &["`wheel.colour`", "FIELDS"],
    );
    add(
        rim_speed_column(&[1.0, 2.0], &[1.0], &mut [0.0; 2]).err(),
        "unlike-lengths",
        &["`speed`", "1 row", "2"],
    );
    add(
        rim_speed_column(&[1.0, 2.0], &[1.0, 2.0], &mut [0.0; 3]).err(),
        "unlike-lengths",
        &["`out`", "3 rows", "2"],
    );
    add(Date::read("1.3.2027").err(), "not-a-quantity", &["`date`", "\"1.3.2027\"", "2027-03-01"]);
    all
}

#[test]
fn every_error_of_the_core_names_argument_value_range_and_a_hint() {
    for (error, code, holds) in samples() {
        assert_told(&error, code, &holds);
        assert!(error.argument().is_some(), "{error}");
        let named = error.clone().named("loose_flange.diameter");
        assert!(named.to_string().contains("`loose_flange.diameter`"), "{named}");
        assert_eq!(named.code(), code);
    }
}

/// Only Python hands over quantities with units of their own: no call of the
/// Rust core can meet one.
const FROM_PYTHON: &str = "wrong-unit";

#[test]
fn the_one_code_that_only_python_can_cause_is_made_there_and_tells_as_much() {
    let quantity = concat!(env!("CARGO_MANIFEST_DIR"), "/src/python/quantity.rs");
    let source = std::fs::read_to_string(quantity).expect("src/python/quantity.rs");
    assert!(source.contains("ErrorKind::WrongUnit {"), "nothing makes a {FROM_PYTHON}");
    let error = Error::from(ErrorKind::WrongUnit {
        argument: "diameter".into(),
        given: "3 second".into(),
        kind: "length",
        why: "the unit is of another kind",
        hint: "give a length, like \"125 mm\"".into(),
    });
    assert_told(
        &error,
        FROM_PYTHON,
        &["`diameter`", "3 second", "length", "another kind", "125 mm"],
    );
}

#[cfg(feature = "sheets")]
#[test]
fn every_code_is_produced_by_some_call() {
    let mut met: Vec<&str> = samples().iter().map(|(error, ..)| error.code()).collect();
    met.push(FROM_PYTHON);
    met.extend(sheets::samples().iter().map(Error::code));
    for (code, means) in CODES {
        assert!(met.contains(code), "nothing produced {code}: {means}");
        assert!(!means.is_empty(), "{code} is not documented");
    }
    for code in met {
        assert!(CODES.iter().any(|(known, _)| *known == code), "{code} is not in CODES");
    }
    let mut codes: Vec<_> = CODES.iter().map(|(code, _)| *code).collect();
    codes.sort_unstable();
    codes.dedup();
    assert_eq!(codes.len(), CODES.len(), "a code stands twice in CODES");
}

/// Texts that are no length, each with the code and a word of the reason.
const NO_LENGTHS: &[(&str, &str, &str)] = &[
    ("about 150", "not-a-quantity", "about 150"),
    ("ask Karl", "not-a-quantity", "ask Karl"),
    ("NaN mm", "not-a-quantity", "no number"),
    ("nan", "not-a-quantity", "nan"),
    ("inf mm", "not-a-quantity", "no number"),
    ("infinity mm", "not-a-quantity", "no number"),
    ("mm", "not-a-quantity", "mm"),
    ("125", "no-unit", "125"),
    ("5/16", "no-unit", "5/16"),
    ("1e3", "no-unit", "1e3"),
    ("125 s", "not-a-quantity", "unit"),
    ("125 rpm", "not-a-quantity", "unit"),
    ("125 kg", "not-a-quantity", "unit"),
    ("2,5 mm", "not-a-quantity", "decimal comma"),
    ("1,250.5 mm", "not-a-quantity", "decimal comma"),
    ("1e400 mm", "not-a-quantity", "beyond"),
    ("-1e400 mm", "not-a-quantity", "beyond"),
    ("5 mmm", "not-a-quantity", "5 mmm"),
    ("5 mm mm", "not-a-quantity", "5 mm mm"),
    ("5 5 mm", "not-a-quantity", "5 5 mm"),
    ("1.2.3 mm", "not-a-quantity", "no number"),
    ("0x10 mm", "not-a-quantity", "no number"),
    ("1_000 mm", "not-a-quantity", "no number"),
    ("5/0 in", "not-a-quantity", "zero"),
    ("1/2/3 in", "not-a-quantity", "fraction"),
    ("1 1 1/4 in", "not-a-quantity", "fraction"),
    ("1.5/2 in", "not-a-quantity", "fraction"),
    ("2 1/4", "no-unit", "2 1/4"),
    ("--5 mm", "not-a-quantity", "no number"),
    ("5 µ", "not-a-quantity", "unit"),
    ("٣ mm", "not-a-quantity", "no number"),
    ("", "not-a-quantity", ""),
];

#[test]
fn a_text_that_is_no_length_is_refused_with_the_reason() {
    for (text, code, holds) in NO_LENGTHS {
        let error = read::<Length>(text).expect_err(text);
        assert_told(&error, code, &[holds, "length", "\"125 mm\""]);
        // In a sheet the heading names the argument.
        let error = field("wheel diameter").read(text, None, Decimal::Point).expect_err(text);
        assert_told(&error, code, &["`wheel diameter`", holds]);
    }
}

#[test]
fn a_bad_cell_under_a_heading_with_a_unit_is_refused_too() {
    // The heading gives the unit, so that a bare number is right and these are not.
    for text in ["about 150", "NaN", "inf", "2,5", "1e400", "5 mmm", "5 s", "1,250.5", "-", "1 2 3"]
    {
        let error = field("wheel diameter").read(text, Some("mm"), Decimal::Point).expect_err(text);
        assert_told(&error, "not-a-quantity", &["`wheel diameter`", text]);
    }
    for text in ["0", "-5", "0 mm", "-0.1 in", "1e300", "10000.000001"] {
        let error = field("wheel diameter").read(text, Some("mm"), Decimal::Point).expect_err(text);
        assert_told(&error, "out-of-range", &["`wheel diameter`", "mm"]);
    }
    let read = |text| field("wheel diameter").read(text, Some("mm"), Decimal::Point);
    // A cell with a unit of its own says what it means.
    assert_eq!([read("125"), read("5 in"), read("1-1/4\"")], [Ok(125e6), Ok(127e6), Ok(31.75e6)]);
}

#[test]
fn zero_is_refused_where_it_makes_no_sense_and_taken_where_it_does() {
    for known in FIELDS.iter().filter(|field| !(field.sort.units)().is_empty()) {
        let unit = (known.sort.units)()[0];
        let zero = known.read(&format!("0 {unit}"), None, Decimal::Point);
        let negative = known.read(&format!("-1 {unit}"), None, Decimal::Point);
        match known.takes {
            Takes::Positive
            | Takes::UnderHalf
            | Takes::OneOrMore
            | Takes::UpToOne
            | Takes::Dense => {
                assert_told(&zero.expect_err("zero"), "out-of-range", &[&known.heading()])
            }
            Takes::ZeroOrMore | Takes::Any => assert_eq!(zero, Ok(0.0), "{}", known.heading()),
        }
        match known.takes {
            Takes::Any => assert!(negative.is_ok(), "{}", known.heading()),
            _ => assert_told(&negative.expect_err("negative"), "out-of-range", &[&known.heading()]),
        }
    }
}

#[test]
fn a_value_beyond_its_field_is_told_in_units_of_its_own_kind() {
    // Words come from a list and can't be beyond it.
    for known in FIELDS.iter().filter(|field| (field.sort.words)().is_empty()) {
        let error = known.admit(known.sort.most * 2.0).expect_err("twice the most");
        assert_told(&error, "out-of-range", &[known.name]);
        let ErrorKind::OutOfRange { unit, .. } = error.kind() else { panic!("{error}") };
        let units = (known.sort.units)();
        // A date has no unit, least of all degrees.
        let right = if units.is_empty() { unit.is_empty() } else { units.contains(unit) };
        assert!(right, "{} in {unit:?}: {error}", known.heading());
        for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            assert_told(&known.admit(bad).expect_err("no number"), "not-finite", &[known.name]);
        }
    }
}

#[test]
fn a_plain_number_is_read_without_a_unit_and_kept_in_its_bounds() {
    let read = |heading: &str, text: &str| field(heading).read(text, None, Decimal::Point);
    let poisson = "wheel poisson ratio";
    assert_eq!(read(poisson, "0.22"), Ok(0.22e9));
    assert_eq!(field(poisson).read("0,22", None, Decimal::Comma), Ok(0.22e9));
    for (text, given) in [
        ("0.5", "is 0.5, not between 0 and 0.5"),
        ("0", "is 0, not between"),
        ("-0.2", "is -0.2, not"),
    ] {
        assert_told(&read(poisson, text).expect_err(text), "out-of-range", &[poisson, given]);
    }
    let factor = "wheel burst factor";
    assert_eq!(read(factor, "1"), Ok(1e9));
    assert_told(
        &read(factor, "0.99").expect_err("below 1"),
        "out-of-range",
        &[factor, "is 0.99, outside 1 to 1000"],
    );
    for text in ["3 mm", "22 %", "0,22", "about 3", "nan"] {
        assert_told(
            &read(factor, text).expect_err(text),
            "not-a-quantity",
            &[factor, "plain number", text],
        );
    }
}

#[test]
fn a_friction_is_read_without_a_unit_and_kept_in_its_bounds() {
    let read = |text: &str| field("nut thread friction").read(text, None, Decimal::Point);
    assert_eq!(read("0.12"), Ok(0.12e9));
    assert_eq!(read("1"), Ok(1e9));
    let comma = field("nut face friction").read("0,12", None, Decimal::Comma);
    assert_eq!(comma, Ok(0.12e9));
    for (text, given) in [
        ("0", "is 0, not above 0 and up to 1"),
        ("-0.12", "is -0.12, not above 0"),
        ("14", "is 14, not above 0 and up to 1"),
    ] {
        assert_told(&read(text).expect_err(text), "out-of-range", &["nut thread friction", given]);
    }
    for text in ["0.12 mm", "12 %", "0,12", "about 0.12", "nan"] {
        assert_told(
            &read(text).expect_err(text),
            "not-a-quantity",
            &["nut thread friction", "plain number", text],
        );
    }
}

#[test]
fn a_word_that_is_none_is_answered_with_the_whole_list() {
    for known in FIELDS.iter().filter(|field| !(field.sort.words)().is_empty()) {
        let error = known.read("neither of them", None, Decimal::Point).expect_err("no word");
        assert_told(&error, "unknown-word", &(known.sort.words)());
        assert_eq!(error.argument(), Some(known.heading().as_str()));
        for (code, word) in (known.sort.words)().into_iter().enumerate() {
            let loud = word.to_uppercase().replace('-', " ");
            assert_eq!(known.read(&loud, None, Decimal::Point), Ok(code as f64), "{loud}");
            assert_eq!(known.show(code as f64, Shop::Metric), word);
        }
    }
    // A long text is cut, so that a message stays one line on a screen.
    let long = Shape::read_word(&"x".repeat(5000)).expect_err("no shape").to_string();
    assert!(long.len() < 1000, "{} bytes", long.len());
}

#[test]
fn a_day_that_no_calendar_has_is_refused() {
    for text in [
        "",
        "2027",
        "2027-3-1",
        "2027-13-01",
        "2027-00-10",
        "2023-02-29",
        "1900-02-29",
        "2027-04-31",
        "2027-03-00",
        "01.03.2027",
        "3/1/2027",
        "2027/03/01",
        "2027-03-01T00:00",
        "0000-01-01",
        "-2027-03-01",
        "20270301",
        "2027-03-01-",
    ] {
        let error = Date::read(text).expect_err(text);
        assert_told(&error, "not-a-quantity", &["`date`", text, "2027-03-01"]);
    }
    for text in ["2024-02-29", "2000-02-29", " 2027-03-01 ", "0001-01-01", "9999-12-31"] {
        assert_eq!(Date::read(text).expect("a day").to_string(), text.trim());
    }
}

#[cfg(feature = "sheets")]
mod sheets {
    use std::ops::ControlFlow;
    use std::path::PathBuf;
    use std::sync::atomic::{AtomicU32, Ordering};

    use hubwright::sheet::{Cell, Checked, Given, Intake, Options, check_file, report};

    use super::*;

    /// A path for one file of one test, gone when it goes out of scope.
    struct Passing(PathBuf);

    impl Drop for Passing {
        fn drop(&mut self) {
            // Most tests have written it, some have not.
            let _ = std::fs::remove_file(&self.0);
        }
    }

    fn passing(ending: &str) -> Passing {
        static NEXT: AtomicU32 = AtomicU32::new(0);
        let (process, next) = (std::process::id(), NEXT.fetch_add(1, Ordering::Relaxed));
        Passing(std::env::temp_dir().join(format!("hubwright-messages-{process}-{next}.{ending}")))
    }

    fn check_with(contents: &[u8], options: &Options) -> Result<Checked, Error> {
        let file = passing("csv");
        std::fs::write(&file.0, contents).expect("a temporary file");
        check_file(&file.0, &Terms::default(), None, options, &mut |_| ControlFlow::Continue(()))
    }

    fn checked(contents: impl AsRef<[u8]>) -> Result<Checked, Error> {
        check_with(contents.as_ref(), &Options::default())
    }

    fn refused(contents: impl AsRef<[u8]>) -> Error {
        match checked(contents) {
            Err(error) => error,
            Ok(checked) => panic!("it was read: {:?}", checked.counts),
        }
    }

    const HEADINGS: &str = "name,spindle greatest speed [rpm],wheel marked speed [rpm]\n";

    /// A file with enough rows that progress is told, stopped there.
    fn stopped() -> Error {
        let file = passing("csv");
        let rows = "fast,3400,2850\n".repeat(5000);
        std::fs::write(&file.0, HEADINGS.to_owned() + &rows).expect("a temporary file");
        let stop = &mut |_| ControlFlow::Break(());
        check_file(&file.0, &Terms::default(), None, &Options::default(), stop)
            .expect_err("stopped")
    }

    fn missing_file() -> Error {
        let path = std::env::temp_dir().join("hubwright-there-is-no-such-rack.csv");
        let each = &mut |_| ControlFlow::Continue(());
        check_file(&path, &Terms::default(), None, &Options::default(), each).expect_err("no file")
    }

    fn wide() -> String {
        let headings: Vec<_> = (0..2000).map(|column| format!("column {column}")).collect();
        format!("wheel diameter [mm],{}\n200\n", headings.join(","))
    }

    /// An error for each code that only tables and files can cause.
    pub(super) fn samples() -> Vec<Error> {
        let spoiled = checked(HEADINGS.to_owned() + "a,1,1,1\n").expect("a table");
        vec![
            refused("wheel diameter [mm],wheel diameter [in]\n200,8\n"),
            spoiled.problems()[0].error.clone(),
            refused(""),
            refused(wide()),
            missing_file(),
            stopped(),
        ]
    }

    #[test]
    fn a_file_that_holds_no_mountings_is_refused() {
        for (what, contents, holds) in [
            ("empty", &b""[..], "is empty"),
            ("white space", b" \n\n  \r\n", "is empty"),
            ("a byte order mark alone", b"\xef\xbb\xbf", "is empty"),
            ("headings alone", HEADINGS.as_bytes(), "no row"),
            ("headings and rows without a cell", b"name,wheel diameter [mm]\n,\n , \n", "no row"),
            ("no heading that is known", b"colour,weight\nred,3\n", "no heading"),
            ("no headings at all", b"200,8,31.75\n", "no heading"),
        ] {
            match checked(contents) {
                Err(error) => assert_told(&error, "bad-table", &[holds, "hubwright-messages-"]),
                Ok(checked) => panic!("{what}: {:?}", checked.counts),
            }
        }
    }

    #[test]
    fn headings_that_can_not_be_used_are_refused_by_name() {
        let twice = "wheel diameter [mm],name,wheel diameter [mm]\n200,a,180\n";
        assert_told(
            &refused(twice),
            "bad-heading",
            &["wheel diameter [mm]", "column 3", "column 1"],
        );
        let in_other_words = "outer flange dia (mm),loose flange diameter [in]\n80,3\n";
        assert_told(
            &refused(in_other_words),
            "bad-heading",
            &["loose flange diameter", "outer flange"],
        );
        let pair = "both flanges diameter [mm],fixed flange diameter [mm]\n80,70\n";
        assert_told(&refused(pair), "bad-heading", &["both flanges diameter"]);
        let names = "name,mounting,wheel diameter [mm]\na,b,200\n";
        assert_told(&refused(names), "bad-heading", &["\"mounting\"", "\"name\""]);
        // A number of the shop's own is no second name.
        let named = checked("id,name,wheel diameter [mm]\n7,b,200\n").expect("a table");
        assert_eq!(named.label(0), Some((2, "b")));
        let unit = "wheel diameter [rpm]\n200\n";
        assert_told(
            &refused(unit),
            "bad-heading",
            &["wheel diameter [rpm]", "\"rpm\"", "length", "mm"],
        );
        let word = "wheel shape [mm]\ntype-1\n";
        assert_told(&refused(word), "bad-heading", &["wheel shape [mm]", "leave the unit out"]);
    }

    #[test]
    fn two_thousand_columns_are_over_the_cap() {
        assert_told(&refused(wide()), "too-large", &["2001 columns", "1024"]);
    }

    #[test]
    fn what_is_no_text_is_refused() {
        let utf_16 = |mark: &[u8], big: bool| {
            let units = HEADINGS.encode_utf16().chain("a,3400,2850\n".encode_utf16());
            let bytes =
                units.flat_map(|unit| if big { unit.to_be_bytes() } else { unit.to_le_bytes() });
            [mark, &bytes.collect::<Vec<_>>()].concat()
        };
        for contents in [utf_16(b"\xff\xfe", false), utf_16(b"\xfe\xff", true)] {
            assert_told(&refused(contents), "bad-table", &["UTF-8"]);
        }
        assert_told(&refused(utf_16(b"", false)), "bad-table", &["neither a text file"]);
        let nul = [HEADINGS.as_bytes(), b"a\0b,3400,2850\n"].concat();
        assert_told(&refused(nul), "bad-table", &["neither a text file"]);
        assert_told(
            &refused(b"PK\x03\x04 a workbook"),
            "bad-table",
            &["damaged", "office program"],
        );
        assert_told(
            &refused("<html><table><tr><td>wheel</td></tr>"),
            "bad-table",
            &["HTML", ".ods"],
        );
    }

    #[test]
    fn a_file_of_a_byte_a_letter_is_read_and_said_to_be() {
        // What a European office program saves as plain CSV.
        let contents =
            b"name;wheel diameter [mm];recess of the fixed flange [\xb5m]\nSchl\xe4ger;200;1\n";
        let checked = checked(contents).expect("a table");
        assert_eq!(checked.label(0), Some((2, "Schläger")));
        assert!(checked.notes[0].contains("Latin-1") && checked.notes[0].contains("rows: 1, 2."));
        assert_eq!(checked.unread[0].0, "recess of the fixed flange [µm]");
    }

    #[test]
    fn a_folder_or_a_missing_file_is_told_from_an_empty_one() {
        assert_told(&missing_file(), "file", &["there-is-no-such-rack.csv", "read"]);
        let each = &mut |_| ControlFlow::Continue(());
        let folder = std::env::temp_dir();
        let error = check_file(&folder, &Terms::default(), None, &Options::default(), each);
        assert_told(&error.expect_err("a folder"), "file", &["folder"]);
    }

    #[test]
    fn work_that_is_stopped_says_how_far_it_got() {
        assert_told(&stopped(), "stopped", &["4096 rows"]);
    }

    #[test]
    fn a_report_names_its_endings_and_a_folder_that_is_not_there() {
        let checked = checked(HEADINGS.to_owned() + "fast,3400,2850\n").expect("a table");
        let each = &mut |_| ControlFlow::Continue(());
        let error = report::write(&checked, &passing("docx").0, each).expect_err("no such report");
        assert_told(&error, "unknown-word", &["`report`", ".docx", ".html", ".txt"]);
        let nowhere = std::env::temp_dir().join("hubwright-no-such-folder").join("rack.html");
        let error = report::write(&checked, &nowhere, each).expect_err("no such folder");
        assert_told(&error, "file", &["hubwright-no-such-folder", "written"]);
    }

    /// Three good rows around one that is bad: refused, passing by what is asked, refused.
    fn around(bad: &[u8]) -> Vec<u8> {
        [HEADINGS.as_bytes(), b"fast,3400,2850\n", bad, b"\nslow,2800,2850\nfaster,5000,2850\n"]
            .concat()
    }

    #[test]
    fn a_bad_row_spoils_only_itself() {
        let without = checked(around(b"")).expect("a table");
        assert_eq!(without.len(), 3, "an empty line is no row");
        let long = [b"long,".as_slice(), &[b'9'; 40_000], b",2850"].concat();
        for (what, bad, holds) in [
            ("a text", &b"bad,about 3000,2850"[..], "about 3000"),
            ("no number", b"bad,NaN,2850", "NaN"),
            ("beyond numbers", b"bad,1e400,2850", "1e400"),
            ("zero", b"bad,0,2850", "not above 0"),
            ("negative", b"bad,-5,2850", "not above 0"),
            ("another unit", b"bad,5 mm,2850", "5 mm"),
            ("too many cells", b"bad,3000,2850,1,2", "more cells"),
            ("not UTF-8 in a number", b"bad,30\xff0,2850", "30ÿ0"),
            ("thousands in groups", b"bad,\"3,000\",2850.5", "comma"),
            ("a cell too long", &long, "32767"),
        ] {
            let checked = checked(around(bad)).unwrap_or_else(|error| panic!("{what}: {error}"));
            let mut expected = without.counts;
            expected.unreadable = 1;
            assert_eq!(checked.counts, expected, "{what}");
            assert_eq!(checked.counts.rows(), 4, "{what}");
            let problems = checked.problems();
            assert_eq!(problems.len(), 1, "{what}");
            // The headings are row 1 and one good row comes first.
            assert_eq!(problems[0].number, 3, "{what}: the row as a spreadsheet numbers it");
            let text = problems[0].error.to_string();
            assert!(text.contains(holds) && text.contains("\nhint: "), "{what}: {text}");
        }
    }

    #[test]
    fn a_row_that_is_short_is_blank_at_its_end_and_not_unreadable() {
        let checked = checked(around(b"short,2800")).expect("a table");
        assert_eq!((checked.counts.unreadable, checked.len()), (0, 4));
        let row = checked.row(1).expect("the second row");
        assert_eq!(row.worst.map(Words::word), Some("unknown"), "a blank marking can't be judged");
    }

    #[test]
    fn many_bad_rows_are_counted_one_by_one() {
        let mut contents = HEADINGS.as_bytes().to_vec();
        for row in 0..300 {
            let line: &[u8] = match row % 3 {
                0 => b"fast,3400,2850\n",
                1 => b"bad,ask Karl,2850\n",
                _ => b"long,3400,2850,1\n",
            };
            contents.extend_from_slice(line);
        }
        let checked = checked(contents).expect("a table");
        assert_eq!((checked.counts.refused, checked.counts.unreadable), (100, 200));
        assert_eq!((checked.len(), checked.problems().len()), (300, 200));
    }

    /// Whether a table was refused, or says of some row that it can't be read.
    fn complains(result: &Result<Checked, Error>) -> bool {
        result.as_ref().map_or(true, |checked| checked.counts.unreadable > 0)
    }

    #[test]
    fn a_quote_that_is_never_closed_does_not_swallow_rows_unsaid() {
        let swallowed = ["\"slow,2800,2850", "slow,\"2800,2850", "slow,2800,\"2850"];
        for bad in swallowed {
            let result = checked(around(bad.as_bytes()));
            assert!(complains(&result), "{bad:?}: {:?}", result.map(|checked| checked.counts));
        }
        // In the last column, a name or a remark, the row itself is whole: the
        // rows after it, refused ones, would vanish without a word.
        for last in ["name", "remark"] {
            let contents = format!(
                "spindle greatest speed [rpm],wheel marked speed [rpm],{last}\n\
                 2800,2850,\"slow\n5000,2850,fast\n5000,2850,faster\n"
            );
            let result = checked(contents);
            assert!(complains(&result), "{last}: {:?}", result.map(|checked| checked.counts));
        }
    }

    #[test]
    fn a_quote_that_is_never_closed_does_not_swallow_short_rows_unsaid() {
        // Rows may leave out their last cells, so that the lines swallowed
        // hold fewer separators than the headings.
        let contents = "spindle greatest speed [rpm],wheel marked speed [rpm],name,remark\n\
                        2800,2850,slow,\"fine\n5000,2850\n5000,2850,faster\n";
        let result = checked(contents);
        assert!(complains(&result), "{:?}", result.map(|checked| checked.counts));
    }

    #[test]
    fn a_line_break_inside_quotes_is_part_of_its_cell() {
        let checked = checked(around(b"\"two\nlines\",3400,2850")).expect("a table");
        assert_eq!((checked.len(), checked.counts.unreadable), (4, 0));
    }

    fn rotational(separator: char, cells: [&str; 2]) -> String {
        let quote =
            |cell: &str| if separator == ',' { format!("\"{cell}\"") } else { cell.to_owned() };
        format!(
            "name{separator}spindle greatest speed [rpm]{separator}wheel marked speed [rpm]\n\
             a{separator}{}{separator}{}\n",
            quote(cells[0]),
            quote(cells[1])
        )
    }

    #[test]
    fn a_comma_that_may_group_thousands_is_the_users_to_settle() {
        for separator in [';', '\t', ','] {
            let contents = rotational(separator, ["1,250", "2,850"]);
            assert_told(&refused(&contents), "bad-table", &["1,250", "--decimal"]);
            // Said once, it is settled: 1.25 rpm or, with a point, no number at all.
            let decimal = |decimal| Options::default().with_decimal(decimal);
            let comma = check_with(contents.as_bytes(), &decimal(Decimal::Comma)).expect("a table");
            assert_eq!(comma.counts.unreadable, 0, "{separator:?}");
            let point = check_with(contents.as_bytes(), &decimal(Decimal::Point)).expect("a table");
            assert_eq!(point.counts.unreadable, 1, "{separator:?}");
        }
        // Numbers of both sorts under one heading contradict each other.
        let both = rotational(';', ["1,25", "2,85"]) + "b;1.25;2,85\n";
        let holds = ["decimal point", "decimal comma", "row 2", "row 3", "greatest speed"];
        assert_told(&refused(both), "bad-table", &holds);
        // Each column may have its own mark, and the report says which has a comma.
        let each = checked(rotational(';', ["1,25", "2.85"])).expect("a table");
        assert_eq!(each.counts.unreadable, 0);
        assert!(
            each.notes[0].contains("decimal comma under: spindle greatest speed"),
            "{:?}",
            each.notes
        );
        // One cell that can only be a decimal comma settles the others of its column,
        let clear =
            checked(rotational(';', ["1,250", "2850,5"]) + "b;1,5;2,25\n").expect("a table");
        assert_eq!(clear.counts.unreadable, 0);
        // and none of another column: 2,850 rpm is no speed to be wrong about.
        let borrowed = checked(rotational(';', ["1,250", "2850,5"])).expect("a table");
        assert_eq!(borrowed.counts.unreadable, 1);
    }

    #[test]
    fn a_point_that_may_group_thousands_is_the_users_to_settle_between_semicolons() {
        // Where a sheet is saved with semicolons, 4.500 rpm is often 4500 rpm.
        // Read as four and a half turns, any wheel passes: 200 mm marked
        // 35 m/s may turn 3342 rpm.
        let contents = "name;spindle greatest speed [rpm];wheel diameter [mm];wheel marked rim speed [m/s]\n\
                        a;4.500;200;35\n";
        let over_speed = |checked: &Checked| {
            let verdict = checked.row(0).expect("one row").verdict;
            let passes = |verdict: hubwright::mounting::Verdict| {
                verdict.findings.iter().any(|f| f.rule.slug == "over-speed" && f.outcome.clear())
            };
            verdict.is_ok_and(passes)
        };
        let passed = checked(contents).is_ok_and(|checked| over_speed(&checked));
        assert!(!passed, "4.500 rpm between semicolons passed as 4.5 rpm");
    }

    #[test]
    fn a_comma_that_may_group_thousands_is_not_taken_for_a_decimal_far_down_a_file() {
        // Whole numbers alone where the dialect is learnt, then 4,500 rpm: read
        // as four and a half turns, the wheel would pass.
        let mut contents = String::from(
            "spindle greatest speed [rpm];wheel diameter [mm];wheel marked rim speed [m/s];name\n",
        );
        contents.push_str(&"1000;200;35;one of very many\n".repeat(12_000));
        contents.push_str("4,500;200;35;fast\n");
        let Ok(checked) = checked(contents) else { return };
        let last = checked.row(checked.len() - 1).expect("the last row");
        let Ok(verdict) = last.verdict else { return };
        let speed = verdict.findings.iter().find(|f| f.rule.slug == "over-speed").expect("judged");
        assert!(!speed.outcome.clear(), "{}", speed.says);
    }

    #[test]
    fn rows_of_a_program_are_held_to_the_same_words() {
        let headings = ["wheel diameter".to_owned()];
        // A bare number without a unit anywhere spoils its row.
        let mut intake = Intake::new("table", &headings, Given::default()).expect("a heading");
        intake.row(1, &[Cell::Number(200.0)]).expect("room for rows");
        let units = [("wheel diameter".to_owned(), "rpm".to_owned())];
        let error = Intake::new("table", &headings, Given { units: &units, mapping: &[] })
            .expect_err("no length");
        assert_told(&error, "bad-heading", &["\"rpm\"", "length"]);
        let units = [("wheel size".to_owned(), "mm".to_owned())];
        let error = Intake::new("table", &headings, Given { units: &units, mapping: &[] })
            .expect_err("no heading");
        assert_told(&error, "bad-heading", &["wheel size", "not a heading"]);
    }
}
