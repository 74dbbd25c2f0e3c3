//! A pump: what it pulls, how sure that is, and what would settle it.

use super::{dial, levels, wear};
use crate::answer::pump::age::{age, AgainstLife, Age};
use crate::answer::pump::{applied, doubts, sides, Grade, Limits, NoPull, Settles, Verdict, Whose};
use crate::gather::kit::{together, Looked, PumpLook, SideLook};
use crate::quantity::{say_decimal, AirPressureUnit, Quantity, Vacuum};
use crate::record::check::LEEWAY;
use crate::record::gauge::{Connected, Power};
use crate::record::{text, Kind, Sides};
use crate::screen::shapes::{
    Action, Event, FindingsScreen, ListRow, Notice, Place, Screen, Section, Sign, Tone, Weight,
};
use crate::screen::View;
use crate::time::{Instant, LocalDay, Span};
use crate::trouble::Trouble;

pub(in crate::screen) fn show(view: &View<'_>, id: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let look = PumpLook::over(view, id)?;
    let name = view.name_of(Kind::Pump, &look.fields);
    let subtitle = text(&look.fields, "grade").map(|g| words.say(&format!("choice-grade-{g}"))).unwrap_or_default();
    let mut frame = view.frame(&Place::Pump { id: id.to_owned() }, name, subtitle)?;
    frame.back = Some(view.back());
    let said = match look.latest() {
        Some(latest) => said(view, &look, latest)?,
        None => not_checked(view),
    };
    let findings = FindingsScreen {
        actions: actions(view, &look),
        sections: sections(view, &look)?,
        asks: look.latest().map(|latest| asks(view, &look, latest)).unwrap_or_default(),
        ..said
    };
    Ok(Screen::Findings { frame, findings })
}

/// What the latest check of a pump said; none where it was not checked.
pub(in crate::screen) fn checked(view: &View<'_>, id: &str) -> Result<Option<FindingsScreen>, Trouble> {
    let look = PumpLook::over(view, id)?;
    look.latest().map(|latest| said(view, &look, latest)).transpose()
}

