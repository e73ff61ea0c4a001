//! Find the error on a job sheet: one word of it is that of another order, and no other line knows.
//!
//! The sheet of an order is laid beside those of orders that differ in one thing: the size, the steel,
//! the number, the place, the years. Where a line of one differs from the same line of the other in one
//! figure, class or mark, that one is planted. Everything else is as the order asks, so the fault is the
//! only one.

use crate::calculator::Mark;
use crate::order::{self, Assessed, Judged, reading};
use crate::quantity::Units;
use crate::rule::{Instruction, Ruling, Topic as Of};
use crate::sheet::{self, Heading, JOB, Look};
use crate::sorting::sort_by_key;
use crate::source::Source;
use crate::thread::pair::Found;

use super::exercise::{Exercise, Question, Sought};
use super::random::Random;
use super::setup::Topic;
use super::written::Written;

/// Draws before the exercise is given up.
const TRIES: usize = 40;
/// The block of the gauges, as the sheet calls it.
const GAUGES: &str = "Threads and gauges";
/// The most lines of a sheet to look through.
const LONGEST: usize = 16;

/// A line of the sheet that can be checked.
#[derive(Debug, Clone, PartialEq)]
struct Line {
    block: String,
    name: String,
    text: String,
}

/// A word of another order in the place of the right one.
struct Fault {
    at: usize,
    text: String,
    right: String,
    wrong: String,
    of: &'static str,
}

/// A job sheet with one fault.
pub fn find_the_error(units: Units, random: &mut Random) -> Option<Exercise> {
    (0..TRIES).find_map(|_| {
        let written = Written::draw(random)?;
        let assessed = assessed(&written)?;
        let judged = assessed.taken()?;
        let lines = lines(&assessed, units);
        let mut faults = Vec::new();
        for (other, of) in written.others() {
            let Some(other) = self::assessed(&other) else { continue };
            if other.taken().is_some_and(|other| other.process == judged.process) {
                faults.extend(differences(&lines, &self::lines(&other, units), of));
            }
        }
        // The many lines of the gauges are together as likely as each other line.
        let kind = |fault: &Fault| match lines.get(fault.at) {
            Some(line) if line.block == GAUGES => usize::MAX,
            _ => fault.at,
        };
        let mut kinds: Vec<usize> = faults.iter().map(kind).collect();
        sort_by_key(&mut kinds, |kind| *kind);
        kinds.dedup();
        let drawn = *random.pick(&kinds)?;
        faults.retain(|fault| kind(fault) == drawn);
        let at = random.below(faults.len());
        let fault = faults.into_iter().nth(at)?;
        exercise(written.text(), &assessed, judged, lines, &fault)
    })
}

fn assessed(written: &Written) -> Option<Assessed> {
    let reading = reading::read(&written.text());
    if !reading.is_understood() {
        return None;
    }
    order::assessed(&reading.draft).ok()
}

/// What of the job sheet the order and the documents decide, in the order of the sheet.
fn lines(assessed: &Assessed, units: Units) -> Vec<Line> {
    let heading = Heading { units, ..Heading::default() };
    let Ok(sheet) = sheet::order_sheet(assessed, JOB, &heading) else { return Vec::new() };
    let mut lines = Vec::new();
    // The first block says which order it is.
    for block in sheet.blocks.iter().skip(1) {
        let shown = match block.look {
            Look::Lead => 1,
            Look::Full if block.title != "The others" => block.rows.len(),
            Look::Half => block.rows.len(),
            _ => 0,
        };
        let mut under = String::new();
        for row in block.rows.iter().take(shown) {
            if row.text.is_empty() && row.room.is_empty() {
                under = row.name.to_string();
            } else if !row.may_go || row.name == "Tap over size by" {
                let name = match (row.name.is_empty(), under.is_empty()) {
                    (true, _) if block.look == Look::Lead => "To order".to_owned(),
                    (false, false) if row.name.contains("GO") => format!("{under}: {}", row.name),
                    _ => row.name.to_string(),
                };
                lines.push(Line { block: block.title.to_string(), name, text: row.text.to_string() });
            }
        }
    }
    lines
}

