//! Events while a session is set up and runs.

use serde_json::{json, Value};

use super::state::{buzz, App, Present};
use crate::gather::asks::ASKS_ABOUT_LONG;
use crate::gather::next_session::SetUp;
use crate::gather::Record;
use crate::journal::Writing;
use crate::quantity::{Entered, Level, Quantity, Score, Speed, SpeedUnit, Vacuum};
use crate::record::mark::{Mark, MarkKind, Phase};
use crate::record::{check, opposite, whole_number, Kind, Session, Setting, Sides, MARKS, SETTINGS};
use crate::screen::shapes::{Deed, Effect, Tone};
use crate::time::{Instant, Moment, Span};
use crate::trouble::Trouble;

/// Presses of one dial within this time are one change of setting.
const ONE_CHANGE: Span = Span::seconds(10);
/// How many sessions are looked through for what was set last time.
const LOOKS_BACK: u32 = 30;
/// What one press of the speed dial changes, in cycles per minute.
const SPEED_STEP: f64 = 2.0;
/// What one press changes where the pump shows its vacuum, in mmHg.
const VACUUM_STEP: f64 = 10.0;
/// Where the speed dial begins when no speed was ever set: the middle of the
/// usual 40 to 70 cycles per minute (common practice, no source).
pub(super) const FIRST_SPEED: f64 = 54.0;
/// The alarm that asks after a session left running.
const ALARM: &str = "session-running";

impl App {
    pub(super) fn set_up(&mut self, field: &str, value: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let spec = Kind::Settings.field(field).filter(|s| s.group.is_empty());
        let spec = spec.ok_or_else(|| Trouble::bad(field, "bad-field"))?;
        let value = crate::record::typed::read(field, spec.field_type, value, None)?;
        self.journal_mut()?.quiet_act(present.now, |w| {
            w.set(SETTINGS, "kind", &json!(Kind::Settings.name()))?;
            w.set(SETTINGS, field, &value)
        })?;
        Ok(Vec::new())
    }

    pub(super) fn start(&mut self, present: Present) -> Result<Vec<Effect>, Trouble> {
        if self.journal()?.running()?.is_some() {
            return self.session_effects(present);
        }
        let record = self.read(present)?;
        let set_up = SetUp::next(&record)?;
        let at = record.present();
        let pumps = set_up.method == "electric_pump";
        let setting = if pumps { last_setting(&record, &set_up, Phase::Letdown)? } else { Setting::default() };
        let trial = super::trial_place::place_in_trial(&record, set_up.sides)?;
        self.journal_mut()?.act("start", "", present.now, |w| {
            let id = w.new_id();
            let mut set = |field: &str, value: Value| w.set(&id, field, &value);
            set("kind", json!(Kind::Session.name()))?;
            set("started", at.to_json())?;
            set("method", json!(set_up.method))?;
            set("sides", json!(set_up.sides.name()))?;
            if let Some(pump) = &set_up.pump {
                set("pump", json!(pump))?;
            }
            for (field, value) in trial {
                set(field, value)?;
            }
            if pumps {
                add_mark(w, &id, &at, MarkKind::Phase(Phase::Letdown))?;
                add_setting(w, &id, &at, setting)?;
            }
            Ok(())
        })?;
        let mut effects = self.session_effects(present)?;
        effects.push(buzz("start"));
        Ok(effects)
    }

    /// What the host must do about a session that runs, or none that does.
    pub(super) fn session_effects(&self, present: Present) -> Result<Vec<Effect>, Trouble> {
        let view = self.view(present)?;
        let Some(row) = view.journal.running()? else {
            return Ok(vec![Effect::ClearAlarm { key: ALARM.to_owned() }, Effect::KeepScreenOn { on: false }]);
        };
        let (_, fields) = view.record(&row.subject)?;
        let asked = crate::record::moment(&fields, "asked").map(|m| m.instant());
        let from = asked.or(row.at).unwrap_or(present.now);
        let words = view.words();
        Ok(vec![
            Effect::SetAlarm {
                key: ALARM.to_owned(),
                slot: ALARM.to_owned(),
                quiet: false,
                unix_milliseconds: from.plus(ASKS_ABOUT_LONG).unix_milliseconds(),
                title: words.say("alarm-running-title"),
                text: words.say("alarm-running-text"),
            },
            Effect::KeepScreenOn { on: true },
        ])
    }

