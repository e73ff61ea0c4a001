//! The judgement in words and figures, with its sources and the calculator behind each.

use std::rc::Rc;

use super::answer::answer;
use super::demand::Demand;
use super::judge::{Item, Judged, Judgement};
use super::remedy::remedy;
use super::threads::{bolt_class, is_metric, size_without_thread};
use super::told::Reason;
use super::{Assessment, Mate, OrderLine, ProcessAssessment, Standing, picture};
use crate::calculator::service_life::years_figure;
use crate::calculator::{Caution, Figure, Finding, Link, Note, Verdict, behind};
use crate::coat::Process;
use crate::part::{self, Shape};
use crate::quantity::{Area, Length, Mass, Quantity, Shown, Time, unit};
use crate::rule::{Case, Key, Offer, Topic};
use crate::sentence::{capital, capitalized, worded};
use crate::site::Category;
use crate::site::life::{self, Exponent, Years};
use crate::sorting::sort_by_key;
use crate::steel::{State, Steel};
use crate::thread::pair::{Found, Room};
use crate::working::Mark;

/// Arranges a judgement.
pub fn arrange(line: &OrderLine, judgement: &Judgement) -> Assessment {
    let processes = judgement.processes.each_ref().map(|judged| process(line, judgement, judged));
    let answer = answer(line, judgement);
    Assessment {
        headline: headline(&processes),
        figures: figures(line, judgement),
        cautions: cautions(&processes, judgement),
        notes: notes(line, judgement),
        pictures: picture::of(line, judgement, answer.recommended),
        answer,
        processes,
    }
}

/// What each process is to the order, those that are the same together: what may be ordered first, the best first.
fn headline(processes: &[ProcessAssessment; 3]) -> String {
    let mut standings = processes.each_ref().map(ProcessAssessment::standing);
    sort_by_key(&mut standings, |standing| (standing.verdict, standing.aside.is_some()));
    let mut parts: Vec<String> = Vec::new();
    for standing in standings {
        let same = processes.iter().filter(|process| process.standing() == standing);
        let names: Vec<&str> = same.map(|process| process.process.name()).collect();
        let part = worded(format_args!("{}: {}", standing.words(), names.join(" and ")));
        if !parts.contains(&part) {
            parts.push(part);
        }
    }
    worded(format_args!("{}.", parts.join(". ")))
}

/// The order line as it was understood.
fn figures(line: &OrderLine, judgement: &Judgement) -> Vec<Figure> {
    let mut figures = vec![Figure::words("Part", capital(line.part.name()))];
    if let Some(thread) = line.thread
        && let Some(size) = size_without_thread(line.part, thread)
    {
        figures.push(Figure::words("Size", size));
    } else if let Some(thread) = line.thread {
        let words = match bolt_class(line) {
            _ if line.part.is_washer() => worded(format_args!("for {thread}")),
            Some(class) if line.part.has_mate() && !line.part.is_nut() => {
                worded(format_args!("{thread} {class}"))
            }
            _ => thread.to_string(),
        };
        let words = if line.is_left_hand { words + ", left-hand" } else { words };
        figures.push(Figure::words("Thread", words).source(thread.source()));
    }
    if let Some(length) = line.length {
        let inch = !is_metric(line);
        let shown = if inch { length.show(&unit::INCH, 3) } else { length.show(&unit::MM, 1) };
        figures.push(Figure::one("l", "Length", shown));
    }
    figures.extend(line.steel.map(|state| Figure::words("Steel", steel(state, line.is_steel_least))));
    let piece = judgement.main().and_then(Item::mass);
    if let Some(piece) = piece {
        figures.push(Figure::one("", "One piece", piece.show(&unit::G, 1)));
    }
    if let Some(quantity) = line.quantity {
        let pieces = Shown::pieces(f64::from(quantity));
        let is_set = judgement.items.len() > 1;
        let of_what = match judgement.mass() {
            Some(_) if is_set => "of steel in all parts of the set",
            None if is_set => "of steel without the parts beside it",
            _ => "of steel",
        };
        let lot = judgement.mass().or(piece).map(|mass| weight(mass.kg() * f64::from(quantity)));
        let lot =
            lot.map_or_else(|| pieces.to_string(), |lot| worded(format_args!("{pieces}, {lot} {of_what}")));
        figures.push(Figure::words("Lot", lot));
    }
    figures.extend(line.nut.map(|nut| {
        let asked = line.asked.and_then(|asked| asked.process());
        let proposed = super::set::nut(line, judgement.is_nut_tapped_over(asked)).map(|nut| nut.grade.name());
        Figure::words("With", mate(nut, "nut", proposed))
    }));
    figures.extend(line.washer.map(|washer| {
        let proposed = super::set::washer(line).map(|steel| match steel {
            Steel::Grade(properties) => properties.grade.name().to_owned(),
            Steel::Hardness(hardness) => worded(format_args!("plain washer, {}", hardness.show(0))),
            Steel::Tensile(tensile) => tensile.show(&unit::MPA, 0).to_string(),
        });
        Figure::words("With", mate(washer, "washer", proposed.as_deref()))
    }));
    figures
}

