//! The first line: whose file it is.

use std::str::FromStr;

use minisign::PublicKey;
use serde_json::{json, Value};

use super::VERSION;
use crate::limits;
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
    /// The public key that the file is signed with; none in a file of version 1, which nobody
    /// signed.
    pub signing_key: Option<String>,
    /// The key that it will be signed with from now on, where that is another.
    pub next_signing_key: Option<String>,
    /// The signing keys of the family's other phones.
    pub phones: Vec<String>,
    /// The public keys that the family's other phones open with, as far as this one knows them.
    pub phones_open: Vec<String>,
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
            "signing_key": self.signing_key,
            "next_signing_key": self.next_signing_key,
            "phones": self.phones,
            "phones_open": self.phones_open,
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
        let texts = |key: &str| -> Vec<String> {
            let all = value.get(key).and_then(Value::as_array).map(Vec::as_slice).unwrap_or_default();
            all.iter().filter_map(Value::as_str).take(limits::PHONES).map(str::to_owned).collect()
        };
        let recipient = |key: String| match age::x25519::Recipient::from_str(&key) {
            Ok(key) => Ok(key.to_string()),
            Err(_) => Err(bad()),
        };
        let signer = |key: &str| match PublicKey::from_base64(key) {
            Ok(_) => Ok(key.to_owned()),
            Err(_) => Err(bad()),
        };
        Ok(Self {
            family,
            made: value.get("made").and_then(|made| Moment::from_json(made).ok()).ok_or_else(bad)?,
            sealing_key: text("sealing_key").and_then(recipient)?,
            signing_key: value.get("signing_key").and_then(Value::as_str).map(signer).transpose()?,
            next_signing_key: value.get("next_signing_key").and_then(Value::as_str).map(signer).transpose()?,
            phones: texts("phones").into_iter().map(|key| signer(&key)).collect::<Result<_, _>>()?,
            phones_open: texts("phones_open").into_iter().map(recipient).collect::<Result<_, _>>()?,
            left_out: texts("left_out"),
            says: value.get("says").and_then(Value::as_str).unwrap_or_default().to_owned(),
        })
    }
}
