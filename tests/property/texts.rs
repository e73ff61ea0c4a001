//! Every text that somebody can see, in one file to be read through: `target/texts.txt`; and what must
//! hold for all of them.

use std::collections::BTreeSet;
use std::fmt::Write;
use std::path::Path;

use kettle_barrel::calculator::{About, Kind, REGISTER};
use kettle_barrel::order;
use kettle_barrel::page::state::EXAMPLES;
use kettle_barrel::source::document;
use serde_json::Value;

#[test]
fn every_visible_text_is_sound() {
    let mut texts = Texts::default();
    for about in REGISTER.iter().map(|entry| &entry.about).chain([&order::ABOUT]) {
        texts.description(about);
    }
    for entry in REGISTER {
        for example in entry.about.examples {
            let report = entry.evaluate(&example.pairs.iter().copied().collect()).unwrap();
            texts.room(&format!("{}: {}", entry.about.title, example.title));
            report.picture.iter().for_each(|picture| texts.add(picture.text()));
            texts.data(&serde_json::to_value(&report).unwrap());
        }
    }
    for line in EXAMPLES {
        let reading = order::reading::read(line);
        let assessment = order::assess(&reading.draft).unwrap();
        texts.room(line);
        texts.add(reading.to_string());
        assessment.pictures.iter().for_each(|picture| texts.add(picture.text()));
        texts.data(&serde_json::to_value(&assessment).unwrap());
    }
    texts.room("Documents");
    document::ALL.iter().for_each(|document| texts.add(format!("{}: {}", document.name, document.about)));
    texts.room("The page's own words");
    texts.literals(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src/page"));
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("target/texts.txt");
    std::fs::write(&file, &texts.list).unwrap();
    assert!(texts.faults.is_empty(), "{}\n(all texts: {})", texts.faults.join("\n"), file.display());
    assert!(texts.seen.len() > 1000, "{}", texts.seen.len());
}

#[derive(Default)]
struct Texts {
    list: String,
    seen: BTreeSet<String>,
    faults: Vec<String>,
}

impl Texts {
    fn room(&mut self, title: &str) {
        writeln!(self.list, "\n== {title}").unwrap();
    }

    fn description(&mut self, about: &About) {
        self.room(about.title);
        self.add(about.answers.to_owned());
        for field in about.fields {
            self.add(field.label.to_owned());
            self.add(field.hint.to_owned());
            if let Kind::Choice(choices) = field.kind {
                choices.iter().for_each(|choice| self.add(choice.label.to_owned()));
            }
        }
        about.examples.iter().for_each(|example| self.add(example.title.to_owned()));
    }

    fn data(&mut self, value: &Value) {
        match value {
            Value::String(text) => self.add(text.clone()),
            Value::Array(values) => values.iter().for_each(|value| self.data(value)),
            // Links and formulas are for programs; what is set from them has tests of its own.
            Value::Object(members) => members
                .iter()
                .filter(|(name, _)| !matches!(name.as_str(), "opens" | "formula" | "symbol" | "mark"))
                .for_each(|(_, value)| self.data(value)),
            _ => {}
        }
    }

    /// The sentences in the sources of a folder: literals with a space and a letter.
    fn literals(&mut self, folder: &Path) {
        let mut entries: Vec<_> =
            std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
        entries.sort();
        for path in entries {
            if path.is_dir() {
                self.literals(&path);
            } else if path.extension().is_some_and(|ending| ending == "rs") && !path.ends_with("tests.rs") {
                let source = std::fs::read_to_string(&path).unwrap();
                let code: String = source
                    .split("#[cfg(test)]")
                    .next()
                    .unwrap_or_default()
                    .lines()
                    .filter(|line| !line.trim_start().starts_with("//"))
                    .map(|line| format!("{line}\n"))
                    .collect();
                let sentences = code.replace("\\\n", "");
                let literals = sentences.split('"').skip(1).step_by(2);
                // An outline is no text: a letter, then numbers.
                let is_word = |word: &str| word.len() > 1 && word.chars().all(char::is_alphabetic);
                let outline = |text: &str| text.starts_with('M') && !text.split(' ').any(is_word);
                let words =
                    |text: &&str| text.contains(' ') && text.contains(char::is_alphabetic) && !outline(text);
                for literal in literals.filter(words) {
                    self.add(literal.split_whitespace().collect::<Vec<_>>().join(" "));
                }
            }
        }
    }

    fn add(&mut self, text: String) {
        if text.is_empty() || !self.seen.insert(text.clone()) {
            return;
        }
        writeln!(self.list, "{text}").unwrap();
        if let Some(fault) = fault(&text) {
            self.faults.push(format!("{fault}: {text}"));
        }
    }
}

/// What is wrong with a text, if anything is.
fn fault(text: &str) -> Option<&'static str> {
    // What the user wrote is given back as it was written.
    if text.starts_with("Line ") {
        return None;
    }
    let words: Vec<&str> = text.split([' ', '\u{a0}']).collect();
    let pairs = || words.windows(2).map(|pair| (pair[0], pair[1].trim_end_matches(['.', ',', ';', ':'])));
    let plural = |word: &str| {
        [
            "years",
            "hours",
            "minutes",
            "readings",
            "pieces",
            "parts",
            "articles",
            "degrees",
            "baskets",
            "additions",
        ]
        .contains(&word)
    };
    let key = |word: &str| {
        let word = word.trim_matches(|letter: char| !letter.is_alphanumeric());
        // A library's own name.
        word != "bd_warehouse"
            && word.contains('_')
            && word.bytes().all(|byte| byte.is_ascii_lowercase() || byte == b'_')
    };
    if text.contains("  ") || text.contains(" ,") || text.contains(" .") && !text.contains(" .0") {
        Some("spaces where none belong")
    } else if text.contains("..") || text.contains(",,") || text.contains(".;") {
        Some("two stops")
    } else if pairs().any(|(number, word)| number == "1" && plural(word)) {
        Some("one of many")
    } else if pairs()
        .any(|(one, other)| one == other && one.len() > 2 && one.chars().all(char::is_alphabetic))
    {
        Some("a word twice")
    } else if words.iter().any(|word| key(word)) {
        Some("an internal name")
    } else {
        None
    }
}
