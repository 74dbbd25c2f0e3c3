//! Whether a pump's own figures bear out what it is called.

use super::reaches::reaches;
use super::says::{Claim, Found, Says};
use crate::answer::pump::Grade;
use crate::guidance::KitRules;
use crate::record::Offered;

/// What it is called to be.
pub(super) fn grade(offered: &Offered) -> Option<Grade> {
    offered.grade.as_deref().and_then(Grade::named)
}

/// A hospital grade is for several people and reaches 300 mmHg and more; a personal one reaches 250 (common
/// practice, no source). A hand pump is held to neither.
pub(super) fn claim(offered: &Offered, rules: &KitRules) -> (Found, Says) {
    let grade = grade(offered);
    let low = match grade {
        None => return (Found::NotStated, Says::NoClaim),
        Some(Grade::Hand) => return (Found::NothingWanted, Says::Claim(Claim { grade: Grade::Hand, reaches: None })),
        Some(Grade::Hospital) if offered.for_several == Some(false) => {
            return (Found::DoesNot, Says::HospitalForOne);
        }
        Some(Grade::Hospital) => rules.hospital.0,
        Some(Grade::Personal) => rules.personal.0,
    };
    let reaches = reaches(&offered.vacuum, |vacuum| vacuum >= low);
    let claim = Claim { grade: grade.unwrap_or(Grade::Personal), reaches: Some(reaches) };
    (Found::of(reaches), Says::Claim(claim))
}
