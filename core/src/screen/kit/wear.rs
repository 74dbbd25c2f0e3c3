//! How a pump wears: its checks over time, with parts that were new.

use super::plot::{empty, Height};
use super::pump_parts::{names, part_of, parts_of, PartInUse};
use super::pump_words::{self, side_text};
use crate::answer::pump::wear::{course, Course, Forecast, NewPart, Point};
use crate::gather::kit::PumpInputs;
use crate::quantity::{Quantity, Vacuum};
use crate::record::gauge::SetUp;
use crate::record::Sides;
use crate::screen::shapes::{PlotBand, PlotCourse, PlotPicture, PlotPoint, RibbonPoint, Section, Tick};
use crate::screen::View;
use crate::time::{Instant, LocalDay, Moment, Span};
use crate::trouble::Trouble;

/// Points along a course as it is drawn.
const DRAWN: i64 = 16;
/// How far a course is drawn on.
const DRAWN_ON: Span = Span::hours(24 * 183);
/// Parts that are asked about before the motor is.
const FIRST_ASKED: [&str; 2] = ["valve", "membrane"];

/// A side with its checks, those done as the latest was.
struct SideOverTime {
    side: Sides,
    points: Vec<Point>,
    course: Option<Course>,
}

pub(super) fn section(view: &View<'_>, look: &PumpInputs) -> Result<Option<Section>, Trouble> {
    let Some(latest) = look.latest() else { return Ok(None) };
    let parts = parts_of(view, &look.id)?;
    let sides = over_time(view, look, latest.check.set_up, &parts);
    if sides.iter().all(|side| side.points.len() < 2) {
        return Ok(None);
    }
    let mut lines: Vec<String> = Vec::new();
    for side in &sides {
        if let Some(course) = &side.course {
            lines.extend(render(view, side, course, &parts));
        }
    }
    lines.extend(left_out(view, look, latest.check.set_up));
    Ok(Some(Section { lines, plot: Some(picture(view, look, &sides, &parts)), ..pump_words::section(view, "wear") }))
}

fn over_time(view: &View<'_>, look: &PumpInputs, as_latest: SetUp, parts: &[PartInUse]) -> Vec<SideOverTime> {
    let new: Vec<NewPart> =
        parts.iter().filter_map(|part| Some(NewPart { at: part.since?.1, part: part.id.clone() })).collect();
    [Sides::Left, Sides::Right, Sides::Both]
        .into_iter()
        .map(|side| {
            let points: Vec<Point> = look
                .checks
                .iter()
                .filter(|looked| looked.check.set_up == as_latest && look.doubts(looked).is_empty())
                .filter_map(|looked| {
                    Some(Point {
                        at: looked.check.at.as_ref()?.instant(),
                        check: looked.check.id.clone(),
                        gauge: looked.check.gauge.clone()?,
                        pull: *looked.pull(side)?,
                    })
                })
                .collect();
            let course = course(&points, &new, look.limits.low, view.now);
            SideOverTime { side, points, course }
        })
        .filter(|side| !side.points.is_empty())
        .collect()
}

/// Checks that were done in another way are not held against these.
fn left_out(view: &View<'_>, look: &PumpInputs, as_latest: SetUp) -> Option<String> {
    let other = look.checks.iter().filter(|looked| looked.check.set_up != as_latest).count();
    (other > 0).then(|| view.words().with("wear-left-out", &[("count", (other as i64).into())]))
}

fn day(view: &View<'_>, at: Instant) -> LocalDay {
    LocalDay::of(&Moment::new(at, view.zone), view.settings.day_start)
}

fn render(view: &View<'_>, side: &SideOverTime, course: &Course, parts: &[PartInUse]) -> Vec<String> {
    let words = view.words();
    let name = side_text(view, side.side);
    let mut lines = Vec::new();
    if let Some(back) = &course.came_back {
        lines.push(words.with(
            "wear-came-back",
            &[
                ("side", name.clone().into()),
                ("by", words.vacuum(back.by.value).into()),
                ("part", names(parts, &back.parts).into()),
                ("date", words.short_date(day(view, back.at)).into()),
            ],
        ));
    }
    if let Some(slope) = course.slope {
        let key = match (slope.low.canonical(), slope.high.canonical()) {
            (_, high) if high < 0.0 => "wear-falls",
            (low, _) if low > 0.0 => "wear-rises",
            _ => "wear-no-slope",
        };
        let between = match key {
            // Said as "so much less": the greater loss last.
            "wear-falls" => (words.low().wear(slope.high), words.high().wear(slope.low)),
            "wear-rises" => (words.low().wear(slope.low), words.high().wear(slope.high)),
            _ => (words.low().signed_wear(slope.low), words.high().signed_wear(slope.high)),
        };
        lines.push(words.with(
            key,
            &[
                ("side", name.clone().into()),
                ("by", words.wear(slope.value).into()),
                ("low", between.0.into()),
                ("high", between.1.into()),
                ("checks", course.checks.get().into()),
            ],
        ));
    }
    if let Some(fell) = course.fell.filter(|fell| fell.by.value.canonical() > 0.0) {
        lines.push(words.with(
            if fell.beyond_error { "wear-fell-beyond" } else { "wear-fell-within" },
            &[
                ("side", name.clone().into()),
                ("by", words.vacuum(fell.by.value).into()),
                ("error", words.high().vacuum(fell.gauge_error).into()),
                ("date", words.short_date(day(view, fell.since)).into()),
            ],
        ));
        if fell.beyond_error {
            lines.push(ask_for_parts(view, course, parts));
        }
    }
    lines.push(forecast(view, &name, course.forecast));
    lines
}

