//! The one reducer: an event and the present in, a screen and effects out.
//!
//! A tap that was answered is on disk. What went wrong is a
//! [`Trouble`](crate::trouble::Trouble), and the record is as it was. One file
//! a family of events: [`session`] while one runs, [`amounts`] after it,
//! [`enter`] for fields, [`kit`] for checks, [`trace`] for traces, [`whole`] for the record as a
//! whole.

mod amounts;
mod asked;
mod caution;
mod desk;
mod enter;
mod erase;
mod files;
mod kit;
mod plan;
mod session;
mod sharing;
mod step;
mod supply;
mod tonight;
mod trace;
mod whole;

pub use whole::look_after;

use std::path::PathBuf;

use age::secrecy::{ExposeSecret, SecretString};
use serde_json::json;

use crate::gather::{caution as cautions, Record};
use crate::journal::{Journal, KeptDay, Salvaged};
use crate::screen::shapes::{Clock, Effect, Event, Opening, Place, Screen, Tone, Update};
use crate::screen::{self, AlarmsAre, Said, View};
use crate::share::exchange::Report;
use crate::share::sealed::passphrase;
use crate::share::sheet::Press;
use crate::text::Texts;
use crate::time::{Instant, Zone};
use crate::trouble::{Kind, Trouble};

/// The program over one journal.
#[derive(Debug)]
pub struct App {
    /// None only after a damaged file could not be set aside.
    journal: Option<Journal>,
    path: PathBuf,
    opening: Opening,
    texts: Texts,
    /// Where the person is; the last is shown, the ones before lead back.
    places: Vec<Place>,
    said: Vec<Said>,
    report: Option<Report>,
    /// The trace whose file was asked for.
    awaits: Option<String>,
    /// For whom it is open.
    purpose: desk::For,
    /// To seal with, until the file is written or something else is done; nowhere but here.
    passphrase: Option<SecretString>,
    /// A passphrase that was made up to be offered.
    offered: Option<SecretString>,
    /// What waits for a yes.
    waiting: Option<asked::Waiting>,
    /// A sealed file that waits for its passphrase.
    waits: Option<Vec<u8>>,
    /// How the host can call, as it said last.
    alarms: AlarmsAre,
    /// What sets the visit sheet, where there is one.
    press: Option<Press>,
    /// Days that had to be worked out for what was shown last.
    worked_out: Vec<KeptDay>,
}

/// The present, as one call sees it.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Present {
    pub(crate) now: Instant,
    pub(crate) zone: Zone,
}

impl Present {
    /// The host's own clock goes before the zone's data. A zone that is not known here stands
    /// for universal time, and is said.
    pub(crate) fn read(clock: &Clock) -> (Self, bool) {
        let now = Instant::from_unix_milliseconds(clock.unix_milliseconds);
        let named = Zone::named(&clock.zone);
        let known = named.is_ok();
        let zone = named.unwrap_or(Zone::UTC);
        (Self { now, zone: clock.offset_seconds.map_or(zone, |told| zone.as_told(told, now)) }, known)
    }
}

impl App {
    /// Opens a journal, making it where there is none.
    pub fn open(path: PathBuf, opening: Opening, clock: &Clock) -> Result<Self, Trouble> {
        crate::guidance::check()?;
        let (present, _) = Present::read(clock);
        let opened = Journal::open(&path, &opening.device, present.now)?;
        let mut app = Self {
            journal: Some(opened.journal),
            path,
            texts: Texts::new(&opening.language),
            opening,
            places: vec![Place::Now],
            said: Vec::new(),
            report: None,
            awaits: None,
            purpose: desk::For::default(),
            passphrase: None,
            offered: None,
            waiting: None,
            waits: None,
            alarms: AlarmsAre::default(),
            press: None,
            worked_out: Vec::new(),
        };
        app.name_by_key(present.now)?;
        if let Some(salvaged) = opened.salvaged {
            app.tell_salvaged(&salvaged);
        }
        Ok(app)
    }

