//! Steels: property classes, grades of SAE, documents of ASTM with their grades.

mod other;

pub use super::lexicon::DOTTED;
use super::lexicon::{self, ASTM_STEELS, Word};
use super::number;
use super::standard::number_of;
use super::token::{Chain, Sort};
use super::what::{Found, SteelWord, What, one};
use crate::quantity::letters::upper;
use crate::steel::Grade;

/// Steels by the number of their analysis (AISI, SAE), which says no strength; four figures like any others.
pub(super) const ANALYSES: &[u64] = &[
    1008, 1010, 1018, 1022, 1035, 1038, 1040, 1045, 1541, 4037, 4130, 4135, 4137, 4140, 4142, 4145, 4150,
    4340, 5140, 8630, 8637, 8640, 8740,
];

/// Why such a steel is not used.
pub(super) const ANALYSIS: &str = "an analysis says no strength: write the grade, the class or the hardness";

/// `AISI 4140`, `SAE 1045`, `4140 steel`.
pub fn analysis(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let named = chain.word(at).filter(|word| matches!(*word, "aisi" | "sae")).map(|_| chain.after(at));
    let from = named.unwrap_or(at);
    let digits = chain.digits(from).filter(|digits| digits.len() == 4)?;
    let end = chain.after(from);
    let known = digits.parse().is_ok_and(|number| ANALYSES.contains(&number));
    let behind = chain.word(end) == Some("steel")
        || chain.word(end) == Some("alloy") && chain.word(chain.after(end)) == Some("steel");
    let end = match chain.word(end) {
        Some("steel") => chain.after(end),
        Some("alloy") if behind => chain.after(chain.after(end)),
        _ => end,
    };
    ((named.is_some() || known && behind) && !chain.inside_a_run(end))
        .then(|| vec![(end, What::Not(ANALYSIS.into()))])
}

/// Why another type of a steel or a coat is not used.
pub const OTHER_TYPE: &str = "type 1 alone is known here: other steels and chromates are not judged";

/// What the letters behind a structural bolt say.
const JOINT: &str =
    "where the joint shears, or that it must not slip: the engineer's, no matter of the finish";

/// `8.8`, `class 10.9`, `GR8.8`, `grade 5`, `A193 B7`, `F3125 grade A325 type 1`, `B7`, `2H`.
pub fn steel(chain: &Chain<'_>, at: usize) -> Option<Found> {
    document(chain, at)
        .or_else(|| by_word(chain, at))
        .or_else(|| other::classes_of_a_nut(chain, at))
        .map(|found| other::with_another(chain, found))
        .or_else(|| dotted(chain, at))
        .or_else(|| code(chain, at))
        .or_else(|| marked(chain, at))
        .or_else(|| letter_of_nut(chain, at))
        .or_else(|| seven_m(chain, at))
}

/// `HV 10.9`, `HV 10`, `10.9 HV`: the mark of the preloaded assemblies of EN 14399-4, and no hardness; `HR 10.9`
/// is that of EN 14399-3.
pub fn mark(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let name = chain.word(at).filter(|word| matches!(*word, "hv" | "hr"))?;
    let behind = chain.after(at);
    let number = number::decimal(chain, behind).filter(|number| !chain.inside_a_run(number.end));
    if name == "hr" {
        let is_class = |text: &str| matches!(text, "8.8" | "10.9");
        let before = chain.before(at).filter(|figure| matches!(chain.digits(*figure), Some("8" | "9")));
        let has_class = number.is_some_and(|number| is_class(&number.text))
            || before.and_then(|figure| chain.before(figure)).is_some_and(|mark| chain.sign(mark, &["."]));
        return (has_class && !chain.inside_a_run(behind)).then(|| vec![(behind, What::Part("HR"))]);
    }
    let mut found = vec![(behind, What::Part("HV"))];
    match number.as_ref().map(|number| (number.text.as_str(), number.end)) {
        Some(("10", end)) => found.push((end, What::Class(10))),
        Some((text, end)) if DOTTED.contains(&text) => found.push((end, What::Steel(read(text)))),
        // A number behind HV measures.
        Some(_) => return None,
        None if chain.inside_a_run(behind) => return None,
        None => {}
    }
    Some(found)
}

