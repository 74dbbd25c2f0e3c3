//! Milk leaving the breast: when, from which side, and how much where known.

use super::{Amount, Fields, Kind, Session, Sides};
use crate::quantity::{Entered, Mass, Quantity, Volume};
use crate::time::{Instant, Zone};

/// How much left, as far as anyone knows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Milk {
    /// Nobody knows: the amount is missing, or a feed was not weighed.
    Unknown,
    /// Each side by itself; a side that took no part, or is not known, is none.
    Sides {
        /// From the left.
        left: Option<Volume>,
        /// From the right.
        right: Option<Volume>,
    },
    /// From both sides in one measure.
    Together(Volume),
}

/// What the person said to a question about a removal.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Answered {
    /// No session was missed in the gap before it.
    pub gap_is_whole: bool,
    /// One was missed.
    pub gap_hides_one: bool,
    /// The amount is right as it stands.
    pub amount_is_right: bool,
}

/// A session seen as milk leaving the breast.
#[derive(Debug, Clone, PartialEq)]
pub struct Removal {
    /// The session.
    pub session: String,
    /// When it began, where that is known.
    pub began: Option<Instant>,
    /// When it was over.
    pub at: Instant,
    /// The zone the person then was in.
    pub zone: Zone,
    /// The sides that took part.
    pub sides: Sides,
    /// How much.
    pub milk: Milk,
    /// What was answered.
    pub answered: Answered,
}

/// Density of human milk, g/mL: a child's gain in grams over this is mL.
/// From memory (about 1.03); studies that take 1 g as 1 mL read 3 % more.
pub const MILK_DENSITY_GRAMS_PER_MILLILITER: f64 = 1.03;

/// The volume a weighed feed stands for: gain / density. A loss says nothing.
pub fn weighed_volume(before: Mass, after: Mass) -> Option<Volume> {
    let gain = after.canonical() - before.canonical();
    (gain >= 0.0).then(|| Volume::from_canonical(gain / MILK_DENSITY_GRAMS_PER_MILLILITER))
}

impl Removal {
    /// Reads a session's fields; none while it runs, where it was taken out, or
    /// where its time cannot be read. One without an end counts at its start.
    pub fn read(id: &str, fields: &Fields) -> Option<Self> {
        let session = Session::read(id, fields);
        if super::text(fields, "kind") != Some(Kind::Session.name()) || super::flag(fields, "taken_out") {
            return None;
        }
        let at = match (&session.ended, &session.started) {
            (Some(ended), _) => ended,
            (None, Some(started)) if session.afterwards => started,
            _ => return None,
        };
        let began = session.started.as_ref().map(|at| at.instant());
        Some(Self {
            began: began.filter(|began| session.ended.is_some() && *began < at.instant()),
            at: at.instant(),
            zone: at.zone().unwrap_or(Zone::UTC),
            sides: session.sides,
            milk: milk(&session, fields),
            answered: Answered {
                gap_is_whole: super::text(fields, "gap_before") == Some("whole"),
                gap_hides_one: super::text(fields, "gap_before") == Some("missed"),
                amount_is_right: super::flag(fields, "amount_is_right"),
            },
            session: session.id,
        })
    }
}

fn milk(session: &Session, fields: &Fields) -> Milk {
    if !session.collects() {
        let mass = |key: &str| fields.get(key).and_then(Entered::<Mass>::from_json).map(|e| e.quantity());
        let weighed = mass("weight_before").zip(mass("weight_after"));
        return match (weighed.and_then(|(before, after)| weighed_volume(before, after)), session.sides) {
            (None, _) => Milk::Unknown,
            (Some(volume), Sides::Both) => Milk::Together(volume),
            (Some(volume), Sides::Left) => Milk::Sides { left: Some(volume), right: None },
            (Some(volume), Sides::Right) => Milk::Sides { left: None, right: Some(volume) },
        };
    }
    let known = |amount: &Option<Amount>| amount.as_ref().and_then(Amount::known);
    if let (Some(together), Sides::Both) = (&session.together, session.sides) {
        return together.known().map_or(Milk::Unknown, Milk::Together);
    }
    let left = known(&session.left).filter(|_| session.sides.left());
    let right = known(&session.right).filter(|_| session.sides.right());
    match (left, right) {
        (None, None) => Milk::Unknown,
        (left, right) => Milk::Sides { left, right },
    }
}
