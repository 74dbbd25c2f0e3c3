//! The table of limits, tried on both sides of each.

use std::time::Instant as Watch;

use drawwell_core::journal::Journal;
use drawwell_core::limits;
use drawwell_core::screen::shapes::{Event, Place};
use drawwell_core::share::sealed::card::Card;
use drawwell_core::share::sealed::own_keys::OwnKeys;
use drawwell_core::share::sealed::passphrase::{make, own};
use drawwell_core::share::sealed::{open, OpenWith, SealFor};
use drawwell_core::share::{exchange, family_file, plan, sealed};
use serde_json::{json, Value};

use super::{change, person, text_of, MADE, NOW};

fn read(changes: &[Value]) -> Result<usize, &'static str> {
    let text = text_of("a-1", MADE, None, changes);
    family_file::read(text.as_bytes()).map(|file| file.changes.len()).map_err(|why| why.key)
}

/// Seen: 4,000 heads on one field, 23 kB, 90 s.
#[test]
fn heads_of_a_field_up_to_their_limit_are_folded_in_a_moment_and_more_are_refused() {
    let heads =
        |count: usize| -> Vec<Value> { (1..=count as i64).map(|n| change("x", n, "n", "text", json!("y"))).collect() };
    assert_eq!(read(&heads(limits::HEADS)), Ok(limits::HEADS));
    assert_eq!(read(&heads(limits::HEADS + 1)), Err("family-file-limits"));
    let folder = tempfile::tempdir().unwrap();
    let mut journal = Journal::open(&folder.path().join("j"), "one", NOW).unwrap().journal;
    let file = family_file::read(text_of("a-1", MADE, None, &heads(limits::HEADS)).as_bytes()).unwrap();
    let watch = Watch::now();
    assert_eq!(journal.merge(&file.changes, NOW).unwrap().taken, limits::HEADS as u64);
    journal.act("enter", "n", NOW, |w| w.set("n", "text", &json!("settled"))).unwrap();
    assert!(watch.elapsed().as_secs() < 20, "{:?}; it took minutes", watch.elapsed());
    assert_eq!(journal.other_values("n").unwrap().len(), 0);
}

/// Seen: a value of 126 MB in 123 kB of sealed file, 2.4 GB of memory.
#[test]
fn a_value_a_line_and_a_name_up_to_their_limits_are_read() {
    let value = |bytes: usize| vec![change("x", 1, "n", "text", json!("y".repeat(bytes - 2)))];
    assert_eq!(read(&value(limits::VALUE)), Ok(1));
    assert_eq!(read(&value(limits::VALUE + 1)), Err("family-file-line"));
    let named = |bytes: usize| vec![change("x", 1, &"n".repeat(bytes), "text", json!(1))];
    assert_eq!((read(&named(limits::NAME)), read(&named(limits::NAME + 1))), (Ok(1), Err("family-file-line")));
    let deep = |levels: usize| vec![change("x", 1, "n", "f", (0..levels).fold(json!(1), |value, _| json!([value])))];
    assert_eq!((read(&deep(limits::DEPTH)), read(&deep(limits::DEPTH + 1))), (Ok(1), Err("family-file-line")));
    let numbered = |number: i64| vec![change("x", number, "n", "f", json!(1))];
    assert_eq!(
        (read(&numbered(limits::NUMBERS)), read(&numbered(limits::NUMBERS + 1))),
        (Ok(1), Err("family-file-line"))
    );
    let line = |bytes: usize| {
        let mut change = change("x", 1, "n", "f", json!(1));
        change["more"] = json!("");
        let room = bytes - change.to_string().len();
        change["more"] = json!("y".repeat(room));
        vec![change]
    };
    assert_eq!((read(&line(limits::LINE)), read(&line(limits::LINE + 1))), (Ok(1), Err("family-file-line")));
}

#[test]
fn what_one_change_replaces_and_how_many_devices_there_are_has_limits() {
    let replaces = |count: usize| {
        let mut change = change("x", 1, "n", "f", json!(1));
        change["replaces"] = (1..=count).map(|n| json!(["y", n])).collect();
        vec![change]
    };
    assert_eq!(read(&replaces(limits::HEADS)), Ok(1));
    assert_eq!(read(&replaces(limits::HEADS + 1)), Err("family-file-line"));
    let devices = |count: usize| -> Vec<Value> {
        (0..count).map(|n| change(&format!("x{n}"), 1, &format!("n{n}"), "f", json!(1))).collect()
    };
    assert_eq!(read(&devices(limits::DEVICES)), Ok(limits::DEVICES));
    assert_eq!(read(&devices(limits::DEVICES + 1)), Err("family-file-limits"));
}

