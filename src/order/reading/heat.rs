//! Of a range of temperatures in service, the end that is judged, for the field takes one.

use super::Became;
use super::items::Line;
use super::what::What;
use crate::quantity::{Quantity, Temperature, number, unit};
use crate::table::iso_898_1;

/// Why the hotter end is not used.
const COLDER: &str = "judged is the colder; the hotter is not used";
/// Why the line is asked which end counts.
const BOTH: &str = "judged is the hotter, and the steel is asked for the colder as well: write which counts, or a line for each";

/// The hotter end stands in the field; where ISO 898-1 is not for the colder one, that takes its place, or is asked for
/// where ISO 898-1 is for neither. The other end is always named.
pub(super) fn settle(line: &mut Line) {
    for at in 0..line.items.len() {
        let Some(item) = line.items.get(at) else { continue };
        let What::Temperature(hotter, Some(colder)) = item.what.clone() else { continue };
        let is_of_service = matches!(&item.became, Some(Became::Used(fields, _)) if fields.contains(&"heat"));
        if !is_of_service {
            continue;
        }
        let (least, most) = iso_898_1::SERVICE.value;
        let is_too_cold = read(&colder).is_some_and(|heat| heat < least);
        let is_too_hot = read(&hotter).is_some_and(|heat| heat > most);
        let (judged, became) = match (is_too_cold, is_too_hot) {
            (false, _) => ("hotter", None),
            (true, false) => ("colder", Some(Became::Used(vec!["heat"], Some(COLDER.into())))),
            (true, true) => ("hotter", Some(Became::NotUsed(BOTH.into()))),
        };
        if judged == "colder" {
            line.draft.set("heat", &colder);
        }
        line.note("heat", format!("the {judged} end of {colder} to {hotter}: the other is not judged"));
        if let (Some(item), Some(_)) = (line.item(at), &became) {
            item.became = became;
        }
    }
}

/// A temperature as a field takes it.
fn read(text: &str) -> Option<Temperature> {
    let read = number::read(text, &[&unit::CELSIUS, &unit::FAHRENHEIT]).ok()?;
    Some(Temperature::of(read.number, read.unit.unwrap_or(&unit::CELSIUS)))
}
