//! Whether a planned setting is above what was comfortable so far.

use crate::answer::comfort::{comfort, Ceiling, Told};
use crate::answer::supply::Side;
use crate::gather::comfort::ComfortInputs;
use crate::quantity::{Level, Vacuum};
use crate::record::mark::Phase;
use crate::screen::View;
use crate::trouble::Trouble;

/// What is said beside a setting that is above it on either side; levels count for their own pump,
/// and by what they pulled where that is known.
pub(super) fn note(
    view: &View<'_>,
    pump: Option<&str>,
    phase: Phase,
    level: Option<Level>,
    vacuum: Option<Vacuum>,
) -> Result<Option<String>, Trouble> {
    let inputs = ComfortInputs::read(view)?;
    let of_pump = |felt: &&crate::answer::comfort::Felt| felt.pump.as_deref() == pump;
    let pulled = inputs.felt.iter().rev().filter(of_pump).find(|felt| level.is_some() && felt.strength.level == level);
    let vacuum = vacuum.or_else(|| pulled.and_then(|felt| felt.strength.vacuum).map(|vacuum| vacuum.value));
    let words = view.words();
    let mut above: Option<String> = None;
    for side in Side::BOTH {
        let Some(found) = comfort(&inputs.felt, side, phase, view.now, &inputs.rules) else { continue };
        let in_vacuum = found.in_vacuum.as_ref().and_then(highest).zip(vacuum);
        let own_pump = inputs.felt.last().is_some_and(|felt| felt.pump.as_deref() == pump);
        let in_levels = found.in_levels.as_ref().and_then(highest).zip(level).filter(|_| own_pump);
        let said = match (in_vacuum, in_levels) {
            (Some((most, planned)), _) if planned > most => Some(words.vacuum(most)),
            (None, Some((most, planned))) if planned > most => {
                Some(words.with("plan-level", &[("level", most.get().into())]))
            }
            _ => None,
        };
        above = above.or(said);
    }
    // Who reads a family's record is not the one who used it.
    let key = if view.shared.is_some() { "plan-above-comfortable-there" } else { "plan-above-comfortable" };
    Ok(above.map(|setting| words.with(key, &[("setting", setting.into())])))
}

/// The highest that was comfortable, where that can be told.
fn highest<Q: Copy>(told: &Told<Q>) -> Option<Q> {
    match told.ceiling {
        Ceiling::At(found) => Some(found.value),
        Ceiling::RareUpTo(setting) => Some(setting),
        Ceiling::NotRareFrom(_) | Ceiling::NeverVaried | Ceiling::CannotTellYet(_) => None,
    }
}
