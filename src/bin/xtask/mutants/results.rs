//! What came of each mutant, kept in a file and told by room.

use std::collections::{BTreeMap, HashMap};
use std::path::Path;

use super::list::ROOMS;
use super::plan::Mutant;
use super::site::Genre;
use super::trial::Outcome;
use crate::xtask::run::{Done, read_text, write};

/// The names of the columns.
pub const HEAD: &str = "outcome\tby\tfile\tfunction\tgenre\toccurrence\treplacement\ttext";

/// The outcomes, in the order of the files.
#[derive(Default)]
pub struct Results(pub BTreeMap<Mutant, Outcome>);

impl Results {
    /// Reads what was kept; nothing where nothing was.
    pub fn read(path: &Path) -> Done<Self> {
        if !path.exists() {
            return Ok(Self::default());
        }
        let text = read_text(path)?;
        let rows = text.lines().skip(1).map(|line| row(line).ok_or_else(|| format!("not a result: {line}")));
        Ok(Self(rows.collect::<Result<_, _>>()?))
    }

    /// Keeps them.
    pub fn write(&self, path: &Path) -> Done {
        let rows = self.0.iter().map(|(mutant, outcome)| written(mutant, outcome));
        write(path, format!("{HEAD}\n{}", rows.collect::<String>()))
    }

    /// How many of each file each test has caught, and of all of them (no file).
    pub fn catches(&self) -> HashMap<(String, String), u32> {
        let mut counts = HashMap::new();
        for (mutant, outcome) in &self.0 {
            if let Outcome::Caught(by) = outcome {
                for file in ["", mutant.file.as_str()] {
                    *counts.entry((file.to_owned(), by.clone())).or_default() += 1;
                }
            }
        }
        counts
    }

    /// The share caught, room by room and in all.
    pub fn print(&self) {
        println!(
            "\n{:<12}{:>8}{:>8}{:>10}{:>13}{:>8}{:>10}{:>10}",
            "room", "viable", "caught", "survived", "not reached", "%", "constant", "unviable"
        );
        let mut all = [0; 5];
        for room in ROOMS {
            let counts = self.counts(room);
            if counts.iter().sum::<usize>() > 0 {
                print(room, counts);
            }
            all.iter_mut().zip(counts).for_each(|(all, count)| *all += count);
        }
        print("in all", all);
    }

    /// Caught, survived, not reached, constant, unviable.
    fn counts(&self, room: &str) -> [usize; 5] {
        let mut counts = [0; 5];
        for (_, outcome) in self.0.iter().filter(|(mutant, _)| mutant.room() == room) {
            let place = match outcome {
                Outcome::Untried => continue,
                Outcome::Caught(_) | Outcome::BrokeOff(_) => 0,
                Outcome::Survived => 1,
                Outcome::NotReached => 2,
                Outcome::Constant => 3,
                Outcome::Unviable => 4,
            };
            if let Some(count) = counts.get_mut(place) {
                *count += 1;
            }
        }
        counts
    }
}

#[allow(clippy::cast_precision_loss, reason = "counts of mutants")]
fn print(room: &str, [caught, survived, not_reached, constant, unviable]: [usize; 5]) {
    let viable = caught + survived + not_reached;
    let share = 100.0 * caught as f64 / viable.max(1) as f64;
    println!(
        "{room:<12}{viable:>8}{caught:>8}{survived:>10}{not_reached:>13}{share:>8.1}{constant:>10}{unviable:>10}"
    );
}

impl Outcome {
    fn words(&self) -> (&'static str, &str) {
        match self {
            Self::Caught(by) => ("caught", by),
            Self::BrokeOff(by) => ("broke off", by),
            Self::Survived => ("survived", ""),
            Self::NotReached => ("not reached", ""),
            Self::Unviable => ("unviable", ""),
            Self::Constant => ("constant", ""),
            Self::Untried => ("untried", ""),
        }
    }
}

/// The row of one.
pub fn written(mutant: &Mutant, outcome: &Outcome) -> String {
    let Mutant { file, function, genre, text, occurrence, replacement } = mutant;
    let (word, by) = outcome.words();
    let genre = genre.name();
    format!("{word}\t{by}\t{file}\t{function}\t{genre}\t{occurrence}\t{replacement}\t{text}\n")
}

/// One of a row.
pub fn row(line: &str) -> Option<(Mutant, Outcome)> {
    let mut cells = line.split('\t');
    let (word, by) = (cells.next()?, cells.next()?);
    let outcome = match word {
        "caught" => Outcome::Caught(by.to_owned()),
        "broke off" => Outcome::BrokeOff(by.to_owned()),
        "survived" => Outcome::Survived,
        "not reached" => Outcome::NotReached,
        "unviable" => Outcome::Unviable,
        "constant" => Outcome::Constant,
        "untried" => Outcome::Untried,
        _ => return None,
    };
    let (file, function) = (cells.next()?.to_owned(), cells.next()?.to_owned());
    let genre = Genre::of(cells.next()?).ok()?;
    let occurrence = cells.next()?.parse().ok()?;
    let (replacement, text) = (cells.next()?.to_owned(), cells.next()?.to_owned());
    Some((Mutant { file, function, genre, text, occurrence, replacement }, outcome))
}
