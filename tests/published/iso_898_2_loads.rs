//! ISO 898-2: proof loads of nuts, printed in the 1992 edition, elsewhere stress × area.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis;
use kettle_barrel::table::iso_898_2_loads::PropertyClass::{self, *};
use kettle_barrel::table::iso_898_2_loads::{LOADS as SOURCE, proof_load, proof_stress};
use kettle_barrel::table::nut_grade::NutGrade;
use kettle_barrel::table::nut_style::Style::{self, *};
use kettle_barrel::table::nut_style::Tapping;
use kettle_barrel::thread::load::{self, Way};

use crate::limit::thread;
use crate::seen::{agree, as_printed, seen};

#[test]
fn proof_loads_are_the_published_ones() {
    for &(diameter, class, style, newton) in LOADS {
        let ours = proof_load(diameter, class, style).unwrap();
        assert_eq!((ours.value.newton(), ours.source), (newton, SOURCE), "M{diameter} {class:?} {style:?}");
        as_printed(ours.source.document);
    }
    assert_eq!(SOURCE.basis, Basis::Read);
}

/// The printed loads divide back to the stresses behind them, within the rounding of the load.
#[test]
fn the_stresses_agree_with_the_printed_loads() {
    for &(diameter, class, style, newton) in LOADS.iter().filter(|row| row.0 >= 5.0) {
        let stress = proof_stress(diameter, class, style, true).unwrap();
        let area = load::stress_area(thread(&format!("M{diameter}"))).value.mm2();
        let product = stress.value.mpa() * area;
        assert!((product / newton - 1.0).abs() < 0.005, "M{diameter} {class:?} {style:?}");
        seen(stress.source.document, product, newton);
    }
}

#[test]
fn what_is_not_printed_is_stress_times_area() {
    for &(designation, class, style, newton) in PRODUCTS {
        let found =
            load::nut(thread(designation), NutGrade::Iso898_2(class), style, Tapping::Standard).unwrap();
        assert!(matches!(found.way, Way::Product { .. }), "{designation}");
        assert!((found.force.newton() - newton).abs() <= 50.0 + 1e-6, "{designation} {class:?}: {found:?}");
        seen(found.stress_source().document, found.force.newton(), newton);
    }
}

/// Class 12 of style 1 ends at M16 and is lower than style 2; class 4 begins above M16.
#[test]
fn a_nut_that_no_row_has_is_a_blank() {
    let found =
        |text, class, style| load::nut(thread(text), NutGrade::Iso898_2(class), style, Tapping::Standard);
    assert!(found("M20", Class12, Regular).is_err() && found("M16", Class4, Regular).is_err());
    assert!(found("1/2-13 UNC", Class8, Regular).is_err() && found("M42", Class12, Regular).is_err());
    // Beyond M39 a nut is reckoned with the stress of M39, and says so.
    let beyond = found("M42", Class8, Regular).unwrap();
    assert!(beyond.stress_source().to_string().contains("beyond M39"));
    assert!((beyond.force.newton() - 920.0 * 1120.0).abs() < 1000.0, "{beyond:?}");
    let newton = |style| found("M16", Class12, style).unwrap().force.newton();
    assert!(newton(Regular) < newton(High));
}

/// ISO 10684: the full load from M12 up, Annex A below; no word of other allowances.
#[test]
fn tapped_over_the_load_is_that_of_iso_10684() {
    let found = |text, tapping| load::nut(thread(text), NutGrade::Iso898_2(Class8), Regular, tapping);
    assert_eq!(found("M12", Tapping::Az), found("M12", Tapping::Standard));
    agree!(ISO_10684, found("M10", Tapping::Ax).unwrap().force.newton(), 42_200.0);
    agree!(ISO_10684, found("M8", Tapping::Az).unwrap().force.newton(), 25_500.0);
    assert!(found("M16x1.5", Tapping::Az).is_err() && found("M6", Tapping::Az).is_err());
    assert!(found("M16", Tapping::Own).is_err() && found("M16", Tapping::Zinc).is_err());
}

