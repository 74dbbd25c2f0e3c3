//! The exact search, held to trying everything: on small grids every way to lay sessions
//! is counted anew from its sessions, and none costs less than what the search found.

use crate::plan_cost::cost;
use drawwell_core::answer::night::search::{search, Begun, Cost, Minute, PlanDay, Task, Wanted, Window, STEP_MINUTES};
use proptest::prelude::*;

fn some_task() -> impl Strategy<Value = Task> {
    let limits = (-600_i32..=0, 10_i32..40, 120_i32..300, 0_i32..100, 0_i32..30, 0_i32..40);
    let windows = (0_i32..150, 30_i32..150, prop::option::of(20_i32..200), 0_u32..3);
    let points = (
        prop::collection::vec((0_i32..200, 10_i32..90), 0..2),
        prop::collection::vec((0_usize..12, 1_usize..4, prop::option::of(20_i32..60)), 0..3),
        prop::collection::vec((0_usize..12, 1_usize..4), 0..2),
        prop::collection::vec((0_usize..12, 1_usize..4), 0..2),
    );
    let days = (prop::option::of(0_u32..6), prop::option::of(0_u32..6), 0_u32..3);
    (8_usize..13, limits, windows, points, days, any::<bool>()).prop_map(
        |(points, limits, windows, stands, days, begun)| {
            let (since, lasts, longest, shortest, lead, asleep_again) = limits;
            let ends = points as Minute * STEP_MINUTES;
            let from = if begun { -60 } else { windows.0 };
            let window = Window { from, until: (windows.0 + windows.1).min(ends) };
            let mut wanted: Vec<Wanted> = stands
                .1
                .iter()
                .map(|(s, n, lasts)| Wanted { starts: *s..(s + n).min(points), lasts: *lasts })
                .collect();
            wanted.retain(|w| !w.starts.is_empty());
            wanted.sort_by_key(|w| w.starts.start);
            Task {
                points,
                since: Some(since),
                paced_since: Some(since / 2),
                lasts,
                longest,
                shortest,
                busy: stands.0.iter().map(|(from, n)| *from..from + n).collect(),
                wanted,
                closed: stands.2.iter().map(|(from, n)| *from..from + n).collect(),
                avoided: stands.3.iter().map(|(from, n)| *from..from + n).collect(),
                windows: if window.until > window.from.max(0) { vec![window] } else { Vec::new() },
                begun: if begun { Begun { sessions: 1, slept: 15 } } else { Begun::default() },
                stretch: windows.2,
                night_sessions: windows.3,
                days: vec![
                    PlanDay { until: (windows.0 + windows.1).min(ends), wish: days.0, done: days.2 },
                    PlanDay { until: ends, wish: days.1, done: 0 },
                ],
                lead,
                asleep_again,
            }
        },
    )
}

/// Every chain of sessions that do not run into each other and begin where they may.
fn every_chain(task: &Task) -> Vec<Vec<usize>> {
    let open = |p: &usize| {
        let (from, until) = (*p as Minute * STEP_MINUTES, *p as Minute * STEP_MINUTES + task.lasts_at(*p));
        task.wanted.iter().any(|w| w.starts.contains(p))
            || (!task.closed.iter().any(|c| c.contains(p))
                && !task.busy.iter().any(|b| from < b.end && b.start < until))
    };
    let points: Vec<usize> = (0..task.points).filter(open).collect();
    (0_u32..1 << points.len())
        .map(|chosen| points.iter().enumerate().filter(|(i, _)| chosen >> i & 1 == 1).map(|(_, p)| *p).collect())
        .filter(|starts: &Vec<usize>| {
            starts.windows(2).all(|two| (two[1] - two[0]) as Minute * STEP_MINUTES >= task.lasts_at(two[0]))
        })
        .collect()
}

