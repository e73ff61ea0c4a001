//! The address of a view: what follows `#` in a link, and what is kept of a saved order.
//!
//! `1/coat?coat=50+%C2%B5m&factor=a123`: the version of this grammar, the view, then names and texts
//! as a web form writes them. An address holds the whole state of a view, so that a link sent by
//! mail opens what the sender saw.

use std::fmt::{self, Write};

use super::{Draft, FieldAbout};

/// A view and what stands in its fields.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Address {
    /// The view: the id of a calculator, or a name of the page's own.
    pub view: String,
    /// Names and texts of its fields.
    pub draft: Draft,
}

/// What of an address could not be read. The rest is opened all the same.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Damage {
    /// Another version of this grammar, or none.
    Version(String),
    /// The text of a field holds a broken character code.
    Broken(String),
    /// The view asks no such thing.
    Unknown(String),
    /// A name stands there more than once: the name, and a text of it that gave way to a later one.
    Twice(String, String),
}

/// The version of the grammar.
const VERSION: &str = "1";

impl Address {
    /// An address.
    pub fn new(view: impl Into<String>, draft: Draft) -> Self {
        Self { view: view.into(), draft }
    }

    /// Reads an address, with or without the `#` before it, and names what was damaged.
    pub fn read(text: &str) -> (Self, Vec<Damage>) {
        let mut damage = Vec::new();
        let text = text.trim();
        let text = text.strip_prefix('#').unwrap_or(text);
        let (version, rest) = text.split_once('/').unwrap_or(("", text));
        if version != VERSION {
            damage.push(Damage::Version(version.to_owned()));
        }
        let (view, query) = rest.split_once('?').unwrap_or((rest, ""));
        let mut address = Self::new(decoded(view).0, Draft::default());
        for pair in query.split('&').filter(|pair| !pair.is_empty()) {
            let (name, text) = pair.split_once('=').unwrap_or((pair, ""));
            let (name, name_whole) = decoded(name);
            let (text, text_whole) = decoded(text);
            if !name_whole || !text_whole {
                damage.push(Damage::Broken(name.clone()));
            }
            if let Some(earlier) = address.draft.get(&name).filter(|earlier| *earlier != text) {
                damage.push(Damage::Twice(name.clone(), earlier.to_owned()));
            }
            address.draft.set(&name, text);
        }
        (address, damage)
    }

    /// Takes out a name that stands for no field, with its text.
    pub fn take(&mut self, name: &str) -> Option<String> {
        let text = self.draft.get(name)?.to_owned();
        self.draft = self.draft.pairs().filter(|(other, _)| *other != name).collect();
        Some(text)
    }

    /// Takes out what these fields do not ask, and names it. Earlier keys give way to those of now.
    pub fn keep_only(&mut self, fields: &[FieldAbout]) -> Vec<Damage> {
        let mut draft = Draft::default();
        let mut damage = Vec::new();
        for (key, text) in self.draft.pairs() {
            let asks = |field: &&FieldAbout| field.key == key || field.aliases.contains(&key);
            match fields.iter().find(asks) {
                Some(field) => draft.set(field.key, text),
                None => damage.push(Damage::Unknown(key.to_owned())),
            }
        }
        self.draft = draft;
        damage
    }
}

impl fmt::Display for Address {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{VERSION}/")?;
        encode(f, &self.view)?;
        for (at, (name, text)) in self.draft.pairs().enumerate() {
            f.write_char(if at == 0 { '?' } else { '&' })?;
            encode(f, name)?;
            f.write_char('=')?;
            encode(f, text)?;
        }
        Ok(())
    }
}

/// As a web form writes it: letters, digits and `-._~/` stand, a space is `+`, the rest is in codes.
fn encode(f: &mut fmt::Formatter<'_>, text: &str) -> fmt::Result {
    for byte in text.bytes() {
        match byte {
            b'a'..=b'z' | b'A'..=b'Z' | b'0'..=b'9' | b'-' | b'.' | b'_' | b'~' | b'/' => {
                f.write_char(char::from(byte))?;
            }
            b' ' => f.write_char('+')?,
            _ => write!(f, "%{byte:02X}")?,
        }
    }
    Ok(())
}

/// The text, and whether all of it could be read.
fn decoded(text: &str) -> (String, bool) {
    let mut bytes = Vec::with_capacity(text.len());
    let mut whole = true;
    let mut rest = text.bytes();
    while let Some(byte) = rest.next() {
        bytes.push(match byte {
            b'+' => b' ',
            b'%' => {
                let digit = |byte: Option<u8>| char::from(byte?).to_digit(16);
                let mut code = rest.clone();
                match (digit(code.next()), digit(code.next())) {
                    // Two hexadecimal digits fit a byte.
                    (Some(high), Some(low)) => {
                        rest = code;
                        (high * 16 + low) as u8
                    }
                    _ => {
                        whole = false;
                        b'%'
                    }
                }
            }
            _ => byte,
        });
    }
    match String::from_utf8(bytes) {
        Ok(text) => (text, whole),
        Err(broken) => (String::from_utf8_lossy(broken.as_bytes()).into_owned(), false),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_address_reads_as_a_person_would_write_it() {
        let draft = [("coat", "50 µm"), ("factor", "a123")].into_iter().collect();
        let address = Address::new("coat", draft);
        assert_eq!(address.to_string(), "1/coat?coat=50+%C2%B5m&factor=a123");
        assert_eq!(Address::read("#1/coat?coat=50+%C2%B5m&factor=a123"), (address, Vec::new()));
    }

    #[test]
    fn an_earlier_key_gives_way_to_the_one_of_now() {
        let fields = [FieldAbout::text("grade", "Grade", "").aliases(&["class"])];
        let (mut address, _) = Address::read("#1/hydrogen?class=10.9&colour=red");
        assert_eq!(address.keep_only(&fields), [Damage::Unknown("colour".into())]);
        assert_eq!(address.draft.get("grade"), Some("10.9"));
        let [grade] = &fields;
        assert_eq!(grade.text_in(&[("class", "8.8")].into_iter().collect()), Some("8.8"));
    }

    #[test]
    fn damage_is_named_and_the_rest_is_opened() {
        let (address, damage) = Address::read("#1/coat?coat=50+%C2%ZZ&factor=a123");
        assert_eq!(address.draft.get("factor"), Some("a123"));
        assert_eq!(damage, [Damage::Broken("coat".into())]);
        assert_eq!(Address::read("#7/coat").1, [Damage::Version("7".into())]);
        assert_eq!(Address::read("#coat").1, [Damage::Version(String::new())]);
    }
}
