//! How a published value of a steel, a limit of a rule or a conversion is checked.

use kettle_barrel::process::Process;
use kettle_barrel::quantity::{Hardness, Length, Scale};
use kettle_barrel::rule::{self, Cleaning, Key, Ruling, SteelFacts};
use kettle_barrel::source::{Basis, Source};
use kettle_barrel::steel::{Grade, Level, Over, State};
use kettle_barrel::table::steel_row::HardnessLimits;

use crate::seen::{as_printed, seen};

/// A value that a standard prints.
#[derive(Debug, Clone, Copy, PartialEq)]
#[allow(missing_docs)]
pub enum What {
    HrcLeast,
    HrcGreatest,
    HrbLeast,
    HrbGreatest,
    HvLeast,
    HvGreatest,
    HbLeast,
    HbGreatest,
    Mpa,
    Ksi,
    KsiGreatest,
    TemperCelsius,
    TemperFahrenheit,
    NoTemper,
}

/// Grade, nominal diameter in mm, what, printed value, basis.
pub type Row = (Grade, f64, What, f64, Basis);

/// Checks rows of a standard of steels: the value and the basis it is known on.
pub fn check(rows: &[Row]) {
    for &(grade, mm, what, printed, basis) in rows {
        let name = format!("{} at {mm} mm: {what:?}", grade.name());
        let properties = grade.properties(Length::from_mm(mm)).unwrap_or_else(|refusal| panic!("{refusal}"));
        let row = properties.row;
        let limit = |limits: Option<HardnessLimits>, end: fn(&HardnessLimits) -> Option<Hardness>| {
            let limits = limits.unwrap_or_else(|| panic!("{name}: blank"));
            (end(&limits).unwrap_or_else(|| panic!("{name}: blank")).number, limits.source)
        };
        let min = |limits: &HardnessLimits| limits.min;
        let max = |limits: &HardnessLimits| limits.max;
        let strength = row.tensile_min.map(|known| (known.value, known.source));
        let temper = row.temper_min.map(|known| (known.value, known.source));
        let (ours, source) = match what {
            What::HrcLeast => limit(row.hrc, min),
            What::HrcGreatest => limit(row.hrc, max),
            What::HrbLeast => limit(row.hrb, min),
            What::HrbGreatest => limit(row.hrb, max),
            What::HvLeast => limit(row.hv, min),
            What::HvGreatest => limit(row.hv, max),
            What::HbLeast => limit(row.hb, min),
            What::HbGreatest => limit(row.hb, max),
            What::Mpa => strength.map(|(value, source)| (value.mpa(), source)).unwrap(),
            What::Ksi => strength.map(|(value, source)| (value.ksi(), source)).unwrap(),
            What::KsiGreatest => {
                let known = row.tensile_max.unwrap_or_else(|| panic!("{name}: blank"));
                (known.value.ksi(), known.source)
            }
            What::TemperCelsius => temper.map(|(value, source)| (value.celsius(), source)).unwrap(),
            What::TemperFahrenheit => temper.map(|(value, source)| (value.fahrenheit(), source)).unwrap(),
            What::NoTemper => {
                assert!(properties.temper_min().is_err(), "{name}");
                continue;
            }
        };
        // What is printed in the other system beside the ruling value is a rounded one.
        assert!((ours - printed).abs() <= 0.6, "{name}: {ours}, printed {printed}");
        assert_eq!(source.basis, basis, "{name}");
        seen(source.document, ours, printed);
    }
}

/// Rule, whether reaching the value passes it, value, scale (`None` for MPa), basis.
pub type LimitRow = (Key, Over, f64, Option<Scale>, Basis);

/// Checks limits of rules.
pub fn check_limits(rows: &[LimitRow]) {
    for &(key, over, printed, scale, basis) in rows {
        let rule = rule::rule(key);
        let limit = rule.limit().unwrap_or_else(|| panic!("{key:?} has no limit"));
        let (ours, ours_scale) = match limit.at {
            Level::Hardness(hardness) => (hardness.number, Some(hardness.scale)),
            Level::Tensile(tensile) => (tensile.mpa(), None),
        };
        assert_eq!((ours, ours_scale, limit.over), (printed, scale, over), "{key:?}");
        assert_eq!(rule.source.basis, basis, "{key:?}");
        as_printed(rule.source.document);
    }
}

/// What a rule says of a steel that nothing else is known of, and in which words.
pub fn ruling(key: Key, state: State, cleaning: Cleaning) -> Option<(Ruling, Source, String)> {
    let rule = rule::rule(key);
    let steel = SteelFacts::new(state, cleaning);
    let case = steel.alone(rule.process.unwrap_or(Process::HotDip));
    let ruling = rule.judge(&case)?;
    Some((ruling, ruling.source(&case), ruling.text(&case)))
}
