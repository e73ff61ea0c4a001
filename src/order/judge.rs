//! The verdicts on an order line: what the rules say of every part of it, in every process.
//!
//! No rule stands here. A line is one part, or a set of bolt, nut and washer: each is judged by its
//! own steel and shape, the fit by the pair. Text is made elsewhere, so that a long list of lines can
//! be judged without a word.

use std::cell::OnceCell;

use super::demand::{self, Demand};
use super::offer::{offer, thinner};
use super::threads::{bolt_class, is_metric, nut_class, ordered, ways};
use super::{Mate, OrderLine, set};
use crate::calculator::{Mark, Verdict};
use crate::coat::Process;
use crate::part::{self, Shape};
use crate::quantity::{Hardness, Length, Mass, Time};
use crate::rule::bolt_and_nut::{BoltAndNut, Carried};
use crate::rule::case::USUAL_DIP;
use crate::rule::{
    self, Case, Choice, Cleaning, InForce, Key, Offer, Part, Rule, Ruling, Site, SteelFacts, Topic, Under,
};
use crate::source::document;
use crate::steel::hardness::convert;
use crate::steel::pairing::Nuts;
use crate::steel::tempering::{self, Dip, Effect, Temper};
use crate::steel::{Grade, Level, State, Steel};
use crate::table::{Refusal, en_14399};
use crate::thread::pair::{Found, Room, Search};
use crate::thread::{Thread, ToleranceClass, coat_room};

/// The judgement on an order line.
#[derive(Debug, Clone)]
pub struct Judgement {
    /// The parts: the one that is ordered, then the nut and the washer that come with it.
    pub items: Vec<Item>,
    /// Where they will stand.
    pub site: Site,
    /// Hot-dip, mechanical, electroplated.
    pub processes: [Judged; 3],
    /// The place of the nut among the parts, and the nut that stands there where it is not tapped over.
    plain_nut: Option<Box<(usize, Item)>>,
    search: Option<Search>,
}

/// One part of the order.
#[derive(Debug, Clone)]
pub struct Item {
    /// What it is.
    pub part: Part,
    /// How many go into one set.
    pub per_set: u32,
    /// Whether a nylon patch is sprayed on it after the coat.
    pub has_patch: bool,
    /// The nuts that the standards put on it, tapped over for their zinc, where it is a bolt that they know.
    nuts: Option<Nuts>,
    /// The same, not tapped over.
    plain_nuts: OnceCell<Option<Nuts>>,
    /// Its steel, as the rules judge it.
    pub steel: Option<SteelFacts>,
    /// The dip that is reckoned with.
    pub dip: Dip,
    /// What the heat of the kettle does to its temper.
    pub heat: Option<Result<Effect, Refusal>>,
}

/// One process, judged.
#[derive(Debug, Clone)]
pub struct Judged {
    /// The process.
    pub process: Process,
    /// The document that the order stands under.
    pub under: Under,
    /// The coat it would give.
    pub offer: Option<Offer>,
    /// The pair of threads, where there is one.
    pub fit: Option<Found>,
    /// The bolt that is ordered in its nut and what they carry, where room is made in one of them.
    pair: Option<Carried>,
    /// What the rules say that count for the order, with the place of the part in [`Judgement::items`].
    pub rulings: Vec<(usize, Ruling)>,
    demands: OnceCell<Vec<Demand>>,
    /// The nearest change that would make it suit, looked for once.
    pub(super) remedy: OnceCell<Option<String>>,
}

/// A temper of which only the temperature is known is taken to have lasted an hour.
const ONE_HOUR: Time = Time::from_hour(1.0);

/// Judges an order line for the three processes.
pub fn judge(line: &OrderLine) -> Judgement {
    let ((items, plain_nut), search) = (items(line), search(line));
    let facts =
        Facts { items: &items, plain_nut: plain_nut.as_deref(), site: site(line), search: search.as_ref() };
    // One after the other where they stand: what is judged is large, and a map would move it.
    let [hot_dip, mechanical, electroplated] = Process::ALL;
    let processes =
        [facts.judge(line, hot_dip), facts.judge(line, mechanical), facts.judge(line, electroplated)];
    Judgement { site: facts.site, items, processes, plain_nut, search }
}

/// The verdict of one process alone.
pub(super) fn verdict(line: &OrderLine, process: Process) -> Verdict {
    let ((items, plain_nut), search) = (items(line), search(line));
    let facts =
        Facts { items: &items, plain_nut: plain_nut.as_deref(), site: site(line), search: search.as_ref() };
    facts.judge(line, process).verdict()
}

