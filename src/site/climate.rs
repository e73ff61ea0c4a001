//! The first year's loss of zinc estimated from a climate (ISO 9223).

use super::{Category, Rates};
use crate::quantity::{Dimension, PlainNumber, Quantity, Rate, Shown, Temperature, Unit, unit};
use crate::table::Refusal;
use crate::table::iso_9223::{self, ZINC};
use crate::working::{Term, Working};

/// SO2 in the air, taken as the deposition that it causes (ISO 9223 with ISO 9225, from memory).
pub static SO2_IN_AIR: Unit = Unit {
    dimension: Dimension::PlainNumber,
    symbol: "µg/m³",
    name: "micrograms of SO2 per cubic metre",
    also: &["ug/m3", "µg/m3", "ug/m³"],
    factor: iso_9223::DEPOSITION_OF_SO2,
    offset: 0.0,
};

/// Yearly means of a place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Climate {
    /// Mean temperature.
    pub temperature: Temperature,
    /// Mean relative humidity.
    pub humidity: PlainNumber,
    /// Deposition of SO2, mg/(m²·d).
    pub so2: PlainNumber,
    /// Deposition of chloride, mg/(m²·d).
    pub chloride: PlainNumber,
}

/// The loss of zinc in the first year, as the dose-response function estimates it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FirstYear {
    /// What it was estimated from.
    pub climate: Climate,
    /// The term of the temperature in the sulfur part.
    pub f: f64,
    /// Loss by sulfur dioxide.
    pub sulfur: Rate,
    /// Loss by chloride.
    pub salt: Rate,
    /// The whole loss.
    pub rate: Rate,
    /// The least it may be: 33 % less.
    pub low: Rate,
    /// The most it may be: 50 % more.
    pub high: Rate,
}

/// Estimates the first year's loss of zinc.
///
/// Yearly means: temperature −17.1 to 28.7 °C, humidity 34 to 93 %, SO2 0.7 to 150.4 and chloride
/// 0.4 to 760.5 mg/(m²·d). The estimate is uncertain by −33 % to +50 %. The function, its constants
/// and the ranges are known from memory (ISO 9223:2012, Eq. (2), Tables 3 and A.1).
///
/// # Errors
/// The first value outside its range.
pub fn dose_response(climate: Climate) -> Result<FirstYear, Refusal> {
    climate.within_range()?;
    let Climate { temperature, humidity, so2, chloride } = climate;
    let t = temperature.celsius();
    let slope = if t <= ZINC.turn { ZINC.below } else { ZINC.above };
    let f = slope * (t - ZINC.turn);
    let sulfur = ZINC.a * so2.one().powf(ZINC.p) * (ZINC.h * humidity.percent() + f).exp();
    let salt = ZINC.c * chloride.one().powf(ZINC.s) * (ZINC.k * humidity.percent() + ZINC.m * t).exp();
    let rate = sulfur + salt;
    let (down, up) = iso_9223::UNCERTAINTY;
    Ok(FirstYear {
        climate,
        f,
        sulfur: Rate::from_um_year(sulfur),
        salt: Rate::from_um_year(salt),
        rate: Rate::from_um_year(rate),
        low: Rate::from_um_year(rate * down),
        high: Rate::from_um_year(rate * up),
    })
}

impl Climate {
    /// Refuses what the function was not fitted on.
    fn within_range(&self) -> Result<(), Refusal> {
        let temperature = |t: Temperature| t.show(&unit::CELSIUS, 1);
        let percent = |h: PlainNumber| h.show(&unit::PERCENT, 0);
        let deposition = |d: f64| Shown { number: d, unit: &unit::MG_M2_DAY, decimals: 1 };
        let (coldest, warmest) = iso_9223::TEMPERATURE;
        let (driest, dampest) = iso_9223::HUMIDITY;
        let (so2_least, so2_most) = iso_9223::SO2;
        let (salt_min, salt_most) = iso_9223::CHLORIDE;
        within(
            "mean temperature",
            temperature(self.temperature),
            temperature(coldest),
            temperature(warmest),
        )?;
        within("mean humidity", percent(self.humidity), percent(driest), percent(dampest))?;
        within("deposition of SO2", deposition(self.so2.one()), deposition(so2_least), deposition(so2_most))?;
        within(
            "deposition of chloride",
            deposition(self.chloride.one()),
            deposition(salt_min),
            deposition(salt_most),
        )
    }
}

fn within(what: &'static str, asked: Shown, min: Shown, max: Shown) -> Result<(), Refusal> {
    // A unit's factor may leave a residue far below what anybody can measure.
    let slack = 1e-9 * max.number.abs();
    if asked.number >= min.number - slack && asked.number <= max.number + slack {
        return Ok(());
    }
    Err(Refusal::outside(what, asked, min, max, iso_9223::VALIDITY))
}

