//! A family and a consultant who know each other: the record goes to her, a plan comes back.

use drawwell_core::caseload::Caseload;
use drawwell_core::screen::shapes::{CaseloadScreen, Clock, DeskEvent, Effect, Event, Export, Opening, Place, Screen};
use drawwell_core::trouble::{Kind, Trouble};
use tempfile::TempDir;

use crate::person::Person;

/// A consultant's desk in a folder of its own.
pub struct Desk {
    /// The program.
    pub caseload: Caseload,
    /// Her present.
    pub clock: Clock,
    folder: TempDir,
}

fn opening() -> Opening {
    Opening { device: "desk".to_owned(), language: "en".to_owned(), look_around: false }
}

fn fault<E>(_: E) -> Trouble {
    Trouble::new(Kind::Fault, "trouble-fault")
}

impl Desk {
    /// A desk at the present of a person.
    pub fn beside(person: &Person) -> Result<Self, Trouble> {
        let clock = person.clock().clone();
        let folder = tempfile::tempdir().map_err(fault)?;
        let caseload = Caseload::open(folder.path().to_owned(), opening(), &clock)?;
        Ok(Self { caseload, clock, folder })
    }

    /// Closes the program and opens it again.
    pub fn opened_again(&mut self) -> Result<(), Trouble> {
        self.caseload = Caseload::open(self.folder.path().to_owned(), opening(), &self.clock)?;
        Ok(())
    }

    /// Where its files lie.
    pub fn folder(&self) -> &std::path::Path {
        self.folder.path()
    }

    /// Brings a file in.
    pub fn import_file(&mut self, file: &[u8]) -> Result<CaseloadScreen, Trouble> {
        Ok(self.caseload.import_file(&mut &*file, &self.clock)?.caseload)
    }

    /// Sends an event.
    pub fn send(&mut self, event: Event) -> Result<CaseloadScreen, Trouble> {
        Ok(self.caseload.update(event, &self.clock)?.caseload)
    }

    /// Sends an event that asks where a file goes, and takes the file.
    pub fn takes(&mut self, event: Event) -> Result<Vec<u8>, Trouble> {
        let update = self.caseload.update(event, &self.clock)?;
        let Some(Effect::HandOver { what, .. }) = update.effects.first() else { return Err(fault(())) };
        let mut file = Vec::new();
        self.caseload.export(what, &mut file, &self.clock)?;
        Ok(file)
    }

    /// The families in the list: what each is called, what is said of it, and its record.
    pub fn families(&mut self) -> Result<Vec<(String, String, String)>, Trouble> {
        let screen = self.caseload.here(&self.clock)?;
        let Screen::List { list, .. } = screen.families else { return Err(fault(())) };
        let rows = list.groups.into_iter().flat_map(|group| group.rows);
        Ok(rows
            .filter_map(|row| match row.open?.event {
                Event::OnDesk { event: DeskEvent::OpenFamily { family } } => {
                    let lines = [row.detail, row.aside].into_iter().filter(|line| !line.is_empty());
                    Some((row.title, lines.collect::<Vec<_>>().join("\n"), family))
                }
                _ => None,
            })
            .collect())
    }

    /// Begins a plan for the only family, with parts, each its kind and fields as typed; a
    /// plan's own fields stand under the kind `plan`. Gives the plan's record.
    pub fn writes_a_plan(&mut self, parts: &[(&str, &[(&str, &str)])]) -> Result<String, Trouble> {
        let (_, _, family) = self.families()?.into_iter().next().ok_or_else(|| fault(()))?;
        let screen = self.send(Event::OnDesk { event: DeskEvent::WritePlan { family } })?;
        let plan = self.opened(&screen)?;
        for (part, fields) in parts {
            let id = match *part {
                "plan" => plan.clone(),
                part => {
                    let screen = self.send(Event::AddPlanPart { plan: plan.clone(), part: part.to_owned() })?;
                    self.opened(&screen)?
                }
            };
            for (field, typed) in *fields {
                let (field, typed) = ((*field).to_owned(), (*typed).to_owned());
                self.send(Event::Enter { id: id.clone(), field, typed })?;
            }
            self.send(Event::Go { place: Place::Plan { id: plan.clone() } })?;
        }
        Ok(plan)
    }

    fn opened(&self, screen: &CaseloadScreen) -> Result<String, Trouble> {
        match &screen.beside {
            Screen::Form { form, .. } => Ok(form.id.clone()),
            // Which rule a part is about is asked first.
            Screen::List { list, .. } => list
                .groups
                .iter()
                .flat_map(|group| &group.rows)
                .find_map(|row| match &row.open.as_ref()?.event {
                    Event::ChooseRule { part, .. } => Some(part.clone()),
                    _ => None,
                })
                .ok_or_else(|| fault(())),
            Screen::Findings { findings, .. } => findings
                .actions
                .iter()
                .find_map(|action| match &action.event {
                    Event::Export { what: Export::Plan { plan } } => Some(plan.clone()),
                    _ => None,
                })
                .ok_or_else(|| fault(())),
            _ => Err(fault(())),
        }
    }
}

/// Opens a card and says that its words are the same.
pub fn takes_card(person: &mut Person, card: &str) -> Result<(), Trouble> {
    person.send(Event::TakeCardIn { card: card.to_owned() })?;
    match person.find("words-same")? {
        Some(_) => person.press("words-same"),
        None => Ok(()),
    }
}

/// A family that shared its record with a desk, and that desk.
pub fn acquainted() -> Result<(Person, Desk), Trouble> {
    let mut person = Person::welcomed("2026-05-25T04:06:00+02:00", "Europe/Berlin")?;
    let mut desk = Desk::beside(&person)?;
    let card = desk.caseload.own_card()?;
    let file = shares(&mut person, &card)?;
    desk.import_file(&file)?;
    Ok((person, desk))
}

/// Takes a consultant's card in and shares the record with her.
pub fn shares(person: &mut Person, card: &str) -> Result<Vec<u8>, Trouble> {
    takes_card(person, card)?;
    let Screen::Findings { findings, .. } = person.screen()? else { return Err(fault(())) };
    let share = findings.actions.iter().find(|action| action.key == "share-with").cloned();
    takes(person, share.ok_or_else(|| fault(()))?.event)
}

/// Sends an event that asks where a file goes, and takes the file.
pub fn takes(person: &mut Person, event: Event) -> Result<Vec<u8>, Trouble> {
    let clock = person.clock().clone();
    let update = person.app()?.update(event, &clock)?;
    let Some(Effect::HandOver { what, .. }) = update.effects.first() else { return Err(fault(())) };
    let mut file = Vec::new();
    person.app()?.export(what, &mut file, &clock)?;
    Ok(file)
}
