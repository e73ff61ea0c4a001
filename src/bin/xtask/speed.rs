//! How fast the page is, beside an empty page built with the same tools.
//!
//! Machines differ and are busy; the ratio to a yardstick of the same run stays, and so does what a
//! keystroke costs over one in the empty page. Nothing here fails: each figure stands beside its budget.

mod list;
mod trace;

use std::path::Path;

use serde_json::json;

use super::browser::{CHROMIUM, TRACED};
use super::build::{build_with, yardstick};
use super::edits::{self, FIRST, Memory, ORDER};
use super::run::{Done, step};
use super::server::Server;
use super::size::transferred;
use super::tools::tools;
use super::webdriver::Session;

/// How much slower than this machine the browser is told to compute.
const THROTTLE: u32 = 4;
/// Navigations to each page, one page after the other so that all share what the machine is doing.
const ROUNDS: usize = 4;
/// Edits between two looks at the memory.
const EDITS: u32 = 2000;
/// One picture of the screen, in milliseconds: so much more than in the empty page may a keystroke cost.
const FRAME: f64 = 1000.0 / 60.0;

/// What is measured: a page, the field that is typed into, and what has to change by it.
struct Case {
    name: &'static str,
    address: &'static str,
    field: &'static str,
    result: &'static str,
}

/// The yardstick, then the views that people type into.
const CASES: [Case; 6] = [
    Case { name: "empty page", address: "", field: "field-yardstick", result: ".detail" },
    Case { name: "order line", address: ORDER, field: "field-quantity", result: ".work" },
    Case {
        name: "written line",
        address: "#1/order?line=hex+bolt+M20x90+10.9+C4+12+years+qty+120",
        field: "line",
        result: ".work",
    },
    Case {
        name: "oversize tap",
        address: "#1/oversize-tap?thread=M16&allowance=az&coat_least=5+um&coat_greatest=7+um",
        field: "field-coat_greatest",
        result: ".work",
    },
    Case { name: "coat", address: "#1/coat?coat=5+um", field: "field-coat", result: ".work" },
    Case {
        name: "lot check",
        address: "#1/lot?standard=iso1461&iso1461=threads-over-6-mm&lot=300&readings=47+51%3B+46+49%3B+52+48",
        field: "field-readings",
        result: ".work",
    },
];

/// When the first field was there to type into.
const PROBE: &str = "
    const look = () => {
        if (document.querySelector('[id^=field-], #line')) window.usable ??= performance.now();
        else requestAnimationFrame(look);
    };
    requestAnimationFrame(look);";

/// Times of one case, in milliseconds.
#[derive(Default)]
struct Times {
    usable: Vec<f64>,
    /// From the key to the picture that shows what it changed.
    keystrokes: Vec<f64>,
}

/// What was measured, in milliseconds.
struct Measured {
    /// In the order of the cases.
    cases: Vec<Times>,
    /// Until the page is usable where nobody asks it anything yet.
    bare: Vec<f64>,
}

/// Builds the page and its yardstick, measures both in Chromium, and prints what they cost.
pub fn speed() -> Done {
    TRACED.ensure()?;
    let tools = tools()?;
    let page = build_with(&tools)?;
    let empty = yardstick(&tools)?;
    for (name, folder) in [("The page", &page), ("An empty page", &empty)] {
        println!("\n{name}, by brotli -q 11:");
        transferred(folder)?;
    }
    let measured = step("measure", || measure(&page, &empty))?;
    print(&measured);
    step("edit again and again", || edit(&page))?;
    step("a list in the page and in the terminal", || list::measure(&page))
}

