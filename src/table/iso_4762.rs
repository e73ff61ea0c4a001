//! ISO 4762, hexagon socket head cap screws: head, socket and thread length.

use crate::source::{Basis, Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter `d`.
    pub d: f64,
    /// Head diameter `dk` of a plain head, greatest; a knurled head is up to 0.5 mm larger.
    pub dk: f64,
    /// How `dk` is known.
    pub dk_basis: Basis,
    /// Head height `k`, greatest.
    pub k: f64,
    /// Socket across flats `s`, nominal.
    pub s: f64,
    /// Socket depth `t`, least.
    pub t: f64,
    /// How `k`, `s` and `t` are known.
    pub basis: Basis,
}

/// Where head heights and sockets were read.
pub const SOURCE: Source =
    document::ISO_4762.read("k, s and t, as tabulated in the general-purpose CAD library bd_warehouse 0.4");

/// Where head heights and sockets are known from.
pub const fn source(basis: Basis) -> Source {
    match basis {
        Basis::Read => SOURCE,
        basis => document::ISO_4762.known("k, s and t", basis),
    }
}

/// Where head diameters are known from.
pub const fn dk_source(basis: Basis) -> Source {
    document::ISO_4762.known("dk of plain heads", basis)
}

/// Thread length `b`: 2d + 12 mm.
pub const THREAD_LENGTH: Source = document::ISO_4762.memory("thread length b");
/// What is added to `2d`, in millimetres.
pub const THREAD_ADDITION: f64 = 12.0;

/// The rows, M3 to M64; second-choice sizes that were not found are missing.
pub const ROWS: &[Row] = &[
    small(3.0, 5.5, 3.0, 2.5, 1.3),
    small(4.0, 7.0, 4.0, 3.0, 2.0),
    row(5.0, 8.5, 5.0, 4.0, 2.5),
    row(6.0, 10.0, 6.0, 5.0, 3.0),
    row(8.0, 13.0, 8.0, 6.0, 4.0),
    row(10.0, 16.0, 10.0, 8.0, 5.0),
    row(12.0, 18.0, 12.0, 10.0, 6.0),
    row(14.0, 21.0, 14.0, 12.0, 7.0),
    row(16.0, 24.0, 16.0, 14.0, 8.0),
    row(20.0, 30.0, 20.0, 17.0, 10.0),
    row(24.0, 36.0, 24.0, 19.0, 12.0),
    row(30.0, 45.0, 30.0, 22.0, 15.5),
    row(36.0, 54.0, 36.0, 27.0, 19.0),
    remembered(42.0, 63.0, 42.0, 32.0, 24.0),
    remembered(48.0, 72.0, 48.0, 36.0, 28.0),
    remembered(56.0, 84.0, 56.0, 41.0, 34.0),
    remembered(64.0, 96.0, 64.0, 46.0, 38.0),
];

const fn row(d: f64, dk: f64, k: f64, s: f64, t: f64) -> Row {
    Row { d, dk, dk_basis: Basis::Read, k, s, t, basis: Basis::Read }
}

const fn remembered(d: f64, dk: f64, k: f64, s: f64, t: f64) -> Row {
    Row { dk_basis: Basis::Memory, ..row(d, dk, k, s, t) }
}

const fn small(d: f64, dk: f64, k: f64, s: f64, t: f64) -> Row {
    Row { basis: Basis::Memory, ..remembered(d, dk, k, s, t) }
}
