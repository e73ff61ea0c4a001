//! What the lot check asks.

use crate::calculator::{Bound, Choice, FieldAbout as Field};
use crate::lot::inspection::Characteristic;
use crate::quantity::{Shown, Unit, unit};

static STANDARDS: [Choice; 8] = [
    Choice::new("a153", "ASTM A153, hot-dip hardware"),
    Choice::new("f2329-batch", "ASTM F2329, hot-dip fasteners, one batch"),
    Choice::new("f2329-lot", "ASTM F2329, hot-dip fasteners, production lot"),
    Choice::new("iso10684", "ISO 10684, hot-dip fasteners M8 to M64"),
    Choice::new("iso1461", "ISO 1461, hot-dip articles"),
    Choice::new("b695", "ASTM B695, mechanical zinc"),
    Choice::new("iso4042", "ISO 4042, electroplated fasteners"),
    Choice::new("own", "Own limits"),
];

static A153: [Choice; 6] = [
    Choice::new("class-a", "A: castings"),
    Choice::new("class-b-1", "B-1: rolled or forged, 5/8 in thick and over, longer than 15 in"),
    Choice::new("class-b-2", "B-2: rolled or forged, under 5/8 in thick, longer than 15 in"),
    Choice::new("class-b-3", "B-3: rolled or forged, 15 in long or shorter"),
    Choice::new("class-c", "C: fasteners over 3/8 in; washers 3/16 in thick and over"),
    Choice::new("class-d", "D: fasteners of 3/8 in and under; washers under 3/16 in thick"),
];

static F2329: [Choice; 2] = [
    Choice::new("over-3-8-in", "Fasteners over 3/8 in; washers 3/16 to 1/4 in thick"),
    Choice::new("3-8-in-and-under", "Fasteners of 3/8 in and under; washers under 3/16 in thick"),
];

static ISO_1461: [Choice; 10] = [
    Choice::new("threads-over-6-mm", "Spun, threads over 6 mm"),
    Choice::new("threads-of-6-mm-and-under", "Spun, threads of 6 mm and under"),
    Choice::new("spun-3-mm-and-over", "Spun, other articles 3 mm and over"),
    Choice::new("spun-under-3-mm", "Spun, other articles under 3 mm"),
    Choice::new("steel-over-6-mm", "Not spun, steel over 6 mm"),
    Choice::new("steel-over-3-to-6-mm", "Not spun, steel over 3 to 6 mm"),
    Choice::new("steel-1-5-to-3-mm", "Not spun, steel 1.5 to 3 mm"),
    Choice::new("steel-under-1-5-mm", "Not spun, steel under 1.5 mm"),
    Choice::new("castings-6-mm-and-over", "Not spun, castings 6 mm and over"),
    Choice::new("castings-under-6-mm", "Not spun, castings under 6 mm"),
];

static B695: [Choice; 11] = [
    Choice::new("class-110", "Class 110"),
    Choice::new("class-80", "Class 80"),
    Choice::new("class-70", "Class 70"),
    Choice::new("class-65", "Class 65"),
    Choice::new("class-55", "Class 55"),
    Choice::new("class-50", "Class 50"),
    Choice::new("class-40", "Class 40"),
    Choice::new("class-25", "Class 25"),
    Choice::new("class-12", "Class 12"),
    Choice::new("class-8", "Class 8"),
    Choice::new("class-5", "Class 5"),
];

static ISO_4042: [Choice; 9] = [
    Choice::new("nominal-3", "Nominal 3 µm"),
    Choice::new("nominal-5", "Nominal 5 µm"),
    Choice::new("nominal-8", "Nominal 8 µm"),
    Choice::new("nominal-10", "Nominal 10 µm"),
    Choice::new("nominal-12", "Nominal 12 µm"),
    Choice::new("nominal-15", "Nominal 15 µm"),
    Choice::new("nominal-20", "Nominal 20 µm"),
    Choice::new("nominal-25", "Nominal 25 µm"),
    Choice::new("nominal-30", "Nominal 30 µm"),
];

static COMMAS: [Choice; 3] = [
    Choice::new("decide", "As the text shows"),
    Choice::new("decimal", "A decimal mark"),
    Choice::new("separator", "Between readings"),
];

static STAGES: [Choice; 2] = [
    Choice::new("first", "The first sample"),
    Choice::new("retest", "The retest after a failed first sample"),
];

static ROUNDINGS: [Choice; 2] = [
    Choice::new("absolute", "As they are"),
    Choice::new("limit", "Rounded to the digits of the limit (ASTM E29)"),
];

static FOUND: [Choice; 3] =
    [Choice::new("open", "Not done"), Choice::new("accept", "Accept"), Choice::new("reject", "Reject")];

static METHODS: [Choice; 4] = [
    Choice::new("magnetic", "Magnetic gauge"),
    Choice::new("strip", "Stripped and weighed"),
    Choice::new("xray", "X-ray fluorescence"),
    Choice::new("section", "Section under the microscope"),
];

