//! What a pump is called and what its maker states, after a gauge was on it.

use super::super::pump_words::{section, side_text};
use crate::answer::pump::{judge, Grade, Limits, Verdict, Whose};
use crate::gather::kit::PumpInputs;
use crate::screen::shapes::Section;
use crate::screen::View;

/// Whether the latest check bears out what it is called, where its maker states figures of his own; none where the
/// check is held against that already.
pub(in crate::screen::kit) fn section_of(view: &View<'_>, look: &PumpInputs) -> Option<Section> {
    let words = view.words();
    let latest = look.latest().filter(|latest| look.doubts(latest).is_empty())?;
    let low = match look.grade? {
        Grade::Hospital => look.rules.hospital.0,
        Grade::Personal => look.rules.personal.0,
        Grade::Hand => return None,
    };
    if look.limits.whose != Whose::Maker {
        return None;
    }
    let limits = Limits { low: Some(low), high: None, usually_to: None, whose: Whose::Grade(look.grade?) };
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
    let mut lines = match said.as_slice() {
        [] => return None,
        [(_, key), (_, other)] if key == other => vec![line(words.say("side-each"), key)],
        _ => said.into_iter().map(|(side, key)| line(side, key)).collect(),
    };
    lines.push(words.say("term-common-practice"));
    Some(Section { lines, ..section(view, "offer-claim") })
}
