//! How far a number may be off.

use crate::quantity::Shown;

/// Whether a number is the right one to one in the last place asked: of the number as it is shown, or as it is.
pub fn agrees(right: Shown, number: f64) -> bool {
    off(right, number) <= last_place(right) * (1.0 + 1e-9)
}

/// How far a number is off, on either side of the right one alike.
fn off(right: Shown, number: f64) -> f64 {
    (number - right.number).abs().min((number - right.rounded()).abs())
}

/// Whether a number is so near to the right one that it may have been badly rounded.
pub fn near(right: Shown, number: f64) -> bool {
    off(right, number) <= (2.0 * last_place(right) * (1.0 + 1e-9)).max(0.01 * right.number.abs())
}

/// As precisely as a number in another unit can be written.
pub fn agrees_well(right: Shown, number: f64) -> bool {
    agrees(right, number) || (number - right.number).abs() <= 1e-3 * right.number.abs()
}

fn last_place(shown: Shown) -> f64 {
    10f64.powi(-i32::from(shown.decimals))
}
