//! One record, opened: its picture, its fields, and the way out of it.

use super::shapes::{
    Action, Event, FieldGroup, FieldKind, FieldRow, FormScreen, Notice, Place, Screen, Sign, Tone, Weight,
};
use super::{day, field_row, kit, plan, readings, sign, strip, View};
use crate::answer::pump::levels::LevelPull;
use crate::gather::levels::level_in_vacuum;
use crate::quantity::Level;
use crate::record::kinds::DESK_RULES;
use crate::record::mark::MarkKind;
use crate::record::{flag, moment, text, whole_number, Fields, Kind, Session, MARKS};
use crate::time::LocalDay;
use crate::trouble::Trouble;

pub(super) fn show(view: &View<'_>, id: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let (kind, fields) = view.record(id)?;
    let title = if let Some(only) = kind.only() { words.say(only) } else { view.name_of(kind, &fields) };
    let when = kind.time_field().and_then(|key| moment(&fields, key));
    let subtitle = match &when {
        Some(at) => words.with(
            "entry-when",
            &[("date", words.date(LocalDay::of(at, view.settings.day_start)).into()), ("time", words.clock(at).into())],
        ),
        None if kind == Kind::PlanPart => plan::part_is_for(view, &fields)?,
        None => String::new(),
    };
    let mut frame = view.frame(&Place::Entry { id: id.to_owned() }, title, subtitle)?;
    let home = match kind {
        Kind::Pump
        | Kind::Part
        | Kind::Flange
        | Kind::Gauge
        | Kind::Check
        | Kind::Trace
        | Kind::Fit
        | Kind::Search
        | Kind::Trial => "kit",
        Kind::Child
        | Kind::Settings
        | Kind::Rules
        | Kind::Visit
        | Kind::Question
        | Kind::Consultant
        | Kind::Consent => "visit",
        Kind::Rhythm | Kind::FixedPoint | Kind::PlanChange => "tonight",
        Kind::Container | Kind::MilkEvent | Kind::Keeping | Kind::Cleaning => "supply",
        _ => "now",
    };
    for place in &mut frame.places {
        place.chosen = place.key == format!("place-{home}");
    }
    frame.back = Some(view.back());
    let session = (kind == Kind::Session).then(|| Session::read(id, &fields));
    let mut groups = groups(view, id, kind, &fields, session.as_ref())?;
    let mut actions = Vec::new();
    if kind == Kind::PlanPart && text(&fields, "plan_part") == Some("rule") {
        if let Some(group) = groups.iter_mut().find(|group| group.key == "plan-rule") {
            actions.push(plan::rule_of_part(view, id, &fields, &mut group.rows));
        }
    }
    if kind == Kind::Trial {
        actions.extend(kit::begin_trial(view, id, &fields));
    }
    let taken_out = flag(&fields, "taken_out");
    Ok(Screen::Form {
        frame,
        form: FormScreen {
            id: id.to_owned(),
            strip: session.as_ref().filter(|s| !s.marks.is_empty()).map(|s| strip::draw(view, s, view.now)),
            notices: notices(view, id, kind, taken_out)?,
            groups,
            actions: actions.into_iter().chain(way_out(view, id, kind, taken_out)).collect(),
        },
    })
}

fn way_out(view: &View<'_>, id: &str, kind: Kind, taken_out: bool) -> Vec<Action> {
    let words = view.words();
    match (kind, taken_out) {
        (kind, _) if kind.only().is_some() => Vec::new(),
        (_, true) => {
            vec![Action::new("bring-back", words.say("bring-back"), Event::BringBack { id: id.to_owned() })
                .sign(Sign::In)]
        }
        (_, false) => vec![Action::new("take-out", words.say("take-out"), Event::Remove { id: id.to_owned() })
            .detail(words.say("take-out-detail"))
            .sign(Sign::Out)
            .weight(Weight::Careful)],
    }
}

