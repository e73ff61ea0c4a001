//! The order line in one line, how it was understood, and examples to begin with.

use yew::prelude::*;

use super::examples::examples;
use super::field::id_of;
use super::typed::typed;
use crate::page::browser;
use crate::page::reducer::use_dispatch;
use crate::page::state::{Action, Desk, WrittenLine};

/// What the line needs to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The line.
    pub line: WrittenLine,
    /// The fields that it fills.
    pub desk: Desk,
}

/// The line written in one.
#[component]
pub fn LinePanel(props: &Props) -> Html {
    let dispatch = use_dispatch();
    let Props { line, desk } = props;
    let write = {
        let dispatch = dispatch.clone();
        move |event: InputEvent| dispatch.dispatch(Action::WriteLine(typed(&event)))
    };
    let assess = |event: SubmitEvent| {
        event.prevent_default();
        browser::focus("answer");
    };
    // An order runs over several lines on a phone, and is one line all the same.
    let on_key = |event: KeyboardEvent| {
        if event.key() == "Enter" && !event.shift_key() {
            event.prevent_default();
            browser::focus("answer");
        }
    };
    let empty = line.text.trim().is_empty();
    html! {
        <form class="panel written" role="search" aria-label="Order line in one line" onsubmit={assess}>
            <label for="line">{ "What is ordered" }</label>
            <p class="hint" id="line-hint">
                { "As it stands in the e-mail: part, thread and length, steel, pieces, place, years." }
            </p>
            <div class="control">
                <textarea
                    id="line" rows="2" value={line.text.clone()} enterkeyhint="go" autocomplete="off"
                    autocapitalize="off" spellcheck="false" aria-describedby="line-hint line-read" oninput={write}
                    onkeydown={on_key}
                />
                <button type="submit" class="strong">{ "Assess" }</button>
            </div>
            <div class="line-read" id="line-read">
                if !empty { { understood(line, desk) } }
            </div>
            if empty && !desk.is_touched() { { examples(&dispatch) } }
        </form>
    }
}

/// What of the line found no field, and what it does not say.
fn understood(line: &WrittenLine, desk: &Desk) -> Html {
    let silent: Vec<Html> = desk
        .form
        .asked()
        .into_iter()
        .filter(|(field, entry)| line.filled.get(field.key).is_none() && !entry.text.is_empty())
        .map(|(field, entry)| {
            let id = id_of(field.key);
            let href = format!("#{id}");
            let go = move |event: MouseEvent| {
                event.prevent_default();
                browser::focus(&id);
            };
            html! { <a {href} onclick={go}>{ format!("{} {}", field.label, entry.shown(field)) }</a> }
        })
        .collect();
    html! {
        <>
            if !line.unplaced.is_empty() {
                <p class="problem">
                    { "Not understood, so left out: " }<b>{ line.unplaced.join(", ") }</b>
                </p>
            }
            if !silent.is_empty() {
                <details class="silent">
                    <summary>{ "What the line does not say, as the fields have it" }</summary>
                    <p>{ for silent }</p>
                </details>
            }
        </>
    }
}
