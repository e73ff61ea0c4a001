//! How the surface, the volume and the mass of a shape came about, step by step.

use super::profile::SOURCE as PROFILE;
use super::{Bolt, Head, Nut, Profile, STEEL, Shape, Size, Washer, hexagon};
use crate::quantity::{Area, Length, Quantity, Shown, Volume, unit};
use crate::source::{Source, document};
use crate::working::{Step, Term, Working};

const HEAD_VOLUME: &str = "volume of the head";

const GEOMETRY: Source = document::ARITHMETIC.computed("geometry of the solid");

/// The steps to the surface, the volume and the mass of a shape.
pub fn working(shape: &Shape) -> Working {
    let mut working = Working::default();
    match shape {
        Shape::Bolt(bolt) => bolt_steps(&mut working, bolt),
        Shape::Nut(nut) => nut_steps(&mut working, nut),
        Shape::Washer(washer) => washer_steps(&mut working, washer),
    }
    working
        .step(
            "mass of one part; g/cm³ is mg/mm³",
            "m_1",
            "V_1·ρ / 1000",
            shape.mass().show(&unit::G, 2),
            GEOMETRY,
        )
        .given("V_1", volume(shape.volume().mm3()))
        .published("ρ", STEEL.value.show(&unit::G_CM3, 2), STEEL.source);
    working
}

fn surface<'w>(working: &'w mut Working, formula: &'static str, mm2: f64) -> &'w mut Step {
    working.step("surface of one part, threads developed", "A_1", formula, area(mm2), GEOMETRY)
}

fn solid<'w>(working: &'w mut Working, formula: &'static str, mm3: f64) -> &'w mut Step {
    working.step("volume of one part", "V_1", formula, volume(mm3), GEOMETRY)
}

fn bolt_steps(working: &mut Working, bolt: &Bolt) {
    let profile = &bolt.profile;
    let headless = matches!(bolt.head, Head::None);
    let (d, d3) = (given("d", profile.diameter.mm()), given("d3", profile.root_diameter().mm()));
    let full = given("l_t", bolt.full_thread());
    working
        .step(
            "root diameter of the bolt, at H/6 above the sharp root",
            "d3",
            "d − 17/24·sqrt(3)·P",
            d3.value,
            PROFILE,
        )
        .term(d)
        .term(given("P", profile.pitch.mm()));
    working
        .step(
            "area of the thread against the plain cylinder: crest P/8, root P/6, and two flanks that \
                  measure 17/24·P each",
            "f_t",
            "1/8 + d3/(6·d) + 17/24·(1 + d3/d)",
            Shown::plain(profile.bolt_factor(), 4),
            PROFILE,
        )
        .term(d)
        .term(d3);
    working
        .step(
            "thread without the 45° point, which reaches from d3 to d",
            "l_t",
            if headless { "l − (d − d3)" } else { "b − (d − d3) / 2" },
            full.value,
            GEOMETRY,
        )
        .term(if headless { sized("l", &bolt.length) } else { sized("b", &bolt.thread_length) })
        .term(d)
        .term(d3);
    working
        .step("developed area of the thread", "A_thread", "π·d·l_t·f_t", area(bolt.thread_area()), GEOMETRY)
        .term(d)
        .term(full)
        .given("f_t", Shown::plain(profile.bolt_factor(), 4));
    working
        .step(
            "volume of the thread",
            "V_thread",
            "π/4·l_t·(d^2/8 + d3^2/6 + 17/72·(d^2 + d·d3 + d3^2))",
            volume(bolt.thread_volume()),
            GEOMETRY,
        )
        .term(d)
        .term(d3)
        .term(full);
    let point_area = Term::given("A_point", area(bolt.points_area()));
    let point_volume = Term::given("V_point", volume(bolt.points_volume()));
    working
        .step(
            if headless { "cones and flat ends of both points" } else { "cone and flat end of the point" },
            "A_point",
            if headless {
                "π/2·(sqrt(2)·(d^2 − d3^2) + d3^2)"
            } else {
                "π/4·(sqrt(2)·(d^2 − d3^2) + d3^2)"
            },
            point_area.value,
            GEOMETRY,
        )
        .term(d)
        .term(d3);
    working
        .step(
            if headless { "volume of both points" } else { "volume of the point" },
            "V_point",
            if headless {
                "π/12·(d − d3)·(d^2 + d·d3 + d3^2)"
            } else {
                "π/24·(d − d3)·(d^2 + d·d3 + d3^2)"
            },
            point_volume.value,
            GEOMETRY,
        )
        .term(d)
        .term(d3);
    let thread_area = Term::given("A_thread", area(bolt.thread_area()));
    let thread_volume = Term::given("V_thread", volume(bolt.thread_volume()));
    if headless {
        surface(working, "A_thread + A_point", bolt.area()).term(thread_area).term(point_area);
        solid(working, "V_thread + V_point", bolt.volume()).term(thread_volume).term(point_volume);
        return;
    }
    head_steps(working, bolt, d);
    let (l, b) = (sized("l", &bolt.length), sized("b", &bolt.thread_length));
    working
        .step(
            "plain shank between head and thread",
            "A_shank",
            "π·d·(l − b)",
            area(bolt.shank_area()),
            GEOMETRY,
        )
        .term(d)
        .term(l)
        .term(b);
    working
        .step(
            "volume of the plain shank",
            "V_shank",
            "π/4·d^2·(l − b)",
            volume(bolt.shank_volume()),
            GEOMETRY,
        )
        .term(d)
        .term(l)
        .term(b);
    surface(working, "A_head + A_shank + A_thread + A_point", bolt.area())
        .given("A_head", area(bolt.head_area()))
        .given("A_shank", area(bolt.shank_area()))
        .term(thread_area)
        .term(point_area);
    solid(working, "V_head + V_shank + V_thread + V_point", bolt.volume())
        .given("V_head", volume(bolt.head_volume()))
        .given("V_shank", volume(bolt.shank_volume()))
        .term(thread_volume)
        .term(point_volume);
}

