//! From a key to the picture that shows what it changed, as the browser's own tracing tells it.

use std::time::Duration;

use serde::Deserialize;
use serde_json::json;

use super::{CASES, Case};
use crate::xtask::run::Done;
use crate::xtask::webdriver::{Session, key};

/// Pairs of keystrokes in each round: a digit, and back; about as many keys as an order line has.
const PAIRS: usize = 16;
/// Long enough for the picture of a keystroke, and for what the page does behind it.
const REST: Duration = Duration::from_millis(150);

/// What begins in the trace with each case.
const MARK: &str = "a case begins";

/// Types into the field of a case, key by key, where its last digit stands; a keystroke that would change
/// nothing is a problem, because its time would say nothing.
pub fn type_into(session: &Session, case: &Case) -> Done {
    let ready = "const field = document.getElementById(arguments[0]); field.focus(); \
                 field.setSelectionRange(field.value.length, field.value.length);";
    session.script(ready, json!([case.field]))?;
    std::thread::sleep(REST * 4);
    session.script("performance.mark(arguments[0])", json!([MARK]))?;
    let result =
        || session.script("return document.querySelector(arguments[0]).innerText", json!([case.result]));
    let before = result()?;
    for _ in 0..PAIRS {
        session.type_over("1")?;
        std::thread::sleep(REST);
        session.press(&[key::BACKSPACE])?;
        std::thread::sleep(REST);
    }
    session.type_over("1")?;
    std::thread::sleep(REST);
    if result()? == before {
        return Err(format!("{}: a keystroke changed nothing", case.name).into());
    }
    Ok(())
}

/// One event of the trace, as far as it is read here.
#[derive(Deserialize)]
struct Event {
    name: String,
    #[serde(default)]
    ts: f64,
    #[serde(default)]
    args: Arguments,
}

#[derive(Default, Deserialize)]
struct Arguments {
    data: Option<Timing>,
}

/// How long an event of input took until its picture was on the screen.
#[derive(Deserialize)]
struct Timing {
    #[serde(default)]
    r#type: String,
    duration: Option<f64>,
}

/// The keystrokes of each case since the browser was opened, in milliseconds.
pub fn keystrokes(session: &Session) -> Done<Vec<Vec<f64>>> {
    let mut events: Vec<Event> =
        session.trace()?.into_iter().filter_map(|event| serde_json::from_value(event).ok()).collect();
    events.sort_by(|one, other| one.ts.total_cmp(&other.ts));
    let mut cases: Vec<Vec<f64>> = Vec::new();
    for event in events {
        if event.name == MARK {
            cases.push(Vec::new());
        } else if event.name == "EventTiming"
            && let Some(Timing { r#type, duration: Some(time) }) = event.args.data
            && r#type == "keydown"
        {
            cases.last_mut().into_iter().for_each(|case| case.push(time));
        }
    }
    let short = |case: &Vec<f64>| case.len() <= 2 * PAIRS;
    match cases.iter().position(short) {
        None if cases.len() == CASES.len() => Ok(cases),
        _ => {
            Err(format!("the trace tells {:?} keystrokes", cases.iter().map(Vec::len).collect::<Vec<_>>())
                .into())
        }
    }
}
