//! One cell, as it is written.

use crate::quantity::say_decimal;

/// Places of a figure: enough to give any unit's typed figures back.
const PLACES: usize = 4;

/// What stands in a cell.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Cell {
    /// Nothing was said, or nobody knows.
    Blank,
    /// Words that a person typed.
    Typed(String),
    /// A word, an id or a time of the program's own.
    Own(String),
    /// A figure.
    Figure(f64),
}

impl Cell {
    /// A cell with words of our own where there are any.
    pub(super) fn own(word: Option<impl Into<String>>) -> Self {
        word.map_or(Self::Blank, |word| Self::Own(word.into()))
    }

    /// The text of the cell.
    pub(super) fn text(self) -> String {
        match self {
            Self::Blank => String::new(),
            Self::Figure(value) => say_decimal(value, PLACES),
            // Ids come in with files, too: they are no safer than what is typed.
            Self::Typed(text) | Self::Own(text) => harmless(text),
        }
    }
}

/// Text that no spreadsheet takes for a formula. Some trim what they read, so that what
/// stands behind blanks counts as standing first; wide signs count as their narrow ones.
fn harmless(text: String) -> String {
    let begins = text.trim_start_matches([' ', '\u{a0}', '\u{feff}']);
    let formula = begins.starts_with(['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠', '\u{2212}']);
    if formula {
        format!("'{text}")
    } else {
        text
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // OWASP, CSV Injection: cells that begin with = + - @ tab, carriage return or line
    // feed, and the full-width forms of the four signs.
    #[test]
    fn text_that_begins_as_a_formula_does_gets_an_apostrophe() {
        for text in ["=1+1", "+1", "-1", "@x", "\tx", "\rx", "\nx", " =1", "＝1", "＋1", "－1", "＠x", "-"] {
            assert_eq!(Cell::Typed(text.to_owned()).text(), format!("'{text}"));
        }
    }

    #[test]
    fn other_text_and_numbers_stay_as_they_are() {
        assert_eq!(Cell::Typed("1-1=0 @home".to_owned()).text(), "1-1=0 @home");
        assert_eq!(Cell::Figure(-12.5).text(), "-12.5", "a negative number is no formula");
        assert_eq!(Cell::Figure(0.0).text(), "0");
        assert_eq!(Cell::Blank.text(), "", "unknown is empty and not 0");
    }
}
