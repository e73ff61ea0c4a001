//! The nearest change that would make a process suit that is ruled out.

use super::OrderLine;
use super::judge::{Judged, Judgement, verdict};
use crate::calculator::Verdict;
use crate::coat::Process;
use crate::quantity::Time;
use crate::rule::Key;
use crate::site::Category;
use crate::steel::{Grade, State, Steel};

/// The change, as a clause: `electroplating would do for 8 years`; `None` where none of those tried helps.
pub fn remedy(line: &OrderLine, judgement: &Judgement, judged: &Judged) -> Option<String> {
    fewer_years(line, judgement, judged)
        .or_else(|| milder_place(line, judged.process))
        .or_else(|| lower_grade(line, judged.process))
}

/// `would do`, or what it would still ask for.
fn would(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Suits => "would do",
        Verdict::OnConditions | Verdict::RuledOut => "would do on conditions",
    }
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
    let process = judged.process;
    let verdict = verdict(&fewer, process);
    (verdict != Verdict::RuledOut).then(|| {
        let unit = if years == 1.0 { "year" } else { "years" };
        format!("{} {} for {years:.0} {unit}", process.name(), would(verdict))
    })
}

/// The harshest of the milder places in which it would do.
fn milder_place(line: &OrderLine, process: Process) -> Option<String> {
    let here = line.place?;
    let milder = Category::ALL.into_iter().take_while(|place| *place != here);
    let milder: Vec<Category> = milder.collect();
    milder.into_iter().rev().find_map(|place| {
        let there = OrderLine { place: Some(place), ..*line };
        let verdict = verdict(&there, process);
        (verdict != Verdict::RuledOut)
            .then(|| format!("{} {} in {}", process.name(), would(verdict), place.key()))
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
        let steel = Steel::grade(*grade, line.thread.diameter()).ok()?;
        let steel = Some(State { steel, case_hardened: false, cold_worked: false });
        let verdict = verdict(&OrderLine { steel, ..*line }, process);
        (verdict != Verdict::RuledOut)
            .then(|| format!("{} {}, if the design allows", grade.name(), would(verdict)))
    })
}
