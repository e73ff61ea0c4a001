//! ASME B18.3, socket screws, inch: cap screws, set screws, flat countersunk and button heads, from #4 up.

use crate::source::{Source, assumed, document};

/// The head of a cap screw, in inches; it is as high as the thread is thick.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cap {
    /// Nominal thread diameter.
    pub d: f64,
    /// Head diameter, greatest.
    pub a: f64,
    /// Socket across flats, nominal.
    pub socket: f64,
    /// Key engagement, least.
    pub depth: f64,
}

/// A set screw, in inches.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Set {
    /// Nominal thread diameter.
    pub d: f64,
    /// Point, greatest diameter.
    pub point_max: f64,
    /// Point, least diameter.
    pub point_min: f64,
    /// Socket across flats, nominal.
    pub socket: f64,
    /// Key engagement, least.
    pub depth: f64,
}

/// A flat countersunk head of 82°, in inches.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Flat {
    /// Nominal thread diameter.
    pub d: f64,
    /// Head diameter, the middle of its limits.
    pub a: f64,
    /// Head height, reference.
    pub h: f64,
    /// Socket across flats, nominal.
    pub socket: f64,
    /// Key engagement, least.
    pub depth: f64,
}

/// A button head, in inches.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Button {
    /// Nominal thread diameter.
    pub d: f64,
    /// Head diameter, greatest.
    pub a: f64,
    /// Head height, greatest.
    pub h_max: f64,
    /// Head height, least.
    pub h_min: f64,
    /// Socket across flats, nominal.
    pub socket: f64,
}

/// Where cap screws are known from.
pub const CAP: Source = document::ASME_B18_3.memory("cap screws: A, H, socket, key engagement");
/// Thread length of screws with a head: 2D + 1/2 in.
pub const THREAD_LENGTH: Source = document::ASME_B18_3.memory("thread length LT");
/// What is added to `2D`, in inches.
pub const THREAD_ADDITION: f64 = 0.5;
/// Where set screws were read.
pub const SET: Source = document::ASME_B18_3.read("2003, set screws: point and key engagement");
/// Where their sockets were read.
pub const SET_SOCKET: Source = document::ASME_B18_3.read("set screws: socket");
/// Where flat heads were read.
pub const FLAT: Source =
    document::ASME_B18_3.read("flat heads of 82°, as tabulated in a public CAD fastener library");
/// Where button heads were read.
pub const BUTTON: Source =
    document::ASME_B18_3.read("button heads, A and socket, as tabulated in a public CAD fastener library");
/// Where the heights of button heads are known from.
pub const BUTTON_HEIGHT: Source = document::ASME_B18_3.memory("button heads, H");
/// Depth of the socket of a button head, as a share of its height: nothing was found.
/// Known by [`BUTTON_DEPTH`].
pub const BUTTON_SOCKET: f64 = 0.6;
/// That it is so deep.
pub const BUTTON_DEPTH: Source = assumed("socket of a button head 0.6 of its height, as in ISO 7380-1");

/// Cap screws, #4 to 1 1/2 in. Known by [`CAP`].
pub const CAPS: &[Cap] = &[
    cap(0.112, 0.183, 3.0 / 32.0, 0.051),
    cap(0.125, 0.205, 3.0 / 32.0, 0.057),
    cap(0.138, 0.226, 7.0 / 64.0, 0.064),
    cap(0.164, 0.27, 9.0 / 64.0, 0.077),
    cap(0.19, 0.312, 5.0 / 32.0, 0.09),
    cap(0.25, 0.375, 3.0 / 16.0, 0.12),
    cap(0.3125, 0.469, 0.25, 0.151),
    cap(0.375, 0.562, 5.0 / 16.0, 0.182),
    cap(0.4375, 0.656, 0.375, 0.213),
    cap(0.5, 0.75, 0.375, 0.245),
    cap(0.625, 0.938, 0.5, 0.307),
    cap(0.75, 1.125, 0.625, 0.37),
    cap(0.875, 1.312, 0.75, 0.432),
    cap(1.0, 1.5, 0.75, 0.495),
    cap(1.25, 1.875, 0.875, 0.62),
    cap(1.5, 2.25, 1.0, 0.745),
];

