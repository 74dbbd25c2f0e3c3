//! When a trial stops at once, and which of two that run goes on.

use crate::guidance::ComfortRules;
use crate::quantity::Score;
use crate::time::Instant;

/// Why a trial stops.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stop {
    /// It hurts more than before.
    PainRises,
    /// A caution stands that did not before.
    Caution,
}

/// Whether a trial stops now: the highest pain of a session in it lies so much over the highest of
/// the sessions before it, or over none where nothing was said before; or a caution came up since.
pub fn stops(before: &[Score], since: &[Score], cautions_since: bool, rules: &ComfortRules) -> Option<Stop> {
    let usual = before.iter().max().map_or(0, |score| score.get());
    let risen = since.iter().any(|score| score.get() >= usual + rules.trial_pain_rise.get().max(1));
    match (cautions_since, risen) {
        (true, _) => Some(Stop::Caution),
        (false, true) => Some(Stop::PainRises),
        (false, false) => None,
    }
}

/// Of several trials that run at once, on two phones it may be, those that close: all but the one
/// that began first, by name where two began together.
pub fn closes(running: &[(String, Instant)]) -> Vec<&str> {
    let mut ordered: Vec<&(String, Instant)> = running.iter().collect();
    ordered.sort_by(|a, b| (a.1, &a.0).cmp(&(b.1, &b.0)));
    ordered.into_iter().skip(1).map(|(id, _)| id.as_str()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::guidance::Rules;

    #[test]
    fn pain_that_rises_by_two_stops_it_and_by_one_does_not() {
        let rules = ComfortRules::read(&Rules::default());
        let scores = |all: &[u32]| all.iter().copied().map(Score::new).collect::<Vec<_>>();
        let stops = |before: &[u32], since: &[u32]| stops(&scores(before), &scores(since), false, &rules);
        assert_eq!(stops(&[0, 1], &[2]), None);
        assert_eq!(stops(&[0, 1], &[2, 3]), Some(Stop::PainRises));
        assert_eq!(stops(&[], &[2]), Some(Stop::PainRises));
        assert_eq!(stops(&[5], &[5, 6]), None);
        assert_eq!(super::stops(&[], &[], true, &rules), Some(Stop::Caution));
    }

    #[test]
    fn of_two_that_run_the_first_goes_on() {
        let at = Instant::from_unix_milliseconds;
        let running = [("b".to_owned(), at(5)), ("c".to_owned(), at(2)), ("a".to_owned(), at(5))];
        assert_eq!(closes(&running), ["a", "b"]);
        assert!(closes(&running[..1]).is_empty());
    }
}
