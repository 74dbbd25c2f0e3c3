//! What a bucket holds: a file each generation, put only where none of that number is. Whoever
//! reads takes the last one whole; whoever was overtaken begins anew. So a bucket is never seen
//! half written, and two writers never lose each other's work.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};

use crate::pseudonym::hex;
use crate::table::cell::hash;
use crate::table::{Row, VERSION};
use crate::trouble::Stop;

/// A file of a table as it was written.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Part {
    /// Where it lies.
    pub path: String,
    /// Rows in it.
    pub rows: u64,
    /// The sum of their hashes, as figures.
    pub row_hashes: String,
    /// Its length.
    pub bytes: u64,
    /// SHA-256 of it.
    pub sha256: String,
}

/// What a bucket holds.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Manifest {
    /// The version of the tables.
    pub network_version: u32,
    /// How often the bucket was written.
    pub generation: u64,
    /// The files of each table, by its name, the larger ones first.
    pub tables: BTreeMap<String, Vec<Part>>,
    /// What is known of the families beside their rows.
    pub ledger: Part,
}

/// Where the manifests of a bucket lie.
pub fn folder(bucket: u32) -> String {
    format!("manifest/network_version={VERSION}/bucket={bucket:03}")
}

/// Where one lies.
pub fn path(bucket: u32, generation: u64) -> String {
    format!("{}/{generation:08}.json", folder(bucket))
}

/// The generation that a manifest's path says.
pub fn generation_of(path: &str) -> Option<u64> {
    path.rsplit('/').next()?.strip_suffix(".json")?.parse().ok()
}

/// The last generation: of those that are listed, or after them, since a list may come late. 0
/// where there is none.
///
/// # Errors
/// Those of `there`, which says whether one is there by its name.
pub fn last_of(listed: &[String], there: impl Fn(u64) -> Result<bool, Stop>) -> Result<u64, Stop> {
    let mut last = listed.iter().filter_map(|path| generation_of(path)).max().unwrap_or(0);
    while there(last + 1)? {
        last += 1;
    }
    Ok(last)
}

impl Manifest {
    /// Every file that holds rows.
    pub fn parts(&self) -> impl Iterator<Item = &Part> {
        self.tables.values().flatten()
    }
}

impl Part {
    /// Of some bytes that lie there.
    pub fn of(path: String, bytes: &[u8], rows: &[Row]) -> Self {
        Self {
            path,
            rows: rows.len() as u64,
            row_hashes: format!("{:016x}", sum(rows)),
            bytes: bytes.len() as u64,
            sha256: hex(&Sha256::digest(bytes)),
        }
    }

    /// Fails where bytes are not those that were written.
    ///
    /// # Errors
    /// [`Stop::Damaged`].
    pub fn check(&self, bytes: &[u8]) -> Result<(), Stop> {
        let damaged = |why| Err(Stop::Damaged { file: self.path.clone(), why });
        match () {
            () if bytes.len() as u64 != self.bytes => damaged("its length"),
            () if hex(&Sha256::digest(bytes)) != self.sha256 => damaged("its SHA-256"),
            () => Ok(()),
        }
    }

    /// Fails where rows are not those that were written.
    ///
    /// # Errors
    /// [`Stop::Damaged`].
    pub fn check_rows(&self, rows: &[Row]) -> Result<(), Stop> {
        let same = rows.len() as u64 == self.rows && format!("{:016x}", sum(rows)) == self.row_hashes;
        if same {
            Ok(())
        } else {
            Err(Stop::Damaged { file: self.path.clone(), why: "its rows" })
        }
    }
}

fn sum(rows: &[Row]) -> u64 {
    rows.iter().fold(0, |sum: u64, row| sum.wrapping_add(hash(row)))
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that meets what it did not expect stops there")]
mod tests {
    use super::*;

    /// A list that has not heard of the last ones, of some between, or of any.
    #[test]
    fn a_list_that_comes_late_hides_no_generation() {
        for really in 0..6 {
            for heard in 0..1_u32 << really {
                let listed: Vec<String> =
                    (0..really).filter(|bit| heard >> bit & 1 == 1).map(|bit| path(3, bit + 1)).collect();
                let there = |generation| Ok((1..=really).contains(&generation));
                assert_eq!(last_of(&listed, there).unwrap(), really);
            }
        }
    }
}
