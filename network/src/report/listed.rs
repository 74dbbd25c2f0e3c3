//! The ten reports, each one SQL text with what it is on top of it.

use crate::trouble::Stop;

/// Between what counts families into cells and what is told of the cells.
const THEN: &str = "-- then\n";

macro_rules! reports {
    ($($name:literal),* $(,)?) => {
        /// All of them, as they are written.
        pub const REPORTS: &[Text] = &[$(Text { name: $name, sql: include_str!(concat!("../../reports/", $name, ".sql")) }),*];
    };
}

reports!["production", "volume", "first_week", "trends", "not_known", "wear", "checks", "pain", "refill", "follow_up"];

/// A report as it is written.
#[derive(Debug, Clone, Copy)]
pub struct Text {
    /// Its name.
    pub name: &'static str,
    sql: &'static str,
}

/// How a report is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shape {
    /// Lines over a number.
    Lines,
    /// Bars beside each other.
    Bars,
}

/// A report.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Report {
    /// Its name.
    pub name: &'static str,
    /// What it answers.
    pub question: &'static str,
    /// The unit of its figures.
    pub unit: &'static str,
    /// Where they come from.
    pub source: &'static str,
    /// Its smallest cell, as it stands on top of it.
    pub smallest: i64,
    /// The columns that say which cell a row is.
    pub cells: Vec<&'static str>,
    /// Those of them within which the other cells part the families.
    pub stratum: Vec<&'static str>,
    /// Figures that need more families.
    pub wide: Vec<&'static str>,
    /// How it is drawn, and along which column; a line or bar for each other cell.
    pub picture: (Shape, &'static str),
    text: &'static str,
}

impl Report {
    /// The report of a name.
    ///
    /// # Errors
    /// Where there is none, or it does not say on top what it is.
    pub fn named(name: &str) -> Result<Self, Stop> {
        let names = || REPORTS.iter().map(|text| text.name).collect::<Vec<_>>().join(", ");
        let text = REPORTS.iter().find(|text| text.name == name);
        Self::read(*text.ok_or_else(|| Stop::refused(format!("there is no report {name}; there are {}", names())))?)
    }

    /// Every report.
    ///
    /// # Errors
    /// As [`Self::named`].
    pub fn all() -> Result<Vec<Self>, Stop> {
        REPORTS.iter().copied().map(Self::read).collect()
    }

    fn read(text: Text) -> Result<Self, Stop> {
        let lacks = |key: &str| Stop::refused(format!("{}.sql does not say its {key}", text.name));
        let says = |key: &'static str| {
            let line = text.sql.lines().find_map(|line| line.strip_prefix("-- ")?.strip_prefix(key)?.strip_prefix(':'));
            line.map(str::trim).ok_or_else(|| lacks(key))
        };
        let list = |key| Ok::<Vec<&str>, Stop>(says(key)?.split(", ").filter(|word| !word.is_empty()).collect());
        let picture: Vec<&str> = says("picture")?.split(' ').collect();
        let picture = match picture.as_slice() {
            ["lines", along] => (Shape::Lines, *along),
            ["bars", along] => (Shape::Bars, *along),
            _ => return Err(lacks("picture")),
        };
        if says("report")? != text.name || !text.sql.contains(THEN) {
            return Err(lacks("report"));
        }
        Ok(Self {
            name: text.name,
            question: says("question")?,
            unit: says("unit")?,
            source: says("source")?,
            smallest: says("smallest")?.parse().map_err(|_| lacks("smallest"))?,
            cells: list("cells")?,
            stratum: list("stratum")?,
            wide: list("wide")?,
            picture,
            text: text.sql,
        })
    }

    /// Its SQL, whole.
    pub fn sql(&self) -> String {
        self.text.to_owned()
    }

    /// The families of each cell: `cell` says which, by its columns.
    pub fn members(&self) -> String {
        let counted = self.text.split_once(THEN).map_or("", |(counted, _)| counted).trim_end().trim_end_matches(',');
        let columns: Vec<String> = self.cells.iter().map(|name| format!("CAST({name} AS VARCHAR)")).collect();
        format!(
            "{counted}\nSELECT DISTINCT {} AS cell, family FROM cells",
            columns.join(&format!(" || '{BETWEEN}' || "))
        )
    }
}

/// Between the columns of a cell's name.
pub const BETWEEN: char = '|';
