//! A report in the units that its reader is used to.
//!
//! The working keeps the units of its formulas: their constants are published in them, and a sum in
//! other units would be another sum.

use std::borrow::Cow;

use super::picture::Picture;
use super::{Figure, Finding, Note, Report, Section, Value};
use crate::quantity::Units;

impl Report {
    /// The report with everything but its working in these units.
    #[must_use]
    pub fn in_units(mut self, units: Units) -> Self {
        if units == Units::AsPrinted {
            return self;
        }
        self.headline = units.sentence(&self.headline).into_owned();
        self.figures.iter_mut().for_each(|figure| figure.convert(units));
        self.sections.iter_mut().for_each(|section| section.convert(units));
        self.findings.iter_mut().for_each(|finding| finding.convert(units));
        self.notes.iter_mut().for_each(|note| note.convert(units));
        self.picture = self.picture.map(|picture| picture.in_units(units));
        self
    }
}

impl Figure {
    /// Shows the figure in these units.
    pub fn convert(&mut self, units: Units) {
        convert(&mut self.name, units);
        match &mut self.value {
            Value::One(one) => *one = units.show(*one),
            Value::Range(min, max) => (*min, *max) = (units.show(*min), units.show(*max)),
            Value::Words(words) => convert(words, units),
        }
    }
}

impl Section {
    fn convert(&mut self, units: Units) {
        convert(&mut self.title, units);
        self.figures.iter_mut().for_each(|figure| figure.convert(units));
    }
}

impl Finding {
    /// Says the finding in these units; the calculator behind it is filled in as it was.
    pub fn convert(&mut self, units: Units) {
        set(&mut self.text, |text| units.sentence(text));
    }
}

impl Note {
    /// Says the note in these units.
    pub fn convert(&mut self, units: Units) {
        set(&mut self.text, |text| units.sentence(text));
    }
}

impl Picture {
    /// The picture in these units.
    #[must_use]
    pub fn in_units(mut self, units: Units) -> Self {
        match &mut self {
            Self::Scale { title, .. }
            | Self::Bars { title, .. }
            | Self::ThreadFit { title, .. }
            | Self::Dots { title, .. }
            | Self::Rulers { title, .. }
            | Self::Part { title, .. } => convert(title, units),
        }
        match &mut self {
            Self::Scale { bands, marks, .. } => {
                for band in bands {
                    (band.from, band.to) = (units.show(band.from), units.show(band.to));
                    convert(&mut band.label, units);
                }
                for mark in marks {
                    mark.at = units.show(mark.at);
                    convert(&mut mark.label, units);
                }
            }
            Self::Bars { bars, line, .. } => {
                for bar in bars {
                    (bar.from, bar.to) = (units.show(bar.from), units.show(bar.to));
                    convert(&mut bar.label, units);
                }
                if let Some(line) = line {
                    line.at = units.show(line.at);
                }
            }
            Self::ThreadFit { unit, .. } => *unit = units.unit(unit),
            Self::Dots { dots, limits, marks, .. } => {
                dots.iter_mut().for_each(|dot| *dot = units.show(*dot));
                limits.iter_mut().chain(marks).for_each(|mark| mark.at = units.show(mark.at));
            }
            Self::Rulers { rows, marks, .. } => {
                let in_rows = rows.iter_mut().flat_map(|row| &mut row.marks).map(|(mark, _)| mark);
                in_rows.chain(marks).for_each(|mark| mark.at = units.show(mark.at));
            }
            Self::Part { unit, .. } => *unit = units.unit(unit),
        }
        self
    }
}

/// Sets a name in these units, where that changes it.
fn convert(text: &mut Cow<'static, str>, units: Units) {
    set(text, |text| units.text(text));
}

fn set(text: &mut Cow<'static, str>, convert: impl Fn(&str) -> Cow<'_, str>) {
    if let Cow::Owned(converted) = convert(text) {
        *text = Cow::Owned(converted);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::calculator::Bar;
    use crate::quantity::{Shown, unit};

    /// The names at a picture are converted with its numbers.
    #[test]
    fn a_picture_is_named_in_the_units_of_its_numbers() {
        let of = |number| Shown { number, unit: &unit::UM, decimals: 0 };
        let bar = Bar { label: "below 50\u{a0}µm".into(), from: of(0.0), to: of(50.0), marked: false };
        let (title, line) = ("Coats up to 50\u{a0}µm.".into(), None);
        let picture = Picture::Bars { title, bars: vec![bar], line, logarithmic: false };
        let Picture::Bars { title, bars, .. } = picture.in_units(Units::Inch) else { panic!() };
        assert_eq!(title, "Coats up to 2.0\u{a0}mil.");
        assert_eq!((bars[0].label.as_ref(), bars[0].to.unit), ("below 2.0\u{a0}mil", &unit::MIL));
    }
}
