//! The machine's own package manager.

use std::{
    path::{Path, PathBuf},
    process::{Command, Stdio},
};

use super::{answers, consent::Rights};

/// Those that the table of packages knows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Manager {
    Apt,
    Dnf,
    Pacman,
    Brew,
    Winget,
}

impl Manager {
    const ALL: [Self; 5] = [Self::Apt, Self::Dnf, Self::Pacman, Self::Brew, Self::Winget];

    /// The first that is on the path.
    pub(crate) fn find() -> Option<Self> {
        Self::ALL.into_iter().find(|manager| on_path(manager.program()).is_some())
    }

    pub(super) fn program(self) -> &'static str {
        match self {
            Self::Apt => "apt-get",
            Self::Dnf => "dnf",
            Self::Pacman => "pacman",
            Self::Brew => "brew",
            Self::Winget => "winget",
        }
    }

    fn needs_root(self) -> bool {
        match self {
            Self::Apt | Self::Dnf | Self::Pacman => true,
            Self::Brew | Self::Winget => false,
        }
    }

    pub(super) fn rights(self) -> Rights {
        if !self.needs_root() || is_root() {
            Rights::Enough
        } else if on_path("sudo").is_none() {
            Rights::None
        } else if answers(Command::new("sudo").args(["-n", "true"])) {
            Rights::Sudo
        } else {
            Rights::SudoAsks
        }
    }

    /// What to type, one command after the other. Whoever holds the manager's lock is waited
    /// for, two minutes; then the manager says who it is.
    pub(super) fn commands(self, packages: &[&str], rights: Rights) -> Vec<Vec<String>> {
        let words: &[&[&str]] = match self {
            Self::Apt => &[
                &["apt-get", "update"],
                &["apt-get", "install", "-y", "--no-install-recommends", "-o", "DPkg::Lock::Timeout=120"],
            ],
            Self::Dnf => &[&["dnf", "install", "-y"]],
            Self::Pacman => &[&["pacman", "-Sy", "--needed", "--noconfirm"]],
            Self::Brew => &[&["brew", "install"]],
            Self::Winget => {
                &[&["winget", "install", "--exact", "--accept-package-agreements", "--accept-source-agreements"]]
            }
        };
        let mut commands: Vec<Vec<String>> = words
            .iter()
            .map(|command| {
                let up = (self.needs_root() && rights != Rights::Enough).then_some("sudo");
                up.into_iter().chain(command.iter().copied()).map(str::to_owned).collect()
            })
            .collect();
        if let Some(last) = commands.last_mut() {
            last.extend(packages.iter().map(|package| (*package).to_owned()));
        }
        commands
    }
}

/// Where a program stands on the path. Looked for, not asked: some do something when asked.
pub(crate) fn on_path(name: &str) -> Option<PathBuf> {
    let path = std::env::var_os("PATH")?;
    let name = format!("{name}{}", std::env::consts::EXE_SUFFIX);
    std::env::split_paths(&path).map(|folder| folder.join(&name)).find(|program| Path::is_file(program))
}

fn is_root() -> bool {
    let said = Command::new("id").arg("-u").stdin(Stdio::null()).stderr(Stdio::null()).output();
    said.is_ok_and(|said| said.stdout.trim_ascii() == b"0")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_packages_stand_at_the_end_and_sudo_only_where_it_is_needed() {
        let line = |manager: Manager, rights| {
            manager.commands(&["age", "maven"], rights).iter().map(|it| it.join(" ")).collect::<Vec<_>>()
        };
        let apt = line(Manager::Apt, Rights::Sudo);
        assert_eq!(apt.first().map(String::as_str), Some("sudo apt-get update"));
        assert!(apt.get(1).is_some_and(|it| it.starts_with("sudo apt-get install -y") && it.ends_with(" age maven")));
        assert!(line(Manager::Apt, Rights::Enough).iter().all(|it| it.starts_with("apt-get ")));
        assert_eq!(line(Manager::Brew, Rights::SudoAsks), ["brew install age maven"]);
        assert_eq!(line(Manager::Dnf, Rights::SudoAsks), ["sudo dnf install -y age maven"]);
    }

    #[test]
    fn a_program_is_found_on_the_path_or_not() {
        assert!(on_path(if cfg!(windows) { "cmd" } else { "sh" }).is_some());
        assert_eq!(on_path("drawwell-no-such-program"), None);
    }
}