/// Nominal diameter in mm, class, style, value in N; all read.
#[rustfmt::skip]
const LOADS: &[(f64, PropertyClass, Style, f64)] = &[
    (3.0, Class5, Regular, 2600.0),
    (3.0, Class6, Regular, 3000.0),
    (3.0, Class8, Regular, 4000.0),
    (3.0, Class10, Regular, 5200.0),
    (3.0, Class12, Regular, 5700.0),
    (3.0, Class12, High, 5800.0),
    (3.5, Class5, Regular, 3550.0),
    (3.5, Class6, Regular, 4050.0),
    (3.5, Class8, Regular, 5400.0),
    (3.5, Class10, Regular, 7050.0),
    (3.5, Class12, Regular, 7700.0),
    (3.5, Class12, High, 7800.0),
    (4.0, Class5, Regular, 4550.0),
    (4.0, Class6, Regular, 5250.0),
    (4.0, Class8, Regular, 7000.0),
    (4.0, Class10, Regular, 9150.0),
    (4.0, Class12, Regular, 10000.0),
    (4.0, Class12, High, 10100.0),
    (5.0, Class5, Regular, 8250.0),
    (5.0, Class6, Regular, 9500.0),
    (5.0, Class8, Regular, 12140.0),
    (5.0, Class10, Regular, 14800.0),
    (5.0, Class12, Regular, 16200.0),
    (5.0, Class12, High, 16300.0),
    (6.0, Class5, Regular, 11700.0),
    (6.0, Class6, Regular, 13500.0),
    (6.0, Class8, Regular, 17200.0),
    (6.0, Class10, Regular, 20900.0),
    (6.0, Class12, Regular, 22900.0),
    (6.0, Class12, High, 23100.0),
    (7.0, Class5, Regular, 16800.0),
    (7.0, Class6, Regular, 19400.0),
    (7.0, Class8, Regular, 24700.0),
    (7.0, Class10, Regular, 30100.0),
    (7.0, Class12, Regular, 32900.0),
    (7.0, Class12, High, 33200.0),
    (8.0, Class5, Regular, 21600.0),
    (8.0, Class6, Regular, 24900.0),
    (8.0, Class8, Regular, 31800.0),
    (8.0, Class10, Regular, 38100.0),
    (8.0, Class12, Regular, 41700.0),
    (8.0, Class12, High, 42500.0),
    (10.0, Class5, Regular, 34200.0),
    (10.0, Class6, Regular, 39400.0),
    (10.0, Class8, Regular, 50500.0),
    (10.0, Class10, Regular, 60300.0),
    (10.0, Class12, Regular, 66100.0),
    (10.0, Class12, High, 67300.0),
    (12.0, Class5, Regular, 51400.0),
    (12.0, Class6, Regular, 59000.0),
    (12.0, Class8, Regular, 74200.0),
    (12.0, Class10, Regular, 88500.0),
    (12.0, Class12, Regular, 98600.0),
    (12.0, Class12, High, 100300.0),
    (14.0, Class5, Regular, 70200.0),
    (14.0, Class6, Regular, 80500.0),
    (14.0, Class8, Regular, 101200.0),
    (14.0, Class10, Regular, 120800.0),
    (14.0, Class12, Regular, 134600.0),
    (14.0, Class12, High, 136900.0),
    (16.0, Class5, Regular, 95800.0),
    (16.0, Class6, Regular, 109900.0),
    (16.0, Class8, Regular, 138200.0),
    (16.0, Class10, Regular, 164900.0),
    (16.0, Class12, Regular, 183700.0),
    (16.0, Class12, High, 186800.0),
    (18.0, Class4, Regular, 97900.0),
    (18.0, Class5, Regular, 121000.0),
    (18.0, Class6, Regular, 138200.0),
    (18.0, Class8, Regular, 176600.0),
    (18.0, Class8, High, 170900.0),
    (18.0, Class10, Regular, 203500.0),
    (18.0, Class12, High, 230400.0),
    (20.0, Class4, Regular, 125000.0),
    (20.0, Class5, Regular, 154400.0),
    (20.0, Class6, Regular, 176400.0),
    (20.0, Class8, Regular, 225400.0),
    (20.0, Class8, High, 218100.0),
    (20.0, Class10, Regular, 259700.0),
    (20.0, Class12, High, 294000.0),
    (22.0, Class4, Regular, 154500.0),
    (22.0, Class5, Regular, 190900.0),
    (22.0, Class6, Regular, 218200.0),
    (22.0, Class8, Regular, 278800.0),
    (22.0, Class8, High, 269700.0),
    (22.0, Class10, Regular, 321200.0),
    (22.0, Class12, High, 363600.0),
    (24.0, Class4, Regular, 180000.0),
    (24.0, Class5, Regular, 222400.0),
    (24.0, Class6, Regular, 254200.0),
    (24.0, Class8, Regular, 324800.0),
    (24.0, Class8, High, 314200.0),
    (24.0, Class10, Regular, 374200.0),
    (24.0, Class12, High, 423600.0),
    (27.0, Class4, Regular, 234100.0),
    (27.0, Class5, Regular, 289200.0),
    (27.0, Class6, Regular, 330500.0),
    (27.0, Class8, Regular, 422300.0),
    (27.0, Class8, High, 408500.0),
    (27.0, Class10, Regular, 486500.0),
    (27.0, Class12, High, 550800.0),
    (30.0, Class4, Regular, 286100.0),
    (30.0, Class5, Regular, 353400.0),
    (30.0, Class6, Regular, 403900.0),
    (30.0, Class8, Regular, 516100.0),
    (30.0, Class8, High, 499300.0),
    (30.0, Class10, Regular, 594700.0),
    (30.0, Class12, High, 673200.0),
    (33.0, Class4, Regular, 353900.0),
    (33.0, Class5, Regular, 437200.0),
    (33.0, Class6, Regular, 499700.0),
    (33.0, Class8, Regular, 638500.0),
    (33.0, Class8, High, 617700.0),
    (33.0, Class10, Regular, 735600.0),
    (33.0, Class12, High, 832800.0),
    (36.0, Class4, Regular, 416700.0),
    (36.0, Class5, Regular, 514700.0),
    (36.0, Class6, Regular, 588200.0),
    (36.0, Class8, Regular, 751600.0),
    (36.0, Class8, High, 727100.0),
    (36.0, Class10, Regular, 866000.0),
    (36.0, Class12, High, 980400.0),
    (39.0, Class4, Regular, 497800.0),
    (39.0, Class5, Regular, 614900.0),
    (39.0, Class6, Regular, 702700.0),
    (39.0, Class8, Regular, 897900.0),
    (39.0, Class8, High, 868600.0),
    (39.0, Class10, Regular, 1035000.0),
    (39.0, Class12, High, 1171000.0),
];

