//! Whether the tests notice when the core is changed: every mutant of its rooms, put to the tests.
//!
//! All mutants are built at once, each behind a switch that the environment turns on; building them one
//! by one takes days. What the compiler itself works out cannot be switched, and is counted apart.

mod list;
mod plan;
mod results;
mod rewrite;
pub mod sample;
mod site;
mod tests;
mod tree;
mod trial;

use std::collections::HashSet;
use std::path::Path;
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::{Duration, Instant};

use clap::Args;
use list::{ROOMS, listed};
use plan::{Found, Mutant, Plan, Rendered};
use results::Results;
use tree::{Made, Tree};
use trial::{Outcome, Trials};

use super::run::{Done, step, top};

/// What is tried.
#[derive(Args)]
pub struct Options {
    /// Only this room; may be given several times
    #[arg(long)]
    room: Vec<String>,
    /// Only this file
    #[arg(long)]
    file: Vec<String>,
    /// Only what the last run did not catch, with the tests of now
    #[arg(long)]
    only_survivors: bool,
    /// Only what the last run did not come to, and what the code has had since
    #[arg(long)]
    go_on: bool,
    /// Only one of so many mutants, for a first look
    #[arg(long, default_value_t = 1)]
    every: usize,
    /// Draws the sample of the ordinary tests anew from what the last run caught, and tries it
    #[arg(long)]
    draw: bool,
    /// So many mutants at once
    #[arg(long, default_value_t = 2)]
    jobs: usize,
    /// Tests that take longer, in seconds, are left out
    #[arg(long, default_value_t = 2.0)]
    slowest: f64,
    /// So many seconds of tests at most are put to a mutant, the likeliest first: for a first look, before
    /// the survivors are tried with all of them
    #[arg(long, default_value_t = 1000.0)]
    patience: f64,
}

/// Apart from the project's own build, so that one may go on working meanwhile.
const MADE: Made = Made {
    folder: "mutants/tree",
    target: "mutants/build",
    features: "",
    profile: "[profile.dev.package.kettle-barrel]\nopt-level = 1\ndebug = false\n",
};

/// Tries the mutants, and tells what came of them.
pub fn mutants(options: &Options) -> Done {
    let kept = top().join("target/mutants/results.tsv");
    let last = Results::read(&kept)?;
    if options.draw {
        sample::draw(&last)?;
        return step("the sample of mutants", || sample::sample(options.jobs));
    }
    let again = options.only_survivors || options.go_on;
    let plan = if options.only_survivors {
        kept_plan(&last)?
    } else {
        step("list the mutants", || chosen(options))?
    };
    let files = plan.files.keys().cloned().collect::<Vec<_>>();
    let tree = step("copy the project", || Tree::copy(&MADE, files.into_iter()))?;

    let mut outcomes = before(&plan, &last, again);
    let rendered = step("find what does not compile", || viable(&plan, &tree, &mut outcomes))?;
    let numbers = wanted(options, &plan, &rendered, &outcomes);
    let mut results = Results(plan.mutants.iter().cloned().zip(outcomes).collect());
    let everywhere = options.room.is_empty() && options.file.is_empty();
    if !(again || everywhere) {
        // Of other rooms stays what is known.
        let others = last.0.into_iter().filter(|(mutant, _)| !plan.files.contains_key(&mutant.file));
        results.0.extend(others);
    }
    // Kept before the long part begins, so that another run can go on from here.
    results.write(&kept)?;
    let binaries = step("build all at once", || tree.build())?;
    let tests = step("each test alone", || tests::tests(&tree, &binaries, options.jobs))?;
    let slow = tests.iter().filter(|test| test.time.as_secs_f64() > options.slowest).count();
    println!("{} tests; {slow} of them are slower than {} s and left out", tests.len(), options.slowest);

    let trials = Trials {
        tree: &tree,
        rendered: &rendered,
        tests: &tests,
        slowest: Duration::from_secs_f64(options.slowest),
        patience: Duration::from_secs_f64(options.patience),
        caught: Mutex::new(results.catches()),
    };
    step("try each mutant", || tried(&trials, options.jobs, &numbers, &plan, &mut results, &kept))?;
    results.print();
    println!("\nEach of them: {}", kept.display());
    Ok(())
}

/// The mutants that the options ask for.
fn chosen(options: &Options) -> Done<Plan> {
    let rooms = if options.room.is_empty() && options.file.is_empty() {
        ROOMS.map(str::to_owned).to_vec()
    } else {
        options.room.clone()
    };
    let rooms = rooms.iter().flat_map(|room| [format!("src/{room}.rs"), format!("src/{room}/**")]);
    let files: Vec<String> = rooms.chain(options.file.iter().cloned()).collect();
    let (plan, impossible) = listed(&files)?;
    println!("{} mutants; {impossible} more cannot compile", plan.mutants.len());
    Ok(plan)
}

/// The mutants of the last run; what the code no longer has is named.
fn kept_plan(last: &Results) -> Done<Plan> {
    let mut plan = Plan::default();
    for mutant in last.0.keys() {
        plan.file(&top(), &mutant.file)?;
        if plan.site(mutant).is_some() {
            plan.mutants.push(mutant.clone());
        } else {
            println!("no longer there: {}: {}", mutant.file, mutant.words());
        }
    }
    Ok(plan)
}

/// What is known before anything is tried: what no switch can turn on, and where a run goes on, what came
/// of the last one.
fn before(plan: &Plan, last: &Results, again: bool) -> Vec<Outcome> {
    let known = |mutant: &Mutant| {
        if plan.site(mutant).is_none_or(|site| site.constant) {
            return Outcome::Constant;
        }
        let outcome = last.0.get(mutant).filter(|_| again);
        outcome.cloned().unwrap_or(Outcome::Untried)
    };
    plan.mutants.iter().map(known).collect()
}

