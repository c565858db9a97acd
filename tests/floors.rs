//! The house keeps its floors: who may use whom, where uom and pint are
//! named, what lies at the top level, how long a file may be.
//!
//! HOUSE.md, "Floors, from the ground up", has the numbers.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use hubwright::mounting::RULES;

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// Floors by module, tenths for the order inside the ground floor. A folder
/// uses floors below its own and itself; two folders on one floor never see
/// each other.
const FLOORS: &[(&str, u32)] = &[
    ("source", 0),
    ("error", 1),
    ("working", 1),
    ("units", 10),
    ("tables", 20),
    ("solid", 30),
    ("joint", 40),
    ("wheel", 40),
    ("gauge", 50),
    ("mounting", 60),
    ("draw", 70),
    ("sheet", 80),
    ("python", 90),
];

fn floor(module: &str) -> Option<u32> {
    FLOORS.iter().find(|(name, _)| *name == module).map(|(_, floor)| *floor)
}

// --- Reading Rust ----------------------------------------------------------

#[derive(Clone, Debug, PartialEq)]
enum Token {
    Word(String),
    Text(String),
    Sign(char),
}

/// Words, texts and signs of Rust source with the line each is on; comments left out.
fn tokens(source: &str) -> Vec<(usize, Token)> {
    let text: Vec<char> = source.chars().collect();
    let (mut at, mut line, mut all) = (0, 1, Vec::new());
    let word = |c: char| c.is_alphanumeric() || c == '_';
    while at < text.len() {
        let (c, next) = (text[at], text.get(at + 1).copied());
        if c == '/' && next == Some('/') {
            while at < text.len() && text[at] != '\n' {
                at += 1;
            }
        } else if c == '/' && next == Some('*') {
            let mut depth = 0;
            while at < text.len() {
                match (text[at], text.get(at + 1)) {
                    ('/', Some('*')) => (depth, at) = (depth + 1, at + 1),
                    ('*', Some('/')) => (depth, at) = (depth - 1, at + 1),
                    ('\n', _) => line += 1,
                    _ => {}
                }
                at += 1;
                if depth == 0 {
                    break;
                }
            }
        } else if let Some((hashes, quote)) = raw_text(&text[at..]) {
            let close: Vec<char> = std::iter::once('"').chain(vec!['#'; hashes]).collect();
            let (start, started) = (at + quote + 1, line);
            at = start;
            while at < text.len() && !text[at..].starts_with(&close) {
                line += usize::from(text[at] == '\n');
                at += 1;
            }
            all.push((started, Token::Text(text[start..at.min(text.len())].iter().collect())));
            at += close.len();
        } else if c == '"' {
            let (start, started) = (at + 1, line);
            at += 1;
            while at < text.len() && text[at] != '"' {
                at += usize::from(text[at] == '\\');
                line += usize::from(text.get(at) == Some(&'\n'));
                at += 1;
            }
            all.push((started, Token::Text(text[start..at.min(text.len())].iter().collect())));
            at += 1;
        } else if c == '\'' {
            // A character such as '{' or '\'', or else a lifetime.
            if next == Some('\\') {
                at += 3;
                while at < text.len() && text[at] != '\'' {
                    at += 1;
                }
                at += 1;
            } else if text.get(at + 2) == Some(&'\'') {
                at += 3;
            } else {
                at += 1;
            }
        } else if word(c) {
            let start = at;
            while at < text.len() && word(text[at]) {
                at += 1;
            }
            all.push((line, Token::Word(text[start..at].iter().collect())));
        } else {
            line += usize::from(c == '\n');
            if !c.is_whitespace() {
                all.push((line, Token::Sign(c)));
            }
            at += 1;
        }
    }
    all
}

