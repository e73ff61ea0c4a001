//! Which nut the standards put on a bolt, by the bolt's grade, its size, and whether it is zinc-coated.
//!
//! Data only: whether a nut on an order will do is for a rule to say.

use super::{Grade, load};
use crate::quantity::Length;
use crate::source::{Source, document};
use crate::table::en_14399_loads::{Class, System};
use crate::table::iso_898_1_loads::PropertyClass;
use crate::table::nut_grade::NutGrade;
use crate::table::nut_style::Style;
use crate::table::pairing::{Bolt, Finish, Nut, Pairing, Washer};
use crate::table::{
    Refusal, astm_a193_pairing, astm_a194_loads, astm_a354_pairing, astm_a563_pairing, astm_a563_proof,
    astm_f3125_pairing, en_14399_pairing, iso_898_2_loads, iso_898_2_pairing, sae_j429_pairing,
};

/// A bolt that wants a nut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BoltToPair {
    /// Its grade.
    pub grade: Grade,
    /// Nominal diameter.
    pub diameter: Length,
    /// Whether its thread is coarse; matters for metric nuts only.
    pub is_coarse: bool,
    /// Whether the nut is tapped over for its zinc.
    pub is_zinc_coated: bool,
    /// The system of EN 14399 that it is of, where it is a metric structural bolt.
    pub system: Option<System>,
}

/// The nuts that the standards put on a bolt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nuts {
    /// The nut to order: the one recommended, or the least that will do.
    pub nut: Nut,
    /// The washer, where the document names one.
    pub washer: Option<Washer>,
    /// The document.
    pub source: Source,
    listed: Listed,
}

/// Where every nut that would do is listed.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Listed {
    /// In a row of a table.
    Row(&'static Pairing),
    /// In ISO 898-2: this class and every higher one, as they exist for a diameter in mm, coarse or fine.
    From(iso_898_2_loads::PropertyClass, f64, bool),
}

/// The nuts for a bolt.
///
/// # Errors
/// A blank naming the bolt's own document where no rule is known here.
pub fn nuts(of: BoltToPair) -> Result<Nuts, Refusal> {
    let blank = || {
        let how = if of.is_zinc_coated { "a zinc-coated" } else { "a" };
        Refusal::blank(
            &format!("the nut for {how} bolt of {}", of.grade.name()),
            of.grade.document().memory("nuts"),
        )
    };
    if of.is_zinc_coated && Grade::AS_A490.contains(&of.grade) {
        let what = format!("zinc on a bolt of {}", of.grade.name());
        return Err(Refusal::not_covered(&what, "zinc flake on it", F3125_COATS));
    }
    let bolt = match (bolt(of.grade).ok_or_else(blank)?, of.system) {
        (Bolt::Iso898_1(PropertyClass::Class8_8), Some(System::Hr)) => Bolt::Hr8_8,
        (Bolt::Iso898_1(PropertyClass::Class10_9), Some(System::Hr)) => Bolt::Hr10_9,
        (Bolt::Iso898_1(PropertyClass::Class10_9), Some(System::Hv)) => Bolt::Hv10_9,
        (Bolt::Iso898_1(_), Some(_)) => {
            let what = format!("a structural bolt of {}", of.grade.name());
            return Err(Refusal::not_covered(&what, "HR 8.8, HR 10.9 and HV 10.9", en_14399_pairing::SOURCE));
        }
        (bolt, _) => bolt,
    };
    if let Bolt::Iso898_1(class) = bolt {
        return metric(of, iso_898_2_pairing::least_class(class)).ok_or_else(|| {
            let what = format!("the nut for a bolt of {} of this size", of.grade.name());
            Refusal::blank(&what, iso_898_2_pairing::SOURCE)
        });
    }
    let finish = if of.is_zinc_coated { Finish::ZincCoated } else { Finish::Plain };
    TABLES
        .iter()
        .flat_map(|rows| rows.iter())
        .find(|row| {
            row.bolt == bolt
                && (row.finish == finish || row.finish == Finish::Any)
                && row.sizes.hold(of.diameter)
        })
        .map(from_row)
        .ok_or_else(blank)
}

/// Where ASTM F3125 lists what goes on A490.
const F3125_COATS: Source = document::ASTM_F3125.read("coatings of grade A490, after a listing");

/// What the bolts' own standards say comes before the chart of ASTM A563.
static TABLES: [&[Pairing]; 6] = [
    astm_f3125_pairing::ROWS,
    astm_a354_pairing::ROWS,
    astm_a193_pairing::ROWS,
    sae_j429_pairing::ROWS,
    en_14399_pairing::ROWS,
    astm_a563_pairing::ROWS,
];

fn from_row(row: &'static Pairing) -> Nuts {
    Nuts { nut: row.nut, washer: row.washer, source: row.source, listed: Listed::Row(row) }
}

/// ASTM A563: A194 2H may stand for DH.
const DH: Nut = Nut { grade: NutGrade::A563(astm_a563_proof::Grade::Dh), style: Style::HeavyHex };
const TWO_H: Nut = Nut { grade: NutGrade::A194(astm_a194_loads::Grade::Grade2H), style: Style::HeavyHex };

