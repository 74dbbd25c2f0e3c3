//! How often the refill curve is right, with families of known truth: the tables of
//! docs/tonight.md.

#![allow(clippy::indexing_slicing, reason = "there are two breasts")]

use drawwell_core::answer::refill::{kept::of_removals, Difference, Flattens, Refill, WellOf};
use drawwell_core::answer::supply::Side;
use drawwell_core::quantity::Quantity;
use drawwell_core::time::{Instant, Span, Zone};
use drawwell_tests::chance::Chance;
use drawwell_tests::refilling_family::{some_family, RefillingFamily};

#[derive(Default)]
struct Tally {
    wells: u32,
    rate_told: u32,
    rate_near: u32,
    rate_held: u32,
    level_told: u32,
    level_near: u32,
    level_held: u32,
    no_sign: u32,
    cannot: u32,
    morning: u32,
    morning_held: u32,
    morning_off: f64,
    less: u32,
    less_held: u32,
}

fn main() {
    let families: u64 = std::env::args().nth(1).and_then(|n| n.parse().ok()).unwrap_or(300);
    println!("| families | days | rate told | within 10 % | held | level told | within 20 % | held | no sign | can't tell | morning off | held | difference told | held |");
    println!("|---|---|---|---|---|---|---|---|---|---|---|---|---|---|");
    for (name, straight, left_behind) in
        [("flatten", false, 0.0), ("straight", true, 0.0), ("flatten, 15 % left behind", false, 0.15)]
    {
        for days in [14, 28, 42] {
            let mut tally = Tally::default();
            for seed in 0..families {
                let mut chance = Chance::seeded(seed * 7 + u64::from(days));
                let family = RefillingFamily { left_behind, ..some_family(&mut chance, straight) };
                let record = family.record(days, &mut chance);
                let refill = of_removals(&record.removals, record.now, record.calendar);
                count(&mut tally, &family, &refill, record.now, &mut chance);
            }
            let share = |of: u32, all: u32| {
                if all == 0 {
                    "".to_owned()
                } else {
                    format!("{:.0} %", f64::from(of) / f64::from(all) * 100.0)
                }
            };
            println!(
                "| {name} | {days} | {} | {} | {} | {} | {} | {} | {} | {} | {:+.1} % | {} | {} | {} |",
                share(tally.rate_told, tally.wells),
                share(tally.rate_near, tally.rate_told),
                share(tally.rate_held, tally.wells),
                share(tally.level_told, tally.wells),
                share(tally.level_near, tally.level_told),
                share(tally.level_held, tally.level_told),
                share(tally.no_sign, tally.wells),
                share(tally.cannot, tally.wells),
                tally.morning_off / f64::from(tally.morning.max(1)) * 100.0,
                share(tally.morning_held, tally.morning),
                share(tally.less, tally.morning),
                share(tally.less_held, tally.less),
            );
        }
    }
}

fn count(tally: &mut Tally, family: &RefillingFamily, refill: &Refill, now: Instant, chance: &mut Chance) {
    for well in &refill.wells {
        let breast = match well.of {
            WellOf::Side(Side::Left) => family.breasts[0],
            WellOf::Side(Side::Right) => family.breasts[1],
            WellOf::Together => continue,
        };
        tally.wells += 1;
        let rate = |p: drawwell_core::quantity::Production| p.canonical() / 24.0;
        tally.rate_held += u32::from((rate(well.rate.low)..=rate(well.rate.high)).contains(&breast.rate));
        if well.rate_is_close {
            tally.rate_told += 1;
            tally.rate_near += u32::from((rate(well.rate.value) / breast.rate - 1.0).abs() <= 0.1);
        }
        match well.flattens {
            Flattens::At(level) => {
                tally.level_told += 1;
                if let Some(capacity) = breast.capacity {
                    tally.level_near += u32::from((level.value.canonical() / capacity - 1.0).abs() <= 0.2);
                    tally.level_held += u32::from((level.low.canonical()..=level.high.canonical()).contains(&capacity));
                }
            }
            Flattens::NoSignUpTo(_) => tally.no_sign += 1,
            Flattens::CannotTellYet => tally.cannot += 1,
        }
    }
    if refill.wells.len() < 2 {
        return;
    }
    let gaps = [2.5, 3.0, family.night * 0.9];
    let lay = |gaps: &[f64]| {
        let mut at = now;
        gaps.iter()
            .map(|gap| {
                let from = at;
                at = at.plus(Span::milliseconds((gap * 3_600_000.0) as i64));
                (from, at)
            })
            .collect::<Vec<_>>()
    };
    let ahead = lay(&gaps);
    let sigma = (1.0 + family.noise * family.noise).ln().sqrt();
    let mut really = |noisy: bool, ahead: &[(Instant, Instant)]| -> f64 {
        ahead
            .iter()
            .flat_map(|(from, until)| [0, 1].map(|side| family.truly(side, *from, *until, now)))
            .map(|truth| if noisy { truth * (sigma * chance.normal() - sigma * sigma / 2.0).exp() } else { truth })
            .sum()
    };
    if let Some(brings) = refill.brings(&ahead, Zone::UTC) {
        let (came, mean) = (really(true, &ahead), really(false, &ahead));
        tally.morning += 1;
        tally.morning_off += brings.value.canonical() / mean - 1.0;
        tally.morning_held += u32::from((brings.low.canonical()..=brings.high.canonical()).contains(&came));
    }
    let long = family.night * 0.95;
    let (one, two) = (lay(&[long, (12.0 - long) / 2.0, (12.0 - long) / 2.0]), lay(&[4.0, 4.0, 4.0]));
    if let Difference::Less(less) = refill.less(&two, &one, Zone::UTC) {
        let truth = really(false, &two) - really(false, &one);
        tally.less += 1;
        tally.less_held += u32::from((less.low.canonical()..=less.high.canonical()).contains(&truth));
    }
}
