//! Bounds of group-sequential tests as they are published.

use drawwell_core::statistics::{bounds, nominal, spent};

fn held(chance: f64, looks: usize, published: &[f64]) {
    let places: Vec<f64> = (1..=looks).map(|k| k as f64 / looks as f64).collect();
    let found = bounds(chance, &places);
    assert_eq!(found.len(), published.len());
    for (found, printed) in found.iter().zip(published) {
        let found = found.unwrap();
        // The last printed figure.
        assert!((found - printed).abs() < 6e-4, "{found} {printed}");
    }
}

/// Lan & DeMets's function of O'Brien and Fleming's type, two-sided 0.05, looks equally far
/// apart: as R's `ldbounds` prints them in its vignette (Reboussin, DeMets, Kim & Lan, Controlled
/// Clinical Trials 2000;21:190-207). From memory; the same figures came from an independent
/// integration (`tests/python/comfort_vectors.py`).
#[test]
fn lan_demets_bounds_of_two_to_five_looks() {
    held(0.05, 1, &[1.9600]);
    held(0.05, 2, &[2.9626, 1.9686]);
    held(0.05, 3, &[3.7103, 2.5114, 1.9930]);
    held(0.05, 4, &[4.3326, 2.9631, 2.3590, 2.0141]);
    held(0.05, 5, &[4.8769, 3.3569, 2.6803, 2.2898, 2.0310]);
}

#[test]
fn all_is_spent_at_the_last_look_and_never_more() {
    for looks in [1, 2, 7, 20, 40] {
        let places: Vec<f64> = (1..=looks).map(|k| k as f64 / looks as f64).collect();
        let shares: Vec<f64> = places.iter().map(|at| spent(0.05, *at).unwrap()).collect();
        assert!(shares.windows(2).all(|pair| pair[0] <= pair[1]));
        assert!((shares[looks - 1] - 0.05).abs() < 1e-9);
        let by_itself: Vec<f64> = nominal(&bounds(0.05, &places)).into_iter().map(|each| each.unwrap_or(0.0)).collect();
        assert!(by_itself.iter().all(|each| *each <= 0.05 + 1e-9), "{by_itself:?}");
        // Each look costs something: together they are paid for by less at each.
        assert!(looks == 1 || by_itself[looks - 1] < 0.05);
    }
}
