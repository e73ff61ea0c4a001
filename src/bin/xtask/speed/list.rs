//! A list of orders in the page's worker, beside the same list in the terminal on one core.

use std::fmt::Write;
use std::path::Path;
use std::time::Instant;

use serde_json::json;

use crate::xtask::bench::{LIST, in_terminal};
use crate::xtask::browser::CHROMIUM;
use crate::xtask::run::Done;
use crate::xtask::server::Server;
use crate::xtask::webdriver::Session;

/// Lines of the list.
const LINES: usize = 100_000;

/// Gives the page a file with the list, made from its kinds of lines.
const CHOOSE: &str = "
    const [kinds, count] = arguments;
    const lines = Array.from({ length: count }, (_, at) => kinds[at % kinds.length]);
    const file = new DataTransfer();
    file.items.add(new File([lines.join('\\n')], 'list.txt'));
    const input = document.querySelector('input[type=file]');
    input.files = file.files;
    input.dispatchEvent(new Event('change', { bubbles: true }));";

/// Opens a fold and waits until that is on the screen, while the list is under way; milliseconds.
const CLICK: &str = "
    const began = performance.now();
    document.querySelector('.settings > summary').click();
    return new Promise((done) => requestAnimationFrame(() => setTimeout(() => done(performance.now() - began))));";

/// Prints the times of both, and the longest that the page took to answer meanwhile.
pub fn measure(page: &Path) -> Done {
    let mut text = String::new();
    for line in LIST.iter().cycle().take(LINES) {
        writeln!(text, "{line}")?;
    }
    let native = in_terminal(&text, 1)?;
    let server = Server::start(page, 0)?;
    let session = Session::open(&CHROMIUM)?;
    session.go(&format!("{}#1/list", server.address()))?;
    session.wait_for("input[type=file]")?;
    let start = Instant::now();
    session.script(CHOOSE, json!([LIST, LINES]))?;
    let mut slowest = 0.0_f64;
    while session.count(".outcome")? == 0 {
        slowest = slowest.max(session.script(CLICK, json!([]))?.as_f64().unwrap_or_default());
        std::thread::sleep(std::time::Duration::from_millis(20));
    }
    let seconds = start.elapsed().as_secs_f64();
    println!(
        "A list of {LINES} lines: {seconds:.1} s in the page, {native:.1} s in the terminal on one core: {:.1} times. \
         The slowest answer of the page meanwhile took {slowest:.0} ms (budget 50).",
        seconds / native
    );
    Ok(())
}
