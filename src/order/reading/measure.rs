//! Numbers with what they measure: years, hardness, temperature, thickness, weight.

mod degrees;
mod energy;
mod no_life;
mod years;

use super::count::count;
use super::length::is_measured;
use super::lexicon::{self, Word};
use super::number::{self, Number};
use super::token::{Chain, Sort};
use super::what::{Found, What, one};
use super::{length, letters, steel};
pub use degrees::temperature;
pub use energy::energy;
use no_life::is_of_another_time;
pub(super) use no_life::no_life;
pub use years::years;

/// `36 HRC`, `HRC 33-39`, `200HV`, `1200 MPa`, `1,200 N/mm²`, `min 150 ksi`: of a range, the hardest end.
pub fn hardness(chain: &Chain<'_>, at: usize) -> Option<Found> {
    if let Some(found) = without_scale(chain, at) {
        return Some(found);
    }
    let least = over_least(chain, at);
    let scale = |at: usize| {
        lexicon::find(chain, at, |word| match word {
            Word::Scale(scale) => Some(scale),
            _ => None,
        })
    };
    let (end, scale, ends) = match scale(least) {
        Some((behind, name)) => {
            let (end, ends) = range(chain, chain.over(behind, &[":", "=", "-"]))?;
            (end, name, ends)
        }
        None => {
            let (behind, ends) = range(chain, least)?;
            let (end, name) = scale(chain.over(behind, &["-"]))?;
            // `8.8 HRC 33`: a class, and a hardness.
            let is_class = number::decimal(chain, least)
                .is_some_and(|number| number.end == behind && steel::DOTTED.contains(&number.text.as_str()));
            if is_class && chain.digits(chain.over(end, &[":", "="])).is_some() {
                return None;
            }
            (end, name, ends)
        }
    };
    let Ends { softest, hardest, has_thousands } = ends;
    // No hardness has thousands, and pounds have many.
    if scale == "psi" || has_thousands && scale != "MPa" {
        return None;
    }
    // `10.9 HV`, `HV 10`: the mark of a preloaded assembly.
    if chain.inside_a_run(end) || scale == "HV" && OF_HV.contains(&hardest) {
        return None;
    }
    // `38 HRC min`, `1000 MPa or more`.
    let behind = if softest.is_none() { behind_least(chain, end) } else { end };
    // Of a range the greater end is said.
    let is_least = softest.is_none() && (least != at || behind != end);
    let end = behind;
    let note = match softest {
        Some(softest) => {
            Some(format!("the harder end of {softest} to {hardest} {scale}: the softer end is not judged"))
        }
        None if is_least && matches!(scale, "HRC" | "HV" | "HB" | "HRB") => Some(LEAST_HARDNESS.to_owned()),
        None if is_least => Some(LEAST.to_owned()),
        None => None,
    };
    one(end, What::Hardness(format!("{hardest} {scale}"), note))
}

/// What a least strength leaves open.
pub(super) const LEAST: &str = "the least that is asked for: the steel may be harder";
/// What a least hardness leaves open.
pub(super) const LEAST_HARDNESS: &str =
    "the least that is asked for: the steel may be harder, and the greatest hardness decides";

/// The place behind what says in front of a number that it is the least: `min.`, `≥`, `over`.
fn over_least(chain: &Chain<'_>, at: usize) -> usize {
    let named = lexicon::over(chain, at, Word::Least);
    if named != at {
        // `min. hardness: 38 HRC`.
        let mut from = chain.over(named, &["."]);
        while let Some((end, ())) = lexicon::find(chain, from, |word| (word == Word::Filler).then_some(())) {
            from = end;
        }
        return chain.over(from, &[":", "="]);
    }
    match chain.word(at) {
        Some(word) if lexicon::ABOVE.contains(&word) => chain.after(at),
        Some("more" | "greater" | "higher" | "harder") if chain.word(chain.after(at)) == Some("than") => {
            chain.after(chain.after(at))
        }
        Some("mehr") if chain.word(chain.after(at)) == Some("als") => chain.after(chain.after(at)),
        _ => {
            let sign = chain.over(at, &[">", "≥", "⩾"]);
            if sign == at { at } else { chain.over(sign, &["="]) }
        }
    }
}

