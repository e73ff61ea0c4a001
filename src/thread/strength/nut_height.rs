//! Heights and widths of nuts, and how much of the height carries.

use crate::quantity::{Length, Quantity, unit};
use crate::source::{Source, document};
use crate::table::{Refusal, asme_b18_2_2, asme_b18_2_4_6m, iso_4032, iso_4033, nut_style};
use crate::thread::Thread;

/// The size of a nut's body.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Body {
    /// Least height.
    pub height: Length,
    /// Width across flats: the least where it is known, else the basic one.
    pub across_flats: Length,
    /// Whether that is the least width.
    pub is_least_width: bool,
    /// Where the height is published.
    pub height_source: Source,
    /// Where the width is published.
    pub width_source: Source,
}

/// A style of nut.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Style {
    /// ISO 4032, regular.
    Iso4032,
    /// ISO 4033, high.
    Iso4033,
    /// ISO 4035, thin: for locking only.
    Iso4035,
    /// ASME B18.2.2 hex, as ASTM A563 hex nuts.
    Hex,
    /// ASME B18.2.2 heavy hex, as ASTM A563 heavy hex nuts.
    HeavyHex,
    /// ASME B18.2.4.6M heavy hex, as ASTM A563M nuts of structural bolts; nuts of EN 14399 are wide as well.
    HeavyMetric,
}

/// The body of a nut of a style.
///
/// # Errors
/// Refuses a size that the style does not have.
pub fn body(thread: Thread, style: Style) -> Result<Body, Refusal> {
    let d = thread.diameter();
    let found = match style {
        Style::Iso4032 | Style::Iso4033 => {
            let width = iso_4032::LEAST_WIDTHS.iter().find(|row| same(row.0, d.mm())).map(|row| row.1);
            let height = if style == Style::Iso4032 {
                let row = iso_4032::LEAST_HEIGHTS.iter().find(|row| same(row.0, d.mm()));
                row.map(|row| (row.1, iso_4032::LEAST_SOURCE))
            } else {
                let row = iso_4033::ROWS.iter().find(|row| same(row.d, d.mm()));
                row.map(|row| (row.m_min, iso_4033::SOURCE))
            };
            width.zip(height).map(|(width, (height, height_source))| Body {
                height: Length::from_mm(height),
                across_flats: Length::from_mm(width),
                is_least_width: true,
                height_source,
                width_source: iso_4032::LEAST_SOURCE,
            })
        }
        Style::Hex | Style::HeavyHex if !thread.is_metric() => {
            let (rows, min, width_source) = if style == Style::Hex {
                (asme_b18_2_2::HEX, asme_b18_2_2::HEX_LEAST, asme_b18_2_2::HEX_SOURCE)
            } else {
                (asme_b18_2_2::HEAVY, asme_b18_2_2::HEAVY_LEAST, asme_b18_2_2::HEAVY_SOURCE)
            };
            let width = rows.iter().find(|row| same(row.d, d.inch())).map(|row| row.f);
            let height = min.iter().find(|row| same(row.0, d.inch())).map(|row| row.1);
            width.zip(height).map(|(width, height)| Body {
                height: Length::from_inch(height),
                across_flats: Length::from_inch(width),
                is_least_width: false,
                height_source: asme_b18_2_2::LEAST_SOURCE,
                width_source,
            })
        }
        Style::HeavyMetric => {
            let row = asme_b18_2_4_6m::ROWS.iter().find(|row| same(row.d, d.mm()));
            // Of the tolerances nothing was read: what is held are the greatest height and width.
            if row.is_some() {
                return Err(Refusal::blank(
                    &format!("the least height and width of a {thread} nut, {}", style.name()),
                    asme_b18_2_4_6m::SOURCE,
                ));
            }
            None
        }
        Style::Iso4035 if thread.is_metric() => {
            let what = format!("the least height of a {thread} nut, {}", style.name());
            return Err(Refusal::blank(&what, style.source()));
        }
        _ => None,
    };
    found.ok_or_else(|| Refusal::not_covered(&format!("a {thread} nut"), style.covers(), style.source()))
}

