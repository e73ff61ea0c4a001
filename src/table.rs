//! Published tables as typed constants, one file a standard, named after it.
//!
//! A table holds what its document prints, with the basis on which each row is known. It computes
//! nothing. A cell that was looked for and not found is `None`, and asking for it is a
//! [`Refusal`] that names the document to open.

pub mod aisc_360;
pub mod asme_b18_21_1;
pub mod asme_b18_22_1;
pub mod asme_b18_2_1;
pub mod asme_b18_2_2;
pub mod asme_b18_2_4_6m;
pub mod asme_b18_2_6;
pub mod asme_b18_3;
pub mod asme_b18_5;
pub mod asme_b18_6_4;
pub mod asme_b1_1;
pub mod asme_b1_1_areas;
pub mod asme_b94_9;
pub mod astm_a143;
pub mod astm_a153;
pub mod astm_a153_sampling;
pub mod astm_a193;
pub mod astm_a193_pairing;
pub mod astm_a194;
pub mod astm_a194_loads;
pub mod astm_a307;
pub mod astm_a354;
pub mod astm_a354_pairing;
pub mod astm_a449;
pub mod astm_a563;
pub mod astm_a563_grades;
pub mod astm_a563_pairing;
pub mod astm_a563_proof;
pub mod astm_a563m;
pub mod astm_a574;
pub mod astm_a574_loads;
pub mod astm_b602_sampling;
pub mod astm_b633;
pub mod astm_b695;
pub mod astm_b849;
pub mod astm_b850;
pub mod astm_e140;
pub mod astm_f1470_sampling;
pub mod astm_f1554;
pub mod astm_f1941;
pub mod astm_f2329;
pub mod astm_f2329_sampling;
pub mod astm_f3125;
pub mod astm_f3125_assembly;
pub mod astm_f3125_coatings;
pub mod astm_f3125_pairing;
pub mod astm_f436;
pub mod astm_f844;
pub mod bolt_load;
pub mod coat_class;
pub mod din_127;
pub mod din_3570;
pub mod din_444;
pub mod din_471;
pub mod din_472;
pub mod din_557;
pub mod din_6796;
pub mod drywall_screws;
pub mod en_14399;
pub mod en_14399_4;
pub mod en_14399_loads;
pub mod en_14399_pairing;
pub mod en_1665;
pub mod hotdip_process;
pub mod inspection;
pub mod iso_10642;
pub mod iso_10684;
pub mod iso_10684_annex_a;
pub mod iso_1234;
pub mod iso_1461;
pub mod iso_1461_sampling;
pub mod iso_14713_1;
pub mod iso_1478;
pub mod iso_18265;
pub mod iso_2081;
pub mod iso_261;
pub mod iso_2702;
pub mod iso_2857;
pub mod iso_3269_sampling;
pub mod iso_4014;
pub mod iso_4026;
pub mod iso_4032;
pub mod iso_4033;
pub mod iso_4042;
pub mod iso_4042_threads;
pub mod iso_4161;
pub mod iso_4762;
pub mod iso_7040;
pub mod iso_7045;
pub mod iso_7049;
pub mod iso_7089;
pub mod iso_7093_1;
pub mod iso_7380;
pub mod iso_8677;
pub mod iso_8752;
pub mod iso_898_1;
pub mod iso_898_1_loads;
pub mod iso_898_2;
pub mod iso_898_2_loads;
pub mod iso_898_2_pairing;
pub mod iso_898_5;
pub mod iso_9223;
pub mod iso_9224;
pub mod iso_965_1;
pub mod iso_965_4;
pub mod iso_965_5;
pub mod mechanical_process;
pub mod nut_grade;
pub mod nut_style;
pub mod other_bakes;
pub mod pairing;
pub mod practice;
pub mod rcsc;
pub mod sae_j417;
pub mod sae_j429;
pub mod sae_j429_pairing;
pub mod sae_j995;
pub mod sae_j995_grades;
pub mod salt_spray;
pub mod spring_steel;
pub mod steel_row;
pub mod structural;
pub mod tap_drills;
pub mod zinc_outdoors;

use std::borrow::Cow;
use std::fmt;

use crate::quantity::Shown;
use crate::source::Source;

mod kept;

pub use kept::Kept;

/// Why there is no number: better none than a wrong one.
///
/// It is boxed: it is rare, and whatever may be refused would have to keep room for it.
#[derive(Debug, Clone, PartialEq)]
pub struct Refusal(Box<Cause>);

/// The causes of a refusal.
#[derive(Debug, Clone, PartialEq)]
pub enum Cause {
    /// Outside the range of a table or formula.
    Outside {
        /// What was asked for: `hardness`.
        what: &'static str,
        /// The value asked for.
        asked: Shown,
        /// Where the range begins.
        min: Shown,
        /// Where it ends.
        max: Shown,
        /// The table or formula.
        source: Source,
    },
    /// The document exists but its value was not found: a blank stays a blank.
    Blank {
        /// What is missing: `hours of salt spray for class 55`.
        what: Cow<'static, str>,
        /// What it is missing of, where that is not said already: a grade.
        of: Option<&'static str>,
        /// The document to open.
        source: Source,
    },
    /// The document does not cover the case.
    NotCovered {
        /// The case: `M6`.
        what: String,
        /// What the document does cover: `M8 to M64 coarse`.
        covered: String,
        /// The document.
        source: Source,
    },
}

impl Refusal {
    /// Outside the range of a table or formula: what was asked for, its value, the ends of the range.
    pub fn outside(what: &'static str, asked: Shown, min: Shown, max: Shown, source: Source) -> Self {
        Self(Box::new(Cause::Outside { what, asked, min, max, source }))
    }

    /// The document exists, but what it says of this was not found.
    pub fn blank(what: &str, source: Source) -> Self {
        Self(Box::new(Cause::Blank { what: what.to_owned().into(), of: None, source }))
    }

    /// The same, of what has a name: no text is put together for what is seldom read.
    pub fn blank_of(what: &'static str, of: &'static str, source: Source) -> Self {
        Self(Box::new(Cause::Blank { what: what.into(), of: Some(of), source }))
    }

    /// The document does not cover the case, but something else.
    pub fn not_covered(what: &str, covered: &str, source: Source) -> Self {
        Self(Box::new(Cause::NotCovered { what: what.to_owned(), covered: covered.to_owned(), source }))
    }

    /// The cause.
    pub fn cause(&self) -> &Cause {
        &self.0
    }

    /// The document that has no answer.
    pub fn source(&self) -> Source {
        match self.cause() {
            Cause::Outside { source, .. }
            | Cause::Blank { source, .. }
            | Cause::NotCovered { source, .. } => *source,
        }
    }
}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.cause() {
            Cause::Outside { what, asked, min, max, source } => write!(
                f,
                "{what} {asked} is outside {min} to {max}, the range of {source}; \
                 no value is given beyond it"
            ),
            Cause::Blank { what, of: Some(of), source } => {
                write!(f, "{what} of {of} is not known here; open {source}")
            }
            Cause::Blank { what, of: None, source } => {
                write!(f, "{what} is not known here; open {source}")
            }
            Cause::NotCovered { what, covered, source } => {
                write!(f, "{source} does not cover {what}; it covers {covered}")
            }
        }
    }
}
