//! A column with what is written on the wheels.

use hubwright::mounting::Outcome;

use crate::make::checked;

/// Outcome of a rule in each row.
fn outcomes(table: &str, slug: &str) -> Vec<Option<Outcome>> {
    let checked = checked(table);
    let of = |row: hubwright::sheet::Row| {
        let verdict = row.verdict.ok()?;
        let finding = verdict.findings.iter().find(|finding| finding.rule.slug == slug)?;
        Some(finding.outcome)
    };
    checked.rows().map(of).collect()
}

#[test]
fn a_marking_fills_what_the_row_leaves_blank() {
    let table = "name,wheel marking,spindle greatest speed [rpm],wheel marked speed [rpm]\n\
        slow,A60K7V 2850 rpm,2800,\n\
        fast,A60K7V 2850 rpm,2900,\n\
        none,none,2900,\n\
        blank,,2800,2850\n";
    let (refuse, pass, unknown) =
        (Some(Outcome::Refuse), Some(Outcome::Pass), Some(Outcome::Unknown));
    assert_eq!(outcomes(table, "over-speed"), [pass, refuse, unknown, pass]);
    // A heading asks: a marking that nobody has read can't be told.
    assert_eq!(
        outcomes(table, "marking-disagrees"),
        [pass, pass, Some(Outcome::NotChecked), unknown]
    );
}

#[test]
fn of_two_speeds_the_lower_counts_and_both_ways_are_told() {
    let table = "name,marking,spindle greatest speed [rpm],wheel marked speed [rpm]\n\
        row lower,A60K7V 3000 rpm,2900,2850\n\
        marking lower,A60K7V 2850 rpm,2900,3000\n";
    assert_eq!(outcomes(table, "over-speed"), [Some(Outcome::Refuse); 2]);
    assert_eq!(outcomes(table, "marking-disagrees"), [Some(Outcome::Caution); 2]);
}

#[test]
fn another_bond_or_size_cannot_be_told() {
    let table = "name,wheel specification,wheel bond,wheel diameter [mm]\n\
        bond,A60K7V,resin,200\n\
        size,250 x 20 x 32 A60K7V,vitrified,200\n\
        nominal,200 x 20 x 31.75 A60K7V,V,203.2\n";
    let (unknown, pass) = (Some(Outcome::Unknown), Some(Outcome::Pass));
    assert_eq!(outcomes(table, "marking-disagrees"), [unknown, unknown, pass]);
}

#[test]
fn what_a_marking_leaves_unread_is_told_once() {
    let table = "name,wheel marking,wheel diameter [mm]\na,A60K7V lot,200\nb,A60K7V lot 9,200\n";
    let notes = checked(table).notes.join(" ");
    assert!(notes.contains("wheel marking of row 2, \"lot\""), "{notes}");
    assert!(notes.contains("1 more"), "{notes}");
    let long = format!("name,wheel marking,wheel diameter [mm]\na,{},200\n", "A".repeat(300));
    let problems = checked(long).problems();
    assert!(problems[0].error.to_string().contains("wheel marking"), "{:?}", problems[0].error);
}
