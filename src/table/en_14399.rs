//! EN 14399: coatings and requirements of preloaded structural assemblies, as far as the public copies
//! show them.

use super::structural::Allowed::{self, *};
use super::structural::Bolt::{self, *};
use super::structural::Topic::{self, *};
use super::structural::{Coating, Requirement};
use crate::process::Process::{self, *};
use crate::quantity::Hardness;
use crate::source::{Source, Sourced, document};

const PART_3_4: Source = document::EN_14399_3.memory("and -4, coatings");

/// The coatings: hot-dip by ISO 10684; what else is agreed is not listed.
pub static COATINGS: &[Coating] = &[
    coating(HotDip, Yes, "ISO 10684"),
    coating(Mechanical, NotListed, ""),
    coating(Electroplated, NotListed, ""),
];

/// The least hardness of the washers of these assemblies.
pub const WASHER_FROM: Sourced<Hardness> =
    document::EN_14399_6.memory("300 HV to 370 HV").gives(Hardness::hv(300.0));

/// The requirements.
pub static ROWS: &[Requirement] = &[
    row(
        MatchedLot,
        &[],
        "Order bolt, nut and washer from one maker, who also controls coating and lubricant.",
        document::EN_14399_4.read("introduction"),
    ),
    row(
        Tapping,
        &[HotDip],
        "Dip the nuts before they are threaded; do not thread them again.",
        document::EN_14399_2.read("5.1 to 5.3"),
    ),
    row(
        OneProcess,
        BOTH,
        "Choose coats of bolt, nut and washer that go together and resist corrosion alike.",
        document::EN_14399_2.read("5.1 to 5.3"),
    ),
    row(
        Lubricant,
        BOTH,
        "Leave the lubricant to the maker of the assembly; add none.",
        document::EN_14399_3.memory("lubrication"),
    ),
    row(
        Washer,
        &[],
        "Put EN 14399-6 washers on either side, or EN 14399-5 under the nut only.",
        document::EN_14399_1.read("Table 1, systems of bolt, nut and washer"),
    ),
];

const HR_AND_HV: &[Bolt] = &[Hr, Hv];
const BOTH: &[Process] = &[HotDip, Mechanical];

const fn coating(process: Process, allowed: Allowed, order: &'static str) -> Coating {
    Coating { bolts: HR_AND_HV, process, allowed, order, class: None, source: PART_3_4 }
}

const fn row(topic: Topic, processes: &'static [Process], text: &'static str, source: Source) -> Requirement {
    Requirement { topic, bolts: HR_AND_HV, processes, text, source }
}
