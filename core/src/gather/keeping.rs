//! Milk that is kept, as it is: the containers that still hold something, by the rules in force.

use std::collections::BTreeMap;

use super::Record;
use crate::answer::age::early_by;
use crate::answer::keeping::{in_force, keep, InForce, Kept, StepsBack};
use crate::answer::supply::intake::{of, NoIntake, OfChild};
use crate::answer::Estimate;
use crate::guidance::{KeepingRules, SupplyRules};
use crate::quantity::{Production, Quantity, Volume};
use crate::record::{date, flag, text, whole_number, Container, Fields, Kind, MilkEvent, Session, KEEPING};
use crate::time::{Instant, LocalDay, Span};
use crate::trouble::Trouble;

/// Sums are exact in tenths of a mL.
const TENTHS: f64 = 10.0;

/// The containers, with the rules that they are kept by.
pub(crate) struct KeptMilk {
    pub(crate) in_force: InForce,
    /// What a child that is not at home needs, where there is one.
    pub(crate) needs_unit: Option<StepsBack>,
    /// Not gone, the soonest to lapse first; what has no end that is told last.
    pub(crate) kept: Vec<Kept>,
}

/// The rules in force, and whether a child needs the unit's.
pub(crate) fn rules(record: &Record<'_>) -> Result<(InForce, Option<StepsBack>), Trouble> {
    let fields = record.journal.record(KEEPING)?.map(|(_, fields)| fields).unwrap_or_default();
    let supply = SupplyRules::read(record.rules()?);
    let needs = record
        .journal
        .fields_of_kind(Kind::Child)?
        .iter()
        .filter_map(|(_, child)| {
            let preterm =
                whole_number(child, "gestation_weeks").is_some_and(|weeks| weeks < supply.preterm_below_weeks.get());
            let why = [
                (flag(child, "in_hospital"), StepsBack::InHospital),
                (preterm, StepsBack::Preterm),
                (flag(child, "weak_defences"), StepsBack::WeakDefences),
            ];
            why.into_iter().find(|(holds, _)| *holds).map(|(_, why)| why)
        })
        .min();
    let unit = KeepingRules::of_unit(&fields);
    Ok((in_force(text(&fields, "keeping_rules"), unit.as_ref(), needs), needs))
}

/// A container as it was filled; none where it can't be read as one.
fn container(record: &Record<'_>, id: &str) -> Result<Option<Container>, Trouble> {
    let found =
        record.journal.record(id)?.filter(|(kind, fields)| *kind == Kind::Container && !flag(fields, "taken_out"));
    Ok(found.and_then(|(_, fields)| Container::read(id, &fields)))
}

/// What happened to a container, with its fields, in order of time.
pub(crate) fn events(record: &Record<'_>, container: &str) -> Result<Vec<(MilkEvent, Fields)>, Trouble> {
    let mut found = Vec::new();
    for id in record.journal.events_of_container(container)? {
        let Some((_, fields)) = record.journal.record(&id)? else { continue };
        found.extend(MilkEvent::read(&id, &fields).map(|event| (event, fields)));
    }
    found.sort_by(|(a, _), (b, _)| (a.at.instant(), &a.id).cmp(&(b.at.instant(), &b.id)));
    Ok(found)
}

fn kept_by(record: &Record<'_>, id: &str, rules: &InForce) -> Result<Option<Kept>, Trouble> {
    let Some(container) = container(record, id)? else { return Ok(None) };
    let events: Vec<MilkEvent> = events(record, id)?.into_iter().map(|(event, _)| event).collect();
    Ok(Some(keep(&container, &events, rules, record.now)))
}

/// One container, gone or not.
///
/// # Errors
/// Where the store can't be read.
pub(crate) fn one(record: &Record<'_>, id: &str) -> Result<Option<Kept>, Trouble> {
    kept_by(record, id, &rules(record)?.0)
}

impl KeptMilk {
    /// Reads what is not gone; what was emptied years ago costs nothing.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub(crate) fn read(record: &Record<'_>) -> Result<Self, Trouble> {
        let (in_force, needs_unit) = rules(record)?;
        let mut by_container: BTreeMap<String, Vec<MilkEvent>> = BTreeMap::new();
        for (id, fields) in record.journal.fields_of_events_of_those()? {
            if let Some(event) = MilkEvent::read(&id, &fields) {
                by_container.entry(event.container.clone()).or_default().push(event);
            }
        }
        let mut kept = Vec::new();
        for (id, fields) in record.journal.fields_of_containers_not_emptied()? {
            let Some(container) = Container::read(&id, &fields) else { continue };
            let events = by_container.get(&id).map(Vec::as_slice).unwrap_or_default();
            kept.extend(Some(keep(&container, events, &in_force, record.now)).filter(|one| !one.is_gone));
        }
        let end = |one: &Kept| match one.lapsed_before {
            Some(lapsed) => lapsed,
            None => one.good_until.at().unwrap_or(Instant::from_unix_milliseconds(i64::MAX)),
        };
        kept.sort_by(|a, b| (end(a), a.expressed, &a.id).cmp(&(end(b), b.expressed, &b.id)));
        Ok(Self { in_force, needs_unit, kept })
    }

    /// What is known to be left in those that can be used, and of how many it is not known.
    pub(crate) fn usable(&self, now: Instant) -> (Volume, u32) {
        sum(self.kept.iter().filter(|one| one.is_usable(now)))
    }

    /// Those that can be used and lapse within a time from now, and those that are past theirs.
    pub(crate) fn lapsing(&self, now: Instant, within: Span) -> (Vec<&Kept>, Vec<&Kept>) {
        let until = now.plus(within);
        let soon = self
            .kept
            .iter()
            .filter(|one| one.is_usable(now) && one.good_until.next_end(now).is_some_and(|at| at <= until));
        (soon.collect(), self.kept.iter().filter(|one| one.is_past(now)).collect())
    }

    /// What stands on the next label: one more than the greatest there is.
    pub(crate) fn next_label(&self) -> u32 {
        let numbers = self.kept.iter().filter_map(|one| one.label.as_deref()?.trim().parse::<u32>().ok());
        numbers.max().unwrap_or(0).saturating_add(1)
    }

    /// The containers with this label: two phones may have given the same out.
    pub(crate) fn labelled(&self, label: &str) -> usize {
        self.kept.iter().filter(|one| one.label.as_deref() == Some(label)).count()
    }
}