fn notices(view: &View<'_>, id: &str, kind: Kind, taken_out: bool) -> Result<Vec<Notice>, Trouble> {
    let words = view.words();
    let mut notices = Vec::new();
    let mut tell = |key: &str, tone: Tone, text: String, actions: Vec<Action>| {
        notices.push(Notice { key: key.to_owned(), tone, spoken: text.clone(), text, actions });
    };
    if taken_out {
        let key = if view.journal.late_edit(id)?.is_some() { "care-late-edit" } else { "is-taken-out" };
        tell(key, Tone::Quiet, words.say(key), Vec::new());
    }
    if kind == Kind::Session {
        if let Some(row) = view.journal.row(id)? {
            for other in view.journal.overlapping(&row)? {
                if day::shares_side(view, &row, &other) {
                    let open = Event::Go { place: Place::Entry { id: other.subject.clone() } };
                    let actions =
                        vec![Action::new("open-overlap", words.say("open-overlap"), open).weight(Weight::Quiet)];
                    tell("overlap", Tone::Asks, words.say("care-overlap-long"), actions);
                }
            }
        }
    }
    let mut told = std::collections::BTreeSet::new();
    for head in view.journal.other_values(id)? {
        // However many there are of one field, it is said once.
        if !told.insert(head.field.clone()) {
            continue;
        }
        let label = words.say(&format!("field-{}", head.field.replace('_', "-")));
        let text = words.with("care-two-values", &[("field", label.into())]);
        tell("two-values", Tone::Asks, text, Vec::new());
    }
    Ok(notices)
}

fn groups(
    view: &View<'_>,
    id: &str,
    kind: Kind,
    fields: &Fields,
    session: Option<&Session>,
) -> Result<Vec<FieldGroup>, Trouble> {
    let words = view.words();
    let mut groups: Vec<FieldGroup> = Vec::new();
    for spec in kind.fields() {
        if spec.group.is_empty()
            || !fits(spec.key, spec.group, fields, session)
            || (kind == Kind::PlanPart && !of_part(spec.group, fields))
            || (kind == Kind::Rules && (spec.group == DESK_RULES) != view.desk)
        {
            continue;
        }
        let mut rows = field_row::rows(view, id, kind, spec, fields)?;
        if let (Some(session), true) = (session, spec.key.starts_with("level_")) {
            say_levels(view, session, fields, spec.key, &mut rows)?;
        }
        if kind == Kind::PlanPart {
            plan::say_what_stands(view, spec.key, &mut rows);
            for row in rows.iter_mut().filter(|row| row.field == plan::PUMP_NAME) {
                row.options = plan::pumps_of_family(view, id, fields);
            }
        }
        match groups.iter_mut().find(|g| g.key == spec.group) {
            Some(group) => group.rows.extend(rows),
            None => groups.push(FieldGroup {
                key: spec.group.to_owned(),
                title: words.say(&format!("group-{}", spec.group)),
                rows,
            }),
        }
    }
    // What came is what an entry is opened for.
    groups.sort_by_key(|group| !matches!(group.key.as_str(), "amount" | "weighing") || kind != Kind::Session);
    if let Some(session) = session.filter(|s| !s.marks.is_empty()) {
        groups.push(FieldGroup {
            key: "marks".to_owned(),
            title: words.say("group-marks"),
            rows: marks(view, session)?,
        });
    }
    if kind == Kind::Check {
        let rows = readings::rows(view, id, fields);
        groups.push(FieldGroup { key: "readings".to_owned(), title: words.say("check-readings"), rows });
    }
    if kind == Kind::Sign {
        groups = sign::arranged(view, id, fields, groups);
    }
    groups.retain(|g| !g.rows.is_empty());
    Ok(groups)
}

/// Whether a group belongs to what a part of a plan is about.
fn of_part(group: &str, part: &Fields) -> bool {
    match text(part, "plan_part") {
        Some("setting") => matches!(group, "setting" | "plan-words"),
        Some("trial") => matches!(group, "plan-trial" | "plan-words"),
        Some("rhythm") => matches!(group, "rhythm" | "plan-words"),
        Some("aim") => matches!(group, "aims" | "plan-words"),
        Some("check") => matches!(group, "plan-check" | "plan-words"),
        Some("visit") => matches!(group, "plan-visit" | "plan-words"),
        Some("rule") => matches!(group, "plan-rule" | "plan-words"),
        Some(_) => group == "plan-words",
        None => group == "plan-part",
    }
}

/// What a level that was written down pulled, by the check of its time.
fn say_levels(
    view: &View<'_>,
    session: &Session,
    fields: &Fields,
    key: &str,
    rows: &mut [FieldRow],
) -> Result<(), Trouble> {
    let Some(level) = whole_number(fields, key).map(Level::new) else { return Ok(()) };
    let at = session.started.as_ref().map_or(view.now, |m| m.instant());
    let pull = level_in_vacuum(view, session, at)?(level);
    for row in rows {
        row.hint = pull.map(|pull| kit::level_text(view, &pull)).unwrap_or_default();
    }
    Ok(())
}

