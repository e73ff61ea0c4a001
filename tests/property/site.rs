//! Life of a coat: thicker never lasts shorter, a harsher place never longer, and years turn back
//! into the thickness they came from.

use kettle_barrel::quantity::{Length, PlainNumber, Rate, Temperature, Time};
use kettle_barrel::site::life::{Exponent, Promise, attack, promise, range, years};
use kettle_barrel::site::{Category, Climate, dose_response};
use proptest::prelude::*;

fn exponent() -> impl Strategy<Value = Exponent> {
    (0..3usize).prop_map(|at| Exponent::ALL[at])
}

fn category() -> impl Strategy<Value = Category> {
    (0..6usize).prop_map(|at| Category::ALL[at])
}

proptest! {
    #[test]
    fn thicker_never_lasts_shorter(
        thickness in 0.1..500.0f64, more in 0.0..500.0f64, rate in 0.05..25.0f64, exponent in exponent(),
    ) {
        let rate = Rate::from_um_year(rate);
        let of = |um| years(Length::from_um(um), rate, exponent).year();
        prop_assert!(of(thickness + more) >= of(thickness));
    }

    #[test]
    fn a_harsher_place_never_lasts_longer(
        thickness in 0.1..500.0f64, one in category(), other in category(), exponent in exponent(),
    ) {
        let (milder, harsher) = (one.min(other), one.max(other));
        let thickness = Length::from_um(thickness);
        let mild = range(thickness, milder.rates(), exponent);
        let harsh = range(thickness, harsher.rates(), exponent);
        prop_assert!(harsh.min.year() <= mild.min.year());
        let most = |years: Option<Time>| years.map_or(f64::INFINITY, Time::year);
        prop_assert!(most(harsh.most) <= most(mild.most));
        prop_assert!(most(mild.most) >= mild.min.year());
    }

    #[test]
    fn thickness_to_years_and_back(
        thickness in 0.1..1000.0f64, rate in 0.05..25.0f64, exponent in exponent(),
    ) {
        let rate = Rate::from_um_year(rate);
        let back = attack(rate, years(Length::from_um(thickness), rate, exponent), exponent).um();
        prop_assert!((back / thickness - 1.0).abs() < 1e-12, "{back}");
    }

    #[test]
    fn years_to_thickness_and_back(
        time in 0.01..300.0f64, rate in 0.05..25.0f64, exponent in exponent(),
    ) {
        let rate = Rate::from_um_year(rate);
        let back = years(attack(rate, Time::from_year(time), exponent), rate, exponent).year();
        prop_assert!((back / time - 1.0).abs() < 1e-12, "{back}");
    }

    /// The first year costs the first year's loss, and ISO 14713-1 promises the least.
    #[test]
    fn straight_is_the_shortest_life(thickness in 1.0..500.0f64, rate in 0.05..25.0f64) {
        prop_assume!(thickness >= rate);
        let of = |exponent| years(Length::from_um(thickness), Rate::from_um_year(rate), exponent).year();
        prop_assert!(of(Exponent::Straight) <= of(Exponent::Upper) * (1.0 + 1e-12));
        prop_assert!(of(Exponent::Upper) <= of(Exponent::Mean) * (1.0 + 1e-12));
    }

    /// A thicker coat, a milder place and fewer years never make a promise worse.
    #[test]
    fn a_promise_is_monotonic(
        min in 1.0..200.0f64, unevenness in 0.0..100.0f64, more in 0.0..100.0f64,
        place in category(), wanted in 1.0..100.0f64, fewer in 0.0..50.0f64,
    ) {
        let of = |min: f64, place: Category, wanted: f64| {
            let (min, max) = (Length::from_um(min), Length::from_um(min + unevenness));
            promise(min, max, place.rates(), Time::from_year(wanted))
        };
        let kept = of(min, place, wanted);
        prop_assert!(of(min + more, place, wanted) <= kept);
        prop_assert!(of(min, place, (wanted - fewer).max(0.1)) <= kept);
        for milder in Category::ALL.into_iter().filter(|milder| *milder < place) {
            prop_assert!(of(min, milder, wanted) <= kept);
        }
        prop_assert!(Promise::Lasts < Promise::MayLast && Promise::MayLast < Promise::FallsShort);
    }

    /// More pollution and more damp never cost less zinc; the uncertainty encloses the estimate.
    #[test]
    fn pollution_and_damp_never_help(
        t in -17.1..28.7f64, rh in 34.0..90.0f64, so2 in 0.7..140.0f64, chloride in 0.4..700.0f64,
        damper in 0.0..3.0f64, more in 0.0..10.0f64,
    ) {
        let of = |rh, so2, chloride| {
            dose_response(Climate {
temperature: Temperature::from_celsius(t),
humidity: PlainNumber::from_percent(rh),
so2: PlainNumber::from_one(so2),
chloride: PlainNumber::from_one(chloride),
})
            .unwrap()
        };
        let base = of(rh, so2, chloride);
        prop_assert!(of(rh + damper, so2, chloride).rate >= base.rate);
        prop_assert!(of(rh, so2 + more, chloride).rate >= base.rate);
        prop_assert!(of(rh, so2, chloride + more).rate >= base.rate);
        prop_assert!(base.low < base.rate && base.rate < base.high);
    }
}
