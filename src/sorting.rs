//! Short lists in their order.
//!
//! The sort of the standard library is made anew for every type that is sorted, 4 kB of code each time, and
//! all of it goes over the wire with the page. A few dozen things are put in one after the other with less;
//! what may be long (readings, articles, the lines of a list) keeps to the standard library.

use std::cmp::Ordering;
use std::mem::swap;

/// Sorts by a comparison; equal ones stay as they stood.
pub fn sort_by<T>(items: &mut [T], compare: impl Fn(&T, &T) -> Ordering) {
    for end in 1..items.len() {
        let mut at = end;
        while let Some([before, item]) = at.checked_sub(1).and_then(|from| items.get_mut(from..=at))
            && compare(before, item) == Ordering::Greater
        {
            swap(before, item);
            at -= 1;
        }
    }
}

/// Sorts by a key; equal ones stay as they stood.
pub fn sort_by_key<T, K: Ord>(items: &mut [T], key: impl Fn(&T) -> K) {
    sort_by(items, |one, other| key(one).cmp(&key(other)));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_sorts_as_the_standard_library_does() {
        for seed in 0..200_u64 {
            let mut drawn = seed;
            let mut next = || {
                drawn = drawn.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
                drawn >> 60
            };
            let items: Vec<(u64, usize)> = (0..(seed % 40) as usize).map(|place| (next(), place)).collect();
            let (mut ours, mut theirs) = (items.clone(), items);
            sort_by_key(&mut ours, |(number, _)| *number);
            theirs.sort_by_key(|(number, _)| *number);
            assert_eq!(ours, theirs);
        }
    }
}
