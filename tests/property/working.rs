//! A working can never drift from its answer: every displayed substitution is computed again from
//! the displayed numbers, and must give the displayed result.

use exmex::Express;
use kettle_barrel::calculator::{REGISTER, Report, behind, evaluate};
use kettle_barrel::course::{Random, draw};
use kettle_barrel::order;
use kettle_barrel::quantity::{Shown, Units};
use kettle_barrel::working::{Segment, Step};

use crate::fields::{Dice, drawn};

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

/// Checks every sum of a report; how many there are.
fn sums(report: &Report, id: &str) -> usize {
    let steps = report.working.steps().iter().filter(|step| !step.formula.is_empty());
    steps.inspect(|step| check(step, id)).count()
}

/// The same for inputs drawn over all the fields of every calculator.
fn draws(count: u64) {
    for entry in REGISTER {
        let id = entry.about.id;
        let (mut answered, mut done) = (0, 0);
        for seed in 0..count {
            let draft = drawn(entry.about.fields, &mut Dice(seed));
            let Ok(report) = entry.evaluate(&draft) else { continue };
            answered += 1;
            done += sums(&report, id);
        }
        let looks_up = matches!(id, "hydrogen" | "salt-spray");
        assert!(
            answered * 10 > count && (looks_up || done > 20),
            "{id}: {done} sums of {answered} drawn inputs"
        );
    }
}

#[test]
fn every_displayed_sum_of_drawn_inputs_gives_its_displayed_result() {
    draws(40);
}

#[test]
#[ignore = "takes minutes: cargo test --release --test property -- --ignored"]
fn every_displayed_sum_of_many_drawn_inputs_gives_its_displayed_result() {
    draws(10_000);
}

/// An order's reasons lead to calculators that are filled in from it: their sums are right as well.
#[test]
fn every_displayed_sum_behind_an_order_gives_its_displayed_result() {
    let mut done = 0;
    for example in order::ABOUT.examples {
        let line = order::read(&example.pairs.iter().copied().collect()).unwrap();
        let judgement = order::judge(&line);
        let rulings = judgement
            .processes
            .iter()
            .flat_map(|judged| judged.rulings.iter().map(move |ruling| (judged, ruling)));
        let links = rulings.filter_map(|(judged, (place, ruling))| {
            behind(&judgement.case(judged, *place)?, ruling.rule.topic)
        });
        for link in links {
            let Ok(report) =
                evaluate(link.calculator, link.pairs.iter().map(|(key, text)| (*key, text.as_ref())))
            else {
                continue;
            };
            done += sums(&report, link.calculator);
        }
    }
    assert!(done > 100, "only {done} sums stand behind the orders");
}

pub fn check(step: &Step, id: &str) {
    let at = |shifts: &[f64]| evaluated(step, shifts, id);
    let still = vec![0.0; step.terms.len()];
    let result = at(&still);
    // The numbers put in are shown rounded: let each move by half its last digit.
    let mut tolerance = half_digit(&step.result) * 1.000_001;
    for (place, term) in step.terms.iter().enumerate() {
        let mut shifts = still.clone();
        // A sum is no straight line: down and up may differ.
        let half = half_digit(&term.value);
        let moved = [-half, half].map(|shift| {
            shifts[place] = shift;
            (at(&shifts) - result).abs()
        });
        tolerance += moved[0].max(moved[1]);
    }
    assert!(
        (result - step.result.number).abs() <= tolerance,
        "{id}: {step}: the numbers shown give {result}, not {} (±{tolerance})",
        step.result.number
    );
}

/// The sum with the displayed numbers put in, each shifted by so much.
fn evaluated(step: &Step, shifts: &[f64], id: &str) -> f64 {
    let text = sum(step, shifts);
    let expression = exmex::parse::<f64>(&text).unwrap_or_else(|why| panic!("{id}: {step}: “{text}”: {why}"));
    assert!(expression.var_names().is_empty(), "{id}: {step}: no number for {:?}", expression.var_names());
    expression.eval(&[]).unwrap_or_else(|why| panic!("{id}: {step}: {why}"))
}

