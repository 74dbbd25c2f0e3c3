//! Looking early, and paying for it: bounds that spend a chance of error as information comes in.

use super::normal::{below, two_sided_p, two_sided_z};

/// What has been spent of a two-sided chance of error at a share of the information, half of it
/// on each side, by the spending function of O'Brien and Fleming's type: on a side that may spend
/// α, 2 (1 - Φ(z / √t)), z being where α is spent both ways at once (Lan & DeMets, Biometrika
/// 1983;70:659-663).
pub fn spent(chance: f64, information: f64) -> Option<f64> {
    let z = two_sided_z(1.0 - chance / 2.0)?;
    if !(information > 0.0 && information.is_finite() && chance < 1.0) {
        return None;
    }
    Some(2.0 * two_sided_p(z / information.min(1.0).sqrt()))
}

/// A bound that no sum will ever meet.
const NEVER: f64 = 8.0;
/// Steps of the grid in a spread of what comes between two looks.
const FINE: f64 = 10.0;

/// The bound of each look: how many spreads from nothing a standardised sum must lie at it, so
/// that over all looks together no more than the chance was spent. Looks are shares of the
/// information, rising to 1; a look that spends next to nothing has no bound.
///
/// The chance of crossing is integrated from look to look (Armitage, McPherson & Rowe, Journal of
/// the Royal Statistical Society A 1969;132:235-244), Simpson's rule on a grid.
pub fn bounds(chance: f64, looks: &[f64]) -> Vec<Option<f64>> {
    let mut found = Vec::with_capacity(looks.len());
    // The sum's density where it has not crossed yet, at places a step apart.
    let mut density: Option<Vec<(f64, f64)>> = None;
    let (mut before, mut gone) = (0.0, 0.0);
    for look in looks {
        let step = look - before;
        let Some(spend) = spent(chance, *look).filter(|_| step > 0.0).map(|all| all - gone) else {
            found.push(None);
            continue;
        };
        let spread = step.sqrt();
        let crossing = |bound: f64| match &density {
            None => two_sided_p(bound / look.sqrt()),
            Some(of) => {
                let over = |place: f64| below((place - bound) / spread) + below((-bound - place) / spread);
                of.iter().map(|(place, weight)| weight * over(*place)).sum()
            }
        };
        let widest = NEVER * look.sqrt();
        let bound =
            if crossing(widest) >= spend { None } else { Some(halved(|bound| crossing(bound) > spend, widest)) };
        gone += bound.map_or(0.0, crossing);
        density = Some(carried(density.as_deref(), bound.unwrap_or(widest), *look, spread));
        before = *look;
        found.push(bound.map(|bound| bound / look.sqrt()));
    }
    found
}

/// The least place, up to the widest, that is not too near.
fn halved(too_near: impl Fn(f64) -> bool, widest: f64) -> f64 {
    let (mut near, mut far) = (0.0, widest);
    for _ in 0..60 {
        let middle = (near + far) / 2.0;
        if too_near(middle) {
            near = middle;
        } else {
            far = middle;
        }
    }
    far
}

/// The density at the next look within its bound, each place with its weight in the sum.
fn carried(before: Option<&[(f64, f64)]>, edge: f64, look: f64, spread: f64) -> Vec<(f64, f64)> {
    let halves = ((edge / (spread / FINE)).ceil() as usize).clamp(20, 400);
    let steps = 2 * halves;
    let step = 2.0 * edge / steps as f64;
    let law = |from: f64, to: f64, spread: f64| {
        let z = (to - from) / spread;
        (-z * z / 2.0).exp() / (spread * std::f64::consts::TAU.sqrt())
    };
    (0..=steps)
        .map(|place| {
            let at = step.mul_add(place as f64, -edge);
            let height: f64 = match before {
                None => law(0.0, at, look.sqrt()),
                Some(of) => of.iter().map(|(from, weight)| weight * law(*from, at, spread)).sum(),
            };
            let simpson = match place {
                0 => 1.0,
                last if last == steps => 1.0,
                odd if odd % 2 == 1 => 4.0,
                _ => 2.0,
            };
            (at, height * simpson * step / 3.0)
        })
        .collect()
}

/// The chance that is left to each look by itself, two-sided: a range at 1 less this holds at
/// every look together (repeated confidence intervals: Jennison & Turnbull, Journal of the Royal
/// Statistical Society B 1989;51:305-361).
pub fn nominal(chance: f64, looks: &[f64]) -> Vec<Option<f64>> {
    bounds(chance, looks).into_iter().map(|bound| bound.map(two_sided_p)).collect()
}
