//! What the code on a bottle's label says: the phone's own camera opens that bottle with it.

use percent_encoding::{percent_decode_str, utf8_percent_encode, NON_ALPHANUMERIC};

/// How it begins.
const START: &str = "drawwell:bottle?id=";
/// No id is longer.
const LONGEST: usize = 128;

/// The line of a container.
pub fn write(container: &str) -> String {
    format!("{START}{}", utf8_percent_encode(container, NON_ALPHANUMERIC))
}

/// The container that a line names; none where it is no such line.
pub fn read(line: &str) -> Option<String> {
    let id = line.trim().strip_prefix(START)?;
    let id = percent_decode_str(id).decode_utf8().ok()?;
    (!id.is_empty() && id.len() <= LONGEST).then(|| id.into_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_written_is_read_and_nothing_else() {
        for id in ["phone-00000123", "a:b.c", "Bär"] {
            assert_eq!(read(&write(id)).as_deref(), Some(id));
        }
        for line in [
            "",
            "drawwell:bottle?id=",
            "drawwell:consultant?name=a",
            "bottle?id=a",
            &format!("{START}{}", "a".repeat(129)),
        ] {
            assert_eq!(read(line), None, "{line}");
        }
    }
}
