//! Writing: a few fields set at once, in one transaction, on disk when done.

use std::collections::BTreeSet;

use rusqlite::{params, Connection, OptionalExtension};
use serde_json::Value;

use super::act::ActKind;
use super::{fold, projection, removals, row_number, Change, Dot, Journal, Stamp};
use crate::limits;
use crate::record::{Fields, Kind, MARKS, SETTINGS};
use crate::time::Instant;
use crate::trouble::{Kind as TroubleKind, Trouble};

/// The pen of one act.
pub struct Writing<'a> {
    store: &'a Connection,
    device: String,
    device_number: i64,
    now: Instant,
    stamp: Stamp,
    sequence: i64,
    touched: BTreeSet<String>,
    /// Of these only marks were touched.
    marked: BTreeSet<String>,
    days_begin_anew: bool,
    /// What this device said last is stamped far ahead of now.
    was_ahead: bool,
}

impl<'a> Writing<'a> {
    pub(super) fn begin(store: &'a Connection, device: &str, now: Instant) -> Result<Self, Trouble> {
        let floor: i64 = store.prepare_cached("SELECT stamp FROM clock")?.query_row([], |r| r.get(0))?;
        let device_number = row_number::of_any_device(store, device)?;
        let own: Option<(i64, i64)> = store
            .prepare_cached(
                "SELECT stamp, device_seq FROM change WHERE row > ?1 AND row < ?2 ORDER BY row DESC LIMIT 1",
            )?
            .query_row(params![row_number::row(device_number, 0), row_number::row(device_number + 1, 0)], |r| {
                Ok((r.get(0)?, r.get(1)?))
            })
            .optional()?;
        let (last, sequence) = own.unwrap_or((0, 0));
        // A clock that was once far ahead is not followed for good: what is written now replaces
        // what it sees, whatever the stamp of that.
        let sane = |raw: i64| Some(Stamp::from_raw(raw)).filter(|stamp| *stamp <= stamp.no_further_than(now));
        let stamp = sane(last).max(sane(floor)).unwrap_or(Stamp::ZERO);
        Ok(Self {
            store,
            device: device.to_owned(),
            device_number,
            now,
            stamp,
            sequence,
            touched: BTreeSet::new(),
            marked: BTreeSet::new(),
            days_begin_anew: false,
            was_ahead: sane(last).is_none(),
        })
    }

    /// The id of a new record; unique, since no other device has this name and
    /// this device never uses a number twice. Ids of one device sort as they
    /// were made.
    pub fn new_id(&self) -> String {
        format!("{}-{:08}", self.device, self.sequence + 1)
    }

    /// Gives a field a value; `Value::Null` makes it say nothing. A value that
    /// stands already is not written again.
    ///
    /// # Errors
    /// Where the store can't be written.
    pub fn set(&mut self, subject: &str, field: &str, value: &Value) -> Result<(), Trouble> {
        let state = fold::field_state(self.store, subject, field)?;
        self.write(subject, field, value.to_string(), state)
    }

    /// Gives a field of a record that is new here its first value.
    ///
    /// # Errors
    /// Where the store can't be written.
    pub fn set_first(&mut self, subject: &str, field: &str, value: &Value) -> Result<(), Trouble> {
        self.write(subject, field, value.to_string(), None)
    }

    /// Says once more what stands, in place of it.
    pub(super) fn say_again(&mut self, subject: &str, field: &str) -> Result<(), Trouble> {
        match fold::field_state(self.store, subject, field)? {
            Some(state) => self.write_in_place_of(subject, field, state.value.clone(), state.heads()),
            None => Ok(()),
        }
    }

    fn write(
        &mut self,
        subject: &str,
        field: &str,
        value: String,
        state: Option<fold::FieldState>,
    ) -> Result<(), Trouble> {
        let replaces = match &state {
            None if value == "null" => return Ok(()),
            None => Vec::new(),
            Some(s) if s.others.is_empty() && s.value == value => return Ok(()),
            Some(_) => state.map(fold::FieldState::heads).unwrap_or_default(),
        };
        self.write_in_place_of(subject, field, value, replaces)
    }

    fn write_in_place_of(
        &mut self,
        subject: &str,
        field: &str,
        value: String,
        replaces: Vec<Dot>,
    ) -> Result<(), Trouble> {
        self.stamp = self.stamp.next(self.now);
        self.sequence += 1;
        let change = Change {
            dot: Dot { device: self.device.clone(), sequence: self.sequence },
            stamp: self.stamp,
            subject: subject.to_owned(),
            field: field.to_owned(),
            value,
            replaces,
        };
        // A number that is taken would be a tap that was answered and not kept.
        let in_range = change.dot.sequence <= limits::NUMBERS;
        if !in_range || fold::keep(self.store, self.device_number, &change)? != fold::Inserted::New {
            return Err(Trouble::new(TroubleKind::Fault, "trouble-not-kept"));
        }
        fold::stand(self.store, &change, &[])?;
        self.touch(subject, field);
        Ok(())
    }

