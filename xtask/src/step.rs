//! Steps with names: in order, timed, up to the first that fails.

use std::time::{Duration, Instant};

use crate::{
    disk,
    machine::{self, Tool},
    place::Places,
    stop::Stop,
    took::Took,
};

/// One thing to do.
pub(crate) struct Step {
    /// What a person calls it.
    pub(crate) name: &'static str,
    /// What must be on the machine.
    pub(crate) tools: &'static [Tool],
    /// Steps that must have been done before it.
    pub(crate) after: &'static [&'static str],
    /// How it is done.
    pub(crate) act: fn(&Places) -> Result<(), Stop>,
}

/// The step of a name with everything it comes after, in the order of the whole.
pub(crate) fn only<'a>(steps: &'a [Step], name: &str) -> Option<Vec<&'a Step>> {
    let chosen = steps.iter().find(|step| step.name == name)?;
    let mut wanted = vec![chosen.name];
    for step in steps.iter().rev() {
        if wanted.contains(&step.name) {
            wanted.extend(step.after);
        }
    }
    Some(steps.iter().filter(|step| wanted.contains(&step.name)).collect())
}

/// Does them in order; says before each which of how many it is and how long it took last
/// time, and at the end how long each took now.
pub(crate) fn run(places: &Places, command: &str, steps: &[&Step]) -> Result<(), Stop> {
    let mut tools: Vec<Tool> = steps.iter().flat_map(|step| step.tools).copied().collect();
    tools.sort_unstable();
    tools.dedup();
    machine::need(places, &tools)?;

    let mut last = Took::read(places, command);
    let mut taken: Vec<(&str, Duration)> = Vec::new();
    for (index, step) in steps.iter().enumerate() {
        println!("\n── {} ──", heading(index + 1, steps.len(), step.name, last.of(step.name)));
        let start = Instant::now();
        let outcome = (step.act)(places);
        taken.push((step.name, start.elapsed()));
        if let Err(stop) = outcome {
            print!("{}", summary(&taken));
            let mut why = format!("{stop}\nstopped at {}", step.name);
            if command == "test" {
                why.push_str(&format!(": cargo xtask test --only {}", step.name));
            }
            if let Some(full) = disk::full(places) {
                why.push_str(&format!("\n{full}"));
            }
            return Err(Stop::new(why));
        }
        last.keep(step.name, start.elapsed());
    }
    print!("{}", summary(&taken));
    println!("all done");
    Ok(())
}

/// What takes less is there before it is read.
const A_WHILE: Duration = Duration::from_secs(2);

fn heading(number: usize, of: usize, name: &str, last: Option<Duration>) -> String {
    let last =
        last.filter(|last| *last >= A_WHILE).map(|last| format!(", {} last time", long(last))).unwrap_or_default();
    format!("{number} of {of}: {name}{last}")
}

fn long(time: Duration) -> String {
    let seconds = time.as_secs_f64().round() as u64;
    match (seconds / 60, seconds % 60) {
        (0, seconds) => format!("{seconds} s"),
        (minutes, seconds) => format!("{minutes} min {seconds} s"),
    }
}

fn summary(taken: &[(&str, Duration)]) -> String {
    let whole = ("together", taken.iter().map(|(_, time)| *time).sum());
    let mut text = String::from("\n");
    for (name, time) in taken.iter().chain([&whole]) {
        text.push_str(&format!("{name:<20}{:>8.1} s\n", time.as_secs_f64()));
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    const STEPS: &[Step] = &[
        Step { name: "wash", tools: &[], after: &[], act: |_| Ok(()) },
        Step { name: "dry", tools: &[], after: &["wash"], act: |_| Ok(()) },
        Step { name: "sing", tools: &[], after: &[], act: |_| Ok(()) },
        Step { name: "fold", tools: &[], after: &["dry"], act: |_| Ok(()) },
    ];

    #[test]
    fn one_step_brings_what_it_comes_after() {
        let names = |name| only(STEPS, name).map(|steps| steps.iter().map(|it| it.name).collect::<Vec<_>>());
        assert_eq!(names("fold"), Some(vec!["wash", "dry", "fold"]));
        assert_eq!(names("sing"), Some(vec!["sing"]));
        assert_eq!(names("iron"), None);
    }

    #[test]
    fn a_heading_says_which_of_how_many_and_how_long_it_took_last_time() {
        assert_eq!(heading(1, 3, "core", None), "1 of 3: core");
        assert_eq!(heading(2, 3, "face", Some(Duration::from_millis(1500))), "2 of 3: face");
        assert_eq!(heading(2, 3, "face", Some(Duration::from_secs(8))), "2 of 3: face, 8 s last time");
        assert_eq!(heading(3, 3, "shell", Some(Duration::from_secs(125))), "3 of 3: shell, 2 min 5 s last time");
    }

    #[test]
    fn the_summary_gives_each_step_and_the_whole() {
        let text = summary(&[("wash", Duration::from_millis(1500)), ("dry", Duration::from_millis(250))]);
        assert_eq!(
            text,
            "\nwash                     1.5 s\ndry                      0.2 s\ntogether                 1.8 s\n"
        );
    }
}
