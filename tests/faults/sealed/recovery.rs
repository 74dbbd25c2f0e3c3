//! A key that is lost: its code opens the record, and nothing else does.

use drawwell_core::app::{recovery, App};
use drawwell_core::journal::{Journal, Key};
use drawwell_core::screen::shapes::{Clock, Effect, Event, Opening, Place, Screen, Secret};
use drawwell_core::trouble::Kind;

use super::*;

fn clock() -> Clock {
    Clock { unix_milliseconds: NOW.unix_milliseconds(), zone: "UTC".to_owned(), offset_seconds: None }
}

fn app(path: &Path, key: Option<&Key>) -> Result<App, drawwell_core::trouble::Trouble> {
    let opening = Opening { device: String::new(), language: "en".to_owned(), look_around: false };
    App::open_with_key(path.to_owned(), key.cloned(), opening, &clock())
}

/// A sealed record of twenty notes.
fn record(folder: &tempfile::TempDir, key: &Key) -> PathBuf {
    let path = folder.path().join("record.drawwell");
    drop(app(&path, Some(key)).unwrap());
    let mut journal = Journal::open_with_key(&path, "", Some(key), NOW).unwrap().journal;
    write(&mut journal, 0..20);
    path
}

fn code_on(screen: &Screen) -> String {
    let Screen::Findings { findings, .. } = screen else { panic!("{screen:?}") };
    let section = findings.sections.iter().find(|section| section.key == "code").unwrap();
    let words: Vec<&str> = section.lines.iter().map(|line| line.split_once(". ").unwrap().1).collect();
    words.join(" ")
}

fn typed(code: &str) -> Event {
    Event::EnterSecret { id: "recovery-code".to_owned(), secret: Secret { words: code.to_owned() } }
}

#[test]
fn the_code_opens_a_record_whose_key_is_lost() {
    let (folder, key) = (tempfile::tempdir().unwrap(), Key::make().unwrap());
    let path = record(&folder, &key);
    let mut open = app(&path, Some(&key)).unwrap();
    open.update(Event::Go { place: Place::Recovery }, &clock()).unwrap();
    let code = code_on(&open.update(Event::MakeRecovery, &clock()).unwrap().screen);
    assert_eq!(code.split(' ').count(), 6);
    // It is shown this once.
    open.update(Event::Back, &clock()).unwrap();
    let again = open.update(Event::Go { place: Place::Recovery }, &clock()).unwrap();
    assert!(!format!("{:?}", again.screen).contains(code.split(' ').next().unwrap()));
    drop(open);
    assert_eq!(holding(folder.path(), code.as_bytes()), [""; 0].map(PathBuf::from));
    assert_eq!(holding(folder.path(), key.figures().as_bytes()), [""; 0].map(PathBuf::from));
    assert_eq!(recovery::open(&path, "six words that are not them").unwrap_err().key, "sealed-wrong-passphrase");
    assert_eq!(recovery::open(&path, &format!("  {} ", code.to_uppercase())).unwrap(), key);
    // Without the key one page asks for the code, and no other event is taken.
    let mut locked = app(&path, None).unwrap();
    assert!(locked.is_locked());
    assert_eq!(locked.update(Event::Start, &clock()).unwrap_err().kind, Kind::Locked);
    assert_eq!(locked.import_file(&mut &b""[..], &clock()).unwrap_err().kind, Kind::Locked);
    assert_eq!(
        locked.export(&drawwell_core::screen::shapes::Export::Record, &mut Vec::new(), &clock()).unwrap_err().kind,
        Kind::Locked
    );
    locked.maintain(&clock()).unwrap();
    locked
        .finish_maintenance(Err(drawwell_core::trouble::Trouble::new(Kind::Damaged, "trouble-damaged")), &clock())
        .unwrap();
    assert!(locked.update(Event::Wake, &clock()).unwrap().effects.is_empty(), "no alarm is let go");
    let page = locked.show(&Place::Kit, &clock()).unwrap();
    assert!(matches!(page, Screen::Form { .. }));
    assert_eq!(page.frame().notices, [], "it says nothing of a disk that is full");
    assert_eq!(locked.update(typed("wrong"), &clock()).unwrap_err().key, "sealed-wrong-passphrase");
    let effects = locked.update(typed(&code), &clock()).unwrap().effects;
    assert!(effects.contains(&Effect::KeepKey));
    assert_eq!(locked.key_in_use().unwrap(), key);
    assert!(!locked.is_locked());
    drop(locked);
    assert_eq!(texts(&Journal::open_with_key(&path, "", Some(&key), NOW).unwrap().journal), 20);
    assert!(names(folder.path()).iter().all(|name| !name.contains(".damaged-")), "{:?}", names(folder.path()));
}

#[test]
fn another_code_takes_the_place_of_the_one_before() {
    let (folder, key) = (tempfile::tempdir().unwrap(), Key::make().unwrap());
    let path = record(&folder, &key);
    let mut open = app(&path, Some(&key)).unwrap();
    open.update(Event::Go { place: Place::Recovery }, &clock()).unwrap();
    let first = code_on(&open.update(Event::MakeRecovery, &clock()).unwrap().screen);
    let second = code_on(&open.update(Event::MakeRecovery, &clock()).unwrap().screen);
    assert_ne!(first, second);
    assert!(recovery::open(&path, &first).is_err());
    assert_eq!(recovery::open(&path, &second).unwrap(), key);
}