/// Thread, class, style, value in N from a stress of memory.
#[rustfmt::skip]
const PRODUCTS: &[(&str, PropertyClass, Style, f64)] = &[
    ("M5", Class04, Thin, 5400.0),
    ("M5", Class05, Thin, 7100.0),
    ("M5", Class9, High, 13000.0),
    ("M6", Class04, Thin, 7600.0),
    ("M6", Class05, Thin, 10100.0),
    ("M6", Class9, High, 18400.0),
    ("M7", Class04, Thin, 11000.0),
    ("M7", Class05, Thin, 14500.0),
    ("M7", Class9, High, 26400.0),
    ("M8", Class04, Thin, 13900.0),
    ("M8", Class05, Thin, 18300.0),
    ("M8", Class9, High, 34400.0),
    ("M10", Class04, Thin, 22000.0),
    ("M10", Class05, Thin, 29000.0),
    ("M10", Class9, High, 54500.0),
    ("M12", Class04, Thin, 32000.0),
    ("M12", Class05, Thin, 42200.0),
    ("M12", Class9, High, 80100.0),
    ("M14", Class04, Thin, 43700.0),
    ("M14", Class05, Thin, 57500.0),
    ("M14", Class9, High, 109300.0),
    ("M16", Class04, Thin, 59700.0),
    ("M16", Class05, Thin, 78500.0),
    ("M16", Class9, High, 149200.0),
    ("M18", Class04, Thin, 73000.0),
    ("M18", Class05, Thin, 96000.0),
    ("M18", Class9, High, 176600.0),
    ("M20", Class04, Thin, 93100.0),
    ("M20", Class05, Thin, 122500.0),
    ("M20", Class9, High, 225400.0),
    ("M22", Class04, Thin, 115100.0),
    ("M22", Class05, Thin, 151500.0),
    ("M22", Class9, High, 278800.0),
    ("M24", Class04, Thin, 134100.0),
    ("M24", Class05, Thin, 176500.0),
    ("M24", Class9, High, 324800.0),
    ("M27", Class04, Thin, 174400.0),
    ("M27", Class05, Thin, 229500.0),
    ("M27", Class9, High, 422300.0),
    ("M30", Class04, Thin, 213200.0),
    ("M30", Class05, Thin, 280500.0),
    ("M30", Class9, High, 516100.0),
    ("M33", Class04, Thin, 263700.0),
    ("M33", Class05, Thin, 347000.0),
    ("M33", Class9, High, 638500.0),
    ("M36", Class04, Thin, 310500.0),
    ("M36", Class05, Thin, 408500.0),
    ("M36", Class9, High, 751600.0),
    ("M39", Class04, Thin, 370900.0),
    ("M39", Class05, Thin, 488000.0),
    ("M39", Class9, High, 897900.0),
    ("M8x1", Class04, Thin, 14900.0),
    ("M8x1", Class05, Thin, 19600.0),
    ("M8x1", Class5, Regular, 27000.0),
    ("M8x1", Class6, Regular, 30200.0),
    ("M8x1", Class8, Regular, 37400.0),
    ("M8x1", Class8, High, 34900.0),
    ("M8x1", Class10, Regular, 43100.0),
    ("M8x1", Class10, High, 41400.0),
    ("M8x1", Class12, High, 47000.0),
    ("M10x1.25", Class04, Thin, 23300.0),
    ("M10x1.25", Class05, Thin, 30600.0),
    ("M10x1.25", Class5, Regular, 42200.0),
    ("M10x1.25", Class6, Regular, 47100.0),
    ("M10x1.25", Class8, Regular, 58400.0),
    ("M10x1.25", Class8, High, 54500.0),
    ("M10x1.25", Class10, Regular, 67300.0),
    ("M10x1.25", Class10, High, 64600.0),
    ("M10x1.25", Class12, High, 73400.0),
    ("M10x1", Class04, Thin, 24500.0),
    ("M10x1", Class05, Thin, 32300.0),
    ("M10x1", Class5, Regular, 44500.0),
    ("M10x1", Class6, Regular, 49700.0),
    ("M10x1", Class8, Regular, 61600.0),
    ("M10x1", Class8, High, 57400.0),
    ("M10x1", Class10, Regular, 71000.0),
    ("M10x1", Class10, High, 68000.0),
    ("M10x1", Class12, High, 77400.0),
    ("M12x1.5", Class04, Thin, 33500.0),
    ("M12x1.5", Class05, Thin, 44100.0),
    ("M12x1.5", Class5, Regular, 60800.0),
    ("M12x1.5", Class6, Regular, 68700.0),
    ("M12x1.5", Class8, Regular, 84100.0),
    ("M12x1.5", Class8, High, 78400.0),
    ("M12x1.5", Class10, Regular, 97800.0),
    ("M12x1.5", Class10, High, 92900.0),
    ("M12x1.5", Class12, High, 105700.0),
    ("M12x1.25", Class04, Thin, 35000.0),
    ("M12x1.25", Class05, Thin, 46100.0),
    ("M12x1.25", Class5, Regular, 63500.0),
    ("M12x1.25", Class6, Regular, 71800.0),
    ("M12x1.25", Class8, Regular, 88000.0),
    ("M12x1.25", Class8, High, 82000.0),
    ("M12x1.25", Class10, Regular, 102200.0),
    ("M12x1.25", Class10, High, 97200.0),
    ("M12x1.25", Class12, High, 110500.0),
    ("M14x1.5", Class04, Thin, 47500.0),
    ("M14x1.5", Class05, Thin, 62500.0),
    ("M14x1.5", Class5, Regular, 86300.0),
    ("M14x1.5", Class6, Regular, 97500.0),
    ("M14x1.5", Class8, Regular, 119400.0),
    ("M14x1.5", Class8, High, 111300.0),
    ("M14x1.5", Class10, Regular, 138800.0),
    ("M14x1.5", Class10, High, 131900.0),
    ("M14x1.5", Class12, High, 150000.0),
    ("M16x1.5", Class04, Thin, 63500.0),
    ("M16x1.5", Class05, Thin, 83500.0),
    ("M16x1.5", Class5, Regular, 115200.0),
    ("M16x1.5", Class6, Regular, 130300.0),
    ("M16x1.5", Class8, Regular, 159500.0),
    ("M16x1.5", Class8, High, 148600.0),
    ("M16x1.5", Class10, Regular, 185400.0),
    ("M16x1.5", Class10, High, 176200.0),
    ("M16x1.5", Class12, High, 200400.0),
    ("M18x1.5", Class04, Thin, 82100.0),
    ("M18x1.5", Class05, Thin, 108000.0),
    ("M18x1.5", Class5, Regular, 155500.0),
    ("M18x1.5", Class6, Regular, 187900.0),
    ("M18x1.5", Class8, Regular, 222500.0),
    ("M18x1.5", Class10, High, 233300.0),
    ("M20x1.5", Class04, Thin, 103400.0),
    ("M20x1.5", Class05, Thin, 136000.0),
    ("M20x1.5", Class5, Regular, 195800.0),
    ("M20x1.5", Class6, Regular, 236600.0),
    ("M20x1.5", Class8, Regular, 280200.0),
    ("M20x1.5", Class10, High, 293800.0),
    ("M22x1.5", Class04, Thin, 126500.0),
    ("M22x1.5", Class05, Thin, 166500.0),
    ("M22x1.5", Class5, Regular, 239800.0),
    ("M22x1.5", Class6, Regular, 289700.0),
    ("M22x1.5", Class8, Regular, 343000.0),
    ("M22x1.5", Class10, High, 359600.0),
    ("M24x2", Class04, Thin, 145900.0),
    ("M24x2", Class05, Thin, 192000.0),
    ("M24x2", Class5, Regular, 276500.0),
    ("M24x2", Class6, Regular, 334100.0),
    ("M24x2", Class8, Regular, 395500.0),
    ("M24x2", Class10, High, 414700.0),
    ("M27x2", Class04, Thin, 188500.0),
    ("M27x2", Class05, Thin, 248000.0),
    ("M27x2", Class5, Regular, 357100.0),
    ("M27x2", Class6, Regular, 431500.0),
    ("M27x2", Class8, Regular, 510900.0),
    ("M27x2", Class10, High, 535700.0),
    ("M30x2", Class04, Thin, 236000.0),
    ("M30x2", Class05, Thin, 310500.0),
    ("M30x2", Class5, Regular, 447100.0),
    ("M30x2", Class6, Regular, 540300.0),
    ("M30x2", Class8, Regular, 639600.0),
    ("M30x2", Class10, High, 670700.0),
    ("M33x2", Class04, Thin, 289200.0),
    ("M33x2", Class05, Thin, 380500.0),
    ("M33x2", Class5, Regular, 547900.0),
    ("M33x2", Class6, Regular, 662100.0),
    ("M33x2", Class8, Regular, 783800.0),
    ("M33x2", Class10, High, 821900.0),
    ("M36x3", Class04, Thin, 328700.0),
    ("M36x3", Class05, Thin, 432500.0),
    ("M36x3", Class5, Regular, 622800.0),
    ("M36x3", Class6, Regular, 804500.0),
    ("M36x3", Class8, Regular, 942900.0),
    ("M36x3", Class10, High, 934200.0),
    ("M39x3", Class04, Thin, 391400.0),
    ("M39x3", Class05, Thin, 515000.0),
    ("M39x3", Class5, Regular, 741600.0),
    ("M39x3", Class6, Regular, 957900.0),
    ("M39x3", Class8, Regular, 1122700.0),
    ("M39x3", Class10, High, 1112400.0),
];
