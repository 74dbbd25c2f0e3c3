//! Damage in a sealed record: told from a wrong key, and salvaged as far as that of a plain one.

use drawwell_core::journal::{Health, Journal, Key};
use drawwell_core::trouble::Kind;
use proptest::prelude::*;
use serde_json::json;

use super::*;

const NOTES: usize = 200;

fn sealed(folder: &tempfile::TempDir, key: &Key) -> PathBuf {
    let path = folder.path().join("record.drawwell");
    write(&mut open(&path, key), 0..NOTES);
    path
}

fn opened(path: &Path, key: &Key) -> Journal {
    let mut journal = match Journal::open_with_key(path, "one", Some(key), NOW) {
        Ok(opened) => match opened.journal.verify() {
            Ok(Health::Sound | Health::ProjectionWrong) => opened.journal,
            Ok(Health::Damaged) => {
                drop(opened.journal);
                Journal::recover_with_key(path, "one", Some(key), NOW).unwrap().journal
            }
            Err(trouble) => {
                assert_eq!(trouble.kind, Kind::Damaged);
                drop(opened.journal);
                Journal::recover_with_key(path, "one", Some(key), NOW).unwrap().journal
            }
        },
        Err(trouble) => panic!("{trouble}"),
    };
    journal.rebuild().unwrap();
    journal
}

/// Without reading pages whose sum is wrong all that lies behind the first would be lost.
#[test]
fn one_damaged_page_costs_no_more_than_what_stood_in_it() {
    let (folder, key) = (tempfile::tempdir().unwrap(), Key::make().unwrap());
    let path = sealed(&folder, &key);
    let bytes = std::fs::read(&path).unwrap();
    let pages = bytes.len() / 4096;
    for page in [1, pages / 3, pages / 2, pages - 1] {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("record.drawwell");
        let mut bytes = bytes.clone();
        bytes[page * 4096 + 2000] ^= 1;
        std::fs::write(&path, &bytes).unwrap();
        let journal = opened(&path, &key);
        assert!(texts(&journal) >= NOTES - 2, "page {page} of {pages}: {}", texts(&journal));
    }
}

#[test]
fn cut_in_half_half_of_it_is_kept() {
    let (folder, key) = (tempfile::tempdir().unwrap(), Key::make().unwrap());
    let path = sealed(&folder, &key);
    let bytes = std::fs::read(&path).unwrap();
    for length in [bytes.len() / 2, bytes.len() / 2 + 1000, bytes.len() - 1, bytes.len() - 4096] {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("record.drawwell");
        std::fs::write(&path, &bytes[..length]).unwrap();
        let opened = Journal::open_with_key(&path, "one", Some(&key), NOW).unwrap();
        assert!(opened.salvaged.is_some(), "{length} of {}", bytes.len());
        assert!(texts(&opened.journal) >= NOTES / 8, "{length}: {}", texts(&opened.journal));
        assert_eq!(opened.journal.verify().unwrap(), Health::Sound);
    }
}

/// The first page is gone, and with it which key it was: the other pages say so.
#[test]
fn with_its_first_page_gone_another_key_touches_nothing_and_the_right_one_uses_the_copy() {
    let (folder, key) = (tempfile::tempdir().unwrap(), Key::make().unwrap());
    let path = sealed(&folder, &key);
    open(&path, &key).back_up(NOW).unwrap().unwrap();
    let mut bytes = std::fs::read(&path).unwrap();
    bytes[..4096].fill(0xA5);
    std::fs::write(&path, &bytes).unwrap();
    let other = Key::make().unwrap();
    assert_eq!(Journal::open_with_key(&path, "one", Some(&other), NOW).unwrap_err().kind, Kind::Locked);
    assert_eq!(Journal::open(&path, "one", NOW).unwrap_err().kind, Kind::Locked);
    assert_eq!(std::fs::read(&path).unwrap(), bytes);
    let opened = Journal::open_with_key(&path, "one", Some(&key), NOW).unwrap();
    assert!(opened.salvaged.is_some());
    assert_eq!(texts(&opened.journal), NOTES);
}

/// What a desk reads through a second connection is damage too, and told as that.
#[test]
fn damage_that_nobody_stepped_on_is_found_by_looking() {
    let (folder, key) = (tempfile::tempdir().unwrap(), Key::make().unwrap());
    let path = sealed(&folder, &key);
    let mut bytes = std::fs::read(&path).unwrap();
    let last = bytes.len() / 4096 - 1;
    bytes[last * 4096 + 3000] ^= 0x10;
    std::fs::write(&path, &bytes).unwrap();
    let journal = Journal::open_with_key(&path, "one", Some(&key), NOW).unwrap().journal;
    match journal.verify() {
        Ok(health) => assert_eq!(health, Health::Damaged),
        Err(trouble) => assert_eq!(trouble.kind, Kind::Damaged, "{trouble}"),
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(40))]
    /// Whatever bytes are overwritten, opening with the key never panics, never deletes, and
    /// what is kept is what was written; another key never sets the file aside.
    #[test]
    fn any_damage_is_survived(places in proptest::collection::vec((any::<proptest::sample::Index>(), any::<u8>()), 1..40)) {
        let (folder, key) = (tempfile::tempdir().unwrap(), Key::make().unwrap());
        let path = folder.path().join("record.drawwell");
        write(&mut open(&path, &key), 0..60);
        let mut bytes = std::fs::read(&path).unwrap();
        for (at, byte) in places {
            let at = at.index(bytes.len());
            bytes[at] = byte;
        }
        std::fs::write(&path, &bytes).unwrap();
        let other = Key::make().unwrap();
        prop_assert_eq!(Journal::open_with_key(&path, "one", Some(&other), NOW).unwrap_err().kind, Kind::Locked);
        prop_assert_eq!(&std::fs::read(&path).unwrap(), &bytes);
        let journal = opened(&path, &key);
        for number in 0..60 {
            if let Some((_, fields)) = journal.record(&format!("n{number:04}")).unwrap() {
                if let Some(text) = fields.get("text") {
                    let wrote = format!("Nobody else shall read this: {number} {}", "x".repeat(100));
                    prop_assert_eq!(text.clone(), json!(wrote));
                }
            }
        }
    }
}