/// For a raw text that begins here: its hashes and where its quote is.
fn raw_text(text: &[char]) -> Option<(usize, usize)> {
    let lead = usize::from(matches!(text.first(), Some('b' | 'c')));
    if text.get(lead) != Some(&'r') {
        return None;
    }
    let hashes = text[lead + 1..].iter().take_while(|c| **c == '#').count();
    (text.get(lead + 1 + hashes) == Some(&'"')).then_some((hashes, lead + 1 + hashes))
}

/// A path of modules from the root of the crate, and the line that names it.
type Named = (usize, Vec<String>);

/// Every path of this crate that a file names: in `use` or in code, from
/// `crate`, `super` or `self`, each branch of a group for itself.
fn paths(file: &str, source: &str) -> Vec<Named> {
    let here = module(file);
    let all = tokens(source);
    // The modules opened with braces around a place: their names, or nothing for other braces.
    let mut open: Vec<Option<String>> = Vec::new();
    let mut found = Vec::new();
    let mut at = 0;
    while at < all.len() {
        match &all[at].1 {
            Token::Sign('{') => {
                let named = match at.checked_sub(2).map(|from| (&all[from].1, &all[from + 1].1)) {
                    Some((Token::Word(is), Token::Word(name))) if is == "mod" => Some(name.clone()),
                    _ => None,
                };
                open.push(named);
            }
            Token::Sign('}') => {
                open.pop();
            }
            Token::Word(first) if ["crate", "super", "self"].contains(&first.as_str()) => {
                let inside = open.iter().flatten().cloned();
                let mut from: Vec<String> = here.iter().cloned().chain(inside).collect();
                let follows = at > 1 && all[at - 1].1 == Token::Sign(':');
                if !follows && separator(&all, at + 1) {
                    match first.as_str() {
                        "crate" => from.clear(),
                        "super" => {
                            from.pop();
                        }
                        _ => {}
                    }
                    at = branch(&all, at + 3, from, &mut found);
                    continue;
                }
            }
            _ => {}
        }
        at += 1;
    }
    found
}

fn separator(all: &[(usize, Token)], at: usize) -> bool {
    let colon = |at: usize| all.get(at).is_some_and(|(_, token)| *token == Token::Sign(':'));
    colon(at) && colon(at + 1)
}

/// Follows one branch from `at`, collects where it ends, and says where to go on.
fn branch(
    all: &[(usize, Token)],
    mut at: usize,
    mut path: Vec<String>,
    found: &mut Vec<Named>,
) -> usize {
    let mut line = all.get(at.saturating_sub(1)).map_or(0, |(line, _)| *line);
    loop {
        match all.get(at).map(|(line, token)| (*line, token)) {
            Some((on, Token::Word(word))) => {
                line = on;
                match word.as_str() {
                    "super" => {
                        path.pop();
                    }
                    "self" => {}
                    other => path.push(other.to_owned()),
                }
                at += 1;
            }
            Some((on, Token::Sign('*'))) => {
                path.push("*".into());
                found.push((on, path));
                return at + 1;
            }
            Some((_, Token::Sign('{'))) => {
                at += 1;
                while at < all.len() && all[at].1 != Token::Sign('}') {
                    if all[at].1 == Token::Sign(',') {
                        at += 1;
                        continue;
                    }
                    let before = at;
                    at = branch(all, at, path.clone(), found).max(before + 1);
                    // `as other` follows a name.
                    while at < all.len() && !matches!(all[at].1, Token::Sign(',' | '}')) {
                        at += 1;
                    }
                }
                return at + 1;
            }
            _ => break,
        }
        if !separator(all, at) {
            break;
        }
        at += 2;
    }
    found.push((line, path));
    at
}

/// The module that a file is: `src/wheel/flange.rs` is `wheel::flange`.
fn module(file: &str) -> Vec<String> {
    let path = file.trim_start_matches("src/").trim_end_matches(".rs");
    let mut parts: Vec<String> = path.split('/').map(str::to_owned).collect();
    if matches!(parts.last().map(String::as_str), Some("mod" | "lib")) {
        parts.pop();
    }
    parts
}

