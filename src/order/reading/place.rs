//! Where the part will stand, for how long, and the temperatures.

mod alone;
mod years;

use std::cmp::Ordering;
use std::ops::Range;

use super::coat::is_hot_dip;
use super::items::{Item, Line};
pub(super) use alone::alone;

use super::lexicon::{self, HARSHER, IN_SERVICE, NOT_IN_AIR, OUTDOORS, Word};
use super::what::What;
use super::{Became, distance, token};
use crate::order::line::PLACES;
use crate::process::Process;
use crate::quantity::letters::lower;
use crate::quantity::{Quantity, Temperature, number, unit};
use crate::site::{Categories, Category, Surroundings};
use crate::sorting::sort_by_key;

/// Place, years, temperatures; `unknown` are the words that nobody knows.
pub(super) fn settle(line: &mut Line, text: &str, unknown: &[Range<usize>]) {
    surroundings(line);
    categories(line);
    words(line, text, unknown);
    years::settle(line, text);
    temperatures(line, text);
    high_bath(line);
}

/// What lies in water or in the ground stands in no air: the categories say nothing of it.
fn surroundings(line: &mut Line) {
    let found = line.free(|what| match what {
        What::Around(surroundings) => Some(*surroundings),
        _ => None,
    });
    for (at, surroundings) in &found {
        line.fill(*at, "surroundings", surroundings.key(), "what surrounds it");
    }
    let around = line.draft.get("surroundings").and_then(Surroundings::from_key);
    if around.is_some_and(|around| !around.is_in_air()) {
        for (at, ()) in line.free(|what| matches!(what, What::Category(_) | What::Place(_)).then_some(())) {
            line.not(at, NOT_IN_AIR);
        }
    }
}

/// Categories by name; two leave the choice open.
fn categories(line: &mut Line) {
    let found = line.free(|what| match what {
        What::Category(category) => Some(*category),
        _ => None,
    });
    let mut offers: Vec<Category> = found.iter().map(|(_, category)| *category).collect();
    sort_by_key(&mut offers, |category| *category);
    offers.dedup();
    if let ([first, .., last], Some((from, _)), Some((to, _))) =
        (offers.as_slice(), found.first(), found.last())
    {
        // Side by side, or with a word between that joins them: `C3 to C4`, `C3 or C4`.
        let joins = |at: usize| matches!(line.what(at), Some(What::Filler | What::Or | What::With(_)));
        let (from, to) = (*from, *to);
        let is_joined = (from..to).all(|at| joins(at) || matches!(line.what(at), Some(What::Category(_))))
            && line.items.get(from).map(|item| item.stretch) == line.items.get(to).map(|item| item.stretch);
        let is_range = is_joined
            && (from..to).any(|at| {
                line.items.get(at).is_some_and(|item| {
                    item.what == What::Filler && matches!(lower(&item.text).as_str(), "to" | "bis")
                })
            });
        let within = |category: &Category| category >= first && category <= last;
        let all: Vec<Category> = Category::ALL
            .into_iter()
            .filter(|category| offers.contains(category) || is_range && within(category))
            .collect();
        let places: Vec<usize> = found.iter().map(|(at, _)| *at).collect();
        // Which of several places is meant is asked, and the order of the pieces does not decide it.
        ask(line, &places, &all);
        for at in from..to {
            if let Some(item) = line.item(at).filter(|item| is_joined && item.is_free()) {
                item.became = Some(Became::Binds);
            }
        }
        return;
    }
    for (at, category) in found {
        line.fill(at, "place", category.key(), "the place");
        // `C3 min`, `at least C3`, `C3+`.
        let is_least = |place: &usize| {
            line.items.get(*place).is_some_and(|item| {
                let word = lower(&item.text);
                item.is_free()
                    && (item.what == What::Filler && lexicon::means(word.trim_end_matches('.'), Word::Least)
                        || *place > at && item.text == "+")
            })
        };
        let bound = [line.before(at), line.behind(at)].into_iter().flatten().find(is_least);
        if let Some(bound) = bound {
            line.not(
                bound,
                format!(
                    "{category}, or a harsher place as well? {category} is judged",
                    category = category.key()
                ),
            );
        }
    }
}

/// What outdoors says beside another word: not indoors.
const NOT_INDOORS: &[Category] = &[Category::C2, Category::C3, Category::C4, Category::C5, Category::Cx];

