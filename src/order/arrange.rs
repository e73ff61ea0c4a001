//! The judgement in words, with its sources, and with the calculator behind each reason.

use std::rc::Rc;

use super::fit::bolt_class;
use super::judge::{Judged, Judgement, Reason};
use super::offer::Offer;
use super::words::{TABLE_ENDS, finding, nut, place, years};
use super::{Assessment, Mate, OrderLine, ProcessAssessment, links};
use crate::calculator::{Caution, Figure, Finding, Note, Verdict};
use crate::coat::Process;
use crate::part::Shape;
use crate::quantity::{Density, Length, Mass, Quantity, Shown, unit};
use crate::sentence::capital;
use crate::site::Category;
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
        _ if !line.part.has_mate() => format!("for {}", line.thread),
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
    figures.extend(steel(line).map(|steel| Figure::words("Steel", steel)));
    if let Some(piece) = judgement.piece {
        figures.push(Figure::one("", "One piece", piece.show(&unit::G, 1)));
    }
    if let Some(quantity) = line.quantity {
        let pieces = Shown::pieces(f64::from(quantity));
        let lot = judgement.piece.map(|piece| weight(piece.kg() * f64::from(quantity)));
        let lot = lot.map_or_else(|| pieces.to_string(), |lot| format!("{pieces}, {lot} of steel"));
        figures.push(Figure::words("Lot", lot));
    }
    figures.extend(line.nut.map(|nut| Figure::words("With", mate(nut, "nut"))));
    figures.extend(line.washer.map(|washer| Figure::words("With", mate(washer, "washer"))));
    figures
}

fn weight(kg: f64) -> Shown {
    Shown { number: kg, unit: &unit::KG, decimals: if kg < 100.0 { 1 } else { 0 } }
}

/// `2 × ASTM A194 grade 2H nut`; without a grade `the nut that the standards ask for`.
fn mate(mate: Mate, what: &str) -> String {
    let name = match mate.grade {
        Some(grade) => grade.name().to_owned(),
        None => format!("the {what} that the standards ask for"),
    };
    let class = mate.class.map_or_else(String::new, |class| format!(", {class}"));
    format!("{} × {name}{class}", mate.per_set)
}

fn steel(line: &OrderLine) -> Option<String> {
    Some(match line.steel?.steel {
        Steel::Grade(properties) => capital(properties.grade.name()),
        Steel::Hardness(hardness) => hardness.show(1).to_string(),
        Steel::Tensile(tensile) => tensile.show(&unit::MPA, 0).to_string(),
    })
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
            Reason::Life(_, min, max) => figures.extend(line.place.map(|place| life_figure(place, min, max))),
            _ => {}
        }
    }
    if !judged.reasons.iter().any(|reason| matches!(reason, Reason::Life(..))) {
        // Without a place, the life in each.
        let places = line.place.map_or_else(|| Category::ALL.to_vec(), |place| vec![place]);
        figures.extend(places.into_iter().map(|place| {
            let (min, max) = super::judge::years(offer, place);
            life_figure(place, &min, &max)
        }));
    }
    if let Ok(shape) = &judgement.shape {
        figures.push(zinc(line, shape, offer));
    }
    figures
}

fn life_figure(place: Category, min: &Years, max: &Years) -> Figure {
    let name = format!("Life in {}", place.key());
    let (from, to) = (min.min.year(), max.most.map(|most| most.year()));
    let figure = match to {
        Some(to) if to <= TABLE_ENDS => Figure::range("", name, years(from), years(to)),
        _ if from > TABLE_ENDS => Figure::words(name, "over 100 years"),
        Some(_) => Figure::words(name, format!("{} to over 100 years", years(from).digits())),
        None => Figure::words(name, format!("{} or more", years(from))),
    };
    figure.source(Exponent::Straight.source())
}

/// Zinc on the lot, or on a piece where no quantity is said, from the least to the greatest coat.
fn zinc(line: &OrderLine, shape: &Shape, offer: &Offer) -> Figure {
    let factor = offer.factor();
    let area = shape.surface();
    let zinc = |density: Density, thickness: Length| density * thickness * area;
    let (least, greatest) = (zinc(factor.min, offer.min), zinc(factor.max, offer.max));
    let figure = match line.quantity {
        Some(quantity) => {
            let lot = |zinc: Mass| weight(zinc.kg() * f64::from(quantity));
            Figure::range("", "Zinc on the lot", lot(least), lot(greatest))
        }
        None => Figure::range("", "Zinc on a piece", least.show(&unit::G, 2), greatest.show(&unit::G, 2)),
    };
    figure.source(factor.source)
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
    if line.place.is_none() {
        notes.push(Note::plain(
            "Say where it will stand: how long the zinc lasts and how thick is enough follow from the place.",
        ));
    }
    notes.push(Note::sourced(
        format!(
            "Years are counted in a straight line, thickness over the first year's loss of zinc in {}; ISO 9224 lets the \
             loss slow down and gives more years.",
            place(line)
        ),
        Exponent::Straight.source(),
    ));
    notes.push(Note::plain(
        "Hours of salt spray are no measure of a hot-dip coat: its standards state thickness, and its life is stated in \
         years by place.",
    ));
    notes
}
