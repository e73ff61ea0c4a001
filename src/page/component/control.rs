//! The control of a field, by its kind.

use yew::prelude::*;

use super::next_reading::NextReading;
use super::segments::{Group, segments};
use super::typed::typed;
use crate::calculator::{Bound, Choice, FieldAbout, Filled, Kind};
use crate::page::reducer::Dispatch;
use crate::page::state::Action;
use crate::quantity::{Unit, unit};

/// What ties a control to what is said of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Described {
    /// The id of the control.
    pub id: AttrValue,
    /// The ids of what describes it.
    pub by: Option<AttrValue>,
    /// Whether something is wrong with it.
    pub wrong: bool,
}

/// The control of a field.
pub fn control(
    field: &'static FieldAbout,
    entry: &Filled,
    per_article: Option<u32>,
    about: &Described,
    dispatch: &Dispatch,
) -> Html {
    let key = field.key;
    let write = {
        let dispatch = dispatch.clone();
        Callback::from(move |text: String| dispatch.dispatch(Action::Write(key, text)))
    };
    let text = AttrValue::from(entry.text.clone());
    match field.kind {
        Kind::Choice(choices) if is_segmented(field) => {
            let group = Group { id: about.id.clone(), name: key, by: about.by.clone(), wrong: about.wrong };
            let offered: Vec<_> = choices.iter().map(|choice| (choice.key, choice.label)).collect();
            segments(&group, &offered, &text, &write.reform(str::to_owned))
        }
        Kind::Choice(choices) => {
            html! { <div class="control">{ options(choices, &text, about, &write) }</div> }
        }
        Kind::Quantity { bounds, .. } => html! {
            <div class="control">
                { line(text, keypad(bounds, entry.unit), about, &write) }
                { unit_beside(field, entry.unit, dispatch) }
            </div>
        },
        Kind::Count { .. } => {
            html! { <div class="control">{ line(text, Some("numeric"), about, &write) }</div> }
        }
        Kind::Text => html! { <div class="control">{ line(text, None, about, &write) }</div> },
        Kind::Readings { units, .. } => html! {
            <>
                <div class="control">
                    { area(text.clone(), about, &write) }
                    { unit_beside(field, entry.unit, dispatch) }
                </div>
                <NextReading {text} {units} {per_article} {write} />
            </>
        },
    }
}

/// The keypad that has all the signs a field takes: no pad has a minus, and inches take fractions.
fn keypad(bounds: Bound, chosen: Option<&'static Unit>) -> Option<&'static str> {
    let negative = matches!(bounds, Bound::Between(min, ..) if min.number < 0.0);
    let fractions = chosen.is_some_and(|chosen| [&unit::INCH, &unit::FOOT].contains(&chosen));
    (!negative && !fractions).then_some("decimal")
}

/// A line of text, in a place of its own: beside the unit, the browser would lay out all of the page anew at each
/// key to know how wide both are. What stands in it is no word that a device knows better.
fn line(text: AttrValue, keypad: Option<&'static str>, about: &Described, write: &Callback<String>) -> Html {
    html! {
        <div class="place">
            <input
                type="text" id={about.id.clone()} value={text} inputmode={keypad}
                autocomplete="off" autocapitalize="off" spellcheck="false" aria-describedby={about.by.clone()}
                aria-invalid={about.wrong.then_some("true")}
                oninput={write.reform(|event: InputEvent| typed(&event))}
            />
        </div>
    }
}

/// Many lines of text, in a place of their own as a line has.
fn area(text: AttrValue, about: &Described, write: &Callback<String>) -> Html {
    html! {
        <div class="place">
            <textarea
                rows="6" id={about.id.clone()} value={text}
                autocomplete="off" autocapitalize="off" spellcheck="false" aria-describedby={about.by.clone()}
                aria-invalid={about.wrong.then_some("true")}
                oninput={write.reform(|event: InputEvent| typed(&event))}
            />
        </div>
    }
}

/// A choice of many. The chosen option says so itself: a value set on the whole of it is shown late
/// by some browsers.
fn options(choices: &'static [Choice], text: &str, about: &Described, write: &Callback<String>) -> Html {
    let known = choices.iter().any(|choice| choice.key == text);
    let option = |choice: &Choice| option(choice.key.into(), choice.label, choice.key == text);
    html! {
        <select
            id={about.id.clone()} aria-describedby={about.by.clone()}
            aria-invalid={about.wrong.then_some("true")} onchange={write.reform(|event: Event| chosen(&event))}
        >
            if !known {
                <option value={text.to_owned()} selected={true}>
                    { if text.is_empty() { "Choose" } else { text } }
                </option>
            }
            { for choices.iter().map(option) }
        </select>
    }
}

/// The unit beside a number, to be chosen where there is a choice.
fn unit_beside(field: &'static FieldAbout, unit: Option<&'static Unit>, dispatch: &Dispatch) -> Html {
    let units = field.units();
    if units.len() < 2 {
        // The label has it for those who listen.
        let symbol = unit.map_or("", |unit| unit.symbol);
        return html! { <span class="suffix" aria-hidden="true">{ symbol }</span> };
    }
    let (key, dispatch) = (field.key, dispatch.clone());
    let choose = move |event: Event| dispatch.dispatch(Action::ChooseUnit(key, chosen(&event)));
    let option = |offered: &&'static Unit| {
        let said = if offered.symbol.is_empty() { "as a number" } else { offered.symbol };
        option(offered.symbol.into(), said, Some(*offered) == unit)
    };
    html! {
        <select class="units" aria-label={format!("Unit of {}", field.label)} onchange={choose}>
            { for units.iter().map(option) }
        </select>
    }
}

/// An option of a select; it is made anew when it is chosen or no longer is, because Firefox looks at
/// `selected` only while an option that a person has not touched is put in.
pub fn option(value: AttrValue, label: impl Into<AttrValue>, selected: bool) -> Html {
    let label: AttrValue = label.into();
    let key = format!("{value} {selected}");
    html! { <option {key} {value} {selected}>{ label }</option> }
}

/// What was chosen in a select.
pub fn chosen(event: &Event) -> String {
    event.target_unchecked_into::<web_sys::HtmlSelectElement>().value()
}

/// Few choices with short names stand beside each other.
pub fn is_segmented(field: &FieldAbout) -> bool {
    match field.kind {
        Kind::Choice(choices) => choices.len() <= 4 && choices.iter().all(|choice| choice.label.len() <= 12),
        _ => false,
    }
}
