//! Events of guided searches and of comparisons of two ways.

use serde_json::{json, Value};

use super::kit::of_kind;
use super::session::{add_mark, running_session};
use super::state::{buzz, App, Present};
use crate::answer::search::Next;
use crate::answer::trial::{closes, order, stops, write_order, Stop};
use crate::gather::planned_ceiling::cannot_be_compared;
use crate::gather::search::{can_search_speeds, search_of, Proposed};
use crate::gather::trial::{running, sessions_of};
use crate::gather::Record;
use crate::guidance::ComfortRules;
use crate::journal::Writing;
use crate::quantity::{Count, Entered, Quantity, Score, SpeedUnit};
use crate::record::choices::TRIAL_DONE;
use crate::record::mark::Phase;
use crate::record::session::PAINS;
use crate::record::{check, moment, text, whole_number, Fields, Kind, MarkKind, Session};
use crate::screen::shapes::{Effect, Place, Searched, Tone};
use crate::time::{Instant, Moment, Span};
use crate::trouble::{Detail, Trouble};

/// Sessions before a trial whose pain it is held against.
const BEFORE: u32 = 20;

impl App {
    /// Begins a search in the running session, on its sides and in its phase.
    pub(super) fn start_search(
        &mut self,
        searched: Searched,
        beyond: bool,
        present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let session = running_session(&record)?;
        let going_on = search_of(&record, &session)?.filter(|search| search.ended.is_none());
        if going_on.is_some() || session.method.as_deref() != Some("electric_pump") {
            return Ok(Vec::new());
        }
        if searched == Searched::Vacuum && cannot_be_compared(&record, &session, searched_phase(&session, present.now))?
        {
            return Err(Trouble::bad("search_phase", "bad-search-plan"));
        }
        let searched = match searched {
            Searched::Vacuum => "vacuum",
            Searched::Speed if can_search_speeds(&record, &session)? => "speed",
            Searched::Speed => return Ok(Vec::new()),
        };
        let at = record.present();
        let phase = searched_phase(&session, present.now).name();
        let side = session.side_at(present.now).unwrap_or(session.sides.name()).to_owned();
        self.journal_mut()?.act("start-search", "", present.now, |w| {
            let id = w.new_id();
            let mut set = |field: &str, value: Value| w.set(&id, field, &value);
            set("kind", json!(Kind::Search.name()))?;
            set("at", at.to_json())?;
            set("searched", json!(searched))?;
            set("search_side", json!(side))?;
            set("search_phase", json!(phase))?;
            if beyond {
                set("beyond", json!(true))?;
            }
            set("session", json!(session.id))
        })?;
        self.places = vec![Place::Now];
        Ok(vec![buzz("start-search")])
    }

