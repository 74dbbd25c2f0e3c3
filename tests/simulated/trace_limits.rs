//! Where a trace's words change, on both sides of each limit. The limits are common practice and have no
//! source; the traces are made of raised cosines that wander as a pump does.

use std::fmt::Write;
use std::io::Cursor;

use drawwell_core::answer::trace::{findings, Findings, TraceFile, STOPPED_FROM, WEAK_BELOW};
use drawwell_core::quantity::{Quantity, SpeedUnit};
use drawwell_core::share::trace_file::read;
use drawwell_tests::chance::Chance;

/// A cycle: how long it takes, how high it gets, and how long the pump is still after it.
struct Cycle {
    period: f64,
    height: f64,
    still: f64,
}

/// Sixty cycles a minute of 200 mmHg over a rest of 10, but for what is changed.
fn cycles(count: usize, change: impl Fn(usize, &mut Cycle)) -> Vec<Cycle> {
    let mut chance = Chance::seeded(7);
    (0..count)
        .map(|number| {
            let wander = 1.0 + 0.004 * chance.normal();
            let mut cycle = Cycle { period: 1.0, height: 200.0 * wander, still: 0.0 };
            change(number, &mut cycle);
            cycle
        })
        .collect()
}

/// Times and pressures, so many a second, with a little noise.
fn rows(cycles: &[Cycle], readings: f64) -> Vec<(f64, f64)> {
    let mut chance = Chance::seeded(8);
    let mut rows = Vec::new();
    let mut begins = 0.0;
    let mut at = 0.0;
    for cycle in cycles {
        while at < begins + cycle.period + cycle.still {
            let share = ((at - begins) / cycle.period).min(1.0);
            let pulled = cycle.height * (1.0 - (std::f64::consts::TAU * share).cos()) / 2.0;
            rows.push((at, 10.0 + pulled + 0.3 * chance.normal()));
            at += 1.0 / readings;
        }
        begins += cycle.period + cycle.still;
    }
    rows
}

fn taken(rows: &[(f64, f64)]) -> TraceFile {
    let text = rows.iter().fold("time (s),pressure (mmHg)\n".to_owned(), |mut text, (at, value)| {
        writeln!(text, "{at:.4},{value:.2}").unwrap();
        text
    });
    read(&mut Cursor::new(text)).unwrap()
}

fn found(cycles: &[Cycle]) -> Findings {
    findings(&taken(&rows(cycles, 50.0))).unwrap()
}

#[test]
fn a_cycle_is_weak_below_six_tenths_of_what_is_usual() {
    assert_eq!(WEAK_BELOW, 0.6);
    for (share, weak) in [(0.63, 0.0), (0.57, 6.0 / 60.0)] {
        let found = found(&cycles(60, |number, cycle| {
            if number % 10 == 5 {
                cycle.height *= share;
            }
        }));
        assert!((found.overall.weak_share.fraction() - weak).abs() < 1e-5, "{share}: {:?}", found.overall.weak_share);
        assert_eq!((found.overall.count.get(), found.overall.missed.get()), (60, 0), "{share}");
    }
}

#[test]
fn a_cycle_is_missed_from_one_and_six_tenths_of_a_period_on_and_the_pump_has_stopped_from_six() {
    assert_eq!(STOPPED_FROM, 6.0);
    // The gap in periods, what was missed in it, and whether the pump stood still.
    for (gap, missed, stops) in [(1.5, 0, 0), (1.7, 1, 0), (2.9, 2, 0), (5.8, 5, 0), (6.2, 0, 1), (20.0, 0, 1)] {
        let found = found(&cycles(40, |number, cycle| {
            if number == 20 {
                cycle.still = gap - 1.0;
            }
        }));
        let of = found.overall;
        assert_eq!((of.missed.get(), of.stops.get(), of.count.get()), (missed, stops, 40), "{gap} periods");
    }
}

