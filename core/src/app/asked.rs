//! What waits for a yes: a card whose words are to be compared, a file that would change the
//! record. Until then nothing of it is kept.

use super::state::{Waiting, What};
use serde_json::json;

use super::state::{buzz, App, Present};
use crate::journal::{Change, Difference};
use crate::record::{text, Fields, Kind};
use crate::screen::shapes::{Effect, Place};
use crate::screen::{About, Asked};
use crate::share::exchange;
use crate::share::sealed::card::{Card, Whose};
use crate::share::sealed::spoken;
use crate::share::sealed::spoken::is_compared;
use crate::trouble::Trouble;

impl App {
    fn ask(&mut self, about: About, differences: Vec<Difference>, what: What) -> Vec<Effect> {
        self.waiting = Some(Waiting { asked: Asked { about, differences }, what });
        self.go(Place::Asked);
        vec![buzz("asked")]
    }

    /// Takes in a card: shows its words, and keeps nothing of it before they were compared. One
    /// that is here already opens; no key is ever put in the place of another.
    pub(super) fn import_card(&mut self, typed: &str, _: Present) -> Result<Vec<Effect>, Trouble> {
        let card = Card::read(typed)?;
        let mark = spoken::digest(&card.sealing_key, &card.signing_key);
        let mut changes_key = false;
        if card.whose == Whose::Consultant {
            for (id, there) in self.journal()?.fields_of_kind(Kind::Consultant)? {
                let key = |field: &str| text(&there, field).unwrap_or_default();
                if spoken::digest(key("sealing_key"), key("signing_key")) == mark {
                    self.go(Place::Consultant { id });
                    return Ok(vec![buzz("card-in")]);
                }
                changes_key |= is_in_the_place_of(&card, &there);
            }
        }
        let about = match card.whose {
            Whose::Consultant => About::Consultant { card: card.clone(), changes_key },
            Whose::Phone => About::Phone { card: card.clone() },
        };
        Ok(self.ask(about, Vec::new(), What::Card(card)))
    }

    /// Asks whether changes of another phone are to be taken in.
    pub(super) fn ask_about_changes(&mut self, changes: Vec<Change>, differences: Vec<Difference>) -> Vec<Effect> {
        self.ask(About::Phones, differences, What::Changes(changes))
    }

    /// Asks whether a file that nobody signed is to be taken in.
    pub(super) fn ask_about_plain(&mut self, file: Vec<u8>, differences: Vec<Difference>) -> Vec<Effect> {
        self.ask(About::Plain, differences, What::Plain(file))
    }

    /// Takes in what waited.
    pub(super) fn take_waiting(&mut self, present: Present) -> Result<Vec<Effect>, Trouble> {
        let nothing = || Trouble::bad("", "asked-nothing");
        let waiting = self.waiting.take().ok_or_else(nothing)?;
        self.places.retain(|place| *place != Place::Asked);
        match waiting.what {
            What::Card(card) => match card.whose {
                Whose::Consultant => self.keep_card(&card, present),
                Whose::Phone => {
                    self.know_phone(&card.signing_key, &card.sealing_key)?;
                    self.tell("phone-known", crate::screen::shapes::Tone::Quiet);
                    Ok(vec![buzz("card-in")])
                }
            },
            What::Changes(changes) => {
                let merged = self.journal_mut()?.merge_as_an_act("bring-in", &changes, present.now)?;
                self.report_merged(merged, present)
            }
            What::Plain(file) => {
                let report = exchange::import(self.journal_mut()?, &mut &*file, present.now)?;
                self.report_import(report, present)
            }
        }
    }

    /// Leaves what waited as it is.
    pub(super) fn leave_waiting(&mut self) -> Vec<Effect> {
        self.waiting = None;
        self.places.retain(|place| *place != Place::Asked);
        Vec::new()
    }

    /// Keeps a consultant whose words were the same. Another of her name, or with one of the
    /// keys, is taken out in the same act.
    fn keep_card(&mut self, card: &Card, present: Present) -> Result<Vec<Effect>, Trouble> {
        let today = self.read(present)?.today().date().format("%Y-%m-%d").to_string();
        let before: Vec<String> = self
            .journal()?
            .fields_of_kind(Kind::Consultant)?
            .into_iter()
            .filter(|(_, there)| is_in_the_place_of(card, there))
            .map(|(id, _)| id)
            .collect();
        let mark = spoken::mark(&card.sealing_key, &card.signing_key);
        let id = self.journal_mut()?.act("card-in", "", present.now, |w| {
            let id = w.new_id();
            w.set(&id, "kind", &json!(Kind::Consultant.name()))?;
            w.set(&id, "name", &json!(card.name))?;
            w.set(&id, "sealing_key", &json!(card.sealing_key))?;
            w.set(&id, "signing_key", &json!(card.signing_key))?;
            w.set(&id, "compared", &json!(mark))?;
            w.set(&id, "taken_in", &json!(today))?;
            for old in &before {
                w.set(old, "taken_out", &json!(true))?;
            }
            Ok(id)
        })?;
        self.go(Place::Consultant { id });
        Ok(vec![buzz("card-in")])
    }

    /// The words of a consultant who was taken in before they were asked about are the same.
    pub(super) fn words_same(&mut self, consultant: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let (kind, fields) = self.read(present)?.record(consultant)?;
        let key = |field: &str| text(&fields, field).unwrap_or_default();
        let mark = spoken::mark(key("sealing_key"), key("signing_key")).filter(|_| kind == Kind::Consultant);
        let mark = mark.ok_or_else(|| Trouble::bad("sealing_key", "bad-sealing-key"))?;
        if !is_compared(&fields) {
            self.journal_mut()?
                .act("card-in", consultant, present.now, |w| w.set(consultant, "compared", &json!(mark)))?;
        }
        Ok(vec![buzz("card-in")])
    }
}

/// Whether a card says of a consultant who is here that her keys are others: it has her name, or
/// one of her keys.
fn is_in_the_place_of(card: &Card, there: &Fields) -> bool {
    let name = |name: &str| name.trim().to_lowercase();
    let same = |field: &str, value: &str| text(there, field) == Some(value);
    let named = !card.name.trim().is_empty() && name(text(there, "name").unwrap_or_default()) == name(&card.name);
    named || same("sealing_key", &card.sealing_key) || same("signing_key", &card.signing_key)
}
