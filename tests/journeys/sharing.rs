//! The record, sealed for the consultant or with a passphrase, out and in again.

use drawwell_core::journal::{Change, Journal};
use drawwell_core::record::Kind;
use drawwell_core::screen::shapes::{Clock, Effect, Event, Export, FieldKind, Place, Screen, Secret};
use drawwell_core::share::family_file;
use drawwell_core::share::sealed::card::{Card, Whose};
use drawwell_core::share::sealed::own_keys::OwnKeys;
use drawwell_core::share::sealed::{open, seal, OpenWith, SealFor};
use drawwell_core::time::{Instant, Span};
use drawwell_core::trouble::Trouble;
use drawwell_tests::person::Person;
use drawwell_tests::visiting::takes_card;

fn person() -> Person {
    Person::welcomed("2026-05-25T04:06:00+02:00", "Europe/Berlin").unwrap()
}

fn card(keys: &OwnKeys, name: &str) -> Card {
    Card {
        whose: Whose::Consultant,
        name: name.to_owned(),
        sealing_key: keys.sealing_key().unwrap(),
        signing_key: keys.signing_key().unwrap(),
    }
}

/// Takes the card in as it is scanned, and gives the consultant's record.
fn take_in(person: &mut Person, card: &Card) -> String {
    takes_card(person, &card.write()).unwrap();
    person.only("consultant").unwrap()["id"].as_str().unwrap().to_owned()
}

fn handed_over(person: &mut Person, event: Event) -> Result<Vec<u8>, Trouble> {
    let clock: Clock = person.clock().clone();
    let update = person.app()?.update(event, &clock)?;
    let Some(Effect::HandOver { what, .. }) = update.effects.first() else { panic!("{:?}", update.effects) };
    let mut file = Vec::new();
    person.app()?.export(what, &mut file, &clock)?;
    Ok(file)
}

fn note(person: &mut Person, text: &str) {
    person.send(Event::Add { kind: Kind::Note.name().to_owned(), days_back: 0 }).unwrap();
    person.enter("text", text).unwrap();
}

#[test]
fn the_card_is_taken_in_once_and_its_words_are_hers() {
    let mut person = person();
    let keys = OwnKeys::make().unwrap();
    let her = card(&keys, "Ada Marsh & co. \u{5d0}");
    take_in(&mut person, &her);
    take_in(&mut person, &her);
    let consultant = person.only("consultant").unwrap();
    assert_eq!(consultant["name"], "Ada Marsh & co. \u{5d0}");
    let Screen::Findings { findings, .. } = person.screen().unwrap() else { panic!("{:?}", person.screen()) };
    assert_eq!(findings.caption, her.words().join(" "));
    assert_eq!(findings.caption.split(' ').count(), 10);
    assert_ne!(card(&OwnKeys::make().unwrap(), "Ada").words(), her.words());
}

#[test]
fn a_card_that_is_none_or_has_lost_a_letter_is_refused() {
    let mut person = person();
    let good = card(&OwnKeys::make().unwrap(), "Ada").write();
    for (typed, key) in [
        ("hello".to_owned(), "bad-card"),
        (String::new(), "bad-card"),
        (good.replace("name=Ada&", ""), "bad-card"),
        (good.replacen("age1", "age2", 1), "bad-card-key"),
        (good[..good.len() - 6].to_owned(), "bad-card-key"),
    ] {
        assert_eq!(person.send(Event::TakeCardIn { card: typed.clone() }).unwrap_err().key, key, "{typed}");
    }
    assert!(!person.record().unwrap().contains("consultant"));
    // A mail program may have broken the line.
    let broken = format!("{}\n {}", &good[..40], &good[40..]);
    person.send(Event::TakeCardIn { card: broken }).unwrap();
}

#[test]
fn only_the_consultant_can_open_what_is_shared_with_her_and_it_is_the_whole_record() {
    let mut person = person();
    note(&mut person, "Left is back.");
    let keys = OwnKeys::make().unwrap();
    let consultant = take_in(&mut person, &card(&keys, "Ada"));
    let file = handed_over(&mut person, Event::Export { what: Export::SealedFor { consultant } }).unwrap();
    let other = OwnKeys::make().unwrap();
    let refused = open(&file, &OpenWith::Keys(vec![other.opens().to_owned()])).unwrap_err();
    assert_eq!(refused.key, "sealed-other-key");
    let plain = open(&file, &OpenWith::Keys(vec![keys.opens().to_owned()])).unwrap();
    let read = family_file::read(&plain).unwrap();
    assert!(read.changes.iter().any(|c| c.value == "\"Left is back.\""));
    assert!(!String::from_utf8(plain).unwrap().contains("AGE-SECRET-KEY"), "no secret goes along");
    assert!(read.header.sealing_key.starts_with("age1"));
}

