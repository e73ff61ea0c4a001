//! Tolerance classes: grade and position of metric threads, class of unified ones.

use std::fmt;

use crate::table::iso_965_1::Position;

/// A tolerance class.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum ToleranceClass {
    /// A metric bolt: `6g`, `5g6g`, `6az`.
    Bolt(BoltClass),
    /// A metric nut: `6H`, `6AZ`.
    Nut(NutClass),
    /// A unified bolt: 1, 2 or 3 of `1A` to `3A`.
    UnifiedBolt(u8),
    /// A unified nut: 1, 2 or 3 of `1B` to `3B`.
    UnifiedNut(u8),
}

/// The class of a metric bolt thread.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct BoltClass {
    /// Grade of the pitch diameter.
    pub pitch: u8,
    /// Grade of the major diameter.
    pub crest: u8,
    /// Position.
    pub position: BoltPosition,
}

/// The class of a metric nut thread.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct NutClass {
    /// Grade of the pitch diameter.
    pub pitch: u8,
    /// Grade of the minor diameter.
    pub crest: u8,
    /// Position.
    pub position: NutPosition,
}

/// Where a bolt's tolerance zone begins.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum BoltPosition {
    /// The widest allowance of ISO 965-1.
    E,
    /// Between e and g.
    F,
    /// The usual allowance.
    G,
    /// None.
    H,
    /// Cut under for a hot-dip coat and a standard nut.
    Az,
}

/// Where a nut's tolerance zone begins.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum NutPosition {
    /// With an allowance.
    G,
    /// None.
    H,
    /// Tapped over for hot-dip bolts that are spun.
    Az,
    /// Tapped over for heavier hot-dip coats.
    Ax,
}

/// The bolt classes in common use, metric first.
pub const COMMON_BOLT: [ToleranceClass; 9] = [
    ToleranceClass::bolt(6, BoltPosition::G),
    ToleranceClass::bolt(6, BoltPosition::H),
    ToleranceClass::bolt(6, BoltPosition::E),
    ToleranceClass::bolt(6, BoltPosition::F),
    ToleranceClass::bolt(8, BoltPosition::G),
    ToleranceClass::bolt(6, BoltPosition::Az),
    ToleranceClass::UnifiedBolt(2),
    ToleranceClass::UnifiedBolt(1),
    ToleranceClass::UnifiedBolt(3),
];

impl ToleranceClass {
    /// 5g6g, the class of socket screws of class 12.9 (ISO 4762).
    pub const SOCKET: Self = Self::Bolt(BoltClass { pitch: 5, crest: 6, position: BoltPosition::G });

    /// A metric bolt class of one grade.
    pub const fn bolt(grade: u8, position: BoltPosition) -> Self {
        Self::Bolt(BoltClass { pitch: grade, crest: grade, position })
    }

    /// A metric nut class of one grade.
    pub const fn nut(grade: u8, position: NutPosition) -> Self {
        Self::Nut(NutClass { pitch: grade, crest: grade, position })
    }

    /// Reads `6g`, `5g6g`, `6az`, `6H`, `6AZ`, `2A`, `3B`; lower case is a bolt, upper case a nut.
    pub fn read(text: &str) -> Option<Self> {
        let text = text.trim();
        let grade = text.bytes().next().filter(u8::is_ascii_digit)? - b'0';
        let rest = text.get(1..)?;
        match rest {
            "A" | "a" if (1..=3).contains(&grade) => return Some(Self::UnifiedBolt(grade)),
            "B" | "b" if (1..=3).contains(&grade) => return Some(Self::UnifiedNut(grade)),
            _ => {}
        }
        let end = rest.find(|c: char| c.is_ascii_digit()).unwrap_or(rest.len());
        let (position, second) = rest.split_at(end);
        let crest = if second.is_empty() {
            grade
        } else {
            let crest = second.bytes().next()? - b'0';
            // Both diameters of a thread have one position: 5g6g, never 5g6h.
            (second.get(1..) == Some(position)).then_some(crest)?
        };
        if !(3..=9).contains(&grade) || !(3..=9).contains(&crest) {
            return None;
        }
        let bolt = |position| Some(Self::Bolt(BoltClass { pitch: grade, crest, position }));
        let nut = |position| Some(Self::Nut(NutClass { pitch: grade, crest, position }));
        match position {
            "e" => bolt(BoltPosition::E),
            "f" => bolt(BoltPosition::F),
            "g" => bolt(BoltPosition::G),
            "h" => bolt(BoltPosition::H),
            "az" => bolt(BoltPosition::Az),
            "G" => nut(NutPosition::G),
            "H" => nut(NutPosition::H),
            "AZ" => nut(NutPosition::Az),
            "AX" => nut(NutPosition::Ax),
            _ => None,
        }
    }

