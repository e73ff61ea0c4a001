//! The bake after electroplating, as the tables print it.

use super::hardness::Level;
use super::{Measure, State, Steel, SteelLimit};
use crate::quantity::{Hardness, Length, Scale, Stress};
use crate::table::{Refusal, astm_b850, iso_2081};

/// The bake after electroplating.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bake {
    /// The hardness or strength it is read by.
    pub by: Level,
    /// The row of ASTM B850.
    pub row: &'static astm_b850::Row,
}

impl Bake {
    /// The range of the row in the measure that it was read by: `33 to 36 HRC`.
    pub fn row_in_words(&self) -> String {
        let (low, high) = match self.by {
            Level::Tensile(_) => (Level::Tensile(self.row.over), Level::Tensile(self.row.to)),
            Level::Hardness(hardness) => {
                let end = |number| Level::Hardness(Hardness { number, ..hardness });
                (end(self.row.hrc.0), end(self.row.hrc.1))
            }
        };
        format!("{} to {}", low.show().digits(), high.show())
    }
}

/// The bake of ASTM B850 after electroplating; `None` at 1000 MPa and below.
///
/// The table prints strength and Rockwell C side by side, and the conversion table of ISO 18265 would
/// read a hardness up to one row too soft. So a hardness is read by the table's own column, a strength
/// by its own, and where both are known the longer bake counts.
///
/// # Errors
/// A [`Refusal`] above 1800 MPa or 51 HRC, where the table ends.
pub fn by_b850(state: &State) -> Result<Option<Bake>, Refusal> {
    let limit = SteelLimit::above(Level::Tensile(astm_b850::ABOVE));
    if !state
        .levels()
        .as_ref()
        .map_err(Refusal::clone)?
        .passes(limit, || limit.at.in_vickers().ok().flatten())
    {
        return Ok(None);
    }
    let hardness = match state.steel {
        Steel::Tensile(_) => None,
        Steel::Grade(_) | Steel::Hardness(_) => state.hardest(Measure::Scale(Scale::Hrc)).ok(),
    };
    // A strength that came from a conversion says nothing the hardness has not said.
    let strength = state.hardest(Measure::Tensile).ok().filter(|hardest| hardest.converted.is_none());
    let levels = [hardness, strength].into_iter().flatten().map(|hardest| hardest.as_compared());
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
pub fn by_section(tensile: Stress, section: Length) -> Option<&'static iso_2081::Row> {
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

#[cfg(test)]
mod tests {
    use super::super::Grade;
    use super::*;

    #[test]
    fn the_bake_follows_the_table_and_ends_with_it() {
        let of = |mpa| by_b850(&State::of(Steel::Tensile(Stress::from_mpa(mpa))));
        assert_eq!(of(1000.0), Ok(None));
        assert_eq!(of(1000.5).unwrap().unwrap().row.hours.hour(), 8.0);
        assert_eq!(of(1100.0).unwrap().unwrap().row.hours.hour(), 8.0);
        assert_eq!(of(1800.0).unwrap().unwrap().row.hours.hour(), 22.0);
        let by_hardness = |hrc| by_b850(&State::of(Steel::Hardness(Hardness::hrc(hrc))));
        assert_eq!(by_hardness(31.0), Ok(None));
        assert_eq!(by_hardness(38.0).unwrap().unwrap().row.hours.hour(), 12.0);
        assert!(by_hardness(51.5).unwrap_err().to_string().contains("31\u{a0}HRC to 51\u{a0}HRC"));
        // 173 ksi alone would be 10 h; the hardness of grade A490 asks for more.
        assert_eq!(
            by_b850(&State::of(Steel::grade(Grade::A490, Length::from_mm(25.4)).unwrap()))
                .unwrap()
                .unwrap()
                .row
                .hours
                .hour(),
            12.0
        );
        assert!(of(1801.0).unwrap_err().to_string().contains("1000\u{a0}MPa to 1800\u{a0}MPa"));
    }

    #[test]
    fn the_earlier_by_section() {
        let hours =
            |mpa, mm| by_section(Stress::from_mpa(mpa), Length::from_mm(mm)).map(|row| row.hours.hour());
        assert_eq!(hours(1040.0, 10.0), Some(2.0));
        assert_eq!(hours(1150.0, 20.0), Some(12.0));
        assert_eq!(hours(1400.0, 40.0), Some(24.0));
        assert_eq!(hours(1200.0, 41.0), None);
        assert_eq!(hours(1450.0, 10.0), None);
    }
}
