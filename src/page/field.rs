//! One field of a form: label, hint, problem, then the control, and how the text was read.

use crate::calculator::{Bound, Choice, Field, Filled, Kind};
use crate::quantity::{Unit, unit};
use gloo_timers::callback::Timeout;
use web_sys::{HtmlInputElement, HtmlSelectElement, HtmlTextAreaElement};
use yew::prelude::*;

use super::readings::Next;
use super::state::{Action, State};

/// What a field of a form needs to know.
#[derive(Properties, Clone)]
pub struct Props {
    /// The description of the field.
    pub field: &'static Field,
    /// What stands in it.
    pub entry: Filled,
    /// What is wrong with it.
    pub problem: Option<AttrValue>,
    /// Takes what is typed.
    pub state: UseReducerDispatcher<State>,
}

impl PartialEq for Props {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self.field, other.field) && self.entry == other.entry && self.problem == other.problem
    }
}

/// The id of the control of a field.
pub fn id(name: &str) -> String {
    format!("field-{name}")
}

/// How long a text may stand wrong before it is said: while a number is being typed it passes
/// through many that are no good.
const PATIENCE: u32 = 900;

/// A field of a form.
#[component]
pub fn FieldRow(props: &Props) -> Html {
    let Props { field, entry, problem, .. } = props;
    let id = id(field.name);
    // The sentence is told after a pause or when the field is left, and taken back at once.
    let told = use_state_eq(|| problem.is_some());
    {
        let told = told.clone();
        use_effect_with(problem.is_some(), move |wrong| {
            let timer = if *wrong {
                Some(Timeout::new(PATIENCE, move || told.set(true)))
            } else {
                told.set(false);
                None
            };
            move || drop(timer)
        });
    }
    let onfocusout = {
        let (told, wrong) = (told.clone(), problem.is_some());
        Callback::from(move |_: FocusEvent| told.set(wrong))
    };
    let problem = problem.clone().filter(|_| *told);
    let read_as = entry.read_as(field);
    let [hint_id, problem_id, read_id] = ["hint", "problem", "read"].map(|part| format!("{id}-{part}"));
    let mut described = Vec::new();
    if !field.hint.is_empty() || field.source.is_some() {
        described.push(hint_id.as_str());
    }
    if problem.is_some() {
        described.push(problem_id.as_str());
    }
    if read_as.is_some() {
        described.push(read_id.as_str());
    }
    let described = (!described.is_empty()).then(|| described.join(" "));
    let segmented = is_segmented(field);
    let label = html! {
        <>{ field.label }if let Some(unit) = entry.unit.filter(|unit| !unit.symbol.is_empty()) {
            <span class="unit">{ ", " }{ unit.symbol }</span>
        }if field.optional { <span class="unit">{ " (may stay empty)" }</span> }</>
    };
    let hint = html! {
        if !field.hint.is_empty() || field.source.is_some() {
            <p class="hint" id={hint_id}>
                { field.hint }
                if let Some(source) = field.source { <span class="hint-source">{ " " }{ source.to_string() }{ "." }</span> }
            </p>
        }
    };
    let wrong = problem.is_some();
    // Always there, so that nothing beside the control comes and goes.
    let problem = html! {
        <div class="problem-place"> if let Some(problem) = problem {
            <p class="problem" id={problem_id}><span class="hidden">{ "Problem: " }</span>{ problem }</p>
        }</div>
    };
    let about = Described { id: id.clone(), by: described, wrong };
    let control = control(props, &about);
    let read_as = html! {
        <div class="read-place" aria-live="polite">if let Some(read_as) = read_as {
            <p class="read-as" id={read_id}>{ "Read as " }<b>{ read_as }</b></p>
        }</div>
    };
    let class = classes!(
        "field",
        wrong.then_some("wrong"),
        matches!(field.kind, Kind::Readings { .. }).then_some("wide")
    );
    if segmented {
        html! {
            <fieldset {class} {onfocusout}>
                <legend>{ label }</legend>
                { hint }{ problem }{ control }
            </fieldset>
        }
    } else {
        html! {
            <div {class} {onfocusout}>
                <label for={id}>{ label }</label>
                { hint }{ problem }{ control }{ read_as }
            </div>
        }
    }
}

struct Described {
    id: String,
    by: Option<String>,
    wrong: bool,
}

impl Described {
    fn invalid(&self) -> Option<&'static str> {
        self.wrong.then_some("true")
    }
}

