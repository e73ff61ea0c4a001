//! The fields that every calculator of threads asks in the same words, and how they are read.

use super::{Bound, Choice, Fault, FieldAbout as Field, Reader};
use crate::quantity::{Length, PlainNumber, Quantity, Shown, Unit, unit};
use crate::source::{assumed, document};
use crate::thread::class::BoltPosition;
use crate::thread::fit::{Coat, DEFAULT_UNEVENNESS};
use crate::thread::overtap::Allowance;
use crate::thread::{Designation, Thread, ToleranceClass};

/// Thread.
pub(super) const THREAD: Field = Field::text("thread", "Thread", "M16")
    .hint("As it is written: M16, M16x1.5, 5/8-11 UNC, 1 1/8-8 UN; a bolt class may follow (M16-6g).");

/// Class of the bolt thread.
pub(super) const BOLT_CLASS: Field = Field::text("bolt_class", "Bolt class before the coat", "")
    .hint("6g, 6h, 6e, 6f, 8g, 5g6g …, or 1A, 2A, 3A; left empty: 6g, or 2A for an inch thread.")
    .optional();

/// How the nut is tapped.
pub(super) const ALLOWANCE: Field = Field::choice("allowance", "Nut", &ALLOWANCES, "usual")
    .hint("6AZ is meant for bolts that are spun after the bath, 6AX for heavier coats.")
    .source(document::ISO_965_5.read("clause 1, notes"));

/// The user's own allowance.
pub(super) const OWN_ALLOWANCE: Field = Field::quantity(
    "own_allowance",
    "Own diametral allowance",
    &ALLOWANCE_UNITS,
    Bound::PositiveTo(
        Shown { number: 2.0, unit: &unit::MM, decimals: 0 },
        "beyond it hardly any thread is left; check the unit",
    ),
    "0.4 mm",
)
.hint("How much larger than 6H or 2B every diameter of the nut is.")
.when("allowance", &["own"]);

/// The least coat.
pub(super) const COAT_MIN: Field =
    Field::quantity("coat_least", "Coat on the bolt, least", &COAT_UNITS, COAT_BOUND, "50 µm")
        .hint("ISO 10684 asks for 50 µm as the average of a batch, 40 µm at any place.")
        .source(document::ISO_10684.read("8.3"));

/// The greatest coat.
pub(super) const COAT_MAX: Field =
    Field::quantity("coat_greatest", "Coat on the bolt, greatest", &COAT_UNITS, COAT_BOUND, "70 µm")
        .hint("What your galvanizer or plater holds; no standard of hot-dip coats limits it.")
        .source(assumed("greatest thickness of a spun coat"));

/// How unevenly the coat lies.
pub(super) const UNEVENNESS: Field = Field::quantity(
    "spread",
    "Unevenness on the thread",
    &SHARES,
    Bound::Between(
        Shown { number: 0.0, unit: &unit::PERCENT, decimals: 0 },
        Shown { number: 95.0, unit: &unit::PERCENT, decimals: 0 },
        "a coat has some thickness everywhere",
    ),
    "25 %",
)
.hint("How much thicker it may be on flanks and in roots, and thinner on crests; 0 for an even coat.")
.source(DEFAULT_UNEVENNESS.source);

static ALLOWANCES: [Choice; 7] = [
    Choice::new("usual", "Tapped over as usual: 6AZ, or ASTM A563 for an inch thread"),
    Choice::new("az", "6AZ, ISO 965-5: for spun hot-dip coats"),
    Choice::new("ax", "6AX, ISO 965-5: for heavier hot-dip coats"),
    Choice::new("a563", "ASTM A563, inch"),
    Choice::new("a563m", "ASTM A563M, metric"),
    Choice::new("own", "Own allowance on 6H or 2B"),
    Choice::new("standard", "Standard nut, 6H or 2B"),
];

static ALLOWANCE_UNITS: [&Unit; 4] = [&unit::MM, &unit::UM, &unit::INCH, &unit::MIL];
static COAT_UNITS: [&Unit; 4] = [&unit::UM, &unit::MM, &unit::MIL, &unit::INCH];
static SHARES: [&Unit; 1] = [&unit::PERCENT];
const COAT_BOUND: Bound = Bound::ZeroTo(
    Shown { number: 1.0, unit: &unit::MM, decimals: 0 },
    "zinc coats on threads are far thinner; check the unit",
);

