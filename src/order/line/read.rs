//! From the fields of an order line to what they say together.
//!
//! Every field is read before any answer is missed, so that all problems are told at once.

use super::choices::{CaseHardened, End, KnownSteel, Named};
use super::misfit::misfit;
use super::{Mate, OrderLine, fields};
use crate::calculator::{Fault, Field, Missed, Reader};
use crate::part;
use crate::quantity::Hardness;
use crate::steel::{Grade, State, Steel, Worked};
use crate::thread::{Designation, Thread, ToleranceClass};

/// Reads the fields.
pub(super) fn read(reader: &mut Reader<'_>) -> Result<OrderLine, Missed> {
    let part = reader.get(&fields::PART);
    let designation = designation(reader, part);
    let thread = designation.map(|designation| designation.map(|designation| designation.thread));
    let (length, quantity) = (reader.if_asked(&fields::LENGTH), reader.optional(&fields::QUANTITY));
    let steel = steel(reader, part, thread);
    let end = reader.if_asked(&fields::END);
    let (is_left_hand, has_patch) = (reader.get(&fields::LEFT), reader.get(&fields::PATCH));
    let temper = reader.optional(&fields::TEMPER);
    let nut_class = nut_class(reader, thread);
    let (nut, hole) = match reader.if_asked(&fields::NUT) {
        Ok(named) => {
            let hole = match named.said() {
                Some(Named::Hole(hole)) => Some(hole),
                _ => None,
            };
            (mate(reader, &fields::NUT, &fields::NUT_HARDNESS, &fields::NUTS_TO_A_BOLT), hole)
        }
        Err(missed) => (Err(missed), None),
    };
    let washer = mate(reader, &fields::WASHER, &fields::WASHER_HARDNESS, &fields::WASHERS_TO_A_BOLT);
    let own_allowance = reader.optional(&fields::OWN_ALLOWANCE);
    let surroundings = reader.get(&fields::SURROUNDINGS);
    let (place, years) = (reader.if_asked(&fields::PLACE), reader.optional(&fields::YEARS));
    let heat = reader.optional(&fields::HEAT);
    let most = reader.optional(&fields::MOST);
    let (asked, left_out) = (reader.get(&fields::ASKED), reader.get(&fields::LEFT_OUT));
    let bath = reader.get(&fields::BATH);
    let (designation, nut_class) = (designation?, nut_class?);
    let (steel, is_steel_not_made) = steel?;
    Ok(OrderLine {
        // The fields know nothing of the line: whoever has read one says so.
        has_open_words: false,
        part: part?,
        thread: designation.map(|designation| designation.thread),
        class: designation.and_then(|designation| designation.class),
        is_left_hand: is_left_hand?,
        length: length?.said(),
        quantity: quantity?,
        steel,
        is_steel_least: end?.said() == Some(End::Least),
        is_steel_not_made,
        has_patch: has_patch?,
        temper: temper?,
        surroundings: surroundings?,
        place: place?.said(),
        heat: heat?,
        years: years?,
        asked: asked?,
        most: most?,
        left_out: left_out?,
        bath: bath?,
        nut: nut?.map(|nut| Mate { class: nut_class, ..nut }),
        hole,
        washer: washer?,
        own_allowance: own_allowance?,
    })
}

/// The thread, if it was written; its class is that of the part.
fn designation(
    reader: &mut Reader<'_>,
    part: Result<part::Kind, Missed>,
) -> Result<Option<Designation>, Missed> {
    let designation = reader.optional(&fields::THREAD)?;
    match (designation.and_then(|designation| designation.class), part) {
        (Some(class), Ok(part)) if class.is_bolt() == part.is_nut() => {
            Err(reader.wrong(&fields::THREAD, Fault::Conflict(OTHER_HALF.to_owned())))
        }
        _ => Ok(designation),
    }
}

const OTHER_HALF: &str =
    "the class belongs to the other half of the pair: bolts take 6g, 8g or 2A, nuts take 6H or 2B";

