//! How the surface, the volume and the mass of a shape came about, step by step.

use super::profile::SOURCE as PROFILE;
use super::{Bolt, Head, Nut, Profile, STEEL, STEEL_SOURCE, Shape, Size, Washer, hexagon};
use crate::quantity::{Area, Length, Quantity, Shown, Volume, unit};
use crate::source::{Source, document};
use crate::working::{Step, Term};

const GEOMETRY: Source = document::ARITHMETIC.computed("geometry of the solid");

/// The steps to the surface, the volume and the mass of a shape.
pub fn working(shape: &Shape) -> Vec<Step> {
    let mut steps = Vec::new();
    let (areas, volumes) = match shape {
        Shape::Bolt(bolt) => bolt_steps(bolt, &mut steps),
        Shape::Nut(nut) => nut_steps(nut, &mut steps),
        Shape::Washer(washer) => washer_steps(washer),
    };
    steps.push(Step {
        meaning: "surface of one part, threads developed".into(),
        symbol: "A_1",
        formula: areas.0,
        terms: areas.1,
        result: area(shape.surface().mm2()),
        source: GEOMETRY,
    });
    steps.push(Step {
        meaning: "volume of one part".into(),
        symbol: "V_1",
        formula: volumes.0,
        terms: volumes.1,
        result: volume(shape.volume().mm3()),
        source: GEOMETRY,
    });
    steps.push(Step {
        meaning: "mass of one part; g/cm³ is mg/mm³".into(),
        symbol: "m_1",
        formula: "V_1·ρ / 1000",
        terms: vec![
            Term::given("V_1", volume(shape.volume().mm3())),
            Term::published("ρ", STEEL.show(&unit::G_CM3, 2), STEEL_SOURCE),
        ],
        result: shape.mass().show(&unit::G, 2),
        source: GEOMETRY,
    });
    steps
}

