//! What the reader should know besides.

use yew::prelude::*;

use super::source::source_line;
use crate::calculator::{Caution, Note};

/// Notes, each with the source it rests on if it states a fact.
pub fn notes(notes: &[Note]) -> Html {
    if notes.is_empty() {
        return Html::default();
    }
    let item = |note: &Note| {
        html! { <li><p>{ note.text.to_string() }</p>{ for note.source.map(source_line) }</li> }
    };
    html! {
        <section class="block notes">
            <h2>{ "Notes" }</h2>
            <ul>{ for notes.iter().map(item) }</ul>
        </section>
    }
}

/// Cautions that go with the work; that the standard comes first is said below every result.
pub fn cautions(cautions: &[Caution]) -> Html {
    let others = cautions.iter().copied().filter(|caution| *caution != Caution::StandardFirst);
    let item = |caution: Caution| html! { <li>{ caution.words() }</li> };
    html! {
        <section class="block cautions">
            <h2>{ "Cautions" }</h2>
            <ul>{ for others.chain([Caution::StandardFirst]).map(item) }</ul>
        </section>
    }
}
