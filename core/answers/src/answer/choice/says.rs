//! What the lines of the table can say.

use super::reaches::Reaches;
use crate::answer::pump::Grade;
use crate::quantity::Count;
use crate::record::offered::SettingsApart;
use crate::record::wanted::MustRun;

/// What a line is about, in the order of the table.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Aspect {
    /// Whether its figures bear out what it is called.
    Grade,
    /// How strong it gets.
    Strength,
    /// Whether that is enough for nearly all milk, or a long stay on a unit.
    MostMilk,
    /// How fast it cycles.
    Cycles,
    /// Whether vacuum and cycles are set apart.
    SetApart,
    /// Whether it has a stimulation phase.
    Stimulation,
    /// Both sides at once.
    BothAtOnce,
    /// Where it runs.
    Runs,
    /// How long its motor lasts.
    Motor,
    /// Whether it can be had after others.
    SharedUse,
}

impl Aspect {
    /// All of them, in the order of the table.
    pub const ALL: [Self; 10] = [
        Self::Grade,
        Self::Strength,
        Self::MostMilk,
        Self::Cycles,
        Self::SetApart,
        Self::Stimulation,
        Self::BothAtOnce,
        Self::Runs,
        Self::Motor,
        Self::SharedUse,
    ];

    /// The rules it goes by; none where common practice names no figure.
    pub const fn rules(self) -> &'static [&'static str] {
        match self {
            Self::Grade => &["hospital_low", "hospital_usual", "hospital_high", "personal_low", "personal_high"],
            Self::Strength => &["good_low", "good_high", "personal_low"],
            Self::MostMilk => &["most_above"],
            Self::Cycles => &["usual_cycles_low", "usual_cycles_high"],
            Self::Motor => &["life_from", "life_to"],
            Self::SetApart | Self::Stimulation | Self::BothAtOnce | Self::Runs | Self::SharedUse => &[],
        }
    }
}

/// How a pump stands to what is wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Found {
    /// It fits.
    Fits,
    /// Some of what it states does.
    Partly,
    /// It does not.
    DoesNot,
    /// What is stated does not tell.
    CannotTell,
    /// It is not stated, and may be asked for.
    NotStated,
    /// Nothing was wanted of it.
    NothingWanted,
}

impl Found {
    /// What a limit that is wanted makes of a stated range.
    pub(super) const fn of(reaches: Reaches) -> Self {
        match reaches {
            Reaches::Yes => Self::Fits,
            Reaches::Partly => Self::Partly,
            Reaches::No => Self::DoesNot,
            Reaches::OpenAbove => Self::CannotTell,
            Reaches::NotStated => Self::NotStated,
        }
    }
}

/// What it is called, and how its figures stand to that; nothing for a hand pump.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Claim {
    /// What it is called.
    pub grade: Grade,
    /// Whether it reaches what such pumps reach.
    pub reaches: Option<Reaches>,
}

/// How strong a pump gets by what it states.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Strength {
    /// Whether it reaches what is good for any pump.
    pub good: Reaches,
    /// Whether it reaches what is no weak motor.
    pub no_weak: Reaches,
    /// Whether it goes beyond what is good for any.
    pub beyond: Reaches,
}

/// How stated cycles stand to those of usual pumps.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CyclesAre {
    /// They reach over all of them.
    AllOfThem,
    /// Over some of them.
    SomeOfThem,
    /// Over none.
    NoneOfThem,
    /// One end is not stated.
    OneEnd,
    /// Neither is.
    NotStated,
}

/// What there is to say.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Says {
    /// A question about its figures comes first.
    AskFirst,
    /// It is worked by hand, which sets that.
    ByHand,
    /// It is called nothing.
    NoClaim,
    /// It is called something.
    Claim(Claim),
    /// It is called hospital grade, and made for one person.
    HospitalForOne,
    /// How strong it gets; whether a weaker motor would run daily.
    Strength {
        /// By what it states.
        strength: Strength,
        /// It would run daily.
        daily: bool,
    },
    /// Whether it goes above what is for nearly all milk.
    MostMilk(Reaches),
    /// How its cycles stand.
    Cycles(CyclesAre),
    /// How its settings are made.
    SetApart(Option<SettingsApart>),
    /// Whether it has a stimulation phase.
    Stimulation(Option<bool>),
    /// Whether it runs both sides at once.
    BothAtOnce(Option<bool>),
    /// Whether it runs where it must.
    Runs {
        /// Where.
        wanted: Option<MustRun>,
        /// Whether it does.
        does: Option<bool>,
    },
    /// How long its motor lasts.
    Motor {
        /// Made for one person.
        for_one: Option<bool>,
        /// Whether its warranty covers the time that is planned.
        covers: Option<bool>,
        /// Months of warranty.
        warranty: Option<Count>,
    },
    /// It is new.
    NotShared,
    /// It is not stated how it is offered.
    HowNotStated,
    /// Others had it, and it is made for one.
    SharedForOne,
    /// Others had it, and milk may reach its motor.
    SharedOpen,
    /// It is made to be shared.
    SharedForSeveral,
    /// Others had it, and it is not stated whether it is made for that.
    SharedUnknown,
}

/// A line of the table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Line {
    /// What it is about.
    pub aspect: Aspect,
    /// How the pump stands to what is wanted.
    pub found: Found,
    /// What there is to say.
    pub says: Says,
}
