//! Against what a pump's highest vacuum is held.

use crate::guidance::KitRules;
use crate::quantity::{Entered, Vacuum};
use crate::record::{text, Fields};

/// What a pump is made for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Grade {
    /// One person's own.
    Personal,
    /// Shared by many.
    Hospital,
    /// Worked by hand.
    Hand,
}

impl Grade {
    /// The grade of this name.
    pub fn named(name: &str) -> Option<Self> {
        match name {
            "personal" => Some(Self::Personal),
            "hospital" => Some(Self::Hospital),
            "hand" => Some(Self::Hand),
            _ => None,
        }
    }
}

/// Whose range it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Whose {
    /// The maker's, for this pump.
    Maker,
    /// What its grade usually reaches (common practice, no source).
    Grade(Grade),
    /// What is held good for any (common practice, no source).
    Any,
}

/// A range for the highest vacuum; either end may be open.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits {
    /// From here on.
    pub low: Option<Vacuum>,
    /// Up to here.
    pub high: Option<Vacuum>,
    /// Where its grade usually ends; nothing is wrong above it.
    pub usually_to: Option<Vacuum>,
    /// Whose range it is.
    pub whose: Whose,
}

/// What a pump's record says its grade is.
pub fn grade(pump: &Fields) -> Option<Grade> {
    Grade::named(text(pump, "grade")?)
}

impl Limits {
    /// The maker's range where it was written down, else what its grade usually
    /// reaches, else what is held good for any pump.
    pub fn of(pump: &Fields, rules: &KitRules) -> Self {
        let stated = |key: &str| pump.get(key).and_then(Entered::<Vacuum>::from_json).map(|e| e.quantity());
        let (low, high) = (stated("maximum_vacuum_low"), stated("maximum_vacuum_high"));
        if low.is_some() || high.is_some() {
            return Self { low, high, usually_to: None, whose: Whose::Maker };
        }
        let by_grade = |grade: Grade, (low, top): (Vacuum, Vacuum)| Self {
            low: Some(low),
            high: None,
            usually_to: Some(top),
            whose: Whose::Grade(grade),
        };
        match grade(pump) {
            Some(Grade::Personal) => by_grade(Grade::Personal, rules.personal),
            Some(Grade::Hospital) => by_grade(Grade::Hospital, rules.hospital),
            Some(Grade::Hand) | None => {
                Self { low: Some(rules.good.0), high: Some(rules.good.1), usually_to: None, whose: Whose::Any }
            }
        }
    }
}
