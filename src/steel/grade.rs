//! The grades of steel that fasteners are ordered in.

use crate::quantity::{Hardness, Length, Quantity, Scale, Shown, Stress, Temperature, unit};
use crate::source::{Document, Sourced, document};
use crate::table::steel_row::{HardnessLimits, Sizes, SteelRow, Treatment};
use crate::table::{
    Refusal, astm_a193, astm_a194, astm_a307, astm_a354, astm_a449, astm_a563_grades, astm_a563m, astm_a574,
    astm_f436, astm_f844, astm_f1554, astm_f3125, iso_898_1, iso_898_2, iso_898_5, iso_2702, sae_j429,
    sae_j995_grades, spring_steel,
};

mod read;

pub use read::UnknownGrade;

macro_rules! grades {
    ($($(#[$doc:meta])* $variant:ident: $key:literal, $name:literal, $kind:ident, $document:ident, $rows:expr;)+) => {
        /// A grade or property class of a bolt, nut or washer.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
        pub enum Grade {
            $($(#[$doc])* #[doc = $name] $variant,)+
        }

        impl Grade {
            /// Every grade, bolts first, in the order of this file.
            pub const ALL: &'static [Self] = &[$(Self::$variant),+];

            /// Stable key for links: `10.9`, `j429-8`, `a193-b7`.
            pub const fn key(self) -> &'static str {
                match self { $(Self::$variant => $key),+ }
            }

            /// As the trade writes it.
            pub const fn name(self) -> &'static str {
                match self { $(Self::$variant => $name),+ }
            }

            /// The document that defines it.
            pub const fn document(self) -> &'static Document {
                match self { $(Self::$variant => &document::$document),+ }
            }

            const fn kind(self) -> Kind {
                match self { $(Self::$variant => Kind::$kind),+ }
            }

            /// Its rows in the table of its standard, one for each range of sizes.
            pub fn rows(self) -> &'static [SteelRow] {
                match self { $(Self::$variant => &$rows),+ }
            }
        }
    };
}

