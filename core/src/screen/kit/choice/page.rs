//! What stands on the family's own page of a choice, section by section.

use super::words::{name, wanted};
use super::{asks, facts, lines, picture, rules};
use crate::answer::choice::Aspect;
use crate::gather::choice::{ChoiceInputs, Offer};
use crate::screen::shapes::{SheetRow, SheetSection};
use crate::screen::View;
use crate::trouble::Trouble;

/// Pumps that one side has room for.
const MOST_ON_A_PAGE: usize = 4;

/// The pumps that were not set aside, line by line.
pub(in crate::screen) fn page_sections(view: &View<'_>) -> Result<Vec<SheetSection>, Trouble> {
    let words = view.words();
    let mut inputs = ChoiceInputs::over(view)?;
    inputs.offers.retain(|offer| offer.pump.chosen != Some(false));
    let all = inputs.offers.len();
    inputs.offers.truncate(MOST_ON_A_PAGE);
    let mut sections = vec![SheetSection {
        caption: wanted(view, &inputs.wanted),
        plot: picture::of(view, &inputs),
        lines: more_pumps(view, all),
        ..empty("choice-picture", words.say("offer-wanted-title"))
    }];
    for aspect in Aspect::ALL {
        let told = lines::rows(view, &inputs, aspect);
        if told.is_empty() {
            continue;
        }
        sections.push(SheetSection {
            caption: rules::rule(view, &inputs, aspect),
            rows: told.into_iter().map(|row| note(row.title, row.detail)).collect(),
            ..empty(rules::section_key(aspect), words.say(&format!("section-{}", rules::section_key(aspect))))
        });
    }
    let of_each = |key: &str, said: &dyn Fn(&Offer) -> String| {
        let rows = inputs.offers.iter().map(|offer| (name(view, offer), said(offer)));
        let rows = rows.filter(|(_, said)| !said.is_empty()).map(|(name, said)| note(name, said)).collect();
        SheetSection { rows, ..empty(key, words.say(&format!("section-{key}"))) }
    };
    sections.push(of_each("offer-facts", &|offer| facts::of(view, &inputs, offer)));
    sections.push(of_each("offer-asks", &|offer| asks::asked_of(view, &inputs, offer).join(" ")));
    sections.push(SheetSection {
        lines: rules::early(view, &inputs),
        ..empty("offer-early", words.say("section-offer-early"))
    });
    let last =
        [words.say("offer-page-source"), rules::more(view)?, words.say("offer-no-order"), words.say("offer-not-known")];
    sections.push(SheetSection { lines: last.to_vec(), ..empty("sources", words.say("offer-page-rules")) });
    sections.retain(|s| !s.rows.is_empty() || !s.lines.is_empty() || s.plot.is_some());
    Ok(sections)
}

fn more_pumps(view: &View<'_>, all: usize) -> Vec<String> {
    let more = all.checked_sub(MOST_ON_A_PAGE).filter(|more| *more > 0);
    more.map(|more| view.words().with("offer-more-pumps", &[("count", more.into())])).into_iter().collect()
}

fn note(label: String, note: String) -> SheetRow {
    SheetRow { label, value: String::new(), note }
}

fn empty(key: &str, title: String) -> SheetSection {
    SheetSection {
        key: key.to_owned(),
        title,
        headline: String::new(),
        figure: String::new(),
        caption: String::new(),
        lines: Vec::new(),
        rows: Vec::new(),
        weeks: None,
        plot: None,
    }
}
