//! What every reader of ours must hold for any bytes at all. The fuzzer in `fuzz` looks
//! for bytes that break it; `tests/faults` tries those that were kept.
//!
//! A new reader is one line in [`READERS`], one function here, and one file of three lines
//! in `fuzz/fuzz_targets`.
//!
//! A function here panics where something does not hold, and for no other reason.

#![allow(clippy::expect_used, clippy::panic, reason = "a fuzzer takes a panic for what it found")]

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::sync::LazyLock;

use drawwell_core::answer::trace::{findings, Findings};
use drawwell_core::journal::Journal;
use drawwell_core::quantity::{
    AirPressureUnit, AltitudeUnit, LengthUnit, MassUnit, SpeedUnit, TemperatureUnit, Unit, VacuumUnit, VolumeUnit,
};
use drawwell_core::record::{check, typed, FieldType, Kind};
use drawwell_core::screen::words_of_trouble;
use drawwell_core::share::sealed::{self, card::Card, own_keys::OwnKeys, OpenWith};
use drawwell_core::share::{exchange, family_file, file_kind, plan, spreadsheet, trace_file};
use drawwell_core::text::Texts;
use drawwell_core::time::Instant;
use drawwell_core::trouble::{Kind as TroubleKind, Trouble};

/// What tries a reader with bytes.
pub type Reader = fn(&[u8]);

/// A reader, by the name of its fuzz target and of its folder in `fuzz/corpus`.
pub const READERS: &[(&str, Reader)] = &[
    ("exchange", exchange),
    ("trace", trace),
    ("typed", typed_figures),
    ("cells", cells),
    ("incoming", begins),
    ("family", family),
    ("sealed", opened),
    ("plan", plan),
    ("signed", signed),
    ("card", card),
    ("signed_family", signed_family),
    ("signed_plan", signed_plan),
];

/// 2026-08-14 in Berlin, at noon.
const NOW: Instant = Instant::from_unix_milliseconds(1_786_701_600_000);

/// Every field there is, with what it takes.
static FIELDS: LazyLock<Vec<(&str, FieldType)>> =
    LazyLock::new(|| Kind::ALL.iter().flat_map(|kind| kind.fields()).map(|spec| (spec.key, spec.field_type)).collect());
static UNITS: LazyLock<Vec<&str>> = LazyLock::new(units);

/// A sentence is looked at so often; to put it together takes longer than to read a file.
const LOOKED_AT: u32 = 50;

thread_local! {
    static TEXTS: Texts = Texts::new("en");
    /// How often each sentence was looked at.
    static SEEN: RefCell<BTreeMap<&'static str, u32>> = const { RefCell::new(BTreeMap::new()) };
    /// A journal in which nothing is ever kept, with its folder.
    static JOURNAL: RefCell<(tempfile::TempDir, Journal)> = RefCell::new(journal());
}

fn journal() -> (tempfile::TempDir, Journal) {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("record.drawwell");
    let mut journal = Journal::open(&path, "fuzz", NOW).expect("a journal").journal;
    exchange::begin_with(&mut journal, &mut crate::handed_over::EVERY_KIND.as_bytes(), NOW).expect("a record");
    (folder, journal)
}

/// What was refused is refused in words, and is no fault of the program.
fn said(why: &Trouble) {
    assert!(!matches!(why.kind, TroubleKind::Fault | TroubleKind::Damaged), "{why}");
    let seen = SEEN.with_borrow_mut(|seen| {
        let times = seen.entry(why.key).or_default();
        *times += 1;
        *times
    });
    if seen > LOOKED_AT {
        return;
    }
    TEXTS.with(|texts| {
        let (says, does) = words_of_trouble(texts, why);
        for sentence in [&says, &does] {
            assert!(!sentence.is_empty() && !sentence.contains('\u{27e8}'), "{why}: {sentence}");
        }
    });
}

