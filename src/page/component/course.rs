//! The course: lessons, a sheet of exercises, its answers, and the lines of a class.

use std::rc::Rc;

use yew::prelude::*;

use super::exercise::{Exercises, solution, task};
use super::field::FieldRow;
use super::lesson::lesson;
use super::qr_code::qr_code;
use super::title::title;
use super::typed::typed;
use crate::calculator::{Address, Fault, FieldAbout, Filled};
use crate::course::handed_in::{self, HandedIn};
use crate::course::lesson::{LESSONS, Lesson, lesson_of};
use crate::course::{self, ABOUT, Room, SHEET_FIELDS, Sheet};
use crate::page::browser;
use crate::page::state::Desk;
use crate::quantity::Units;

/// What the course needs to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What of it is open, and what fixes its sheet.
    pub desk: Desk,
    /// The units of what lessons say.
    pub units: Units,
}

/// The course.
#[component]
pub fn Course(props: &Props) -> Html {
    let draft = props.desk.form.draft();
    let setup = course::read(&draft);
    let sheet = use_memo(setup.clone(), |setup| setup.as_ref().ok().map(|setup| Rc::new(Sheet::of(setup))));
    let lines = use_state(AttrValue::default);
    let at = |pairs: &[(&str, &str)]| {
        let mut draft = props.desk.form.to_keep();
        draft.set("lesson", "");
        pairs.iter().for_each(|(key, text)| draft.set(key, *text));
        format!("#{}", Address::new(ABOUT.id, draft))
    };
    let room = draft.get("room").and_then(Room::from_key).unwrap_or(Room::Lessons);
    let read = draft.get("lesson").and_then(lesson_of).filter(|_| room == Room::Lessons);
    let door = |other: &Room| {
        let here = (*other == room).then_some("page");
        html! { <li><a href={at(&[("room", other.key())])} aria-current={here}>{ other.label() }</a></li> }
    };
    let content = match (room, &*sheet) {
        (Room::Lessons, _) => match read {
            Some(one) => lesson(one, props.units),
            None => {
                let card = |lesson: &Lesson| {
                    html! {
                        <li class="panel card">
                            <h2><a href={at(&[("room", "lessons"), ("lesson", lesson.key)])}>{ lesson.title() }</a></h2>
                        </li>
                    }
                };
                html! { <ul class="cards">{ for LESSONS.iter().map(card) }</ul> }
            }
        },
        (Room::HandedIn, _) => class(&lines),
        (_, Some(sheet)) if room == Room::Sheet => html! {
            <>
                { set_up(props, None) }
                <Exercises key={sheet.title()} exercises={Rc::new(sheet.exercises.clone())} sheet={Rc::clone(sheet)} />
            </>
        },
        (_, Some(sheet)) => html! {
            <>
                { set_up(props, Some(browser::full_address(at(&[("room", "sheet")]).trim_start_matches('#')))) }
                { answers(sheet) }
            </>
        },
        (_, None) => set_up(props, None),
    };
    let (name, lead) = match read {
        Some(lesson) => (lesson.title(), ""),
        None => (ABOUT.title, ABOUT.answers),
    };
    html! {
        <div class="course">
            { title(name, lead, None) }
            <nav class="rooms" aria-label="Course"><ul>{ for Room::ALL.iter().map(door) }</ul></nav>
            { content }
        </div>
    }
}

/// What fixes the sheet, and for the lecturer the link to give out.
fn set_up(props: &Props, link: Option<String>) -> Html {
    let problems = course::read(&props.desk.form.draft()).err();
    let problem = |name: &str| {
        let problem = problems.as_ref()?.of(name)?;
        (problem.fault != Fault::Missing).then(|| AttrValue::from(problem.fault.to_string()))
    };
    let row = |(field, entry): (&'static FieldAbout, &Filled)| {
        html! {
            <FieldRow key={field.key} {field} entry={entry.clone()} problem={problem(field.key)} per_article={None} />
        }
    };
    let asked =
        props.desk.form.entries().filter(|(field, _)| SHEET_FIELDS.iter().any(|of| of.key == field.key));
    let open = problems.is_some() || link.is_some();
    html! {
        <details class="panel set-up" {open}>
            <summary>{ "What fixes the sheet" }</summary>
            <div class="fields form">{ for asked.map(row) }</div>
            if let Some(link) = link {
                <p>{ "To give out: " }<a href={link.clone()}>{ link.clone() }</a></p>
                { qr_code(&link) }
                <div class="tools"><button type="button" onclick={|_| browser::print()}>{ "Print" }</button></div>
            }
        </details>
    }
}

/// The answers with their workings.
fn answers(sheet: &Sheet) -> Html {
    let mut number = 0;
    let items = sheet.exercises.iter().enumerate().map(|(place, exercise)| {
        let asked: Vec<Html> = exercise
            .questions
            .iter()
            .map(|question| {
                number += 1;
                html! {
                    <div class="question">
                        <p>{ format!("{number}. {}", question.text) }</p>
                        { solution(question, exercise.opens.as_ref()) }
                    </div>
                }
            })
            .collect();
        html! {
            <li class="panel exercise">
                <h2>{ format!("{}. {}", place + 1, exercise.topic.title()) }</h2>
                { task(exercise) }
                { for asked }
            </li>
        }
    });
    html! { <ol class="exercises">{ for items }</ol> }
}

/// The lines of a class, marked anew.
fn class(lines: &UseStateHandle<AttrValue>) -> Html {
    let write = {
        let lines = lines.clone();
        move |event: InputEvent| lines.set(typed(&event).into())
    };
    let row = |line: &HandedIn| {
        let marked = line.score.map_or_else(|| "–".to_owned(), |(right, of)| format!("{right}/{of}"));
        let cells = [
            line.name.clone(),
            line.sheet.clone(),
            line.stated.clone(),
            marked,
            line.state.words().to_owned(),
        ];
        html! { <tr>{ for cells.into_iter().map(|cell| html! { <td>{ cell }</td> }) }</tr> }
    };
    let read = handed_in::read(lines);
    html! {
        <section class="panel">
            <div class="field wide">
                <label for="lines">{ "Result lines, one a student" }</label>
                <div class="control">
                    <textarea id="lines" rows="6" value={(**lines).clone()} spellcheck="false" oninput={write} />
                </div>
            </div>
            if !read.is_empty() {
                <div class="scroll" tabindex="0" role="region" aria-label="The class">
                    <table>
                        <thead><tr>
                            { for ["Name", "Sheet", "Stated", "Marked anew", "Line"].map(|name| html! { <th scope="col">{ name }</th> }) }
                        </tr></thead>
                        <tbody>{ for read.iter().map(row) }</tbody>
                    </table>
                </div>
            }
        </section>
    }
}
