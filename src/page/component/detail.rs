//! Everything behind an answer. A result that no longer belongs to the inputs is not shown.

use yew::prelude::*;

use super::figure::Figures;
use super::finding::rules;
use super::found::Found;
use super::note::{cautions, notes};
use super::picture::PictureBlock;
use super::process::Process;
use super::section::sections;
use super::source::Sources;
use super::step::WorkingBlock;
use crate::calculator::{Figure, Picture, Report};
use crate::order::Assessment;

/// What the detail needs to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What was found.
    pub found: Found,
}

/// Everything behind an answer.
#[component]
pub fn Detail(props: &Props) -> Html {
    let inside = match &props.found {
        Found::Report(report) => of_report(report),
        Found::Assessment(assessment) => of_order(assessment),
        Found::Problems(_) | Found::Nothing => Html::default(),
    };
    html! { <div class="detail">{ inside }</div> }
}

fn of_report(report: &Report) -> Html {
    html! {
        <>
            <Figures figures={report.figures.clone()} />
            { for report.picture.iter().map(picture) }
            { rules(&report.findings) }
            { sections(&report.sections) }
            <WorkingBlock working={report.working.clone()} answer={answered(report)} />
            { notes(&report.notes) }
            { cautions(&report.cautions) }
            <Sources sources={report.sources()} />
        </>
    }
}

fn of_order(assessment: &Assessment) -> Html {
    html! {
        <>
            <div class="processes">
                { for assessment.processes.iter().map(|process| html! { <Process process={process.clone()} /> }) }
            </div>
            <div class="pictures">{ for assessment.pictures.iter().map(picture) }</div>
            if !assessment.figures.is_empty() {
                <section class="block" aria-labelledby="understood">
                    <h2 id="understood">{ "The order line as understood" }</h2>
                    <Figures figures={assessment.figures.clone()} />
                </section>
            }
            { notes(&assessment.notes) }
            { cautions(&assessment.cautions) }
            <Sources sources={assessment.sources()} />
        </>
    }
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
