//! The thread, its class, and the length.

mod by_measure;
mod counted;
mod forming;
mod hole;
mod pitch;
mod smooth;
mod tapped_hole;
mod tapped_over;

use super::Became;
use super::diameter::{of_diameter, washer_of};
use super::items::Line;
use super::lexicon::{self, THREAD_LENGTH};
use super::part::{Family, Scope, Scopes};
use super::what::{What, Written};
use super::{length, size};
use crate::part::{Form, Kind};
use crate::quantity::letters::lower;
use crate::sorting::sort_by_key;
use crate::table::asme_b1_1::Series;
use crate::thread::{Designation, Thread, ToleranceClass, overtap};
use by_measure::{behind_the_size, by_diameter, of_legs};
use counted::{counted_behind, item_numbers, product, times};
use hole::{bare_hole, hole};
pub(super) use tapped_hole::already_there;
pub(super) use tapped_over::around_the_nut;

/// The largest size of unified threads that has a pitch of its own.
const LARGEST_INCH: f64 = 4.0;

/// Thread, class and length.
pub(super) fn settle(line: &mut Line, scopes: &Scopes) {
    let written = line.free(|what| match what {
        What::Thread(written) => Some(written.clone()),
        _ => None,
    });
    let is_pin = scopes.kind.is_some_and(|kind| kind.form() == Form::Pin);
    let written = without_fit(line, is_pin, written);
    let (weak, mut strong): (Vec<_>, Vec<_>) = written.into_iter().partition(|(_, written)| written.weak);
    let inches = line.free(|what| match what {
        What::Inches { value, text } => Some((*value, text.clone())),
        _ => None,
    });
    let mut inches = of_a_u_bolt(line, scopes, strong.is_empty() && weak.is_empty(), inches);
    // `6 3/4 in A325 bolts 7/8`: no thread is so large, and the other is the size.
    if let Some(size) = inches.iter().position(|(_, (value, _))| *value <= LARGEST_INCH)
        && scopes.family == Family::Bolt
    {
        inches.get_mut(..=size).unwrap_or_default().rotate_right(1);
    }
    let mut inches = inches.into_iter();
    // The first measure in inches is the size where no thread is written; so is a pair of whole numbers.
    let mut lengths = Vec::new();
    if strong.is_empty() {
        // A washer has its bolt's size beside its own measures.
        let is_flat = scopes.kind.is_some_and(Kind::is_washer);
        if (weak.is_empty() || is_flat)
            && let Some((at, (value, text))) = inches.next()
        {
            strong.push((at, size::of_size(value, text.trim_end_matches(" in"), Series::Unc, false)));
        }
        // `plate washers 3 x 3 x 1/4`: of one of another shape whole numbers are its own.
        if is_flat && (!strong.is_empty() || scopes.kind == Some(Kind::OtherWasher)) {
            weak.iter().for_each(|(at, _)| line.not(*at, OWN_SIZES));
        } else {
            strong.extend(weak);
        }
    } else {
        for (at, _) in &weak {
            times(line, *at);
        }
    }
    item_numbers(line, &mut strong);
    of_whitworth(line, &mut strong);
    let pairs = pairs(line, scopes, &mut strong);
    if strong.is_empty() && inches.len() == 0 {
        by_diameter(line, scopes, &mut strong);
    }
    of_a_shoulder(line, &mut strong);
    let series = pitch::series(line, &strong);
    let mut chosen: Option<Written> = None;
    let mut own_pitch: Option<String> = None;
    let forms = scopes.kind.map(crate::part::Kind::form);
    let has_none = scopes.is_smooth || matches!(forms, Some(Form::Pin | Form::Ring));
    let is_ring = scopes.kind.is_some_and(Kind::is_ring);
    let is_forming = forming::is_one(scopes);
    let no_size = scopes.kind == Some(Kind::Other) && (scopes.is_smooth || scopes.family == Family::Washer);
    for (at, mut written) in strong {
        // Of another part only the thread counts.
        if no_size {
            line.not(at, "the size of another part is not asked: its area and mass are");
            continue;
        }
        // A pin or a ring has a diameter: where no thread stands for it, the field has no size for it.
        if (has_none || is_forming) && written.weak && !written.text.starts_with('#') {
            match smooth::in_millimetres(line, at, written, scopes.kind) {
                Some(read) => written = read,
                None => continue,
            }
        }
        if has_none && written.thread.is_none() {
            line.not(at, "no size of this diameter is known here: a pin or a ring has no thread");
            continue;
        }
        if let Some(series) = series.filter(|_| written.of_size) {
            written = pitch::in_series(&written, series);
        }
        let plain = without_class(line, scopes, at, &written);
        let pitch = written.text.split_once('-').filter(|_| is_forming && plain.thread.is_none());
        own_pitch = own_pitch.or_else(|| pitch.map(|(_, number)| number.to_owned()));
        let plain = forming::numbered(scopes, plain);
        if is_forming && plain.thread.is_none() && (written.of_size || written.text.starts_with('#')) {
            line.not(at, forming::NO_SIZE);
            continue;
        }
        let already = line.draft.get("thread").map(str::to_owned);
        match already {
            None => {
                line.draft.set("thread", &*plain.text);
                line.used(at, "thread");
                chosen = Some(plain);
            }
            Some(already) if agrees(chosen.as_ref(), &plain) => {
                let class_of = |text: &str| Designation::read(text).ok().and_then(|it| it.class);
                let is_bolt = scopes.family == Family::Bolt;
                match class_of(&plain.text).filter(|_| class_of(&already).is_none()) {
                    // `hole M12 6H`, and no nut has it.
                    Some(class) if is_bolt != class.is_bolt() => {
                        line.not(
                            at,
                            format!(
                                "{class} is a class of {}: of which?",
                                if is_bolt { "nuts and holes" } else { "bolts" }
                            ),
                        );
                    }
                    Some(_) => {
                        line.draft.set("thread", &*plain.text);
                        line.used(at, "thread");
                    }
                    None => line.used(at, "thread"),
                }
            }
            Some(already) => {
                line.not(at, format!("contradicts the thread {already}, which stands before it"));
            }
        }
    }
    if is_pin && chosen.is_some() {
        line.note("thread", "the diameter of the pin: it has no thread");
    } else if is_ring && chosen.is_some() {
        line.note("thread", BORE);
    } else if is_forming && chosen.as_ref().is_some_and(|chosen| chosen.thread.is_some()) {
        if line.notes.iter().all(|(field, _)| *field != "thread") {
            match own_pitch {
                Some(number) => line
                    .note("thread", format!("{}: its {number} to the inch are its own", forming::OWN_THREAD)),
                None => line.note("thread", forming::OWN_THREAD),
            }
        }
    } else if chosen.as_ref().is_some_and(|chosen| chosen.of_size && chosen.thread.is_some()) {
        line.note("thread", "pitch taken from the size");
    }
    bare_size(line, scopes);
    pitch::apart(line, &mut chosen);
    pitch::use_series(line, chosen.as_ref());
    classes(line, scopes, chosen.as_ref());
    for (at, (value, text)) in inches {
        let same_size = chosen
            .as_ref()
            .and_then(|it| it.thread)
            .is_some_and(|thread| (thread.diameter().inch() - value).abs() < 1e-6);
        if same_size {
            line.used(at, "thread");
        } else {
            lengths.push((at, text));
        }
    }
    lengths.extend(line.free(|what| match what {
        What::Length(text) => Some(text.clone()),
        _ => None,
    }));
    lengths.extend(pairs);
    lengths.extend(behind_the_size(line, scopes, lengths.is_empty()));
    let lengths = of_legs(line, scopes, lengths);
    let mut lengths = counted_behind(line, lengths);
    // Behind the cross of the thread, then by its name, then any other measure.
    sort_by_key(&mut lengths, |(at, _)| (of_length(line, *at), *at));
    let kind = scopes.kind.or_else(|| line.draft.get("part").and_then(Kind::from_key));
    let is_rod = kind.is_some_and(|kind| kind.is_rod() && kind != Kind::Stud);
    let is_long =
        |number: &str| number.trim().parse::<f64>().is_ok_and(|inches| inches > length::MOST_INCHES);
    let is_metric = chosen.as_ref().is_some_and(|chosen| chosen.text.starts_with('M'));
    for (at, text) in lengths {
        let text = match text.strip_suffix(length::UNIT_OF_THREAD) {
            Some(_) if chosen.is_none() => {
                line.not(at, "a length of millimetres or of inches?");
                continue;
            }
            Some(number) if !is_metric && !is_rod && is_long(number) => {
                line.not(at, format!("{}mm or {}in: write the unit", number, number));
                continue;
            }
            Some(number) => format!("{number}{}", if is_metric { "mm" } else { "in" }),
            None => text,
        };
        match scopes.kind.filter(|kind| !kind.has_length()) {
            // A ring has the size of its shaft or bore, which stands in the field as a thread's would.
            Some(kind)
                if kind.is_flat()
                    && line.draft.get("thread").is_none()
                    && flat_size(kind, &text).is_some() =>
            {
                line.fill(at, "thread", &flat_size(kind, &text).unwrap_or_default(), "the size");
                line.note(
                    "thread",
                    if kind.is_ring() { BORE } else { "the size of the bolt that it goes with" },
                );
            }
            Some(kind) if kind.is_ring() && line.draft.get("thread").is_none() => {
                line.not(at, NO_RING);
            }
            Some(Kind::OtherWasher) => line.not(at, OWN_SIZES),
            Some(Kind::Other) if scopes.is_smooth => line.not(at, OWN_SIZES),
            Some(Kind::Other) => {
                line.not(at, "the length of another part is not asked: its area and mass are")
            }
            Some(kind) => {
                line.not(at, format!("a {} has no length", kind.name()));
            }
            None if line.draft.get("length").is_some_and(|length| length != text)
                && is_beside_thread(line, at) =>
            {
                line.not(at, THREAD_LENGTH);
            }
            None => line.fill(at, "length", &text, "the length"),
        }
    }
}

