//! A written line cut into tokens, each with its place in the text.
//!
//! A word is a run of letters, a number a run of figures: `M20x90` is four tokens. Words that the
//! lexicon does not know are taken out of the chain that the rules walk along, so that such a word
//! between two that belong together changes nothing.

use crate::quantity::letters::lower;
use std::cell::{Cell, OnceCell};
use std::ops::Range;

/// What a token is made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sort {
    /// Letters.
    Word,
    /// Figures.
    Digits,
    /// Any other character.
    Sign,
    /// A character that ends a piece: a comma, a semicolon, a tab, a new line.
    Break,
}

/// A token.
#[derive(Debug, Clone)]
pub struct Token<'a> {
    /// What it is made of.
    pub sort: Sort,
    /// As written.
    pub text: &'a str,
    /// In lower case.
    pub lower: String,
    /// Where it begins, in bytes.
    pub start: usize,
    /// The number under which the lexicon has what begins with it, once that was looked up.
    begins: OnceCell<Option<usize>>,
}

impl<'a> Token<'a> {
    /// A token that is not whole yet: its lower case follows when it is.
    fn new(sort: Sort, text: &'a str, start: usize) -> Self {
        Self { sort, text, lower: String::new(), start, begins: OnceCell::new() }
    }

    /// Where it ends, in bytes.
    pub fn end(&self) -> usize {
        self.start + self.text.len()
    }

    /// Whether letters or figures.
    pub fn is_alphanumeric(&self) -> bool {
        matches!(self.sort, Sort::Word | Sort::Digits)
    }
}

/// The tokens of a line as a chain; places in it are numbers of tokens, and the end is their count.
#[derive(Debug)]
pub struct Chain<'a> {
    tokens: Vec<Token<'a>>,
    next: Vec<usize>,
    before: Vec<usize>,
    first: usize,
    runs: Vec<Range<usize>>,
    run_of: Vec<usize>,
    looked_at: Cell<usize>,
}

/// No token.
const NONE: usize = usize::MAX;

impl<'a> Chain<'a> {
    /// Cuts a line.
    pub fn of(line: &'a str) -> Self {
        let mut tokens = cut(line);
        if is_row(&tokens) {
            // A comma that ends a cell marks no decimals.
            tokens.iter_mut().filter(|token| token.text == ",").for_each(|token| token.text = ";");
        }
        let count = tokens.len();
        let (runs, run_of) = runs(&tokens);
        Self {
            first: 0,
            runs,
            run_of,
            next: (0..=count).map(|at| (at + 1).min(count)).collect(),
            before: (0..=count).map(|at| at.checked_sub(1).unwrap_or(NONE)).collect(),
            looked_at: Cell::new(0),
            tokens,
        }
    }

