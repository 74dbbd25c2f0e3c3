#![forbid(unsafe_code)]
//! Core.
pub mod screen { //! s
  pub mod shapes; }
