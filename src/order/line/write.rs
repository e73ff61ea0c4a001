//! From what an order line says back to its fields.

use super::choices::{CaseHardened, End, KnownSteel, Named};
use super::{Mate, OrderLine, fields};
use crate::calculator::{Field, Writer};
use crate::part::UsualSteel;
use crate::quantity::Hardness;
use crate::steel::{State, Steel};
use crate::thread::Designation;

/// Writes what [`read`](super::read::read) reads; what is not asked of such a part is not written.
pub(super) fn write(line: &OrderLine, writer: &mut Writer) {
    writer.put(&fields::PART, line.part);
    let designation = line.thread.map(|thread| Designation { thread, class: line.class });
    writer.put_optional(&fields::THREAD, designation);
    writer.put(&fields::LEFT, line.is_left_hand);
    writer.put_optional(&fields::QUANTITY, line.quantity);
    if line.is_steel_not_made {
        writer.put(&fields::STEEL, KnownSteel::NotMade);
    }
    match line.steel {
        Some(state) => steel(state, if line.is_steel_least { End::Least } else { End::Greatest }, writer),
        // Else such a screw would be taken for what it usually is.
        None if line.part.usual_steel() == UsualSteel::CaseHardened => {
            writer.put(&fields::CASE, CaseHardened::No);
        }
        None => {}
    }
    writer.put(&fields::PATCH, line.has_patch);
    writer.put_optional(&fields::TEMPER, line.temper);
    if line.part.has_length() {
        writer.put_optional(&fields::LENGTH, line.length);
        match line.hole {
            Some(hole) => writer.put(&fields::NUT, Named::Hole(hole)),
            None => mate(line.nut, &fields::NUT, (&fields::NUT_HARDNESS, &fields::NUTS_TO_A_BOLT), writer),
        }
        mate(line.washer, &fields::WASHER, (&fields::WASHER_HARDNESS, &fields::WASHERS_TO_A_BOLT), writer);
    }
    if let Some(nut) = line.nut {
        writer.put_optional(&fields::NUT_CLASS, nut.class);
    }
    writer.put_optional(&fields::OWN_ALLOWANCE, line.own_allowance);
    writer.put(&fields::SURROUNDINGS, line.surroundings);
    writer.put_optional(&fields::PLACE, line.place);
    writer.put_optional(&fields::HEAT, line.heat);
    writer.put_optional(&fields::YEARS, line.years);
    writer.put(&fields::ASKED, line.asked);
    writer.put_optional(&fields::MOST, line.most);
    writer.put(&fields::LEFT_OUT, line.left_out);
    writer.put(&fields::BATH, line.bath);
}

fn steel(state: State, end: End, writer: &mut Writer) {
    match state.steel {
        Steel::Grade(properties) => writer.put(&fields::STEEL, KnownSteel::Grade(properties.grade)),
        Steel::Hardness(hardness) => {
            writer.put(&fields::STEEL, KnownSteel::Hardness);
            writer.put(&fields::HARDNESS, hardness);
        }
        Steel::Tensile(tensile) => {
            writer.put(&fields::STEEL, KnownSteel::Tensile);
            writer.put(&fields::TENSILE, tensile);
        }
    }
    if !matches!(state.steel, Steel::Grade(_)) {
        writer.put(&fields::END, end);
    }
    let case = if state.case_hardened { CaseHardened::Yes } else { CaseHardened::No };
    writer.put(&fields::CASE, case);
    writer.put(&fields::COLD, state.worked);
}

fn mate(
    mate: Option<Mate>,
    named: &Field<Named>,
    (hardness, to_a_bolt): (&Field<Hardness>, &Field<u32>),
    writer: &mut Writer,
) {
    let name = |mate: Mate| match (mate.grade, mate.kind, mate.hardness) {
        (Some(grade), ..) => Named::Grade(grade),
        (None, Some(kind), _) => Named::Kind(kind),
        (None, None, Some(_)) if mate.is_hardness_least => Named::LeastHardness,
        (None, None, Some(_)) => Named::Hardness,
        (None, None, None) => Named::Standard,
    };
    writer.put(named, mate.map_or(Named::Without, name));
    if let Some(mate) = mate {
        writer.put_optional(hardness, mate.hardness);
        writer.put(to_a_bolt, mate.per_set);
    }
}
