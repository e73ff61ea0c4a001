//! The barrel: what to weigh in for a coat on an area, beads, additions and loads.
//!
//! The thickness follows from the mass of powder on the area, and from nothing else: time only
//! gives the powder leave to be peened on.

pub mod target;

use std::f64::consts::PI;

use crate::quantity::{Area, ArealMass, Density, Length, Mass, Quantity, Volume, unit};
use crate::source::{Source, Sourced, assumed, document};
use crate::table::{Refusal, mechanical_process as practice};

/// What is weighed in for a load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Charge {
    /// Mass of the coat on the area.
    pub areal: ArealMass,
    /// Zinc on the parts.
    pub deposit: Mass,
    /// Zinc powder to weigh in.
    pub powder: Mass,
    /// Copper on the parts.
    pub copper: Mass,
    /// Copper sulfate pentahydrate that holds this copper.
    pub copper_sulfate: Mass,
}

/// Density of solid copper.
pub const COPPER: Sourced<Density> =
    document::MACHINERYS_HANDBOOK.memory("density of copper").gives(Density::from_g_cm3(8.96));
/// Mass of copper sulfate pentahydrate for the copper in it: 249.69 over 63.55.
pub const SULFATE_TO_COPPER: Sourced<f64> =
    document::ARITHMETIC.computed("molar masses of CuSO4·5H2O and Cu").gives(3.929);
/// The copper flash taken where none is stated.
pub const COPPER_FLASH: Sourced<Length> =
    assumed("copper flash of 0.5 µm; no document states one").gives(Length::from_um(0.5));
/// Solid share of a heap of graded beads.
pub const BEAD_PACKING: Sourced<f64> = assumed("graded beads fill 60 % of their heap").gives(0.6);

/// What to weigh in for a coat: zinc at the deposit's density and the yield, copper by its flash.
///
/// `yielded` is the share of the powder that ends up on the parts, above 0 and up to 1.
pub fn charge(area: Area, coat: Length, deposit: Density, yielded: f64, flash: Length) -> Charge {
    let areal = deposit * coat;
    let zinc = areal * area;
    let copper = (COPPER.value * flash) * area;
    Charge {
        areal,
        deposit: zinc,
        powder: zinc / yielded,
        copper,
        copper_sulfate: copper * SULFATE_TO_COPPER.value,
    }
}

/// The usual number of equal additions for a coat, and the rule it comes from.
///
/// # Errors
/// Outside 5 to 110 µm nothing is known.
pub fn usual_additions(coat: Length) -> Result<Sourced<u32>, Refusal> {
    let [thin, thick] = practice::ADDITIONS.value;
    let um = coat.um();
    let along =
        |(from, to): (f64, f64), (min, max): (f64, f64)| min + (max - min) * (um - from) / (to - from);
    let (number, source) = if um < thin.0 || um > thick.1 {
        return Err(Refusal::outside(
            "coat",
            coat.show(&unit::UM, 1),
            Length::from_um(thin.0).show(&unit::UM, 0),
            Length::from_um(thick.1).show(&unit::UM, 0),
            practice::ADDITIONS.source,
        ));
    } else if um <= thin.1 {
        (along((thin.0, thin.1), (thin.2, thin.3)), practice::ADDITIONS.source)
    } else if um < thick.0 {
        (along((thin.1, thick.0), (thin.3, practice::USUAL_ADDITIONS.value)), BETWEEN)
    } else {
        (practice::USUAL_ADDITIONS.value, practice::USUAL_ADDITIONS.source)
    };
    // From 1 to 10.
    Ok(source.gives(number.round() as u32))
}

/// Nothing is published between the thin and the thick coats.
const BETWEEN: Source = assumed("between 12 and 40 µm: along a straight line from 3 to 10 additions");

/// Volume of beads to bulk volume of parts: more for thick coats.
pub fn usual_bead_ratio(coat: Length) -> Sourced<f64> {
    if coat > practice::GALVANIZED_ABOVE.value {
        practice::BEADS_TO_PARTS_THICK
    } else {
        practice::BEADS_TO_PARTS
    }
}

/// The mix of beads: share, least and greatest diameter. Where parts have recesses, the smallest size,
/// which would stay in them, is left out, and the rest keeps its proportion.
pub fn bead_mix(recessed: bool) -> impl Iterator<Item = (f64, Length, Length)> {
    let smallest = practice::BEAD_MIX.value.iter().map(|(_, from, _)| *from).fold(f64::INFINITY, f64::min);
    let taken = move |row: &(f64, f64, f64)| !recessed || row.1 > smallest;
    let whole: f64 = practice::BEAD_MIX.value.iter().filter(|row| taken(row)).map(|(share, ..)| share).sum();
    practice::BEAD_MIX
        .value
        .into_iter()
        .filter(taken)
        .map(move |(share, from, to)| (share / whole, Length::from_mm(from), Length::from_mm(to)))
}

/// The coat after each of `count` equal additions; the last is the whole coat.
pub fn coat_after_each(coat: Length, count: u32) -> impl Iterator<Item = Length> {
    (1..=count).map(move |number| coat * f64::from(number) / f64::from(count))
}

/// Share of a heap of parts that is steel, where none is stated: from the published load of a barrel.
pub fn usual_solid_share(steel: Density) -> f64 {
    let (parts, ft3) = practice::PARTS_PER_VOLUME.value;
    parts / (steel * Volume::from_ft3(ft3))
}

/// Where that share comes from.
pub const USUAL_SOLID_SHARE_SOURCE: Source = document::FINISHING_GUIDEBOOK
    .computed("2000 lb of 1 in long threaded fasteners in a 20 ft³ barrel, over the density of steel");

/// The room a heap takes whose solid share is known.
pub fn bulk_volume(solid: Volume, solid_share: f64) -> Volume {
    solid / solid_share
}

/// Mass of a heap of beads.
pub fn bead_mass(bulk: Volume) -> Mass {
    Mass::from_g(bulk.cm3() * practice::GLASS.value * BEAD_PACKING.value)
}

/// Loads that a heap of parts makes in a barrel; working volumes count the parts.
pub fn loads(bulk: Volume, working: Volume) -> f64 {
    // Nobody fills a barrel to the hundredth: what is that little above it still is the same load.
    (bulk / working - FILL).ceil().max(1.0)
}

/// What of a load more than a full barrel is no further load.
const FILL: f64 = 0.01;

/// Turns a minute at the published surface speeds.
pub fn turns_a_minute(diameter: Length) -> (f64, f64) {
    let (slow, fast) = practice::SURFACE_SPEED.value;
    let around = PI * diameter.m();
    (slow / around, fast / around)
}