type Sum = (&'static str, Vec<Term>);

fn bolt_steps(bolt: &Bolt, steps: &mut Vec<Step>) -> (Sum, Sum) {
    let profile = &bolt.profile;
    let headless = matches!(bolt.head, Head::None);
    let (d, d3) = (given("d", profile.diameter.mm()), given("d3", profile.root_diameter().mm()));
    let full = given("l_t", bolt.full_thread());
    steps.push(Step {
        meaning: "root diameter of the bolt, at H/6 above the sharp root".into(),
        symbol: "d3",
        formula: "d − 17/24·sqrt(3)·P",
        terms: vec![d, given("P", profile.pitch.mm())],
        result: d3.value,
        source: PROFILE,
    });
    steps.push(Step {
        meaning: "area of the thread against the plain cylinder: crest P/8, root P/6, and two flanks that \
                  measure 17/24·P each"
            .into(),
        symbol: "f_t",
        formula: "1/8 + d3/(6·d) + 17/24·(1 + d3/d)",
        terms: vec![d, d3],
        result: Shown::plain(profile.bolt_factor(), 4),
        source: PROFILE,
    });
    steps.push(Step {
        meaning: "thread without the 45° point, which reaches from d3 to d".into(),
        symbol: "l_t",
        formula: if headless { "l − (d − d3)" } else { "b − (d − d3) / 2" },
        terms: vec![if headless { sized("l", &bolt.length) } else { sized("b", &bolt.thread_length) }, d, d3],
        result: full.value,
        source: GEOMETRY,
    });
    steps.push(Step {
        meaning: "developed area of the thread".into(),
        symbol: "A_thread",
        formula: "π·d·l_t·f_t",
        terms: vec![d, full, Term::given("f_t", Shown::plain(profile.bolt_factor(), 4))],
        result: area(bolt.thread_area()),
        source: GEOMETRY,
    });
    steps.push(Step {
        meaning: "volume of the thread".into(),
        symbol: "V_thread",
        formula: "π/4·l_t·(d^2/8 + d3^2/6 + 17/72·(d^2 + d·d3 + d3^2))",
        terms: vec![d, d3, full],
        result: volume(bolt.thread_volume()),
        source: GEOMETRY,
    });
    let point_area = Term::given("A_point", area(bolt.points_area()));
    let point_volume = Term::given("V_point", volume(bolt.points_volume()));
    steps.push(Step {
        meaning: if headless {
            "cones and flat ends of both points"
        } else {
            "cone and flat end of the point"
        }
        .into(),
        symbol: "A_point",
        formula: if headless {
            "π/2·(sqrt(2)·(d^2 − d3^2) + d3^2)"
        } else {
            "π/4·(sqrt(2)·(d^2 − d3^2) + d3^2)"
        },
        terms: vec![d, d3],
        result: point_area.value,
        source: GEOMETRY,
    });
    steps.push(Step {
        meaning: if headless { "volume of both points" } else { "volume of the point" }.into(),
        symbol: "V_point",
        formula: if headless {
            "π/12·(d − d3)·(d^2 + d·d3 + d3^2)"
        } else {
            "π/24·(d − d3)·(d^2 + d·d3 + d3^2)"
        },
        terms: vec![d, d3],
        result: point_volume.value,
        source: GEOMETRY,
    });
    let thread_area = Term::given("A_thread", area(bolt.thread_area()));
    let thread_volume = Term::given("V_thread", volume(bolt.thread_volume()));
    if headless {
        return (
            ("A_thread + A_point", vec![thread_area, point_area]),
            ("V_thread + V_point", vec![thread_volume, point_volume]),
        );
    }
    head_steps(bolt, d, steps);
    let shank = [sized("l", &bolt.length), sized("b", &bolt.thread_length)];
    steps.push(Step {
        meaning: "plain shank between head and thread".into(),
        symbol: "A_shank",
        formula: "π·d·(l − b)",
        terms: [d].into_iter().chain(shank).collect(),
        result: area(bolt.shank_area()),
        source: GEOMETRY,
    });
    steps.push(Step {
        meaning: "volume of the plain shank".into(),
        symbol: "V_shank",
        formula: "π/4·d^2·(l − b)",
        terms: [d].into_iter().chain(shank).collect(),
        result: volume(bolt.shank_volume()),
        source: GEOMETRY,
    });
    let (head_area, head_volume) = (area(bolt.head_area()), volume(bolt.head_volume()));
    let (shank_area, shank_volume) = (area(bolt.shank_area()), volume(bolt.shank_volume()));
    (
        (
            "A_head + A_shank + A_thread + A_point",
            vec![
                Term::given("A_head", head_area),
                Term::given("A_shank", shank_area),
                thread_area,
                point_area,
            ],
        ),
        (
            "V_head + V_shank + V_thread + V_point",
            vec![
                Term::given("V_head", head_volume),
                Term::given("V_shank", shank_volume),
                thread_volume,
                point_volume,
            ],
        ),
    )
}

fn head_steps(bolt: &Bolt, d: Term, steps: &mut Vec<Step>) {
    let (area_formula, area_terms, volume_formula, volume_terms, meaning): (_, _, _, _, &str) =
        match &bolt.head {
            Head::None => return,
            Head::Hexagon { flats, height } => (
                "sqrt(3)·s^2 + 2·sqrt(3)·s·k − c_A·s^2 − π/4·d^2",
                vec![sized("s", flats), sized("k", height), chamfer_area(), d],
                "sqrt(3)/2·s^2·k − c_V·s^3",
                vec![sized("s", flats), sized("k", height), chamfer_volume()],
                "hexagon head: two faces and six sides, less the chamfer and the seat of the shank",
            ),
            Head::Socket { diameter, height, flats, depth } => (
                "π/2·dk^2 + π·dk·k + 2·sqrt(3)·s·t − π/4·d^2",
                vec![sized("dk", diameter), sized("k", height), sized("s", flats), sized("t", depth), d],
                "π/4·dk^2·k − sqrt(3)/2·s^2·t",
                vec![sized("dk", diameter), sized("k", height), sized("s", flats), sized("t", depth)],
                "socket head: two faces, the side and the walls of the socket, less the seat of the shank",
            ),
        };
    steps.push(Step {
        meaning: meaning.into(),
        symbol: "A_head",
        formula: area_formula,
        terms: area_terms,
        result: area(bolt.head_area()),
        source: GEOMETRY,
    });
    steps.push(Step {
        meaning: "volume of the head".into(),
        symbol: "V_head",
        formula: volume_formula,
        terms: volume_terms,
        result: volume(bolt.head_volume()),
        source: GEOMETRY,
    });
}

fn nut_steps(nut: &Nut, steps: &mut Vec<Step>) -> (Sum, Sum) {
    let Profile { diameter, pitch, .. } = nut.profile;
    let (d, d1) = (given("D", diameter.mm()), given("D1", nut.profile.minor_diameter().mm()));
    let (s, m, da) = (sized("s", &nut.flats), sized("m", &nut.height), sized("da", &nut.countersink));
    let hole = given("l_h", nut.hole_length());
    let mut step = |meaning: &'static str, symbol, formula, terms, result, source| {
        steps.push(Step { meaning: meaning.into(), symbol, formula, terms, result, source });
    };
    step(
        "minor diameter of the nut",
        "D1",
        "D − 5/8·sqrt(3)·P",
        vec![d, given("P", pitch.mm())],
        d1.value,
        PROFILE,
    );
    step(
        "hole between the countersinks of 120°",
        "l_h",
        "m − (da − D1) / sqrt(3)",
        vec![m, da, d1],
        hole.value,
        GEOMETRY,
    );
    if nut.tapped {
        let factor = Shown::plain(nut.profile.nut_factor(), 4);
        step(
            "area of the thread against the plain hole: crest P/4, root P/8, and two flanks that measure 5/8·P each",
            "f_n",
            "D1/(4·D) + 1/8 + 5/8·(1 + D1/D)",
            vec![d, d1],
            factor,
            PROFILE,
        );
        step(
            "developed area of the thread",
            "A_hole",
            "π·D·l_h·f_n",
            vec![d, hole, Term::given("f_n", factor)],
            area(nut.hole_area()),
            GEOMETRY,
        );
        step(
            "volume of the tapped hole",
            "V_hole",
            "π/4·l_h·(D1^2/4 + D^2/8 + 5/24·(D^2 + D·D1 + D1^2))",
            vec![d, d1, hole],
            volume(nut.hole_volume()),
            GEOMETRY,
        );
    } else {
        step(
            "plain hole of a blank, tapped only after the zinc",
            "A_hole",
            "π·D1·l_h",
            vec![d1, hole],
            area(nut.hole_area()),
            GEOMETRY,
        );
        step(
            "volume of the plain hole",
            "V_hole",
            "π/4·D1^2·l_h",
            vec![d1, hole],
            volume(nut.hole_volume()),
            GEOMETRY,
        );
    }
    step(
        "two faces, less the hole and the chamfers",
        "A_faces",
        "sqrt(3)·s^2 − π/2·da^2 − 2·c_A·s^2",
        vec![s, da, chamfer_area()],
        area(nut.faces_area()),
        GEOMETRY,
    );
    step("six sides", "A_sides", "2·sqrt(3)·s·m", vec![s, m], area(nut.sides_area()), GEOMETRY);
    step(
        "two countersinks",
        "A_sinks",
        "π/sqrt(3)·(da^2 − D1^2)",
        vec![da, d1],
        area(nut.countersinks_area()),
        GEOMETRY,
    );
    step(
        "hexagon with both chamfers",
        "V_hex",
        "sqrt(3)/2·s^2·m − 2·c_V·s^3",
        vec![s, m, chamfer_volume()],
        volume(nut.hexagon_volume()),
        GEOMETRY,
    );
    step(
        "two countersinks",
        "V_sinks",
        "π/(12·sqrt(3))·(da − D1)·(da^2 + da·D1 + D1^2)",
        vec![da, d1],
        volume(nut.countersinks_volume()),
        GEOMETRY,
    );
    (
        (
            "A_faces + A_sides + A_hole + A_sinks",
            vec![
                Term::given("A_faces", area(nut.faces_area())),
                Term::given("A_sides", area(nut.sides_area())),
                Term::given("A_hole", area(nut.hole_area())),
                Term::given("A_sinks", area(nut.countersinks_area())),
            ],
        ),
        (
            "V_hex − V_hole − V_sinks",
            vec![
                Term::given("V_hex", volume(nut.hexagon_volume())),
                Term::given("V_hole", volume(nut.hole_volume())),
                Term::given("V_sinks", volume(nut.countersinks_volume())),
            ],
        ),
    )
}

