//! Since when, and what else changed then.

use crate::answer::supply::concurrent::{compared, from_days, window, Fact, TwoSides, What};
use crate::answer::supply::since::Change;
use crate::gather::supply::SupplyInputs;
use crate::quantity::{Entered, Production, Quantity, Temperature};
use crate::record::{text, Kind};
use crate::screen::shapes::{ChangeNote, Event, ListRow, Place};
use crate::screen::View;
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// No more changes than this are told in words; the picture has them all.
const TOLD: usize = 3;
/// No more than this is listed beside one.
const BESIDE: usize = 8;

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
    let mut facts = recorded(view, look, change)?;
    facts.extend(from_days(change, &look.days));
    // Where a range of dates is long, what lies nearest to the day goes before.
    facts.sort_by_key(|fact| fact.day.days_since(change.on).abs());
    facts.truncate(BESIDE);
    facts.sort_by_key(|fact| fact.day);
    facts.into_iter().map(|fact| row(view, fact)).collect()
}

/// What was written down within the range of dates.
fn recorded(view: &View<'_>, look: &SupplyInputs, change: &Change) -> Result<Vec<Fact>, Trouble> {
    let (from, to) = window(change);
    let mut facts = Vec::new();
    for kind in [Kind::Pump, Kind::Part, Kind::Flange] {
        for row in view.journal.of_kind(kind)? {
            let (_, fields) = view.record(&row.subject)?;
            let since =
                text(&fields, "in_use_since").and_then(|d| chrono::NaiveDate::parse_from_str(d, "%Y-%m-%d").ok());
            let day = since.map(LocalDay::on).filter(|day| (from..=to).contains(day));
            facts.extend(day.map(|day| Fact { day, what: What::NewKit(kind), record: Some(row.subject.clone()) }));
        }
    }
    let mut day = from;
    while day <= to {
        for row in view.journal.of_day(day)?.into_iter().filter(|row| !row.taken_out) {
            let record = Some(row.subject.clone());
            match row.kind {
                Kind::LifeEvent => {
                    let what = text(&view.record(&row.subject)?.1, "what").unwrap_or("other").to_owned();
                    facts.push(Fact { day, what: What::Noted(what), record });
                }
                Kind::Sign => {
                    let (_, fields) = view.record(&row.subject)?;
                    let measured = fields.get("temperature").and_then(Entered::<Temperature>::from_json);
                    if measured.is_some_and(|t| t.quantity() >= look.rules.fever) {
                        facts.push(Fact { day, what: What::Fever, record });
                    }
                }
                _ => {}
            }
        }
        let Some(next) = LocalDay::from_number(day.number() + 1) else { break };
        day = next;
    }
    facts.extend(setting(view, change)?);
    Ok(facts)
}

fn level_of(view: &View<'_>, session: &str) -> Result<Option<f64>, Trouble> {
    let (_, fields) = view.record(session)?;
    let typed = crate::record::whole_number(&fields, "level_expression").map(f64::from);
    let session = crate::record::Session::read(session, &fields);
    let marked = session.ended.as_ref().and_then(|end| session.used_at(end.instant()).level);
    Ok(typed.or(marked.map(|l| f64::from(l.get()))))
}

/// Another usual level on the dial before and after, by the middle of each day's sessions.
fn setting(view: &View<'_>, change: &Change) -> Result<Option<Fact>, Trouble> {
    use crate::quantity::Count;
    let (mut day, last) = compared(change);
    let mut levels = TwoSides::default();
    while day <= last {
        let mut of_day = Vec::new();
        for row in view.journal.of_day(day)?.into_iter().filter(|row| !row.taken_out && row.kind == Kind::Session) {
            of_day.extend(level_of(view, &row.subject)?);
        }
        if let Some(middle) = crate::statistics::median(&of_day) {
            levels.take(change, day, middle);
        }
        let Some(next) = LocalDay::from_number(day.number() + 1) else { break };
        day = next;
    }
    let differ = levels.differ_by(1.0).map(|(before, after)| (before.round() as u32, after.round() as u32));
    Ok(differ.filter(|(before, after)| before != after).map(|(before, after)| Fact {
        day: change.on,
        what: What::Setting(Count::new(before), Count::new(after)),
        record: None,
    }))
}

fn row(view: &View<'_>, fact: Fact) -> Result<ListRow, Trouble> {
    let words = view.words();
    let date = words.short_date(fact.day);
    let named = match &fact.record {
        Some(id) => view.name_of_id(id)?.unwrap_or_default(),
        None => String::new(),
    };
    let (title, detail) = match &fact.what {
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
    };
    let told = view.text_row(title, detail);
    Ok(match fact.record {
        Some(id) => told.opens(format!("open-{id}"), Event::Go { place: Place::Entry { id } }),
        None => told,
    })
}
