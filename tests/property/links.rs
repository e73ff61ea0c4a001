//! A link from an order carries the very numbers that its reason used, compared as numbers.

use kettle_barrel::calculator::coat_thickness::{CoatThickness, Stated};
use kettle_barrel::calculator::hydrogen::{HydrogenRisk, Known};
use kettle_barrel::calculator::kettle_pickup::KettlePickup;
use kettle_barrel::calculator::load::Stated as Load;
use kettle_barrel::calculator::oversize_tap::OversizeTap;
use kettle_barrel::calculator::powder_mass::{PowderMass, WantedCoat};
use kettle_barrel::calculator::service_life::{Place, ServiceLife};
use kettle_barrel::calculator::tempering::TemperingMargin;
use kettle_barrel::calculator::{Draft, behind, parse};
use kettle_barrel::order::{self, judge};
use kettle_barrel::quantity::Length;
use kettle_barrel::rule::Case;
use kettle_barrel::steel::Steel;
use kettle_barrel::thread::pair;

/// Orders whose sizes are no round numbers in any unit.
const LINES: [&str; 8] = [
    "M20x2.5 x 90 hex bolt, 10.9, 1200 pcs, C4, 12 years",
    "M10 x 40 socket screw, A574, 400 pcs, C3, 10 years",
    "5/8-11 x 4 stud, B7, two 2H nuts, C3, 15 years",
    "3/4-10 x 2-1/2 structural bolt, A325, with DH nut and F436 washer, C3, 15 years",
    "washers M12, 4.6, 20000 pcs, C3, class 55",
    "M6 x 20 hex screw, 8.8, C1",
    "7/8-9 UNC x 12 in hex bolt, A449, 100 pcs, C4, 33 years",
    "hex bolt M16 x 60, 36.5 HRC, C2, 7.5 years",
];

#[test]
fn a_link_carries_the_numbers_of_its_reason() {
    let mut compared = [0; 7];
    for text in LINES {
        let line =
            order::read(&order::reading::read(text).draft).unwrap_or_else(|why| panic!("{text}: {why}"));
        let judgement = judge(&line);
        for judged in &judgement.processes {
            for (place, ruling) in &judged.rulings {
                let case = judgement.case(judged, *place).unwrap();
                let Some(link) = behind(&case, ruling.rule.topic) else { continue };
                if let Some(at) = compare(link.calculator, &Draft::from(&link), &case, text) {
                    compared[at] += 1;
                }
            }
        }
    }
    assert!(compared.iter().all(|count| *count > 5), "{compared:?}");
}

/// Compares the input that a link reads to with the case; which of the calculators it was.
fn compare(calculator: &str, draft: &Draft, case: &Case<'_>, text: &str) -> Option<usize> {
    match calculator {
        "hydrogen" => {
            let input = parse::<HydrogenRisk>(draft).unwrap();
            let facts = case.steel.unwrap();
            let known = match facts.state.steel {
                Steel::Grade(properties) => Known::Grade(properties.grade, case.diameter.unwrap()),
                Steel::Hardness(hardness) => Known::Hardness(hardness),
                Steel::Tensile(tensile) => Known::Tensile(tensile),
            };
            assert_eq!(input.steel, known, "{text}");
            assert_eq!(
                (input.case_hardened, input.worked, input.process, input.cleaning),
                (facts.state.case_hardened, facts.state.worked, case.process, facts.cleaning),
                "{text}"
            );
            Some(0)
        }
        "tempering" => {
            // A steel known by its hardness asks for its temper, which nobody has said.
            let input = parse::<TemperingMargin>(draft).ok()?;
            let dip = case.dip.unwrap();
            assert_eq!(input.grade, case.grade().zip(case.diameter), "{text}");
            assert_eq!((input.temper, input.bath, input.dip), (dip.temper, dip.bath, dip.time), "{text}");
            Some(1)
        }
        "oversize-tap" => {
            let input = parse::<OversizeTap>(draft).unwrap();
            let (part, offer) = (case.part.unwrap(), case.offer.unwrap());
            let limits = (offer.min, offer.max);
            let size = (input.thread, part.length);
            assert_eq!(Some(input.thread), part.thread, "{text}");
            let coat = pair::coat(case.process, size, limits, pair::INSIDE_SHARE.value);
            assert_same(input.coat.min, coat.min, text);
            assert_same(input.coat.max, coat.max, text);
            assert_eq!(input.coat.unevenness, coat.unevenness, "{text}");
            Some(2)
        }
        "life" => {
            let input = parse::<ServiceLife>(draft).unwrap();
            let (offer, site) = (case.offer.unwrap(), case.site.unwrap());
            let place = site.place.unwrap();
            assert_eq!(place.mildest, place.harshest, "{text}");
            assert_eq!(input.place, Place::Category(place.harshest), "{text}");
            assert_same(input.min.unwrap(), offer.min, text);
            assert_same(input.average.quantity, offer.average(), text);
            assert_same(input.max.unwrap(), offer.max, text);
            assert_eq!(input.wanted, site.wanted, "{text}");
            Some(3)
        }
        "coat" => {
            let Stated::Thickness(stated) = parse::<CoatThickness>(draft).unwrap().coat else {
                panic!("{text}: {draft:?}")
            };
            assert_same(stated.quantity, case.offer.unwrap().min, text);
            Some(4)
        }
        "kettle" => {
            // What the order does not say, the calculator asks.
            let input = parse::<KettlePickup>(draft).ok()?;
            compare_load(&input.stated, case, text);
            let (offer, dip) = (case.offer.unwrap(), case.dip.unwrap());
            assert_same(input.coat.quantity, offer.mean_of_a_load(), text);
            assert_eq!(input.factor, offer.factor(), "{text}");
            assert_eq!(
                (input.bath.quantity, input.dip, input.grade),
                (dip.bath, dip.time, case.grade()),
                "{text}"
            );
            Some(5)
        }
        "powder" => {
            let input = parse::<PowderMass>(draft).ok()?;
            compare_load(&input.stated, case, text);
            let WantedCoat::Least(least) = input.wanted else { panic!("{text}: {draft:?}") };
            assert_same(least.quantity, case.offer.unwrap().min, text);
            assert_eq!(input.grade, case.grade(), "{text}");
            Some(6)
        }
        _ => None,
    }
}

/// The load of a link is the part of its case, and as many as the order says.
/// The same thickness, but for the last digits that a sum leaves over: a link writes 75 µm.
fn assert_same(read: Length, meant: Length, text: &str) {
    assert!(!read.exceeds(meant) && !meant.exceeds(read), "{text}: {read:?}, {meant:?}");
}

fn compare_load(stated: &Load, case: &Case<'_>, text: &str) {
    let Load::Count(piece, pieces) = stated else { panic!("{text}: {stated:?}") };
    let part = case.part.unwrap();
    assert_eq!((piece.kind, Some(piece.designation.thread)), (part.kind, part.thread), "{text}");
    let length = part.length.filter(|_| part.kind.has_length());
    assert_eq!(piece.length.map(|length| length.quantity), length, "{text}");
    assert!(part.quantity.is_none_or(|quantity| quantity == *pieces), "{text}");
}
