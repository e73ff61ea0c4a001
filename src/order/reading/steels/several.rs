//! Several steels on one line, of which it says no more.

use super::super::Became;
use super::super::either;
use super::super::items::Line;
use super::super::lexicon::{self, Word};
use super::super::part::Family;
use super::super::what::{SteelWord, What};
use crate::order::line::{BY_HARDNESS, BY_TENSILE};
use crate::quantity::letters::lower;
use crate::sorting::sort_by_key;
use crate::steel::Grade;

/// `8.8/10.9`, `class 8.8 class 10.9`: of two steels none is taken, for the harder may be meant; the line asks which.
pub(super) fn which_of_several(line: &mut Line, family: Family) {
    for field in ["steel", "nut", "washer", BY_HARDNESS, BY_TENSILE] {
        let contradicts = |at: usize| line.contradictions.contains(&(at, field));
        let of_field = |at: usize| {
            let became = line.items.get(at).and_then(|item| item.became.as_ref());
            let fills = matches!(became, Some(Became::Used(fields, _)) if fields.contains(&field));
            let is_steel = matches!(
                line.what(at),
                Some(What::Steel(_) | What::Class(_) | What::Bare(_) | What::Hardness(..))
            );
            // A grade of other parts is no steel of this one, and is named as that.
            let is_other =
                matches!(line.what(at), Some(What::Steel(SteelWord::Grade(grade))) if !family.has(*grade));
            !is_other && (contradicts(at) || fills && is_steel)
        };
        let places: Vec<usize> = (0..line.items.len()).filter(|at| of_field(*at)).collect();
        if !places.iter().any(|at| contradicts(*at)) || are_of_one_bolt(line, &places) {
            continue;
        }
        let mut names = either::names(line, &places);
        // As of two classes, the smaller first, in whatever order they stand.
        sort_by_key(&mut names, |text| (text.len(), *text));
        let why = either::ask_which(&names);
        places.iter().for_each(|at| line.not(*at, why.clone()));
        let is_known_by_it = line.draft.get("steel") == Some(field);
        line.take_back(&[field]);
        if is_known_by_it {
            line.take_back(&["steel"]);
        }
    }
}

/// `A325 TC bolts F1852`: a twist-off bolt has the steel of the other.
fn are_of_one_bolt(line: &Line, places: &[usize]) -> bool {
    const SAME: [[&[Grade]; 2]; 2] =
        [[&[Grade::A325, Grade::A325M], &[Grade::F1852]], [&[Grade::A490, Grade::A490M], &[Grade::F2280]]];
    let grades: Vec<Grade> = places
        .iter()
        .filter_map(|at| match line.what(*at)? {
            What::Steel(SteelWord::Grade(grade)) => Some(*grade),
            _ => None,
        })
        .collect();
    let are_all = |same: &[&[Grade]; 2]| grades.iter().all(|grade| same.iter().any(|of| of.contains(grade)));
    grades.len() == places.len() && SAME.iter().any(are_all)
}

/// `8.8 min`, `at least grade 5`: a grade is judged as itself, and whether a stronger one may come is asked.
pub(super) fn least(line: &mut Line) {
    let is_least = |line: &Line, at: usize| {
        line.what(at) == Some(&What::Filler)
            && line.items.get(at).is_some_and(|item| {
                let word = lower(&item.text);
                lexicon::means(word.trim_end_matches('.'), Word::Least)
            })
    };
    // `8.8, min 20 years`: the word is of what follows it.
    let is_of_grade = |line: &Line, at: usize| {
        let names = |what: &What| matches!(what, What::Part(_) | What::Process(..) | What::Coat(_));
        line.behind(at).and_then(|next| line.what(next)).is_none_or(names)
    };
    for at in 0..line.items.len() {
        let is_grade = matches!(line.what(at), Some(What::Steel(SteelWord::Grade(_))));
        let in_front = at.checked_sub(1).filter(|front| is_least(line, *front));
        let behind = Some(at + 1).filter(|behind| is_least(line, *behind) && is_of_grade(line, *behind));
        if let Some(bound) = in_front.or(behind).filter(|_| is_grade) {
            line.not(bound, LEAST_GRADE);
        }
    }
}

/// What a least grade leaves open.
const LEAST_GRADE: &str = "that grade, or a stronger one as well? Write the grade that is delivered";
