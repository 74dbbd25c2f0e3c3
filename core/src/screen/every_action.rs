//! Every action of a screen, wherever it stands.
//!
//! A field of a shape is named below as one that holds actions or as one that holds none: a new
//! one does not compile until it is.

use super::shapes::*;

/// What may hold actions.
pub(crate) trait HasActions {
    /// Goes over all of them.
    fn for_each_action(&mut self, visit: &mut dyn FnMut(&mut Action));
}

impl HasActions for Action {
    fn for_each_action(&mut self, visit: &mut dyn FnMut(&mut Action)) {
        visit(self);
    }
}

impl<T: HasActions> HasActions for Vec<T> {
    fn for_each_action(&mut self, visit: &mut dyn FnMut(&mut Action)) {
        self.iter_mut().for_each(|one| one.for_each_action(visit));
    }
}

impl<T: HasActions> HasActions for Option<T> {
    fn for_each_action(&mut self, visit: &mut dyn FnMut(&mut Action)) {
        self.iter_mut().for_each(|one| one.for_each_action(visit));
    }
}

macro_rules! visited {
    ($shape:ident { $($holds:ident),* } beside { $($without:ident),* }) => {
        impl HasActions for $shape {
            fn for_each_action(&mut self, visit: &mut dyn FnMut(&mut Action)) {
                let Self { $($holds,)* $($without: _,)* } = self;
                $($holds.for_each_action(visit);)*
            }
        }
    };
}

visited!(CardScreen { actions } beside { matrix, words_label, words, line_label, line, lines, spoken });
visited!(Menu { actions } beside { label });
visited!(CheckScreen { reading, near, asks, at, readings, set_up, done } beside { headline, steps, near_label, dial, spoken });
visited!(DayChoice { days } beside { text, spoken, spoken_open });
visited!(DayScreen { earlier, choice, later, entries, add, taken_out } beside { figure, caption, sides, picture, empty, taken_out_label });
visited!(EntryRow { open, others } beside { id, time, title, detail, amount, sides, strip, care, spoken });
visited!(FindingsScreen { asks, actions, sections } beside { headline, figure, caption, dial, lines, spoken });
visited!(Section { fields, rows, actions } beside { key, title, lines, plot, shelf });
visited!(FormScreen { notices, groups, actions } beside { id, strip });
visited!(FieldGroup { rows } beside { key, title });
visited!(FieldRow { options, less, more, clear, done } beside { id, field, label, kind, value, unit, hint, spoken });
visited!(Frame { places, back, undo, redo, notices, terms } beside { title, subtitle, look, right_to_left, ask_again_milliseconds });
visited!(Notice { actions } beside { key, tone, text, spoken });
visited!(ListScreen { groups } beside { intro });
visited!(ListGroup { rows, add } beside { key, title, empty });
visited!(ListRow { open } beside { title, detail, aside, spoken });
visited!(WelcomeScreen { actions } beside { headline, lines });
visited!(QuestionScreen { answers, skip } beside { headline, line });
visited!(ReadyScreen { set_up, start, just_pumped, today, settings, add } beside { figure, caption, lead, rests, spoken });
visited!(SetUpLine { rows } beside { text, spoken, spoken_open, open });
visited!(ChoiceRow { options } beside { key, label });
visited!(RunningScreen { dials, marks, pain, finish } beside { figure, caption, lead, strip, spoken });
visited!(Dial { as_last_time, less, more } beside { key, label, value, spoken });
visited!(AmountsScreen { columns, together, keep, done, later } beside { session, headline, caption, lead, scale, spoken });
visited!(AmountColumn { typing, less, more, less_fine, more_fine, unknown } beside { column, readings, unit });
visited!(SheetScreen { fields, parts, hand_over } beside { intro, left_out, sources, foot, spoken });
visited!(SheetPart { leave } beside { key, title, sections, out, said_out });
visited!(SupplyScreen { asks, spans, changes, parts, against, behind, kept } beside { headline, figure, caption, lines, weeks, sides, hours, spoken });
visited!(ChangeNote { beside } beside { key, title, detail, beside_label, spoken });
visited!(TonightScreen { asks, start, actions, choices, times, sections } beside { headline, figure, caption, why, night, figures, spoken });

impl HasActions for Screen {
    fn for_each_action(&mut self, visit: &mut dyn FnMut(&mut Action)) {
        let (frame, body): (&mut Frame, &mut dyn HasActions) = match self {
            Self::Welcome { frame, welcome } => (frame, welcome),
            Self::Question { frame, question } => (frame, question),
            Self::Ready { frame, ready } => (frame, ready),
            Self::Running { frame, running } => (frame, running),
            Self::Amounts { frame, amounts } => (frame, amounts),
            Self::Day { frame, day } => (frame, day),
            Self::Tonight { frame, tonight } => (frame, tonight),
            Self::Supply { frame, supply } => (frame, supply),
            Self::Findings { frame, findings } => (frame, findings),
            Self::Check { frame, check } => (frame, check),
            Self::Card { frame, card } => (frame, card),
            Self::Form { frame, form } => (frame, form),
            Self::List { frame, list } => (frame, list),
            Self::Sheet { frame, sheet } => (frame, sheet),
        };
        frame.for_each_action(visit);
        body.for_each_action(visit);
    }
}
