//! Fit: which flange sizes to try, why, and what to look for. Never a verdict.
//!
//! In: nipple diameters before and after, signs, the sizes in stock. Out: sizes with
//! a gap inside the rules' bounds. A flange is named by its inner diameter.

use crate::guidance::FitRules;
use crate::quantity::{Entered, Length, Quantity};
use crate::record::{moment, text, Fields};
use crate::time::{Instant, Moment, Span};

/// One side's nipple diameter.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nipple {
    /// Before expressing.
    pub before: Option<Length>,
    /// After it.
    pub after: Option<Length>,
}

/// A sign of how a flange fits, where it was looked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sign {
    /// The areola is drawn in.
    AreolaDrawnIn,
    /// The nipple rubs.
    Rubbing,
    /// The nipple is pale or marked afterwards.
    MarkedNipple,
    /// Milk comes only at the pump's highest vacuum.
    OnlyAtHighest,
}

impl Sign {
    /// Every sign with the field it stands in.
    pub const ALL: [(Self, &'static str); 4] = [
        (Self::AreolaDrawnIn, "areola_drawn_in"),
        (Self::Rubbing, "rubbing"),
        (Self::MarkedNipple, "marked_nipple"),
        (Self::OnlyAtHighest, "only_at_highest"),
    ];

    /// Which way a sign points.
    pub const fn points(self) -> Points {
        match self {
            // Milk only at the highest vacuum: a flange that is too big (common practice, no source).
            Self::AreolaDrawnIn | Self::OnlyAtHighest => Points::Smaller,
            Self::Rubbing => Points::Larger,
            Self::MarkedNipple => Points::Either,
        }
    }
}

/// Which way a sign points.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Points {
    /// To a smaller flange.
    Smaller,
    /// To a larger one.
    Larger,
    /// To another one, or to less vacuum.
    Either,
}

/// A measurement of one side, with its signs.
#[derive(Debug, Clone, PartialEq)]
pub struct Measured {
    /// When.
    pub at: Moment,
    /// The nipple.
    pub nipple: Nipple,
    /// Signs that were seen on this side.
    pub signs: Vec<Sign>,
    /// Signs that were looked for and not seen on this side.
    pub not_seen: Vec<Sign>,
}

/// Reads what a record says of a side, `left` or `right`.
pub fn measured(fields: &Fields, side: &str) -> Option<Measured> {
    let length = |when: &str| {
        let field = fields.get(&format!("nipple_{side}_{when}"))?;
        Entered::<Length>::from_json(field).map(|e| e.quantity())
    };
    let (mut signs, mut not_seen) = (Vec::new(), Vec::new());
    for (sign, field) in Sign::ALL {
        match text(fields, field) {
            Some(said) if said == side || said == "both" => signs.push(sign),
            Some(_) => not_seen.push(sign),
            None => {}
        }
    }
    Some(Measured {
        at: moment(fields, "at")?,
        nipple: Nipple { before: length("before"), after: length("after") },
        signs,
        not_seen,
    })
}

/// Sizes to try for a diameter.
#[derive(Debug, Clone, PartialEq)]
pub struct Candidates {
    /// The diameter they were reckoned from: before expressing, else after.
    pub diameter: Length,
    /// The least size: diameter and the least gap.
    pub from: Length,
    /// The largest.
    pub to: Length,
    /// Those in stock, the smallest first; empty where none is, or none is known.
    pub in_stock: Vec<Length>,
    /// Where none in stock lies within: the nearest in stock, the smaller of two
    /// that are equally near.
    pub nearest: Option<Length>,
}

/// Sizes for a nipple: flange = diameter + gap, the gap within the rules' bounds, 0 to
/// 4 mm as shipped (MDPI Proceedings 112(1), article 7: advice ranges from nipple size
/// to a gap of 4 mm). Both ends belong to it.
pub fn candidates(nipple: &Nipple, stock: &[Length], rules: &FitRules) -> Option<Candidates> {
    let diameter = nipple.before.or(nipple.after)?;
    let plus = |gap: Length| Length::from_canonical(diameter.canonical() + gap.canonical());
    let (from, to) = (plus(rules.gap_least), plus(rules.gap_most));
    let in_stock: Vec<Length> = stock.iter().copied().filter(|size| *size >= from && *size <= to).collect();
    let off = |size: &Length| (from.canonical() - size.canonical()).max(size.canonical() - to.canonical());
    let nearest = match in_stock.is_empty() {
        true => {
            stock.iter().copied().min_by(|a, b| off(a).total_cmp(&off(b)).then(a.canonical().total_cmp(&b.canonical())))
        }
        false => None,
    };
    Some(Candidates { diameter, from, to, in_stock, nearest })
}

/// Where a flange in use stands against the sizes to try.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum InUse {
    /// Within them.
    Within,
    /// Smaller than the least.
    Smaller,
    /// Larger than the largest.
    Larger,
}

/// Where a flange in use stands.
pub fn stands(size: Length, candidates: &Candidates) -> InUse {
    match size {
        size if size < candidates.from => InUse::Smaller,
        size if size > candidates.to => InUse::Larger,
        _ => InUse::Within,
    }
}

/// How far a nipple grew while expressing, where both were measured.
pub fn grew(nipple: &Nipple) -> Option<Length> {
    Some(Length::from_canonical(nipple.after?.canonical() - nipple.before?.canonical()))
}

/// When to measure again: so long after the last time.
pub fn measure_again(last: Instant, rules: &FitRules) -> Instant {
    last.plus(Span::milliseconds(rules.measure_again.in_milliseconds()))
}