/// What the judgements of all processes share.
struct Facts<'a> {
    items: &'a [Item],
    plain_nut: Option<&'a (usize, Item)>,
    site: Site,
    search: Option<&'a Search>,
}

/// Whether a thinner coat may have less to prove: somebody has to see to the room for this one, or to what the
/// threads then carry. Of a nut that does not go on the bolt that says nothing: another takes its place.
fn hangs_on_thickness(judged: &Judged) -> bool {
    // Few rulings bear such a mark, and it is asked first: their rules lie far from each other.
    let hangs = judged.rulings.iter().any(|(_, ruling)| {
        matches!(ruling.mark, Mark::Condition | Mark::Bar)
            && matches!(ruling.rule.topic, Topic::Fit | Topic::Strength)
    });
    hangs && judged.says(Key::NutForBolt) != Some(Mark::Condition)
}

fn site(line: &OrderLine) -> Site {
    let OrderLine { surroundings, place, heat, most, .. } = *line;
    Site { surroundings, place, heat, wanted: line.years, most }
}

/// The search for the threads of the order, for what has a mate.
fn search(line: &OrderLine) -> Option<Search> {
    let ordered = ordered(line).filter(|_| line.part.has_mate())?;
    Some(Search::new(ordered))
}

impl Facts<'_> {
    /// The process with the class that has the fewest conditions; among equals the thickest, whose life is the
    /// longest. Without a class by name the first thought is the thinnest that is sure to last.
    fn judge(&self, line: &OrderLine, process: Process) -> Judged {
        let mut best = self.with(line, process, offer(line, self.search, process));
        if !hangs_on_thickness(&best) {
            return best;
        }
        // So little of a thread that it may strip before the bolt breaks is worse than years that are not sure.
        let may_strip = |judged: &Judged| {
            [Key::Assembles, Key::Carries].iter().all(|key| judged.says(*key) == Some(Mark::Condition))
        };
        let rank = |judged: &Judged| {
            (judged.verdict(), may_strip(judged), self.conditions(judged), !judged.is_sure())
        };
        let mut ranked = rank(&best);
        let mut next = best.offer.as_ref().and_then(|offer| thinner(line, offer));
        while let Some(offer) = next {
            let judged = self.with(line, process, Some(offer));
            let is_last = !hangs_on_thickness(&judged) || judged.says(Key::Lasts) == Some(Mark::Bar);
            next = if is_last { None } else { thinner(line, &offer) };
            let rank = rank(&judged);
            if rank < ranked && rank.0 != Verdict::RuledOut {
                (best, ranked) = (judged, rank);
            }
        }
        best
    }

    /// How much has to be proved, agreed or said, the same things counted once.
    fn conditions(&self, judged: &Judged) -> usize {
        let of = |place| {
            let item = judged.item(place, self.items.get(place)?, self.plain_nut);
            Some(case(item, &self.site, judged, place == 0))
        };
        let demands = judged.demands.get_or_init(|| demand::of(&judged.rulings, of));
        demands.iter().filter(|demand| demand.is_condition()).count()
    }

    /// The process with this coat.
    fn with(&self, line: &OrderLine, process: Process, offer: Option<Offer>) -> Judged {
        let fit = self.search.zip(offer.as_ref()).map(|(search, offer)| {
            by_table_2(line, search, offer).unwrap_or_else(|| {
                search.narrowest(process, offer.min, offer.max, ways(line, process, offer.choice)(offer.min))
            })
        });
        let under = under(line, process, offer.as_ref());
        let mut judged = Judged {
            process,
            under,
            offer,
            fit,
            pair: None,
            rulings: Vec::new(),
            demands: OnceCell::new(),
            remedy: OnceCell::new(),
        };
        judged.pair = self.items.first().and_then(|item| self.pair(item, &judged)).map(BoltAndNut::carried);
        // About as many rules speak of a part.
        let mut rulings = Vec::with_capacity(16 * self.items.len());
        for (place, item) in self.items.iter().enumerate() {
            let item = judged.item(place, item, self.plain_nut);
            let case = case(item, &self.site, &judged, place == 0);
            for rule in rule::counting(&case, under) {
                if place > 0 && !is_of_the_part(rule) {
                    continue;
                }
                if let Some(ruling) = rule.judge(&case) {
                    rulings.push((place, ruling));
                }
            }
        }
        judged.rulings = rulings;
        judged
    }

    /// The bolt in its nut, whichever of them is ordered, where room is made in one of them.
    fn pair(&self, item: &Item, judged: &Judged) -> Option<BoltAndNut> {
        let (fit, is_tapped_over) = (judged.fit.as_ref()?, judged.is_nut_tapped_over());
        let state = item.steel.as_ref().map(|steel| steel.state);
        if !item.part.kind.is_nut() {
            return set::pair(&item.part, state, item.nuts(is_tapped_over), fit);
        }
        // Nuts tapped by a published allowance, or by less, are sold every day; of others nobody says a load.
        if self.search?.has_published_nut() {
            return None;
        }
        let bolt = set::bolt_of_nut(&item.part, state?.grade()?.grade)?;
        let steel = Steel::of(bolt.bolt?, bolt.thread.map(Thread::diameter)).ok()?;
        let state = Some(State::of(steel));
        set::pair(&bolt, state, set::nuts_for(bolt.kind, bolt.thread, state, true).as_ref(), fit)
    }
}

