//! ISO 965-1: fundamental deviations and tolerances of ISO metric threads, as its tables print them.
//!
//! The document also gives the formulas that its tables were made by, rounded to preferred numbers.
//! They miss 91 of the printed cells, and a gauge is made to the printed ones: so these are the tables.
//! All cells were read but those named in [`is_recalled`]; positions H and h are zero by definition.

use crate::quantity::{Length, Quantity, unit};
use crate::source::{Basis, Source, Sourced, document};
use crate::table::Refusal;

/// One of the four tolerances that ISO 965-1 tabulates by grade.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Tolerance {
    /// Minor diameter of the nut thread, TD1 (Table 3).
    NutMinor,
    /// Major diameter of the bolt thread, Td (Table 4).
    BoltMajor,
    /// Pitch diameter of the nut thread, TD2 (Table 5).
    NutPitch,
    /// Pitch diameter of the bolt thread, Td2 (Table 6).
    BoltPitch,
}

/// A tolerance position of ISO 965-1.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Position {
    /// Bolt, the widest allowance.
    BoltE,
    /// Bolt.
    BoltF,
    /// Bolt, the usual allowance.
    BoltG,
    /// Bolt, no allowance.
    BoltH,
    /// Nut, with an allowance.
    NutG,
    /// Nut, no allowance.
    NutH,
}

/// The tolerance of a grade for a thread of this diameter and pitch.
///
/// # Errors
/// Refuses a grade, pitch or diameter that the table has no cell for.
pub fn tolerance(
    which: Tolerance,
    grade: u8,
    diameter: Length,
    pitch: Length,
) -> Result<Sourced<Length>, Refusal> {
    let source = which.source();
    let um = um_of(pitch);
    let cell = match which {
        Tolerance::NutMinor => {
            let row = NUT_MINOR.iter().find(|row| row.pitch_um == um);
            row.and_then(|row| row.grades.get(usize::from(grade).checked_sub(4)?))
        }
        Tolerance::BoltMajor => {
            let row = BOLT_MAJOR.iter().find(|row| row.pitch_um == um);
            let column = [4, 6, 8].iter().position(|&tabulated| tabulated == grade);
            row.and_then(|row| row.grades.get(column?))
        }
        Tolerance::NutPitch => {
            let row = NUT_PITCH.iter().find(|row| row.holds(diameter, um));
            row.and_then(|row| row.grades.get(usize::from(grade).checked_sub(4)?))
        }
        Tolerance::BoltPitch => {
            let row = BOLT_PITCH.iter().find(|row| row.holds(diameter, um));
            row.and_then(|row| row.grades.get(usize::from(grade).checked_sub(3)?))
        }
    };
    match cell {
        Some(&cell) if cell != BLANK => {
            let basis = if is_recalled(which, grade, diameter, um) { Basis::Memory } else { Basis::Read };
            Ok(Source { basis, ..source }.gives(Length::from_um(f64::from(cell))))
        }
        _ => Err(Refusal::not_covered(
            &format!(
                "grade {grade} for the {} at {} and pitch {}",
                which.name(),
                diameter.show(&unit::MM, 0),
                pitch.show(&unit::MM, 2)
            ),
            which.grades(),
            source,
        )),
    }
}

/// The fundamental deviation of a position at this pitch: below zero for a bolt, above for a nut.
///
/// # Errors
/// Refuses a pitch that Table 1 has no row for.
pub fn deviation(position: Position, pitch: Length) -> Result<Sourced<Length>, Refusal> {
    let um = um_of(pitch);
    let row = DEVIATIONS.iter().find(|row| row.pitch_um == um).ok_or_else(|| {
        Refusal::outside(
            "pitch",
            pitch.show(&unit::MM, 2),
            Length::from_mm(0.5).show(&unit::MM, 2),
            Length::from_mm(6.0).show(&unit::MM, 2),
            document::ISO_965_1.read("Table 1"),
        )
    })?;
    let (value, basis) = match position {
        Position::BoltE => (-f64::from(row.bolt_e), Basis::Read),
        // Position f was read up to a pitch of 2 mm only.
        Position::BoltF if um > 2000 => (-f64::from(row.bolt_f), Basis::Memory),
        Position::BoltF => (-f64::from(row.bolt_f), Basis::Read),
        Position::BoltG => (-f64::from(row.bolt_g), Basis::Read),
        Position::NutG => (f64::from(row.nut_g), Basis::Read),
        Position::BoltH | Position::NutH => (0.0, Basis::Memory),
    };
    Ok(document::ISO_965_1.known("Table 1", basis).gives(Length::from_um(value)))
}

