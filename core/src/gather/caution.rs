//! Everything that cautions rest on, read from the record.

use super::{kit, supply, Record};
use crate::answer::caution::{
    body, body::Context, comfort, comfort::SessionPain, in_order, pull, Became, Because, Births, BodySign, Caution,
    Dealt,
};
use crate::guidance::{CautionRules, CautionSource};
use crate::record::{date, moment, text, Kind};
use crate::time::{Instant, LocalDay, Span};
use crate::trouble::Trouble;

/// Sessions that are looked at for pain, the latest: three days of sixteen.
const SESSIONS: u32 = 48;
/// What became of pain is told no further back than this: ten years are read as quickly as a
/// month.
const PAIN_BACK: Span = Span::hours(28 * 24);

/// The rules of cautions as they hold for this record.
pub(crate) fn rules(record: &Record<'_>) -> Result<CautionRules, Trouble> {
    Ok(CautionRules::read(record.rules()?))
}

/// What stands now, the most urgent first.
pub(crate) fn active(record: &Record<'_>) -> Result<Vec<Caution>, Trouble> {
    let mut found = gathered(record, None)?;
    found.retain(Caution::stands);
    Ok(found)
}

/// What stands, and what was over since then with what became of it. What was urgent and
/// never answered stands, however long ago it was.
pub(crate) fn since(record: &Record<'_>, since: Instant) -> Result<Vec<Caution>, Trouble> {
    Ok(over_since(gathered(record, Some(since.max(record.now.minus(PAIN_BACK))))?, since))
}

/// The same without what became of pain, which is never urgent: for a look at many families.
pub(crate) fn urgent_since(record: &Record<'_>, since: Instant) -> Result<Vec<Caution>, Trouble> {
    Ok(over_since(gathered(record, None)?, since))
}

fn over_since(mut found: Vec<Caution>, since: Instant) -> Vec<Caution> {
    found.retain(|caution| caution.became.over_at().is_none_or(|over| over >= since));
    found
}

/// All of them. Pain is looked for since then, or as far as it tells on now.
fn gathered(record: &Record<'_>, since: Option<Instant>) -> Result<Vec<Caution>, Trouble> {
    let rules = rules(record)?;
    let dealt = dealt(record)?;
    let (births, signs) = (births(record)?, signs(record)?);
    let beside = Context { now: record.now, rules: &rules, births: &births, dealt: &dealt };
    let mut found = body::cautions(&signs, &beside);
    found.extend(pains(record, &rules, &dealt, since)?);
    found.extend(drop(record)?.map(|caution| caution.dealt_with(&dealt)));
    found.extend(pumps(record, &rules)?.into_iter().map(|caution| caution.dealt_with(&dealt)));
    found.extend(no_longer_there(&found, &dealt, record.now));
    in_order(&mut found, record.now, rules.signs_hold);
    Ok(found)
}

fn signs(record: &Record<'_>) -> Result<Vec<BodySign>, Trouble> {
    let entries = record.journal.fields_of_kind(Kind::Sign)?;
    let mut found: Vec<BodySign> = entries.iter().filter_map(|(_, fields)| BodySign::read(fields)).collect();
    found.sort_by_key(|sign| sign.at);
    Ok(found)
}

fn births(record: &Record<'_>) -> Result<Births, Trouble> {
    let mut births = Births::default();
    for (_, fields) in record.journal.fields_of_kind(Kind::Child)? {
        match date(&fields, "birth") {
            Some(day) => births.known.push(LocalDay::on(day).begins(record.zone, record.settings.day_start)),
            None => births.any_unknown = true,
        }
    }
    Ok(births)
}

