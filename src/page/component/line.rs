//! The order line in one line, how it was understood, and examples to begin with.

use yew::prelude::*;

use super::examples::examples;
use super::field::id_of;
use super::typed::typed;
use crate::calculator::{FieldAbout, Filled};
use crate::order::reading::Segment;
use crate::page::browser;
use crate::page::reducer::{Dispatch, use_dispatch};
use crate::page::state::{Action, Desk, WrittenLine};
use crate::quantity::letters::lower;
use crate::site::Category;

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
                if !empty && !line.is_unread() { { as_read(line, desk, &dispatch) } }
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

/// What was not understood, then the line as a sentence with each piece in its place, then what it does
/// not say.
fn as_read(line: &WrittenLine, desk: &Desk, dispatch: &Dispatch) -> Html {
    let form = &desk.form;
    let (mut unknown, mut wrong, mut used, mut silent) = (Vec::new(), Vec::new(), Vec::new(), Vec::new());
    for segment in line.as_read(form) {
        match segment {
            Segment::NotUsed { text, why } if why.is_empty() => unknown.push(text),
            Segment::NotUsed { text, why } => wrong.push(html! {
                <p class="problem">{ "Not used: " }<b>{ text }</b>{ format!(" ({why})") }</p>
            }),
            Segment::Which { field, text, offers } => {
                let offer = |category: Category| {
                    let (key, dispatch) = (category.key(), dispatch.clone());
                    let take = move |_: MouseEvent| dispatch.dispatch(Action::Write(field, key.to_owned()));
                    html! { <button type="button" onclick={take}>{ key }</button> }
                };
                wrong.push(html! {
                    <p class="which"><span>{ format!("Which place is “{text}”?") }</span>{ for offers.into_iter().map(offer) }</p>
                });
            }
            Segment::Used { field, text, note } => used.push(html! {
                <li>
                    { to_field(field, text) }
                    if !note.is_empty() { <span class="hint">{ format!(" ({note})") }</span> }
                </li>
            }),
            Segment::NotSaid { field, label } => silent.push(to_field(field, lower(label))),
        }
    }
    let kept: Vec<Html> = form
        .asked()
        .iter()
        .filter(|(field, entry)| is_usual(line, field, entry))
        .map(|(field, entry)| to_field(field.key, format!("{} {}", field.label, entry.shown(field))))
        .collect();
    html! {
        <>
            if !unknown.is_empty() {
                <p class="problem">{ "Not understood, so left out: " }<b>{ unknown.join(", ") }</b></p>
            }
            { for wrong }
            if !used.is_empty() {
                <p class="hidden">{ "Read as:" }</p>
                <ul class="pieces">{ for used }</ul>
            }
            if !silent.is_empty() { <p class="links"><span>{ "Not said:" }</span>{ for silent }</p> }
            if !kept.is_empty() {
                <details class="silent">
                    <summary>{ "What is taken as usual" }</summary>
                    <p class="links">{ for kept }</p>
                </details>
            }
        </>
    }
}

/// Whether a field says what it always says, and the line does not say it.
fn is_usual(line: &WrittenLine, field: &FieldAbout, entry: &Filled) -> bool {
    !field.default.is_empty() && !entry.text.is_empty() && line.filled.get(field.key).is_none()
}

/// A way to a field.
fn to_field(field: &str, text: String) -> Html {
    let id = id_of(field);
    let href = format!("#{id}");
    let go = move |event: MouseEvent| {
        event.prevent_default();
        browser::focus(&id);
    };
    html! { <a {href} onclick={go}>{ text }</a> }
}
