//! Lessons: texts of our own whose numbers are solved when they are shown.
//!
//! A lesson is a file in `lesson/`: a head of `name: text` lines, an empty line, and paragraphs.
//!
//! ```text
//! title: Mass and thickness
//! case a: coat coat=75 µm; factor=a123     a calculator with its fields, under a name
//! picture: a                               the case whose picture is shown
//! question: coat whole-task 1              what the exercise at its end is drawn by
//!
//! ## A heading
//! A coat of {a coat} weighs {a m}.         what stands in a field, or what was found
//! = a m                                    a step as mathematics
//! ```
//!
//! `{a m}` is a field by its key (`{a #m}` as it is written, a choice by its key), or a figure, a step or a value put in by its symbol; `{a d_m/x}` is
//! the value put into the step `d_m`; `{a .headline}` is the answer in one sentence; `{rule f2329-ban}`
//! is the limit of a rule.

use crate::calculator::{Address, Draft, Form, Link, Picture, Report, find};
use crate::quantity::Units;
use crate::rule::{self, Key};
use crate::working::Step;

use super::exercise::Exercise;
use super::random::Random;
use super::set::set;
use super::setup::{ABOUT, Level, Room, Topic};
use super::text::{write_question, write_task};

/// A lesson as it is written.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lesson {
    /// Its key in a link.
    pub key: &'static str,
    /// Its text.
    pub text: &'static str,
}

/// Every lesson, in the order they are read.
pub static LESSONS: [Lesson; 12] = [
    lesson("patina", include_str!("lesson/patina.txt")),
    lesson("mass", include_str!("lesson/mass.txt")),
    lesson("table", include_str!("lesson/table.txt")),
    lesson("four-times", include_str!("lesson/four-times.txt")),
    lesson("overtap", include_str!("lesson/overtap.txt")),
    lesson("strips-first", include_str!("lesson/strips-first.txt")),
    lesson("hydrogen", include_str!("lesson/hydrogen.txt")),
    lesson("temper", include_str!("lesson/temper.txt")),
    lesson("powder", include_str!("lesson/powder.txt")),
    lesson("salt-spray", include_str!("lesson/salt-spray.txt")),
    lesson("years", include_str!("lesson/years.txt")),
    lesson("lot", include_str!("lesson/lot.txt")),
];

/// A lesson as it is shown.
#[derive(Debug, Clone, PartialEq)]
pub struct Page {
    /// What it is about.
    pub title: &'static str,
    /// Its text.
    pub blocks: Vec<Block>,
    /// A picture drawn from one of its cases.
    pub picture: Option<Picture>,
    /// The calculators with the numbers it speaks of.
    pub opens: Vec<Link>,
    /// The exercise at its end.
    pub exercise: Option<Exercise>,
    /// What could not be found; a lesson that is whole has none.
    pub missing: Vec<String>,
}

/// A piece of a lesson's text.
#[derive(Debug, Clone, PartialEq)]
pub enum Block {
    /// A heading.
    Heading(&'static str),
    /// A paragraph, in which every other piece, from the second, is a number that was found.
    Paragraph(Vec<String>),
    /// A step as mathematics.
    Step(Step),
}

/// A calculator with its fields filled in, under a name.
struct Case {
    name: &'static str,
    form: Form,
    report: Report,
    link: Option<Link>,
}

const fn lesson(key: &'static str, text: &'static str) -> Lesson {
    Lesson { key, text }
}

/// The lesson of that key.
pub fn lesson_of(key: &str) -> Option<&'static Lesson> {
    LESSONS.iter().find(|lesson| lesson.key == key)
}

impl Lesson {
    /// The way to it.
    pub fn address(&self) -> Address {
        let pairs = [("room", Room::Lessons.key()), ("lesson", self.key)];
        Address::new(ABOUT.id, pairs.into_iter().collect())
    }

    /// What it is about.
    pub fn title(&self) -> &'static str {
        self.head("title").next().unwrap_or(self.key)
    }

    /// Whether a calculator is opened in it.
    pub fn opens(&self, calculator: &str) -> bool {
        self.head("case ").any(|case| case.split([' ', ':']).any(|word| word == calculator))
    }

    /// The lesson with its numbers.
    pub fn page(&self) -> Page {
        let cases: Vec<Case> = self.head("case ").filter_map(case).collect();
        let of = |name: &str| cases.iter().find(|case| case.name == name);
        let picture = self.head("picture").next().and_then(of);
        let mut page = Page {
            title: self.title(),
            blocks: Vec::new(),
            picture: picture.and_then(|case| case.report.picture.clone()),
            opens: cases.iter().filter_map(|case| case.link.clone()).collect(),
            exercise: self.head("question").next().and_then(exercise),
            missing: Vec::new(),
        };
        for line in self.body().lines().map(str::trim).filter(|line| !line.is_empty()) {
            let block = if let Some(heading) = line.strip_prefix("## ") {
                Some(Block::Heading(heading))
            } else if let Some(named) = line.strip_prefix("= ") {
                let (name, symbol) = named.split_once(' ').unwrap_or((named, ""));
                of(name).and_then(|case| case.step(symbol)).cloned().map(Block::Step)
            } else {
                paragraph(line, &cases, &mut page.missing)
            };
            match block {
                Some(block) => page.blocks.push(block),
                None => page.missing.push(line.to_owned()),
            }
        }
        page
    }

    /// What stands in its head under names that begin so.
    fn head(&self, begin: &'static str) -> impl Iterator<Item = &'static str> {
        let (head, _) = self.text.split_once("\n\n").unwrap_or((self.text, ""));
        head.lines().filter_map(move |line| Some(line.strip_prefix(begin)?.trim_start_matches(':').trim()))
    }

    /// What is read.
    pub fn body(&self) -> &'static str {
        self.text.split_once("\n\n").map_or("", |(_, body)| body)
    }
}

