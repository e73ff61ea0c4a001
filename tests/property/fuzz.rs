//! Whatever is typed, pasted, linked or imported is borne: nothing panics, and no number that is shown is
//! beyond all numbers. (`linear` holds how the time grows with the length.)
//!
//! The texts are those of the trade, cut, doubled, swapped and mixed with what nobody would write.
//! The ordinary run draws a few hundred for each entry; ten million, with overflow checks, are drawn by
//!
//! ```text
//! cargo xtask fuzz
//! ```

use std::sync::LazyLock;

use kettle_barrel::calculator::{Address, Draft, REGISTER, Report, Value, evaluate};
use kettle_barrel::course::{Setup, Sheet, handed_in};
use kettle_barrel::lot::{Comma, Reading, as_read};
use kettle_barrel::order::list::{Layout, row, safe};
use kettle_barrel::order::saved::{File, Import};
use kettle_barrel::order::{self, reading};
use kettle_barrel::quantity::{Shown, Units, number, unit};
use kettle_barrel::thread::Designation;
use proptest::prelude::*;
use proptest::sample::{Index, select};

/// Cases of one entry, unless the environment asks for more.
const ORDINARY: u32 = 200;
/// Names the cases of each entry.
const CASES: &str = "KETTLE_BARREL_FUZZ";

fn config() -> ProptestConfig {
    let cases = std::env::var(CASES).ok().and_then(|text| text.parse().ok()).unwrap_or(ORDINARY);
    ProptestConfig { cases, ..ProptestConfig::default() }
}

/// Lines as people write them, each beside what is read in it.
static LINES: LazyLock<Vec<&'static str>> = LazyLock::new(|| {
    [
        include_str!("reading/given.tsv"),
        include_str!("reading/understood.tsv"),
        include_str!("reading/not_understood.tsv"),
    ]
    .into_iter()
    .flat_map(str::lines)
    .map(|row| row.split('\t').next().unwrap_or_default())
    .collect()
});

/// The words of those lines.
static WORDS: LazyLock<Vec<&'static str>> =
    LazyLock::new(|| LINES.iter().flat_map(|line| line.split_whitespace()).collect());

/// What stands between words, and what nobody would write.
const ODDITIES: [&str; 48] = [
    " ",
    ",",
    ";",
    "\t",
    "\n",
    "\r\n",
    "-",
    "+",
    "/",
    "x",
    "X",
    "×",
    ".",
    "'",
    "\"",
    "″",
    "%",
    "&",
    "=",
    "#",
    "?",
    "|",
    "(",
    ")",
    "1e308",
    "1e-308",
    "-0",
    "0",
    "9007199254740993",
    "99999999999999999999",
    "1e999",
    "-1",
    "½",
    "µ",
    "μ",
    "٣",
    "\u{0}",
    "\u{301}",
    "\u{200b}",
    "\u{feff}",
    "\u{202e}",
    "𝟙",
    "ß",
    "İ",
    "NaN",
    "inf",
    "null",
    "{}",
];

/// One change of a text, at places that are drawn as well.
#[derive(Debug, Clone)]
enum Change {
    Cut(Index, Index),
    Twice(Index, Index),
    Swap(Index, Index),
    Put(Index, String),
}

fn change() -> impl Strategy<Value = Change> {
    let place = any::<Index>;
    prop_oneof![
        (place(), place()).prop_map(|(from, to)| Change::Cut(from, to)),
        (place(), place()).prop_map(|(from, to)| Change::Twice(from, to)),
        (place(), place()).prop_map(|(one, other)| Change::Swap(one, other)),
        (place(), piece()).prop_map(|(at, piece)| Change::Put(at, piece)),
    ]
}

/// A piece of a text: a word of the trade, an oddity, a number, or anything.
fn piece() -> impl Strategy<Value = String> {
    prop_oneof![
        4 => select(WORDS.as_slice()).prop_map(str::to_owned),
        3 => select(&ODDITIES[..]).prop_map(str::to_owned),
        2 => any::<f64>().prop_map(|number| number.to_string()),
        2 => (0_u32..20_000).prop_map(|number| number.to_string()),
        1 => "\\PC{0,6}",
    ]
}

