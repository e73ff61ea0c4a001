//! What the numbers rest on: every document with what is taken from it and what was compared.

use yew::prelude::*;

use super::source::href;
use super::title::title;
use crate::page::state::View;
use crate::rule::RULES;
use crate::source::ground::{self, Ground};
use crate::source::{Document, document};

/// Every document, or the one that is open.
pub fn sources_view(view: View) -> Html {
    match view.document() {
        Some(document) => one(document),
        None => all(view),
    }
}

fn all(view: View) -> Html {
    let item = |document: &&'static Document| {
        html! {
            <li>
                <p><a href={href(document)}>{ document.name }</a>{ ": " }{ document.about }</p>
                <p class="document">{ counts(ground::of(document)) }</p>
            </li>
        }
    };
    html! {
        <>
            { title(view.title(), "Every document, what is taken from it, and what was compared with it.", None) }
            <p>{ ground::totals_told(ground::totals()) }</p>
            <ul class="sources">{ for document::ALL.iter().map(item) }</ul>
        </>
    }
}

fn one(document: &'static Document) -> Html {
    let rules = RULES.iter().filter(|rule| rule.source.document == document).map(|rule| {
        let source = rule.source;
        html! { <li>{ rule.key.key().replace('-', " ") }{ ": " }{ source.place }{ ", " }{ source.basis.to_string() }</li> }
    });
    let rules: Vec<Html> = rules.collect();
    html! {
        <>
            { title(document.name, document.about, None) }
            <p>{ counts(ground::of(document)) }</p>
            if !rules.is_empty() {
                <h2>{ "Rules that judge by it" }</h2>
                <ul class="sources">{ for rules }</ul>
            }
            <p>
                { "Each constant by its name and place: " }
                <code>{ "kettle-barrel sources " }{ document.name }</code>
                { " in a terminal." }
            </p>
            <p><a href="#1/sources">{ "All documents" }</a></p>
        </>
    }
}

/// What is taken from a document and what was compared, in words.
fn counts(ground: Option<Ground>) -> String {
    ground.map_or_else(|| "Named as the document to open.".to_owned(), |ground| ground.to_string())
}
