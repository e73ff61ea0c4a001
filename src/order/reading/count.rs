//! Numbers of pieces: by their unit, by the dozen, in boxes.

mod boxes;
mod spelled;
mod times;

use super::lexicon::{self, Word};
use super::number::{self, Number};
use super::token::{Chain, Sort};
use super::what::{Counted, Found, What, one};
use super::{length, size, steel};
pub(super) use boxes::IN_BOXES;
use boxes::{box_of, boxes, each_or_all, packed};
use spelled::spelled;
use times::{lots, several, times_count, times_mate, times_part, times_thread, two_counts};

/// Steels whose documents have types, or a grade with a figure behind its letters: `A325 type 3`, `DH 3`.
pub(super) const HAVE_TYPES: &[&str] =
    &["a325", "a325m", "a490", "a490m", "f436", "f1852", "f2280", "a563-c", "a563-d", "a563-dh"];

/// `1200 pcs`, `qty: 500`, `12 dozen`, `2.5K`, `500 sets`, `5 boxes of 100`.
pub fn count(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let named = lexicon::over(chain, at, Word::Quantity);
    let is_named = named != at;
    let mut from = named;
    if is_named {
        from = lexicon::over(chain, chain.over(from, &[":", "=", ".", "#"]), Word::Filler);
        from = chain.over(from, &[":", "=", "("]);
    }
    // `qty: -500`.
    if is_named && number::is_minus(chain, from) {
        let (end, text) = (chain.after(chain.after(from)), chain.digits(chain.after(from)));
        let pieces = text.and_then(|text| text.parse().ok()).filter(|_| !chain.inside_a_run(end))?;
        let end = unit(chain, end).map_or(end, |(end, ..)| end);
        return one(end, What::Count(Counted { pieces, sets: false, spaced: None, negative: true }));
    }
    if let Some(found) = behind_a_cross(chain, at) {
        return Some(found);
    }
    if let Some(found) = unit_first(chain, at).or_else(|| box_of(chain, at)) {
        return Some(found);
    }
    if is_money(chain, from) {
        return None;
    }
    let spaced = number::spaced(chain, from)
        .filter(|it| is_named || unit(chain, it.end).is_some() && !is_joined(chain, from));
    if let Some(found) = spaced.as_ref().filter(|_| !is_named).and_then(|it| beside_a_word(chain, from, it)) {
        return Some(found);
    }
    // `need 1/2-13 x 2`, `need 1-8 x 4`: the figures are those of a size.
    if is_named && size::begins_a_size(chain, from) && half(chain, from).is_none() {
        return None;
    }
    let in_words = spelled(chain, from);
    let number = spaced
        .clone()
        .or_else(|| in_words.clone())
        .or_else(|| half(chain, from))
        .or_else(|| number::decimal(chain, from))
        .or_else(|| small(chain, from))
        .or_else(|| one_hundred(chain, from))?;
    if let Some(found) = cut_short(chain, from, &number) {
        return Some(found);
    }
    if let Some(found) = count_or_not(chain, &number) {
        return found;
    }
    // `8.8 set screws`, `need 10.9 nuts`: a class.
    if steel::DOTTED.contains(&number.text.as_str()) {
        return None;
    }
    if let Some(found) = times_thread(chain, from, &number)
        .or_else(|| times_part(chain, from, &number))
        .or_else(|| times_mate(chain, &number))
        .or_else(|| times_count(chain, from, &number))
        .or_else(|| lots(chain, &number))
        .or_else(|| several(chain, from, &number, is_named))
        .or_else(|| two_counts(chain, from, &number))
        .or_else(|| by_m(chain, &number))
        .or_else(|| by_c(chain, from, &number))
    {
        return Some(found);
    }
    if let Some(found) = boxes(chain, &number) {
        return Some(found);
    }
    if let Some(found) = packed(chain, &number, number.end) {
        return Some(found);
    }
    let thousand = lexicon::over(chain, number.end, Word::Thousand);
    // `3 mil piezas`; of a coat are `3 mil` and `3 mil each`.
    let is_letter = chain.word(number.end) == Some("k");
    let touches = match is_letter {
        true => chain.glued(number.end) || unit(chain, thousand).is_some(),
        // `0.3 mil pcs`, `2 mil pcs 500`: of the coat.
        false => {
            number.whole().is_some()
                && lexicon::meaning(chain, thousand).is_some_and(|(end, word)| {
                    let is_english = chain.word(thousand).is_some_and(|word| word.starts_with("pc"));
                    matches!(word, Word::Count(1, _))
                        && (!is_english || chain.digits(chain.over(end, &[":"])).is_none())
                })
        }
    };
    // `2 mil tornillos`.
    if thousand != number.end && !is_letter && lexicon::counts_in_thousands(chain, thousand) {
        return one(thousand, What::Bare(number.whole().and_then(|it| it.checked_mul(1000))));
    }
    let is_thousand = thousand != number.end && touches && !chain.inside_a_run(thousand);
    let end = if is_thousand { thousand } else { number.end };
    let unit = unit(chain, chain.over(end, &[")", "-"])).or_else(|| unit_in_next_cell(chain, from, end));
    let is_bare = !is_named && !is_thousand && in_words.is_none();
    if unit.is_none() && (is_bare || is_named && is_of_another(chain, &number, end)) {
        return None;
    }
    let (end, times, sets) = unit.unwrap_or((end, 1, false));
    if chain.inside_a_run(end) {
        return None;
    }
    if let Some(found) = packed(chain, &number, end).or_else(|| each_or_all(chain, at, &number, end)) {
        return Some(found);
    }
    // `500 pcs a month`, `500 pcs/yr`.
    let stroke = chain.over(end, &["/"]);
    let units = [Word::Years, Word::Measure(lexicon::MONTHS)].map(|unit| lexicon::over(chain, stroke, unit));
    let per = units.into_iter().find(|it| stroke != end && *it != stroke && !chain.inside_a_run(*it));
    let time = per.unwrap_or_else(|| lexicon::over(chain, end, Word::PerTime));
    if time != end && chain.word(time) != Some("ago") {
        return one(time, What::Not(lexicon::OF_A_TIME.into()));
    }
    let times = f64::from(times) * if is_thousand { 1000.0 } else { 1.0 };
    one(end, pieces(&number, times, sets, spaced.as_ref().map(|_| from).and_then(|from| chain.digits(from))))
}

