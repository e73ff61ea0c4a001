//! Zinc on threaded steel fasteners: which finish suits an order line, what fits, what it costs in
//! strength, and how every number came about.
//!
//! The rooms, from the bottom up; each knows only those before it:
//!
//! - [`sorting`]: short lists in their order.
//! - [`quantity`]: lengths, areal masses, temperatures, hardness: read, converted, shown.
//! - [`sentence`]: sentences put together from parts.
//! - [`source`]: every published document, named once.
//! - [`working`]: the steps of a result, kept so that anybody can redo the sum.
//! - [`process`]: the three ways of putting zinc on, by name.
//! - [`table`]: published tables as typed constants, one file a standard.
//! - [`thread`]: designations, limits of size, the coated fit, strength.
//! - [`steel`]: grades, hardness scales, tempering, bakes.
//! - [`part`]: shapes of parts: area with the thread developed, volume, mass.
//! - [`coat`]: the classes of the standards, thickness and mass, the barrel's charge, the kettle's loss.
//! - [`site`]: corrosivity of a place, the life of a coat, hours of salt spray.
//! - [`lot`]: readings, samples, acceptance.
//! - [`rule`]: everything that judges, one row a rule, on a case of facts.
//! - [`calculator`]: one file a calculator, from text to report.
//! - [`order`]: the order line and its assessment.
//! - [`sheet`]: the job sheet, the run sheets and the record of an inspection, as data.
//! - [`course`]: lessons, and exercises that the calculators set and mark.
//! - [`page`]: the browser; its components compile for wasm32 only, and no other room knows of it.
#![forbid(unsafe_code)]
#![cfg_attr(test, allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing))]

pub mod calculator;
pub mod coat;
pub mod course;
pub mod lot;
pub mod order;
pub mod page;
pub mod part;
pub mod process;
pub mod quantity;
pub mod rule;
pub mod sentence;
pub mod sheet;
pub mod site;
pub mod sorting;
pub mod source;
pub mod steel;
pub mod table;
pub mod thread;
pub mod working;
