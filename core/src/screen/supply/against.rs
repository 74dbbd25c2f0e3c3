//! Against what it is held, and when an aim would be met.

use super::children::{children, share_percent};
use crate::answer::supply::against::{best_fortnight, coming_to_volume, meets, share_of, ComingToVolume, Meets};
use crate::answer::supply::level::level;
use crate::answer::supply::{Of, Series};
use crate::gather::days;
use crate::gather::supply::SupplyInputs;
use crate::quantity::{Production, Quantity};
use crate::record::SETTINGS;
use crate::screen::shapes::{Action, Event, ListGroup, ListRow, Place, Weight};
use crate::screen::View;
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// A volume by the day of life is told until the child is this old.
const TELLS_VOLUME_UNTIL: i64 = 90;

pub(in crate::screen) fn group(view: &View<'_>, look: &SupplyInputs) -> Result<ListGroup, Trouble> {
    let words = view.words();
    let mut rows = Vec::new();
    let mut add = Vec::new();
    if let Some(now) = look.now() {
        rows.extend(best(view, look, now.value)?);
        match view.settings.aim {
            Some(aim) => rows.push(aim_row(view, look, Production::from_canonical(aim.canonical()))),
            None => add.push(
                Action::new(
                    "set-aim",
                    words.say("supply-set-aim"),
                    Event::Go { place: Place::Entry { id: SETTINGS.to_owned() } },
                )
                .weight(Weight::Quiet),
            ),
        }
        rows.extend(super::intake::row(view, look, now.value)?);
    }
    rows.extend(volumes_by_day(view, look)?);
    let title = if rows.is_empty() { String::new() } else { words.say("supply-against") };
    Ok(ListGroup { key: "against".to_owned(), title, rows, empty: String::new(), add })
}

fn now_share(view: &View<'_>, now: Production, of: Production) -> String {
    view.words().with("supply-now-share", &[("percent", share_percent(share_of(now, of)).into())])
}

/// The parent's own best two weeks, over everything there is.
fn best(view: &View<'_>, look: &SupplyInputs, now: Production) -> Result<Option<ListRow>, Trouble> {
    let words = view.words();
    let (Some(began), Some(last)) = (look.began, look.days.last()) else { return Ok(None) };
    let least = look.rules.complete_day;
    let all = match look.days.first() {
        Some(first) if first.day <= began => Series::from_share(&look.days, Of::Both, least).days,
        _ => days::productions(view, began, last.day, look.calendar, least)?,
    };
    let Some((from, production)) = best_fortnight(&all) else { return Ok(None) };
    let detail = words.with(
        "supply-best-detail",
        &[
            ("production", words.production(production).into()),
            ("date", words.plain_date(from.date()).into()),
            ("now", now_share(view, now, production).into()),
        ],
    );
    Ok(Some(view.text_row(words.say("supply-best"), detail)))
}

fn aim_row(view: &View<'_>, look: &SupplyInputs, aim: Production) -> ListRow {
    let words = view.words();
    let Some(now) = look.now() else {
        return view.text_row(words.say("supply-aim"), words.production(aim));
    };
    let date = |day: LocalDay| words.short_date(day);
    let when = match meets(aim, &now, look.course.as_ref().ok(), view.today()) {
        Meets::Already => words.say("supply-aim-met"),
        Meets::Between(soonest, Some(latest)) => {
            words.with("supply-aim-between", &[("soonest", date(soonest).into()), ("latest", date(latest).into())])
        }
        Meets::Between(soonest, None) => words.with("supply-aim-not-before", &[("soonest", date(soonest).into())]),
        Meets::NotOnThisCourse => words.say("supply-aim-not-on-this-course"),
        Meets::CannotTell => words.say("supply-aim-cannot-tell"),
    };
    let detail = words.with(
        "supply-aim-detail",
        &[
            ("production", words.production(aim).into()),
            ("now", now_share(view, now.value, aim).into()),
            ("when", when.into()),
        ],
    );
    view.text_row(words.say("supply-aim"), detail)
}

/// Published volumes by day for those with a preterm child.
fn volumes_by_day(view: &View<'_>, look: &SupplyInputs) -> Result<Vec<ListRow>, Trouble> {
    let words = view.words();
    let mut rows = Vec::new();
    for child in children(view)?.iter().filter(|c| c.is_preterm(look)) {
        let Some(age) = child.age(view.today()).filter(|age| (0..=TELLS_VOLUME_UNTIL).contains(age)) else { continue };
        let target = i64::from(look.rules.volume_day.get());
        let title = words.with("supply-volume", &[("name", child.name.clone().into()), ("day", target.into())]);
        let on_day = look.began.and_then(|_| {
            let judged = view.today().earlier_by(u32::try_from(age - target).ok()?);
            let from = judged.earlier_by(1);
            let to = LocalDay::from_number(judged.number() + 1)?;
            let days = days::days(view, from, to.min(view.today()), look.calendar).ok()?;
            let day = days.iter().find(|d| d.day == judged).filter(|d| d.observed() >= look.rules.complete_day);
            let around = || level(&Series::of(&days, Of::Both, &look.rules), &look.rules).known().map(|l| l.value);
            day.and_then(|d| d.production()).or_else(around)
        });
        let said = match (age < target, on_day) {
            (true, _) => words.with("supply-volume-too-early", &[("age", age.into())]),
            (false, None) => words.say("supply-volume-unknown"),
            (false, Some(volume)) => {
                let key = match coming_to_volume(age, volume, &look.rules) {
                    ComingToVolume::TooEarly => "supply-volume-too-early",
                    ComingToVolume::Reached => "supply-volume-reached",
                    ComingToVolume::Between => "supply-volume-between",
                    ComingToVolume::Below => "supply-volume-below",
                };
                words.with(
                    key,
                    &[
                        ("volume", words.production(volume).into()),
                        ("reached", words.production(look.rules.volume_reached).into()),
                        ("between", words.production(look.rules.volume_between).into()),
                    ],
                )
            }
        };
        let source =
            words.with("supply-volume-source", &[("reached", words.production(look.rules.volume_reached).into())]);
        rows.push(view.text_row(title, format!("{said} {source}")));
    }
    Ok(rows)
}
