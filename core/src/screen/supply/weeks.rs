//! The picture of days or weeks: what was made, what was observed of it, its
//! course with its range, where it changed, the aim.

use crate::answer::supply::course::Course;
use crate::answer::supply::{DayProduction, Side};
use crate::gather::supply::SupplyInputs;
use crate::quantity::{say_decimal, Production, ProductionUnit, Quantity, Share, VolumeUnit};
use crate::screen::shapes::{BreakMark, ProductionBar, RibbonPoint, Tick, WeeksPicture};
use crate::screen::View;
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// More days than this are drawn as weeks.
const DRAWN_BY_DAY: usize = 92;
/// Points of a ribbon; the course is a straight line with a waist.
const RIBBON: usize = 13;
const ROOM: f64 = 1.08;

struct Scale {
    top: f64,
    unit: ProductionUnit,
}

impl Scale {
    /// A scale that holds a production, in the unit that is read.
    fn holding(most: f64, view: &View<'_>) -> Self {
        let (unit, tops): (_, &[f64]) = match view.settings.volume {
            VolumeUnit::Milliliter => (
                ProductionUnit::MilliliterPerDay,
                &[50.0, 100.0, 200.0, 400.0, 500.0, 600.0, 800.0, 1000.0, 1200.0, 1600.0, 2000.0, 3000.0, 5000.0],
            ),
            VolumeUnit::FluidOunce => {
                (ProductionUnit::FluidOuncePerDay, &[2.0, 4.0, 8.0, 16.0, 24.0, 32.0, 40.0, 56.0, 80.0, 120.0, 180.0])
            }
        };
        let wanted = Production::from_canonical(most).in_unit(unit) * ROOM;
        let top = tops.iter().copied().find(|t| *t >= wanted).or_else(|| tops.last().copied()).unwrap_or(wanted);
        Self { top, unit }
    }

    fn height(&self, production: Production) -> f32 {
        ((production.in_unit(self.unit) / self.top) as f32).clamp(0.0, 1.0)
    }

    fn ticks(&self, view: &View<'_>) -> Vec<Tick> {
        [0.5, 1.0]
            .map(|at: f64| {
                let figure = say_decimal(self.top * at, 1);
                let label = if at == 1.0 { view.words().with_unit(figure, view.settings.volume) } else { figure };
                Tick { at: at as f32, label }
            })
            .to_vec()
    }
}

/// A bar before it has a height.
struct Bar {
    from: LocalDay,
    days: i64,
    made: Option<Production>,
    by_the_clock: Option<Production>,
    observed: Share,
    counts: bool,
}

/// Along the picture: its first day, and how many there are.
struct Along {
    from: LocalDay,
    days: i64,
}

impl Along {
    fn at(&self, day: LocalDay) -> f32 {
        (day.days_since(self.from) as f64 / self.days.max(1) as f64).clamp(0.0, 1.0) as f32
    }
}

/// Both sides.
pub(in crate::screen) fn both(view: &View<'_>, look: &SupplyInputs) -> Result<WeeksPicture, Trouble> {
    let words = view.words();
    let days: Vec<DayProduction> = look.days.iter().chain(&look.today).copied().collect();
    let Some(first) = days.first() else { return Ok(nothing()) };
    let by_the_clock = match days.last() {
        Some(last) if days.len() <= DRAWN_BY_DAY => view.journal.known_by_day(first.day, last.day)?,
        _ => Vec::new(),
    };
    let clock_of = |day: LocalDay| {
        by_the_clock
            .binary_search_by_key(&day, |(d, _)| *d)
            .ok()
            .and_then(|at| by_the_clock.get(at))
            .map(|(_, volume)| Production::from_canonical(volume.canonical()))
    };
    let bars = bars(&days, look, |d| (d.production(), d.observed()), clock_of);
    let aim = view.settings.aim.map(|aim| Production::from_canonical(aim.canonical()));
    let course = look.course.as_ref().ok();
    let scale = Scale::holding(most(&bars, aim), view);
    let mut picture = drawn(view, look, &bars, course, aim, &scale);
    picture.legend = words.say("supply-weeks-legend");
    picture.breaks = look
        .changes
        .iter()
        .map(|change| {
            let along = along(&bars);
            BreakMark {
                from: along.at(change.earliest),
                to: along.at(LocalDay::from_number(change.latest.number() + 1).unwrap_or(change.latest)),
                label: words.short_date(change.on),
            }
        })
        .collect();
    let spoken_change = look
        .changes
        .last()
        .map(|c| words.with("supply-weeks-change", &[("date", words.plain_date(c.on.date()).into())]))
        .unwrap_or_default();
    picture.spoken =
        format!("{} {spoken_change}", spoken(view, &bars, course, look.along.rests_on.from)).trim().to_owned();
    Ok(picture)
}

