//! A sheet of paper: chosen, filled in at its head, seen as it will be printed, printed.

use yew::prelude::*;

use super::problems::problem_list;
use super::qr_code::qr_code;
use super::sheet_form::{Choices, sheet_form};
use super::title::title;
use crate::calculator::Problems;
use crate::order::{self, reading};
use crate::page::browser;
use crate::page::reducer::use_dispatch;
use crate::page::state::{Desk, Paper, View};
use crate::quantity::Units;
use crate::sheet::{self, Block, Heading, Look, Offered, Prices, Row, Sheet, TICK};

/// What there is to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The sheet of the order, or of a calculator.
    pub view: View,
    /// What stands in its form.
    pub desk: Desk,
    /// The order as it was written in one line.
    pub line: AttrValue,
    /// Which sheet, and what stands at its head.
    pub paper: Paper,
    /// Own prices.
    pub prices: Prices,
    /// The units of everything shown.
    pub units: Units,
    /// The address of the order line or the calculator.
    pub behind: AttrValue,
}

/// What can be printed.
struct Printed {
    offered: Vec<Offered>,
    sheet: Result<Sheet, Problems>,
    reply: Option<String>,
}

/// The choice of a sheet, and the sheet.
#[component]
pub fn SheetView(props: &Props) -> Html {
    let dispatch = use_dispatch();
    let said = use_state(AttrValue::default);
    let Props { view, desk, line, paper, prices, units, behind } = props;
    let date = use_memo((), |()| {
        let now = browser::local_time(&browser::now()).unwrap_or_default();
        now.split(' ').next().unwrap_or_default().to_owned()
    });
    let link = browser::full_address(behind);
    let heading = Heading {
        number: paper.number.clone(),
        name: paper.name.clone(),
        date: (*date).clone(),
        line: if view.is_of_order() { line.trim().to_owned() } else { String::new() },
        link: link.clone(),
        units: *units,
        prices: prices.clone(),
    };
    let back = AttrValue::from(format!("#{behind}"));
    let of = view.behind().title();
    let head = html! {
        <>
            { title(View::Sheet(None).title(), "Chosen and filled in here; what is printed is the paper below and nothing else.", None) }
            <a class="back" href={back}>{ format!("Back to: {of}") }</a>
        </>
    };
    if !desk.is_asked() {
        return html! { <>{ head }<p class="panel">{ "There is nothing to print yet: nothing is filled in." }</p></> };
    }
    let printed = printed(*view, desk, &paper.which, &heading);
    let choices = Choices {
        offered: &printed.offered,
        paper,
        prices: view.is_of_order().then_some(prices),
        reply: printed.reply,
    };
    let body = match &printed.sheet {
        Ok(sheet) => of_sheet(&sheet.clone().on_paper(), &link),
        Err(problems) => problem_list(problems),
    };
    html! {
        <>
            { head }
            { sheet_form(choices, &dispatch, &said) }
            { body }
        </>
    }
}

fn printed(view: View, desk: &Desk, which: &str, heading: &Heading) -> Printed {
    let draft = desk.form.draft();
    match view.calculator() {
        Some(entry) => {
            let offered = sheet::of_calculator(entry);
            let chosen = offered.iter().find(|one| one.key == which).or(offered.first());
            let key = chosen.map_or("", |one| one.key.as_str());
            Printed { sheet: sheet::calculator_sheet(entry, &draft, key, heading), reply: None, offered }
        }
        None => match order::assessed_written(&draft, reading::read(&heading.line).has_open_words()) {
            Ok(assessed) => Printed {
                offered: sheet::of_order(&assessed),
                sheet: sheet::order_sheet(&assessed, which, heading),
                reply: Some(sheet::reply::reply(&assessed, heading)),
            },
            Err(problems) => Printed { offered: Vec::new(), sheet: Err(problems), reply: None },
        },
    }
}

/// The sheet, as it is printed.
fn of_sheet(sheet: &Sheet, link: &str) -> Html {
    let mut blocks = Vec::new();
    let mut rest = sheet.blocks.iter().peekable();
    // What says which order it is stands beside the code.
    let first = rest.next().map(of_block);
    while let Some(block) = rest.next() {
        match rest.next_if(|next| block.look == Look::Half && next.look == Look::Half) {
            Some(other) => {
                blocks.push(html! { <div class="pair">{ of_block(block) }{ of_block(other) }</div> })
            }
            None => blocks.push(of_block(block)),
        }
    }
    let code = qr_code(link);
    html! {
        <article class="sheet" aria-labelledby="sheet-title">
            <div class="top">
                <div><h2 id="sheet-title">{ sheet.title.clone() }</h2>{ first }</div>
                { code }
            </div>
            { for blocks }
        </article>
    }
}

fn of_block(block: &Block) -> Html {
    let (class, run_on) = match block.look {
        Look::Lead => ("lead-block", false),
        Look::Full | Look::Half => ("", false),
        Look::Small => ("small", true),
        Look::Signatures => ("signatures", false),
    };
    html! {
        <section class={class}>
            if !block.title.is_empty() { <h3>{ block.title.clone() }{ if run_on { ". " } else { "" } }</h3> }
            <ul>{ for block.rows.iter().map(row) }</ul>
        </section>
    }
}

/// Letters of what stands at the end of the line of its name.
const SHORT: usize = 34;

fn row(row: &Row) -> Html {
    let Row { name, text, ticked, room: rooms, .. } = row;
    let class = match (name.is_empty(), text.is_empty(), rooms.is_empty()) {
        (false, false, true) if text.chars().count() <= SHORT => "named",
        (_, true, true) => "sub",
        (_, true, false) => "blank",
        _ => "",
    };
    html! {
        <li {class}>
            if *ticked { <i class="box" /> }
            <p>
                if !name.is_empty() { <b>{ name.clone() }</b>{ " " } }
                if !text.is_empty() { <span>{ text.clone() }</span> }
            </p>
            if !rooms.is_empty() { <p class="rooms">{ for rooms.iter().map(|label| room(label)) }</p> }
        </li>
    }
}

/// A box to tick where the label brings one, else a line to write on.
fn room(label: &'static str) -> Html {
    match label.strip_prefix(TICK) {
        Some(label) => html! { <span class="room"><i class="box" />{ label }</span> },
        None => html! { <span class="room">{ label }<i class="line" /></span> },
    }
}