/// The thread and the class of its bolt.
pub(super) fn read_bolt(reader: &mut Reader<'_>) -> Option<(Thread, ToleranceClass)> {
    let designation = reader.parsed("thread", Designation::read);
    let written = reader.parsed("bolt_class", |text| {
        ToleranceClass::read(text).filter(|class| class.is_bolt()).ok_or_else(|| {
            format!("“{text}” is no class of a bolt thread; write for example 6g, 6az, 5g6g, or 2A")
        })
    });
    let Designation { thread, class } = designation?;
    let in_designation = match class {
        Some(class) if !class.is_bolt() => {
            let why = format!("{class} is the class of a nut; write the bolt's, and choose the nut below");
            reader.problem("thread", Fault::Conflict(why));
            return None;
        }
        class => class,
    };
    match (in_designation, written) {
        (Some(one), Some(other)) if one != other => {
            let why =
                format!("the thread is written with class {one}; take it out there or write {one} here");
            reader.problem("bolt_class", Fault::Conflict(why));
            None
        }
        (one, other) => Some((thread, one.or(other).unwrap_or(usual_bolt_class(thread)))),
    }
}

/// The usual class of a bolt: 6g, 2A.
pub(super) fn usual_bolt_class(thread: Thread) -> ToleranceClass {
    if thread.is_metric() { ToleranceClass::bolt(6, BoltPosition::G) } else { ToleranceClass::UnifiedBolt(2) }
}

/// How the nut of a thread is tapped.
pub(super) fn read_allowance(reader: &mut Reader<'_>, thread: Option<Thread>) -> Option<Allowance> {
    let own = reader.quantity::<Length>("own_allowance");
    let key =
        reader.choice("allowance", |key| ALLOWANCES.iter().map(|c| c.key).find(|known| *known == key))?;
    match key {
        "az" => Some(Allowance::Az),
        "ax" => Some(Allowance::Ax),
        "a563" => Some(Allowance::A563),
        "a563m" => Some(Allowance::A563M),
        "own" => own.map(Allowance::Own),
        "standard" => Some(Allowance::Standard),
        _ => thread.map(|thread| if thread.is_metric() { Allowance::Az } else { Allowance::A563 }),
    }
}

/// The fields of [`read_allowance`] that choose this allowance, for a link.
pub(super) fn allowance_pairs(allowance: Allowance) -> Vec<(&'static str, String)> {
    let key = match allowance {
        Allowance::Az => "az",
        Allowance::Ax => "ax",
        Allowance::A563 => "a563",
        Allowance::A563M => "a563m",
        Allowance::Own(_) => "own",
        Allowance::Standard => "standard",
    };
    let mut pairs = vec![("allowance", key.to_owned())];
    if let Allowance::Own(own) = allowance {
        pairs.push(("own_allowance", format!("{} mm", own.mm())));
    }
    pairs
}

/// The coat with its unevenness, and the unit in which its greatest thickness was written.
pub(super) fn read_coat(reader: &mut Reader<'_>) -> Option<(Coat, &'static Unit)> {
    let unevenness = reader.quantity::<PlainNumber>("spread");
    let (coat, unit) = read_even_coat(reader)?;
    Some((Coat { unevenness: unevenness?.one(), ..coat }, unit))
}

/// The coat where its unevenness is not asked.
pub(super) fn read_even_coat(reader: &mut Reader<'_>) -> Option<(Coat, &'static Unit)> {
    let min = reader.quantity::<Length>("coat_least");
    let max = reader.number_and_unit("coat_greatest");
    let (number, unit) = max?;
    let coat = Coat::even(min?, Length::of(number, unit));
    if coat.min > coat.max {
        let why = "the greatest thickness is below the least; exchange the two".to_owned();
        reader.problem("coat_greatest", Fault::Conflict(why));
        return None;
    }
    Some((coat, unit))
}

/// The unit in which a thread's diameters are shown, with the decimals its standard prints.
#[derive(Debug, Clone, Copy)]
pub(super) struct Ruler {
    unit: &'static Unit,
    decimals: u8,
}

impl Ruler {
    /// Millimetres for a metric thread, inches for a unified one.
    pub(super) fn of(thread: Thread) -> Self {
        if thread.is_metric() {
            Self { unit: &unit::MM, decimals: 3 }
        } else {
            Self { unit: &unit::INCH, decimals: 4 }
        }
    }

    /// A diameter.
    pub(super) fn size(self, length: Length) -> Shown {
        length.show(self.unit, self.decimals)
    }

    /// A published deviation or tolerance: as a diameter, or finer where it does not end there.
    pub(super) fn exact(self, length: Length) -> Shown {
        let size = self.size(length);
        if (size.rounded() - size.number).abs() < 1e-9 { size } else { self.fine(length) }
    }

    /// A small length that enters a sum of diameters: two more decimals.
    pub(super) fn fine(self, length: Length) -> Shown {
        length.show(self.unit, self.decimals + 2)
    }
}

/// A thickness of coat in the unit the user writes coats in.
pub(super) fn thickness(length: Length, unit: &'static Unit) -> Shown {
    let decimals = match unit.symbol {
        "mil" => 2,
        "mm" => 4,
        "in" => 5,
        _ => 1,
    };
    length.show(unit, decimals)
}
