//! A card: the public keys of a consultant and her name, as one line of text.
//!
//! `drawwell:consultant?name=…&seal=age1…&sign=RW…`, percent-encoded (RFC 3986). A QR
//! code of it opens the app from the phone's own camera; the same line can be pasted.

use std::str::FromStr;

use minisign::PublicKey;
use percent_encoding::{percent_decode_str, utf8_percent_encode, AsciiSet, NON_ALPHANUMERIC};

use super::spoken;
use crate::trouble::Trouble;

const START: &str = "drawwell:consultant?";
/// What stands unchanged in a value: RFC 3986's unreserved characters.
const ENCODED: &AsciiSet = &NON_ALPHANUMERIC.remove(b'-').remove(b'.').remove(b'_').remove(b'~');
/// No card is longer.
const LONGEST: usize = 2000;
/// Nor is a name on it.
const LONGEST_NAME: usize = 80;

/// The public keys of a consultant.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Card {
    /// Her name, or what she goes by.
    pub name: String,
    /// An age recipient.
    pub sealing_key: String,
    /// A minisign public key, base64.
    pub signing_key: String,
}

impl Card {
    /// The card as one line.
    pub fn write(&self) -> String {
        let encoded = |text: &str| utf8_percent_encode(text, ENCODED).to_string();
        format!(
            "{START}name={}&seal={}&sign={}",
            encoded(&self.name),
            encoded(&self.sealing_key),
            encoded(&self.signing_key)
        )
    }

    /// Whether a text begins as a card does.
    pub fn is_card(text: &str) -> bool {
        text.trim_start().starts_with(START)
    }

    /// Reads a card.
    ///
    /// # Errors
    /// `bad-card` where it is none, `bad-card-key` where a key on it can't be one.
    pub fn read(text: &str) -> Result<Self, Trouble> {
        let bad = || Trouble::bad("card", "bad-card");
        let text: String = text.split_whitespace().collect();
        let values = text.strip_prefix(START).filter(|_| text.len() <= LONGEST).ok_or_else(bad)?;
        let value = |key: &str| {
            let mut pairs = values.split('&').filter_map(|pair| pair.split_once('='));
            let (_, value) = pairs.find(|(name, _)| *name == key).ok_or_else(bad)?;
            percent_decode_str(value).decode_utf8().map(|text| text.into_owned()).map_err(|_| bad())
        };
        let name: String = value("name")?.trim().chars().filter(|c| !c.is_control()).take(LONGEST_NAME).collect();
        let card = Self { name, sealing_key: value("seal")?, signing_key: value("sign")? };
        let sealing = age::x25519::Recipient::from_str(&card.sealing_key).is_ok();
        if !sealing || PublicKey::from_base64(&card.signing_key).is_err() {
            return Err(Trouble::bad("card", "bad-card-key"));
        }
        Ok(card)
    }

    /// The words to compare by voice.
    pub fn words(&self) -> Vec<&'static str> {
        spoken::words(&self.sealing_key, &self.signing_key)
    }
}
