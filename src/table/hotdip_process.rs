//! Practice of hot-dip galvanizing fasteners: what standards and descriptions of the process state of
//! baths, steels, the spin and the pieces.

use crate::quantity::{Length, Mass, Temperature, Time};
use crate::source::{Source, Sourced, assumed, common_practice, document};

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

/// The thickest coat to reckon with on a part that is too long to be spun and is wiped by an air ring.
pub const WIPED_COAT_MAX: Sourced<Length> =
    assumed("coat of up to 70 µm on rods wiped by an air ring: no document limits it")
        .gives(Length::from_um(70.0));

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

/// Silicon, in per cent, above which ASTM A385 has the coat grow fast again.
pub const SILICON_A385: Sourced<f64> =
    document::ASTM_A385.read("3.2: silicon 0.04 to 0.15 % or above 0.22 %").gives(0.22);
/// Silicon, in per cent, for which ASTM A385 has the coat grow fast as well.
pub const SILICON_A385_LOW: Sourced<(f64, f64)> =
    document::ASTM_A385.read("3.2: silicon 0.04 to 0.15 % or above 0.22 %").gives((0.04, 0.15));
/// Silicon, in per cent, from which ISO 14713-2 has the coat normal again.
pub const SILICON_14713_NORMAL: Sourced<f64> =
    document::ISO_14713_2.read("category B: 0.14 to 0.25 %, by a steel maker").gives(0.14);
/// Silicon, in per cent, above which ISO 14713-2 has the coat thick and dark again.
pub const SILICON_14713: Sourced<f64> =
    document::ISO_14713_2.read("category D: above 0.25 %, by a steel maker").gives(0.25);
/// Whether normal and thick coats protect alike.
pub const PROTECT_ALIKE: Source =
    document::ASTM_A385.read("3.6: normal and abnormal coats protect alike for practical purposes");
/// The thickness of the coat on spun work by what the steel holds was not found.
pub const THICKNESS_BY_SILICON: Source =
    document::ISO_14713_2.memory("no thickness by silicon for spun work was found");

/// Baskets of centrifuges, across: those that are remembered.
pub const BASKETS: Sourced<(Length, Length)> =
    document::TRADE.memory("baskets of 0.4 to 0.6 m").gives((Length::from_m(0.4), Length::from_m(0.6)));
/// From this weight on one plant handles the pieces singly, on fixtures.
pub const ON_FIXTURES: Sourced<Mass> =
    document::PLANT_TEXT.read("a spin line: pieces of 4 to 25 kg on fixtures").gives(Mass::from_kg(4.0));

/// Degreasing.
pub const DEGREASING: Source =
    document::GALVANIZING_TEXT.read("process descriptions: hot caustic or alkaline");
/// How hot, as it is remembered.
pub const DEGREASING_HEAT: Sourced<(Temperature, Temperature)> = document::TRADE
    .memory("caustic at 65 to 82 °C")
    .gives((Temperature::from_celsius(65.0), Temperature::from_celsius(82.0)));
/// Pickling.
pub const PICKLING: Source = document::PLANT_GUIDANCE.read("hydrochloric acid, inhibited, or sulfuric acid");
/// Strength of the hydrochloric acid in use, by weight.
pub const ACID_STRENGTH: Sourced<(f64, f64)> =
    document::TRADE.memory("hydrochloric acid of 5 to 15 %").gives((0.05, 0.15));
/// The most that guidance gives.
pub const ACID_STRENGTH_MAX: Sourced<f64> =
    document::PLANT_GUIDANCE.read("working strength generally up to 18 %").gives(0.18);
/// The warmest hydrochloric acid.
pub const ACID_HEAT: Sourced<Temperature> = document::PLANT_TEXT
    .read("as a rule at room temperature, up to 40 °C")
    .gives(Temperature::from_celsius(40.0));
