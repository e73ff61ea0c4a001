//! Exercises to be done: what is given, an answer each, its mark, a hint, then the working.

use std::rc::Rc;

use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;
use yew::platform::spawn_local;
use yew::prelude::*;

use super::control::option;
use super::formula::formula;
use super::step::{fold, sum};
use crate::calculator::{Address, Draft, Link};
use crate::course::{Exercise, Marked, Question, Sheet, Sought, handed_in, mark};
use crate::order::saved::Store;
use crate::page::browser::{self, Device};

/// What the exercises need to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The exercises: of a sheet, or the one at the end of a lesson.
    pub exercises: Rc<Vec<Exercise>>,
    /// The sheet that is handed in, if it is one.
    pub sheet: Option<Rc<Sheet>>,
}

/// Exercises, and the line to be handed in. The name and the answers are kept on this device.
#[component]
pub fn Exercises(props: &Props) -> Html {
    let kept = props.sheet.as_ref().map(|sheet| format!("kettle-and-barrel course {}", sheet.title()));
    // The name, then the answers, one a line.
    let written = use_state(|| {
        let text = kept.as_ref().and_then(|name| Device.text(name).ok().flatten()).unwrap_or_default();
        text.split('\n').map(str::to_owned).collect::<Vec<_>>()
    });
    let write = {
        let written = written.clone();
        Callback::from(move |(place, text): (usize, String)| {
            let mut all = (*written).clone();
            all.resize(all.len().max(place + 1), String::new());
            if let Some(line) = all.get_mut(place) {
                *line = text.replace('\n', " ");
            }
            if let Some(name) = &kept {
                // A device that keeps nothing forgets with the page.
                let _ = Device.put(name, &all.join("\n"));
            }
            written.set(all);
        })
    };
    let line = |place: usize| written.get(place).map_or("", String::as_str);
    let mut number = 0;
    let mut items = Vec::with_capacity(props.exercises.len());
    for (place, exercise) in props.exercises.iter().enumerate() {
        let mut asked = Vec::new();
        for each in &exercise.questions {
            number += 1;
            asked.push(question(number, each, line(number), exercise.opens.as_ref(), &write));
        }
        items.push(html! {
            <li class="panel exercise">
                <h2>{ format!("{}. {}", place + 1, exercise.topic.title()) }</h2>
                { task(exercise) }
                { for asked }
            </li>
        });
    }
    let answers = (1..=number).map(line);
    let handed_in = props.sheet.as_ref().map(|sheet| {
        let line = handed_in::line(sheet, written.first().map_or("", String::as_str), answers.clone());
        hand_in(line, sheet.score(answers), number, written.first().cloned().unwrap_or_default(), &write)
    });
    html! { <><ol class="exercises">{ for items }</ol>{ for handed_in }</> }
}

/// What happens, and what is given.
pub fn task(exercise: &Exercise) -> Html {
    let given = |(name, value): &(String, String)| {
        html! {
            <li class="plain">
                <span class="name">{ name.clone() }</span><span class="value">{ value.clone() }</span>
            </li>
        }
    };
    let shown = exercise
        .shown
        .iter()
        .map(|step| html! { <li>{ Exercise::said_of(step).into_owned() }{ sum(step) }</li> });
    let line =
        |(name, text): &(String, String)| html! { <li><b>{ name.clone() }</b>{ ": " }{ text.clone() }</li> };
    html! {
        <>
            <p>{ exercise.scene.clone() }</p>
            <ul class="figures small">{ for exercise.givens.iter().map(given) }</ul>
            if !exercise.paper.is_empty() { <ol class="paper">{ for exercise.paper.iter().map(line) }</ol> }
            if !exercise.shown.is_empty() {
                <div class="scroll" tabindex="0" role="group" aria-label="Its steps">
                    <ol class="shown">{ for shown }</ol>
                </div>
            }
        </>
    }
}

