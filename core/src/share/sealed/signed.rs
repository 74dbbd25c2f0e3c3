//! Signed text: from whom something is, in minisign's open format.
//!
//! A signed text is the four lines of a minisign signature and then the text itself. So
//! `head -n 4` is the signature file and `tail -n +5` what was signed, and any minisign
//! tool can check one against the other.

use std::io::Cursor;

use minisign::{PublicKey, SignatureBox};

use super::own_keys::OwnKeys;
use crate::trouble::{Kind, Trouble};

/// Lines of a signature.
const LINES: usize = 4;
const UNTRUSTED: &str = "signature from a drawwell consultant key";

/// Signs a text. `says` is the comment that is signed with it.
///
/// # Errors
/// `bad-own-keys`.
pub fn sign(text: &str, says: &str, keys: &OwnKeys) -> Result<String, Trouble> {
    let signature = minisign::sign(None, &keys.secret()?, Cursor::new(text.as_bytes()), Some(says), Some(UNTRUSTED))
        .map_err(|_| Trouble::new(Kind::Fault, "trouble-fault"))?;
    Ok(format!("{}\n{text}", signature.into_string().trim_end()))
}

/// A signed text, in its two parts; nothing is known of it yet.
fn parts(signed: &str) -> Option<(SignatureBox, &str)> {
    let mut at = 0;
    for _ in 0..LINES {
        at += signed.get(at..)?.find('\n')? + 1;
    }
    let (signature, text) = (signed.get(..at)?, signed.get(at..)?);
    Some((SignatureBox::from_string(signature.trim_end()).ok()?, text))
}

/// Whether a text begins as a signed one does.
pub fn is_signed(beginning: &[u8]) -> bool {
    beginning.starts_with(b"untrusted comment: ")
}

/// The text, where one of the public keys signed it, and which of them.
///
/// # Errors
/// `signed-not-readable`, `signed-by-a-stranger` where none of the keys is the one that is
/// named in the signature, `signed-not-as-it-was` where the text or the signature was changed.
pub fn verify<'t, 'k>(signed: &'t str, keys: &'k [String]) -> Result<(&'t str, &'k str), Trouble> {
    let (signature, text) = parts(signed).ok_or_else(|| Trouble::bad("", "signed-not-readable"))?;
    let known = keys.iter().filter_map(|key| Some((key, PublicKey::from_base64(key).ok()?)));
    let mut named = known.filter(|(_, key)| key.keynum() == signature.keynum());
    let (key, public) = named.next().ok_or_else(|| Trouble::bad("", "signed-by-a-stranger"))?;
    minisign::verify(&public, &signature, Cursor::new(text.as_bytes()), true, false, false)
        .map_err(|_| Trouble::bad("", "signed-not-as-it-was"))?;
    Ok((text, key))
}
