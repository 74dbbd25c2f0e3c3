//! `cargo xtask tour`: a day in the life of the invented family, drawn without a display.

use std::fs;

use crate::{
    machine::{self, Tool},
    pictures,
    place::Places,
    shell,
    stop::Stop,
};

/// What is shown, in order: the picture's name, and what it is.
const SHOWN: &[(&str, &str)] = &[
    ("welcome.light", "The first screen. Begin, import a record, or look around."),
    ("now-ready.light", "Now. How long each side has rested; Start is under the thumb."),
    ("just-pumped.light", "A session that is over already: six taps, and nothing is typed."),
    ("now-running.light", "A session as it runs: phases, letdowns, settings, each one tap."),
    ("now-running-hurts.light", "It hurts: how much and where, and the way down in reach."),
    ("now-amounts.light", "What came? The line is drawn up with the thumb, or typed."),
    ("day-today.light", "The day, with what is unknown said and never added as nothing."),
    ("tonight.night", "Tonight, ember on black: when to express next."),
    ("tonight-in-the-night.night", "In the night, readable at arm's length."),
    ("supply-28.light", "Supply: how much is made, and whether it is steady."),
    ("kit-check.light", "A pump is checked with a gauge, with one hand."),
    ("kit-pump-checked.light", "What the check says: the pull on a dial, against the maker's range."),
    ("visit.light", "Visit: what is handed over, and what came back."),
    ("caution.light", "A caution: what was logged, what to do, where that comes from."),
    ("caseload-family.light", "The consultant’s window: many families, those that need a look first."),
];

/// Draws it and says where it lies.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    if !words.is_empty() {
        return Err(Stop::new("cargo xtask tour"));
    }
    machine::need(places, &[shell::DRAWS, &[Tool::Poppler]].concat())?;
    shell::build(places)?;
    let folder = places.tour();
    if folder.exists() {
        fs::remove_dir_all(&folder).map_err(|error| Stop::at(&folder, &error))?;
    }
    let names: Vec<&str> = SHOWN.iter().map(|(name, _)| *name).collect();
    pictures::draw(places, &folder, &names.join(","))?;
    pictures::sheet(places, &folder.join("visit-sheet.pdf"))?;
    for (name, _) in SHOWN {
        let picture = folder.join(format!("{name}.png"));
        if !picture.is_file() {
            return Err(Stop::new(format!("{} was not drawn", picture.display())));
        }
    }
    let page = folder.join("index.html");
    fs::write(&page, html()).map_err(|error| Stop::at(&page, &error))?;
    println!("{}", page.display());
    Ok(())
}

fn html() -> String {
    let mut body = String::new();
    for (name, told) in SHOWN {
        let wide = if name.starts_with("caseload") { " class=\"wide\"" } else { "" };
        body.push_str(&format!(
            "<figure{wide}><img src=\"{name}.png\" alt=\"{told}\"><figcaption>{told}</figcaption></figure>\n"
        ));
    }
    format!("{HEAD}{body}{SHEET}</main>\n")
}

const HEAD: &str = "<!doctype html>
<html lang=\"en\">
<meta charset=\"utf-8\">
<meta name=\"viewport\" content=\"width=device-width\">
<title>Drawwell: a day of an invented family</title>
<style>
  body { margin: 2rem auto; max-width: 76rem; padding: 0 1rem; font: 1.05rem/1.5 sans-serif; background: #fbf8f3; color: #2a2622; }
  main { display: grid; grid-template-columns: repeat(auto-fill, minmax(17rem, 1fr)); gap: 2rem; }
  figure { margin: 0; } .wide { grid-column: 1 / -1; }
  img { width: 100%; border-radius: .75rem; border: 1px solid #ddd3c6; }
</style>
<h1>A day of an invented family</h1>
<p>Drawn by the program itself, from the record in demo-data. Nobody in it is real.</p>
<main>
";

const SHEET: &str =
    "<figure class=\"wide\"><a href=\"visit-sheet.pdf\"><img src=\"visit-sheet.png\" alt=\"The visit sheet\"></a>
<figcaption>The visit sheet for the consultant (<a href=\"visit-sheet.pdf\">PDF</a>).</figcaption></figure>
";

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_picture_stands_on_the_page_with_words_for_who_cant_see_it() {
        let page = html();
        for (name, told) in SHOWN {
            assert!(page.contains(&format!("<img src=\"{name}.png\" alt=\"{told}\">")), "{name}");
            assert!(!told.contains(['"', '<', '&']), "{told}");
        }
        assert!(page.contains("visit-sheet.pdf"));
    }
}
