//! The zinc of a load as a report.

use super::{Input, Outcome, fields, finding, working::working};
use crate::calculator::{Bar, Caution, Figure, Mark, Note, Picture, Report, Section, run};
use crate::coat::kettle::Reactivity;
use crate::quantity::{Mass, Quantity, Shown, Temperature, unit};
use crate::steel::tempering;
use crate::table::hotdip_process as practice;

pub(super) fn report(input: &Input, outcome: &Outcome) -> Report {
    let findings = finding::of(outcome);
    let barred = findings.iter().any(|finding| finding.mark == Mark::Bar);
    let title = match outcome.baskets {
        Some(baskets) if baskets > 1.0 => format!("Run sheet for {} baskets", Shown::plain(baskets, 0)),
        _ => "Run sheet of the kettle".to_owned(),
    };
    let sections = [bath(outcome), run::section(title, &outcome.run, None), losses()];
    Report {
        verdict: None,
        headline: headline(input, outcome, barred),
        figures: figures(input, outcome),
        sections: outcome.load.section().into_iter().chain(sections).collect(),
        findings,
        working: working(input, outcome),
        cautions: vec![Caution::MoltenZinc, Caution::Acid, Caution::StandardFirst],
        notes: notes(input, outcome),
        picture: picture(input, outcome),
    }
}

/// The part with its dimensions; where its shape is not known, where the zinc goes, as far as that is
/// known.
fn picture(input: &Input, outcome: &Outcome) -> Option<Picture> {
    let drawn = outcome.load.piece.as_ref().and_then(|piece| Some((piece, piece.shape.outline()?)));
    if let Some((piece, outline)) = drawn {
        return Some(Picture::Part {
            title: format!("{} {}, as it goes into the kettle.", piece.designation.thread, piece.kind.name())
                .into(),
            outline,
            unit: if piece.designation.thread.is_metric() { &unit::MM } else { &unit::INCH },
        });
    }
    let zinc = &outcome.zinc;
    let system = input.stated.system();
    let whole = system.weight(zinc.fed);
    let bar = |label: &'static str, mass: Mass, marked| Bar {
        label: label.into(),
        from: Shown { number: 0.0, ..whole },
        to: mass.show(whole.unit, whole.decimals),
        marked,
    };
    input.knows_losses().then(|| Picture::Bars {
        title: "Where the zinc of the kettle goes.".into(),
        bars: vec![
            bar("On the parts", zinc.on_parts, true),
            bar("Dross", zinc.dross, false),
            bar("Ash", zinc.ash, false),
        ],
        line: None,
        logarithmic: false,
    })
}

fn headline(input: &Input, outcome: &Outcome, barred: bool) -> String {
    let system = input.stated.system();
    let mut headline =
        if barred { "Not into the kettle: see the rules below. ".to_owned() } else { String::new() };
    headline.push_str(&format!("The load takes {} of zinc", system.weight(outcome.zinc.on_parts)));
    if let Some(share) = outcome.share {
        headline.push_str(&format!(", {} of its steel", Shown::percent(share, 1)));
    }
    if input.knows_losses() {
        headline
            .push_str(&format!("; with dross and ash the kettle is fed {}", system.weight(outcome.zinc.fed)));
    }
    if let Some(cost) = outcome.cost {
        headline.push_str(&format!(", at a cost of {}", Shown::plain(cost, 2)));
    }
    headline
}

fn figures(input: &Input, outcome: &Outcome) -> Vec<Figure> {
    let zinc = &outcome.zinc;
    let system = input.stated.system();
    let mut figures = outcome.load.figures(&input.stated);
    figures.push(Figure::one("Z", "Zinc on the parts", system.weight(zinc.on_parts)));
    if let Some(share) = outcome.share {
        figures.push(Figure::one("p", "Zinc for the weight of steel", Shown::percent(share, 2)));
    }
    if input.dross.is_some() {
        figures.push(Figure::one("D", "Zinc lost with the dross", system.weight(zinc.dross)));
    }
    if input.ash.is_some() {
        figures.push(Figure::one("E", "Zinc lost with the ash", system.weight(zinc.ash)));
    }
    if input.knows_losses() {
        figures.push(Figure::one("F", "Zinc fed to the kettle", system.weight(zinc.fed)));
    }
    if let Some(cost) = outcome.cost {
        figures.push(Figure::one("K", "Cost, in the currency of your price", Shown::plain(cost, 2)));
    }
    if let Some(baskets) = outcome.baskets {
        figures.push(Figure::one("", "Baskets", Shown::plain(baskets, 0)));
    }
    if let Some((bath, longest)) = outcome.longest_dip {
        let bath = bath.show(if bath == input.bath.quantity { input.bath.unit } else { &unit::CELSIUS }, 0);
        let name = format!("Longest dip that the temper bears, at {bath}");
        // In minutes where they say something: see the words of the sheet.
        let minutes = (1.0..=60.0).contains(&longest.minute());
        let figure = if minutes {
            Figure::one("t_T", name, run::shown_tenths(longest))
        } else {
            Figure::words(name, super::run::longest_words(longest))
        };
        figures.push(figure.source(tempering::PARAMETER_SOURCE));
    }
    figures
}

