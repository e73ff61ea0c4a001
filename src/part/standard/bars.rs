//! Rods, studs, anchor rods, bows and set screws.

use super::{Found, find, inch, middle, mm};
use crate::part::{Bolt, Head, Kind, Profile, SetScrew, Shape, Size, Solid};
use crate::quantity::Length;
use crate::source::{Source, assumed};
use crate::table::{asme_b18_3, din_3570, iso_4026};

pub(super) fn found(kind: Kind, metric: bool) -> Option<Found> {
    Some(match (kind, metric) {
        (Kind::Rod | Kind::Stud, _) => {
            Found { diameters: Vec::new, source: crate::part::profile::SOURCE, build: rod }
        }
        (Kind::AnchorRod, _) => Found { diameters: Vec::new, source: ANCHOR, build: anchor_rod },
        (Kind::UBolt, true) => Found {
            diameters: || {
                let mut threads: Vec<f64> = din_3570::ROWS.iter().map(|row| row.d).collect();
                threads.dedup();
                threads
            },
            source: din_3570::SOURCE,
            build: u_bolt,
        },
        (Kind::SetScrew, true) => Found {
            diameters: || iso_4026::ROWS.iter().map(|row| row.d).collect(),
            source: iso_4026::SOCKET,
            build: set_screw,
        },
        (Kind::SetScrew, false) => Found {
            diameters: || asme_b18_3::SETS.iter().map(|row| row.d).collect(),
            source: asme_b18_3::SET,
            build: inch_set_screw,
        },
        _ => return None,
    })
}

/// The order says how far an anchor rod is threaded.
const ANCHOR: Source = assumed("anchor rod threaded over its whole length; give b where it is less");

fn rod(profile: Profile, length: Length) -> Option<Shape> {
    let length = Size::own(length);
    Some(Solid::Bolt(Bolt { head: Head::None, profile, length, thread_length: length, shank: None }).into())
}

fn anchor_rod(profile: Profile, length: Length) -> Option<Shape> {
    Some(super::bolt(Head::Plain, profile, length, Size::published(length, ANCHOR)))
}

/// The height of the legs tells one bow of a thread from another.
fn u_bolt(profile: Profile, height: Length) -> Option<Shape> {
    let of_size = |row: &&din_3570::Row| {
        (row.d - profile.diameter.mm()).abs() < 1e-6 && (row.height - height.mm()).abs() < 0.5
    };
    let row = din_3570::ROWS.iter().find(of_size)?;
    let head = Head::Bow { width: mm(row.width, din_3570::SOURCE) };
    Some(super::bolt(head, profile, height, mm(row.b, din_3570::SOURCE)))
}

fn set_screw(profile: Profile, length: Length) -> Option<Shape> {
    let row = find(iso_4026::ROWS, profile.diameter.mm(), |row| row.d)?;
    // The table's own line between short and longer screws was not found.
    let depth = if length.mm() >= 2.0 * row.t_long {
        mm(row.t_long, iso_4026::LONG_SOCKET)
    } else {
        mm(row.t_short, iso_4026::SOCKET)
    };
    Some(screw(
        profile,
        length,
        mm(middle((row.dp_max, row.dp_min)), iso_4026::POINT),
        mm(row.s, iso_4026::SOCKET),
        depth,
    ))
}

fn inch_set_screw(profile: Profile, length: Length) -> Option<Shape> {
    let row = find(asme_b18_3::SETS, profile.diameter.inch(), |row| row.d)?;
    let point = inch(middle((row.point_max, row.point_min)), asme_b18_3::SET);
    let depth = inch(row.depth, asme_b18_3::SET);
    Some(screw(profile, length, point, inch(row.socket, asme_b18_3::SET_SOCKET), depth))
}

fn screw(profile: Profile, length: Length, point: Size, flats: Size, depth: Size) -> Shape {
    Solid::SetScrew(SetScrew { profile, length: Size::own(length), point, flats, depth }).into()
}