/// `10 HV`, `10 HR nuts`: a nut of class 10 for such an assembly.
fn marked(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let class = chain.digits(at).filter(|digits| matches!(*digits, "8" | "10"))?;
    let end = chain.after(at);
    let behind = chain.after(end);
    let is_nut =
        lexicon::find(chain, behind, |word| matches!(word, Word::Part("nut")).then_some(())).is_some();
    let mark = match chain.word(end).filter(|_| !chain.inside_a_run(behind)) {
        Some("hv") if class == "10" => "HV",
        Some("hr") if is_nut => "HR",
        _ => return None,
    };
    Some(vec![(end, What::Class(class.parse().ok()?)), (behind, What::Part(mark))])
}

/// `with A nut`: a capital letter in front of a nut whose name is not in capitals is its grade of ASTM A563.
fn letter_of_nut(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let letter = chain.get(at).filter(|token| matches!(token.text, "A" | "B" | "C" | "D"))?;
    let end = chain.after(at);
    let is_small = chain.get(end).is_some_and(|next| next.text == next.lower && !chain.glued(end));
    let is_nut = lexicon::find(chain, end, |word| {
        matches!(word, Word::Part("nut" | "hex nut" | "heavy hex nut" | "heavy hex" | "hex")).then_some(())
    });
    (is_small && is_nut.is_some() && chain.before(at).is_some() && !chain.inside_a_run(at))
        .then(|| vec![(end, What::Steel(SteelWord::Half(letter.lower.clone())))])
}

/// `7M nut`: a grade of ASTM A194, and neither metres nor millions.
fn seven_m(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let m = chain.digits(at).filter(|digits| *digits == "7").map(|_| chain.after(at))?;
    let end = chain.after(m);
    let is_nut = lexicon::find(chain, end, |word| {
        matches!(word, Word::Part("nut" | "hex nut" | "heavy hex nut")).then_some(())
    });
    (chain.get(m)?.text == "M" && chain.glued(m) && is_nut.is_some())
        .then(|| vec![(end, What::Steel(read("a194 7m")))])
}

/// `8.8 / 8 / 200HV`: the classes of a bolt, its nut and its washer.
pub fn of_a_set(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let bolt = number::decimal(chain, at).filter(|number| DOTTED.contains(&number.text.as_str()))?;
    let stroke = |end: usize| chain.sign(end, &["/"]).then(|| chain.after(end));
    let nut = number::decimal(chain, stroke(bolt.end)?).filter(|number| number.whole().is_some())?;
    let grade = Grade::read(&format!("nut class {}", nut.text)).ok()?;
    let washer = number::decimal(chain, stroke(nut.end)?)?;
    let scale = lexicon::over(chain, chain.over(washer.end, &["-"]), Word::Scale("HV"));
    let is_class = matches!(washer.text.as_str(), "100" | "140" | "160" | "200" | "300");
    (is_class && !chain.inside_a_run(scale)).then(|| {
        vec![
            (bolt.end, What::Steel(read(&bolt.text))),
            (nut.end, What::Steel(SteelWord::Grade(grade))),
            (scale, What::OfWasher(format!("{} HV", washer.text))),
        ]
    })
}

