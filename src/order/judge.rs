//! The verdicts on an order line: every reason of every process, as data.
//!
//! No rule stands here: each reason is the answer of the room that owns the rule. Text is made in
//! `words`, so that a long list of lines can be judged without a word.

use super::OrderLine;
use super::fit::{Answer, Mates};
use super::offer::{Choice, Offer, offer};
use crate::calculator::{Mark, Verdict};
use crate::coat::Process;
use crate::part::{self, Shape};
use crate::quantity::{Length, Mass, Time};
use crate::rule::case::USUAL_DIP;
use crate::rule::{self, Case, Cleaning, InForce, Ruling, SteelFacts};
use crate::site::Category;
use crate::site::life::Exponent;
use crate::site::life::{Promise, Years, promise, range, thickness_needed};
use crate::steel::tempering::{self, Dip, Effect, Temper};
use crate::table::{Refusal, hotdip_process, mechanical_process};
use crate::thread::fit::Fit;
use crate::thread::overtap::Allowance;

/// The judgement on an order line.
#[derive(Debug, Clone)]
pub struct Judgement {
    /// The part, if its standard has this size.
    pub shape: Result<Shape, Refusal>,
    /// Mass of one piece, where the shape is known.
    pub piece: Option<Mass>,
    /// The steel, as the rules judge it.
    pub steel: Option<SteelFacts>,
    /// What the heat of the kettle does to its temper.
    pub heat: Option<Result<Effect, Refusal>>,
    /// The thread, as the rules judge it.
    pub facts: rule::Part,
    /// Kettle, barrel, cell.
    pub processes: [Judged; 3],
}

/// One process, judged.
#[derive(Debug, Clone)]
pub struct Judged {
    /// The process.
    pub process: Process,
    /// The coat it would give.
    pub offer: Option<Offer>,
    /// Every reason.
    pub reasons: Vec<Reason>,
}

/// A reason, as data; its words are in `words`.
#[derive(Debug, Clone)]
pub enum Reason {
    /// What a rule says.
    Rule(Ruling),
    /// ISO 10684 does not go below M8 or a pitch of 1.25 mm.
    BelowIso10684,
    /// ISO 10684 covers coarse threads.
    FinePitch,
    /// Below 3/8 in the coat is taken less well.
    BelowThreeEighths,
    /// M8 and M10 carry the reduced loads of ISO 10684, Annex A.
    ReducedLoads,
    /// Flat washers come out of the kettle stuck together.
    WashersStick,
    /// The beads keep flat washers apart.
    BeadsPart,
    /// Flat washers nest in a plating barrel.
    WashersNest,
    /// Heavier than about a pound.
    Heavy(Mass),
    /// Longer than a barrel takes without asking.
    LongForBarrel,
    /// Rods longer than two metres.
    LongForKettle,
    /// The coated bolt in a nut.
    Fits(Allowance, Box<Fit>),
    /// No tapped nut takes the coat; the best of them, if any could be judged.
    NoNut(Option<(Allowance, Box<Fit>)>),
    /// The thread's limits are not known.
    FitRefused(Refusal),
    /// A nut is dipped as a blank and tapped afterwards.
    TappedAfter(Allowance),
    /// Both threads are coated: the nut is tapped over before it is coated.
    BothCoated(Allowance, Box<Fit>),
    /// Years in the place.
    Life(Promise, Years, Years),
    /// The years wanted need more than the process gives.
    Needs(Length),
    /// The order asks for a coat of another process.
    AskedOther,
    /// Years were not wanted: the class follows the place.
    ClassForPlace,
}

/// A temper of which only the temperature is known is taken to have lasted an hour.
const ONE_HOUR: Time = Time::from_hour(1.0);

/// Judges an order line for the three processes.
pub fn judge(line: &OrderLine) -> Judgement {
    let shape = part::standard(line.part, line.thread, line.length);
    let piece = shape.as_ref().ok().map(|shape| shape.mass());
    // How the plater cleans is not known yet: plain acid is the harshest, and the rules then say
    // what to use instead.
    let steel = line.steel.map(|steel| SteelFacts::new(steel, Cleaning::Acid));
    // An actual temper can be judged without the grade.
    let heat = (line.steel.is_some() || line.temper.is_some()).then(|| tempering::effect(&dip(line)));
    let facts = rule::Part { diameter: line.thread.diameter() };
    let mates = Mates::of(line);
    let processes = Process::ALL.map(|process| {
        let offer = offer(line, &mates, process);
        let mut reasons = Vec::with_capacity(24);
        let case = Case {
            process,
            in_force: InForce::EVERY,
            steel: steel.as_ref(),
            heat: heat.as_ref(),
            part: Some(&facts),
        };
        reasons.extend(rule::judge(&case).map(Reason::Rule));
        shape_reasons(line, process, piece, &mut reasons);
        if let Some(offer) = &offer {
            reasons.extend(fit_reason(line, &mates, process, offer));
            life_reasons(line, offer, &mut reasons);
            if line.asked.is_some_and(|asked| asked.process() != Some(process)) {
                reasons.push(Reason::AskedOther);
            }
        }
        Judged { process, offer, reasons }
    });
    Judgement { shape, piece, steel, heat, facts, processes }
}

