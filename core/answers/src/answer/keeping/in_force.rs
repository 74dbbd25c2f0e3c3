//! Which rules are in force: a table for home steps back for a child that is not at home.

use crate::guidance::KeepingRules;

/// Why a table for home steps back.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum StepsBack {
    /// A child is in hospital.
    InHospital,
    /// A child came before 37 weeks.
    Preterm,
    /// A child's defences are weak.
    WeakDefences,
    /// The unit's rules were chosen, and are not entered.
    NotEntered,
}

/// The rules in force.
#[derive(Debug, Clone, PartialEq)]
pub enum InForce {
    /// These.
    Rules(Box<KeepingRules>),
    /// The unit's own, which are not entered.
    StepsBack(StepsBack),
}

impl InForce {
    /// The rules, where there are any.
    pub fn rules(&self) -> Option<&KeepingRules> {
        match self {
            Self::Rules(rules) => Some(rules),
            Self::StepsBack(_) => None,
        }
    }
}

/// The rules in force: those that somebody chose by name; else the unit's where any child needs them;
/// else those for home. Somebody who chose a table for home for such a child has the last word.
pub fn in_force(chosen: Option<&str>, unit: Option<&KeepingRules>, needs_unit: Option<StepsBack>) -> InForce {
    let of_unit = |why: StepsBack| match unit {
        Some(unit) => InForce::Rules(Box::new(unit.clone())),
        None => InForce::StepsBack(why),
    };
    let shipped = KeepingRules::shipped();
    let named = chosen.and_then(|chosen| shipped.iter().find(|set| set.key == chosen));
    match (chosen, named, needs_unit) {
        (_, Some(set), _) => InForce::Rules(Box::new(set.clone())),
        (Some("unit"), None, why) => of_unit(why.unwrap_or(StepsBack::NotEntered)),
        (_, None, Some(why)) => of_unit(why),
        (_, None, None) => match shipped.into_iter().next() {
            Some(home) => InForce::Rules(Box::new(home)),
            None => InForce::StepsBack(StepsBack::NotEntered),
        },
    }
}
