//! Which table of loads a grade is looked up in, and by which stresses where none prints it.

use super::Grade;
use crate::quantity::Length;
use crate::table::Refusal;
use crate::table::bolt_load::{BoltStrength, Printed};
use crate::table::iso_898_1_loads::PropertyClass;
use crate::table::nut_grade::NutGrade;
use crate::table::steel_row::Proof;
use crate::table::{astm_a194_loads, astm_a563_proof, astm_a563m, en_14399_loads, iso_898_2_loads, sae_j995};

/// What is known of a bolt of this grade and nominal diameter, for its loads.
///
/// # Errors
/// Refuses a size that the standard does not cover.
pub fn bolt(grade: Grade, diameter: Length) -> Result<BoltStrength, Refusal> {
    let properties = grade.properties(diameter)?;
    let blank =
        || Refusal::blank(&format!("the proof stress of {}", grade.name()), grade.document().memory(""));
    // What the later edition asks above this size was not seen; the earlier one asked for less.
    let bd_above = grade == Grade::A354Bd && diameter > BD_PROOF_TO;
    let proof = match properties.row.proof {
        Proof::Stress(_) if bd_above => Err(blank()),
        Proof::Stress(known) => Ok(known),
        Proof::NotAsked(source) => Err(Refusal::not_covered(
            &format!("the proof load of {}", grade.name()),
            "the tensile strength",
            source,
        )),
        Proof::NotKnown => Err(blank()),
    };
    Ok(BoltStrength { printed: printed(grade), tensile: properties.tensile_min(), proof })
}

/// Up to this size the proof stress of ASTM A354 grade BD is known.
const BD_PROOF_TO: Length = Length::from_inch(2.5 + 1e-6);

fn printed(grade: Grade) -> Option<Printed> {
    if grade == Grade::A574 { Some(Printed::A574) } else { property_class(grade).map(Printed::Iso898_1) }
}

/// The property class of a bolt of ISO 898-1.
pub fn property_class(grade: Grade) -> Option<PropertyClass> {
    use PropertyClass::*;
    Some(match grade {
        Grade::Class4_6 => Class4_6,
        Grade::Class4_8 => Class4_8,
        Grade::Class5_6 => Class5_6,
        Grade::Class5_8 => Class5_8,
        Grade::Class6_8 => Class6_8,
        Grade::Class8_8 => Class8_8,
        Grade::Class9_8 => Class9_8,
        Grade::Class10_9 => Class10_9,
        Grade::Class12_9 | Grade::Class12_9Underlined => Class12_9,
        _ => return None,
    })
}

/// The grade of a nut as the tables of proof loads name it.
///
/// # Errors
/// A blank for a grade whose proof load no table here has.
pub fn nut(grade: Grade) -> Result<NutGrade, Refusal> {
    known_nut(grade).ok_or_else(|| {
        let what = format!("the proof load of a nut of {}", grade.name());
        Refusal::blank(&what, grade.document().memory(""))
    })
}

/// The same, for whom it is no error that no table has the grade.
pub fn known_nut(grade: Grade) -> Option<NutGrade> {
    use iso_898_2_loads::PropertyClass::*;
    Some(match grade {
        Grade::Nut04 => NutGrade::Iso898_2(Class04),
        Grade::Nut05 => NutGrade::Iso898_2(Class05),
        Grade::Nut5 => NutGrade::Iso898_2(Class5),
        Grade::Nut6 => NutGrade::Iso898_2(Class6),
        Grade::Nut8 => NutGrade::Iso898_2(Class8),
        Grade::Nut9 => NutGrade::Iso898_2(Class9),
        Grade::Nut10 => NutGrade::Iso898_2(Class10),
        Grade::Nut12 => NutGrade::Iso898_2(Class12),
        Grade::J995Grade2 => NutGrade::J995(sae_j995::Grade::Grade2),
        Grade::J995Grade5 => NutGrade::J995(sae_j995::Grade::Grade5),
        Grade::J995Grade8 => NutGrade::J995(sae_j995::Grade::Grade8),
        Grade::A563A => NutGrade::A563(astm_a563_proof::Grade::A),
        Grade::A563B => NutGrade::A563(astm_a563_proof::Grade::B),
        Grade::A563C | Grade::A563C3 => NutGrade::A563(astm_a563_proof::Grade::C),
        Grade::A563D => NutGrade::A563(astm_a563_proof::Grade::D),
        Grade::A563Dh => NutGrade::A563(astm_a563_proof::Grade::Dh),
        Grade::A563Dh3 => NutGrade::A563(astm_a563_proof::Grade::Dh3),
        Grade::A563mClass8S => NutGrade::A563M(astm_a563m::PropertyClass::Class8S),
        Grade::A563mClass10S => NutGrade::A563M(astm_a563m::PropertyClass::Class10S),
        Grade::A194Grade1 => NutGrade::A194(astm_a194_loads::Grade::Grade1),
        Grade::A194Grade2 => NutGrade::A194(astm_a194_loads::Grade::Grade2),
        Grade::A194Grade2H => NutGrade::A194(astm_a194_loads::Grade::Grade2H),
        Grade::A194Grade2HM => NutGrade::A194(astm_a194_loads::Grade::Grade2HM),
        Grade::A194Grade4 => NutGrade::A194(astm_a194_loads::Grade::Grade4),
        Grade::A194Grade7 => NutGrade::A194(astm_a194_loads::Grade::Grade7),
        Grade::A194Grade7M => NutGrade::A194(astm_a194_loads::Grade::Grade7M),
        Grade::NutHr8 => NutGrade::En14399(en_14399_loads::Class::Hr8),
        Grade::NutHr10 => NutGrade::En14399(en_14399_loads::Class::Hr10),
        Grade::NutHv10 => NutGrade::En14399(en_14399_loads::Class::Hv10),
        _ => return None,
    })
}

/// The grade by which the tables of steels know a nut.
pub fn grade_of_nut(nut: NutGrade) -> Option<Grade> {
    // The nuts stand behind the bolts.
    let nuts = Grade::ALL.get(Grade::Nut04 as usize..).unwrap_or_default();
    nuts.iter().copied().find(|grade| known_nut(*grade) == Some(nut))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The earlier edition of ASTM A354 gives grade BD its proof stress up to 2-1/2 in; what the later one asks
    /// above it was not seen.
    #[test]
    fn bd_has_its_proof_stress_up_to_two_and_a_half_inches() {
        let proof = |grade, inch| bolt(grade, Length::from_inch(inch)).unwrap().proof.is_ok();
        for (inch, known) in [(1.0, true), (2.5, true), (2.75, false), (4.0, false)] {
            assert_eq!(proof(Grade::A354Bd, inch), known, "{inch} in");
        }
        assert!(proof(Grade::A354Bc, 2.75));
    }

    #[test]
    fn every_nut_of_the_tables_has_its_grade() {
        for grade in [Grade::A563A, Grade::A563B, Grade::A563C, Grade::A563D, Grade::A563Dh] {
            assert!(known_nut(grade).is_some(), "{}", grade.name());
        }
        for nut in Grade::ALL.iter().filter_map(|grade| known_nut(*grade)) {
            assert_eq!(grade_of_nut(nut).and_then(known_nut), Some(nut));
        }
    }
}