impl Judgement {
    /// The case of a process.
    pub fn case(&self, process: Process) -> Case<'_> {
        Case {
            process,
            in_force: InForce::EVERY,
            steel: self.steel.as_ref(),
            heat: self.heat.as_ref(),
            part: Some(&self.facts),
        }
    }
}

impl Judged {
    /// The verdict: the worst of the reasons.
    pub fn verdict(&self) -> Verdict {
        Verdict::of_marks(self.reasons.iter().map(Reason::mark))
    }
}

impl Reason {
    /// What it means for the verdict.
    pub fn mark(&self) -> Mark {
        match self {
            Self::Rule(ruling) => ruling.says.mark,
            Self::BelowIso10684 | Self::NoNut(_) => Mark::Bar,
            Self::FinePitch
            | Self::BelowThreeEighths
            | Self::ReducedLoads
            | Self::WashersStick
            | Self::Heavy(_)
            | Self::LongForBarrel
            | Self::LongForKettle
            | Self::FitRefused(_)
            | Self::TappedAfter(_)
            | Self::AskedOther => Mark::Condition,
            Self::BeadsPart => Mark::Met,
            Self::WashersNest | Self::Needs(_) | Self::ClassForPlace => Mark::Note,
            Self::Fits(Allowance::Standard, _) | Self::BothCoated(Allowance::Standard, _) => Mark::Met,
            Self::Fits(..) | Self::BothCoated(..) => Mark::Condition,
            Self::Life(Promise::Lasts, ..) => Mark::Met,
            Self::Life(Promise::MayLast, ..) => Mark::Condition,
            Self::Life(Promise::FallsShort, ..) => Mark::Bar,
        }
    }
}

/// The dip of an order line: the heat of the zinc against the temper of its steel.
fn dip(line: &OrderLine) -> Dip {
    Dip {
        grade: line.steel.and_then(|steel| steel.grade()),
        temper: line.temper.map(|temperature| Temper::actual(temperature, ONE_HOUR)),
        bath: line.bath,
        time: USUAL_DIP,
    }
}

fn shape_reasons(line: &OrderLine, process: Process, piece: Option<Mass>, reasons: &mut Vec<Reason>) {
    let flat = line.part.is_flat();
    let longer = |limit: Length| line.length.is_some_and(|length| length > limit);
    match process {
        Process::HotDip => {
            if line.part.has_mate() {
                kettle_thread(line, reasons);
            }
            if flat {
                reasons.push(Reason::WashersStick);
            }
            if line.part.is_rod() && longer(hotdip_process::LONGEST_ROD.value) {
                reasons.push(Reason::LongForKettle);
            }
        }
        Process::Mechanical => {
            if flat {
                reasons.push(Reason::BeadsPart);
            }
            if let Some(mass) = piece.filter(|mass| *mass > mechanical_process::HEAVIEST_PIECE.value) {
                reasons.push(Reason::Heavy(mass));
            }
            if longer(mechanical_process::LONGEST_PIECE.value) {
                reasons.push(Reason::LongForBarrel);
            }
        }
        Process::Electroplated if flat => reasons.push(Reason::WashersNest),
        Process::Electroplated => {}
    }
}

fn kettle_thread(line: &OrderLine, reasons: &mut Vec<Reason>) {
    let thread = line.thread;
    if !thread.is_metric() {
        if thread.diameter() < Length::from_inch(0.375) {
            reasons.push(Reason::BelowThreeEighths);
        }
        return;
    }
    let (min, pitch) = hotdip_process::LEAST_THREAD.value;
    if thread.diameter() < min || thread.pitch() < pitch {
        reasons.push(Reason::BelowIso10684);
    } else if !thread.is_coarse() {
        reasons.push(Reason::FinePitch);
    } else if thread.diameter() <= Length::from_mm(10.0) {
        reasons.push(Reason::ReducedLoads);
    }
}

fn fit_reason(line: &OrderLine, mates: &Mates, process: Process, offer: &Offer) -> Option<Reason> {
    let nut = line.part.is_nut();
    Some(match mates.take(process, offer.min, offer.max) {
        Answer::NoThread => return None,
        Answer::Takes(allowance, _) if nut && process == Process::HotDip => Reason::TappedAfter(allowance),
        Answer::Takes(allowance, fit) if nut => Reason::BothCoated(allowance, fit),
        Answer::Takes(allowance, fit) => Reason::Fits(allowance, fit),
        Answer::TooThick(widest) => Reason::NoNut(widest),
        Answer::Refused(refusal) => Reason::FitRefused(refusal),
    })
}

fn life_reasons(line: &OrderLine, offer: &Offer, reasons: &mut Vec<Reason>) {
    let Some(place) = line.place else { return };
    if let Some(wanted) = line.years {
        let (min, max) = years(offer, place);
        let promise = promise(offer.min, offer.max, place.rates(), wanted);
        reasons.push(Reason::Life(promise, min, max));
        if promise != Promise::Lasts {
            reasons.push(Reason::Needs(thickness_needed(place, wanted)));
        }
    } else if offer.choice == Choice::ForPlace {
        reasons.push(Reason::ClassForPlace);
    }
}

/// The years of a coat in the place of an order line, from its least at the greatest loss to its
/// greatest at the least.
pub fn years(offer: &Offer, place: Category) -> (Years, Years) {
    let rates = place.rates();
    (range(offer.min, rates, Exponent::Straight), range(offer.max, rates, Exponent::Straight))
}