/// The baths of ISO 10684, the one that is advised first.
fn bath(outcome: &Outcome) -> Section {
    let range = |name, (from, to): (Temperature, Temperature), kind: tempering::Bath| {
        Figure::range("", name, from.show(&unit::CELSIUS, 0), to.show(&unit::CELSIUS, 0))
            .source(kind.source())
    };
    let [normal, high] = fields::BATHS;
    let normal = range("Normal bath", normal, tempering::Bath::Normal);
    let high = range("High-temperature bath", high, tempering::Bath::High);
    let reactive = outcome.reactivity == Reactivity::Reactive;
    let (title, figures) = match (reactive, outcome.high_bath_forbidden) {
        (true, true) => ("Bath: normal only, on a steel that wants another", vec![normal]),
        (true, false) => ("Bath: high temperature", vec![high, normal]),
        (false, true) => ("Bath: normal only", vec![normal]),
        (false, false)
            if matches!(outcome.reactivity, Reactivity::ByItsSilicon | Reactivity::SiliconAlone) =>
        {
            ("Bath: normal, unless what the steel holds asks for another", vec![normal, high])
        }
        (false, false) => ("Bath: normal", vec![normal, high]),
    };
    Section { title: title.into(), figures }
}

/// What is said of the zinc that dross and ash take, of all the zinc used.
fn losses() -> Section {
    let (least, most) = practice::ASH_SHARE.value;
    Section {
        title: "What is said of dross and ash, of all the zinc used".into(),
        figures: vec![
            Figure::one("", "Dross, about", Shown::percent(practice::DROSS_SHARE.value, 0))
                .source(practice::DROSS_SHARE.source),
            Figure::range("", "Ash", Shown::percent(least, 0), Shown::percent(most, 0))
                .source(practice::ASH_SHARE.source),
        ],
    }
}

fn notes(input: &Input, outcome: &Outcome) -> Vec<Note> {
    let mut notes = Vec::new();
    if !input.knows_losses() {
        notes.push(Note::plain(
            "Dross and ash take zinc beside what is on the parts; what is said of them is for all the zinc a plant \
             uses, large work included: enter the shares of your plant.",
        ));
    }
    if let Some(share) = outcome.share {
        let (min, max) = practice::USUAL_SHARE.value;
        let usual = format!("{} to {}", Shown::plain(min * 100.0, 0), Shown::percent(max, 0));
        let less = if share < min { "; large parts under a thin spun coat take less, as here" } else { "" };
        notes.push(Note::sourced(
            format!("Fasteners are remembered to take {usual} of their weight{less}."),
            practice::USUAL_SHARE.source,
        ));
    }
    if matches!(outcome.reactivity, Reactivity::Reactive | Reactivity::Disputed | Reactivity::HighSilicon) {
        notes.push(Note::sourced(
            "How much thicker the coat gets on spun work was not found.",
            practice::THICKNESS_BY_SILICON,
        ));
        notes.push(Note::sourced(
            "Thick, dull coats protect like others, for practical purposes.",
            practice::PROTECT_ALIKE,
        ));
    }
    if input.basket.is_some() && outcome.is_wiped_singly() {
        notes.push(Note::plain(
            "The basket was not used: the pieces are longer, and go into the zinc one by one.",
        ));
    } else if input.basket.is_some() && outcome.baskets.is_none() {
        notes.push(Note::plain("Enter the weight of the load for its baskets."));
    }
    notes.extend(outcome.load.notes(&input.stated));
    notes
}
