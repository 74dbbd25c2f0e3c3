//! Search: the next step of a guided search for a comfortable setting.
//!
//! In: the settings there are, the steps that were taken, what was comfortable before. Out: what
//! to try next, or that it is over. It goes from low upward, one step back at the first
//! discomfort; it ends in rest where pain rises; it never proposes the highest setting, nor one
//! above what was comfortable before unless the person chose to go there, nor one above what the
//! consultant's plan says. A search for the speed that brings the letdown is over when it comes.

use crate::guidance::ComfortRules;
use crate::quantity::{Level, Quantity, Score, Speed, Vacuum};

/// How a step felt.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Feeling {
    /// Comfortable.
    Comfortable,
    /// Not; how much may not have been said.
    Discomfort(Option<Score>),
}

/// A step that was taken.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Step<P> {
    /// The setting.
    pub at: P,
    /// How it felt.
    pub felt: Feeling,
}

/// What comes next.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Next<P> {
    /// Try this, one step up.
    Try(P),
    /// Back to this: the step before hurt.
    BackTo(P),
    /// The pump rests, and the search is over: pain rises.
    Rest,
    /// It is over: this is comfortable, and the next one was not.
    Found(P),
    /// It is over at what was comfortable before. Going on is a choice, and a new search.
    AsBefore(P),
    /// It is over: the plan says to go no higher.
    AsPlanned(P),
    /// It is over: at this speed the letdown came.
    LetdownCame(P),
    /// It is over: nothing hurt up to here. The highest setting is not proposed.
    NothingHurt(P),
    /// It is over: the lowest hurt.
    AllHurt,
    /// There is nothing to search among.
    NothingToTry,
}

/// Steps after each other that hurt, until the pump rests.
const TOO_MANY: usize = 3;
/// It begins so many steps below what was comfortable before.
const BELOW_KNOWN: usize = 3;

/// How far up a search may go.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits<P> {
    /// The highest that was comfortable before, where that is known.
    pub known: Option<P>,
    /// Whether the person chose to go above it.
    pub beyond: bool,
    /// The highest that the consultant's plan says.
    pub planned: Option<P>,
}

impl<P> Limits<P> {
    /// None of them.
    pub const NONE: Self = Self { known: None, beyond: false, planned: None };
}

/// What a person searches among.
#[derive(Debug, Clone, PartialEq)]
pub struct Range<P> {
    /// From the lowest up, without the highest.
    settings: Vec<P>,
}

impl Range<Level> {
    /// The levels of a dial, without its last.
    pub fn levels(last: Level) -> Self {
        Self { settings: (1..last.get()).map(Level::new).collect() }
    }
}

impl Range<Vacuum> {
    /// Vacuums a step of the rules apart, below the highest that the pump reaches.
    pub fn vacuums(lowest: Vacuum, highest: Vacuum, rules: &ComfortRules) -> Self {
        Self { settings: apart(lowest, highest, rules.search_step) }
    }
}

/// From the lowest up, a step apart, below the highest.
fn apart<Q: Quantity>(lowest: Q, highest: Q, step: Q) -> Vec<Q> {
    let (low, high, step) = (lowest.canonical(), highest.canonical(), step.canonical());
    let steps = if step > 0.0 && high.is_finite() { ((high - low) / step).clamp(0.0, 200.0) as u32 } else { 0 };
    (0..=steps).map(|n| low + step * f64::from(n)).filter(|at| *at < high).map(Q::from_canonical).collect()
}

impl Range<Speed> {
    /// Speeds a step of the rules apart, from a pump's slowest up, without its fastest.
    pub fn speeds(slowest: Speed, fastest: Speed, rules: &ComfortRules) -> Self {
        Self { settings: apart(slowest, fastest, rules.search_speed_step) }
    }
}

