//! What the fields of an order line offer, and what each choice means.

#[cfg(test)]
mod tests;

use std::borrow::Cow;

use crate::calculator::service_life::around;
use crate::calculator::{Choice, Fault, FieldAbout, FieldValue, choices};
use crate::order::asked::{self, Asked};
use crate::order::line::Hole;
use crate::part;
use crate::site::{Categories, Surroundings};
use crate::steel::Grade;

/// How the steel of an order is known.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum KnownSteel {
    /// By its hardness, which another field asks for.
    Hardness,
    /// By its tensile strength, which another field asks for.
    Tensile,
    /// By its grade.
    Grade(Grade),
    /// It is none: stainless, or another metal.
    OtherMetal,
    /// By a grade that its document does not have in the size of the line.
    NotMade,
}

choices! {
    /// Whether the part is case-hardened.
    pub(super) enum CaseHardened {
        Usual: "usual", "As usual";
        No: "no", "No";
        Yes: "yes", "Yes";
    }
}

choices! {
    /// Which end of the steel a hardness or a strength is.
    pub(super) enum End {
        Greatest: "greatest", "The greatest";
        Least: "least", "The least, the greatest is not said";
    }
}

/// Which nut or washer comes with a bolt.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Named {
    /// None.
    Without,
    /// The one that the standards ask for.
    Standard,
    /// One of a grade.
    Grade(Grade),
    /// One known by its hardness, which another field asks for.
    Hardness,
    /// One known by the least hardness that is asked for, which the same field asks for.
    LeastHardness,
    /// A washer of another width than the usual one.
    Kind(part::Kind),
    /// No nut but a tapped hole.
    Hole(Hole),
}

impl FieldValue for KnownSteel {
    fn read(text: &str, about: &FieldAbout) -> Result<Self, Fault> {
        about.chosen(text, |key| match key {
            BY_HARDNESS => Some(Self::Hardness),
            BY_TENSILE => Some(Self::Tensile),
            OTHER_METAL => Some(Self::OtherMetal),
            NOT_MADE => Some(Self::NotMade),
            key => Grade::of_key(key).map(Self::Grade),
        })
    }

    fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
        match self {
            Self::Hardness => BY_HARDNESS,
            Self::Tensile => BY_TENSILE,
            Self::OtherMetal => OTHER_METAL,
            Self::NotMade => NOT_MADE,
            Self::Grade(grade) => grade.key(),
        }
        .into()
    }
}

impl FieldValue for Categories {
    fn read(text: &str, about: &FieldAbout) -> Result<Self, Fault> {
        about.chosen(text, Self::read)
    }

    fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
        self.key().into()
    }
}

impl FieldValue for Named {
    fn read(text: &str, about: &FieldAbout) -> Result<Self, Fault> {
        about.chosen(text, |key| match key {
            WITHOUT => Some(Self::Without),
            STANDARD => Some(Self::Standard),
            BY_HARDNESS => Some(Self::Hardness),
            BY_LEAST_HARDNESS => Some(Self::LeastHardness),
            HOLE => Some(Self::Hole(Hole::ForTheCoat)),
            HOLE_AS_IT_STANDS => Some(Self::Hole(Hole::AsItStands)),
            _ => Grade::of_key(key)
                .map(Self::Grade)
                .or_else(|| part::Kind::from_key(key).filter(|kind| WIDTHS.contains(kind)).map(Self::Kind)),
        })
    }

    fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
        match self {
            Self::Without => WITHOUT,
            Self::Standard => STANDARD,
            Self::Hardness => BY_HARDNESS,
            Self::LeastHardness => BY_LEAST_HARDNESS,
            Self::Kind(kind) => kind.key(),
            Self::Hole(Hole::ForTheCoat) => HOLE,
            Self::Hole(Hole::AsItStands) => HOLE_AS_IT_STANDS,
            Self::Grade(grade) => grade.key(),
        }
        .into()
    }
}

