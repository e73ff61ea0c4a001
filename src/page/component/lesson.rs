//! A lesson: its text with the numbers found, its picture, the question at its end.

use std::rc::Rc;

use yew::prelude::*;

use super::exercise::Exercises;
use super::picture::PictureBlock;
use super::step::sum;
use crate::calculator::{Address, Draft, Link, find};
use crate::course::lesson::{Block, Lesson};
use crate::quantity::Units;

/// A lesson, its numbers in the units of the reader.
pub fn lesson(lesson: &Lesson, units: Units) -> Html {
    let page = lesson.page();
    let piece = |(place, piece): (usize, &String)| match place % 2 {
        0 => html! { { piece.clone() } },
        _ => html! { <b>{ units.text(piece).into_owned() }</b> },
    };
    let block = |block: &Block| match block {
        Block::Heading(heading) => html! { <h2>{ *heading }</h2> },
        Block::Paragraph(pieces) => html! { <p>{ for pieces.iter().enumerate().map(piece) }</p> },
        Block::Step(step) => sum(step),
    };
    let open = |link: &Link| {
        let address = Address::new(link.calculator, Draft::from(link));
        let title = find(link.calculator).map_or("", |entry| entry.about.title);
        let headline =
            link.pairs.iter().take(3).map(|(_, text)| text.as_ref()).collect::<Vec<_>>().join(", ");
        html! { <li><a href={format!("#{address}")}>{ format!("{title}: {headline}") }</a></li> }
    };
    // In the middle, where the text has said what it shows.
    let (before, after) = page.blocks.split_at(page.blocks.len() / 2);
    let exercise: Vec<_> = page.exercise.into_iter().collect();
    html! {
        <>
            <article class="panel lesson">
                { for before.iter().map(block) }
                if let Some(picture) = page.picture { <PictureBlock {picture} /> }
                { for after.iter().map(block) }
                <h2>{ "With these numbers" }</h2>
                <ul>{ for page.opens.iter().map(open) }</ul>
            </article>
            <Exercises key={lesson.key} exercises={Rc::new(exercise)} sheet={None::<Rc<crate::course::Sheet>>} />
        </>
    }
}
