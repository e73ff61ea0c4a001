//! What people write in one line, read into the fields of the order line.
//!
//! `500 ea 3/4-10 x 4 HHCS gr 8 HDG`. The line is cut into tokens; named rules find pieces in it, and
//! the longest match wins; each piece then finds its place among the others. Every word is used, or
//! named as not used: nothing typed is lost, and what is not known is never read as the nearest thing
//! that is. The order of the pieces does not matter.

mod address;
mod bake;
mod coat;
mod count;
mod diameter;
mod distance;
mod document;
mod either;
mod ends;
mod galv;
mod grouped;
mod heat;
mod items;
mod joined;
mod label;
mod left_out;
mod length;
mod letters;
pub mod lexicon;
mod lone;
mod mark;
mod measure;
mod money;
mod named;
mod nouns;
mod number;
mod part;
mod per_part;
mod place;
mod qualified;
mod quantity;
mod rule;
mod second;
mod sentence;
mod settle;
mod size;
mod spelling;
mod standard;
mod steel;
mod steels;
#[cfg(test)]
mod tests;
mod thickness;
mod threads;
mod token;
mod wanted;
mod weight;
mod what;
mod worked;

use std::borrow::Cow;
use std::ops::Range;

use crate::calculator::Draft;
use crate::site::Category;

pub use lexicon::prepare;
pub use sentence::{Segment, not_said, said};

/// A line as it was read.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// The pieces in the order of the line. What no piece covers is white space and punctuation.
    pub pieces: Vec<Piece>,
    /// The fields that the line fills; the others are not in it.
    pub draft: Draft,
    /// What was concluded and not written: by field.
    pub notes: Vec<(&'static str, Cow<'static, str>)>,
    /// Whether the part, if only by its noun, is one that has a length.
    pub has_length: bool,
    /// How many tokens were looked at: the work of the reading.
    pub looked_at: usize,
}

/// A piece of a line.
#[derive(Debug, Clone, PartialEq)]
pub struct Piece {
    /// Where it stands, in bytes.
    pub span: Range<usize>,
    /// As it was written.
    pub text: String,
    /// The rule that found it.
    pub rule: &'static str,
    /// What became of it.
    pub became: Became,
}

/// What became of a piece.
#[derive(Debug, Clone, PartialEq)]
pub enum Became {
    /// It fills these fields, or agrees with what fills them; where a part of it is not judged, why.
    Used(Vec<&'static str>, Option<Cow<'static, str>>),
    /// It was not used: why, or empty where it was not understood.
    NotUsed(Cow<'static, str>),
    /// It can mean several categories: the field asks for one of them.
    Asked(Vec<Category>),
    /// A word that only binds others.
    Binds,
}

/// Reads a line.
pub fn read(line: &str) -> Reading {
    settle::settle(line)
}

/// The rule of the pieces that no rule knows.
const UNKNOWN: &str = "unknown";

impl Reading {
    /// The pieces that were not used, with the reason.
    pub fn not_used(&self) -> impl Iterator<Item = (&str, &str)> {
        self.pieces.iter().filter_map(|piece| match &piece.became {
            Became::NotUsed(why) => Some((piece.text.as_str(), why.as_ref())),
            Became::Used(_, Some(why)) => Some((piece.text.as_str(), why.as_ref())),
            _ => None,
        })
    }

    /// Whether every word was used, or asks which of several it means.
    pub fn is_understood(&self) -> bool {
        self.not_used().next().is_none()
    }

    /// Whether words stand unused of which nobody knows whether they ask for something: unknown ones, and such as
    /// ask what they mean.
    pub fn has_open_words(&self) -> bool {
        // A reason that asks has a question mark, or says what to write, to agree, what is not known here, or what it
        // contradicts.
        let asks =
            |why: &str| ["?", "rite ", "gree ", "known", "ontradicts "].iter().any(|asks| why.contains(asks));
        self.pieces.iter().any(|piece| match &piece.became {
            Became::NotUsed(why) if why.is_empty() => piece.rule == UNKNOWN,
            Became::NotUsed(why) => asks(why),
            // Of a range the greatest is held, and the least asks.
            Became::Used(fields, Some(why)) => fields.contains(&"most") && asks(why),
            _ => false,
        })
    }

    /// What was understood, what was not, and what is asked, as data.
    pub fn sentence(&self) -> Vec<Segment> {
        sentence::of(self)
    }
}
