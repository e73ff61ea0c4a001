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
            <p>
                { concat!(
                    "Version ", env!("CARGO_PKG_VERSION"), ". The editions of the documents stand beside their \
                     names, in the sources of every result."
                ) }
            </p>
        </footer>
    }
}
