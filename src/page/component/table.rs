//! A table of texts, which is moved under the finger where it is wider than the page.

use yew::prelude::*;

use crate::calculator::Address;
use crate::order;
use crate::order::list::Table;
use crate::page::state::LINE;
use crate::page::worker::Outcome;

/// A table; order lines in it open.
pub fn table(table: &Table) -> Html {
    let lines = table.heading.iter().position(|name| name == Outcome::ORDER);
    let cell = |(place, text): (usize, &String)| match Some(place) == lines {
        true => {
            let address = Address::new(order::ABOUT.id, [(LINE, text.as_str())].into_iter().collect());
            html! { <th scope="row"><a href={format!("#{address}")}>{ text.clone() }</a></th> }
        }
        false if lines.is_none() && place == 0 => html! { <th scope="row">{ text.clone() }</th> },
        false => html! { <td class={is_number(text).then_some("number")}>{ text.clone() }</td> },
    };
    let row = |row: &Vec<String>| html! { <tr>{ for row.iter().enumerate().map(cell) }</tr> };
    // A heading without words would be none.
    let heading = |name: &str| match name {
        "" => html! { <td /> },
        name => html! { <th scope="col">{ name.to_owned() }</th> },
    };
    html! {
        <div class="panel scroll block" tabindex="0" role="region" aria-label={table.title.clone()}>
            <table class="wide">
                <caption>{ table.title.clone() }</caption>
                <thead><tr>{ for table.heading.iter().map(|name| heading(name)) }</tr></thead>
                <tbody>{ for table.rows.iter().map(row) }</tbody>
            </table>
        </div>
    }
}

fn is_number(text: &str) -> bool {
    text.bytes().all(|byte| byte.is_ascii_digit() || byte == b'.')
}
