//! Practice of mechanical plating and galvanizing: what handbooks and descriptions of the process
//! state of barrels, beads, liquor and powder.

use crate::quantity::{Length, Mass, Temperature};
use crate::source::{Source, common_practice, document};

/// Share of the powder weighed in that ends up on the parts.
pub const YIELD: f64 = 0.93;
/// Where the yield is published.
pub const YIELD_SOURCE: Source =
    document::FINISHING_GUIDEBOOK.read("mechanical plating: about 93 % is plated");

/// Equal additions of powder by coat in µm: `(coat from, to, additions from, to)`.
pub const ADDITIONS: [(f64, f64, f64, f64); 2] = [(5.0, 12.0, 1.0, 3.0), (40.0, 110.0, 5.0, 12.0)];
/// Where the numbers of additions are known from.
pub const ADDITIONS_SOURCE: Source =
    document::TRADE.memory("additions: 1 to 3 for 5 to 12 µm, 5 to 12 for 40 to 110 µm");
/// Additions for a usual thick coat.
pub const USUAL_ADDITIONS: f64 = 10.0;
/// Where that number comes from.
pub const USUAL_ADDITIONS_SOURCE: Source = common_practice("about 10 equal additions for a usual coat");

/// Volume of beads to bulk volume of parts.
pub const BEADS_TO_PARTS: f64 = 1.0;
/// Where the ratio is published.
pub const BEADS_TO_PARTS_SOURCE: Source = document::PROCESS_TEXT.read("equal volumes of beads and parts");
/// The ratio of a description that asks for more beads for thick coats.
pub const BEADS_TO_PARTS_THICK: f64 = 2.0;
/// Where that ratio is published.
pub const BEADS_TO_PARTS_THICK_SOURCE: Source = document::PROCESS_TEXT.read("2 to 1 for galvanizing");
/// Beads to parts by weight, as a handbook states it.
pub const BEADS_TO_PARTS_WEIGHT: f64 = 1.5;
/// Where that ratio is published.
pub const BEADS_TO_PARTS_WEIGHT_SOURCE: Source =
    document::CORROSION_HANDBOOK.read("about 1.5 to 1 by weight");
/// The mix of beads: share, least and greatest diameter in mm.
pub const BEAD_MIX: [(f64, f64, f64); 3] = [(0.5, 4.0, 5.0), (0.25, 2.0, 2.5), (0.25, 1.0, 1.25)];
/// Where the mix is published; it prints the sizes as inches, which can only be millimetres.
pub const BEAD_MIX_SOURCE: Source = document::PROCESS_TEXT.read("bead mix, sizes taken as mm");
/// Specific gravity of the glass.
pub const GLASS: f64 = 2.5;
/// Where the specific gravity is published.
pub const GLASS_SOURCE: Source = document::PROCESS_TEXT.read("soda-lime glass, specific gravity about 2.5");

/// Parts in a barrel for their volume: 2000 lb of 1 in threaded fasteners to 20 ft³.
pub const PARTS_PER_VOLUME: (Mass, f64) = (Mass::from_lb(2000.0), 20.0);
/// Where the load is published.
pub const PARTS_PER_VOLUME_SOURCE: Source =
    document::FINISHING_GUIDEBOOK.read("2000 lb of 1 in long threaded fasteners in a 20 ft³ barrel");

/// Working volume of a barrel as a share of its total volume.
pub const WORKING_SHARE: (f64, f64) = (0.25, 0.35);
/// Where the share is published; another handbook says 30 to 35 %.
pub const WORKING_SHARE_SOURCE: Source =
    document::CORROSION_HANDBOOK.read("working volume 25 to 35 % of the total");

/// Surface speed of the barrel, in metres a minute.
pub const SURFACE_SPEED: (f64, f64) = (43.0, 75.0);
/// Where the speed is published.
pub const SURFACE_SPEED_SOURCE: Source = document::CORROSION_HANDBOOK.read("surface speed 43 to 75 m/min");

/// Heavier pieces can be damaged in the barrel.
pub const HEAVIEST_PIECE: Mass = Mass::from_lb(1.0);
/// Where the weight is published.
pub const HEAVIEST_PIECE_SOURCE: Source = document::PROCESS_TEXT.read("pieces up to about 1 lb");
/// The longest piece one plater takes.
pub const LONGEST_PIECE: Length = Length::from_inch(26.0);
/// Where the length is published.
pub const LONGEST_PIECE_SOURCE: Source = document::PROCESS_TEXT.read("one plater's limit: 26 in long");
/// The coat up to which a description calls the deposit even.
pub const EVEN_UP_TO: Length = Length::from_um(75.0);
/// Where that coat is published.
pub const EVEN_UP_TO_SOURCE: Source = document::PROCESS_TEXT.read("even coats up to 75 µm");

/// Acidity the liquor stays below.
pub const PH: f64 = 2.0;
/// Where the acidity is published.
pub const PH_SOURCE: Source = document::FINISHING_GUIDEBOOK.read("pH 1 to 2");
/// Temperature of the liquor.
pub const LIQUOR: (Temperature, Temperature) =
    (Temperature::from_celsius(15.0), Temperature::from_celsius(32.0));
/// Where the temperature is published.
pub const LIQUOR_SOURCE: Source = document::FINISHING_GUIDEBOOK.read("15 to 32 °C");
/// The copper flash has no required thickness.
pub const COPPER_SOURCE: Source =
    document::ASTM_B695.read("6.2.4.2: immersion copper, no thickness required");
