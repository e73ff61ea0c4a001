//! Words of addresses, of names and of buildings, in lists.

/// In front of an address, to the next comma.
pub const ADDRESSED: &[&str] = &[
    "ship to",
    "ships to",
    "shipped to",
    "shipping to",
    "shipment to",
    "deliver to",
    "delivered to",
    "delivery to",
    "deliver",
    "send to",
    "sold to",
    "bill to",
    "invoice to",
    "attn",
    "attention",
    "consignee",
    "c o",
    "lieferung an",
    "lieferung nach",
    "liefern an",
    "liefern nach",
    "lieferadresse",
    "versand an",
    "versand nach",
    "z hd",
    "zu händen",
    "rechnung an",
    "address",
    "adresse",
];

/// In front of the name of a firm, which begins with a capital.
pub const FIRMS: &[&str] =
    &["customer", "client", "company", "firm", "kunde", "firma", "buyer", "for messrs", "mr", "messrs"];

/// Behind a word that is none of a place, but of a firm, an office or the way that goods take.
pub const OF_A_FIRM: &[&str] = &[
    "co",
    "company",
    "corp",
    "corporation",
    "inc",
    "ltd",
    "limited",
    "llc",
    "plc",
    "gmbh",
    "ag",
    "kg",
    "supply",
    "supplies",
    "supplier",
    "dept",
    "department",
    "division",
    "freight",
    "cargo",
    "shipping",
    "shipment",
    "vessel",
    "contractor",
    "contractors",
    "engineering",
    "services",
    "insurance",
    "group",
    "holdings",
    "industries",
    "bank",
    "hotel",
    "rd",
    "ave",
    "blvd",
    "hwy",
    "str",
    "straße",
    "strasse",
    "allee",
    "platz",
    "purchasing",
];

/// Behind a word that is written as a name, or in front of the number of a house.
pub const STREETS: &[&str] = &[
    "street", "st", "road", "lane", "ln", "way", "drive", "dr", "park", "avenue", "highway", "square", "weg",
];

/// English words with which names begin.
pub const BEGIN_NAMES: &[&str] = &[
    "rural",
    "coastal",
    "marine",
    "industrial",
    "urban",
    "ocean",
    "inland",
    "maritime",
    "tropical",
    "outdoor",
    "chemical",
    "country",
    "city",
    "offshore",
    "buried",
    "underground",
    "soil",
];

/// In front of the name of a firm or of a street.
pub const IN_FRONT_OF_NAMES: &[&str] = &[
    "for", "to", "at", "from", "by", "site", "project", "job", "customer", "messrs", "works", "depot", "für",
    "an", "bei", "von", "kunde", "projekt", "voor", "bij", "klant", "pour", "chez", "para",
];

/// And with which names of towns end.
pub const END_NAMES: &[&str] = &["city", "beach", "coast", "shore", "country"];

/// What is heated: halls and rooms in which nothing makes the air harsher.
pub const BUILDINGS: &[&str] = &[
    "warehouse",
    "warehouses",
    "office",
    "offices",
    "hall",
    "halls",
    "building",
    "buildings",
    "room",
    "rooms",
    "store",
    "storage",
    "storeroom",
    "house",
    "school",
    "museum",
    "shop",
    "workshop",
    "hotel",
    "winter",
    "space",
    "spaces",
    "assembly",
    "garage",
];
