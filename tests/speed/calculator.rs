//! How long each calculator takes for its first worked example: read, solved, and told in full.

mod ratio;

use std::hint::black_box;

use kettle_barrel::calculator::{Draft, REGISTER};
use ratio::{Ratio, ratio};

const CALLS: u32 = 100;

fn main() {
    for entry in REGISTER {
        let Some(example) = entry.about.examples.first() else { continue };
        let draft: Draft = example.pairs.iter().copied().collect();
        let Ratio { times, micros } = ratio(CALLS, || {
            black_box(entry.evaluate(black_box(&draft)).is_ok());
        });
        println!("  {:<20} {times:>8.2} × the yardstick; {micros:>8.2} µs", entry.about.id);
    }
}
