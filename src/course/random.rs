//! The draw: SplitMix64, so that a number draws the same on every machine.

/// SplitMix64, after G. L. Steele, D. Lea and C. H. Flood, *Fast splittable pseudorandom number
/// generators*, 2014: whole numbers only, so that no machine rounds otherwise.
#[derive(Debug, Clone)]
pub struct Random(u64);

impl Random {
    /// The draw that a number fixes.
    pub const fn new(number: u64) -> Self {
        Self(number)
    }

    /// The next 64 bits.
    pub fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mixed = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// A whole number below `end`; 0 where `end` is.
    pub fn below(&mut self, end: usize) -> usize {
        // The product of two halves of 64 bits fits, and is below `end` once shifted.
        let half = self.bits() >> 32;
        let end = u64::try_from(end).unwrap_or(u64::MAX).min(u64::from(u32::MAX));
        ((half * end) >> 32) as usize
    }

    /// One of these; `None` where there is none.
    pub fn pick<'a, T>(&mut self, of: &'a [T]) -> Option<&'a T> {
        let at = self.below(of.len());
        of.get(at)
    }

    /// Puts these into another order.
    pub fn shuffle<T>(&mut self, all: &mut [T]) {
        for end in (1..all.len()).rev() {
            let other = self.below(end + 1);
            all.swap(end, other);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The first numbers from 1234567, as listed with the reference implementation (from memory).
    #[test]
    fn it_draws_what_the_reference_draws() {
        let mut random = Random::new(1_234_567);
        let drawn = [(); 3].map(|()| random.bits());
        assert_eq!(drawn, [6_457_827_717_110_365_317, 3_203_168_211_198_807_973, 9_817_491_932_198_370_423]);
    }

    #[test]
    fn every_one_is_drawn_and_none_beyond() {
        let mut random = Random::new(1);
        let mut drawn = [0; 7];
        (0..7000).for_each(|_| drawn[random.below(7)] += 1);
        assert!(drawn.iter().all(|&times| (850..1150).contains(&times)), "{drawn:?}");
        assert_eq!(random.pick::<u8>(&[]), None);
        let mut all = [1, 2, 3, 4, 5];
        random.shuffle(&mut all);
        all.sort_unstable();
        assert_eq!(all, [1, 2, 3, 4, 5]);
    }
}
