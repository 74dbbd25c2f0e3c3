//! The invented family whose record people can look around in.
//!
//! In: nothing but a seed that is written here. Out: the same facts on every
//! machine, in the exchange form, and the moment at which that record is
//! looked at. Nobody in it lives or lived; no number in it was measured.
//! Read [`story`] first: it says what happens on which day. [`milk`] is what
//! really comes, [`routine`] is what a day looks like, [`expressing`],
//! [`feeding`], [`growing`], [`upset`], [`visits`], [`checks`], [`traced`], [`tried`], [`keeping`], [`rhythm`] and [`kit`] are what the parent writes down of
//! it.
//!
//! Only sums, products and tables are used, for those come out alike
//! everywhere; sines and exponentials do not.

mod checks;
mod curve;
mod expressing;
mod fact;
mod feeding;
mod form;
mod growing;
mod keeping;
mod kit;
mod marks;
mod milk;
mod rhythm;
mod rounding;
mod routine;
mod story;
mod telling;
mod traced;
mod tried;
mod upset;
mod visits;

pub use fact::Fact;
pub use form::file;
pub use telling::{clock, facts, present};
