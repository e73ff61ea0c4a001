//! What there is to tell about the link that was opened.

use yew::prelude::*;

use crate::page::reducer::Dispatch;
use crate::page::state::{Action, Notice};

/// The notice, until it is closed. Words from the link stand in a fold of their own, marked as such.
pub fn notice_bar(notice: &Notice, dispatch: &Dispatch) -> Html {
    let Notice { said, words } = notice;
    let dispatch = dispatch.clone();
    html! {
        <div class="notices" role="status">
            if !said.is_empty() {
                <div class="notice">
                    <div>
                        <ul>{ for said.iter().map(|said| html! { <li>{ said.clone() }</li> }) }</ul>
                        if !words.is_empty() {
                            <details>
                                <summary>{ "What the link says there" }</summary>
                                <ul class="quoted">
                                    { for words.iter().map(|word| html! { <li><code>{ word.clone() }</code></li> }) }
                                </ul>
                            </details>
                        }
                    </div>
                    <button type="button" onclick={move |_| dispatch.dispatch(Action::Dismiss)}>{ "Close" }</button>
                </div>
            }
        </div>
    }
}
