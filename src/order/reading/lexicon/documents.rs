//! Documents of coats and of steels, by number.

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
    (super::OTHER_COAT, &["iso14713", "a1059", "f2674"]),
    ("its bolts are not preloaded: their own standard says the shape, their class the steel", &["en15048"]),
    ("of direct tension indicators, which are not judged here: order them by their maker's coat", &["f959", "f2437"]),
    ("it says how parts are measured or certified, and asks nothing of the coat", &["en10204", "iso10474", "iso4759", "iso6157", "iso965", "iso724", "iso262", "iso261", "iso888", "iso8992", "iso8991", "iso9001", "en1090", "din13", "din76", "din78", "din962"]),
    ("a document of structures and sheet, not of fasteners", &["a123", "a653", "a767"]),
    ("it comes with the document of the coat", &["a143", "a385", "b849", "b850", "f606", "f1940", "e376", "b499", "f1470", "b117", "iso9227", "iso9223", "iso12944", "iso9224", "iso898", "iso16047", "iso3269", "iso16426", "iso15330", "a780", "d6386"]),
];

/// The steels of ASTM that have a number, with the codes each may take.
#[rustfmt::skip]
pub static ASTM_STEELS: &[&str] = &[
    "a193", "a194", "a307", "a320", "a325", "a325m", "a354", "a437", "a449", "a453", "a490", "a490m", "a540", "a563", "a563m", "a574", "a687", "f436", "f568", "f593", "f594", "f835",
    "f837", "f844", "f879", "f912", "f1554", "f1852", "f2280", "f3043", "f3111", "f3125", "a36", "a572", "f2882", "f10", "sa193", "sa194", "sa320", "sa325", "sa449", "sa307", "sa354", "sa540", "a311",
];
