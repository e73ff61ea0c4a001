//! What parts join, lie on and are called, in lists.

/// What bolts join.
pub const JOINED: &[&str] = &[
    "structure",
    "structures",
    "steelwork",
    "structural",
    "beam",
    "beams",
    "purlin",
    "purlins",
    "column",
    "columns",
    "girder",
    "girders",
    "frame",
    "frames",
    "framing",
    "bracket",
    "brackets",
    "plate",
    "plates",
    "baseplate",
    "baseplates",
    "tower",
    "towers",
    "post",
    "posts",
    "pole",
    "poles",
    "rail",
    "rails",
    "fence",
    "fencing",
    "gate",
    "gates",
    "grating",
    "gratings",
    "channel",
    "channels",
    "profile",
    "profiles",
    "section",
    "sections",
    "sheet",
    "sheets",
    "sheeting",
    "roof",
    "roofing",
    "cladding",
    "tank",
    "tanks",
    "truss",
    "trusses",
    "member",
    "members",
    "angle",
    "angles",
    "pipe",
    "pipes",
    "flanges",
    "rafters",
    "joists",
    "stahlbau",
    "stahlkonstruktion",
    "konstruktion",
    "träger",
    "pfetten",
    "stützen",
    "bleche",
    "rahmen",
    "geländer",
];

/// In front of what is joined.
pub const JOINS: &[&str] = &[
    "connecting",
    "connect",
    "joining",
    "join",
    "fixing",
    "fix",
    "holding",
    "fastening",
    "securing",
    "bolting",
    "into",
    "onto",
    "through",
    "between",
    "joins",
    "connects",
    "bolted",
    "fixed",
    "fastened",
    "attached",
    "screwed",
    "mounted",
    "clamped",
    "verschraubt",
    "befestigt",
    "verbindet",
    "verbinden",
];

/// What is made of another metal, besides what bolts join anyway.
pub const OF_METAL: &[&str] = &[
    "bar",
    "bars",
    "busbar",
    "busbars",
    "bus",
    "earth",
    "earthing",
    "strip",
    "strips",
    "tape",
    "conductor",
    "terminal",
    "terminals",
    "lug",
    "lugs",
    "housing",
    "enclosure",
    "cladding",
    "panel",
    "panels",
    "hull",
    "deck",
    "handrail",
    "ladder",
    "tube",
    "tubes",
    "schiene",
    "schienen",
    "blech",
    "gehäuse",
    "gestell",
    "flansch",
    "fassade",
    "plaat",
    "platen",
    "profiel",
    "profielen",
    "constructie",
    "bride",
    "tôle",
    "châssis",
    "flange",
];

/// Metals, as German and Dutch words for what is made of them begin.
pub const METALS: &[&str] = &["kupfer", "edelstahl", "aluminium", "alu", "messing", "bronze", "koper"];

/// How the names of copper and its alloys begin.
pub const COPPER: &[&str] = &[
    "copper", "kupfer", "koper", "cuivre", "cobre", "brass", "messing", "laiton", "latón", "bronze", "brons",
    "gunmetal", "rotguss",
];

/// How those of aluminium begin.
pub const ALUMINIUM: &[&str] = &["alu"];

/// How those of stainless steel begin.
pub const STAINLESS: &[&str] = &[
    "stainless",
    "ss",
    "edelstahl",
    "rostfrei",
    "nichtrostend",
    "niro",
    "inox",
    "acier inox",
    "acero inox",
    "rvs",
    "a1",
    "a2",
    "a3",
    "a4",
    "a5",
    "v2a",
    "v4a",
    "304",
    "316",
    "1.4",
];

/// And how they end.
pub const METAL_ENDS: &[&str] = &[
    "schiene",
    "schienen",
    "rahmen",
    "blech",
    "bleche",
    "blechen",
    "platte",
    "platten",
    "profil",
    "profile",
    "profilen",
    "konstruktion",
    "flansch",
    "träger",
    "rohr",
    "rohre",
    "band",
    "leitung",
    "rail",
    "frame",
    "plaat",
    "gestell",
    "bauteil",
    "bauteile",
    "teile",
    "teilen",
    "fassade",
    "gehäuse",
    "profiel",
    "profielen",
];

/// In front of what a part is put on, or made for.
pub const PUT_ON: &[&str] = &[
    "on", "onto", "to", "into", "in", "against", "for", "auf", "an", "gegen", "für", "op", "aan", "voor",
    "sur", "pour",
];

/// In front of what a part lies on.
pub const LIES_ON: &[&str] = &["on", "against", "into", "auf", "op"];

/// What has no thread is not asked for its size.
pub const SMOOTH: &[&str] =
    &["washer", "ring", "clip", "pin", "rivet", "nail", "niet", "niete", "scheibe", "stift"];

/// Nouns of things, as the names of parts that are not known here end in them.
pub const THINGS: &[&str] = &[
    "bolt",
    "nut",
    "screw",
    "washer",
    "anchor",
    "clip",
    "ring",
    "schraube",
    "mutter",
    "niet",
    "rivet",
    "nail",
    "nägel",
    "dowel",
    "insert",
    "turnbuckle",
    "shackle",
    "eye",
    "pin",
    "stein",
    "bolzen",
    "stift",
    "stifte",
    "scheibe",
    "niete",
    "anker",
    "clamp",
    "dübel",
];

/// Beside a set screw: it has no head.
pub const HEADLESS: &[&str] =
    &["socket", "sss", "grub", "stift", "maden", "headless", "iso 40", "din 91", "point", "pt", "allen"];

/// Clips that spring over a shaft.
pub const CLIPS: &[&str] =
    &["e clip", "e-clip", "eclip", "e ring", "e-ring", "6799", "sicherungsscheibe", "federscheibe"];

/// Dutch names of bolts, nuts and rods begin or end so.
pub const DUTCH_NAMES: &[&str] = &["bout", "moer", "draadeind", "draadstang"];

/// What bolts go into or hold, of which a bolt in its name is another part: `panel screws`, and `for panels`.
pub const SURROUNDINGS: &[&str] = &[
    "timber", "panel", "hinge", "bracket", "brackets", "plates", "angle", "hose", "clamp", "clamps", "chain",
    "wheel", "track", "hub",
];

/// What comes with a bolt and makes no other bolt of it, as a hook or a shoulder does.
pub const COMES_WITH: &[&str] = &[
    "dti",
    "dtis",
    "direct tension indicator",
    "direct tension indicators",
    "load indicator",
    "bracket",
    "brackets",
    "clamp",
    "clamps",
    "spacer",
    "spacers",
    "plates",
];
