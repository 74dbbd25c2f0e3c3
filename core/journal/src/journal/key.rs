//! The key that a record is sealed with: 32 random bytes that the host keeps, and no more than
//! handed through here. It is the cipher's own key: nothing is stretched.

use age::secrecy::{ExposeSecret, SecretString};
use sha2::{Digest, Sha256};

use crate::private_file::SEALED_STORE;
use crate::trouble::{Kind, Trouble};

const BYTES: usize = 32;
/// What a sealed file begins with, before what can't be read.
pub(super) const BEGINNING: usize = 16;

/// A key. It is overwritten when it is let go, and prints nothing.
#[derive(Clone)]
pub struct Key {
    /// As 64 hexadecimal figures.
    figures: SecretString,
    beginning: [u8; BEGINNING],
}

impl std::fmt::Debug for Key {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Key(..)")
    }
}

impl PartialEq for Key {
    fn eq(&self, other: &Self) -> bool {
        self.beginning == other.beginning
    }
}

impl Key {
    /// Makes a new key, with the randomness of the operating system.
    ///
    /// # Errors
    /// Where the operating system gives none.
    pub fn make() -> Result<Self, Trouble> {
        let mut bytes = [0_u8; BYTES];
        getrandom::fill(&mut bytes).map_err(|_| Trouble::new(Kind::Fault, "trouble-fault"))?;
        Self::from_bytes(&bytes)
    }

    /// The key of some bytes.
    ///
    /// # Errors
    /// `bad-key` where they are not 32.
    pub fn from_bytes(bytes: &[u8]) -> Result<Self, Trouble> {
        if bytes.len() != BYTES {
            return Err(Trouble::bad("key", "bad-key"));
        }
        // In place of the salt stands which key it is: one that is another is told apart from
        // damage, and a damaged beginning can be made good. A key that is random needs no salt.
        let sum = Sha256::new().chain_update(b"drawwell: which key").chain_update(bytes).finalize();
        let mut beginning = [0_u8; BEGINNING];
        for (place, byte) in beginning.iter_mut().zip(SEALED_STORE.iter().chain(&sum)) {
            *place = *byte;
        }
        Ok(Self { figures: SecretString::from(hex(bytes)), beginning })
    }

    /// The key written as 64 hexadecimal figures.
    ///
    /// # Errors
    /// `bad-key` where it is not.
    pub fn from_figures(text: &str) -> Result<Self, Trouble> {
        let bad = || Trouble::bad("key", "bad-key");
        let text = text.trim();
        if text.len() != 2 * BYTES || !text.bytes().all(|figure| figure.is_ascii_hexdigit()) {
            return Err(bad());
        }
        let pairs = text.as_bytes().chunks(2);
        let byte = |pair: &[u8]| std::str::from_utf8(pair).ok().and_then(|pair| u8::from_str_radix(pair, 16).ok());
        let bytes: Option<Vec<u8>> = pairs.map(byte).collect();
        Self::from_bytes(&bytes.ok_or_else(bad)?)
    }

    /// As 64 hexadecimal figures, to be kept or sealed.
    pub fn figures(&self) -> &str {
        self.figures.expose_secret()
    }

    /// As the cipher takes it.
    pub(super) fn for_the_cipher(&self) -> SecretString {
        SecretString::from(format!("x'{}{}'", self.figures(), hex(&self.beginning)))
    }

    /// Which key it is, as 32 hexadecimal figures that tell nothing of the key.
    pub fn which(&self) -> String {
        hex(&self.beginning)
    }

    /// How every file begins that is sealed with this key.
    pub(super) fn beginning(&self) -> &[u8; BEGINNING] {
        &self.beginning
    }

    /// The bytes themselves, for the host to keep.
    pub fn bytes(&self) -> [u8; BYTES] {
        let mut bytes = [0_u8; BYTES];
        for (place, pair) in bytes.iter_mut().zip(self.figures().as_bytes().chunks(2)) {
            *place = std::str::from_utf8(pair).ok().and_then(|p| u8::from_str_radix(p, 16).ok()).unwrap_or(0);
        }
        bytes
    }
}

/// Whether a file begins as one that is sealed, with whatever key.
pub(crate) fn begins_sealed(beginning: &[u8]) -> bool {
    beginning.starts_with(SEALED_STORE)
}

/// As [`Key::which`], by how a file begins.
pub(super) fn which(beginning: &[u8]) -> Option<String> {
    (begins_sealed(beginning) && beginning.len() == BEGINNING).then(|| hex(beginning))
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}
