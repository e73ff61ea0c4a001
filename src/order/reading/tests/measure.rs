//! Numbers with what they measure.

use super::{assert_finds, assert_refuses, assert_takes, pieces, taken};
use crate::order::reading::measure::{
    self, LEAST_HARDNESS, allowance, energy, hardness, negative, other, psi, temperature, type_of, years,
    yields,
};
use crate::order::reading::thickness::{self, reading, thickness, tolerance};
use crate::order::reading::wanted::Wanted;
use crate::order::reading::weight::weight;
use crate::order::reading::what::What;
use crate::process::Process;

#[test]
fn years_are_of_a_life_and_not_of_a_contract() {
    let of = |text: &str| What::Years(text.into());
    assert_finds(
        years,
        &[
            ("25 years", of("25 years")),
            ("12,5 Jahre", of("12.5 years")),
            ("10-year", of("10 years")),
            ("twelve years", of("12 years")),
            ("240 months", of("20 years")),
            ("24 months", of("2 years")),
        ],
    );
    // A stroke that touches both joins them in any order.
    assert_takes(years, &[("20/15 years", "20 | / | 15 years"), ("15/15 years", "15 | / | 15 years")]);
    assert_takes(years, &[("12 months", ""), ("25 months", ""), ("one year", ""), ("25 pcs", "")]);
    // Pieces, a class or another order in front of or behind a life.
    assert_takes(
        years,
        &[
            ("500 or 15 years", ""),
            ("8.8/15 years", ""),
            ("500/15 years", ""),
            ("10 years or 20 pcs", "10 years"),
            ("10 years or 10.9", "10 years"),
            ("10 years or 1/4 x 2", "10 years"),
        ],
    );
    assert_refuses(
        years,
        &[
            ("3 year contract", "of a contract"),
            ("1,200 years", "1.2 or 1200 years"),
            ("2 to 3 year contract", "of a contract"),
        ],
    );
}

#[test]
fn of_two_lives_each_is_one() {
    assert_takes(
        years,
        &[
            ("10 to 15 years", "10 | to | 15 years"),
            ("10-15 years", "10 | - | 15 years"),
            ("10 or 15 years", "10 | or | 15 years"),
            ("15/20 years", "15 | / | 20 years"),
            ("10 and 15 years", "10 | and | 15 years"),
            ("ten or fifteen years", "ten | or | fifteen years"),
            ("10 years or 15", "10 years | or | 15"),
            ("10 bzw. 15 years", "10 | bzw. | 15 years"),
            ("15/25/30 years", "15 | / | 25 | / | 30 years"),
            ("15, 25 or 30 years", "15 | , | 25 | or | 30 years"),
            ("15, 25 years", ""),
            ("min 15 max 25 years", "min 15 | max | 25 years"),
            ("10 years - 50 pcs", "10 years"),
            ("8.8 - 15 years", ""),
        ],
    );
}

#[test]
fn of_a_range_the_hardest_end_is_judged() {
    let of = |text: &str, note: Option<&str>| What::Hardness(text.into(), note.map(str::to_owned));
    let harder = "the harder end of 33 to 39 HRC: the softer end is not judged";
    let least = "the least that is asked for: the steel may be harder";
    assert_finds(
        hardness,
        &[
            ("36 HRC", of("36 HRC", None)),
            ("200HV", of("200 HV", None)),
            ("HRC 33-39", of("39 HRC", Some(harder))),
            ("33 to 39 HRC", of("39 HRC", Some(harder))),
            ("36 ± 3 HRC", of("39 HRC", Some(harder))),
            ("36 +/- 3 HRC", of("39 HRC", Some(harder))),
            ("1200 MPa", of("1200 MPa", None)),
            ("min 150 ksi", of("150 ksi", Some(least))),
            ("min. 150 ksi", of("150 ksi", Some(least))),
            ("150 ksi min", of("150 ksi", Some(least))),
            ("1000 MPa or more", of("1000 MPa", Some(least))),
            ("≥ 1000 MPa", of("1000 MPa", Some(least))),
            (">= 1000 N/mm2", of("1000 MPa", Some(least))),
            ("over 1000 MPa", of("1000 MPa", Some(least))),
            ("Rm >= 1000", of("1000 MPa", Some(least))),
            ("Rm 1000 min", of("1000 MPa", Some(least))),
            ("Rm 1000", of("1000 MPa", None)),
            ("Rm 300", of("300 MPa", None)),
            ("Rm 2000", of("2000 MPa", None)),
            ("tensile strength 800", of("800 MPa", None)),
        ],
    );
    assert_refuses(
        hardness,
        &[
            ("hardness 39", "39 HRC?"),
            ("hardness 68", "68 HRC?"),
            ("hardness 69", "69 HV or 69 HB?"),
            ("hardness 33-39", "33 to 39 HRC?"),
            ("Rm 299", "299 MPa or 299 ksi?"),
            ("Rm 2001", "Write the unit"),
        ],
    );
    // The mark of a preloaded assembly, a class with the hardness behind it, and other units.
    assert_takes(
        hardness,
        &[
            ("10 HV", ""),
            ("10.9 HV", ""),
            ("HV 10", ""),
            ("10.8 HV", "10.8 HV"),
            ("8.8 HRC 33", ""),
            ("Rm 1000 mm", ""),
            ("Rm 1000 pcs", ""),
            ("Rm 1000/2", ""),
            ("Rm 1000x", ""),
            ("36HRC2", ""),
            ("3,600 HV", ""),
        ],
    );
}