impl Change {
    fn of(&self, text: &str) -> String {
        let letters: Vec<char> = text.chars().collect();
        let between = |one: &Index, other: &Index| {
            let (one, other) = (one.index(letters.len() + 1), other.index(letters.len() + 1));
            // Short stretches: a text cut in the middle is nearer to what reading expects than a stump.
            let start = one.min(other);
            (start, one.max(other).min(start + 12))
        };
        let text = |parts: &[&[char]]| parts.iter().flat_map(|part| part.iter()).collect::<String>();
        match self {
            Self::Cut(from, to) => {
                let (start, end) = between(from, to);
                text(&[&letters[..start], &letters[end..]])
            }
            Self::Twice(from, to) => {
                let (start, end) = between(from, to);
                text(&[&letters[..end], &letters[start..]])
            }
            Self::Swap(one, other) => {
                let mut letters = letters.clone();
                if !letters.is_empty() {
                    let (one, other) = (one.index(letters.len()), other.index(letters.len()));
                    letters.swap(one, other);
                }
                text(&[&letters])
            }
            Self::Put(at, piece) => {
                let at = at.index(letters.len() + 1);
                let piece: Vec<char> = piece.chars().collect();
                text(&[&letters[..at], &piece, &letters[at..]])
            }
        }
    }
}

/// A text made of one that is right, by a few changes, or of pieces thrown together.
fn spoilt(right: impl Strategy<Value = String>) -> impl Strategy<Value = String> {
    prop_oneof![
        3 => (right, prop::collection::vec(change(), 0..5))
            .prop_map(|(text, changes)| changes.iter().fold(text, |text, change| change.of(&text))),
        1 => prop::collection::vec((piece(), select(&["", " ", ";", "\n"][..])), 0..12)
            .prop_map(|pieces| pieces.into_iter().flat_map(|(piece, after)| [piece, after.to_owned()]).collect()),
    ]
}

fn line() -> impl Strategy<Value = String> {
    spoilt(select(LINES.as_slice()).prop_map(str::to_owned))
}

/// The links of every worked example.
static LINKS: LazyLock<Vec<String>> = LazyLock::new(|| {
    let examples = |entry: &'static kettle_barrel::calculator::Entry| {
        let link = |pairs: &[(&'static str, &'static str)]| {
            Address::new(entry.about.id, pairs.iter().copied().collect()).to_string()
        };
        entry.about.examples.iter().map(move |example| link(example.pairs))
    };
    let lines =
        LINES.iter().map(|line| Address::new("order", [("line", *line)].into_iter().collect()).to_string());
    REGISTER.iter().flat_map(examples).chain(lines).collect()
});

/// Sheets of readings as they are pasted.
const SHEETS: [&str; 6] = [
    "52; 48 51; 55",
    "article\treading µm\n1\t54.1\n2\t53,8\n3\t61\nmean\t56.3",
    "No,Date,Coat (mil)\n1,2026-11-25,2.1\n2,2026-11-25,2.4\n3,2026-11-26,1.9",
    "1. 54\n2. 55\n3. 51\nmax 55\nmin 51\ns.d. 2.1",
    "#1: 54,1 µm\n#2: 60,2 µm\n",
    "\"54\";\"55,5\";\"n/a\"\n54;;61",
];

/// What is kept: a file of this version, lists of the first one, and lines that students hand in.
static FILES: LazyLock<Vec<String>> = LazyLock::new(|| {
    let link = "1/order?part=hex-bolt&thread=M16&length=60+mm&quantity=400&steel=8.8&place=C3&years=15+years";
    let mut draft = Draft::default();
    draft.set("number", "7");
    draft.set("count", "2");
    let handed_in = Setup::read(&draft)
        .map(|setup| handed_in::line(&Sheet::of(&setup), "A. Student", ["12 µm", "7"].into_iter()));
    [
        crate::saved::kept(&[link, "1/coat?coat=50+µm"]),
        format!("# a remark\n{link}\n1/coat?coat=50"),
        handed_in.unwrap_or_default(),
    ]
    .into()
});

fn sheet() -> impl Strategy<Value = String> {
    spoilt(select(&SHEETS[..]).prop_map(str::to_owned))
}

fn is_number(shown: &Shown) -> bool {
    shown.number.is_finite()
}

fn value_is_number(value: &Value) -> bool {
    match value {
        Value::One(shown) => is_number(shown),
        Value::Range(least, greatest) => is_number(least) && is_number(greatest),
        Value::Words(_) => true,
    }
}

