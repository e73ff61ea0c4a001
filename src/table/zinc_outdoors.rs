//! What zinc lost outdoors over many years, what other metals do to it, and how much heat it bears.

use crate::quantity::{PlainNumber, Rate, Temperature};
use crate::source::{Source, Sourced, document};

/// A mean loss of zinc over many years.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LongTerm {
    /// Where.
    pub place: &'static str,
    /// The loss.
    pub rate: Rate,
    /// Who says so.
    pub source: Source,
}

const fn panel(place: &'static str, um: f64) -> LongTerm {
    let source = document::ASTM_STP_175.computed("loss of weight of zinc panels over 20 years, 1930 to 1954");
    LongTerm { place, rate: Rate::from_um_year(um), source }
}

const fn chart(place: &'static str, um: f64) -> LongTerm {
    let source =
        document::GALVANIZING_TEXT.computed("99 µm over the life of the chart, rust on 5 % of the surface");
    LongTerm { place, rate: Rate::from_um_year(um), source }
}

/// From the harshest to the mildest.
pub static LONG_TERM: [LongTerm; 7] = [
    panel("old heavy industry, Pennsylvania", 6.823),
    panel("seacoast, California", 1.534),
    chart("industry, by the association's chart", 1.37),
    chart("tropical seacoast, by the association's chart", 1.29),
    chart("temperate seacoast, by the association's chart", 1.15),
    panel("seacoast, Florida Keys", 0.645),
    panel("dry country, Arizona", 0.178),
];

/// What contact with another metal adds to the loss of zinc.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Contact {
    /// The other metal.
    pub metal: &'static str,
    /// In the country, in towns and industry, and at the sea.
    pub ratings: [&'static str; 3],
}

const fn contact(
    metal: &'static str,
    country: &'static str,
    town: &'static str,
    sea: &'static str,
) -> Contact {
    Contact { metal, ratings: [country, town, sea] }
}

/// By metal. Known by [`CONTACTS_SOURCE`].
pub static CONTACTS: [Contact; 7] = [
    contact("stainless steel", "a–b", "a–b", "a–b"),
    contact("aluminium", "a", "a–b", "a–b"),
    contact("lead", "a", "a–b", "a–b"),
    contact("aluminium bronze", "a–b", "b", "b–c"),
    contact("brass", "b", "b", "a–c"),
    contact("cast iron", "b", "b", "b–c"),
    contact("copper", "b", "b–c", "b–c"),
];
/// What the letters mean.
pub const CONTACT_KEY: &str = "a none or slight, b slight or moderate, c fairly severe";
/// Where the ratings are printed; single cells are of low confidence.
pub const CONTACTS_SOURCE: Source =
    document::PD_6484.memory("zinc in contact, low confidence in single cells");
/// What decides how bad a contact is.
pub const CONTACT_AREAS: Source =
    document::GALVANIZING_TEXT.read("contact in air: fine with most metals if the area of zinc is large");
/// Aluminium, which lies next to zinc.
pub const ALUMINIUM: Source =
    document::GALVANIZING_TEXT.read("contact with aluminium: normally satisfactory");
/// Copper and what runs off it.
pub const COPPER: Source =
    document::GALVANIZING_TEXT.read("copper and brass, and water that runs off copper");

/// Zinc bears this for good. Known by [`HOT`].
pub const HOT_FOR_GOOD: Temperature = Temperature::from_celsius(200.0);
/// And this now and then. Known by [`HOT`].
pub const HOT_NOW_AND_THEN: Temperature = Temperature::from_celsius(275.0);
/// Where that is said; another association allows 200 °C only for short times.
pub const HOT: Source = document::GALVANIZING_TEXT
    .read("200 °C for good and 275 °C at times; another association: 200 °C at times");
/// The coat of a mechanical deposit loses its chromate earlier. Known by [`WARM_CHROMATE_SOURCE`].
pub const WARM_CHROMATE: Temperature = Temperature::from_celsius(120.0);
/// Where that is said.
pub const WARM_CHROMATE_SOURCE: Source = document::ASTM_B695.read("X2.1, 2004 edition");

/// The least coats of bolts in preservative-treated wood.
pub const TREATED_WOOD: Sourced<&str> =
    document::IRC.memory("R317.3").gives("hot-dip of ASTM A153 class C, or ASTM B695 class 55");
/// What sheltered places near the coast count as.
pub const SHELTERED: Source =
    document::GALVANIZING_TEXT.read("sheltered places near the coast: one category harsher");
/// A surface with salt on it corrodes from this humidity on, without any rain: said where [`SHELTERED`] is.
pub const SALTED_FROM: PlainNumber = PlainNumber::from_percent(80.0);
