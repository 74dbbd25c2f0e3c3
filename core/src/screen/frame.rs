//! What stands around every screen.

use super::shapes::{Action, Appearance, Event, Frame, Hand, Notice, Palette, Place, Screen, Sign, Tone, Weight};
use super::tab::Tab;
use super::View;
use crate::record::{Rhythm, RHYTHM};
use crate::trouble::Trouble;

impl View<'_> {
    /// The frame of a place.
    pub(super) fn frame(&self, place: &Place, title: String, subtitle: String) -> Result<Frame, Trouble> {
        let words = self.words();
        // Elsewhere nobody knows what would be taken back.
        let happened_here =
            self.acted_at.is_none_or(|places| places.iter().any(|there| Tab::of(there) == Tab::of(place)));
        let undo = self.journal.undoable()?.filter(|_| happened_here).map(|act| {
            let what = words.say(&format!("act-{}", act.name));
            Action::new("undo", words.say("undo"), Event::Undo)
                .detail(what.clone())
                .spoken(words.with("undo-spoken", &[("what", what.into())]))
                .sign(Sign::Undo)
                .weight(Weight::Quiet)
        });
        let redo = self.journal.redoable()?.filter(|_| happened_here).map(|act| {
            let what = words.say(&format!("act-{}", act.name));
            Action::new("redo", words.say("redo"), Event::Redo)
                .detail(what.clone())
                .spoken(words.with("redo-spoken", &[("what", what.into())]))
                .sign(Sign::Redo)
                .weight(Weight::Quiet)
        });
        Ok(Frame {
            title,
            subtitle,
            places: self.places(place),
            back: None,
            undo,
            redo,
            notices: self.standing_notices(place)?,
            look: Appearance {
                hand: if self.settings.hand == "left" { Hand::Left } else { Hand::Right },
                palette: match self.settings.palette.as_str() {
                    "light" => Palette::Light,
                    "night" => Palette::Night,
                    _ if self.is_asleep_by_now()? => Palette::Night,
                    _ => Palette::AsDevice,
                },
            },
            right_to_left: self.texts.is_right_to_left(),
            terms: super::term::asks(self, super::term::on(place)),
            ask_again_milliseconds: None,
        })
    }

    /// The way back to where a place was opened from.
    pub(super) fn back(&self) -> Action {
        Action::new("back", self.words().say("back"), Event::Back).sign(Sign::Back).weight(Weight::Quiet)
    }

    /// Whether it is within the sleep window that was set: no one is to be woken by light.
    fn is_asleep_by_now(&self) -> Result<bool, Trouble> {
        let Some((from, until)) = Rhythm::read(&self.record(RHYTHM)?.1).sleep else { return Ok(false) };
        let now = self.present().on_the_wall().time();
        Ok(if from.0 <= until.0 { (from.0..until.0).contains(&now) } else { now >= from.0 || now < until.0 })
    }

    fn places(&self, place: &Place) -> Vec<Action> {
        let words = self.words();
        let here = Tab::of(place);
        let tab = |tab: Tab| {
            let name = format!("place-{}", tab.name());
            let label = words.say(&name);
            Action::new(name, label, Event::Go { place: tab.place() })
                .sign(tab.sign())
                .chosen(here == Some(tab))
                .weight(Weight::Quiet)
        };
        Tab::ALL.map(tab).into()
    }

    fn standing_notices(&self, place: &Place) -> Result<Vec<Notice>, Trouble> {
        let words = self.words();
        let mut notices: Vec<Notice> = super::caution::line(self, place)?.into_iter().collect();
        if self.shared.is_some() {
            let at = self.present();
            let day = crate::time::LocalDay::of(&at, self.settings.day_start);
            let text = words.with("as-of", &[("date", words.date(day).into()), ("time", words.clock(&at).into())]);
            notices.push(Notice {
                key: "as-of".to_owned(),
                tone: Tone::Strip,
                spoken: text.clone(),
                text,
                actions: Vec::new(),
            });
        }
        let keeps_keys = matches!(place, Place::Visit | Place::Desk) && self.shared.is_none();
        if keeps_keys && self.journal.key().is_some() && !self.journal.has_recovery() {
            let text = words.say("no-recovery");
            let make = words.say("make-recovery");
            notices.push(Notice {
                key: "no-recovery".to_owned(),
                tone: Tone::Asks,
                spoken: text.clone(),
                text,
                actions: vec![Action::new("make-recovery", make, Event::Go { place: Place::Recovery })],
            });
        }
        if self.look_around {
            let text = words.say("looking-around");
            notices.push(Notice {
                key: "looking-around".to_owned(),
                tone: Tone::Strip,
                spoken: text.clone(),
                text,
                actions: vec![Action::new("leave-look-around", words.say("leave-look-around"), Event::LeaveLookAround)
                    .weight(Weight::Quiet)],
            });
        }
        for said in self.messages {
            let text = super::trouble_words::render(words, said.key, &said.needs);
            notices.push(Notice {
                key: said.key.to_owned(),
                tone: said.tone,
                spoken: text.clone(),
                text,
                actions: said
                    .leads_to
                    .iter()
                    .map(|(label, place)| Action::new(*label, words.say(label), Event::Go { place: place.clone() }))
                    .chain([Action::new(
                        "dismiss",
                        words.say("dismiss"),
                        Event::Dismiss { notice: said.key.to_owned() },
                    )
                    .weight(Weight::Quiet)])
                    .collect(),
            });
        }
        // What stands in place of a locked record takes nothing in, and no disk is full.
        if self.journal.is_read_only() && !self.locked {
            let text = words.say("read-only");
            notices.push(Notice {
                key: "read-only".to_owned(),
                tone: Tone::Caution,
                spoken: text.clone(),
                text,
                actions: Vec::new(),
            });
        }
        if let Some(ahead) = self.journal.clock_ahead()? {
            let text = words.with("clock-ahead", &[("span", words.span(ahead).into())]);
            notices.push(Notice {
                key: "clock-ahead".to_owned(),
                tone: Tone::Caution,
                spoken: text.clone(),
                text,
                actions: Vec::new(),
            });
        }
        Ok(notices)
    }
}

macro_rules! frame_of {
    ($screen:expr) => {
        match $screen {
            Screen::Welcome { frame, .. }
            | Screen::Question { frame, .. }
            | Screen::Ready { frame, .. }
            | Screen::Running { frame, .. }
            | Screen::Amounts { frame, .. }
            | Screen::Day { frame, .. }
            | Screen::Tonight { frame, .. }
            | Screen::Supply { frame, .. }
            | Screen::Findings { frame, .. }
            | Screen::Check { frame, .. }
            | Screen::Card { frame, .. }
            | Screen::Form { frame, .. }
            | Screen::List { frame, .. }
            | Screen::Sheet { frame, .. } => frame,
        }
    };
}

impl Screen {
    /// What surrounds it.
    pub fn frame(&self) -> &Frame {
        frame_of!(self)
    }

    /// As [`Self::frame`], to change it.
    pub fn frame_mut(&mut self) -> &mut Frame {
        frame_of!(self)
    }
}
