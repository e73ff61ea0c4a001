//! Machinery's Handbook, 27th ed., p. 1793 (after ASME B1.13M and B1.1): a coat on a thread, read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::quantity::Length;
use kettle_barrel::thread::fit::{Coat, coated};
use kettle_barrel::thread::gauge::{THICKER, basic, before_coat};
use kettle_barrel::thread::limits;

use crate::limit::{class, same_digits, thread};
use kettle_barrel::source::document;

/// A coat t on the flanks changes the pitch diameter by 4 t, the major diameter by 2 t.
#[test]
fn a_coat_changes_the_pitch_diameter_by_four_and_the_major_diameter_by_two() {
    let bare = limits::bolt(thread("M16"), class("6g")).unwrap();
    let t = Length::from_um(10.0);
    let with = coated(bare, Coat::even(t, t));
    same_digits(&document::MACHINERYS_HANDBOOK, with.pitch.max.um() - bare.pitch.max.um(), "40.0", "d2");
    same_digits(&document::MACHINERYS_HANDBOOK, with.major.max.um() - bare.major.max.um(), "20.0", "d");
    same_digits(&document::MACHINERYS_HANDBOOK, with.minor_max.um() - bare.minor_max.um(), "20.0", "d1");
}

/// Limits before the coat: greatest d2 less 4 t of the greatest coat, least d2 less 4 t of the least;
/// d likewise with 2 t. Where only a nominal or least thickness is known, half as much again.
#[test]
fn limits_before_the_coat_take_off_the_greatest_and_the_least() {
    let after = basic(thread("M16")).unwrap();
    let min = Length::from_um(8.0);
    let coat = Coat::even(min, Length::from_um(8.0 * (1.0 + THICKER)));
    let before = before_coat(&after, &after, coat).unwrap();
    same_digits(
        &document::MACHINERYS_HANDBOOK,
        before.pitch.max.mm(),
        "14.653",
        "d2 max, 14.701 − 4 · 0.012",
    );
    same_digits(
        &document::MACHINERYS_HANDBOOK,
        before.pitch.min.mm(),
        "14.509",
        "d2 min, 14.541 − 4 · 0.008",
    );
    same_digits(&document::MACHINERYS_HANDBOOK, before.major.max.mm(), "15.976", "d max, 16 − 2 · 0.012");
    same_digits(&document::MACHINERYS_HANDBOOK, before.major.min.mm(), "15.704", "d min, 15.720 − 2 · 0.008");
}