    /// Whether it is a class of metric threads.
    pub fn is_metric(self) -> bool {
        matches!(self, Self::Bolt(_) | Self::Nut(_))
    }

    /// Whether it is the class of a bolt cut under for a hot-dip coat and a standard nut: `6az`.
    pub fn is_undercut(self) -> bool {
        matches!(self, Self::Bolt(class) if class.position == BoltPosition::Az)
    }

    /// Whether it is the class of a nut tapped over for a hot-dip bolt: `6AZ`, `6AX`.
    pub fn is_over_size(self) -> bool {
        matches!(self, Self::Nut(class) if matches!(class.position, NutPosition::Az | NutPosition::Ax))
    }

    /// Whether it is a class of bolts.
    pub fn is_bolt(self) -> bool {
        matches!(self, Self::Bolt(_) | Self::UnifiedBolt(_))
    }
}

impl BoltPosition {
    /// As written in a class.
    pub fn letter(self) -> &'static str {
        match self {
            Self::E => "e",
            Self::F => "f",
            Self::G => "g",
            Self::H => "h",
            Self::Az => "az",
        }
    }
}

impl BoltPosition {
    /// The position in the tables of ISO 965-1; az is in ISO 965-4.
    pub fn of_iso_965_1(self) -> Option<Position> {
        match self {
            Self::E => Some(Position::BoltE),
            Self::F => Some(Position::BoltF),
            Self::G => Some(Position::BoltG),
            Self::H => Some(Position::BoltH),
            Self::Az => None,
        }
    }
}

impl NutPosition {
    /// As written in a class.
    pub fn letter(self) -> &'static str {
        match self {
            Self::G => "G",
            Self::H => "H",
            Self::Az => "AZ",
            Self::Ax => "AX",
        }
    }
}

impl fmt::Display for ToleranceClass {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (pitch, crest, letter) = match *self {
            Self::Bolt(class) => (class.pitch, class.crest, class.position.letter()),
            Self::Nut(class) => (class.pitch, class.crest, class.position.letter()),
            Self::UnifiedBolt(class) => return write!(f, "{class}A"),
            Self::UnifiedNut(class) => return write!(f, "{class}B"),
        };
        write!(f, "{pitch}{letter}")?;
        if crest == pitch { Ok(()) } else { write!(f, "{crest}{letter}") }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn classes_read_back_as_they_show() {
        for text in ["6g", "5g6g", "6az", "6H", "6AZ", "6AX", "7H", "9g8g", "1A", "2A", "3B"] {
            assert_eq!(ToleranceClass::read(text).unwrap().to_string(), text);
        }
        for text in ["", "g", "2g", "6q", "5g6h", "4A", "6é", "10g"] {
            assert_eq!(ToleranceClass::read(text), None, "{text}");
        }
    }

    #[test]
    fn classes_of_inch_threads_are_one_to_three() {
        for (text, class) in [
            ("1A", Some(ToleranceClass::UnifiedBolt(1))),
            ("3A", Some(ToleranceClass::UnifiedBolt(3))),
            ("2b", Some(ToleranceClass::UnifiedNut(2))),
            ("3B", Some(ToleranceClass::UnifiedNut(3))),
            ("0A", None),
            ("4A", None),
            ("0B", None),
            ("4B", None),
        ] {
            assert_eq!(ToleranceClass::read(text), class, "{text}");
        }
    }
}