impl<P: Copy + PartialOrd> Range<P> {
    /// What comes after some steps.
    pub fn next(&self, steps: &[Step<P>], limits: Limits<P>, rules: &ComfortRules) -> Next<P> {
        let above = |limit: Option<P>, at: P| limit.is_some_and(|limit| at > limit);
        let Some(last) = steps.last() else { return self.start(limits) };
        match last.felt {
            Feeling::Comfortable if steps.iter().any(|step| step.felt != Feeling::Comfortable) => Next::Found(last.at),
            Feeling::Comfortable => match self.settings.iter().find(|at| **at > last.at) {
                None => Next::NothingHurt(last.at),
                Some(up) if above(limits.planned, *up) => Next::AsPlanned(last.at),
                Some(up) if !limits.beyond && above(limits.known, *up) => Next::AsBefore(last.at),
                Some(up) => Next::Try(*up),
            },
            Feeling::Discomfort(score) => {
                let hurt = steps.iter().rev().map_while(|step| match step.felt {
                    Feeling::Discomfort(score) => Some(score),
                    Feeling::Comfortable => None,
                });
                let hurt: Vec<Option<Score>> = hurt.collect();
                let before = hurt.get(1).copied().flatten();
                let rises = score.zip(before).is_some_and(|(now, before)| now > before);
                if rises || score.is_some_and(|score| score >= rules.search_pain) || hurt.len() >= TOO_MANY {
                    return Next::Rest;
                }
                self.settings.iter().rev().find(|at| **at < last.at).map_or(Next::AllHurt, |down| Next::BackTo(*down))
            }
        }
    }

