//! Published intake beside what is made: never a share without the range that children of
//! that age have.

use super::children::{children, share_percent};
use crate::answer::supply::against::share_of;
use crate::answer::supply::intake::{self, Basis, Intake, NoIntake, OfChild};
use crate::gather::supply::SupplyInputs;
use crate::guidance::{PublishedIntake, Rules};
use crate::quantity::{Production, Quantity, Volume};
use crate::record::RULES;
use crate::screen::shapes::ListRow;
use crate::screen::View;
use crate::trouble::Trouble;

/// The field of the rule for each kilogram.
const EACH_KILOGRAM: &str = "need_a_kilogram";

/// What is known of the intake of all children.
struct Found {
    intakes: Vec<Intake>,
    needs_birth: Vec<String>,
    needs_weight: Vec<String>,
    too_young: Vec<String>,
}

fn found(view: &View<'_>, look: &SupplyInputs) -> Result<Found, Trouble> {
    let rules = Rules::read(&view.record(RULES)?.1);
    let is_set = rules.set_to(EACH_KILOGRAM).is_some();
    let mut found =
        Found { intakes: Vec::new(), needs_birth: Vec::new(), needs_weight: Vec::new(), too_young: Vec::new() };
    let children = children(view)?;
    let only = children.len() == 1;
    for child in children {
        let of = OfChild {
            age_days: child.age(view.today()),
            preterm_age_days: child.days_since_due(view.today(), look),
            weight: child.weight(view, only)?,
        };
        match intake::of(of, &look.rules, is_set) {
            Ok(intake) => found.intakes.push(intake),
            Err(NoIntake::NeedsBirth) => found.needs_birth.push(child.name),
            Err(NoIntake::NeedsWeight) => found.needs_weight.push(child.name),
            Err(NoIntake::TooYoung) => found.too_young.push(child.name),
            // Other food counts by then.
            Err(NoIntake::TooOld) => {}
        }
    }
    Ok(found)
}

/// The row; none where there is no child of an age that it is known for.
pub(super) fn row(view: &View<'_>, look: &SupplyInputs, now: Production) -> Result<Option<ListRow>, Trouble> {
    let words = view.words();
    let found = found(view, look)?;
    let Found { intakes, needs_birth, needs_weight, too_young } = &found;
    let count = intakes.len() + needs_birth.len() + needs_weight.len() + too_young.len();
    if count == 0 {
        return Ok(None);
    }
    let title = words.with("supply-intake-title", &[("count", (count as i64).into())]);
    for (names, key) in [
        (needs_birth, "supply-intake-needs-birth"),
        (needs_weight, "supply-intake-needs-weight"),
        (too_young, "supply-intake-too-young"),
    ] {
        if !names.is_empty() {
            let needs = [("names", names.join(", ").into()), ("day", i64::from(look.rules.intake_from.get()).into())];
            return Ok(Some(view.text_row(title, words.with(key, &needs))));
        }
    }
    let sum = |of: &dyn Fn(&Intake) -> Option<Production>| -> Option<Production> {
        let all: Option<Vec<f64>> = intakes.iter().map(|one| of(one).map(Production::canonical)).collect();
        Some(Production::from_canonical(all?.iter().sum()))
    };
    let mut parts = Vec::new();
    if let Some(value) = sum(&|one| Some(one.value)) {
        parts.push(words.with("supply-intake", &[("production", words.production(value).into())]));
        if let Some(by_weight) = sum(&|one| one.by_weight) {
            let needs = [("production", words.production(by_weight).into())];
            parts.push(words.with("supply-intake-by-weight", &needs));
        }
        let low = sum(&|one| one.range.map(|range| Production::from_canonical(range.low)));
        let high = sum(&|one| one.range.map(|range| Production::from_canonical(range.high)));
        parts.push(match (low, high) {
            (Some(low), Some(high)) => words.with(
                "supply-intake-share",
                &[
                    ("now", share_percent(share_of(now, value)).into()),
                    ("least", share_percent(share_of(now, high)).into()),
                    ("most", share_percent(share_of(now, low)).into()),
                    ("range", words.volume_range(of_a_day(low), of_a_day(high)).into()),
                ],
            ),
            _ => words.say("supply-intake-no-range"),
        });
    }
    parts.extend(rests_on(intakes).map(|key| {
        let each = words.volume(Volume::from_canonical(look.rules.need_a_kilogram.canonical()));
        words.with(key, &[("each", each.into())])
    }));
    Ok(Some(view.text_row(title, parts.join(" "))))
}

/// A day's, as a volume: published ends are said as they were printed.
fn of_a_day(production: Production) -> Volume {
    Volume::from_canonical(production.canonical())
}

/// What the children's intake rests on, each once, as the key of its sentence.
fn rests_on(intakes: &[Intake]) -> impl Iterator<Item = &'static str> + '_ {
    let bases = [
        (Basis::Age, "supply-intake-by-age"),
        (Basis::CorrectedAge, "supply-intake-by-corrected-age"),
        (Basis::Rule, "supply-intake-by-rule"),
    ];
    bases.into_iter().filter(|(basis, _)| intakes.iter().any(|one| one.basis == *basis)).map(|(_, key)| key)
}

/// Where what the row says comes from: each source with what it says, for the sheet.
pub(in crate::screen) fn sources(view: &View<'_>, look: &SupplyInputs) -> Result<Vec<(String, String)>, Trouble> {
    let words = view.words();
    if look.now().is_none() {
        return Ok(Vec::new());
    }
    let intakes = found(view, look)?.intakes;
    let published = PublishedIntake::shipped();
    let cited = |source: &str, year: u32, from_memory: bool| {
        let key = if from_memory { "sheet-source-from-memory" } else { "sheet-source" };
        words.with(key, &[("source", source.to_owned().into()), ("year", year.to_string().into())])
    };
    let mut found: Vec<(String, String)> = Vec::new();
    let mut add = |source: String, said: String| match found.iter_mut().find(|(known, _)| *known == source) {
        Some((_, all)) if all.split("; ").any(|known| known == said) => {}
        Some((_, all)) => *all = format!("{all}; {said}"),
        None => found.push((source, said)),
    };
    for one in &intakes {
        if one.basis != Basis::Rule {
            add(cited(&published.curve.source, published.curve.year, false), words.say("sheet-intake"));
        }
        if one.by_weight.is_some() {
            let source = &published.by_weight;
            add(cited(&source.source, source.year, false), words.say("sheet-intake-by-weight"));
        }
        if let Some(range) = one.range {
            add(cited(&range.source, range.year, range.from_memory), words.say("sheet-intake-range"));
        }
    }
    Ok(found)
}

/// Whether the rule for each kilogram is among what the row rests on.
pub(in crate::screen) fn rests_on_rule(view: &View<'_>, look: &SupplyInputs) -> Result<Option<&'static str>, Trouble> {
    let told = look.now().is_some();
    let of_rule = found(view, look)?.intakes.iter().any(|one| one.basis == Basis::Rule);
    Ok((told && of_rule).then_some(EACH_KILOGRAM))
}
