//! Taps and the holes before them: ISO 2857 (a catalogue of 6H taps, read), ASME B94.9, tap drills.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::quantity::Length;
use kettle_barrel::thread::overtap::{self, Allowance};
use kettle_barrel::thread::tap::{CUTS_LARGER, Making, Name, Tap, h_limits, hole, tap};
use kettle_barrel::thread::{Thread, gauge};

use crate::limit::{same_digits, thread};
use crate::seen::{agree, near};
use kettle_barrel::source::document;

fn of(thread: Thread, allowance: Allowance) -> Tap {
    let nut = overtap::nut(thread, allowance).unwrap();
    tap(thread, &nut.limits, nut.allowance.value, Making::Cut).unwrap_or_else(|refusal| panic!("{refusal}"))
}

/// Half a micrometre is lost where the catalogue rounds to whole ones.
#[test]
fn taps_of_6h_are_those_of_the_catalogue() {
    for &(designation, min, max) in CLASS_2 {
        let found = of(thread(designation), Allowance::Standard);
        assert_eq!(found.name, Name::Iso(2, Length::ZERO), "{designation}");
        for (ours, printed) in [(found.pitch.min, min), (found.pitch.max, max)] {
            near!(ISO_2857, ours.mm(), printed.parse().unwrap(), 0.000_61, "{designation} {printed}");
        }
    }
}

#[test]
fn taps_of_oversize_nuts_lie_at_the_same_place() {
    for &(designation, allowance, min, max) in OVERSIZE {
        let found = of(thread(designation), allowance);
        same_digits(&document::TAP_MAKERS_TEXT, found.pitch.min.mm(), min, designation);
        same_digits(&document::TAP_MAKERS_TEXT, found.pitch.max.mm(), max, designation);
    }
}

#[test]
fn h_numbers_of_oversize_nuts() {
    for &(size, number, max) in A563 {
        let found = of(thread(&format!("{size} UNC")), Allowance::A563);
        assert_eq!(found.name.words(|_| unreachable!()), number, "{size}");
        near!(ASME_B94_9, found.pitch.max.inch(), max, 1e-9, "{size}: {}", found.pitch.max.inch());
    }
}

/// A tool maker's recommendations for 2B, read: small threads go by their number.
#[test]
fn h_numbers_of_small_threads() {
    let mut seen = 0;
    for small in Thread::all().filter(|small| small.number().is_some()) {
        let size = small.to_string();
        let Some(&(_, number)) = SMALL.iter().find(|(name, _)| size.starts_with(&format!("#{name} "))) else {
            continue;
        };
        let found = of(small, Allowance::Standard);
        assert_eq!(found.name, Name::Number(Making::Cut, number), "{size}");
        assert_eq!(found.source.basis, kettle_barrel::source::Basis::Read, "{size}");
        seen += 1;
    }
    assert!(seen > 8, "{seen}");
}

#[test]
fn h_limits_are_the_published_ones() {
    for &(size, number, min, max) in H_LIMITS {
        let found = h_limits(thread(size).pitch_diameter(), number);
        near!(ASME_B94_9, found.min.inch(), min, 1e-9, "{size} H{number}");
        near!(ASME_B94_9, found.max.inch(), max, 1e-9, "{size} H{number}");
    }
}

/// A tap cuts large: what is advised has room for that inside the limits, at every thread and allowance.
#[test]
fn every_tap_advised_leaves_a_margin() {
    for thread in Thread::all() {
        for allowance in [
            Allowance::Standard,
            Allowance::Az,
            Allowance::Ax,
            Allowance::A563,
            Allowance::A563M,
            Allowance::Own(Length::from_um(123.0)),
        ] {
            let Ok(nut) = overtap::nut(thread, allowance) else { continue };
            let Ok(found) = tap(thread, &nut.limits, nut.allowance.value, Making::Cut) else {
                panic!("{thread} {allowance}");
            };
            assert!(found.pitch.min >= nut.limits.pitch.min, "{thread} {allowance}");
            assert!(found.pitch.max + CUTS_LARGER.value < nut.limits.pitch.max, "{thread} {allowance}");
        }
    }
}

#[test]
fn an_oversize_between_the_steps_is_named_by_its_amount() {
    let found = of(thread("7/16-14 UNC"), Allowance::Own(Length::from_inch(0.0017)));
    assert!(matches!(found.name, Name::Plus(Making::Cut, 5, _)), "{found:?}");
}