/// `shoulder screw 3/8 x 1 5/16-18`: beside a thread with its pitch a size without one is that of the shoulder.
fn of_a_shoulder(line: &mut Line, strong: &mut Vec<(usize, Written)>) {
    let is_shoulder =
        |text: &str| ["shoulder", "passschraube", "paßschraube"].iter().any(|it| text.starts_with(it));
    let has_one =
        line.items.iter().any(|item| matches!(item.what, What::Part(_)) && is_shoulder(&lower(&item.text)));
    let has_thread = strong.iter().any(|(_, written)| written.pitched);
    strong.retain(|(at, written)| {
        let is_its = has_one && has_thread && written.of_size;
        if is_its {
            line.not(*at, "the diameter of the shoulder is not asked");
        }
        !is_its
    });
}

/// `BSW bolts 1/2 x 2`, `5/8 x 3 Whitworth`: a size in inches without threads per inch is that of the series that the line
/// names elsewhere.
fn of_whitworth(line: &mut Line, strong: &mut Vec<(usize, Written)>) {
    let is_named = line.items.iter().any(|item| {
        matches!(&item.what, What::Not(why) if why == size::FOREIGN)
            && lexicon::WHITWORTH.contains(&lower(&item.text).as_str())
    });
    strong.retain(|(at, written)| {
        let is_its = is_named && written.of_size && written.thread.is_some_and(|thread| !thread.is_metric());
        if is_its {
            line.not(*at, size::FOREIGN);
        }
        !is_its
    });
}

