//! Limits of the trade that no standard prints.

use crate::quantity::Hardness;
use crate::source::{Source, common_practice, document};

/// Above this hardness nothing is hot-dipped.
pub const HOT_DIP_TO: (Hardness, Source) = (Hardness::hrc(39.0), common_practice("hardness for hot-dip"));
/// Up to this hardness parts are plated in the barrel as a matter of course.
pub const MECHANICAL_TO: (Hardness, Source) =
    (Hardness::hrc(45.0), common_practice("hardness of parts plated in a barrel"));
/// Above this hardness the barrel is chosen to keep hydrogen out.
pub const MECHANICAL_CHOSEN_ABOVE: (Hardness, Source) =
    (Hardness::hrc(40.0), document::ENCYCLOPEDIA.read("mechanical plating"));
/// Grades that bolt makers advise against galvanizing.
pub const MAKERS_ADVICE: Source = document::BOLT_MAKERS_TEXT.read("on ASTM A143 and F2329");
