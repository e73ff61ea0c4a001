//! The documents of coats and of parts.

use super::diameter::washer_of;
use super::length::is_measured;
use super::lexicon::{self, CHROMATES, COAT_DOCUMENTS, OTHER_COATS, OTHER_DOCUMENTS, PART_STANDARDS, Word};
use super::standard::{number_of, publishers};
use super::token::Chain;
use super::what::{Family, Found, SteelWord, What, Written, one};
use super::{number, steel};
use crate::order::asked;
use crate::part;
use crate::source::document as source_document;
use crate::table::iso_4042;

/// `ISO 10684`, `ASTM A153 class C`, `B695-55`, `DIN 933`, `EN ISO 4014`.
pub fn document(chain: &Chain<'_>, at: usize) -> Option<Found> {
    if let Some((end, name)) = parted(chain, at) {
        let known = source_document::ALL.iter().find(|document| document.name == name);
        return one(
            end,
            match known {
                Some(document) => What::PartDocument(document),
                None => What::Not("not among the documents known here".into()),
            },
        );
    }
    let (end, ids) = numbered(chain, at)?;
    let key = |id: &str| COAT_DOCUMENTS.iter().find(|(_, known)| known.contains(&id)).map(|(key, _)| *key);
    if let Some(key) = ids.iter().find_map(|id| key(id)) {
        return with_class(chain, end, key);
    }
    let of_part = |publisher: &str, number: &str| {
        let row =
            PART_STANDARDS.iter().find(|(_, of, numbers)| *of == publisher && numbers.contains(&number));
        row.map(|(key, ..)| *key)
    };
    let kind = ids.iter().find_map(|id| {
        let number = id.trim_start_matches(|c: char| c.is_ascii_alphabetic());
        of_part(id.strip_suffix(number)?, number)
    });
    if let Some(kind) = kind {
        return Some(with_size(chain, end, kind));
    }
    let other = |id: &str| OTHER_COATS.iter().find(|(_, known)| known.contains(&id)).map(|(key, _)| *key);
    if let Some(key) = ids.iter().find_map(|id| other(id)) {
        return one(end, What::Other(key));
    }
    let why = |id: &str| OTHER_DOCUMENTS.iter().find(|(_, known)| known.contains(&id)).map(|(why, _)| *why);
    let why = ids.iter().find_map(|id| why(id)).unwrap_or("not among the documents known here");
    one(end, What::Not(why.into()))
}

/// The size in the designation of a washer, the class in that of a nut: `ISO 7089-16`, `ISO 7091 - 12 - 100 HV`,
/// `DIN 127 B10`, `ISO 4032-8`.
fn with_size(chain: &Chain<'_>, end: usize, key: &'static str) -> Found {
    let mut found = vec![(end, What::PartStandard(key))];
    let kind = part::Kind::from_key(key);
    let is_flat = kind.is_some_and(part::Kind::is_washer);
    let dash = chain.over(end, &["-", "–"]);
    // `B10`: the form and the size.
    let form = chain.word(dash).is_some_and(|word| matches!(word, "a" | "b"));
    let form =
        form && (chain.glued(chain.after(dash)) || is_flat && chain.digits(chain.after(dash)).is_some());
    let from = if form { chain.after(dash) } else { dash };
    let past = chain.after(from);
    let goes_on = chain.inside_a_run(past)
        || chain.sign(past, &[".", ",", "/"])
            && chain.glued(past)
            && chain.digits(chain.after(past)).is_some();
    let class =
        chain.digits(from).filter(|_| kind.is_some_and(part::Kind::is_nut) && dash != end && !goes_on);
    if let Some(class) =
        class.and_then(|class| class.parse().ok()).filter(|class| NUT_CLASSES.contains(class))
    {
        found.push((past, What::Class(class)));
        return found;
    }
    let Some(size) = number::decimal(chain, from).filter(|_| is_flat) else { return found };
    let past = size.end;
    // `ISO 7090 20-300HV`: behind the size the class of its hardness.
    let hardness = chain.after(chain.over(past, &["-", "–"]));
    let is_classed = chain.digits(chain.over(past, &["-", "–"])).is_some_and(|digits| digits.len() == 3)
        && lexicon::find(chain, hardness, |word| (word == Word::Scale("HV")).then_some(())).is_some();
    let is_sure = form || dash != end || is_classed || size.text.contains('.');
    let is_open = chain.inside_a_run(past)
        || chain.sign(past, &[".", ",", "/"])
            && chain.glued(past)
            && chain.digits(chain.after(past)).is_some();
    if let Some(thread) = washer_of(&size.text).filter(|_| is_sure && !is_open && !is_counted(chain, past)) {
        let text = thread.to_string();
        let written = Written { text, thread: Some(thread), of_size: true, pitched: false, weak: false };
        found.push((past, What::Thread(written)));
    }
    found
}

