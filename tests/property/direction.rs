//! Where physics goes one way, so do the figures; and where nothing jumps, no figure does.
//!
//! A row is a field that is raised, all else being as it stands, and a figure that then must not fall, or must
//! not rise. A new calculator is asked for its rows.

use kettle_barrel::calculator::{REGISTER, Report, Value, evaluate};
use kettle_barrel::quantity::Shown;

use crate::fields::Dice;

/// What becomes of the figure.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Goes {
    /// It does not fall.
    Up,
    /// It does not rise.
    Down,
}

/// What is raised.
#[derive(Debug, Clone, Copy)]
enum Raised {
    /// A number in a unit, from and to.
    Number(f64, f64, &'static str),
    /// Texts, from the least to the greatest.
    Texts(&'static [&'static str]),
}

struct Row {
    calculator: &'static str,
    /// What else stands in the form.
    with: &'static [(&'static str, &'static str)],
    field: &'static str,
    raised: Raised,
    /// The symbol of the figure, the beginning of its name, or `verdict`, which gets worse upwards.
    figure: &'static str,
    goes: Goes,
    /// Whether the figure moves without a step.
    smooth: bool,
}

const fn row(
    calculator: &'static str,
    with: &'static [(&'static str, &'static str)],
    field: &'static str,
    raised: Raised,
    figure: &'static str,
    goes: Goes,
) -> Row {
    Row { calculator, with, field, raised, figure, goes, smooth: matches!(raised, Raised::Number(..)) }
}

impl Row {
    /// A figure that is cut or counted moves in steps.
    const fn in_steps(mut self) -> Self {
        self.smooth = false;
        self
    }
}

use Goes::{Down, Up};
use Raised::{Number, Texts};

const OWN: &[(&str, &str)] = &[("allowance", "own")];
const LEAST: &[(&str, &str)] = &[("asked", "least")];
const READINGS: &[(&str, &str)] = &[
    ("standard", "own"),
    ("own_mean", "50 µm"),
    ("readings", "52 57 59 55 60\n63 58 54 56 57\n61 60 58 57 62"),
];

