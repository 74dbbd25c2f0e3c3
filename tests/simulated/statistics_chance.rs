//! How often the statistics are right where the truth is known.

use drawwell_core::statistics::{hamed_rao, mann_kendall, pelt, robust_pelt, robust_slope, segment_range, Point};
use drawwell_tests::chance::Chance;

/// Noise of spread 1 that resembles itself from one day to the next.
fn noise(chance: &mut Chance, likeness: f64) -> impl FnMut() -> f64 + '_ {
    let mut last = chance.normal();
    move || {
        last = likeness * last + (1.0 - likeness * likeness).sqrt() * chance.normal();
        last
    }
}

/// A series of noise with a share of its days missing.
fn gapped(chance: &mut Chance, days: u32, likeness: f64, missing: f64) -> Vec<Point> {
    let there: Vec<bool> = (0..days).map(|_| !chance.happens(missing)).collect();
    let mut noise = noise(chance, likeness);
    let all =
        there.into_iter().zip(0..).map(|(there, day): (bool, u32)| (there, Point { at: day.into(), value: noise() }));
    all.collect::<Vec<_>>().into_iter().filter(|(there, _)| *there).map(|(_, point)| point).collect()
}

/// Of a hundred ranges of 90 % about ninety hold the change, for a step of two spreads in
/// noise whose days are alone. The range is too wide rather than too narrow for large steps.
#[test]
fn a_range_of_90_percent_holds_the_change_in_90_percent() {
    let mut chance = Chance::seeded(1);
    for (step, least, most) in [(1.0, 0.86, 0.96), (1.5, 0.88, 0.98), (2.0, 0.89, 0.99)] {
        let (rounds, mut held) = (600, 0);
        for round in 0..rounds {
            let change = 30 + round % 40;
            let values: Vec<f64> =
                (0..100).map(|day| chance.normal() + if day < change { 0.0 } else { step }).collect();
            // The one change, wherever it is found.
            let cost = |part: &[f64]| {
                let mean = part.iter().sum::<f64>() / part.len() as f64;
                part.iter().map(|value| (value - mean).powi(2)).sum::<f64>()
            };
            let at = (1..100).min_by(|a, b| {
                let both = |at: usize| cost(&values[..at]) + cost(&values[at..]);
                both(*a).total_cmp(&both(*b))
            });
            let (low, high) = segment_range(&values, 0, at.unwrap(), 100, 0.9, 1.0).unwrap();
            held += u32::from((low..=high).contains(&change));
        }
        let share = f64::from(held) / rounds as f64;
        assert!((least..=most).contains(&share), "{share} for a step of {step}");
    }
}

/// Where neighbours resemble each other the plain test calls a trend four times as often as it
/// should, the corrected one still twice as often, with and without gaps: what a short series
/// shows of its likeness is too little.
#[test]
fn likeness_of_neighbours_makes_few_false_trends() {
    let mut chance = Chance::seeded(2);
    for missing in [0.0, 0.3] {
        let (rounds, mut plainly, mut corrected, mut held) = (400, 0, 0, 0);
        for _ in 0..rounds {
            let points = gapped(&mut chance, 120, 0.5, missing);
            let values: Vec<f64> = points.iter().map(|point| point.value).collect();
            plainly += u32::from(mann_kendall(&values).unwrap().p < 0.05);
            let trend = hamed_rao(&points, Some(3)).unwrap();
            corrected += u32::from(trend.trend.p < 0.05);
            let slope = robust_slope(&points, 0.95, trend.variance_inflation).unwrap();
            held += u32::from(slope.low <= 0.0 && 0.0 <= slope.high);
        }
        let share = |count: u32| f64::from(count) / f64::from(rounds);
        assert!(share(plainly) > 0.15, "{}", share(plainly));
        assert!(share(corrected) < 0.12, "{}", share(corrected));
        assert!(share(held) > 0.88, "{}", share(held));
    }
}

/// Mistyped values make no change by themselves, and hide none.
#[test]
fn mistyped_values_are_no_changes() {
    let mut chance = Chance::seeded(3);
    let penalty = 3.0 * 120_f64.ln();
    let (rounds, mut calm, mut squared_calm, mut found) = (200, 0, 0, 0);
    for _ in 0..rounds {
        let mut values: Vec<f64> = (0..120).map(|_| chance.normal()).collect();
        for _ in 0..4 {
            values[chance.whole(0, 119) as usize] += 40.0;
        }
        calm += u32::from(robust_pelt(&values, penalty, 2).is_empty());
        squared_calm += u32::from(pelt(&values, penalty, 2).is_empty());
        values.iter_mut().skip(70).for_each(|value| *value -= 3.0);
        let changes = robust_pelt(&values, penalty, 2);
        found += u32::from(matches!(changes.as_slice(), [one] if (67..=73).contains(one)));
    }
    assert!(calm >= 190, "{calm}");
    assert!(squared_calm < 20, "{squared_calm}");
    assert!(found >= 180, "{found}");
}
