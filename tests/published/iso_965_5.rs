//! ISO 965-5:1998: nut threads AZ and AX.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis;
use kettle_barrel::thread::limits;

use crate::limit::{class, figure, limit, same_digits, thread};
use crate::seen::agree;
use kettle_barrel::source::document;

/// Deviations and limits, Table 1 of the standard; what is implied by them, computed.
#[test]
fn deviations_are_the_published_ones() {
    for &(name, designation, of_class, printed, basis) in DEVIATIONS {
        let nut = limits::nut(thread(designation), class(of_class)).unwrap();
        let um = match name {
            "EI" => nut.deviation.value.um(),
            "ES D2" => nut.deviation.value.um() + nut.pitch_tolerance.value.um(),
            "ES D1" => nut.deviation.value.um() + nut.minor_tolerance.value.um(),
            "TD2" => nut.pitch_tolerance.value.um(),
            "TD1" => nut.minor_tolerance.value.um(),
            _ => panic!("{name}"),
        };
        agree!(ISO_965_5, um.round(), printed, "{name} {designation} {of_class}");
        if name == "EI" {
            assert_eq!(nut.deviation.source.basis, basis, "{designation} {of_class}");
        }
    }
}

#[test]
fn limits_are_the_published_ones() {
    for &(name, designation, of_class, printed, _) in LIMITS {
        let ours = limit(name, designation, of_class);
        same_digits(&document::ISO_965_5, ours.mm(), printed, &format!("{name} {designation} {of_class}"));
    }
}

/// The two positions cross at a pitch of 1.6 mm: below it AZ makes more room, above it AX.
#[test]
fn az_and_ax_cross_between_m10_and_m12() {
    let ei = |designation, of_class| {
        limits::nut(thread(designation), class(of_class)).unwrap().deviation.value.um()
    };
    assert!(ei("M10", "6AZ") > ei("M10", "6AX"));
    assert!(ei("M12", "6AZ") < ei("M12", "6AX"));
}

/// M16, Table 2 (read); the thickest coat by `(D2min − d2max) / 4`, computed.
#[test]
fn the_calculator_shows_an_overtapped_m16() {
    let az = [("thread", "M16-6g"), ("allowance", "az")];
    agree!(ISO_965_5, figure("oversize-tap", &az, "D2"), "15.041 to 15.253\u{a0}mm");
    agree!(ISO_965_5, figure("oversize-tap", &az, "D1"), "14.175 to 14.550\u{a0}mm");
    agree!(ISO_965_5, figure("oversize-tap", &az, "t_even"), "94.5\u{a0}µm");
    agree!(
        ISO_965_5,
        figure("oversize-tap", &[("thread", "M16"), ("allowance", "ax")], "D2"),
        "15.121 to 15.333\u{a0}mm"
    );
}

