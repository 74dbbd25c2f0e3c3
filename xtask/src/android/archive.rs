//! Zips, under whatever ending: jar, aar, apk.

use std::{
    fs::File,
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
/// memory where they lie are added as they are, all others made small. Written
/// anew as a whole: what is appended to another program's archive tells twice,
/// and differently, how it was packed.
pub(crate) fn extend(from: &Path, to: &Path, added: &[Entry]) -> Result<(), Stop> {
    let source = File::open(from).map_err(|error| Stop::at(from, &error))?;
    let target = File::create(to).map_err(|error| Stop::at(to, &error))?;
    write(source, target, added).map_err(|error| Stop::new(format!("{}: {error}", to.display())))
}

fn write(source: File, target: File, added: &[Entry]) -> Result<(), ZipError> {
    let mut source = ZipArchive::new(source)?;
    let mut target = ZipWriter::new(target);
    for index in 0..source.len() {
        target.raw_copy_file(source.by_index_raw(index)?)?;
    }
    for (name, bytes) in added {
        let method = if name.ends_with(".so") { CompressionMethod::Stored } else { CompressionMethod::Deflated };
        target.start_file(name.as_str(), SimpleFileOptions::default().compression_method(method))?;
        target.write_all(bytes)?;
    }
    target.finish().map(|_| ())
}

#[cfg(test)]
mod tests {
    use std::fs;

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
