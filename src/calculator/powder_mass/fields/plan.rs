//! When each thing goes in, and what goes on the zinc.

use std::borrow::Cow;

use crate::calculator::powder_mass::Plan;
use crate::calculator::run::Clock;
use crate::calculator::{Bound, Fault, Field, FieldAbout, FieldValue, Missed, Reader, Writer, choices};
use crate::quantity::{Shown, Time, Unit, unit};
use crate::source::assumed;
use crate::table::mechanical_process as practice;

choices! {
    /// What goes on the zinc.
    pub enum Finish {
        None: "none", "Nothing";
        Trivalent: "trivalent", "Trivalent chromate";
        Hexavalent: "hexavalent", "Coloured chromate (hexavalent)";
    }
}

pub(super) const PROMOTER: Field<Time> = minutes("promoter", "Promoter before the copper", 30.0, "3 min")
    .hint("A few minutes, says the trade; three are an assumption.")
    .source(assumed("3 min for “a few minutes” of promoter"));
pub(super) const SPACING: Field<Time> =
    minutes("spacing", "Between two additions of zinc", 30.0, "4 min").source(practice::SPACING.source);
pub(super) const TUMBLE: Field<Time> = minutes("tumble", "Final tumble", 60.0, "5 min")
    .hint("No time was found: an assumption.")
    .source(assumed("5 min of final tumble; no document states one"));
pub(super) const START: Field<Clock> = Field::text("start", "The run begins at", "")
    .hint("7:30; then every step has its time of day.")
    .optional();
pub(super) const FINISH: Field<Finish> =
    Field::choice("finish", "On the zinc", Finish::CHOICES, Finish::None.key());
pub(super) const PATCH: Field<bool> = Field::yes_no("patch", "A nylon patch is sprayed on afterwards");

static MINUTES: [&Unit; 2] = [&unit::MINUTE, &unit::SECOND];

const fn minutes(key: &'static str, label: &'static str, max: f64, default: &'static str) -> Field<Time> {
    let max = Shown { number: max, unit: &unit::MINUTE, decimals: 0 };
    Field::quantity(key, label, &MINUTES, Bound::ZeroTo(max, "a run takes an hour"), default)
}

/// Reads the plan.
pub(super) fn read(reader: &mut Reader<'_>) -> Result<Plan, Missed> {
    let (promoter, spacing, tumble) = (reader.get(&PROMOTER), reader.get(&SPACING), reader.get(&TUMBLE));
    let (start, finish, patch) = (reader.optional(&START), reader.get(&FINISH), reader.get(&PATCH));
    Ok(Plan {
        promoter: promoter?,
        spacing: spacing?,
        tumble: tumble?,
        start: start?,
        finish: finish?,
        patch: patch?,
    })
}

/// Writes the plan.
pub(super) fn write(plan: &Plan, writer: &mut Writer) {
    writer.put(&PROMOTER, plan.promoter);
    writer.put(&SPACING, plan.spacing);
    writer.put(&TUMBLE, plan.tumble);
    writer.put_optional(&START, plan.start);
    writer.put(&FINISH, plan.finish);
    writer.put(&PATCH, plan.patch);
}

impl FieldValue for Clock {
    fn read(text: &str, _: &FieldAbout) -> Result<Self, Fault> {
        Self::read(text).map_err(Fault::NotUnderstood)
    }

    fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
        self.to_string().into()
    }
}
