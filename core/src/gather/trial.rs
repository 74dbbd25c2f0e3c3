//! A trial with its sessions, as they were done.

use super::expected::expected;
use super::refill::curves;
use super::Record;
use crate::answer::refill::WellOf;
use crate::answer::supply::{Calendar, Side};
use crate::answer::trial::{read_order, Design, Done, Milk, Outcome, Reached, SetUp, Way};
use crate::guidance::ComfortRules;
use crate::journal::Row;
use crate::quantity::{Count, Score, Volume};
use crate::record::{moment, text, whole_number, Amount, Fields, Kind, MarkKind, Removal, Session};
use crate::time::{Instant, Span};
use crate::trouble::Trouble;

/// A trial as it is kept, and its sessions.
#[derive(Debug, Clone, PartialEq)]
pub struct TrialInputs {
    /// How it was set up.
    pub set_up: SetUp,
    /// The order that was drawn.
    pub order: Vec<Way>,
    /// Its sessions, in order of time.
    pub done: Vec<Done>,
    /// The rules as they hold.
    pub rules: ComfortRules,
}

/// Sessions of one trial that are read.
const MOST: u32 = 400;

impl TrialInputs {
    /// Reads a trial. None where its set-up can't be read.
    ///
    /// # Errors
    /// Where there is none of this name, or the store can't be read.
    pub fn read(record: &Record<'_>, id: &str) -> Result<Option<Self>, Trouble> {
        let (_, fields) = record.record(id)?;
        let rules = ComfortRules::read(record.rules()?);
        let order = text(&fields, "drawn").and_then(read_order);
        let (Some(set_up), Some(order)) = (set_up(&fields, &rules), order) else { return Ok(None) };
        let mut rows = sessions_of(record, id, &fields)?;
        rows.reverse();
        let calendar = Calendar { start: record.settings.day_start, zone: record.zone };
        let refill = match set_up.outcome {
            Outcome::Amount => Some(curves(record, calendar, None)?),
            Outcome::TimeToMost | Outcome::Pain | Outcome::Letdown => None,
        };
        let first = rows.iter().filter_map(|row| row.at).min().unwrap_or(record.now);
        let removals = record.journal.removals(first.minus(Span::hours(48)), record.now.plus(Span::milliseconds(1)))?;
        let before = |side: Side, ended: Instant| {
            let takes_part = |removal: &&Removal| match side {
                Side::Left => removal.sides.left(),
                Side::Right => removal.sides.right(),
            };
            removals.iter().rev().filter(takes_part).find(|removal| removal.at < ended).map(|removal| removal.at)
        };
        let ended_at = moment(&fields, "ended").map(|ended| ended.instant());
        let mut done = Vec::new();
        for row in rows.into_iter().filter(|row| !row.running && ended_at.is_none_or(|ended| row.at <= Some(ended))) {
            let (_, fields) = record.record(&row.subject)?;
            let session = Session::read(&row.subject, &fields);
            let Some(at) = row.at else { continue };
            let place = whole_number(&fields, "trial_place").map_or(done.len(), |place| place as usize);
            let drawn = text(&fields, "trial_drawn").and_then(Way::named).or_else(|| order.get(place).copied());
            let Some(drawn) = drawn else { continue };
            let milk = |side: Side, amount: Option<Volume>| {
                let ended = session.ended.as_ref()?.instant();
                let refill = refill.as_ref()?;
                let from = before(side, ended);
                let expected = from.and_then(|from| expected(refill, WellOf::Side(side), from, ended, record));
                Some(Milk { amount: amount?, expected })
            };
            done.push(Done {
                session: row.subject.clone(),
                at,
                place,
                drawn,
                done: text(&fields, "trial_done").and_then(Way::named),
                pump: session.pump.clone(),
                reached: reached(set_up.outcome, &session, &fields, &milk),
            });
        }
        Ok(Some(Self { set_up, order, done, rules }))
    }
}

/// The sessions of a trial, the latest first, and no more than one may have: nothing before it
/// began is looked through.
///
/// # Errors
/// Where the store can't be read.
pub fn sessions_of(record: &Record<'_>, id: &str, fields: &Fields) -> Result<Vec<Row>, Trouble> {
    latest_of(record, id, fields, MOST)
}

fn latest_of(record: &Record<'_>, id: &str, fields: &Fields, most: u32) -> Result<Vec<Row>, Trouble> {
    let Some(began) = moment(fields, "at") else { return Ok(Vec::new()) };
    // A session that was written down afterwards may lie before the moment at which it began.
    let from = began.instant().minus(Span::hours(24));
    record.journal.naming_since(Kind::Session, "trial", id, [from, record.now], most)
}