    /// The token at a place.
    pub fn get(&self, at: usize) -> Option<&Token<'a>> {
        self.looked_at.set(self.looked_at.get() + 1);
        self.tokens.get(at)
    }

    /// The place behind this one.
    pub fn after(&self, at: usize) -> usize {
        self.next.get(at).copied().unwrap_or(self.tokens.len())
    }

    /// The place before this one.
    pub fn before(&self, at: usize) -> Option<usize> {
        self.before.get(at).copied().filter(|place| *place != NONE)
    }

    /// The first place.
    pub fn first(&self) -> usize {
        self.first
    }

    /// Whether the token at a place is taken out of the chain.
    pub fn is_out(&self, at: usize) -> bool {
        self.next.get(at) == Some(&NONE)
    }

    /// All tokens, also those taken out.
    pub fn tokens(&self) -> &[Token<'a>] {
        &self.tokens
    }

    /// How many tokens the rules have looked at: the work of a reading.
    pub fn looked_at(&self) -> usize {
        self.looked_at.get()
    }

    /// The lower-case text of a word at a place.
    pub fn word(&self, at: usize) -> Option<&str> {
        self.get(at).filter(|token| token.sort == Sort::Word).map(|token| token.lower.as_str())
    }

    /// The number of what begins with the token at a place: every rule asks for it, and it is looked up once.
    pub fn begins(&self, at: usize, number: impl Fn(&str) -> Option<usize>) -> Option<usize> {
        self.get(at).and_then(|token| *token.begins.get_or_init(|| number(&token.lower)))
    }

    /// The figures at a place.
    pub fn digits(&self, at: usize) -> Option<&'a str> {
        self.get(at).filter(|token| token.sort == Sort::Digits).map(|token| token.text)
    }

    /// Whether one of these signs stands at a place.
    pub fn sign(&self, at: usize, signs: &[&str]) -> bool {
        self.get(at).is_some_and(|token| signs.contains(&token.text))
    }

    /// Whether the token at a place stands right behind the one before it, without a space.
    pub fn glued(&self, at: usize) -> bool {
        let before = self.before(at).and_then(|before| self.tokens.get(before));
        match (before, self.get(at)) {
            (Some(before), Some(token)) => before.end() == token.start,
            _ => false,
        }
    }

    /// Whether the token at a place continues letters and figures that stand before it.
    pub fn inside_a_run(&self, at: usize) -> bool {
        let joins = |at: usize| self.get(at).is_some_and(Token::is_alphanumeric);
        self.glued(at) && joins(at) && self.before(at).is_some_and(joins)
    }

    /// The place behind `-`, `/`, `.` and the like, if one stands there.
    pub fn over(&self, at: usize, signs: &[&str]) -> usize {
        if self.sign(at, signs) { self.after(at) } else { at }
    }

    /// The run of letters and figures around a place, a mark between figures included.
    pub fn run(&self, at: usize) -> Range<usize> {
        self.run_of.get(at).and_then(|run| self.runs.get(*run)).cloned().unwrap_or(at..at + 1)
    }

    /// Every run, and every other token by itself.
    pub fn runs(&self) -> &[Range<usize>] {
        &self.runs
    }

    /// Reads a token as this word; what is shown of it stays as it was written.
    pub fn respell(&mut self, at: usize, word: &str) {
        if let Some(token) = self.tokens.get_mut(at) {
            token.lower = word.to_owned();
            token.begins = OnceCell::new();
        }
    }

    /// Takes tokens out of the chain.
    pub fn take_out(&mut self, range: Range<usize>) {
        for at in range {
            if self.is_out(at) {
                continue;
            }
            let (before, next) = (self.before.get(at).copied().unwrap_or(NONE), self.after(at));
            match self.next.get_mut(before) {
                Some(link) => *link = next,
                None => self.first = next,
            }
            if let Some(link) = self.before.get_mut(next) {
                *link = before;
            }
            if let Some(link) = self.next.get_mut(at) {
                *link = NONE;
            }
        }
    }
}

