//! What a list comes to, and what of it shares a kettle or a barrel.

use std::collections::BTreeMap;
use std::fmt;

use super::result::{Assessed, Taken};
use super::table::number;
use super::{Row, Table};
use crate::calculator::Verdict;
use crate::coat::Process;
use crate::order::Aside;
use crate::quantity::{Area, Mass, Quantity, Units, unit};
use crate::rule::{self, Key};
use crate::sorting::sort_by_key;

/// What a list comes to: how many suit by process, what stands in the way most often, zinc and weight in
/// all, and which lines go through the same kettle or barrel.
#[derive(Debug, Clone, PartialEq)]
pub struct Summary {
    /// The units of its numbers.
    pub units: Units,
    /// Lines that were assessed.
    pub assessed: u64,
    /// Lines that could not be.
    pub problems: u64,
    /// Lines of which not every word was used.
    pub not_all_used: u64,
    /// Lines that ask for a coat which is not judged here: they are counted by themselves.
    pub not_judged: u64,
    /// By process, how many suit, suit on conditions, are ruled out, are left out by the order though they are not.
    verdicts: [[u64; 4]; 3],
    /// How many lines are recommended each process, with the zinc they take, minimum and maximum.
    taken: [(u64, Mass, Mass); 3],
    /// Lines of which all processes are ruled out.
    pub none_suits: u64,
    /// Lines that leave out all that is not ruled out.
    pub none_left: u64,
    /// Lines whose zinc is not known, because a shape is not.
    pub zinc_unknown: u64,
    /// Lines that do not say how many pieces they are.
    pub quantity_unknown: u64,
    /// Of all lines whose shape is known.
    weight: Mass,
    in_the_way: BTreeMap<(Process, Key), u64>,
    /// By what they go through, in its words.
    groups: BTreeMap<String, Group>,
}

/// Lines that go through the same kettle or barrel.
#[derive(Debug, Clone, PartialEq)]
struct Group {
    lines: Places,
    pieces: u64,
    weight: Mass,
    area: Area,
    zinc: (Mass, Mass),
    pick_up: Option<Mass>,
    powder: Option<Mass>,
    /// Lines of which weight, area and zinc are not known.
    unknown: u64,
}

/// Numbers of rows, in a room that does not grow with the list.
#[derive(Debug, Clone, PartialEq, Default)]
struct Places {
    count: u64,
    ranges: Vec<(u64, u64)>,
}

/// The place of what the order leaves out, behind the verdicts.
const LEFT_OUT: usize = 3;

/// Of what stands in the way, as many as are named.
const NAMED: usize = 5;
/// Of the lines that share something, as many ranges as are named.
const RANGES: usize = 12;

const NOTHING: Mass = Mass::from_kg(0.0);

impl Default for Summary {
    fn default() -> Self {
        Self {
            units: Units::default(),
            assessed: 0,
            problems: 0,
            not_all_used: 0,
            not_judged: 0,
            verdicts: [[0; 4]; 3],
            taken: [(0, NOTHING, NOTHING); 3],
            none_suits: 0,
            none_left: 0,
            zinc_unknown: 0,
            quantity_unknown: 0,
            weight: NOTHING,
            in_the_way: BTreeMap::new(),
            groups: BTreeMap::new(),
        }
    }
}

impl Summary {
    /// Of nothing yet, its numbers to be shown in these units.
    pub fn in_units(units: Units) -> Self {
        Self { units, ..Self::default() }
    }

