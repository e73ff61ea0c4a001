//! What of an answer one would rather look at: the coated thread in its nut, and the life by place.

use super::OrderLine;
use super::judge::{Judged, Judgement};
use super::threads::bolt_class;
use crate::calculator::Picture;
use crate::calculator::service_life::by_category;
use crate::coat::Process;
use crate::quantity::letters::lower;
use crate::site::Category;
use crate::thread::fit::corners;
use crate::thread::pair::{self, INSIDE_SHARE};

/// The pictures of the process to take; none where all are ruled out.
pub fn of(line: &OrderLine, judgement: &Judgement, take: Option<Process>) -> Vec<Picture> {
    let taken = |judged: &&Judged| Some(judged.process) == take;
    let Some(judged) = judgement.processes.iter().find(taken) else { return Vec::new() };
    thread(line, judgement, judged).into_iter().chain(life(line, judged)).collect()
}

fn thread(line: &OrderLine, judgement: &Judgement, judged: &Judged) -> Option<Picture> {
    let (mated, offer) = (judged.fit.as_ref()?.pair_to_order()?, judged.offer.as_ref()?);
    let (thread, class) = (line.thread?, bolt_class(line)?);
    let coat = pair::coat(judged.process, (thread, line.length), (offer.min, offer.max), INSIDE_SHARE.value);
    let [worst, nominal, _] = corners(mated.pair.bolt, coat, mated.pair.nut);
    let room = crate::rule::fit::room_in_words(&judgement.case(judged, 0)?, mated.pair.room);
    let title =
        format!("The thread of {thread} {class} under its coat, {}: {room}.", lower(judged.process.name()));
    Some(Picture::thread_fit(title, thread.pitch(), &[worst, nominal]))
}

fn life(line: &OrderLine, judged: &Judged) -> Option<Picture> {
    let offer = judged.offer.as_ref()?;
    let title =
        format!("Years of the coat by category, {}, counted by ISO 14713-1.", lower(judged.process.name()));
    let may_be = |category: Category| {
        line.place.is_some_and(|place| place.each().any(|one| one == category)).then(|| category.rates())
    };
    Some(by_category(title, (offer.min, offer.max), may_be, line.years))
}
