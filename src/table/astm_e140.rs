//! ASTM E140: Rockwell, Vickers and Brinell hardness of non-austenitic steels beside each other.
//!
//! Table 1 is the Rockwell C range, Table 2 the Rockwell B range. Brinell numbers above 58 HRC are
//! printed in brackets, beyond the range of the test; [`TABLE_1_BRINELL_TO`] keeps them apart.

use crate::source::document::ASTM_E140;
use crate::source::{Basis, Source};

/// A row of Table 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RowC {
    /// Rockwell C.
    pub hrc: f64,
    /// Vickers.
    pub hv: f64,
    /// Brinell, hard-metal ball, 3000 kgf; in brackets above 58 HRC.
    pub hb: Option<f64>,
    /// Approximate tensile strength in MPa, as charts of the table print it beside.
    pub tensile: Option<f64>,
    /// How the row is known.
    pub basis: Basis,
}

/// A row of Table 2.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RowB {
    /// Rockwell B.
    pub hrb: f64,
    /// Vickers.
    pub hv: f64,
    /// Brinell, 3000 kgf; blank where public copies contradict each other.
    pub hb: Option<f64>,
}

/// Table 1, on the basis of its row.
pub const fn table_1(basis: Basis) -> Source {
    ASTM_E140.known("Table 1", basis)
}

/// Table 2.
pub const TABLE_2_SOURCE: Source = ASTM_E140.read("Table 2");

/// Hardest row of Table 1 whose Brinell number is not in brackets, in HRC.
pub const TABLE_1_BRINELL_TO: f64 = 58.0;

const fn c(hrc: f64, hv: f64, hb: Option<f64>, tensile: Option<f64>, basis: Basis) -> RowC {
    RowC { hrc, hv, hb, tensile, basis }
}

const fn b(hrb: f64, hv: f64, hb: Option<f64>) -> RowB {
    RowB { hrb, hv, hb }
}

/// Table 1, softest row first. The odd rows below 34 HRC are from memory.
#[rustfmt::skip]
pub static TABLE_1: &[RowC] = &[
    c(20.0, 238.0, Some(226.0), Some(758.0), Basis::Read),
    c(21.0, 243.0, Some(231.0), Some(772.0), Basis::Memory),
    c(22.0, 248.0, Some(237.0), Some(793.0), Basis::Read),
    c(23.0, 254.0, Some(243.0), Some(807.0), Basis::Memory),
    c(24.0, 260.0, Some(247.0), Some(820.0), Basis::Read),
    c(25.0, 266.0, Some(253.0), Some(848.0), Basis::Memory),
    c(26.0, 272.0, Some(258.0), Some(862.0), Basis::Read),
    c(27.0, 279.0, Some(264.0), Some(883.0), Basis::Memory),
    c(28.0, 286.0, Some(271.0), Some(903.0), Basis::Read),
    c(29.0, 294.0, Some(279.0), Some(931.0), Basis::Memory),
    c(30.0, 302.0, Some(286.0), Some(951.0), Basis::Read),
    c(31.0, 310.0, Some(294.0), Some(972.0), Basis::Memory),
    c(32.0, 318.0, Some(301.0), Some(1007.0), Basis::Read),
    c(33.0, 327.0, Some(311.0), Some(1027.0), Basis::Memory),
    c(34.0, 336.0, Some(319.0), Some(1048.0), Basis::Read),
    c(35.0, 345.0, Some(327.0), Some(1076.0), Basis::Read),
    c(36.0, 354.0, Some(336.0), Some(1110.0), Basis::Read),
    c(37.0, 363.0, Some(344.0), Some(1145.0), Basis::Read),
    c(38.0, 372.0, Some(353.0), Some(1179.0), Basis::Read),
    c(39.0, 382.0, Some(362.0), Some(1220.0), Basis::Read),
    c(40.0, 392.0, Some(371.0), Some(1255.0), Basis::Read),
    c(41.0, 402.0, Some(381.0), Some(1296.0), Basis::Read),
    c(42.0, 412.0, Some(390.0), Some(1344.0), Basis::Read),
    c(43.0, 423.0, Some(400.0), Some(1386.0), Basis::Read),
    c(44.0, 434.0, Some(409.0), Some(1434.0), Basis::Read),
    c(45.0, 446.0, Some(421.0), Some(1482.0), Basis::Read),
    c(46.0, 458.0, Some(432.0), Some(1524.0), Basis::Read),
    c(47.0, 471.0, Some(443.0), Some(1579.0), Basis::Read),
    c(48.0, 484.0, Some(455.0), Some(1634.0), Basis::Read),
    c(49.0, 498.0, Some(469.0), Some(1696.0), Basis::Read),
    c(50.0, 513.0, Some(481.0), Some(1758.0), Basis::Read),
    c(51.0, 528.0, Some(496.0), Some(1820.0), Basis::Read),
    c(52.0, 544.0, Some(512.0), Some(1882.0), Basis::Read),
    c(53.0, 560.0, Some(525.0), Some(1951.0), Basis::Read),
    c(54.0, 577.0, Some(543.0), Some(2013.0), Basis::Read),
    c(55.0, 595.0, Some(560.0), Some(2075.0), Basis::Read),
    c(56.0, 613.0, Some(577.0), Some(2158.0), Basis::Read),
    c(57.0, 633.0, Some(595.0), Some(2241.0), Basis::Read),
    c(58.0, 653.0, Some(615.0), Some(2330.0), Basis::Read),
    c(59.0, 674.0, Some(634.0), Some(2420.0), Basis::Read),
    c(60.0, 697.0, Some(654.0), None, Basis::Read),
    c(61.0, 720.0, Some(670.0), None, Basis::Read),
    c(62.0, 746.0, Some(688.0), None, Basis::Read),
    c(63.0, 772.0, Some(705.0), None, Basis::Read),
    c(64.0, 800.0, Some(722.0), None, Basis::Read),
    c(65.0, 832.0, Some(739.0), None, Basis::Read),
    c(66.0, 865.0, None, None, Basis::Read),
    c(67.0, 900.0, None, None, Basis::Read),
    c(68.0, 940.0, None, None, Basis::Read),
];

