//! What is asked before something from outside is kept: whose card it is, what a file would
//! change.

use super::waiting::About;
use crate::screen::section::section;
use std::collections::BTreeSet;

use serde_json::Value;

use super::shapes::{Action, Event, FindingsScreen, Place, Screen, Section, Sign, Weight};
use super::{field_row, View};
use crate::guidance::Rules;
use crate::journal::Difference;
use crate::record::{Fields, Kind};
use crate::share::names;
use crate::share::sealed::card::Card;
use crate::trouble::{Kind as TroubleKind, Trouble};

/// So many single lines of what would change are said; the rest is counted.
const LINES: usize = 40;

pub(super) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let missing = || Trouble::new(TroubleKind::Missing, "trouble-no-such-record");
    let asked = view.asked.ok_or_else(missing)?;
    match &asked.about {
        About::Consultant { card, changes_key } => {
            let lines: &[&str] = match changes_key {
                true => &["asked-card-changed", "consultant-compare"],
                false => &["consultant-compare"],
            };
            card_page(view, card, "asked-card", lines)
        }
        About::Phone { card } => card_page(view, card, "asked-phone", &["asked-phone-compare"]),
        About::Phones => file_page(view, &asked.differences, "asked-phones"),
        About::Plain => file_page(view, &asked.differences, "asked-plain"),
    }
}

fn card_page(view: &View<'_>, card: &Card, title: &str, lines: &[&str]) -> Result<Screen, Trouble> {
    let words = view.words();
    let name = names::shown(&card.name);
    let mut frame =
        view.frame(&Place::Asked, if name.is_empty() { words.say(title) } else { name }, words.say(title))?;
    frame.back = Some(view.back());
    let compared = card.words().join(" ");
    let actions = vec![
        // Not the main one: it is to be said after the words were read, and not by the way.
        Action::new("words-same", words.say("words-same"), Event::TakeWaiting).sign(Sign::In),
        Action::new("leave-asked", words.say("words-differ"), Event::LeaveWaiting)
            .detail(words.say("words-differ-detail"))
            .weight(Weight::Quiet),
    ];
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            spoken: words.with(
                "row-spoken",
                &[("title", words.say("consultant-words").into()), ("detail", compared.clone().into())],
            ),
            headline: words.say("consultant-words"),
            figure: compared,
            caption: String::new(),
            dial: None,
            lines: lines.iter().map(|line| words.say(line)).collect(),
            asks: Vec::new(),
            actions,
            sections: Vec::new(),
        },
    })
}

fn file_page(view: &View<'_>, differences: &[Difference], title: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Asked, words.say("asked-file"), String::new())?;
    frame.back = Some(view.back());
    let headline = words.say(title);
    let counts = counts(view, differences)?;
    let mut settled = settled(view, differences)?;
    let more = settled.len().saturating_sub(LINES);
    settled.truncate(LINES);
    if more > 0 {
        settled.push(words.with("asked-more", &[("count", (more as i64).into())]));
    }
    let mut sections = Vec::new();
    if !settled.is_empty() {
        sections.push(Section { lines: settled, ..section("settled", words.say("asked-settled")) });
    }
    let mut lines = counts;
    lines.push(words.say("asked-undo"));
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            spoken: [&headline].into_iter().chain(&lines).map(String::as_str).collect::<Vec<_>>().join(" "),
            headline,
            figure: String::new(),
            caption: String::new(),
            dial: None,
            lines,
            asks: Vec::new(),
            actions: vec![
                Action::new("take-asked", words.say("asked-take"), Event::TakeWaiting)
                    .weight(Weight::Main)
                    .sign(Sign::In),
                Action::new("leave-asked", words.say("asked-leave"), Event::LeaveWaiting)
                    .detail(words.say("leave-sealed-detail"))
                    .sign(Sign::Skip),
            ],
            sections,
        },
    })
}

/// How many entries are new, are others then, or are taken out.
fn counts(view: &View<'_>, differences: &[Difference]) -> Result<Vec<String>, Trouble> {
    let words = view.words();
    let only = |subject: &str| Kind::of_only(subject).is_some();
    let (mut new, mut other, mut out) = (BTreeSet::new(), BTreeSet::new(), BTreeSet::new());
    for one in differences.iter().filter(|one| !only(&one.subject)) {
        let subject = one.subject.as_str();
        match view.journal.row(subject)? {
            None => new.insert(subject),
            Some(_) if one.field == "taken_out" && one.after == Value::Bool(true) => out.insert(subject),
            Some(_) => other.insert(subject),
        };
    }
    other.retain(|subject| !out.contains(subject));
    let said = [("asked-new", new.len()), ("asked-other", other.len()), ("asked-out", out.len())];
    Ok(said
        .into_iter()
        .filter(|(_, count)| *count > 0)
        .map(|(key, count)| words.with(key, &[("count", (count as i64).into())]))
        .collect())
}

/// What the record goes by, and what nobody should be told by a file alone: rules, the rhythm,
/// settings, whom to call, cautions dealt with.
fn settled(view: &View<'_>, differences: &[Difference]) -> Result<Vec<String>, Trouble> {
    let words = view.words();
    let mut lines = Vec::new();
    let mut dealt = BTreeSet::new();
    for one in differences {
        let subject = one.subject.as_str();
        let kind = match Kind::of_only(subject) {
            Some(kind) => kind,
            None => {
                let is_dealt = one.field == "kind" && one.after == *Kind::CautionDealt.name();
                let was = view.journal.row(subject)?.is_some_and(|row| row.kind == Kind::CautionDealt);
                if is_dealt || was {
                    dealt.insert(subject);
                }
                continue;
            }
        };
        if one.field == "kind" {
            continue;
        }
        let what = words.say(&format!("field-{}", one.field.replace('_', "-")));
        let (before, after) =
            (render(view, kind, &one.field, &one.before)?, render(view, kind, &one.field, &one.after)?);
        lines.push(match (before, after) {
            (Some(before), Some(after)) => {
                words.with("plan-changes", &[("what", what.into()), ("before", before.into()), ("after", after.into())])
            }
            (None, Some(after)) => words.with("plan-sets", &[("what", what.into()), ("after", after.into())]),
            (Some(before), None) => words.with("asked-clears", &[("what", what.into()), ("before", before.into())]),
            (None, None) => continue,
        });
    }
    if !dealt.is_empty() {
        lines.push(words.with("asked-dealt", &[("count", (dealt.len() as i64).into())]));
    }
    Ok(lines)
}

/// A value of one of those, in words.
fn render(view: &View<'_>, kind: Kind, field: &str, value: &Value) -> Result<Option<String>, Trouble> {
    let words = view.words();
    if kind == Kind::Rules {
        let Some(rule) = Rules::named(field) else { return Ok(None) };
        // Where no value is set, the rule stands as shipped.
        return Ok(Some(words.rule_value(rule, value.as_f64().unwrap_or(rule.value))));
    }
    let Some(spec) = kind.field(field).filter(|spec| !spec.group.is_empty() && !value.is_null()) else {
        return Ok(None);
    };
    let fields = Fields::from([(field.to_owned(), value.clone())]);
    let rows = field_row::rows(view, "", kind, spec, &fields)?;
    let said = rows.into_iter().filter(|row| !row.value.is_empty());
    let said: Vec<String> = said.map(|row| view.words().figure_with(row.value, &row.unit)).collect();
    Ok(Some(names::shown(&said.join(", "))).filter(|said| !said.is_empty()))
}