/// `need 15 years`, `need 50 µm`: a number with a unit of its own counts no pieces, whatever word stands in front.
fn is_of_another(chain: &Chain<'_>, number: &Number, at: usize) -> bool {
    let is_coat = |word| matches!(word, Word::OfCoat(_)).then_some(());
    let coat = lexicon::find(chain, at, is_coat).is_some_and(|(end, ())| !chain.inside_a_run(end));
    coat || length::unit_of_length(chain, number).is_some() || length::is_measured(chain, at)
}

/// `M16 x 60 x 100 pcs`: behind the sizes, with a unit that nothing but pieces have.
fn behind_a_cross(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let from = length::cross(chain, at).filter(|_| chain.before(at).is_some())?;
    let number = number::decimal(chain, from)?;
    let (end, times, sets) = unit(chain, number.end)?;
    let is_unit = chain.word(number.end).is_some_and(|word| word.len() > 1);
    (is_unit && !chain.inside_a_run(end)).then(|| {
        packed(chain, &number, end).or_else(|| one(end, pieces(&number, f64::from(times), sets, None)))
    })?
}

/// `half dozen`, `1/2 gross`, `1-1/2 gross`.
fn half(chain: &Chain<'_>, at: usize) -> Option<Number> {
    let many = |word| matches!(word, Word::Count(2.., _)).then_some(());
    let mixed = number::mixed(chain, at).filter(|number| lexicon::find(chain, number.end, many).is_some());
    if let Some(number) = mixed {
        let text = number.value.to_string();
        return Some(Number { text, is_fraction: false, ..number });
    }
    let end = match chain.word(at) {
        Some("half") => chain.after(at),
        _ => number::fraction(chain, at).filter(|number| number.text == "1/2")?.end,
    };
    let end = if chain.word(end) == Some("a") { chain.after(end) } else { end };
    let counted = lexicon::find(chain, end, |word| match word {
        Word::Count(12 | 144, _) => Some(()),
        _ => None,
    });
    let text = "0.5".to_owned();
    counted.map(|_| Number { value: 0.5, text, grouped: None, is_fraction: false, end })
}

