//! The sheet of the order itself, for the plater, the galvanizer, the inspector and the customer.

use super::sources::{source_block, without_sources};
use super::specification::specification;
use super::{Block, Heading, Look, Row, Sheet, inspection, price, threads};
use crate::calculator::{Caution, FieldAbout, Figure, Finding, Mark, Verdict};
use crate::order::reading::{self, Segment};
use crate::order::{self, Aside, Assessed, Judged, ProcessAssessment, Standing, demand::AGREE};
use crate::quantity::letters::lower;
use crate::rule::Instruction;
use crate::sentence::capital;
use crate::source::Source;

pub(super) fn sheet(assessed: &Assessed, heading: &Heading) -> Sheet {
    let assessment = assessed.assessment.clone().in_units(heading.units);
    let taken = assessment.taken();
    let judged = assessed.taken();
    let mut sources: Vec<Source> = Vec::new();
    let mut middle = vec![lead(assessed, judged, &assessment.answer.text, heading)];
    middle.push(others(assessed, judged, heading));
    if let (Some(taken), Some(judged)) = (taken, judged) {
        for finding in &taken.findings {
            sources.push(finding.source);
            sources.extend(&finding.also);
        }
        middle.push(first(assessed, &taken.findings));
        middle.extend(terms(&taken.findings));
        middle.extend(threads::block(assessed, judged, &mut sources));
        middle.push(coat(assessed, taken, judged, &mut sources));
        middle.push(Block::new(
            "",
            Look::Signatures,
            ["Ordered", "Coated", "Inspected"].map(signature).to_vec(),
        ));
        middle.extend(to_know(&taken.findings));
    }
    middle.push(cautions(&assessment.cautions));
    sources.extend(assessment.sources());
    for row in middle.iter_mut().flat_map(|block| &mut block.rows) {
        row.text = heading.units.sentence(&row.text).into_owned().into();
    }
    // What a document calls its places stays as it is printed.
    middle.push(source_block(sources));
    Sheet::of("Job sheet", middle)
}

/// The order as it was read, and what of it was not understood or is not said.
pub(super) fn as_read(assessed: &Assessed, heading: &Heading) -> Vec<Row> {
    let draft = &assessed.draft;
    let by_default = |key: &str| {
        let field: Option<&FieldAbout> = order::FIELDS.iter().find(|field| field.key == key);
        field.is_some_and(|field| draft.get(key) == Some(field.default))
    };
    let said: Vec<String> = reading::said(draft)
        .into_iter()
        .filter_map(|segment| match segment {
            Segment::Used { field, text, .. } if !by_default(field) => Some(text),
            _ => None,
        })
        .collect();
    let mut rows = vec![Row::said("As read", said.join("; "))];
    let reading = reading::read(&heading.line);
    let not_used: Vec<String> = reading
        .not_used()
        .map(|(text, why)| if why.is_empty() { format!("“{text}”") } else { format!("“{text}” ({why})") })
        .collect();
    if !not_used.is_empty() {
        rows.push(Row::said("Not understood or not used", not_used.join("; ")));
    }
    let silent: Vec<String> = reading::not_said(draft).map(|field| lower(field.label)).collect();
    if !silent.is_empty() {
        rows.push(Row::said("Not said", silent.join(", ")));
    }
    rows
}

/// What to order, and the answer as it is read aloud.
fn lead(assessed: &Assessed, judged: Option<&Judged>, answer: &str, heading: &Heading) -> Block {
    let Some(judged) = judged else {
        let title = assessed.line.not_judged().unwrap_or_else(|| "No finish to order".to_owned());
        return Block::new(title, Look::Lead, vec![Row::said("", answer.to_owned())]);
    };
    let title = format!("To order: {}, {}", lower(judged.process.name()), lower(judged.verdict().words()));
    let mut rows = Vec::new();
    rows.extend(specification(assessed, judged).map(|text| Row::said("", text)));
    rows.push(Row::said("In short", answer.to_owned()));
    rows.extend(price::row(assessed, judged.process, &heading.prices));
    Block::new(title, Look::Lead, rows)
}

