//! Orders drawn from a fixed seed: six in ten as they come in every day, the rest from all that can be
//! written; a few corners that are hardly ever drawn stand first.

use kettle_barrel::calculator::Draft;
use kettle_barrel::course::Random;
use kettle_barrel::order::{self, asked};
use kettle_barrel::part;
use kettle_barrel::site::Category;
use kettle_barrel::steel::Grade;
use kettle_barrel::thread::Thread;

const SEED: u64 = 0x7a69_6e63;

/// The first orders of the seed that the order line reads.
pub fn orders(count: usize) -> Vec<Draft> {
    let mut draw = Draw(Random::new(SEED));
    let corners = CORNERS.iter().map(|pairs| PLAIN.iter().chain(*pairs).copied().collect());
    let drawn = (0..count - CORNERS.len()).map(|at| readable(at, &mut draw));
    corners.chain(drawn).collect()
}

/// Every grade, every kind of part, every place and every class that can be asked for stands in some order.
pub fn assert_all_are_held(orders: &[Draft]) {
    let holds = |field: &str, key: &str| orders.iter().any(|order| order.get(field) == Some(key));
    for grade in Grade::ALL {
        assert!(holds("steel", grade.key()), "no order of {}", grade.name());
    }
    for kind in part::Kind::ALL {
        assert!(holds("part", kind.key()), "no order of a {kind}");
    }
    for place in Category::ALL {
        assert!(holds("place", place.key()), "no order for {}", place.key());
    }
    for class in asked::ALL {
        assert!(holds("asked", class.key), "no order asks for {}", class.key);
    }
}

/// Draws again while the order has a problem, such as a grade that does not come in the size.
fn readable(at: usize, draw: &mut Draw) -> Draft {
    loop {
        let draft = if at % 5 < 3 { usual(draw) } else { any(at, draw) };
        if order::read(&draft).is_ok() {
            return draft;
        }
    }
}

/// The draws of a seed.
struct Draw(Random);

impl Draw {
    /// By the remainder, as the kept orders were drawn.
    fn below(&mut self, end: usize) -> usize {
        (self.0.bits() % end as u64) as usize
    }

    fn one<T: Copy>(&mut self, all: &[T]) -> T {
        all[self.below(all.len())]
    }

    fn once_in(&mut self, times: usize) -> bool {
        self.below(times) == 0
    }
}

const METRIC: &[&str] = &["M6", "M8", "M10", "M12", "M16", "M20", "M24", "M30", "M36"];
const METRIC_LENGTHS: &[&str] =
    &["16 mm", "20 mm", "30 mm", "40 mm", "50 mm", "60 mm", "80 mm", "90 mm", "120 mm", "200 mm"];
const INCH: &[&str] = &[
    "1/4-20 UNC",
    "5/16-18 UNC",
    "3/8-16 UNC",
    "1/2-13 UNC",
    "5/8-11 UNC",
    "3/4-10 UNC",
    "7/8-9 UNC",
    "1-8 UNC",
];
const STRUCTURAL: &[&str] =
    &["1/2-13 UNC", "5/8-11 UNC", "3/4-10 UNC", "7/8-9 UNC", "1-8 UNC", "1 1/8-7 UNC"];
const INCH_LENGTHS: &[&str] = &["3/4 in", "1 in", "1 1/2 in", "2 in", "2 1/2 in", "3 in", "4 in", "6 in"];
const ROD_LENGTHS: &[&str] = &["4 in", "8 in", "1 m", "2 m", "3 m", "12 ft"];
const PIECES: &[&str] = &["96", "500", "1200", "5000", "20000"];
const USUAL_PLACES: &[&str] = &["C1", "C2", "C2", "C3", "C3", "C3", "C4", "C4", "C5", "CX"];
const YEARS: &[&str] = &["2 years", "5 years", "10 years", "15 years", "20 years", "25 years", "50 years"];
const HARDNESSES: &[&str] = &[
    "20 HRC", "32 HRC", "33 HRC", "34 HRC", "38 HRC", "39 HRC", "39.5 HRC", "40 HRC", "42 HRC", "45 HRC",
    "48 HRC", "51 HRC", "55 HRC", "120 HV", "200 HV", "250 HV", "300 HV", "320 HV", "322 HV", "365 HV",
    "380 HV", "390 HV", "400 HV", "435 HV", "560 HV", "230 HB", "340 HB",
];
const TEMPERS: &[&str] =
    &["200 °C", "340 °C", "380 °C", "425 °C", "440 °C", "455 °C", "480 °C", "540 °C", "620 °C"];