/// Whether a mark joins the figures to what stands before them: `B695-55 500 pcs`, `DIN 267-10 500 pcs`.
fn is_joined(chain: &Chain<'_>, at: usize) -> bool {
    let before = at.checked_sub(1).and_then(|before| chain.tokens().get(before));
    before.zip(chain.tokens().get(at)).is_some_and(|(before, own)| {
        before.end() == own.start && matches!(before.text, "-" | "." | "/" | "#" | "=")
    })
}

/// `RFQ 12 500 pcs`, of a word that nobody knows: its number, or figures grouped by a space.
fn beside_a_word(chain: &Chain<'_>, at: usize, grouped: &Number) -> Option<Found> {
    let before = at.checked_sub(1).and_then(|before| chain.tokens().get(before))?;
    // `b 60 100 pcs`: a letter may be that of a measure.
    let is_letter = before.lower.len() == 1 && !matches!(before.lower.as_str(), "x" | "m" | "a" | "u");
    let is_unknown = before.sort == Sort::Word && (is_letter || !ends_a_phrase(chain, at));
    let (first, pieces) = (chain.digits(at)?, &grouped.text);
    let rest = pieces.strip_prefix(first)?;
    let (end, ..) = unit(chain, grouped.end)?;
    let why = format!(
        "it could be {pieces} pieces, or “{} {first}” and {rest} pieces: write {pieces} pcs or put a comma between",
        before.text
    );
    is_unknown.then(|| vec![(end, What::Not(why.into()))])
}

/// Whether what stands in front of a place means something here.
fn ends_a_phrase(chain: &Chain<'_>, at: usize) -> bool {
    let mut place = chain.before(at);
    for _ in 0..4 {
        let Some(begin) = place else { break };
        let ends = lexicon::find(chain, begin, |_| Some(())).is_some_and(|(end, ())| end == at);
        if ends || chain.word(begin).is_some_and(|word| word == "m" || word == "x") {
            return true;
        }
        place = chain.before(begin);
    }
    false
}

/// `25M`, `5M pcs`: thousands to some, millions to others.
fn by_m(chain: &Chain<'_>, number: &Number) -> Option<Found> {
    chain.get(number.end).filter(|token| token.text == "M")?;
    let end = chain.after(number.end);
    // `5 M 1/2-13`, and no `5 M16`.
    if !chain.glued(number.end) && number::fraction(chain, end).is_none() {
        return None;
    }
    let alone = !chain.inside_a_run(end) && number.grouped.is_none();
    let (thousands, millions) = (number.value * 1e3, number.value * 1e6);
    let why = format!("it could be {thousands} or {millions} pieces: write the number in full");
    alone.then(|| vec![(unit(chain, end).map_or(end, |(end, ..)| end), What::Not(why.into()))])
}

