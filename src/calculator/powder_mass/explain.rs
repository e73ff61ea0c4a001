//! The charge of a barrel as a report.

use super::{Input, Outcome, working::working};
use crate::calculator::{Bar, Caution, Figure, Finding, Mark, Note, Picture, Report, ScaleMark, Section};
use crate::coat::barrel;
use crate::coat::factor::DEPOSIT;
use crate::quantity::{Length, Mass, Quantity, Shown, Volume, unit};
use crate::source::{common_practice, document};
use crate::table::mechanical_process as practice;

pub(super) fn report(input: &Input, outcome: &Outcome) -> Report {
    let (charge, number) = (&outcome.charge, outcome.additions.0);
    Report {
        verdict: None,
        headline: format!(
            "Weigh in {} of zinc powder in {number} equal additions of {}; it puts {} on {}",
            weight(charge.powder),
            weight(each(charge.powder, f64::from(number))),
            input.coat.show(&unit::UM, 0),
            outcome.load.area.show(&unit::M2, 2),
        ),
        figures: figures(input, outcome),
        sections: sections(input, outcome),
        findings: findings(input, outcome),
        working: working(input, outcome),
        cautions: vec![Caution::HydrogenGas, Caution::ZincDust, Caution::Acid, Caution::StandardFirst],
        notes: notes(outcome),
        picture: Some(additions(input, outcome)),
    }
}

/// A weight as it is weighed: grams below a kilogram.
fn weight(mass: Mass) -> Shown {
    match mass.kg() {
        kg if kg < 1.0 => mass.show(&unit::G, 0),
        kg if kg < 10.0 => mass.show(&unit::KG, 2),
        _ => mass.show(&unit::KG, 1),
    }
}

pub(super) fn each(mass: Mass, number: f64) -> Mass {
    mass / number
}

fn litres(volume: Volume) -> Shown {
    volume.show(&unit::LITRE, if volume.litre() < 10.0 { 1 } else { 0 })
}

fn figures(input: &Input, outcome: &Outcome) -> Vec<Figure> {
    let charge = &outcome.charge;
    let mut figures = outcome.load.figures();
    let mut coat = Figure::one("t", "Coat wanted", input.coat.show(&unit::UM, 1));
    if let Some((name, source)) = input.class {
        coat.name = format!("Coat wanted, {name}").into();
        coat.source = Some(source);
    }
    let (number, rule) = outcome.additions;
    let mut additions = Figure::one("N", "Equal additions", Shown::plain(f64::from(number), 0));
    additions.source = rule;
    let portion = each(charge.powder, f64::from(number));
    let (light, heavy) = outcome.charge_range;
    figures.extend([
        coat,
        Figure::one("Z", "Zinc on the parts", weight(charge.deposit)),
        Figure::one("W", "Zinc powder to weigh in", weight(charge.powder)),
        additions,
        Figure::one("w", "Zinc powder in each addition", weight(portion)),
        Figure::range(
            "",
            "Zinc powder over the published densities of the deposit",
            light.powder.show(&unit::KG, 2),
            heavy.powder.show(&unit::KG, 2),
        )
        .source(DEPOSIT.source_max),
        Figure::one("C", "Copper of the flash", weight(charge.copper)),
        Figure::one("S", "as copper sulfate pentahydrate", weight(charge.copper_sulfate)),
    ]);
    if let Some((parts, beads)) = outcome.bulk {
        figures.push(Figure::one("V_p", "Heap of parts", litres(parts)));
        figures.push(Figure::one("V_b", "Glass beads, by volume", litres(beads)));
        figures.push(Figure::one("M_b", "Glass beads, about", weight(barrel::bead_mass(beads))));
    }
    if let Some((fewest, most)) = outcome.loads {
        figures.push(loads_figure(fewest, most));
    }
    figures
}

fn loads_figure(fewest: f64, most: f64) -> Figure {
    if fewest == most {
        Figure::one("", "Barrel loads", Shown::plain(fewest, 0))
    } else {
        Figure::range("", "Barrel loads", Shown::plain(fewest, 0), Shown::plain(most, 0))
            .source(practice::WORKING_SHARE.source)
    }
}

fn sections(input: &Input, outcome: &Outcome) -> Vec<Section> {
    let charge = &outcome.charge;
    let mut sections = Vec::new();
    // What one barrel gets; with a range of loads, the most, which never overfills it.
    if let (Some((_, loads)), Some((parts, beads))) = (outcome.loads, outcome.bulk)
        && loads > 1.0
    {
        let volume = |whole: Volume| litres(whole / loads);
        let portion = each(charge.powder, loads * f64::from(outcome.additions.0));
        let mut figures = vec![
            Figure::one("", "Zinc powder", weight(each(charge.powder, loads))),
            Figure::one("", "in each addition", weight(portion)),
            Figure::one("", "Copper sulfate pentahydrate", weight(each(charge.copper_sulfate, loads))),
            Figure::one("", "Parts, by volume", volume(parts)),
            Figure::one("", "Glass beads, by volume", volume(beads)),
        ];
        if let Some(mass) = outcome.load.mass {
            figures.insert(0, Figure::one("", "Parts", weight(each(mass, loads))));
        }
        let title = format!("One of {} equal barrel loads", Shown::plain(loads, 0));
        sections.push(Section { title: title.into(), figures });
    }
    if let Some((_, beads)) = outcome.bulk {
        let figures = practice::BEAD_MIX.value.map(|(share, from, to)| {
            let name = format!("{from} to {to} mm, {}", Shown::percent(share, 0));
            Figure::one("", name, litres(beads * share)).source(practice::BEAD_MIX.source)
        });
        sections
            .push(Section { title: "Mix of the beads, about half large".into(), figures: figures.into() });
    }
    if let Some((slow, fast)) = outcome.turns {
        let rpm = |turns| Shown { number: turns, unit: &unit::TURNS_MINUTE, decimals: 1 };
        let figure = Figure::range("", "Turns of the barrel", rpm(slow), rpm(fast));
        sections.push(Section {
            title: "Running the barrel".into(),
            figures: vec![figure.source(practice::SURFACE_SPEED.source), liquor()],
        });
    } else {
        sections.push(Section { title: "Running the barrel".into(), figures: vec![liquor()] });
    }
    let after = |(at, coat): (usize, &Length)| {
        let coat = coat.show(&unit::UM, 1);
        let coat = if input.coat.um() < 10.0 { Shown { decimals: 2, ..coat } } else { coat };
        Figure::one("", format!("after addition {}", at + 1), coat)
    };
    sections.push(Section {
        title: "Coat after each addition".into(),
        figures: outcome.coats.iter().enumerate().map(after).collect(),
    });
    sections.extend(outcome.load.section());
    sections
}

