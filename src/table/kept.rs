//! What is read from the tables once.

use std::ops::Deref;

/// What follows from the tables: read once for every order that asks the same, or for one order alone.
#[derive(Debug, Clone)]
pub enum Kept<T: 'static> {
    /// Read once, for as long as the program runs.
    Once(&'static T),
    /// Of one order, whose like is seldom asked for.
    Own(Box<T>),
}

impl<T> Deref for Kept<T> {
    type Target = T;

    fn deref(&self) -> &T {
        match self {
            Self::Once(kept) => kept,
            Self::Own(own) => own,
        }
    }
}

impl<T: PartialEq> PartialEq for Kept<T> {
    fn eq(&self, other: &Self) -> bool {
        **self == **other
    }
}
