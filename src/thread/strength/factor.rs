//! The three factors of ISO/TR 16224: widening of the nut, bending of both threads.

use crate::quantity::Shown;
use crate::source::{Source, document};
use crate::table::Refusal;

/// Where the factors are published.
pub const SOURCE: Source = document::ISO_16224.read("4.2.3.1");

/// C1: a nut widens under load, the more the thinner its wall; `ratio` is its width across flats
/// over the thread's diameter.
///
/// The polynomial reaches 1 at 1.8; a wall thicker than that is taken as rigid.
///
/// # Errors
/// Refuses a nut narrower than 1.4 diameters.
pub fn c1(ratio: f64) -> Result<f64, Refusal> {
    match ratio {
        ratio if ratio >= RIGID => Ok(1.0),
        ratio if ratio >= 1.4 => Ok(-ratio * ratio + 3.8 * ratio - 2.6),
        _ => Err(Refusal::outside(
            "width across flats over diameter",
            Shown::plain(ratio, 2),
            Shown::plain(1.4, 1),
            Shown::plain(RIGID, 1),
            SOURCE,
        )),
    }
}

/// From this ratio of width across flats to diameter a nut counts as rigid.
pub const RIGID: f64 = 1.8;
/// At this strength ratio and below, the bolt's threads bend as much as they ever do.
pub const EVEN: f64 = 1.0;
/// C2 and C3 where the threads of the other side are the weaker.
pub const BENT: f64 = 0.897;

/// C2: the bolt's threads bend in a nut that is weaker than they are.
///
/// # Errors
/// Refuses a strength ratio of 2.2 and more.
pub fn c2(ratio: f64) -> Result<f64, Refusal> {
    match ratio {
        ratio if ratio <= EVEN => Ok(BENT),
        r if r < 2.2 => Ok(5.594 - 13.682 * r + 14.107 * r.powi(2) - 6.057 * r.powi(3) + 0.9353 * r.powi(4)),
        _ => Err(outside(ratio)),
    }
}

/// C3: the nut's threads bend on a bolt that is weaker than they are.
///
/// # Errors
/// Refuses a strength ratio of 0.4 and less.
pub fn c3(ratio: f64) -> Result<f64, Refusal> {
    match ratio {
        ratio if ratio >= EVEN => Ok(BENT),
        r if r > 0.4 => Ok(0.728 + 1.769 * r - 2.896 * r.powi(2) + 1.296 * r.powi(3)),
        _ => Err(outside(ratio)),
    }
}

fn outside(ratio: f64) -> Refusal {
    Refusal::outside(
        "strength ratio of nut thread to bolt thread",
        Shown::plain(ratio, 2),
        Shown::plain(0.4, 1),
        Shown::plain(2.2, 1),
        SOURCE,
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_factors_join_where_their_ranges_meet() {
        assert!((c1(1.8 - 1e-9).unwrap() - c1(1.8).unwrap()).abs() < 1e-6);
        assert!((c2(1.0).unwrap() - c2(1.0 + 1e-9).unwrap()).abs() < 1e-3);
        assert!((c3(1.0).unwrap() - c3(1.0 - 1e-9).unwrap()).abs() < 1e-3);
    }

    #[test]
    fn outside_their_ranges_there_is_no_factor() {
        assert!(c1(1.39).is_err());
        assert!(c2(2.2).is_err());
        assert!(c3(0.4).is_err());
        assert!(c2(f64::NAN).is_err() && c3(f64::NAN).is_err() && c1(f64::NAN).is_err());
    }

    /// By hand: −1.5² + 3.8 · 1.5 − 2.6 = 0.85; from 1.8 on a nut is rigid.
    #[test]
    fn a_wide_nut_is_rigid() {
        for (ratio, factor) in [(1.4, 0.76), (1.5, 0.85), (1.8, 1.0), (1.9, 1.0), (2.5, 1.0)] {
            assert!((c1(ratio).unwrap() - factor).abs() < 1e-9, "{ratio}");
        }
        assert!(c1(1.39).is_err());
    }
}
