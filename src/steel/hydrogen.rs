//! Hydrogen: which documents' limits a steel meets or passes, and what each then asks for.
//!
//! The limits answer different questions (a ban, a risk, a way of cleaning, a bake) and are never
//! merged: each [`Rule`] is judged by itself, on its own scale, with its own source. The verdict of
//! a process is the worst of its rules. Everything is judged at the hardest end of the steel's range.

use super::hardness::Level;
use super::{Compared, Grade, Levels, Measure, Standing, State, Steel};
use crate::process::Process;
use crate::quantity::{Hardness, Length, Scale, Stress};
use crate::table::{Refusal, astm_b850, iso_2081};

mod rule;
mod words;

pub use rule::Rule;

/// How the steel is cleaned before the zinc.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Cleaning {
    /// Pickled in acid.
    Acid,
    /// Pickled in inhibited acid for the shortest time that cleans.
    InhibitedAcid,
    /// Alkaline, without current or with the part as the anode.
    Alkaline,
    /// Blasted or tumbled, with at most a flash pickle.
    Mechanical,
}

/// One rule beside the steel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ruling {
    /// The rule.
    pub rule: Rule,
    /// What it means for its process.
    pub standing: Standing,
}

/// What all rules say of a steel.
#[derive(Debug, Clone, PartialEq)]
pub struct Assessment {
    /// The steel.
    pub state: State,
    /// Its cleaning.
    pub cleaning: Cleaning,
    levels: Levels,
    rulings: [Option<Ruling>; Rule::ALL.len()],
}

/// The bake after electroplating.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bake {
    /// The hardness or strength it is read by.
    pub by: Level,
    /// The row of ASTM B850.
    pub row: &'static astm_b850::Row,
}

/// Judges a steel by every rule of every process.
///
/// # Errors
/// A [`Refusal`] where no conversion table reaches the steel.
pub fn assess(state: &State, cleaning: Cleaning) -> Result<Assessment, Refusal> {
    let levels = state.levels()?;
    let rulings = Rule::ALL.map(|rule| judge(rule, state, &levels, cleaning));
    Ok(Assessment { state: *state, cleaning, levels, rulings })
}

/// How a process stands for a steel: the worst of its rules, without keeping them.
///
/// # Errors
/// A [`Refusal`] where no conversion table reaches the steel.
pub fn standing(state: &State, cleaning: Cleaning, process: Process) -> Result<Standing, Refusal> {
    let levels = state.levels()?;
    let rules = Rule::ALL.iter().copied().filter(|rule| rule.process() == process);
    let rulings = rules.filter_map(|rule| judge(rule, state, &levels, cleaning));
    Ok(rulings.map(|ruling| ruling.standing).max().unwrap_or(Standing::Met))
}

/// Judges a steel by one rule; `None` where the rule does not speak of such a steel.
pub fn judge(rule: Rule, state: &State, levels: &Levels, cleaning: Cleaning) -> Option<Ruling> {
    let passed = rule.limit().is_some_and(|limit| levels.passes(limit, || rule.limit_in_vickers()));
    Some(Ruling { rule, standing: means(rule, state, cleaning, passed)? })
}

/// What a rule means for its process once its limit is passed or not.
fn means(rule: Rule, state: &State, cleaning: Cleaning, passed: bool) -> Option<Standing> {
    let grade = state.grade().map(|properties| properties.grade);
    let when = |condition: bool, standing| if condition { standing } else { Standing::Met };
    Some(match rule {
        // F436 itself provides for washers that are hot-dip coated, down to 26 HRC.
        Rule::F2329Ban | Rule::PracticeKettle if grade == Some(Grade::F436) => {
            when(passed, Standing::Condition)
        }
        Rule::F2329Ban | Rule::PracticeKettle | Rule::Iso2081Strength => when(passed, Standing::Bar),
        Rule::F2329CaseHardened if state.case_hardened => Standing::Bar,
        Rule::F3125Kettle | Rule::F3125Barrel | Rule::A490Cell if grade == Some(Grade::A490) => Standing::Bar,
        Rule::Iso10684Scope => match grade.and_then(Grade::in_iso_10684) {
            Some(true) => Standing::Met,
            Some(false) => Standing::Bar,
            None => return None,
        },
        Rule::F2329Risk
        | Rule::A143Strength
        | Rule::B695Relief
        | Rule::BarrelPractice
        | Rule::F1941Bake
        | Rule::F1941BakeEarlier
        | Rule::Iso4042Bake
        | Rule::B633Relief
        | Rule::B633Bake
        | Rule::B849Relief
        | Rule::B850Bake => when(passed, Standing::Condition),
        // Inhibited acid, alkaline and mechanical cleaning are what ISO 10684 asks for.
        Rule::Iso10684Cleaning => when(passed, Standing::Condition),
        Rule::A143Bend if state.cold_worked => Standing::Condition,
        Rule::MakersAdvice if matches!(grade, Some(Grade::A354Bd | Grade::J429Grade8)) => Standing::Condition,
        Rule::BarrelHydrogen => when(passed, Standing::Note),
        Rule::B695Cleaning => match cleaning {
            Cleaning::Acid if passed => Standing::Condition,
            Cleaning::Acid => Standing::Note,
            Cleaning::InhibitedAcid | Cleaning::Alkaline | Cleaning::Mechanical => Standing::Met,
        },
        Rule::F1941Cleaning => when(passed || state.case_hardened, Standing::Condition),
        // The earlier edition is told for who still orders by it; the later one decides.
        Rule::Iso4042Investigate | Rule::Iso4042Agree => when(passed, Standing::Note),
        _ => return None,
    })
}

