//! The order line: one written line or its fields, and the three processes side by side.

use std::rc::Rc;

use crate::order::{Assessment, ProcessAssessment};
use crate::source::Source;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::answer::Told;
use super::calculator::given;
use super::form::{FormPanel, instead_of_result};
use super::report::{cautions, figures, findings, notes, sources, verdict};
use super::state::{Action, Desk, State, WrittenLine};
use super::tools::Tools;
use super::{browser, field};
use crate::order;

/// What the view of the order line needs to know.
#[derive(Properties)]
pub struct Props {
    /// Its form.
    pub desk: Desk,
    /// The line as it was written in one.
    pub line: WrittenLine,
    /// The address of the view.
    pub address: AttrValue,
    /// Takes what is typed.
    pub state: UseReducerDispatcher<State>,
}

impl PartialEq for Props {
    fn eq(&self, other: &Self) -> bool {
        self.desk == other.desk && self.line == other.line && self.address == other.address
    }
}

/// The order line and its assessment.
#[component]
pub fn OrderView(props: &Props) -> Html {
    let Props { desk, line, address, state } = props;
    let result =
        use_memo(Rc::clone(&desk.form), |form| order::assess(&form.draft()).map(Rc::new).map_err(Rc::new));
    let problems = result.as_ref().as_ref().err().cloned();
    let told = match &*result {
        Ok(assessment) => AttrValue::from(assessment.headline.clone()),
        Err(_) => AttrValue::from("No assessment yet."),
    };
    html! {
        <>
            <div class="title">
                <h1 id="title" tabindex="-1">{ "Order line" }</h1>
                <p class="lead">{ order::ABOUT.answers }</p>
            </div>
            { written(desk, line, state) }
            <Told text={told} />
            <div class="work order">
                <FormPanel about={&order::ABOUT} form={Rc::clone(&desk.form)} example={desk.example} {problems} state={state.clone()} />
                { given(&desk.form) }
                { match &*result {
                    Ok(assessment) => html! { <Assessed assessment={Rc::clone(assessment)} state={state.clone()} /> },
                    Err(problems) => html! { <><div class="answer panel">{ instead_of_result(problems) }</div><div class="detail"></div></> },
                } }
                <Tools address={address.clone()} />
            </div>
        </>
    }
}

/// The line written in one, what of it found no field, and what it does not say.
fn written(desk: &Desk, line: &WrittenLine, state: &UseReducerDispatcher<State>) -> Html {
    let oninput = {
        let state = state.clone();
        Callback::from(move |event: InputEvent| {
            state.dispatch(Action::WriteLine(event.target_unchecked_into::<HtmlInputElement>().value()));
        })
    };
    let onsubmit = Callback::from(|event: SubmitEvent| {
        event.prevent_default();
        browser::focus("answer");
    });
    let silent: Vec<_> = desk
        .form
        .asked()
        .into_iter()
        .filter(|(field, entry)| line.filled.get(field.name).is_none() && !entry.text.is_empty())
        .collect();
    html! {
        <form class="panel written" {onsubmit} role="search" aria-label="Order line in one line">
            <label for="line">{ "In one line" }</label>
            <p class="hint" id="line-hint">{ "M20x2.5 x 90 hex bolt, 10.9, 1200 pcs, C4" }</p>
            <div class="control">
                <input type="text" id="line" value={line.text.clone()} {oninput} autocomplete="off" autocapitalize="off"
                    spellcheck="false" enterkeyhint="go" aria-describedby="line-hint line-read" />
                <button type="submit" class="strong">{ "Assess" }</button>
            </div>
            <div id="line-read" class="line-read">
                if !line.text.trim().is_empty() {
                    if !line.unplaced.is_empty() {
                        <p class="problem">{ "Not understood, so left out: " }<b>{ line.unplaced.join(", ") }</b></p>
                    }
                    if !silent.is_empty() {
                        <p class="silent">{ "Not in the line, so as the fields have it: " }{ for silent.iter().map(|(field, entry)| {
                            let id = field::id(field.name);
                            let href = format!("#{id}");
                            let go = Callback::from(move |event: MouseEvent| {
                                event.prevent_default();
                                browser::focus(&id);
                            });
                            html! { <a {href} onclick={go}>{ field.label }{ " " }{ field.shown(entry) }</a> }
                        }) }</p>
                    }
                }
            </div>
        </form>
    }
}

#[derive(Properties)]
struct AssessedProps {
    assessment: Rc<Assessment>,
    state: UseReducerDispatcher<State>,
}

impl PartialEq for AssessedProps {
    fn eq(&self, other: &Self) -> bool {
        self.assessment == other.assessment
    }
}

/// The answer in short, then the three processes with their reasons.
#[component]
fn Assessed(props: &AssessedProps) -> Html {
    let AssessedProps { assessment, state } = props;
    html! {
        <>
            <section class="answer panel" id="answer" tabindex="-1" aria-label="Answer">
                <p class="headline">{ assessment.headline.clone() }</p>
                <ul class="chips">{ for assessment.processes.iter().map(chip) }</ul>
            </section>
            <div class="detail">
                <div class="processes">{ for assessment.processes.iter().map(|one| process(one, state)) }</div>
                <section class="block" aria-labelledby="understood">
                    <h2 id="understood">{ "The order line as understood" }</h2>
                    { figures(&assessment.figures) }
                </section>
                { notes(&assessment.notes) }
                { cautions(&assessment.cautions) }
                { sources(&all_sources(assessment)) }
            </div>
        </>
    }
}

fn chip(one: &ProcessAssessment) -> Html {
    let id = one.process.key();
    let go = Callback::from(move |event: MouseEvent| {
        event.prevent_default();
        browser::focus(id);
    });
    html! {
        <li><a href={format!("#{id}")} onclick={go}><span class="process-name">{ one.process.name() }</span>{ verdict(one.verdict) }</a></li>
    }
}

fn process(one: &ProcessAssessment, state: &UseReducerDispatcher<State>) -> Html {
    let id = one.process.key();
    html! {
        <section class="panel process" aria-labelledby={id}>
            <h2 {id} tabindex="-1">{ one.process.name() }<span class="vessel">{ one.process.vessel() }</span></h2>
            <p>{ verdict(one.verdict) }</p>
            { figures(&one.figures) }
            { findings(&one.findings, id, state) }
        </section>
    }
}

fn all_sources(assessment: &Assessment) -> Vec<Source> {
    let mut all = Vec::new();
    let of_figures =
        assessment.figures.iter().chain(assessment.processes.iter().flat_map(|one| &one.figures));
    let of_findings = assessment.processes.iter().flat_map(|one| &one.findings).map(|finding| finding.source);
    let of_notes = assessment.notes.iter().filter_map(|note| note.source);
    for source in of_figures.filter_map(|figure| figure.source).chain(of_findings).chain(of_notes) {
        if !all.contains(&source) {
            all.push(source);
        }
    }
    all
}
