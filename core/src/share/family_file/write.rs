//! The record, out as a family file.

use std::collections::BTreeMap;
use std::io::Write;

use serde_json::{json, Value};

use super::Header;
use crate::journal::{Change, Dot, Journal};
use crate::record::Kind;
use crate::share::parts::LeftOut;
use crate::trouble::{Kind as TroubleKind, Trouble};

/// Writes a family file.
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
    for change in &changes {
        // What no version here knows the kind of may be anything: it stays.
        let Some(kind) = kinds.get(&change.subject) else { continue };
        if goes_along(*kind, &change.field, left_out) {
            line(file, &of(change))?;
        }
    }
    file.flush().map_err(told)
}

/// Whether a field of a record is in the file. A part that is left out as a whole leaves
/// no trace of when and how often, either.
fn goes_along(kind: Kind, field: &str, left_out: &LeftOut) -> bool {
    if kind == Kind::Consultant {
        return false;
    }
    left_out.lets(kind, "") && left_out.lets(kind, field)
}

fn told(_: std::io::Error) -> Trouble {
    Trouble::new(TroubleKind::Full, "trouble-cannot-write-file")
}

fn line(file: &mut dyn Write, value: &Value) -> Result<(), Trouble> {
    writeln!(file, "{value}").map_err(told)
}

fn of(change: &Change) -> Value {
    let dot = |dot: &Dot| json!([dot.device, dot.sequence]);
    json!({
        "device": change.dot.device,
        "number": change.dot.sequence,
        "stamp": change.stamp.raw(),
        "subject": change.subject,
        "field": change.field,
        "value": serde_json::from_str::<Value>(&change.value).unwrap_or(Value::Null),
        "replaces": change.replaces.iter().map(dot).collect::<Vec<_>>(),
    })
}