/// The right answer and how it comes about.
pub fn solution(question: &Question, opens: Option<&Link>) -> Html {
    let opens = opens.map(|link| {
        let address = Address::new(link.calculator, Draft::from(link));
        html! { <p><a href={format!("#{address}")}>{ "The calculator with these numbers" }</a></p> }
    });
    html! {
        <div class="working">
            <p><b>{ question.right() }</b>{ ". " }{ question.because.clone() }</p>
            <ul>{ for question.working.iter().map(fold) }</ul>
            { for opens }
        </div>
    }
}

fn question(
    number: usize,
    question: &Question,
    answer: &str,
    opens: Option<&Link>,
    write: &Callback<(usize, String)>,
) -> Html {
    let id = format!("answer-{number}");
    let take = write.reform(move |event: Event| {
        // A line and a select both have a value.
        let value = event.target().map(|target| target.unchecked_into::<HtmlInputElement>().value());
        (number, value.unwrap_or_default())
    });
    let control = match &question.sought {
        Sought::Figure(..) => html! {
            <input
                type="text" id={id.clone()} value={answer.to_owned()} onchange={take}
                autocomplete="off" autocapitalize="off" spellcheck="false"
            />
        },
        Sought::OneOf(options, _) => {
            let offered = options.iter().enumerate().map(|(place, text)| {
                let number = (place + 1).to_string();
                let chosen = number == answer;
                let text = format!("{number}. {text}");
                html! { <option value={number} selected={chosen}>{ text }</option> }
            });
            html! {
                <select id={id.clone()} onchange={take}>
                    { option("".into(), "Choose", answer.is_empty()) }
                    { for offered }
                </select>
            }
        }
    };
    let marked = mark(question, answer);
    let options: &[String] = match &question.sought {
        Sought::Figure(..) => &[],
        Sought::OneOf(options, _) => options,
    };
    let hint = question.hint_segments();
    html! {
        <div class="question">
            <div class="field">
                <label for={id}>{ question.text.clone() }</label>
                <div class="control">{ control }</div>
            </div>
            // On paper nobody can open the list.
            <ol class="print-only">{ for options.iter().map(|option| html! { <li>{ option.clone() }</li> }) }</ol>
            <p role="status" class={classes!("mark", (marked == Marked::Right).then_some("right"))}>
                if marked != Marked::Open { { format!("{}{marked}", sign(&marked)) } }
            </p>
            <details>
                <summary>{ "Hint" }</summary>
                <p>
                    if let Some((symbol, segments)) = hint {
                        { formula(&format!("{symbol} ="), &segments) }
                    } else {
                        { question.hint.clone() }
                    }
                </p>
            </details>
            // The working comes after an attempt.
            if marked != Marked::Open {
                <details>
                    <summary>{ "Working" }</summary>
                    { solution(question, opens) }
                </details>
            }
        </div>
    }
}

/// Said twice: by a sign and in words.
fn sign(marked: &Marked) -> &'static str {
    match marked {
        Marked::Right => "✓ ",
        Marked::BadlyRounded => "≈ ",
        _ => "✗ ",
    }
}

fn hand_in(line: String, score: usize, of: usize, name: String, write: &Callback<(usize, String)>) -> Html {
    let take = write.reform(|event: Event| {
        let value = event.target().map(|target| target.unchecked_into::<HtmlInputElement>().value());
        (0, value.unwrap_or_default())
    });
    let copy = {
        let line = line.clone();
        move |_: MouseEvent| {
            let line = line.clone();
            spawn_local(async move {
                browser::copy(&line).await;
            });
        }
    };
    html! {
        <section class="panel hand-in">
            <h2>{ format!("{score} of {of} right") }</h2>
            <div class="field">
                <label for="student">{ "Your name, as the line shall say it" }</label>
                <div class="control"><input type="text" id="student" value={name} maxlength="60" onchange={take} /></div>
            </div>
            <p>{ "Hand in this line. Its last word finds a change; it is no secret." }</p>
            <p class="line"><code>{ line }</code></p>
            <div class="tools"><button type="button" onclick={copy}>{ "Copy the line" }</button></div>
        </section>
    }
}
