//! What there is to tell about a link.
//!
//! A link comes from anybody. What it says that is of no use here is shown as words from the link,
//! apart from what the page itself says: nobody can put a sentence into the page's mouth.

use super::View;
use crate::calculator::{Address, Damage, Draft};

/// What there is to tell about the link that was opened.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Notice {
    /// The page's own sentences.
    pub said: Vec<String>,
    /// Words from the link that were not used.
    pub words: Vec<String>,
}

/// So many letters of a word from a link are shown; the link itself stands in the address.
const SHOWN: usize = 120;

impl Notice {
    /// Whether there is nothing to tell.
    pub fn is_empty(&self) -> bool {
        self.said.is_empty()
    }

    /// What was wrong with an address.
    pub fn of_damage(view: View, address: &Address, damage: &[Damage]) -> Self {
        let mut notice = Self::default();
        for one in damage {
            let said = match one {
                Damage::Version(version) if version.is_empty() => {
                    "This link is damaged or not one of ours; what could be read of it is open.".to_owned()
                }
                Damage::Version(version) => {
                    notice.quote(version);
                    "This link was written by another version of the page; what could be read of it is open."
                        .to_owned()
                }
                Damage::Broken(name) => {
                    format!("{} is damaged in this link; check what stands there.", part(view, name))
                }
                Damage::Twice(name, text) => {
                    notice.quote(&format!("{name}: {text}"));
                    format!("{} stands twice in this link; the last one was taken.", part(view, name))
                }
                Damage::Unknown(_) => continue,
            };
            notice.said.push(said);
        }
        if View::of_key(&address.view).is_none() {
            notice.quote(&address.view);
            notice
                .said
                .push("This link names a view that is not here; the order line is open instead.".to_owned());
        }
        notice
    }

    /// Notes what the link says that is not asked, out of all that it says.
    pub fn leave_out(&mut self, unknown: &[Damage], given: &Draft) {
        let words = unknown.iter().filter_map(|damage| match damage {
            Damage::Unknown(name) => Some(format!("{name}: {}", given.get(name).unwrap_or_default())),
            _ => None,
        });
        let words: Vec<String> = words.collect();
        match words.len() {
            0 => return,
            1 => self.said.push("One thing in this link is not asked here and was left out.".to_owned()),
            many => {
                self.said.push(format!("{many} things in this link are not asked here and were left out."))
            }
        }
        words.iter().for_each(|word| self.quote(word));
    }

    fn quote(&mut self, word: &str) {
        let mut shown: String = word.chars().take(SHOWN).collect();
        if shown.len() < word.len() {
            shown.push('…');
        }
        self.words.push(shown);
    }
}

/// What the page calls a part of a link: the label of its field, never the link's own name for it.
fn part(view: View, name: &str) -> String {
    let field = view.fields().iter().find(|field| field.key == name);
    field.map_or_else(|| "A part".to_owned(), |field| format!("“{}”", field.label))
}
