//! The working: each step in a fold, as one would write it on paper; the step of the answer first.

use yew::prelude::*;

use super::formula::formula;
use super::source::source_line;
use super::symbol::symbol;
use crate::working::{Segment, Step, Term, Working};

/// The steps of a result, and which of them gives the answer.
pub fn working(working: &Working, answer: usize) -> Html {
    let steps = working.steps();
    let Some(first) = steps.get(answer) else { return Html::default() };
    let others = |topic: &'static str, from: usize, steps: &[Step]| {
        let others = steps.iter().enumerate().filter(|(at, _)| from + at != answer);
        let folded: Vec<Html> = others.map(|(_, step)| fold(step)).collect();
        if folded.is_empty() {
            return Html::default();
        }
        html! { <>if !topic.is_empty() { <h3>{ topic }</h3> }<ol>{ for folded }</ol></> }
    };
    html! {
        <section class="block working">
            <h2>{ "How it came about" }</h2>
            <ul>{ fold(first) }</ul>
            if steps.len() > 1 {
                <details class="others">
                    <summary>{ format!("The other steps, {}, in the order they are done", steps.len() - 1) }</summary>
                    { for working.by_topic().map(|(topic, from, steps)| others(topic, from, steps)) }
                </details>
            }
        </section>
    }
}

/// The sum of a step, as one would write it on paper.
pub fn sum(step: &Step) -> Html {
    let before = format!("{} =", step.name());
    let result = [Segment::Value(step.result)];
    html! {
        <div class="sum">
            if step.formula.is_empty() {
                <p>{ formula(&before, &result) }</p>
            } else {
                <p>{ formula(&before, &step.segments()) }</p>
                <p class="then">{ formula("=", &step.substituted()) }</p>
                <p class="then">{ formula("=", &result) }</p>
            }
            { source_line(step.source) }
        </div>
    }
}

/// A step that is folded to its result.
pub fn fold(step: &Step) -> Html {
    let term = |term: &Term| {
        let source = term.source?;
        Some(html! {
            <details class="constant">
                <summary><span>{ symbol(&term.name()) }{ format!(" = {}", term.value) }</span></summary>
                { source_line(source) }
            </details>
        })
    };
    html! {
        <li>
            <details>
                <summary>
                    <span class="name">{ step.meaning.to_string() }</span>
                    <span class="value">{ symbol(&step.name()) }{ format!(" = {}", step.result) }</span>
                </summary>
                { sum(step) }
                { for step.terms.iter().filter_map(term) }
            </details>
        </li>
    }
}
