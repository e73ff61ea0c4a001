//! The constants, tables and functions of a file.

use std::collections::BTreeSet;

use super::token::Token;

/// Documents with a place in each and the basis on which it is known.
pub type Places = BTreeSet<(String, String, &'static str)>;

/// An item of a file.
pub struct Item {
    /// Its name.
    pub name: String,
    /// The first sentence of its description.
    pub what: String,
    /// The items that its description links: ``[`SOURCE`]``.
    pub links: Vec<String>,
    /// What stands behind its name.
    pub tokens: Vec<Token>,
    /// Document, place, basis.
    pub named: Places,
    /// Whether it is a function.
    pub is_code: bool,
    /// Whether other files may use it.
    pub is_public: bool,
}

/// The constants, statics and functions of a file, those of its `impl` blocks as well.
pub fn items(tokens: &[Token]) -> Vec<Item> {
    let mut items: Vec<Item> = Vec::new();
    let (mut depth, mut inside, mut what, mut links) = (0, None, String::new(), Vec::new());
    let mut is_impl = false;
    for (at, token) in tokens.iter().enumerate() {
        match token {
            Token::Description(line) => {
                links.extend(
                    line.split("[`").skip(1).filter_map(|link| Some(link.split_once("`]")?.0.to_owned())),
                );
                // The first sentence; an empty line ends it.
                if !what.ends_with('.') && !what.ends_with('\n') {
                    if !what.is_empty() {
                        what.push(' ');
                    }
                    what.push_str(if line.is_empty() { "\n" } else { line });
                }
                continue;
            }
            Token::Sign('{' | '(' | '[') => depth += 1,
            Token::Sign('}' | ')' | ']') => depth -= 1,
            _ => {}
        }
        let begins = |token: &Token| matches!(token, Token::Name(word) if ["const", "static", "fn"].contains(&word.as_str()));
        let floor = usize::from(is_impl);
        if inside.is_none() && depth == floor && begins(token) {
            if let Some(Token::Name(name)) = tokens.get(at + 1)
                && name != "fn"
            {
                let name = name.clone();
                let what = sentence(&std::mem::take(&mut what));
                let links = std::mem::take(&mut links);
                items.push(Item {
                    name,
                    what,
                    links,
                    tokens: Vec::new(),
                    named: BTreeSet::new(),
                    is_code: *token == Token::Name("fn".to_owned()),
                    is_public: is_public(&tokens[..at]),
                });
                inside = Some(depth);
            }
        } else if let Some(level) = inside {
            items.last_mut().unwrap().tokens.push(token.clone());
            if depth == level && matches!(token, Token::Sign(';' | '}')) {
                inside = None;
                (what, links) = Default::default();
            }
        } else {
            match token {
                Token::Name(word) if word == "impl" && depth == 0 => is_impl = true,
                Token::Sign('}') if depth == 0 => {
                    is_impl = false;
                    (what, links) = Default::default();
                }
                Token::Sign(';') if depth == 0 => what.clear(),
                _ => {}
            }
        }
    }
    items
}

/// Whether what begins behind these may be used by other files: `pub const fn`, `pub(super) static`.
fn is_public(before: &[Token]) -> bool {
    let last = before.iter().rev().find(|token| **token != Token::Name("const".to_owned()));
    last.is_some_and(|token| *token == Token::Name("pub".to_owned()) || *token == Token::Sign(')'))
}

/// The first sentence of a description, on one line.
fn sentence(what: &str) -> String {
    let line = what.split('\n').next().unwrap_or_default().replace('\t', " ");
    let end = line.find(". ").map_or(line.len(), |end| end);
    line[..end].trim().trim_end_matches('.').to_owned()
}

impl Item {
    /// Whether its code or its description names another one.
    pub fn names(&self, other: &str) -> bool {
        self.name != other
            && (self.tokens.iter().any(|token| matches!(token, Token::Name(word) if word == other))
                || self.links.iter().any(|link| link == other))
    }
}
