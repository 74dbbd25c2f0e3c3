//! The consultant's desk: families in order, what she keeps of each, her own kit and card.

mod card;
mod case;
mod desk;
mod finding;
mod list;
mod menu;
mod removing;
mod row;

pub(super) use card::show as show_card;
pub(super) use case::show as show_case;
pub(super) use desk::show as show_desk;
pub(crate) use finding::{finding, Sought, FIND};
pub(crate) use list::{list, Chosen};
pub(crate) use menu::menu;
pub(super) use removing::show as show_removing;
pub(crate) use row::Row;