/// Milk lost grows with the square of the gap, more by night.
fn lost(from: Minute, until: Minute) -> u64 {
    let gap = (until - from).max(0) as u64;
    gap * gap / 40 + (from.rem_euclid(97) as u64)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    #[test]
    fn no_other_plan_costs_less(task in some_task()) {
        let found = search(&task, &lost);
        let least: Cost = every_chain(&task).iter().map(|chain| cost(&task, chain, &lost)).min().unwrap_or_default();
        prop_assert_eq!(cost(&task, &found.starts, &lost), least, "{:?}", found.starts);
    }

    #[test]
    fn a_limit_is_broken_only_where_every_plan_breaks_it(task in some_task()) {
        let found = cost(&task, &search(&task, &lost).starts, &lost);
        let chains = every_chain(&task);
        let least = |of: fn(&Cost) -> u32| chains.iter().map(|c| of(&cost(&task, c, &lost))).min().unwrap_or(0);
        prop_assert_eq!(found.missed, least(|c| c.missed));
        if least(|c| c.missed) == 0 {
            let keeps: Vec<_> = chains.iter().map(|c| cost(&task, c, &lost)).filter(|c| c.missed == 0).collect();
            prop_assert_eq!(found.over_longest, keeps.iter().map(|c| c.over_longest).min().unwrap_or(0));
        }
    }

    #[test]
    fn a_plan_that_was_begun_stays_the_plan(task in some_task()) {
        let found = search(&task, &lost);
        if let Some((first, rest)) = found.starts.split_first() {
            let ends = (*first as Minute) * STEP_MINUTES + task.lasts_at(*first);
            // The same problem from the point at which the first session is over.
            let skip = (ends + STEP_MINUTES - 1) / STEP_MINUTES;
            let by = skip * STEP_MINUTES;
            let shift = |range: &std::ops::Range<usize>| {
                let low = range.start.saturating_sub(skip as usize);
                low..range.end.saturating_sub(skip as usize).max(low)
            };
            let night = task.windows.first().copied().filter(|w| w.from < by && w.until > by);
            let sleeps = night.map_or(Vec::new(), |w| task.sleeps(w, &found.starts[..1]));
            let before = sleeps.first().filter(|s| s.until <= *first as Minute * STEP_MINUTES).map_or(0, |s| s.lasts());
            let in_night = night.is_some_and(|w| w.from <= *first as Minute * STEP_MINUTES);
            let was_begun = if night.is_some() { task.begun } else { Begun::default() };
            let mut done = 1 + task.days[0].done;
            let mut days = task.days.clone();
            if days[0].until <= *first as Minute * STEP_MINUTES {
                done = 1;
                days.remove(0);
            }
            days[0].done = done;
            let mut days: Vec<PlanDay> = days.into_iter().map(|d| PlanDay { until: d.until - by, ..d }).collect();
            // A day that ends while the session runs is over, and nothing can be made up in it.
            while days.len() > 1 && days[0].until <= 0 {
                days.remove(0);
            }
            let wanted: Vec<Wanted> = task
                .wanted
                .iter()
                .filter(|w| !w.starts.contains(first) && w.starts.end > skip as usize)
                .map(|w| Wanted { starts: shift(&w.starts), lasts: w.lasts })
                .collect();
            // The length of a session that begins in a wanted stretch is the stretch's, also
            // for others that overlap it: such cases are another problem.
            prop_assume!(task.wanted.iter().all(|w| !w.starts.contains(first) || w.starts.end <= skip as usize));
            let after = Task {
                points: task.points.saturating_sub(skip as usize),
                since: Some(ends - by),
                paced_since: None,
                busy: task.busy.iter().map(|b| b.start - by..b.end - by).collect(),
                closed: task.closed.iter().map(shift).collect(),
                avoided: task.avoided.iter().map(shift).collect(),
                wanted,
                windows: task
                    .windows
                    .iter()
                    .filter(|w| w.until > ends)
                    .map(|w| Window { from: w.from - by, until: w.until - by })
                    .collect(),
                begun: Begun {
                    sessions: was_begun.sessions + u32::from(in_night),
                    slept: was_begun.slept.max(before),
                },
                days,
                ..task.clone()
            };
            prop_assume!(after.points > 0);
            let lost_after = |from: Minute, until: Minute| lost(from + by, until + by);
            let again = search(&after, &lost_after);
            let rest: Vec<usize> = rest.iter().map(|p| p - skip as usize).collect();
            prop_assert_eq!(again.starts, rest);
        }
    }
}
