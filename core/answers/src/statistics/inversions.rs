//! Merge sort that tells of every pair it finds in the wrong order.

/// Up to so many are sorted by insertion.
const FEW: usize = 8;

/// Sorts, and calls `found` with each item of a right half that belongs before
/// the items of a left half given with it: together these are all pairs in which
/// the later item `goes_before` the earlier one. n log n steps, however many pairs.
pub(super) fn sort_and_tell<T: Copy>(
    items: &mut Vec<T>,
    goes_before: impl Fn(&T, &T) -> bool,
    mut found: impl FnMut(&[T], &T),
) {
    for few in items.chunks_mut(FEW) {
        for place in 1..few.len() {
            let (sorted, rest) = few.split_at(place);
            let Some(item) = rest.first().copied() else { continue };
            let to = sorted.iter().rposition(|earlier| !goes_before(&item, earlier)).map_or(0, |last| last + 1);
            if to < place {
                found(sorted.get(to..).unwrap_or_default(), &item);
                few.copy_within(to..place, to + 1);
                if let Some(slot) = few.get_mut(to) {
                    *slot = item;
                }
            }
        }
    }
    let mut merged = items.clone();
    let mut width = FEW;
    while width < items.len() {
        for (both, into) in items.chunks(2 * width).zip(merged.chunks_mut(2 * width)) {
            let (left, mut right) = both.split_at(width.min(both.len()));
            // What goes before all of the right half is where it belongs.
            let settled = right.first().map_or(left.len(), |first| left.partition_point(|it| !goes_before(first, it)));
            let (settled, mut left) = left.split_at(settled);
            let (place, mut free) = into.split_at_mut(settled.len());
            place.copy_from_slice(settled);
            while let (Some((first, others)), Some((second, rest))) = (left.split_first(), right.split_first()) {
                let Some((slot, after)) = std::mem::take(&mut free).split_first_mut() else { break };
                free = after;
                if goes_before(second, first) {
                    found(left, second);
                    (*slot, right) = (*second, rest);
                } else {
                    (*slot, left) = (*first, others);
                }
            }
            free.copy_from_slice(if left.is_empty() { right } else { left });
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