#[test]
fn pounds_to_the_square_inch_are_told_in_thousands() {
    let of = |text: &str| What::Hardness(text.into(), None);
    assert_finds(psi, &[("150,000 psi", of("150 ksi")), ("150 000 psi", of("150 ksi"))]);
    assert_finds(psi, &[("10,000 psi", of("10 ksi")), ("120000 psi", of("120 ksi"))]);
    let least = "the least that is asked for: the steel may be harder";
    for text in ["150,000 psi min", "min. 150,000 psi", "> 150,000 psi"] {
        assert_finds(psi, &[(text, What::Hardness("150 ksi".into(), Some(least.to_owned())))]);
    }
    assert_takes(psi, &[("9,999 psi", ""), ("150,000", ""), ("150,000 psi2", "")]);
}

#[test]
fn the_least_of_a_hardness_is_told_as_the_least_and_a_word_of_the_next_measure_is_none_of_it() {
    for text in [
        "38 HRC min",
        "HRC 38 min.",
        "38 HRC mind.",
        "≥38 HRC",
        "> 38 HRC",
        "38 HRC or more",
        "38 HRC and up",
    ] {
        assert_finds(hardness, &[(text, What::Hardness("38 HRC".into(), Some(LEAST_HARDNESS.to_owned())))]);
        assert_takes(hardness, &[(text, text)]);
    }
    assert_takes(
        hardness,
        &[
            ("38 HRC min 45 µm", "38 HRC"),
            ("38 HRC min coating 45", "38 HRC"),
            ("38 HRC min 39 HRC", "38 HRC"),
            ("38 HRC min 39 HRC max", "38 HRC min"),
            ("38 HRC min 100 pcs", "38 HRC min"),
            ("38 HRC or DH", "38 HRC"),
        ],
    );
}

#[test]
fn where_steel_yields_is_not_where_it_breaks() {
    assert_takes(
        yields,
        &[
            ("105 ksi yield", "105 ksi yield"),
            ("120 ksi min yield", "120 ksi min yield"),
            ("105,000 psi yield strength", "105,000 psi yield strength"),
            ("Fy = 105 ksi", "Fy = 105 ksi"),
            ("ReH 640 MPa", "ReH 640 MPa"),
            ("Rp0.2 640 MPa", "Rp0.2 640 MPa"),
            ("Rp 0,2 ≥ 640 MPa", "Rp 0,2 ≥ 640 MPa"),
            ("105 ksi yield 125 ksi tensile", "105 ksi yield"),
            // The word may belong to what follows it.
            ("125 ksi yield 105 ksi", ""),
            ("125 ksi tensile", ""),
            ("38 HRC yield", ""),
            ("Re 500", ""),
            ("Re 1,080", "Re 1,080"),
            ("Re 940 Rm 1040", "Re 940"),
            ("RE 1,080", ""),
            ("yield 1,200", "yield 1,200"),
            ("yield 1,200 pcs", ""),
            ("yield 1,200 bolts", ""),
        ],
    );
}

