//! What leaves the page as a file.

use gloo_file::{Blob, ObjectUrl};
use gloo_utils::document;
use wasm_bindgen::JsCast;
use web_sys::HtmlAnchorElement;

/// Milliseconds after which the browser has taken a file.
const TAKEN: u32 = 10_000;

/// Gives the user a text as a file; whether the browser was asked.
pub fn download(name: &str, text: &str, media: &str) -> bool {
    download_blob(name, Blob::new_with_options(text, Some(media)))
}

/// Gives the user a file; whether the browser was asked.
pub fn download_blob(name: &str, file: Blob) -> bool {
    let address = ObjectUrl::from(file);
    let anchor = document().create_element("a").ok().and_then(|it| it.dyn_into::<HtmlAnchorElement>().ok());
    let Some(anchor) = anchor else { return false };
    anchor.set_href(&address);
    anchor.set_download(name);
    anchor.click();
    gloo_timers::callback::Timeout::new(TAKEN, move || drop(address)).forget();
    true
}
