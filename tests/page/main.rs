//! The built page in real browsers, through WebDriver.
//!
//! `cargo xtask test` builds the page and runs these; with `dist/` built,
//! `cargo test --features page-tests --test page` runs them alone. A test is a function that gets
//! the page in Chromium, or, where the engine matters, in every engine in turn:
//!
//! ```ignore
//! #[test]
//! fn typing_changes_the_output() -> Done {
//!     in_chromium(|page| {
//!         page.open("")?;
//!         page.fill("#field-thread", "M16")?;
//!         page.text_holds("#answer", "M16")
//!     })
//! }
//! ```
#![allow(clippy::indexing_slicing)]

mod course;
mod form;
mod harness;
mod link;
mod list;
mod memory;
mod offline;
mod opening;
mod order;
mod saved;
mod sheet;
mod silence;
mod typed;
mod update;

/// What the project's own command has for browsers, and its server.
#[allow(dead_code, reason = "the command uses the rest")]
#[path = "../../src/bin/xtask"]
mod xtask {
    pub mod browser;
    pub mod driver;
    pub mod edits;
    pub mod html;
    pub mod run;
    pub mod server;
    pub mod tools;
    pub mod webdriver;
}
