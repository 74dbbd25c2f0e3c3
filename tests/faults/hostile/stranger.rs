//! Somebody who has the consultant's card and the family's id, and none of their keys.

use drawwell_core::share::family_file;
use drawwell_core::share::sealed::own_keys::OwnKeys;
use drawwell_core::share::sealed::{open, OpenWith};
use serde_json::json;

use super::{acquainted, change, family_of, forged, keys_of, person, plan_of, sealing_key_of, text_of, MADE};
use drawwell_tests::visiting::{shares, Desk};

/// Seen: the family's key at the desk was replaced, and the next plan was his to read.
#[test]
fn a_strangers_file_does_not_replace_the_family_s_key_at_the_desk() {
    let (mut person, mut desk) = acquainted();
    let (his, to) = (OwnKeys::make().unwrap(), sealing_key_of(&mut desk));
    let family = family_of(&mut person);
    let later = "2026-05-25T05:06:00.000+02:00";
    let file = forged(&family, later, &his, &[change("x", 1, "n", "kind", json!("note"))], &to);
    assert_eq!(desk.import_file(&file).unwrap_err().key, "family-key-changed");
    let clock = desk.clock.clone();
    assert_eq!(desk.caseload.import_quietly(&mut file.as_slice(), &clock).unwrap_err().key, "family-key-changed");
    let (_, plan) = plan_of(&mut desk, &[("words", &[("words", "Rest.")])]);
    assert_eq!(open(&plan, &OpenWith::Keys(vec![his.opens().to_owned()])).unwrap_err().key, "sealed-other-key");
    person.import_file(&plan).unwrap();
    // The family's own goes on being taken in.
    let card = desk.caseload.own_card().unwrap();
    desk.import_file(&shares(&mut person, &card).unwrap()).unwrap();
}

#[test]
fn a_file_that_nobody_signed_changes_no_family_that_is_known() {
    let (mut person, mut desk) = acquainted();
    let text = text_of(&family_of(&mut person), MADE, None, &[change("x", 1, "n", "kind", json!("note"))]);
    assert_eq!(desk.import_file(text.as_bytes()).unwrap_err().key, "family-file-unsigned");
}

/// Of a family that is new it may be looked at; what is signed then takes its place.
#[test]
fn what_nobody_signed_gives_way_to_what_the_family_signs() {
    let mut person = person();
    super::note(&mut person, "Left is back.");
    let mut desk = Desk::beside(&person).unwrap();
    let card = desk.caseload.own_card().unwrap();
    let file = shares(&mut person, &card).unwrap();
    let family = family_of(&mut person);
    desk.import_file(text_of(&family, MADE, None, &[change("x", 1, "n", "kind", json!("note"))]).as_bytes()).unwrap();
    assert_eq!(desk.families().unwrap().len(), 1);
    desk.import_file(&file).unwrap();
    assert_eq!(desk.families().unwrap().len(), 1);
    let folder = std::fs::read_dir(desk.folder().join("families")).unwrap();
    let record = folder.map(|f| f.unwrap().path()).find(|p| p.extension().is_some_and(|e| e == "drawwell")).unwrap();
    let journal = drawwell_core::journal::Journal::open(&record, "reader", person.now()).unwrap().journal;
    assert!(journal.changes().unwrap().iter().all(|change| change.dot.device == "thumb"));
}

#[test]
fn unsealed_files_in_a_watched_folder_are_refused() {
    let (mut person, mut desk) = acquainted();
    let clock = desk.clock.clone();
    let text = text_of("another-1", MADE, None, &[change("x", 1, "n", "kind", json!("note"))]);
    let record = person.record().unwrap();
    for file in [text.as_bytes(), record.as_bytes()] {
        assert_eq!(desk.caseload.import_quietly(&mut &*file, &clock).unwrap_err().key, "desk-unsealed");
    }
    desk.caseload.import_quietly(&mut "a letter".as_bytes(), &clock).unwrap();
    assert_eq!(desk.families().unwrap().len(), 1);
}

#[test]
fn a_file_dated_more_than_a_day_ahead_is_refused_and_one_of_a_day_is_not() {
    for (made, refused) in [("2026-05-26T04:06:00.000+02:00", false), ("2026-05-26T04:06:01.000+02:00", true)] {
        let (mut person, mut desk) = acquainted();
        let (family, keys, to) = (family_of(&mut person), keys_of(&person), sealing_key_of(&mut desk));
        let came = desk.import_file(&forged(&family, made, &keys, &[], &to));
        assert_eq!(came.err().map(|why| why.key), refused.then_some("family-file-ahead"), "{made}");
    }
}

/// A new phone's key is followed where the old one signed that.
#[test]
fn the_family_s_key_is_replaced_only_under_the_old_one() {
    let (mut person, mut desk) = acquainted();
    let (family, old, new, to) =
        (family_of(&mut person), keys_of(&person), OwnKeys::make().unwrap(), sealing_key_of(&mut desk));
    let text = text_of(&family, "2026-05-25T04:30:00.000+02:00", Some(&old), &[]);
    let says = format!("\"next_signing_key\":\"{}\",\"drawwell\"", new.signing_key().unwrap());
    let text = text.replacen("\"drawwell\"", &says, 1);
    let file = |made: &str| forged(&family, made, &new, &[], &to);
    desk.clock.unix_milliseconds += 3_600_000;
    assert_eq!(desk.import_file(&file("2026-05-25T04:20:00.000+02:00")).unwrap_err().key, "family-key-changed");
    let signed = drawwell_core::share::sealed::signed::sign(&text, "a record", &old).unwrap();
    desk.import_file(signed.as_bytes()).unwrap();
    desk.import_file(&file("2026-05-25T04:40:00.000+02:00")).unwrap();
    let by_the_old = forged(&family, "2026-05-25T04:50:00.000+02:00", &old, &[], &to);
    assert_eq!(desk.import_file(&by_the_old).unwrap_err().key, "family-key-changed");
}

/// The signature covers all of it, the key it names too.
#[test]
fn a_signed_file_that_was_changed_or_stripped_is_refused() {
    let keys = OwnKeys::make().unwrap();
    let text = text_of("a-1", MADE, Some(&keys), &[change("x", 1, "n", "kind", json!("note"))]);
    let good = drawwell_core::share::sealed::signed::sign(&text, "a record", &keys).unwrap();
    assert!(family_file::read(good.as_bytes()).is_ok());
    for (was, is) in [("\"note\"", "\"sign\""), ("a record", "a Record"), ("a-1", "a-2")] {
        let why = family_file::read(good.replacen(was, is, 1).as_bytes()).unwrap_err();
        assert_eq!(why.key, "signed-not-as-it-was", "{was}");
    }
    assert_eq!(family_file::read(text.as_bytes()).unwrap_err().key, "signed-not-as-it-was", "without its signature");
}
