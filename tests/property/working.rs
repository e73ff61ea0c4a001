//! A working can never drift from its answer: every displayed substitution is computed again from
//! the displayed numbers, and must give the displayed result.

use exmex::Express;
use kettle_barrel::calculator::REGISTER;
use kettle_barrel::quantity::Shown;
use kettle_barrel::working::{Segment, Step};

#[test]
fn every_displayed_sum_gives_its_displayed_result() {
    let mut sums = 0;
    for entry in REGISTER {
        for example in entry.about.examples {
            let report = entry
                .evaluate(&example.pairs.iter().copied().collect())
                .unwrap_or_else(|problems| panic!("{}: “{}”: {problems}", entry.about.id, example.title));
            assert!(
                !report.working.steps().is_empty(),
                "{}: “{}” shows no working",
                entry.about.id,
                example.title
            );
            for step in report.working.steps().iter().filter(|step| !step.formula.is_empty()) {
                check(step, entry.about.id);
                sums += 1;
            }
        }
    }
    assert!(sums > 0);
}

pub fn check(step: &Step, id: &str) {
    let at = |shifts: &[f64]| {
        let text = sum(step, shifts);
        let expression =
            exmex::parse::<f64>(&text).unwrap_or_else(|why| panic!("{id}: {step}: “{text}”: {why}"));
        assert!(
            expression.var_names().is_empty(),
            "{id}: {step}: no number for {:?}",
            expression.var_names()
        );
        expression.eval(&[]).unwrap_or_else(|why| panic!("{id}: {step}: {why}"))
    };
    let still = vec![0.0; step.terms.len()];
    let result = at(&still);
    // The numbers put in are shown rounded: let each move by half its last digit.
    let mut tolerance = half_digit(&step.result) * 1.000_001;
    for (place, term) in step.terms.iter().enumerate() {
        let mut shifts = still.clone();
        shifts[place] = half_digit(&term.value);
        tolerance += (at(&shifts) - result).abs();
    }
    assert!(
        (result - step.result.number).abs() <= tolerance,
        "{id}: {step}: the numbers shown give {result}, not {} (±{tolerance})",
        step.result.number
    );
}

fn half_digit(shown: &Shown) -> f64 {
    0.5 * 10f64.powi(-i32::from(shown.decimals))
}

/// The substitution as an expression, with each term shifted by so much.
fn sum(step: &Step, shifts: &[f64]) -> String {
    let mut text = String::new();
    for segment in step.segments() {
        match segment {
            Segment::Symbol(symbol) => match step.terms.iter().position(|term| term.symbol == symbol) {
                Some(place) => {
                    text.push_str(&format!("({:.17})", displayed(&step.terms[place].value) + shifts[place]))
                }
                None => text.push_str(symbol),
            },
            Segment::Number("π") => text.push_str("(3.141592653589793)"),
            Segment::Operator("−") => text.push('-'),
            Segment::Operator("·") => text.push('*'),
            Segment::Function(word) | Segment::Number(word) | Segment::Operator(word) => text.push_str(word),
            Segment::Value(_) => unreachable!("no value in the formula itself"),
        }
        text.push(' ');
    }
    text
}

/// The number as it is displayed.
fn displayed(shown: &Shown) -> f64 {
    shown.digits().replace('−', "-").parse().unwrap()
}
