//! What the page asks of the browser beyond elements and events, and nothing else does.
//!
//! Where a browser lacks something or forbids it, the page goes on without.

mod device;
mod file;
mod stopped;

pub use device::Device;
pub use file::{download, download_blob};
pub use stopped::{remember, tell_when_stopped};

use gloo_events::EventListener;
use gloo_utils::{document, window};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Element, FocusOptions, HtmlElement};

/// What follows the page's name in the address, from `#` on.
pub fn hash() -> String {
    window().location().hash().unwrap_or_default()
}

/// The whole address of the page with this behind `#`.
pub fn full_address(hash: &str) -> String {
    let href = window().location().href().unwrap_or_default();
    let page = href.split_once('#').map_or(href.as_str(), |(page, _)| page);
    format!("{page}#{hash}")
}

/// Writes the address anew, without a step in the history.
pub fn replace_address(hash: &str) {
    let hash = format!("#{hash}");
    if self::hash() != hash
        && let Ok(history) = window().history()
    {
        // Browsers refuse too many writes in a short time; the next one will do.
        let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(&hash));
    }
}

/// The element of that id.
pub fn element(id: &str) -> Option<HtmlElement> {
    document().get_element_by_id(id)?.dyn_into().ok()
}

/// Moves the focus to an element and brings it into view, out of any fold.
pub fn focus(id: &str) {
    let Some(element) = element(id) else { return };
    while let Ok(Some(fold)) = element.closest("details:not([open])") {
        let _ = fold.set_attribute("open", "");
    }
    element.scroll_into_view();
    let _ = element.focus();
}

/// Scrolls to the top and moves the focus to an element without bringing it into view.
pub fn focus_at_top(id: &str) {
    if let Some(element) = element(id) {
        let options = FocusOptions::new();
        options.set_prevent_scroll(true);
        let _ = element.focus_with_options(&options);
    }
    window().scroll_to_with_x_and_y(0.0, 0.0);
}

/// Prints what is open.
pub fn print() {
    let _ = window().print();
}

/// Copies a text; whether it went well. Only a page from a safe origin has a clipboard.
pub async fn copy(text: &str) -> bool {
    let clipboard = window().navigator().clipboard();
    !clipboard.is_undefined()
        && wasm_bindgen_futures::JsFuture::from(clipboard.write_text(text)).await.is_ok()
}

/// The time by the device's clock, in UTC as ISO 8601 writes it.
pub fn now() -> String {
    js_sys::Date::new_0().to_iso_string().into()
}

/// A time as the device writes one: its date and time of day.
pub fn local_time(time: &str) -> Option<String> {
    let date = js_sys::Date::new(&time.into());
    let known = !time.is_empty() && !date.get_time().is_nan();
    known.then(|| {
        let two = |number: u32| format!("{number:02}");
        let day = format!("{}-{}-{}", date.get_full_year(), two(date.get_month() + 1), two(date.get_date()));
        format!("{day} {}:{}", two(date.get_hours()), two(date.get_minutes()))
    })
}

/// Whether another page holds this one in a frame.
pub fn is_framed() -> bool {
    window().top().ok().flatten().is_none_or(|top| top != window())
}

/// Opens the workings of exercises before printing, and closes those again that were closed: on paper
/// nobody can. Every other fold is printed as the reader left it.
pub fn unfold_for_print() {
    // They last as long as the page.
    EventListener::new(&window(), "beforeprint", |_| {
        each(".question>.working details:not([open])", |fold| {
            let _ = fold.set_attribute("data-unfolded", "");
            let _ = fold.set_attribute("open", "");
        });
    })
    .forget();
    EventListener::new(&window(), "afterprint", |_| {
        each("details[data-unfolded]", |fold| {
            let _ = fold.remove_attribute("data-unfolded");
            let _ = fold.remove_attribute("open");
        });
    })
    .forget();
}

fn each(selector: &str, act: impl Fn(&Element)) {
    let Ok(found) = document().query_selector_all(selector) else { return };
    for place in 0..found.length() {
        if let Some(element) = found.item(place).and_then(|node| node.dyn_into().ok()) {
            act(&element);
        }
    }
}
