//! In which unit, and with how many decimals, the sizes of a thread are shown.

use crate::quantity::{Area, Length, Quantity, Shown, Unit, unit};
use crate::thread::Thread;

/// The units in which a thread's sizes are shown, with the decimals its standard prints.
#[derive(Debug, Clone, Copy)]
pub(in crate::calculator) struct Ruler {
    length: (&'static Unit, u8),
    area: (&'static Unit, u8),
}

impl Ruler {
    /// Millimetres for a metric thread, inches for a unified one.
    pub(in crate::calculator) fn of(thread: Thread) -> Self {
        if thread.is_metric() {
            Self { length: (&unit::MM, 3), area: (&unit::MM2, 1) }
        } else {
            Self { length: (&unit::INCH, 4), area: (&unit::IN2, 4) }
        }
    }

    /// A diameter.
    pub(in crate::calculator) fn size(self, length: Length) -> Shown {
        length.show(self.length.0, self.length.1)
    }

    /// A published deviation or tolerance: as a diameter, or finer where it does not end there.
    pub(in crate::calculator) fn exact(self, length: Length) -> Shown {
        let size = self.size(length);
        if (size.rounded() - size.number).abs() < 1e-9 { size } else { self.fine(length) }
    }

    /// A small length that enters a sum of diameters: two more decimals.
    pub(in crate::calculator) fn fine(self, length: Length) -> Shown {
        length.show(self.length.0, self.length.1 + 2)
    }

    /// A stress area.
    pub(in crate::calculator) fn area(self, area: Area) -> Shown {
        area.show(self.area.0, self.area.1)
    }
}

/// A thickness of coat in the unit the user writes coats in.
pub(in crate::calculator) fn thickness(length: Length, unit: &'static Unit) -> Shown {
    let decimals = match unit.symbol {
        "mil" => 2,
        "mm" => 4,
        "in" => 5,
        _ => 1,
    };
    length.show(unit, decimals)
}
