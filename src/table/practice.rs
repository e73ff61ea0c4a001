//! Limits of the trade that no standard prints.

use crate::quantity::{Hardness, Length, Stress};
use crate::source::{Source, Sourced, common_practice, document};

/// Above this hardness nothing is hot-dipped.
pub const HOT_DIP_TO: Sourced<Hardness> = common_practice("hardness for hot-dip").gives(Hardness::hrc(39.0));
/// Up to this hardness parts are plated in the barrel as a matter of course.
pub const MECHANICAL_TO: Sourced<Hardness> =
    common_practice("hardness of parts plated in a barrel").gives(Hardness::hrc(45.0));
/// Above this hardness the barrel is chosen to keep hydrogen out.
pub const MECHANICAL_CHOSEN_ABOVE: Sourced<Hardness> =
    document::ENCYCLOPEDIA.read("mechanical plating").gives(Hardness::hrc(40.0));
/// Grades that bolt makers advise against galvanizing.
pub const MAKERS_ADVICE: Source = document::BOLT_MAKERS_TEXT.read("on ASTM A143 and F2329");
/// Threaded rod that an air ring wipes is hot-dipped from about this diameter.
pub const WIPED_ROD_FROM: Sourced<Length> =
    common_practice("threaded rod wiped by an air ring, from about M6").gives(Length::from_mm(6.0));
/// The smallest inch thread that takes hot-dip zinc well.
pub const SMALL_INCH: Sourced<Length> =
    common_practice("3/8 in is the smallest thread that takes the coat well").gives(Length::from_inch(0.375));
/// The longest bar or rod that goes into a barrel at all.
pub const LONGEST_BAR: Sourced<Length> =
    common_practice("no bar or rod longer than a metre in the barrel").gives(Length::from_m(1.0));
/// Grades that are hot-dipped every day: the retest after the dip is their maker's routine.
pub const DIPPED_DAILY: Source = common_practice("grades that are hot-dipped every day");
/// Above this hardness electroplating is more than usual, and a test for embrittlement is agreed.
pub const ELECTROPLATED_TO: Sourced<Hardness> =
    common_practice("hardness of parts electroplated as a matter of course").gives(Hardness::hrc(39.0));
/// Hydrogen goes by the greatest hardness that a part may have.
pub const GREATEST_HARDNESS: Source = common_practice("hydrogen goes by the greatest hardness");
/// Above this strength parts that were machined, ground or formed cold after hardening are relieved of stress
/// before plating, whatever document the plate is ordered by.
pub const RELIEF_ABOVE: Sourced<Stress> =
    common_practice("stress relief before plating").gives(Stress::from_mpa(1000.0));
/// Bolts of other documents than ISO 898 are of the same steels, and asked about beside the same temperatures.
pub const STEEL_IN_SERVICE: Source = common_practice("steels of bolts in heat and cold, as ISO 898-1 has it");
/// Two metals that touch need water between them to take zinc.
pub const DRY_CONTACT: Source = common_practice("metals in contact in dry rooms");
/// Years are asked for outdoors before a thin coat is taken.
pub const THIN_OUTDOORS: Source = common_practice("thin coats outdoors");
/// What a spun batch does to flat washers.
pub const BEADS_PART: Source = common_practice("beads between flat parts");
/// Flat parts in a plating barrel.
pub const FLAT_PARTS_NEST: Source = common_practice("flat parts nest");
/// The thread of a part that is known by its own name.
pub const OTHER_FIT: Source = common_practice("a thread of unknown limits is gauged with its coat");
/// Screws for wood, sheet and concrete.
pub const OWN_THREAD: Source = common_practice("a screw that forms its own thread takes no nut");
/// A nylon patch over mechanical zinc.
pub const NYLON_PATCH: Source =
    common_practice("a sprayed nylon patch over mechanical zinc wants a trivalent chromate first");
/// Nylon melts at about 220 to 260 °C, zinc at 420 °C.
pub const PATCH_AFTER_DIP: Source = common_practice("a nylon patch is put on after hot-dip galvanizing");
/// Room, nut and the class of a hot-dip coat follow from the size.
pub const SIZE_FIRST: Source = common_practice("the room for a coat goes by the size");
/// A length in another unit than it was written in looks so.
pub const LONGER_THAN_THICK: Source =
    common_practice("bolts are at least as long under the head as they are thick");
/// Nylon melts at about 220 to 260 °C, zinc at 420 °C.
pub const NYLON_INSERT: Source = common_practice("lock nuts are galvanized before their nylon goes in");
/// A bolt ordered for years goes into a place somebody has named.
pub const NAME_THE_PLACE: Source = common_practice("years need a place");