/// Set screws, #4 to 1 in. Known by [`SET`] and [`SET_SOCKET`].
pub const SETS: &[Set] = &[
    set(0.112, 0.061, 0.051, 0.05, 0.07),
    set(0.125, 0.067, 0.057, 0.0625, 0.08),
    set(0.138, 0.074, 0.064, 0.0625, 0.08),
    set(0.164, 0.087, 0.076, 0.078125, 0.09),
    set(0.19, 0.102, 0.088, 0.09375, 0.1),
    set(0.25, 0.132, 0.118, 0.125, 0.125),
    set(0.3125, 0.172, 0.156, 0.15625, 0.156),
    set(0.375, 0.212, 0.194, 0.1875, 0.188),
    set(0.4375, 0.252, 0.232, 0.21875, 0.219),
    set(0.5, 0.291, 0.27, 0.25, 0.25),
    set(0.625, 0.371, 0.347, 0.3125, 0.312),
    set(0.75, 0.45, 0.425, 0.375, 0.375),
    set(0.875, 0.53, 0.502, 0.5, 0.5),
    set(1.0, 0.609, 0.579, 0.5625, 0.562),
];

/// Flat countersunk heads, #4 to 1 1/2 in. Known by [`FLAT`].
pub const FLATS: &[Flat] = &[
    flat(0.112, 0.2365, 0.083, 0.062, 0.055),
    flat(0.125, 0.2605, 0.09, 0.078, 0.061),
    flat(0.138, 0.285, 0.097, 0.078, 0.066),
    flat(0.164, 0.335, 0.112, 0.094, 0.076),
    flat(0.19, 0.385, 0.127, 0.125, 0.087),
    flat(0.25, 0.5055, 0.161, 0.156, 0.111),
    flat(0.3125, 0.628, 0.198, 0.188, 0.135),
    flat(0.375, 0.7505, 0.234, 0.219, 0.159),
    flat(0.4375, 0.8125, 0.234, 0.25, 0.159),
    flat(0.5, 0.905, 0.251, 0.312, 0.172),
    flat(0.625, 1.15, 0.324, 0.375, 0.22),
    flat(0.75, 1.3965, 0.396, 0.5, 0.22),
    flat(0.875, 1.646, 0.468, 0.562, 0.248),
    flat(1.0, 1.8895, 0.54, 0.625, 0.297),
    flat(1.125, 2.1335, 0.611, 0.75, 0.325),
    flat(1.25, 2.377, 0.683, 0.875, 0.358),
    flat(1.375, 2.6205, 0.755, 0.875, 0.402),
    flat(1.5, 2.8645, 0.827, 1.0, 0.435),
];

/// Button heads, #4 to 5/8 in. Known by [`BUTTON`] and [`BUTTON_HEIGHT`].
pub const BUTTONS: &[Button] = &[
    button(0.112, 0.213, 0.059, 0.051, 0.0625),
    button(0.125, 0.238, 0.066, 0.058, 0.0781),
    button(0.138, 0.262, 0.073, 0.063, 0.0781),
    button(0.164, 0.312, 0.087, 0.077, 0.0938),
    button(0.19, 0.361, 0.101, 0.091, 0.125),
    button(0.25, 0.437, 0.132, 0.122, 0.1562),
    button(0.3125, 0.547, 0.166, 0.152, 0.1875),
    button(0.375, 0.656, 0.199, 0.185, 0.2188),
    button(0.5, 0.875, 0.265, 0.245, 0.3125),
    button(0.625, 1.0, 0.331, 0.311, 0.375),
];

const fn cap(d: f64, a: f64, socket: f64, depth: f64) -> Cap {
    Cap { d, a, socket, depth }
}

const fn set(d: f64, point_max: f64, point_min: f64, socket: f64, depth: f64) -> Set {
    Set { d, point_max, point_min, socket, depth }
}

const fn flat(d: f64, a: f64, h: f64, socket: f64, depth: f64) -> Flat {
    Flat { d, a, h, socket, depth }
}

const fn button(d: f64, a: f64, h_max: f64, h_min: f64, socket: f64) -> Button {
    Button { d, a, h_max, h_min, socket }
}
