//! A browser held by WebDriver: as much of the protocol as looking at our page takes.

use std::io::{BufRead, BufReader, Read, Write};
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::path::PathBuf;
use std::process::{Child, Command, Stdio};
use std::sync::atomic::{AtomicU32, Ordering};
use std::time::{Duration, Instant};

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use serde_json::{Value, json};

use super::browser::Browser;
use super::run::Done;

/// How long a page may take to become what is waited for.
const PATIENCE: Duration = Duration::from_secs(10);

/// How long a driver may take for one command; starting a browser on a busy machine is the longest.
const COMMAND: Duration = Duration::from_secs(60);

/// Keys that are not letters, for [`Session::press`].
pub mod key {
    /// Enter.
    pub const ENTER: char = '\u{E007}';
    /// Tab; with [`SHIFT`] the other way.
    pub const TAB: char = '\u{E004}';
    /// Shift.
    pub const SHIFT: char = '\u{E008}';
    /// Control.
    pub const CONTROL: char = '\u{E009}';
    /// Escape.
    pub const ESCAPE: char = '\u{E00C}';
    /// Space.
    pub const SPACE: char = ' ';
    /// Backspace.
    pub const BACKSPACE: char = '\u{E003}';
    /// Delete.
    pub const DELETE: char = '\u{E017}';
    /// Arrow to the left.
    pub const LEFT: char = '\u{E012}';
    /// Arrow up.
    pub const UP: char = '\u{E013}';
    /// Arrow to the right.
    pub const RIGHT: char = '\u{E014}';
    /// Arrow down.
    pub const DOWN: char = '\u{E015}';
    /// Home.
    pub const HOME: char = '\u{E011}';
    /// End.
    pub const END: char = '\u{E010}';
}

/// An open browser with a profile of its own; closed when dropped.
pub struct Session {
    /// The browser it is.
    pub browser: &'static Browser,
    driver: Child,
    port: u16,
    id: String,
    profile: PathBuf,
}

impl Session {
    /// Opens the browser.
    pub fn open(browser: &'static Browser) -> Done<Self> {
        static COUNT: AtomicU32 = AtomicU32::new(0);
        let number = COUNT.fetch_add(1, Ordering::Relaxed);
        // The port is free when it is asked for; that another program takes it before the driver
        // does is rare, and then the driver ends at once and the next port is tried.
        let mut tries = 0;
        let (driver, port) = loop {
            tries += 1;
            match start(browser) {
                Ok(started) => break started,
                Err(problem) if tries == 3 => return Err(problem),
                Err(_) => {}
            }
        };
        let profile = std::env::temp_dir().join(format!("kettle-barrel-{}-{number}", std::process::id()));
        let mut session = Self { browser, driver, port, id: String::new(), profile };
        std::fs::create_dir_all(&session.profile)?;
        let wanted = json!({ "capabilities": { "alwaysMatch": browser.capabilities(&session.profile)? } });
        let opened = request(port, "POST", "/session", Some(&wanted))?;
        session.id = opened
            .pointer("/sessionId")
            .and_then(Value::as_str)
            .ok_or_else(|| format!("{} opened no session", browser.driver))?
            .to_owned();
        Ok(session)
    }

    /// Opens an address and waits until it has loaded.
    pub fn go(&self, address: &str) -> Done {
        self.post("/url", &json!({ "url": address })).map(drop)
    }

    /// Loads the address again.
    pub fn reload(&self) -> Done {
        self.post("/refresh", &json!({})).map(drop)
    }

    /// Goes back one step in the history.
    pub fn back(&self) -> Done {
        self.post("/back", &json!({})).map(drop)
    }

    /// The address the browser is at.
    pub fn address(&self) -> Done<String> {
        Ok(text_of(&self.get("/url")?))
    }

    /// Runs the body of a function in the page and returns what it returns; a promise is waited for.
    /// The arguments are `arguments[0]` and so on.
    pub fn script(&self, body: &str, arguments: Value) -> Done<Value> {
        self.post("/execute/sync", &json!({ "script": body, "args": arguments }))
    }

    /// The value of an expression in the page.
    pub fn value(&self, expression: &str) -> Done<Value> {
        self.script(&format!("return ({expression});"), json!([]))
    }

    /// Waits until an expression in the page is true.
    pub fn until(&self, expression: &str) -> Done {
        let start = Instant::now();
        loop {
            let value = self.value(expression);
            if matches!(value, Ok(Value::Bool(true))) {
                return Ok(());
            }
            if start.elapsed() > PATIENCE {
                let last = value.map_or_else(|problem| problem.to_string(), |value| value.to_string());
                return Err(format!("still not true after {PATIENCE:?}: {expression} (last: {last})").into());
            }
            std::thread::sleep(Duration::from_millis(20));
        }
    }

    /// Waits for the first element of a CSS selector to be there.
    pub fn wait_for(&self, css: &str) -> Done {
        self.until(&format!("document.querySelector({}) !== null", json!(css)))
    }

