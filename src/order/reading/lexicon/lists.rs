//! Words that say something only beside others: the rules look them up in these lists.

/// The property classes of ISO 898-1, which a number with a point behind it can only be.
pub const DOTTED: &[&str] =
    &["3.6", "4.6", "4.8", "5.6", "5.8", "6.6", "6.8", "6.9", "8.8", "9.8", "10.9", "12.9", "14.9"];

/// What a thing with a weight that is no part is made of: `zinc powder`.
pub const WHAT_THINGS_ARE_OF: &[&str] = &["zinc", "zink", "copper", "tin", "glass", "steel"];

/// In front of what parts are in, on or for.
pub const WITHIN: &[&str] = &["in", "for", "on", "into", "per", "für", "auf", "en", "pour", "para", "dans"];

/// Words in front of a number that is a temperature, or that of a document.
pub const OWN_A_TEMPERATURE: &[&str] =
    &["at", "bei", "spec", "to spec", "acc", "acc to", "according to", "as per", "iaw", "nach", "gem"];

/// Things with a weight that are no parts: what is in a shop, or goes into a bath or a barrel.
pub const NO_PARTS: &[&str] = &[
    "bead",
    "beads",
    "perlen",
    "glasperlen",
    "billes",
    "powder",
    "pulver",
    "dust",
    "zinkstaub",
    "pickup",
    "kettle",
    "kessel",
    "zinkkessel",
    "press",
    "presse",
    "crane",
    "kran",
    "hoist",
    "truck",
    "forklift",
    "basket",
    "baskets",
    "körbe",
    "korb",
    "rack",
    "racks",
    "jig",
    "jigs",
    "sulfate",
    "sulphate",
    "promoter",
    "dross",
    "ash",
    "anode",
    "anodes",
    "ingot",
    "ingots",
];

/// Words that bind and may have a number of their own: `life 15`, `size 8`.
pub const OWN_A_NUMBER: &[&str] = &[
    "for",
    "life",
    "service life",
    "design life",
    "cat",
    "category",
    "corrosivity",
    "corrosivity category",
    "size",
    "long",
    "dia",
    "diameter",
    "length",
    "lebensdauer",
    "für",
    "länge",
    "min",
    "max",
    "at",
    "thk",
    "thick",
    "thickness",
    "coating",
    "finish",
    "hardness",
    "site",
    "local",
];

/// What may stand in front of a date, and of much else.
pub const ON: &[&str] = &["bis", "am", "by", "until", "till", "to", "from", "vom", "zum", "ab", "spätestens"];

/// What may stand between a distance and what it is from, besides what binds.
pub const AWAY: &[&str] = &[
    "away",
    "distant",
    "distance",
    "inland",
    "off",
    "weg",
    "entfernt",
    "entfernung",
    "abstand",
    "landeinwärts",
    "landeinwaerts",
    "far",
    "well",
    "back",
    "weit",
    "nearest",
    "luftlinie",
    "landesinneren",
];

/// Beside the letter that a part is marked with.
pub const MARKED: &[&str] = &[
    "marked",
    "mark",
    "marking",
    "stamped",
    "stamp",
    "gekennzeichnet",
    "kennzeichen",
    "kennzeichnung",
    "markiert",
];

/// So many orders of the same size.
pub const LOTS: &[&str] = &[
    "lot",
    "lots",
    "batch",
    "batches",
    "delivery",
    "deliveries",
    "shipments",
    "releases",
    "lose",
    "chargen",
    "lieferungen",
];

/// In front of what has been done before a bake.
pub const PAST: &[&str] = &["after", "nach"];

/// Behind `or` or `and`: the number before it is the least.
pub const MORE: &[&str] = &[
    "more",
    "higher",
    "harder",
    "greater",
    "above",
    "over",
    "up",
    "upwards",
    "mehr",
    "aufwärts",
    "höher",
    "härter",
    "darüber",
];