/// The verdict on the others in a line each, with why.
fn others(assessed: &Assessed, taken: Option<&Judged>, heading: &Heading) -> Block {
    let others = assessed.judgement.processes.iter();
    let others = others.filter(|judged| taken.is_none_or(|taken| taken.process != judged.process));
    let row = |judged: &Judged| {
        let mut why = why(assessed, judged);
        why.extend(change(assessed, judged));
        if !judged.is_ruled_out()
            && let Some(price) = price::row(assessed, judged.process, &heading.prices)
        {
            why.push(format!("{} {}", lower(&price.name), price.text));
        }
        let standing = Standing::of(&assessed.line, judged);
        let name = format!("{}: {}", judged.process.name(), lower(&standing.words()));
        Row::said(name, capital(&why.join("; ")))
    };
    let title = match (taken, assessed.line.not_judged()) {
        (Some(_), _) => "The others",
        (None, Some(_)) => "Zinc, which is not asked for",
        (None, None) => "",
    };
    Block::new(title, Look::Full, others.map(row).collect())
}

/// Why the verdict on a process is what it is, in a few words each.
pub(super) fn why(assessed: &Assessed, judged: &Judged) -> Vec<String> {
    let decides = |mark: Mark| match judged.verdict() {
        Verdict::RuledOut => mark == Mark::Bar,
        _ => matches!(mark, Mark::Condition | Mark::NotJudged),
    };
    let demands = assessed.judgement.demands(judged).iter().filter(|demand| decides(demand.mark));
    let mut why: Vec<String> = Vec::new();
    for brief in demands.map(|demand| demand.brief(&assessed.judgement, judged)) {
        if !brief.is_empty() && !why.contains(&brief) {
            why.push(brief);
        }
    }
    if let Some(offer) = judged.offer.as_ref().filter(|_| why.is_empty()) {
        why.push(format!("{} {}", offer.class.document.name, offer.class.name));
        why.extend(life(assessed, judged).map(|figure| format!("{}: {}", figure.name, figure.value)));
    }
    why
}

/// The life of the coat, where the place is known: in the harshest that it may be, for no more is sure.
pub(super) fn life<'a>(assessed: &'a Assessed, judged: &Judged) -> Option<&'a Figure> {
    let harshest = assessed.line.place?.harshest.key();
    let mut figures = judged_figures(assessed, judged).into_iter().flat_map(|process| &process.figures);
    figures.find(|figure| figure.name.starts_with("Life") && figure.name.ends_with(harshest))
}

/// Whether a process is the one that the order asks for.
pub(super) fn is_asked(assessed: &Assessed, judged: &Judged) -> bool {
    assessed.line.asked.and_then(|asked| asked.process()) == Some(judged.process)
}

/// Whether the order leaves out a process that is not ruled out anyhow.
pub(super) fn is_left_out(assessed: &Assessed, judged: &Judged) -> bool {
    Standing::of(&assessed.line, judged).aside == Some(Aside::LeftOut)
}

/// The nearest change that would make a process suit that is ruled out, and whether it is the one asked for.
pub(super) fn change(assessed: &Assessed, judged: &Judged) -> Vec<String> {
    let asked = judged.is_ruled_out() && is_asked(assessed, judged);
    let asked = asked.then(|| "it is what was asked for".to_owned());
    let change = judged_figures(assessed, judged).and_then(|process| process.change.as_deref());
    asked.into_iter().chain(change.map(clause)).collect()
}

/// A sentence as a part of another.
fn clause(sentence: &str) -> String {
    let sentence = sentence.trim_end_matches('.');
    sentence.strip_prefix("It ").map_or_else(|| sentence.to_owned(), |rest| format!("it {rest}"))
}

fn judged_figures<'a>(assessed: &'a Assessed, judged: &Judged) -> Option<&'a ProcessAssessment> {
    assessed.assessment.processes.iter().find(|process| process.process == judged.process)
}

/// What is said behind “nothing”, where words of the line stand unused that may ask for something.
pub(super) fn unless_words_say_more(assessed: &Assessed) -> &'static str {
    if assessed.line.has_open_words { ", if the words that are not used change nothing" } else { "" }
}

