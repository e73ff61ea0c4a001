//! The page in a browser, for a test.

use std::ops::Deref;
use std::path::{Path, PathBuf};

use crate::xtask::browser::{BROWSERS, Browser, CHROMIUM};
use crate::xtask::run::top;
use crate::xtask::server::Server;
use crate::xtask::webdriver::Session;

pub use crate::xtask::run::Done;
#[allow(unused_imports, reason = "for the tests to come")]
pub use crate::xtask::webdriver::key;

/// True once the page is kept on the device and comes from there.
pub const KEPT: &str = "navigator.serviceWorker.controller !== null";

/// The page in one browser, served by a server of its own. Everything that a [`Session`] does can be
/// asked of it.
pub struct Page {
    session: Session,
    server: Option<Server>,
    address: String,
}

/// Runs a test in Chromium, which stands for what does not depend on the engine. Where it fails, a
/// picture of the page is left in `target/page/`.
pub fn in_chromium(test: impl Fn(&mut Page) -> Done) -> Done {
    in_chromium_with(&dist()?, test)
}

/// The same with the page in another folder.
pub fn in_chromium_with(folder: &Path, test: impl Fn(&mut Page) -> Done) -> Done {
    in_browser(&CHROMIUM, folder, &test)
}

/// Runs a test in every engine: for what depends on it.
pub fn in_every_engine(test: impl Fn(&mut Page) -> Done) -> Done {
    let dist = dist()?;
    BROWSERS.iter().try_for_each(|browser| in_browser(browser, &dist, &test))
}

fn in_browser(browser: &'static Browser, folder: &Path, test: &impl Fn(&mut Page) -> Done) -> Done {
    let mut page = Page::start(browser, folder)?;
    test(&mut page).map_err(|problem| format!("{}: {problem}{}", browser.name, page.evidence()).into())
}

impl Page {
    fn start(browser: &'static Browser, folder: &Path) -> Done<Self> {
        let server = Server::start(folder, 0)?;
        let address = server.address();
        Ok(Self { session: Session::open(browser)?, server: Some(server), address })
    }

    /// Opens the page at an address: empty, or what follows from `#` on. Waits until it is usable.
    pub fn open(&self, address: &str) -> Done {
        self.visit(address)?;
        self.ready()
    }

    /// Opens an address, and waits for nothing more than that it is loaded.
    pub fn visit(&self, address: &str) -> Done {
        // By way of an empty page: where only the part after # differs the page would not load anew.
        self.session.go("about:blank")?;
        self.session.go(&format!("{}{address}", self.address))
    }

    /// Opens the page that is one file, from disk, at an address.
    pub fn open_from_disk(&self, address: &str) -> Done {
        let file = dist()?.join("kettle-and-barrel.html");
        if !file.exists() {
            return Err("dist/kettle-and-barrel.html is missing: build it with `cargo xtask bundle`".into());
        }
        self.session.go("about:blank")?;
        self.session.go(&format!("file://{}{address}", file.display()))?;
        self.ready()
    }

    /// Waits until the page has put itself where its place is, with what stands behind its answer: that follows
    /// the first picture.
    pub fn ready(&self) -> Done {
        self.session.until("(document.getElementById('page')?.childElementCount ?? 0) > 0")?;
        self.session.until(
            "!document.querySelector('#answer .headline') || document.querySelector('.detail')?.childElementCount > 0",
        )
    }

    /// Ends the server, as when the network is gone.
    pub fn cut_off(&mut self) {
        self.server = None;
    }

    /// Fails where the console holds errors or warnings.
    pub fn console_is_quiet(&self) -> Done {
        none("the console says", &self.session.console()?)
    }

    /// Fails where the page has asked anybody but its own server.
    pub fn asked_nobody_else(&self) -> Done {
        let mut requests = self.session.requests()?;
        requests.retain(|address| !address.starts_with(&self.address) && !address.starts_with("data:"));
        none("the page asked for", &requests)
    }

    /// Fails where axe-core finds anything.
    pub fn is_accessible(&self) -> Done {
        none("axe-core finds", &self.session.axe()?)
    }

    /// A picture of the page and its console, for the message of a test that failed.
    fn evidence(&self) -> String {
        let test = std::thread::current().name().unwrap_or("test").replace("::", "-");
        let file = top().join("target/page").join(format!("{test}-{}.png", self.session.browser.name));
        let mut evidence = String::new();
        if let Ok(picture) = self.session.screenshot()
            && crate::xtask::run::write(&file, picture).is_ok()
        {
            evidence.push_str(&format!("\nits picture: {}", file.display()));
        }
        for line in self.session.console().unwrap_or_default() {
            evidence.push_str(&format!("\nits console: {line}"));
        }
        evidence
    }
}

impl Deref for Page {
    type Target = Session;
    fn deref(&self) -> &Session {
        &self.session
    }
}

/// Fails where the list is not empty.
fn none(what: &str, list: &[String]) -> Done {
    if list.is_empty() { Ok(()) } else { Err(format!("{what}: {}", list.join("; ")).into()) }
}

/// The built page.
fn dist() -> Done<PathBuf> {
    let dist = top().join("dist");
    if dist.join("index.html").exists() {
        Ok(dist)
    } else {
        Err("dist/ holds no page: build it with `cargo xtask bundle`".into())
    }
}
