//! ASTM B602: attribute plans for coatings, articles to inspect and how many may miss.
//!
//! What is read of it is the scheme: its Tables 1 to 3 are taken from MIL-STD-105D, inspection level
//! II, single and normal, at an AQL of 0.65, 1.5 and 2.5 %, and small lots are inspected whole. The
//! numbers below are those of MIL-STD-105D from memory; whether B602 breaks its lots at the same
//! sizes was not seen. They are shown to be checked, and nothing is judged by them.

use crate::source::{Source, document::ASTM_B602};

/// A plan by size of the lot.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Plan {
    /// Least lot.
    pub min: u32,
    /// Greatest lot.
    pub max: u32,
    /// Articles to inspect; a lot of fewer is inspected whole.
    pub articles: u32,
    /// Articles that may miss.
    pub allowed: u32,
}

/// A level with its plans.
#[derive(Debug, Clone, Copy)]
pub struct Level {
    /// Its name.
    pub name: &'static str,
    /// The AQL it stands for, in per cent.
    pub aql: f64,
    /// Its plans, by lot.
    pub plans: [Plan; 14],
}

const LOTS: [(u32, u32); 14] = [
    (2, 8),
    (9, 15),
    (16, 25),
    (26, 50),
    (51, 90),
    (91, 150),
    (151, 280),
    (281, 500),
    (501, 1200),
    (1201, 3200),
    (3201, 10_000),
    (10_001, 35_000),
    (35_001, 150_000),
    (150_001, 500_000),
];

const fn level(name: &'static str, aql: f64, numbers: [(u32, u32); 14]) -> Level {
    let [a, b, c, d, e, f, g, h, i, j, k, l, m, n] = LOTS;
    let [a2, b2, c2, d2, e2, f2, g2, h2, i2, j2, k2, l2, m2, n2] = numbers;
    Level {
        name,
        aql,
        plans: [
            plan(a, a2),
            plan(b, b2),
            plan(c, c2),
            plan(d, d2),
            plan(e, e2),
            plan(f, f2),
            plan(g, g2),
            plan(h, h2),
            plan(i, i2),
            plan(j, j2),
            plan(k, k2),
            plan(l, l2),
            plan(m, m2),
            plan(n, n2),
        ],
    }
}

const fn plan((min, max): (u32, u32), (articles, allowed): (u32, u32)) -> Plan {
    Plan { min, max, articles, allowed }
}

/// Levels I to III, the strictest first.
#[rustfmt::skip]
pub static LEVELS: [Level; 3] = [
    level("Level I", 0.65, [
        (20, 0), (20, 0), (20, 0), (20, 0), (20, 0), (20, 0), (20, 0),
        (80, 1), (80, 1), (125, 2), (200, 3), (315, 5), (500, 7), (800, 10),
    ]),
    level("Level II", 1.5, [
        (8, 0), (8, 0), (8, 0), (8, 0), (8, 0), (32, 1), (32, 1),
        (50, 2), (80, 3), (125, 5), (200, 7), (315, 10), (500, 14), (800, 21),
    ]),
    level("Level III", 2.5, [
        (5, 0), (5, 0), (5, 0), (5, 0), (20, 1), (20, 1), (32, 2),
        (50, 3), (80, 5), (125, 7), (200, 10), (315, 14), (500, 21), (500, 21),
    ]),
];

/// Where the numbers are known from.
pub const NUMBERS: Source = ASTM_B602.memory("by MIL-STD-105D, Tables I and II-A");
/// Where the scheme is stated.
pub const SCHEME: Source = ASTM_B602.read("notes to Tables 1 to 3");
/// Which level holds where the order names none.
pub const DEFAULT_LEVEL: Source =
    ASTM_B602.memory("6: Level II for tests that destroy nothing, Table 4 for those that do");
/// Table 4, for destructive tests, was not found.
pub const DESTRUCTIVE: Source = ASTM_B602.read("Table 4");

impl Level {
    /// The plan for a lot; none outside the table.
    pub fn plan(&self, lot: u32) -> Option<&Plan> {
        self.plans.iter().find(|plan| (plan.min..=plan.max).contains(&lot))
    }
}
