//! What the salt spray asks, and how it is read and written.

use crate::calculator::{Choice, Example, Field, FieldAbout, Missed, Reader, Writer, choices};
use crate::site::salt_spray::Finish;
use crate::table::salt_spray::{Chromate, Passivate, PlatedIn, ROWS};

/// What is asked.
pub(super) static FIELDS: [FieldAbout; 5] =
    [FINISH.about, THICKNESS.about, CHROMATE.about, PASSIVATE.about, PLATED_IN.about];

static FINISHES: [Choice; 16] = [
    Choice::new("b633-i", "Electroplated, ASTM B633 type I: as plated"),
    Choice::new("b633-ii", "Electroplated, ASTM B633 type II: coloured chromate"),
    Choice::new("b633-iii", "Electroplated, ASTM B633 type III: colourless chromate"),
    Choice::new("b633-iv", "Electroplated, ASTM B633 type IV: phosphate"),
    Choice::new("b633-v", "Electroplated, ASTM B633 type V: colourless passivate"),
    Choice::new("b633-vi", "Electroplated, ASTM B633 type VI: coloured passivate"),
    Choice::new("f1941", "Electroplated threaded fasteners, ASTM F1941"),
    Choice::new(ISO_4042, "Electroplated fasteners, ISO 4042"),
    Choice::new(ISO_2081, "Electroplated, ISO 2081"),
    Choice::new(ISO_19598, "Electroplated without hexavalent chromium, ISO 19598"),
    Choice::new("b695-i", "Mechanical, ASTM B695 type I: as coated"),
    Choice::new("b695-ii", "Mechanical, ASTM B695 type II: coloured chromate"),
    Choice::new("iso12683", "Mechanical, ISO 12683"),
    Choice::new("barrel-5", "Mechanical, about 5 µm, without a standard"),
    Choice::new("cell-5", "Electroplated, about 5 µm, without a standard"),
    Choice::new(HOT_DIP, "Hot-dip"),
];
const ISO_4042: &str = "iso4042";
const ISO_2081: &str = "iso2081";
const ISO_19598: &str = "iso19598";
const HOT_DIP: &str = "kettle";

choices! {
    /// Nominal thickness.
    pub(super) enum Nominal {
        Three: "3", "3 µm";
        Five: "5", "5 µm";
        Eight: "8", "8 µm";
        Twelve: "12", "12 µm";
        TwentyFive: "25", "25 µm";
    }
}
choices! {
    /// Chromates by their letters.
    const CHROMATES: Chromate {
        A: "a", "A: clear";
        B: "b", "B: bluish";
        C: "c", "C: iridescent";
        D: "d", "D: opaque";
        Black: "f", "F or Bk: black";
    }
}
choices! {
    /// Passivates by their codes.
    const PASSIVATES: Passivate {
        An: "an", "An: transparent";
        Cn: "cn", "Cn: iridescent";
        CnT2: "cn-t2", "Cn with sealer T2";
        FnT2: "fn-t2", "Fn: black, with sealer T2";
    }
}
choices! {
    /// Barrel or rack.
    const PLATED: PlatedIn {
        Barrel: "barrel", "In a barrel";
        Rack: "rack", "On a rack";
    }
}