/// A file of the exchange form: taken or told line by line, over a record that has every
/// kind of fact in it.
pub fn exchange(bytes: &[u8]) {
    JOURNAL.with_borrow_mut(|(_, journal)| {
        match exchange::look_in(journal, &mut &*bytes, NOW) {
            Ok(report) => report.wrong.iter().for_each(|wrong| said(&wrong.why)),
            Err(why) => said(&why),
        };
    });
}

/// A trace of pressure: read, and its findings kept and read again; or refused.
pub fn trace(bytes: &[u8]) {
    match trace_file::read(&mut &*bytes) {
        Ok(file) => {
            if let Ok(found) = findings(&file) {
                let kept = found.to_json();
                assert!(kept.to_string().len() < 200_000);
                assert_eq!(Findings::from_json(&kept), Some(found));
            }
        }
        Err(why) => said(&why),
    }
}

/// Figures as they are typed, a gauge's among them: the first byte chooses the field, the
/// second the unit. What is taken is what the field takes, also when it is read again.
pub fn typed_figures(bytes: &[u8]) {
    let [field, unit, rest @ ..] = bytes else { return };
    let text = String::from_utf8_lossy(rest);
    if let Ok(value) = serde_json::from_slice::<serde_json::Value>(rest) {
        for (kind, key) in [(Kind::Check, "readings/r"), (Kind::Session, "marks/m")] {
            if let Err(why) = check::field(kind, key, &value) {
                said(&why);
            }
        }
    }
    let Some((key, takes)) = FIELDS.get(usize::from(*field) % FIELDS.len()) else { return };
    let unit = UNITS.get(usize::from(*unit) % UNITS.len()).copied();
    match typed::read(key, *takes, &text, unit) {
        Ok(value) => {
            takes.check(key, &value).expect("what was taken fits the field");
            let again = serde_json::from_str(&value.to_string()).expect("JSON");
            takes.check(key, &again).expect("and does so after it was stored");
        }
        Err(why) => said(&why),
    }
}

fn units() -> Vec<&'static str> {
    fn of<U: Unit>() -> impl Iterator<Item = &'static str> {
        U::ALL.iter().map(|unit| unit.ucum())
    }
    of::<VacuumUnit>()
        .chain(of::<VolumeUnit>())
        .chain(of::<AirPressureUnit>())
        .chain(of::<AltitudeUnit>())
        .chain(of::<LengthUnit>())
        .chain(of::<MassUnit>())
        .chain(of::<SpeedUnit>())
        .chain(of::<TemperatureUnit>())
        .chain(["cupful"])
        .collect()
}

/// Text in the cells of a table: read back as it was but for the apostrophe, and nothing
/// in it that a spreadsheet would run.
pub fn cells(bytes: &[u8]) {
    let text = String::from_utf8_lossy(bytes);
    let texts: Vec<&str> = text.split('\0').collect();
    // As in a file of ours: a mark of its encoding first, and a row of names.
    let file = [b"\xef\xbb\xbftext\r\n".to_vec(), spreadsheet::write_row(&texts)].concat();
    let mut reader = csv::ReaderBuilder::new().flexible(true).from_reader(&*file);
    let rows: Vec<csv::StringRecord> = reader.records().collect::<Result<_, _>>().expect("CSV");
    let [read] = rows.as_slice() else { panic!("one row, and not {}", rows.len()) };
    assert_eq!(read.len(), texts.len());
    for (cell, text) in read.iter().zip(&texts) {
        assert!(cell.replace('\'', "") == text.replace('\'', ""), "{cell:?} {text:?}");
        let first = |part: &str| part.trim_start_matches(' ').chars().next().unwrap_or(' ');
        let mut parts = cell.split([',', ';', '\t', '|', '\r', '\n']);
        assert!(parts.all(|part| !['=', '+', '-', '@'].contains(&first(part))), "{cell:?}");
        assert!(!cell.trim_start_matches(' ').starts_with(['\t', '\r', '\n']), "{cell:?}");
    }
}

