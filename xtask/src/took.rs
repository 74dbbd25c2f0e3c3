//! How long each step took the last time that it went through.

use std::{collections::BTreeMap, fs, path::PathBuf, time::Duration};

use crate::{keep, place::Places};

/// Of one command, by the step's name.
#[derive(Debug, Default)]
pub(crate) struct Took {
    file: PathBuf,
    steps: BTreeMap<String, Duration>,
}

impl Took {
    /// What is known; nothing where nothing was kept or it can't be read.
    pub(crate) fn read(places: &Places, command: &str) -> Self {
        let file = places.scratch().join(format!("took-{command}.txt"));
        let steps = fs::read_to_string(&file).map(|text| parsed(&text)).unwrap_or_default();
        Self { file, steps }
    }

    pub(crate) fn of(&self, step: &str) -> Option<Duration> {
        self.steps.get(step).copied()
    }

    /// Kept for the next time; that it can't be is no reason to stop.
    pub(crate) fn keep(&mut self, step: &str, time: Duration) {
        self.steps.insert(step.to_owned(), time);
        let lines = self.steps.iter().map(|(step, time)| format!("{step} {}\n", time.as_millis()));
        let _ = keep::write_if_changed(&self.file, lines.collect::<String>().as_bytes());
    }
}

fn parsed(text: &str) -> BTreeMap<String, Duration> {
    text.lines()
        .filter_map(|line| {
            let (step, milliseconds) = line.split_once(' ')?;
            Some((step.to_owned(), Duration::from_millis(milliseconds.parse().ok()?)))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_that_is_no_such_line_is_passed_over() {
        let took = parsed("core 1500\nshell\nface x\nsheet 20\n");
        assert_eq!(took.len(), 2);
        assert_eq!(took.get("core"), Some(&Duration::from_millis(1500)));
    }
}
