//! Changes that were no trial: before and after, marked as weaker, with what else changed then.

use super::super::pump_words::section;
use super::milk::percent;
use super::trial_text::{self, apart_figure};
use crate::answer::trial::{BeforeAfter, Outcome};
use crate::gather::changed::Changed;
use crate::gather::comfort::ComfortInputs;
use crate::screen::concurrent_text::fact_text;
use crate::screen::shapes::{ListRow, Section};
use crate::screen::View;
use crate::trouble::Trouble;

/// None where nothing changed, or too little is known of before or after.
pub(super) fn section_of(view: &View<'_>, inputs: &ComfortInputs) -> Result<Option<Section>, Trouble> {
    let rows = inputs.changed.iter().map(|changed| rows_of(view, changed)).collect::<Result<Vec<_>, _>>()?.concat();
    if rows.is_empty() {
        return Ok(None);
    }
    let lines = vec![view.words().say("changed-weaker")];
    Ok(Some(Section { lines, rows, ..section(view, "comfort-changed") }))
}

/// The change with what else changed then, and each measure beneath it.
fn rows_of(view: &View<'_>, changed: &Changed) -> Result<Vec<ListRow>, Trouble> {
    let words = view.words();
    let mut names: Vec<String> = Vec::new();
    for (_, id) in &changed.what {
        let name = view.name_of_id(id)?.filter(|name| !names.contains(name));
        names.extend(name);
    }
    let needs = [("names", names.join(", ").into()), ("date", words.short_date(changed.on).into())];
    let facts = changed.beside.iter().map(|fact| {
        let (what, detail) = fact_text(view, fact)?;
        Ok(words.with("changed-beside-fact", &[("what", what.into()), ("detail", detail.into())]))
    });
    let facts: Vec<String> = facts.collect::<Result<_, Trouble>>()?;
    let beside = match facts.is_empty() {
        true => words.say("changed-beside-none"),
        false => words.with("changed-beside", &[("names", facts.join(", ").into())]),
    };
    let mut rows = vec![view.text_row(words.with("changed-on", &needs), beside)];
    rows.extend(changed.measures.iter().map(|(outcome, found)| measure(view, *outcome, found)));
    Ok(rows)
}

/// One measure: after less before, with its range.
fn measure(view: &View<'_>, outcome: Outcome, found: &BeforeAfter) -> ListRow {
    let words = view.words();
    let [share, share_low, share_high] = found.share.map(percent);
    let [low, high] = trial_text::ends(view, &found.apart);
    let (key, by) = match outcome {
        Outcome::Amount => ("changed-amount", "changed-amount-by"),
        Outcome::Pain => ("changed-pain", "changed-pain-by"),
        Outcome::Letdown | Outcome::TimeToMost => ("changed-letdown", "changed-letdown-by"),
    };
    let (low, high) = match outcome {
        Outcome::Amount => (share_low, share_high),
        Outcome::Pain | Outcome::Letdown | Outcome::TimeToMost => (low, high),
    };
    let said = words.with(
        by,
        &[
            ("by", apart_figure(view, &found.apart).into()),
            ("share", share.into()),
            ("low", low.into()),
            ("high", high.into()),
            ("before", found.before.get().into()),
            ("after", found.after.get().into()),
        ],
    );
    view.text_row(words.say(key), said)
}
