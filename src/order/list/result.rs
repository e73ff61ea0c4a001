//! What becomes of one line of a list.

use std::borrow::Cow;

use super::shared::Shared;
use super::table::{number, under};
use crate::calculator::Mark;
use crate::coat::Process;
use crate::order::judge::{Judged, Judgement, judge};
use crate::order::recommend::conditions;
use crate::order::{Answer, OrderLine, Standing, answer, arrange, read, reading};
use crate::part::Shape;
use crate::quantity::{Area, Length, Mass, Quantity, Shown, Time, Units, unit};
use crate::rule::life::{self, TABLE_ENDS};
use crate::rule::{Key, fit::room_in_words};
use crate::sentence::capital;
use crate::thread::pair::Found;

/// The heading of the results, in metric units. It is stable: further columns come at the end.
pub const HEADING: [&str; 22] = [
    "line",
    "not used",
    "problem",
    "hot-dip",
    "mechanical",
    "electroplated",
    "recommended",
    "order",
    "first",
    "threads",
    "coat min (µm)",
    "coat max (µm)",
    "years min",
    "years max",
    "zinc min (kg)",
    "zinc max (kg)",
    "weight (kg)",
    "area (m²)",
    "shares",
    "pick-up (kg)",
    "powder (kg)",
    "on the order",
];

/// One row of results.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// The line as it was written, or put together from its cells.
    pub line: String,
    /// What of it was not used, and why.
    pub not_used: String,
    /// Its cells in columns whose headings say nothing of an order: told of the list once, and here, but no
    /// reason to look at each row.
    pub left_out: String,
    /// The assessment, or what is wrong with the line.
    pub result: Result<Assessed, String>,
}

/// A line that was assessed.
#[derive(Debug, Clone, PartialEq)]
pub struct Assessed {
    /// What hot-dip, mechanical, electroplated are to the order.
    pub standings: [Standing; 3],
    /// That a coat is asked for which is not judged here; then no finish is recommended.
    pub not_judged: Option<String>,
    /// The first rule that rules each of them out, or asks for a proof first.
    pub in_the_way: [Option<Key>; 3],
    /// The finish to take and the line to put on the order.
    pub answer: Answer,
    /// What stands on the order beside that line: how it is cleaned and baked, which nuts.
    pub terms: Vec<String>,
    /// What has to be proved, agreed or said first.
    pub first: Vec<String>,
    /// The recommended finish.
    pub take: Option<Taken>,
    /// How many pieces or sets, where it is said.
    pub quantity: Option<u32>,
    /// Of the lot without its zinc, where quantity and shape are known.
    pub weight: Option<Mass>,
    /// The surface of the lot, alike.
    pub area: Option<Area>,
}

/// What the recommended finish brings.
#[derive(Debug, Clone, PartialEq)]
pub struct Taken {
    /// The process.
    pub process: Process,
    /// Where the room for the coat is made: nut, class and mark.
    pub threads: String,
    /// The coat, minimum and maximum.
    pub coat: (Length, Length),
    /// Years in the place, the shortest and the longest life; `None` where no table tells the longest.
    pub years: Option<(Time, Option<Time>)>,
    /// Zinc on the lot, minimum and maximum.
    pub zinc: Option<(Mass, Mass)>,
    /// What it goes through, which others may share.
    pub shared: Option<Shared>,
}

/// Assesses one written line.
pub fn row(line: &str) -> Row {
    let reading = reading::read(line);
    let not_used: Vec<String> = reading
        .not_used()
        .map(|(text, why)| if why.is_empty() { text.to_owned() } else { format!("{text} ({why})") })
        .collect();
    let result = match read(&reading.draft) {
        Ok(order) => Ok(assessed(&OrderLine { has_open_words: reading.has_open_words(), ..order })),
        Err(problems) => Err(problems.to_string().trim_end().replace('\n', "; ")),
    };
    Row { line: line.to_owned(), not_used: not_used.join("; "), left_out: String::new(), result }
}

fn assessed(line: &OrderLine) -> Assessed {
    let judgement = judge(line);
    let answer = answer::answer(line, &judgement);
    let taken = judgement.processes.iter().find(|judged| Some(judged.process) == answer.recommended);
    // Nobody knows what a lot weighs of which nobody says how many.
    let weight = line.quantity.and_then(|sets| Some(judgement.mass()? * f64::from(sets)));
    Assessed {
        standings: judgement.processes.each_ref().map(|judged| Standing::of(line, judged)),
        not_judged: line.not_judged(),
        in_the_way: judgement.processes.each_ref().map(in_the_way),
        first: taken.map_or_else(Vec::new, |judged| {
            conditions(&judgement, judged).map(|demand| demand.text(&judgement, judged)).collect()
        }),
        terms: taken.map_or_else(Vec::new, |judged| {
            let terms = judgement.demands(judged).iter().filter(|demand| demand.mark == Mark::Term);
            terms.map(|demand| demand.text(&judgement, judged)).collect()
        }),
        take: taken.map(|judged| take(line, &judgement, judged)),
        answer,
        quantity: line.quantity,
        weight,
        area: line.quantity.and_then(|_| arrange::area(line, &judgement, Shape::surface)),
    }
}

