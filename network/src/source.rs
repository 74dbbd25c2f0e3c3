//! What is taken in: desks' folders, family files, records in the exchange form. Each is opened
//! as a journal of its own in a private folder that goes when it was read; what it came from is
//! never written to.

use std::fs;
use std::path::{Path, PathBuf};

use drawwell_core::gather::Record;
use drawwell_core::journal::{is_sealed, Journal};
use drawwell_core::record::{text, Session, SETTINGS};
use drawwell_core::share::file_kind::{self, FileKind};
use drawwell_core::share::{exchange, family_file, sealed};
use drawwell_core::time::{Instant, Zone};
use drawwell_core::trouble::{Kind as TroubleKind, Trouble};
use sha2::{Digest, Sha256};
use tempfile::TempDir;

use crate::pseudonym::hex;
use crate::trouble::Stop;

/// Where families lie in a desk's folder, and how their files are called.
const FAMILIES: &str = "families";
const START: &str = "family-";
const ENDING: &str = ".drawwell";
/// The name under which copies are opened; nothing is written under it.
const DEVICE: &str = "network";

/// A family's record, open.
#[derive(Debug)]
pub struct Opened {
    /// What the family calls itself.
    pub family: String,
    /// Its journal.
    pub journal: Journal,
    /// When it was shared: nothing later is known.
    pub as_of: Instant,
    /// Its record's last change.
    pub changed: Instant,
    /// Where the copy lies, as long as this lives.
    folder: TempDir,
}

impl Opened {
    /// The record as of when it was shared, or as of an earlier present.
    ///
    /// # Errors
    /// Where it can't be read.
    pub fn record(&self) -> Result<Record<'_>, Trouble> {
        Record::new(&self.journal, self.as_of, self.zone()?)
    }

    /// The zone of the last session.
    fn zone(&self) -> Result<Zone, Trouble> {
        let last = self.journal.latest_sessions(self.as_of, 1)?.into_iter().next();
        let fields = last.map(|row| self.journal.record(&row.subject)).transpose()?.flatten();
        let session = fields.map(|(_, fields)| Session::read("", &fields));
        let at = session.and_then(|session| session.ended.or(session.started));
        Ok(at.and_then(|at| at.zone()).unwrap_or(Zone::UTC))
    }

    /// Where its copy lies.
    pub fn folder(&self) -> &Path {
        self.folder.path()
    }
}

/// A file that may hold a family.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Source {
    /// Where it lies.
    pub path: PathBuf,
}

/// The files of what was named: a file, a folder of files, a desk's folder.
///
/// # Errors
/// Where it can't be looked into.
pub fn sources(named: &Path) -> Result<Vec<Source>, Stop> {
    let failed = |why| Stop::file(named, why);
    if !fs::metadata(named).map_err(failed)?.is_dir() {
        return Ok(vec![Source { path: named.to_owned() }]);
    }
    let families = named.join(FAMILIES);
    let folder = if families.is_dir() { families } else { named.to_owned() };
    let mut found = Vec::new();
    for entry in fs::read_dir(&folder).map_err(failed)? {
        let path = entry.map_err(failed)?.path();
        let name = path.file_name().and_then(|name| name.to_str()).unwrap_or_default();
        // What SQLite and the journal keep beside a record is none.
        let beside =
            name.ends_with("-wal") || name.ends_with("-shm") || name.starts_with('.') || name.contains(".backup-");
        if path.is_file() && !beside {
            found.push(Source { path });
        }
    }
    found.sort_by(|one, other| one.path.cmp(&other.path));
    Ok(found)
}

impl Source {
    /// Its name, without its folder.
    pub fn name(&self) -> String {
        self.path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default()
    }

    /// What it holds, by its bytes: the same bytes say nothing new.
    ///
    /// # Errors
    /// Where it can't be read.
    pub fn heads(&self) -> Result<String, Trouble> {
        let mut hash = Sha256::new();
        hash.update(self.bytes(&self.path)?);
        let beside = with_ending(&self.path, "-wal");
        if beside.exists() {
            hash.update(self.bytes(&beside)?);
        }
        Ok(hex(&hash.finalize()))
    }

