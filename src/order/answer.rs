//! The answer that is read aloud: what to take, what to get proved first, what else would do, what
//! not and why. Sixty words at most.

use serde::Serialize;

use super::OrderLine;
use super::demand::AGREE;
use super::judge::{Judged, Judgement};
use super::recommend::{conditions, is_hard, is_wanted, recommended};
use super::remedy::remedy;
use crate::calculator::Verdict;
use crate::coat::Process;
use crate::rule::life::{TABLE_ENDS, at_most, in_words};
use crate::rule::{Case, Instruction, Key, Ruling};
use crate::sentence::worded;
use crate::working::Mark;

mod specification;
mod talk;

use specification::{specification, whole};
use talk::Talk;

/// The most words an answer has.
pub const WORDS: usize = 60;

/// The answer.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Answer {
    /// As it is read aloud and copied.
    pub text: String,
    /// The process to take; `None` where all three are ruled out, and where a coat is asked for that is not
    /// judged here.
    pub recommended: Option<Process>,
    /// The line to put on the order: process, standard, class, nut, mark; empty where there is none to take.
    pub order: String,
}

/// The answer to an order line.
pub fn answer(line: &OrderLine, judgement: &Judgement) -> Answer {
    let take = recommended(line, judgement).and_then(|place| judgement.processes.get(place));
    let mut talk = Talk::default();
    let order = take.map_or_else(String::new, |judged| specification(line, judged));
    let asked = line.asked.and_then(|asked| asked.process());
    let refused = judgement
        .processes
        .iter()
        .find(|judged| Some(judged.process) == asked && judged.verdict() == Verdict::RuledOut);
    if let Some(judged) = refused {
        let change = remedy(line, judgement, judged);
        let change = change.map_or_else(String::new, |change| worded(format_args!("; {change}")));
        talk.must(worded(format_args!(
            "Not {}, as asked: {}{change}.",
            named(judged.process),
            why_not(judgement, judged)
        )));
    }
    let out: Vec<(&Judged, String)> = judgement
        .processes
        .iter()
        .filter(|judged| judged.verdict() == Verdict::RuledOut && is_wanted(line, judged.process))
        .map(|judged| (judged, why_not(judgement, judged)))
        .collect();
    let missing = missing(line, judgement);
    let not_judged = line.not_judged();
    let mut of_the_part = 0;
    if let Some(not_judged) = &not_judged {
        talk.must(worded(format_args!("{not_judged}.")));
        of_the_part += 1;
        // Its steel gets hot whatever coat it has.
        if let Some((case, ruling)) = steel_in_service(judgement).filter(|_| take.is_none()) {
            talk.must(worded(format_args!("First {}.", ruling.brief(&case))));
            of_the_part += 1;
        }
    }
    if !missing.is_empty() && take.is_some() {
        talk.must(worded(format_args!("First {}.", missing.join("; "))));
    }
    match take {
        Some(judged) => recommend(line, judgement, judged, (&order, &missing), &mut talk),
        None if left_out(line, judgement).next().is_some() => {
            if refused.is_none() {
                talk.must("None of those that the order leaves.".to_owned());
            }
            for (verdict, would) in
                [(Verdict::Suits, "would do"), (Verdict::OnConditions, "would do on conditions")]
            {
                let of = left_out(line, judgement).filter(|judged| judged.verdict() == verdict);
                let names: Vec<&str> = of.map(|judged| named(judged.process)).collect();
                if !names.is_empty() {
                    let names = capital(&names.join(" or "));
                    talk.extra(worded(format_args!("{names}, which the order leaves out, {would}.")));
                }
            }
        }
        None => match out.split_first() {
            Some(((_, why), rest)) if rest.iter().all(|(_, other)| other == why) => {
                talk.truncate(of_the_part);
                talk.must(worded(format_args!("None of the three: {why}.")));
                if let Some(change) = out.iter().find_map(|(judged, _)| remedy(line, judgement, judged)) {
                    talk.extra(capital(&worded(format_args!("{change}."))));
                }
                return Answer { text: talk.text(), recommended: None, order };
            }
            _ => talk.must("None of the three.".to_owned()),
        },
    }
    others(line, judgement, take, &mut talk);
    not(line, judgement, &out, refused, &mut talk);
    may_suit(line, judgement, take, &missing, &mut talk);
    for judged in open(line, judgement, take, Verdict::OnConditions) {
        with_conditions(judgement, judged, &missing, &mut talk);
    }
    let text = talk.text();
    // Nobody asked for the zinc that would do: it is told, and is no order.
    if not_judged.is_some() {
        return Answer { text, recommended: None, order: String::new() };
    }
    Answer { text, recommended: take.map(|judged| judged.process), order }
}

