//! Choices: an enum with its keys and labels, from one declaration.

/// One possible answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Choice {
    /// Stable key for links.
    pub key: &'static str,
    /// What the user sees.
    pub label: &'static str,
}

impl Choice {
    /// A choice.
    pub const fn new(key: &'static str, label: &'static str) -> Self {
        Self { key, label }
    }
}

/// Makes an enum that a field asks for, and all that goes with it: `CHOICES` for the field,
/// `ALL`, `key`, `label`, `from_key`, and how it is read and written.
///
/// ```text
/// choices! {
///     /// How the steel is known.
///     pub enum Known {
///         Grade: "grade", "Grade or property class";
///         Hardness: "hardness", "Hardness";
///     }
/// }
/// const KNOWN: Field<Known> = Field::choice("known", "Steel known by", Known::CHOICES, Known::Grade.key());
/// const HARDNESS: Field<Hardness> = Field::quantity(..).when(&KNOWN, &[Known::Hardness.key()]);
/// ```
///
/// For an enum of a lower room it makes the list, and how it is read and written:
///
/// ```text
/// choices! {
///     const MEASURED: Column {
///         Local: "local", "At one place, any length";
///         UpTo5: "batch5", "Batch average, length up to 5 diameters";
///     }
/// }
/// ```
macro_rules! choices {
    (
        $(#[$doc:meta])*
        $visible:vis enum $name:ident {
            $($(#[$about:meta])* $variant:ident: $key:literal, $label:literal;)+
        }
    ) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        $visible enum $name {
            $(#[doc = $label] $(#[$about])* $variant,)+
        }

        #[allow(dead_code, reason = "not every enum needs all that goes with it")]
        impl $name {
            /// Every one, as a field offers them.
            pub const CHOICES: &'static [$crate::calculator::Choice] =
                &[$($crate::calculator::Choice::new($key, $label)),+];

            /// Every one, in the same order.
            pub const ALL: &'static [Self] = &[$(Self::$variant),+];

            /// Stable key for links.
            pub const fn key(self) -> &'static str {
                match self { $(Self::$variant => $key),+ }
            }

            /// What the user sees.
            pub const fn label(self) -> &'static str {
                match self { $(Self::$variant => $label),+ }
            }

            /// The one of that key.
            pub fn from_key(key: &str) -> Option<Self> {
                match key { $($key => Some(Self::$variant),)+ _ => None }
            }
        }

        $crate::calculator::chosen_by_key!($name, Self::from_key);
    };
    (
        $(#[$doc:meta])*
        const $list:ident: $name:ident {
            $($variant:ident: $key:literal, $label:literal;)+
        }
    ) => {
        $(#[$doc])*
        const $list: &[$crate::calculator::Choice] = &[$($crate::calculator::Choice::new($key, $label)),+];

        impl $crate::calculator::FieldValue for $name {
            fn read(
                text: &str,
                about: &$crate::calculator::FieldAbout,
            ) -> Result<Self, $crate::calculator::Fault> {
                about.chosen(text, |key| match key { $($key => Some(Self::$variant),)+ _ => None })
            }

            fn write(&self, _: &$crate::calculator::FieldAbout) -> std::borrow::Cow<'static, str> {
                match self { $(Self::$variant => $key),+ }.into()
            }
        }
    };
}

/// Lets fields ask for a type of a lower room that has a `key`, given the way back from the key.
macro_rules! chosen_by_key {
    ($name:ty, $from_key:expr) => {
        impl $crate::calculator::FieldValue for $name {
            fn read(
                text: &str,
                about: &$crate::calculator::FieldAbout,
            ) -> Result<Self, $crate::calculator::Fault> {
                about.chosen(text, $from_key)
            }

            fn write(&self, _: &$crate::calculator::FieldAbout) -> std::borrow::Cow<'static, str> {
                self.key().into()
            }
        }
    };
}

pub(crate) use {choices, chosen_by_key};

#[cfg(test)]
mod tests {
    use super::super::reader::IfAsked;
    use super::super::{Draft, Field, FieldAbout, Reader, When};

    choices! {
        /// How long.
        enum Known {
            Grade: "grade", "Grade or property class";
            /// On any scale.
            Hardness: "hardness", "Hardness";
        }
    }
    const KNOWN: Field<Known> = Field::choice("known", "Steel known by", Known::CHOICES, Known::Grade.key());
    const CASE: Field<bool> = Field::yes_no("case", "Case-hardened").when(&KNOWN, &[Known::Hardness.key()]);
    static FIELDS: [FieldAbout; 2] = [KNOWN.about, CASE.about];

    #[test]
    fn an_enum_of_choices_is_read_and_asks_for_other_fields() {
        assert_eq!(CASE.about.when, When::Is("known", &["hardness"]));
        assert_eq!((Known::ALL.len(), Known::Grade.label()), (2, "Grade or property class"));
        let read = |pairs: &[(&str, &str)]| {
            let draft: Draft = pairs.iter().copied().collect();
            let mut reader = Reader::new(&FIELDS, &draft);
            let read = (reader.get(&KNOWN), reader.if_asked(&CASE));
            reader.end(Ok(())).map(|()| read)
        };
        assert_eq!(read(&[]), Ok((Ok(Known::Grade), Ok(IfAsked::Not))));
        assert_eq!(
            read(&[("known", "hardness"), ("case", "yes")]),
            Ok((Ok(Known::Hardness), Ok(IfAsked::Says(true))))
        );
        let problems = read(&[("known", "hard"), ("case", "maybe")]).unwrap_err();
        assert_eq!(
            problems.to_string(),
            "Steel known by: “hard” is not one of the choices; use grade, hardness"
        );
    }
}
