//! The outcome arranged into a report.

use super::{Input, Outcome, working};
use crate::calculator::steel_fields;
use crate::calculator::{
    Caution, Figure, Finding, Mark, Note, Picture, Report, ScaleBand, ScaleMark, Section, Verdict, behind,
};
use crate::coat::Process;
use crate::quantity::{Quantity, Scale, unit};
use crate::rule::{self, Case, Key, Ruling, Topic, Under};
use crate::source::Sourced;
use crate::steel::Level;
use crate::steel::tempering;
use crate::table::{astm_b850, iso_2081, other_bakes};

/// The report.
pub(super) fn report(input: &Input, outcome: &Outcome) -> Report {
    let steel = &outcome.steel;
    let mut findings: Vec<Finding> = sorted(outcome, input.process);
    let case = Case { dip: outcome.dip.as_ref(), ..outcome.case(Process::HotDip) };
    if let Some(link) = behind(&case, Topic::Heat).filter(|_| input.process == Process::HotDip) {
        let text = "Hydrogen is one question; whether the bath takes the temper away is another";
        let heat = Finding::new(Mark::Note, text, tempering::NO_RETEST_SOURCE);
        findings.push(heat.opens(link));
    }
    let verdicts = Process::ALL.map(|process| (process, verdict(outcome, process)));
    let headline = format!(
        "{}: {}. {}.",
        input.process.name(),
        verdict(outcome, input.process).words().to_ascii_lowercase(),
        verdicts
            .iter()
            .filter(|(process, _)| *process != input.process)
            .map(|(process, verdict)| format!("{}: {}", process.name(), verdict.words().to_ascii_lowercase()))
            .collect::<Vec<_>>()
            .join("; ")
    );
    let mut sections = vec![Section {
        title: "The three processes".into(),
        figures: verdicts
            .iter()
            .map(|(process, verdict)| Figure::words(process.name(), verdict.words()))
            .collect(),
    }];
    for process in Process::ALL.into_iter().filter(|process| *process != input.process) {
        sections.push(Section {
            title: format!("Rules for {}", process.name().to_ascii_lowercase()).into(),
            figures: sorted(outcome, process)
                .into_iter()
                .map(|finding| Figure::words(finding.mark.words(), finding.text).source(finding.source))
                .collect(),
        });
    }
    if input.process == Process::Electroplated {
        sections.push(other_bakes());
    }
    if let Some(grade) = steel.state.grade() {
        sections.push(Section {
            title: format!("What {} asks for", grade.grade.name()).into(),
            figures: steel_fields::properties(&grade),
        });
    }
    Report {
        verdict: Some(verdict(outcome, input.process)),
        headline,
        figures: figures(input, outcome),
        sections,
        findings,
        working: working::working(outcome),
        cautions: cautions(input.process),
        notes: notes(outcome),
        picture: picture(outcome),
    }
}

fn verdict(outcome: &Outcome, process: Process) -> Verdict {
    Verdict::of_marks(outcome.rulings(process).iter().map(|ruling| ruling.mark))
}

/// The rulings of a process as findings, the worst first.
fn sorted(outcome: &Outcome, process: Process) -> Vec<Finding> {
    let case = outcome.case(process);
    let finding = |ruling: &Ruling| {
        let text = ruling.text(&case);
        let text = match ruling.rule.under.counts_for() {
            Some(orders) => format!("{text} (counts for {orders})"),
            None => text,
        };
        Finding::new(ruling.mark, text, ruling.source(&case))
    };
    Finding::worst_first(outcome.rulings(process).iter().map(finding).collect())
}

fn figures(input: &Input, outcome: &Outcome) -> Vec<Figure> {
    let names = ["Hardest end, Rockwell C", "Hardest end, Vickers", "Hardest end, tensile strength"];
    let mut figures: Vec<Figure> = names
        .into_iter()
        .zip(&outcome.hardest)
        .filter_map(|(name, hardest)| {
            let hardest = hardest.as_ref().ok()?;
            let figure = Figure::one("", name, hardest.level.show());
            let source = hardest.converted.map(|converted| converted.source).or(hardest.printed);
            Some(Figure { source, ..figure })
        })
        .collect();
    // Only a plated part is baked after its zinc.
    if input.process == Process::Electroplated {
        figures.extend(bakes(outcome));
    }
    figures
}

