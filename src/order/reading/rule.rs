//! The rules: a pattern over tokens, and what stands there. The longest match wins.

use super::lexicon::{self, Word};
use super::token::{Chain, Sort};
use super::what::{Found, SteelWord, What, one};
use super::{
    bake, count, distance, document, either, joined, label, left_out, length, letters, mark, measure,
};
use super::{money, named, place, qualified, size, steel, thickness, threads, weight, worked};
use crate::process::Process;
use crate::site::Category;
use crate::thread::ToleranceClass;

/// A rule: its name, what it can begin with, and its pattern.
struct Rule {
    name: &'static str,
    begins: Begins,
    at: fn(&Chain<'_>, usize) -> Option<Found>,
}

/// What a pattern can begin with.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Begins {
    /// Letters.
    Letters,
    /// Figures, or a sign in front of them.
    Figures,
    /// Either.
    Either,
}

use Begins::{Either, Figures, Letters};

const fn rule(name: &'static str, begins: Begins, at: fn(&Chain<'_>, usize) -> Option<Found>) -> Rule {
    Rule { name, begins, at }
}

/// Every rule; of two that match as far, the first counts.
static RULES: &[Rule] = &[
    rule("label", Letters, label::label),
    rule("price", Letters, money::price),
    rule("money", Either, money::money),
    rule("date", Letters, named::date),
    rule("date by itself", Figures, named::full_date),
    rule(distance::RULE, Either, distance::of_the_sea),
    rule("bake", Either, bake::bake),
    rule("stress relief", Either, bake::stress_relief),
    rule("worked after hardening", Letters, worked::after_hardening),
    rule("measure of something else", Either, named::of),
    rule("length of the thread", Either, named::thread_length),
    rule("diameter", Either, named::diameter),
    rule("length by its name", Either, named::long),
    rule("pitch", Either, named::pitch),
    rule("metric thread", Letters, size::metric),
    rule("reading of a coat", Either, thickness::reading),
    rule("thickness", Figures, thickness::thickness),
    rule("thickness behind a word", Letters, thickness::bounds::bounded),
    rule("tolerance", Figures, thickness::tolerance),
    rule("inch thread", Figures, size::unified),
    rule("numbered size", Letters, size::numbered_in_words),
    rule("length before its thread", Figures, size::length_before),
    rule("foreign thread", Figures, size::foreign),
    rule("foreign thread in front", Letters, size::foreign_in_front),
    rule("size in inches", Figures, size::inches),
    rule("length", Figures, length::length),
    rule("two measures", Figures, length::pair),
    rule("sizes of a washer", Figures, length::triple),
    rule("several lengths", Either, length::several),
    rule("size of a tapping screw", Letters, length::tapping),
    rule("length behind a cross", Either, length::across),
    rule("class of a thread", Figures, size::thread_class),
    rule("mark of a bolt cut under", Letters, mark::undercut),
    rule("of a unit", Letters, mark::of_a_unit),
    rule("mark of a nut tapped over", Figures, mark::tapped_mark),
    rule("mark of a thread", Letters, mark::marked),
    rule("tapped over, around its nut", Letters, threads::around_the_nut),
    rule("tapped hole that is there", Letters, threads::already_there),
    rule("bolt, nut, washer", Letters, set),
    rule("two letters of a mate", Letters, letters::mate),
    rule("standard nut", Letters, standard_nut),
    rule("another part", Letters, qualified::another),
    rule("mark of a preloaded assembly", Letters, steel::mark),
    rule("classes of a set", Figures, steel::of_a_set),
    rule("steel", Either, steel::steel),
    rule("analysis of a steel", Either, steel::analysis),
    rule("document", Letters, document::document),
    rule("thickness of plated zinc", Letters, document::zinc),
    rule("code of a plated coat", Letters, document::code),
    rule("places", Letters, places),
    rule("surroundings by themselves", Letters, place::alone),
    rule("category with a dash", Letters, dashed_category),
    rule("indoors in Dutch", Letters, indoors),
    rule("energy", Either, measure::energy),
    rule("friction", Letters, measure::friction),
    rule("quantity", Either, count::count),
    rule("years", Either, measure::years),
    rule("years of something else", Letters, measure::no_life),
    rule("hardness of the case", Either, named::case),
    rule("yield strength", Either, measure::yields),
    rule("hardness", Either, measure::hardness),
    rule("strength in pounds", Either, measure::psi),
    rule("temperature", Figures, measure::temperature),
    rule("measure below nothing", Figures, measure::negative),
    rule("cell below nothing", Figures, measure::negative_cell),
    rule("allowance", Either, measure::allowance),
    rule("weight", Either, weight::weight),
    rule("other measure", Figures, measure::other),
    rule("type", Letters, measure::type_of),
    rule("not, in front of a finish", Letters, left_out::not_that),
    rule("not by a process", Letters, left_out::not_so),
    rule("refused finish", Letters, left_out::refused),
    rule(left_out::BY_A_VERB, Letters, left_out::by_a_verb),
    rule(left_out::ALL_BUT, Letters, left_out::all_but),
    rule(left_out::REPLACED, Letters, left_out::in_the_place),
    rule("not fit for a finish", Letters, left_out::not_fit_for),
    rule("free of zinc", Letters, left_out::free_of_zinc),
    rule("zone kept bare", Letters, left_out::kept_bare),
    rule("used parts", Letters, left_out::second_hand),
    rule("zinc or galvanized", Letters, either::zinc_or_galvanized),
    rule("another metal in contact", Letters, joined::contact),
    rule("thing of another metal", Letters, joined::thing),
    rule("word", Either, word),
    rule("one of two coats", Letters, either::coats),
    rule("half a word for a coat", Letters, either::half_alone),
    rule("word for a coat in brackets", Letters, either::in_brackets),
    rule("word for a coat, and how in brackets", Letters, either::in_brackets_behind),
    rule("number", Figures, measure::bare),
];

