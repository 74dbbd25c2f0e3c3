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
const FINE: f64 = 8.0;
/// Halvings until a bound stands.
const HALVINGS: usize = 44;

/// The bound of each look: how many spreads from nothing a standardised sum must lie at it, so
/// that over all looks together no more than the chance was spent. Looks are shares of the
/// information, rising to 1; a look that spends next to nothing has no bound.
///
/// The chance of crossing is integrated from look to look (Armitage, McPherson & Rowe, Journal of
/// the Royal Statistical Society A 1969;132:235-244), Simpson's rule on a grid. Both sides are
/// alike, so one is reckoned.
pub fn bounds(chance: f64, looks: &[f64]) -> Vec<Option<f64>> {
    let mut found = Vec::with_capacity(looks.len());
    // The sum's density where it has not crossed yet, from nothing up; none while no look had a
    // bound, when it is still normal.
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
        let met = (crossing(widest) < spend).then(|| halved(|bound| crossing(bound) > spend, widest));
        gone += met.map_or(0.0, crossing);
        if met.is_some() || density.is_some() {
            density = Some(carried(density.as_deref(), met.unwrap_or(widest), *look, spread));
        }
        before = *look;
        found.push(met.map(|bound| bound / look.sqrt()));
    }
    found
}

/// The least place, up to the widest, that is not too near.
fn halved(too_near: impl Fn(f64) -> bool, widest: f64) -> f64 {
    let (mut near, mut far) = (0.0, widest);
    for _ in 0..HALVINGS {
        let middle = (near + far) / 2.0;
        if too_near(middle) {
            near = middle;
        } else {
            far = middle;
        }
    }
    far
}

/// The density at the next look within its bound, from nothing up, each place with its weight in
/// the sum over both sides.
fn carried(before: Option<&[(f64, f64)]>, edge: f64, look: f64, spread: f64) -> Vec<(f64, f64)> {
    let steps = 2 * ((edge / (spread / FINE) / 2.0).ceil() as usize).clamp(10, 200);
    let step = edge / steps as f64;
    let law = |apart: f64, spread: f64| {
        let z = apart / spread;
        (-z * z / 2.0).exp() / (spread * std::f64::consts::TAU.sqrt())
    };
    (0..=steps)
        .map(|place| {
            let at = step * place as f64;
            let height: f64 = match before {
                None => law(at, look.sqrt()),
                // Half of a weight lies on each side.
                Some(of) => of
                    .iter()
                    .map(|(from, weight)| weight / 2.0 * (law(at - from, spread) + law(at + from, spread)))
                    .sum(),
            };
            let simpson = match place {
                0 => 1.0,
                last if last == steps => 1.0,
                odd if odd % 2 == 1 => 4.0,
                _ => 2.0,
            };
            (at, 2.0 * height * simpson * step / 3.0)
        })
        .collect()
}

/// The chance that is left to each look by itself, two-sided: a range at 1 less this holds at
/// every look together (repeated confidence intervals: Jennison & Turnbull, Journal of the Royal
/// Statistical Society B 1989;51:305-361).
pub fn nominal(bounds: &[Option<f64>]) -> Vec<Option<f64>> {
    bounds.iter().map(|bound| bound.map(two_sided_p)).collect()
}