/// What is asked of the steel for the temperature in service, if anything.
fn steel_in_service(judgement: &Judgement) -> Option<(Case<'_>, &Ruling)> {
    let judged = judgement.processes.first()?;
    let ruling = judged.ruling(Key::SteelInService).filter(|ruling| ruling.mark == Mark::Condition)?;
    Some((judgement.case(judged, 0)?, ruling))
}

/// What the order leaves out, and is not ruled out all the same.
fn left_out<'j>(line: &'j OrderLine, judgement: &'j Judgement) -> impl Iterator<Item = &'j Judged> {
    let processes = judgement.processes.iter();
    processes.filter(|judged| judged.verdict() != Verdict::RuledOut && !is_wanted(line, judged.process))
}

/// What the place asks of the part, whatever coat it gets.
const OF_THE_PLACE: [Key; 2] = [Key::OtherMetal, Key::SteelInService];

/// What nobody said, or what the place asks for, and more than one process asks for: it is said once, before
/// everything else.
fn missing(line: &OrderLine, judgement: &Judgement) -> Vec<String> {
    let (mut once, mut more): (Vec<String>, Vec<String>) = (Vec::new(), Vec::new());
    let counts = |judged: &&Judged| judged.verdict() != Verdict::RuledOut && is_wanted(line, judged.process);
    for judged in judgement.processes.iter().filter(counts) {
        let briefs: Vec<String> = judgement
            .demands(judged)
            .iter()
            .filter(|demand| {
                demand.mark == Mark::NotJudged || OF_THE_PLACE.iter().any(|key| demand.is_of(*key))
            })
            .map(|demand| demand.brief(judgement, judged))
            .filter(|brief| !brief.is_empty())
            .collect();
        for brief in briefs {
            match (once.contains(&brief), more.contains(&brief)) {
                (true, false) => more.push(brief),
                (false, _) => once.push(brief),
                (true, true) => {}
            }
        }
    }
    more
}

/// What has to be proved, agreed or said for a process, in a few words each, without what is missing for
/// all of them.
fn asked_of(judgement: &Judgement, judged: &Judged, missing: &[String]) -> Vec<String> {
    conditions(judgement, judged)
        .map(|demand| demand.brief(judgement, judged))
        .filter(|brief| !brief.is_empty() && !missing.contains(brief))
        .collect()
}

/// What hangs on nothing but what is missing.
fn may_suit(
    line: &OrderLine,
    judgement: &Judgement,
    take: Option<&Judged>,
    missing: &[String],
    talk: &mut Talk,
) {
    let names: Vec<String> = open(line, judgement, take, Verdict::OnConditions)
        .filter(|judged| !missing.is_empty() && asked_of(judgement, judged, missing).is_empty())
        .map(whole)
        .collect();
    if let Some(last) = names.last() {
        let comma = if last.contains(',') { "," } else { "" };
        talk.may(worded(format_args!("{}{comma} may suit as well.", capital(&names.join(" and ")))));
    }
}

/// The processes of a verdict beside the one to take, of those that the order does not leave out.
fn open<'j>(
    line: &'j OrderLine,
    judgement: &'j Judgement,
    take: Option<&'j Judged>,
    verdict: Verdict,
) -> impl Iterator<Item = &'j Judged> {
    let taken = take.map(|judged| judged.process);
    judgement
        .processes
        .iter()
        .filter(move |judged| Some(judged.process) != taken && judged.verdict() == verdict)
        .filter(|judged| is_wanted(line, judged.process))
}

