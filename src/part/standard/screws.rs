//! Screws with a socket: cap, countersunk and button heads.

use super::{Found, bolt, find, inch, middle, mm, partly};
use crate::part::{Angle, Head, Kind, Profile, Shape};
use crate::quantity::Length;
use crate::table::{asme_b18_3, iso_4762, iso_7380, iso_10642};

pub(super) fn found(kind: Kind, metric: bool) -> Option<Found> {
    Some(match (kind, metric) {
        (Kind::SocketScrew, true) => Found {
            diameters: || iso_4762::ROWS.iter().map(|row| row.d).collect(),
            source: iso_4762::SOURCE,
            build: socket_screw,
        },
        (Kind::SocketScrew, false) => Found {
            diameters: || asme_b18_3::CAPS.iter().map(|row| row.d).collect(),
            source: asme_b18_3::CAP,
            build: inch_socket_screw,
        },
        (Kind::CountersunkScrew, true) => Found {
            diameters: || iso_10642::ROWS.iter().map(|row| row.d).collect(),
            source: iso_10642::SOURCE,
            build: countersunk_screw,
        },
        (Kind::CountersunkScrew, false) => Found {
            diameters: || asme_b18_3::FLATS.iter().map(|row| row.d).collect(),
            source: asme_b18_3::FLAT,
            build: inch_countersunk_screw,
        },
        (Kind::ButtonScrew, true) => Found {
            diameters: || iso_7380::ROWS.iter().map(|row| row.d).collect(),
            source: iso_7380::SOURCE,
            build: button_screw,
        },
        (Kind::ButtonScrew, false) => Found {
            diameters: || asme_b18_3::BUTTONS.iter().map(|row| row.d).collect(),
            source: asme_b18_3::BUTTON,
            build: inch_button_screw,
        },
        _ => return None,
    })
}

fn socket_screw(profile: Profile, length: Length) -> Option<Shape> {
    let row = find(iso_4762::ROWS, profile.diameter.mm(), |row| row.d)?;
    let head = Head::Socket {
        diameter: mm(row.dk, iso_4762::dk_source(row.dk_basis)),
        height: mm(row.k, iso_4762::source(row.basis)),
        flats: mm(row.s, iso_4762::source(row.basis)),
        depth: mm(row.t, iso_4762::source(row.basis)),
    };
    Some(bolt(head, profile, length, metric_thread(profile, length.mm())))
}

/// `b` is 2d + 12 mm.
fn metric_thread(profile: Profile, beside: f64) -> crate::part::Size {
    let b = 2.0 * profile.diameter.mm() + iso_4762::THREAD_ADDITION;
    partly(profile, beside, mm(b, iso_4762::THREAD_LENGTH))
}

/// `LT` is 2D + 1/2 in.
fn inch_thread(profile: Profile, beside: f64) -> crate::part::Size {
    let b = 2.0 * profile.diameter.inch() + asme_b18_3::THREAD_ADDITION;
    partly(profile, beside, inch(b, asme_b18_3::THREAD_LENGTH))
}

fn inch_socket_screw(profile: Profile, length: Length) -> Option<Shape> {
    let row = find(asme_b18_3::CAPS, profile.diameter.inch(), |row| row.d)?;
    let size = |number| inch(number, asme_b18_3::CAP);
    let head = Head::Socket {
        diameter: size(row.a),
        height: size(row.d),
        flats: size(row.socket),
        depth: size(row.depth),
    };
    Some(bolt(head, profile, length, inch_thread(profile, length.mm())))
}

fn countersunk_screw(profile: Profile, length: Length) -> Option<Shape> {
    let row = find(iso_10642::ROWS, profile.diameter.mm(), |row| row.d)?;
    let size = |number| mm(number, iso_10642::SOURCE);
    let head = Head::Countersunk {
        diameter: size(row.dk),
        height: size(row.k),
        flats: size(row.s),
        depth: size(row.t),
        angle: Angle::Ninety,
    };
    let thread = partly(profile, length.mm() - row.k, size(row.b));
    Some(bolt(head, profile, length, thread))
}

fn inch_countersunk_screw(profile: Profile, length: Length) -> Option<Shape> {
    let row = find(asme_b18_3::FLATS, profile.diameter.inch(), |row| row.d)?;
    let size = |number| inch(number, asme_b18_3::FLAT);
    let head = Head::Countersunk {
        diameter: size(row.a),
        height: size(row.h),
        flats: size(row.socket),
        depth: size(row.depth),
        angle: Angle::EightyTwo,
    };
    Some(bolt(head, profile, length, inch_thread(profile, length.mm() - Length::from_inch(row.h).mm())))
}

fn button_screw(profile: Profile, length: Length) -> Option<Shape> {
    let row = find(iso_7380::ROWS, profile.diameter.mm(), |row| row.d)?;
    let size = |number| mm(number, iso_7380::SOURCE);
    let head =
        Head::Button { diameter: size(row.dk), height: size(row.k), flats: size(row.s), depth: size(row.t) };
    Some(bolt(head, profile, length, metric_thread(profile, length.mm())))
}

fn inch_button_screw(profile: Profile, length: Length) -> Option<Shape> {
    let row = find(asme_b18_3::BUTTONS, profile.diameter.inch(), |row| row.d)?;
    let height = middle((row.h_max, row.h_min));
    let head = Head::Button {
        diameter: inch(row.a, asme_b18_3::BUTTON),
        height: inch(height, asme_b18_3::BUTTON_HEIGHT),
        flats: inch(row.socket, asme_b18_3::BUTTON),
        depth: inch(asme_b18_3::BUTTON_SOCKET * height, asme_b18_3::BUTTON_DEPTH),
    };
    Some(bolt(head, profile, length, inch_thread(profile, length.mm())))
}
