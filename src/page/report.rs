//! A report, set for the eye: figures, findings, working, cautions, sources.

use crate::calculator::{Address, Caution, Draft, Figure, Finding, Mark, Note, Report, Section, Verdict};
use crate::sentence::capital;
use crate::source::{Basis, Source};
use yew::prelude::*;

use super::element::{Element, element};
use super::state::{Action, State};

/// The answer of a report.
pub fn answer(report: &Report) -> Element {
    let headline = element("p").class("headline").text(headline(report));
    element("div").maybe(report.verdict.map(verdict)).put(headline)
}

/// What each rule says, under its title.
pub fn rules(found: &[Finding], state: &UseReducerDispatcher<State>) -> Option<Element> {
    (!found.is_empty()).then(|| block("block", "Rule by rule", findings(found, "rule", state)))
}

/// Further figures, each group in a fold.
pub fn sections(sections: &[Section]) -> Element {
    element("div").class("sections").each(sections.iter().map(section))
}

/// The answer in one sentence, without the verdict that stands before it anyhow.
pub fn headline(report: &Report) -> String {
    let after =
        report.verdict.and_then(|verdict| report.headline.strip_prefix(verdict.words())?.strip_prefix(": "));
    after.map_or_else(|| report.headline.clone(), capital)
}

/// A verdict with its sign; the words say it, the sign and the colour repeat it.
pub fn verdict(verdict: Verdict) -> Element {
    let (class, mark) = match verdict {
        Verdict::Suits => ("verdict suits", Mark::Met),
        Verdict::OnConditions => ("verdict conditions", Mark::Condition),
        Verdict::RuledOut => ("verdict out", Mark::Bar),
    };
    element("span").class(class).put(sign(mark)).put(element("span").say(verdict.words()))
}

/// The sign of a mark: a nut face, full, half, or struck through.
fn sign(mark: Mark) -> Element {
    let path = |class: &'static str, d: &'static str| element("path").class(class).with("d", d);
    let face = |class| path(class, "M8 .8 14.3 4.4V11.6L8 15.2 1.7 11.6V4.4z");
    let (first, second) = match mark {
        Mark::Met => (face("full"), path("cut", "M4.4 8.2 7 10.8 11.7 5.6")),
        Mark::Note => (face("rim"), path("rim", "M8 7.2v4.2M8 4.3v1.3")),
        Mark::Term => (face("rim"), path("rim", "M4.6 8.2 7 10.6 11.4 5.8")),
        Mark::Condition | Mark::NotJudged => (face("rim"), path("full", "M8 .8V15.2L1.7 11.6V4.4z")),
        Mark::Bar => (face("full"), path("cut", "M4.9 4.9 11.1 11.1M11.1 4.9 4.9 11.1")),
    };
    element("svg")
        .class("sign")
        .with("viewBox", "0 0 16 16")
        .with("aria-hidden", "true")
        .with("focusable", "false")
        .put(first)
        .put(second)
}

/// A part of the detail under its title.
pub fn block(class: &'static str, title: &'static str, content: Element) -> Element {
    element("section").class(class).put(element("h2").say(title)).put(content)
}

/// A part of the detail that is folded until it is touched.
fn fold(title: String, list: Element) -> Element {
    let title = element("summary").put(element("h2").text(title));
    element("details").class("block section").put(title).put(list)
}

/// Named values; a touch on one that is published says where.
pub fn figures(figures: &[Figure]) -> Option<Element> {
    (!figures.is_empty()).then(|| element("ul").class("figures").each(figures.iter().map(figure)))
}

fn figure(figure: &Figure) -> Element {
    let named = |into: Element| into.put(name_of(figure)).put(value(figure.value.to_string()));
    match figure.source {
        Some(source) => {
            let fold = element("details").put(named(element("summary"))).put(source_line(source));
            element("li").put(fold)
        }
        None => named(element("li").class("plain")),
    }
}

fn name_of(figure: &Figure) -> Element {
    let name = element("span").class("name").text(figure.name.to_string());
    if figure.symbol.is_empty() { name } else { name.say(" ").put(symbol(figure.symbol)) }
}

/// A value in its place behind its name.
pub fn value(shown: String) -> Element {
    element("span").class("value").text(shown)
}

