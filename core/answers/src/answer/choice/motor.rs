//! Whether a motor lasts as long as it is needed.

use super::grade::grade;
use super::says::{Found, Says};
use crate::answer::pump::Grade;
use crate::guidance::KitRules;
use crate::record::{Offered, Wanted};
use crate::time::Span;

/// Whether a pump is made for one person, by its grade or as its sheet says; None where neither says.
pub(super) fn for_one(offered: &Offered) -> Option<bool> {
    let by_grade = match grade(offered) {
        Some(Grade::Hospital) => Some(false),
        Some(Grade::Personal | Grade::Hand) => Some(true),
        None => None,
    };
    offered.for_several.map(|several| !several).or(by_grade)
}

/// A personal grade motor lasts two to three years (common practice, no source). One that others had has run
/// for hours that nobody stated.
pub(super) fn motor(offered: &Offered, wanted: &Wanted, rules: &KitRules) -> (Found, Says) {
    let hand = grade(offered) == Some(Grade::Hand);
    let (from, to) = rules.motor_life;
    let warranty = offered
        .warranty_months
        .map(|months| Span::hours((f64::from(months.get()) * crate::guidance::MONTH_HOURS).round() as i64));
    let covers = warranty.zip(wanted.planned).map(|(warranty, planned)| warranty >= planned);
    let says = Says::Motor { for_one: for_one(offered), covers, warranty: offered.warranty_months };
    let found = match (for_one(offered), wanted.planned) {
        (_, None) => Found::NothingWanted,
        _ if hand => Found::NothingWanted,
        (Some(false), Some(_)) => Found::NothingWanted,
        (None, Some(_)) => Found::NotStated,
        (Some(true), Some(planned)) if planned > to => Found::DoesNot,
        (Some(true), Some(_)) if offered.had_before() => Found::CannotTell,
        (Some(true), Some(planned)) if planned > from => Found::Partly,
        (Some(true), Some(_)) => Found::Fits,
    };
    (found, says)
}
