//! Sheets of paper, as data: what is handed to the plater, the galvanizer, the inspector and the
//! customer.
//!
//! A sheet is blocks of rows, made from what was judged and computed for an order or a calculator;
//! nothing is computed or judged here, and no browser is known. The page and the terminal set the same
//! sheet.

pub mod code;
mod fit;
mod inspection;
mod job;
pub mod price;
pub mod reply;
mod run;
mod sources;
mod specification;
mod text;
mod threads;
mod working;

use std::borrow::Cow;

use serde::Serialize;

use crate::calculator::{Draft, Entry, Figure, Link, Problems, behind, find};
use crate::order::recommend::is_wanted;
use crate::order::{Assessed, Judged};
use crate::process::Process;
use crate::quantity::Units;
use crate::rule::Topic;
use crate::sentence::capital;

pub use price::Prices;

/// The version of the program, as a sheet names it.
pub const VERSION: &str = env!("CARGO_PKG_VERSION");

/// A sheet.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Sheet {
    /// What it is: `Job sheet`.
    pub title: Cow<'static, str>,
    /// The blocks, from the top of the page.
    pub blocks: Vec<Block>,
    /// Pages that it may take.
    pub pages: u32,
}

/// Rows under a title.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Block {
    /// What the rows have in common; may be empty.
    pub title: Cow<'static, str>,
    /// How it stands on the page.
    pub look: Look,
    /// The rows.
    pub rows: Vec<Row>,
}

/// How a block stands on the page.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Look {
    /// What the sheet is for: large, in a frame.
    Lead,
    /// Across the page.
    Full,
    /// Half of the page, beside the next one.
    Half,
    /// Small print, its rows run on in one text; gives way first where a page is full.
    Small,
    /// Places to sign, beside each other.
    Signatures,
}

/// A row.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
pub struct Row {
    /// What it is of; may be empty.
    pub name: Cow<'static, str>,
    /// What is said; empty where somebody writes by hand.
    pub text: Cow<'static, str>,
    /// Whether there is a box to tick before it.
    pub ticked: bool,
    /// What is written behind it by hand, each with room.
    pub room: &'static [&'static str],
    /// Whether it may give way where a page is full: never a verdict, a condition, a term or a number
    /// of the answer.
    #[serde(skip)]
    pub may_go: bool,
    /// What may stand instead where a page is full.
    #[serde(skip)]
    pub shorter: Option<String>,
}

/// Begins the label of room that is a box to tick, and not a line to write on.
pub const TICK: char = '☐';

/// What a person writes on a sheet, and what the device knows.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Heading {
    /// The number of the order.
    pub number: String,
    /// Its name.
    pub name: String,
    /// The day, as the device writes it.
    pub date: String,
    /// The order as it was written in one line; empty where it was not.
    pub line: String,
    /// The link that opens it again; empty where there is none.
    pub link: String,
    /// The units of everything shown.
    pub units: Units,
    /// Own prices.
    pub prices: Prices,
}

/// A sheet that can be chosen.
#[derive(Debug, Clone, PartialEq)]
pub struct Offered {
    /// Its key in a link.
    pub key: String,
    /// What it is called.
    pub label: String,
    /// The calculator that it is made from, filled in; none for what is made from the order itself.
    pub link: Option<Link>,
}

/// The key of the order's own sheet.
pub const JOB: &str = "job";
/// The key of the record of an inspection.
const RECORD: &str = "record";
/// Before the key of what is run.
const RUN: &str = "run";
/// Before the key of a working.
const WORKING: &str = "working";

/// The sheets of an order: its own, the runs of what is neither ruled out nor left out, the record of its inspection, and
/// the working of each calculator behind what is recommended.
pub fn of_order(assessed: &Assessed) -> Vec<Offered> {
    let judgement = &assessed.judgement;
    let offered = |key: String, label: String, link| Offered { key, label, link };
    let mut sheets = vec![offered(JOB.to_owned(), "Job sheet".to_owned(), None)];
    // What the order leaves out is not run for it, and neither is zinc where another coat is asked for.
    let is_run = |judged: &&Judged| !judged.is_ruled_out() && is_wanted(&assessed.line, judged.process);
    let is_of_zinc = assessed.line.not_judged().is_none();
    let open = || judgement.processes.iter().filter(is_run).filter(move |_| is_of_zinc);
    for judged in open().filter(|judged| judged.process != Process::Electroplated) {
        for (place, item) in judgement.items.iter().enumerate() {
            let link = judgement.case(judged, place).and_then(|case| behind(&case, Topic::Load));
            let of = if judgement.items.len() > 1 {
                format!(": {}", item.part.kind.name())
            } else {
                String::new()
            };
            let label = format!("Run sheet of the {}{of}", judged.process.vessel());
            let number = if place == 0 { String::new() } else { format!("-{}", place + 1) };
            let key = format!("{RUN}-{}{number}", judged.process.key());
            sheets.extend(link.map(|link| offered(key, label, Some(link))));
        }
    }
    sheets.push(offered(RECORD.to_owned(), "Inspection record".to_owned(), None));
    let taken = assessed.assessment.taken();
    let links = taken
        .into_iter()
        .flat_map(|process| &process.findings)
        .filter_map(|finding| finding.opens.as_deref());
    let mut of_work: Vec<&Link> = Vec::new();
    for link in links {
        if of_work.iter().all(|known| known.calculator != link.calculator) {
            of_work.push(link);
        }
    }
    sheets.extend(of_work.into_iter().filter_map(|link| {
        let title = find(link.calculator)?.about.title;
        Some(offered(
            format!("{WORKING}-{}", link.calculator),
            format!("Working: {title}"),
            Some(link.clone()),
        ))
    }));
    sheets
}

