//! The shape of a row that says which nut a standard puts on a bolt.

use super::iso_898_1_loads::PropertyClass;
use super::nut_grade::NutGrade;
use super::nut_style::Style;
use super::steel_row::Sizes;
use crate::source::Source;

/// A bolt as the tables of nuts name it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Bolt {
    /// A property class of ISO 898-1.
    Iso898_1(PropertyClass),
    /// SAE J429 grade 1.
    J429Grade1,
    /// SAE J429 grade 2.
    J429Grade2,
    /// SAE J429 grade 5.
    J429Grade5,
    /// SAE J429 grade 8.
    J429Grade8,
    /// ASTM A307 grades A and C.
    A307A,
    /// ASTM A307 grade B.
    A307B,
    /// ASTM A449.
    A449,
    /// ASTM A354 grade BC.
    A354Bc,
    /// ASTM A354 grade BD.
    A354Bd,
    /// ASTM F3125 grade A325, type 1.
    A325,
    /// ASTM F3125 grade A490, type 1.
    A490,
    /// ASTM F3125 grade A325M.
    A325M,
    /// ASTM F3125 grade A490M.
    A490M,
    /// ASTM F1554 grade 36.
    F1554Grade36,
    /// ASTM F1554 grade 55.
    F1554Grade55,
    /// ASTM F1554 grade 105.
    F1554Grade105,
    /// ASTM A193 grade B7.
    A193B7,
    /// ASTM A193 grade B7M.
    A193B7M,
    /// ASTM A193 grade B16.
    A193B16,
    /// HR 8.8 of EN 14399-3.
    Hr8_8,
    /// HR 10.9 of EN 14399-3.
    Hr10_9,
    /// HV 10.9 of EN 14399-4.
    Hv10_9,
}

/// Which finish of the bolt a row is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Finish {
    /// Every one.
    Any,
    /// Without zinc, or with a coat so thin that the nut is not tapped over.
    Plain,
    /// Zinc-coated, the nut tapped over.
    ZincCoated,
}

/// A nut by grade and style.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Nut {
    /// Its grade.
    pub grade: NutGrade,
    /// Its style.
    pub style: Style,
}

/// A washer that goes with a pair.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Washer {
    /// ASTM F436, and F436M for metric bolts.
    F436,
    /// EN 14399-5 under the nut only, EN 14399-6 on either side.
    En14399,
}

/// A row: the nut that a standard puts on a bolt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pairing {
    /// The bolt.
    pub bolt: Bolt,
    /// The finish it is for.
    pub finish: Finish,
    /// The nominal diameters it is for.
    pub sizes: Sizes,
    /// The nut that is recommended, or the least that will do.
    pub nut: Nut,
    /// Others that the same document lets stand for it, or another that the table names.
    pub also: &'static [Nut],
    /// The washer, where the document names one.
    pub washer: Option<Washer>,
    /// The document.
    pub source: Source,
}

impl Pairing {
    /// Every nut that would do, the recommended one first.
    pub fn nuts(&self) -> impl Iterator<Item = Nut> {
        std::iter::once(self.nut).chain(self.also.iter().copied())
    }
}
