//! A drawing as SVG, in text: a browser makes the elements of hundreds of shapes faster from one text
//! than a program one by one, and the program is smaller for it.

use std::fmt::Write;

use super::{Anchor, Drawing, Shape};

impl Drawing {
    /// The drawing as one image with this text for who cannot see it.
    pub fn svg(&self, label: &str) -> String {
        let mut svg = String::with_capacity(80 * self.shapes.len());
        let (width, height) = (self.width.round(), self.height.round());
        put(
            &mut svg,
            format_args!(
                "<svg role=img width={width} height={height} viewBox=\"0 0 {width} {height}\" aria-label=\""
            ),
        );
        escape(&mut svg, label);
        svg.push_str("\">");
        self.shapes.iter().for_each(|shape| shape.svg(&mut svg));
        svg.push_str("</svg>");
        svg
    }
}

impl Shape {
    fn svg(&self, svg: &mut String) {
        match self {
            Self::Line { class, from: (x1, y1), to: (x2, y2) } => put(
                svg,
                format_args!("<line class=\"{class}\" x1={x1:.1} y1={y1:.1} x2={x2:.1} y2={y2:.1} />"),
            ),
            Self::Box { class, at: (x, y), size: (width, height) } => put(
                svg,
                format_args!(
                    "<rect class=\"{class}\" x={x:.1} y={y:.1} width={width:.1} height={height:.1} />"
                ),
            ),
            Self::Dot { class, at: (x, y), radius } => {
                put(svg, format_args!("<circle class=\"{class}\" cx={x:.1} cy={y:.1} r={radius:.1} />"));
            }
            Self::Path { class, outline } => {
                put(svg, format_args!("<path class=\"{class}\" d=\"{outline}\" />"));
            }
            Self::Text { class, at: (x, y), anchor, text } => {
                let anchor = match anchor {
                    Anchor::Start => "start",
                    Anchor::Middle => "middle",
                    Anchor::End => "end",
                };
                put(svg, format_args!("<text class=\"{class}\" x={x:.1} y={y:.1} text-anchor={anchor}>"));
                escape(svg, text);
                svg.push_str("</text>");
            }
        }
    }
}

/// Writing into a string does not fail.
fn put(svg: &mut String, arguments: std::fmt::Arguments<'_>) {
    let _ = svg.write_fmt(arguments);
}

/// A text may hold what the user wrote: it stays a text.
fn escape(svg: &mut String, text: &str) {
    for letter in text.chars() {
        match letter {
            '&' => svg.push_str("&amp;"),
            '<' => svg.push_str("&lt;"),
            '"' => svg.push_str("&quot;"),
            other => svg.push(other),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_stay_words() {
        let text = "<b>\"1/2\" & more".to_owned();
        let shapes = vec![Shape::Text { class: "name", at: (2.0, 3.0), anchor: Anchor::End, text }];
        let drawing = Drawing { width: 260.0, height: 40.4, shapes };
        assert_eq!(
            drawing.svg("a < \"b\""),
            "<svg role=img width=260 height=40 viewBox=\"0 0 260 40\" aria-label=\"a &lt; &quot;b&quot;\">\
             <text class=\"name\" x=2.0 y=3.0 text-anchor=end>&lt;b>&quot;1/2&quot; &amp; more</text></svg>"
        );
    }
}
