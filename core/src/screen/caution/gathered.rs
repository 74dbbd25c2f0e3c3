//! Everything that cautions rest on, read from the record.

use crate::answer::caution::{
    body, comfort, comfort::SessionPain, pull, standing as still_standing, Because, BodySign, Caution, Dealt,
};
use crate::guidance::{CautionRules, Rules};
use crate::record::{moment, text, Kind, RULES};
use crate::screen::{kit, supply, View};
use crate::time::Span;
use crate::trouble::Trouble;

/// Sessions that are looked at for pain, the latest: three days of sixteen.
const SESSIONS: u32 = 48;

/// What stands now, the most urgent first.
pub(crate) fn standing(view: &View<'_>) -> Result<Vec<Caution>, Trouble> {
    let rules = Rules::read(&view.journal.record(RULES)?.map(|(_, fields)| fields).unwrap_or_default());
    let rules = CautionRules::read(&rules);
    let mut found = body::cautions(&signs(view, &rules)?, view.now, &rules);
    found.extend(comfort::cautions(&pains(view, &rules)?, view.now, &rules));
    found.extend(drop(view)?);
    found.extend(pumps(view, &rules)?);
    if found.is_empty() {
        return Ok(found);
    }
    Ok(still_standing(found, &dealt(view)?))
}

fn signs(view: &View<'_>, rules: &CautionRules) -> Result<Vec<BodySign>, Trouble> {
    let mut found = Vec::new();
    for row in view.journal.of_kind_since(Kind::Sign, view.now.minus(rules.signs_hold))? {
        found.extend(BodySign::read(&view.record(&row.subject)?.1));
    }
    Ok(found)
}

fn pains(view: &View<'_>, rules: &CautionRules) -> Result<Vec<SessionPain>, Trouble> {
    let mut found = Vec::new();
    for row in view.journal.sessions_with_pain(view.now.minus(rules.signs_hold), view.now, SESSIONS)? {
        found.extend(SessionPain::read(&row.subject, &view.record(&row.subject)?.1));
    }
    Ok(found)
}

fn drop(view: &View<'_>) -> Result<Option<Caution>, Trouble> {
    Ok(supply::drop(view)?.and_then(|drop| {
        let seen = drop.since.begins(view.zone, view.settings.day_start).plus(Span::milliseconds(0));
        Caution::new("supply-drop", seen, vec![Because::Drop(drop)])
    }))
}

/// Each pump by its latest check, where it is a check of now.
fn pumps(view: &View<'_>, rules: &CautionRules) -> Result<Vec<Caution>, Trouble> {
    let mut found = Vec::new();
    for row in view.journal.of_kind(Kind::Pump)? {
        for (at, limits, read, judged) in kit::latest_pulls(view, &row.subject)? {
            found.extend(pull::caution(&row.subject, at, &read, &judged, &limits, rules));
        }
    }
    // One line a pump: the weaker side.
    found.dedup_by(|second, first| second.of == first.of);
    Ok(found)
}

fn dealt(view: &View<'_>) -> Result<Vec<Dealt>, Trouble> {
    let mut found = Vec::new();
    for row in view.journal.of_kind(Kind::CautionDealt)? {
        let (_, fields) = view.record(&row.subject)?;
        if let (Some(key), Some(seen)) = (text(&fields, "caution"), moment(&fields, "seen")) {
            found.push(Dealt { key: key.to_owned(), seen: seen.instant() });
        }
    }
    Ok(found)
}
