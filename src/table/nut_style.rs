//! How the tables of nuts tell them apart beside the grade: by style, and by how the thread is tapped.

/// The style of a nut: its height, and for inch nuts its width.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Style {
    /// Style 0 of ISO 898-2, thin: 0.45 to 0.8 diameters high.
    Thin,
    /// Style 1 of ISO 898-2, regular: 0.8 diameters and more.
    Regular,
    /// Style 2 of ISO 898-2, high: 0.9 diameters and more.
    High,
    /// Hex of ASME B18.2.2.
    Hex,
    /// Heavy hex of ASME B18.2.2, B18.2.4.6M or B18.2.6.
    HeavyHex,
    /// Square of ASME B18.2.2.
    Square,
}

/// How the thread of a nut is tapped.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Tapping {
    /// To the standard class: 6H, 2B.
    Standard,
    /// Over size to 6AZ of ISO 965-5.
    Az,
    /// Over size to 6AX of ISO 965-5.
    Ax,
    /// Over size by the zinc allowance of ASTM A563 or A563M.
    Zinc,
    /// Over size by an allowance of no document.
    Own,
}

impl Style {
    /// As it is called.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Thin => "style 0, thin",
            Self::Regular => "style 1",
            Self::High => "style 2",
            Self::Hex => "hex",
            Self::HeavyHex => "heavy hex",
            Self::Square => "square",
        }
    }
}