    pub(super) fn mark(&mut self, deed: Deed, present: Present) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let session = running_session(&record)?;
        let at = record.present();
        let levels = match session.pump.as_deref() {
            Some(pump) => record.journal.record(pump)?.and_then(|(_, f)| whole_number(&f, "levels")),
            None => None,
        };
        let id = session.id.clone();
        let plain = |kind: MarkKind| vec![(None, kind)];
        if deed == Deed::ChangeSide {
            return self.change_side(&session, &at, present);
        }
        let marks: Vec<(Option<String>, MarkKind)> = match deed {
            Deed::LetdownPhase => phase_marks(&record, &session, Phase::Letdown)?,
            Deed::ExpressionPhase => phase_marks(&record, &session, Phase::Expression)?,
            Deed::Rest => plain(MarkKind::Phase(Phase::Rest)),
            Deed::Letdown => plain(MarkKind::Letdown),
            Deed::Hurts => plain(MarkKind::Pain { score: None }),
            Deed::Comfortable => plain(MarkKind::Comfortable),
            Deed::Stronger | Deed::Softer | Deed::TurnedDown => {
                vec![vacuum_mark(&session, present.now, deed, levels)?]
            }
            Deed::Faster | Deed::Slower => vec![cycles_mark(&record, &session, present.now, deed)?],
            Deed::AsLastTime => confirmed(&session, present.now),
            Deed::ChangeSide => Vec::new(),
        };
        self.journal_mut()?.act(deed_name(deed), &id, present.now, |w| {
            for (amended, kind) in marks {
                match amended {
                    Some(field) => amend(w, &id, &field, kind)?,
                    None => add_mark(w, &id, &at, kind)?,
                }
            }
            Ok(())
        })?;
        Ok(vec![buzz(deed_name(deed))])
    }

    /// On with the other side: from here on it is a session of both, one after the other.
    fn change_side(&mut self, session: &Session, at: &Moment, present: Present) -> Result<Vec<Effect>, Trouble> {
        let now_on = session.side_at(present.now).unwrap_or(session.sides.name());
        let other = opposite(now_on).ok_or_else(|| Trouble::bad("sides", "bad-both-sides"))?;
        let id = session.id.clone();
        self.journal_mut()?.act("other-side", &id, present.now, |w| {
            w.set(&id, "sides", &json!(Sides::Both.name()))?;
            let field = format!("{MARKS}{}", w.new_id());
            let mark = Mark { at: at.clone(), side: Some(other.to_owned()), kind: MarkKind::OtherSide };
            w.set(&id, &field, &mark.to_json(None))
        })?;
        Ok(vec![buzz("other-side")])
    }

    pub(super) fn pain(&mut self, mark: &str, score: u32, present: Present) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let session = match record.journal.running()? {
            Some(row) => record.session(&row.subject)?,
            None => return Err(Trouble::bad("", "no-session-running")),
        };
        let there = session.marks.iter().any(|(f, m)| f == mark && matches!(m.kind, MarkKind::Pain { .. }));
        if !there {
            return Err(Trouble::bad(mark, "bad-mark"));
        }
        if score > 10 {
            return Err(crate::record::FieldType::Whole { least: 0, most: 10 }
                .check("score", &json!(score))
                .err()
                .unwrap_or_else(|| Trouble::bad("score", "bad-number")));
        }
        let (id, mark) = (session.id, mark.to_owned());
        self.journal_mut()?.act("pain", &id, present.now, |w| {
            amend(w, &id, &mark, MarkKind::Pain { score: Some(Score::new(score)) })
        })?;
        Ok(vec![buzz("pain")])
    }

    pub(super) fn finish(&mut self, present: Present) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let session = running_session(&record)?;
        self.end(&session.id, present.now, present)
    }

    pub(super) fn finish_at(&mut self, id: &str, at: Instant, present: Present) -> Result<Vec<Effect>, Trouble> {
        self.end(id, at, present)
    }

    fn end(&mut self, id: &str, at: Instant, present: Present) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let (kind, mut fields) = record.record(id)?;
        if kind != Kind::Session {
            return Err(Trouble::bad("ended", "bad-field"));
        }
        let started = crate::record::moment(&fields, "started");
        let wound_back = started.as_ref().is_some_and(|s| at < s.instant());
        // A clock that was set back must not keep a session from ending.
        let at = match &started {
            Some(started) if wound_back && at == present.now => started.instant(),
            _ => at,
        };
        let ended = Moment::new(at, record.zone).to_json();
        fields.insert("ended".to_owned(), ended.clone());
        check::whole_record(kind, &fields, Some(present.now.max(at)), None)?;
        self.journal_mut()?.act("finish", id, present.now, |w| w.set(id, "ended", &ended))?;
        if wound_back {
            self.tell("clock-went-back", Tone::Caution);
        }
        let mut effects = self.session_effects(present)?;
        effects.push(buzz("finish"));
        Ok(effects)
    }

    pub(super) fn still_running(&mut self, id: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let at = self.read(present)?.present().to_json();
        self.read(present)?.record(id)?;
        self.journal_mut()?.quiet_act(present.now, |w| w.set(id, "asked", &at))?;
        self.session_effects(present)
    }
}

