//! The coat a process would give an order line, and by which standard.

use std::sync::OnceLock;

use super::threads::{is_astm, is_metric, is_spun, ways};
use super::{Asked, OrderLine};
use crate::coat::{CoatClass, Process, class};
use crate::part;
use crate::quantity::Length;
use crate::rule::{Choice, Offer};
use crate::site::life::thickness_needed;
use crate::site::{Categories, Category};
use crate::source::{Document, Source, document};
use crate::steel::{Grade, structural};
use crate::table::{
    astm_b633, astm_b695, astm_f1941, astm_f2329, hotdip_process, iso_1461, iso_4042, iso_10684,
};
use crate::thread::Thread;
use crate::thread::pair::{Search, Ways};

/// Where a document gives only a minimum thickness, the maximum is taken half as thick again.
const HALF_AGAIN: f64 = 1.5;
const HALF_AGAIN_SOURCE: Source =
    document::MACHINERYS_HANDBOOK.read("27th ed., p. 1793: + 50 % where only a least thickness is given");

/// What is hot-dipped is mostly larger than the limits of its classes: so it is taken where nobody says the
/// size, which is then asked for.
const USUAL_SIZE: Length = Length::from_mm(12.0);

/// The thickest plate for which a machine thread as ordered may still have room, where its size is not said.
const THICKEST_PLATE: Length = Length::from_um(12.0);

/// The coat this process would give.
pub fn offer(line: &OrderLine, search: Option<&Search>, process: Process) -> Option<Offer> {
    match line.asked.filter(|asked| asked.process() == Some(process)) {
        Some(Asked::Class(keyed)) => return Some(wiped(line, of_class(keyed.class()?, Choice::Asked)?)),
        // The class that the product standard lists stands wherever nobody says another.
        Some(Asked::Document(_)) if process == Process::Mechanical && is_structural(line) => {}
        Some(Asked::Document(document)) => {
            return match process {
                Process::HotDip => {
                    let class = hot_dip_class_of(line, class::of(document))?;
                    Some(wiped(line, of_class(class, Choice::Asked)?))
                }
                _ => graded(line, search, process, document),
            };
        }
        Some(Asked::Process(_) | Asked::Other(_) | Asked::Either(_)) | None => {}
    }
    match process {
        Process::HotDip => Some(wiped(line, of_class(hot_dip_class(line)?, Choice::OfStandard)?)),
        Process::Mechanical if is_structural(line) => {
            of_class(class_named(astm_b695::CLASSES, STRUCTURAL_CLASS)?, Choice::OfStandard)
        }
        Process::Mechanical => graded(line, search, process, &document::ASTM_B695),
        Process::Electroplated if is_metric(line) => graded(line, search, process, &document::ISO_4042_1999),
        Process::Electroplated => graded(line, search, process, &document::ASTM_F1941),
    }
}

/// The offer by the next thinner class of the same document, where nobody named the class. Where no years are
/// wanted it is no thinner than plate usually is in such a place.
pub fn thinner(line: &OrderLine, offer: &Offer) -> Option<Offer> {
    if matches!(offer.choice, Choice::Asked | Choice::OfStandard) {
        return None;
    }
    let thin = rising(offer.class.document).iter().take_while(|thin| thin.min < offer.min).last()?;
    let place = line.place.map_or(Category::C3, |place| place.harshest);
    let least = usual(place, Process::Electroplated);
    ((line.years.is_some() && line.place.is_some()) || thin.min >= least).then_some(*thin)
}

/// The class of ASTM B695 that ASTM F3125 lists for mechanically coated A325, and so for its nuts and washers.
const STRUCTURAL_CLASS: &str = "class 55";

fn is_structural(line: &OrderLine) -> bool {
    let grade = line.steel.and_then(|steel| steel.grade()).map(|properties| properties.grade);
    // A hardened washer is ordered for other bolts too: years that are wanted decide first.
    let asked = || line.asked.and_then(|asked| asked.process()) == Some(Process::Mechanical);
    grade.is_some_and(|grade| {
        Grade::AS_A325.contains(&grade)
            || (grade == Grade::F436 && line.years.is_none() && asked())
            || (line.part.is_nut()
                && line.thread.and_then(|thread| structural::bolt_of_nut(grade, thread)).is_some())
    })
}

fn class_named(classes: &'static [CoatClass], name: &str) -> Option<&'static CoatClass> {
    classes.iter().find(|class| class.name == name)
}

/// A class with its thickness: the minimum, and the maximum to reckon with.
fn of_class(class: &'static CoatClass, choice: Choice) -> Option<Offer> {
    let min = class.single.as_ref()?.thickness;
    let (max, max_source) = match (class.average_max, class.process) {
        (Some(limit), _) => (limit.thickness, class.source(&limit)),
        (None, Process::HotDip) => (hotdip_process::SPUN_COAT.value.1, hotdip_process::SPUN_COAT.source),
        (None, _) => (min * HALF_AGAIN, HALF_AGAIN_SOURCE),
    };
    Some(Offer { class, min, max, max_source, choice })
}

/// The offer with the thicker maximum of a part that is not spun.
fn wiped(line: &OrderLine, offer: Offer) -> Offer {
    let wiped = hotdip_process::WIPED_COAT_MAX;
    if offer.class.process != Process::HotDip || is_spun(line) || offer.max >= wiped.value {
        return offer;
    }
    Offer { max: wiped.value, max_source: wiped.source, ..offer }
}

/// Hot-dip has one class for a size: metric parts stand under ISO 10684, inch parts and ASTM or SAE
/// grades under ASTM F2329.
fn hot_dip_class(line: &OrderLine) -> Option<&'static CoatClass> {
    if !is_metric(line) || is_astm(line) {
        return hot_dip_class_of(line, astm_f2329::CLASSES);
    }
    let diameter = line.thread.map_or(USUAL_SIZE, Thread::diameter);
    // ISO 10684 is for machine threads.
    let is_forming = line.part.threaded() == part::Threaded::Forming;
    let (classes, name) = if diameter >= Length::from_mm(8.0) && !is_forming {
        (iso_10684::CLASSES, "M8 to M64")
    } else if diameter > Length::from_mm(6.0) {
        (iso_1461::CLASSES, "threads over 6 mm")
    } else {
        (iso_1461::CLASSES, "threads of 6 mm and under")
    };
    class_named(classes, name)
}

