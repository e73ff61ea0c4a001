//! What is known of a place: one category, or several side by side.

use std::fmt;

use super::{Category, Rates};

/// The categories that a place may be of: `the coast` is C4 or C5.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Categories {
    /// The mildest of them.
    pub mildest: Category,
    /// The harshest of them.
    pub harshest: Category,
}

impl Categories {
    /// All from the one to the other, in whatever order they are named.
    pub fn between(one: Category, other: Category) -> Self {
        Self { mildest: one.min(other), harshest: one.max(other) }
    }

    /// All from the mildest to the harshest of a list; `None` where it is empty.
    pub fn spanning(categories: &[Category]) -> Option<Self> {
        Some(Self::between(*categories.iter().min()?, *categories.iter().max()?))
    }

    /// Reads `C4`, and `C4-C5` for what may be either.
    pub fn read(text: &str) -> Option<Self> {
        match text.split_once('-') {
            Some((one, other)) => Some(Self::between(Category::read(one)?, Category::read(other)?)),
            None => Category::read(text).map(Self::from),
        }
    }

    /// What [`Categories::read`] reads.
    pub fn key(self) -> String {
        let (mildest, harshest) = (self.mildest.key(), self.harshest.key());
        if mildest == harshest { mildest.to_owned() } else { format!("{mildest}-{harshest}") }
    }

    /// Each of them, from the mildest.
    pub fn each(self) -> impl Iterator<Item = Category> {
        Category::ALL.into_iter().filter(move |one| self.mildest <= *one && *one <= self.harshest)
    }

    /// The loss of zinc in the first year: the least of the mildest, the greatest of the harshest.
    pub fn rates(self) -> Rates {
        let (mild, harsh) = (self.mildest.rates(), self.harshest.rates());
        Rates { lower: mild.lower, ..harsh }
    }
}

impl From<Category> for Categories {
    fn from(category: Category) -> Self {
        Self { mildest: category, harshest: category }
    }
}

impl fmt::Display for Categories {
    /// `C4`, `C4 or C5`, `C2 to C5`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.mildest.key())?;
        match self.each().count() {
            1 => return Ok(()),
            2 => f.write_str(" or ")?,
            _ => f.write_str(" to ")?,
        }
        f.write_str(self.harshest.key())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_key_is_read_back() {
        for mildest in Category::ALL {
            for harshest in Category::ALL.into_iter().filter(|harshest| *harshest >= mildest) {
                let categories = Categories::between(harshest, mildest);
                assert_eq!(Categories::read(&categories.key()), Some(categories));
            }
        }
        assert_eq!(Categories::read("C4-"), None);
        assert_eq!(Categories::read("c4-c5").map(|both| both.to_string()).as_deref(), Some("C4 or C5"));
    }

    #[test]
    fn the_loss_is_that_of_all_of_them() {
        let coast = Categories::between(Category::C4, Category::C5).rates();
        assert_eq!(coast.lower, Category::C4.rates().lower);
        assert_eq!(coast.upper, Category::C5.rates().upper);
        assert_eq!(Categories::from(Category::C3).rates(), Category::C3.rates());
    }
}
