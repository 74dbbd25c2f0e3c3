//! Own keys: one that opens what was sealed for us, one that signs what is from us.

use std::str::FromStr;

use age::secrecy::ExposeSecret;
use base64::engine::general_purpose::STANDARD;
use base64::Engine;
use minisign::{KeyPair, PublicKey, SecretKey};
use sha2::{Digest, Sha256};

use crate::trouble::{Kind, Trouble};

/// Both secret keys as text, as their own tools write them. Never shown, never logged.
#[derive(Clone, PartialEq, Eq)]
pub struct OwnKeys {
    /// An age identity, `AGE-SECRET-KEY-1…`.
    opens: String,
    /// A minisign secret key without a passphrase, with its comment.
    signs: String,
}

impl std::fmt::Debug for OwnKeys {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("OwnKeys(..)")
    }
}

fn fault<E>(_: E) -> Trouble {
    Trouble::new(Kind::Fault, "trouble-fault")
}

impl OwnKeys {
    /// Makes a new pair of keys, with the randomness of the operating system.
    ///
    /// # Errors
    /// Where the operating system gives none.
    pub fn make() -> Result<Self, Trouble> {
        let opens = age::x25519::Identity::generate().to_string().expose_secret().to_owned();
        let pair = KeyPair::generate_unencrypted_keypair().map_err(fault)?;
        let signs = pair.sk.to_box(Some("drawwell")).map_err(fault)?.into_string();
        Ok(Self { opens, signs })
    }

    /// Both keys as they were kept.
    ///
    /// # Errors
    /// `bad-own-keys` where one of them can't be read.
    pub fn read(opens: &str, signs: &str) -> Result<Self, Trouble> {
        let keys = Self { opens: opens.to_owned(), signs: signs.to_owned() };
        keys.sealing_key()?;
        keys.signing_key()?;
        Ok(keys)
    }

    /// The secret that opens, as it is kept.
    pub fn opens(&self) -> &str {
        &self.opens
    }

    /// The secret that signs, as it is kept.
    pub fn signs(&self) -> &str {
        &self.signs
    }

    /// The public key that others seal for: an age recipient.
    ///
    /// # Errors
    /// `bad-own-keys`.
    pub fn sealing_key(&self) -> Result<String, Trouble> {
        let identity = age::x25519::Identity::from_str(&self.opens).map_err(|_| Trouble::bad("", "bad-own-keys"))?;
        Ok(identity.to_public().to_string())
    }

    /// The public key that others check our signature with: a minisign key, base64.
    ///
    /// # Errors
    /// `bad-own-keys`.
    pub fn signing_key(&self) -> Result<String, Trouble> {
        Ok(PublicKey::from_secret_key(&self.secret()?).map_err(fault)?.to_base64())
    }

    /// What a device with these keys is called: 96 bits of SHA-256 over the key it signs with.
    ///
    /// # Errors
    /// `bad-own-keys`.
    pub fn device_name(&self) -> Result<String, Trouble> {
        let key = PublicKey::from_secret_key(&self.secret()?).map_err(fault)?.to_bytes();
        let sum = Sha256::digest(key.get(10..).unwrap_or_default());
        let letters: String = sum.iter().take(12).map(|byte| format!("{byte:02x}")).collect();
        Ok(format!("d{letters}"))
    }

    pub(super) fn secret(&self) -> Result<SecretKey, Trouble> {
        let bad = || Trouble::bad("", "bad-own-keys");
        // The library's own reader asks for a passphrase, at a console.
        let line = self.signs.lines().nth(1).ok_or_else(bad)?;
        let bytes = STANDARD.decode(line).map_err(|_| bad())?;
        SecretKey::from_bytes(&bytes).map_err(|_| bad())
    }
}
