//! ASME B18.3: set screws read; flat and button heads read, the height of button heads from memory; cap screws from memory.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::asme_b18_3;

use crate::columns;
use kettle_barrel::source::document;

const SETS_POINT_MAX: &[(f64, f64)] = &[
    (0.112, 0.061),
    (0.125, 0.067),
    (0.138, 0.074),
    (0.164, 0.087),
    (0.19, 0.102),
    (0.25, 0.132),
    (0.3125, 0.172),
    (0.375, 0.212),
    (0.4375, 0.252),
    (0.5, 0.291),
    (0.625, 0.371),
    (0.75, 0.45),
    (0.875, 0.53),
    (1.0, 0.609),
];
const SETS_POINT_MIN: &[(f64, f64)] = &[
    (0.112, 0.051),
    (0.125, 0.057),
    (0.138, 0.064),
    (0.164, 0.076),
    (0.19, 0.088),
    (0.25, 0.118),
    (0.3125, 0.156),
    (0.375, 0.194),
    (0.4375, 0.232),
    (0.5, 0.27),
    (0.625, 0.347),
    (0.75, 0.425),
    (0.875, 0.502),
    (1.0, 0.579),
];
const SETS_SOCKET: &[(f64, f64)] = &[
    (0.112, 0.05),
    (0.125, 0.0625),
    (0.138, 0.0625),
    (0.164, 0.078125),
    (0.19, 0.09375),
    (0.25, 0.125),
    (0.3125, 0.15625),
    (0.375, 0.1875),
    (0.4375, 0.21875),
    (0.5, 0.25),
    (0.625, 0.3125),
    (0.75, 0.375),
    (0.875, 0.5),
    (1.0, 0.5625),
];
const SETS_DEPTH: &[(f64, f64)] = &[
    (0.112, 0.07),
    (0.125, 0.08),
    (0.138, 0.08),
    (0.164, 0.09),
    (0.19, 0.1),
    (0.25, 0.125),
    (0.3125, 0.156),
    (0.375, 0.188),
    (0.4375, 0.219),
    (0.5, 0.25),
    (0.625, 0.312),
    (0.75, 0.375),
    (0.875, 0.5),
    (1.0, 0.562),
];
const FLATS_A: &[(f64, f64)] = &[
    (0.112, 0.2365),
    (0.125, 0.2605),
    (0.138, 0.285),
    (0.164, 0.335),
    (0.19, 0.385),
    (0.25, 0.5055),
    (0.3125, 0.628),
    (0.375, 0.7505),
    (0.4375, 0.8125),
    (0.5, 0.905),
    (0.625, 1.15),
    (0.75, 1.3965),
    (0.875, 1.646),
    (1.0, 1.8895),
    (1.125, 2.1335),
    (1.25, 2.377),
    (1.375, 2.6205),
    (1.5, 2.8645),
];
const FLATS_H: &[(f64, f64)] = &[
    (0.112, 0.083),
    (0.125, 0.09),
    (0.138, 0.097),
    (0.164, 0.112),
    (0.19, 0.127),
    (0.25, 0.161),
    (0.3125, 0.198),
    (0.375, 0.234),
    (0.4375, 0.234),
    (0.5, 0.251),
    (0.625, 0.324),
    (0.75, 0.396),
    (0.875, 0.468),
    (1.0, 0.54),
    (1.125, 0.611),
    (1.25, 0.683),
    (1.375, 0.755),
    (1.5, 0.827),
];
const FLATS_SOCKET: &[(f64, f64)] = &[
    (0.112, 0.062),
    (0.125, 0.078),
    (0.138, 0.078),
    (0.164, 0.094),
    (0.19, 0.125),
    (0.25, 0.156),
    (0.3125, 0.188),
    (0.375, 0.219),
    (0.4375, 0.25),
    (0.5, 0.312),
    (0.625, 0.375),
    (0.75, 0.5),
    (0.875, 0.562),
    (1.0, 0.625),
    (1.125, 0.75),
    (1.25, 0.875),
    (1.375, 0.875),
    (1.5, 1.0),
];
const FLATS_DEPTH: &[(f64, f64)] = &[
    (0.112, 0.055),
    (0.125, 0.061),
    (0.138, 0.066),
    (0.164, 0.076),
    (0.19, 0.087),
    (0.25, 0.111),
    (0.3125, 0.135),
    (0.375, 0.159),
    (0.4375, 0.159),
    (0.5, 0.172),
    (0.625, 0.22),
    (0.75, 0.22),
    (0.875, 0.248),
    (1.0, 0.297),
    (1.125, 0.325),
    (1.25, 0.358),
    (1.375, 0.402),
    (1.5, 0.435),
];
const BUTTONS_A: &[(f64, f64)] = &[
    (0.112, 0.213),
    (0.125, 0.238),
    (0.138, 0.262),
    (0.164, 0.312),
    (0.19, 0.361),
    (0.25, 0.437),
    (0.3125, 0.547),
    (0.375, 0.656),
    (0.5, 0.875),
    (0.625, 1.0),
];
const BUTTONS_H_MAX: &[(f64, f64)] = &[
    (0.112, 0.059),
    (0.125, 0.066),
    (0.138, 0.073),
    (0.164, 0.087),
    (0.19, 0.101),
    (0.25, 0.132),
    (0.3125, 0.166),
    (0.375, 0.199),
    (0.5, 0.265),
    (0.625, 0.331),
];
const BUTTONS_H_MIN: &[(f64, f64)] = &[
    (0.112, 0.051),
    (0.125, 0.058),
    (0.138, 0.063),
    (0.164, 0.077),
    (0.19, 0.091),
    (0.25, 0.122),
    (0.3125, 0.152),
    (0.375, 0.185),
    (0.5, 0.245),
    (0.625, 0.311),
];
const BUTTONS_SOCKET: &[(f64, f64)] = &[
    (0.112, 0.0625),
    (0.125, 0.0781),
    (0.138, 0.0781),
    (0.164, 0.0938),
    (0.19, 0.125),
    (0.25, 0.1562),
    (0.3125, 0.1875),
    (0.375, 0.2188),
    (0.5, 0.3125),
    (0.625, 0.375),
];
const CAPS_HEAD: &[(f64, f64)] =
    &[(0.25, 0.375), (0.3125, 0.469), (0.375, 0.562), (0.5, 0.75), (0.625, 0.938), (0.75, 1.125), (1.0, 1.5)];
