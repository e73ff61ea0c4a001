//! A report, set for the eye: figures, findings, working, cautions, sources.

use crate::calculator::{Address, Caution, Draft, Figure, Finding, Mark, Note, Report, Section, Verdict};
use crate::source::{Basis, Source};
use yew::prelude::*;

use super::picture::picture;
use super::state::{Action, State};
use super::working::working;

/// The answer of a report, and everything behind it.
pub fn reported(report: &Report, state: &UseReducerDispatcher<State>) -> (Html, Html) {
    let answer = html! {
        <>
            if let Some(found) = report.verdict { { verdict(found) } }
            <p class="headline">{ report.headline.clone() }</p>
        </>
    };
    let detail = html! {
        <>
            { figures(&report.figures) }
            if let Some(described) = &report.picture { { picture(described) } }
            if !report.findings.is_empty() {
                <section class="block" aria-labelledby="rules">
                    <h2 id="rules">{ "Rule by rule" }</h2>
                    { findings(&report.findings, "rule", state) }
                </section>
            }
            <div class="sections">{ for report.sections.iter().map(section) }</div>
            { working(&report.working) }
            { notes(&report.notes) }
            { cautions(&report.cautions) }
            { sources(&report.sources()) }
        </>
    };
    (answer, detail)
}

/// A verdict with its sign; the words say it, the sign and the colour repeat it.
pub fn verdict(verdict: Verdict) -> Html {
    let (class, mark) = match verdict {
        Verdict::Suits => ("verdict suits", Mark::Met),
        Verdict::OnConditions => ("verdict conditions", Mark::Asked),
        Verdict::RuledOut => ("verdict out", Mark::Forbidden),
    };
    html! { <span {class}>{ sign(mark) }<span>{ verdict.words() }</span></span> }
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

/// Named values; a touch on one that is published says where.
pub fn figures(figures: &[Figure]) -> Html {
    if figures.is_empty() {
        return Html::default();
    }
    html! { <ul class="figures">{ for figures.iter().map(figure) }</ul> }
}

fn figure(figure: &Figure) -> Html {
    let name = html! {
        <span class="name">{ figure.name.to_string() }if !figure.symbol.is_empty() { { " " }{ symbol(figure.symbol) } }</span>
    };
    let value = html! { <span class="value">{ figure.value.to_string() }</span> };
    match figure.source {
        Some(source) => html! {
            <li><details><summary>{ name }{ value }</summary>{ source_line(source) }</details></li>
        },
        None => html! { <li class="plain">{ name }{ value }</li> },
    }
}

fn section(section: &Section) -> Html {
    html! {
        <details class="block section">
            <summary><h2>{ section.title.to_string() }</h2></summary>
            <ul class="figures small">
                { for section.figures.iter().map(|figure| html! {
                    <li class="plain">
                        <span class="name">{ figure.name.to_string() }if !figure.symbol.is_empty() { { " " }{ symbol(figure.symbol) } }</span>
                        <span class="value">{ figure.value.to_string() }</span>
                        if let Some(source) = figure.source { { source_line(source) } }
                    </li>
                }) }
            </ul>
        </details>
    }
}

/// What each rule says; a touch on one opens the calculator behind it, filled in.
pub fn findings(findings: &[Finding], place: &str, state: &UseReducerDispatcher<State>) -> Html {
    html! {
        <ul class="findings">
            { for findings.iter().enumerate().map(|(at, found)| finding(found, format!("{place}-{at}"), state)) }
        </ul>
    }
}

fn finding(finding: &Finding, id: String, state: &UseReducerDispatcher<State>) -> Html {
    let (class, word) = match finding.mark {
        Mark::Met => ("met", "Met"),
        Mark::Told => ("told", "Note"),
        Mark::Asked => ("asked", "To do"),
        Mark::Forbidden => ("forbidden", "Rules it out"),
    };
    let text = match &finding.opens {
        Some(link) => {
            let href = format!("#{}", Address::new(link.calculator, Draft::from(link)));
            let leave = {
                let (state, id) = (state.clone(), id.clone());
                Callback::from(move |_: MouseEvent| state.dispatch(Action::LeaveAt(id.clone())))
            };
            html! { <a {id} {href} onclick={leave}>{ finding.text.to_string() }</a> }
        }
        None => html! { <span>{ finding.text.to_string() }</span> },
    };
    html! {
        <li class={classes!("finding", class)}>
            { sign(finding.mark) }
            <div><p><b class="word">{ word }</b>{ " " }{ text }</p>{ source_line(finding.source) }</div>
        </li>
    }
}

/// What the reader should know besides.
pub fn notes(notes: &[Note]) -> Html {
    if notes.is_empty() {
        return Html::default();
    }
    html! {
        <section class="block notes" aria-labelledby="notes">
            <h2 id="notes">{ "Notes" }</h2>
            <ul>{ for notes.iter().map(|note| html! {
                <li><p>{ note.text.to_string() }</p>if let Some(source) = note.source { { source_line(source) } }</li>
            }) }</ul>
        </section>
    }
}

/// Cautions that go with the work; that the standard comes first is said below every result.
pub fn cautions(cautions: &[Caution]) -> Html {
    html! {
        <section class="block cautions" aria-labelledby="cautions">
            <h2 id="cautions">{ "Cautions" }</h2>
            <ul>
                { for cautions.iter().filter(|caution| **caution != Caution::StandardFirst).map(|caution| html! { <li>{ caution.words() }</li> }) }
                <li>{ Caution::StandardFirst.words() }</li>
            </ul>
        </section>
    }
}

/// Every document the result rests on.
pub fn sources(sources: &[Source]) -> Html {
    if sources.is_empty() {
        return Html::default();
    }
    html! {
        <details class="block section">
            <summary><h2>{ format!("Sources, {}", sources.len()) }</h2></summary>
            <ul class="sources">
                if sources.iter().any(|source| is_weak(source.basis)) {
                    <li>{ "From memory: recalled and not read again, so check it in the document. Assumed: put in your own value. Common practice: a rule of the trade that no document states." }</li>
                }
                { for sources.iter().map(|source| html! {
                    <li>{ source_line(*source) }<p class="document">{ source.document.about }</p></li>
                }) }
            </ul>
        </details>
    }
}

/// Where a value is published, and how it is known; what was not read again is made to stand out.
pub fn source_line(source: Source) -> Html {
    let weak = is_weak(source.basis);
    let place = if source.place.is_empty() { String::new() } else { format!(", {}", source.place) };
    html! {
        <p class="source">
            <cite>{ source.document.name }{ place }</cite>{ " " }
            <span class={classes!("basis", weak.then_some("weak"))}>{ source.basis.to_string() }</span>
        </p>
    }
}

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
    html! { <var>{ letter }if !index.is_empty() { <sub>{ index }</sub> }</var> }
}
