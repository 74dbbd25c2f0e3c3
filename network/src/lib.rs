#![forbid(unsafe_code)]
//! Many families: what a network of units may ask, and no desk can answer.
//!
//! In: desks' folders, family files and records of those who said yes. Out: reports in which
//! nobody is seen. Data goes one way: a [`source`] is opened, core's answers to one [`family`]
//! become rows of [`table`]s, the [`store`] keeps them, a [`report`] counts them. [`take_in`]
//! does the first three; [`pseudonym`] is all that is left of a name.

pub mod family;
pub mod invented;
pub mod pseudonym;
pub mod report;
pub mod source;
pub mod store;
pub mod table;
pub mod take_in;
pub mod trouble;