/// The bake of ASTM B850 after electroplating; `None` at 1000 MPa and below.
///
/// The table prints strength and Rockwell C side by side, and the conversion table of ISO 18265 would
/// read a hardness up to one row too soft. So a hardness is read by the table's own column, a strength
/// by its own, and where both are known the longer bake counts.
///
/// # Errors
/// A [`Refusal`] above 1800 MPa or 51 HRC, where the table ends.
pub fn bake(state: &State) -> Result<Option<Bake>, Refusal> {
    let Some(limit) = Rule::B850Bake.limit() else { return Ok(None) };
    if !state.levels()?.passes(limit, || Rule::B850Bake.limit_in_vickers()) {
        return Ok(None);
    }
    let hardness = match state.steel {
        Steel::Tensile(_) => None,
        Steel::Grade(_) | Steel::Hardness(_) => state.hardest(Measure::Scale(Scale::Hrc)).ok(),
    };
    // A strength that came from a conversion says nothing the hardness has not said.
    let strength = state.hardest(Measure::Tensile).ok().filter(|hardest| hardest.converted.is_none());
    let levels = [hardness, strength].into_iter().flatten().map(|hardest| hardest.level);
    let mut longest: Option<Bake> = None;
    for by in levels {
        let row = row_of(by).ok_or_else(|| b850_ends(by))?;
        if longest.is_none_or(|bake| bake.row.hours < row.hours) {
            longest = Some(Bake { by, row });
        }
    }
    Ok(longest)
}

/// The row of ASTM B850 for a strength or a Rockwell C hardness; the end of a range belongs to it.
///
/// The limit of 1000 MPa was passed already, so what is below the table's 31 HRC reads its first row.
fn row_of(by: Level) -> Option<&'static astm_b850::Row> {
    astm_b850::TABLE_1.iter().find(|row| match by {
        Level::Tensile(tensile) => tensile <= row.to,
        Level::Hardness(hardness) => hardness.number <= row.hrc.1,
    })
}

/// The bake of the earlier ISO 2081 for a strength and a section, if its table has one.
///
/// Where two ranges of strength meet, the stronger one counts: it bakes longer.
pub fn bake_by_section(tensile: Stress, section: Length) -> Option<&'static iso_2081::Row> {
    let holds = |row: &&iso_2081::Row| row.from <= tensile && tensile <= row.to && section <= row.section_to;
    iso_2081::BAKE.iter().filter(holds).max_by(|one, other| {
        let stronger = one.from.mpa().total_cmp(&other.from.mpa());
        stronger.then(other.section_to.mm().total_cmp(&one.section_to.mm()))
    })
}

fn b850_ends(by: Level) -> Refusal {
    let end = |row: Option<&astm_b850::Row>,
               tensile: fn(&astm_b850::Row) -> Stress,
               hrc: fn(&astm_b850::Row) -> f64| {
        match (row, by) {
            (Some(row), Level::Tensile(_)) => Level::Tensile(tensile(row)).show(),
            (Some(row), Level::Hardness(hardness)) => {
                Level::Hardness(Hardness { number: hrc(row), ..hardness }).show()
            }
            (None, by) => by.show(),
        }
    };
    Refusal::outside(
        if matches!(by, Level::Tensile(_)) { "tensile strength" } else { "hardness" },
        by.show(),
        end(astm_b850::TABLE_1.first(), |row| row.over, |row| row.hrc.0),
        end(astm_b850::TABLE_1.last(), |row| row.to, |row| row.hrc.1),
        astm_b850::TABLE_1_SOURCE,
    )
}

impl Assessment {
    /// The rules of a process that speak of this steel, in the order of [`Rule::ALL`].
    pub fn of(&self, process: Process) -> impl Iterator<Item = &Ruling> {
        self.rulings.iter().flatten().filter(move |ruling| ruling.rule.process() == process)
    }

    /// Every rule that speaks of this steel.
    pub fn all(&self) -> impl Iterator<Item = &Ruling> {
        self.rulings.iter().flatten()
    }

    /// What one rule says, if it speaks of this steel.
    pub fn ruling(&self, rule: Rule) -> Option<&Ruling> {
        self.all().find(|ruling| ruling.rule == rule)
    }

