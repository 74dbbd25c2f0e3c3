//! Words to compare by voice: two people who read the same words have the same keys.
//!
//! Ten words are 80 bits of scrypt over SHA-256 of the two public keys, and of nothing else:
//! their 32 bytes each, so that no part that is free to choose (the number that minisign
//! gives a key, the name on a card, upper and lower case) changes a word. scrypt with
//! N = 2¹⁴ and r = 8 costs 16 MB and some 30 ms a try. So keys of which five given words are
//! the same cost about 2⁴⁰ tries, a thousand years of one core; all ten, 2⁸⁰.
//!
//! The words are the PGP word list (Juola and Zimmermann, Whole-Word Phonetic Distances and
//! the PGPfone Alphabet, 1996), made for being read aloud: words of two syllables and of
//! three take turns, so that one that was left out or two that changed places are heard.

use std::collections::BTreeMap;
use std::str::FromStr;
use std::sync::{Mutex, PoisonError};

use minisign::PublicKey;
use sha2::{Digest, Sha256};

use crate::record::{text, Fields};

const TWO_SYLLABLES: &str = include_str!("words_two_syllables.txt");
const THREE_SYLLABLES: &str = include_str!("words_three_syllables.txt");
/// How many words are compared.
pub const COMPARED: usize = 10;
/// scrypt's N as a power of two.
const WORK: u8 = 14;
/// So many keys' words are remembered: a page that is drawn again does not work again.
const REMEMBERED: usize = 64;

static KNOWN: Mutex<BTreeMap<[u8; 32], [u8; COMPARED]>> = Mutex::new(BTreeMap::new());

/// What two public keys are, whatever they are written as. None where one is no key.
pub fn digest(sealing_key: &str, signing_key: &str) -> Option<[u8; 32]> {
    let sealing = age::x25519::Recipient::from_str(sealing_key).ok()?.to_string();
    let signing = PublicKey::from_base64(signing_key).ok()?.to_bytes();
    let mut sum = Sha256::new();
    sum.update(b"drawwell words 2\n");
    sum.update(sealing.as_bytes());
    sum.update(b"\n");
    // Two bytes say which algorithm and eight are free: the key is what stands behind them.
    sum.update(signing.get(10..)?);
    Some(sum.finalize().into())
}

/// The same as text, to keep beside keys that were compared.
pub fn mark(sealing_key: &str, signing_key: &str) -> Option<String> {
    let digest = digest(sealing_key, signing_key)?;
    Some(digest.iter().map(|byte| format!("{byte:02x}")).collect())
}

/// The words of a pair of public keys; none where one is no key.
pub fn words(sealing_key: &str, signing_key: &str) -> Vec<&'static str> {
    let Some(bytes) = digest(sealing_key, signing_key).and_then(stretched) else { return Vec::new() };
    let (two, three): (Vec<_>, Vec<_>) = (TWO_SYLLABLES.lines().collect(), THREE_SYLLABLES.lines().collect());
    let word = |(place, byte): (usize, &u8)| {
        let list = if place % 2 == 0 { &two } else { &three };
        list.get(usize::from(*byte)).copied()
    };
    bytes.iter().enumerate().filter_map(word).collect()
}

fn stretched(digest: [u8; 32]) -> Option<[u8; COMPARED]> {
    let known = || KNOWN.lock().unwrap_or_else(PoisonError::into_inner);
    if let Some(bytes) = known().get(&digest) {
        return Some(*bytes);
    }
    let mut bytes = [0_u8; COMPARED];
    let work = scrypt::Params::new(WORK, 8, 1, COMPARED).ok()?;
    scrypt::scrypt(&digest, b"drawwell words 2", &work, &mut bytes).ok()?;
    let mut known = known();
    if known.len() >= REMEMBERED {
        known.clear();
    }
    known.insert(digest, bytes);
    Some(bytes)
}

/// Whether the words of a consultant's keys were compared, as the keys stand.
pub(crate) fn is_compared(consultant: &Fields) -> bool {
    let key = |field: &str| text(consultant, field).unwrap_or_default();
    let mark = mark(key("sealing_key"), key("signing_key"));
    mark.is_some() && mark.as_deref() == text(consultant, "compared")
}
