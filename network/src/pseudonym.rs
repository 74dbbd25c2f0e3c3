//! What is left of a name: HMAC-SHA-256 (RFC 2104, FIPS 198-1) under a key that stays with the
//! network. Whoever has the store and not the key can't tell whose a row is, nor try names.

use std::io::Write;
use std::path::Path;

use drawwell_core::private_file;
use hmac::{Hmac, Mac};
use sha2::Sha256;

use crate::trouble::Stop;

/// Bytes of a key.
const KEY: usize = 32;
/// Bytes of a pseudonym: two of 10^7 families meet with a chance of 10^-25.
const NAME: usize = 16;

/// The network's key.
#[derive(Clone, PartialEq, Eq)]
pub struct NetworkKey([u8; KEY]);

impl std::fmt::Debug for NetworkKey {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("NetworkKey")
    }
}

/// What a pseudonym stands for, so that one can't be taken for another.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Of {
    /// A family.
    Family,
    /// A file that could not be read.
    Source,
    /// The key itself: the store knows by it whether it is the same one.
    Key,
}

impl Of {
    const fn name(self) -> &'static str {
        match self {
            Self::Family => "family",
            Self::Source => "source",
            Self::Key => "key",
        }
    }
}

/// HMAC-SHA-256.
fn hmac(key: &[u8], data: &[u8]) -> Result<[u8; 32], Stop> {
    let mut mac = Hmac::<Sha256>::new_from_slice(key).map_err(|_| Stop::refused("the network's key is empty"))?;
    mac.update(data);
    Ok(mac.finalize().into_bytes().into())
}

impl NetworkKey {
    /// From 64 figures, as they stand in its file.
    ///
    /// # Errors
    /// Where they are others.
    pub fn from_hex(text: &str) -> Result<Self, Stop> {
        let wrong = || Stop::refused("a key is 64 figures of 0-9 and a-f");
        let text = text.trim();
        if text.len() != 2 * KEY || !text.is_ascii() {
            return Err(wrong());
        }
        let mut key = [0; KEY];
        for (at, byte) in key.iter_mut().enumerate() {
            let two = text.get(2 * at..2 * at + 2).ok_or_else(wrong)?;
            *byte = u8::from_str_radix(two, 16).map_err(|_| wrong())?;
        }
        Ok(Self(key))
    }

    /// Reads it from its file.
    ///
    /// # Errors
    /// Where the file can't be read or holds no key.
    pub fn read(path: &Path) -> Result<Self, Stop> {
        Self::from_hex(&std::fs::read_to_string(path).map_err(|why| Stop::file(path, why))?)
    }

    /// Makes one, in a file that belongs to its owner alone; one that is there is never replaced.
    ///
    /// # Errors
    /// Where the file is there or can't be written.
    pub fn make(path: &Path) -> Result<Self, Stop> {
        let mut key = [0; KEY];
        getrandom::fill(&mut key).map_err(|_| Stop::refused("the system gives no random numbers"))?;
        let mut file = private_file::create_new(path).map_err(|why| Stop::file(path, why))?;
        writeln!(file, "{}", hex(&key)).and_then(|()| file.sync_all()).map_err(|why| Stop::file(path, why))?;
        Ok(Self(key))
    }

    /// The pseudonym of an id.
    ///
    /// # Errors
    /// Where there is no key.
    pub fn pseudonym(&self, of: Of, id: &str) -> Result<String, Stop> {
        let mac = hmac(&self.0, format!("{}:{id}", of.name()).as_bytes())?;
        Ok(hex(mac.get(..NAME).unwrap_or(&mac)))
    }
}

/// Bytes as figures.
pub fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that meets what it did not expect stops there")]
mod tests {
    use super::*;

    /// RFC 4231, 4.2 to 4.8 (5 is of a cut tag, of which we cut none so).
    #[test]
    fn hmac_is_that_of_rfc_4231() {
        let of = |key: &[u8], data: &[u8]| hex(&hmac(key, data).unwrap());
        let counting: Vec<u8> = (1..=25).collect();
        let larger = b"This is a test using a larger than block-size key and a larger than block-size data. The key needs to be hashed before being used by the HMAC algorithm.";
        for (key, data, expected) in [
            (&[0x0b; 20][..], &b"Hi There"[..], "b0344c61d8db38535ca8afceaf0bf12b881dc200c9833da726e9376c2e32cff7"),
            (
                b"Jefe",
                b"what do ya want for nothing?",
                "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843",
            ),
            (&[0xaa; 20], &[0xdd; 50], "773ea91e36800e46854db8ebd09181a72959098b3ef8c122d9635514ced565fe"),
            (&counting, &[0xcd; 50], "82558a389a443c0ea4cc819899f2083a85f0faa3e578f8077a2e3ff46729665b"),
            (
                &[0xaa; 131],
                b"Test Using Larger Than Block-Size Key - Hash Key First",
                "60e431591ee0b67f0d8a26aacbf5b77f8e0bc6213728c5140546040f0ee37f54",
            ),
            (&[0xaa; 131], larger, "9b09ffa71b942fcb27635fbcd5b0e944bfdc63644f0713938a7f51535c3a35e2"),
        ] {
            assert_eq!(of(key, data), expected);
        }
    }

    #[test]
    fn another_key_or_another_thing_is_another_pseudonym() {
        let key = |figure: &str| NetworkKey::from_hex(&figure.repeat(64)).unwrap();
        let one = key("1").pseudonym(Of::Family, "a").unwrap();
        assert_eq!(one, key("1").pseudonym(Of::Family, "a").unwrap());
        assert_eq!(one.len(), 32);
        for other in [
            key("2").pseudonym(Of::Family, "a"),
            key("1").pseudonym(Of::Source, "a"),
            key("1").pseudonym(Of::Family, "b"),
        ] {
            assert_ne!(one, other.unwrap());
        }
    }

    #[test]
    fn a_key_is_made_once_and_read_back() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("network.key");
        let made = NetworkKey::make(&path).unwrap();
        assert_eq!(NetworkKey::read(&path).unwrap(), made);
        assert!(NetworkKey::make(&path).is_err(), "one that is there is never replaced");
        for wrong in ["", "12", &"g".repeat(64), &"é".repeat(32)] {
            assert!(NetworkKey::from_hex(wrong).is_err());
        }
    }
}
