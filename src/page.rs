//! The page: the order line and the calculators in a browser.
//!
//! It sets what the rooms below compute and computes nothing itself. What needs no browser (what the
//! page holds, how a formula and a picture are laid out) compiles everywhere and is tested with the
//! rest; the components compile for wasm32 alone.

pub mod chart;
pub mod state;

#[cfg(target_arch = "wasm32")]
mod browser;
#[cfg(target_arch = "wasm32")]
mod component;
#[cfg(target_arch = "wasm32")]
mod hook;
#[cfg(target_arch = "wasm32")]
mod reducer;
#[cfg(target_arch = "wasm32")]
mod worker;

/// Puts the page into the element that `index.html` keeps for it; in a worker, serves the page.
#[cfg(target_arch = "wasm32")]
pub fn mount() {
    if let Some(scope) = worker::scope() {
        return worker::serve(scope);
    }
    // A page around this one could have its reader touch what it wants: the script in `index.html`
    // says so in place of the page.
    if browser::is_framed() {
        return;
    }
    browser::tell_when_stopped();
    browser::unfold_for_print();
    let document = gloo_utils::document();
    if let Some(waiting) = document.get_element_by_id("waiting") {
        waiting.remove();
    }
    if let Some(root) = document.get_element_by_id("page") {
        yew::Renderer::<component::App>::with_root(root).render();
    }
}
