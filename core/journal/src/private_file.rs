//! Files with a person's data: theirs alone from the first byte, whole or not there, and never
//! written onto a record, through a link, or into what is no file.

use std::fs::{File, OpenOptions};
use std::io::{BufWriter, Read, Write};
use std::path::{Path, PathBuf};

use crate::trouble::{Kind, Trouble};

/// Behind the name of a file that is half made; behind it stand letters nobody can foresee.
const HALF_MADE: &str = ".half-";
const LETTERS: usize = 32;
/// So end files that nobody takes for whole.
const UNFINISHED: &str = ".part";
/// How a record begins that is not sealed: as every SQLite file.
pub const PLAIN_STORE: &[u8; 16] = b"SQLite format 3\0";
/// How a record begins that is sealed.
pub const SEALED_STORE: &[u8; 4] = b"DrWl";

/// Makes a file that is not there yet, for the person alone.
///
/// # Errors
/// Where it is there, also as a link, or can't be made.
pub fn create_new(path: &Path) -> std::io::Result<File> {
    let mut options = OpenOptions::new();
    options.read(true).write(true).create_new(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    options.open(path)
}

/// Makes a folder and those it lies in, for the person alone; one that is there is closed to
/// others.
///
/// # Errors
/// Where it can't be made.
pub fn create_folder(path: &Path) -> std::io::Result<()> {
    let mut builder = std::fs::DirBuilder::new();
    builder.recursive(true);
    #[cfg(unix)]
    std::os::unix::fs::DirBuilderExt::mode(&mut builder, 0o700);
    builder.create(path)?;
    close_to_others(path, 0o700);
    Ok(())
}

/// Takes from others what they may do with a file of before; where that can't be, it stays.
pub(crate) fn close_to_others(path: &Path, mode: u32) {
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        let open = std::fs::metadata(path).is_ok_and(|meta| meta.permissions().mode() & 0o077 != 0);
        if open {
            std::fs::set_permissions(path, std::fs::Permissions::from_mode(mode)).ok();
        }
    }
    #[cfg(not(unix))]
    let _ = (path, mode);
}

/// Opens a file to be read, and nothing that is none: a pipe would wait for somebody to write.
///
/// # Errors
/// `trouble-cannot-read-file`, `trouble-no-file`.
pub fn open(path: &Path) -> Result<File, Trouble> {
    let cannot = |_| Trouble::new(Kind::Missing, "trouble-cannot-read-file");
    if !std::fs::metadata(path).map_err(cannot)?.is_file() {
        return Err(Trouble::bad("file", "trouble-no-file"));
    }
    File::open(path).map_err(cannot)
}

/// A new file beside a path, under a name that nobody can foresee.
pub(crate) fn half_made_beside(path: &Path) -> std::io::Result<(File, PathBuf)> {
    let mut bytes = [0_u8; LETTERS / 2];
    getrandom::fill(&mut bytes).map_err(|_| std::io::Error::other("no randomness"))?;
    let letters: String = bytes.iter().map(|byte| format!("{byte:02x}")).collect();
    let mut name = path.as_os_str().to_owned();
    name.push(format!("{HALF_MADE}{letters}{UNFINISHED}"));
    let half = PathBuf::from(name);
    Ok((create_new(&half)?, half))
}

/// Whether a name is that of a file half made here.
pub(crate) fn is_half_made(name: &str) -> bool {
    let name = name.strip_suffix(UNFINISHED).unwrap_or_default();
    name.rsplit_once(HALF_MADE).is_some_and(|(before, letters)| {
        before.contains("drawwell") && letters.len() == LETTERS && letters.bytes().all(|b| b.is_ascii_hexdigit())
    })
}

/// Removes what a crash left half made in the folder of a file.
pub fn sweep(path: &Path) {
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    for entry in std::fs::read_dir(folder).into_iter().flatten().flatten() {
        if entry.file_name().to_str().is_some_and(is_half_made) {
            std::fs::remove_file(entry.path()).ok();
        }
    }
}

/// Writes a file that is whole or not there: beside its place, and then moved. What lies there
/// is replaced, a link too and never what it leads to; a record is not, nor what is no file.
///
/// # Errors
/// `trouble-cannot-write-file`, `trouble-onto-a-record`, and those of `write`.
pub fn whole_or_not<T>(
    path: &Path,
    write: impl FnOnce(&mut BufWriter<File>) -> Result<T, Trouble>,
) -> Result<T, Trouble> {
    let failed = |_| Trouble::new(Kind::Full, "trouble-cannot-write-file");
    if is_record(path) {
        return Err(Trouble::bad("file", "trouble-onto-a-record"));
    }
    if std::fs::symlink_metadata(path).is_ok_and(|there| !there.is_file() && !there.is_symlink()) {
        return Err(Trouble::bad("file", "trouble-no-file"));
    }
    sweep(path);
    let (file, half) = half_made_beside(path).map_err(failed)?;
    let mut file = BufWriter::new(file);
    let written = write(&mut file)
        .and_then(|done| file.flush().map_err(failed).map(|()| done))
        .and_then(|done| file.get_ref().sync_all().map_err(failed).map(|()| done))
        .and_then(|done| std::fs::rename(&half, path).map_err(failed).map(|()| done));
    if written.is_err() {
        std::fs::remove_file(&half).ok();
    }
    written
}

/// Whether a record or another store lies there, or at the end of a link.
fn is_record(path: &Path) -> bool {
    let mut beginning = [0_u8; 16];
    let plain = std::fs::metadata(path).is_ok_and(|meta| meta.is_file());
    plain
        && File::open(path).and_then(|mut file| file.read_exact(&mut beginning)).is_ok()
        && (beginning == *PLAIN_STORE || beginning.starts_with(SEALED_STORE))
}

/// Overwrites a file with zeros down to the disk, and removes it.
///
/// # Errors
/// Where it can't be written or removed.
pub fn wipe(path: &Path) -> std::io::Result<()> {
    let mut file = OpenOptions::new().write(true).open(path)?;
    let mut left = file.metadata()?.len();
    let zeros = [0_u8; 1 << 16];
    while left > 0 {
        let part = zeros.get(..usize::try_from(left).unwrap_or(zeros.len()).min(zeros.len())).unwrap_or(&zeros);
        file.write_all(part)?;
        left -= part.len() as u64;
    }
    file.sync_all()?;
    drop(file);
    std::fs::remove_file(path)
}
