//! What holds everywhere.

use std::sync::LazyLock;

use yew::prelude::*;

use crate::source::document;

/// What stands at the foot of every view.
pub fn footer() -> Html {
    html! {
        <footer class="foot">
            <p>
                { "Everything is computed on this device; nothing you type leaves it. After the first visit the \
                   page needs no network." }
            </p>
            <p>{ concat!("Version ", env!("CARGO_PKG_VERSION"), ".") }</p>
            <details>
                <summary>{ "The documents it rests on, with the editions read" }</summary>
                <p>{ DOCUMENTS.as_str() }</p>
            </details>
        </footer>
    }
}

/// The names of the documents, which carry their editions; what has no number is no document.
static DOCUMENTS: LazyLock<String> = LazyLock::new(|| {
    let published = document::ALL.iter().map(|document| document.name);
    let names: Vec<&str> =
        published.filter(|name| name.contains(|letter: char| letter.is_ascii_digit())).collect();
    names.join("; ")
});
