//! The working: each step in a fold, as one would write it on paper.

use crate::working::{Segment, Step};
use yew::prelude::*;

use super::report::{source_line, symbol};

/// The steps of a result.
pub fn working(steps: &[Step]) -> Html {
    if steps.is_empty() {
        return Html::default();
    }
    html! {
        <section class="block working" aria-labelledby="working">
            <h2 id="working">{ "How it came about" }</h2>
            <ol>{ for steps.iter().map(step) }</ol>
        </section>
    }
}

fn step(step: &Step) -> Html {
    let published = step.terms.iter().filter_map(|term| Some((term, term.source?)));
    html! {
        <li><details>
            <summary>
                <span class="name">{ step.meaning.to_string() }</span>
                <span class="value">{ symbol(step.symbol) }{ " = " }{ step.result.to_string() }</span>
            </summary>
            <div class="sum">
                if !step.formula.is_empty() {
                    <p>{ symbol(step.symbol) }{ " = " }{ segments(&step.segments()) }</p>
                    <p class="then">{ "= " }{ segments(&step.substituted()) }</p>
                }
                <p class="then">
                    if step.formula.is_empty() { { symbol(step.symbol) }{ " " } }
                    { "= " }<b>{ step.result.to_string() }</b>
                </p>
                { source_line(step.source) }
                { for published.map(|(term, source)| html! {
                    <div class="term"><p>{ symbol(term.symbol) }{ " = " }{ term.value.to_string() }</p>{ source_line(source) }</div>
                }) }
            </div>
        </details></li>
    }
}

fn segments(segments: &[Segment<'_>]) -> Html {
    let mut raised = false;
    let set = segments.iter().map(|segment| {
        let exponent = std::mem::take(&mut raised);
        let piece = match segment {
            Segment::Symbol(word) => symbol(word),
            Segment::Function("sqrt") => html! { "√" },
            Segment::Function(word) => html! { <span class="function">{ *word }</span> },
            Segment::Operator("^") => {
                raised = true;
                return Html::default();
            }
            Segment::Operator(sign @ ("+" | "−" | "-" | "·" | "/")) => html! { { format!(" {sign} ") } },
            Segment::Operator(",") => html! { ", " },
            Segment::Operator(sign) => html! { { *sign } },
            Segment::Number(digits) => html! { { *digits } },
            Segment::Value(shown) => html! { <span class="put">{ shown.to_string() }</span> },
        };
        if exponent {
            html! { <sup>{ piece }</sup> }
        } else {
            piece
        }
    });
    html! { <span class="formula">{ for set }</span> }
}