/// The rule of the worst mark that is above an order term.
fn in_the_way(judged: &Judged) -> Option<Key> {
    let worst = judged.rulings.iter().max_by_key(|(_, ruling)| ruling.mark)?;
    (worst.1.mark > Mark::Term).then_some(worst.1.rule.key)
}

fn take(line: &OrderLine, judgement: &Judgement, judged: &Judged) -> Taken {
    let case = judgement.case(judged, 0);
    let threads = match (judged.fit.as_ref().and_then(Found::pair_to_order), &case) {
        (Some(mated), Some(case)) => capital(&room_in_words(case, mated.pair.room)),
        _ => String::new(),
    };
    let nothing = Length::from_mm(0.0);
    Taken {
        process: judged.process,
        threads,
        coat: judged.offer.as_ref().map_or((nothing, nothing), |offer| (offer.min, offer.max)),
        years: case.and_then(|case| case.years()).map(|(min, max)| (min.min, max.most)),
        zinc: judged
            .offer
            .as_ref()
            .filter(|_| line.quantity.is_some())
            .and_then(|offer| arrange::zinc_masses(line, judgement, offer)),
        shared: Shared::of(line, judgement, judged),
    }
}

/// [`HEADING`] in the reader's units.
pub fn heading(units: Units) -> [Cow<'static, str>; HEADING.len()] {
    HEADING.map(|name| under(units, name))
}

/// The heading of the results as it is written into a file of comma-separated values.
pub fn written_heading(units: Units) -> Vec<u8> {
    in_csv(std::iter::once(heading(units)), |cell| cell.as_bytes())
}

/// Rows of results as they are written into such a file.
pub fn written(rows: &[Row], units: Units) -> Vec<u8> {
    in_csv(rows.iter().map(|row| row.record(units)), |cell| cell.as_bytes())
}

fn in_csv<T>(rows: impl Iterator<Item = [T; HEADING.len()]>, bytes: fn(&T) -> &[u8]) -> Vec<u8> {
    let mut writer = csv::Writer::from_writer(Vec::new());
    // Writing into memory has no way to fail.
    rows.for_each(|row| drop(writer.write_record(row.iter().map(bytes))));
    writer.into_inner().unwrap_or_default()
}

impl Row {
    /// The row of a line that was not assessed.
    pub(super) fn of_problem(line: String, problem: String) -> Self {
        Self { line, not_used: String::new(), left_out: String::new(), result: Err(problem) }
    }

    /// With something more that was not used.
    pub(super) fn leave_out(&mut self, what: &str) {
        add(&mut self.not_used, what);
    }

    /// Whether every word was used and the line was assessed.
    pub fn is_whole(&self) -> bool {
        self.not_used.is_empty() && self.result.is_ok()
    }

    /// What is wrong with it, or was not used.
    pub fn wrong(&self) -> Option<String> {
        let not_used = (!self.not_used.is_empty()).then(|| format!("Not used: {}", self.not_used));
        match (self.result.as_ref().err(), not_used) {
            (Some(problem), Some(not_used)) => Some(format!("{problem}; {not_used}")),
            (problem, not_used) => problem.cloned().or(not_used),
        }
    }

    /// Its verdicts, the recommended process, the line to put on the order and what comes first, in words.
    pub fn told(&self, units: Units) -> [String; 6] {
        let Ok(assessed) = &self.result else { return Default::default() };
        let [hot_dip, mechanical, electroplated] =
            assessed.standings.map(|standing| standing.words().into_owned());
        let Answer { recommended, order, .. } = &assessed.answer;
        let recommended = recommended.map_or_else(String::new, |process| process.name().to_owned());
        let first = assessed.not_judged.iter().chain(&assessed.first).map(String::as_str);
        let first = first.collect::<Vec<_>>().join("; ");
        let [order, first] = [order, &first].map(|text| units.sentence(text).into_owned());
        [hot_dip, mechanical, electroplated, recommended, order, first]
    }

    /// The cells below [`heading`].
    pub fn record(&self, units: Units) -> [String; HEADING.len()] {
        let mut cells: [String; HEADING.len()] = Default::default();
        let mut put = cells.iter_mut();
        let mut next = |text: String| {
            if let Some(cell) = put.next() {
                *cell = super::safe(&text).into_owned();
            }
        };
        next(self.line.clone());
        let mut not_used = self.not_used.clone();
        add(&mut not_used, &self.left_out);
        next(not_used);
        let assessed = match &self.result {
            Ok(assessed) => assessed,
            Err(problem) => {
                next(problem.clone());
                return cells;
            }
        };
        next(String::new());
        self.told(units).into_iter().for_each(&mut next);
        // To the gram.
        let kg = |mass: Mass| number(units, mass.show(&unit::KG, 3));
        let weight = assessed.weight.map_or_else(String::new, kg);
        let area = assessed.area.map_or_else(String::new, |area| number(units, area.show(&unit::M2, 3)));
        let Some(take) = &assessed.take else {
            (0..7).for_each(|_| next(String::new()));
            next(weight);
            next(area);
            return cells;
        };
        next(units.sentence(&take.threads).into_owned());
        [take.coat.0, take.coat.1].iter().for_each(|coat| next(number(units, coat.show(&unit::UM, 0))));
        let (from, to) = take.years.map_or((None, None), |(from, to)| (Some(from), to));
        next(from.map_or_else(String::new, |from| in_years(from, life::years)));
        next(to.map_or_else(String::new, |to| in_years(to, |to| life::most(to, None))));
        let (least, greatest) = take.zinc.unzip();
        [least, greatest].iter().for_each(|zinc| next(zinc.map_or_else(String::new, kg)));
        next(weight);
        next(area);
        let shared = take.shared.as_ref();
        next(shared.map_or_else(String::new, |it| units.sentence(&it.through.to_string()).into_owned()));
        next(shared.and_then(|it| it.pick_up).map_or_else(String::new, kg));
        next(shared.and_then(|it| it.powder).map_or_else(String::new, kg));
        next(units.sentence(&assessed.terms.join("; ")).into_owned());
        cells
    }
}

