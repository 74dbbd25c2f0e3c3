//! Pumps, flanges and parts in use, as Kit lists them, and a choice of pumps that is open.

use super::section::{of_rows, row};
use super::sessions::{used, SessionFields};
use crate::gather::flange_fit::FitLook;
use crate::quantity::{say_decimal, LengthUnit, Quantity};
use crate::record::{date, text, Kind};
use crate::screen::kit::{choice_on_sheet, detail, sign_name};
use crate::screen::shapes::{SheetRow, SheetSection};
use crate::screen::View;
use crate::time::{LocalDay, Moment};
use crate::trouble::Trouble;

/// Where sessions name what they were done with, the rest is not told.
pub(super) fn render(view: &View<'_>, sessions: &[SessionFields]) -> Result<Option<SheetSection>, Trouble> {
    let pumps = used(sessions, &["pump"]);
    let flanges = used(sessions, &["flange_left", "flange_right"]);
    let mut rows = Vec::new();
    for kind in [Kind::Pump, Kind::Flange, Kind::Part] {
        for found in view.journal.of_kind(kind)? {
            let (_, fields) = view.record(&found.subject)?;
            // What is no longer in use is told among what changed.
            let until = date(&fields, "until").is_some_and(|until| until < view.today().date());
            let named = match kind {
                Kind::Pump => pumps.is_empty() || pumps.contains(found.subject.as_str()),
                Kind::Flange => flanges.is_empty() || flanges.contains(found.subject.as_str()),
                _ => pumps.is_empty() || text(&fields, "pump").is_none_or(|pump| pumps.contains(pump)),
            };
            if named && !until {
                rows.push(row(view.name_of(kind, &fields), "", detail(view, kind, &fields)?));
            }
        }
    }
    rows.extend(nipples(view)?);
    // A choice that is open, in one run of words: what else is on the page leaves no more room.
    rows.extend(choice_on_sheet(view)?.map(|pumps| row(view.words().say("offer-choosing"), "", pumps)));
    Ok(of_rows(view, "kit", rows))
}

/// How wide the nipples were when they were measured last, and what was seen in the flange then.
fn nipples(view: &View<'_>) -> Result<Option<SheetRow>, Trouble> {
    let words = view.words();
    let fit = FitLook::over(view)?;
    let (mut widths, mut notes, mut none) = (Vec::new(), Vec::new(), 0);
    for side in ["left", "right"] {
        let Some(found) = fit.latest(side) else { continue };
        let Some(width) = found.nipple.before.or(found.nipple.after) else { continue };
        let width = words.with_unit(say_decimal(width.canonical(), 1), LengthUnit::Millimeter);
        let of_side = words.say(&format!("side-{side}"));
        widths.push(words.with("side-value", &[("side", of_side.clone().into()), ("value", width.into())]));
        let signs: Vec<String> = found.signs.iter().map(|sign| sign_name(view, sign)).collect();
        if !signs.is_empty() {
            let signs = [("side", of_side.into()), ("signs", signs.join(", ").into())];
            notes.push(words.with("sheet-fit-signs", &signs));
        } else if !found.not_seen.is_empty() {
            none += 1;
            notes.push(words.with("sheet-fit-none", &[("side", of_side.into())]));
        }
    }
    let Some(on) = fit.measured_last().filter(|_| !widths.is_empty()) else { return Ok(None) };
    let day = LocalDay::of(&Moment::new(on, view.zone), view.settings.day_start);
    if none == 2 {
        notes = vec![words.say("sheet-fit-none-at-all")];
    }
    notes.insert(0, words.with("sheet-nipple-on", &[("date", words.plain_date(day.date()).into())]));
    Ok(Some(row(words.say("sheet-nipple"), widths.join(" \u{b7} "), notes.join("; "))))
}