fn head_steps(working: &mut Working, bolt: &Bolt, d: Term) {
    let (of_area, of_volume) = (area(bolt.head_area()), volume(bolt.head_volume()));
    match &bolt.head {
        Head::None => {}
        Head::Hexagon { flats, height } => {
            let (s, k) = (sized("s", flats), sized("k", height));
            let meaning = "hexagon head: two faces and six sides, less the chamfer and the seat of the shank";
            let formula = "sqrt(3)·s^2 + 2·sqrt(3)·s·k − c_A·s^2 − π/4·d^2";
            let step = working.step(meaning, "A_head", formula, of_area, GEOMETRY);
            chamfer_area(step.term(s).term(k)).term(d);
            let formula = "sqrt(3)/2·s^2·k − c_V·s^3";
            let step = working.step(HEAD_VOLUME, "V_head", formula, of_volume, GEOMETRY);
            chamfer_volume(step.term(s).term(k));
        }
        Head::Socket { diameter, height, flats, depth } => {
            let (dk, k) = (sized("dk", diameter), sized("k", height));
            let (s, t) = (sized("s", flats), sized("t", depth));
            let meaning =
                "socket head: two faces, the side and the walls of the socket, less the seat of the shank";
            let formula = "π/2·dk^2 + π·dk·k + 2·sqrt(3)·s·t − π/4·d^2";
            let step = working.step(meaning, "A_head", formula, of_area, GEOMETRY);
            step.term(dk).term(k).term(s).term(t).term(d);
            let formula = "π/4·dk^2·k − sqrt(3)/2·s^2·t";
            let step = working.step(HEAD_VOLUME, "V_head", formula, of_volume, GEOMETRY);
            step.term(dk).term(k).term(s).term(t);
        }
    }
}