    /// Names this device where the host named none: after the key that signs, so that nobody can
    /// foresee its numbers or take them for their own.
    fn name_by_key(&mut self, now: Instant) -> Result<(), Trouble> {
        if !self.opening.device.is_empty() {
            return Ok(());
        }
        if !self.journal()?.is_named() && !self.journal()?.is_read_only() {
            let name = self.own_keys()?.device_name()?;
            self.journal_mut()?.name_device(&name, now)?;
        }
        self.opening.device = self.journal()?.device_base().to_owned();
        Ok(())
    }

    /// The same, with what sets the visit sheet: see [`crate::share::sheet`].
    #[must_use]
    pub fn with_press(self, press: Press) -> Self {
        Self { press: Some(press), ..self }
    }

    /// The sentences, to tell trouble in.
    pub fn texts(&self) -> &Texts {
        &self.texts
    }

    /// What this device is called in the record.
    pub(crate) fn device(&self) -> &str {
        &self.opening.device
    }

    fn journal(&self) -> Result<&Journal, Trouble> {
        self.journal.as_ref().ok_or_else(|| Trouble::new(Kind::Damaged, "trouble-damaged"))
    }

    fn journal_mut(&mut self) -> Result<&mut Journal, Trouble> {
        self.journal.as_mut().ok_or_else(|| Trouble::new(Kind::Damaged, "trouble-damaged"))
    }

