//! What every calculator answers, word for word and digit for digit, and what is said of whole orders and of
//! lists: a change of an answer shows as a changed line of a file in `reports`.
//!
//! It is the last layer under the published values and the properties: it says that something changed, never
//! that it was right. The inputs stand in the files as addresses: the worked examples, of many drawn inputs
//! those whose answers say most that no other says, and inputs made by chance that a small change of the
//! program would answer otherwise and no other test would notice. A list, and among the orders
//! a written line, stands there as a string of JSON.
//! `KETTLE_BARREL_RENEW=reports cargo test --features tasks --test property reports` writes the answers anew;
//! an address that is added to a file, on a line of its own behind `= `, is answered then.

use std::collections::BTreeSet;
use std::fmt::Write;
use std::io::Cursor;

use kettle_barrel::calculator::{Address, Draft, Finding, Picture, REGISTER, find};
use kettle_barrel::order;
use kettle_barrel::order::list::{List, Summary};
use kettle_barrel::quantity::Units;

const BEGINS: &str = "= ";
/// The file of lists.
const LIST: &str = "list";

/// That all that is kept of a view is said as it was.
fn says_what_it_said(view: &str) {
    let path = format!("{}/tests/property/reports/{view}.txt", env!("CARGO_MANIFEST_DIR"));
    let kept = std::fs::read_to_string(&path).unwrap();
    let addresses = kept.lines().filter_map(|line| line.strip_prefix(BEGINS));
    let now: String =
        addresses.map(|address| format!("{BEGINS}{address}\n{}\n", said(view, address))).collect();
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
            "line {line} of tests/property/reports/{view}.txt, {address}: if it is meant, renew the files with \
             KETTLE_BARREL_RENEW=reports cargo test --features tasks --test property reports, and read the difference"
        );
    }
    assert_eq!(now.lines().count(), kept.lines().count());
    assert!(kept.lines().filter(|line| line.starts_with(BEGINS)).count() >= 9);
}

/// All that is said of an input: an address, or in quotes a list or a written line.
fn said(view: &str, input: &str) -> String {
    match serde_json::from_str::<String>(input) {
        Ok(list) if view == LIST => told_of_list(list),
        Ok(line) => told(&Address::new("order", order::reading::read(&line).draft).to_string()),
        Err(_) => told(input),
    }
}

/// One test for each view, so that one that fails says of what, and none takes long.
macro_rules! views {
    ($($test:ident $view:literal),+ $(,)?) => {
        const VIEWS: &[&str] = &[$($view),+];
        $(#[test]
        fn $test() {
            says_what_it_said($view);
        })+
    };
}

views! {
    coat "coat", coat_room "coat-room", gauges "gauges", hydrogen "hydrogen", kettle "kettle", life "life",
    lot "lot", oversize_tap "oversize-tap", powder "powder", salt_spray "salt-spray", tempering "tempering",
    thread_strength "thread-strength", order "order",
    list "list",
}

#[test]
fn no_calculator_is_left_out() {
    for entry in REGISTER {
        assert!(VIEWS.contains(&entry.about.id), "{} has no file in tests/property/reports", entry.about.id);
    }
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

/// All that is said of a list, in both systems of units.
fn told_of_list(text: String) -> String {
    let decode = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    let mut list = match List::open(Box::new(Cursor::new(text.into_bytes())), decode) {
        Ok(list) => list,
        Err(unread) => return format!("{unread}\n"),
    };
    let reads = list.reads().clone();
    let mut said = format!("left out: {:?}\n", list.left_out());
    let mut sums = [Units::Metric, Units::Inch].map(Summary::in_units);
    let mut place = 0;
    loop {
        let records = match list.take(3) {
            Ok(records) if records.is_empty() => break,
            Ok(records) => records,
            Err(unread) => {
                writeln!(said, "{unread}").unwrap();
                break;
            }
        };
        for row in records.iter().map(|record| reads.row(record)) {
            place += 1;
            writeln!(said, "{} | {} | {}", row.line, row.not_used, row.left_out).unwrap();
            writeln!(said, "{:?} {:?}", row.told(Units::Metric), row.wrong()).unwrap();
            for units in [Units::Metric, Units::Inch] {
                writeln!(said, "{:?}", row.record(units)).unwrap();
            }
            sums.iter_mut().for_each(|sums| sums.add(place, &row));
        }
    }
    for sums in &sums {
        sums.sentences().iter().for_each(|sentence| writeln!(said, "{sentence}").unwrap());
        for table in sums.tables() {
            writeln!(said, "{table:?}").unwrap();
        }
    }
    said
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
