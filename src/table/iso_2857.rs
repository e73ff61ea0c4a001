//! ISO 2857: classes of metric taps, as shares of the tolerance TD2 of grade 5 above the basic pitch
//! diameter; ten catalogue rows of class 2 agree.

use crate::source::{Source, document};

/// A class of taps.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Class {
    /// Its number.
    pub number: u8,
    /// Where its pitch diameter begins, in t above the basic size.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
    /// The work that it makes under fair conditions.
    pub work: &'static str,
}

/// Where the shares were read.
pub const SOURCE: Source = document::ISO_2857.read("classes 1, 2 and 3");

/// The grade of nut tolerance that the shares are reckoned from.
pub const GRADE: u8 = 5;

/// Class 1.
pub const CLASS_1: Class = Class { number: 1, from: 0.1, to: 0.3, work: "4H, 5H" };
/// Class 2, for a nut of 6H, and with its allowance added for one tapped over from 6H.
pub const CLASS_2: Class = Class { number: 2, from: 0.3, to: 0.5, work: "6H, 4G, 5G" };
/// Class 3.
pub const CLASS_3: Class = Class { number: 3, from: 0.5, to: 0.7, work: "6G, 7H, 8H" };
/// All of them.
pub static CLASSES: [Class; 3] = [CLASS_1, CLASS_2, CLASS_3];