impl FirstYear {
    /// The category that the estimate falls into.
    ///
    /// # Errors
    /// An estimate above the limit of CX.
    pub fn category(&self) -> Result<Category, Refusal> {
        Category::of_rate(self.rate)
    }

    /// The range of the loss that the uncertainty leaves.
    pub fn rates(&self) -> Rates {
        Rates { lower: Some(self.low), upper: self.high, source: iso_9223::UNCERTAINTY_SOURCE }
    }

    /// The sum, step by step.
    pub fn working(&self) -> Working {
        let t = Term::given("T", self.climate.temperature.show(&unit::CELSIUS, 1));
        let humidity = Term::given("RH", self.climate.humidity.show(&unit::PERCENT, 0));
        let deposition = |d: PlainNumber| Shown { number: d.one(), unit: &unit::MG_M2_DAY, decimals: 1 };
        let per_year = |rate: Rate| rate.show(&unit::UM_YEAR, 4);
        let source = iso_9223::DOSE_RESPONSE;
        let f = Shown::plain(self.f, 4);
        let cold = self.climate.temperature.celsius() <= ZINC.turn;
        let mut working = Working::default();
        working.topic("The loss of zinc");
        working
            .step(
                "term of the temperature",
                "f",
                if cold { "0.038 · (T − 10)" } else { "(10 − T) · 0.071" },
                f,
                source,
            )
            .term(t);
        working
            .step(
                "loss by sulfur dioxide",
                "r_P",
                "0.0129 · P^0.44 · exp(0.046 · RH + f)",
                per_year(self.sulfur),
                source,
            )
            .given("P", deposition(self.climate.so2))
            .term(humidity)
            .given("f", f);
        working
            .step(
                "loss by chloride",
                "r_S",
                "0.0175 · S^0.57 · exp(0.008 · RH + 0.085 · T)",
                per_year(self.salt),
                source,
            )
            .given("S", deposition(self.climate.chloride))
            .term(humidity)
            .term(t);
        working
            .step("loss of zinc in the first year", "r", "r_P + r_S", per_year(self.rate), source)
            .given("r_P", per_year(self.sulfur))
            .given("r_S", per_year(self.salt));
        let bounds = [
            ("the least it may be", "r_low", "r · 0.67", self.low),
            ("the most it may be", "r_high", "r · 1.5", self.high),
        ];
        for (meaning, symbol, formula, bound) in bounds {
            working
                .step(meaning, symbol, formula, per_year(bound), iso_9223::UNCERTAINTY_SOURCE)
                .given("r", per_year(self.rate));
        }
        working
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(t: f64, rh: f64, so2: f64, chloride: f64) -> Result<FirstYear, Refusal> {
        dose_response(Climate {
            temperature: Temperature::from_celsius(t),
            humidity: PlainNumber::from_percent(rh),
            so2: PlainNumber::from_one(so2),
            chloride: PlainNumber::from_one(chloride),
        })
    }

    #[test]
    fn the_ends_of_the_ranges_belong_to_them_and_nothing_beyond() {
        assert!(at(-17.1, 34.0, 0.7, 0.4).is_ok());
        assert!(at(28.7, 93.0, 150.4, 760.5).is_ok());
        for (climate, part) in [
            ((-17.2, 80.0, 10.0, 3.0), "mean temperature"),
            ((10.0, 33.0, 10.0, 3.0), "mean humidity"),
            ((10.0, 80.0, 0.5, 3.0), "SO2"),
            ((10.0, 80.0, 10.0, 800.0), "chloride"),
        ] {
            let refusal = at(climate.0, climate.1, climate.2, climate.3).unwrap_err().to_string();
            assert!(refusal.contains(part) && refusal.contains("range of ISO 9223"), "{refusal}");
        }
        assert!(at(f64::NAN, 80.0, 10.0, 3.0).is_err());
        // A billionth of the end is what units leave, and no more.
        let of = |number| Shown { number, unit: &unit::PERCENT, decimals: 0 };
        let within = |number| within("mean humidity", of(number), of(34.0), of(93.0)).is_ok();
        assert!(within(93.0 + 5e-8) && within(34.0 - 5e-8));
        assert!(!within(93.0 + 5e-7) && !within(34.0 - 5e-7));
    }

    #[test]
    fn the_working_shows_the_constants_that_are_used() {
        let steps = at(10.0, 80.0, 10.0, 3.0).unwrap().working();
        for constant in [ZINC.a, ZINC.p, ZINC.h, ZINC.below, ZINC.c, ZINC.s, ZINC.k, ZINC.m] {
            let shown = constant.to_string();
            assert!(steps.steps().iter().any(|step| step.formula.contains(&shown)), "{shown}");
        }
    }
}
