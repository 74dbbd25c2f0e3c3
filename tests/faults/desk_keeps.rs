//! The desk loses nothing: it makes safety copies of its own journal and its families', tells of
//! a family's record that was damaged, and a plan opens on every phone of a family.

use std::path::{Path, PathBuf};

use drawwell_core::caseload::Caseload;
use drawwell_core::journal::{Journal, Key};
use drawwell_core::screen::shapes::{Clock, Event, Opening, Place, Screen};
use drawwell_core::share::sealed::card::{Card, Whose};
use drawwell_core::share::sealed::own_keys::OwnKeys;
use drawwell_core::share::sealed::{self, OpenWith};
use drawwell_core::time::{Instant, Span};
use drawwell_core::trouble::Kind;
use drawwell_tests::person::Person;
use drawwell_tests::visiting::{acquainted, shares, takes_card, Desk};
use serde_json::json;

const SALVAGED: &str = "The record here was damaged. We kept what we could read";

fn names(folder: &Path) -> Vec<String> {
    let all = std::fs::read_dir(folder).unwrap();
    let mut names: Vec<String> = all.map(|file| file.unwrap().file_name().to_string_lossy().into_owned()).collect();
    names.sort();
    names
}

fn of_families(desk: &Desk) -> Vec<PathBuf> {
    let folder = desk.folder().join("families");
    names(&folder).into_iter().filter(|name| name.ends_with(".drawwell")).map(|name| folder.join(name)).collect()
}

fn maintain(desk: &mut Desk) -> Result<(), drawwell_core::trouble::Trouble> {
    let clock = desk.clock.clone();
    desk.caseload.maintain(&clock).map(drop)
}

fn later(desk: &mut Desk, span: Span) {
    desk.clock.unix_milliseconds += span.in_milliseconds();
}

#[test]
fn its_own_journal_and_its_families_are_copied() {
    let (_, mut desk) = acquainted().unwrap();
    maintain(&mut desk).unwrap();
    let copies = |desk: &Desk| {
        let count = |folder: &Path| names(folder).iter().filter(|name| name.contains(".drawwell.backup-")).count();
        (count(desk.folder()), count(&desk.folder().join("families")))
    };
    assert_eq!(copies(&desk), (1, 1));
    maintain(&mut desk).unwrap();
    assert_eq!(copies(&desk), (1, 1), "not within six hours");
    later(&mut desk, Span::hours(7));
    maintain(&mut desk).unwrap();
    assert_eq!(copies(&desk), (2, 2));
}

/// The consultant's only keys and plans lie there.
#[test]
fn a_damaged_desk_keeps_its_keys_and_opens_what_families_share() {
    let (mut person, mut desk) = acquainted().unwrap();
    maintain(&mut desk).unwrap();
    let card = desk.caseload.own_card().unwrap();
    let own = desk.folder().join("desk.drawwell");
    drop(std::mem::replace(&mut desk.caseload, elsewhere()));
    for ending in ["-wal", "-shm"] {
        std::fs::remove_file(format!("{}{ending}", own.display())).ok();
    }
    std::fs::write(&own, vec![7_u8; 9000]).unwrap();
    desk.opened_again().unwrap();
    assert_eq!(desk.caseload.own_card().unwrap(), card);
    let file = shares(&mut person, &card).unwrap();
    desk.import_file(&file).unwrap();
    assert_eq!(desk.families().unwrap().len(), 1);
}

fn elsewhere() -> Caseload {
    let folder = tempfile::tempdir().unwrap().keep();
    let clock = Clock { unix_milliseconds: 0, zone: "UTC".to_owned(), offset_seconds: None };
    let opening = Opening { device: "desk".to_owned(), language: "en".to_owned(), look_around: false };
    Caseload::open(folder, opening, &clock).unwrap()
}

/// Seen: a family whose record was salvaged sank to the bottom of the list as if all were well.
#[test]
fn a_familys_record_that_was_damaged_is_a_reason_until_it_is_shared_again() {
    let (mut person, mut desk) = acquainted().unwrap();
    let record = of_families(&desk).pop().unwrap();
    assert!(!desk.families().unwrap()[0].1.contains(SALVAGED));
    drop(std::mem::replace(&mut desk.caseload, elsewhere()));
    let bytes = std::fs::read(&record).unwrap();
    std::fs::write(&record, &bytes[..bytes.len() / 2]).unwrap();
    desk.opened_again().unwrap();
    assert!(desk.families().unwrap()[0].1.contains(SALVAGED), "{:?}", desk.families());
    desk.opened_again().unwrap();
    assert!(desk.families().unwrap()[0].1.contains(SALVAGED), "also when it opens well the next time");
    person.wait(Span::hours(3)).unwrap();
    later(&mut desk, Span::hours(3));
    let card = desk.caseload.own_card().unwrap();
    let file = shares(&mut person, &card).unwrap();
    desk.import_file(&file).unwrap();
    assert!(!desk.families().unwrap()[0].1.contains(SALVAGED), "{:?}", desk.families());
}

/// Damage that nobody has stepped on is found by looking, and told the same way.
#[test]
fn tending_finds_a_damaged_family_and_tells_of_it() {
    let (mut person, mut desk) = acquainted().unwrap();
    person.press("place-visit").unwrap();
    maintain(&mut desk).unwrap();
    let record = of_families(&desk).pop().unwrap();
    let mut bytes = std::fs::read(&record).unwrap();
    let needle = b"thumb";
    let places: Vec<usize> =
        bytes.windows(needle.len()).enumerate().filter(|(_, part)| part == needle).map(|(at, _)| at).collect();
    assert!(!places.is_empty());
    for at in places {
        bytes[at] = b'T';
    }
    std::fs::write(&record, &bytes).unwrap();
    desk.opened_again().unwrap();
    later(&mut desk, Span::hours(7));
    maintain(&mut desk).unwrap();
    assert!(desk.families().unwrap()[0].1.contains(SALVAGED), "{:?}", desk.families());
}

