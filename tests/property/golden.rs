//! The verdicts on 400 orders, kept in `golden.txt`: a change of an answer shows as a changed line.
//! The orders stand in the file: one more is a line `401 order` with its address, and the file renewed.
//! Without the file they are drawn again.
//!
//! An order has four lines: the order itself as its address, then one a process with
//!
//! - its verdict, its coat (least and greatest in µm, class) and its nut;
//! - every reason as `rule:severity:link`: the severity is left out where the rule is met, the link
//!   where the reason opens no calculator; `@source` follows where it is not the rule's usual source;
//! - the links by their numbers, `calculator(value;value)`.
//!
//! Sources, the usual source of each rule, and the fields of the links stand once at the top. A source
//! is known by a code made from its text and not by its place, so that a new source leaves every other
//! line as it was.

mod draw;
mod key;

use std::collections::BTreeMap;
use std::fs;
use std::path::PathBuf;

use kettle_barrel::calculator::{Address, Draft, Link, Mark, behind};
use kettle_barrel::order::{self, Judged, Judgement};
use kettle_barrel::quantity::{number, unit};
use kettle_barrel::source::Source;

use key::{coat, room, severity, verdict};

const ORDERS: usize = 400;
const LARGEST_BYTES: usize = 500_000;
const RENEW: &str = "cargo xtask golden";
/// Set to `golden`, the test writes the file instead of comparing with it.
const RENEW_VARIABLE: &str = "KETTLE_BARREL_RENEW";

#[test]
fn golden() {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/property/golden.txt");
    let kept = fs::read_to_string(&path).unwrap_or_default();
    let orders = orders(&kept);
    draw::assert_all_are_held(&orders);
    let judged = written(&orders);
    assert!(judged.len() < LARGEST_BYTES, "{} bytes", judged.len());
    if std::env::var(RENEW_VARIABLE).is_ok_and(|what| what == "golden") {
        fs::write(&path, &judged).unwrap();
        return;
    }
    let differences = differences(&kept, &judged);
    assert!(
        differences.is_empty(),
        "{} lines differ from tests/property/golden.txt; the first of them:\n\n{}\n\n\
         If every one of them is meant, renew the file with: {RENEW}",
        differences.len(),
        differences.iter().take(20).map(String::as_str).collect::<Vec<_>>().join("\n")
    );
}

/// The orders of the file, so that a new grade or thread does not draw others; without a file they are
/// drawn.
fn orders(kept: &str) -> Vec<Draft> {
    let is_number = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
    let addresses =
        kept.lines().filter_map(|line| line.split_once(" order ")).filter(|(number, _)| is_number(number));
    let orders: Vec<Draft> = addresses
        .map(|(number, text)| {
            let (mut address, mut damage) = Address::read(text);
            damage.extend(address.keep_only(order::ABOUT.fields));
            assert!(damage.is_empty(), "order {number}: {damage:?}");
            address.draft
        })
        .collect();
    if orders.is_empty() { draw::orders(ORDERS) } else { orders }
}

/// Each order against itself; then what stands at the top.
fn differences(kept: &str, judged: &str) -> Vec<String> {
    let (kept, judged) = (by_name(kept), by_name(judged));
    let mut names: Vec<&str> = judged.keys().copied().collect();
    names.extend(kept.keys().filter(|name| !judged.contains_key(*name)));
    let text = |lines: &BTreeMap<&str, &str>, name| lines.get(name).copied().unwrap_or("").to_owned();
    names
        .into_iter()
        .map(|name| (name, text(&kept, name), text(&judged, name)))
        .filter(|(_, kept, judged)| kept != judged)
        .map(|(name, kept, judged)| format!("{name}\n  kept {kept}\n  now  {judged}"))
        .collect()
}

/// Lines by the first two words, which no two lines share.
fn by_name(text: &str) -> BTreeMap<&str, &str> {
    let named = text.lines().map(|line| {
        let end = line.match_indices(' ').nth(1).map_or(line.len(), |(at, _)| at);
        line.split_at(end)
    });
    named.collect()
}

/// The whole file.
fn written(orders: &[Draft]) -> String {
    let mut kept = Kept::default();
    // First what each rule's usual source is, then the lines.
    let all: Vec<_> = orders
        .iter()
        .map(|draft| {
            let line = order::read(draft).unwrap();
            (draft, order::judge(&line))
        })
        .collect();
    for (_, judgement) in &all {
        for judged in &judgement.processes {
            for (place, ruling) in judged.rulings.iter().filter(|(_, ruling)| ruling.counts) {
                let case = judgement.case(judged, *place).unwrap();
                kept.count(ruling.rule.key.key().to_owned(), ruling.source(&case));
            }
        }
    }
    let mut lines = String::new();
    for (number, (draft, judgement)) in (1..).zip(&all) {
        lines.push_str(&format!("{number:03} order {}\n", Address::new("order", (*draft).clone())));
        for judged in &judgement.processes {
            let process = process(judgement, judged, &mut kept);
            lines.push_str(&format!("{number:03} {} {process}\n", judged.process.key()));
        }
    }
    kept.top() + &lines
}

