//! Whether the flange is to be looked at before the vacuum.

use crate::answer::flange_fit::{InUse, Points, Sign};
use crate::guidance::ComfortRules;
use crate::quantity::{Count, Level};

/// The dial stands at its top in many sessions.
#[derive(Debug, Clone, PartialEq)]
pub struct FlangeFirst {
    /// The highest level of the dial.
    pub top: Level,
    /// In so many of the latest sessions.
    pub at_top: Count,
    /// Out of so many.
    pub of: Count,
    /// Whether the flange is wider than the range for the nipple.
    pub too_wide: bool,
    /// Signs that point to another flange.
    pub signs: Vec<Sign>,
    /// What else could be the cause.
    pub beside: [OtherCause; 2],
}

/// What else makes a dial stand at its top.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum OtherCause {
    /// A valve or membrane that leaks.
    WornValve,
    /// A pump that pulls less than it should.
    WeakPump,
}

/// Looks at the flange before the vacuum: the strongest level that was set by hand in each of the
/// latest sessions that say one, the latest first; how the flange in use stands to the
/// range for the nipple; and what signs of fit were seen. That a flange which is too big needs the
/// pump's highest vacuum is common practice, no source. One level below the top is not the top.
pub fn flange_first(
    strongest: &[Level],
    top: Option<Level>,
    in_use: Option<InUse>,
    signs: &[Sign],
    rules: &ComfortRules,
) -> Option<FlangeFirst> {
    let top = top.filter(|top| top.get() > 1)?;
    let latest = strongest.get(..strongest.len().min(rules.suspect_of.get() as usize))?;
    let at_top = latest.iter().filter(|level| **level >= top).count() as u32;
    let too_wide = in_use == Some(InUse::Larger);
    let signs: Vec<Sign> = signs.iter().copied().filter(|sign| sign.points() != Points::Larger).collect();
    let fires = at_top >= rules.suspect_in.get() && (too_wide || !signs.is_empty());
    fires.then_some(FlangeFirst {
        top,
        at_top: Count::new(at_top),
        of: Count::new(latest.len() as u32),
        too_wide,
        signs,
        beside: [OtherCause::WornValve, OtherCause::WeakPump],
    })
}
