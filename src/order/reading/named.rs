//! Measures whose word says what they are: a diameter, a length, a pitch, a width that no field takes.

use super::diameter::of_diameter;
use super::length::{self, UNIT_OF_THREAD, cross, is_measured, measure};
use super::lexicon::{self, DUE, ON, THREAD_LENGTH, Word};
use super::measure::hardness;
use super::number::{self, Number};
use super::steel;
use super::token::Chain;
use super::what::{Found, What, Written, one};

/// What may stand between a word and its number.
const MARKS: &[&str] = &[".", ":", "="];

/// Things and sides that may be measured, and have a class of a bolt behind them.
const THINGS: &[&str] =
    &["wall", "pipe", "tube", "rohr", "top", "bottom", "inside", "outside", "leg", "legs"];

/// The place behind a word of this meaning and the marks behind it.
fn behind<T>(chain: &Chain<'_>, at: usize, means: impl Fn(Word) -> Option<T>) -> Option<(usize, T)> {
    let (end, found) = lexicon::find(chain, at, means)?;
    let end = chain.over(chain.over(end, MARKS), MARKS);
    Some((lexicon::over(chain, end, Word::Filler), found))
}

fn is(word: Word) -> impl Fn(Word) -> Option<()> {
    move |other| (other == word).then_some(())
}

/// `dia. 20 mm`, `Ø20 mm`, `30 mm diameter`: the size of a metric thread.
pub fn diameter(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let from = behind(chain, at, is(Word::Diameter)).map(|(end, ())| end);
    let number = number::decimal(chain, from.unwrap_or(at)).filter(|number| number.grouped.is_none())?;
    let mm = lexicon::over(chain, number.end, Word::Length("mm"));
    let end = match from {
        Some(_) => mm,
        None => lexicon::find(chain, mm, is(Word::Diameter))?.0,
    };
    // `Ø 114 mm inside`, `inside dia 17`: another diameter.
    let is_other = of(chain, at).is_some_and(|found| found.last().is_some_and(|(last, _)| *last > end));
    if mm == number.end || chain.inside_a_run(end) || is_other {
        return None;
    }
    let Some(thread) = of_diameter(&number.text) else {
        return one(end, What::Not("no metric thread has this diameter".into()));
    };
    let text = thread.to_string();
    one(end, What::Thread(Written { text, thread: Some(thread), of_size: true, pitched: false, weak: false }))
}

/// `length 100`, `L = 50 mm`, `900 mm long`, `60 lg`: without a unit in that of the thread.
pub fn long(chain: &Chain<'_>, at: usize) -> Option<Found> {
    // `L7`: a steel.
    if lexicon::whole(chain, at, |word| matches!(word, Word::Steel(_)).then_some(())).is_some() {
        return None;
    }
    // `6" long 2" thread`: behind `long` stands another measure.
    let is_behind = |at: usize| matches!(chain.word(at), Some("long" | "lang"));
    let is_class = |at: usize| {
        number::decimal(chain, at).is_some_and(|number| steel::DOTTED.contains(&number.text.as_str()))
    };
    if let Some((from, ())) = behind(chain, at, is(Word::Long)).filter(|_| !is_behind(at)) {
        let (end, length) = measure(chain, from, Some(UNIT_OF_THREAD)).filter(|_| !is_class(from))?;
        return (!is_measured(chain, end)).then(|| vec![(lexicon::over(chain, end, Word::Long), length)]);
    }
    let (end, length) = match measure(chain, at, None) {
        Some(measured) => measured,
        // `60 lg`.
        None => measure(chain, at, Some(UNIT_OF_THREAD))
            .filter(|(end, _)| is_behind(*end) || chain.word(*end) == Some("lg"))?,
    };
    let word = chain.over(end, &["-"]);
    let long = lexicon::over(chain, word, Word::Long);
    // `3/4" length 36"`: the word belongs to what follows it.
    let (next, _) = behind(chain, word, is(Word::Long))?;
    let owns_next = !is_behind(word) && !is_class(next) && measure(chain, next, Some("mm")).is_some();
    (!owns_next && !chain.inside_a_run(long)).then(|| vec![(long, length)])
}

