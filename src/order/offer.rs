//! The coat a process would give an order line, and by which standard.

use super::fit::{Mates, Narrowest};
use super::{Asked, OrderLine};
use crate::coat::{CoatClass, Factor, Process, class, factor};
use crate::quantity::Length;
use crate::site::Category;
use crate::site::life::thickness_needed;
use crate::source::{Source, Sourced, assumed, document};
use crate::table::{astm_b633, astm_b695, astm_f2329, hotdip_process, iso_1461, iso_4042, iso_10684};
use crate::thread::overtap::Allowance;

/// A coat on offer.
#[derive(Debug, Clone, Copy)]
pub struct Offer {
    /// The class it is ordered by.
    pub class: &'static CoatClass,
    /// The least thickness of a single article or place.
    pub min: Length,
    /// The greatest thickness to reckon with.
    pub max: Length,
    /// Where the greatest comes from.
    pub max_source: Source,
    /// Why this class.
    pub choice: Choice,
}

impl Offer {
    /// The average of the coat: as the class asks for it, or else its least.
    pub fn average(&self) -> Length {
        let average = self.class.average.map_or(self.min, |limit| limit.thickness);
        if average < self.min { self.min } else { average }
    }

    /// From its thickness to its mass, by the standard it is ordered by.
    pub fn factor(&self) -> &'static Factor {
        match self.class.process {
            Process::HotDip if self.class.document.name.starts_with("ISO") => &factor::ISO_1461,
            Process::HotDip => &factor::A123,
            Process::Mechanical => &factor::DEPOSIT,
            Process::Electroplated => &factor::A653,
        }
    }
}

/// Why a class was chosen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Choice {
    /// The order asks for it.
    Asked,
    /// The standard of the process for this thread.
    OfProcess,
    /// The thinnest class that is sure to last the years wanted.
    ForYears,
    /// The thickest class that fits; the years wanted need more, or no place says how much.
    Thickest,
    /// The usual class for the place, where no years are wanted.
    ForPlace,
}

/// Where a document gives only a least thickness, the greatest is taken half as thick again.
const HALF_AGAIN: Sourced<f64> = document::MACHINERYS_HANDBOOK
    .read("27th ed., p. 1793: + 50 % where only a least thickness is given")
    .gives(1.5);

/// The usual class where no years are wanted.
pub const FOR_PLACE: Source = assumed("thicker classes for harsher places");

/// The coat this process would give.
pub fn offer(line: &OrderLine, mates: &Mates, process: Process) -> Option<Offer> {
    match line.asked.filter(|asked| asked.process() == Some(process)) {
        Some(Asked::Class(class)) => return of_class(class, Choice::Asked),
        Some(Asked::Document(document)) => {
            let classes = class::of(document);
            return match process {
                Process::HotDip => of_class(kettle_class_of(line, classes)?, Choice::Asked),
                _ => graded(line, mates, process, classes),
            };
        }
        Some(Asked::Process(_)) | None => {}
    }
    match process {
        Process::HotDip => of_class(kettle_class(line)?, Choice::OfProcess),
        Process::Mechanical => graded(line, mates, process, astm_b695::CLASSES),
        Process::Electroplated if line.thread.is_metric() => graded(line, mates, process, iso_4042::CLASSES),
        Process::Electroplated => graded(line, mates, process, astm_b633::CLASSES),
    }
}

/// A class with its greatest thickness.
fn of_class(class: &'static CoatClass, choice: Choice) -> Option<Offer> {
    let min = class.single?.thickness;
    let (max, max_source) = match (class.average_max, class.process) {
        (Some(limit), _) => (limit.thickness, class.source(&limit)),
        (None, Process::HotDip) => (hotdip_process::SPUN_COAT.value.1, hotdip_process::SPUN_COAT.source),
        (None, _) => (min * HALF_AGAIN.value, HALF_AGAIN.source),
    };
    Some(Offer { class, min, max, max_source, choice })
}

