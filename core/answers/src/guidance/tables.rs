//! The tables as they are shipped, read once.
//!
//! A table that can't be read is an error that names its file and line, and is told when a
//! record is opened: nothing starts without its rules.

use once_cell::sync::OnceCell;
use serde::{de::DeserializeOwned, Deserialize};

use super::rows::{Advice, CautionSource, Evidence, KeepingRow, PublishedIntake, Rule, Term};
use crate::trouble::{Kind, Trouble};

/// All that is shipped.
#[derive(Debug, Default)]
pub(super) struct Tables {
    pub(super) rules: Vec<Rule>,
    pub(super) evidence: Vec<Evidence>,
    pub(super) cautions: Vec<CautionSource>,
    pub(super) advice: Vec<Advice>,
    pub(super) intake: PublishedIntake,
    pub(super) terms: Vec<Term>,
    pub(super) keeping: Vec<KeepingRow>,
}

/// A table that can't be read.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{file}, line {line}: {why}")]
pub(super) struct BrokenTable {
    file: &'static str,
    /// Counted from one.
    line: usize,
    why: String,
}

impl From<BrokenTable> for Trouble {
    fn from(broken: BrokenTable) -> Self {
        Trouble::new(Kind::Fault, "trouble-table")
            .with("file", broken.file)
            .with("line", broken.line)
            .with("why", broken.why)
    }
}

/// One file of rules, and what else stands in some of them.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    rule: Vec<Rule>,
    #[serde(default)]
    evidence: Vec<Evidence>,
    #[serde(default)]
    caution: Vec<CautionSource>,
    #[serde(default)]
    advice: Vec<Advice>,
}

/// The file of words of the trade.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Terms {
    term: Vec<Term>,
}

/// The file of sets by which milk is kept.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Keeping {
    set: Vec<KeepingRow>,
}

/// A file's name and its text.
type Text = (&'static str, &'static str);

const RULES: &[Text] = &[
    ("supply.toml", include_str!("supply.toml")),
    ("kit.toml", include_str!("kit.toml")),
    ("night.toml", include_str!("night.toml")),
    ("cautions.toml", include_str!("cautions.toml")),
    ("comfort.toml", include_str!("comfort.toml")),
    ("caseload.toml", include_str!("caseload.toml")),
];
const INTAKE: Text = ("intake.toml", include_str!("intake.toml"));
const KEEPING: Text = ("keeping.toml", include_str!("keeping.toml"));
const TERMS: Text = ("terms.toml", include_str!("terms.toml"));

impl Tables {
    fn read(files: &[Text], intake: Text) -> Result<Self, BrokenTable> {
        let mut all = Self { intake: parsed(intake)?, ..Self::default() };
        for file in files {
            let mut file: File = parsed(*file)?;
            all.rules.append(&mut file.rule);
            all.evidence.append(&mut file.evidence);
            all.cautions.append(&mut file.caution);
            all.advice.append(&mut file.advice);
        }
        Ok(all)
    }

    fn tried() -> Result<&'static Self, BrokenTable> {
        // `get_or_try_init` is not in the standard library yet.
        static ALL: OnceCell<Tables> = OnceCell::new();
        ALL.get_or_try_init(|| {
            Ok(Self {
                terms: parsed::<Terms>(TERMS)?.term,
                keeping: parsed::<Keeping>(KEEPING)?.set,
                ..Self::read(RULES, INTAKE)?
            })
        })
    }

    /// As they are shipped. Empty only before [`check`] refused to go on.
    pub(super) fn shipped() -> &'static Self {
        static NONE: OnceCell<Tables> = OnceCell::new();
        Self::tried().unwrap_or_else(|_| NONE.get_or_init(Tables::default))
    }
}

/// Reads the tables; whoever opens a record calls it first.
///
/// # Errors
/// A fault that names the file and the line, where one can't be read.
pub fn check() -> Result<(), Trouble> {
    Ok(Tables::tried().map(|_| ())?)
}

fn parsed<T: DeserializeOwned>((file, text): Text) -> Result<T, BrokenTable> {
    toml::from_str(text).map_err(|error| {
        let before = error.span().and_then(|span| text.get(..span.start)).unwrap_or_default();
        BrokenTable { file, line: before.matches('\n').count() + 1, why: error.message().to_owned() }
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_shipped_can_be_read() {
        assert_eq!(Tables::tried().map(|_| ()), Ok(()));
        assert!(check().is_ok());
    }

    #[test]
    fn a_broken_table_is_told_with_its_file_and_line() {
        let whole = "[[rule]]\nkey = \"a\"\nvalue = 1\nunit = \"\"\nleast = 0\nmost = 2\nsource = \"s\"\nyear = 2020\n";
        assert!(Tables::read(&[("a.toml", whole)], INTAKE).is_ok());

        let no_number: &'static str =
            "[[rule]]\nkey = \"a\"\nvalue = \"much\"\nunit = \"\"\nleast = 0\nmost = 2\nsource = \"s\"\nyear = 2020\n";
        let broken = Tables::read(&[("a.toml", whole), ("b.toml", no_number)], INTAKE).unwrap_err();
        assert_eq!((broken.file, broken.line), ("b.toml", 3));
        assert!(broken.why.contains("much"), "{}", broken.why);

        let unknown = Tables::read(&[("c.toml", "rule = []\nruel = []\n")], INTAKE).unwrap_err();
        assert_eq!((unknown.file, unknown.line), ("c.toml", 2));

        let cut = Tables::read(&[], ("intake.toml", "[curve")).unwrap_err();
        assert_eq!((cut.file, cut.line), ("intake.toml", 1));
    }

    #[test]
    fn a_person_is_told_where_it_is() {
        let broken = BrokenTable { file: "b.toml", line: 3, why: "invalid type".into() };
        let trouble = Trouble::from(broken);
        assert_eq!((trouble.kind, trouble.key), (Kind::Fault, "trouble-table"));
        let needs = [("file", "b.toml".into()), ("line", 3_usize.into()), ("why", "invalid type".into())];
        assert_eq!(trouble.needs, needs);
    }
}
