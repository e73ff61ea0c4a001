//! The page, as Trunk builds it for the browser.

fn main() {
    #[cfg(target_arch = "wasm32")]
    kettle_barrel::page::mount();
    #[cfg(not(target_arch = "wasm32"))]
    println!("This is the page's program: it runs in a browser. See it with `cargo xtask serve`.");
}
