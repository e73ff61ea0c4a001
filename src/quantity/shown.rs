//! A number as it is shown: with its unit, rounded once, here.

use std::fmt;

use serde::ser::{Serialize, SerializeStruct, Serializer};

use super::number::whole;
use super::{Unit, unit};

/// A number with its unit and the decimals it is shown with.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shown {
    /// The number, not rounded.
    pub number: f64,
    /// Its unit.
    pub unit: &'static Unit,
    /// Decimals to show.
    pub decimals: u8,
}

impl Shown {
    /// A number without a unit.
    pub fn plain(number: f64, decimals: u8) -> Self {
        Self { number, unit: &unit::ONE, decimals }
    }

    /// A share shown in per cent.
    pub fn percent(share: f64, decimals: u8) -> Self {
        Self { number: share * 100.0, unit: &unit::PERCENT, decimals }
    }

    /// A number of pieces.
    pub fn pieces(number: f64) -> Self {
        Self { number, unit: &unit::PIECES, decimals: 0 }
    }

    /// The rounded number alone, with a true minus sign.
    pub fn digits(&self) -> String {
        // Room for most numbers; writing to a string cannot fail.
        let mut text = String::with_capacity(16);
        let _ = write_rounded(&mut text, self.nudged(), self.decimals);
        match text.strip_prefix('-') {
            Some(rest) if rest.bytes().any(|b| (b'1'..=b'9').contains(&b)) => format!("−{rest}"),
            Some(rest) => rest.to_owned(),
            None => text,
        }
    }

    /// A decimal half has no exact binary form: 353.35 must not fall to 353.3.
    fn nudged(&self) -> f64 {
        self.number * (1.0 + 4.0 * f64::EPSILON)
    }

    /// The number that is shown, as a reader would put it into a sum.
    pub fn displayed(&self) -> f64 {
        let digits = self.digits();
        let number = digits.strip_prefix('−').unwrap_or(&digits).parse::<f64>().unwrap_or(self.number.abs());
        if digits.starts_with('−') { -number } else { number }
    }

    /// The number after rounding to the decimals shown, half to even as ASTM E29 rounds.
    pub fn rounded(&self) -> f64 {
        let scale = 10f64.powi(i32::from(self.decimals));
        (self.number * scale).round_ties_even() / scale
    }
}

/// Writes a number rounded to these decimals.
fn write_rounded(text: &mut impl fmt::Write, number: f64, decimals: u8) -> fmt::Result {
    match whole(number.round_ties_even()) {
        Some(whole) if decimals == 0 => write!(text, "{whole}"),
        _ => write!(text, "{number:.*}", usize::from(decimals)),
    }
}

impl fmt::Display for Shown {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (symbol, number) = (self.unit.symbol, self.nudged());
        if number.is_sign_positive() {
            write_rounded(f, number, self.decimals)?;
        } else {
            f.write_str(&self.digits())?;
        }
        if symbol.is_empty() {
            return Ok(());
        }
        f.write_str("\u{a0}")?;
        // The one unit that is a word.
        let is_one = self.decimals == 0 && number > 0.5 && number < 1.5;
        f.write_str(if is_one && symbol == "years" { "year" } else { symbol })
    }
}

impl Serialize for Shown {
    /// The exact number, its unit, and how the two are shown.
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut shown = serializer.serialize_struct("Shown", 3)?;
        shown.serialize_field("number", &self.number)?;
        shown.serialize_field("unit", self.unit.symbol)?;
        shown.serialize_field("shown", &self.to_string())?;
        shown.end()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_whole_number_is_written_as_the_standard_library_rounds_it() {
        for step in -40..4000 {
            let tie = f64::from(step) / 8.0;
            for number in [tie.next_down(), tie, tie.next_up(), tie * 1e12, tie * 1e15] {
                let mut text = String::new();
                write_rounded(&mut text, number, 0).unwrap();
                assert_eq!(text, format!("{number:.0}"));
            }
        }
    }
}
