//! Pictures, drawn from a report's own numbers.
//!
//! Places along an axis are per cent of the width, so that letters keep their size on any screen;
//! whoever cannot see a picture gets its text.

use crate::calculator::{Picture, ScaleBand, ScaleMark, Verdict};
use crate::quantity::Shown;
use crate::quantity::decimal::fixed;
use yew::prelude::*;

mod bars;
mod thread_fit;

/// A picture with its title.
pub fn picture(picture: &Picture) -> Html {
    let text = picture.text();
    let (title, drawn) = match picture {
        Picture::Scale { title, bands, marks } => (title, scale(bands, marks, text)),
        Picture::Bars { title, bars, line, logarithmic } => {
            (title, bars::bars(bars, line.as_ref(), *logarithmic, text))
        }
        Picture::ThreadFit { title, pitch, corners } => {
            (title, thread_fit::thread_fit(*pitch, corners, &text))
        }
    };
    html! { <figure class="block picture"><figcaption>{ title.to_string() }</figcaption>{ drawn }</figure> }
}

/// An axis from the least to the greatest value shown, in per cent of the width.
struct Axis {
    least: f64,
    greatest: f64,
    logarithmic: bool,
}

impl Axis {
    /// An axis with room for these values, and a little more on both sides.
    fn over(values: impl Iterator<Item = f64>, logarithmic: bool) -> Self {
        let on = |value: f64| if logarithmic { value.max(f64::MIN_POSITIVE).ln() } else { value };
        let (least, greatest) = values
            .map(on)
            .fold((f64::MAX, f64::MIN), |(least, greatest), value| (least.min(value), greatest.max(value)));
        let spare = if greatest > least { (greatest - least) * 0.06 } else { 1.0 };
        Self { least: least - spare, greatest: greatest + spare, logarithmic }
    }

    /// An axis from zero to a little beyond the greatest of these values.
    fn from_zero(values: impl Iterator<Item = f64>) -> Self {
        let greatest = values.fold(0.0, f64::max);
        Self { least: 0.0, greatest: if greatest > 0.0 { greatest * 1.04 } else { 1.0 }, logarithmic: false }
    }

    // `clamp` may panic, and its message brings along all that the library has for printing numbers.
    #[allow(clippy::manual_clamp, reason = "the ends are numbers in order")]
    fn at(&self, value: f64) -> f64 {
        let value = if self.logarithmic { value.max(f64::MIN_POSITIVE).ln() } else { value };
        ((value - self.least) / (self.greatest - self.least) * 100.0).max(0.0).min(100.0)
    }
}

fn percent(place: f64) -> String {
    format!("{}%", fixed(place, 2))
}

fn scale(bands: &[ScaleBand], marks: &[ScaleMark], text: String) -> Html {
    let ends = bands.iter().flat_map(|band| [band.from.number, band.to.number]);
    let axis = Axis::over(ends.chain(marks.iter().map(|mark| mark.at.number)), false);
    let places: Vec<f64> = marks.iter().map(|mark| axis.at(mark.at.number)).collect();
    let (rows, count) = stagger(&places);
    let row = 26;
    let top = 4 + row * count;
    let height = top + row * bands.len().max(1) + 8;
    html! {
        <>
            <svg class="scale" role="img" aria-label={text} width="100%" height={height.to_string()}>
                { for bands.iter().enumerate().map(|(place, band)| {
                    let (from, to) = (axis.at(band.from.number), axis.at(band.to.number));
                    html! {
                        <rect key={place} class={classes!("band", tone(band.verdict))} x={percent(from)} y={(top + row * place).to_string()}
                            width={percent((to - from).max(0.4))} height={(row - 6).to_string()} />
                    }
                }) }
                { for places.iter().zip(&rows).enumerate().map(|(place, (at, level))| {
                    let (x, head) = (percent(*at), 13 + row * level);
                    html! {
                        <g key={place}>
                            <line class="mark" x1={x.clone()} x2={x.clone()} y1={(head + 11).to_string()} y2={height.to_string()} />
                            <circle class="mark-head" cx={x.clone()} cy={head.to_string()} r="12" />
                            <text class="mark-number" {x} y={(head + 5).to_string()} text-anchor="middle">{ place + 1 }</text>
                        </g>
                    }
                }) }
            </svg>
            <div class="legend" aria-hidden="true">
                <ol>{ for marks.iter().map(|mark| html! { <li>{ mark.label.to_string() }{ ": " }<b>{ mark.at.to_string() }</b></li> }) }</ol>
                <ul>{ for bands.iter().map(|band| html! {
                    <li><i class={classes!("swatch", tone(band.verdict))}></i>{ band.label.to_string() }{ ": " }<b>{ span(band.from, band.to) }</b></li>
                }) }</ul>
            </div>
        </>
    }
}

/// Rows for numbered heads, so that none hides another on a narrow screen; and how many rows.
fn stagger(places: &[f64]) -> (Vec<usize>, usize) {
    // A head is a twelfth of the narrowest picture.
    const APART: f64 = 8.5;
    let mut last: Vec<Vec<f64>> = Vec::new();
    let rows = places.iter().map(|&at| {
        let free = last.iter().position(|row| row.iter().all(|other| (other - at).abs() >= APART));
        let row = free.unwrap_or(last.len());
        match last.get_mut(row) {
            Some(row) => row.push(at),
            None => last.push(vec![at]),
        }
        row
    });
    let rows = rows.collect();
    (rows, last.len().max(1))
}

fn span(from: Shown, to: Shown) -> String {
    if from.to_string() == to.to_string() {
        to.to_string()
    } else if from.unit == to.unit {
        format!("{} to {to}", from.digits())
    } else {
        format!("{from} to {to}")
    }
}

fn tone(verdict: Option<Verdict>) -> &'static str {
    match verdict {
        Some(Verdict::Suits) => "suits",
        Some(Verdict::OnConditions) => "conditions",
        Some(Verdict::RuledOut) => "out",
        None => "neutral",
    }
}
