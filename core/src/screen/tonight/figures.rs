//! What the night leaves and brings.

use crate::answer::night::Planned;
use crate::gather::tonight::TonightInputs;
use crate::screen::shapes::NightFigure;
use crate::screen::View;
use crate::time::Instant;

fn figure(view: &View<'_>, key: &str, figure: String, detail: String) -> NightFigure {
    let words = view.words();
    let title = words.say(&format!("night-figure-{key}"));
    let spoken = words.with(
        "night-figure-spoken",
        &[("title", title.clone().into()), ("figure", figure.clone().into()), ("detail", detail.clone().into())],
    );
    NightFigure { key: key.to_owned(), title, figure, detail, spoken }
}

/// The first emptying after the night is the morning's: up to its end.
fn morning(sessions: &[Planned], night_ends: Instant) -> Instant {
    sessions.iter().find(|s| s.at >= night_ends).map_or(night_ends, |s| s.at)
}

pub(super) fn all(view: &View<'_>, look: &TonightInputs) -> Vec<NightFigure> {
    let words = view.words();
    let Some(plan) = &look.plan else { return Vec::new() };
    let night = &plan.night;
    let longest = words.with("night-figure-sleep-detail", &[("longest", words.span(night.longest()).into())]);
    let mut all = vec![figure(view, "sleep", words.span(night.slept()), longest)];
    let by = morning(&plan.sessions, night.window.until);
    // Only what is still to come: what came is in the record.
    let ahead = look.intervals(by);
    if let Some(brings) = look.refill.brings(&ahead, view.zone).filter(|_| !ahead.is_empty()) {
        let range = words.volume_range(brings.low, brings.high);
        let from = ahead.first().map_or(by, |(from, _)| *from);
        let mut detail = words.with(
            "night-figure-milk-detail",
            &[
                ("range", range.into()),
                ("time", super::head::clock(view, by).into()),
                ("from", super::head::clock(view, from).into()),
            ],
        );
        if let Some(since) = look.refill_since {
            let date = [("date", words.short_date(since).into())];
            detail = format!("{detail}. {}", words.with("night-figure-milk-since-drop", &date));
        }
        all.push(figure(view, "milk", words.volume(brings.value), detail));
    }
    let inside = plan.sessions.iter().filter(|s| night.window.holds(s.at)).count();
    let detail = words.say("night-figure-wakings-detail");
    all.push(figure(view, "wakings", inside.to_string(), detail));
    all
}