fn section(section: &Section) -> Element {
    let item = |figure: &Figure| {
        let item = element("li").class("plain").put(name_of(figure)).put(value(figure.value.to_string()));
        item.each(figure.source.map(source_line))
    };
    let list = element("ul").class("figures small").each(section.figures.iter().map(item));
    fold(section.title.to_string(), list)
}

/// What each rule says; a touch on one opens the calculator behind it, filled in.
pub fn findings(findings: &[Finding], place: &str, state: &UseReducerDispatcher<State>) -> Element {
    let items = findings.iter().enumerate().map(|(at, found)| finding(found, format!("{place}-{at}"), state));
    element("ul").class("findings").each(items)
}

fn finding(finding: &Finding, id: String, state: &UseReducerDispatcher<State>) -> Element {
    let class = match finding.mark {
        Mark::Met => "finding met",
        Mark::Note => "finding told",
        Mark::Term => "finding term",
        Mark::Condition | Mark::NotJudged => "finding asked",
        Mark::Bar => "finding forbidden",
    };
    let said = finding.text.to_string();
    let told = element("p").put(element("b").class("word").say(finding.mark.words())).say(" ");
    let told = match &finding.opens {
        Some(link) => {
            let href = format!("#{}", Address::new(link.calculator, Draft::from(link.as_ref())));
            let leave = {
                let (state, id) = (state.clone(), id.clone());
                move |_| state.dispatch(Action::LeaveAt(id.clone()))
            };
            told.put(element("a").set("id", id).set("href", href).on_click(leave).text(said))
        }
        None => told.text(said),
    };
    let words = element("div").put(told).put(source_line(finding.source));
    element("li").class(class).put(sign(finding.mark)).put(words)
}

/// What the reader should know besides.
pub fn notes(notes: &[Note]) -> Option<Element> {
    let item = |note: &Note| {
        let said = element("li").put(element("p").text(note.text.to_string()));
        said.each(note.source.map(source_line))
    };
    (!notes.is_empty()).then(|| block("block notes", "Notes", element("ul").each(notes.iter().map(item))))
}

/// Cautions that go with the work; that the standard comes first is said below every result.
pub fn cautions(cautions: &[Caution]) -> Element {
    let others = cautions.iter().copied().filter(|caution| *caution != Caution::StandardFirst);
    let item = |caution: Caution| element("li").say(caution.words());
    let list = element("ul").each(others.chain([Caution::StandardFirst]).map(item));
    block("block cautions", "Cautions", list)
}

/// Every document the result rests on.
pub fn sources(sources: &[Source]) -> Option<Element> {
    let weak = sources.iter().any(|source| is_weak(source.basis)).then(|| element("li").say(WEAK));
    let items = sources.iter().map(|source| {
        element("li").put(source_line(*source)).put(element("p").class("document").say(source.document.about))
    });
    let list = element("ul").class("sources").each(weak).each(items);
    (!sources.is_empty()).then(|| fold(format!("Sources, {}", sources.len()), list))
}

/// Where a value is published, and how it is known; what was not read again is made to stand out.
pub fn source_line(source: Source) -> Element {
    let document = element("cite").say(source.document.name);
    let place = if source.place.is_empty() { document } else { document.say(", ").say(source.place) };
    let class = if is_weak(source.basis) { "basis weak" } else { "basis" };
    let basis = element("span").class(class).text(source.basis.to_string());
    element("p").class("source").put(place).say(" ").put(basis)
}

const WEAK: &str = "From memory: recalled and not read again, so check it in the document. Assumed: put in your \
                    own value. Common practice: a rule of the trade that no document states.";

/// Whether a value rests on less than a document that was read.
fn is_weak(basis: Basis) -> bool {
    matches!(basis, Basis::Memory | Basis::CommonPractice | Basis::Assumed)
}

/// A symbol of a formula, its index set low: `d2min`, `t_max`.
pub fn symbol(symbol: &str) -> Element {
    let at = symbol
        .find('_')
        .or_else(|| symbol.find(|letter: char| letter.is_ascii_digit()).filter(|at| *at > 0))
        .unwrap_or(symbol.len());
    let (letter, index) = symbol.split_at(at);
    let index = index.trim_start_matches('_').replace('_', ",");
    let set = element("var").text(letter.to_owned());
    if index.is_empty() { set } else { set.put(element("sub").text(index)) }
}
