//! Loads of a thread: least ultimate and proof load of a bolt, proof load of a nut.
//!
//! A printed load comes before a product. Where no table has the thread, the load is stress × stress
//! area with the area as its standard prints it; where nothing is known there is a [`Refusal`].

use crate::quantity::{Area, Force, Stress};
use crate::source::{Source, Sourced, document};
use crate::table::bolt_load::{BoltStrength, Printed};
use crate::table::nut_grade::NutGrade;
use crate::table::nut_style::{Style, Tapping};
use crate::table::{
    Refusal, asme_b1_1_areas, astm_a194_loads, astm_a563_proof, astm_a563m, astm_a574_loads, en_14399_loads,
    iso_898_1_loads, iso_898_2_loads, iso_10684_annex_a, sae_j995,
};

use super::{Thread, undersize};

/// A load, and how it is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Load {
    /// The load.
    pub force: Force,
    /// Printed, or a product.
    pub way: Way,
    /// The table, or where the product is published.
    pub source: Source,
}

/// How a load is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Way {
    /// A table prints it for this thread.
    Printed,
    /// Stress times stress area, because no table prints it.
    Product {
        /// The stress.
        stress: Sourced<Stress>,
        /// The stress area, with the digits its standard prints.
        area: Sourced<Area>,
    },
}

/// The loads of a bolt.
#[derive(Debug, Clone, PartialEq)]
pub struct BoltLoads {
    /// Least ultimate tensile load.
    pub ultimate: Result<Load, Refusal>,
    /// Proof load.
    pub proof: Result<Load, Refusal>,
}

/// Where the product is published for bolts and nuts: strength and proof stress times stress area.
pub const PRODUCT: Source = document::ISO_898_1.computed("9.1.6, stress × nominal stress area");

/// The loads of a bolt of a grade; a bolt cut under to 6az carries what ISO 10684 gives it.
///
/// From M12 up that is the full load; M8 and M10 carry stress × their own stress area (Annex A).
pub fn bolt(thread: Thread, strength: &BoltStrength, is_undercut: bool) -> BoltLoads {
    if is_undercut {
        match hot_dip(thread) {
            None => return BoltLoads { ultimate: Err(not_dipped(thread)), proof: Err(not_dipped(thread)) },
            Some(Loads::Reduced) => return by_area(strength, undercut_area(thread)),
            Some(Loads::Full) => {}
        }
    }
    let Some(printed) = printed(thread, strength.printed) else {
        return by_area(strength, Ok(stress_area(thread)));
    };
    BoltLoads { ultimate: Ok(as_printed(printed.ultimate)), proof: Ok(as_printed(printed.proof)) }
}

