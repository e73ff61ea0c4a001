//! The form of the order line and of every calculator, made from the same description.

use yew::prelude::*;

use super::control::{chosen, option};
use super::field::FieldRow;
use crate::calculator::{About, Example, Fault, FieldAbout, Filled, Form, Kind, Problems};
use crate::order;
use crate::page::reducer::use_dispatch;
use crate::page::state::{Action, Desk};

/// What the form needs to know.
#[derive(Properties)]
pub struct Props {
    /// What it asks.
    pub about: &'static About,
    /// What stands in it.
    pub desk: Desk,
    /// What is wrong or missing.
    pub problems: Option<Problems>,
}

impl PartialEq for Props {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self.about, other.about) && self.desk == other.desk && self.problems == other.problems
    }
}

/// Fields of the order line that most orders leave as they are.
const RARE: [&str; 6] = ["case", "cold", "temper", "surroundings", "heat", "bath"];

/// A form: a worked example to choose, the fields that are asked, a way to empty them.
#[component]
pub fn FormPanel(props: &Props) -> Html {
    let dispatch = use_dispatch();
    let Props { about, desk, problems } = props;
    let is_order = std::ptr::eq(*about, &order::ABOUT);
    let clear = {
        let dispatch = dispatch.clone();
        move |_: MouseEvent| dispatch.dispatch(Action::Clear)
    };
    let take = move |event: Event| {
        if let Ok(place) = chosen(&event).parse() {
            dispatch.dispatch(Action::TakeExample(place));
        }
    };
    let example = |(place, example): (usize, &Example)| {
        option(place.to_string().into(), example.title, desk.example == Some(place))
    };
    // An empty field is not a problem; the place of the result says what is still missing.
    let problem = |name: &str| {
        let problem = problems.as_ref()?.of(name)?;
        (problem.fault != Fault::Missing).then(|| AttrValue::from(problem.fault.to_string()))
    };
    let per_article = |field: &FieldAbout| match field.kind {
        Kind::Readings { per_article: Some(key), .. } => {
            let draft = desk.form.draft();
            draft.get(key).and_then(|text| text.trim().parse().ok())
        }
        _ => None,
    };
    let row = |(field, entry): &(&'static FieldAbout, &Filled)| {
        html! {
            <FieldRow
                key={field.key} field={*field} entry={(*entry).clone()} problem={problem(field.key)}
                per_article={per_article(field)}
            />
        }
    };
    let is_rare = |field: &FieldAbout| is_order && RARE.contains(&field.key);
    let (rare, usual): (Vec<_>, Vec<_>) =
        desk.form.asked().into_iter().partition(|(field, _)| is_rare(field));
    html! {
        <form
            class="panel form" novalidate={true} autocomplete="off" aria-label="What is asked"
            onsubmit={|event: SubmitEvent| event.prevent_default()}
        >
            <div class="field example">
                // The order line has examples of its own.
                if !is_order { <label for="example">{ "Worked example" }</label> }
                <div class="control">
                    if !is_order {
                        <select id="example" onchange={take}>
                            { option("".into(), "Own values", desk.example.is_none()) }
                            { for about.examples.iter().enumerate().map(example) }
                        </select>
                    }
                    <button type="button" onclick={clear}>{ "Clear" }</button>
                </div>
            </div>
            <div class="fields">{ for usual.iter().map(row) }</div>
            if !rare.is_empty() {
                <details class="more">
                    <summary>
                        <span><b>{ "More" }</b>{ ". " }{ set_to(&rare) }</span>
                    </summary>
                    <div class="fields">{ for rare.iter().map(row) }</div>
                </details>
            }
        </form>
    }
}

/// What fields that are out of sight are set to.
fn set_to(fields: &[(&'static FieldAbout, &Filled)]) -> String {
    let one = |(field, entry): &(&'static FieldAbout, &Filled)| match entry.shown(field) {
        text if text.is_empty() => format!("{}: not given", field.label),
        text => format!("{}: {text}", field.label),
    };
    fields.iter().map(one).collect::<Vec<_>>().join("; ")
}

/// What was put in, for the printed sheet, where there is no form.
pub fn given(form: &Form) -> Html {
    let item = |(field, entry): (&'static FieldAbout, &Filled)| {
        html! {
            <li class="plain">
                <span class="name">{ field.label }</span>
                <span class="value">{ entry.shown(field) }</span>
            </li>
        }
    };
    let filled = form.asked().into_iter().filter(|(_, entry)| !entry.text.is_empty());
    html! {
        <section class="print-only" aria-label="Put in">
            <ul class="figures small">{ for filled.map(item) }</ul>
        </section>
    }
}
