//! Named values; a touch on one that is published says where.

use yew::prelude::*;

use super::source::source_line;
use super::symbol::symbol;
use crate::calculator::Figure;

/// Named values, one below the other; whether each source stands open under its figure.
pub fn figures(figures: &[Figure], open: bool) -> Html {
    if figures.is_empty() {
        return Html::default();
    }
    let item = |figure: &Figure| match figure.source {
        Some(source) if !open => html! {
            <li>
                <details>
                    <summary>{ named(figure) }</summary>
                    { source_line(source) }
                </details>
            </li>
        },
        source => html! {
            <li class="plain">
                { named(figure) }
                { for source.map(source_line) }
            </li>
        },
    };
    let small = open.then_some("small");
    html! { <ul class={classes!("figures", small)}>{ for figures.iter().map(item) }</ul> }
}

/// A name, its symbol, its value.
fn named(figure: &Figure) -> Html {
    html! {
        <>
            <span class="name">
                { figure.name.to_string() }
                if !figure.symbol.is_empty() { { " " }{ symbol(figure.symbol) } }
            </span>
            <span class="value">{ figure.value.to_string() }</span>
        </>
    }
}
