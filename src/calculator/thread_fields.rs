//! The fields that every calculator of threads asks in the same words, and how they are read.

use std::borrow::Cow;

use super::{
    Bound, Fault, Field, FieldAbout, FieldValue, Finding, Mark, Missed, Note, Reader, Writer, Written,
    choices,
};
use crate::process::Process;
use crate::quantity::{Length, PlainNumber, Shown, Unit, unit};
use crate::rule::{self, Case, Key, Part};
use crate::source::{assumed, document};
use crate::table::asme_b1_1::Series;
use crate::thread::fit::{self, Coat, DEFAULT_UNEVENNESS};
use crate::thread::overtap::{self, Allowance, usual_bolt_class};
use crate::thread::pair::{self, Found, Mated, Room};
use crate::thread::{Designation, Thread, ToleranceClass, limits, undersize};

mod ruler;

pub(super) use ruler::{Ruler, thickness};

/// Thread.
pub(super) const THREAD: Field<Designation> = Field::text("thread", "Thread", "M16")
    .hint("As it is written: M16, M16x1.5, 5/8-11 UNC, 1 1/8-8 UN; a bolt class may follow (M16-6g).");

/// Class of the bolt thread.
pub(super) const BOLT_CLASS: Field<ToleranceClass> =
    Field::text("bolt_class", "Bolt class before the coat", "")
        .hint("6g, 6h, 6e, 6f, 8g, 5g6g …, or 1A, 2A, 3A; left empty: 6g, or 2A for an inch thread.")
        .optional();

choices! {
    /// Where the room for the zinc is made.
    pub enum Way {
        Over: "over", "Nut tapped over, bolt of its usual class";
        Under: "under", "Bolt cut under (6az)";
    }
}

/// Where the room for the zinc is made.
pub(super) const WAY: Field<Way> = Field::choice("way", "Room for the zinc", Way::CHOICES, Way::Over.key());

/// [`BOLT_CLASS`] where the room may also be made in the bolt.
pub(super) const BOLT_CLASS_OVER: Field<ToleranceClass> = BOLT_CLASS.when(&WAY, &[Way::Over.key()]);

choices! {
    /// How a nut is tapped.
    pub enum Tapped {
        Usual: "usual", "As usual: 6AZ, or ASTM A563 for an inch thread; 6H on a bolt cut under";
        Az: "az", "6AZ, ISO 965-5: for spun hot-dip coats";
        Ax: "ax", "6AX, ISO 965-5: for heavier hot-dip coats";
        A563: "a563", "ASTM A563, inch";
        A563M: "a563m", "ASTM A563M, metric";
        Own: "own", "Own allowance on 6H or 2B";
        Standard: "standard", "Standard nut, 6H or 2B";
    }
}

/// How the nut is tapped.
pub(super) const ALLOWANCE: Field<Tapped> =
    Field::choice("allowance", "Nut", Tapped::CHOICES, Tapped::Usual.key())
        .hint("6AZ is meant for bolts that are spun after the bath, 6AX for heavier coats.")
        .source(document::ISO_965_5.read("clause 1, notes"));

/// The user's own allowance.
pub(super) const OWN_ALLOWANCE: Field<Length> = Field::quantity(
    "own_allowance",
    "Own diametral allowance",
    &ALLOWANCE_UNITS,
    Bound::PositiveTo(
        Shown { number: 1.0, unit: &unit::UM, decimals: 0 },
        Shown { number: 2.0, unit: &unit::MM, decimals: 0 },
        "beyond it hardly any thread is left; check the unit",
    ),
    "0.4 mm",
)
.hint("How much larger than 6H or 2B every diameter of the nut is.")
.when(&ALLOWANCE, &[Tapped::Own.key()]);

/// The minimum of the coat.
pub(super) const COAT_MIN: Field<Length> =
    Field::quantity("coat_least", "Coat on the bolt, minimum", &COAT_UNITS, COAT_BOUND, "50 µm")
        .hint("ISO 10684 asks for 50 µm as the average of a batch, 40 µm at any place.")
        .source(document::ISO_10684.read("8.3"));

