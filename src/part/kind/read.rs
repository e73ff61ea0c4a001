//! The name of a part as people write it, without anything else around it.

use super::{Kind, Unknown};
use crate::quantity::letters::lower;

impl Kind {
    /// Reads a kind as people write it: `hex bolt`, `Heavy Hex Nuts`, `stud`, `SHCS`.
    ///
    /// A name that is not known here is never read as the part nearest to it: a wing nut is no hex
    /// nut.
    ///
    /// # Errors
    /// [`Unknown`] with the names that would do.
    pub fn read(text: &str) -> Result<Self, Unknown> {
        if let Some(kind) = Self::from_key(text.trim()) {
            return Ok(kind);
        }
        let words: Vec<String> = text
            .split(|c: char| !c.is_alphanumeric())
            .filter(|word| !word.is_empty())
            .map(|word| singular(&lower(word)))
            .filter(|word| !MEANS_NOTHING.contains(&word.as_str()))
            .collect();
        let kind = NAMES.iter().find(|(_, names)| names.iter().any(|name| name.split(' ').eq(words.iter())));
        kind.map(|(kind, _)| *kind).ok_or_else(|| Unknown { text: text.to_owned() })
    }
}

/// `nuts` is a nut, `rods` are a rod; an abbreviation without a vowel, as `SHCS`, is no plural.
fn singular(word: &str) -> String {
    let plural =
        |rest: &&str| rest.len() > 2 && !rest.ends_with('s') && rest.contains(['a', 'e', 'i', 'o', 'u', 'y']);
    word.strip_suffix('s').filter(plural).unwrap_or(word).to_owned()
}

/// Words that do not tell one kind from another.
const MEANS_NOTHING: &[&str] =
    &["threaded", "thread", "to", "the", "head", "headed", "full", "steel", "type"];

