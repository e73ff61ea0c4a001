//! Words that say something only beside others: the rules look them up in these lists.

use crate::process::Process;

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

/// What says that a date follows.
pub const DUE: &[&str] = &[
    "lead",
    "leadtime",
    "lieferzeit",
    "levertijd",
    "délai",
    "due",
    "delivery",
    "liefertermin",
    "lieferung",
    "lieferdatum",
    "termin",
    "datum",
    "date",
    "deadline",
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

/// In front of the hours in which a bake has to begin.
pub const SOON: &[&str] = &["within", "innerhalb", "binnen"];

/// What has years of its own.
pub const CONTRACTS: &[&str] = &[
    "contract",
    "agreement",
    "warranty",
    "guarantee",
    "frame",
    "vertrag",
    "rahmenvertrag",
    "garantie",
    "gewährleistung",
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

/// Codes of a chromate, of what seals it and of what is on top, behind the thickness of plated zinc.
pub const CHROMATES: &[&str] = &["an", "at", "bt", "ct", "dt", "et", "ft", "bn", "cn", "dn", "cr", "t"];

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

/// A length beside such a word is that of the thread.
pub const OF_THREADS: &[&str] =
    &["thread", "threads", "threaded", "thrd", "thd", "thds", "threading", "gewinde", "gewindelänge"];

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

/// So begins, behind a metal, what makes a coat of it.
pub const OF_A_FINISH: &[&str] =
    &["plat", "coat", "finish", "colo", "paint", "look", "besch", "überz", "farb"];

/// Words for a coat and its thickness.
pub const OF_A_COAT: &[&str] =
    &["coat", "coating", "thickness", "thk", "thick", "dft", "dick", "dicke", "schicht", "schichtdicke"];

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

/// In front of years that are no life: how long a part lies, how often somebody looks after it, how long another one
/// lasted, or for how long they have been supplied.
pub const RECURS: &[&str] = &[
    "lasted",
    "hielt",
    "hielten",
    "supplied",
    "supplying",
    "geliefert",
    "stored",
    "kept",
    "gelagert",
    "lagerung",
    "opgeslagen",
    "every",
    "alle",
    "elke",
    "jede",
    "cada",
    "inspection",
    "inspections",
    "inspected",
    "inspect",
    "inspektion",
    "inspectie",
    "maintenance",
    "maintained",
    "wartung",
    "onderhoud",
    "repainted",
    "retightened",
    "storage",
    "stockage",
    "opslag",
];

/// Beside the years of a life of the coat that is wanted.
pub const OF_A_LIFE: &[&str] = &[
    "life",
    "lifetime",
    "lifespan",
    "last",
    "lasts",
    "lasting",
    "target",
    "coat",
    "coating",
    "protection",
    "protect",
    "protected",
    "durability",
    "lebensdauer",
    "schutzdauer",
    "nutzungsdauer",
    "schutz",
    "korrosionsschutz",
    "beschichtung",
    "überzug",
    "halten",
    "levensduur",
];

/// The life of a coat, or of another thing: what has it stands in front, or behind with `of`.
pub const LIVES: &[&str] =
    &["life", "lifetime", "lifespan", "lebensdauer", "nutzungsdauer", "levensduur", "durée"];

/// In front of such a word, and no thing whose life it is.
pub const KINDS_OF_A_LIFE: &[&str] = &[
    "design",
    "service",
    "working",
    "useful",
    "expected",
    "anticipated",
    "required",
    "requested",
    "specified",
    "desired",
    "wanted",
    "intended",
    "planned",
    "predicted",
    "estimated",
    "calculated",
    "guaranteed",
    "target",
    "total",
    "full",
    "whole",
    "entire",
    "long",
    "longer",
    "minimum",
    "maximum",
    "nominal",
    "operating",
    "operational",
    "economic",
    "technical",
    "corrosion",
    "protection",
    "protective",
    "maintenance",
    "free",
    "outdoor",
    "outdoors",
    "indoor",
    "field",
    "need",
    "needs",
    "needed",
    "want",
    "wants",
    "give",
    "gives",
    "must",
    "should",
    "with",
    "have",
    "has",
    "our",
    "their",
    "its",
    "project",
    "asset",
    "geforderte",
    "gewünschte",
    "erwartete",
    "technische",
];

/// Between a word for a life and years that are gone, or those of something that is there already.
pub const LIVED: &[&str] =
    &["old", "existing", "previous", "former", "so", "far", "already", "alten", "bisher", "bisherige"];

/// In front of a life that becomes longer by so many years.
pub const EXTENDS: &[&str] = &[
    "extend",
    "extends",
    "extended",
    "extending",
    "prolong",
    "prolongs",
    "prolonging",
    "increase",
    "increases",
    "verlängern",
    "verlängert",
];

/// Beside years that are those of what the part stands in.
pub const OF_A_BUILDING: &[&str] = &[
    "structure",
    "structures",
    "building",
    "bridge",
    "tower",
    "plant",
    "project",
    "steelwork",
    "bauwerk",
    "bauwerks",
    "gebäude",
    "brücke",
    "anlage",
    "projekt",
    "turm",
    "gebouw",
    "brug",
];

/// In front of years that are gone, behind an article: `the last 10 years`.
pub const GONE: &[&str] = &["last", "past", "letzten", "vergangenen", "laatste", "dernières"];

/// In front of such a word.
pub const THE: &[&str] = &["the", "these", "our", "den", "der", "die", "de", "les"];

/// In front of `after` with years: so long it took until that was seen.
pub const FOUND: &[&str] = &[
    "found",
    "seen",
    "noticed",
    "observed",
    "appeared",
    "failed",
    "rusted",
    "corroded",
    "broke",
    "gerostet",
    "verrostet",
    "gefunden",
    "geroest",
];

/// Beside what is not to be found, or not before.
pub const NONE_FOUND: &[&str] = &[
    "no", "not", "without", "never", "free", "until", "before", "must", "should", "shall", "only", "first",
    "kein", "keine", "keinen", "nicht", "ohne", "frei", "erst", "muss", "soll", "geen", "zonder", "niet",
];

/// Behind years that are no life.
pub const INTERVALS: &[&str] = &[
    "inspection",
    "inspections",
    "survey",
    "surveys",
    "overhaul",
    "overhauls",
    "maintenance",
    "interval",
    "intervals",
    "storage",
    "wartung",
    "inspektion",
    "lagerung",
    "opslag",
    "stockage",
    "onderhoud",
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

/// What surrounds a part, where such a word stands by itself.
pub const SOIL: &[&str] = &["soil", "ground", "earth", "boden", "erde", "erdreich", "grond", "sol"];
/// As above.
pub const WATER: &[&str] = &["water", "wasser", "eau", "agua"];
/// As above.
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

/// In front of a finish: somebody does not take it.
pub const REFUSE: &[&str] = &["refuse", "refuses", "refusing", "rejects", "declines"];

/// Words for a process that say what kind of thing something else is too: `mechanical seal`.
pub const BARE_PROCESS: &[&str] = &["mechanical", "mechanisch", "mechanically", "mech"];

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

/// In front of the number of a line of the order.
pub const OF_A_LINE: &[&str] = &["line", "item", "itm", "pos", "position", "zeile", "regel", "ligne"];

/// Between boxes and how many pieces are in each.
pub const IN_A_BOX: &[&str] = &["je", "each", "ea", "de", "van", "mit", "met", "avec", "con", "with", "zu"];

/// Words that count one or two, and no number in words goes on with them.
pub const ARTICLES: &[&str] = &["a", "ein", "eine", "einer", "single", "double", "twin"];
