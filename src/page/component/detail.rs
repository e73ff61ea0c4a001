//! Everything behind an answer, which it follows by one picture of the screen. A result that no longer
//! belongs to the inputs is not shown any longer than that.

use std::rc::Rc;

use yew::prelude::*;

use super::form::given;
use super::found::Found;
use super::note::{cautions, notes};
use super::part::{Part, Piece};
use super::picture::PictureBlock;
use crate::calculator::{Figure, Form, Picture, Report};
use crate::course::lesson::{LESSONS, Lesson};
use crate::order::Assessment;
use crate::page::hook::use_painted;
use crate::page::state::View;

/// What there is to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What was found.
    pub found: Found,
    /// By whom.
    pub view: View,
    /// For what.
    pub form: Rc<Form>,
}

/// Everything behind an answer: much more than the answer, which is not kept waiting for it.
#[component]
pub fn Detail(props: &Props) -> Html {
    let (found, form) = use_painted((props.found.clone(), props.form.clone()));
    html! { <Behind {found} view={props.view} {form} /> }
}

/// The same, set anew only when it follows: what still stands is not compared again at each key.
#[component]
fn Behind(props: &Props) -> Html {
    let Props { found, view, form } = props;
    let inside = match found {
        Found::Report(report) => of_report(report, *view),
        Found::Assessment(assessment) => of_order(assessment),
        Found::Problems(_) | Found::Nothing => Html::default(),
    };
    html! {
        <>
            { given(form) }
            <div class="detail">{ inside }</div>
        </>
    }
}

fn of_report(report: &Report, view: View) -> Html {
    html! {
        <>
            { part(Piece::Figures(report.figures.clone())) }
            { for report.picture.iter().map(picture) }
            { part(Piece::Rules(report.findings.clone())) }
            { part(Piece::Sections(report.sections.clone())) }
            { part(Piece::Working(report.working.clone(), answered(report))) }
            { lessons(view) }
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

/// The lessons that open this calculator.
fn lessons(view: View) -> Html {
    let id = view.calculator().map_or("", |entry| entry.about.id);
    let lessons = LESSONS.iter().filter(|lesson| lesson.opens(id));
    let link = |lesson: &Lesson| {
        html! { <li><a href={format!("#{}", lesson.address())}>{ lesson.title() }</a></li> }
    };
    let links: Vec<Html> = lessons.map(link).collect();
    if links.is_empty() {
        return Html::default();
    }
    html! { <nav class="rooms block" aria-label="Lessons on this"><h2>{ "Lessons on this" }</h2><ul>{ for links }</ul></nav> }
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
