//! Whether something may be installed now.

/// What the person said on the command line.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(crate) enum Consent {
    /// Nothing: ask at a terminal.
    #[default]
    Unsaid,
    /// `--yes`.
    Yes,
    /// `--no-install`.
    No,
}

/// What it takes to run the package manager here.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Rights {
    /// Root already, or no root is needed.
    Enough,
    /// `sudo` does it without a password.
    Sudo,
    /// `sudo` would ask for a password.
    SudoAsks,
    /// There is no way up.
    None,
}

/// What to do about what is missing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Decision {
    Install,
    AskFirst,
    Stop,
}

/// Takes the flags off the words and reads them.
pub(crate) fn read(words: &mut Vec<String>) -> Consent {
    let mut consent = Consent::Unsaid;
    words.retain(|word| match word.as_str() {
        "--yes" if consent != Consent::No => {
            consent = Consent::Yes;
            false
        }
        "--yes" => false,
        "--no-install" => {
            consent = Consent::No;
            false
        }
        _ => true,
    });
    consent
}

/// At a terminal after one question; without one, or with `--yes`, at once where it may.
pub(crate) fn decide(consent: Consent, terminal: bool, rights: Rights) -> Decision {
    match (consent, terminal, rights) {
        (Consent::No, _, _) | (_, _, Rights::None) | (_, false, Rights::SudoAsks) => Decision::Stop,
        (Consent::Unsaid, true, _) => Decision::AskFirst,
        _ => Decision::Install,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_is_asked_once_at_a_terminal_and_never_where_nobody_can_answer() {
        use Rights::{Enough, None, Sudo, SudoAsks};
        for rights in [Enough, Sudo, SudoAsks] {
            assert_eq!(decide(Consent::Unsaid, true, rights), Decision::AskFirst);
            assert_eq!(decide(Consent::Yes, true, rights), Decision::Install);
        }
        for consent in [Consent::Unsaid, Consent::Yes] {
            assert_eq!(decide(consent, false, Enough), Decision::Install);
            assert_eq!(decide(consent, false, Sudo), Decision::Install);
            assert_eq!(decide(consent, false, SudoAsks), Decision::Stop);
            assert_eq!(decide(consent, true, None), Decision::Stop);
        }
    }

    #[test]
    fn nothing_is_installed_where_that_was_said() {
        for terminal in [true, false] {
            for rights in [Rights::Enough, Rights::Sudo, Rights::SudoAsks, Rights::None] {
                assert_eq!(decide(Consent::No, terminal, rights), Decision::Stop);
            }
        }
    }

    #[test]
    fn the_flags_are_taken_off_wherever_they_stand_and_no_goes_before_yes() {
        let read = |words: &str| {
            let mut words: Vec<String> = words.split(' ').map(str::to_owned).collect();
            let consent = super::read(&mut words);
            (consent, words.join(" "))
        };
        assert_eq!(read("test --yes --only rust"), (Consent::Yes, "test --only rust".into()));
        assert_eq!(read("app --caseload"), (Consent::Unsaid, "app --caseload".into()));
        assert_eq!(read("app --no-install --yes"), (Consent::No, "app".into()));
        assert_eq!(read("app --yes --no-install"), (Consent::No, "app".into()));
    }
}