/// Name, thread, class, printed value in µm, basis.
const DEVIATIONS: &[(&str, &str, &str, f64, Basis)] = &[
    ("EI", "M10", "6AZ", 330.0, Basis::Read),
    ("EI", "M10", "6AX", 310.0, Basis::Read),
    ("EI", "M12", "6AZ", 335.0, Basis::Read),
    ("ES D2", "M12", "6AZ", 535.0, Basis::Read),
    ("ES D1", "M12", "6AZ", 670.0, Basis::Read),
    ("TD2", "M12", "6AZ", 200.0, Basis::Computed),
    ("TD1", "M12", "6AZ", 335.0, Basis::Computed),
    ("EI", "M12", "6AX", 365.0, Basis::Read),
    ("ES D2", "M12", "6AX", 565.0, Basis::Read),
    ("ES D1", "M12", "6AX", 700.0, Basis::Read),
    ("TD2", "M12", "6AX", 200.0, Basis::Computed),
    ("TD1", "M12", "6AX", 335.0, Basis::Computed),
    ("EI", "M14", "6AZ", 340.0, Basis::Read),
    ("EI", "M16", "6AZ", 340.0, Basis::Read),
    ("EI", "M14", "6AX", 420.0, Basis::Read),
    ("EI", "M16", "6AX", 420.0, Basis::Read),
    ("EI", "M18", "6AZ", 350.0, Basis::Read),
    ("EI", "M20", "6AZ", 350.0, Basis::Read),
    ("EI", "M22", "6AZ", 350.0, Basis::Read),
    ("EI", "M18", "6AX", 530.0, Basis::Read),
    ("EI", "M20", "6AX", 530.0, Basis::Read),
    ("EI", "M22", "6AX", 530.0, Basis::Read),
    ("EI", "M24", "6AZ", 360.0, Basis::Read),
    ("EI", "M27", "6AZ", 360.0, Basis::Read),
    ("EI", "M24", "6AX", 640.0, Basis::Read),
    ("EI", "M27", "6AX", 640.0, Basis::Read),
    ("EI", "M30", "6AZ", 370.0, Basis::Read),
    ("EI", "M33", "6AZ", 370.0, Basis::Read),
    ("ES D2", "M30", "6AZ", 650.0, Basis::Read),
    ("ES D2", "M33", "6AZ", 650.0, Basis::Read),
    ("ES D1", "M30", "6AZ", 930.0, Basis::Read),
    ("ES D1", "M33", "6AZ", 930.0, Basis::Read),
    ("TD2", "M30", "6AZ", 280.0, Basis::Computed),
    ("TD2", "M33", "6AZ", 280.0, Basis::Computed),
    ("TD1", "M30", "6AZ", 560.0, Basis::Computed),
    ("TD1", "M33", "6AZ", 560.0, Basis::Computed),
    ("EI", "M30", "6AX", 750.0, Basis::Read),
    ("EI", "M33", "6AX", 750.0, Basis::Read),
    ("ES D2", "M30", "6AX", 1030.0, Basis::Read),
    ("ES D2", "M33", "6AX", 1030.0, Basis::Read),
    ("ES D1", "M30", "6AX", 1310.0, Basis::Read),
    ("ES D1", "M33", "6AX", 1310.0, Basis::Read),
    ("TD2", "M30", "6AX", 280.0, Basis::Computed),
    ("TD2", "M33", "6AX", 280.0, Basis::Computed),
    ("TD1", "M30", "6AX", 560.0, Basis::Computed),
    ("TD1", "M33", "6AX", 560.0, Basis::Computed),
    ("EI", "M36", "6AZ", 380.0, Basis::Read),
    ("EI", "M39", "6AZ", 380.0, Basis::Read),
    ("EI", "M36", "6AX", 860.0, Basis::Read),
    ("EI", "M39", "6AX", 860.0, Basis::Read),
    ("EI", "M42", "6AZ", 390.0, Basis::Read),
    ("EI", "M45", "6AZ", 390.0, Basis::Read),
    ("ES D2", "M42", "6AZ", 705.0, Basis::Read),
    ("ES D2", "M45", "6AZ", 705.0, Basis::Read),
    ("ES D1", "M42", "6AZ", 1060.0, Basis::Read),
    ("ES D1", "M45", "6AZ", 1060.0, Basis::Read),
    ("TD2", "M42", "6AZ", 315.0, Basis::Computed),
    ("TD2", "M45", "6AZ", 315.0, Basis::Computed),
    ("TD1", "M42", "6AZ", 670.0, Basis::Computed),
    ("TD1", "M45", "6AZ", 670.0, Basis::Computed),
    ("EI", "M42", "6AX", 970.0, Basis::Read),
    ("EI", "M45", "6AX", 970.0, Basis::Read),
    ("ES D2", "M42", "6AX", 1285.0, Basis::Read),
    ("ES D2", "M45", "6AX", 1285.0, Basis::Read),
    ("ES D1", "M42", "6AX", 1640.0, Basis::Read),
    ("ES D1", "M45", "6AX", 1640.0, Basis::Read),
    ("TD2", "M42", "6AX", 315.0, Basis::Computed),
    ("TD2", "M45", "6AX", 315.0, Basis::Computed),
    ("TD1", "M42", "6AX", 670.0, Basis::Computed),
    ("TD1", "M45", "6AX", 670.0, Basis::Computed),
    ("EI", "M48", "6AZ", 400.0, Basis::Read),
    ("EI", "M52", "6AZ", 400.0, Basis::Read),
    ("EI", "M48", "6AX", 1080.0, Basis::Read),
    ("EI", "M52", "6AX", 1080.0, Basis::Read),
    ("EI", "M56", "6AZ", 410.0, Basis::Read),
    ("EI", "M60", "6AZ", 410.0, Basis::Read),
    ("ES D2", "M56", "6AZ", 765.0, Basis::Read),
    ("ES D2", "M60", "6AZ", 765.0, Basis::Read),
    ("ES D1", "M56", "6AZ", 1160.0, Basis::Read),
    ("ES D1", "M60", "6AZ", 1160.0, Basis::Read),
    ("TD2", "M56", "6AZ", 355.0, Basis::Computed),
    ("TD2", "M60", "6AZ", 355.0, Basis::Computed),
    ("TD1", "M56", "6AZ", 750.0, Basis::Computed),
    ("TD1", "M60", "6AZ", 750.0, Basis::Computed),
    ("EI", "M56", "6AX", 1190.0, Basis::Read),
    ("EI", "M60", "6AX", 1190.0, Basis::Read),
    ("ES D2", "M56", "6AX", 1545.0, Basis::Read),
    ("ES D2", "M60", "6AX", 1545.0, Basis::Read),
    ("ES D1", "M56", "6AX", 1940.0, Basis::Read),
    ("ES D1", "M60", "6AX", 1940.0, Basis::Read),
    ("TD2", "M56", "6AX", 355.0, Basis::Computed),
    ("TD2", "M60", "6AX", 355.0, Basis::Computed),
    ("TD1", "M56", "6AX", 750.0, Basis::Computed),
    ("TD1", "M60", "6AX", 750.0, Basis::Computed),
    ("EI", "M64", "6AZ", 420.0, Basis::Read),
    ("ES D2", "M64", "6AZ", 795.0, Basis::Read),
    ("ES D1", "M64", "6AZ", 1220.0, Basis::Read),
    ("TD2", "M64", "6AZ", 375.0, Basis::Computed),
    ("TD1", "M64", "6AZ", 800.0, Basis::Computed),
    ("EI", "M64", "6AX", 1300.0, Basis::Read),
    ("ES D2", "M64", "6AX", 1675.0, Basis::Read),
    ("ES D1", "M64", "6AX", 2100.0, Basis::Read),
    ("TD2", "M64", "6AX", 375.0, Basis::Computed),
    ("TD1", "M64", "6AX", 800.0, Basis::Computed),
    ("EI", "M6", "6AZ", 320.0, Basis::Computed),
    ("EI", "M6", "6AX", 200.0, Basis::Computed),
    ("EI", "M8", "6AZ", 325.0, Basis::Computed),
    ("EI", "M8", "6AX", 255.0, Basis::Computed),
];

