//! A family file, in: all of it, or nothing.

use serde_json::Value;

use super::Header;
use crate::journal::{Change, Dot, Stamp};
use crate::trouble::Trouble;

/// No family file has more changes: fifty years of sessions.
const MOST_CHANGES: usize = 2_000_000;
/// No name of a device, a subject or a field is longer.
const LONGEST_NAME: usize = 200;

/// A family file as it was read.
#[derive(Debug, Clone, PartialEq)]
pub struct FamilyFile {
    /// Whose it is.
    pub header: Header,
    /// Its changes, in the order of the file.
    pub changes: Vec<Change>,
}

/// Reads a family file.
///
/// # Errors
/// `family-file-not-one`, `family-file-line` with the number of the line that can't be
/// read, `sealed-too-long`, `trouble-newer-file`.
pub fn read(text: &[u8]) -> Result<FamilyFile, Trouble> {
    let text = std::str::from_utf8(text).map_err(|_| Trouble::bad("", "family-file-not-one"))?;
    let mut lines = text.lines();
    let header = Header::read(lines.next().unwrap_or_default())?;
    let mut changes = Vec::new();
    for (number, line) in lines.enumerate().filter(|(_, line)| !line.trim().is_empty()) {
        if changes.len() == MOST_CHANGES {
            return Err(Trouble::bad("", "sealed-too-long"));
        }
        let told = || Trouble::bad("", "family-file-line").with("line", (number + 2).to_string());
        changes.push(change(line).ok_or_else(told)?);
    }
    Ok(FamilyFile { header, changes })
}

fn change(line: &str) -> Option<Change> {
    let value: Value = serde_json::from_str(line).ok()?;
    let name = |key: &str| {
        let name = value.get(key)?.as_str()?;
        (1..=LONGEST_NAME).contains(&name.len()).then(|| name.to_owned())
    };
    let replaces = value.get("replaces")?.as_array()?.iter().map(dot).collect::<Option<Vec<_>>>()?;
    Some(Change {
        dot: Dot { device: device(&name("device")?)?, sequence: number(value.get("number")?)? },
        stamp: Stamp::from_raw(value.get("stamp")?.as_i64().filter(|stamp| *stamp > 0)?),
        subject: name("subject")?,
        field: name("field")?,
        value: value.get("value")?.to_string(),
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
    value.as_i64().filter(|number| (1..1 << 40).contains(number))
}
