//! The tests, each by itself: how long it takes, and which mutants it reaches.

use std::collections::{BTreeMap, HashSet};
use std::fs;
use std::path::Path;
use std::process::{Command, Output};
use std::sync::Mutex;
use std::time::{Duration, Instant};

use super::tree::{Binary, Tree};
use super::workers;
use crate::xtask::run::{Done, output_of};

/// They measure times: on a machine that does other work they fail by themselves.
const TIMED: [&str; 6] = [
    "linear::",
    "reading::twice_as_long",
    "reading::any_text_is_read_in_proportion",
    "twice_as_much_as_ten_thousand",
    "is_moved_in_time",
    "::the_native_build_has_no_web_crate",
];
/// So much memory may a test use, in kB.
const MEMORY: &str = "3000000";

/// A test.
pub struct Test {
    pub binary: Binary,
    pub name: String,
    /// Of its own process, from start to end.
    pub time: Duration,
    /// The first number of each place that it reaches.
    pub touched: HashSet<u32>,
}

impl Test {
    /// Its name with that of its program.
    pub fn path(&self) -> String {
        format!("{}::{}", self.binary.name, self.name)
    }
}

/// Runs every test alone, without a mutant. What fails so is named and left out.
pub fn tests(tree: &Tree, binaries: &[Binary], jobs: usize) -> Done<Vec<Test>> {
    let mut names: Vec<(Binary, String)> = Vec::new();
    for binary in binaries {
        let list = output_of(Command::new(&binary.path).args(["--list", "--format", "terse"]))?;
        let tests = list.lines().filter_map(|line| line.strip_suffix(": test"));
        let tests = tests.filter(|name| !TIMED.iter().any(|timed| name.contains(timed)));
        names.extend(tests.map(|name| (binary.clone(), name.to_owned())));
    }
    let found: Mutex<BTreeMap<usize, Test>> = Mutex::default();
    workers(jobs, names.len(), |index| {
        let Some((binary, name)) = names.get(index) else { return Ok(()) };
        let touched = tree.folder().join(format!("touched-{index}"));
        let start = Instant::now();
        let run = Run { binary, names: &[name], limit: Duration::from_secs(600) };
        let output = run.with(tree.folder(), "KETTLE_BARREL_TOUCHED", &touched.display().to_string())?;
        let time = start.elapsed();
        let numbers = fs::read_to_string(&touched).unwrap_or_default();
        let _ = fs::remove_file(&touched);
        if !output.status.success() {
            println!("left out, it fails without a mutant: {}::{name}", binary.name);
            return Ok(());
        }
        let touched = numbers.lines().filter_map(|line| line.parse().ok()).collect();
        let test = Test { binary: binary.clone(), name: name.clone(), time, touched };
        found.lock().map_err(|_| "a worker broke off")?.insert(index, test);
        Ok(())
    })?;
    Ok(found.into_inner()?.into_values().collect())
}

/// Some tests of one program in one process.
pub struct Run<'a> {
    pub binary: &'a Binary,
    pub names: &'a [&'a str],
    /// Of the processor's time.
    pub limit: Duration,
}

impl Run<'_> {
    /// Runs them, one word of the environment said.
    pub fn with(&self, folder: &Path, key: &str, value: &str) -> Done<Output> {
        // The shell holds every process of the test to its time and memory; what sleeps is ended later.
        let seconds = self.limit.as_secs() + 1;
        let script = "ulimit -v $1; ulimit -t $2; shift 2; exec timeout -k 1 \"$@\"";
        Ok(Command::new("sh")
            .args(["-c", script, "sh", MEMORY, &seconds.to_string(), &(seconds * 6 + 20).to_string()])
            .arg(&self.binary.path)
            .args(self.names.iter().map(AsRef::<str>::as_ref))
            .args(["--exact", "--test-threads=1"])
            .current_dir(folder)
            .env("CARGO_MANIFEST_DIR", folder)
            .env("RUST_BACKTRACE", "0")
            .env("PROPTEST_DISABLE_FAILURE_PERSISTENCE", "1")
            // A failure is enough; the smallest one is not asked for.
            .env("PROPTEST_MAX_SHRINK_ITERS", "0")
            .env_remove("KETTLE_BARREL_RENEW")
            .env(key, value)
            .output()?)
    }
}
