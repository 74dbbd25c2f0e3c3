//! The line that leads through the first session.

use super::View;
use crate::trouble::Trouble;

/// What leads through the first session; nothing once there was one.
pub(super) fn lead(view: &View<'_>, key: &str) -> Result<String, Trouble> {
    Ok(match view.journal.latest_sessions(view.now, 2)?.len() {
        0 | 1 => view.words().say(key),
        _ => String::new(),
    })
}
