//! The browsers that the page is tested in.

use std::path::{Path, PathBuf};

use serde_json::{Value, json};

use super::run::{Done, on_path};
use super::tools::{gecko_driver, programs};

/// One browser and its WebDriver. A further browser is one more of these.
pub struct Browser {
    /// As the tests name it.
    pub name: &'static str,
    /// The program that drives it.
    pub driver: &'static str,
    /// The browser's own program.
    program: &'static str,
    /// The programs that must be on the path, and the Debian packages that bring them.
    needs: (&'static [&'static str], &'static [&'static str]),
    /// The driver's arguments for a port.
    pub arguments: fn(u16) -> Vec<String>,
    /// What a session asks for: the browser's program, and an empty folder for its profile.
    capabilities: fn(&Path, &Path) -> Value,
    /// Whether it takes the commands of the DevTools protocol.
    pub devtools: bool,
    /// Whether it shows itself, and so needs a screen.
    pub needs_screen: bool,
    /// Whether its driver comes from the registry of Rust's packages, for want of a Debian package.
    driver_from_cargo: bool,
}

/// Every browser that the tests run in.
pub const BROWSERS: &[Browser] = &[CHROMIUM, FIREFOX, WEBKIT];

/// Chromium; also the one that takes the pictures.
pub const CHROMIUM: Browser = Browser {
    name: "Chromium",
    driver: "chromedriver",
    program: "chromium",
    needs: (&["chromium", "chromedriver"], &["chromium", "chromium-driver"]),
    arguments: |port| vec![format!("--port={port}")],
    capabilities: |program, profile| {
        json!({
            "browserName": "chrome",
            "goog:loggingPrefs": { "browser": "ALL" },
            "goog:chromeOptions": {
                "binary": program,
                "args": [
                    "--headless=new",
                    // Its sandbox does not run for root, which is who runs the checks in a container;
                    // it loads nothing here but our own page.
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-dev-shm-usage",
                    // Quiet without a network, and nobody's profile.
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                    "--no-first-run",
                    "--hide-scrollbars",
                    format!("--user-data-dir={}", profile.display()),
                ],
            },
        })
    },
    devtools: true,
    needs_screen: false,
    driver_from_cargo: false,
};

/// Chromium, tracing what it does with input from its start.
pub const TRACED: Browser = Browser {
    capabilities: |program, profile| {
        let mut wanted = (CHROMIUM.capabilities)(program, profile);
        let mut ask = |of: &str, name: &str, what: Value| {
            let of = wanted.get_mut(of).and_then(Value::as_object_mut);
            of.map(|of| of.insert(name.to_owned(), what));
        };
        ask("goog:loggingPrefs", "performance", json!("ALL"));
        let categories = "devtools.timeline,blink.user_timing";
        let preferences =
            json!({ "enableNetwork": false, "enablePage": false, "traceCategories": categories });
        ask("goog:chromeOptions", "perfLoggingPrefs", preferences);
        wanted
    },
    ..CHROMIUM
};

/// Firefox, the release with long support.
const FIREFOX: Browser = Browser {
    name: "Firefox",
    driver: "geckodriver",
    program: "firefox-esr",
    needs: (&["firefox-esr"], &["firefox-esr"]),
    arguments: |port| vec!["--port".into(), port.to_string()],
    // The driver makes a profile of its own for each session.
    capabilities: |program, _| {
        json!({
            "browserName": "firefox",
            "moz:firefoxOptions": { "binary": program, "args": ["-headless"] },
        })
    },
    devtools: false,
    needs_screen: false,
    driver_from_cargo: true,
};

/// WebKit, as Debian has it: the engine of Safari, in a window of GTK.
const WEBKIT: Browser = Browser {
    name: "WebKit",
    driver: "WebKitWebDriver",
    program: "/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser",
    needs: (&["WebKitWebDriver", "Xvfb"], &["webkit2gtk-driver", "xvfb"]),
    arguments: |port| vec![format!("--port={port}")],
    capabilities: |program, _| json!({ "webkitgtk:browserOptions": { "binary": program, "args": ["--automation"] } }),
    devtools: false,
    needs_screen: true,
    driver_from_cargo: false,
};

impl Browser {
    /// Sees to it that the browser and its driver are here, or ends with what installs them.
    pub fn ensure(&self) -> Done {
        let (found, packages) = self.needs;
        programs(found, packages)?;
        self.driver_program().map(drop)
    }

    /// The program that drives it, brought where no package of the system has it.
    pub fn driver_program(&self) -> Done<PathBuf> {
        match on_path(self.driver) {
            None if self.driver_from_cargo => gecko_driver(),
            found => found.ok_or_else(|| missing(self.driver).into()),
        }
    }

    /// What to ask the driver for in order to open this browser with an empty profile.
    pub fn capabilities(&self, profile: &Path) -> Done<Value> {
        let path = PathBuf::from(self.program);
        let program = if path.is_absolute() { path.exists().then_some(path) } else { on_path(self.program) };
        Ok((self.capabilities)(&program.ok_or_else(|| missing(self.program))?, profile))
    }
}

fn missing(program: &str) -> String {
    format!("{program} is not on this machine: `cargo xtask test` says what installs it")
}
