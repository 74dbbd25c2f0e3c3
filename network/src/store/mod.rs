//! Where a network's rows lie: a folder of Parquet files, bucket by bucket.
//!
//! In: what became of some families of a bucket. Out: the files of each table, each held to what
//! was written. All rows of a family lie in one bucket, sorted by family. [`manifest`] says how a
//! bucket is written whole or not at all, [`file`] writes rows, [`ledger`] is what is kept beside
//! them, [`objects`] reaches the files.

pub mod file;
pub mod ledger;
pub mod manifest;
pub mod objects;

use std::collections::BTreeMap;
use std::path::Path;

use serde::{Deserialize, Serialize};

use crate::pseudonym::{hex, NetworkKey, Of};
use crate::table::{package, Cell, Row, Table, TABLES, VERSION};
use crate::trouble::Stop;
use ledger::{Entry, Ledger};
use manifest::{Manifest, Part};
use objects::Objects;

/// Where what the whole store is lies.
const ABOUT: &str = "store.json";
/// What the key says of itself.
const KEY_SAYS: &str = "this network";
/// Tries of a writer that others overtake.
const TRIES: u32 = 50;

/// What the whole store is.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
struct About {
    network_version: u32,
    buckets: u32,
    scope: String,
    key_check: String,
}

/// A store.
#[derive(Debug, Clone)]
pub struct Store {
    objects: Objects,
    about: About,
}

/// What a bucket is to become.
#[derive(Debug, Clone, Default)]
pub struct Change {
    /// Families whose rows are these from now on, and what is kept beside them.
    pub put: BTreeMap<String, (BTreeMap<&'static str, Vec<Row>>, Entry)>,
    /// Families whose rows go; kept beside is this, or nothing.
    pub gone: BTreeMap<String, Option<Entry>>,
}

impl Change {
    /// Whether it changes nothing.
    pub fn is_empty(&self) -> bool {
        self.put.is_empty() && self.gone.is_empty()
    }

    /// Whether a row that is there goes, or gives way to another.
    fn replaces(&self, row: &Row) -> bool {
        let family = row.first().and_then(Cell::text).unwrap_or_default();
        self.put.contains_key(family) || self.gone.contains_key(family)
    }

    /// What is kept beside the rows, after it.
    fn enter(&self, ledger: &mut Ledger) {
        ledger.0.extend(self.put.iter().map(|(family, (_, entry))| (family.clone(), entry.clone())));
        for (family, entry) in &self.gone {
            match entry {
                Some(entry) => ledger.0.insert(family.clone(), entry.clone()),
                None => ledger.0.remove(family),
            };
        }
    }
}

/// What a bucket holds, read whole.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Bucket {
    /// Rows by table.
    pub rows: BTreeMap<&'static str, Vec<Row>>,
    /// What is kept beside them.
    pub ledger: Ledger,
}

impl Store {
    /// Makes a store for a scope, or opens the one that is there.
    ///
    /// # Errors
    /// Where it is of a newer version, another key, scope or number of buckets.
    pub fn create(objects: Objects, key: &NetworkKey, scope: &str, buckets: u32) -> Result<Self, Stop> {
        if !(1..=4096).contains(&buckets) {
            return Err(Stop::refused("a store has 1 to 4096 buckets"));
        }
        let key_check = key.pseudonym(Of::Key, KEY_SAYS)?;
        let about = About { network_version: VERSION, buckets, scope: scope.to_owned(), key_check };
        let text = serde_json::to_vec_pretty(&about).map_err(|why| Stop::Json { what: ABOUT, why })?;
        if objects.put_new(ABOUT, text)? {
            let page = serde_json::to_vec_pretty(&package::package())
                .map_err(|why| Stop::Json { what: "the data package", why })?;
            objects.put("datapackage.json", page)?;
        }
        let store = Self::open(objects)?;
        match () {
            () if store.about.key_check != about.key_check => Err(Stop::refused("the store was made with another key")),
            () if store.about.scope != about.scope => {
                Err(Stop::refused(format!("the store is for {}", store.about.scope)))
            }
            () => Ok(store),
        }
    }

