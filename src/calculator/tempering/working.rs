//! How the figures came about: the tempering parameters of dip and temper, and the margin.

use super::Input;
use crate::quantity::{Quantity, Shown, Temperature, Time, unit};
use crate::source::document;
use crate::steel::tempering::{self, Against, ONE_HOUR_ASSUMED, PARAMETER_SOURCE};
use crate::working::Working;

/// The steps.
pub(super) fn working(input: &Input, heat: &tempering::Effect) -> Working {
    let mut working = Working::default();
    working.topic("The dip");
    parameter_steps(&mut working, &DIP, input.bath, input.dip, heat.dip_parameter);
    if let Some(against) = heat.temper {
        let Against { temper, parameter, .. } = against;
        working.topic("The temper");
        if let Some(source) = temper.least_of {
            working
                .table(
                    "least tempering temperature of the grade, for want of the actual one",
                    "T_temper",
                    temper.temperature.show(&unit::CELSIUS, 0),
                    source,
                )
                .published("t_temper", temper.time.show(&unit::HOUR, 0), ONE_HOUR_ASSUMED);
        }
        let (temperature, time) = (temper.temperature, temper.time);
        parameter_steps(&mut working, &TEMPER, temperature, time, parameter);
        working.topic("Against each other");
        working
            .step(
                "margin of the bath",
                "ΔT",
                "T_temper − T_bath",
                against.margin.show(&unit::DELTA_CELSIUS, 1),
                document::ARITHMETIC.computed("difference"),
            )
            .given("T_temper", temperature.show(&unit::CELSIUS, 1))
            .given("T_bath", input.bath.show(&unit::CELSIUS, 1));
        working
            .step(
                "hottest bath for this dip",
                "T_max",
                "P_temper / (20 + log10(t_dip))",
                against.hottest_bath.show(&unit::KELVIN, 1),
                PARAMETER_SOURCE,
            )
            .given("P_temper", shown(parameter))
            .given("t_dip", input.dip.show(&unit::HOUR, 5));
    }
    working
}

/// The symbols of a heat, and its formulas over them.
struct Heat {
    of: &'static str,
    temperature: &'static str,
    time: &'static str,
    parameter: &'static str,
    formula: &'static str,
    equal: &'static str,
    one_hour: &'static str,
}

const DIP: Heat = Heat {
    of: "dip",
    temperature: "T_bath",
    time: "t_dip",
    parameter: "P_dip",
    formula: "T_bath · (20 + log10(t_dip))",
    equal: "T_1h",
    one_hour: "P_dip / 20 − 273.15",
};

const TEMPER: Heat = Heat {
    of: "temper",
    temperature: "T_temper",
    time: "t_temper",
    parameter: "P_temper",
    formula: "T_temper · (20 + log10(t_temper))",
    equal: "T_1h'",
    one_hour: "P_temper / 20 − 273.15",
};

/// The parameter of a heat, and the one-hour temper with the same parameter.
fn parameter_steps(working: &mut Working, heat: &Heat, temperature: Temperature, time: Time, parameter: f64) {
    working
        .step("", heat.parameter, heat.formula, shown(parameter), PARAMETER_SOURCE)
        .said(format!("tempering parameter of the {}, in kelvin and hours", heat.of))
        .given(heat.temperature, temperature.show(&unit::KELVIN, 2))
        .given(heat.time, time.show(&unit::HOUR, 5));
    working
        .step(
            "",
            heat.equal,
            heat.one_hour,
            tempering::one_hour(parameter).show(&unit::CELSIUS, 1),
            PARAMETER_SOURCE,
        )
        .said(format!("one-hour temper to which the {} is equal", heat.of))
        .given(heat.parameter, shown(parameter));
}

/// A tempering parameter as it is shown.
pub(super) fn shown(parameter: f64) -> Shown {
    Shown { number: parameter, unit: &unit::TEMPERING_PARAMETER, decimals: 1 }
}