impl Judgement {
    /// The case of a part in a process, as it was judged.
    pub fn case<'a>(&'a self, judged: &'a Judged, place: usize) -> Option<Case<'a>> {
        let item = judged.item(place, self.items.get(place)?, self.plain_nut.as_deref());
        Some(case(item, &self.site, judged, place == 0))
    }

    /// What the rules ask for in a process, the same things put together, the worst first.
    pub fn demands<'j>(&self, judged: &'j Judged) -> &'j [Demand] {
        judged.demands.get_or_init(|| demand::of(&judged.rulings, |place| self.case(judged, place)))
    }

    /// The verdict of one process on the same parts with another coat, place or years.
    pub(super) fn verdict_with(&self, line: &OrderLine, process: Process) -> Verdict {
        let facts = Facts {
            items: &self.items,
            plain_nut: self.plain_nut.as_deref(),
            site: site(line),
            search: self.search.as_ref(),
        };
        facts.judge(line, process).verdict()
    }

    /// Whether the nut is tapped over in the process that the order asks for, or in any where it asks for none.
    pub fn is_nut_tapped_over(&self, asked: Option<Process>) -> bool {
        let of = |judged: &&Judged| asked.is_none_or(|asked| judged.process == asked);
        self.processes.iter().filter(of).any(Judged::is_nut_tapped_over)
    }

    /// The part that is ordered.
    pub fn main(&self) -> Option<&Item> {
        self.items.first()
    }
}

impl Judged {
    /// Whether the nut is tapped over for the zinc: then its standard gives it another load, or none.
    pub fn is_nut_tapped_over(&self) -> bool {
        match &self.fit {
            Some(Found::Takes(mated) | Found::Binds(mated)) => matches!(mated.pair.room, Room::Tapped(_)),
            Some(Found::NotPublished(..)) => true,
            Some(Found::Unknown(_)) | None => self.process == Process::HotDip,
        }
    }

    /// The part at a place, as this process takes it.
    fn item<'a>(&self, place: usize, item: &'a Item, plain_nut: Option<&'a (usize, Item)>) -> &'a Item {
        match plain_nut {
            Some((at, plain)) if *at == place && !self.is_nut_tapped_over() => plain,
            _ => item,
        }
    }

    /// The verdict: the worst of what the rules say.
    pub fn verdict(&self) -> Verdict {
        Verdict::of_marks(self.rulings.iter().map(|(_, ruling)| ruling.mark))
    }

    /// Whether it must not be taken.
    pub fn is_ruled_out(&self) -> bool {
        self.verdict() == Verdict::RuledOut
    }

    /// What one rule says of the part that is ordered.
    pub fn ruling(&self, key: Key) -> Option<&Ruling> {
        self.rulings
            .iter()
            .find(|(place, ruling)| *place == 0 && ruling.rule.key == key)
            .map(|(_, ruling)| ruling)
    }

    /// Whether the years shown are those of a part that is insulated from another metal that it touches.
    pub fn is_life_insulated(&self) -> bool {
        self.ruling(Key::OtherMetal).is_some_and(|ruling| ruling.mark == Mark::Condition)
    }

    /// Whether the coat is sure to last the years wanted, where years are wanted.
    pub fn is_sure(&self) -> bool {
        self.says(Key::Lasts) == Some(Mark::Met)
    }

    fn says(&self, key: Key) -> Option<Mark> {
        self.ruling(key).map(|ruling| ruling.mark)
    }
}

impl Judgement {
    /// Mass of one piece, or of all the parts of a set; `None` where a shape is not known.
    pub fn mass(&self) -> Option<Mass> {
        self.items
            .iter()
            .try_fold(Mass::from_kg(0.0), |sum, item| Some(sum + item.mass()? * f64::from(item.per_set)))
    }
}

