//! What an answer needs, read once a call.

use std::cell::{OnceCell, RefCell};
use std::collections::BTreeMap;

use super::{Shared, Watched};
use crate::guidance::Rules;
use crate::journal::{Journal, KeptDay};
use crate::record::{Fields, Kind, Session, Settings, RULES, SETTINGS};
use crate::time::{Instant, LocalDay, Moment, Zone};
use crate::trouble::{Kind as TroubleKind, Trouble};

/// A record as one call sees it. It is only read: nothing that is found through it is written.
#[derive(Debug)]
pub struct Record<'a> {
    /// Where it is kept.
    pub journal: &'a Journal,
    /// The present.
    pub now: Instant,
    /// The zone the person is in, or has chosen.
    pub zone: Zone,
    /// How the person wants things.
    pub settings: Settings,
    /// What a consultant's desk keeps once for all families, where it is looked at there.
    pub shared: Option<&'a Shared>,
    /// What the watch said last, where whoever reads keeps it from call to call.
    pub(crate) watched: Option<&'a Watched>,
    /// The rules as they hold for it; many a tap asks for none.
    rules: OnceCell<Rules>,
    /// Days that were worked out since they were not kept, for who may keep them.
    pub(super) worked_out: RefCell<BTreeMap<LocalDay, KeptDay>>,
}

impl<'a> Record<'a> {
    /// A record at a moment, in the device's zone unless another was chosen.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn new(journal: &'a Journal, now: Instant, device_zone: Zone) -> Result<Self, Trouble> {
        let settings = Settings::read(&journal.record(SETTINGS)?.map(|(_, f)| f).unwrap_or_default());
        Ok(Self {
            journal,
            now,
            // What the host told of its own zone is not said of another.
            zone: settings.zone.filter(|chosen| chosen.name() != device_zone.name()).unwrap_or(device_zone),
            settings,
            shared: None,
            watched: None,
            rules: OnceCell::new(),
            worked_out: RefCell::default(),
        })
    }

    /// The rules as they hold for it.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn rules(&self) -> Result<&Rules, Trouble> {
        if let Some(rules) = self.rules.get() {
            return Ok(rules);
        }
        let fields = self.journal.record(RULES)?.map(|(_, fields)| fields).unwrap_or_default();
        Ok(self.rules.get_or_init(|| Rules::read(&fields)))
    }

    /// The present as a moment.
    pub fn present(&self) -> Moment {
        Moment::new(self.now, self.zone)
    }

    /// Today.
    pub fn today(&self) -> LocalDay {
        LocalDay::of(&self.present(), self.settings.day_start)
    }

    /// A record that is there.
    ///
    /// # Errors
    /// `trouble-no-such-record`, or where the store can't be read.
    pub fn record(&self, id: &str) -> Result<(Kind, Fields), Trouble> {
        self.journal.record(id)?.ok_or_else(|| Trouble::new(TroubleKind::Missing, "trouble-no-such-record"))
    }

    /// A session that is there.
    ///
    /// # Errors
    /// As [`Self::record`].
    pub fn session(&self, id: &str) -> Result<Session, Trouble> {
        Ok(Session::read(id, &self.record(id)?.1))
    }

    /// The days that were worked out on the way, so that they can be kept where something is
    /// written anyway.
    pub fn worked_out(self) -> Vec<KeptDay> {
        self.worked_out.into_inner().into_values().collect()
    }
}
