//! What service does to zinc and to its steel beside the weather: heat, and other metals that it touches.

use super::life::{place, row};
use super::{Case, Key, Phrase, Rule, Says, Test, When};
use crate::quantity::{Quantity, Shown, Temperature, unit};
use crate::sentence::put;
use crate::site::Category;
use crate::site::surroundings::{Contact, Surroundings};
use crate::source::document;
use crate::steel::Grade;
use crate::table::zinc_outdoors::{self, HOT, HOT_FOR_GOOD, HOT_NOW_AND_THEN};
use crate::table::{iso_898_1, practice};
use crate::working::Mark;

/// Another metal that it touches uses zinc up where both get wet: the years of the place are those of a part that is
/// kept apart from it. In a room that stays dry no current flows, and aluminium lies too near to zinc to take much.
pub static OTHER_METAL: Rule = Rule {
    source: document::PD_6484.memory(""),
    when: When::If(|case| contact(case).is_some()),
    says: |case| match (place(case), contact(case)) {
        (Some(place), _) if place.harshest == Category::C1 => Says::from(Mark::Note, practice::DRY_CONTACT),
        (_, Some(Contact::Aluminium)) => Says::from(Mark::Note, zinc_outdoors::ALUMINIUM),
        (_, Some(Contact::Copper)) => Says::from(Mark::Condition, zinc_outdoors::COPPER),
        (_, Some(Contact::Stainless)) => Says::from(Mark::Condition, zinc_outdoors::CONTACT_AREAS),
        _ => Says::condition(),
    },
    why: Phrase::By(|case, says, text| {
        if says.mark != Mark::Condition {
            return;
        }
        text.push_str(match contact(case) {
            Some(Contact::Copper) => {
                "copper and its alloys use zinc up fast where they get wet, and so does water that runs off them"
            }
            Some(Contact::Stainless) => {
                "beside a large area of stainless steel a small part of zinc is used up fast where they get wet"
            }
            _ => Surroundings::OtherMetal.why(),
        });
    }),
    words: Phrase::By(|case, says, text| {
        text.push_str(match (says.mark, contact(case)) {
            (Mark::Condition, Some(Contact::Copper)) => {
                "insulate it from the copper, and keep water that runs off copper away from it"
            }
            (Mark::Condition, Some(Contact::Stainless)) => {
                "insulate it from the stainless steel where they get wet, or have its life there judged by PD 6484"
            }
            (Mark::Condition, _) => {
                "insulate it from the other metal where they get wet, or have its life there judged by PD 6484"
            }
            (_, Some(Contact::Aluminium)) if !is_dry(case) => {
                "contact with aluminium takes little zinc: it is usually left as it is"
            }
            _ => "contact with another metal takes no zinc in a room that stays dry",
        });
    }),
    brief: Phrase::By(|case, says, text| {
        if says.mark == Mark::Condition {
            text.push_str(match contact(case) {
                Some(Contact::Copper) => "insulate it from the copper",
                Some(Contact::Stainless) => "insulate it from the stainless steel",
                _ => "insulate it from the other metal",
            });
        }
    }),
    ..row(Key::OtherMetal)
};

/// Zinc is held to a heat for good, and to a greater one at times; what is hotter needs another coat.
pub static HOT_PLACE: Rule = Rule {
    source: HOT,
    when: When::If(|case| heat(case).is_some()),
    test: Test::By(|case| heat(case).is_some_and(|heat| heat > HOT_FOR_GOOD)),
    says: |case| match heat(case) {
        Some(heat) if heat > HOT_NOW_AND_THEN => Says::bar(),
        _ => Says::condition(),
    },
    words: Phrase::By(|case, says, text| {
        let Some(heat) = heat(case) else { return };
        let (heat, good, times) = (degrees(heat), degrees(HOT_FOR_GOOD), degrees(HOT_NOW_AND_THEN));
        match says.mark {
            Mark::Bar => {
                put(text, format_args!("zinc bears {good} for good and {times} at times, and it gets {heat}"))
            }
            _ => put(
                text,
                format_args!("make sure that it gets {heat} at times only: zinc bears {good} for good"),
            ),
        }
    }),
    met: "zinc bears this heat",
    brief: Phrase::By(|_, says, text| match says.mark {
        Mark::Bar => put(text, format_args!("zinc does not bear more than {}", degrees(HOT_NOW_AND_THEN))),
        _ => put(
            text,
            format_args!("make sure that it gets hotter than {} at times only", degrees(HOT_FOR_GOOD)),
        ),
    }),
    ..row(Key::HotPlace)
};

/// The strength of a bolt is that of a room, whatever coat it has or has not: outside the temperatures that ISO 898-1
/// names somebody who knows bolt steels is asked. Steels made for heat are asked nothing there.
pub static STEEL_IN_SERVICE: Rule = Rule {
    source: practice::STEEL_IN_SERVICE,
    when: When::If(|case| heat(case).is_some() && is_of_load(case)),
    test: Test::By(|case| {
        let (least, most) = iso_898_1::SERVICE.value;
        heat(case).is_some_and(|heat| heat < least || heat > most && !is_made_for_heat(case))
    }),
    says: |case| match case.grade().map(Grade::document) {
        Some(of) if of == &document::ISO_898_1 => Says::from(Mark::Condition, iso_898_1::SERVICE.source),
        _ => Says::condition(),
    },
    why: Phrase::By(|_, _, text| {
        let (coldest, hottest) = iso_898_1::TESTED_AT.value;
        let (least, most) = iso_898_1::SERVICE.value;
        put(
            text,
            format_args!(
                "what such a steel carries is known at {} to {}, and it is used from {} to {}",
                degrees(coldest),
                degrees(hottest),
                degrees(least),
                degrees(most)
            ),
        );
    }),
    words: Phrase::By(|case, _, text| {
        if let Some(heat) = heat(case) {
            put(
                text,
                format_args!("have its steel chosen by an expert of bolt steels for {}", degrees(heat)),
            );
        }
    }),
    met: "such a steel is used at this temperature",
    brief: Phrase::By(|case, says, text| {
        if let (Mark::Condition, Some(heat)) = (says.mark, heat(case)) {
            put(text, format_args!("have the steel chosen for {}", degrees(heat)));
        }
    }),
    ..row(Key::SteelInService)
};

/// Whether it is pulled or pulls: a bolt or a nut.
fn is_of_load(case: &Case<'_>) -> bool {
    case.steel.is_some() && case.part.is_some_and(|part| part.kind.has_mate())
}

fn is_made_for_heat(case: &Case<'_>) -> bool {
    case.grade().is_some_and(|grade| Grade::FOR_HEAT.contains(&grade))
}

fn is_dry(case: &Case<'_>) -> bool {
    place(case).is_some_and(|place| place.harshest == Category::C1)
}

fn contact(case: &Case<'_>) -> Option<Contact> {
    case.site.and_then(|site| site.surroundings.contact())
}

fn degrees(heat: Temperature) -> Shown {
    heat.show(&unit::CELSIUS, 0)
}

fn heat(case: &Case<'_>) -> Option<Temperature> {
    case.site.and_then(|site| site.heat)
}
