//! Small words around a verb that refuses: the verbs themselves stand in the lexicon as `Modal`, `Negation`, `Wish`,
//! `Taken` and `Refused`.

use crate::process::Process;

/// In front of a finish: somebody does not take it.
pub const REFUSE: &[&str] = &[
    "refuse",
    "refuses",
    "refusing",
    "reject",
    "rejects",
    "declines",
    "forbid",
    "forbids",
    "forbidding",
    "prohibit",
    "prohibits",
    "disallow",
    "disallows",
    "exclude",
    "excludes",
    "ban",
    "bans",
    "dislike",
    "dislikes",
    "hate",
    "hates",
    "verbietet",
    "verbieten",
    "untersagt",
    "verbiedt",
    "verbieden",
    "interdit",
    "interdisent",
    "prohibido",
    "prohibida",
    "prohibidos",
    "prohibidas",
    "prohíbe",
    "prohibe",
    "proíbe",
];

/// Behind a negation: it forbids what stands before, and says not only that it is not ordered.
pub const TAKES: &[&str] = &[
    "accepted",
    "wanted",
    "desired",
    "erwünscht",
    "gewünscht",
    "gewollt",
    "gewenst",
    "tolerated",
    "admissible",
    "approved",
    "akzeptiert",
    "angenommen",
    "zugelassen",
    "gestattet",
    "geduldet",
    "toleriert",
    "geaccepteerd",
    "autorisé",
    "autorisée",
    "permis",
    "permitido",
    "admitido",
    "aceptado",
];

/// Between the parts of such a verb: `must not be used`, `darf nicht verwendet werden`.
pub const LINKS: &[&str] = &[
    "be", "been", "being", "to", "ever", "werden", "worden", "sein", "zijn", "être", "etre", "été", "ser",
    "se",
];

/// Between a verb of wishing and what it is about: `don't want to have any`.
pub const OBJECTS: &[&str] = &[
    "any", "to", "be", "have", "use", "see", "get", "it", "them", "the", "this", "these", "a", "an", "our",
    "with", "w", "as", "for", "à", "de", "d", "la", "le", "les", "l", "het", "el", "los", "las",
];

/// Behind such a verb: it refuses only what stands there.
pub const BOUNDS: &[&str] = &[
    "before",
    "after",
    "till",
    "vor",
    "bevor",
    "avant",
    "above",
    "over",
    "beyond",
    "below",
    "under",
    "without",
    "except",
    "until",
    "but",
    "oberhalb",
    "unterhalb",
    "über",
    "unter",
    "ohne",
    "außer",
    "boven",
    "onder",
    "zonder",
    "sans",
    "sauf",
];

/// Behind such a verb, in front of where or of what it refuses.
pub const BOUND_TO: &[&str] = &[
    "in", "at", "on", "for", "from", "with", "im", "auf", "an", "für", "bei", "mit", "am", "op", "voor",
    "met", "sur", "pour", "avec",
];

/// Between a finish and the part that it is of: `electroplating of the bolts`.
pub const BINDS_A_PART: &[&str] = &[
    "of", "for", "on", "to", "the", "these", "those", "all", "any", "such", "our", "your", "their", "von",
    "der", "die", "den", "dieser", "für", "an", "auf", "van", "voor", "op", "de", "des", "les", "du", "pour",
    "sur",
];

/// In front of what is refused alone: `any coating but HDG`.
pub const ALL_BUT: &[&str] =
    &["but", "except", "bar", "save", "außer", "ausser", "behalve", "sauf", "excepto"];

/// In front of the finish whose place is taken, behind a verb: `plating may not replace HDG`.
pub const REPLACE: &[&str] = &["replace", "replaces", "ersetzt"];

/// Beside the finish whose place another takes, with a word of [`OF_A_SUBSTITUTE`] between, but for those of
/// [`SUBSTITUTE`].
pub const SUBSTITUTES: &[&str] = &[
    "substitute",
    "substitutes",
    "substituted",
    "substituting",
    "substitution",
    "replacement",
    "ersatz",
    "substitut",
    "vervanging",
    "remplacement",
];

