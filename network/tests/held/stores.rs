//! A store is read whole or not at all, by whoever writes it, and says what is not as it was.

use std::fs;
use std::path::PathBuf;
use std::thread;

use drawwell_network::pseudonym::NetworkKey;
use drawwell_network::report::engine::Engine;
use drawwell_network::store::objects::Objects;
use drawwell_network::store::Store;
use drawwell_network::table::{Families, IntoRow};
use drawwell_network::trouble::Stop;

use crate::shared::{bare, key, put_all, store_in};

fn files(folder: &std::path::Path, of: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let mut folders = vec![folder.join(of)];
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(folder).unwrap().map(Result::unwrap) {
            match entry.path() {
                path if path.is_dir() => folders.push(path),
                path => found.push(path),
            }
        }
    }
    found.sort();
    found
}

#[test]
fn a_store_of_another_key_scope_or_a_newer_version_is_refused() {
    let folder = tempfile::tempdir().unwrap();
    store_in(folder.path(), 2);
    let objects = || Objects::in_folder(folder.path()).unwrap();
    let other = NetworkKey::from_hex(&"11".repeat(32)).unwrap();
    assert!(Store::create(objects(), &other, "network", 2).unwrap_err().to_string().contains("another key"));
    assert!(Store::create(objects(), &key(), "research", 2).unwrap_err().to_string().contains("is for network"));
    let about = folder.path().join("store.json");
    let newer =
        fs::read_to_string(&about).unwrap().replace("\"network_version\": 1", "\"network_version\": 2, \"more\": 1");
    fs::write(&about, newer).unwrap();
    assert!(Store::open(objects()).unwrap_err().to_string().contains("newer version"));
    let empty = tempfile::tempdir().unwrap();
    assert!(Store::in_folder(empty.path()).is_err());
}

#[test]
fn two_writers_at_once_lose_nothing() {
    let folder = tempfile::tempdir().unwrap();
    store_in(folder.path(), 1);
    let writers: Vec<_> = (0..4)
        .map(|writer| {
            let path = folder.path().to_owned();
            thread::spawn(move || {
                let store = Store::in_folder(&path).unwrap();
                for number in 0..6 {
                    let (_, change) = bare(writer * 100 + number, "one", Some(200), "holding");
                    store.change(0, &change).unwrap();
                }
            })
        })
        .collect();
    writers.into_iter().for_each(|writer| writer.join().unwrap());
    let store = Store::in_folder(folder.path()).unwrap();
    let held = store.read(0).unwrap();
    assert_eq!(held.rows["families"].len(), 24);
    assert_eq!(held.ledger.0.len(), 24);
    assert_eq!(store.manifest(0).unwrap().unwrap().generation, 24);
    let parts = store.files_of(&Families::TABLE).unwrap().len();
    assert_eq!(files(folder.path(), "families").len(), parts, "what was there before is gone");
}

/// Rows are sorted by family, and the same rows are the same bytes.
#[test]
fn a_bucket_is_in_order_whatever_came_first() {
    let held = |numbers: &[usize]| {
        let folder = tempfile::tempdir().unwrap();
        let store = store_in(folder.path(), 1);
        for number in numbers {
            put_all(&store, [bare(*number, "one", Some(200), "holding").1]);
        }
        // One that is put again is written with all the others.
        put_all(&store, [bare(1, "one", Some(200), "holding").1]);
        let parts = store.files_of(&Families::TABLE).unwrap();
        assert_eq!(parts.len(), 1);
        (parts[0].sha256.clone(), parts[0].row_hashes.clone())
    };
    assert_eq!(held(&[1, 2, 3, 4]), held(&[4, 2, 1, 3]));
}

#[test]
fn a_flipped_byte_is_told_wherever_it_is() {
    let folder = tempfile::tempdir().unwrap();
    let store = store_in(folder.path(), 1);
    put_all(&store, (0..20).map(|number| bare(number, "one", Some(200), "holding").1));
    for of in ["families", "trends"] {
        let file = files(folder.path(), of).remove(0);
        let whole = fs::read(&file).unwrap();
        for place in (0..whole.len()).step_by(whole.len() / 40 + 1) {
            let mut damaged = whole.clone();
            damaged[place] ^= 1;
            fs::write(&file, &damaged).unwrap();
            assert!(matches!(store.read(0), Err(Stop::Damaged { .. })), "{of}, byte {place}");
            assert!(matches!(Engine::over(&store), Err(Stop::Damaged { .. })));
        }
        fs::write(&file, &whole[..whole.len() - 1]).unwrap();
        assert!(matches!(store.read(0), Err(Stop::Damaged { .. })));
        fs::write(&file, &whole).unwrap();
    }
    store.read(0).unwrap();
}

#[test]
fn a_file_that_is_gone_is_told_and_no_report_is_made_without_it() {
    let folder = tempfile::tempdir().unwrap();
    let store = store_in(folder.path(), 2);
    for number in 0..30 {
        let (family, change) = bare(number, "one", Some(200), "holding");
        store.change(store.bucket_of(&family), &change).unwrap();
    }
    fs::remove_file(files(folder.path(), "families").remove(1)).unwrap();
    assert!(matches!(Engine::over(&store).err(), Some(Stop::Damaged { why: "it is gone", .. })));
}

/// What a killed writer left is seen by nobody, and goes with the next who writes.
#[test]
fn half_a_write_is_never_read() {
    let folder = tempfile::tempdir().unwrap();
    let store = store_in(folder.path(), 1);
    put_all(&store, [bare(1, "one", Some(200), "holding").1]);
    let before = store.read(0).unwrap();
    // Killed after its file and before its manifest.
    let left = folder.path().join("families/network_version=1/bucket=000/part-00000002-0123456789ab.parquet");
    fs::write(&left, b"half").unwrap();
    assert_eq!(store.read(0).unwrap(), before);
    put_all(&store, [bare(2, "one", Some(200), "holding").1]);
    assert!(!left.exists());
    let parts: Vec<u64> = store.files_of(&Families::TABLE).unwrap().iter().map(|part| part.rows).collect();
    assert_eq!(parts.iter().sum::<u64>(), 2);
    assert_eq!(store.read(0).unwrap().rows["families"].len(), 2);
}

/// A number that was given stays given, so that a writer whose list came late is refused.
#[test]
fn no_manifest_is_taken_away() {
    let folder = tempfile::tempdir().unwrap();
    let store = store_in(folder.path(), 1);
    for number in 0..3 {
        put_all(&store, [bare(number, "one", Some(200), "holding").1]);
    }
    assert_eq!(store.manifest(0).unwrap().unwrap().generation, 3);
    assert_eq!(files(folder.path(), "manifest").len(), 3);
}

/// However many come one by one, a bucket has few parts, and each holds more than those after it.
#[test]
fn parts_are_few_however_rows_come() {
    let folder = tempfile::tempdir().unwrap();
    let store = store_in(folder.path(), 1);
    for number in 0..70 {
        put_all(&store, [bare(number, "one", Some(200), "holding").1]);
        let parts: Vec<u64> = store.files_of(&Families::TABLE).unwrap().iter().map(|part| part.rows).collect();
        assert_eq!(parts.iter().sum::<u64>(), number as u64 + 1);
        assert!(parts.windows(2).all(|two| two[0] > 2 * two[1]), "{parts:?}");
    }
    assert_eq!(store.read(0).unwrap().rows["families"].len(), 70);
}