#[test]
fn a_reading_is_what_was_found() {
    assert_takes(
        reading,
        &[
            ("measured 38 µm", "measured 38 µm"),
            ("measured coating thickness: 38 µm", "measured coating thickness: 38 µm"),
            ("rejected at 1.2 mil", "rejected at 1.2 mil"),
            ("readings 41, 44, 52 microns", "readings 41, 44, 52 microns"),
            ("found 0.0019 in", "found 0.0019 in"),
            ("gemessen 0,038 mm", "gemessen 0,038 mm"),
            ("38 µm gemessen", "38 µm gemessen"),
            ("50 µm measured 38 µm", ""),
            ("measured 38 HRC", ""),
            ("measured 500 pcs", ""),
            ("found 60 mm", ""),
        ],
    );
}

#[test]
fn a_temperature_has_its_degrees() {
    let of = |text: &str| What::Temperature(text.into(), None);
    assert_finds(
        temperature,
        &[("500 °C", of("500 °C")), ("90 °C", of("90 °C")), ("860F", of("860 °F")), ("100 C", of("100 °C"))],
    );
    let between = |cold: &str, hot: &str| What::Temperature(hot.into(), Some(cold.into()));
    assert_finds(
        temperature,
        &[
            ("150 to 280 °C", between("150 °C", "280 °C")),
            ("425/480 C", between("425 °C", "480 °C")),
            ("-60 to 80 °C", between("-60 °C", "80 °C")),
            ("−60/+80 °C", between("-60 °C", "80 °C")),
            ("-60 and 20 °C", between("-60 °C", "20 °C")),
            ("+80/-60 °C", between("-60 °C", "80 °C")),
            ("-40...120 °C", between("-40 °C", "120 °C")),
            ("-40 up to 120 °C", between("-40 °C", "120 °C")),
            ("-40 °C to 250 °C", between("-40 °C", "250 °C")),
            ("-40 F to 200 F", between("-40 °F", "200 °F")),
            ("−40 °C", of("-40 °C")),
            ("500 ±10 °C", between("490 °C", "510 °C")),
            ("80 to -20 °C", between("-20 °C", "80 °C")),
            ("-20 to -40 °C", between("-40 °C", "-20 °C")),
            ("-5 °C / 250 °C", between("-5 °C", "250 °C")),
            ("250 °C / -5 °C", between("-5 °C", "250 °C")),
            ("40 °C to 80 °C", between("40 °C", "80 °C")),
        ],
    );
    assert_takes(temperature, &[("99 F", ""), ("500", ""), ("1,200 °C", ""), ("500 °C2", "")]);
    // Two, and no ends of a range; a dash, and no minus.
    assert_takes(
        temperature,
        &[
            ("500 °C and 250 °C", "500 °C"),
            ("500 °C and 600 °C", "500 °C"),
            ("250 °C/500 °C", "250 °C"),
            ("0 °C / 20 °C", "0 °C"),
            ("40 °C - 80 °C", "40 °C"),
            ("40 °C to 80 °F", "40 °C"),
            ("80 to 20 °C", ""),
            ("20 to 20 °C", ""),
            ("-20 to -20 °C", ""),
            ("10 to 0 °C", ""),
            ("5 to - 20 °C", ""),
            ("- 20 °C", ""),
        ],
    );
    // `between` says that they are ends, and no other word does.
    assert_eq!(taken(temperature, "between 500 °C and 600 °C", 1), "500 °C and 600 °C");
    assert_eq!(taken(temperature, "zwischen etwa 500 °C und 600 °C", 2), "500 °C und 600 °C");
    assert_eq!(taken(temperature, "tempered 500 °C and 600 °C", 1), "500 °C");
}

/// A time is no life beside a word for what is due, kept or found.
#[test]
fn the_time_of_another_thing_is_no_life() {
    let no_life = |text: &str, at: usize, why: &str| {
        [measure::no_life, other].iter().any(|rule| {
            let found = pieces(*rule, text, at);
            matches!(found.as_slice(), [(_, What::Not(told))] if told.contains(why))
        })
    };
    const NO_LIFE: &str = "no life that is asked of the coat";
    for (text, at) in [
        ("every 2 years", 0),
        ("inspection every 2 years", 0),
        ("rust found after 3 years", 2),
        ("it failed after 2 years", 2),
        ("delivery 3 months", 1),
        ("delivery in 3 months", 2),
        ("6 months warranty", 0),
        ("6-month warranty", 0),
    ] {
        assert!(no_life(text, at, NO_LIFE), "{text}");
    }
    for (text, at) in [
        ("every zebra 2 years", 0),
        ("no rust found after 15 years", 3),
        ("failed, good after 15 years", 3),
        ("painted after 3 years", 1),
        ("delivery, 3 months", 2),
        ("delivery of a lot 3 months", 4),
        ("6 months", 0),
    ] {
        assert!(!no_life(text, at, NO_LIFE), "{text}");
    }
}

