//! Text to number, and text to a number with its unit.
//!
//! A point or a comma is the decimal mark; spaces of any width group digits; an inch may be a
//! fraction (`1 1/8`, `1-1/8`). What could mean two numbers is refused with both readings.

use std::fmt;

use super::Unit;

/// Why a text is not a number.
#[derive(Debug, Clone, PartialEq)]
pub enum Unreadable {
    /// Nothing was written.
    Empty,
    /// It could mean two numbers.
    Ambiguous {
        /// As it was written.
        text: String,
        /// Read with the mark as a decimal mark.
        decimal: String,
        /// Read with the mark between groups of digits.
        grouped: String,
    },
    /// It is no number.
    NotANumber {
        /// As it was written.
        text: String,
    },
    /// A fraction with zero below the line.
    ZeroDenominator {
        /// As it was written.
        text: String,
    },
    /// The number is too large to be held.
    TooLarge {
        /// As it was written.
        text: String,
    },
    /// A unit that this field does not take.
    UnknownUnit {
        /// The unit as it was written.
        written: String,
        /// The units that would do.
        offered: Vec<&'static str>,
    },
}

impl fmt::Display for Unreadable {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Empty => f.write_str("nothing is written here; write a number"),
            Self::Ambiguous { text, decimal, grouped } => {
                write!(f, "“{text}” could mean {decimal} or {grouped}; write {decimal} or {grouped}")
            }
            Self::NotANumber { text } => {
                write!(f, "“{text}” is not a number; write for example 53, 2.5, 2,5 or 1 1/8")
            }
            Self::ZeroDenominator { text } => {
                write!(f, "“{text}” divides by zero; write a fraction such as 5/8")
            }
            Self::TooLarge { text } => write!(f, "“{text}” is too large to calculate with; check the digits"),
            Self::UnknownUnit { written, offered } => {
                write!(f, "“{written}” is not a unit of this field; use {}", offered.join(", "))
            }
        }
    }
}

/// A number and the unit written behind it, if one was.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// The number as read.
    pub number: f64,
    /// The unit written behind it.
    pub unit: Option<&'static Unit>,
}