impl Item {
    /// Mass of one piece, where the shape is known.
    pub fn mass(&self) -> Option<Mass> {
        self.part.mass()
    }

    /// Its shape, if its standard has this size; `None` where no size is said.
    pub fn shape(&self) -> Option<Result<Shape, Refusal>> {
        Some(part::standard(self.part.kind, self.part.thread?, self.part.length))
    }

    /// The nuts that the standards put on it, where it is a bolt that they know.
    fn nuts(&self, is_tapped_over: bool) -> Option<&Nuts> {
        if is_tapped_over {
            return self.nuts.as_ref();
        }
        // Where they are the same with and without zinc, they are not looked up again.
        let plain = || {
            if let Some(nuts) = self.nuts.filter(|nuts| !nuts.hang_on_zinc()) {
                return Some(nuts);
            }
            let state = self.steel.as_ref().map(|steel| steel.state);
            set::nuts_for(self.part.kind, self.part.thread, state, false).filter(|_| !self.part.is_for_a_hole)
        };
        self.plain_nuts.get_or_init(plain).as_ref()
    }
}

/// Years and place belong to the whole order and are told once.
fn is_of_the_part(rule: &Rule) -> bool {
    rule.topic != Topic::Life
}

fn case<'a>(item: &'a Item, site: &'a Site, judged: &'a Judged, is_main: bool) -> Case<'a> {
    Case {
        process: judged.process,
        in_force: InForce::NONE.and(judged.under),
        steel: item.steel.as_ref(),
        heat: item.heat.as_ref(),
        dip: Some(&item.dip),
        diameter: item.part.thread.map(Thread::diameter),
        part: Some(&item.part),
        is_mate: !is_main,
        has_patch: item.has_patch,
        nuts: item.nuts(judged.is_nut_tapped_over()),
        offer: judged.offer.as_ref(),
        // The fit is that of the pair, and is told with the part that is ordered.
        fit: judged.fit.as_ref().filter(|_| is_main),
        pair: judged.pair.as_ref().filter(|_| is_main),
        site: Some(site),
    }
}

/// The parts of an order: a nut or a washer that is not named is the one that the standards ask for. The
/// nut is the one that is tapped over for its zinc; where another one stands in its place if it is not, that
/// comes with its place beside them.
fn items(line: &OrderLine) -> (Vec<Item>, Option<Box<(usize, Item)>>) {
    let mut ordered = item(line, line.part, line.length, line.steel, 1);
    let asked_for = ordered.nuts.as_ref();
    let nut_of_set = line.nut.map(|mate| (mate, set::nut_of(line, asked_for)));
    let plain = nut_of_set.and_then(|_| set::nut_of(line, ordered.nuts(false)));
    let of_set = |mate| (mate, set::washer_of(line, asked_for), set::is_washer_proposed(mate, asked_for));
    let washer_of_set = line.washer.map(of_set);
    ordered.part.is_washer_hard = washer_of_set.and_then(|(washer, steel, _)| is_hard(washer, steel));
    let mates = [line.nut, line.washer].into_iter().flatten().count();
    let mut items = Vec::with_capacity(1 + mates);
    items.push(ordered);
    let steel = |grade: Option<Grade>| {
        let steel = Steel::of(grade?, line.thread.map(Thread::diameter)).ok()?;
        Some(State::of(steel))
    };
    let nut_item = |nut: Mate, named: Option<set::Nut>| {
        let heavy = line.part.is_structural() || named.is_some_and(|nut| nut.is_heavy);
        let kind = if heavy { part::Kind::HeavyHexNut } else { part::Kind::HexNut };
        let steel = nut.hardness.map(of_hardness).or_else(|| steel(named.map(|nut| nut.grade)));
        let mut nuts = item(line, kind, None, steel, nut.per_set);
        nuts.part.is_steel_least = nut.is_hardness_least;
        nuts
    };
    let mut plain_nut = None;
    if let Some((nut, named)) = nut_of_set {
        items.push(nut_item(nut, named));
        plain_nut = (plain != named).then(|| Box::new((items.len() - 1, nut_item(nut, plain))));
    }
    if let Some((washer, steel, is_proposed)) = washer_of_set {
        let state = steel.map(State::of);
        let mut washers = item(line, set::kind_of_washer(washer), None, state, washer.per_set);
        washers.part.is_steel_proposed = is_proposed;
        washers.part.is_steel_least = washer.is_hardness_least;
        items.push(washers);
    }
    (items, plain_nut)
}

