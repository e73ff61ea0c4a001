//! The pitch of a thread: by its series, by a word, or by a number that stands apart.

use crate::order::reading::items::Line;
use crate::order::reading::what::{What, Written};
use crate::table::asme_b1_1::Series;
use crate::thread::{Designation, Thread};

/// The series that the line names: of two, the first.
pub(super) fn series(line: &Line, strong: &[(usize, Written)]) -> Option<Series> {
    let is_inch = strong.iter().any(|(_, written)| {
        written.thread.is_some_and(|thread| !thread.is_metric()) || !written.text.starts_with('M')
    });
    let named = line.free(|what| match what {
        What::Series(name) => named(name),
        _ => None,
    });
    named.first().map(|(_, series)| *series).filter(|_| is_inch)
}

fn named(name: &str) -> Option<Series> {
    Series::ALL.into_iter().find(|series| series.name() == name)
}

/// A size read in a series.
pub(super) fn in_series(written: &Written, series: Series) -> Written {
    let Some(thread) = written.thread else { return written.clone() };
    let other = thread.of_same_diameter().find(|other| other.series() == Some(series));
    let size = thread.to_string();
    let size = size.rsplit_once('-').map_or(size.as_str(), |(size, _)| size);
    Written {
        text: other.map_or_else(|| format!("{size} {}", series.name()), |thread| thread.to_string()),
        thread: other,
        ..written.clone()
    }
}

/// A pitch that stands apart from its size.
pub(super) fn apart(line: &mut Line, chosen: &mut Option<Written>) {
    let found = line.free(|what| match what {
        What::Pitch(text) => Some(text.clone()),
        _ => None,
    });
    for (at, pitch) in found {
        let Some(thread) = chosen.as_ref().and_then(|chosen| chosen.thread) else {
            line.not(at, "of which thread?");
            continue;
        };
        let size = thread.to_string();
        let with = match thread.is_metric() {
            true => format!("{}x{pitch}", size.split('x').next().unwrap_or_default()),
            false => format!("{}-{pitch}", size.rsplit_once('-').map_or(size.as_str(), |(size, _)| size)),
        };
        let read = Designation::read(&with).ok().map(|read| read.thread);
        let is_pitched = chosen.as_ref().is_some_and(|chosen| chosen.pitched);
        match read {
            Some(read) if read == thread => line.used(at, "thread"),
            Some(read) if !is_pitched => {
                let class = line.draft.get("thread").and_then(|text| Designation::read(text).ok()?.class);
                line.draft.set("thread", Designation { thread: read, class }.to_string());
                line.notes.retain(|(field, _)| *field != "thread");
                line.used(at, "thread");
                *chosen = Some(Written {
                    text: read.to_string(),
                    thread: Some(read),
                    of_size: false,
                    pitched: true,
                    weak: false,
                });
            }
            Some(_) => line.not(at, format!("contradicts the thread {thread}")),
            None => line.not(at, format!("{with} does not exist")),
        }
    }
}

/// What the words coarse and fine, UNC and UNF say of the thread that was chosen.
pub(super) fn use_series(line: &mut Line, chosen: Option<&Written>) {
    let found = line.free(|what| match what {
        What::Series(name) => Some(*name),
        _ => None,
    });
    for (at, name) in found {
        let Some(Written { thread: Some(thread), text, pitched, .. }) = chosen else {
            if chosen.is_some() {
                line.used(at, "thread");
            } else {
                line.not(at, "of which thread?");
            }
            continue;
        };
        let agrees = match thread.series() {
            Some(series) => Some(series) == named(name) || (name == "UN" && thread.is_coarse()),
            None => name == "UNC" && thread.is_coarse() || name != "UNC" && !thread.is_coarse(),
        };
        if agrees {
            line.used(at, "thread");
        } else if thread.is_metric() && !pitched && name == "UNF" {
            fine(line, at, *thread);
        } else {
            line.not(at, format!("contradicts the thread {text}"));
        }
    }
}

/// A fine metric thread whose pitch is not said.
fn fine(line: &mut Line, at: usize, coarse: Thread) {
    let fine: Vec<Thread> = coarse.of_same_diameter().filter(|thread| !thread.is_coarse()).collect();
    if let [only] = fine.as_slice() {
        let class = line
            .draft
            .get("thread")
            .and_then(|text| text.split_once('-').map(|(_, class)| format!("-{class}")));
        line.draft.set("thread", format!("{only}{}", class.unwrap_or_default()));
        line.note("thread", "the one fine pitch of this size");
        line.used(at, "thread");
    } else {
        let names: Vec<String> = fine.iter().map(ToString::to_string).collect();
        line.not(at, format!("which pitch: {}?", names.join(", ")));
    }
}
