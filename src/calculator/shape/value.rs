//! From the text of a field to a typed value and back.

use std::borrow::Cow;
use std::fmt::Write;

use super::{Fault, FieldAbout, Kind};
use crate::quantity::number::{self, Reading, Unreadable};
use crate::quantity::{Dimension, Hardness, Quantity, Scale, Shown, Unit, unit};

/// A value that a field can ask for.
///
/// What is written is read back as the same value.
pub trait FieldValue: Sized {
    /// Reads the text of a field, which is not empty.
    ///
    /// # Errors
    /// The [`Fault`] says what is wrong and what would be right.
    fn read(text: &str, about: &FieldAbout) -> Result<Self, Fault>;

    /// Writes it as the field reads it.
    fn write(&self, about: &FieldAbout) -> Cow<'static, str>;
}

/// A quantity with the unit it was written in, in which an answer is then shown.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Written<Q> {
    /// The quantity.
    pub quantity: Q,
    /// The unit.
    pub unit: &'static Unit,
}

/// One of the published, or the user's own value, which another field then asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum OrOwn<T> {
    /// A published one, by its key.
    Published(T),
    /// The user's own, under the key `own`.
    Own,
}

/// A text that the calculator itself reads, because its sense depends on other fields.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RawText(pub String);

impl<Q: Quantity> FieldValue for Q {
    fn read(text: &str, about: &FieldAbout) -> Result<Self, Fault> {
        Written::read(text, about).map(|written| written.quantity)
    }

    fn write(&self, about: &FieldAbout) -> Cow<'static, str> {
        let offered = about.units().iter().copied().filter(|unit| unit.dimension == Q::DIMENSION);
        write_base(self.base(), offered, Q::DIMENSION).into()
    }
}

impl<Q: Quantity> FieldValue for Written<Q> {
    fn read(text: &str, about: &FieldAbout) -> Result<Self, Fault> {
        let (number, unit) = about.measured(text)?;
        if unit.dimension == Q::DIMENSION {
            return Ok(Self { quantity: Q::of(number, unit), unit });
        }
        let offered = about.units().iter().filter(|unit| unit.dimension == Q::DIMENSION);
        Err(Fault::Unreadable(Unreadable::UnknownUnit {
            written: unit.symbol.to_owned(),
            offered: offered.map(|unit| unit.symbol).collect(),
        }))
    }

    fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
        write_base(self.quantity.base(), std::iter::once(self.unit), Q::DIMENSION).into()
    }
}

impl FieldValue for Hardness {
    fn read(text: &str, about: &FieldAbout) -> Result<Self, Fault> {
        let (number, unit) = about.measured(text)?;
        match Scale::of_unit(unit) {
            Some(scale) => Ok(Self { scale, number }),
            None => Err(Fault::Unreadable(Unreadable::UnknownUnit {
                written: unit.symbol.to_owned(),
                offered: about.units().iter().map(|unit| unit.symbol).collect(),
            })),
        }
    }

    fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
        with_unit(self.number, self.scale.unit()).into()
    }
}

impl FieldValue for u32 {
    fn read(text: &str, about: &FieldAbout) -> Result<Self, Fault> {
        about.counted(text)
    }

    fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
        self.to_string().into()
    }
}

impl FieldValue for bool {
    fn read(text: &str, about: &FieldAbout) -> Result<Self, Fault> {
        about.chosen(text, |key| Some(key == "yes"))
    }

    fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
        if *self { "yes" } else { "no" }.into()
    }
}

impl<T: FieldValue> FieldValue for OrOwn<T> {
    fn read(text: &str, about: &FieldAbout) -> Result<Self, Fault> {
        if text == "own" { Ok(Self::Own) } else { T::read(text, about).map(Self::Published) }
    }

    fn write(&self, about: &FieldAbout) -> Cow<'static, str> {
        match self {
            Self::Published(published) => published.write(about),
            Self::Own => "own".into(),
        }
    }
}

impl FieldValue for RawText {
    fn read(text: &str, _: &FieldAbout) -> Result<Self, Fault> {
        Ok(Self(text.to_owned()))
    }

    fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
        self.0.clone().into()
    }
}

