//! What another copy of this journal has not seen, change by change: so that two phones, or a
//! phone and a carrier, hand on no more than is new, and nobody holds a whole record in memory.

use std::collections::BTreeMap;
use std::ops::RangeInclusive;

use rusqlite::params;

use super::{row_number, Change, Journal};
use crate::trouble::Trouble;

/// Which changes a copy has: of each device, runs of its numbers. Where none is missing that is
/// one run a device.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Seen(BTreeMap<String, Vec<RangeInclusive<i64>>>);

impl Seen {
    /// Adds a run of a device's numbers.
    pub fn add(&mut self, device: &str, numbers: RangeInclusive<i64>) {
        let runs = self.0.entry(device.to_owned()).or_default();
        runs.push(numbers);
        runs.sort_by_key(|run| *run.start());
        let mut joined: Vec<RangeInclusive<i64>> = Vec::with_capacity(runs.len());
        for run in runs.drain(..) {
            match joined.last_mut() {
                Some(last) if *run.start() <= last.end().saturating_add(1) => {
                    *last = *last.start()..=*last.end().max(run.end());
                }
                _ => joined.push(run),
            }
        }
        *runs = joined;
    }

    /// Whether a change is among them.
    pub fn has(&self, device: &str, number: i64) -> bool {
        self.runs(device).iter().any(|run| run.contains(&number))
    }

    /// The runs of a device, in order and apart.
    pub fn runs(&self, device: &str) -> &[RangeInclusive<i64>] {
        self.0.get(device).map(Vec::as_slice).unwrap_or_default()
    }

    /// The numbers of a device that lie between its runs, or behind the last.
    fn missing(&self, device: &str) -> Vec<RangeInclusive<i64>> {
        let mut from = 1;
        let mut missing = Vec::new();
        for run in self.runs(device) {
            if from < *run.start() {
                missing.push(from..=*run.start() - 1);
            }
            from = run.end().saturating_add(1);
        }
        missing.push(from..=crate::limits::NUMBERS);
        missing
    }
}

impl Journal {
    /// Which changes are here.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn seen(&self) -> Result<Seen, Trouble> {
        // A run is where a number less its place among those of its device stays the same.
        let mut statement = self.connection.prepare_cached(
            "SELECT device.name, min(sequence), max(sequence) FROM (
                SELECT row >> 40 AS of_device, row & 1099511627775 AS sequence,
                       row - row_number() OVER (PARTITION BY row >> 40 ORDER BY row) AS run
                FROM change
             ) JOIN device ON device.number = of_device GROUP BY of_device, run",
        )?;
        let mut rows = statement.query([])?;
        let mut seen = Seen::default();
        while let Some(row) = rows.next()? {
            let runs = seen.0.entry(row.get(0)?).or_default();
            runs.push(row.get(1)?..=row.get(2)?);
        }
        for runs in seen.0.values_mut() {
            runs.sort_by_key(|run| *run.start());
        }
        Ok(seen)
    }

    /// Gives each change that another copy has not seen, by device and number; how many there
    /// were. One change is in memory at a time.
    ///
    /// # Errors
    /// Where the store can't be read, or what `look` says.
    pub fn changes_since(
        &self,
        seen: &Seen,
        mut look: impl FnMut(Change) -> Result<(), Trouble>,
    ) -> Result<u64, Trouble> {
        let mut devices = self.connection.prepare_cached("SELECT number, name FROM device ORDER BY name")?;
        let devices = devices
            .query_map([], |row| Ok((row.get::<_, i64>(0)?, row.get::<_, String>(1)?)))?
            .collect::<Result<Vec<_>, _>>()?;
        let sql = format!("SELECT {} FROM change WHERE row BETWEEN ?1 AND ?2 ORDER BY row", Change::COLUMNS);
        let mut statement = self.connection.prepare_cached(&sql)?;
        let mut count = 0;
        for (number, name) in devices {
            for run in seen.missing(&name) {
                let ends = params![row_number::row(number, *run.start()), row_number::row(number, *run.end())];
                let mut rows = statement.query(ends)?;
                while let Some(row) = rows.next()? {
                    look(Change::from_row(row)?.0)?;
                    count += 1;
                }
            }
        }
        Ok(count)
    }
}