/// One more of several things.
fn add(text: &mut String, more: &str) {
    text.push_str(if text.is_empty() || more.is_empty() { "" } else { "; " });
    text.push_str(more);
}

/// As an answer shows them: the least is cut, the most is rounded.
fn in_years(time: Time, show: impl Fn(Time) -> Shown) -> String {
    if time.year() > TABLE_ENDS { format!("over {TABLE_ENDS:.0}") } else { show(time).digits() }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cells(line: &str) -> Vec<(&'static str, String)> {
        HEADING.into_iter().zip(row(line).record(Units::default())).collect()
    }

    fn cell(line: &str, name: &str) -> String {
        cells(line).into_iter().find(|(heading, _)| *heading == name).map(|(_, cell)| cell).unwrap()
    }

    #[test]
    fn a_row_says_what_the_order_says() {
        let line = "M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs";
        assert_eq!(cell(line, "hot-dip"), "Suits");
        assert_eq!(cell(line, "recommended"), Process::HotDip.name());
        assert!(cell(line, "order").contains("ISO 10684"));
        assert!(cell(line, "threads").contains("6AZ"));
        assert_eq!(cell(line, "not used"), "");
        let min: f64 = cell(line, "zinc min (kg)").parse().unwrap();
        let max: f64 = cell(line, "zinc max (kg)").parse().unwrap();
        assert!(0.0 < min && min < max);
    }

    /// A line without zinc once said that hot-dip suits and what zinc it takes; what is left out once was told as any
    /// other.
    #[test]
    fn a_row_orders_no_zinc_that_is_not_asked_for() {
        let bolt = "M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs";
        for coat in ["unplated", "zinc flake", "black oxide", "plain finish"] {
            let line = format!("{bolt}, {coat}");
            assert_eq!(cell(&line, "hot-dip"), "Suits, not asked for", "{coat}");
            assert_eq!(cell(&line, "electroplated"), "Ruled out", "{coat}");
            assert!(cell(&line, "first").ends_with("is asked for, and is not judged here"), "{coat}");
            for name in ["recommended", "order", "threads", "zinc min (kg)", "zinc max (kg)", "shares"] {
                assert_eq!(cell(&line, name), "", "{coat}: {name}");
            }
            assert_ne!(cell(&line, "weight (kg)"), "", "{coat}");
        }
        let left_out = format!("{bolt}, no HDG");
        assert_eq!(cell(&left_out, "hot-dip"), "Suits, left out by the order");
        assert_eq!(cell(&left_out, "mechanical"), "Suits");
    }

    /// Under the heading's own unit each number is the same size, coat and surface as well as weight.
    #[test]
    fn a_row_is_in_the_readers_units() {
        let row = row("M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs");
        let (metric, inch) = (row.record(Units::Metric), row.record(Units::Inch));
        let of = |cells: &[String], name: &str| {
            let place = HEADING.iter().position(|heading| heading.starts_with(name)).unwrap();
            cells[place].parse::<f64>().unwrap()
        };
        for (name, factor) in
            [("coat min", 25.4), ("zinc max", 0.453_592), ("weight", 0.453_592), ("area", 0.092_903)]
        {
            let (metric, inch) = (of(&metric, name), of(&inch, name));
            assert!((inch * factor / metric - 1.0).abs() < 0.02, "{name}: {metric} and {inch}");
        }
        let names = heading(Units::Inch);
        assert!(
            ["coat min (mil)", "weight (lb)", "area (ft²)"]
                .iter()
                .all(|name| names.contains(&Cow::Borrowed(name)))
        );
        assert_eq!(heading(Units::default()), HEADING.map(Cow::Borrowed));
    }

    #[test]
    fn what_is_wrong_stands_in_its_row() {
        assert_eq!(cell("M16 hex bolt, 8.8, C3, for Peter", "not used"), "Peter");
        assert!(!cell("8.8, 100 pcs", "problem").is_empty());
        assert_eq!(cell("=HYPERLINK(1) hex bolt", "line"), "'=HYPERLINK(1) hex bolt");
    }
}
