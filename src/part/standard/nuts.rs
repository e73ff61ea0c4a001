//! Nuts.

use super::{Found, find, inch, middle, mm};
use crate::part::{Kind, Listed, Nut, NutBody, Profile, Shape, Size, Solid, hexagon};
use crate::quantity::{Length, Mass};
use crate::source::Source;
use crate::table::{asme_b18_2_2, asme_b18_2_4_6m, din_557, iso_4032, iso_4161, iso_7040};

pub(super) fn found(kind: Kind, metric: bool) -> Option<Found> {
    Some(match (kind, metric) {
        (Kind::HexNut, true) => Found {
            diameters: || iso_4032::ROWS.iter().map(|row| row.d).collect(),
            source: iso_4032::SOURCE,
            build: hex_nut,
        },
        (Kind::HexNut, false) => Found {
            diameters: || asme_b18_2_2::HEX.iter().map(|row| row.d).collect(),
            source: asme_b18_2_2::HEX_SOURCE,
            build: |profile, _| inch_nut(profile, asme_b18_2_2::HEX, asme_b18_2_2::HEX_SOURCE),
        },
        (Kind::HeavyHexNut, true) => Found {
            diameters: || asme_b18_2_4_6m::ROWS.iter().map(|row| row.d).collect(),
            source: asme_b18_2_4_6m::SOURCE,
            build: heavy_hex_nut,
        },
        (Kind::HeavyHexNut, false) => Found {
            diameters: || asme_b18_2_2::HEAVY.iter().map(|row| row.d).collect(),
            source: asme_b18_2_2::HEAVY_SOURCE,
            build: |profile, _| inch_nut(profile, asme_b18_2_2::HEAVY, asme_b18_2_2::HEAVY_SOURCE),
        },
        (Kind::FlangeNut, true) => Found {
            diameters: || iso_4161::ROWS.iter().map(|row| row.d).collect(),
            source: iso_4161::SOURCE,
            build: flange_nut,
        },
        (Kind::FlangeNut, false) => Found {
            diameters: || asme_b18_2_2::FLANGES.iter().map(|row| row.d).collect(),
            source: asme_b18_2_2::FLANGE_SOURCE,
            build: inch_flange_nut,
        },
        (Kind::SquareNut, true) => Found {
            diameters: || din_557::ROWS.iter().map(|row| row.d).collect(),
            source: din_557::SOURCE,
            build: square_nut,
        },
        (Kind::SquareNut, false) => Found {
            diameters: || asme_b18_2_2::SQUARES.iter().map(|row| row.d).collect(),
            source: asme_b18_2_2::SQUARE_SOURCE,
            build: inch_square_nut,
        },
        (Kind::LockNut, true) => Found {
            diameters: || iso_7040::ROWS.iter().map(|row| row.d).collect(),
            source: iso_7040::SOURCE,
            build: lock_nut,
        },
        _ => return None,
    })
}

/// The countersinks of metric and inch nuts: the middle of what the standards allow.
fn nut(profile: Profile, body: NutBody, flats: Size, height: Size) -> Nut {
    let ((min, max), source) = if profile.is_metric {
        (iso_4032::COUNTERSINK, iso_4032::COUNTERSINK_SOURCE)
    } else {
        (asme_b18_2_2::COUNTERSINK, asme_b18_2_2::COUNTERSINK_SOURCE)
    };
    let countersink = mm(profile.diameter.mm() * (min + max) / 2.0, source);
    Nut { profile, body, flats, height, countersink, tapped: true }
}

fn hexagon_nut(profile: Profile, flats: Size, height: Size) -> Shape {
    Solid::Nut(nut(profile, NutBody::Hexagon, flats, height)).into()
}

fn hex_nut(profile: Profile, _: Length) -> Option<Shape> {
    let row = find(iso_4032::ROWS, profile.diameter.mm(), |row| row.d)?;
    Some(hexagon_nut(profile, mm(row.s, iso_4032::SOURCE), mm(row.m, iso_4032::SOURCE)))
}

fn heavy_hex_nut(profile: Profile, _: Length) -> Option<Shape> {
    let row = find(asme_b18_2_4_6m::ROWS, profile.diameter.mm(), |row| row.d)?;
    let size = |number| mm(number, asme_b18_2_4_6m::SOURCE);
    Some(hexagon_nut(profile, size(row.s), size(row.m)))
}

fn inch_nut(profile: Profile, rows: &[asme_b18_2_2::Row], source: Source) -> Option<Shape> {
    let row = find(rows, profile.diameter.inch(), |row| row.d)?;
    Some(hexagon_nut(profile, inch(row.f, source), inch(row.h, source)))
}

fn flange_nut(profile: Profile, _: Length) -> Option<Shape> {
    let row = find(iso_4161::ROWS, profile.diameter.mm(), |row| row.d)?;
    let size = |number| mm(number, iso_4161::SOURCE);
    let body = NutBody::Flange { flange: size(row.dc), rim: size(row.c) };
    let flats = size(middle((row.s_max, row.s_min)));
    let nut = nut(profile, body, flats, size(middle((row.m_max, row.m_min))));
    let listed = row.mass.map(|g| Listed { mass: Mass::from_g(g), source: iso_4161::MASS });
    // The list is of coarse threads.
    let listed = listed.filter(|_| profile.pitch == coarse(row.d));
    Some(Shape { solid: Solid::Nut(nut), listed })
}

fn coarse(d: f64) -> Length {
    let size = crate::table::iso_261::SIZES.iter().find(|size| f64::from(size.diameter_mm) == d);
    Length::from_um(size.and_then(|size| size.pitches_um.first()).map_or(f64::NAN, |um| f64::from(*um)))
}

fn inch_flange_nut(profile: Profile, _: Length) -> Option<Shape> {
    let row = find(asme_b18_2_2::FLANGES, profile.diameter.inch(), |row| row.d)?;
    let size = |number| inch(number, asme_b18_2_2::FLANGE_SOURCE);
    let body = NutBody::Flange { flange: size(row.b), rim: size(row.rim) };
    Some(Solid::Nut(nut(profile, body, size(row.f), size(row.h))).into())
}

fn square_nut(profile: Profile, _: Length) -> Option<Shape> {
    let row = find(din_557::ROWS, profile.diameter.mm(), |row| row.d)?;
    let size = |number| mm(number, din_557::SOURCE);
    let body = NutBody::Square { circle: size(row.dw) };
    Some(Solid::Nut(nut(profile, body, size(row.s), size(row.m))).into())
}

fn inch_square_nut(profile: Profile, _: Length) -> Option<Shape> {
    let row = find(asme_b18_2_2::SQUARES, profile.diameter.inch(), |row| row.d)?;
    let size = |number| inch(number, asme_b18_2_2::SQUARE_SOURCE);
    let body = NutBody::Square { circle: inch(hexagon::CHAMFER_CIRCLE * row.f, hexagon::CHAMFER_SOURCE) };
    Some(Solid::Nut(nut(profile, body, size(row.f), size(row.h))).into())
}

fn lock_nut(profile: Profile, _: Length) -> Option<Shape> {
    let row = find(iso_7040::ROWS, profile.diameter.mm(), |row| row.d)?;
    let size = |number| mm(number, iso_7040::SOURCE);
    let body = NutBody::Collar { overall: size(row.h) };
    Some(Solid::Nut(nut(profile, body, size(row.s), size(row.m))).into())
}
