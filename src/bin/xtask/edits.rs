//! What edits leave behind in memory.

use serde_json::{Value, json};

use super::run::Done;
use super::webdriver::Session;

/// An order line that is judged in all three processes, and assembles in each of them.
pub const ORDER: &str =
    "#1/order?part=hex-bolt&thread=M20&length=90+mm&quantity=120&steel=10.9&place=C4&years=12+year";

/// Edits before the first look: what is made once stands by then.
pub const FIRST: u32 = 200;
/// Edits in one go; the driver waits for them.
const AT_ONCE: u32 = 100;

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

/// Edits one field after the other, each time to something else, a picture of the screen between: how many answers are
/// held at once must not hang on how busy the machine is.
const EDIT: &str = "
    const [count] = arguments;
    const fields = ['field-quantity', 'field-length', 'field-years'].map((id) => document.getElementById(id));
    const picture = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set;
    return (async () => {
        for (let at = 0; at < count; at++) {
            const field = fields[at % fields.length];
            set.call(field, String(10 + at % 47));
            field.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
            await picture();
        }
        // What stands behind the last answer follows it by one picture of the screen.
        for (let pictures = 0; pictures < 3; pictures++) {
            await picture();
        }
    })();";

/// What stands in memory, after the browser has cleared away what nobody holds.
#[derive(Debug)]
pub struct Memory {
    /// Bytes of the script's objects.
    pub script: f64,
    /// Bytes of the program's own memory, which never shrinks.
    pub program: f64,
    /// Elements and texts, those that are in no page any more included.
    pub nodes: f64,
    /// Listeners.
    pub listeners: f64,
}

/// What stands in memory behind [`FIRST`] edits of the order line, once it is opened, and behind so many more.
/// Chromium only.
pub fn before_and_after(session: &Session, open: impl Fn() -> Done, edits: u32) -> Done<[Memory; 2]> {
    session.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": KEEP }))?;
    open()?;
    session.wait_for(".answer")?;
    let edit =
        |count: u32| (0..count / AT_ONCE).try_for_each(|_| session.script(EDIT, json!([AT_ONCE])).map(drop));
    edit(FIRST)?;
    let before = look(session)?;
    edit(edits)?;
    Ok([before, look(session)?])
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
