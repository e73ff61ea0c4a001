//! ISO 3269: acceptance inspection of fasteners, where purchaser and supplier agree nothing else.
//!
//! Its scope is read; the AQL values are those of the 2000 edition from memory, and the number of
//! pieces follows from them and the limiting quality that is agreed with the supplier. No line of
//! its own for the thickness of a coat was found.

use crate::source::{Source, document::ISO_3269};

/// What is inspected, and its AQL in per cent.
pub static AQL: &[(&str, f64)] = &[
    ("main dimensions and thread gauges, product grades A and B", 1.0),
    ("other dimensions, product grades A and B", 1.5),
    ("main dimensions, product grade C", 1.5),
    ("other dimensions, product grade C", 2.5),
    ("nonconforming fasteners", 2.5),
    ("mechanical characteristics, not destructive", 0.65),
    ("mechanical characteristics, destructive", 1.5),
    ("chemical composition", 1.5),
];

/// Where the values are known from.
pub const AQL_SOURCE: Source = ISO_3269.memory("2000 edition, tables");
/// What it is for.
pub const SCOPE: Source = ISO_3269.read("2019 edition, scope");
/// The coat has no line of its own that was found.
pub const COAT: Source = ISO_3269.memory("sample sizes");
