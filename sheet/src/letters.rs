//! The letters that are bundled, and what becomes of signs that they do not hold.
//!
//! Atkinson Hyperlegible Next is the app's own; the four files are those the shell
//! carries. Noto Sans (Greek, Cyrillic and more Latin), Noto Sans Arabic and Noto Sans
//! Hebrew stand in for names it has no letters for. Whatever none of them holds, such
//! as emoji and the scripts of East Asia, is drawn as one [`STANDS_FOR`] sign a run.

use std::sync::OnceLock;

use serde_json::Value;
use typst::foundations::Bytes;
use typst::text::Font;

macro_rules! typeface {
    ($file:literal) => {
        include_bytes!(concat!("../../app-shell/ui/src/main/resources/drawwell/typefaces/", $file)) as &[u8]
    };
}

const FILES: [&[u8]; 7] = [
    typeface!("AtkinsonHyperlegibleNext_400Regular.ttf"),
    typeface!("AtkinsonHyperlegibleNext_500Medium.ttf"),
    typeface!("AtkinsonHyperlegibleNext_600SemiBold.ttf"),
    typeface!("AtkinsonHyperlegibleNext_700Bold.ttf"),
    include_bytes!("../fonts/NotoSans_400Regular.ttf"),
    include_bytes!("../fonts/NotoSansArabic_400Regular.ttf"),
    include_bytes!("../fonts/NotoSansHebrew_400Regular.ttf"),
];

/// Signs that may stand for what cannot be drawn; the first that there is.
const STANDS_FOR: [char; 5] = ['\u{25a1}', '\u{25af}', '\u{25c7}', '\u{25ca}', '\u{2217}'];

/// The bundled letters, read once.
pub(crate) fn fonts() -> &'static [Font] {
    static FONTS: OnceLock<Vec<Font>> = OnceLock::new();
    FONTS.get_or_init(|| FILES.iter().flat_map(|file| Font::iter(Bytes::new(*file))).collect())
}

fn drawn(sign: char) -> bool {
    fonts().iter().any(|font| font.info().coverage.contains(u32::from(sign)))
}

/// Signs that are not seen themselves: where no letters hold them they are dropped.
fn unseen(sign: char) -> bool {
    matches!(sign,
        '\u{ad}' | '\u{34f}' | '\u{61c}' | '\u{180b}'..='\u{180f}' | '\u{200b}'..='\u{200f}' | '\u{2060}'..='\u{206f}'
        | '\u{fe00}'..='\u{fe0f}' | '\u{feff}' | '\u{1f3fb}'..='\u{1f3ff}' | '\u{e0000}'..='\u{e0fff}')
}

/// Signs that would turn the reading of what stands around a name.
fn turns(sign: char) -> bool {
    matches!(sign, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

fn stands_for() -> char {
    STANDS_FOR.into_iter().find(|sign| drawn(*sign)).unwrap_or('*')
}

/// A text of which every sign can be drawn, and whether anything had to be stood for.
fn plain(text: &str) -> (String, bool) {
    let stands_for = stands_for();
    let (mut out, mut any, mut within) = (String::with_capacity(text.len()), false, false);
    for sign in text.chars() {
        match sign {
            '\n' if out.ends_with('\n') => continue,
            '\n' => out.push('\n'),
            '\t' => out.push(' '),
            sign if sign.is_control() || turns(sign) => continue,
            // What joins a run of signs that are stood for belongs to it.
            sign if unseen(sign) && (within || !drawn(sign)) => continue,
            sign if drawn(sign) => out.push(sign),
            _ if within => continue,
            _ => {
                out.push(stands_for);
                (any, within) = (true, true);
                continue;
            }
        }
        within = false;
    }
    (out, any)
}

/// Where the data says what the sign means that stands for others; it keeps that only
/// where there is such a sign.
const MEANING: &str = "undrawn_words";
/// What stands in there for the sign itself.
const SIGN: &str = "{sign}";

/// Makes every text of the data one that can be drawn.
pub(crate) fn only_what_can_be_drawn(data: &mut Value) {
    let meaning = data.get(MEANING).and_then(Value::as_str).map(|words| words.replace(SIGN, &stands_for().to_string()));
    let any = every_text(data);
    if let Some(object) = data.as_object_mut() {
        let said = meaning.filter(|_| any).unwrap_or_default();
        object.insert(MEANING.to_owned(), Value::String(said));
    }
}

/// True where a sign had to be stood for.
fn every_text(data: &mut Value) -> bool {
    match data {
        Value::String(text) => {
            let (drawn, any) = plain(text);
            *text = drawn;
            any
        }
        Value::Array(all) => each(all.iter_mut()),
        Value::Object(all) => each(all.iter_mut().map(|(_, one)| one)),
        Value::Null | Value::Bool(_) | Value::Number(_) => false,
    }
}

/// All of them are gone through, whatever the first says.
fn each<'v>(all: impl Iterator<Item = &'v mut Value>) -> bool {
    let mut any = false;
    for one in all {
        any |= every_text(one);
    }
    any
}

#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::indexing_slicing)]
mod tests {
    use super::*;

    #[test]
    fn every_bundled_file_is_read() {
        assert_eq!(fonts().len(), FILES.len());
    }

    #[test]
    fn what_stands_for_others_is_said_only_where_it_stands() {
        let with = |name: &str| {
            let mut data = serde_json::json!({ "who": name, "undrawn_words": "{sign}: not drawn" });
            only_what_can_be_drawn(&mut data);
            data["undrawn_words"].as_str().unwrap().to_owned()
        };
        assert_eq!(with("Mara"), "");
        assert_eq!(with("\u{7f8e}"), format!("{}: not drawn", stands_for()));
    }

    #[test]
    fn scripts_that_are_held_stay_as_they_are() {
        for name in ["Zoë Ångström", "Мария", "Ελένη", "ليلى", "נועה", "#eval(\"1\") *a* _b_ $x$ <c> @d"]
        {
            assert_eq!(plain(name), (name.to_owned(), false), "{name}");
        }
    }

    #[test]
    fn a_run_that_is_not_held_is_one_sign() {
        let (text, any) = plain("Mia \u{1f469}\u{200d}\u{1f37c}\u{1f3fd} 美咲!");
        assert!(any);
        let stands = stands_for();
        assert_eq!(text, format!("Mia {stands} {stands}!"));
    }

    #[test]
    fn nothing_turns_the_words_around_it() {
        assert_eq!(plain("a\u{202e}b\u{2066}c\u{7}d\n\n\te").0, "abcd\n e");
    }
}