/// A weight of so many kilograms as it is shown: in grams below one.
pub fn weight(kg: f64) -> Shown {
    if kg < 1.0 {
        return Shown { number: kg * 1000.0, unit: &unit::G, decimals: if kg < 0.1 { 1 } else { 0 } };
    }
    Shown { number: kg, unit: &unit::KG, decimals: if kg < 100.0 { 1 } else { 0 } }
}

/// `2 × ASTM A194 grade 2H nut`; without a grade the one that the standards ask for, by name.
fn mate(mate: Mate, what: &str, proposed: Option<&str>) -> String {
    let name = match (mate.grade, proposed) {
        (Some(grade), _) => grade.name().to_owned(),
        _ if mate.hardness.is_some() => worded(format_args!(
            "{what} of {}{}",
            if mate.is_hardness_least { "at least " } else { "" },
            mate.hardness.map_or_else(String::new, |it| it.show(1).to_string())
        )),
        _ if mate.kind.is_some() => mate.kind.map_or("", part::Kind::name).to_owned(),
        (None, Some(proposed)) => {
            worded(format_args!("{proposed} (proposed: the order names no grade of the {what})"))
        }
        (None, None) => worded(format_args!("the {what} that the standards ask for")),
    };
    let class = mate.class.map_or_else(String::new, |class| worded(format_args!(", {class}")));
    worded(format_args!("{} × {name}{class}", mate.per_set))
}

fn steel(state: State, is_least: bool) -> String {
    let known = match state.steel {
        Steel::Grade(properties) => return capital(properties.grade.name()),
        Steel::Hardness(hardness) => hardness.show(1),
        Steel::Tensile(tensile) => tensile.show(&unit::MPA, 0),
    };
    if is_least { worded(format_args!("at least {known}")) } else { known.to_string() }
}

fn process(line: &OrderLine, judgement: &Judgement, judged: &Judged) -> ProcessAssessment {
    let mut opened = Opened::new();
    let out = judged.verdict() == Verdict::RuledOut;
    let (mut findings, mut folded, mut barred) = (Vec::new(), Vec::new(), Vec::new());
    for demand in judgement.demands(judged) {
        let Some(finding) = finding(judgement, judged, demand, &mut opened) else { continue };
        let behind = reasons(judgement, judged, demand, &finding);
        // Nothing that is asked of a process helps where it is ruled out.
        let counts = if out { is_first_bar(demand, &mut barred) } else { demand.mark > Mark::Note };
        if counts {
            findings.push(finding)
        } else {
            folded.push(finding)
        }
        folded.extend(behind);
    }
    let remedy = if out { remedy(line, judgement, judged) } else { None };
    let Standing { verdict, aside } = Standing::of(line, judged);
    ProcessAssessment {
        process: judged.process,
        verdict,
        aside,
        figures: judged.offer.as_ref().map_or_else(Vec::new, |offer| offered(line, judgement, judged, offer)),
        change: remedy.map(|change| sentence(change.to_owned())),
        findings,
        folded,
    }
}

/// Whether this rules out for a reason that was not told yet: one of a kind is enough.
fn is_first_bar(demand: &Demand, barred: &mut Vec<Topic>) -> bool {
    let topic = demand.rulings.first().map(|(_, ruling)| ruling.rule.topic);
    let Some(topic) = topic.filter(|topic| demand.mark == Mark::Bar && !barred.contains(topic)) else {
        return false;
    };
    barred.push(topic);
    true
}

