//! Milk against vacuum, for one person: whether more vacuum brought more, within what is
//! comfortable.
//!
//! In: sessions with what was set by hand and what came. Out: a curve that may rise, be flat or
//! bend down, with its range, and what it rests on. Settings are chosen by a person, who may turn
//! up because less came: the answer says so, and that a trial is the way to know. Too much vacuum
//! presses the ducts together (common practice, no source), so that a bend is looked for.

mod adjusted;
mod words;

pub use adjusted::MilkAt;
pub use words::{milk_by_vacuum, ByChoice, MilkByVacuum, Place, Says};
