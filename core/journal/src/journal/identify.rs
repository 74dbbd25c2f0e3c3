//! What a file is, where its own beginning does not say it: what lies beside it does.

use std::path::Path;

use super::files::{self, with_ending, Is, SEALING, UNSEALED};
use super::key::Key;

/// Whether a record is sealed, so that it wants a key. Not to be asked of one that is open here.
pub fn is_sealed(path: &Path) -> bool {
    match files::tell(path, None) {
        Is::Sealed => true,
        // Moved over but for the last step.
        Is::Missing => {
            files::tell(&with_ending(path, SEALING), None) == Is::Sealed && !with_ending(path, UNSEALED).exists()
        }
        Is::Unknown => was_sealed(path, None),
        _ => false,
    }
}

/// Whether a file that can't be read is a record of ours, and no other file that somebody named
/// by mistake: that one stays where it is.
pub(super) fn is_ours(path: &Path) -> bool {
    let named = path.extension().is_some_and(|ending| ending == "drawwell");
    named || files::has_a_log(path) || !files::copies(path, None).is_empty() || begins_as_ours(path)
}

/// Whether what lies beside a file whose beginning is damaged says that it was sealed: with this
/// key, or with any.
pub(super) fn was_sealed(path: &Path, key: Option<&Key>) -> bool {
    let beside = files::copies_and_set_aside(path);
    match key {
        Some(key) => beside.iter().any(|file| files::tell(file, Some(key)) == Is::SealedWithIt),
        None => {
            files::with_ending(path, files::RECOVERY).exists()
                || beside.iter().any(|file| files::tell(file, None) == Is::Sealed)
        }
    }
}

/// Whether what lies at or beside a path whose beginning is damaged says that it was not sealed.
pub(super) fn was_plain(path: &Path) -> bool {
    begins_as_ours(path) || files::copies(path, None).iter().any(|copy| files::tell(copy, None) == Is::Plain)
}

fn begins_as_ours(path: &Path) -> bool {
    let mut beginning = Vec::new();
    let Ok(file) = std::fs::File::open(path) else { return false };
    if std::io::Read::read_to_end(&mut std::io::Read::take(file, 64 << 10), &mut beginning).is_err() {
        return false;
    }
    let owner = super::schema::APPLICATION_ID.to_be_bytes();
    let holds = |text: &[u8]| beginning.windows(text.len()).any(|part| part == text);
    beginning.get(68..72) == Some(&owner[..]) || holds(b"CREATE TABLE change(")
}
