//! Sealed files: only whoever has the key or the passphrase can read them.
//!
//! In: bytes and for whom. Out: a file in the age format (age-encryption.org/v1) whose
//! contents are compressed (gzip, RFC 1952), so that `age -d FILE | gunzip` reads it
//! without us. [`own_keys`] makes keys, [`card`] hands the public ones on, [`spoken`] turns
//! them into words to compare by voice, [`signed`] says from whom something is.
//!
//! Keys are made and files are sealed with the randomness of the operating system, which
//! the libraries take themselves: one that is passed in could be one that is known.

pub mod card;
pub mod own_keys;
pub mod passphrase;
pub mod signed;
pub mod spoken;

use std::io::{Read, Write};
use std::str::FromStr;

use age::secrecy::SecretString;
use flate2::read::GzDecoder;
use flate2::write::GzEncoder;
use flate2::Compression;

use crate::limits;
use crate::trouble::{Kind, Trouble};

/// For whom something is sealed.
#[derive(Clone)]
pub enum SealFor {
    /// Whoever has the key to these public ones, as age recipients.
    Keys(Vec<String>),
    /// Whoever knows the passphrase.
    Passphrase(String),
}

/// What opens a sealed file.
#[derive(Clone)]
pub enum OpenWith {
    /// Own secret keys, as age identities.
    Keys(Vec<String>),
    /// A passphrase.
    Passphrase(String),
}

/// How a file is sealed, by its first bytes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sealed {
    /// For keys.
    ForKeys,
    /// With a passphrase.
    WithPassphrase,
}

const START: &[u8] = b"age-encryption.org/v1\n";
const ARMOR: &[u8] = b"-----BEGIN AGE ENCRYPTED FILE-----";

/// Whether a file begins as a sealed one does.
pub fn is_sealed(beginning: &[u8]) -> bool {
    beginning.starts_with(START) || beginning.starts_with(ARMOR)
}

fn fault<E>(_: E) -> Trouble {
    Trouble::new(Kind::Fault, "trouble-fault")
}

/// Seals contents.
///
/// # Errors
/// A key or passphrase that cannot be sealed for.
pub fn seal(contents: &[u8], to: &SealFor) -> Result<Vec<u8>, Trouble> {
    let encryptor = match to {
        SealFor::Passphrase(passphrase) => {
            if passphrase.trim().is_empty() {
                return Err(Trouble::bad("seal-passphrase", "bad-passphrase-empty"));
            }
            // The library would take less work where the machine is busy.
            let mut recipient = age::scrypt::Recipient::new(SecretString::from(passphrase.clone()));
            recipient.set_work_factor(limits::WORK_MADE);
            age::Encryptor::with_recipients(std::iter::once(&recipient as &dyn age::Recipient)).map_err(fault)?
        }
        SealFor::Keys(keys) => {
            let read = |key: &String| {
                age::x25519::Recipient::from_str(key).map_err(|_| Trouble::bad("sealing_key", "bad-sealing-key"))
            };
            let recipients = keys.iter().map(read).collect::<Result<Vec<_>, _>>()?;
            age::Encryptor::with_recipients(recipients.iter().map(|r| r as &dyn age::Recipient))
                .map_err(|_| Trouble::bad("sealing_key", "bad-sealing-key"))?
        }
    };
    let mut sealed = Vec::new();
    let stream = encryptor.wrap_output(&mut sealed).map_err(fault)?;
    let mut packed = GzEncoder::new(stream, Compression::default());
    packed.write_all(contents).map_err(fault)?;
    packed.finish().and_then(age::stream::StreamWriter::finish).map_err(fault)?;
    Ok(sealed)
}

/// How a sealed file was sealed.
///
/// # Errors
/// As [`open`], but for keys.
pub fn how(file: &[u8]) -> Result<Sealed, Trouble> {
    let decryptor = age::Decryptor::new_buffered(age::armor::ArmoredReader::new(file)).map_err(age_trouble)?;
    Ok(if decryptor.is_scrypt() { Sealed::WithPassphrase } else { Sealed::ForKeys })
}

/// Opens a sealed file and unpacks its contents.
///
/// # Errors
/// `sealed-other-key` where none of the keys opens it, `sealed-wrong-passphrase`,
/// `sealed-cut` where its end is missing or a byte is not as it was sealed,
/// `sealed-too-much-work`, `sealed-too-long`, `sealed-not-ours` where it holds something else.
pub fn open(file: &[u8], with: &OpenWith) -> Result<Vec<u8>, Trouble> {
    let decryptor = age::Decryptor::new_buffered(age::armor::ArmoredReader::new(file)).map_err(age_trouble)?;
    let stream = match with {
        OpenWith::Passphrase(passphrase) => {
            let mut identity = age::scrypt::Identity::new(SecretString::from(passphrase.clone()));
            identity.set_max_work_factor(limits::WORK_READ);
            let opened = decryptor.decrypt(std::iter::once(&identity as &dyn age::Identity));
            opened.map_err(|error| match error {
                age::DecryptError::NoMatchingKeys
                | age::DecryptError::DecryptionFailed
                | age::DecryptError::KeyDecryptionFailed => Trouble::bad("open-passphrase", "sealed-wrong-passphrase"),
                other => age_trouble(other),
            })?
        }
        OpenWith::Keys(keys) => {
            let identities: Vec<_> = keys.iter().filter_map(|key| age::x25519::Identity::from_str(key).ok()).collect();
            decryptor.decrypt(identities.iter().map(|i| i as &dyn age::Identity)).map_err(age_trouble)?
        }
    };
    unpack(stream)
}

/// Unpacks what was compressed, and stops where it gets longer than anything of ours.
fn unpack(stream: impl Read) -> Result<Vec<u8>, Trouble> {
    let mut contents = Vec::new();
    let mut limited = GzDecoder::new(stream).take(limits::UNPACKED + 1);
    limited.read_to_end(&mut contents).map_err(|error| match error.kind() {
        std::io::ErrorKind::InvalidInput => Trouble::bad("", "sealed-not-ours"),
        _ => Trouble::bad("", "sealed-cut"),
    })?;
    if contents.len() as u64 > limits::UNPACKED {
        return Err(Trouble::bad("", "sealed-too-long"));
    }
    Ok(contents)
}

/// Reads a file that may be sealed into memory, and no further than anything of ours.
///
/// # Errors
/// `sealed-too-long`, or that the file can't be read.
pub fn read_whole(file: &mut dyn Read) -> Result<Vec<u8>, Trouble> {
    read_to(file, limits::SEALED_FILE)
}

/// Reads a file into memory that is no longer than so many bytes.
///
/// # Errors
/// As [`read_whole`].
pub fn read_to(file: &mut dyn Read, most: u64) -> Result<Vec<u8>, Trouble> {
    let mut bytes = Vec::new();
    file.take(most + 1).read_to_end(&mut bytes).map_err(|_| Trouble::new(Kind::Missing, "trouble-cannot-read-file"))?;
    if bytes.len() as u64 > most {
        return Err(Trouble::bad("", "sealed-too-long"));
    }
    Ok(bytes)
}

fn age_trouble(error: age::DecryptError) -> Trouble {
    use age::DecryptError as Error;
    Trouble::bad(
        "",
        match error {
            Error::NoMatchingKeys | Error::KeyDecryptionFailed => "sealed-other-key",
            Error::ExcessiveWork { .. } => "sealed-too-much-work",
            Error::UnknownFormat => "sealed-newer",
            _ => "sealed-cut",
        },
    )
}
