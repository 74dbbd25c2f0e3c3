//! Both panes as they stand.

use super::state::{present, Caseload, Pane};
use crate::gather::reasons::{visit_due, Rank, Reason};
use crate::quantity::Count;
use crate::record::{Kind, NAME_OF_CASE};
use crate::screen::shapes::{CaseloadScreen, Clock, FieldRow, Place, Screen};
use crate::screen::{caseload as drawn, View};
use crate::time::Moment;
use crate::trouble::Trouble;

impl Caseload {
    /// Both panes as they stand.
    ///
    /// # Errors
    /// Where the desk's own record can't be read; a family's is a reason in the list.
    pub fn here(&mut self, clock: &Clock) -> Result<CaseloadScreen, Trouble> {
        self.look_at_all(clock)?;
        let (families, finding) = self.list(clock)?;
        let beside = self.show_beside(None, clock)?;
        let (now, zone) = present(clock);
        let menu = drawn::menu(&self.desk.desk_view(now, zone)?, &self.watched);
        Ok(CaseloadScreen { families, finding, beside, menu })
    }

    /// A place of what is open beside the list.
    ///
    /// # Errors
    /// Where the place is gone, or the record can't be read.
    pub fn show(&mut self, place: &Place, clock: &Clock) -> Result<Screen, Trouble> {
        self.show_beside(Some(place), clock)
    }

    /// A place of what is open beside the list, or where it stands. A plan is shown for the
    /// family that it is written for.
    pub(super) fn show_beside(&mut self, place: Option<&Place>, clock: &Clock) -> Result<Screen, Trouble> {
        if let Pane::Family(_) = self.active {
            let at = self.active_clock(clock);
            return match place {
                Some(place) => self.active_app().show(place, &at),
                None => self.active_app().here(&at),
            };
        }
        let planned = self.open_family_at(place.unwrap_or(&self.desk.place()), clock)?;
        let mut family = match (planned, &self.opened) {
            (Some(at), Some(opened)) => {
                let (now, zone) = present(&at);
                opened.app.desk_view(now, zone).ok()
            }
            _ => None,
        };
        if let Some(family) = &mut family {
            let (now, zone) = present(clock);
            family.record.settings = family.record.settings.clone().shown_as(&self.desk.desk_view(now, zone)?.settings);
        }
        match place {
            Some(place) => self.desk.show_for(family.as_ref(), place, clock),
            None => self.desk.here_for(family.as_ref(), clock),
        }
    }

    fn list(&self, clock: &Clock) -> Result<(Screen, Vec<FieldRow>), Trouble> {
        let (now, zone) = present(clock);
        let view = self.desk.desk_view(now, zone)?;
        let (family, of_desk) = match &self.active {
            Pane::Family(id) => (Some(id.clone()), false),
            Pane::Desk => (self.family_at(&self.desk.place())?, true),
        };
        let chosen = drawn::Chosen { family: family.as_deref(), of_desk };
        let rows = self.in_order(&view)?;
        let finding = drawn::finding(&view, &rows, &self.sought);
        let list = drawn::list(&view, &rows, &self.sought, chosen, Count::new(self.waits.len() as u32))?;
        Ok((list, finding))
    }

    /// Families, those first that need a look first.
    pub(super) fn in_order(&self, view: &View<'_>) -> Result<Vec<drawn::Row>, Trouble> {
        let mut rows = Vec::new();
        for row in view.journal.of_kind(Kind::CaseFamily)? {
            let (_, fields) = view.record(&row.subject)?;
            let name = crate::record::text(&fields, NAME_OF_CASE).map(str::to_owned);
            let Some(found) = self.found.get(&row.subject) else { continue };
            let mut reasons = found.reasons.clone();
            reasons.extend(visit_due(&fields, view.today(), &self.found_with.rules));
            reasons.sort_by_key(Reason::rank);
            rows.push(drawn::Row { id: row.subject, name, shared: found.shared.clone(), reasons });
        }
        let no_reason = Rank::NONE;
        rows.sort_by(|a, b| {
            let rank = |row: &drawn::Row| row.reasons.first().map_or(no_reason, Reason::rank);
            (rank(a), std::cmp::Reverse(a.shared.as_ref().map(Moment::instant)), &a.name, &a.id).cmp(&(
                rank(b),
                std::cmp::Reverse(b.shared.as_ref().map(Moment::instant)),
                &b.name,
                &b.id,
            ))
        });
        Ok(rows)
    }
}