/// Whether a washer that is named is as hard as those of structural bolts: by its grade, by the hardness from which
/// those of EN 14399 are made, or by what washers of its kind are of.
fn is_hard(washer: Mate, steel: Option<Steel>) -> Option<bool> {
    if washer.grade.is_none() && washer.hardness.is_none() && washer.kind.is_none() {
        return None;
    }
    Some(match steel? {
        Steel::Grade(properties) => properties.grade == Grade::F436,
        Steel::Hardness(hardness) => {
            let from = en_14399::WASHER_FROM.value;
            let number = match convert(hardness, from.scale).map(|converted| converted.to) {
                _ if hardness.scale == from.scale => hardness.number,
                Ok(Level::Hardness(converted)) => converted.number,
                _ => return Some(false),
            };
            number >= from.number
        }
        Steel::Tensile(_) => false,
    })
}

/// A steel known by its hardness.
fn of_hardness(hardness: Hardness) -> State {
    State::of(Steel::Hardness(hardness))
}

fn item(
    line: &OrderLine,
    kind: part::Kind,
    length: Option<Length>,
    state: Option<State>,
    per_set: u32,
) -> Item {
    let dip = dip(line, state);
    let grade =
        |state: Option<State>| state.and_then(|state| state.grade()).map(|properties| properties.grade);
    Item {
        part: Part {
            kind,
            thread: line.thread,
            bolt_class: bolt_class(line),
            is_class_written: line.class.is_some_and(ToleranceClass::is_bolt),
            nut_class: nut_class(line),
            quantity: line.quantity.and_then(|sets| sets.checked_mul(per_set)),
            length,
            own_mass: None,
            bolt: grade(line.steel).filter(|grade| !grade.is_nut() && !grade.is_washer()),
            nut: line.nut.and_then(|nut| nut.grade),
            is_for_a_hole: line.hole.is_some() && kind == line.part,
            is_washer_hard: None,
            is_steel_proposed: false,
            is_steel_least: line.is_steel_least && state == line.steel && kind == line.part,
            is_steel_not_made: line.is_steel_not_made && kind == line.part,
        },
        per_set,
        has_patch: line.has_patch && kind == line.part,
        nuts: set::nuts_for(kind, line.thread, state, true).filter(|_| line.hole.is_none()),
        plain_nuts: OnceCell::new(),
        // How the plater cleans is not known yet: plain acid is the harshest, and the rules then say what to use.
        steel: state.map(|state| SteelFacts::new(state, Cleaning::Acid)),
        // An actual temper can be judged without the grade.
        heat: (state.is_some() || line.temper.is_some()).then(|| tempering::effect(&dip)),
        dip,
    }
}

/// The dip of a part: the heat of the zinc against the temper of its steel.
fn dip(line: &OrderLine, state: Option<State>) -> Dip {
    let of_line = state == line.steel;
    Dip {
        grade: state.and_then(|state| state.grade()),
        temper: line.temper.filter(|_| of_line).map(|temperature| Temper::actual(temperature, ONE_HOUR)),
        bath: line.bath,
        time: USUAL_DIP,
    }
}

/// The document that an order stands under in a process.
fn under(line: &OrderLine, process: Process, offer: Option<&Offer>) -> Under {
    let by = |document| offer.is_some_and(|offer| offer.class.document == document);
    match process {
        Process::HotDip if by(&document::ISO_10684) => Under::Iso10684,
        Process::HotDip if by(&document::ISO_1461) && is_metric(line) => Under::Iso10684,
        Process::HotDip => Under::F2329,
        Process::Mechanical => Under::B695,
        Process::Electroplated if by(&document::ASTM_B633) => Under::B633,
        Process::Electroplated if by(&document::ASTM_F1941) => Under::F1941,
        Process::Electroplated => Under::Iso4042,
    }
}

/// A class of ISO 4042 that the order names goes on the thread as ordered, where Table 2 of that document
/// gives the thread this thickness.
fn by_table_2(line: &OrderLine, search: &Search, offer: &Offer) -> Option<Found> {
    if offer.class.document != &document::ISO_4042_1999 || offer.choice != Choice::Asked {
        return None;
    }
    let thread = line.thread?;
    let length = line.length.unwrap_or(thread.diameter());
    let takes = coat_room::iso_4042_thickest(thread, bolt_class(line)?, length).ok()??;
    (offer.min <= takes.value).then(|| search.takes_as_ordered(offer.min, offer.max)).flatten()
}
