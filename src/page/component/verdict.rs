//! A verdict with its sign; the words say it, the sign and the colour repeat it.
//! What suits and is not ordered has neither the sign nor the colour of what may be ordered.

use yew::prelude::*;

use super::sign::sign;
use crate::calculator::{Mark, Verdict};
use crate::order::Standing;

/// A verdict with its sign.
pub fn verdict(verdict: Verdict) -> Html {
    let (class, mark) = look(verdict);
    html! { <span class={classes!("verdict", class)}>{ sign(mark) }<span>{ verdict.words() }</span></span> }
}

/// What a process is to an order, with its sign.
pub fn standing(standing: Standing) -> Html {
    let (class, mark) = look_of(standing);
    html! { <span class={classes!("verdict", class)}>{ sign(mark) }<span>{ standing.words() }</span></span> }
}

/// The class and the sign of what a process is to an order.
pub fn look_of(standing: Standing) -> (&'static str, Mark) {
    if standing.aside.is_some() { ("aside", Mark::Note) } else { look(standing.verdict) }
}

/// The class and the sign of a verdict.
fn look(verdict: Verdict) -> (&'static str, Mark) {
    match verdict {
        Verdict::Suits => ("suits", Mark::Met),
        Verdict::OnConditions => ("conditions", Mark::Condition),
        Verdict::RuledOut => ("out", Mark::Bar),
    }
}
