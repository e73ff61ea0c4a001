//! The zinc of a load as a report.

use super::{Input, Outcome};
use crate::calculator::load::SUM;
use crate::calculator::{Caution, Figure, Finding, Mark, Note, Report, Section};
use crate::coat::kettle::{Bath, Wiping};
use crate::quantity::{Mass, Quantity, Shown, Temperature, unit};
use crate::steel::tempering;
use crate::table::hotdip_process as practice;
use crate::working::Working;

pub(super) fn report(input: &Input, outcome: &Outcome) -> Report {
    let mut headline = format!("The load takes {} of zinc", weight(outcome.zinc.on_parts));
    if let Some(share) = outcome.share {
        headline.push_str(&format!(", {} of its steel", Shown::percent(share, 1)));
    }
    if knows_losses(input) {
        headline.push_str(&format!("; with dross and ash the kettle is fed {}", weight(outcome.zinc.fed)));
    }
    if let Some(cost) = outcome.cost {
        headline.push_str(&format!(", at a cost of {}", Shown::plain(cost, 2)));
    }
    Report {
        verdict: None,
        headline,
        figures: figures(input, outcome),
        sections: outcome.load.section().into_iter().chain([bath_section(outcome)]).collect(),
        findings: findings(input, outcome),
        working: working(input, outcome),
        cautions: vec![Caution::MoltenZinc, Caution::Acid, Caution::StandardFirst],
        notes: notes(input, outcome),
        picture: None,
    }
}

fn knows_losses(input: &Input) -> bool {
    input.dross.is_some() || input.ash.is_some()
}

fn weight(mass: Mass) -> Shown {
    mass.show(&unit::KG, if mass.kg() < 10.0 { 2 } else { 1 })
}

fn figures(input: &Input, outcome: &Outcome) -> Vec<Figure> {
    let zinc = &outcome.zinc;
    let mut figures = outcome.load.figures();
    figures.push(Figure::one("Z", "Zinc on the parts", weight(zinc.on_parts)));
    if let Some(share) = outcome.share {
        figures.push(Figure::one("p", "Zinc for the weight of steel", Shown::percent(share, 2)));
    }
    if input.dross.is_some() {
        figures.push(Figure::one("D", "Zinc lost with the dross", weight(zinc.dross)));
    }
    if input.ash.is_some() {
        figures.push(Figure::one("E", "Zinc lost with the ash", weight(zinc.ash)));
    }
    if knows_losses(input) {
        figures.push(Figure::one("F", "Zinc fed to the kettle", weight(zinc.fed)));
    }
    if let Some(cost) = outcome.cost {
        figures.push(Figure::one("K", "Cost, in the currency of your price", Shown::plain(cost, 2)));
    }
    if let Some(baskets) = outcome.baskets {
        figures.push(Figure::one("", "Baskets", Shown::plain(baskets, 0)));
    }
    figures
}

fn bath_section(outcome: &Outcome) -> Section {
    let range = |name, (from, to): (Temperature, Temperature), kind: tempering::Bath| {
        Figure::range("", name, from.show(&unit::CELSIUS, 0), to.show(&unit::CELSIUS, 0))
            .source(kind.source())
    };
    let normal = range("Normal bath", tempering::NORMAL, tempering::Bath::Normal);
    let high = range("High-temperature bath", tempering::HIGH, tempering::Bath::High);
    let (title, figures) = match outcome.bath {
        Bath::Normal | Bath::Unknown => ("Bath: normal", vec![normal, high]),
        Bath::NormalOnly => ("Bath: normal only", vec![normal]),
        Bath::High => ("Bath: high temperature", vec![high, normal]),
        Bath::Neither => ("Bath: normal only, on a steel that wants another", vec![normal]),
    };
    Section { title: title.into(), figures }
}

fn findings(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let mut findings = vec![bath_finding(outcome.bath)];
    if input.grade.and_then(|grade| grade.in_iso_10684()) == Some(false) {
        findings.push(Finding::new(
            Mark::Bar,
            "ISO 10684 takes in bolts up to class 10.9 and nuts up to class 12; this class is outside it.",
            practice::LEAST_THREAD.source,
        ));
    }
    let Some(piece) = outcome.load.piece else { return findings };
    let (min, pitch) = practice::LEAST_THREAD.value;
    if piece.kind.has_mate() && (piece.thread.diameter() < min || piece.thread.pitch() < pitch) {
        findings.push(Finding::new(
            Mark::Condition,
            format!(
                "{} is below M8 or a pitch of 1.25 mm, where ISO 10684 ends: take the barrel or electroplate.",
                piece.thread
            ),
            practice::LEAST_THREAD.source,
        ));
    }
    let overall = piece.shape.overall_length().map(|length| length.show(&unit::MM, 0));
    findings.extend(overall.zip(outcome.wiping).map(|(length, wiping)| match wiping {
        Wiping::Spin => Finding::new(
            Mark::Note,
            format!("Spin: {length} overall goes into the basket. Spin at once out of the zinc, then quench or cool in air."),
            practice::SPIN_AT_ONCE_SOURCE,
        ),
        Wiping::AirRing => Finding::new(
            Mark::Note,
            format!("Air ring: {length} overall is drawn through air jets that blow the thread clear."),
            practice::SPIN_SOURCE,
        ),
        Wiping::TooLong => Finding::new(
            Mark::Condition,
            format!(
                "{length} overall is longer than the {} that are said to be processed: ask the galvanizer.",
                practice::LONGEST_ROD.value.show(&unit::MM, 0)
            ),
            practice::LONGEST_ROD.source,
        ),
    }));
    if piece.kind.is_flat() {
        findings.push(Finding::new(
            Mark::Condition,
            "Flat washers bond to each other: agree with the galvanizer what is accepted.",
            practice::WASHERS_SOURCE,
        ));
    }
    if piece.kind.is_nut() {
        findings.push(Finding::new(
            Mark::Note,
            "Nuts go into the zinc as blanks and are tapped afterwards: their area counts without the thread, and \
             the zinc of the bolt protects it.",
            practice::NUTS_SOURCE,
        ));
    }
    findings
}

