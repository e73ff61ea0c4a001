//! A bake after the coat that the line asks for: it is laid beside that of the answer.

use super::Became;
use super::items::Line;
use super::left_out;
use super::lexicon::{self, PAST, SOON, Word};
use super::number;
use super::token::Chain;
use super::what::{Baked, Found, What};
use crate::order::demand::Demand;
use crate::order::recommend::recommended;
use crate::order::{self, Judged};
use crate::process::Process;
use crate::quantity::Temperature;
use crate::rule::{HeatTreatment, Instruction, Key};

/// `bake 24 h`, `baked 8 h at 200 °C`, `24 h bake at 190–220 °C`, `entspröden 24h`.
pub fn bake(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (end, baked) = heated(chain, at, Word::Bake)?;
    Some(vec![(end, What::Bake(baked))])
}

/// `stress relieve 4 h @ 375 °F`.
pub fn stress_relief(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (end, _) = heated(chain, at, Word::Not(lexicon::STRESS))?;
    Some(vec![(end, What::Not(lexicon::STRESS.into()))])
}

/// A word for a heat treatment, with its time and its temperature: the place behind them.
fn heated(chain: &Chain<'_>, at: usize, means: Word) -> Option<(usize, Baked)> {
    let mut baked = Baked { hours: None, celsius: None };
    let (mut end, mut is_said) = (at, false);
    for _ in 0..8 {
        if let Some((behind, ())) = lexicon::whole(chain, end, |word| (word == means).then_some(())) {
            (end, is_said) = (behind, true);
            continue;
        }
        let from = if end == at { at } else { over_words(chain, end) };
        let soon = is_soon(chain, from);
        let from = if soon { lexicon::over(chain, chain.after(from), Word::Filler) } else { from };
        let found = hours(chain, from);
        // `720 h bake 4 h`: the first are those of something else.
        if is_said && found.is_some() && !soon && baked.hours.is_some() {
            return None;
        }
        if let Some((behind, hours)) = found.filter(|_| soon || baked.hours.is_none()) {
            end = if soon { behind_the_coat(chain, behind) } else { behind };
            if !soon {
                baked.hours = Some(hours);
            }
        } else if let Some((behind, celsius)) = celsius(chain, from).filter(|_| baked.celsius.is_none()) {
            (end, baked.celsius) = (behind, Some(celsius));
        } else {
            break;
        }
    }
    end = behind_the_coat(chain, end);
    (is_said && !chain.inside_a_run(end)).then_some((end, baked))
}

/// The place behind `after plating`, `of plating`, `nach dem Verzinken`.
fn behind_the_coat(chain: &Chain<'_>, at: usize) -> usize {
    if !chain.word(at).is_some_and(|word| PAST.contains(&word) || word == "of") {
        return at;
    }
    let mut from = chain.after(at);
    while let Some((behind, ())) = lexicon::whole(chain, from, |word| (word == Word::Filler).then_some(())) {
        from = behind;
    }
    // `after machining zinc plated`: a word that nobody knows stands between, and the coat is asked for.
    if (at..from).any(|place| chain.is_out(place)) {
        return at;
    }
    let coat = |word| matches!(word, Word::Process(_)).then_some(());
    let past_words = if from == chain.after(at) { at } else { from };
    lexicon::whole(chain, from, coat).map_or(past_words, |(behind, ())| behind)
}

fn is_soon(chain: &Chain<'_>, at: usize) -> bool {
    chain.word(at).is_some_and(|word| SOON.contains(&word))
}

/// The place behind words and marks that bind a bake to its time.
fn over_words(chain: &Chain<'_>, mut at: usize) -> usize {
    for _ in 0..4 {
        at = chain.over(at, &["@", ":", "=", "(", "-", "–", "/", "±"]);
        if is_soon(chain, at) {
            break;
        }
        at = if chain.word(at) == Some("a") { chain.after(at) } else { at };
        at = lexicon::over(chain, lexicon::over(chain, at, Word::Filler), Word::Least);
    }
    at
}

fn hours(chain: &Chain<'_>, at: usize) -> Option<(usize, f64)> {
    let number = number::decimal(chain, at).filter(|number| number.grouped.is_none())?;
    // `8-10 h`, `8 to 10 h`: the least is sure.
    let joint = over_range(chain, number.end);
    let last = number::decimal(chain, joint).filter(|_| joint != number.end).map_or(number.end, |it| it.end);
    let unit = chain.over(last, &["-"]);
    let (end, ()) = lexicon::whole(chain, unit, |word| (word == Word::Hours).then_some(()))?;
    // `240 h NSS`: hours of salt spray.
    let spray = |word| matches!(word, Word::Measure(why) if why == lexicon::HOURS).then_some(());
    let is_spray = lexicon::find(chain, unit, spray).is_some_and(|(longer, ())| longer > end)
        || lexicon::find(chain, end, |word| {
            matches!(word, Word::Not(why) if why == lexicon::HOURS).then_some(())
        })
        .is_some();
    (!is_spray).then_some((end, number.value))
}

