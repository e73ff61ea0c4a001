//! An answer, as text for people and as JSON for programs.

use kettle_barrel::calculator::{Draft, Problems, Report};
use kettle_barrel::order::Assessment;
use kettle_barrel::order::list::Table;
use kettle_barrel::quantity::Units;
use kettle_barrel::sheet::Sheet;
use serde::Serialize;

use super::coursework::Coursework;
use super::output::{Code, Output};
use super::sources::Rests;

/// The JSON schema of an answer.
pub const SCHEMA: &str = include_str!("answer.schema.json");

/// The name and version of the shape in which an answer is written as JSON.
///
/// What a program reads today stays where it is within a version; new members may come.
const FORMAT: &str = "kettle-barrel/1";

/// What was asked, how it was understood, and what came of it.
#[derive(Debug, Serialize)]
pub struct Answer {
    /// The shape.
    pub format: &'static str,
    /// The version of the program.
    pub program: &'static str,
    /// What was asked.
    #[serde(rename = "asked")]
    pub request: Request,
    /// The fields as they were understood.
    pub fields: Draft,
    /// How an order line was read, as a sentence.
    pub read: Option<String>,
    /// What of an order line, or which fields of a calculator, were not used.
    pub not_used: Vec<NotUsed>,
    /// What is wrong with the fields.
    pub problems: Option<Problems>,
    /// The assessment of an order line.
    pub order: Option<Assessment>,
    /// The report of a calculator.
    pub report: Option<Report>,
    /// A sheet of an order line.
    pub sheet: Option<Sheet>,
    /// The reply to the customer.
    pub reply: Option<String>,
    /// Coursework.
    pub course: Option<Coursework>,
    /// What a list of order lines comes to.
    pub summary: Option<Summed>,
    /// What rests on documents.
    pub sources: Option<Vec<Rests>>,
}

/// What was asked.
#[derive(Debug, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Request {
    /// An order line.
    Order {
        /// As it was written.
        line: String,
    },
    /// A calculator.
    Calculator {
        /// Its id.
        id: &'static str,
    },
    /// Coursework: a sheet by its fields, a lesson, or the lines of a class.
    Course {
        /// The lesson, where one was asked.
        lesson: Option<String>,
    },
    /// What a list of order lines comes to.
    Summary {
        /// The file, or `-`.
        file: String,
    },
    /// What the numbers rest on.
    Sources {
        /// A document, or the beginning of its name; null for all.
        document: Option<String>,
    },
}

/// What a list of order lines comes to.
#[derive(Debug, Serialize)]
pub struct Summed {
    /// Lines that were assessed.
    pub assessed: u64,
    /// Lines that could not be.
    pub problems: u64,
    /// Lines of which not every word was used.
    pub not_all_used: u64,
    /// Headings of columns that say nothing of an order.
    pub left_out: Vec<String>,
    /// What there is to say in sentences.
    pub said: Vec<String>,
    /// The counts by process, what stands in the way, and what shares a kettle or a barrel.
    pub tables: Vec<Table>,
}

/// A piece of an order line, or a field of a calculator, that was not used.
#[derive(Debug, Serialize)]
pub struct NotUsed {
    /// As it was written.
    pub text: String,
    /// Why; empty where it was not understood.
    pub why: String,
}

impl Answer {
    /// An answer that is still empty.
    pub fn to(request: Request, fields: Draft) -> Self {
        Self {
            format: FORMAT,
            program: env!("CARGO_PKG_VERSION"),
            request,
            fields,
            read: None,
            not_used: Vec::new(),
            problems: None,
            order: None,
            report: None,
            sheet: None,
            reply: None,
            course: None,
            summary: None,
            sources: None,
        }
    }

    /// The answer in the units of whoever asked.
    #[must_use]
    pub fn in_units(mut self, units: Units) -> Self {
        self.order = self.order.map(|order| order.in_units(units));
        self.report = self.report.map(|report| report.in_units(units));
        self
    }

    /// The answer as it is written.
    pub fn output(&self, json: bool) -> Output {
        let understood = self.not_used.is_empty() && self.problems.is_none();
        let code = if understood { Code::Answered } else { Code::NotUnderstood };
        if json {
            return match serde_json::to_string_pretty(self) {
                Ok(text) => Output { code, ..Output::answer(text + "\n") },
                Err(problem) => {
                    Output::misused(format!("The answer cannot be written as JSON: {problem}.\n"))
                }
            };
        }
        let mut text = String::new();
        // A sheet and a reply say themselves how the line was read.
        if let Some(read) = self.read.as_ref().filter(|_| self.sheet.is_none() && self.reply.is_none()) {
            text.push_str(&format!("{read}\n\n"));
        }
        // Of an order line the sentence says it.
        if self.read.is_none() {
            for NotUsed { text: given, why } in &self.not_used {
                text.push_str(&format!("Not used: {given} ({why})\n"));
            }
        }
        if let Some(order) = &self.order {
            text.push_str(&order.to_string());
        }
        if let Some(report) = &self.report {
            text.push_str(&report.to_string());
        }
        if let Some(sheet) = &self.sheet {
            text.push_str(&sheet.to_string());
        }
        text.push_str(self.reply.as_deref().unwrap_or_default());
        // On a screen a unit must not be cut from its number; a program looks for a plain space.
        let text = text.replace('\u{a0}', " ");
        let problems = self.problems.as_ref().map(|problems| format!("{problems}\n")).unwrap_or_default();
        Output { code, text, problems }
    }
}
