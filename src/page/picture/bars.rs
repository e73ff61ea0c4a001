//! Named values or ranges beside each other.

use crate::calculator::{Bar, ScaleMark};

use super::{Axis, drawing, meaning, percent, shape, span};
use crate::page::element::{Element, element};

/// Bars on one axis, each under its name, with a line to compare them with.
pub fn bars(
    into: Element,
    bars: &[Bar],
    line: Option<&ScaleMark>,
    logarithmic: bool,
    text: String,
) -> Element {
    let ends = bars.iter().flat_map(|bar| [bar.from.number, bar.to.number]);
    let values = ends.chain(line.map(|line| line.at.number));
    let axis = if logarithmic {
        Axis::over(values.filter(|value| *value > 0.0), true)
    } else {
        Axis::from_zero(values)
    };
    let row = 44;
    let height = row * bars.len() + 6;
    let rows = bars.iter().enumerate().map(|(place, bar)| {
        let (from, to) = (axis.at(bar.from.number), axis.at(bar.to.number));
        let [words, top] = [16, 22].map(|below| (row * place + below).to_string());
        let value = if bar.from.number == 0.0 { bar.to.to_string() } else { span(bar.from, bar.to) };
        let filled = |class, x, width| {
            shape("rect", class, [("x", x), ("y", top.clone()), ("width", width)]).with("height", "14")
        };
        element("g")
            .class(if bar.marked { "marked" } else { "" })
            .put(element("text").with("x", "0").set("y", words.clone()).text(bar.label.to_string()))
            .put(element("text").with("x", "100%").set("y", words).with("text-anchor", "end").text(value))
            .put(filled("track", percent(0.0), percent(100.0)))
            .put(filled("bar", percent(from), percent((to - from).max(0.6))))
    });
    let drawn = drawing("bars", height, text).each(rows).each(line.map(|line| {
        let x = percent(axis.at(line.at.number));
        shape("line", "mark", [("x1", x.clone()), ("x2", x), ("y2", height.to_string())]).with("y1", "18")
    }));
    into.put(drawn).each(line.map(|line| {
        let legend = element("p").class("legend").with("aria-hidden", "true");
        let legend = legend.put(element("i").class("swatch line"));
        meaning(legend, &line.label, line.at.to_string())
    }))
}