/// The rules that a pump's range rests on; none where it is the maker's own.
pub(in crate::screen) fn limits_rules(view: &View<'_>, id: &str) -> Result<&'static [&'static str], Trouble> {
    Ok(match PumpLook::over_latest(view, id, 0)?.limits.whose {
        Whose::Maker => &[],
        Whose::Grade(Grade::Hospital) => &["hospital_low", "hospital_high"],
        Whose::Grade(_) => &["personal_low", "personal_high"],
        Whose::Any => &["good_low", "good_high"],
    })
}

fn not_checked(view: &View<'_>) -> FindingsScreen {
    let words = view.words();
    let (headline, caption) = (words.say("pump-not-checked"), words.say("pump-not-checked-caption"));
    FindingsScreen {
        spoken: words.with("row-spoken", &[("title", headline.clone().into()), ("detail", caption.clone().into())]),
        headline,
        figure: String::new(),
        caption,
        dial: None,
        lines: vec![words.say("pump-defers")],
        asks: Vec::new(),
        actions: Vec::new(),
        sections: Vec::new(),
    }
}

fn actions(view: &View<'_>, look: &PumpLook) -> Vec<Action> {
    let words = view.words();
    vec![
        Action::new("check", words.say("pump-check"), Event::BeginCheck { pump: look.id.clone() })
            .sign(Sign::Kit)
            .weight(Weight::Main),
        Action::new("trace", words.say("pump-trace"), Event::BeginTrace { pump: look.id.clone() }).sign(Sign::In),
        Action::new("details", words.say("pump-details"), Event::Go { place: Place::Entry { id: look.id.clone() } })
            .weight(Weight::Quiet),
    ]
}

/// Checks that a line about a pump looks at: the latest may hold no highest level.
const IN_SHORT: u32 = 4;

/// One line about a pump, for the list.
pub(super) fn in_short(view: &View<'_>, id: &str) -> Result<String, Trouble> {
    let words = view.words();
    let look = PumpLook::over_latest(view, id, IN_SHORT)?;
    let Some(latest) = look.latest() else { return Ok(words.say("pump-not-checked")) };
    let sides = look.sides(latest);
    let headline = headline(view, &look, &sides, &look.doubts(latest));
    Ok(match day_of(view, latest) {
        Some(day) => words.with("pump-in-short", &[("date", words.short_date(day).into()), ("said", headline.into())]),
        None => headline,
    })
}

fn day_of(view: &View<'_>, looked: &Looked) -> Option<LocalDay> {
    looked.check.at.as_ref().map(|at| LocalDay::of(at, view.settings.day_start))
}

/// A side by its word.
pub(super) fn side_said(view: &View<'_>, side: Sides) -> String {
    view.words().say(match side {
        Sides::Left => "side-left",
        Sides::Right => "side-right",
        Sides::Both => "side-one-port",
    })
}

/// A range in words; either end may be open.
fn range_said(view: &View<'_>, low: Option<Vacuum>, high: Option<Vacuum>) -> String {
    let words = view.words();
    match (low, high) {
        (Some(low), Some(high)) => words.vacuums_between(low, high),
        (Some(low), None) => words.with("limit-from", &[("low", words.vacuum(low).into())]),
        (None, Some(high)) => words.with("limit-to", &[("high", words.vacuum(high).into())]),
        (None, None) => String::new(),
    }
}

/// A range in words, with whose it is.
pub(super) fn limits_said(view: &View<'_>, limits: &Limits) -> String {
    let words = view.words();
    let range = range_said(view, limits.low, limits.high.or(limits.usually_to));
    if range.is_empty() {
        return range;
    }
    words.with(
        match limits.whose {
            Whose::Maker => "limits-maker",
            Whose::Grade(Grade::Hospital) => "limits-hospital",
            Whose::Grade(_) => "limits-personal",
            Whose::Any => "limits-any",
        },
        &[("range", range.into())],
    )
}

fn headline(view: &View<'_>, look: &PumpLook, sides: &[SideLook], doubts: &[doubts::Doubt]) -> String {
    let words = view.words();
    if !doubts.is_empty() {
        return words.say("verdict-asks");
    }
    let whose = match look.limits.whose {
        Whose::Maker => "maker",
        Whose::Grade(_) => "grade",
        Whose::Any => "any",
    };
    match together(sides) {
        Verdict::Meets => words.say(&format!("verdict-meets-{whose}")),
        Verdict::Below => words.say(&format!("verdict-below-{whose}")),
        Verdict::Above => words.say(&format!("verdict-above-{whose}")),
        Verdict::CannotTell => match sides.iter().find_map(|side| side.pull.as_ref().err()) {
            Some(NoPull::GaugeUnknown) => words.say("verdict-gauge-unknown"),
            Some(NoPull::AtEndOfSpan) => words.say("verdict-end-of-span"),
            Some(NoPull::Needs(more)) => words.with("verdict-needs", &[("more", more.get().into())]),
            _ => words.say("verdict-cannot-tell"),
        },
    }
}

fn said(view: &View<'_>, look: &PumpLook, latest: &Looked) -> Result<FindingsScreen, Trouble> {
    let words = view.words();
    let sides = look.sides(latest);
    let doubts = look.doubts(latest);
    let headline = headline(view, look, &sides, &doubts);
    let figures: Vec<String> = sides
        .iter()
        .filter_map(|side| side.pull.as_ref().ok().map(|pull| words.vacuum_figure(pull.estimate.value)))
        .collect();
    let figure = match figures.is_empty() {
        true => String::new(),
        false => words.with_unit(figures.join(" \u{b7} "), view.settings.vacuum),
    };
    let caption = caption(view, latest, &sides);
    let dial = (!figures.is_empty())
        .then(|| dial::of_sides(view, &sides, &look.limits, latest.gauge.and_then(|gauge| gauge.span)));
    let mut lines = Vec::new();
    if doubts.is_empty() {
        lines.extend(sides.iter().filter_map(|side| chance_line(view, look, side)));
        lines.extend(settles_line(view, &sides));
        lines.extend(beside_lines(view, look, latest, &sides));
    }
    lines.extend(set_up_lines(view, look, latest, &sides)?);
    lines.push(words.say("pump-defers"));
    Ok(FindingsScreen {
        spoken: [headline.as_str(), caption.as_str()].join(". "),
        headline,
        figure,
        caption,
        dial,
        lines,
        asks: Vec::new(),
        actions: Vec::new(),
        sections: Vec::new(),
    })
}

/// Each side with its range, when and with what it was read.
fn caption(view: &View<'_>, latest: &Looked, sides: &[SideLook]) -> String {
    let words = view.words();
    let mut parts: Vec<String> = sides
        .iter()
        .filter_map(|side| {
            let pull = side.pull.as_ref().ok()?;
            Some(words.with(
                "side-range",
                &[
                    ("side", side_said(view, side.side).into()),
                    ("range", words.vacuum_range(pull.estimate.low, pull.estimate.high).into()),
                ],
            ))
        })
        .collect();
    if let Some(day) = day_of(view, latest) {
        parts.push(words.with("checked-on", &[("date", words.plain_date(day.date()).into())]));
    }
    parts.join(" \u{b7} ")
}

fn chance_line(view: &View<'_>, look: &PumpLook, side: &SideLook) -> Option<String> {
    let words = view.words();
    let judged = side.judged?;
    let (key, chance) = match judged.verdict {
        Verdict::Below => ("chance-below", judged.below),
        Verdict::Above => ("chance-above", judged.above),
        Verdict::Meets | Verdict::CannotTell => ("chance-meets", judged.meets),
    };
    Some(words.with(
        key,
        &[
            ("side", side_said(view, side.side).into()),
            ("chance", words.chance(chance).into()),
            ("range", range_said(view, look.limits.low, look.limits.high).into()),
        ],
    ))
}

/// What would settle a verdict that can't be given: the most that any side needs.
fn settles_line(view: &View<'_>, sides: &[SideLook]) -> Option<String> {
    let words = view.words();
    let all: Vec<Settles> = sides.iter().filter_map(|side| side.judged.map(|judged| judged.settles)).collect();
    let needed = all.iter().filter_map(|s| if let Settles::MoreReadings(more) = s { Some(more.get()) } else { None });
    let classes = all.iter().filter_map(|s| if let Settles::BetterGauge(class) = s { Some(*class) } else { None });
    if all.contains(&Settles::Neither) {
        return Some(words.say("settles-neither"));
    }
    if let Some(class) = classes.reduce(f64::min) {
        return Some(words.with("settles-gauge", &[("class", say_decimal(class, 2).into())]));
    }
    needed.max().map(|more| words.with("settles-readings", &[("more", more.into())]))
}

/// What else the readings say.
fn beside_lines(view: &View<'_>, look: &PumpLook, latest: &Looked, sides: &[SideLook]) -> Vec<String> {
    let words = view.words();
    let mut lines = Vec::new();
    let pull = |wanted: Sides| sides.iter().find(|s| s.side == wanted).and_then(|s| s.pull.as_ref().ok());
    if let Some(apart) = pull(Sides::Left).zip(pull(Sides::Right)).and_then(|(left, right)| sides::apart(left, right)) {
        let by = Vacuum::from_canonical(apart.by.value.canonical().abs());
        let (low, high) = (apart.by.low.canonical().abs(), apart.by.high.canonical().abs());
        let range = words.vacuum_range(Vacuum::from_canonical(low.min(high)), Vacuum::from_canonical(low.max(high)));
        lines.push(match apart.apart {
            false => words.say("sides-alike"),
            true => words.with(
                if apart.by.value.canonical() > 0.0 { "sides-left-more" } else { "sides-right-more" },
                &[("by", words.vacuum(by).into()), ("range", range.into())],
            ),
        });
    }
    // Below what its grade reaches is not yet below what is held good.
    let (good_low, good_high) = look.rules.good;
    let below = sides.iter().any(|s| s.judged.is_some_and(|j| j.verdict == Verdict::Below));
    if below && look.limits.low.is_some_and(|low| low > good_low) {
        let within = sides.iter().filter_map(|s| s.pull.as_ref().ok()).all(|p| p.estimate.low >= good_low);
        if within {
            lines.push(words.with("still-good", &[("range", words.vacuums_between(good_low, good_high).into())]));
        }
    }
    let highest = latest.check.readings.iter().map(|(_, reading)| reading.vacuum.quantity());
    let highest = highest.max_by(|a, b| a.canonical().total_cmp(&b.canonical()));
    if highest.is_some_and(|read| applied::beyond_hand_exemption(look.grade, read, &look.rules)) {
        lines.push(words.with("hand-exemption", &[("limit", words.vacuum(look.rules.hand_exemption).into())]));
    }
    for (_, reading) in &latest.check.readings {
        if let Some(found) = applied::not_delivered(reading, &look.rules) {
            lines.push(words.with(
                "not-delivered",
                &[
                    ("set", words.vacuum(found.set).into()),
                    ("read", words.vacuum(found.read).into()),
                    ("limit", words.vacuum(look.rules.set_apart).into()),
                ],
            ));
        }
    }
    if let Some(height) = highest.and_then(|read| applied::height(&latest.check, read)) {
        lines.push(words.with(
            "height",
            &[
                ("air", say_decimal(height.air.in_unit(AirPressureUnit::Hectopascal), 0).into()),
                ("share", height.share.per_cent().into()),
                ("read", words.vacuum(highest.unwrap_or(height.at_sea_level)).into()),
                ("level", words.vacuum(height.at_sea_level).into()),
            ],
        ));
    }
    lines
}

/// The gauge, how it was connected, with which parts, and what that means.
fn set_up_lines(view: &View<'_>, look: &PumpLook, latest: &Looked, sides: &[SideLook]) -> Result<Vec<String>, Trouble> {
    let words = view.words();
    let mut lines = Vec::new();
    match sides.iter().find_map(|side| side.pull.as_ref().ok()) {
        Some(pull) => lines.push(words.with(
            "gauge-wrong-by",
            &[
                ("error", words.high().vacuum(pull.error.greatest).into()),
                ("spread", words.vacuum(pull.repeat.spread).into()),
                ("count", latest.check.readings.len().to_string().into()),
            ],
        )),
        None if latest.gauge.is_none() => lines.push(words.say("gauge-not-named")),
        None => {}
    }
    lines.push(words.say(match latest.check.set_up.connected {
        Some(Connected::DeadHeaded) => "connected-dead-headed",
        Some(Connected::WithFlange) => "connected-with-flange",
        None => "connected-unsaid",
    }));
    if latest.check.set_up.power == Some(Power::Battery) {
        lines.push(words.say("ran-on-battery"));
    }
    if let Some(at) = latest.check.at.as_ref().map(|at| at.instant()) {
        let then = |part: &&PartInUse| {
            part.since.is_some_and(|(_, since)| since <= at) && part.until.is_none_or(|(_, until)| until >= at)
        };
        let parts = parts_of(view, &look.id)?;
        let names: Vec<&str> = parts.iter().filter(then).map(|part| part.name.as_str()).collect();
        if !names.is_empty() {
            lines.push(words.with("parts-then", &[("names", names.join(", ").into())]));
        }
    }
    Ok(lines)
}

/// Gentle questions before the readings are believed.
pub(super) fn asks(view: &View<'_>, look: &PumpLook, latest: &Looked) -> Vec<Notice> {
    let words = view.words();
    let check = &latest.check.id;
    let right = Action::new(
        "readings-right",
        words.say("readings-are-right"),
        Event::ReadingsAreRight { check: check.clone() },
    );
    look.doubts(latest)
        .iter()
        .map(|doubt| match doubt {
            doubts::Doubt::PerhapsKilopascal { read, meant } => {
                let text = words.with(
                    "asks-kilopascal",
                    &[("read", words.vacuum(*read).into()), ("meant", words.vacuum(*meant).into())],
                );
                let meant = Event::MeantIn { id: check.clone(), unit: "kPa".to_owned() };
                notice(
                    "kilopascal",
                    text,
                    vec![Action::new("meant-kilopascal", words.say("meant-kilopascal"), meant), right.clone()],
                )
            }
            doubts::Doubt::FarApart { low, high, .. } => {
                let text = words.with("asks-far-apart", &[("range", words.vacuums_between(*low, *high).into())]);
                let open = Event::Go { place: Place::Check { id: check.clone() } };
                notice("far-apart", text, vec![Action::new("open-check", words.say("asks-look"), open), right.clone()])
            }
        })
        .collect()
}

fn notice(key: &str, text: String, actions: Vec<Action>) -> Notice {
    Notice { key: key.to_owned(), tone: Tone::Asks, spoken: text.clone(), text, actions }
}

fn sections(view: &View<'_>, look: &PumpLook) -> Result<Vec<Section>, Trouble> {
    let mut found = Vec::new();
    found.extend(levels::section(view, look)?);
    found.extend(wear::section(view, look)?);
    found.push(checks(view, look));
    found.extend(traces(view, look)?);
    found.push(parts(view, look)?);
    found.push(years(view, look)?);
    found.retain(|s| !s.lines.is_empty() || !s.rows.is_empty() || !s.actions.is_empty() || s.plot.is_some());
    Ok(found)
}

/// A section of words and rows.
pub(super) fn section(view: &View<'_>, key: &str) -> Section {
    Section {
        key: key.to_owned(),
        title: view.words().say(&format!("section-{key}")),
        lines: Vec::new(),
        plot: None,
        fields: Vec::new(),
        rows: Vec::new(),
        actions: Vec::new(),
    }
}

/// A row that opens a place.
pub(super) fn opens(view: &View<'_>, key: String, title: String, detail: String, place: Place) -> ListRow {
    view.told_row(title, detail).opens(key, Event::Go { place })
}

/// Checks that are listed, the latest first.
const LISTED: usize = 24;

fn checks(view: &View<'_>, look: &PumpLook) -> Section {
    let words = view.words();
    let rows = look
        .checks
        .iter()
        .rev()
        .take(LISTED)
        .map(|looked| {
            let title = day_of(view, looked).map(|day| words.plain_date(day.date())).unwrap_or_default();
            let mut parts: Vec<String> = looked
                .pulls
                .iter()
                .filter_map(|(side, pull)| {
                    let pull = pull.as_ref().ok()?;
                    Some(words.with(
                        "side-value",
                        &[("side", side_said(view, *side).into()), ("value", words.vacuum(pull.estimate.value).into())],
                    ))
                })
                .collect();
            parts.push(words.with("readings-count", &[("count", looked.check.readings.len().to_string().into())]));
            let place = Place::Check { id: looked.check.id.clone() };
            opens(view, format!("open-{}", looked.check.id), title, parts.join(" \u{b7} "), place)
        })
        .collect();
    Section { rows, ..section(view, "checks") }
}

fn traces(view: &View<'_>, look: &PumpLook) -> Result<Option<Section>, Trouble> {
    let words = view.words();
    let mut rows = Vec::new();
    for row in view.journal.naming(Kind::Trace, "pump", &look.id, view.now.plus(LEEWAY), LISTED as u32)? {
        let (_, fields) = view.record(&row.subject)?;
        let at = crate::record::moment(&fields, "at");
        let title = at.map(|at| words.plain_date(LocalDay::of(&at, view.settings.day_start).date()));
        let side = text(&fields, "side").map(|side| words.say(&format!("choice-side-{side}"))).unwrap_or_default();
        let place = Place::Trace { id: row.subject.clone() };
        rows.push(opens(view, format!("open-{}", row.subject), title.unwrap_or_default(), side, place));
    }
    Ok((!rows.is_empty()).then(|| Section { rows, ..section(view, "traces") }))
}

fn date_at_noon(view: &View<'_>, date: &str) -> Option<(chrono::NaiveDate, Instant)> {
    let date = chrono::NaiveDate::parse_from_str(date, "%Y-%m-%d").ok()?;
    let begins = LocalDay::on(date).begins(view.zone, view.settings.day_start);
    Some((date, begins.plus(Span::hours(12))))
}

/// Parts of a pump that came into use on a day that was said: record, name, day, until.
pub(super) struct PartInUse {
    pub id: String,
    pub name: String,
    pub kind: Option<String>,
    pub since: Option<(chrono::NaiveDate, Instant)>,
    pub until: Option<(chrono::NaiveDate, Instant)>,
}

/// The parts of a pump.
pub(super) fn parts_of(view: &View<'_>, pump: &str) -> Result<Vec<PartInUse>, Trouble> {
    let words = view.words();
    let mut found = Vec::new();
    for row in view.journal.of_kind(Kind::Part)? {
        let (_, fields) = view.record(&row.subject)?;
        if text(&fields, "pump") != Some(pump) {
            continue;
        }
        let name = view.name_of(Kind::Part, &fields);
        let side = text(&fields, "side").filter(|side| *side != "both");
        let name = match side {
            Some(side) => words.with(
                "mark-on-side",
                &[("what", name.into()), ("side", words.say(&format!("choice-side-{side}")).into())],
            ),
            None => name,
        };
        let date = |key: &str| text(&fields, key).and_then(|date| date_at_noon(view, date));
        found.push(PartInUse {
            id: row.subject.clone(),
            name,
            kind: text(&fields, "part").map(str::to_owned),
            since: date("in_use_since"),
            until: date("until"),
        });
    }
    Ok(found)
}

fn parts(view: &View<'_>, look: &PumpLook) -> Result<Section, Trouble> {
    let words = view.words();
    let mut rows = Vec::new();
    for part in parts_of(view, &look.id)? {
        let mut detail = Vec::new();
        if let Some((date, since)) = part.since {
            detail.push(words.with("since-date", &[("date", words.plain_date(date).into())]));
            let until = part.until.map_or(view.now, |(_, until)| until);
            detail.extend(ran_said(view, &look.id, since, until)?);
        }
        if let Some((date, _)) = part.until {
            detail.push(words.with("until-date", &[("date", words.plain_date(date).into())]));
        }
        let place = Place::Entry { id: part.id.clone() };
        rows.push(opens(view, format!("open-{}", part.id), part.name, detail.join(" \u{b7} "), place));
    }
    let add = Event::Add { kind: Kind::Part.name().to_owned(), days_back: 0 };
    let actions = vec![Action::new("add-part", words.say("add-part"), add).sign(Sign::Add)];
    Ok(Section { rows, actions, ..section(view, "parts") })
}

/// How long a pump ran, in words; nothing where it did not.
fn ran_said(view: &View<'_>, pump: &str, from: Instant, until: Instant) -> Result<Option<String>, Trouble> {
    let words = view.words();
    let ran = view.journal.ran(pump, from, until)?;
    if ran.sessions.get() == 0 {
        return Ok(None);
    }
    let hours = say_decimal(ran.span.in_minutes() as f64 / 60.0, 0);
    let key = if ran.of_unknown_length.get() > 0 { "ran-at-least" } else { "ran" };
    Ok(Some(words.with(key, &[("hours", hours.into()), ("sessions", ran.sessions.get().into())])))
}

/// Its years, hours and warranty.
fn years(view: &View<'_>, look: &PumpLook) -> Result<Section, Trouble> {
    let words = view.words();
    let mut lines = Vec::new();
    let today = view.today().date();
    if let Some((since, at)) = text(&look.fields, "in_use_since").and_then(|date| date_at_noon(view, date)) {
        let Age { span, against_life } = age(since, today, look.grade, &look.rules);
        let months = (span.in_minutes() as f64 / 60.0 / crate::guidance::MONTH_HOURS).floor() as i64;
        lines.push(
            words.with("pump-age", &[("date", words.plain_date(since).into()), ("months", months.max(0).into())]),
        );
        let (from, to) = look.rules.motor_life;
        let in_months = |span: Span| (span.in_minutes() as f64 / 60.0 / crate::guidance::MONTH_HOURS).round() as i64;
        if let Some(against) = against_life {
            let key = match against {
                AgainstLife::Before => "life-before",
                AgainstLife::Within => "life-within",
                AgainstLife::Beyond => "life-beyond",
            };
            lines.push(words.with(key, &[("from", in_months(from).into()), ("to", in_months(to).into())]));
        }
        lines.extend(ran_said(view, &look.id, at.minus(Span::hours(24)), view.now)?);
    }
    if let Some((until, _)) = text(&look.fields, "warranty_until").and_then(|date| date_at_noon(view, date)) {
        let key = if until >= today { "warranty-until" } else { "warranty-was-until" };
        lines.push(words.with(key, &[("date", words.plain_date(until).into())]));
    }
    Ok(Section { lines, ..section(view, "years") })
}

/// Names of parts, joined.
pub(super) fn names(parts: &[PartInUse], ids: &[String]) -> String {
    let names: Vec<&str> =
        ids.iter().filter_map(|id| parts.iter().find(|p| p.id == *id)).map(|p| p.name.as_str()).collect();
    names.join(", ")
}