/// A property class by its number alone; behind a stroke the class of the nut: `10.9/10`.
fn dotted(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let number = number::decimal(chain, at)?;
    let text = number.text.replace(',', ".");
    // `08.8` is of a bolt that carries less than its class.
    if text.strip_prefix('0').is_some_and(|class| DOTTED.contains(&class)) && !chain.inside_a_run(number.end)
    {
        return one(number.end, What::Steel(SteelWord::Unknown(text)));
    }
    let text = DOTTED.iter().find(|class| **class == text)?;
    let underlined = lexicon::find(chain, at, |word| matches!(word, Word::Steel(_)).then_some(()));
    let (end, written) = match underlined {
        Some((end, ())) if *text == "12.9" => (end, "12.9u"),
        _ => (number.end, *text),
    };
    if chain.inside_a_run(end) && chain.get(end).is_some_and(|next| next.sort == Sort::Digits) {
        return None;
    }
    let mut found = vec![(end, What::Steel(read(written)))];
    let stroke = chain.over(end, &["/"]);
    if stroke != end
        && chain.glued(end)
        && let Some(class) = number::decimal(chain, stroke).filter(|number| number.whole().is_some())
        && !chain.inside_a_run(class.end)
    {
        found.push((class.end, What::Steel(read(&format!("nut class {}", class.text)))));
    }
    Some(found)
}

/// A grade or class behind its word.
fn by_word(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (mut from, word) = lexicon::find(chain, at, |word| match word {
        Word::Grade | Word::Class | Word::Sae => Some(word),
        _ => None,
    })?;
    let marks: &[&str] = &[".", ":", "-", "=", "#"];
    from = chain.over(from, marks);
    let (mut is_class, mut is_grade) = (word == Word::Class, word == Word::Grade);
    let is_sae = word == Word::Sae;
    if is_sae {
        let graded = lexicon::over(chain, from, Word::Grade);
        // `SAE 5/8`, `washer SAE 1`: the narrow washers of that size.
        if graded == from && (is_inch_size(chain, from) || is_behind_a_washer(chain, at)) {
            return None;
        }
        from = chain.over(graded, marks);
    }
    // `grade/class 8.8`.
    for second in [Word::Class, Word::Grade] {
        let over = chain.over(from, &["/"]);
        let behind = lexicon::over(chain, over, second);
        if behind != over {
            is_class |= second == Word::Class;
            is_grade |= second == Word::Grade;
        }
        from = chain.over(if behind == over { from } else { behind }, marks);
    }
    if let Some(found) = dotted(chain, from) {
        return Some(found);
    }
    // `grade 5/8-11 x 2`: a thread, behind a word that nothing follows.
    if let Some(size) = number::fraction(chain, from) {
        let threads = chain.over(size.end, &["-", "–"]);
        let has_threads = threads != size.end
            && chain.digits(threads).is_some_and(|threads| !matches!(threads, "2" | "5" | "8"));
        if has_threads || lexicon::over(chain, size.end, Word::Times) != size.end {
            return None;
        }
    }
    if let Some(digits) = chain.digits(from) {
        let end = chain.after(from);
        let number = number::decimal(chain, from)?;
        // `grade 5.2` and `8.2` of SAE.
        if !is_class && matches!(number.text.as_str(), "5.2" | "8.2") {
            return one(number.end, What::Steel(SteelWord::Number(number.text)));
        }
        // `grade 8.1`: another grade than 8.
        if number.whole().is_none() && number.grouped.is_none() && !chain.inside_a_run(number.end) {
            return one(number.end, What::Steel(SteelWord::Unknown(number.text)));
        }
        // `class 05`: of thin nuts.
        if is_class && digits.len() == 2 && digits.starts_with('0') && !chain.inside_a_run(end) {
            return one(end, What::Steel(read(&format!("nut class {digits}"))));
        }
        // `grade 2H`, `grade B7`.
        if let Some((end, code)) = coded(chain, from) {
            return one(end, What::Steel(code));
        }
        if chain.inside_a_run(end) || digits.len() > 3 {
            return None;
        }
        // `class 05`: the nought is the mark of the thin nuts of ISO 898-2.
        if is_class && digits.len() > 1 && digits.starts_with('0') {
            return one(end, What::Steel(read(&format!("nut class {digits}"))));
        }
        return one(
            end,
            match digits.parse::<u32>() {
                // `class/grade 5`: whichever there is.
                Ok(number) if is_class && !(is_grade && digits.len() == 1) => What::Class(number),
                _ if is_sae || digits.len() == 1 => What::Steel(SteelWord::Number(digits.to_owned())),
                _ => What::Steel(SteelWord::Half(digits.to_owned())),
            },
        );
    }
    if is_sae {
        return None;
    }
    if let Some((end, code)) = coded(chain, from) {
        return one(end, What::Steel(code));
    }
    // `grade C`, `class D`, `grade DH`, and `grade A325`.
    if let Some(found) = document(chain, from) {
        return Some(found);
    }
    let letter = chain.get(from).filter(|token| token.sort == Sort::Word && token.text.len() == 1)?;
    let end = chain.after(from);
    let is_grade = matches!(letter.lower.as_str(), "a" | "b" | "c" | "d" | "e" | "f" | "g" | "h")
        && !chain.inside_a_run(end);
    is_grade.then(|| vec![(end, What::Steel(SteelWord::Half(letter.lower.clone())))])
}