/// Why a thing is asked for, as notes that open what it opens.
fn reasons(judgement: &Judgement, judged: &Judged, demand: &Demand, told: &Finding) -> Vec<Finding> {
    let note = |Reason { place, text, source }: Reason| {
        let mut note = Finding::new(Mark::Note, of_part(judgement, place, text), source);
        note.opens.clone_from(&told.opens);
        note
    };
    demand.reasons(judgement, judged).into_iter().map(note).collect()
}

/// A sentence, begun with the part of a set that it speaks of, if that is not the part that is ordered.
fn of_part(judgement: &Judgement, place: usize, text: String) -> String {
    sentence(match judgement.items.get(place) {
        Some(item) if place > 0 => worded(format_args!("{}: {text}", item.part.kind.name())),
        _ => text,
    })
}

/// The links made so far, by part and topic.
type Opened = Vec<((usize, Topic), Option<Rc<Link>>)>;

/// A demand as a finding; the rules of one topic share one link.
fn finding(judgement: &Judgement, judged: &Judged, demand: &Demand, opened: &mut Opened) -> Option<Finding> {
    let (place, ruling) = demand.rulings.iter().max_by_key(|(_, ruling)| ruling.mark)?;
    let key = (*place, ruling.rule.topic);
    let link = match opened.iter().find(|(of, _)| *of == key) {
        Some((_, link)) => link.clone(),
        None => {
            let case: Case<'_> = judgement.case(judged, *place)?;
            let link = behind(&case, key.1).map(Rc::new);
            opened.push((key, link.clone()));
            link
        }
    };
    let (source, also) = demand.sources(judgement, judged)?;
    let text = demand.text(judgement, judged);
    let text = if demand.rulings.len() == 1 { of_part(judgement, *place, text) } else { sentence(text) };
    let mut finding = Finding::new(demand.mark, text, source);
    finding.also = also;
    Some(match link {
        Some(link) => finding.opens(link),
        None => finding,
    })
}

/// What the process offers, in figures.
fn offered(line: &OrderLine, judgement: &Judgement, judged: &Judged, offer: &Offer) -> Vec<Figure> {
    let um = |length: Length| length.show(&unit::UM, 0);
    let source = offer.class.single.map(|limit| offer.class.source(&limit));
    let mut coat = Figure::range("t", "Coat", um(offer.min), um(offer.max));
    coat.source = Some(offer.max_source);
    let mut by =
        Figure::words("By", worded(format_args!("{} {}", offer.class.document.name, offer.class.name)));
    by.source = source;
    let mut figures = vec![coat, by];
    // Any other room goes on the order, and is told there.
    if judged
        .fit
        .as_ref()
        .is_some_and(|fit| matches!(fit, Found::Takes(mated) if mated.pair.room == Room::Ordered))
    {
        let hole = line.goes_into_a_tapped_hole();
        figures.push(Figure::words(
            "Threads",
            if hole { "Bolt and hole as ordered" } else { "Bolt and nut as ordered" },
        ));
    }
    // Without a place, the life in each; outside air, in none.
    let places = match line.place {
        Some(place) => place.each().collect(),
        None if line.surroundings.is_in_air() => Category::ALL.to_vec(),
        None => Vec::new(),
    };
    // Of a part that touches another metal the years are those without the contact.
    let name = if judged.is_life_insulated() { "Life insulated, in" } else { "Life in" };
    figures.extend(places.into_iter().map(|place| life_figure(name, place, offer, line.years)));
    figures.extend(zinc(line, judgement, offer));
    figures
}

fn life_figure(name: &str, place: Category, offer: &Offer, wanted: Option<Time>) -> Figure {
    let of = |thickness| life::range(thickness, place.rates(), Exponent::Straight);
    let years = Years { min: of(offer.min).min, most: of(offer.max).most };
    years_figure(worded(format_args!("{name} {}", place.key())), years, wanted)
        .source(Exponent::Straight.source())
}

