//! Words of the record's as they stand in rows.

use drawwell_core::answer::pump::{Grade, Verdict};
use drawwell_core::answer::supply::Side;

pub(super) fn grade_name(grade: Option<Grade>) -> &'static str {
    match grade {
        Some(Grade::Personal) => "personal",
        Some(Grade::Hospital) => "hospital",
        Some(Grade::Hand) => "hand",
        None => "unsaid",
    }
}

pub(super) fn verdict_name(verdict: Option<Verdict>) -> &'static str {
    match verdict {
        Some(Verdict::Meets) => "meets",
        Some(Verdict::Below) => "below",
        Some(Verdict::Above) => "above",
        Some(Verdict::CannotTell) | None => "cannot_tell",
    }
}

pub(super) fn side_name(side: Side) -> &'static str {
    match side {
        Side::Left => "left",
        Side::Right => "right",
    }
}
