//! What a part of a plan says, and what it would change now.

use super::setting_compared;
use crate::guidance::Rules;
use crate::quantity::{Entered, Speed, Vacuum, Volume};
use crate::record::plan_part::{OF_RHYTHM, OF_TRIAL};
use crate::record::{date, moment, text, whole_number, Fields, Kind, RHYTHM, RULES, SETTINGS};
use crate::screen::shapes::FieldKind;
use crate::screen::{field_row, View};
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// The field of the volume a day that is aimed for.
const AIM: &str = "aim";
/// Fields of the rhythm that are said as a length of time.
const SPANS: &[&str] = &["longest_interval", "shortest_interval", "sleep_stretch"];

/// What a part is about.
pub(in crate::screen) fn title(view: &View<'_>, part: &Fields) -> String {
    let words = view.words();
    let about = text(part, "plan_part").unwrap_or("words");
    if about == "setting" {
        return words.say(match text(part, "use_or_try") {
            Some("try") => "plan-setting-try",
            Some("at_most") => "plan-setting-at-most",
            _ => "plan-setting-use",
        });
    }
    words.say(&format!("choice-plan-part-{about}"))
}

/// What it says, each a short line; and what it would change.
pub(super) fn lines(view: &View<'_>, part: &Fields) -> Result<Vec<String>, Trouble> {
    let mut lines = match text(part, "plan_part") {
        Some("setting") => setting(view, part)?,
        Some("search") => vec![view.words().say("plan-search-how")],
        Some("trial") => trial(view, part)?,
        Some("rhythm") => each(view, part, OF_RHYTHM)?,
        Some("aim") => each(view, part, &[AIM])?,
        Some("check") => check(view, part),
        Some("visit") => visit(view, part),
        Some("rule") => rule(view, part)?,
        _ => Vec::new(),
    };
    lines.extend(text(part, "words").filter(|words| !words.trim().is_empty()).map(str::to_owned));
    Ok(lines)
}

/// What a part says, on the desk that wrote it, and what it would change in the record of
/// the family; what it would change on the desk is nobody's.
pub(super) fn on_desk(view: &View<'_>, part: &Fields) -> String {
    let mut said = view.in_family(|family| lines(family, part)).unwrap_or_else(|| in_itself(view, part));
    said.retain(|line| !line.is_empty());
    said.join(" \u{b7} ")
}

/// What a part says, where it can't be told what it would change or no longer matters.
pub(in crate::screen) fn in_itself(view: &View<'_>, part: &Fields) -> Vec<String> {
    let mut said = Vec::new();
    for spec in
        Kind::PlanPart.fields().iter().filter(|s| !s.group.is_empty() && !["plan_part", "use_or_try"].contains(&s.key))
    {
        let Ok(rows) = field_row::rows(view, "", Kind::PlanPart, spec, part) else { continue };
        for row in rows.into_iter().filter(|row| !row.value.is_empty()) {
            let value = view.words().figure_with(row.value, &row.unit);
            // A choice says by itself what it is of.
            said.push(match row.kind {
                FieldKind::Choice => value,
                _ => view.words().with("plan-said", &[("what", row.label.into()), ("value", value.into())]),
            });
        }
    }
    said
}

/// What a part said that a later plan changed.
pub(super) fn as_it_was(view: &View<'_>, part: &Fields) -> Result<String, Trouble> {
    Ok(match text(part, "plan_part") {
        // What stands beside a setting is of today.
        Some("setting") => setting(view, part)?.into_iter().next().unwrap_or_default(),
        _ => in_itself(view, part).join(" \u{b7} "),
    })
}

/// Old and new of one thing, or that nothing changes.
fn changes(view: &View<'_>, what: String, before: Option<String>, after: String) -> String {
    let words = view.words();
    match before {
        Some(before) if before == after => words.with("plan-stays", &[("what", what.into()), ("after", after.into())]),
        Some(before) => {
            words.with("plan-changes", &[("what", what.into()), ("before", before.into()), ("after", after.into())])
        }
        None => words.with("plan-sets", &[("what", what.into()), ("after", after.into())]),
    }
}

