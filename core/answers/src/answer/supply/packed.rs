//! A day as a journal keeps it, so that a new session works out its own days and not the history.

use super::day::{DayProduction, Observed, SideOfDay};
use crate::quantity::Count;
use crate::time::{LocalDay, Span};

/// Changes with every change to how a day is worked out.
pub const VERSION: u8 = 3;

/// A day as bytes; the first says in which way.
pub fn pack(made: &DayProduction) -> Vec<u8> {
    let mut bytes = vec![VERSION];
    let mut put = |value: f64| bytes.extend((value as f32).to_le_bytes());
    put(made.lasted.in_minutes() as f64);
    put(made.longest_gap.map_or(-1.0, |g| g.in_minutes() as f64));
    for count in [made.emptyings, made.intervals, made.sessions_missing, made.unclear, made.amounts_in_doubt] {
        put(f64::from(count.get()));
    }
    for side in &made.sides {
        put(f64::from(u8::from(side.takes_part)));
        for seen in [side.shared, side.alone].into_iter().chain(side.by_part) {
            let (milk, hours) = seen.parts();
            put(milk);
            put(hours);
        }
    }
    bytes
}

/// Values of a day, in the order of [`pack`].
const VALUES: usize = 33;

/// A day from its bytes; none where they were written in another way.
pub fn unpack(day: LocalDay, bytes: &[u8]) -> Option<DayProduction> {
    let (version, rest) = bytes.split_first()?;
    if *version != VERSION || rest.len() != VALUES * 4 {
        return None;
    }
    let mut values = [0.0_f64; VALUES];
    for (value, four) in values.iter_mut().zip(rest.chunks_exact(4)) {
        let &[a, b, c, d] = four else { return None };
        *value = f64::from(f32::from_le_bytes([a, b, c, d]));
    }
    if values.iter().any(|value| !value.is_finite()) {
        return None;
    }
    let [lasted, gap, emptyings, intervals, missing, unclear, in_doubt, sides @ ..] = values;
    let count = |value: f64| Count::new(value as u32);
    let mut made = DayProduction::unobserved(day, Span::minutes(lasted as i64));
    made.longest_gap = (gap >= 0.0).then(|| Span::minutes(gap as i64));
    made.emptyings = count(emptyings);
    made.intervals = count(intervals);
    made.sessions_missing = count(missing);
    made.unclear = count(unclear);
    made.amounts_in_doubt = count(in_doubt);
    for (side, of_side) in made.sides.iter_mut().zip(sides.chunks_exact(13)) {
        let (takes_part, seen) = of_side.split_first()?;
        let mut pairs = seen.chunks_exact(2).map(|pair| match pair {
            &[milk, hours] => Observed::from_parts(milk, hours),
            _ => Observed::default(),
        });
        let mut next = || pairs.next().unwrap_or_default();
        *side = SideOfDay {
            takes_part: *takes_part != 0.0,
            shared: next(),
            alone: next(),
            by_part: [next(), next(), next(), next()],
        };
    }
    Some(made)
}