/// `a: coat coat=75 µm; factor=a123`; a piece that names no field belongs to the text before it, as the
/// articles among readings do.
fn case(text: &'static str) -> Option<Case> {
    let (name, rest) = text.split_once(": ")?;
    let (id, pairs) = rest.split_once(' ').unwrap_or((rest, ""));
    let entry = find(id)?;
    let mut draft = Draft::default();
    let mut last: Option<&str> = None;
    for piece in pairs.split(';').map(str::trim) {
        match (piece.split_once('='), last) {
            (Some((key, text)), _) => {
                draft.set(key, text);
                last = Some(key);
            }
            (None, Some(key)) => {
                let before = draft.get(key).unwrap_or_default();
                draft.set(key, format!("{before}; {piece}"));
            }
            (None, None) => {}
        }
    }
    let report = entry.evaluate(&draft).ok()?;
    let link = entry.link(&draft).ok();
    Some(Case { name, form: Form::new(entry.about.fields, &draft), report, link })
}

/// `coat whole-task 1`
fn exercise(text: &'static str) -> Option<Exercise> {
    let mut words = text.split(' ');
    let (topic, level, number) = (words.next()?, words.next()?, words.next()?);
    set(
        &Topic::of_key(topic)?,
        Level::from_key(level)?,
        Units::AsPrinted,
        &mut Random::new(number.parse().ok()?),
    )
}

/// A paragraph with its numbers put in.
fn paragraph(line: &'static str, cases: &[Case], missing: &mut Vec<String>) -> Option<Block> {
    let mut pieces = Vec::new();
    let mut rest = line;
    while let Some((before, behind)) = rest.split_once('{') {
        let (named, behind) = behind.split_once('}')?;
        pieces.push(before.to_owned());
        let (name, what) = named.split_once(' ').unwrap_or((named, ""));
        let found = match name {
            "rule" => limit(what),
            _ => cases.iter().find(|case| case.name == name).and_then(|case| case.text(what)),
        };
        pieces.push(found.unwrap_or_else(|| {
            missing.push(named.to_owned());
            "…".to_owned()
        }));
        rest = behind;
    }
    pieces.push(rest.to_owned());
    Some(Block::Paragraph(pieces))
}

/// The limit of a rule, with where it stands.
fn limit(key: &str) -> Option<String> {
    let key = Key::ALL.iter().find(|one| one.key() == key)?;
    let rule = rule::rule(*key);
    Some(format!("{} ({})", rule.limit()?.at.show(), rule.source.document.name))
}

impl Case {
    /// What a name stands for.
    fn text(&self, what: &str) -> Option<String> {
        if what == ".headline" {
            return Some(self.report.headline.clone());
        }
        let key = what.trim_start_matches('#');
        if let Some((field, filled)) = self.form.entries().find(|(field, _)| field.key == key) {
            return Some(if key == what { filled.shown(field) } else { filled.text.clone() });
        }
        if let Some((step, symbol)) = what.split_once('/') {
            let step = self.step(step)?;
            return step.terms.iter().find(|term| term.symbol == symbol).map(|term| term.value.to_string());
        }
        let in_sections = self.report.sections.iter().flat_map(|section| &section.figures);
        let figure = self.report.figures.iter().chain(in_sections).find(|figure| figure.symbol == what);
        if let Some(figure) = figure {
            return Some(figure.value.to_string());
        }
        if let Some(step) = self.step(what) {
            return Some(step.result.to_string());
        }
        let mut terms = self.report.working.steps().iter().flat_map(|step| &step.terms);
        terms.find(|term| term.symbol == what).map(|term| term.value.to_string())
    }

    fn step(&self, symbol: &str) -> Option<&Step> {
        self.report.working.steps().iter().find(|step| step.symbol == symbol)
    }
}

impl std::fmt::Display for Page {
    /// As plain text.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        writeln!(f, "{}", self.title)?;
        for block in &self.blocks {
            match block {
                Block::Heading(heading) => writeln!(f, "\n{heading}")?,
                Block::Paragraph(pieces) => writeln!(f, "\n{}", pieces.concat())?,
                Block::Step(step) => writeln!(f, "\n  {step}\n  {}", step.source)?,
            }
        }
        let Some(exercise) = &self.exercise else { return Ok(()) };
        writeln!(f, "\nTo end with")?;
        write_task(f, exercise)?;
        exercise
            .questions
            .iter()
            .zip(1..)
            .try_for_each(|(question, number)| write_question(f, number, question))
    }
}