/// What `src/lib.rs` hands on from its modules: `crate::Error` is `error`'s.
fn handed_on(lib: &str) -> BTreeMap<String, String> {
    let all = tokens(lib);
    let mut found = Vec::new();
    for at in 0..all.len() {
        let is = |place: usize, word: &str| {
            all.get(place).is_some_and(|(_, t)| *t == Token::Word(word.into()))
        };
        if is(at, "pub") && is(at + 1, "use") {
            branch(&all, at + 2, Vec::new(), &mut found);
        }
    }
    let pair = |(_, path): Named| Some((path.last()?.clone(), path.first()?.clone()));
    found.into_iter().filter_map(pair).collect()
}

/// Every import that goes up or across, as `file:line: the line: why`.
fn upward(file: &str, source: &str, handed: &BTreeMap<String, String>) -> Vec<String> {
    let here = module(file);
    let Some(own) = here.first() else {
        // src/lib.rs joins everything.
        return Vec::new();
    };
    let told = |line: usize, why: String| {
        let text = source.lines().nth(line.saturating_sub(1)).unwrap_or_default().trim();
        format!("{file}:{line}: `{text}`: {why}")
    };
    let Some(mine) = floor(own) else {
        return vec![told(1, format!("`{own}` has no floor in HOUSE.md"))];
    };
    let mut wrong = Vec::new();
    for (line, path) in paths(file, source) {
        let Some(first) = path.first() else { continue };
        let target = handed.get(first).unwrap_or(first);
        if target == own {
            continue;
        }
        match floor(target) {
            Some(theirs) if theirs < mine => {}
            Some(theirs) => wrong.push(told(
                line,
                format!("`{own}` (floor {mine}) may not use `{target}` (floor {theirs})"),
            )),
            None => wrong.push(told(line, format!("`{target}` has no floor in HOUSE.md"))),
        }
    }
    // A group of several names on one line is one import.
    wrong.dedup();
    wrong
}

// --- Files -----------------------------------------------------------------

/// Files below a folder with one of these endings, by their path from the root, sorted.
fn files(below: &str, endings: &[&str]) -> Vec<(String, String)> {
    fn walk(folder: &Path, endings: &[&str], all: &mut Vec<PathBuf>) {
        let Ok(entries) = fs::read_dir(folder) else { return };
        for entry in entries.flatten() {
            let path = entry.path();
            if path.is_dir() {
                walk(&path, endings, all);
            } else if path.extension().is_some_and(|is| endings.iter().any(|ending| is == *ending))
            {
                all.push(path);
            }
        }
    }
    let mut all = Vec::new();
    walk(&root().join(below), endings, &mut all);
    all.sort();
    let relative = |path: &Path| path.strip_prefix(root()).map(|path| path.display().to_string());
    all.iter()
        .map(|path| {
            let text =
                fs::read_to_string(path).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
            (relative(path).expect("below the root").replace('\\', "/"), text)
        })
        .collect()
}

fn rust() -> Vec<(String, String)> {
    let all = files("src", &["rs"]);
    assert!(all.len() > 30, "only {} files found below src", all.len());
    all
}

#[track_caller]
fn assert_none(what: &str, wrong: &[String]) {
    assert!(wrong.is_empty(), "{what}:\n{}", wrong.join("\n"));
}

#[test]
fn no_file_uses_its_own_floor_or_one_above() {
    let all = rust();
    let lib = &all.iter().find(|(file, _)| file == "src/lib.rs").expect("src/lib.rs").1;
    let handed = handed_on(lib);
    assert_eq!(handed.get("Error").map(String::as_str), Some("error"), "{handed:?}");
    let wrong: Vec<_> =
        all.iter().flat_map(|(file, source)| upward(file, source, &handed)).collect();
    assert_none("imports that go up or across", &wrong);
}

