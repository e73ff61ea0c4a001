//! What growth costs: lines, texts in fields, readings and kept orders, each doubled and doubled again.
//!
//! Printed for each size: the time of the thread, the most memory beyond what stood before, and how the time
//! grew over the size before, beside n log n. Nothing here fails: `tests/property/linear.rs` holds the bounds.

use std::hint::black_box;

use cpu_time::ThreadTime;
use kettle_barrel::calculator::{Draft, REGISTER, evaluate};
use kettle_barrel::order::list::{Summary, row};
use kettle_barrel::order::saved::{Drawer, Entry, Opening, save};
use peak_alloc::PeakAlloc;

#[global_allocator]
static MEMORY: PeakAlloc = PeakAlloc;

const LINES: [&str; 4] = [
    "M16 x 60 hex bolt, 8.8, 400 pcs, C3, 15 years",
    "500 ea 3/4-10 x 4 HHCS gr 8 HDG, C3",
    "A325 7/8 x 3-1/2 w/ DH nut & F436, C4",
    "M10 x 40 socket screw, A574, C3, 10 years",
];

fn main() {
    grow("lines of a list", [1_000, 2_000, 4_000, 8_000], |size| {
        let mut summary = Summary::default();
        for (line, place) in LINES.iter().cycle().take(size).zip(1..) {
            summary.add(place, &row(line));
        }
        black_box(summary);
    });
    grow("letters in one field of each calculator", [1_000, 2_000, 4_000, 8_000], |size| {
        let text = "1 ".repeat(size / 2);
        for entry in REGISTER {
            for field in entry.about.fields {
                let draft: Draft = [(field.key, text.as_str())].into_iter().collect();
                black_box(entry.evaluate(&draft).is_ok());
            }
        }
    });
    grow("readings of a lot", [1_250, 2_500, 5_000, 10_000], |size| {
        let readings: Vec<String> = (0..size).map(|at| (45 + at % 23).to_string()).collect();
        let readings = readings.join("\n");
        let pairs = [("standard", "own"), ("quantity", "100000"), ("readings", readings.as_str())];
        black_box(evaluate("lot", pairs).is_ok());
    });
    grow("orders that are kept", [2_500, 5_000, 10_000, 20_000], |size| {
        let device = Drawer::default();
        for pieces in 1..=size {
            let address =
                format!("1/order?part=hex-bolt&thread=M16&length=60+mm&quantity={pieces}&steel=8.8");
            let _ = black_box(save(&device, &Entry::new(&address, "2026-11-25T20:08:53Z")));
        }
        if let Ok(mut opening) = Opening::begin(&device) {
            while opening.step(&device, 500) {}
            black_box(opening.finish());
        }
    });
}

fn grow(what: &str, sizes: [usize; 4], work: impl Fn(usize)) {
    println!("{what}");
    let mut before: Option<(f64, f64)> = None;
    for size in sizes {
        let stood = MEMORY.current_usage();
        MEMORY.reset_peak_usage();
        let start = ThreadTime::now();
        work(size);
        let time = start.elapsed().as_secs_f64();
        let most = MEMORY.peak_usage().saturating_sub(stood);
        let n = size as f64;
        let n_log_n = n * n.log2();
        let grown = before.map_or_else(String::new, |(earlier, earlier_n)| {
            format!("; {:.2} times the one before (n log n: {:.2})", time / earlier, n_log_n / earlier_n)
        });
        println!("  {size:>6}: {:>8.1} ms, {:>8.1} kB{grown}", time * 1e3, most as f64 / 1e3);
        before = Some((time, n_log_n));
    }
}
