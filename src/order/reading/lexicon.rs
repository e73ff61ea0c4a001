//! The words of the trade: abbreviations and plurals, English and the usual German, and what each means.
//!
//! One row a meaning, with every way to write it. Words are written in lower case; a space stands for
//! a space, a dash, a stroke or nothing of the kind between two words. Figures that touch letters here
//! must touch them in the line: `c4` is a place, `c 4` is not. A new word is one more entry of a row.

use std::collections::{HashMap, HashSet};
use std::sync::LazyLock;

mod address;
mod coats;
mod documents;
mod joined;
mod kinds;
mod lists;
mod lives;
mod refusals;
mod uses;
mod words;

use super::token::{self, Chain, Sort};
use crate::process::Process;
use crate::site::{Category, Surroundings};
use crate::steel::Worked;
use words::WORDS;

pub use address::*;
pub use coats::*;
pub use documents::{ASTM_STEELS, COAT_DOCUMENTS, OTHER_COATS, OTHER_DOCUMENTS};
pub use joined::*;
pub use kinds::{KINDS, PART_STANDARDS};
pub use lists::*;
pub use lives::*;
pub use refusals::*;
pub use uses::*;
pub use words::{
    A_READING, ANY_ZINC, BARE, CAST_IN, COLOUR, EXTRA, HARSHER, HEIGHT, HOURS, IN_SERVICE, JOINT, LEFT_OPEN,
    MASKED, MONTHS, NO_LIFE, NO_PLACE, NOT_IN_AIR, OF_A_TIME, OTHER_COAT, OUTDOORS, SAYS_NOTHING, STRESS,
    TAPPED, THREAD_LENGTH, TOP, USED, WEIGHT_OF_BOX, WEIGHT_OF_PIECE, YIELD,
};