#[test]
fn imports_are_seen_at_all() {
    // A checker that sees nothing finds nothing wrong.
    let seen: usize = rust().iter().map(|(file, source)| paths(file, source).len()).sum();
    assert!(seen > 200, "only {seen} paths seen in all of src");
}

#[test]
fn a_made_up_upward_import_is_caught_with_its_line() {
    let handed = handed_on("pub mod error;\npub use error::{Error, ErrorKind};\n");
    let caught = |file: &str, source: &str| upward(file, source, &handed);
    for (file, source, line) in [
        ("src/units/read.rs", "use crate::wheel::rim_speed;", 1),
        ("src/units/read.rs", "\n\nuse crate::{error::Error, tables::laws};", 3),
        (
            "src/units/mod.rs",
            "use crate::{\n    error::Error,\n    mounting::{Terms, self},\n};",
            3,
        ),
        ("src/wheel/speed.rs", "fn f() {\n    let a = crate::joint::key::width();\n}", 2),
        ("src/joint/key.rs", "use super::super::wheel::speed;", 1),
        ("src/mounting/rules/mod.rs", "macro_rules! m { () => { $crate::sheet::read() } }", 1),
        ("src/mounting/rules/fit.rs", "use super::super::super::draw::svg;", 1),
        ("src/wheel/flange.rs", "mod tests {\n    use super::super::super::gauge::taper;\n}", 2),
        ("src/source.rs", "use crate::Error;", 1),
        ("src/error.rs", "use crate::working::Step;", 1),
        ("src/tables/flanges.rs", "use super::super::*;", 1),
        ("src/wheel/speed.rs", "use crate::helpers::x;", 1),
        ("src/helpers/mod.rs", "pub fn x() {}", 1),
    ] {
        let wrong = caught(file, source);
        assert_eq!(wrong.len(), 1, "{file}: {source:?}: {wrong:?}");
        let text = source.lines().nth(line - 1).expect("a line").trim();
        assert!(wrong[0].starts_with(&format!("{file}:{line}: `{text}`")), "{}", wrong[0]);
    }
    for (file, source) in [
        (
            "src/units/read.rs",
            "use crate::error::{Error, ErrorKind, cut};\nuse super::exact::Exact;",
        ),
        ("src/working.rs", "use crate::source::Source;"),
        ("src/mounting/rules/fit.rs", "use crate::mounting::facts::{Fact, of};\nuse super::rule;"),
        ("src/mounting/rules/fit.rs", "use super::super::terms::Law;\nuse crate::{Error, wheel};"),
        ("src/wheel/flange.rs", "mod tests {\n    use super::*;\n    use super::super::speed;\n}"),
        ("src/source.rs", "#[cfg(test)]\nmod tests {\n    use super::*;\n}"),
        (
            "src/units/read.rs",
            "/// See [`Finding`](crate::mounting::Finding).\n// use crate::wheel::x;",
        ),
        (
            "src/units/read.rs",
            "const A: &str = \"use crate::wheel::x;\"; pub(crate) fn f<'a>(c: char) { c == '\"'; }",
        ),
        ("src/lib.rs", "pub use crate::mounting::check;"),
    ] {
        assert_eq!(caught(file, source), Vec::<String>::new(), "{file}: {source:?}");
    }
}

/// Places in Rust source that name a foreign library, in code or as a text
/// that is its name or a path into it.
fn naming(file: &str, source: &str, name: &str) -> Vec<String> {
    let names = |token: &Token| match token {
        Token::Word(word) => word == name,
        Token::Text(text) => text == name || text.starts_with(&format!("{name}.")),
        Token::Sign(_) => false,
    };
    let told = |line: usize| {
        let text = source.lines().nth(line - 1).unwrap_or_default().trim();
        format!("{file}:{line}: `{text}`")
    };
    tokens(source).iter().filter(|(_, token)| names(token)).map(|(line, _)| told(*line)).collect()
}

