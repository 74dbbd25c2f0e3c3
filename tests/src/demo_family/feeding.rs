//! What Tavi drinks, at the breast or of what was expressed.

use drawwell_core::record::Kind;

use crate::chance::Chance;

use super::{
    curve::along,
    fact::Fact,
    kit,
    milk::Milk,
    rounding,
    routine::Doing,
    story::{self, tavi_weighs},
};

/// A feed at the breast, weighed before and after now and then.
pub(super) fn at_breast(doing: &Doing, number: usize, milk: &mut Milk) -> Fact {
    let mut chance = Chance::on(doing.day, &format!("breast {number}"));
    let day = doing.day as f64;
    const DRINKS: &[(f64, f64)] = &[(36.0, 4.0), (46.0, 14.0), (58.0, 34.0), (90.0, 64.0), (155.0, 88.0)];
    let from_left = milk.left_is_fuller();
    let drunk = milk.drink(along(DRINKS, day) * chance.around(1.0, 0.18), from_left);
    let seconds = chance.whole(8 * 60, 20 * 60);
    let fact = Fact::new(Kind::Session, format!("breast-{}-{number}", story::date(doing.day)))
        .when("started", &story::moment(doing.day, doing.second))
        .when("ended", &story::moment(doing.day, doing.second + seconds))
        .says("method", "at_breast")
        .says("sides", if from_left { "left" } else { "right" })
        .says("child", kit::TAVI)
        .says("where", doing.place);
    let weighed = if doing.day < story::HOME_TOGETHER { 0.7 } else { along(&[(58.0, 0.35), (95.0, 0.05)], day) };
    if !chance.happens(weighed) {
        return fact;
    }
    let before = rounding::to(tavi_weighs(day) + chance.between(60.0, 160.0), 2.0);
    fact.mass("weight_before", before).mass("weight_after", before + rounding::to(drunk * 1.03, 2.0))
}

/// Milk by tube or bottle; not every one is written down.
pub(super) fn given(doing: &Doing, number: usize) -> Option<Fact> {
    let mut chance = Chance::on(doing.day, &format!("given {number}"));
    if !chance.happens(0.72) {
        return None;
    }
    let day = doing.day as f64;
    let share = along(&[(1.0, 30.0), (10.0, 140.0), (58.0, 165.0), (155.0, 140.0)], day);
    let amount = share * tavi_weighs(day) / 1000.0 / 8.0 * chance.around(1.0, 0.05);
    let way = match doing.day {
        early if early < 46 => "tube",
        between if between < 56 && chance.happens(0.6) => "tube",
        after if after < 70 && chance.happens(0.06) => "cup",
        _ => "bottle",
    };
    let milk = match doing.day {
        first if first < 3 => "donor",
        _ if doing.place == "work" || chance.happens(0.3) => "own_stored",
        _ => "own_fresh",
    };
    let fact = Fact::new(Kind::Feed, format!("feed-{}-{number}", story::date(doing.day)))
        .when("at", &story::moment(doing.day, doing.second))
        .says("way", way)
        .says("milk", milk)
        .says("child", kit::TAVI);
    let finely = if doing.day < 50 { rounding::to(amount, 1.0) } else { rounding::to(amount, 5.0) };
    Some(if chance.happens(0.02) { fact.amount_unknown("amount") } else { fact.milk("amount", finely) })
}
