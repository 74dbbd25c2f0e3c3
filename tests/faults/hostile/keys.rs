//! Cards and links: no key takes another's place, and nothing is shared before the words were
//! compared.

use drawwell_core::screen::shapes::{Event, Export};
use drawwell_core::share::sealed::own_keys::OwnKeys;
use drawwell_core::share::sealed::spoken;
use drawwell_tests::visiting::{takes, takes_card};

use super::{acquainted, card, page, person};

/// Seen: one tap on a link with her sealing key and another's signing key, without a question.
#[test]
fn a_link_with_her_sealing_key_and_anothers_signing_key_changes_nothing() {
    let mut person = person();
    let (hers, his) = (OwnKeys::make().unwrap(), OwnKeys::make().unwrap());
    takes_card(&mut person, &card(&hers, "Ada").write()).unwrap();
    let record = person.record().unwrap();
    for (sealing, signing) in [(&hers, &his), (&his, &hers), (&his, &his)] {
        let mut mixed = card(&hers, "Ada");
        (mixed.sealing_key, mixed.signing_key) = (sealing.sealing_key().unwrap(), signing.signing_key().unwrap());
        person.send(Event::TakeCardIn { card: mixed.write() }).unwrap();
        let said = page(&person);
        assert!(said.contains("You already have a consultant of this name, with different keys"), "{said}");
        assert!(!said.contains(&card(&hers, "").words().join(" ")), "and the words are others");
        person.press("leave-asked").unwrap();
        assert_eq!(person.record().unwrap(), record);
    }
}

#[test]
fn a_new_key_of_hers_is_a_new_consultant_and_the_old_one_is_taken_out_and_undo_brings_it_back() {
    let mut person = person();
    let (old, new) = (OwnKeys::make().unwrap(), OwnKeys::make().unwrap());
    takes_card(&mut person, &card(&old, "Ada").write()).unwrap();
    let record = person.record().unwrap();
    takes_card(&mut person, &card(&new, "Ada").write()).unwrap();
    let lines = person.record().unwrap();
    let lines: Vec<&str> = lines.lines().filter(|line| line.contains("\"consultant\"")).collect();
    assert_eq!(lines.len(), 2);
    let with = |keys: &OwnKeys| lines.iter().find(|line| line.contains(&keys.sealing_key().unwrap())).unwrap();
    assert!(with(&old).contains("\"taken_out\":true") && with(&old).contains(&old.signing_key().unwrap()));
    assert!(!with(&new).contains("taken_out"));
    person.send(Event::Undo).unwrap();
    let taken_out = |record: &str| record.lines().filter(|line| line.contains("\"taken_out\":true")).count();
    assert_eq!(taken_out(&person.record().unwrap()), taken_out(&record));
}

#[test]
fn nothing_is_shared_before_the_words_were_the_same() {
    let (mut person, _) = acquainted();
    // As a consultant was kept who came before words were asked about.
    let consultant = person.only("consultant").unwrap()["id"].as_str().unwrap().to_owned();
    let path = person.path().to_owned();
    let now = person.now();
    let mut journal = drawwell_core::journal::Journal::open(&path, "thumb", now).unwrap().journal;
    journal.quiet_act(now, |w| w.set(&consultant, "compared", &serde_json::Value::Null)).unwrap();
    drop(journal);
    let share = Event::Export { what: Export::SealedFor { consultant: consultant.clone() } };
    assert_eq!(takes(&mut person, share.clone()).unwrap_err().key, "consultant-not-compared");
    person.send(Event::Go { place: drawwell_core::screen::shapes::Place::Consultant { id: consultant } }).unwrap();
    assert!(person.find("share-with").unwrap().is_none());
    person.press("words-same").unwrap();
    takes(&mut person, share).unwrap();
}

