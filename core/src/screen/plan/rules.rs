//! Which rule a part of a plan sets anew: all that a family's record goes by, each as it is
//! shipped and where it comes from.

use crate::guidance::{Rule, Rules};
use crate::record::{kinds::rule_of_a_family, text, Fields, Kind, RULES};
use crate::screen::shapes::{
    Action, Event, FieldKind, FieldRow, ListGroup, ListRow, ListScreen, Place, Screen, Sign, Weight,
};
use crate::screen::View;
use crate::trouble::{Kind as TroubleKind, Trouble};

pub(in crate::screen) fn show(view: &View<'_>, part: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let (kind, fields) = view.record(part)?;
    if kind != Kind::PlanPart {
        return Err(Trouble::new(TroubleKind::Missing, "trouble-no-such-record"));
    }
    let place = Place::PlanRules { part: part.to_owned() };
    let mut frame = view.frame(&place, words.say("plan-rules-title"), super::part_is_for(view, &fields)?)?;
    frame.back = Some(view.back());
    let mut groups: Vec<ListGroup> = Vec::new();
    for spec in Kind::Rules.fields() {
        let known = rule_of_a_family(spec.key).and_then(|spec| Rules::named(spec.key));
        let Some(rule) = known else { continue };
        let row = row(view, part, rule, text(&fields, "rule") == Some(spec.key));
        match groups.iter_mut().find(|group| group.key == spec.group) {
            Some(group) => group.rows.push(row),
            None => groups.push(ListGroup {
                key: spec.group.to_owned(),
                title: words.say(&format!("group-{}", spec.group)),
                rows: vec![row],
                empty: String::new(),
                add: Vec::new(),
            }),
        }
    }
    Ok(Screen::List { frame, list: ListScreen { intro: words.say("plan-rules-intro"), groups } })
}

fn row(view: &View<'_>, part: &str, rule: &Rule, chosen: bool) -> ListRow {
    let choose = Event::ChooseRule { part: part.to_owned(), rule: rule.key.clone() };
    let row = view.text_row(name(view, rule), as_it_stands(view, rule));
    row.opens(format!("choose-{}", rule.key), choose).chosen(chosen)
}

/// What a rule is shipped with, and before it what the family's record has instead.
fn as_it_stands(view: &View<'_>, rule: &Rule) -> String {
    let words = view.words();
    let shipped = words.as_shipped(rule);
    let rules = view.in_family(|family| family.record(RULES));
    match rules.and_then(|(_, fields)| Rules::read(&fields).set_to(&rule.key)) {
        Some(set) => words
            .with("plan-rules-stands", &[("value", words.rule_value(rule, set).into()), ("shipped", shipped.into())]),
        None => shipped,
    }
}

/// What a rule is called.
fn name(view: &View<'_>, rule: &Rule) -> String {
    view.words().say(&format!("field-{}", rule.key.replace('_', "-")))
}

/// Puts the rule's own name, unit and bounds into the form of a part that sets it anew;
/// gives the way to the choice.
pub(in crate::screen) fn of_part(view: &View<'_>, id: &str, part: &Fields, rows: &mut [FieldRow]) -> Action {
    let words = view.words();
    let rule = text(part, "rule").and_then(Rules::named);
    for row in rows {
        match (row.field.as_str(), rule) {
            ("rule", _) => {
                row.kind = FieldKind::Fact;
                row.clear = None;
                row.value = rule.map(|rule| name(view, rule)).unwrap_or_default();
                row.hint = words.say("plan-rules-none");
            }
            ("rule_value", Some(rule)) => {
                row.unit = words.rule_unit(&rule.unit);
                row.hint = as_it_stands(view, rule);
            }
            _ => continue,
        }
        let said =
            if row.value.is_empty() { row.hint.clone() } else { words.figure_with(row.value.clone(), &row.unit) };
        row.spoken =
            words.with("field-spoken", &[("field", row.label.clone().into()), ("value", said.trim_end().into())]);
    }
    let label = words.say(if rule.is_some() { "plan-rules-another" } else { "plan-rules-choose" });
    Action::new("choose-rule", label, Event::Go { place: Place::PlanRules { part: id.to_owned() } })
        .sign(Sign::None)
        .weight(if rule.is_some() { Weight::Plain } else { Weight::Main })
}