    /// How many elements of a CSS selector there are now.
    pub fn count(&self, css: &str) -> Done<usize> {
        let count = self.value(&format!("document.querySelectorAll({}).length", json!(css)))?;
        Ok(count.as_u64().unwrap_or_default().try_into()?)
    }

    /// The text of the first element as it is seen.
    pub fn text(&self, css: &str) -> Done<String> {
        Ok(text_of(&self.get(&format!("/element/{}/text", self.element(css)?))?))
    }

    /// A property of the first element: `value`, `checked`, `id`.
    pub fn property(&self, css: &str, name: &str) -> Done<Value> {
        self.get(&format!("/element/{}/property/{name}", self.element(css)?))
    }

    /// What stands in a field.
    pub fn field(&self, css: &str) -> Done<String> {
        Ok(text_of(&self.property(css, "value")?))
    }

    /// Waits until the text of the first element is this.
    pub fn text_becomes(&self, css: &str, text: &str) -> Done {
        let element = format!("document.querySelector({})", json!(css));
        self.until(&format!("{element}?.innerText.trim() === {}", json!(text)))
    }

    /// Waits until the text of the first element holds this.
    pub fn text_holds(&self, css: &str, part: &str) -> Done {
        let element = format!("document.querySelector({})", json!(css));
        self.until(&format!("({element}?.innerText ?? '').includes({})", json!(part)))
    }

    /// Clicks the first element, in its middle, as a pointer does.
    pub fn click(&self, css: &str) -> Done {
        self.post(&format!("/element/{}/click", self.element(css)?), &json!({})).map(drop)
    }

    /// Adds text to a field, key by key.
    pub fn type_into(&self, css: &str, text: &str) -> Done {
        self.post(&format!("/element/{}/value", self.element(css)?), &json!({ "text": text })).map(drop)
    }

    /// Empties a field and types text into it.
    pub fn fill(&self, css: &str, text: &str) -> Done {
        let select_all = "const field = document.querySelector(arguments[0]); field.focus(); field.select();";
        self.wait_for(css)?;
        self.script(select_all, json!([css]))?;
        if text.is_empty() { self.press(&[key::BACKSPACE]) } else { self.type_over(text) }
    }

    /// Chooses the option of this value in a `<select>`, as a person does: by its option.
    pub fn choose(&self, css: &str, value: &str) -> Done {
        self.click(&format!("{css} option[value={}]", json!(value)))
    }

    /// Presses keys together in the element that has the focus, and lets go of them in reverse.
    pub fn press(&self, keys: &[char]) -> Done {
        let down = keys.iter().map(|key| json!({ "type": "keyDown", "value": key }));
        let up = keys.iter().rev().map(|key| json!({ "type": "keyUp", "value": key }));
        self.keys(down.chain(up).collect())
    }

    /// Types text, one key after the other, in the element that has the focus.
    pub fn type_over(&self, text: &str) -> Done {
        let keys = text.chars().flat_map(|key| {
            [json!({ "type": "keyDown", "value": key }), json!({ "type": "keyUp", "value": key })]
        });
        self.keys(keys.collect())
    }

    /// A CSS-like name of the element that has the focus: `input#text`.
    pub fn focus(&self) -> Done<String> {
        let name = "(e => e.localName + (e.id ? '#' + e.id : ''))(document.activeElement)";
        Ok(text_of(&self.value(name)?))
    }

    /// Gives the page this width and height, in CSS pixels.
    pub fn size(&self, width: u32, height: u32) -> Done {
        if self.browser.devtools {
            // A window cannot be as narrow as a phone; the page in it can.
            let size = json!({ "width": width, "height": height, "deviceScaleFactor": 1, "mobile": false });
            return self.devtools("Emulation.setDeviceMetricsOverride", size).map(drop);
        }
        self.post("/window/rect", &json!({ "width": width, "height": height })).map(drop)
    }

    /// A picture of what is in view, as PNG.
    pub fn screenshot(&self) -> Done<Vec<u8>> {
        Ok(STANDARD.decode(text_of(&self.get("/screenshot")?))?)
    }

    /// A picture of the whole page, as PNG. Chromium only.
    pub fn full_page(&self) -> Done<Vec<u8>> {
        let picture = self.devtools("Page.captureScreenshot", json!({ "captureBeyondViewport": true }))?;
        Ok(STANDARD.decode(picture.pointer("/data").map(text_of).unwrap_or_default())?)
    }

    /// A command of the DevTools protocol. Chromium only.
    pub fn devtools(&self, command: &str, parameters: Value) -> Done<Value> {
        self.post("/goog/cdp/execute", &json!({ "cmd": command, "params": parameters }))
    }

    /// What the page and the browser said in the console since this was last asked: errors and
    /// warnings. Chromium only; nothing elsewhere.
    pub fn console(&self) -> Done<Vec<String>> {
        if !self.browser.devtools {
            return Ok(Vec::new());
        }
        let log = self.post("/se/log", &json!({ "type": "browser" }))?;
        let entries = log.as_array().map(Vec::as_slice).unwrap_or_default();
        let said = |entry: &Value, what| entry.get(what).map(text_of).unwrap_or_default();
        let serious =
            entries.iter().filter(|entry| matches!(said(entry, "level").as_str(), "SEVERE" | "WARNING"));
        Ok(serious.map(|entry| said(entry, "message")).collect())
    }

