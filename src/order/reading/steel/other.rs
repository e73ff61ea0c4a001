//! The other of two steels that share the word or the document in front: `grade 5 or 8`, `A563 C or D`.

use super::{DOTTED, document, read};
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::number;
use crate::order::reading::token::{Chain, Sort};
use crate::order::reading::what::{Found, SteelWord, What};
use crate::steel::Grade;

/// The grades of SAE J429 that a number by itself can be behind another one.
const NUMBERS: &[&str] = &["1", "2", "5", "8"];

/// What was found, and behind `or` or a stroke the other grade; of `A325/F1852` the stroke alone.
pub(super) fn with_another(chain: &Chain<'_>, mut found: Found) -> Found {
    let [(end, What::Steel(steel))] = found.as_slice() else { return found };
    let stroke = chain.over(*end, &["/"]);
    let is_stroke = stroke != *end;
    let or = if is_stroke { stroke } else { lexicon::over(chain, *end, Word::Or) };
    if or == *end {
        return found;
    }
    if let SteelWord::Grade(grade) = steel
        && is_stroke
        && let (Some(first), Some(second)) =
            (is_twist_off(*grade), grade_at(chain, or).and_then(is_twist_off))
        && first != second
    {
        found.push((or, What::Or));
        return found;
    }
    if let Some((last, other)) = other(chain, or, steel, is_stroke) {
        found.push((or, What::Or));
        found.push((last, What::Steel(other)));
    }
    found
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

fn other(chain: &Chain<'_>, at: usize, first: &SteelWord, is_stroke: bool) -> Option<(usize, SteelWord)> {
    let token = chain.get(at).filter(|token| token.is_alphanumeric())?;
    if let SteelWord::Number(first) = first {
        let is_grade = NUMBERS.contains(&token.text) && NUMBERS.contains(&first.as_str());
        let end = chain.after(at);
        // `grade 5/8-11`, `grade 5 or 8 x 2`: of a size.
        let goes_on = chain.inside_a_run(end)
            || chain.sign(end, &["-", "\"", "″", "×", "*", "/", "."])
            || lexicon::over(chain, end, Word::Times) != end
            || number::decimal(chain, at)
                .is_none_or(|number| number.text != token.text || DOTTED.contains(&number.text.as_str()));
        let counts =
            |word| matches!(word, Word::Count(..) | Word::Each | Word::Set | Word::Years | Word::Length(_));
        let is_unit = lexicon::find(chain, end, |word| counts(word).then_some(())).is_some();
        return (is_grade && token.text != first && !goes_on && !is_unit)
            .then(|| (end, SteelWord::Number(token.text.to_owned())));
    }
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
    let is_capital = is_number || token.text != token.lower && (token.text != "A" || is_stroke);
    match first {
        SteelWord::Grade(grade) => {
            let (document, own) = grade.key().rsplit_once('-')?;
            let SteelWord::Grade(other) = read(&format!("{document} {code}")) else { return None };
            (own != code && is_capital && other.key().starts_with(document))
                .then_some((end, SteelWord::Grade(other)))
        }
        SteelWord::Half(own) => {
            let are_letters = own.len() == 1 && own.chars().all(char::is_alphabetic) && code.len() == 1;
            (are_letters && is_capital && *own != code && matches!(code.as_str(), "a" | "b" | "c" | "d"))
                .then_some((end, SteelWord::Half(code)))
        }
        _ => None,
    }
}