/// What a word or a phrase means.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Word {
    /// Words of a part's name, in the form that [`KINDS`] uses.
    Part(&'static str),
    /// Behind a word for zinc: how it is put on.
    Mechanically,
    /// A finish by its process.
    Process(Process),
    /// A finish by its process, with words that the order line does not judge.
    Tinted(Process),
    /// A finish that is not judged here: its key among what an order can ask for.
    Other(&'static str),
    /// Understood, and not used: why.
    Not(&'static str),
    /// A category of corrosivity.
    Category(Category),
    /// What surrounds a part that does not stand in air.
    Around(Surroundings),
    /// In front of what a part touches: `in contact with`.
    Touching,
    /// A place in words: the categories it can mean.
    Place(&'static [Category]),
    /// In front of a grade: `grade`.
    Grade,
    /// In front of a class: `class`.
    Class,
    /// In front of a type: `type`.
    Type,
    /// The steels of SAE J429.
    Sae,
    /// What is no carbon or alloy steel.
    OtherMetal,
    /// A steel that is known by this code alone.
    Steel(&'static str),
    /// Publishers of standards.
    Publisher,
    /// The kettle's coat by its thickness class: `Fe/Zn`.
    FeZn,
    /// Service condition of ASTM B633: `SC`.
    ServiceCondition,
    /// A series of threads that is not known here.
    Foreign,
    /// Coarse or fine, by the series of an inch thread.
    Series(&'static str),
    /// The metric thread's M, also metres.
    M,
    /// Between the sizes of a part.
    Times,
    /// A unit of length, as fields take it.
    Length(&'static str),
    /// A unit that nothing but coats are measured in, as fields take it: of thickness (`µm`, `mil`), or of the mass on
    /// an area (`g/m²`, `oz/ft²`).
    OfCoat(&'static str),
    /// A unit that no field of the order line takes: why.
    Measure(&'static str),
    /// A scale of hardness.
    Scale(&'static str),
    /// Beside a measure: it is that of something else.
    Across,
    /// Beside a measure of what no field takes, and why.
    Of(&'static str),
    /// Beside the diameter of a thread.
    Diameter,
    /// Beside a length.
    Long,
    /// Beside the pitch of a thread.
    Pitch,
    /// Behind threads per inch.
    PerInch,
    /// A unit of temperature.
    Degrees(&'static str),
    /// A unit of a distance on the map: how many metres.
    Far(f64),
    /// What a place is so far from: `the coast`.
    Sea,
    /// In front of, or behind, the time and the temperature of a bake after the coat.
    Bake,
    /// Hours.
    Hours,
    /// Years.
    Years,
    /// A unit of a count: how many pieces, and whether they are sets.
    Count(u32, bool),
    /// Thousands.
    Thousand,
    /// In front of a count: `qty`.
    Quantity,
    /// A box, whose contents are a count.
    Box,
    /// A small number in words.
    Small(u32),
    /// In front of a nut or washer that comes with the part: `with`.
    With,
    /// Between parts: `and`.
    And,
    /// In front of what is not wanted: `without`.
    Without,
    /// Behind what is not wanted: `not allowed`.
    Excluded,
    /// Behind what is not wanted, with or without a verb in front: `forbidden`, `must be avoided`.
    Refused,
    /// What is taken or allowed, unless a verb with a negation stands in front: `must not be used`.
    Taken,
    /// A verb by which somebody wishes for what follows, or with a negation in front does not.
    Wish,
    /// In front of the verb that is refused: `must`.
    Modal,
    /// Beside such a verb: `not`, `isn't`.
    Negation,
    /// Behind what somebody else does or brings: `by others`.
    ByOthers,
    /// Beside what was wanted until now: `was HDG`, `HDG was quoted`.
    Was,
    /// Between what was wanted until now and what is wanted instead: `change to`.
    Instead,
    /// Between things of which one will do, or none is wanted.
    Or,
    /// Beside the finish that is wanted first: `preferred`.
    Preferred {
        /// Whether it speaks of what stands behind it; the others stand behind, or in front where nothing follows.
        in_front: bool,
    },
    /// Behind a finish that will do as well: `acceptable`.
    Acceptable,
    /// Said to people and not of the order: `please`.
    Polite,
    /// Each: behind a number of nuts for one bolt, or a unit of pieces.
    Each,
    /// At each of two ends, or on each of two sides.
    Ends,
    /// A bolt with its nut.
    Set,
    /// In front of the tempering temperature.
    Tempered,
    /// In front of the temperature of the bath.
    Bath,
    /// Zinc at a temperature above the usual one.
    HighBath,
    /// What behind a measure says that it is the greatest: `or less`, `not to be exceeded`.
    NoMore,
    /// Ten years.
    Decades,
    /// In front of the nut's own allowance.
    Overtapped,
    /// Nuts whose thread is the standard one.
    NotOvertapped,
    /// In front of the noun of a part: makes it one that is not known here.
    Qualifier,
    /// A hard skin.
    CaseHardened,
    /// What was done to a part after its hardening.
    WorkedHard(Worked),
    /// What is done to a part, before its hardening or after.
    Worked(Worked),
    /// What makes a part hard.
    Hardening,
    /// A nylon patch on the thread.
    NylonPatch,
    /// A tapped hole instead of a nut; `true` where it is there already.
    Hole(bool),
    /// A bolt cut under to make room for the kettle's coat.
    CutUnder,
    /// A left-hand thread.
    LeftHand,
    /// In front of a number that is not one of the order, and why: `PO 4711`.
    Label(&'static str),
    /// In front of pieces that are none of this order: `annual usage`.
    Yearly,
    /// Behind pieces of a time: `per month`.
    PerTime,
    /// In front of what a price is for: `price per`.
    Price,
    /// Money.
    Money,
    /// In front of the weight of the lot.
    Weight,
    /// In front of the weight of one piece, or of one box: why it is not used.
    WeightOfOne(&'static str),
    /// A unit of mass, as the lot is weighed.
    Mass(&'static str),
    /// The least of something.
    Least,
    /// The most of something.
    Most,
    /// Says nothing by itself.
    Filler,
}

/// The most tokens that a phrase has.
const LONGEST: usize = 9;

struct Phrase {
    /// Its words and figures, and whether each touches the one before it.
    words: Vec<(String, bool)>,
    means: Word,
}

/// More than the phrases have first words: room for all of them from the start.
const FIRST_WORDS: usize = 4096;

/// Every phrase, those of one first word together.
struct Phrases {
    /// The number of a first word.
    numbers: HashMap<String, usize>,
    /// What begins with it, by that number.
    begun: Vec<Vec<Phrase>>,
}

static PHRASES: LazyLock<Phrases> = LazyLock::new(|| {
    let mut numbers: HashMap<String, usize> = HashMap::with_capacity(FIRST_WORDS);
    let mut begun: Vec<Vec<Phrase>> = Vec::with_capacity(FIRST_WORDS);
    for (means, spellings) in WORDS {
        for spelling in *spellings {
            let words = token::phrase(spelling);
            let first = words.first().map(|(word, _)| word.clone()).unwrap_or_default();
            let phrase = Phrase { words, means: *means };
            let number = *numbers.entry(first).or_insert(begun.len());
            match begun.get_mut(number) {
                Some(phrases) => phrases.push(phrase),
                None => begun.push(vec![phrase]),
            }
        }
    }
    Phrases { numbers, begun }
});

impl Phrases {
    fn number(&self, word: &str) -> Option<usize> {
        self.numbers.get(word).copied()
    }

    /// What begins with a word.
    fn of(&self, word: &str) -> &[Phrase] {
        self.number(word).and_then(|number| self.begun.get(number)).map_or(&[], Vec::as_slice)
    }
}

/// Makes ready what every reading looks up, so that the first need not wait for it.
pub fn prepare() {
    LazyLock::force(&PHRASES);
    LazyLock::force(&KNOWN);
    LazyLock::force(&AROUND_A_VERB);
}

/// Nouns of which a word in front makes another part.
pub const NOUNS: &[&str] = &["bolt", "screw", "schraube", "nut", "washer", "pin"];

/// Whether a word by itself is such a noun, in any of its forms.
pub fn is_noun(word: &str) -> bool {
    PHRASES.of(word).iter().any(|phrase| {
        phrase.words.len() == 1 && matches!(phrase.means, Word::Part(noun) if NOUNS.contains(&noun))
    })
}

/// `feuerverzinkte Schrauben`, `mit verzinkten Muttern`, `schwarze Schrauben`: the word as it stands by itself.
pub fn without_ending(word: &str) -> Option<&str> {
    let stem = ["e", "en", "er", "es"].iter().find_map(|ending| word.strip_suffix(ending));
    let is_finish = |stem: &str| stem.ends_with("verzinkt") || OF_NO_ZINC.contains(&stem);
    stem.filter(|stem| is_finish(stem) && knows(stem))
}

/// Whether a word by itself is a name of a part.
pub fn is_a_name(word: &str) -> bool {
    let is_one = |phrase: &Phrase| phrase.words.len() == 1 && matches!(phrase.means, Word::Part(_));
    PHRASES.of(word).iter().any(is_one) || names_a_part(word)
}

/// Nouns of parts, as words that nobody knows end in them: `Leitplankenschrauben`.
const ENDS: &[&str] = &[
    "schraube",
    "schrauben",
    "mutter",
    "muttern",
    "bolzen",
    "scheibe",
    "scheiben",
    "stift",
    "stifte",
    "niete",
    "nieten",
    "anker",
    "bolt",
    "bolts",
    "nut",
    "nuts",
    "screw",
    "screws",
    "washer",
    "washers",
    "clip",
    "clips",
];

/// Whether a word that nobody knows is the name of a part, by its end.
pub fn names_a_part(word: &str) -> bool {
    ENDS.iter().any(|noun| word.len() >= noun.len() + 2 && word.ends_with(noun)) && !knows(word)
}

/// Every word that stands in some phrase, or in front of the number of a document.
static KNOWN: LazyLock<HashSet<&'static str>> = LazyLock::new(|| {
    let of_phrases = words_of(|means| !is_of_a_verb(means));
    let letters = [
        "half", "aisi", "a", "b", "c", "d", "e", "f", "h", "m", "sa", "az", "ax", "g", "ii", "iii", "iv",
        "v", "vi", "i", "s", "z", "längen", "dem", "its", "final", "full", "apiece",
    ];
    let lists = [
        letters.as_slice(),
        DUE,
        ON,
        AWAY,
        PAST,
        MARKED,
        SOON,
        LOTS,
        CHROMATES,
        CONTRACTS,
        MORE,
        YIELDS,
        READINGS,
        ABOVE,
        ZONES,
        FREE,
        RECURS,
        INTERVALS,
        UP_TO,
        REFUSE,
        SOIL,
        WATER,
        CONCRETE,
    ];
    of_phrases.chain(lists.iter().copied().flatten().copied()).collect()
});

/// Whether a word stands in the lexicon.
pub fn knows(word: &str) -> bool {
    KNOWN.contains(word)
}

/// Words that say something only around a verb that refuses, or beside a tapped hole: by themselves nobody knows them.
static AROUND_A_VERB: LazyLock<HashSet<&'static str>> = LazyLock::new(|| {
    let lists = [
        LINKS,
        OBJECTS,
        BOUNDS,
        BOUND_TO,
        ALL_BUT,
        ALL,
        FIT_FOR,
        EXISTING,
        OF_A_HOLE,
        TAP,
        TAPPED_OVER,
        NONE,
        THAN,
        SUBSTITUTES,
        OF_A_SUBSTITUTE,
        MORE_THAN,
        COMPARED,
        COMPARED_LESS,
        LESS,
        AND_MORE,
        AND_LESS,
        IN_A_BOX,
    ];
    words_of(is_of_a_verb).chain(lists.iter().copied().flatten().copied()).collect()
});

/// Whether a rule may look for a word: what nobody knows is taken out before the rules look.
pub fn is_looked_for(word: &str) -> bool {
    knows(word) || AROUND_A_VERB.contains(word)
}

fn is_of_a_verb(word: Word) -> bool {
    matches!(word, Word::Taken | Word::Wish | Word::Modal | Word::Negation)
}

/// The words of the phrases of some meanings.
fn words_of(is_one: impl Fn(Word) -> bool) -> impl Iterator<Item = &'static str> {
    let phrases = PHRASES.begun.iter().flatten().filter(move |phrase| is_one(phrase.means));
    phrases.flat_map(|phrase| phrase.words.iter().map(|(word, _)| word.as_str()))
}

/// Whether a word by itself stands in front of a number that marks something: `drawing`.
pub fn is_label(word: &str) -> bool {
    alone(word, |meaning| matches!(meaning, Word::Label(_)))
}

/// Whether a word is a thing that has a life of its own, and no coat of zinc: nobody knows it, or it is another coat, or
/// what stands in front of the noun of a part. What the part stands in may ask for as long a life of the part.
pub fn has_a_life(word: &str) -> bool {
    let is_thing = |meaning| match meaning {
        Word::Not(why) => ![ANY_ZINC, COLOUR, SAYS_NOTHING].contains(&why),
        meaning => matches!(meaning, Word::Other(_) | Word::Qualifier | Word::Part("?") | Word::Of(_)),
    };
    let is_none = || [OF_A_LIFE, KINDS_OF_A_LIFE, OF_A_BUILDING].iter().any(|words| words.contains(&word));
    let is_word = word.chars().all(char::is_alphabetic) && word.chars().count() > 2;
    is_word && !is_none() && (!knows(word) || alone(word, is_thing))
}

/// Whether a word or a phrase by itself means this.
pub fn means(words: &str, meaning: Word) -> bool {
    alone(words, |other| other == meaning)
}

/// Whether a word by itself is a unit of coats.
pub fn is_of_coat(word: &str) -> bool {
    alone(word, |means| matches!(means, Word::OfCoat(_)))
}

fn alone(words: &str, is_one: impl Fn(Word) -> bool) -> bool {
    let each = || words.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty());
    let is_it = |phrase: &Phrase| {
        phrase.words.iter().map(|(word, _)| word.as_str()).eq(each()) && is_one(phrase.means)
    };
    let first = each().next().unwrap_or_default();
    PHRASES.of(first).iter().any(is_it)
}

/// The longest phrase at a place that means what is looked for: the place behind it, and what was found.
pub fn find<T>(chain: &Chain<'_>, at: usize, means: impl Fn(Word) -> Option<T>) -> Option<(usize, T)> {
    longest(chain, at, means, |_| true)
}

/// The longest phrase at a place, whatever it means.
pub fn meaning(chain: &Chain<'_>, at: usize) -> Option<(usize, Word)> {
    find(chain, at, Some)
}

/// The longest phrase that ends at a place.
pub fn until<T>(chain: &Chain<'_>, at: usize, end: usize, means: impl Fn(Word) -> Option<T>) -> Option<T> {
    longest(chain, at, means, |last| last == end).map(|(_, found)| found)
}

/// The longest phrase that is not followed by letters or figures that touch it.
pub fn whole<T>(chain: &Chain<'_>, at: usize, means: impl Fn(Word) -> Option<T>) -> Option<(usize, T)> {
    longest(chain, at, means, |end| !chain.inside_a_run(end))
}

fn longest<T>(
    chain: &Chain<'_>,
    at: usize,
    means: impl Fn(Word) -> Option<T>,
    may_end: impl Fn(usize) -> bool,
) -> Option<(usize, T)> {
    let phrases = PHRASES.begun.get(chain.begins(at, |word| PHRASES.number(word))?)?;
    let sought = phrases.iter().filter_map(|phrase| Some((phrase, means(phrase.means)?)));
    let fits =
        sought.filter_map(|(phrase, found)| Some((behind(chain, at, phrase)?, phrase.words.len(), found)));
    let fits = fits.filter(|(end, ..)| may_end(*end));
    // Of two that are as long, the first row counts.
    let longest = fits.reduce(|one, other| if other.1 > one.1 { other } else { one });
    longest.map(|(end, _, found)| (end, found))
}

/// The place behind a phrase that means exactly this, or the place itself.
pub fn over(chain: &Chain<'_>, at: usize, word: Word) -> usize {
    find(chain, at, |means| (means == word).then_some(())).map_or(at, |(end, ())| end)
}

/// The number below a hundred in words at a place, and the place behind it: `twelve`, `thirty-five`.
pub fn small(chain: &Chain<'_>, at: usize) -> Option<(usize, u32)> {
    let word = |at: usize| {
        find(chain, at, |word| match word {
            Word::Small(number) => Some(number),
            _ => None,
        })
    };
    let (end, tens) = word(at)?;
    let from = chain.over(end, DASHES);
    let ones = word(from).filter(|(behind, ones)| {
        // `twenty two-piece anchors`.
        let is_of_next = chain.sign(*behind, DASHES) && chain.glued(*behind);
        tens >= 20 && tens.is_multiple_of(10) && *ones < 10 && !is_article(chain, from) && !is_of_next
    });
    Some(ones.map_or((end, tens), |(behind, ones)| (behind, tens + ones)))
}

const DASHES: &[&str] = &["-", "–", "‑"];

/// Whether a word that counts one or two says no number by itself.
pub fn is_article(chain: &Chain<'_>, at: usize) -> bool {
    chain.word(at).is_some_and(|word| ARTICLES.contains(&word))
}

/// Whether a longer name of a part begins with the word at a place: `20 T-nuts` are no tonnes.
pub fn begins_a_name(chain: &Chain<'_>, at: usize) -> bool {
    let name = whole(chain, at, |word| matches!(word, Word::Part(_)).then_some(()));
    name.is_some_and(|(end, ())| end > chain.after(at))
}

/// `2 mil tornillos`: a noun that says which language it is in, and that `mil` are no thousandths of an inch.
pub fn counts_in_thousands(chain: &Chain<'_>, at: usize) -> bool {
    chain.word(at).is_some_and(|word| ["tornillos", "tuercas", "pernos", "arandelas"].contains(&word))
}

/// The place behind the word for years, if it stands here; a capital A is a grade.
pub fn over_years(chain: &Chain<'_>, at: usize) -> Option<usize> {
    let is_grade = chain.get(at).is_some_and(|token| token.text == "A") || begins_a_name(chain, at);
    let found = find(chain, at, |word| (word == Word::Years).then_some(()));
    found.map(|(end, ())| end).filter(|end| !is_grade && !is_no_unit(chain, at, *end))
}

/// The place behind `a kg`, `a piece`, `a box`.
pub fn over_rate(chain: &Chain<'_>, at: usize) -> Option<usize> {
    chain.word(at).filter(|word| *word == "a")?;
    let (end, word) = meaning(chain, chain.after(at))?;
    let is_one = matches!(word, Word::Box | Word::Mass(_) | Word::Count(1, false));
    (is_one && !chain.inside_a_run(end)).then_some(end)
}

/// Whether a letter behind a number binds, and measures no years: `8.8 a 500 pcs`, `50 a box`, `20 a week`, `10 y tuerca`.
fn is_no_unit(chain: &Chain<'_>, at: usize, end: usize) -> bool {
    let binds = match chain.word(at) {
        Some("a") => over_rate(chain, at).is_some() || over(chain, at, Word::PerTime) != at,
        Some("y") => {
            let noun = chain.digits(end).map_or(end, |_| chain.after(end));
            chain.word(noun).is_some_and(|noun| noun.starts_with("tuerca") || noun.starts_with("arandela"))
        }
        Some("j") => false,
        _ => return false,
    };
    // A number with a point that is a class of bolts; `4.6 y` with nothing behind it are years.
    let is_apart = chain.word(at) != Some("j") && chain.word(end).is_none() && chain.digits(end).is_none();
    let number = chain.before(at).and_then(|last| chain.tokens().get(last.checked_sub(2)?..=last));
    let text: String = number.unwrap_or_default().iter().map(|token| token.text).collect();
    binds || !is_apart && DOTTED.contains(&text.replace(',', ".").as_str())
}

/// The place behind a phrase, if it stands here.
fn behind(chain: &Chain<'_>, at: usize, phrase: &Phrase) -> Option<usize> {
    let mut at = chain.after(at);
    for (word, touches) in phrase.words.iter().skip(1).take(LONGEST) {
        if !touches {
            // `Zyl.-Schr.` has two of them.
            for _ in 0..2 {
                at = chain.over(at, &["-", "–", "‑", "/", ".", "_", "'", "’"]);
            }
        }
        let token =
            chain.get(at).filter(|token| matches!(token.sort, Sort::Word | Sort::Digits | Sort::Sign))?;
        if token.lower != *word || (*touches && !chain.glued(at)) {
            return None;
        }
        at = chain.after(at);
    }
    Some(at)
}