    fn start(&self, limits: Limits<P>) -> Next<P> {
        let up_to = |limit: P| self.settings.partition_point(|at| *at <= limit);
        let first = limits.known.map_or(0, up_to).saturating_sub(1 + BELOW_KNOWN);
        // The plan's own highest goes before what was comfortable before.
        let first = limits.planned.map_or(first, |planned| first.min(up_to(planned).saturating_sub(1)));
        let first = self.settings.get(first).filter(|at| limits.planned.is_none_or(|planned| **at <= planned));
        first.map_or(Next::NothingToTry, |at| Next::Try(*at))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::guidance::Rules;

    fn rules() -> ComfortRules {
        ComfortRules::read(&Rules::default())
    }

    /// Asks for every step; comfortable up to a level, and beyond it with a score.
    fn walked(
        last: u32,
        comfortable_to: u32,
        known: Option<u32>,
        beyond: bool,
        score: Option<u32>,
    ) -> (Vec<u32>, Next<Level>) {
        let range = Range::levels(Level::new(last));
        let mut steps: Vec<Step<Level>> = Vec::new();
        loop {
            let limits = Limits { known: known.map(Level::new), beyond, planned: None };
            let next = range.next(&steps, limits, &rules());
            let (Next::Try(at) | Next::BackTo(at)) = next else {
                return (steps.iter().map(|s| s.at.get()).collect(), next);
            };
            let felt = match at.get() <= comfortable_to {
                true => Feeling::Comfortable,
                false => Feeling::Discomfort(score.map(Score::new)),
            };
            steps.push(Step { at, felt });
            assert!(steps.len() < 50);
        }
    }

    #[test]
    fn it_goes_up_by_one_and_back_by_one_at_the_first_discomfort() {
        assert_eq!(walked(12, 4, None, false, Some(2)), (vec![1, 2, 3, 4, 5, 4], Next::Found(Level::new(4))));
    }

    #[test]
    fn the_highest_setting_is_never_proposed() {
        let (steps, end) = walked(5, 9, None, false, None);
        assert_eq!((steps, end), (vec![1, 2, 3, 4], Next::NothingHurt(Level::new(4))));
        assert_eq!(walked(1, 9, None, true, None), (vec![], Next::NothingToTry));
    }

    #[test]
    fn nobody_is_led_above_what_was_comfortable_unless_they_choose_it() {
        assert_eq!(walked(12, 9, Some(6), false, None), (vec![3, 4, 5, 6], Next::AsBefore(Level::new(6))));
        assert_eq!(walked(12, 8, Some(6), true, Some(2)), (vec![3, 4, 5, 6, 7, 8, 9, 8], Next::Found(Level::new(8))));
    }

    #[test]
    fn it_rests_when_pain_rises_or_is_strong_or_stays() {
        assert_eq!(walked(12, 2, None, false, Some(4)).1, Next::Rest);
        assert_eq!(walked(12, 2, None, false, Some(3)).1, Next::Found(Level::new(2)));
        assert_eq!(walked(12, 0, None, false, Some(2)), (vec![1], Next::AllHurt));
        let hurt =
            |at: u32, score: Option<u32>| Step { at: Level::new(at), felt: Feeling::Discomfort(score.map(Score::new)) };
        let range = Range::levels(Level::new(12));
        let next = |steps: &[Step<Level>]| range.next(steps, Limits::NONE, &rules());
        assert_eq!(next(&[hurt(6, Some(2)), hurt(5, Some(3))]), Next::Rest);
        assert_eq!(next(&[hurt(6, Some(2)), hurt(5, Some(2))]), Next::BackTo(Level::new(4)));
        assert_eq!(next(&[hurt(6, None), hurt(5, None), hurt(4, None)]), Next::Rest);
    }

    #[test]
    fn nothing_above_the_plan_is_proposed_also_where_the_person_would_go_on() {
        let range = Range::levels(Level::new(12));
        for (known, beyond) in [(None, false), (Some(9), false), (Some(9), true), (None, true)] {
            let limits = Limits { known: known.map(Level::new), beyond, planned: Some(Level::new(5)) };
            let mut steps = Vec::new();
            while let Next::Try(at) = range.next(&steps, limits, &rules()) {
                assert!(at <= Level::new(5), "{at:?}");
                steps.push(Step { at, felt: Feeling::Comfortable });
            }
            assert_eq!(range.next(&steps, limits, &rules()), Next::AsPlanned(Level::new(5)));
        }
        let none = Limits { known: None, beyond: false, planned: Some(Level::new(0)) };
        assert_eq!(range.next(&[], none, &rules()), Next::NothingToTry);
    }

    /// Kent 2008 has 190.7 mmHg as the mean of 23: no reason to go up to it, nor down.
    #[test]
    fn a_vacuum_of_150_is_not_raised_to_190_and_one_of_240_not_lowered() {
        let vacuum = Vacuum::from_canonical;
        let range = Range::vacuums(vacuum(60.0), vacuum(300.0), &rules());
        let walk = |known: f64| {
            let limits = Limits { known: Some(vacuum(known)), ..Limits::NONE };
            let mut steps = Vec::new();
            while let Next::Try(at) = range.next(&steps, limits, &rules()) {
                steps.push(Step { at, felt: Feeling::Comfortable });
            }
            range.next(&steps, limits, &rules())
        };
        assert_eq!(walk(150.0), Next::AsBefore(vacuum(150.0)));
        assert_eq!(walk(240.0), Next::AsBefore(vacuum(240.0)));
        assert!(Range::vacuums(vacuum(60.0), vacuum(300.0), &rules()).settings.iter().all(|at| *at < vacuum(300.0)));
    }

    #[test]
    fn speeds_are_tried_from_the_slowest_and_the_fastest_is_not() {
        let speed = Speed::from_canonical;
        let range = Range::speeds(speed(40.0), speed(70.0), &rules());
        assert_eq!(range.next(&[], Limits::NONE, &rules()), Next::Try(speed(40.0)));
        let felt = |at: f64| Step { at: speed(at), felt: Feeling::Comfortable };
        assert_eq!(range.next(&[felt(40.0)], Limits::NONE, &rules()), Next::Try(speed(50.0)));
        assert_eq!(range.next(&[felt(40.0), felt(60.0)], Limits::NONE, &rules()), Next::NothingHurt(speed(60.0)));
    }
}
