//! The calculator behind a rule, filled in from the case that was judged.

use super::OrderLine;
use crate::calculator::{Link, behind};
use crate::quantity::{Length, Quantity, unit};
use crate::rule::{Case, Topic};

/// The calculator that explains the topic of a rule, with the numbers of the case.
pub fn of(line: &OrderLine, case: &Case<'_>, topic: Topic) -> Option<Link> {
    match topic {
        // Kettle and barrel each explain their own loads; of electroplating only the class is explained.
        Topic::Load => behind(case, topic).or_else(|| behind(case, Topic::Class)),
        Topic::Life => life(line, case),
        Topic::Hydrogen | Topic::Heat | Topic::Fit | Topic::Strength | Topic::Class => behind(case, topic),
    }
}

/// Years in the place.
fn life(line: &OrderLine, case: &Case<'_>) -> Option<Link> {
    let offer = case.offer?;
    let place = case.site?.place?;
    let mut pairs = vec![
        ("place", "category".to_owned()),
        ("category", place.key().to_owned()),
        ("thickness", um(offer.average())),
        ("least", um(offer.min)),
        ("greatest", um(offer.max)),
    ];
    if let Some(years) = line.years {
        pairs.push(("years", years.show(&unit::YEAR, 1).to_string()));
    }
    Some(Link { calculator: "life", pairs })
}

fn um(length: Length) -> String {
    length.show(&unit::UM, 1).to_string()
}
