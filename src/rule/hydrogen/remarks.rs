//! What to say beside the rules.

use crate::rule::SteelFacts;
use crate::steel::Grade;

/// Remarks on a steel that no rule carries.
pub fn remarks(steel: &SteelFacts) -> Vec<&'static str> {
    let mut remarks = Vec::new();
    if steel.state.is_cased() {
        remarks.push(
            "A case is harder than its core: give the hardness of the surface. No document read here sets a limit for \
             case-hardened parts in the barrel.",
        );
        let grade = steel.state.grade().map(|properties| properties.grade);
        if matches!(grade, Some(Grade::Class10_9 | Grade::Class12_9 | Grade::Class12_9Underlined)) {
            remarks.push(
                "ISO 898-1 accepts no surface harder than 390 HV on class 10.9 and 435 HV on class 12.9: check what was \
                 ordered.",
            );
        }
    }
    remarks
}
