//! The record, out as a family file.

use std::collections::{BTreeMap, BTreeSet};
use std::io::Write;

use serde_json::{json, Value};

use super::Header;
use crate::journal::{Change, Dot, Journal};
use crate::record::Kind;
use crate::share::parts::LeftOut;
use crate::share::sealed::{own_keys::OwnKeys, signed};
use crate::trouble::{Kind as TroubleKind, Trouble};

/// What a record that was taken out still says: what it was, and that it was taken out.
const TELLS: &[&str] = &["kind", "taken_out"];

/// Signs what [`write`] wrote.
///
/// # Errors
/// `bad-own-keys`.
pub fn sign(text: &[u8], header: &Header, keys: &OwnKeys) -> Result<Vec<u8>, Trouble> {
    let text = std::str::from_utf8(text).map_err(|_| Trouble::new(TroubleKind::Fault, "trouble-fault"))?;
    let says = format!("drawwell record of {}, made {}", header.family, header.made.to_rfc3339());
    signed::sign(text, &says, keys).map(String::into_bytes)
}

/// Writes a family file, not signed yet. A value that was replaced, and all of a record that was
/// taken out, goes as "was here, not given": the fold stays the same, and nobody reads it.
///
/// # Errors
/// Where it can't be written; the record is only read.
pub fn write(journal: &Journal, header: &Header, left_out: &LeftOut, file: &mut dyn Write) -> Result<(), Trouble> {
    let mut kinds: BTreeMap<String, Kind> = BTreeMap::new();
    let changes = journal.changes()?;
    for change in changes.iter().filter(|change| change.field == "kind") {
        let name = serde_json::from_str::<String>(&change.value).unwrap_or_default();
        kinds.extend(Kind::named(&name).map(|kind| (change.subject.clone(), kind)));
    }
    line(file, &header.write())?;
    let replaced: BTreeSet<&Dot> = changes.iter().flat_map(|change| &change.replaces).collect();
    let mut taken_out = BTreeSet::new();
    for subject in kinds.keys() {
        if journal.row(subject)?.is_some_and(|row| row.taken_out) {
            taken_out.insert(subject.as_str());
        }
    }
    for change in &changes {
        // What no version here knows the kind of may be anything: it stays.
        let Some(kind) = kinds.get(&change.subject) else { continue };
        if goes_along(*kind, &change.field, left_out) {
            let still = TELLS.contains(&change.field.as_str());
            let gone = replaced.contains(&change.dot) || (taken_out.contains(change.subject.as_str()) && !still);
            line(file, &of(change, gone))?;
        }
    }
    file.flush().map_err(write_trouble)
}

/// Whether a field of a record is in the file. A part that is left out as a whole leaves
/// no trace of when and how often, either.
fn goes_along(kind: Kind, field: &str, left_out: &LeftOut) -> bool {
    if kind == Kind::Consultant {
        return false;
    }
    left_out.lets(kind, "") && left_out.lets(kind, field)
}

fn write_trouble(_: std::io::Error) -> Trouble {
    Trouble::new(TroubleKind::Full, "trouble-cannot-write-file")
}

fn line(file: &mut dyn Write, value: &Value) -> Result<(), Trouble> {
    writeln!(file, "{value}").map_err(write_trouble)
}

fn of(change: &Change, gone: bool) -> Value {
    let dot = |dot: &Dot| json!([dot.device, dot.sequence]);
    let mut line = json!({
        "device": change.dot.device,
        "number": change.dot.sequence,
        "stamp": change.stamp.raw(),
        "subject": change.subject,
        "field": change.field,
        "replaces": change.replaces.iter().map(dot).collect::<Vec<_>>(),
    });
    if let Some(line) = line.as_object_mut() {
        if gone || change.is_gone() {
            line.insert("gone".to_owned(), Value::Bool(true));
        } else {
            line.insert("value".to_owned(), serde_json::from_str(&change.value).unwrap_or(Value::Null));
        }
    }
    line
}
