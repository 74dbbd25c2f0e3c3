//! The reminder of milk that is about to lapse.

use super::state::{App, Present};
use crate::gather::keeping::KeptMilk;
use crate::record::{flag, KEEPING};
use crate::screen::shapes::Effect;
use crate::time::{Instant, Span};
use crate::trouble::Trouble;

/// The alarm.
const ALARM: &str = "kept-milk";
/// So long before milk lapses.
const BEFORE: Span = Span::hours(24);

impl App {
    /// Sets the alarm for what lapses next and can still be reminded of, where that is wanted.
    pub(super) fn milk_reminder(&self, present: Present) -> Result<Vec<Effect>, Trouble> {
        let view = self.view(present)?;
        let wanted = view.journal.record(KEEPING)?.is_some_and(|(_, fields)| flag(&fields, "remind_of_milk"));
        if view.look_around {
            return Ok(Vec::new());
        }
        let next = match wanted {
            true => next_reminder(&KeptMilk::read(&view)?, present.now),
            false => None,
        };
        let words = view.words();
        Ok(vec![match next {
            Some(at) => Effect::SetAlarm {
                key: ALARM.to_owned(),
                slot: ALARM.to_owned(),
                quiet: true,
                unix_milliseconds: at.unix_milliseconds(),
                title: words.say("kept-reminder-title"),
                text: words.say("kept-reminder-text"),
            },
            None => Effect::ClearAlarm { key: ALARM.to_owned() },
        }])
    }
}

fn next_reminder(milk: &KeptMilk, now: Instant) -> Option<Instant> {
    let ends = milk.kept.iter().filter(|one| one.is_usable(now)).filter_map(|one| one.good_until.next_end(now));
    ends.map(|at| at.minus(BEFORE)).filter(|at| *at > now).min()
}
