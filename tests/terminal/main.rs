//! The terminal as a process: what it takes, what it writes where, and how it ends.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing)]

mod asked;
mod course;
mod json;
mod list;
mod sheet;
mod written;

use assert_cmd::Command;

/// The program, called with these arguments.
fn program(arguments: &[&str]) -> Command {
    let mut program = Command::cargo_bin("kettle-barrel").unwrap();
    program.args(arguments);
    program
}

/// Called with these arguments, it ends with `code`: what it wrote on standard output and on
/// standard error.
fn ends(arguments: &[&str], code: i32) -> (String, String) {
    let output = program(arguments).assert().code(code).get_output().clone();
    (String::from_utf8(output.stdout).unwrap(), String::from_utf8(output.stderr).unwrap())
}

const ORDER: &str = "M20x2.5 x 90 hex bolt, 10.9, 1200 pcs, C4, 12 years";