/// The proof load of a nut by grade, style and tapping.
///
/// # Errors
/// A blank where the table has no such nut, and a refusal where its document does not speak of a nut
/// tapped over like this.
pub fn nut(thread: Thread, nut: NutGrade, style: Style, tapping: Tapping) -> Result<Load, Refusal> {
    match nut {
        NutGrade::Iso898_2(class) => {
            let over = matches!(tapping, Tapping::Az | Tapping::Ax);
            if over && hot_dip(thread).ok_or_else(|| not_dipped(thread))? == Loads::Reduced {
                let row = iso_10684_annex_a::nut(thread.diameter().mm(), class)?;
                return Ok(as_printed(iso_10684_annex_a::SOURCE.gives(row.proof_load)));
            }
            if matches!(tapping, Tapping::Zinc | Tapping::Own) {
                return Err(not_this_tapping(
                    thread,
                    tapping,
                    "6AZ and 6AX",
                    document::ISO_10684.read("clause 7"),
                ));
            }
            iso_898_2(thread, class, style)
        }
        NutGrade::A563(grade) => {
            let zinc = zinc(thread, tapping, document::ASTM_A563.read("Table 5"))?;
            let stress = thread.inch_key().and_then(|(d, _)| {
                astm_a563_proof::proof_stress(d, grade, style, thread.has_coarse_loads(), zinc)
            });
            product(thread, stress, || blank(thread, nut, style, document::ASTM_A563.read("Table 3")))
        }
        NutGrade::A563M(class) => {
            let zinc = zinc(thread, tapping, document::ASTM_A563M.memory("zinc allowance"))?;
            let stress = thread
                .metric_key()
                .filter(|key| key.1)
                .and_then(|_| astm_a563m::proof_stress(thread.diameter().mm(), class, zinc));
            product(thread, stress, || blank(thread, nut, style, astm_a563m::SOURCE))
        }
        NutGrade::A194(grade) => {
            // ASTM A325 has 2H coated, tapped and lubricated as DH of A563; no other grade is named so.
            let is_2h = grade == astm_a194_loads::Grade::Grade2H;
            let over = is_2h && tapping == Tapping::Zinc;
            if !over {
                plain_only(thread, nut, tapping, astm_a194_loads::SOURCE)?;
            }
            let blank = || blank(thread, nut, style, astm_a194_loads::SOURCE);
            let Some((d, n)) = thread.inch_key() else {
                // A194M is remembered to take the stresses of the inch nuts.
                let stress =
                    if over { two_h_as_dh(style) } else { astm_a194_loads::proof_stress(grade, style) };
                let stress = stress.filter(|_| thread.is_coarse());
                let known = |stress: Sourced<Stress>| {
                    document::ASTM_A194.memory("A194M, the stresses of inch nuts").gives(stress.value)
                };
                return product(thread, stress.map(known), blank);
            };
            if over {
                return product(thread, two_h_as_dh(style), blank);
            }
            let printed = astm_a194_loads::proof_load(d, n, grade, style).map(as_printed);
            let stress = astm_a194_loads::proof_stress(grade, style);
            printed.map_or_else(|| product(thread, stress, blank), Ok)
        }
        NutGrade::J995(grade) => {
            plain_only(thread, nut, tapping, sae_j995::SOURCE)?;
            let stress = thread
                .inch_key()
                .filter(|_| style == Style::Hex)
                .and_then(|(d, _)| sae_j995::proof_stress(d, grade, thread.has_coarse_loads()));
            product(thread, stress, || blank(thread, nut, style, sae_j995::SOURCE))
        }
        NutGrade::En14399(class) => {
            if matches!(tapping, Tapping::Zinc | Tapping::Own) {
                return Err(not_this_tapping(
                    thread,
                    tapping,
                    "6AZ and 6AX",
                    document::EN_14399_3.read("nuts"),
                ));
            }
            let printed = thread
                .metric_key()
                .filter(|key| key.1)
                .and_then(|_| en_14399_loads::proof_load(thread.diameter().mm(), class));
            printed.map(as_printed).ok_or_else(|| {
                let source = document::EN_14399_3.read("nuts, proof load");
                Refusal::not_covered(
                    &format!("a {thread} nut"),
                    "coarse M12 to M36 without M14, M18 and M33",
                    source,
                )
            })
        }
    }
}

/// The proof stress of a zinc-coated nut of A194 2H, which is that of A563 DH.
fn two_h_as_dh(style: Style) -> Option<Sourced<Stress>> {
    let dh = astm_a563_proof::proof_stress(16, astm_a563_proof::Grade::Dh, style, true, true)?;
    Some(document::ASTM_A325.read("A325-14, 3.2.3, as A563 DH").gives(dh.value))
}

/// The stress area of a thread with the digits its standard prints.
pub fn stress_area(thread: Thread) -> Sourced<Area> {
    if !thread.is_metric() {
        let printed = thread.inch_key().and_then(|(d, n)| asme_b1_1_areas::stress_area(d, n));
        return printed.unwrap_or_else(|| {
            // Small screws are listed with one digit more.
            let digits = if thread.number().is_some() { 1e5 } else { 1e4 };
            thread
                .stress_area_source()
                .gives(Area::from_in2((thread.stress_area().in2() * digits).round() / digits))
        });
    }
    let coarse = thread.metric_key().is_some_and(|key| key.1);
    iso_898_1_loads::stress_area(thread.diameter().mm()).filter(|_| coarse).unwrap_or_else(|| {
        document::ISO_898_1
            .computed("9.1.6, nominal stress area, to three digits")
            .gives(Area::from_mm2(three_digits(thread.stress_area().mm2())))
    })
}

/// What ISO 10684 says of the loads of a bolt cut under or a nut tapped over for hot-dip.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Loads {
    /// M8 and M10: reduced, Annex A.
    Reduced,
    /// From M12 up: those of ISO 898 unreduced, clause 7.
    Full,
}

/// Whether ISO 10684 reduces the loads of a thread; `None` of a thread that the document does not take in:
/// below M8, fine, inch.
pub fn hot_dip(thread: Thread) -> Option<Loads> {
    match thread.metric_key()? {
        (8 | 10, true) => Some(Loads::Reduced),
        (12..=64, true) => Some(Loads::Full),
        _ => None,
    }
}

fn not_dipped(thread: Thread) -> Refusal {
    let source = document::ISO_10684.read("clause 1");
    Refusal::not_covered(&thread.to_string(), "coarse threads from M8 to M64", source)
}