/// Drills as listed; the hole of a nut tapped over is larger by its allowance and stays in its limits.
#[test]
fn holes_lie_in_the_limits_of_the_minor_diameter() {
    let drill = |text: &str| hole(thread(text), Length::ZERO, Making::Cut);
    same_digits(&document::TAP_MAKERS_TEXT, drill("M16").diameter.mm(), "14.00", "M16");
    same_digits(&document::TAP_MAKERS_TEXT, drill("M8").diameter.mm(), "6.7", "M8");
    assert_eq!(drill("1/2-13 UNC").name, Some("27/64"));
    same_digits(&document::TAP_MAKERS_TEXT, drill("1/2-13 UNC").diameter.inch(), "0.4219", "1/2-13");
    for text in ["M12", "M16", "M24", "M36", "1/2-13 UNC", "3/4-10 UNC", "1-8 UNC"] {
        let allowance = if text.starts_with('M') { Allowance::Az } else { Allowance::A563 };
        let nut = overtap::nut(thread(text), allowance).unwrap();
        let found = hole(thread(text), nut.allowance.value, Making::Cut).diameter;
        assert!(found >= nut.limits.minor.min && found <= nut.limits.minor.max, "{text}: {found:?}");
    }
}

#[test]
fn holes_before_forming_taps() {
    for &(designation, printed) in FORMING {
        let found = hole(thread(designation), Length::ZERO, Making::Formed).diameter;
        same_digits(&document::TAP_MAKERS_TEXT, found.mm(), printed, designation);
    }
    let nut = overtap::nut(thread("M10"), Allowance::Standard).unwrap();
    assert!(tap(thread("M10"), &nut.limits, Length::ZERO, Making::Formed).is_err());
}

/// A tap maker's catalogue, read: G number and hole in mm; Gn ends n steps of 12.7 µm above the basic size, and
/// lies in 2B.
#[test]
fn forming_taps_in_inches() {
    for &(designation, number, drill) in FORMING_INCH {
        let thread = thread(designation);
        let nut = overtap::nut(thread, Allowance::Standard).unwrap();
        let found = tap(thread, &nut.limits, Length::ZERO, Making::Formed).unwrap();
        assert_eq!(found.name.words(|_| unreachable!()), number, "{designation}");
        let found_hole = hole(thread, Length::ZERO, Making::Formed).diameter;
        same_digits(&document::TAP_MAKERS_TEXT, found_hole.mm(), drill, designation);
        let end = (found.pitch.max - thread.pitch_diameter()).um();
        let steps: f64 = number[1..].parse().unwrap();
        assert!((end - steps * 12.7).abs() < 1e-6, "{designation}: {end}");
        // Tapped over for zinc it moves with the nut, as a cutting tap does.
        let nut = overtap::nut(thread, Allowance::A563);
        if let Ok(nut) = nut {
            let over = tap(thread, &nut.limits, nut.allowance.value, Making::Formed).unwrap();
            assert!(
                (over.pitch.max - found.pitch.max - nut.allowance.value).um().abs() < 1e-6,
                "{designation}"
            );
        }
    }
    // G6 of the catalogue: 64 to 76 µm; G7: 76 to 89 µm.
    for (number, from, to) in [(6, 64.0, 76.0), (7, 76.0, 89.0)] {
        let limits = h_limits(Length::ZERO, number);
        assert_eq!((limits.min.um().round(), limits.max.um().round()), (from, to));
    }
}

/// A tap maker's example, read: M6 coated 8 to 16 µm inside, GO plug up by 64 µm, NOT-GO by 32 µm.
#[test]
fn a_nut_is_tapped_larger_for_a_coat_of_its_own() {
    use kettle_barrel::thread::fit::Coat;
    let nut = overtap::nut(thread("M6"), Allowance::Standard).unwrap().limits;
    let before = gauge::nut_before_coat(&nut, Coat::even(Length::from_um(8.0), Length::from_um(16.0)));
    let up = |after: Length, before: Length| (before - after).um().round();
    agree!(GAUGE_MAKERS_TEXT, up(nut.pitch.min, before.pitch.min), 64.0);
    agree!(GAUGE_MAKERS_TEXT, up(nut.pitch.max, before.pitch.max), 32.0);
}

/// Thread, least and greatest pitch diameter of the 6H tap in mm, read.
const CLASS_2: &[(&str, &str, &str)] = &[
    ("M5x0.8", "4.510", "4.530"),
    ("M6x1", "5.385", "5.409"),
    ("M7x1", "6.385", "6.409"),
    ("M8x1.25", "7.226", "7.251"),
    ("M10x1.5", "9.068", "9.096"),
    ("M12x1.75", "10.911", "10.943"),
    ("M14x2", "12.752", "12.786"),
    ("M16x2", "14.752", "14.786"),
    ("M18x2.5", "16.430", "16.466"),
];

