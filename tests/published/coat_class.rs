//! How a row of a coat standard is checked: the table, and what the coat calculator says of a coat
//! at the limit and just below it.

use kettle_barrel::calculator::evaluate;
use kettle_barrel::coat::{CoatClass, ThicknessLimit};
use kettle_barrel::source::Basis;

use crate::seen::seen;

/// Class, limit, unit, printed value, basis.
pub type Row = (&'static str, Compared, Unit, f64, Basis);

/// Which of a class's limits.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Compared {
    /// A single article or place.
    Single,
    /// The average of a batch.
    Average,
    /// The average of a production lot.
    LotAverage,
    /// The greatest average.
    AverageMax,
}

/// The unit of the printed value.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Unit {
    Um,
    Mil,
    Inch,
    GramsM2,
    OuncesFt2,
}

/// Checks every row against the classes.
pub fn check(classes: &'static [CoatClass], rows: &[Row]) {
    for &(name, which, unit, printed, basis) in rows {
        let class = classes.iter().find(|class| class.name == name).unwrap_or_else(|| panic!("no {name}"));
        let limit = match which {
            Compared::Single => class.single,
            Compared::Average => class.average,
            Compared::LotAverage => class.lot_average,
            Compared::AverageMax => class.average_max,
        }
        .unwrap_or_else(|| panic!("{name} has no {which:?}"));
        // A document prints its limit in several units, each rounded: the last printed digit decides.
        let (ours, half_digit) = match unit {
            Unit::Um if printed.fract() == 0.0 => (limit.thickness.um(), 0.0),
            Unit::Um => (limit.thickness.um(), 0.05),
            Unit::Inch if limit.printed.unit.symbol == "in" => (limit.thickness.inch(), 0.0),
            // Listings round the inch up or down by one in the fourth place.
            Unit::Inch => (limit.thickness.inch(), 0.0001),
            Unit::Mil => (limit.thickness.mil(), 0.05),
            Unit::GramsM2 => (limit.mass.expect(name).g_m2(), 0.0),
            // Printed to 0.05 oz/ft².
            Unit::OuncesFt2 => (limit.mass.expect(name).oz_ft2(), 0.01),
        };
        assert!(
            (ours - printed).abs() <= half_digit + 1e-9,
            "{name} {which:?}: {ours} for {printed} {unit:?}"
        );
        seen(class.document, ours, printed);
        if basis != Basis::Computed && matches!(unit, Unit::Um) {
            assert_eq!(limit.basis, basis, "{name} {which:?}");
        }
        if unit == Unit::Um && printed.fract() == 0.0 {
            at_the_limit(class, which, &limit);
        }
    }
}

/// The calculator finds a coat at the limit good and one a tenth of a micrometre thinner short.
fn at_the_limit(class: &CoatClass, which: Compared, limit: &ThicknessLimit) {
    let part = match which {
        Compared::Single => 0,
        Compared::Average => 1,
        // The calculator states single values and averages only.
        Compared::LotAverage | Compared::AverageMax => return,
    };
    for (coat, word) in [(limit.thickness.um(), "met"), (limit.thickness.um() - 0.1, "short")] {
        let report = evaluate("coat", [("coat", format!("{coat:.1} µm").as_str())]).unwrap();
        let figure = report
            .sections
            .iter()
            .filter(|section| section.title.starts_with(class.document.name))
            .flat_map(|section| &section.figures)
            .find(|figure| figure.name.starts_with(&format!("{}:", class.name)))
            .unwrap_or_else(|| panic!("{} not shown", class.name));
        let words = figure.value.to_string();
        let said = words.split(';').nth(part).unwrap();
        assert!(said.contains(word), "{} at {coat} µm: {words}", class.name);
    }
}
