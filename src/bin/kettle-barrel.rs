//! The order line and the calculators in a terminal.
//!
//! `kettle-barrel order "M20 x 90 hex bolt, 10.9, 1200 pcs, C4"` assesses an order line;
//! `kettle-barrel list orders.csv` assesses a list of them;
//! `kettle-barrel coat coat="50 µm" factor=a123` runs a calculator. It ends with 0 where everything was
//! understood and answered, with 1 where something was not, with 2 where it was called wrongly, and
//! with 3 where the answer could not be written.

/// One file for what is asked, one for what is answered, one for how it is written.
#[cfg(not(target_arch = "wasm32"))]
mod terminal {
    pub mod answer;
    pub mod command;
    pub mod course;
    pub mod coursework;
    pub mod input;
    pub mod list;
    pub mod output;
    pub mod sources;
    pub mod standard_output;
}

#[cfg(not(target_arch = "wasm32"))]
fn main() -> std::process::ExitCode {
    terminal::command::run(std::env::args_os())
}

/// A browser has no terminal; the published checks in wasm32 build every program all the same.
#[cfg(target_arch = "wasm32")]
fn main() {}
