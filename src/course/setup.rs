//! What fixes a sheet: its number, what it is drawn from, how many exercises, and their level.

use crate::calculator::{
    About, Choice, Draft, Entry, Fault, Field, FieldAbout, Missed, Problems, REGISTER, RawText, Reader,
    Writer, choices, chosen_by_key, find,
};
use crate::quantity::Units;
use crate::quantity::letters::lower;

choices! {
    /// What an exercise asks for.
    pub enum Level {
        OneStep: "one-step", "One step of a working";
        Whole: "whole-task", "A whole task";
        Error: "find-the-error", "Find the error";
    }
}

choices! {
    /// What of the coursework is open.
    pub enum Room {
        Lessons: "lessons", "Lessons";
        Sheet: "sheet", "Exercises";
        Answers: "answers", "Answer sheet";
        HandedIn: "handed-in", "Result lines";
    }
}

/// What exercises are drawn from.
#[derive(Clone, Copy)]
pub enum Topic {
    /// A calculator of the register.
    Calculator(&'static Entry),
    /// An order line, from what is written to the finish.
    Order,
}

/// What fixes a sheet.
#[derive(Debug, Clone, PartialEq)]
pub struct Setup {
    /// The number that fixes the draw.
    pub number: u32,
    /// How many exercises.
    pub count: u32,
    /// What they ask for.
    pub level: Level,
    /// What they are drawn from; all of it where nothing is named.
    pub topics: Vec<Topic>,
    /// The units of what is given and asked. They belong to the sheet: on every device it is the same.
    pub units: Units,
}

const NUMBER: Field<u32> = Field::count("number", "Number of the sheet", 1, 999_999, "1")
    .hint("It fixes the draw: the same number gives the same sheet to everybody.");
const COUNT: Field<u32> = Field::count("count", "Exercises", 1, 40, "6");
const LEVEL: Field<Level> =
    Field::choice("level", "Each exercise asks for", Level::CHOICES, Level::OneStep.key());
const FROM: Field<RawText> = Field::text("from", "Drawn from", "all")
    .hint("“all”, or names of calculators between spaces; “order” is the order line, for whole tasks and job sheets with a fault.");

const UNITS: Field<Units> = Field::choice("units", "Figures in", &SYSTEMS, "metric")
    .hint("A part of the sheet, like its number: everybody gets the same figures.");
static SYSTEMS: [Choice; 2] =
    [Choice::new("metric", "Metric units"), Choice::new("inch", "Inches, pounds and °F")];
chosen_by_key!(Units, |key| [Units::Metric, Units::Inch].into_iter().find(|units| units.key() == key));

const ROOM: Field<Room> = Field::choice("room", "Open", Room::CHOICES, Room::Lessons.key());
const LESSON: Field<RawText> = Field::text("lesson", "Lesson", "").optional();

/// What a sheet asks.
pub static SHEET_FIELDS: [FieldAbout; 5] = [NUMBER.about, COUNT.about, LEVEL.about, FROM.about, UNITS.about];
static FIELDS: [FieldAbout; 7] =
    [ROOM.about, LESSON.about, NUMBER.about, COUNT.about, LEVEL.about, FROM.about, UNITS.about];

/// The coursework, with what of it is open and what fixes its sheet.
pub static ABOUT: About = About {
    id: "course",
    title: "Course",
    answers: "Lessons of five minutes, and exercises that the calculators set and mark.",
    fields: &FIELDS,
    examples: &[],
};

impl std::fmt::Debug for Topic {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.key())
    }
}

impl PartialEq for Topic {
    fn eq(&self, other: &Self) -> bool {
        self.key() == other.key()
    }
}

impl Topic {
    /// Every topic: the calculators in the order of the register, then the order line.
    pub fn all() -> impl Iterator<Item = Self> {
        REGISTER.iter().map(Self::Calculator).chain([Self::Order])
    }

    /// Its key in a link: that of the calculator, or `order`.
    pub fn key(self) -> &'static str {
        match self {
            Self::Calculator(entry) => entry.about.id,
            Self::Order => "order",
        }
    }

    /// What it is called.
    pub fn title(self) -> &'static str {
        match self {
            Self::Calculator(entry) => entry.about.title,
            Self::Order => "Order line",
        }
    }

    pub(super) fn of_key(key: &str) -> Option<Self> {
        if key == "order" { Some(Self::Order) } else { find(key).map(Self::Calculator) }
    }
}

impl Setup {
    /// Reads the form of a sheet.
    ///
    /// # Errors
    /// All the problems of its fields at once.
    pub fn read(draft: &Draft) -> Result<Self, Problems> {
        let mut reader = Reader::new(&SHEET_FIELDS, draft);
        let read = read(&mut reader);
        reader.end(read)
    }

    /// Writes it back into the form.
    pub fn write(&self) -> Draft {
        let mut writer = Writer::default();
        writer.put(&NUMBER, self.number);
        writer.put(&COUNT, self.count);
        writer.put(&LEVEL, self.level);
        writer.put(&FROM, RawText(self.from()));
        writer.put(&UNITS, self.units);
        writer.pairs().into_iter().collect()
    }

    /// What it is drawn from, by keys: `all`, or `coat life`.
    pub fn from(&self) -> String {
        if self.topics.is_empty() {
            return "all".to_owned();
        }
        self.topics.iter().map(|topic| topic.key()).collect::<Vec<_>>().join(" ")
    }

    /// The topics that exercises of this level are drawn from.
    pub(super) fn drawn_topics(&self) -> Vec<Topic> {
        let all = if self.topics.is_empty() { Topic::all().collect() } else { self.topics.clone() };
        // An order line is a whole task, or a sheet with a fault.
        let drawn = |topic: &Topic| (*topic == Topic::Order) <= (self.level != Level::OneStep);
        let fit: Vec<_> = all.iter().copied().filter(drawn).collect();
        if fit.is_empty() { all } else { fit }
    }
}

fn read(reader: &mut Reader<'_>) -> Result<Setup, Missed> {
    let (number, count, level) = (reader.get(&NUMBER), reader.get(&COUNT), reader.get(&LEVEL));
    let units = reader.get(&UNITS);
    let RawText(from) = reader.get(&FROM)?;
    let mut topics = Vec::new();
    for word in lower(&from).split([' ', ',', '+', ';']).filter(|word| !matches!(*word, "" | "all")) {
        match Topic::of_key(word) {
            Some(topic) if !topics.contains(&topic) => topics.push(topic),
            Some(_) => {}
            None => {
                let offered = Topic::all().map(Topic::key).collect();
                return Err(reader.wrong(&FROM, Fault::NotAChoice { text: word.to_owned(), offered }));
            }
        }
    }
    Ok(Setup { number: number?, count: count?, level: level?, topics, units: units? })
}