#[test]
fn a_gauge_ends_where_six_cycles_end_alike_and_at_three_readings_in_a_row() {
    // Cycles that go beyond the gauge's end, and by how much of their height.
    let said = |beyond: usize, by: f64, alike: bool| {
        let cycles = cycles(60, |number, cycle| {
            cycle.height = match number % 10 {
                0 if number / 10 < beyond => 180.0 * (1.0 + by),
                _ => cycle.height * 0.6,
            };
        });
        let mut rows = rows(&cycles, 50.0);
        for (number, (_, value)) in rows.iter_mut().enumerate() {
            let most = if alike { 190.0 } else { 190.0 + (number / 50 % 7) as f64 };
            *value = value.min(most);
        }
        findings(&taken(&rows)).unwrap().clipped.map(|clipped| clipped.at.get())
    };
    assert_eq!(said(6, 0.2, true), Some(190.0));
    assert_eq!(said(5, 0.2, true), None, "five may be chance");
    assert_eq!(said(6, 0.2, false), None, "a pump that holds ends a little higher or lower each time");
    // A cosine is above 1 / (1 + by) of itself for 2 acos(...) / 2π of its second: 2.0 or 4.6 readings.
    assert_eq!(said(6, 0.004, true), None, "two readings in a row are a tip");
    assert_eq!(said(6, 0.03, true), Some(190.0));
}

#[test]
fn readings_are_missing_from_a_quarter_of_a_second_and_three_steps_on() {
    let gaps = [(50.0, 0.24, 0), (50.0, 0.26, 1), (10.0, 0.3, 0), (10.0, 0.4, 1), (5.0, 0.6, 0), (5.0, 0.8, 1)];
    for (readings, gap, dropouts) in gaps {
        let all = rows(&cycles(30, |_, cycle| cycle.period = 1.6), readings);
        let kept: Vec<(f64, f64)> =
            all.iter().copied().filter(|(at, _)| *at < 20.0 + 1e-6 || *at > 20.0 + gap - 1e-6).collect();
        assert!(kept.len() < all.len());
        let notes = taken(&kept).notes;
        assert_eq!(notes.dropouts.get(), dropouts, "{gap} s at {readings} a second");
        assert!((notes.dropped.get() - gap * f64::from(dropouts)).abs() < 1e-6, "{notes:?}");
    }
}

/// The range holds the median of periods in 90 of 100 at least, for its ranks are whole (sign test), and
/// is no wider than that asks for: 2 · 1.645 · 1.2533 σ / √n, and a rank more on either side. From rise to
/// rise a period is three quarters of one cycle's and a quarter of the next one's.
#[test]
fn the_range_of_a_rate_holds_it_and_is_no_wider_than_need_be() {
    const SPREAD: f64 = 0.03;
    const CYCLES: usize = 60;
    let (mut held, mut width) = (0.0, 0.0);
    let traces = 200;
    for seed in 0..traces {
        let mut chance = Chance::seeded(900 + seed);
        let all: Vec<Cycle> =
            (0..CYCLES).map(|_| Cycle { period: 1.0 + SPREAD * chance.normal(), height: 200.0, still: 0.0 }).collect();
        let rate = findings(&taken(&rows(&all, 50.0))).unwrap().overall.rate.unwrap();
        let [low, high] = [rate.low, rate.high].map(|rate| rate.in_unit(SpeedUnit::PerMinute));
        held += f64::from(u8::from(low <= 60.0 && 60.0 <= high)) / traces as f64;
        width += (high - low) / 60.0 / traces as f64;
    }
    let between = SPREAD * (0.75_f64.powi(2) + 0.25_f64.powi(2)).sqrt();
    let asked = 2.0 * 1.645 * 1.2533 * between / (CYCLES as f64).sqrt();
    println!("held {held:.3}, {:.2} times as wide as asked", width / asked);
    assert!((0.85..=0.97).contains(&held), "{held}");
    assert!((0.9..=1.4).contains(&(width / asked)), "{width} where {asked} is asked");
}

#[test]
fn what_sinks_is_below_nothing_and_one_bad_reading_turns_no_sign() {
    let sinking = |sign: f64, bad: f64| {
        let mut rows = rows(&cycles(90, |number, cycle| cycle.height -= 0.2 * number as f64), 50.0);
        rows.iter_mut().for_each(|(_, value)| *value *= sign);
        if let Some((_, value)) = rows.get_mut(1_234) {
            *value = bad;
        }
        let file = taken(&rows);
        let found = findings(&file).unwrap();
        (file.notes.sign_turned, found.overall.peak_drift.unwrap().value.get(), found.overall.highest.get())
    };
    for (sign, bad) in [(1.0, 100.0), (-1.0, -100.0), (1.0, -400.0), (-1.0, 400.0)] {
        let (turned, drift, highest) = sinking(sign, bad);
        assert_eq!(turned, sign < 0.0, "{sign} with {bad}");
        assert!((drift + 12.0).abs() < 1.0, "it sinks by 0.2 a cycle, 12 a minute: {drift}");
        assert!((205.0..215.0).contains(&highest), "{highest}");
    }
}