/// The place behind what says behind a number that it is the least: `min.`, `or more`, `and up`; a word that
/// belongs to the measure behind it, `38 HRC min 45 µm`, is that measure's.
fn behind_least(chain: &Chain<'_>, at: usize) -> usize {
    let is_more = |at: usize| chain.word(at).is_some_and(|word| lexicon::MORE.contains(&word));
    let joint = match chain.word(at) {
        Some("or" | "and" | "oder" | "und") => chain.after(at),
        _ => at,
    };
    if joint != at && is_more(joint) {
        return chain.after(joint);
    }
    // `38 HRC up`, and no `up to`.
    if matches!(chain.word(at), Some("up" | "upwards" | "aufwärts"))
        && lexicon::over(chain, at, Word::Most) == at
    {
        return chain.after(at);
    }
    let named = lexicon::over(chain, at, Word::Least);
    if named == at {
        return at;
    }
    let end = chain.over(named, &["."]);
    let mut from = end;
    let mut is_of_a_coat = false;
    while let Some((behind, ())) = lexicon::find(chain, from, |word| (word == Word::Filler).then_some(())) {
        is_of_a_coat |= chain.word(from).is_some_and(|word| lexicon::OF_A_COAT.contains(&word));
        from = behind;
    }
    let next = number::decimal(chain, from);
    let owns_next = next.is_some_and(|number| {
        let is_a_coats = |word| matches!(word, Word::OfCoat(_) | Word::Length(_)).then_some(());
        let scale = |word| matches!(word, Word::Scale(_)).then_some(());
        let hardness = lexicon::find(chain, number.end, scale);
        lexicon::find(chain, number.end, is_a_coats).is_some()
            || hardness.is_some_and(|(end, ())| lexicon::over(chain, end, Word::Most) == end)
    });
    if is_of_a_coat || owns_next { at } else { end }
}

/// `105 ksi yield`, `Fy 105 ksi`, `ReH 640 MPa`, `Rp0.2 640 MPa`: where steel yields, and not where it breaks.
pub fn yields(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let strength = |at: usize| {
        let from = over_least(chain, at);
        let found = psi(chain, from).or_else(|| hardness(chain, from))?;
        let is_strength = |text: &str| ["MPa", "ksi"].iter().any(|unit| text.ends_with(unit));
        match found.first()? {
            (end, What::Hardness(text, _)) if is_strength(text) => Some(*end),
            _ => None,
        }
    };
    let is_tensile = |at: usize| {
        chain
            .word(at)
            .is_some_and(|word| matches!(word, "tensile" | "uts" | "rm" | "ultimate" | "zugfestigkeit"))
    };
    if let Some(behind) = over_sign_of_yield(chain, at) {
        let from =
            over_least(chain, lexicon::over(chain, chain.over(behind, &[":", "=", "("]), Word::Filler));
        // `Rp 1 640`, `Re 1,080`, `yield 1,200`, without its unit.
        let bare = || {
            let number = number::decimal(chain, from)?;
            let value = number.grouped.unwrap_or(number.value);
            let noun = |word| matches!(word, Word::Part(_)).then_some(());
            // `Re 500` may count pieces.
            let is_sign =
                lexicon::find(chain, at, |word| matches!(word, Word::Of(_)).then_some(())).is_none();
            let is_rp = chain.word(at) == Some("rp");
            let is_open = is_sign && !is_rp && number.grouped.is_none();
            let is_alone = (!is_open || is_tensile(number.end))
                && (100.0..=10_000.0).contains(&value)
                && value.fract() == 0.0
                && !chain.inside_a_run(number.end)
                && super::count::unit(chain, number.end).is_none()
                && !is_measured(chain, number.end)
                && (is_rp || lexicon::find(chain, number.end, noun).is_none());
            is_alone.then_some(number.end)
        };
        let end = strength(from).or_else(bare)?;
        return one(end, What::Not(lexicon::YIELD.into()));
    }
    let end = strength(at)?;
    let of = if chain.word(end) == Some("of") { chain.after(end) } else { end };
    let (last, ()) = lexicon::find(chain, chain.over(of, &["(", "-"]), |word| match word {
        Word::Of(why) if why == lexicon::YIELD => Some(()),
        _ => None,
    })?;
    // `125 ksi yield 105 ksi`: the word belongs to what follows it, but in `105 ksi yield 125 ksi tensile`.
    let next = strength(chain.over(last, &[":", "="]));
    let owns_next = next.is_some_and(|next| !is_tensile(next));
    (!owns_next && !chain.inside_a_run(last)).then(|| vec![(last, What::Not(lexicon::YIELD.into()))])
}

