//! A report, set for the eye: figures, findings, working, cautions, sources.

use crate::calculator::{Address, Caution, Draft, Figure, Finding, Mark, Note, Report, Section, Verdict};
use crate::sentence::capital;
use crate::source::{Basis, Source};
use yew::prelude::*;

use super::element::{element, text, word};
use super::picture::picture;
use super::state::{Action, State};
use super::working::working;

/// The answer of a report, and everything behind it.
pub fn reported(report: &Report, state: &UseReducerDispatcher<State>) -> (Html, Html) {
    let answer = html! {
        <>
            if let Some(found) = report.verdict { { verdict(found) } }
            <p class="headline">{ headline(report) }</p>
        </>
    };
    let mut detail = vec![figures(&report.figures)];
    detail.extend(report.picture.as_ref().map(picture));
    if !report.findings.is_empty() {
        detail.push(block("block", "Rule by rule", findings(&report.findings, "rule", state)));
    }
    detail.push(element("div", "sections", report.sections.iter().map(section).collect()));
    detail.extend([
        working(report.working.steps()),
        notes(&report.notes),
        cautions(&report.cautions),
        sources(&report.sources()),
    ]);
    let detail = detail.into_iter().collect();
    (answer, detail)
}

/// The answer in one sentence, without the verdict that stands before it anyhow.
pub fn headline(report: &Report) -> String {
    let after =
        report.verdict.and_then(|verdict| report.headline.strip_prefix(verdict.words())?.strip_prefix(": "));
    after.map_or_else(|| report.headline.clone(), capital)
}

/// A verdict with its sign; the words say it, the sign and the colour repeat it.
pub fn verdict(verdict: Verdict) -> Html {
    let (class, mark) = match verdict {
        Verdict::Suits => ("verdict suits", Mark::Met),
        Verdict::OnConditions => ("verdict conditions", Mark::Asked),
        Verdict::RuledOut => ("verdict out", Mark::Forbidden),
    };
    element("span", class, vec![sign(mark), element("span", "", vec![word(verdict.words())])])
}

/// The sign of a mark: a nut face, full, half, or struck through.
pub fn sign(mark: Mark) -> Html {
    let hex = "M8 .8 14.3 4.4V11.6L8 15.2 1.7 11.6V4.4z";
    let inner = match mark {
        Mark::Met => {
            html! { <><path d={hex} fill="currentColor" /><path class="cut" d="M4.4 8.2 7 10.8 11.7 5.6" /></> }
        }
        Mark::Told => {
            html! { <><path class="rim" d={hex} /><path class="rim" d="M8 7.2v4.2M8 4.3v1.3" /></> }
        }
        Mark::Asked => {
            html! { <><path class="rim" d={hex} /><path d="M8 .8V15.2L1.7 11.6V4.4z" fill="currentColor" /></> }
        }
        Mark::Forbidden => {
            html! { <><path d={hex} fill="currentColor" /><path class="cut" d="M4.9 4.9 11.1 11.1M11.1 4.9 4.9 11.1" /></> }
        }
    };
    html! { <svg class="sign" viewBox="0 0 16 16" aria-hidden="true" focusable="false">{ inner }</svg> }
}

/// A part of the detail under its title.
pub fn block(class: &'static str, title: &'static str, content: Html) -> Html {
    element("section", class, vec![element("h2", "", vec![word(title)]), content])
}

/// A part of the detail that is folded until it is touched.
fn fold(title: String, items: Vec<Html>, class: &'static str) -> Html {
    let title = element("summary", "", vec![element("h2", "", vec![text(title)])]);
    element("details", "block section", vec![title, element("ul", class, items)])
}

/// Named values; a touch on one that is published says where.
pub fn figures(figures: &[Figure]) -> Html {
    if figures.is_empty() {
        return Html::default();
    }
    element("ul", "figures", figures.iter().map(figure).collect())
}

fn figure(figure: &Figure) -> Html {
    let named = vec![name_of(figure), value(figure.value.to_string())];
    match figure.source {
        Some(source) => {
            let fold = element("details", "", vec![element("summary", "", named), source_line(source)]);
            element("li", "", vec![fold])
        }
        None => element("li", "plain", named),
    }
}

fn name_of(figure: &Figure) -> Html {
    let mut name = vec![text(figure.name.to_string())];
    if !figure.symbol.is_empty() {
        name.extend([word(" "), symbol(figure.symbol)]);
    }
    element("span", "name", name)
}

/// A value in its place behind its name.
pub fn value(shown: String) -> Html {
    element("span", "value", vec![text(shown)])
}