/// The bake of ASTM B850, with the orders that it counts for, and of the earlier ISO 2081.
fn bakes(outcome: &Outcome) -> Vec<Figure> {
    let counts = Under::B633.counts_for().unwrap_or("");
    let name = format!("Bake by ASTM B850, for {counts}");
    let mut figures = Vec::new();
    match &outcome.bake {
        Ok(Some(bake)) => {
            let (low, high) = astm_b850::TEMPERATURE;
            let Sourced { value: within, source } = astm_b850::WITHIN;
            figures.push(
                Figure::range("", name, low.show(&unit::CELSIUS, 0), high.show(&unit::CELSIUS, 0))
                    .source(astm_b850::TABLE_1_SOURCE),
            );
            figures.push(
                Figure::one("", "for at least", bake.row.hours.show(&unit::HOUR, 0))
                    .source(astm_b850::TABLE_1_SOURCE),
            );
            figures.push(Figure::one("", "begun within", within.show(&unit::HOUR, 0)).source(source));
        }
        Ok(None) => figures.push(Figure::words(name, "none").source(astm_b850::TABLE_1_SOURCE)),
        Err(refusal) => figures.push(Figure::words(name, refusal.to_string()).source(refusal.source())),
    }
    if let Some(row) = outcome.bake_by_section {
        let name = "Bake by the earlier ISO 2081, for a section of this diameter";
        figures.push(Figure::one("", name, row.hours.show(&unit::HOUR, 0)).source(iso_2081::BAKE_SOURCE));
    }
    figures
}

/// Bakes of documents that no order here stands under.
fn other_bakes() -> Section {
    let mut figures: Vec<Figure> = iso_2081::BAKE
        .iter()
        .map(|row| {
            let name = format!(
                "Earlier ISO 2081: {} to {}, section to {}",
                row.from.show(&unit::MPA, 0).digits(),
                row.to.show(&unit::MPA, 0),
                row.section_to.show(&unit::MM, 0)
            );
            Figure::one("", name, row.hours.show(&unit::HOUR, 0)).source(iso_2081::BAKE_SOURCE)
        })
        .collect();
    figures.extend(other_bakes::OTHER.iter().map(|row| Figure::words(row.name, row.says).source(row.source)));
    Section { title: "Bakes of other documents, which count for no order here".into(), figures }
}

fn cautions(process: Process) -> Vec<Caution> {
    let own = match process {
        Process::HotDip => Caution::MoltenZinc,
        Process::Mechanical => Caution::HydrogenGas,
        Process::Electroplated => Caution::HydrogenGas,
    };
    vec![Caution::DelayedFracture, Caution::Acid, own, Caution::StandardFirst]
}

fn notes(outcome: &Outcome) -> Vec<Note> {
    let mut notes = vec![
        Note::plain(
            "Each document answers its own question; their limits are not one limit. The steel is judged at the \
             hardest end of its range.",
        ),
        Note::plain(
            "A hot-dip coat keeps hydrogen in: a bake comes after pickling and before the zinc. A plated part is \
             baked after the zinc.",
        ),
        Note::sourced(
            "Baking lowers the risk of embrittlement and does not guarantee freedom from it.",
            astm_b850::TABLE_1_SOURCE,
        ),
        Note::sourced(
            "In the barrel no current runs, so plating itself brings no hydrogen; acid cleaning and the acid \
             tumble remain.",
            rule::rule(Key::MechanicalHydrogen).source,
        ),
    ];
    notes.extend(rule::hydrogen::remarks(&outcome.steel).into_iter().map(Note::plain));
    notes
}

/// The steel on the scale of the limits that are set in Rockwell C.
fn picture(outcome: &Outcome) -> Option<Picture> {
    let [hrc, ..] = &outcome.hardest;
    let Level::Hardness(hardest) = hrc.as_ref().ok()?.level else { return None };
    let state = &outcome.steel.state;
    let min = state.grade().and_then(|grade| grade.limits(Scale::Hrc)?.min).filter(|min| min.number >= 20.0);
    let bands = min
        .map(|min| ScaleBand {
            label: "hardness of the grade".into(),
            from: Level::Hardness(min).show(),
            to: Level::Hardness(hardest).show(),
            verdict: None,
        })
        .into_iter()
        .collect();
    let limit = |key: Key, label: &'static str| {
        Some(ScaleMark { label: label.into(), at: rule::rule(key).limit()?.at.show() })
    };
    let mut marks = vec![ScaleMark { label: "hardest end".into(), at: Level::Hardness(hardest).show() }];
    marks.extend(
        [
            limit(Key::F2329Risk, "ASTM F2329: risk from here"),
            limit(Key::PracticeHotDip, "common practice: no hot-dip above"),
            limit(Key::F2329Ban, "ASTM F2329: no hot-dip from here"),
            limit(Key::PracticeMechanical, "common practice: parts plated in the barrel"),
        ]
        .into_iter()
        .flatten(),
    );
    Some(Picture::Scale {
        title: "The steel beside the limits that are set in Rockwell C.".into(),
        bands,
        marks,
    })
}
