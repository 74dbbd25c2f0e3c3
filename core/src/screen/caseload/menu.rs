//! What the window's menu offers, in words.

use super::super::shapes::{Action, DeskEvent, Event, Menu, Sign};
use super::super::View;

/// The menu; `watched` is the name of the folder that is watched, or empty.
pub(crate) fn menu(view: &View<'_>, watched: &str) -> Menu {
    let words = view.words();
    let folder = if watched.is_empty() {
        Action::new("watch-folder", words.say("caseload-watch"), Event::OnDesk { event: DeskEvent::WatchFolder })
    } else {
        let said = words.with("caseload-leave-folder", &[("folder", watched.to_owned().into())]);
        Action::new("leave-folder", said, Event::OnDesk { event: DeskEvent::LeaveFolder })
    };
    let pick = Action::new("pick-record", words.say("caseload-pick"), Event::PickRecord).sign(Sign::In);
    Menu { label: words.say("caseload-menu"), actions: vec![pick, folder] }
}
