//! What sessions say of settings, comfort, letdowns and milk, read once for all of Comfort's
//! answers.

use std::collections::BTreeMap;

use super::changed::{changes, days_of_change, Changed, Measured, MEASURES};
use super::expected::expected;
use super::levels::curve_of;
use super::refill::curves;
use super::trial::reached;
use super::Record;
use crate::answer::comfort::{felt_in, Felt};
use crate::answer::letdown::{heard_in, Heard};
use crate::answer::milk_by_vacuum::MilkAt;
use crate::answer::pump::levels::LevelCurve;
use crate::answer::refill::{Refill, WellOf};
use crate::answer::supply::{Calendar, Side};
use crate::answer::trial::{Milk, Outcome, Reached};
use crate::answer::Estimate;
use crate::guidance::ComfortRules;
use crate::quantity::{Count, Level, Vacuum, Volume};
use crate::record::mark::Phase;
use crate::record::{Amount, Fields, Kind, Removal, Session, Sides};
use crate::time::{Instant, Span};
use crate::trouble::Trouble;

/// How far back is read: what is comfortable now, and what it was before.
pub const LOOKS_BACK: Span = Span::hours(56 * 24);

/// What Comfort looks at.
#[derive(Debug, Clone, PartialEq)]
pub struct ComfortInputs {
    /// The rules as they hold.
    pub rules: ComfortRules,
    /// Settings and how they felt, in order of time.
    pub felt: Vec<Felt>,
    /// Sessions that say a setting and nothing of how it felt.
    pub silent: Count,
    /// Letdowns, in order of time.
    pub heard: Vec<Heard>,
    /// Milk at settings of the expression phase, where they are known in mmHg.
    pub milk: Vec<MilkAt<Vacuum>>,
    /// Changes that were no trial, the latest first.
    pub changed: Vec<Changed>,
}

