//! Reading: records, days, and what stands in question.

use rusqlite::{params, OptionalExtension};

use super::change::read_dots;
use super::fields_read::records;
use super::{fold, projection, row_number, Change, DayRollup, Journal, Row};
use crate::quantity::{Quantity, Volume};
use crate::record::{Fields, Kind};
use crate::time::{DayStart, Instant, LocalDay, Span};
use crate::trouble::Trouble;

/// A value of a field that was written without knowing of the one that counts.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Head {
    /// The field.
    pub field: String,
    /// The value, as JSON.
    pub value: String,
    /// The device that wrote it.
    pub device: String,
}

/// A record that was taken out on one device and edited on another after.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LateEdit {
    /// The device that edited it.
    pub device: String,
}

impl Journal {
    /// A record by its id. Settings are always there.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn record(&self, subject: &str) -> Result<Option<(Kind, Fields)>, Trouble> {
        if let Some(kind) = Kind::ALL.iter().copied().find(|kind| kind.only() == Some(subject)) {
            return Ok(Some((kind, projection::fields(&self.connection, subject, true)?)));
        }
        projection::record(&self.connection, subject)
    }

    /// The row of a record in the index.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn row(&self, subject: &str) -> Result<Option<Row>, Trouble> {
        projection::row(&self.connection, subject)
    }

    /// The hour at which days begin.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn day_start(&self) -> Result<DayStart, Trouble> {
        projection::day_start(&self.connection)
    }

    fn rows(&self, condition: &str, values: impl rusqlite::Params) -> Result<Vec<Row>, Trouble> {
        let sql = format!("SELECT {} FROM record WHERE {condition}", projection::ROW_COLUMNS);
        let mut statement = self.connection.prepare_cached(&sql)?;
        let mut rows = statement.query(values)?;
        let mut found = Vec::new();
        while let Some(row) = rows.next()? {
            found.extend(projection::read_row(row)?);
        }
        Ok(found)
    }

    /// Everything of a local day, taken out or not, by time.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn of_day(&self, day: LocalDay) -> Result<Vec<Row>, Trouble> {
        self.rows("day = ?1 ORDER BY at, subject", params![day.number()])
    }

    /// Everything of a kind that was not taken out.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn of_kind(&self, kind: Kind) -> Result<Vec<Row>, Trouble> {
        self.rows("kind = ?1 AND taken_out = 0 ORDER BY at, subject", params![kind.name()])
    }

    /// The fields of everything of a kind that was not taken out, by time.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn fields_of_kind(&self, kind: Kind) -> Result<Vec<(String, Fields)>, Trouble> {
        self.fields_of_kind_since(kind, Instant::from_unix_milliseconds(i64::MIN))
    }

    /// As [`Self::fields_of_kind`], from an instant on.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn fields_of_kind_since(&self, kind: Kind, since: Instant) -> Result<Vec<(String, Fields)>, Trouble> {
        let since = since.unix_milliseconds();
        let mut statement = self.connection.prepare_cached(
            "SELECT record.subject, field.field, field.value FROM record JOIN field ON field.subject = record.subject
             WHERE record.kind = ?1 AND record.taken_out = 0 AND record.at >= ?2
             ORDER BY record.at, record.subject, field.field",
        )?;
        let found = records(statement.query(params![kind.name(), since])?);
        found
    }

    /// Everything of a kind from an instant on that was not taken out, by time.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn of_kind_since(&self, kind: Kind, since: Instant) -> Result<Vec<Row>, Trouble> {
        self.rows(
            "kind = ?1 AND taken_out = 0 AND at >= ?2 ORDER BY at, subject",
            params![kind.name(), since.unix_milliseconds()],
        )
    }

    /// Everything of a kind that was by an instant and whose field names another record,
    /// the latest first, at most so many; what was taken out aside.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn naming(&self, kind: Kind, field: &str, other: &str, by: Instant, most: u32) -> Result<Vec<Row>, Trouble> {
        self.naming_since(kind, field, other, [Instant::from_unix_milliseconds(i64::MIN), by], most)
    }

    /// As [`Self::naming`], from an instant on: what came before it is not looked through.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn naming_since(
        &self,
        kind: Kind,
        field: &str,
        other: &str,
        [from, by]: [Instant; 2],
        most: u32,
    ) -> Result<Vec<Row>, Trouble> {
        let named = serde_json::Value::from(other).to_string();
        let columns: Vec<String> =
            projection::ROW_COLUMNS.split(", ").map(|column| format!("record.{column}")).collect();
        let sql = format!(
            "SELECT {} FROM record JOIN field ON field.subject = record.subject AND field.field = ?2
             WHERE kind = ?1 AND taken_out = 0 AND at >= ?6 AND at <= ?5 AND field.value = ?3 ORDER BY at DESC, record.subject DESC LIMIT ?4",
            columns.join(", ")
        );
        let mut statement = self.connection.prepare_cached(&sql)?;
        let mut rows = statement.query(params![
            kind.name(),
            field,
            named,
            most,
            by.unix_milliseconds(),
            from.unix_milliseconds()
        ])?;
        let mut found = Vec::new();
        while let Some(row) = rows.next()? {
            found.extend(projection::read_row(row)?);
        }
        Ok(found)
    }

    /// The running session that started last.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn running(&self) -> Result<Option<Row>, Trouble> {
        Ok(self.rows("running = 1 ORDER BY at DESC LIMIT 1", [])?.into_iter().next())
    }

    /// The latest sessions that started by an instant, latest first.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn latest_sessions(&self, by: Instant, most: u32) -> Result<Vec<Row>, Trouble> {
        self.rows(
            "kind = 'session' AND taken_out = 0 AND at <= ?1 ORDER BY at DESC, subject DESC LIMIT ?2",
            params![by.unix_milliseconds(), most],
        )
    }

    /// Of the latest sessions of a stretch of time that ended, at most so many, those of which
    /// pain was said, in fields of its own or in a mark; by time.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn sessions_with_pain(&self, from: Instant, to: Instant, most: u32) -> Result<Vec<Row>, Trouble> {
        self.rows(
            "subject IN (SELECT subject FROM record WHERE kind = 'session' AND taken_out = 0 AND running = 0
                         AND at BETWEEN ?1 AND ?2 ORDER BY at DESC LIMIT ?3)
             AND pain = 1 ORDER BY at, subject",
            params![from.unix_milliseconds(), to.unix_milliseconds(), most],
        )
    }

    /// Sessions whose amount can still be written down, latest first.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn lacking(&self, since: Instant) -> Result<Vec<Row>, Trouble> {
        self.rows("lacks = 1 AND at >= ?1 ORDER BY at DESC LIMIT 50", params![since.unix_milliseconds()])
    }

    /// Other sessions that ran at the same time, taken out ones aside. No
    /// session is longer than a day, so only those need a look.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn overlapping(&self, row: &Row) -> Result<Vec<Row>, Trouble> {
        let (Some(from), Some(until)) = (row.at, row.until) else { return Ok(Vec::new()) };
        self.rows(
            "kind = 'session' AND taken_out = 0 AND at < ?1 AND at > ?2 AND until > ?3 AND subject <> ?4 ORDER BY at",
            params![
                until.unix_milliseconds(),
                from.minus(Span::hours(24)).unix_milliseconds(),
                from.unix_milliseconds(),
                row.subject
            ],
        )
    }

    /// What a day brought by the clock.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn rollup(&self, day: LocalDay) -> Result<DayRollup, Trouble> {
        projection::read_rollup(&self.connection, day)
    }

    /// What came by the clock on each day of a stretch that has any known amount.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn known_by_day(&self, from: LocalDay, to: LocalDay) -> Result<Vec<(LocalDay, Volume)>, Trouble> {
        let mut statement = self.connection.prepare_cached(
            "SELECT day, left_milliliters + right_milliliters + together_milliliters FROM day_rollup
             WHERE day BETWEEN ?1 AND ?2 AND left_known + right_known + together_known > 0 ORDER BY day",
        )?;
        let mut rows = statement.query(params![from.number(), to.number()])?;
        let mut found = Vec::new();
        while let Some(row) = rows.next()? {
            if let Some(day) = LocalDay::from_number(row.get(0)?) {
                found.push((day, Volume::from_canonical(row.get(1)?)));
            }
        }
        Ok(found)
    }

    /// Whether nothing has ever been written down, settings aside.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn is_empty(&self) -> Result<bool, Trouble> {
        let found: i64 = self
            .connection
            .prepare_cached("SELECT EXISTS(SELECT 1 FROM record WHERE kind <> 'settings')")?
            .query_row([], |r| r.get(0))?;
        Ok(found == 0)
    }

    /// Values that another device wrote without knowing of the ones that count.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn other_values(&self, subject: &str) -> Result<Vec<Head>, Trouble> {
        let mut statement = self
            .connection
            .prepare_cached("SELECT others FROM field WHERE subject = ?1 AND others <> '' ORDER BY field")?;
        let contested: Vec<String> = statement.query_map(params![subject], |r| r.get(0))?.collect::<Result<_, _>>()?;
        let mut others = Vec::new();
        for dot in contested.iter().flat_map(|text| read_dots(text)) {
            let head = fold::change(&self.connection, &dot)?;
            others.extend(head.map(|c| Head { field: c.field, value: c.value, device: c.dot.device }));
        }
        Ok(others)
    }

    /// The latest edit of a taken-out record that another device made without
    /// knowing, or knowing better, that it was taken out.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn late_edit(&self, subject: &str) -> Result<Option<LateEdit>, Trouble> {
        let Some(out) = fold::field_state(&self.connection, subject, "taken_out")?.filter(|s| s.value == "true") else {
            return Ok(None);
        };
        let found = self
            .connection
            .prepare_cached(
                "SELECT edit.device FROM field
                 JOIN device ON device.name = field.device
                 JOIN change AS edit ON edit.row = device.number << 40 | field.device_seq
                 JOIN change AS out ON out.row = ?2
                 WHERE field.subject = ?1 AND edit.device <> out.device AND edit.stamp > out.stamp
                 ORDER BY edit.stamp DESC LIMIT 1",
            )?
            .query_row(params![subject, row_number::of(&self.connection, &out.dot)?], |r| {
                Ok(LateEdit { device: r.get(0)? })
            })
            .optional()?;
        Ok(found)
    }

    /// How far another device's clock was seen to lead, where that is too far.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn clock_ahead(&self) -> Result<Option<Span>, Trouble> {
        let ahead: i64 =
            self.connection.prepare_cached("SELECT ahead_milliseconds FROM clock")?.query_row([], |r| r.get(0))?;
        Ok((ahead > 0).then_some(Span::milliseconds(ahead)))
    }

    /// When the last change was made, by its own clock; none where there is none.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn last_change(&self) -> Result<Option<Instant>, Trouble> {
        let last: Option<i64> =
            self.connection.prepare_cached("SELECT max(stamp) FROM change")?.query_row([], |r| r.get(0))?;
        Ok(last.map(|stamp| super::Stamp::from_raw(stamp).instant()))
    }

    /// Every change, in the order of their stamps.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn changes(&self) -> Result<Vec<Change>, Trouble> {
        let sql = format!("SELECT {} FROM change ORDER BY stamp, device, device_seq", Change::COLUMNS);
        let mut statement = self.connection.prepare(&sql)?;
        let all = statement.query_map([], |r| Change::from_row(r).map(|(c, _)| c))?.collect::<Result<_, _>>()?;
        Ok(all)
    }

    /// Every record, in the order of the exchange form: by kind, time and id.
    ///
    /// # Errors
    /// Where the store can't be read, and what `look` says.
    pub fn each_record(&self, mut look: impl FnMut(&str, Kind, Fields) -> Result<(), Trouble>) -> Result<(), Trouble> {
        for kind in Kind::ALL {
            let mut statement =
                self.connection.prepare_cached("SELECT subject FROM record WHERE kind = ?1 ORDER BY at, subject")?;
            let mut rows = statement.query(params![kind.name()])?;
            while let Some(row) = rows.next()? {
                let subject = row.get_ref(0)?.as_str().map_err(rusqlite::Error::from)?;
                look(subject, *kind, projection::fields(&self.connection, subject, true)?)?;
            }
        }
        Ok(())
    }

    /// The whole projection as text, to hold a rebuilt one against.
    #[doc(hidden)]
    pub fn projection_text(&self) -> Result<String, Trouble> {
        let mut out = String::new();
        for table in projection::DERIVED {
            let mut statement = self.connection.prepare(&format!("SELECT * FROM {table} ORDER BY 1, 2, 3"))?;
            let width = statement.column_count();
            let mut rows = statement.query([])?;
            while let Some(row) = rows.next()? {
                for column in 0..width {
                    out.push_str(&format!("{:?}|", row.get_ref(column)?));
                }
                out.push('\n');
            }
        }
        Ok(out)
    }

    /// Builds the projection anew from the changes.
    ///
    /// # Errors
    /// Where the store can't be written.
    pub fn rebuild(&mut self) -> Result<(), Trouble> {
        let store = self.begin()?;
        projection::rebuild(&store)?;
        store.commit()?;
        Ok(())
    }
}
