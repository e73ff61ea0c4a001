//! The project's own command: `cargo xtask <task>`.
//!
//! Two tasks do everything: `serve` shows the page from a fresh clone, `test` runs every check.

/// One file a task, and what the tasks share.
mod xtask {
    pub mod bench;
    pub mod browser;
    pub mod build;
    pub mod bundle;
    pub mod driver;
    pub mod edits;
    pub mod fuzz;
    pub mod golden;
    pub mod html;
    pub mod mutants;
    pub mod offline;
    pub mod recompute;
    pub mod rooms;
    pub mod run;
    pub mod server;
    pub mod shots;
    pub mod size;
    pub mod speed;
    pub mod test;
    pub mod tools;
    #[allow(dead_code, reason = "the page's tests use the rest")]
    pub mod webdriver;
}

use std::process::ExitCode;

use clap::{Parser, Subcommand};
use xtask::run::Done;
use xtask::{
    bench, build, bundle, fuzz, golden, mutants, recompute, rooms, server, shots, size, speed, test,
};

/// The project's own command: `serve` shows the page from a fresh clone, `test` runs every check.
#[derive(Parser)]
#[command(bin_name = "cargo xtask", after_help = BROUGHT)]
struct Arguments {
    #[command(subcommand)]
    task: Task,
}

const BROUGHT: &str = "What a task needs and does not find is brought into a cache of the user's: the wasm32 \
target, Trunk, wasm-bindgen, packages of Python, and, where there is npm, wasm-opt and axe-core.";

#[derive(Subcommand)]
enum Task {
    /// Builds the page and serves it on this machine
    Serve {
        /// On this port of 127.0.0.1; 0 takes a free one
        #[arg(long, default_value_t = server::PORT)]
        port: u16,
    },
    /// Every check
    Test {
        /// Leaves wasm32, the page and browsers out
        #[arg(long)]
        host_only: bool,
    },
    /// Builds the page into dist/
    Build,
    /// The whole page as one HTML file, dist/kettle-and-barrel.html
    Bundle,
    /// Bytes by crate and room, and the first load beside its budget
    Size,
    /// How fast an order line, a list and the same sum in other languages are, and what growth costs
    Bench,
    /// How fast the page is in Chromium, beside an empty page
    Speed,
    /// Judges the 400 orders of tests/property/golden.txt anew
    Golden,
    /// Random inputs, their numbers computed again in Python
    #[command(disable_help_flag = true)]
    Recompute {
        /// The options of tests/recompute; --help tells them
        #[arg(trailing_var_arg = true, allow_hyphen_values = true)]
        options: Vec<String>,
    },
    /// Spoilt texts in every entry, with overflow checks on
    Fuzz {
        /// Texts in all
        #[arg(long, default_value_t = 10_000_000)]
        cases: u32,
    },
    /// Every small change of the core, put to the tests: how many do they notice?
    Mutants(mutants::Options),
    /// Pictures of the page, three widths, light and dark, in target/shots/
    Shots {
        /// Addresses from # on; the bare page where none is given
        addresses: Vec<String>,
    },
    /// The picture of the page in the README
    Picture {
        /// Its address from # on
        #[arg(default_value = "")]
        address: String,
    },
}

fn main() -> ExitCode {
    match Arguments::parse().task.run() {
        Ok(()) => ExitCode::SUCCESS,
        Err(problem) => {
            eprintln!("cargo xtask: {problem}");
            ExitCode::FAILURE
        }
    }
}

impl Task {
    fn run(self) -> Done {
        match self {
            Self::Serve { port } => serve(port),
            Self::Test { host_only } => {
                test::test(if host_only { test::Extent::HostOnly } else { test::Extent::Everything })
            }
            Self::Build => build::build().map(drop),
            Self::Bundle => bundle::bundle(&build::build()?).map(drop),
            Self::Size => {
                let dist = build::build()?;
                rooms::by_room()?;
                size::first_load(&dist)
            }
            Self::Bench => bench::bench(),
            Self::Speed => speed::speed(),
            Self::Golden => golden::renew(),
            Self::Recompute { options } => recompute::recompute(&options),
            Self::Fuzz { cases } => fuzz::fuzz(cases),
            Self::Mutants(options) => mutants::mutants(&options),
            Self::Shots { addresses } => shots::shots(&build::build()?, &addresses),
            Self::Picture { address } => shots::picture(&build::build()?, &address),
        }
    }
}

fn serve(port: u16) -> Done {
    let dist = build::build()?;
    let server = server::Server::start(&dist, port)
        .map_err(|problem| format!("port {port} on 127.0.0.1: {problem}; choose another with --port"))?;
    println!("\nThe page is at {}\nCtrl+C ends it.", server.address());
    server.wait();
    Ok(())
}
