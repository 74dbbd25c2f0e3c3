//! The five places at the foot of the screen, and which of them each place belongs to.

use super::shapes::{Place, Sign};

/// The span that Supply opens with.
pub(crate) const SUPPLY_SPAN: u32 = 28;

/// A place at the foot of the screen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Tab {
    Now,
    Tonight,
    Supply,
    Kit,
    Visit,
}

impl Tab {
    pub(crate) const ALL: [Self; 5] = [Self::Now, Self::Tonight, Self::Supply, Self::Kit, Self::Visit];

    /// Which one a place belongs to; none on a consultant's desk.
    pub(crate) fn of(place: &Place) -> Option<Self> {
        match place {
            Place::Now
            | Place::Amounts { .. }
            | Place::JustPumped { .. }
            | Place::Starting { .. }
            | Place::Day { .. }
            | Place::Entry { .. } => Some(Self::Now),
            Place::Tonight => Some(Self::Tonight),
            Place::Supply { .. }
            | Place::SupplyMore { .. }
            | Place::SupplyFigures { .. }
            | Place::Compare { .. }
            | Place::Kept
            | Place::Container { .. }
            | Place::UseFirst { .. } => Some(Self::Supply),
            Place::Kit
            | Place::Pump { .. }
            | Place::Check { .. }
            | Place::Trace { .. }
            | Place::Fit
            | Place::Comfort
            | Place::Letdown
            | Place::Trial { .. } => Some(Self::Kit),
            Place::Visit
            | Place::Sheet
            | Place::Plan { .. }
            | Place::PlanRules { .. }
            | Place::Erasing
            | Place::Recovery
            | Place::Tables
            | Place::Consent { .. }
            | Place::Consultant { .. }
            | Place::Sharing
            | Place::Sealed
            | Place::Asked
            | Place::Caution { .. }
            | Place::Cautions
            | Place::Family
            | Place::Report => Some(Self::Visit),
            // A word may stand in any of them.
            Place::Term { .. } | Place::Desk | Place::OwnCard | Place::CaseFamily { .. } | Place::Removing { .. } => {
                None
            }
        }
    }

    /// Where it leads.
    pub(crate) fn place(self) -> Place {
        match self {
            Self::Now => Place::Now,
            Self::Tonight => Place::Tonight,
            Self::Supply => Place::Supply { days: SUPPLY_SPAN },
            Self::Kit => Place::Kit,
            Self::Visit => Place::Visit,
        }
    }

    pub(crate) fn name(self) -> &'static str {
        match self {
            Self::Now => "now",
            Self::Tonight => "tonight",
            Self::Supply => "supply",
            Self::Kit => "kit",
            Self::Visit => "visit",
        }
    }

    pub(crate) fn sign(self) -> Sign {
        match self {
            Self::Now => Sign::Now,
            Self::Tonight => Sign::Tonight,
            Self::Supply => Sign::Supply,
            Self::Kit => Sign::Kit,
            Self::Visit => Sign::Visit,
        }
    }
}

/// Whether a place begins anew, or opens over where the person is and leads back there.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Opens {
    /// It begins anew.
    Anew,
    /// Over a tab, wherever the person was.
    OverTab(Tab),
    /// Over that tab, where the person is not in it already.
    WithinTab(Tab),
    /// Over where the person is.
    Over,
}

impl Opens {
    pub(crate) fn of(place: &Place) -> Self {
        match place {
            Place::Now | Place::Tonight | Place::Supply { .. } | Place::Kit | Place::Visit | Place::Desk => Self::Anew,
            // A day is looked at from the first place, and leads back to it; so is what is asked there.
            Place::Day { .. } | Place::JustPumped { minutes_ago: None } => Self::OverTab(Tab::Now),
            Place::Family => Self::WithinTab(Tab::Visit),
            Place::Entry { .. }
            | Place::Amounts { .. }
            | Place::JustPumped { .. }
            | Place::Starting { .. }
            | Place::Caution { .. }
            | Place::Consultant { .. }
            | Place::Plan { .. }
            | Place::PlanRules { .. }
            | Place::Erasing
            | Place::Recovery
            | Place::Tables
            | Place::Consent { .. }
            | Place::Sharing
            | Place::OwnCard
            | Place::CaseFamily { .. }
            | Place::Removing { .. }
            | Place::Sealed
            | Place::Asked
            | Place::Cautions
            | Place::Report
            | Place::Sheet
            | Place::SupplyMore { .. }
            | Place::SupplyFigures { .. }
            | Place::Compare { .. }
            | Place::Kept
            | Place::Container { .. }
            | Place::UseFirst { .. }
            | Place::Pump { .. }
            | Place::Check { .. }
            | Place::Trace { .. }
            | Place::Fit
            | Place::Term { .. }
            | Place::Comfort
            | Place::Letdown
            | Place::Trial { .. } => Self::Over,
        }
    }
}
