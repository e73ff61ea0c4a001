//! The other of two steels that share the word or the document in front: `grade 5 or 8`, `A563 C or D`.

use super::{DOTTED, document, read};
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::number;
use crate::order::reading::token::{Chain, Sort};
use crate::order::reading::what::{Found, SteelWord, What};
use crate::steel::Grade;

/// What was found, and behind `or`, a stroke or a dash each other grade; of `A325/F1852` the stroke alone.
pub(super) fn with_another(chain: &Chain<'_>, mut found: Found) -> Found {
    let [(end, first)] = found.as_slice() else { return found };
    let (mut end, first) = (*end, first.clone());
    let stroke = chain.over(end, &["/"]);
    if let What::Steel(SteelWord::Grade(grade)) = &first
        && stroke != end
        && let (Some(first), Some(second)) =
            (is_twist_off(*grade), grade_at(chain, stroke).and_then(is_twist_off))
        && first != second
    {
        found.push((stroke, What::Or));
        return found;
    }
    let mut said = vec![first];
    while let Some((joint, last, other)) = next(chain, end, &said) {
        found.push((joint, What::Or));
        found.push((last, other.clone()));
        said.push(other);
        end = last;
    }
    found
}

/// `nuts 8/10`, `Muttern 8 oder 10`, `nuts 2/5/8`: behind the name of a nut the first of several classes; one alone is a
/// number like any other, and `nuts 5/8` is a size.
pub(super) fn classes_of_a_nut(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let class = chain.digits(at)?.parse().ok()?;
    let before = chain.before(at).filter(|_| !chain.inside_a_run(at))?;
    let nut = |word| matches!(word, Word::Part(noun) if noun.ends_with("nut")).then_some(());
    lexicon::find(chain, before, nut).filter(|(end, ())| *end == at)?;
    let end = chain.after(at);
    let found = with_another(chain, vec![(end, What::Class(class))]);
    let is_size = number::fraction(chain, at).is_some();
    let is_counted = chain.sign(end, &[",", "&", "+"]);
    (found.len() > 1 && !is_size && !is_counted && class > 1).then(|| vec![(end, What::Class(class))])
}

/// What joins one grade to the next.
#[derive(Clone, Copy, PartialEq)]
enum Joint {
    Stroke,
    Dash,
    Or,
    And,
    Comma,
}

/// The next grade of several, with what joins it: the place behind the joint, the place behind the grade, and the grade.
/// Behind a comma it is one of them only where `or` follows in the end: `grade 2, 5 or 8`.
fn next(chain: &Chain<'_>, end: usize, said: &[What]) -> Option<(usize, usize, What)> {
    let open = chain.over(end, &["("]);
    let word = |word| matches!(word, Word::Or | Word::And).then_some(word);
    let (behind, joint) = match lexicon::find(chain, open, word) {
        Some((behind, Word::Or)) => (behind, Joint::Or),
        Some((behind, _)) => (behind, Joint::And),
        None => {
            let joint = match chain.get(end)?.text {
                "/" => Joint::Stroke,
                "-" | "–" => Joint::Dash,
                "&" | "+" => Joint::And,
                "," => Joint::Comma,
                _ => return None,
            };
            (chain.after(end), joint)
        }
    };
    let (last, other) = other(chain, behind, said, joint)?;
    let closes = || {
        let mut said = said.to_vec();
        said.push(other.clone());
        next(chain, last, &said).is_some()
    };
    (joint != Joint::Comma || closes()).then_some((behind, last, other))
}

/// The grade of a document at a place.
fn grade_at(chain: &Chain<'_>, at: usize) -> Option<Grade> {
    match document(chain, at)?.first()? {
        (_, What::Steel(SteelWord::Grade(grade))) => Some(*grade),
        _ => None,
    }
}

/// Whether a structural bolt of this grade is the twist-off one; `None` of other grades.
fn is_twist_off(grade: Grade) -> Option<bool> {
    match grade {
        Grade::A325 | Grade::A325M | Grade::A490 | Grade::A490M => Some(false),
        Grade::F1852 | Grade::F2280 => Some(true),
        _ => None,
    }
}