/// The curves of pumps by when their checks were made: many sessions share one.
#[derive(Default)]
struct Curves(BTreeMap<(String, &'static str), Vec<HeldFrom>>);

/// A curve, and from when on it held.
type HeldFrom = (Instant, Option<LevelCurve>);

impl Curves {
    /// What a level pulled in a session. A curve is looked for anew where a check lies between.
    fn of(&mut self, record: &Record<'_>, session: &Session, at: Instant) -> Result<Option<LevelCurve>, Trouble> {
        let Some(pump) = session.pump.clone() else { return Ok(None) };
        let key = (pump.clone(), session.sides.name());
        if !self.0.contains_key(&key) {
            let from = record.now.minus(LOOKS_BACK);
            let mut known = vec![(Instant::from_unix_milliseconds(i64::MIN), curve_of(record, session, from)?)];
            for row in record.journal.of_kind_since(Kind::Check, from)? {
                let Some(checked) = row.at else { continue };
                known.push((checked, curve_of(record, session, checked)?));
            }
            known.sort_by_key(|(checked, _)| *checked);
            self.0.insert(key.clone(), known);
        }
        let known = self.0.get(&key).map(Vec::as_slice).unwrap_or_default();
        let before = known.partition_point(|(checked, _)| *checked <= at);
        Ok(before.checked_sub(1).and_then(|i| known.get(i)).and_then(|(_, curve)| curve.clone()))
    }
}

/// What a session's end left each side since.
#[derive(Default)]
struct Emptied([Option<Instant>; 2]);

impl Emptied {
    fn of(&self, side: Side) -> Option<Instant> {
        match side {
            Side::Left => self.0.first().copied().flatten(),
            Side::Right => self.0.last().copied().flatten(),
        }
    }

    fn by(&mut self, removal: &Removal) {
        let [left, right] = &mut self.0;
        for (side, takes_part) in [(left, removal.sides.left()), (right, removal.sides.right())] {
            if takes_part {
                *side = Some(removal.at);
            }
        }
    }
}

impl ComfortInputs {
    /// Reads the sessions of the last weeks: the cost is the same after ten years.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn read(record: &Record<'_>) -> Result<Self, Trouble> {
        let rules = ComfortRules::read(record.rules()?);
        let from = record.now.minus(LOOKS_BACK);
        let calendar = Calendar { start: record.settings.day_start, zone: record.zone };
        let refill = curves(record, calendar, None)?;
        let before = before_each(record, from)?;
        let mut found = Self {
            rules,
            felt: Vec::new(),
            silent: Count::new(0),
            heard: Vec::new(),
            milk: Vec::new(),
            changed: Vec::new(),
        };
        let days = days_of_change(record, from)?;
        let mut measured: Vec<Measured> = MEASURES.map(|outcome| (outcome, Vec::new())).into();
        let mut curves = Curves::default();
        let mut silent = 0;
        for (session, at, fields) in sessions(record, from)? {
            let curve = curves.of(record, &session, at)?;
            let pull = |level: Level| curve.as_ref().and_then(|curve| curve.at(level)).map(|pull| pull.vacuum);
            let felt = felt_in(&session, &fields, &pull, &rules);
            let set = strongest(&session, &fields, &pull);
            silent += u32::from(felt.is_empty() && set.is_some());
            found.felt.extend(felt);
            found.heard.extend(heard_in(&session, &fields));
            if !days.is_empty() {
                let gaps = before.get(&session.id).copied().unwrap_or_default();
                for (outcome, all) in &mut measured {
                    all.push((at, reached_by(record, *outcome, &session, &fields, gaps, &refill)));
                }
            }
            if let (Some(set), Some(gaps)) = (set, before.get(&session.id)) {
                found.milk.extend(milk_of(record, &session, &fields, set, gaps, &refill));
            }
        }
        found.silent = Count::new(silent);
        found.changed = changes(record, &days, &measured)?;
        Ok(found)
    }
}

/// The sessions that are over, from an instant up to now, in order of time.
fn sessions(record: &Record<'_>, from: Instant) -> Result<impl Iterator<Item = (Session, Instant, Fields)>, Trouble> {
    let now = record.now;
    let all = record.journal.fields_of_kind_since(Kind::Session, from)?;
    Ok(all.into_iter().filter_map(move |(id, fields)| {
        let session = Session::read(&id, &fields);
        let at = session.started.as_ref().map(|at| at.instant()).filter(|at| *at <= now)?;
        (!session.is_running()).then_some((session, at, fields))
    }))
}

/// What the sessions of the last weeks say of letdowns, and of nothing else.
///
/// # Errors
/// Where the store can't be read.
pub fn heard(record: &Record<'_>) -> Result<Vec<Heard>, Trouble> {
    let all = sessions(record, record.now.minus(LOOKS_BACK))?;
    Ok(all.filter_map(|(session, _, fields)| heard_in(&session, &fields)).collect())
}

/// What was set last in the expression phase, in mmHg, where a hand set it.
fn strongest(session: &Session, fields: &Fields, pull: &dyn Fn(Level) -> Option<Estimate<Vacuum>>) -> Option<Vacuum> {
    let set = session.used_in(Phase::Expression);
    let shown = set.vacuum.map(|vacuum| vacuum.quantity());
    let by_level = || set.level.and_then(pull).map(|vacuum| vacuum.value);
    let written = || {
        let typed = fields.get("vacuum_expression").and_then(crate::quantity::Entered::<Vacuum>::from_json);
        let level = || crate::record::whole_number(fields, "level_expression").map(Level::new);
        typed.map(|typed| typed.quantity()).or_else(|| level().and_then(pull).map(|vacuum| vacuum.value))
    };
    shown.or_else(by_level).or_else(written)
}

/// When each side was emptied before each session.
fn before_each(record: &Record<'_>, from: Instant) -> Result<BTreeMap<String, [Option<Instant>; 2]>, Trouble> {
    let removals = record.journal.removals(from, record.now.plus(Span::milliseconds(1)))?;
    let mut emptied = Emptied::default();
    let mut before = BTreeMap::new();
    for removal in &removals {
        before.insert(removal.session.clone(), [emptied.of(Side::Left), emptied.of(Side::Right)]);
        emptied.by(removal);
    }
    Ok(before)
}

/// What a session reached by a measure, whatever it was set to: its milk with what was to be
/// expected of each side after its gap.
fn reached_by(
    record: &Record<'_>,
    outcome: Outcome,
    session: &Session,
    fields: &Fields,
    [left, right]: [Option<Instant>; 2],
    refill: &Refill,
) -> Reached {
    let milk = |side: Side, amount: Option<Volume>| {
        let until = session.ended.as_ref()?.instant();
        let from = match side {
            Side::Left => left,
            Side::Right => right,
        };
        let expected = from.and_then(|from| expected(refill, WellOf::Side(side), from, until, record));
        Some(Milk { amount: amount?, expected })
    };
    reached(outcome, session, fields, &milk)
}

fn milk_of(
    record: &Record<'_>,
    session: &Session,
    fields: &Fields,
    set: Vacuum,
    gaps: &[Option<Instant>; 2],
    refill: &Refill,
) -> Vec<MilkAt<Vacuum>> {
    let (Some(at), Some(ended)) = (&session.started, &session.ended) else { return Vec::new() };
    let until = ended.instant();
    let [left, right] = gaps;
    let known = |amount: &Option<Amount>| amount.as_ref().and_then(Amount::known);
    let whole = [*left, *right].into_iter().flatten().max();
    let parts = [
        (Some(Side::Left), known(&session.left).filter(|_| session.sides.left()), *left),
        (Some(Side::Right), known(&session.right).filter(|_| session.sides.right()), *right),
        (None, known(&session.together).filter(|_| session.sides == Sides::Both), whole),
    ];
    let drawn = crate::record::text(fields, "trial_drawn").is_some();
    let milk = parts.into_iter().filter_map(|(side, milk, from)| {
        let from = from.filter(|from| until > *from)?;
        let of = side.map_or(WellOf::Together, WellOf::Side);
        Some(MilkAt {
            session: session.id.clone(),
            at: at.clone(),
            side,
            setting: set,
            milk: milk?,
            expected: expected(refill, of, from, until, record),
            gap: until.since(from),
            lasted: Some(until.since(at.instant())).filter(|lasted| *lasted > Span::milliseconds(0)),
            drawn,
        })
    });
    milk.collect()
}
