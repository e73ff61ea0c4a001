//! Hexagon bolts and screws, flange bolts, structural bolts, carriage bolts and eye bolts.

use super::{Found, bolt, find, inch, middle, mm, partly, thread_length, to_head};
use crate::part::{Bolt, Head, Kind, Profile, Shape, Size, Solid};
use crate::quantity::Length;
use crate::table::{
    asme_b18_2_1, asme_b18_2_6, asme_b18_5, din_444, en_1665, en_14399_4, iso_4014, iso_8677,
};

pub(super) fn found(kind: Kind, metric: bool) -> Option<Found> {
    Some(match (kind, metric) {
        (Kind::HexBolt, true) => iso_hex(|profile, length| hex_bolt(profile, length, false)),
        (Kind::HexScrew, true) => iso_hex(|profile, length| hex_bolt(profile, length, true)),
        (Kind::HexBolt, false) => inch_hex(|profile, length| inch_hex_bolt(profile, length, false)),
        (Kind::HexScrew, false) => inch_hex(|profile, length| inch_hex_bolt(profile, length, true)),
        (Kind::StructuralBolt, true) => Found {
            diameters: || en_14399_4::ROWS.iter().map(|row| row.d).collect(),
            source: en_14399_4::SOURCE,
            build: hv_bolt,
        },
        (Kind::StructuralBolt, false) => Found {
            diameters: || asme_b18_2_6::BOLTS.iter().map(|row| row.d).collect(),
            source: asme_b18_2_6::HEAD,
            build: structural_bolt,
        },
        (Kind::FlangeBolt, true) => Found {
            diameters: || en_1665::ROWS.iter().map(|row| row.d).collect(),
            source: en_1665::SOURCE,
            build: flange_bolt,
        },
        (Kind::FlangeBolt, false) => Found {
            diameters: || asme_b18_2_1::FLANGES.iter().map(|row| row.d).collect(),
            source: asme_b18_2_1::FLANGE,
            build: inch_flange_bolt,
        },
        (Kind::CarriageBolt, true) => Found {
            diameters: || iso_8677::ROWS.iter().map(|row| row.d).collect(),
            source: iso_8677::SOURCE,
            build: carriage_bolt,
        },
        (Kind::CarriageBolt, false) => Found {
            diameters: || asme_b18_5::ROWS.iter().map(|row| row.d).collect(),
            source: asme_b18_5::SOURCE,
            build: inch_carriage_bolt,
        },
        (Kind::EyeBolt, true) => Found {
            diameters: || din_444::ROWS.iter().map(|row| row.d).collect(),
            source: din_444::SOURCE,
            build: eye_bolt,
        },
        _ => return None,
    })
}

fn iso_hex(build: fn(Profile, Length) -> Option<Shape>) -> Found {
    Found { diameters: || iso_4014::ROWS.iter().map(|row| row.d).collect(), source: iso_4014::S, build }
}

fn inch_hex(build: fn(Profile, Length) -> Option<Shape>) -> Found {
    let source = asme_b18_2_1::source(crate::source::Basis::Read);
    Found { diameters: || asme_b18_2_1::ROWS.iter().map(|row| row.d).collect(), source, build }
}

fn hex_bolt(profile: Profile, length: Length, to_the_head: bool) -> Option<Shape> {
    let d = profile.diameter.mm();
    let row = find(iso_4014::ROWS, d, |row| row.d)?;
    let head =
        Head::Hexagon { flats: mm(row.s, iso_4014::S), height: mm(row.k, iso_4014::k_source(row.k_basis)) };
    let b = mm(thread_length(d, length.mm(), &iso_4014::THREAD_ADDITIONS), iso_4014::THREAD_LENGTH);
    let thread = if to_the_head { to_head(length.mm(), profile) } else { partly(profile, length.mm(), b) };
    Some(bolt(head, profile, length, thread))
}

fn inch_hex_bolt(profile: Profile, length: Length, to_the_head: bool) -> Option<Shape> {
    let d = profile.diameter.inch();
    let row = find(asme_b18_2_1::ROWS, d, |row| row.d)?;
    let source = asme_b18_2_1::source(row.basis);
    let head = Head::Hexagon { flats: inch(row.f, source), height: inch(row.h, source) };
    let b = thread_length(d, length.inch(), &asme_b18_2_1::THREAD_ADDITIONS);
    let b = inch(b, asme_b18_2_1::THREAD_LENGTH);
    let thread = if to_the_head { to_head(length.mm(), profile) } else { partly(profile, length.mm(), b) };
    Some(bolt(head, profile, length, thread))
}

fn structural_bolt(profile: Profile, length: Length) -> Option<Shape> {
    let row = find(asme_b18_2_6::BOLTS, profile.diameter.inch(), |row| row.d)?;
    let head =
        Head::Hexagon { flats: inch(row.f, asme_b18_2_6::HEAD), height: inch(row.h, asme_b18_2_6::HEAD) };
    let b = inch(row.thread_length, asme_b18_2_6::THREAD_LENGTH);
    let thread = if b.length < length { b } else { to_head(length.mm(), profile) };
    Some(bolt(head, profile, length, thread))
}

