//! Where the person is, shown.

use super::closing;
use super::state::{App, Present, Purpose};
use crate::gather::caution as cautions;
use crate::screen::shapes::{Clock, Place, Screen};
use crate::screen::{self, View};
use crate::trouble::Trouble;

impl App {
    /// A place as it stands.
    ///
    /// # Errors
    /// Where the place is gone, or the record can't be read.
    pub fn show(&mut self, place: &Place, clock: &Clock) -> Result<Screen, Trouble> {
        self.show_for(None, place, clock)
    }

    /// The same on a desk, for the family that a plan is written for.
    pub(crate) fn show_for(
        &mut self,
        family: Option<&View<'_>>,
        place: &Place,
        clock: &Clock,
    ) -> Result<Screen, Trouble> {
        if self.locked {
            return self.show_locked(clock);
        }
        let (present, _) = Present::read(clock);
        let card = match (&self.purpose, place) {
            (Purpose::Desk | Purpose::Own, Place::OwnCard) => Some(self.own_card()?),
            _ => None,
        };
        let (screen, worked_out) = self.recovering(present, |app| {
            let mut view = app.view(present)?;
            // The desk has families' cautions in its list, and none of its own.
            if !view.desk {
                view.cautions = cautions::active(&view)?;
            }
            view.own_card = card;
            view.family = family;
            let screen = screen::show(&view, place)?;
            Ok((screen, view.record.worked_out()))
        })?;
        self.worked_out = worked_out;
        Ok(match self.purpose {
            Purpose::Reading(_) => closing::closed(screen),
            Purpose::Desk => closing::without_places(screen),
            Purpose::Own => screen,
        })
    }

    /// Keeps the days that were worked out for what was shown, after a tap: a record that is only
    /// looked at stays as it is.
    pub(super) fn keep_days(&mut self) -> Result<(), Trouble> {
        let days = std::mem::take(&mut self.worked_out);
        if !days.is_empty() && !matches!(self.purpose, Purpose::Reading(_)) {
            self.journal()?.keep_days(&days);
        }
        Ok(())
    }

    /// The place the person is in. One that is gone gives way to the one before.
    ///
    /// # Errors
    /// Where the record can't be read.
    pub fn here(&mut self, clock: &Clock) -> Result<Screen, Trouble> {
        self.here_for(None, clock)
    }

    /// The same on a desk, for the family that a plan is written for.
    pub(crate) fn here_for(&mut self, family: Option<&View<'_>>, clock: &Clock) -> Result<Screen, Trouble> {
        loop {
            let place = self.place();
            match self.show_for(family, &place, clock) {
                Err(trouble) if trouble.key == "trouble-no-such-record" && self.places.len() > 1 => {
                    self.places.pop();
                }
                Ok(mut screen) => {
                    if self.places.len() < 2 {
                        screen.frame_mut().back = None;
                    }
                    return Ok(screen);
                }
                shown => return shown,
            }
        }
    }

    /// The page, whatever place is asked for.
    fn show_locked(&mut self, clock: &Clock) -> Result<Screen, Trouble> {
        let (present, _) = Present::read(clock);
        let mut view = self.view(present)?;
        view.locked = true;
        let mut screen = closing::without_places(crate::screen::show(&view, &Place::Recovery)?);
        screen.frame_mut().back = None;
        Ok(screen)
    }
}