/// Whether a field has a place in this session's form: what stands in it
/// always does; what makes no sense for the method or the sides does not.
fn fits(key: &str, group: &str, fields: &Fields, session: Option<&Session>) -> bool {
    let Some(session) = session else { return true };
    if fields.contains_key(key) {
        return true;
    }
    let method = session.method.as_deref();
    let sided = if key.contains("left") {
        session.sides.left()
    } else if key.contains("right") {
        session.sides.right()
    } else {
        true
    };
    let pumps = method.is_none_or(|m| m.ends_with("_pump"));
    sided
        && match group {
            "amount" => {
                session.collects() && (key != "amount_together" || (session.sides.left() && session.sides.right()))
            }
            "weighing" => !session.collects(),
            "setting" => method.is_none_or(|m| m == "electric_pump"),
            _ => match key {
                "pump" | "flange_left" | "flange_right" => pumps,
                "hands_on" => session.collects(),
                _ => true,
            },
        }
}

/// Each mark with its time; a mark can be moved and made to say nothing.
fn marks(view: &View<'_>, session: &Session) -> Result<Vec<FieldRow>, Trouble> {
    let words = view.words();
    let from = session.started.as_ref().map(|m| m.instant());
    let pulls = level_in_vacuum(view, session, from.unwrap_or(view.now))?;
    let rows = session
        .marks
        .iter()
        .map(|(field, mark)| {
            let what = match &mark.kind {
                MarkKind::Phase(phase) => words.say(&format!("phase-{}", phase.name())),
                MarkKind::Letdown => words.say("mark-letdown"),
                MarkKind::OtherSide => words.say("mark-other-side"),
                MarkKind::Comfortable => words.say("mark-comfortable"),
                MarkKind::Pain { score: Some(score) } => {
                    words.with("mark-pain-score", &[("score", score.get().into())])
                }
                MarkKind::Pain { score: None } => words.say("mark-pain"),
                MarkKind::SoFar { amount } => {
                    words.with("mark-so-far", &[("amount", words.entered(amount, amount.unit()).into())])
                }
                MarkKind::Setting { .. } => setting(view, &mark.kind, &pulls),
            };
            let what = match &mark.side {
                Some(side) => words.with(
                    "mark-on-side",
                    &[("what", what.into()), ("side", words.say(&format!("choice-sides-{side}")).into())],
                ),
                None => what,
            };
            let into = from.map(|f| words.running(mark.at.instant().since(f))).unwrap_or_default();
            let spoken =
                words.with("field-spoken", &[("field", what.clone().into()), ("value", words.clock(&mark.at).into())]);
            FieldRow {
                id: session.id.clone(),
                field: field.clone(),
                kind: FieldKind::Time,
                value: words.clock(&mark.at),
                unit: String::new(),
                hint: into,
                options: Vec::new(),
                less: Some(step(view, session, field, &what, "less", -1)),
                more: Some(step(view, session, field, &what, "more", 1)),
                clear: Some(
                    Action::new(
                        format!("clear-{}", field.trim_start_matches(MARKS)),
                        words.say("take-mark-out"),
                        Event::Clear { id: session.id.clone(), field: field.clone() },
                    )
                    .spoken(words.with("take-mark-out-spoken", &[("what", what.clone().into())]))
                    .weight(Weight::Quiet),
                ),
                done: None,
                label: what,
                spoken,
            }
        })
        .collect();
    Ok(rows)
}

fn step(view: &View<'_>, session: &Session, field: &str, what: &str, key: &str, steps: i32) -> Action {
    let words = view.words();
    Action::new(
        format!("{key}-{}", field.trim_start_matches(MARKS)),
        words.say(&format!("step-{key}")),
        Event::Step { id: session.id.clone(), field: field.to_owned(), steps },
    )
    .spoken(words.with(&format!("step-{key}-spoken"), &[("field", what.into())]))
    .sign(if steps < 0 { Sign::Softer } else { Sign::Stronger })
}

fn setting(view: &View<'_>, kind: &MarkKind, pulls: &impl Fn(Level) -> Option<LevelPull>) -> String {
    let words = view.words();
    let MarkKind::Setting { level, vacuum, cycles, for_discomfort, carried } = kind else { return String::new() };
    let mut parts = Vec::new();
    if let Some(level) = level {
        parts.push(words.with("setting-level", &[("level", level.get().into())]));
        parts.extend(pulls(*level).map(|pull| kit::level_text(view, &pull)));
    }
    if let Some(vacuum) = vacuum {
        parts.push(words.entered(vacuum, view.settings.vacuum));
    }
    if let Some(cycles) = cycles {
        parts.push(words.entered(cycles, crate::quantity::SpeedUnit::PerMinute));
    }
    if *for_discomfort {
        parts.push(words.say("turned-down-short"));
    }
    let said = parts.join(", ");
    match carried {
        true => words.with("strip-last-time", &[("value", said.into())]),
        false => said,
    }
}
