//! Worked examples.

use crate::calculator::Example;

/// Bolts, nuts, rods, and a load that nobody knows the shape of.
pub(super) static EXAMPLES: [Example; 7] = [
    Example {
        title: "A batch of M20 bolts of class 8.8",
        pairs: &[
            ("thread", "M20"),
            ("length", "90 mm"),
            ("pieces", "1200"),
            ("grade", "8.8"),
            ("si_p", "0.25 %"),
            ("si", "0.2 %"),
            ("basket", "80 kg"),
        ],
    },
    Example {
        title: "Half a tonne of nuts, tapped afterwards, with the losses of the plant and a price",
        pairs: &[
            ("load", "weight"),
            ("part", "hex-nut"),
            ("thread", "M16"),
            ("coat", "55 µm"),
            ("dross", "10 %"),
            ("ash", "15 %"),
            ("price", "2900 per t"),
        ],
    },
    Example {
        title: "Threaded rods of a reactive steel",
        pairs: &[("part", "rod"), ("thread", "M24"), ("length", "1 m"), ("pieces", "60"), ("si_p", "0.08 %")],
    },
    Example {
        title: "M30 bolts of class 10.9: no high-temperature bath",
        pairs: &[
            ("thread", "M30"),
            ("length", "160 mm"),
            ("pieces", "100"),
            ("grade", "10.9"),
            ("si_p", "0.05 %"),
            ("factor", "a123"),
        ],
    },
    Example {
        title: "Bolts of class 12.9, which no kettle takes",
        pairs: &[("thread", "M16"), ("length", "80 mm"), ("pieces", "500"), ("grade", "12.9")],
    },
    Example {
        title: "A load known by its area",
        pairs: &[("load", "area"), ("area", "35 m²"), ("area_weight", "800 kg"), ("basket", "150 lb")],
    },
    Example {
        title: "A load of pins known by its weight and a calliper",
        pairs: &[("load", "measured"), ("weight", "600 lb"), ("bar", "3/8 in"), ("basket", "120 lb")],
    },
];