grades! {
    Class4_6: "4.6", "class 4.6", Bolt, ISO_898_1, iso_898_1::CLASS_4_6;
    Class4_8: "4.8", "class 4.8", Bolt, ISO_898_1, iso_898_1::CLASS_4_8;
    Class5_6: "5.6", "class 5.6", Bolt, ISO_898_1, iso_898_1::CLASS_5_6;
    Class5_8: "5.8", "class 5.8", Bolt, ISO_898_1, iso_898_1::CLASS_5_8;
    Class6_8: "6.8", "class 6.8", Bolt, ISO_898_1, iso_898_1::CLASS_6_8;
    Class8_8: "8.8", "class 8.8", Bolt, ISO_898_1, iso_898_1::CLASS_8_8;
    Class9_8: "9.8", "class 9.8", Bolt, ISO_898_1, iso_898_1::CLASS_9_8;
    Class10_9: "10.9", "class 10.9", Bolt, ISO_898_1, iso_898_1::CLASS_10_9;
    Class12_9: "12.9", "class 12.9", Bolt, ISO_898_1, iso_898_1::CLASS_12_9;
    Class12_9Underlined: "12.9u", "class 12.9 underlined", Bolt, ISO_898_1, iso_898_1::CLASS_12_9_UNDERLINED;
    J429Grade1: "j429-1", "SAE J429 grade 1", Bolt, SAE_J429, sae_j429::GRADE_1;
    J429Grade2: "j429-2", "SAE J429 grade 2", Bolt, SAE_J429, sae_j429::GRADE_2;
    J429Grade5: "j429-5", "SAE J429 grade 5", Bolt, SAE_J429, sae_j429::GRADE_5;
    J429Grade5_2: "j429-5.2", "SAE J429 grade 5.2", Bolt, SAE_J429, sae_j429::GRADE_5_2;
    J429Grade8: "j429-8", "SAE J429 grade 8", Bolt, SAE_J429, sae_j429::GRADE_8;
    J429Grade8_2: "j429-8.2", "SAE J429 grade 8.2", Bolt, SAE_J429, sae_j429::GRADE_8_2;
    A307: "a307", "ASTM A307 grade A", Bolt, ASTM_A307, astm_a307::GRADE_A;
    A307B: "a307-b", "ASTM A307 grade B", Bolt, ASTM_A307, astm_a307::GRADE_B;
    A449: "a449", "ASTM A449 type 1", Bolt, ASTM_A449, astm_a449::TYPE_1;
    A354Bc: "a354-bc", "ASTM A354 grade BC", Bolt, ASTM_A354, astm_a354::GRADE_BC;
    A354Bd: "a354-bd", "ASTM A354 grade BD", Bolt, ASTM_A354, astm_a354::GRADE_BD;
    A325: "a325", "ASTM F3125 grade A325", Bolt, ASTM_F3125, astm_f3125::GRADE_A325;
    A490: "a490", "ASTM F3125 grade A490", Bolt, ASTM_F3125, astm_f3125::GRADE_A490;
    F1852: "f1852", "ASTM F3125 grade F1852", Bolt, ASTM_F3125, astm_f3125::GRADE_F1852;
    F2280: "f2280", "ASTM F3125 grade F2280", Bolt, ASTM_F3125, astm_f3125::GRADE_F2280;
    A325M: "a325m", "ASTM F3125 grade A325M", Bolt, ASTM_F3125, astm_f3125::GRADE_A325M;
    A490M: "a490m", "ASTM F3125 grade A490M", Bolt, ASTM_F3125, astm_f3125::GRADE_A490M;
    F1554Grade36: "f1554-36", "ASTM F1554 grade 36", Bolt, ASTM_F1554, astm_f1554::GRADE_36;
    F1554Grade55: "f1554-55", "ASTM F1554 grade 55", Bolt, ASTM_F1554, astm_f1554::GRADE_55;
    F1554Grade105: "f1554-105", "ASTM F1554 grade 105", Bolt, ASTM_F1554, astm_f1554::GRADE_105;
    A193B7: "a193-b7", "ASTM A193 grade B7", Bolt, ASTM_A193, astm_a193::GRADE_B7;
    A193B7M: "a193-b7m", "ASTM A193 grade B7M", Bolt, ASTM_A193, astm_a193::GRADE_B7M;
    A574: "a574", "ASTM A574 socket screw", Bolt, ASTM_A574, astm_a574::SCREWS;
    Class45H: "45h", "set screw class 45H", Bolt, ISO_898_5, iso_898_5::CLASS_45H;
    Iso2702: "iso-2702", "ISO 2702 tapping screw", Bolt, ISO_2702, iso_2702::CASE_HARDENED;
    Nut04: "nut-04", "nut class 04", Nut, ISO_898_2, iso_898_2::NUT_04;
    Nut05: "nut-05", "nut class 05", Nut, ISO_898_2, iso_898_2::NUT_05;
    Nut5: "nut-5", "nut class 5", Nut, ISO_898_2, iso_898_2::NUT_5;
    Nut6: "nut-6", "nut class 6", Nut, ISO_898_2, iso_898_2::NUT_6;
    Nut8: "nut-8", "nut class 8", Nut, ISO_898_2, iso_898_2::NUT_8;
    Nut9: "nut-9", "nut class 9", Nut, ISO_898_2, iso_898_2::NUT_9;
    Nut10: "nut-10", "nut class 10", Nut, ISO_898_2, iso_898_2::NUT_10;
    Nut12: "nut-12", "nut class 12", Nut, ISO_898_2, iso_898_2::NUT_12;
    J995Grade2: "j995-2", "SAE J995 grade 2 nut", Nut, SAE_J995, sae_j995_grades::GRADE_2;
    J995Grade5: "j995-5", "SAE J995 grade 5 nut", Nut, SAE_J995, sae_j995_grades::GRADE_5;
    J995Grade8: "j995-8", "SAE J995 grade 8 nut", Nut, SAE_J995, sae_j995_grades::GRADE_8;
    A563A: "a563-a", "ASTM A563 grade A nut", Nut, ASTM_A563, astm_a563_grades::GRADE_A;
    A563B: "a563-b", "ASTM A563 grade B nut", Nut, ASTM_A563, astm_a563_grades::GRADE_B;
    A563C: "a563-c", "ASTM A563 grade C nut", Nut, ASTM_A563, astm_a563_grades::GRADE_C;
    A563C3: "a563-c3", "ASTM A563 grade C3 nut", Nut, ASTM_A563, astm_a563_grades::GRADE_C;
    A563D: "a563-d", "ASTM A563 grade D nut", Nut, ASTM_A563, astm_a563_grades::GRADE_D;
    A563Dh: "a563-dh", "ASTM A563 grade DH nut", Nut, ASTM_A563, astm_a563_grades::GRADE_DH;
    A563Dh3: "a563-dh3", "ASTM A563 grade DH3 nut", Nut, ASTM_A563, astm_a563_grades::GRADE_DH;
    A563mClass8S: "a563m-8s", "ASTM A563M class 8S nut", Nut, ASTM_A563M, astm_a563m::CLASS_8S;
    A563mClass10S: "a563m-10s", "ASTM A563M class 10S nut", Nut, ASTM_A563M, astm_a563m::CLASS_10S;
    A194Grade2H: "a194-2h", "ASTM A194 grade 2H nut", Nut, ASTM_A194, astm_a194::GRADE_2H;
    A194Grade1: "a194-1", "ASTM A194 grade 1 nut", Nut, ASTM_A194, astm_a194::GRADE_1;
    A194Grade2: "a194-2", "ASTM A194 grade 2 nut", Nut, ASTM_A194, astm_a194::GRADE_2;
    A194Grade2HM: "a194-2hm", "ASTM A194 grade 2HM nut", Nut, ASTM_A194, astm_a194::GRADE_2HM;
    A194Grade4: "a194-4", "ASTM A194 grade 4 nut", Nut, ASTM_A194, astm_a194::GRADE_4;
    A194Grade7: "a194-7", "ASTM A194 grade 7 nut", Nut, ASTM_A194, astm_a194::GRADE_7;
    A194Grade7M: "a194-7m", "ASTM A194 grade 7M nut", Nut, ASTM_A194, astm_a194::GRADE_7M;
    NutHr8: "hr-8", "HR 8 nut", Nut, EN_14399_3, iso_898_2::STRUCTURAL_8;
    NutHr10: "hr-10", "HR 10 nut", Nut, EN_14399_3, iso_898_2::STRUCTURAL_10;
    NutHv10: "hv-10", "HV 10 nut", Nut, EN_14399_4, iso_898_2::STRUCTURAL_10;
    F436: "f436", "ASTM F436 washer", Washer, ASTM_F436, astm_f436::WASHER;
    F844: "f844", "ASTM F844 washer", Washer, ASTM_F844, astm_f844::WASHER;
    Din127: "din-127", "DIN 127 spring washer", Washer, DIN_127, spring_steel::DIN_127_WASHER;
    B18_21_1: "b18.21.1", "ASME B18.21.1 spring washer", Washer, ASME_B18_21_1, spring_steel::B18_21_1_WASHER;
    Din6796: "din-6796", "DIN 6796 conical washer", Washer, DIN_6796, spring_steel::DIN_6796_WASHER;
    Din471: "din-471", "DIN 471 spring steel", Spring, DIN_471, spring_steel::DIN_471_RING;
    Iso8752: "iso-8752", "ISO 8752 spring pin", Spring, ISO_8752, spring_steel::ISO_8752_PIN;
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Kind {
    Bolt,
    Nut,
    Washer,
    /// A ring or a pin.
    Spring,
}

/// What a grade asks of a part of one size.
#[derive(Debug, Clone, Copy)]
pub struct Properties {
    /// The grade.
    pub grade: Grade,
    /// Its row for the size.
    pub row: &'static SteelRow,
}

impl Grade {
    /// A325 and the grades of its strength: metric, and twist-off.
    pub const AS_A325: &'static [Self] = &[Self::A325, Self::A325M, Self::F1852];
    /// A490 and the grades of its strength: metric, and twist-off.
    pub const AS_A490: &'static [Self] = &[Self::A490, Self::A490M, Self::F2280];
    /// Grades that are made for service in heat, with their nuts.
    pub const FOR_HEAT: &'static [Self] = &[
        Self::A193B7,
        Self::A193B7M,
        Self::A194Grade1,
        Self::A194Grade2,
        Self::A194Grade2H,
        Self::A194Grade2HM,
        Self::A194Grade4,
        Self::A194Grade7,
        Self::A194Grade7M,
    ];

    /// What the grade asks of a part of this nominal diameter.
    ///
    /// # Errors
    /// A [`Refusal`] where the standard does not cover the size.
    pub fn properties(self, diameter: Length) -> Result<Properties, Refusal> {
        match self.rows().iter().find(|row| row.sizes.hold(diameter)) {
            Some(row) => Ok(Properties { grade: self, row }),
            None => Err(self.not_this_size(diameter)),
        }
    }

    /// What the grade asks where it asks the same of every size; `None` where the size matters.
    pub fn any_size(self) -> Option<Properties> {
        match self.rows() {
            // What lies beyond the table says nothing.
            [row] | [row, SteelRow { treatment: Treatment::NotKnown, hv: None, hrc: None, hb: None, .. }] => {
                Some(Properties { grade: self, row })
            }
            _ => None,
        }
    }

    /// What the grade asks of each of its ranges of size.
    pub fn sizes(self) -> impl Iterator<Item = Properties> {
        self.rows().iter().map(move |row| Properties { grade: self, row })
    }

    /// Its name without its document: `DH`, `2H`, `class 8`, `grade 8`.
    pub fn short_name(self) -> &'static str {
        let name = self.name();
        let name = name.strip_suffix(" nut").unwrap_or(name);
        let name = name.strip_prefix("nut ").or(name.strip_prefix("ASTM ")).unwrap_or(name);
        match name.rsplit_once("grade ") {
            // A number alone would be read as how many, a letter as an article.
            Some((_, grade)) if grade.len() > 1 && !grade.bytes().all(|byte| byte.is_ascii_digit()) => grade,
            Some((document, _)) => name.get(document.len()..).unwrap_or(name),
            None => name,
        }
    }

    /// The grade with this key.
    pub fn of_key(key: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|grade| grade.key() == key)
    }

    /// Reads a grade as the trade writes it: `class 10.9`, `grade 8`, `A490`, `B7`, `SAE 5`.
    ///
    /// # Errors
    /// [`UnknownGrade`] says how to write it.
    pub fn read(text: &str) -> Result<Self, UnknownGrade> {
        read::read(text)
    }

    /// Whether it is a grade of nuts.
    pub const fn is_nut(self) -> bool {
        matches!(self.kind(), Kind::Nut)
    }

    /// Whether it is a grade of washers.
    pub const fn is_washer(self) -> bool {
        matches!(self.kind(), Kind::Washer)
    }

    /// Whether it is spring steel, hardened through.
    pub const fn is_spring(self) -> bool {
        matches!(self, Self::Din127 | Self::B18_21_1 | Self::Din6796 | Self::Din471 | Self::Iso8752)
    }

    /// Whether ISO 10684 takes it in: bolts up to class 10.9 and nuts up to class 12.
    ///
    /// `None` where the grade is not one of ISO 898 at all.
    pub fn in_iso_10684(self) -> Option<bool> {
        match self {
            Self::Class12_9 | Self::Class12_9Underlined => Some(false),
            _ if std::ptr::eq(self.document(), &document::ISO_898_1)
                || std::ptr::eq(self.document(), &document::ISO_898_2) =>
            {
                Some(true)
            }
            _ => None,
        }
    }

    /// The rows stand in the order of size: the first begins the range, the last ends it.
    fn not_this_size(self, diameter: Length) -> Refusal {
        let inch = self.rows().iter().all(|row| row.sizes.inch);
        let show = |length: Length| {
            if inch { length.show(&unit::INCH, 4) } else { length.show(&unit::MM, 1) }
        };
        let from = self.rows().first().and_then(|row| row.sizes.from);
        let min = show(from.map_or(Length::from_mm(0.0), |(from, _)| from));
        let source = self.rows().first().map_or(self.document().memory(""), |row| row.document);
        match self.rows().last().and_then(|row| row.sizes.to) {
            Some(to) => Refusal::outside("nominal diameter", show(diameter), min, show(to), source),
            None => Refusal::not_covered(
                &format!("a nominal diameter of {}", show(diameter)),
                &format!("{min} and above"),
                source,
            ),
        }
    }
}

