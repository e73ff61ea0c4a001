//! A form, its answer, and how that came about: the order line and every calculator alike.

use std::rc::Rc;

use yew::prelude::*;

use super::answer::{Note, Props as ToldProps};
use super::element::{beside, component, element};
use super::form::{form, given, instead_of_result};
use super::frame::title;
use super::order::written;
use super::part::{Found, Part, parts};
use super::report::headline;
use super::state::{Desk, State, View, WrittenLine};
use super::tools::{Props as ToolsProps, Tools};
use crate::order;

/// What there is to know.
#[derive(Properties)]
pub struct Props {
    /// The order line or a calculator.
    pub view: View,
    /// Its form.
    pub desk: Desk,
    /// The order line as it was written in one line.
    pub line: WrittenLine,
    /// The address of the view.
    pub address: AttrValue,
    /// The way back to the order line, if that is where one came from.
    pub back: Option<AttrValue>,
    /// Takes what is typed.
    pub state: UseReducerDispatcher<State>,
}

impl PartialEq for Props {
    fn eq(&self, other: &Self) -> bool {
        self.view == other.view
            && self.address == other.address
            && self.desk == other.desk
            && self.line == other.line
            && self.back == other.back
    }
}

fn find(view: View, desk: &Desk) -> Found {
    let draft = desk.form.draft();
    let found = match view.calculator() {
        Some(entry) => entry.evaluate(&draft).map(|report| Found::Report(Rc::new(report))),
        None => order::assess(&draft).map(|assessment| Found::Assessment(Rc::new(assessment))),
    };
    found.unwrap_or_else(|problems| Found::Problems(Rc::new(problems)))
}

/// What was found in one sentence, for those who listen.
fn told(found: &Found) -> String {
    match found {
        Found::Report(report) => match report.verdict {
            Some(verdict) => format!("{verdict}. {}", headline(report)),
            None => report.headline.clone(),
        },
        Found::Assessment(assessment) => assessment.headline.clone(),
        Found::Problems(_) => "No result yet.".to_owned(),
    }
}

/// The form, the answer, and everything behind it.
#[component]
pub fn Work(props: &Props) -> Html {
    let Props { view, desk, line, address, back, state } = props;
    let found = use_memo((*view, desk.clone()), |(view, desk)| find(*view, desk));
    let Some(about) = view.about() else { return Html::default() };
    let problems = match &*found {
        Found::Problems(problems) => Some(problems),
        _ => None,
    };
    let back =
        back.clone().map(|back| element("a").class("back").set("href", back).say("Back to the order line"));
    let written = (*view == View::Order).then(|| written(&desk.form, line, state));
    let work = element("div")
        .class("work")
        .put(form(about, desk, problems.map(Rc::as_ref), state))
        .put(given(&desk.form))
        .html(component::<Outcome>(OutcomeProps { found: (*found).clone(), state: state.clone() }))
        .html(component::<Tools>(ToolsProps { address: address.clone() }));
    beside([
        title(back, about.title, about.answers).into(),
        written.map_or_else(Html::default, Html::from),
        component::<Note>(ToldProps { text: told(&found).into() }),
        work.into(),
    ])
}

#[derive(Properties)]
struct OutcomeProps {
    found: Found,
    state: UseReducerDispatcher<State>,
}

impl PartialEq for OutcomeProps {
    /// What was found once stays what it is: it need not be compared figure by figure.
    fn eq(&self, other: &Self) -> bool {
        self.found.is(&other.found)
    }
}

/// The answer and everything behind it. A result that no longer belongs to the inputs is not shown.
#[component]
fn Outcome(props: &OutcomeProps) -> Html {
    let OutcomeProps { found, state } = props;
    let of = |these: &[Part]| parts(these, found, state);
    let answer = element("section")
        .class("answer panel")
        .with("id", "answer")
        .with("tabindex", "-1")
        .with("aria-label", "Answer");
    let detail = element("div").class("detail");
    let (answer, detail) = match found {
        Found::Report(_) => (
            answer.html(of(&[Part::Answer])),
            detail.html(of(&[
                Part::Figures,
                Part::Picture,
                Part::Findings,
                Part::Sections,
                Part::Working,
                Part::Notes,
                Part::Cautions,
                Part::Sources,
            ])),
        ),
        Found::Assessment(_) => {
            let processes = of(&[Part::Process(0), Part::Process(1), Part::Process(2)]);
            let behind = of(&[Part::Figures, Part::Notes, Part::Cautions, Part::Sources]);
            let processes = element("div").class("processes").html(processes);
            (answer.html(of(&[Part::Answer])), detail.put(processes).html(behind))
        }
        Found::Problems(problems) => (answer.put(instead_of_result(problems)), detail),
    };
    beside([answer.into(), detail.into()])
}
