//! Steels that a part is never made of, because their document makes other parts.

use crate::part::{Form, Kind, Threaded};
use crate::steel::Grade;

/// Why a part is not of this grade; `None` where it may be.
///
/// Property classes of bolts are written for nuts, washers and rods every day; what is meant is judged.
pub(super) fn misfit(part: Kind, grade: Grade) -> Option<String> {
    let structural = Grade::AS_A325.contains(&grade) || Grade::AS_A490.contains(&grade);
    let (is_made, of) = match part.form() {
        Form::Other => return None,
        // ASTM F3125 makes bolts with heads; a rod of the strength of A325 is of A449, one of that of A490 of A354 BD.
        Form::Bolt if structural => {
            (part.threaded() == Threaded::Outside && !part.goes_into_a_tapped_hole(), "structural bolts")
        }
        _ if structural => (false, "structural bolts"),
        form if grade.is_nut() => (form == Form::Nut, "nuts"),
        form if grade.is_washer() => (form == Form::Washer, "washers"),
        form if grade.is_spring() => {
            (matches!(form, Form::Washer | Form::Ring | Form::Pin), "spring washers, rings and pins")
        }
        _ => return None,
    };
    let of_rods = match part.form() {
        Form::Bar if Grade::AS_A325.contains(&grade) => ", of the same strength ASTM A449",
        Form::Bar if Grade::AS_A490.contains(&grade) => ", of the same strength ASTM A354 BD",
        _ => "",
    };
    (!is_made)
        .then(|| format!("{} is a grade of {of}: name the grade of the part itself{of_rods}", grade.name()))
}
