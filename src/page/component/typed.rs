//! What was typed.

use yew::prelude::*;

/// What was typed into a line or an area; both have a value.
pub fn typed(event: &InputEvent) -> String {
    event.target_unchecked_into::<web_sys::HtmlInputElement>().value()
}
