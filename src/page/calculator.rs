//! A calculator: its form, the answer, and how it came about.

use std::rc::Rc;

use crate::calculator::{Entry, Form, Problems, Report};
use yew::prelude::*;

use super::answer::Told;
use super::form::{FormPanel, instead_of_result};
use super::report::{report, verdict};
use super::state::{Desk, State};
use super::tools::Tools;

/// What the view of a calculator needs to know.
#[derive(Properties)]
pub struct Props {
    /// The calculator.
    pub entry: &'static Entry,
    /// Its form.
    pub desk: Desk,
    /// The address of the view.
    pub address: AttrValue,
    /// The way back to the order line, if that is where one came from.
    pub back: Option<AttrValue>,
    /// Takes what is typed.
    pub state: UseReducerDispatcher<State>,
}

impl PartialEq for Props {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self.entry, other.entry)
            && self.desk == other.desk
            && self.address == other.address
            && self.back == other.back
    }
}

/// A calculator.
#[component]
pub fn CalculatorView(props: &Props) -> Html {
    let Props { entry, desk, address, back, state } = props;
    let entry = *entry;
    let result =
        use_memo(Rc::clone(&desk.form), |form| entry.evaluate(&form.draft()).map(Rc::new).map_err(Rc::new));
    let problems = result.as_ref().as_ref().err().cloned();
    let told = match &*result {
        Ok(report) => AttrValue::from(match report.verdict {
            Some(verdict) => format!("{verdict}. {}", report.headline),
            None => report.headline.clone(),
        }),
        Err(_) => AttrValue::from("No result yet."),
    };
    html! {
        <>
            <div class="title">
                if let Some(back) = back { <a class="back" href={back}>{ "Back to the order line" }</a> }
                <h1 id="title" tabindex="-1">{ entry.about.title }</h1>
                <p class="lead">{ entry.about.answers }</p>
            </div>
            <Told text={told} />
            <div class="work">
                <FormPanel about={&entry.about} form={Rc::clone(&desk.form)} example={desk.example} {problems} state={state.clone()} />
                { given(&desk.form) }
                <Outcome result={(*result).clone()} state={state.clone()} />
                <Tools address={address.clone()} />
            </div>
        </>
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

#[derive(Properties)]
struct ResultProps {
    result: Result<Rc<Report>, Rc<Problems>>,
    state: UseReducerDispatcher<State>,
}

impl PartialEq for ResultProps {
    fn eq(&self, other: &Self) -> bool {
        self.result == other.result
    }
}

/// The answer and everything behind it. A result that no longer belongs to the inputs is not shown.
#[component]
fn Outcome(props: &ResultProps) -> Html {
    match &props.result {
        Ok(found) => html! {
            <>
                <div class="answer panel">
                    if let Some(found) = found.verdict { { verdict(found) } }
                    <p class="headline">{ found.headline.clone() }</p>
                </div>
                <div class="detail">{ report(found, &props.state) }</div>
            </>
        },
        Err(problems) => {
            html! { <><div class="answer panel">{ instead_of_result(problems) }</div><div class="detail"></div></> }
        }
    }
}