fn beside(categories: &'static [Category]) -> &'static [Category] {
    if categories == OUTDOORS { NOT_INDOORS } else { categories }
}

/// What a place can be that is named by two words: what both can mean, and the harsher end of the narrower one,
/// which nobody has taken back.
fn overlap(one: &[Category], other: &[Category]) -> Vec<Category> {
    let mildest = one.iter().filter(|category| other.contains(category)).min();
    let narrower = match one.len().cmp(&other.len()) {
        Ordering::Less => one,
        Ordering::Greater => other,
        Ordering::Equal => one.max(other),
    };
    narrower.iter().copied().filter(|category| Some(category) >= mildest).collect()
}

/// Words for places offer what they can mean, all of them together.
fn words(line: &mut Line, text: &str, unknown: &[Range<usize>]) {
    let found = line.free(|what| match what {
        What::Place(categories) => Some(*categories),
        _ => None,
    });
    let written = line.draft.get("place").and_then(Categories::read);
    let mut open: Vec<Category> =
        written.map_or_else(|| Category::ALL.to_vec(), |written| written.each().collect());
    let is_said = open.len() == 1;
    let said: Vec<usize> =
        (0..line.items.len()).filter(|at| matches!(line.what(*at), Some(What::Category(_)))).collect();
    let says_more = written.is_some() || found.iter().any(|(_, categories)| *categories != OUTDOORS);
    let mut asks: Vec<usize> = Vec::new();
    let mut are_several = false;
    for (at, categories) in found {
        let wide = if says_more { beside(categories) } else { categories };
        let both: Vec<Category> = open.iter().copied().filter(|category| wide.contains(category)).collect();
        let is_other = asks.last().is_some_and(|last| {
            are_several || both.is_empty() || in_and_out(line, *last, at) || are_two(line, *last, at)
        });
        let Some(item) = line.item(at) else { continue };
        if is_other {
            // `indoors and at the beach`: the part stands in either, and the harsher of them counts.
            open.extend(categories.iter().filter(|category| !open.contains(category)).collect::<Vec<_>>());
            sort_by_key(&mut open, |category| *category);
            are_several = true;
            asks.push(at);
        } else if both.is_empty() && is_said && is_harsher(categories, &open) {
            open.extend(categories);
            asks.push(at);
            asks.extend(said.iter());
        } else if both.is_empty() && !(is_said && item.rule == distance::RULE) {
            item.not("contradicts the place that stands beside it");
        } else if is_said {
            item.used("place");
        } else {
            open = if asks.is_empty() { both } else { overlap(&open, wide) };
            asks.push(at);
        }
    }
    if asks.iter().any(|at| line.items.get(*at).is_some_and(|item| item.rule == distance::RULE)) {
        line.note("place", distance::NOTE);
    }
    if !is_said && asks.iter().any(|at| may_be_harsher(line, *at, text, unknown)) {
        let harshest = open.iter().copied().max().max(Some(Category::C5));
        let mildest = open.iter().copied().min();
        open.extend(Category::ALL.into_iter().filter(|all| mildest <= Some(*all) && Some(*all) <= harshest));
        sort_by_key(&mut open, |category| *category);
        open.dedup();
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

/// `C1, marine`: whether a word means a harsher place only than the category beside it, which may be a slip.
fn is_harsher(categories: &[Category], said: &[Category]) -> bool {
    categories.iter().all(|category| said.iter().all(|said| category > said))
}

/// Whether two words for places name two of them, `urban or coastal`, and not one more closely, `marine coast`,
/// `outdoors and near the coast`: a word joins them, and neither can mean all that the other can.
fn are_two(line: &Line, one: usize, other: usize) -> bool {
    let stretch = |at: usize| line.items.get(at).map(|item| item.stretch);
    let (Some(What::Place(first)), Some(What::Place(second))) = (line.what(one), line.what(other)) else {
        return false;
    };
    let holds = |all: &[Category], some: &[Category]| some.iter().all(|category| all.contains(category));
    let between = || (one + 1..other).filter_map(|at| line.what(at));
    let is_joined = between().any(|what| matches!(what, What::Or | What::With(_)))
        && between().all(|what| matches!(what, What::Filler | What::Or | What::With(_)));
    let (first, second) = (beside(first), beside(second));
    stretch(one) == stretch(other) && is_joined && !holds(first, second) && !holds(second, first)
}

/// Whether one of them is indoors and the other outdoors, which have C2 in common and no place.
fn in_and_out(line: &Line, one: usize, other: usize) -> bool {
    let of = |at: usize| match line.what(at) {
        Some(What::Place(categories)) => *categories,
        _ => &[],
    };
    let is_indoors = |at: usize| of(at).last().is_some_and(|harshest| *harshest <= Category::C2);
    is_indoors(one) && of(other) == OUTDOORS || of(one) == OUTDOORS && is_indoors(other)
}

/// Whether a mild word stands beside what may make the place harsher: a word that is known to, or one that nobody
/// knows: `damp cellar, indoors`, `indoors in an aquarium`.
fn may_be_harsher(line: &Line, at: usize, text: &str, unknown: &[Range<usize>]) -> bool {
    let Some(What::Place(categories)) = line.what(at) else { return false };
    let harshest = categories.last().copied().unwrap_or(Category::Cx);
    // `no salt` is left out.
    let is_known = line.items.iter().any(|item| item.what == What::Not(HARSHER.into()) && item.is_free());
    if harshest <= Category::C4 && is_known {
        return true;
    }
    // A place of a single category is told by its name, whatever stands beside it: `indoor sports hall`.
    let is_single = |item: &Item| matches!(&item.what, What::Place(categories) if categories.len() == 1);
    if line.items.iter().any(is_single) {
        return false;
    }
    let Some(item) =
        line.items.get(at).filter(|item| harshest <= Category::C3 && item.rule != distance::RULE)
    else {
        return false;
    };
    let (Some(first), Some(last)) = (item.spans.first(), item.spans.last()) else { return false };
    // A word beside it; a code, and what stands behind a comma, say nothing of the place.
    let is_word = |word: &Range<usize>| {
        text.get(word.clone()).is_some_and(|word| {
            let is_code = word.chars().all(char::is_uppercase) || word.chars().count() < 3;
            word.chars().all(char::is_alphabetic) && !is_code
        })
    };
    let gap = |from: usize, to: usize| {
        text.get(from..to).is_some_and(|gap| gap.chars().all(|c| matches!(c, ' ' | '-' | '/' | '(' | '.')))
    };
    let mut end = last.end;
    let mut next = at + 1;
    // What is heated is a building, and its name makes it no harsher.
    let is_heated = lower(&item.text).ends_with("heated");
    let is_building = |word: &Range<usize>| {
        text.get(word.clone()).is_some_and(|word| lexicon::BUILDINGS.contains(&lower(word).as_str()))
    };
    loop {
        let beside = unknown.iter().find(|word| word.start >= end && gap(end, word.start) && is_word(word));
        if beside.is_some_and(|word| is_heated && is_building(word)) {
            break;
        }
        if beside.is_some() {
            return true;
        }
        let binds = line.items.get(next).filter(|item| {
            matches!(item.what, What::Filler | What::With(_) | What::Small(1) | What::Or)
                && item.spans.first().is_some_and(|span| span.start >= end && gap(end, span.start))
        });
        match binds.and_then(|item| item.spans.last()) {
            Some(span) => (end, next) = (span.end, next + 1),
            None => break,
        }
    }
    // `frobnicated indoor hall`; in front of the country stands rather a name.
    harshest <= Category::C2
        && unknown.iter().any(|word| {
            let knows = text.get(word.clone()).is_some_and(|word| lexicon::knows(&lower(word)));
            !knows && word.end <= first.start && gap(word.end, first.start) && is_word(word)
        })
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

/// Where the bath of ISO 10684 begins that is above the usual one.
const HIGH_BATH: &str = "530 °C";

/// Zinc at a high temperature is the hotter of the two baths of ISO 10684; the temperature written counts.
fn high_bath(line: &mut Line) {
    let is_written = line.draft.get("bath").is_some();
    let words = line.items.iter().enumerate().filter(|(_, item)| item.what == What::HighBath);
    for at in words.map(|(at, _)| at).collect::<Vec<_>>() {
        let is_done = |became: &Became| match became {
            Became::NotUsed(_) => true,
            Became::Used(fields, _) => fields.contains(&"bath"),
            _ => false,
        };
        if line.items.get(at).is_none_or(|item| item.became.as_ref().is_some_and(is_done)) {
            continue;
        }
        if !is_hot_dip(line, at) {
            line.not(at, "a high temperature of what? Write high temperature galvanized, or “bath”");
            continue;
        }
        line.used(at, "bath");
        if !is_written {
            line.draft.set("bath", HIGH_BATH);
            line.note("bath", "the high-temperature bath of ISO 10684 begins there");
        }
    }
}

/// Whether a word for a high temperature is that of molten zinc by itself: `high temp bath`, `hochtemperaturverzinkt`.
fn names_zinc(line: &Line, at: usize) -> bool {
    let text = line.items.get(at).map(|item| lower(&item.text)).unwrap_or_default();
    ["bath", "zinc", "verzink"].iter().any(|part| text.contains(part))
}

/// Whether a bath may have this temperature, within the bounds of its field.
fn is_molten(text: &str) -> bool {
    let read = number::read(text, &[&unit::CELSIUS, &unit::FAHRENHEIT]).ok();
    read.is_some_and(|read| {
        let celsius = Temperature::of(read.number, read.unit.unwrap_or(&unit::CELSIUS)).celsius();
        (420.0..=650.0).contains(&celsius)
    })
}

/// `tempered at 480 °C for 1 h`: so long, and no hours of salt spray.
fn held(line: &mut Line, temperature: usize) {
    let hours = line.said_behind(temperature).and_then(|next| Some((next, line.items.get(next)?)));
    let Some((at, _)) = hours.filter(|(_, item)| {
        item.what == What::Not(lexicon::HOURS.into())
            && token::words(&item.text).all(|word| lexicon::means(&lower(word), Word::Hours))
    }) else {
        return;
    };
    line.not(at, "how long it was tempered: the temperature alone is judged");
}

/// A temperature is that of the word beside it.
fn temperatures(line: &mut Line, written: &str) {
    let found = line.free(|what| match what {
        What::Temperature(hottest, coldest) => Some((hottest.clone(), coldest.clone())),
        _ => None,
    });
    for (at, (text, coldest)) in found {
        let beside = |forward: bool| {
            let mut place = at;
            for _ in 0..3 {
                place = if forward { line.behind(place)? } else { line.before(place)? };
                match line.what(place)? {
                    What::Filler => {}
                    What::Tempered => return Some((place, "temper", "the tempering temperature")),
                    What::Not(why) if why == IN_SERVICE => {
                        return Some((place, "heat", "the heat in service"));
                    }
                    What::Bath => return Some((place, "bath", "the temperature of the bath")),
                    What::HighBath if names_zinc(line, place) => {
                        return Some((place, "bath", "the temperature of the bath"));
                    }
                    _ => return None,
                }
            }
            None
        };
        // `exhaust manifold studs, 350 °C`: what is hot may have a name and a comma between.
        let hot = |places: &mut dyn Iterator<Item = usize>| {
            let mut places = places.take(3);
            let place =
                places.find(|place| !matches!(line.what(*place), Some(What::Filler | What::Part(_))))?;
            matches!(line.what(place), Some(What::Not(why)) if why == IN_SERVICE).then_some((
                place,
                "heat",
                "the heat in service",
            ))
        };
        // Right behind hot-dip the temperature of molten zinc is that of the bath.
        let molten = || {
            let place = (0..at).rev().find(|place| line.what(*place) != Some(&What::Filler))?;
            let is_dipped = matches!(line.what(place), Some(What::Process(Process::HotDip, _)));
            let between = line.between(written, place, at)?;
            let mut words = token::words(between);
            let is_beside = words.all(|word| lexicon::means(&lower(word), Word::Filler));
            (is_dipped && is_beside && is_molten(&text)).then_some((
                place,
                "bath",
                "the temperature of the bath",
            ))
        };
        let found = beside(false)
            .or_else(|| beside(true))
            .or_else(|| hot(&mut (0..at).rev()))
            .or_else(|| hot(&mut (at + 1..line.items.len())))
            .or_else(molten);
        match found {
            Some((place, field, already)) => {
                // Steel gives way to the zinc by the coldest that it was tempered at, and all else by the hottest.
                let text = coldest.filter(|_| field == "temper").unwrap_or(text);
                line.fill(at, field, &text, already);
                if let Some(item) = line.item(place) {
                    item.used(field);
                }
                if field == "temper" {
                    held(line, at);
                }
            }
            None => {
                line.not(at, "a temperature of what? Write “tempered at”, “bath” or “in service at”");
            }
        }
    }
    for (at, ()) in line.free(|what| matches!(what, What::Tempered | What::Bath).then_some(())) {
        line.not(at, "at what temperature?");
    }
    // How hot it gets is said, by whichever of the words it stood.
    if line.draft.get("heat").is_some() {
        let is_said = |item: &&mut Item| item.is_free() && item.what == What::Not(IN_SERVICE.into());
        line.items.iter_mut().filter(is_said).for_each(|item| item.used("heat"));
    }
}
