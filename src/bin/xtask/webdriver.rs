//! A browser held by WebDriver: what looking at our page takes, one command after the other.

use std::fmt;
use std::path::PathBuf;
use std::time::{Duration, Instant};

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use fantoccini::actions::{InputSource, KeyAction, KeyActions};
use fantoccini::elements::Element;
use fantoccini::error::CmdError;
use fantoccini::wd::{PrintConfiguration, PrintSize, WebDriverCompatibleCommand};
use fantoccini::{Client, ClientBuilder, Locator};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Value, json};
use tokio::runtime::Runtime;

use super::browser::Browser;
use super::driver::{Driver, free_profile};
use super::run::Done;

/// How long a page may take to become what is waited for.
const PATIENCE: Duration = Duration::from_secs(30);

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
    client: Client,
    runtime: Runtime,
    // Ended after the session in it.
    _driver: Driver,
    profile: PathBuf,
}

/// A command beyond the WebDriver standard: `POST` with a body, to a path below the session.
#[derive(Debug)]
struct Vendors {
    path: &'static str,
    body: Value,
}

impl WebDriverCompatibleCommand for Vendors {
    fn endpoint(&self, base: &url::Url, session: Option<&str>) -> Result<url::Url, url::ParseError> {
        base.join(&format!("session/{}/{}", session.unwrap_or_default(), self.path))
    }

    fn method_and_body(&self, _: &url::Url) -> (http::Method, Option<String>) {
        (http::Method::POST, Some(self.body.to_string()))
    }
}

impl Session {
    /// Opens the browser.
    pub fn open(browser: &'static Browser) -> Done<Self> {
        let profile = free_profile()?;
        let driver = Driver::start(browser, &profile)?;
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build()?;
        let Value::Object(wanted) = browser.capabilities(&profile)? else {
            return Err(format!("the capabilities of {} are no object", browser.name).into());
        };
        let opened = runtime.block_on(async {
            let mut builder = ClientBuilder::new(HttpConnector::new());
            let builder = builder.capabilities(wanted);
            tokio::time::timeout(COMMAND, builder.connect(&driver.address())).await
        });
        let client = opened.map_err(|_| format!("{} opened no session in {COMMAND:?}", browser.driver))??;
        Ok(Self { browser, client, runtime, _driver: driver, profile })
    }

    /// Waits for a command.
    fn wait<T>(&self, command: impl Future<Output = Result<T, CmdError>>) -> Done<T> {
        let name = self.browser.driver;
        match self.runtime.block_on(async { tokio::time::timeout(COMMAND, command).await }) {
            Ok(Ok(value)) => Ok(value),
            Ok(Err(problem)) => Err(format!("{name}: {}", first_line(&problem)).into()),
            Err(_) => Err(format!("{name} gave no answer in {COMMAND:?}").into()),
        }
    }

    fn vendors(&self, path: &'static str, body: Value) -> Done<Value> {
        self.wait(self.client.issue_cmd(Vendors { path, body }))
    }

    /// Opens an address and waits until it has loaded.
    pub fn go(&self, address: &str) -> Done {
        self.wait(self.client.goto(address))
    }

    /// Opens one more tab, which is then the one that is held.
    pub fn another_tab(&self) -> Done {
        let tab = self.wait(self.client.new_window(true))?;
        self.wait(self.client.switch_to_window(tab.handle))
    }

    /// Holds the tab that was opened so manieth, from 0.
    pub fn tab(&self, place: usize) -> Done {
        let tab = self.wait(self.client.windows())?.into_iter().nth(place).ok_or("there is no such tab")?;
        self.wait(self.client.switch_to_window(tab))
    }

    /// Loads the address again.
    pub fn reload(&self) -> Done {
        self.wait(self.client.refresh())
    }

    /// Goes back one step in the history.
    pub fn back(&self) -> Done {
        self.wait(self.client.back())
    }

    /// The address the browser is at.
    pub fn address(&self) -> Done<String> {
        Ok(self.wait(self.client.current_url())?.into())
    }

    /// Runs the body of a function in the page and returns what it returns; a promise is waited for.
    /// The arguments are `arguments[0]` and so on.
    pub fn script(&self, body: &str, arguments: Value) -> Done<Value> {
        let Value::Array(arguments) = arguments else { return Err("arguments are an array".into()) };
        self.wait(self.client.execute(body, arguments))
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
        let element = self.element(css)?;
        self.wait(element.text())
    }