/// The beginning of any file: known, or refused by a name.
pub fn begins(bytes: &[u8]) {
    if let Some(why) = file_kind::detect(bytes).refused() {
        said(&why);
    }
}

/// A family file: read whole, or refused.
pub fn family(bytes: &[u8]) {
    match family_file::read(bytes) {
        Ok(read) => {
            assert!(!read.header.family.contains(['/', '\\', ' ']), "it names a file on the desk");
            assert!(read.changes.iter().all(|change| change.dot.sequence > 0 && !change.subject.is_empty()));
        }
        Err(why) => said(&why),
    }
}

/// A sealed file, with keys it is not for: none opens.
pub fn opened(bytes: &[u8]) {
    thread_local! {
        static KEYS: OwnKeys = OwnKeys::make().expect("keys");
    }
    if let Err(why) = sealed::how(bytes) {
        said(&why);
    }
    let found = KEYS.with(|keys| sealed::open(bytes, &OpenWith::Keys(vec![keys.opens().to_owned()])));
    said(&found.expect_err("nobody sealed it for these keys"));
}

/// The text of a plan: every part belongs to it and says what it is about.
pub fn plan(bytes: &[u8]) {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    match plan::read(text) {
        Ok(read) => {
            assert!(read.parts.len() <= plan::MOST_PARTS);
            for (id, part) in &read.parts {
                assert!(id.starts_with(&read.plan.0) && part.contains_key("plan_part"), "{id}");
                assert!(!part.contains_key("answer"), "only a parent answers");
            }
        }
        Err(why) => said(&why),
    }
}

/// A signed text that nobody here signed: always refused.
pub fn signed(bytes: &[u8]) {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    thread_local! {
        static KNOWN: Vec<String> = vec![OwnKeys::make().and_then(|keys| keys.signing_key()).expect("a key")];
    }
    KNOWN.with(|known| said(&sealed::signed::verify(text, known).expect_err("nobody signed it")));
}

/// A card: read, and then the same when it is written and read again.
pub fn card(bytes: &[u8]) {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    match Card::read(text) {
        Ok(card) => assert_eq!(Card::read(&card.write()).as_ref(), Ok(&card)),
        Err(why) => said(&why),
    }
}

/// Keys of somebody who is known, and who signs whatever it is.
fn with_known_keys<T>(deed: impl FnOnce(&OwnKeys, &str) -> T) -> T {
    thread_local! {
        static KNOWN: (OwnKeys, String) = {
            let keys = OwnKeys::make().expect("keys");
            let public = keys.signing_key().expect("a key");
            (keys, public)
        };
    }
    KNOWN.with(|(keys, public)| deed(keys, public))
}

/// A family file that its family signed, whatever is in it (`KEY` stands for the key): read and
/// looked at as it would be taken in, or refused. Nothing is kept; what is counted adds up.
pub fn signed_family(bytes: &[u8]) {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    with_known_keys(|keys, key| {
        let signed = sealed::signed::sign(&text.replace("KEY", key), "a record", keys).expect("it is signed");
        match family_file::read(signed.as_bytes()) {
            Ok(read) => {
                assert_eq!(read.header.signing_key.as_deref(), Some(key), "only under its own key");
                JOURNAL.with_borrow_mut(|(_, journal)| {
                    let (merged, _) = journal.would_merge(&read.changes, NOW).expect("no fault");
                    let counted = merged.taken + merged.known + merged.other + merged.erased + merged.ahead;
                    assert_eq!(counted, read.changes.len() as u64);
                });
            }
            Err(why) => said(&why),
        }
    });
}

/// A plan that a known consultant signed, whatever is in it: as [`plan`], and the signature holds.
pub fn signed_plan(bytes: &[u8]) {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    with_known_keys(|keys, key| {
        let signed = sealed::signed::sign(text, "a plan", keys).expect("it is signed");
        let known = [key.to_owned()];
        let (read, by) = sealed::signed::verify(&signed, &known).expect("what was signed holds");
        assert_eq!((read, by), (text, key));
        plan(read.as_bytes());
    });
}