/// A desk with a damaged family among hundreds, or with hundreds that are.
#[test]
fn hundreds_of_families_that_are_damaged_are_all_told() {
    const FAMILIES: usize = 200;
    let (_, mut desk) = acquainted().unwrap();
    let record = of_families(&desk).pop().unwrap();
    let now = Instant::from_unix_milliseconds(desk.clock.unix_milliseconds);
    drop(std::mem::replace(&mut desk.caseload, elsewhere()));
    let bytes = std::fs::read(&record).unwrap();
    let mut own = Journal::open(&desk.folder().join("desk.drawwell"), "desk", now).unwrap().journal;
    for number in 0..FAMILIES {
        let family = format!("made-{number:03}");
        // Cut in half, full of something else, and some that are whole.
        let damaged = match number % 3 {
            0 => bytes[..bytes.len() / 2].to_vec(),
            1 => vec![0x5a; 6000],
            _ => bytes.clone(),
        };
        std::fs::write(desk.folder().join(format!("families/family-{family}.drawwell")), damaged).unwrap();
        own.quiet_act(now, |w| {
            let id = w.new_id();
            w.set(&id, "kind", &json!("case_family"))?;
            w.set(&id, "family", &json!(family))?;
            w.set(&id, "name", &json!(family))?;
            w.set(&id, "shared", &json!({ "at": "2026-05-25T04:06:00.000+02:00", "zone": "Europe/Berlin" }))
        })
        .unwrap();
    }
    drop(own);
    desk.opened_again().unwrap();
    let listed = desk.families().unwrap();
    assert_eq!(listed.len(), FAMILIES + 1);
    let told = |at: usize| {
        let name = format!("made-{at:03}");
        listed.iter().find(|(title, ..)| *title == name).unwrap().1.contains(SALVAGED)
    };
    for number in 0..FAMILIES {
        assert_eq!(told(number), number % 3 != 2, "family {number}");
    }
}

/// A desk that is sealed keeps all of it under one key, and with another nothing is touched.
#[test]
fn a_desk_is_sealed_with_its_families() {
    let (_, mut desk) = acquainted().unwrap();
    maintain(&mut desk).unwrap();
    drop(std::mem::replace(&mut desk.caseload, elsewhere()));
    let (key, clock) = (Key::make().unwrap(), desk.clock.clone());
    let opening = || Opening { device: "desk".to_owned(), language: "en".to_owned(), look_around: false };
    let open = |key: Option<Key>| Caseload::open_with_key(desk.folder().to_owned(), key, opening(), &clock);
    drop(open(Some(key.clone())).unwrap().here(&clock).unwrap());
    let mut files: Vec<PathBuf> = of_families(&desk);
    files.extend(names(desk.folder()).iter().map(|name| desk.folder().join(name)).filter(|path| path.is_file()));
    for file in &files {
        let bytes = std::fs::read(file).unwrap();
        assert!(!bytes.windows(13).any(|part| part == b"SQLite format"), "{}", file.display());
        assert!(!bytes.windows(14).any(|part| part == b"AGE-SECRET-KEY"), "{}", file.display());
    }
    let before = names(&desk.folder().join("families"));
    assert_eq!(open(Some(Key::make().unwrap())).unwrap_err().kind, Kind::Locked);
    assert_eq!(open(None).unwrap_err().kind, Kind::Locked);
    assert_eq!(names(&desk.folder().join("families")), before);
    let mut again = open(Some(key)).unwrap();
    let Screen::List { list, .. } = again.here(&clock).unwrap().families else { panic!() };
    assert_eq!(list.groups.iter().flat_map(|group| &group.rows).count(), 1);
}

/// A plan was sealed for the phone that shared last, and the other parent could not open it.
#[test]
fn a_plan_opens_on_every_phone_of_a_family() {
    let (mut person, mut desk) = acquainted().unwrap();
    let other = OwnKeys::make().unwrap();
    let card = Card {
        whose: Whose::Phone,
        name: String::new(),
        sealing_key: other.sealing_key().unwrap(),
        signing_key: other.signing_key().unwrap(),
    };
    takes_card(&mut person, &card.write()).unwrap();
    let hers = desk.caseload.own_card().unwrap();
    person.wait(Span::minutes(5)).unwrap();
    later(&mut desk, Span::minutes(5));
    let file = shares(&mut person, &hers).unwrap();
    desk.import_file(&file).unwrap();
    let plan = desk.writes_a_plan(&[("aim", &[("aim", "600")])]).unwrap();
    let sealed_plan = desk.takes(Event::Export { what: drawwell_core::screen::shapes::Export::Plan { plan } }).unwrap();
    for keys in [&keys_of(&person), &other] {
        let opened = sealed::open(&sealed_plan, &OpenWith::Keys(vec![keys.opens().to_owned()])).unwrap();
        assert!(String::from_utf8(opened).unwrap().contains("600"));
    }
    let stranger = OwnKeys::make().unwrap();
    assert!(sealed::open(&sealed_plan, &OpenWith::Keys(vec![stranger.opens().to_owned()])).is_err());
    person.import_file(&sealed_plan).unwrap();
    person.send(Event::Go { place: Place::Visit }).unwrap();
}

fn keys_of(person: &Person) -> OwnKeys {
    let journal = Journal::open(person.path(), "thumb", person.now()).unwrap().journal;
    OwnKeys::read(&journal.secret("opens").unwrap().unwrap(), &journal.secret("signs").unwrap().unwrap()).unwrap()
}