    /// The pump is set to what the search proposes: a hand did it.
    pub(super) fn search_at(&mut self, present: Present) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let session = running_session(&record)?;
        let search = search_of(&record, &session)?.filter(|search| search.ended.is_none());
        let (mut level, mut vacuum, mut cycles) = (None, None, None);
        match search.map(|search| search.proposed) {
            Some(Proposed::Level(Next::Try(found) | Next::BackTo(found))) => level = Some(found),
            Some(Proposed::Vacuum(Next::Try(found) | Next::BackTo(found))) => {
                let unit = record.settings.vacuum;
                vacuum = Some(Entered::of(found.in_unit(unit), unit));
            }
            Some(Proposed::Speed(Next::Try(found) | Next::BackTo(found))) => {
                cycles = Some(Entered::of(found.canonical(), SpeedUnit::PerMinute));
            }
            _ => return Ok(Vec::new()),
        }
        let (at, id) = (record.present(), session.id);
        let kind = MarkKind::Setting { level, vacuum, cycles, for_discomfort: false, carried: false };
        self.journal_mut()?.act("search-at", &id, present.now, |w| add_mark(w, &id, &at, kind))?;
        Ok(vec![buzz("search-at")])
    }

    pub(super) fn stop_search(&mut self, present: Present) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let session = running_session(&record)?;
        let Some(search) = search_of(&record, &session)?.filter(|search| search.ended.is_none()) else {
            return Ok(Vec::new());
        };
        let at = record.present();
        self.journal_mut()?
            .act("stop-search", &search.id, present.now, |w| end(w, &search.id, "search_ended", "stopped", &at))?;
        Ok(vec![buzz("stop-search")])
    }

    /// Draws the order, and keeps it with what it was drawn from.
    pub(super) fn begin_trial(
        &mut self,
        id: &str,
        seed: Option<u32>,
        present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let fields = of_kind(&record, id, Kind::Trial)?;
        if text(&fields, "drawn").is_some() {
            return Ok(Vec::new());
        }
        for key in ["way_a", "way_b", "trial_design", "outcome"] {
            if text(&fields, key).is_none() {
                return Err(Trouble::bad(key, "bad-trial-unchosen"));
            }
        }
        // Milk lets down on both sides at once (Prime et al., 2009): no side has a time of its own.
        let by_time = matches!(text(&fields, "outcome"), Some("letdown" | "time_to_most"));
        if by_time && text(&fields, "trial_design") == Some("sides") {
            return Err(Trouble::bad("trial_design", "bad-trial-sides"));
        }
        let rules = ComfortRules::read(record.rules()?);
        let planned = whole_number(&fields, "trial_sessions").map_or(rules.trial_planned, Count::new);
        // The core throws no dice: the instant of the tap is as good as any.
        let seed = seed.unwrap_or((present.now.unix_milliseconds() & i64::from(u32::MAX)) as u32);
        let drawn = write_order(&order(seed, planned));
        let at = record.present();
        let others: Vec<String> = running(&record)?.into_iter().map(|(other, ..)| other).collect();
        self.journal_mut()?.act("begin-trial", id, present.now, |w| {
            // Two at once would each change what the other compares.
            for other in &others {
                end(w, other, "trial_ended", "changed", &at)?;
            }
            w.set(id, "at", &at.to_json())?;
            w.set(id, "trial_sessions", &json!(planned.get()))?;
            w.set(id, "seed", &json!(seed))?;
            w.set(id, "drawn", &json!(drawn))
        })?;
        self.places.retain(|place| *place != Place::Entry { id: id.to_owned() });
        self.go(Place::Trial { id: id.to_owned() });
        Ok(vec![buzz("begin-trial")])
    }

    /// How a session was done, as drawn or otherwise.
    pub(super) fn trial_done(&mut self, session: &str, way: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        if !TRIAL_DONE.contains(&way) {
            return Err(
                Trouble::bad("trial_done", "bad-choice").with("words", Detail::choices(TRIAL_DONE.iter().copied()))
            );
        }
        let fields = of_kind(&self.read(present)?, session, Kind::Session)?;
        let values = vec![("trial_done".to_owned(), json!(way))];
        self.set_fields(session, Kind::Session, fields, values, "trial-done", present)?;
        Ok(vec![buzz("trial-done")])
    }

    pub(super) fn stop_trial(&mut self, id: &str, settled: bool, present: Present) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let fields = of_kind(&record, id, Kind::Trial)?;
        if text(&fields, "drawn").is_none() || text(&fields, "trial_ended").is_some() {
            return Ok(Vec::new());
        }
        let (at, how) = (record.present(), if settled { "settled" } else { "stopped" });
        check::field(Kind::Trial, "trial_ended", &json!(how))?;
        self.journal_mut()?.act("stop-trial", id, present.now, |w| end(w, id, "trial_ended", how, &at))?;
        Ok(vec![buzz("stop-trial")])
    }

    /// Ends a search that is over by its last step, and a trial that has to stop: nobody presses
    /// for either.
    pub(super) fn end_what_is_over(&mut self, present: Present) -> Result<(), Trouble> {
        let record = self.read(present)?;
        let mut over: Vec<(String, &'static str, &'static str)> = Vec::new();
        if let Some(row) = record.journal.running()? {
            let session = record.session(&row.subject)?;
            if let Some(search) = search_of(&record, &session)?.filter(|search| search.ended.is_none()) {
                over.extend(search.is_over().map(|how| (search.id.clone(), "search_ended", how)));
            }
        }
        let trials = running(&record)?;
        let began: Vec<(String, Instant)> = trials.iter().map(|(id, _, began)| (id.clone(), *began)).collect();
        let later = closes(&began);
        for (id, fields, began) in &trials {
            let how = match later.contains(&id.as_str()) {
                true => Some("changed"),
                false => why_it_stops(&record, id, fields, *began)?,
            };
            over.extend(how.map(|how| (id.clone(), "trial_ended", how)));
        }
        if over.is_empty() {
            return Ok(());
        }
        let at = record.present();
        self.journal_mut()?
            .quiet_act(present.now, |w| over.iter().try_for_each(|(id, field, how)| end(w, id, field, how, &at)))?;
        if over.iter().any(|(_, field, _)| *field == "trial_ended") {
            self.tell("trial-has-ended", Tone::Quiet);
        }
        Ok(())
    }
}

