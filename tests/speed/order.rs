//! How long an order line takes, beside a yardstick measured in the same run.
//!
//! The yardstick is a hundred powers: machines differ, the ratio stays. Each round measures the yardstick
//! and then the call, in the time of the thread and not of the clock, so that a busy machine distorts
//! neither; the median of the rounds' ratios is told. The budgets are for each part of a set: judged
//! without a word at most 1.5 times the yardstick, which is about 500,000 lines a second on one core;
//! assessed in full, with figures, words and links, at most 20 times.

use std::hint::black_box;
use std::time::Duration;

use cpu_time::ThreadTime;
use kettle_barrel::order::{assess, judge, read, reading};

/// A bolt alone, and a set of three parts.
const LINES: [&str; 2] = [
    "M20x2.5 x 90 hex bolt, 10.9, 1200 pcs, C4, 12 years",
    "3/4-10 x 2-1/2 structural bolt, A325, with DH nut and F436 washer, C3, 15 years",
];
const JUDGED: f64 = 1.5;
const IN_WORDS: f64 = 20.0;
const ROUNDS: usize = 101;
const CALLS: u32 = 500;

fn main() {
    for text in LINES {
        let draft = reading::read(text).draft;
        let line = match read(&draft) {
            Ok(line) => line,
            Err(problems) => {
                eprintln!("{problems}");
                std::process::exit(1);
            }
        };
        let parts = judge(&line).items.len() as f64;
        println!("{text}");
        report("judged", parts, JUDGED, || drop(black_box(judge(black_box(&line)))));
        report("assessed, in words", parts, IN_WORDS, || drop(black_box(assess(black_box(&draft)))));
    }
}

/// A hundred powers.
fn yardstick() {
    let mut sum = 0.0_f64;
    for at in 1..=100_u32 {
        sum += black_box(f64::from(at)).powf(0.813);
    }
    black_box(sum);
}

fn report(what: &str, parts: f64, budget: f64, call: impl Fn()) {
    let mut rounds: Vec<(f64, f64)> = (0..ROUNDS)
        .map(|_| {
            let (beside, time) = (time(yardstick), time(&call));
            (time.as_secs_f64() / beside.as_secs_f64() / parts, time.as_secs_f64() * 1e6)
        })
        .collect();
    rounds.sort_by(|one, other| one.0.total_cmp(&other.0));
    let (ratio, micros) = rounds.get(ROUNDS / 2).copied().unwrap_or_default();
    let verdict = if ratio <= budget { "within" } else { "over" };
    println!(
        "  {what}: {ratio:.2} × the yardstick a part, budget {budget} ({verdict}); {micros:.2} µs in all"
    );
}

/// The time of one call.
fn time(call: impl Fn()) -> Duration {
    let start = ThreadTime::now();
    (0..CALLS).for_each(|_| call());
    start.elapsed() / CALLS
}
