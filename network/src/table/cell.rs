//! A cell, and the rows made of them. Amounts are whole numbers, so that any order of adding
//! them up gives the same bits.

use sha2::{Digest, Sha256};

/// What stands in a row under a column.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Cell {
    /// Not known: why stands in the column beside it.
    Null,
    /// A whole number.
    Whole(i64),
    /// A word, or a pseudonym.
    Text(String),
}

/// A row, in the order of its table's columns.
pub type Row = Vec<Cell>;

impl From<i64> for Cell {
    fn from(whole: i64) -> Self {
        Self::Whole(whole)
    }
}

impl From<&str> for Cell {
    fn from(word: &str) -> Self {
        Self::Text(word.to_owned())
    }
}

impl From<String> for Cell {
    fn from(text: String) -> Self {
        Self::Text(text)
    }
}

impl<T: Into<Cell>> From<Option<T>> for Cell {
    fn from(known: Option<T>) -> Self {
        known.map_or(Self::Null, Into::into)
    }
}

impl Cell {
    /// The whole number that stands here, if one does.
    pub fn whole(&self) -> Option<i64> {
        match self {
            Self::Whole(whole) => Some(*whole),
            Self::Null | Self::Text(_) => None,
        }
    }

    /// The text that stands here, if one does.
    pub fn text(&self) -> Option<&str> {
        match self {
            Self::Text(text) => Some(text),
            Self::Null | Self::Whole(_) => None,
        }
    }
}

/// A hash of a row. Those of a file are added up, so that their order does not matter.
pub fn hash(row: &[Cell]) -> u64 {
    let mut hash = Sha256::new();
    for cell in row {
        match cell {
            Cell::Null => hash.update([0]),
            Cell::Whole(whole) => {
                hash.update([1]);
                hash.update(whole.to_le_bytes());
            }
            Cell::Text(text) => {
                hash.update([2]);
                hash.update((text.len() as u64).to_le_bytes());
                hash.update(text);
            }
        }
    }
    let first: [u8; 8] = hash.finalize().first_chunk().copied().unwrap_or_default();
    u64::from_le_bytes(first)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rows_that_differ_anywhere_have_other_hashes() {
        let text = |text: &str| Cell::from(text);
        let rows: [Row; 6] = [
            vec![Cell::Null],
            vec![Cell::Whole(0)],
            vec![text("")],
            vec![text("a"), text("b")],
            vec![text("ab"), text("")],
            vec![text("ab")],
        ];
        let mut hashes: Vec<u64> = rows.iter().map(|row| hash(row)).collect();
        hashes.sort_unstable();
        hashes.dedup();
        assert_eq!(hashes.len(), rows.len());
    }
}
