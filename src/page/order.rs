//! The order line: one written line or its fields, and the three processes side by side.

use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::report::{cautions, figures, findings, notes, sources, verdict};
use super::state::{Action, State, WrittenLine};
use super::{browser, field};
use crate::calculator::Form;
use crate::order::{Assessment, ProcessAssessment};
use crate::source::Source;

/// The line written in one, what of it found no field, and what it does not say.
pub fn written(form: &Form, line: &WrittenLine, state: &UseReducerDispatcher<State>) -> Html {
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
    let silent: Vec<_> = form
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

/// The answer in short, and the three processes with their reasons.
pub fn assessed(assessment: &Assessment, state: &UseReducerDispatcher<State>) -> (Html, Html) {
    let answer = html! {
        <>
            <p class="headline">{ assessment.headline.clone() }</p>
            <ul class="chips">{ for assessment.processes.iter().map(chip) }</ul>
        </>
    };
    let detail = html! {
        <>
            <div class="processes">{ for assessment.processes.iter().map(|one| process(one, state)) }</div>
            <section class="block" aria-labelledby="understood">
                <h2 id="understood">{ "The order line as understood" }</h2>
                { figures(&assessment.figures) }
            </section>
            { notes(&assessment.notes) }
            { cautions(&assessment.cautions) }
            { sources(&all_sources(assessment)) }
        </>
    };
    (answer, detail)
}

fn chip(one: &ProcessAssessment) -> Html {
    let id = one.process.key();
    let go = Callback::from(move |event: MouseEvent| {
        event.prevent_default();
        browser::focus(id);
    });
    html! {
        <li><a href={format!("#{id}")} onclick={go}><span class="process-name">{ one.process.name() }</span>{ " " }<span class="vessel">{ one.process.vessel() }</span>{ verdict(one.verdict) }</a></li>
    }
}

fn process(one: &ProcessAssessment, state: &UseReducerDispatcher<State>) -> Html {
    let id = one.process.key();
    html! {
        <section class="panel process" aria-labelledby={id}>
            <h2 {id} tabindex="-1">{ one.process.name() }{ " " }<span class="vessel">{ one.process.vessel() }</span></h2>
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