/// Whether a number of pieces ends here; the steel `- St` behind a dash is none.
fn is_counted(chain: &Chain<'_>, at: usize) -> bool {
    is_measured(chain, at) && !chain.sign(at, &["-", "–"])
}

/// The classes of nuts (ISO 898-2).
const NUT_CLASSES: [u32; 6] = [5, 6, 8, 9, 10, 12];

/// A document of ASME whose number has parts: `ASME B18.2.1-2012`, `B18.3`.
fn parted(chain: &Chain<'_>, at: usize) -> Option<(usize, String)> {
    let from = publishers(chain, at);
    chain.word(from).filter(|letter| *letter == "b")?;
    let mut end = chain.after(from);
    let mut name = format!("ASME B{}", chain.digits(end).filter(|_| chain.glued(end))?);
    end = chain.after(end);
    let mut parts = 0;
    loop {
        let behind = chain.after(end);
        let joined = chain.sign(end, &["."]) && chain.glued(end) && chain.glued(behind);
        let Some(part) = chain.digits(behind).filter(|part| joined && part.len() <= 2) else { break };
        name = format!("{name}.{part}");
        (end, parts) = (chain.after(behind), parts + 1);
    }
    // Metric documents have an M, editions a year.
    if chain.word(end) == Some("m") && chain.glued(end) {
        name.push('M');
        end = chain.after(end);
    }
    let year = chain.after(end);
    if chain.sign(end, &["-"]) && chain.glued(year) && chain.digits(year).is_some_and(|year| year.len() == 4)
    {
        end = chain.after(year);
    }
    (parts > 0 && !chain.inside_a_run(end)).then_some((end, name))
}

/// Whether a publisher has a standard of parts by this number.
fn is_of_a_part(publisher: &str, number: &str) -> bool {
    PART_STANDARDS.iter().any(|(_, of, numbers)| *of == publisher && numbers.contains(&number))
}

/// The document at a place: the place behind it, and its number under each publisher.
fn numbered(chain: &Chain<'_>, at: usize) -> Option<(usize, Vec<String>)> {
    if let Some((end, id)) = number_of(chain, at) {
        return Some((end, vec![id]));
    }
    let from = publishers(chain, at);
    let number = chain.digits(from).filter(|_| from != at)?;
    // `en 2 moeren`: in Dutch and in French, `and`.
    let counts = |word| matches!(word, Word::Part(_) | Word::Count(..)).then_some(());
    if chain.get(at).is_some_and(|token| token.text == "en")
        && chain.after(at) == from
        && number.len() < 5
        && !is_of_a_part("en", number)
        && lexicon::find(chain, chain.after(from), counts).is_some()
    {
        return None;
    }
    // `ISO 8.8`: a class.
    if number::decimal(chain, from).is_some_and(|number| steel::DOTTED.contains(&number.text.as_str())) {
        return None;
    }
    let mut names: Vec<String> = Vec::new();
    let mut place = at;
    while place < from {
        names.extend(chain.word(place).map(|publisher| format!("{publisher}{number}")));
        place = chain.after(place);
    }
    let mut end = chain.after(from);
    // The part of a standard, and the year of its edition: `EN 14399-4`, `ISO 898-1:2013`.
    let is_iso = names.iter().any(|name| !name.starts_with("din"));
    let has_no_parts = names.iter().any(|name| is_of_nuts_or_washers(name));
    for (sign, longest) in [("-", 2), (":", 4), ("-", 4)] {
        let behind = chain.after(end);
        let digits = chain
            .digits(behind)
            .filter(|digits| digits.len() <= longest && (longest == 2 || digits.len() == 4));
        let joined = chain.sign(end, &[sign]) && chain.glued(end) && chain.glued(behind);
        let last = chain.after(behind);
        let goes_on = chain.sign(last, &[".", ",", "/"])
            && chain.glued(last)
            && chain.glued(chain.after(last))
            && chain.digits(chain.after(last)).is_some();
        let whole = !goes_on && !chain.inside_a_run(last);
        // `ISO 7089-16` is a size: that standard has no parts.
        let is_size =
            has_no_parts && longest == 2 && digits.is_some_and(|digits| digits != "1" && digits != "2");
        if is_iso && joined && whole && digits.is_some() && !is_size {
            if longest == 2 && sign == "-" {
                names = part_names(names, chain.digits(behind).unwrap_or_default());
            }
            end = last;
        }
    }
    end = month_of_edition(chain, end, has_no_parts);
    // Other parts of it: `EN 14399-4/-6`.
    loop {
        let dash = chain.after(end);
        let part = chain.over(dash, &["-"]);
        let joined = chain.sign(end, &["/", "+"]) && chain.glued(end) && part != dash;
        if !joined || chain.digits(part).is_none_or(|digits| digits.len() > 2) {
            break;
        }
        end = chain.after(part);
    }
    // A letter for the form: `DIN 125A`, `DIN 127 B`.
    let behind = chain.after(end);
    let letter = chain.word(end).is_some_and(|word| {
        word.len() == 1 && chain.glued(end)
            || matches!(word, "a" | "b" | "c") && !is_iso && chain.digits(behind).is_none()
    });
    if letter && !chain.inside_a_run(behind) {
        end = behind;
    }
    (!chain.inside_a_run(end)).then_some((end, names))
}

