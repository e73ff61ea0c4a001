//! The judgement in words, with its sources, and with the calculator behind each reason.

use std::rc::Rc;

use super::fit::bolt_class;
use super::judge::{Judged, Judgement, Reason};
use super::offer::Offer;
use super::words::{TABLE_ENDS, finding, nut, years};
use super::{Assessment, OrderLine, ProcessAssessment, links};
use crate::calculator::{Caution, Figure, Finding, Note, Verdict};
use crate::coat::Process;
use crate::part::Shape;
use crate::quantity::{Length, Quantity, Shown, unit};
use crate::sentence::capital;
use crate::site::life::{Exponent, Years};
use crate::steel::Steel;

/// Arranges a judgement.
pub fn arrange(line: &OrderLine, judgement: &Judgement) -> Assessment {
    let processes = judgement.processes.each_ref().map(|judged| process(line, judgement, judged));
    Assessment {
        headline: headline(&processes),
        figures: figures(line, judgement),
        cautions: cautions(&processes),
        notes: notes(line, judgement),
        processes,
    }
}

fn headline(processes: &[ProcessAssessment; 3]) -> String {
    let of = |verdict: Verdict| {
        let names: Vec<&str> =
            processes.iter().filter(|p| p.verdict == verdict).map(|p| p.process.name()).collect();
        names.join(" and ")
    };
    let parts: Vec<String> = [Verdict::Suits, Verdict::OnConditions, Verdict::RuledOut]
        .into_iter()
        .map(|verdict| (verdict, of(verdict)))
        .filter(|(_, names)| !names.is_empty())
        .map(|(verdict, names)| format!("{}: {names}", verdict.words()))
        .collect();
    format!("{}.", parts.join(". "))
}

/// The order line as it was understood.
fn figures(line: &OrderLine, judgement: &Judgement) -> Vec<Figure> {
    let thread = match line.part {
        crate::part::Kind::Washer => format!("for {}", line.thread),
        _ if line.part.is_nut() => line.thread.to_string(),
        _ => format!("{} {}", line.thread, bolt_class(line)),
    };
    let mut figures = vec![
        Figure::words("Part", capital(line.part.name())),
        Figure::words("Thread", thread).source(line.thread.source()),
    ];
    if let Some(length) = line.length {
        let inch = !line.thread.is_metric();
        let shown = if inch { length.show(&unit::INCH, 3) } else { length.show(&unit::MM, 1) };
        figures.push(Figure::one("l", "Length", shown));
    }
    figures.push(Figure::words("Steel", steel(line)));
    if let Some(piece) = judgement.piece {
        let lot = piece.kg() * f64::from(line.quantity);
        let pieces = Shown::pieces(f64::from(line.quantity));
        figures.push(Figure::one("", "One piece", piece.show(&unit::G, 1)));
        figures.push(Figure::words("Lot", format!("{pieces}, {} of steel", weight(lot))));
    }
    figures
}

fn weight(kg: f64) -> Shown {
    Shown { number: kg, unit: &unit::KG, decimals: if kg < 100.0 { 1 } else { 0 } }
}

fn steel(line: &OrderLine) -> String {
    match line.steel.steel {
        Steel::Grade(properties) => capital(properties.grade.name()),
        Steel::Hardness(hardness) => hardness.show(1).to_string(),
        Steel::Tensile(tensile) => tensile.show(&unit::MPA, 0).to_string(),
    }
}

fn process(line: &OrderLine, judgement: &Judgement, judged: &Judged) -> ProcessAssessment {
    let rules = Rc::new(links::hydrogen(line, judged.process));
    let finding = |reason| finding(line, judgement, judged, &rules, reason);
    let findings = judged.reasons.iter().filter_map(finding).collect();
    ProcessAssessment {
        process: judged.process,
        verdict: judged.verdict(),
        figures: judged.offer.as_ref().map_or_else(Vec::new, |offer| offered(line, judgement, judged, offer)),
        findings: Finding::worst_first(findings),
    }
}