fn control(props: &Props, about: &Described) -> Html {
    let Props { field, entry, state, .. } = props;
    let name = field.name;
    let write = {
        let state = state.clone();
        Callback::from(move |text| state.dispatch(Action::Write(name, text)))
    };
    match field.kind {
        Kind::Choice(choices) if is_segmented(field) => segments(name, choices, &entry.text, about, &write),
        Kind::Choice(choices) => {
            html! { <div class="control">{ options(choices, &entry.text, about, &write) }</div> }
        }
        Kind::Quantity { units, bounds } => html! {
            <div class="control">
                { line(about, &entry.text, keypad(bounds, entry.unit), &write) }
                { units_beside(field, units, entry.unit, state) }
            </div>
        },
        Kind::Count { .. } => {
            html! { <div class="control">{ line(about, &entry.text, Some("numeric"), &write) }</div> }
        }
        Kind::Text => html! { <div class="control">{ line(about, &entry.text, None, &write) }</div> },
        Kind::Readings { units } => html! {
            <>
                <div class="control">
                    { area(about, &entry.text, &write) }
                    { units_beside(field, units, entry.unit, state) }
                </div>
                <Next label={field.label} text={entry.text.clone()} add={write} />
            </>
        },
    }
}

/// The keypad that has all the signs a field takes: no pad has a minus, and inches take fractions.
fn keypad(bounds: Bound, chosen: Option<&'static Unit>) -> Option<&'static str> {
    let negative = matches!(bounds, Bound::Between(least, ..) if least.number < 0.0);
    let fractions = chosen.is_some_and(|chosen| [&unit::INCH, &unit::FOOT].contains(&chosen));
    (!negative && !fractions).then_some("decimal")
}

fn line(about: &Described, text: &str, keypad: Option<&'static str>, write: &Callback<String>) -> Html {
    let write = write.reform(|event: InputEvent| event.target_unchecked_into::<HtmlInputElement>().value());
    html! {
        <input type="text" id={about.id.clone()} value={text.to_owned()} oninput={write}
            inputmode={keypad} autocomplete="off" autocapitalize="off" spellcheck="false"
            aria-describedby={about.by.clone()} aria-invalid={about.invalid()} />
    }
}

fn area(about: &Described, text: &str, write: &Callback<String>) -> Html {
    let write =
        write.reform(|event: InputEvent| event.target_unchecked_into::<HtmlTextAreaElement>().value());
    html! {
        <textarea id={about.id.clone()} value={text.to_owned()} oninput={write} rows="6"
            autocomplete="off" autocapitalize="off" spellcheck="false"
            aria-describedby={about.by.clone()} aria-invalid={about.invalid()} />
    }
}

fn chosen(event: &Event) -> String {
    event.target_unchecked_into::<HtmlSelectElement>().value()
}

fn options(choices: &'static [Choice], text: &str, about: &Described, write: &Callback<String>) -> Html {
    let write = write.reform(|event: Event| chosen(&event));
    let known = choices.iter().any(|choice| choice.key == text);
    html! {
        <select id={about.id.clone()} onchange={write} aria-describedby={about.by.clone()} aria-invalid={about.invalid()}>
            if !known { <option value={text.to_owned()} selected=true>{ text }</option> }
            { for choices.iter().map(|choice| html! {
                <option key={choice.key} value={choice.key} selected={choice.key == text}>{ choice.label }</option>
            }) }
        </select>
    }
}

fn units_beside(
    field: &'static Field,
    units: &'static [&'static Unit],
    unit: Option<&'static Unit>,
    state: &UseReducerDispatcher<State>,
) -> Html {
    if units.len() < 2 {
        // The label has it for those who listen.
        return html! { <span class="suffix" aria-hidden="true">{ unit.map_or("", |unit| unit.symbol) }</span> };
    }
    let (state, name) = (state.clone(), field.name);
    let choose = Callback::from(move |event: Event| state.dispatch(Action::ChooseUnit(name, chosen(&event))));
    html! {
        <select class="units" onchange={choose} aria-label={format!("Unit of {}", field.label)}>
            { for units.iter().map(|offered| html! {
                <option key={offered.symbol} value={offered.symbol} selected={Some(*offered) == unit}>
                    { if offered.symbol.is_empty() { "as a number" } else { offered.symbol } }
                </option>
            }) }
        </select>
    }
}

/// Few choices with short names stand beside each other: one touch instead of two.
fn is_segmented(field: &Field) -> bool {
    match field.kind {
        Kind::Choice(choices) => choices.len() <= 4 && choices.iter().all(|choice| choice.label.len() <= 12),
        _ => false,
    }
}

fn segments(
    name: &'static str,
    choices: &'static [Choice],
    text: &str,
    about: &Described,
    write: &Callback<String>,
) -> Html {
    html! {
        <div class="segments">
            { for choices.iter().enumerate().map(|(place, choice)| {
                let write = write.reform(move |_: Event| choice.key.to_owned());
                // The first has the field's id, so that a link to the field finds it.
                let id = if place == 0 { about.id.clone() } else { format!("{}-{}", about.id, choice.key) };
                html! {
                    <label key={choice.key}>
                        <input type="radio" {id} {name} value={choice.key} checked={choice.key == text} onchange={write}
                            aria-describedby={about.by.clone()} />
                        <span>{ choice.label }</span>
                    </label>
                }
            }) }
        </div>
    }
}