/// `thread length 38 mm`, `AF 24`, `114 mm inside`, `yield 640 MPa`: of something that no field takes.
pub fn of(chain: &Chain<'_>, at: usize) -> Option<Found> {
    // `s = 24`, `k = 10`: letters of the standards.
    if matches!(chain.word(at), Some("s" | "k" | "e" | "sw")) && chain.sign(chain.after(at), &["="]) {
        let from = chain.after(chain.after(at));
        let end = measure(chain, from, None).map(|(end, _)| end);
        let end = end.or_else(|| number::decimal(chain, from).map(|number| number.end))?;
        return one(end, What::Not(length::ACROSS.into()));
    }
    let other = |word| match word {
        Word::Of(why) => Some(why),
        Word::Across => Some(length::ACROSS),
        _ => None,
    };
    if let Some((from, why)) = behind(chain, at, other) {
        let measured = measure(chain, from, None).map(|(end, _)| end);
        let strength = || hardness(chain, from)?.last().map(|(end, _)| *end);
        // `for stud wall 8.8`: a class behind the name of a thing.
        let is_thing =
            chain.before(from).and_then(|thing| chain.word(thing)).is_some_and(|it| THINGS.contains(&it));
        let is_class = |number: &Number| is_thing && steel::DOTTED.contains(&number.text.as_str());
        // Without a unit only a number that nothing else follows.
        let alone = || {
            let number =
                number::number(chain, from).filter(|number| number.grouped.is_none() && !is_class(number))?;
            let is_alone = !chain.inside_a_run(number.end)
                && !chain.sign(number.end, &["-", "/"])
                && !is_measured(chain, number.end)
                && length::cross(chain, number.end).is_none();
            is_alone.then_some(number.end)
        };
        let end = measured.or_else(strength).or_else(alone)?;
        return one(lexicon::over(chain, end, Word::Ends), What::Not(why.into()));
    }
    // `4-1/2 inside dia`: a fraction is in inches.
    let unit = number::number(chain, at).filter(|number| number.is_fraction).map(|_| "in");
    let (end, _) = measure(chain, at, unit)?;
    let (last, why) = lexicon::find(chain, end, other)?;
    // `length 75 mm AF 24`: the word belongs to what follows it.
    let next = number::decimal(chain, chain.over(last, MARKS));
    let owns_next = next.is_some_and(|next| !is_measured(chain, next.end));
    let last = if owns_next { last } else { lexicon::over(chain, last, Word::Ends) };
    (!owns_next && !chain.inside_a_run(last)).then(|| vec![(last, What::Not(why.into()))])
}

/// `16 tpi`, `pitch 1.5`, `1.5 mm pitch`: the pitch of a thread whose size stands elsewhere.
pub fn pitch(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let plain = |at: usize| number::decimal(chain, at).filter(|number| number.grouped.is_none());
    let over_mm = |number: &Number| lexicon::over(chain, number.end, Word::Length("mm"));
    if let Some((from, ())) = behind(chain, at, is(Word::Pitch)) {
        let number = plain(from)?;
        let end = over_mm(&number);
        return (!chain.inside_a_run(end)).then(|| vec![(end, What::Pitch(number.text))]);
    }
    // `Feingewinde 1,25`.
    if let Some((from, ())) = behind(chain, at, is(Word::Series("UNF"))) {
        let number = plain(from).filter(|number| number.value < 4.5 && number.whole().is_none())?;
        let end = over_mm(&number);
        let is_alone = !chain.inside_a_run(end) && cross(chain, end).is_none() && !is_measured(chain, end);
        return is_alone.then(|| vec![(end, What::Pitch(number.text))]);
    }
    let number = number::mixed(chain, at).map_or_else(|| plain(at), Some)?;
    let joint = chain.over(number.end, &["-"]);
    let end = lexicon::find(chain, joint, is(Word::PerInch))
        .or_else(|| lexicon::find(chain, over_mm(&number), is(Word::Pitch)))
        .map(|(end, ())| end)?;
    (!chain.inside_a_run(end)).then(|| vec![(end, What::Pitch(number.text))])
}