/// `3 C 1/2-13 hex bolts`: hundreds, at the head of a line.
fn by_c(chain: &Chain<'_>, from: usize, number: &Number) -> Option<Found> {
    chain.get(number.end).filter(|token| token.text == "C" && chain.before(from).is_none())?;
    let end = chain.after(number.end);
    let counts = |word| matches!(word, Word::Part(_)).then_some(());
    let is_count = number::fraction(chain, end).is_some()
        || chain.sign(end, &["#"])
        || lexicon::find(chain, end, counts).is_some();
    let pieces = number.value * 100.0;
    let why = format!("it could be {pieces} pieces, by the hundred: write the number in full");
    (is_count && number.grouped.is_none() && !chain.inside_a_run(end))
        .then(|| vec![(end, What::Not(why.into()))])
}

/// The number of pieces; what is no whole number of them, or could be two, is not used.
fn pieces(number: &Number, times: f64, sets: bool, first: Option<&str>) -> What {
    let whole = |value: f64| (value.fract() == 0.0 && (0.0..1e12).contains(&value)).then_some(value as u64);
    let readings = match number.grouped {
        // Nobody writes so many noughts behind a point to count pieces.
        Some(grouped) if times == 1.0 => [whole(grouped), None],
        Some(grouped) => [whole(number.value * times), whole(grouped * times)],
        None => [whole(number.value * times), None],
    };
    match readings {
        [Some(one), Some(other)] if one != other => {
            What::Not(format!("it could be {one} or {other} pieces: write it without the mark").into())
        }
        [Some(pieces), _] | [None, Some(pieces)] => {
            let first: Option<u32> = first.and_then(|first| first.parse().ok());
            let rest = |first: u32| pieces % 10_u64.pow(first_group_shift(pieces, first));
            What::Count(Counted {
                pieces,
                sets,
                spaced: first.map(|first| (first, rest(first))),
                negative: false,
            })
        }
        [None, None] => What::Not("pieces are counted in whole numbers".into()),
    }
}

/// `…|100|PC|…`: the unit in the cell behind that of the number.
fn unit_in_next_cell(chain: &Chain<'_>, from: usize, at: usize) -> Option<(usize, u32, bool)> {
    let is_break = |at: usize| chain.get(at).is_none_or(|token| token.sort == Sort::Break);
    let is_cell = chain.before(from).is_none_or(is_break) && at < chain.tokens().len() && is_break(at);
    let cell = chain.after(at);
    let (end, times, sets) = unit(chain, cell).filter(|_| is_cell && chain.word(cell).is_some())?;
    is_break(end).then_some((end, times, sets))
}

/// How many figures stand behind the first group.
fn first_group_shift(pieces: u64, first: u32) -> u32 {
    let digits = |number: u64| number.checked_ilog10().unwrap_or(0) + 1;
    digits(pieces).saturating_sub(digits(u64::from(first)))
}

/// The unit of a count: the place behind it, how many pieces, and whether they are sets.
pub(super) fn unit(chain: &Chain<'_>, at: usize) -> Option<(usize, u32, bool)> {
    // `40 each end` counts nothing of the order.
    if lexicon::find(chain, at, |word| (word == Word::Ends).then_some(())).is_some()
        || length::is_list(chain, at)
    {
        return None;
    }
    let found = lexicon::find(chain, at, |word| match word {
        Word::Count(times, sets) => Some((times, sets)),
        Word::Each => Some((1, false)),
        Word::Set => Some((1, true)),
        _ => None,
    });
    let end = chain.after(at);
    let is_no = matches!(chain.word(at), Some("no" | "nr")) && !is_negation(chain, at);
    let (mut end, (mut times, mut sets)) = found.or(is_no.then_some((end, (1, false))))?;
    // `10 hundred pcs`, `5 dozen sets`.
    if times > 1
        && let Some((behind, (1, is_sets))) = lexicon::find(chain, end, |word| match word {
            Word::Count(times, sets) => Some((times, sets)),
            _ => None,
        })
    {
        (end, sets) = (behind, is_sets);
    }
    times = times.max(1);
    Some((end, times, sets))
}

