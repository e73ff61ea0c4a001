//! One field of a form: label, hint, problem, then the control, and how the text was read.

use gloo_timers::callback::Timeout;
use yew::prelude::*;

use super::control::{Described, control, is_segmented};
use crate::calculator::{Converted, FieldAbout, Filled, Kind};
use crate::page::reducer::use_dispatch;

/// What a field of a form needs to know.
#[derive(Properties, Clone)]
pub struct Props {
    /// The description of the field.
    pub field: &'static FieldAbout,
    /// What stands in it.
    pub entry: Filled,
    /// What is wrong with it.
    pub problem: Option<AttrValue>,
    /// Readings that belong to an article, where it holds readings that are taken one after the other.
    pub per_article: Option<u32>,
}

impl PartialEq for Props {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self.field, other.field)
            && self.entry == other.entry
            && self.problem == other.problem
            && self.per_article == other.per_article
    }
}

/// The id of the control of a field.
pub fn id_of(name: &str) -> String {
    format!("field-{name}")
}

/// How long a text may stand wrong before it is said: while a number is being typed it passes
/// through many that are no good.
const PATIENCE: u32 = 900;

/// A field of a form.
#[component]
pub fn FieldRow(props: &Props) -> Html {
    let Props { field, entry, problem, per_article } = props;
    let dispatch = use_dispatch();
    let (told, on_focus_out) = use_patience(problem.is_some());
    let problem = problem.clone().filter(|_| told);
    let id = id_of(field.key);
    let part = |name: &str| format!("{id}-{name}");
    let read_as = entry.read_as(field);
    let hinted = !field.hint.is_empty() || field.source.is_some();
    let told_how = read_as.is_some() || entry.converted.is_some();
    let parts = [(hinted, "hint"), (problem.is_some(), "problem"), (told_how, "read")];
    let by: Vec<_> = parts.iter().filter(|(there, _)| *there).map(|(_, name)| part(name)).collect();
    let about = Described {
        id: id.clone().into(),
        by: (!by.is_empty()).then(|| by.join(" ").into()),
        wrong: problem.is_some(),
    };
    let wide = matches!(field.kind, Kind::Readings { .. }).then_some("wide");
    let class = classes!("field", wide, problem.is_some().then_some("wrong"));
    let label = html! {
        <>
            { field.label }
            if let Some(unit) = entry.unit.filter(|unit| !unit.symbol.is_empty()) {
                <span class="unit">{ ", " }{ unit.symbol }</span>
            }
            if field.optional { <span class="unit">{ " (may stay empty)" }</span> }
        </>
    };
    // These places are always there, so that nothing beside the control comes and goes.
    let said = html! {
        <>
            if hinted { { hint(field, part("hint")) } }
            <div class="problem-place">
                if let Some(problem) = problem {
                    <p class="problem" id={part("problem")}>
                        <span class="hidden">{ "Problem: " }</span>{ problem }
                    </p>
                }
            </div>
        </>
    };
    let control = control(field, entry, *per_article, &about, &dispatch);
    if is_segmented(field) {
        return html! {
            <fieldset {class} onfocusout={on_focus_out}>
                <legend>{ label }</legend>
                { said }
                { control }
            </fieldset>
        };
    }
    html! {
        <div {class} onfocusout={on_focus_out}>
            <label for={id.clone()}>{ label }</label>
            { said }
            { control }
            <div class="read-place" aria-live="polite">
                if told_how { { read(entry, read_as, part("read")) } }
            </div>
        </div>
    }
}

/// Whether a problem is told: after a pause or when the field is left; it is taken back at once.
#[hook]
fn use_patience(wrong: bool) -> (bool, Callback<FocusEvent>) {
    let told = use_state_eq(|| wrong);
    {
        let told = told.clone();
        use_effect_with(wrong, move |wrong| {
            let timer = if *wrong {
                Some(Timeout::new(PATIENCE, move || told.set(true)))
            } else {
                told.set(false);
                None
            };
            move || drop(timer)
        });
    }
    (*told, Callback::from(move |_| told.set(wrong)))
}

/// Help, and where the default or the range is published.
fn hint(field: &FieldAbout, id: String) -> Html {
    html! {
        <p class="hint" {id}>
            { field.hint }
            if let Some(source) = field.source {
                <span class="hint-source">{ format!(" {source}.") }</span>
            }
        </p>
    }
}

/// How the text was read, and from what it was converted.
fn read(entry: &Filled, read_as: Option<String>, id: String) -> Html {
    html! {
        <p class="read-as" {id}>
            if let Some(Converted { text, unit }) = &entry.converted {
                { "Converted from " }<b>{ format!("{text} {}", unit.symbol) }</b>{ ". " }
            }
            if let Some(read_as) = read_as {
                { "Read as " }<b>{ read_as }</b>
            }
        </p>
    }
}