/// The place behind a sign for the yield strength, or its name.
fn over_sign_of_yield(chain: &Chain<'_>, at: usize) -> Option<usize> {
    let named = lexicon::whole(chain, at, |word| (word == Word::Of(lexicon::YIELD)).then_some(()));
    if let Some((end, ())) = named {
        return Some(end);
    }
    let name = chain.word(at).filter(|word| lexicon::YIELDS.contains(word))?;
    let end = chain.after(at);
    // `Rp0.2`, `Rp 0,2`, `Rp1.0`, `Rp 1`: the share of its length by which it stays longer.
    match number::decimal(chain, end).filter(|_| name == "rp") {
        Some(share) if share.value <= 2.0 => Some(share.end),
        // `RE: 500 bolts` refers to something.
        _ if name == "re" && chain.get(at).is_none_or(|token| token.text != "Re") => None,
        _ => (!chain.inside_a_run(end)).then_some(end),
    }
}

/// `Rm 1000`, `strength 800`: MPa; `hardness 39`: of which scale?
fn without_scale(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let word = chain.word(at)?;
    let is_hardness = matches!(word, "hardness" | "härte");
    let named = match word {
        "rm" | "uts" | "zugfestigkeit" | "strength" | "tensile" => {
            let behind = chain.after(at);
            if word == "tensile" && chain.word(behind) == Some("strength") {
                chain.after(behind)
            } else {
                behind
            }
        }
        _ if is_hardness => chain.after(at),
        _ => return None,
    };
    let from = lexicon::over(chain, lexicon::over(chain, named, Word::Least), Word::Filler);
    let marked = chain.over(from, &[":", "="]);
    let least = over_least(chain, marked);
    let from = chain.over(least, &[".", ":", "="]);
    let (end, Ends { softest, hardest, has_thousands }) = range(chain, from)?;
    // `full strength 1,200`: without its unit it may count the pieces.
    if has_thousands && !matches!(word, "rm" | "uts" | "zugfestigkeit") {
        return None;
    }
    let is_alone = !chain.inside_a_run(end)
        && !is_measured(chain, end)
        && !chain.sign(end, &["-", "/", "\"", "%"])
        && lexicon::find(chain, end, |word| matches!(word, Word::Length(_)).then_some(())).is_none();
    if !is_alone {
        return None;
    }
    let shown = softest.map_or(hardest.to_string(), |softest| format!("{softest} to {hardest}"));
    let behind = if softest.is_none() { behind_least(chain, end) } else { end };
    let is_least = least != marked || lexicon::over(chain, named, Word::Least) != named || behind != end;
    let note = is_least.then(|| LEAST.to_owned());
    let end = behind;
    let what = match is_hardness {
        true if hardest <= 68.0 => What::Not(format!("{shown} HRC? Write the scale of the hardness").into()),
        true => What::Not(format!("{shown} HV or {shown} HB? Write the scale of the hardness").into()),
        false if (300.0..=2000.0).contains(&hardest) => What::Hardness(format!("{hardest} MPa"), note),
        false => What::Not(format!("{shown} MPa or {shown} ksi? Write the unit of the strength").into()),
    };
    one(end, what)
}

