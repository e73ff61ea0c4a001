//! What stands around every view: the name, the ways to go, notices, and what holds everywhere.

use yew::prelude::*;

use super::browser;
use super::element::{Element, button, element};
use super::state::{Action, State, View};

/// The name of the page and the ways to go.
pub fn header(state: &State) -> Element {
    let way = |view: View| {
        let here = view == state.view || (view == View::List && matches!(state.view, View::Calculator(_)));
        let link = element("a").set("href", format!("#1/{}", view.key())).say(view.title());
        element("li").put(if here { link.with("aria-current", "page") } else { link })
    };
    let skip = element("a").class("skip").with("href", "#main").say("Skip to the content");
    let name = element("p").class("name").put(emblem()).put(element("span").say("Kettle & Barrel"));
    let ways = element("ul").each([View::Order, View::List, View::Saved].map(way));
    element("header")
        .class("head")
        .put(skip.on_click_to(|| browser::focus("main")))
        .put(name)
        .put(element("nav").with("aria-label", "Page").put(ways))
}

/// A bolt head, half bright, half in the bath.
fn emblem() -> Element {
    let path = |class: &'static str, d: &'static str| element("path").class(class).with("d", d);
    element("svg")
        .class("emblem")
        .with("viewBox", "0 0 64 64")
        .with("aria-hidden", "true")
        .with("focusable", "false")
        .put(path("steel", "M32 5 55.4 18.5v27L32 59 8.6 45.5v-27z"))
        .put(path("zinc", "M8.6 33c8 6 15.6 6 23.4 0s15.4-6 23.4 0v12.5L32 59 8.6 45.5z"))
        .put(element("circle").class("hole").with("cx", "32").with("cy", "32").with("r", "10"))
}

/// What there is to tell about the link that was opened.
pub fn notices(notices: &[String], state: &UseReducerDispatcher<State>) -> Element {
    let place = element("div").class("notices").with("role", "status");
    if notices.is_empty() {
        return place;
    }
    let state = state.clone();
    let list = element("ul").each(notices.iter().map(|notice| element("li").text(notice.clone())));
    let close = button("Close").on_click(move |_| state.dispatch(Action::Dismiss));
    place.put(element("div").class("notice").put(list).put(close))
}

/// The title of a view, with a way back where there is one.
pub fn title(back: Option<Element>, title: &'static str, lead: &'static str) -> Element {
    element("div")
        .class("title")
        .maybe(back)
        .put(element("h1").with("id", "title").with("tabindex", "-1").say(title))
        .put(element("p").class("lead").say(lead))
}

/// What holds everywhere.
pub fn footer() -> Element {
    element("footer").class("foot").put(element("p").say(
        "Everything is computed on this device; nothing you type leaves it. After the first visit the page \
         needs no network.",
    ))
}
