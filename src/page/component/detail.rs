//! Everything behind an answer. A result that no longer belongs to the inputs is not shown.

use yew::prelude::*;

use super::found::Found;
use super::note::{cautions, notes};
use super::part::{Part, Piece};
use super::picture::PictureBlock;
use crate::calculator::{Figure, Picture, Report};
use crate::order::Assessment;

/// Everything behind an answer.
pub fn detail(found: &Found) -> Html {
    let inside = match found {
        Found::Report(report) => of_report(report),
        Found::Assessment(assessment) => of_order(assessment),
        Found::Problems(_) | Found::Nothing => Html::default(),
    };
    html! { <div class="detail">{ inside }</div> }
}

fn of_report(report: &Report) -> Html {
    html! {
        <>
            { part(Piece::Figures(report.figures.clone())) }
            { for report.picture.iter().map(picture) }
            { part(Piece::Rules(report.findings.clone())) }
            { part(Piece::Sections(report.sections.clone())) }
            { part(Piece::Working(report.working.clone(), answered(report))) }
            { notes(&report.notes) }
            { cautions(&report.cautions) }
            { part(Piece::Sources(report.sources())) }
        </>
    }
}

fn of_order(assessment: &Assessment) -> Html {
    let processes = assessment.processes.iter().map(|process| part(Piece::Process(process.clone())));
    html! {
        <>
            <div class="processes">{ for processes }</div>
            <div class="pictures">{ for assessment.pictures.iter().map(picture) }</div>
            if !assessment.figures.is_empty() {
                <section class="block" aria-labelledby="understood">
                    <h2 id="understood">{ "The order line as understood" }</h2>
                    { part(Piece::Figures(assessment.figures.clone())) }
                </section>
            }
            { notes(&assessment.notes) }
            { cautions(&assessment.cautions) }
            { part(Piece::Sources(assessment.sources())) }
        </>
    }
}

fn part(piece: Piece) -> Html {
    html! { <Part {piece} /> }
}

fn picture(picture: &Picture) -> Html {
    html! { <PictureBlock picture={picture.clone()} /> }
}

/// The place of the step that gives the answer: the one of the first figure that was computed.
fn answered(report: &Report) -> usize {
    let steps = report.working.steps();
    let of = |figure: &Figure| steps.iter().rposition(|step| step.symbol == figure.symbol);
    report.figures.iter().find_map(of).unwrap_or(steps.len().saturating_sub(1))
}