const CAPS_KEY: &[(f64, f64)] = &[
    (0.25, 0.1875),
    (0.3125, 0.25),
    (0.375, 0.3125),
    (0.5, 0.375),
    (0.625, 0.5),
    (0.75, 0.625),
    (1.0, 0.75),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(
        &document::ASME_B18_3,
        "point_max",
        asme_b18_3::SETS,
        |row| row.d,
        |row| row.point_max,
        SETS_POINT_MAX,
    );
    compared += columns::compare(
        &document::ASME_B18_3,
        "point_min",
        asme_b18_3::SETS,
        |row| row.d,
        |row| row.point_min,
        SETS_POINT_MIN,
    );
    compared += columns::compare(
        &document::ASME_B18_3,
        "socket",
        asme_b18_3::SETS,
        |row| row.d,
        |row| row.socket,
        SETS_SOCKET,
    );
    compared += columns::compare(
        &document::ASME_B18_3,
        "depth",
        asme_b18_3::SETS,
        |row| row.d,
        |row| row.depth,
        SETS_DEPTH,
    );
    compared +=
        columns::compare(&document::ASME_B18_3, "a", asme_b18_3::FLATS, |row| row.d, |row| row.a, FLATS_A);
    compared +=
        columns::compare(&document::ASME_B18_3, "h", asme_b18_3::FLATS, |row| row.d, |row| row.h, FLATS_H);
    compared += columns::compare(
        &document::ASME_B18_3,
        "socket",
        asme_b18_3::FLATS,
        |row| row.d,
        |row| row.socket,
        FLATS_SOCKET,
    );
    compared += columns::compare(
        &document::ASME_B18_3,
        "depth",
        asme_b18_3::FLATS,
        |row| row.d,
        |row| row.depth,
        FLATS_DEPTH,
    );
    compared += columns::compare(
        &document::ASME_B18_3,
        "a",
        asme_b18_3::BUTTONS,
        |row| row.d,
        |row| row.a,
        BUTTONS_A,
    );
    compared += columns::compare(
        &document::ASME_B18_3,
        "h_max",
        asme_b18_3::BUTTONS,
        |row| row.d,
        |row| row.h_max,
        BUTTONS_H_MAX,
    );
    compared += columns::compare(
        &document::ASME_B18_3,
        "h_min",
        asme_b18_3::BUTTONS,
        |row| row.d,
        |row| row.h_min,
        BUTTONS_H_MIN,
    );
    compared += columns::compare(
        &document::ASME_B18_3,
        "socket",
        asme_b18_3::BUTTONS,
        |row| row.d,
        |row| row.socket,
        BUTTONS_SOCKET,
    );
    compared += columns::compare(
        &document::ASME_B18_3,
        "head",
        asme_b18_3::CAPS,
        |row| row.d,
        |row| row.a,
        CAPS_HEAD,
    );
    compared += columns::compare(
        &document::ASME_B18_3,
        "key",
        asme_b18_3::CAPS,
        |row| row.d,
        |row| row.socket,
        CAPS_KEY,
    );
    assert_eq!(compared, 182);
}