/// Verbs that have the finish right behind them, whichever of the two it is.
pub const SUBSTITUTE: &[&str] = &["substitute", "substitutes", "substituting"];

/// Between such a word and the finish.
pub const OF_A_SUBSTITUTE: &[&str] = &["for", "of", "für", "von", "voor", "van", "de", "pour"];

/// Between a finish that takes the place of another, and that one.
pub const IN_THE_PLACE: &[&str] = &["for", "für", "voor", "pour"];

/// Between a finish and the one that takes its place.
pub const BY_WHICH_OTHER: &[&str] = &["by", "with", "durch", "mit", "door", "par", "met", "avec"];

/// Verbs that allow what follows, and do not ask for it.
pub const MAY: &[&str] = &["may", "can", "could", "might", "kann", "darf", "peut"];

/// The metal of all three processes, and what it is put on by.
pub const METAL: &[&str] = &["zinc", "zink", "zincs", "galvanizing", "galvanising", "verzinkung"];

/// All of which it is taken away.
pub const ALL: &[&str] = &[
    "any",
    "every",
    "all",
    "jede",
    "jeder",
    "jedes",
    "alle",
    "alles",
    "toute",
    "tout",
    "tous",
    "toutes",
    "elke",
    "iedere",
    "cualquier",
    "todo",
    "anything",
    "everything",
];

/// What is not fit for it: `not suitable for HDG`.
pub const FIT_FOR: &[&str] = &["for", "to", "für", "zum", "zur", "voor", "pour", "à", "para"];

/// Between a finish and what says, behind a comma, that it is not wanted.
pub const RELATIVES: &[&str] =
    &["which", "that", "this", "it", "die", "das", "was", "welche", "qui", "que", "ce", "dit", "wat"];

/// In front of, or behind, a tapped hole: it is there already.
pub const EXISTING: &[&str] = &[
    "existing",
    "exist",
    "exists",
    "already",
    "vorhanden",
    "vorhandene",
    "vorhandenes",
    "vorhandenen",
    "vorhandener",
    "vorhandenem",
    "bestehend",
    "bestehende",
    "bestehendes",
    "bestehenden",
    "bestehender",
    "bestehendem",
    "bereits",
    "bestaand",
    "bestaande",
    "existant",
    "existants",
    "existante",
    "existantes",
    "déjà",
    "existente",
    "existentes",
];

/// Between a tapped hole and such a word.
pub const OF_A_HOLE: &[&str] = &[
    "is", "are", "was", "were", "which", "that", "in", "of", "on", "the", "our", "your", "a", "an", "has",
    "have", "been", "made", "cut", "tapped", "ist", "sind", "im", "der", "die", "das", "dem", "den", "schon",
    "est", "sont", "dans", "de", "du", "la", "le", "in", "het", "zijn", "al", "ya",
];

/// In the words for a lubricant.
pub const LUBRICANTS: &[&str] = &["lub", "wax", "wachs", "schmier", "mos2", "smeer", "graiss", "lubri"];

/// In front of the name of a nut, with one of [`TAPPED_OVER`] behind it.
pub const TAP: &[&str] = &["tap", "tapping", "tapped", "retap"];

/// Behind the name of a nut that is tapped.
pub const TAPPED_OVER: &[&str] = &["over", "oversize", "oversized"];

/// Says how surely, why or by whom something is refused, besides what ends in `ly`.
pub const HOW: &[&str] = &[
    "also",
    "here",
    "therefore",
    "however",
    "anymore",
    "any",
    "more",
    "longer",
    "always",
    "just",
    "too",
    "at",
    "all",
    "by",
    "customer",
    "client",
    "engineer",
    "auch",
    "hier",
    "leider",
    "daher",
    "deshalb",
    "jedoch",
    "absolut",
    "wirklich",
    "grundsätzlich",
    "generell",
    "ausdrücklich",
    "strikt",
    "streng",
    "allgemein",
    "kunde",
    "kunden",
    "klant",
    "ook",
    "helaas",
    "absoluut",
    "donc",
    "ici",
    "strictement",
    "absolument",
    "formellement",
    "totalmente",
    "estrictamente",
    "aquí",
    "but",
    "aber",
    "maar",
    "mais",
    "pero",
];

