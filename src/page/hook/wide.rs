//! Whether there is room for two columns.

use gloo_events::EventListener;
use gloo_utils::window;
use yew::prelude::*;

/// The width from which the form stands beside the answer; `style/result.css` has the same.
const WIDE: &str = "(min-width: 64rem)";

/// Whether the form stands beside the answer.
#[hook]
pub fn use_wide() -> bool {
    let wide = use_state_eq(is_wide);
    {
        let wide = wide.clone();
        use_effect_with((), move |()| {
            let list = window().match_media(WIDE).ok().flatten();
            let listener = list.map(|list| EventListener::new(&list, "change", move |_| wide.set(is_wide())));
            move || drop(listener)
        });
    }
    *wide
}

fn is_wide() -> bool {
    window().match_media(WIDE).ok().flatten().is_some_and(|list| list.matches())
}