impl Tolerance {
    /// The table that prints it.
    pub fn source(self) -> Source {
        document::ISO_965_1.read(match self {
            Self::NutMinor => "Table 3",
            Self::BoltMajor => "Table 4",
            Self::NutPitch => "Table 5",
            Self::BoltPitch => "Table 6",
        })
    }

    fn name(self) -> &'static str {
        match self {
            Self::NutMinor => "nut's minor diameter",
            Self::BoltMajor => "bolt's major diameter",
            Self::NutPitch => "nut's pitch diameter",
            Self::BoltPitch => "bolt's pitch diameter",
        }
    }

    fn grades(self) -> &'static str {
        match self {
            Self::NutMinor | Self::NutPitch => "grades 4 to 8, grade 8 from pitch 0.8 mm",
            Self::BoltMajor => "grades 4, 6 and 8, grade 8 from pitch 0.8 mm",
            Self::BoltPitch => "grades 3 to 9, grades 8 and 9 from pitch 0.8 mm",
        }
    }
}

/// The cells that are recalled and not read.
fn is_recalled(which: Tolerance, grade: u8, diameter: Length, pitch_um: u16) -> bool {
    let within = |over: f64, up_to: f64| diameter.mm() > over && diameter.mm() <= up_to;
    match (which, grade, pitch_um) {
        (Tolerance::BoltPitch, 9, 2000) => within(45.0, 90.0),
        (Tolerance::BoltPitch, 4, 4000) => within(180.0, 355.0),
        (Tolerance::NutPitch, 8, 2000) => within(22.4, 45.0),
        _ => false,
    }
}

/// A pitch as a key: whole micrometres.
fn um_of(pitch: Length) -> u16 {
    // A pitch is a few millimetres; anything else becomes a key that no row has. The cast cuts off.
    (pitch.um() + 0.5) as u16
}

/// Looked for and not printed.
const BLANK: u16 = 0;

struct Deviations {
    pitch_um: u16,
    nut_g: u16,
    bolt_e: u16,
    bolt_f: u16,
    bolt_g: u16,
}

struct Crest<const GRADES: usize> {
    pitch_um: u16,
    grades: [u16; GRADES],
}

struct Pitch<const GRADES: usize> {
    over: f64,
    up_to: f64,
    pitch_um: u16,
    grades: [u16; GRADES],
}

impl<const GRADES: usize> Pitch<GRADES> {
    fn holds(&self, diameter: Length, pitch_um: u16) -> bool {
        self.pitch_um == pitch_um && diameter.mm() > self.over && diameter.mm() <= self.up_to
    }
}

const fn deviations(pitch: f64, nut_g: u16, bolt_e: u16, bolt_f: u16, bolt_g: u16) -> Deviations {
    Deviations { pitch_um: (pitch * 1000.0 + 0.5) as u16, nut_g, bolt_e, bolt_f, bolt_g }
}

const fn crest<const GRADES: usize>(pitch: f64, grades: [u16; GRADES]) -> Crest<GRADES> {
    Crest { pitch_um: (pitch * 1000.0 + 0.5) as u16, grades }
}

const fn pitch<const GRADES: usize>(
    over: f64,
    up_to: f64,
    pitch: f64,
    grades: [u16; GRADES],
) -> Pitch<GRADES> {
    Pitch { over, up_to, pitch_um: (pitch * 1000.0 + 0.5) as u16, grades }
}

/// Table 1: pitch in mm; EI of G, and es of e, f and g without its sign, in µm.
static DEVIATIONS: &[Deviations] = &[
    deviations(0.5, 20, 50, 36, 20),
    deviations(0.6, 21, 53, 36, 21),
    deviations(0.7, 22, 56, 38, 22),
    deviations(0.75, 22, 56, 38, 22),
    deviations(0.8, 24, 60, 38, 24),
    deviations(1.0, 26, 60, 40, 26),
    deviations(1.25, 28, 63, 42, 28),
    deviations(1.5, 32, 67, 45, 32),
    deviations(1.75, 34, 71, 48, 34),
    deviations(2.0, 38, 71, 52, 38),
    deviations(2.5, 42, 80, 58, 42),
    deviations(3.0, 48, 85, 63, 48),
    deviations(3.5, 53, 90, 70, 53),
    deviations(4.0, 60, 95, 75, 60),
    deviations(4.5, 63, 100, 80, 63),
    deviations(5.0, 71, 106, 85, 71),
    deviations(5.5, 75, 112, 90, 75),
    deviations(6.0, 80, 118, 95, 80),
];

