//! Own prices of each process, and what an order comes to by them.

use super::Row;
use crate::order::Assessed;
use crate::process::Process;
use crate::quantity::number::read_number;

/// What a price is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum By {
    /// A kilogram of the parts before the zinc.
    #[default]
    Kilogram,
    /// A piece, or a set where the order is of sets.
    Piece,
}

/// The price of one process.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Price {
    /// As it was typed; empty for none.
    pub text: String,
    /// What it is for.
    pub by: By,
}

/// The prices of hot-dip, mechanical and electroplating, in whatever currency their owner thinks in.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Prices(pub [Price; 3]);

impl By {
    /// Both, in the order they are offered.
    pub const ALL: [Self; 2] = [Self::Kilogram, Self::Piece];

    /// Its key in the store.
    pub fn key(self) -> &'static str {
        match self {
            Self::Kilogram => "kg",
            Self::Piece => "piece",
        }
    }

    /// In words.
    pub fn label(self) -> &'static str {
        match self {
            Self::Kilogram => "a kilogram",
            Self::Piece => "a piece",
        }
    }
}

impl Prices {
    /// Reads what [`Prices`] wrote; what is not understood is no price.
    pub fn read(text: &str) -> Self {
        let mut prices = Self::default();
        for (price, line) in prices.0.iter_mut().zip(text.lines()) {
            let (by, text) = line.split_once(' ').unwrap_or_default();
            price.by = By::ALL.into_iter().find(|one| one.key() == by).unwrap_or_default();
            text.clone_into(&mut price.text);
        }
        prices
    }

    /// The price of a process.
    pub fn of(&self, process: Process) -> &Price {
        let [hot_dip, mechanical, electroplated] = &self.0;
        match process {
            Process::HotDip => hot_dip,
            Process::Mechanical => mechanical,
            Process::Electroplated => electroplated,
        }
    }
}

impl std::fmt::Display for Prices {
    /// As it is kept: a process a line.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        self.0.iter().try_for_each(|price| writeln!(f, "{} {}", price.by.key(), price.text))
    }
}

/// What the order costs in a process by the own price, or what is missing to say it; `None` where there
/// is no price.
pub(super) fn row(assessed: &Assessed, process: Process, prices: &Prices) -> Option<Row> {
    let price = prices.of(process);
    let text = price.text.trim();
    if text.is_empty() {
        return None;
    }
    let said = match (read_number(text), assessed.line.quantity) {
        (Err(problem), _) => problem.to_string(),
        (Ok(amount), _) if amount < 0.0 => format!("“{text}” is less than nothing; write a price"),
        (_, None) => format!("{text} {}; the order does not say how many", price.by.label()),
        (Ok(amount), Some(quantity)) => match (price.by, mass(assessed)) {
            (By::Piece, _) => format!("{:.2} ({text} a piece, {quantity} pcs)", amount * f64::from(quantity)),
            (By::Kilogram, Some(kg)) => {
                format!("{:.2} ({text} a kilogram, {kg:.1} kg of steel)", amount * kg)
            }
            (By::Kilogram, None) => format!("{text} a kilogram; the weight of a piece is not known here"),
        },
    };
    Some(Row::said("Cost by the own price", said))
}

/// The steel of the whole order in kilograms, all parts of a set together.
fn mass(assessed: &Assessed) -> Option<f64> {
    Some(assessed.judgement.mass()?.kg() * f64::from(assessed.line.quantity?))
}