fn half_digit(shown: &Shown) -> f64 {
    0.5 * 10f64.powi(-i32::from(shown.decimals))
}

/// The substitution as an expression, with each term shifted by so much.
fn sum(step: &Step, shifts: &[f64]) -> String {
    let mut text = String::new();
    for segment in step.segments() {
        match segment {
            Segment::Symbol(symbol, _) => match step.terms.iter().position(|term| term.symbol == symbol) {
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

/// Worked examples, and cases drawn from them.
fn each_case(drawn: u64, mut check: impl FnMut(&str, &[Step])) {
    for entry in REGISTER {
        for example in entry.about.examples {
            let report = entry.evaluate(&example.pairs.iter().copied().collect()).unwrap();
            check(&format!("{}: “{}”", entry.about.id, example.title), report.working.steps());
        }
        for number in 0..drawn {
            let case = draw::case(entry, Units::AsPrinted, &mut Random::new(number)).unwrap();
            check(&format!("{} {number}", entry.about.id), case.report.working.steps());
        }
    }
}

#[test]
fn a_symbol_means_one_thing_within_a_working() {
    each_case(60, |name, steps| {
        let mut known: Vec<(String, Shown, bool)> = Vec::new();
        for step in steps {
            let terms = step.terms.iter().map(|term| (term.name().into_owned(), term.value, false));
            for (symbol, value, is_result) in terms.chain([(step.name().into_owned(), step.result, true)]) {
                let Some((_, other, was_result)) = known.iter_mut().find(|(other, ..)| *other == symbol)
                else {
                    known.push((symbol, value, is_result));
                    continue;
                };
                let number = if other.unit == value.unit {
                    Some(other.number)
                } else {
                    other.unit.convert(other.number, value.unit)
                };
                let is_same =
                    number.is_some_and(|number| (number - value.number).abs() <= 1e-9 * number.abs());
                assert!(is_same, "{name}: {symbol} is {other} and {value}");
                assert!(!(is_result && *was_result), "{name}: {symbol} comes out twice");
                *was_result |= is_result;
                // Shown alike wherever it stands.
                if other.unit == value.unit {
                    assert_eq!(other.to_string(), value.to_string(), "{name}: {symbol}");
                }
            }
        }
    });
}

/// Only what is the same quantity for several cases is numbered: what is of another kind has a letter of
/// its own. Levels of hardness are read on scales that only a table joins.
#[test]
fn a_numbered_symbol_is_one_quantity() {
    each_case(60, |name, steps| {
        let uses = || {
            let each = |step: &Step| {
                let terms = step.terms.iter().map(|term| (term.symbol, term.value.unit.dimension));
                terms.chain([(step.symbol, step.result.unit.dimension)]).collect::<Vec<_>>()
            };
            steps.iter().flat_map(each).filter(|(symbol, _)| !["x", "x1", "x2", "y1", "y2"].contains(symbol))
        };
        for (symbol, dimension) in uses() {
            let other = uses().find(|(other, of)| *other == symbol && *of != dimension);
            assert_eq!(other, None, "{name}: {symbol} is of {dimension:?}");
        }
    });
}

#[test]
fn every_displayed_sum_is_redone_to_the_last_digit() {
    let mut sums = 0;
    each_case(60, |name, steps| {
        for step in steps.iter().filter(|step| !step.formula.is_empty()) {
            sums += 1;
            let redone = evaluated(step, &vec![0.0; step.terms.len()], name);
            let off = (redone - displayed(&step.result)).abs();
            assert!(off <= half_digit(&step.result) * 1.000_01, "{name}: {step}: redone, it is {redone}");
        }
    });
    assert!(sums > 1000, "{sums}");
}