/// `1/2`, `1-1/4`: a size, and no grade; in `5 1/2-13` and `5-1/2-13` the first is the grade.
fn is_inch_size(chain: &Chain<'_>, at: usize) -> bool {
    let dash = chain.after(at);
    let fraction = chain.after(dash);
    let is_mixed = chain.sign(dash, &["-"])
        && chain.glued(dash)
        && chain.glued(fraction)
        && number::mixed(chain, at).is_some_and(|number| number.value < 4.0);
    number::fraction(chain, at).is_some() || is_mixed
}

/// Whether the name of a washer stands right before a place.
fn is_behind_a_washer(chain: &Chain<'_>, at: usize) -> bool {
    let mut place = at;
    for _ in 0..3 {
        let Some(before) = chain.before(place) else { return false };
        place = before;
        let washer = |word| matches!(word, Word::Part(noun) if noun.ends_with("washer")).then_some(());
        if lexicon::find(chain, place, washer).is_some() {
            return true;
        }
        let is_between = |word| matches!(word, Word::Part(_)).then_some(());
        let is_break = chain.get(place).is_some_and(|token| token.text == ",");
        if !is_break && lexicon::find(chain, place, is_between).is_none() {
            return false;
        }
    }
    false
}

/// A code that stands for one steel.
fn code(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (end, word) = coded(chain, at)?;
    // `L7/7`: behind a stroke the grade of the nut.
    let behind = chain.after(end);
    let nut = chain.digits(behind).filter(|_| {
        chain.sign(end, &["/"])
            && chain.glued(end)
            && chain.glued(behind)
            && !chain.inside_a_run(chain.after(behind))
            && matches!(chain.word(at), Some("b" | "l"))
    });
    // `B7/B16`: one of two.
    let is_of_nut = |word: &SteelWord| matches!(word, SteelWord::Grade(grade) if grade.is_nut());
    if chain.sign(end, &["/"])
        && let Some((last, other)) = coded(chain, behind)
        && word != other
        && !is_of_nut(&word)
        && !is_of_nut(&other)
    {
        return Some(vec![(end, What::Steel(word)), (behind, What::Or), (last, What::Steel(other))]);
    }
    let mut found = vec![(end, What::Steel(word))];
    if let Some(nut) = nut.filter(|nut| nut.len() == 1) {
        found.push((chain.after(behind), What::Steel(read(&format!("a194 {nut}")))));
    }
    Some(found)
}

fn coded(chain: &Chain<'_>, at: usize) -> Option<(usize, SteelWord)> {
    let (end, code) = lexicon::find(chain, at, |word| match word {
        Word::Steel(code) => Some(code),
        _ => None,
    })?;
    (!chain.inside_a_run(end)).then(|| (end, read(code)))
}