fn printed(thread: Thread, table: Option<Printed>) -> Option<iso_898_1_loads::Loads> {
    match table? {
        Printed::Iso898_1(class) => {
            thread.metric_key().filter(|key| key.1)?;
            iso_898_1_loads::loads(thread.diameter().mm(), class)
        }
        Printed::A574 => astm_a574_loads::loads(thread.diameter().inch(), thread.threads_per_inch()?),
    }
}

fn iso_898_2(thread: Thread, class: iso_898_2_loads::PropertyClass, style: Style) -> Result<Load, Refusal> {
    let blank =
        || blank(thread, NutGrade::Iso898_2(class), style, document::ISO_898_2.memory("Tables 4 and 5"));
    let (_, is_coarse) = thread.metric_key().ok_or_else(blank)?;
    let d = thread.diameter().mm();
    let printed = iso_898_2_loads::proof_load(d, class, style).filter(|_| is_coarse);
    let stress = iso_898_2_loads::proof_stress(d.min(LAST_NUT), class, style, is_coarse);
    match printed {
        Some(load) => Ok(as_printed(load)),
        None if d > LAST_NUT => product(thread, stress.map(|last| BEYOND.gives(last.value)), blank),
        None => product(thread, stress, blank),
    }
}

/// Where the tables of ISO 898-2 end, in mm.
const LAST_NUT: f64 = 39.0;
/// A larger nut is reckoned with the stress of the largest, which has to be agreed.
const BEYOND: Source =
    document::ISO_898_2.computed("beyond M39, where its tables end: the stress of M39, to be agreed");

fn by_area(strength: &BoltStrength, area: Result<Sourced<Area>, Refusal>) -> BoltLoads {
    let load = |stress: &Result<Sourced<Stress>, Refusal>| Ok(times(stress.clone()?, area.clone()?));
    BoltLoads { ultimate: load(&strength.tensile), proof: load(&strength.proof) }
}

fn product(
    thread: Thread,
    stress: Option<Sourced<Stress>>,
    blank: impl FnOnce() -> Refusal,
) -> Result<Load, Refusal> {
    stress.map(|stress| times(stress, stress_area(thread))).ok_or_else(blank)
}

fn times(stress: Sourced<Stress>, area: Sourced<Area>) -> Load {
    Load { force: stress.value * area.value, way: Way::Product { stress, area }, source: PRODUCT }
}

fn as_printed(load: Sourced<Force>) -> Load {
    Load { force: load.value, way: Way::Printed, source: load.source }
}

/// Stress area of a bolt cut under, to three digits: 33.2 mm² for M8 and 53.6 mm² for M10 in Annex A.
fn undercut_area(thread: Thread) -> Result<Sourced<Area>, Refusal> {
    let bolt = undersize::bolt(thread)?;
    Ok(document::ISO_10684
        .computed("Annex A, As of the undercut thread")
        .gives(Area::from_mm2(three_digits(bolt.stress_area.mm2()))))
}

fn three_digits(number: f64) -> f64 {
    let step = 10f64.powf(number.log10().floor() - 2.0);
    (number / step).round() * step
}

/// Whether a nut is tapped over by the zinc allowance of its own standard.
fn zinc(thread: Thread, tapping: Tapping, source: Source) -> Result<bool, Refusal> {
    match tapping {
        Tapping::Standard => Ok(false),
        Tapping::Zinc => Ok(true),
        _ => Err(not_this_tapping(thread, tapping, "its own zinc allowance", source)),
    }
}

fn plain_only(thread: Thread, nut: NutGrade, tapping: Tapping, source: Source) -> Result<(), Refusal> {
    if tapping == Tapping::Standard {
        return Ok(());
    }
    Err(Refusal::blank(&format!("the proof load of a {thread} nut of {nut} tapped over"), source))
}

fn not_this_tapping(thread: Thread, tapping: Tapping, covered: &str, source: Source) -> Refusal {
    let how = match tapping {
        Tapping::Own => "an allowance of your own",
        Tapping::Az => "6AZ",
        Tapping::Ax => "6AX",
        Tapping::Zinc => "the allowance of ASTM A563",
        Tapping::Standard => "its standard class",
    };
    Refusal::not_covered(&format!("the load of a {thread} nut tapped to {how}"), covered, source)
}

fn blank(thread: Thread, grade: NutGrade, style: Style, source: Source) -> Refusal {
    Refusal::blank(&format!("the proof load of a {thread} nut of {grade}, {}", style.name()), source)
}

impl Load {
    /// Where it is printed, or where the stress in the product comes from.
    pub fn stress_source(&self) -> Source {
        match self.way {
            Way::Printed => self.source,
            Way::Product { stress, .. } => stress.source,
        }
    }
}