/// Whether the word `no` behind a number says that what follows is not wanted, `500 no HDG`, or may say so:
/// `500 no nuts`; `40 no`, `1,000 nr.`, `40 no hex bolts`, `2 no nuts` and `with 60 no nuts` count.
fn is_negation(chain: &Chain<'_>, at: usize) -> bool {
    let end = chain.after(at);
    if chain.sign(end, &["."]) && chain.glued(end) {
        return false;
    }
    let is_wanted = |word| match word {
        Word::Part(_) => Some(true),
        Word::Process(_) | Word::Tinted(_) | Word::Not(_) | Word::Steel(_) => Some(false),
        _ => None,
    };
    match lexicon::find(chain, end, is_wanted) {
        Some((_, true)) => {
            mate(chain, end).is_some()
                && !is_first_number(chain, at)
                && !chain.before(at).is_some_and(|number| counts_mates(chain, number))
        }
        Some((_, false)) => true,
        None => false,
    }
}

/// The place behind a nut or a washer.
fn mate(chain: &Chain<'_>, at: usize) -> Option<usize> {
    let mate = |word| match word {
        Word::Part(noun) => ["nut", "washer"].iter().any(|mate| noun.ends_with(mate)).then_some(()),
        _ => None,
    };
    lexicon::find(chain, at, mate).map(|(end, ())| end)
}

/// Whether a number counts the nuts or washers behind it: a few of them, or with what joins them to a bolt in front.
fn counts_mates(chain: &Chain<'_>, number: usize) -> bool {
    let is_few =
        chain.digits(number).and_then(|digits| digits.parse::<u32>().ok()).is_some_and(|few| few <= 12);
    let joins = |at| {
        let word = |word| matches!(word, Word::With | Word::And | Word::Each).then_some(());
        chain.sign(at, &["&", "+", ","]) || lexicon::find(chain, at, word).is_some()
    };
    is_few || chain.before(number).is_some_and(joins)
}

/// Whether nothing but a number stands in front of a place.
fn is_first_number(chain: &Chain<'_>, at: usize) -> bool {
    let mut place = chain.before(at);
    while let Some(before) = place {
        let token = chain.get(before);
        if !token.is_some_and(|token| token.sort == Sort::Digits || matches!(token.text, "," | "." | "'")) {
            return false;
        }
        place = chain.before(before);
    }
    true
}

/// `500 no HDG`: pieces of what is hot-dipped, or pieces of what is not; a class is never a count.
fn count_or_not(chain: &Chain<'_>, number: &Number) -> Option<Option<Found>> {
    chain.word(number.end).filter(|word| *word == "no")?;
    // `8.8 no. 4`, `8.8 no HDG`.
    if number.whole().is_none() && number.grouped.is_none() {
        return Some(None);
    }
    if !is_negation(chain, number.end) {
        return None;
    }
    let behind = chain.after(number.end);
    let coat = lexicon::find(chain, behind, |word| matches!(word, Word::Process(_)).then_some(()));
    let of = if coat.is_some() { "of this coat" } else { "of them" };
    let end = coat.map(|(end, ())| end).or_else(|| mate(chain, behind));
    let (Some(pieces), Some(end)) = (number.whole().filter(|pieces| *pieces > 12), end) else {
        return Some(None);
    };
    let why = format!("{pieces} pieces {of}, or pieces without: write {pieces} pcs, or “without”");
    Some(one(end, What::Not(why.into())))
}

/// `hundred pcs`, `a dozen` without its article.
fn one_hundred(chain: &Chain<'_>, at: usize) -> Option<Number> {
    lexicon::find(chain, at, |word| matches!(word, Word::Count(12 | 100 | 1000, false)).then_some(()))?;
    let per = chain.before(at).is_some_and(|before| {
        chain.digits(before).is_some() || chain.word(before).is_some_and(|word| lexicon::PER.contains(&word))
    });
    // `dozen of`.
    let of = lexicon::over(chain, chain.after(at), Word::Filler);
    let counted =
        lexicon::find(chain, of, |word| matches!(word, Word::Count(1, _) | Word::Part(_)).then_some(()));
    // `dozen M16x60 8.8 bolts`: at the head of the line.
    let is_first = || {
        chain.before(at).is_none() && (chain.word(of) == Some("m") || number::fraction(chain, of).is_some())
    };
    (!per && (counted.is_some() || is_first())).then(|| Number {
        value: 1.0,
        text: "1".to_owned(),
        grouped: None,
        is_fraction: false,
        end: at,
    })
}

