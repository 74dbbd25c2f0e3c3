//! What becomes of milk that is not drunk at once: the first of each morning goes to the freezer, what
//! is pumped at work to the fridge and is drunk there the day after.

use drawwell_core::{
    quantity::Quantity,
    record::{moment, text, Amount, Kind, Session, KEEPING},
    time::{Moment, Span},
};

use super::{fact::Fact, story};

/// Bottles are noted from this day on.
const FROM: i64 = 128;
/// What was frozen until here was used up while there was fever and little came.
const USED_UP_BEFORE: i64 = 141;

/// The rules they go by, the bottles, and what happened to them.
pub(super) fn facts(facts: &[Fact]) -> Vec<Fact> {
    let mut kept = vec![Fact::new(Kind::Keeping, KEEPING).says("keeping_rules", "home_2017").yes("remind_of_milk")];
    let mut number = 0;
    for day in FROM..=story::LAST {
        let mut first = true;
        for fact in facts.iter().filter(|fact| is_of(fact, day)) {
            let session = Session::read(&fact.id, &fact.fields);
            let at_work = text(&fact.fields, "where") == Some("work");
            let Some(amount) = all_of(&session) else { continue };
            let Some(ended) = session.ended.clone().filter(|_| first || at_work) else { continue };
            number += 1;
            kept.extend(bottle(fact, number, amount, &ended, if first { "freezer" } else { "fridge" }));
            first = false;
        }
    }
    kept.push(
        Fact::new(Kind::Cleaning, "cleaning-morning")
            .when("at", &story::moment(story::LAST, 8 * 3600))
            .says("cleaned", "sanitised"),
    );
    kept
}

fn is_of(fact: &Fact, day: i64) -> bool {
    let started = moment(&fact.fields, "started").map(|at| at.on_the_wall().date());
    fact.kind == Kind::Session
        && text(&fact.fields, "method") == Some("electric_pump")
        && started == Some(story::day_of(day))
}

fn all_of(session: &Session) -> Option<f64> {
    let known = |amount: &Option<Amount>| amount.as_ref().and_then(Amount::known).map(Quantity::canonical);
    known(&session.together).or_else(|| Some(known(&session.left)? + known(&session.right)?))
}

fn bottle(fact: &Fact, number: u32, amount: f64, ended: &Moment, place: &str) -> Vec<Fact> {
    let id = format!("bottle-{number}");
    let after = |hours: i64| {
        let at = ended.instant().plus(Span::hours(hours));
        ended.zone().map(|zone| Moment::new(at, zone)).filter(|at| at.instant() <= super::present().instant())
    };
    let event = |key: &str, at: &Moment, what: &str| {
        Fact::new(Kind::MilkEvent, format!("{id}-{key}"))
            .when("at", at)
            .says("container", id.as_str())
            .says("happened", what)
    };
    let filled = Fact::new(Kind::Container, id.as_str())
        .when("at", ended)
        .milk("amount", (amount * 10.0).round() / 10.0)
        .says("kept_in", if place == "freezer" { "fridge" } else { place })
        .says("label", number.to_string())
        .says("sessions", fact.id.as_str());
    let mut all = vec![filled];
    match place {
        "freezer" => {
            all.extend(after(10).map(|at| event("a", &at, "moved").says("kept_in", "freezer")));
            let days = number_of_day(ended);
            if days < USED_UP_BEFORE {
                all.extend(after(24 * 6).map(|at| event("b", &at, "moved").says("kept_in", "fridge")));
                all.extend(after(24 * 7).map(|at| event("c", &at, "thawed")));
                all.extend(after(24 * 7 + 3).map(|at| event("d", &at, "given")));
            } else if days == USED_UP_BEFORE {
                // One that lies in the fridge to thaw.
                let at = story::moment(story::LAST, 6 * 3600);
                all.push(event("b", &at, "moved").says("kept_in", "fridge"));
            }
        }
        _ => all.extend(after(20).map(|at| event("a", &at, "given"))),
    }
    all
}

fn number_of_day(at: &Moment) -> i64 {
    (0..=story::LAST).find(|day| story::day_of(*day) == at.on_the_wall().date()).unwrap_or(story::LAST)
}