/// In front of a number that is the least.
pub const ABOVE: &[&str] = &["over", "above", "exceeding", "über", "from", "ab"];

/// Between the two ends of a range.
pub const UP_TO: &[&str] = &["to", "bis", "tot", "à"];

/// In front of the two ends of a range.
pub const BETWEEN: &[&str] = &["between", "zwischen"];

/// Behind such a word, between the two ends.
pub const AND: &[&str] = &["and", "und"];

/// In front of, or behind, what was found on a lot.
pub const READINGS: &[&str] = &[
    "measured",
    "measure",
    "measures",
    "measuring",
    "reading",
    "readings",
    "reads",
    "results",
    "result",
    "shows",
    "showed",
    "got",
    "ergebnis",
    "ergebnisse",
    "found",
    "finds",
    "rejected",
    "failed",
    "fails",
    "actual",
    "gemessen",
    "gemessene",
    "gemessener",
    "gemessenen",
    "messwert",
    "messwerte",
    "istwert",
    "istwerte",
    "gefunden",
    "beanstandet",
    "gemeten",
];

/// Signs for the strength at which steel yields.
pub const YIELDS: &[&str] = &["fy", "sy", "ys", "re", "reh", "rel", "rp", "proof"];

/// In front of a condition on which the other of two finishes is wanted.
pub const ON_A_CONDITION: &[&str] =
    &["if", "unless", "when", "where", "wenn", "falls", "sofern", "indien", "tenzij"];

/// Between two finishes that are set against each other.
pub const VERSUS: &[&str] = &["vs", "versus"];

/// With such a word begins what says, behind a finish, that it is wanted only where the one before does not suit.
pub const LAST_RESORT: &[&str] = &["if", "or if", "falls", "wenn", "si", "indien", "as"];

/// Between two grades that are set against each other.
pub const AGAINST: &[&str] = &[
    "but", "whereas", "while", "although", "though", "however", "yet", "vs", "versus", "says", "aber",
    "jedoch", "sondern", "sagt", "doch", "obwohl",
];

/// In front of what another paper says.
pub const SAYS: &[&str] = &["says", "say", "shows", "states", "calls", "reads", "sagt", "zeigt"];

/// Between two finishes of which neither is wanted first.
pub const ALIKE: &[&str] = &[
    "or",
    "ou",
    "of",
    "nor",
    "oder",
    "noch",
    "bzw",
    "beziehungsweise",
    "either or",
    "and",
    "und",
    "then",
    "dann",
    "puis",
];

/// In front of a condition.
pub const CONDITIONS: &[&str] = &[
    "if", "when", "whenever", "where", "wherever", "unless", "should", "case", "provided", "falls", "wenn",
    "sofern", "soweit", "indien",
];

/// In what says that something is in stock.
pub const STOCK: &[&str] = &["stock", "hand", "vorhanden", "lager"];

/// At the end of what says that what stands behind it is wanted.
pub const OTHERWISE: &[&str] = &["otherwise", "else", "sonst", "ansonsten", "then", "dann", "puis", "anders"];

/// In front of what something is for, or under what it goes.
pub const FOR: &[&str] = &[
    "must mate with",
    "must mate w",
    "to mate w",
    "mate with",
    "mates with",
    "must suit",
    "must fit",
    "voor",
    "pour",
    "para",
    "for",
    "to suit",
    "suit",
    "to fit",
    "fitting",
    "matching",
    "to match",
    "to mate with",
    "to go under",
    "to go on",
    "to go with",
    "suitable for",
    "for use with",
    "under",
    "für",
    "fuer",
    "zu",
    "passend zu",
    "passend für",
    "passend",
    "unter",
];

/// Says which of several: a letter behind it is its own.
pub const VARIANTS: &[&str] = &[
    "option",
    "opt",
    "variant",
    "variante",
    "version",
    "alternative",
    "alt",
    "style",
    "size",
    "model",
    "unit",
];

