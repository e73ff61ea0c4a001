//! What is hot-dipped every day, and what is once somebody has proved it.

use crate::part::UsualSteel;
use crate::rule::{Case, Part};
use crate::steel::Grade;
use crate::steel::tempering::{Bath, Effect};

/// Grades that are hot-dipped every day: a retest below their temper is their maker's routine.
pub(super) const DAILY: &[Grade] = &[
    Grade::Class4_6,
    Grade::Class4_8,
    Grade::Class5_6,
    Grade::Class5_8,
    Grade::Class6_8,
    Grade::Class8_8,
    Grade::Class9_8,
    Grade::J429Grade1,
    Grade::J429Grade2,
    Grade::J429Grade5,
    Grade::A307,
    Grade::A307B,
    Grade::A325,
    Grade::A325M,
    Grade::F1852,
    Grade::F1554Grade36,
    Grade::F1554Grade55,
    Grade::F1554Grade105,
    Grade::A449,
    Grade::A354Bc,
    Grade::A193B7,
    Grade::A193B7M,
];

/// Grades whose maker agrees, or proves temper or hardness and proof load.
const AGREED: &[Grade] = &[Grade::J429Grade8, Grade::A354Bd];

/// Whether a part carries no tension by its temper: a flat washer, or a nut. Springs do.
pub(super) fn is_soft_or_pressed(case: &Case<'_>) -> bool {
    let flat = |part: &Part| {
        part.kind.is_nut() || (part.kind.is_washer() && part.kind.usual_steel() == UsualSteel::ByGrade)
    };
    let soft = |grade: Grade| grade.is_nut() || (grade.is_washer() && !grade.is_spring());
    case.part.is_some_and(flat) || case.grade().is_some_and(soft)
}

/// Whether a grade may be dipped all the same, if hardness and proof load are proved after it.
pub(super) fn is_provable(grade: Grade) -> bool {
    AGREED.contains(&grade)
        || DAILY.contains(&grade)
        || grade.in_iso_10684() == Some(true)
        // Nuts and flat washers are dipped as daily as the bolts of the same temper.
        || grade.is_nut()
        || (grade.is_washer() && !grade.is_spring())
}

/// Whether a dip of this part in this bath is everyday work: a grade of every day, or any nut. Of no washer a
/// standard gives a temper.
pub(super) fn is_routine(case: &Case<'_>, effect: &Effect) -> bool {
    let usual_bath = matches!(effect.bath, Bath::Low | Bath::Normal);
    let nut = case.part.is_some_and(|part| part.kind.is_nut());
    let actual = effect.temper.is_some_and(|against| against.temper.least_of.is_none());
    usual_bath
        && !actual
        && (nut || case.grade().is_some_and(|grade| DAILY.contains(&grade) || grade.is_nut()))
}
