//! ASTM A153/A153M-16, hot-dip zinc on iron and steel hardware: Table 1.
//!
//! Older listings put the limit between classes B-1 and B-2 at 3/16 in (4.76 mm) instead of 5/8 in.

use super::coat_class::{CoatClass, ThicknessLimit};
use crate::process::Process;
use crate::source::{Basis, document};

/// The classes, as the document lists them.
pub static CLASSES: &[CoatClass] = &[
    CoatClass {
        document: &document::ASTM_A153,
        place: "Table 1",
        name: "class A",
        applies: "castings of malleable iron and steel",
        process: Process::HotDip,
        single: Some(ThicknessLimit::um(79.0, Basis::Read).g_m2(550.0).mil(3.1).oz_ft2(1.8)),
        average: Some(ThicknessLimit::um(86.0, Basis::Read).g_m2(610.0).mil(3.4).oz_ft2(2.0)),
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_A153,
        place: "Table 1",
        name: "class B-1",
        applies: "rolled, pressed or forged, 5/8 in (15.88 mm) thick and over, longer than 15 in (381 mm)",
        process: Process::HotDip,
        single: Some(ThicknessLimit::um(79.0, Basis::Read).g_m2(550.0).mil(3.1).oz_ft2(1.8)),
        average: Some(ThicknessLimit::um(86.0, Basis::Read).g_m2(610.0).mil(3.4).oz_ft2(2.0)),
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_A153,
        place: "Table 1",
        name: "class B-2",
        applies: "rolled, pressed or forged, under 5/8 in (15.88 mm) thick, longer than 15 in (381 mm)",
        process: Process::HotDip,
        single: Some(ThicknessLimit::um(53.0, Basis::Read).g_m2(381.0).mil(2.1).oz_ft2(1.25)),
        average: Some(ThicknessLimit::um(66.0, Basis::Read).g_m2(458.0).mil(2.6).oz_ft2(1.5)),
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_A153,
        place: "Table 1",
        name: "class B-3",
        applies: "rolled, pressed or forged, any thickness, 15 in (381 mm) long or shorter",
        process: Process::HotDip,
        single: Some(ThicknessLimit::um(48.0, Basis::Read).g_m2(336.0).mil(1.9).oz_ft2(1.1)),
        average: Some(ThicknessLimit::um(56.0, Basis::Read).g_m2(397.0).mil(2.2).oz_ft2(1.3)),
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_A153,
        place: "Table 1",
        name: "class C",
        applies: "fasteners over 3/8 in (9.52 mm) and similar; washers 3/16 in (4.76 mm) thick and over",
        process: Process::HotDip,
        single: Some(ThicknessLimit::um(43.0, Basis::Read).g_m2(305.0).mil(1.7).oz_ft2(1.0)),
        average: Some(ThicknessLimit::um(53.0, Basis::Read).g_m2(381.0).mil(2.1).oz_ft2(1.25)),
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_A153,
        place: "Table 1",
        name: "class D",
        applies: "fasteners of 3/8 in (9.52 mm) and under, rivets, nails; washers under 3/16 in (4.76 mm) thick",
        process: Process::HotDip,
        single: Some(ThicknessLimit::um(36.0, Basis::Read).g_m2(259.0).mil(1.4).oz_ft2(0.85)),
        average: Some(ThicknessLimit::um(43.0, Basis::Read).g_m2(305.0).mil(1.7).oz_ft2(1.0)),
        lot_average: None,
        average_max: None,
    },
];
