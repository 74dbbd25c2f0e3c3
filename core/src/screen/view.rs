//! What a screen looks from: the record as it was gathered, and the words.

use std::ops::Deref;

use super::message::Message;
use super::shapes::ListRow;
use super::Words;
use crate::answer::caution::Caution;
use crate::gather::Record;
use crate::share::exchange::Report;
use crate::share::sealed::card::Card;
use crate::text::Texts;
use crate::trouble::Trouble;

/// Everything a screen may look at: a record, and the words for it.
pub struct View<'a> {
    /// The record.
    pub record: Record<'a>,
    /// The sentences.
    pub texts: &'a Texts,
    /// What stands now, the most urgent first: a line around every screen.
    pub cautions: Vec<Caution>,
    /// Whether this is the invented family's record.
    pub look_around: bool,
    /// What was said after the last event, if anything.
    pub messages: &'a [Message],
    /// What came of the last file, if one was brought in.
    pub report: Option<&'a Report>,
    /// How the host can call.
    pub alarms: AlarmsAre,
    /// What waits for a yes.
    pub asked: Option<&'a super::waiting::Asked>,
    /// Where the last act happened; none where that is not known.
    pub acted_at: Option<&'a [super::shapes::Place; 2]>,
    /// A passphrase that was made up, where one is offered.
    pub offered: Option<&'a str>,
    /// The consultant's own card, where it is asked for.
    pub own_card: Option<Card>,
    /// Whether the record is sealed, and its key is not there.
    pub locked: bool,
    /// Whether this is the record of a consultant's desk.
    pub desk: bool,
    /// On the desk, the record that a plan is written for, as it was shared last.
    pub(crate) family: Option<&'a View<'a>>,
}

/// How the host can call the person, as far as it said.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct AlarmsAre {
    /// On the minute.
    pub exact: bool,
    /// So that it is seen.
    pub shown: bool,
}

impl Default for AlarmsAre {
    fn default() -> Self {
        Self { exact: true, shown: true }
    }
}

/// A view is its record first of all.
impl<'a> Deref for View<'a> {
    type Target = Record<'a>;

    fn deref(&self) -> &Record<'a> {
        &self.record
    }
}

impl<'a> View<'a> {
    /// A view of a record, with nothing said yet.
    pub fn new(record: Record<'a>, texts: &'a Texts) -> Self {
        Self {
            record,
            texts,
            cautions: Vec::new(),
            look_around: false,
            messages: &[],
            report: None,
            alarms: AlarmsAre::default(),
            asked: None,
            acted_at: None,
            offered: None,
            own_card: None,
            locked: false,
            desk: false,
            family: None,
        }
    }

    /// What is found in the record that a plan is written for. Where that record is damaged
    /// nothing is: it is no trouble of this one, which would be mended for it.
    pub(in crate::screen) fn in_family<T>(&self, look: impl FnOnce(&View<'_>) -> Result<T, Trouble>) -> Option<T> {
        self.family.and_then(|family| look(family).ok())
    }

    /// The words of this view.
    pub fn words(&self) -> Words<'_> {
        Words::new(self.texts, &self.record.settings)
    }

    /// A row that tells and opens nothing.
    pub(super) fn text_row(&self, title: String, detail: String) -> ListRow {
        let spoken =
            self.words().with("row-spoken", &[("title", title.clone().into()), ("detail", detail.clone().into())]);
        ListRow { title, detail, aside: String::new(), spoken, open: None }
    }
}