/// Where one word of a line is another one in the sheet of another order.
fn differences(lines: &[Line], others: &[Line], of: &'static str) -> Vec<Fault> {
    let mut faults = Vec::new();
    // No rule of zinc is behind a weight.
    let judged = |line: &&Line| !line.name.starts_with("Weight");
    for (at, line) in lines.iter().enumerate().filter(|(_, line)| judged(line)) {
        let same = others.iter().filter(|other| other.name == line.name && !line.name.is_empty());
        for other in same.take(1) {
            let words = |text: &str| text.split(' ').map(str::to_owned).collect::<Vec<_>>();
            let (right, wrong) = (words(&line.text), words(&other.text));
            if line.name == "Bake" && line.text != other.text {
                let (right, wrong) = (line.text.clone(), other.text.clone());
                faults.push(Fault { at, text: wrong.clone(), right, wrong, of });
            }
            if right.len() != wrong.len() || line.name == "Bake" {
                continue;
            }
            for (place, (one, other)) in right.iter().zip(&wrong).enumerate() {
                let units = unit_at(&right, place) == unit_at(&wrong, place);
                if one == other || !units || !may_be_planted(one, other) {
                    continue;
                }
                let mut planted = right.clone();
                if let Some(word) = planted.get_mut(place) {
                    word.clone_from(other);
                }
                let text = planted.join(" ");
                if ranges_run_upwards(&text) {
                    let [right, wrong] = [&line.text, &text].map(|text| clause(text, place));
                    faults.push(Fault { at, text, right, wrong, of });
                }
            }
        }
    }
    faults
}

/// The part of a line that a word stands in, as the sheet says it: with its unit, and what it is of.
fn clause(text: &str, place: usize) -> String {
    let words: Vec<&str> = text.split(' ').collect();
    let ends = |word: &&str| word.ends_with([';', ',', ':', '.']);
    let (before, from_here) = words.split_at(place.min(words.len()));
    let from = before.iter().rposition(ends).map_or(0, |at| at + 1);
    let to = from_here.iter().position(ends).map_or(words.len(), |at| place + at + 1);
    let clause = words.get(from..to).unwrap_or_default().join(" ");
    clause.trim_end_matches([',', ';', '.', ':']).to_owned()
}

/// The unit of a figure: its own, or that of the end of its range.
fn unit_at(words: &[String], place: usize) -> &str {
    let own = words.get(place).map_or("", String::as_str);
    let own = own.trim_start_matches(|c: char| c.is_ascii_digit() || matches!(c, '.' | ','));
    match words.get(place + 1).map(String::as_str) {
        Some("to" | "and") if own.is_empty() => unit_at(words, place + 2),
        _ => own,
    }
}

/// Whether two words are figures, classes or marks of one kind, which a hand may take for each other: the
/// same letters about other numbers, or a mark for a mark.
fn may_be_planted(one: &str, other: &str) -> bool {
    let bare = |word: &str| word.trim_end_matches([',', ';', '.', ':']).to_owned();
    let (one_bare, other_bare) = (bare(one), bare(other));
    let has_digit = |word: &str| word.contains(|c: char| c.is_ascii_digit());
    let unit = |word: &str| {
        word.trim_start_matches(|c: char| c.is_ascii_digit() || matches!(c, '.' | ',')).to_owned()
    };
    let is_mark = |word: &str| word.len() <= 2 && word.chars().all(|c| c.is_ascii_uppercase());
    let is_class = |word: &str| word.len() <= 4 && word.starts_with(|c: char| c.is_ascii_digit());
    let numbers = has_digit(one) && has_digit(other) && unit(one) == unit(other);
    let classes = is_class(&one_bare) && is_class(&other_bare) && !unit(&one_bare).is_empty();
    one_bare != other_bare && (numbers || classes || is_mark(&one_bare) && is_mark(&other_bare))
}

/// Whether every `40 to 60 µm` of a text still runs from the smaller to the larger.
fn ranges_run_upwards(text: &str) -> bool {
    let words: Vec<&str> = text.split([' ', '\u{a0}']).collect();
    words.windows(3).all(|three| match three {
        [from, "to", to] => match (from.parse::<f64>(), to.parse::<f64>()) {
            (Ok(from), Ok(to)) => from < to,
            _ => true,
        },
        _ => true,
    })
}

