//! What the nights were.

use crate::answer::night::Frame;
use crate::gather::night::nights_back;
use crate::gather::tonight::TonightInputs;
use crate::screen::shapes::{Action, Event, Place, PlotBand, PlotPicture, PlotPoint, Section, Sign, Tick, Weight};
use crate::screen::View;
use crate::time::{LocalDay, Moment, Span};
use crate::trouble::Trouble;

/// So many nights are looked back on.
pub(in crate::screen) const NIGHTS: u32 = 14;

pub(super) fn section(view: &View<'_>, look: &TonightInputs) -> Result<Option<Section>, Trouble> {
    let words = view.words();
    if look.plan.is_none() {
        return Ok(None);
    }
    let mut section = crate::screen::section::section("nights", words.say("nights"));
    section.actions =
        vec![Action::new("open-day", words.say("ready-today"), Event::Go { place: Place::Day { days_back: 0 } })
            .weight(Weight::Quiet)
            .sign(Sign::Day)];
    match over(view, &look.gathered.frame, NIGHTS)? {
        Some((lines, plot)) => (section.lines, section.plot) = (lines, Some(plot)),
        None => section.lines = vec![words.say("nights-none")],
    }
    Ok(Some(section))
}

/// What so many nights back were, in words and drawn; none where nothing is known of any.
pub(in crate::screen) fn over(
    view: &View<'_>,
    frame: &Frame,
    back: u32,
) -> Result<Option<(Vec<String>, PlotPicture)>, Trouble> {
    let words = view.words();
    let nights = nights_back(view, frame, back)?;
    let known: Vec<Span> = nights.iter().filter_map(|n| n.longest).collect();
    if known.is_empty() {
        return Ok(None);
    }
    let limit = frame.longest.value;
    let within = nights.iter().filter(|n| n.is_within(limit) == Some(true)).count();
    let mut sorted = known.clone();
    sorted.sort();
    let middle = sorted.get(sorted.len() / 2).copied().unwrap_or(limit);
    let longest = sorted.last().copied().unwrap_or(limit);
    let mut lines = vec![
        words.with(
            "nights-longest",
            &[
                ("nights", (known.len() as i64).into()),
                ("middle", words.span(middle).into()),
                ("longest", words.span(longest).into()),
            ],
        ),
        words.with(
            "nights-within",
            &[
                ("within", (within as i64).into()),
                ("nights", (known.len() as i64).into()),
                ("limit", words.span(limit).into()),
            ],
        ),
    ];
    let unknown = nights.len() - known.len();
    if unknown > 0 {
        lines.push(words.with("nights-unknown", &[("nights", (unknown as i64).into())]));
    }
    let top = Span::hours(((longest.max(limit).in_minutes() + 59) / 60 + 1).max(4));
    let count = nights.len().max(1) as f32;
    let at = |i: usize| (i as f32 + 0.5) / count;
    let height = |span: Span| span.share_of(top).clamp(0.0, 1.0);
    let day =
        |i: usize| nights.get(i).map(|n| LocalDay::of(&Moment::new(n.window.from, view.zone), view.settings.day_start));
    let plot = PlotPicture {
        bands: vec![PlotBand {
            low: 0.0,
            high: height(limit),
            label: words.with("nights-limit", &[("limit", words.span(limit).into())]),
        }],
        stretches: Vec::new(),
        columns: Vec::new(),
        courses: Vec::new(),
        points: nights
            .iter()
            .enumerate()
            .filter_map(|(i, night)| {
                let middle = height(night.longest?);
                Some(PlotPoint { at: at(i), low: middle, middle, high: middle, part: None, open: false })
            })
            .collect(),
        marks: Vec::new(),
        ticks: [0, nights.len() / 2, nights.len().saturating_sub(1)]
            .into_iter()
            .filter_map(|i| Some(Tick { at: at(i), label: words.short_date(day(i)?) }))
            .collect(),
        scale: [top.in_minutes() / 120, top.in_minutes() / 60]
            .map(|hours| Tick { at: height(Span::hours(hours)), label: words.span(Span::hours(hours)) })
            .to_vec(),
        legend: words.say("nights-legend"),
        spoken: words
            .with("nights-spoken", &[("nights", (known.len() as i64).into()), ("middle", words.span(middle).into())]),
    };
    Ok(Some((lines, plot)))
}
