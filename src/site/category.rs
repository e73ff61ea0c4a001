//! The categories of corrosivity, C1 to CX.

use crate::quantity::{Quantity, Rate, unit};
use crate::source::Source;
use crate::table::Refusal;
use crate::table::iso_9223::{self, CategoryRow};

/// How corrosive the air of a place is (ISO 9223).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Category {
    /// Very low.
    C1,
    /// Low.
    C2,
    /// Medium.
    C3,
    /// High.
    C4,
    /// Very high.
    C5,
    /// Extreme.
    Cx,
}

/// Loss of zinc in the first year: from `lower` to `upper`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rates {
    /// The least loss; the mildest category has no lower limit.
    pub lower: Option<Rate>,
    /// The greatest loss.
    pub upper: Rate,
    /// Where the limits come from.
    pub source: Source,
}

impl Category {
    /// From the mildest to the harshest.
    pub const ALL: [Self; 6] = [Self::C1, Self::C2, Self::C3, Self::C4, Self::C5, Self::Cx];

    /// The category's name, which is also its key in links: `C4`.
    pub fn key(self) -> &'static str {
        self.row().name
    }

    /// How corrosive the air is, in words: `high`.
    pub fn corrosivity(self) -> &'static str {
        self.row().corrosivity
    }

    /// Such places indoors and outdoors, by ISO 9223, Table C.1; the loss of zinc decides, not the words.
    pub fn places(self) -> [&'static str; 2] {
        let row = self.row();
        [row.indoors, row.outdoors]
    }

    /// Reads `C4`, `c4`, `CX`; anything else is no category.
    pub fn read(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|category| category.key().eq_ignore_ascii_case(text.trim()))
    }

    /// The loss of zinc in the first year (ISO 9223, Table 2).
    pub fn rates(self) -> Rates {
        let CategoryRow { lower, upper, source, .. } = *self.row();
        Rates { lower, upper, source }
    }

    /// The category of a first-year loss of zinc; an upper limit belongs to the milder category.
    ///
    /// # Errors
    /// A loss of nothing or less, or above the limit of CX.
    pub fn of_rate(rate: Rate) -> Result<Self, Refusal> {
        let harshest = Self::Cx.rates();
        let within = |category: &Self| rate.um_year() <= category.rates().upper.um_year();
        let refusal = || {
            Refusal::outside(
                "first-year loss of zinc",
                rate.show(&unit::UM_YEAR, 2),
                Rate::from_um_year(0.0).show(&unit::UM_YEAR, 0),
                harshest.upper.show(&unit::UM_YEAR, 0),
                harshest.source,
            )
        };
        let category = Self::ALL.into_iter().find(within).filter(|_| rate.um_year() > 0.0);
        category.ok_or_else(refusal)
    }

    fn row(self) -> &'static CategoryRow {
        match self {
            Self::C1 => &iso_9223::C1,
            Self::C2 => &iso_9223::C2,
            Self::C3 => &iso_9223::C3,
            Self::C4 => &iso_9223::C4,
            Self::C5 => &iso_9223::C5,
            Self::Cx => &iso_9223::CX,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn categories_join_without_a_gap() {
        for (milder, harsher) in Category::ALL.into_iter().zip(Category::ALL.into_iter().skip(1)) {
            assert_eq!(harsher.rates().lower, Some(milder.rates().upper));
            assert_eq!(Category::of_rate(milder.rates().upper), Ok(milder));
            let just_above = milder.rates().upper * 1.001;
            assert_eq!(Category::of_rate(just_above), Ok(harsher));
        }
    }

    #[test]
    fn what_is_no_category_is_refused() {
        assert_eq!(Category::read(" cx "), Some(Category::Cx));
        assert_eq!(Category::read("C5-M"), None);
        let refusal = Category::of_rate(Rate::from_um_year(30.0)).unwrap_err().to_string();
        assert!(refusal.contains("25\u{a0}µm/year"), "{refusal}");
        assert!(Category::of_rate(Rate::from_um_year(0.0)).is_err());
        assert!(Category::of_rate(Rate::from_um_year(f64::NAN)).is_err());
    }
}