impl FieldAbout {
    /// A number within the field's bounds, with its unit: the one written behind it, else the first
    /// that the field offers. Beside those offered the base unit of each dimension is read.
    ///
    /// # Errors
    /// [`Fault::Unreadable`], [`Fault::TooSmall`], [`Fault::TooLarge`].
    pub fn measured(&self, text: &str) -> Result<(f64, &'static Unit), Fault> {
        let Kind::Quantity { units, bounds } = self.kind else { return Err(self.of_another_kind(text)) };
        let Some(&first) = units.first() else { return Err(self.of_another_kind(text)) };
        let Reading { number, unit } = match number::read(text, units) {
            Err(unknown @ Unreadable::UnknownUnit { .. }) => {
                let bases: Vec<_> = units.iter().filter_map(|unit| base_unit(unit.dimension)).collect();
                number::read(text, &bases).map_err(|_| unknown)
            }
            read => read,
        }
        .map_err(Fault::Unreadable)?;
        let unit = unit.unwrap_or(first);
        let digits = number::split_unit(text).0;
        // As precise as it was written; a sixty-fourth of an inch has six decimals.
        let decimals = match digits.rsplit_once(['.', ',']) {
            Some((_, rest)) => rest.len().min(6) as u8,
            None => {
                (0..6).find(|places| (number * 10f64.powi(i32::from(*places))).fract() == 0.0).unwrap_or(6)
            }
        };
        match bounds.fault(Shown { number, unit, decimals }, units) {
            Some(fault) => Err(fault),
            None => Ok((number, unit)),
        }
    }

    /// A whole number within the field's bounds.
    ///
    /// # Errors
    /// [`Fault::Unreadable`], [`Fault::NotWhole`], [`Fault::TooSmall`], [`Fault::TooLarge`].
    pub fn counted(&self, text: &str) -> Result<u32, Fault> {
        let Kind::Count { min, max } = self.kind else { return Err(self.of_another_kind(text)) };
        let number = number::read(text, &[&unit::PIECES]).map_err(Fault::Unreadable)?.number;
        let pieces = |number| Shown::plain(number, 0);
        if number.fract() != 0.0 {
            return Err(Fault::NotWhole { value: number });
        }
        if number < f64::from(min) {
            let (value, min) = (pieces(number), pieces(f64::from(min)));
            return Err(Fault::TooSmall { value, min, why: "", meant: None });
        }
        if number > f64::from(max) {
            let (value, max) = (pieces(number), pieces(f64::from(max)));
            return Err(Fault::TooLarge { value, max, why: "", meant: None });
        }
        // In range and whole: the conversion is exact.
        Ok(number as u32)
    }

    /// One of the choices, turned into a type by its key.
    ///
    /// # Errors
    /// [`Fault::NotAChoice`].
    pub fn chosen<T>(&self, text: &str, from_key: impl Fn(&str) -> Option<T>) -> Result<T, Fault> {
        let Kind::Choice(choices) = self.kind else { return Err(self.of_another_kind(text)) };
        let chosen = choices.iter().find(|choice| choice.key == text);
        chosen.and_then(|choice| from_key(choice.key)).ok_or_else(|| Fault::NotAChoice {
            text: text.to_owned(),
            offered: choices.iter().map(|choice| choice.key).collect(),
        })
    }

    /// A field whose kind does not fit its type; no constructor of [`Field`](super::Field) makes one.
    fn of_another_kind(&self, text: &str) -> Fault {
        Fault::NotUnderstood(format!("“{text}” is not what “{}” asks for", self.label))
    }
}

/// The unit in which a dimension is held.
fn base_unit(dimension: Dimension) -> Option<&'static Unit> {
    unit::ALL.iter().copied().find(|unit| unit.dimension == dimension && is_base(unit))
}

fn is_base(unit: &Unit) -> bool {
    unit.factor == 1.0 && unit.offset == 0.0
}