/// What ends a trial by itself.
const BY_ITSELF: [&str; 3] = ["pain_rose", "caution", "finished"];
/// What made it end is looked at again for this long.
const MAY_GO_ON: Span = Span::hours(24);

impl App {
    /// A trial goes on where what ended it was taken back.
    pub(super) fn go_on_with_what_need_not_end(&mut self, present: Present) -> Result<(), Trouble> {
        let record = self.read(present)?;
        let mut goes_on = Vec::new();
        for (id, fields) in record.journal.fields_of_kind(Kind::Trial)? {
            let of_late = moment(&fields, "ended").is_some_and(|at| present.now.since(at.instant()) <= MAY_GO_ON);
            let by_itself = text(&fields, "trial_ended").is_some_and(|how| BY_ITSELF.contains(&how));
            let began = moment(&fields, "at").filter(|_| of_late && by_itself);
            let Some(began) = began else { continue };
            if why_it_stops(&record, &id, &fields, began.instant())?.is_none() {
                goes_on.push(id);
            }
        }
        if goes_on.is_empty() {
            return Ok(());
        }
        self.journal_mut()?.quiet_act(present.now, |w| {
            goes_on.iter().try_for_each(|id| {
                w.set(id, "trial_ended", &Value::Null)?;
                w.set(id, "ended", &Value::Null)
            })
        })
    }
}

/// The phase that a search is in: expression where no other was marked.
fn searched_phase(session: &Session, now: Instant) -> Phase {
    match session.phase_at(now) {
        Some((Phase::Letdown, _)) => Phase::Letdown,
        _ => Phase::Expression,
    }
}

fn end(w: &mut Writing<'_>, id: &str, field: &str, how: &str, at: &Moment) -> Result<(), Trouble> {
    w.set(id, "ended", &at.to_json())?;
    w.set(id, field, &json!(how))
}

/// Why a trial stops now, if it does.
fn why_it_stops(
    record: &Record<'_>,
    id: &str,
    fields: &Fields,
    began: Instant,
) -> Result<Option<&'static str>, Trouble> {
    let rules = ComfortRules::read(record.rules()?);
    let mut since = Vec::new();
    let mut last_place = None;
    for row in sessions_of(record, id, fields)? {
        let (_, fields) = record.record(&row.subject)?;
        since.extend(pains(&Session::read(&row.subject, &fields), &fields));
        last_place = last_place.max(whole_number(&fields, "trial_place").filter(|_| !row.running));
    }
    let mut before = Vec::new();
    for row in record.journal.latest_sessions(began, BEFORE)? {
        let (_, fields) = record.record(&row.subject)?;
        if text(&fields, "trial") == Some(id) {
            continue;
        }
        before.extend(pains(&Session::read(&row.subject, &fields), &fields));
    }
    let cautions = crate::gather::caution::active(record)?;
    let came_up = cautions.iter().any(|caution| caution.seen > began);
    Ok(match stops(&before, &since, came_up, &rules) {
        Some(Stop::PainRises) => Some("pain_rose"),
        Some(Stop::Caution) => Some("caution"),
        None => {
            let places = text(fields, "drawn").map_or(0, |drawn| drawn.chars().count());
            last_place.is_some_and(|place| place as usize + 1 >= places).then_some("finished")
        }
    })
}

/// Every pain that a session says.
fn pains(session: &Session, fields: &Fields) -> Vec<Score> {
    let marked = session.marks.iter().filter_map(|(_, mark)| match mark.kind {
        MarkKind::Pain { score } => score,
        _ => None,
    });
    let afterwards = PAINS.iter().filter_map(|(key, ..)| whole_number(fields, key).map(Score::new));
    marked.chain(afterwards).collect()
}