/// The class of a document for the size of the line.
fn hot_dip_class_of(line: &OrderLine, classes: &'static [CoatClass]) -> Option<&'static CoatClass> {
    let washer = line.thread.and_then(|thread| part::thickness_of_washer(line.part, thread));
    class::of_size(classes, line.thread.map_or(USUAL_SIZE, Thread::diameter), washer)
}

/// Barrel and cell have classes by thickness: the thinnest that lasts, of those that go together.
///
/// Electroplating is thin by nature: it is offered only as thick as the pair that was ordered takes;
/// a thread without allowance is left the room of a thin plate by its maker.
fn graded(line: &OrderLine, search: Option<&Search>, process: Process, document: &Document) -> Option<Offer> {
    let place = line.place.unwrap_or_else(|| Categories::from(Category::C3));
    let (needed, chosen) = match line.years {
        Some(years) if line.place.is_some() => (thickness_needed(place.rates(), years), Choice::ForYears),
        _ => (usual(place.harshest, process), Choice::ForPlace),
    };
    let usual = chosen == Choice::ForPlace;
    // Where nobody wants years, the class is one that a published nut takes.
    let published = usual && search.is_some_and(Search::has_published_nut);
    let ways = ways(line, process, chosen);
    let ways = |of: &Offer| match ways(of.min) {
        Ways::AnyNut if published => Ways::PublishedNut,
        ways => ways,
    };
    let fits = |of: &Offer| match search {
        Some(search) => search.takes(process, (of.min, of.max), ways(of), usual) != Some(false),
        // Where nobody says the thread, plate is no thicker than most of them take.
        None => process != Process::Electroplated || !line.part.has_mate() || of.min <= THICKEST_PLATE,
    };
    let is_enough = |of: &Offer| of.min.um() >= needed.um() - 1e-9;
    let (thinnest, thicker) = rising(document).split_first()?;
    // Of what is taken at most, the thinnest stands in any case.
    let thicker = || thicker.iter().take_while(|of| line.most.is_none_or(|most| !of.max.exceeds(most)));
    // It stands even where it does not fit: the fit then says why.
    let (mut thickest, mut known_to_fit) = (thinnest, true);
    for next in thicker() {
        // What takes a coat takes a thinner one in the same ways, so a thicker one may answer for it.
        let answers = known_to_fit || ways(next) == ways(thickest);
        if is_enough(thickest) || (!answers && !fits(thickest)) {
            break;
        }
        (thickest, known_to_fit) = (next, false);
    }
    if known_to_fit || fits(thickest) {
        let choice = if is_enough(thickest) { chosen } else { Choice::Thickest };
        return Some(Offer { choice, ..*thickest });
    }
    // The thickest up to the first that does not fit; the thinnest stands in any case.
    Some(*thicker().take_while(|of| fits(of)).last().unwrap_or(thinnest))
}

/// The coats of a document of classes by thickness, from the thinnest to the thickest; put in order once.
fn rising(document: &Document) -> &'static [Offer] {
    static RISING: OnceLock<[Vec<Offer>; 4]> = OnceLock::new();
    let rising = RISING.get_or_init(|| BY_THICKNESS.map(|classes| thin_to_thick(classes).collect()));
    let is_of = |offers: &&Vec<Offer>| offers.first().is_some_and(|offer| offer.class.document == document);
    rising.iter().find(is_of).map_or(&[], Vec::as_slice)
}

/// The documents whose classes are told apart by thickness.
static BY_THICKNESS: [&[CoatClass]; 4] =
    [astm_b695::CLASSES, iso_4042::CLASSES, astm_f1941::CLASSES, astm_b633::CLASSES];

/// Classes from the thinnest to the thickest; documents print them one way or the other.
fn thin_to_thick(classes: &'static [CoatClass]) -> impl Iterator<Item = Offer> {
    let min = |class: Option<&CoatClass>| class.and_then(|class| class.single).map(|limit| limit.thickness);
    let rising = min(classes.first()) <= min(classes.last());
    (0..classes.len())
        .filter_map(move |at| classes.get(if rising { at } else { classes.len() - 1 - at }))
        .filter_map(|class| of_class(class, Choice::Thickest))
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
        for classes in BY_THICKNESS {
            let offers = rising(classes[0].document);
            // Each class has its thickness, and whatever takes a class takes those before it.
            assert!(offers.len() == classes.len() && offers.len() > 2);
            assert!(offers.is_sorted_by_key(|offer| offer.min) && offers.is_sorted_by_key(|offer| offer.max));
        }
    }
}
