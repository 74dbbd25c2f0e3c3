//! Cautions that stand: what to do, what it was seen in, where that comes from.

use super::section::{of_rows, row};
use crate::answer::caution::{Because, Caution};
use crate::screen::caution::{because, standing, title};
use crate::screen::shapes::{SheetRow, SheetSection};
use crate::screen::View;
use crate::share::parts::{LeftOut, SharePart};
use crate::trouble::Trouble;

/// One that rests on a part that is left out is left out with it.
pub(super) fn told(view: &View<'_>, left_out: &LeftOut) -> Result<Option<SheetSection>, Trouble> {
    let cautions = standing(view)?;
    let goes = |caution: &&Caution| caution.because.iter().all(|fact| !left_out.has(part_of(fact)));
    Ok(of_rows(view, "cautions", cautions.iter().filter(goes).map(|caution| said(view, caution)).collect()))
}

fn part_of(fact: &Because) -> SharePart {
    match fact {
        Because::Temperature(..) | Because::Sign(..) | Because::Since(..) => SharePart::Body,
        Because::PainRose(..) | Because::PainHigh(..) => SharePart::Comfort,
        Because::Drop(_) => SharePart::Supply,
        Because::Pull(..) => SharePart::Kit,
    }
}

fn said(view: &View<'_>, caution: &Caution) -> SheetRow {
    let words = view.words();
    let source = caution.source;
    let from = words.with(
        if source.from_memory { "caution-source-from-memory" } else { "caution-source" },
        &[("source", source.source.clone().into()), ("year", source.year.to_string().into())],
    );
    let mut notes: Vec<String> = caution.because.iter().map(|fact| because(view, fact)).collect();
    notes.push(words.say(&format!("caution-{}-do", source.key)));
    notes.push(match source.reviewed {
        true => from,
        false => format!("{from} {}", words.say("caution-not-reviewed")),
    });
    row(title(view, caution), words.say(&format!("urgency-{}", caution.urgency().name())), notes.join("\n"))
}