/// The file beside the record may be of a record that lay there before.
#[test]
fn a_code_of_another_record_opens_nothing() {
    let (folder, key) = (tempfile::tempdir().unwrap(), Key::make().unwrap());
    let path = record(&folder, &key);
    let mut open = app(&path, Some(&key)).unwrap();
    open.update(Event::Go { place: Place::Recovery }, &clock()).unwrap();
    let code = code_on(&open.update(Event::MakeRecovery, &clock()).unwrap().screen);
    drop(open);
    let (other, new) = (tempfile::tempdir().unwrap(), Key::make().unwrap());
    let made_new = record(&other, &new);
    std::fs::copy(&made_new, &path).unwrap();
    let trouble = recovery::open(&path, &code).unwrap_err();
    assert_eq!((trouble.kind, trouble.key), (Kind::Locked, "trouble-other-key"));
    assert_eq!(texts(&Journal::open_with_key(&path, "", Some(&new), NOW).unwrap().journal), 20);
}

#[test]
fn where_no_code_was_made_the_record_stays_closed_and_that_is_said() {
    let (folder, key) = (tempfile::tempdir().unwrap(), Key::make().unwrap());
    let path = record(&folder, &key);
    assert_eq!(recovery::open(&path, "any words").unwrap_err().key, "recovery-none");
    assert_eq!(app(&path, None).unwrap_err().key, "trouble-no-key");
}

/// Where the host keeps no key: sealed by the person's choice, the code is asked for at each start.
#[test]
fn without_a_key_store_a_record_is_sealed_with_a_code() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.drawwell");
    drop(app(&path, None).unwrap());
    write(&mut Journal::open(&path, "", NOW).unwrap().journal, 0..20);
    let mut open = app(&path, None).unwrap();
    open.update(Event::Go { place: Place::Recovery }, &clock()).unwrap();
    let code = code_on(&open.update(Event::SealWithCode, &clock()).unwrap().screen);
    assert_eq!(open.update(Event::SealWithCode, &clock()).unwrap_err().key, "recovery-sealed-already");
    open.maintain(&clock()).unwrap();
    drop(open);
    assert_eq!(holding(folder.path(), SENTENCE), [""; 0].map(PathBuf::from));
    let mut locked = app(&path, None).unwrap();
    assert!(locked.is_locked());
    locked.update(typed(&code), &clock()).unwrap();
    let key = locked.key_in_use().unwrap();
    drop(locked);
    assert_eq!(texts(&Journal::open_with_key(&path, "", Some(&key), NOW).unwrap().journal), 20);
}

/// The code of a record goes with it: a new record that only that code could open would be lost
/// at the next start.
#[test]
fn what_is_begun_after_erasing_a_record_that_a_code_opens_can_be_opened() {
    for by_start in [false, true] {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("record.drawwell");
        let mut open = app(&path, None).unwrap();
        open.update(Event::Go { place: Place::Recovery }, &clock()).unwrap();
        let code = code_on(&open.update(Event::SealWithCode, &clock()).unwrap().screen);
        if by_start {
            drop(open);
            open = app(&path, None).unwrap();
            open.update(typed(&code), &clock()).unwrap();
        }
        open.update(Event::EraseRecord, &clock()).unwrap();
        open.update(Event::Start, &clock()).unwrap();
        drop(open);
        assert!(!recovery::is_there(&path));
        let again = app(&path, None).unwrap();
        assert!(!again.is_locked(), "{by_start}");
    }
}

#[test]
fn while_no_code_was_made_visit_says_what_a_lost_key_loses() {
    let (folder, key) = (tempfile::tempdir().unwrap(), Key::make().unwrap());
    let path = record(&folder, &key);
    let mut open = app(&path, Some(&key)).unwrap();
    let says = |open: &mut drawwell_core::app::App| {
        let screen = open.update(Event::Go { place: Place::Visit }, &clock()).unwrap().screen;
        screen.frame().notices.iter().any(|notice| notice.key == "no-recovery")
    };
    assert!(says(&mut open));
    open.update(Event::MakeRecovery, &clock()).unwrap();
    assert!(!says(&mut open));
}

/// What is erased is erased with its code.
#[test]
fn erasing_takes_the_code_with_it_and_the_new_record_is_sealed() {
    let (folder, key) = (tempfile::tempdir().unwrap(), Key::make().unwrap());
    let path = record(&folder, &key);
    let mut open = app(&path, Some(&key)).unwrap();
    open.update(Event::MakeRecovery, &clock()).unwrap();
    assert!(recovery::is_there(&path));
    open.update(Event::EraseRecord, &clock()).unwrap();
    assert!(!recovery::is_there(&path));
    drop(open);
    assert!(recovery::is_sealed(&path));
}
