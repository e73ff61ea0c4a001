//! What holds everywhere.

use yew::prelude::*;

/// What stands at the foot of every view.
pub fn footer() -> Html {
    html! {
        <footer class="foot">
            <p>
                { "Everything is computed on this device; nothing you type leaves it. After the first visit the \
                   page needs no network." }
            </p>
            <p>{ concat!("Version ", env!("CARGO_PKG_VERSION"), ".") }</p>
            <p><a href="#1/sources">{ "What the numbers rest on: the documents, with the editions read" }</a></p>
        </footer>
    }
}
