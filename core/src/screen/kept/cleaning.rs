//! Cleaning of parts, as a list to tick.

use crate::answer::keeping::InForce;
use crate::record::{date, moment, text, Kind};
use crate::screen::section::section;
use crate::screen::shapes::{Action, Event, Section, Sign};
use crate::screen::View;
use crate::time::{LocalDay, Span};
use crate::trouble::Trouble;

/// What was ticked today, what is usual, and whether a child's age asks for it daily.
pub(super) fn of(view: &View<'_>, in_force: &InForce, needs_unit: bool) -> Result<Section, Trouble> {
    let words = view.words();
    let mut lines = vec![words.say("cleaning-each-time"), words.say("cleaning-boil")];
    if is_daily(view, in_force, needs_unit)? {
        lines.push(words.say("cleaning-daily"));
    }
    lines.push(words.say("cleaning-defers"));
    let today = view.today();
    let mut done = Vec::new();
    for row in view.journal.of_day(today)?.into_iter().filter(|row| row.kind == Kind::Cleaning && !row.taken_out) {
        let (_, fields) = view.record(&row.subject)?;
        done.extend(text(&fields, "cleaned").map(str::to_owned).zip(moment(&fields, "at")));
    }
    let action = |how: &str| {
        let latest = done.iter().rev().find(|(what, _)| what == how);
        let detail = match latest {
            Some((_, at)) => words.with("cleaning-done", &[("time", words.clock(at).into())]),
            None => words.say("cleaning-not-yet"),
        };
        let label = words.say(&format!("choice-cleaned-{how}"));
        Action::new(format!("cleaned-{how}"), label, Event::Cleaned { how: how.to_owned() })
            .detail(detail)
            .chosen(latest.is_some())
            .sign(Sign::In)
    };
    Ok(Section {
        lines,
        actions: vec![action("washed"), action("sanitised")],
        ..section("cleaning", words.say("section-cleaning"))
    })
}

/// For a child under the age of the set in force, in hospital, preterm, or with weak defences.
fn is_daily(view: &View<'_>, in_force: &InForce, needs_unit: bool) -> Result<bool, Trouble> {
    if needs_unit {
        return Ok(true);
    }
    let under = in_force.rules().and_then(|rules| rules.sanitise_under);
    for (_, child) in view.journal.fields_of_kind(Kind::Child)? {
        let age = date(&child, "birth").map(|birth| view.today().days_since(LocalDay::on(birth)));
        let young = age.zip(under).is_some_and(|(age, under)| age >= 0 && Span::hours(24 * age) < under);
        if young {
            return Ok(true);
        }
    }
    Ok(false)
}
