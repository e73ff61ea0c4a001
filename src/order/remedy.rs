//! The nearest change that would make a process suit that is ruled out.

#[cfg(test)]
mod tests;

use std::cmp::Ordering;

use super::asked::{self, Asked};
use super::judge::{Judged, Judgement, verdict};
use super::line::USUAL_BATH;
use super::{Mate, OrderLine};
use crate::calculator::Verdict;
use crate::coat::{CoatClass, Process};
use crate::quantity::{Length, Quantity, Time, unit};
use crate::rule::{Key, Ruling, Topic};
use crate::sentence::worded;
use crate::site::Category;
use crate::sorting::sort_by;
use crate::steel::{Grade, State, Steel};
use crate::thread::Thread;
use crate::working::Mark;

/// The change, as a clause: `it would do for 8 years`; `None` where none of those tried helps. Looked for
/// once.
pub fn remedy<'j>(line: &OrderLine, judgement: &Judgement, judged: &'j Judged) -> Option<&'j str> {
    judged.remedy.get_or_init(|| find(line, judgement, judged)).as_deref()
}

fn find(line: &OrderLine, judgement: &Judgement, judged: &Judged) -> Option<String> {
    let process = judged.process;
    if is_barred_by_steel(judged) {
        return usual_bath(line, process).or_else(|| lower_grade(line, process));
    }
    usual_nut(line, process)
        .or_else(|| other_class(line, judgement, judged))
        .or_else(|| fewer_years(line, judgement, judged))
        .or_else(|| coarse_thread(line, process))
        .or_else(|| milder_place(line, judgement, process))
        .or_else(|| lower_grade(line, process))
}

/// Whether the steel itself is ruled out: then no other nut, coat, thread or place helps, and none is tried.
fn is_barred_by_steel(judged: &Judged) -> bool {
    is_barred_by(judged, &[Topic::Hydrogen, Topic::Heat])
}

fn is_barred_by(judged: &Judged, topics: &[Topic]) -> bool {
    let bars = |ruling: &Ruling| ruling.mark == Mark::Bar && topics.contains(&ruling.rule.topic);
    judged.rulings.iter().any(|(_, ruling)| bars(ruling))
}

/// The bath that is usual, where another is written.
fn usual_bath(line: &OrderLine, process: Process) -> Option<String> {
    if process != Process::HotDip || line.bath == USUAL_BATH {
        return None;
    }
    let verdict = verdict_of(&OrderLine { bath: USUAL_BATH, ..*line }, process)?;
    Some(worded(format_args!("a bath at {} {}", USUAL_BATH.show(&unit::CELSIUS, 0), would(verdict))))
}

/// The nut that the standards give, where another is written.
fn usual_nut(line: &OrderLine, process: Process) -> Option<String> {
    let nut = line.nut?;
    nut.class.filter(|class| class.is_over_size())?;
    let standard = crate::thread::overtap::standard_class(line.thread?);
    let verdict =
        verdict_of(&OrderLine { nut: Some(Mate { class: Some(standard), ..nut }), ..*line }, process)?;
    Some(worded(format_args!("with {standard} nuts it {}", would(verdict))))
}