    /// With one more row, which is the one of that number.
    pub fn add(&mut self, place: u64, row: &Row) {
        self.not_all_used += u64::from(!row.not_used.is_empty());
        let Ok(assessed) = &row.result else {
            self.problems += 1;
            return;
        };
        self.assessed += 1;
        self.quantity_unknown += u64::from(assessed.quantity.is_none());
        self.weight = self.weight + assessed.weight.unwrap_or(NOTHING);
        // Of zinc that nobody asks for nothing is counted.
        if assessed.not_judged.is_some() {
            self.not_judged += 1;
            return;
        }
        let judged = Process::ALL.into_iter().zip(assessed.standings).zip(assessed.in_the_way);
        for (((process, standing), rule), counts) in judged.zip(&mut self.verdicts) {
            let is_left_out = standing.aside == Some(Aside::LeftOut);
            let column = if is_left_out { LEFT_OUT } else { standing.verdict as usize };
            if let Some(count) = counts.get_mut(column) {
                *count += 1;
            }
            if let Some(rule) = rule.filter(|_| !is_left_out) {
                *self.in_the_way.entry((process, rule)).or_default() += 1;
            }
        }
        let Some(take) = &assessed.take else {
            let are_out = assessed.standings.iter().all(|standing| standing.verdict == Verdict::RuledOut);
            *(if are_out { &mut self.none_suits } else { &mut self.none_left }) += 1;
            return;
        };
        for (process, (count, min, max)) in Process::ALL.into_iter().zip(&mut self.taken) {
            if process == take.process {
                *count += 1;
                let (least, greatest) = take.zinc.unwrap_or((NOTHING, NOTHING));
                *min = *min + least;
                *max = *max + greatest;
                self.zinc_unknown += u64::from(take.zinc.is_none() && assessed.quantity.is_some());
            }
        }
        if let Some(shared) = &take.shared {
            self.groups.entry(shared.through.to_string()).or_default().add(place, assessed, take);
        }
    }

    /// How many lines have this verdict in this process and do not leave it out.
    pub fn count(&self, process: Process, verdict: Verdict) -> u64 {
        self.counted(process, verdict as usize)
    }

    fn counted(&self, process: Process, column: usize) -> u64 {
        let place = Process::ALL.iter().position(|one| *one == process);
        place.and_then(|place| self.verdicts.get(place)?.get(column).copied()).unwrap_or_default()
    }

    /// What there is to say in sentences.
    pub fn sentences(&self) -> Vec<String> {
        let mut said = vec![format!(
            "{} assessed, {} with a problem, {} with words that were not used.",
            lines(self.assessed),
            self.problems,
            self.not_all_used
        )];
        if self.not_judged > 0 {
            said.push(format!(
                "{}: no zinc, or a coat that is not judged here, is asked for; verdicts and zinc are without them.",
                lines(self.not_judged)
            ));
        }
        if self.none_suits > 0 {
            said.push(format!("Of {} all three are ruled out.", lines(self.none_suits)));
        }
        if self.none_left > 0 {
            said.push(format!(
                "Of {} what is not ruled out is left out by the order.",
                lines(self.none_left)
            ));
        }
        let weight = self.units.show(self.weight.show(&unit::KG, 1));
        said.push(format!("Weight where the shape is known: {weight}."));
        if self.quantity_unknown > 0 {
            said.push(format!(
                "The quantity of {} is not known; the sums are without them.",
                lines(self.quantity_unknown)
            ));
        }
        if self.zinc_unknown > 0 {
            said.push(format!(
                "The zinc of {} is not known, because a shape is not; the sums are without it.",
                lines(self.zinc_unknown)
            ));
        }
        said
    }

    /// The counts by process, what stands in the way, and what shares a kettle or a barrel.
    pub fn tables(&self) -> Vec<Table> {
        let tables = [self.by_process(), self.in_the_way(), self.shared()];
        tables.into_iter().filter(|table| !table.rows.is_empty()).collect()
    }

    fn kg(&self, mass: Mass) -> String {
        number(self.units, mass.show(&unit::KG, 1))
    }

    fn by_process(&self) -> Table {
        let mut table = Table::of(
            "Verdicts by process, with the zinc on the lines that are recommended it",
            &[
                "",
                "suits",
                "on conditions",
                "ruled out",
                "left out",
                "recommended",
                "zinc min (kg)",
                "zinc max (kg)",
            ],
            self.units,
        );
        let rows = Process::ALL.into_iter().zip(self.taken).map(|(process, (count, min, max))| {
            let of = |verdict| self.count(process, verdict).to_string();
            let [suits, conditions, out] = [Verdict::Suits, Verdict::OnConditions, Verdict::RuledOut].map(of);
            vec![
                process.name().to_owned(),
                suits,
                conditions,
                out,
                self.counted(process, LEFT_OUT).to_string(),
                count.to_string(),
                self.kg(min),
                self.kg(max),
            ]
        });
        table.rows = rows.collect();
        table
    }

