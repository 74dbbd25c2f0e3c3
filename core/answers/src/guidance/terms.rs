//! Words of the trade that are explained where they stand.

use super::tables::Tables;
use super::Term;

/// A word of the trade.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Word {
    /// How hard a pump pulls.
    Vacuum,
    /// When milk begins to flow.
    Letdown,
    /// What sits on the breast.
    Flange,
    /// Millimetres of mercury.
    MmHg,
    /// Age counted from the day that was due.
    CorrectedAge,
    /// How far a figure may be off.
    Range,
}

impl Word {
    /// All there are.
    pub const ALL: [Self; 6] = [Self::Vacuum, Self::Letdown, Self::Flange, Self::MmHg, Self::CorrectedAge, Self::Range];

    /// Its name in the table, in places and in sentences.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Vacuum => "vacuum",
            Self::Letdown => "letdown",
            Self::Flange => "flange",
            Self::MmHg => "mmhg",
            Self::CorrectedAge => "corrected-age",
            Self::Range => "range",
        }
    }

    /// The one of this name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|word| word.name() == name)
    }

    /// Where its meaning comes from.
    pub fn term(self) -> Option<&'static Term> {
        Tables::shipped().terms.iter().find(|term| term.key == self.name())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_word_is_in_the_table_with_a_source_or_as_common_practice_and_no_other() {
        for word in Word::ALL {
            let term = word.term().expect(word.name());
            assert_ne!(term.source.is_some(), term.common_practice, "{term:?}");
            assert_eq!(term.source.is_some(), term.year.is_some(), "{term:?}");
            assert_eq!(Word::named(word.name()), Some(word));
        }
        assert_eq!(Tables::shipped().terms.len(), Word::ALL.len());
    }
}
