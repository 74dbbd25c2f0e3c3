//! A stream cut into lines of bounded length.

use std::io::{BufRead, ErrorKind};

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
        let mut any = false;
        loop {
            let there = match self.file.fill_buf() {
                Ok(there) => there,
                Err(error) if error.kind() == ErrorKind::Interrupted => continue,
                Err(_) => return Err(Trouble::new(Kind::Missing, "trouble-cannot-read-file")),
            };
            if there.is_empty() {
                break;
            }
            any = true;
            let end = memory_position(there);
            let part = there.get(..end.unwrap_or(there.len())).unwrap_or(there);
            let room = LONGEST_ROW.saturating_sub(self.bytes.len()).min(part.len());
            self.bytes.extend_from_slice(part.get(..room).unwrap_or_default());
            let used = end.map_or(there.len(), |at| at + 1);
            self.file.consume(used);
            if end.is_some() {
                break;
            }
        }
        if !any {
            return Ok(None);
        }
        self.number += 1;
        // A file in UTF-16 is the same figures with zeros between.
        if self.bytes.contains(&0) {
            self.bytes.retain(|byte| *byte != 0);
        }
        // What is not UTF-8 (a degree sign, a µ) stands in words, not in figures.
        if std::str::from_utf8(&self.bytes).is_err() {
            self.bytes.iter_mut().filter(|byte| !byte.is_ascii()).for_each(|byte| *byte = b'?');
        }
        let text = std::str::from_utf8(&self.bytes).unwrap_or_default();
        let text = text.trim_start_matches(['\u{feff}', '?']).trim_matches(['\r', '\n']);
        Ok(Some(Row { number: self.number, text }))
    }
}

fn memory_position(bytes: &[u8]) -> Option<usize> {
    bytes.iter().position(|byte| *byte == b'\n')
}
