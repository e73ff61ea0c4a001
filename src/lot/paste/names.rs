//! What headings and labels mean, by their words.

use super::comma::starts_with_digit;
use super::moment::{is_date, is_time};
use super::words;
use crate::quantity::letters::lower;
use crate::quantity::{Dimension, Unit, unit};

/// Small letters without marks: `Std. Dev.` is `std dev`.
fn plain(text: &str) -> String {
    let letters = text.chars().map(|c| match c {
        '.' | ':' | '=' | '_' | '-' | '(' | ')' | '[' | ']' | '/' => ' ',
        c => c,
    });
    lower(&letters.collect::<String>()).split_whitespace().collect::<Vec<_>>().join(" ")
}

/// A name without the numbers and units that may stand behind it.
fn bare(text: &str) -> String {
    let words = plain(text);
    let words = words.split(' ').filter(|word| {
        !starts_with_digit(word)
            && !unit::ALL.iter().any(|unit| unit.dimension == Dimension::Length && unit.is_written(word))
    });
    words.collect::<Vec<_>>().join(" ")
}

/// Whether a list of [`words`] holds a name.
fn is_in(list: &str, name: &str) -> bool {
    !name.is_empty() && list.split('|').any(|listed| listed == name)
}

/// A name without the digits at the end of its words: `R12` is `r`.
fn stem(name: &str) -> String {
    let bare = bare(name);
    let words = bare.split(' ').map(|word| word.trim_end_matches(|c: char| c.is_ascii_digit()));
    words.filter(|word| !word.is_empty()).collect::<Vec<_>>().join(" ")
}

/// Whether a line or column of that name condenses readings.
pub fn is_summary(name: &str) -> bool {
    let (plain, bare) = (plain(name), bare(name));
    let listed = |name: &str| is_in(words::SUMMARIES, name) || is_in(words::SUMMARY_ENDS, name);
    let ends = |word: Option<&str>| word.is_some_and(|word| is_in(words::SUMMARY_ENDS, word));
    // `Thickness (min 43 µm)` holds readings and names their limit.
    let limited = says_readings(&bare).is_some() && plain.contains(|c: char| c.is_ascii_digit());
    let last = ends(plain.split(' ').next_back()) || (ends(bare.split(' ').next_back()) && !limited);
    listed(&plain) || listed(&bare) || ends(bare.split(' ').next()) || last
}

/// Whether a line of that name says something of the measurement besides its readings.
pub fn is_particular(name: &str) -> bool {
    is_in(words::PARTICULARS, &plain(name))
}

/// Whether a line of that name gives the mean of readings.
pub fn is_mean(name: &str) -> bool {
    is_in(words::MEANS, &plain(name))
}

/// Whether a line of that name gives their number.
pub fn is_count(name: &str) -> bool {
    is_in(words::COUNTS, &plain(name))
}

/// Whether a column of that heading names articles that may have been measured as well.
pub fn is_article(heading: &str) -> bool {
    is_in(words::ARTICLES, &plain(heading))
}

/// Whether a line of that name says what the readings below it are of.
pub fn is_known(name: &str) -> bool {
    let heads = !stem(name).contains(' ') && is_readings(name);
    is_particular(name) || is_identity(name) || heads || is_place(name)
}

/// Whether a name is that of a place on an article.
pub fn is_place(name: &str) -> bool {
    is_in(words::PLACES, &stem(name))
}

/// Whether a line of that name says the unit.
pub fn is_unit_line(name: &str) -> bool {
    matches!(plain(name).as_str(), "unit" | "units" | "einheit" | "unité" | "unidad")
}

/// Whether a line with that label is no article.
pub fn is_no_article(label: &str) -> bool {
    is_summary(label) || is_particular(label)
}

/// Whether a column of that heading numbers or names.
pub fn is_identity(heading: &str) -> bool {
    let plain = plain(heading);
    let numbers =
        |word: &str| matches!(word, "no" | "nr" | "number" | "id" | "#" | "nummer" | "numéro" | "n°" | "nº");
    [&plain, &bare(heading)].iter().any(|name| is_in(words::IDENTITIES, name))
        || plain.split(' ').next_back().is_some_and(numbers)
}

/// How surely a heading says that its column holds readings; the greater the surer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Says {
    /// `Reading`, `Value`.
    Reading,
    /// `Thickness`.
    Thickness,
    /// One of several that are numbered, or places on an article: `R1`, `2`, `head`.
    Series,
    /// A unit that coats are measured in.
    Unit,
}

/// What a heading of several says, none where it says nothing of readings; `all` are those beside it.
pub fn says(heading: &str, all: &[&str]) -> Option<Says> {
    let number = |name: &str| name.ends_with(|c: char| c.is_ascii_digit());
    let own = stem(heading);
    let place = |name: &str| is_in(words::PLACES, name);
    let of_one_kind = |other: &str| {
        let other_stem = stem(other);
        if place(&own) { place(&other_stem) } else { number(heading) && number(other) && other_stem == own }
    };
    let kinds = says_readings(&own);
    let in_series = kinds.is_some() || place(&own) || own.is_empty() || is_in(words::NUMBERED, &own);
    let several = || all.iter().filter(|other| of_one_kind(other)).count() > 1;
    if in_series && several() { Some(Says::Series) } else { kinds }
}

/// What the words of a name say.
fn says_readings(bare: &str) -> Option<Says> {
    let says = |list| bare.split(' ').any(|word| is_in(list, word));
    match () {
        () if says(words::THICKNESSES) => Some(Says::Thickness),
        () if says(words::READINGS) => Some(Says::Reading),
        () => None,
    }
}

