//! A number that stands alone: pieces, where nothing else is left that it can mean.

use std::ops::Range;

use super::items::{Item, Line};
use super::length::length_of;
use super::lexicon::{self, Word};
use super::part::{Family, Scope, Scopes};
use super::per_part;
use super::steel::ANALYSES;
use super::steels::B695;
use super::wanted::Wanted;
use super::what::What;
use crate::part::Kind;
use crate::process::Process;
use crate::quantity::Length;
use crate::quantity::letters::lower;
use crate::steel::Grade;

/// A number that belongs to the word beside it that nobody knows or uses counts nothing: a product with its
/// number, a unit that is not known.
pub(super) fn owned(line: &mut Line, text: &str, unknown: &[Range<usize>]) {
    let numbers = line.free(|what| matches!(what, What::Bare(_)).then_some(()));
    for (at, ()) in numbers {
        // `2 x` counts what stands behind it.
        let is_plain = |item: &&Item| {
            item.text.chars().all(|c| c.is_ascii_digit() || matches!(c, '.' | ',' | '\'' | '’'))
        };
        let Some(item) = line.items.get(at).filter(is_plain) else { continue };
        let Some(span) = item.spans.first().cloned() else { continue };
        let may_own = |word: &Range<usize>| may_own(text, word);
        let touches = |from: usize, to: usize| touches(text, from, to);
        // `… whichever is cheaper 500`: so round a number at the end, behind a word in small letters, counts.
        let is_last = at + 1 == line.items.len()
            && text.get(span.end..).is_some_and(|rest| rest.chars().all(|c| !c.is_alphanumeric()));
        let is_round =
            matches!(item.what, What::Bare(Some(number)) if number >= 50 && number.is_multiple_of(50));
        let is_small = |word: &Range<usize>| {
            text.get(word.clone()).is_some_and(|word| word.len() > 3 && word.chars().all(char::is_lowercase))
        };
        let counts = is_last
            && is_round
            && unknown
                .iter()
                .any(|word| word.end < span.start && touches(word.end, span.start) && is_small(word));
        let beside_a_word = !counts
            && unknown.iter().any(|word| {
                let is_next = touches(word.end, span.start) || touches(span.end, word.start);
                may_own(word) && (is_next || is_dashed(text, word, span.start))
            });
        // `MIL-C-81562`, `X-1500`: of the letter in front of the dash.
        let front = text.get(..span.start).unwrap_or_default().strip_suffix(['-', '–']).unwrap_or_default();
        let mut letters = front.chars().rev();
        let hangs = letters.next().is_some_and(char::is_alphabetic)
            && letters.next().is_none_or(|c| !c.is_alphabetic());
        // `NF E 25-009`, `14399-3 HR`, `10684:2004`, `B695-53`: of two numbers that are one, or of a document.
        let is_number = |at: usize| {
            let text = line.items.get(at).map_or("", |item| &item.text);
            let is_whole = text.starts_with(|c: char| c.is_ascii_digit()) && !text.contains(['.', ',']);
            is_whole && matches!(line.what(at), Some(What::Bare(_) | What::Not(_)))
        };
        let is_joined = |one: usize, other: usize| {
            let is_document = matches!(line.what(one), Some(What::Coat(_)));
            // `1:500` are pieces of an item.
            let is_long = line.items.get(one).is_some_and(|item| item.text.len() > 2);
            let is_joint = match line.between(text, one, other) {
                Some("-" | "–") => true,
                Some(":") => is_long,
                _ => false,
            };
            (is_number(one) || is_document) && is_number(other) && is_joint
        };
        let is_joined = is_joined(at, at + 1) || at > 0 && is_joined(at - 1, at);
        // `tower 3`: a word that says nothing here but in front of a noun.
        let beside_a_name =
            line.before(at).is_some_and(|before| line.what(before) == Some(&What::Not("".into())));
        if beside_a_word || beside_a_name || hangs || is_joined {
            let text = line.items.get(at).map_or(String::new(), |item| item.text.clone());
            let whose = if is_joined { "what is joined to it" } else { "the word beside it" };
            line.not(at, format!("it may belong to {whose}: write {text} pcs if it counts them"));
        }
    }
}