/// What stands once at the top of the file.
#[derive(Default)]
struct Kept {
    sources: BTreeMap<String, String>,
    /// How often each rule cites each source, by the source's code.
    cited: BTreeMap<String, BTreeMap<String, usize>>,
    /// The fields of a link, by its calculator and their number.
    fields: BTreeMap<(&'static str, usize), String>,
}

impl Kept {
    fn count(&mut self, rule: String, source: Source) {
        let text = source.to_string();
        let code = code(&text);
        let known = self.sources.entry(code.clone()).or_insert_with(|| text.clone());
        assert_eq!(*known, text, "two sources have the code {code}: make codes longer");
        *self.cited.entry(rule).or_default().entry(code).or_default() += 1;
    }

    /// The code of the source a rule cites most.
    fn usual(&self, rule: &str) -> &str {
        self.cited[rule].iter().max_by_key(|(_, times)| **times).unwrap().0
    }

    fn top(&self) -> String {
        let sources = self.sources.iter().map(|(code, source)| format!("source {code} {source}\n"));
        let rules = self.cited.keys().map(|rule| format!("rule {rule} {}\n", self.usual(rule)));
        let links = self
            .fields
            .iter()
            .map(|((calculator, count), fields)| format!("link {calculator}({count}) {fields}\n"));
        sources.chain(rules).chain(links).collect()
    }
}

/// One process on one line: the rules that count, and the links of those that are not met.
fn process(judgement: &Judgement, judged: &Judged, kept: &mut Kept) -> String {
    let mut links: Vec<Link> = Vec::new();
    let mut reasons = Vec::new();
    for (place, ruling) in judged.rulings.iter().filter(|(_, ruling)| ruling.counts) {
        let key = ruling.rule.key.key();
        let mut text = if *place > 0 { format!("{place}.{key}") } else { key.to_owned() };
        let case = judgement.case(judged, *place).unwrap();
        let source = code(&ruling.source(&case).to_string());
        if ruling.mark != Mark::Met {
            text.push_str(&format!(":{}", severity(ruling.mark)));
            if let Some(link) = behind(&case, ruling.rule.topic) {
                let at = links.iter().position(|known| *known == link).unwrap_or_else(|| {
                    links.push(link);
                    links.len() - 1
                });
                text.push_str(&format!(":{}", at + 1));
            }
        }
        if kept.usual(key) != source {
            text.push_str(&format!("@{source}"));
        }
        reasons.push(text);
    }
    let links: Vec<String> = links.iter().map(|link| written_link(link, &mut kept.fields)).collect();
    format!(
        "{} {} {} | {} | {}",
        verdict(judged.verdict()),
        judged.offer.as_ref().map_or_else(|| "-".to_owned(), coat),
        room(judged),
        reasons.join(" "),
        links.join(" ")
    )
}

/// Three letters and digits from the text of a source (FNV-1a).
fn code(source: &str) -> String {
    let hash = source.bytes().fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
    });
    let digit = |place: u32| char::from_digit((hash / 36_u64.pow(place) % 36) as u32, 36).unwrap();
    [digit(5), digit(6), digit(7)].into_iter().collect()
}

/// Calculator and values; the names of its fields are kept by their number.
fn written_link(link: &Link, names: &mut BTreeMap<(&'static str, usize), String>) -> String {
    let fields: Vec<&str> = link.pairs.iter().map(|(name, _)| *name).collect();
    let fields = fields.join(";");
    let known = names.entry((link.calculator, link.pairs.len())).or_insert_with(|| fields.clone());
    assert_eq!(*known, fields, "two lists of fields of one length: number them");
    let values: Vec<String> = link.pairs.iter().map(|(_, value)| plain(value)).collect();
    format!("{}({})", link.calculator, values.join(";"))
}

/// A value by its number, however many digits and whichever unit it is written in: lengths in mm, below
/// 1 mm in µm, temperatures in °C, as fine as an order line has ever told them apart.
fn plain(value: &str) -> String {
    let units = [
        &unit::MM,
        &unit::UM,
        &unit::M,
        &unit::MIL,
        &unit::INCH,
        &unit::FOOT,
        &unit::CELSIUS,
        &unit::FAHRENHEIT,
        &unit::HRC,
        &unit::HV,
        &unit::HB,
        &unit::MPA,
        &unit::KSI,
        &unit::MINUTE,
        &unit::HOUR,
        &unit::YEAR,
        &unit::PERCENT,
    ];
    let Some((number, unit)) = number::read(value, &units).ok().and_then(|it| Some((it.number, it.unit?)))
    else {
        return value.replace(char::is_whitespace, "_");
    };
    let base = number * unit.factor + unit.offset;
    let (number, decimals, symbol) = match unit.dimension {
        unit::Dimension::Length if base < 1.0 => (base * 1000.0, 1, "um"),
        unit::Dimension::Length => (base, 3, "mm"),
        unit::Dimension::Temperature => (base, 1, "C"),
        _ => (number, 1, unit.symbol),
    };
    let digits = format!("{number:.decimals$}");
    format!("{}{symbol}", digits.trim_end_matches('0').trim_end_matches('.'))
}
