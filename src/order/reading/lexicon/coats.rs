//! Words of coats that say something only beside others: how a coat is put on, how thick it is, where it is not.

use crate::process::Process;

/// Codes of a chromate, of what seals it and of what is on top, behind the thickness of plated zinc.
pub const CHROMATES: &[&str] = &["an", "at", "bt", "ct", "dt", "et", "ft", "bn", "cn", "dn", "cr", "t"];

/// So begins, behind a metal, what makes a coat of it.
pub const OF_A_FINISH: &[&str] =
    &["plat", "coat", "finish", "colo", "paint", "look", "besch", "überz", "farb"];

/// Words for a coat and its thickness.
pub const OF_A_COAT: &[&str] = &[
    "coat",
    "coats",
    "coating",
    "coatings",
    "thickness",
    "thicknesses",
    "thk",
    "thick",
    "dft",
    "dick",
    "dicke",
    "schicht",
    "schichten",
    "schichtdicke",
    "schichtdicken",
];

/// What is not judged, and may be so thick or so high: a thickness beside it is its own.
pub const THICK: &[&str] =
    &["oil", "burr", "burrs", "grat", "sharp edge", "sharp edges", "marking", "markings", "serrated", "serr"];

/// Beside a thickness: how it is meant, or once more that it is a coat's.
pub const SAYS_HOW_THICK: &[&str] = &[
    "spec",
    "specs",
    "specified",
    "specification",
    "target",
    "required",
    "requirement",
    "requirements",
    "req",
    "reqd",
    "request",
    "requested",
    "want",
    "wanted",
    "need",
    "needed",
    "range",
    "nominal",
    "nom",
    "tolerance",
    "tol",
    "layer",
    "layers",
    "film",
    "deposit",
    "build",
    "total",
    "average",
    "avg",
    "mean",
    "must",
    "should",
    "shall",
    "be",
    "thin",
    "plate",
    "plated",
    "soll",
    "sollte",
    "darf",
    "dürfen",
    "muss",
    "ist",
    "sind",
    "muss",
    "gefordert",
    "gewünscht",
    "bereich",
    "auflage",
    "überzug",
    "beschichtung",
    "stärke",
    "mittel",
    "laagdikte",
    "laag",
    "dikte",
    "épaisseur",
    "couche",
    "espesor",
    "capa",
];

/// Short for *galvanized*, which is hot-dip, and for *galvanisch*, which is electroplated.
pub const GALV: &[&str] = &["galv", "gal", "galvan"];

/// English in full: plated only where its thickness or its colour says so.
pub const GALV_IN_FULL: &[&str] = &["galvanized", "galvanised"];

/// Words that only German has, by how they begin.
pub const GERMAN_BEGINS: &[&str] = &[
    "schr",
    "sechskant",
    "mutter",
    "scheibe",
    "unterleg",
    "gewinde",
    "zylinder",
    "verz",
    "festigkeit",
    "stück",
    "stueck",
    "satz",
    "sätze",
    "garnitur",
    "bolzen",
    "federring",
    "feuer",
    "passiviert",
    "chromatiert",
    "vollgewinde",
    "teilgewinde",
    "stahl",
    "jahre",
    "küste",
    "kueste",
    "innen",
    "außen",
    "aussen",
    "liefer",
    "stange",
    "senk",
    "linsen",
    "flachrund",
    "holzschr",
    "anfrage",
    "angebot",
    "dickschicht",
    "ankerst",
    "ankerb",
    "menge",
    "anzahl",
    "bestell",
];

/// And by what they hold.
pub const GERMAN_HOLDS: &[&str] = &["schraube", "mutter", "scheibe", "bolzen", "verzinkt", "stange", "stift"];

/// And those that are short, in full.
pub const GERMAN: &[&str] = &[
    "stk", "stck", "kl", "fkl", "mit", "und", "oder", "ohne", "nicht", "nach", "für", "bitte", "keine",
    "kein", "lang", "dick", "güte", "klasse", "blau", "gelb", "schwarz", "niete", "nieten",
];

/// Zones of a part that may be kept free of zinc.
pub const ZONES: &[&str] = &[
    "thread",
    "threads",
    "gewinde",
    "draad",
    "schroefdraad",
    "filetage",
    "filetages",
    "filets",
    "rosca",
    "roscas",
    "head",
    "heads",
    "kopf",
    "köpfe",
    "kop",
    "koppen",
    "tête",
    "têtes",
    "bore",
    "bores",
];

/// Between a coat and the zone that it is on.
pub const ON_A_ZONE: &[&str] =
    &["on", "in", "over", "auf", "am", "im", "op", "sur", "dans", "en", "off", "from"];

/// Beside a coat: there is none of it.
pub const FREE: &[&str] = &["free", "frei", "vrij", "clear", "exempt", "libre"];

/// Says how a coat is plated, and not of what.
pub const PLATED: &[&str] = &[
    "plated",
    "pltd",
    "plating",
    "electroplated",
    "electro plated",
    "electroplate",
    "electroplating",
    "galvanisch",
    "elektrolytisch",
    "galvanisiert",
];

/// With such letters begins what says that a part has no coat.
pub const NO_COAT: &[&str] = &[
    "un", "onv", "onb", "non", "no ", "ohne", "zonder", "sans", "without", "bare", "zinkfrei", "zinkvrij",
    "sin ",
];