#[test]
fn the_weight_of_one_is_no_lot() {
    assert_refuses(
        weight,
        &[
            ("0.12 kg each", "computed from its shape"),
            ("0.12 kg ea.", "computed from its shape"),
            ("0.256 kg/pc", "computed from its shape"),
            ("0.3 kg a piece", "computed from its shape"),
            ("0.3 kg per bolt", "computed from its shape"),
            ("12 kg per 100", "computed from its shape"),
            ("0,25 kg/Stück", "computed from its shape"),
            ("unit weight 0.3 kg", "computed from its shape"),
            ("weight (each): 0.3 kg", "computed from its shape"),
            ("weight of each 0.3 kg", "computed from its shape"),
            ("each 0.3 kg", "computed from its shape"),
            ("piece weight approx. 0.3 kg", "computed from its shape"),
            ("124 kg/M", "computed from its shape"),
            ("124 kg ‰", "computed from its shape"),
            ("Stückgewicht: 0,25 kg", "computed from its shape"),
            ("25 kg boxes", "of one box"),
            ("50 kg per box", "of one box"),
            ("25 kg in each box", "of one box"),
            ("weight per box 25 kg", "of one box"),
            ("20 x 25 kg", "so many of so much"),
            ("25 kg x 20", "so many of so much"),
        ],
    );
    // The pieces behind it are those of the order, and a cross behind it may be that of a size.
    assert_takes(
        weight,
        &[
            ("0.12 kg each 500 pcs", "0.12 kg each"),
            ("50 kg per box x 20, HDG", "50 kg per box x 20"),
            ("25 kg M8x25", "25 kg"),
            ("25 kg x 20-60", "25 kg"),
        ],
    );
}

/// A pound is 0.45359237 kg by definition.
#[test]
fn a_lot_is_weighed() {
    for (text, shown, kg) in [
        ("250 kg", "250 kg", 250.0),
        ("1 200 kg", "1200 kg", 1200.0),
        ("2 t", "2 t", 2000.0),
        ("500 lbs", "500 lb", 226.796_185),
        ("100#", "100 lb", 45.359_237),
    ] {
        match pieces(weight, text, 0).as_slice() {
            [(_, What::Weight(written, mass))] => {
                assert_eq!(written, shown, "{text}");
                assert!((mass.kg() - kg).abs() < 1e-9, "{text}: {mass:?}");
            }
            other => panic!("{text}: {other:?}"),
        }
    }
    for (text, taken_as) in
        [("total weight 250 kg", 250.0), ("Gewicht: 250 kg", 250.0), ("qty 250 kg", 250.0)]
    {
        match pieces(weight, text, 0).as_slice() {
            [(_, What::Weight(_, mass))] => assert!((mass.kg() - taken_as).abs() < 1e-9, "{text}: {mass:?}"),
            other => panic!("{text}: {other:?}"),
        }
    }
    assert_refuses(weight, &[("1,200 kg", "1.2 or 1200 kg")]);
    // A class and a word for zinc, a numbered size, letters behind.
    assert_takes(weight, &[("8.8 t", ""), ("2 #8", ""), ("250 kg2", ""), ("2# 8", "2#")]);
}

#[test]
fn a_nut_is_tapped_over_by_a_small_length() {
    let of = |text: &str| What::Allowance(text.into());
    assert_finds(
        allowance,
        &[
            ("tapped over by .020 in", of("0.020 in")),
            ("tapped over by .020", of("0.020 in")),
            ("tapped over by .110\"", of("0.110 in")),
            ("oversize +0.4 mm", of("0.4 mm")),
            ("tapped oversize 3 mm", of("3 mm")),
            ("tapped over by 400 µm", of("400 µm")),
            (".022 in oversize", of("0.022 in")),
            ("tapped 0.5 mm over", of("0.5 mm")),
        ],
    );
    assert_takes(
        allowance,
        &[
            ("tapped over by 3.1 mm", ""),
            ("tapped over by .13 in", ""),
            ("tapped over by .11", ""),
            ("tapped over by 1.500 mm", ""),
            (".022 in", ""),
        ],
    );
    assert_refuses(allowance, &[("tapped 0.5 over", "0.5 mm or 0.5 in?")]);
}