    /// A property of the first element: `value`, `checked`, `id`.
    pub fn property(&self, css: &str, name: &str) -> Done<Value> {
        self.wait_for(css)?;
        self.script("return document.querySelector(arguments[0])[arguments[1]];", json!([css, name]))
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
        self.until(&format!("({element}?.innerText ?? '').includes({})", json!(part))).map_err(|problem| {
            let text = self.value(&format!("{element}?.innerText")).unwrap_or_default();
            format!("{problem}; {css} says {text}").into()
        })
    }

    /// Clicks the first element, in its middle, as a pointer does.
    pub fn click(&self, css: &str) -> Done {
        let element = self.element(css)?;
        self.wait(element.click())
    }

    /// Adds text to a field, key by key.
    pub fn type_into(&self, css: &str, text: &str) -> Done {
        let element = self.element(css)?;
        self.wait(element.send_keys(text))
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
        let down = keys.iter().map(|&value| KeyAction::Down { value });
        let up = keys.iter().rev().map(|&value| KeyAction::Up { value });
        self.keys(down.chain(up))
    }

    /// Types text, one key after the other, in the element that has the focus.
    pub fn type_over(&self, text: &str) -> Done {
        self.keys(text.chars().flat_map(|value| [KeyAction::Down { value }, KeyAction::Up { value }]))
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
        self.wait(self.client.set_window_size(width, height))
    }

    /// A picture of what is in view, as PNG.
    pub fn screenshot(&self) -> Done<Vec<u8>> {
        self.wait(self.client.screenshot())
    }

    /// A picture of the whole page, as PNG. Chromium only.
    pub fn full_page(&self) -> Done<Vec<u8>> {
        let picture = self.devtools("Page.captureScreenshot", json!({ "captureBeyondViewport": true }))?;
        Ok(STANDARD.decode(picture.pointer("/data").map(text_of).unwrap_or_default())?)
    }

    /// The page as its browser prints it on paper of this size, in centimetres, with margins of 1 cm: a PDF.
    #[allow(dead_code, reason = "for the tests of the page, which share this file")]
    pub fn print(&self, (width, height): (f64, f64)) -> Done<Vec<u8>> {
        let paper = PrintConfiguration::builder().size(PrintSize { width, height }).build();
        let paper = paper.map_err(|problem| format!("no paper of {width} by {height} cm: {problem}"))?;
        self.wait(self.client.print(paper))
    }

    /// A command of the DevTools protocol. Chromium only.
    pub fn devtools(&self, command: &str, parameters: Value) -> Done<Value> {
        self.vendors("goog/cdp/execute", json!({ "cmd": command, "params": parameters }))
    }

    /// What the page and the browser said in the console since this was last asked: errors and
    /// warnings. Chromium only; nothing elsewhere.
    pub fn console(&self) -> Done<Vec<String>> {
        if !self.browser.devtools {
            return Ok(Vec::new());
        }
        let log = self.vendors("se/log", json!({ "type": "browser" }))?;
        let entries = log.as_array().map(Vec::as_slice).unwrap_or_default();
        let said = |entry: &Value, what| entry.get(what).map(text_of).unwrap_or_default();
        let serious =
            entries.iter().filter(|entry| matches!(said(entry, "level").as_str(), "SEVERE" | "WARNING"));
        Ok(serious.map(|entry| said(entry, "message")).collect())
    }

    /// What the browser traced since it was opened; it can be asked once. Only of a browser that traces.
    pub fn trace(&self) -> Done<Vec<Value>> {
        let log = self.vendors("se/log", json!({ "type": "performance" }))?;
        let entries = log.as_array().map(Vec::as_slice).unwrap_or_default();
        let events = entries.iter().filter_map(|entry| {
            let said: Value = serde_json::from_str(entry.get("message")?.as_str()?).ok()?;
            let message = said.get("message")?;
            let traced = message.get("method")?.as_str()? == "Tracing.dataCollected";
            traced.then(|| message.get("params").cloned())?
        });
        Ok(events.collect())
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

    fn element(&self, css: &str) -> Done<Element> {
        self.wait_for(css)?;
        self.wait(self.client.find(Locator::Css(css)))
    }

    fn keys(&self, actions: impl Iterator<Item = KeyAction>) -> Done {
        let keyboard = actions.fold(KeyActions::new("keyboard".to_owned()), KeyActions::then);
        self.wait(self.client.perform_actions(keyboard))
    }
}

impl Drop for Session {
    fn drop(&mut self) {
        // Ending the driver alone would leave the browser running. What fails here has no remedy.
        drop(self.wait(self.client.clone().close()));
        drop(std::fs::remove_dir_all(&self.profile));
    }
}

fn first_line(problem: &impl fmt::Display) -> String {
    problem.to_string().lines().next().unwrap_or_default().to_owned()
}

fn text_of(value: &Value) -> String {
    value.as_str().map_or_else(|| value.to_string(), str::to_owned)
}
