//! Our numbers against published ones, one file a standard or handbook.
//!
//! Each row names its source and how it is known (read, memory, computed). The same checks run
//! natively and in wasm.

mod coat_class;

mod astm_a123;
mod astm_a153;
mod astm_b117;
mod astm_b633;
mod astm_b695;
mod astm_f1941;
mod astm_f2329;
mod iso_10684;
mod iso_1461;
mod iso_14713_1;
mod iso_4042;
mod iso_9223;
mod iso_9224;
mod zinc_sites;
