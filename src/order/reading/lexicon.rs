//! The words of the trade: abbreviations and plurals, English and the usual German, and what each means.
//!
//! One row a meaning, with every way to write it. Words are written in lower case; a space stands for
//! a space, a dash, a stroke or nothing of the kind between two words. Figures that touch letters here
//! must touch them in the line: `c4` is a place, `c 4` is not. A new word is one more entry of a row.

use std::collections::{HashMap, HashSet};
use std::sync::LazyLock;

use super::token::{Chain, Sort};
use crate::process::Process;
use crate::site::Category::{self, C1, C2, C3, C4, C5, Cx};

/// What a word or a phrase means.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Word {
    /// Words of a part's name, in the form that [`KINDS`] uses.
    Part(&'static str),
    /// A finish by its process.
    Process(Process),
    /// A finish by its process, with words that the order line does not judge.
    Tinted(Process),
    /// A finish that is not judged here: its key among what an order can ask for.
    Other(&'static str),
    /// Understood, and not used: why.
    Not(&'static str),
    /// A category of corrosivity.
    Category(Category),
    /// A place in words: the categories it can mean.
    Place(&'static [Category]),
    /// In front of a grade: `grade`.
    Grade,
    /// In front of a class: `class`.
    Class,
    /// In front of a type: `type`.
    Type,
    /// The steels of SAE J429.
    Sae,
    /// What is no carbon or alloy steel.
    OtherMetal,
    /// A steel that is known by this code alone.
    Steel(&'static str),
    /// Publishers of standards.
    Publisher,
    /// The kettle's coat by its thickness class: `Fe/Zn`.
    FeZn,
    /// Service condition of ASTM B633: `SC`.
    ServiceCondition,
    /// A series of threads that is not known here.
    Foreign,
    /// Coarse or fine, by the series of an inch thread.
    Series(&'static str),
    /// The metric thread's M, also metres.
    M,
    /// Between the sizes of a part.
    Times,
    /// A unit of length, as fields take it.
    Length(&'static str),
    /// The unit of a coat.
    Micrometre,
    /// The unit of a coat in inches.
    Mil,
    /// A unit that no field of the order line takes: why.
    Measure(&'static str),
    /// A scale of hardness.
    Scale(&'static str),
    /// Behind a measure: it is that of something else.
    Across,
    /// A unit of temperature.
    Degrees(&'static str),
    /// Years.
    Years,
    /// A unit of a count: how many pieces, and whether they are sets.
    Count(u32, bool),
    /// Thousands.
    Thousand,
    /// In front of a count: `qty`.
    Quantity,
    /// A box, whose contents are a count.
    Box,
    /// A small number in words.
    Small(u32),
    /// In front of a nut or washer that comes with the part: `with`.
    With,
    /// Between parts: `and`.
    And,
    /// In front of what is not wanted: `without`.
    Without,
    /// Behind what is not wanted: `not allowed`.
    Excluded,
    /// Between things of which one will do, or none is wanted.
    Or,
    /// Said to people and not of the order: `please`.
    Polite,
    /// Each: behind a number of nuts for one bolt, or a unit of pieces.
    Each,
    /// A bolt with its nut.
    Set,
    /// In front of the tempering temperature.
    Tempered,
    /// In front of the temperature of the bath.
    Bath,
    /// Zinc at a temperature above the usual one.
    HighBath,
    /// In front of the nut's own allowance.
    Overtapped,
    /// A hard skin.
    CaseHardened,
    /// Formed cold after hardening.
    ColdFormed,
    /// A nylon patch on the thread.
    NylonPatch,
    /// In front of a number that is not one of the order, and why: `PO 4711`.
    Label(&'static str),
    /// In front of what a price is for: `price per`.
    Price,
    /// Money.
    Money,
    /// A unit of mass, as the lot is weighed.
    Mass(&'static str),
    /// The least of something.
    Least,
    /// Says nothing by itself.
    Filler,
}

use Word::{Part, Place, Process as By};

const COLOUR: &str = "the colour of the chromate is not judged";
/// Why a coat that is not judged here is not used.
pub const OTHER_COAT: &str = "out of scope: hot-dip, mechanical and electroplated zinc are judged";
const EXTRA: &str = "not judged";
const TOP: &str = "a top coat is not judged";
/// Why a temperature in service is not used.
pub const IN_SERVICE: &str = "the heat of the place is not judged here; zinc is commonly held to 200 °C";
/// Why a word for a bare part is not used.
pub const BARE: &str = "no zinc is asked for";

/// Every word that means something, by what it means.
#[rustfmt::skip]
static WORDS: &[(Word, &[&str])] = &[
    // Finishes.
    (By(Process::HotDip), &[
        "galvanizd", "galvanisd", "galvinzed", "galvnized", "galvanzed", "galvinized", "galvinised", "galvenized", "galvenised", "galvanzied", "galvanied", "glavanized", "glavanised", "galvanize", "galvanise", "hot dip galvanize", "hot dip galvanise", "hot dip galvinized", "hot dip galvenized", "hot dipped galvanizing", "hot dipped galvanising", "hdg", "h d g", "hdgs", "hdgd", "gal", "gal d", "galv d", "hdg d", "hd galv", "hd galvanized", "hd galvanised", "hot dip", "hot dipped", "hotdip", "hotdipped", "hot dip galv",
        "hot dip galvanized", "hot dip galvanised", "hot dip galvanizing", "hot dip galvanising", "hot dipped galv", "hot dipped galvanized",
        "hot dipped galvanised", "hot dip zinc", "hot dip zinc coated", "galv", "galvanized", "galvanised", "galvanizing", "galvanising", "galvd",
        "galvan", "spun galv", "spun galvanized", "spun galvanised", "tzn", "t zn", "fvz", "feuerverzinkt", "feuerverz", "feuer verzinkt",
        "feuerverzinkung", "tauchverzinkt", "kettle",
    ]),
    (By(Process::Mechanical), &[
        "mg", "mech galvd", "mechanical galvanize", "mech galv", "mech galvanized", "mech galvanised", "mech galvanizing", "mech galvanising", "mech gal", "mech zinc", "mech zn",
        "mech zinc plated", "mech plated", "mech plating", "mech plate", "mechanical", "mechanical galv", "mechanical galvanized",
        "mechanical galvanised", "mechanical galvanizing", "mechanical galvanising", "mechanical zinc", "mechanical zinc plated",
        "mechanical zinc plating", "mechanical plated", "mechanical plating", "mechanically galvanized", "mechanically galvanised",
        "mechanically galv", "mechanically plated", "mechanically zinc plated", "mechanically deposited", "mechanically deposited zinc", "mech",
        "mechanisch verzinkt", "mech verzinkt", "mech verz", "mech vz", "mechanisch verz", "mgalv", "m galv", "m gal", "m galvanized", "m galvanised", "m galvanizing", "m galvanising", "mech g", "peen plated", "peen plating",
    ]),
    (By(Process::Electroplated), &[
        "zinc", "zinc plated", "zinc plate", "zinc plating", "zinc pl", "zinc pltd", "zn", "zn plated", "zn pl", "znpl", "zp", "z p", "bzp",
        "ezp", "ez", "plated", "pltd", "plating", "electroplated", "electro plated", "electroplate", "electroplating", "electro zinc", "electrozinc",
        "electro zinc plated", "electrolytic zinc", "electro galvanized", "electro galvanised", "electrogalvanized", "electrogalvanised",
        "electro galv", "electrogalv", "elec galv", "zinc electroplated", "verzinkt", "vz", "verz", "galv verzinkt", "galv verz", "galv vz", "galvanisch verz", "elektr verzinkt", "elektrol verzinkt", "glanzverzinkt", "galvanisch verzinkt", "gal zn",
        "galv zn", "gvz", "galzn", "elektrolytisch verzinkt", "elektroverzinkt", "bright zinc", "bright zinc plated",
    ]),
    (Word::Tinted(Process::Electroplated), &[
        "zy", "yz", "yzp", "zyc", "zc", "czp", "black zinc", "zinc black", "black zinc plated", "gelbverzinkt", "schwarzverzinkt", "schwarz verzinkt", "blauverzinkt",
    ]),
    (Word::Not(COLOUR), &[
        "yellow", "yel", "yellow chromate", "yellow dichromate", "clear", "clear chromate", "blue", "blue passivate", "blue passivated", "black chromate", "olive", "chromate", "chromated", "chromating",
        "dichromate", "passivate", "passivated", "passivation", "cr3", "cr6", "cr 3", "cr 6", "cr+3", "cr+6", "cr +3", "cr +6", "criii", "crvi", "cr iii", "cr vi", "trivalent", "hexavalent", "iridescent", "gelb", "blau", "chromatiert", "passiviert",
        "dickschichtpassiviert", "gelbchromatiert", "hex free", "cr6 free", "cr free", "chrome free",
    ]),
    (Word::Other("zinc-flake"), &[
        "zinc flake", "zn flake", "zincflake", "zinc flake coated", "flzn", "fl zn", "flznnc", "zinc lamella", "zinklamelle", "zinklamellen", "zinklamellenbeschichtet", "lamellenverzinkt",
    ]),
    (Word::Other("zinc-alloy"), &["zinc nickel", "zn ni", "znni", "zinknickel", "zink nickel", "zinc nickel plated", "zn ni plated", "zinc iron", "zn fe", "znfe", "zinc cobalt", "zinc aluminium", "zinc aluminum", "zn al", "znal"]),
    (Word::Other("sherardized"), &["sherardized", "sherardised", "sherardizing", "sherardising", "sherard", "sheradized", "thermal diffusion"]),
    (Word::Other("zinc-spray"), &["thermal spray", "thermal sprayed", "metallized", "metallised", "zinc sprayed"]),
    (Word::Other("zinc-paint"), &["zinc rich", "zinc rich paint", "zinc rich primer", "zinc paint", "zinc primer", "cold galv", "cold galvanized", "cold galvanised", "cold galvanizing", "kaltverzinkt"]),
    (Word::Other("cadmium"), &["cadmium", "cad", "cad plated", "cadmium plated", "cad plate"]),
    (Word::Other("other-metal"), &["nickel", "nickel plated", "chrome", "chrome plated", "tin", "tin plated", "copper plated", "silver plated", "vernickelt", "verchromt", "aluminized", "aluminised", "hot dip aluminized", "hot dip aluminised"]),
    (Word::Other("phosphate"), &["zinc phosphate", "zinc phosphated", "phosphate", "phosphated", "phos", "phos oil", "phosphate oil", "phos and oil", "phosphatiert", "black oxide", "blk oxide", "blackodize", "brüniert"]),
    (Word::Other("organic"), &[
        "ptfe", "ptfe coated", "fluoropolymer", "fluorocarbon", "xylan", "painted", "paint", "primed", "primer", "powder coated", "powder coat", "epoxy", "epoxy coated", "anodized", "anodised", "lackiert",
    ]),
    (Word::Other("bare"), &[
        "plain finish", "self colour", "self color", "selfcolour", "self finish", "uncoated", "no finish", "no coating", "unplated", "blank", "black", "blk", "black finish", "plain steel", "schwarz", "unbeschichtet", "bare",
    ]),
    (Word::Not(BARE), &["oiled", "light oil"]),
    (Word::FeZn, &["fe zn", "fezn"]),
    (Word::ServiceCondition, &["sc", "service condition"]),
    // What goes on top, and what is asked for besides.
    (Word::Not(TOP), &[
        "wax", "waxed", "wax coated", "lube", "lubed", "lubricated", "lubricant", "lubrication", "dyed", "dye", "blue dye", "green dye", "sealed", "sealer", "sealant", "top coat", "topcoat",
        "microencapsulated", "threadlocker", "thread locker", "thread lock", "gewachst", "geschmiert", "mos2",
    ]),
    (Word::OtherMetal, &[
        "stainless", "stainless steel", "ss", "sst", "s s", "inox", "edelstahl", "rostfrei", "a2", "a4", "a1", "a2 50", "a2 70", "a2 80", "a4 50", "a4 70", "a4 80", "v2a", "v4a", "18 8", "18 8 stainless", "18 8 ss", "304 ss", "316 ss",
        "304 stainless", "316 stainless", "304ss", "316ss", "ss304", "ss316", "304l", "316l", "304 stainless steel", "316 stainless steel", "ss 304", "ss 316", "410 ss", "17 4 ph", "brass", "messing", "bronze", "silicon bronze", "aluminium",
        "aluminum", "alu", "titanium", "titan", "nylon", "plastic", "copper", "monel", "inconel", "hastelloy", "a286", "b8", "b8m", "8m", "kunststoff", "polyamid", "pa66",
    ]),
    (Word::Not(EXTRA), &[
        "rohs", "reach", "mtr", "mtrs", "mill cert", "mill certs", "mill certificate", "cert", "certs", "certificate", "coc", "certified", "dfars", "domestic", "import", "imported", "made in usa", "us made", "usa", "ce", "ce marked", "taiwan", "china",
        "lh", "left hand", "left handed", "left hand thread", "linksgewinde", "oil", "drilled", "drilled head", "marked", "bulk", "packed", "boxed", "loose", "kegs", "assembled", "preassembled", "pre assembled", "rc test", "rotational capacity", "rotational capacity test",
        "pre stressed", "preloaded", "matched lot", "same lot", "hardened", "heat treated", "q t", "qt", "quenched and tempered", "quenched tempered", "vergütet", "fully killed", "fine grain", "charpy", "sems", "serrated", "serr", "cup point", "cup pt", "flat point", "flat pt", "cone point", "dog point", "oval point", "captive", "metric", "imperial", "country of origin",
    ]),
    // Places.
    (Word::Category(C1), &["c1"]),
    (Word::Category(C2), &["c2"]),
    (Word::Category(C3), &["c3"]),
    (Word::Category(C4), &["c4"]),
    (Word::Category(C5), &["c5"]),
    (Word::Category(Cx), &["cx"]),
    (Place(&[C5, Cx]), &["c5 m", "c5m", "c5 i", "c5i", "marine", "marine environment", "marine atmosphere", "marine air", "maritime", "offshore", "ocean", "sea", "seawater", "sea water", "salt water", "saltwater", "meer", "seeluft", "meeresluft", "offshore platform", "splash zone", "harbour", "harbor", "dock", "hafen"]),
    (Place(&[C4, C5]), &["coast", "coastal", "coastline", "seaside", "near the sea", "by the sea", "near sea", "sea coast", "seacoast", "shore", "beach", "beachfront", "küste", "küstennah", "küstennähe", "kueste", "strand", "industry", "industrial", "industrial area", "industrial atmosphere", "factory", "chemical plant", "refinery", "industrie", "industriell", "industriegebiet", "chemical", "chemie"]),
    (Place(&[C3, C4]), &["town", "city", "urban", "urban area", "city air", "stadt", "städtisch", "stadtluft", "suburban"]),
    (Place(&[C2, C3]), &["rural", "country", "countryside", "farmland", "inland", "country air", "ländlich", "land", "landluft", "dorf"]),
    (Place(&[C1, C2]), &["indoor", "indoors", "inside", "interior", "indoor use", "dry indoor", "dry inside", "heated", "innen", "innenraum", "innenbereich", "drinnen", "dry", "trocken", "in a building", "inside building"]),
    (Place(&[C2, C3, C4, C5]), &["outdoor", "outdoors", "outside", "exterior", "outdoor use", "open air", "draußen", "aussen", "außen", "außenbereich", "freibewitterung", "im freien", "freien"]),
    (Place(&[C4, C5, Cx]), &["tropical", "tropics", "tropen", "subtropical", "tropisch"]),
    // Steels.
    (Word::Grade, &["grade", "grades", "gr", "grd", "gd", "güte", "guete", "g", "grad"]),
    (Word::Class, &["class", "classes", "cl", "cls", "property class", "prop class", "pc class", "strength class", "klasse", "kl", "festigkeitsklasse", "fkl", "fk", "festigkeit", "güteklasse"]),
    (Word::Type, &["type", "typ", "ty"]),
    (Word::Sae, &["sae", "j429", "sae j429", "j 429"]),
    (Word::Steel("j995"), &["j995", "sae j995"]),
    (Word::Steel("b7"), &["b7"]),
    (Word::Steel("b7m"), &["b7m"]),
    (Word::Steel("b16"), &["b16"]),
    (Word::Steel("l7"), &["l7"]),
    (Word::Steel("bc"), &["bc"]),
    (Word::Steel("bd"), &["bd"]),
    (Word::Steel("2h"), &["2h"]),
    (Word::Steel("2hm"), &["2hm"]),
    (Word::Steel("dh"), &["dh"]),
    (Word::Steel("dh3"), &["dh3"]),
    (Word::Steel("45h"), &["45h"]),
    (Word::Steel("33h"), &["33h"]),
    (Word::Steel("22h"), &["22h"]),
    (Word::Steel("14h"), &["14h"]),
    (Word::Steel("12.9u"), &["12 9u", "12.9u"]),
    (Word::CaseHardened, &["case hardened", "casehardened", "case hard", "case hardening", "surface hardened", "carburized", "carburised", "carbonitrided", "einsatzgehärtet", "randschichtgehärtet", "einsatzgehaertet"]),
    (Word::NylonPatch, &["nylon patch", "nylon patched", "nylon pellet", "nylon locking patch", "patch", "patched", "locking patch", "nylon coated thread"]),
    (Word::ColdFormed, &["cold bent", "bent cold", "rolled after heat treatment", "threads rolled after heat treatment", "thread rolled after heat treatment", "rolled after ht", "rolled after hardening", "formed after heat treatment", "cold formed after heat treatment", "cold formed after hardening", "kalt gebogen", "kaltgebogen", "schlussgerollt", "schlußgerollt", "schlussvergütet gerollt"]),
    (Word::Tempered, &["tempered", "tempered at", "temper", "tempering", "tempering temperature", "temper temperature", "tempering temp", "temper temp", "angelassen", "angelassen bei", "anlasstemperatur", "anlassen"]),
    (Word::HighBath, &["high temp", "high temperature", "hi temp", "high temp bath", "high temperature bath", "high temp zinc", "hochtemperatur", "hochtemperaturverzinkt", "hochtemperaturverzinkung", "ht verzinkt"]),
    (Word::Not(IN_SERVICE), &["service temperature", "service temp", "operating temperature", "operating temp", "working temperature", "temperature in service", "used at", "in service at", "in use at", "betriebstemperatur", "einsatztemperatur", "high temperature service", "high temp service", "high temperature application", "high temp application", "high temperature use"]),
    (Word::Bath, &["bath", "zinc bath", "zinc at", "bath temperature", "bath temp", "zinc temperature", "kettle at", "kettle temperature", "zinkbad", "badtemperatur"]),
    (Word::Overtapped, &["tapped over", "tapped over by", "tap over", "overtapped", "over tapped", "overtap", "tapped oversize", "ot", "o t", "oversize tapped", "oversized tapped", "tapped oversized", "oversize", "oversized", "tap oversize", "o s", "os", "nuts tapped oversize", "übermaß", "übermass", "allowance", "diametral allowance"]),
    // Counts.
    (Word::Count(1, false), &["pcs", "pc", "pces", "pce", "pieces", "piece", "off", "nos", "units", "unit", "count", "ct", "lengths", "lgths", "stk", "stck", "stück", "stueck", "st", "stücke", "pièces", "pz", "pzi"]),
    (Word::Each, &["ea", "each", "eaches", "je"]),
    (Word::Count(1, true), &["sets", "assemblies", "assys", "assy", "assembly", "kits", "kit", "sätze", "saetze", "satz", "garnituren", "garnitur", "verbindungen"]),
    (Word::Set, &["set"]),
    (Word::Count(12, false), &["dozen", "dozens", "doz", "dz", "dzn", "dtz", "dutzend"]),
    (Word::Count(144, false), &["gross", "gross of"]),
    (Word::Count(100, false), &["hundred", "hundert"]),
    (Word::Count(1000, false), &["thousand", "tausend", "tsd", "mille"]),
    (Word::Thousand, &["k"]),
    (Word::Quantity, &["no of pcs", "no of pieces", "number of pieces", "number off", "no of bolts", "pieces required", "qty", "qnty", "qtty", "quantity", "q ty", "amount", "menge", "anzahl", "anz", "stückzahl", "stueckzahl", "stz", "need", "order qty", "total"]),
    (Word::Box, &["box", "boxes", "bx", "carton", "cartons", "ctn", "ctns", "pallet", "pallets", "keg", "bag", "bags", "pack", "packs", "pkg", "pkgs", "packet", "packets", "karton", "kartons", "palette", "paletten", "beutel", "pkt", "ve", "bucket", "buckets", "drum", "drums", "crate", "crates"]),
    (Word::Small(1), &["one", "single", "a", "ein", "eine", "einer"]),
    (Word::Small(2), &["two", "double", "twin", "zwei"]),
    (Word::Small(3), &["three", "drei"]),
    (Word::Small(4), &["four", "vier"]),
    (Word::Small(5), &["five", "fünf"]),
    (Word::Small(6), &["six", "sechs"]),
    (Word::Small(7), &["seven", "sieben"]),
    (Word::Small(8), &["eight", "acht"]),
    (Word::Small(9), &["nine", "neun"]),
    (Word::Small(10), &["ten", "zehn"]),
    (Word::Small(11), &["eleven", "elf"]),
    (Word::Small(12), &["twelve", "zwölf"]),
    (Word::Small(15), &["fifteen", "fünfzehn"]),
    (Word::Small(20), &["twenty", "zwanzig"]),
    (Word::Small(25), &["twenty five", "fünfundzwanzig"]),
    (Word::Small(30), &["thirty", "dreißig"]),
    (Word::Small(40), &["forty", "vierzig"]),
    (Word::Small(50), &["fifty", "fünfzig"]),
    (Word::Small(60), &["sixty"]),
    (Word::Small(75), &["seventy five"]),
    (Word::Small(80), &["eighty"]),
    (Word::Years, &["years", "year", "yrs", "yr", "y", "yo", "a", "jahre", "jahren", "jahr", "j"]),
    // Threads and sizes.
    (Word::M, &["m"]),
    (Word::Times, &["x", "by"]),
    (Word::Series("UNC"), &["unc", "nc", "unrc", "coarse", "coarse thread", "coarse thd", "coarse thrd", "regelgewinde"]),
    (Word::Series("UNF"), &["unf", "nf", "unrf", "fine", "fine thread", "fine thd", "fine thrd", "fine pitch", "feingewinde", "fein"]),
    (Word::Series("UNEF"), &["unef", "nef", "unref", "extra fine", "extra fine thread"]),
    (Word::Series("UN"), &["un", "8un", "8 un", "unr", "8n"]),
    (Word::Foreign, &["bsw", "bsf", "bspp", "bspt", "bsp", "npt", "nptf", "ba", "whitworth", "acme", "trapezoidal", "trapez", "pg", "rohrgewinde", "pipe thread", "metric fine pipe"]),
    (Word::Across, &["pipe", "id", "i d", "od", "o d", "nb", "tube", "rohr", "across flats", "a f", "af"]),
    (Word::Length("mm"), &["mm", "millimetre", "millimetres", "millimeter", "millimeters"]),
    (Word::Length("in"), &["in", "inch", "inches", "ins", "zoll"]),
    (Word::Length("ft"), &["ft", "feet", "foot"]),
    (Word::Length("cm"), &["cm"]),
    (Word::Length("m"), &["metre", "metres", "meter", "meters", "mtr"]),
    (Word::Micrometre, &["µm", "μm", "um", "micron", "microns", "mikron", "my"]),
    (Word::Mil, &["mil", "mils"]),
    (Word::Measure("a coat is asked for by a class, a document or its thickness, not by its mass"), &["g m", "oz ft"]),
    (Word::Mass("lb"), &["lb", "lbs", "pound", "pounds"]),
    (Word::Mass("kg"), &["kg", "kgs", "kilo", "kilos"]),
    (Word::Mass("t"), &["t", "tonne", "tonnes"]),
    (Word::Measure("a weight of this unit is not taken: write kg, lb or pieces"), &["g", "ton", "tons", "cwt", "pfund"]),
    (Word::Measure("strength is asked for by a grade, or by a hardness"), &["ksi", "mpa", "psi", "kn", "n mm", "n mm2", "nmm"]),
    (Word::Measure("hours of salt spray are not judged: a place and years are"), &["h", "hr", "hrs", "hours", "hour", "std", "stunden", "hours salt spray", "h salt spray", "hrs salt spray", "hour salt spray", "h nss", "h sst", "hours nss", "h salzsprühtest", "h salzsprühnebeltest"]),
    (Word::Not("hours of salt spray are not judged: a place and years are"), &["salt spray", "nss", "salt spray test", "salzsprühtest", "salzsprühnebel", "astm b117"]),
    (Word::Measure(EXTRA), &["%", "percent", "days", "day", "weeks", "week", "wks", "wk", "months", "month", "tage", "wochen", "woche", "monate", "nm", "ftlb", "ft lb"]),
    (Word::Scale("HRC"), &["hrc", "rc"]),
    (Word::Scale("HV"), &["hv", "hv10", "hv30", "vickers", "dph", "vhn"]),
    (Word::Scale("HB"), &["hb", "hbw", "bhn", "brinell"]),
    (Word::Scale("HRB"), &["hrb", "rb"]),
    (Word::Degrees("°C"), &["c", "degc", "deg c", "degrees c", "celsius", "degrees celsius", "grad c", "grad celsius"]),
    (Word::Degrees("°F"), &["f", "degf", "deg f", "degrees f", "fahrenheit", "degrees fahrenheit"]),
    // What binds.
    (Word::With, &["with", "w", "c w", "cw", "incl", "including", "include", "includes", "complete with", "supplied with", "fitted with", "mit", "inkl", "inklusive", "samt"]),
    (Word::Without, &["without", "w o", "wo", "ohne", "less", "excl", "excluding", "no", "not", "non", "except", "kein", "keine", "keinen", "nicht", "nie", "never", "neither", "avoid", "don t", "dont", "do not", "do not use", "don t use", "doesn t", "does not", "must not", "must not be", "mustn t", "may not", "may not be", "shall not", "shall not be", "should not", "should not be", "shouldn t", "can not", "can not be", "cannot", "cannot be", "can t", "won t", "will not", "not to be", "other than", "anything but", "instead of", "rather than", "in place of", "anstatt", "statt", "keinesfalls"]),
    (Word::Excluded, &["not allowed", "not permitted", "not acceptable", "not accepted", "not wanted", "not required", "not needed", "not included", "not used", "not possible", "prohibited", "forbidden", "excluded", "unacceptable", "verboten", "ausgeschlossen", "unzulässig", "nicht erlaubt", "nicht zulässig", "nicht gewünscht", "none", "keine davon"]),
    (Word::Or, &["or", "nor", "oder", "noch"]),
    (Word::Polite, &["please", "pls", "plz", "thanks", "thank you", "thx", "bitte", "danke", "quote", "quotation", "asap", "urgent", "urgently", "want", "wants", "like", "send", "supply", "offer", "require", "requires", "request", "requesting", "ordering", "buy", "looking", "cheers", "regards", "hello", "hi", "dear", "brauchen", "benötigen", "anfrage", "angebot", "bestellen", "dringend"]),
    (Word::And, &["and", "plus", "und", "u", "n"]),
    (Word::Label("it marks the order"), &["po", "p o", "order", "order no", "po no", "item", "itm", "pos", "position", "line", "dwg", "drawing", "drg", "zeichnung", "part no", "part number", "pn", "p n", "ref", "reference", "nr", "lot", "lot no", "heat", "job", "rev", "art", "artikel", "artikel nr", "art nr", "best nr", "bestellung", "bestell nr", "auftrag", "project", "projekt", "quote no", "sku", "tel", "phone", "fax"]),
    (Word::Label("the colour of paint is not judged"), &["ral", "ncs"]),
    (Word::Price, &["per", "pro"]),
    (Word::Money, &["usd", "eur", "gbp", "chf", "dollar", "dollars", "euro"]),
    (Word::Least, &["min", "minimum", "at least", "mind", "mindestens"]),
    (Word::Publisher, &["astm", "asme", "ansi", "iso", "din", "en", "bs", "nf", "uni", "jis", "gb", "as", "aashto", "csa", "ifi", "nas", "nzs", "mil", "vdi", "sn", "dast"]),
    (Word::Filler, &[
        "of", "to", "bis", "between", "zwischen", "the", "an", "for", "per set", "each set", "per", "at", "to spec", "spec", "acc", "according to", "acc to", "in accordance with", "iaw", "as per", "to suit", "suit", "on", "be", "is", "are", "finish", "finished", "coating", "coated", "steel", "steels", "material", "mat", "matl", "carbon steel",
        "alloy steel", "hardness", "härte", "haerte", "long", "lg", "lang", "length", "len", "länge", "laenge", "l", "dia", "diameter", "durchmesser", "size", "thread", "threads", "gewinde", "approx", "about", "ca", "circa", "max", "maximum", "exactly", "life", "service life", "design life", "lifetime", "service", "lasting", "last",
        "lebensdauer", "schutzdauer", "durability", "cat", "category", "corrosivity", "corrosivity category", "corrosion", "korrosivität", "korrosivitätskategorie", "environment", "atmosphere", "area", "use", "location", "place", "site", "exposure", "from", "from a", "nach", "gem", "gemäß", "gemaess", "für", "fuer", "im", "aus", "der", "die", "das", "den", "the same", "all", "both", "parts", "part", "fasteners", "fastener", "pitch", "steigung",
        "t1", "installed", "used", "tpi", "und zwar", "bei", "beschichtet", "oberfläche", "stahl", "wanted", "only", "nur", "required", "req", "reqd", "needed", "as", "in", "an", "we", "i", "us", "our",
    ]),
    // Parts: adjectives and nouns; KINDS says which make a part.
    (Part("hex"), &["hex", "hexagon", "hexagonal", "hx", "hxgn", "sechskant", "6kt", "6 kt", "skt"]),
    (Part("head"), &["head", "headed", "hd", "hds"]),
    (Part("bolt"), &["bolt", "bolts", "blt", "blts", "bolzen", "blot", "blots", "botl", "botls", "bolst"]),
    (Part("screw"), &["screw", "screws", "scr", "scrs", "scrw"]),
    (Part("schraube"), &["schraube", "schrauben", "schr", "shr"]),
    (Part("nut"), &["nut", "nuts", "mutter", "muttern", "mu"]),
    (Part("washer"), &["washer", "washers", "wahser", "wahsers", "washr", "washrs", "wshr", "wshrs", "wsr", "scheibe", "scheiben", "u scheibe", "u scheiben", "unterlegscheibe", "unterlegscheiben", "unterlagscheibe", "unterlagscheiben", "beilagscheibe", "beilagscheiben", "us scheibe"]),
    (Part("cap"), &["cap"]),
    (Part("heavy"), &["heavy", "hvy"]),
    (Part("heavy hex"), &["hh", "heavy hex", "hvy hex", "heavy hexagon"]),
    (Part("flat"), &["flat", "fl"]),
    (Part("plain"), &["plain"]),
    (Part("round"), &["round", "rd"]),
    (Part("socket"), &["socket", "soc", "sckt", "allen", "innensechskant", "hex socket", "hexagon socket", "inbus"]),
    (Part("structural"), &["structural", "struct", "struc", "structurals"]),
    (Part("structural bolt"), &["structural bolt", "structural bolts", "shb"]),
    (Part("full-thread"), &["ft", "full thread", "fully threaded", "full threaded", "f t", "fullthread", "all thread bolt", "vollgewinde", "mit vollgewinde"]),
    (Part("part-thread"), &["partial thread", "partially threaded", "part thread", "half thread", "teilgewinde", "mit schaft", "schaft", "partial threaded"]),
    (Part("hex cap screw"), &["hhcs", "hcs", "hex cap", "hex cap screw", "hex cap screws", "hex head cap screw", "hex head cap screws", "hexcs"]),
    (Part("hex bolt"), &["hhb", "hex bolt", "hex bolts", "hexbolt", "hexbolts", "sechskantschraube", "sechskantschrauben", "6kt schraube", "6kt schrauben", "skt schraube", "skt schrauben", "sk schraube", "sk schrauben", "6kt schr", "hexagon bolt", "hexagon bolts"]),
    (Part("hex nut"), &["hex nut", "hex nuts", "hexnut", "hexnuts", "sechskantmutter", "sechskantmuttern", "6kt mutter", "6kt muttern", "skt mutter", "skt muttern", "finished hex nut", "finished hex nuts", "fhn"]),
    (Part("heavy hex nut"), &["hhn", "heavy hex nut", "heavy hex nuts", "hvy hex nut", "hvy hex nuts"]),
    (Part("socket head cap screw"), &["shcs", "shc", "socket cap", "allen bolt", "allen bolts", "allen screw", "allen screws", "allen cap screw", "allen cap screws", "zylinderschraube", "zylinderschrauben", "zylinderkopfschraube", "zylinderkopfschrauben", "inbusschraube", "inbusschrauben", "innensechskantschraube", "innensechskantschrauben", "zyl schraube", "zyl schrauben", "zyl schr", "zylschr"]),
    (Part("button head socket screw"), &["bhcs", "bhscs", "bshcs", "linsenkopfschraube", "linsenkopfschrauben", "linsenflanschkopfschraube"]),
    (Part("countersunk socket screw"), &["fhcs", "fhscs", "fscs", "flat head socket", "flat head cap screw", "flat head cap screws", "flat head socket cap", "senkkopfschraube", "senkkopfschrauben", "senkschraube", "senkschrauben", "senk schr", "senkschr"]),
    (Part("hex head"), &["hex washer head", "hwh", "hex wshr hd"]),
    (Part("button"), &["button", "btn"]),
    (Part("countersunk"), &["countersunk", "csk", "cntrsnk", "senkkopf"]),
    (Part("flat head"), &["flat head", "flathead", "flat hd"]),
    (Part("set screw"), &["set screw", "set screws", "setscrew", "setscrews", "grub screw", "grub screws", "grubscrew", "grubscrews", "sss", "gewindestift", "gewindestifte", "madenschraube", "madenschrauben", "socket set screw", "socket set screws", "headless set screw"]),
    (Part("hex screw"), &["hex screw", "hex screws", "hexagon screw", "hexagon screws", "hex set screw", "hex set screws", "hexagon set screw", "hexagon set screws", "tap bolt", "tap bolts", "hex tap bolt", "hex tap bolts", "hex head tap bolt"]),
    (Part("machine screw"), &["machine screw", "machine screws", "mach screw", "mach screws", "ms screw", "phms", "fhms", "rhms", "pan head machine screw", "phillips machine screw"]),
    (Part("machine"), &["machine", "mach"]),
    (Part("pan"), &["pan", "pan head", "phillips", "slotted", "phil", "cheese", "torx", "fillister", "truss"]),
    (Part("tapping screw"), &["tapping screw", "tapping screws", "self tapping screw", "self tapping screws", "self tapper", "self tappers", "self tapping", "selftapping", "self tap", "sheet metal screw", "sheet metal screws", "sms", "tek screw", "tek screws", "self drilling screw", "self drilling screws", "self drilling", "self drill", "self drill screw", "self drill screws", "self driller", "self drillers", "thread forming screw", "thread forming screws", "thread cutting screw", "thread cutting screws", "blechschraube", "blechschrauben", "bohrschraube", "bohrschrauben", "gewindefurchende schraube", "gewindefurchende schrauben"]),
    (Part("drywall screw"), &["drywall screw", "drywall screws", "drywall", "gypsum screw", "gypsum board screw", "gypsum board screws", "plasterboard screw", "plasterboard screws", "schnellbauschraube", "schnellbauschrauben", "trockenbauschraube", "trockenbauschrauben", "bugle head", "bugle"]),
    (Part("flange"), &["flange", "flanged", "flng", "flg", "flngd", "flansch"]),
    (Part("flange bolt"), &["hfb", "flanschschraube", "flanschschrauben", "hfhb", "hfs"]),
    (Part("flange nut"), &["hfn", "flanschmutter", "flanschmuttern"]),
    (Part("carriage"), &["carriage", "carr", "coach", "cup square", "cup head", "mushroom head", "mushroom"]),
    (Part("carriage bolt"), &["schlossschraube", "schlossschrauben", "schloßschraube", "schloßschrauben", "flachrundschraube", "flachrundschrauben", "coach bolt", "coach bolts"]),
    (Part("eye"), &["eye"]),
    (Part("eye bolt"), &["eyebolt", "eyebolts", "augenschraube", "augenschrauben"]),
    (Part("u-bolt"), &["u bolt", "u bolts", "ubolt", "ubolts", "rundstahlbügel", "rundstahlbuegel", "bügelschraube", "bügelschrauben"]),
    (Part("anchor"), &["anchor", "foundation"]),
    (Part("anchor rod"), &["anchor rod", "anchor rods", "anchor bolt", "anchor bolts", "foundation bolt", "foundation bolts", "ankerstange", "ankerstangen", "fundamentanker", "ankerschraube", "ankerschrauben", "holding down bolt", "holding down bolts"]),
    (Part("rod"), &["rod", "rods", "threaded bar", "threaded bars", "all thread", "allthread", "atr", "all thread rod", "all thread rods", "gewindestange", "gewindestangen", "gewindebolzen", "studding", "threaded rod", "threaded rods", "thrd rod", "thd rod", "threadbar", "cont thread rod"]),
    (Part("threaded"), &["threaded", "thrd", "thd", "continuous"]),
    (Part("stud"), &["stud", "studs", "stud bolt", "stud bolts", "studbolt", "studbolts", "stiftschraube", "stiftschrauben", "fully threaded stud", "all thread stud", "all thread studs"]),
    (Part("square"), &["square", "sq", "vierkant"]),
    (Part("square nut"), &["vierkantmutter", "vierkantmuttern"]),
    (Part("lock"), &["lock", "locking", "prevailing torque", "nylon insert", "self locking", "selbstsichernd", "selbstsichernde", "all metal"]),
    (Part("lock nut"), &["locknut", "locknuts", "lock nut", "lock nuts", "nyloc", "nylocs", "nylock", "nylocks", "nyloc nut", "nyloc nuts", "nylock nut", "nylock nuts", "nylon insert lock nut", "nylon insert lock nuts", "nylon insert nut", "nylon insert nuts", "sicherungsmutter", "sicherungsmuttern", "stoppmutter", "stoppmuttern", "stop nut", "stop nuts"]),
    (Part("spring washer"), &["lock washer", "lock washers", "lockwasher", "lockwashers", "split lock washer", "split lock washers", "split washer", "split washers", "spring washer", "spring washers", "spring lock washer", "spring lock washers", "helical spring washer", "lw", "lws", "slw", "federring", "federringe", "sprengring"]),
    (Part("conical washer"), &["conical washer", "conical washers", "conical spring washer", "conical spring washers", "belleville", "belleville washer", "belleville washers", "disc spring washer", "disc spring washers", "disc spring", "disc springs", "spannscheibe", "spannscheiben", "tellerfeder", "tellerfedern"]),
    (Part("toothed washer"), &["toothed washer", "toothed washers", "toothed lock washer", "toothed lock washers", "tooth lock washer", "tooth lock washers", "internal tooth", "external tooth", "star washer", "star washers", "internal tooth lock washer", "internal tooth lock washers", "external tooth lock washer", "external tooth lock washers", "zahnscheibe", "zahnscheiben", "fächerscheibe", "fächerscheiben", "serrated washer", "serrated washers"]),
    (Part("wide washer"), &["uss washer", "uss washers", "uss flat washer", "uss flat washers", "fender washer", "fender washers", "penny washer", "penny washers", "large washer", "large washers", "wide washer", "wide washers", "karosseriescheibe", "karosseriescheiben", "großflächenscheibe"]),
    (Part("narrow washer"), &["sae washer", "sae washers", "sae flat washer", "sae flat washers", "narrow washer", "narrow washers"]),
    (Part("washer"), &["flat washer", "flat washers", "fl washer", "fw", "fws", "flt washer", "plain washer", "plain washers", "hardened washer", "hardened washers", "hardened flat washer", "hardened flat washers", "round washer", "round washers", "structural washer", "structural washers", "flatwasher", "flatwashers", "flt wshr"]),
    (Part("retaining ring"), &["retaining ring", "retaining rings", "external retaining ring", "external retaining rings", "circlip", "circlips", "shaft retaining ring", "shaft retaining rings", "shaft circlip", "shaft circlips", "external circlip", "external circlips", "sicherungsring", "sicherungsringe", "wellensicherungsring", "seegerring", "seegerringe"]),
    (Part("internal ring"), &["internal retaining ring", "internal retaining rings", "internal circlip", "internal circlips", "bore retaining ring", "bore retaining rings"]),
    (Part("snap ring"), &["snap ring", "snap rings", "sprengringe"]),
    (Part("cotter pin"), &["cotter pin", "cotter pins", "split pin", "split pins", "cotter", "cotters", "splint", "splinte"]),
    (Part("spring pin"), &["spring pin", "spring pins", "roll pin", "roll pins", "slotted spring pin", "slotted spring pins", "tension pin", "tension pins", "spannstift", "spannstifte", "spannhülse", "spannhülsen"]),
    (Part("twist-off"), &["tc", "t c", "tension control", "tension controlled", "twist off"]),
    (Part("external"), &["external", "for shaft", "for shafts", "for a shaft"]),
    (Part("internal"), &["internal", "for bore", "for bores", "for a bore"]),
    (Part("ring"), &["ring", "rings"]),
    (Part("pin"), &["pin", "pins", "stift", "stifte"]),
    (Part("uss"), &["uss"]),
    // The high-strength structural bolt with a large head (EN 14399-4), in German trade.
    (Part("HV"), &["hv schraube", "hv schrauben", "hv bolt", "hv bolts"]),
    // Parts that are not known here: named, and never read as another.
    (Part("?"), &["coach screw", "coach screws", "hsfg", "square head", "k nut", "k nuts", "t nut", "t nuts", "j nut", "j nuts", "u nut", "u nuts", "clips", "e clip", "e clips", "e ring", "e rings", "lifting eye", "ringschraube", "ringschrauben", "hr bolt", "hr bolts", "hr schraube", "hr schrauben", "hr assembly", "hr assemblies", "hr nut", "hr nuts", "hr washer", "hr washers", "l anchor", "l anchors", "l anchor bolt", "l anchor bolts", "j anchor", "j anchor bolt", "j anchor bolts", "l type", "j type", "l shaped", "j shaped", "bent anchor bolt", "bent anchor bolts", "hrc bolt", "hrc bolts", "dti", "dtis", "direct tension indicator", "direct tension indicators", "load indicating", "load indicator", "wedge lock", "wedge locking", "rubber", "neoprene", "epdm", "fit", "fitted", "spline", "splined"]),
    (Part("?"), &[
        "lag", "lags", "wing", "acorn", "dome", "domed", "jam", "thin", "coupling", "castle", "castellated", "slotted nut", "cage", "weld", "t bolt", "t bolts", "tee bolt", "tee bolts", "hook", "j bolt", "j bolts", "l bolt", "l bolts", "hanger", "shoulder", "elevator", "plow", "plough", "step", "toggle", "wheel", "track", "fish", "hub",
        "wood", "timber", "deck", "chipboard", "concrete", "masonry", "security", "thumb", "knurled", "captive panel", "sex", "barrel nut", "speed", "push", "clip", "k lock", "keps", "kep", "12 point", "twelve point", "bi hex", "lifting", "expansion", "wedge", "sleeve", "drop in", "blind", "rivet", "rivets", "niet", "nieten", "nail", "nails", "nägel", "dowel", "dowels",
        "clevis", "turnbuckle", "turnbuckles", "shackle", "shackles", "chain", "eye nut", "eye nuts", "ringmutter", "ringmuttern", "flügelmutter", "flügelmuttern", "hutmutter", "hutmuttern", "kronenmutter", "kronenmuttern", "nutenstein", "beveled", "bevelled", "bevel", "plate washer", "plate washers", "square washer", "square washers", "tab", "sealing", "bonded", "finishing", "cup", "ogee", "malleable", "shim", "thrust",
        "double end", "double ended", "tap end", "reduced shank", "weld stud", "shear", "bent", "hinge", "insert", "inserts", "bushing", "key", "keys", "clamp", "clamps", "bracket", "brackets", "plates", "angle", "spacer", "spacers", "spring", "springs", "hose", "holzschraube", "holzschrauben", "schlüsselschraube", "schlüsselschrauben", "hammerkopf", "hammerkopfschraube", "passschraube", "passschrauben", "dehnschraube", "dehnschrauben", "bundmutter",
    ]),
];

/// A kind of part by its name: its key; the words that must be there; those that may be.
///
/// A name with any other word of a part in it is not this kind. A key that [`crate::part::Kind`] does not
/// have is a part that is recognised and not known.
#[rustfmt::skip]
pub static KINDS: &[(&str, &str, &str)] = &[
    ("hex-bolt", "hex bolt", "head part-thread cap machine"),
    ("hex-bolt", "hex cap screw", "head part-thread"),
    ("hex-bolt", "bolt", "head part-thread"),
    ("hex-bolt", "schraube", "part-thread"),
    ("hex-bolt", "hex schraube", "part-thread"),
    ("hex-screw", "hex screw", "head full-thread schraube"),
    ("hex-screw", "hex bolt full-thread", "head threaded"),
    ("hex-screw", "hex cap screw full-thread", "head"),
    ("hex-screw", "bolt full-thread", "head"),
    ("hex-screw", "schraube full-thread", "hex"),
    ("structural-bolt", "structural", "heavy hex bolt screw head"),
    ("other", "twist-off bolt", "structural heavy hex head screw round"),
    ("?nut", "HV nut", "hex heavy structural"),
    ("?washer", "HV washer", "flat plain round structural"),
    ("structural-bolt", "HV", "structural heavy hex bolt screw schraube head"),
    ("heavy-hex-bolt", "heavy bolt", "hex head"),
    ("heavy-hex-bolt", "heavy hex", "bolt screw head cap"),
    ("socket-screw", "socket", "hex head cap screw bolt schraube"),
    ("countersunk-screw", "countersunk socket", "hex head cap screw bolt flat"),
    ("countersunk-screw", "flat head socket", "countersunk hex cap screw bolt"),
    ("countersunk-screw", "countersunk screw", "head"),
    ("countersunk-screw", "countersunk schraube", "head socket"),
    ("button-screw", "button", "hex head socket cap screw bolt"),
    ("set-screw", "set screw", "head"),
    ("set-screw", "set screw socket", "hex head"),
    ("hex-screw", "set screw hex", "head full-thread"),
    ("machine-screw", "machine screw", "pan flat head round countersunk"),
    ("machine-screw", "pan screw", "head machine"),
    ("machine-screw", "flat head machine screw", "pan"),
    ("tapping-screw", "tapping screw", "hex head pan flat button countersunk"),
    ("drywall-screw", "drywall screw", "head"),
    ("flange-bolt", "flange bolt", "hex head full-thread part-thread"),
    ("flange-bolt", "flange screw", "hex head cap"),
    ("flange-bolt", "flange head", "hex"),
    ("flange-bolt", "flange schraube", "hex"),
    ("carriage-bolt", "carriage", "bolt screw round head square neck"),
    ("eye-bolt", "eye bolt", ""),
    ("u-bolt", "u-bolt", "round square"),
    ("anchor-rod", "anchor rod", "threaded hex head"),
    ("anchor-rod", "anchor bolt", "threaded"),
    ("rod", "rod", "threaded full-thread"),
    ("stud", "stud", "threaded full-thread bolt"),
    ("hex-nut", "nut", "hex"),
    ("heavy-hex-nut", "heavy nut", "hex structural"),
    ("flange-nut", "flange nut", "hex"),
    ("square-nut", "square nut", ""),
    ("lock-nut", "lock nut", "hex"),
    ("washer", "washer", "flat plain round structural heavy"),
    ("wide-washer", "wide washer", "flat plain round uss"),
    ("wide-washer", "uss washer", "flat plain round"),
    ("narrow-washer", "narrow washer", "flat plain round sae"),
    ("narrow-washer", "sae washer", "flat plain round"),
    ("spring-washer", "spring washer", "flat"),
    ("conical-washer", "conical washer", ""),
    ("toothed-washer", "toothed washer", "washer"),
    ("retaining-ring", "retaining ring", "external"),
    ("internal-ring", "internal ring", "retaining"),
    ("snap-ring", "snap ring", ""),
    ("cotter-pin", "cotter pin", ""),
    ("spring-pin", "spring pin", ""),
];

/// The standards of parts, by publisher and number, with the kind of part each is for; an empty key is
/// a part that is not known here.
#[rustfmt::skip]
pub static PART_STANDARDS: &[(&str, &str, &[&str])] = &[
    ("hex-bolt", "din", &["931", "960", "601", "7990"]),
    ("hex-bolt", "iso", &["4014", "8765", "4016"]),
    ("hex-screw", "din", &["933", "961", "558"]),
    ("hex-screw", "iso", &["4017", "8676", "4018"]),
    ("socket-screw", "din", &["912"]),
    ("socket-screw", "iso", &["4762", "12474"]),
    ("countersunk-screw", "din", &["7991"]),
    ("countersunk-screw", "iso", &["10642"]),
    ("button-screw", "iso", &["7380"]),
    ("set-screw", "din", &["913", "914", "915", "916"]),
    ("set-screw", "iso", &["4026", "4027", "4028", "4029"]),
    ("machine-screw", "din", &["84", "85", "963", "964", "965", "7985"]),
    ("machine-screw", "iso", &["1207", "1580", "2009", "7045", "7046", "7047"]),
    ("tapping-screw", "din", &["7981", "7982", "7983", "7976", "7504"]),
    ("tapping-screw", "iso", &["1479", "7049", "7050", "7051", "15480", "15481", "15482"]),
    ("drywall-screw", "din", &["18182"]),
    ("drywall-screw", "en", &["14566"]),
    ("flange-bolt", "din", &["6921"]),
    ("flange-bolt", "iso", &["4162", "8100", "15071", "15072"]),
    ("flange-bolt", "en", &["1662", "1665"]),
    ("carriage-bolt", "din", &["603"]),
    ("carriage-bolt", "iso", &["8677", "8678"]),
    ("eye-bolt", "din", &["444"]),
    ("u-bolt", "din", &["3570"]),
    ("rod", "din", &["975", "976"]),
    ("hex-nut", "din", &["934", "555", "970", "971"]),
    ("hex-nut", "iso", &["4032", "4033", "4034", "8673", "8674"]),
    ("flange-nut", "din", &["6923"]),
    ("flange-nut", "iso", &["4161"]),
    ("square-nut", "din", &["557", "562"]),
    ("lock-nut", "din", &["980", "982", "985", "6924", "6925"]),
    ("lock-nut", "iso", &["7040", "7041", "7042", "7719", "10511", "10512", "10513"]),
    ("washer", "din", &["125", "126"]),
    ("washer", "iso", &["7089", "7090", "7091"]),
    ("narrow-washer", "din", &["433"]),
    ("narrow-washer", "iso", &["7092"]),
    ("wide-washer", "din", &["9021", "440"]),
    ("wide-washer", "iso", &["7093", "7094"]),
    ("spring-washer", "din", &["127", "128", "7980"]),
    ("conical-washer", "din", &["6796", "2093"]),
    ("toothed-washer", "din", &["6797", "6798"]),
    ("retaining-ring", "din", &["471"]),
    ("internal-ring", "din", &["472"]),
    ("snap-ring", "iso", &["464"]),
    ("snap-ring", "din", &["5417", "7993"]),
    ("cotter-pin", "din", &["94"]),
    ("cotter-pin", "iso", &["1234"]),
    ("spring-pin", "din", &["1481", "7346"]),
    ("spring-pin", "iso", &["8752", "13337"]),
    ("structural-bolt", "en", &["14399-4"]),
    ("structural-bolt", "din", &["6914"]),
    ("?nut", "din", &["6915"]),
    ("?washer", "din", &["6916"]),
    ("?washer", "en", &["14399-5", "14399-6"]),
    ("", "en", &["14399", "14399-3", "14399-7", "14399-8", "14399-9", "14399-10"]),
    ("", "din", &["580", "582", "7969", "7999", "7968", "939", "938", "835", "436", "439", "315", "1587", "929", "928", "986", "917", "935", "937", "571", "95", "96", "97", "261", "186", "188", "508", "787", "609", "610", "1478", "7995", "7996", "7997", "936", "1052", "434", "435", "6340", "988"]),
    ("", "iso", &["3266", "4035", "4036", "7379", "8675", "7411", "7412", "7413", "7414", "7415", "7416", "2338", "8734"]),
];

/// The documents of coats, by number, with the key that the field takes for each.
pub static COAT_DOCUMENTS: &[(&str, &[&str])] = &[
    ("a153", &["a153", "a153m"]),
    ("by-f2329", &["f2329", "f2329m"]),
    ("b695", &["b695"]),
    ("b633", &["b633"]),
    ("f1941", &["f1941", "f1941m"]),
    ("iso10684", &["iso10684"]),
    ("iso1461", &["iso1461"]),
    ("iso4042", &["iso4042"]),
    ("barrel", &["iso12683"]),
    ("kettle", &["as1214", "nzs1214"]),
    ("cell", &["iso2081", "iso19598"]),
];

/// The documents of coats that are not judged here, by number, with the key of each.
pub static OTHER_COATS: &[(&str, &[&str])] = &[
    ("zinc-flake", &["iso10683", "f1136", "f2833", "f3019", "f3393"]),
    ("zinc-alloy", &["b841", "b842"]),
    ("cadmium", &["b766", "b696"]),
    ("organic", &["f1137"]),
];

/// Documents that are recognised and not used, and why.
#[rustfmt::skip]
pub static OTHER_DOCUMENTS: &[(&str, &[&str])] = &[
    (OTHER_COAT, &["iso14713", "a1059", "f2674"]),
    ("a document of structures and sheet, not of fasteners", &["a123", "a653", "a767"]),
    ("it comes with the document of the coat", &["a143", "a385", "b849", "b850", "f606", "f1940", "e376", "b499", "f1470", "b117", "iso9227", "iso9223", "iso12944", "iso9224", "iso898", "iso16047", "iso3269", "iso16426", "iso15330", "a780", "d6386"]),
];

/// The steels of ASTM that have a number, with the codes each may take.
#[rustfmt::skip]
pub static ASTM_STEELS: &[&str] = &[
    "a193", "a194", "a307", "a320", "a325", "a325m", "a354", "a437", "a449", "a453", "a490", "a490m", "a540", "a563", "a563m", "a574", "a687", "f436", "f568", "f593", "f594", "f835",
    "f837", "f844", "f879", "f912", "f959", "f1554", "f1852", "f2280", "f3043", "f3111", "f3125", "a36", "a572", "f2882", "f10", "sa193", "sa194", "sa320", "sa325", "sa449", "sa307", "sa354", "sa540", "a311",
];

/// The most tokens that a phrase has.
const LONGEST: usize = 9;

struct Phrase {
    /// Its words and figures, and whether each touches the one before it.
    words: Vec<(String, bool)>,
    means: Word,
}

/// Phrases by their first word.
static PHRASES: LazyLock<HashMap<String, Vec<Phrase>>> = LazyLock::new(|| {
    let mut phrases: HashMap<String, Vec<Phrase>> = HashMap::new();
    for (means, spellings) in WORDS {
        for spelling in *spellings {
            let chain = Chain::of(spelling);
            let words: Vec<(String, bool)> = (0..)
                .zip(chain.tokens())
                .map(|(at, token)| (token.lower.clone(), chain.inside_a_run(at)))
                .collect();
            let first = words.first().map(|(word, _)| word.clone()).unwrap_or_default();
            phrases.entry(first).or_default().push(Phrase { words, means: *means });
        }
    }
    phrases
});

/// Every word that stands in some phrase, or in front of the number of a document.
static KNOWN: LazyLock<HashSet<String>> = LazyLock::new(|| {
    let of_phrases =
        PHRASES.values().flatten().flat_map(|phrase| phrase.words.iter().map(|(word, _)| word.clone()));
    let letters = [
        "half", "a", "b", "c", "d", "e", "f", "h", "m", "sa", "az", "ax", "g", "ii", "iii", "iv", "v", "vi",
        "i", "s", "z",
    ];
    of_phrases.chain(letters.map(str::to_owned)).collect()
});

/// Whether a word stands in the lexicon.
pub fn knows(word: &str) -> bool {
    KNOWN.contains(word)
}

/// The longest phrase at a place that means what is looked for: the place behind it, and what was found.
pub fn find<T>(chain: &Chain<'_>, at: usize, means: impl Fn(Word) -> Option<T>) -> Option<(usize, T)> {
    longest(chain, at, means, |_| true)
}

/// The longest phrase that is not followed by letters or figures that touch it.
pub fn whole<T>(chain: &Chain<'_>, at: usize, means: impl Fn(Word) -> Option<T>) -> Option<(usize, T)> {
    longest(chain, at, means, |end| !chain.inside_a_run(end))
}

fn longest<T>(
    chain: &Chain<'_>,
    at: usize,
    means: impl Fn(Word) -> Option<T>,
    may_end: impl Fn(usize) -> bool,
) -> Option<(usize, T)> {
    let first = &chain.get(at)?.lower;
    let phrases = PHRASES.get(first.as_str())?;
    let sought = phrases.iter().filter_map(|phrase| Some((phrase, means(phrase.means)?)));
    let fits =
        sought.filter_map(|(phrase, found)| Some((behind(chain, at, phrase)?, phrase.words.len(), found)));
    let fits = fits.filter(|(end, ..)| may_end(*end));
    // Of two that are as long, the first row counts.
    let longest = fits.reduce(|one, other| if other.1 > one.1 { other } else { one });
    longest.map(|(end, _, found)| (end, found))
}

/// The place behind a phrase that means exactly this, or the place itself.
pub fn over(chain: &Chain<'_>, at: usize, word: Word) -> usize {
    find(chain, at, |means| (means == word).then_some(())).map_or(at, |(end, ())| end)
}

/// The place behind a phrase, if it stands here.
fn behind(chain: &Chain<'_>, at: usize, phrase: &Phrase) -> Option<usize> {
    let mut at = chain.after(at);
    for (word, touches) in phrase.words.iter().skip(1).take(LONGEST) {
        if !touches {
            // `Zyl.-Schr.` has two of them.
            for _ in 0..2 {
                at = chain.over(at, &["-", "–", "‑", "/", ".", "_", "'", "’"]);
            }
        }
        let token =
            chain.get(at).filter(|token| matches!(token.sort, Sort::Word | Sort::Digits | Sort::Sign))?;
        if token.lower != *word || (*touches && !chain.glued(at)) {
            return None;
        }
        at = chain.after(at);
    }
    Some(at)
}
