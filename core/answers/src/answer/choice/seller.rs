//! What to ask whoever offers a pump: what its sheet does not state.

use super::grade::grade;
use crate::answer::pump::Grade;
use crate::record::wanted::MustRun;
use crate::record::{Offered, Wanted};

/// A question.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Question {
    /// How strong it gets.
    HighestVacuum,
    /// How strong at most: only the lower end is stated.
    UpToWhich,
    /// How fast it cycles, from and to.
    Cycles,
    /// Whether vacuum and cycles are set apart.
    SetApart,
    /// Whether it has a stimulation phase.
    Stimulation,
    /// Whether it runs both sides at once.
    BothAtOnce,
    /// What it runs on.
    Power,
    /// Whether it is worn in the clothes.
    InClothes,
    /// For how many people it is made.
    MadeFor,
    /// Whether milk can reach its motor.
    MilkPath,
    /// How many hours it has run.
    HoursRun,
    /// How long the motor's warranty is.
    Warranty,
}

impl Question {
    /// Its name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::HighestVacuum => "highest-vacuum",
            Self::UpToWhich => "up-to-which",
            Self::Cycles => "cycles",
            Self::SetApart => "set-apart",
            Self::Stimulation => "stimulation",
            Self::BothAtOnce => "both-at-once",
            Self::Power => "power",
            Self::InClothes => "in-clothes",
            Self::MadeFor => "made-for",
            Self::MilkPath => "milk-path",
            Self::HoursRun => "hours-run",
            Self::Warranty => "warranty",
        }
    }
}

/// What is not stated and matters for any pump, or for what is wanted.
pub fn questions(offered: &Offered, wanted: &Wanted) -> Vec<Question> {
    let hand = grade(offered) == Some(Grade::Hand);
    let shared = offered.is_shared();
    let cycles = offered.cycles.least().is_some() && offered.cycles.most().is_some();
    let asked = [
        (!offered.vacuum.is_stated(), Question::HighestVacuum),
        (offered.vacuum.least().is_some() && offered.vacuum.most().is_none(), Question::UpToWhich),
        (!hand && !cycles, Question::Cycles),
        (!hand && offered.apart.is_none(), Question::SetApart),
        (!hand && offered.stimulation.is_none(), Question::Stimulation),
        (wanted.both_at_once && offered.both_at_once.is_none(), Question::BothAtOnce),
        (
            matches!(wanted.runs, Some(MustRun::Mains | MustRun::Battery)) && !hand && offered.mains.is_none(),
            Question::Power,
        ),
        (wanted.runs == Some(MustRun::InClothes) && offered.in_clothes.is_none(), Question::InClothes),
        (offered.for_several.is_none() && (shared || offered.grade.is_none()), Question::MadeFor),
        (shared && offered.closed.is_none(), Question::MilkPath),
        (shared && !hand, Question::HoursRun),
        (!hand && !shared && offered.warranty_months.is_none(), Question::Warranty),
    ];
    asked.into_iter().filter_map(|(asked, question)| asked.then_some(question)).collect()
}
