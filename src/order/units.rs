//! An assessment in the units that its reader is used to.

use super::{Assessment, ProcessAssessment};
use crate::quantity::Units;

impl Assessment {
    /// The assessment in these units; the calculators behind its reasons are filled in as they were.
    #[must_use]
    pub fn in_units(mut self, units: Units) -> Self {
        if units == Units::AsPrinted {
            return self;
        }
        for text in [&mut self.headline, &mut self.answer.text, &mut self.answer.order] {
            *text = units.sentence(text).into_owned();
        }
        self.figures.iter_mut().for_each(|figure| figure.convert(units));
        self.processes.iter_mut().for_each(|process| process.convert(units));
        self.notes.iter_mut().for_each(|note| note.convert(units));
        self.pictures = self.pictures.into_iter().map(|picture| picture.in_units(units)).collect();
        self
    }
}

impl ProcessAssessment {
    fn convert(&mut self, units: Units) {
        self.figures.iter_mut().for_each(|figure| figure.convert(units));
        if let Some(change) = &mut self.change {
            *change = units.sentence(change).into_owned();
        }
        self.findings.iter_mut().chain(&mut self.folded).for_each(|finding| finding.convert(units));
    }
}
