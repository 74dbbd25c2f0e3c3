//! How a stated range stands to a limit.

use crate::quantity::Vacuum;
use crate::record::Stated;

/// What a stated range says of a limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reaches {
    /// All of what is stated reaches it.
    Yes,
    /// The upper part of what is stated reaches it.
    Partly,
    /// None of what is stated reaches it.
    No,
    /// Only the lower end is stated, and it lies below.
    OpenAbove,
    /// Nothing is stated.
    NotStated,
}

/// Whether a stated highest vacuum reaches a limit, which it does from some vacuum on. A sheet
/// that names one figure means that the pump reaches it.
pub fn reaches(stated: &Stated<Vacuum>, limit: impl Fn(Vacuum) -> bool) -> Reaches {
    match (stated.least(), stated.most()) {
        (None, None) => Reaches::NotStated,
        (Some(low), _) if limit(low) => Reaches::Yes,
        (Some(_), None) => Reaches::OpenAbove,
        (None, Some(high)) if limit(high) => Reaches::Yes,
        (Some(_), Some(high)) if limit(high) => Reaches::Partly,
        (_, Some(_)) => Reaches::No,
    }
}
