//! What the code takes from its documents, read from the code itself: every constant, table and function
//! that names a document, a rule of the trade or an assumption, by itself or by another one of its file.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::OnceLock;

use super::item::{Item, Places, items};
use super::token::{Token, tokens};

/// A constant, a table or a function, and one place of a document that it rests on.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Taken {
    /// The name of the document's constant: `ISO_4042_1999`.
    pub document: String,
    /// Clause, table or page.
    pub place: String,
    /// How it is known; empty where the item gives the basis of each of its values.
    pub basis: &'static str,
    /// The file, without `src/` and its ending.
    pub file: String,
    /// Its name in the code; empty for what computes outside the tables.
    pub item: String,
    /// What it is, by its own description.
    pub what: String,
}

/// Rooms that take nothing from a document: they name it.
const NAMING: [&str; 5] = ["source", "page", "bin", "course", "sheet"];
const KNOWN: [(&str, &str); 5] = [
    ("Read", "read"),
    ("Memory", "from memory"),
    ("Computed", "computed"),
    ("CommonPractice", "common practice"),
    ("Assumed", "assumed"),
];

/// The constants of `document.rs` with the names they stand for, in their order.
pub fn documents() -> Vec<(String, String)> {
    let tokens = tokens(include_str!("../../../src/source/document.rs"));
    let rows = tokens.windows(3).filter_map(|three| match three {
        [Token::Name(constant), Token::Sign(':'), Token::Text(name)] => {
            Some((constant.clone(), name.clone()))
        }
        _ => None,
    });
    rows.collect()
}

/// Everything that is taken, and the items of `src/table` that hold numbers and name no source; read once.
pub fn taken() -> &'static (Vec<Taken>, Vec<String>) {
    static TAKEN: OnceLock<(Vec<Taken>, Vec<String>)> = OnceLock::new();
    TAKEN.get_or_init(read)
}

fn read() -> (Vec<Taken>, Vec<String>) {
    let documents: BTreeSet<String> = documents().into_iter().map(|(constant, _)| constant).collect();
    let (mut taken, mut without) = (Vec::new(), Vec::new());
    for (file, text) in sources() {
        let is_table = file.starts_with("table/");
        let mut items = items(&tokens(&text));
        // A table may have the name of its document.
        let own: BTreeSet<String> = items.iter().map(|item| item.name.clone()).collect();
        for item in &mut items {
            item.named = named(&item.tokens, &documents, &own, is_table);
        }
        let direct: Vec<Places> = items.iter().map(|item| item.named.clone()).collect();
        let of_file = inherited(&mut items, is_table);
        for (item, direct) in items.into_iter().zip(direct) {
            let mut named = item.named;
            if named.is_empty() && is_table && holds_numbers(&item.tokens) {
                // A table whose file knows one document only is that document's.
                // A file that knows none holds the shapes of rows and how they are read.
                match of_file.iter().map(|(document, ..)| document).collect::<BTreeSet<_>>().len() {
                    _ if item.is_code && !item.is_public => {}
                    0 if item.is_code => {}
                    1 => named = alone(&item.tokens, &of_file),
                    _ => without.push(format!("{file}: {}", item.name)),
                }
            }
            // A function takes what it names; what it reads from a table is the table's.
            if item.is_code && item.links.is_empty() {
                named.retain(|(document, place, _)| {
                    direct.iter().any(|(of, at, _)| (of, at) == (document, place))
                });
            }
            // What computes is known by its file: its functions come and go.
            let is_named = is_table || !item.is_code;
            let row = |(document, place, basis)| Taken {
                document,
                place,
                basis,
                file: file.clone(),
                item: if is_named { item.name.clone() } else { String::new() },
                what: if is_named { item.what.clone() } else { String::new() },
            };
            taken.extend(named.into_iter().map(row));
        }
    }
    taken.sort();
    taken.dedup();
    (taken, without)
}

/// The files of the rooms that take something, by their paths.
fn sources() -> BTreeMap<String, String> {
    fn files(folder: &Path, found: &mut Vec<PathBuf>) {
        for entry in fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() { files(&path, found) } else { found.push(path) }
        }
    }
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut found = Vec::new();
    files(&root, &mut found);
    let text = |path: PathBuf| {
        let name = path.strip_prefix(&root).unwrap().to_string_lossy().replace('\\', "/");
        let name = name.strip_suffix(".rs")?.to_owned();
        if NAMING.contains(&name.split('/').next().unwrap()) {
            return None;
        }
        let text = fs::read_to_string(&path).unwrap();
        Some((name, text.split("#[cfg(test)]\nmod tests").next().unwrap().to_owned()))
    };
    found.into_iter().filter_map(text).collect()
}