fn hv_bolt(profile: Profile, length: Length) -> Option<Shape> {
    let row = find(en_14399_4::ROWS, profile.diameter.mm(), |row| row.d)?;
    let head = Head::Hexagon { flats: mm(row.s, en_14399_4::FLATS), height: mm(row.k, en_14399_4::SOURCE) };
    let b = mm(row.b, en_14399_4::SOURCE);
    let thread = if b.length < length { b } else { to_head(length.mm(), profile) };
    Some(bolt(head, profile, length, thread))
}

fn flange_bolt(profile: Profile, length: Length) -> Option<Shape> {
    let d = profile.diameter.mm();
    let row = find(en_1665::ROWS, d, |row| row.d)?;
    let source = en_1665::SOURCE;
    let head = Head::Flange {
        flats: mm(middle((row.s_max, row.s_min)), source),
        height: mm(row.k, source),
        flange: mm(row.dc, source),
        rim: mm(row.c, source),
    };
    let b = if length.mm() <= 125.0 {
        mm(row.b, source)
    } else {
        mm(thread_length(d, length.mm(), &iso_4014::THREAD_ADDITIONS), en_1665::THREAD_LENGTH)
    };
    let shank = Some(mm(middle((d, row.ds_min)), source));
    let thread_length = partly(profile, length.mm(), b);
    Some(Solid::Bolt(Bolt { head, profile, length: Size::own(length), thread_length, shank }).into())
}

fn inch_flange_bolt(profile: Profile, length: Length) -> Option<Shape> {
    let row = find(asme_b18_2_1::FLANGES, profile.diameter.inch(), |row| row.d)?;
    let head = Head::Flange {
        flats: inch(row.f, asme_b18_2_1::FLANGE),
        height: inch(row.h, asme_b18_2_1::FLANGE_HEIGHT),
        flange: inch(row.b, asme_b18_2_1::FLANGE),
        rim: inch(row.rim, asme_b18_2_1::FLANGE_RIM),
    };
    let b = inch(row.thread_length, asme_b18_2_1::FLANGE);
    Some(bolt(head, profile, length, partly(profile, length.mm(), b)))
}

fn carriage_bolt(profile: Profile, length: Length) -> Option<Shape> {
    let d = profile.diameter.mm();
    let row = find(iso_8677::ROWS, d, |row| row.d)?;
    let source = iso_8677::SOURCE;
    let head = Head::Round {
        diameter: mm(middle(row.dk), source),
        height: mm(middle(row.k), source),
        square: mm(middle(row.v), source),
        depth: mm(middle(row.f), source),
    };
    let b = match length.mm() {
        to_125 if to_125 <= 125.0 => mm(row.b.0, source),
        to_200 if to_200 <= 200.0 => mm(row.b.1, source),
        beyond => mm(thread_length(d, beyond, &iso_4014::THREAD_ADDITIONS), iso_4014::THREAD_LENGTH),
    };
    let shank = Some(Size::published(profile.pitch_diameter(), iso_8677::SHANK));
    let thread_length = neck(length, middle(row.f), b);
    Some(Solid::Bolt(Bolt { head, profile, length: Size::own(length), thread_length, shank }).into())
}

fn inch_carriage_bolt(profile: Profile, length: Length) -> Option<Shape> {
    let d = profile.diameter.inch();
    let row = find(asme_b18_5::ROWS, d, |row| row.d)?;
    let source = asme_b18_5::SOURCE;
    let head = Head::Round {
        diameter: inch(middle(row.a), source),
        height: inch(middle(row.h), source),
        square: inch(middle(row.o), source),
        depth: inch(middle(row.p), source),
    };
    let b = thread_length(d, length.inch(), &asme_b18_2_1::THREAD_ADDITIONS);
    let b = inch(b, asme_b18_2_1::THREAD_LENGTH);
    Some(bolt(head, profile, length, neck(length, Length::from_inch(middle(row.p)).mm(), b)))
}

/// A carriage bolt too short for its thread length is threaded to the neck.
fn neck(length: Length, neck: f64, b: Size) -> Size {
    let beside = length.mm() - neck;
    if b.mm() < beside { b } else { Size { length: Length::from_mm(beside), ..b } }
}

fn eye_bolt(profile: Profile, length: Length) -> Option<Shape> {
    let row = find(din_444::ROWS, profile.diameter.mm(), |row| row.d)?;
    let source = din_444::SOURCE;
    let head = Head::Eye {
        diameter: mm(row.eye, source),
        hole: mm(row.hole, source),
        thickness: mm(row.thickness, source),
    };
    let [to_125, to_200, beyond] = row.b;
    let b = match length.mm() {
        mm if mm <= 125.0 => to_125?,
        mm if mm <= 200.0 => to_200?,
        _ => beyond?,
    };
    let beside = length.mm() - row.eye / 2.0;
    let thread = if b < beside { b } else { beside };
    Some(bolt(head, profile, length, mm(thread, source)))
}
