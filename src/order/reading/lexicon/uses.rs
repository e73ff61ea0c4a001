//! What parts are for, in lists.

/// Names of parts that are things by themselves as well: `for flange`, `between flange and wall`.
pub const THINGS_BY_THEMSELVES: &[&str] = &["flange", "anchor", "coupling", "clevis", "hanger"];

/// What screws go into that are called by it.
pub const GOES_INTO: &[&str] = &["drywall", "wood", "holz", "chipboard", "concrete", "masonry"];

/// Parts of a building whose names a part may stand in front of: `stud wall`.
pub const OF_A_HOUSE: &[&str] = &["wall", "walls", "house", "floor", "floors"];

/// Behind the name of a thing, what is measured of it.
pub const OF_A_MEASURE: &[&str] = &[
    "width",
    "wide",
    "thickness",
    "thick",
    "thk",
    "height",
    "face",
    "breite",
    "breit",
    "dicke",
    "stärke",
    "höhe",
    "breedte",
    "dikte",
    "largeur",
    "épaisseur",
    "ancho",
    "espesor",
];

/// What may stand between the word that says for what a part is and the thing.
pub const IN_FRONT_OF_A_THING: &[&str] =
    &["the", "an", "our", "your", "die", "den", "das", "der", "steel", "steels", "stahl", "all", "both"];

/// Between what is done to a thing and the thing: `Spannen von Stangen`.
pub const OF: &[&str] = &["of", "von", "van", "de"];
