//! What stands around every view: the name, the ways to go, notices, and what holds everywhere.

use yew::prelude::*;

use super::browser;
use super::state::{Action, State, View};

/// The name of the page and the ways to go.
pub fn header(state: &State) -> Html {
    let to_content = Callback::from(|event: MouseEvent| {
        event.prevent_default();
        browser::focus("main");
    });
    let way = |view: View| {
        let here = view == state.view || (view == View::List && matches!(state.view, View::Calculator(_)));
        html! { <li><a href={format!("#1/{}", view.key())} aria-current={here.then_some("page")}>{ view.title() }</a></li> }
    };
    html! {
        <header class="head">
            <a class="skip" href="#main" onclick={to_content}>{ "Skip to the content" }</a>
            <p class="name">{ emblem() }<span>{ "Kettle & Barrel" }</span></p>
            <nav aria-label="Page"><ul>{ way(View::Order) }{ way(View::List) }{ way(View::Saved) }</ul></nav>
        </header>
    }
}

/// A bolt head, half bright, half in the bath.
fn emblem() -> Html {
    html! {
        <svg class="emblem" viewBox="0 0 64 64" aria-hidden="true" focusable="false">
            <path class="steel" d="M32 5 55.4 18.5v27L32 59 8.6 45.5v-27z" />
            <path class="zinc" d="M8.6 33c8 6 15.600 6 23.400 0s15.400-6 23.400 0v12.500L32 59 8.600 45.500z" />
            <circle class="hole" cx="32" cy="32" r="10" />
        </svg>
    }
}

/// What there is to tell about the link that was opened.
pub fn notices(notices: &[String], state: &UseReducerDispatcher<State>) -> Html {
    let dismiss = {
        let state = state.clone();
        Callback::from(move |_: MouseEvent| state.dispatch(Action::Dismiss))
    };
    html! {
        <div role="status" class="notices">
            if !notices.is_empty() {
                <div class="notice">
                    <ul>{ for notices.iter().map(|notice| html! { <li>{ notice }</li> }) }</ul>
                    <button type="button" onclick={dismiss}>{ "Close" }</button>
                </div>
            }
        </div>
    }
}

/// What holds everywhere.
pub fn footer() -> Html {
    html! {
        <footer class="foot">
            <p>{ "Everything is computed on this device; nothing you type leaves it. After the first visit the page needs no network." }</p>
        </footer>
    }
}
