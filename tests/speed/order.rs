//! How long an order line takes: judged without a word, and assessed in full, with figures, words and links.
//!
//! The budgets are for each part of a set: judged at most 1.5 times the yardstick, which is about 500,000
//! lines a second on one core; assessed at most 20 times.

mod ratio;

use std::hint::black_box;

use kettle_barrel::order::{assess, judge, read, reading};
use ratio::{Ratio, ratio};

/// A bolt alone, and a set of three parts.
const LINES: [&str; 2] = [
    "M20x2.5 x 90 hex bolt, 10.9, 1200 pcs, C4, 12 years",
    "3/4-10 x 2-1/2 structural bolt, A325, with DH nut and F436 washer, C3, 15 years",
];
const JUDGED: f64 = 1.5;
const IN_WORDS: f64 = 20.0;
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

fn report(what: &str, parts: f64, budget: f64, call: impl Fn()) {
    let Ratio { times, micros } = ratio(CALLS, call);
    let times = times / parts;
    let verdict = if times <= budget { "within" } else { "over" };
    println!(
        "  {what}: {times:.2} × the yardstick a part, budget {budget} ({verdict}); {micros:.2} µs in all"
    );
}
