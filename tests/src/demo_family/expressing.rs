//! A session as the parent writes it down: some with care, some in two taps,
//! some only afterwards, and now and then without the amount.

use drawwell_core::record::Kind;

use crate::chance::Chance;

use super::{
    curve::along,
    fact::Fact,
    kit,
    marks::{self, Care, Strength},
    milk::{Came, Milk},
    rounding,
    routine::{Doing, With},
    story,
};

/// The fact, and the milk that is gone afterwards.
pub(super) fn session(doing: &Doing, number: usize, milk: &mut Milk) -> Fact {
    let mut chance = Chance::on(doing.day, &format!("session {number}"));
    let day = doing.day as f64 + doing.second as f64 / 86_400.0;
    let seconds = (chance.around(minutes(doing), 1.3) * 60.0) as i64;
    let came = milk.draw(
        Some(drawn(doing, day, true) * chance.around(1.0, 0.07)),
        Some(drawn(doing, day, false) * chance.around(1.0, 0.07)),
    );
    let fact = Fact::new(Kind::Session, format!("session-{}-{number}", story::date(doing.day)))
        .when("started", &story::moment(doing.day, doing.second))
        .says("sides", "both")
        .says("where", doing.place);
    let fact = means(fact, doing);
    let fact = how_it_ran(fact, doing, seconds, &mut chance);
    let fact = comfort(fact, day, &mut chance);
    amounts(fact, doing, came, &mut chance)
}

fn minutes(doing: &Doing) -> f64 {
    match doing.with {
        With::ByHand => 13.0,
        With::HandPump => 14.0,
        _ if doing.place == "work" => 16.0,
        _ if doing.second < 5 * 3600 => 16.5,
        _ => 19.0,
    }
}

/// The share of what a side holds that is drawn.
fn drawn(doing: &Doing, day: f64, left: bool) -> f64 {
    let fever = along(&[(73.5, 1.0), (74.2, 0.72), (75.5, 0.78), (78.0, 1.0)], day);
    let flange = if doing.day < story::BETTER_FLANGE { 0.94 } else { 1.0 };
    let means = match doing.with {
        With::ByHand => 0.62,
        With::HandPump => 0.72,
        With::WardPump => 0.88 * flange,
        _ if left => 0.87 * flange * story::valve_passes(day),
        _ => 0.87 * flange,
    };
    if left {
        means
    } else {
        means * fever
    }
}

fn means(fact: Fact, doing: &Doing) -> Fact {
    let (method, pump) = match doing.with {
        With::ByHand => ("by_hand", None),
        With::HandPump => ("hand_pump", Some(kit::HAND_PUMP)),
        With::WardPump => ("electric_pump", Some(kit::WARD_PUMP)),
        _ => ("electric_pump", Some(kit::HERON)),
    };
    let fact = fact.says("method", method);
    match pump {
        Some(pump) if method == "electric_pump" => {
            let narrow = doing.day >= story::BETTER_FLANGE;
            fact.says("pump", pump)
                .says("flange_left", if narrow { kit::NARROW_LEFT } else { kit::WIDE_LEFT })
                .says("flange_right", if narrow { kit::NARROW_RIGHT } else { kit::WIDE_RIGHT })
        }
        Some(pump) => fact.says("pump", pump),
        None => fact,
    }
}

fn how_it_ran(fact: Fact, doing: &Doing, seconds: i64, chance: &mut Chance) -> Fact {
    let ended = story::moment(doing.day, doing.second + seconds);
    let electric = matches!(doing.with, With::WardPump | With::HomePump);
    if chance.happens(if doing.day < 2 { 0.5 } else { 0.10 }) || !electric {
        let fact = fact.when("ended", &ended).yes("afterwards");
        return if doing.day > 2 && chance.happens(0.6) { fact.says("letdowns", chance.whole(2, 4)) } else { fact };
    }
    let closely = match doing.day {
        early if early < 40 => 0.42,
        late if late >= story::WATCHING_AGAIN => 0.75,
        _ => 0.30,
    };
    let care = if chance.happens(closely) { Care::Full } else { Care::Plain };
    let fact = marks::add(fact.when("ended", &ended), doing, seconds, care, strength(doing, chance), chance);
    let fact = if chance.happens(0.22) { fact.yes("hands_on") } else { fact };
    if care == Care::Plain && chance.happens(0.08) {
        fact.says("letdown_felt", if chance.happens(0.5) { "not_felt" } else { "seen_or_felt" })
    } else {
        fact
    }
}