/// What would do as well: `Hot-dip to F2329 and mechanical, B695 class 8, also suit.`
fn others(line: &OrderLine, judgement: &Judgement, take: Option<&Judged>, talk: &mut Talk) {
    let names: Vec<String> = open(line, judgement, take, Verdict::Suits).map(whole).collect();
    let Some(last) = names.last() else { return };
    let verb = if names.len() > 1 { "also suit" } else { "also suits" };
    let comma = if last.contains(',') { "," } else { "" };
    let sticks = |judged: &Judged| judged.ruling(Key::WashersStick).is_some();
    let stick = open(line, judgement, take, Verdict::Suits).any(sticks);
    let more = stick.then(|| "say how many may stick together".to_owned());
    talk.may_with(
        worded(format_args!("{}{comma} {verb}", capital(&names.join(" and ")))),
        more.into_iter().collect(),
    );
}

/// What is ruled out and why; where there is room, the change that would make it suit.
fn not(
    line: &OrderLine,
    judgement: &Judgement,
    out: &[(&Judged, String)],
    refused: Option<&Judged>,
    talk: &mut Talk,
) {
    let mut said: Vec<(&str, Vec<&Judged>)> = Vec::new();
    for (judged, why) in
        out.iter().filter(|(judged, _)| refused.is_none_or(|refused| refused.process != judged.process))
    {
        match said.iter_mut().find(|(same, _)| same == why) {
            Some((_, processes)) => processes.push(judged),
            None => said.push((why, vec![judged])),
        }
    }
    let mut told: Vec<String> = Vec::new();
    for (why, processes) in said {
        let names: Vec<&str> = processes.iter().map(|judged| named(judged.process)).collect();
        let mut changes: Vec<String> = Vec::new();
        for change in processes.iter().filter_map(|judged| remedy(line, judgement, judged)) {
            let is_told = |told: &[String]| told.iter().any(|one| one == change);
            if !is_told(&changes) && !is_told(&told) {
                changes.push(change.to_owned());
            }
        }
        told.extend(changes.iter().cloned());
        talk.may_with(worded(format_args!("Not {}: {why}", names.join(" nor "))), changes);
    }
}

/// What would do if something is proved first: the first of it, then the rest and the years where there
/// is room.
fn with_conditions(judgement: &Judgement, judged: &Judged, missing: &[String], talk: &mut Talk) {
    let name = capital(named(judged.process));
    let mut briefs = asked_of(judgement, judged, missing).into_iter();
    let first = briefs.next();
    if first.is_none() && !missing.is_empty() {
        return;
    }
    let mut more: Vec<String> = briefs.collect();
    more.extend(sure(judgement, judged).map(|years| worded(format_args!("sure for {years}"))));
    talk.may_with(
        match first {
            Some(first) => worded(format_args!("{name} only on conditions: {first}")),
            None => worded(format_args!("{name} only on conditions")),
        },
        more,
    );
}

/// What is not only written on the order but agreed with somebody, in a few words each.
fn agreed(judgement: &Judgement, judged: &Judged) -> Vec<String> {
    let terms = judgement.demands(judged).iter().filter(|demand| demand.mark == Mark::Term);
    let agreed = terms.filter(|demand| capital(&demand.text(judgement, judged)).starts_with(AGREE));
    agreed
        .map(|demand| {
            let brief = demand.brief(judgement, judged);
            brief.strip_prefix("agree ").map_or_else(|| brief.clone(), str::to_owned)
        })
        .collect()
}

/// The years that the coat is sure of in the place, where it is known.
fn sure(judgement: &Judgement, judged: &Judged) -> Option<String> {
    judgement.site.place?;
    let (min, _) = judgement.case(judged, 0)?.years()?;
    Some(in_words(min.min))
}

