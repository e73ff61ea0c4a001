//! Practice of mechanical plating and galvanizing: what handbooks and descriptions of the process
//! state of barrels, beads, liquor and powder.

use crate::quantity::{Length, Mass, Temperature, Time, Volume};
use crate::source::{Source, Sourced, common_practice, document};

/// Share of the powder weighed in that ends up on the parts.
pub const YIELD: Sourced<f64> =
    document::FINISHING_GUIDEBOOK.read("mechanical plating: about 93 % is plated").gives(0.93);

/// Equal additions of powder by coat in µm: `(coat from, to, additions from, to)`.
pub const ADDITIONS: Sourced<[(f64, f64, f64, f64); 2]> = document::TRADE
    .memory("additions: 1 to 3 for 5 to 12 µm, 5 to 12 for 40 to 110 µm")
    .gives([(5.0, 12.0, 1.0, 3.0), (40.0, 110.0, 5.0, 12.0)]);
/// Additions for a usual thick coat.
pub const USUAL_ADDITIONS: Sourced<f64> =
    common_practice("about 10 equal additions for a usual coat").gives(10.0);

/// Volume of beads to bulk volume of parts.
pub const BEADS_TO_PARTS: Sourced<f64> =
    document::PROCESS_TEXT.read("equal volumes of beads and parts").gives(1.0);
/// The ratio of a description that asks for more beads for thick coats; it does not say whether by volume or
/// by weight, and volume is taken.
pub const BEADS_TO_PARTS_THICK: Sourced<f64> =
    document::PROCESS_TEXT.read("2 to 1 for galvanizing").gives(2.0);
/// Beads to parts by weight, as a handbook states it.
pub const BEADS_TO_PARTS_WEIGHT: Sourced<f64> =
    document::CORROSION_HANDBOOK.read("about 1.5 to 1 by weight").gives(1.5);
/// Beads in the guidebook's load of 2000 lb of parts: 2200 lb of them.
pub const BEADS_IN_THE_LOAD: Sourced<f64> =
    document::FINISHING_GUIDEBOOK.read("2200 lb of beads with 2000 lb of parts").gives(2200.0 / 2000.0);
/// The mix of beads: share, least and greatest diameter in mm. The text prints the sizes as inches, which
/// can only be millimetres.
pub const BEAD_MIX: Sourced<[(f64, f64, f64); 3]> = document::PROCESS_TEXT
    .read("bead mix, sizes taken as mm")
    .gives([(0.5, 4.0, 5.0), (0.25, 2.0, 2.5), (0.25, 1.0, 1.25)]);
/// Specific gravity of the glass.
pub const GLASS: Sourced<f64> =
    document::PROCESS_TEXT.read("soda-lime glass, specific gravity about 2.5").gives(2.5);

/// Parts in a barrel for their volume: 2000 lb of 1 in threaded fasteners to 20 ft³.
pub const PARTS_PER_VOLUME: Sourced<(Mass, f64)> = document::FINISHING_GUIDEBOOK
    .read("2000 lb of 1 in long threaded fasteners in a 20 ft³ barrel")
    .gives((Mass::from_lb(2000.0), 20.0));

/// Working volumes of the barrels that are made, 1.5 to 40 ft³.
pub const WORKING_VOLUME: Sourced<(Volume, Volume)> = document::FINISHING_GUIDEBOOK
    .read("working volume 0.04 to 1.13 m³")
    .gives((Volume::from_m3(0.04), Volume::from_m3(1.13)));
/// Working volume of a barrel as a share of its total volume; another handbook says 30 to 35 %.
pub const WORKING_SHARE: Sourced<(f64, f64)> =
    document::CORROSION_HANDBOOK.read("working volume 25 to 35 % of the total").gives((0.25, 0.35));

/// Surface speed of the barrel, in metres a minute.
pub const SURFACE_SPEED: Sourced<(f64, f64)> =
    document::CORROSION_HANDBOOK.read("surface speed 43 to 75 m/min").gives((43.0, 75.0));

/// Heavier pieces can be damaged in the barrel.
pub const HEAVIEST_PIECE: Sourced<Mass> =
    document::PROCESS_TEXT.read("pieces up to about 1 lb").gives(Mass::from_lb(1.0));
/// The longest piece one plater takes.
pub const LONGEST_PIECE: Sourced<Length> =
    document::PROCESS_TEXT.read("one plater's limit: 26 in long").gives(Length::from_inch(26.0));
/// The coat up to which a description calls the deposit even.
pub const EVEN_UP_TO: Sourced<Length> =
    document::PROCESS_TEXT.read("even coats up to 75 µm").gives(Length::from_um(75.0));

/// Acidity the liquor stays below.
pub const PH: Sourced<f64> = document::FINISHING_GUIDEBOOK.read("pH 1 to 2").gives(2.0);
/// Temperature of the liquor.
pub const LIQUOR: Sourced<(Temperature, Temperature)> = document::FINISHING_GUIDEBOOK
    .read("15 to 32 °C")
    .gives((Temperature::from_celsius(15.0), Temperature::from_celsius(32.0)));
