//! The readings of a lot against its limits, as a picture.

use super::{Input, Outcome};
use crate::calculator::{Picture, ScaleBand, ScaleMark, Verdict};
use crate::lot::picometres;
use crate::quantity::Length;

/// Every reading against the limits, equal ones together.
pub(super) fn of(input: &Input, outcome: &Outcome) -> Picture {
    let mut counted: Vec<(i64, usize)> = Vec::new();
    for &reading in input.readings.values() {
        let place = picometres(reading);
        match counted.binary_search_by_key(&place, |&(place, _)| place) {
            Ok(at) => counted.get_mut(at).into_iter().for_each(|(_, count)| *count += 1),
            Err(at) => counted.insert(at, (place, 1)),
        }
    }
    let at = |picometres: i64| input.show(Length::from_um(picometres as f64 / 1e6));
    let mut marks: Vec<ScaleMark> = counted
        .iter()
        .map(|&(place, count)| {
            let label = if count == 1 { "1 reading".to_owned() } else { format!("{count} readings") };
            ScaleMark { label: label.into(), at: at(place) }
        })
        .collect();
    marks.push(ScaleMark { label: "Lot mean".into(), at: input.show(outcome.statistics.mean) });
    if let Ok(evidence) = outcome.evidence {
        marks.push(ScaleMark {
            label: "Bound on the lot's mean".into(),
            at: input.show(evidence.lower_bound),
        });
    }
    Picture::Scale { title: "The readings against the limits.".into(), bands: bands(input, outcome), marks }
}

/// From the axis's beginning to its end, cut at the limits.
fn bands(input: &Input, outcome: &Outcome) -> Vec<ScaleBand> {
    let limits = &input.rule.limits;
    let single = limits.article.or(limits.reading).map(|limit| limit.thickness.um());
    let mean = limits.lot_mean.map(|limit| limit.thickness.um());
    let max = limits.lot_mean_max.map(|limit| limit.thickness.um());
    let ends = [single, mean, max, Some(outcome.statistics.max_reading.um())];
    let end = ends.into_iter().flatten().fold(0.0, f64::max) * 1.1;
    let lowest = single.into_iter().chain(mean).fold(f64::INFINITY, f64::min);
    let highest = single.into_iter().chain(mean).fold(0.0, f64::max);
    let top = max.unwrap_or(end);
    let names = match (single, mean) {
        (Some(single), Some(mean)) if single > mean => ("below both limits", "below the limit of an article"),
        (Some(_), Some(_)) => ("below the limit of an article", "below the lot mean's limit"),
        (Some(_), None) => ("below the limit", ""),
        _ => ("below the lot mean's limit", ""),
    };
    let cuts = [
        (names.0, 0.0, if lowest.is_finite() { lowest } else { 0.0 }, Verdict::RuledOut),
        (names.1, lowest, highest, Verdict::OnConditions),
        ("within the limits", highest, top, Verdict::Suits),
        ("above the lot mean's greatest", top, end, Verdict::RuledOut),
    ];
    let show = |um: f64| input.show(Length::from_um(um));
    cuts.into_iter()
        .filter(|&(_, from, to, _)| to > from)
        .map(|(label, from, to, verdict)| ScaleBand {
            label: label.into(),
            from: show(from),
            to: show(to),
            verdict: Some(verdict),
        })
        .collect()
}
