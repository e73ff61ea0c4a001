//! Words beside years: of a life that is wanted, of another thing, of a time that recurs or is gone.

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
