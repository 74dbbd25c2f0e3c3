//! How finely a person reads a scale.

/// An amount of milk in mL: a syringe shows halves, a bottle fives.
pub(super) fn milk(milliliters: f64) -> f64 {
    match milliliters {
        few if few < 6.0 => to(few, 0.5).max(0.5),
        some if some < 20.0 => to(some, 1.0),
        more => to(more, 5.0),
    }
}

/// To the nearest step.
pub(super) fn to(value: f64, step: f64) -> f64 {
    (value / step).round() * step
}