#[rustfmt::skip]
static ROWS: &[Row] = &[
    row("coat", &[], "coat", Number(1.0, 400.0, "µm"), "m", Up),
    row("coat", &[], "coat", Number(1.0, 2000.0, "g/m²"), "t", Up),
    row("coat", &[("factor", "own")], "own_factor", Number(4.0, 7.2, "g/m² per µm"), "m", Up),
    row("oversize-tap", OWN, "own_allowance", Number(0.0, 1.0, "mm"), "t_even", Up),
    row("oversize-tap", OWN, "own_allowance", Number(0.0, 1.0, "mm"), "t_max", Up),
    row("oversize-tap", OWN, "own_allowance", Number(0.0, 1.0, "mm"), "Thread left", Down),
    row("oversize-tap", &[], "spread", Number(0.0, 60.0, "%"), "t_max", Down),
    row("oversize-tap", &[], "coat_greatest", Number(50.0, 150.0, "µm"), "Clearance on the pitch", Down),
    row("oversize-tap", &[], "coat_greatest", Number(50.0, 150.0, "µm"), "Pairs that bind", Up),
    row("coat-room", &[], "coat", Number(5.0, 200.0, "µm"), "A", Up),
    row("coat-room", &[], "spread", Number(0.0, 60.0, "%"), "A", Up),
    row("thread-strength", OWN, "own_allowance", Number(0.0, 0.8, "mm"), "F", Down),
    row("thread-strength", &[("nut_style", "own")], "nut_height", Number(8.0, 20.0, "mm"), "F", Up),
    row("thread-strength", &[("nut_style", "own")], "nut_width", Number(22.5, 30.0, "mm"), "F", Up),
    row("gauges", OWN, "own_allowance", Number(0.0, 1.0, "mm"), "GO plug for the nut", Up),
    row("gauges", OWN, "own_allowance", Number(0.0, 1.0, "mm"), "Hole before the tap", Up),
    row("hydrogen", &[("known", "hardness")], "hardness", Number(20.0, 60.0, "HRC"), "verdict", Up),
    row("hydrogen", &[("known", "hardness"), ("process", "cell")], "hardness", Number(20.0, 60.0, "HRC"), "verdict", Up),
    row("hydrogen", &[("known", "tensile"), ("process", "barrel")], "tensile", Number(500.0, 1900.0, "MPa"), "verdict", Up),
    row("tempering", &[], "bath", Number(430.0, 560.0, "°C"), "Margin: temper less bath", Down),
    row("tempering", &[], "bath", Number(430.0, 560.0, "°C"), "P_dip", Up),
    row("tempering", &[], "bath", Number(430.0, 560.0, "°C"), "T_1h", Up),
    row("tempering", &[], "bath", Number(430.0, 560.0, "°C"), "The same as one-hour tempers", Down),
    row("tempering", &[], "dip", Number(0.5, 15.0, "min"), "T_1h", Up),
    row("tempering", &[], "dip", Number(0.5, 15.0, "min"), "Hottest bath", Down),
    row("tempering", &[("known", "temper")], "temper", Number(400.0, 650.0, "°C"), "P_temper", Up),
    row("tempering", &[("known", "temper")], "temper", Number(400.0, 650.0, "°C"), "Hottest bath", Up),
    row("powder", &[("asked", "thickness")], "coat", Number(5.0, 110.0, "µm"), "W", Up),
    row("powder", &[("asked", "thickness")], "coat", Number(5.0, 110.0, "µm"), "N", Up).in_steps(),
    row("powder", LEAST, "least", Number(5.0, 70.0, "µm"), "t_Zn", Up),
    row("powder", LEAST, "scatter", Number(1.0, 20.0, "%"), "t_Zn", Up),
    row("powder", LEAST, "checks", Texts(&["1", "2", "5", "8", "20", "50"]), "t_Zn", Up),
    row("powder", LEAST, "chance", Number(50.0, 99.0, "%"), "t_Zn", Up),
    row("powder", &[], "yield", Number(50.0, 100.0, "%"), "W", Down),
    row("powder", &[], "pieces", Texts(&["10", "100", "1000", "4000", "50000"]), "W", Up),
    // A short bolt is threaded to its head; where the shank begins, the threads that go take their area along.
    row("powder", &[], "length", Number(20.0, 44.0, "mm"), "A", Up),
    row("powder", &[], "length", Number(45.0, 120.0, "mm"), "A", Up),
    row("kettle", &[], "coat", Number(20.0, 200.0, "µm"), "Z", Up),
    row("kettle", &[], "pieces", Texts(&["10", "100", "1000", "4000", "50000"]), "Z", Up),
    row("kettle", &[], "length", Number(20.0, 120.0, "mm"), "M", Up),
    row("life", &[], "thickness", Number(5.0, 200.0, "µm"), "t", Up).in_steps(),
    row("life", &[], "category", Texts(&["C1", "C2", "C3", "C4", "C5", "CX"]), "r", Up),
    row("life", &[], "category", Texts(&["C2", "C3", "C4", "C5", "CX"]), "t", Down),
    row("life", &[("place", "climate")], "so2", Number(1.0, 150.0, "mg/(m²·d)"), "r", Up),
    row("life", &[("place", "climate")], "chloride", Number(1.0, 700.0, "mg/(m²·d)"), "r", Up),
    row("life", &[("place", "climate")], "humidity", Number(40.0, 92.0, "%"), "r", Up),
    row("life", &[("years", "15")], "thickness", Number(5.0, 200.0, "µm"), "verdict", Down),
    row("lot", READINGS, "confidence", Number(80.0, 99.0, "%"), "L", Down),
];

/// Calculators that look a row up and compute nothing.
const LOOK_UP: [&str; 1] = ["salt-spray"];

#[test]
fn every_calculator_has_its_rows() {
    for entry in REGISTER {
        let (id, fields) = (entry.about.id, entry.about.fields);
        let rows: Vec<_> = ROWS.iter().filter(|row| row.calculator == id).collect();
        assert!(
            !rows.is_empty() || LOOK_UP.contains(&id),
            "which field of {id} moves which figure, and which way?"
        );
        for row in rows {
            let keys = row.with.iter().map(|(key, _)| *key).chain([row.field]);
            keys.for_each(|key| {
                assert!(fields.iter().any(|field| field.key == key), "{id} has no field {key}")
            });
        }
    }
}