    /// The record as this call sees it.
    fn read(&self, present: Present) -> Result<Record<'_>, Trouble> {
        let mut record = Record::new(self.journal()?, present.now, present.zone)?;
        if let desk::For::Reading(shared) = &self.purpose {
            record.shared = Some(shared);
        }
        Ok(record)
    }

    fn view(&self, present: Present) -> Result<View<'_>, Trouble> {
        let mut view = View::new(self.read(present)?, &self.texts);
        view.look_around = self.opening.look_around;
        view.said = &self.said;
        view.report = self.report.as_ref();
        view.alarms = self.alarms;
        view.asked = self.waiting.as_ref().map(|waiting| &waiting.asked);
        view.offered = self.offered.as_ref().map(|words| words.expose_secret());
        view.desk = self.purpose == desk::For::Desk;
        Ok(view)
    }

    /// Does what an event asks for and shows where the person then is.
    pub fn update(&mut self, event: Event, clock: &Clock) -> Result<Update, Trouble> {
        self.may(&event)?;
        let (present, known_zone) = Present::read(clock);
        self.let_go_of_what_was_said();
        if !known_zone {
            self.tell("zone-unknown", Tone::Caution);
        }
        let moves_the_plan = self.purpose == desk::For::Own && moves_the_plan(&event);
        let effects = self.mended(present, |app| {
            let mut effects = app.react(event, present)?;
            // Who goes away from a question has not said yes.
            if !app.places.contains(&Place::Asked) {
                app.waiting = None;
            }
            if moves_the_plan {
                effects.extend(app.reminder_effects(present)?);
            }
            Ok(effects)
        })?;
        let screen = self.here(clock)?;
        self.keep_days()?;
        Ok(Update { screen, effects })
    }

    /// A place as it stands.
    pub fn show(&mut self, place: &Place, clock: &Clock) -> Result<Screen, Trouble> {
        self.show_for(None, place, clock)
    }

    /// The same on a desk, for the family that a plan is written for.
    pub(crate) fn show_for(
        &mut self,
        family: Option<&View<'_>>,
        place: &Place,
        clock: &Clock,
    ) -> Result<Screen, Trouble> {
        let (present, _) = Present::read(clock);
        let card = match (&self.purpose, place) {
            (desk::For::Desk | desk::For::Own, Place::OwnCard) => Some(self.own_card()?),
            _ => None,
        };
        let (screen, worked_out) = self.mended(present, |app| {
            let mut view = app.view(present)?;
            // The desk has families' cautions in its list, and none of its own.
            if !view.desk {
                view.cautions = cautions::standing(&view)?;
            }
            view.own_card = card;
            view.family = family;
            let screen = screen::show(&view, place)?;
            Ok((screen, view.record.worked_out()))
        })?;
        self.worked_out = worked_out;
        Ok(match self.purpose {
            desk::For::Reading(_) => desk::closed(screen),
            desk::For::Desk => desk::without_places(screen),
            desk::For::Own => screen,
        })
    }

    /// Keeps the days that were worked out for what was shown, after a tap: a record that is only
    /// looked at stays as it is.
    fn keep_days(&mut self) -> Result<(), Trouble> {
        let days = std::mem::take(&mut self.worked_out);
        if !days.is_empty() && !matches!(self.purpose, desk::For::Reading(_)) {
            self.journal()?.keep_days(&days);
        }
        Ok(())
    }

    /// The place the person is in. One that is gone gives way to the one before.
    pub fn here(&mut self, clock: &Clock) -> Result<Screen, Trouble> {
        self.here_for(None, clock)
    }

    /// The same on a desk, for the family that a plan is written for.
    pub(crate) fn here_for(&mut self, family: Option<&View<'_>>, clock: &Clock) -> Result<Screen, Trouble> {
        loop {
            let place = self.place();
            match self.show_for(family, &place, clock) {
                Err(trouble) if trouble.key == "trouble-no-such-record" && self.places.len() > 1 => {
                    self.places.pop();
                }
                Ok(mut screen) => {
                    if self.places.len() < 2 {
                        screen.frame_mut().back = None;
                    }
                    return Ok(screen);
                }
                shown => return shown,
            }
        }
    }

    /// Where the person is.
    pub(crate) fn place(&self) -> Place {
        self.places.last().cloned().unwrap_or(self.first_place())
    }

    /// Runs something; where the file turns out to be damaged it is set aside,
    /// salvaged, and the trouble tells so.
    fn mended<T>(
        &mut self,
        present: Present,
        deed: impl FnOnce(&mut Self) -> Result<T, Trouble>,
    ) -> Result<T, Trouble> {
        match deed(self) {
            Err(trouble) if trouble.kind == Kind::Damaged => {
                let salvaged = self.mend(present.now)?;
                self.tell_salvaged(&salvaged);
                Err(Trouble::new(Kind::Damaged, "trouble-damaged-mended"))
            }
            other => other,
        }
    }

    fn mend(&mut self, now: Instant) -> Result<Salvaged, Trouble> {
        drop(self.journal.take());
        let opened = Journal::mend(&self.path, &self.opening.device, now)?;
        self.journal = Some(opened.journal);
        opened.salvaged.ok_or_else(|| Trouble::new(Kind::Fault, "trouble-fault"))
    }

    /// What was said after the last event; what was found in the opening stays until it is
    /// put away.
    pub(crate) fn let_go_of_what_was_said(&mut self) {
        self.said.retain(|said| said.key == SALVAGED);
    }

    fn tell(&mut self, key: &'static str, tone: Tone) {
        self.said.push(Said { key, tone, needs: Vec::new() });
    }

    fn tell_salvaged(&mut self, salvaged: &Salvaged) {
        let name = salvaged.set_aside.file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default();
        self.said.push(Said {
            key: SALVAGED,
            tone: Tone::Caution,
            needs: vec![
                ("kept", salvaged.from_file.to_string()),
                ("backup", salvaged.from_backup.to_string()),
                ("name", name),
            ],
        });
    }

    fn react(&mut self, event: Event, present: Present) -> Result<Vec<Effect>, Trouble> {
        // A file that was not written after all: its passphrase is let go.
        if !matches!(event, Event::Wake | Event::AlarmsAre { .. }) {
            self.passphrase = None;
        }
        match event {
            Event::Go { place } => {
                self.awaits = None;
                self.offered = match place {
                    Place::Sharing => Some(SecretString::from(passphrase::make()?)),
                    _ => None,
                };
                self.go(place);
                Ok(Vec::new())
            }
            Event::Back => {
                if self.places.len() > 1 {
                    self.places.pop();
                }
                Ok(Vec::new())
            }
            Event::Wake => {
                let mut effects = self.session_effects(present)?;
                effects.push(Effect::Tend);
                Ok(effects)
            }
            Event::Dismiss { notice } => {
                self.said.retain(|said| said.key != notice);
                Ok(Vec::new())
            }
            Event::Start => {
                // From wherever it was started, it runs in the first place.
                self.places = vec![Place::Now];
                self.start(present)
            }
            Event::SetUp { field, value } => self.set_up(&field, &value, present),
            Event::Mark { deed } => self.mark(deed, present),
            Event::Pain { mark, score } => self.pain(&mark, score, present),
            Event::Finish => self.finish(present),
            Event::FinishAt { session, unix_milliseconds } => {
                self.finish_at(&session, Instant::from_unix_milliseconds(unix_milliseconds), present)
            }
            Event::StillRunning { session } => self.still_running(&session, present),
            Event::DrawAmount { session, part, typed, unit } => {
                self.draw_amount(&session, part, &typed, &unit, present)
            }
            Event::StepAmount { session, part, steps } => self.step_amount(&session, part, steps, present),
            Event::AmountUnknown { session, part } => self.amount_unknown(&session, part, present),
            Event::AmountsLater { session } => self.settle(&session, "amounts-later", present),
            Event::AmountsDone { session } => self.settle(&session, "amounts-done", present),
            Event::MeasureTogether { session, together } => self.measure_together(&session, together, present),
            Event::GapIsWhole { session } => self.answer(&session, "gap_before", json!("whole"), "gap-whole", present),
            Event::GapHidesOne { session } => {
                self.answer(&session, "gap_before", json!("missed"), "gap-hides-one", present)
            }
            Event::AmountIsRight { session } => {
                self.answer(&session, "amount_is_right", json!(true), "amount-right", present)
            }
            Event::AddMissed { unix_milliseconds } => {
                self.add_missed(Instant::from_unix_milliseconds(unix_milliseconds), present)
            }
            Event::MovePlanned { unix_milliseconds, steps } => {
                self.move_planned(Instant::from_unix_milliseconds(unix_milliseconds), steps, present)
            }
            Event::SkipPlanned { unix_milliseconds } => {
                self.skip_planned(Instant::from_unix_milliseconds(unix_milliseconds), present)
            }
            Event::SnoozePlanned { unix_milliseconds } => {
                self.snooze_planned(Instant::from_unix_milliseconds(unix_milliseconds), present)
            }
            Event::HandOverCalendar => self.hand_over_calendar(present),
            Event::TakeCardIn { card } => {
                self.not_in_the_invented()?;
                self.take_card_in(&card, present)
            }
            Event::TakeWaiting => self.take_waiting(present),
            Event::LeaveWaiting => Ok(self.leave_waiting()),
            Event::WordsSame { consultant } => self.words_same(&consultant, present),
            Event::ShareWith { consultant } => self.share_with(&consultant, present),
            // These are the caseload's own.
            Event::OpenFamily { .. }
            | Event::OpenDesk { .. }
            | Event::RemoveFamily { .. }
            | Event::WatchFolder
            | Event::LeaveFolder
            | Event::FolderIs { .. }
            | Event::WritePlan { .. } => Err(Trouble::bad("", "trouble-only-on-a-desk")),
            Event::PlanAnswer { part, accept } => self.plan_answer(&part, accept, present),
            Event::PlanAcceptAll { plan } => self.plan_accept_all(&plan, present),
            Event::SendPlan { plan } => self.send_plan(&plan, present),
            Event::AddPlanPart { plan, part } => self.add_plan_part(&plan, &part, present),
            Event::LeaveSealed => {
                self.waits = None;
                self.places.retain(|place| *place != Place::Sealed);
                Ok(Vec::new())
            }
            Event::ChooseRule { part, rule } => self.choose_rule(&part, &rule, present),
            Event::EraseRecord => self.erase(present),
            Event::LeaveOut { part, out } => self.leave_out(&part, out, present),
            Event::HandOverSheet { paper } => self.hand_over_sheet(&paper, present),
            Event::HandOverSpreadsheet { table } => self.hand_over_spreadsheet(&table, present),
            Event::HandOverHealthRecord => self.hand_over_health_record(present),
            Event::AlarmsAre { exact, shown } => {
                self.alarms = AlarmsAre { exact, shown };
                Ok(Vec::new())
            }
            Event::CautionDealt { key, how } => self.caution_dealt(&key, &how, present),
            Event::SignsAgain { key, still } => self.signs_again(&key, still, present),
            Event::SinceBefore { word } => self.since_before(&word, present),
            Event::Call { which } => self.call(&which, present),
            Event::BeginCheck { pump } => self.begin_check(&pump, present),
            Event::ReadAt { check, level, side } => self.read_at(&check, level, &side, present),
            Event::ReadingsAreRight { check } => self.readings_are_right(&check, present),
            Event::MeantIn { id, unit } => self.meant_in(&id, &unit, present),
            Event::BeginTrace { pump } => self.begin_trace(&pump, present),
            Event::PickTrace { trace } => self.pick_trace(&trace, present),
            Event::Add { kind, days_back } => self.add(&kind, days_back, present),
            Event::Enter { id, typed, .. } if id == crate::screen::CARD => self.take_card_in(&typed, present),
            Event::Enter { id, typed, .. } if id == crate::screen::SEAL_PASSPHRASE => {
                self.share_by_passphrase(&typed, present)
            }
            Event::Enter { id, typed, .. } if id == crate::screen::OPEN_PASSPHRASE => self.open_sealed(&typed, present),
            Event::Enter { id, field, typed } => self.enter(&id, &field, &typed, present),
            Event::Step { id, field, steps } => self.step(&id, &field, steps, present),
            Event::Clear { id, field } => self.clear(&id, &field, present),
            Event::TakeOut { id } => self.take_record_out(&id, true, present),
            Event::BringBack { id } => self.take_record_out(&id, false, present),
            Event::Undo => self.undo(present),
            Event::Redo => self.redo(present),
            Event::HandOverRecord => self.hand_over(present),
            Event::PickRecord => Ok(vec![Effect::PickFile {
                key: "record".to_owned(),
                content_types: vec![crate::share::exchange::CONTENT_TYPE.to_owned(), "*/*".to_owned()],
            }]),
            Event::LookAround => Ok(vec![Effect::OpenLookAround]),
            Event::LeaveLookAround => Ok(vec![Effect::CloseLookAround]),
        }
    }

    /// A record or a report is opened over where the person is; the places at
    /// the foot of the screen begin anew.
    fn go(&mut self, place: Place) {
        match place {
            // A day is looked at from the first place, and leads back to it.
            Place::Day { .. } => self.places = vec![Place::Now, place],
            Place::Family if self.places.is_empty() || !self.places.contains(&Place::Visit) => {
                self.places = vec![Place::Visit, place];
            }
            Place::Entry { .. }
            | Place::Family
            | Place::Caution { .. }
            | Place::Consultant { .. }
            | Place::Plan { .. }
            | Place::PlanRules { .. }
            | Place::Erasing
            | Place::Tables
            | Place::Sharing
            | Place::OwnCard
            | Place::CaseFamily { .. }
            | Place::Removing { .. }
            | Place::Sealed
            | Place::Asked
            | Place::Cautions
            | Place::Report
            | Place::Sheet
            | Place::SupplyFigures { .. }
            | Place::Compare { .. }
            | Place::Pump { .. }
            | Place::Check { .. }
            | Place::Trace { .. }
            | Place::Fit => {
                if self.places.last() != Some(&place) {
                    self.places.push(place);
                }
            }
            _ => self.places = vec![place],
        }
    }
}

/// Key of the notice about a salvaged file.
const SALVAGED: &str = "salvaged";

/// Whether what was done may change when the person is to be called.
fn moves_the_plan(event: &Event) -> bool {
    matches!(
        event,
        Event::Wake
            | Event::Start
            | Event::Finish
            | Event::FinishAt { .. }
            | Event::AmountsDone { .. }
            | Event::AddMissed { .. }
            | Event::Add { .. }
            | Event::Enter { .. }
            | Event::Step { .. }
            | Event::Clear { .. }
            | Event::TakeOut { .. }
            | Event::BringBack { .. }
            | Event::MovePlanned { .. }
            | Event::SkipPlanned { .. }
            | Event::SnoozePlanned { .. }
            | Event::TakeWaiting
            | Event::Undo
            | Event::Redo
    )
}

fn buzz(key: &str) -> Effect {
    Effect::Buzz { key: key.to_owned() }
}
