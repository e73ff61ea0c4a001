//! Machine screws, tapping screws and drywall screws.

use super::{Found, bolt, find, inch, middle, mm, to_head};
use crate::part::{Head, Kind, Listed, Profile, Shape, Size, Solid, TappingHead, TappingScrew};
use crate::quantity::{Length, Mass};
use crate::table::{asme_b18_6_4, drywall_screws, iso_1478, iso_7045, iso_7049};

pub(super) fn found(kind: Kind, metric: bool) -> Option<Found> {
    let numbers = || asme_b18_6_4::ROWS.iter().map(|row| 0.06 + 0.013 * f64::from(row.number)).collect();
    Some(match (kind, metric) {
        (Kind::MachineScrew, true) => Found {
            diameters: || iso_7045::ROWS.iter().map(|row| row.d).collect(),
            source: iso_7045::SOURCE,
            build: machine_screw,
        },
        (Kind::MachineScrew, false) => {
            Found { diameters: numbers, source: asme_b18_6_4::MACHINE, build: inch_machine_screw }
        }
        (Kind::TappingScrew, true) => Found {
            diameters: || iso_7049::ROWS.iter().map(|row| row.st).collect(),
            source: iso_7049::SOURCE,
            build: tapping_screw,
        },
        (Kind::TappingScrew, false) => {
            Found { diameters: numbers, source: asme_b18_6_4::SOURCE, build: inch_tapping_screw }
        }
        (Kind::DrywallScrew, _) => Found {
            diameters: || drywall_screws::HEADS.iter().map(|(d, _)| *d).collect(),
            source: drywall_screws::HEAD,
            build: drywall_screw,
        },
        _ => return None,
    })
}

/// A machine screw longer than its thread length keeps a plain shank.
fn pan(profile: Profile, length: Length, diameter: Size, height: Size, b: Size) -> Shape {
    let whole = to_head(length.mm(), profile);
    let thread = if b.length < whole.length { b } else { whole };
    bolt(Head::Pan { diameter, height }, profile, length, thread)
}

fn machine_screw(profile: Profile, length: Length) -> Option<Shape> {
    let row = find(iso_7045::ROWS, profile.diameter.mm(), |row| row.d)?;
    let size = |number| mm(number, iso_7045::SOURCE);
    Some(pan(profile, length, size(row.dk), size(row.k), size(row.b)))
}

/// The number size of an inch thread.
fn number(profile: Profile) -> Option<asme_b18_6_4::Row> {
    find(asme_b18_6_4::ROWS, profile.diameter.inch(), |row| 0.06 + 0.013 * f64::from(row.number))
}

fn inch_machine_screw(profile: Profile, length: Length) -> Option<Shape> {
    let row = number(profile)?;
    let size = |number| inch(number, asme_b18_6_4::MACHINE);
    // Screws up to 2 in, of #4 and smaller up to 1 1/8 in, are threaded to the head.
    let (to_head, b) = if row.number <= 4 { (1.125, 1.0) } else { (2.0, 1.5) };
    let b = if length.inch() <= to_head { Size::own(length) } else { size(b) };
    Some(pan(profile, length, size(middle(row.a)), size(middle(row.h)), b))
}

fn tapping_screw(profile: Profile, length: Length) -> Option<Shape> {
    let head = find(iso_7049::ROWS, profile.diameter.mm(), |row| row.st)?;
    let thread = find(iso_1478::ROWS, head.st, |row| row.st)?;
    let head = TappingHead::Pan {
        diameter: mm(middle(head.dk), iso_7049::SOURCE),
        height: mm(middle(head.k), iso_7049::SOURCE),
    };
    Some(Solid::Tapping(tapping(thread, head, length)).into())
}

fn inch_tapping_screw(profile: Profile, length: Length) -> Option<Shape> {
    let row = number(profile)?;
    let thread = iso_1478::ROWS.iter().find(|thread| thread.number == row.number)?;
    let head = TappingHead::Pan {
        diameter: inch(middle(row.a), asme_b18_6_4::SOURCE),
        height: inch(middle(row.h), asme_b18_6_4::SOURCE),
    };
    Some(Solid::Tapping(tapping(*thread, head, length)).into())
}