fn washer_steps(washer: &Washer) -> (Sum, Sum) {
    let terms =
        vec![sized("d1", &washer.inside), sized("d2", &washer.outside), sized("h", &washer.thickness)];
    (("π/2·(d2^2 − d1^2) + π·(d1 + d2)·h", terms.clone()), ("π/4·(d2^2 − d1^2)·h", terms))
}

fn chamfer_area() -> Term {
    Term::published("c_A", Shown::plain(hexagon::CHAMFER_AREA, 5), hexagon::CHAMFER_SOURCE)
}

fn chamfer_volume() -> Term {
    Term::published("c_V", Shown::plain(hexagon::CHAMFER_VOLUME, 5), hexagon::CHAMFER_SOURCE)
}

fn given(symbol: &'static str, mm: f64) -> Term {
    Term::given(symbol, Length::from_mm(mm).show(&unit::MM, 3))
}

fn sized(symbol: &'static str, size: &Size) -> Term {
    Term { symbol, value: size.length.show(&unit::MM, 3), source: size.source }
}

fn area(mm2: f64) -> Shown {
    Area::from_mm2(mm2).show(&unit::MM2, 1)
}

fn volume(mm3: f64) -> Shown {
    Volume::from_mm3(mm3).show(&unit::MM3, 1)
}
