//! What an order says of its threads, and the ways of making room in them for a coat.

use super::{Hole, OrderLine};
use crate::part;
use crate::process::Process;
use crate::quantity::{Length, Quantity, unit};
use crate::rule::Choice;
use crate::source::Family;
use crate::steel::{Grade, State};
use crate::table::{astm_b695, hotdip_process, iso_1478};
use crate::thread::class::BoltPosition;
use crate::thread::pair::{Ordered, Ways};
use crate::thread::{Thread, ToleranceClass, overtap};

/// The ways of making room that are tried for a coat, by its least thickness.
///
/// Nuts are tapped over for a thick coat, and made no wider than a thin one needs: nobody cuts the
/// thread of a bolt from the shelf. Plating that nobody named a class of goes into the pair that was
/// ordered, because it is thin by nature; a bolt that is ordered with a class of plate is made for it.
pub(super) fn ways(line: &OrderLine, process: Process, choice: Choice) -> impl Fn(Length) -> Ways {
    let is_asked = choice == Choice::Asked;
    let is_made_for_thin = process == Process::Electroplated && !is_asked && has_no_room(line);
    move |min| match process {
        Process::HotDip => Ways::Tapped,
        Process::Mechanical if min < astm_b695::TAPPED_OVER_FROM.value => Ways::ThinNut,
        Process::Mechanical => Ways::AnyNut,
        Process::Electroplated if is_asked || (is_made_for_thin && min <= THIN) => Ways::Bolt,
        Process::Electroplated => Ways::Ordered,
    }
}

/// The thickest plate for which a thread without allowance is made smaller as a matter of course.
const THIN: Length = Length::from_um(8.0);

/// Whether the bolt is of a class without allowance, 3A or 6h: its maker leaves the room of a thin
/// coat when he is told of it.
fn has_no_room(line: &OrderLine) -> bool {
    match bolt_class(line) {
        Some(ToleranceClass::Bolt(bolt)) => bolt.position == BoltPosition::H,
        class => class == Some(ToleranceClass::UnifiedBolt(3)),
    }
}

/// The class of the nut, if it was written.
pub(super) fn nut_class(line: &OrderLine) -> Option<ToleranceClass> {
    let of_line = line.class.filter(|class| !class.is_bolt());
    // A hole that is there already is of the standard class, as a nut may be written.
    let of_hole = line.thread.filter(|_| line.hole == Some(Hole::AsItStands)).map(overtap::standard_class);
    let written = line.nut.and_then(|nut| nut.class).or(of_line).or(of_hole);
    // An allowance of the order's own stands over the standard class.
    let is_over = |class: &ToleranceClass| {
        line.own_allowance.is_some() && line.thread.map(overtap::standard_class) == Some(*class)
    };
    written.filter(|class| !is_over(class))
}

/// What an order says of its threads, where it says the thread.
pub(super) fn ordered(line: &OrderLine) -> Option<Ordered> {
    let (thread, nut) = (line.thread?, nut_class(line));
    // The standard nut leaves the search free to widen it.
    let standard = overtap::standard_class(thread);
    Some(Ordered {
        thread,
        bolt: bolt_class(line)?,
        nut: nut.filter(|class| *class != standard),
        own: line.own_allowance,
        length: line.length.filter(|_| !line.part.is_nut()),
        is_spun: is_spun(line),
        is_astm: is_astm(line),
    })
}

/// Whether a part goes into the basket of a centrifuge; what is longer is wiped by an air ring.
pub(super) fn is_spun(line: &OrderLine) -> bool {
    let (_, large) = hotdip_process::BASKETS.value;
    line.length.is_none_or(|length| length <= large)
}

/// Whether the steel of the bolt is one of ASTM or SAE, whose documents bring their own coats and nuts.
pub(super) fn is_astm(line: &OrderLine) -> bool {
    let grade = line.steel.and_then(|steel| steel.grade());
    grade.is_some_and(|properties| properties.grade.document().family == Family::Astm)
}

/// Whether the order is metric: its thread, or where that is not said the documents of its steel and its length.
/// The number of a screw that forms its own thread is a size in either system: there its length alone says.
pub(super) fn is_metric(line: &OrderLine) -> bool {
    let is_whole = |length: Length| (length.mm() - length.mm().round()).abs() < 1e-6;
    let by_length = line.length.map(is_whole);
    let is_numbered =
        |thread: &Thread| line.part.threaded() == part::Threaded::Forming && thread.number().is_some();
    match line.thread.filter(|thread| !is_numbered(thread)) {
        Some(thread) => thread.is_metric(),
        None => by_length.unwrap_or(line.thread.is_none()) && !is_astm(line),
    }
}

/// The size of a part that has no machine thread, a screw that forms its own, a ring or a pin:
/// `#8, ST4.2 of ISO 1478`, `3/8 in`, `10 mm`; `None` for every other part.
pub(super) fn size_without_thread(part: part::Kind, thread: Thread) -> Option<String> {
    let is_smooth = matches!(part.form(), part::Form::Ring | part::Form::Pin);
    if part.threaded() != part::Threaded::Forming && !is_smooth {
        return None;
    }
    let name = thread.to_string();
    let size = name.rsplit_once('-').map_or(name.as_str(), |(size, _)| size);
    let in_sheet = matches!(part, part::Kind::TappingScrew | part::Kind::DrywallScrew);
    let row = thread.number().and_then(|number| iso_1478::ROWS.iter().find(|row| row.number == number));
    Some(match (row.filter(|_| in_sheet), thread.number()) {
        (Some(row), _) => format!("{size}, ST{} of ISO 1478", row.st),
        (None, Some(_)) => size.to_owned(),
        (None, None) if thread.is_metric() => thread.diameter().show(&unit::MM, 0).to_string(),
        (None, None) => format!("{size} in"),
    })
}

/// The class of the bolt: as written, or as its product standard has it; `None` where no thread is said.
pub fn bolt_class(line: &OrderLine) -> Option<ToleranceClass> {
    let thread = line.thread?;
    let written = line.class.filter(|class| class.is_bolt());
    Some(written.unwrap_or_else(|| usual_bolt_class(line.part, thread, line.steel)))
}

/// 6g and 2A; 5g6g on ISO 4762 of class 12.9, and 3A on ASME B18.3 up to 1 in.
fn usual_bolt_class(kind: part::Kind, thread: Thread, steel: Option<State>) -> ToleranceClass {
    let socket = matches!(
        kind,
        part::Kind::SocketScrew
            | part::Kind::CountersunkScrew
            | part::Kind::ButtonScrew
            | part::Kind::SetScrew
    );
    let grade = steel.and_then(|steel| steel.grade()).map(|properties| properties.grade);
    let hard = matches!(grade, Some(Grade::Class12_9 | Grade::Class12_9Underlined | Grade::A574));
    match thread.is_metric() {
        true if socket && hard => ToleranceClass::SOCKET,
        true => ToleranceClass::bolt(6, BoltPosition::G),
        // A thousandth of a millimetre covers the rounding of inches.
        false if socket && thread.diameter() <= Length::from_inch(1.0) + Length::from_mm(0.001) => {
            ToleranceClass::UnifiedBolt(3)
        }
        false => ToleranceClass::UnifiedBolt(2),
    }
}