/// The grade at a place, where it may be another beside those that were said.
fn other(chain: &Chain<'_>, at: usize, said: &[What], joint: Joint) -> Option<(usize, What)> {
    let token = chain.get(at).filter(|token| token.is_alphanumeric())?;
    let first = said.first()?;
    let is_new = |what: What, end: usize| (!said.contains(&what)).then_some((end, what));
    if let Some(numbers) = numbers_beside(first) {
        let end = chain.after(at);
        let number = token.text.parse::<u32>().ok().filter(|_| numbers.contains(&token.text))?;
        let fits = !goes_on(chain, at, end, numbers) && !has_a_unit(chain, end, joint);
        let what = match first {
            What::Class(_) => What::Class(number),
            What::Steel(SteelWord::Half(_)) => What::Steel(SteelWord::Half(token.text.to_owned())),
            _ => What::Steel(SteelWord::Number(token.text.to_owned())),
        };
        return is_new(what, end).filter(|_| fits);
    }
    let What::Steel(first) = first else { return None };
    if matches!(joint, Joint::Dash | Joint::And) {
        return None;
    }
    let is_stroke = joint == Joint::Stroke;
    // A letter with what touches it: `D`, `DH`, `BD`, `C3`.
    let mut end = chain.after(at);
    let mut code = token.lower.clone();
    while chain.inside_a_run(end) && code.len() < 4 {
        code.push_str(&chain.get(end)?.lower);
        end = chain.after(end);
    }
    if chain.inside_a_run(end) || code.len() > 3 {
        return None;
    }
    // `F1554 gr 36/55`; `or A` may be an article, and `/ D` something else.
    let is_number = token.sort == Sort::Digits && code == token.lower;
    if is_number && has_a_unit(chain, end, joint) {
        return None;
    }
    let is_capital = is_number || token.text != token.lower && (token.text != "A" || is_stroke);
    match first {
        SteelWord::Grade(grade) => {
            let (document, _) = grade.key().rsplit_once('-')?;
            let SteelWord::Grade(other) = read(&format!("{document} {code}")) else { return None };
            let fits = is_capital && other.key().starts_with(document);
            is_new(What::Steel(SteelWord::Grade(other)), end).filter(|_| fits)
        }
        SteelWord::Half(own) => {
            let are_letters = own.len() == 1 && own.chars().all(char::is_alphabetic) && code.len() == 1;
            let fits = are_letters && is_capital && matches!(code.as_str(), "a" | "b" | "c" | "d");
            is_new(What::Steel(SteelWord::Half(code)), end).filter(|_| fits)
        }
        _ => None,
    }
}

/// The numbers by themselves that can be another grade behind one, or another class.
fn numbers_beside(first: &What) -> Option<&'static [&'static str]> {
    /// Of SAE J429.
    const GRADES: &[&str] = &["1", "2", "5", "8"];
    /// Of ASTM F1554.
    const ANCHORS: &[&str] = &["36", "55", "105"];
    /// Of nuts, and of coats by ASTM B695.
    const CLASSES: &[&str] =
        &["2", "4", "5", "6", "8", "9", "10", "12", "25", "40", "50", "55", "65", "70", "80", "110"];
    match first {
        What::Steel(SteelWord::Number(own)) => GRADES.contains(&own.as_str()).then_some(GRADES),
        What::Steel(SteelWord::Half(own)) => ANCHORS.contains(&own.as_str()).then_some(ANCHORS),
        What::Class(_) => Some(CLASSES),
        _ => None,
    }
}

/// `grade 5/8-11`, `grade 5 or 8 x 2`, `class 8 or 8.8`: of a size, or another number than its first figures say.
fn goes_on(chain: &Chain<'_>, at: usize, end: usize, numbers: &[&str]) -> bool {
    let is_sign = |signs: &[&str]| chain.sign(end, signs);
    let behind = chain.after(end);
    let is_next = chain.digits(behind).is_none_or(|digits| numbers.contains(&digits));
    let is_whole = |number: number::Number| {
        chain.get(at).is_some_and(|token| number.text == token.text)
            && !DOTTED.contains(&number.text.as_str())
    };
    // `gr 5-1/2-13`.
    let is_size = number::fraction(chain, at).or_else(|| number::mixed(chain, at)).is_some();
    chain.inside_a_run(end)
        || is_size
        || is_sign(&["-", "/"]) && chain.glued(behind) && !is_next
        || is_sign(&["\"", "″", "×", "*"])
        || is_sign(&["."]) && chain.glued(behind) && chain.digits(behind).is_some()
        || lexicon::over(chain, end, Word::Times) != end
        || !number::decimal(chain, at).is_some_and(is_whole)
}

/// Whether the number in front of a place counts or measures something.
fn has_a_unit(chain: &Chain<'_>, end: usize, joint: Joint) -> bool {
    lexicon::find(chain, end, |word| match word {
        Word::Count(..) | Word::Each | Word::Set | Word::Years | Word::Length(_) | Word::OfCoat(_) => {
            Some(())
        }
        Word::Hours | Word::Mass(_) | Word::Box | Word::Far(_) | Word::Scale(_) => Some(()),
        // `class 8 nuts and 10 washers`.
        Word::Part(noun) if matches!(joint, Joint::And | Joint::Dash) => {
            ["nut", "washer"].iter().any(|mate| noun.ends_with(mate)).then_some(())
        }
        _ => None,
    })
    .is_some()
}