/// Hot-dip has one class for a size.
fn kettle_class(line: &OrderLine) -> Option<&'static CoatClass> {
    let diameter = line.thread.diameter();
    let small = diameter <= Length::from_inch(0.375);
    let (classes, name) = match line.thread.is_metric() {
        true if diameter >= Length::from_mm(8.0) => (iso_10684::CLASSES, "M8 to M64"),
        true if diameter > Length::from_mm(6.0) => (iso_1461::CLASSES, "threads over 6 mm"),
        true => (iso_1461::CLASSES, "threads of 6 mm and under"),
        false if small => (astm_f2329::CLASSES, "3/8 in and under"),
        false => (astm_f2329::CLASSES, "over 3/8 in"),
    };
    classes.iter().find(|class| class.name == name)
}

/// Barrel and cell have classes by thickness: the thinnest that lasts, of those that fit a nut.
///
/// Electroplating is thin by nature: it is offered only as thick as a standard nut takes.
fn graded(line: &OrderLine, mates: &Mates, process: Process, classes: &'static [CoatClass]) -> Option<Offer> {
    let (needed, chosen) = match (line.place, line.years) {
        (Some(place), Some(years)) => (Some(thickness_needed(place, years)), Choice::ForYears),
        (Some(place), None) => (Some(usual(place, process)), Choice::ForPlace),
        // Nothing says how thick is enough.
        (None, _) => (None, Choice::Thickest),
    };
    let mut thickest = None;
    for class in thin_to_thick(classes) {
        let Some(offer) = of_class(class, chosen) else { continue };
        let fits = match mates.narrowest(process, offer.max) {
            Narrowest::Nut(Allowance::Standard) | Narrowest::Unknown => true,
            Narrowest::Nut(_) => process == Process::Mechanical,
            Narrowest::NoneTakes => false,
        };
        // The thinnest stands even where it does not fit: the fit then says why.
        if thickest.is_some() && !fits {
            break;
        }
        if needed.is_some_and(|needed| offer.min.um() >= needed.um() - 1e-9) {
            return Some(offer);
        }
        thickest = Some(Offer { choice: Choice::Thickest, ..offer });
    }
    thickest
}

/// Classes from the thinnest to the thickest; documents print them one way or the other.
fn thin_to_thick(classes: &'static [CoatClass]) -> impl Iterator<Item = &'static CoatClass> {
    let min = |class: Option<&CoatClass>| class.and_then(|class| class.single).map(|limit| limit.thickness);
    let rising = min(classes.first()) <= min(classes.last());
    (0..classes.len()).filter_map(move |at| classes.get(if rising { at } else { classes.len() - 1 - at }))
}

/// The class of a document on hot-dip for the size of the thread.
fn kettle_class_of(line: &OrderLine, classes: &'static [CoatClass]) -> Option<&'static CoatClass> {
    let small = line.thread.diameter() <= Length::from_inch(0.375);
    let names = if small { ["class D", "3/8 in and under"] } else { ["class C", "over 3/8 in"] };
    classes.iter().find(|class| names.contains(&class.name))
}

/// The usual thickness for a place where no years are wanted.
fn usual(place: Category, process: Process) -> Length {
    Length::from_um(match (place, process) {
        (Category::C1, Process::Mechanical) => 8.0,
        (Category::C2, Process::Mechanical) => 12.0,
        (_, Process::Mechanical) => 50.0,
        (Category::C1, _) => 5.0,
        (Category::C2, _) => 8.0,
        (Category::C3, _) => 12.0,
        (_, _) => 25.0,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn classes_come_from_the_thinnest_to_the_thickest() {
        for classes in [astm_b695::CLASSES, iso_4042::CLASSES, astm_b633::CLASSES] {
            let min: Vec<f64> = thin_to_thick(classes)
                .filter_map(|class| class.single)
                .map(|limit| limit.thickness.um())
                .collect();
            assert!(min.len() > 2 && min.is_sorted(), "{min:?}");
        }
    }
}