/// The sheets of a calculator.
pub fn of_calculator(entry: &Entry) -> Vec<Offered> {
    let mut sheets = Vec::new();
    let mut offer = |key: &str, label: &str| {
        sheets.push(Offered { key: key.to_owned(), label: label.to_owned(), link: None });
    };
    match entry.about.id {
        run::BARREL | run::KETTLE => offer(RUN, "Run sheet"),
        inspection::LOT => offer(RECORD, "Inspection record"),
        _ => {}
    }
    offer(WORKING, "Working");
    sheets
}

/// The sheet of an order with that key; its own where there is none.
///
/// # Errors
/// What is wrong with the fields of the calculator that it is made from.
pub fn order_sheet(assessed: &Assessed, key: &str, heading: &Heading) -> Result<Sheet, Problems> {
    let offered = of_order(assessed).into_iter().find(|offered| offered.key == key);
    match offered.and_then(|offered| Some((find(offered.link.as_ref()?.calculator)?, offered.link?))) {
        Some((entry, link)) => {
            let kind = key.split('-').next().unwrap_or(key);
            let sheet = if kind == RUN && assessed.line.quantity.is_none() {
                Sheet::of("Run sheet", vec![no_quantity()])
            } else {
                made(entry, &Draft::from(&link), kind, heading)?
            };
            Ok(framed(sheet, heading, job::as_read(assessed, heading)))
        }
        None if key == RECORD => {
            Ok(framed(inspection::of_order(assessed, heading), heading, job::as_read(assessed, heading)))
        }
        None => Ok(framed(job::sheet(assessed, heading), heading, job::as_read(assessed, heading))),
    }
}

/// The sheet of a calculator with that key.
///
/// # Errors
/// What is wrong with its fields.
pub fn calculator_sheet(
    entry: &Entry,
    draft: &Draft,
    key: &str,
    heading: &Heading,
) -> Result<Sheet, Problems> {
    Ok(framed(made(entry, draft, key, heading)?, heading, Vec::new()))
}

fn made(entry: &Entry, draft: &Draft, key: &str, heading: &Heading) -> Result<Sheet, Problems> {
    let sheet = match key {
        WORKING => None,
        _ => run::of(entry.about.id, draft, heading.units)?.or(inspection::of(entry.about.id, draft)?),
    };
    sheet.map_or_else(|| working::of(entry, draft, heading.units), Ok)
}

/// What a run sheet says where nobody said how many.
fn no_quantity() -> Block {
    let text =
        "The order does not say how many pieces: say it in the order line, and this sheet has their zinc.";
    Block::new("What is missing", Look::Full, vec![Row::said("", text)])
}

/// The sheet with what stands at the top and the bottom of every one: number, name and date, how the order
/// was written and read, the link.
fn framed(mut sheet: Sheet, heading: &Heading, as_read: Vec<Row>) -> Sheet {
    let mut rows = vec![
        Row::to_fill("Number", &heading.number),
        Row::to_fill("Name", &heading.name),
        Row::to_fill("Date", &heading.date),
    ];
    if !heading.line.is_empty() {
        rows.push(Row::said("As written", heading.line.clone()));
    }
    rows.extend(as_read);
    sheet.blocks.insert(0, Block::new("", Look::Full, rows));
    sheet.blocks.push(foot(heading));
    sheet
}

/// The link, and which program made the sheet.
fn foot(heading: &Heading) -> Block {
    let mut rows = Vec::new();
    if !heading.link.is_empty() {
        rows.push(Row::said("Opens again by", heading.link.clone()));
    }
    rows.push(Row::said("", format!("Kettle & Barrel {VERSION}")));
    Block::new("", Look::Small, rows)
}

impl Sheet {
    /// The sheet as it goes on its pages: what is secondary gives way where they are full, and says so.
    #[must_use]
    pub fn on_paper(mut self) -> Self {
        fit::fit(&mut self);
        self
    }

    /// A sheet of one page.
    fn of(title: impl Into<Cow<'static, str>>, blocks: Vec<Block>) -> Self {
        Self { title: title.into(), blocks, pages: 1 }
    }
}

impl Block {
    fn new(title: impl Into<Cow<'static, str>>, look: Look, rows: Vec<Row>) -> Self {
        Self { title: title.into(), look, rows }
    }
}

impl Row {
    /// A name and what is said of it.
    fn said(name: impl Into<Cow<'static, str>>, text: impl Into<Cow<'static, str>>) -> Self {
        Self { name: name.into(), text: text.into(), ..Self::default() }
    }

    /// A figure.
    fn figure(figure: &Figure) -> Self {
        Self::said(capital(&figure.name), figure.value.to_string())
    }

    /// Something that is ticked when it is done.
    fn tick(text: impl Into<Cow<'static, str>>) -> Self {
        Self { ticked: true, ..Self::said("", text) }
    }

    /// What is known of something, or room to write it.
    fn to_fill(name: &'static str, text: &str) -> Self {
        let room: &[&str] = if text.is_empty() { &[""] } else { &[] };
        Self { room, ..Self::said(name, text.to_owned()) }
    }

    /// With room to write by hand.
    fn room(mut self, room: &'static [&'static str]) -> Self {
        self.room = room;
        self
    }

    /// Says less where the page is full.
    fn shorter(mut self, text: String) -> Self {
        self.shorter = Some(text);
        self
    }

    /// Gives way where the page is full.
    fn may_go(mut self) -> Self {
        self.may_go = true;
        self
    }
}