/// A document of ASTM with its grade: `A193 B7`, `A194-2H`, `A354 grade BD`, `A325 type 1`.
fn document(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (mut end, id) = number_of(chain, at).filter(|(_, id)| ASTM_STEELS.contains(&id.as_str()))?;
    let marks: &[&str] = &["-", "/", ".", ":"];
    let mut text = id.trim_start_matches('s').to_owned();
    let mut grade_from = end;
    for word in [Word::Grade, Word::Class, Word::Sae] {
        let behind = lexicon::over(chain, chain.over(grade_from, &["-", "/"]), word);
        if behind != chain.over(grade_from, &["-", "/"]) {
            grade_from = chain.over(behind, marks);
        }
    }
    let named = grade_from != end;
    // `F3125 grade A325`: the inner document is the grade.
    if let Some((inner_end, inner)) =
        number_of(chain, chain.over(grade_from, &["-", "/"])).filter(|_| text == "f3125")
    {
        end = inner_end;
        text = format!("{text} {inner}");
    } else if let Some((behind, code)) = grade_code(chain, chain.over(grade_from, &["-", "/"]), named, &text)
    {
        // `A325 DH`: a bolt's steel that has no grades, and that of its nut.
        let both = format!("{text} {code}");
        let are_two = !named
            && matches!(read(&both), SteelWord::Unknown(_))
            && matches!(read(&text), SteelWord::Grade(_))
            && !chain.glued(chain.over(grade_from, &["-", "/"]));
        if !are_two {
            (end, text) = (behind, both);
        }
    }
    // `A325T`: threaded to the head; `A325TC`: twist-off.
    let behind = chain.after(end);
    let mark = chain
        .word(end)
        .filter(|word| matches!(*word, "t" | "tc") && chain.glued(end) && !chain.inside_a_run(behind));
    let grade = text.strip_prefix("f3125 ").unwrap_or(&text);
    if let (Some(mark), "a325" | "a490") = (mark, grade) {
        return Some(match (mark, grade) {
            ("t", _) => vec![
                (end, What::Steel(read(&text))),
                (
                    behind,
                    What::Not("threaded to the head: the usual length of thread is reckoned with".into()),
                ),
            ],
            (_, "a325") => vec![(behind, What::Steel(read("f1852")))],
            _ => vec![(behind, What::Steel(read("f2280")))],
        });
    }
    // `A325TY1`, `A325T1`: of type 1.
    let figure = chain.after(end);
    let is_typed = matches!(chain.word(end), Some("ty" | "t" | "type"))
        && chain.glued(end)
        && chain.glued(figure)
        && chain.digits(figure).is_some_and(|figure| figure.len() == 1)
        && !chain.inside_a_run(chain.after(figure));
    if is_typed {
        let what =
            if chain.digits(figure) == Some("1") { What::Filler } else { What::Not(OTHER_TYPE.into()) };
        return Some(vec![(end, What::Steel(read(&text))), (chain.after(figure), what)]);
    }
    // `A325-N`, `A325X`, `A325-SC`.
    let joint = chain.over(end, &["-"]);
    let is_joint = matches!(grade, "a325" | "a325m" | "a490" | "a490m" | "f1852" | "f2280")
        && match chain.word(joint) {
            // `A325 SC` stands apart as well; N is a word, and X a cross.
            Some("sc") => true,
            Some("n" | "x") => chain.glued(joint),
            _ => false,
        }
        && !chain.inside_a_run(chain.after(joint));
    if is_joint {
        return Some(vec![(end, What::Steel(read(&text))), (chain.after(joint), What::Not(JOINT.into()))]);
    }
    if chain.inside_a_run(end) {
        return None;
    }
    let mut found = vec![(end, What::Steel(read(&text)))];
    // `A325-1`: of type 1.
    let kind = chain.after(end);
    if matches!(grade, "a325" | "a325m" | "a490" | "a490m" | "a449" | "f436")
        && chain.sign(end, &["-"])
        && chain.glued(kind)
    {
        let behind = chain.after(kind);
        match chain.digits(kind).filter(|_| !chain.inside_a_run(behind)) {
            Some("1") => found.push((behind, What::Filler)),
            Some(_) => found.push((behind, What::Not(OTHER_TYPE.into()))),
            None => {}
        }
    }
    Some(found)
}

