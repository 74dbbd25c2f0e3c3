//! Temperature and signs as they were written down within the span. What is urgent and the
//! extremes of temperature are always told; of the rest, that they are there.

use super::section::{of_rows, row};
use super::span::Stretch;
use crate::answer::caution::BodySign;
use crate::guidance::{CautionSource, Urgency};
use crate::quantity::{Quantity, Temperature};
use crate::record::{Fields, Kind};
use crate::screen::shapes::{SheetRow, SheetSection};
use crate::screen::{signs_text, View};
use crate::share::parts::{LeftOut, SharePart};
use crate::time::{LocalDay, Moment};
use crate::trouble::Trouble;

/// Entries that are told one by one beside those that are always told.
const TOLD: usize = 6;

/// An entry, with what it is told for.
struct Entry {
    fields: Fields,
    sign: BodySign,
    at: Moment,
}

impl Entry {
    /// Whether it names a sign that by itself asks for more than the consultant.
    fn is_urgent(&self) -> bool {
        let urgent = |source: &CautionSource| source.urgency < Urgency::Consultant;
        self.sign.there.iter().any(|(key, _)| {
            CautionSource::all().iter().any(|source| source.any_sign && source.is_about(key) && urgent(source))
        })
    }
}

pub(super) fn render(view: &View<'_>, span: Stretch, left_out: &LeftOut) -> Result<Option<SheetSection>, Trouble> {
    let since = span.from.begins(view.zone, view.settings.day_start);
    let mut entries: Vec<Entry> = view
        .journal
        .fields_of_kind(Kind::Sign)?
        .into_iter()
        .filter_map(|(_, fields)| {
            let (sign, at) = (BodySign::read(&fields)?, crate::record::moment(&fields, "at")?);
            (sign.at >= since && sign.at <= view.now).then_some(Entry { fields, sign, at })
        })
        .collect();
    entries.sort_by_key(|entry| entry.sign.at);
    let notes = !left_out.has(SharePart::Notes);
    let chosen = chosen(&entries);
    let mut rows = Vec::new();
    let mut rest: Vec<&Entry> = Vec::new();
    for (entry, told) in entries.iter().zip(chosen) {
        if told {
            rows.extend(one(view, entry, notes)?);
        } else {
            rest.push(entry);
        }
    }
    rows.extend(and_more(view, &rest)?);
    Ok(of_rows(view, "signs", rows))
}

/// Which entries are told one by one: what is urgent, the highest and the lowest
/// temperature, and of the rest the latest.
fn chosen(entries: &[Entry]) -> Vec<bool> {
    let temperature = |entry: &Entry| entry.sign.temperature.map(Temperature::canonical);
    let measured = || entries.iter().enumerate().filter_map(|(at, e)| Some((at, temperature(e)?)));
    let highest = measured().max_by(|a, b| a.1.total_cmp(&b.1)).map(|(at, _)| at);
    let lowest = measured().min_by(|a, b| a.1.total_cmp(&b.1)).map(|(at, _)| at);
    let mut told: Vec<bool> =
        entries.iter().enumerate().map(|(at, e)| e.is_urgent() || Some(at) == highest || Some(at) == lowest).collect();
    let mut room = TOLD;
    for told in told.iter_mut().rev().filter(|told| !**told) {
        if room == 0 {
            break;
        }
        room -= 1;
        *told = true;
    }
    told
}

fn one(view: &View<'_>, entry: &Entry, notes: bool) -> Result<Option<SheetRow>, Trouble> {
    let words = view.words();
    let day = words.date(LocalDay::of(&entry.at, view.settings.day_start));
    let label = words.with("sheet-at", &[("date", day.into()), ("time", words.clock(&entry.at).into())]);
    let temperature = signs_text::temperature(view, &entry.fields);
    let signs = signs_text::of(view, &entry.fields)?.lines(view, notes).join("\n");
    Ok((!temperature.is_empty() || !signs.is_empty()).then(|| row(label, temperature, signs)))
}

/// Those that are not told one by one: how many, and everything that is in them.
fn and_more(view: &View<'_>, rest: &[&Entry]) -> Result<Option<SheetRow>, Trouble> {
    if rest.is_empty() {
        return Ok(None);
    }
    let words = view.words();
    let mut temperatures: Vec<&Entry> = rest.iter().copied().filter(|entry| entry.sign.temperature.is_some()).collect();
    temperatures.sort_by(|a, b| {
        let of = |entry: &Entry| entry.sign.temperature.map_or(0.0, Temperature::canonical);
        of(a).total_cmp(&of(b))
    });
    let said = |entry: &Entry| signs_text::temperature(view, &entry.fields);
    let value = match (temperatures.first(), temperatures.last()) {
        (Some(low), Some(high)) if said(low) != said(high) => {
            words.with("sheet-from-to", &[("low", said(low).into()), ("high", said(high).into())])
        }
        (Some(one), _) => said(one),
        _ => String::new(),
    };
    let mut counts: Vec<(String, i64)> = Vec::new();
    for entry in rest {
        for (key, _) in &entry.sign.there {
            let name = signs_text::name(view, key);
            match counts.iter_mut().find(|(known, _)| *known == name) {
                Some((_, count)) => *count += 1,
                None => counts.push((name, 1)),
            }
        }
    }
    let signs = counts
        .into_iter()
        .map(|(name, count)| words.with("sheet-sign-times", &[("sign", name.into()), ("count", count.into())]));
    let label = words.with("sheet-and-more", &[("count", (rest.len() as i64).into())]);
    Ok(Some(row(label, value, signs.collect::<Vec<_>>().join(", "))))
}
