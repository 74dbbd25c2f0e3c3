//! The desk's own record, and a family's record that is only read.

use super::changes::Changes;
use super::state::Purpose;
use std::path::PathBuf;

use serde_json::json;

use super::state::{buzz, App, Present};
use crate::gather::Shared;
use crate::guidance::{CaseloadRules, Rules};
use crate::journal::{Key, Writing};
use crate::record::{text, Fields, Kind, RULES, SETTINGS};
use crate::screen::shapes::{Clock, Effect, Event, Opening, Place};
use crate::screen::View;
use crate::share::sealed::card::{Card, Whose};
use crate::time::{Instant, Zone};
use crate::trouble::{Kind as TroubleKind, Trouble};

impl App {
    /// Opens the record of a consultant's desk.
    pub(crate) fn open_desk(path: PathBuf, key: Option<Key>, opening: Opening, clock: &Clock) -> Result<Self, Trouble> {
        let mut app = Self::open_with_key(path, key, opening, clock)?;
        app.purpose = Purpose::Desk;
        app.places = vec![Place::Desk];
        Ok(app)
    }

    /// Opens a family's record to be read: nothing in it can be changed here.
    pub(crate) fn open_to_read(
        path: PathBuf,
        key: Option<Key>,
        opening: Opening,
        shared: Shared,
        clock: &Clock,
    ) -> Result<Self, Trouble> {
        let mut app = Self::open_with_key(path, key, opening, clock)?;
        app.purpose = Purpose::Reading(shared);
        app.places = vec![Place::Supply { days: crate::screen::SUPPLY_SPAN }];
        Ok(app)
    }

    /// Refuses to change a record that is only read.
    pub(super) fn check_allowed(&self, event: &Event) -> Result<(), Trouble> {
        match self.purpose {
            Purpose::Reading(_) if !Changes::of(event).only_reads() => Err(Trouble::bad("", "trouble-only-read")),
            _ => Ok(()),
        }
    }

    /// What the desk keeps once for all families.
    pub(crate) fn shared_kit(&self) -> Result<Shared, Trouble> {
        let mut shared = Shared::default();
        for row in self.journal()?.of_kind(Kind::Pump)? {
            shared.pumps.extend(self.journal()?.record(&row.subject)?.map(|(_, fields)| fields));
        }
        for row in self.journal()?.of_kind(Kind::Gauge)? {
            shared.gauges.extend(self.journal()?.record(&row.subject)?.map(|(_, fields)| fields));
        }
        for row in self.journal()?.of_kind(Kind::OfferedPump)? {
            let offered = self.journal()?.record(&row.subject)?.map(|(_, fields)| fields);
            // What a family decides is its own.
            shared.offered.extend(offered.map(|mut fields| {
                fields.remove("decided");
                fields
            }));
        }
        let settings = self.journal()?.record(SETTINGS)?.map(|(_, fields)| fields).unwrap_or_default();
        shared.flange_sizes = settings.get("flange_sizes").cloned();
        let rules = self.journal()?.record(RULES)?.map(|(_, fields)| fields).unwrap_or_default();
        shared.rules = CaseloadRules::read(&Rules::read(&rules));
        Ok(shared)
    }

    /// The desk as it is looked at.
    pub(crate) fn desk_view(&self, now: Instant, zone: Zone) -> Result<View<'_>, Trouble> {
        self.view(Present { now, zone })
    }

    /// The family that the plan at a place is written for, by what it calls itself.
    pub(crate) fn plan_is_for(&self, place: &Place) -> Result<Option<String>, Trouble> {
        let said = |id: &str, field: &str| {
            let fields = self.journal()?.record(id)?.map(|(_, fields)| fields).unwrap_or_default();
            Ok::<_, Trouble>(text(&fields, field).map(str::to_owned))
        };
        let plan = match place {
            Place::Plan { id } => Some(id.clone()),
            Place::Entry { id } | Place::PlanRules { part: id } => said(id, "plan")?,
            _ => None,
        };
        plan.map_or(Ok(None), |plan| said(&plan, "plan_for"))
    }

    /// Says something with care after what was done.
    pub(crate) fn tell_of(&mut self, key: &'static str) {
        self.tell(key, crate::screen::shapes::Tone::Caution);
    }

    /// A record of the desk.
    pub(crate) fn record(&self, id: &str) -> Result<Option<(Kind, Fields)>, Trouble> {
        self.journal()?.record(id)
    }

    /// Records of a kind on the desk.
    pub(crate) fn ids_of(&self, kind: Kind) -> Result<Vec<String>, Trouble> {
        Ok(self.journal()?.of_kind(kind)?.into_iter().map(|row| row.subject).collect())
    }

    /// Writes on the desk what is not worth taking back.
    pub(crate) fn quietly<T>(
        &mut self,
        now: Instant,
        deed: impl FnOnce(&mut Writing<'_>) -> Result<T, Trouble>,
    ) -> Result<T, Trouble> {
        self.journal_mut()?.quiet_act(now, deed)
    }

    /// The consultant's card: her public keys, under the name she set for what she sends.
    pub(crate) fn own_card(&mut self) -> Result<Card, Trouble> {
        let keys = self.own_keys()?;
        let settings = self.journal()?.record(SETTINGS)?.map(|(_, fields)| fields).unwrap_or_default();
        Ok(Card {
            whose: if self.purpose == Purpose::Desk { Whose::Consultant } else { Whose::Phone },
            name: text(&settings, "sheet_name").unwrap_or_default().to_owned(),
            sealing_key: keys.sealing_key()?,
            signing_key: keys.signing_key()?,
        })
    }

    /// Erases what the desk wrote down of a family: its record and its plans.
    pub(crate) fn erase_case(&mut self, id: &str, clock: &Clock) -> Result<(), Trouble> {
        let (present, _) = Present::read(clock);
        let (_, case) = self.journal()?.record(id)?.unwrap_or((Kind::CaseFamily, Fields::new()));
        let family = text(&case, "family").unwrap_or_default().to_owned();
        let mut subjects = vec![id.to_owned()];
        for kind in [Kind::Plan, Kind::PlanPart] {
            for row in self.journal()?.of_kind(kind)? {
                let (_, fields) = self.journal()?.record(&row.subject)?.unwrap_or((kind, Fields::new()));
                let of_it = text(&fields, "plan_for") == Some(family.as_str())
                    || text(&fields, "plan").is_some_and(|plan| subjects.iter().any(|s| s == plan));
                if of_it {
                    subjects.push(row.subject);
                }
            }
        }
        self.journal_mut()?.erase(&subjects, present.now)
    }

    /// Begins a plan for a family, and opens it.
    pub(crate) fn write_plan(&mut self, case: &str, clock: &Clock) -> Result<Vec<Effect>, Trouble> {
        let (present, _) = Present::read(clock);
        let missing = || Trouble::new(TroubleKind::Missing, "trouble-no-such-record");
        let (_, fields) = self.journal()?.record(case)?.ok_or_else(missing)?;
        let family = text(&fields, "family").ok_or_else(missing)?.to_owned();
        let at = self.read(present)?.present().to_json();
        let id = self.journal_mut()?.act("add", "", present.now, |w| {
            let id = w.new_id();
            w.set(&id, "kind", &json!(Kind::Plan.name()))?;
            w.set(&id, "at", &at)?;
            w.set(&id, "plan_for", &json!(family))?;
            Ok(id)
        })?;
        self.go(Place::Plan { id });
        Ok(vec![buzz("add")])
    }
}
