//! Merging: changes that other devices made, or a copy of this journal.
//!
//! Every change is kept under its own name; then each field that was touched is folded once.
//! What is counted as known is the same to the last letter but for a value that was not given.

use std::collections::BTreeMap;

use rusqlite::{params, Connection};
use serde_json::Value;

use super::act::ActKind;
use super::erase::{self, ERASED};
use super::{fold, row_number, Change, Difference, Journal, Stamp, Writing};
use crate::limits;
use crate::time::{Instant, Span};
use crate::trouble::Trouble;

/// What came of changes from elsewhere.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Merged {
    /// Changes that were new here.
    pub taken: u64,
    /// Changes that were known already.
    pub known: u64,
    /// Changes whose name is here with other content, or that say they are this device's and are
    /// not: they were left.
    pub other: u64,
    /// Changes of what was erased: they were left, and what they say stays gone.
    pub erased: u64,
    /// Changes that are dated more than a day ahead of now: they were left until then.
    pub ahead: u64,
}

/// Whose changes they are.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum From {
    /// Other devices'. What is said to be this one's and is not here was made up.
    Others,
    /// This journal's own, read back from a copy of it.
    Copy,
}

impl Journal {
    /// Takes in changes from another device or a copy of this journal; nothing that is taken
    /// back.
    ///
    /// # Errors
    /// Where one of them can't be a change, or the store can't be written.
    pub fn merge(&mut self, changes: &[Change], now: Instant) -> Result<Merged, Trouble> {
        self.take(changes, From::Others, now)
    }

    /// The same of a copy of this journal, which has this device's changes in it.
    pub(super) fn take_back(&mut self, changes: &[Change], now: Instant) -> Result<Merged, Trouble> {
        self.take(changes, From::Copy, now)
    }

    /// Takes a record in into this one that is empty: whoever made it may have had this device's
    /// name. Then this one goes on under another.
    ///
    /// # Errors
    /// Where one of them can't be a change, or the store can't be written.
    pub fn begin_with(&mut self, changes: &[Change], now: Instant) -> Result<Merged, Trouble> {
        let merged = self.take(changes, From::Copy, now)?;
        if changes.iter().any(|change| change.dot.device == self.device) {
            let base = self.device_base().to_owned();
            self.write_under_a_new_name(&base, now)?;
        }
        Ok(merged)
    }

    fn take(&mut self, changes: &[Change], from: From, now: Instant) -> Result<Merged, Trouble> {
        let device = self.device.clone();
        let store = self.begin()?;
        let mut writing = Writing::begin(&store, &device, now)?;
        let (merged, _) = take_all(&store, &mut writing, changes, from, false)?;
        writing.project()?;
        store.commit()?;
        Ok(merged)
    }

    /// Takes in changes from another device as one act that can be taken back.
    ///
    /// # Errors
    /// Where one of them can't be a change, or the store can't be written.
    pub fn merge_as_an_act(&mut self, name: &str, changes: &[Change], now: Instant) -> Result<Merged, Trouble> {
        let device = self.device.clone();
        let store = self.begin()?;
        let mut writing = Writing::begin(&store, &device, now)?;
        let first = writing.sequence() + 1;
        let (merged, mut differences) = take_all(&store, &mut writing, changes, From::Others, true)?;
        writing.project()?;
        if !differences.is_empty() {
            super::act::keep(&store, ActKind::Undoable, name, "", writing.device(), (first, writing.sequence()))?;
            let gone = erase::erased(&store)?;
            differences.retain(|difference| !gone.contains(&difference.subject));
            super::act::keep_taken(&store, &differences)?;
        }
        store.commit()?;
        Ok(merged)
    }

    /// What would come of changes from another device, and what they would change; nothing is
    /// kept.
    ///
    /// # Errors
    /// Where the store can't be read, or one of them can't be a change.
    pub fn would_merge(&mut self, changes: &[Change], now: Instant) -> Result<(Merged, Vec<Difference>), Trouble> {
        let device = self.device.clone();
        let store = self.begin()?;
        let mut writing = Writing::begin(&store, &device, now)?;
        let found = take_all(&store, &mut writing, changes, From::Others, true)?;
        store.rollback()?;
        Ok(found)
    }
}

fn take_all(
    store: &Connection,
    writing: &mut Writing<'_>,
    changes: &[Change],
    from: From,
    tells: bool,
) -> Result<(Merged, Vec<Difference>), Trouble> {
    let now = writing.now();
    let latest = Stamp::at(now.plus(limits::AHEAD).plus(Span::milliseconds(1)));
    let mut merged = Merged::default();
    let mut ahead = Span::milliseconds(0);
    let mut touched: BTreeMap<(&str, &str), Vec<&Change>> = BTreeMap::new();
    let gone = erase::erased(store)?;
    for change in changes {
        let foreign = from == From::Others;
        if foreign && change.stamp >= latest {
            merged.ahead += 1;
            ahead = ahead.max(change.stamp.instant().since(now));
            continue;
        }
        let key = (change.subject.as_str(), change.field.as_str());
        if foreign && change.dot.device == writing.device() && fold::change(store, &change.dot)?.is_none() {
            merged.other += 1;
            continue;
        }
        if change.field != ERASED && gone.contains(&change.subject) {
            merged.erased += 1;
            continue;
        }
        if change.dot.sequence > limits::NUMBERS || change.dot.sequence < 1 {
            merged.other += 1;
            continue;
        }
        let device_number = row_number::of_any_device(store, &change.dot.device)?;
        match fold::keep(store, device_number, change)? {
            fold::Inserted::Known => merged.known += 1,
            fold::Inserted::Other => merged.other += 1,
            fold::Inserted::Filled => {
                merged.taken += 1;
                touched.entry(key).or_default();
            }
            fold::Inserted::New => {
                merged.taken += 1;
                touched.entry(key).or_default().push(change);
                writing.has_seen(change.stamp);
            }
        }
    }
    let awaiting = fold::any_awaited(store)?;
    let mut differences = Vec::new();
    let mut gone_now = Vec::new();
    for ((subject, field), new) in touched {
        let value = || Ok::<_, Trouble>(fold::field_state(store, subject, field)?.map(|state| state.value));
        let before = if tells { value()? } else { None };
        fold::fold(store, (subject, field), &new, awaiting)?;
        writing.touch(subject, field);
        if field == ERASED && !gone.contains(subject) {
            gone_now.push(subject);
        }
        let after = if tells { value()? } else { None };
        if before != after {
            let read = |json: Option<String>| json.and_then(|json| serde_json::from_str(&json).ok());
            differences.push(Difference {
                subject: subject.to_owned(),
                field: field.to_owned(),
                before: read(before).unwrap_or(Value::Null),
                after: read(after).unwrap_or(Value::Null),
            });
        }
    }
    gone_now.retain(|subject| erase::is_erased(store, subject).unwrap_or(false));
    let went = erase::follow(store, &gone_now, tells)?;
    // What went does not come back, and is not said to have come in.
    differences.retain(|difference| !gone_now.contains(&difference.subject.as_str()));
    differences.extend(went);
    store.execute(
        "UPDATE clock SET stamp = max(stamp, ?1), ahead_milliseconds = max(ahead_milliseconds, ?2)",
        params![writing.stamp().raw(), ahead.in_milliseconds()],
    )?;
    Ok((merged, differences))
}
