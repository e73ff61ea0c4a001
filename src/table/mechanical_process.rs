//! Practice of mechanical plating and galvanizing: what handbooks and descriptions of the process
//! state of barrels, beads, liquor and powder.

use crate::quantity::{Length, Mass, Temperature};
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
/// The ratio of a description that asks for more beads for thick coats.
pub const BEADS_TO_PARTS_THICK: Sourced<f64> =
    document::PROCESS_TEXT.read("2 to 1 for galvanizing").gives(2.0);
/// Beads to parts by weight, as a handbook states it.
pub const BEADS_TO_PARTS_WEIGHT: Sourced<f64> =
    document::CORROSION_HANDBOOK.read("about 1.5 to 1 by weight").gives(1.5);
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