/// `150,000 psi`, `150 000 psi`: a tensile strength, in thousands of them.
pub fn psi(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let from = over_least(chain, at);
    let number = number::spaced(chain, from).or_else(|| number::decimal(chain, from))?;
    let end = lexicon::over(chain, number.end, Word::Scale("psi"));
    let value = number.grouped.unwrap_or(number.value);
    if end == number.end || value < 10_000.0 || chain.inside_a_run(end) {
        return None;
    }
    let behind = behind_least(chain, end);
    let note = (from != at || behind != end).then(|| LEAST.to_owned());
    one(behind, What::Hardness(format!("{} ksi", value / 1000.0), note))
}

/// Classes of EN 14399-4: beside HV they are no hardness.
const OF_HV: [f64; 2] = [10.0, 10.9];

/// `-300 HV`, `−5 years`, `-500 pcs`: the sign stays with its number, and the field says what is wrong
/// with it.
pub fn negative(chain: &Chain<'_>, at: usize) -> Option<Found> {
    if !number::is_minus(chain, at) {
        return None;
    }
    let number = chain.after(at);
    let mut found = [hardness, years, count].into_iter().find_map(|rule| rule(chain, number))?;
    // `life -10 to 15 years`: a dash in front of two.
    if found.iter().filter(|(_, what)| matches!(what, What::Years(_))).count() > 1 {
        return None;
    }
    for (_, what) in &mut found {
        match what {
            What::Hardness(text, _) | What::Years(text) => text.insert(0, '-'),
            What::Count(counted) => counted.negative = true,
            _ => {}
        }
    }
    Some(found)
}

/// `mu 0.12`, `µ = 0.10-0.16`: no nut, and no coat.
pub fn friction(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at).filter(|word| matches!(*word, "mu" | "µ" | "μ"))?;
    let (end, ends) = range(chain, chain.over(chain.after(at), &[":", "="]))?;
    let is_one = ends.hardest < 1.0 && !chain.inside_a_run(end) && !is_measured(chain, end);
    is_one.then(|| vec![(end, What::Not("friction is not judged".into()))])
}

/// `…, -500`: pieces of less than nothing, or a dash in front of them.
pub fn negative_cell(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let number = number::decimal(chain, chain.after(at)).filter(|number| number.whole().is_some())?;
    let parts = |at: usize| chain.get(at).is_none_or(|token| token.sort == Sort::Break);
    let is_cell = number::is_minus(chain, at) && chain.before(at).is_some_and(parts) && parts(number.end);
    let why = "less than nothing? Write it without the sign if that is a dash";
    is_cell.then(|| vec![(number.end, What::Not(why.into()))])
}

/// A number, or the lesser and the greater of two.
struct Ends {
    softest: Option<f64>,
    hardest: f64,
    /// Whether marks between figures group them by three: no steel has 1.2 MPa.
    has_thousands: bool,
}

fn range(chain: &Chain<'_>, at: usize) -> Option<(usize, Ends)> {
    let number = number::decimal(chain, at)?;
    let value = |number: &number::Number| number.grouped.unwrap_or(number.value);
    let of = |softest, hardest, has_thousands| Ends { softest, hardest, has_thousands };
    if let Some((end, by)) = plus_minus(chain, number.end) {
        let middle = value(&number);
        return Some((end, of(Some(middle - by), middle + by, number.grouped.is_some())));
    }
    let to = chain.over(number.end, &["-", "–", "~", "/", "…"]);
    let is_to = to == number.end && matches!(chain.word(to), Some("to" | "bis" | "and" | "und"));
    let to = if is_to { chain.after(to) } else { to };
    let has_thousands = number.grouped.is_some();
    match number::decimal(chain, to).filter(|_| to != number.end) {
        Some(other) if value(&other) > value(&number) => {
            let ends = of(Some(value(&number)), value(&other), has_thousands || other.grouped.is_some());
            Some((other.end, ends))
        }
        _ => Some((number.end, of(None, value(&number), has_thousands))),
    }
}

