//! The sign of a mark: a nut face, full, half, or struck through.

use yew::prelude::*;

use crate::calculator::Mark;

/// The sign; the words beside it say the same.
pub fn sign(mark: Mark) -> Html {
    const FACE: &str = "M8 .8 14.3 4.4V11.6L8 15.2 1.7 11.6V4.4z";
    let [(face, outline), (inner, line)] = match mark {
        Mark::Met => [("full", FACE), ("cut", "M4.4 8.2 7 10.8 11.7 5.6")],
        Mark::Note => [("rim", FACE), ("rim", "M8 7.2v4.2M8 4.3v1.3")],
        Mark::Term => [("rim", FACE), ("rim", "M4.6 8.2 7 10.6 11.4 5.8")],
        Mark::Condition => [("rim", FACE), ("full", "M8 .8V15.2L1.7 11.6V4.4z")],
        Mark::NotJudged => [("rim", FACE), ("rim", "M6 6.2a2 2 0 1 1 2.6 2c-.5.2-.6.5-.6 1.1M8 11.2v1.2")],
        Mark::Bar => [("full", FACE), ("cut", "M4.9 4.9 11.1 11.1M11.1 4.9 4.9 11.1")],
    };
    html! {
        <svg class="sign" viewBox="0 0 16 16" aria-hidden="true" focusable="false">
            <path class={face} d={outline} />
            <path class={inner} d={line} />
        </svg>
    }
}