#[test]
fn changes_of_a_file_have_a_limit() {
    let line = r#"{"device":"x","number":1,"stamp":65536,"subject":"n","field":"f","value":1,"replaces":[]}"#;
    let mut text = text_of("a-1", MADE, None, &[]);
    for _ in 0..limits::CHANGES {
        text.push_str(r#"{"device":"x","number":1,"stamp":1,"subject":"n","field":"f","value":1,"replaces":[]}"#);
        text.push('\n');
    }
    // The same head again and again: what is counted first is the changes.
    text.push_str(line);
    assert_eq!(family_file::read(text.as_bytes()).unwrap_err().key, "family-file-limits");
}

#[test]
fn a_sealed_file_and_what_it_unpacks_to_have_limits() {
    let keys = OwnKeys::make().unwrap();
    let sealed = |bytes: u64| {
        sealed::seal(&vec![b' '; bytes as usize], &SealFor::Keys(vec![keys.sealing_key().unwrap()])).unwrap()
    };
    let opens = || OpenWith::Keys(vec![keys.opens().to_owned()]);
    assert_eq!(open(&sealed(limits::UNPACKED), &opens()).unwrap().len() as u64, limits::UNPACKED);
    assert_eq!(open(&sealed(limits::UNPACKED + 1), &opens()).unwrap_err().key, "sealed-too-long");
    let reads =
        |bytes: u64| sealed::read_whole(&mut std::io::Read::take(std::io::repeat(b'x'), bytes)).map(|b| b.len() as u64);
    assert_eq!(reads(limits::SEALED_FILE).unwrap(), limits::SEALED_FILE);
    assert_eq!(reads(limits::SEALED_FILE + 1).unwrap_err().key, "sealed-too-long");
}

/// scrypt's N as a power of two, as the header says it (age-encryption.org/v1).
fn work_of(file: &[u8]) -> String {
    let text = String::from_utf8_lossy(&file[..file.len().min(200)]).into_owned();
    text.lines().find_map(|line| line.strip_prefix("-> scrypt ")).unwrap().split(' ').nth(1).unwrap().to_owned()
}

/// Seen: a work factor of 14 where the machine was busy.
#[test]
fn the_work_of_a_passphrase_is_the_same_on_every_machine_and_has_a_limit_when_read() {
    let ours = sealed::seal(b"x", &SealFor::Passphrase("otter plum kite anchor".into())).unwrap();
    assert_eq!(work_of(&ours), limits::WORK_MADE.to_string());
    let with = |work: u8| {
        let mut recipient = age::scrypt::Recipient::new("otter plum kite anchor".to_owned().into());
        recipient.set_work_factor(work);
        let encryptor = age::Encryptor::with_recipients(std::iter::once(&recipient as &dyn age::Recipient)).unwrap();
        let mut file = Vec::new();
        let stream = encryptor.wrap_output(&mut file).unwrap();
        let packed = flate2::write::GzEncoder::new(stream, flate2::Compression::fast());
        packed.finish().unwrap().finish().unwrap();
        file
    };
    let opens = |file: &[u8]| open(file, &OpenWith::Passphrase("otter plum kite anchor".into())).map_err(|why| why.key);
    assert_eq!(opens(&with(limits::WORK_READ)), Ok(Vec::new()));
    // No work is done for it: the header says a number.
    let mut more = String::from_utf8_lossy(&with(1)).into_owned();
    more = more.replacen(" 1\n", &format!(" {}\n", limits::WORK_READ + 1), 1);
    assert!(more.contains(&format!(" {}\n", limits::WORK_READ + 1)));
    let bytes = with(1);
    let at = bytes.windows(3).position(|part| part == b" 1\n").unwrap();
    let more = [&bytes[..at], format!(" {}\n", limits::WORK_READ + 1).as_bytes(), &bytes[at + 3..]].concat();
    assert_eq!(opens(&more), Err("sealed-too-much-work"));
}

/// Seen: a passphrase of "1".
#[test]
fn a_passphrase_is_made_up_of_words_or_strong_enough_and_is_let_go_of() {
    let made = make().unwrap();
    assert_eq!(made.split(' ').count(), limits::PASSPHRASE_WORDS);
    assert_ne!(make().unwrap(), made);
    assert!(own(&made, "f").is_ok());
    for (typed, key) in [
        ("1", "bad-passphrase-weak"),
        ("aaaaaaaaaaaaaaaaaaaa", "bad-passphrase-weak"),
        ("abcdefg abcdefg ", "bad-passphrase-weak"),
        ("abcdefghabcdefg", "bad-passphrase-weak"),
        ("  ", "bad-passphrase-empty"),
    ] {
        assert_eq!(own(typed, "f").unwrap_err().key, key, "{typed}");
    }
    assert!(own("abcdefghabcdefgh", "f").is_ok());
    let mut person = person();
    person.send(Event::Go { place: Place::Sharing }).unwrap();
    let offered = person.find("seal-with-words").unwrap().unwrap();
    let clock = person.clock().clone();
    let update = person.app().unwrap().update(offered.event, &clock).unwrap();
    let drawwell_core::screen::shapes::Effect::HandOver { what, .. } = &update.effects[0] else { panic!("a file") };
    // Nobody said where it goes; and then something else was done.
    person.send(Event::Go { place: Place::Now }).unwrap();
    let refused = person.app().unwrap().export(what, &mut Vec::new(), &clock).unwrap_err();
    assert_eq!(refused.key, "bad-passphrase-empty", "it is forgotten");
}

#[test]
fn so_many_files_wait_for_their_passphrase_at_a_desk_and_no_more() {
    let file = sealed::seal(b"x", &SealFor::Passphrase("otter plum kite anchor".into())).unwrap();
    let mut desk = drawwell_tests::visiting::Desk::beside(&person()).unwrap();
    let clock = desk.clock.clone();
    for _ in 0..limits::WAITING {
        desk.caseload.import_quietly(&mut file.as_slice(), &clock).unwrap();
    }
    assert_eq!(desk.caseload.import_quietly(&mut file.as_slice(), &clock).unwrap_err().key, "sealed-too-many-wait");
    assert_eq!(desk.import_file(&file).unwrap_err().key, "sealed-too-many-wait");
}

#[test]
fn a_line_of_the_exchange_form_and_a_value_in_it_have_limits() {
    let folder = tempfile::tempdir().unwrap();
    let mut journal = Journal::open(&folder.path().join("j"), "one", NOW).unwrap().journal;
    let mut takes = |field: &str, bytes: usize| {
        let line = format!(r#"{{"fact":"note","id":"n","{field}":"{}"}}"#, "y".repeat(bytes));
        exchange::look_in(&mut journal, &mut line.as_bytes(), NOW).unwrap().wrong.first().map(|wrong| wrong.why.key)
    };
    assert_eq!(takes("of_a_newer_version", limits::VALUE - 2), None);
    assert_eq!(takes("of_a_newer_version", limits::VALUE - 1), Some("line-too-long"));
    assert_eq!(takes("of_a_newer_version", limits::EXCHANGE_LINE as usize), Some("line-too-long"));
}

#[test]
fn a_card_and_the_name_on_it_have_limits() {
    let keys = OwnKeys::make().unwrap();
    let of_bytes = |bytes: usize| {
        let card = format!("{}&more=", super::card(&keys, "Ada").write());
        let room = bytes - card.len();
        format!("{card}{}", "y".repeat(room))
    };
    assert_eq!(Card::read(&of_bytes(limits::CARD)).unwrap().name, "Ada");
    assert_eq!(Card::read(&of_bytes(limits::CARD + 1)).unwrap_err().key, "bad-card");
    let named = |signs: usize| Card::read(&super::card(&keys, &"n".repeat(signs)).write()).unwrap().name.len();
    assert_eq!(named(limits::CARD_NAME), limits::CARD_NAME);
    assert_eq!(named(limits::CARD_NAME + 1), limits::CARD_NAME, "the rest is left");
}

#[test]
fn parts_of_a_plan_and_how_often_it_is_sent_have_limits() {
    let (person, mut desk) = super::acquainted();
    let (_, file) = super::plan_of(&mut desk, &[("words", &[("words", "Rest well.")])]);
    let plain = open(&file, &OpenWith::Keys(vec![super::keys_of(&person).opens().to_owned()])).unwrap();
    let text: String = String::from_utf8(plain).unwrap().lines().skip(4).map(|line| format!("{line}\n")).collect();
    let reads = |text: &str| plan::read(text).map(|plan| plan.parts.len()).map_err(|why| why.key);
    assert_eq!(reads(&text), Ok(1));

    let part = text.lines().find(|line| line.contains("-1\"")).unwrap().to_owned();
    let with = |parts: usize| -> String {
        let more = (2..=parts).map(|n| part.replace("-1\"", &format!("-{n}\"")) + "\n");
        std::iter::once(text.clone()).chain(more).collect()
    };
    assert_eq!(reads(&with(limits::PLAN_PARTS)), Ok(limits::PLAN_PARTS));
    assert_eq!(reads(&with(limits::PLAN_PARTS + 1)), Err("plan-line"));

    let sent = |times: u64| reads(&text.replace("\"revision\":1", &format!("\"revision\":{times}")));
    assert_eq!((sent(limits::PLAN_REVISIONS), sent(limits::PLAN_REVISIONS + 1)), (Ok(1), Err("plan-not-one")));
    assert_eq!(sent(0), Err("plan-not-one"));
}

#[test]
fn other_phones_that_a_family_names_have_a_limit() {
    let key = OwnKeys::make().unwrap().signing_key().unwrap();
    let named = |phones: usize| {
        let text = text_of("a-1", MADE, None, &[]);
        let mut lines = text.lines();
        let mut header: Value = serde_json::from_str(lines.next().unwrap()).unwrap();
        header["phones"] = json!(vec![key.clone(); phones]);
        family_file::read(format!("{header}\n").as_bytes()).unwrap().header.phones.len()
    };
    assert_eq!(named(limits::PHONES), limits::PHONES);
    assert_eq!(named(limits::PHONES + 1), limits::PHONES, "the rest is left");
}

/// The page says the same figures as the code.
#[test]
fn the_table_in_the_docs_is_that_of_the_code() {
    let page = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../docs/trust.md");
    let page = std::fs::read_to_string(page).unwrap();
    let mebi = |bytes: u64| format!("{} MiB", bytes >> 20);
    let count = |count: u64| {
        let digits = count.to_string();
        let groups: Vec<&str> = digits.as_bytes().rchunks(3).rev().map(|g| std::str::from_utf8(g).unwrap()).collect();
        groups.join(",")
    };
    for (what, is) in [
        ("a sealed file", mebi(limits::SEALED_FILE)),
        ("what it unpacks to", mebi(limits::UNPACKED)),
        ("a line of a family file or a plan", mebi(limits::LINE as u64)),
        ("a line of the exchange form", mebi(limits::EXCHANGE_LINE)),
        ("one value", format!("{} KiB", limits::VALUE >> 10)),
        ("how deep a value is nested", count(limits::DEPTH as u64)),
        ("changes in a family file", count(limits::CHANGES as u64)),
        ("values beside each other on one field, or replaced by one change", count(limits::HEADS as u64)),
        ("devices in a family file", count(limits::DEVICES as u64)),
        ("other phones a family names", count(limits::PHONES as u64)),
        ("a name of a device, a subject or a field", format!("{} bytes", limits::NAME)),
        ("a device's own numbers", count(limits::NUMBERS as u64)),
        ("a card", format!("{} bytes", count(limits::CARD as u64))),
        ("the name on a card", format!("{} characters", limits::CARD_NAME)),
        ("parts of a plan", count(limits::PLAN_PARTS as u64)),
        ("how often a plan is sent", count(limits::PLAN_REVISIONS)),
        ("scrypt's work when a passphrase is set", format!("2^{}", limits::WORK_MADE)),
        ("scrypt's work when a file comes, at most", format!("2^{}", limits::WORK_READ)),
        ("words of a passphrase made up here", count(limits::PASSPHRASE_WORDS as u64)),
        (
            "a passphrase of one's own, at least",
            format!("{} characters, {} of them different", limits::PASSPHRASE, limits::PASSPHRASE_DIFFERENT),
        ),
        ("sealed files that wait at a desk", count(limits::WAITING as u64)),
        ("how far ahead of now a date may be", format!("{} h", limits::AHEAD.in_minutes() / 60)),
    ] {
        assert!(page.contains(&format!("| {what} | {is} |")), "| {what} | {is} |");
    }
}
