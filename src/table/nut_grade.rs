//! The grades of nuts whose proof loads are held here, across the standards.

use std::fmt;

use super::{astm_a194_loads, astm_a563_proof, astm_a563m, en_14399_loads, iso_898_2_loads, sae_j995};

/// A grade of nuts, in the words of its standard.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NutGrade {
    /// A property class of ISO 898-2.
    Iso898_2(iso_898_2_loads::PropertyClass),
    /// A grade of ASTM A563.
    A563(astm_a563_proof::Grade),
    /// A property class of ASTM A563M.
    A563M(astm_a563m::PropertyClass),
    /// A grade of ASTM A194.
    A194(astm_a194_loads::Grade),
    /// A grade of SAE J995.
    J995(sae_j995::Grade),
    /// A class of EN 14399-3 or -4.
    En14399(en_14399_loads::Class),
}

impl fmt::Display for NutGrade {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Iso898_2(class) => write!(f, "class {}", class.name()),
            Self::A563(grade) => write!(f, "ASTM A563 grade {}", grade.name()),
            Self::A563M(class) => write!(f, "ASTM A563M class {}", class.name()),
            Self::A194(grade) => write!(f, "ASTM A194 grade {}", grade.name()),
            Self::J995(grade) => write!(f, "SAE J995 grade {}", grade.name()),
            Self::En14399(class) => write!(f, "EN 14399 {}", class.name()),
        }
    }
}