#[test]
fn uom_is_named_in_the_units_alone() {
    let (inside, outside): (Vec<_>, Vec<_>) =
        rust().into_iter().partition(|(file, _)| file.starts_with("src/units/"));
    let wrong: Vec<_> = outside.iter().flat_map(|(file, text)| naming(file, text, "uom")).collect();
    assert_none("uom outside of src/units", &wrong);
    let right = inside.iter().flat_map(|(file, text)| naming(file, text, "uom")).count();
    assert!(right > 0, "uom is named nowhere: this test looks for the wrong thing");
    let made_up = "use crate::units::Length;\nuse uom::si::length::meter;\n";
    let caught = naming("src/wheel/speed.rs", made_up, "uom");
    assert_eq!(caught, ["src/wheel/speed.rs:2: `use uom::si::length::meter;`"]);
    assert_eq!(naming("src/wheel/speed.rs", "// uom rounds the pound\n", "uom"), [""; 0]);
}

/// Lines of Python code that name pint: comments and documentation left out.
fn pint_in_python(file: &str, source: &str) -> Vec<String> {
    let mut wrong = Vec::new();
    let mut inside: Option<&str> = None;
    for (number, line) in source.lines().enumerate() {
        let (mut code, mut rest) = (String::new(), line);
        while !rest.is_empty() {
            if let Some(quotes) = inside {
                match rest.split_once(quotes) {
                    Some((_, after)) => (inside, rest) = (None, after),
                    None => rest = "",
                }
            } else if rest.starts_with("\"\"\"") || rest.starts_with("'''") {
                (inside, rest) =
                    (Some(if rest.starts_with('"') { "\"\"\"" } else { "'''" }), &rest[3..]);
            } else if rest.starts_with('#') {
                rest = "";
            } else if rest.starts_with(['"', '\'']) {
                let quote = &rest[..1];
                let text = rest[1..].split(quote).next().unwrap_or_default();
                // A name to import or an annotation counts, a sentence does not.
                if text == "pint" || text.starts_with("pint.") {
                    code.push_str(" pint ");
                }
                rest = rest.get(text.len() + 2..).unwrap_or_default();
            } else {
                let c = rest.chars().next().expect("not empty");
                code.push(c);
                rest = &rest[c.len_utf8()..];
            }
        }
        let words = code.split(|c: char| !c.is_alphanumeric() && c != '_');
        if words.into_iter().any(|word| word == "pint") {
            wrong.push(format!("{file}:{}: `{}`", number + 1, line.trim()));
        }
    }
    wrong
}

#[test]
fn pint_is_named_in_one_rust_and_one_python_file() {
    let mut wrong = Vec::new();
    for (file, text) in rust() {
        if file != "src/python/quantity.rs" {
            wrong.extend(naming(&file, &text, "pint"));
        }
    }
    for (file, text) in files("python/hubwright", &["py", "pyi"]) {
        if file != "python/hubwright/_typing.py" {
            wrong.extend(pint_in_python(&file, &text));
        }
    }
    assert_none("pint outside of src/python/quantity.rs and python/hubwright/_typing.py", &wrong);
    let made_up = "\"\"\"Text or pint.\n\n>>> import pint\n\"\"\"\n# pint\nx = \"a pint quantity\"\nimport pint\ny: \"pint.Quantity\"\n";
    let caught = pint_in_python("a.py", made_up);
    assert_eq!(caught, ["a.py:7: `import pint`", "a.py:8: `y: \"pint.Quantity\"`"]);
    let made_up = "// pint\nlet a = py.import(\"pint\")?;\nlet b = \"text or a pint quantity\";\n";
    assert_eq!(naming("a.rs", made_up, "pint"), ["a.rs:2: `let a = py.import(\"pint\")?;`"]);
}

// --- The rest of the house -------------------------------------------------

