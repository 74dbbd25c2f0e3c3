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
const UNTRUSTED: &str = "signature from a drawwell key";

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

/// The text, where one of the public keys signed it, and which of them. The number that a
/// signature gives its key only tells which to try: anybody can choose it, so that it never
/// stands in the way of a key that signed.
///
/// # Errors
/// `signed-not-readable`, `signed-by-a-stranger` where none of the keys is the one that is
/// named in the signature, `signed-not-as-it-was` where the text or the signature was changed.
pub fn verify<'t, 'k>(signed: &'t str, keys: &'k [String]) -> Result<(&'t str, &'k str), Trouble> {
    let (signature, text) = parts(signed).ok_or_else(|| Trouble::bad("", "signed-not-readable"))?;
    let mut named = false;
    for key in keys {
        let Ok(public) = PublicKey::from_base64(key) else { continue };
        named |= public.keynum() == signature.keynum();
        let mut bytes = public.to_bytes();
        if let Some(number) = bytes.get_mut(2..10).filter(|number| number.len() == signature.keynum().len()) {
            number.copy_from_slice(signature.keynum());
        }
        let Ok(public) = PublicKey::from_bytes(&bytes) else { continue };
        if minisign::verify(&public, &signature, Cursor::new(text.as_bytes()), true, false, false).is_ok() {
            return Ok((text, key));
        }
    }
    Err(Trouble::bad("", if named { "signed-not-as-it-was" } else { "signed-by-a-stranger" }))
}

/// The text of a signed one, of which nobody knows yet who signed it.
pub(crate) fn unverified(signed: &str) -> Option<&str> {
    parts(signed).map(|(_, text)| text)
}
