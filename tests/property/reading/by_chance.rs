//! Lines put together by chance from those of the tables, some that were thought of for one small change alone, and some
//! that nobody writes or that are not read as well as they might be, with all that is said of each.
//!
//! It belongs to the last layer, with the spoilt lines: nobody says that such a line is read rightly; that one
//! of them is read otherwise than before, or for another reason, is seen here. Each is kept because some small
//! change of the program would read it otherwise and none of the other tests would notice.
//! `KETTLE_BARREL_RENEW=by_chance cargo test --features tasks --test property by_chance` writes the file anew:
//! read the difference.

use kettle_barrel::order::reading;

use super::table::fields;

const KEPT: &str = include_str!("by_chance.tsv");
/// So many tests share the rows, that none takes long.
const SHARES: usize = 8;

/// A row: the line, its fields, and all that is said of it.
fn row(line: &str) -> String {
    let reading = reading::read(line);
    let said = reading.to_string();
    let said: Vec<&str> = said.lines().filter(|line| !line.is_empty()).collect();
    format!("{line}\t{}\t{}", fields(&reading.draft).join("; "), said.join(" / "))
}

fn lines() -> impl Iterator<Item = (&'static str, &'static str)> {
    KEPT.lines().skip(1).map(|row| (row, row.split('\t').next().unwrap_or_default()))
}

/// One of the tests that share the rows.
fn are_read_as_they_were(share: usize) {
    if renews() {
        return;
    }
    let mut count = 0;
    for (kept, line) in lines().skip(share).step_by(SHARES) {
        assert_eq!(
            row(line),
            kept,
            "if it is meant: KETTLE_BARREL_RENEW=by_chance cargo test --features tasks --test property by_chance"
        );
        count += 1;
    }
    assert!(count >= 20, "{count} rows");
}

macro_rules! shares {
    ($($test:ident $share:literal),+) => {
        $(#[test]
        fn $test() {
            are_read_as_they_were($share);
        })+
    };
}

shares! { first 0, second 1, third 2, fourth 3, fifth 4, sixth 5, seventh 6, eighth 7 }

fn renews() -> bool {
    std::env::var("KETTLE_BARREL_RENEW").is_ok_and(|what| what == "by_chance")
}

#[test]
fn the_rows_are_renewed() {
    let now: String = lines().map(|(_, line)| format!("{}\n", row(line))).collect();
    if renews() {
        let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/property/reading/by_chance.tsv");
        std::fs::write(path, format!("line\tfields\tsaid\n{now}")).unwrap();
        return;
    }
    // The rows that are written are those that were read.
    assert_eq!(now.lines().count(), lines().count());
}