/// A finish as it is chosen first: one that is listed by itself, or a standard that asks for more.
#[derive(Debug, Clone, Copy)]
pub(super) struct First(&'static str);

pub(super) const FINISH: Field<First> = Field::choice("finish", "Finish", &FINISHES, "b633-ii");
pub(super) const THICKNESS: Field<Nominal> =
    Field::choice("thickness", "Nominal thickness", Nominal::CHOICES, Nominal::Eight.key())
        .when(&FINISH, &[ISO_4042, ISO_2081]);
const CHROMATE: Field<Chromate> =
    Field::choice("chromate", "Chromate", CHROMATES, "c").when(&FINISH, &[ISO_4042, ISO_2081]);
const PASSIVATE: Field<Passivate> =
    Field::choice("passivate", "Passivate", PASSIVATES, "cn").when(&FINISH, &[ISO_19598]);
const PLATED_IN: Field<PlatedIn> =
    Field::choice("plated", "Plated", PLATED, "barrel").when(&FINISH, &[ISO_2081, ISO_19598]);

crate::calculator::chosen_by_key!(First, |key| {
    FINISHES.iter().find(|choice| choice.key == key).map(|choice| Self(choice.key))
});

/// Worked examples.
pub(super) static EXAMPLES: [Example; 6] = [
    Example { title: "Electroplate with a coloured chromate", pairs: &[("finish", "b633-ii")] },
    Example { title: "About 5 µm of mechanical zinc", pairs: &[("finish", "barrel-5")] },
    Example { title: "Mechanical zinc with a chromate", pairs: &[("finish", "b695-ii")] },
    Example {
        title: "A fastener of ISO 4042, 8 µm, iridescent",
        pairs: &[("finish", "iso4042"), ("thickness", "8"), ("chromate", "c")],
    },
    Example {
        title: "Parts plated on a rack by ISO 2081, 12 µm, bluish",
        pairs: &[("finish", "iso2081"), ("thickness", "12"), ("chromate", "b"), ("plated", "rack")],
    },
    Example {
        title: "Trivalent and sealed, in the barrel",
        pairs: &[("finish", "iso19598"), ("passivate", "cn-t2")],
    },
];

/// Reads the fields.
pub(super) fn read(reader: &mut Reader<'_>) -> Result<Finish, Missed> {
    let First(key) = reader.get(&FINISH)?;
    match key {
        ISO_4042 => {
            let (thickness, chromate) = (reader.get(&THICKNESS), reader.get(&CHROMATE));
            Ok(Finish::Iso4042(thickness?.um(), chromate?))
        }
        ISO_2081 => {
            let (thickness, chromate) = (reader.get(&THICKNESS), reader.get(&CHROMATE));
            let plated_in = reader.get(&PLATED_IN);
            Ok(Finish::Iso2081(thickness?.um(), chromate?, plated_in?))
        }
        ISO_19598 => {
            let (passivate, plated_in) = (reader.get(&PASSIVATE), reader.get(&PLATED_IN));
            Ok(Finish::Iso19598(passivate?, plated_in?))
        }
        _ => Ok(ROWS.iter().find(|row| row.key == key).map_or(Finish::HotDip, Finish::Listed)),
    }
}

/// Writes the fields.
pub(super) fn write(finish: Finish, writer: &mut Writer) {
    let key = match finish {
        Finish::Listed(row) => row.key,
        Finish::Iso4042(..) => ISO_4042,
        Finish::Iso2081(..) => ISO_2081,
        Finish::Iso19598(..) => ISO_19598,
        Finish::HotDip => HOT_DIP,
    };
    writer.put(&FINISH, First(key));
    if let Finish::Iso4042(um, chromate) | Finish::Iso2081(um, chromate, _) = finish {
        if let Some(nominal) = Nominal::ALL.iter().find(|nominal| nominal.um() == um) {
            writer.put(&THICKNESS, *nominal);
        }
        writer.put(&CHROMATE, chromate);
    }
    if let Finish::Iso19598(passivate, _) = finish {
        writer.put(&PASSIVATE, passivate);
    }
    if let Finish::Iso2081(.., plated_in) | Finish::Iso19598(_, plated_in) = finish {
        writer.put(&PLATED_IN, plated_in);
    }
}

impl First {
    const fn key(self) -> &'static str {
        self.0
    }
}

impl Nominal {
    const fn um(self) -> u32 {
        match self {
            Self::Three => 3,
            Self::Five => 5,
            Self::Eight => 8,
            Self::Twelve => 12,
            Self::TwentyFive => 25,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Every finish that is listed by itself is offered, and nothing is taken for hot-dip by mistake.
    #[test]
    fn every_row_is_offered() {
        let others = [ISO_4042, ISO_2081, ISO_19598, HOT_DIP];
        let offered = FINISHES.iter().map(|choice| choice.key).filter(|key| !others.contains(key));
        let listed: Vec<&str> = ROWS.iter().map(|row| row.key).collect();
        assert_eq!(offered.clone().count(), listed.len());
        assert!(offered.clone().all(|key| listed.contains(&key)));
    }
}
