//! Passphrases: made up here, or one's own where it is strong enough.
//!
//! Six words of the EFF's long list (Bonneau, Deep Dive: EFF's New Wordlists for Random
//! Passphrases, 2016; CC BY 3.0 US) are 77 bits.

use std::collections::BTreeSet;

use crate::limits;
use crate::trouble::{Kind, Trouble};

const WORDS: &str = include_str!("passphrase_words.txt");

/// Makes a passphrase up, with the randomness of the operating system.
///
/// # Errors
/// Where the operating system gives none.
pub fn make() -> Result<String, Trouble> {
    let list: Vec<&str> = WORDS.lines().collect();
    let most = list.len() as u32;
    let mut words: Vec<&str> = Vec::new();
    while words.len() < limits::PASSPHRASE_WORDS {
        let mut bytes = [0_u8; 4];
        getrandom::fill(&mut bytes).map_err(|_| Trouble::new(Kind::Fault, "trouble-fault"))?;
        let drawn = u32::from_le_bytes(bytes);
        // The last stretch, which is no whole list, would favour the first words.
        let fair = drawn < u32::MAX - u32::MAX % most;
        words.extend(list.get((drawn % most) as usize).filter(|_| fair));
    }
    Ok(words.join(" "))
}

/// A passphrase of one's own, as it is sealed with.
///
/// # Errors
/// `bad-passphrase-empty`; `bad-passphrase-weak` where somebody could try it out.
pub fn own(typed: &str, field: &'static str) -> Result<String, Trouble> {
    let typed = typed.trim();
    if typed.is_empty() {
        return Err(Trouble::bad(field, "bad-passphrase-empty"));
    }
    let different: BTreeSet<char> = typed.chars().filter(|c| !c.is_whitespace()).collect();
    if typed.chars().count() < limits::PASSPHRASE || different.len() < limits::PASSPHRASE_DIFFERENT {
        let weak = Trouble::bad(field, "bad-passphrase-weak").with("least", limits::PASSPHRASE);
        return Err(weak.with("different", limits::PASSPHRASE_DIFFERENT));
    }
    Ok(typed.to_owned())
}