/// Whether a column or a line is called after readings.
pub fn is_readings(name: &str) -> bool {
    says_readings(&stem(name)).is_some()
}

/// Whether two headings differ in more than their numbers.
pub fn differ(one: &str, other: &str) -> bool {
    stem(one) != stem(other)
}

/// Whether words above columns name each of them: none is of the language only, and one is known.
pub fn name_columns(words: &[String]) -> bool {
    let of_language =
        |word: &String| matches!(lower(word).as_str(), "in" | "of" | "the" | "for" | "and" | "per" | "on");
    let all: Vec<&str> = words.iter().map(String::as_str).collect();
    let known = |word: &&str| {
        is_identity(word)
            || is_summary(word)
            || measures_something_else(word)
            || says(word, &all) == Some(Says::Series)
    };
    !words.iter().any(of_language) && (all.iter().any(known) || all.iter().all(|word| is_readings(word)))
}

/// The unit that a heading names, of those offered.
pub fn unit_in(heading: &str, units: &[&'static Unit]) -> Option<&'static Unit> {
    let offered = |word: &str| units.iter().copied().find(|unit| unit.is_written(word));
    if let Some(unit) = in_brackets(heading).and_then(offered) {
        return Some(unit);
    }
    // `in` is a word of the language before it is a unit.
    let words = heading.split(|c: char| c.is_whitespace() || matches!(c, ';' | ',' | '(' | ')' | '[' | ']'));
    words.filter(|word| !word.is_empty() && !word.eq_ignore_ascii_case("in")).find_map(offered)
}

/// Whether a word is a unit that coats are measured in.
pub fn is_unit(word: &str) -> bool {
    let coat = [Dimension::Length, Dimension::ArealMass];
    unit::ALL.iter().any(|unit| coat.contains(&unit.dimension) && unit.is_written(word))
}

/// Whether a heading names something else than a coat, or a unit that no coat is measured in.
pub fn measures_something_else(heading: &str) -> bool {
    let in_other_unit = in_brackets(heading).is_some_and(|written| {
        let coat = [Dimension::Length, Dimension::ArealMass];
        unit::ALL.iter().any(|unit| unit.is_written(written) && !coat.contains(&unit.dimension))
    });
    let stem = stem(heading);
    let other = |word: Option<&str>| word.is_some_and(|word| is_in(words::OTHERS, word));
    in_other_unit || other(stem.split(' ').next()) || other(stem.split(' ').next_back())
}

fn in_brackets(heading: &str) -> Option<&str> {
    let start = heading.find(['(', '['])? + 1;
    let end = heading.rfind([')', ']'])?;
    heading.get(start..end).map(str::trim)
}

/// Cuts off a label in front: with a colon or an equals sign, or like `A1`, `#3` and `2)`.
pub fn label(line: &str) -> (Option<&str>, &str) {
    if let Some((mark, behind)) = line.split_once(' ')
        && is_list_mark(mark)
    {
        return (Some(mark), behind.trim());
    }
    if let Some((label, behind)) = at_mark(line) {
        return (Some(label), behind.trim());
    }
    let is_label =
        |text: &str| !starts_with_digit(text) && text.contains(|c: char| c.is_alphabetic() || c == '#');
    match line.split_once(' ') {
        Some((word, behind))
            if is_label(word)
                && word.contains(|c: char| c.is_ascii_digit())
                && !word.contains(',')
                && starts_with_digit(behind.trim_start()) =>
        {
            (Some(word), behind.trim())
        }
        _ => (None, line),
    }
}

/// `1)`, `(1)` or `b)`: the mark of a list.
fn is_list_mark(word: &str) -> bool {
    let Some(mark) = word.strip_suffix([')', ']']) else { return false };
    let mark = mark.trim_start_matches(['(', '[']);
    let number = !mark.is_empty() && mark.len() <= 5 && mark.bytes().all(|b| b.is_ascii_digit());
    number || matches!(mark.as_bytes(), [letter] if letter.is_ascii_alphabetic())
}

/// What stands before and behind the first colon or equals sign that ends a label.
fn at_mark(line: &str) -> Option<(&str, &str)> {
    // A colon in a time of day ends no label, wherever on the line it stands.
    let in_time = |at: usize| {
        let (before, behind) = line.split_at_checked(at).unwrap_or((line, ""));
        let start = before.rsplit(' ').next().unwrap_or_default();
        // What ends the word ends a label behind the time: `bolt 3 at 10:52: 48`.
        let end = behind.split(' ').next().unwrap_or_default().trim_end_matches([',', ':']);
        let word = format!("{start}{end}");
        let word = word.trim_start_matches(',');
        !end.is_empty() && (is_time(word) || is_date(word))
    };
    let (at, mark) = line.match_indices([':', '=']).find(|&(at, _)| !in_time(at))?;
    let (label, behind) = (line.get(..at)?, line.get(at + mark.len()..)?);
    let named = !starts_with_digit(behind) || label.contains(char::is_alphabetic);
    (named && !label.contains([',', ';'])).then_some((label, behind))
}

/// Whether a column of that name says when something was measured.
pub fn is_moment(name: &str) -> bool {
    is_in(words::MOMENTS, &plain(name))
}

/// Whether a name can stand before the number of an article or a reading: `bolt 3`, `Reading 12`.
pub fn counts_off(name: &str) -> bool {
    is_identity(name) || is_readings(name)
}

#[cfg(test)]
mod tests;