/// The threads of bolts that went before the unified ones.
pub const WHITWORTH: &[&str] = &["bsw", "bsf", "whitworth"];

/// Behind a number of millimetres: the length of a part.
pub const LONG: &[&str] = &["long", "lang", "lange", "langen"];

/// A length beside such a word is that of the thread.
pub const OF_THREADS: &[&str] = &[
    "thread",
    "threads",
    "threaded",
    "thrd",
    "thd",
    "thds",
    "threading",
    "gewinde",
    "gewindelänge",
    "rosca",
    "filetage",
    "draad",
];

/// Has numbers with a point, so that none of them is a class.
pub const HAVE_POINTS: &[&str] =
    &["rev", "section", "detail", "page", "grid", "due", "wk", "week", "kw", "calendar"];

/// Marks a drawing or a part, whose names begin with letters.
pub const MARKS_A_PART: &[&str] = &[
    "p",
    "sku",
    "ref",
    "article",
    "artikelnr",
    "dwg",
    "drawing",
    "drg",
    "zeichnung",
    "rev",
    "section",
    "detail",
    "grid",
    "part",
    "pn",
    "tag",
];

/// A number of them that nobody says: it is taken for more than one.
pub const SOME: &[&str] =
    &["few", "some", "several", "couple", "many", "einige", "wenige", "paar", "mehrere"];

/// Says by itself that the way leads from the sea.
pub const INLAND: &[&str] = &["inland", "landeinwärts", "landeinwaerts", "landesinneren"];

/// Metals that are touched, or put on, and stand for no steel beside a grade.
pub const NO_STEELS: &[&str] =
    &["copper", "aluminium", "aluminum", "alu", "brass", "messing", "bronze", "silicon", "titanium", "titan"];

/// In front of what a part touches, whatever stands between.
pub const TOUCHES: &[&str] = &["contact", "kontakt", "touching"];

/// Tests whose result is an energy.
pub const OF_IMPACT: &[&str] = &[
    "charpy",
    "impact",
    "kv",
    "kcv",
    "cvn",
    "kerbschlagarbeit",
    "kerbschlag",
    "kerbschlagwert",
    "kerfslag",
    "résilience",
    "energy",
    "energie",
];

/// Soil around a part, where such a word stands by itself.
pub const SOIL: &[&str] = &["soil", "ground", "earth", "boden", "erde", "erdreich", "grond", "sol"];

/// Water around a part, where such a word stands by itself.
pub const WATER: &[&str] = &["water", "wasser", "eau", "agua"];

/// Concrete around a part, where such a word stands by itself.
pub const CONCRETE: &[&str] = &["concrete", "beton", "béton"];

/// In front of a place, with a colon between.
pub const PLACE_LABELS: &[&str] = &[
    "place",
    "environment",
    "location",
    "exposure",
    "surroundings",
    "ort",
    "umgebung",
    "einsatzort",
    "plaats",
    "omgeving",
    "lieu",
];

/// In front of the number of a line of the order.
pub const OF_A_LINE: &[&str] = &["line", "item", "itm", "pos", "position", "zeile", "regel", "ligne"];

/// In front of what so many or so much is for: `per box`.
pub const PER: &[&str] = &["per", "pro", "je", "par", "por"];

/// Between boxes and how many pieces are in each.
pub const IN_A_BOX: &[&str] = &[
    "je",
    "each",
    "ea",
    "de",
    "van",
    "mit",
    "met",
    "avec",
    "con",
    "with",
    "w",
    "zu",
    "of",
    "holding",
    "containing",
    "jeweils",
    "with",
    "à",
];

/// Words that count one or two, and no number in words goes on with them.
pub const ARTICLES: &[&str] = &["a", "ein", "eine", "einer", "single", "double", "twin"];

/// What parts are packed in boxes by: `500 pcs in boxes of 50`.
pub const IN: &[&str] = &["in", "into", "im", "en", "dans", "à"];
