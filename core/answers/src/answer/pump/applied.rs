//! What was applied against what was set, and what height and kind of pump add.

use super::Grade;
use crate::guidance::KitRules;
use crate::quantity::{AirPressure, Quantity, Share, Vacuum};
use crate::record::{ambient, GaugeCheck, Reading};

/// What was typed is exact; what was converted is not, by this much in mmHg.
const CONVERTED: f64 = 1e-6;

/// A reading that is further from what was set than the rule allows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NotDelivered {
    /// What was set.
    pub set: Vacuum,
    /// What was read.
    pub read: Vacuum,
}

/// Whether applied and set vacuum lie further apart than the rule allows: 20 mmHg
/// passes, 20.1 does not (BMC Pregnancy Childbirth 2020;20:516,
/// doi:10.1186/s12884-020-03191-5).
pub fn not_delivered(reading: &Reading, rules: &KitRules) -> Option<NotDelivered> {
    let set = reading.set.as_ref()?.quantity();
    let read = reading.vacuum.quantity();
    let apart = (read.canonical() - set.canonical()).abs();
    (apart > rules.set_apart.canonical() + CONVERTED).then_some(NotDelivered { set, read })
}

/// Whether a hand pump carries the note on its exemption: above 250 mmHg it does,
/// at 250 it does not (21 CFR 884.5150). A limit of paperwork, not of safety.
pub fn beyond_hand_exemption(grade: Option<Grade>, reading: Vacuum, rules: &KitRules) -> bool {
    grade == Some(Grade::Hand) && reading.canonical() > rules.hand_exemption.canonical() + CONVERTED
}

/// What the height above the sea could explain. Nothing is corrected by it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Height {
    /// The pressure of the air there.
    pub air: AirPressure,
    /// How much of the pressure at sea level that is.
    pub share: Share,
    /// What a pump that holds a share of the air's pressure, and reads this here,
    /// would read at sea level. One that holds its vacuum would read the same.
    pub at_sea_level: Vacuum,
}

/// Where the air or the height was written down, what it could explain.
pub fn height(check: &GaugeCheck, reading: Vacuum) -> Option<Height> {
    let air = check.air.or_else(|| check.altitude.map(ambient::standard))?;
    let share = ambient::share_of_sea_level(air);
    (share.fraction() > 0.0).then(|| Height {
        air,
        share,
        at_sea_level: Vacuum::from_canonical(reading.canonical() / share.fraction()),
    })
}
