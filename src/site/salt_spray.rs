//! Hours in the salt spray: only where a document states them, and never for a hot-dip coat.

use crate::source::{Source, common_practice, document};
use crate::table::Refusal;
use crate::table::salt_spray::{self as table, Chromate, HoursUntil, Passivate, PlatedIn, Row};

/// A finish whose hours may be asked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Finish {
    /// One that is listed by itself.
    Listed(&'static Row),
    /// Electroplated zinc by ISO 4042: nominal thickness in µm, chromate.
    Iso4042(u32, Chromate),
    /// Electroplated zinc by ISO 2081: thickness in µm, chromate, barrel or rack.
    Iso2081(u32, Chromate, PlatedIn),
    /// Electroplated zinc by ISO 19598, without hexavalent chromium.
    Iso19598(Passivate, PlatedIn),
    /// Hot-dip.
    HotDip,
}

/// The hours of a finish.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hours {
    /// Until the zinc itself corrodes white.
    pub white: (HoursUntil, Source),
    /// Until the steel rusts.
    pub red: (HoursUntil, Source),
}

/// Why a hot-dip coat has no hours, in two sentences.
pub const WHY_NOT_HOT_DIP: &str = "A hot-dip coat lives on the dense film that wet and dry weather builds on \
    zinc, and a spray of salt that never dries keeps that film from forming, so that hours in the cabinet say \
    nothing about years outdoors. Its standards therefore ask for a thickness, and its life is stated in years \
    by place.";

/// Where that is from.
pub const HOT_DIP: Source = common_practice("life of a hot-dip coat in years by environment");

/// The hours that a finish has to stand, or is said to.
///
/// # Errors
/// Hot-dip, which no standard measures by hours; a coat that the document does not list; hours that were
/// not found.
pub fn hours(finish: Finish) -> Result<Hours, Refusal> {
    match finish {
        Finish::Listed(row) => of_row(row),
        Finish::Iso4042(um, chromate) => iso_4042(um, chromate),
        Finish::Iso2081(um, chromate, plated_in) => iso_2081(um, chromate, plated_in),
        Finish::Iso19598(passivate, plated_in) => {
            let row = table::ISO_19598.iter().find(|(of, ..)| *of == passivate);
            let source = table::ISO_19598_TABLE;
            let (_, barrel, rack) =
                row.ok_or_else(|| Refusal::blank("the hours of this passivate", source))?;
            let white = if plated_in == PlatedIn::Barrel { *barrel } else { *rack };
            Ok(Hours { white: (HoursUntil::AtLeast(white), source), red: (HoursUntil::NotFound, source) })
        }
        Finish::HotDip => Err(Refusal::not_covered(
            "a hot-dip coat",
            "zinc that is plated or peened on; open the service life instead",
            document::ASTM_B117.known(HOT_DIP.place, HOT_DIP.basis),
        )),
    }
}

fn of_row(row: &Row) -> Result<Hours, Refusal> {
    if (row.white, row.red) == (HoursUntil::NotFound, HoursUntil::NotFound) {
        return Err(Refusal::blank(&format!("the hours of {}", row.name), row.source));
    }
    Ok(Hours { white: (row.white, row.source), red: (row.red, row.source) })
}

fn iso_4042(um: u32, chromate: Chromate) -> Result<Hours, Refusal> {
    let source = table::ISO_4042_TABLE;
    let row = table::ISO_4042.iter().find(|row| row.um == um && row.chromate == chromate);
    let row = row.ok_or_else(|| {
        let asked = format!("{um} µm with {}", chromate.name());
        Refusal::not_covered(&asked, "3, 5, 8 and 12 µm, black from 5 µm on; of 25 µm it has no data", source)
    })?;
    Ok(Hours {
        white: (HoursUntil::Listed(row.white), source),
        red: (row.red.map_or(HoursUntil::Nothing, HoursUntil::Listed), source),
    })
}

