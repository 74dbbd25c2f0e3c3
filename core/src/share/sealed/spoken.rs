//! Words to compare by voice: two people who read the same words have the same keys.
//!
//! Eight words of a list of 256 are 64 bits of SHA-256 over both public keys. Somebody
//! who wants to pass off other keys would have to try about 2⁶⁴ of them.

use sha2::{Digest, Sha256};

/// 256 short plain words, in alphabetical order.
const WORDS: &str = include_str!("words.txt");
/// How many words are compared.
pub const COMPARED: usize = 8;

/// The words of a pair of public keys.
pub fn words(sealing_key: &str, signing_key: &str) -> Vec<&'static str> {
    let list: Vec<&'static str> = WORDS.lines().collect();
    let mut digest = Sha256::new();
    for part in ["drawwell words 1", sealing_key, signing_key] {
        digest.update(part.as_bytes());
        digest.update(b"\n");
    }
    digest.finalize().iter().take(COMPARED).filter_map(|byte| list.get(usize::from(*byte)).copied()).collect()
}
