//! The order line: one written line or its fields, and the three processes side by side.

use yew::prelude::*;

use super::element::{Element, element};
use super::report::{figures, verdict};
use super::state::{Action, State, WrittenLine};
use super::{browser, field};
use crate::calculator::Form;
use crate::order::{Assessment, ProcessAssessment};
use crate::source::Source;

/// The line written in one, what of it found no field, and what it does not say.
pub fn written(form: &Form, line: &WrittenLine, state: &UseReducerDispatcher<State>) -> Element {
    let read = {
        let state = state.clone();
        move |text| state.dispatch(Action::WriteLine(text))
    };
    let input = field::unaided(element("input").with("type", "text").with("id", "line"))
        .value(line.text.clone())
        .with("enterkeyhint", "go")
        .with("aria-describedby", "line-hint line-read")
        .on_input(read);
    let assess = element("button").class("strong").with("type", "submit").say("Assess");
    let said = element("div").class("line-read").with("id", "line-read");
    let said = if line.text.trim().is_empty() { said } else { left_out(said, form, line) };
    element("form")
        .class("panel written")
        .with("role", "search")
        .with("aria-label", "Order line in one line")
        .put(element("label").with("for", "line").say("In one line"))
        .put(
            element("p")
                .class("hint")
                .with("id", "line-hint")
                .say("M20x2.5 x 90 hex bolt, 10.9, 1200 pcs, C4"),
        )
        .put(element("div").class("control").put(input).put(assess))
        .put(said)
        .on_submit(|| browser::focus("answer"))
}

/// What of the line found no field, and what it does not say.
fn left_out(into: Element, form: &Form, line: &WrittenLine) -> Element {
    let silent: Vec<_> = form
        .asked()
        .into_iter()
        .filter(|(field, entry)| line.filled.get(field.key).is_none() && !entry.text.is_empty())
        .map(|(field, entry)| {
            let id = field::id(field.key);
            let link = element("a").set("href", format!("#{id}"));
            let link = link.say(field.label).say(" ").text(entry.shown(field));
            link.on_click_to(move || browser::focus(&id))
        })
        .collect();
    let unplaced = (!line.unplaced.is_empty()).then(|| {
        let words = element("b").text(line.unplaced.join(", "));
        element("p").class("problem").say("Not understood, so left out: ").put(words)
    });
    let silent = (!silent.is_empty()).then(|| {
        element("p").class("silent").say("Not in the line, so as the fields have it: ").each(silent)
    });
    into.maybe(unplaced).maybe(silent)
}

/// The answer in short.
pub fn answer(assessment: &Assessment) -> Element {
    let chips = element("ul").class("chips").each(assessment.processes.iter().map(chip));
    element("div").put(element("p").class("headline").text(assessment.headline.clone())).put(chips)
}

/// How the order line was understood.
pub fn understood(assessment: &Assessment) -> Option<Element> {
    let title = element("h2").with("id", "understood").say("The order line as understood");
    let block = element("section").class("block").with("aria-labelledby", "understood").put(title);
    figures(&assessment.figures).map(|figures| block.put(figures))
}

fn chip(one: &ProcessAssessment) -> Element {
    let id = one.process.key();
    let name = element("span").class("process-name").say(one.process.name());
    let link = element("a").set("href", format!("#{id}")).put(name).say(" ");
    let link = link.put(vessel(one)).put(verdict(one.verdict));
    element("li").put(link.on_click_to(move || browser::focus(id)))
}

fn vessel(one: &ProcessAssessment) -> Element {
    element("span").class("vessel").say(one.process.vessel())
}

/// One process around its figures and its reasons.
pub fn process(one: &ProcessAssessment, inside: Html) -> Element {
    let id = one.process.key();
    let title = element("h2").with("id", id).with("tabindex", "-1").say(one.process.name());
    element("section")
        .class("panel process")
        .with("aria-labelledby", id)
        .put(title.say(" ").put(vessel(one)))
        .put(element("p").put(verdict(one.verdict)))
        .html(inside)
}

/// Every document an assessment rests on.
pub fn sources_of(assessment: &Assessment) -> Vec<Source> {
    let mut all = Vec::new();
    let of_figures =
        assessment.figures.iter().chain(assessment.processes.iter().flat_map(|one| &one.figures));
    let of_findings = assessment.processes.iter().flat_map(|one| &one.findings).map(|finding| finding.source);
    let of_notes = assessment.notes.iter().filter_map(|note| note.source);
    for source in of_figures.filter_map(|figure| figure.source).chain(of_findings).chain(of_notes) {
        if !all.contains(&source) {
            all.push(source);
        }
    }
    all
}
