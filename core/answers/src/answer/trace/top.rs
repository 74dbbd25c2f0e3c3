//! How high a cycle truly reaches, noise or not.

/// Below this share of the amplitude noise does no harm: the highest sample is the peak.
const NOISE_OF_NO_MATTER: f64 = 0.001;
/// A top shorter than this many samples cannot be fitted.
const LEAST_SAMPLES: usize = 5;
/// A fit whose squares exceed what the noise explains by so many standard deviations of
/// their own (√(2n)) does not describe the top.
const MISFIT: f64 = 4.0;
/// How often the top is halved until a fit describes it.
const HALVINGS: u32 = 3;

/// A top that lasts this share of a cycle is held, and its ends belong to its rise and
/// release. Of a sine's cycle 20.5 % lie within a tenth of its amplitude.
pub(super) const HELD: f64 = 0.25;
/// How much of each end is left out where a top is held.
const ENDS: f64 = 0.12;

/// The part of a cycle around its highest sample.
pub(super) struct Top<'s> {
    pub(super) samples: &'s [f64],
    /// How deep below the highest it goes.
    pub(super) depth: f64,
    /// How many samples the cycle has.
    pub(super) cycle: usize,
}

/// The highest value of a top.
///
/// The highest sample of many is too high by what noise adds. So a level, a line or a
/// parabola is laid through the samples by least squares, whichever has the least
/// Σ r²/σ² + k ln n (Schwarz, Ann Stat 1978;6:461-464, with the noise known), and its
/// highest point is taken; where none describes the top, a narrower part of it is fitted. What
/// is held is level or leaks: a parabola would bend to its edges and pass over it.
pub(super) fn height(top: &Top<'_>, noise: f64, amplitude: f64) -> f64 {
    let raw = top.samples.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    if noise <= NOISE_OF_NO_MATTER * amplitude {
        return raw;
    }
    let mut part = top.samples;
    for halving in 0..HALVINGS {
        if halving > 0 {
            part = within(part, raw - top.depth / f64::from(1_u32 << halving));
        }
        let held = part.len() as f64 >= HELD * top.cycle as f64;
        let inner = if held { inner(part, ENDS) } else { part };
        if inner.len() < LEAST_SAMPLES {
            break;
        }
        if let Some(height) = fitted(inner, noise, held) {
            return height;
        }
    }
    // Too sharp to be fitted: few samples are near the top, so noise adds little.
    raw
}

/// Samples without a share at each end.
fn inner(samples: &[f64], ends: f64) -> &[f64] {
    let off = (samples.len() as f64 * ends).round() as usize;
    samples.get(off..samples.len().saturating_sub(off)).unwrap_or(samples)
}

/// From the first sample above a level to the last.
fn within(samples: &[f64], level: f64) -> &[f64] {
    let above = |value: &f64| *value >= level;
    match (samples.iter().position(above), samples.iter().rposition(above)) {
        (Some(first), Some(last)) => samples.get(first..=last).unwrap_or(samples),
        _ => samples,
    }
}

/// Least squares with polynomials that are orthogonal over evenly spaced places: 1, t,
/// and t² less its mean (Draper & Smith, Applied Regression Analysis, 1998, 22.1).
fn fitted(samples: &[f64], noise: f64, held: bool) -> Option<f64> {
    let n = samples.len() as f64;
    let place = |at: usize| 2.0 * at as f64 / (n - 1.0) - 1.0;
    let spread = samples.iter().enumerate().map(|(at, _)| place(at).powi(2)).sum::<f64>();
    let bend = |t: f64| t * t - spread / n;
    let of = |basis: &dyn Fn(f64) -> f64| {
        let (both, own) = samples.iter().enumerate().fold((0.0, 0.0), |(both, own), (at, value)| {
            let basis = basis(place(at));
            (both + basis * value, own + basis * basis)
        });
        both / own
    };
    let coefficients = [of(&|_| 1.0), of(&|t| t), of(&bend)];
    let [level, tilt, curve] = coefficients;
    let best = [(0.0, [level, 0.0, 0.0]), (1.0, [level, tilt, 0.0]), (2.0, [level, tilt, curve])]
        .into_iter()
        .take(if held { 2 } else { 3 })
        .map(|(order, [level, tilt, curve])| {
            let squares: f64 = samples
                .iter()
                .enumerate()
                .map(|(at, value)| (value - level - tilt * place(at) - curve * bend(place(at))).powi(2))
                .sum();
            (squares / (noise * noise), order, [level, tilt, curve])
        })
        .min_by(|a, b| (a.0 + a.1 * n.ln()).total_cmp(&(b.0 + b.1 * n.ln())))?;
    let (squares, order, [level, tilt, curve]) = best;
    if squares > n - order - 1.0 + MISFIT * (2.0 * n).sqrt() {
        return None;
    }
    let at = |t: f64| level + tilt * t + curve * bend(t);
    // A line goes on over the ends left out: a leaking top is highest where it begins.
    let end = if held { 1.0 / (1.0 - 2.0 * ENDS) } else { 1.0 };
    let ends = at(-end).max(at(end));
    let crown = -tilt / (2.0 * curve);
    Some(if curve < 0.0 && crown.abs() <= 1.0 { at(crown) } else { ends }).filter(|height| height.is_finite())
}
