//! A change: one field of one subject given one value by one device.

use rusqlite::Row;

use super::Stamp;

/// A change's own name: the device that made it, and its number there.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Dot {
    /// The device.
    pub device: String,
    /// Its number, from 1.
    pub sequence: i64,
}

/// One field given one value.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Change {
    /// Its name.
    pub dot: Dot,
    /// When it was made, by the hybrid logical clock.
    pub stamp: Stamp,
    /// The record it belongs to.
    pub subject: String,
    /// The field.
    pub field: String,
    /// The value, as JSON; `null` says nothing.
    pub value: String,
    /// The values its maker saw and replaced. A value that nobody replaced
    /// still stands: two of them are two edits that did not know of each other.
    pub replaces: Vec<Dot>,
}

/// Stands in a change for a value that was here and was not given: nobody sees it again, and
/// what replaced it still does.
pub const GONE: &str = "{\"gone\":true}";

impl Dot {
    fn write(&self) -> String {
        format!("{}:{}", self.device, self.sequence)
    }

    fn read(text: &str) -> Option<Self> {
        let (device, sequence) = text.rsplit_once(':')?;
        Some(Self { device: device.to_owned(), sequence: sequence.parse().ok()? })
    }
}

/// Writes dots as `device:number`, blanks between.
pub(super) fn write_dots(dots: &[Dot]) -> String {
    dots.iter().map(Dot::write).collect::<Vec<_>>().join(" ")
}

/// Reads what [`write_dots`] wrote.
pub(super) fn read_dots(text: &str) -> Vec<Dot> {
    text.split(' ').filter_map(Dot::read).collect()
}

impl Change {
    /// Whether its value was here and was not given.
    pub fn is_gone(&self) -> bool {
        self.value == GONE
    }

    /// Whether another change of the same name is the same but for its value.
    pub(super) fn is_but_for_its_value(&self, other: &Self) -> bool {
        let of = |change: &Self| (change.stamp, change.subject.clone(), change.field.clone(), change.replaces.clone());
        of(self) == of(other)
    }

    /// The columns of a change, in the order of [`Self::from_row`].
    pub(super) const COLUMNS: &'static str = "device, device_seq, stamp, subject, field, value, replaces, crc";

    /// A sum over everything it says, so that a flipped bit is seen.
    pub fn checksum(&self) -> u32 {
        let mut sum = crc32fast::Hasher::new();
        for part in [
            self.dot.device.as_bytes(),
            &self.dot.sequence.to_le_bytes(),
            &self.stamp.raw().to_le_bytes(),
            self.subject.as_bytes(),
            &[0],
            self.field.as_bytes(),
            &[0],
            self.value.as_bytes(),
            &[0],
            write_dots(&self.replaces).as_bytes(),
        ] {
            sum.update(part);
        }
        sum.finalize()
    }

    /// Reads a row; the second value says whether its checksum holds.
    pub(super) fn from_row(row: &Row<'_>) -> rusqlite::Result<(Self, bool)> {
        let change = Self {
            dot: Dot { device: row.get(0)?, sequence: row.get(1)? },
            stamp: Stamp::from_raw(row.get(2)?),
            subject: row.get(3)?,
            field: row.get(4)?,
            value: row.get(5)?,
            replaces: read_dots(&row.get::<_, String>(6)?),
        };
        let holds = i64::from(change.checksum()) == row.get::<_, i64>(7)?;
        Ok((change, holds))
    }
}
