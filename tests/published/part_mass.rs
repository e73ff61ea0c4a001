//! Masses of our parts against published mass tables: an independent check of sizes and volumes.
//!
//! The tables are approximate by their own word, and rounded; socket screws are listed with heads
//! knurled or plain and with a length of thread of their maker's choice.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use crate::seen::seen;
use kettle_barrel::part::{Kind, Profile, standard};
use kettle_barrel::quantity::Length;
use kettle_barrel::source::Basis;
use kettle_barrel::source::document;

fn mass_g(kind: Kind, profile: Profile, length: Option<f64>) -> f64 {
    standard(kind, profile, length.map(Length::from_mm)).unwrap().mass().g()
}

fn metric(d: f64, p: f64) -> Profile {
    Profile::metric(Length::from_mm(d), Length::from_mm(p))
}

/// Studs threaded over 100 mm, coarse pitch: diameter, pitch, kg per 1000. A public listing of the
/// masses of DIN 976; that its columns are the coarse pitches is an inference.
const STUDS: (&[(f64, f64, f64)], Basis) = (
    &[
        (10.0, 1.5, 50.2),
        (12.0, 1.75, 72.8),
        (14.0, 2.0, 99.5),
        (16.0, 2.0, 133.0),
        (18.0, 2.5, 165.0),
        (20.0, 2.5, 208.0),
        (22.0, 2.5, 256.0),
        (24.0, 3.0, 300.0),
        (27.0, 3.0, 387.0),
        (30.0, 3.5, 474.0),
        (33.0, 3.5, 582.0),
        (36.0, 4.0, 688.0),
    ],
    Basis::Read,
);

/// Socket head cap screws: diameter, pitch, length, kg per 1000. A public listing of the masses of
/// DIN 912, which ISO 4762 replaced. Above M10 the listing is not used: its M20 leaves 66 g for the
/// head, where the standard's own 30 mm by 20 mm less the socket weighs 91 g.
const SOCKET_SCREWS: (&[(f64, f64, f64, f64)], Basis) = (
    &[
        (6.0, 1.0, 30.0, 8.3),
        (6.0, 1.0, 40.0, 11.0),
        (8.0, 1.25, 30.0, 16.9),
        (8.0, 1.25, 50.0, 24.9),
        (10.0, 1.5, 40.0, 32.9),
        (10.0, 1.5, 60.0, 45.7),
    ],
    Basis::Read,
);

/// Hex bolts: diameter, pitch, length, kg per 1000. A public listing; its M10 to M14, with the wider
/// heads of an earlier standard, are not used.
const HEX_BOLTS: (&[(f64, f64, f64, f64)], Basis) = (
    &[
        (16.0, 2.0, 60.0, 122.0),
        (16.0, 2.0, 80.0, 154.0),
        (16.0, 2.0, 100.0, 185.0),
        (20.0, 2.5, 90.0, 279.0),
        (20.0, 2.5, 120.0, 354.0),
        (24.0, 3.0, 100.0, 459.0),
        (24.0, 3.0, 150.0, 637.0),
        (30.0, 3.5, 120.0, 875.0),
        (36.0, 4.0, 150.0, 1566.0),
    ],
    Basis::Read,
);

/// Heavy hex nuts: diameter in inches, threads per inch, pounds each to two decimals. A public
/// listing under ASME B18.2.2.
const HEAVY_NUTS: (&[(f64, f64, f64)], Basis) = (
    &[
        (0.5, 13.0, 0.07),
        (0.625, 11.0, 0.12),
        (0.75, 10.0, 0.20),
        (0.875, 9.0, 0.30),
        (1.0, 8.0, 0.43),
        (1.125, 7.0, 0.59),
        (1.25, 7.0, 0.79),
        (1.375, 6.0, 1.02),
        (1.5, 6.0, 1.31),
    ],
    Basis::Read,
);

#[test]
fn studs_weigh_what_the_listing_says() {
    for &(d, p, kg) in STUDS.0 {
        near(&format!("M{d}"), mass_g(Kind::Rod, metric(d, p), Some(100.0)), kg, 0.015);
    }
}

#[test]
fn socket_screws_weigh_what_the_listing_says() {
    for &(d, p, length, kg) in SOCKET_SCREWS.0 {
        near(&format!("M{d}x{length}"), mass_g(Kind::SocketScrew, metric(d, p), Some(length)), kg, 0.04);
    }
}

#[test]
fn hex_bolts_weigh_what_the_listing_says() {
    for &(d, p, length, kg) in HEX_BOLTS.0 {
        near(&format!("M{d}x{length}"), mass_g(Kind::HexBolt, metric(d, p), Some(length)), kg, 0.03);
    }
}

#[test]
fn heavy_hex_nuts_weigh_what_the_listing_says() {
    for &(d, tpi, lb) in HEAVY_NUTS.0 {
        let ours = mass_g(Kind::HeavyHexNut, Profile::unified(Length::from_inch(d), tpi), None) / 453.592_37;
        // Basic sizes are the greatest; and half of the last printed digit.
        near(&format!("{d} in"), ours, lb, 0.05 + 0.005 / lb);
    }
}

fn near(what: &str, ours: f64, published: f64, share: f64) {
    assert!((ours / published - 1.0).abs() < share, "{what}: {ours}, published {published}");
    seen(&document::MASS_LIST, ours, published);
}
