//! Further figures, each group in a fold.

use yew::prelude::*;

use super::figure::figures;
use crate::calculator::Section;

/// Groups of figures.
pub fn sections(sections: &[Section]) -> Html {
    let group = |section: &Section| {
        html! {
            <details class="block section">
                <summary><h2>{ section.title.to_string() }</h2></summary>
                { figures(&section.figures, true) }
            </details>
        }
    };
    html! { <div class="sections">{ for sections.iter().map(group) }</div> }
}
