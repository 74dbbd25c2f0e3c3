//! What the watch said of the days it last looked at. Every screen asks it, and between two
//! sessions it is asked of the same days by the same rules: they are compared whole, so that
//! what is remembered is never of anything else.

use std::cell::RefCell;

use crate::answer::supply::watch::{self, Drop};
use crate::answer::supply::DayProduction;
use crate::guidance::SupplyRules;

/// What was last asked, and what was answered.
#[derive(Debug, Default)]
pub struct Watched(RefCell<Option<Asked>>);

#[derive(Debug)]
struct Asked {
    days: Vec<DayProduction>,
    rules: SupplyRules,
    drop: Option<Drop>,
}

impl Watched {
    /// What the watch says of these days by these rules.
    pub(super) fn now(&self, days: Vec<DayProduction>, rules: &SupplyRules) -> Option<Drop> {
        if let Some(asked) = self.0.borrow().as_ref().filter(|asked| asked.days == days && asked.rules == *rules) {
            return asked.drop.clone();
        }
        let drop = watch::now(&days, rules);
        *self.0.borrow_mut() = Some(Asked { days, rules: *rules, drop: drop.clone() });
        drop
    }
}
