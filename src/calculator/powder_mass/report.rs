//! The charge of a barrel as a report.

use super::{Finish, Input, Outcome, WantedCoat, finding, working::working};
use crate::calculator::run::{self, shown_minutes};
use crate::calculator::{Bar, Caution, Figure, Mark, Note, Picture, Report, ScaleMark, Section};
use crate::coat::barrel;
use crate::coat::factor::DEPOSIT;
use crate::quantity::{Length, Quantity, Shown, unit};
use crate::source::{common_practice, document};
use crate::table::mechanical_process as practice;

pub(super) fn report(input: &Input, outcome: &Outcome) -> Report {
    let findings = finding::of(input, outcome);
    let barred = findings.iter().any(|finding| finding.mark == Mark::Bar);
    Report {
        verdict: None,
        headline: headline(input, outcome, barred),
        figures: figures(input, outcome),
        sections: sections(input, outcome),
        findings,
        working: working(input, outcome),
        cautions: vec![Caution::HydrogenGas, Caution::ZincDust, Caution::Acid, Caution::StandardFirst],
        notes: notes(input, outcome),
        picture: Some(additions(input, outcome)),
    }
}

fn headline(input: &Input, outcome: &Outcome, barred: bool) -> String {
    let system = input.stated.system();
    let number = outcome.additions.0;
    let barrels = outcome.barrels();
    let powder = outcome.powder / barrels;
    let into = if barrels > 1.0 { format!(" into each of {barrels:.0} barrels") } else { String::new() };
    let not = if barred { "Not into the barrel: see the rules below. " } else { "" };
    let parts = match number {
        1 => "in one addition".to_owned(),
        _ => format!("in {number} equal additions of {}", system.portion(powder, number)),
    };
    let charge = format!("{not}Weigh in {} of zinc powder{into} {parts}", system.weight(powder));
    let (mean, area) = (system.coat(outcome.mean), system.area(outcome.load.area * (1.0 / barrels)));
    match (outcome.least, input.pass) {
        (Some(_), Some(pass)) => format!(
            "{charge}; it puts a mean of {mean} on {area}, so that {} readings all reach {} in {} loads of 100",
            pass.readings,
            input.least_as_printed(),
            pass.chance.show(&unit::PERCENT, 0).digits(),
        ),
        _ => format!("{charge}; it puts a mean of {mean} on {area}"),
    }
}

impl Input {
    /// The coat asked for, in words.
    pub(super) fn wanted_words(&self) -> String {
        let printed = self.least_as_printed();
        match self.wanted {
            WantedCoat::Class(class, _) => format!("{printed}, {} of ASTM B695", class.name),
            WantedCoat::Least(_) | WantedCoat::Mean(_) => printed.to_string(),
        }
    }

    /// The coat asked for, a class as its standard prints it in the reader's unit.
    fn least_as_printed(&self) -> Shown {
        let system = self.stated.system();
        match self.wanted {
            WantedCoat::Class(_, limit) => limit.column(system.coat_unit()).unwrap_or(limit.printed),
            WantedCoat::Least(coat) | WantedCoat::Mean(coat) => system.coat(coat.quantity),
        }
    }
}

