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

/// What begins a formula, with the wide forms of the four signs.
const FORMULA: [char; 9] = ['=', '+', '-', '@', '＝', '＋', '－', '＠', '\u{2212}'];
/// What stands before it and is trimmed.
const BLANK: [char; 3] = [' ', '\u{a0}', '\u{feff}'];
/// Where a program that reads lists begins another cell, whatever the file says of itself.
const SEPARATES: [char; 6] = [',', ';', '\t', '|', '\r', '\n'];

/// Text that no spreadsheet takes for a formula. Some trim what they read, so that what
/// stands behind blanks counts as standing first; and some part cells at other signs than
/// commas, so that what stands behind any of those counts as standing first, too.
fn harmless(text: String) -> String {
    let mut said = String::with_capacity(text.len());
    let mut rest = text.as_str();
    if text.trim_start_matches(BLANK).starts_with(['\t', '\r', '\n']) {
        said.push('\'');
    }
    loop {
        let end = rest.find(SEPARATES).map_or(rest.len(), |at| at + 1);
        let (part, next) = rest.split_at(end);
        if part.trim_start_matches(BLANK).starts_with(FORMULA) {
            said.push('\'');
        }
        said.push_str(part);
        if next.is_empty() {
            return said;
        }
        rest = next;
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

    // A list in a locale whose comma is decimal parts cells at semicolons; others at tabs or bars.
    #[test]
    fn text_behind_any_sign_that_parts_cells_gets_one_too() {
        for (text, is) in [
            ("a;=1+1", "a;'=1+1"),
            ("a; =1+1", "a;' =1+1"),
            ("a|@x", "a|'@x"),
            ("a,-1", "a,'-1"),
            ("a\t=1", "a\t'=1"),
            ("a\n+1", "a\n'+1"),
            ("a;b|c, d", "a;b|c, d"),
        ] {
            assert_eq!(Cell::Typed(text.to_owned()).text(), is);
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