/// One side, to the scale of both, so that one can be held against the other.
pub(super) fn of_side(view: &View<'_>, look: &SupplyInputs, side: Side, course: Option<&Course>) -> WeeksPicture {
    let of = |side: Side| bars(&look.days, look, |d| d.of_side(side), |_| None);
    let scale = Scale::holding(Side::BOTH.iter().map(|side| most(&of(*side), None)).fold(0.0, f64::max), view);
    let bars = of(side);
    let mut picture = drawn(view, look, &bars, course, None, &scale);
    picture.spoken = spoken(view, &bars, course, look.along.rests_on.from);
    picture
}

pub(super) fn nothing() -> WeeksPicture {
    WeeksPicture {
        bars: Vec::new(),
        ribbon: Vec::new(),
        breaks: Vec::new(),
        aim: None,
        legend: String::new(),
        ticks: Vec::new(),
        scale: Vec::new(),
        spoken: String::new(),
    }
}

fn bars(
    days: &[DayProduction],
    look: &SupplyInputs,
    made: impl Fn(&DayProduction) -> (Option<Production>, Share),
    by_the_clock: impl Fn(LocalDay) -> Option<Production>,
) -> Vec<Bar> {
    let least = look.rules.complete_day;
    let is_today = |day: LocalDay| look.today.is_some_and(|t| t.day == day);
    if days.len() <= DRAWN_BY_DAY {
        return days
            .iter()
            .map(|day| {
                let (made, observed) = made(day);
                let (today, by_the_clock) = (is_today(day.day), by_the_clock(day.day));
                let counts = observed >= least && !today;
                // Of today only what has come is drawn: the rest of it is not over yet.
                let made = if today { by_the_clock } else { made };
                Bar { from: day.day, days: 1, made, by_the_clock, observed, counts }
            })
            .collect();
    }
    days.chunks(7)
        .filter_map(|week| {
            let all: Vec<(Option<Production>, Share)> = week.iter().map(&made).collect();
            let counted: Vec<f64> =
                all.iter().filter(|(_, s)| *s >= least).filter_map(|(p, _)| p.map(Quantity::canonical)).collect();
            let observed = all.iter().map(|(_, s)| s.fraction()).sum::<f64>() / all.len() as f64;
            Some(Bar {
                from: week.first()?.day,
                days: week.len() as i64,
                made: crate::statistics::mean(&counted).map(Production::from_canonical),
                by_the_clock: None,
                observed: Share::of(observed),
                counts: !counted.is_empty(),
            })
        })
        .collect()
}

fn along(bars: &[Bar]) -> Along {
    let from = bars.first().map_or_else(|| LocalDay::on(chrono::NaiveDate::MIN), |b| b.from);
    let days = bars.last().map_or(1, |last| last.from.days_since(from) + last.days);
    Along { from, days }
}

/// The most that has to find room in a picture.
fn most(bars: &[Bar], aim: Option<Production>) -> f64 {
    bars.iter()
        .filter(|b| b.counts || b.observed.fraction() > 0.3)
        .filter_map(|b| b.made)
        .chain(bars.iter().filter_map(|b| b.by_the_clock))
        .chain(aim)
        .map(Quantity::canonical)
        .fold(0.0, f64::max)
}

