//! What two thousand edits leave behind in memory.

use std::path::Path;

use serde_json::{Value, json};

use super::ORDER;
use crate::xtask::browser::CHROMIUM;
use crate::xtask::run::Done;
use crate::xtask::server::Server;
use crate::xtask::webdriver::Session;

/// Edits before the first look: what is made once stands by then.
const FIRST: u32 = 200;
/// Edits between the looks.
const EDITS: u32 = 2000;
/// Edits in one go; the driver waits for them.
const AT_ONCE: u32 = 200;

/// Keeps the memory of the program at hand.
const KEEP: &str = "
    for (const name of ['instantiate', 'instantiateStreaming']) {
        const make = WebAssembly[name];
        WebAssembly[name] = async (...given) => {
            const made = await make.apply(WebAssembly, given);
            window.program = (made.instance ?? made).exports.memory;
            return made;
        };
    }";

/// Edits one field after the other, each time to something else, a picture of the screen between.
const EDIT: &str = "
    const [count] = arguments;
    const fields = ['field-quantity', 'field-length', 'field-years'].map((id) => document.getElementById(id));
    const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set;
    return (async () => {
        for (let at = 0; at < count; at++) {
            const field = fields[at % fields.length];
            set.call(field, String(10 + at % 47));
            field.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
            await new Promise((done) => setTimeout(done));
        }
    })();";

/// What stands in memory, after the browser has cleared away what nobody holds.
struct Memory {
    /// Bytes of the script's objects.
    script: f64,
    /// Bytes of the program's own memory, which never shrinks.
    program: f64,
    /// Elements and texts, those that are in no page any more included.
    nodes: f64,
    listeners: f64,
}

/// Prints what stands in memory before and after.
pub fn measure(page: &Path) -> Done {
    let server = Server::start(page, 0)?;
    let session = Session::open(&CHROMIUM)?;
    session.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": KEEP }))?;
    session.go(&format!("{}{ORDER}", server.address()))?;
    session.until("document.querySelector('.answer') !== null")?;
    let edit =
        |count: u32| (0..count / AT_ONCE).try_for_each(|_| session.script(EDIT, json!([AT_ONCE])).map(drop));
    edit(FIRST)?;
    let before = look(&session)?;
    edit(EDITS)?;
    let after = look(&session)?;
    println!("Behind {FIRST} edits of an order line, and behind {EDITS} more:");
    for (what, of) in [
        ("objects of the script, kB", (|memory: &Memory| memory.script / 1e3) as fn(&Memory) -> f64),
        ("the program's memory, kB", |memory| memory.program / 1e3),
        ("elements and texts", |memory| memory.nodes),
        ("listeners", |memory| memory.listeners),
    ] {
        println!("    {what:<28}{:>12.0}{:>12.0}", of(&before), of(&after));
    }
    Ok(())
}

fn look(session: &Session) -> Done<Memory> {
    session.devtools("HeapProfiler.collectGarbage", json!({}))?;
    let number = |value: &Value, name: &str| {
        value.get(name).and_then(Value::as_f64).ok_or_else(|| format!("the browser tells no {name}"))
    };
    let heap = session.devtools("Runtime.getHeapUsage", json!({}))?;
    let counters = session.devtools("Memory.getDOMCounters", json!({}))?;
    let program = session.value("window.program.buffer.byteLength")?;
    Ok(Memory {
        script: number(&heap, "usedSize")?,
        program: program.as_f64().ok_or("the program's memory was not kept")?,
        nodes: number(&counters, "nodes")?,
        listeners: number(&counters, "jsEventListeners")?,
    })
}
