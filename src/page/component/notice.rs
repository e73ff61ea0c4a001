//! What there is to tell about the link that was opened.

use yew::prelude::*;

use crate::page::reducer::use_dispatch;
use crate::page::state::{Action, Notice};

/// What the notice needs to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What there is to tell.
    pub notice: Notice,
}

/// The notice, until it is closed. Words from the link stand in a fold of their own, marked as such.
#[component]
pub fn NoticeBar(props: &Props) -> Html {
    let dispatch = use_dispatch();
    let Notice { said, words } = &props.notice;
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
