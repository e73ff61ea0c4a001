//! Hours in the salt spray: only where a standard states them, and never for a hot-dip coat.

use crate::source::{Source, common_practice, document};
use crate::table::Refusal;
use crate::table::astm_b117::{self, Asked, Row};

/// A finish whose hours may be asked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Finish {
    /// Electroplated zinc by a type of ASTM B633, I to VI.
    B633(&'static Row),
    /// Electroplated zinc on threaded fasteners by ASTM F1941.
    F1941,
    /// Mechanically deposited zinc by a type of ASTM B695, I or II.
    B695(&'static Row),
    /// About 5 µm of mechanical zinc without a standard.
    ThinMechanical,
    /// About 5 µm of electroplated zinc without a standard.
    ThinElectroplated,
    /// Hot-dip.
    HotDip,
}

/// The hours of a finish.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hours {
    /// How many; none where the standard asks for none.
    pub hours: Option<u32>,
    /// Until what is seen.
    pub until: &'static str,
    /// Who says so.
    pub source: Source,
}

/// Why a hot-dip coat has no hours, in two sentences.
pub const WHY_NOT_HOT_DIP: &str = "A hot-dip coat lives on the dense film that wet and dry weather builds on \
    zinc, and a spray of salt that never dries keeps that film from forming, so that hours in the cabinet say \
    nothing about years outdoors. Its standards therefore ask for a thickness, and its life is stated in years \
    by place.";

/// Where that is from.
pub const HOT_DIP: Source = common_practice("life of a hot-dip coat in years by environment");

/// The hours that a finish has to stand.
///
/// # Errors
/// Hot-dip, which no standard measures by hours, and hours that were not found.
pub fn hours(finish: Finish) -> Result<Hours, Refusal> {
    match finish {
        Finish::B633(row) | Finish::B695(row) => of_row(row),
        Finish::F1941 => of_row(&astm_b117::F1941),
        Finish::ThinMechanical => Ok(about_5_um(astm_b117::MECHANICAL_5_UM)),
        Finish::ThinElectroplated => Ok(about_5_um(astm_b117::ELECTROPLATED_5_UM)),
        Finish::HotDip => Err(Refusal::not_covered(
            "a hot-dip coat",
            "zinc that is plated or peened on; open the service life instead",
            document::ASTM_B117.known(HOT_DIP.place, HOT_DIP.basis),
        )),
    }
}

/// Hours until red rust by class of mechanical zinc, which were not found.
pub fn red_rust_of_mechanical() -> Refusal {
    Refusal::blank("hours to red rust by class", astm_b117::B695_RED)
}

fn of_row(row: &Row) -> Result<Hours, Refusal> {
    let source = row.document.known(row.place, row.basis);
    let until = "white corrosion";
    match row.hours {
        Asked::White(hours) => Ok(Hours { hours: Some(hours), until, source }),
        Asked::Nothing => Ok(Hours { hours: None, until, source }),
        Asked::NotFound => {
            Err(Refusal::blank(&format!("the hours of {} ({})", row.name, row.treatment), source))
        }
    }
}

fn about_5_um(hours: u32) -> Hours {
    Hours { hours: Some(hours), until: "corrosion, with about 5 µm of zinc", source: astm_b117::ABOUT_5_UM }
}

impl Finish {
    /// Its key in links.
    pub fn key(self) -> String {
        let typed = |name: &str| name.trim_start_matches("Type ").to_ascii_lowercase();
        match self {
            Self::B633(row) => format!("b633-{}", typed(row.name)),
            Self::B695(row) => format!("b695-{}", typed(row.name)),
            Self::F1941 => "f1941".to_owned(),
            Self::ThinMechanical => "barrel-5".to_owned(),
            Self::ThinElectroplated => "cell-5".to_owned(),
            Self::HotDip => "kettle".to_owned(),
        }
    }

    /// The finish of a key: `b633-ii`, `b695-i`, `f1941`, `barrel-5`, `cell-5`, `kettle`.
    pub fn from_key(key: &str) -> Option<Self> {
        let typed = |rows: &'static [Row], name: &str| {
            rows.iter()
                .find(|row| row.name.strip_prefix("Type ").unwrap_or(row.name).eq_ignore_ascii_case(name))
        };
        match key.split_once('-') {
            Some(("b633", name)) => typed(astm_b117::B633, name).map(Self::B633),
            Some(("b695", name)) => typed(astm_b117::B695, name).map(Self::B695),
            Some(("barrel", "5")) => Some(Self::ThinMechanical),
            Some(("cell", "5")) => Some(Self::ThinElectroplated),
            None if key == "f1941" => Some(Self::F1941),
            None if key == "kettle" => Some(Self::HotDip),
            _ => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hours_are_given_only_where_a_document_states_them() {
        let stated = |key: &str| hours(Finish::from_key(key).unwrap()).map(|hours| hours.hours);
        assert_eq!(stated("b633-ii"), Ok(Some(96)));
        assert_eq!(stated("b633-i"), Ok(None));
        assert_eq!(stated("barrel-5"), Ok(Some(36)));
        assert!(stated("f1941").unwrap_err().to_string().contains("open ASTM F1941"));
        assert!(stated("b695-i").unwrap_err().to_string().contains("not known here"));
        assert!(stated("kettle").unwrap_err().to_string().contains("service life"));
        assert_eq!(WHY_NOT_HOT_DIP.matches('.').count(), 2);
    }
}