/// The session that runs.
pub(super) fn running_session(record: &Record<'_>) -> Result<Session, Trouble> {
    let row = record.journal.running()?.ok_or_else(|| Trouble::bad("", "no-session-running"))?;
    record.session(&row.subject)
}

fn deed_name(deed: Deed) -> &'static str {
    match deed {
        Deed::LetdownPhase => "letdown-phase",
        Deed::ExpressionPhase => "expression-phase",
        Deed::Rest => "rest",
        Deed::Letdown => "letdown",
        Deed::Stronger => "stronger",
        Deed::Softer => "softer",
        Deed::Faster => "faster",
        Deed::Slower => "slower",
        Deed::Hurts => "hurts",
        Deed::Comfortable => "comfortable",
        Deed::TurnedDown => "turned-down",
        Deed::AsLastTime => "as-last-time",
        Deed::ChangeSide => "other-side",
    }
}

pub(super) fn add_mark(w: &mut Writing<'_>, id: &str, at: &Moment, kind: MarkKind) -> Result<(), Trouble> {
    let field = format!("{MARKS}{}", w.new_id());
    let mark = Mark { at: at.clone(), side: None, kind };
    w.set(id, &field, &mark.to_json(None))
}

/// What was set last time: what the dials are taken to show until a hand touches them.
fn add_setting(w: &mut Writing<'_>, id: &str, at: &Moment, setting: Setting) -> Result<(), Trouble> {
    match carried_over(setting) {
        Some(kind) => add_mark(w, id, at, kind),
        None => Ok(()),
    }
}

fn carried_over(setting: Setting) -> Option<MarkKind> {
    let Setting { level, vacuum, cycles } = setting;
    (level.is_some() || vacuum.is_some() || cycles.is_some()).then_some(MarkKind::Setting {
        level,
        vacuum,
        cycles,
        for_discomfort: false,
        carried: true,
    })
}

/// Changes what a mark says and keeps when it was made and what else is in it.
fn amend(w: &mut Writing<'_>, id: &str, field: &str, kind: MarkKind) -> Result<(), Trouble> {
    let (_, fields) = w.record(id)?.ok_or_else(|| Trouble::bad(field, "bad-mark"))?;
    let before = fields.get(field).ok_or_else(|| Trouble::bad(field, "bad-mark"))?;
    let mark = Mark { kind, ..Mark::from_json(field, before)? };
    w.set(id, field, &mark.to_json(Some(before)))
}