    /// Opens a store, to read it.
    ///
    /// # Errors
    /// Where there is none, or it is of a newer version.
    pub fn open(objects: Objects) -> Result<Self, Stop> {
        let about = objects.get(ABOUT)?.ok_or_else(|| Stop::refused("there is no store"))?;
        // A newer version may say more, so that is looked at first.
        let version: serde_json::Value =
            serde_json::from_slice(&about).map_err(|why| Stop::Json { what: ABOUT, why })?;
        if version.get("network_version").and_then(serde_json::Value::as_u64).is_none_or(|v| v > u64::from(VERSION)) {
            return Err(Stop::refused("the store was written by a newer version"));
        }
        let about = serde_json::from_slice(&about).map_err(|why| Stop::Json { what: ABOUT, why })?;
        Ok(Self { objects, about })
    }

    /// The store in a folder, to read it.
    ///
    /// # Errors
    /// As [`Self::open`].
    pub fn in_folder(folder: &Path) -> Result<Self, Stop> {
        Self::open(Objects::in_folder(folder)?)
    }

    /// Its files.
    pub fn objects(&self) -> &Objects {
        &self.objects
    }

    /// What families must have said yes to.
    pub fn scope(&self) -> &str {
        &self.about.scope
    }

    /// How many buckets it has.
    pub fn buckets(&self) -> u32 {
        self.about.buckets
    }

    /// The bucket of a pseudonym: it is as good as random already.
    pub fn bucket_of(&self, pseudonym: &str) -> u32 {
        let start = pseudonym.get(..8).and_then(|start| u32::from_str_radix(start, 16).ok()).unwrap_or(0);
        start % self.about.buckets
    }

    /// What a bucket holds now; none where it was never written. A late list is caught up with,
    /// since each generation is looked for by its name.
    ///
    /// # Errors
    /// Where it can't be read.
    pub fn manifest(&self, bucket: u32) -> Result<Option<Manifest>, Stop> {
        let listed = self.objects.list(&manifest::folder(bucket))?;
        let there = |generation| Ok(self.objects.get(&manifest::path(bucket, generation))?.is_some());
        let last = manifest::last_of(&listed, there)?;
        if last == 0 {
            return Ok(None);
        }
        let bytes = self.objects.get(&manifest::path(bucket, last))?;
        let bytes = bytes.ok_or_else(|| Stop::Damaged { file: manifest::path(bucket, last), why: "it is gone" })?;
        let read: Manifest = serde_json::from_slice(&bytes).map_err(|why| Stop::Json { what: "a manifest", why })?;
        if read.network_version > VERSION {
            return Err(Stop::refused("a bucket was written by a newer version"));
        }
        Ok(Some(read))
    }

    /// The bytes of a part, held to what was written.
    fn bytes(&self, part: &Part) -> Result<Vec<u8>, Stop> {
        let bytes = self.objects.get(&part.path)?;
        let bytes = bytes.ok_or_else(|| Stop::Damaged { file: part.path.clone(), why: "it is gone" })?;
        part.check(&bytes)?;
        Ok(bytes)
    }

    /// What is kept beside the rows of a bucket.
    ///
    /// # Errors
    /// Where it can't be read.
    pub fn ledger(&self, bucket: u32) -> Result<Ledger, Stop> {
        match self.manifest(bucket)? {
            Some(manifest) => Ledger::read(&self.bytes(&manifest.ledger)?),
            None => Ok(Ledger::default()),
        }
    }

    /// Reads a bucket whole, held to what was written: bytes, rows and their hashes.
    ///
    /// # Errors
    /// [`Stop::Damaged`], or where it can't be read.
    pub fn read(&self, bucket: u32) -> Result<Bucket, Stop> {
        match self.manifest(bucket)? {
            Some(manifest) => self.read_by(&manifest),
            None => Ok(Bucket::default()),
        }
    }

