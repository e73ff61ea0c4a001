//! Practice of hot-dip galvanizing fasteners: what standards and descriptions of the process state of
//! baths, steels, the spin and the pieces.

use crate::quantity::Length;
use crate::source::{Source, Sourced, common_practice, document};

/// Silicon and phosphorus together, in per cent, for which the high-temperature bath is advised.
pub const REACTIVE: Sourced<(f64, f64)> =
    document::ISO_10684.read("steels of 0.03 to 0.13 % Si + P, by its national adoption").gives((0.03, 0.13));

/// No high-temperature bath for bolts of class 10.9 from this thread on.
pub const NO_HIGH_BATH_FROM: Sourced<Length> = document::ISO_10684
    .read("high temperature, class 10.9 from M27, by its national adoption")
    .gives(Length::from_mm(27.0));

/// The smallest thread that ISO 10684 takes in: diameter and pitch.
pub const LEAST_THREAD: Sourced<(Length, Length)> =
    document::ISO_10684.read("scope").gives((Length::from_mm(8.0), Length::from_mm(1.25)));

/// The longest threaded rod that is said to be processed.
pub const LONGEST_ROD: Sourced<Length> =
    document::GALVANIZING_TEXT.read("threaded length up to 2 m").gives(Length::from_m(2.0));

/// Thickness of the coat on fasteners from a spun batch.
pub const SPUN_COAT: Sourced<(Length, Length)> =
    common_practice("coat of 40 to 60 µm on fasteners from a spun batch")
        .gives((Length::from_um(40.0), Length::from_um(60.0)));

/// Zinc on fasteners in per cent of their mass, as it is remembered of handbooks.
pub const USUAL_SHARE: Sourced<(f64, f64)> =
    document::TRADE.memory("zinc on fasteners: 3 to 8 % of their mass").gives((0.03, 0.08));

/// Small parts are spun, long ones wiped by air.
pub const SPIN_SOURCE: Source =
    common_practice("small parts are dipped and spun; an air ring wipes long rods");
/// The spin follows the bath at once.
pub const SPIN_AT_ONCE_SOURCE: Source =
    document::AS_NZS_1214.read("5.6: spun immediately, then quenched or cooled in air");
/// Nuts are tapped after the bath.
pub const NUTS_SOURCE: Source = document::AS_NZS_1214.read("5.7: nuts are tapped after galvanizing");
/// Washers bond to each other.
pub const WASHERS_SOURCE: Source = document::AS_NZS_1214.read("8.2: washers that bond together");
