//! Bakes after plating that documents beside those of the order state, as they are quoted.

use super::inspection::Row;
use crate::source::{Source, document};

const fn row(name: &'static str, says: &'static str, source: Source) -> Row {
    Row { name, says, source }
}

/// What is quoted.
pub static OTHER: [Row; 5] = [
    row("To 390 HV (40 HRC)", "at 200 °C for 4 h or more", document::SAE_USCAR_5.read("bake, as quoted")),
    row("Above 390 HV", "at 200 °C for 8 h or more", document::SAE_USCAR_5.read("bake, as quoted")),
    row(
        "A car maker's own",
        "a bake for a core above 32 HRC or a surface above 35 HRC",
        document::TRADE.read("a car maker's standard, as quoted"),
    ),
    row(
        "Begun",
        "within 3 h of plating, by most specifications",
        document::TRADE.read("most specifications: within 3 h"),
    ),
    row(
        "ISO 9588",
        "its table was not found, and is remembered as close to that of ASTM B850: open it for an order under it",
        document::ISO_9588.memory("bake table, not seen"),
    ),
];
