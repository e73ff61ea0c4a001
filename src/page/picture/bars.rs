//! Named values or ranges beside each other.

use crate::calculator::{Bar, ScaleMark};
use yew::prelude::*;

use super::{Axis, percent, span};

/// Bars on one axis, each under its name, with a line to compare them with.
pub fn bars(bars: &[Bar], line: Option<&ScaleMark>, logarithmic: bool, text: String) -> Html {
    let ends = bars.iter().flat_map(|bar| [bar.from.number, bar.to.number]);
    let values = ends.chain(line.map(|line| line.at.number));
    let axis = if logarithmic {
        Axis::over(values.filter(|value| *value > 0.0), true)
    } else {
        Axis::from_zero(values)
    };
    let row = 44;
    let height = row * bars.len() + 6;
    html! {
        <>
            <svg class="bars" role="img" aria-label={text} width="100%" height={height.to_string()}>
                { for bars.iter().enumerate().map(|(place, bar)| {
                    let (from, to) = (axis.at(bar.from.number), axis.at(bar.to.number));
                    let top = row * place;
                    let value = if bar.from.number == 0.0 { bar.to.to_string() } else { span(bar.from, bar.to) };
                    html! {
                        <g key={place} class={classes!(bar.marked.then_some("marked"))}>
                            <text x="0" y={(top + 16).to_string()}>{ bar.label.to_string() }</text>
                            <text x="100%" y={(top + 16).to_string()} text-anchor="end">{ value }</text>
                            <rect class="track" x="0" y={(top + 22).to_string()} width="100%" height="14" />
                            <rect class="bar" x={percent(from)} y={(top + 22).to_string()} width={percent((to - from).max(0.6))} height="14" />
                        </g>
                    }
                }) }
                if let Some(line) = line {
                    <line class="mark" x1={percent(axis.at(line.at.number))} x2={percent(axis.at(line.at.number))} y1="18" y2={height.to_string()} />
                }
            </svg>
            if let Some(line) = line {
                <p class="legend" aria-hidden="true"><i class="swatch line"></i>{ line.label.to_string() }{ ": " }<b>{ line.at.to_string() }</b></p>
            }
        </>
    }
}