fn bath_finding(bath: Bath) -> Finding {
    let (text, source) = match bath {
        Bath::Normal => {
            ("The normal bath does: the steel is outside 0.03 to 0.13 % Si + P.", practice::REACTIVE.source)
        }
        Bath::NormalOnly => (
            "Class 10.9 from M27 stays out of the high-temperature bath.",
            practice::NO_HIGH_BATH_FROM.source,
        ),
        Bath::High => (
            "Ask for the high-temperature bath: between 0.03 and 0.13 % Si + P the normal one grows a thick, dull coat.",
            practice::REACTIVE.source,
        ),
        Bath::Neither => (
            "This steel wants the high-temperature bath, and class 10.9 from M27 may not go into it: take another \
             steel or the barrel.",
            practice::NO_HIGH_BATH_FROM.source,
        ),
        Bath::Unknown => (
            "The normal bath does, unless the steel holds 0.03 to 0.13 % Si + P; enter it from the certificate.",
            practice::REACTIVE.source,
        ),
    };
    Finding::new(bath.mark(), text, source)
}

fn notes(input: &Input, outcome: &Outcome) -> Vec<Note> {
    let mut notes = Vec::new();
    if !knows_losses(input) {
        notes.push(Note::plain(
            "Dross and ash take zinc beside what is on the parts. No published share was found: enter those of \
             your plant.",
        ));
    }
    if let Some(share) = outcome.share {
        let (min, max) = practice::USUAL_SHARE.value;
        let usual = format!("{} to {}", Shown::plain(min * 100.0, 0), Shown::percent(max, 0));
        notes.push(Note::sourced(
            if share < min {
                format!(
                    "Fasteners are remembered to take {usual} of their weight; large parts under a thin spun coat \
                     take less, as here."
                )
            } else {
                format!("Fasteners are remembered to take {usual} of their weight.")
            },
            practice::USUAL_SHARE.source,
        ));
    }
    if input.basket.is_some() && outcome.baskets.is_none() {
        notes.push(Note::plain("Enter the weight of the load for its baskets."));
    }
    notes.extend(outcome.load.notes());
    notes
}

fn working(input: &Input, outcome: &Outcome) -> Working {
    let zinc = &outcome.zinc;
    let mut working = outcome.load.working(&input.stated);
    let on_parts = zinc.on_parts.show(&unit::KG, 3);
    let factor = (input.factor.min, Some(input.factor.source));
    outcome.load.zinc(&mut working, factor, (input.coat, None), on_parts);
    if let (Some(share), Some(mass)) = (outcome.share, outcome.load.mass) {
        working
            .step("zinc for the weight of steel", "p", "100·Z / M", Shown::percent(share, 2), SUM)
            .given("Z", on_parts)
            .given("M", mass.show(&unit::KG, 2));
    }
    let percent = |share: Option<f64>| Shown::percent(share.unwrap_or(0.0), 1);
    if knows_losses(input) {
        working
            .step(
                "zinc fed to the kettle, with what dross and ash take",
                "F",
                "Z·(1 + (d + e) / 100)",
                zinc.fed.show(&unit::KG, 3),
                SUM,
            )
            .given("Z", on_parts)
            .given("d", percent(input.dross))
            .given("e", percent(input.ash));
    }
    if let (Some(cost), Some(price)) = (outcome.cost, input.price) {
        working
            .step("cost at your price of a kilogram", "K", "c·F", Shown::plain(cost, 2), SUM)
            .given("c", Shown { number: price, unit: &super::PER_KG, decimals: 4 })
            .given("F", zinc.fed.show(&unit::KG, 3));
    }
    if let (Some(_), Some(mass), Some(basket)) = (outcome.baskets, outcome.load.mass, input.basket) {
        working
            .step("baskets, before rounding up", "B", "M / M_B", Shown::plain(mass / basket, 2), SUM)
            .given("M", mass.show(&unit::KG, 2))
            .given("M_B", basket.show(&unit::KG, 2));
    }
    working
}