/// Reads a number that may carry one of the `offered` units.
///
/// # Errors
/// [`Unreadable`] says what is wrong and how to write it.
pub fn read(text: &str, offered: &[&'static Unit]) -> Result<Reading, Unreadable> {
    let text = text.trim();
    let (digits, written) = split_unit(text);
    if written.is_empty() {
        return Ok(Reading { number: read_number(digits)?, unit: None });
    }
    match offered.iter().find(|unit| unit.is_written(written)) {
        Some(&unit) => Ok(Reading { number: read_number(digits)?, unit: Some(unit) }),
        None if digits.is_empty() => Err(Unreadable::NotANumber { text: text.to_owned() }),
        None => Err(Unreadable::UnknownUnit {
            written: written.to_owned(),
            offered: offered.iter().map(|unit| unit.symbol).filter(|symbol| !symbol.is_empty()).collect(),
        }),
    }
}

/// Splits a text into its number and the unit behind it; either may be empty.
pub fn split_unit(text: &str) -> (&str, &str) {
    let text = text.trim();
    let digit = |c: char| c.is_ascii_digit();
    // From the end: what is no digit belongs to the unit, and so do digits that follow a letter of it.
    let mut number = text.trim_end_matches(|c| !digit(c));
    while !number.is_empty() {
        let before = number.trim_end_matches(digit);
        if !is_in_unit(before) {
            break;
        }
        number = before.trim_end_matches(|c| !digit(c));
    }
    // A decimal mark may end a number that is still being typed: it is no unit.
    let unit = text.get(number.len()..).unwrap_or_default();
    let marks = unit.len() - unit.trim_start_matches(['.', ',']).len();
    let (number, unit) = text.split_at(number.len() + marks);
    (number.trim_end(), unit.trim_start())
}

/// Whether digits behind this text stand in a unit (`g/m2`, `oz/ft2`, `HV10`): they follow a letter or
/// a caret.
fn is_in_unit(before: &str) -> bool {
    let exponent = before.trim_end_matches(['+', '-', '−']);
    match exponent.strip_suffix(['e', 'E']) {
        // `1e3`: the letter belongs to the number.
        Some(mantissa) if mantissa.ends_with(|c: char| c.is_ascii_digit() || c == '.') => false,
        _ => before.ends_with(|c: char| c.is_alphabetic() || c == '^'),
    }
}

/// A number as a whole one, where it is one from zero on that is held exactly: it is written to the
/// same digits, and much faster.
pub fn whole(number: f64) -> Option<u64> {
    const EXACT: f64 = (1_u64 << f64::MANTISSA_DIGITS) as f64;
    let is_whole = number.is_sign_positive() && number < EXACT && number.fract() == 0.0;
    is_whole.then_some(number as u64)
}

/// Reads digits with a point and an exponent, as a machine writes them: `53`, `2.5`, `-1e3`. Too large
/// a number is infinite; the words for infinity and for no number are none.
pub fn plain_number(text: &str) -> Option<f64> {
    let numeral = |b: u8| b.is_ascii_digit() || matches!(b, b'.' | b'+' | b'-' | b'e' | b'E');
    text.bytes().all(numeral).then(|| text.parse().ok()).flatten()
}

/// Reads a number without a unit.
///
/// # Errors
/// [`Unreadable`] says what is wrong and how to write it.
pub fn read_number(text: &str) -> Result<f64, Unreadable> {
    let text = text.trim();
    if text.is_empty() {
        return Err(Unreadable::Empty);
    }
    if text.contains(['/', '⁄']) { read_fraction(text) } else { read_decimal(text) }
}

/// `5/8`, `1 1/8`, `1-1/8`.
fn read_fraction(text: &str) -> Result<f64, Unreadable> {
    let unreadable = || Unreadable::NotANumber { text: text.to_owned() };
    let (before, below) = text.split_once(['/', '⁄']).ok_or_else(unreadable)?;
    let (negative, before) = match before.trim().strip_prefix(['-', '−']) {
        Some(rest) => (true, rest),
        None => (false, before.trim()),
    };
    let (whole, above) = match before.rsplit_once([' ', '-', '\u{a0}', '\u{2009}', '\u{202f}', '+']) {
        Some((whole, above)) => (whole.trim(), above),
        None => ("0", before),
    };
    let part = |digits: &str| -> Result<f64, Unreadable> {
        let digits = digits.trim();
        let plain = !digits.is_empty() && digits.len() <= 15 && digits.bytes().all(|b| b.is_ascii_digit());
        if plain { plain_number(digits).ok_or_else(unreadable) } else { Err(unreadable()) }
    };
    let (whole, above, below) = (part(whole)?, part(above)?, part(below)?);
    if below == 0.0 {
        return Err(Unreadable::ZeroDenominator { text: text.to_owned() });
    }
    let number = whole + above / below;
    Ok(if negative { -number } else { number })
}

fn read_decimal(text: &str) -> Result<f64, Unreadable> {
    // Most numbers are digits with a point at most, and nothing has to be made of them first.
    if let Some(number) = plain_number(text).filter(|number| number.is_finite()) {
        return Ok(number);
    }
    let unreadable = || Unreadable::NotANumber { text: text.to_owned() };
    let mut plain = String::with_capacity(text.len());
    for (at, part) in text.split([' ', '\u{a0}', '\u{2009}', '\u{202f}', '\'', '’']).enumerate() {
        // A space groups digits by three; anything else is two numbers.
        let digits = part.bytes().take_while(u8::is_ascii_digit).count();
        if at > 0 && digits != 3 {
            return Err(unreadable());
        }
        plain.push_str(part);
    }
    let plain = plain.replace('−', "-");
    let marks = |mark| plain.matches(mark).count();
    let plain = match (marks(','), marks('.')) {
        (0, 0 | 1) => plain,
        (1, 0) => comma_alone(text, &plain)?,
        (0, _) => ungroup(&plain, '.').ok_or_else(unreadable)?,
        (_, 0) => ungroup(&plain, ',').ok_or_else(unreadable)?,
        // Both marks: the last one is the decimal mark, the other groups digits.
        (_, 1) if plain.rfind('.') > plain.rfind(',') => {
            let (whole, rest) = plain.split_once('.').ok_or_else(unreadable)?;
            format!("{}.{rest}", ungroup(whole, ',').ok_or_else(unreadable)?)
        }
        (1, _) if plain.rfind(',') > plain.rfind('.') => {
            let (whole, rest) = plain.split_once(',').ok_or_else(unreadable)?;
            format!("{}.{rest}", ungroup(whole, '.').ok_or_else(unreadable)?)
        }
        _ => return Err(unreadable()),
    };
    let shape = plain.trim_start_matches(['-', '+']);
    // `inf`, `nan` and the like are words, not numbers.
    if !shape.starts_with(|c: char| c.is_ascii_digit() || c == '.') {
        return Err(unreadable());
    }
    let number = plain_number(&plain).ok_or_else(unreadable)?;
    if number.is_finite() { Ok(number) } else { Err(Unreadable::TooLarge { text: text.to_owned() }) }
}

/// One comma: a decimal mark, unless three digits behind it could be a group.
fn comma_alone(text: &str, plain: &str) -> Result<String, Unreadable> {
    let (whole, rest) = plain.split_once(',').unwrap_or((plain, ""));
    let decimal = format!("{whole}.{rest}");
    let digits = whole.trim_start_matches(['-', '+']);
    let could_group = rest.len() == 3
        && rest.bytes().all(|b| b.is_ascii_digit())
        && (1..=3).contains(&digits.len())
        && !digits.starts_with('0');
    if could_group {
        return Err(Unreadable::Ambiguous {
            text: text.to_owned(),
            decimal,
            grouped: format!("{whole}{rest}"),
        });
    }
    Ok(decimal)
}

/// Takes the group marks out of `1,234,567`, if the groups are of three digits.
fn ungroup(text: &str, mark: char) -> Option<String> {
    let sign = text.len() - text.trim_start_matches(['-', '+']).len();
    let (sign, digits) = text.split_at(sign);
    let mut groups = digits.split(mark);
    let first = groups.next()?;
    let mut plain = format!("{sign}{first}");
    let good = |group: &str| group.bytes().all(|b| b.is_ascii_digit());
    let grouped = digits.contains(mark);
    if !good(first) || first.is_empty() || (grouped && first.len() > 3) {
        return None;
    }
    for group in groups {
        if group.len() != 3 || !good(group) {
            return None;
        }
        plain.push_str(group);
    }
    Some(plain)
}

#[cfg(test)]
mod tests {
    use super::super::unit;
    use super::*;

    #[test]
    fn a_plain_number_is_made_of_digits() {
        for text in ["", ".", "-", "e5", "1e", "1.2.3", "five", "inf", "NaN", "1 000", "0x10", "1e5.0"] {
            assert_eq!(plain_number(text), None, "{text}");
        }
        assert_eq!(plain_number("-1e3"), Some(-1000.0));
        assert_eq!(plain_number("1e400"), Some(f64::INFINITY));
    }

    #[test]
    fn numbers_as_people_write_them() {
        let cases = [
            ("53", 53.0),
            ("2.5", 2.5),
            ("2,5", 2.5),
            ("0,125", 0.125),
            ("12 500", 12_500.0),
            ("12\u{202f}500,5", 12_500.5),
            ("1,234,567", 1_234_567.0),
            ("123,456,789", 123_456_789.0),
            ("123,456.5", 123_456.5),
            ("1.234.567", 1_234_567.0),
            ("1,234.5", 1234.5),
            ("1.234,5", 1234.5),
            ("1 1/8", 1.125),
            ("1-1/8", 1.125),
            ("5/8", 0.625),
            ("-1/4", -0.25),
            ("1e3", 1000.0),
            ("2.1E-2", 0.021),
            ("−40", -40.0),
            (".5", 0.5),
            ("5.", 5.0),
        ];
        for (text, number) in cases {
            assert_eq!(read_number(text), Ok(number), "{text}");
        }
    }

    #[test]
    fn what_is_refused_says_how_to_write_it() {
        let cases = [
            ("1,234", "could mean 1.234 or 1234"),
            ("12 50", "is not a number"),
            ("1,23,4", "is not a number"),
            ("1234,567,890", "is not a number"),
            (",234,567", "is not a number"),
            ("1234567890123456/2", "is not a number"),
            ("a/2", "is not a number"),
            ("/2", "is not a number"),
            ("1/0", "divides by zero"),
            ("inf", "is not a number"),
            ("NaN", "is not a number"),
            ("1e999", "too large"),
            ("five", "is not a number"),
            ("1/2/3", "is not a number"),
        ];
        for (text, part) in cases {
            let problem = read_number(text).unwrap_err().to_string();
            assert!(problem.contains(part), "{text}: {problem}");
        }
    }

    #[test]
    fn a_unit_behind_the_number_is_taken() {
        let offered = [&unit::UM, &unit::MIL, &unit::G_M2, &unit::INCH];
        let cases = [
            ("50 µm", 50.0, Some("µm")),
            ("50um", 50.0, Some("µm")),
            ("2 mil", 2.0, Some("mil")),
            ("381 g/m2", 381.0, Some("g/m²")),
            ("1 1/8 in", 1.125, Some("in")),
            ("1 1/8\"", 1.125, Some("in")),
            ("1e3", 1000.0, None),
            ("1e3 µm", 1000.0, Some("µm")),
            ("50", 50.0, None),
            ("5. µm", 5.0, Some("µm")),
        ];
        for (text, number, symbol) in cases {
            let reading = read(text, &offered).unwrap();
            assert_eq!((reading.number, reading.unit.map(|u| u.symbol)), (number, symbol), "{text}");
        }
        let problem = read("5 stone", &offered).unwrap_err().to_string();
        assert!(problem.contains("use µm, mil, g/m², in"), "{problem}");
    }

    /// From nought on, and up to where a number holds every whole one: 2 to the power of 53.
    #[test]
    fn a_whole_number_is_held_exactly() {
        let end = 9_007_199_254_740_992.0;
        for (number, whole_one) in [
            (0.0, Some(0)),
            (5.0, Some(5)),
            (end - 1.0, Some(9_007_199_254_740_991)),
            (end, None),
            (0.5, None),
            (-1.0, None),
            (f64::INFINITY, None),
        ] {
            assert_eq!(whole(number), whole_one, "{number}");
        }
    }

    /// Digits behind a letter of a unit are part of it, but for those of an exponent.
    #[test]
    fn a_unit_may_end_with_digits() {
        for (text, cut) in [
            ("5 tonne2", ("5", "tonne2")),
            ("7 g/m2", ("7", "g/m2")),
            ("1e3 mil", ("1e3", "mil")),
            ("1e-3mil", ("1e-3", "mil")),
            ("2.e3", ("2.e3", "")),
        ] {
            assert_eq!(split_unit(text), cut, "{text}");
        }
    }
}
