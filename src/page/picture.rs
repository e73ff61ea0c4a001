//! Pictures, drawn from a report's own numbers.
//!
//! Places along an axis are per cent of the width, so that letters keep their size on any screen;
//! whoever cannot see a picture gets its text.

use crate::calculator::{Picture, ScaleBand, ScaleMark, Verdict};
use crate::quantity::Shown;

use super::element::{Element, element};

mod bars;
mod thread_fit;

/// A picture with its title.
pub fn picture(picture: &Picture) -> Element {
    let text = picture.text();
    let drawn = element("figure").class("block picture");
    let titled = |title: &str| drawn.put(element("figcaption").text(title.to_owned()));
    match picture {
        Picture::Scale { title, bands, marks } => scale(titled(title), bands, marks, text),
        Picture::Bars { title, bars, line, logarithmic } => {
            bars::bars(titled(title), bars, line.as_ref(), *logarithmic, text)
        }
        Picture::ThreadFit { title, pitch, corners } => {
            thread_fit::thread_fit(titled(title), *pitch, corners, text)
        }
    }
}

/// A drawing as wide as there is room.
fn drawing(class: &'static str, height: usize, text: String) -> Element {
    let drawing = element("svg").class(class).with("role", "img").set("aria-label", text);
    drawing.with("width", "100%").set("height", height.to_string())
}

/// A shape with its places and lengths.
fn shape<const N: usize>(
    name: &'static str,
    class: &'static str,
    places: [(&'static str, String); N],
) -> Element {
    places.into_iter().fold(element(name).class(class), |shape, (key, place)| shape.set(key, place))
}

/// What a sign of the drawing means.
fn meaning(into: Element, label: &str, value: String) -> Element {
    into.text(label.to_owned()).say(": ").put(element("b").text(value))
}

/// An axis from the least to the greatest value shown, in per cent of the width.
struct Axis {
    min: f64,
    max: f64,
    logarithmic: bool,
}

impl Axis {
    /// An axis with room for these values, and a little more on both sides.
    fn over(values: impl Iterator<Item = f64>, logarithmic: bool) -> Self {
        let on = |value: f64| if logarithmic { value.max(f64::MIN_POSITIVE).ln() } else { value };
        let (min, max) =
            values.map(on).fold((f64::MAX, f64::MIN), |(min, max), value| (min.min(value), max.max(value)));
        let spare = if max > min { (max - min) * 0.06 } else { 1.0 };
        Self { min: min - spare, max: max + spare, logarithmic }
    }

    /// An axis from zero to a little beyond the greatest of these values.
    fn from_zero(values: impl Iterator<Item = f64>) -> Self {
        let max = values.fold(0.0, f64::max);
        Self { min: 0.0, max: if max > 0.0 { max * 1.04 } else { 1.0 }, logarithmic: false }
    }

    // `clamp` may panic, and its message brings along all that the library has for printing numbers.
    #[allow(clippy::manual_clamp, reason = "the ends are numbers in order")]
    fn at(&self, value: f64) -> f64 {
        let value = if self.logarithmic { value.max(f64::MIN_POSITIVE).ln() } else { value };
        ((value - self.min) / (self.max - self.min) * 100.0).clamp(0.0, 100.0)
    }
}

fn percent(place: f64) -> String {
    format!("{place:.2}%")
}

fn scale(into: Element, bands: &[ScaleBand], marks: &[ScaleMark], text: String) -> Element {
    let ends = bands.iter().flat_map(|band| [band.from.number, band.to.number]);
    let axis = Axis::over(ends.chain(marks.iter().map(|mark| mark.at.number)), false);
    let places: Vec<f64> = marks.iter().map(|mark| axis.at(mark.at.number)).collect();
    let (rows, count) = stagger(&places);
    let row = 26;
    let top = 4 + row * count;
    let height = top + row * bands.len().max(1) + 8;
    let drawn_bands = bands.iter().enumerate().map(|(place, band)| {
        let (from, to) = (axis.at(band.from.number), axis.at(band.to.number));
        let places = [
            ("x", percent(from)),
            ("y", (top + row * place).to_string()),
            ("width", percent((to - from).max(0.4))),
            ("height", (row - 6).to_string()),
        ];
        shape(
            "rect",
            tone(band.verdict, ["band suits", "band conditions", "band out", "band neutral"]),
            places,
        )
    });
    let drawn_marks = places.iter().zip(&rows).enumerate().map(|(place, (at, level))| {
        let (x, head) = (percent(*at), 13 + row * level);
        let (from, to) = ((head + 11).to_string(), height.to_string());
        let line = [("x1", x.clone()), ("x2", x.clone()), ("y1", from), ("y2", to)];
        let circle = [("cx", x.clone()), ("cy", head.to_string()), ("r", "12".to_owned())];
        let number = [("x", x), ("y", (head + 5).to_string()), ("text-anchor", "middle".to_owned())];
        element("g")
            .put(shape("line", "mark", line))
            .put(shape("circle", "mark-head", circle))
            .put(shape("text", "mark-number", number).text((place + 1).to_string()))
    });
    let named_marks = marks.iter().map(|mark| meaning(element("li"), &mark.label, mark.at.to_string()));
    let named_bands = bands.iter().map(|band| {
        let tone = tone(band.verdict, ["swatch suits", "swatch conditions", "swatch out", "swatch neutral"]);
        let item = element("li").put(element("i").class(tone));
        meaning(item, &band.label, span(band.from, band.to))
    });
    let legend = element("div")
        .class("legend")
        .with("aria-hidden", "true")
        .put(element("ol").each(named_marks))
        .put(element("ul").each(named_bands));
    into.put(drawing("scale", height, text).each(drawn_bands).each(drawn_marks)).put(legend)
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

/// The class of a verdict, out of those for one that suits, suits on conditions, is ruled out, or is none.
fn tone(verdict: Option<Verdict>, [suits, conditions, out, neutral]: [&'static str; 4]) -> &'static str {
    match verdict {
        Some(Verdict::Suits) => suits,
        Some(Verdict::OnConditions) => conditions,
        Some(Verdict::RuledOut) => out,
        None => neutral,
    }
}
