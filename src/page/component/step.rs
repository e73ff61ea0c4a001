//! The working: each step in a fold, as one would write it on paper.

use yew::prelude::*;

use super::formula::formula;
use super::source::source_line;
use super::symbol::symbol;
use crate::working::{Segment, Step, Term, Working};

/// What the working needs to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The steps.
    pub working: Working,
}

/// The steps of a result.
#[component]
pub fn WorkingBlock(props: &Props) -> Html {
    let steps = props.working.steps();
    if steps.is_empty() {
        return Html::default();
    }
    html! {
        <section class="block working">
            <h2>{ "How it came about" }</h2>
            <ol>{ for steps.iter().map(fold) }</ol>
        </section>
    }
}

fn fold(step: &Step) -> Html {
    let before = format!("{} =", step.symbol);
    let result = [Segment::Value(step.result)];
    let term = |term: &Term| {
        let source = term.source?;
        Some(html! {
            <details class="constant">
                <summary><span>{ symbol(term.symbol) }{ format!(" = {}", term.value) }</span></summary>
                { source_line(source) }
            </details>
        })
    };
    html! {
        <li>
            <details>
                <summary>
                    <span class="name">{ step.meaning.to_string() }</span>
                    <span class="value">{ symbol(step.symbol) }{ format!(" = {}", step.result) }</span>
                </summary>
                <div class="sum">
                    if step.formula.is_empty() {
                        <p>{ formula(&before, &result) }</p>
                    } else {
                        <p>{ formula(&before, &step.segments()) }</p>
                        <p class="then">{ formula("=", &step.substituted()) }</p>
                        <p class="then">{ formula("=", &result) }</p>
                    }
                    { source_line(step.source) }
                    { for step.terms.iter().filter_map(term) }
                </div>
            </details>
        </li>
    }
}
