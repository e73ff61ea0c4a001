//! Numbers with what they count or measure: pieces, years, hardness, temperature.

use super::lexicon::{self, Word};
use super::number::{self, Number};
use super::token::{Chain, Sort};
use super::what::{Counted, Found, What, one};
use super::{size, steel};
use crate::quantity::{Length, Mass};

/// `1200 pcs`, `qty: 500`, `12 dozen`, `2.5K`, `500 sets`, `5 boxes of 100`.
pub fn count(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let named = lexicon::over(chain, at, Word::Quantity);
    let is_named = named != at;
    let mut from = named;
    if is_named {
        from = lexicon::over(chain, chain.over(from, &[":", "=", ".", "#"]), Word::Filler);
        from = chain.over(from, &[":", "="]);
    }
    // `qty: -500`.
    if is_named && is_minus(chain, from) {
        let (end, text) = (chain.after(chain.after(from)), chain.digits(chain.after(from)));
        let pieces = text.and_then(|text| text.parse().ok()).filter(|_| !chain.inside_a_run(end))?;
        let end = unit(chain, end).map_or(end, |(end, ..)| end);
        return one(end, What::Count(Counted { pieces, sets: false, spaced: None, negative: true }));
    }
    if let Some(found) = unit_first(chain, at) {
        return Some(found);
    }
    if is_money(chain, from) {
        return None;
    }
    let spaced = number::spaced(chain, from).filter(|it| is_named || unit(chain, it.end).is_some());
    let number = spaced
        .clone()
        .or_else(|| number::decimal(chain, from))
        .or_else(|| small(chain, from))
        .or_else(|| half(chain, from))
        .or_else(|| one_hundred(chain, from))?;
    if let Some(found) = count_or_not(chain, &number) {
        return found;
    }
    if let Some(found) = times_thread(chain, from, &number).or_else(|| by_m(chain, &number)) {
        return Some(found);
    }
    if let Some(found) = boxes(chain, &number) {
        return Some(found);
    }
    if let Some(found) = packed(chain, &number, number.end) {
        return Some(found);
    }
    let thousand = lexicon::over(chain, number.end, Word::Thousand);
    let is_thousand = thousand != number.end && chain.glued(number.end) && !chain.inside_a_run(thousand);
    let end = if is_thousand { thousand } else { number.end };
    let unit = unit(chain, chain.over(end, &[")", "-"]));
    if !is_named && !is_thousand && unit.is_none() {
        return None;
    }
    let (end, times, sets) = unit.unwrap_or((end, 1, false));
    if chain.inside_a_run(end) {
        return None;
    }
    if let Some(found) = packed(chain, &number, end) {
        return Some(found);
    }
    let times = f64::from(times) * if is_thousand { 1000.0 } else { 1.0 };
    one(end, pieces(&number, times, sets, spaced.as_ref().map(|_| from).and_then(|from| chain.digits(from))))
}

/// `100 pcs/box` is how they are packed; `100 pc box x 20` are 2000.
fn packed(chain: &Chain<'_>, contents: &Number, end: usize) -> Option<Found> {
    let per = lexicon::over(chain, chain.over(end, &["/"]), Word::Filler);
    let end = lexicon::over(chain, per, Word::Box);
    if end == per {
        return None;
    }
    let cross = lexicon::over(chain, chain.over(end, &["×", "*"]), Word::Times);
    let boxes = number::decimal(chain, cross).filter(|_| cross != end);
    match (contents.whole(), boxes.and_then(|boxes| Some((boxes.end, boxes.whole()?)))) {
        (Some(each), Some((end, boxes))) => one(
            end,
            What::Count(Counted {
                pieces: boxes.saturating_mul(each),
                sets: false,
                spaced: None,
                negative: false,
            }),
        ),
        _ => one(end, What::Not("how they are packed is not judged: write the pieces in all".into())),
    }
}

