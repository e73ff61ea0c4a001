//! What headings and labels mean, by their words.

use super::comma::starts_with_digit;
use super::moment::is_time;
use crate::quantity::letters::lower;
use crate::quantity::{Dimension, Unit, unit};

/// Lines and columns that condense readings, or limit them, and are none.
const SUMMARIES: &[&str] = &[
    "mean",
    "average",
    "avg",
    "ave",
    "x̄",
    "std",
    "stdev",
    "std dev",
    "standard deviation",
    "deviation",
    "sd",
    "s",
    "sigma",
    "σ",
    "cov",
    "cv",
    "coefficient of variation",
    "variance",
    "min",
    "minimum",
    "max",
    "maximum",
    "range",
    "median",
    "mode",
    "count",
    "n",
    "total",
    "sum",
    "number of readings",
    "no of readings",
    "readings taken",
    "lower limit",
    "upper limit",
    "limit",
    "limits",
    "lsl",
    "usl",
    "nominal",
    "target",
    "tolerance",
    "cp",
    "cpk",
    "result",
    "lot mean",
    "batch mean",
    "highest",
    "lowest",
    "high",
    "low",
];

/// What an export says of itself above its readings.
const PARTICULARS: &[&str] = &[
    "batch",
    "order",
    "lot",
    "customer",
    "gauge",
    "probe",
    "serial",
    "serial number",
    "serial no",
    "operator",
    "inspector",
    "file",
    "program",
    "profile",
    "date",
    "time",
    "page",
    "job",
    "report",
    "calibration",
    "drawing",
    "supplier",
    "material",
    "coating",
    "standard",
    "class",
    "unit",
    "units",
    "model",
    "name",
    "zero",
    "comment",
    "remark",
];

/// Columns that number or name, and do not measure.
const IDENTITIES: &[&str] = &[
    "no",
    "nr",
    "number",
    "id",
    "#",
    "serial",
    "item",
    "article",
    "part",
    "piece",
    "bolt",
    "nut",
    "washer",
    "screw",
    "stud",
    "rod",
    "sample",
    "specimen",
    "position",
    "pos",
    "row",
    "line",
    "index",
    "test",
    "lot",
    "batch",
    "order",
    "job",
    "drawing",
    "place",
    "location",
    "probe",
    "gauge",
    "operator",
    "inspector",
    "measurement no",
    "reading no",
    "article no",
    "part no",
    "sample no",
    "serial no",
    "temperature",
];

/// Columns that hold readings by their name.
const READINGS: &[&str] =
    &["reading", "readings", "thickness", "coat", "coating", "value", "measurement", "measured", "zinc"];

/// Small letters without marks: `Std. Dev.` is `std dev`.
fn plain(text: &str) -> String {
    let letters = text.chars().map(|c| match c {
        '.' | ':' | '=' | '_' | '-' | '(' | ')' | '[' | ']' | '/' => ' ',
        c => c,
    });
    lower(&letters.collect::<String>()).split_whitespace().collect::<Vec<_>>().join(" ")
}

/// A name without the numbers and units that may stand behind it.
fn bare(text: &str) -> String {
    let words = plain(text);
    let words = words.split(' ').filter(|word| {
        !starts_with_digit(word)
            && !unit::ALL.iter().any(|unit| unit.dimension == Dimension::Length && unit.is_written(word))
    });
    words.collect::<Vec<_>>().join(" ")
}

/// Words at the beginning or the end of a name that say the same, whatever stands beside them.
const SUMMARY_WORDS: &[&str] = &[
    "mean",
    "average",
    "avg",
    "deviation",
    "dev",
    "stdev",
    "variance",
    "median",
    "limit",
    "limits",
    "spec",
    "specification",
    "tolerance",
    "tol",
    "minimum",
    "maximum",
    "min",
    "max",
    "total",
];

/// Whether a line or column of that name condenses readings.
pub fn is_summary(name: &str) -> bool {
    let (plain, bare) = (plain(name), bare(name));
    let listed = |name: &str| SUMMARIES.contains(&name);
    let word = |word: Option<&str>| word.is_some_and(|word| SUMMARY_WORDS.contains(&word));
    // `Thickness (min 43 µm)` holds readings and names their limit.
    let ends = word(bare.split(' ').next()) || (word(bare.split(' ').next_back()) && !is_readings(name));
    listed(&plain) || listed(&bare) || ends
}