/// `DIN 933:1987-09`, `ISO 4014:2011-06`: the place behind the year of an edition and its month; `ISO 4032:2012-10` may be
/// a class of nuts, and a nought in front is that of a month.
fn month_of_edition(chain: &Chain<'_>, end: usize, has_sizes: bool) -> usize {
    let figures = |mark: usize, signs: &[&str], count: usize| {
        let behind = chain.after(mark);
        let is_joined = chain.sign(mark, signs) && chain.glued(mark) && chain.glued(behind);
        let last = chain.after(behind);
        chain
            .digits(behind)
            .filter(|digits| is_joined && digits.len() == count && !chain.inside_a_run(last))
            .map(|digits| (last, digits))
    };
    let end = figures(end, &[":"], 4).map_or(end, |(last, _)| last);
    let is_year = chain
        .before(end)
        .is_some_and(|year| chain.glued(year) && chain.digits(year).is_some_and(|year| year.len() == 4))
        && chain
            .before(end)
            .and_then(|year| chain.before(year))
            .is_some_and(|mark| chain.sign(mark, &[":", "-"]));
    let month = figures(end, &["-"], 2).filter(|(_, month)| matches!(month.parse(), Ok(1..=12u8)));
    month.filter(|(_, month)| is_year && (!has_sizes || month.starts_with('0'))).map_or(end, |(last, _)| last)
}

/// Whether a number is that of a standard of nuts or washers.
fn is_of_nuts_or_washers(name: &str) -> bool {
    PART_STANDARDS.iter().any(|(key, publisher, numbers)| {
        (key.ends_with("washer") || key.ends_with("nut"))
            && name.strip_prefix(publisher).is_some_and(|number| numbers.contains(&number))
    })
}

/// The part of a standard first, then the standard.
fn part_names(names: Vec<String>, part: &str) -> Vec<String> {
    names.iter().map(|name| format!("{name}-{part}")).chain(names.iter().cloned()).collect()
}

/// The class behind the document of a coat: `class C`, `class 55 type II`, `-55`.
fn with_class(chain: &Chain<'_>, end: usize, key: &'static str) -> Option<Found> {
    let dash = chain.over(end, &["-", "/"]);
    let behind = lexicon::over(chain, dash, Word::Class);
    let from = chain.over(behind, &[".", ":", "-", "="]);
    // `B695 - 55`: with a space on both sides of the dash, where no count follows the figures.
    let apart = dash != end && key == "b695" && !chain.glued(dash);
    let named = behind != dash || apart;
    let code =
        chain.get(from).filter(|token| named || token.is_alphanumeric() && chain.glued(from) && dash != end);
    let classed = code.and_then(|code| {
        let wanted = format!("{key}-{}", code.lower);
        asked::ALL.iter().find(|asked| asked.key == wanted).map(|asked| asked.key)
    });
    let past = chain.after(from);
    let (end, key) = match classed {
        Some(key) if !chain.inside_a_run(past) => (past, key),
        _ => (end, key),
    };
    one(end, What::Coat(key))
}