/// `8x30 m6`: behind the two measures of a pin the fit of its diameter, and no thread.
fn without_fit(line: &mut Line, is_pin: bool, written: Vec<(usize, Written)>) -> Vec<(usize, Written)> {
    let has_pair = line.items.iter().any(|item| matches!(item.what, What::Pair { .. }));
    let is_fit =
        |line: &Line, at: usize| line.items.get(at).is_some_and(|item| matches!(&*item.text, "m6" | "m5"));
    let (fits, threads): (Vec<_>, Vec<_>) =
        written.into_iter().partition(|(at, _)| is_pin && has_pair && is_fit(line, *at));
    fits.iter().for_each(|(at, _)| line.not(*at, "the fit of the pin is not asked"));
    threads
}

/// Of a U-bolt without a thread the least measure is its rod, and the greatest its pipe where three are written.
fn of_a_u_bolt(
    line: &mut Line,
    scopes: &Scopes,
    is_open: bool,
    mut inches: Vec<(usize, (f64, String))>,
) -> Vec<(usize, (f64, String))> {
    if scopes.kind == Some(Kind::UBolt) && is_open {
        let least = inches.iter().min_by(|(_, (one, _)), (_, (other, _))| one.total_cmp(other));
        let rod = least.map(|(at, _)| *at);
        inches.retain(|(at, _)| {
            let is_rod = Some(*at) == rod;
            if !is_rod {
                line.not(*at, length::ACROSS);
            }
            is_rod
        });
    }
    inches
}