#[test]
fn a_zero_that_moves_up_moved_up() {
    for (by, rises) in [(30.0, true), (-30.0, false)] {
        let mut rows = rows(&cycles(120, |_, _| {}), 50.0);
        let ends = rows.last().unwrap().0;
        rows.iter_mut().for_each(|(at, value)| *value += by * *at / ends);
        let found = findings(&taken(&rows)).unwrap();
        let zero = found.zero.unwrap();
        assert!((zero.value.get() - by).abs() < 1.5 && (zero.low.get() > 0.0) == rises, "{zero:?}");
        assert!((found.overall.peak.usual.get() - 210.0).abs() < 2.0, "{:?}", found.overall.peak);
        let drift = found.overall.peak_drift.unwrap();
        assert!(drift.value.get().abs() < 1.5, "a zero that moves is no pump that pulls more: {drift:?}");
        assert!(found.rest_rises.is_none());
    }
}

#[test]
fn a_pump_that_lets_go_less_is_no_zero_that_moves() {
    // Its rest rises by 40 and its highest stays.
    let rising = cycles(120, |number, cycle| cycle.height = 200.0 - 40.0 * number as f64 / 120.0);
    let mut rows = rows(&rising, 50.0);
    rows.iter_mut().for_each(|(at, value)| *value += 40.0 * *at / 120.0);
    let found = findings(&taken(&rows)).unwrap();
    assert!(found.zero.is_none());
    let by = found.rest_rises.unwrap();
    assert!((by.value.get() - 40.0).abs() < 3.0, "{by:?}");
}

/// A third is asked for, within a minute, at one rate.
#[test]
fn a_pull_is_lost_from_a_third_within_a_minute_on_and_at_one_rate_only() {
    let said = |falls_by: f64, cycles_long: f64, faster: f64| {
        let found = found(&cycles(180, |number, cycle| {
            let gone = ((number as f64 - 60.0) / cycles_long).clamp(0.0, 1.0);
            cycle.height -= 210.0 * falls_by * gone;
            if number >= 60 {
                cycle.period /= faster;
            }
        }));
        found.collapses.unwrap()
    };
    assert_eq!(said(0.30, 10.0, 1.0), []);
    let fell = said(0.36, 10.0, 1.0);
    let [fell] = fell[..] else { panic!("{fell:?}") };
    assert!((fell.from.get() - 60.0).abs() < 3.0 && (fell.to.get() - 70.0).abs() < 3.0, "{fell:?}");
    assert!((fell.before.get() - 210.0).abs() < 2.0 && (fell.after.get() - 134.4).abs() < 3.0, "{fell:?}");
    assert_eq!(said(0.6, 40.0, 1.0).len(), 1);
    assert_eq!(said(0.4, 110.0, 1.0), [], "slower, it is a drift");
    assert_eq!(said(0.5, 1.0, 1.4), [], "at another rate it is another pattern");
    assert_eq!(said(0.5, 1.0, 1.0).len(), 1);
}

#[test]
fn four_bad_readings_do_not_end_the_rate_nor_make_a_cycle() {
    for readings in [25.0, 50.0] {
        let mut rows = rows(&cycles(60, |_, _| {}), readings);
        for (number, bad) in [(401, 480.0), (620, 0.0), (777, -120.0), (1_203, 350.0)] {
            rows.get_mut(number).unwrap().1 = bad;
        }
        let found = findings(&taken(&rows)).unwrap();
        assert_eq!((found.overall.count.get(), found.overall.missed.get(), found.segments.len()), (60, 0, 1));
        assert_eq!(found.overall.weak_share.fraction(), 0.0);
        assert!((found.overall.rate.unwrap().value.in_unit(SpeedUnit::PerMinute) - 60.0).abs() < 0.3);
        assert!(found.overall.highest.get() < 215.0, "{:?}", found.overall.highest);
        assert_eq!(found.notes.spikes.map(|spikes| spikes.get()), Some(4), "{readings}");
    }
}
