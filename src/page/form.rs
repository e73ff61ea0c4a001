//! The form of the order line and of every calculator, made from the same description.

use yew::prelude::*;

use super::browser;
use super::element::{Element, button, element, keyed};
use super::field::{self, FieldRow};
use super::report::value;
use super::state::{Action, Desk, State};
use crate::calculator::{About, Fault, Form, Problems};

/// A form: a worked example to choose, the fields that are asked, a way to empty them.
pub fn form(
    about: &About,
    desk: &Desk,
    problems: Option<&Problems>,
    state: &UseReducerDispatcher<State>,
) -> Element {
    let take = {
        let state = state.clone();
        move |place: String| {
            if let Ok(place) = place.parse() {
                state.dispatch(Action::TakeExample(place));
            }
        }
    };
    let clear = {
        let state = state.clone();
        move |_| state.dispatch(Action::Clear)
    };
    // An empty field is not a problem; the place of the result says what is still missing.
    let problem = |name: &str| {
        let problem = problems?.of(name)?;
        (!matches!(problem.fault, Fault::Missing)).then(|| AttrValue::from(problem.fault.to_string()))
    };
    let examples = about
        .examples
        .iter()
        .enumerate()
        .map(|(place, one)| field::option(place.to_string(), desk.example == Some(place)).say(one.title));
    let choice = element("select")
        .with("id", "example")
        .put(field::option("", desk.example.is_none()).say("Own values"))
        .each(examples)
        .on_change(take);
    let clear = button("Clear").on_click(clear);
    let example = element("div")
        .class("field example")
        .put(element("label").with("for", "example").say("Worked example"))
        .put(element("div").class("control").put(choice).put(clear));
    let rows = desk.form.asked().into_iter().map(|(field, entry)| {
        let (entry, problem, state) = (entry.clone(), problem(field.key), state.clone());
        keyed::<FieldRow>(field.key, field::Props { field, entry, problem, state })
    });
    element("form")
        .class("panel form")
        .flag("novalidate", true)
        .with("autocomplete", "off")
        .with("aria-label", "What is asked")
        .put(example)
        .put(rows.fold(element("div").class("fields"), Element::html))
        .on_submit(|| {})
}

/// What was put in, for the printed sheet, where there is no form.
pub fn given(form: &Form) -> Element {
    let filled = form.asked().into_iter().filter(|(_, entry)| !entry.text.is_empty());
    let items = filled.map(|(field, entry)| {
        let name = element("span").class("name").say(field.label);
        element("li").class("plain").put(name).put(value(entry.shown(field)))
    });
    element("section")
        .class("print-only")
        .with("aria-label", "Put in")
        .put(element("ul").class("figures small").each(items))
}

/// In the place of the result: what is wrong or missing, each with a way to its field.
pub fn instead_of_result(problems: &Problems) -> Element {
    let title = if problems.only_missing() { "Still to fill in" } else { "No result while this is open" };
    let items = problems.iter().map(|problem| {
        let id = field::id(problem.field);
        let link = element("a").set("href", format!("#{id}")).say(problem.label);
        let item = element("li").put(link.on_click_to(move || browser::focus(&id)));
        match problem.fault {
            Fault::Missing => item,
            _ => item.say(": ").text(problem.fault.to_string()),
        }
    });
    element("div").class("problems").put(element("h2").say(title)).put(element("ul").each(items))
}
