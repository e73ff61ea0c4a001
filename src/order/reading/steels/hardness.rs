//! What says how hard the steel is: of the part, or of what comes with it.

use super::super::Became;
use super::super::items::Line;
use super::super::measure::{LEAST, LEAST_HARDNESS};
use super::super::part::{Family, Scope, Scopes};
use super::super::what::What;
use crate::order::line::{BY_HARDNESS, BY_TENSILE, END_OF_STEEL, LEAST as END_LEAST};
use crate::part::Kind;
use crate::quantity::{Hardness, Scale, Stress};
use crate::steel::Grade;
use crate::table::steel_row::{HardnessLimits, SteelRow};

/// Why the yield strength that a grade of ASTM F1554 has its name from is not used.
const YIELD_OF_A_GRADE: &str =
    "grades of ASTM F1554 yield there, and break at more: write F1554 grade 36, 55 or 105 if one is meant";

/// A hardness, where no grade is said.
pub(super) fn hardness(line: &mut Line, scopes: &Scopes) {
    let found = line.free(|what| match what {
        What::Hardness(text, range) => Some((text.clone(), range.clone())),
        _ => None,
    });
    // A greatest hardness that is said besides decides.
    let is_least = |note: &Option<String>| matches!(note.as_deref(), Some(LEAST | LEAST_HARDNESS));
    let is_said = |steel: Option<&str>| matches!(steel, Some(BY_HARDNESS | BY_TENSILE));
    let (least, greatest): (Vec<_>, Vec<_>) = found.into_iter().partition(|(_, (_, note))| is_least(note));
    for (at, (text, note)) in greatest.into_iter().chain(least) {
        let beside = scopes.of.get(at).copied().unwrap_or_default();
        if beside == Scope::Part && is_least(&note) && is_said(line.draft.get("steel")) {
            line.not(at, "the greatest hardness decides, and not the least");
            continue;
        }
        let grade = line.draft.get("steel").and_then(Grade::of_key).map(|grade| grade.key().to_owned());
        // `anchor rods 36 ksi`: ASTM F1554 names its grades by where they yield.
        let is_anchor = matches!(scopes.kind, Some(Kind::AnchorRod | Kind::BentAnchor));
        if is_anchor && beside == Scope::Part && matches!(text.as_str(), "36 ksi" | "55 ksi" | "105 ksi") {
            line.not(at, YIELD_OF_A_GRADE);
            continue;
        }
        let field = if text.ends_with("MPa") || text.ends_with("ksi") { BY_TENSILE } else { BY_HARDNESS };
        if beside != Scope::Part {
            of_mate(line, at, beside, &text, note.filter(|_| field == BY_HARDNESS));
        } else if let Some(key) = grade {
            beside_a_grade(line, at, &key, &text, is_least(&note));
        } else {
            let is_least = is_least(&note);
            if let Some(note) = note {
                line.note(field, note);
            }
            line.fill(at, field, &text, "the hardness");
            if line.draft.get(field) == Some(text.as_str()) {
                line.draft.set("steel", field);
                if is_least {
                    line.draft.set(END_OF_STEEL, END_LEAST);
                }
            }
        }
    }
}

/// `8.8 / 8 / 200 HV`: the hardness of the washer, where one comes with the bolt.
pub(super) fn of_washers(line: &mut Line, scopes: &Scopes) {
    let found = line.free(|what| match what {
        What::OfWasher(text) => Some(text.clone()),
        _ => None,
    });
    for (at, text) in found {
        // The three classes name the three parts.
        match scopes.family == Family::Bolt {
            true => of_mate(line, at, Scope::Washer, &text, None),
            false => line.not(at, "of a washer, and none is ordered here"),
        }
    }
}

/// The hardness of the nut or the washer that comes with a bolt, where no grade says it.
fn of_mate(line: &mut Line, at: usize, beside: Scope, text: &str, note: Option<String>) {
    let (field, hardness) = match beside {
        Scope::Nut => ("nut", "nut_hardness"),
        _ => ("washer", "washer_hardness"),
    };
    if text.ends_with("MPa") || text.ends_with("ksi") {
        line.not(at, "the strength of what comes with the bolt is not asked: write its hardness");
    } else if line.draft.get(field).is_some_and(|named| named != BY_HARDNESS) {
        line.not(at, "the steel is said by its grade");
    } else {
        line.fill(at, hardness, text, "the hardness");
        if line.draft.get(hardness) == Some(text) {
            line.draft.set(field, BY_HARDNESS);
        }
        if let Some(note) = note {
            line.note(hardness, note);
        }
    }
}

/// A hardness as its piece has it: `320 HV`.
fn hardness_of(text: &str) -> Option<Hardness> {
    let (number, scale) = text.split_once(' ')?;
    let scale =
        [Scale::Hrc, Scale::Hv, Scale::Hb, Scale::Hrb].into_iter().find(|own| own.unit().symbol == scale)?;
    Some(Hardness { scale, number: number.parse().ok()? })
}

