//! The project's own command: `cargo xtask <task>`.
//!
//! Two tasks do everything: `serve` shows the page from a fresh clone, `test` runs every check.

/// One file a task, and what the tasks share.
mod xtask {
    pub mod browser;
    pub mod build;
    pub mod bundle;
    pub mod driver;
    pub mod golden;
    pub mod html;
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

use xtask::run::Done;
use xtask::{build, bundle, golden, recompute, rooms, server, shots, size, speed, test};

const HELP: &str = "\
cargo xtask serve [--port N]     build the page and serve it on this machine (port 8642)
cargo xtask test [--host-only]   every check; --host-only leaves wasm32, the page and browsers out
cargo xtask build                build the page into dist/
cargo xtask bundle               the whole page as one HTML file, dist/kettle-and-barrel.html
cargo xtask size                 bytes by crate and room, and the first load beside its budget
cargo xtask speed                how fast the page is in Chromium, beside an empty page
cargo xtask golden               judge the 400 orders of tests/property/golden.txt anew
cargo xtask recompute [--seed N] 10,000 random inputs, their numbers computed again in Python
cargo xtask shots [#address …]   pictures of the page, three widths, light and dark, in target/shots/
cargo xtask picture [#address]   the picture of the page in the README

What a task needs and does not find is brought into a cache of the user's: the wasm32 target, Trunk,
wasm-bindgen, packages of Python, and, where there is npm, wasm-opt and axe-core.
";

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let arguments: Vec<&str> = arguments.iter().map(String::as_str).collect();
    match task(&arguments) {
        Ok(()) => ExitCode::SUCCESS,
        Err(problem) => {
            eprintln!("cargo xtask: {problem}");
            ExitCode::FAILURE
        }
    }
}

fn task(arguments: &[&str]) -> Done {
    match arguments {
        ["serve"] => serve(server::PORT),
        ["serve", "--port", port] => {
            serve(port.parse().map_err(|_| format!("{port} is not a port: write a number from 0 to 65535"))?)
        }
        ["test"] => test::test(test::Extent::Everything),
        ["test", "--host-only"] => test::test(test::Extent::HostOnly),
        ["build"] => build::build().map(drop),
        ["bundle"] => bundle::bundle(&build::build()?).map(drop),
        ["golden"] => golden::renew(),
        ["recompute", options @ ..] => recompute::recompute(options),
        ["speed"] => speed::speed(),
        ["size"] => {
            let dist = build::build()?;
            rooms::by_room()?;
            size::first_load(&dist)
        }
        ["shots", addresses @ ..] => shots::shots(&build::build()?, addresses),
        ["picture"] => shots::picture(&build::build()?, ""),
        ["picture", address] => shots::picture(&build::build()?, address),
        [] | ["help" | "--help" | "-h"] => {
            print!("{HELP}");
            Ok(())
        }
        other => Err(format!("no such task: {}\n\n{HELP}", other.join(" ")).into()),
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