/// A phase begins: with it comes what was last set for it.
fn phase_marks(
    record: &Record<'_>,
    session: &Session,
    phase: Phase,
) -> Result<Vec<(Option<String>, MarkKind)>, Trouble> {
    let mut marks = vec![(None, MarkKind::Phase(phase))];
    if session.method.as_deref() != Some("electric_pump") {
        return Ok(marks);
    }
    let own = setting_of_phase(session, phase, record.now);
    let set_up = SetUp { method: "electric_pump".to_owned(), sides: session.sides, pump: session.pump.clone() };
    let wanted = match own {
        Some(own) => own,
        None => last_setting(record, &set_up, phase)?,
    };
    marks.extend(carried_over(wanted).map(|kind| (None, kind)));
    Ok(marks)
}

/// What was set at the end of the last stretch of a phase.
fn setting_of_phase(session: &Session, phase: Phase, end: Instant) -> Option<Setting> {
    let phases = session.phases();
    let (index, _) = phases.iter().enumerate().rev().find(|(_, (p, _))| *p == phase)?;
    let until = phases.get(index + 1).map_or(end, |(_, next)| next.minus(Span::milliseconds(1)));
    let setting = session.setting_at(until);
    (setting != Setting::default()).then_some(setting)
}

/// What was set last time for a phase, on this pump and these sides.
fn last_setting(record: &Record<'_>, set_up: &SetUp, phase: Phase) -> Result<Setting, Trouble> {
    for row in record.journal.latest_sessions(record.now, LOOKS_BACK)? {
        let session = record.session(&row.subject)?;
        if session.pump != set_up.pump || session.sides != set_up.sides {
            continue;
        }
        let end = row.until.unwrap_or(record.now);
        if let Some(setting) = setting_of_phase(&session, phase, end) {
            return Ok(setting);
        }
        if let Some(setting) = written_setting(record, &row.subject, phase)? {
            return Ok(setting);
        }
    }
    Ok(Setting::default())
}

/// A setting that was written down afterwards, field by field.
fn written_setting(record: &Record<'_>, id: &str, phase: Phase) -> Result<Option<Setting>, Trouble> {
    let (_, fields) = record.record(id)?;
    let name = phase.name();
    let setting = Setting {
        level: whole_number(&fields, &format!("level_{name}")).map(Level::new),
        vacuum: fields.get(&format!("vacuum_{name}")).and_then(Entered::from_json),
        cycles: fields.get(&format!("cycles_{name}")).and_then(Entered::from_json),
    };
    Ok((setting != Setting::default()).then_some(setting))
}

/// What the dials were carried over to is right: the marks that carried it become facts, from
/// when they were made. One that says something else by now is left.
fn confirmed(session: &Session, now: Instant) -> Vec<(Option<String>, MarkKind)> {
    let shown = session.dials_at(now);
    let still = |kind: &MarkKind| match kind {
        MarkKind::Setting { level, vacuum, cycles, carried: true, .. } => {
            (level.is_some() && shown.level == level.map(|l| (l, true)))
                || (vacuum.is_some() && shown.vacuum == vacuum.clone().map(|v| (v, true)))
                || (cycles.is_some() && shown.cycles == cycles.clone().map(|c| (c, true)))
        }
        _ => false,
    };
    let latest = session.marks.iter().rev().find(|(_, mark)| mark.at.instant() <= now && still(&mark.kind));
    latest
        .map(|(field, mark)| {
            let mut kind = mark.kind.clone();
            if let MarkKind::Setting { carried, level, vacuum, cycles, .. } = &mut kind {
                *carried = false;
                // A dial that was touched since says its own.
                *level = level.filter(|_| shown.level.is_some_and(|(_, carried)| carried));
                *vacuum = vacuum.take().filter(|_| shown.vacuum.as_ref().is_some_and(|(_, carried)| *carried));
                *cycles = cycles.take().filter(|_| shown.cycles.as_ref().is_some_and(|(_, carried)| *carried));
            }
            (Some(field.clone()), kind)
        })
        .into_iter()
        .collect()
}

/// The setting mark that a press of a dial still belongs to.
fn same_change(session: &Session, now: Instant, is_same: impl Fn(&MarkKind) -> bool) -> Option<&(String, Mark)> {
    session.marks.last().filter(|(_, m)| now.since(m.at.instant()) <= ONE_CHANGE && is_same(&m.kind))
}

