//! A level on the dial in mmHg, wherever a session shows one.

use crate::answer::pump::levels::LevelPull;
use crate::screen::View;

/// A level's vacuum in words: about so much, with its range, and whether it lies
/// between levels that were read.
pub(in crate::screen) fn level_text(view: &View<'_>, pull: &LevelPull) -> String {
    let words = view.words();
    words.with(
        if pull.was_read() { "level-read" } else { "level-between" },
        &[
            ("value", words.vacuum(pull.vacuum.value).into()),
            ("range", words.vacuum_range(pull.vacuum.low, pull.vacuum.high).into()),
        ],
    )
}
