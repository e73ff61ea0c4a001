//! The same small sum in several languages, beside each other in one run: `cargo xtask bench`.
//!
//! For each bolt: the pitch diameter under its coat, the play left in the nut, the zinc on a square metre, and
//! the years that it lasts by ISO 9224, upper bound. `kernel.py` (pint), `kernel.js` and the spreadsheet that
//! xtask writes do the same; each takes the number of rows, and prints
//! its time for a row and the sum of all results, which must agree.

use std::hint::black_box;
use std::time::Instant;

use kettle_barrel::coat::factor::ISO_1461;
use kettle_barrel::quantity::{Length, Rate};
use kettle_barrel::site::life::{Exponent, years};

const ROUNDS: usize = 21;

fn main() {
    let rows = std::env::args().find_map(|argument| argument.parse().ok()).unwrap_or(200_000_u32);
    let mut times: Vec<f64> = (0..ROUNDS)
        .map(|_| {
            let start = Instant::now();
            black_box((0..rows).map(|at| row(black_box(at))).sum::<f64>());
            start.elapsed().as_secs_f64()
        })
        .collect();
    times.sort_by(f64::total_cmp);
    let sum: f64 = (0..rows).map(row).sum();
    let median = times.get(ROUNDS / 2).copied().unwrap_or_default();
    println!("{} {sum:.6}", median * 1e9 / f64::from(rows));
}

fn row(at: u32) -> f64 {
    let bolt = Length::from_mm(14.0 + f64::from(at % 997) / 1000.0);
    let nut = bolt + Length::from_mm(0.4);
    let coat = Length::from_um(40.0 + f64::from(at % 61));
    let rate = Rate::from_um_year(0.7 + f64::from(at % 350) / 100.0);

    let play = nut - (bolt + 4.0 * coat);
    let zinc = ISO_1461.min * coat;
    let life = years(coat, rate, Exponent::Upper);
    play.um() + zinc.g_m2() + life.year()
}