    fn in_the_way(&self) -> Table {
        let mut table =
            Table::of("Most often in the way", &["lines", "", "what asks or forbids it"], self.units);
        let mut often: Vec<_> = self.in_the_way.iter().collect();
        sort_by_key(&mut often, |(_, count)| std::cmp::Reverse(**count));
        let row = |((process, key), count): (&(Process, Key), &u64)| {
            vec![count.to_string(), process.name().to_owned(), rule::rule(*key).source.to_string()]
        };
        table.rows = often.into_iter().take(NAMED).map(row).collect();
        table
    }

    fn shared(&self) -> Table {
        let mut table = Table::of(
            "What can share a bath or a barrel",
            &[
                "goes through",
                "lines",
                "pieces",
                "weight (kg)",
                "area (m²)",
                "zinc min (kg)",
                "zinc max (kg)",
                "pick-up (kg)",
                "powder (kg)",
                "which rows",
            ],
            self.units,
        );
        let kg = |mass| self.kg(mass);
        let row = |(through, group): (&str, &Group)| {
            let unknown = if group.unknown > 0 {
                format!(", {} without a shape or a quantity", group.unknown)
            } else {
                String::new()
            };
            vec![
                through.to_owned(),
                format!("{}{unknown}", group.lines.count),
                group.pieces.to_string(),
                kg(group.weight),
                number(self.units, group.area.show(&unit::M2, 1)),
                kg(group.zinc.0),
                kg(group.zinc.1),
                group.pick_up.map_or_else(String::new, kg),
                group.powder.map_or_else(String::new, kg),
                group.lines.to_string(),
            ]
        };
        table.rows = self.groups.iter().map(|(through, group)| row((through, group))).collect();
        if self.groups.len() > 1 {
            let mut all = Group::default();
            self.groups.values().for_each(|group| all.join(group));
            table.rows.push(row(("In all", &all)));
        }
        table
    }
}

impl Default for Group {
    fn default() -> Self {
        Self {
            lines: Places::default(),
            pieces: 0,
            weight: NOTHING,
            area: Area::from_m2(0.0),
            zinc: (NOTHING, NOTHING),
            pick_up: None,
            powder: None,
            unknown: 0,
        }
    }
}

impl Group {
    fn add(&mut self, place: u64, assessed: &Assessed, take: &Taken) {
        self.lines.add(place);
        self.pieces += u64::from(assessed.quantity.unwrap_or(0));
        let (zinc, shared) = (take.zinc.unwrap_or((NOTHING, NOTHING)), take.shared.as_ref());
        self.join(&Self {
            weight: assessed.weight.unwrap_or(NOTHING),
            area: assessed.area.unwrap_or(Area::from_m2(0.0)),
            zinc,
            pick_up: shared.and_then(|shared| shared.pick_up),
            powder: shared.and_then(|shared| shared.powder),
            unknown: u64::from(take.zinc.is_none()),
            ..Self::default()
        });
    }

    /// The sums of both.
    fn join(&mut self, other: &Self) {
        let sum = |one: Option<Mass>, other: Option<Mass>| match (one, other) {
            (Some(one), Some(other)) => Some(one + other),
            (one, other) => one.or(other),
        };
        self.lines.count += other.lines.count;
        self.pieces += other.pieces;
        self.weight = self.weight + other.weight;
        self.area = self.area + other.area;
        self.zinc = (self.zinc.0 + other.zinc.0, self.zinc.1 + other.zinc.1);
        self.pick_up = sum(self.pick_up, other.pick_up);
        self.powder = sum(self.powder, other.powder);
        self.unknown += other.unknown;
    }
}

impl Places {
    fn add(&mut self, place: u64) {
        self.count += 1;
        let is_full = self.ranges.len() > RANGES;
        match self.ranges.last_mut() {
            Some((_, last)) if *last + 1 == place => *last = place,
            // One more than is shown says that there are more.
            _ if !is_full => self.ranges.push((place, place)),
            _ => {}
        }
    }
}

