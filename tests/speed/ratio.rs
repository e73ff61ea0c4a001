//! How long a call takes, beside a yardstick measured in the same run.
//!
//! The yardstick is a hundred powers: machines differ, the ratio stays. Each round measures the yardstick
//! and then the call, in the time of the thread and not of the clock, so that a busy machine distorts
//! neither; the median of the rounds' ratios is told.

use std::hint::black_box;
use std::time::Duration;

use cpu_time::ThreadTime;

const ROUNDS: usize = 101;

/// The time of a call.
#[derive(Clone, Copy, Default)]
pub struct Ratio {
    /// How many times the yardstick.
    pub times: f64,
    /// Microseconds.
    pub micros: f64,
}

/// The median of many rounds, of so many calls each.
pub fn ratio(calls: u32, call: impl Fn()) -> Ratio {
    let mut rounds: Vec<Ratio> = (0..ROUNDS)
        .map(|_| {
            let (beside, time) = (time(calls, yardstick), time(calls, &call));
            Ratio { times: time.as_secs_f64() / beside.as_secs_f64(), micros: time.as_secs_f64() * 1e6 }
        })
        .collect();
    rounds.sort_by(|one, other| one.times.total_cmp(&other.times));
    rounds.get(ROUNDS / 2).copied().unwrap_or_default()
}

/// A hundred powers.
fn yardstick() {
    let mut sum = 0.0_f64;
    for at in 1..=100_u32 {
        sum += black_box(f64::from(at)).powf(0.813);
    }
    black_box(sum);
}

/// The time of one call.
fn time(calls: u32, call: impl Fn()) -> Duration {
    let start = ThreadTime::now();
    (0..calls).for_each(|_| call());
    start.elapsed() / calls
}