    /// The addresses that the page has asked for since it was opened, itself included.
    pub fn requests(&self) -> Done<Vec<String>> {
        let names =
            self.value("[location.href, ...performance.getEntriesByType('resource').map(e => e.name)]")?;
        Ok(names.as_array().map(Vec::as_slice).unwrap_or_default().iter().map(text_of).collect())
    }

    /// What axe-core finds wrong in the page as it is now: rule, help, and the elements.
    pub fn axe(&self) -> Done<Vec<String>> {
        let axe = super::run::read_text(&super::tools::axe_core()?)?;
        let run = "return axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', \
                   'best-practice'] }).then(r => r.violations.map(v => \
                   v.id + ': ' + v.help + ': ' + v.nodes.map(n => n.target.join(' ')).join(', ')));";
        let found = self.script(&format!("{axe};{run}"), json!([]))?;
        Ok(found.as_array().map(Vec::as_slice).unwrap_or_default().iter().map(text_of).collect())
    }

    fn element(&self, css: &str) -> Done<String> {
        self.wait_for(css)?;
        let found = self.post("/element", &json!({ "using": "css selector", "value": css }))?;
        let id = found.as_object().and_then(|reference| reference.values().next());
        Ok(id.map(text_of).ok_or_else(|| format!("no element is {css}"))?)
    }

    fn keys(&self, actions: Vec<Value>) -> Done {
        let keyboard = json!({ "actions": [{ "type": "key", "id": "keyboard", "actions": actions }] });
        self.post("/actions", &keyboard).map(drop)
    }

    fn get(&self, path: &str) -> Done<Value> {
        request(self.port, "GET", &format!("/session/{}{path}", self.id), None)
    }

    fn post(&self, path: &str, body: &Value) -> Done<Value> {
        request(self.port, "POST", &format!("/session/{}{path}", self.id), Some(body))
    }
}

impl Drop for Session {
    fn drop(&mut self) {
        // Ending the driver alone would leave the browser running. What fails here has no remedy.
        if !self.id.is_empty() {
            drop(request(self.port, "DELETE", &format!("/session/{}", self.id), None));
        }
        drop(self.driver.kill());
        drop(self.driver.wait());
        drop(std::fs::remove_dir_all(&self.profile));
    }
}

/// Starts the driver on a free port and waits until it is ready.
fn start(browser: &Browser) -> Done<(Child, u16)> {
    let port = TcpListener::bind((Ipv4Addr::LOCALHOST, 0))?.local_addr()?.port();
    let mut driver = Command::new(browser.driver)
        .args((browser.arguments)(port))
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()
        .map_err(|problem| {
            format!("{}: {problem}; `cargo xtask test` says what installs it", browser.driver)
        })?;
    let start = Instant::now();
    while start.elapsed() < PATIENCE {
        if let Some(status) = driver.try_wait()? {
            return Err(format!("{} ended with {status}", browser.driver).into());
        }
        if request(port, "GET", "/status", None)
            .is_ok_and(|status| status.get("ready") == Some(&Value::Bool(true)))
        {
            return Ok((driver, port));
        }
        std::thread::sleep(Duration::from_millis(20));
    }
    driver.kill()?;
    driver.wait()?;
    Err(format!("{} was not ready within {PATIENCE:?}", browser.driver).into())
}

/// One command to a driver: its value, or what the driver says is wrong.
fn request(port: u16, method: &str, path: &str, body: Option<&Value>) -> Done<Value> {
    let body = body.map(Value::to_string).unwrap_or_default();
    let mut stream = TcpStream::connect((Ipv4Addr::LOCALHOST, port))?;
    stream.set_read_timeout(Some(COMMAND))?;
    write!(
        stream,
        "{method} {path} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nConnection: close\r\n\
         Content-Type: application/json; charset=utf-8\r\nContent-Length: {}\r\n\r\n{body}",
        body.len()
    )?;
    let mut stream = BufReader::new(stream);
    let mut length = None;
    let mut line = String::new();
    while stream.read_line(&mut line)? > 2 {
        if let Some((name, value)) = line.split_once(':')
            && name.eq_ignore_ascii_case("content-length")
        {
            length = Some(value.trim().parse()?);
        }
        line.clear();
    }
    // A driver may keep the connection open whatever is asked of it: read what it says it sends.
    let mut content = vec![0; length.ok_or_else(|| format!("{method} {path}: the answer has no length"))?];
    stream.read_exact(&mut content)?;
    let answer: Value = serde_json::from_slice(&content)?;
    let value = answer.get("value").cloned().unwrap_or_default();
    match value.get("error").and_then(Value::as_str) {
        Some(error) => {
            let message = value.get("message").map(text_of).unwrap_or_default();
            let first = message.lines().next().unwrap_or_default();
            Err(format!("{method} {path}: {error}: {first}").into())
        }
        None => Ok(value),
    }
}

fn text_of(value: &Value) -> String {
    value.as_str().map_or_else(|| value.to_string(), str::to_owned)
}
