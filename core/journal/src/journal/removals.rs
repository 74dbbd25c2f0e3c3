//! Milk leaving the breast, kept ready by time; and room for what was worked
//! out of it, a day each, until something near that day changes.

use rusqlite::{params, Connection, OptionalExtension};

use super::Journal;
use crate::quantity::{Production, Quantity, Share, Volume};
use crate::record::{Answered, Milk, Removal, Sides};
use crate::time::{DayStart, Instant, LocalDay, Moment, Zone};
use crate::trouble::Trouble;

/// Stands for "not known" among volumes.
const NOT_KNOWN: f64 = -1.0;
/// A removal tells on the days before it by its interval, and on the days
/// after it by what is ordinary. Both ends have room to spare.
const TELLS_BACK: i32 = 4;
const TELLS_AHEAD: i32 = 18;

/// Stands for "no time".
const NO_TIME: i64 = i64::MIN;

/// What was said of the gap before, in the column `gap_is_whole`.
const NOT_ANSWERED: i64 = 0;
const WHOLE: i64 = 1;
const HIDES_ONE: i64 = 2;

const COLUMNS: &str =
    "subject, at, zone, sides, left_milliliters, right_milliliters, together_milliliters, gap_is_whole, amount_is_right, \
     began";

fn read(row: &rusqlite::Row<'_>) -> rusqlite::Result<Removal> {
    let volume = |at: usize| -> rusqlite::Result<Option<Volume>> {
        let value: f64 = row.get(at)?;
        Ok((value >= 0.0).then(|| Volume::from_canonical(value)))
    };
    let (left, right, together) = (volume(4)?, volume(5)?, volume(6)?);
    Ok(Removal {
        session: row.get(0)?,
        began: Some(row.get(9)?).filter(|began| *began != NO_TIME).map(Instant::from_unix_milliseconds),
        at: Instant::from_unix_milliseconds(row.get(1)?),
        zone: Zone::named(row.get_ref(2)?.as_str()?).unwrap_or(Zone::UTC),
        sides: Sides::named(Some(row.get_ref(3)?.as_str()?)),
        milk: match (left, right, together) {
            (_, _, Some(together)) => Milk::Together(together),
            (None, None, None) => Milk::Unknown,
            (left, right, None) => Milk::Sides { left, right },
        },
        answered: {
            let gap: i64 = row.get(7)?;
            Answered { gap_is_whole: gap == WHOLE, gap_hides_one: gap == HIDES_ONE, amount_is_right: row.get(8)? }
        },
    })
}

/// Brings the removal of a session up to date.
pub(super) fn keep(store: &Connection, subject: &str, now: Option<&Removal>) -> Result<(), Trouble> {
    let before = store
        .prepare_cached(&format!("SELECT {COLUMNS} FROM removal WHERE subject = ?1"))?
        .query_row(params![subject], read)
        .optional()?;
    if before.as_ref() == now {
        return Ok(());
    }
    for removal in [before.as_ref(), now].into_iter().flatten() {
        let day = LocalDay::of(&Moment::new(removal.at, Zone::UTC), DayStart::MIDNIGHT).number();
        store
            .prepare_cached("DELETE FROM day_production WHERE day BETWEEN ?1 AND ?2")?
            .execute(params![day - TELLS_BACK, day + TELLS_AHEAD])?;
    }
    let Some(now) = now else {
        store.prepare_cached("DELETE FROM removal WHERE subject = ?1")?.execute(params![subject])?;
        return Ok(());
    };
    let (left, right, together) = match now.milk {
        Milk::Unknown => (None, None, None),
        Milk::Sides { left, right } => (left, right, None),
        Milk::Together(together) => (None, None, Some(together)),
    };
    let stored = |volume: Option<Volume>| volume.map_or(NOT_KNOWN, Quantity::canonical);
    store
        .prepare_cached(&format!(
            "INSERT OR REPLACE INTO removal({COLUMNS}) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10)"
        ))?
        .execute(params![
            subject,
            now.at.unix_milliseconds(),
            now.zone.name(),
            now.sides.name(),
            stored(left),
            stored(right),
            stored(together),
            match now.answered {
                Answered { gap_is_whole: true, .. } => WHOLE,
                Answered { gap_hides_one: true, .. } => HIDES_ONE,
                Answered { .. } => NOT_ANSWERED,
            },
            now.answered.amount_is_right,
            now.began.map_or(NO_TIME, Instant::unix_milliseconds),
        ])?;
    Ok(())
}

