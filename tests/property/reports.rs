//! What every calculator answers, word for word and digit for digit, and what is said of whole orders: a
//! change of an answer shows as a changed line of `reports.txt`.
//!
//! It is the last layer under the published values and the properties: it says that something changed, never
//! that it was right. The inputs stand in the file as addresses. Without the file they are chosen again: the
//! worked examples, and of many drawn inputs those whose answers say most that no other says.

use std::collections::BTreeSet;
use std::fmt::Write;

use kettle_barrel::calculator::{Address, Draft, Entry, Finding, Picture, REGISTER, find};
use kettle_barrel::order;

use crate::fields::{Dice, drawn};

/// Drawn inputs to choose from, and how many are kept of each calculator beside its examples.
const DRAWN: u64 = 400;
const KEPT: usize = 5;
/// Orders that are kept.
const ORDERS: usize = 36;
const LINES: &str = include_str!("reading/understood.tsv");
const BEGINS: &str = "= ";

#[test]
fn every_report_says_what_it_said() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/property/reports.txt");
    let kept = std::fs::read_to_string(path).unwrap_or_default();
    let mut addresses: Vec<String> =
        kept.lines().filter_map(|line| line.strip_prefix(BEGINS)).map(str::to_owned).collect();
    if addresses.is_empty() {
        addresses = chosen();
    }
    let now: String =
        addresses.iter().map(|address| format!("{BEGINS}{address}\n{}\n", told(address))).collect();
    let now = once(&now);
    if std::env::var("KETTLE_BARREL_RENEW").is_ok_and(|what| what == "reports") {
        std::fs::write(path, now).unwrap();
        return;
    }
    let mut address = "";
    for (line, (was, is)) in (1..).zip(kept.lines().zip(now.lines())) {
        address = was.strip_prefix(BEGINS).unwrap_or(address);
        assert_eq!(
            is, was,
            "line {line} of tests/property/reports.txt, {address}: if it is meant, renew the file with \
             KETTLE_BARREL_RENEW=reports cargo test --test property reports, and read the difference"
        );
    }
    assert_eq!(now.lines().count(), kept.lines().count());
}

/// Each line in full where it stands first, and behind that as a sign made from its text.
fn once(text: &str) -> String {
    let mut said = BTreeSet::new();
    let lines = text.lines().map(|line| {
        if line.len() < 6 || said.insert(line) {
            return format!("{line}\n");
        }
        // FNV-1a.
        let mixed =
            line.bytes().fold(0x811c_9dc5_u32, |sum, byte| (sum ^ u32::from(byte)).wrapping_mul(0x0100_0193));
        format!("~{:04x}\n", mixed >> 16)
    });
    lines.collect()
}

/// All that is said at an address.
fn told(address: &str) -> String {
    let (mut address, _) = Address::read(address);
    let mut text = String::new();
    let findings: Vec<Finding>;
    let pictures: Vec<Picture>;
    if address.view == "order" {
        address.keep_only(order::ABOUT.fields);
        let assessed = match order::assess(&address.draft) {
            Ok(assessed) => assessed,
            Err(problems) => return format!("{problems}\n"),
        };
        write!(text, "{assessed}").unwrap();
        findings = assessed.processes.iter().flat_map(|process| process.findings.clone()).collect();
        pictures = assessed.pictures;
    } else {
        let report = match find(&address.view).unwrap().evaluate(&address.draft) {
            Ok(report) => report,
            Err(problems) => return format!("{problems}\n"),
        };
        write!(text, "{report}").unwrap();
        findings = report.findings;
        pictures = report.picture.into_iter().collect();
    }
    for link in findings.iter().filter_map(|finding| finding.opens.as_deref()) {
        let line = format!("opens {}\n", Address::new(link.calculator, Draft::from(link)));
        if !text.ends_with(&line) {
            text += &line;
        }
    }
    pictures.iter().for_each(|picture| text += &drawing(picture));
    text
}

