//! Zips, under whatever ending: jar, aar, apk.

use std::{
    fs::{self, File},
    io::{Cursor, Read, Seek, Write},
    path::Path,
};

use zip::{result::ZipError, write::SimpleFileOptions, CompressionMethod, ZipArchive, ZipWriter};

use crate::stop::Stop;

/// A file in an archive: its name there, and what it holds.
pub(crate) type Entry = (String, Vec<u8>);

/// Every file of an archive, in its order.
pub(crate) fn entries(path: &Path) -> Result<Vec<Entry>, Stop> {
    let file = File::open(path).map_err(|error| Stop::at(path, &error))?;
    all(file).map_err(|error| Stop::new(format!("{}: {error}", path.display())))
}

/// The same for an archive within an archive.
pub(crate) fn entries_in(name: &str, bytes: Vec<u8>) -> Result<Vec<Entry>, Stop> {
    all(Cursor::new(bytes)).map_err(|error| Stop::new(format!("{name}: {error}")))
}

fn all(bytes: impl Read + Seek) -> Result<Vec<Entry>, ZipError> {
    let mut archive = ZipArchive::new(bytes)?;
    let mut found = Vec::new();
    for index in 0..archive.len() {
        let mut file = archive.by_index(index)?;
        if file.is_file() {
            let name = file.name()?.into_owned();
            let mut bytes = Vec::new();
            file.read_to_end(&mut bytes)?;
            found.push((name, bytes));
        }
    }
    Ok(found)
}

/// Copies an archive and adds files to it; those that a phone maps into its
/// memory where they lie are added as they are, all others made small.
pub(crate) fn extend(from: &Path, to: &Path, added: &[Entry]) -> Result<(), Stop> {
    fs::copy(from, to).map_err(|error| Stop::at(from, &error))?;
    let file = File::options().read(true).write(true).open(to).map_err(|error| Stop::at(to, &error))?;
    add(file, added).map_err(|error| Stop::new(format!("{}: {error}", to.display())))
}

fn add(file: File, added: &[Entry]) -> Result<(), ZipError> {
    let mut archive = ZipWriter::new_append(file)?;
    for (name, bytes) in added {
        let method = if name.ends_with(".so") { CompressionMethod::Stored } else { CompressionMethod::Deflated };
        archive.start_file(name.as_str(), SimpleFileOptions::default().compression_method(method))?;
        archive.write_all(bytes)?;
    }
    archive.finish().map(|_| ())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_added_is_read_again_beside_what_was_there() {
        let folder = std::env::temp_dir().join(format!("drawwell-xtask-{}-archive", std::process::id()));
        fs::create_dir_all(&folder).unwrap();
        let (from, to) = (folder.join("from.zip"), folder.join("to.zip"));
        ZipWriter::new(File::create(&from).unwrap()).finish().unwrap();
        extend(&from, &to, &[("a/one.so".into(), b"one".to_vec())]).unwrap();
        extend(&to, &from, &[("two".into(), vec![7; 4000])]).unwrap();
        assert_eq!(entries(&from).unwrap(), vec![("a/one.so".into(), b"one".to_vec()), ("two".into(), vec![7; 4000])]);
        assert!(fs::metadata(&from).unwrap().len() < 1000);
        assert!(entries_in("inner", fs::read(&to).unwrap()).is_ok());
        assert!(entries_in("inner", b"no archive".to_vec()).is_err());
        fs::remove_dir_all(&folder).unwrap();
    }
}