/// Why the measures of a part of its own shape are not used.
const OWN_SIZES: &str = "the sizes of another part are not asked: its area and mass are";

/// Whether the word for a thread stands beside a measure.
fn is_beside_thread(line: &Line, at: usize) -> bool {
    [line.before(at), line.behind(at)].into_iter().flatten().filter_map(|beside| line.items.get(beside)).any(
        |item| {
            matches!(
                lower(&item.text).as_str(),
                "thread" | "threads" | "threaded" | "thd" | "thrd" | "gewinde"
            )
        },
    )
}

/// How surely a piece is the length: 0 behind the cross of a thread, 1 by its name.
fn of_length(line: &Line, at: usize) -> u8 {
    let before = at.checked_sub(1).and_then(|before| line.items.get(before));
    match line.items.get(at) {
        Some(item) if before.is_some_and(|it| it.matched == item.matched) || item.rule == ACROSS => 0,
        Some(item) if item.rule == NAMED => 1,
        _ => 2,
    }
}

/// The rule of a length behind a cross whose thread stands elsewhere.
const ACROSS: &str = "length behind a cross";
/// The rule of a length by its name.
const NAMED: &str = "length by its name";

/// Two measures with a cross between: size and length of a pin; thread and length of a metric bolt, where a
/// unit or the class says that they are millimetres. Lengths that are left are handed back.
fn pairs(line: &mut Line, scopes: &Scopes, strong: &mut Vec<(usize, Written)>) -> Vec<(usize, String)> {
    let found = line.free(|what| match what {
        What::Pair { first, second, is_mm } => Some((first.clone(), second.clone(), *is_mm)),
        _ => None,
    });
    let by_class = line.draft.get("steel").is_some_and(|steel| {
        steel.split_once('.').is_some_and(|(strength, ratio)| {
            [strength, ratio].iter().all(|part| part.trim_end_matches('u').parse::<u8>().is_ok())
        })
    });
    let mut lengths = Vec::new();
    for (at, (first, second, is_mm)) in found {
        let kind = scopes.kind;
        let form = kind.map(crate::part::Kind::form);
        let flat = matches!(form, Some(Form::Ring | Form::Washer | Form::Nut));
        let threaded = kind.is_none_or(crate::part::Kind::has_mate) && !flat;
        let size = of_diameter(first.trim()).filter(|thread| {
            form != Some(Form::Bolt) && form != Some(Form::Bar) && kind.is_some() || thread.is_coarse()
        });
        if forming::is_one(scopes) && strong.is_empty() {
            forming::settle(line, kind, at, (&first, &second, is_mm), strong, &mut lengths);
            continue;
        }
        match size
            .filter(|_| strong.is_empty() && (form == Some(Form::Pin) || threaded && (is_mm || by_class)))
        {
            Some(thread) => {
                let text = thread.to_string();
                let written =
                    Written { text, thread: Some(thread), of_size: true, pitched: false, weak: false };
                strong.push((at, written));
                lengths.push((at, format!("{second} mm")));
            }
            None if kind.is_some_and(crate::part::Kind::is_ring)
                && strong.is_empty()
                && let Some(thread) = size =>
            {
                line.fill(at, "thread", &thread.to_string(), "the size");
                line.note("thread", BORE);
                if let Some(Became::Used(_, why)) = line.item(at).and_then(|item| item.became.as_mut()) {
                    *why = Some("the thickness is that of the standard".into());
                }
            }
            None if kind.is_some_and(crate::part::Kind::is_ring) => line.not(at, NO_RING),
            None if !strong.is_empty()
                && !is_mm
                && let Some(all) = product(&first, &second) =>
            {
                line.not(at, format!("so many times so many: write {all} pcs if that is all"));
            }
            None => line.not(at, "two measures of what? Write a thread as M20, 3/4-10 or #8-32"),
        }
    }
    lengths
}

