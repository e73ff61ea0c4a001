//! Where a value is published, and how it is known.

use yew::prelude::*;

use crate::source::{Basis, Source};

/// Where a value is published; what was not read again is made to stand out.
pub fn source_line(source: Source) -> Html {
    let Source { document, place, basis } = source;
    let weak = is_weak(basis).then_some("weak");
    html! {
        <p class="source">
            <cite>
                { document.name }
                if !place.is_empty() { { ", " }{ place } }
            </cite>
            { " " }
            <span class={classes!("basis", weak)}>{ basis.to_string() }</span>
        </p>
    }
}

/// Every document that a result rests on, in a fold.
pub fn sources(sources: &[Source]) -> Html {
    if sources.is_empty() {
        return Html::default();
    }
    let item = |source: &Source| {
        html! { <li>{ source_line(*source) }<p class="document">{ source.document.about }</p></li> }
    };
    html! {
        <details class="block section">
            <summary><h2>{ format!("Sources, {}", sources.len()) }</h2></summary>
            <ul class="sources">
                if sources.iter().any(|source| is_weak(source.basis)) {
                    <li>
                        { "From memory: recalled and not read again, so check it in the document. Assumed: put in \
                           your own value. Common practice: a rule of the trade that no document states." }
                    </li>
                }
                { for sources.iter().map(item) }
            </ul>
        </details>
    }
}

/// Whether a value rests on less than a document that was read.
fn is_weak(basis: Basis) -> bool {
    matches!(basis, Basis::Memory | Basis::CommonPractice | Basis::Assumed)
}