/// Nothing that is asked for asks for advice.
impl FieldValue for Option<Asked> {
    fn read(text: &str, about: &FieldAbout) -> Result<Self, Fault> {
        about.chosen(text, |key| match key {
            asked::ADVISE => Some(None),
            _ => asked::from_key(key).map(Some),
        })
    }

    fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
        self.as_ref().map_or(asked::ADVISE, Asked::key).into()
    }
}

/// The key of a steel that is known by its hardness, and of the field that asks for it.
pub(in crate::order) const BY_HARDNESS: &str = "hardness";

/// The key of a nut or a washer that is known by the least hardness that is asked for.
pub(in crate::order) const BY_LEAST_HARDNESS: &str = "least-hardness";

/// The key of a tapped hole instead of a nut, which is made with the room that the coat needs.
pub(in crate::order) const HOLE: &str = "hole";
/// The key of one that is tapped to the standard class already.
pub(in crate::order) const HOLE_AS_IT_STANDS: &str = "hole-as-it-stands";

/// The key of which end of the steel its hardness or strength is, and of its lower end.
pub(in crate::order) const END_OF_STEEL: &str = "end";
/// See [`END_OF_STEEL`].
pub(in crate::order) const LEAST: &str = End::Least.key();

/// The key of a steel that is known by its tensile strength, and of the field that asks for it.
pub(in crate::order) const BY_TENSILE: &str = "tensile";

/// The key of what is no carbon or alloy steel: said, and not judged.
pub(in crate::order) const OTHER_METAL: &str = "other-metal";

/// The key of a grade that its document does not have in the size of the line: another is asked for.
pub(in crate::order) const NOT_MADE: &str = "not-made";

#[allow(
    clippy::indexing_slicing,
    reason = "evaluated when it is compiled: a place beyond the end is no build"
)]
pub(super) static GRADES: [Choice; Grade::ALL.len() + 4] = {
    let mut choices = [Choice::new(BY_HARDNESS, "By its hardness"); Grade::ALL.len() + 4];
    let mut at = 0;
    while at < Grade::ALL.len() {
        choices[at] = Choice::new(Grade::ALL[at].key(), Grade::ALL[at].name());
        at += 1;
    }
    choices[at] = Choice::new(BY_TENSILE, "By its tensile strength");
    choices[at + 1] = Choice::new(OTHER_METAL, "Stainless steel, or another metal");
    choices[at + 2] = Choice::new(NOT_MADE, "A grade that is not made in this size");
    choices
};

#[allow(
    clippy::indexing_slicing,
    reason = "evaluated when it is compiled: a place beyond the end is no build"
)]
pub(super) static PARTS: [Choice; part::Kind::ALL.len()] = {
    let mut choices = [Choice::new("", ""); part::Kind::ALL.len()];
    let mut at = 0;
    while at < part::Kind::ALL.len() {
        choices[at] = Choice::new(part::Kind::ALL[at].key(), part::Kind::ALL[at].name());
        at += 1;
    }
    choices
};

/// How many grades are of nuts (`true`) or of washers.
#[allow(clippy::indexing_slicing, reason = "evaluated when it is compiled")]
const fn count(nuts: bool) -> usize {
    let (mut at, mut count) = (0, 0);
    while at < Grade::ALL.len() {
        if (nuts && Grade::ALL[at].is_nut()) || (!nuts && Grade::ALL[at].is_washer()) {
            count += 1;
        }
        at += 1;
    }
    count
}