    fn read_by(&self, manifest: &Manifest) -> Result<Bucket, Stop> {
        let mut rows = BTreeMap::new();
        for table in TABLES {
            let Some(parts) = manifest.tables.get(table.name) else { continue };
            let mut all = Vec::new();
            for part in parts {
                all.extend(self.rows(table, part)?);
            }
            in_order(&mut all);
            rows.insert(table.name, all);
        }
        Ok(Bucket { rows, ledger: Ledger::read(&self.bytes(&manifest.ledger)?)? })
    }

    /// The rows of a part, held to what was written.
    fn rows(&self, table: &Table, part: &Part) -> Result<Vec<Row>, Stop> {
        let rows = file::read(table, self.bytes(part)?)?;
        part.check_rows(&rows)?;
        Ok(rows)
    }

    /// The files of a table, each held to what was written.
    ///
    /// # Errors
    /// [`Stop::Damaged`], or where they can't be read.
    pub fn files_of(&self, table: &Table) -> Result<Vec<Part>, Stop> {
        let mut found = Vec::new();
        for bucket in 0..self.about.buckets {
            let Some(manifest) = self.manifest(bucket)? else { continue };
            for part in manifest.tables.get(table.name).into_iter().flatten() {
                self.bytes(part)?;
                found.push(part.clone());
            }
        }
        Ok(found)
    }

    /// Changes a bucket: all of it or nothing. Where another writer was first it is done again
    /// on what that one wrote.
    ///
    /// # Errors
    /// Where it can't be read or written, or others were always first.
    pub fn change(&self, bucket: u32, change: &Change) -> Result<(), Stop> {
        for _ in 0..TRIES {
            let before = self.manifest(bucket)?;
            let manifest = match self.next(bucket, before.as_ref(), change) {
                // Its files went while they were read: somebody was first.
                Err(Stop::Damaged { why: "it is gone", .. })
                    if self.manifest(bucket)?.map(|m| m.generation) != before.as_ref().map(|m| m.generation) =>
                {
                    continue
                }
                other => other?,
            };
            let text = serde_json::to_vec_pretty(&manifest).map_err(|why| Stop::Json { what: "a manifest", why })?;
            if self.objects.put_new(&manifest::path(bucket, manifest.generation), text)? {
                return self.sweep(bucket, &manifest);
            }
        }
        Err(Stop::refused(format!("bucket {bucket} was always written by others first")))
    }

    /// Writes what a bucket is to become, under names of its own: nobody sees it yet. Where only
    /// new families come, their rows are written beside the others, and smaller parts that lie
    /// there with them: so each row is written about as often as its bucket doubles.
    fn next(&self, bucket: u32, before: Option<&Manifest>, change: &Change) -> Result<Manifest, Stop> {
        let mut ledger = match before {
            Some(before) => Ledger::read(&self.bytes(&before.ledger)?)?,
            None => Ledger::default(),
        };
        let has_rows = |family: &String| !matches!(ledger.0.get(family), None | Some(Entry::Withdrawn { .. }));
        let only_new = !change.put.keys().chain(change.gone.keys()).any(has_rows);
        let mut tables = BTreeMap::new();
        let name = Name::new(bucket, before.map_or(0, |before| before.generation) + 1)?;
        for table in TABLES {
            let mut parts = before.and_then(|before| before.tables.get(table.name)).cloned().unwrap_or_default();
            let new = change.put.values().filter_map(|(tables, _)| tables.get(table.name)).flatten().cloned();
            let mut rows: Vec<Row> = new.collect();
            if only_new && rows.is_empty() {
                tables.insert(table.name.to_owned(), parts);
                continue;
            }
            while let Some(last) = parts.pop_if(|last| !only_new || last.rows <= 2 * rows.len() as u64) {
                rows.extend(self.rows(table, &last)?.into_iter().filter(|row| !change.replaces(row)));
            }
            if !rows.is_empty() {
                in_order(&mut rows);
                parts.push(self.write_part(table, &name, &rows)?);
            }
            tables.insert(table.name.to_owned(), parts);
        }
        tables.retain(|_, parts: &mut Vec<Part>| !parts.is_empty());
        change.enter(&mut ledger);
        let bytes = ledger.write()?;
        let ledger = Part::of(name.of("ledger", "json"), &bytes, &[]);
        self.objects.put(&ledger.path, bytes)?;
        Ok(Manifest { network_version: VERSION, generation: name.generation, tables, ledger })
    }

