//! How long an order line takes, beside a yardstick measured in the same run.
//!
//! The yardstick is a small sum of the kind a spreadsheet cell holds: machines differ, the ratio
//! stays. Budgets: 25 µs for a full assessment with its words, 2 µs for the judgement alone.

use std::hint::black_box;
use std::time::{Duration, Instant};

use kettle_barrel::order::{assess, judge, read, reading};

const LINE: &str = "M20x2.5 x 90 hex bolt, 10.9, 1200 pcs, C4, 12 years";
const ROUNDS: usize = 31;
const CALLS: u32 = 2_000;

fn main() {
    let draft = reading::read(LINE).draft;
    let line = match read(&draft) {
        Ok(line) => line,
        Err(problems) => {
            eprintln!("{problems}");
            std::process::exit(1);
        }
    };
    let yardstick = median(|| {
        let mut sum = 0.0_f64;
        for at in 1..=100_u32 {
            sum += black_box(f64::from(at)).powf(0.813);
        }
        black_box(sum);
    });
    report("yardstick: 100 powers", yardstick, yardstick, None);
    report("one line judged", median(|| drop(black_box(judge(black_box(&line))))), yardstick, Some(2.0));
    report(
        "one line read and assessed, in words",
        median(|| drop(black_box(assess(black_box(&draft))))),
        yardstick,
        Some(25.0),
    );
}

/// Median time of one call, in rounds that even out a noisy machine.
fn median(call: impl Fn()) -> Duration {
    let mut rounds: Vec<Duration> = (0..ROUNDS)
        .map(|_| {
            let start = Instant::now();
            (0..CALLS).for_each(|_| call());
            start.elapsed() / CALLS
        })
        .collect();
    rounds.sort();
    rounds.get(ROUNDS / 2).copied().unwrap_or_default()
}

fn report(what: &str, time: Duration, yardstick: Duration, budget: Option<f64>) {
    let micros = time.as_secs_f64() * 1e6;
    let ratio = time.as_secs_f64() / yardstick.as_secs_f64();
    let budget = budget.map_or_else(String::new, |budget| format!(", budget {budget} µs"));
    println!("{what}: {micros:.2} µs, {ratio:.2} × the yardstick{budget}");
}
