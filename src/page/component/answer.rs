//! The answer, in its place and told to those who listen.

use yew::prelude::*;

use super::found::Found;
use super::problems::problem_list;
use super::sign::sign;
use super::verdict::{look_of, standing, verdict};
use crate::calculator::{Mark, Report};
use crate::lot::Decision;
use crate::order::{Answer, Assessment, ProcessAssessment};
use crate::page::browser;
use crate::page::hook::use_pause;
use crate::sentence::capital;

/// The answer: verdict and headline, or what is missing. Nothing where nobody has asked.
pub fn answer(found: &Found) -> Html {
    let inside = match found {
        Found::Nothing => return Html::default(),
        Found::Report(report) => of_report(report),
        Found::Assessment(assessment) => of_order(assessment),
        Found::Problems(problems) => problem_list(problems),
    };
    html! { <section class="answer panel" id="answer" tabindex="-1" aria-label="Answer">{ inside }</section> }
}

fn of_report(report: &Report) -> Html {
    let headline = headline(report);
    // What is decided on a lot has a sign as a verdict has.
    let decisions = [
        (Decision::Accept, Mark::Met),
        (Decision::NotDecided, Mark::Condition),
        (Decision::Retest, Mark::Condition),
        (Decision::Reject, Mark::Bar),
    ];
    let decided = decisions.into_iter().find(|(decision, _)| headline.starts_with(decision.words()));
    html! {
        <div>
            { for report.verdict.map(verdict) }
            <p class={classes!("headline", decided.map(|_| "decided"))}>
                { for decided.map(|(_, mark)| sign(mark)) }
                <span>{ headline }</span>
            </p>
        </div>
    }
}

/// The answer as it is read aloud, the line to put on the order, and the three verdicts.
fn of_order(assessment: &Assessment) -> Html {
    let Answer { text, recommended, order } = &assessment.answer;
    let (first, rest) = text.split_once(". ").unwrap_or((text, ""));
    html! {
        <div>
            <p class="headline">{ format!("{first}{}", if rest.is_empty() { "" } else { "." }) }</p>
            if !rest.is_empty() { <p class="rest">{ rest.to_owned() }</p> }
            if !order.is_empty() {
                <p class="to-order"><span>{ "On the order:" }</span>{ " " }<b>{ order.clone() }</b></p>
            }
            <ul class="chips">
                { for assessment.processes.iter().map(|process| chip(process, *recommended == Some(process.process))) }
            </ul>
        </div>
    }
}

fn chip(process: &ProcessAssessment, recommended: bool) -> Html {
    let id = process.process.key();
    let go = move |event: MouseEvent| {
        event.prevent_default();
        browser::focus(id);
    };
    let (class, _) = look_of(process.standing());
    html! {
        <li>
            <a class={classes!(class, recommended.then_some("recommended"))} href={format!("#{id}")} onclick={go}>
                <span class="process-name">
                    { process.process.name() }
                    if recommended { <span class="take">{ ", recommended" }</span> }
                </span>
                { " " }
                <span class="vessel">{ process.process.vessel() }</span>
                { standing(process.standing()) }
            </a>
        </li>
    }
}

/// Milliseconds without typing after which the answer is told.
const PAUSE: u32 = 800;

/// What is to be told.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The answer in one sentence.
    pub text: AttrValue,
}

/// Tells the answer after a short pause, for screen readers. What is there at the opening is not
/// told: it is read in its place.
#[component]
pub fn Told(props: &Props) -> Html {
    let first = use_mut_ref(|| props.text.clone());
    let rested = use_pause(props.text.clone(), PAUSE);
    let told = if *first.borrow() == rested { AttrValue::default() } else { rested };
    if !told.is_empty() {
        first.replace(AttrValue::default());
    }
    html! { <output class="hidden" aria-live="polite">{ told }</output> }
}

/// What was found in one sentence.
pub fn told(found: &Found) -> String {
    match found {
        Found::Report(report) => match report.verdict {
            Some(verdict) => format!("{verdict}. {}", headline(report)),
            None => report.headline.clone(),
        },
        Found::Assessment(assessment) => assessment.answer.text.clone(),
        Found::Problems(_) => "No result yet.".to_owned(),
        Found::Nothing => String::new(),
    }
}

/// The answer of a report in one sentence, without the verdict that stands before it anyhow.
fn headline(report: &Report) -> String {
    let after =
        report.verdict.and_then(|verdict| report.headline.strip_prefix(verdict.words())?.strip_prefix(": "));
    after.map_or_else(|| report.headline.clone(), capital)
}
