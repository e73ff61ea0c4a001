//! What each rule says; a touch on one opens the calculator behind it, filled in.

use yew::prelude::*;

use super::sign::sign;
use super::source::{source_in_link, source_line};
use crate::calculator::{Address, Draft, Finding, Mark};
use crate::page::reducer::Dispatch;
use crate::page::state::Action;

/// What each rule says; `place` is what their ids begin with.
pub fn findings(findings: &[Finding], place: &str, dispatch: &Dispatch) -> Html {
    let mut before = None;
    let item = |(at, found): (usize, &Finding)| {
        // The word of a mark stands once; after that its sign is enough for the eye.
        let again = before.replace(found.mark) == Some(found.mark);
        finding(found, again, format!("{place}-{at}"), dispatch)
    };
    html! { <ul class="findings">{ for findings.iter().enumerate().map(item) }</ul> }
}

/// What each rule of a calculator says, under a title.
pub fn rules(all: &[Finding], dispatch: &Dispatch) -> Html {
    if all.is_empty() {
        return Html::default();
    }
    html! {
        <section class="block">
            <h2>{ "Rule by rule" }</h2>
            { findings(all, "rule", dispatch) }
        </section>
    }
}

fn finding(finding: &Finding, again: bool, id: String, dispatch: &Dispatch) -> Html {
    let class = match finding.mark {
        Mark::Met => "met",
        Mark::Note => "told",
        Mark::Term => "term",
        Mark::Condition | Mark::NotJudged => "asked",
        Mark::Bar => "forbidden",
    };
    let link = finding.opens.as_ref().map(|link| {
        let href = format!("#{}", Address::new(link.calculator, Draft::from(link.as_ref())));
        let leave = {
            let (id, dispatch) = (id.clone(), dispatch.clone());
            move |_: MouseEvent| dispatch.dispatch(Action::LeaveAt(id.clone()))
        };
        html! { <a {id} {href} onclick={leave}>{ finding.text.to_string() }</a> }
    });
    let source = if link.is_some() { source_in_link(finding.source) } else { source_line(finding.source) };
    html! {
        <li class={classes!("finding", class)}>
            { sign(finding.mark) }
            <div>
                <p>
                    <b class={if again { "hidden" } else { "word" }}>{ finding.mark.words() }</b>
                    { " " }
                    { link.unwrap_or_else(|| finding.text.to_string().into()) }
                </p>
                { source }
            </div>
        </li>
    }
}
