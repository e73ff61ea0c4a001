//! The outcome arranged into a report.

use super::working::working;
use super::{Answer, Input, Method, Outcome};
use crate::calculator::thread_fields::{self, Ruler, thickness};
use crate::calculator::{Bar, Caution, Figure, Note, Picture, Report, ScaleMark, Section, Verdict};
use crate::quantity::{Length, Quantity, Shown, unit};
use crate::source::{Source, document};
use crate::table::iso_4042_threads;
use crate::thread::coat_room;
use crate::thread::fit::GROWTH;

mod finding;

/// The report.
pub(super) fn report(input: &Input, outcome: &Outcome) -> Report {
    let (said, findings) = finding::all(input, outcome);
    Report {
        verdict: Some(Verdict::of(&findings)),
        headline: thread_fields::not_like_this(&findings).unwrap_or(said),
        figures: figures(input, outcome),
        sections: vec![tried(input, outcome)],
        findings,
        working: working(input, outcome),
        cautions: vec![Caution::StandardFirst],
        notes: notes(input),
        picture: Some(picture(input, outcome)),
    }
}

pub(super) fn rule_source(input: &Input) -> Source {
    match input.rule {
        Method::Corner { .. } => GROWTH,
        Method::Iso4042(_) => iso_4042_threads::DEVIATION,
        Method::Quarter => coat_room::quarter_source(input.thread),
    }
}

fn figures(input: &Input, outcome: &Outcome) -> Vec<Figure> {
    let ruler = Ruler::of(input.thread);
    let mut figures = Vec::new();
    match outcome.first {
        Some(Answer { pair, thickest, source }) => {
            figures.push(Figure::words("Bolt", format!("{} before the coat", pair.bolt)));
            figures.push(Figure::words("Nut", pair.nut.to_string()));
            figures.push(
                Figure::one("t_max", "Takes up to", self::thickness(thickest, input.coat_unit))
                    .source(source),
            );
        }
        None => figures.push(Figure::words("Bolt and nut", "none of the classes tried takes the coat")),
    }
    if let Method::Iso4042(column) = input.rule {
        let deviation = coat_room::iso_4042_deviation(input.coat, column);
        figures.push(
            Figure::one("es", "Deviation that the coat asks for", deviation.show(&unit::UM, 0))
                .source(iso_4042_threads::DEVIATION),
        );
    }
    figures.push(Figure::one(
        "A",
        "Allowance on a standard nut with which a usual bolt takes it",
        ruler.size(outcome.allowance),
    ));
    figures
}

fn tried(input: &Input, outcome: &Outcome) -> Section {
    let figures = outcome.answers.iter().flatten().map(|answer| {
        let takes = if input.coat.mm() <= answer.thickest.mm() + 1e-9 { "takes it" } else { "too tight" };
        Figure::one(
            "",
            format!("Bolt {} in nut {}, {takes}; at most", answer.pair.bolt, answer.pair.nut),
            thickness(answer.thickest, input.coat_unit),
        )
        .source(answer.source)
    });
    Section { title: "Pairs tried, the nearest to stock first".into(), figures: figures.collect() }
}

fn notes(input: &Input) -> Vec<Note> {
    let mut notes = vec![Note::sourced(
        "A coat within a quarter of the bolt's allowance still passes a GO gauge of basic size (6h, 3A).",
        coat_room::quarter_source(input.thread),
    )];
    notes.push(Note::plain(
        "How high the nut is, or how deep the bolt engages, changes nothing of which coat fits. What the thread that is \
         left then carries is another question: “thread-strength” answers it, for a nut of your own height or an \
         engagement as well.",
    ));
    match input.rule {
        Method::Iso4042(_) => notes.push(Note::sourced(
            "Read for pitches up to 1.75 mm; beyond, the rule of the table is applied. Longer than 15 diameters \
             the thickness is to be agreed.",
            document::ISO_4042_1999.read("Table 2"),
        )),
        Method::Corner { .. } => notes.push(Note::sourced(
            "A nut for a hot-dip bolt is coated as a blank and tapped afterwards; its bare thread is protected \
             by the zinc of the bolt.",
            document::AS_NZS_1214.read("5.7"),
        )),
        Method::Quarter => {}
    }
    notes
}

fn picture(input: &Input, outcome: &Outcome) -> Picture {
    let shown = |length: Length| thickness(length, input.coat_unit);
    let bar = |answer: &Answer| Bar {
        label: format!("{} in {}", answer.pair.bolt, answer.pair.nut).into(),
        from: Shown { number: 0.0, ..shown(answer.thickest) },
        to: shown(answer.thickest),
        marked: outcome.first == Some(*answer),
    };
    Picture::Bars {
        title: format!("The thickest coat that each pair of {} takes.", input.thread).into(),
        bars: outcome.answers.iter().flatten().map(bar).collect(),
        line: Some(ScaleMark { label: "Coat wanted".into(), at: shown(input.coat) }),
        logarithmic: false,
    }
}
