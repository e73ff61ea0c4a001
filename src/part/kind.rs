//! The kinds of part, by the names the trade gives them.

use std::fmt;

/// A kind of part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// Hexagon head bolt, threaded over a part of its length.
    HexBolt,
    /// Hexagon head screw, threaded to the head.
    HexScrew,
    /// Heavy hex structural bolt, inch.
    StructuralBolt,
    /// Hexagon nut.
    HexNut,
    /// Heavy hex nut, inch.
    HeavyHexNut,
    /// Plain washer: ISO 7089 for metric threads, ASTM F436 for inch threads.
    Washer,
    /// Hexagon socket head cap screw.
    SocketScrew,
    /// Threaded rod, or a stud threaded over its whole length.
    Rod,
}

/// A text that names no kind of part.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Unknown {
    /// As it was written.
    pub text: String,
}

impl Kind {
    /// All kinds, bolts first.
    pub const ALL: [Self; 8] = [
        Self::HexBolt,
        Self::HexScrew,
        Self::StructuralBolt,
        Self::SocketScrew,
        Self::Rod,
        Self::HexNut,
        Self::HeavyHexNut,
        Self::Washer,
    ];

    /// Stable key for links.
    pub const fn key(self) -> &'static str {
        match self {
            Self::HexBolt => "hex-bolt",
            Self::HexScrew => "hex-screw",
            Self::StructuralBolt => "structural-bolt",
            Self::HexNut => "hex-nut",
            Self::HeavyHexNut => "heavy-hex-nut",
            Self::Washer => "washer",
            Self::SocketScrew => "socket-screw",
            Self::Rod => "rod",
        }
    }

    /// The kind of that key.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|kind| kind.key() == key)
    }

    /// What the trade calls it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::HexBolt => "hex bolt",
            Self::HexScrew => "hex screw, threaded to the head",
            Self::StructuralBolt => "heavy hex structural bolt",
            Self::HexNut => "hex nut",
            Self::HeavyHexNut => "heavy hex nut",
            Self::Washer => "plain washer",
            Self::SocketScrew => "socket head cap screw",
            Self::Rod => "threaded rod",
        }
    }

    /// Whether the part has a length that must be stated.
    pub const fn has_length(self) -> bool {
        !matches!(self, Self::HexNut | Self::HeavyHexNut | Self::Washer)
    }

    /// Whether it is a nut.
    pub const fn is_nut(self) -> bool {
        matches!(self, Self::HexNut | Self::HeavyHexNut)
    }

    /// Reads a kind as people write it: `hex bolt`, `Heavy Hex Nuts`, `stud`, `SHCS`.
    ///
    /// # Errors
    /// [`Unknown`] with the names that would do.
    pub fn read(text: &str) -> Result<Self, Unknown> {
        let words: Vec<String> = text
            .split(|c: char| !c.is_alphabetic() && !c.is_ascii_digit())
            .filter(|word| !word.is_empty())
            .map(|word| singular(&word.to_ascii_lowercase()))
            .collect();
        let has = |word: &str| words.iter().any(|written| written == word);
        let hexagonal = has("hex") || has("hexagon") || has("hexagonal");
        let kind = if has("washer") {
            Self::Washer
        } else if has("nut") {
            if has("heavy") { Self::HeavyHexNut } else { Self::HexNut }
        } else if has("rod") || has("stud") || has("studding") {
            Self::Rod
        } else if has("socket") || has("shcs") {
            Self::SocketScrew
        } else if has("structural") || (has("heavy") && (has("bolt") || has("screw"))) {
            Self::StructuralBolt
        } else if has("bolt") || (hexagonal && has("cap")) {
            Self::HexBolt
        } else if has("cap") && has("screw") {
            Self::SocketScrew
        } else if has("screw") || has("setscrew") {
            Self::HexScrew
        } else {
            return Self::from_key(text.trim()).ok_or_else(|| Unknown { text: text.to_owned() });
        };
        Ok(kind)
    }
}

/// `nuts` is a nut; `hex` and `rods` likewise.
fn singular(word: &str) -> String {
    word.strip_suffix('s').filter(|rest| rest.len() > 2 && *rest != "shc").unwrap_or(word).to_owned()
}

impl fmt::Display for Kind {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}

impl fmt::Display for Unknown {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "“{}” names no part known here; write one of: ", self.text)?;
        for (at, kind) in Kind::ALL.into_iter().enumerate() {
            write!(f, "{}{}", if at > 0 { "; " } else { "" }, kind.name())?;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn parts_are_read_as_people_write_them() {
        let cases = [
            ("hex bolt", Kind::HexBolt),
            ("Hexagon head bolts", Kind::HexBolt),
            ("hex cap screw", Kind::HexBolt),
            ("cap screw", Kind::SocketScrew),
            ("hex screw", Kind::HexScrew),
            ("heavy hex bolt", Kind::StructuralBolt),
            ("Structural bolts", Kind::StructuralBolt),
            ("nut", Kind::HexNut),
            ("heavy hex nuts", Kind::HeavyHexNut),
            ("flat washers", Kind::Washer),
            ("SHCS", Kind::SocketScrew),
            ("socket head cap screws", Kind::SocketScrew),
            ("threaded rod", Kind::Rod),
            ("studs", Kind::Rod),
            ("rod", Kind::Rod),
        ];
        for (text, kind) in cases {
            assert_eq!(Kind::read(text), Ok(kind), "{text}");
        }
        for kind in Kind::ALL {
            assert_eq!(Kind::read(kind.name()), Ok(kind), "{}", kind.name());
            assert_eq!(Kind::read(kind.key()), Ok(kind), "{}", kind.key());
        }
        assert!(Kind::read("spring").unwrap_err().to_string().contains("hex bolt"));
        assert!(Kind::read("").is_err());
    }
}