/// `bis 10.9.`, `due 12.9`: a day and a month, and no class of a bolt.
pub fn date(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let word = chain.word(at)?;
    let (is_due, is_on) = (DUE.contains(&word), ON.contains(&word));
    let mut from = chain.over(chain.after(at), MARKS);
    for _ in 0..2 {
        if chain.word(from).is_some_and(|word| DUE.contains(&word) || ON.contains(&word)) {
            from = chain.over(chain.after(from), MARKS);
        }
    }
    // `by 12/15`; a fraction of an inch is none.
    let (month, stroke) = (chain.digits(from), chain.after(from));
    let day = chain.digits(chain.after(stroke)).filter(|_| chain.sign(stroke, &["/"]) && chain.glued(stroke));
    if let (Some(month), Some(day), true) = (month, day, is_due || is_on) {
        let within = |text: &str| text.parse::<u8>().is_ok_and(|number| (1..=31).contains(&number));
        let is_fraction = number::fraction(chain, from).is_some();
        let mut end = chain.after(chain.after(stroke));
        let year = chain.after(end);
        if chain.sign(end, &["/"]) && chain.glued(year) && chain.digits(year).is_some() {
            end = chain.after(year);
        }
        let is_date = within(month) && within(day) && !chain.inside_a_run(end) && (is_due || !is_fraction);
        return is_date.then(|| vec![(end, What::Not("a date is not judged".into()))]);
    }
    if !(is_due || is_on) {
        return None;
    }
    // `10.9.`, `15.01.2027`.
    let within = |at: usize, most: u8| {
        chain
            .digits(at)
            .and_then(|text| text.parse::<u8>().ok())
            .is_some_and(|number| (1..=most).contains(&number))
    };
    let point = |at: usize| chain.sign(at, &["."]) && chain.glued(at);
    let first = chain.after(from);
    let month = chain.after(first);
    let is_day = within(from, 31) && point(first) && chain.glued(month) && within(month, 12);
    let last = chain.after(month);
    let closed = point(last);
    let year = chain.after(last);
    let has_year =
        closed && chain.glued(year) && chain.digits(year).is_some_and(|year| matches!(year.len(), 2 | 4));
    let end = match (has_year, closed) {
        (true, _) => chain.after(year),
        (false, true) => year,
        (false, false) => last,
    };
    (is_day && (is_due || closed) && !chain.inside_a_run(end))
        .then(|| vec![(end, What::Not("a date is not judged".into()))])
}

/// `24/12/2026`, `24.12.2026`, `2026-12-24`: a date in full, by itself.
pub fn full_date(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let number = |at: usize, figures: usize| {
        chain
            .digits(at)
            .filter(|digits| digits.len() <= figures)
            .and_then(|digits| digits.parse::<u16>().ok())
    };
    let sign =
        chain.get(chain.after(at)).map(|token| token.text).filter(|sign| matches!(*sign, "/" | "." | "-"))?;
    // What touches on both sides, by the same sign.
    let next = |at: usize| {
        let mark = chain.after(at);
        let behind = chain.after(mark);
        (chain.sign(mark, &[sign]) && chain.glued(mark) && chain.glued(behind)).then_some(behind)
    };
    let (second, third) = (next(at)?, next(next(at)?)?);
    let (day, month, year) = match chain.digits(at)?.len() {
        4 => (number(third, 2)?, number(second, 2)?, number(at, 4)?),
        _ => (number(at, 2)?, number(second, 2)?, number(third, 4)?),
    };
    // In America the month stands first.
    let (month, day) = if month > 12 { (day, month) } else { (month, day) };
    let is_one = (1..=31).contains(&day) && (1..=12).contains(&month) && (1990..2100).contains(&year);
    let end = chain.after(third);
    let is_alone =
        !(chain.glued(at) || chain.inside_a_run(end) || chain.sign(end, &["-", "/"]) && chain.glued(end));
    (is_one && is_alone).then(|| vec![(end, What::Not("a date is not judged".into()))])
}