fn nut_steps(working: &mut Working, nut: &Nut) {
    let Profile { diameter, pitch, .. } = nut.profile;
    let (d, d1) = (given("D", diameter.mm()), given("D1", nut.profile.minor_diameter().mm()));
    let (s, m, da) = (sized("s", &nut.flats), sized("m", &nut.height), sized("da", &nut.countersink));
    let hole = given("l_h", nut.hole_length());
    working
        .step("minor diameter of the nut", "D1", "D − 5/8·sqrt(3)·P", d1.value, PROFILE)
        .term(d)
        .term(given("P", pitch.mm()));
    working
        .step("hole between the countersinks of 120°", "l_h", "m − (da − D1) / sqrt(3)", hole.value, GEOMETRY)
        .term(m)
        .term(da)
        .term(d1);
    if nut.tapped {
        let factor = Shown::plain(nut.profile.nut_factor(), 4);
        working.step("area of the thread against the plain hole: crest P/4, root P/8, and two flanks that measure 5/8·P each", "f_n", "D1/(4·D) + 1/8 + 5/8·(1 + D1/D)", factor, PROFILE).term(d).term(d1);
        working
            .step("developed area of the thread", "A_hole", "π·D·l_h·f_n", area(nut.hole_area()), GEOMETRY)
            .term(d)
            .term(hole)
            .given("f_n", factor);
        working
            .step(
                "volume of the tapped hole",
                "V_hole",
                "π/4·l_h·(D1^2/4 + D^2/8 + 5/24·(D^2 + D·D1 + D1^2))",
                volume(nut.hole_volume()),
                GEOMETRY,
            )
            .term(d)
            .term(d1)
            .term(hole);
    } else {
        working
            .step(
                "plain hole of a blank, tapped only after the zinc",
                "A_hole",
                "π·D1·l_h",
                area(nut.hole_area()),
                GEOMETRY,
            )
            .term(d1)
            .term(hole);
        working
            .step("volume of the plain hole", "V_hole", "π/4·D1^2·l_h", volume(nut.hole_volume()), GEOMETRY)
            .term(d1)
            .term(hole);
    }
    let step = working
        .step(
            "two faces, less the hole and the chamfers",
            "A_faces",
            "sqrt(3)·s^2 − π/2·da^2 − 2·c_A·s^2",
            area(nut.faces_area()),
            GEOMETRY,
        )
        .term(s)
        .term(da);
    chamfer_area(step);
    working.step("six sides", "A_sides", "2·sqrt(3)·s·m", area(nut.sides_area()), GEOMETRY).term(s).term(m);
    working
        .step(
            "two countersinks",
            "A_sinks",
            "π/sqrt(3)·(da^2 − D1^2)",
            area(nut.countersinks_area()),
            GEOMETRY,
        )
        .term(da)
        .term(d1);
    let step = working
        .step(
            "hexagon with both chamfers",
            "V_hex",
            "sqrt(3)/2·s^2·m − 2·c_V·s^3",
            volume(nut.hexagon_volume()),
            GEOMETRY,
        )
        .term(s)
        .term(m);
    chamfer_volume(step);
    working
        .step(
            "two countersinks",
            "V_sinks",
            "π/(12·sqrt(3))·(da − D1)·(da^2 + da·D1 + D1^2)",
            volume(nut.countersinks_volume()),
            GEOMETRY,
        )
        .term(da)
        .term(d1);
    surface(working, "A_faces + A_sides + A_hole + A_sinks", nut.area())
        .given("A_faces", area(nut.faces_area()))
        .given("A_sides", area(nut.sides_area()))
        .given("A_hole", area(nut.hole_area()))
        .given("A_sinks", area(nut.countersinks_area()));
    solid(working, "V_hex − V_hole − V_sinks", nut.volume())
        .given("V_hex", volume(nut.hexagon_volume()))
        .given("V_hole", volume(nut.hole_volume()))
        .given("V_sinks", volume(nut.countersinks_volume()));
}

fn washer_steps(working: &mut Working, washer: &Washer) {
    let (d1, d2) = (sized("d1", &washer.inside), sized("d2", &washer.outside));
    let h = sized("h", &washer.thickness);
    let formula = "π/2·(d2^2 − d1^2) + π·(d1 + d2)·h";
    surface(working, formula, washer.area()).term(d1).term(d2).term(h);
    solid(working, "π/4·(d2^2 − d1^2)·h", washer.volume()).term(d1).term(d2).term(h);
}

fn chamfer_area(step: &mut Step) -> &mut Step {
    step.published("c_A", Shown::plain(hexagon::CHAMFER_AREA, 5), hexagon::CHAMFER_SOURCE)
}

fn chamfer_volume(step: &mut Step) -> &mut Step {
    step.published("c_V", Shown::plain(hexagon::CHAMFER_VOLUME, 5), hexagon::CHAMFER_SOURCE)
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
