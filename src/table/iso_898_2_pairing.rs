//! ISO 898-2: the nut class for a bolt class, and the styles and sizes in which a class exists.
//!
//! The 2012 tables were not seen and are from memory, but for two pairs read in extracts.

use super::iso_898_1_loads::PropertyClass as BoltClass;
use super::iso_898_2_loads::PropertyClass::{self, *};
use super::nut_style::Style::{self, *};
use crate::source::{Source, document};

/// The least nut class for a bolt class, and where it is said. A higher class may stand for it.
pub fn least_class(bolt: BoltClass) -> (PropertyClass, Source) {
    let memory = document::ISO_898_2.memory("Table 1, nuts for bolts");
    match bolt {
        BoltClass::Class4_6 | BoltClass::Class4_8 | BoltClass::Class5_6 | BoltClass::Class5_8 => {
            (Class5, memory)
        }
        BoltClass::Class6_8 => (Class6, memory),
        BoltClass::Class8_8 => {
            (Class8, document::ISO_898_2_1992.read("extract of EN 20898-2, nuts for bolts"))
        }
        BoltClass::Class9_8 => (Class9, memory),
        BoltClass::Class10_9 => (Class10, document::ISO_898_2.read("nuts for bolts, lexicon entry")),
        BoltClass::Class12_9 => (Class12, memory),
    }
}

/// The classes that may carry a bolt to full load, weakest first; thin nuts (04, 05) are for locking
/// only, and strip before the bolt breaks. Known by [`SOURCE`].
pub static FULL_LOAD: [PropertyClass; 6] = [Class5, Class6, Class8, Class9, Class10, Class12];

/// Whether a class exists in a style for a nominal diameter in mm and a coarse or fine thread.
///
/// `None` where it was not settled: class 10 of style 2 in coarse thread, class 5 in fine thread above M16.
/// Known by [`SOURCE`].
pub fn exists(class: PropertyClass, style: Style, diameter_mm: f64, is_coarse: bool) -> Option<bool> {
    if is_coarse && (class, style) == (Class10, High) {
        return None;
    }
    if !is_coarse && (class, style) == (Class5, Regular) && diameter_mm > 16.0 && diameter_mm <= 39.0 {
        return None;
    }
    let ranges = STYLES.iter().find(|row| (row.0, row.1) == (class, style));
    let range = ranges.and_then(|row| if is_coarse { row.2 } else { row.3 });
    Some(range.is_some_and(|(from, to)| (from..=to).contains(&diameter_mm)))
}

/// The style to order a class in: style 1 where it exists, else style 2; none where neither does.
pub fn style_of(class: PropertyClass, diameter_mm: f64, is_coarse: bool) -> Option<Style> {
    let found = |style: &Style| exists(class, *style, diameter_mm, is_coarse) == Some(true);
    [Regular, High, Thin].into_iter().find(found)
}

/// Where styles and sizes stand.
pub static SOURCE: Source = document::ISO_898_2.memory("Tables 1 and 2, styles and sizes");

type Range = Option<(f64, f64)>;

/// Class, style; nominal diameters in mm, coarse and fine. Known by [`SOURCE`].
static STYLES: &[(PropertyClass, Style, Range, Range)] = &[
    (Class04, Thin, Some((5.0, 39.0)), Some((8.0, 39.0))),
    (Class05, Thin, Some((5.0, 39.0)), Some((8.0, 39.0))),
    (Class5, Regular, Some((5.0, 39.0)), Some((8.0, 16.0))),
    (Class6, Regular, Some((5.0, 39.0)), Some((8.0, 39.0))),
    (Class8, Regular, Some((5.0, 39.0)), Some((8.0, 39.0))),
    (Class8, High, Some((16.1, 39.0)), Some((8.0, 16.0))),
    (Class9, High, Some((5.0, 39.0)), None),
    (Class10, Regular, Some((5.0, 39.0)), Some((8.0, 16.0))),
    (Class10, High, None, Some((8.0, 39.0))),
    (Class12, Regular, Some((5.0, 16.0)), None),
    (Class12, High, Some((5.0, 39.0)), Some((8.0, 16.0))),
];
