//! An axis with ticks and numerals.

use super::measure::{LINE, width_of};
use super::{Anchor, Shape};
use crate::quantity::Unit;

/// From values to places.
#[derive(Debug, Clone)]
pub struct Axis {
    min: f64,
    max: f64,
    logarithmic: bool,
    left: f64,
    right: f64,
    unit: &'static Unit,
}

/// Pixels below the axis that its ticks, its numerals and its unit take.
pub const FOOT: f64 = 8.0 + 2.0 * LINE;
/// Pixels between the middles of two numerals, at least.
const APART: f64 = 64.0;

impl Axis {
    /// An axis over these values, from one end of the picture to the other. It begins at zero where
    /// that costs little, and has room at both ends.
    pub fn over(values: &[f64], unit: &'static Unit, logarithmic: bool, width: f64) -> Self {
        let ends = values.iter().copied().filter(|value| value.is_finite() && (!logarithmic || *value > 0.0));
        let (min, max) =
            ends.fold((f64::MAX, f64::MIN), |(min, max), value| (min.min(value), max.max(value)));
        let (min, max) = if min > max { (1.0, 10.0) } else { (min, max) };
        let (min, max) = if logarithmic {
            let spare = ((max / min).log10() * 0.06).max(0.1);
            (min * 10f64.powf(-spare), max * 10f64.powf(spare))
        } else {
            let spare = if max > min { (max - min) * 0.08 } else { max.abs().max(1.0) * 0.1 };
            let from_zero = min >= 0.0 && min <= (max - min) * 0.6;
            (if from_zero { 0.0 } else { min - spare }, max + spare)
        };
        Self { min, max, logarithmic, left: 6.0, right: width - 6.0, unit }
    }

    /// The place of a value; one beyond the ends stands at the end.
    pub fn at(&self, value: f64) -> f64 {
        let share = if self.logarithmic {
            (value.max(f64::MIN_POSITIVE) / self.min).ln() / (self.max / self.min).ln()
        } else {
            (value - self.min) / (self.max - self.min)
        };
        self.left + share.clamp(0.0, 1.0) * (self.right - self.left)
    }

    /// Lines over the whole height at every numeral: drawn first, below everything.
    pub fn grid(&self, top: f64, bottom: f64) -> Vec<Shape> {
        let line = |(value, _): (f64, String)| {
            let x = self.at(value);
            Shape::Line { class: "grid", from: (x, top), to: (x, bottom) }
        };
        self.ticks().into_iter().map(line).collect()
    }

    /// The axis itself, its ticks, its numerals, its unit, and that it is logarithmic where it is.
    pub fn foot(&self, y: f64) -> Vec<Shape> {
        let mut shapes = vec![Shape::Line { class: "axis", from: (self.left, y), to: (self.right, y) }];
        for (value, numeral) in self.ticks() {
            let x = self.at(value);
            shapes.push(Shape::Line { class: "axis", from: (x, y), to: (x, y + 6.0) });
            // At the ends a numeral keeps inside the picture.
            let half = width_of(&numeral) / 2.0;
            let x = x.max(self.left - 6.0 + half).min(self.right + 6.0 - half);
            let at = (x, y + LINE);
            shapes.push(Shape::Text { class: "numeral", at, anchor: Anchor::Middle, text: numeral });
        }
        let kind = if self.logarithmic { "logarithmic scale" } else { "" };
        let words: Vec<&str> = [self.unit.symbol, kind].into_iter().filter(|word| !word.is_empty()).collect();
        if !words.is_empty() {
            let at = (self.right, y + 2.0 * LINE);
            shapes.push(Shape::Text { class: "unit", at, anchor: Anchor::End, text: words.join(", ") });
        }
        shapes
    }

    /// The values at which numerals stand, as round as there is room for.
    fn ticks(&self) -> Vec<(f64, String)> {
        let room = ((self.right - self.left) / APART).max(2.0);
        if self.logarithmic { self.decades(room) } else { self.steps(room) }
    }

    fn steps(&self, room: f64) -> Vec<(f64, String)> {
        let raw = (self.max - self.min) / room;
        let power = 10f64.powf(raw.log10().floor());
        let step = [1.0, 2.0, 5.0, 10.0].into_iter().map(|round| round * power).find(|step| *step >= raw);
        let step = step.unwrap_or(power * 10.0);
        let decimals = (-step.log10().floor()).max(0.0) as usize;
        let (first, last) = ((self.min / step).ceil() as i64, (self.max / step).floor() as i64);
        (first..=last)
            .map(|count| count as f64 * step)
            .map(|value| (value, numeral(value, decimals)))
            .collect()
    }

    fn decades(&self, room: f64) -> Vec<(f64, String)> {
        let (first, last) = (self.min.log10().floor() as i32, self.max.log10().ceil() as i32);
        let finest: [&[f64]; 3] = [&[1.0, 2.0, 5.0], &[1.0, 3.0], &[1.0]];
        let of = |rounds: &[f64]| -> Vec<f64> {
            let all =
                (first..=last).flat_map(|power| rounds.iter().map(move |round| round * 10f64.powi(power)));
            all.filter(|value| (self.min..=self.max).contains(value)).collect()
        };
        let fits = finest.iter().map(|rounds| of(rounds)).find(|values| values.len() as f64 <= room);
        let values = fits.unwrap_or_else(|| of(&[1.0]));
        let decimals = |value: f64| (-value.log10().floor()).max(0.0) as usize;
        values.into_iter().map(|value| (value, numeral(value, decimals(value)))).collect()
    }
}

fn numeral(value: f64, decimals: usize) -> String {
    let text = format!("{value:.decimals$}");
    match text.strip_prefix('-') {
        Some(digits) if digits.bytes().all(|byte| matches!(byte, b'0' | b'.')) => digits.to_owned(),
        Some(digits) => format!("−{digits}"),
        None => text,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::unit;

    fn numerals(values: &[f64], logarithmic: bool, width: f64) -> String {
        let axis = Axis::over(values, &unit::UM, logarithmic, width);
        axis.ticks().into_iter().map(|(_, numeral)| numeral).collect::<Vec<_>>().join(" ")
    }

    #[test]
    fn numerals_are_round_and_have_room() {
        assert_eq!(numerals(&[3.0, 80.0], false, 300.0), "0 20 40 60 80");
        assert_eq!(numerals(&[380.0, 540.0], false, 300.0), "400 450 500 550");
        assert_eq!(
            numerals(&[0.0, 0.04], false, 700.0),
            "0.000 0.005 0.010 0.015 0.020 0.025 0.030 0.035 0.040"
        );
        assert_eq!(numerals(&[-40.0, 10.0], false, 300.0), "−40 −20 0");
        assert_eq!(numerals(&[0.5, 150.0], true, 300.0), "1 10 100");
        assert_eq!(numerals(&[2.0, 40.0], true, 700.0), "2 5 10 20 50");
        assert_eq!(numerals(&[7.0], false, 300.0), "6.5 7.0 7.5");
        assert_eq!(numerals(&[], true, 300.0), "1 2 5 10");
    }
}
