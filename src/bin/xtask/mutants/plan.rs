//! All mutants that are to be tried, and the sources with them in it.

use std::collections::BTreeMap;
use std::ops::Range;
use std::path::Path;

use super::rewrite::{Change, Rewritten, rewrite};
use super::site::{Genre, Site, sites};
use crate::xtask::run::{Done, read_text};

/// The mutants and the files they are in.
#[derive(Default)]
pub struct Plan {
    pub files: BTreeMap<String, File>,
    pub mutants: Vec<Mutant>,
}

/// A source file and its places.
pub struct File {
    source: String,
    pub sites: Vec<Site>,
}

/// One change of one place.
#[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Mutant {
    /// From the top of the tree.
    pub file: String,
    pub function: String,
    pub genre: Genre,
    /// What is replaced, in one line; of a function's body nothing.
    pub text: String,
    /// Which of the places of this text in the function, from 0.
    pub occurrence: usize,
    /// What stands there instead.
    pub replacement: String,
}

impl Mutant {
    /// The room of its file.
    pub fn room(&self) -> &str {
        let path = self.file.strip_prefix("src/").unwrap_or(&self.file);
        path.split('/').next().map(|room| room.strip_suffix(".rs").unwrap_or(room)).unwrap_or_default()
    }

    /// The mutant in words.
    pub fn words(&self) -> String {
        let Self { function, text, replacement, .. } = self;
        let nth = if self.occurrence == 0 { String::new() } else { format!(" ({})", self.occurrence + 1) };
        match self.genre {
            Genre::FnValue => format!("replace {function} with {replacement}"),
            Genre::BinaryOperator | Genre::MatchArmGuard => {
                format!("replace {text} with {replacement}{nth} in {function}")
            }
            Genre::UnaryOperator => format!("delete the sign of {text}{nth} in {function}"),
            Genre::MatchArm => format!("delete the arm {text}{nth} in {function}"),
            Genre::StructField => format!("delete the field {text}{nth} in {function}"),
        }
    }
}

/// The files with the mutants in them, and which number each got.
pub struct Rendered {
    pub files: BTreeMap<String, Rewritten>,
    /// The mutant of each number, by its place in the plan.
    pub by_number: Vec<usize>,
    /// The first number of the place that each number belongs to.
    pub first: Vec<u32>,
}

impl Plan {
    /// The places of a file, read once.
    pub fn file(&mut self, top: &Path, name: &str) -> Done<&File> {
        if !self.files.contains_key(name) {
            let source = read_text(&top.join(name))?;
            let sites = sites(&source).map_err(|problem| format!("{name}: {problem}"))?;
            self.files.insert(name.to_owned(), File { source, sites });
        }
        self.files.get(name).ok_or_else(|| format!("{name} is lost").into())
    }

    /// The place of a mutant.
    pub fn site(&self, mutant: &Mutant) -> Option<&Site> {
        self.files.get(&mutant.file)?.sites.iter().find(|site| {
            site.genre == mutant.genre
                && site.function == mutant.function
                && site.occurrence == mutant.occurrence
                && site.text == mutant.text
        })
    }

    /// The sources with those of these mutants in them that a switch can turn on.
    pub fn render(&self, wanted: impl Fn(usize) -> bool) -> Rendered {
        let mut by_place: BTreeMap<(&str, Genre, &str, usize, &str), Vec<usize>> = BTreeMap::new();
        for (index, mutant) in self.mutants.iter().enumerate().filter(|(index, _)| wanted(*index)) {
            let Mutant { file, function, genre, text, occurrence, .. } = mutant;
            by_place.entry((file, *genre, function, *occurrence, text)).or_default().push(index);
        }
        let mut rendered = Rendered { files: BTreeMap::new(), by_number: Vec::new(), first: Vec::new() };
        // In one order however they were found: a text that changes is built again.
        let by_text = |index: &usize| self.mutants.get(*index).map(|mutant| &mutant.replacement);
        by_place.values_mut().for_each(|indices| indices.sort_by_key(by_text));
        for (name, file) in &self.files {
            let mut changes: Vec<Change<'_>> = Vec::new();
            let mut whole = None;
            for site in file.sites.iter().filter(|site| !site.constant) {
                let place =
                    (name.as_str(), site.genre, site.function.as_str(), site.occurrence, site.text.as_str());
                let Some(indices) = by_place.get(&place) else { continue };
                let first = u32::try_from(rendered.by_number.len()).unwrap_or(u32::MAX);
                let together = site.shape.of_struct();
                let start = match (&together, &whole) {
                    (Some(range), Some((other, start))) if range == other => *start,
                    _ => first,
                };
                whole = together.map(|range| (range, start));
                let mut replacements = Vec::new();
                for index in indices {
                    if let Some(mutant) = self.mutants.get(*index) {
                        replacements.push(mutant.replacement.as_str());
                        rendered.by_number.push(*index);
                        rendered.first.push(start);
                    }
                }
                changes.push(Change { site, replacements, first });
            }
            rendered.files.insert(name.clone(), rewrite(&file.source, &changes));
        }
        rendered
    }
}

impl Rendered {
    /// The numbers that a position of a rewritten file belongs to: those of the innermost mutant's own
    /// text, else those of the innermost place.
    pub fn at(&self, file: &str, position: usize) -> Found {
        let Some(file) = self.files.get(file) else { return Found::Nothing };
        let inside =
            |range: &Range<usize>| range.start <= position && position < range.end.max(range.start + 1);
        let arm = file.arms.iter().filter(|(range, _)| inside(range)).min_by_key(|(range, _)| range.len());
        if let Some((_, number)) = arm {
            return Found::Mutant(*number);
        }
        let group =
            file.groups.iter().filter(|(range, _)| inside(range)).min_by_key(|(range, _)| range.len());
        group.map_or(Found::Nothing, |(_, numbers)| Found::Place(numbers.clone()))
    }
}

/// What stands at a position.
pub enum Found {
    /// A mutant's own text.
    Mutant(u32),
    /// What asks for these mutants.
    Place(Range<u32>),
    Nothing,
}