#[test]
fn what_no_field_takes_is_named() {
    assert_refuses(other, &[("100 m rods", "metres in all"), ("21 m rods", "metres in all"), ("50%", "")]);
    assert_takes(other, &[("20 m rods", ""), ("100 M", ""), ("2.5 m rods", ""), ("10.9 h", "")]);
    assert_finds(type_of, &[("type 1", What::Filler), ("type I", What::Filler)]);
    assert_refuses(type_of, &[("type 3", "type 1 alone"), ("type II", "type 1 alone")]);
    assert_takes(type_of, &[("type 7", ""), ("type 1x", ""), ("1", "")]);
}

#[test]
fn a_minus_stays_with_its_number() {
    assert_finds(
        negative,
        &[("-300 HV", What::Hardness("-300 HV".into(), None)), ("-5 years", What::Years("-5 years".into()))],
    );
    match pieces(negative, "-500 pcs", 0).as_slice() {
        [(_, What::Count(counted))] => assert!(counted.negative && counted.pieces == 500),
        other => panic!("{other:?}"),
    }
    assert_takes(negative, &[("500 pcs", ""), ("- 500 pcs", "")]);
}

#[test]
fn of_a_range_of_thickness_the_least_is_asked_and_the_greatest_held() {
    for (text, um, greatest) in [
        ("8-12 µm", 8.0, "12 µm"),
        ("8 µm - 12 µm", 8.0, "12 µm"),
        ("5...8 µm", 5.0, "8 µm"),
        ("5..8 µm", 5.0, "8 µm"),
        ("25 bis 30 µm", 25.0, "30 µm"),
        ("8 max 12 µm", 8.0, "12 µm"),
        ("8 bis max. 12 µm", 8.0, "12 µm"),
        ("8 min 12 max µm", 8.0, "12 µm"),
        ("8 min - 12 µm max", 8.0, "12 µm"),
        (".0002 to .0004", 5.08, "0.0004 in"),
        (".0003 max .0005", 7.62, "0.0005 in"),
        (".0003\" - .0005\"", 7.62, "0.0005 in"),
        ("0.3-0.5 mil", 7.62, "0.0005 in"),
        ("8 µm ± 2", 6.0, "10 µm"),
        ("8 ± 2 µm", 6.0, "10 µm"),
        ("50 µm ±10%", 45.0, "55 µm"),
        ("45 µm +20/-0", 45.0, "65 µm"),
        ("45 µm (+20/0)", 45.0, "65 µm"),
        ("45 µm -5/+20", 40.0, "65 µm"),
        ("8 +4/-0 µm", 8.0, "12 µm"),
        ("8 µm +4 µm/-1 µm", 7.0, "12 µm"),
        ("357-714 g/m2", 50.0, "100 µm"),
        ("357 g/m² - 714 g/m²", 50.0, "100 µm"),
    ] {
        match pieces(thickness, text, 0).as_slice() {
            [(_, What::Thickness(wanted)), (_, What::AtMost(most))] => {
                let most = thickness::greatest(*most, Some(Process::HotDip)).unwrap();
                assert!((wanted.solid().um() - um).abs() < 1e-9, "{text}: {wanted:?}");
                assert_eq!(most, greatest, "{text}");
            }
            other => panic!("{text}: {other:?}"),
        }
    }
    assert_takes(
        thickness,
        &[
            ("8-12 µm", "8 | -12 µm"),
            ("8 µm - 12 µm", "8 µm | - 12 µm"),
            ("8 min - 12 µm max", "8 min | - 12 µm max"),
            ("45 µm +20/-0 100 pcs", "45 µm | +20/-0"),
            ("50 µm (±10%), C3", "50 µm | (±10%)"),
            ("8 +4/-0 µm", "8 | +4/-0 µm"),
        ],
    );
}