fn recommend(
    line: &OrderLine,
    judgement: &Judgement,
    judged: &Judged,
    (order, missing): (&str, &[String]),
    talk: &mut Talk,
) {
    let take = if line.not_judged().is_some() { "Of zinc, take" } else { "Take" };
    talk.must(worded(format_args!("{take} {order}.")));
    let first = asked_of(judgement, judged, missing);
    if !first.is_empty() {
        let then = if missing.is_empty() { "First" } else { "Then" };
        talk.must(worded(format_args!("{then} {}.", first.join("; "))));
    } else if missing.is_empty() {
        talk.must(match agreed(judgement, judged).as_slice() {
            [] if line.has_open_words => "Nothing to prove, if the words not used change nothing.".to_owned(),
            [] => "Nothing to prove.".to_owned(),
            agreed => worded(format_args!("To agree: {}.", agreed.join("; "))),
        });
    }
    let sure = judgement.case(judged, 0).and_then(|case| case.years());
    if let (Some((min, max)), Some(place)) = (sure, line.place) {
        let sure = match place.mildest != place.harshest {
            true => worded(format_args!("sure for {} in {}", in_words(min.min), place.harshest.key())),
            false => worded(format_args!("sure for {}", in_words(min.min))),
        };
        let sure = if judged.is_life_insulated() {
            worded(format_args!("Insulated, {sure}"))
        } else {
            capital(&sure)
        };
        let is_enough = min.min.year() > TABLE_ENDS || judged.is_sure() || line.years.is_none();
        // The mildest category has no least loss, and so no most years.
        let most = max.most.filter(|_| !is_enough);
        let best = most.map(|most| worded(format_args!("{} at best", at_most(most, line.years))));
        talk.may_with(sure, best.into_iter().collect());
    }
    for key in [Key::HotService, Key::OwnThread] {
        if let Some(ruling) = judged.ruling(key)
            && let Some(case) = judgement.case(judged, 0)
        {
            talk.may(ruling.brief(&case));
        }
    }
    let terms: Vec<String> = judgement
        .demands(judged)
        .iter()
        .filter(|demand| {
            let cleaning = matches!(
                demand.instruction,
                Some(Instruction::CleanWithoutAcid | Instruction::CleanMechanically)
            );
            demand.mark == Mark::Term
                // Every plater cleans a hard part so without being told on the telephone.
                && (!cleaning || is_hard(judgement))
                && !demand.rulings.iter().any(|(_, ruling)| ruling.rule.key == Key::Assembles)
        })
        .map(|demand| demand.brief(judgement, judged))
        .filter(|brief| !brief.is_empty())
        .collect();
    if !terms.is_empty() {
        talk.extra(worded(format_args!("On the order: {}.", terms.join(", "))));
    }
}

fn named(process: Process) -> &'static str {
    match process {
        Process::HotDip => "hot-dip",
        Process::Mechanical => "mechanical",
        Process::Electroplated => "electroplated",
    }
}

/// Why a process is out: its first bar, in a few words.
fn why_not(judgement: &Judgement, judged: &Judged) -> String {
    let mut topics = Vec::new();
    let mut briefs: Vec<String> = Vec::new();
    for demand in judgement.demands(judged).iter().filter(|demand| demand.mark == Mark::Bar) {
        let topic = demand.rulings.first().map(|(_, ruling)| ruling.rule.topic);
        let mut brief = demand.brief(judgement, judged);
        let place = demand.rulings.first().map_or(0, |(place, _)| *place);
        if let Some(item) = judgement.items.get(place).filter(|_| place > 0 && !brief.is_empty()) {
            brief = worded(format_args!("{}, {brief}", item.part.kind));
        }
        // One reason of a kind is enough to be said.
        if !brief.is_empty() && !topics.contains(&topic) {
            topics.push(topic);
            briefs.push(brief);
        }
    }
    briefs.truncate(2);
    if briefs.is_empty() { "ruled out".to_owned() } else { briefs.join(", and ") }
}

fn capital(text: &str) -> String {
    crate::sentence::capital(text)
}