fn vacuum_mark(
    session: &Session,
    now: Instant,
    deed: Deed,
    levels: Option<u32>,
) -> Result<(Option<String>, MarkKind), Trouble> {
    let setting = session.setting_at(now);
    let for_discomfort = deed == Deed::TurnedDown;
    let up = deed == Deed::Stronger;
    let by_vacuum = setting.level.is_none().then_some(setting.vacuum).flatten();
    let (level, vacuum) = match (setting.level, by_vacuum) {
        (None, Some(vacuum)) => {
            let step = if up { VACUUM_STEP } else { -VACUUM_STEP };
            let next = (vacuum.quantity().canonical() + step).clamp(0.0, 760.0);
            (None, Some(in_same_unit(&vacuum, next)))
        }
        (Some(level), _) => {
            let next = if up { level.get().saturating_add(1) } else { level.get().saturating_sub(1).max(1) };
            (Some(next), None)
        }
        (None, None) if up => (Some(1), None),
        // Turned down from a level nobody wrote down: that it was turned down is known.
        (None, None) => (None, None),
    };
    if let (Some(level), Some(most)) = (level, levels) {
        if level > most {
            return Err(Trouble::bad("level", "bad-level").with("most", most));
        }
    }
    let same = same_change(session, now, |kind| {
        !for_discomfort
            && matches!(kind, MarkKind::Setting { level: l, vacuum: v, for_discomfort: false, carried: false, .. } if l.is_some() || v.is_some())
    });
    let cycles = match same.map(|(_, m)| &m.kind) {
        Some(MarkKind::Setting { cycles, .. }) => cycles.clone(),
        _ => None,
    };
    let kind = MarkKind::Setting { level: level.map(Level::new), vacuum, cycles, for_discomfort, carried: false };
    Ok((same.map(|(field, _)| field.clone()), kind))
}

fn in_same_unit(before: &Entered<Vacuum>, canonical: f64) -> Entered<Vacuum> {
    Entered::of(Vacuum::from_canonical(canonical).in_unit(before.unit()), before.unit())
}

fn cycles_mark(
    record: &Record<'_>,
    session: &Session,
    now: Instant,
    deed: Deed,
) -> Result<(Option<String>, MarkKind), Trouble> {
    let setting = session.setting_at(now);
    let step = if deed == Deed::Faster { SPEED_STEP } else { -SPEED_STEP };
    let next = match setting.cycles {
        Some(cycles) => (cycles.quantity().canonical() + step).clamp(1.0, 240.0),
        None => first_speed(record, session)?,
    };
    let same =
        same_change(session, now, |kind| matches!(kind, MarkKind::Setting { cycles: Some(_), carried: false, .. }));
    let (level, vacuum, for_discomfort) = match same.map(|(_, m)| &m.kind) {
        Some(MarkKind::Setting { level, vacuum, for_discomfort, .. }) => (*level, vacuum.clone(), *for_discomfort),
        _ => (None, None, false),
    };
    let cycles = Some(Entered::of(next, SpeedUnit::PerMinute));
    Ok((
        same.map(|(field, _)| field.clone()),
        MarkKind::Setting { level, vacuum, cycles, for_discomfort, carried: false },
    ))
}

/// The middle of the pump's stated range, where its maker states one.
fn first_speed(record: &Record<'_>, session: &Session) -> Result<f64, Trouble> {
    let Some(pump) = session.pump.as_deref() else { return Ok(FIRST_SPEED) };
    let Some((_, fields)) = record.journal.record(pump)? else { return Ok(FIRST_SPEED) };
    let bound = |key: &str| fields.get(key).and_then(Entered::<Speed>::from_json).map(|e| e.quantity().canonical());
    Ok(match (bound("cycles_low"), bound("cycles_high")) {
        (Some(low), Some(high)) => ((low + high) / 2.0).round(),
        (Some(low), None) => low,
        _ => FIRST_SPEED,
    })
}