/// `8.8 min 320 HV`, `8.8 min 900 MPa`, `10.9 800 MPa`: the grade has less at least, or is stronger, and both are asked.
fn asks_for_more(grade: Grade, text: &str, is_least: bool) -> Option<String> {
    let name = grade.name();
    let asks = |least: String| {
        format!(
            "{name} has {least} at least, and {text} is asked for: which of the two? Write the grade that is delivered"
        )
    };
    if let Some(hardness) = hardness_of(text) {
        let limits = grade.rows().iter().filter_map(|row| row.limits(hardness.scale));
        let mins: Vec<Hardness> = limits.filter_map(|limits| limits.min).collect();
        let greatest = mins.iter().max_by(|one, other| one.number.total_cmp(&other.number))?;
        let unit = greatest.scale.unit().symbol;
        return (is_least && hardness.number > greatest.number)
            .then(|| asks(format!("{} {unit}", greatest.number)));
    }
    let (number, unit) = text.split_once(' ')?;
    let stress = match unit {
        "MPa" => Stress::from_mpa(number.parse().ok()?),
        "ksi" => Stress::from_ksi(number.parse().ok()?),
        _ => return None,
    };
    let mins: Vec<f64> =
        grade.rows().iter().filter_map(|row| row.tensile_min).map(|least| least.value.mpa()).collect();
    let greatest = mins.iter().copied().max_by(f64::total_cmp)?;
    let least = mins.iter().copied().min_by(f64::total_cmp)?;
    // Grades are called by round numbers: 8.8 by 800 MPa, and has 830 in large sizes.
    let is_more = stress.mpa() > greatest * if is_least { 1.005 } else { NAMED_SO };
    let is_less = !is_least && stress.mpa() < least / NAMED_SO;
    let shown = if unit == "ksi" {
        format!("{:.0} ksi", Stress::from_mpa(least).ksi())
    } else {
        format!("{least:.0} MPa")
    };
    (is_more || is_less).then(|| asks(shown))
}

/// A strength by which a grade is called lies no farther from its least one than this factor.
const NAMED_SO: f64 = 1.1;

/// A hardness beside a grade: that of the grade, or another that asks which of the two is right.
fn beside_a_grade(line: &mut Line, at: usize, key: &str, text: &str, is_least: bool) {
    let Some(grade) = Grade::of_key(key) else { return };
    let hardness = hardness_of(text);
    // Its limits in any size: a size that is not read yet makes no contradiction.
    let fits = |row: &SteelRow| {
        let within = |limits: HardnessLimits, hardness: Hardness| {
            // Of a least hardness the steel may have more.
            (is_least || limits.min.is_none_or(|min| min.number <= hardness.number))
                && limits.max.is_none_or(|max| hardness.number <= max.number)
        };
        hardness.and_then(|hardness| Some(within(row.limits(hardness.scale)?, hardness)))
    };
    let rows: Vec<bool> = grade.rows().iter().filter_map(fits).collect();
    if rows.is_empty() || rows.contains(&true) {
        match asks_for_more(grade, text, is_least) {
            Some(why) => line.not(at, why),
            None => line.not(at, "the steel is said by its grade"),
        }
        return;
    }
    let why = format!("{} is not of {text}: which of the two is right?", grade.name());
    line.not(at, why.clone());
    let of_grade = line.items.iter().enumerate().filter(|(_, item)| {
        matches!(&item.what, What::Steel(_))
            && matches!(&item.became, Some(Became::Used(fields, _)) if fields.contains(&"steel"))
    });
    for place in of_grade.map(|(place, _)| place).collect::<Vec<_>>() {
        line.not(place, why.clone());
    }
    line.take_back(&["steel"]);
}

#[cfg(test)]
mod tests {
    use super::asks_for_more;
    use crate::steel::Grade;

    /// ISO 898-1: class 8.8 has 800 MPa and 250 HV, and above 16 mm 830 MPa and 255 HV.
    #[test]
    fn a_grade_is_asked_where_more_or_less_than_it_has_is_written() {
        let asked = |text: &str, is_least: bool| {
            let grade = Grade::of_key("8.8").and_then(|grade| asks_for_more(grade, text, is_least));
            grade.map(|why| why.contains("has 255 HV at least") || why.contains("has 800 MPa at least"))
        };
        for (text, is_least, is_asked) in [
            ("255 HV", true, false),
            ("256 HV", true, true),
            ("256 HV", false, false),
            ("834 MPa", true, false),
            ("835 MPa", true, true),
            ("913 MPa", false, false),
            ("914 MPa", false, true),
            ("728 MPa", false, false),
            ("727 MPa", false, true),
            ("727 MPa", true, false),
            ("116 ksi", false, false),
        ] {
            assert_eq!(asked(text, is_least), is_asked.then_some(true), "{text}, at least: {is_least}");
        }
        let grade = Grade::of_key("8.8").unwrap();
        assert!(asks_for_more(grade, "150 ksi", false).unwrap().contains("has 116 ksi at least"));
    }
}
