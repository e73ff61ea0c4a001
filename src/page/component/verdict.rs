//! A verdict with its sign; the words say it, the sign and the colour repeat it.

use yew::prelude::*;

use super::sign::sign;
use crate::calculator::{Mark, Verdict};

/// A verdict with its sign.
pub fn verdict(verdict: Verdict) -> Html {
    let (class, mark) = look(verdict);
    html! { <span class={classes!("verdict", class)}>{ sign(mark) }<span>{ verdict.words() }</span></span> }
}

/// The class and the sign of a verdict.
pub fn look(verdict: Verdict) -> (&'static str, Mark) {
    match verdict {
        Verdict::Suits => ("suits", Mark::Met),
        Verdict::OnConditions => ("conditions", Mark::Condition),
        Verdict::RuledOut => ("out", Mark::Bar),
    }
}
