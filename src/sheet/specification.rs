//! The finish as it is put on a purchase order: process, standard, class, thickness, threads, nut, mark.

use crate::coat::{CoatClass, ThicknessLimit};
use crate::order::{Assessed, Judged, set};
use crate::process::Process;
use crate::rule::fit::room_in_words;
use crate::source::document;
use crate::thread::pair::Room;

/// The finish of a process, in the words of its standard; `None` where the process offers no coat.
pub(super) fn specification(assessed: &Assessed, judged: &Judged) -> Option<String> {
    let class = judged.offer.as_ref()?.class;
    let coat = match judged.process {
        Process::HotDip => "Hot-dip zinc coating",
        Process::Mechanical => "Mechanically deposited zinc coating",
        Process::Electroplated => "Electroplated zinc coating",
    };
    let finish = if class.document == &document::ASTM_B695 { TYPES } else { "" };
    let mut text =
        format!("{coat} to {}, {}{finish}: {}", class.document.name, class.name, limits(class).join(", "));
    if let Some(threads) = threads(assessed, judged) {
        text.push_str("; ");
        text.push_str(&threads);
    }
    let line = &assessed.line;
    let takes_nut = !line.part.is_nut() && !line.goes_into_a_tapped_hole();
    if let Some(nut) = set::nut(line, judged.is_nut_tapped_over()).filter(|_| takes_nut) {
        let name = nut.grade.name();
        let name = name.strip_prefix("nut ").or(name.strip_suffix(" nut")).unwrap_or(name);
        let heavy = if nut.is_heavy { "heavy hex nuts" } else { "nuts" };
        text.push_str(&format!("; {heavy} of {name}"));
    }
    if assessed.judgement.items.iter().skip(1).any(|item| item.part.kind.is_washer()) {
        text.push_str("; washers with the same coat");
    }
    Some(text + ".")
}

/// The order line asks for no chromate: the type is left to whoever orders.
const TYPES: &str = ", type I as coated (type II has a coloured chromate)";

/// What a class asks of the coat, as it is printed.
pub(super) fn limits(class: &CoatClass) -> Vec<String> {
    let limit = |name: &str, limit: Option<ThicknessLimit>| Some(format!("{name} {}", limit?.printed));
    let single = match class.process {
        Process::HotDip => "each article at least",
        Process::Mechanical | Process::Electroplated => "every place at least",
    };
    // Measured in one of two ways: place by place, or a batch as a whole.
    if let (Some(min), Some(max)) = (class.average, class.average_max) {
        let mean = format!("or the mean of a batch from {} to {}", min.printed.digits(), max.printed);
        return limit(single, class.single).into_iter().chain([mean]).collect();
    }
    let each = [
        limit(single, class.single),
        limit("mean of the batch at least", class.average),
        limit("mean of the whole lot at least", class.lot_average),
    ];
    each.into_iter().flatten().collect()
}

/// Bolt and nut that take the coat.
fn threads(assessed: &Assessed, judged: &Judged) -> Option<String> {
    let mated = judged.fit.as_ref()?.pair_to_order()?;
    let case = assessed.judgement.case(judged, 0)?;
    let words = room_in_words(&case, mated.pair.room);
    let words = words.strip_prefix("order ").unwrap_or(&words);
    let line = &assessed.line;
    let is_of_bolt = matches!(mated.pair.room, Room::Ordered | Room::Bolt(_));
    if line.part.is_nut() || line.goes_into_a_tapped_hole() || is_of_bolt {
        return Some(words.to_owned());
    }
    Some(format!("bolt thread {} before the coat; {words}", mated.pair.class))
}