/// The copper flash has no required thickness.
pub const COPPER_SOURCE: Source =
    document::ASTM_B695.read("6.2.4.2: immersion copper, no thickness required");

/// A coat thicker than this is called mechanical galvanizing, and takes more beads.
pub const GALVANIZED_ABOVE: Sourced<Length> = document::ENCYCLOPEDIA
    .read("mechanical galvanizing: thicker than 0.001 in")
    .gives(Length::from_inch(0.001));
/// Parts with recesses go without the smallest beads.
pub const RECESSES: Source = document::ENCYCLOPEDIA.read("the small size is left out for recessed heads");
/// The greatest load of one plater.
pub const ONE_PLATERS_LOAD: Sourced<Mass> =
    document::PROCESS_TEXT.read("one plater's greatest load: 800 lb").gives(Mass::from_lb(800.0));

/// Cleaning before the barrel.
pub const CLEANING: Source =
    document::PROCESS_TEXT.read("hot alkaline soak, acid pickle and rinse; light soil in the barrel");
/// How the barrel is loaded.
pub const LOADING: Source = document::PROCESS_TEXT.read("beads, parts and water into the lined barrel");
/// How far the water stands ahead of the mix of beads and parts while the barrel turns.
pub const WATER_AHEAD: Sourced<(Length, Length)> = document::PROCESS_TEXT
    .read("water 1 to 2 in ahead of the mix")
    .gives((Length::from_inch(1.0), Length::from_inch(2.0)));
/// The temperature of the liquor at which it works best: colder is slower, warmer faster and spongy.
pub const LIQUOR_BEST: Sourced<(Temperature, Temperature)> = document::PROCESS_TEXT
    .read("70 to 80 °F; colder is slower, warmer gives a spongy coat")
    .gives((Temperature::from_fahrenheit(70.0), Temperature::from_fahrenheit(80.0)));
/// The acid that holds the liquor there.
pub const ACID: Source = document::TRADE.memory("sulfuric acid, inhibited, holds pH 1 to 2");
/// The surface conditioner, whose dose was not found.
pub const CONDITIONER: Source =
    document::PROCESS_TEXT.read("descaler and degreaser in the barrel; no dose found");
/// The starter mixes so long before the next step.
pub const STARTER: Sourced<Time> =
    document::PROCESS_TEXT.read("2 min of mixing before the next step").gives(Time::from_minute(2.0));
/// The promoter before the copper: a few minutes, no number.
pub const PROMOTER: Source = common_practice("promoter a few minutes before the copper");
/// The promoter with each addition of zinc, whose dose was not found.
pub const PROMOTER_DOSE: Source = document::TRADE.memory("promoter with each addition, by area or by zinc");
/// Copper before the zinc.
pub const COPPER_TIME: Sourced<Time> =
    common_practice("copper flash about 5 min before the zinc").gives(Time::from_minute(5.0));
/// The tin salt with the first zinc, whose dose was not found.
pub const TIN: Source = document::TRADE.memory("tin salt in the first, small addition of zinc");
/// Between two additions of zinc.
pub const SPACING: Sourced<(Time, Time)> = document::TRADE
    .memory("equal portions about 3 to 5 min apart")
    .gives((Time::from_minute(3.0), Time::from_minute(5.0)));
/// The last tumble in clear water, which brightens; how long was not found.
pub const TUMBLE: Source = document::ENCYCLOPEDIA.read("water polish brightens the coat");
/// The plating cycle.
pub const CYCLE: Sourced<(Time, Time)> = document::FINISHING_GUIDEBOOK
    .read("plating cycle 30 to 45 min")
    .gives((Time::from_minute(30.0), Time::from_minute(45.0)));
/// The whole process.
pub const WHOLE: Sourced<Time> =
    document::ENCYCLOPEDIA.read("about 50 min from start to end").gives(Time::from_minute(50.0));
/// Parts from beads.
pub const SEPARATION: Source =
    document::FINISHING_GUIDEBOOK.read("vibrating screen with water sprays, or magnetic belt");
/// A chromate comes after the separation.
pub const CHROMATE: Source = document::FINISHING_GUIDEBOOK.read("chromate after separation, before drying");
/// A hexavalent chromate is harmed above this heat.
pub const CHROMATE_HEAT: Sourced<Temperature> = document::BOLT_MAKERS_TEXT
    .read("chromate film harmed above 150 °F")
    .gives(Temperature::from_fahrenheit(150.0));
/// Under a sprayed patch a trivalent chromate.
pub const PATCH: Source = common_practice("trivalent chromate under a sprayed nylon patch");
/// Drying, whose temperature was not found.
pub const DRYING: Source = document::FINISHING_GUIDEBOOK.read("heated centrifuge, belt or vibratory oven");
/// The bake after plating, which most parts do not need.
pub const BAKE: Source =
    document::FINISHING_GUIDEBOOK.read("a bake after plating: not required in most cases");

/// Area of a threaded part of a bar for that of the plain bar.
pub const THREADED_AREA: Sourced<f64> =
    document::ARITHMETIC.computed("a 60° thread adds about half to the area of the bar").gives(1.5);