/// The numbers of those that are to be tried now.
fn wanted(options: &Options, plan: &Plan, rendered: &Rendered, outcomes: &[Outcome]) -> Vec<usize> {
    let all = options.room.is_empty() && options.file.is_empty();
    let asked = |number: usize| {
        let index = *rendered.by_number.get(number)?;
        let mutant = plan.mutants.get(index)?;
        let here = all
            || options.room.iter().any(|room| room == mutant.room())
            || options.file.contains(&mutant.file);
        let outcome = outcomes.get(index)?;
        let due = match outcome {
            Outcome::Untried => !options.only_survivors,
            Outcome::Survived | Outcome::NotReached => options.only_survivors,
            _ => false,
        };
        (here && due).then_some(number)
    };
    let due: Vec<usize> = (0..rendered.by_number.len()).filter_map(asked).collect();
    due.into_iter().step_by(options.every.max(1)).collect()
}

/// Puts the mutants in, and takes out what does not compile until the rest does.
fn viable(plan: &Plan, tree: &Tree, outcomes: &mut [Outcome]) -> Done<Rendered> {
    loop {
        let rendered = plan.render(|index| outcomes.get(index).is_some_and(Outcome::is_viable));
        tree.put(&rendered)?;
        let broken = tree.check()?;
        if broken.is_empty() {
            return Ok(rendered);
        }
        let mut unviable: HashSet<u32> = HashSet::new();
        let mut places: HashSet<u32> = HashSet::new();
        let mut unexplained = Vec::new();
        for error in &broken {
            let found = error.places.iter().map(|(file, at)| rendered.at(file, *at));
            let mut place = None;
            let mut mutant = None;
            for found in found {
                match found {
                    Found::Mutant(number) if mutant.is_none() => mutant = Some(number),
                    Found::Place(numbers) if place.is_none() => place = Some(numbers),
                    _ => {}
                }
            }
            match (mutant, place) {
                (Some(number), _) => drop(unviable.insert(number)),
                (None, Some(numbers)) => places.extend(numbers),
                (None, None) => unexplained.push(error.text.as_str()),
            }
        }
        println!(
            "{} errors: {} mutants do not compile, {} cannot be switched",
            broken.len(),
            unviable.len(),
            places.len()
        );
        if unviable.is_empty() && places.is_empty() {
            return Err(format!("the copy does not compile:\n{}", unexplained.join("\n")).into());
        }
        for (numbers, outcome) in [(places, Outcome::Constant), (unviable, Outcome::Unviable)] {
            for number in numbers {
                let index = usize::try_from(number).ok().and_then(|number| rendered.by_number.get(number));
                if let Some(slot) = index.and_then(|index| outcomes.get_mut(*index)) {
                    *slot = outcome.clone();
                }
            }
        }
    }
}

/// Tries each, and keeps what came of them as it goes on: such a run may be ended, and another goes on.
fn tried(
    trials: &Trials<'_>,
    jobs: usize,
    numbers: &[usize],
    plan: &Plan,
    results: &mut Results,
    kept: &Path,
) -> Done {
    let start = Instant::now();
    let state = Mutex::new((results, 0_usize, 0_usize));
    // Not in the order of the files, so that the share is known early: a step that shares no divisor.
    let all = numbers.len();
    let stride = (all / 3 + 1..).find(|stride| coprime(*stride, all)).unwrap_or(1);
    workers(jobs, all, |turn| {
        let Some(&number) = numbers.get(turn * stride % all) else { return Ok(()) };
        let Some(mutant) = rendered_mutant(trials.rendered, plan, number) else { return Ok(()) };
        let outcome = trials.run(u32::try_from(number)?, &mutant.file)?;
        let mut state = state.lock().map_err(|_| "a worker broke off")?;
        let (results, done, caught) = &mut *state;
        *done += 1;
        *caught += usize::from(matches!(outcome, Outcome::Caught(_) | Outcome::BrokeOff(_)));
        results.0.insert(mutant.clone(), outcome);
        if done.is_multiple_of(200) || *done == all {
            println!("{done} of {all}: {caught} caught, {:.0} s", start.elapsed().as_secs_f64());
            results.write(kept)?;
        }
        Ok(())
    })
}

fn rendered_mutant<'a>(rendered: &Rendered, plan: &'a Plan, number: usize) -> Option<&'a Mutant> {
    plan.mutants.get(*rendered.by_number.get(number)?)
}

fn coprime(a: usize, b: usize) -> bool {
    let (mut a, mut b) = (a, b);
    while b != 0 {
        (a, b) = (b, a % b);
    }
    a == 1
}

/// Does `count` pieces of work by so many threads; the first problem ends all.
fn workers(jobs: usize, count: usize, work: impl Fn(usize) -> Done + Sync) -> Done {
    let next = AtomicUsize::new(0);
    std::thread::scope(|scope| {
        let threads: Vec<_> = (0..jobs.max(1))
            .map(|_| {
                scope.spawn(|| -> Result<(), String> {
                    loop {
                        let index = next.fetch_add(1, Ordering::Relaxed);
                        if index >= count {
                            return Ok(());
                        }
                        if let Err(problem) = work(index) {
                            next.store(count, Ordering::Relaxed);
                            return Err(problem.to_string());
                        }
                    }
                })
            })
            .collect();
        for thread in threads {
            thread.join().map_err(|_| "a worker broke off")??;
        }
        Ok(())
    })
}