/// Table 3: pitch in mm; TD1 of grades 4 to 8 in µm.
static NUT_MINOR: &[Crest<5>] = &[
    crest(0.5, [90, 112, 140, 180, BLANK]),
    crest(0.6, [100, 125, 160, 200, BLANK]),
    crest(0.7, [112, 140, 180, 224, BLANK]),
    crest(0.75, [118, 150, 190, 236, BLANK]),
    crest(0.8, [125, 160, 200, 250, 315]),
    crest(1.0, [150, 190, 236, 300, 375]),
    crest(1.25, [170, 212, 265, 335, 425]),
    crest(1.5, [190, 236, 300, 375, 475]),
    crest(1.75, [212, 265, 335, 425, 530]),
    crest(2.0, [236, 300, 375, 475, 600]),
    crest(2.5, [280, 355, 450, 560, 710]),
    crest(3.0, [315, 400, 500, 630, 800]),
    crest(3.5, [355, 450, 560, 710, 900]),
    crest(4.0, [375, 475, 600, 750, 950]),
    crest(4.5, [425, 530, 670, 850, 1060]),
    crest(5.0, [450, 560, 710, 900, 1120]),
    crest(5.5, [475, 600, 750, 950, 1180]),
    crest(6.0, [500, 630, 800, 1000, 1250]),
];

/// Table 4: pitch in mm; Td of grades 4, 6 and 8 in µm.
static BOLT_MAJOR: &[Crest<3>] = &[
    crest(0.5, [67, 106, BLANK]),
    crest(0.6, [80, 125, BLANK]),
    crest(0.7, [90, 140, BLANK]),
    crest(0.75, [90, 140, BLANK]),
    crest(0.8, [95, 150, 236]),
    crest(1.0, [112, 180, 280]),
    crest(1.25, [132, 212, 335]),
    crest(1.5, [150, 236, 375]),
    crest(1.75, [170, 265, 425]),
    crest(2.0, [180, 280, 450]),
    crest(2.5, [212, 335, 530]),
    crest(3.0, [236, 375, 600]),
    crest(3.5, [265, 425, 670]),
    crest(4.0, [300, 475, 750]),
    crest(4.5, [315, 500, 800]),
    crest(5.0, [335, 530, 850]),
    crest(5.5, [355, 560, 900]),
    crest(6.0, [375, 600, 950]),
];

/// Table 5: diameter over, up to and including, pitch in mm; TD2 of grades 4 to 8 in µm.
static NUT_PITCH: &[Pitch<5>] = &[
    pitch(2.8, 5.6, 0.5, [63, 80, 100, 125, BLANK]),
    pitch(2.8, 5.6, 0.6, [71, 90, 112, 140, BLANK]),
    pitch(2.8, 5.6, 0.7, [75, 95, 118, 150, BLANK]),
    pitch(2.8, 5.6, 0.75, [75, 95, 118, 150, BLANK]),
    pitch(2.8, 5.6, 0.8, [80, 100, 125, 160, 200]),
    pitch(5.6, 11.2, 0.75, [85, 106, 132, 170, BLANK]),
    pitch(5.6, 11.2, 1.0, [95, 118, 150, 190, 236]),
    pitch(5.6, 11.2, 1.25, [100, 125, 160, 200, 250]),
    pitch(5.6, 11.2, 1.5, [112, 140, 180, 224, 280]),
    pitch(11.2, 22.4, 1.0, [100, 125, 160, 200, 250]),
    pitch(11.2, 22.4, 1.25, [112, 140, 180, 224, 280]),
    pitch(11.2, 22.4, 1.5, [118, 150, 190, 236, 300]),
    pitch(11.2, 22.4, 1.75, [125, 160, 200, 250, 315]),
    pitch(11.2, 22.4, 2.0, [132, 170, 212, 265, 335]),
    pitch(11.2, 22.4, 2.5, [140, 180, 224, 280, 355]),
    pitch(22.4, 45.0, 1.0, [106, 132, 170, 212, BLANK]),
    pitch(22.4, 45.0, 1.5, [125, 160, 200, 250, 315]),
    pitch(22.4, 45.0, 2.0, [140, 180, 224, 280, 355]),
    pitch(22.4, 45.0, 3.0, [170, 212, 265, 335, 425]),
    pitch(22.4, 45.0, 3.5, [180, 224, 280, 355, 450]),
    pitch(22.4, 45.0, 4.0, [190, 236, 300, 375, 475]),
    pitch(22.4, 45.0, 4.5, [200, 250, 315, 400, 500]),
    pitch(45.0, 90.0, 1.5, [132, 170, 212, 265, 335]),
    pitch(45.0, 90.0, 2.0, [150, 190, 236, 300, 375]),
    pitch(45.0, 90.0, 3.0, [180, 224, 280, 355, 450]),
    pitch(45.0, 90.0, 4.0, [200, 250, 315, 400, 500]),
    pitch(45.0, 90.0, 5.0, [212, 265, 335, 425, 530]),
    pitch(45.0, 90.0, 5.5, [224, 280, 355, 450, 560]),
    pitch(45.0, 90.0, 6.0, [236, 300, 375, 475, 600]),
    pitch(90.0, 180.0, 2.0, [160, 200, 250, 315, 400]),
    pitch(90.0, 180.0, 3.0, [190, 236, 300, 375, 475]),
    pitch(90.0, 180.0, 4.0, [212, 265, 335, 425, 530]),
    pitch(90.0, 180.0, 6.0, [250, 315, 400, 500, 630]),
    pitch(180.0, 355.0, 3.0, [212, 265, 335, 425, 530]),
    pitch(180.0, 355.0, 4.0, [236, 300, 375, 475, 600]),
    pitch(180.0, 355.0, 6.0, [265, 335, 425, 530, 670]),
];

