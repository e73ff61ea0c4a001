//! The working: each step in a fold, as one would write it on paper.

use crate::working::{Segment, Step};

use super::element::{Element, element};
use super::report::{block, source_line, symbol};

/// The steps of a result.
pub fn working(steps: &[Step]) -> Option<Element> {
    let list = element("ol").each(steps.iter().map(step));
    (!steps.is_empty()).then(|| block("block working", "How it came about", list))
}

fn step(step: &Step) -> Element {
    let result = step.result.to_string();
    let last = element("p").class("then");
    let (sum, last) = if step.formula.is_empty() {
        (element("div"), last.put(symbol(step.symbol)).say(" "))
    } else {
        let formula = element("p").put(symbol(step.symbol)).say(" = ").put(segments(&step.segments()));
        let put_in = element("p").class("then").say("= ").put(segments(&step.substituted()));
        (element("div").put(formula).put(put_in), last)
    };
    let last = last.say("= ").put(element("b").text(result.clone()));
    let terms = step.terms.iter().filter_map(|term| {
        let put_in = element("p").put(symbol(term.symbol)).say(" = ").text(term.value.to_string());
        Some(element("div").class("term").put(put_in).put(source_line(term.source?)))
    });
    let sum = sum.class("sum").put(last).put(source_line(step.source)).each(terms);
    let name = element("span").class("name").text(step.meaning.to_string());
    let value = element("span").class("value").put(symbol(step.symbol)).say(" = ").text(result);
    let fold = element("details").put(element("summary").put(name).put(value)).put(sum);
    element("li").put(fold)
}

fn segments(segments: &[Segment<'_>]) -> Element {
    let mut raised = false;
    let mut set = element("span").class("formula");
    for segment in segments {
        if *segment == Segment::Operator("^") {
            raised = true;
        } else if std::mem::take(&mut raised) {
            set = set.put(piece(element("sup"), segment));
        } else {
            set = piece(set, segment);
        }
    }
    set
}

fn piece(into: Element, segment: &Segment<'_>) -> Element {
    match segment {
        Segment::Symbol(word) => into.put(symbol(word)),
        Segment::Function("sqrt") => into.say("√"),
        Segment::Operator(sign @ ("+" | "−" | "-" | "·" | "/")) => into.text(format!(" {sign} ")),
        Segment::Operator(",") => into.say(", "),
        Segment::Function(piece) | Segment::Operator(piece) | Segment::Number(piece) => {
            into.text((*piece).to_owned())
        }
        Segment::Value(shown) => into.put(element("span").class("put").text(shown.to_string())),
    }
}