impl fmt::Display for Places {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (at, (first, last)) in self.ranges.iter().take(RANGES).enumerate() {
            let comma = if at == 0 { "" } else { ", " };
            match last - first {
                0 => write!(f, "{comma}{first}")?,
                _ => write!(f, "{comma}{first}–{last}")?,
            }
        }
        if self.ranges.len() > RANGES { f.write_str(" …") } else { Ok(()) }
    }
}

fn lines(count: u64) -> String {
    format!("{count} line{}", if count == 1 { "" } else { "s" })
}

impl fmt::Display for Summary {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.sentences().iter().try_for_each(|said| writeln!(f, "{said}"))?;
        self.tables().iter().try_for_each(|table| write!(f, "\n{table}"))
    }
}

#[cfg(test)]
mod tests {
    use super::super::row;
    use super::super::shared::Shared;
    use super::*;

    fn summary(lines: &[&str]) -> Summary {
        let mut summary = Summary::default();
        lines.iter().zip(1..).for_each(|(line, place)| summary.add(place, &row(line)));
        summary
    }

    #[test]
    fn a_summary_adds_up() {
        let summary = summary(&[
            "M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs",
            "M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs, with love",
            "nothing at all",
        ]);
        assert_eq!((summary.assessed, summary.problems, summary.not_all_used), (2, 1, 2));
        for process in Process::ALL {
            let all = [Verdict::Suits, Verdict::OnConditions, Verdict::RuledOut];
            assert_eq!(all.map(|verdict| summary.count(process, verdict)).iter().sum::<u64>(), 2);
        }
        let tables = summary.tables();
        assert_eq!(tables[0].rows[0][5], "2");
        assert!(tables.iter().all(|table| table.rows.iter().all(|row| row.len() == table.heading.len())));
    }

    #[test]
    fn lines_of_one_bath_stand_together() {
        let bolt = "M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs";
        let summary = summary(&[bolt, bolt, "1/2-13 x 2 hex bolt, grade 5, C3, HDG, 100 pcs", bolt]);
        let shared = summary.shared();
        let kettle: Vec<&Vec<String>> =
            shared.rows.iter().filter(|row| row[0].starts_with("kettle: ISO 10684")).collect();
        assert_eq!(kettle.len(), 1, "{shared}");
        assert_eq!(
            (kettle[0][1].as_str(), kettle[0][2].as_str(), kettle[0][9].as_str()),
            ("3", "1200", "1–2, 4")
        );
        assert_eq!(shared.rows.last().map(|row| row[1].as_str()), Some("4"));
    }

    #[test]
    fn many_lines_are_named_by_the_first_of_them() {
        let mut places = Places::default();
        (0..1000).for_each(|line| places.add(3 * line));
        assert!(
            places.to_string().starts_with("0, 3, 6") && places.to_string().ends_with("33 …"),
            "{places}"
        );
        assert_eq!((places.count, places.ranges.len()), (1000, RANGES + 1));
    }

