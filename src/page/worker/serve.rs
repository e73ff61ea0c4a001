//! The work itself, in the worker.

use std::io::BufReader;

use js_sys::{Array, Date, Uint8Array};
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{Blob, BlobPropertyBag, DedicatedWorkerGlobalScope, MessageEvent};

use super::bytes::{Bytes, text};
use super::told::{Outcome, Told};
use crate::order::list::{List, Record, Row, Summary, Table, Unread, written, written_heading};
use crate::quantity::Units;

/// Lines that are assessed before the clock is looked at: a few milliseconds.
const HELD: usize = 32;
/// Milliseconds between two words on how far it is.
const BETWEEN: f64 = 120.0;
/// Bytes of results that are gathered before they go to the browser, which may keep them on its disk.
const PART: usize = 1 << 18;
/// Of the problems and of the lines, as many as are shown.
const SHOWN: usize = 25;

/// Waits for a list, assesses it, and tells the page.
pub fn serve(scope: DedicatedWorkerGlobalScope) {
    let to_page = scope.clone();
    let told = move |told: &Told| {
        // A page that is gone hears nothing.
        let _ = to_page.post_message(&told.to_message());
    };
    let work = Closure::<dyn Fn(MessageEvent)>::new(move |event: MessageEvent| {
        let asked: Array = event.data().unchecked_into();
        let units = Units::of_key(&asked.get(1).as_string().unwrap_or_default());
        if let Ok(file) = asked.get(0).dyn_into::<Blob>() {
            told(&Told::Ended(assess(file, units, &told)));
        }
    });
    scope.set_onmessage(Some(work.as_ref().unchecked_ref()));
    // It lasts as long as the worker.
    work.forget();
}

/// What is gathered of a list.
#[derive(Default)]
struct Gathered {
    summary: Summary,
    problems: Vec<Vec<String>>,
    first: Vec<Vec<String>>,
    parts: Array,
    part: Vec<u8>,
}

fn assess(file: Blob, units: Units, tell: &impl Fn(&Told)) -> Outcome {
    let size = file.size().max(1.0);
    let nothing =
        |why: String| Outcome { said: Vec::new(), unread: Some(why), tables: Vec::new(), results: None };
    let (bytes, read) = match Bytes::of(file) {
        Ok(bytes) => bytes,
        Err(problem) => return nothing(problem.to_string()),
    };
    let mut list = match List::open(Box::new(BufReader::new(bytes)), text) {
        Ok(list) => list,
        Err(problem) => return nothing(problem.to_string()),
    };
    let reads = list.reads().clone();
    let summary = Summary::in_units(units);
    let mut gathered = Gathered { summary, part: written_heading(units), ..Gathered::default() };
    let mut said_at = 0.0;
    let ended = loop {
        let records = match list.take(HELD) {
            Ok(records) if records.is_empty() => break None,
            Ok(records) => records,
            Err(problem) => break Some(problem),
        };
        let rows: Vec<Row> = records.iter().map(|record| reads.row(record)).collect();
        gathered.take(&records, &rows);
        let now = Date::now();
        if now - said_at >= BETWEEN {
            said_at = now;
            let Summary { assessed, problems, .. } = &gathered.summary;
            tell(&Told::Progress {
                lines: (assessed + problems) as u32,
                problems: *problems as u32,
                share: read.get() / size,
            });
        }
    };
    gathered.outcome(list.left_out(), ended)
}

impl Gathered {
    fn take(&mut self, records: &[Record], rows: &[Row]) {
        let units = self.summary.units;
        for (record, row) in records.iter().zip(rows) {
            self.summary.add(record.row, row);
            let place = || record.row.to_string();
            if let Some(wrong) = row.wrong().filter(|_| self.problems.len() < SHOWN) {
                self.problems.push(vec![place(), row.line.clone(), wrong]);
            }
            if self.first.len() < SHOWN {
                let [hot_dip, mechanical, electroplated, _, order, first] = row.told(units);
                let cells = [place(), row.line.clone(), order, first, hot_dip, mechanical, electroplated];
                self.first.push(cells.into());
            }
        }
        self.part.append(&mut written(rows, units));
        if self.part.len() >= PART {
            self.end_part();
        }
    }

    fn end_part(&mut self) {
        let part = Array::of1(&Uint8Array::from(self.part.as_slice()));
        if let Ok(part) = Blob::new_with_u8_array_sequence(&part) {
            self.parts.push(&part);
        }
        self.part.clear();
    }

    fn outcome(mut self, left_out: &[String], ended: Option<Unread>) -> Outcome {
        self.end_part();
        let kind = BlobPropertyBag::new();
        kind.set_type("text/csv;charset=utf-8");
        let mut said = self.summary.sentences();
        if !left_out.is_empty() {
            said.push(format!(
                "Columns left out, because their headings say nothing of an order: {}.",
                left_out.join(", ")
            ));
        }
        let mut tables = self.summary.tables();
        let mut show = |title: &str, heading: &[&'static str], rows: Vec<Vec<String>>| {
            let more =
                if rows.len() == SHOWN { format!("{title}, the first {SHOWN}") } else { title.to_owned() };
            if !rows.is_empty() {
                tables.push(Table { rows, ..Table::of(more, heading, Units::default()) });
            }
        };
        show("Problems", &["row", Outcome::ORDER, "what is wrong or was not used"], self.problems);
        show(
            "Results",
            &["row", Outcome::ORDER, "to order", "first", "hot-dip", "mechanical", "electroplated"],
            self.first,
        );
        Outcome {
            said,
            unread: ended.map(|problem| problem.to_string()),
            tables,
            results: Blob::new_with_blob_sequence_and_options(&self.parts, &kind).ok(),
        }
    }
}

impl Outcome {
    /// What stands over a column of order lines, which open.
    pub const ORDER: &str = "order line";
}
