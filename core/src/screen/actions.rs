//! Building actions.

use super::shapes::{Action, Event, Sign, Weight};

impl Action {
    /// An ordinary action; what is spoken is its label.
    pub(crate) fn new(key: impl Into<String>, label: impl Into<String>, event: Event) -> Self {
        let label = label.into();
        Self {
            key: key.into(),
            spoken: label.clone(),
            label,
            detail: String::new(),
            event,
            weight: Weight::Plain,
            sign: Sign::None,
            chosen: false,
            open: true,
        }
    }

    pub(crate) fn sign(mut self, sign: Sign) -> Self {
        self.sign = sign;
        self
    }

    pub(crate) fn weight(mut self, weight: Weight) -> Self {
        self.weight = weight;
        self
    }

    pub(crate) fn detail(mut self, detail: impl Into<String>) -> Self {
        self.detail = detail.into();
        self
    }

    pub(crate) fn spoken(mut self, spoken: impl Into<String>) -> Self {
        self.spoken = spoken.into();
        self
    }

    pub(crate) fn chosen(mut self, chosen: bool) -> Self {
        self.chosen = chosen;
        self
    }

    pub(crate) fn open(mut self, open: bool) -> Self {
        self.open = open;
        self
    }
}
