//! By which rule each line goes, and where that comes from.

use super::words::{runs_key, weeks};
use crate::answer::choice::Aspect;
use crate::gather::choice::ChoiceInputs;
use crate::guidance::{ComfortRules, Rules, MONTH_HOURS};
use crate::quantity::{say_decimal, Quantity, SpeedUnit};
use crate::screen::View;
use crate::time::Span;
use crate::trouble::Trouble;

/// The section a line stands in.
pub(super) const fn section_key(aspect: Aspect) -> &'static str {
    match aspect {
        Aspect::Grade => "offer-grade",
        Aspect::Strength => "offer-strength",
        Aspect::MostMilk => "offer-most-milk",
        Aspect::Cycles => "offer-cycles",
        Aspect::SetApart => "offer-set-apart",
        Aspect::Stimulation => "offer-stimulation",
        Aspect::BothAtOnce => "offer-both-at-once",
        Aspect::Runs => "offer-runs",
        Aspect::Motor => "offer-motor",
        Aspect::SharedUse => "offer-shared-use",
    }
}

/// The rule, and its source.
pub(super) fn lines(view: &View<'_>, inputs: &ChoiceInputs, aspect: Aspect) -> Result<Vec<String>, Trouble> {
    let mut lines = vec![rule(view, inputs, aspect)];
    if aspect == Aspect::SetApart && inputs.wanted.sensitive {
        lines.push(view.words().say("offer-rule-sensitive"));
    }
    lines.push(source(view, aspect)?);
    lines.retain(|line| !line.is_empty());
    Ok(lines)
}

fn months(span: Span) -> i64 {
    (span.in_minutes() as f64 / 60.0 / MONTH_HOURS).round() as i64
}

/// The rule in words.
pub(super) fn rule(view: &View<'_>, inputs: &ChoiceInputs, aspect: Aspect) -> String {
    let words = view.words();
    let rules = &inputs.rules;
    match aspect {
        Aspect::Grade => words.with(
            "offer-rule-grade",
            &[
                ("hospital", words.vacuum(rules.hospital.0).into()),
                ("usual", words.vacuums_between(rules.hospital_usual, rules.hospital.1).into()),
                ("personal", words.vacuums_between(rules.personal.0, rules.personal.1).into()),
            ],
        ),
        Aspect::Strength => words.with(
            "offer-stated-rule",
            &[
                ("good", words.vacuums_between(rules.good.0, rules.good.1).into()),
                ("weak", words.vacuum(rules.personal.0).into()),
            ],
        ),
        Aspect::MostMilk => words.with("offer-rule-most-milk", &[("above", words.vacuum(rules.most_above).into())]),
        Aspect::Cycles => {
            let figure = |speed: crate::quantity::Speed| say_decimal(speed.canonical(), 0);
            let usual = &rules.usual_cycles;
            let range = [
                ("low", figure(usual.low).into()),
                ("high", figure(usual.high).into()),
                ("unit", words.unit(SpeedUnit::PerMinute).into()),
            ];
            words.with("offer-rule-cycles", &[("range", words.with("range", &range).into())])
        }
        Aspect::SetApart => words.say("offer-rule-set-apart"),
        Aspect::Stimulation => words.say("offer-rule-stimulation"),
        Aspect::BothAtOnce => words.say("offer-rule-both"),
        Aspect::Runs => {
            let runs = inputs.wanted.runs.map(|runs| words.say(runs_key(runs))).unwrap_or_default();
            words.with("offer-rule-runs", &[("runs", runs.into())])
        }
        Aspect::Motor => words.with(
            "offer-rule-motor",
            &[
                ("from", months(rules.motor_life.0).into()),
                ("to", months(rules.motor_life.1).into()),
                ("weeks", weeks(view, &inputs.wanted).into()),
            ],
        ),
        Aspect::SharedUse => words.say("offer-rule-shared-use"),
    }
}

/// Where a rule comes from; nothing where what is wanted is rule enough.
fn source(view: &View<'_>, aspect: Aspect) -> Result<String, Trouble> {
    if matches!(aspect, Aspect::BothAtOnce | Aspect::Runs) {
        return Ok(String::new());
    }
    let rules = view.rules()?;
    let set = |key: &&str| rules.set_to(key).is_some_and(|set| Rules::shipped_value(key) != Some(set));
    let words = view.words();
    Ok(match aspect.rules().iter().any(set) {
        true => words.say("sheet-set-anew"),
        false => match aspect.rules().first().and_then(|key| Rules::named(key)) {
            Some(rule) => rule.source.clone(),
            None => words.say("term-common-practice"),
        },
    })
}

/// The first weeks, and what to look for later.
pub(super) fn early(view: &View<'_>, inputs: &ChoiceInputs) -> Vec<String> {
    let words = view.words();
    let first = match inputs.early {
        Some(early) => words.with(
            if early.over { "offer-early-over" } else { "offer-early-now" },
            &[("date", words.plain_date(early.until).into())],
        ),
        None => {
            let weeks = inputs.rules.early_weeks.in_minutes() / (7 * 24 * 60);
            words.with("offer-early-any", &[("count", weeks.into())])
        }
    };
    vec![first, words.say("offer-early-look"), words.say("offer-early-source")]
}

/// That more is not better, and where most are comfortable.
pub(super) fn more(view: &View<'_>) -> Result<String, Trouble> {
    let (low, high) = ComfortRules::read(view.rules()?).comfortable;
    let words = view.words();
    Ok(words.with("offer-more", &[("range", words.vacuums_between(low, high).into())]))
}