/// The places that an item names by itself.
fn named(tokens: &[Token], documents: &BTreeSet<String>, own: &BTreeSet<String>, is_table: bool) -> Places {
    let mut named = BTreeSet::new();
    for (at, token) in tokens.iter().enumerate() {
        let Token::Name(word) = token else { continue };
        let after = &tokens[at + 1..];
        match (word.as_str(), after) {
            ("common_practice", [Token::Sign('('), Token::Text(place), ..]) => {
                named.insert(("TRADE".to_owned(), place.clone(), "common practice"));
            }
            ("assumed", [Token::Sign('('), Token::Text(place), ..]) => {
                named.insert(("PROJECT".to_owned(), place.clone(), "assumed"));
            }
            (document, _)
                if documents.contains(document) && (!own.contains(document) || is_path(&tokens[..at])) =>
            {
                let (place, basis) = match after {
                    [
                        Token::Sign('.'),
                        Token::Name(verb),
                        Token::Sign('('),
                        Token::Text(place),
                        rest @ ..,
                    ] => {
                        let basis = match verb.as_str() {
                            "read" => "read",
                            "memory" => "from memory",
                            "computed" => "computed",
                            _ => rest.iter().take(6).find_map(basis).unwrap_or(""),
                        };
                        (place.clone(), basis)
                    }
                    [Token::Sign(','), Token::Name(field), Token::Sign(':'), Token::Text(place), ..]
                        if field == "place" =>
                    {
                        (place.clone(), "")
                    }
                    // The place is said where this is called.
                    [Token::Sign('.'), Token::Name(verb), Token::Sign('('), ..] => {
                        let basis = match verb.as_str() {
                            "read" => "read",
                            "memory" => "from memory",
                            "computed" => "computed",
                            "known" => "",
                            _ => continue,
                        };
                        (String::new(), basis)
                    }
                    // A document that is only named, to be opened or compared with.
                    _ if !is_table => continue,
                    _ => (String::new(), ""),
                };
                named.insert((document.to_owned(), place, basis));
            }
            _ => {}
        }
    }
    named
}

/// Whether a name that stands behind these is that of a document, whatever else has it.
fn is_path(before: &[Token]) -> bool {
    matches!(before, [.., Token::Name(module), Token::Sign(':'), Token::Sign(':')] if module == "document")
}

fn basis(token: &Token) -> Option<&'static str> {
    let Token::Name(word) = token else { return None };
    KNOWN.iter().find(|(name, _)| name == word).map(|(_, words)| *words)
}

/// Gives each item of a table the places of the items that it names, in its code or in its description, and
/// a table that names none those of the items that read it; returns those of the whole file.
fn inherited(items: &mut [Item], is_table: bool) -> Places {
    let mut changed = is_table;
    while changed {
        changed = false;
        for at in 0..items.len() {
            let more: Vec<_> = items
                .iter()
                .filter(|other| items[at].names(&other.name))
                .flat_map(|other| other.named.iter().cloned())
                .filter(|place| !items[at].named.contains(place))
                .collect();
            changed |= !more.is_empty();
            items[at].named.extend(more);
        }
    }
    for at in 0..items.len() {
        let item = &items[at];
        if !is_table || item.is_code || !item.named.is_empty() || !holds_numbers(&item.tokens) {
            continue;
        }
        let readers = items.iter().filter(|other| other.names(&items[at].name));
        let more: Vec<_> = readers.flat_map(|other| other.named.iter().cloned()).collect();
        items[at].named.extend(more);
    }
    let known: Vec<_> = (0..items.len()).map(|at| known(items, at)).collect();
    for (item, known) in items.iter_mut().zip(known) {
        item.named = known;
    }
    items.iter().flat_map(|item| item.named.iter().cloned()).collect()
}

/// The places of an item; where each value has its own basis, it is known on all of them.
fn known(items: &[Item], at: usize) -> Places {
    let item = &items[at];
    let own: BTreeSet<&'static str> = item.tokens.iter().filter_map(basis).collect();
    let of = |others: &dyn Fn(&Item) -> bool| -> BTreeSet<&'static str> {
        let others = items.iter().filter(|other| others(other));
        others.flat_map(|other| other.tokens.iter().filter_map(basis)).collect()
    };
    let near = of(&|other| item.names(&other.name) || other.names(&item.name));
    let bases = [own, near, of(&|_| true)].into_iter().find(|bases| !bases.is_empty()).unwrap_or_default();
    let each = |(document, place, known): &(String, String, &'static str)| -> Vec<_> {
        if known.is_empty() && !bases.is_empty() {
            bases.iter().map(|basis| (document.clone(), place.clone(), *basis)).collect()
        } else {
            vec![(document.clone(), place.clone(), *known)]
        }
    };
    item.named.iter().flat_map(each).collect()
}

/// A table without a place of its own in a file of one document: known on its own bases, or on those of the
/// file.
fn alone(tokens: &[Token], of_file: &Places) -> Places {
    let own: BTreeSet<&'static str> = tokens.iter().filter_map(basis).collect();
    let of_file = of_file.iter().filter(|(_, _, basis)| own.is_empty() || own.contains(basis));
    of_file.map(|(document, _, basis)| (document.clone(), String::new(), *basis)).collect()
}

/// Whether it holds a number of a document: more than the naughts and ones that counting needs.
fn holds_numbers(tokens: &[Token]) -> bool {
    let is_counting = |number: &str| matches!(number, "0" | "1" | "2" | "0.0" | "1.0" | "0.5");
    tokens.iter().any(|token| matches!(token, Token::Number(number) if !is_counting(number)))
}