/// Every number that a report shows.
fn all_numbers(report: &Report) -> bool {
    let figures = report.figures.iter().chain(report.sections.iter().flat_map(|section| &section.figures));
    let steps = report.working.steps();
    figures.map(|figure| &figure.value).all(value_is_number)
        && steps
            .iter()
            .all(|step| is_number(&step.result) && step.terms.iter().all(|term| is_number(&term.value)))
}

fn bears_draft(id: &str, draft: &Draft) -> Result<(), TestCaseError> {
    if id == "order" {
        if let Ok(assessment) = order::assess(draft) {
            let figures = assessment.processes.iter().flat_map(|process| &process.figures);
            for figure in assessment.figures.iter().chain(figures) {
                prop_assert!(value_is_number(&figure.value), "{draft:?}: {figure:?}");
            }
        }
    } else if let Ok(report) = evaluate(id, draft.pairs()) {
        prop_assert!(all_numbers(&report), "{draft:?}: {report:?}");
    }
    Ok(())
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn a_number(text in spoilt(select(WORDS.as_slice()).prop_map(str::to_owned))) {
        if let Ok(read) = number::read(&text, &[&unit::UM, &unit::MIL, &unit::G_M2]) {
            prop_assert!(read.number.is_finite(), "{text:?}");
        }
        // Too large a number is infinite there by its own words; `read` refuses it.
        prop_assert!(number::plain_number(&text).is_none_or(|number| !number.is_nan()), "{text:?}");
        let (before, after) = number::split_unit(&text);
        prop_assert!(text.contains(before) && text.contains(after), "{text:?}");
    }

    #[test]
    fn a_designation(text in spoilt(select(WORDS.as_slice()).prop_map(str::to_owned))) {
        if let Ok(thread) = Designation::read(&text) {
            let told = thread.to_string();
            prop_assert_eq!(Designation::read(&told).map(|thread| thread.to_string()).ok(), Some(told), "{:?}", text);
        }
    }

    #[test]
    fn a_written_line(line in line()) {
        bears_draft("order", &reading::read(&line).draft)?;
    }

    #[test]
    fn a_link(link in spoilt(select(LINKS.as_slice()))) {
        let (address, _) = Address::read(&link);
        if address.view == "order" || REGISTER.iter().any(|entry| entry.about.id == address.view) {
            bears_draft(&address.view, &address.draft)?;
        }
    }

    #[test]
    fn a_list(heading in spoilt(Just(kettle_barrel::order::list::TEMPLATE.lines().next().unwrap_or_default().to_owned())),
              lines in prop::collection::vec(line(), 0..3)) {
        let layout = Layout::of(&heading, None);
        for line in &lines {
            let cells: Vec<&str> = line.split(char::from(layout.separator())).collect();
            for cell in row(&layout.said(&cells).line).record(Units::default()) {
                prop_assert!(!safe(&cell).starts_with(['=', '+', '-', '@']), "{line:?}: {cell:?}");
            }
        }
    }

    #[test]
    fn a_file_of_what_is_kept(text in spoilt(select(FILES.as_slice()))) {
        if let Ok(file) = File::read(&text) {
            prop_assert!(!Import::of(file).to_string().is_empty());
        }
        let read = handed_in::read(&text);
        prop_assert!(read.iter().all(|line| line.score.is_none_or(|(score, of)| score <= of)), "{text:?}");
    }

    #[test]
    fn readings(text in sheet()) {
        let how = Reading { units: &[&unit::UM, &unit::MIL], comma: Comma::Decide, columns: None, per_article: None };
        let _ = as_read(&text, &how);
        bears_draft("lot", &[("readings", text.as_str()), ("quantity", "300")].into_iter().collect())?;
    }

    #[test]
    fn any_text_in_any_field(entry in any::<Index>(), field in any::<Index>(), example in any::<Index>(), text in spoilt(select(WORDS.as_slice()).prop_map(str::to_owned))) {
        let entry = entry.get(REGISTER);
        let mut draft: Draft = example.get(entry.about.examples).pairs.iter().copied().collect();
        draft.set(field.get(entry.about.fields).key, &text);
        bears_draft(entry.about.id, &draft)?;
    }
}