/// What a picture shows and its words do not say.
fn drawing(picture: &Picture) -> String {
    let mut text = format!("{}\n", picture.text());
    match picture {
        Picture::Scale { bands, .. } => {
            bands.iter().for_each(|band| writeln!(text, "{}: {:?}", band.label, band.verdict).unwrap());
        }
        Picture::Bars { bars, logarithmic, .. } => {
            let marked = bars.iter().filter(|bar| bar.marked).map(|bar| bar.label.as_ref());
            writeln!(text, "logarithmic {logarithmic}, marked {:?}", marked.collect::<Vec<_>>()).unwrap();
        }
        Picture::ThreadFit { pitch, corners, .. } => {
            writeln!(text, "pitch {pitch:.4}").unwrap();
            for corner in corners {
                writeln!(text, "{} {:.4?} {:.4?}", corner.label, corner.bolt, corner.nut).unwrap();
            }
        }
        Picture::Rulers { rows, .. } => {
            for row in rows {
                let marks = row.marks.iter().map(|(mark, reached)| format!("{} {reached}", mark.at));
                writeln!(text, "{}: {}", row.label, marks.collect::<Vec<_>>().join(", ")).unwrap();
            }
        }
        Picture::Part { outline, .. } => {
            outline.bodies.iter().for_each(|body| writeln!(text, "{body:.3?}").unwrap());
            let places = outline.sizes.iter().map(|size| format!("{} {:.3?}", size.symbol, size.place));
            writeln!(text, "{}", places.collect::<Vec<_>>().join(", ")).unwrap();
        }
        Picture::Dots { .. } => {}
    }
    text
}

/// Inputs of every calculator, and orders.
fn chosen() -> Vec<String> {
    let mut all = Vec::new();
    for entry in REGISTER {
        let address = |draft: Draft| Address::new(entry.about.id, draft).to_string();
        let examples = entry.about.examples.iter().map(|example| example.pairs.iter().copied().collect());
        let examples: Vec<String> = examples.map(address).collect();
        let candidates = (0..DRAWN).map(|seed| address(draft(entry, seed))).collect();
        all.extend(telling(examples, candidates, KEPT));
    }
    let lines = LINES.lines().skip(1).filter_map(|line| line.split('\t').next());
    let lines = lines.map(|line| Address::new("order", order::reading::read(line).draft).to_string());
    all.extend(telling(Vec::new(), lines.collect(), ORDERS));
    all
}

/// A draft with most fields filled in, now and then one of them spoilt.
fn draft(entry: &Entry, seed: u64) -> Draft {
    let mut dice = Dice(seed);
    let mut draft = Draft::default();
    // An example is worked on from, so that most of what is drawn reads.
    let examples = entry.about.examples;
    for (key, text) in examples[dice.below(examples.len())].pairs {
        draft.set(key, *text);
    }
    for (key, text) in drawn(entry.about.fields, &mut dice).pairs() {
        if dice.below(2) == 0 {
            draft.set(key, text);
        }
    }
    draft
}

/// The first ones, then always the one that says most that was not said before.
fn telling(first: Vec<String>, candidates: Vec<String>, most: usize) -> Vec<String> {
    let shape = |line: &str| -> String { line.chars().filter(|c| !c.is_ascii_digit()).collect() };
    let lines = |address: &String| -> BTreeSet<String> { told(address).lines().map(shape).collect() };
    let mut said: BTreeSet<String> = first.iter().flat_map(lines).collect();
    let mut candidates: Vec<_> = candidates.into_iter().map(|one| (lines(&one), one)).collect();
    let mut all = first;
    for _ in 0..most {
        let new = candidates.iter().enumerate().max_by_key(|(_, (lines, _))| lines.difference(&said).count());
        let Some((best, _)) = new else { break };
        let (lines, address) = candidates.swap_remove(best);
        said.extend(lines);
        all.push(address);
    }
    all
}
