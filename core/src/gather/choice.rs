//! What is wanted of a pump, and what is offered.

use super::Record;
use crate::answer::choice::{early, Early};
use crate::guidance::KitRules;
use crate::record::{date, Fields, Kind, Offered, Wanted, WANTED};
use crate::trouble::Trouble;

/// A pump that is offered, with its record.
pub(crate) struct Offer {
    pub id: String,
    pub fields: Fields,
    pub pump: Offered,
}

/// What a choice is made from.
pub(crate) struct ChoiceInputs {
    pub wanted: Wanted,
    /// In the order in which they were written down.
    pub offers: Vec<Offer>,
    pub rules: KitRules,
    /// The early weeks of the youngest child.
    pub early: Option<Early>,
}

impl ChoiceInputs {
    pub(crate) fn over(record: &Record<'_>) -> Result<Self, Trouble> {
        let rules = KitRules::read(record.rules()?);
        let mut offers = Vec::new();
        for row in record.journal.of_kind(Kind::OfferedPump)? {
            let (_, mut fields) = record.record(&row.subject)?;
            if let Some(shared) = record.shared {
                shared.complete(Kind::OfferedPump, &mut fields);
            }
            offers.push(Offer { pump: Offered::read(&fields), id: row.subject, fields });
        }
        let mut births = Vec::new();
        for row in record.journal.of_kind(Kind::Child)? {
            births.extend(date(&record.record(&row.subject)?.1, "birth"));
        }
        let today = record.today().date();
        let youngest = births.into_iter().filter(|birth| *birth <= today).max();
        Ok(Self {
            wanted: Wanted::read(&record.record(WANTED)?.1),
            offers,
            early: youngest.and_then(|birth| early(birth, today, &rules)),
            rules,
        })
    }

    /// Whether somebody is still choosing: a pump is offered, and none was chosen.
    pub(crate) fn is_open(&self) -> bool {
        self.open().next().is_some() && !self.offers.iter().any(|offer| offer.pump.chosen == Some(true))
    }

    /// Those that were not set aside.
    pub(crate) fn open(&self) -> impl Iterator<Item = &Offer> {
        self.offers.iter().filter(|offer| offer.pump.chosen != Some(false))
    }
}
