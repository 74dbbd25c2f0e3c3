//! What a pump is called and what its maker states, after a gauge was on it.

use super::super::pump_words::{section, side_text};
use crate::answer::pump::{judge, Grade, Limits, Verdict, Whose};
use crate::gather::kit::{CheckInputs, PumpInputs};
use crate::quantity::Vacuum;
use crate::record::offered::stated_vacuum;
use crate::screen::shapes::Section;
use crate::screen::View;

/// Whether the latest check bears out the one figure that is stated, and what the pump is called where its maker
/// states figures of his own; none where the check is held against that already.
pub(in crate::screen::kit) fn section_of(view: &View<'_>, look: &PumpInputs) -> Option<Section> {
    let latest = look.latest().filter(|latest| look.doubts(latest).is_empty())?;
    let stated = stated_vacuum(&look.fields);
    let mut lines = Vec::new();
    if let (None, Some(one)) = (stated.least(), stated.most()) {
        lines.extend(borne_out(view, look, latest, one));
    }
    let by_grade = match look.grade {
        Some(Grade::Hospital) => Some(look.rules.hospital.0),
        Some(Grade::Personal) => Some(look.rules.personal.0),
        Some(Grade::Hand) | None => None,
    };
    if let (Some(low), Whose::Maker) = (by_grade.filter(|low| stated.most() != Some(*low)), look.limits.whose) {
        lines.extend(borne_out(view, look, latest, low));
        lines.push(view.words().say("term-common-practice"));
    }
    (!lines.is_empty()).then(|| Section { lines, ..section(view, "offer-claim") })
}

/// Whether each side reaches a vacuum.
fn borne_out(view: &View<'_>, look: &PumpInputs, latest: &CheckInputs, low: Vacuum) -> Vec<String> {
    let words = view.words();
    let limits = Limits { low: Some(low), high: None, usually_to: None, whose: Whose::Maker };
    let span = latest.gauge.and_then(|gauge| gauge.span);
    let said: Vec<(String, &str)> = latest
        .pulls
        .iter()
        .filter_map(|(side, pull)| {
            let judged = judge(pull.as_ref().ok()?, &limits, look.rules.verdict_chance, span);
            let key = match judged.verdict {
                Verdict::Meets => "offer-check-agrees",
                Verdict::Below => "offer-check-says-no",
                Verdict::Above | Verdict::CannotTell => "offer-check-cannot-tell",
            };
            Some((side_text(view, *side), key))
        })
        .collect();
    let line = |side: String, key: &str| words.with(key, &[("side", side.into()), ("low", words.vacuum(low).into())]);
    match said.as_slice() {
        [(_, key), (_, other)] if key == other => vec![line(words.say("side-each"), key)],
        _ => said.into_iter().map(|(side, key)| line(side, key)).collect(),
    }
}