    pub(super) fn touch(&mut self, subject: &str, field: &str) {
        let touched = if field.starts_with(MARKS) { &mut self.marked } else { &mut self.touched };
        if !touched.contains(subject) {
            touched.insert(subject.to_owned());
        }
        self.days_begin_anew |= subject == SETTINGS && field == "day_start";
    }

    /// A record as it stands within this act.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn record(&self, subject: &str) -> Result<Option<(Kind, Fields)>, Trouble> {
        projection::record(self.store, subject)
    }

    /// Whether anything was ever said of a subject.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn knows(&self, subject: &str) -> Result<bool, Trouble> {
        let found = self
            .store
            .prepare_cached("SELECT EXISTS(SELECT 1 FROM field WHERE subject = ?1)")?
            .query_row(params![subject], |r| r.get(0))?;
        Ok(found)
    }

    pub(super) fn project(&mut self) -> Result<(), Trouble> {
        if std::mem::take(&mut self.days_begin_anew) {
            self.touched.extend(projection::all_subjects(self.store)?);
            removals::forget_days(self.store)?;
        }
        for subject in std::mem::take(&mut self.marked) {
            // While it runs a mark changes nothing of its row: a tap stays short.
            if projection::row(self.store, &subject)?.is_some_and(|row| !row.running) {
                self.touched.insert(subject);
            }
        }
        projection::project(self.store, &std::mem::take(&mut self.touched))
    }

    /// What was changed since a number of this device.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn differences(&self, since: i64) -> Result<Vec<super::Difference>, Trouble> {
        super::act::differences(self.store, self.device_number, since + 1, self.sequence)
    }

    pub(super) fn now(&self) -> Instant {
        self.now
    }

    pub(super) fn stamp(&self) -> Stamp {
        self.stamp
    }

    pub(super) fn has_seen(&mut self, stamp: Stamp) {
        self.stamp = self.stamp.having_seen(stamp, self.now);
    }

    pub(super) fn store(&self) -> &'a Connection {
        self.store
    }

    /// The number of this device's last change.
    pub fn sequence(&self) -> i64 {
        self.sequence
    }

    pub(super) fn device(&self) -> &str {
        &self.device
    }
}

impl Journal {
    /// Does an act: everything in it is on disk when this returns, or nothing.
    /// An act that changes nothing leaves no trace.
    ///
    /// # Errors
    /// What the deed says, or that the store can't be written: nothing is kept then.
    pub fn act<T>(
        &mut self,
        name: &str,
        subject: &str,
        now: Instant,
        deed: impl FnOnce(&mut Writing<'_>) -> Result<T, Trouble>,
    ) -> Result<T, Trouble> {
        self.act_of_kind(ActKind::Undoable, name, subject, now, deed)
    }

    /// Does an act that is not worth taking back, such as a choice of set-up.
    ///
    /// # Errors
    /// As [`Self::act`].
    pub fn quiet_act<T>(
        &mut self,
        now: Instant,
        deed: impl FnOnce(&mut Writing<'_>) -> Result<T, Trouble>,
    ) -> Result<T, Trouble> {
        self.act_of_kind(ActKind::Quiet, "quiet", "", now, deed)
    }

    /// What an act would come to: it is done whole, and none of it is kept.
    ///
    /// # Errors
    /// As [`Self::act`].
    pub fn without_keeping<T>(
        &mut self,
        now: Instant,
        deed: impl FnOnce(&mut Writing<'_>) -> Result<T, Trouble>,
    ) -> Result<T, Trouble> {
        let device = self.device.clone();
        let store = self.begin()?;
        let mut writing = Writing::begin(&store, &device, now)?;
        let result = deed(&mut writing)?;
        writing.project()?;
        store.rollback()?;
        Ok(result)
    }

    pub(super) fn act_of_kind<T>(
        &mut self,
        kind: ActKind,
        name: &str,
        subject: &str,
        now: Instant,
        deed: impl FnOnce(&mut Writing<'_>) -> Result<T, Trouble>,
    ) -> Result<T, Trouble> {
        let device = self.device.clone();
        let store = self.begin()?;
        let mut writing = Writing::begin(&store, &device, now)?;
        if writing.was_ahead {
            let first = writing.sequence + 1;
            for (subject, field) in super::restamp::to_say_again(&store, now)? {
                writing.say_again(&subject, &field)?;
            }
            if writing.sequence >= first {
                writing.project()?;
                super::act::keep(&store, ActKind::Quiet, "quiet", "", writing.device(), (first, writing.sequence()))?;
            }
        }
        let first = writing.sequence + 1;
        let result = deed(&mut writing)?;
        // Taking back an act that changed nothing is still to be remembered.
        if writing.sequence >= first || matches!(kind, ActKind::Undo(_) | ActKind::Redo) {
            writing.project()?;
            super::act::keep(&store, kind, name, subject, writing.device(), (first, writing.sequence()))?;
            store.commit()?;
        }
        Ok(result)
    }
}
