//! What was observed, and how complete it is: the figures behind say the same.

use super::section::{of_rows, row, section};
use super::span::Stretch;
use crate::gather::supply::SupplyInputs;
use crate::screen::shapes::SheetSection;
use crate::screen::View;
use crate::trouble::Trouble;

pub(super) fn render(view: &View<'_>, span: Stretch, look: &SupplyInputs) -> Result<Option<SheetSection>, Trouble> {
    let words = view.words();
    if look.is_empty() {
        return Ok(None);
    }
    let rests = look.series.rests_on;
    let (mut sessions, mut known, mut unknown) = (0, 0, 0);
    let first = view.today().earlier_by(span.days);
    for back in 0..span.days {
        let Some(day) = crate::time::LocalDay::from_number(first.number() + back as i32) else { continue };
        let rollup = view.journal.rollup(day)?;
        sessions += rollup.sessions.get();
        known += rollup.known_count().get();
        unknown += rollup.left.unknown.get() + rollup.right.unknown.get() + rollup.together.unknown.get();
    }
    if sessions == 0 && rests.observed.per_cent() == 0 {
        let lines = vec![words.say("sheet-nothing")];
        return Ok(Some(SheetSection { lines, ..section(view, "observed") }));
    }
    let days = words.with("sheet-of", &[("some", rests.complete.get().into()), ("all", rests.days.get().into())]);
    let amounts = words.with("sheet-of", &[("some", unknown.into()), ("all", (known + unknown).into())]);
    let per_cent = |share: crate::quantity::Share| words.with("chance", &[("percent", share.per_cent().into())]);
    let mut rows = vec![
        row(words.say("sheet-days-complete"), days, ""),
        row(words.say("sheet-observed"), per_cent(rests.observed), ""),
        row(words.say("sheet-sessions"), sessions.to_string(), ""),
    ];
    if known + unknown > 0 {
        rows.push(row(words.say("sheet-amounts-unknown"), amounts, ""));
    }
    rows.push(row(words.say("sheet-doubtful"), per_cent(rests.doubtful), ""));
    Ok(of_rows(view, "observed", rows))
}
