//! A fixed sample of mutants that the tests caught once, and must go on catching.
//!
//! It guards the tests; how many mutants they catch is measured by the whole run alone.

use std::path::PathBuf;
use std::sync::Mutex;
use std::time::Duration;

use super::list::ROOMS;
use super::plan::{Mutant, Plan};
use super::results::{Results, row, written};
use super::tests::Run;
use super::tree::{Made, Tree};
use super::trial::Outcome;
use super::workers;
use crate::xtask::run::{Done, read_text, top, write};

/// How many are drawn of each room.
const OF_EACH_ROOM: usize = 8;
/// Of the processor's time, for the test that caught it.
const LIMIT: Duration = Duration::from_secs(60);
/// Built beside the project, of what is built for its tests.
const MADE: Made = Made { folder: "mutants/sample", target: "", features: "tasks", profile: "" };
const ANEW: &str = "where the tests are right, draw the sample anew: cargo xtask mutants --draw";

fn kept() -> PathBuf {
    top().join("tests/property/mutants.tsv")
}

/// Draws the sample: of each room, evenly spread, those that a test has caught.
pub fn draw(results: &Results) -> Done {
    let mut text = format!("{}\n", super::results::HEAD);
    let mut plan = Plan::default();
    for room in ROOMS {
        let caught = |outcome: &Outcome| matches!(outcome, Outcome::Caught(_));
        let of_room = results.0.iter().filter(|(mutant, outcome)| mutant.room() == room && caught(outcome));
        let mut of_room: Vec<_> = of_room.collect();
        for (mutant, _) in &of_room {
            // A file that is gone since is none of the plan's.
            let _ = plan.file(&top(), &mutant.file);
        }
        // What the code no longer has is not drawn.
        of_room.retain(|(mutant, _)| plan.site(mutant).is_some_and(|site| !site.constant));
        for turn in 0..OF_EACH_ROOM.min(of_room.len()) {
            let index = (2 * turn + 1) * of_room.len() / (2 * OF_EACH_ROOM.min(of_room.len()));
            if let Some((mutant, outcome)) = of_room.get(index) {
                text += &written(mutant, outcome);
            }
        }
    }
    write(&kept(), text)
}

/// Puts each of the sample to the test that caught it.
pub fn sample(jobs: usize) -> Done {
    let text = read_text(&kept())?;
    let mut plan = Plan::default();
    let mut by = Vec::new();
    for line in text.lines().skip(1) {
        let (mutant, outcome) = row(line).ok_or_else(|| format!("not a row of the sample: {line}"))?;
        plan.file(&top(), &mutant.file)?;
        let Outcome::Caught(test) = outcome else { return Err(format!("never caught: {line}").into()) };
        if plan.site(&mutant).is_none_or(|site| site.constant) {
            return Err(format!("{}: no longer there: {}; {ANEW}", mutant.file, mutant.words()).into());
        }
        plan.mutants.push(mutant);
        by.push(test);
    }
    let tree = Tree::copy(&MADE, plan.files.keys().cloned().collect::<Vec<_>>().into_iter())?;
    let rendered = plan.render(|_| true);
    tree.put(&rendered)?;
    let binaries = tree.build()?;
    let missed: Mutex<Vec<String>> = Mutex::default();
    workers(jobs, rendered.by_number.len(), |number| {
        let index = rendered.by_number.get(number).copied().unwrap_or_default();
        let (Some(mutant), Some(test)) = (plan.mutants.get(index), by.get(index)) else { return Ok(()) };
        let found = test.split_once("::");
        let found = found
            .and_then(|(program, name)| Some((binaries.iter().find(|binary| binary.name == program)?, name)));
        let Some((binary, name)) = found else { return Err(format!("{test} is no test; {ANEW}").into()) };
        let run = Run { binary, names: &[name], limit: LIMIT };
        if run.with(tree.folder(), "KETTLE_BARREL_MUTANT", &number.to_string())?.status.success() {
            let missed = &mut missed.lock().map_err(|_| "a worker broke off")?;
            missed.push(told(mutant, test));
        }
        Ok(())
    })?;
    let missed = missed.into_inner()?;
    if missed.is_empty() {
        println!("{} mutants, each caught by the test that is kept beside it", by.len());
        return Ok(());
    }
    Err(format!("no longer noticed:\n{}\n{ANEW}", missed.join("\n")).into())
}

fn told(mutant: &Mutant, test: &str) -> String {
    format!("{}: {}, once caught by {test}", mutant.file, mutant.words())
}