static READINGS: [&Unit; 6] = [&unit::UM, &unit::MIL, &unit::MM, &unit::INCH, &unit::G_M2, &unit::OZ_FT2];
static THICKNESS: [&Unit; 4] = [&unit::UM, &unit::MIL, &unit::MM, &unit::INCH];
static PER_CENT: [&Unit; 1] = [&unit::PERCENT];

const COAT: Bound = Bound::PositiveTo(
    Shown { number: 1.0, unit: &unit::MM, decimals: 0 },
    "zinc coats on fasteners are far thinner; check the unit",
);

const fn own(name: &'static str, label: &'static str, default: &'static str) -> Field {
    Field::quantity(name, label, &THICKNESS, COAT, default).when("standard", &["own"]).optional()
}

/// The field of a characteristic.
pub(super) const fn name_of(characteristic: Characteristic) -> &'static str {
    match characteristic {
        Characteristic::Appearance => "appearance",
        Characteristic::Adhesion => "adhesion",
        Characteristic::Thread => "thread_gauge",
        Characteristic::Washers => "washers",
    }
}

const fn found(characteristic: Characteristic, label: &'static str) -> Field {
    Field::choice(name_of(characteristic), label, &FOUND, "open")
}

pub(super) static FIELDS: [Field; 30] = [
    Field::choice("standard", "Checked by", &STANDARDS, "a153"),
    Field::choice("a153", "Class", &A153, "class-c").when("standard", &["a153"]),
    Field::choice("f2329", "Size", &F2329, "over-3-8-in").when("standard", &["f2329-batch", "f2329-lot"]),
    Field::choice("iso1461", "Articles", &ISO_1461, "threads-over-6-mm").when("standard", &["iso1461"]),
    Field::choice("b695", "Class", &B695, "class-55").when("standard", &["b695"]),
    Field::choice("iso4042", "Nominal thickness", &ISO_4042, "nominal-8").when("standard", &["iso4042"]),
    own("own_mean", "Least lot mean", "50 µm"),
    own("own_article", "Least article mean", "40 µm"),
    own("own_reading", "Least single reading", ""),
    own("own_greatest", "Greatest lot mean", ""),
    Field::count("lot", "Pieces in the lot", 1, 10_000_000, "800"),
    Field::count("agreed", "Articles agreed to be measured", 1, 10_000, "")
        .optional()
        .hint("Of the order or of a sampling plan; needed where the number of the standard is not known here."),
    Field::count("allowed", "Articles that may miss", 0, 1000, "")
        .optional()
        .hint("The acceptance number of the plan; empty for none."),
    Field::readings("readings", "Readings", &READINGS, "")
        .hint("One article on a line, or articles between “;”; readings of an article between spaces. A sheet may be pasted."),
    Field::count("per_article", "Readings on each article", 1, 1000, "")
        .optional()
        .hint("To count off readings written one after the other; empty where they are written by article."),
    Field::choice("comma", "A comma between digits is", &COMMAS, "decide"),
    Field::text("columns", "Columns with readings", "")
        .optional()
        .hint("2-6, or 2, 4: where a pasted sheet does not say so by its headings."),
    Field::quantity(
        "gauge",
        "Uncertainty of the gauge",
        &THICKNESS,
        Bound::ZeroTo(
            Shown { number: 100.0, unit: &unit::UM, decimals: 0 },
            "a gauge that uncertain decides nothing",
        ),
        "",
    )
    .optional()
    .hint("Half the width of its interval; a pass by less is not decided."),
    Field::choice("stage", "These readings are", &STAGES, "first"),
    Field::choice("rounding", "Values are compared", &ROUNDINGS, "absolute")
        .hint("Rounded only where the standard or the order calls for ASTM E29."),
    Field::quantity(
        "confidence",
        "Confidence of the statement on the lot mean",
        &PER_CENT,
        Bound::Between(
            Shown { number: 50.0, unit: &unit::PERCENT, decimals: 0 },
            Shown { number: 99.9, unit: &unit::PERCENT, decimals: 1 },
            "below one half it is no statement, and nothing is certain",
        ),
        "95 %",
    ),
    Field::choice("method", "The thickness was measured by", &METHODS, "magnetic"),
    found(Characteristic::Appearance, "Appearance"),
    found(Characteristic::Adhesion, "Adhesion"),
    found(Characteristic::Thread, "Thread gauge"),
    found(Characteristic::Washers, "Washers stuck together"),
    Field::text("who", "Inspected by", "").optional(),
    Field::text("when", "Inspected on", "").optional(),
    Field::text("gauge_name", "Gauge", "").optional().hint("Its name or number."),
    Field::text("shims", "Its check on shims", "").optional().hint("What it read on which shims, before and after."),
];
