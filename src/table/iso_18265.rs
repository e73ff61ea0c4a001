//! ISO 18265 Table A.1: unalloyed and low-alloy steels and cast steel.
//!
//! Vickers, Brinell, Rockwell C and tensile strength stand in one row, so that going from one to
//! another chains no tables. Brinell numbers above 470 HV are printed in brackets, beyond the
//! range that was tested; [`BRINELL_TO`] keeps them apart.

use crate::source::Source;
use crate::source::document::ISO_18265;

/// A row of Table A.1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Vickers.
    pub hv: f64,
    /// Tensile strength in MPa.
    pub tensile: Option<f64>,
    /// Brinell; in brackets above 470 HV.
    pub hb: Option<f64>,
    /// Rockwell C, from 240 HV on.
    pub hrc: Option<f64>,
}

/// Table A.1.
pub const TABLE_A_1_SOURCE: Source = ISO_18265.read("Table A.1");

/// Hardest row whose Brinell number is not in brackets, in HV.
pub const BRINELL_TO: f64 = 470.0;

const fn r(hv: f64, tensile: Option<f64>, hb: Option<f64>, hrc: Option<f64>) -> Row {
    Row { hv, tensile, hb, hrc }
}

/// Table A.1, softest row first.
#[rustfmt::skip]
pub static TABLE_A_1: &[Row] = &[
    r(80.0, Some(255.0), Some(76.0), None),
    r(85.0, Some(270.0), Some(80.7), None),
    r(90.0, Some(285.0), Some(85.5), None),
    r(95.0, Some(305.0), Some(90.2), None),
    r(100.0, Some(320.0), Some(95.0), None),
    r(105.0, Some(335.0), Some(99.8), None),
    r(110.0, Some(350.0), Some(105.0), None),
    r(115.0, Some(370.0), Some(109.0), None),
    r(120.0, Some(385.0), Some(114.0), None),
    r(125.0, Some(400.0), Some(119.0), None),
    r(130.0, Some(415.0), Some(124.0), None),
    r(135.0, Some(430.0), Some(128.0), None),
    r(140.0, Some(450.0), Some(133.0), None),
    r(145.0, Some(465.0), Some(138.0), None),
    r(150.0, Some(480.0), Some(143.0), None),
    r(155.0, Some(495.0), Some(147.0), None),
    r(160.0, Some(510.0), Some(152.0), None),
    r(165.0, Some(530.0), Some(156.0), None),
    r(170.0, Some(545.0), Some(162.0), None),
    r(175.0, Some(560.0), Some(166.0), None),
    r(180.0, Some(575.0), Some(171.0), None),
    r(185.0, Some(595.0), Some(176.0), None),
    r(190.0, Some(610.0), Some(181.0), None),
    r(195.0, Some(625.0), Some(185.0), None),
    r(200.0, Some(640.0), Some(190.0), None),
    r(205.0, Some(660.0), Some(195.0), None),
    r(210.0, Some(675.0), Some(199.0), None),
    r(215.0, Some(690.0), Some(204.0), None),
    r(220.0, Some(705.0), Some(209.0), None),
    r(225.0, Some(720.0), Some(214.0), None),
    r(230.0, Some(740.0), Some(219.0), None),
    r(235.0, Some(755.0), Some(223.0), None),
    r(240.0, Some(770.0), Some(228.0), Some(20.3)),
    r(245.0, Some(785.0), Some(233.0), Some(21.3)),
    r(250.0, Some(800.0), Some(238.0), Some(22.2)),
    r(255.0, Some(820.0), Some(242.0), Some(23.1)),
    r(260.0, Some(835.0), Some(247.0), Some(24.0)),
    r(265.0, Some(850.0), Some(252.0), Some(24.8)),
    r(270.0, Some(865.0), Some(257.0), Some(25.6)),
    r(275.0, Some(880.0), Some(261.0), Some(26.4)),
    r(280.0, Some(900.0), Some(266.0), Some(27.1)),
    r(285.0, Some(915.0), Some(271.0), Some(27.8)),
    r(290.0, Some(930.0), Some(276.0), Some(28.5)),
    r(295.0, Some(950.0), Some(280.0), Some(29.2)),
    r(300.0, Some(965.0), Some(285.0), Some(29.8)),
    r(310.0, Some(995.0), Some(295.0), Some(31.0)),
    r(320.0, Some(1030.0), Some(304.0), Some(32.2)),
    r(330.0, Some(1060.0), Some(314.0), Some(33.3)),
    r(340.0, Some(1095.0), Some(323.0), Some(34.4)),
    r(350.0, Some(1125.0), Some(333.0), Some(35.5)),
    r(360.0, Some(1155.0), Some(342.0), Some(36.6)),
    r(370.0, Some(1190.0), Some(352.0), Some(37.7)),
    r(380.0, Some(1220.0), Some(361.0), Some(38.8)),
    r(390.0, Some(1255.0), Some(371.0), Some(39.8)),
    r(400.0, Some(1290.0), Some(380.0), Some(40.8)),
    r(410.0, Some(1320.0), Some(390.0), Some(41.8)),
    r(420.0, Some(1350.0), Some(399.0), Some(42.7)),
    r(430.0, Some(1385.0), Some(409.0), Some(43.6)),
    r(440.0, Some(1420.0), Some(418.0), Some(44.5)),
    r(450.0, Some(1455.0), Some(428.0), Some(45.3)),
    r(460.0, Some(1485.0), Some(437.0), Some(46.1)),
    r(470.0, Some(1520.0), Some(447.0), Some(46.9)),
    r(480.0, Some(1555.0), Some(456.0), Some(47.7)),
    r(490.0, Some(1595.0), Some(466.0), Some(48.4)),
    r(500.0, Some(1630.0), Some(475.0), Some(49.1)),
    r(510.0, Some(1665.0), Some(485.0), Some(49.8)),
    r(520.0, Some(1700.0), Some(494.0), Some(50.5)),
    r(530.0, Some(1740.0), Some(504.0), Some(51.1)),
    r(540.0, Some(1775.0), Some(513.0), Some(51.7)),
    r(550.0, Some(1810.0), Some(523.0), Some(52.3)),
    r(560.0, Some(1845.0), Some(532.0), Some(53.0)),
    r(570.0, Some(1880.0), Some(542.0), Some(53.6)),
    r(580.0, Some(1920.0), Some(551.0), Some(54.1)),
    r(590.0, Some(1955.0), Some(561.0), Some(54.7)),
    r(600.0, Some(1995.0), Some(570.0), Some(55.2)),
    r(610.0, Some(2030.0), Some(580.0), Some(55.7)),
    r(620.0, Some(2070.0), Some(589.0), Some(56.3)),
    r(630.0, Some(2105.0), Some(599.0), Some(56.8)),
    r(640.0, Some(2145.0), Some(608.0), Some(57.3)),
    r(650.0, Some(2180.0), Some(618.0), Some(57.8)),
    r(660.0, None, None, Some(58.3)),
    r(670.0, None, None, Some(58.8)),
    r(680.0, None, None, Some(59.2)),
    r(690.0, None, None, Some(59.7)),
    r(700.0, None, None, Some(60.1)),
];