fn section(section: &Section) -> Html {
    let item = |figure: &Figure| {
        let mut item = vec![name_of(figure), value(figure.value.to_string())];
        item.extend(figure.source.map(source_line));
        element("li", "plain", item)
    };
    fold(section.title.to_string(), section.figures.iter().map(item).collect(), "figures small")
}

/// What each rule says; a touch on one opens the calculator behind it, filled in.
pub fn findings(findings: &[Finding], place: &str, state: &UseReducerDispatcher<State>) -> Html {
    let items = findings.iter().enumerate();
    element(
        "ul",
        "findings",
        items.map(|(at, found)| finding(found, format!("{place}-{at}"), state)).collect(),
    )
}

fn finding(finding: &Finding, id: String, state: &UseReducerDispatcher<State>) -> Html {
    let (class, mark) = match finding.mark {
        Mark::Met => ("finding met", "Met"),
        Mark::Told => ("finding told", "Note"),
        Mark::Asked => ("finding asked", "To do"),
        Mark::Forbidden => ("finding forbidden", "Rules it out"),
    };
    let said = text(finding.text.to_string());
    let said = match &finding.opens {
        Some(link) => {
            let href = format!("#{}", Address::new(link.calculator, Draft::from(link)));
            let leave = {
                let (state, id) = (state.clone(), id.clone());
                Callback::from(move |_: MouseEvent| state.dispatch(Action::LeaveAt(id.clone())))
            };
            html! { <a {id} {href} onclick={leave}>{ said }</a> }
        }
        None => said,
    };
    let told = element("p", "", vec![element("b", "word", vec![word(mark)]), word(" "), said]);
    element(
        "li",
        class,
        vec![sign(finding.mark), element("div", "", vec![told, source_line(finding.source)])],
    )
}

/// What the reader should know besides.
pub fn notes(notes: &[Note]) -> Html {
    if notes.is_empty() {
        return Html::default();
    }
    let item = |note: &Note| {
        let mut item = vec![element("p", "", vec![text(note.text.to_string())])];
        item.extend(note.source.map(source_line));
        element("li", "", item)
    };
    block("block notes", "Notes", element("ul", "", notes.iter().map(item).collect()))
}

/// Cautions that go with the work; that the standard comes first is said below every result.
pub fn cautions(cautions: &[Caution]) -> Html {
    let others = cautions.iter().copied().filter(|caution| *caution != Caution::StandardFirst);
    let item = |caution: Caution| element("li", "", vec![word(caution.words())]);
    let items = others.chain([Caution::StandardFirst]).map(item).collect();
    block("block cautions", "Cautions", element("ul", "", items))
}

/// Every document the result rests on.
pub fn sources(sources: &[Source]) -> Html {
    if sources.is_empty() {
        return Html::default();
    }
    let mut items = Vec::with_capacity(sources.len() + 1);
    if sources.iter().any(|source| is_weak(source.basis)) {
        items.push(element("li", "", vec![word(WEAK)]));
    }
    items.extend(sources.iter().map(|source| {
        let about = element("p", "document", vec![word(source.document.about)]);
        element("li", "", vec![source_line(*source), about])
    }));
    fold(format!("Sources, {}", sources.len()), items, "sources")
}

/// Where a value is published, and how it is known; what was not read again is made to stand out.
pub fn source_line(source: Source) -> Html {
    let mut place = vec![word(source.document.name)];
    if !source.place.is_empty() {
        place.extend([word(", "), word(source.place)]);
    }
    let class = if is_weak(source.basis) { "basis weak" } else { "basis" };
    let basis = element("span", class, vec![text(source.basis.to_string())]);
    element("p", "source", vec![element("cite", "", place), word(" "), basis])
}

const WEAK: &str = "From memory: recalled and not read again, so check it in the document. Assumed: put in your \
                    own value. Common practice: a rule of the trade that no document states.";

/// Whether a value rests on less than a document that was read.
fn is_weak(basis: Basis) -> bool {
    matches!(basis, Basis::Memory | Basis::CommonPractice | Basis::Assumed)
}

/// A symbol of a formula, its index set low: `d2min`, `t_max`.
pub fn symbol(symbol: &str) -> Html {
    let at = symbol
        .find('_')
        .or_else(|| symbol.find(|letter: char| letter.is_ascii_digit()).filter(|at| *at > 0))
        .unwrap_or(symbol.len());
    let (letter, index) = symbol.split_at(at);
    let index = index.trim_start_matches('_').replace('_', ",");
    let mut set = vec![text(letter.to_owned())];
    if !index.is_empty() {
        set.push(element("sub", "", vec![text(index)]));
    }
    element("var", "", set)
}