/// `half dozen`, `1/2 gross`.
fn half(chain: &Chain<'_>, at: usize) -> Option<Number> {
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

/// `500x M12x40`, `500 x 1/2-13 x 2`: pieces of what has a thread of its own behind the cross.
fn times_thread(chain: &Chain<'_>, at: usize, number: &Number) -> Option<Found> {
    let cross = lexicon::over(chain, chain.over(number.end, &["×", "*"]), Word::Times);
    if cross == number.end || number.whole().is_none() || chain.inside_a_run(at) {
        return None;
    }
    let has_length = |found: &Found| matches!(found.as_slice(), [(_, What::Thread(_)), _, ..]);
    let is_thread = size::metric(chain, cross).is_some()
        || size::unified(chain, cross).is_some_and(|found| has_length(&found) && number.value > 4.0);
    is_thread.then(|| vec![(cross, pieces(number, 1.0, false, None))])
}

/// `25M`, `5M pcs`: thousands to some, millions to others.
fn by_m(chain: &Chain<'_>, number: &Number) -> Option<Found> {
    chain.get(number.end).filter(|token| token.text == "M" && chain.glued(number.end))?;
    let end = chain.after(number.end);
    let alone = !chain.inside_a_run(end) && number.grouped.is_none();
    let (thousands, millions) = (number.value * 1e3, number.value * 1e6);
    let why = format!("it could be {thousands} or {millions} pieces: write the number in full");
    alone.then(|| vec![(unit(chain, end).map_or(end, |(end, ..)| end), What::Not(why.into()))])
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

/// How many figures stand behind the first group.
fn first_group_shift(pieces: u64, first: u32) -> u32 {
    let digits = |number: u64| number.checked_ilog10().unwrap_or(0) + 1;
    digits(pieces).saturating_sub(digits(u64::from(first)))
}

/// The unit of a count: the place behind it, how many pieces, and whether they are sets.
fn unit(chain: &Chain<'_>, at: usize) -> Option<(usize, u32, bool)> {
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

/// Whether the word `no` behind a number says that what follows is not wanted: `500 no nuts` are bolts
/// without; `40 no`, `1,000 nr.`, `500 no. hex bolts` and, at the head of a line, `40 no hex bolts` count.
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
        Some((_, true)) => !is_first_number(chain, at),
        Some((_, false)) => true,
        None => false,
    }
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
    let (Some(pieces), Some((end, ()))) = (number.whole().filter(|pieces| *pieces > 12), coat) else {
        return Some(None);
    };
    let why = format!("{pieces} pieces of this coat, or pieces without it: write {pieces} pcs, or “not”");
    Some(one(end, What::Not(why.into())))
}

/// `hundred pcs`, `a dozen` without its article.
fn one_hundred(chain: &Chain<'_>, at: usize) -> Option<Number> {
    lexicon::find(chain, at, |word| matches!(word, Word::Count(12 | 100 | 1000, false)).then_some(()))?;
    let per = chain.before(at).is_some_and(|before| {
        chain.digits(before).is_some() || matches!(chain.word(before), Some("per" | "pro" | "je"))
    });
    let counted = lexicon::find(chain, chain.after(at), |word| {
        matches!(word, Word::Count(1, _) | Word::Part(_)).then_some(())
    });
    (!per && counted.is_some()).then(|| Number {
        value: 1.0,
        text: "1".to_owned(),
        grouped: None,
        is_fraction: false,
        end: at,
    })
}

/// `pcs: 500`, `Stk. 500`.
fn unit_first(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (end, sets) = lexicon::find(chain, at, |word| match word {
        Word::Count(1, sets) => Some(sets),
        _ => None,
    })?;
    let marked = chain.over(end, &[":", "="]);
    let number = number::spaced(chain, marked).or_else(|| number::decimal(chain, marked))?;
    let is_alone = !chain.inside_a_run(number.end)
        && !chain.sign(number.end, &["/", "-", "\"", "×", "°", "%"])
        && chain.get(number.end).is_none_or(|next| next.sort != Sort::Word);
    (marked != end && is_alone).then(|| vec![(number.end, pieces(&number, 1.0, sets, None))])
}

fn small(chain: &Chain<'_>, at: usize) -> Option<Number> {
    let (end, number) = lexicon::find(chain, at, |word| match word {
        Word::Small(number) => Some(number),
        _ => None,
    })?;
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

/// `5 boxes of 100 pcs` are 500; boxes of nobody knows how many are not counted.
fn boxes(chain: &Chain<'_>, boxes: &Number) -> Option<Found> {
    let end = lexicon::over(chain, boxes.end, Word::Box);
    if end == boxes.end {
        return None;
    }
    let each = lexicon::over(chain, chain.over(end, &["@", "à", "x", "(", "/", "-"]), Word::Filler);
    let contents = number::decimal(chain, lexicon::over(chain, each, Word::Times)).filter(|_| each != end);
    match (boxes.whole(), contents.as_ref().and_then(|each| Some((each.end, each.whole()?)))) {
        (Some(boxes), Some((behind, each))) => {
            let end = unit(chain, behind).map_or(behind, |(end, ..)| end);
            one(
                end,
                What::Count(Counted {
                    pieces: boxes.saturating_mul(each),
                    sets: false,
                    spaced: None,
                    negative: false,
                }),
            )
        }
        _ => one(end, What::Not("how many pieces go into one is not said".into())),
    }
}

const MONEY: &[&str] = &["$", "€", "£", "¥"];

fn is_money(chain: &Chain<'_>, at: usize) -> bool {
    chain.before(at).is_some_and(|before| {
        chain.sign(before, MONEY)
            || lexicon::find(chain, before, |word| (word == Word::Money).then_some(())).is_some()
    })
}

/// `$1.20/ea`, `12 EUR`.
pub fn money(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let marked = chain.over(at, MONEY);
    let named = lexicon::over(chain, marked, Word::Money);
    let number = number::decimal(chain, named);
    let behind = number.as_ref().map(|number| {
        let sign = chain.over(number.end, MONEY);
        // A sign that touches the next number is that number's.
        let end = if chain.digits(sign).is_some() && chain.glued(sign) { number.end } else { sign };
        (end, lexicon::over(chain, end, Word::Money))
    });
    let (mut end, is_money) = match (number, behind) {
        (Some(number), Some((_, end))) => (end, named != at || end != number.end),
        _ => (named, named != at),
    };
    let stroke = chain.over(end, &["/"]);
    if let Some((behind, ..)) = unit(chain, stroke).filter(|_| is_money && stroke != end) {
        end = behind;
    }
    let price = is_money.then_some(end).or_else(|| {
        // `5.00/ea`.
        let number = number::decimal(chain, at)?;
        let stroke = chain.over(number.end, &["/"]);
        unit(chain, stroke).filter(|_| stroke != number.end).map(|(end, ..)| end)
    });
    price.and_then(|end| one(end, What::Not("a price is not judged".into())))
}

/// `25 years`, `12,5 Jahre`, `10-year`.
pub fn years(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let from = lexicon::over(chain, at, Word::Least);
    let number = number::decimal(chain, from).or_else(|| in_words(chain, from))?;
    let unit = |end: usize| {
        let end = chain.over(end, &["-", "+"]);
        lexicon::find(chain, end, |word| (word == Word::Years).then_some(()))
            .map(|(end, ())| end)
            .filter(|end| !chain.inside_a_run(*end))
    };
    if let Some(end) = unit(number.end) {
        return match number.two_meanings() {
            Some((one_way, other)) => one(
                end,
                What::Not(
                    format!("it could be {one_way} or {other} years: write it without the mark").into(),
                ),
            ),
            None => one(end, What::Years(format!("{} years", number.text))),
        };
    }
    let to = lexicon::over(chain, chain.over(number.end, &["-", "–"]), Word::Filler);
    let other = number::decimal(chain, to).filter(|_| to != number.end)?;
    let end = unit(other.end)?;
    one(end, What::Not("two numbers of years: write the one that is wanted".into()))
}

/// `twelve`, `twenty-five`; `a` and `one` are articles.
fn in_words(chain: &Chain<'_>, at: usize) -> Option<Number> {
    let (end, number) = lexicon::find(chain, at, |word| match word {
        Word::Small(number) if number > 1 => Some(number),
        _ => None,
    })?;
    let (value, text) = (f64::from(number), number.to_string());
    Some(Number { value, text, grouped: None, is_fraction: false, end })
}

/// `36 HRC`, `HRC 33-39`, `200HV`: of a range, the hardest end.
pub fn hardness(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let least = lexicon::over(chain, at, Word::Least);
    let scale = |at: usize| {
        lexicon::find(chain, at, |word| match word {
            Word::Scale(scale) => Some(scale),
            _ => None,
        })
    };
    let (end, scale, (softest, hardest)) = match scale(least) {
        Some((behind, name)) => {
            let (end, ends) = range(chain, chain.over(behind, &[":", "=", "-"]))?;
            (end, name, ends)
        }
        None => {
            let (behind, ends) = range(chain, least)?;
            let (end, name) = scale(chain.over(behind, &["-"]))?;
            (end, name, ends)
        }
    };
    // `10.9 HV`, `HV 10`: the mark of a preloaded assembly.
    if chain.inside_a_run(end) || scale == "HV" && OF_HV.contains(&hardest) {
        return None;
    }
    let range = softest.map(|softest| format!("{softest} to {hardest} {scale}"));
    one(
        end,
        match scale {
            _ if least != at => What::Not("the greatest hardness decides, not the least: write that".into()),
            _ => What::Hardness(format!("{hardest} {scale}"), range),
        },
    )
}

/// Classes of EN 14399-4: beside HV they are no hardness.
const OF_HV: [f64; 2] = [10.0, 10.9];

/// Whether a sign is a minus. A dash behind a letter or a figure, or with a space behind it, joins two
/// pieces.
fn is_minus(chain: &Chain<'_>, at: usize) -> bool {
    chain.sign(at, &["-", "−"]) && !chain.glued(at) && chain.glued(chain.after(at))
}

/// `-300 HV`, `−5 years`, `-500 pcs`: the sign stays with its number, and the field says what is wrong
/// with it.
pub fn negative(chain: &Chain<'_>, at: usize) -> Option<Found> {
    if !is_minus(chain, at) {
        return None;
    }
    let number = chain.after(at);
    let mut found = [hardness, years, temperature, count].into_iter().find_map(|rule| rule(chain, number))?;
    for (_, what) in &mut found {
        match what {
            What::Hardness(text, _) | What::Years(text) | What::Temperature(text) => text.insert(0, '-'),
            What::Count(counted) => counted.negative = true,
            _ => {}
        }
    }
    Some(found)
}

/// A number, or the lesser and the greater of two.
fn range(chain: &Chain<'_>, at: usize) -> Option<(usize, (Option<f64>, f64))> {
    let number = number::decimal(chain, at).filter(|number| number.grouped.is_none())?;
    let to = chain.over(number.end, &["-", "–", "~", "/", "…"]);
    let to = if to == number.end { lexicon::over(chain, to, Word::Filler) } else { to };
    match number::decimal(chain, to).filter(|_| to != number.end) {
        Some(other) if other.value > number.value => Some((other.end, (Some(number.value), other.value))),
        _ => Some((number.end, (None, number.value))),
    }
}

/// `500 °C`, `860F`.
pub fn temperature(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let number = number::decimal(chain, at).filter(|number| number.grouped.is_none())?;
    let degree = chain.over(number.end, &["°", "º"]);
    let (end, unit) = lexicon::find(chain, degree, |word| match word {
        Word::Degrees(unit) => Some(unit),
        _ => None,
    })?;
    let sure = degree != number.end || number.value >= 100.0;
    (sure && !chain.inside_a_run(end))
        .then(|| vec![(end, What::Temperature(format!("{} {unit}", number.text)))])
}

/// `tapped over by .020 in`, `oversize +0.4 mm`.
pub fn allowance(chain: &Chain<'_>, at: usize) -> Option<Found> {
    if let Some(found) = tapped_between(chain, at) {
        return Some(found);
    }
    let mut from = lexicon::over(chain, at, Word::Overtapped);
    if from == at {
        // `.020 OT`, `.022 in oversize`.
        let (end, text) = room(chain, at).filter(|_| !chain.inside_a_run(at))?;
        let behind = lexicon::over(chain, end, Word::Overtapped);
        return (behind != end && !chain.inside_a_run(behind)).then(|| vec![(behind, What::Allowance(text))]);
    }
    from = chain
        .over(lexicon::over(chain, lexicon::over(chain, from, Word::Times), Word::Filler), &["+", ":", "="]);
    let (end, text) = room(chain, from)?;
    one(end, What::Allowance(text))
}

/// `tapped .022 oversize`.
fn tapped_between(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at).filter(|word| matches!(*word, "tapped" | "tap"))?;
    let (end, text) = room(chain, chain.over(chain.after(at), &["+"]))?;
    let behind = lexicon::over(chain, end, Word::Overtapped);
    (behind != end).then(|| vec![(behind, What::Allowance(text))])
}

/// A length that may be an allowance: small numbers without a unit are inches.
fn room(chain: &Chain<'_>, from: usize) -> Option<(usize, String)> {
    let number =
        number::number(chain, from).filter(|number| number.grouped.is_none_or(|_| number.value < 1.0))?;
    let unit = lexicon::find(chain, number.end, |word| match word {
        Word::Length(unit) => Some(unit),
        Word::Micrometre => Some("µm"),
        Word::Mil => Some("mil"),
        _ => None,
    });
    let mark = chain.over(number.end, &["\"", "″"]);
    let (end, unit) = match unit {
        Some(unit) => unit,
        None if mark != number.end || number.value < 0.1 => (mark, "in"),
        None => return None,
    };
    Some((end, format!("{} {unit}", number.text)))
}

/// A coat by its thickness: `12 µm`, `0.3 mil`.
pub fn thickness(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let number = number::decimal(chain, at).filter(|number| number.grouped.is_none())?;
    let unit = lexicon::find(chain, number.end, |word| match word {
        Word::Micrometre => Some(Length::from_um(1.0)),
        Word::Mil => Some(Length::from_inch(0.001)),
        _ => None,
    });
    let (end, unit) = unit.filter(|(end, _)| !chain.inside_a_run(*end))?;
    one(end, What::Thickness(number.value * unit))
}

/// A number with a unit that no field takes: `120 lb`.
pub fn other(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let number = number::spaced(chain, at).filter(|number| measured(chain, number.end).is_some());
    let number = number.or_else(|| number::number(chain, at))?;
    let (mut end, why) = measured(chain, number.end)?;
    // `10.9 HR` is a class beside a bolt of the system HR, and no time.
    if steel::DOTTED.contains(&number.text.as_str()) && matches!(chain.word(number.end), Some("hr" | "h")) {
        return None;
    }
    // `g/m2`, `g/m²`.
    let square = chain.over(end, &["²"]);
    end = if chain.glued(end) && chain.digits(end) == Some("2") { chain.after(end) } else { square };
    if chain.inside_a_run(end) {
        return None;
    }
    let why = match number.two_meanings() {
        Some((one_way, other)) => format!("it could be {one_way} or {other}; {why}").into(),
        None => why.into(),
    };
    one(end, What::Not(why))
}

fn measured(chain: &Chain<'_>, at: usize) -> Option<(usize, &'static str)> {
    if chain.sign(at, &["%", "#"]) && chain.glued(at) {
        return Some((chain.after(at), "not judged"));
    }
    lexicon::find(chain, chain.over(at, &["-"]), |word| match word {
        Word::Measure(why) => Some(why),
        _ => None,
    })
}

/// `PO 4711`, `item 10`: a number that marks the order.
pub fn label(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let label = |at: usize| {
        lexicon::find(chain, at, |word| match word {
            Word::Label(why) => Some(why),
            _ => None,
        })
    };
    let marks: &[&str] = &["#", ":", ".", "-"];
    let (named, why) = label(at)?;
    let named = chain.over(named, marks);
    let named = label(named).map_or(named, |(end, _)| end);
    // `item no. 4`: the number of the item.
    let named = match chain.word(named) {
        Some("no" | "number" | "nummer") => chain.after(named),
        _ => named,
    };
    let id = chain.over(named, marks);
    chain.digits(id)?;
    // `order 500 pcs` has no number of its own.
    let counted = count(chain, id);
    let is_count =
        matches!(counted.as_deref(), Some([(_, What::Count(counted))]) if counted.spaced.is_none());
    if is_count || number::number(chain, id).is_some_and(|number| number.is_fraction) {
        return None;
    }
    let mut end = chain.after(id);
    for _ in 0..12 {
        let joined = chain.glued(end)
            && chain
                .get(end)
                .is_some_and(|token| token.is_alphanumeric() || matches!(token.text, "-" | "/" | "." | "_"));
        if !joined {
            break;
        }
        end = chain.after(end);
    }
    one(end, What::Not(why.into()))
}

/// `price per 100`, `per 1000 pcs`: how many the price is for counts no order.
pub fn price(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let named = lexicon::over(chain, at, Word::Price);
    let number = number::decimal(chain, chain.over(named, &[":", "="])).filter(|_| named != at)?;
    let end = unit(chain, number.end).map_or(number.end, |(end, ..)| end);
    (!chain.inside_a_run(end)).then(|| vec![(end, What::Not("a price is not judged".into()))])
}

/// `250 kg`, `500 lbs`: the lot, weighed.
pub fn weight(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let spaced = number::spaced(chain, at).filter(|number| mass(chain, number.end).is_some());
    let number = spaced.map_or_else(|| number::number(chain, at), Some)?;
    let (end, name) = mass(chain, number.end)?;
    if chain.inside_a_run(end) || name == "t" && steel::DOTTED.contains(&number.text.as_str()) {
        return None;
    }
    if let Some((one_way, other)) = number.two_meanings() {
        let why = format!("it could be {one_way} or {other} {name}: write it without the mark");
        return one(end, What::Not(why.into()));
    }
    let mass = match name {
        "lb" => Mass::from_lb(number.value),
        "t" => Mass::from_kg(number.value * 1000.0),
        _ => Mass::from_kg(number.value),
    };
    one(end, What::Weight(format!("{} {name}", number.text), mass))
}

fn mass(chain: &Chain<'_>, at: usize) -> Option<(usize, &'static str)> {
    lexicon::find(chain, at, |word| match word {
        Word::Mass(name) => Some(name),
        _ => None,
    })
}

/// `type 1`, `type III`.
pub fn type_of(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let from = lexicon::over(chain, at, Word::Type);
    let kind = chain.get(from).filter(|token| from != at && token.is_alphanumeric())?;
    let end = chain.after(from);
    let is_number =
        matches!(kind.lower.as_str(), "1" | "2" | "3" | "4" | "i" | "ii" | "iii" | "iv" | "v" | "vi");
    let what = match kind.lower.as_str() {
        "1" | "i" => What::Filler,
        _ => What::Not(steel::OTHER_TYPE.into()),
    };
    (is_number && !chain.inside_a_run(end)).then(|| vec![(end, what)])
}

/// `5,000`: figures grouped by three that stand alone count by the piece; nobody writes so many noughts
/// behind a mark, but `1,234` may be a measure.
fn grouped(number: &Number) -> Option<u64> {
    let grouped = number.grouped.filter(|grouped| grouped % 10.0 == 0.0)?;
    (0.0..1e12).contains(&grouped).then_some(grouped as u64)
}

/// A number by itself.
pub fn bare(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let number = number::number(chain, at)?;
    (!chain.inside_a_run(number.end) && !chain.inside_a_run(at))
        .then(|| vec![(number.end, What::Bare(number.whole().or(grouped(&number))))])
}