/// A value held as `base`: in the first of the units in which a number of few decimals reads back
/// to the same value, or to one that differs by no more than a sum leaves over (75 µm, and not 75.00000000000001 µm);
/// else with all its digits.
fn write_base(base: f64, units: impl Iterator<Item = &'static Unit> + Clone, dimension: Dimension) -> String {
    let in_unit = |unit: &Unit| (base - unit.offset) / unit.factor;
    let read = |number: f64, unit: &Unit| number * unit.factor + unit.offset;
    let reads_back = |number: f64, unit: &Unit| read(number, unit) == base;
    let rounded = |unit: &Unit| (in_unit(unit) * PLAIN).round() / PLAIN;
    let plain = || {
        units.clone().find_map(|unit| {
            let number = rounded(unit);
            reads_back(number, unit).then(|| with_unit(number, unit))
        })
    };
    let but_for_a_sum = || {
        units.clone().find_map(|unit| {
            let number = rounded(unit);
            let is_meant = (read(number, unit) - base).abs() <= LEFT_OVER * base.abs();
            (is_meant && number.abs() < LONGEST).then(|| with_unit(number, unit))
        })
    };
    let exact = || {
        units.clone().find_map(|unit| {
            let number = in_unit(unit);
            let beside = [number, number.next_up(), number.next_down()];
            beside.into_iter().find(|number| reads_back(*number, unit)).map(|number| with_unit(number, unit))
        })
    };
    plain().or_else(but_for_a_sum).or_else(exact).unwrap_or_else(|| {
        match (base_unit(dimension), units.clone().next()) {
            // A plain number has no sign to be known by; the nearest in the field's own unit is written.
            (Some(held), Some(unit)) if held.symbol.is_empty() => with_unit(in_unit(unit), unit),
            (Some(held), _) => with_unit(base, held),
            (None, _) => base.to_string(),
        }
    })
}

/// Nine decimals: more than anybody types, fewer than a number that only a computer would write.
const PLAIN: f64 = 1e9;
/// What a few multiplications leave over, as a share of the value.
const LEFT_OVER: f64 = 4.0 * f64::EPSILON;
/// A longer number has no digits to spare behind nine decimals.
const LONGEST: f64 = 1e4;

fn with_unit(number: f64, unit: &Unit) -> String {
    // Room for most numbers with their unit; writing to a string cannot fail.
    let mut text = String::with_capacity(24);
    let _ = match number::whole(number) {
        Some(whole) => write!(text, "{whole}"),
        None => write!(text, "{number}"),
    };
    if !unit.symbol.is_empty() {
        text.push(' ');
        text.push_str(unit.symbol);
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::calculator::Bound;
    use crate::quantity::{Length, PlainNumber};

    static BOTH: [&Unit; 2] = [&unit::UM, &unit::G_M2];
    static SHARES: [&Unit; 1] = [&unit::PERCENT];

    fn field(units: &'static [&'static Unit]) -> FieldAbout {
        let most = Shown { number: 100.0, unit: units[0], decimals: 0 };
        FieldAbout::quantity("field", "Field", units, Bound::ZeroTo(most, ""), "")
    }

    /// A unit that the field offers for another kind of quantity is refused, and those that fit are named.
    #[test]
    fn a_unit_of_another_quantity_is_refused() {
        let about = field(&BOTH);
        assert_eq!(Written::<Length>::read("50 µm", &about).unwrap().quantity, Length::from_um(50.0));
        match Written::<Length>::read("50 g/m²", &about) {
            Err(Fault::Unreadable(Unreadable::UnknownUnit { written, offered })) => {
                assert_eq!((written.as_str(), offered), ("g/m²", vec!["µm"]));
            }
            other => panic!("{other:?}"),
        }
    }

    /// A plain number has no sign to be known by: whatever it is, it is written in the unit of its field.
    #[test]
    fn a_share_is_written_in_per_cent() {
        let about = field(&SHARES);
        for part in 0..2000 {
            let share = PlainNumber::from_one(f64::from(part) / 1999.0);
            let text = share.write(&about);
            assert!(text.ends_with(" %"), "{part}: {text}");
            let back = PlainNumber::read(&text, &about).unwrap();
            assert!((back.one() - share.one()).abs() < 1e-15, "{part}: {text}");
        }
    }

    /// What a sum leaves over is not written; what somebody typed is, to its last digit.
    #[test]
    fn a_sum_is_written_without_what_it_leaves_over() {
        let about = field(&BOTH);
        let write = |mm: f64| Length::from_mm(mm).write(&about);
        assert_ne!(1.5 * Length::from_um(50.0), Length::from_um(75.0));
        assert_eq!(write(1.5 * 0.05), "75 µm");
        assert_eq!(Length::from_mil(1.7).write(&about), "43.18 µm");
        assert_eq!(write(0.050_000_000_001), "50.000000001 µm");
    }
}