/// What comes next in a trial.
#[derive(Debug, Clone, PartialEq)]
pub struct NextInTrial {
    /// The trial.
    pub id: String,
    /// Its fields.
    pub fields: Fields,
    /// How the ways are compared.
    pub design: Design,
    /// The place in the order.
    pub place: usize,
    /// The way that was drawn for it, or for its left side.
    pub way: Way,
}

/// What comes next in a trial that was begun and is not over; none after its last place.
///
/// # Errors
/// Where the store can't be read.
pub fn next_in(record: &Record<'_>, id: &str, fields: &Fields) -> Result<Option<NextInTrial>, Trouble> {
    let rules = ComfortRules::read(record.rules()?);
    let order = text(fields, "drawn").and_then(read_order);
    let (Some(set_up), Some(order), None) = (set_up(fields, &rules), order, text(fields, "trial_ended")) else {
        return Ok(None);
    };
    let place = match latest_of(record, id, fields, 1)?.first() {
        Some(row) => whole_number(&record.record(&row.subject)?.1, "trial_place").map_or(0, |place| place as usize + 1),
        None => 0,
    };
    let way = order.get(place).copied();
    let next = |way| NextInTrial { id: id.to_owned(), fields: fields.clone(), design: set_up.design, place, way };
    Ok(way.map(next))
}

/// The trials that were begun and are not over, by id with when they began.
///
/// # Errors
/// Where the store can't be read.
pub fn running(record: &Record<'_>) -> Result<Vec<(String, Fields, Instant)>, Trouble> {
    let all = record.journal.fields_of_kind(Kind::Trial)?;
    let runs = |fields: &Fields| text(fields, "drawn").is_some() && text(fields, "trial_ended").is_none();
    Ok(all
        .into_iter()
        .filter(|(_, fields)| runs(fields))
        .filter_map(|(id, fields)| {
            let began = moment(&fields, "at")?.instant();
            Some((id, fields, began))
        })
        .collect())
}

/// What comes next in the trial that runs: of several the one that began first.
///
/// # Errors
/// Where the store can't be read.
pub fn next_of_running(record: &Record<'_>) -> Result<Option<NextInTrial>, Trouble> {
    let all = running(record)?;
    let first = all.iter().min_by(|a, b| (a.2, &a.0).cmp(&(b.2, &b.0)));
    first.map_or(Ok(None), |(id, fields, _)| next_in(record, id, fields))
}

fn set_up(fields: &Fields, rules: &ComfortRules) -> Option<SetUp> {
    let design = match text(fields, "trial_design")? {
        "sides" => Design::Sides,
        "sessions" => Design::Sessions,
        _ => return None,
    };
    Some(SetUp {
        design,
        outcome: Outcome::named(text(fields, "outcome")?)?,
        planned: whole_number(fields, "trial_sessions").map_or(rules.trial_planned, Count::new),
        about_the_pump: text(fields, "differs") == Some("pump"),
        seed: whole_number(fields, "seed").unwrap_or(0),
    })
}

pub(super) fn reached(
    outcome: Outcome,
    session: &Session,
    fields: &Fields,
    milk: &dyn Fn(Side, Option<Volume>) -> Option<Milk>,
) -> Reached {
    let known = |amount: &Option<Amount>| amount.as_ref().and_then(Amount::known);
    // As it was marked while the session ran, or said afterwards; comfortable is no pain, and
    // silence is nothing.
    let highest = |side: &str| {
        let said = ["letdown", "expression"].iter().filter_map(|p| whole_number(fields, &format!("pain_{side}_{p}")));
        let marked = session.marks.iter().filter_map(|(_, mark)| {
            let of = mark.side.as_deref().or_else(|| session.side_at(mark.at.instant()));
            let score = match mark.kind {
                MarkKind::Pain { score } => score,
                MarkKind::Comfortable => Some(Score::new(0)),
                _ => None,
            };
            score.filter(|_| of.is_none_or(|of| of == side || of == "both"))
        });
        said.map(Score::new).chain(marked).max()
    };
    match outcome {
        Outcome::Amount => match known(&session.together) {
            Some(together) => Reached::milk_together(Milk { amount: together, expected: None }),
            None => Reached::milk(milk(Side::Left, known(&session.left)), milk(Side::Right, known(&session.right))),
        },
        Outcome::Pain => Reached::pain(highest("left"), highest("right")),
        Outcome::Letdown => {
            Reached::time(crate::answer::letdown::heard_in(session, fields).and_then(|heard| heard.first))
        }
        Outcome::TimeToMost => Reached::time(super::so_far::time_to_most(session)),
    }
}
