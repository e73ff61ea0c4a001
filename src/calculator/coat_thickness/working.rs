//! The steps of the answer.

use super::{Conversion, Input, Outcome, Stated};
use crate::calculator::Written;
use crate::coat::Factor;
use crate::quantity::{Quantity, unit};
use crate::source::{Source, document};
use crate::working::Working;

/// From what is stated to the rest.
pub(super) fn working(input: &Input, outcome: &Outcome) -> Working {
    let (light, heavy) = input.conversion.densities();
    let source = |published: fn(&Factor) -> Source| match input.conversion {
        Conversion::Published(factor) => Some(published(factor)),
        Conversion::Own(_) => None,
    };
    let ends = [
        (light, source(|f| f.source), outcome.mass.0, outcome.thickness.1),
        (heavy, source(|f| f.source_max), outcome.mass.1, outcome.thickness.0),
    ];
    let ends = if light == heavy { ends.get(..1) } else { ends.get(..) };
    let mut working = Working::default();
    for &(density, published, mass, thickness) in ends.unwrap_or_default() {
        let k = density.show(&unit::G_M2_UM, 3);
        match input.coat {
            Stated::Thickness(Written { quantity: thickness, .. }) => working
                .step(
                    "mass on the area: the factor times the thickness",
                    "m",
                    "k · t",
                    mass.show(&unit::G_M2, 1),
                    document::ARITHMETIC.computed("mass = density × thickness"),
                )
                .known("k", k, published)
                .given("t", thickness.show(&unit::UM, 2)),
            Stated::Mass(Written { quantity: mass, .. }) => working
                .step(
                    "thickness: the mass on the area over the factor",
                    "t",
                    "m / k",
                    thickness.show(&unit::UM, 1),
                    document::ARITHMETIC.computed("thickness = mass / density"),
                )
                .given("m", mass.show(&unit::G_M2, 2))
                .known("k", k, published),
        };
    }
    working
        .step(
            "in thousandths of an inch",
            "t_mil",
            "t / 25.4",
            outcome.thickness.0.show(&unit::MIL, 3),
            document::ARITHMETIC.computed("1 mil = 25.4 µm exactly"),
        )
        .given("t", outcome.thickness.0.show(&unit::UM, 2));
    working
        .step(
            "in ounces on a square foot",
            "m_oz",
            "m / 305.1517",
            outcome.mass.0.show(&unit::OZ_FT2, 3),
            document::ARITHMETIC.computed("28.349523125 g / 0.09290304 m²"),
        )
        .given("m", outcome.mass.0.show(&unit::G_M2, 2));
    working
}
