//! What the worker tells the page.

use std::borrow::Cow;

use js_sys::Array;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::Blob;

use crate::order::list::Table;

/// What the worker tells the page.
#[derive(Debug, Clone, PartialEq)]
pub enum Told {
    /// How far it is.
    Progress {
        /// Lines that were assessed or have a problem.
        lines: u32,
        /// Lines with a problem.
        problems: u32,
        /// The share of the file that was read.
        share: f64,
    },
    /// It has ended.
    Ended(Outcome),
}

/// What came of a list.
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome {
    /// What there is to say in sentences.
    pub said: Vec<String>,
    /// Why it could not be read, or not to its end.
    pub unread: Option<String>,
    /// The summary, the first problems, the first lines.
    pub tables: Vec<Table>,
    /// The results as a file.
    pub results: Option<Blob>,
}

impl Told {
    /// As a message. Texts in arrays: nothing is gained by a format that needs a reader of its own.
    pub fn to_message(&self) -> JsValue {
        match self {
            Self::Progress { lines, problems, share } => [f64::from(*lines), f64::from(*problems), *share]
                .map(JsValue::from)
                .iter()
                .collect::<Array>()
                .into(),
            Self::Ended(Outcome { said, unread, tables, results }) => {
                let tables: Array = tables
                    .iter()
                    .map(|table| {
                        let rows: Array = table.rows.iter().map(|row| texts(row)).collect();
                        Array::of3(&table.title.as_str().into(), &texts(&table.heading), &rows)
                    })
                    .collect();
                let unread = unread.as_deref().map_or(JsValue::NULL, JsValue::from);
                let results = results.as_ref().map_or(JsValue::NULL, JsValue::from);
                Array::of4(&texts(said), &unread, &tables, &results).into()
            }
        }
    }

    /// Read from a message.
    pub fn from_message(message: &JsValue) -> Self {
        let message: &Array = message.unchecked_ref();
        let [first, second, third, fourth] = [0, 1, 2, 3].map(|place| message.get(place));
        let number = |value: &JsValue| value.as_f64().unwrap_or_default();
        if first.as_f64().is_some() {
            return Self::Progress {
                lines: number(&first) as u32,
                problems: number(&second) as u32,
                share: number(&third),
            };
        }
        let table = |table: JsValue| {
            let table: Array = table.unchecked_into();
            Table {
                title: table.get(0).as_string().unwrap_or_default(),
                heading: strings(&table.get(1)).into_iter().map(Cow::Owned).collect(),
                rows: table.get(2).unchecked_ref::<Array>().iter().map(|row| strings(&row)).collect(),
            }
        };
        Self::Ended(Outcome {
            said: strings(&first),
            unread: second.as_string(),
            tables: third.unchecked_ref::<Array>().iter().map(table).collect(),
            results: fourth.dyn_into().ok(),
        })
    }
}

fn texts(texts: &[impl AsRef<str>]) -> Array {
    texts.iter().map(|text| JsValue::from(text.as_ref())).collect()
}

fn strings(array: &JsValue) -> Vec<String> {
    array.unchecked_ref::<Array>().iter().filter_map(|text| text.as_string()).collect()
}