fn drawn(
    view: &View<'_>,
    look: &SupplyInputs,
    bars: &[Bar],
    course: Option<&Course>,
    aim: Option<Production>,
    scale: &Scale,
) -> WeeksPicture {
    let along = along(bars);
    let end = |bar: &Bar| LocalDay::from_number(bar.from.number() + bar.days as i32).unwrap_or(bar.from);
    WeeksPicture {
        bars: bars
            .iter()
            .map(|bar| ProductionBar {
                from: along.at(bar.from),
                to: along.at(end(bar)),
                height: bar.made.map(|p| scale.height(p)),
                by_the_clock: bar.by_the_clock.map(|p| scale.height(p)),
                observed: bar.observed.fraction().clamp(0.0, 1.0) as f32,
                counts: bar.counts,
            })
            .collect(),
        ribbon: course.map(|course| ribbon(look, course, &along, scale)).unwrap_or_default(),
        breaks: Vec::new(),
        legend: String::new(),
        aim: aim.map(|aim| Tick { at: scale.height(aim), label: view.words().say("supply-aim-short") }),
        ticks: ticks(view, bars, &along),
        scale: scale.ticks(view),
        spoken: String::new(),
    }
}

fn ribbon(look: &SupplyInputs, course: &Course, along: &Along, scale: &Scale) -> Vec<RibbonPoint> {
    let rests = look.along.rests_on;
    let length = rests.to.days_since(rests.from).max(1);
    (0..RIBBON)
        .filter_map(|i| {
            let on = rests.from.number() + (length as f64 * i as f64 / (RIBBON - 1) as f64).round() as i32;
            let day = LocalDay::from_number(on)?;
            let estimate = course.on(day);
            Some(RibbonPoint {
                at: along.at(day) + 0.5 / along.days.max(1) as f32,
                low: scale.height(estimate.low),
                middle: scale.height(estimate.value),
                high: scale.height(estimate.high),
            })
        })
        .collect()
}

/// Dates under the picture: about four, none on top of another.
fn ticks(view: &View<'_>, bars: &[Bar], along: &Along) -> Vec<Tick> {
    let every = (bars.len() as f64 / 4.0).ceil().max(1.0) as usize;
    bars.iter()
        .step_by(every)
        .map(|bar| Tick { at: along.at(bar.from), label: view.words().short_date(bar.from) })
        .collect()
}

/// What the picture says, in words.
fn spoken(view: &View<'_>, bars: &[Bar], course: Option<&Course>, along: LocalDay) -> String {
    let words = view.words();
    let counted: Vec<&Bar> = bars.iter().filter(|b| b.counts && b.made.is_some()).collect();
    let made = |bar: &&&Bar| bar.made.map_or(0.0, Quantity::canonical);
    let least = counted.iter().min_by(|a, b| made(a).total_cmp(&made(b)));
    let most = counted.iter().max_by(|a, b| made(a).total_cmp(&made(b)));
    let mut said = vec![words.with(
        if bars.iter().any(|b| b.days > 1) { "supply-weeks-spoken-weeks" } else { "supply-weeks-spoken-days" },
        &[("bars", (bars.len() as i64).into()), ("counted", (counted.len() as i64).into())],
    )];
    if let (Some(least), Some(most)) = (least, most) {
        let day = |bar: &Bar| words.short_date(bar.from);
        let production = |bar: &Bar| bar.made.map(|p| words.production(p)).unwrap_or_default();
        said.push(words.with(
            "supply-weeks-spoken-range",
            &[
                ("least", production(least).into()),
                ("least_day", day(least).into()),
                ("most", production(most).into()),
                ("most_day", day(most).into()),
            ],
        ));
    }
    if let (Some(course), Some(first), Some(last)) = (course, bars.first(), bars.last()) {
        said.push(words.with(
            "supply-weeks-spoken-course",
            &[
                ("from", words.production(course.on(first.from.max(along)).value).into()),
                ("to", words.production(course.on(last.from).value).into()),
            ],
        ));
    }
    said.join(" ")
}
