//! Every file that belongs to a record, by its name: the record itself, what the store lays
//! beside it, its safety copies, what was set aside, and what is half moved over.

use std::io::Read;
use std::path::{Path, PathBuf};

use super::key::{self, Key, BEGINNING};
use crate::private_file::{self, PLAIN_STORE};
use crate::time::{Instant, Span};
use crate::trouble::{Kind, Trouble};

/// The store's log.
pub(super) const LOG: &str = "-wal";
/// The store's index of its log.
pub(super) const INDEX: &str = "-shm";
/// The store's other way to keep what a transaction overwrites.
const ROLLBACK: &str = "-journal";
/// A safety copy; when it was made follows.
pub(super) const BACKUP: &str = ".backup-";
/// A damaged file; when it was set aside follows.
pub(super) const ASIDE: &str = ".damaged-";
/// A sealed file that is being made out of a plain one.
pub(super) const SEALING: &str = ".sealing";
/// The plain file that a sealed one has taken the place of, until it is overwritten.
pub(super) const UNSEALED: &str = ".unsealed";
/// The key, sealed with the recovery code.
pub const RECOVERY: &str = ".recovery.age";
const HALF_MADE: &str = ".half-";

const ALL: &[&str] = &[LOG, INDEX, ROLLBACK, BACKUP, ASIDE, SEALING, UNSEALED, RECOVERY, HALF_MADE];

/// Ahead of now by more, a copy's name is wrong.
const CLOCKS_DIFFER: Span = Span::minutes(10);

/// What lies at a path, by how it begins.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Is {
    /// Nothing.
    Missing,
    /// A file without a byte.
    Empty,
    /// A store that is not sealed.
    Plain,
    /// A store that is sealed with the key that was asked about.
    SealedWithIt,
    /// A store that is sealed with another key, or of which none was asked about.
    Sealed,
    /// None of them, or damaged in its very beginning.
    Unknown,
}

/// What lies at a path. Not to be asked of a file that is open here: closing it again would
/// take the store's own lock away.
pub(super) fn tell(path: &Path, key: Option<&Key>) -> Is {
    let Ok(file) = std::fs::File::open(path) else { return Is::Missing };
    let mut beginning = Vec::new();
    let mut file = file.take(BEGINNING as u64);
    if file.read_to_end(&mut beginning).is_err() {
        return Is::Unknown;
    }
    match beginning.as_slice() {
        [] => Is::Empty,
        found if found == PLAIN_STORE => Is::Plain,
        found if key.is_some_and(|key| key.beginning() == found) => Is::SealedWithIt,
        found if key::begins_sealed(found) => Is::Sealed,
        _ => Is::Unknown,
    }
}

/// Which key a record is sealed with; none where it is not, or says so no more. Not to be asked of
/// one that is open here.
pub fn sealed_with(path: &Path) -> Option<String> {
    let read = |path: &Path| {
        let mut beginning = [0_u8; BEGINNING];
        std::fs::File::open(path).and_then(|mut file| file.read_exact(&mut beginning)).ok()?;
        key::which(&beginning)
    };
    // Moved over but for the last step, it lies beside its place still; damaged, its copies say it.
    match tell(path, None) {
        Is::Sealed => read(path),
        Is::Missing => read(&with_ending(path, SEALING)),
        Is::Unknown => copies_and_set_aside(path).iter().find_map(|file| read(file)),
        _ => None,
    }
}

/// A path with an ending added to its name.
pub(super) fn with_ending(path: &Path, ending: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(ending);
    PathBuf::from(name)
}

/// Whether a file's log holds anything.
pub(super) fn has_a_log(path: &Path) -> bool {
    std::fs::metadata(with_ending(path, LOG)).is_ok_and(|log| log.is_file() && log.len() > 0)
}

/// The folder a record lies in.
pub(super) fn folder(path: &Path) -> &Path {
    path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."))
}

/// The files whose name begins with that of a record, with what follows there.
fn beginning_with(path: &Path) -> Vec<(String, PathBuf)> {
    let Some(name) = path.file_name().and_then(|name| name.to_str()) else { return Vec::new() };
    let mut found: Vec<_> = std::fs::read_dir(folder(path))
        .into_iter()
        .flatten()
        .flatten()
        .filter_map(|entry| Some((entry.file_name().to_str()?.strip_prefix(name)?.to_owned(), entry.path())))
        .collect();
    found.sort();
    found
}

/// Everything beside a record that was made from it, and the record.
pub(super) fn all_of(path: &Path) -> Vec<PathBuf> {
    let own = |rest: &str| rest.is_empty() || ALL.iter().any(|ending| rest.starts_with(ending));
    beginning_with(path).into_iter().filter(|(rest, _)| own(rest)).map(|(_, path)| path).collect()
}

