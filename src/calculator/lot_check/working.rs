//! The sums of a lot check, step by step.

use super::named::{Named, named};
use super::{Input, Outcome};
use crate::lot;
use crate::quantity::{Dimension, Length, Shown, Unit, unit};
use crate::source::document;
use crate::working::{Term, Working};

pub(super) fn of(input: &Input, outcome: &Outcome) -> Working {
    let statistics = &outcome.statistics;
    let n = Term::given("n", Shown::plain(statistics.articles as f64, 0));
    let mean = input.precise(statistics.mean, 2);
    let arithmetic = |place| document::ARITHMETIC.computed(place);
    let mut working = Working::default();
    working.topic("Mean and spread");
    working
        .step(
            "lot mean: the sum of the article means over their number",
            "m",
            "S / n",
            mean,
            arithmetic("mean"),
        )
        .given("S", input.precise(statistics.sum, 2))
        .term(n);
    if let Some(deviation) = statistics.deviation {
        let deviation = input.precise(deviation, 2);
        working
            .step(
                "standard deviation, from the sum of the squared deviations of the article means",
                "s",
                "sqrt(Q / (n − 1))",
                deviation,
                arithmetic("standard deviation of a sample"),
            )
            .given("Q", squares(statistics.squares, input))
            .term(n);
        if let Ok(evidence) = outcome.evidence {
            let t = Shown::plain(evidence.t, 4);
            let meaning = format!(
                "Student's t, one-sided, {} confidence, {} degrees of freedom",
                Shown::percent(evidence.confidence.one(), 1),
                evidence.freedom
            );
            working.table("", "t", t, lot::T).said(meaning);
            working
                .step(
                    "the mean of the whole lot is at least this, with that confidence",
                    "L",
                    "m − t · s / sqrt(n)",
                    input.precise(evidence.lower_bound, 1),
                    lot::BOUND,
                )
                .given("m", mean)
                .given("t", t)
                .given("s", deviation)
                .term(n);
        }
    }
    working.topic("Against the limits");
    for Named { what, symbol, at_least, comparison } in named(outcome) {
        let printed = comparison.printed;
        let same_unit = printed.unit == input.readings.measure.unit;
        let limit =
            if same_unit { printed } else { input.precise(input.readings.measure.thickness(printed), 3) };
        let (meaning, formula, value_of, limit_of) = match (what, at_least) {
            ("Lot mean", true) => ("how far the lot mean is above its least", "m − m_least", "m", "m_least"),
            ("Lot mean", false) => {
                ("how far the lot mean is below its greatest", "m_most − m", "m", "m_most")
            }
            ("Least article", _) => {
                ("how far the least article is above its limit", "a − a_least", "a", "a_least")
            }
            _ => ("how far the least reading is above its limit", "r − r_least", "r", "r_least"),
        };
        working
            .step(meaning, symbol, formula, input.precise(comparison.margin, 1), arithmetic("difference"))
            .given(value_of, input.precise(comparison.value, 2))
            .published(limit_of, limit, input.source_of(comparison));
    }
    working
}

static UM2: Unit = square("µm²", "square micrometres");
static MIL2: Unit = square("mil²", "square mils");
static GRAMS2: Unit = square("(g/m²)²", "squared grams per square metre");
static OUNCES2: Unit = square("(oz/ft²)²", "squared ounces per square foot");

const fn square(symbol: &'static str, name: &'static str) -> Unit {
    Unit { dimension: Dimension::PlainNumber, symbol, name, also: &[], factor: 1.0, offset: 0.0 }
}

/// A sum of squares in the square of the unit of the readings, given in µm².
fn squares(um2: f64, input: &Input) -> Shown {
    let side = input.show(Length::from_um(1.0));
    let (unit, decimals) = match side.unit.symbol {
        "g/m²" => (&GRAMS2, 2),
        "oz/ft²" => (&OUNCES2, 8),
        "mm" => (&unit::MM2, 10),
        "in" => (&unit::IN2, 12),
        "mil" => (&MIL2, 6),
        _ => (&UM2, 4),
    };
    Shown { number: um2 * side.number * side.number, unit, decimals }
}
