//! What a network of units may count a family for.

/// What a network may count a family for; each covers those before it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ConsentScope {
    /// How the units of the network do.
    Network,
    /// Research by others, reviewed by an ethics board, as well.
    Research,
}

impl ConsentScope {
    /// Every one.
    pub const ALL: [Self; 2] = [Self::Network, Self::Research];

    /// Stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Network => "network",
            Self::Research => "research",
        }
    }

    /// The one of this name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|scope| scope.name() == name)
    }
}
