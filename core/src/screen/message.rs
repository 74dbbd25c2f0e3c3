//! What is said after an event, until the next one.

use super::shapes::{Place, Tone};
use crate::trouble::Detail;

/// Something said after an event, until the next one.
#[derive(Debug, Clone, PartialEq)]
pub struct Message {
    /// Key of the sentence.
    pub key: &'static str,
    /// How it is meant.
    pub tone: Tone,
    /// What the sentence needs.
    pub needs: Vec<(&'static str, Detail)>,
    /// What can be done about it: the word on it, and where that is.
    pub leads_to: Option<(&'static str, Place)>,
}