/// The longest match at a place.
pub fn longest(chain: &Chain<'_>, at: usize) -> Option<(&'static str, Found)> {
    let sort = chain.get(at)?.sort;
    let may = |begins: Begins| match sort {
        Sort::Word => begins != Figures,
        Sort::Digits | Sort::Sign => begins != Letters,
        Sort::Break => false,
    };
    let end = |found: &Found| found.last().map_or(at, |(end, _)| *end);
    let rules = RULES.iter().filter(|rule| may(rule.begins));
    let matches = rules.filter_map(|rule| Some((rule.name, (rule.at)(chain, at)?)));
    matches.reduce(|one, other| if end(&other.1) > end(&one.1) { other } else { one })
}

/// A word or a phrase that means something by itself.
fn word(chain: &Chain<'_>, at: usize) -> Option<Found> {
    if chain.sign(at, &["&", "+"]) {
        return one(chain.after(at), What::With(false));
    }
    let behind = chain.after(at);
    // `tuerca y arandela`.
    let part = |word| matches!(word, Word::Part(_)).then_some(());
    let mate = chain.digits(behind).map_or(behind, |_| chain.after(behind));
    if chain.get(at).is_some_and(|token| token.text == "y") && lexicon::whole(chain, mate, part).is_some() {
        return one(behind, What::With(false));
    }
    // `o. Mutter`.
    if chain.word(at) == Some("o") && chain.sign(behind, &["."]) && chain.glued(behind) {
        let end = chain.after(behind);
        let noun =
            lexicon::find(chain, end, |word| matches!(word, Word::Part("nut" | "washer")).then_some(()));
        return noun.and_then(|_| one(end, What::Without));
    }
    let (end, what) = lexicon::whole(chain, at, alone)?;
    // `thirty-five nuts`.
    if let Some((behind, number)) = lexicon::small(chain, at)
        && behind > end
        && !chain.inside_a_run(behind)
    {
        return one(behind, What::Small(number));
    }
    // `zincado mecánico`, `zingage par voie mécanique`: the adjective decides, of one word for zinc without a bath.
    let adjective = lexicon::over(chain, end, Word::Mechanically);
    let is_of_it = || adjective != chain.after(end) || agrees(chain.word(at), chain.word(end));
    let is_zinc = |word: &str| ["zin", "cinc", "galv"].iter().any(|zinc| word.starts_with(zinc));
    if adjective != end && end == behind && chain.word(at).is_some_and(is_zinc) && is_of_it() {
        return one(adjective, What::Process(Process::Mechanical, false));
    }
    // `EN` is a publisher, and `en` joins two parts in Dutch.
    let is_publisher = what == What::With(false) && chain.get(at).is_some_and(|token| token.text == "EN");
    if is_publisher { None } else { one(end, what) }
}

/// Whether an adjective has the ending of its noun, or is an adverb: `zinguées, mécanique générale` are of no barrel.
fn agrees(noun: Option<&str>, adjective: Option<&str>) -> bool {
    let (Some(noun), Some(adjective)) = (noun, adjective) else { return false };
    let of_one = |word: &'_ str| word.trim_end_matches('s').len() == word.len();
    let is_apart = noun.contains("ado") && adjective.contains("nica");
    adjective.contains("ment") || of_one(noun) == of_one(adjective) && !is_apart
}

/// `B/N/W`: a bolt with its nut and its washer.
fn set(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let mut found = Found::new();
    let mut end = at;
    for (letter, part) in [("b", "bolt"), ("n", "nut"), ("w", "washer")] {
        if end != at {
            let stroke = end;
            end = chain.over(end, &["/", "+", "&"]);
            if end == stroke {
                break;
            }
            found.push((end, What::With(true)));
        }
        chain.word(end).filter(|word| *word == letter)?;
        end = chain.after(end);
        found.push((end, What::Part(part)));
    }
    (found.len() >= 3 && !chain.inside_a_run(end)).then_some(found)
}