/// What is known to be left in some, and of how many it is not known.
pub(crate) fn sum<'k>(some: impl Iterator<Item = &'k Kept>) -> (Volume, u32) {
    let (mut tenths, mut unknown) = (0_i64, 0);
    for one in some {
        match one.left {
            Some(left) => tenths += (left.canonical() * TENTHS).round() as i64,
            None => unknown += 1,
        }
    }
    (Volume::from_canonical(tenths as f64 / TENTHS), unknown)
}

/// What came in a session and is in no container yet; none where it is not known what came.
///
/// # Errors
/// Where the store can't be read.
pub(crate) fn not_kept_yet(record: &Record<'_>, session: &Session) -> Result<Option<Volume>, Trouble> {
    let known = |amount: &Option<crate::record::Amount>| amount.as_ref().and_then(crate::record::Amount::known);
    let tenths = |volume: Volume| (volume.canonical() * TENTHS).round() as i64;
    let came = match known(&session.together) {
        Some(together) => Some(tenths(together)),
        None => {
            let sides = [(session.sides.left(), known(&session.left)), (session.sides.right(), known(&session.right))];
            let took_part: Vec<Option<Volume>> =
                sides.into_iter().filter(|(takes_part, _)| *takes_part).map(|(_, amount)| amount).collect();
            // One side that is known can be kept while the other is not.
            let known: Vec<i64> = took_part.iter().flatten().map(|amount| tenths(*amount)).collect();
            (!known.is_empty()).then(|| known.iter().sum())
        }
    };
    let Some(came) = came else { return Ok(None) };
    let kept: i64 = of_session(record, &session.id)?
        .iter()
        .filter_map(|(_, fields)| fields.get("amount").and_then(crate::record::Amount::from_json)?.known())
        .map(tenths)
        .sum();
    Ok(Some(Volume::from_canonical((came - kept).max(0) as f64 / TENTHS)))
}

/// The containers that hold, or held, milk of a session.
///
/// # Errors
/// Where the store can't be read.
pub(crate) fn of_session(record: &Record<'_>, session: &str) -> Result<Vec<(String, Fields)>, Trouble> {
    let Some(started) = record.session(session)?.started else { return Ok(Vec::new()) };
    // Milk that was poured to it may be as old as a day.
    let all = record.journal.fields_of_kind_since(Kind::Container, started.instant().minus(Span::hours(48)))?;
    let is_in = |fields: &Fields| {
        text(fields, "sessions").is_some_and(|sessions| sessions.split(' ').any(|one| one == session))
    };
    Ok(all.into_iter().filter(|(_, fields)| is_in(fields)).collect())
}

/// What the children drink a day, as published, with its range, by the age that Supply takes too;
/// one that is past the age that was read adds nothing. None where an age is not known, or none is
/// published for it.
///
/// # Errors
/// Where the store can't be read.
pub(crate) fn need(record: &Record<'_>) -> Result<Option<Estimate<Production>>, Trouble> {
    let today = record.today();
    let rules = SupplyRules::read(record.rules()?);
    let mut all: Option<[f64; 3]> = None;
    for (_, child) in record.journal.fields_of_kind(Kind::Child)? {
        let age_days = date(&child, "birth").map(|birth| today.days_since(LocalDay::on(birth)));
        let weeks = whole_number(&child, "gestation_weeks").filter(|weeks| *weeks < rules.preterm_below_weeks.get());
        let days = whole_number(&child, "gestation_days").unwrap_or(0);
        let preterm_age_days = age_days.zip(weeks).map(|(age, weeks)| age - early_by(weeks, days));
        let own = match of(OfChild { age_days, preterm_age_days, weight: None }, &rules, false) {
            Ok(intake) => intake,
            Err(NoIntake::TooOld) => continue,
            Err(NoIntake::NeedsBirth | NoIntake::NeedsWeight | NoIntake::TooYoung) => return Ok(None),
        };
        let Some(range) = own.range else { return Ok(None) };
        let [value, low, high] = all.unwrap_or_default();
        all = Some([value + own.value.canonical(), low + range.low, high + range.high]);
    }
    Ok(all.map(|all| {
        let [value, low, high] = all.map(Production::from_canonical);
        Estimate { value, low, high }
    }))
}
