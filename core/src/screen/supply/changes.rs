//! Since when, and what else changed then.

use crate::answer::supply::concurrent::Fact;
use crate::answer::supply::since::Change;
use crate::gather::concurrent::facts;
use crate::gather::supply::SupplyInputs;
use crate::quantity::{Production, Quantity};
use crate::screen::concurrent_text::fact_text;
use crate::screen::shapes::{ChangeNote, Event, ListRow, Place};
use crate::screen::View;
use crate::trouble::Trouble;

/// No more changes than this are told in words; the picture has them all.
const TOLD: usize = 3;

pub(in crate::screen) fn notes(view: &View<'_>, look: &SupplyInputs) -> Result<Vec<ChangeNote>, Trouble> {
    look.changes.iter().rev().take(TOLD).map(|change| note(view, look, change)).collect()
}

fn note(view: &View<'_>, look: &SupplyInputs, change: &Change) -> Result<ChangeNote, Trouble> {
    let words = view.words();
    let up = change.size.value.canonical() >= 0.0;
    let size = |p: Production| Production::from_canonical(p.canonical().abs());
    let (near, far) = if up { (change.size.low, change.size.high) } else { (change.size.high, change.size.low) };
    // A range may reach beyond nothing: its near end is then none.
    let near = Production::from_canonical(if (near.canonical() >= 0.0) == up { near.canonical() } else { 0.0 });
    let title = words.with(
        if up { "supply-change-more" } else { "supply-change-less" },
        &[("size", words.production(size(change.size.value)).into()), ("date", words.short_date(change.on).into())],
    );
    let when = if change.earliest == change.latest {
        String::new()
    } else {
        words.with(
            "supply-change-between",
            &[("from", words.short_date(change.earliest).into()), ("to", words.short_date(change.latest).into())],
        )
    };
    let detail = words.with(
        "supply-change-detail",
        &[
            ("least", words.low().production_figure(size(near)).into()),
            ("most", words.high().production(size(far)).into()),
            ("when", when.into()),
        ],
    );
    let detail = detail.trim().to_owned();
    let beside = concurrent_rows(view, look, change)?;
    let label = words.say(if beside.is_empty() { "supply-beside-none" } else { "supply-beside" });
    let spoken = std::iter::once(format!("{title}. {detail} {label}"))
        .chain(beside.iter().map(|row| row.spoken.clone()))
        .collect::<Vec<_>>()
        .join(" ");
    Ok(ChangeNote { key: format!("change-{}", change.on.date()), title, detail, beside_label: label, beside, spoken })
}

fn concurrent_rows(view: &View<'_>, look: &SupplyInputs, change: &Change) -> Result<Vec<ListRow>, Trouble> {
    let facts = facts(view, &change.into(), &look.days, look.rules.fever)?;
    facts.into_iter().map(|fact| row(view, fact)).collect()
}

fn row(view: &View<'_>, fact: Fact) -> Result<ListRow, Trouble> {
    let (title, detail) = fact_text(view, &fact)?;
    let told = view.text_row(title, detail);
    Ok(match fact.record {
        Some(id) => told.opens(format!("open-{id}"), Event::Go { place: Place::Entry { id } }),
        None => told,
    })
}
