//! The working: each step in a fold, as one would write it on paper.

use crate::working::{Segment, Step};
use yew::prelude::*;

use super::element::{element, text, word};
use super::report::{block, source_line, symbol};

/// The steps of a result.
pub fn working(steps: &[Step]) -> Html {
    if steps.is_empty() {
        return Html::default();
    }
    block("block working", "How it came about", element("ol", "", steps.iter().map(step).collect()))
}

fn step(step: &Step) -> Html {
    let line = |class, set| element("p", class, set);
    let result = || text(step.result.to_string());
    let mut sum = Vec::with_capacity(8);
    let mut last = vec![word("= "), element("b", "", vec![result()])];
    if step.formula.is_empty() {
        last.splice(0..0, [symbol(step.symbol), word(" ")]);
    } else {
        sum.push(line("", vec![symbol(step.symbol), word(" = "), segments(&step.segments())]));
        sum.push(line("then", vec![word("= "), segments(&step.substituted())]));
    }
    sum.push(line("then", last));
    sum.push(source_line(step.source));
    for term in &step.terms {
        if let Some(source) = term.source {
            let put_in = line("", vec![symbol(term.symbol), word(" = "), text(term.value.to_string())]);
            sum.push(element("div", "term", vec![put_in, source_line(source)]));
        }
    }
    let name = element("span", "name", vec![text(step.meaning.to_string())]);
    let value = element("span", "value", vec![symbol(step.symbol), word(" = "), result()]);
    let summary = element("summary", "", vec![name, value]);
    element("li", "", vec![element("details", "", vec![summary, element("div", "sum", sum)])])
}

fn segments(segments: &[Segment<'_>]) -> Html {
    let mut raised = false;
    let mut set = Vec::with_capacity(segments.len());
    for segment in segments {
        let exponent = std::mem::take(&mut raised);
        let piece = match segment {
            Segment::Operator("^") => {
                raised = true;
                continue;
            }
            Segment::Symbol(word) => symbol(word),
            Segment::Function("sqrt") => word("√"),
            Segment::Operator(sign @ ("+" | "−" | "-" | "·" | "/")) => text(format!(" {sign} ")),
            Segment::Operator(",") => word(", "),
            Segment::Function(piece) | Segment::Operator(piece) | Segment::Number(piece) => {
                text((*piece).to_owned())
            }
            Segment::Value(shown) => element("span", "put", vec![text(shown.to_string())]),
        };
        set.push(if exponent { element("sup", "", vec![piece]) } else { piece });
    }
    element("span", "formula", set)
}
