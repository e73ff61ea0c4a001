//! From what was stated to the area of a load, and on to the zinc on it.

use super::{Body, Known, Load, SUM, Stated, Trial};
use crate::part::{self, STEEL};
use crate::quantity::{Density, Length, Mass, Quantity, Shown, unit};
use crate::source::document;
use crate::table::mechanical_process as practice;
use crate::working::Working;

impl Load {
    /// From the factor and the coat to the zinc on the load, which is shown in kilograms.
    pub fn zinc(&self, working: &mut Working, factor: Known<Density>, coat: Known<Length>, zinc: Shown) {
        working.topic("The zinc");
        let areal = (factor.0 * coat.0).show(&unit::G_M2, 2);
        let source = document::ARITHMETIC.computed("mass = density × thickness");
        working
            .step("mass of the coat on the area", "m_A", "k_Zn·t_Zn", areal, source)
            .known("k_Zn", factor.0.show(&unit::G_M2_UM, 3), factor.1)
            .known("t_Zn", coat.0.show(&unit::UM, 2), coat.1);
        working
            .step("zinc on the parts", "Z", "m_A·A / 1000", zinc, SUM)
            .given("m_A", areal)
            .given("A", self.area.show(&unit::M2, 2));
    }

    /// From what was stated to the area of the load.
    pub fn working(&self, stated: &Stated) -> Working {
        match stated {
            Stated::Count(..) | Stated::Weight(..) => self.of_pieces(stated),
            Stated::Area(..) => Working::default(),
            Stated::Measured(body, mass) => self.of_body(*body, mass.quantity),
            Stated::Trial(trial, mass) => self.of_trial(trial, mass.quantity),
        }
    }

    fn of_pieces(&self, stated: &Stated) -> Working {
        let Some(piece) = &self.piece else { return Working::default() };
        let mut working = part::working(&piece.shape);
        let pieces = Shown { decimals: 1, ..Shown::pieces(self.pieces.unwrap_or_default()) };
        working.topic("The load");
        if let Stated::Weight(_, mass) = stated {
            working
                .step("pieces in the load", "n", "1000·M / m_1", pieces, SUM)
                .given("M", mass.quantity.show(&unit::KG, 2))
                .given("m_1", piece.shape.mass().show(&unit::G, 2));
        }
        working
            .step(
                "area of the load; 1 m² is 10^6 mm²",
                "A",
                "n·A_1 / 10^6",
                self.area.show(&unit::M2, 2),
                SUM,
            )
            .given("n", pieces)
            .given("A_1", piece.shape.surface().show(&unit::MM2, 1));
        working
    }

    fn of_body(&self, body: Body, mass: Mass) -> Working {
        let mut working = Working::default();
        let each = body.area_of_a_kilogram().show(&unit::M2, 5);
        let density = (STEEL.value.show(&unit::G_CM3, 2), Some(STEEL.source));
        match body {
            Body::Round(diameter, threaded) => working
                .step(
                    "area of a kilogram: the side of the bar, and half as much again where it is threaded",
                    "a",
                    "4 / (ρ·d)·(1 + (f − 1)·s / 100)",
                    each,
                    practice::THREADED_AREA.source,
                )
                .known("ρ", density.0, density.1)
                .given("d", diameter.quantity.show(&unit::MM, 3))
                .published(
                    "f",
                    Shown::plain(practice::THREADED_AREA.value, 1),
                    practice::THREADED_AREA.source,
                )
                .given("s", threaded.show(&unit::PERCENT, 1)),
            Body::Flat(thickness) => working
                .step("area of a kilogram: both faces of the plate", "a", "2 / (ρ·h)", each, SUM)
                .known("ρ", density.0, density.1)
                .given("h", thickness.quantity.show(&unit::MM, 3)),
        };
        working
            .step("area of the load", "A", "a·M", self.area.show(&unit::M2, 2), SUM)
            .given("a", each)
            .given("M", mass.show(&unit::KG, 2));
        working
    }

    fn of_trial(&self, trial: &Trial, mass: Mass) -> Working {
        let mut working = Working::default();
        let area = trial.area().show(&unit::M2, 4);
        working
            .step(
                "area of the trial: its zinc over what a coat of that thickness weighs",
                "A_t",
                "Z_t / (k_t·t_t)",
                area,
                SUM,
            )
            .given("Z_t", trial.zinc.quantity.show(&unit::G, 2))
            .known("k_t", trial.deposit.0.show(&unit::G_M2_UM, 3), trial.deposit.1)
            .given("t_t", trial.coat.quantity.show(&unit::UM, 2));
        working
            .step(
                "area of the load, as its weight to that of the trial",
                "A",
                "A_t·M / M_t",
                self.area.show(&unit::M2, 2),
                SUM,
            )
            .given("A_t", area)
            .given("M", mass.show(&unit::KG, 2))
            .given("M_t", trial.parts.quantity.show(&unit::KG, 3));
        working
    }
}
