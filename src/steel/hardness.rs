//! From one hardness scale to another, and to tensile strength, by published tables.
//!
//! One table answers one pair, in one step: ASTM E140 Table 1 between HRC, HV and HB; E140 Table 2
//! between HRB, HV and HB; ISO 18265 Table A.1 between tensile strength and HV, HRC or HB, and
//! between HV and HB below the range of E140. Between two rows the value is interpolated on a
//! straight line; outside the rows there is none. Two pairs stand in no table here (HRC with HRB,
//! and HRB with tensile strength): they are refused, and who needs them goes by way of HV and sees
//! both steps.

use std::sync::OnceLock;

use crate::quantity::{Hardness, Quantity, Scale, Shown, Stress, Unit, unit};
use crate::source::{Basis, Source};
use crate::table::{Cause, Refusal, astm_e140, iso_18265};

/// A hardness or a tensile strength: what steels are told apart by.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Level {
    /// A hardness on its scale.
    Hardness(Hardness),
    /// A tensile strength.
    Tensile(Stress),
}

/// A value found by a table, with the two rows it lies between.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Converted {
    /// What was asked for.
    pub from: Level,
    /// What the table says.
    pub to: Level,
    /// The row below: both columns.
    pub below: (f64, f64),
    /// The row above; the same row where the table has the value itself.
    pub above: (f64, f64),
    /// The table.
    pub source: Source,
}

/// Goes from one hardness scale to another.
///
/// # Errors
/// [`Cause::Outside`] beyond the rows of the table, [`Cause::NotCovered`] where no table has
/// both scales.
pub fn convert(hardness: Hardness, to: Scale) -> Result<Converted, Refusal> {
    let from = hardness.scale;
    let found = match table_of(from, to) {
        Some(Table::E140C) => through(&E140_C, hardness.number, from, to),
        Some(Table::E140B) => through(&E140_B, hardness.number, from, to),
        Some(Table::E140ThenIso18265) => {
            // Below the Rockwell C range only ISO 18265 has both columns.
            through(&E140_C, hardness.number, from, to).or_else(|e140| {
                through(&ISO_18265, hardness.number, from, to).map_err(|iso| from_to(iso, e140))
            })
        }
        None => Err(Refusal::not_covered(
            &format!("{} to {}", from.unit().symbol, to.unit().symbol),
            "each of them with HV",
            astm_e140::table_1(Basis::Read),
        )),
    }?;
    Ok(found.named(Level::Hardness(hardness), |number| Level::Hardness(Hardness { scale: to, number })))
}

/// The tensile strength that goes with a hardness, by ISO 18265 Table A.1.
///
/// # Errors
/// [`Cause::Outside`] beyond the rows of the table, [`Cause::NotCovered`] for HRB.
pub fn to_tensile(hardness: Hardness) -> Result<Converted, Refusal> {
    let columns = (iso_column(hardness.scale)?, Column::Tensile);
    let found = ISO_18265.find(hardness.number, columns, hardness.scale.unit())?;
    Ok(found.named(Level::Hardness(hardness), |mpa| Level::Tensile(Stress::from_mpa(mpa))))
}

/// The hardness that goes with a tensile strength, by ISO 18265 Table A.1.
///
/// # Errors
/// [`Cause::Outside`] beyond the rows of the table, [`Cause::NotCovered`] for HRB.
pub fn from_tensile(tensile: Stress, to: Scale) -> Result<Converted, Refusal> {
    let columns = (Column::Tensile, iso_column(to)?);
    let found = ISO_18265.find(tensile.mpa(), columns, &unit::MPA)?;
    Ok(found.named(Level::Tensile(tensile), |number| Level::Hardness(Hardness { scale: to, number })))
}

impl Level {
    /// The same steel in Vickers, on which every table is built; `None` if it is in Vickers already.
    ///
    /// # Errors
    /// A [`Refusal`] of the table.
    pub fn in_vickers(self) -> Result<Option<Converted>, Refusal> {
        match self {
            Self::Hardness(Hardness { scale: Scale::Hv, .. }) => Ok(None),
            Self::Hardness(hardness) => convert(hardness, Scale::Hv).map(Some),
            Self::Tensile(tensile) => from_tensile(tensile, Scale::Hv).map(Some),
        }
    }

    /// The bare number on its own scale, MPa for a strength.
    pub fn number(self) -> f64 {
        match self {
            Self::Hardness(hardness) => hardness.number,
            Self::Tensile(tensile) => tensile.mpa(),
        }
    }

    /// As shown: whole numbers, Rockwell to a tenth where it is not whole.
    pub fn show(self) -> Shown {
        match self {
            Self::Hardness(hardness) => {
                let rockwell = matches!(hardness.scale, Scale::Hrc | Scale::Hrb);
                let whole = (hardness.number - hardness.number.round()).abs() < 1e-9;
                hardness.show(u8::from(rockwell && !whole))
            }
            Self::Tensile(tensile) => tensile.show(&unit::MPA, 0),
        }
    }
}

