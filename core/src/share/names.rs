//! Names and lines that somebody else wrote: signs that turn the reading round or break the
//! line make a name look like another.

/// Shown for a sign that is not drawn.
const SHOWN: char = '\u{fffd}';

/// Whether a sign is not drawn but changes how others are: controls, line breaks, and those
/// that set the direction of reading (Unicode UAX #9), or have no width.
pub fn is_hidden(sign: char) -> bool {
    sign.is_control()
        || matches!(sign, '\u{61c}' | '\u{200b}' | '\u{200e}' | '\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2060}'..='\u{206f}' | '\u{feff}')
}

/// A name as it leaves: without what is not drawn.
pub fn leaves(name: &str) -> String {
    name.chars().filter(|sign| !is_hidden(*sign)).collect::<String>().trim().to_owned()
}

/// A name as it is shown: what is not drawn is seen to be there.
pub fn shown(name: &str) -> String {
    name.trim().chars().map(|sign| if is_hidden(sign) { SHOWN } else { sign }).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    // Unicode UAX #9: the right-to-left override turns what follows it round.
    #[test]
    fn what_turns_a_name_round_is_seen_here_and_stripped_from_what_leaves() {
        for name in ["Ada\u{202e}hsraM", "Ada\nMarsh", "Ada\u{2066}Marsh\u{2069}", "A\u{200b}da"] {
            assert!(shown(name).contains(SHOWN) && !shown(name).chars().any(is_hidden), "{name:?}");
            assert!(!leaves(name).chars().any(is_hidden) && !leaves(name).contains(SHOWN), "{name:?}");
        }
        for name in ["Ada Marsh", "\u{5d0}\u{5d3}\u{5d4}", "Zo\u{eb} \u{1f319}"] {
            assert_eq!((shown(name), leaves(name)), (name.to_owned(), name.to_owned()));
        }
    }
}