/// Words in backticks at the beginning of each row of the table between the markers.
fn slugs_in(text: &str) -> Option<Vec<String>> {
    let (_, rest) = text.split_once("<!-- rules -->")?;
    let (table, _) = rest.split_once("<!-- /rules -->")?;
    // A slug leads its row; backticks further on quote something else.
    let slug = |line: &str| {
        let cell = line.trim().trim_start_matches(['|', '-', '*', ' ']);
        Some(cell.strip_prefix('`')?.split_once('`')?.0.to_owned())
    };
    Some(table.lines().filter_map(slug).collect())
}

#[test]
fn the_developers_guide_lists_the_rules_that_there_are() {
    let made_up = "a\n<!-- rules -->\n| slug | asks |\n|---|---|\n| `over-speed` E | `b` |\n- `bushing`\n<!-- /rules -->\n`c`";
    assert_eq!(slugs_in(made_up), Some(vec!["over-speed".to_owned(), "bushing".into()]));
    let Ok(text) = fs::read_to_string(root().join("DEVELOPERS.md")) else {
        // Not written yet, or not part of the published crate.
        return;
    };
    let mut listed = slugs_in(&text).expect("DEVELOPERS.md: <!-- rules --> … <!-- /rules -->");
    let mut rules: Vec<_> = RULES.iter().map(|rule| rule.slug.to_owned()).collect();
    listed.sort();
    rules.sort();
    let missing: Vec<_> = rules.iter().filter(|slug| !listed.contains(slug)).collect();
    let strange: Vec<_> = listed.iter().filter(|slug| !rules.contains(slug)).collect();
    assert!(
        listed == rules,
        "DEVELOPERS.md leaves out {missing:?}, lists what is no rule {strange:?}, or lists one twice"
    );
}

const TOP_LEVEL: &[&str] = &[
    "Cargo.toml",
    "Cargo.lock",
    "pyproject.toml",
    "README.md",
    "DEVELOPERS.md",
    "LICENSE",
    "src",
    "python",
    "tests",
    "benches",
];

/// Entries that are neither allowed, nor hidden, nor what git ignores by name at the top.
fn strangers(entries: &[String], ignored: &str) -> Vec<String> {
    let ignored: Vec<_> =
        ignored.lines().filter_map(|line| line.trim().strip_prefix('/')).collect();
    let known =
        |name: &str| TOP_LEVEL.contains(&name) || name.starts_with('.') || ignored.contains(&name);
    entries.iter().filter(|name| !known(name)).cloned().collect()
}

#[test]
fn the_top_level_holds_what_the_house_allows_and_nothing_else() {
    let entries: Vec<String> = fs::read_dir(root())
        .expect("the root")
        .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
        .collect();
    // What git ignores is somebody's build, not part of the house.
    let ignored = fs::read_to_string(root().join(".gitignore")).unwrap_or_default();
    assert_none("at the top level, against HOUSE.md", &strangers(&entries, &ignored));
    let made_up = ["src", ".ci", "target", "proptest-regressions"].map(str::to_owned);
    assert_eq!(strangers(&made_up, "/target\n*.so\n"), ["proptest-regressions"]);
}

/// About 500 lines and no more: a longer file holds two subjects.
const MOST_LINES: usize = 520;

fn too_long(files: &[(String, String)]) -> Vec<String> {
    let told = |(file, text): &(String, String)| {
        let lines = text.lines().count();
        (lines > MOST_LINES)
            .then(|| format!("{file}: {lines} lines, {MOST_LINES} at most: split it"))
    };
    files.iter().filter_map(told).collect()
}

#[test]
fn no_source_file_holds_two_subjects() {
    let made_up = [("a.rs".to_owned(), "\n".repeat(520)), ("b.rs".to_owned(), "\n".repeat(521))];
    assert_eq!(too_long(&made_up), ["b.rs: 521 lines, 520 at most: split it"]);
    assert_none("too long", &too_long(&rust()));
}
