//! Building actions, and rows that open.

use super::shapes::{Action, Event, ListRow, Sign, Weight};

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

impl ListRow {
    /// The same row, with what a tap on it does.
    pub(crate) fn opens(mut self, key: impl Into<String>, event: Event) -> Self {
        let open = Action::new(key, self.title.clone(), event);
        self.open = Some(open.spoken(self.spoken.clone()).weight(Weight::Quiet));
        self
    }

    /// The same row, with the sign of what it opens.
    pub(crate) fn sign(mut self, sign: Sign) -> Self {
        self.open = self.open.map(|open| open.sign(sign));
        self
    }

    /// The same row, weighing as much as what it opens.
    pub(crate) fn weight(mut self, weight: Weight) -> Self {
        self.open = self.open.map(|open| open.weight(weight));
        self
    }

    /// The same row, chosen or not.
    pub(crate) fn chosen(mut self, chosen: bool) -> Self {
        self.open = self.open.map(|open| open.chosen(chosen));
        self
    }
}
