//! Sentences until the words are used up.

use super::WORDS;

/// Those that must be said first, then those that may, then what is left room for. A sentence may have
/// more behind it, which is said where there is room.
#[derive(Default)]
pub(super) struct Talk {
    sentences: Vec<Sentence>,
}

struct Sentence {
    level: u8,
    words: usize,
    text: String,
    more: Vec<String>,
}

impl Talk {
    pub(super) fn must(&mut self, text: String) {
        self.say(0, text, Vec::new());
    }

    pub(super) fn may(&mut self, text: String) {
        self.say(1, text, Vec::new());
    }

    /// A sentence without its full stop, and what may follow it.
    pub(super) fn may_with(&mut self, text: String, more: Vec<String>) {
        self.say(1, text, more);
    }

    pub(super) fn extra(&mut self, text: String) {
        self.say(2, text, Vec::new());
    }

    /// Takes back all but the first sentences.
    pub(super) fn truncate(&mut self, sentences: usize) {
        self.sentences.truncate(sentences);
    }

    fn say(&mut self, level: u8, text: String, more: Vec<String>) {
        self.sentences.push(Sentence { level, words: words(&text), text, more });
    }

    /// What is said, in the order in which it was put.
    pub(super) fn text(self) -> String {
        let mut room = WORDS;
        let mut is_said = vec![false; self.sentences.len()];
        for level in 0..=2 {
            for (is_said, sentence) in is_said.iter_mut().zip(&self.sentences) {
                if sentence.level == level && sentence.words <= room {
                    room -= sentence.words;
                    *is_said = true;
                }
            }
        }
        // Room for sixty words.
        let mut text = String::with_capacity(512);
        let said = self.sentences.iter().zip(is_said).filter(|(_, is_said)| *is_said);
        for (sentence, _) in said {
            if !text.is_empty() {
                text.push(' ');
            }
            text.push_str(&sentence.text);
            for more in &sentence.more {
                let words = words(more);
                if words <= room {
                    room -= words;
                    text.push_str("; ");
                    text.push_str(more);
                }
            }
            if !text.ends_with('.') {
                text.push('.');
            }
        }
        text
    }
}

fn words(text: &str) -> usize {
    text.split_whitespace().count()
}
