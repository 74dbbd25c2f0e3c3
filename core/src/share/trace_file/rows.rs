//! A stream cut into lines of bounded length.

use std::io::{BufRead, Read};

use crate::trouble::{Kind, Trouble};

/// What is read of a line; the rest of a longer one is passed over.
const LONGEST_ROW: usize = 2_048;

/// Lines of a stream, one at a time.
pub(super) struct Rows<'f> {
    file: &'f mut dyn BufRead,
    bytes: Vec<u8>,
    number: u64,
}

/// One line.
pub(super) struct Row<'r> {
    /// From 1.
    pub(super) number: u64,
    /// Empty where it is not text.
    pub(super) text: &'r str,
}

impl<'f> Rows<'f> {
    pub(super) fn of(file: &'f mut dyn BufRead) -> Self {
        Self { file, bytes: Vec::with_capacity(LONGEST_ROW), number: 0 }
    }

    /// The next line; None at the end.
    pub(super) fn next(&mut self) -> Result<Option<Row<'_>>, Trouble> {
        self.bytes.clear();
        if self.read_part()? == 0 {
            return Ok(None);
        }
        while !self.bytes.ends_with(b"\n") {
            let kept = self.bytes.len().min(LONGEST_ROW);
            self.bytes.truncate(kept);
            if self.read_part()? == 0 {
                break;
            }
        }
        self.number += 1;
        // A file in UTF-16 is the same figures with zeros between.
        if self.bytes.contains(&0) {
            self.bytes.retain(|byte| *byte != 0);
        }
        // What is not UTF-8 (a degree sign, a µ) stands in words, not in figures.
        if !self.bytes.is_ascii() && std::str::from_utf8(&self.bytes).is_err() {
            self.bytes.iter_mut().filter(|byte| !byte.is_ascii()).for_each(|byte| *byte = b'?');
        }
        let text = std::str::from_utf8(&self.bytes).unwrap_or_default();
        let text = text.trim_start_matches(['\u{feff}', '?']).trim_matches(['\r', '\n']);
        Ok(Some(Row { number: self.number, text }))
    }

    /// Up to the end of a line, but no further than a row may be long.
    fn read_part(&mut self) -> Result<usize, Trouble> {
        let part = (&mut *self.file).take(LONGEST_ROW as u64).read_until(b'\n', &mut self.bytes);
        part.map_err(|_| Trouble::new(Kind::Missing, "trouble-cannot-read-file"))
    }
}
