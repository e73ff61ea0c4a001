//! What was typed, before anybody has judged it; and a link that fills a calculator in.

use std::borrow::Cow;

use indexmap::IndexMap;
use serde::{Serialize, Serializer};

/// Names and texts, as typed. Nothing typed is ever lost or changed here.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Draft(IndexMap<String, String>);

/// A calculator with its fields filled in: what a touch on a reason opens.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Link {
    /// The calculator's id.
    pub calculator: &'static str,
    /// Names and texts of its fields.
    #[serde(rename = "fields", serialize_with = "by_name")]
    pub pairs: Vec<(&'static str, Cow<'static, str>)>,
}

impl Serialize for Draft {
    /// As names with their texts.
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(self.pairs())
    }
}

fn by_name<S: Serializer>(
    pairs: &[(&'static str, Cow<'static, str>)],
    serializer: S,
) -> Result<S::Ok, S::Error> {
    serializer.collect_map(pairs.iter().map(|(name, text)| (name, text)))
}

impl Draft {
    /// The text of a field, if one was given.
    pub fn get(&self, name: &str) -> Option<&str> {
        self.0.get(name).map(String::as_str)
    }

    /// Gives a field its text; the last word counts.
    pub fn set(&mut self, name: &str, text: impl Into<String>) {
        self.0.insert(name.to_owned(), text.into());
    }

    /// Whether nothing was given.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// Names and texts, in the order they were given.
    pub fn pairs(&self) -> impl Iterator<Item = (&str, &str)> {
        self.0.iter().map(|(name, text)| (name.as_str(), text.as_str()))
    }
}

impl<'a, T: Into<String>> FromIterator<(&'a str, T)> for Draft {
    fn from_iter<I: IntoIterator<Item = (&'a str, T)>>(pairs: I) -> Self {
        let mut draft = Self::default();
        for (name, text) in pairs {
            draft.set(name, text);
        }
        draft
    }
}

impl From<&Link> for Draft {
    fn from(link: &Link) -> Self {
        link.pairs.iter().map(|(name, text)| (*name, text.as_ref())).collect()
    }
}
