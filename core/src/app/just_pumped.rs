//! A session that is over already, logged with two taps.

use serde_json::json;

use super::state::{buzz, App, Present};
use crate::gather::next_session::SetUp;
use crate::record::{check, Kind, Session};
use crate::screen::shapes::{Effect, Place};
use crate::time::{Moment, Span};
use crate::trouble::Trouble;

impl App {
    /// Logs it as it is set up, and asks what came. Where its length is not known only its end is
    /// kept: no length is made up for it.
    pub(super) fn just_pumped(
        &mut self,
        minutes_ago: u32,
        lasted_minutes: Option<u32>,
        present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let set_up = SetUp::next(&record)?;
        let back = |minutes: u32| Span::minutes(i64::from(minutes));
        let ended = present.now.minus(back(minutes_ago));
        let started = Moment::new(ended.minus(back(lasted_minutes.unwrap_or(0))), record.zone);
        let mut fields = crate::record::Fields::new();
        let mut put = |field: &str, value| fields.insert(field.to_owned(), value);
        put("kind", json!(Kind::Session.name()));
        put("started", started.to_json());
        if lasted_minutes.is_some() {
            put("ended", Moment::new(ended, record.zone).to_json());
        }
        put("method", json!(set_up.method));
        put("sides", json!(set_up.sides.name()));
        if let Some(pump) = &set_up.pump {
            put("pump", json!(pump));
        }
        put("afterwards", json!(true));
        check::whole_record(Kind::Session, &fields, Some(present.now), None)?;
        let id = self.journal_mut()?.act("add", "", present.now, |w| {
            let id = w.new_id();
            fields.iter().try_for_each(|(field, value)| w.set(&id, field, value))?;
            Ok(id)
        })?;
        self.places = vec![Place::Now];
        if Session::read(&id, &fields).collects() {
            self.go(Place::Amounts { id });
        }
        Ok(vec![buzz("add")])
    }
}
