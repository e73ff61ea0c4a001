//! A link as a QR code, for paper and for a screen that others point at.

use yew::prelude::*;

use crate::sheet::code::{NO_CODE, code};

/// The code of a link; a sentence in its place where the link is too long to be read from paper.
pub fn qr_code(link: &str) -> Html {
    let Some(code) = code(link) else { return html! { <p class="no-code">{ NO_CODE }</p> } };
    let size = code.size;
    html! {
        <svg class="code" viewBox={format!("0 0 {size} {size}")} role="img" aria-label="The link as a QR code">
            <path d={code.path} />
        </svg>
    }
}