/// The maximum of the coat; in its unit coats are shown.
pub(super) const COAT_MAX: Field<Written<Length>> =
    Field::quantity("coat_greatest", "Coat on the bolt, maximum", &COAT_UNITS, COAT_BOUND, "70 µm")
        .hint("What your galvanizer or plater holds; no standard of hot-dip coats limits it.")
        .source(assumed("greatest thickness of a spun coat"));

/// How unevenly the coat lies.
pub(super) const UNEVENNESS: Field<PlainNumber> = Field::quantity(
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

static ALLOWANCE_UNITS: [&Unit; 4] = [&unit::MM, &unit::UM, &unit::INCH, &unit::MIL];
static COAT_UNITS: [&Unit; 4] = [&unit::UM, &unit::MM, &unit::MIL, &unit::INCH];
static SHARES: [&Unit; 1] = [&unit::PERCENT];
const COAT_BOUND: Bound = Bound::ZeroTo(
    Shown { number: 1.0, unit: &unit::MM, decimals: 0 },
    "zinc coats on threads are far thinner; check the unit",
);

/// A bolt, how it is cut, and how its nut is tapped.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Pair {
    /// Where the room for the zinc is made.
    pub(super) way: Way,
    /// The thread.
    pub(super) thread: Thread,
    /// The class of the bolt before its coat.
    pub(super) bolt_class: ToleranceClass,
    /// How the nut is tapped.
    pub(super) allowance: Allowance,
}

/// Bolt and nut where the room may be made in either.
pub(super) fn read_pair(reader: &mut Reader<'_>) -> Result<Pair, Missed> {
    match reader.get(&WAY) {
        Ok(way @ Way::Over) => {
            let bolt = read_bolt(reader);
            let allowance = read_allowance(reader, bolt.map(|(thread, _)| thread));
            let ((thread, bolt_class), allowance) = (bolt?, allowance?);
            // A bolt cut under is one, whichever way it was written.
            let is_under = bolt_class == undersize::CLASS && allowance == Allowance::Standard;
            Ok(Pair { way: if is_under { Way::Under } else { way }, thread, bolt_class, allowance })
        }
        Ok(way @ Way::Under) => {
            let thread = read_thread(reader).map(|(thread, _)| thread);
            let allowance = match reader.get(&ALLOWANCE) {
                Ok(Tapped::Usual) => Ok(Allowance::Standard),
                _ => read_allowance(reader, thread),
            };
            Ok(Pair { way, thread: thread?, bolt_class: undersize::CLASS, allowance: allowance? })
        }
        Err(missed) => {
            read_thread(reader)?;
            Err(missed)
        }
    }
}

/// Writes what [`read_pair`] reads.
pub(super) fn write_pair(pair: &Pair, writer: &mut Writer) {
    writer.put(&WAY, pair.way);
    match pair.way {
        Way::Over => {
            write_bolt(pair.thread, pair.bolt_class, writer);
            write_allowance(pair.allowance, writer);
        }
        Way::Under => {
            writer.put(&THREAD, Designation { thread: pair.thread, class: None });
            write_allowance(pair.allowance, writer);
        }
    }
}

/// The thread and the class of its bolt.
pub(super) fn read_bolt(reader: &mut Reader<'_>) -> Result<(Thread, ToleranceClass), Missed> {
    let thread = read_thread(reader);
    let written = reader.optional(&BOLT_CLASS);
    let written = match written? {
        Some(class) if !class.is_bolt() => {
            let why = format!("{class} is the class of a nut; write the bolt's, as 6g, 6az, 5g6g or 2A");
            return Err(reader.wrong(&BOLT_CLASS, Fault::Conflict(why)));
        }
        written => written,
    };
    let (thread, in_designation) = thread?;
    match (in_designation, written) {
        (Some(one), Some(other)) if one != other => {
            let why =
                format!("the thread is written with class {one}; take it out there or write {one} here");
            Err(reader.wrong(&BOLT_CLASS, Fault::Conflict(why)))
        }
        (one, other) => Ok((thread, one.or(other).unwrap_or(usual_bolt_class(thread)))),
    }
}