/// `threaded 4 in each end`, `44 mm long thread`, `thread 40 each end`, `b = 44`: how far a part is threaded.
pub fn thread_length(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let is_thread = |at: usize| chain.word(at).is_some_and(|word| lexicon::OF_THREADS.contains(&word));
    let over_ends = |at: usize| match lexicon::over(chain, at, Word::Ends) {
        end if end != at => end,
        _ if chain.word(at).is_some_and(|word| matches!(word, "one" | "on" | "at" | "an" | "einseitig")) => {
            let one = |word| (word == Word::Filler).then_some(());
            let end = lexicon::find(chain, at, one).map_or(at, |(end, ())| end);
            let last = chain.before(end).and_then(|last| chain.word(last));
            if matches!(last, Some("end" | "only" | "ende" | "einseitig")) { end } else { at }
        }
        _ => at,
    };
    let plain = |at: usize| number::number(chain, at).filter(|number| number.grouped.is_none());
    let with_unit = |at: usize| measure(chain, at, None).map(|(end, _)| end);
    let end = if matches!(chain.word(at), Some("b" | "tl")) {
        let from = chain.over(chain.after(at), &["=", ":"]);
        with_unit(from).or_else(|| plain(from).map(|number| number.end)).filter(|_| from != chain.after(at))
    } else if is_thread(at) {
        let behind = chain.after(at);
        let first = over_ends(behind);
        let from = lexicon::over(chain, chain.over(chain.over(first, MARKS), MARKS), Word::Filler);
        let united = with_unit(from);
        match united.or_else(|| plain(from).map(|number| number.end)) {
            Some(end) => {
                let long = lexicon::over(chain, end, Word::Long);
                let last = over_ends(long);
                let is_how_far =
                    chain.word(at).is_some_and(|word| word.starts_with("threaded") || word == "thrd");
                let is_sure = first != behind || last != end || is_how_far && united.is_some();
                (is_sure && cross(chain, last).is_none())
                    .then_some(last)
                    .or((first != behind).then_some(first))
            }
            None => (first != behind).then_some(first),
        }
    } else {
        // `44 mm long thread`, `4" thread each end`, `2 in of thread`.
        let end = with_unit(at)?;
        let long = lexicon::over(chain, end, Word::Long);
        let of = if chain.word(long) == Some("of") { chain.after(long) } else { long };
        let behind = chain.after(of);
        let last = over_ends(behind);
        (is_thread(of) && (of != end || last != behind)).then_some(last)
    }?;
    (!chain.inside_a_run(end) && !chain.inside_a_run(at))
        .then(|| vec![(end, What::Not(THREAD_LENGTH.into()))])
}

/// `case 50 HRC`, `50 HRC case`: a hard skin; the hardness of the core is what is judged.
pub fn case(chain: &Chain<'_>, at: usize) -> Option<Found> {
    const OF_CASE: &str = "the hardness of the case is not judged: that of the core is";
    let is_case = |at: usize| {
        matches!(chain.word(at), Some("case" | "surface" | "skin" | "rand" | "randschicht" | "oberfläche"))
    };
    let measured = |at: usize| hardness(chain, at)?.into_iter().next().map(|(end, _)| end);
    // `case hardened 55 HRC, core 32 HRC`.
    if let Some((behind, ())) = lexicon::find(chain, at, is(Word::CaseHardened)) {
        let end = measured(lexicon::over(chain, chain.over(behind, MARKS), Word::Filler))?;
        let next = chain.over(end, &[",", "/", ";"]);
        return matches!(chain.word(next), Some("core" | "kern"))
            .then(|| vec![(behind, What::Yes("case")), (end, What::Not(OF_CASE.into()))]);
    }
    if is_case(at) {
        let behind = chain.after(at);
        let from = lexicon::over(chain, chain.over(behind, MARKS), Word::Filler);
        let end = measured(from)?;
        return Some(vec![(behind, What::Yes("case")), (end, What::Not(OF_CASE.into()))]);
    }
    let end = measured(at).filter(|end| is_case(*end))?;
    let last = chain.after(end);
    // `33 HRC case 50 HRC`: the word belongs to what follows it.
    let owns_next = measured(lexicon::over(chain, chain.over(last, MARKS), Word::Filler)).is_some();
    (!owns_next).then(|| vec![(end, What::Not(OF_CASE.into())), (last, What::Yes("case"))])
}
