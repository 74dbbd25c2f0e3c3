//! Something that changed about a day, in words.

use super::View;
use crate::answer::supply::concurrent::{Fact, What};
use crate::trouble::Trouble;

/// What it is, and when or by how much.
pub(super) fn fact_text(view: &View<'_>, fact: &Fact) -> Result<(String, String), Trouble> {
    let words = view.words();
    let date = words.short_date(fact.day);
    let named = match &fact.record {
        Some(id) => view.name_of_id(id)?.unwrap_or_default(),
        None => String::new(),
    };
    Ok(match &fact.what {
        What::NewKit(kind) => (words.with(&format!("beside-{}", kind.name()), &[("name", named.into())]), date),
        What::Noted(what) => (words.say(&format!("choice-what-{what}")), date),
        What::Fever => (words.say("beside-fever"), date),
        What::Emptyings(before, after) => (
            words.say(if after < before { "beside-fewer" } else { "beside-more" }),
            words.with("beside-counts", &[("before", before.get().into()), ("after", after.get().into())]),
        ),
        What::LongestGap(before, after) => (
            words.say(if after > before { "beside-longer-gap" } else { "beside-shorter-gap" }),
            words.with("beside-spans", &[("before", words.span(*before).into()), ("after", words.span(*after).into())]),
        ),
        What::Setting(before, after) => (
            words.say("beside-setting"),
            words.with("beside-counts", &[("before", before.get().into()), ("after", after.get().into())]),
        ),
    })
}
