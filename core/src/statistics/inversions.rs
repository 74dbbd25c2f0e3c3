//! Merge sort that tells of every pair it finds in the wrong order.

/// Sorts, and calls `found` with each item of a right half that belongs before
/// the items of a left half given with it: together these are all pairs in which
/// the later item `goes_before` the earlier one. n log n steps, however many pairs.
pub(super) fn sort_and_tell<T: Copy>(
    items: &mut Vec<T>,
    goes_before: impl Fn(&T, &T) -> bool,
    mut found: impl FnMut(&[T], &T),
) {
    let mut merged = items.clone();
    let mut width = 1;
    while width < items.len() {
        for (both, into) in items.chunks(2 * width).zip(merged.chunks_mut(2 * width)) {
            let (mut left, mut right) = both.split_at(width.min(both.len()));
            for slot in into {
                match (left.split_first(), right.split_first()) {
                    (Some((first, rest)), None) => (*slot, left) = (*first, rest),
                    (Some((first, rest)), Some((second, _))) if !goes_before(second, first) => {
                        (*slot, left) = (*first, rest);
                    }
                    (_, Some((second, rest))) => {
                        found(left, second);
                        (*slot, right) = (*second, rest);
                    }
                    (None, None) => {}
                }
            }
        }
        std::mem::swap(items, &mut merged);
        width *= 2;
    }
}

/// How many pairs there are in which the later item goes before the earlier one.
pub(super) fn count<T: Copy>(mut items: Vec<T>, goes_before: impl Fn(&T, &T) -> bool) -> u64 {
    let mut pairs = 0;
    sort_and_tell(&mut items, goes_before, |left, _| pairs += left.len() as u64);
    pairs
}
