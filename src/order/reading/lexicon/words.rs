//! Every word of the trade, one row a meaning.

use super::Word;
use super::Word::{Part, Place, Process as By};
use crate::process::Process;
use crate::site::Category::{self, C1, C2, C3, C4, C5, Cx};
use crate::site::Surroundings;
use crate::steel::Worked;

/// Why the colour of plated zinc is not used.
pub const COLOUR: &str = "the colour of the chromate is not judged";
/// Why zinc without a process asks for none of the three.
pub const ANY_ZINC: &str = "all three are zinc: write hot-dip, mechanical or electroplated if one is meant";
/// Why the cure of a coat over the zinc is not used.
pub const CURED: &str = "how a coat over the zinc is cured is not judged";
/// Why a heat treatment before the coat is not used.
pub const STRESS: &str =
    "whether stress is relieved before the coat follows from the documents: the answer says so";
/// Why words that want more than one thing are not used.
const BESIDES: &str = "what besides? Write each that is wanted";
/// What a line leaves open.
pub const LEFT_OPEN: &str = "the line leaves it open";
/// Why a coat that is not judged here is not used.
pub const OTHER_COAT: &str = "out of scope: hot-dip, mechanical and electroplated zinc are judged";
/// Why what comes with an order, and says nothing of the three, is not used.
pub const EXTRA: &str = "not judged";
/// Why the length of a thread is not used.
pub const THREAD_LENGTH: &str = "the length of the thread is not asked: it is that of the standard";
/// Why the weight of one piece, or of each of several, is not used.
pub const WEIGHT_OF_PIECE: &str = "the weight of one and not of all: that of a piece is computed from its shape; write the pieces, or the weight of \
     all";
/// Why the weight of a box is not used.
pub const WEIGHT_OF_BOX: &str = "the weight of one box: write the weight of all, or the pieces";
const WIDTH: &str = "a width, a height or a bore is not asked";
const ALLOY: &str = "which steel of that kind? Write its grade, its class or its hardness";
const MILD: &str =
    "soft steel of no grade: write its class or grade, as 4.6 or A307, or its greatest hardness";
/// What a joint is made of, or how it is loaded, makes no other part.
/// Why words for a coat on what is put together already are not used.
const TOGETHER: &str =
    "coated in one with what it joins? Bolts and nuts are judged coated apart, and put together then";
/// Why a part that has been used is not used.
pub const USED: &str =
    "used parts? They are judged as new ones: what they have carried, and what is on them, is not known here";
/// Why a flange in front of a bolt is not used.
const FLANGE: &str = "the flange that it joins: if the bolt itself has one, write flange bolt";
/// Why what a part joins is not used.
pub const JOINT: &str = "what it holds together is not judged";
/// Why a word for a place in an address or a name is not used.
pub const NO_PLACE: &str = "no place where the part stands";
/// Why hours are not used.
pub const HOURS: &str = "hours of salt spray are not judged: a place and years are";
/// Why a word that praises, or tells an order from another, is not used.
pub const SAYS_NOTHING: &str = "it says nothing of the finish";
const CLEANING: &str = "how it is cleaned has no field here: write it on the order; where acid harms the steel, the answer says so";
const STRONG: &str = "it says how strong only by a class, a grade or a hardness";
/// Why what was measured on a lot is not used.
pub const A_READING: &str =
    "a reading, and no coat that is wanted: the lot check judges a lot by its readings";
/// Why the yield strength is not used.
pub const YIELD: &str = "the yield strength is not asked: write the tensile strength or the grade";
/// Why the height of a place is not used.
pub const HEIGHT: &str = "how high a place lies is not judged";
/// Why a word for what is masked is not used.
pub const MASKED: &str =
    "what is masked? The whole part is judged: agree with the plater what is kept free of zinc";
/// Why months are not used.
pub const MONTHS: &str = "if it is the life that is wanted, write it in years";
/// Why a coat or a lubricant over the zinc is not used.
pub const TOP: &str = "a top coat is not judged";
/// Why words for the nut's thread are not used.
pub const TAPPED: &str = "how far to tap over follows from the coat";
/// Why a word for the heat in service is not used by itself.
pub const IN_SERVICE: &str = "if it gets hot, say how hot: zinc is commonly held to 200 °C";
/// Why what is cast in is not judged so by itself: most anchors stand out of their concrete, in air.
pub const CAST_IN: &str = "what stands out of it is judged: choose “In concrete” where nothing does";
/// Why a category is not used of what does not stand in air.
pub const NOT_IN_AIR: &str = "the categories are of the air, and it does not stand there";
/// Why a word that may make a place harsher than it sounds is not used.
pub const HARSHER: &str = "it may make the place harsher: measure it, or write the category";
/// Why pieces of a month or a year are not used.
pub const OF_A_TIME: &str = "pieces of a time: how many are ordered?";
/// Why years that are no life are not used.
pub const NO_LIFE: &str = "no life that is asked of the coat";
/// Outdoors, where nothing more is said.
pub const OUTDOORS: &[Category] = &[C2, C3, C4, C5];
/// Why a word for a bare part is not used.
pub const BARE: &str = "no zinc is asked for";