#[allow(clippy::indexing_slicing, reason = "evaluated when it is compiled")]
const fn mates<const N: usize>(nuts: bool, none: &'static str, standard: &'static str) -> [Choice; N] {
    let mut choices = [Choice::new(WITHOUT, none); N];
    choices[1] = Choice::new(STANDARD, standard);
    let (mut at, mut place) = (0, 2);
    while at < Grade::ALL.len() {
        let grade = Grade::ALL[at];
        if (nuts && grade.is_nut()) || (!nuts && grade.is_washer()) {
            choices[place] = Choice::new(grade.key(), grade.name());
            place += 1;
        }
        at += 1;
    }
    choices[place] = Choice::new(BY_HARDNESS, "By its hardness");
    choices[place + 1] = Choice::new(BY_LEAST_HARDNESS, "one known by the least hardness that is asked for");
    let mut width = 0;
    while !nuts && width < WIDTHS.len() {
        choices[place + 2 + width] = Choice::new(WIDTHS[width].key(), WIDTHS[width].name());
        width += 1;
    }
    // Last, so that those before it are nuts.
    if nuts {
        choices[place + 2] = Choice::new(HOLE, "a tapped hole that is still to be made");
        choices[place + 3] = Choice::new(HOLE_AS_IT_STANDS, "a tapped hole of 6H or 2B as it stands");
    }
    choices
}

/// Washers of another width than the usual one.
const WIDTHS: [part::Kind; 2] = [part::Kind::WideWasher, part::Kind::NarrowWasher];

/// The key of no nut, or no washer.
pub(super) const WITHOUT: &str = "none";
/// The key of the nut or washer that the standards ask for.
const STANDARD: &str = "standard";

pub(super) static NUTS: [Choice; count(true) + 6] =
    mates(true, "Without a nut", "The nut that the standards ask for");
pub(super) static WASHERS: [Choice; count(false) + 4 + WIDTHS.len()] =
    mates(false, "Without a washer", "The washer that the standards ask for");
/// Keys of [`NUTS`] with a nut.
pub(super) static WITH_NUT: [&str; count(true) + 3] = keys(&NUTS);
/// Keys of [`WASHERS`] with a washer.
pub(super) static WITH_WASHER: [&str; count(false) + 3 + WIDTHS.len()] = keys(&WASHERS);

#[allow(clippy::indexing_slicing, reason = "evaluated when it is compiled")]
const fn keys<const N: usize>(choices: &[Choice]) -> [&'static str; N] {
    let mut keys = [""; N];
    let mut at = 0;
    while at < N {
        keys[at] = choices[at + 1].key;
        at += 1;
    }
    keys
}

/// What surrounds the part; indoors it stands in air as well.
pub(super) static AROUND: [Choice; 9] = [
    Choice::new(Surroundings::OpenAir.key(), "In air"),
    around(Surroundings::Soil),
    around(Surroundings::Water),
    around(Surroundings::Concrete),
    around(Surroundings::OtherMetal),
    around(Surroundings::Copper),
    around(Surroundings::Stainless),
    around(Surroundings::Aluminium),
    around(Surroundings::AcidWood),
];

pub(in crate::order) static PLACES: [Choice; 21] = [
    Choice::new("C1", "C1, very low: heated rooms"),
    Choice::new("C2", "C2, low: unheated rooms, clean country air"),
    Choice::new("C3", "C3, medium: towns, little salt"),
    Choice::new("C4", "C4, high: industry, coast with moderate salt"),
    Choice::new("C5", "C5, very high: heavy industry, coast with much salt"),
    Choice::new("CX", "CX, extreme: spray, hot and salt"),
    Choice::new("C1-C2", "C1 or C2: indoors"),
    Choice::new("C2-C3", "C2 or C3: country air"),
    Choice::new("C3-C4", "C3 or C4: towns"),
    Choice::new("C4-C5", "C4 or C5: industry, coast"),
    Choice::new("C5-CX", "C5 or CX: at sea"),
    Choice::new("C1-C3", "C1 to C3"),
    Choice::new("C2-C4", "C2 to C4"),
    Choice::new("C3-C5", "C3 to C5"),
    Choice::new("C4-CX", "C4 to CX: hot and damp"),
    Choice::new("C1-C4", "C1 to C4"),
    Choice::new("C2-C5", "C2 to C5: outdoors"),
    Choice::new("C3-CX", "C3 to CX"),
    Choice::new("C1-C5", "C1 to C5: indoors and outdoors"),
    Choice::new("C1-CX", "C1 to CX"),
    Choice::new("C2-CX", "C2 to CX"),
];
