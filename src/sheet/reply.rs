//! The reply to the customer, in plain sentences, from the answer's own data.

use super::sources::without_sources;
use super::specification::specification;
use super::{Heading, job};
use crate::calculator::{Finding, Mark, Verdict};
use crate::order::{Assessed, Judged};
use crate::sorting::sort_by_key;

/// The reply to an order.
pub fn reply(assessed: &Assessed, heading: &Heading) -> String {
    let said = job::as_read(assessed, heading);
    let read = said.iter().find(|row| row.name == "As read").map_or("", |row| row.text.as_ref());
    let about = match heading.number.trim() {
        "" => String::new(),
        number => format!(" (number {number})"),
    };
    let mut text = format!("Dear customer,\n\nThank you for your enquiry{about}. We read it as: {read}.\n");
    for row in said.iter().filter(|row| row.name != "As read") {
        let what = if row.name == "Not said" {
            "It does not say these, please tell us"
        } else {
            "These words we could not use, please tell us what they mean"
        };
        text.push_str(&format!("{what}: {}.\n", row.text));
    }
    text.push('\n');
    let assessment = assessed.assessment.clone().in_units(heading.units);
    let taken = assessment.taken();
    match taken.zip(assessed.taken()) {
        Some((process, judged)) => {
            let order = specification(assessed, judged).unwrap_or_default();
            text.push_str(&format!("We recommend this finish: {}\n", heading.units.sentence(&order)));
            text.extend(years(assessed, judged).map(|years| format!("{years}\n")));
            let of = |test: &dyn Fn(&Finding) -> bool| {
                let findings = process.findings.iter().filter(|finding| test(finding));
                findings.map(|finding| format!("- {}\n", without_sources(&finding.text))).collect::<String>()
            };
            let conditions = of(&|finding| matches!(finding.mark, Mark::NotJudged | Mark::Condition));
            let agreed = of(&job::is_agreed);
            match (conditions.is_empty(), agreed.is_empty()) {
                (true, true) => {
                    text.push_str("Nothing has to be proved or agreed first");
                    text.push_str(job::unless_words_say_more(assessed));
                    text.push_str(".\n");
                }
                (true, false) => text.push_str("\nNothing has to be proved. This is to be agreed first:\n"),
                _ => text.push_str("\nBefore we can go ahead we ask you for this:\n"),
            }
            text.push_str(&conditions);
            text.push_str(&agreed);
            let terms = of(&|finding| finding.mark == Mark::Term && !job::is_agreed(finding));
            if !terms.is_empty() {
                text.push_str("\nThis goes on the order:\n");
                text.push_str(&terms);
            }
        }
        None => {
            let is_open = |judged: &Judged| job::is_left_out(assessed, judged);
            let so = match assessed.line.not_judged() {
                Some(coat) => coat,
                None if assessed.judgement.processes.iter().any(is_open) => {
                    "None of the finishes that your order leaves open suits it, and we would rather say so now"
                        .to_owned()
                }
                None => {
                    "None of the three zinc finishes suits this order, and we would rather say so now".to_owned()
                }
            };
            text.push_str(&format!("{so}.\n"));
        }
    }
    text.push_str(match assessed.line.not_judged() {
        Some(_) => "\nThe zinc finishes, if one were asked for instead:\n",
        None => "\nThe other finishes:\n",
    });
    let others = assessed.judgement.processes.iter();
    let mut others: Vec<&Judged> =
        others.filter(|judged| Some(judged.process) != assessment.answer.recommended).collect();
    // What was asked for is answered first.
    sort_by_key(&mut others, |judged| !job::is_asked(assessed, judged));
    for judged in others {
        text.push_str(&format!("- {}\n", other(assessed, judged, heading)));
    }
    text.push_str(
        "\nThese statements support the standards named and your own specification, and do not replace them. \
         Please ask us about anything that is not clear.\n",
    );
    if !heading.link.is_empty() {
        text.push_str(&format!("\nEverything behind this answer, with its sources: {}\n", heading.link));
    }
    text.push_str("\nWith kind regards\n");
    // A letter is written with plain spaces.
    text.replace('\u{a0}', " ")
}

/// What is not recommended, with why.
fn other(assessed: &Assessed, judged: &Judged, heading: &Heading) -> String {
    let mut why = job::why(assessed, judged);
    why.extend(job::change(assessed, judged));
    let why = why.join("; ");
    let why = heading.units.sentence(&why);
    let name = judged.process.name();
    let left = if job::is_left_out(assessed, judged) { ", had the order not left it out" } else { "" };
    let also = if assessed.taken().is_some() { " as well" } else { "" };
    match judged.verdict() {
        Verdict::Suits => format!("{name} would suit{also}{left}: {why}."),
        Verdict::OnConditions => format!("{name} would suit on conditions{left}: {why}."),
        Verdict::RuledOut => format!("{name} we cannot recommend: {why}."),
    }
}

/// How long the coat lasts, where the place is known.
fn years(assessed: &Assessed, judged: &Judged) -> Option<String> {
    let life = job::life(assessed, judged)?;
    let place = assessed.line.place?.harshest.key();
    let apart = if judged.is_life_insulated() { ", insulated from the metal that it touches," } else { "" };
    Some(format!("In {place}{apart} the zinc lasts {}.", life.value))
}