#[test]
fn what_is_left_out_leaves_no_trace_in_the_file() {
    let mut person = person();
    note(&mut person, "Left is back.");
    person.send(Event::Add { kind: Kind::Sign.name().to_owned(), days_back: 0 }).unwrap();
    person.enter("temperature", "38.7").unwrap();
    person.enter("note", "Woke up shaking.").unwrap();
    for part in ["notes", "body"] {
        person.send(Event::LeaveOut { part: part.to_owned(), out: true }).unwrap();
    }
    let keys = OwnKeys::make().unwrap();
    let consultant = take_in(&mut person, &card(&keys, "Ada"));
    let file = handed_over(&mut person, Event::Export { what: Export::SealedFor { consultant } }).unwrap();
    let plain = open(&file, &OpenWith::Keys(vec![keys.opens().to_owned()])).unwrap();
    let text = String::from_utf8(plain).unwrap();
    for gone in ["Left is back", "Woke up", "38.7", "\"sign\"", "\"note\"", "Ada"] {
        assert!(!text.contains(gone), "{gone}");
    }
    assert_eq!(family_file::read(text.as_bytes()).unwrap().header.left_out, ["body", "notes"]);
}

/// A passphrase seals for a new phone: what is empty takes the record in, and says the same.
#[test]
fn a_passphrase_carries_the_record_to_an_empty_phone_and_to_no_other() {
    let mut one = person();
    note(&mut one, "Left is back.");
    one.send(Event::Go { place: Place::Sharing }).unwrap();
    let event = Event::EnterSecret {
        id: "seal-passphrase".into(),
        secret: Secret { words: " otter plum kite anchor ".into() },
    };
    assert!(!format!("{event:?}").contains("otter"), "printed it says nothing");
    let file = handed_over(&mut one, event).unwrap();

    let mut two = Person::at("2026-05-26T04:06:00+02:00", "Europe/Berlin").unwrap();
    two.import_file(&file).unwrap();
    let Screen::Form { form, .. } = two.screen().unwrap() else { panic!("{:?}", two.screen()) };
    assert_eq!(form.groups[0].rows[0].kind, FieldKind::Secret);
    assert!(!two.record().unwrap().contains("Left is back"));
    let open = |typed: &str| Event::EnterSecret {
        id: "open-passphrase".to_owned(),
        secret: Secret { words: typed.to_owned() },
    };
    assert_eq!(two.send(open("otter plum kite ancho")).unwrap_err().key, "sealed-wrong-passphrase");
    two.send(open("otter plum kite anchor")).unwrap();
    assert!(two.record().unwrap().contains("Left is back"));
    assert_eq!(two.send(open("otter plum kite anchor")).unwrap_err().key, "sealed-nothing-waits");

    let mut stranger = person();
    note(&mut stranger, "Somebody else.");
    stranger.import_file(&file).unwrap();
    let record = stranger.record().unwrap();
    assert_eq!(stranger.send(open("otter plum kite anchor")).unwrap_err().key, "family-file-of-another");
    assert_eq!(stranger.record().unwrap(), record, "the record is as it was");
}

#[test]
fn a_sealed_file_that_is_cut_changed_or_something_else_is_refused_and_changes_nothing() {
    let mut person = person();
    note(&mut person, "Left is back.");
    let record = person.record().unwrap();
    let keys = OwnKeys::make().unwrap();
    let mine = OwnKeys::make().unwrap();
    let file = seal(b"{\"drawwell\":\"family\"}", &SealFor::Keys(vec![keys.sealing_key().unwrap()])).unwrap();
    for bytes in [&file[..20], &file[..file.len() / 2], &file[..file.len() - 1]] {
        let refused = open(bytes, &OpenWith::Keys(vec![keys.opens().to_owned()])).unwrap_err();
        assert!(["sealed-cut", "sealed-newer"].contains(&refused.key), "{}", refused.key);
    }
    for at in [file.len() - 5, file.len() / 2] {
        let mut changed = file.clone();
        changed[at] ^= 1;
        assert!(open(&changed, &OpenWith::Keys(vec![keys.opens().to_owned()])).is_err());
    }
    assert_eq!(person.import_file(&file).unwrap_err().key, "sealed-other-key");
    let mut not_ours = age_of(b"no gzip in here", &mine);
    assert_eq!(open(&not_ours, &OpenWith::Keys(vec![mine.opens().to_owned()])).unwrap_err().key, "sealed-not-ours");
    not_ours.truncate(30);
    assert!(person.import_file(&not_ours).is_err());
    assert_eq!(person.record().unwrap(), record);
}

