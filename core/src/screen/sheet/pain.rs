//! Pain as it was said: raw, 0 to 10. How often, how much, on which side, and whether
//! the setting was turned down for it. No cut-point is laid over it.

use super::section::{row, section};
use super::sessions::SessionFields;
use crate::quantity::say_decimal;
use crate::record::{whole_number, MarkKind};
use crate::screen::shapes::{Part, PlotPicture, PlotPoint, SheetSection, Tick};
use crate::screen::View;
use crate::time::{Instant, LocalDay, Moment};

/// Pain that was said once.
struct PainScore {
    at: Instant,
    part: Option<Part>,
    score: Option<u32>,
}

const TYPED: [(&str, Part); 4] = [
    ("pain_left_letdown", Part::Left),
    ("pain_left_expression", Part::Left),
    ("pain_right_letdown", Part::Right),
    ("pain_right_expression", Part::Right),
];

pub(super) fn render(view: &View<'_>, sessions: &[SessionFields]) -> Option<SheetSection> {
    let words = view.words();
    let mut all = Vec::new();
    let (mut hurting, mut asked, mut turned_down) = (0_i64, 0_i64, 0_i64);
    for told in sessions {
        let said = of(told);
        asked += i64::from(!said.is_empty());
        hurting += i64::from(said.iter().any(|s| s.score != Some(0)));
        turned_down += i64::from(turned(told));
        all.extend(said);
    }
    if all.is_empty() {
        return None;
    }
    let day = |at: Instant| LocalDay::of(&Moment::new(at, view.zone), view.settings.day_start);
    let of = |some: i64| words.with("sheet-of", &[("some", some.into()), ("all", (sessions.len() as i64).into())]);
    let mut rows = vec![row(words.say("sheet-pain-sessions"), of(hurting), "")];
    let mut scores: Vec<(u32, Instant)> = all.iter().filter_map(|s| Some((s.score?, s.at))).collect();
    scores.sort_unstable();
    if let (Some((most, at)), Some((middle, _))) = (scores.last(), scores.get(scores.len() / 2)) {
        let score = |score: u32| words.with("sheet-score", &[("score", score.into())]);
        rows.push(row(words.say("sheet-pain-most"), score(*most), words.date(day(*at))));
        let count = words.with("sheet-pain-scores", &[("count", (scores.len() as i64).into())]);
        rows.push(row(words.say("sheet-pain-middle"), score(*middle), count));
    }
    if turned_down > 0 {
        rows.push(row(words.say("sheet-turned-down"), of(turned_down), ""));
    }
    let unsaid = all.iter().filter(|s| s.score.is_none()).count() as i64;
    if unsaid > 0 {
        rows.push(row(words.say("sheet-pain-unsaid"), unsaid.to_string(), ""));
    }
    let lines = vec![words.with("sheet-pain-rest", &[("count", (sessions.len() as i64 - asked).into())])];
    Some(SheetSection { rows, lines, plot: picture(view, sessions, &all), ..section(view, "pain") })
}

/// What was said of a session: while it ran, and afterwards.
fn of(told: &SessionFields) -> Vec<PainScore> {
    let marked = told.session.marks.iter().filter_map(|(_, mark)| {
        let MarkKind::Pain { score } = mark.kind else { return None };
        let part = match mark.side.as_deref() {
            Some("left") => Some(Part::Left),
            Some("right") => Some(Part::Right),
            _ => None,
        };
        Some(PainScore { at: mark.at.instant(), part, score: score.map(|s| s.get()) })
    });
    let at = told.session.started.as_ref().map(Moment::instant);
    let typed = TYPED.iter().filter_map(|(key, part)| {
        Some(PainScore { at: at?, part: Some(*part), score: Some(whole_number(&told.fields, key)?) })
    });
    marked.chain(typed).collect()
}

fn turned(told: &SessionFields) -> bool {
    let marked = |kind: &MarkKind| matches!(kind, MarkKind::Setting { for_discomfort: true, .. });
    told.session.last_mark(marked).is_some() || whole_number(&told.fields, "turned_down").is_some_and(|times| times > 0)
}

fn picture(view: &View<'_>, sessions: &[SessionFields], all: &[PainScore]) -> Option<PlotPicture> {
    let words = view.words();
    let starts = || sessions.iter().filter_map(|told| told.session.started.as_ref()).map(Moment::instant);
    let (first, last) = (starts().min()?, starts().max()?);
    let whole = last.since(first).in_milliseconds().max(1) as f32;
    let along = |at: Instant| (at.since(first).in_milliseconds() as f32 / whole).clamp(0.0, 1.0);
    let points: Vec<PlotPoint> = all
        .iter()
        .filter_map(|said| {
            let height = said.score? as f32 / 10.0;
            let (low, middle, high) = (height, height, height);
            Some(PlotPoint { at: along(said.at), low, middle, high, part: said.part, open: false })
        })
        .collect();
    let heights = |wanted: fn(f32, f32) -> f32| points.iter().map(|p| p.middle).reduce(wanted).unwrap_or(0.0);
    let score = |height: f32| say_decimal(f64::from(height) * 10.0, 0);
    let day = |at: Instant| words.short_date(LocalDay::of(&Moment::new(at, view.zone), view.settings.day_start));
    if points.is_empty() {
        return None;
    }
    let spoken = words.with(
        "sheet-pain-spoken",
        &[
            ("count", (points.len() as i64).into()),
            ("low", score(heights(f32::min)).into()),
            ("high", score(heights(f32::max)).into()),
        ],
    );
    Some(PlotPicture {
        bands: Vec::new(),
        stretches: Vec::new(),
        columns: Vec::new(),
        courses: Vec::new(),
        marks: Vec::new(),
        ticks: vec![Tick { at: 0.0, label: day(first) }, Tick { at: 1.0, label: day(last) }],
        scale: [0.5_f32, 1.0].map(|at| Tick { at, label: score(at) }).to_vec(),
        legend: words.say("sheet-pain-legend"),
        spoken,
        points,
    })
}