/// Table 2: limit, thread, class, printed value in mm, basis.
const LIMITS: &[(&str, &str, &str, &str, Basis)] = &[
    ("D min", "M12", "6AZ", "12.335", Basis::Read),
    ("D2 max", "M12", "6AZ", "11.398", Basis::Read),
    ("D2 min", "M12", "6AZ", "11.198", Basis::Read),
    ("D1 max", "M12", "6AZ", "10.776", Basis::Read),
    ("D1 min", "M12", "6AZ", "10.441", Basis::Read),
    ("D min", "M16", "6AZ", "16.340", Basis::Read),
    ("D2 max", "M16", "6AZ", "15.253", Basis::Read),
    ("D2 min", "M16", "6AZ", "15.041", Basis::Read),
    ("D1 max", "M16", "6AZ", "14.550", Basis::Read),
    ("D1 min", "M16", "6AZ", "14.175", Basis::Read),
    ("D min", "M18", "6AZ", "18.350", Basis::Read),
    ("D2 max", "M18", "6AZ", "16.950", Basis::Read),
    ("D2 min", "M18", "6AZ", "16.726", Basis::Read),
    ("D1 max", "M18", "6AZ", "16.094", Basis::Read),
    ("D1 min", "M18", "6AZ", "15.644", Basis::Read),
];