/// How zinc is put on, behind `not` and with nothing behind it.
pub const BY_WHICH: &[(&str, Process)] = &[
    ("chaud", Process::HotDip),
    ("thermisch", Process::HotDip),
    ("dipped", Process::HotDip),
    ("mechanically", Process::Mechanical),
    ("mechanisch", Process::Mechanical),
    ("electrolytically", Process::Electroplated),
    ("elektrolytisch", Process::Electroplated),
];

/// None of which something is taken out: `no finish but HDG` wants it.
pub const NONE: &[&str] = &[
    "no", "nothing", "none", "kein", "keine", "nichts", "geen", "niets", "aucun", "aucune", "rien", "ningún",
    "nada",
];

/// Behind `other`, in front of what is taken out.
pub const THAN: &[&str] = &["than", "als", "dan", "que"];

/// In front of what is not wanted perhaps.
pub const PERHAPS: &[&str] = &["may", "might", "could"];

/// What is perhaps not so, and is forbidden by nobody.
pub const IS_SO: &[&str] = &[
    "possible",
    "feasible",
    "suitable",
    "practical",
    "practicable",
    "required",
    "needed",
    "appropriate",
    "acceptable",
];

/// Behind a finish in the past: somebody wanted it.
pub const ASKED_FOR: &[&str] =
    &["requested", "specified", "required", "asked", "ordered", "wanted", "called", "quoted"];

/// Behind what somebody wanted once: perhaps it is wanted no more.
pub const UNDOES: &[&str] =
    &["but", "no", "not", "now", "until", "last", "too", "earlier", "originally", "cancelled", "canceled"];

/// Between what is refused and what is wanted instead: `not to F2329 but A153`.
pub const BUT: &[&str] =
    &["but", "rather", "yet", "sondern", "aber", "jedoch", "doch", "maar", "mais", "sino"];

/// Refuses what lacks something, so that a refusal of that is one of a refusal: `no bolts without HDG`.
pub const BUT_WITHOUT: &[&str] = &["without", "w o", "w/o", "ohne", "zonder", "sans", "sin", "senza", "sem"];

/// In front of what comes along: `HDG with white rust`.
pub const TOGETHER: &[&str] = &["with", "having", "w", "w/", "mit", "met", "avec", "con"];

/// In front of a tapped hole that is still to be made, whatever it is made in: `new tapped hole in existing casting`.
pub const NEW: &[&str] = &[
    "new",
    "fresh",
    "neu",
    "neue",
    "neues",
    "neuen",
    "neuer",
    "neuem",
    "nieuw",
    "nieuwe",
    "nouveau",
    "nouveaux",
    "nouvelle",
    "nouvelles",
    "nuevo",
    "nuevos",
];

/// Between a part and the hole that it goes into.
pub const INTO: &[&str] = &["in", "into", "for", "to", "für", "voor", "pour", "dans", "para", "en"];

/// In front of why something is refused.
pub const REASONS: &[&str] = &[
    "because", "due", "since", "owing", "weil", "wegen", "aufgrund", "omdat", "vanwege", "parce", "car",
    "porque",
];

/// How a hole is made.
pub const MADE: &[&str] =
    &["drilled", "tapped", "threaded", "cut", "made", "machined", "bohren", "schneiden", "fertigen"];

/// Said to people, and the subject of no refusal: `HDG please not allowed`.
pub const BEGS: &[&str] = &[
    "please",
    "pls",
    "plz",
    "bitte",
    "svp",
    "thanks",
    "brauchen",
    "benötigen",
    "want",
    "wants",
    "like",
    "require",
    "requires",
    "now",
    "jetzt",
    "either",
    "entweder",
    "urgently",
    "supply",
    "send",
];

/// In front of the finish that another one would take the place of.
pub const INSTEAD_OF: &[&str] = &[
    "in lieu of",
    "instead of",
    "in place of",
    "rather than",
    "statt",
    "anstatt",
    "anstelle von",
    "au lieu de",
    "in plaats van",
];
