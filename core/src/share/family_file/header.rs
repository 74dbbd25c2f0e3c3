//! The first line: whose file it is.

use serde_json::{json, Value};

use super::VERSION;
use crate::time::Moment;
use crate::trouble::{Kind, Trouble};

/// What the first line of a family file says.
#[derive(Debug, Clone, PartialEq)]
pub struct Header {
    /// The family's own name for itself among all: letters and figures, no person's name.
    pub family: String,
    /// When the file was made.
    pub made: Moment,
    /// The public key that a plan for this family is sealed for: an age recipient.
    pub sealing_key: String,
    /// The parts that were left out, by name.
    pub left_out: Vec<String>,
    /// What stands in it for whoever reads it as text.
    pub says: String,
}

impl Header {
    pub(super) fn write(&self) -> Value {
        json!({
            "drawwell": "family",
            "version": VERSION,
            "family": self.family,
            "made": self.made.to_json(),
            "sealing_key": self.sealing_key,
            "left_out": self.left_out,
            "says": self.says,
        })
    }

    /// Reads the first line.
    ///
    /// # Errors
    /// `family-file-not-one`, `trouble-newer-file`.
    pub(super) fn read(line: &str) -> Result<Self, Trouble> {
        let bad = || Trouble::bad("", "family-file-not-one");
        let value: Value = serde_json::from_str(line).map_err(|_| bad())?;
        if value.get("drawwell").and_then(Value::as_str) != Some("family") {
            return Err(bad());
        }
        match value.get("version").and_then(Value::as_u64) {
            Some(version) if version <= VERSION => {}
            Some(_) => return Err(Trouble::new(Kind::Newer, "trouble-newer-file")),
            None => return Err(bad()),
        }
        let text = |key: &str| value.get(key).and_then(Value::as_str).map(str::to_owned).ok_or_else(bad);
        let family = text("family")?;
        let plain = |c: char| c.is_ascii_alphanumeric() || matches!(c, '.' | '_' | '-');
        if !(1..=128).contains(&family.len()) || !family.chars().all(plain) {
            return Err(bad());
        }
        let left_out = value.get("left_out").and_then(Value::as_array).map(Vec::as_slice).unwrap_or_default();
        Ok(Self {
            family,
            made: value.get("made").and_then(|made| Moment::from_json(made).ok()).ok_or_else(bad)?,
            sealing_key: text("sealing_key")?,
            left_out: left_out.iter().filter_map(Value::as_str).map(str::to_owned).collect(),
            says: value.get("says").and_then(Value::as_str).unwrap_or_default().to_owned(),
        })
    }
}
