//! The order line in one line, and examples to begin with.

use yew::prelude::*;

use super::examples::examples;
use super::part::{Later, Piece};
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
                    id="line" rows={rows(&line.text)} value={line.text.clone()} enterkeyhint="go" autocomplete="off"
                    autocapitalize="off" spellcheck="false" aria-describedby="line-hint line-read" oninput={write}
                    onkeydown={on_key}
                />
                <button type="submit" class="strong">{ "Assess" }</button>
            </div>
            <div class="line-read" id="line-read">
                <Later piece={Piece::Line(line.clone(), desk.form.clone())} />
            </div>
            if empty && !desk.is_touched() { { examples(&dispatch) } }
        </form>
    }
}

/// Rows that hold the line on a phone, so that all of it is in sight.
fn rows(text: &str) -> &'static str {
    match text.chars().count() {
        0..54 => "2",
        54..84 => "3",
        84..112 => "4",
        _ => "5",
    }
}