fn tapping(thread: iso_1478::Row, head: TappingHead, length: Length) -> TappingScrew {
    let size = |number| mm(number, iso_1478::SOURCE);
    TappingScrew {
        head,
        major: size(middle(thread.d1)),
        core: size(middle(thread.d2)),
        pitch: size(thread.p),
        length: Size::own(length),
        point: size(thread.y),
    }
}

fn drywall_screw(profile: Profile, length: Length) -> Option<Shape> {
    let d = if profile.is_metric {
        profile.diameter.mm()
    } else {
        // A number size is the thread of a tapping screw of that number.
        let number = number(profile)?.number;
        iso_1478::ROWS.iter().find(|thread| thread.number == number)?.st
    };
    let (_, head) = find(drywall_screws::HEADS, d, |(d, _)| *d)?;
    let thread = find(iso_1478::ROWS, d, |row| row.st)?;
    let head = TappingHead::Bugle { diameter: mm(head, drywall_screws::HEAD) };
    let mut screw = tapping(thread, head, length);
    for size in [&mut screw.major, &mut screw.core, &mut screw.pitch, &mut screw.point] {
        size.source = Some(drywall_screws::THREAD);
    }
    let listed =
        listed(d, length.mm()).map(|g| Listed { mass: Mass::from_g(g), source: drywall_screws::MASS });
    Some(Shape { solid: Solid::Tapping(screw), listed })
}

/// The listed mass of a length, or one between two listed lengths; none beyond them.
fn listed(d: f64, l: f64) -> Option<f64> {
    let of_size = || drywall_screws::ROWS.iter().filter(|row| row.d == d);
    let below = of_size().rfind(|row| row.l <= l)?;
    let above = of_size().find(|row| row.l >= l)?;
    let share = if above.l > below.l { (l - below.l) / (above.l - below.l) } else { 0.0 };
    Some(below.mass + share * (above.mass - below.mass))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A listed mass stands for its length, and halfway to the next one for the mean of both.
    #[test]
    fn masses_of_drywall_screws_are_listed_or_lie_between() {
        let rows = drywall_screws::ROWS;
        assert!(rows.len() > 3);
        for row in rows {
            assert_eq!(listed(row.d, row.l), Some(row.mass), "{} x {}", row.d, row.l);
        }
        for (one, next) in rows.iter().zip(rows.iter().skip(1)).filter(|(one, next)| one.d == next.d) {
            let between = listed(one.d, (one.l + next.l) / 2.0).unwrap();
            assert!((between - (one.mass + next.mass) / 2.0).abs() < 1e-9, "{} x {}", one.d, one.l);
        }
        assert_eq!((listed(3.5, 1.0), listed(3.5, 1000.0), listed(99.0, 35.0)), (None, None, None));
    }

    /// Machine screws of ASME B18.6.3 (from memory) are threaded to the head up to 2 in, of #4 and smaller up to 1-1/8 in; longer
    /// ones over 1-1/2 in, or over 1 in.
    #[test]
    fn an_inch_machine_screw_is_threaded_by_its_number() {
        let thread = |diameter, per_inch, inch| {
            let profile = Profile::unified(Length::from_inch(diameter), per_inch);
            let shape = inch_machine_screw(profile, Length::from_inch(inch)).unwrap();
            let b = shape.dimensions().into_iter().find(|own| own.symbol == "b").unwrap();
            (b.size.length.inch() * 1e6).round() / 1e6
        };
        // To the head but for the run-out below it.
        let to_head = |inch: f64, per_inch: f64| ((inch - 2.5 / per_inch) * 1e6).round() / 1e6;
        for (diameter, per_inch, inch, b) in [
            (0.190, 24.0, 1.0, to_head(1.0, 24.0)),
            (0.190, 24.0, 2.0, to_head(2.0, 24.0)),
            (0.190, 24.0, 2.25, 1.5),
            (0.112, 40.0, 1.125, to_head(1.125, 40.0)),
            (0.112, 40.0, 1.25, 1.0),
        ] {
            assert_eq!(thread(diameter, per_inch, inch), b, "{diameter}, {inch}");
        }
    }
}