/// Seen: three of eight words were matched in 84 s through the number that minisign gives a key,
/// which is free to choose and of which nothing depends.
#[test]
fn nothing_that_is_free_to_choose_changes_a_word() {
    use base64::engine::general_purpose::STANDARD;
    use base64::Engine;
    let keys = OwnKeys::make().unwrap();
    let (sealing, signing) = (keys.sealing_key().unwrap(), keys.signing_key().unwrap());
    let words = spoken::words(&sealing, &signing);
    assert_eq!(words.len(), 10);
    let mut bytes = STANDARD.decode(&signing).unwrap();
    for number in 0..8 {
        bytes[2 + number] ^= 0x55;
        assert_eq!(spoken::words(&sealing, &STANDARD.encode(&bytes)), words, "the key's number, byte {number}");
    }
    assert_eq!(spoken::words(&sealing.to_uppercase(), &signing), words, "capitals");
    bytes[20] ^= 1;
    assert_ne!(spoken::words(&sealing, &STANDARD.encode(&bytes)), words, "but the key itself does");
}

/// A signature says a number of the key, too: another's card with the same one is no obstacle.
#[test]
fn a_card_with_the_number_of_her_key_does_not_lock_her_out() {
    use base64::engine::general_purpose::STANDARD;
    use base64::Engine;
    use drawwell_core::share::sealed::signed::{sign, verify};
    let (hers, his) = (OwnKeys::make().unwrap(), OwnKeys::make().unwrap());
    let (key, mut other) = (hers.signing_key().unwrap(), STANDARD.decode(his.signing_key().unwrap()).unwrap());
    other[2..10].copy_from_slice(&STANDARD.decode(&key).unwrap()[2..10]);
    let signed = sign("a plan\n", "hers", &hers).unwrap();
    let known = [STANDARD.encode(&other), key.clone()];
    assert_eq!(verify(&signed, &known).unwrap(), ("a plan\n", key.as_str()));
    assert_eq!(verify(&signed, &known[..1]).unwrap_err().key, "signed-not-as-it-was");
}

#[test]
fn both_lists_of_words_have_256_different_ones_that_are_not_in_the_other() {
    let list = |name: &str| {
        let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/src/share/sealed").join(name);
        std::fs::read_to_string(path).unwrap().lines().map(str::to_lowercase).collect::<std::collections::BTreeSet<_>>()
    };
    let (two, three) = (list("words_two_syllables.txt"), list("words_three_syllables.txt"));
    assert_eq!((two.len(), three.len(), two.intersection(&three).count()), (256, 256, 0));
    assert_eq!(list("passphrase_words.txt").len(), 7776);
    // No two of a list are one letter apart, as beach and beech are not.
    for words in [&two, &three] {
        let near = words.iter().flat_map(|one| words.iter().map(move |other| (one, other)));
        let near: Vec<_> = near.filter(|(one, other)| one < other && one_letter_apart(one, other)).collect();
        assert!(near.is_empty(), "{near:?}");
    }
}

fn one_letter_apart(one: &str, other: &str) -> bool {
    let (one, other): (Vec<char>, Vec<char>) = (one.chars().collect(), other.chars().collect());
    let same = one.iter().zip(&other).take_while(|(a, b)| a == b).count();
    let (one, other) = (&one[same..], &other[same..]);
    one.get(1..) == Some(other) || Some(one) == other.get(1..) || one.get(1..) == other.get(1..)
}

/// What a page reads out is worth 64 bits or more, and the docs say how many.
#[test]
fn the_words_that_are_compared_carry_at_least_64_bits_and_the_page_says_how_many() {
    let bits = spoken::COMPARED as u32 * 256_u32.ilog2();
    assert!(bits >= 64, "{bits}");
    let page = std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/../docs/trust.md")).unwrap();
    assert!(page.contains(&format!("They are {bits} bits of scrypt")), "{bits}");
    let keys = OwnKeys::make().unwrap();
    let words = spoken::words(&keys.sealing_key().unwrap(), &keys.signing_key().unwrap());
    assert_eq!(words.len(), spoken::COMPARED);
}
