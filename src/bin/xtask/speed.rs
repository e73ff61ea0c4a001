//! How fast the page is, beside an empty page built with the same tools.
//!
//! Machines differ and are busy; the ratio to a yardstick of the same run stays. Nothing here fails:
//! it prints each ratio beside its budget.

use std::path::Path;

use serde_json::{Value, json};

use super::browser::CHROMIUM;
use super::build::{build_with, yardstick};
use super::run::{Done, step};
use super::server::Server;
use super::tools::tools;
use super::webdriver::Session;

/// How much slower than this machine the browser is told to compute.
const THROTTLE: u32 = 4;
/// Navigations to each page, one page after the other so that all share what the machine is doing.
const ROUNDS: usize = 9;
/// Keystrokes in each of these rounds.
const KEYSTROKES: usize = 12;

/// What is measured: a page, and the field that is typed into.
struct Case {
    name: &'static str,
    address: &'static str,
    field: &'static str,
    texts: [&'static str; 2],
}

const YARDSTICK: Case =
    Case { name: "empty page", address: "", field: "field-yardstick", texts: ["12", "13"] };

const CASES: [Case; 3] = [
    Case { name: "order line", address: "", field: "field-quantity", texts: ["1300", "1400"] },
    Case {
        name: "oversize tap",
        address: "#1/oversize-tap",
        field: "field-coat_greatest",
        texts: ["71", "72"],
    },
    Case { name: "coat", address: "#1/coat", field: "field-coat", texts: ["51", "52"] },
];

/// When the first field was there to type into.
const PROBE: &str = "
    const look = () => {
        if (document.querySelector('[id^=field-]')) window.usable ??= performance.now();
        else requestAnimationFrame(look);
    };
    requestAnimationFrame(look);";

/// Types texts into a field and waits each time until the result has changed; milliseconds.
const TYPE: &str = "
    const [field, texts, count] = arguments;
    const input = document.getElementById(field);
    const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set;
    const one = (text) => new Promise((done) => {
        const start = performance.now();
        const seen = new MutationObserver(() => { seen.disconnect(); done(performance.now() - start); });
        seen.observe(document.querySelector('.detail'), { subtree: true, childList: true, characterData: true });
        set.call(input, text);
        input.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
        setTimeout(() => { seen.disconnect(); done(NaN); }, 2000);
    });
    const rest = () => new Promise((done) => setTimeout(done, 60));
    return (async () => {
        const times = [];
        for (let at = 0; at < count; at++) { times.push(await one(texts[at % texts.length])); await rest(); }
        return times;
    })();";

/// Times of one case, in milliseconds.
#[derive(Default)]
struct Times {
    usable: Vec<f64>,
    keystrokes: Vec<f64>,
}

/// Builds the page and its yardstick, measures both in Chromium, and prints the ratios.
pub fn speed() -> Done {
    CHROMIUM.ensure()?;
    let tools = tools()?;
    let page = build_with(&tools)?;
    let empty = yardstick(&tools)?;
    let (empty, cases) = step("measure", || measure(&page, &empty))?;
    let (usable, keystroke) = (share(&empty.usable, 0.5), share(&empty.keystrokes, 0.5));
    let slow = share(&empty.keystrokes, 0.95);
    println!(
        "{}: usable in {usable:.0} ms, a keystroke in {keystroke:.1} ms, {THROTTLE} × slowed",
        YARDSTICK.name
    );
    for (case, times) in CASES.iter().zip(&cases) {
        println!("{}, against the {}:", case.name, YARDSTICK.name);
        println!("    usable {:.2} ×, budget 2.5 ×", share(&times.usable, 0.5) / usable);
        println!(
            "    a keystroke {:.2} × at the median and {:.2} × at the 95th percentile, budget 2 ×",
            share(&times.keystrokes, 0.5) / keystroke,
            share(&times.keystrokes, 0.95) / slow
        );
    }
    Ok(())
}

fn measure(page: &Path, empty: &Path) -> Done<(Times, Vec<Times>)> {
    let (page, empty) = (Server::start(page, 0)?, Server::start(empty, 0)?);
    let session = Session::open(&CHROMIUM)?;
    session.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": THROTTLE }))?;
    session.devtools("Network.enable", json!({}))?;
    session.devtools("Network.setCacheDisabled", json!({ "cacheDisabled": true }))?;
    session.devtools("Network.setBypassServiceWorker", json!({ "bypass": true }))?;
    session.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": PROBE }))?;
    let mut yardstick = Times::default();
    let mut cases: Vec<Times> = CASES.iter().map(|_| Times::default()).collect();
    for _ in 0..ROUNDS {
        once(&session, &empty, &YARDSTICK, &mut yardstick)?;
        for (case, times) in CASES.iter().zip(&mut cases) {
            once(&session, &page, case, times)?;
        }
    }
    Ok((yardstick, cases))
}

fn once(session: &Session, server: &Server, case: &Case, times: &mut Times) -> Done {
    // By way of an empty page: where only the part after # differs the browser would not load anew.
    session.go("about:blank")?;
    session.go(&format!("{}{}", server.address(), case.address))?;
    session.until("window.usable > 0")?;
    times.usable.extend(session.value("window.usable")?.as_f64());
    let typed = session.script(TYPE, json!([case.field, case.texts, KEYSTROKES]))?;
    let typed = typed.as_array().map(Vec::as_slice).unwrap_or_default();
    // A keystroke that changed nothing in time is no number, which JSON writes as null.
    let seen: Vec<f64> = typed.iter().filter_map(Value::as_f64).collect();
    if seen.len() < KEYSTROKES {
        return Err(format!("{}: {} keystrokes changed nothing", case.name, KEYSTROKES - seen.len()).into());
    }
    times.keystrokes.extend(seen);
    Ok(())
}

/// The value that this share of all values stays below.
fn share(times: &[f64], share: f64) -> f64 {
    let mut sorted = times.to_vec();
    sorted.sort_by(f64::total_cmp);
    let last = sorted.len().saturating_sub(1);
    sorted.get((last as f64 * share).round() as usize).copied().unwrap_or(f64::NAN)
}