const BATHS: &[&str] =
    &["440 °C", "450 °C", "455 °C", "465 °C", "480 °C", "500 °C", "530 °C", "545 °C", "560 °C", "580 °C"];

/// What the corners have in common, but for what they say themselves.
const PLAIN: &[(&str, &str)] = &[
    ("part", "hex-bolt"),
    ("length", "90 mm"),
    ("quantity", "1200"),
    ("place", "C4"),
    ("years", "12 years"),
];

/// Kinds that are known by their name and of which no size is published here: each stands among the corners.
const BY_NAME: &[part::Kind] = &[
    part::Kind::HeavyHexBolt,
    part::Kind::HrBolt,
    part::Kind::FormingScrew,
    part::Kind::LagScrew,
    part::Kind::WoodScrew,
    part::Kind::ChipboardScrew,
    part::Kind::ConcreteScrew,
    part::Kind::HangerBolt,
    part::Kind::ClevisPin,
    part::Kind::ParallelPin,
];

/// What a draw hardly ever meets.
const CORNERS: &[&[(&str, &str)]] = &[
    // Small screws, metric and by their number.
    &[("part", "socket-screw"), ("thread", "M4"), ("length", "12 mm"), ("steel", "12.9"), ("place", "C1")],
    &[("part", "socket-screw"), ("thread", "#10-32 UNF"), ("length", "1 in"), ("steel", "a574")],
    // ISO 10684 keeps class 10.9 from M27 out of the hottest bath.
    &[("thread", "M30"), ("steel", "10.9"), ("bath", "545 °C")],
    // One size less, and it does not.
    &[("thread", "M24"), ("steel", "10.9"), ("bath", "545 °C")],
    // Where the tables of hardness end.
    &[("thread", "M8"), ("steel", "hardness"), ("hardness", "68 HRC"), ("years", "")],
    // Classes written on the order.
    &[("thread", "M20-8g"), ("steel", "8.8"), ("place", "C3")],
    &[("thread", "M20-6h"), ("steel", "8.8"), ("place", "C3")],
    &[("thread", "M12x1.25-4h"), ("steel", "8.8"), ("place", "C3")],
    &[("thread", "5/8-11 UNC-3A"), ("steel", "j429-5"), ("length", "2 in"), ("place", "C3")],
    &[("thread", "5/8-11 UNC-1A"), ("steel", "a307"), ("length", "2 in"), ("place", "C3")],
    // A class that the tables of its standard do not have.
    &[("thread", "M20-9g"), ("steel", "8.8")],
    &[("part", "hex-nut"), ("thread", "M16-6AZ"), ("length", ""), ("steel", "nut-8")],
    // Known by name alone.
    &[
        ("part", "heavy-hex-bolt"),
        ("thread", "1-8 UNC"),
        ("length", "4 in"),
        ("steel", "a354-bd"),
        ("place", "C3"),
    ],
    &[("part", "hr-bolt"), ("thread", "M20"), ("steel", "10.9")],
    &[
        ("part", "forming-screw"),
        ("thread", "M6"),
        ("length", "20 mm"),
        ("steel", "iso-2702"),
        ("place", "C1"),
    ],
    &[
        ("part", "lag-screw"),
        ("thread", "1/2-13 UNC"),
        ("length", "4 in"),
        ("steel", "a307"),
        ("place", "C3"),
    ],
    &[
        ("part", "wood-screw"),
        ("thread", "1/4-20 UNC"),
        ("length", "2 in"),
        ("steel", "a307"),
        ("place", "C2"),
    ],
    &[("part", "chipboard-screw"), ("thread", "M5"), ("steel", "iso-2702"), ("place", "C3")],
    &[("part", "concrete-screw"), ("thread", "M8"), ("steel", "iso-2702"), ("place", "C2")],
    &[("part", "hanger-bolt"), ("thread", "M10"), ("steel", "4.6"), ("place", "C3")],
    &[
        ("part", "clevis-pin"),
        ("thread", "1/2-13 UNC"),
        ("length", "2 in"),
        ("steel", "a307"),
        ("place", "C3"),
    ],
    &[("part", "parallel-pin"), ("thread", "M10"), ("steel", "hardness"), ("hardness", "200 HV")],
    // A class and what is left out beside it.
    &[("thread", "M16"), ("steel", "8.8"), ("asked", "b695-55"), ("left_out", "kettle")],
];