/// Turned up while the flange was too big and while the valve leaked.
fn strength(doing: &Doing, chance: &mut Chance) -> Strength {
    let day = doing.day as f64;
    let wander = chance.whole(-1, 1);
    if doing.with == With::WardPump {
        let usual = along(&[(1.0, 120.0), (10.0, 190.0), (32.0, 210.0), (34.0, 170.0), (58.0, 165.0)], day);
        let expression = rounding::to(usual, 10.0) as i64 + 10 * wander;
        return Strength { letdown: expression - 50, expression };
    }
    const LEVELS: &[(f64, f64)] =
        &[(4.0, 6.0), (12.0, 9.0), (32.0, 10.0), (34.0, 6.0), (93.0, 6.0), (106.0, 9.0), (107.0, 6.0)];
    let expression = along(LEVELS, day).round() as i64 + i64::from(chance.happens(0.3)) * wander;
    Strength { letdown: (expression - 3).max(2), expression }
}

fn comfort(fact: Fact, day: f64, chance: &mut Chance) -> Fact {
    let hurts = story::hurts(day);
    let said = if hurts > 1.0 { 0.45 } else { 0.06 };
    if !chance.happens(said) {
        return fact;
    }
    let fever = (73.5..78.0).contains(&day);
    let score = |chance: &mut Chance, by: f64| (hurts * by + chance.between(-0.8, 0.8)).round().clamp(0.0, 10.0) as i64;
    let fact = if chance.happens(0.4) {
        let (left, right) = (score(chance, 0.6), score(chance, 0.6));
        fact.says("pain_left_letdown", left).says("pain_right_letdown", right)
    } else {
        fact
    };
    let left = score(chance, if fever { 0.1 } else { 1.0 });
    let right = score(chance, if fever { 1.4 } else { 0.9 });
    let fact = fact.says("pain_left_expression", left).says("pain_right_expression", right);
    if left.max(right) >= 4 && fact.fields.contains_key("afterwards") {
        fact.says("turned_down", chance.whole(1, 2))
    } else {
        fact
    }
}

fn amounts(fact: Fact, doing: &Doing, came: Came, chance: &mut Chance) -> Fact {
    let (left, right) = (came.left.unwrap_or(0.0), came.right.unwrap_or(0.0));
    let one_bottle = match doing.place {
        "on_the_way" => chance.happens(0.7),
        "work" => chance.happens(0.15),
        _ => chance.happens(0.02),
    };
    let lost = chance.happens(if (47..=48).contains(&doing.day) { 0.5 } else { 0.015 });
    let later =
        doing.day == story::LAST && doing.place == "work" || doing.day == story::LAST - 1 && doing.second > 21 * 3600;
    let fact = match (one_bottle, lost, later) {
        (_, _, true) => fact.amount_later("amount_left").amount_later("amount_right"),
        (true, true, _) => fact.amount_unknown("amount_together"),
        (true, ..) => fact.milk("amount_together", rounding::milk(left + right)),
        (_, true, _) if chance.happens(0.5) => {
            fact.milk("amount_left", rounding::milk(left)).amount_unknown("amount_right")
        }
        (_, true, _) => fact.amount_unknown("amount_left").amount_unknown("amount_right"),
        // The bottles of a friend, which were marked in ounces.
        _ if (135..=136).contains(&doing.day) => fact
            .milk_in_ounces("amount_left", rounding::to(left / 29.57, 0.25))
            .milk_in_ounces("amount_right", rounding::to(right / 29.57, 0.25)),
        _ => fact.milk("amount_left", rounding::milk(left)).milk("amount_right", rounding::milk(right)),
    };
    fact.yes("settled")
}
