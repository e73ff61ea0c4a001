//! Washers.

use super::{Found, find, inch, middle, mm};
use crate::part::{Kind, Profile, Shape, Size, Solid, SpringWasher, Washer};
use crate::quantity::Length;
use crate::source::Basis;
use crate::table::{asme_b18_2_6, asme_b18_21_1, asme_b18_22_1, din_127, din_6796, iso_7089, iso_7093_1};

pub(super) fn found(kind: Kind, metric: bool) -> Option<Found> {
    Some(match (kind, metric) {
        (Kind::Washer, true) => Found {
            diameters: || iso_7089::ROWS.iter().map(|row| row.d).collect(),
            source: iso_7089::source(Basis::Read),
            build: plain,
        },
        (Kind::Washer, false) => Found {
            diameters: || asme_b18_2_6::WASHERS.iter().map(|row| row.d).collect(),
            source: asme_b18_2_6::washer_source(Basis::Read),
            build: structural,
        },
        (Kind::WideWasher, true) => Found {
            diameters: || iso_7093_1::ROWS.iter().map(|row| row.d).collect(),
            source: iso_7093_1::SOURCE,
            build: large,
        },
        (Kind::WideWasher, false) => Found {
            diameters: || asme_b18_22_1::ROWS.iter().map(|row| row.d).collect(),
            source: asme_b18_22_1::SOURCE,
            build: wide,
        },
        (Kind::NarrowWasher, false) => Found {
            diameters: || asme_b18_21_1::NARROWS.iter().map(|row| row.d).collect(),
            source: asme_b18_21_1::NARROW,
            build: narrow,
        },
        (Kind::SpringWasher, true) => Found {
            diameters: || din_127::ROWS.iter().map(|row| row.d).collect(),
            source: din_127::SOURCE,
            build: spring,
        },
        (Kind::SpringWasher, false) => Found {
            diameters: || asme_b18_21_1::SPRINGS.iter().map(|row| row.d).collect(),
            source: asme_b18_21_1::SPRING,
            build: inch_spring,
        },
        (Kind::ConicalWasher, true) => Found {
            diameters: || din_6796::ROWS.iter().map(|row| row.d).collect(),
            source: din_6796::SOURCE,
            build: conical,
        },
        _ => return None,
    })
}

fn washer(inside: Size, outside: Size, thickness: Size) -> Shape {
    Solid::Washer(Washer { inside, outside, thickness }).into()
}

fn plain(profile: Profile, _: Length) -> Option<Shape> {
    let row = find(iso_7089::ROWS, profile.diameter.mm(), |row| row.d)?;
    let size = |number| mm(number, iso_7089::source(row.basis));
    Some(washer(size(row.d1), size(row.d2), size(row.h)))
}

fn structural(profile: Profile, _: Length) -> Option<Shape> {
    let row = find(asme_b18_2_6::WASHERS, profile.diameter.inch(), |row| row.d)?;
    let size = |number| inch(number, asme_b18_2_6::washer_source(row.basis));
    Some(washer(size(row.inside), size(row.outside), size(middle((row.max, row.min)))))
}

fn large(profile: Profile, _: Length) -> Option<Shape> {
    let row = find(iso_7093_1::ROWS, profile.diameter.mm(), |row| row.d)?;
    let size = |number| mm(number, iso_7093_1::SOURCE);
    Some(washer(size(row.d1), size(row.d2), size(row.h)))
}

fn wide(profile: Profile, _: Length) -> Option<Shape> {
    let row = find(asme_b18_22_1::ROWS, profile.diameter.inch(), |row| row.d)?;
    let size = |number| inch(number, asme_b18_22_1::SOURCE);
    Some(washer(size(row.inside), size(row.outside), size(row.thickness)))
}

fn narrow(profile: Profile, _: Length) -> Option<Shape> {
    let row = find(asme_b18_21_1::NARROWS, profile.diameter.inch(), |row| row.d)?;
    let size = |limits| inch(middle(limits), asme_b18_21_1::NARROW);
    Some(washer(size(row.inside), size(row.outside), size(row.thickness)))
}

fn conical(profile: Profile, _: Length) -> Option<Shape> {
    let row = find(din_6796::ROWS, profile.diameter.mm(), |row| row.d)?;
    let size = |number| mm(number, din_6796::SOURCE);
    Some(washer(size(row.d1), size(row.d2), size(row.s)))
}

fn spring(profile: Profile, _: Length) -> Option<Shape> {
    let row = find(din_127::ROWS, profile.diameter.mm(), |row| row.d)?;
    let size = |number| mm(number, din_127::SOURCE);
    let washer = SpringWasher { inside: size(row.d1), width: size(row.b), thickness: size(row.s) };
    Some(Solid::SpringWasher(washer).into())
}

fn inch_spring(profile: Profile, _: Length) -> Option<Shape> {
    let row = find(asme_b18_21_1::SPRINGS, profile.diameter.inch(), |row| row.d)?;
    let washer = SpringWasher {
        inside: inch(middle((row.inside_max, row.inside_min)), asme_b18_21_1::SPRING),
        width: inch(row.width, asme_b18_21_1::width_source(row.width_basis)),
        thickness: inch(row.thickness, asme_b18_21_1::SPRING),
    };
    Some(Solid::SpringWasher(washer).into())
}
