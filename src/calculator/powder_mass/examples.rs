//! Worked examples.

use crate::calculator::Example;

/// From the load of a handbook to a bucket of unknown parts.
pub(super) static EXAMPLES: [Example; 9] = [
    Example {
        title: "A barrel of M12 bolts, class 55",
        pairs: &[("pieces", "4000"), ("barrel", "0.57 m³"), ("diameter", "0.9 m"), ("start", "7:30")],
    },
    Example {
        title: "The load of a handbook: 2,000 lb of 1 in fasteners in a barrel of 20 ft³",
        pairs: &[
            ("load", "weight"),
            ("part", "hex-screw"),
            ("thread", "3/8-16 UNC"),
            ("length", "1 in"),
            ("weight", "2000 lb"),
            ("barrel", "20 ft³"),
            ("diameter", "3 ft"),
        ],
    },
    Example {
        title: "A mean of 53 µm on 100 m²",
        pairs: &[
            ("load", "area"),
            ("area", "100 m²"),
            ("asked", "thickness"),
            ("coat", "53 µm"),
            ("density", "light"),
        ],
    },
    Example {
        title: "Class 40, corrected by what the last load came out at",
        pairs: &[
            ("load", "area"),
            ("area", "60 m²"),
            ("area_weight", "700 kg"),
            ("class", "40"),
            ("earlier", "44 51 47 49 53 46 50 48"),
            ("charged", "52 µm"),
        ],
    },
    Example {
        title: "Half a tonne of inch washers, 8 µm at every place",
        pairs: &[
            ("load", "weight"),
            ("part", "washer"),
            ("thread", "1/2-13 UNC"),
            ("weight", "500 kg"),
            ("asked", "least"),
            ("least", "8 µm"),
        ],
    },
    Example {
        title: "Nuts with a height of their own, a deposit weighed in the shop",
        pairs: &[
            ("part", "hex-nut"),
            ("thread", "M16"),
            ("sizes", "m = 13 mm"),
            ("density", "own"),
            ("own_density", "5.6 g/cm³"),
            ("barrel", "20 ft³"),
            ("barrel_by", "total"),
        ],
    },
    Example {
        title: "Structural bolts too heavy for the barrel",
        pairs: &[
            ("part", "structural-bolt"),
            ("thread", "1-8 UNC"),
            ("length", "4 in"),
            ("pieces", "300"),
            ("class", "80"),
        ],
    },
    Example {
        title: "A bucket of clips that nobody knows, measured",
        pairs: &[
            ("load", "measured"),
            ("weight", "240 kg"),
            ("nearest", "flat"),
            ("plate", "2.5 mm"),
            ("class", "12"),
            ("finish", "hexavalent"),
        ],
    },
    Example {
        title: "The same bucket by a trial, with a patch to come",
        pairs: &[
            ("load", "trial"),
            ("weight", "240 kg"),
            ("trial_parts", "1500 g"),
            ("trial_zinc", "14.5 g"),
            ("trial_coat", "18 µm"),
            ("class", "12"),
            ("finish", "hexavalent"),
            ("patch", "yes"),
        ],
    },
];