fn pains(
    record: &Record<'_>,
    rules: &CautionRules,
    dealt: &[Dealt],
    since: Option<Instant>,
) -> Result<Vec<Caution>, Trouble> {
    let read = |subject: &str| Ok::<_, Trouble>(SessionPain::read(subject, &record.record(subject)?.1));
    let mut after_each_other = Vec::new();
    let mut with_pain = Vec::new();
    match since {
        Some(since) => {
            // What came shortly before tells on what stood then.
            let from = since.minus(rules.signs_hold);
            for row in record.journal.of_kind_since(Kind::Session, from)?.into_iter().filter(|row| !row.running) {
                after_each_other.extend(read(&row.subject)?);
            }
            with_pain.clone_from(&after_each_other);
        }
        None => {
            // One may run, and is passed over.
            let most = rules.pain_often_of.get().saturating_add(1);
            let latest = record.journal.latest_sessions(record.now, most)?.into_iter().filter(|row| !row.running);
            for row in latest.take(rules.pain_often_of.get() as usize) {
                after_each_other.extend(read(&row.subject)?);
            }
            after_each_other.reverse();
            for row in record.journal.sessions_with_pain(record.now.minus(rules.signs_hold), record.now, SESSIONS)? {
                with_pain.extend(read(&row.subject)?);
            }
        }
    }
    let sessions = comfort::Sessions { with_pain: &with_pain, after_each_other: &after_each_other };
    Ok(comfort::cautions(&sessions, dealt, record.now, rules))
}

fn drop(record: &Record<'_>) -> Result<Option<Caution>, Trouble> {
    Ok(supply::drop(record)?.and_then(|drop| {
        let seen = drop.since.begins(record.zone, record.settings.day_start);
        Caution::new("supply-drop", seen, vec![Because::Drop(drop)])
    }))
}

/// Each pump by its latest check, where it is a check of now.
fn pumps(record: &Record<'_>, rules: &CautionRules) -> Result<Vec<Caution>, Trouble> {
    let mut found = Vec::new();
    for row in record.journal.of_kind(Kind::Pump)? {
        for (at, limits, read, judged) in kit::latest_pulls(record, &row.subject)? {
            found.extend(pull::caution(&row.subject, at, &read, &judged, &limits, rules));
        }
    }
    // One line a pump: the weaker side.
    found.dedup_by(|second, first| second.of == first.of);
    Ok(found)
}

fn dealt(record: &Record<'_>) -> Result<Vec<Dealt>, Trouble> {
    let mut found = Vec::new();
    for (_, fields) in record.journal.fields_of_kind(Kind::CautionDealt)? {
        let (key, seen) = (text(&fields, "caution"), moment(&fields, "seen"));
        if let (Some(key), Some(seen), Some(at)) = (key, seen, moment(&fields, "at")) {
            let said = |field: &str| text(&fields, field).filter(|said| !said.trim().is_empty()).map(str::to_owned);
            found.push(Dealt {
                key: key.to_owned(),
                seen: seen.instant(),
                at: at.instant(),
                how: said("dealt_how"),
                note: said("note"),
            });
        }
    }
    found.retain(|dealt| dealt.at <= record.now);
    Ok(found)
}

/// What was dealt with and is not found any more: the watch is quiet again, a pump was checked
/// anew. That it was there is still told.
fn no_longer_there(found: &[Caution], dealt: &[Dealt], now: Instant) -> Vec<Caution> {
    let there =
        |dealt: &Dealt| found.iter().any(|c| c.key() == dealt.key && c.began <= dealt.seen && dealt.seen <= c.seen);
    dealt
        .iter()
        .filter(|dealt| dealt.at <= now && !there(dealt))
        .filter_map(|dealt| {
            let (key, of) = match dealt.key.split_once(':') {
                Some((key, of)) => (key, Some(of.to_owned())),
                None => (dealt.key.as_str(), None),
            };
            Some(Caution {
                source: CautionSource::named(key)?,
                of,
                began: dealt.seen,
                seen: dealt.seen,
                because: Vec::new(),
                became: Became::Dealt { at: dealt.at, how: dealt.how.clone(), note: dealt.note.clone() },
            })
        })
        .collect()
}
