//! What must hold for every input, and for the code as a whole.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing)]

mod address;
mod agreement;
mod answer;
mod architecture;
mod barrel;
mod by_hand;
mod corner;
mod course;
mod damage;
mod direction;
mod fields;
mod fuzz;
mod gauges;
mod golden;
mod kettle;
mod lessons;
mod linear;
mod links;
mod list;
mod lot;
mod lot_check;
mod nut;
mod order;
mod pair;
mod part;
mod reading;
mod readme;
mod register;
mod reports;
mod room;
mod ruling;
mod saved;
mod shapes;
mod sheet;
mod site;
mod solid;
mod spoken;
mod steel;
mod texts;
mod thread;
mod unit;
mod units;
mod verdicts;
mod working;