/// Forgets what was worked out of every day.
pub(super) fn forget_days(store: &Connection) -> Result<(), Trouble> {
    store.execute_batch("DELETE FROM day_production")?;
    Ok(())
}

impl Journal {
    /// Removals over a stretch of time, in order.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn removals(&self, from: Instant, until: Instant) -> Result<Vec<Removal>, Trouble> {
        let mut statement = self.connection.prepare_cached(&format!(
            "SELECT {COLUMNS} FROM removal WHERE at >= ?1 AND at < ?2 ORDER BY at, subject"
        ))?;
        let found = statement
            .query_map(params![from.unix_milliseconds(), until.unix_milliseconds()], read)?
            .collect::<Result<_, _>>()?;
        Ok(found)
    }

    /// The first removal there is before an instant.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn first_removal(&self, before: Instant) -> Result<Option<Removal>, Trouble> {
        Ok(self
            .connection
            .prepare_cached(&format!("SELECT {COLUMNS} FROM removal WHERE at < ?1 ORDER BY at LIMIT 1"))?
            .query_row(params![before.unix_milliseconds()], read)
            .optional()?)
    }

    /// What was worked out of days before, as it was kept; a day that is not
    /// there has to be worked out.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn read_kept_days(
        &self,
        from: LocalDay,
        to: LocalDay,
        mut take: impl FnMut(LocalDay, &[u8]),
    ) -> Result<(), Trouble> {
        let mut statement =
            self.connection.prepare_cached("SELECT day, made FROM day_production WHERE day BETWEEN ?1 AND ?2")?;
        let mut rows = statement.query(params![from.number(), to.number()])?;
        while let Some(row) = rows.next()? {
            if let Some(day) = LocalDay::from_number(row.get(0)?) {
                take(day, row.get_ref(1)?.as_blob().map_err(rusqlite::Error::from)?);
            }
        }
        Ok(())
    }

    /// As [`Self::read_kept_days`], both sides together and nothing else, of
    /// those days that were written in this way: the first byte says so.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn kept_productions(&self, from: LocalDay, to: LocalDay, way: u8) -> Result<Vec<KeptDay>, Trouble> {
        let mut statement = self.connection.prepare_cached(
            "SELECT day, milliliters, observed FROM day_production
             WHERE day BETWEEN ?1 AND ?2 AND substr(made, 1, 1) = ?3 ORDER BY day",
        )?;
        let mut rows = statement.query(params![from.number(), to.number(), [way]])?;
        let mut found = Vec::new();
        while let Some(row) = rows.next()? {
            let Some(day) = LocalDay::from_number(row.get(0)?) else { continue };
            let milliliters: f64 = row.get(1)?;
            let production = (milliliters >= 0.0).then(|| Production::from_canonical(milliliters));
            found.push(KeptDay { day, production, observed: Share::of(row.get(2)?), made: Vec::new() });
        }
        Ok(found)
    }

    /// Keeps what was worked out of days. It can always be worked out again, so
    /// a store that takes nothing is no trouble here.
    pub fn keep_days(&self, days: &[KeptDay]) {
        let write = || -> rusqlite::Result<()> {
            let store = self.connection.unchecked_transaction()?;
            for kept in days {
                store
                    .prepare_cached(
                        "INSERT OR REPLACE INTO day_production(day, milliliters, observed, made) VALUES (?1, ?2, ?3, ?4)",
                    )?
                    .execute(params![
                        kept.day.number(),
                        kept.production.map_or(NOT_KNOWN, Quantity::canonical),
                        kept.observed.fraction(),
                        kept.made
                    ])?;
            }
            store.commit()
        };
        // Nothing is lost by it.
        write().ok();
    }
}

/// What was worked out of a day.
#[derive(Debug, Clone, PartialEq)]
pub struct KeptDay {
    /// The day.
    pub day: LocalDay,
    /// What was made in it, both sides, scaled to 24 h.
    pub production: Option<Production>,
    /// How much of it was observed.
    pub observed: Share,
    /// All of it, as who worked it out wrote it.
    pub made: Vec<u8>,
}