/// The thread, and the class of its bolt if it is written there.
fn read_thread(reader: &mut Reader<'_>) -> Result<(Thread, Option<ToleranceClass>), Missed> {
    let Designation { thread, class } = reader.get(&THREAD)?;
    match class {
        Some(class) if !class.is_bolt() => {
            let why = format!("{class} is the class of a nut; write the bolt's, and choose the nut below");
            Err(reader.wrong(&THREAD, Fault::Conflict(why)))
        }
        class => Ok((thread, class)),
    }
}

/// Writes what [`read_bolt`] reads.
pub(super) fn write_bolt(thread: Thread, class: ToleranceClass, writer: &mut Writer) {
    writer.put(&THREAD, Designation { thread, class: None });
    writer.put_optional(&BOLT_CLASS, Some(class));
}

/// How the nut of a thread is tapped.
pub(super) fn read_allowance(
    reader: &mut Reader<'_>,
    thread: Result<Thread, Missed>,
) -> Result<Allowance, Missed> {
    match reader.get(&ALLOWANCE)? {
        Tapped::Usual => Ok(if thread?.is_metric() { Allowance::Az } else { Allowance::A563 }),
        Tapped::Az => Ok(Allowance::Az),
        Tapped::Ax => Ok(Allowance::Ax),
        Tapped::A563 => Ok(Allowance::A563),
        Tapped::A563M => Ok(Allowance::A563M),
        Tapped::Own => reader.get(&OWN_ALLOWANCE).map(Allowance::Own),
        Tapped::Standard => Ok(Allowance::Standard),
    }
}

/// Writes what [`read_allowance`] reads.
pub(super) fn write_allowance(allowance: Allowance, writer: &mut Writer) {
    let tapped = match allowance {
        Allowance::Az => Tapped::Az,
        Allowance::Ax => Tapped::Ax,
        Allowance::A563 => Tapped::A563,
        Allowance::A563M => Tapped::A563M,
        Allowance::Own(_) => Tapped::Own,
        Allowance::Standard => Tapped::Standard,
    };
    writer.put(&ALLOWANCE, tapped);
    if let Allowance::Own(own) = allowance {
        writer.put(&OWN_ALLOWANCE, own);
    }
}

/// Whether a bolt may be put into a nut tapped like this, by the rule of the fit; nothing where it may.
pub(super) fn mating(thread: Thread, bolt_class: ToleranceClass, allowance: Allowance) -> Option<Finding> {
    let part = Part::of_pair(thread, bolt_class, allowance.class());
    let case = Case { part: Some(&part), ..Case::of(Process::HotDip) };
    let ruling = rule::rule(Key::Mating).judge(&case)?;
    (ruling.mark == Mark::Bar).then(|| Finding::new(ruling.mark, ruling.text(&case), ruling.source(&case)))
}

/// That too little thread is left, by the rule of the fit; nothing where enough is, or where the limits are
/// not known.
pub(super) fn overlap(thread: Thread, bolt_class: ToleranceClass, allowance: Allowance) -> Option<Finding> {
    let bare = limits::bolt(thread, bolt_class).ok()?;
    let nut = overtap::nut(thread, allowance).ok()?.limits;
    // How much thread is left does not hang on a coat.
    let worst = fit::room(bare.greatest(), nut.least(), 0.0);
    let mated = Mated {
        pair: pair::Pair { room: Room::Tapped(allowance), class: bolt_class, bolt: bare, nut },
        worst,
        assembly: worst.assembly(Length::ZERO),
        overlap: fit::overlap(bare.major.min, nut.minor.max, thread.pitch()),
    };
    let found = Found::Takes(Box::new(mated));
    let part = Part::of_pair(thread, bolt_class, allowance.class());
    let case = Case { part: Some(&part), fit: Some(&found), ..Case::of(Process::HotDip) };
    let ruling = rule::rule(Key::Overlap).judge(&case)?;
    (ruling.mark == Mark::Bar).then(|| Finding::new(ruling.mark, ruling.text(&case), ruling.source(&case)))
}