    /// Every sum is that of the rows, and every count too.
    #[test]
    fn sums_are_those_of_the_rows() {
        let texts = [
            "M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs",
            "M20 x 80 hex bolt, 8.8, C3, 15 years, 250 pcs",
            "M16 x 60 hex bolt, 8.8, C3, 15 years",
            "M6 x 20 hex screw, 8.8, C1, 5000 pcs",
            "M10 x 40 socket screw, 12.9, C3, 10 years, 900 pcs",
            "M12 washers, 200 HV, 20000 pcs, C2",
            "3/4-10 x 3 A490 structural bolt, 10 pcs",
            "M16 rod end, 8.8, C3, 10 pcs",
            "M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs, no HDG",
            "M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs, no HDG, no mech galv",
            "M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs, unplated",
            "M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs, zinc flake",
            "nothing at all",
        ];
        let rows = texts.map(row);
        let summary = summary(&texts);
        let kg = |mass: Mass| mass.show(&unit::KG, 1).digits();
        let assessed = || rows.iter().filter_map(|row| row.result.as_ref().ok());
        let sum = |masses: &mut dyn Iterator<Item = Mass>| masses.fold(NOTHING, |sum, one| sum + one);
        let [by_process, in_the_way, shared] = summary.tables().try_into().unwrap();

        for (process, row) in Process::ALL.into_iter().zip(&by_process.rows) {
            let taken =
                || assessed().filter_map(|one| one.take.as_ref()).filter(|take| take.process == process);
            let place = Process::ALL.iter().position(|one| *one == process).unwrap();
            let of_zinc = || assessed().filter(|one| one.not_judged.is_none());
            let is_left_out = |one: &&Assessed| one.standings[place].aside == Some(Aside::LeftOut);
            let verdicts = [Verdict::Suits, Verdict::OnConditions, Verdict::RuledOut].map(|verdict| {
                let has_it = |one: &&Assessed| one.standings[place].verdict == verdict && !is_left_out(one);
                of_zinc().filter(has_it).count().to_string()
            });
            assert_eq!(row[0], process.name());
            assert_eq!(row[1..4], verdicts, "{process:?}");
            assert_eq!(row[4], of_zinc().filter(is_left_out).count().to_string(), "{process:?}");
            assert_eq!(row[5], taken().count().to_string(), "{process:?}");
            assert_eq!(row[6], kg(sum(&mut taken().filter_map(|take| Some(take.zinc?.0)))), "{process:?}");
            assert_eq!(row[7], kg(sum(&mut taken().filter_map(|take| Some(take.zinc?.1)))), "{process:?}");
        }

        let ways: usize = assessed().flat_map(|one| one.in_the_way).flatten().count();
        let named: usize = in_the_way.rows.iter().map(|row| row[0].parse::<usize>().unwrap()).sum();
        assert!(named <= ways && in_the_way.rows.len() <= NAMED && named >= in_the_way.rows.len());
        assert!(in_the_way.rows.is_sorted_by_key(|row| std::cmp::Reverse(row[0].parse::<usize>().unwrap())));

        let all = shared.rows.last().unwrap();
        let together =
            || assessed().filter(|one| one.take.as_ref().is_some_and(|take| take.shared.is_some()));
        let of = |what: fn(&Shared) -> Option<Mass>| {
            sum(&mut together().filter_map(|one| what(one.take.as_ref()?.shared.as_ref()?)))
        };
        let unknown =
            together().filter(|one| one.take.as_ref().is_some_and(|take| take.zinc.is_none())).count();
        let area = together().filter_map(|one| one.area).fold(Area::from_m2(0.0), |sum, one| sum + one);
        assert!(unknown > 0 && all[1].contains(&format!("{unknown} without")), "{}", all[1]);
        assert!(all[1].starts_with(&format!("{},", together().count())), "{}", all[1]);
        assert_eq!(all[2], together().filter_map(|one| one.quantity).sum::<u32>().to_string());
        assert_eq!(all[3], kg(sum(&mut together().filter_map(|one| one.weight))));
        assert_eq!(all[4], area.show(&unit::M2, 1).digits());
        assert_eq!(all[7], kg(of(|shared| shared.pick_up)));
        assert_eq!(all[8], kg(of(|shared| shared.powder)));

        let said = summary.sentences().join(" ");
        let weight = kg(sum(&mut assessed().filter_map(|one| one.weight)));
        for part in [
            "12 lines assessed, 1 with a problem".to_owned(),
            "2 lines: no zinc, or a coat that is not judged here, is asked for".to_owned(),
            "Of 1 line what is not ruled out is left out".to_owned(),
            format!(
                "Of {} all three are ruled out",
                lines(
                    assessed()
                        .filter(|one| one.standings.iter().all(|it| it.verdict == Verdict::RuledOut))
                        .count() as u64
                )
            ),
            format!("Weight where the shape is known: {weight}"),
            "The quantity of 1 line is not known".to_owned(),
            "The zinc of 1 line is not known".to_owned(),
        ] {
            assert!(said.contains(&part), "{part}: {said}");
        }
        let none = Summary::default().sentences().join(" ");
        assert!(!none.contains("ruled out") && !none.contains("not known"), "{none}");
    }
}
