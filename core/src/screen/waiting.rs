//! What waits for a yes.

use crate::journal::Difference;
use crate::share::sealed::card::Card;

/// What waits for a yes.
#[derive(Debug, Clone, PartialEq)]
pub struct Asked {
    /// What it is.
    pub about: About,
    /// What it would change.
    pub differences: Vec<Difference>,
}

/// What is asked about.
#[derive(Debug, Clone, PartialEq)]
pub enum About {
    /// A consultant's card; whether one of her name is here with other keys.
    Consultant {
        /// The card.
        card: Card,
        /// Whether it would take the place of another.
        changes_key: bool,
    },
    /// The card of another phone of this family.
    Phone {
        /// The card.
        card: Card,
    },
    /// Changes of the family's own phones.
    Phones,
    /// A file that nobody signed.
    Plain,
}