/// The headline of a pair that is ruled out: why it is, and no advice; nothing where no finding bars it.
pub(super) fn not_like_this(findings: &[Finding]) -> Option<String> {
    let bar = findings.iter().find(|finding| finding.mark == Mark::Bar)?;
    Some(format!("Not like this: {}.", bar.text.trim_end_matches('.')))
}

/// Up to which length of engagement the limits of a thread hold.
pub(super) fn engagement(thread: Thread) -> Note {
    let ruler = Ruler::of(thread);
    match thread.series() {
        None => Note::sourced(
            "The limits are those of the usual lengths of engagement, group N of ISO 965-1. A longer thread in a deep hole \
             needs wider ones: open its Table 2, which is not held here.",
            document::ISO_965_1.memory("group N of lengths of engagement"),
        ),
        Some(series) => {
            let (to, words) = match series {
                Series::Unef => (15.0 * thread.pitch(), "15 pitches"),
                _ => (1.5 * thread.diameter(), "1.5 diameters"),
            };
            Note::sourced(
                format!(
                    "The limits hold for engagements of up to {words}, {}; a longer thread needs wider ones.",
                    ruler.size(to)
                ),
                document::ASME_B1_1.memory("clause 5, length of engagement of the tolerances"),
            )
        }
    }
}

/// The coat with its unevenness, and the unit in which its maximum was written.
pub(super) fn read_coat(reader: &mut Reader<'_>) -> Result<(Coat, &'static Unit), Missed> {
    let unevenness = reader.get(&UNEVENNESS);
    let (coat, unit) = read_even_coat(reader)?;
    Ok((Coat { unevenness: unevenness?.one(), ..coat }, unit))
}

/// The coat where its unevenness is not asked.
pub(super) fn read_even_coat(reader: &mut Reader<'_>) -> Result<(Coat, &'static Unit), Missed> {
    let (min, max) = (reader.get(&COAT_MIN), reader.get(&COAT_MAX));
    let Written { quantity: max, unit } = max?;
    let min = min?;
    if min.exceeds(max) {
        let why = "the maximum is below the minimum; exchange the two".to_owned();
        return Err(reader.wrong(&COAT_MAX, Fault::Conflict(why)));
    }
    // Of one thickness in two units the greater writing is both its ends.
    Ok((Coat::even(min, max.max(min)), unit))
}

/// Writes what [`read_coat`] reads.
pub(super) fn write_coat(coat: Coat, unit: &'static Unit, writer: &mut Writer) {
    write_even_coat(coat, unit, writer);
    writer.put(&UNEVENNESS, PlainNumber::from_one(coat.unevenness));
}

/// Writes what [`read_even_coat`] reads.
pub(super) fn write_even_coat(coat: Coat, unit: &'static Unit, writer: &mut Writer) {
    writer.put(&COAT_MIN, coat.min);
    writer.put(&COAT_MAX, Written { quantity: coat.max, unit });
}

impl FieldValue for Designation {
    fn read(text: &str, _: &FieldAbout) -> Result<Self, Fault> {
        Self::read(text).map_err(|why| Fault::NotUnderstood(why.to_string()))
    }

    fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
        self.to_string().into()
    }
}

/// Of a bolt or a nut: which of them a field asks for, its reader looks at.
impl FieldValue for ToleranceClass {
    fn read(text: &str, _: &FieldAbout) -> Result<Self, Fault> {
        Self::read(text).ok_or_else(|| {
            Fault::NotUnderstood(format!(
                "“{text}” is no tolerance class; write for example 6g, 6az, 5g6g or 2A for a bolt, 6H, 6AZ or \
                 2B for a nut"
            ))
        })
    }

    fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
        self.to_string().into()
    }
}
