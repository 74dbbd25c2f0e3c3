//! Says what is missing, says the command that brings it, and runs it where it may.

use std::{
    collections::BTreeSet,
    io::{IsTerminal, Write},
};

use super::{
    consent::{decide, Decision, Rights},
    manager::Manager,
    packages::{self, From},
    tool::Tool,
};
use crate::{place::Places, process, stop::Stop};

/// What it takes to bring all that is missing.
#[derive(Debug, Default)]
struct Plan {
    packages: BTreeSet<&'static str>,
    components: Vec<&'static str>,
    crates: Vec<[&'static str; 3]>,
    /// What this machine's manager has not, or there is no manager.
    by_hand: Vec<Tool>,
}

impl Plan {
    fn of(missing: &[Tool], manager: Option<Manager>) -> Self {
        let mut plan = Self::default();
        for tool in missing {
            match packages::of(*tool) {
                From::Component(name) => plan.components.push(name),
                From::Crate { name, version, features } => plan.crates.push([name, version, features]),
                From::Packages(names) => match manager.map(|manager| names.by(manager)) {
                    None | Some([]) => plan.by_hand.push(*tool),
                    Some(names) => plan.packages.extend(names),
                },
            }
        }
        plan
    }

    /// What to run, in order.
    fn commands(&self, manager: Option<Manager>, rights: Rights) -> Vec<Vec<String>> {
        let mut commands = Vec::new();
        if let (Some(manager), false) = (manager, self.packages.is_empty()) {
            commands.extend(manager.commands(&self.packages.iter().copied().collect::<Vec<_>>(), rights));
        }
        if !self.components.is_empty() {
            commands.push(words(&["rustup", "component", "add"], &self.components));
        }
        for [name, version, features] in &self.crates {
            commands.push(words(
                &["cargo", "install", name, "--locked", "--version", version, "--features", features],
                &[],
            ));
        }
        commands
    }
}

fn words(first: &[&str], then: &[&str]) -> Vec<String> {
    first.iter().chain(then).map(|word| (*word).to_owned()).collect()
}

/// Makes sure of all of these, and stops with the command for what it may not install.
pub(crate) fn need(places: &Places, tools: &[Tool]) -> Result<(), Stop> {
    let missing = missing(places, tools);
    if missing.is_empty() {
        return Ok(());
    }
    let manager = Manager::find();
    let plan = Plan::of(&missing, manager);
    let rights = match manager {
        Some(manager) if !plan.packages.is_empty() => manager.rights(),
        _ => Rights::Enough,
    };
    let commands = plan.commands(manager, rights);
    let listed = lines(&missing, &plan.by_hand);
    if !plan.by_hand.is_empty() {
        return Err(Stop::new(stopping(&listed, &commands)));
    }
    let terminal = std::io::stdin().is_terminal() && std::io::stderr().is_terminal();
    match decide(places.consent(), terminal, rights) {
        Decision::Stop => return Err(Stop::new(stopping(&listed, &commands))),
        Decision::AskFirst if !agreed(&listed, &commands) => return Err(Stop::new("Nothing was installed.")),
        Decision::AskFirst => {}
        Decision::Install => eprintln!("{listed}"),
    }
    for command in &commands {
        eprintln!("$ {}", command.join(" "));
        install(places, command).map_err(|stop| Stop::new(format!("{stop}\n{}", failed(&commands))))?;
    }
    let left = self::missing(places, &missing);
    if left.is_empty() {
        return Ok(());
    }
    Err(Stop::new(format!("It was installed, and still is not found:\n{}", lines(&left, &[]))))
}

fn missing(places: &Places, tools: &[Tool]) -> Vec<Tool> {
    tools.iter().copied().filter(|tool| !tool.is_there(places)).collect()
}

fn install(places: &Places, command: &[String]) -> Result<(), Stop> {
    let Some((program, rest)) = command.split_first() else { return Ok(()) };
    if program == "cargo" {
        // Under our own target folder: it is gone with it, and may hold no spaces less than we do.
        let built = places.scratch().join("tools");
        let done = process::run(process::cargo(places).args(rest).arg("--target-dir").arg(&built));
        let _ = std::fs::remove_dir_all(built);
        return done;
    }
    process::run(process::command(places, program).args(rest).env("DEBIAN_FRONTEND", "noninteractive"))
}

/// A line for each tool that is missing.
fn lines(missing: &[Tool], by_hand: &[Tool]) -> String {
    let line = |tool: &Tool| {
        let by_hand = if by_hand.contains(tool) {
            " (not to be had from this machine's package manager: install it by hand)"
        } else {
            ""
        };
        format!("missing: {}{by_hand}", tool.called())
    };
    missing.iter().map(line).collect::<Vec<_>>().join("\n")
}

/// The command is the last line, fit to be copied.
fn stopping(listed: &str, commands: &[Vec<String>]) -> String {
    if commands.is_empty() {
        return listed.to_owned();
    }
    format!("{listed}\nThis brings it:\n{}", joined(commands))
}

fn failed(commands: &[Vec<String>]) -> String {
    format!(
        "It could not be installed; why stands above. Is there a network, and does another program install something just now?\nTry it by hand, then run the same command again:\n{}",
        joined(commands)
    )
}

fn joined(commands: &[Vec<String>]) -> String {
    commands.iter().map(|command| command.join(" ")).collect::<Vec<_>>().join(" && ")
}

fn agreed(listed: &str, commands: &[Vec<String>]) -> bool {
    eprint!("{}\nRun it now? [Y/n] ", stopping(listed, commands));
    let _ = std::io::stderr().flush();
    let mut answer = String::new();
    // No answer is no.
    std::io::stdin().read_line(&mut answer).is_ok_and(|read| read > 0)
        && matches!(answer.trim().to_lowercase().as_str(), "" | "y" | "yes")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn everything_there_is_can_be_brought_to_a_debian_machine() {
        let plan = Plan::of(Tool::ALL, Some(Manager::Apt));
        assert!(plan.by_hand.is_empty(), "{:?}", plan.by_hand);
    }

    #[test]
    fn the_command_is_one_line_and_the_last() {
        for manager in [Manager::Apt, Manager::Dnf, Manager::Pacman, Manager::Brew, Manager::Winget] {
            let missing = [Tool::Age, Tool::Deny, Tool::Linter];
            let plan = Plan::of(&missing, Some(manager));
            let commands = plan.commands(Some(manager), Rights::Sudo);
            let text = stopping(&lines(&missing, &plan.by_hand), &commands);
            let last = text.lines().last().unwrap_or_default();
            assert!(last.contains(manager.program()) && last.contains("age"), "{last}");
            assert!(last.contains("rustup component add clippy && cargo install cargo-deny --locked"), "{last}");
            assert_eq!(text.lines().filter(|line| line.starts_with("missing: ")).count(), 3, "{text}");
        }
    }

    #[test]
    fn what_no_manager_has_is_said_and_is_not_in_the_command() {
        let missing = [Tool::Resources, Tool::Age];
        let plan = Plan::of(&missing, Some(Manager::Pacman));
        assert_eq!(plan.by_hand, [Tool::Resources]);
        let text = stopping(&lines(&missing, &plan.by_hand), &plan.commands(Some(Manager::Pacman), Rights::Enough));
        assert!(text.contains("aapt2") && text.contains("by hand"), "{text}");
        assert!(text.ends_with("pacman -Sy --needed --noconfirm age"), "{text}");
        let plan = Plan::of(&missing, None);
        assert_eq!(plan.by_hand, missing);
        assert!(plan.commands(None, Rights::Enough).is_empty());
    }

    #[test]
    fn two_tools_of_one_package_ask_for_it_once() {
        let plan = Plan::of(&[Tool::Java, Tool::Window], Some(Manager::Apt));
        assert_eq!(plan.packages.len(), 1);
    }
}