/// First halves of words for a coat, the second of which follows with the other coat.
pub const HALVES: &[(&str, Process)] = &[
    ("feuer", Process::HotDip),
    ("hot", Process::HotDip),
    ("electro", Process::Electroplated),
    ("elektro", Process::Electroplated),
    ("mechanisch", Process::Mechanical),
];

/// Words that say which process is meant, as a word a letter or two off is taken for them; the shorter one of two first.
pub const OF_A_PROCESS: &[&str] = &[
    "mechanical",
    "mechanically",
    "mechanisch",
    "electro",
    "elektro",
    "electroplated",
    "electroplating",
    "electrogalvanised",
    "electrogalvanized",
    "elektrolytisch",
    "feuerverzinkt",
    "galvanized",
    "galvanised",
    "galvanizing",
    "galvanising",
    "zinc",
];

/// So begin words for a process: in front of zinc, one that nobody knows leaves open which is meant.
pub const BEGINS_OF_A_PROCESS: &[&str] =
    &["mech", "meca", "mehc", "mecc", "elec", "elek", "elct", "eletr", "elettr"];

/// Words for a process that say what kind of thing something else is too: `mechanical seal`.
pub const BARE_PROCESS: &[&str] = &["mechanical", "mechanisch", "mechanically", "mech"];

/// German words for other surfaces than zinc, without their ending.
pub const OF_NO_ZINC: &[&str] =
    &["schwarz", "blank", "roh", "brüniert", "geschwärzt", "phosphatiert", "vernickelt", "verchromt"];

/// Words for zinc that people use of every process.
pub const ZINC_OF_ALL: &[&str] =
    &["zinc", "zink", "zn", "plated", "plating", "verzinkt", "vz", "verz", "vzk"];

/// Words for galvanizing that people use of hot-dip and of the barrel.
pub const GALVANIZED_OF_TWO: &[&str] = &[
    "galvanisé",
    "galvanisée",
    "galvanisés",
    "galvanisées",
    "galvanizado",
    "galvanizada",
    "galvanizados",
    "galvanizadas",
    "galv",
    "gal",
    "galvanized",
    "galvanised",
    "galvanizing",
    "galvanising",
];

/// What stands between the word for the greatest and its thickness: `maximum thickness is`.
pub const OF_A_GREATEST: &[&str] = &[
    "thickness",
    "coating",
    "coat",
    "dft",
    "thk",
    "is",
    "of",
    "ist",
    "schichtdicke",
    "the",
    "be",
    "zinc",
    "zink",
    "plating",
];

/// Whether a word names the zinc, whose thickness may stand beside another one that is the greatest.
pub fn is_apart(word: &str) -> bool {
    matches!(word, "zinc" | "zink" | "plating")
}

/// In front of what is under a thickness: it is refused.
pub const NOT_UNDER: &[&str] = &[
    "not",
    "never",
    "no",
    "cannot",
    "none",
    "nothing",
    "nowhere",
    "reject",
    "refuse",
    "nicht",
    "nie",
    "niemals",
    "kein",
    "keine",
    "keinen",
    "keinesfalls",
];

/// Between the two, beside words for a coat.
pub const UNDER_WHICH: &[&str] = &[
    "be",
    "go",
    "fall",
    "drop",
    "get",
    "any",
    "anything",
    "everything",
    "coats",
    "accept",
    "take",
    "all",
    "layer",
    "circumstances",
    "account",
    "point",
    "parts",
    "pieces",
    "stelle",
    "werte",
];

/// In front of a thickness: no more than that.
pub const LESS: &[&str] = &["under", "below", "unter", "unterhalb", "beneath"];

/// In front of a thickness: more than that.
pub const MORE_THAN: &[&str] = &["over", "above", "beyond", "exceeding", "über", "oberhalb"];

/// In front of a thickness, with one of [`THAN`](super::THAN) between: less than that.
pub const COMPARED_LESS: &[&str] =
    &["less", "thinner", "lower", "smaller", "weniger", "dünner", "kleiner", "niedriger"];

/// Or more than that.
pub const COMPARED: &[&str] = &["more", "thicker", "greater", "higher", "mehr", "dicker", "höher", "stärker"];

/// Behind a thickness, in front of the other side of it: `8 µm or more`.
pub const OR_SO: &[&str] = &["or", "and", "oder", "und", "of", "en", "ou", "et"];

/// Behind such a word: more than that, besides what is compared.
pub const AND_MORE: &[&str] = &["plus", "meer", "dikker", "más"];

/// Or less than that.
pub const AND_LESS: &[&str] = &["moins", "minder", "dunner", "menos"];

/// Behind a thickness in front of which a word for more stands: it is refused.
pub const REJECTED: &[&str] = &["rejected", "zurückgewiesen"];

/// In front of how far a measure may be off.
pub const TOLERANCES: &[&str] = &["tolerance", "tolerances", "tol", "toleranz", "toleranzen"];

/// Behind a thickness: something is said of it.
pub const JUDGES: &[&str] =
    &["is", "are", "was", "were", "means", "ist", "sind", "war", "wird", "werden", "gilt"];

/// Between a thickness and the word for the greatest.
pub const IS_THE: &[&str] = &["is", "the", "as", "ist", "das"];
