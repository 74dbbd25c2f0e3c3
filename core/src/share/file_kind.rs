//! What a file is, by how it begins.
//!
//! In: its first bytes. Out: whether it is one of ours, or which of the files that people
//! have it is, so that one that can't be taken is refused by its name and not line by
//! line. Nothing is unpacked and nothing is run to find out.

use super::spreadsheet::Table;
use crate::trouble::Trouble;

/// What a file is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FileKind {
    /// A record in the exchange form, or nothing at all.
    Record,
    /// Text: figures in columns, or anything else.
    Text,
    /// HL7 FHIR, of ours or from elsewhere.
    HealthRecord,
    /// A table that we wrote.
    OwnTable(Table),
    /// The record's own store, an SQLite file.
    Store,
    /// A calendar.
    Calendar,
    /// A sealed file.
    Sealed,
    /// A page to print.
    Page,
    /// A picture.
    Picture,
    /// A packed folder, or a document that is one (spreadsheets, letters).
    Packed,
    /// A page of the web, or XML.
    Markup,
    /// JSON of another program.
    OtherJson,
    /// Bytes that are no text.
    Bytes,
}

/// How files begin that are no text; by their published formats.
const BEGINNINGS: &[(&[u8], FileKind)] = &[
    (b"SQLite format 3\0", FileKind::Store),
    (b"age-encryption.org/", FileKind::Sealed),
    (b"-----BEGIN AGE ENCRYPTED FILE-----", FileKind::Sealed),
    (b"%PDF-", FileKind::Page),
    (b"\x89PNG\r\n", FileKind::Picture),
    (b"\xff\xd8\xff", FileKind::Picture),
    (b"GIF8", FileKind::Picture),
    (b"PK\x03\x04", FileKind::Packed),
    (b"PK\x05\x06", FileKind::Packed),
    (b"\x1f\x8b", FileKind::Packed),
    (b"\xd0\xcf\x11\xe0", FileKind::Packed),
    (b"7z\xbc\xaf", FileKind::Packed),
    (b"BEGIN:VCALENDAR", FileKind::Calendar),
    (b"begin:vcalendar", FileKind::Calendar),
];

/// Tells what a file is from its first bytes; a few thousand of them are enough.
pub fn detect(head: &[u8]) -> FileKind {
    let head = head.strip_prefix(b"\xef\xbb\xbf").unwrap_or(head).trim_ascii_start();
    if let Some((_, is)) = BEGINNINGS.iter().find(|(beginning, _)| head.starts_with(beginning)) {
        return *is;
    }
    let text = String::from_utf8_lossy(head);
    match head.first() {
        None => FileKind::Record,
        Some(b'{' | b'[') => json(&text),
        Some(b'<') => FileKind::Markup,
        Some(_) if head.contains(&0) => {
            if is_wide(head) {
                FileKind::Text
            } else {
                FileKind::Bytes
            }
        }
        Some(_) => match text.lines().next().and_then(Table::of_header) {
            Some(table) => FileKind::OwnTable(table),
            None => FileKind::Text,
        },
    }
}

/// Whether these are figures in UTF-16, as some manometers write them: beside each letter a
/// zero, and nothing else that is no letter.
fn is_wide(head: &[u8]) -> bool {
    let head = head.strip_prefix(b"\xff\xfe").or_else(|| head.strip_prefix(b"\xfe\xff")).unwrap_or(head);
    let letter = |byte: &u8| byte.is_ascii_graphic() || byte.is_ascii_whitespace();
    let letters = head.iter().filter(|byte| letter(byte)).count();
    let zeros = head.iter().filter(|byte| **byte == 0).count();
    // Letters beyond ASCII, such as a degree sign, have no zero.
    letters.abs_diff(zeros) * 20 <= head.len() && (letters + zeros) * 20 >= head.len() * 19
}

fn json(text: &str) -> FileKind {
    // A fact may hold any words, but its own quotes stand bare.
    if text.starts_with('{') && (text.contains("\"fact\"") || text.contains("\"drawwell\"")) {
        FileKind::Record
    } else if text.contains("\"resourceType\"") {
        FileKind::HealthRecord
    } else {
        FileKind::OtherJson
    }
}

impl FileKind {
    /// Why a file of this kind can't be brought in; none for what may be ours.
    pub fn refused(self) -> Option<Trouble> {
        let key = match self {
            Self::Record | Self::Text => return None,
            Self::OwnTable(table) => {
                return Some(Trouble::bad("file", "bad-file-own-table").with("table", table.name()));
            }
            Self::HealthRecord => "bad-file-health-record",
            Self::Store => "bad-file-store",
            Self::Calendar => "bad-file-calendar",
            Self::Sealed => "bad-file-sealed",
            Self::Page => "bad-file-page",
            Self::Picture => "bad-file-picture",
            Self::Packed => "bad-file-packed",
            Self::Markup => "bad-file-markup",
            Self::OtherJson => "bad-file-other-json",
            Self::Bytes => "bad-file-unknown",
        };
        Some(Trouble::bad("file", key))
    }
}