/// An age file with contents that were not compressed.
fn age_of(contents: &[u8], keys: &OwnKeys) -> Vec<u8> {
    use std::io::Write;
    use std::str::FromStr;
    let to = age::x25519::Recipient::from_str(&keys.sealing_key().unwrap()).unwrap();
    let encryptor = age::Encryptor::with_recipients(std::iter::once(&to as &dyn age::Recipient)).unwrap();
    let mut sealed = Vec::new();
    let mut stream = encryptor.wrap_output(&mut sealed).unwrap();
    stream.write_all(contents).unwrap();
    stream.finish().unwrap();
    sealed
}

/// A bomb: three hundred megabytes of nothing in a few hundred kilobytes.
#[test]
fn what_unpacks_to_more_than_any_record_is_let_go_while_it_is_unpacked() {
    let keys = OwnKeys::make().unwrap();
    let nothing = vec![b' '; 300 << 20];
    let bomb = seal(&nothing, &SealFor::Keys(vec![keys.sealing_key().unwrap()])).unwrap();
    assert!(bomb.len() < 1 << 20, "{}", bomb.len());
    assert_eq!(open(&bomb, &OpenWith::Keys(vec![keys.opens().to_owned()])).unwrap_err().key, "sealed-too-long");
}

/// Two gigabytes that begin as a sealed file: read no further than anything of ours.
#[test]
fn a_file_of_two_gigabytes_is_refused_before_it_is_read() {
    let mut person = person();
    let beginning: &[u8] = b"age-encryption.org/v1\n";
    let file = std::io::Read::chain(beginning, std::io::Read::take(std::io::repeat(b'x'), 2 << 30));
    let clock = person.clock().clone();
    let refused = person.app().unwrap().import_file(&mut std::io::BufReader::new(file), &clock).unwrap_err();
    assert_eq!(refused.key, "sealed-too-long");
}

/// What a fresh journal holds after it took files in, in an order.
fn merged(files: &[Vec<Change>], order: &[usize]) -> String {
    let folder = tempfile::tempdir().unwrap();
    let now = Instant::from_unix_milliseconds(1_790_000_000_000);
    let mut journal = Journal::open(&folder.path().join("j"), "desk", now).unwrap().journal;
    for file in order {
        journal.merge(&files[*file], now).unwrap();
    }
    let mut text = journal.projection_text().unwrap();
    journal
        .each_record(|id, kind, fields| {
            text += &format!("{id} {kind:?} {fields:?}\n");
            Ok(())
        })
        .unwrap();
    text
}

/// Journal merge: twice, an older after a newer, and two halves, in any order.
#[test]
fn files_taken_in_twice_or_in_any_order_say_the_same() {
    let mut phone = person();
    let keys = OwnKeys::make().unwrap();
    let consultant = take_in(&mut phone, &card(&keys, "Ada"));
    let mut files = Vec::new();
    for text in ["one", "two", "three"] {
        note(&mut phone, text);
        phone.wait(Span::hours(1)).unwrap();
        let sealed =
            handed_over(&mut phone, Event::Export { what: Export::SealedFor { consultant: consultant.clone() } })
                .unwrap();
        let plain = open(&sealed, &OpenWith::Keys(vec![keys.opens().to_owned()])).unwrap();
        files.push(family_file::read(&plain).unwrap().changes);
    }
    let newest = merged(&files, &[2]);
    assert!(newest.contains("three"));
    for order in [&[0, 1, 2][..], &[2, 1, 0], &[2, 2], &[1, 2, 0, 1]] {
        assert_eq!(merged(&files, order), newest, "{order:?}");
    }
    let (even, odd): (Vec<_>, Vec<_>) = files[2].iter().cloned().enumerate().partition(|(n, _)| n % 2 == 0);
    files.push(even.into_iter().map(|(_, c)| c).collect());
    files.push(odd.into_iter().map(|(_, c)| c).collect());
    assert_eq!(merged(&files, &[3, 4]), newest, "two halves");
    assert_eq!(merged(&files, &[4, 3]), newest, "the other half first");
}
