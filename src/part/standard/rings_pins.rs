//! Retaining rings, cotter pins and spring pins; sizes are those of shaft, bore or hole.

use super::{Found, find, middle, mm};
use crate::part::{CotterPin, Kind, Profile, Ring, STEEL, Shape, Size, Solid, SpringPin};
use crate::quantity::{Length, Mass};
use crate::source::{Basis, Source};
use crate::table::{din_471, din_472, iso_1234, iso_8752};

pub(super) fn found(kind: Kind, metric: bool) -> Option<Found> {
    Some(match (kind, metric) {
        (Kind::RetainingRing, true) => Found {
            diameters: || din_471::ROWS.iter().map(|row| row.d1).collect(),
            source: din_471::SOURCE,
            build: shaft_ring,
        },
        (Kind::InternalRing, true) => Found {
            diameters: || din_472::ROWS.iter().map(|row| row.d1).collect(),
            source: din_472::SOURCE,
            build: bore_ring,
        },
        (Kind::CotterPin, true) => Found {
            diameters: || iso_1234::ROWS.iter().map(|row| row.n).collect(),
            source: iso_1234::SOURCE,
            build: cotter_pin,
        },
        (Kind::SpringPin, true) => Found {
            diameters: || iso_8752::ROWS.iter().map(|row| row.d).collect(),
            source: iso_8752::source(Basis::Read),
            build: spring_pin,
        },
        _ => return None,
    })
}

fn shaft_ring(profile: Profile, _: Length) -> Option<Shape> {
    let row = find(din_471::ROWS, profile.diameter.mm(), |row| row.d1)?;
    let sources = (din_471::SOURCE, din_471::MASS);
    Some(ring(false, row.d3, row.s, row.mass, sources))
}

fn bore_ring(profile: Profile, _: Length) -> Option<Shape> {
    let row = find(din_472::ROWS, profile.diameter.mm(), |row| row.d1)?;
    let sources = (din_472::SOURCE, din_472::MASS);
    Some(ring(true, row.d3, row.s, row.mass, sources))
}

/// A ring is widest opposite its gap; its mean width is what its mass says.
fn ring(internal: bool, free: f64, thickness: f64, g: f64, (sizes, mass): (Source, Source)) -> Shape {
    let face = (Mass::from_g(g) / STEEL.value).mm3() / thickness;
    let width = Ring::mean_width(internal, free, face);
    Solid::Ring(Ring {
        internal,
        free: mm(free, sizes),
        thickness: mm(thickness, sizes),
        width: mm(width, Source { basis: Basis::Computed, ..mass }),
    })
    .into()
}

fn cotter_pin(profile: Profile, length: Length) -> Option<Shape> {
    let row = find(iso_1234::ROWS, profile.diameter.mm(), |row| row.n)?;
    let size = |number| mm(number, iso_1234::SOURCE);
    let pin = CotterPin {
        diameter: size(middle(row.d)),
        length: Size::own(length),
        long_end: size(middle(row.a)),
        eye_length: size(row.b),
        eye_width: size(middle(row.c)),
    };
    Some(Solid::CotterPin(pin).into())
}

fn spring_pin(profile: Profile, length: Length) -> Option<Shape> {
    let row = find(iso_8752::ROWS, profile.diameter.mm(), |row| row.d)?;
    let source = iso_8752::source(row.basis);
    let pin = SpringPin { diameter: mm(row.d, source), wall: mm(row.s, source), length: Size::own(length) };
    Some(Solid::SpringPin(pin).into())
}