/// What comes in every day: trade sizes, coarse threads, the common grades.
fn usual(draw: &mut Draw) -> Draft {
    let mut order = Draft::default();
    let (part, thread, lengths, steel): (_, _, &[&str], _) = match draw.below(12) {
        0..4 => {
            let steel = draw.one(&["8.8", "8.8", "8.8", "10.9", "10.9", "10.9", "4.6", "12.9"]);
            (draw.one(&["hex-bolt", "hex-screw"]), draw.one(METRIC), METRIC_LENGTHS, steel)
        }
        4 => ("hex-nut", draw.one(METRIC), &[], draw.one(&["nut-8", "nut-8", "nut-10", "nut-5"])),
        5 => ("washer", draw.one(METRIC), &[], draw.one(&["4.6", "5.8", "hardness"])),
        6 => ("socket-screw", draw.one(METRIC), METRIC_LENGTHS, draw.one(&["12.9", "8.8", "10.9"])),
        7 => {
            let steel = draw.one(&["a325", "a325", "a325", "a490"]);
            ("structural-bolt", draw.one(STRUCTURAL), INCH_LENGTHS, steel)
        }
        8 | 9 => {
            let steel = draw.one(&["j429-5", "j429-5", "j429-8", "j429-2", "a307", "a449"]);
            ("hex-bolt", draw.one(INCH), INCH_LENGTHS, steel)
        }
        10 => {
            let part = draw.one(&["heavy-hex-nut", "heavy-hex-nut", "hex-nut", "washer"]);
            let steel = if part == "washer" { "f436" } else { draw.one(&["a563-dh", "a194-2h"]) };
            (part, draw.one(INCH), &[], steel)
        }
        _ => ("rod", draw.one(INCH), ROD_LENGTHS, draw.one(&["a193-b7", "a193-b7", "a307"])),
    };
    order.set("part", part);
    order.set("thread", thread);
    if !lengths.is_empty() {
        order.set("length", draw.one(lengths));
    }
    order.set("quantity", draw.one(PIECES));
    order.set("steel", steel);
    if steel == "hardness" {
        order.set("hardness", draw.one(&["100 HV", "140 HV", "200 HV", "300 HV"]));
    }
    order.set("place", draw.one(USUAL_PLACES));
    // An empty field asks for no years.
    order.set("years", if draw.once_in(3) { "" } else { draw.one(YEARS) });
    if draw.once_in(8) {
        order.set("asked", draw.one(&["b695-55", "b695-25", "f2329", "iso10684", "a153-c", "f1941-8"]));
    }
    order
}

/// Whatever can be written; steels and classes come in turn, so that none is left out.
fn any(at: usize, draw: &mut Draw) -> Draft {
    // Two of five orders come here: their own running number.
    let turn = at / 5 * 2 + at % 5 - 3;
    // Small threads stand among the corners.
    let threads: Vec<Thread> = Thread::all().filter(|thread| thread.diameter().mm() >= 5.0).collect();
    let mut order = Draft::default();
    let drawn: Vec<part::Kind> = part::Kind::ALL.into_iter().filter(|kind| !BY_NAME.contains(kind)).collect();
    let part = draw.one(&drawn);
    order.set("part", part.key());
    order.set("thread", draw.one(&threads).to_string());
    if part.has_length() {
        let lengths = draw.one(&[METRIC_LENGTHS, INCH_LENGTHS, ROD_LENGTHS]);
        order.set("length", draw.one(lengths));
    }
    order.set("quantity", draw.one(PIECES));
    // Three in four by their grade, one by its hardness.
    match Grade::ALL.get(turn % (Grade::ALL.len() * 4 / 3)) {
        Some(grade) => order.set("steel", grade.key()),
        None => {
            order.set("steel", "hardness");
            order.set("hardness", draw.one(HARDNESSES));
        }
    }
    for (field, times) in [("case", 6), ("cold", 6)] {
        if draw.once_in(times) {
            order.set(field, "yes");
        }
    }
    if draw.once_in(3) {
        order.set("temper", draw.one(TEMPERS));
    }
    order.set("place", draw.one(&Category::ALL).key());
    order.set("years", if draw.once_in(3) { "" } else { draw.one(YEARS) });
    if turn.is_multiple_of(3) {
        order.set("asked", asked::ALL[turn / 3 % asked::ALL.len()].key);
    }
    if draw.once_in(2) {
        order.set("bath", draw.one(BATHS));
    }
    order
}