fn iso_2081(um: u32, chromate: Chromate, plated_in: PlatedIn) -> Result<Hours, Refusal> {
    let (white_source, red_source) = (table::ISO_2081_WHITE_TABLE, table::ISO_2081_RED_TABLE);
    let white = table::ISO_2081_WHITE.iter().find(|(of, ..)| *of == chromate);
    let red = table::ISO_2081_RED.iter().find(|(of, ..)| *of == um);
    let (Some((_, barrel, rack)), Some((_, clear, coloured))) = (white, red) else {
        let asked = format!("{um} µm with {}", chromate.name());
        return Err(Refusal::not_covered(&asked, "5, 8, 12 and 25 µm", red_source));
    };
    let white = if plated_in == PlatedIn::Barrel { *barrel } else { *rack };
    let red = if matches!(chromate, Chromate::C | Chromate::D) { *coloured } else { *clear };
    Ok(Hours {
        white: (HoursUntil::AtLeast(white), white_source),
        red: (HoursUntil::AtLeast(red), red_source),
    })
}

impl Finish {
    /// In words.
    pub fn name(self) -> String {
        match self {
            Self::Listed(row) => row.name.to_owned(),
            Self::Iso4042(um, chromate) => format!("ISO 4042, {um} µm, {}", chromate.name()),
            Self::Iso2081(um, chromate, plated_in) => {
                format!("ISO 2081, {um} µm, {}, {}", chromate.name(), plated_in.name())
            }
            Self::Iso19598(passivate, plated_in) => {
                format!("ISO 19598, {}, {}", passivate.name(), plated_in.name())
            }
            Self::HotDip => "hot-dip".to_owned(),
        }
    }

    /// Those of the same document that differ in what is put on the zinc.
    pub fn family(self) -> Vec<Self> {
        match self {
            Self::Iso4042(um, _) => Chromate::ALL.map(|chromate| Self::Iso4042(um, chromate)).to_vec(),
            Self::Iso2081(um, _, plated_in) => {
                Chromate::ALL.map(|chromate| Self::Iso2081(um, chromate, plated_in)).to_vec()
            }
            Self::Iso19598(_, plated_in) => {
                Passivate::ALL.map(|passivate| Self::Iso19598(passivate, plated_in)).to_vec()
            }
            Self::Listed(_) | Self::HotDip => Vec::new(),
        }
    }
}

impl HoursUntil {
    /// The number, where there is one.
    pub fn hours(self) -> Option<u32> {
        match self {
            Self::AtLeast(hours) | Self::Listed(hours) | Self::About(hours) => Some(hours),
            Self::Nothing | Self::NotFound => None,
        }
    }
}

impl Chromate {
    /// Every one.
    pub const ALL: [Self; 5] = [Self::A, Self::B, Self::C, Self::D, Self::Black];

    /// By letter and look.
    pub const fn name(self) -> &'static str {
        match self {
            Self::A => "A, clear",
            Self::B => "B, bluish",
            Self::C => "C, iridescent",
            Self::D => "D, opaque",
            Self::Black => "F or Bk, black",
        }
    }
}

impl Passivate {
    /// Every one.
    pub const ALL: [Self; 4] = [Self::An, Self::Cn, Self::CnT2, Self::FnT2];

    /// By code and look.
    pub const fn name(self) -> &'static str {
        match self {
            Self::An => "An, transparent",
            Self::Cn => "Cn, iridescent",
            Self::CnT2 => "Cn with sealer T2",
            Self::FnT2 => "Fn, black, with sealer T2",
        }
    }
}

impl PlatedIn {
    /// In words.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Barrel => "plated in a barrel",
            Self::Rack => "plated on a rack",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn why_is_said_in_two_sentences() {
        assert_eq!(WHY_NOT_HOT_DIP.matches('.').count(), 2);
        assert!(hours(Finish::HotDip).unwrap_err().to_string().contains("service life"));
    }
}
