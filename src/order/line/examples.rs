//! Worked examples of an order line.

use crate::calculator::Example;

/// One for each kind of job.
pub(super) static EXAMPLES: [Example; 6] = [
    Example {
        title: "Footbridge railing, class 10.9 bolts near the coast",
        pairs: &[
            ("part", "hex-bolt"),
            ("thread", "M20"),
            ("length", "90 mm"),
            ("quantity", "1200"),
            ("steel", "10.9"),
            ("place", "C4"),
            ("years", "12 years"),
        ],
    },
    Example {
        title: "Pump skid, socket screws of alloy steel",
        pairs: &[
            ("part", "socket-screw"),
            ("thread", "M10"),
            ("length", "40 mm"),
            ("quantity", "400"),
            ("steel", "a574"),
            ("place", "C3"),
            ("years", "10 years"),
        ],
    },
    Example {
        title: "Pipe rack, inch studs of B7",
        pairs: &[
            ("part", "rod"),
            ("thread", "5/8-11 UNC-2A"),
            ("length", "4 in"),
            ("quantity", "2400"),
            ("steel", "a193-b7"),
            ("place", "C5"),
            ("years", "15 years"),
        ],
    },
    Example {
        title: "Roof clips, flat washers",
        pairs: &[
            ("part", "washer"),
            ("thread", "M12"),
            ("quantity", "20000"),
            ("steel", "4.6"),
            ("place", "C3"),
            ("years", "15 years"),
            ("asked", "b695-55"),
        ],
    },
    Example {
        title: "Switch cabinet, small screws indoors",
        pairs: &[
            ("part", "hex-screw"),
            ("thread", "M6"),
            ("length", "20 mm"),
            ("quantity", "5000"),
            ("steel", "8.8"),
            ("place", "C1"),
            ("years", "20 years"),
        ],
    },
    Example {
        title: "Crane rail, class 12.9",
        pairs: &[
            ("part", "hex-bolt"),
            ("thread", "M24"),
            ("length", "120 mm"),
            ("quantity", "96"),
            ("steel", "12.9"),
            ("place", "C3"),
        ],
    },
];
