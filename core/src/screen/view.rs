//! What a screen looks from: the journal, the present, the settings, the words.

use super::frame::Said;
use super::shapes::ListRow;
use super::Words;
use crate::guidance::CaseloadRules;
use crate::journal::Journal;
use crate::record::{text, Fields, Kind, Session, Settings, SETTINGS};
use crate::share::exchange::Report;
use crate::share::sealed::card::Card;
use crate::text::Texts;
use crate::time::{Instant, LocalDay, Moment, Zone};
use crate::trouble::{Kind as TroubleKind, Trouble};

/// Everything a screen may look at.
pub struct View<'a> {
    /// The record.
    pub journal: &'a Journal,
    /// The sentences.
    pub texts: &'a Texts,
    /// The present.
    pub now: Instant,
    /// The zone the person is in, or has chosen.
    pub zone: Zone,
    /// How the person wants things.
    pub settings: Settings,
    /// Whether this is the invented family's record.
    pub look_around: bool,
    /// What was said after the last event, if anything.
    pub said: &'a [Said],
    /// What came of the last file, if one was brought in.
    pub report: Option<&'a Report>,
    /// How the host can call.
    pub alarms: AlarmsAre,
    /// What a consultant's desk keeps once for all families, where it is looked at there.
    pub shared: Option<&'a Shared>,
    /// What waits for a yes.
    pub asked: Option<&'a super::Asked>,
    /// A passphrase that was made up, where one is offered.
    pub offered: Option<&'a str>,
    /// The consultant's own card, where it is asked for.
    pub own_card: Option<Card>,
    /// Whether this is the record of a consultant's desk.
    pub desk: bool,
    /// On the desk, the record that a plan is written for, as it was shared last.
    pub(crate) family: Option<&'a View<'a>>,
}

/// What a consultant's desk keeps once for all families.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Shared {
    /// Pumps with their makers' ranges, by their name.
    pub pumps: Vec<Fields>,
    /// Gauges, by their name.
    pub gauges: Vec<Fields>,
    /// Flange sizes in stock.
    pub flange_sizes: Option<serde_json::Value>,
    /// When a family needs a look.
    pub rules: CaseloadRules,
}

impl Shared {
    /// Adds to a family's pump or gauge what the desk knows of one of the same name. What
    /// the family's own record says goes before.
    pub fn complete(&self, kind: Kind, fields: &mut Fields) {
        let known = match kind {
            Kind::Pump => &self.pumps,
            Kind::Gauge => &self.gauges,
            _ => return,
        };
        let name = |fields: &Fields| text(fields, "name").map(|name| name.trim().to_lowercase());
        let Some(own) = name(fields) else { return };
        if let Some(same) = known.iter().find(|other| name(other).as_deref() == Some(own.as_str())) {
            for (key, value) in same {
                fields.entry(key.clone()).or_insert_with(|| value.clone());
            }
        }
    }
}

/// How the host can call the person, as far as it said.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct AlarmsAre {
    /// On the minute.
    pub exact: bool,
    /// So that it is seen.
    pub shown: bool,
}

impl Default for AlarmsAre {
    fn default() -> Self {
        Self { exact: true, shown: true }
    }
}

impl<'a> View<'a> {
    /// A view at a moment, in the device's zone unless another was chosen.
    pub fn new(journal: &'a Journal, texts: &'a Texts, now: Instant, device_zone: Zone) -> Result<Self, Trouble> {
        let settings = Settings::read(&journal.record(SETTINGS)?.map(|(_, f)| f).unwrap_or_default());
        Ok(Self {
            journal,
            texts,
            now,
            // What the host told of its own zone is not said of another.
            zone: settings.zone.filter(|chosen| chosen.name() != device_zone.name()).unwrap_or(device_zone),
            settings,
            look_around: false,
            said: &[],
            report: None,
            alarms: AlarmsAre::default(),
            shared: None,
            asked: None,
            offered: None,
            own_card: None,
            desk: false,
            family: None,
        })
    }

    /// What is found in the record that a plan is written for. Where that record is damaged
    /// nothing is: it is no trouble of this one, which would be mended for it.
    pub(in crate::screen) fn in_family<T>(&self, look: impl FnOnce(&View<'_>) -> Result<T, Trouble>) -> Option<T> {
        self.family.and_then(|family| look(family).ok())
    }

    /// The words of this view.
    pub fn words(&self) -> Words<'_> {
        Words::new(self.texts, &self.settings)
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
    pub fn record(&self, id: &str) -> Result<(Kind, Fields), Trouble> {
        self.journal.record(id)?.ok_or_else(|| Trouble::new(TroubleKind::Missing, "trouble-no-such-record"))
    }

    /// A row that tells and opens nothing.
    pub(super) fn told_row(&self, title: String, detail: String) -> ListRow {
        let spoken =
            self.words().with("row-spoken", &[("title", title.clone().into()), ("detail", detail.clone().into())]);
        ListRow { title, detail, aside: String::new(), spoken, open: None }
    }

    /// A session that is there.
    pub fn session(&self, id: &str) -> Result<Session, Trouble> {
        Ok(Session::read(id, &self.record(id)?.1))
    }
}
