//! The lines of the table: what a pump offers against what is wanted, each by its rule.

use super::doubts::{doubts, Doubt};
use super::grade::{claim, grade};
use super::motor::motor;
use super::reaches::{reaches, Reaches};
use super::says::{Aspect, CyclesAre, Found, Line, Says, Strength};
use super::shared_use::shared_use;
use crate::answer::pump::Grade;
use crate::guidance::KitRules;
use crate::quantity::{Speed, Vacuum};
use crate::record::offered::SettingsApart;
use crate::record::wanted::MustRun;
use crate::record::{Offered, Stated, Wanted};

/// How strong a pump gets by what it states. A hand pump has no motor that could be weak.
pub fn of_stated_vacuum(stated: &Stated<Vacuum>, grade: Option<Grade>, rules: &KitRules) -> Strength {
    let (good_low, good_high) = rules.good;
    let strong_from = if grade == Some(Grade::Hand) { good_low } else { rules.personal.0 };
    Strength {
        good: reaches(stated, |vacuum| vacuum >= good_low),
        no_weak: reaches(stated, |vacuum| vacuum >= strong_from),
        beyond: reaches(stated, |vacuum| vacuum > good_high),
    }
}

/// Every line of a pump, in the order of the table.
pub fn lines(offered: &Offered, wanted: &Wanted, rules: &KitRules) -> Vec<Line> {
    // A figure that may be in another unit says nothing yet.
    let in_doubt = doubts(offered, rules).iter().any(Doubt::is_about_vacuum);
    let by_vacuum = |answer: (Found, Says)| if in_doubt { (Found::CannotTell, Says::AskFirst) } else { answer };
    let by_hand = grade(offered) == Some(Grade::Hand);
    Aspect::ALL
        .into_iter()
        .map(|aspect| {
            let (found, says) = match aspect {
                Aspect::Grade => by_vacuum(claim(offered, rules)),
                Aspect::Strength => by_vacuum(strength(offered, wanted, rules)),
                Aspect::MostMilk => by_vacuum(most_milk(offered, wanted, rules)),
                Aspect::Cycles | Aspect::SetApart | Aspect::Stimulation if by_hand => {
                    (Found::NothingWanted, Says::ByHand)
                }
                Aspect::Cycles => cycles(&offered.cycles, rules),
                Aspect::SetApart => set_apart(offered),
                Aspect::Stimulation => {
                    let found = wanted_and(wanted.letdown_needs_more, offered.stimulation);
                    (found, Says::Stimulation(offered.stimulation))
                }
                Aspect::BothAtOnce => {
                    (wanted_and(wanted.both_at_once, offered.both_at_once), Says::BothAtOnce(offered.both_at_once))
                }
                Aspect::Runs => runs(offered, wanted),
                Aspect::Motor => motor(offered, wanted, rules),
                Aspect::SharedUse => shared_use(offered),
            };
            Line { aspect, found, says }
        })
        .collect()
}

/// Something that a pump has or has not, where it is wanted.
fn wanted_and(wanted: bool, has: Option<bool>) -> Found {
    match (wanted, has) {
        (false, _) => Found::NothingWanted,
        (true, Some(true)) => Found::Fits,
        (true, Some(false)) => Found::DoesNot,
        (true, None) => Found::NotStated,
    }
}

/// 220 to 350 mmHg is good for any pump; under 250 a motor is a weaker one, which is enough for some in the
/// first weeks, works harder and wears sooner with daily use (common practice, no source).
fn strength(offered: &Offered, wanted: &Wanted, rules: &KitRules) -> (Found, Says) {
    let strength = of_stated_vacuum(&offered.vacuum, grade(offered), rules);
    let daily = wanted.often.is_some_and(|often| often.is_daily());
    let found = match strength.good {
        Reaches::Yes if daily => Found::of(strength.no_weak),
        good => Found::of(good),
    };
    (found, Says::Strength { strength, daily })
}

/// Above 300 mmHg for nearly all of a child's milk, or a long stay on a neonatal unit (common practice, no source).
fn most_milk(offered: &Offered, wanted: &Wanted, rules: &KitRules) -> (Found, Says) {
    let above = reaches(&offered.vacuum, |vacuum| vacuum > rules.most_above);
    let found = match wanted.often.is_some_and(|often| often.is_most()) {
        true => Found::of(above),
        false => Found::NothingWanted,
    };
    (found, Says::MostMilk(above))
}

/// 40 to 70 cycles per minute are usual (common practice, no source).
fn cycles(stated: &Stated<Speed>, rules: &KitRules) -> (Found, Says) {
    let usual = rules.usual_cycles;
    let (found, are) = match (stated.least(), stated.most()) {
        (None, None) => (Found::NotStated, CyclesAre::NotStated),
        (Some(low), _) if low > usual.high => (Found::DoesNot, CyclesAre::NoneOfThem),
        (_, Some(high)) if high < usual.low => (Found::DoesNot, CyclesAre::NoneOfThem),
        (Some(low), Some(high)) if low <= usual.low && high >= usual.high => (Found::Fits, CyclesAre::AllOfThem),
        (Some(_), Some(_)) => (Found::Partly, CyclesAre::SomeOfThem),
        _ => (Found::CannotTell, CyclesAre::OneEnd),
    };
    (found, Says::Cycles(are))
}

/// Two settings that can be changed apart (common practice, no source).
fn set_apart(offered: &Offered) -> (Found, Says) {
    let found = match offered.apart {
        None => Found::NotStated,
        Some(SettingsApart::Apart) => Found::Fits,
        Some(_) => Found::DoesNot,
    };
    (found, Says::SetApart(offered.apart))
}

fn runs(offered: &Offered, wanted: &Wanted) -> (Found, Says) {
    let does = match wanted.runs {
        None => None,
        Some(MustRun::Mains) => offered.mains,
        Some(MustRun::Battery) => offered.battery,
        Some(MustRun::InClothes) => offered.in_clothes,
    };
    (wanted_and(wanted.runs.is_some(), does), Says::Runs { wanted: wanted.runs, does })
}