/// A drop asks for new valves and membranes before it blames the motor.
fn ask_for_parts(view: &View<'_>, course: &Course, parts: &[PartInUse]) -> String {
    let words = view.words();
    let tried: Vec<String> = course
        .new_without_effect
        .iter()
        .filter(|id| {
            parts.iter().any(|p| p.id == **id && p.kind.as_deref().is_some_and(|kind| FIRST_ASKED.contains(&kind)))
        })
        .cloned()
        .collect();
    match tried.is_empty() {
        true => words.say("wear-try-parts"),
        false => words.with("wear-not-the-part", &[("part", names(parts, &tried).into())]),
    }
}

fn forecast(view: &View<'_>, side: &str, forecast: Forecast) -> String {
    let words = view.words();
    let month = |at: Instant| {
        let date = day(view, at).date();
        words.with(
            "month-year",
            &[
                ("month", words.say(&format!("month-{}", chrono::Datelike::month(&date))).into()),
                ("year", chrono::Datelike::year(&date).to_string().into()),
            ],
        )
    };
    let side = ("side", side.to_owned().into());
    match forecast {
        Forecast::Needs(more) => words.with("forecast-needs", &[side, ("more", more.get().into())]),
        Forecast::NotFalling => words.with("forecast-not-falling", &[side]),
        Forecast::Reached => words.with("forecast-reached", &[side]),
        Forecast::NotInSight => words.with("forecast-not-in-sight", &[side]),
        Forecast::Between(soonest, Some(latest)) => words
            .with("forecast-between", &[side, ("soonest", month(soonest).into()), ("latest", month(latest).into())]),
        Forecast::Between(soonest, None) => {
            words.with("forecast-not-before", &[side, ("soonest", month(soonest).into())])
        }
    }
}

fn picture(view: &View<'_>, look: &PumpInputs, sides: &[SideOverTime], parts: &[PartInUse]) -> PlotPicture {
    let words = view.words();
    let all = || sides.iter().flat_map(|side| &side.points);
    let first = all().map(|point| point.at).min().unwrap_or(view.now);
    let seen = all().map(|point| point.at).max().unwrap_or(view.now).max(view.now);
    let span = seen.since(first);
    let drawn_on = DRAWN_ON.min(Span::milliseconds(span.in_milliseconds() / 2));
    let last = seen.plus(drawn_on);
    let whole = last.since(first);
    // Room on both ends, so that a point is not cut.
    let across = |at: Instant| 0.03 + 0.94 * at.since(first).share_of(whole);
    let limits = [look.limits.low, look.limits.high.or(look.limits.usually_to)];
    let shown = all().flat_map(|p| [p.pull.estimate.low, p.pull.estimate.high]).chain(limits.into_iter().flatten());
    let height = Height::over(view, shown, false);
    let mut courses = Vec::new();
    for side in sides {
        let Some(found) = &side.course else { continue };
        courses.extend(drawn(found, found.from, seen, false, &across, height));
        courses.extend(drawn(found, seen, last, true, &across, height));
    }
    let points: Vec<PlotPoint> = sides
        .iter()
        .flat_map(|side| {
            side.points.iter().map(move |point| PlotPoint {
                at: across(point.at),
                low: height.at(point.pull.estimate.low),
                middle: height.at(point.pull.estimate.value),
                high: height.at(point.pull.estimate.high),
                part: part_of(side.side),
                open: false,
            })
        })
        .collect();
    let band = match (look.limits.low, look.limits.high.or(look.limits.usually_to)) {
        (None, None) => None,
        (low, high) => Some(PlotBand {
            low: low.map_or(0.0, |low| height.at(low)),
            high: high.map_or(1.0, |high| height.at(high)),
            label: pump_words::limits_text(view, &look.limits),
        }),
    };
    let marks = parts
        .iter()
        .filter_map(|part| Some((part.since?.1, part)))
        .filter(|(at, _)| *at > first && *at <= last)
        .map(|(at, part)| Tick { at: across(at), label: part.name.clone() })
        .collect();
    let spoken = words.with(
        "wear-spoken",
        &[
            ("count", (points.len() as i64).into()),
            ("from", words.plain_date(day(view, first).date()).into()),
            ("to", words.plain_date(day(view, seen).date()).into()),
        ],
    );
    PlotPicture {
        bands: band.into_iter().collect(),
        courses,
        points,
        marks,
        ticks: ticks(view, first, last, &across),
        scale: height.labels(view),
        legend: words.say("wear-legend"),
        spoken,
        ..empty()
    }
}

fn drawn(
    course: &Course,
    from: Instant,
    to: Instant,
    dashed: bool,
    across: &impl Fn(Instant) -> f32,
    height: Height,
) -> Option<PlotCourse> {
    let step = to.since(from).in_milliseconds() / DRAWN;
    if step <= 0 {
        return None;
    }
    let points = (0..=DRAWN)
        .map(|n| {
            let at = from.plus(Span::milliseconds(step * n));
            let on = course.on(at)?;
            let vacuum = |v: Vacuum| height.at(v);
            Some(RibbonPoint { at: across(at), low: vacuum(on.low), middle: vacuum(on.value), high: vacuum(on.high) })
        })
        .collect::<Option<Vec<_>>>()?;
    Some(PlotCourse { points, dashed })
}

fn ticks(view: &View<'_>, first: Instant, last: Instant, across: &impl Fn(Instant) -> f32) -> Vec<Tick> {
    let words = view.words();
    let step = last.since(first).in_milliseconds() / 3;
    (0..=3)
        .map(|n| {
            let at = first.plus(Span::milliseconds(step * n));
            Tick { at: across(at), label: words.short_date(day(view, at)) }
        })
        .collect()
}