/// Every word that means something, by what it means.
#[rustfmt::skip]
pub(super) static WORDS: &[(Word, &[&str])] = &[
    // Finishes.
    (By(Process::HotDip), &["galvanizado", "galvanizada", "galvanizados", "galvanizadas", "galvanizado en caliente", "galvanizada en caliente", "galvanizados en caliente", "galvanizadas en caliente", "en caliente", "galvanización en caliente", "galvanizado por inmersión en caliente", 
        "thermisch verzinkt", "verzinkt thermisch", "tvz", "thermisch vz", "galvanisé", "galvanisée", "galvanisés", "galvanisées", "thermisch verzinken", "thermische verzinking", "therm verzinkt", "th verzinkt", "vuurverzinkt", "vuurverzinken", "volbadverzinkt",
        "galvanisé à chaud", "galvanisée à chaud", "galvanisés à chaud", "galvanisées à chaud", "galvanisation à chaud", "galva à chaud", "galva a chaud", "galvanisé a chaud", "galvanisée a chaud", "galvanisés a chaud", "galvanisées a chaud", "galvanise a chaud", "galvanisation a chaud", "galvanizd", "galvanisd", "galvinzed", "galvnized", "galvanzed", "galvinized", "galvinised", "galvenized", "galvenised", "galvanzied", "galvanied", "glavanized", "glavanised", "galvanize", "galvanise", "hot dip galvanize", "hot dip galvanise", "hot dip galvinized", "hot dip galvenized", "hot dipped galvanizing", "hot dipped galvanising", "hdg", "h d g", "hdgs", "hdgd", "gal", "gal d", "galv d", "hdg d", "hd galv", "hd galvanized", "hd galvanised", "hot dip", "hot dipped", "hotdip", "hotdipped", "hot dip galv",
        "hot dip galvanized", "hot dip galvanised", "hot dip galvanizing", "hot dip galvanising", "hot dipped galv", "hot dipped galvanized",
        "hot dipped galvanised", "hot dip zinc", "hot dip zinc coated", "galv", "galvanized", "galvanised", "galvanizing", "galvanising", "galvd",
        "galvan", "gi", "hdz", "h d galv", "h d galvanized", "h d galvanised", "fv", "f v", "fvzk", "feuer galv", "feuer galvanisiert", "feuergalv", "feuerverz", "spun galv", "spun galvanized", "spun galvanised", "tzn", "t zn", "fvz", "feuerverzinkt", "feuerverz", "feuer verzinkt",
        "feuerverzinkung", "feuerverzinken", "thermisches verzinken", "thermische verzinkung", "tauchverzinkt", "schmelztauchverzinkt", "stückverzinkt", "stueckverzinkt", "hot dipping", "zinc by hot dipping", "zinc galv", "zinc galvanized", "zinc galvanised", "zinc galvanizing", "zinc galvanising", "kettle",
    ]),
    (By(Process::Mechanical), &["mechanisches verzinken", "mechanische verzinkung", "mechanisch verzinken", "galvanizado mecánico", "galvanizados mecánico", "cincado mecánico", 
        "mech zinc plate", "mechanical zinc plate", "mech zinc plating", "mechanical zinc coating", "mech zinc coating", "mg", "mech galvd", "mechanical galvanize", "mech galvanize", "mech galvanise", "mechanically galvanize", "mechanically galvanise", "galvanize mechanically", "galvanise mechanically", "galvanized mechanically", "galvanised mechanically", "galvanizing mechanically", "mech vz", "mech galv", "mech galvanized", "mech galvanised", "mech galvanizing", "mech galvanising", "mech gal", "mech zinc", "mech zn",
        "mech zinc plated", "mech plated", "mech plating", "mech plate", "mechanical", "mechanical galv", "mechanical galvanized",
        "mechanical galvanised", "mechanical galvanizing", "mechanical galvanising", "mechanical zinc", "mechanical zinc plated",
        "mechanical zinc plating", "mechanical plated", "mechanical plating", "mechanically galvanized", "mechanically galvanised",
        "mechanically galv", "mechanically plated", "mechanically zinc plated", "mechanically deposited", "mechanically deposited zinc", "mechanically zinc coated", "mechanically coated", "mechanical zinc coated", "mech zinc coated", "mech",
        "mechanisch verzinkt", "mech verzinkt", "mech verz", "mech vz", "mechanisch verz", "mgalv", "m galv", "m gal", "m galvanized", "m galvanised", "m galvanizing", "m galvanising", "mech g", "peen plated", "peen plating",
    ]),
    (By(Process::Electroplated), &["galvanisches verzinken", "galvanischer verzinkung", "elektrolytisches verzinken", "elektrolytische verzinkung", "elektrolytischer verzinkung", "galvanische verzinking", "elektrolytische verzinking", "cincado", "cincada", "cincados", "cincadas", "zincado", "zincada", "zincados", "zincadas", "electrocincado", "electrocincados", "electrozincado", "electrozincados", "galvanizado electrolítico", 
        "zingué", "zinguée", "zink", "elektrolytisch", "zingués", "zinguées", "zingué blanc", "zinguées blanc", "zingué électrolytique", "zinguée électrolytique", "zingués électrolytique", "zinguées électrolytique", "zingage électrolytique", "électrozingué", "électrozinguée", "zinc", "zinc plated", "zinc plate", "zinc plating", "zinc pl", "zinc pltd", "zn", "zn plated", "zn pl", "znpl", "zp", "z p", "bzp",
        "ezp", "ez", "plated", "pltd", "plating", "electroplated", "electro plated", "electroplate", "electroplating", "electro zinc", "electrozinc",
        "electro zinc plated", "electrolytically zinc coated", "electrolytic zinc", "electro galvanized", "electro galvanised", "electrogalvanized", "electrogalvanised",
        "electro galv", "electrogalv", "elec galv", "zinc electroplated", "verzinkt", "vz", "verz", "galv verzinkt", "galv verz", "galv vz", "galvanisch verz", "elektr verzinkt", "elektrol verzinkt", "glanzverzinkt", "galvanisch verzinkt", "gal zn",
        "galv zn", "gvz", "galzn", "elektrolytisch verzinkt", "elektroverzinkt", "elektro verzinkt", "elektrogalv", "galvan verzinkt", "galvan verz", "galvan vz", "galvan zn", "galvanisiert", "galvanisch zn", "vzk", "bright zinc", "bright zinc plated", "gal verzinkt", "gal verz", "gal vz", "galvanisch", "zink galvanisch", "galvanische verzinkung", "galv verzinkung", "galvanische zinkschicht", "zinc electroplating",
    ]),
    (Word::Mechanically, &["mecánico", "mecánica", "mecánicos", "mecánicas", "mecánicamente", "mecanico", "mecanica", "por vía mecánica", "por medios mecánicos", "mécanique", "mécaniques", "mécaniquement", "mecanique", "par voie mécanique", "par procédé mécanique"]),
    (Word::Tinted(Process::Electroplated), &[
        "zy", "yz", "zyp", "yzp", "zyc", "zc", "czp", "black zinc", "zinc black", "black zinc plated", "gelbverzinkt", "schwarzverzinkt", "schwarz verzinkt", "blauverzinkt",
    ]),
    (Word::Not(ANY_ZINC), &[
        "verzinken", "gegalvaniseerd", "gegalvaniseerde", "any zinc", "verzinking", "zingage", "any zinc finish", "any zinc coating", "zinc finish", "zinc finishes", "zinc coat", "zinc coated", "zinc coating", "zinc coatings", "zinc type", "zinc type to be advised", "zinc to be advised", "which zinc", "what zinc", "best zinc", "some zinc", "zinkschicht", "zinküberzug", "verzinkung", "zinkbeschichtung",
    ]),
    (Word::Not(BESIDES), &["not only", "not just", "nicht nur", "niet alleen", "pas seulement", "no solo", "no sólo"]),
    (Word::Not(LEFT_OPEN), &["tbd", "tba", "tbc", "to be advised", "to be confirmed", "to be determined", "to be decided", "to be agreed", "type to be advised", "type to be confirmed", "type to be determined", "type to be decided", "type to be agreed", "type tbd", "type tba", "type tbc", "process tbd", "process tba", "process tbc", "process to be advised", "process to be confirmed", "wird noch angegeben", "noch offen", "noch zu klären"]),
    (Word::Not(COLOUR), &[
        "bichromaté", "bichromatés", "bichromatée", "bichromatées", "bichromate", "passivé", "passivés", "passivée", "passivées", "geel", "geel gepassiveerd", "blauw gepassiveerd", "gepassiveerd", "gechromateerd", "amarillo", "cromatado", "cromatados", "di chromate", "di chromated", "jaune", "yellow", "yel", "yellow chromate", "yellow dichromate", "clear", "clear chromate", "blue", "blue passivate", "blue passivated", "black chromate", "olive", "chromate", "chromated", "chromating",
        "dichromate", "passivate", "passivated", "passivation", "cr3", "cr6", "cr 3", "cr 6", "cr+3", "cr+6", "cr +3", "cr +6", "criii", "crvi", "cr iii", "cr vi", "trivalent", "hexavalent", "iridescent", "gelb", "blau", "chromatiert", "passiviert",
        "dickschichtpassiviert", "gelbchromatiert", "cr6 frei", "cr 6 frei", "cr vi frei", "crvi frei", "blau pass", "gelb pass", "hex free", "cr6 free", "cr free", "chrome free",
    ]),
    (Word::Other("zinc-flake"), &[
        "zinc flake", "zn flake", "zincflake", "zinc flake coated", "flzn", "fl zn", "flznnc", "flznl", "fl znl", "zinc lamella", "zinc lamellaire", "zinc lamellaires", "lamellaire", "zinklamelle", "zn lamelle", "zn lamellen", "zinklamellen", "zinklamellenbeschichtet", "lamellenverzinkt",
    ]),
    (Word::Other("zinc-alloy"), &["zinc nickel", "zn ni", "znni", "zinknickel", "zink nickel", "zinc nickel plated", "zn ni plated", "zinc iron", "zn fe", "znfe", "zinc cobalt", "zinc aluminium", "zinc aluminum", "zn al", "znal"]),
    (Word::Other("sherardized"), &["sherardized", "sherardised", "sherardizing", "sherardising", "sherard", "sheradized", "sherardisiert", "diffusionsverzinkt", "thermodiffusion", "thermodiffusionsverzinkt", "thermo diffusion", "thermal diffusion", "thermal diffusion galv", "thermal diffusion galvanized", "thermal diffusion galvanised", "thermal diffusion galvanizing", "thermal diffusion galvanising", "thermal diffusion zinc", "thermal diffusion zinc coated", "thermal diffusion zinc coating", "thermal diffusion coated", "thermal diffusion coating", "thermal diffusion process", "tdg"]),
    (Word::Other("zinc-spray"), &["thermal spray", "thermal sprayed", "thermal spraying", "thermally sprayed", "metallized", "metallised", "metallizing", "metallising", "zinc sprayed", "flame sprayed", "arc sprayed", "spritzverzinkt", "spritzverzinkung", "thermisch gespritzt", "métallisé", "métallisation"]),
    (Word::Other("zinc-paint"), &["zinc rich", "zinc rich paint", "zinc rich primer", "zinc paint", "zinc primer", "cold galv", "cold galvanized", "cold galvanised", "cold galvanizing", "kaltverzinkt"]),
    (Word::Other("cadmium"), &["cadmium", "cad", "cad plated", "cadmium plated", "cad plate"]),
    (Word::Other("other-metal"), &["nickel", "nickel plated", "chrome", "chrome plated", "tin", "tin plated", "copper plated", "silver plated", "vernickelt", "verchromt", "aluminized", "aluminised", "hot dip aluminized", "hot dip aluminised"]),
    (Word::Other("phosphate"), &["zinc phosphate", "zinc phosphated", "phosphate", "phosphated", "phos", "phos oil", "phosphate oil", "phos and oil", "phosphatiert", "blk ox", "black ox", "black oxide", "blk oxide", "blackodize", "brüniert"]),
    (Word::Other("organic"), &[
        "ptfe", "ptfe coated", "fluoropolymer", "fluorocarbon", "painted", "paint", "primed", "primer", "powder coated", "powder coat", "epoxy", "epoxy coated", "anodized", "anodised", "lackiert",
    ]),
    (Word::Other("bare"), &["roh", "rohe", "rohen", "zwart", "zwarte", "brut", "brute", "bruts", "brutes", "noir", "noirs", "noire", "noires", "negro", "negros", "sin recubrimiento", "sin tratamiento", "sin galvanizar", "sin cincar", "sans revêtement", "sans revetement", "non revêtu", "non revêtue", "non revêtus", "non revêtues", "non traité", "non traitée", "non traités", "non traitées", "zonder coating", "zonder bekleding", "zonder oppervlaktebehandeling", "ohne beschichtung", "ohne oberfläche", "ohne überzug", "without coating", "without finish", "without any coating", "no plating or coating", 
        "plain finish", "self colour", "self color", "selfcolour", "self finish", "uncoated", "un galvanized", "zinkfrei", "zinkvrij", "un galvanised", "ungalvanized", "ungalvanised", "un plated", "un coated", "no finish", "no coating", "unplated", "blank", "black", "blk", "black finish", "plain steel", "schwarz", "unbeschichtet", "unverzinkt", "unbehandelt", "onverzinkt", "onbehandeld", "bare",
    ]),
    (Word::Not(BARE), &["oiled", "light oil"]),
    (Word::Not(MASKED), &["mask", "masked", "masking", "mask off", "masked off", "to be masked", "tape off", "taped off", "stopped off", "stop off", "abgedeckt", "abdecken", "abgeklebt", "abkleben", "afgeplakt", "afgedekt"]),
    (Word::FeZn, &["fe zn", "fezn"]),
    (Word::ServiceCondition, &["sc", "service condition"]),
    // What goes on top, and what is asked for besides.
    (Word::Not(TOP), &[
        "wax", "waxed", "wax coated", "lube", "lubed", "lubricated", "lubricant", "lubricants", "lubrication", "lubricate", "lubricating", "schmieren", "schmierung", "schmiermittel", "gesmeerd", "smeermiddel", "lubrifié", "lubrifiés", "graissé", "graissés", "lubricado", "lubricados", "dyed", "dye", "blue dye", "green dye", "sealed", "sealer", "sealant", "top coat", "topcoat",
        "microencapsulated", "threadlocker", "thread locker", "thread lock", "gewachst", "geschmiert", "mos2",
    ]),
    (Word::OtherMetal, &["rvs", 
        "stainless", "stainless steel", "ss", "sst", "s s", "inox", "edelstahl", "rostfrei", "a2", "a4", "a1", "a2 50", "a2 70", "a2 80", "a4 50", "a4 70", "a4 80", "v2a", "v4a", "18 8", "18 8 stainless", "18 8 ss", "304 ss", "316 ss", "stainless 304", "stainless 316", "stainless 304l", "stainless 316l", "stainless steel 304", "stainless steel 316", "stainless steel 304l", "stainless steel 316l", "stainless aisi 304", "stainless aisi 316", "stainless grade 304", "stainless grade 316", "stainless type 304", "stainless type 316", "inox 304", "inox 316", "edelstahl 304", "edelstahl 316",
        "304 stainless", "316 stainless", "304ss", "316ss", "ss304", "ss316", "304l", "316l", "304 stainless steel", "316 stainless steel", "ss 304", "ss 316", "410 ss", "17 4 ph", "brass", "messing", "bronze", "silicon bronze", "aluminium",
        "aluminum", "alu", "titanium", "titan", "nylon", "plastic", "copper", "a286", "b8", "b8m", "8m", "kunststoff", "polyamid", "pa66",
    ]),
    (Word::Not(ALLOY), &["spring steel", "federstahl", "alloy steel", "alloy steels", "legierter stahl"]),
    (Word::Not(NO_PLACE), &[
        "by sea", "sea freight", "ship by sea", "shipped by sea", "keep dry", "pack dry", "packed dry", "packed indoors", "store dry", "stored dry", "store indoors", "stored indoors", "trocken lagern", "trocken verpackt", "trocken verpacken", "dry lube", "dry pack", "dry packed", "dry film", "dry film lube", "dry film lubricant", "dry bags", "inside sales", "outside sales", "industry standard", "industrial standard", "industrial packing", "industrial packaging", "industrial customer", "industrial customers", "industrial client", "industrial road", "industrial way", "industry customer", "marine insurance", "marine surveyor", "marine customer", "chemical composition", "chemical analysis", "chemical certificate", "chemical properties", "city hall", "indoor sales", "land transport", "by land", "sea container", "inside hex", "inside drive", "ocean freight", "port of loading", "port of discharge", "port of entry", "port of destination", "loading port", "discharge port", "any port", "fob port", "air port", "inland freight", "inland transport", "dry cargo",
    ]),
    (Word::Not(SAYS_NOTHING), &["foundation", "foundations", "new", "brand new", "neu", "neue", "neuen", "quality", "good quality", "first quality", "high quality", "standard", "standard quality", "std", "regular", "normal", "usual", "ordinary", "common", "commercial", "commercial quality", "prime", "good", "best", "genuine", "original", "assorted", "various", "spare", "extra", "special", "short", "big", "small", "custom", "nonstandard", "kurze", "kurz", "sonder", "following", "these", "those", "folgende", "your"]),
    (Word::Not(FLANGE), &["tank flange", "tank flanges", "valve flange", "valve flanges", "duct flange", "duct flanges"]),
    (Word::Not(TOGETHER), &["after assembly", "coated after assembly", "dipped after assembly", "dipped assembled", "galvanized assembled", "galvanised assembled", "in assembled condition", "im zusammengebauten zustand", "nach der montage", "nach montage", "na montage", "après montage"]),
    (Word::Not(USED), &["second hand", "secondhand", "2nd hand", "reused", "re used", "reclaimed", "refurbished", "reconditioned", "salvaged", "gebraucht", "gebrauchte", "gebrauchten", "gebrauchter", "tweedehands", "d occasion", "usagé", "usagés", "usagée", "usagées", "usados", "usadas", "regalvanize", "regalvanise", "regalvanized", "regalvanised", "re galvanize", "re galvanise", "re galvanized", "re galvanised", "neu verzinken", "nachverzinken", "herverzinken"]),
    (Word::Not(JOINT), &["before assembly", "during assembly", "on assembly", "prior to assembly", "for assembly", "at assembly", "assembly line", "assembly drawing", "wind turbine", "wind turbines", "windturbine", "windkraftanlage", "windkraftanlagen", "éolienne", "éoliennes", "pipe flange", "pipe flanges", "pipeline flange", "pipeline flanges", "weld neck flange", "weld neck flanges", "rohrflansch", "rohrflansche", "pijpflens", "pijpflenzen", "structural steel", "structural steelwork", "steelwork", "stahlbau", "heavy duty", "heavy load", "heavy loads", "schwerlast", "sb"]),
    (Word::Not(STRONG), &["ht", "h t", "hs", "high tensile", "hi tensile", "high strength", "hi strength", "high tensile steel", "high strength steel", "hochfest", "hochfeste", "hochfesten"]),
    (Word::Not(EXTRA), &[
        "sq ft", "sq in", "sq m", "square feet", "square foot", "rohs", "reach", "mtr", "mtrs", "mill cert", "mill certs", "mill certificate", "cert", "certs", "certificate", "coc", "certified", "dfars", "domestic", "import", "imported", "made in usa", "us made", "usa", "ce", "ce marked", "taiwan", "china",
        "oil", "rush", "hurry", "sharp edges", "sharp edge", "burrs", "burr", "grat", "marking", "markings", "head marking", "head markings", "kopfmarkierung", "stock item", "stock items", "lagerartikel", "lagerware", "substitutes", "substitute", "exceptions", "exception", "drilled", "drilled head", "marked", "bulk", "packed", "boxed", "loose", "assembled", "preassembled", "pre assembled", "rc test", "rotational capacity", "rotational capacity test",
        "pre stressed", "preloaded", "matched lot", "same lot", "q & t", "q and t", "hardened", "heat treated", "q t", "qt", "quenched and tempered", "quenched tempered", "vergütet", "fully killed", "fine grain", "charpy", "sems", "serrated", "serr", "cup point", "cup pt", "flat point", "flat pt", "cone point", "dog point", "oval point", "captive", "metric", "imperial", "country of origin", "ex works", "exw", "ex stock", "ex vat", "ex tax", "ex mill", "ex factory", "ex warehouse",
    ]),
    // Places.
    (Word::Category(C1), &["c1"]),
    (Word::Category(C2), &["c2"]),
    (Word::Category(C3), &["c3"]),
    (Word::Category(C4), &["c4"]),
    (Word::Category(C5), &["c5"]),
    (Word::Category(Cx), &["cx"]),
    (Place(&[C5, Cx]), &["c5 m", "c5m", "c5 i", "c5i", "marine", "marine environment", "marine atmosphere", "marine air", "maritime", "offshore", "ocean", "sea", "seawater", "sea water", "salt water", "saltwater", "meer", "seeluft", "meeresluft", "offshore platform", "splash zone", "harbour", "harbor", "harbours", "harbors", "harbourside", "dock", "docks", "dockside", "port", "ports", "seaport", "sea port", "pier", "piers", "jetty", "jetties", "quay", "quayside", "wharf", "marina", "sea spray", "sea water spray", "seawater spray", "ocean spray", "salt water spray", "hafen", "hafenanlage", "seehafen", "kai", "kaimauer", "kaje", "pieranlage", "seebrücke", "meeresgischt"]),
    (Word::Around(Surroundings::Water), &["submerged", "submersed", "immersed", "immersion", "in sea water", "in seawater", "in the sea", "in salt water", "in saltwater", "in the ocean", "in fresh water", "in freshwater", "in river water", "under the sea", "undersea", "subsea", "under sea water", "under seawater", "under water", "underwater", "below water", "below the waterline", "im1", "im2", "unter wasser", "im wasser", "im meerwasser", "im süßwasser", "im suesswasser", "eingetaucht", "in water", "in the water", "onder water", "in het water", "in zeewater", "sous l eau", "dans l eau", "in drinking water", "in potable water", "in hot water", "tidal zone", "in the tidal zone"]),
    (Word::Around(Surroundings::Soil), &["buried", "in soil", "in the soil", "in the ground", "in ground", "underground", "below ground", "direct burial", "im3", "erdverlegt", "im boden", "im erdreich", "erdberührt", "vergraben", "in earth", "in the earth", "in de grond", "ingegraven", "enterré", "enterrés", "enterrée", "enterrées", "dans le sol", "dans la terre", "ground contact", "in ground contact"]),
    (Word::Around(Surroundings::AcidWood), &["treated wood", "treated lumber", "treated timber", "treated timbers", "pressure treated wood", "pressure treated lumber", "pressure treated timber", "preserved wood", "preserved timber", "preservative treated wood", "preservative treated lumber", "preservative treated timber", "acq", "acq lumber", "acq timber", "copper treated timber", "cca timber", "cca treated", "acid wood", "treated pine", "oak timber", "oak cladding", "cedar cladding", "larch cladding", "oak beam", "oak beams", "oak frame", "in oak", "into oak", "cedar fence", "cedar deck", "cedar decking", "in cedar", "into cedar", "western red cedar", "imprägniertes holz", "kesseldruckimprägniert", "eichenholz"]),
    (Word::Around(Surroundings::Copper), &["in contact with copper", "contact with copper", "touching copper", "in contact with brass", "contact with brass", "touching brass", "in contact with bronze", "contact with bronze", "touching bronze", "kontakt mit kupfer"]),
    (Word::Around(Surroundings::Stainless), &["in contact with stainless", "contact with stainless", "touching stainless", "in contact with stainless steel", "contact with stainless steel", "touching stainless steel", "kontakt mit edelstahl", "kontakt zu edelstahl"]),
    (Word::Around(Surroundings::OtherMetal), &["bimetallic contact", "galvanic contact", "dissimilar metal contact", "dissimilar metals", "on another metal"]),
    (Word::Touching, &["in contact with", "in direct contact with", "contact with", "touching", "in kontakt mit", "kontakt mit", "kontakt zu", "in contact met", "contact met", "au contact de", "en contact avec"]),
    (Word::Not(CAST_IN), &["in concrete", "into concrete", "in mortar", "in grout", "grouted into", "in beton", "im beton", "in het beton", "dans le béton", "cast in concrete", "cast into concrete", "embedded in concrete", "encased in concrete", "buried in concrete", "set in concrete", "in wet concrete", "grouted in", "einbetoniert", "in beton einbetoniert", "in beton eingegossen"]),
    (Word::Not(NO_PLACE), &["in ground floor", "in the ground floor", "on ground floor", "soil pipe", "soil pipes", "soil stack", "soil nail", "soil nails", "soil nailing", "submerged arc", "submerged arc welded", "quenched in water", "quench in water", "water quenched", "immersion in zinc", "immersion in molten zinc", "by immersion", "full immersion", "treated wood crate", "treated wood crates", "treated wood box", "treated wood boxes", "treated wood pallet", "treated wood pallets", "treated wood packing"]),
    (Word::Not(HARSHER), &["underground car park", "underground carpark", "underground parking", "underground garage", "underground station"]),
    (Word::Not(HEIGHT), &["above sea level", "sea level", "asl", "m asl", "m above sea level", "metres above sea level", "meter über nn", "m über nn", "über nn", "über dem meer", "über meer", "m ü nn", "m ü m"]),
    (Word::Sea, &["sea", "coast", "coastline", "sea coast", "seacoast", "shore", "shoreline", "seashore", "sea shore", "ocean", "beach", "beachfront", "seaside", "seafront", "sea front", "oceanfront", "ocean front", "waterfront", "water front", "salt water", "saltwater", "seawater", "meer", "küste", "kueste", "küstenlinie", "strand", "ufer", "nordsee", "ostsee", "küstenabstand", "küstenentfernung", "küstenferne"]),
    (Word::Far(1000.0), &["km", "kms", "kilometre", "kilometres", "kilometer", "kilometers", "kilometern"]),
    (Word::Far(1609.344), &["mile", "miles", "mi", "meile", "meilen"]),
    (Word::Far(1.0), &["m", "metre", "metres", "meter", "metern", "meters", "mtr", "mtrs"]),
    (Word::Far(0.9144), &["yard", "yards", "yd", "yds"]),
    (Word::Far(0.3048), &["ft", "feet", "foot"]),
    (Place(&[C4, C5]), &["aan zee", "costa", "en la costa", "zona costera", "aan de kust", "aan de zee", "bord de mer", "seeklima", "meeresklima", "milieu marin", "ambiance marine", "atmosphère marine", "ambiente marino", "atmósfera marina", "en bord de mer", "coast", "coastal", "coastline", "seaside", "salt air", "salty air", "salt laden air", "near the sea", "near the coast", "near coast", "near the shore", "on the coast", "by the sea", "near sea", "sea coast", "seacoast", "shore", "shoreline", "seashore", "sea shore", "seafront", "sea front", "oceanfront", "ocean front", "waterfront", "water front", "at the sea", "at the seaside", "close to the sea", "close to the coast", "close to sea", "close to the shore", "next to the sea", "near the ocean", "near the beach", "along the coast", "beach", "beachfront", "küste", "küstennah", "küstennähe", "in küstennähe", "an der küste", "kueste", "strand", "am strand", "am meer", "nahe am meer", "in meeresnähe", "meeresnähe", "meeresnah", "nordsee", "ostsee", "nordseeküste", "ostseeküste", "industry", "industrial", "industrial area", "industrial atmosphere", "industrieluft", "industrieklima", "milieu industriel", "ambiance industrielle", "atmosphère industrielle", "ambiente industrial", "industrieatmosphäre", "industriegebiet", "factory", "chemical plant", "refinery", "industrie", "industriell", "industriegebiet", "chemical", "chemie"]),
    (Place(&[C3, C4]), &["town", "city", "urban", "urban area", "city air", "stadt", "städtisch", "stadtluft", "stadtklima", "milieu urbain", "zone urbaine", "ambiance urbaine", "zona urbana", "ambiente urbano", "in de stad", "stedelijk gebied", "suburban"]),
    (Place(&[C2, C3]), &["rural", "country", "countryside", "farmland", "farm", "village", "inland", "im landesinneren", "landesinneren", "landeinwärts", "binnenland", "im binnenland", "country air", "ländlich", "land", "landluft", "landklima", "milieu rural", "zone rurale", "zona rural", "ambiente rural", "platteland", "dorf"]),
    // Examples of ISO 9223, Table C.1.
    (Place(&[C4]), &["swimming pool", "swimming pools", "indoor swimming pool", "indoor swimming pools", "indoor pool", "indoor pools", "indoor pool hall", "swimming pool hall", "swimming bath", "swimming baths", "swimming hall", "pool hall", "schwimmbad", "piscine", "piscina", "schwimmbäder", "hallenbad", "schwimmhalle", "hallenschwimmbad"]),
    (Place(&[C4, C5]), &["de icing salt", "de icing salts", "deicing salt", "deicing salts", "road salt", "road salts", "tausalz", "tausalze", "tausalzen", "streusalz"]),
    (Place(&[C3]), &["laundry", "dairy", "brewery", "wäscherei", "molkerei", "brauerei"]),
    (Place(&[C2]), &["unheated warehouse", "unheated store", "unheated storage", "unheated hall", "unheated building", "unheated shed", "unbeheizte halle", "unbeheizten halle", "unbeheizte lagerhalle", "sports hall", "sports halls", "sporthalle", "turnhalle"]),
    (Word::Not(HARSHER), &["damp", "humid", "moist", "wet", "condensation", "condensing", "unventilated", "feucht", "feuchte", "feuchter", "feuchten", "feuchtes", "nass", "nasse", "nasser", "kondenswasser", "pool", "pools", "chlorine", "chlorinated", "chlor", "car wash", "carwash", "car park", "parking garage", "parking deck", "parkhaus", "tiefgarage", "waschanlage", "waschstraße", "autowaschanlage", "cellar", "cellars", "keller", "stable", "stables", "stall", "cattle shed", "cattle barn", "cow shed", "cowshed", "cow barn", "barn", "animal house", "livestock", "piggery", "pig farm", "poultry", "viehstall", "kuhstall", "schweinestall", "pferdestall", "sewage", "sewage plant", "wastewater", "waste water", "kläranlage", "klärwerk", "abwasser", "greenhouse", "gewächshaus", "fertilizer", "fertiliser", "dünger", "düngerlager", "salt", "salt store", "salt storage", "salz", "salzlager", "acidic", "fumes", "steam", "dampf", "plating shop", "pickling shop", "galvanik", "beizerei", "tannery", "paper mill", "pulp mill"]),
    (Place(&[C1, C2]), &["indoor", "intérieur", "à l intérieur", "a l interieur", "en intérieur", "interieur", "en interieur", "binnengebruik", "voor binnen", "voor binnengebruik", "binnenshuis", "binnenopstelling", "binnen droog", "droog binnen", "indoors", "inside", "interior", "indoor use", "dry indoor", "dry inside", "heated", "innen", "innenraum", "innenbereich", "drinnen", "dry", "dry room", "trocken", "trockener innenraum", "trockenen innenraum", "trockene innenräume", "trockenen innenräumen", "trockene halle", "trockener raum", "trockenen raum", "beheizt", "beheizter", "beheizte", "beheizten", "geheizt", "geheizter raum", "geheizten raum", "intérieur sec", "en intérieur sec", "interieur sec", "local sec", "droge ruimte", "verwarmd", "in a building", "inside building"]),
    (Place(OUTDOORS), &["außenbewitterung", "aussenbewitterung", "bewitterung", "freibewittert", "im außenbereich", "intemperie", "a la intemperie", "al aire libre", "extérieur", "à l extérieur", "a l exterieur", "en extérieur", "exterieur", "en exterieur", "buiten", "buitengebruik", "voor buiten", "voor buitengebruik", "buitenlucht", "in de buitenlucht", "buitenopstelling", "outdoor", "outdoors", "outside", "exterior", "outdoor use", "open air", "draußen", "aussen", "außen", "außenbereich", "freibewitterung", "im freien", "freien"]),
    (Place(&[C1, C2, C3, C4, C5]), &["indoor outdoor", "indoors outdoors", "indoor outdoor use", "inside outside", "interior exterior", "innen außen", "innen aussen"]),
    (Place(&[C4, C5, Cx]), &["wet tropics", "humid tropics", "humid tropical", "feuchte tropen", "tropical", "tropics", "tropen", "subtropical", "tropisch"]),
    // Steels.
    (Word::Grade, &["grado", "grade", "grades", "gr", "grd", "gd", "güte", "guete", "g", "grad"]),
    (Word::Class, &["clase", "classe", "kwaliteit", "sterkteklasse", "class", "classes", "cl", "cls", "property class", "prop class", "pc class", "strength class", "klasse", "kl", "festigkeitsklasse", "fkl", "fk", "festigkeit", "güteklasse"]),
    (Word::Type, &["type", "typ", "ty"]),
    (Word::Sae, &["sae", "j429", "sae j429", "j 429"]),
    (Word::Steel("j995"), &["j995", "sae j995"]),
    (Word::Steel("b7"), &["b7"]),
    (Word::Steel("b7m"), &["b7m"]),
    (Word::Steel("b16"), &["b16"]),
    (Word::Steel("l7"), &["l7"]),
    // Steels of structures and of shafts: known by name, and their strength by their document alone.
    (Word::Steel("s235"), &["s235", "s235jr", "s235j0", "s235j2", "st37", "st 37"]),
    (Word::Steel("s275"), &["s275", "s275jr", "s275j0", "s275j2"]),
    (Word::Steel("s355"), &["s355", "s355jr", "s355j0", "s355j2", "st52", "st 52"]),
    (Word::Steel("c35"), &["c35", "c35e", "ck35"]),
    (Word::Steel("c45"), &["c45", "c45e", "c45r", "ck45"]),
    (Word::Steel("34crmo4"), &["34crmo4", "34crmos4"]),
    (Word::Steel("42crmo4"), &["42crmo4", "42crmos4"]),
    (Word::Not(MILD), &["mild steel", "mild carbon steel", "low carbon", "low carbon steel", "plain carbon steel", "baustahl", "automatenstahl"]),
    (Word::Steel("bc"), &["bc"]),
    (Word::Steel("bd"), &["bd"]),
    (Word::Steel("2h"), &["2h"]),
    (Word::Steel("2hm"), &["2hm"]),
    (Word::Steel("dh"), &["dh"]),
    (Word::Steel("dh3"), &["dh3"]),
    (Word::Steel("8s"), &["8s"]),
    (Word::Steel("10s"), &["10s"]),
    (Word::Steel("8s3"), &["8s3"]),
    (Word::Steel("10s3"), &["10s3"]),
    (Word::Steel("45h"), &["45h"]),
    (Word::Steel("33h"), &["33h"]),
    (Word::Steel("22h"), &["22h"]),
    (Word::Steel("14h"), &["14h"]),
    (Word::Steel("12.9u"), &["12 9u", "12.9u"]),
    (Word::CaseHardened, &["induction hardened", "flame hardened", "induktiv gehärtet", "induktionsgehärtet", "flammgehärtet", "inductief gehard", "cémenté", "cémentés", "case hardened", "casehardened", "case hard", "case hardening", "surface hardened", "carburized", "carburised", "carbonitrided", "einsatzgehärtet", "randschichtgehärtet", "einsatzgehaertet"]),
    (Word::NylonPatch, &["nylon patch", "nylon patched", "nylon pellet", "nylon locking patch", "patch", "patched", "locking patch", "nylon coated thread"]),
    (Word::Hole(false), &["tapped hole", "tapped holes", "threaded hole", "threaded holes", "tapped blind hole", "tapped blind holes", "tapped block", "tapped blocks", "tapped housing", "tapped plate", "gewindebohrung", "gewindebohrungen", "gewindeloch", "gewindelöcher", "gewindesackloch", "sacklochgewinde", "trou taraudé", "trous taraudés", "tapgat", "tapgaten", "getapt gat", "getapte gaten", "agujero roscado", "agujeros roscados"]),
    (Word::Hole(true), &["existing tapped hole", "existing tapped holes", "existing threaded hole", "existing threaded holes", "vorhandene gewindebohrung", "vorhandene gewindebohrungen", "vorhandenes gewindeloch", "pre tapped hole", "pre tapped holes", "pretapped hole", "pretapped holes", "already tapped hole", "already tapped holes", "hole already tapped", "holes already tapped", "holes are already tapped", "hole is already tapped", "existing tapping", "existing tappings", "existing internal thread", "existing internal threads", "vorhandenes gewinde", "vorhandenes innengewinde", "bestehendes gewinde", "gewinde vorhanden", "gewinde bereits vorhanden", "filetage existant", "bestaande schroefdraad"]),
    (Word::CutUnder, &["undersize", "undersized", "under sized", "undersize thread", "undersize threads", "undersized thread", "undersized threads", "thread undersize", "threads undersize", "thread undersized", "threads undersized", "threads cut undersize", "thread cut undersize", "threads cut undersized", "cut undersize", "cut undersized", "undercut thread", "undercut threads", "thread undercut", "threads undercut", "threads cut under", "thread cut under", "untermaß", "untermaßgewinde", "untermassgewinde", "gewinde mit untermaß", "gewinde untermaß", "untermaßig", "untermaßiges gewinde"]),
    (Word::LeftHand, &["lh", "l h", "l.h", "l.h.", "left hand", "left handed", "left hand thread", "left hand threads", "lh thread", "linksgewinde"]),
    (Word::WorkedHard(Worked::Formed), &["cold bent", "bent cold", "rolled after heat treatment", "threads rolled after heat treatment", "thread rolled after heat treatment", "rolled after ht", "rolled after hardening", "formed after heat treatment", "cold formed after heat treatment", "cold formed after hardening", "kalt gebogen", "kaltgebogen", "schlussgerollt", "schlußgerollt", "schlussvergütet gerollt"]),
    (Word::Worked(Worked::Formed), &["rolled threads", "rolled thread", "thread rolling", "roll thread", "roll threads", "rolling", "threads to be rolled", "gewinderollen", "bent", "cold bent", "bent cold", "formed", "formed cold", "cold formed", "worked cold", "cold worked", "straightened", "straightened cold", "cold straightened", "rolled", "rolled cold", "cold rolled", "threads rolled", "thread rolled", "threads cold rolled", "swaged", "upset", "gebogen", "kalt gebogen", "kaltgebogen", "umgeformt", "kalt umgeformt", "kaltumgeformt", "kalt verformt", "kaltverformt", "gerichtet", "kalt gerichtet", "gerollt", "kalt gerollt", "gewalzt", "kalt gewalzt"]),
    (Word::Worked(Worked::Machined), &["ground", "machined", "turned", "turned down", "milled", "drilled", "cross drilled", "threads cut", "thread cut", "threads ground", "thread ground", "shank ground", "geschliffen", "bearbeitet", "spanend bearbeitet", "gedreht", "überdreht", "gefräst", "geschnitten", "gewinde geschnitten"]),
    (Word::WorkedHard(Worked::Machined), &["hardened and ground", "hardened & ground", "hardened ground", "hardened and machined", "gehärtet und geschliffen", "gehärtet geschliffen", "vergütet und geschliffen"]),
    (Word::Hardening, &["heat treatment", "heat treating", "heat treat", "heat treated", "h t", "ht", "hardening", "through hardening", "quench and temper", "quench & temper", "quenching and tempering", "quenching & tempering", "quench tempering", "quenching", "tempering", "q t", "qt", "q & t", "q and t", "vergüten", "vergueten", "vergütung", "verguetung", "härten", "haerten", "wärmebehandlung", "waermebehandlung", "anlassen"]),
    (Word::Tempered, &["tempered", "tempered at", "temper", "tempering", "tempering temperature", "temper temperature", "tempering temp", "temper temp", "angelassen", "angelassen bei", "anlasstemperatur", "anlassen"]),
    (Word::HighBath, &["high temp", "high temperature", "hi temp", "high temp bath", "high temperature bath", "high temp zinc", "hochtemperatur", "hochtemperaturverzinkt", "hochtemperaturverzinkung", "ht verzinkt"]),
    (Word::Not(CURED), &["oven cured", "cured", "cure", "curing", "cured in oven", "cured in an oven", "cured in the oven", "curing oven", "stoved", "eingebrannt"]),
    (Word::Not(IN_SERVICE), &["use at", "use up to", "used up to", "max temp", "working temp", "working temperature", "for use at", "for use up to", "einsatz bei", "einsatztemperatur", "max temperature", "maximum temperature", "design temperature", "design temp", "oven", "furnace", "ovens", "furnaces", "exhaust", "exhausts", "exhaust manifold", "exhaust manifolds", "exhaust pipe", "exhaust pipes", "exhaust system", "exhaust flange", "exhaust flanges", "manifold", "manifolds", "boiler", "boilers", "flue", "flues", "chimney", "kiln", "kilns", "burner", "burners", "turbine", "turbines", "turbocharger", "turbochargers", "turbo", "heater", "heaters", "incinerator", "steam pipe", "steam pipes", "steam pipework", "steam line", "steam lines", "steam flange", "steam flanges", "steam turbine", "auspuff", "auspuffkrümmer", "abgas", "abgasanlage", "krümmer", "kessel", "heizkessel", "dampfleitung", "dampfkessel", "ofen", "brenner", "schornstein", "uitlaat", "ketel", "stoomleiding", "échappement", "chaudière", "exposed to temperatures up to", "temperatures up to", "temperature up to", "bedrijfstemperatuur", "service temperature", "service temp", "operating temperature", "operating temp", "service", "in service", "service at", "working temperature", "temperature in service", "used at", "in service at", "in use at", "betriebstemperatur", "einsatztemperatur", "high temperature service", "high temp service", "high temperature application", "high temp application", "high temperature use", "operating at", "operating", "in operation", "temperature range", "continuous temperature", "continuous temp", "surface temperature", "ambient temperature", "peak temperature", "einsatz bis", "hot oil", "hot oil line", "thermal oil", "hot gas", "hot air", "gets up to", "temperature gets to", "im betrieb", "operates at", "runs at", "running at", "works at", "steam at", "heated to", "gets to"]),
    (Word::Bath, &["bath", "zinc bath", "zinc at", "bath temperature", "bath temp", "zinc temperature", "kettle at", "kettle temperature", "zinkbad", "badtemperatur"]),
    (Word::Overtapped, &["overtapping", "over tapping", "oversize tapping", "oversized tapping", "tapping over", "tapping oversize", "tapped out oversize", "überschneiden", "aufschneiden", "nachschneiden", "aufbohren", "nachbohren", "aufgebohrt", "nachgebohrt", "größer schneiden", "größer geschnitten", "größer gebohrt", "tarauder plus grand", "surtarauder", "overmaats tappen", "overtappen", "surtaraudé", "surtaraudés", "surtaraudée", "surtaraudées", "surtaraudage", "taraudé surdimensionné", "overmaats getapt", "overmaat", "sobremedida", "roscado sobremedida", "tapped over", "tapped over by", "tap over", "overtapped", "over tapped", "overtap", "tapped oversize", "ot", "o t", "oversize tapped", "oversized tapped", "tapped oversized", "oversize", "oversized", "tap oversize", "o s", "os", "nuts tapped oversize", "überschnitten", "überschnitten um", "aufgeschnitten", "nachgeschnitten", "übermaß", "übermass", "allowance", "diametral allowance"]),
    (Word::NotOvertapped, &["not overtapped", "not over tapped", "not tapped over", "not tapped oversize", "not tapped oversized", "not oversize tapped", "not oversized", "not oversize", "no overtapping", "no over tapping", "no overtap", "no oversize tapping", "no oversized tapping", "no oversize", "without overtapping", "without oversize tapping", "without oversize", "non overtapped", "non oversize", "standard tapped", "tapped standard", "tapped to standard", "standard thread", "standard threads", "standardgewinde", "normalgewinde", "standard tolerance nuts", "nicht übermaß", "nicht überschnitten", "nicht aufgeschnitten", "nicht nachgeschnitten", "ohne übermaß", "kein übermaß", "ohne nachschneiden"]),
    // A bake after the coat, and how a part is cleaned before it.
    (Word::Bake, &["degas", "degassed", "degassing", "dégazage", "dégazé", "dégazés", "entgasen", "entgast", "bake", "baked", "baking", "bake out", "baked out", "bakeout", "post bake", "post plate bake", "post plating bake", "bake after plating", "baked after plating", "baking after plating", "bake after coating", "baked after coating", "embrittlement relief", "embrittlement bake", "embrittlement relieved", "embrittlement relief bake", "hydrogen embrittlement relief", "hydrogen embrittlement relief bake", "hydrogen relief", "hydrogen bake", "hydrogen bakeout", "relief bake", "he relief", "he bake", "h e relief", "de embrittle", "de embrittled", "de embrittling", "de embrittlement", "deembrittle", "deembrittled", "deembrittlement", "dehydrogenate", "dehydrogenated", "dehydrogenation", "entspröden", "entsprödet", "entsprödung", "entsproeden", "entsproedet", "entsprödungsglühen", "wasserstoffentsprödet", "wasserstoffentsprödung", "wasserstoffarm geglüht", "wasserstoffaustreibung", "wasserstoffarmglühen", "tempern", "getempert", "ausgeheizt", "ausheizen", "nachgeglüht"]),
    (Word::Not(STRESS), &["stress relieve", "stress relieved", "stress relief", "stress relieving", "stress relieve before plating", "stress relieved before plating", "stress relief before plating", "spannungsarm geglüht", "spannungsarmgeglüht", "spannungsarmglühen"]),
    (Word::Hours, &["h", "hr", "hrs", "hour", "hours", "std", "stunde", "stunden"]),
    (Word::Not(CLEANING), &["no acid pickling", "no acid pickle", "no acid pickled", "no pickling", "no pickle", "not pickled", "not acid pickled", "without pickling", "without acid pickling", "unpickled", "no acid", "without acid", "acid free", "acidfree", "acid free cleaning", "non acid cleaning", "no acid cleaning", "no acid clean", "no acid dip", "not acid cleaned", "do not pickle", "do not acid pickle", "do not acid clean", "pickling not allowed", "pickling not permitted", "no pickling allowed", "no pickling permitted", "acid not allowed", "no acid allowed", "pickling", "pickled", "pickle", "acid", "acid pickle", "acid pickled", "acid pickling", "acid clean", "acid cleaned", "acid cleaning", "flash pickle", "flash pickled", "flash pickle only", "inhibited acid", "inhibited acid only", "blast", "blasted", "blasting", "blast only", "blast clean", "blast clean only", "blast cleaned", "blast cleaned only", "blast cleaning", "blast cleaning only", "shot blast", "shot blast only", "shot blasted", "shot blasting", "shotblast", "shotblasted", "grit blast", "grit blasted", "grit blasting", "grit blast only", "sand blasted", "sandblasted", "sandblast", "sandblast only", "sand blast only", "sandblasting", "sand blast", "abrasive cleaning", "abrasive cleaning only", "abrasive cleaned", "mechanical cleaning", "mechanical cleaning only", "mechanical clean", "mechanical clean only", "mechanically cleaned", "mechanically cleaned only", "mechanical descaling", "mechanically descaled", "clean mechanically", "clean mechanically only", "cleaned mechanically", "cleaned mechanically only", "alkaline clean", "alkaline cleaned", "alkaline cleaning", "alkaline clean only", "alkaline cleaning only", "degreased", "degrease only", "ohne beizen", "ohne beize", "nicht beizen", "nicht gebeizt", "ungebeizt", "kein beizen", "keine beize", "beizen", "gebeizt", "beizen verboten", "beizen nicht zulässig", "keine säure", "ohne säure", "säurefrei", "säurefrei gereinigt", "gestrahlt", "strahlen", "nur strahlen", "nur gestrahlt", "nur mechanisch reinigen", "nur mechanisch gereinigt", "mechanisch reinigen", "mechanisch gereinigt", "mechanische reinigung", "nur mechanische reinigung", "entfettet"]),
    // Counts.
    (Word::Count(1, false), &["uds", "ud", "unidades", "unidad", "piezas", "pieza", "pzas", "pza", "stuks", "stuk", "pièce", "pcs", "pc", "pces", "pce", "pieces", "piece", "off", "nos", "units", "unit", "count", "ct", "lengths", "lgths", "stk", "stck", "stück", "stueck", "st", "stücke", "pièces", "pz", "pzi"]),
    (Word::Each, &["ea", "of each", "of each size", "of each length", "of every size", "each size", "each length", "van elk", "je größe", "je länge", "each", "eaches", "je", "jeweils", "elk", "elke", "ieder", "iedere", "chacun", "chacune"]),
    (Word::Ends, &["under head and nut", "under the head and nut", "under the head and the nut", "under head and under nut", "under bolt head and nut", "under nut and head", "unter kopf und mutter", "per leg", "each leg", "both legs", "each end", "ea end", "each ends", "both ends", "per end", "either end", "every end", "at each end", "on each end", "at both ends", "on both ends", "at either end", "on either end", "each side", "ea side", "both sides", "per side", "either side", "on each side", "on both sides", "at each side", "at both sides", "on either side", "two ends", "for each end", "for both ends", "je ende", "je seite", "pro ende", "pro seite", "an jedem ende", "an beiden enden", "auf beiden seiten", "auf jeder seite", "beide enden", "beide seiten", "beiderseits", "beidseitig", "beidseits"]),
    (Word::Count(1, true), &["sets", "assemblies", "assys", "assy", "assembly", "kits", "kit", "sätze", "saetze", "satz", "garnituren", "garnitur", "verbindungen"]),
    (Word::Set, &["set"]),
    (Word::Count(12, false), &["dozen", "dozens", "doz", "dz", "dzn", "dtz", "dutzend"]),
    (Word::Count(144, false), &["gross", "gross of", "gros"]),
    (Word::Count(100, false), &["hundred", "hundert"]),
    (Word::Count(1000, false), &["thousand", "tausend", "tsd", "mille"]),
    (Word::Count(1_000_000, false), &["mio", "million", "millions", "millionen"]),
    (Word::Thousand, &["k", "mil", "mila", "thou"]),
    (Word::Quantity, &["cantidad", "cant", "quantité", "aantal", "qté", "no of pcs", "no of pieces", "number of pieces", "number off", "no of bolts", "pieces required", "qty", "qnty", "qtty", "quantity", "q ty", "amount", "menge", "anzahl", "anz", "stückzahl", "stueckzahl", "stz", "need", "order qty", "total"]),
    (Word::Box, &["kiste", "kisten", "schachtel", "schachteln", "eimer", "fass", "fässer", "doos", "boîte", "boîtes", "caja", "cajas", "colis", "zak", "zakken", "sac", "sacs", "box", "boxes", "bx", "carton", "cartons", "ctn", "ctns", "sack", "sacks", "säcke", "vpe", "lots", "pallet", "pallets", "keg", "kegs", "bag", "bags", "pack", "packs", "pkg", "pkgs", "packet", "packets", "karton", "kartons", "palette", "paletten", "beutel", "pkt", "ve", "bucket", "buckets", "drum", "drums", "crate", "crates"]),
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
    (Word::Small(13), &["thirteen", "dreizehn"]),
    (Word::Small(14), &["fourteen", "vierzehn"]),
    (Word::Small(15), &["fifteen", "fünfzehn"]),
    (Word::Small(16), &["sixteen", "sechzehn"]),
    (Word::Small(17), &["seventeen", "siebzehn"]),
    (Word::Small(18), &["eighteen", "achtzehn"]),
    (Word::Small(19), &["nineteen", "neunzehn"]),
    (Word::Small(20), &["twenty", "zwanzig"]),
    (Word::Small(25), &["twenty five", "fünfundzwanzig"]),
    (Word::Small(30), &["thirty", "dreißig"]),
    (Word::Small(40), &["forty", "vierzig"]),
    (Word::Small(50), &["fifty", "fünfzig"]),
    (Word::Small(60), &["sixty", "sechzig"]),
    (Word::Small(70), &["seventy", "siebzig"]),
    (Word::Small(75), &["seventy five"]),
    (Word::Small(80), &["eighty", "achtzig"]),
    (Word::Small(90), &["ninety", "neunzig"]),
    (Word::Not(NO_LIFE), &["shelf life", "storage life", "lagerfähigkeit", "haltbarkeit", "warranty", "warranties", "guarantee", "garantie", "gewährleistung", "old", "ago", "experience", "of experience", "in business", "been in business"]),
    (Word::Decades, &["decade", "decades", "jahrzehnt", "jahrzehnte", "jahrzehnten", "décennie", "décennies", "decennia", "decennium"]),
    (Word::Years, &["ans", "années", "jaar", "jaren", "år", "año", "años", "anni", "years", "year", "yrs", "yr", "y", "yo", "a", "jahre", "jahren", "jahr", "j"]),
    // Threads and sizes.
    (Word::M, &["m"]),
    (Word::Times, &["x", "by"]),
    (Word::Series("UNC"), &["unc", "nc", "unrc", "coarse", "coarse thread", "coarse thd", "coarse thrd", "regelgewinde"]),
    (Word::Series("UNF"), &["unf", "nf", "unrf", "fine", "fine thread", "fine thd", "fine thrd", "fine pitch", "feingewinde", "fein"]),
    (Word::Series("UNEF"), &["unef", "nef", "unref", "extra fine", "extra fine thread"]),
    (Word::Series("UN"), &["un", "8un", "8 un", "unr", "8n"]),
    (Word::Series("UNS"), &["uns", "unrs"]),
    (Word::Foreign, &["bsw", "bsf", "bspp", "bspt", "bsp", "npt", "nptf", "ba", "whitworth", "acme", "trapezoidal", "trapez", "pg", "rohrgewinde", "pipe thread", "metric fine pipe"]),
    (Word::Across, &["pipe", "id", "i d", "od", "o d", "nb", "tube", "rohr", "across flats", "a f", "af"]),
    (Word::Of(THREAD_LENGTH), &["thread length", "threads length", "length of threads", "thd lg", "tl", "threaded portion", "thread portion", "threaded part", "threaded section", "thrd length", "thread len", "gewinde länge", "thd length", "length of thread", "threaded length", "thread lg", "gewindelänge", "gewindelaenge"]),
    (Word::Of("a zone of the part: its coat is judged for the whole part; agree with the plater what is kept free"), &["top", "bottom"]),
    (Word::Of("the grip is not asked"), &["grip", "grip length", "klemmlänge", "klemmlaenge"]),
    (Word::Of("the wall of a pipe is not asked"), &["sch", "schedule"]),
    (Word::Of(WIDTH), &[
        "sw", "schlüsselweite", "inside", "outside", "inside diameter", "inside dia", "inside width", "outside diameter", "outside dia", "inner diameter", "inner dia", "outer diameter", "outer dia", "inside hex",
        "eye inside dia", "eye dia", "eye diameter", "head height", "head diameter", "head dia", "kopfhöhe", "kopfhoehe", "leg", "legs", "leg length", "wide", "breit", "wall",
    ]),
    (Word::Of(YIELD), &["yield", "yield strength", "yield point", "streckgrenze", "dehngrenze", "fließgrenze", "fliessgrenze", "elastizitätsgrenze", "limite élastique", "limite elastique", "límite elástico", "elastic limit", "vloeigrens", "rekgrens", "proof strength", "proof load", "proof stress", "prüfkraft"]),
    (Word::Diameter, &["dia", "diameter", "durchmesser", "ø", "diam"]),
    (Word::Long, &["longueur", "longueurs", "longitud", "largo", "lunghezza", "length", "long", "lg", "l", "len", "lang", "länge", "laenge", "lengte"]),
    (Word::Pitch, &["pitch", "steigung"]),
    (Word::PerInch, &["tpi", "t p i", "threads per inch", "thds per inch"]),
    (Word::Length("mm"), &["mm", "millimetre", "millimetres", "millimeter", "millimeters"]),
    (Word::Length("in"), &["in", "inch", "inches", "ins", "zoll"]),
    (Word::Length("ft"), &["ft", "feet", "foot"]),
    (Word::Length("cm"), &["cm"]),
    (Word::Length("m"), &["metre", "metres", "meter", "meters", "mtr"]),
    (Word::OfCoat("µm"), &["µm", "μm", "um", "micron", "microns", "micra", "micras", "micrones", "mikron", "my", "µ", "μ"]),
    (Word::OfCoat("mil"), &["mil", "mils"]),
    (Word::OfCoat("g/m²"), &["g m2", "g m²", "g qm", "gsm", "gr m2", "gr m²", "grams m2", "g per m2", "g per m²", "g per sq m", "g sq m"]),
    (Word::OfCoat("oz/ft²"), &["oz ft2", "oz ft²", "oz sq ft", "oz per sq ft", "oz sqft", "oz square foot", "oz per square foot", "oz per ft2", "oz per ft²", "osf"]),
    (Word::Measure("a weight on a length or an area? A coat is asked for by its class or its thickness"), &["g m", "oz ft"]),
    (Word::Weight, &["weight", "wt", "gewicht", "net weight", "net wt", "gross weight", "gross wt", "total weight", "total wt", "total net weight", "total gross weight", "weight total", "order weight", "lot weight", "gesamtgewicht", "nettogewicht", "bruttogewicht", "gewicht gesamt", "gewicht netto", "gewicht brutto"]),
    (Word::WeightOfOne(WEIGHT_OF_PIECE), &["unit weight", "unit wt", "bolt weight", "nut weight", "washer weight", "schraubengewicht", "piece weight", "piece wt", "weight piece", "weight pc", "weight per piece", "weight per pc", "weight per unit", "weight per bolt", "weight per nut", "weight of a piece", "weight of one", "weight of one piece", "weight each", "weight ea", "wt piece", "wt pc", "wt per pc", "wt per piece", "wt each", "wt ea", "each weighs", "each weighing", "weighing each", "stückgewicht", "stueckgewicht", "einzelgewicht", "gewicht je stück", "gewicht pro stück", "gewicht stück", "gewicht je stk", "gewicht stk", "stückmasse"]),
    (Word::WeightOfOne(WEIGHT_OF_BOX), &["box weight", "weight box", "weight per box", "weight per carton", "weight per bag", "weight per keg", "weight per pallet", "carton weight", "bag weight", "keg weight", "pallet weight", "kartongewicht", "palettengewicht", "gewicht je karton", "gewicht pro karton", "gewicht karton", "gewicht je palette"]),
    (Word::Mass("lb"), &["lb", "lbs", "pound", "pounds"]),
    (Word::Mass("kg"), &["kg", "kgs", "kilo", "kilos"]),
    (Word::Mass("t"), &["t", "tonne", "tonnes"]),
    (Word::Measure("a weight of this unit is not taken: write kg, lb or pieces"), &["g", "ton", "tons", "cwt", "pfund"]),
    (Word::Measure("strength is asked for by a grade, a hardness, MPa or ksi"), &["kn", "gpa", "kp mm2", "kp mm²", "kgf mm2", "kgf mm²", "dan mm2", "dan mm²"]),
    (Word::Scale("MPa"), &["mpa", "n mm", "n mm2", "n mm²", "nmm", "nmm2"]),
    (Word::Scale("ksi"), &["ksi"]),
    (Word::Scale("psi"), &["psi"]),
    (Word::Measure(HOURS), &["h", "hr", "hrs", "hours", "hour", "std", "stunden", "hours salt spray", "h salt spray", "hrs salt spray", "hour salt spray", "h nss", "h sst", "hours nss", "h salzsprühtest", "h salzsprühnebeltest"]),
    (Word::Not(HOURS), &["no red rust", "no white rust", "red rust", "white rust", "to red rust", "to white rust", "rotrost", "weißrost", "salt spray", "nss", "salt spray test", "salzsprühtest", "salzsprühnebel", "astm b117"]),
    (Word::Measure("a distance of what? Write from the sea, or the category"), &["km", "kms", "kilometre", "kilometres", "kilometer", "kilometers", "mile", "miles", "meile", "meilen"]),
    (Word::Measure(MONTHS), &["months", "month", "mths", "mth", "monate", "monaten", "monat", "maanden", "maand", "mois", "meses"]),
    (Word::Measure(EXTRA), &["weken", "dagen", "semaines", "semaine", "semanas", "semana", "jours", "jour", "días", "dias", "%", "percent", "days", "day", "weeks", "week", "wks", "wk", "tage", "wochen", "woche", "nm", "ftlb", "ft lb"]),
    (Word::Scale("HRC"), &["hrc", "rc"]),
    (Word::Scale("HV"), &["hv", "hv10", "hv30", "vickers", "dph", "vhn"]),
    (Word::Scale("HB"), &["hb", "hbw", "bhn", "brinell"]),
    (Word::Scale("HRB"), &["hrb", "rb"]),
    (Word::Degrees("°C"), &["c", "degc", "deg c", "degrees c", "celsius", "degrees celsius", "grad c", "grad celsius"]),
    (Word::Degrees("°F"), &["f", "degf", "deg f", "degrees f", "fahrenheit", "degrees fahrenheit"]),
    // What binds.
    (Word::With, &["con", "met", "avec", "with", "w", "c w", "cw", "incl", "including", "include", "includes", "complete with", "supplied with", "fitted with", "mit", "inkl", "inklusive", "samt"]),
    (Word::Without, &["sin", "weder", "sans", "geen", "without", "w o", "wo", "ohne", "w out", "with out", "zonder", "senza", "utan", "uden", "ex", "minus", "omit", "omitting", "delete", "supplied without", "supply without", "delivered without", "comes without", "not supplied with", "not including", "not incl of", "not inclusive of", "not fitted with", "not complete with", "nicht mit", "entfall", "less", "excl", "excluding", "no", "not", "non", "except", "kein", "keine", "keinen", "nicht", "nie", "never", "neither", "avoid", "don t", "dont", "do not", "do not use", "don t use", "doesn t", "does not", "must not", "must not be", "mustn t", "may not", "may not be", "shall not", "shall not be", "should not", "should not be", "shouldn t", "can not", "can not be", "cannot", "cannot be", "can t", "won t", "will not", "not to be", "other than", "anything but", "instead of", "rather than", "in place of", "in lieu of", "to replace", "zum ersatz von", "ersatz für", "als ersatz für", "far from", "away from", "remote from", "fern von", "weit weg von", "abseits von", "anstatt", "statt", "anstelle von", "keinesfalls", "replace", "replaces", "replacing", "ersetzt", "au lieu de", "au lieu d", "à la place de", "plutôt que", "in plaats van", "en lugar de", "en vez de", "invece di", "im gegensatz zu", "sauf", "hormis", "behalve", "excepto", "außer", "ausser", "no queremos", "no quiero", "no quiere", "no desea", "no deseamos", "no aceptamos", "no acepta", "no usar", "no utilizar", "no permite", "no admite", "under no circumstances", "on no account", "by no means", "auf keinen fall", "in keinem fall", "unter keinen umständen", "in geen geval", "en aucun cas", "en ningún caso", "de ninguna manera", "with the exception of", "with exception of", "mit ausnahme von", "à l exception de", "met uitzondering van", "con excepción de", "we are against", "i am against", "everything but", "all but", "except for", "apart from"]),
    (Word::Was, &["was", "was previously", "used to be", "once was", "had been", "previously", "formerly", "currently", "früher", "bisher", "bislang", "derzeit"]),
    (Word::Instead, &["to be replaced by", "to be replaced with", "replaced by", "replaced with", "ersetzt durch", "zu ersetzen durch", "change to", "changed to", "change it to", "change them to", "changing to", "switch to", "switched to", "switching to", "customer now wants", "now wants", "now want", "umstellen auf", "umgestellt auf", "künftig", "jetzt neu"]),
    (Word::Excluded, &["not incl", "not inc", "niet nodig", "niet gewenst", "niet toegestaan", "niet inbegrepen", "pas nécessaire", "non requis", "not inclusive", "not req", "not reqd", "not req d", "not necessary", "not supplied", "not furnished", "not provided", "not ordered", "not in scope", "out of scope", "not in contract", "not part of this order", "not part of the order", "not part of order", "not on this order", "not with this order", "not applicable", "nic", "n i c", "n r", "n a", "omitted", "deleted", "separate line", "separate order", "separate item", "as separate line", "on separate line", "on a separate line", "on another line", "ordered separately", "separately ordered", "quoted separately", "purchased separately", "nicht erf", "nicht erforderlich", "nicht nötig", "nicht notwendig", "nicht benötigt", "nicht gebraucht", "nicht enthalten", "nicht dabei", "nicht inkl", "nicht inklusive", "nicht inbegriffen", "nicht mitliefern", "nicht mitgeliefert", "nicht im lieferumfang", "nicht lieferumfang", "nicht bestellt", "nicht gewollt", "entfallen", "entfällt", "entf", "separat bestellt", "extra bestellt", "gestrichen", "not allowed", "not permitted", "not acceptable", "not accepted", "not wanted", "not required", "not needed", "not included", "not used", "in stock", "already in stock", "are in stock", "is in stock", "on hand", "already on hand", "vorhanden", "bereits vorhanden", "am lager", "auf lager", "not possible", "not be possible", "not be allowed", "not be permitted", "not feasible", "not doable", "not practicable", "not available", "not suitable", "can t be done", "cannot be done", "can not be done", "impossible", "nicht möglich", "nicht moeglich", "nicht machbar", "nicht gestattet", "nicht geeignet", "niet mogelijk", "niet toegestaan", "nicht erlaubt", "nicht zulässig", "nicht gewünscht", "none", "keine davon"]),
    (Word::Refused, &["to be rejected", "must be rejected", "get rejected", "gets rejected", "will get rejected", "will be returned", "are returned", "will be sent back", "will be scrapped", "are scrapped", "will be refused", "werden abgelehnt", "zurückgewiesen", "werden zurückgewiesen", "wird zurückgewiesen", "is rejected", "are rejected", "will be rejected", "shall be rejected", "refused", "is refused", "was refused", "abgelehnt", "wird abgelehnt", "geweigerd", "refusé", "refusée", "refusés", "refusées", "prohibited", "forbidden", "excluded", "unacceptable", "unsuitable", "inadmissible", "disallowed", "banned", "avoided", "to be avoided", "ruled out", "out of the question", "off the table", "no option", "no go", "a no go", "no good", "not good", "not good enough", "undesirable", "unwanted", "won t do", "will not do", "does not work", "doesn t work", "do not work", "will not work", "won t work", "against the spec", "against spec", "against the specification", "against the drawing", "contrary to spec", "contrary to the spec", "geht nicht", "kommt nicht infrage", "lehnen wir ab", "lehnt der kunde ab", "verboten", "untersagt", "ausgeschlossen", "unzulässig", "ungeeignet", "unerwünscht", "zu vermeiden", "vermeiden", "vermieden", "keine option", "scheidet aus", "tabu", "verboden", "uitgesloten", "ongeschikt", "ongewenst", "te vermijden", "geen optie", "interdit", "interdite", "interdits", "interdites", "exclu", "exclue", "exclus", "exclues", "proscrit", "proscrite", "à éviter", "à proscrire", "hors de question", "ne convient pas", "ne conviennent pas", "ne va pas", "pas une option", "prohibido", "prohibida", "prohibidos", "prohibidas", "proibido", "proibida", "vietato", "vietata", "excluido", "excluida", "no permitido", "no permitida", "no permitidos", "no permitidas", "no admitido", "no admitida", "no aceptado", "no se permite", "no se admite", "no se acepta", "no debe usarse", "no debe utilizarse", "non autorisé", "non autorisée", "non autorisés", "non autorisées", "non admis", "non admise", "non permis", "non permise", "non souhaité", "non souhaitée", "non accepté", "non acceptée", "niet mogen"]),
    (Word::Taken, &["used", "applied", "employed", "desired", "wished", "wished for", "considered", "chosen", "selected", "supplied", "offered", "feasible", "suitable", "practicable", "practical", "an option", "option", "the option", "an alternative", "appropriate", "advisable", "recommended", "approved", "tolerated", "admissible", "wanted", "required", "needed", "requested", "asked for", "called for", "taken", "verwendet", "angewendet", "angewandt", "eingesetzt", "benutzt", "gewünscht", "gewollt", "gewählt", "erwünscht", "vorgesehen", "zugelassen", "akzeptiert", "angenommen", "genehmigt", "freigegeben", "geeignet", "eine option", "machbar", "gestattet", "in frage", "infrage", "in betracht", "gebruikt", "toegepast", "gewenst", "geaccepteerd", "een optie", "optie", "geschikt", "utilisé", "utilisée", "utilisés", "utilisées", "employé", "employée", "appliqué", "appliquée", "autorisé", "autorisée", "autorisés", "autorisées", "permis", "permise", "souhaité", "souhaitée", "voulu", "voulue", "une option", "usado", "usada", "utilizado", "utilizada", "permitido", "permitida", "admitido", "admitida", "aceptado", "aceptada", "una opción", "opción"]),
    (Word::Wish, &["want", "wants", "wish", "wish for", "wishes", "like", "likes", "need", "needs", "use", "uses", "using", "accept", "accepts", "accepting", "allow", "allows", "permit", "permits", "require", "requires", "take", "takes", "specify", "specifies", "apply", "offer", "quote", "supply", "send", "buy", "approve", "approves", "recommend", "recommends", "choose", "select", "consider", "prefer", "prefers", "desire", "desires", "tolerate", "tolerates", "go for", "care for", "ask for", "keen on", "happy with", "fond of", "in favour of", "in favor of", "agree to", "agree with", "verwenden", "einsetzen", "anwenden", "benutzen", "anbieten", "gebruiken", "toepassen", "aanbieden", "utiliser", "utilisez", "employer", "appliquer", "proposer", "queremos", "quiero", "quiere", "desea", "deseamos", "aceptamos", "acepta", "usar", "utilizar", "permite", "admite", "se permite", "se admite", "se acepta", "ofrecer"]),
    (Word::Modal, &["must", "shall", "should", "may", "might", "can", "could", "will", "would", "do", "does", "did", "was", "were", "has", "have", "darf", "dürfen", "duerfen", "kann", "können", "soll", "sollen", "sollte", "muss", "müssen", "ist", "sind", "wird", "werden", "kommt", "kommen", "mag", "mogen", "moet", "moeten", "wordt", "zal", "est", "sont", "doit", "doivent", "peut", "peuvent", "ne", "n", "n est", "n a", "n ont", "debe", "deben", "puede", "pueden"]),
    (Word::Negation, &["not", "never", "no longer", "under no circumstances", "on no account", "nicht", "nicht mehr", "nie", "niemals", "keinesfalls", "auf keinen fall", "niet", "niet meer", "nooit", "pas", "jamais", "nunca", "cannot", "isn t", "aren t", "wasn t", "weren t", "don t", "doesn t", "didn t", "won t", "wouldn t", "can t", "couldn t", "shouldn t", "mustn t", "mayn t", "needn t", "shan t", "isnt", "arent", "wasnt", "werent", "dont", "doesnt", "didnt", "wont", "wouldnt", "cant", "couldnt", "shouldnt", "mustnt", "no debe", "no deben", "no puede", "no pueden", "no se", "no es", "no son", "no está", "no están"]),
    (Word::ByOthers, &["supplied by client", "supplied by customer", "supplied by owner", "supplied by contractor", "by client", "by owner", "by contractor", "kundenseits", "kundenseitig", "werden beigestellt", "beigestellt", "by others", "bauseits", "by customer", "supplied by others", "free issue", "by the customer", "by our customer", "by the client", "by third party", "by third parties", "by a third party", "on site by others", "durch andere", "durch dritte", "durch den kunden", "door derden", "door anderen", "door klant", "par d autres", "par des tiers", "par le client"]),
    (Word::Or, &["then", "dann", "puis", "anders", "of anders", "otherwise", "or otherwise", "else", "sonst", "ansonsten", "or", "ou", "nor", "oder", "noch", "or else", "as alternative", "as an alternative", "if not possible", "or if not possible", "if that is not possible", "or if that is not possible", "if it is not possible", "if not available", "or if not available", "if not feasible", "if not suitable", "if unavailable", "if impossible", "failing that", "as second choice", "falls nicht möglich", "wenn nicht möglich", "ersatzweise", "si pas possible", "sinon", "indien niet mogelijk", "alternatively", "alternativ", "bzw", "beziehungsweise", "either or"]),
    (Word::Preferred { in_front: true }, &["preferably", "prefer", "ideally", "bevorzugt", "vorzugsweise", "möglichst", "nach möglichkeit", "bij voorkeur", "liefst"]),
    (Word::Preferred { in_front: false }, &["preferred", "is preferred", "preferable", "if possible", "where possible", "when possible", "wherever possible", "whenever possible", "if available", "where available", "if feasible", "first choice", "1st choice", "as first choice", "first preference", "wenn möglich", "falls möglich", "wo möglich", "erste wahl", "indien mogelijk", "zo mogelijk", "si possible", "de préférence", "préféré", "préférée"]),
    (Word::Acceptable, &["acceptable", "accepted", "is acceptable", "also acceptable", "is also acceptable", "ok", "okay", "also ok", "is ok", "is also ok", "will do", "will also do", "possible", "also possible", "is possible", "also fine", "is fine", "allowed", "also allowed", "permitted", "also permitted", "permissible", "as fallback", "as a fallback", "second choice", "2nd choice", "second preference", "zulässig", "auch zulässig", "erlaubt", "möglich", "auch möglich", "akzeptabel", "auch ok", "geht auch", "zweite wahl", "toegestaan", "mogelijk", "ook mogelijk", "mag ook", "acceptabel", "accepté", "acceptée", "acceptés", "acceptées", "admis"]),
    (Word::Polite, &["brauche", "wir brauchen", "prijs", "prijs voor", "graag prijs voor", "nodig", "wij hebben nodig", "necesito", "necesitamos", "precio", "precio de", "prix pour", "prix de", "besoin de", "nous avons besoin de", "please supply", "bitte liefern", "gelieve", "gelieve aan te bieden", "gelieve te leveren", "graag", "graag offerte", "graag offerte voor", "offerte", "aanvraag", "aanbieding", "bonjour", "merci", "merci de", "merci de chiffrer", "veuillez", "veuillez chiffrer", "veuillez nous chiffrer", "devis", "demande de prix", "svp", "s il vous plaît", "hola", "por favor", "rogamos", "cotizar", "cotización", "presupuesto", "guten tag", "hallo", "moin", "wir bitten um", "wir bitten um angebot", "bitte um angebot", "wir benötigen", "beste", "with reference to", "with regard to", "with kind regards", "with best regards", "with thanks", "mit bezug auf", "mit der bitte um", "mit freundlichen grüßen", "mit besten grüßen", "please", "pls", "plz", "thanks", "thank you", "thx", "bitte", "danke", "quote", "quotation", "asap", "urgent", "urgently", "want", "wants", "like", "send", "supply", "offer", "require", "requires", "request", "requesting", "ordering", "buy", "looking", "cheers", "regards", "hello", "hi", "dear", "brauchen", "benötigen", "anfrage", "angebot", "bestellen", "dringend", "change", "now", "either", "entweder", "jetzt", "delay", "delays", "further delay", "any delay", "fail", "later", "problem", "problems", "eilig", "eile", "verzug", "verzögerung", "dringlich"]),
    (Word::And, &["et", "en", "and", "plus", "und", "u", "n"]),
    (Word::Label("it marks the order"), &["mat nr", "mat no", "material no", "material nr", "material number", "materialnummer", "material nummer", "item code", "stock code", "article", "article no", "artikelnr", "artikelnummer", "artikelnummer nr", "ref no", "réf", "référence", "referencia", "cust po", "customer po", "bestelnr", "bestelnummer", "ordernummer", "commande", "commande no", "kundennr", "kunden nr", "cat no", "catalog no", "drawing no", "drawing number", "dwg no", "zeichnungsnr", "zeichnungs nr", "tekening", "plan no", "vendor", "vendor no", "part", "rfq", "enquiry", "inquiry", "tool", "net", "wk", "week", "kw", "due", "calendar week", "section", "detail", "grid", "grid line", "page", "po", "p o", "order", "order no", "po no", "item", "itm", "pos", "position", "line", "dwg", "drawing", "drg", "zeichnung", "part no", "part number", "pn", "p n", "ref", "reference", "nr", "lot", "lot no", "heat", "job", "rev", "art", "artikel", "artikel nr", "art nr", "best nr", "bestellung", "bestell nr", "auftrag", "project", "projekt", "quote no", "sku", "tel", "phone", "fax"]),
    (Word::PerTime, &["a week", "per month", "per year", "per annum", "per week", "p a", "a month", "a year", "monthly", "yearly", "weekly", "annually", "pro jahr", "pro monat", "pro woche", "im jahr", "im monat", "jährlich", "monatlich"]),
    (Word::Yearly, &["min qty", "minimum qty", "min quantity", "minimum quantity", "weekly", "monthly", "yearly", "annual usage", "annual volume", "annual qty", "annual quantity", "annual requirement", "yearly usage", "eau", "moq", "min order qty", "minimum order quantity", "jahresbedarf", "jahresmenge", "mindestmenge", "mindestbestellmenge", "on stock", "stock"]),
    (Word::Label("the colour of paint is not judged"), &["ral", "ncs"]),
    (Word::Price, &["per", "pro", "price", "preis", "kg price", "price of", "price per", "preis pro", "preis je"]),
    (Word::Money, &["cents", "cent", "usd", "eur", "gbp", "chf", "dollar", "dollars", "euro"]),
    (Word::Least, &["no less than", "not less than", "not thinner than", "no thinner than", "not under", "never less than", "must not be less than", "may not be less than", "shall not be less than", "cannot be less than", "under no circumstances less than", "do not go under", "do not go below", "reject under", "reject below", "nicht weniger als", "nicht dünner als", "nicht unter", "nicht unterschreiten", "min", "minimum", "at least", "mind", "mindestens"]),
    (Word::NoMore, &["or less", "or thinner", "must not be exceeded", "not to be exceeded", "shall not be exceeded", "may not be exceeded", "or under", "or below", "oder weniger", "oder darunter", "nicht überschreiten", "nicht übersteigen", "nicht überschritten werden"]),
    (Word::Most, &["max", "maximum", "at most", "up to", "höchstens", "bis zu", "no more than", "nor more than", "not more than", "no thicker than", "not thicker than", "less than", "not over", "not above", "not beyond", "never above", "never over", "nicht oberhalb", "not higher than", "no higher than", "nicht höher als", "not to exceed", "not exceed", "not exceeding", "must not exceed", "shall not exceed", "may not exceed", "don t exceed", "do not exceed", "limited to", "never thicker than", "may not be thicker than", "must not be thicker than", "shall not be thicker than", "must not be more than", "shall not be more than", "must not be over", "never more than", "upper limit", "maxi", "maximal", "hoogstens", "maximale", "maximaler", "höchstdicke", "weniger als", "nicht über", "nicht mehr als", "nicht dicker als", "darf nicht dicker sein als"]),
    (Word::Publisher, &["astm", "asme", "ansi", "iso", "din", "en", "bs", "nf", "uni", "jis", "gb", "as", "aashto", "csa", "ifi", "nas", "nzs", "mil", "vdi", "sn", "dast"]),
    (Word::Filler, &["must mate with", "must mate w", "to mate w", "mate with", "mates with", "must suit", "must fit", "pour", "para", "por perno", "par tige", "par goujon", "per draadeind", "voor", "por espárrago", "per stuk", "per bout", "par boulon", "par vis", "par pièce", "pro schraube", "pro stück", "je schraube", "je stück", "por tornillo", "por pieza", 
        "of", "to", "into", "against", "op", "in service for", "bis", "between", "zwischen", "the", "an", "for", "per set", "each set", "per", "at", "to spec", "spec", "acc", "according to", "acc to", "in accordance with", "iaw", "as per", "to suit", "suit", "on", "be", "is", "are", "finish", "finished", "thick", "thk", "thickness", "coat", "local", "lokal", "örtlich", "at any point", "at one place", "dick", "dicke", "schichtdicke", "schicht", "dft", "coating", "coated", "steel", "steels", "material", "mat", "matl", "carbon steel",
        "hardness", "core", "core hardness", "kern", "tensile", "tensile strength", "uts", "rm", "zugfestigkeit", "kernhärte", "härte", "haerte", "size", "thread", "threads", "gewinde", "approx", "about", "ca", "circa", "exactly", "life", "service life", "design life", "lifetime", "lasting", "last",
        "lebensdauer", "schutzdauer", "durability", "cat", "category", "corrosivity", "corrosivity category", "corrosion", "korrosivität", "korrosivitätskategorie", "environment", "atmosphere", "area", "use", "location", "place", "site", "exposure", "from", "from a", "nach", "gem", "gemäß", "gemaess", "für", "fuer", "im", "aus", "der", "die", "das", "den", "the same", "all", "both", "parts", "part", "fasteners", "fastener",
        "under head", "under the head", "under bolt head", "exposure class", "corrosion class", "corrosivity class", "corrosion category", "expositionsklasse", "korrosivitätskategorie", "korrosionskategorie", "t1", "installed", "stored", "kept", "mounted", "gelagert", "montiert", "eingebaut", "used", "von", "vom", "auf", "zu", "zum", "zur", "am", "within", "one end", "on one end", "at one end", "one end only", "one side", "on one side", "an einem ende", "einseitig", "under", "to fit", "to go under", "to go on", "to go with", "to match", "passend für", "passend zu", "passend", "unter", "suitable for", "matching", "to mate with", "for use with", "fitting", "und zwar", "bei", "beschichtet", "oberfläche", "stahl", "wanted", "only", "nur", "exclusively", "solely", "ausschließlich", "required", "req", "reqd", "needed", "as", "in", "an", "we", "i", "us", "our",
    ]),
    // Parts: adjectives and nouns; KINDS says which make a part.
    (Part("hex"), &["hexagonales", "hex", "hexagon", "hexagonal", "hx", "hxgn", "sechskant", "6kt", "6 kt", "skt"]),
    (Part("head"), &["head", "headed", "hd", "hds"]),
    (Part("bolt"), &["perno", "pernos", "bout", "bouten", "boulon", "boulons", "bolt", "bolts", "blt", "blts", "bolzen", "blot", "blots", "botl", "botls", "bolst"]),
    (Part("screw"), &["vis", "schroef", "schroeven", "screw", "screws", "scr", "scrs", "scrw"]),
    (Part("schraube"), &["tornillo", "tornillos", "schraube", "schrauben", "schr", "shr"]),
    (Part("nut"), &["tuerca", "tuercas", "moer", "moeren", "écrou", "écrous", "ecrou", "ecrous", "nut", "nuts", "mutter", "muttern", "mu"]),
    (Part("washer"), &["arandela", "arandelas", "arandela plana", "arandelas planas", "washer", "onderlegring", "onderlegringen", "volgring", "volgringen", "ringen", "rondel", "rondellen", "sluitring", "sluitringen", "rondelle", "rondelles", "rondelle plate", "rondelles plates", "washers", "wahser", "wahsers", "washr", "washrs", "wshr", "wshrs", "wsr", "scheibe", "scheiben", "u scheibe", "u scheiben", "unterlegscheibe", "unterlegscheiben", "unterlagscheibe", "unterlagscheiben", "beilagscheibe", "beilagscheiben", "us scheibe"]),
    (Part("cap"), &["cap"]),
    (Part("heavy"), &["heavy", "hvy"]),
    (Part("heavy hex"), &["hh", "heavy hex", "hvy hex", "heavy hexagon"]),
    (Part("flat"), &["flat", "fl"]),
    (Part("plain"), &["plain"]),
    (Part("round"), &["round", "rd"]),
    (Part("socket"), &["socket", "soc", "sckt", "allen", "innensechskant", "hex socket", "hexagon socket", "inbus"]),
    (Part("structural"), &["structural", "struct", "struc", "structurals"]),
    (Part("structural bolt"), &["structural bolt", "structural bolts", "shb"]),
    (Part("full-thread"), &["full thd", "full thrd", "fully thd", "ft", "full thread", "fully threaded", "full threaded", "f t", "fullthread", "all thread bolt", "vollgewinde", "mit vollgewinde"]),
    (Part("part-thread"), &["partial thread", "partially threaded", "part thread", "half thread", "teilgewinde", "mit schaft", "schaft", "partial threaded"]),
    (Part("hex cap screw"), &["hxscr", "hexscr", "hxcapscr", "hex cap scr", "hhcs", "hcs", "hex cap", "hex cap screw", "hex cap screws", "hex head cap screw", "hex head cap screws", "hexcs"]),
    (Part("hex bolt"), &["hxblt", "hxbolt", "hexblt", "hhbolt", "hexbt", "tornillo hexagonal", "tornillos hexagonales", "tornillo cabeza hexagonal", "tornillos cabeza hexagonal", "tornillo de cabeza hexagonal", "tornillos de cabeza hexagonal", "zeskantbout", "zeskantbouten", "zeskant bout", "zeskant bouten", "vis h", "vis th", "vis à tête hexagonale", "vis tête hexagonale", "hhb", "hex bolt", "hex bolts", "hexbolt", "hexbolts", "sechskantschraube", "sechskantschrauben", "6kt schraube", "6kt schrauben", "skt schraube", "skt schrauben", "sk schraube", "sk schrauben", "6kt schr", "hexagon bolt", "hexagon bolts"]),
    (Part("hex nut"), &["hxnut", "hxnuts", "hexnt", "zeskantmoer", "zeskantmoeren", "zeskant moer", "zeskant moeren", "hn", "hns", "écrou h", "écrous h", "hex nut", "hex nuts", "hexnut", "hexnuts", "sechskantmutter", "sechskantmuttern", "6kt mutter", "6kt muttern", "skt mutter", "skt muttern", "finished hex nut", "finished hex nuts", "fhn"]),
    (Part("heavy hex nut"), &["hhn", "heavy hex nut", "heavy hex nuts", "hvy hex nut", "hvy hex nuts"]),
    (Part("socket head cap screw"), &["cilinderkop inbus", "inbus cilinderkop", "cilinderkopinbusbout", "cilinderkopinbusbouten", "inbus cilinderkopschroef", "inbus cilinderkopschroeven", "inbusbout", "inbusbouten", "vis chc", "shcs", "shc", "socket cap", "allen bolt", "allen bolts", "allen screw", "allen screws", "allen cap screw", "allen cap screws", "zylinderschraube", "zylinderschrauben", "zylinderkopfschraube", "zylinderkopfschrauben", "inbusschraube", "inbusschrauben", "innensechskantschraube", "innensechskantschrauben", "zyl schraube", "zyl schrauben", "zyl schr", "zylschr"]),
    (Part("button head socket screw"), &["bhcs", "bhscs", "bshcs", "linsenkopfschraube", "linsenkopfschrauben", "linsenflanschkopfschraube"]),
    (Part("countersunk socket screw"), &["fhcs", "fhscs", "fscs", "flat head socket", "flat head cap screw", "flat head cap screws", "flat head socket cap", "senkkopfschraube", "senkkopfschrauben", "senkschraube", "senkschrauben", "senk schr"]),
    (Part("hex head"), &["hex washer head", "hwh", "hex wshr hd"]),
    (Part("structural hex bolt"), &["stahlbauschraube", "stahlbauschrauben"]),
    (Part("button"), &["button", "btn"]),
    (Part("countersunk"), &["verzonken kop", "verzonken", "countersunk", "csk", "cntrsnk", "senkkopf"]),
    (Part("flat head"), &["flat head", "flathead", "flat hd"]),
    (Part("set screw"), &["stelbout", "stelbouten", "socket set", "socket set scr", "set scr", "set scrs", "set screw", "set screws", "setscrew", "setscrews", "grub screw", "grub screws", "grubscrew", "grubscrews", "sss", "gewindestift", "gewindestifte", "madenschraube", "madenschrauben", "socket set screw", "socket set screws", "headless set screw"]),
    (Part("hex screw"), &["hex set", "hex sets", "hexagon set", "hexagon sets", "hex hd set", "hex hd sets", "hex head set", "hex head sets", "zeskanttapbout", "zeskanttapbouten", "tapbout", "tapbouten", "hex screw", "hex screws", "hexagon screw", "hexagon screws", "hex set screw", "hex set screws", "hexagon set screw", "hexagon set screws", "tap bolt", "tap bolts", "hex tap bolt", "hex tap bolts", "hex head tap bolt"]),
    (Part("machine screw"), &["mech screw", "mech screws", "mech scr", "mech scrs", "machine screw", "machine screws", "mach screw", "mach screws", "ms screw", "phms", "pan ms", "pan head ms", "phil pan ms", "phil ms", "slotted ms", "flat head ms", "phillips pan ms", "fhms", "rhms", "pan head machine screw", "phillips machine screw"]),
    (Part("machine"), &["machine", "mach"]),
    (Part("pan"), &["pan", "pan head", "phillips", "slotted", "phil", "cheese", "torx", "fillister", "truss"]),
    (Part("tapping screw"), &["tapping screw", "tapping screws", "self tapping screw", "self tapping screws", "self tapper", "self tappers", "self tapping", "selftapping", "self tap", "sheet metal screw", "sheet metal screws", "sms", "tek screw", "tek screws", "self drilling screw", "self drilling screws", "self drilling", "self drill", "self drill screw", "self drill screws", "self driller", "self drillers", "thread cutting screw", "thread cutting screws", "blechschraube", "blechschrauben", "bohrschraube", "bohrschrauben"]),
    (Part("drywall screw"), &["drywall screw", "drywall screws", "drywall", "gypsum screw", "gypsum board screw", "gypsum board screws", "plasterboard screw", "plasterboard screws", "schnellbauschraube", "schnellbauschrauben", "trockenbauschraube", "trockenbauschrauben", "bugle head", "bugle"]),
    (Part("flange"), &["flange", "flanged", "flng", "flg", "flngd", "flansch"]),
    (Part("flange bolt"), &["hfb", "flanschschraube", "flanschschrauben", "hfhb", "hfs"]),
    (Part("flange nut"), &["hfn", "flanschmutter", "flanschmuttern"]),
    (Part("carriage"), &["carriage", "carr", "coach", "cup square", "cup head", "mushroom head", "mushroom"]),
    (Part("carriage bolt"), &["slotbout", "slotbouten", "schlossschraube", "schlossschrauben", "schloßschraube", "schloßschrauben", "flachrundschraube", "flachrundschrauben", "coach bolt", "coach bolts", "schloss schraube", "schloss schrauben", "schloß schraube", "schloß schrauben"]),
    (Part("eye"), &["eye"]),
    (Part("eye bolt"), &["oogbout", "oogbouten", "eyebolt", "eyebolts", "augenschraube", "augenschrauben"]),
    (Part("u-bolt"), &["u blt", "u blts", "u bolt", "u bolts", "ubolt", "ubolts", "rundstahlbügel", "rundstahlbuegel", "bügelschraube", "bügelschrauben"]),
    (Part("anchor"), &["anchor", "anchors", "anker", "foundation anchor", "foundation anchors"]),
    (Part("anchor rod"), &["tige d ancrage", "tiges d ancrage", "boulon d ancrage", "boulons d ancrage", "perno de anclaje", "pernos de anclaje", "varilla de anclaje", "varillas de anclaje", "ankerbout", "ankerbouten", "ankerstang", "ankerstangen", "anchor rod", "anchor rods", "anchor bolt", "anchor bolts", "foundation bolt", "foundation bolts", "ankerstange", "ankerstangen", "fundamentanker", "fundamentschraube", "fundamentschrauben", "ankerbolzen", "ankerschraube", "ankerschrauben", "holding down bolt", "holding down bolts"]),
    (Part("rod"), &["varilla roscada", "varillas roscadas", "barra roscada", "barras roscadas", "draadstang", "draadstangen", "draadeind", "draadeinden", "tige filetée", "tiges filetées", "rod", "rods", "threaded bar", "threaded bars", "all thread", "allthread", "atr", "all thread rod", "all thread rods", "gewindestange", "gewindestangen", "gewindebolzen", "studding", "threaded rod", "threaded rods", "thrd rod", "thd rod", "threadbar", "cont thread rod"]),
    (Part("bent"), &["bent", "l type", "j type", "l shaped", "j shaped"]),
    (Part("bent anchor bolt"), &["bent anchor bolt", "bent anchor bolts", "l bolt", "l bolts", "j bolt", "j bolts", "l anchor", "l anchors", "l anchor bolt", "l anchor bolts", "j anchor", "j anchors", "j anchor bolt", "j anchor bolts"]),
    (Part("threaded"), &["threaded", "thrd", "thd", "continuous"]),
    (Part("stud"), &["goujon", "goujons", "espárrago", "espárragos", "tapeind", "tapeinden", "stehbolzen", "stud", "studs", "stud bolt", "stud bolts", "studbolt", "studbolts", "fully threaded stud", "all thread stud", "all thread studs"]),
    (Part("double-end"), &["double end", "double ended", "tap end", "doppelende"]),
    (Part("double-end stud"), &["stiftschraube", "stiftschrauben"]),
    (Part("square"), &["square", "sq", "vierkant"]),
    (Part("square head"), &["square head", "square hd", "sq head", "sq hd"]),
    (Part("square head bolt"), &["vierkantschraube", "vierkantschrauben"]),
    (Part("square nut"), &["vierkantmutter", "vierkantmuttern"]),
    (Part("thin"), &["jam", "thin"]),
    (Part("thin nut"), &["jamnut", "jamnuts", "half nut", "half nuts", "flache mutter", "flache muttern", "flache sechskantmutter", "flache sechskantmuttern"]),
    (Part("coupling"), &["coupling", "couplings", "coupler", "couplers"]),
    (Part("coupling nut"), &["long nut", "long nuts", "langmutter", "langmuttern", "lange mutter", "lange muttern", "verbindungsmutter", "verbindungsmuttern"]),
    (Part("lock"), &["lock", "locking", "prevailing torque", "nylon insert", "self locking", "selbstsichernd", "selbstsichernde", "all metal"]),
    (Part("lock nut"), &["borgmoer", "borgmoeren", "nylon lock nut", "nylon lock nuts", "nylon locknut", "nylon locknuts", "nylon locking nut", "nylon locking nuts", "nylon stop nut", "nylon stop nuts", "nylon nut", "nylon nuts", "nylon insert locknut", "nylon insert locknuts", "nylon insert hex lock nut", "nylon insert hex lock nuts", "polymer insert nut", "polymer insert nuts", "nyloc type nut", "nyloc type nuts", "nylock type nut", "nylock type nuts", "nyloc type", "prevailing torque nut", "prevailing torque nuts", "prevailing torque nut with nylon insert", "prevailing torque nuts with nylon insert", "prevailing torque type nut", "prevailing torque type nuts", "sicherungsmutter mit kunststoffeinsatz", "sicherungsmuttern mit kunststoffeinsatz", "mutter mit klemmteil", "muttern mit klemmteil", "locknut", "locknuts", "lock nut", "lock nuts", "nyloc", "nylocs", "nylock", "nylocks", "nyloc nut", "nyloc nuts", "nylock nut", "nylock nuts", "nylon insert lock nut", "nylon insert lock nuts", "nylon insert nut", "nylon insert nuts", "sicherungsmutter", "sicherungsmuttern", "stoppmutter", "stoppmuttern", "stop nut", "stop nuts"]),
    (Part("spring washer"), &["rondelle ressort", "rondelles ressort", "rondelle à ressort", "rondelles à ressort", "rondelle élastique", "rondelles élastiques", "rondelle elastique", "rondelles elastiques", "rondelle grower", "rondelles grower", "arandela de presión", "arandelas de presión", "arandela presión", "arandelas presión", "arandela elástica", "arandelas elásticas", "arandela grower", "arandelas grower", "veerring", "veerringen", "split lock", "split locks", "lock washer", "lock washers", "lockwasher", "lockwashers", "split lock washer", "split lock washers", "split washer", "split washers", "spring washer", "spring washers", "spring lock washer", "spring lock washers", "spring lockwasher", "spring lockwashers", "lock washer spring", "lock washers spring", "helical spring washer", "lw", "lws", "slw", "federring", "federringe", "sprengring"]),
    (Part("conical washer"), &["conical washer", "conical washers", "conical spring washer", "conical spring washers", "belleville", "belleville washer", "belleville washers", "disc spring washer", "disc spring washers", "disc spring", "disc springs", "spannscheibe", "spannscheiben", "tellerfeder", "tellerfedern"]),
    (Part("toothed washer"), &["ext tooth lock washer", "ext tooth lock washers", "int tooth lock washer", "int tooth lock washers", "ext tooth", "int tooth", "toothed washer", "toothed washers", "toothed lock washer", "toothed lock washers", "tooth lock washer", "tooth lock washers", "internal tooth", "external tooth", "star washer", "star washers", "internal tooth lock washer", "internal tooth lock washers", "external tooth lock washer", "external tooth lock washers", "zahnscheibe", "zahnscheiben", "fächerscheibe", "fächerscheiben", "serrated washer", "serrated washers"]),
    (Part("wide washer"), &["uss washer", "uss washers", "uss flat washer", "uss flat washers", "fender", "fenders", "fender washer", "fender washers", "penny washer", "penny washers", "large washer", "large washers", "wide washer", "wide washers", "karosseriescheibe", "karosseriescheiben", "großflächenscheibe"]),
    (Part("narrow washer"), &["sae washer", "sae washers", "sae flat washer", "sae flat washers", "narrow washer", "narrow washers"]),
    (Part("washer"), &["flat washer", "flat washers", "fl washer", "fw", "fws", "flt washer", "plain washer", "plain washers", "hardened washer", "hardened washers", "hardened flat washer", "hardened flat washers", "round washer", "round washers", "structural washer", "structural washers", "flatwasher", "flatwashers", "flt wshr"]),
    (Part("retaining ring"), &["retaining ring", "retaining rings", "external retaining ring", "external retaining rings", "circlip", "circlips", "shaft retaining ring", "shaft retaining rings", "shaft circlip", "shaft circlips", "external circlip", "external circlips", "sicherungsring", "sicherungsringe", "wellensicherungsring", "seegerring", "seegerringe"]),
    (Part("internal ring"), &["internal retaining ring", "internal retaining rings", "internal circlip", "internal circlips", "bore retaining ring", "bore retaining rings"]),
    (Part("snap ring"), &["snap ring", "snap rings", "sprengringe"]),
    (Part("cotter pin"), &["cotter pin", "cotter pins", "split pin", "split pins", "cotter", "cotters", "splint", "splinte"]),
    (Part("spring pin"), &["spring pin", "spring pins", "roll pin", "roll pins", "slotted spring pin", "slotted spring pins", "tension pin", "tension pins", "spannstift", "spannstifte", "spannhülse", "spannhülsen"]),
    (Part("twist-off bolt"), &["tcb", "tcbs"]),
    (Part("twist-off"), &["tc", "t c", "tension control", "tension controlled", "twist off"]),
    (Part("external"), &["external", "for shaft", "for shafts", "for a shaft"]),
    (Part("internal"), &["internal", "for bore", "for bores", "for a bore"]),
    (Part("ring"), &["ring", "rings"]),
    (Part("pin"), &["pin", "pins", "stift", "stifte"]),
    (Part("uss"), &["uss"]),
    // The high-strength structural bolt with a large head (EN 14399-4), in German trade.
    (Part("HV"), &["hv schraube", "hv schrauben", "hv bolt", "hv bolts"]),
    (Part("HR bolt"), &["boulon hr", "boulons hr", "hr bolt", "hr bolts", "hr schraube", "hr schrauben", "hr assembly", "hr assemblies"]),
    (Part("HR nut"), &["hr nut", "hr nuts"]),
    (Part("HR washer"), &["hr washer", "hr washers"]),
    // Screws that form their own thread, in wood, metal or concrete.
    (Part("lag"), &["lag"]),
    (Part("lag screw"), &["houtdraadbout", "houtdraadbouten", "lags", "coach screw", "coach screws", "schlüsselschraube", "schlüsselschrauben", "schluesselschraube", "schluesselschrauben", "sechskantholzschraube", "sechskantholzschrauben", "6kt holzschraube", "6kt holzschrauben", "hex lag", "hex lags"]),
    (Part("wood"), &["wood", "holz", "timber frame"]),
    (Part("wood screw"), &["woodscrew", "woodscrews", "holzschraube", "holzschrauben"]),
    (Part("chipboard"), &["chipboard", "particle board", "particleboard", "deck", "decking"]),
    (Part("chipboard screw"), &["spanplattenschraube", "spanplattenschrauben", "terrassenschraube", "terrassenschrauben"]),
    (Part("concrete"), &["concrete", "masonry"]),
    (Part("concrete screw"), &["betonschraube", "betonschrauben"]),
    (Part("thread-forming"), &["thread forming", "thread rolling", "gewindefurchend", "gewindefurchende", "gewindefurchender"]),
    (Part("thread-forming screw"), &["gewindefurchschraube", "gewindefurchschrauben"]),
    (Part("hanger"), &["hanger"]),
    (Part("hanger bolt"), &["stockschraube", "stockschrauben"]),
    (Part("clevis"), &["clevis"]),
    (Part("parallel pin"), &["parallel pin", "parallel pins", "dowel pin", "dowel pins", "zylinderstift", "zylinderstifte"]),
    // In front of a noun: another part than the noun alone.
    (Word::Qualifier, &["chemical anchor", "resin anchor", "adhesive anchor", "guard rail", "guardrail", "crash barrier", "barrier", "toilet", "closet", "gate", "fence", "fencing", "splice", "rail", "railway", "rail joint", "fishplate", "fish plate", "pole", "pole line", "crossarm", "cross arm", "double arming", "thimble", "oval", "oval eye", "oval neck", "tower", "tank", "silo", "bin", "bucket", "bucket tooth", "tooth", "cutting edge", "wear plate", "liner", "mill liner", "liner plate", "tire", "tyre", "rim", "axle", "lug", "wheel lug", "king", "leaf spring", "center", "centre", "engine", "flywheel", "connecting rod", "con rod", "sump", "drain", "bleed", "bleeder", "license plate", "number plate", "bumper", "battery", "terminal", "bonnet", "door", "barrel", "flush", "dead", "pad", "garage", "shelf", "furniture", "bed", "cabinet", "connector", "joint connector", "cam", "roof", "roofing", "purlin", "cladding", "eave", "gutter", "solar", "ball", "draw", "drift", "spade", "bung", "pivot", "latch", "stay", "hurricane", "manway", "manhole", "ballast", "keel", "propeller", "ship", "mooring", "scaffold", "scaffolding", "formwork", "coil", "tie", "form tie", "rock", "mine", "tunnel", "segment", "pigtail", "sleeper", "mudguard", "trailer", "hitch", "tow", "saddle", "banding", "strut", "channel", "crown", "ring", "one way", "tamper proof", "tamperproof", "vandal proof", "anti theft", "rigging", "leveling", "levelling", "jack", "screw jack", "machine tool"]),
    // Parts that are not known here: named, and never read as another.
    (Part("?"), &["hsfg", "t blt", "t blts", "k nut", "k nuts", "t nut", "t nuts", "j nut", "j nuts", "u nut", "u nuts", "clips", "e clip", "e clips", "e ring", "e rings", "lifting eye", "ringschraube", "ringschrauben", "hrc bolt", "hrc bolts", "dti", "dtis", "direct tension indicator", "direct tension indicators", "load indicating", "load indicator", "wedge lock", "wedge locking", "rubber", "neoprene", "epdm", "fit", "fitted", "spline", "splined"]),
    (Part("?"), &[
        "penta", "t head", "hammer head", "cylinder head", "cyl head", "fin neck", "ribbed neck", "ribbed", "swing", "banjo", "stove", "spherical", "wave", "dished", "slotted washer", "slotted washers", "slot washer", "slot washers", "clipped", "c washer", "c washers", "panel", "conical nut", "conical nuts", "wing", "acorn", "dome", "domed", "castle", "castellated", "slotted nut", "cage", "weld", "t bolt", "t bolts", "tee bolt", "tee bolts", "hook", "shoulder", "elevator", "plow", "plough", "step", "toggle", "wheel", "track", "fish", "hub",
        "dübel", "chemical anchor", "chemical anchors", "timber", "security", "thumb", "knurled", "captive panel", "sex", "barrel nut", "speed", "push", "clip", "k lock", "keps", "kep", "12 point", "twelve point", "bi hex", "lifting", "expansion", "wedge", "sleeve", "drop in", "blind", "rivet", "rivets", "niet", "nieten", "nail", "nails", "nägel", "dowel", "dowels",
        "turnbuckle", "turnbuckles", "shackle", "shackles", "chain", "eye nut", "eye nuts", "ringmutter", "ringmuttern", "flügelmutter", "flügelmuttern", "hutmutter", "hutmuttern", "kronenmutter", "kronenmuttern", "nutenstein", "beveled", "bevelled", "bevel", "plate washer", "plate washers", "square washer", "square washers", "tab", "sealing", "bonded", "finishing", "cup", "ogee", "malleable", "shim", "thrust",
        "reduced shank", "weld stud", "shear", "hinge", "insert", "inserts", "bushing", "key", "keys", "clamp", "clamps", "bracket", "brackets", "plates", "angle", "spacer", "spacers", "spring", "springs", "hose", "hammerkopf", "hammerkopfschraube", "passschraube", "passschrauben", "dehnschraube", "dehnschrauben", "bundmutter",
    ]),
];
