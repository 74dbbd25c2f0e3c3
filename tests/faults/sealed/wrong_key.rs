//! A wrong key, or none, is told as that. The record is never taken for a damaged one.

use drawwell_core::journal::{Journal, Key};
use drawwell_core::trouble::Kind;

use super::*;

/// A sealed record with a copy, closed.
fn sealed(folder: &tempfile::TempDir, key: &Key) -> PathBuf {
    let path = folder.path().join("record.drawwell");
    plain(&path, 20);
    drop(open(&path, key));
    path
}

fn state(folder: &Path) -> Vec<(String, Vec<u8>)> {
    names(folder).into_iter().zip(files(folder).iter().map(|file| std::fs::read(file).unwrap())).collect()
}

#[test]
fn another_key_or_none_opens_nothing_and_touches_nothing() {
    let (folder, key) = (tempfile::tempdir().unwrap(), Key::make().unwrap());
    let path = sealed(&folder, &key);
    let before = state(folder.path());
    for _ in 0..3 {
        let other = Key::make().unwrap();
        let trouble = Journal::open_with_key(&path, "one", Some(&other), NOW).unwrap_err();
        assert_eq!((trouble.kind, trouble.key), (Kind::Locked, "trouble-other-key"));
        let trouble = Journal::recover_with_key(&path, "one", Some(&other), NOW).unwrap_err();
        assert_eq!(trouble.kind, Kind::Locked, "it is not mended either");
        let trouble = Journal::open(&path, "one", NOW).unwrap_err();
        assert_eq!((trouble.kind, trouble.key), (Kind::Locked, "trouble-no-key"));
        assert_eq!(Journal::recover(&path, "one", NOW).unwrap_err().kind, Kind::Locked);
    }
    assert_eq!(state(folder.path()), before);
    assert_eq!(texts(&open(&path, &key)), 20);
}

/// A key that the store of the host gave only in part, or as something else.
#[test]
fn what_is_no_key_is_refused() {
    for bytes in [&[][..], &[1; 31], &[1; 33]] {
        assert_eq!(Key::from_bytes(bytes).unwrap_err().key, "bad-key");
    }
    for figures in ["", "xyz", &"0".repeat(63), &"g".repeat(64), &"ü".repeat(32)] {
        assert_eq!(Key::from_figures(figures).unwrap_err().key, "bad-key", "{figures}");
    }
    let key = Key::make().unwrap();
    assert_eq!(Key::from_figures(key.figures()).unwrap(), key);
    assert!(!format!("{key:?}").contains(&key.figures()[..8]), "and prints nothing");
}

/// Damage where it says which key it is: with the right key it opens and is made good; with
/// another it is not taken for a damaged one.
#[test]
fn damage_in_its_beginning_and_a_wrong_key_are_told_apart() {
    for place in [0, 5, 12] {
        let (folder, key) = (tempfile::tempdir().unwrap(), Key::make().unwrap());
        let path = sealed(&folder, &key);
        let mut bytes = std::fs::read(&path).unwrap();
        bytes[place] ^= 0x55;
        std::fs::write(&path, &bytes).unwrap();
        let before = state(folder.path());
        let other = Key::make().unwrap();
        assert_eq!(Journal::open_with_key(&path, "one", Some(&other), NOW).unwrap_err().kind, Kind::Locked);
        assert_eq!(
            Journal::open(&path, "one", NOW).unwrap_err().kind,
            Kind::Locked,
            "its copy says that it was sealed"
        );
        assert_eq!(state(folder.path()), before);
        assert_eq!(texts(&open(&path, &key)), 20);
    }
}

/// An old copy lies beside a record that has a new key: with the old key nothing is put back.
#[test]
fn an_old_copy_beside_a_new_key() {
    let (folder, old, new) = (tempfile::tempdir().unwrap(), Key::make().unwrap(), Key::make().unwrap());
    let path = sealed(&folder, &old);
    let other = tempfile::tempdir().unwrap();
    let made_new = other.path().join("record.drawwell");
    write(&mut open(&made_new, &new), 0..7);
    std::fs::rename(&made_new, &path).unwrap();
    let before = state(folder.path());
    assert_eq!(Journal::open_with_key(&path, "one", Some(&old), NOW).unwrap_err().kind, Kind::Locked);
    assert_eq!(state(folder.path()), before);
    assert_eq!(texts(&open(&path, &new)), 7);
    // What the old key has sealed stays as it is, and is no part of a salvage with the new one.
    let bytes = std::fs::read(&path).unwrap();
    std::fs::write(&path, &bytes[..bytes.len() - 4096]).unwrap();
    let opened = Journal::open_with_key(&path, "one", Some(&new), NOW).unwrap();
    assert_eq!(opened.salvaged.unwrap().from_backup, 0);
    assert!(texts(&opened.journal) <= 7);
}

/// A half moved record and a key that did not seal it.
#[test]
fn on_the_way_another_key_touches_nothing() {
    let (folder, key) = (tempfile::tempdir().unwrap(), Key::make().unwrap());
    let path = folder.path().join("record.drawwell");
    plain(&path, 20);
    drop(Journal::open(&path, "one", NOW).unwrap());
    let bytes = std::fs::read(&path).unwrap();
    drop(open(&path, &key));
    for (from, to) in [(".unsealed", ""), ("", ".sealing")] {
        if to.is_empty() {
            std::fs::write(format!("{}{from}", path.display()), &bytes).unwrap();
        } else {
            std::fs::rename(&path, format!("{}{to}", path.display())).unwrap();
        }
        let before = state(folder.path());
        let other = Key::make().unwrap();
        assert_eq!(Journal::open_with_key(&path, "one", Some(&other), NOW).unwrap_err().kind, Kind::Locked);
        assert_eq!(state(folder.path()), before);
    }
    assert_eq!(texts(&open(&path, &key)), 20);
}

#[test]
fn a_folder_or_what_leads_to_one_is_no_record() {
    let (folder, key) = (tempfile::tempdir().unwrap(), Key::make().unwrap());
    let path = folder.path().join("record.drawwell");
    std::fs::create_dir(&path).unwrap();
    assert_eq!(Journal::open_with_key(&path, "one", Some(&key), NOW).unwrap_err().key, "trouble-not-a-record");
    #[cfg(unix)]
    {
        let link = folder.path().join("link.drawwell");
        std::os::unix::fs::symlink(&path, &link).unwrap();
        assert_eq!(Journal::open_with_key(&link, "one", Some(&key), NOW).unwrap_err().key, "trouble-not-a-record");
    }
    assert!(path.is_dir());
}

/// The folder of the record may be a link, as a home that lies on another disk.
#[cfg(unix)]
#[test]
fn a_folder_that_is_a_link_is_followed_and_the_record_sealed_where_it_lies() {
    let (folder, key) = (tempfile::tempdir().unwrap(), Key::make().unwrap());
    let (there, link) = (folder.path().join("there"), folder.path().join("link"));
    std::fs::create_dir(&there).unwrap();
    std::os::unix::fs::symlink(&there, &link).unwrap();
    plain(&link.join("record.drawwell"), 20);
    assert_eq!(texts(&open(&link.join("record.drawwell"), &key)), 20);
    assert_eq!(holding(&there, SENTENCE), [""; 0].map(PathBuf::from));
}