fn exercise(
    line: String,
    assessed: &Assessed,
    judged: &Judged,
    mut lines: Vec<Line>,
    fault: &Fault,
) -> Option<Exercise> {
    let Behind { ruling, of_rule, source } = behind(assessed, judged, lines.get(fault.at)?)?;
    // As many as can be looked through, the fault among them.
    let from = fault.at.saturating_sub(LONGEST / 2).min(lines.len().saturating_sub(LONGEST));
    lines.get_mut(fault.at)?.text.clone_from(&fault.text);
    let shown: Vec<Line> = lines.into_iter().skip(from).take(LONGEST).collect();
    let number = fault.at - from + 1;
    let told = |line: &Line| {
        let name = if line.name.is_empty() { &line.block } else { &line.name };
        (name.clone(), line.text.clone())
    };
    let paper: Vec<(String, String)> = shown.iter().map(told).collect();
    let wrong = paper.get(number - 1)?;
    let because = format!(
        "Line {number}, {}: rightly “{}”; “{}” stands on the sheet of an order that says {}. {}{source}.",
        wrong.0,
        fault.right,
        fault.wrong,
        fault.of,
        // A figure of its own document is behind no rule.
        if source == of_rule { format!("Rule {}: ", ruling.rule.key.key()) } else { String::new() },
    );
    // A line without a name of its own is told by what it says.
    let option = |line: &Line| if line.name.is_empty() { line.text.clone() } else { line.name.clone() };
    let options = shown.iter().map(option);
    let question = Question {
        text: "One line of this job sheet is wrong. Which?".to_owned(),
        sought: Sought::OneOf(options.collect(), number),
        hint: format!("Ask the calculators for what the order says, line by line; open {source}."),
        working: Vec::new(),
        because,
    };
    let case = assessed.judgement.case(judged, 0)?;
    Some(Exercise {
        topic: Topic::Order,
        scene: "A job sheet lies ready to go out with this order. Check it before it does.".to_owned(),
        givens: vec![("The line".to_owned(), line)],
        shown: Vec::new(),
        paper,
        questions: vec![question],
        opens: crate::calculator::behind(&case, ruling.rule.topic),
    })
}

/// What stands behind a line of the sheet.
struct Behind<'a> {
    ruling: &'a Ruling,
    /// Where the rule is published.
    of_rule: Source,
    /// Where the line is.
    source: Source,
}

fn behind<'a>(assessed: &Assessed, judged: &'a Judged, line: &Line) -> Option<Behind<'a>> {
    let of = |topic: Of| {
        // What decides before what is only met or good to know.
        let of_topic = judged.rulings.iter().filter(move |(_, ruling)| ruling.rule.topic == topic);
        of_topic.max_by_key(|(_, ruling)| match ruling.mark {
            Mark::Note => Mark::Met,
            mark => mark,
        })
    };
    let bake = || {
        let mut demands = assessed.judgement.demands(judged).iter();
        let baked = demands.find(|demand| matches!(demand.instruction, Some(Instruction::Bake(_))));
        baked.and_then(|demand| demand.rulings.first())
    };
    let name = line.name.as_str();
    let (place, ruling) = if name == "Bake" {
        bake().or_else(|| of(Of::Hydrogen))
    } else if name.starts_with("Life") {
        of(Of::Life)
    } else if line.block == GAUGES {
        of(Of::Fit)
    } else {
        of(Of::Class).or_else(|| of(Of::Fit)).or_else(|| of(Of::Life))
    }?;
    let figures = assessed.assessment.taken().into_iter().flat_map(|taken| &taken.figures);
    let figure = figures.filter(|figure| figure.name == name).find_map(|figure| figure.source);
    let offered = judged.offer.as_ref().and_then(|offer| {
        let class = offer.class;
        class.single.as_ref().or(class.average.as_ref()).map(|limit| class.source(limit))
    });
    let of_the_coat = line.block != GAUGES && name != "Bake" && !name.starts_with("Life");
    let gauged = gauged(judged, name).filter(|_| line.block == GAUGES);
    let source = figure.or(gauged).or(offered.filter(|_| of_the_coat));
    let of_rule = ruling.source(&assessed.judgement.case(judged, *place)?);
    Some(Behind { ruling, of_rule, source: source.unwrap_or(of_rule) })
}

/// Where the limit is published that a gauge is made to.
fn gauged(judged: &Judged, name: &str) -> Option<Source> {
    let Some(Found::Takes(mated)) = &judged.fit else { return None };
    let (bolt, nut) = (&mated.pair.bolt, &mated.pair.nut);
    let of_the_bolt = name.starts_with("Bolt") || name.starts_with("Screw");
    Some(match (of_the_bolt, name.contains("NOT-GO")) {
        (true, true) => bolt.pitch_tolerance.source,
        (true, false) => bolt.deviation.source,
        (false, true) => nut.pitch_tolerance.source,
        (false, false) => nut.deviation.source,
    })
}
