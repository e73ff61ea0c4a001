//! Our numbers against published ones, one file a standard or handbook.
//!
//! Each row names its source and how it is known (read, memory, computed). The same checks run
//! natively and in wasm.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing)]

mod coat_class;

mod asme_b1_1;
mod astm_a123;
mod astm_a143;
mod astm_a153;
mod astm_a153_sampling;
mod astm_a193;
mod astm_a194;
mod astm_a307;
mod astm_a354;
mod astm_a449;
mod astm_a563;
mod astm_a563_grades;
mod astm_a574;
mod astm_b117;
mod astm_b633;
mod astm_b633_steel;
mod astm_b695;
mod astm_b695_steel;
mod astm_b849;
mod astm_b850;
mod astm_e140;
mod astm_f1941;
mod astm_f1941_steel;
mod astm_f1941_threads;
mod astm_f2329;
mod astm_f2329_sampling;
mod astm_f2329_steel;
mod astm_f3125;
mod astm_f436;
mod bickford;
mod cad_kernel;
mod fed_std_h28;
mod hollomon_jaffe;
mod hotdip_process;
mod iso_10684;
mod iso_10684_annex_a;
mod iso_10684_steel;
mod iso_10684_threads;
mod iso_1461;
mod iso_1461_sampling;
mod iso_14713_1;
mod iso_16224;
mod iso_18265;
mod iso_2081;
mod iso_4042;
mod iso_4042_steel;
mod iso_4042_threads;
mod iso_898_1;
mod iso_898_1_loads;
mod iso_898_2;
mod iso_898_2_loads;
mod iso_9223;
mod iso_9224;
mod iso_965_1;
mod iso_965_2;
mod iso_965_4;
mod iso_965_5;
mod limit;
mod lots_by_hand;
mod machinerys_handbook;
mod mechanical_process;
mod part_mass;
mod sae_j417;
mod sae_j429;
mod sampling_blanks;
mod service_life;
mod steel_check;
mod student_t;
mod units;
mod zinc_sites;
