//! The visit sheet: what the consultant gets, as the parent sees it before it goes out.
//!
//! [`Sheet::gather`] reads the record once and lets each part say itself, with the same
//! functions as the screens, so that a figure is one figure everywhere. One file a
//! section: [`cautions`], [`child`], [`observed`], [`supply`], [`rhythm`], [`nights`], [`pain`],
//! [`settings`], [`comfort`], [`pump`], [`kit`], [`body`], [`changes`], [`questions`], [`notes`],
//! [`sources`]. What the program has no answer to is absent. [`preview`] is the screen;
//! [`page`] writes what is not left out for the page.

mod answers;
mod body;
mod cautions;
mod changes;
mod child;
mod comfort;
mod kit;
mod nights;
mod notes;
mod observed;
pub(crate) mod page;
mod pain;
mod preview;
mod pump;
mod questions;
mod rhythm;
mod section;
mod sessions;
mod settings;
mod sources;
mod span;
mod supply;

pub(super) use preview::show;

use super::shapes::SheetSection;
use super::View;
use crate::answer::night::{Gathered, Origin};
use crate::gather::supply::SupplyInputs;
use crate::guidance::{CautionRules, Rules};
use crate::record::{text, SETTINGS};
use crate::share::names;
use crate::share::parts::{LeftOut, SharePart};
use crate::trouble::Trouble;
use span::Stretch;

/// A part that can be left out, with what it says.
#[derive(Debug, Clone, PartialEq)]
pub struct Part {
    /// Which.
    pub part: SharePart,
    /// Whether the person leaves it out.
    pub out: bool,
    /// What it says, section by section.
    pub sections: Vec<SheetSection>,
}

/// The sheet, in the person's words and units.
#[derive(Debug, Clone, PartialEq)]
pub struct Sheet {
    /// What it is called.
    pub heading: String,
    /// Who it is about, where the person chose a name and lets it go along.
    pub who: Option<String>,
    /// The days it is about.
    pub span: String,
    /// When it was made.
    pub made: String,
    /// The parts there are, left out or not, in the order of the page.
    pub parts: Vec<Part>,
    /// What the parent left out, where anything is: apart from what was never written down.
    pub left_out: Option<SheetSection>,
    /// The rules it rests on.
    pub sources: SheetSection,
    /// What is said on every sheet.
    pub foot: String,
}

/// The order of the page: what cannot wait, what the parent asks, then what was seen.
const ORDER: [SharePart; 10] = [
    SharePart::Who,
    SharePart::Body,
    SharePart::Questions,
    SharePart::Child,
    SharePart::Supply,
    SharePart::Sessions,
    SharePart::Comfort,
    SharePart::Kit,
    SharePart::Changes,
    SharePart::Notes,
];

impl Sheet {
    /// Gathers it as the record stands.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn gather(view: &View<'_>) -> Result<Self, Trouble> {
        let words = view.words();
        let (_, fields) = view.record(SETTINGS)?;
        let left_out = LeftOut::read(&fields);
        let name = text(&fields, "sheet_name").map(names::leaves).filter(|name| !name.is_empty());
        let source = Source::read(view, left_out)?;
        let mut parts = Vec::new();
        for part in ORDER {
            let sections = match part {
                SharePart::Who => name.as_deref().map(|name| who(view, name)).into_iter().collect(),
                part => source.sections(view, part)?,
            };
            if !sections.is_empty() {
                parts.push(Part { part, out: source.left_out.has(part), sections });
            }
        }
        let beside = source.rules_beside(view, &parts)?;
        let cited = match parts.iter().any(|part| part.part == SharePart::Supply && !part.out) {
            true => super::supply::intake_sources(view, &source.look)?,
            false => Vec::new(),
        };
        let there = parts.iter().filter(|part| !part.out).flat_map(|part| &part.sections);
        let there: Vec<&str> = there.map(|section| section.key.as_str()).collect();
        let day = words.plain_date(view.today().date());
        Ok(Self {
            heading: words.say("sheet-heading"),
            who: name.filter(|_| !source.left_out.has(SharePart::Who)),
            span: source.span.render(view),
            made: words.with("sheet-made", &[("date", day.into()), ("time", words.clock(&view.present()).into())]),
            sources: sources::render(view, &source.rules, &there, &beside, &cited),
            left_out: left_out_text(view, &parts),
            foot: words.say("sheet-foot"),
            parts,
        })
    }

    /// The sections that go out, in order.
    pub fn going_out(&self) -> impl Iterator<Item = &SheetSection> {
        let parts = self.parts.iter().filter(|part| !part.out && part.part != SharePart::Who);
        parts.flat_map(|part| &part.sections).chain(&self.left_out).chain(std::iter::once(&self.sources))
    }
}

