//! A list of orders, assessed beside the page: the page answers its user while a worker computes.
//!
//! The worker is this same program, started a second time from the module that the page has compiled
//! already. Nothing is loaded for it, so it works from a host, without a network, and in the page that is
//! one file. What the two say to each other is a [`Told`].

mod bytes;
mod serve;
mod start;
mod told;

pub use serve::serve;
pub use start::Work;
pub use told::{Outcome, Told};

use wasm_bindgen::JsCast;
use web_sys::DedicatedWorkerGlobalScope;

/// Where this program runs, if that is a worker and no page.
pub fn scope() -> Option<DedicatedWorkerGlobalScope> {
    // A page knows no worker's scope, and a browser takes milliseconds to say so.
    if web_sys::window().is_some() {
        return None;
    }
    js_sys::global().dyn_into().ok()
}