fn print(measured: &Measured) {
    let Some(empty) = measured.cases.first() else { return };
    let [usable, median, slow] =
        [share(&empty.usable, 0.5), share(&empty.keystrokes, 0.5), share(&empty.keystrokes, 0.95)];
    println!(
        "\nThe empty page, {THROTTLE} × slowed: usable in {usable:.0} ms, from a key to its picture {median:.1} ms at \
         the median and {slow:.1} ms at the 95th percentile. Beside it:"
    );
    println!("{:<16}{:>10}{:>24}{:>24}", "", "usable", "a key, median", "95th percentile");
    let frame = format!("+{FRAME:.1} ms");
    println!("{:<16}{:>10}{frame:>24}{frame:>24}", "budget", "2.50 ×");
    let bare = share(&measured.bare, 0.5) / usable;
    println!("{:<16}{bare:>8.2} ×", "without a link");
    for (case, times) in CASES.iter().zip(&measured.cases).skip(1) {
        let more = |part, than| {
            let time = share(&times.keystrokes, part);
            format!("{:+.1} ms ({:.2} ×)", time - than, time / than)
        };
        let usable = share(&times.usable, 0.5) / usable;
        println!("{:<16}{usable:>8.2} ×{:>24}{:>24}", case.name, more(0.5, median), more(0.95, slow));
    }
}

fn measure(page: &Path, empty: &Path) -> Done<Measured> {
    let (page, empty) = (Server::start(page, 0)?, Server::start(empty, 0)?);
    let mut cases: Vec<Times> = CASES.iter().map(|_| Times::default()).collect();
    let mut bare = Vec::new();
    for _ in 0..ROUNDS {
        // A browser traces from its start to the first time that its trace is asked for.
        let session = Session::open(&TRACED)?;
        session.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": THROTTLE }))?;
        session.devtools("Network.enable", json!({}))?;
        session.devtools("Network.setCacheDisabled", json!({ "cacheDisabled": true }))?;
        session.devtools("Network.setBypassServiceWorker", json!({ "bypass": true }))?;
        session.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": PROBE }))?;
        bare.extend(usable(&session, &page.address())?);
        for (case, times) in CASES.iter().zip(&mut cases) {
            let server = if case.address.is_empty() { &empty } else { &page };
            times.usable.extend(usable(&session, &format!("{}{}", server.address(), case.address))?);
            trace::type_into(&session, case)?;
        }
        for (times, keystrokes) in cases.iter_mut().zip(trace::keystrokes(&session)?) {
            times.keystrokes.extend(keystrokes);
        }
    }
    Ok(Measured { cases, bare })
}

/// Goes there, and tells how long it took until there was a field to type into.
fn usable(session: &Session, address: &str) -> Done<Option<f64>> {
    // By way of an empty page: where only the part after # differs the browser would not load anew.
    session.go("about:blank")?;
    session.go(address)?;
    session.until("window.usable > 0")?;
    Ok(session.value("window.usable")?.as_f64())
}

/// Prints what two thousand edits leave behind in memory.
fn edit(page: &Path) -> Done {
    let server = Server::start(page, 0)?;
    let session = Session::open(&CHROMIUM)?;
    let open = || session.go(&format!("{}{ORDER}", server.address()));
    let [before, after] = edits::before_and_after(&session, open, EDITS)?;
    println!("Behind {FIRST} edits of an order line, and behind {EDITS} more:");
    let rows: [(&str, fn(&Memory) -> f64); 4] = [
        ("objects of the script, kB", |memory| memory.script / 1e3),
        ("the program's memory, kB", |memory| memory.program / 1e3),
        ("elements and texts", |memory| memory.nodes),
        ("listeners", |memory| memory.listeners),
    ];
    for (what, of) in rows {
        println!("    {what:<28}{:>12.0}{:>12.0}", of(&before), of(&after));
    }
    Ok(())
}

/// The value that this share of all values stays below.
fn share(times: &[f64], share: f64) -> f64 {
    let mut sorted = times.to_vec();
    sorted.sort_by(f64::total_cmp);
    let last = sorted.len().saturating_sub(1);
    sorted.get((last as f64 * share).round() as usize).copied().unwrap_or(f64::NAN)
}
