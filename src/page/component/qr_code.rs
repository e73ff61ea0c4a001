//! A link as a QR code, for paper and for a screen that others point at.

use yew::prelude::*;

use crate::sheet::code::code;

/// The code of a link; none for a link too long to be read from paper.
pub fn qr_code(link: &str) -> Option<Html> {
    let code = code(link)?;
    let size = code.size;
    Some(html! {
        <svg class="code" viewBox={format!("0 0 {size} {size}")} role="img" aria-label="The link as a QR code">
            <path d={code.path} />
        </svg>
    })
}
