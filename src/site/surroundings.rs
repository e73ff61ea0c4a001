//! Where the part stands: life is given in air, and elsewhere only what to read is named.

use crate::quantity::letters::lower;
use crate::source::{Source, document};
use crate::table::Refusal;

/// What surrounds the part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Surroundings {
    /// Outdoors in air.
    OpenAir,
    /// Inside a building.
    Indoors,
    /// Buried.
    Soil,
    /// Fresh or salt water, standing or flowing.
    Water,
    /// Cast in, or resting on fresh concrete.
    Concrete,
    /// Touching another metal where it gets wet, and nobody said which.
    OtherMetal,
    /// Touching copper, brass or bronze.
    Copper,
    /// Touching stainless steel.
    Stainless,
    /// Touching aluminium.
    Aluminium,
    /// In acid or preserved wood.
    AcidWood,
}

/// A metal that a zinc-coated part touches.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Contact {
    /// Nobody said which.
    NotSaid,
    /// Copper, brass or bronze.
    Copper,
    /// Stainless steel.
    Stainless,
    /// Aluminium.
    Aluminium,
}

impl Surroundings {
    /// All of them, open air first.
    pub const ALL: [Self; 10] = [
        Self::OpenAir,
        Self::Indoors,
        Self::Soil,
        Self::Water,
        Self::Concrete,
        Self::OtherMetal,
        Self::Copper,
        Self::Stainless,
        Self::Aluminium,
        Self::AcidWood,
    ];

    /// Those in air, alone or in contact with another metal: then the place has a category.
    pub const IN_AIR_OUTDOORS: [&'static str; 5] = [
        Self::OpenAir.key(),
        Self::OtherMetal.key(),
        Self::Copper.key(),
        Self::Stainless.key(),
        Self::Aluminium.key(),
    ];

    /// Its key in links.
    pub const fn key(self) -> &'static str {
        match self {
            Self::OpenAir => "air",
            Self::Indoors => "indoors",
            Self::Soil => "soil",
            Self::Water => "water",
            Self::Concrete => "concrete",
            Self::OtherMetal => "other-metal",
            Self::Copper => "copper",
            Self::Stainless => "stainless",
            Self::Aluminium => "aluminium",
            Self::AcidWood => "acid-wood",
        }
    }

    /// As a choice is labelled.
    pub const fn label(self) -> &'static str {
        match self {
            Self::OpenAir => "Open air",
            Self::Indoors => "Indoors",
            Self::Soil => "In soil",
            Self::Water => "In water",
            Self::Concrete => "In concrete",
            Self::OtherMetal => "In contact with another metal",
            Self::Copper => "In contact with copper, brass or bronze",
            Self::Stainless => "In contact with stainless steel",
            Self::Aluminium => "In contact with aluminium",
            Self::AcidWood => "In acid or preserved wood",
        }
    }

    /// In a sentence.
    pub fn name(self) -> String {
        lower(self.label())
    }

    /// Those of a key.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|surroundings| surroundings.key() == key)
    }

    /// Whether it stands in air, outdoors or inside a building, alone or touching another metal: then the place
    /// has a category.
    pub const fn is_in_air(self) -> bool {
        matches!(self, Self::OpenAir | Self::Indoors) || self.contact().is_some()
    }

    /// The metal that it touches; `None` where it touches none.
    pub const fn contact(self) -> Option<Contact> {
        match self {
            Self::OtherMetal => Some(Contact::NotSaid),
            Self::Copper => Some(Contact::Copper),
            Self::Stainless => Some(Contact::Stainless),
            Self::Aluminium => Some(Contact::Aluminium),
            _ => None,
        }
    }

    /// Whether years can be given at all: the categories of ISO 9223 describe places in open air and
    /// inside buildings, and the loss there without contact with another metal.
    ///
    /// # Errors
    /// Anywhere else: the document to read.
    pub fn allow_years(self) -> Result<(), Refusal> {
        let is_given = matches!(self, Self::OpenAir | Self::Indoors);
        let Some(read) = self.to_read().filter(|_| !is_given) else { return Ok(()) };
        Err(Refusal::not_covered(
            &format!("the life of zinc {}", self.name()),
            &format!(
                "air; {} {}, so read {} ({})",
                self.name(),
                self.why(),
                read.document.name,
                read.document.about
            ),
            document::ISO_9223.memory("scope"),
        ))
    }

    /// The document to read for more than a category says; none in open air.
    pub fn to_read(self) -> Option<Source> {
        match self {
            Self::OpenAir => None,
            Self::Indoors => Some(document::ISO_11844.memory("")),
            Self::Soil => Some(document::EN_12501.memory("")),
            Self::Water => Some(document::EN_12502_3.memory("")),
            Self::Concrete => Some(document::ISO_14657.memory("")),
            Self::OtherMetal | Self::Copper | Self::Stainless | Self::Aluminium => {
                Some(document::PD_6484.memory(""))
            }
            Self::AcidWood => Some(document::EN_1995_1_1.memory("Table 4.1")),
        }
    }

    /// Why a corrosivity category says nothing here.
    pub fn why(self) -> &'static str {
        match self {
            Self::OpenAir => "",
            Self::Indoors => "condensation and what the room is used for decide, not the weather",
            Self::Soil => "moisture, acidity, chloride and resistivity of the soil decide",
            Self::Water => "hardness, oxygen, temperature and flow decide, and hot water can turn zinc",
            Self::Concrete => "fresh concrete is strongly alkaline and attacks zinc until it has set",
            Self::OtherMetal | Self::Copper | Self::Stainless | Self::Aluminium => {
                "zinc is used up for the other metal, by the ratio of their wet areas"
            }
            Self::AcidWood => {
                "acids and copper preservatives of the wood attack zinc, and bolts there take at least hot-dip of ASTM A153 \
                 class C, or ASTM B695 class 55, by the International Residential Code (from memory)"
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn outside_air_the_document_to_read_is_named() {
        assert_eq!(Surroundings::OpenAir.allow_years(), Ok(()));
        assert_eq!(Surroundings::Indoors.allow_years(), Ok(()));
        for surroundings in Surroundings::ALL.into_iter().skip(2) {
            assert_eq!(Surroundings::from_key(surroundings.key()), Some(surroundings));
            let refusal = surroundings.allow_years().unwrap_err().to_string();
            let read = surroundings.to_read().unwrap().document.name;
            assert!(refusal.contains(&surroundings.name()) && refusal.contains(read), "{refusal}");
        }
        for (surroundings, words) in [
            (Surroundings::Soil, "the life of zinc in soil"),
            (Surroundings::AcidWood, "the life of zinc in acid or preserved wood"),
        ] {
            let refusal = surroundings.allow_years().unwrap_err().to_string();
            assert!(refusal.contains(words), "{refusal}");
        }
    }
}