/// What somebody has to prove or agree before the finish can be ordered.
fn first(assessed: &Assessed, findings: &[Finding]) -> Block {
    let with_room = |test: fn(&Finding) -> bool, room| {
        findings.iter().filter(move |finding| test(finding)).map(move |finding| tick(finding).room(room))
    };
    let is_asked = |finding: &Finding| matches!(finding.mark, Mark::Condition | Mark::NotJudged);
    let mut rows: Vec<Row> = with_room(is_asked, &["proved by", "on"]).collect();
    let agreed: Vec<Row> = with_room(is_agreed, &["agreed by", "on"]).collect();
    match (rows.is_empty(), agreed.is_empty()) {
        (true, true) => rows.push(Row::said(
            "",
            format!(
                "Nothing has to be proved or agreed before the order{}.",
                unless_words_say_more(assessed)
            ),
        )),
        (true, false) => rows.push(Row::said("", "Nothing has to be proved. To agree before the order:")),
        _ => {}
    }
    rows.extend(agreed);
    Block::new("First to prove or agree", Look::Full, rows)
}

/// Whether a term of the order is agreed with somebody, and not only written on it.
pub(super) fn is_agreed(finding: &Finding) -> bool {
    finding.mark == Mark::Term && finding.text.starts_with(AGREE)
}

/// What goes on the order.
fn terms(findings: &[Finding]) -> Option<Block> {
    let terms = findings.iter().filter(|finding| finding.mark == Mark::Term && !is_agreed(finding));
    let rows: Vec<Row> = terms.map(tick).collect();
    (!rows.is_empty()).then(|| Block::new("Terms of the order", Look::Full, rows))
}

fn tick(finding: &Finding) -> Row {
    Row::tick(without_sources(&finding.text))
}

/// What is good to know; gives way first.
fn to_know(findings: &[Finding]) -> Option<Block> {
    let notes = findings.iter().filter(|finding| finding.mark == Mark::Note);
    let rows: Vec<Row> =
        notes.map(|finding| Row::said("", without_sources(&finding.text)).may_go()).collect();
    (!rows.is_empty()).then(|| Block::new("Good to know", Look::Small, rows))
}

/// The coat to measure, on how many articles and where, the bake, the life and the zinc.
fn coat(assessed: &Assessed, taken: &ProcessAssessment, judged: &Judged, sources: &mut Vec<Source>) -> Block {
    // The threads have a block of their own.
    let figures = taken.figures.iter().filter(|figure| figure.name != "Threads");
    let mut rows = vec![weight(assessed)];
    for figure in figures {
        sources.extend(figure.source);
        rows.push(Row::figure(figure));
    }
    rows.push(bake(assessed, judged));
    rows.extend(inspection::to_measure(assessed, judged, sources));
    Block::new("Coat and inspection", Look::Half, rows)
}

/// What a piece and the lot weigh before the coat.
fn weight(assessed: &Assessed) -> Row {
    let Some(mass) = assessed.judgement.mass() else {
        return Row::said("Weight", "not known here: no shape of this part is published in these tables");
    };
    let each = if assessed.judgement.items.len() > 1 { "a set" } else { "a piece" };
    let mut text = format!("{} {each}", order::weight(mass.kg()));
    if let Some(quantity) = assessed.line.quantity {
        text.push_str(&format!(", {} in all", order::weight(mass.kg() * f64::from(quantity))));
    }
    Row::said("Weight before the coat", text)
}

/// How the parts are baked, or what is to be settled of it.
fn bake(assessed: &Assessed, judged: &Judged) -> Row {
    let told = assessed.judgement.demands(judged).iter().map(|demand| {
        let text = demand.text(&assessed.judgement, judged);
        (matches!(demand.instruction, Some(Instruction::Bake(_))), text)
    });
    let (baked, other): (Vec<_>, Vec<_>) = told.partition(|(bakes, _)| *bakes);
    let settled = baked.into_iter().chain(other.into_iter().filter(|(_, text)| lower(text).contains("bak")));
    let texts: Vec<String> = settled.map(|(_, text)| without_sources(&capital(&text))).collect();
    let text = match texts.as_slice() {
        [] if assessed.line.steel.is_none() => "not known: the steel is not said".to_owned(),
        [] => "none is asked for".to_owned(),
        texts => texts.join("; "),
    };
    Row::said("Bake", text)
}

fn signature(who: &'static str) -> Row {
    Row::said(who, "").room(&["name", "date"])
}

fn cautions(cautions: &[Caution]) -> Block {
    let rows = cautions.iter().map(|caution| Row::said("", caution.words())).collect();
    Block::new("Cautions", Look::Small, rows)
}
