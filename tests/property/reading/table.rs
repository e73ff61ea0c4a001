//! The tables of lines: what is read in each, and that it is read as it was.

use super::assert_covers;
use kettle_barrel::calculator::Draft;
use kettle_barrel::order::reading::{self, Became, Reading};

pub const GIVEN: &str = include_str!("given.tsv");
pub const UNDERSTOOD: &str = include_str!("understood.tsv");
pub const NOT_UNDERSTOOD: &str = include_str!("not_understood.tsv");
const SPOILT: &str = include_str!("spoilt.tsv");

/// A line with what is to be read in it.
pub struct Line {
    pub text: &'static str,
    pub expected: [String; 3],
}

pub fn lines(table: &'static str) -> impl Iterator<Item = Line> {
    table.lines().skip(1).map(|row| {
        let cells: Vec<&str> = row.split('\t').collect();
        let [text, fields, not_used, asked] = cells[..] else { panic!("{row}: four cells") };
        Line { text, expected: [fields, not_used, asked].map(str::to_owned) }
    })
}

/// Fields, words not used, words that ask: as the tables write them.
pub fn written(reading: &Reading) -> [String; 3] {
    let not_used: Vec<&str> = reading.not_used().map(|(text, _)| text).collect();
    let asked = reading.pieces.iter().filter_map(|piece| match &piece.became {
        Became::Asked(offers) => {
            let offers: Vec<&str> = offers.iter().map(|category| category.key()).collect();
            Some(format!("{}={}", piece.text, offers.join("/")))
        }
        _ => None,
    });
    [fields(&reading.draft).join("; "), not_used.join("; "), asked.collect::<Vec<_>>().join("; ")]
}

pub fn fields(draft: &Draft) -> Vec<String> {
    let mut fields: Vec<String> = draft.pairs().map(|(name, text)| format!("{name}={text}")).collect();
    fields.sort();
    fields
}

/// What a row of the tables is for. Each kind has its own tests, so that one that fails says of what, and none
/// takes long.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum For {
    MetricBolts,
    InchBolts,
    OtherBolts,
    Bars,
    NutsAndWashers,
    AnythingElse,
}

impl For {
    fn of(line: &Line) -> Self {
        let [fields, ..] = &line.expected;
        let field = |name: &str| fields.split("; ").find_map(|field| field.strip_prefix(name));
        match field("part=") {
            Some("hex-bolt") if field("thread=").is_some_and(|thread| thread.starts_with('M')) => {
                Self::MetricBolts
            }
            Some("hex-bolt") => Self::InchBolts,
            Some("rod" | "stud" | "anchor-rod" | "u-bolt") => Self::Bars,
            Some(part) if part.ends_with("nut") || part.ends_with("washer") => Self::NutsAndWashers,
            Some(part) if part.ends_with("bolt") || part.ends_with("screw") => Self::OtherBolts,
            _ => Self::AnythingElse,
        }
    }

    fn rows(self, table: &'static str) -> impl Iterator<Item = Line> {
        lines(table).filter(move |line| Self::of(line) == self)
    }

    /// At least so many rows are as the trade writes them, and cover their lines.
    fn are_as_written(self, least: usize) {
        let mut count = 0;
        for line in self.rows(UNDERSTOOD).chain(self.rows(NOT_UNDERSTOOD)) {
            let reading = reading::read(line.text);
            assert_eq!(written(&reading), line.expected, "{}\n{reading}", line.text);
            assert_covers(line.text, &reading);
            count += 1;
        }
        assert!(count >= least, "{count} rows");
    }

    /// The last layer: lines of the tables with a word left out, or two exchanged. Nobody says that they are
    /// read rightly; that one of them is read otherwise than before is seen here.
    fn are_spoilt_as_before(self, least: usize) {
        let mut count = 0;
        for line in self.rows(SPOILT) {
            let reading = reading::read(line.text);
            assert_eq!(
                written(&reading),
                line.expected,
                "{}\n{reading}\nif it is meant: KETTLE_BARREL_RENEW=spoilt cargo test --test property spoilt",
                line.text
            );
            count += 1;
        }
        assert!(count >= least, "{count} rows");
    }
}

/// One test for each kind of row.
macro_rules! for_each_kind {
    ($does:ident: $($test:ident $kind:ident $least:literal),+ $(,)?) => {
        $(#[test]
        fn $test() {
            if !renews() {
                super::For::$kind.$does($least);
            }
        })+
    };
}

/// Whether the tables are written anew, by a test of their own.
fn renews() -> bool {
    matches!(std::env::var("KETTLE_BARREL_RENEW").as_deref(), Ok("reading" | "spoilt"))
}

mod lines_as_the_trade_writes_them {
    use super::renews;

    for_each_kind! { are_as_written:
        for_metric_bolts MetricBolts 300, for_inch_bolts InchBolts 100, for_other_bolts OtherBolts 150,
        for_bars Bars 100, for_nuts_and_washers NutsAndWashers 200, for_anything_else AnythingElse 50,
    }
}

mod spoilt_lines_are_read_as_they_were {
    use super::renews;

    for_each_kind! { are_spoilt_as_before:
        for_metric_bolts MetricBolts 300, for_inch_bolts InchBolts 150, for_other_bolts OtherBolts 150,
        for_bars Bars 100, for_nuts_and_washers NutsAndWashers 200, for_anything_else AnythingElse 100,
    }
}

/// With `KETTLE_BARREL_RENEW=reading` the tables are written anew: read their difference.
/// `KETTLE_BARREL_RENEW=spoilt` makes the spoilt lines anew from them.
#[test]
fn lines_as_written_and_spoilt_are_renewed() {
    let row = |text: &str| {
        let [fields, not_used, asked] = written(&reading::read(text));
        format!("{text}\t{fields}\t{not_used}\t{asked}\n")
    };
    let write = |name: &str, rows: String| {
        let head = UNDERSTOOD.lines().next().unwrap();
        let path = format!("{}/tests/property/reading/{name}.tsv", env!("CARGO_MANIFEST_DIR"));
        std::fs::write(path, format!("{head}\n{rows}")).unwrap();
    };
    match std::env::var("KETTLE_BARREL_RENEW").as_deref() {
        Ok("reading") => {
            write("understood", lines(UNDERSTOOD).map(|line| row(line.text)).collect());
            write("not_understood", lines(NOT_UNDERSTOOD).map(|line| row(line.text)).collect());
        }
        Ok("spoilt") => {
            let all = lines(GIVEN).chain(lines(UNDERSTOOD)).chain(lines(NOT_UNDERSTOOD));
            write("spoilt", all.filter_map(|line| spoilt(line.text)).map(|text| row(&text)).collect());
        }
        _ => {
            // What is renewed is what is read, but for the rows' own order.
            let line = lines(UNDERSTOOD).next().unwrap();
            assert_eq!(row(line.text), format!("{}\t{}\n", line.text, line.expected.join("\t")));
        }
    }
}

/// A line without one of its words, or with two of them exchanged; which ones follows from its letters, so that
/// a line more in a table leaves the others as they are.
fn spoilt(text: &str) -> Option<String> {
    let place: usize = text.bytes().map(usize::from).sum();
    let mut words: Vec<&str> = text.split_whitespace().collect();
    let last = words.len().checked_sub(1).filter(|last| *last > 1)?;
    if place.is_multiple_of(2) {
        words.remove((place / 2) % words.len());
    } else {
        let at = (place / 2) % last;
        words.swap(at, at + 1);
    }
    Some(words.join(" "))
}