/// Table 6: diameter over, up to and including, pitch in mm; Td2 of grades 3 to 9 in µm.
static BOLT_PITCH: &[Pitch<7>] = &[
    pitch(2.8, 5.6, 0.5, [38, 48, 60, 75, 95, BLANK, BLANK]),
    pitch(2.8, 5.6, 0.6, [42, 53, 67, 85, 106, BLANK, BLANK]),
    pitch(2.8, 5.6, 0.7, [45, 56, 71, 90, 112, BLANK, BLANK]),
    pitch(2.8, 5.6, 0.75, [45, 56, 71, 90, 112, BLANK, BLANK]),
    pitch(2.8, 5.6, 0.8, [48, 60, 75, 95, 118, 150, 190]),
    pitch(5.6, 11.2, 0.75, [50, 63, 80, 100, 125, BLANK, BLANK]),
    pitch(5.6, 11.2, 1.0, [56, 71, 90, 112, 140, 180, 224]),
    pitch(5.6, 11.2, 1.25, [60, 75, 95, 118, 150, 190, 236]),
    pitch(5.6, 11.2, 1.5, [67, 85, 106, 132, 170, 212, 265]),
    pitch(11.2, 22.4, 1.0, [60, 75, 95, 118, 150, 190, 236]),
    pitch(11.2, 22.4, 1.25, [67, 85, 106, 132, 170, 212, 265]),
    pitch(11.2, 22.4, 1.5, [71, 90, 112, 140, 180, 224, 280]),
    pitch(11.2, 22.4, 1.75, [75, 95, 118, 150, 190, 236, 300]),
    pitch(11.2, 22.4, 2.0, [80, 100, 125, 160, 200, 250, 315]),
    pitch(11.2, 22.4, 2.5, [85, 106, 132, 170, 212, 265, 335]),
    pitch(22.4, 45.0, 1.0, [63, 80, 100, 125, 160, 200, 250]),
    pitch(22.4, 45.0, 1.5, [75, 95, 118, 150, 190, 236, 300]),
    pitch(22.4, 45.0, 2.0, [85, 106, 132, 170, 212, 265, 335]),
    pitch(22.4, 45.0, 3.0, [100, 125, 160, 200, 250, 315, 400]),
    pitch(22.4, 45.0, 3.5, [106, 132, 170, 212, 265, 335, 425]),
    pitch(22.4, 45.0, 4.0, [112, 140, 180, 224, 280, 355, 450]),
    pitch(22.4, 45.0, 4.5, [118, 150, 190, 236, 300, 375, 475]),
    pitch(45.0, 90.0, 1.5, [80, 100, 125, 160, 200, 250, 315]),
    pitch(45.0, 90.0, 2.0, [90, 112, 140, 180, 224, 280, 355]),
    pitch(45.0, 90.0, 3.0, [106, 132, 170, 212, 265, 335, 425]),
    pitch(45.0, 90.0, 4.0, [118, 150, 190, 236, 300, 375, 475]),
    pitch(45.0, 90.0, 5.0, [125, 160, 200, 250, 315, 400, 500]),
    pitch(45.0, 90.0, 5.5, [132, 170, 212, 265, 335, 425, 530]),
    pitch(45.0, 90.0, 6.0, [140, 180, 224, 280, 355, 450, 560]),
    pitch(90.0, 180.0, 2.0, [95, 118, 150, 190, 236, 300, 375]),
    pitch(90.0, 180.0, 3.0, [112, 140, 180, 224, 280, 355, 450]),
    pitch(90.0, 180.0, 4.0, [125, 160, 200, 250, 315, 400, 500]),
    pitch(90.0, 180.0, 6.0, [150, 190, 236, 300, 375, 475, 600]),
    pitch(180.0, 355.0, 3.0, [125, 160, 200, 250, 315, 400, 500]),
    pitch(180.0, 355.0, 4.0, [140, 180, 224, 280, 355, 450, 560]),
    pitch(180.0, 355.0, 6.0, [160, 200, 250, 315, 400, 500, 630]),
];