/// `SCREW,HEX,M12X1.75X50,8.8,ZINC,100,EA`: cells with nothing but a comma between, most of them beside a letter.
fn is_row(tokens: &[Token<'_>]) -> bool {
    const FEWEST: usize = 3;
    let touch = |one: &Token<'_>, other: &Token<'_>| one.end() == other.start;
    let commas = tokens.windows(3).filter_map(|three| match three {
        [before, comma, behind] if comma.text == "," => Some((before, comma, behind)),
        _ => None,
    });
    let (mut beside_letters, mut loose) = (0, 0);
    for (before, comma, behind) in commas {
        match touch(before, comma) && touch(comma, behind) {
            true if before.sort == Sort::Word || behind.sort == Sort::Word => beside_letters += 1,
            true => {}
            false => loose += 1,
        }
    }
    beside_letters >= FEWEST && loose == 0
}

/// The runs of letters and figures, and which run each token belongs to.
fn runs(tokens: &[Token<'_>]) -> (Vec<Range<usize>>, Vec<usize>) {
    let mut runs: Vec<Range<usize>> = Vec::new();
    let mut run_of = Vec::with_capacity(tokens.len());
    let is_mark = |at: usize| {
        let near =
            |at: Option<usize>| at.and_then(|at| tokens.get(at)).filter(|near| near.sort == Sort::Digits);
        let token = tokens.get(at).filter(|token| matches!(token.text, "." | ","));
        match (near(at.checked_sub(1)), token, near(Some(at + 1))) {
            (Some(one), Some(mark), Some(other)) => one.end() == mark.start && mark.end() == other.start,
            _ => false,
        }
    };
    let joins = |at: usize| tokens.get(at).is_some_and(Token::is_alphanumeric) || is_mark(at);
    let touches = |at: usize| match (at.checked_sub(1).and_then(|at| tokens.get(at)), tokens.get(at)) {
        (Some(one), Some(other)) => one.end() == other.start,
        _ => false,
    };
    for at in 0..tokens.len() {
        match runs.last_mut() {
            Some(run) if touches(at) && joins(at) && joins(at - 1) => run.end = at + 1,
            _ => runs.push(at..at + 1),
        }
        run_of.push(runs.len() - 1);
    }
    (runs, run_of)
}

/// The words and figures of a phrase in lower case, and whether each touches the one before it.
pub(super) fn phrase(text: &str) -> Vec<(String, bool)> {
    let mut last: Option<(usize, bool)> = None;
    let words = cut(text).into_iter().map(|token| {
        let is_alphanumeric = token.is_alphanumeric();
        let touches = is_alphanumeric && last == Some((token.start, true));
        last = Some((token.end(), is_alphanumeric));
        (token.lower, touches)
    });
    words.collect()
}

/// The words of a text, of letters alone.
pub(super) fn words(text: &str) -> impl DoubleEndedIterator<Item = &str> {
    text.split(|c: char| !c.is_alphabetic()).filter(|word| !word.is_empty())
}

/// What stands in front of a piece and behind it, up to the next break and no more than so many letters.
pub(super) fn near(text: &str, piece: Range<usize>, letters: usize) -> (&str, &str) {
    let (front, behind) = beside(text, piece, letters);
    (front.rsplit(is_break).next().unwrap_or_default(), behind.split(is_break).next().unwrap_or_default())
}

/// What stands in front of a piece and behind it, no more than so many letters on either side: what looks at the words
/// beside each piece of a line looks at no more of a long line than of a short one.
pub(super) fn beside(text: &str, piece: Range<usize>, letters: usize) -> (&str, &str) {
    let front = text.get(..piece.start).unwrap_or_default();
    let from = front.char_indices().rev().take(letters).last().map_or(front.len(), |(at, _)| at);
    let behind = text.get(piece.end..).unwrap_or_default();
    let to = behind.char_indices().nth(letters).map_or(behind.len(), |(at, _)| at);
    (front.get(from..).unwrap_or_default(), behind.get(..to).unwrap_or_default())
}

/// Whether a character parts a line: the cells of a table, and what commas hold apart.
pub const fn is_break(c: char) -> bool {
    matches!(c, ',' | ';' | '\n' | '\t' | '|')
}

fn cut(line: &str) -> Vec<Token<'_>> {
    let mut tokens: Vec<Token<'_>> = Vec::new();
    for (start, character) in line.char_indices() {
        if character.is_whitespace() && !matches!(character, '\n' | '\t') {
            continue;
        }
        let sort = match character {
            c if c.is_ascii_digit() => Sort::Digits,
            c if c.is_alphabetic() => Sort::Word,
            c if is_break(c) => Sort::Break,
            _ => Sort::Sign,
        };
        let end = start + character.len_utf8();
        match tokens.last_mut() {
            Some(last)
                if last.end() == start && last.sort == sort && matches!(sort, Sort::Word | Sort::Digits) =>
            {
                last.text = line.get(last.start..end).unwrap_or_default();
            }
            _ => tokens.push(Token::new(sort, line.get(start..end).unwrap_or_default(), start)),
        }
    }
    let mut tokens = crosses_apart(tokens);
    for token in &mut tokens {
        token.lower = lower(token.text);
    }
    tokens
}

/// `1/2-13UNCx2`, `UNC-2Ax2`, `50mmx20`, `100xM16`: a cross between figures that touches letters is a token of its own.
fn crosses_apart(tokens: Vec<Token<'_>>) -> Vec<Token<'_>> {
    let digits = |at: Option<usize>| {
        at.and_then(|at| tokens.get(at))
            .filter(|token| matches!(token.sort, Sort::Digits) || token.text == ".")
    };
    let mut apart: Vec<Token<'_>> = Vec::with_capacity(tokens.len());
    for (at, token) in tokens.iter().enumerate() {
        let touches = |before: Option<&Token<'_>>| before.is_some_and(|before| before.end() == token.start);
        let is_behind = touches(digits(at.checked_sub(1)));
        let is_before = digits(Some(at + 1)).is_some_and(|next| next.start == token.end());
        let is_word = token.sort == Sort::Word && is_before;
        let series = || {
            let rest = token.text.strip_suffix(['x', 'X']).unwrap_or_default();
            ["unc", "unf", "unef", "un", "uns", "nc", "nf"].contains(&lower(rest).as_str())
        };
        let cross = match token.text {
            text if !is_word || text.len() < 2 => None,
            text if text.ends_with(['x', 'X']) && (is_behind || series()) => Some(text.len() - 1),
            text if is_behind && matches!(text, "xM" | "XM" | "xm" | "Xm") => Some(1),
            _ => None,
        };
        let parts = cross.and_then(|place| Some((place, token.text.get(..place)?, token.text.get(place..)?)));
        match parts {
            Some((place, first, second)) => {
                apart.push(Token::new(token.sort, first, token.start));
                apart.push(Token::new(token.sort, second, token.start + place));
            }
            None => apart.push(token.clone()),
        }
    }
    apart
}
