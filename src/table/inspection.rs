//! How a zinc coat on fasteners is inspected: places to measure, methods, adhesion, appearance.

use crate::quantity::Length;
use crate::source::{Source, document};

/// A row of words: what, and in words of our own.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// What it is of: `bolts`, `ISO 2178`.
    pub name: &'static str,
    /// What is said.
    pub says: &'static str,
    /// Where it is published.
    pub source: Source,
}

const fn row(name: &'static str, says: &'static str, source: Source) -> Row {
    Row { name, says, source }
}

/// Readings on one fastener are five at least; on parts too small, one on each of so many parts.
/// Known by [`ISO_10684_READINGS`].
pub const SINGLE_READINGS_ON: u32 = 5;
/// Where that is stated, by the national adoption of ISO 10684.
pub const ISO_10684_READINGS: Source =
    document::AS_NZS_1214.read("8.3: five readings on one part, or one on each of five parts");

/// What magnetic gauges are trusted to: a share of the reading or a thickness, the greater.
/// Known by [`GAUGE_SPREAD_SOURCE`].
pub const GAUGE_SPREAD: (f64, Length) = (0.1, Length::from_um(1.5));
/// Where that is stated.
pub const GAUGE_SPREAD_SOURCE: Source = document::ISO_2178.memory("10 % or 1.5 µm, the greater");

/// Where the coat is measured, by ISO 10684.
pub static PLACES_ISO_10684: [Row; 4] = [
    row(
        "Bolts and nuts",
        "at the places of the figure of the standard, never on the thread",
        document::AS_NZS_1214.read("measuring areas"),
    ),
    row(
        "Bolts",
        "top of the head, flats of the head, end of the bolt",
        document::ISO_10684.memory("Figure 1"),
    ),
    row("Nuts", "flats or bearing face", document::ISO_10684.memory("Figure 1")),
    row("Washers", "either face", document::ISO_10684.memory("Figure 1")),
];

/// Where the coat is measured, by ASTM F2329 and A153.
pub static PLACES_ASTM: [Row; 2] = [
    row(
        "Long bolts and rods",
        "plain shank, between the flats of the head",
        document::ASTM_F2329.memory("with ASTM A153, practice"),
    ),
    row(
        "Other articles",
        "away from edges, flame-cut, machined and threaded faces",
        document::ASTM_A123.read("specimen"),
    ),
];

/// Where the coat is measured, by ISO 1461 and for coats whose standard says no more.
pub static PLACES_ARTICLES: [Row; 1] = [row(
    "Reference areas",
    "away from edges, flame-cut, machined and threaded faces",
    document::ASTM_A123.read("specimen"),
)];

/// Where electroplate and mechanical zinc are measured.
pub static PLACES_SIGNIFICANT: [Row; 1] = [row(
    "Significant surfaces",
    "faces that are seen or are essential to use, or that can bleed rust onto such a face",
    document::ASTM_B633.read("7.1.1"),
)];

/// How the articles are drawn.
pub static DRAWING: Row =
    row("Drawing the sample", "at random, without regard to looks", document::ASTM_A123.read("sampling"));

/// Ways to measure the coat.
pub static METHODS: [Row; 9] = [
    row(
        "Magnetic, ISO 2178",
        "the probe on the coat; 10 % or 1.5 µm, the greater, to be reached",
        GAUGE_SPREAD_SOURCE,
    ),
    row(
        "Magnetic, ASTM B499",
        "all layers together; fit for acceptance; not for nickel that was plated",
        document::ASTM_B499.read("scope and significance"),
    ),
    row(
        "Magnetic, ASTM E376",
        "about ±15 % on coats above 1 mil, worse on curved and rough faces",
        document::ASTM_E376.memory("typical"),
    ),
    row("Section under the microscope, ASTM B487", "local thickness", document::ASTM_B487.read("scope")),
    row(
        "Section under the microscope, ISO 1463",
        "10 % or 1 µm, the greater",
        document::ISO_1463.memory("uncertainty"),
    ),
    row(
        "Strip and weigh, ASTM A90",
        "mean over the stripped area, whose thread is reckoned with both flanks",
        document::ASTM_A90.memory("mass before and after stripping"),
    ),
    row(
        "Strip and weigh, ISO 1460",
        "about 5 % of the mass; decides in a dispute under ISO 1461",
        document::ISO_1460.memory("about 5 % by mass"),
    ),
    row(
        "X-ray fluorescence",
        "not by contact; its uncertainty was not found here",
        document::ASTM_B659.memory("guide to the methods"),
    ),
    row("Choice of a method", "each is limited by coat and thickness", document::ASTM_B659.read("scope")),
];

/// How adhesion is tried.
pub static ADHESION_HOT_DIP: Row = row(
    "Adhesion",
    "push the point of a stout knife with force along and into the coat: good where only small pieces come off \
     and no steel is bared ahead of the point",
    document::ASTM_A153.memory("adhesion"),
);
/// How adhesion of mechanical zinc is tried.
pub static ADHESION_MECHANICAL: Row = row(
    "Adhesion",
    "press and pry with a knife or a sharp probe: the coat does not peel or lift; flakes of the top under the \
     point alone are no failure",
    document::ASTM_B695.memory("adhesion"),
);
/// How adhesion of electroplate is tried.
pub static ADHESION_ELECTROPLATED: Row = row(
    "Adhesion",
    "by a method of ASTM B571, such as bending, filing or heating to 150 °C and quenching: no blister, no flake",
    document::ASTM_B571.memory("Table 1"),
);

/// What the coat looks like.
pub static APPEARANCE_HOT_DIP: Row = row(
    "Appearance",
    "free from bare areas, blisters, flux, black spots and dross that harm the use; a dull look is no cause to reject",
    document::AS_NZS_1214.read("8.1"),
);
/// What mechanical zinc looks like.
pub static APPEARANCE_MECHANICAL: Row = row(
    "Appearance",
    "uniform and silvery, matt to medium bright",
    document::ASTM_B695.read("abstract of the 2021 edition"),
);
/// What electroplate looks like.
pub static APPEARANCE_ELECTROPLATED: Row = row(
    "Appearance",
    "no bare place on a significant surface",
    document::ASTM_B633.read("7.1.1: significant surfaces"),
);
/// What is said of washers.
pub static WASHERS: Row =
    row("Washers stuck together", "agree on the order how many may be", document::AS_NZS_1214.read("8.2"));
/// How the thread is gauged.
pub static THREAD: Row = row(
    "Thread gauge",
    "sampled by ASME B18.18 under ASTM F1470, by ISO 3269 under ISO standards",
    document::ASTM_F1470.memory("abstract: thread fit"),
);
