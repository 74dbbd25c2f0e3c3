//! The picture of the rooms in DEVELOPERS.md, read as what may stand on what.

use std::collections::{BTreeMap, BTreeSet};

/// The heading that the picture stands under.
const HEADING: &str = "## The rooms";
const ARROWS: [char; 2] = ['→', '⇢'];

/// Which room may import which.
#[derive(Debug, Default)]
pub(super) struct Picture {
    /// Of each room, those below it.
    below: BTreeMap<String, BTreeSet<String>>,
}

impl Picture {
    /// Reads the first block of code under the heading: a chain a line, rooms of one floor between
    /// commas, remarks in brackets.
    pub(super) fn read(page: &str) -> Result<Self, String> {
        let after = page.split_once(HEADING).ok_or_else(|| format!("no heading {HEADING}"))?.1;
        let block = after.split("```").nth(1).ok_or_else(|| format!("no picture under {HEADING}"))?;
        let mut picture = Self::default();
        for line in block.lines() {
            let drawn = line.split('(').next().unwrap_or_default();
            let floors: Vec<Vec<&str>> = drawn.split(ARROWS).map(rooms_of).collect();
            for room in floors.iter().flatten() {
                picture.below.entry((*room).to_owned()).or_default();
            }
            for pair in floors.windows(2) {
                let [lower, upper] = pair else { continue };
                for room in upper {
                    let below = picture.below.entry((*room).to_owned()).or_default();
                    below.extend(lower.iter().map(|room| (*room).to_owned()));
                }
            }
        }
        if picture.below.is_empty() {
            return Err(format!("the picture under {HEADING} shows no room"));
        }
        picture.close();
        match picture.below.iter().find(|(room, below)| below.contains(*room)) {
            Some((room, _)) => Err(format!("the picture's arrows lead from {room} back to it")),
            None => Ok(picture),
        }
    }

    /// What stands below a room's floor stands below the room.
    fn close(&mut self) {
        loop {
            let mut grown = false;
            for room in self.rooms().map(str::to_owned).collect::<Vec<_>>() {
                let further: BTreeSet<String> =
                    self.below_of(&room).flat_map(|lower| self.below_of(lower)).cloned().collect();
                let below = self.below.entry(room).or_default();
                let before = below.len();
                below.extend(further);
                grown |= below.len() > before;
            }
            if !grown {
                return;
            }
        }
    }

    fn below_of(&self, room: &str) -> impl Iterator<Item = &String> {
        self.below.get(room).into_iter().flatten()
    }

    pub(super) fn rooms(&self) -> impl Iterator<Item = &str> {
        self.below.keys().map(String::as_str)
    }

    pub(super) fn shows(&self, room: &str) -> bool {
        self.below.contains_key(room)
    }

    /// Whether a file of one room may import from another.
    pub(super) fn allows(&self, from: &str, to: &str) -> bool {
        from == to || self.below.get(from).is_some_and(|below| below.contains(to))
    }
}

fn rooms_of(floor: &str) -> Vec<&str> {
    floor.split(',').map(str::trim).filter(|room| !room.is_empty()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn arrows_go_on_from_line_to_line_and_remarks_are_no_rooms() {
        let page = "# Page\n\n## The rooms\n\n```\nsand, stone → wall → roof   (dry → warm)\n        wall → door ⇢ street\n```\n";
        let picture = Picture::read(page).unwrap();
        assert_eq!(picture.rooms().collect::<Vec<_>>(), ["door", "roof", "sand", "stone", "street", "wall"]);
        assert!(picture.allows("street", "sand") && picture.allows("roof", "wall") && picture.allows("wall", "wall"));
        assert!(!picture.allows("wall", "roof") && !picture.allows("roof", "door") && !picture.allows("sand", "stone"));
    }

    #[test]
    fn a_page_without_a_picture_and_a_picture_in_a_circle_are_refused() {
        assert!(Picture::read("# Page").is_err());
        assert!(Picture::read("## The rooms\n\nnothing drawn").is_err());
        assert!(Picture::read("## The rooms\n```\na → b → a\n```").is_err());
    }
}
