//! Steps with names: in order, timed, up to the first that fails.

use std::time::{Duration, Instant};

use crate::{
    place::Places,
    stop::Stop,
    tool::{self, Tool},
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

/// Does them in order and tells how long each took.
pub(crate) fn run(places: &Places, steps: &[&Step]) -> Result<(), Stop> {
    let mut tools: Vec<Tool> = steps.iter().flat_map(|step| step.tools).copied().collect();
    tools.sort_unstable();
    tools.dedup();
    tool::need(places, &tools)?;

    let mut taken: Vec<(&str, Duration)> = Vec::new();
    for step in steps {
        println!("\n── {} ──", step.name);
        let start = Instant::now();
        let outcome = (step.act)(places);
        taken.push((step.name, start.elapsed()));
        if let Err(stop) = outcome {
            print!("{}", summary(&taken));
            return Err(Stop::new(format!("{stop}\nstopped at {}: cargo xtask test --only {}", step.name, step.name)));
        }
    }
    print!("{}", summary(&taken));
    println!("all done");
    Ok(())
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
    fn the_summary_gives_each_step_and_the_whole() {
        let text = summary(&[("wash", Duration::from_millis(1500)), ("dry", Duration::from_millis(250))]);
        assert_eq!(
            text,
            "\nwash                     1.5 s\ndry                      0.2 s\ntogether                 1.8 s\n"
        );
    }
}