/// The names of each kind, lower case, singular, without the words that mean nothing.
const NAMES: &[(Kind, &[&str])] = &[
    (
        Kind::HexBolt,
        &[
            "bolt",
            "hex bolt",
            "hexagon bolt",
            "hexagonal bolt",
            "hex cap screw",
            "hexagon cap screw",
            "hhcs",
            "hex cap",
            "machine bolt",
        ],
    ),
    (
        Kind::StructuralBolt,
        &[
            "structural bolt",
            "heavy hex structural bolt",
            "heavy hex bolt",
            "heavy hexagon bolt",
            "heavy bolt",
            "heavy hex screw",
            "structural",
            "hv bolt",
        ],
    ),
    (
        Kind::FlangeBolt,
        &[
            "flange bolt",
            "flanged bolt",
            "hex flange bolt",
            "hexagon flange bolt",
            "flange screw",
            "hex flange screw",
            "hexagon flange screw",
        ],
    ),
    (
        Kind::CarriageBolt,
        &[
            "carriage bolt",
            "coach bolt",
            "carriage",
            "round square neck bolt",
            "cup square bolt",
            "mushroom square neck bolt",
        ],
    ),
    (Kind::EyeBolt, &["eye bolt", "eyebolt"]),
    (Kind::UBolt, &["u bolt", "ubolt"]),
    (
        Kind::HexScrew,
        &[
            "hex screw",
            "hexagon screw",
            "hexagonal screw",
            "hexagon set screw",
            "hex set screw",
            "tap bolt",
            "hex tap bolt",
        ],
    ),
    (
        Kind::SocketScrew,
        &[
            "socket cap screw",
            "socket screw",
            "shcs",
            "cap screw",
            "allen screw",
            "hex socket cap screw",
            "hexagon socket cap screw",
            "hexagon socket screw",
            "socket",
        ],
    ),
    (
        Kind::CountersunkScrew,
        &[
            "countersunk socket screw",
            "countersunk screw",
            "flat socket screw",
            "flat socket cap screw",
            "fhcs",
            "fhscs",
            "csk screw",
            "csk socket screw",
            "flat cap screw",
            "hexagon socket countersunk screw",
        ],
    ),
    (
        Kind::ButtonScrew,
        &[
            "button socket screw",
            "button screw",
            "button socket cap screw",
            "button cap screw",
            "bhcs",
            "bhscs",
            "hexagon socket button screw",
        ],
    ),
    (
        Kind::SetScrew,
        &[
            "set screw",
            "setscrew",
            "socket set screw",
            "grub screw",
            "sss",
            "hexagon socket set screw",
            "headless set screw",
        ],
    ),
    (
        Kind::MachineScrew,
        &[
            "machine screw",
            "pan machine screw",
            "flat machine screw",
            "round machine screw",
            "pan screw",
            "cheese screw",
        ],
    ),
    (
        Kind::TappingScrew,
        &[
            "tapping screw",
            "self tapping screw",
            "selftapping screw",
            "sheet metal screw",
            "self tapper",
            "self drilling screw",
            "forming screw",
            "hexagon tapping screw",
            "pan tapping screw",
        ],
    ),
    (
        Kind::DrywallScrew,
        &["drywall screw", "dry wall screw", "gypsum board screw", "plasterboard screw", "bugle screw"],
    ),
    (Kind::Stud, &["stud", "stud bolt", "studbolt", "double end stud", "double ended stud"]),
    (Kind::Rod, &["rod", "all rod", "allthread", "all", "studding"]),
    (Kind::AnchorRod, &["anchor rod", "anchor bolt", "anchor", "foundation bolt"]),
    (Kind::HexNut, &["nut", "hex nut", "hexagon nut", "hexagonal nut", "regular nut", "finished hex nut"]),
    (Kind::HeavyHexNut, &["heavy hex nut", "heavy hexagon nut", "heavy nut", "structural nut"]),
    (Kind::FlangeNut, &["flange nut", "flanged nut", "hex flange nut", "hexagon flange nut"]),
    (Kind::SquareNut, &["square nut"]),
    (
        Kind::LockNut,
        &[
            "lock nut",
            "locknut",
            "lock nut prevailing torque",
            "prevailing torque nut",
            "nylon insert nut",
            "nylon insert lock nut",
            "self locking nut",
            "all metal lock nut",
        ],
    ),
    (
        Kind::Washer,
        &[
            "washer",
            "plain washer",
            "flat washer",
            "hardened washer",
            "structural washer",
            "hardened flat washer",
        ],
    ),
    (
        Kind::WideWasher,
        &[
            "wide plain washer",
            "wide washer",
            "large washer",
            "fender washer",
            "uss washer",
            "uss flat washer",
            "penny washer",
        ],
    ),
    (
        Kind::NarrowWasher,
        &["narrow plain washer", "narrow washer", "sae washer", "sae flat washer", "small washer"],
    ),
    (
        Kind::SpringWasher,
        &[
            "spring lock washer",
            "spring washer",
            "split lock washer",
            "lock washer",
            "lockwasher",
            "split washer",
            "helical spring lock washer",
            "helical spring washer",
        ],
    ),
    (Kind::ConicalWasher, &["conical spring washer", "conical washer", "disc spring washer"]),
    (
        Kind::ToothedWasher,
        &[
            "toothed lock washer",
            "toothed washer",
            "tooth lock washer",
            "internal tooth lock washer",
            "external tooth lock washer",
            "internal tooth washer",
            "external tooth washer",
            "serrated lock washer",
            "star washer",
        ],
    ),
    (
        Kind::RetainingRing,
        &[
            "retaining ring",
            "external retaining ring",
            "circlip",
            "external circlip",
            "retaining ring for shaft",
            "retaining ring for a shaft",
        ],
    ),
    (
        Kind::InternalRing,
        &[
            "retaining ring for a bore",
            "internal retaining ring",
            "retaining ring for bore",
            "internal circlip",
            "internal ring",
        ],
    ),
    (Kind::SnapRing, &["snap ring"]),
    (Kind::CotterPin, &["cotter pin", "split pin", "cotter"]),
    (
        Kind::SpringPin,
        &["spring pin", "roll pin", "slotted spring pin", "tension pin", "spring dowel", "slotted pin"],
    ),
    (Kind::Other, &["other part", "other"]),
];

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
            ("flat head socket cap screws", Kind::CountersunkScrew),
            ("button head screw", Kind::ButtonScrew),
            ("threaded rod", Kind::Rod),
            ("all-thread", Kind::Rod),
            ("studs", Kind::Stud),
            ("rod", Kind::Rod),
            ("Carriage bolts", Kind::CarriageBolt),
            ("U-bolts", Kind::UBolt),
            ("anchor bolts", Kind::AnchorRod),
            ("hex flange nuts", Kind::FlangeNut),
            ("lock washers", Kind::SpringWasher),
            ("internal tooth lock washer", Kind::ToothedWasher),
            ("USS flat washers", Kind::WideWasher),
            ("retaining rings", Kind::RetainingRing),
            ("split pins", Kind::CotterPin),
            ("self-tapping screws", Kind::TappingScrew),
            ("drywall screws", Kind::DrywallScrew),
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

    #[test]
    fn a_part_that_is_not_known_is_not_the_nearest_one() {
        for text in [
            "wing nut",
            "lag screw",
            "castle nut",
            "cap nut",
            "wood screw",
            "shear stud",
            "rivet",
            "tab washer",
        ] {
            assert!(Kind::read(text).is_err(), "{text}");
        }
    }

    #[test]
    fn every_name_means_one_kind() {
        let names: Vec<&str> = NAMES.iter().flat_map(|(_, names)| names.iter().copied()).collect();
        for (at, name) in names.iter().enumerate() {
            assert!(!names[..at].contains(name), "{name}");
            let words: Vec<String> = name.split(' ').map(singular).collect();
            assert_eq!(words.join(" "), *name, "a name is written singular");
            assert!(!words.iter().any(|word| MEANS_NOTHING.contains(&word.as_str())), "{name}");
        }
        for kind in Kind::ALL {
            assert!(NAMES.iter().any(|(named, _)| *named == kind), "{kind}");
        }
    }
}