fn celsius(chain: &Chain<'_>, at: usize) -> Option<(usize, (f64, f64))> {
    let number = number::decimal(chain, at).filter(|number| number.grouped.is_none())?;
    let degrees = |at: usize| {
        let mark = chain.over(at, &["°", "º"]);
        let found = lexicon::whole(chain, mark, |word| match word {
            Word::Degrees(unit) => Some(unit),
            _ => None,
        });
        found.filter(|_| mark != at || number.value >= 100.0)
    };
    // `190 °C to 220 °C`, `190-220°C`.
    let own = degrees(number.end).map_or(number.end, |(end, _)| end);
    let joint = over_range(chain, own);
    let second = number::decimal(chain, joint).filter(|_| joint != own);
    let second = second.and_then(|second| Some((degrees(second.end)?, second.value)));
    let ((end, unit), last) = second.or_else(|| Some((degrees(number.end)?, number.value)))?;
    let of = |number: f64| match unit {
        "°F" => Temperature::from_fahrenheit(number).celsius(),
        _ => number,
    };
    Some((end, (of(number.value), of(last))))
}

fn over_range(chain: &Chain<'_>, at: usize) -> usize {
    let dash = chain.over(at, &["-", "–", "/", "…"]);
    match chain.word(at) {
        Some("to" | "bis" | "and") => chain.after(at),
        _ => dash,
    }
}

/// Lays what is asked for beside what the documents of the answer want.
pub(super) fn settle(line: &mut Line) {
    let asked: Vec<(usize, Baked)> = line
        .items
        .iter()
        .enumerate()
        .filter_map(|(at, item)| match item.what {
            What::Bake(baked) => Some((at, baked)),
            _ => None,
        })
        .collect();
    if asked.is_empty() {
        return;
    }
    let own = of_the_answer(line);
    for (at, baked) in asked {
        let is_left_out =
            line.items.get(at).is_some_and(|item| item.became == Some(Became::NotUsed(left_out::WHY.into())));
        match &own {
            None => line.not(
                at,
                "a bake after the coat; which one the documents want follows from the steel and the coat",
            ),
            Some(Own::Nothing(_)) if is_left_out => {
                line.not(at, "the line wants no bake, and the documents of the answer ask for none");
            }
            Some(Own::Settled) if is_left_out => {
                line.not(at, "the line wants no bake: by ISO 4042:2018 it is settled with the plater");
            }
            Some(Own::Nothing(process)) => {
                line.not(
                    at,
                    format!(
                        "a bake after the coat: the documents of the answer ask for none ({})",
                        process.name()
                    ),
                );
            }
            Some(Own::Settled) if line.draft.get("asked").is_some() => {
                line.used(at, "asked");
                line.note("asked", "with the bake that is asked for: ISO 4042:2018 leaves it to be settled");
            }
            Some(Own::Settled) => {
                line.not(at, "a bake after the coat: by ISO 4042:2018 it is settled with the plater")
            }
            Some(Own::Heat(heat)) if is_left_out => {
                line.not(
                    at,
                    format!("the line wants no bake, and the documents of the answer want one, {heat}"),
                );
            }
            Some(Own::Heat(heat)) => match baked.falls_short_of(heat) {
                None if line.draft.get("asked").is_some() => {
                    line.used(at, "asked");
                    line.note(
                        "asked",
                        format!("the bake that is asked for satisfies that of the answer, {heat}"),
                    );
                }
                None => {
                    line.not(at, format!("a bake after the coat, which satisfies that of the answer, {heat}"))
                }
                Some(short) => {
                    line.not(at, format!("a bake after the coat: the answer's is {heat}; {short}"))
                }
            },
        }
    }
}

/// The bake of the answer.
enum Own {
    /// It wants none.
    Nothing(Process),
    /// It is settled with the plater.
    Settled,
    /// That one.
    Heat(HeatTreatment),
}

fn of_the_answer(line: &Line) -> Option<Own> {
    let order = order::read(&line.draft).ok().filter(|order| order.steel.is_some())?;
    let judgement = order::judge(&order);
    let asked = order.asked.and_then(|asked| asked.process());
    let judged: &Judged = match asked {
        Some(process) => judgement.processes.iter().find(|judged| judged.process == process)?,
        None => judgement.processes.get(recommended(&order, &judgement)?)?,
    };
    let heat = |demand: &Demand| match demand.instruction {
        Some(Instruction::Bake(heat)) => Some(heat),
        _ => None,
    };
    let is_settled =
        |demand: &Demand| demand.rulings.iter().any(|(_, ruling)| ruling.rule.key == Key::Iso4042Bake);
    Some(match judgement.demands(judged).iter().find_map(heat) {
        Some(heat) => Own::Heat(heat),
        None if judgement.demands(judged).iter().any(is_settled) => Own::Settled,
        None => Own::Nothing(judged.process),
    })
}

impl Baked {
    /// In what it is less than a heat treatment asks for.
    fn falls_short_of(&self, heat: &HeatTreatment) -> Option<&'static str> {
        let is_short = heat.time.is_some_and(|time| self.hours.is_some_and(|hours| hours < time.hour()));
        let is_out = self.celsius.is_some_and(|(from, to)| {
            from < heat.from.celsius() - 0.5 || heat.to.is_some_and(|most| to > most.celsius() + 0.5)
        });
        match (is_short, is_out) {
            (true, _) => Some("what is asked for is shorter"),
            (_, true) => Some("what is asked for is at another temperature"),
            _ => None,
        }
    }
}