    fn write_part(&self, table: &Table, name: &Name, rows: &[Row]) -> Result<Part, Stop> {
        let bytes = file::write(table, rows)?;
        let part = Part::of(name.of(table.name, "parquet"), &bytes, rows);
        self.objects.put(&part.path, bytes)?;
        Ok(part)
    }

    /// Removes what a bucket held before. A writer that is not done yet writes under a later
    /// generation, or will be refused: what it wrote is not missed.
    fn sweep(&self, bucket: u32, now: &Manifest) -> Result<(), Stop> {
        let kept: Vec<&String> = now.parts().chain([&now.ledger]).map(|part| &part.path).collect();
        for table in TABLES.iter().map(|table| table.name).chain(["ledger"]) {
            for path in self.objects.list(&folder(table, bucket))? {
                let older = generation_of_part(&path).is_some_and(|generation| generation <= now.generation);
                if older && !kept.contains(&&path) {
                    self.objects.delete(&path)?;
                }
            }
        }
        Ok(())
    }

    /// Proves that nothing of a family lies in the store: every row of its bucket is read back,
    /// and no older file of it is there.
    ///
    /// # Errors
    /// Where something is found, or can't be read.
    pub fn prove_gone(&self, pseudonym: &str) -> Result<(), Stop> {
        let bucket = self.bucket_of(pseudonym);
        let held = self.read(bucket)?;
        let of_it = |row: &Row| row.first().and_then(Cell::text) == Some(pseudonym);
        if held.rows.values().flatten().any(of_it) {
            return Err(Stop::refused("rows of a family that took its yes back are still there"));
        }
        let now = self.manifest(bucket)?;
        let kept: Vec<&String> = now.iter().flat_map(Manifest::parts).map(|part| &part.path).collect();
        let generation = now.as_ref().map_or(0, |now| now.generation);
        for table in TABLES {
            for path in self.objects.list(&folder(table.name, bucket))? {
                let older = generation_of_part(&path).is_some_and(|of| of <= generation);
                if older && !kept.contains(&&path) {
                    return Err(Stop::refused("an older file of a family that took its yes back is still there"));
                }
            }
        }
        Ok(())
    }
}

/// Where the files of a table lie.
fn folder(table: &str, bucket: u32) -> String {
    format!("{table}/network_version={VERSION}/bucket={bucket:03}")
}

/// The generation that a part was written for.
fn generation_of_part(path: &str) -> Option<u64> {
    path.rsplit('/').next()?.strip_prefix("part-")?.split('-').next()?.parse().ok()
}

/// How the files of one write are called: by their generation, and as no other's.
struct Name {
    bucket: u32,
    generation: u64,
    own: String,
}

impl Name {
    fn new(bucket: u32, generation: u64) -> Result<Self, Stop> {
        let mut own = [0; 6];
        getrandom::fill(&mut own).map_err(|_| Stop::refused("the system gives no random numbers"))?;
        Ok(Self { bucket, generation, own: hex(&own) })
    }

    fn of(&self, table: &str, ending: &str) -> String {
        format!("{}/part-{:08}-{}.{ending}", folder(table, self.bucket), self.generation, self.own)
    }
}

/// By family; within one they stay in the order in which they were worked out.
fn in_order(rows: &mut [Row]) {
    rows.sort_by(|one, other| one.first().cmp(&other.first()));
}
