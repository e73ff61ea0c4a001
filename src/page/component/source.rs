//! Where a value is published, and how it is known.

use yew::prelude::*;

use crate::calculator::Address;
use crate::page::state::{OF, View};
use crate::source::{Basis, Document, Source, document};

/// Where a value is published, which leads to the document; what was not read again is made to stand out.
pub fn source_line(source: Source) -> Html {
    line(source, Some(href(source.document)))
}

/// The same in a row that leads elsewhere as a whole: a finger would not tell the two apart.
pub fn source_in_link(source: Source) -> Html {
    line(source, None)
}

fn line(source: Source, href: Option<AttrValue>) -> Html {
    let Source { document, place, basis } = source;
    let name = match href {
        Some(href) => html! { <a {href}>{ document.name }</a> },
        None => document.name.into(),
    };
    let weak = is_weak(basis).then_some("weak");
    html! {
        <p class="source">
            <cite>
                { name }
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

/// The address of a document among the sources; made once, as an answer shows it many times.
pub fn href(document: &Document) -> AttrValue {
    thread_local! {
        static ALL: Vec<AttrValue> = document::ALL
            .iter()
            .map(|document| {
                let draft = [(OF, document.name)].into_iter().collect();
                format!("#{}", Address::new(View::Sources(None).key(), draft)).into()
            })
            .collect();
    }
    let place = document::ALL.iter().position(|other| std::ptr::eq(*other, document));
    ALL.with(|all| place.and_then(|place| all.get(place)).cloned()).unwrap_or_default()
}

/// Whether a value rests on less than a document that was read.
fn is_weak(basis: Basis) -> bool {
    matches!(basis, Basis::Memory | Basis::CommonPractice | Basis::Assumed)
}