/// The steel and what was done to it, and whether one was named that is not made in this size; a grade that its standard does not have in this size is a problem
/// of the field.
fn steel(
    reader: &mut Reader<'_>,
    part: Result<part::Kind, Missed>,
    thread: Result<Option<Thread>, Missed>,
) -> Result<(Option<State>, bool), Missed> {
    let known = reader.optional(&fields::STEEL);
    let (hardness, tensile) = (reader.if_asked(&fields::HARDNESS), reader.if_asked(&fields::TENSILE));
    let (case, worked) = (reader.get(&fields::CASE), reader.get(&fields::COLD));
    let (known, hardness, tensile) = (known?, hardness?.said(), tensile?.said());
    let (case, worked) = (case?, worked?);
    let is_not_made = known == Some(KnownSteel::NotMade);
    let Some(known) = known.filter(|_| !is_not_made) else {
        // Screws that form their thread are hard on the surface, whatever else is known of their steel.
        let hard_skin = part.is_ok_and(|part| part.usual_steel() == part::UsualSteel::CaseHardened);
        if hard_skin && case != CaseHardened::No {
            let steel = Steel::of(Grade::Iso2702, thread?.map(Thread::diameter)).ok();
            let state = steel.map(|steel| State { steel, case_hardened: true, worked });
            return Ok((state, is_not_made && state.is_none()));
        }
        // How it was treated is judged only on a steel that is known.
        if case == CaseHardened::Yes || worked != Worked::No {
            return Err(reader.wrong(&fields::STEEL, Fault::Missing));
        }
        return Ok((None, is_not_made));
    };
    let steel = match (known, hardness) {
        (KnownSteel::OtherMetal, _) => {
            return Err(reader.wrong(&fields::STEEL, Fault::Conflict(OTHER.to_owned())));
        }
        (KnownSteel::Grade(grade), _) => {
            if let Some(why) = part.ok().and_then(|part| misfit(part, grade)) {
                return Err(reader.wrong(&fields::STEEL, Fault::Conflict(why)));
            }
            of_size(reader, grade, thread?)?
        }
        (KnownSteel::Hardness, Some(hardness)) => Steel::Hardness(hardness),
        (KnownSteel::Hardness, None) => return Err(reader.wrong(&fields::HARDNESS, Fault::Missing)),
        (KnownSteel::Tensile | KnownSteel::NotMade, _) => {
            Steel::Tensile(tensile.ok_or_else(|| reader.wrong(&fields::TENSILE, Fault::Missing))?)
        }
    };
    let case_hardened = match case {
        CaseHardened::Usual => part?.usual_steel() == part::UsualSteel::CaseHardened,
        CaseHardened::No => false,
        CaseHardened::Yes => true,
    };
    Ok((Some(State { steel, case_hardened, worked }), false))
}

const OTHER: &str = "nothing is judged of it: the finishes here are zinc on carbon and alloy steel";

fn of_size(reader: &mut Reader<'_>, grade: Grade, thread: Option<Thread>) -> Result<Steel, Missed> {
    // Metric structural bolts of ASTM are ordered without their M as often as with it.
    let is_metric = thread.is_some_and(|thread| thread.is_metric());
    let grade = match grade {
        Grade::A325 if is_metric => Grade::A325M,
        Grade::A490 if is_metric => Grade::A490M,
        grade => grade,
    };
    Steel::of(grade, thread.map(Thread::diameter))
        .map_err(|refusal| reader.wrong(&fields::STEEL, Fault::Refused(refusal)))
}

/// The class of the nut, where one comes with the bolt.
fn nut_class(
    reader: &mut Reader<'_>,
    thread: Result<Option<Thread>, Missed>,
) -> Result<Option<ToleranceClass>, Missed> {
    let class = reader.if_asked(&fields::NUT_CLASS)?.said();
    let (Some(class), Ok(Some(thread))) = (class, thread) else { return Ok(class) };
    if class.is_bolt() || class.is_metric() != thread.is_metric() {
        let nuts = if thread.is_metric() { "6H, 6AZ or 6AX" } else { "2B" };
        let why = format!("{class} is no class of a nut for {thread}; write {nuts}");
        return Err(reader.wrong(&fields::NUT_CLASS, Fault::Conflict(why)));
    }
    Ok(Some(class))
}

/// A nut or a washer, its class left open.
fn mate(
    reader: &mut Reader<'_>,
    named: &Field<Named>,
    hardness: &Field<Hardness>,
    to_a_bolt: &Field<u32>,
) -> Result<Option<Mate>, Missed> {
    let (named, per_set) = (reader.if_asked(named), reader.if_asked(to_a_bolt));
    let (named, hardness, per_set) = (named?.said(), reader.if_asked(hardness)?.said(), per_set?.said());
    let is_hardness_least = named == Some(Named::LeastHardness);
    let of = |grade, kind| {
        per_set.map(|per_set| Mate { grade, hardness, is_hardness_least, kind, class: None, per_set })
    };
    Ok(match named {
        None | Some(Named::Without | Named::Hole(_)) => None,
        Some(Named::Standard | Named::Hardness | Named::LeastHardness) => of(None, None),
        Some(Named::Kind(kind)) => of(None, Some(kind)),
        Some(Named::Grade(grade)) => of(Some(grade), None),
    })
}