/// The thread that stands for a size of what has none: `M20` for a ring of 20 mm.
fn flat_size(kind: Kind, text: &str) -> Option<String> {
    let mm = text.strip_suffix(" mm")?;
    let thread = if kind.is_washer() { washer_of(mm) } else { of_diameter(mm) };
    thread.map(|thread| thread.to_string())
}

/// The size behind the name or the standard of what has no thread: `DIN 471 - 20`, `cotter pin 4`.
fn bare_size(line: &mut Line, scopes: &Scopes) {
    hole(line, scopes);
    bare_hole(line, scopes);
    let Some(kind) = scopes.kind.filter(|kind| kind.is_ring()) else { return };
    let numbers = line.free(|what| match what {
        What::Bare(Some(number)) => Some(*number),
        _ => None,
    });
    for (at, number) in numbers {
        let behind_its_name = line.before(at).is_some_and(
            |before| matches!(line.what(before), Some(What::PartStandard(key)) if *key == kind.key()),
        );
        if behind_its_name && line.draft.get("thread").is_none() {
            match of_diameter(&number.to_string()) {
                Some(thread) => {
                    line.fill(at, "thread", &thread.to_string(), "the size");
                    line.note("thread", BORE);
                }
                None => line.not(at, "no thread stands for this size here"),
            }
        }
    }
}

const BORE: &str = "the size of the shaft or bore: it has no thread";

/// The class of a nut behind the thread of a bolt is the nut's, not the bolt's.
fn without_class(line: &mut Line, scopes: &Scopes, at: usize, written: &Written) -> Written {
    let class = Designation::read(&written.text).ok().and_then(|it| it.class);
    let (Some(class), Some(thread)) = (class, written.thread) else { return written.clone() };
    let is_nut = scopes.family == Family::Nut;
    if scopes.family == Family::Washer || class.is_bolt() != is_nut {
        return written.clone();
    }
    // Where there is no nut for it, the form says what is wrong with it.
    if is_nut || !scopes.with.0 {
        return written.clone();
    }
    line.fill(at, "nut_class", &class.to_string(), "the class of the nut");
    Written { text: thread.to_string(), ..written.clone() }
}

/// Whether a second thread is the first one, more or less fully written.
fn agrees(chosen: Option<&Written>, other: &Written) -> bool {
    let Some(chosen) = chosen else { return false };
    match (chosen.thread, other.thread) {
        (Some(one), Some(two)) if chosen.of_size || other.of_size => one.diameter() == two.diameter(),
        (Some(one), Some(two)) => one == two,
        _ => chosen.text == other.text,
    }
}

