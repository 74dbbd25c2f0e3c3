//! A family file, in: all of it, or nothing.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::Value;

use super::Header;
use crate::journal::{Change, Dot, Stamp, GONE};
use crate::limits;
use crate::share::sealed::signed;
use crate::trouble::Trouble;

/// A family file as it was read.
#[derive(Debug, Clone, PartialEq)]
pub struct FamilyFile {
    /// Whose it is.
    pub header: Header,
    /// Its changes, in the order of the file.
    pub changes: Vec<Change>,
}

/// Reads a family file: signed by the key that it names, or by nobody. Whether that key is the
/// family's, the reader of it says.
///
/// # Errors
/// `family-file-not-one`, `family-file-line` with the number of the line that can't be
/// read, `family-file-limits` where there is more of something than any record has,
/// `trouble-newer-file`, and those of [`signed::verify`].
pub fn read(file: &[u8]) -> Result<FamilyFile, Trouble> {
    let file = std::str::from_utf8(file).map_err(|_| not_one())?;
    if !signed::is_signed(file.as_bytes()) {
        let read = read_text(file)?;
        // One that says a key and is not signed with it was tampered with.
        return if read.header.signing_key.is_none() {
            Ok(read)
        } else {
            Err(Trouble::bad("", "signed-not-as-it-was"))
        };
    }
    let text = signed::unverified(file).ok_or_else(|| Trouble::bad("", "signed-not-readable"))?;
    let header = Header::read(text.lines().next().unwrap_or_default())?;
    let key = header.signing_key.ok_or_else(not_one)?;
    let (text, _) = signed::verify(file, std::slice::from_ref(&key))?;
    read_text(text)
}

/// Whether a signed or plain text begins as a family file does, so that it is none of the other
/// signed forms.
pub fn is_one(file: &[u8]) -> bool {
    let Ok(text) = std::str::from_utf8(file) else { return false };
    let text = if signed::is_signed(file) { signed::unverified(text).unwrap_or_default() } else { text };
    Header::read(text.lines().next().unwrap_or_default()).is_ok()
}

fn not_one() -> Trouble {
    Trouble::bad("", "family-file-not-one")
}

fn read_text(text: &str) -> Result<FamilyFile, Trouble> {
    let mut lines = text.lines();
    let header = Header::read(lines.next().filter(|line| line.len() <= limits::LINE).unwrap_or_default())?;
    let mut changes: Vec<Change> = Vec::new();
    for (number, line) in lines.enumerate().filter(|(_, line)| !line.trim().is_empty()) {
        if changes.len() == limits::CHANGES {
            return Err(Trouble::bad("", "family-file-limits"));
        }
        let told = || Trouble::bad("", "family-file-line").with("line", number + 2);
        changes.push(change(line).ok_or_else(told)?);
    }
    within_limits(&changes)?;
    Ok(FamilyFile { header, changes })
}

/// So many devices and so many values beside each other on one field are in no record.
fn within_limits(changes: &[Change]) -> Result<(), Trouble> {
    let devices: BTreeSet<&str> = changes.iter().map(|change| change.dot.device.as_str()).collect();
    let replaced: BTreeSet<&Dot> = changes.iter().flat_map(|change| &change.replaces).collect();
    let mut heads: BTreeMap<(&str, &str), usize> = BTreeMap::new();
    for change in changes.iter().filter(|change| !replaced.contains(&change.dot)) {
        *heads.entry((&change.subject, &change.field)).or_default() += 1;
    }
    if devices.len() > limits::DEVICES || heads.values().any(|heads| *heads > limits::HEADS) {
        return Err(Trouble::bad("", "family-file-limits"));
    }
    Ok(())
}

fn change(line: &str) -> Option<Change> {
    if line.len() > limits::LINE {
        return None;
    }
    let value: Value = serde_json::from_str(line).ok()?;
    let name = |key: &str| {
        let name = value.get(key)?.as_str()?;
        (1..=limits::NAME).contains(&name.len()).then(|| name.to_owned())
    };
    let replaces = value.get("replaces")?.as_array()?.iter().map(dot).collect::<Option<Vec<_>>>()?;
    let given = match value.get("gone") {
        Some(Value::Bool(true)) => GONE.to_owned(),
        Some(_) => return None,
        None => value.get("value").filter(|value| limits::allow_depth(value))?.to_string(),
    };
    if given.len() > limits::VALUE || replaces.len() > limits::HEADS {
        return None;
    }
    Some(Change {
        dot: Dot { device: device(&name("device")?)?, sequence: number(value.get("number")?)? },
        stamp: Stamp::from_raw(value.get("stamp")?.as_i64().filter(|stamp| *stamp > 0)?),
        subject: name("subject")?,
        field: name("field")?,
        value: given,
        replaces,
    })
}

fn dot(value: &Value) -> Option<Dot> {
    match value.as_array()?.as_slice() {
        [name, sequence] => Some(Dot { device: device(name.as_str()?)?, sequence: number(sequence)? }),
        _ => None,
    }
}

/// A device's name as a journal writes it: no blank, no colon.
fn device(name: &str) -> Option<String> {
    let plain = |c: char| c.is_ascii_alphanumeric() || matches!(c, '.' | '_' | '-');
    ((1..=64).contains(&name.len()) && name.chars().all(plain)).then(|| name.to_owned())
}

/// A device's own numbers end where the journal's rows for it do.
fn number(value: &Value) -> Option<i64> {
    value.as_i64().filter(|number| (1..=limits::NUMBERS).contains(number))
}