/// `± 3`, `+/-2`, `+-2`: the place behind it, and by how much.
pub(super) fn plus_minus(chain: &Chain<'_>, at: usize) -> Option<(usize, f64)> {
    let from = match chain.sign(at, &["±"]) {
        true => chain.after(at),
        false if chain.sign(at, &["+"]) => {
            let stroke = chain.over(chain.after(at), &["/"]);
            chain.sign(stroke, &["-", "−", "–"]).then(|| chain.after(stroke))?
        }
        false => return None,
    };
    let by = number::decimal(chain, from).filter(|number| number.grouped.is_none())?;
    Some((by.end, by.value))
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
        let behind = over_over(chain, end);
        return (behind != end && !chain.inside_a_run(behind)).then(|| vec![(behind, What::Allowance(text))]);
    }
    from = chain
        .over(lexicon::over(chain, lexicon::over(chain, from, Word::Times), Word::Filler), &["+", ":", "="]);
    let (end, text) = room(chain, from)?;
    one(end, What::Allowance(text))
}

/// `tapped .022 oversize`, `tapped 0.5 mm over`, `tapped + .020`.
fn tapped_between(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at).filter(|word| matches!(*word, "tapped" | "tap"))?;
    let marked = chain.over(lexicon::over(chain, chain.after(at), Word::Filler), &["+"]);
    let Some((end, text)) = room(chain, marked) else {
        // `tapped 0.5 over`.
        let number = number::decimal(chain, marked).filter(|number| number.value < 1.0)?;
        let behind = over_over(chain, number.end);
        let why = format!("{0} mm or {0} in? Write the unit", number.text);
        return (behind != number.end).then(|| vec![(behind, What::Not(why.into()))]);
    };
    (!chain.inside_a_run(end)).then(|| vec![(over_over(chain, end), What::Allowance(text))])
}

/// The place behind the word for a nut tapped over; `over` alone says so behind a measure as small as that.
fn over_over(chain: &Chain<'_>, at: usize) -> usize {
    let behind = lexicon::over(chain, at, Word::Overtapped);
    if behind != at || chain.word(at) != Some("over") {
        return behind;
    }
    // `zinc 10 µm over nickel`, `over 5 µm nickel`: a coat, and the one under it.
    let over = chain.after(at);
    let thick = number::decimal(chain, over).map_or(over, |number| number.end);
    let is_coat = |word| match word {
        Word::Other(_) | Word::OtherMetal => Some(()),
        Word::OfCoat(_) if thick != over => Some(()),
        _ => None,
    };
    if lexicon::find(chain, thick, is_coat).is_some() { at } else { over }
}

/// A length that may be an allowance: small numbers without a unit are inches.
fn room(chain: &Chain<'_>, from: usize) -> Option<(usize, String)> {
    let number =
        number::number(chain, from).filter(|number| number.grouped.is_none_or(|_| number.value < 1.0))?;
    let unit = lexicon::find(chain, number.end, |word| match word {
        Word::Length(unit) => Some(unit),
        Word::OfCoat(unit @ ("µm" | "mil")) => Some(unit),
        _ => None,
    });
    let mark = chain.over(number.end, &["\"", "″"]);
    // No nut is tapped over by more.
    if matches!(unit, Some((_, "mm"))) && number.value > 3.0
        || !matches!(unit, Some((_, "mm" | "µm" | "mil"))) && number.value > 0.12
    {
        return None;
    }
    let (end, unit) = match unit {
        Some(unit) => unit,
        None if mark != number.end || number.value < 0.1 => (mark, "in"),
        None => return None,
    };
    Some((end, format!("{} {unit}", number.text)))
}