/// The word that nobody knows and that stands right in front of a piece, and may own a number.
pub(super) fn word_in_front<'t>(
    line: &Line,
    at: usize,
    text: &'t str,
    unknown: &[Range<usize>],
) -> Option<&'t str> {
    let item = line.items.get(at)?;
    // `quantity 2 500`: its own word says what it counts.
    let start = item.spans.first().filter(|_| item.text.starts_with(|c: char| c.is_ascii_digit()))?.start;
    let word = unknown.iter().find(|word| may_own(text, word) && touches(text, word.end, start))?;
    text.get(word.clone())
}

/// A word with a figure in it has its number.
fn may_own(text: &str, word: &Range<usize>) -> bool {
    text.get(word.clone()).is_some_and(|word| {
        word.contains(char::is_alphabetic) && !word.contains(|c: char| c.is_ascii_digit())
    })
}

/// Whether nothing but spaces stands between two places.
fn touches(text: &str, from: usize, to: usize) -> bool {
    let between = text.get(from..to).filter(|_| from < to);
    between.is_some_and(|gap| gap.chars().all(|c| c == ' '))
}

/// `C -3`, `zork -300`, `C - 3`: a dash that touches the number alone joins it to the word, and any dash to a letter;
/// `C: 3` may be a place.
fn is_dashed(text: &str, word: &Range<usize>, number: usize) -> bool {
    let Some(between) = text.get(word.end..number) else { return false };
    let word = text.get(word.clone()).unwrap_or_default();
    let is_letter = word.chars().count() == 1;
    let is_class = || {
        let mut rest = text.get(number..).unwrap_or_default().chars();
        rest.next().is_some_and(|c| ('1'..='5').contains(&c))
            && rest.next().is_none_or(|c| !c.is_alphanumeric())
    };
    let is_category = matches!(word, "C" | "c") && matches!(between.trim(), ":" | "=" | "(") && is_class();
    between
        .strip_prefix(' ')
        .map(str::trim_start)
        .is_some_and(|gap| matches!(gap, "-" | "–" | "−") || is_letter && matches!(gap.trim_end(), "-" | "–"))
        || is_category
}

/// The one number left where every size is said, and nothing beside it makes something else of it.
pub(super) fn settle(line: &mut Line, scopes: &Scopes) {
    let numbers = line.free(|what| match what {
        What::Bare(number) => Some(*number),
        _ => None,
    });
    let has_length = scopes.kind.is_none_or(Kind::has_length);
    // The size of another part is not asked.
    let sized = scopes.kind == Some(Kind::Other)
        || line.draft.get("thread").is_some() && (line.draft.get("length").is_some() || !has_length);
    // No ring, pin or washer is so large.
    let is_no_size = |number: u64| !has_length && number >= 500;
    let beside_the_part: Vec<_> =
        numbers.iter().filter(|(at, _)| scopes.beside(*at) == Scope::Part).copied().collect();
    let numbers = if beside_the_part.len() == 1 { beside_the_part } else { numbers };
    if let [(at, Some(number))] = numbers.as_slice()
        && (sized || is_no_size(*number))
        && line.draft.get("quantity").is_none()
        && *number > 0
        && !is_analysis(line, *at, *number)
        && !may_be_of_the_coat(line, *at, *number)
        && !is_behind_a_coat(line, *at, *number)
        && !may_be_of_the_thread(line, *at, *number)
        && !may_be_something_else(line, scopes, *at, *number)
    {
        line.fill(*at, "quantity", &number.to_string(), "the quantity");
        line.note("quantity", "the one number left, taken for the pieces");
    }
}

/// `hex bolt 4140 10.9`: pieces, or a steel by its analysis; the line is asked which.
pub(super) fn is_analysis(line: &mut Line, at: usize, number: u64) -> bool {
    let is_one = ANALYSES.contains(&number);
    if is_one {
        line.not(
            at,
            format!("{number} pieces, or a steel by its analysis? Write {number} pcs if it counts them"),
        );
    }
    is_one
}

/// `NUT,HEX,M12,8,HDG,500,EA`: of a metric nut whose pieces are counted, the one number left that is a class of nuts.
pub(super) fn class_of_nut(line: &mut Line, scopes: &Scopes) {
    let is_metric = line.draft.get("thread").is_some_and(|thread| thread.starts_with('M'));
    let is_open = scopes.family == Family::Nut && is_metric && line.draft.get("steel").is_none();
    let numbers = line.free(|what| match what {
        What::Bare(Some(number)) => Some(*number),
        _ => None,
    });
    if let ([(at, number)], true) = (numbers.as_slice(), is_open && line.draft.get("quantity").is_some())
        && let Ok(class) = Grade::read(&format!("nut class {number}"))
    {
        line.fill(*at, "steel", class.key(), "the steel");
    }
}