/// What sets the time in the acid.
pub const PICKLING_TIME: Source =
    document::PLANT_TEXT.read("rust and the strength of the acid set the time; 2 to 4 h for structural work");
/// Fasteners take minutes, as it is remembered.
pub const PICKLING_FASTENERS: Source = document::TRADE.memory("fasteners: minutes in the acid");
/// Rinsing.
pub const RINSING: Source =
    document::GALVANIZING_TEXT.read("acid and iron salts make dross in the bath: rinse before the flux");
/// Fluxing.
pub const FLUXING: Source = document::FLUX_PAPER.read("1 part zinc chloride to 1.6 parts ammonium chloride");
/// Density of the flux that releases well, in degrees Baumé.
pub const FLUX_DENSITY: Sourced<(f64, f64)> = document::FLUX_PAPER
    .read("below 12 °Bé it releases poorly, above 14 °Bé it spatters")
    .gives((12.0, 14.0));
/// Older practice had the flux denser.
pub const FLUX_DENSITY_OLD: Sourced<(f64, f64)> =
    document::TRADE.memory("older practice: 20 to 22 °Bé").gives((20.0, 22.0));
/// Temperature of the flux.
pub const FLUX_HEAT: Sourced<Temperature> =
    document::PLANT_TEXT.read("flux at about 50 °C").gives(Temperature::from_celsius(50.0));
/// Drying, whose temperature was not found.
pub const DRYING: Source =
    document::PLANT_GUIDANCE.read("dry by air or waste heat: wet work makes the zinc spatter");
/// How long in the zinc.
pub const IMMERSION: Source =
    document::GALVANIZING_TEXT.read("until the work has the temperature of the bath and boiling stops");
/// Baskets of fasteners, as it is remembered.
pub const IMMERSION_TIME: Sourced<(Time, Time)> = document::TRADE
    .memory("fasteners in baskets: 1.5 to 5 min")
    .gives((Time::from_minute(1.5), Time::from_minute(5.0)));
/// Withdrawal.
pub const WITHDRAWAL: Source =
    document::PLANT_TEXT.read("quickly, before the zinc on the work freezes, and at once to the centrifuge");
/// The spin, as it is remembered: turns a minute.
pub const SPIN_TURNS: Sourced<(f64, f64)> =
    document::TRADE.memory("400 to 700 turns a minute for 5 to 15 s").gives((400.0, 700.0));
/// The spin, as it is remembered: how long.
pub const SPIN_TIME: Sourced<(Time, Time)> = document::TRADE
    .memory("400 to 700 turns a minute for 5 to 15 s")
    .gives((Time::from_second(5.0), Time::from_second(15.0)));
/// Small parts are quenched at once.
pub const QUENCH: Source =
    document::GALVANIZING_TEXT.read("small parts are quenched at once after the centrifuge");
/// The zinc goes on reacting above this heat, and a slow cooling may peel.
pub const REACTS_ABOVE: Sourced<Temperature> = document::GALVANIZING_TEXT
    .read("the reaction goes on above 600 °F")
    .gives(Temperature::from_fahrenheit(600.0));
/// Hollow and dished parts keep zinc in the centrifuge.
pub const HOLLOWS: Source =
    document::GALVANIZING_TEXT.read("caps and dished parts keep zinc in their hollows");
/// High-strength bolts are blasted instead of pickled.
pub const BLASTING: Source =
    document::PLANT_TEXT.read("high-strength bolts: blasting in place of acid where hydrogen is a risk");
/// The share of the zinc used that leaves with the dross.
pub const DROSS_SHARE: Sourced<f64> =
    document::GALVANIZING_TEXT.read("dross: about 15 % of the zinc used").gives(0.15);
/// The share of the zinc used that leaves with the ash, as it is remembered.
pub const ASH_SHARE: Sourced<(f64, f64)> =
    document::TRADE.memory("ash: 10 to 20 % of the zinc used").gives((0.1, 0.2));