fn figures(input: &Input, outcome: &Outcome) -> Vec<Figure> {
    let charge = &outcome.charge;
    let system = input.stated.system();
    let mut figures = outcome.load.figures(&input.stated);
    if let Some((_, published)) = outcome.least {
        let mut figure = Figure::words("Every place reaches", input.wanted_words());
        figure.source = published;
        figures.push(figure);
        let mut figure =
            Figure::one("c_v", "Scatter of single readings", Shown::percent(outcome.scatter.0, 1));
        figure.source = outcome.scatter.1;
        figures.push(figure);
        if let Some(chance) = outcome.chance_at_least {
            let name = format!("Chance to pass if the mean were {} itself", input.least_as_printed());
            figures.push(
                Figure::one("", name, chance.show(&unit::PERCENT, if chance.one() < 0.1 { 2 } else { 0 }))
                    .source(barrel::target::SUM),
            );
        }
        if let Some(pass) = input.pass {
            figures.push(Figure::one(
                "p_lot",
                "Chance to pass as charged",
                pass.chance.show(&unit::PERCENT, 1),
            ));
        }
    }
    if let Some(earlier) = outcome.earlier {
        let name = format!("Mean of the earlier load, {} readings", earlier.readings);
        figures.push(Figure::one("t_m", name, system.coat(earlier.mean)));
    }
    let (number, rule) = outcome.additions;
    let mut additions = Figure::one("N", "Equal additions", Shown::plain(f64::from(number), 0));
    additions.source = rule;
    let portion = system.portion(outcome.powder, number);
    let range = outcome.powder_range.map(|(light, heavy)| {
        let name = "Zinc powder over the published densities of the deposit";
        Figure::range("", name, system.weight(light), system.weight(heavy)).source(DEPOSIT.source_max)
    });
    figures.extend([
        Figure::one("t_Zn", "Mean coat charged for", system.coat(outcome.mean)),
        Figure::one("Z", "Zinc on the parts", system.weight(charge.deposit)),
        Figure::one("W", "Zinc powder for that coat", system.weight(charge.powder)),
    ]);
    if let Some(correction) = outcome.correction {
        let more = outcome.powder - charge.powder;
        let name =
            if correction < 1.0 { "Leave out, by the earlier load" } else { "Add, by the earlier load" };
        figures.push(Figure::one("", name, system.weight(more.abs())));
        figures.push(Figure::one("W_q", "Zinc powder to weigh in", system.weight(outcome.powder)));
    }
    let in_each = match outcome.barrels() {
        barrels if barrels > 1.0 => "Zinc powder in each addition, all barrels together",
        _ => "Zinc powder in each addition",
    };
    figures.extend([additions, Figure::one("w", in_each, portion)]);
    figures.extend(range);
    figures.extend([
        Figure::one("C", "Copper of the flash", system.weight(charge.copper)),
        Figure::one("S", "as copper sulfate pentahydrate", system.weight(charge.copper_sulfate)),
    ]);
    if let Some((parts, beads)) = outcome.bulk {
        figures.push(Figure::one("V_p", "Heap of parts", system.heap(parts)));
        let mut figure = Figure::one("V_b", "Glass beads, by volume", system.heap(beads));
        figure.source = outcome.bead_ratio.1;
        figures.push(figure);
        let mass = barrel::bead_mass(beads);
        figures.push(Figure::one("M_b", "Glass beads, about", system.weight(mass)));
        if let Some(parts) = outcome.load.mass {
            let ratio = Shown::plain(mass / parts, 2);
            figures.push(Figure::one("", "Beads to parts, by weight about", ratio));
        }
    }
    if let Some((fewest, most)) = outcome.loads {
        figures.push(loads_figure(fewest, most));
    }
    // What is kept out of the barrel turns for no time.
    if outcome.takes.second() > 0.0 {
        figures.push(Figure::one("", "The barrel turns for about", shown_minutes(outcome.takes)));
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
    let barrels = outcome.barrels();
    let title = if barrels > 1.0 {
        format!("Run sheet for one of {} equal barrel loads", Shown::plain(barrels, 0))
    } else {
        "Run sheet of the barrel".to_owned()
    };
    let mut sections = vec![run::section(title, &outcome.run, input.plan.start), counts()];
    let system = input.stated.system();
    let after = |(at, coat): (usize, &Length)| {
        Figure::one("", format!("after addition {}", at + 1), system.coat(*coat))
    };
    sections.push(Section {
        title: "Mean coat after each addition".into(),
        figures: outcome.coats.iter().enumerate().map(after).collect(),
    });
    sections.extend(outcome.load.section());
    sections
}

/// How many additions, by what is remembered and by what is done.
fn counts() -> Section {
    let [thin, thick] = practice::ADDITIONS.value;
    let range = |name: String, (least, most): (f64, f64)| {
        Figure::range("", name, Shown::plain(least, 0), Shown::plain(most, 0))
            .source(practice::ADDITIONS.source)
    };
    let coats = |from: f64, to: f64| format!("for {from} to {to} µm");
    let (from, to, least, most) = thin;
    let (thick_from, thick_to, thick_least, thick_most) = thick;
    Section {
        title: "How many additions".into(),
        figures: vec![
            range(coats(from, to), (least, most)),
            range(coats(thick_from, thick_to), (thick_least, thick_most)),
            Figure::one(
                "",
                "for a usual thick coat, about",
                Shown::plain(practice::USUAL_ADDITIONS.value, 0),
            )
            .source(practice::USUAL_ADDITIONS.source),
        ],
    }
}

fn notes(input: &Input, outcome: &Outcome) -> Vec<Note> {
    let mut notes = vec![
        Note::sourced(
            "The thickness follows the powder weighed in, and not the time in the barrel.",
            common_practice("thickness is set by the mass of powder"),
        ),
        Note::sourced(
            "The copper flash goes on before the zinc; no thickness is required of it, and the one used here \
             is an assumption unless you entered your own.",
            practice::COPPER_SOURCE,
        ),
    ];
    if outcome.least.is_some() && outcome.scatter.1.is_some() {
        notes.push(Note::sourced(
            "How far readings scatter in your shop is not known here: enter three readings or more, not all alike, on \
             an earlier load like this one, and less or more is weighed in.",
            barrel::target::USUAL_SCATTER.source,
        ));
    }
    if outcome.bulk.is_some() {
        notes.push(Note::sourced(
            format!(
                "Descriptions differ on beads: {} to 1 for a thin coat by volume, {} to 1 for a thick one without saying \
                 of what, taken by volume here.",
                practice::BEADS_TO_PARTS.value,
                practice::BEADS_TO_PARTS_THICK.value,
            ),
            practice::BEADS_TO_PARTS_THICK.source,
        ));
        notes.push(Note::sourced(
            format!(
                "By weight: {} to 1, more for heavy parts and thick coats.",
                practice::BEADS_TO_PARTS_WEIGHT.value
            ),
            practice::BEADS_TO_PARTS_WEIGHT.source,
        ));
        notes.push(Note::sourced(
            format!(
                "By weight {} to 1 in a load that is printed: 2200 lb of beads with 2000 lb of parts in 20 ft³.",
                practice::BEADS_IN_THE_LOAD.value
            ),
            practice::BEADS_IN_THE_LOAD.source,
        ));
    } else {
        notes.push(Note::plain("Enter the weight of the load for its beads and barrel loads."));
    }
    if input.plan.patch && input.plan.finish == Finish::Hexavalent {
        notes.push(Note::sourced(
            "The hexavalent chromate that was asked for is not used: under a sprayed patch goes a trivalent one.",
            practice::PATCH,
        ));
    }
    if outcome.earlier.is_some_and(|earlier| earlier.scatter.is_some()) && input.charged.is_none() {
        notes.push(Note::plain(
            "The earlier readings give the scatter only: enter the mean that load was charged for to correct this one.",
        ));
    }
    let (short, long) = practice::CYCLE.value;
    notes.push(Note::sourced(
        format!(
            "A plating cycle is said to take {} to {}, the whole process about {}; the times of thick coats were not \
             found.",
            shown_minutes(short).digits(),
            shown_minutes(long),
            shown_minutes(practice::WHOLE.value)
        ),
        practice::CYCLE.source,
    ));
    notes.push(Note::sourced(
        "The times of the tin salt, and what the promoter, the starter and the acid weigh, were not found in numbers.",
        document::TRADE.memory("doses of the chemistry"),
    ));
    notes.extend(outcome.load.notes(&input.stated));
    notes
}

/// The coat grows by the same step with every addition.
fn additions(input: &Input, outcome: &Outcome) -> Picture {
    let system = input.stated.system();
    let zero = Length::from_um(0.0);
    let before = std::iter::once(&zero).chain(&outcome.coats);
    let unit = system.coat(outcome.mean);
    let shown = |coat: Length| Shown { decimals: unit.decimals, ..system.coat(coat) };
    let bars = before
        .zip(&outcome.coats)
        .enumerate()
        .map(|(at, (from, to))| Bar {
            label: format!("addition {}", at + 1).into(),
            from: shown(*from),
            to: shown(*to),
            marked: at + 1 == outcome.coats.len(),
        })
        .collect();
    let line = match outcome.least {
        Some((least, _)) => ScaleMark { label: "least of every place".into(), at: shown(least) },
        None => ScaleMark { label: "coat wanted".into(), at: shown(outcome.mean) },
    };
    Picture::Bars {
        title: format!(
            "The coat grows by {} of powder at a time.",
            system.portion(outcome.powder, outcome.additions.0)
        )
        .into(),
        bars,
        line: Some(line),
        logarithmic: false,
    }
}
