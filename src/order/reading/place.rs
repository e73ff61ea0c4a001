//! Where the part will stand, for how long, and the temperatures.

use super::Became;
use super::items::Line;
use super::what::What;
use crate::order::line::PLACES;
use crate::site::{Categories, Category};

/// Place, years, temperatures.
pub(super) fn settle(line: &mut Line) {
    categories(line);
    words(line);
    let years = line.free(|what| match what {
        What::Years(text) => Some(text.clone()),
        _ => None,
    });
    for (at, text) in years {
        line.fill(at, "years", &text, "the years");
    }
    temperatures(line);
}

/// Categories by name; two side by side leave the choice open.
fn categories(line: &mut Line) {
    let found = line.free(|what| match what {
        What::Category(category) => Some(*category),
        _ => None,
    });
    if let [(one, first), (two, second)] = found.as_slice()
        && line.behind(*one) == Some(*two)
        && first != second
    {
        ask(line, &[*one, *two], &[*first, *second]);
        return;
    }
    for (at, category) in found {
        line.fill(at, "place", category.key(), "the place");
    }
}

/// Words for places offer what they can mean, all of them together.
fn words(line: &mut Line) {
    let found = line.free(|what| match what {
        What::Place(categories) => Some(*categories),
        _ => None,
    });
    let written = line.draft.get("place").and_then(Categories::read);
    let mut open: Vec<Category> =
        written.map_or_else(|| Category::ALL.to_vec(), |written| written.each().collect());
    let is_said = open.len() == 1;
    let mut asks = Vec::new();
    for (at, categories) in found {
        let both: Vec<Category> =
            open.iter().copied().filter(|category| categories.contains(category)).collect();
        let Some(item) = line.item(at) else { continue };
        if both.is_empty() {
            item.not("contradicts the place that stands beside it");
        } else if is_said {
            item.used("place");
        } else {
            open = both;
            asks.push(at);
        }
    }
    match open.as_slice() {
        // Two words that have one category in common mean that one.
        [only] => {
            for at in asks {
                line.fill(at, "place", only.key(), "the place");
            }
        }
        open => ask(line, &asks, open),
    }
}

/// Asks which of the categories is meant; until it is said the place may be any of them.
fn ask(line: &mut Line, asks: &[usize], open: &[Category]) {
    for at in asks {
        if let Some(item) = line.item(*at) {
            item.became = Some(Became::Asked(open.to_vec()));
        }
    }
    let offered = |key: &String| PLACES.iter().any(|choice| choice.key == key);
    if let Some(key) = Categories::spanning(open).map(Categories::key).filter(offered)
        && !asks.is_empty()
    {
        line.draft.set("place", &key);
    }
}

/// A temperature is that of the word beside it.
fn temperatures(line: &mut Line) {
    let found = line.free(|what| match what {
        What::Temperature(text) => Some(text.clone()),
        _ => None,
    });
    for (at, text) in found {
        let beside = |forward: bool| {
            let mut place = at;
            for _ in 0..3 {
                place = if forward { line.behind(place)? } else { line.before(place)? };
                match line.what(place)? {
                    What::Filler => {}
                    What::Tempered => return Some((place, "temper", "the tempering temperature")),
                    What::Bath => return Some((place, "bath", "the temperature of the bath")),
                    _ => return None,
                }
            }
            None
        };
        match beside(false).or_else(|| beside(true)) {
            Some((place, field, already)) => {
                line.fill(at, field, &text, already);
                if let Some(item) = line.item(place) {
                    item.used(field);
                }
            }
            None => {
                line.not(at, "a temperature of what? Write “tempered at” or “bath”");
            }
        }
    }
    for (at, ()) in line.free(|what| matches!(what, What::Tempered | What::Bath).then_some(())) {
        line.not(at, "at what temperature?");
    }
}