/// What the process offers, in figures.
fn offered(line: &OrderLine, judgement: &Judgement, judged: &Judged, offer: &Offer) -> Vec<Figure> {
    let um = |length: Length| length.show(&unit::UM, 0);
    let source = offer.class.single.map(|limit| offer.class.source(&limit));
    let mut coat = Figure::range("t", "Coat", um(offer.min), um(offer.max));
    coat.source = Some(offer.max_source);
    let mut by = Figure::words("By", format!("{} {}", offer.class.document.name, offer.class.name));
    by.source = source;
    let mut figures = vec![coat, by];
    for reason in &judged.reasons {
        match reason {
            Reason::Fits(allowance, _)
            | Reason::BothCoated(allowance, _)
            | Reason::TappedAfter(allowance) => {
                figures.push(Figure::words("Nut", nut(*allowance)));
            }
            Reason::Life(_, min, max) => figures.push(life_figure(line, min, max)),
            _ => {}
        }
    }
    if !judged.reasons.iter().any(|reason| matches!(reason, Reason::Life(..))) {
        let (min, max) = super::judge::years(offer, line.place);
        figures.push(life_figure(line, &min, &max));
    }
    if let Ok(shape) = &judgement.shape {
        figures.push(zinc(line, shape, offer));
    }
    figures
}

fn life_figure(line: &OrderLine, min: &Years, max: &Years) -> Figure {
    let name = format!("Life in {}", line.place.key());
    let (from, to) = (min.min.year(), max.most.map(|most| most.year()));
    let figure = match to {
        Some(to) if to <= TABLE_ENDS => Figure::range("", name, years(from), years(to)),
        _ if from > TABLE_ENDS => Figure::words(name, "over 100 years"),
        Some(_) => Figure::words(name, format!("{} to over 100 years", years(from).digits())),
        None => Figure::words(name, format!("{} or more", years(from))),
    };
    figure.source(Exponent::Straight.source())
}

/// Zinc on the lot, from the least to the greatest coat.
fn zinc(line: &OrderLine, shape: &Shape, offer: &Offer) -> Figure {
    let factor = offer.factor();
    let area = shape.surface();
    let lot = |density: crate::quantity::Density, thickness: Length| {
        weight((density * thickness * area).kg() * f64::from(line.quantity))
    };
    Figure::range("", "Zinc on the lot", lot(factor.min, offer.min), lot(factor.max, offer.max))
        .source(factor.source)
}

fn cautions(processes: &[ProcessAssessment; 3]) -> Vec<Caution> {
    let open =
        |process: Process| processes.iter().any(|p| p.process == process && p.verdict != Verdict::RuledOut);
    let mut cautions = Vec::new();
    if open(Process::HotDip) {
        cautions.extend([Caution::MoltenZinc, Caution::Acid]);
    }
    if open(Process::Mechanical) {
        cautions.extend([Caution::HydrogenGas, Caution::ZincDust]);
    }
    cautions.extend([Caution::DelayedFracture, Caution::NotReused, Caution::StandardFirst]);
    cautions
}

fn notes(line: &OrderLine, judgement: &Judgement) -> Vec<Note> {
    let mut notes = Vec::new();
    if let Err(refusal) = &judgement.shape {
        notes.push(Note::plain(format!("The mass of the part is not given: {refusal}.")));
    }
    notes.push(Note::sourced(
        format!(
            "Years are counted in a straight line, thickness over the first year's loss of zinc in {}; ISO 9224 lets the \
             loss slow down and gives more years.",
            line.place.key()
        ),
        Exponent::Straight.source(),
    ));
    notes.push(Note::plain(
        "Hours of salt spray are no measure of a hot-dip coat: its standards state thickness, and its life is stated in \
         years by place.",
    ));
    notes
}
