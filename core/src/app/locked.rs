//! A sealed record whose key is not there: one page asks for its recovery code, and nothing else
//! can be done. In place of the record stands an empty one in memory, which takes nothing in.

use super::recovery;
use super::state::App;
use crate::journal::Key;
use crate::screen::shapes::{Clock, Effect, Event, Opening, Tone};
use crate::screen::RECOVERY_CODE;
use crate::trouble::{Kind, Trouble};

impl App {
    /// Whether a record beside this one is sealed, or not, as this one is. It is not open here.
    pub(crate) fn lies_as_the_desk_does(&self, path: &std::path::Path) -> bool {
        match self.key_in_use() {
            Some(key) => crate::journal::files::sealed_with(path) == Some(key.which()),
            None => !recovery::is_sealed(path),
        }
    }

    /// What can be said to a record that is not open: its code.
    pub(super) fn react_locked(&mut self, event: &Event, clock: &Clock) -> Result<Vec<Effect>, Trouble> {
        match event {
            Event::EnterSecret { id, secret } if id == RECOVERY_CODE => {
                let key = recovery::open(&self.path, &secret.words)?;
                self.unlock(key, clock)?;
                Ok(vec![Effect::KeepKey, Effect::Maintain])
            }
            Event::Wake | Event::AlarmsAre { .. } | Event::Back | Event::Dismiss { .. } => Ok(Vec::new()),
            _ => Err(Trouble::new(Kind::Locked, "trouble-no-key")),
        }
    }

    fn unlock(&mut self, key: Key, clock: &Clock) -> Result<(), Trouble> {
        let opening = Opening {
            device: if self.named_by_key { String::new() } else { self.opening.device.clone() },
            ..self.opening.clone()
        };
        let mut opened = Self::open_with_key(self.path.clone(), Some(key), opening, clock)?;
        opened.key_by_code = true;
        opened.renderer = self.renderer;
        opened.alarms = self.alarms;
        opened.purpose = self.purpose.clone();
        opened.places = vec![opened.first_place()];
        opened.tell("recovery-opened", Tone::Quiet);
        *self = opened;
        Ok(())
    }
}
