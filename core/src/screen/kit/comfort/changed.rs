//! Changes that were no trial: before and after, marked as weaker, with what else changed then.

use super::super::pump_words::section;
use super::milk::percent;
use super::trial_text::apart_figure;
use crate::gather::changed::Changed;
use crate::gather::comfort::ComfortInputs;
use crate::record::Kind;
use crate::screen::shapes::{ListRow, Section};
use crate::screen::View;
use crate::trouble::Trouble;

/// Changes that are shown, the latest.
const SHOWN: usize = 3;

/// None where nothing changed, or too little is known of before or after.
pub(super) fn section_of(view: &View<'_>, inputs: &ComfortInputs) -> Result<Option<Section>, Trouble> {
    let shown = inputs.changed.iter().take(SHOWN);
    let rows = shown.map(|changed| row(view, changed)).collect::<Result<Vec<_>, _>>()?;
    if rows.is_empty() {
        return Ok(None);
    }
    let lines = vec![view.words().say("changed-weaker")];
    Ok(Some(Section { lines, rows, ..section(view, "comfort-changed") }))
}

fn row(view: &View<'_>, changed: &Changed) -> Result<ListRow, Trouble> {
    let words = view.words();
    let names = |of: &[(Kind, String)]| -> Result<String, Trouble> {
        let mut names: Vec<String> = Vec::new();
        for (_, id) in of {
            let name = view.name_of_id(id)?.filter(|name| !names.contains(name));
            names.extend(name);
        }
        Ok(names.join(", "))
    };
    let needs = [("names", names(&changed.what)?.into()), ("date", words.short_date(changed.on).into())];
    let title = words.with("changed-on", &needs);
    let [share, low, high] = changed.milk.share.map(percent);
    let mut said = vec![words.with(
        "changed-milk",
        &[
            ("by", apart_figure(view, &changed.milk.apart).into()),
            ("share", share.into()),
            ("low", low.into()),
            ("high", high.into()),
            ("before", changed.milk.before.get().into()),
            ("after", changed.milk.after.get().into()),
        ],
    )];
    said.push(match changed.beside.is_empty() {
        true => words.say("changed-beside-none"),
        false => words.with("changed-beside", &[("names", names(&changed.beside)?.into())]),
    });
    Ok(view.text_row(title, said.join(" ")))
}