impl PartialEq for Properties {
    /// A grade has one row for a size.
    fn eq(&self, other: &Self) -> bool {
        self.grade == other.grade && self.row.sizes == other.row.sizes
    }
}

impl Properties {
    /// The hardness limits printed on a scale, if the standard prints that scale.
    pub fn limits(&self, scale: Scale) -> Option<HardnessLimits> {
        self.row.limits(scale)
    }

    /// The scales the standard prints, the one it is best converted from first.
    ///
    /// Vickers leads, because both conversion tables are built on it.
    pub fn printed(&self) -> impl Iterator<Item = HardnessLimits> {
        let row = self.row;
        [row.hv, row.hrc, row.hb, row.hrb].into_iter().flatten()
    }

    /// The greatest hardness on the scale that leads.
    ///
    /// # Errors
    /// A [`Refusal`] where the standard sets none.
    pub fn hardest(&self) -> Result<Sourced<Hardness>, Refusal> {
        self.printed()
            .find_map(|limits| limits.max.map(|max| limits.source.gives(max)))
            .ok_or_else(|| self.blank("greatest hardness"))
    }

    /// The least tensile strength.
    ///
    /// # Errors
    /// A [`Refusal`] where it is not known here.
    pub fn tensile_min(&self) -> Result<Sourced<Stress>, Refusal> {
        self.row.tensile_min.ok_or_else(|| self.blank("least tensile strength"))
    }