/// Thread, nut, least and greatest pitch diameter of its tap in mm, computed from the shares.
#[rustfmt::skip]
const OVERSIZE: &[(&str, Allowance, &str, &str)] = &[
    ("M10x1.5", Allowance::Az, "9.3980", "9.4260"),
    ("M10x1.5", Allowance::Ax, "9.3780", "9.4060"),
    ("M12x1.75", Allowance::Az, "11.2460", "11.2780"),
    ("M12x1.75", Allowance::Ax, "11.2760", "11.3080"),
    ("M14x2", Allowance::Az, "13.0920", "13.1260"),
    ("M14x2", Allowance::Ax, "13.1720", "13.2060"),
    ("M16x2", Allowance::Az, "15.0920", "15.1260"),
    ("M16x2", Allowance::Ax, "15.1720", "15.2060"),
    ("M18x2.5", Allowance::Az, "16.7800", "16.8160"),
    ("M18x2.5", Allowance::Ax, "16.9600", "16.9960"),
    ("M20x2.5", Allowance::Az, "18.7800", "18.8160"),
    ("M20x2.5", Allowance::Ax, "18.9600", "18.9960"),
    ("M22x2.5", Allowance::Az, "20.7800", "20.8160"),
    ("M22x2.5", Allowance::Ax, "20.9600", "20.9960"),
    ("M24x3", Allowance::Az, "22.4746", "22.5170"),
    ("M24x3", Allowance::Ax, "22.7546", "22.7970"),
    ("M27x3", Allowance::Az, "25.4746", "25.5170"),
    ("M27x3", Allowance::Ax, "25.7546", "25.7970"),
    ("M30x3.5", Allowance::Az, "28.1642", "28.2090"),
    ("M30x3.5", Allowance::Ax, "28.5442", "28.5890"),
    ("M33x3.5", Allowance::Az, "31.1642", "31.2090"),
    ("M33x3.5", Allowance::Ax, "31.5442", "31.5890"),
    ("M36x4", Allowance::Az, "33.8528", "33.9000"),
    ("M36x4", Allowance::Ax, "34.3328", "34.3800"),
];

/// Thread, H number of the tap for its A563 nut, greatest pitch diameter of the tap in inches, computed.
const A563: &[(&str, &str, f64)] = &[
    ("1/4-20", "H37", 0.2360),
    ("5/16-18", "H39", 0.2959),
    ("3/8-16", "H39", 0.3539),
    ("7/16-14", "H41", 0.4116),
    ("1/2-13", "H41", 0.4705),
    ("9/16-12", "H45", 0.5309),
    ("5/8-11", "H45", 0.5885),
    ("3/4-10", "H45", 0.7075),
    ("7/8-9", "H50", 0.8278),
    ("1-8", "H54", 0.9458),
    ("1-1/8-7", "H56", 1.0602),
    ("1-1/4-7", "H56", 1.1852),
    ("1-3/8-6", "H62", 1.2977),
    ("1-1/2-6", "H62", 1.4227),
];

/// Thread, H number, least and greatest pitch diameter in inches, read.
const H_LIMITS: &[(&str, u32, f64, f64)] = &[
    ("7/8-14", 2, 0.8291, 0.8296),
    ("7/8-14", 4, 0.8301, 0.8306),
    ("1-8", 4, 0.9203, 0.9208),
    ("1-8", 6, 0.9213, 0.9218),
    ("1-12", 4, 0.9474, 0.9479),
    ("1-1/8-7", 4, 1.0337, 1.0342),
    ("1-1/8-12", 4, 1.0724, 1.0729),
    ("1-1/4-7", 4, 1.1587, 1.1592),
    ("1-1/4-12", 4, 1.1974, 1.1979),
    ("1-3/8-6", 4, 1.2682, 1.2687),
    ("1-3/8-12", 4, 1.3224, 1.3229),
    ("1-1/2-6", 4, 1.3932, 1.3937),
    ("1-1/2-12", 4, 1.4474, 1.4479),
    ("1-3/4-5", 4, 1.6216, 1.6221),
    ("2-4.5", 4, 1.8572, 1.8577),
];

/// Thread, hole before a forming tap in mm, computed.
const FORMING: &[(&str, &str)] = &[
    ("M6x1", "5.56"),
    ("M8x1.25", "7.45"),
    ("M10x1.5", "9.34"),
    ("M12x1.75", "11.23"),
    ("M14x2", "13.12"),
    ("M16x2", "15.12"),
    ("M18x2.5", "16.90"),
    ("M20x2.5", "18.90"),
];

/// Thread, G number, hole in mm, read.
const FORMING_INCH: &[(&str, &str, &str)] = &[
    ("1/4-20 UNC", "G7", "5.82"),
    ("1/4-28 UNF", "G7", "5.97"),
    ("5/16-18 UNC", "G7", "7.33"),
    ("3/8-24 UNF", "G7", "9.07"),
    ("7/16-14 UNC", "G8", "10.32"),
    ("7/16-20 UNF", "G8", "10.57"),
    ("1/2-13 UNC", "G8", "11.84"),
    ("1/2-20 UNF", "G8", "12.15"),
];

/// Size and H number for 2B, read.
#[rustfmt::skip]
const SMALL: &[(&str, u32)] = &[
    ("0-80", 2),
    ("1-64", 2),
    ("1-72", 2),
    ("2-56", 2),
    ("2-64", 2),
    ("3-48", 3),
    ("3-56", 2),
    ("4-40", 3),
    ("4-48", 3),
    ("5-40", 3),
    ("5-44", 3),
    ("6-32", 3),
    ("6-40", 3),
    ("8-32", 3),
    ("8-36", 3),
    ("10-24", 3),
    ("10-32", 3),
    ("12-24", 3),
    ("12-28", 3),
];
