//! The name of the page and the ways to go.

use yew::prelude::*;

use super::settings::settings_fold;
use crate::page::browser;
use crate::page::reducer::use_dispatch;
use crate::page::state::{Settings, View};

/// What the header needs to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What is open.
    pub view: View,
    /// What was chosen for the whole page.
    pub settings: Settings,
}

/// The name of the page and the ways to go.
#[component]
pub fn Header(props: &Props) -> Html {
    let dispatch = use_dispatch();
    let skip = |event: MouseEvent| {
        event.prevent_default();
        browser::focus("main");
    };
    let way = |view: View| {
        let inside = view == View::Catalogue && matches!(props.view, View::Calculator(_));
        let here = (view == props.view || inside).then_some("page");
        html! {
            <li><a href={format!("#1/{}", view.key())} aria-current={here}>{ view.title() }</a></li>
        }
    };
    html! {
        <header class="head">
            <a class="skip" href="#main" onclick={skip}>{ "Skip to the content" }</a>
            <p class="name">{ emblem() }<span>{ "Kettle & Barrel" }</span></p>
            <nav aria-label="Page">
                <ul>{ for [View::Order, View::List, View::Catalogue, View::Course, View::Saved].map(way) }</ul>
            </nav>
            { settings_fold(props.settings, &dispatch) }
        </header>
    }
}

/// A bolt head, half bright, half in the bath.
fn emblem() -> Html {
    html! {
        <svg class="emblem" viewBox="0 0 64 64" aria-hidden="true" focusable="false">
            <path class="steel" d="M32 5 55.4 18.5v27L32 59 8.6 45.5v-27z" />
            <path class="zinc" d="M8.6 33c8 6 15.6 6 23.4 0s15.4-6 23.4 0v12.5L32 59 8.6 45.5z" />
            <circle class="hole" cx="32" cy="32" r="10" />
        </svg>
    }
}