fn liquor() -> Figure {
    let (cold, warm) = practice::LIQUOR.value;
    Figure::range("", "Liquor", cold.show(&unit::CELSIUS, 0), warm.show(&unit::CELSIUS, 0))
        .source(practice::LIQUOR.source)
}

fn findings(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let mut findings = Vec::new();
    if let Some(piece) = outcome.load.piece {
        let (mass, length) = (piece.shape.mass(), piece.shape.overall_length());
        let (shown, limit) = (weight(mass), practice::HEAVIEST_PIECE.value);
        findings.push(if mass > limit {
            Finding::new(
                Mark::Condition,
                format!(
                    "A piece weighs {shown}, above the {} up to which pieces are not damaged in the barrel: \
                     agree a trial with the plater.",
                    limit.show(&unit::G, 0)
                ),
                practice::HEAVIEST_PIECE.source,
            )
        } else {
            Finding::new(
                Mark::Met,
                format!("A piece weighs {shown}, within about {}.", limit.show(&unit::G, 0)),
                practice::HEAVIEST_PIECE.source,
            )
        });
        if let Some(length) = length.filter(|length| *length > practice::LONGEST_PIECE.value) {
            findings.push(Finding::new(
                Mark::Condition,
                format!(
                    "A piece is {} long; one plater stops at {}. Ask the plater what the barrel takes.",
                    length.show(&unit::MM, 0),
                    practice::LONGEST_PIECE.value.show(&unit::MM, 0)
                ),
                practice::LONGEST_PIECE.source,
            ));
        }
        if piece.kind.is_flat() {
            findings.push(Finding::new(
                Mark::Note,
                "The beads keep flat washers from nesting; thin light ones can still stick together.",
                common_practice("glass beads keep washers and rings apart"),
            ));
        }
    }
    if input.coat > practice::EVEN_UP_TO.value {
        findings.push(Finding::new(
            Mark::Condition,
            format!(
                "Coats are called even up to {}: beyond it have the thickness measured on threads and edges.",
                practice::EVEN_UP_TO.value.show(&unit::UM, 0)
            ),
            practice::EVEN_UP_TO.source,
        ));
    }
    findings
}

fn notes(outcome: &Outcome) -> Vec<Note> {
    let mut notes = vec![
        Note::sourced(
            "The thickness follows the powder weighed in, and not the time in the barrel.",
            common_practice("thickness is set by the mass of powder"),
        ),
        Note::sourced(
            format!(
                "Hold the liquor below pH {} through all additions.",
                Shown::plain(practice::PH.value, 0)
            ),
            practice::PH.source,
        ),
        Note::sourced(
            "The copper flash goes on before the zinc; no thickness is required of it, and the one used here \
             is an assumption unless you entered your own.",
            practice::COPPER_SOURCE,
        ),
        Note::sourced(
            "The small amount of tin salt that goes in with the first zinc, and the promoter with each \
             addition, were not found in numbers: take them from the data sheet of your chemistry.",
            document::TRADE.memory("tin salt with the first zinc, promoter with each addition"),
        ),
    ];
    if outcome.bulk.is_some() {
        notes.push(Note::sourced(
            format!(
                "Descriptions differ on beads: {} to 1 by volume, {} to 1 by volume for thick coats, {} to 1 by \
                 weight.",
                practice::BEADS_TO_PARTS.value,
                practice::BEADS_TO_PARTS_THICK.value,
                practice::BEADS_TO_PARTS_WEIGHT.value
            ),
            practice::BEADS_TO_PARTS_WEIGHT.source,
        ));
    } else {
        notes.push(Note::plain("Enter the weight of the load for its beads and barrel loads."));
    }
    notes.extend(outcome.load.notes());
    notes
}

/// The coat grows by the same step with every addition.
fn additions(input: &Input, outcome: &Outcome) -> Picture {
    let zero = Length::from_um(0.0);
    let before = std::iter::once(&zero).chain(&outcome.coats);
    let decimals = if input.coat.um() < 10.0 { 2 } else { 1 };
    let bars = before
        .zip(&outcome.coats)
        .enumerate()
        .map(|(at, (from, to))| Bar {
            label: format!("addition {}", at + 1).into(),
            from: from.show(&unit::UM, decimals),
            to: to.show(&unit::UM, decimals),
            marked: at + 1 == outcome.coats.len(),
        })
        .collect();
    Picture::Bars {
        title: format!(
            "The coat grows by {} of powder at a time.",
            weight(each(outcome.charge.powder, f64::from(outcome.additions.0)))
        )
        .into(),
        bars,
        line: Some(ScaleMark { label: "coat wanted".into(), at: input.coat.show(&unit::UM, decimals) }),
        logarithmic: false,
    }
}