/// What a number beside a word for a coat says of the coat: a class of ASTM B695, or µm.
fn of_coat(line: &Line, at: usize, number: u64) -> Option<What> {
    let class = u32::try_from(number).ok()?;
    let beside = |place: Option<usize>| {
        let what = line.what(place?)?;
        match what {
            What::Process(Process::Mechanical, _) | What::Coat("b695" | "barrel") => {
                B695.contains(&class).then_some(What::Class(class))
            }
            What::Process(Process::Electroplated, _) => {
                matches!(class, 3 | 5 | 8 | 12 | 25).then_some(What::Thickness(um(class)))
            }
            What::Process(Process::HotDip, _) | What::Coat(_) => {
                (40..100).contains(&class).then_some(What::Thickness(um(class)))
            }
            _ => None,
        }
    };
    beside(line.before(at)).or_else(|| beside(line.behind(at)).filter(|what| matches!(what, What::Class(_))))
}

fn um(number: u32) -> Wanted {
    Wanted::Metric(Length::from_um(f64::from(number)))
}

/// `mech galv 55, 400 pcs`, `Zn 8, 500 pcs`: where the pieces are counted elsewhere, the number beside the word for
/// a coat is of the coat.
pub(super) fn beside_a_coat(line: &mut Line) {
    /// Classes that nobody orders so many pieces of.
    const SURE: [u64; 2] = [55, 65];
    let numbers = line.free(|what| match what {
        What::Bare(Some(number)) => Some(*number),
        _ => None,
    });
    let is_counted = line.draft.get("quantity").is_some();
    for (at, number) in numbers.iter().copied() {
        let others = is_counted || numbers.iter().any(|(other, pieces)| *other != at && *pieces >= 100);
        let counts_a_part =
            line.behind(at).is_some_and(|next| matches!(line.what(next), Some(What::Part(_))));
        let what = of_coat(line, at, number).filter(|_| !counts_a_part);
        let is_sure = |what: &What| others || matches!(what, What::Class(_)) && SURE.contains(&number);
        if let (Some(what), Some(item)) = (what.filter(is_sure), line.item(at)) {
            item.what = what;
        }
    }
}

/// `HDG 40`, `mech galv 50`: pieces, or a number of the coat; the line is asked which.
pub(super) fn may_be_of_the_coat(line: &mut Line, at: usize, number: u64) -> bool {
    let what = of_coat(line, at, number);
    match &what {
        Some(What::Class(_)) => line.not(
            at,
            format!("{number} pieces, or class {number} of ASTM B695: write {number} pcs or class {number}"),
        ),
        Some(_) => line
            .not(at, format!("{number} pieces, or a coat of {number} µm: write {number} pcs or {number} µm")),
        None => {}
    }
    what.is_some()
}

/// `B695-53`, `mech plated 8`, `B633 12`: pieces, or what is right behind a coat and of it; the line is asked which.
fn is_behind_a_coat(line: &mut Line, at: usize, number: u64) -> bool {
    let is_coat = matches!(
        line.before(at).and_then(|before| line.what(before)),
        Some(
            What::Process(Process::Mechanical, _)
                | What::Coat("b695" | "barrel" | "b633" | "f1941" | "iso4042" | "cell")
        )
    );
    let is_one = is_coat && number < 100;
    if is_one {
        line.not(at, format!("{number} pieces, or of the coat? Write {number} pcs, or {number} µm"));
    }
    is_one
}

/// `x 600 thread 150`: pieces, or how far the part is threaded, which is less than its length; the line is asked which.
fn may_be_of_the_thread(line: &mut Line, at: usize, number: u64) -> bool {
    let is_behind_a_thread = at
        .checked_sub(1)
        .and_then(|before| line.items.get(before))
        .is_some_and(|item| lexicon::OF_THREADS.contains(&&*lower(&item.text)));
    let length = line.draft.get("length").and_then(length_of).filter(|_| is_behind_a_thread);
    let is_inch = line.draft.get("length").is_some_and(|text| text.ends_with(" in"));
    let measure = if is_inch { Length::from_inch(number as f64) } else { Length::from_mm(number as f64) };
    let is_one = length.is_some_and(|length| measure < length);
    if is_one {
        line.not(at, format!("the length of the thread, or pieces? Write {number} pcs if it counts them"));
    }
    is_one
}

