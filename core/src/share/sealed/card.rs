//! A card: the public keys of a consultant and her name, as one line of text; or those of
//! another phone of the family (`drawwell:phone?…`).
//!
//! `drawwell:consultant?name=…&seal=age1…&sign=RW…`, percent-encoded (RFC 3986). A QR
//! code of it opens the app from the phone's own camera; the same line can be pasted.

use std::str::FromStr;

use minisign::PublicKey;
use percent_encoding::{percent_decode_str, utf8_percent_encode, AsciiSet, NON_ALPHANUMERIC};

use super::spoken;
use crate::limits;
use crate::share::names;
use crate::trouble::Trouble;

/// What stands unchanged in a value: RFC 3986's unreserved characters.
const ENCODED: &AsciiSet = &NON_ALPHANUMERIC.remove(b'-').remove(b'.').remove(b'_').remove(b'~');

/// Whose keys are on a card.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Whose {
    /// A consultant's.
    Consultant,
    /// Those of another phone of the family.
    Phone,
}

impl Whose {
    const ALL: [Self; 2] = [Self::Consultant, Self::Phone];

    /// How its card begins.
    const fn start(self) -> &'static str {
        match self {
            Self::Consultant => "drawwell:consultant?",
            Self::Phone => "drawwell:phone?",
        }
    }
}

/// The public keys of a consultant, or of another phone.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Card {
    /// Whose they are.
    pub whose: Whose,
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
            "{}name={}&seal={}&sign={}",
            self.whose.start(),
            encoded(&names::leaves(&self.name)),
            encoded(&self.sealing_key),
            encoded(&self.signing_key)
        )
    }

    /// Whether a text begins as a card does.
    pub fn is_card(text: &str) -> bool {
        Whose::ALL.iter().any(|whose| text.trim_start().starts_with(whose.start()))
    }

    /// Reads a card.
    ///
    /// # Errors
    /// `bad-card` where it is none, `bad-card-key` where a key on it can't be one.
    pub fn read(text: &str) -> Result<Self, Trouble> {
        let bad = || Trouble::bad("card", "bad-card");
        let text: String = text.split_whitespace().collect();
        let begun = |whose: Whose| text.strip_prefix(whose.start()).map(|values| (whose, values));
        let short = text.len() <= limits::CARD;
        let (whose, values) = Whose::ALL.into_iter().find_map(begun).filter(|_| short).ok_or_else(bad)?;
        let value = |key: &str| {
            let mut pairs = values.split('&').filter_map(|pair| pair.split_once('='));
            let (_, value) = pairs.find(|(name, _)| *name == key).ok_or_else(bad)?;
            percent_decode_str(value).decode_utf8().map(|text| text.into_owned()).map_err(|_| bad())
        };
        let name = names::leaves(&value("name")?).chars().take(limits::CARD_NAME).collect();
        let card = Self { whose, name, sealing_key: value("seal")?, signing_key: value("sign")? };
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
