//! A symbol in running text, its index set low.

use yew::prelude::*;

use crate::working::letter_and_index;

/// A symbol as the core writes it, `d2min` or `t_max`: the letter with its index set low.
pub fn symbol(symbol: &str) -> Html {
    let (letter, index) = letter_and_index(symbol);
    html! {
        <>
            <var>{ letter.to_owned() }</var>
            if !index.is_empty() { <sub>{ index }</sub> }
        </>
    }
}