/// Table 2, softest row first.
#[rustfmt::skip]
pub static TABLE_2: &[RowB] = &[
    b(55.0, 100.0, Some(100.0)),
    b(56.0, 101.0, Some(101.0)),
    b(57.0, 103.0, None),
    b(58.0, 104.0, None),
    b(59.0, 106.0, None),
    b(60.0, 107.0, Some(107.0)),
    b(61.0, 108.0, Some(108.0)),
    b(62.0, 110.0, Some(110.0)),
    b(63.0, 112.0, Some(112.0)),
    b(64.0, 114.0, Some(114.0)),
    b(65.0, 116.0, Some(116.0)),
    b(66.0, 117.0, Some(117.0)),
    b(67.0, 119.0, Some(119.0)),
    b(68.0, 121.0, Some(121.0)),
    b(69.0, 123.0, Some(123.0)),
    b(70.0, 125.0, Some(125.0)),
    b(71.0, 127.0, Some(127.0)),
    b(72.0, 130.0, Some(130.0)),
    b(73.0, 132.0, Some(132.0)),
    b(74.0, 135.0, Some(135.0)),
    b(75.0, 137.0, Some(137.0)),
    b(76.0, 139.0, Some(139.0)),
    b(77.0, 141.0, Some(141.0)),
    b(78.0, 144.0, Some(144.0)),
    b(79.0, 147.0, Some(147.0)),
    b(80.0, 150.0, Some(150.0)),
    b(81.0, 153.0, Some(153.0)),
    b(82.0, 156.0, Some(156.0)),
    b(83.0, 159.0, Some(159.0)),
    b(84.0, 162.0, Some(162.0)),
    b(85.0, 165.0, Some(165.0)),
    b(86.0, 169.0, Some(169.0)),
    b(87.0, 172.0, Some(172.0)),
    b(88.0, 176.0, Some(176.0)),
    b(89.0, 180.0, Some(180.0)),
    b(90.0, 185.0, Some(185.0)),
    b(91.0, 190.0, Some(190.0)),
    b(92.0, 195.0, Some(195.0)),
    b(93.0, 200.0, Some(200.0)),
    b(94.0, 205.0, Some(205.0)),
    b(95.0, 210.0, Some(210.0)),
    b(96.0, 216.0, Some(216.0)),
    b(97.0, 222.0, Some(222.0)),
    b(98.0, 228.0, Some(228.0)),
    b(99.0, 234.0, Some(234.0)),
    b(100.0, 240.0, Some(240.0)),
];