/// `pcs: 500`, `Stk.: 500`.
fn unit_first(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (end, sets) = lexicon::find(chain, at, |word| match word {
        Word::Count(1, sets) => Some(sets),
        _ => None,
    })?;
    let end = if chain.sign(chain.after(end), &[":", "="]) { chain.over(end, &["."]) } else { end };
    let marked = chain.over(end, &[":", "="]);
    let number = number::spaced(chain, marked).or_else(|| number::decimal(chain, marked))?;
    let is_alone = !chain.inside_a_run(number.end)
        && !chain.sign(number.end, &["/", "-", "\"", "×", "°", "%"])
        && chain.get(number.end).is_none_or(|next| next.sort != Sort::Word);
    (marked != end && is_alone).then(|| vec![(number.end, pieces(&number, 1.0, sets, None))])
}

/// `two fifty pcs`, `two and a half thousand pcs`: a number in words of which the beginning is not read.
fn cut_short(chain: &Chain<'_>, at: usize, number: &Number) -> Option<Found> {
    let before = chain.before(at).filter(|_| chain.digits(at).is_none())?;
    let (end, ..) = unit(chain, number.end).filter(|(end, ..)| !chain.inside_a_run(*end))?;
    let over = |at: usize, words: &[&str]| match chain.word(at).filter(|word| words.contains(word)) {
        Some(_) => chain.before(at),
        None => Some(at),
    };
    let is_number = |at: usize| {
        let small =
            lexicon::small(chain, at).is_some_and(|(end, _)| end > at) && !lexicon::is_article(chain, at);
        small || chain.digits(at).is_some()
    };
    // Words that are not known by themselves may stand between.
    let has_half = (before..end).any(|at| chain.tokens().get(at).is_some_and(|token| token.lower == "half"));
    let is_cut = match has_half {
        true if number.value.fract() == 0.0 => true,
        true => over(before, &["a"])
            .filter(|at| chain.word(*at) == Some("and"))
            .is_some_and(|and| chain.before(and).is_some_and(is_number)),
        false => chain.digits(before).is_none() && is_number(before),
    };
    is_cut.then(|| {
        one(end, What::Not("a number in words that is not known here: write it in figures".into()))
    })?
}

fn small(chain: &Chain<'_>, at: usize) -> Option<Number> {
    let (end, number) = lexicon::small(chain, at)?;
    // `a` stands in front of a dozen, and never of a piece.
    let is_article = chain.word(at) == Some("a");
    let counted = lexicon::find(chain, end, |word| match word {
        Word::Count(times, _) => Some(times > 1 || !is_article),
        Word::Box => Some(!is_article),
        _ => None,
    });
    counted.filter(|(_, counts)| *counts).map(|_| Number {
        value: f64::from(number),
        text: number.to_string(),
        grouped: None,
        is_fraction: false,
        end,
    })
}

/// The signs of money.
pub(super) const MONEY: &[&str] = &["$", "€", "£", "¥"];

/// Whether the number at a place is a price: behind a sign; behind a word with no unit of its own.
pub(super) fn is_money(chain: &Chain<'_>, at: usize) -> bool {
    let has_unit = number::decimal(chain, at).is_some_and(|number| unit(chain, number.end).is_some());
    chain.before(at).is_some_and(|before| {
        chain.sign(before, MONEY)
            || lexicon::find(chain, before, |word| (word == Word::Money).then_some(())).is_some() && !has_unit
    })
}
