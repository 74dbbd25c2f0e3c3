//! An event done: one family of events a file.

use super::changes::Changes;
use super::state::{App, Present, Purpose};
use crate::screen::shapes::{Clock, Effect, Event, Place, Tone, Update};
use crate::screen::AlarmsAre;
use crate::share::sealed::passphrase;
use crate::time::Instant;
use crate::trouble::Trouble;
use age::secrecy::SecretString;
use serde_json::json;

impl App {
    /// Does what an event asks for and shows where the person then is.
    ///
    /// # Errors
    /// Where the event can't be done: the record is as it was.
    pub fn update(&mut self, event: Event, clock: &Clock) -> Result<Update, Trouble> {
        if self.locked {
            let effects = self.react_locked(&event, clock)?;
            return Ok(Update { screen: self.here(clock)?, effects });
        }
        self.check_allowed(&event)?;
        let (present, known_zone) = Present::read(clock);
        self.clear_messages();
        if !known_zone {
            self.tell("zone-unknown", Tone::Caution);
        }
        let changes = Changes::of(&event);
        let before = self.place();
        let is_new = !changes.only_reads() && !matches!(event, Event::Undo | Event::Redo);
        let may_end_something = !changes.only_reads() && !matches!(event, Event::Undo);
        let moves_the_plan = self.purpose == Purpose::Own && changes.moves_the_plan();
        let effects = self.recovering(present, |app| {
            let mut effects = app.react(event, present)?;
            if may_end_something && app.purpose == Purpose::Own {
                app.end_what_is_over(present)?;
            }
            // Who goes away from a question has not said yes.
            if !app.places.contains(&Place::Asked) {
                app.waiting = None;
            }
            if moves_the_plan {
                effects.extend(app.reminder_effects(present)?);
            }
            Ok(effects)
        })?;
        if is_new {
            self.acted_at = Some([before, self.place()]);
        }
        let screen = self.here(clock)?;
        self.keep_days()?;
        Ok(Update { screen, effects })
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
                if self.places.last() == Some(&Place::Recovery) {
                    // The code was shown, and is nowhere any more.
                    self.offered = None;
                }
                if self.places.len() > 1 {
                    self.places.pop();
                }
                Ok(Vec::new())
            }
            Event::Wake => {
                let mut effects = self.session_effects(present)?;
                effects.push(Effect::Maintain);
                Ok(effects)
            }
            Event::Dismiss { notice } => {
                self.messages.retain(|said| said.key != notice);
                Ok(Vec::new())
            }
            Event::Start => {
                // From wherever it was started, it runs in the first place.
                self.places = vec![Place::Now];
                self.start(present)
            }
            Event::JustPumped { minutes_ago, lasted_minutes } => self.just_pumped(minutes_ago, lasted_minutes, present),
            Event::Begin => self.begin(present),
            Event::StartingAnswer { question, answer } => self.starting_answer(question, &answer, present),
            Event::SetUp { field, value } => self.set_up(&field, &value, present),
            Event::Mark { deed } => self.mark(deed, present),
            Event::SoFar { typed, unit } => self.so_far(&typed, &unit, present),
            Event::Pain { mark, score } => self.pain(&mark, score, present),
            Event::Finish => self.finish(present),
            Event::FinishAt { session, unix_milliseconds } => {
                self.finish_at(&session, Instant::from_unix_milliseconds(unix_milliseconds), present)
            }
            Event::StillRunning { session } => self.still_running(&session, present),
            Event::DrawAmount { session, part, typed, unit } => {
                self.draw_amount(&session, part, &typed, &unit, present)
            }
            Event::StepAmount { session, part, steps, fine } => self.step_amount(&session, part, steps, fine, present),
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
            Event::TakeCardIn { card } => {
                self.not_in_the_invented()?;
                self.import_card(&card, present)
            }
            Event::TakeWaiting => self.take_waiting(present),
            Event::LeaveWaiting => Ok(self.leave_waiting()),
            Event::WordsSame { consultant } => self.words_same(&consultant, present),
            Event::OnDesk { .. } => Err(Trouble::bad("", "trouble-only-on-a-desk")),
            Event::PlanAnswer { part, accept } => self.plan_answer(&part, accept, present),
            Event::PlanAcceptAll { plan } => self.plan_accept_all(&plan, present),
            Event::AddPlanPart { plan, part } => self.add_plan_part(&plan, &part, present),
            Event::LeaveSealed => {
                self.waits = None;
                self.places.retain(|place| *place != Place::Sealed);
                Ok(Vec::new())
            }
            Event::ChooseRule { part, rule } => self.choose_rule(&part, &rule, present),
            Event::EraseRecord => self.erase(present),
            Event::MakeRecovery => self.make_recovery(),
            Event::SealWithCode => self.seal_with_code(present),
            Event::LeaveOut { part, out } => self.leave_out(&part, out, present),
            Event::GiveConsent { scope, months } => self.give_consent(&scope, months, present),
            Event::WithdrawConsent => self.withdraw_consent(present),
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
            Event::KeepMilk { session, kept_in } => self.keep_milk(&session, &kept_in, present),
            Event::PourInto { session, container } => self.pour_into(&session, &container, present),
            Event::Milk { container, deed } => self.milk(&container, &deed, present),
            Event::Cleaned { how } => self.cleaned(&how, present),
            Event::StartSearch { searched, beyond } => self.start_search(searched, beyond, present),
            Event::SearchAt => self.search_at(present),
            Event::StopSearch => self.stop_search(present),
            Event::BeginTrial { id, seed } => self.begin_trial(&id, seed, present),
            Event::TrialDone { session, way } => self.trial_done(&session, &way, present),
            Event::StopTrial { id, settled } => self.stop_trial(&id, settled, present),
            Event::Add { kind, days_back } => self.add(&kind, days_back, present),
            Event::Enter { id, typed, .. } if id == crate::screen::CARD => self.import_card(&typed, present),
            Event::EnterSecret { id, secret } => self.enter_secret(&id, &secret, present),
            Event::Enter { id, field, typed } => self.enter(&id, &field, &typed, present),
            Event::Step { id, field, steps } => self.step(&id, &field, steps, present),
            Event::Clear { id, field } => self.clear(&id, &field, present),
            Event::Remove { id } => self.remove_record(&id, true, present),
            Event::BringBack { id } => self.remove_record(&id, false, present),
            Event::Undo => self.undo(present),
            Event::Redo => self.redo(present),
            Event::Export { what } => self.ask_where(what, present),
            Event::PickRecord => Ok(vec![Effect::PickFile {
                key: "record".to_owned(),
                content_types: vec![crate::share::exchange::CONTENT_TYPE.to_owned(), "*/*".to_owned()],
            }]),
            Event::LookAround => Ok(vec![Effect::OpenLookAround]),
            Event::LeaveLookAround => Ok(vec![Effect::CloseLookAround]),
        }
    }
}
