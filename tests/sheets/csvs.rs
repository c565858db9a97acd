//! CSV files that are too long, too wide, or open a quote and never close it.

use crate::child::check;
use crate::make::{Folder, HEADINGS, checked, refused};

fn headings() -> String {
    HEADINGS.join(",") + "\n"
}

#[test]
fn two_million_rows_end_at_the_cap() {
    let folder = Folder::new();
    let rows = "slow,2800,2850\n".repeat(2_000_000);
    check(&folder.write("rows.csv", headings() + &rows)).refused("too-large", &["rows", "1048576"]);
}

#[test]
fn rows_that_nobody_can_read_count_with_what_keeping_their_errors_takes() {
    let folder = Folder::new();
    // What is said of a word that is not known lists those that are.
    let words = "name,wheel shape\n".to_owned() + &"a,x\n".repeat(100_000);
    check(&folder.write("words.csv", words)).read(100_000, 100_000);
    let all = headings() + &"slow,x,2850\n".repeat(1_000_000);
    check(&folder.write("all.csv", all)).refused("too-large", &["bytes to keep"]);
}

#[test]
fn texts_that_all_differ_count_with_what_keeping_them_takes() {
    let folder = Folder::new();
    let mut contents = String::from("wheel diameter [mm]");
    (1..20).for_each(|at| contents.push_str(&format!(",q{at}")));
    contents.push('\n');
    for at in 0..250_000 {
        let row: Vec<String> = (0..20).map(|column| (at * 20 + column).to_string()).collect();
        contents.push_str(&(row.join(",") + "\n"));
    }
    check(&folder.write("differ.csv", contents)).refused("too-large", &["bytes to keep"]);
}

#[test]
fn a_row_of_40_megabytes_never_ends() {
    let folder = Folder::new();
    let sound = headings() + "slow,2800,2850\n";
    for (what, row) in [
        ("text", "a".repeat(40 << 20)),
        ("quote", "\"".to_owned() + &"slow,2800,2850\n".repeat(3 << 20)),
        ("commas", ",".repeat(40 << 20)),
        ("quotes", "\"\",".repeat(14 << 20)),
    ] {
        let path = folder.write(&format!("{what}.csv"), sound.clone() + &row);
        check(&path).refused("file", &["never ends", "quote"]);
        std::fs::remove_file(path).expect("room for the next");
    }
}

#[test]
fn a_row_of_a_million_cells_spoils_itself_alone() {
    let folder = Folder::new();
    let wide = "slow,2800,2850".to_owned() + &",".repeat(1_000_000);
    let sound = "slow,2800,2850\n";
    let contents = [headings().as_str(), sound, &wide, "\n", sound].concat();
    check(&folder.write("blank.csv", contents)).read(3, 0);
    let contents = [headings().as_str(), sound, &wide, "1\n", sound].concat();
    let told = check(&folder.write("filled.csv", contents));
    told.read(3, 1);
    assert!(told.problems[0].1.contains("more cells"), "{told:?}");
}

#[test]
fn ten_thousand_columns_are_over_the_cap() {
    let folder = Folder::new();
    let more: String = (0..10_000).map(|at| format!(",q{at}")).collect();
    let contents = headings().replace('\n', &(more + "\n")) + "slow,2800,2850\n";
    check(&folder.write("wide.csv", contents)).refused("too-large", &["columns", "1024"]);
}

#[test]
fn a_thousand_headings_that_nobody_knows_are_compared_in_time() {
    let folder = Folder::new();
    let more: String =
        (0..1000).map(|at| format!(",fixd flnge thicknes at hl {at} [mm]")).collect();
    let contents = headings().replace('\n', &(more + "\n")) + "slow,2800,2850\n";
    check(&folder.write("unknown.csv", contents)).read(1, 0);
}

#[test]
fn a_quote_that_swallows_the_rows_below_the_headings_is_told() {
    for contents in [
        // In the headings, in a title above them, and with a quote further down that closes it.
        headings().replace('\n', ",\"remark\n") + "slow,2800,2850\nfast,5000,2850\n",
        headings().replace('\n', ",\"remark\n")
            + "slow,2800,2850\nfast,5000,2850,\"x\"\nlast,1,2\n",
        "\"Rack of 2\" wheels\n".to_owned() + &headings() + "fast,5000,2850\n",
        "\"Rack\n".to_owned()
            + &headings()
            + "fast,5000,2850\n\"\n"
            + &headings()
            + "slow,2800,2850\n",
    ] {
        let result = crate::make::check_with(&contents, &hubwright::sheet::Options::default());
        let Ok(checked) = result else { continue };
        let fast = contents.contains("fast") && checked.rows().any(|row| row.name == "fast");
        assert!(fast || checked.counts.unreadable > 0, "lost: {contents}");
    }
}

#[test]
fn a_byte_of_zero_is_told_where_it_stands() {
    let error = refused(headings() + "sl\0w,2800,2850\n");
    assert!(error.to_string().contains("neither a text file"), "{error}");
    // Further down than the dialect is learnt from.
    let rows = "slow,2800,2850\n".repeat(30_000);
    let checked = checked(headings() + &rows + "slow,28\x000,2850\nslow,2800,2850\n");
    assert_eq!((checked.len(), checked.counts.unreadable), (30_002, 1));
    assert_eq!(checked.problems()[0].number, 30_002);
}

#[test]
fn long_headings_and_groups_take_no_time_and_no_room_in_messages() {
    let folder = Folder::new();
    let long = "x".repeat(32_000);
    let group = format!("{long},{}\n", vec!["x"; 1000].join(","));
    let contents = group.repeat(10) + &headings() + "slow,2800,2850\n";
    check(&folder.write("groups.csv", contents)).read(1, 0);
    let contents = format!("wheel diameter [{long}],name\n200,a\n");
    check(&folder.write("unit.csv", contents)).refused("bad-heading", &["no unit of length"]);
    let spaced = format!("wheel{}diameter [mm]", " ".repeat(30_000));
    let contents = format!("{spaced},wheel diameter [mm]\n200,200\n");
    let told = check(&folder.write("twice.csv", contents));
    assert!(told.error.is_some_and(|(code, _)| code == "bad-heading"));
}
