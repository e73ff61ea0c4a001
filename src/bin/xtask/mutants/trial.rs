//! One mutant after the other, put to the tests that reach it.

use std::collections::HashMap;
use std::process::Output;
use std::sync::Mutex;
use std::time::Duration;

use super::plan::Rendered;
use super::tests::{Run, Test};
use super::tree::{Binary, Tree};
use crate::xtask::run::Done;

/// So much of tests is run in the first process before one looks whether any failed; then ever more, for
/// what the likeliest tests have not caught is rarely caught by the next.
const FIRST_BATCH: Duration = Duration::from_millis(60);
const LAST_BATCH: Duration = Duration::from_millis(960);

/// What came of a mutant.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Outcome {
    /// This test failed.
    Caught(String),
    /// One of the tests of this process did not come to its end.
    BrokeOff(String),
    /// Every test that reaches it passed.
    Survived,
    /// No test reaches it.
    NotReached,
    /// It does not compile.
    Unviable,
    /// Worked out by the compiler: a switch cannot turn it on.
    Constant,
    /// Not yet put to the tests.
    Untried,
}

impl Outcome {
    /// Whether it can be built and turned on, as far as is known.
    pub fn is_viable(&self) -> bool {
        !matches!(self, Self::Unviable | Self::Constant)
    }
}

/// The tests, in the order that catches most in the least time.
pub struct Trials<'a> {
    pub tree: &'a Tree,
    pub rendered: &'a Rendered,
    pub tests: &'a [Test],
    /// Slower ones are left out.
    pub slowest: Duration,
    /// So much of tests is tried before a mutant counts as not caught.
    pub patience: Duration,
    /// How many mutants of each file each test has caught, and of all of them (no file).
    pub caught: Mutex<HashMap<(String, String), u32>>,
}

impl Trials<'_> {
    /// Puts one mutant to the tests.
    pub fn run(&self, number: u32, file: &str) -> Done<Outcome> {
        let place = usize::try_from(number).ok().and_then(|index| self.rendered.first.get(index));
        let Some(place) = place else { return Ok(Outcome::NotReached) };
        let mut reaching: Vec<&Test> =
            self.tests.iter().filter(|test| test.touched.contains(place)).collect();
        if reaching.is_empty() {
            return Ok(Outcome::NotReached);
        }
        reaching.retain(|test| test.time <= self.slowest);
        {
            let caught = self.caught.lock().map_err(|_| "a worker broke off")?;
            let count = |file: &str, path: &str| {
                f64::from(caught.get(&(file.to_owned(), path.to_owned())).copied().unwrap_or(0))
            };
            // What has caught others of its file is likeliest to catch this one.
            let worth = |test: &Test| {
                let path = test.path();
                let caught = 1.0 + count("", &path) / 10.0 + count(file, &path) * 10.0;
                caught / (test.time.as_secs_f64() + 0.005)
            };
            reaching.sort_by(|a, b| worth(b).total_cmp(&worth(a)));
        }
        let mut waiting: Vec<(&Binary, Vec<&Test>)> = Vec::new();
        let (mut spent, mut size) = (Duration::ZERO, FIRST_BATCH);
        for test in reaching {
            spent += test.time;
            if spent > self.patience {
                break;
            }
            let place = waiting.iter().position(|(binary, _)| binary.path == test.binary.path);
            let place = place.unwrap_or_else(|| {
                waiting.push((&test.binary, Vec::new()));
                waiting.len() - 1
            });
            let Some((_, batch)) = waiting.get_mut(place) else { continue };
            batch.push(test);
            if batch.iter().map(|test| test.time).sum::<Duration>() >= size {
                size = LAST_BATCH.min(size * 2);
                let (binary, batch) = waiting.swap_remove(place);
                if let Some(outcome) = self.batch(number, file, binary, &batch)? {
                    return Ok(outcome);
                }
            }
        }
        for (binary, batch) in waiting {
            if let Some(outcome) = self.batch(number, file, binary, &batch)? {
                return Ok(outcome);
            }
        }
        Ok(Outcome::Survived)
    }

    fn batch(&self, number: u32, file: &str, binary: &Binary, batch: &[&Test]) -> Done<Option<Outcome>> {
        let names: Vec<&str> = batch.iter().map(|test| test.name.as_str()).collect();
        let time: Duration = batch.iter().map(|test| test.time).sum();
        let run = Run { binary, names: &names, limit: time * 3 + Duration::from_secs(1) };
        let output = run.with(self.tree.folder(), "KETTLE_BARREL_MUTANT", &number.to_string())?;
        if output.status.success() {
            return Ok(None);
        }
        let failed = failed(&output);
        let failed: Vec<_> = batch.iter().filter(|test| failed.contains(&test.name)).collect();
        let mut caught = self.caught.lock().map_err(|_| "a worker broke off")?;
        for test in &failed {
            for of in ["", file] {
                *caught.entry((of.to_owned(), test.path())).or_default() += 1;
            }
        }
        // The quickest is kept, for the sample.
        let quickest = failed.iter().min_by_key(|test| test.time);
        Ok(Some(quickest.map_or_else(
            || Outcome::BrokeOff(batch.first().map(|test| test.path()).unwrap_or_default()),
            |test| Outcome::Caught(test.path()),
        )))
    }
}

/// The tests that a run says have failed.
fn failed(output: &Output) -> Vec<String> {
    let text = String::from_utf8_lossy(&output.stdout);
    let lines = text.lines().filter_map(|line| line.strip_prefix("test ")?.strip_suffix(" ... FAILED"));
    lines.map(str::to_owned).collect()
}
