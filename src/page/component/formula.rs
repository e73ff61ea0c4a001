//! A formula, set as mathematics; copied, it is a line of text that means the same.

use yew::prelude::*;

use crate::quantity::Shown;
use crate::working::{Node, Segment, letter_and_index, named, plain, tree};

/// Pieces of a formula, which live as long as the step that they are cut from.
pub fn formula(before: &str, pieces: &[Segment<'_>]) -> Html {
    let text = format!("{before} {}", plain(pieces));
    let Some(node) = tree(pieces) else { return html! { <span class="formula">{ text }</span> } };
    // Of a long sum each part is set by itself, so that the line can break between them.
    let parts = match node {
        Node::Row(parts) => parts,
        other => vec![("", other)],
    };
    let set = parts.iter().enumerate().map(|(at, (sign, part))| {
        html! {
            <math>
                if at == 0 { { for relation(before) } }
                if !sign.is_empty() { <mo>{ (*sign).to_owned() }</mo> }
                { mathematics(part) }
            </math>
        }
    });
    html! {
        <span class="formula">
            <span class="for-the-eye">{ for set }</span>
            <span class="for-the-copy" aria-hidden="true">{ text }</span>
        </span>
    }
}

/// What stands before a formula: its symbol and the sign of equality, or the sign alone.
fn relation(before: &str) -> Vec<Html> {
    let (symbol, sign) = before.rsplit_once(' ').unwrap_or(("", before));
    let symbol = (!symbol.is_empty()).then(|| indexed(symbol));
    symbol.into_iter().chain([html! { <mo>{ sign.to_owned() }</mo> }]).collect()
}

fn mathematics(node: &Node<'_>) -> Html {
    match node {
        Node::Number(digits) => html! { <mn>{ (*digits).to_owned() }</mn> },
        Node::Symbol(symbol, index) => indexed(&named(symbol, *index)),
        Node::Value(shown) => value(*shown),
        Node::Row(parts) => {
            let part = |(sign, part): &(&str, Node<'_>)| {
                html! {
                    <>
                        if !sign.is_empty() { <mo>{ (*sign).to_owned() }</mo> }
                        { mathematics(part) }
                    </>
                }
            };
            html! { <mrow>{ for parts.iter().map(part) }</mrow> }
        }
        Node::Fraction(over, under) => {
            html! { <mfrac>{ mathematics(over.bare()) }{ mathematics(under.bare()) }</mfrac> }
        }
        Node::Power(base, exponent) => {
            html! { <msup>{ mathematics(base) }{ mathematics(exponent.bare()) }</msup> }
        }
        Node::Root(inside) => html! { <msqrt>{ mathematics(inside) }</msqrt> },
        Node::Call(name, parts) => {
            let part = |(at, part): (usize, &Node<'_>)| {
                html! { <>if at > 0 { <mo separator="true">{ "," }</mo> }{ mathematics(part) }</> }
            };
            let name = match *name {
                "log10" => html! { <msub><mi>{ "log" }</mi><mn>{ "10" }</mn></msub> },
                other => html! { <mi>{ other.to_owned() }</mi> },
            };
            html! {
                <mrow>
                    { name }<mo>{ "(" }</mo>{ for parts.iter().enumerate().map(part) }<mo>{ ")" }</mo>
                </mrow>
            }
        }
        Node::Bracket(inside) => {
            html! { <mrow><mo>{ "(" }</mo>{ mathematics(inside) }<mo>{ ")" }</mo></mrow> }
        }
    }
}

fn indexed(symbol: &str) -> Html {
    match letter_and_index(symbol) {
        (letter, index) if index.is_empty() => html! { <mi>{ letter.to_owned() }</mi> },
        (letter, index) => html! { <msub><mi>{ letter.to_owned() }</mi><mi>{ index }</mi></msub> },
    }
}

fn value(shown: Shown) -> Html {
    let unit = shown.unit.symbol;
    html! {
        <mrow>
            <mn>{ shown.digits() }</mn>
            if !unit.is_empty() { <mtext>{ format!("\u{a0}{unit}") }</mtext> }
        </mrow>
    }
}
