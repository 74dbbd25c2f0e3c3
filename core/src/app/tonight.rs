//! Events of Tonight: a planned session moved, left out, put off; reminders; the plan as a
//! calendar.

use std::io::Write;

use serde_json::json;

use super::state::{buzz, App, Present};
use crate::answer::night::reminders::PUT_OFF;
use crate::answer::night::{Reminder, Reminds};
use crate::gather::tonight::TonightInputs;
use crate::record::{Kind, RHYTHM};
use crate::screen::reminder_words;
use crate::screen::shapes::Effect;
use crate::share::calendar;
use crate::time::{Instant, Moment, Span};
use crate::trouble::Trouble;

/// A planned session moves by this.
const STEP: Span = Span::minutes(15);
/// What all reminders show is shown in one slot: the later in place of the earlier.
const SLOT: &str = "tonight";

impl App {
    /// Keeps what was done with a planned session.
    fn change_plan(
        &mut self,
        name: &str,
        change: &str,
        of: Instant,
        to: Option<Instant>,
        present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let plan = TonightInputs::read(&record)?.plan;
        let there = plan.is_some_and(|plan| plan.late_since == Some(of) || plan.sessions.iter().any(|s| s.at == of));
        if !there {
            return Err(Trouble::bad("of", "bad-not-planned"));
        }
        let moment = |at: Instant| Moment::new(at, record.zone).to_json();
        let (at, of, to) = (moment(present.now), moment(of), to.map(moment));
        self.journal_mut()?.act(name, "", present.now, |w| {
            let id = w.new_id();
            w.set(&id, "kind", &json!(Kind::PlanChange.name()))?;
            w.set(&id, "at", &at)?;
            w.set(&id, "change", &json!(change))?;
            w.set(&id, "of", &of)?;
            match &to {
                Some(to) => w.set(&id, "to", to),
                None => Ok(()),
            }
        })?;
        Ok(vec![buzz(name)])
    }

    pub(super) fn move_planned(&mut self, of: Instant, steps: i32, present: Present) -> Result<Vec<Effect>, Trouble> {
        let by = Span::milliseconds(STEP.in_milliseconds().saturating_mul(steps.clamp(-96, 96).into()));
        // One that is late moves on from now, to a quarter of an hour.
        let base = if of < present.now && steps > 0 { present.now } else { of };
        let step = STEP.in_milliseconds();
        let to = Instant::from_unix_milliseconds(base.plus(by).unix_milliseconds().div_euclid(step) * step);
        if to < present.now.minus(STEP) {
            return Err(Trouble::bad("to", "bad-plan-past"));
        }
        self.change_plan("plan-moved", "moved", of, Some(to), present)
    }

    pub(super) fn skip_planned(&mut self, of: Instant, present: Present) -> Result<Vec<Effect>, Trouble> {
        self.change_plan("plan-skipped", "skipped", of, None, present)
    }

    pub(super) fn snooze_planned(&mut self, of: Instant, present: Present) -> Result<Vec<Effect>, Trouble> {
        let to = of.max(present.now).plus(PUT_OFF);
        self.change_plan("plan-snoozed", "snoozed", of, Some(to), present)
    }

    /// What the host is to call for: those of the next session, each by its own key, the
    /// others let go.
    pub(super) fn reminder_effects(&self, present: Present) -> Result<Vec<Effect>, Trouble> {
        let view = self.view(present)?;
        if view.look_around {
            return Ok(Vec::new());
        }
        let wanted = view.record(RHYTHM)?.1;
        let are_wanted = wanted.contains_key("reminders") || wanted.contains_key("night_reminders");
        let coming: Vec<Reminder> = match are_wanted && view.journal.running()?.is_none() {
            true => TonightInputs::read(&view)?.reminders(),
            false => Vec::new(),
        };
        Ok(Reminds::ALL
            .into_iter()
            .map(|reminds| {
                let key = format!("tonight-{}", reminds.name());
                match coming.iter().find(|r| r.reminds == reminds) {
                    Some(reminder) => {
                        let (title, text) = reminder_words(&view, reminder);
                        Effect::SetAlarm {
                            key,
                            slot: SLOT.to_owned(),
                            unix_milliseconds: reminder.at.unix_milliseconds(),
                            title,
                            text,
                            quiet: reminder.quiet,
                        }
                    }
                    None => Effect::ClearAlarm { key },
                }
            })
            .collect())
    }

    /// Writes the plan as iCalendar and keeps what was written, so that the next time a
    /// calendar knows each session again.
    pub(super) fn write_calendar(&mut self, file: &mut dyn Write, present: Present) -> Result<(), Trouble> {
        let view = self.view(present)?;
        let look = TonightInputs::read(&view)?;
        let Some(plan) = &look.plan else { return Err(Trouble::bad("sessions_a_day", "bad-no-plan")) };
        let before = view.record(RHYTHM)?.1.get("calendar").cloned();
        let words = view.words();
        let name = view.journal.device();
        let kept = calendar::Exported::read(before.as_ref()).after(plan, view.now, name);
        let written = calendar::write(
            &kept,
            look.gathered.frame.lead,
            &calendar::Sentences {
                calendar: words.say("calendar-name"),
                session: words.say("calendar-session"),
                alarm: words.say("calendar-alarm"),
                note: words.say("calendar-note"),
            },
            view.now,
        );
        file.write_all(written.as_bytes())
            .map_err(|_| Trouble::new(crate::trouble::Kind::Full, "trouble-cannot-write-file"))?;
        let kept = kept.to_json();
        self.journal_mut()?.quiet_act(present.now, |w| {
            w.set(RHYTHM, "kind", &json!(Kind::Rhythm.name()))?;
            w.set(RHYTHM, "calendar", &kept)
        })
    }
}
