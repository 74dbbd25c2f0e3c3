//! The rules that the sheet rests on, as they hold, by source and year: those of the
//! sections that are there, and no other.

use super::section::{row, section};
use crate::guidance::{Rule, Rules};
use crate::screen::shapes::SheetSection;
use crate::screen::View;

/// The rules a section rests on, by its key.
const RESTS_ON: &[(&str, &[&str])] = &[
    ("observed", &["complete_day"]),
    ("supply", &["complete_day", "bears_doubt", "least_complete", "band_a_week"]),
    ("child", &["preterm_below"]),
    ("pump", &["verdict_chance"]),
    ("comfort", &["discomfort_rare"]),
];

/// `there` are the sections that go out; `beside` are rules that only hold where nothing
/// else was set, such as the longest gap.
/// `cited` are sources that are no rules, each with what it says.
pub(super) fn render(
    view: &View<'_>,
    rules: &Rules,
    there: &[&str],
    beside: &[&str],
    cited: &[(String, String)],
) -> SheetSection {
    let words = view.words();
    let of = RESTS_ON.iter().filter(|(section, _)| there.contains(section));
    let keys: Vec<&str> = of.flat_map(|(_, rules)| rules.iter()).chain(beside).copied().collect();
    let mut by_source: Vec<(String, Vec<String>)> = Vec::new();
    for rule in Rules::shipped().iter().filter(|rule| keys.contains(&rule.key.as_str())) {
        let (source, said) = (source(view, rules, rule), line_of(view, rules, rule));
        match by_source.iter_mut().find(|(known, _)| *known == source) {
            Some((_, all)) => all.push(said),
            None => by_source.push((source, vec![said])),
        }
    }
    by_source.extend(cited.iter().map(|(source, said)| (source.clone(), vec![said.clone()])));
    let rows = by_source.into_iter().map(|(source, all)| row(format!("{source}:"), "", all.join("; "))).collect();
    let version = words.with("sheet-version", &[("version", env!("CARGO_PKG_VERSION").into())]);
    SheetSection { lines: vec![version], rows, ..section(view, "sources") }
}

/// Where a rule comes from: its source, or whoever set it anew.
fn source(view: &View<'_>, rules: &Rules, rule: &Rule) -> String {
    let words = view.words();
    let from = [("source", rule.source.clone().into()), ("year", rule.year.to_string().into())];
    match rules.set_to(&rule.key).filter(|set| *set != rule.value) {
        Some(_) => words.say("sheet-set-anew"),
        None if rule.from_memory => words.with("sheet-source-from-memory", &from),
        None => words.with("sheet-source", &from),
    }
}

fn line_of(view: &View<'_>, rules: &Rules, rule: &Rule) -> String {
    let words = view.words();
    let value = words.rule_value(rule, rules.set_to(&rule.key).unwrap_or(rule.value));
    let rule = words.say(&format!("field-{}", rule.key.replace('_', "-")));
    words.with("sheet-rule", &[("rule", rule.into()), ("value", value.into())])
}