/// Whether a piece says that a number is the least, or the greatest.
fn is_bound(line: &Line, at: Option<usize>) -> bool {
    let item = at.and_then(|at| line.items.get(at)).filter(|item| item.what == What::Filler);
    item.is_some_and(|item| {
        let text = lower(&item.text);
        let word = text.trim_end_matches(['.', ':']);
        [Word::Least, Word::Most].iter().any(|bound| lexicon::means(word, *bound))
    })
}

/// Whether the word in front of a place has its temperature in front: `460 C bath 500`.
fn has_a_temperature(line: &Line, at: usize) -> bool {
    let front = line.before(at).and_then(|word| line.before(word));
    matches!(front.and_then(|front| line.what(front)), Some(What::Temperature(..)))
}

/// Whether a piece in front of a place has its hours: `NSS 240 h 500`.
fn says_hours(line: &Line, at: usize) -> bool {
    let before = line.before(at).and_then(|before| line.items.get(before));
    before.is_some_and(|item| item.text.contains(|c: char| c.is_ascii_digit()))
}

/// Whether a number in its place can be a year, a class, a grade, years, or a thickness.
fn may_be_something_else(line: &Line, scopes: &Scopes, at: usize, number: u64) -> bool {
    const THIS_CENTURY: Range<u64> = 2020..2040;
    /// Grades of SAE J429 and J995, and of ASTM F1554.
    const GRADES: [u64; 6] = [2, 5, 8, 36, 55, 105];
    let no_steel = line.draft.get("steel").is_none();
    if THIS_CENTURY.contains(&number)
        || no_steel && GRADES.contains(&number)
        || scopes.beside(at) != Scope::Part && number <= 12
        || scopes.family == Family::Nut && no_steel && number <= 12
    {
        return true;
    }
    let has_years = line.items.iter().any(|item| matches!(item.what, What::Years(_)));
    // Fewer than a hundred are read where they stand at an end: between others they are too often a measure.
    let is_last = at + 1 == line.items.len() || line.behind(at).is_none() && line.before(at).is_none();
    // `studs 48 w/ 96 nuts`: right behind the part's own noun, and before what comes with it.
    let is_behind_the_part = line.before(at).is_some_and(|before| {
        let noun = line.items.get(before).map(|item| lower(&item.text)).unwrap_or_default();
        scopes.family == Family::Bolt && scopes.names.contains(&before) && per_part::is_plural(&noun)
    });
    let goes_on = line.behind(at).is_some_and(|behind| !matches!(line.what(behind), Some(What::With(_))));
    if is_behind_the_part && !goes_on {
        return false;
    }
    if is_bound(line, line.behind(at)) {
        return true;
    }
    match line.before(at).and_then(|before| line.what(before)) {
        Some(What::Process(Process::Electroplated, _)) => number <= 30,
        Some(What::Process(Process::HotDip, _) | What::Coat(_)) => false,
        // Nobody asks for a hundred years.
        Some(What::Category(_) | What::Place(_)) => number < 100 && !has_years,
        // `min 900`: of a strength, a thickness, an order: nobody knows; `at 450`, `spec 1234` are of the word.
        Some(What::Filler) => {
            let word = line.before(at).and_then(|before| line.items.get(before)).map(|it| lower(&it.text));
            let counts = |behind| matches!(line.what(behind), Some(What::Part(_) | What::Thread(_)));
            let owns = word
                .is_some_and(|word| lexicon::OWN_A_TEMPERATURE.contains(&word.trim_end_matches(['.', ':'])))
                && !line.behind(at).is_some_and(counts);
            number < 100 || is_bound(line, line.before(at)) || owns
        }
        // `bath 460`, `NSS 480`.
        Some(What::Bath | What::Tempered | What::HighBath) => !has_a_temperature(line, at),
        Some(What::Not(why)) if why == lexicon::HOURS => !says_hours(line, at),
        Some(What::Part(_)) if scopes.family == Family::Nut => number <= 12,
        // `A325 1` is its type.
        Some(What::Steel(_)) => number <= 3,
        _ => number < 100 && !is_last,
    }
}