/// `standard nuts`: their thread is the standard one.
fn standard_nut(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at).filter(|word| *word == "standard")?;
    let behind = chain.after(at);
    let (end, noun) = lexicon::whole(chain, behind, |word| match word {
        Word::Part(noun @ ("nut" | "hex nut" | "heavy hex nut")) => Some(noun),
        _ => None,
    })?;
    Some(vec![(behind, What::StandardNut), (end, What::Part(noun))])
}

/// `C3-4`, `C3/4`, `C3-C4`: two categories in one word.
fn places(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let category = |at: usize| match lexicon::find(chain, at, |word| match word {
        Word::Category(category) => Some(category),
        _ => None,
    }) {
        found @ Some(_) => found,
        None => {
            let end = chain.after(at);
            let found = chain.digits(at).and_then(|digits| Category::read(&format!("C{digits}")))?;
            Some((end, found))
        }
    };
    chain.word(at)?;
    let (end, first) = category(at)?;
    let behind = chain.after(end);
    let joined = chain.sign(end, &["-", "–", "/"]) && chain.glued(end) && chain.glued(behind);
    let (last, second) = category(behind).filter(|_| joined)?;
    (!chain.inside_a_run(last))
        .then(|| vec![(end, What::Category(first)), (behind, What::Or), (last, What::Category(second))])
}

/// `C-3`, `C -3`: a category, where no word for a grade or a drawing stands in front.
fn dashed_category(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.get(at).filter(|token| token.text == "C" && !chain.glued(at))?;
    let dash = chain.after(at);
    let figure = chain.after(dash);
    let end = chain.after(figure);
    let touches = (chain.glued(dash), chain.glued(figure));
    let is_joined = chain.sign(dash, &["-", "–", "‑"]) && touches != (false, false);
    let counts = touches != (true, true) && count::unit(chain, end).is_some();
    let category = chain.digits(figure).and_then(|digits| Category::read(&format!("C{digits}")))?;
    let is_alone = !(chain.inside_a_run(end) || chain.sign(end, &["-", "/", "."]) && chain.glued(end));
    let is_a_mark = chain.before(at).is_some_and(|before| {
        let marks =
            |word| matches!(word, Word::Grade | Word::Class | Word::Type | Word::Label(_)).then_some(());
        lexicon::find(chain, before, marks).is_some_and(|(behind, ())| behind == at)
    });
    (is_joined && is_alone && !counts && !is_a_mark).then(|| vec![(end, What::Category(category))])
}

/// `…, binnen`: indoors in Dutch, where no time follows that it would be within.
fn indoors(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at).filter(|word| *word == "binnen")?;
    let end = chain.after(at);
    let is_last = chain.get(end).is_none_or(|next| next.sort == Sort::Break);
    (is_last && end == at + 1).then(|| vec![(end, What::Place(&[Category::C1, Category::C2]))])
}

/// What a word means by itself; `None` for what needs a number or a neighbour.
fn alone(word: Word) -> Option<What> {
    Some(match word {
        Word::Part(words) => What::Part(words),
        Word::Process(process) => What::Process(process, false),
        Word::Tinted(process) => What::Process(process, true),
        Word::Other(key) => What::Other(key),
        Word::Not(why) => What::Not(why.into()),
        Word::OtherMetal => What::Steel(SteelWord::OtherMetal),
        Word::Category(category) => What::Category(category),
        Word::Around(surroundings) => What::Around(surroundings),
        Word::Place(categories) => What::Place(categories),
        Word::CaseHardened => What::Yes("case"),
        Word::WorkedHard(how) => What::Worked(how),
        Word::NylonPatch => What::Yes("patch"),
        Word::Hole(is_there) => What::Hole(is_there),
        Word::CutUnder => What::ThreadClass(ToleranceClass::read("6az")?),
        Word::LeftHand => What::Yes("left"),
        Word::Foreign => What::Not(size::FOREIGN.into()),
        Word::Series(series) => What::Series(series),
        Word::Sae => What::Part("sae"),
        Word::With => What::With(true),
        Word::And => What::With(false),
        Word::Without => What::Without,
        Word::Excluded | Word::Refused | Word::ByOthers => What::Excluded,
        Word::Was => What::Was,
        Word::Instead => What::Instead,
        Word::Or => What::Or,
        Word::Preferred { in_front } => What::Preferred { in_front },
        Word::Acceptable => What::Acceptable,
        Word::Polite => What::Polite,
        Word::HighBath => What::HighBath,
        Word::Small(number) => What::Small(number),
        Word::Set | Word::Count(1, true) => What::Set,
        Word::Tempered => What::Tempered,
        Word::Bath => What::Bath,
        Word::Overtapped => What::Not(lexicon::TAPPED.into()),
        Word::NotOvertapped => What::StandardNut,
        Word::Ends => What::Ends,
        Word::Each
        | Word::Least
        | Word::Most
        | Word::Diameter
        | Word::Long
        | Word::Pitch
        | Word::PerInch
        | Word::Quantity
        | Word::Filler => What::Filler,
        Word::Of(why) => What::Not(why.into()),
        _ => return None,
    })
}