fn same(printed: f64, asked: f64) -> bool {
    (printed - asked).abs() < 1e-6
}

/// Depth of a countersink from its greatest diameter, 1.08 diameters, at 90°.
///
/// Counted from the basic minor diameter, so that tapping over does not seem to add thread.
pub fn countersink(thread: Thread) -> Length {
    let (_, widest) = iso_4032::COUNTERSINK;
    (widest * thread.diameter() - thread.minor_diameter()) / 2.0
}

/// Where the countersink comes from.
pub const COUNTERSINK: Source = document::ISO_4032.memory("da at most 1.08 D, 90°");
/// The share of a countersink's depth that carries nothing.
pub const COUNTERSINK_LOST: f64 = 0.6;
/// Where that share is published.
pub const EFFECTIVE: Source = document::ISO_16224.read("4.2.3, effective nut height");

/// The height that carries: `m − 0.6 hc` for each countersunk end.
///
/// # Errors
/// Refuses a nut that its countersinks leave no height.
pub fn effective(height: Length, countersink: Length, ends: u8) -> Result<Length, Refusal> {
    let carries = height.mm() - COUNTERSINK_LOST * f64::from(ends) * countersink.mm();
    if carries > 0.0 {
        return Ok(Length::from_mm(carries));
    }
    Err(Refusal::not_covered(
        &format!(
            "a nut {} high with countersinks {} deep",
            height.show(&unit::MM, 2),
            countersink.show(&unit::MM, 2)
        ),
        "nuts whose countersinks leave thread between them",
        EFFECTIVE,
    ))
}

impl Style {
    /// As it is called.
    pub fn name(self) -> &'static str {
        match self {
            Self::Iso4032 => "ISO 4032, regular",
            Self::Iso4033 => "ISO 4033, high",
            Self::Iso4035 => "ISO 4035, thin",
            Self::Hex => "ASME B18.2.2 hex",
            Self::HeavyHex => "ASME B18.2.2 heavy hex",
            Self::HeavyMetric => "ASME B18.2.4.6M heavy hex",
        }
    }

    /// The style as the tables of loads call it.
    pub fn of_loads(self) -> nut_style::Style {
        match self {
            Self::Iso4032 => nut_style::Style::Regular,
            Self::Iso4033 => nut_style::Style::High,
            Self::Iso4035 => nut_style::Style::Thin,
            Self::Hex => nut_style::Style::Hex,
            Self::HeavyHex | Self::HeavyMetric => nut_style::Style::HeavyHex,
        }
    }

    /// The body of a nut that the tables of loads call so, where its sizes are known here.
    pub fn of(style: nut_style::Style, thread: Thread) -> Option<Self> {
        Some(match style {
            nut_style::Style::Regular => Self::Iso4032,
            nut_style::Style::High => Self::Iso4033,
            nut_style::Style::Hex => Self::Hex,
            nut_style::Style::HeavyHex if thread.is_metric() => Self::HeavyMetric,
            nut_style::Style::HeavyHex => Self::HeavyHex,
            nut_style::Style::Thin => Self::Iso4035,
            nut_style::Style::Square => return None,
        })
    }

    fn covers(self) -> &'static str {
        match self {
            Self::Iso4032 => "M5 to M64 without M7",
            Self::Iso4033 => "M5, M6, M8, M10, M12, M14, M16, M20, M24, M30 and M36",
            Self::Iso4035 => "metric nuts",
            Self::Hex => "inch nuts from 1/4 to 1-1/2 in",
            Self::HeavyHex => "inch nuts from 1/4 to 4 in",
            Self::HeavyMetric => "M12 to M36 without M18 and M33",
        }
    }

    fn source(self) -> Source {
        match self {
            Self::Iso4032 => iso_4032::SOURCE,
            Self::Iso4033 => iso_4033::SOURCE,
            Self::Iso4035 => document::ISO_4035.memory("least m"),
            Self::Hex => asme_b18_2_2::HEX_SOURCE,
            Self::HeavyHex => asme_b18_2_2::HEAVY_SOURCE,
            Self::HeavyMetric => asme_b18_2_4_6m::SOURCE,
        }
    }
}