/// What a comparison would be: each thing that is chosen for it.
fn trial(view: &View<'_>, part: &Fields) -> Result<Vec<String>, Trouble> {
    let mut lines = Vec::new();
    for spec in OF_TRIAL.iter().filter_map(|field| Kind::PlanPart.field(field)) {
        for row in
            field_row::rows(view, "", Kind::PlanPart, spec, part)?.into_iter().filter(|row| !row.value.is_empty())
        {
            let needs = [("what", row.label.into()), ("value", row.value.into())];
            lines.push(view.words().with("plan-said", &needs));
        }
    }
    Ok(lines)
}

fn label(view: &View<'_>, field: &str) -> String {
    view.words().say(&format!("field-{}", field.replace('_', "-")))
}

/// What a field of the rhythm says, or the aim; nothing where it says nothing or is another.
fn text_of(view: &View<'_>, fields: &Fields, field: &str) -> Option<String> {
    if field == AIM {
        let aim = fields.get(field).and_then(Entered::<Volume>::from_json)?;
        return Some(view.words().volume(aim.quantity()));
    }
    let value = whole_number(fields, field).filter(|_| OF_RHYTHM.contains(&field))?;
    Some(match SPANS.contains(&field) {
        true => view.words().span(crate::time::Span::minutes(i64::from(value))),
        false => value.to_string(),
    })
}

/// What stands now where a part would set a field.
pub(in crate::screen) fn stands(view: &View<'_>, field: &str) -> Result<Option<String>, Trouble> {
    let there = view.record(if field == AIM { SETTINGS } else { RHYTHM })?.1;
    Ok(text_of(view, &there, field))
}

fn each(view: &View<'_>, part: &Fields, fields: &[&str]) -> Result<Vec<String>, Trouble> {
    let mut lines = Vec::new();
    for field in fields {
        let Some(after) = text_of(view, part, field) else { continue };
        lines.push(changes(view, label(view, field), stands(view, field)?, after));
    }
    Ok(lines)
}

fn check(view: &View<'_>, part: &Fields) -> Vec<String> {
    let words = view.words();
    let what = text(part, "plan_check").map(|what| words.say(&format!("choice-plan-check-{what}")));
    what.map(|what| match date(part, "check_by") {
        Some(by) => {
            words.with("plan-check-by", &[("what", what.into()), ("date", words.date(LocalDay::on(by)).into())])
        }
        None => what,
    })
    .into_iter()
    .collect()
}

fn visit(view: &View<'_>, part: &Fields) -> Vec<String> {
    let words = view.words();
    let when = moment(part, "visit_at").map(|at| {
        words.with(
            "entry-when",
            &[
                ("date", words.date(LocalDay::of(&at, view.settings.day_start)).into()),
                ("time", words.clock(&at).into()),
            ],
        )
    });
    when.into_iter().collect()
}

fn rule(view: &View<'_>, part: &Fields) -> Result<Vec<String>, Trouble> {
    let words = view.words();
    let Some(rule) = text(part, "rule").and_then(Rules::named) else { return Ok(Vec::new()) };
    let Some(after) = part.get("rule_value").and_then(serde_json::Value::as_f64) else { return Ok(Vec::new()) };
    let before = Rules::read(&view.record(RULES)?.1).set_to(&rule.key).unwrap_or(rule.value);
    let said = |value: f64| words.rule_value(rule, value);
    Ok(vec![changes(view, label(view, &rule.key), Some(said(before)), said(after))])
}

fn setting(view: &View<'_>, part: &Fields) -> Result<Vec<String>, Trouble> {
    let words = view.words();
    let mut said = Vec::new();
    said.extend(text(part, "pump_name").map(str::to_owned));
    said.extend(text(part, "plan_phase").map(|phase| words.say(&format!("choice-plan-phase-{phase}"))));
    said.extend(whole_number(part, "level").map(|level| words.with("plan-level", &[("level", level.into())])));
    let vacuum = part.get("vacuum").and_then(Entered::<Vacuum>::from_json);
    said.extend(vacuum.as_ref().map(|vacuum| words.entered(vacuum, view.settings.vacuum)));
    let cycles = part.get("cycles").and_then(Entered::<Speed>::from_json);
    said.extend(cycles.map(|cycles| words.entered(&cycles, cycles.unit())));
    let lasts = crate::record::span(part, "lasts");
    said.extend(lasts.map(|lasts| words.with("plan-lasts", &[("span", words.span(lasts).into())])));
    let mut lines = vec![said.join(" \u{b7} ")];
    lines.extend(setting_compared::notes(view, part)?);
    Ok(lines)
}