/// Zinc on the lot, or on one piece or set where the quantity is not said.
fn zinc(line: &OrderLine, judgement: &Judgement, offer: &Offer) -> Option<Figure> {
    let (min, max) = zinc_masses(line, judgement, offer)?;
    let (min, max) = (weight(min.kg()), weight(max.kg()));
    let name = match (line.quantity.is_some(), judgement.items.len()) {
        (true, _) => "Zinc on the lot",
        (false, 1) => "Zinc on one piece",
        (false, _) => "Zinc on one set",
    };
    // Both in the unit of the larger.
    let min = if min.unit == max.unit {
        min
    } else {
        Shown { number: min.number / 1000.0, unit: max.unit, decimals: 2 }
    };
    Some(Figure::range("", name, min, max).source(offer.factor().source))
}

/// Zinc on the lot, all parts of the set together, from the minimum to the maximum coat; on one piece or
/// set where the quantity is not said. None where a shape is not known.
pub(super) fn zinc_masses(line: &OrderLine, judgement: &Judgement, offer: &Offer) -> Option<(Mass, Mass)> {
    let factor = offer.factor();
    let area = coated_area(line, judgement, offer.class.process)?;
    Some((factor.min * offer.min * area, factor.max * offer.max * area))
}

/// The area of the lot that a process coats. Nuts go into the kettle as blanks, and are tapped afterwards.
pub(super) fn coated_area(line: &OrderLine, judgement: &Judgement, process: Process) -> Option<Area> {
    area(line, judgement, |shape| match process {
        Process::HotDip => shape.blank().surface(),
        Process::Mechanical | Process::Electroplated => shape.surface(),
    })
}

/// The area of the lot, all parts of the set together, by what counts of each shape; of one set where the
/// quantity is not said. None where a shape is not known.
pub(super) fn area(line: &OrderLine, judgement: &Judgement, of: impl Fn(&Shape) -> Area) -> Option<Area> {
    let of_set = judgement.items.iter().try_fold(Area::from_mm2(0.0), |area, item| {
        Some(area + of(&item.shape()?.ok()?) * f64::from(item.per_set))
    })?;
    Some(of_set * f64::from(line.quantity.unwrap_or(1)))
}

fn cautions(processes: &[ProcessAssessment; 3], judgement: &Judgement) -> Vec<Caution> {
    let open =
        |process: Process| processes.iter().any(|p| p.process == process && p.verdict != Verdict::RuledOut);
    let mut cautions = Vec::new();
    if open(Process::HotDip) {
        cautions.extend([Caution::MoltenZinc, Caution::Acid]);
    }
    if open(Process::Mechanical) {
        cautions.extend([Caution::HydrogenGas, Caution::ZincDust]);
    }
    cautions.push(Caution::DelayedFracture);
    if judgement.processes.iter().any(|judged| judged.ruling(Key::StructuralReuse).is_some()) {
        cautions.push(Caution::NotReused);
    }
    cautions.push(Caution::StandardFirst);
    cautions
}

fn notes(line: &OrderLine, judgement: &Judgement) -> Vec<Note> {
    let mut notes = Vec::new();
    match judgement.main().map(Item::shape) {
        Some(Some(Err(refusal))) => {
            notes.push(Note::plain(worded(format_args!("The mass of the part is not given: {refusal}."))));
        }
        Some(None) => {
            notes.push(Note::plain("Say the size for the mass of the part and of its zinc.".to_owned()));
        }
        _ => {}
    }
    if line.is_left_hand {
        notes.push(Note::plain("The limits of a left-hand thread are those of a right-hand one; its nuts, taps and gauges are left-hand."));
    }
    let place = line.place.map_or_else(|| "any place".to_owned(), |place| place.to_string());
    notes.push(Note::sourced(
        worded(format_args!(
            "Years are counted in a straight line, thickness over the first year's loss of zinc in {place}; ISO 9224 lets \
             the loss slow down and gives more years.",
        )),
        Exponent::Straight.source(),
    ));
    notes.push(Note::plain(
        "Hours of salt spray are no measure of a hot-dip coat: its standards state thickness, and its life is stated in \
         years by place.",
    ));
    notes
}

/// Ends a sentence, whoever wrote it, and begins it with a capital.
fn sentence(text: String) -> String {
    let mut text = capitalized(text);
    if !text.ends_with(['.', '!', '?']) {
        text.push('.');
    }
    text
}
