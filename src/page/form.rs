//! The form of the order line and of every calculator, made from the same description.

use web_sys::HtmlSelectElement;
use yew::prelude::*;

use super::browser;
use super::field::{self, FieldRow};
use super::state::{Action, Desk, State};
use crate::calculator::{About, Fault, Form, Problems};

/// A form: a worked example to choose, the fields that are asked, a way to empty them.
pub fn form(
    about: &About,
    desk: &Desk,
    problems: Option<&Problems>,
    state: &UseReducerDispatcher<State>,
) -> Html {
    let take = {
        let state = state.clone();
        Callback::from(move |event: Event| {
            if let Ok(place) = event.target_unchecked_into::<HtmlSelectElement>().value().parse() {
                state.dispatch(Action::TakeExample(place));
            }
        })
    };
    let clear = {
        let state = state.clone();
        Callback::from(move |_: MouseEvent| state.dispatch(Action::Clear))
    };
    // An empty field is not a problem; the place of the result says what is still missing.
    let problem = |name: &str| {
        let problem = problems?.of(name)?;
        (problem.fault != Fault::Missing).then(|| AttrValue::from(problem.fault.to_string()))
    };
    let onsubmit = Callback::from(|event: SubmitEvent| event.prevent_default());
    html! {
        <form class="panel form" novalidate=true autocomplete="off" aria-label="What is asked" {onsubmit}>
            <div class="field example">
                <label for="example">{ "Worked example" }</label>
                <div class="control">
                    <select id="example" onchange={take}>
                        <option value="" selected={desk.example.is_none()}>{ "Own values" }</option>
                        { for about.examples.iter().enumerate().map(|(place, one)| html! {
                            <option key={place} value={place.to_string()} selected={desk.example == Some(place)}>{ one.title }</option>
                        }) }
                    </select>
                    <button type="button" onclick={clear}>{ "Clear" }</button>
                </div>
            </div>
            <div class="fields">
                { for desk.form.asked().into_iter().map(|(field, entry)| html! {
                    <FieldRow key={field.name} {field} entry={entry.clone()} problem={problem(field.name)} state={state.clone()} />
                }) }
            </div>
        </form>
    }
}

/// What was put in, for the printed sheet, where there is no form.
pub fn given(form: &Form) -> Html {
    html! {
        <section class="print-only" aria-label="Put in">
            <ul class="figures small">
                { for form.asked().into_iter().filter(|(_, entry)| !entry.text.is_empty()).map(|(field, entry)| html! {
                    <li class="plain"><span class="name">{ field.label }</span><span class="value">{ field.shown(entry) }</span></li>
                }) }
            </ul>
        </section>
    }
}

/// In the place of the result: what is wrong or missing, each with a way to its field.
pub fn instead_of_result(problems: &Problems) -> Html {
    let title = if problems.only_missing() { "Still to fill in" } else { "No result while this is open" };
    html! {
        <div class="problems">
            <h2>{ title }</h2>
            <ul>
                { for problems.iter().map(|problem| {
                    let id = field::id(problem.field);
                    let href = format!("#{id}");
                    let go = Callback::from(move |event: MouseEvent| {
                        event.prevent_default();
                        browser::focus(&id);
                    });
                    html! {
                        <li><a {href} onclick={go}>{ problem.label }</a>
                            if problem.fault != Fault::Missing { { ": " }{ problem.fault.to_string() } }
                        </li>
                    }
                }) }
            </ul>
        </div>
    }
}
