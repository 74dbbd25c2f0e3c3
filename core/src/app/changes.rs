//! What an event may change, so that no list of events is kept beside it.

use crate::screen::shapes::{DeskEvent, Event, Export};

/// What an event may change.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Changes {
    /// Nothing that is kept.
    Nothing,
    /// Nothing that is kept; but time has gone on, and with it the plan of the night.
    Time,
    /// The record, and not what the night is planned from.
    Record,
    /// The record, and with it when the person is to be called.
    Night,
}

impl Changes {
    /// What an event may change.
    pub(super) fn of(event: &Event) -> Self {
        match event {
            Event::Go { .. } | Event::Back | Event::Dismiss { .. } | Event::AlarmsAre { .. } | Event::Call { .. } => {
                Self::Nothing
            }
            Event::OnDesk { event } => Self::on_desk(event),
            Event::Export { what } => Self::by_export(what),
            Event::Wake => Self::Time,
            Event::Start
            | Event::JustPumped { .. }
            | Event::StartingAnswer { .. }
            | Event::Finish
            | Event::FinishAt { .. }
            | Event::AmountsDone { .. }
            | Event::AddMissed { .. }
            | Event::Add { .. }
            | Event::Enter { .. }
            | Event::Step { .. }
            | Event::Clear { .. }
            | Event::Remove { .. }
            | Event::BringBack { .. }
            | Event::MovePlanned { .. }
            | Event::SkipPlanned { .. }
            | Event::SnoozePlanned { .. }
            | Event::PlanAnswer { .. }
            | Event::PlanAcceptAll { .. }
            | Event::TakeWaiting
            | Event::EraseRecord
            | Event::Undo
            | Event::Redo => Self::Night,
            // What is asked for here changes it when it comes.
            Event::EnterSecret { .. }
            | Event::Begin
            | Event::MakeRecovery
            | Event::SealWithCode
            | Event::PickRecord
            | Event::PickTrace { .. }
            | Event::LookAround
            | Event::LeaveLookAround
            | Event::LeaveWaiting
            | Event::LeaveSealed
            | Event::SetUp { .. }
            | Event::Mark { .. }
            | Event::Pain { .. }
            | Event::SoFar { .. }
            | Event::StillRunning { .. }
            | Event::DrawAmount { .. }
            | Event::StepAmount { .. }
            | Event::AmountUnknown { .. }
            | Event::AmountsLater { .. }
            | Event::MeasureTogether { .. }
            | Event::GapIsWhole { .. }
            | Event::GapHidesOne { .. }
            | Event::AmountIsRight { .. }
            | Event::TakeCardIn { .. }
            | Event::WordsSame { .. }
            | Event::AddPlanPart { .. }
            | Event::ChooseRule { .. }
            | Event::LeaveOut { .. }
            | Event::GiveConsent { .. }
            | Event::WithdrawConsent
            | Event::CautionDealt { .. }
            | Event::SignsAgain { .. }
            | Event::SinceBefore { .. }
            | Event::BeginCheck { .. }
            | Event::ReadAt { .. }
            | Event::ReadingsAreRight { .. }
            | Event::MeantIn { .. }
            | Event::KeepMilk { .. }
            | Event::PourInto { .. }
            | Event::Milk { .. }
            | Event::Cleaned { .. }
            | Event::StartSearch { .. }
            | Event::SearchAt
            | Event::StopSearch
            | Event::BeginTrial { .. }
            | Event::TrialDone { .. }
            | Event::StopTrial { .. }
            | Event::BeginTrace { .. } => Self::Record,
        }
    }

    fn on_desk(event: &DeskEvent) -> Self {
        match event {
            DeskEvent::OpenFamily { .. }
            | DeskEvent::OpenDesk { .. }
            | DeskEvent::OnlyReason { .. }
            | DeskEvent::WatchFolder
            | DeskEvent::LeaveFolder
            | DeskEvent::FolderIs { .. } => Self::Nothing,
            DeskEvent::RemoveFamily { .. } | DeskEvent::WritePlan { .. } => Self::Record,
        }
    }

    fn by_export(what: &Export) -> Self {
        match what {
            Export::Record
            | Export::Sheet { .. }
            | Export::Table { .. }
            | Export::TableSchema { .. }
            | Export::Tables
            | Export::HealthRecord => Self::Nothing,
            // What went out is kept: a calendar's sessions, a family's name, when a plan was sent.
            Export::Calendar | Export::SealedFor { .. } | Export::SealedByPassphrase | Export::Plan { .. } => {
                Self::Record
            }
        }
    }

    /// Whether the record stays as it is.
    pub(super) fn only_reads(self) -> bool {
        match self {
            Self::Nothing | Self::Time => true,
            Self::Record | Self::Night => false,
        }
    }

    /// Whether the person may have to be called at another time.
    pub(super) fn moves_the_plan(self) -> bool {
        match self {
            Self::Time | Self::Night => true,
            Self::Nothing | Self::Record => false,
        }
    }
}
