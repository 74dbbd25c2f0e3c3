//! Every rule there is, as the answers go by it: taken at its bounds, passed over beyond them.

use drawwell_core::guidance::{
    CaseloadRules, CautionRules, ComfortRules, FitRules, KitRules, NightRules, RefillRules, Rules, SupplyRules,
};
use drawwell_core::quantity::Quantity;
use drawwell_core::time::Span;

const MONTH_HOURS: f64 = 730.5;

/// A value of a rule as an answer goes by it, in the unit of the table.
fn held(key: &str, rules: &Rules) -> Option<f64> {
    let (supply, kit, fit) = (SupplyRules::read(rules), KitRules::read(rules), FitRules::read(rules));
    let (night, refill) = (NightRules::read(rules), RefillRules::read(rules));
    let (caution, caseload) = (CautionRules::read(rules), CaseloadRules::read(rules));
    let comfort = ComfortRules::read(rules);
    let minutes = |span: Span| span.in_minutes() as f64;
    let fine_minutes = |span: Span| span.in_milliseconds() as f64 / 60_000.0;
    let whole = |count: drawwell_core::quantity::Count| f64::from(count.get());
    let hours = |span: Span| minutes(span) / 60.0;
    let in_months = |span: Span| hours(span) / MONTH_HOURS;
    Some(match key {
        "complete_day" => supply.complete_day.fraction() * 100.0,
        "bears_doubt" => supply.bears_doubt.fraction() * 100.0,
        "least_complete" => supply.least_complete.fraction() * 100.0,
        "band_a_week" => supply.band_a_week.fraction() * 100.0,
        "watched_day" => supply.watched_day.fraction() * 100.0,
        "watch_reference" => supply.watch_reference,
        "watch_decision" => supply.watch_decision,
        "fever" => supply.fever.canonical(),
        "volume_day" => f64::from(supply.volume_day.get()),
        "volume_reached" => supply.volume_reached.canonical(),
        "volume_between" => supply.volume_between.canonical(),
        "need_a_kilogram" => supply.need_a_kilogram.canonical(),
        "intake_from" => f64::from(supply.intake_from.get()),
        "preterm_below" => f64::from(supply.preterm_below_weeks.get()),
        "personal_low" => kit.personal.0.canonical(),
        "personal_high" => kit.personal.1.canonical(),
        "hospital_low" => kit.hospital.0.canonical(),
        "hospital_high" => kit.hospital.1.canonical(),
        "good_low" => kit.good.0.canonical(),
        "good_high" => kit.good.1.canonical(),
        "hand_exemption" => kit.hand_exemption.canonical(),
        "verdict_chance" => kit.verdict_chance.fraction() * 100.0,
        "set_apart" => kit.set_apart.canonical(),
        "readings_apart" => kit.readings_apart.canonical(),
        "likely_kilopascal" => kit.likely_kilopascal.canonical(),
        "life_from" => in_months(kit.motor_life.0),
        "life_to" => in_months(kit.motor_life.1),
        "usual_cycles_low" => kit.usual_cycles.low.canonical(),
        "usual_cycles_high" => kit.usual_cycles.high.canonical(),
        "gap_least" => fit.gap_least.canonical(),
        "gap_most" => fit.gap_most.canonical(),
        "comes_with_low" => fit.comes_with.0.canonical(),
        "comes_with_high" => fit.comes_with.1.canonical(),
        "measure_again" => fit.measure_again.in_minutes() as f64 / 60.0 / 24.0,
        "longest_gap" => minutes(night.longest) / 60.0,
        "longest_gap_early" => minutes(night.longest_early) / 60.0,
        "early_days" => minutes(night.early) / 1440.0,
        "least_sessions" => f64::from(night.least_sessions.get()),
        "least_sessions_early" => f64::from(night.least_sessions_early.get()),
        "asleep_again" => minutes(night.asleep_again),
        "usual_length" => minutes(night.usual_length),
        "catches_up" => night.catches_up.fraction() * 100.0,
        "late_after" => minutes(night.late_after),
        "highest_rate" => refill.highest_rate.canonical() / 24.0,
        "breast_fever" => caution.breast_fever.canonical(),
        "fever_with_place" => caution.fever_with_place.canonical(),
        "fever_after_birth" => caution.fever_after_birth.canonical(),
        "fever_later" => caution.fever_later.canonical(),
        "after_birth" => hours(caution.after_birth) / 24.0,
        "pain_often" => f64::from(caution.pain_often.get()),
        "pain_often_in" => f64::from(caution.pain_often_in.get()),
        "pain_often_of" => f64::from(caution.pain_often_of.get()),
        "breast_pain_high" => f64::from(caution.breast_pain_high.get()),
        "engorged_from" => f64::from(caution.engorged_from.get()),
        "engorged_to" => f64::from(caution.engorged_to.get()),
        "blood_lasts" => hours(caution.blood_lasts) / 24.0,
        "no_better_after" => hours(caution.no_better_after),
        "signs_together" => hours(caution.signs_together),
        "signs_hold" => hours(caution.signs_hold),
        "severe_pain" => f64::from(caution.severe_pain.get()),
        "pain_rise" => f64::from(caution.pain_rise.get()),
        "pain_sessions" => f64::from(caution.pain_sessions.get()),
        "pump_far_below" => caution.pump_far_below.fraction() * 100.0,
        "comfortable_low" => comfort.comfortable.0.canonical(),
        "comfortable_high" => comfort.comfortable.1.canonical(),
        "discomfort_from" => f64::from(comfort.discomfort_from.get()),
        "discomfort_rare" => comfort.rare.fraction() * 100.0,
        "comfort_sessions" => whole(comfort.sessions),
        "search_step" => comfort.search_step.canonical(),
        "search_speed_step" => comfort.search_speed_step.canonical(),
        "search_pain" => f64::from(comfort.search_pain.get()),
        "milk_sessions" => whole(comfort.milk_sessions),
        "milk_matters" => comfort.milk_matters.fraction() * 100.0,
        "pain_matters" => comfort.pain_matters.get(),
        "minutes_matter" => fine_minutes(comfort.time_matters),
        "trial_false" => comfort.trial_false.fraction() * 100.0,
        "trial_planned" => whole(comfort.trial_planned),
        "trial_pain_rise" => f64::from(comfort.trial_pain_rise.get()),
        "suspect_in" => whole(comfort.suspect_in),
        "suspect_of" => whole(comfort.suspect_of),
        "stimulation_low" => fine_minutes(comfort.stimulation.0),
        "stimulation_high" => fine_minutes(comfort.stimulation.1),
        "expression_low" => fine_minutes(comfort.expression.0),
        "expression_high" => fine_minutes(comfort.expression.1),
        "letdowns_low" => whole(comfort.letdowns.0),
        "letdowns_high" => whole(comfort.letdowns.1),
        "look_after_gap" => hours(caseload.look_after_gap),
        "visit_ahead" => f64::from(caseload.visit_ahead.get()),
        _ => return None,
    })
}

#[test]
fn each_rule_is_taken_at_its_bounds_and_passed_over_beyond_them() {
    for rule in Rules::shipped() {
        let with = |value: f64| {
            let mut rules = Rules::default();
            rules.set(&rule.key, value);
            held(&rule.key, &rules).unwrap_or_else(|| panic!("nothing goes by {}", rule.key))
        };
        // A span is kept in milliseconds.
        let near = |value: f64, stands: f64| (with(value) - stands).abs() < 1e-3;
        for value in [rule.least, rule.most] {
            assert!(near(value, value), "{} at {value}", rule.key);
        }
        for value in [rule.least - 0.01, rule.most + 0.01, f64::NAN, f64::INFINITY] {
            assert!(near(value, rule.value), "{} beyond, at {value}", rule.key);
        }
    }
}
