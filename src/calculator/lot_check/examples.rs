//! Worked examples.

use crate::calculator::Example;

/// Each by another standard or in another unit.
pub(super) static EXAMPLES: [Example; 8] = [
    Example {
        title: "Hot-dip bolts of 1/2 in by ASTM A153, five readings on five bolts",
        pairs: &[(
            "readings",
            "56 58 54 61 55\n52 57 59 55 60\n63 58 54 56 57\n49 55 58 60 53\n57 62 59 54 58",
        )],
    },
    Example {
        title: "A bare pass that the gauge cannot decide",
        pairs: &[
            ("standard", "iso10684"),
            ("agreed", "5"),
            ("readings", "50,4; 49,8; 51,2; 50,9; 50,2"),
            ("gauge", "1 µm"),
        ],
    },
    Example {
        title: "Mechanical zinc of class 55 in mil, one thin place",
        pairs: &[("standard", "b695"), ("agreed", "3"), ("readings", "2.3 2.2\n2.4 2.0\n2.3 2.5 mil")],
    },
    Example {
        title: "Spun bolts by ISO 1461 that fall short in the first sample",
        pairs: &[("standard", "iso1461"), ("lot", "300"), ("readings", "47 51; 46 49; 52 48")],
    },
    Example {
        title: "What a gauge wrote out, with numbers, dates and a summary",
        pairs: &[
            ("lot", "400"),
            (
                "readings",
                "Operator;R. Quill\nNo;Date;µm;µm;µm;µm;µm\n101;2025-03-04;55;57;54;58;56\n\
                         102;2025-03-04;53;56;57;55;54\n103;2025-03-04;58;54;56;57;60\nMean;;55;56;56;57;57",
            ),
            ("who", "R. Quill"),
            ("appearance", "accept"),
            ("adhesion", "accept"),
        ],
    },
    Example {
        title: "A production lot by ASTM F2329, measured in inches, size agreed",
        pairs: &[
            ("standard", "f2329-lot"),
            ("agreed", "3"),
            (
                "readings",
                "0.0021 0.0022 0.0021 0.0020 0.0022\n0.0020 0.0023 0.0021 0.0021 0.0020\n\
                         0.0022 0.0021 0.0020 0.0022 0.0021 in",
            ),
            ("rounding", "limit"),
        ],
    },
    Example {
        title: "Electroplate by ISO 4042 that came out too thick",
        pairs: &[("standard", "iso4042"), ("agreed", "4"), ("readings", "11,4; 10,9; 12,1; 10,2")],
    },
    Example {
        title: "Stripped and weighed, by ISO 1461",
        pairs: &[
            ("standard", "iso1461"),
            ("lot", "200"),
            ("method", "strip"),
            ("readings", "372; 401; 366 g/m²"),
        ],
    },
];
