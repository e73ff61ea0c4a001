//! The program that drives a browser, and what it needs around it.

use std::io::{BufRead, BufReader};
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::atomic::{AtomicU32, Ordering};
use std::time::{Duration, Instant};

use super::browser::Browser;
use super::run::Done;

/// How long a driver may take until it listens.
const PATIENCE: Duration = Duration::from_secs(20);

/// A running driver; ended when dropped.
pub struct Driver {
    process: Ended,
    port: u16,
    // Ended after the driver that shows a browser on it.
    _screen: Option<Ended>,
}

/// A process that is ended when dropped.
struct Ended(Child);

impl Drop for Ended {
    fn drop(&mut self) {
        // What fails here has no remedy.
        drop(self.0.kill());
        drop(self.0.wait());
    }
}

impl Driver {
    /// Starts the driver of a browser on a free port and waits until it listens.
    pub fn start(browser: &Browser, profile: &Path) -> Done<Self> {
        // The port is free when it is asked for; that another program takes it before the driver
        // does is rare, and then the driver ends at once and the next port is tried.
        let mut tries = 0;
        loop {
            tries += 1;
            match Self::try_start(browser, profile) {
                Err(problem) if tries == 3 => return Err(problem),
                Err(_) => {}
                started => return started,
            }
        }
    }

    /// Where it listens.
    pub fn address(&self) -> String {
        format!("http://127.0.0.1:{}", self.port)
    }

    fn try_start(browser: &Browser, profile: &Path) -> Done<Self> {
        let port = TcpListener::bind((Ipv4Addr::LOCALHOST, 0))?.local_addr()?.port();
        let mut command = Command::new(browser.driver_program()?);
        command
            .args((browser.arguments)(port))
            .stdin(Stdio::null())
            .stdout(Stdio::null())
            .stderr(Stdio::null());
        let screen = if browser.needs_screen {
            let (screen, display) = screen()?;
            command.env("DISPLAY", display);
            // Its sandbox does not run for root, who runs the checks in a container; it loads nothing
            // here but our own page.
            command.env("WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS", "1");
            command.env("XDG_RUNTIME_DIR", profile).env("HOME", profile);
            Some(screen)
        } else {
            None
        };
        let process = command.spawn().map_err(|problem| {
            format!("{}: {problem}; `cargo xtask test` says what installs it", browser.driver)
        })?;
        let mut driver = Self { process: Ended(process), port, _screen: screen };
        let start = Instant::now();
        while start.elapsed() < PATIENCE {
            if let Some(status) = driver.process.0.try_wait()? {
                return Err(format!("{} ended with {status}", browser.driver).into());
            }
            if TcpStream::connect((Ipv4Addr::LOCALHOST, port)).is_ok() {
                return Ok(driver);
            }
            std::thread::sleep(Duration::from_millis(20));
        }
        Err(format!("{} did not listen within {PATIENCE:?}", browser.driver).into())
    }
}

/// An empty folder for a profile.
pub fn free_profile() -> Done<PathBuf> {
    static COUNT: AtomicU32 = AtomicU32::new(0);
    let number = COUNT.fetch_add(1, Ordering::Relaxed);
    let profile = std::env::temp_dir().join(format!("kettle-barrel-{}-{number}", std::process::id()));
    std::fs::create_dir_all(&profile)?;
    Ok(profile)
}

/// A screen that nobody sees, and its name.
fn screen() -> Done<(Ended, String)> {
    let mut screen = Command::new("Xvfb")
        .args(["-displayfd", "1", "-screen", "0", "1280x1024x24", "-nolisten", "tcp"])
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .map_err(|problem| format!("Xvfb: {problem}; `cargo xtask test` says what installs it"))?;
    let mut number = String::new();
    if let Some(output) = screen.stdout.take() {
        BufReader::new(output).read_line(&mut number)?;
    }
    Ok((Ended(screen), format!(":{}", number.trim())))
}
