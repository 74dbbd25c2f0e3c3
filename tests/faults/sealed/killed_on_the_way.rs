//! Killed at any moment while a record is moved under its key: it opens whole, plain or sealed.

use std::io::{BufRead, BufReader};
use std::process::{Command, Stdio};
use std::time::{Duration, Instant as Stopwatch};

use drawwell_core::journal::{Journal, Key};
use drawwell_core::trouble::Kind;

use super::*;

const KILLS: u32 = 1000;
const NOTES: usize = 40;

/// A record with a copy, as files to be laid out anew for each kill.
fn laid_out(from: &Path, to: &Path) {
    for file in files(from) {
        std::fs::copy(&file, to.join(file.file_name().unwrap())).unwrap();
    }
}

fn begin(path: &Path, key: &Key) -> (std::process::Child, Stopwatch) {
    let mut child = Command::new(env!("CARGO_BIN_EXE_steady-seal"))
        .arg(path)
        .arg(key.figures())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut line = String::new();
    BufReader::new(child.stdout.take().unwrap()).read_line(&mut line).unwrap();
    (child, Stopwatch::now())
}

#[test]
fn killed_a_thousand_times_it_opens_whole() {
    let template = tempfile::tempdir().unwrap();
    plain(&template.path().join("record.drawwell"), NOTES);
    let key = Key::make().unwrap();
    // How long it takes when nobody kills it.
    let whole = tempfile::tempdir().unwrap();
    laid_out(template.path(), whole.path());
    let (mut child, begun) = begin(&whole.path().join("record.drawwell"), &key);
    assert!(child.wait().unwrap().success());
    let takes = begun.elapsed();
    let mut found = std::collections::BTreeMap::new();
    for kill in 0..KILLS {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("record.drawwell");
        laid_out(template.path(), folder.path());
        let (mut child, _) = begin(&path, &key);
        std::thread::sleep(takes.mul_f64(1.1).mul_f64(f64::from(kill) / f64::from(KILLS)).max(Duration::ZERO));
        child.kill().unwrap();
        child.wait().unwrap();
        let left = names(folder.path());
        #[cfg(unix)]
        for file in files(folder.path()).iter().filter(|file| file.to_string_lossy().contains(".sealing")) {
            use std::os::unix::fs::PermissionsExt;
            assert_eq!(std::fs::metadata(file).unwrap().permissions().mode() & 0o777, 0o600, "{}", file.display());
        }
        let state = left.iter().filter(|name| name.ends_with(".sealing") || name.ends_with(".unsealed")).cloned();
        *found.entry(state.collect::<Vec<_>>()).or_insert(0) += 1;
        if kill % 3 == 0 {
            // Somebody without the key comes by first.
            match Journal::open(&path, "one", NOW) {
                Ok(opened) => {
                    assert_eq!(opened.salvaged, None, "kill {kill}: {left:?}");
                    assert_eq!(texts(&opened.journal), NOTES, "kill {kill}: {left:?}");
                }
                Err(trouble) => assert_eq!(trouble.kind, Kind::Locked, "kill {kill}: {left:?}"),
            }
        }
        let journal = open(&path, &key);
        assert_eq!(texts(&journal), NOTES, "kill {kill}: {left:?}");
        assert_eq!(journal.secret("opens").unwrap().unwrap(), "AGE-SECRET-KEY-1NOBODY ELSE");
        assert_eq!(journal.backups().len(), 1);
        drop(journal);
        assert_eq!(holding(folder.path(), SENTENCE), [""; 0].map(PathBuf::from), "kill {kill}: {left:?}");
        let now = names(folder.path());
        assert!(now.iter().all(|name| !name.ends_with(".sealing") && !name.ends_with(".unsealed")), "{now:?}");
    }
    assert!(found.len() > 3, "the kills fell into different moments of it: {found:?}");
}

/// Each state that a power cut can leave, laid out by hand.
#[test]
fn from_every_state_on_the_way_it_goes_on() {
    let key = Key::make().unwrap();
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.drawwell");
    plain(&path, NOTES);
    drop(Journal::open(&path, "one", NOW).unwrap());
    let plain_bytes = std::fs::read(&path).unwrap();
    drop(open(&path, &key));
    let sealed_bytes = std::fs::read(&path).unwrap();
    let half = &sealed_bytes[..sealed_bytes.len() / 2];
    let mut overwritten = plain_bytes.clone();
    overwritten[..plain_bytes.len() / 2].fill(0);
    type Laid<'a> = [(&'a str, Option<&'a [u8]>); 3];
    let states: [Laid<'_>; 7] = [
        // Half a sealed copy beside the plain file.
        [("", Some(&plain_bytes)), (".sealing", Some(half)), (".unsealed", None)],
        [("", Some(&plain_bytes)), (".sealing", Some(&sealed_bytes)), (".unsealed", None)],
        // The plain file has stepped aside.
        [("", None), (".sealing", Some(&sealed_bytes)), (".unsealed", Some(&plain_bytes))],
        // Its name was taken by an empty file, and the copy is lost.
        [("", Some(b"")), (".sealing", None), (".unsealed", Some(&plain_bytes))],
        // The sealed one is in its place; the plain one is whole, half overwritten, gone.
        [("", Some(&sealed_bytes)), (".sealing", None), (".unsealed", Some(&plain_bytes))],
        [("", Some(&sealed_bytes)), (".sealing", None), (".unsealed", Some(&overwritten))],
        [("", Some(&sealed_bytes)), (".sealing", None), (".unsealed", None)],
    ];
    for (number, state) in states.into_iter().enumerate() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("record.drawwell");
        for (ending, bytes) in state {
            if let Some(bytes) = bytes {
                std::fs::write(format!("{}{ending}", path.display()), bytes).unwrap();
            }
        }
        let journal = open(&path, &key);
        assert_eq!(texts(&journal), NOTES, "state {number}");
        drop(journal);
        assert_eq!(names(folder.path()), ["record.drawwell"], "state {number}");
        assert_eq!(holding(folder.path(), SENTENCE), [""; 0].map(PathBuf::from));
    }
}

/// A plain file that lies there as what was moved, and has what the sealed one has not, is kept.
#[test]
fn a_plain_file_with_more_in_it_than_the_sealed_one_is_not_overwritten() {
    let key = Key::make().unwrap();
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.drawwell");
    plain(&path, 10);
    drop(open(&path, &key));
    let other = folder.path().join("other.drawwell");
    plain(&other, 20);
    drop(Journal::open(&other, "one", NOW).unwrap());
    std::fs::rename(&other, folder.path().join("record.drawwell.unsealed")).unwrap();
    assert_eq!(texts(&open(&path, &key)), 10);
    assert!(names(folder.path()).iter().any(|name| name.starts_with("record.drawwell.damaged-")));
}