/// The grade behind a document.
fn grade_code(chain: &Chain<'_>, at: usize, named: bool, document: &str) -> Option<(usize, String)> {
    if let Some((end, code)) = lexicon::find(chain, at, |word| match word {
        Word::Steel(code) => Some(code),
        _ => None,
    }) {
        return (!chain.inside_a_run(end)).then(|| (end, code.to_owned()));
    }
    let token = chain.get(at).filter(|token| token.is_alphanumeric() && token.text.len() <= 3)?;
    let end = chain.after(at);
    let mut text = token.lower.clone();
    let mut last = end;
    // A code of letters and figures touches itself: `8M`, `C3`, `B16`.
    while chain.inside_a_run(last) && text.len() < 4 {
        text.push_str(&chain.get(last)?.lower);
        last = chain.after(last);
    }
    if chain.inside_a_run(last) || number::decimal(chain, at).is_some_and(|number| number.whole().is_none()) {
        return None;
    }
    let is_letter = text.len() == 1 && matches!(text.as_str(), "a" | "b" | "c" | "d" | "o");
    let touches = chain.sign(at.saturating_sub(1), &["-", "/"]) || chain.glued(at);
    let is_code = match document {
        "f1554" => matches!(text.as_str(), "36" | "55" | "105"),
        // `A307 C3` is a place behind the grade.
        "a307" => is_letter,
        "a563" => is_letter || matches!(text.as_str(), "c3" | "d3"),
        "a563m" => matches!(text.as_str(), "8s" | "10s"),
        "a194" => {
            matches!(text.as_str(), "1" | "2" | "3" | "4" | "6" | "7" | "7m" | "8" | "8m" | "16")
                && (named || touches || text.len() > 1 || is_of_nut(chain, last))
        }
        "a193" | "a320" => text.len() >= 2 && text.starts_with(['b', 'l']),
        "j995" => matches!(text.as_str(), "2" | "5" | "8"),
        "a354" => false,
        _ => false,
    };
    (is_code || (named && !text.is_empty() && token.sort == Sort::Word && text.len() <= 3))
        .then_some((last, text))
}

/// Whether the name of a nut follows, and the number before it is no count: `A194 7 nuts`, of a document that
/// says nothing without its grade.
fn is_of_nut(chain: &Chain<'_>, at: usize) -> bool {
    lexicon::find(chain, at, |word| match word {
        Word::Part(words) => {
            words.split(' ').all(|word| matches!(word, "nut" | "hex" | "heavy")).then_some(())
        }
        _ => None,
    })
    .is_some()
}

/// The stainless grades of the documents of ASTM: the zinc of this trade goes on none of them.
fn is_stainless(text: &str) -> bool {
    const DOCUMENTS: &[&str] = &["f593", "f594", "f837", "f879", "f880"];
    match text.split_once(' ') {
        Some(("a194", grade)) => grade.starts_with('8') || matches!(grade, "6" | "9"),
        Some(("a193" | "a320", grade)) => grade.starts_with("b8") || grade == "b6",
        Some((document, _)) => DOCUMENTS.contains(&document),
        None => DOCUMENTS.contains(&text),
    }
}

/// The steel of a text, by the one reader of grades.
pub fn read(text: &str) -> SteelWord {
    match Grade::read(text) {
        Ok(grade) => SteelWord::Grade(grade),
        Err(_) if matches!(text, "f3125" | "a563" | "a354" | "a193" | "a194" | "a320" | "f1554" | "j995") => {
            SteelWord::Half(text.to_owned())
        }
        Err(_) if is_stainless(text) => SteelWord::OtherMetal,
        Err(_) => SteelWord::Unknown(upper(text)),
    }
}
