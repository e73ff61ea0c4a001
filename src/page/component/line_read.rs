//! How a written line was understood.

use yew::prelude::*;

use super::field::id_of;
use crate::calculator::{FieldAbout, Filled, Form};
use crate::order::reading::Segment;
use crate::page::browser;
use crate::page::reducer::Dispatch;
use crate::page::state::{Action, WrittenLine};
use crate::quantity::letters::lower;
use crate::site::Category;

/// What was not understood, then the line as a sentence with each piece in its place, then what it does
/// not say.
pub fn as_read(line: &WrittenLine, form: &Form, dispatch: &Dispatch) -> Html {
    if line.text.trim().is_empty() || line.is_unread() {
        return Html::default();
    }
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