/// What a move to a sealed store left half done beside a record: the paths it was about.
pub(super) fn half_moved(path: &Path) -> Vec<PathBuf> {
    let mut found: Vec<PathBuf> = beginning_with(path)
        .into_iter()
        .filter_map(|(rest, _)| Some(rest.strip_suffix(SEALING).or(rest.strip_suffix(UNSEALED))?.to_owned()))
        .filter(|rest| rest.is_empty() || rest.starts_with(BACKUP) || rest.starts_with(ASIDE))
        .map(|rest| with_ending(path, &rest))
        .collect();
    found.dedup();
    found
}

/// Safety copies and what was set aside: what is to be sealed as the record is.
pub(super) fn copies_and_set_aside(path: &Path) -> Vec<PathBuf> {
    let kept = |rest: &str| {
        (rest.starts_with(BACKUP) || rest.starts_with(ASIDE))
            && ![INDEX, SEALING, UNSEALED].iter().any(|ending| rest.ends_with(ending))
    };
    beginning_with(path).into_iter().filter(|(rest, _)| kept(rest)).map(|(_, path)| path).collect()
}

/// The safety copies of a record, newest first. Those that are named ahead of now were made by a
/// clock that was wrong, and count as the oldest.
pub(super) fn copies(path: &Path, now: Option<Instant>) -> Vec<PathBuf> {
    let made = |(rest, path): (String, PathBuf)| Some((rest.strip_prefix(BACKUP)?.parse::<i64>().ok()?, path));
    let mut found: Vec<(i64, PathBuf)> = beginning_with(path).into_iter().filter_map(made).collect();
    let latest = now.map_or(i64::MAX, |now| now.plus(CLOCKS_DIFFER).unix_milliseconds());
    found.sort_by_key(|(made, _)| (*made > latest, std::cmp::Reverse(*made)));
    found.into_iter().map(|(_, path)| path).collect()
}

/// When a record was set aside last because it was damaged.
pub fn set_aside_last(path: &Path) -> Option<Instant> {
    let when = |(rest, _): (String, PathBuf)| {
        let rest = rest.strip_prefix(ASIDE)?;
        rest.split('-').next()?.parse().ok().map(Instant::from_unix_milliseconds)
    };
    beginning_with(path).into_iter().filter_map(when).max_by_key(|at| at.unix_milliseconds())
}

/// When a safety copy was made.
pub(super) fn made_at(copy: &Path) -> Option<Instant> {
    let name = copy.file_name()?.to_str()?;
    let (_, made) = name.rsplit_once(BACKUP)?;
    Some(Instant::from_unix_milliseconds(made.parse().ok()?))
}

/// Moves a file with its log aside, under a name that is not taken.
pub(super) fn set_aside(path: &Path, now: Instant) -> Result<PathBuf, Trouble> {
    let target = name_aside(path, now);
    let fail = |_| Trouble::new(Kind::ReadOnly, "trouble-read-only");
    std::fs::rename(path, &target).map_err(fail)?;
    for ending in [LOG, INDEX] {
        let part = with_ending(path, ending);
        if part.exists() {
            std::fs::rename(&part, with_ending(&target, ending)).map_err(fail)?;
        }
    }
    Ok(target)
}

/// A name for what is set aside now, which is not taken.
pub(super) fn name_aside(path: &Path, now: Instant) -> PathBuf {
    let mut target = with_ending(path, &format!("{ASIDE}{}", now.unix_milliseconds()));
    let mut again = 0;
    while target.exists() {
        again += 1;
        target = with_ending(path, &format!("{ASIDE}{}-{again}", now.unix_milliseconds()));
    }
    target
}

/// Erases a record's file and everything beside it that was made from it: its log, its backups,
/// what was set aside, the key under its recovery code.
///
/// # Errors
/// Where a file can't be removed; it is tried with all of them first.
pub fn erase(path: &Path) -> Result<(), Trouble> {
    let stayed = all_of(path).iter().filter(|file| std::fs::remove_file(file).is_err()).count();
    if stayed == 0 && path.file_name().is_some() {
        Ok(())
    } else {
        Err(Trouble::new(Kind::ReadOnly, "trouble-cannot-erase"))
    }
}

/// Makes what a folder says of its files last through a loss of power, where the system can.
pub(super) fn keep_folder(path: &Path) {
    if let Ok(folder) = std::fs::File::open(folder(path)) {
        folder.sync_all().ok();
    }
}

/// Overwrites a file and removes it. What a disk keeps of it out of reach stays there.
///
/// # Errors
/// Where that can't be done; then it is there still.
pub(super) fn wipe(path: &Path) -> Result<(), Trouble> {
    private_file::wipe(path).map_err(|_| Trouble::new(Kind::ReadOnly, "trouble-read-only"))
}
