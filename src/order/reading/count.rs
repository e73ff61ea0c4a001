//! Numbers of pieces: by their unit, by the dozen, in boxes.

use super::lexicon::{self, LOTS, Word};
use super::number::{self, Number};
use super::token::{Chain, Sort};
use super::what::{Counted, Found, SteelWord, What, one};
use super::{document, length, size, steel};

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
        from = chain.over(from, &[":", "="]);
    }
    // `qty: -500`.
    if is_named && number::is_minus(chain, from) {
        let (end, text) = (chain.after(chain.after(from)), chain.digits(chain.after(from)));
        let pieces = text.and_then(|text| text.parse().ok()).filter(|_| !chain.inside_a_run(end))?;
        let end = unit(chain, end).map_or(end, |(end, ..)| end);
        return one(end, What::Count(Counted { pieces, sets: false, spaced: None, negative: true }));
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
    let number = spaced
        .clone()
        .or_else(|| number::decimal(chain, from))
        .or_else(|| small(chain, from))
        .or_else(|| half(chain, from))
        .or_else(|| one_hundred(chain, from))?;
    if let Some(found) = count_or_not(chain, &number) {
        return found;
    }
    // `8.8 set screws`: a class.
    if !is_named && steel::DOTTED.contains(&number.text.as_str()) {
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
    let touches = chain.glued(number.end) || unit(chain, thousand).is_some();
    let is_thousand = thousand != number.end && touches && !chain.inside_a_run(thousand);
    let end = if is_thousand { thousand } else { number.end };
    let unit = unit(chain, chain.over(end, &[")", "-"])).or_else(|| unit_in_next_cell(chain, from, end));
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
    let time = lexicon::over(chain, end, Word::PerTime);
    if time != end {
        return one(time, What::Not("pieces of a time: how many are ordered?".into()));
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
        (Some(each), Some((end, boxes))) => one(end, in_boxes(boxes, each)),
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

/// `50 x stud`: pieces of what is named behind the cross.
fn times_part(chain: &Chain<'_>, at: usize, number: &Number) -> Option<Found> {
    let cross = lexicon::over(chain, chain.over(number.end, &["×", "*"]), Word::Times);
    let is_plain = cross != number.end && number.whole().is_some() && !chain.inside_a_run(at);
    let is_first = chain.before(at).is_none_or(|before| !matches!(chain.word(before), Some("x" | "by")));
    let noun = lexicon::whole(chain, cross, |word| matches!(word, Word::Part(_)).then_some(()));
    (is_plain && is_first && noun.is_some()).then(|| vec![(cross, pieces(number, 1.0, false, None))])
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

/// `2 x 2H`, `2x ISO 7089`: so many of what comes with the part.
fn times_mate(chain: &Chain<'_>, number: &Number) -> Option<Found> {
    let cross = lexicon::over(chain, chain.over(number.end, &["×", "*"]), Word::Times);
    let pieces = number.whole().filter(|pieces| *pieces <= 8 && cross != number.end)?;
    let found = steel::steel(chain, cross).or_else(|| document::document(chain, cross))?;
    let is_mate = match &found.first()?.1 {
        What::Steel(SteelWord::Grade(grade)) => grade.is_nut() || grade.is_washer(),
        What::PartStandard(key) => key.ends_with("nut") || key.ends_with("washer"),
        _ => false,
    };
    is_mate.then(|| vec![(cross, What::Bare(Some(pieces)))])
}

/// `5x100 pcs`, `10 x 50 Stk`: so many times so many.
fn times_count(chain: &Chain<'_>, at: usize, number: &Number) -> Option<Found> {
    let cross = lexicon::over(chain, chain.over(number.end, &["×", "*"]), Word::Times);
    let other = number::decimal(chain, cross).filter(|_| cross != number.end && !chain.inside_a_run(at))?;
    let is_steel = chain.get(other.end).is_some_and(|token| token.lower == "st");
    let (end, ..) = unit(chain, other.end).filter(|_| !is_steel)?;
    let all = number.whole()?.saturating_mul(other.whole()?);
    let is_first =
        chain.before(at).is_none_or(|before| !matches!(chain.word(before), Some("x" | "by" | "m")));
    (is_first && !chain.inside_a_run(end)).then(|| {
        vec![(end, What::Not(format!("so many times so many: write {all} pcs if that is all").into()))]
    })
}

/// `2 lots of 500 pcs`: so many times so many; without a word between either may be all.
fn lots(chain: &Chain<'_>, number: &Number) -> Option<Found> {
    let named = chain.word(number.end).filter(|word| LOTS.contains(word)).map(|_| chain.after(number.end))?;
    let from = lexicon::over(chain, chain.over(named, &["@", "à", "x", "×"]), Word::Filler);
    let each = number::spaced(chain, from).or_else(|| number::decimal(chain, from))?;
    let (end, ..) = unit(chain, each.end).filter(|(end, ..)| !chain.inside_a_run(*end))?;
    let (lots, each) = (number.whole()?, each.grouped.map_or(each.whole(), |grouped| Some(grouped as u64))?);
    let all = lots.saturating_mul(each);
    let why = format!("{each} pieces in all, or {all}? Write the pieces in all");
    one(end, if from == named { What::Not(why.into()) } else { in_boxes(lots, each) })
}

/// `500/1000/5000 pcs`, `qty 500, 1000, 5000`: several numbers of pieces for one part.
fn several(chain: &Chain<'_>, at: usize, number: &Number, is_named: bool) -> Option<Found> {
    let fewest = if is_named { 10 } else { 100 };
    let mut end = number.end;
    let mut counts = 1;
    loop {
        let comma = chain.get(end).is_some_and(|token| matches!(token.text, "," | ";")) && is_named;
        let next = if comma { chain.after(end) } else { chain.over(end, &["/"]) };
        let Some(other) = number::decimal(chain, next).filter(|other| {
            next != end
                && other.whole().is_some_and(|pieces| pieces >= fewest)
                && !chain.inside_a_run(other.end)
        }) else {
            break;
        };
        // `qty 500, 20 years`.
        if comma && other.end < chain.tokens().len() && unit(chain, other.end).is_none() {
            let is_break = chain.get(other.end).is_some_and(|token| token.sort == Sort::Break);
            if !is_break {
                break;
            }
        }
        (end, counts) = (other.end, counts + 1);
    }
    number.whole().filter(|pieces| *pieces >= fewest && !chain.inside_a_run(at))?;
    let end = unit(chain, end).map_or(end, |(end, ..)| end);
    (counts > 2 && !is_joined(chain, at))
        .then(|| vec![(end, What::Not("several numbers of pieces: write a line for each".into()))])
}

/// `500-600 pcs`, `500 + 300 pcs`: which of them, or their sum.
fn two_counts(chain: &Chain<'_>, at: usize, number: &Number) -> Option<Found> {
    let is_sum = chain.sign(number.end, &["+"]);
    let stroke = chain.over(number.end, &["/"]);
    let is_either = stroke != number.end && number.value >= 10.0;
    let joint = match chain.word(number.end) {
        Some("or" | "oder") => chain.after(number.end),
        _ if is_either => stroke,
        _ => chain.over(number.end, &["-", "–", "+"]),
    };
    let other = number::decimal(chain, joint).filter(|_| joint != number.end && !chain.inside_a_run(at))?;
    let (end, ..) = unit(chain, other.end)?;
    let (one, two) = (number.whole()?, other.whole()?);
    let why = match is_sum {
        true => format!("two numbers of pieces: write {} pcs if it is their sum", one.saturating_add(two)),
        false if two > one => format!("{one} or {two} pieces? Write the one"),
        false => return None,
    };
    (!is_joined(chain, at) && !chain.inside_a_run(end)).then(|| vec![(end, What::Not(why.into()))])
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
    let contents = number::decimal(chain, lexicon::over(chain, each, Word::Times)).filter(|contents| {
        // `30 kegs of 5/8-11 nuts`, `2 boxes of 3" bolts`: what is in them, and not how many.
        let is_size = chain.sign(contents.end, &["/", "-", "\"", "×"]) && chain.glued(contents.end)
            || length::unit_of_length(chain, contents).is_some()
            || length::cross(chain, contents.end).is_some();
        each != end && !is_size
    });
    let is_weighed = contents.as_ref().is_some_and(|each| {
        lexicon::find(chain, each.end, |word| matches!(word, Word::Mass(_)).then_some(())).is_some()
    });
    match (boxes.whole(), contents.as_ref().and_then(|each| Some((each.end, each.whole()?)))) {
        (_, Some((each, _))) if is_weighed => one(
            chain.after(each),
            What::Not("so many of so much: write the weight of all, or the pieces".into()),
        ),
        (Some(boxes), Some((behind, each))) => {
            let end = unit(chain, behind).map_or(behind, |(end, ..)| end);
            one(end, in_boxes(boxes, each))
        }
        _ => one(end, What::Not("how many pieces go into one is not said".into())),
    }
}

/// `box of 100`: how they are packed, and no count.
fn box_of(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let from = lexicon::find(chain, at, |word| (word == Word::Box).then_some(())).map(|(end, ())| end)?;
    let each = lexicon::over(chain, chain.over(from, &["@", "à", ":"]), Word::Filler);
    let contents = number::decimal(chain, each).filter(|_| each != from && !is_money(chain, each))?;
    let end = unit(chain, contents.end).map_or(contents.end, |(end, ..)| end);
    // `box of 50 x 20`.
    let boxes = length::cross(chain, end).and_then(|cross| number::decimal(chain, cross));
    let all = boxes.and_then(|boxes| Some((boxes.end, boxes.whole()?, contents.whole()?)));
    if let Some((end, boxes, each)) = all.filter(|(end, ..)| !chain.inside_a_run(*end)) {
        return one(end, in_boxes(boxes, each));
    }
    one(end, What::Not("how they are packed is not judged: write the pieces in all".into()))
}

/// So many boxes of so many pieces.
fn in_boxes(boxes: u64, each: u64) -> What {
    What::Count(Counted { pieces: boxes.saturating_mul(each), sets: false, spaced: None, negative: false })
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
