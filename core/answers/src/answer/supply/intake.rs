//! Published intake: what children of an age were found to drink. It is a yardstick with a
//! wide range, and no need of one child.

use crate::guidance::{IntakeRange, PublishedIntake, SupplyRules};
use crate::quantity::{Mass, MassUnit, Production, Quantity};

/// The curve of intake was read to this age.
pub const INTAKE_KNOWN_TO_DAYS: i64 = 365;

/// The published curve: 51 − 1.4 d + 180 ln d mL a day at d days (Rios-Leyvraz and Yao 2023,
/// doi:10.1089/bfm.2022.0281); none below one day or beyond the year that it was read to.
pub fn by_age(age_days: i64) -> Option<Production> {
    let days = age_days as f64;
    (1..=INTAKE_KNOWN_TO_DAYS)
        .contains(&age_days)
        .then(|| Production::from_canonical(51.0 - 1.4 * days + 180.0 * days.ln()))
}

/// The published points by weight, in a straight line between them; none outside of them.
pub fn by_weight(age_days: i64, weight: Mass) -> Option<Production> {
    let points = &PublishedIntake::shipped().each_kilogram;
    let each = points.windows(2).find_map(|pair| {
        let [from, to] = pair else { return None };
        (from.day..=to.day).contains(&age_days).then(|| {
            let along = (age_days - from.day) as f64 / (to.day - from.day) as f64;
            from.milliliters + along * (to.milliliters - from.milliliters)
        })
    })?;
    Some(Production::from_canonical(weight.in_unit(MassUnit::Kilogram) * each))
}

/// By the rule for a preterm child up to the day it was due, or where the unit set one.
pub fn by_rule(weight: Mass, rules: &SupplyRules) -> Production {
    Production::from_canonical(weight.in_unit(MassUnit::Kilogram) * rules.need_a_kilogram.canonical())
}

/// A child, as far as its intake is read from it. Ages are whole days.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OfChild {
    /// From birth.
    pub age_days: Option<i64>,
    /// From the day it was due, for one that came before the weeks of the rule.
    pub preterm_age_days: Option<i64>,
    /// A recent weight.
    pub weight: Option<Mass>,
}

/// What an intake rests on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Basis {
    /// The curve by age.
    Age,
    /// The curve by age, counted from the day it was due.
    CorrectedAge,
    /// The rule for each kilogram.
    Rule,
}

/// Published intake of a child.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Intake {
    /// A day.
    pub value: Production,
    /// By weight, where there is a recent one and the age has a point.
    pub by_weight: Option<Production>,
    /// What it rests on.
    pub basis: Basis,
    /// How far children of that age differ, where that was published.
    pub range: Option<&'static IntakeRange>,
}

/// Why there is none.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoIntake {
    /// The birth date is not known.
    NeedsBirth,
    /// A recent weight is needed.
    NeedsWeight,
    /// It is too young: what comes in the first days rises by the hour.
    TooYoung,
    /// Older than the curve was read to: other food counts by then.
    TooOld,
}

/// The curve comes first; the rule by weight is for a preterm child up to the day it was due,
/// or where somebody set it anew (`is_set`).
///
/// # Errors
/// [`NoIntake`]: what is not known of the child.
pub fn of(child: OfChild, rules: &SupplyRules, is_set: bool) -> Result<Intake, NoIntake> {
    let age = child.age_days.ok_or(NoIntake::NeedsBirth)?;
    if age < i64::from(rules.intake_from.get()) {
        return Err(NoIntake::TooYoung);
    }
    let before_due = child.preterm_age_days.is_some_and(|since_due| since_due < 0);
    if before_due || is_set {
        let weight = child.weight.ok_or(NoIntake::NeedsWeight)?;
        return Ok(Intake { value: by_rule(weight, rules), by_weight: None, basis: Basis::Rule, range: None });
    }
    let (day, basis) = match child.preterm_age_days {
        Some(since_due) => (since_due.max(i64::from(rules.intake_from.get())), Basis::CorrectedAge),
        None => (age, Basis::Age),
    };
    Ok(Intake {
        value: by_age(day).ok_or(NoIntake::TooOld)?,
        by_weight: child.weight.and_then(|weight| by_weight(day, weight)),
        basis,
        range: PublishedIntake::shipped().range_at(day),
    })
}