/// Which parts were written down and left out, by name.
fn left_out_text(view: &View<'_>, parts: &[Part]) -> Option<SheetSection> {
    let words = view.words();
    let out = parts.iter().filter(|part| part.out).map(|part| words.say(&format!("sheet-part-{}", part.part.name())));
    let names = out.collect::<Vec<_>>();
    (!names.is_empty()).then(|| SheetSection {
        lines: vec![words.with("sheet-left-out", &[("parts", names.join(", ").into())])],
        ..section::section(view, "left-out")
    })
}

fn who(view: &View<'_>, name: &str) -> SheetSection {
    SheetSection { rows: vec![section::row(name, "", "")], ..section::section(view, "who") }
}

/// What the sections are worked out of, read once.
struct Source {
    span: Stretch,
    look: SupplyInputs,
    night: Gathered,
    sessions: Vec<sessions::SessionFields>,
    rules: Rules,
    left_out: LeftOut,
}

impl Source {
    fn read(view: &View<'_>, left_out: LeftOut) -> Result<Self, Trouble> {
        let span = Stretch::of(view)?;
        Ok(Self {
            look: SupplyInputs::over(view, span.days)?,
            night: crate::gather::night::gathered(view)?,
            sessions: sessions::read(view, span)?,
            rules: view.rules()?.clone(),
            span,
            left_out,
        })
    }

    /// Rules that only hold where nothing else was said: the longest gap, a pump's range.
    fn rules_beside(&self, view: &View<'_>, parts: &[Part]) -> Result<Vec<&'static str>, Trouble> {
        let goes = |wanted: SharePart| parts.iter().any(|part| part.part == wanted && !part.out);
        let mut found = Vec::new();
        if let (true, Origin::Rule(key)) = (goes(SharePart::Sessions), self.night.frame.longest.origin) {
            found.push(key);
        }
        if goes(SharePart::Supply) {
            found.extend(super::supply::intake_by_rule(view, &self.look)?);
        }
        if goes(SharePart::Kit) {
            found.extend(pump::rules(view, &self.sessions)?);
        }
        Ok(found)
    }

    fn sections(&self, view: &View<'_>, part: SharePart) -> Result<Vec<SheetSection>, Trouble> {
        let goes = |part: SharePart| !self.left_out.has(part);
        let found = match part {
            SharePart::Who => Vec::new(),
            SharePart::Body => {
                let rules = CautionRules::read(&self.rules);
                vec![
                    cautions::render(view, self.span, &self.left_out, &rules)?,
                    body::render(view, self.span, &self.left_out)?,
                ]
            }
            SharePart::Questions => vec![questions::render(view)?],
            SharePart::Child => vec![child::render(view, self.span, &self.look.rules)?],
            SharePart::Supply => {
                vec![observed::render(view, self.span, &self.look)?, supply::render(view, &self.look)?]
            }
            SharePart::Sessions => vec![
                rhythm::render(view, &self.look, &self.sessions, self.night.frame.longest.value)?,
                nights::render(view, &self.night.frame, self.span.days)?,
            ],
            SharePart::Comfort => vec![
                pain::render(view, &self.sessions),
                settings::render(view, &self.sessions)?,
                comfort::render(view, self.span, goes(SharePart::Supply))?,
            ],
            SharePart::Kit => vec![pump::render(view, &self.sessions)?, kit::render(view, &self.sessions)?],
            SharePart::Changes => {
                let (supply, notes) = (goes(SharePart::Supply), goes(SharePart::Notes));
                vec![changes::render(view, self.span, &self.look, supply, notes)?]
            }
            SharePart::Notes => vec![notes::render(view, self.span)?],
        };
        Ok(found.into_iter().flatten().collect())
    }
}