/// The ends of the figure; none where it is not given.
fn ends(row: &Row, text: &str) -> Option<Vec<f64>> {
    let pairs = row.with.iter().copied().chain([(row.field, text)]);
    let report: Report = evaluate(row.calculator, pairs).ok()?;
    if row.figure == "verdict" {
        return Some(vec![f64::from(report.verdict? as u8)]);
    }
    let is_meant = |symbol: &str, name: &str| symbol == row.figure || name.starts_with(row.figure);
    let figure = report.figures.iter().find(|figure| is_meant(figure.symbol, &figure.name))?;
    match &figure.value {
        // In the base unit: a kilogram more may be shown in grams less.
        Value::One(shown) => Some(vec![base(shown)]),
        Value::Range(min, max) => Some(vec![base(min), base(max)]),
        Value::Words(_) => None,
    }
}

fn base(shown: &Shown) -> f64 {
    shown.number * shown.unit.factor + shown.unit.offset
}

fn goes_its_way(row: &Row, less: &str, more: &str) -> bool {
    let (Some(before), Some(after)) = (ends(row, less), ends(row, more)) else { return false };
    for (before, after) in before.iter().zip(&after) {
        let slack = 1e-9 * before.abs().max(1.0);
        let kept = match row.goes {
            Up => *after >= before - slack,
            Down => *after <= before + slack,
        };
        assert!(
            kept,
            "{} {:?}: {} from {less} to {more} takes {} from {before} to {after}",
            row.calculator, row.with, row.field, row.figure
        );
    }
    before.len() == after.len()
}

fn draws(count: usize) {
    for (seed, row) in ROWS.iter().enumerate() {
        let mut answered = 0;
        let all = match row.raised {
            Number(from, to, unit) => {
                let mut dice = Dice(seed as u64);
                for _ in 0..count {
                    let [one, other] = [0; 2].map(|_| from + (to - from) * dice.share());
                    let text = |number: f64| format!("{number:.4} {unit}");
                    answered += usize::from(goes_its_way(row, &text(one.min(other)), &text(one.max(other))));
                }
                count
            }
            Texts(texts) => {
                for pair in texts.windows(2) {
                    answered += usize::from(goes_its_way(row, pair[0], pair[1]));
                }
                texts.len() - 1
            }
        };
        assert!(
            answered * 3 >= all,
            "{} {:?} {}: {} is given by {answered} of {all}",
            row.calculator,
            row.with,
            row.field,
            row.figure
        );
    }
}

#[test]
fn figures_go_the_way_of_physics() {
    draws(16);
}

#[test]
#[ignore = "takes minutes: cargo test --release --test property -- --ignored"]
fn figures_go_the_way_of_physics_in_many_draws() {
    draws(3000);
}

/// A millionth more of the input moves the figure by no more than a thousandth of its way over the range.
#[test]
fn no_figure_jumps() {
    for row in ROWS.iter().filter(|row| row.smooth && row.figure != "verdict") {
        let Number(from, to, unit) = row.raised else { continue };
        let of = |number: f64| ends(row, &format!("{number:.9} {unit}"));
        let places = (0..=24).map(|step| from + (to - from) * f64::from(step) / 24.0);
        let pairs: Vec<_> = places.filter_map(|at| Some((at, of(at)?, of(at * (1.0 + 1e-6))?))).collect();
        for end in 0..pairs.first().map_or(0, |(_, before, _)| before.len()) {
            let all = pairs.iter().map(|(_, before, _)| before[end]);
            let way = all.clone().fold(f64::MIN, f64::max) - all.fold(f64::MAX, f64::min);
            for (at, before, after) in &pairs {
                assert!(
                    (after[end] - before[end]).abs() <= 1e-3 * way + 1e-9 * before[end].abs(),
                    "{} {:?}: at {} {at} {unit} {} jumps from {} to {}",
                    row.calculator,
                    row.with,
                    row.field,
                    row.figure,
                    before[end],
                    after[end]
                );
            }
        }
    }
}
