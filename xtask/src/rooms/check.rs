//! Which arrows point back, and which files run in a circle.

use std::collections::BTreeSet;

use super::{
    house::{Arrow, House},
    picture::Picture,
};

/// What is wrong, a line each; nothing where all is well.
pub(super) fn faults(house: &House, picture: &Picture) -> Vec<String> {
    let arrows = house.arrows();
    let name = |file: usize| house.files.get(file).map_or("?", |file| file.name.as_str());
    let room = |file: usize| house.files.get(file).and_then(|file| file.room());
    let mut faults: Vec<String> = Vec::new();
    let unknown: BTreeSet<&str> =
        house.files.iter().filter_map(|file| file.room()).filter(|room| !picture.shows(room)).collect();
    faults.extend(unknown.iter().map(|room| format!("the room {room} is not in the picture")));
    for arrow in &arrows {
        // A crate's root only hands on.
        let (Some(from), Some(to)) = (room(arrow.from), room(arrow.to)) else { continue };
        if !unknown.contains(from) && !unknown.contains(to) && !picture.allows(from, to) {
            faults.push(format!("back: {} → {} ({})", name(arrow.from), name(arrow.to), arrow.what));
        }
    }
    for circle in circles(house.files.len(), &arrows) {
        let steps = circle.iter().map(|arrow| format!("{} → {} ({})", name(arrow.from), name(arrow.to), arrow.what));
        faults.push(format!("circle: {}", steps.collect::<Vec<_>>().join(", ")));
    }
    faults
}

/// The shortest circle through each arrow that lies on one, each circle once.
fn circles(files: usize, arrows: &[Arrow]) -> Vec<Vec<&Arrow>> {
    let mut out: Vec<Vec<&Arrow>> = vec![Vec::new(); files];
    for arrow in arrows {
        if let Some(from) = out.get_mut(arrow.from) {
            from.push(arrow);
        }
    }
    let mut seen: BTreeSet<BTreeSet<usize>> = BTreeSet::new();
    let mut covered: BTreeSet<(usize, usize)> = BTreeSet::new();
    let mut found = Vec::new();
    for arrow in arrows {
        if covered.contains(&(arrow.from, arrow.to)) {
            continue;
        }
        let Some(back) = way(&out, arrow.to, arrow.from) else { continue };
        let mut circle = vec![arrow];
        circle.extend(back);
        covered.extend(circle.iter().map(|arrow| (arrow.from, arrow.to)));
        if seen.insert(circle.iter().map(|arrow| arrow.from).collect()) {
            found.push(circle);
        }
    }
    found
}

/// The shortest way along arrows.
fn way<'a>(out: &[Vec<&'a Arrow>], from: usize, to: usize) -> Option<Vec<&'a Arrow>> {
    let mut came: Vec<Option<&Arrow>> = vec![None; out.len()];
    let mut next = std::collections::VecDeque::from([from]);
    while let Some(at) = next.pop_front() {
        if at == to {
            break;
        }
        for arrow in out.get(at)? {
            let slot = came.get_mut(arrow.to)?;
            if slot.is_none() && arrow.to != from {
                *slot = Some(arrow);
                next.push_back(arrow.to);
            }
        }
    }
    let mut steps = Vec::new();
    let mut at = to;
    while at != from {
        let arrow = (*came.get(at)?)?;
        steps.push(arrow);
        at = arrow.from;
    }
    steps.reverse();
    Some(steps)
}
