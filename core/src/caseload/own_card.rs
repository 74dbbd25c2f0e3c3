//! The consultant's own card, to be handed on.

use super::state::Caseload;
use crate::trouble::Trouble;

impl Caseload {
    /// The line that her QR code holds.
    ///
    /// # Errors
    /// Where the own keys can't be read.
    pub fn own_card(&mut self) -> Result<String, Trouble> {
        Ok(self.desk.own_card()?.write())
    }
}
