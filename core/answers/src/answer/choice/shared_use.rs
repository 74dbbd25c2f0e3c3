//! What becomes of a pump that others had, or have beside.

use super::motor::for_one;
use super::says::{Found, Says};
use crate::record::Offered;

/// One made for one person is not shared, and milk must not reach the motor of one that is (common practice,
/// no source).
pub(super) fn shared_use(offered: &Offered) -> (Found, Says) {
    if !offered.is_shared() {
        return (Found::NothingWanted, if offered.how.is_some() { Says::NotShared } else { Says::HowNotStated });
    }
    match (for_one(offered), offered.closed) {
        (Some(true), _) => (Found::DoesNot, Says::SharedForOne),
        (_, Some(false)) => (Found::DoesNot, Says::SharedOpen),
        (Some(false), Some(true)) => (Found::Fits, Says::SharedForSeveral),
        _ => (Found::NotStated, Says::SharedUnknown),
    }
}
