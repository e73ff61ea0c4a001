//! A steel beside a limit, in words.

use std::cmp::Ordering;
use std::fmt::Write;

use crate::steel::{Compared, Converted, Level, Over, SteelLimit};

/// `39 HRC (382 HV) is above the limit of 33 HRC`, behind a text.
pub(super) fn write_compared(text: &mut String, limit: Option<SteelLimit>, compared: &Compared) {
    write_level(text, compared.value, compared.converted);
    let at = compared.value.number().partial_cmp(&compared.limit.number()).unwrap_or(Ordering::Equal);
    let over = limit.map_or(Over::AtLeast, |limit| limit.over);
    text.push_str(match (at, over) {
        (Ordering::Less, _) => " is below ",
        (Ordering::Greater, _) => " is above ",
        (Ordering::Equal, Over::AtLeast) => return text.push_str(", the limit itself"),
        (Ordering::Equal, Over::Above) => return text.push_str(" is the limit and not above it"),
    });
    write_level(text, compared.limit, compared.limit_converted);
}

/// A level, and in brackets what it was converted from.
fn write_level(text: &mut String, level: Level, converted: Option<Converted>) {
    // Writing to a string cannot fail.
    let _ = match converted {
        // Where it was rounded to what the table prints, the conversion itself is said.
        Some(converted) if (converted.to.number() - level.number()).abs() > 0.05 => {
            write!(
                text,
                "{} ({}, converted to about {})",
                level.show(),
                converted.from.show(),
                converted.to.show()
            )
        }
        Some(converted) => write!(text, "{} ({})", level.show(), converted.from.show()),
        None => write!(text, "{}", level.show()),
    };
}