    /// The steel beside a rule's limit, where the rule has one.
    pub fn compared(&self, rule: Rule) -> Option<Compared> {
        Some(self.levels.compare(rule.limit()?, rule.limit_in_vickers()))
    }

    /// The worst of a process's rules.
    pub fn standing(&self, process: Process) -> Standing {
        self.of(process).map(|ruling| ruling.standing).max().unwrap_or(Standing::Met)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn grade(grade: Grade, mm: f64) -> State {
        State::of(Steel::grade(grade, Length::from_mm(mm)).unwrap())
    }

    fn three(state: &State) -> [Standing; 3] {
        let assessment = assess(state, Cleaning::Acid).unwrap();
        for process in Process::ALL {
            assert_eq!(standing(state, Cleaning::Acid, process), Ok(assessment.standing(process)));
        }
        Process::ALL.map(|process| assessment.standing(process))
    }

    #[test]
    fn the_verdict_of_each_process() {
        use Standing::{Bar, Condition, Met, Note};
        let cases = [
            (Grade::Class4_6, 16.0, [Met, Note, Met]),
            (Grade::Class8_8, 16.0, [Condition, Condition, Condition]),
            (Grade::Class10_9, 20.0, [Condition, Condition, Condition]),
            (Grade::Class12_9, 20.0, [Bar, Condition, Condition]),
            (Grade::A490, 25.4, [Bar, Bar, Bar]),
            (Grade::A574, 10.0, [Bar, Condition, Condition]),
            (Grade::J429Grade2, 12.7, [Met, Note, Met]),
            (Grade::J429Grade8, 19.05, [Condition, Condition, Condition]),
            (Grade::F436, 20.0, [Condition, Condition, Condition]),
        ];
        for (steel, mm, standings) in cases {
            assert_eq!(three(&grade(steel, mm)), standings, "{}", steel.name());
        }
    }

    #[test]
    fn limits_are_never_merged() {
        let assessment = assess(&grade(Grade::Class10_9, 20.0), Cleaning::Acid).unwrap();
        let passed = |rule| assessment.compared(rule).unwrap().passed;
        assert!(passed(Rule::F2329Risk) && passed(Rule::Iso10684Cleaning) && passed(Rule::B850Bake));
        assert!(!passed(Rule::F2329Ban) && !passed(Rule::PracticeKettle) && !passed(Rule::Iso4042Bake));
        assert!(!passed(Rule::F1941Bake) && passed(Rule::Iso4042Agree));
    }

    #[test]
    fn case_hardening_bars_the_kettle_whatever_the_core() {
        let mut state = State::of(Steel::Hardness(Hardness::hv(250.0)));
        assert_eq!(standing(&state, Cleaning::Acid, Process::HotDip), Ok(Standing::Met));
        state.case_hardened = true;
        assert_eq!(standing(&state, Cleaning::Acid, Process::HotDip), Ok(Standing::Bar));
    }

    #[test]
    fn the_bake_follows_the_table_and_ends_with_it() {
        let of = |mpa| bake(&State::of(Steel::Tensile(Stress::from_mpa(mpa))));
        assert_eq!(of(1000.0), Ok(None));
        assert_eq!(of(1000.5).unwrap().unwrap().row.hours.hour(), 8.0);
        assert_eq!(of(1100.0).unwrap().unwrap().row.hours.hour(), 8.0);
        assert_eq!(of(1800.0).unwrap().unwrap().row.hours.hour(), 22.0);
        let by_hardness = |hrc| bake(&State::of(Steel::Hardness(Hardness::hrc(hrc))));
        assert_eq!(by_hardness(31.0), Ok(None));
        assert_eq!(by_hardness(38.0).unwrap().unwrap().row.hours.hour(), 12.0);
        assert!(by_hardness(51.5).unwrap_err().to_string().contains("31\u{a0}HRC to 51\u{a0}HRC"));
        // 173 ksi alone would be 10 h; the hardness of grade A490 asks for more.
        assert_eq!(bake(&grade(Grade::A490, 25.4)).unwrap().unwrap().row.hours.hour(), 12.0);
        assert!(of(1801.0).unwrap_err().to_string().contains("1000\u{a0}MPa to 1800\u{a0}MPa"));
    }

    #[test]
    fn the_earlier_bake_by_section() {
        let hours =
            |mpa, mm| bake_by_section(Stress::from_mpa(mpa), Length::from_mm(mm)).map(|row| row.hours.hour());
        assert_eq!(hours(1040.0, 10.0), Some(2.0));
        assert_eq!(hours(1150.0, 20.0), Some(12.0));
        assert_eq!(hours(1400.0, 40.0), Some(24.0));
        assert_eq!(hours(1200.0, 41.0), None);
        assert_eq!(hours(1450.0, 10.0), None);
    }
}