/// 1 mil is 25.4 µm.
#[test]
fn a_coat_is_as_thick_as_its_unit_says() {
    for (text, um, in_inches) in [
        ("12 µm", 12.0, false),
        ("0.3 mil", 7.62, true),
        ("0.05 mm", 50.0, false),
        ("0.25 mm", 250.0, false),
        (".0005 in", 12.7, true),
        (".01", 254.0, true),
        ("15 µm min", 15.0, false),
        // ASTM A653: 7.14 g/m² for each micrometre.
        ("71.4 g/m2", 10.0, false),
        ("357 g/m² min", 50.0, false),
        ("71.4 gsm", 10.0, false),
        ("71.4 g/sq.m", 10.0, false),
        // 305.15 g/m² to the ounce on a square foot.
        ("1-1/4 oz/ft2", 1.25 * 305.151_727 / 7.14, true),
        ("1/2 oz/ft2", 0.5 * 305.151_727 / 7.14, true),
    ] {
        match pieces(thickness, text, 0).as_slice() {
            [(_, What::Thickness(wanted))] => {
                assert!((wanted.solid().um() - um).abs() < 1e-6, "{text}: {wanted:?}");
                assert_eq!(wanted.is_in_inches(), in_inches, "{text}");
            }
            other => panic!("{text}: {other:?}"),
        }
    }
    assert_takes(
        thickness,
        &[
            ("0.26 mm", ""),
            (".011", ""),
            ("0 µm", ""),
            ("8 µm2", ""),
            ("8", ""),
            (".0005/2", ""),
            (".0002/.0004", ".0002 | /.0004"),
            ("8/12 µm", ""),
        ],
    );
    assert_takes(
        thickness,
        &[("8 µm max 12 pcs", "8 µm max"), ("8 µm max 15 µm", "8 µm"), ("8 µm +20 pcs", "8 µm")],
    );
    assert_takes(
        thickness,
        &[
            ("8.8 max 30 µm", ""),
            ("12-8 µm", ""),
            ("8 and 12 µm", ""),
            ("8, max 12 µm", ""),
            ("6.8 min 8 µm max 12 µm", ""),
            ("5 min 8 µm max 12 µm", ""),
        ],
    );
    let at_most = |number: f64, unit: &str| What::AtMost(Wanted::read(number, unit).unwrap());
    assert_finds(thickness, &[("30 µm max", at_most(30.0, "µm")), ("1 mil max", at_most(1.0, "mil"))]);
    // 0.45 oz/ft² for each mil are 5.406 g/m² for each micrometre.
    let mass = Wanted::read(540.62, "g/m²").unwrap();
    assert_eq!(thickness::greatest(mass, Some(Process::Mechanical)).as_deref(), Some("100 µm"));
    assert_eq!(thickness::greatest(mass, None), None);
    assert_refuses(tolerance, &[("± 2 µm", "a tolerance"), ("±2%", "a tolerance")]);
    assert_takes(tolerance, &[("±2 mm 5", "±2 mm"), ("±2x", ""), ("2", "")]);
}

/// ISO 148-1 says an impact test in joules; `J` is `Jahre` as well.
#[test]
fn a_thickness_is_the_greatest_below_a_word_and_above_one_that_is_refused() {
    let um = |um: f64| Wanted::Metric(crate::quantity::Length::from_um(um));
    assert_finds(
        thickness::bounds::bounded,
        &[
            ("below 8 µm", What::AtMost(um(8.0))),
            ("thinner than 8 µm", What::AtMost(um(8.0))),
            ("unterhalb 8 µm", What::AtMost(um(8.0))),
            ("over 60 µm not accepted", What::AtMost(um(60.0))),
            ("more than 60 µm is rejected", What::AtMost(um(60.0))),
            ("dicker als 60 µm wird abgelehnt", What::AtMost(um(60.0))),
            ("below 40 µm not accepted", What::Thickness(um(40.0))),
            ("over 40 µm", What::Thickness(um(40.0))),
        ],
    );
    assert_takes(
        thickness::bounds::bounded,
        &[("over 60 mm", ""), ("more 60 µm", ""), ("below 8-12 µm", "")],
    );
}

#[test]
fn joules_are_no_years() {
    for (text, at, is_energy) in [
        ("27J", 0, true),
        ("27 J", 0, false),
        ("25 J", 0, false),
        ("25J", 0, false),
        ("25 J impact", 0, true),
        ("25 J zork impact", 0, true),
        ("25 J, impact", 0, false),
        ("charpy min 25 J", 1, true),
        ("charpy bolt min of zinc 25 J", 5, false),
        ("25 J at -20 °C", 0, true),
        ("25 J / 100 °C", 0, true),
        ("25 J - 20 °C", 0, false),
        ("25 J at C4", 0, false),
        ("27JX", 0, false),
    ] {
        let found = pieces(energy, text, at);
        assert_eq!(matches!(found.as_slice(), [(_, What::Not(_))]), is_energy, "{text}: {found:?}");
    }
}
