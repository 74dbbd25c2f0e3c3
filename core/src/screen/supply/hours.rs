//! The day by the hour.

use crate::answer::supply::hours::by_hour;
use crate::answer::supply::{Calendar, Side, Spread};
use crate::gather::supply::SupplyInputs;
use crate::quantity::{say_decimal, Production, ProductionUnit, Quantity};
use crate::screen::shapes::{HourBar, HoursPicture, Tick};
use crate::screen::View;
use crate::time::Span;
use crate::trouble::Trouble;

/// No more than the last four weeks tell how a day goes now.
const LOOKS_BACK: usize = 28;
const TOPS: &[f64] = &[5.0, 10.0, 20.0, 30.0, 40.0, 60.0, 80.0, 120.0, 200.0];

pub(super) fn picture(view: &View<'_>, look: &SupplyInputs) -> Result<HoursPicture, Trouble> {
    let words = view.words();
    let days = &look.days;
    let recent = days.get(days.len().saturating_sub(LOOKS_BACK)..).unwrap_or_default();
    let Some(first) = recent.first() else { return Ok(of_nothing()) };
    let from = first.day.begins(look.calendar.zone, look.calendar.start).minus(Span::hours(24));
    let removals = view.journal.removals(from, view.now.plus(Span::milliseconds(1)))?;
    let spread = Spread::new(&removals, look.calendar);
    let sides: Vec<Vec<_>> =
        Side::BOTH.iter().map(|side| spread.judged_together(*side)).filter(|intervals| !intervals.is_empty()).collect();
    let slices: Vec<&[_]> = sides.iter().map(Vec::as_slice).collect();
    let hours = by_hour(&slices, Calendar { zone: view.zone, ..look.calendar });
    let unit = ProductionUnit::MilliliterPerHour;
    let rate = |p: Production| p.in_unit(unit);
    let most = hours.iter().flatten().map(|h| rate(h.high)).fold(0.0, f64::max);
    if most <= 0.0 {
        return Ok(of_nothing());
    }
    let top = TOPS.iter().copied().find(|t| *t >= most).unwrap_or(most);
    let height = |p: Production| ((rate(p) / top) as f32).clamp(0.0, 1.0);
    let bars = hours
        .iter()
        .enumerate()
        .map(|(i, hour)| HourBar {
            from: i as f32 / 24.0,
            to: (i + 1) as f32 / 24.0,
            height: hour.map(|h| height(h.middle)),
            low: hour.map_or(0.0, |h| height(h.low)),
            high: hour.map_or(0.0, |h| height(h.high)),
        })
        .collect();
    let start = look.calendar.start.hour();
    let known = |pick: fn(f64, f64) -> bool| {
        hours.iter().enumerate().filter_map(|(i, h)| Some((i as u32, rate((*h)?.middle)))).reduce(|a, b| {
            if pick(b.1, a.1) {
                b
            } else {
                a
            }
        })
    };
    let spoken = match (known(|b, a| b > a), known(|b, a| b < a)) {
        (Some(most), Some(least)) => words.with(
            "supply-hours-spoken",
            &[
                ("most", words.by_the_hour(Production::of(most.1, unit)).into()),
                ("most_hour", words.hour(start + most.0).into()),
                ("least", words.by_the_hour(Production::of(least.1, unit)).into()),
                ("least_hour", words.hour(start + least.0).into()),
            ],
        ),
        _ => String::new(),
    };
    Ok(HoursPicture {
        title: words.say("supply-hours"),
        legend: words.say("supply-hours-legend"),
        bars,
        ticks: (0..=4).map(|q| Tick { at: q as f32 / 4.0, label: words.hour(start + q * 6) }).collect(),
        scale: [0.5, 1.0]
            .map(|at: f64| {
                let production = Production::of(top * at, unit);
                let label = if at == 1.0 {
                    words.by_the_hour(production)
                } else {
                    say_decimal(rate_shown(view, production), 1)
                };
                Tick { at: at as f32, label }
            })
            .to_vec(),
        spoken,
    })
}

/// A rate by the hour in the unit that is read.
fn rate_shown(view: &View<'_>, production: Production) -> f64 {
    view.words().hourly(production).0
}

pub(super) fn of_nothing() -> HoursPicture {
    HoursPicture {
        title: String::new(),
        legend: String::new(),
        bars: Vec::new(),
        ticks: Vec::new(),
        scale: Vec::new(),
        spoken: String::new(),
    }
}
