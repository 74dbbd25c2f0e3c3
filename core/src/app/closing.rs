//! What is closed on a screen of somebody who only reads, and what is not there on a desk.

use super::changes::Changes;
use crate::screen::shapes::Screen;
use crate::screen::HasActions;

/// The desk has no places at its foot: the families stand beside it.
pub(super) fn without_places(mut screen: Screen) -> Screen {
    let frame = screen.frame_mut();
    frame.places.clear();
    frame.notices.retain(|notice| notice.key != "caution");
    screen
}

/// Closes every action of a screen that would change a record that is only read.
pub(super) fn closed(mut screen: Screen) -> Screen {
    screen.for_each_action(&mut |action| action.open &= Changes::of(&action.event).only_reads());
    screen
}
