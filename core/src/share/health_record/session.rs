//! A session: milk expressed, or a feed at the breast; and how it hurt.

use serde_json::{json, Value};

use super::codes::{self, Code};
use super::makes::Makes;
use super::observation::{amount_member, Observation};
use super::value;
use crate::record::mark::Phase;
use crate::record::session::PAINS;
use crate::record::{whole_number, Amount, Fields, Kind, MarkKind, Session, Sides, MARKS};
use crate::time::{Instant, Moment};

/// Fields that are said in another way than by a component.
const ELSEWHERE: &[&str] =
    &["method", "sides", "pain_left_letdown", "pain_left_expression", "pain_right_letdown", "pain_right_expression"];

/// A session with what it gave and how it hurt; nothing of one that still runs.
pub(super) fn write(makes: &Makes<'_>, record: &str, fields: &Fields) -> Vec<(String, Value)> {
    let session = Session::read(record, fields);
    if session.is_running() || session.started.is_none() {
        return Vec::new();
    }
    let mut fields = fields.clone();
    for (key, value) in session.settings_as_fields() {
        fields.entry(key.to_owned()).or_insert(value);
    }
    let mut made =
        vec![if session.collects() { expressed(makes, &session, &fields) } else { fed(makes, &session, &fields) }];
    made.extend(marked_pain(makes, &session));
    made.extend(pain_afterwards(makes, &session, &fields));
    made
}

fn expressed(makes: &Makes<'_>, session: &Session, fields: &Fields) -> (String, Value) {
    let texts = makes.texts();
    let observation = begun(makes, "expressed-milk", session, fields).of_parent();
    // What is left out is not unknown: it is said to be left out.
    let observation = match (&session.together, session.sides) {
        _ if !makes.keeps(Kind::Session, "amount_together") => {
            observation.with("dataAbsentReason", codes::absent("masked"))
        }
        (together @ Some(_), Sides::Both) => observation.amount(together.as_ref()),
        (_, Sides::Left) => observation.amount(session.left.as_ref()),
        (_, Sides::Right) => observation.amount(session.right.as_ref()),
        (_, Sides::Both) => observation
            .component(Some(of_side("expressed-milk-left", session.left.as_ref(), texts)))
            .component(Some(of_side("expressed-milk-right", session.right.as_ref(), texts))),
    };
    observation
        .with_any("device", session.pump.as_deref().and_then(|pump| makes.device(Kind::Pump, pump)))
        .components(Kind::Session, fields, ELSEWHERE)
        .note(Kind::Session, fields)
        .made()
}

fn of_side(code: &str, amount: Option<&Amount>, texts: &crate::text::Texts) -> Value {
    let (member, value) = amount_member(amount);
    json!({ "code": Code::thing(code).concept(texts), member: value })
}

fn fed(makes: &Makes<'_>, session: &Session, fields: &Fields) -> (String, Value) {
    begun(makes, "feed-at-breast", session, fields)
        .of_child(fields)
        .components(Kind::Session, fields, ELSEWHERE)
        .note(Kind::Session, fields)
        .made()
}

fn begun<'m, 'r>(makes: &'m Makes<'r>, code: &str, session: &Session, fields: &Fields) -> Observation<'m, 'r> {
    let texts = makes.texts();
    let method = session.method.as_deref().filter(|word| crate::record::choices::METHODS.contains(word));
    let method = method.filter(|_| makes.keeps(Kind::Session, "method"));
    let sided = fields.contains_key("sides") && makes.keeps(Kind::Session, "sides");
    Observation::of(makes, Kind::Session, &session.id, "", Code::thing(code).concept(texts))
        .within(session.started.as_ref(), session.ended.as_ref())
        .with_any("method", method.map(|m| Code::choice("method", crate::record::choices::METHODS, m).concept(texts)))
        .with_any("bodySite", sided.then(|| Code::side(session.sides.name()).concept(texts)))
}

fn pain<'m, 'r>(makes: &'m Makes<'r>, record: &str, part: &str, score: Option<u32>) -> Observation<'m, 'r> {
    let observation =
        Observation::of(makes, Kind::Session, record, part, codes::loinc(codes::PAIN, makes.texts())).of_parent();
    match score {
        Some(score) => observation.with("valueQuantity", value::number(f64::from(score), "{score}")),
        None => observation.with("dataAbsentReason", codes::absent("unknown")),
    }
}

fn phase(phase: Phase, texts: &crate::text::Texts) -> Value {
    json!({ "code": Code::thing("phase").concept(texts), "valueCodeableConcept": Code::phase(phase.name()).concept(texts) })
}

/// Pain as it was marked while the session ran.
fn marked_pain(makes: &Makes<'_>, session: &Session) -> Vec<(String, Value)> {
    if !makes.keeps(Kind::Session, MARKS) {
        return Vec::new();
    }
    let texts = makes.texts();
    let told = |(key, mark): &(String, crate::record::Mark)| {
        let MarkKind::Pain { score } = mark.kind else { return None };
        let observation = pain(makes, &session.id, key, score.map(|score| score.get()))
            .at(Some(&mark.at))
            .with_any("bodySite", mark.side.as_deref().map(|side| Code::side(side).concept(texts)))
            .component(session.phase_at(mark.at.instant()).map(|(of, _)| phase(of, texts)));
        Some(observation.made())
    };
    session.marks.iter().filter_map(told).collect()
}

/// Pain as it was said afterwards, of a side and a phase.
fn pain_afterwards(makes: &Makes<'_>, session: &Session, fields: &Fields) -> Vec<(String, Value)> {
    let texts = makes.texts();
    let told = |(key, side, of): &(&str, Sides, Phase)| {
        let score = whole_number(fields, key).filter(|_| makes.keeps(Kind::Session, key))?;
        let observation = pain(makes, &session.id, key, Some(score))
            .within(session.started.as_ref(), session.ended.as_ref())
            .with("bodySite", Code::side(side.name()).concept(texts))
            .component(Some(phase(*of, texts)));
        Some(observation.made())
    };
    PAINS.iter().filter_map(told).collect()
}

/// Currently breastfeeding: said only where a feed at the breast was written down within
/// the last week, and dated then. That nothing was written down says nothing.
pub(super) fn feeding_status(
    makes: &Makes<'_>,
    latest: Option<&(String, Moment)>,
    now: Instant,
) -> Option<(String, Value)> {
    let week = crate::time::Span::hours(7 * 24);
    let (session, at) = latest.filter(|(_, at)| now.since(at.instant()) <= week)?;
    let texts = makes.texts();
    let status = Observation::of(makes, Kind::Session, "", "feeding-status", codes::loinc(codes::FEEDING, texts))
        .of_parent()
        .at(Some(at))
        .with("valueCodeableConcept", codes::loinc(codes::FEEDING_NOW, texts))
        .with(
            "derivedFrom",
            json!([{ "reference": super::ids::url(&super::ids::id(Kind::Session.name(), session, "")) }]),
        );
    Some(status.made())
}