/// `Fe/Zn 8`, `Zn8`, `SC 2`.
pub fn zinc(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (from, family) = lexicon::find(chain, at, |word| match word {
        Word::FeZn => Some(Family::FeZn),
        Word::ServiceCondition => Some(Family::B633),
        Word::Process(crate::process::Process::Electroplated) => Some(Family::Zn),
        _ => None,
    })?;
    let is_apart = !chain.inside_a_run(from);
    if family == Family::Zn && chain.word(at) != Some("zn") {
        return None;
    }
    let marked = chain.over(from, &["-", ":", "."]);
    let number: u32 = chain.digits(marked).filter(|digits| digits.len() <= 2)?.parse().ok()?;
    let mut end = chain.after(marked);
    let um = match (family, number) {
        (Family::B633, 1) => 5,
        (Family::B633, 2) => 8,
        (Family::B633, 3) => 12,
        (Family::B633, 4) => 25,
        (Family::B633, _) => return None,
        _ => number,
    };
    let behind_codes = over_chromates(chain, end);
    let has_letter = behind_codes != end;
    end = behind_codes;
    // `Zn 8` with a space: pieces may follow zinc as well.
    let is_sure = has_letter || chain.sign(end, &["/"]);
    (!chain.inside_a_run(end) && (family != Family::Zn || !is_apart || is_sure))
        .then(|| vec![(end, What::Zinc(um, family, has_letter))])
}

/// The place behind the codes of a chromate, a seal and a top coat: `C`, `c2C`, `AT`, `/Cn/T0`, `//Cr2//T2`.
fn over_chromates(chain: &Chain<'_>, from: usize) -> usize {
    let mut end = from;
    for _ in 0..4 {
        let marked = chain.over(chain.over(end, &["/", "-"]), &["/"]);
        let Some(word) = chain.word(marked) else { break };
        let behind = chain.after(marked);
        let figure = chain.digits(behind).filter(|figure| figure.len() == 1 && chain.inside_a_run(behind));
        let letter = |at: usize| matches!(chain.word(at), Some("a" | "b" | "c" | "d" | "e" | "f"));
        let last = match (word, figure) {
            // `c2C`, as ISO 4520 writes it; `C2` alone behind a space is a place.
            ("c", Some("1" | "2")) => {
                let third = chain.after(behind);
                let is_whole = chain.inside_a_run(third) && letter(third);
                match is_whole {
                    true => chain.after(third),
                    false if chain.inside_a_run(marked) => third,
                    false => break,
                }
            }
            ("cr" | "t", Some(_)) => chain.after(behind),
            _ if CHROMATES.contains(&word) && !matches!(word, "cr" | "t") => behind,
            _ if letter(marked) && (chain.inside_a_run(marked) || marked != end) => behind,
            _ => break,
        };
        if chain.inside_a_run(last) {
            break;
        }
        end = last;
    }
    end
}

/// `A2K`, `A3L`: zinc by the code of ISO 4042:1999, thickness by its figure; the letter for gloss and
/// chromate is not judged.
pub fn code(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at).filter(|word| *word == "a")?;
    let figure = chain.after(at);
    let letter = chain.after(figure);
    let end = chain.after(letter);
    let number: usize = chain.digits(figure).filter(|figure| figure.len() == 1)?.parse().ok()?;
    let is_letter = chain.word(letter).is_some_and(|word| {
        word.len() == 1 && word.bytes().all(|c| c.is_ascii_lowercase() && !matches!(c, b'i' | b'o' | b'q'))
    });
    if !(is_letter && chain.inside_a_run(figure) && chain.inside_a_run(letter)) || chain.inside_a_run(end) {
        return None;
    }
    // `A4L-80`: stainless steel with little carbon.
    let strength = chain.after(end);
    if chain.sign(end, &["-"])
        && chain.glued(end)
        && chain.glued(strength)
        && chain.digits(strength).is_some()
    {
        return one(chain.after(strength), What::Steel(SteelWord::OtherMetal));
    }
    let um = iso_4042::CODE_THICKNESS.get(number)?;
    one(end, What::Zinc(*um, Family::Iso4042, true))
}