/// What a row lists, and 2H where it lists DH.
fn listed_by(row: &'static Pairing) -> impl Iterator<Item = Nut> {
    let lists = |nut| row.nuts().any(|of| of == nut);
    row.nuts().chain((lists(DH) && !lists(TWO_H)).then_some(TWO_H))
}

fn metric(of: BoltToPair, (least, source): (iso_898_2_loads::PropertyClass, Source)) -> Option<Nuts> {
    let (diameter_mm, is_coarse) = (of.diameter.mm(), of.is_coarse);
    let nut = from_class(least, diameter_mm, is_coarse).next()?;
    Some(Nuts { nut, washer: None, source, listed: Listed::From(least, diameter_mm, is_coarse) })
}

/// The least class and every higher one, in the styles in which they exist for this thread.
fn from_class(
    least: iso_898_2_loads::PropertyClass,
    diameter_mm: f64,
    is_coarse: bool,
) -> impl Iterator<Item = Nut> {
    const STYLES: [Style; 2] = [Style::Regular, Style::High];
    let classes = &iso_898_2_pairing::FULL_LOAD;
    let from = classes.iter().position(|class| *class == least).unwrap_or(classes.len());
    // One number counts both: nested iterators are slow, and every order asks here several times.
    (STYLES.len() * from..STYLES.len() * classes.len()).filter_map(move |at| {
        let (class, style) = (*classes.get(at / STYLES.len())?, *STYLES.get(at % STYLES.len())?);
        let exists = iso_898_2_pairing::exists(class, style, diameter_mm, is_coarse) == Some(true);
        exists.then_some(Nut { grade: NutGrade::Iso898_2(class), style })
    })
}

/// The bolt as the tables of nuts name it; `None` where none of them does.
pub fn bolt(grade: Grade) -> Option<Bolt> {
    Some(match grade {
        Grade::J429Grade1 => Bolt::J429Grade1,
        Grade::J429Grade2 => Bolt::J429Grade2,
        Grade::J429Grade5 => Bolt::J429Grade5,
        Grade::J429Grade8 => Bolt::J429Grade8,
        Grade::A307 => Bolt::A307A,
        Grade::A307B => Bolt::A307B,
        Grade::A449 => Bolt::A449,
        Grade::A354Bc => Bolt::A354Bc,
        Grade::A354Bd => Bolt::A354Bd,
        Grade::A325 => Bolt::A325,
        Grade::A490 => Bolt::A490,
        Grade::A325M => Bolt::A325M,
        Grade::A490M => Bolt::A490M,
        // Twist-off bolts take the nut of the hexagon grade of their strength.
        Grade::F1852 => Bolt::A325,
        Grade::F2280 => Bolt::A490,
        Grade::F1554Grade36 => Bolt::F1554Grade36,
        Grade::F1554Grade55 => Bolt::F1554Grade55,
        Grade::F1554Grade105 => Bolt::F1554Grade105,
        Grade::A193B7M => Bolt::A193B7M,
        Grade::A193B7 => Bolt::A193B7,
        _ => Bolt::Iso898_1(load::property_class(grade)?),
    })
}

impl Nuts {
    /// The first of the nuts that would do, the recommended one before the others, that is one of those sought.
    pub fn find(&self, sought: impl Fn(&Nut) -> bool) -> Option<Nut> {
        match self.listed {
            Listed::Row(row) => listed_by(row).find(sought),
            Listed::From(least, diameter_mm, is_coarse) => {
                from_class(least, diameter_mm, is_coarse).find(sought)
            }
        }
    }

    /// Whether other nuts are listed for the bolt without its zinc: ISO 898-2 has the same for both.
    pub fn hang_on_zinc(&self) -> bool {
        matches!(self.listed, Listed::Row(_))
    }

    /// What a nut of EN 14399 is ordered by: its system, which is the bolt's, and the class; `None` for
    /// any other nut.
    pub fn of_system(&self) -> Option<&'static str> {
        let NutGrade::En14399(class) = self.nut.grade else { return None };
        Some(class.name())
    }

    /// The nut that is ordered where a grade is named: that of the bolt's system, where only its class is.
    pub fn named(&self, grade: Grade) -> Grade {
        let of_system = self.find(|nut| is_class_of(nut.grade, grade));
        of_system.and_then(|nut| load::grade_of_nut(nut.grade)).unwrap_or(grade)
    }

    /// Whether a nut of this grade would do, in the style given; without a style, in any.
    ///
    /// `None` where the tables do not know the grade at all.
    pub fn takes(&self, grade: Grade, style: Option<Style>) -> Option<bool> {
        let named = load::known_nut(grade)?;
        let is = |nut: &Nut| nut.grade == named || is_class_of(nut.grade, grade);
        let fits = |nut: &Nut| is(nut) && style.is_none_or(|style| style == nut.style);
        Some(self.find(fits).is_some())
    }
}

/// Whether a nut of EN 14399 is of a class of ISO 898-2, by which it is ordered as well.
fn is_class_of(nut: NutGrade, named: Grade) -> bool {
    let class = match nut {
        NutGrade::En14399(Class::Hr8) => Grade::Nut8,
        NutGrade::En14399(Class::Hr10 | Class::Hv10) => Grade::Nut10,
        _ => return false,
    };
    class == named
}