    /// The least tempering temperature.
    ///
    /// # Errors
    /// A [`Refusal`] where it is not known here.
    pub fn temper_min(&self) -> Result<Sourced<Temperature>, Refusal> {
        self.row.temper_min.ok_or_else(|| self.blank("least tempering temperature"))
    }

    /// How the steel is treated.
    pub fn treatment(&self) -> Treatment {
        self.row.treatment
    }

    /// The nominal diameters the row holds for.
    pub fn sizes(&self) -> Sizes {
        self.row.sizes
    }

    /// A hardness as it is shown: whole numbers, as the standards print them.
    pub fn show(hardness: Hardness) -> Shown {
        hardness.show(if hardness.number.fract() == 0.0 { 0 } else { 1 })
    }

    fn blank(&self, what: &'static str) -> Refusal {
        Refusal::blank_of(what, self.grade.name(), self.row.document)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_steel_is_one_grade_at_one_range_of_sizes() {
        let of = |grade: Grade, mm| grade.properties(Length::from_mm(mm)).unwrap();
        let m16 = of(Grade::Class8_8, 16.0);
        assert_eq!(m16, of(Grade::Class8_8, 12.0));
        assert_ne!(m16, of(Grade::Class8_8, 20.0));
        assert_ne!(m16, of(Grade::Class10_9, 16.0));
    }

    #[test]
    fn sizes_choose_the_row() {
        let hardest = |mm| Grade::Class8_8.properties(Length::from_mm(mm)).unwrap().hardest().unwrap().value;
        assert_eq!(hardest(16.0), Hardness::hv(320.0));
        assert_eq!(hardest(20.0), Hardness::hv(335.0));
        let j429 = |inch| Grade::J429Grade5.properties(Length::from_inch(inch));
        assert_eq!(j429(1.0).unwrap().tensile_min().unwrap().value, Stress::from_ksi(120.0));
        assert_eq!(j429(1.125).unwrap().tensile_min().unwrap().value, Stress::from_ksi(105.0));
        let refusal = j429(2.0).unwrap_err().to_string();
        assert!(refusal.contains("2.0000\u{a0}in") && refusal.contains("1.5000\u{a0}in"), "{refusal}");
        let refusal = Grade::Class9_8.properties(Length::from_mm(20.0)).unwrap_err().to_string();
        assert!(refusal.contains("16.0\u{a0}mm"), "{refusal}");
    }

    #[test]
    fn every_grade_but_those_of_strength_alone_has_a_greatest_hardness_in_every_row() {
        for grade in Grade::ALL {
            for row in grade.rows() {
                let properties = Properties { grade: *grade, row };
                match grade {
                    Grade::F1554Grade36 | Grade::F1554Grade55 | Grade::F1554Grade105 => {
                        assert!(properties.hardest().is_err() && row.tensile_max.is_some());
                    }
                    // A194 sets no greatest hardness for grade 1.
                    Grade::F844 | Grade::A194Grade1 => {
                        let refusal = properties.hardest().unwrap_err().to_string();
                        let open = format!("open {}", grade.document().name);
                        assert!(refusal.contains(&open), "{refusal}");
                    }
                    // Above M39 ISO 898-2 leaves all of it to agreement.
                    _ if grade.document() == &document::ISO_898_2
                        && row.sizes.hold(Length::from_mm(48.0)) =>
                    {
                        let refusal = properties.hardest().unwrap_err().to_string();
                        assert!(refusal.contains("open ISO 898-2"), "{refusal}");
                    }
                    _ => assert!(properties.hardest().is_ok(), "{}", grade.name()),
                }
            }
        }
    }

    #[test]
    fn a_blank_names_the_document() {
        let nut = Grade::Nut10.properties(Length::from_mm(20.0)).unwrap();
        let refusal = nut.temper_min().unwrap_err().to_string();
        assert!(refusal.contains("nut class 10") && refusal.contains("ISO 898-2"), "{refusal}");
    }
}