/// The nearest class of the document that would do, where one is asked for: a thicker one where the coat does
/// not last, else a thinner one.
fn other_class(line: &OrderLine, judgement: &Judgement, judged: &Judged) -> Option<String> {
    let process = judged.process;
    let Some(Asked::Class(asked)) = line.asked.filter(|asked| asked.process() == Some(process)) else {
        return None;
    };
    let min = |class: &CoatClass| class.single.map(|limit| limit.thickness);
    let asked = asked.class()?;
    let from = min(asked)?;
    let wanted = if is_barred_by(judged, &[Topic::Life]) { Ordering::Greater } else { Ordering::Less };
    let mut classes: Vec<(Length, &CoatClass, &'static asked::Keyed)> = asked::ALL
        .iter()
        .filter_map(|keyed| Some((min(keyed.class()?)?, keyed.class()?, keyed)))
        .filter(|(min, class, _)| class.document == asked.document && min.partial_cmp(&from) == Some(wanted))
        .collect();
    sort_by(&mut classes, |(one, ..), (other, ..)| {
        let apart = |length: &Length| (length.um() - from.um()).abs();
        apart(one).total_cmp(&apart(other))
    });
    classes.into_iter().find_map(|(_, class, keyed)| {
        let asked = Some(Asked::Class(keyed));
        let verdict = open(judgement.verdict_with(&OrderLine { asked, ..*line }, process))?;
        Some(worded(format_args!("{} {}", class.name, would(verdict))))
    })
}

/// The coarse thread of the same diameter.
fn coarse_thread(line: &OrderLine, process: Process) -> Option<String> {
    let coarse = line.thread.filter(|thread| !thread.is_coarse())?.coarse()?;
    let verdict = verdict_of(&OrderLine { thread: Some(coarse), ..*line }, process)?;
    Some(worded(format_args!("{coarse} {}, if the design allows", would(verdict))))
}

/// `would do`, or what it would still ask for.
fn would(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Suits => "would do",
        Verdict::OnConditions | Verdict::RuledOut => "would do on conditions",
    }
}

/// The verdict on a line with other parts or threads; `None` where it is ruled out as well.
fn verdict_of(line: &OrderLine, process: Process) -> Option<Verdict> {
    open(verdict(line, process))
}

/// A verdict that does not rule out.
fn open(verdict: Verdict) -> Option<Verdict> {
    Some(verdict).filter(|verdict| *verdict != Verdict::RuledOut)
}

/// The years that the coat is sure of, where years are all that stands against it.
fn fewer_years(line: &OrderLine, judgement: &Judgement, judged: &Judged) -> Option<String> {
    line.years?;
    judged.ruling(Key::Lasts)?;
    let (min, _) = judgement.case(judged, 0)?.years()?;
    let years = min.min.year().floor();
    if years < 1.0 {
        return None;
    }
    let fewer = OrderLine { years: Some(Time::from_year(years)), ..*line };
    let verdict = open(judgement.verdict_with(&fewer, judged.process))?;
    let unit = if years == 1.0 { "year" } else { "years" };
    Some(worded(format_args!("it {} for {years:.0} {unit}", would(verdict))))
}

/// The harshest of the milder places in which it would do.
fn milder_place(line: &OrderLine, judgement: &Judgement, process: Process) -> Option<String> {
    let here = line.place?;
    let milder = Category::ALL.into_iter().take_while(|place| *place < here.mildest);
    let milder: Vec<Category> = milder.collect();
    milder.into_iter().rev().find_map(|place| {
        let there = OrderLine { place: Some(place.into()), ..*line };
        let verdict = open(judgement.verdict_with(&there, process))?;
        Some(worded(format_args!("it {} in {}", would(verdict), place.key())))
    })
}

/// A grade below the one that is too hard, of the same family.
fn lower_grade(line: &OrderLine, process: Process) -> Option<String> {
    let grade = line.steel.and_then(|steel| steel.grade())?.grade;
    let lower: &[Grade] = match grade {
        Grade::Class12_9 | Grade::Class12_9Underlined => &[Grade::Class10_9, Grade::Class8_8],
        Grade::A490 => &[Grade::A325],
        Grade::A490M => &[Grade::A325M],
        Grade::F2280 => &[Grade::F1852],
        Grade::J429Grade8_2 => &[Grade::J429Grade8],
        Grade::J429Grade5_2 => &[Grade::J429Grade5],
        _ => &[],
    };
    lower.iter().find_map(|grade| {
        let steel = Steel::of(*grade, line.thread.map(Thread::diameter)).ok()?;
        let steel = Some(State::of(steel));
        let verdict = verdict_of(&OrderLine { steel, ..*line }, process)?;
        let name = grade.name();
        let name = name.rsplit_once("grade ").map_or(name, |(_, short)| short);
        Some(worded(format_args!("{name} {}, if the design allows", would(verdict))))
    })
}
