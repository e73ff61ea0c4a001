//! One process of an order line: its verdict, its figures, its reasons.

use yew::prelude::*;

use super::figure::figures;
use super::finding::findings;
use super::verdict::standing;
use crate::order::{BEHIND, NEAREST, ProcessAssessment};
use crate::page::reducer::Dispatch;
use crate::sentence::capital;

/// One process, in a panel.
pub fn process(assessed: &ProcessAssessment, dispatch: &Dispatch) -> Html {
    let ProcessAssessment { process, figures: shown, change, findings: said, folded, .. } = assessed;
    let id = process.key();
    html! {
        <section class="panel process" aria-labelledby={id}>
            <h2 {id} tabindex="-1">
                { process.name() }{ " " }<span class="vessel">{ process.vessel() }</span>
            </h2>
            <p>{ standing(assessed.standing()) }</p>
            { figures(shown, false) }
            if let Some(change) = change {
                <p class="change"><b>{ format!("{NEAREST}: ") }</b>{ change.clone() }</p>
            }
            { findings(said, id, dispatch) }
            if !folded.is_empty() {
                <details class="behind">
                    <summary>{ format!("{}, {}", capital(BEHIND), folded.len()) }</summary>
                    { findings(folded, &format!("{id}-behind"), dispatch) }
                </details>
            }
        </section>
    }
}
