//! Cautions from temperature and signs.

use super::{Because, Caution};
use crate::guidance::CautionRules;
use crate::quantity::{Entered, Quantity, Temperature};
use crate::record::{flag, moment, text, Fields};
use crate::time::{Instant, Span};

/// On which side a sign is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Where {
    /// Left.
    Left,
    /// Right.
    Right,
    /// Both.
    Both,
}

impl Where {
    /// Stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Left => "left",
            Self::Right => "right",
            Self::Both => "both",
        }
    }
}

/// Signs of an inflamed breast, by their field.
const AT_THE_BREAST: &[&str] = &["redness", "heat", "painful_place", "lump", "swelling"];
/// Those that mark a place: red, hot, painful.
const PLACE: &[&str] = &["redness", "heat", "painful_place"];
const PUS_OR_BLOOD: &[&str] = &["pus", "blood"];
/// Where on the body, of the emergency list.
const EMERGENCY_PLACES: &[&str] = &["spreading_redness", "dark_skin"];
/// Yes or no, of the emergency list.
const EMERGENCY_FLAGS: &[&str] =
    &["fainting", "confusion", "severe_weakness", "short_of_breath", "keeps_vomiting", "pain_beyond_what_is_seen"];

/// How it is since it was written down before.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SinceBefore {
    /// Better.
    Better,
    /// The same.
    Same,
    /// Worse.
    Worse,
}

/// Temperature and signs, as one entry says them.
#[derive(Debug, Clone, PartialEq)]
pub struct BodySign {
    /// When.
    pub at: Instant,
    /// What was measured.
    pub temperature: Option<Temperature>,
    /// Signs that are there, by field, with where.
    pub there: Vec<(&'static str, Option<Where>)>,
    /// Signs that were looked for and are not there.
    pub absent: Vec<&'static str>,
    /// Since the entry before.
    pub since_before: Option<SinceBefore>,
}

impl BodySign {
    /// Reads an entry; none without its time.
    pub fn read(fields: &Fields) -> Option<Self> {
        let at = moment(fields, "at")?.instant();
        let (mut there, mut absent) = (Vec::new(), Vec::new());
        for &key in AT_THE_BREAST.iter().chain(PUS_OR_BLOOD).chain(EMERGENCY_PLACES) {
            match text(fields, key) {
                Some("left") => there.push((key, Some(Where::Left))),
                Some("right") => there.push((key, Some(Where::Right))),
                Some("both") => there.push((key, Some(Where::Both))),
                Some("neither") => absent.push(key),
                _ => {}
            }
        }
        for &key in EMERGENCY_FLAGS.iter().chain(&["shivering"]) {
            if flag(fields, key) {
                there.push((key, None));
            }
        }
        Some(Self {
            at,
            temperature: fields.get("temperature").and_then(Entered::<Temperature>::from_json).map(|e| e.quantity()),
            there,
            absent,
            since_before: match text(fields, "since_before") {
                Some("better") => Some(SinceBefore::Better),
                Some("same") => Some(SinceBefore::Same),
                Some("worse") => Some(SinceBefore::Worse),
                _ => None,
            },
        })
    }

    fn among<'a>(&'a self, keys: &'a [&str]) -> impl Iterator<Item = Because> + 'a {
        self.there.iter().filter(|(key, _)| keys.contains(key)).map(|(key, at)| Because::Sign(self.at, key, *at))
    }

    fn has(&self, keys: &[&str]) -> bool {
        self.there.iter().any(|(key, _)| keys.contains(key))
    }
}

/// Cautions from the entries up to `now`, in order of time.
pub fn cautions(signs: &[BodySign], now: Instant, rules: &CautionRules) -> Vec<Caution> {
    let standing: Vec<&BodySign> =
        signs.iter().filter(|s| s.at <= now && now.since(s.at) <= rules.signs_hold).collect();
    let mut found = Vec::new();
    let emergency: Vec<&str> = EMERGENCY_PLACES.iter().chain(EMERGENCY_FLAGS).copied().collect();
    found.extend(seen("emergency", &standing, &emergency));
    let high = fever("breast-fever", &standing, rules.breast_fever, AT_THE_BREAST, rules);
    // One fever, one line: the sharper rule goes before.
    found.extend(high.or_else(|| fever("fever-with-place", &standing, rules.fever_with_place, PLACE, rules)));
    found.extend(seen("shivering", &standing, &["shivering"]));
    found.extend(seen("pus-or-blood", &standing, PUS_OR_BLOOD));
    found.extend(no_better(&standing, now, rules));
    found
}

/// Any of these signs.
fn seen(key: &str, signs: &[&BodySign], keys: &[&str]) -> Option<Caution> {
    let because: Vec<Because> = signs.iter().flat_map(|sign| sign.among(keys).collect::<Vec<_>>()).collect();
    let last = signs.iter().rev().find(|sign| sign.has(keys))?;
    Caution::new(key, last.at, because)
}

/// A temperature from the limit on, with any of these signs near it in time.
fn fever(key: &str, signs: &[&BodySign], limit: Temperature, with: &[&str], rules: &CautionRules) -> Option<Caution> {
    let near = |a: Instant, b: Instant| (if a > b { a.since(b) } else { b.since(a) }) <= rules.signs_together;
    let (hot, at_breast) = signs
        .iter()
        .rev()
        .filter(|sign| sign.temperature.is_some_and(|t| reaches(t, limit)))
        .find_map(|hot| Some((hot, signs.iter().rev().find(|s| s.has(with) && near(s.at, hot.at))?)))?;
    let mut because: Vec<Because> = hot.temperature.map(|t| Because::Temperature(hot.at, t)).into_iter().collect();
    because.extend(at_breast.among(with));
    Caution::new(key, hot.at.max(at_breast.at), because)
}

/// Whether a temperature is at a limit or above. A thousandth is no thermometer's: what is
/// lost in turning 101.3 °F into °C must not move the limit.
fn reaches(temperature: Temperature, limit: Temperature) -> bool {
    temperature.canonical() >= limit.canonical() - 0.001
}

/// Signs at the breast that have lasted without getting better.
fn no_better(signs: &[&BodySign], now: Instant, rules: &CautionRules) -> Option<Caution> {
    let mut began: Option<(&BodySign, &BodySign)> = None;
    for sign in signs {
        let gone = !sign.has(AT_THE_BREAST) && sign.absent.iter().any(|key| AT_THE_BREAST.contains(key));
        if sign.since_before == Some(SinceBefore::Better) || gone {
            // Better is not gone: if it is said to be the same or worse again, time runs anew.
            began = None;
        } else if sign.has(AT_THE_BREAST)
            || matches!((sign.since_before, &began), (Some(SinceBefore::Same | SinceBefore::Worse), Some(_)))
        {
            began = Some((began.map_or(sign, |(first, _)| first), sign));
        }
    }
    let (first, last) = began?;
    let lasted: Span = now.since(first.at);
    if lasted < rules.no_better_after {
        return None;
    }
    let mut because = vec![Because::Since(first.at, lasted)];
    because.extend(last.among(AT_THE_BREAST));
    Caution::new("no-better", last.at, because)
}