enum Table {
    E140C,
    E140B,
    E140ThenIso18265,
}

fn table_of(from: Scale, to: Scale) -> Option<Table> {
    match (from, to) {
        (Scale::Hrc, Scale::Hrb) | (Scale::Hrb, Scale::Hrc) => None,
        (Scale::Hrb, _) | (_, Scale::Hrb) => Some(Table::E140B),
        (Scale::Hv, Scale::Hb) | (Scale::Hb, Scale::Hv) => Some(Table::E140ThenIso18265),
        _ => Some(Table::E140C),
    }
}

fn through(table: &Rows, number: f64, from: Scale, to: Scale) -> Result<Found, Refusal> {
    table.find(number, (Column::of(from), Column::of(to)), from.unit())
}

fn iso_column(scale: Scale) -> Result<Column, Refusal> {
    match scale {
        Scale::Hrb => Err(Refusal::not_covered(
            "HRB with tensile strength",
            "HV, HB and HRC with tensile strength",
            iso_18265::TABLE_A_1_SOURCE,
        )),
        scale => Ok(Column::of(scale)),
    }
}

/// Of two tables that follow each other, the refusal that names both as one range.
fn from_to(softer: Refusal, harder: Refusal) -> Refusal {
    match (softer.cause(), harder.cause()) {
        (Cause::Outside { min, .. }, Cause::Outside { what, asked, max, source, .. }) => {
            Refusal::outside(what, *asked, *min, *max, *source)
        }
        _ => harder,
    }
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Column {
    Hrc,
    Hrb,
    Hv,
    Hb,
    Tensile,
}

impl Column {
    const COUNT: usize = 5;

    fn of(scale: Scale) -> Self {
        match scale {
            Scale::Hrc => Self::Hrc,
            Scale::Hrb => Self::Hrb,
            Scale::Hv => Self::Hv,
            Scale::Hb => Self::Hb,
        }
    }
}

/// Two columns of a table side by side, softest row first: only the rows that fill both.
type Line = Vec<(f64, f64, Basis)>;

/// A table: its number of rows, its cells, and its source on the basis of a row.
struct Rows {
    count: usize,
    cell: fn(usize, Column) -> Option<f64>,
    basis: fn(usize) -> Basis,
    source: fn(Basis) -> Source,
    /// Each pair of columns, put together when it is first asked for.
    lines: [OnceLock<Line>; Column::COUNT * Column::COUNT],
}

static E140_C: Rows = Rows {
    count: astm_e140::TABLE_1.len(),
    cell: |at, column| {
        let row = astm_e140::TABLE_1.get(at)?;
        match column {
            Column::Hrc => Some(row.hrc),
            Column::Hv => Some(row.hv),
            Column::Hb => row.hb.filter(|_| row.hrc <= astm_e140::TABLE_1_BRINELL_TO),
            Column::Hrb | Column::Tensile => None,
        }
    },
    basis: |at| astm_e140::TABLE_1.get(at).map_or(Basis::Memory, |row| row.basis),
    source: astm_e140::table_1,
    lines: [const { OnceLock::new() }; Column::COUNT * Column::COUNT],
};

static E140_B: Rows = Rows {
    count: astm_e140::TABLE_2.len(),
    cell: |at, column| {
        let row = astm_e140::TABLE_2.get(at)?;
        match column {
            Column::Hrb => Some(row.hrb),
            Column::Hv => Some(row.hv),
            Column::Hb => row.hb,
            Column::Hrc | Column::Tensile => None,
        }
    },
    basis: |_| Basis::Read,
    source: |_| astm_e140::TABLE_2_SOURCE,
    lines: [const { OnceLock::new() }; Column::COUNT * Column::COUNT],
};

static ISO_18265: Rows = Rows {
    count: iso_18265::TABLE_A_1.len(),
    cell: |at, column| {
        let row = iso_18265::TABLE_A_1.get(at)?;
        match column {
            Column::Hv => Some(row.hv),
            Column::Hb => row.hb.filter(|_| row.hv <= iso_18265::BRINELL_TO),
            Column::Hrc => row.hrc,
            Column::Tensile => row.tensile,
            Column::Hrb => None,
        }
    },
    basis: |_| Basis::Read,
    source: |_| iso_18265::TABLE_A_1_SOURCE,
    lines: [const { OnceLock::new() }; Column::COUNT * Column::COUNT],
};

struct Found {
    below: (f64, f64),
    above: (f64, f64),
    value: f64,
    source: Source,
}

impl Found {
    fn named(self, from: Level, to: impl Fn(f64) -> Level) -> Converted {
        Converted { from, to: to(self.value), below: self.below, above: self.above, source: self.source }
    }
}

impl Rows {
    /// Two columns side by side.
    fn line(&self, (from, to): (Column, Column)) -> &[(f64, f64, Basis)] {
        let put_together = || {
            let row = |at| Some(((self.cell)(at, from)?, (self.cell)(at, to)?, (self.basis)(at)));
            (0..self.count).filter_map(row).collect()
        };
        self.lines
            .get(from as usize * Column::COUNT + to as usize)
            .map_or(&[], |line| line.get_or_init(put_together))
    }

    /// Looks a number up in one column and reads the other; the columns rise together.
    fn find(&self, number: f64, columns: (Column, Column), scale: &'static Unit) -> Result<Found, Refusal> {
        let line = self.line(columns);
        // A number that is no number stands below no row and has none before it.
        let behind = line.partition_point(|row| row.0 <= number);
        let below = behind.checked_sub(1).and_then(|at| line.get(at));
        let exact = below.filter(|row| row.0 == number);
        let (Some(&(x1, y1, basis_below)), Some(&(x2, y2, basis_above))) =
            (below, exact.or_else(|| line.get(behind)))
        else {
            return Err(self.outside(number, columns, scale));
        };
        let value = if x1 == x2 { y1 } else { y1 + (y2 - y1) * (number - x1) / (x2 - x1) };
        // The weaker of the two rows tells how the value is known.
        let basis = match (basis_below, basis_above) {
            (Basis::Read, Basis::Read) => Basis::Read,
            _ => Basis::Memory,
        };
        Ok(Found { below: (x1, y1), above: (x2, y2), value, source: (self.source)(basis) })
    }

    fn outside(&self, number: f64, columns: (Column, Column), scale: &'static Unit) -> Refusal {
        let shown = |number: f64| Shown { number, unit: scale, decimals: u8::from(number.fract() != 0.0) };
        let line = self.line(columns);
        let end = |row: Option<&(f64, f64, Basis)>| shown(row.map_or(0.0, |row| row.0));
        Refusal::outside(
            if columns.0 == Column::Tensile { "tensile strength" } else { "hardness" },
            shown(number),
            end(line.first()),
            end(line.last()),
            (self.source)(Basis::Read),
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn hardness(converted: Result<Converted, Refusal>) -> f64 {
        converted.unwrap().to.number()
    }

    #[test]
    fn rows_are_read_and_between_them_the_line_is_straight() {
        assert_eq!(hardness(convert(Hardness::hrc(39.0), Scale::Hv)), 382.0);
        assert_eq!(hardness(convert(Hardness::hv(387.0), Scale::Hrc)), 39.5);
        assert_eq!(hardness(convert(Hardness::hb(371.0), Scale::Hrc)), 40.0);
        assert_eq!(hardness(convert(Hardness::hrb(100.0), Scale::Hv)), 240.0);
        assert_eq!(hardness(to_tensile(Hardness::hv(380.0))), 1220.0);
        assert_eq!(hardness(from_tensile(Stress::from_mpa(1220.0), Scale::Hrc)), 38.8);
    }

    #[test]
    fn the_table_used_is_named_and_memory_is_not_hidden() {
        let source = |converted: Result<Converted, Refusal>| converted.unwrap().source.to_string();
        assert_eq!(source(convert(Hardness::hrc(38.5), Scale::Hv)), "ASTM E140, Table 1 (read)");
        assert_eq!(source(convert(Hardness::hrc(32.5), Scale::Hv)), "ASTM E140, Table 1 (from memory)");
        assert_eq!(source(convert(Hardness::hv(150.0), Scale::Hb)), "ISO 18265, Table A.1 (read)");
        assert_eq!(source(convert(Hardness::hv(400.0), Scale::Hb)), "ASTM E140, Table 1 (read)");
        assert_eq!(source(convert(Hardness::hv(150.0), Scale::Hrb)), "ASTM E140, Table 2 (read)");
    }

    #[test]
    fn outside_the_rows_there_is_no_value() {
        let refusals = [
            (convert(Hardness::hrc(19.9), Scale::Hv), "20\u{a0}HRC to 68\u{a0}HRC"),
            (convert(Hardness::hrc(68.1), Scale::Hv), "20\u{a0}HRC to 68\u{a0}HRC"),
            // Told with the digits that it was given.
            (convert(Hardness::hrc(19.9), Scale::Hv), "19.9\u{a0}HRC"),
            (convert(Hardness::hrc(69.0), Scale::Hv), "69\u{a0}HRC"),
            (convert(Hardness::hrc(59.0), Scale::Hb), "20\u{a0}HRC to 58\u{a0}HRC"),
            (convert(Hardness::hv(70.0), Scale::Hb), "80\u{a0}HV to 653\u{a0}HV"),
            (convert(Hardness::hrc(20.0), Scale::Hrb), "does not cover HRC to HRB"),
            (to_tensile(Hardness::hrb(90.0)), "does not cover HRB with tensile"),
            (to_tensile(Hardness::hv(651.0)), "80\u{a0}HV to 650\u{a0}HV"),
            (from_tensile(Stress::from_mpa(2200.0), Scale::Hv), "255\u{a0}MPa to 2180\u{a0}MPa"),
            (convert(Hardness::hv(f64::NAN), Scale::Hrc), "outside"),
        ];
        for (refusal, part) in refusals {
            let text = refusal.unwrap_err().to_string();
            assert!(text.contains(part), "{text}");
        }
    }
}
