//! Student's t, one-sided, as tables print it (from memory), and its distribution by its closed forms.

use crate::seen::near;
use kettle_barrel::lot::{student_t, student_t_share};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

/// Degrees of freedom; t for 90, 95, 97.5 and 99 %.
const TABLE: &[(u32, [f64; 4])] = &[
    (1, [3.078, 6.314, 12.706, 31.821]),
    (2, [1.886, 2.920, 4.303, 6.965]),
    (3, [1.638, 2.353, 3.182, 4.541]),
    (4, [1.533, 2.132, 2.776, 3.747]),
    (5, [1.476, 2.015, 2.571, 3.365]),
    (7, [1.415, 1.895, 2.365, 2.998]),
    (9, [1.383, 1.833, 2.262, 2.821]),
    (12, [1.356, 1.782, 2.179, 2.681]),
    (19, [1.328, 1.729, 2.093, 2.539]),
    (29, [1.311, 1.699, 2.045, 2.462]),
    (120, [1.289, 1.658, 1.980, 2.358]),
];

#[test]
fn t_as_printed() {
    for &(freedom, row) in TABLE {
        for (share, printed) in [0.9, 0.95, 0.975, 0.99].into_iter().zip(row) {
            let t = student_t(share, freedom).unwrap();
            near!(STUDENT_T, t, printed, 5.1e-4, "{freedom} {share}: {t}");
        }
    }
}

/// One degree of freedom is an arctangent, two an algebraic function.
#[test]
fn closed_forms() {
    for t in [-3.0, -0.5, 0.0, 0.7, 2.0, 11.0_f64] {
        let one = 0.5 + t.atan() / std::f64::consts::PI;
        let two = 0.5 + t / (2.0 * (2.0 + t * t).sqrt());
        assert!((student_t_share(t, 1).unwrap() - one).abs() < 1e-12);
        assert!((student_t_share(t, 2).unwrap() - two).abs() < 1e-12);
    }
}
