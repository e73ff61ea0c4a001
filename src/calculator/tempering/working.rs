//! How the figures came about: the tempering parameters of dip and temper, and the margin.

use super::Input;
use crate::quantity::{Quantity, Shown, Temperature, Time, unit};
use crate::source::document;
use crate::steel::tempering::{self, Against, ONE_HOUR_ASSUMED, PARAMETER_SOURCE};
use crate::working::Working;

/// The steps.
pub(super) fn working(input: &Input, heat: &tempering::Effect) -> Working {
    let mut working = Working::default();
    parameter_steps(&mut working, "dip", "P_dip", "T_1h", input.bath, input.dip, heat.dip_parameter);
    if let Some(against) = heat.temper {
        let Against { temper, parameter, .. } = against;
        if let Some(source) = temper.least_of {
            working
                .table(
                    "least tempering temperature of the grade, for want of the actual one",
                    "T",
                    temper.temperature.show(&unit::CELSIUS, 0),
                    source,
                )
                .published("t", temper.time.show(&unit::HOUR, 0), ONE_HOUR_ASSUMED);
        }
        let (temperature, time) = (temper.temperature, temper.time);
        parameter_steps(&mut working, "temper", "P_temper", "T_1h'", temperature, time, parameter);
        working
            .step(
                "margin of the bath",
                "ΔT",
                "T − T_bath",
                against.margin.show(&unit::DELTA_CELSIUS, 1),
                document::ARITHMETIC.computed("difference"),
            )
            .given("T", temperature.show(&unit::CELSIUS, 1))
            .given("T_bath", input.bath.show(&unit::CELSIUS, 1));
        working
            .step(
                "hottest bath for this dip",
                "T_max",
                "P_temper / (20 + log10(t))",
                against.hottest_bath.show(&unit::KELVIN, 1),
                PARAMETER_SOURCE,
            )
            .given("P_temper", shown(parameter))
            .given("t", input.dip.show(&unit::HOUR, 5));
    }
    working
}

/// The parameter of a heat, and the one-hour temper with the same parameter.
fn parameter_steps(
    working: &mut Working,
    of: &'static str,
    symbol: &'static str,
    equal: &'static str,
    temperature: Temperature,
    time: Time,
    parameter: f64,
) {
    working
        .step("", symbol, "T · (20 + log10(t))", shown(parameter), PARAMETER_SOURCE)
        .said(format!("tempering parameter of the {of}, in kelvin and hours"))
        .given("T", temperature.show(&unit::KELVIN, 2))
        .given("t", time.show(&unit::HOUR, 5));
    working
        .step(
            "",
            equal,
            "P / 20 − 273.15",
            tempering::one_hour(parameter).show(&unit::CELSIUS, 1),
            PARAMETER_SOURCE,
        )
        .said(format!("one-hour temper to which the {of} is equal"))
        .given("P", shown(parameter));
}

/// A tempering parameter as it is shown.
pub(super) fn shown(parameter: f64) -> Shown {
    Shown { number: parameter, unit: &unit::TEMPERING_PARAMETER, decimals: 1 }
}