/// `not overtapped`, `standard nuts`: of the class that nuts have from the shelf.
fn standard_nut(line: &mut Line, scopes: &Scopes, thread: Option<Thread>) {
    for (at, ()) in line.free(|what| (*what == What::StandardNut).then_some(())) {
        let Some(thread) = thread else {
            line.not(at, "the nut of which thread?");
            continue;
        };
        let class = overtap::standard_class(thread);
        if scopes.family == Family::Nut {
            line.draft.set("thread", Designation { thread, class: Some(class) }.to_string());
            line.used(at, "thread");
            line.note("thread", NOT_TAPPED);
        } else if line.draft.get("nut").is_some() || scopes.with.0 {
            line.fill(at, "nut_class", &class.to_string(), "the class of the nut");
            line.note("nut_class", NOT_TAPPED);
        } else if line.items.get(at).is_some_and(|item| says_not(&item.text)) {
            line.not(at, NOT_ORDERED);
        } else {
            line.not(at, "of nuts that are not ordered here: the answer says how they have to be tapped");
        }
    }
}

/// Why it is not used that nuts are not tapped over where none come with the part.
const NOT_ORDERED: &str = "of nuts that are not ordered here, and a coat needs its room in them: write “with nuts” to have \
                           them judged as they stand";

/// Whether words for the thread of a nut say that it is not tapped over, and not only that it is the usual one.
fn says_not(text: &str) -> bool {
    let text = lower(text);
    !text.contains("standard") && !text.contains("normal")
}

const NO_RING: &str = "no ring of this size is taken here: its size is that of a metric thread";

const NOT_TAPPED: &str = "from the shelf, not tapped over";

/// Why the class of the bolts that a nut is for is not used.
const FOR_CUT_UNDER: &str = "nuts for bolts that are cut under stay 6H, and 6AZ or 6AX never go on them; judged is the nut of \
                             bolts as usual. Write the bolts with their nuts on one line";

/// Why an inch bolt that is cut under is not judged.
const UNDERSIZE_INCH: &str = "cut under: no allowance for it is published for inch threads, so agree it with the maker, with \
                              nuts as they stand; judged is the bolt of its class in a nut tapped over. Never both";

/// Classes that stand by themselves.
fn classes(line: &mut Line, scopes: &Scopes, chosen: Option<&Written>) {
    let found: Vec<(usize, ToleranceClass)> = line.free(|what| match what {
        What::ThreadClass(class) => Some(*class),
        _ => None,
    });
    let thread = chosen.and_then(|chosen| chosen.thread);
    standard_nut(line, scopes, thread);
    tapped_hole::settle(line, scopes);
    for (at, class) in found {
        let is_other_system = thread.is_some_and(|thread| thread.is_metric() != class.is_metric());
        let beside = scopes.of.get(at).copied().unwrap_or_default();
        let is_the_parts =
            class.is_bolt() == (scopes.family == Family::Bolt) && scopes.family != Family::Washer;
        if is_other_system && class.is_undercut() {
            line.not(at, UNDERSIZE_INCH);
        } else if is_other_system {
            line.not(at, "a class of the other system of threads");
        } else if is_the_parts && beside != Scope::Nut {
            let Some(thread) = line.draft.get("thread").map(str::to_owned) else {
                line.not(at, "the class of which thread?");
                continue;
            };
            match Designation::read(&thread).ok() {
                Some(Designation { class: Some(already), .. }) if already != class => {
                    line.not(at, format!("contradicts the class {already}, which stands before it"));
                }
                Some(Designation { thread, .. }) => {
                    let text = Designation { thread, class: Some(class) }.to_string();
                    line.draft.set("thread", text);
                    line.used(at, "thread");
                }
                None => {
                    line.used(at, "thread");
                }
            }
        } else if !class.is_bolt() && scopes.family == Family::Bolt && line.draft.get("nut").is_some() {
            line.fill(at, "nut_class", &class.to_string(), "the class of the nut");
        } else if class.is_undercut() && scopes.family == Family::Nut {
            line.not(at, FOR_CUT_UNDER);
        } else {
            let of = if class.is_bolt() { "bolts" } else { "nuts" };
            line.not(at, format!("a class of {of}"));
        }
    }
}