/// A number with a unit that no field takes: `120 lb`.
pub fn other(chain: &Chain<'_>, at: usize) -> Option<Found> {
    if let Some(found) = in_all(chain, at) {
        return Some(found);
    }
    let number = number::spaced(chain, at).filter(|number| measured(chain, number.end).is_some());
    let number = number.or_else(|| number::number(chain, at))?;
    let (end, why) = measured(chain, number.end)?;
    // `1 H/N`: a nut.
    if letters::mate(chain, number.end).is_some() {
        return None;
    }
    // `10.9 HR` is a class beside a bolt of the system HR, and no time.
    if steel::DOTTED.contains(&number.text.as_str())
        && matches!(chain.word(number.end), Some("hr" | "hrs" | "h" | "std" | "a"))
    {
        return None;
    }
    if chain.inside_a_run(end) {
        return None;
    }
    let why =
        if why == lexicon::MONTHS && is_of_another_time(chain, at, end) { lexicon::NO_LIFE } else { why };
    let why = match number.two_meanings() {
        Some((one_way, other)) => format!("it could be {one_way} or {other}; {why}").into(),
        None => why.into(),
    };
    one(end, What::Not(why))
}

/// `100 m Gewindestange`: so many metres of it are no length of one.
fn in_all(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let number =
        number::decimal(chain, at).filter(|number| number.value > 20.0 && number.whole().is_some())?;
    let metres = |word: &str| matches!(word, "m" | "metres" | "meters" | "meter" | "metre" | "lfm" | "lfdm");
    let end = chain.after(number.end);
    let is_unit =
        chain.word(number.end).is_some_and(metres) && chain.get(number.end).is_some_and(|it| it.text != "M");
    (is_unit && !chain.inside_a_run(end) && chain.digits(end).is_none()).then(|| {
        vec![(end, What::Not("so many metres in all: write the pieces, and the length of one".into()))]
    })
}

fn measured(chain: &Chain<'_>, at: usize) -> Option<(usize, &'static str)> {
    if chain.sign(at, &["%"]) && chain.glued(at) {
        return Some((chain.after(at), "not judged"));
    }
    // `50 a kg`, `0.45 a piece`.
    if let Some(end) = lexicon::over_rate(chain, at) {
        return Some((end, "so much to each, or a price? Write the pieces of all"));
    }
    lexicon::find(chain, chain.over(at, &["-"]), |word| match word {
        Word::Measure(why) => Some(why),
        // `80 ft pole`: behind a number feet, and no full thread, where a thing is so high.
        Word::Length("ft") => {
            let end = chain.after(chain.over(at, &["-"]));
            let is_thing = |word| (word == Word::Qualifier).then_some(());
            lexicon::find(chain, end, is_thing).map(|_| lexicon::JOINT)
        }
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
    // `1 000 écrous`: at the head of a line, in front of what they count.
    let counted = number::spaced(chain, at).filter(|number| {
        let part = |word| matches!(word, Word::Part(_)).then_some(());
        chain.before(at).is_none() && lexicon::whole(chain, number.end, part).is_some()
    });
    if let Some(number) = counted {
        return one(number.end, What::Bare(number.grouped.map(|pieces| pieces as u64)));
    }
    let number = number::number(chain, at)?;
    // `2 1/2-13`: two of a thread of 1/2 in.
    let number =
        if length::parts_into_two(chain, at, &number) { number::decimal(chain, at)? } else { number };
    (!chain.inside_a_run(number.end) && !chain.inside_a_run(at))
        .then(|| vec![(number.end, What::Bare(number.whole().or(grouped(&number))))])
}
