//! What the page asks of the browser, and nothing else does.
//!
//! Where a browser lacks something or forbids it, the page goes on without.

use js_sys::{Array, Promise};
use wasm_bindgen::prelude::*;
use web_sys::{Document, Event, HtmlAnchorElement, HtmlElement, Storage, Window};
use yew::Callback;

fn window() -> Option<Window> {
    web_sys::window()
}

fn document() -> Option<Document> {
    window()?.document()
}

/// The element of that id.
pub fn element(id: &str) -> Option<HtmlElement> {
    document()?.get_element_by_id(id)?.dyn_into().ok()
}

/// What follows the page's name in the address, from `#` on.
pub fn hash() -> String {
    window().and_then(|window| window.location().hash().ok()).unwrap_or_default()
}

/// The whole address of the page with this behind `#`.
pub fn full_address(hash: &str) -> String {
    let href = window().and_then(|window| window.location().href().ok()).unwrap_or_default();
    let page = href.split_once('#').map_or(href.as_str(), |(page, _)| page);
    format!("{page}#{hash}")
}

/// Writes the address anew, without a step in the history.
pub fn replace_address(hash: &str) {
    let hash = format!("#{hash}");
    if self::hash() == hash {
        return;
    }
    if let Some(history) = window().and_then(|window| window.history().ok()) {
        // Browsers refuse too many writes in a short time; the next one will do.
        let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(&hash));
    }
}

/// Calls back with what follows `#`, whenever another address of the page is opened.
pub fn on_address(opened: Callback<String>) -> impl FnOnce() {
    listen("popstate", move || opened.emit(hash()))
}

/// Opens every fold before printing, and closes those again that were closed.
pub fn unfold_for_print() {
    let before = listen("beforeprint", || {
        each_fold(|fold| {
            if !fold.has_attribute("open") {
                let _ = fold.set_attribute("data-unfolded", "");
                let _ = fold.set_attribute("open", "");
            }
        });
    });
    let after = listen("afterprint", || {
        each_fold(|fold| {
            if fold.has_attribute("data-unfolded") {
                let _ = fold.remove_attribute("data-unfolded");
                let _ = fold.remove_attribute("open");
            }
        });
    });
    // They last as long as the page.
    std::mem::forget((before, after));
}

fn each_fold(act: impl Fn(&web_sys::Element)) {
    let Some(folds) = document().and_then(|document| document.query_selector_all("details").ok()) else {
        return;
    };
    for place in 0..folds.length() {
        if let Some(fold) = folds.item(place).and_then(|node| node.dyn_into().ok()) {
            act(&fold);
        }
    }
}

/// Listens on the window; the value returned ends it when called.
fn listen(event: &'static str, mut act: impl FnMut() + 'static) -> impl FnOnce() {
    let act = Closure::<dyn FnMut(Event)>::new(move |_| act());
    if let Some(window) = window() {
        let _ = window.add_event_listener_with_callback(event, act.as_ref().unchecked_ref());
    }
    move || {
        if let Some(window) = window() {
            let _ = window.remove_event_listener_with_callback(event, act.as_ref().unchecked_ref());
        }
        drop(act);
    }
}

/// The title in the browser's tab.
pub fn set_title(title: &str) {
    if let Some(document) = document() {
        document.set_title(title);
    }
}

/// Moves the focus to an element and brings it into view.
pub fn focus(id: &str) {
    if let Some(element) = element(id) {
        element.scroll_into_view();
        let _ = element.focus();
    }
}

/// Scrolls to the top and moves the focus to an element without bringing it into view.
pub fn focus_at_top(id: &str) {
    if let Some(element) = element(id) {
        let _ = element.focus();
    }
    if let Some(window) = window() {
        window.scroll_to_with_x_and_y(0.0, 0.0);
    }
}

/// Prints what is open.
pub fn print() {
    if let Some(window) = window() {
        let _ = window.print();
    }
}

/// Copies a text; calls back whether it went well.
pub fn copy(text: &str, done: Callback<bool>) {
    let clipboard = window().map(|window| window.navigator().clipboard());
    match clipboard.filter(|clipboard| !clipboard.is_undefined()) {
        Some(clipboard) => {
            let failed = done.clone();
            settle(&clipboard.write_text(text).into(), move |_| done.emit(true), move || failed.emit(false));
        }
        // Only a page from a safe origin has a clipboard.
        None => done.emit(false),
    }
}

/// Calls back with the text of a file.
pub fn read_file(file: &web_sys::File, done: Callback<String>) {
    let failed = done.clone();
    settle(
        &file.text().into(),
        move |text| done.emit(text.as_string().unwrap_or_default()),
        move || failed.emit(String::new()),
    );
}

fn settle(promise: &JsValue, done: impl FnOnce(JsValue) + 'static, failed: impl FnOnce() + 'static) {
    let Some(promise) = promise.dyn_ref::<Promise>() else { return failed() };
    let done = Closure::once_into_js(done);
    let failed = Closure::once_into_js(move |_: JsValue| failed());
    if let (Some(done), Some(failed)) = (done.dyn_ref(), failed.dyn_ref()) {
        let then: Result<js_sys::Function, _> =
            js_sys::Reflect::get(promise, &"then".into()).map(JsCast::unchecked_into);
        if let Ok(then) = then {
            let (done, failed): (&JsValue, &JsValue) = (done, failed);
            let _ = then.call2(promise, done, failed);
        }
    }
}

/// Gives the user a text as a file.
pub fn download(name: &str, text: &str) {
    let give = || -> Result<(), JsValue> {
        let properties = web_sys::BlobPropertyBag::new();
        properties.set_type("text/plain;charset=utf-8");
        let blob = web_sys::Blob::new_with_str_sequence_and_options(&Array::of1(&text.into()), &properties)?;
        let address = web_sys::Url::create_object_url_with_blob(&blob)?;
        let document = document().ok_or(JsValue::NULL)?;
        let anchor: HtmlAnchorElement = document.create_element("a")?.dyn_into()?;
        anchor.set_href(&address);
        anchor.set_download(name);
        anchor.click();
        // The browser has taken the file by the time anything else runs here.
        gloo_timers::callback::Timeout::new(10_000, move || {
            let _ = web_sys::Url::revoke_object_url(&address);
        })
        .forget();
        Ok(())
    };
    let _ = give();
}

/// What the device keeps under that name; empty where it keeps nothing.
pub fn kept(name: &str) -> String {
    storage().and_then(|storage| storage.get_item(name).ok().flatten()).unwrap_or_default()
}

/// Keeps a text on the device, and asks the browser not to drop it; whether it went well.
pub fn keep(name: &str, text: &str) -> bool {
    if let Some(window) = window() {
        let manager = window.navigator().storage();
        if !manager.is_undefined() {
            let _ = manager.persist();
        }
    }
    storage().is_some_and(|storage| storage.set_item(name, text).is_ok())
}

fn storage() -> Option<Storage> {
    window()?.local_storage().ok().flatten()
}
