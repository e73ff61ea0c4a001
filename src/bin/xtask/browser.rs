//! The browsers that the page is tested in.

use std::path::{Path, PathBuf};

use serde_json::{Value, json};

use super::run::{Done, on_path};
use super::tools::programs;

/// One browser and its WebDriver. A further browser is one more of these.
pub struct Browser {
    /// As the tests name it.
    pub name: &'static str,
    /// The program that drives it.
    pub driver: &'static str,
    /// The browser's own program.
    program: &'static str,
    /// The Debian packages of both.
    packages: &'static [&'static str],
    /// The driver's arguments for a port.
    pub arguments: fn(u16) -> Vec<String>,
    /// What a session asks for: the browser's program, and an empty folder for its profile.
    capabilities: fn(&Path, &Path) -> Value,
    /// Whether it takes the commands of the DevTools protocol.
    pub devtools: bool,
}

/// Every browser that the tests run in.
pub const BROWSERS: &[Browser] = &[CHROMIUM];

/// Chromium; also the one that takes the pictures.
pub const CHROMIUM: Browser = Browser {
    name: "Chromium",
    driver: "chromedriver",
    program: "chromium",
    packages: &["chromium", "chromium-driver"],
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
};

impl Browser {
    /// Sees to it that the browser and its driver are here, or ends with what installs them.
    pub fn ensure(&self) -> Done {
        programs(&[self.driver, self.program], self.packages)
    }

    /// What to ask the driver for in order to open this browser with an empty profile.
    pub fn capabilities(&self, profile: &Path) -> Done<Value> {
        let program: PathBuf = on_path(self.program).ok_or_else(|| {
            format!("{} is not on this machine: `cargo xtask test` says what installs it", self.program)
        })?;
        Ok((self.capabilities)(&program, profile))
    }
}
