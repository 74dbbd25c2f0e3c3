//! What to ask before a figure is believed.

use crate::guidance::KitRules;
use crate::quantity::{Entered, Quantity, Unit, Vacuum, VacuumUnit};
use crate::record::Offered;

/// A doubt about what was typed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Doubt {
    /// So low that it may be kPa.
    PerhapsKilopascal {
        /// As it stands.
        read: Vacuum,
        /// What it would be.
        meant: Vacuum,
    },
    /// Higher than pumps go, and in mbar it would be usual.
    PerhapsMillibar {
        /// As it stands.
        read: Vacuum,
        /// What it would be.
        meant: Vacuum,
    },
    /// A price in no currency.
    NoCurrency,
}

impl Doubt {
    /// Whether the vacuum that is stated waits for it.
    pub const fn is_about_vacuum(&self) -> bool {
        matches!(self, Self::PerhapsKilopascal { .. } | Self::PerhapsMillibar { .. })
    }
}

/// What there is to ask; of vacuum nothing once the person said that it is right.
pub fn doubts(offered: &Offered, rules: &KitRules) -> Vec<Doubt> {
    let mut found = Vec::new();
    let top = offered.vacuum.high.as_ref().or(offered.vacuum.low.as_ref());
    found.extend(top.filter(|_| !offered.are_right).and_then(|top| unit(top, rules)));
    if offered.price.as_ref().is_some_and(|price| price.currency.is_none()) {
        found.push(Doubt::NoCurrency);
    }
    found
}

/// A highest vacuum that would be a usual one in another unit.
fn unit(top: &Entered<Vacuum>, rules: &KitRules) -> Option<Doubt> {
    let (read, typed) = (top.quantity(), top.quantity().in_unit(top.unit()));
    let (good_low, good_high) = rules.good;
    if top.unit() != VacuumUnit::Kilopascal && read < rules.likely_kilopascal {
        return Some(Doubt::PerhapsKilopascal { read, meant: Vacuum::of(typed, VacuumUnit::Kilopascal) });
    }
    let in_millibar = Vacuum::of(typed, VacuumUnit::Millibar);
    let usual = in_millibar >= good_low && in_millibar <= good_high;
    let mercury = top.unit() == VacuumUnit::MillimeterOfMercury;
    (mercury && read > rules.likely_millibar && usual).then_some(Doubt::PerhapsMillibar { read, meant: in_millibar })
}

/// The UCUM code that the figures were meant in.
pub fn meant_unit(doubt: &Doubt) -> Option<&'static str> {
    match doubt {
        Doubt::PerhapsKilopascal { .. } => Some(VacuumUnit::Kilopascal.ucum()),
        Doubt::PerhapsMillibar { .. } => Some(VacuumUnit::Millibar.ucum()),
        Doubt::NoCurrency => None,
    }
}
