//! Instants, and the time that passed between two.

/// Milliseconds since 1970-01-01T00:00:00Z.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Instant(i64);

/// Elapsed time, which no clock change touches.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Span(i64);

impl Instant {
    /// From Unix milliseconds.
    pub const fn from_unix_milliseconds(milliseconds: i64) -> Self {
        Self(milliseconds)
    }
    /// As Unix milliseconds.
    pub const fn unix_milliseconds(self) -> i64 {
        self.0
    }
    /// What passed since an earlier instant; negative where it is later.
    pub const fn since(self, earlier: Self) -> Span {
        Span(self.0.saturating_sub(earlier.0))
    }
    /// Later by a span.
    pub const fn plus(self, span: Span) -> Self {
        Self(self.0.saturating_add(span.0))
    }
    /// Earlier by a span.
    pub const fn minus(self, span: Span) -> Self {
        Self(self.0.saturating_sub(span.0))
    }
}

impl Span {
    /// From milliseconds.
    pub const fn milliseconds(value: i64) -> Self {
        Self(value)
    }
    /// From seconds.
    pub const fn seconds(value: i64) -> Self {
        Self(value.saturating_mul(1000))
    }
    /// From minutes.
    pub const fn minutes(value: i64) -> Self {
        Self(value.saturating_mul(60_000))
    }
    /// From hours.
    pub const fn hours(value: i64) -> Self {
        Self(value.saturating_mul(3_600_000))
    }
    /// In milliseconds.
    pub const fn in_milliseconds(self) -> i64 {
        self.0
    }
    /// In whole seconds, rounded down.
    pub const fn in_seconds(self) -> i64 {
        self.0.div_euclid(1000)
    }
    /// In whole minutes, rounded down.
    pub const fn in_minutes(self) -> i64 {
        self.0.div_euclid(60_000)
    }
    /// This span as a share of another, 0 where the other is empty.
    pub fn share_of(self, whole: Self) -> f32 {
        if whole.0 <= 0 {
            0.0
        } else {
            (self.0 as f64 / whole.0 as f64) as f32
        }
    }
}
