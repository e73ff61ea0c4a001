//! The parts of the page, one a file.
//!
//! What is worth comparing is a component, which is set anew only where its properties have changed;
//! what is small is a function that its component calls. A component costs a kilobyte of the page.

mod answer;
mod app;
mod catalogue;
mod control;
mod course;
mod detail;
mod earlier_readings;
mod entry;
mod examples;
mod exercise;
mod field;
mod figure;
mod finding;
mod footer;
mod form;
mod formula;
mod found;
mod header;
mod lesson;
mod line;
mod line_read;
mod list;
mod next_reading;
mod note;
mod notice;
mod part;
mod picture;
mod problems;
mod process;
mod qr_code;
mod saved;
mod section;
mod segments;
mod settings;
mod sheet;
mod sheet_form;
mod sign;
mod source;
mod sources;
mod step;
mod symbol;
mod table;
mod title;
mod tools;
mod typed;
mod verdict;
mod work;

pub use app::App;
