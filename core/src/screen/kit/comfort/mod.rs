//! Comfort: which vacuum is comfortable, whether more brings more, how soon milk lets down, and
//! what comparisons of two ways say.
//!
//! What sessions say is gathered in [`crate::gather::comfort`]. [`ceilings`] says what is
//! comfortable and [`picture`] draws it, in mmHg or in levels ([`setting`]); [`milk`],
//! [`changed`] and [`letdowns`] say the rest of it; [`trial`] shows a comparison with [`trial_text`], [`now`] what
//! is asked while a session runs ([`so_far`] what has come by then), [`planned`] what a plan says to stay below, [`flange`] the flange as first suspect, [`in_short`] all of it for the sheet. Nobody is led upward: nothing here proposes a setting.

mod ceilings;
mod changed;
mod flange;
mod in_short;
mod letdowns;
mod list;
mod milk;
mod now;
mod picture;
mod planned;
mod setting;
mod so_far;
mod trial;
mod trial_text;

pub(super) use flange::notice as flange_notice;
pub(in crate::screen) use in_short::in_short;
pub(in crate::screen) use letdowns::show as show_letdown;
pub(super) use list::group;
pub(in crate::screen) use now::{notice as trial_notice, offer as search_offer, rows as rows_while_running};
pub(in crate::screen) use planned::{kept as ceiling_kept, notice as above_plan_notice, searched};
pub(in crate::screen) use trial::{begin as begin_trial, show as show_trial};

use super::pump_words::section;
use crate::answer::comfort::{comfort, Comfort};
use crate::answer::supply::Side;
use crate::gather::comfort::ComfortInputs;
use crate::record::mark::Phase;
use crate::screen::shapes::{Action, Event, FindingsScreen, Place, Screen, Section, Sign, Weight};
use crate::screen::View;
use crate::trouble::Trouble;

pub(in crate::screen) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Comfort, words.say("comfort-title"), words.say("comfort-subtitle"))?;
    frame.back = Some(view.back());
    let inputs = ComfortInputs::read(view)?;
    let all = of_each(view, &inputs);
    let (headline, figure, caption) = ceilings::head(view, &all, &inputs.rules);
    let mut sections: Vec<Section> = all.iter().map(|one| ceilings::section_of(view, one, &inputs.rules)).collect();
    sections.extend(milk::section_of(view, &inputs, &all));
    sections.extend(changed::section_of(view, &inputs)?);
    sections.push(Section { lines: ceilings::background(view, &inputs.rules), ..section(view, "comfort-background") });
    let mut actions = Vec::new();
    if let Some(row) = view.journal.running()? {
        actions.extend(now::offer(view, &view.session(&row.subject)?)?);
    }
    let go = |key: &str, label: &str, place: Place| Action::new(key, words.say(label), Event::Go { place });
    actions.push(go("letdown", "comfort-open-letdown", Place::Letdown).sign(Sign::Letdown));
    actions.push(go("comfort-kit", "comfort-open-kit", Place::Kit).sign(Sign::Kit).weight(Weight::Quiet));
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            spoken: [headline.as_str(), figure.as_str(), caption.as_str()].join(" "),
            headline,
            figure,
            caption,
            dial: None,
            lines: ceilings::kind_words(view, &inputs),
            asks: flange_notice(view)?.into_iter().collect(),
            actions,
            sections,
        },
    })
}

/// Comfort of each side and phase of which anything was said, expression first.
pub(super) fn of_each(view: &View<'_>, inputs: &ComfortInputs) -> Vec<Comfort> {
    let each = [Phase::Expression, Phase::Letdown].into_iter().flat_map(|phase| Side::BOTH.map(|side| (side, phase)));
    each.filter_map(|(side, phase)| comfort(&inputs.felt, side, phase, view.now, &inputs.rules)).collect()
}
