//! Milk that is kept: what there is and until when it is good, one container, what to use first, and
//! where a session's milk goes.
//!
//! What there is comes from [`crate::gather::keeping`]. [`page`] is all of it, with the [`shelf`] as a
//! picture; [`container`] is one, [`use_first`] what to take for an amount; [`filling`] asks after a
//! session where its milk goes, [`notice`] says what lapses; [`cleaning`] is the list to tick; [`text`]
//! has the words they share. Nothing here says that milk is safe: it says what the rules in force say.

mod cleaning;
mod container;
mod filling;
mod notice;
mod page;
mod shelf;
mod text;
mod use_first;

pub(super) use container::show as show_container;
pub(super) use filling::row as keep_row;
pub(super) use notice::{action as kept_action, notice as kept_notice};
pub(super) use page::show;
pub(super) use use_first::show as show_use_first;