/// Whether a line of that name says something of the measurement besides its readings.
pub fn is_particular(name: &str) -> bool {
    PARTICULARS.contains(&plain(name).as_str())
}

/// Whether a line of that name says the unit.
pub fn is_unit_line(name: &str) -> bool {
    matches!(plain(name).as_str(), "unit" | "units")
}

/// Whether a line with that label is no article.
pub fn is_no_article(label: &str) -> bool {
    is_summary(label) || is_particular(label)
}

/// Whether a column of that heading numbers or names.
pub fn is_identity(heading: &str) -> bool {
    [plain(heading), bare(heading)].iter().any(|name| IDENTITIES.contains(&name.as_str()))
}

/// Whether a column of that heading holds readings.
pub fn is_readings(heading: &str) -> bool {
    let heading = bare(heading);
    heading.split(' ').any(|word| READINGS.contains(&word)) || heading == "r"
}

/// The unit that a heading names, of those offered.
pub fn unit_in(heading: &str, units: &[&'static Unit]) -> Option<&'static Unit> {
    let offered = |word: &str| units.iter().copied().find(|unit| unit.is_written(word));
    if let Some(unit) = in_brackets(heading).and_then(offered) {
        return Some(unit);
    }
    // `in` is a word of the language before it is a unit.
    let words = heading.split(|c: char| c.is_whitespace() || matches!(c, ';' | ',' | '(' | ')' | '[' | ']'));
    words.filter(|word| !word.is_empty() && !word.eq_ignore_ascii_case("in")).find_map(offered)
}

/// Whether a heading names a unit that no coat is measured in.
pub fn measures_something_else(heading: &str) -> bool {
    in_brackets(heading).is_some_and(|written| {
        let coat = [Dimension::Length, Dimension::ArealMass];
        unit::ALL.iter().any(|unit| unit.is_written(written) && !coat.contains(&unit.dimension))
    })
}

fn in_brackets(heading: &str) -> Option<&str> {
    let start = heading.find(['(', '['])? + 1;
    let end = heading.rfind([')', ']'])?;
    heading.get(start..end).map(str::trim)
}

/// Cuts off a label in front: with a colon or an equals sign, or like `A1` and `#3`.
pub fn label(line: &str) -> (Option<&str>, &str) {
    if let Some((label, behind)) = at_mark(line) {
        return (Some(label), behind.trim());
    }
    let is_label =
        |text: &str| !starts_with_digit(text) && text.contains(|c: char| c.is_alphabetic() || c == '#');
    match line.split_once(' ') {
        Some((word, behind))
            if is_label(word)
                && word.contains(|c: char| c.is_ascii_digit())
                && !word.contains(',')
                && starts_with_digit(behind.trim_start()) =>
        {
            (Some(word), behind.trim())
        }
        _ => (None, line),
    }
}

/// What stands before and behind the first colon or equals sign that ends a label.
fn at_mark(line: &str) -> Option<(&str, &str)> {
    // A colon in a time of day ends no label, wherever on the line it stands.
    let in_time = |at: usize| {
        let (before, behind) = line.split_at_checked(at).unwrap_or((line, ""));
        let start = before.rsplit(' ').next().unwrap_or_default();
        let end = behind.split(' ').next().unwrap_or_default();
        is_time(format!("{start}{end}").trim_matches(','))
    };
    let (at, mark) = line.match_indices([':', '=']).find(|&(at, _)| !in_time(at))?;
    let (label, behind) = (line.get(..at)?, line.get(at + mark.len()..)?);
    let named = !starts_with_digit(behind) || label.contains(char::is_alphabetic);
    (named && !label.contains([',', ';'])).then_some((label, behind))
}

/// Whether a name can stand before the number of an article or a reading: `bolt 3`, `Reading 12`.
pub fn counts_off(name: &str) -> bool {
    is_identity(name) || is_readings(name)
}