    fn bytes(&self, path: &Path) -> Result<Vec<u8>, Trouble> {
        let mut file = fs::File::open(path).map_err(|_| unreadable())?;
        sealed::read_whole(&mut file)
    }

    /// Opens it.
    ///
    /// # Errors
    /// Why nothing of it can be taken in.
    pub fn open(&self, now: Instant) -> Result<Opened, Trouble> {
        let bytes = self.bytes(&self.path)?;
        let folder = tempfile::tempdir().map_err(|_| Trouble::new(TroubleKind::Full, "trouble-cannot-write-file"))?;
        if family_file::is_one(&bytes) {
            return self.family_file(&bytes, folder, now);
        }
        match file_kind::detect(bytes.get(..4096).unwrap_or(&bytes)) {
            _ if is_sealed(&self.path) => Err(Trouble::new(TroubleKind::Locked, "trouble-locked")),
            FileKind::Store => self.journal(folder, now),
            FileKind::Record => self.exchange(&bytes, folder, now),
            other => Err(other.refused().unwrap_or_else(unreadable)),
        }
    }

    fn family_file(&self, bytes: &[u8], folder: TempDir, now: Instant) -> Result<Opened, Trouble> {
        let read = family_file::read(bytes)?;
        let mut journal = fresh(&folder, now)?;
        journal.merge(&read.changes, now)?;
        let changed = read.changes.iter().map(|change| change.stamp.instant()).max().unwrap_or(now);
        let as_of = read.header.made.instant().min(now);
        Ok(Opened { family: read.header.family, journal, as_of, changed, folder })
    }

    /// A journal of a desk: a copy is opened, so that the desk's own is left as it is.
    fn journal(&self, folder: TempDir, now: Instant) -> Result<Opened, Trouble> {
        let copy = place(&folder);
        for ending in ["", "-wal"] {
            let from = with_ending(&self.path, ending);
            if from.exists() {
                fs::copy(&from, with_ending(&copy, ending)).map_err(|_| unreadable())?;
            }
        }
        let opened = Journal::open(&copy, DEVICE, now)?;
        if opened.salvaged.is_some() {
            return Err(Trouble::new(TroubleKind::Damaged, "trouble-damaged"));
        }
        let journal = opened.journal;
        let name = self.name();
        let of_desk = name.strip_prefix(START).and_then(|name| name.strip_suffix(ENDING));
        let family = match of_desk {
            Some(family) => family.to_owned(),
            None => self.says(&journal)?,
        };
        let changed = journal.last_change()?.unwrap_or(now);
        Ok(Opened { family, journal, as_of: changed.min(now), changed, folder })
    }

    fn exchange(&self, bytes: &[u8], folder: TempDir, now: Instant) -> Result<Opened, Trouble> {
        let mut journal = fresh(&folder, now)?;
        let report = exchange::begin_with(&mut journal, &mut &*bytes, now)?;
        if report.taken == 0 {
            return Err(Trouble::bad("", "family-file-not-one"));
        }
        let family = self.says(&journal)?;
        let as_of = report.latest.map_or(now, |latest| latest.instant()).min(now);
        Ok(Opened { family, journal, as_of, changed: as_of, folder })
    }

    /// What a record says its family is, else its file's name.
    fn says(&self, journal: &Journal) -> Result<String, Trouble> {
        let settings = journal.record(SETTINGS)?.map(|(_, fields)| fields).unwrap_or_default();
        Ok(text(&settings, "family").map_or_else(|| format!("file:{}", self.name()), str::to_owned))
    }
}

fn place(folder: &TempDir) -> PathBuf {
    folder.path().join("copy.drawwell")
}

fn fresh(folder: &TempDir, now: Instant) -> Result<Journal, Trouble> {
    Ok(Journal::open(&place(folder), DEVICE, now)?.journal)
}

fn with_ending(path: &Path, ending: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(ending);
    PathBuf::from(name)
}

fn unreadable() -> Trouble {
    Trouble::new(TroubleKind::Missing, "trouble-cannot-read-file")
}
