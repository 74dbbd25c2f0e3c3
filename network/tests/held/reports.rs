//! Every report, worked out by the engine, equals what plain loops over the rows give; and what
//! is true of the invented families is what stands in the rows.

use std::collections::{BTreeMap, BTreeSet};

use drawwell_network::report::engine::Engine;
use drawwell_network::report::written::{write, As};
use drawwell_network::report::{small_cells, Report, Rule};
use drawwell_network::table::{Cell, Row, Table};

use crate::shared::{pseudonym, Network};

/// A row by the names of its columns.
struct Read<'r>(&'static Table, &'r Row);

impl Read<'_> {
    fn cell(&self, name: &str) -> &Cell {
        &self.1[self.0.columns.iter().position(|column| column.name == name).unwrap()]
    }
    fn whole(&self, name: &str) -> Option<i64> {
        self.cell(name).whole()
    }
    fn text(&self, name: &str) -> String {
        self.cell(name).text().unwrap().to_owned()
    }
}

fn each<T>(network: &Network, table: &str, mut of: impl FnMut(Read<'_>) -> Option<T>) -> Vec<T> {
    let declared = Table::named(table).unwrap();
    network.rows(table).iter().filter_map(|row| of(Read(declared, row))).collect()
}

fn born(days: Option<i64>) -> &'static str {
    match days {
        None => "unknown",
        Some(..196) => "under 28",
        Some(196..224) => "28 to 31",
        Some(224..259) => "32 to 36",
        Some(259..) => "37 and more",
    }
}

/// The value below which a share lies, in tenths: the smallest that enough lie at or below (what
/// NumPy calls `inverted_cdf`; Hyndman and Fan 1996, definition 1).
fn percentile(values: &[i64], tenths: usize) -> i64 {
    let mut sorted = values.to_vec();
    sorted.sort_unstable();
    let place = (sorted.len() * tenths).div_ceil(10).max(1);
    sorted[place - 1]
}

type Cells = BTreeMap<Vec<Cell>, Vec<i64>>;

fn percentiles(cells: Cells) -> BTreeSet<Row> {
    let row = |(mut cell, values): (Vec<Cell>, Vec<i64>)| {
        cell.push(Cell::Whole(values.len() as i64));
        cell.extend([1, 5, 9].map(|tenths| Cell::Whole(percentile(&values, tenths))));
        cell
    };
    cells.into_iter().map(row).collect()
}

fn counts(cells: Cells) -> BTreeSet<Row> {
    let row = |(mut cell, values): (Vec<Cell>, Vec<i64>)| {
        cell.push(Cell::Whole(values.len() as i64));
        cell
    };
    cells.into_iter().map(row).collect()
}

fn gestations(network: &Network) -> BTreeMap<String, &'static str> {
    each(network, "families", |row| Some((row.text("family"), born(row.whole("gestation_days"))))).into_iter().collect()
}

fn sites(network: &Network) -> BTreeMap<String, String> {
    each(network, "families", |row| Some((row.text("family"), row.text("site")))).into_iter().collect()
}

/// A report by plain loops.
fn by_loops(network: &Network, name: &str) -> BTreeSet<Row> {
    let (born, sites) = (gestations(network), sites(network));
    let days = || {
        each(network, "days", |row| {
            let of_day = (row.whole("sessions").unwrap(), row.whole("night_sessions").unwrap());
            Some((row.text("family"), row.whole("day")?, row.whole("made_tenths"), of_day))
        })
    };
    let mut cells = Cells::new();
    let mut add = |cell: Vec<Cell>, value: i64| cells.entry(cell).or_default().push(value);
    match name {
        "production" => {
            for (family, day, made, _) in days() {
                if let Some(made) = made.filter(|_| (0..=60).contains(&day)) {
                    add(vec![born[&family].into(), day.into()], made);
                }
            }
            percentiles(cells)
        }
        "volume" => {
            for (family, day, made, _) in days() {
                let Some(made) = made else { continue };
                let (target, least) = match day {
                    14 => ("500 mL on day 14", 5000),
                    21 => ("650 g on day 21", 6311),
                    _ => continue,
                };
                let reached = if made >= least { "yes" } else { "no" };
                add(vec![target.into(), born[&family].into(), reached.into()], 1);
            }
            counts(cells)
        }
        "first_week" => {
            let mut week: BTreeMap<String, (i64, i64)> = BTreeMap::new();
            let mut later = Vec::new();
            for (family, day, made, (sessions, night)) in days() {
                if (0..=5).contains(&day) {
                    let so_far = week.entry(family.clone()).or_default();
                    *so_far = (so_far.0 + sessions, so_far.1 + night);
                }
                later.extend(made.filter(|_| day == 14).map(|made| (family, made)));
            }
            for (family, made) in later {
                let Some((sessions, night)) = week.get(&family) else { continue };
                let band = match sessions {
                    ..15 => "under 15",
                    15..25 => "15 to 24",
                    25..35 => "25 to 34",
                    35.. => "35 and more",
                };
                add(vec![band.into(), if *night > 0 { "yes" } else { "no" }.into()], made);
            }
            percentiles(cells)
        }
        "trends" => {
            for (family, heading) in each(network, "trends", |row| Some((row.text("family"), row.text("heading")))) {
                add(vec![born[&family].into(), heading.into()], 1);
            }
            counts(cells)
        }
        "not_known" => {
            for (table, what, column) in [
                ("sessions", "amount", "milk_tenths"),
                ("sessions", "vacuum", "vacuum_tenths"),
                ("sessions", "pain", "pain"),
                ("days", "production", "made_tenths"),
            ] {
                let mut of: BTreeMap<String, (i64, i64)> = BTreeMap::new();
                for (family, known) in
                    each(network, table, |row| Some((row.text("family"), row.whole(column).is_some())))
                {
                    let so_far = of.entry(family).or_default();
                    *so_far = (so_far.0 + i64::from(!known), so_far.1 + 1);
                }
                for (family, (unknown, all)) in of {
                    add(vec![sites[&family].clone().into(), what.into()], unknown * 100 / all);
                }
            }
            percentiles(cells)
        }
        "wear" => {
            let mut worst: BTreeMap<(String, String), i64> = BTreeMap::new();
            for (family, grade, wear) in
                each(network, "checks", |row| Some((row.text("family"), row.text("grade"), row.whole("wear_tenths")?)))
            {
                let so_far = worst.entry((family, grade)).or_insert(wear);
                *so_far = (*so_far).min(wear);
            }
            for ((_, grade), wear) in worst {
                add(vec![grade.into()], wear);
            }
            percentiles(cells)
        }
        "checks" => {
            let order = ["meets", "cannot_tell", "above", "below"];
            let mut worst: BTreeMap<(String, String), usize> = BTreeMap::new();
            for (family, grade, verdict) in each(network, "checks", |row| {
                (row.whole("latest") == Some(1)).then(|| (row.text("family"), row.text("grade"), row.text("verdict")))
            }) {
                let place = order.iter().position(|word| *word == verdict).unwrap();
                let so_far = worst.entry((family, grade)).or_default();
                *so_far = (*so_far).max(place);
            }
            for ((_, grade), place) in worst {
                add(vec![grade.into(), order[place].into()], 1);
            }
            counts(cells)
        }
        "pain" => {
            let mut of: BTreeMap<(String, &str, &str), (i64, i64)> = BTreeMap::new();
            for (family, vacuum, over, comfortable) in each(network, "comfort", |row| {
                Some((
                    row.text("family"),
                    row.whole("vacuum_tenths"),
                    row.whole("flange_over_tenths"),
                    row.whole("comfortable")?,
                ))
            }) {
                let band = match vacuum {
                    None => "unknown",
                    Some(..1000) => "under 100 mmHg",
                    Some(1000..1500) => "100 to 149 mmHg",
                    Some(1500..2000) => "150 to 199 mmHg",
                    Some(2000..2500) => "200 to 249 mmHg",
                    Some(2500..) => "250 mmHg and more",
                };
                let fit = match over {
                    None => "unknown",
                    Some(..0) => "narrower than the nipple",
                    Some(0..20) => "under 2 mm wider",
                    Some(20..40) => "2 to 4 mm wider",
                    Some(40..) => "4 mm wider and more",
                };
                let so_far = of.entry((family, band, fit)).or_default();
                *so_far = (so_far.0 + 1 - comfortable, so_far.1 + 1);
            }
            for ((_, band, fit), (hurt, all)) in of {
                add(vec![band.into(), fit.into()], hurt * 100 / all);
            }
            percentiles(cells)
        }
        "refill" => {
            let mut of: BTreeMap<(String, i64), i64> = BTreeMap::new();
            for (family, week, rate) in each(network, "refills", |row| {
                Some((row.text("family"), row.whole("week")?, row.whole("rate_tenths")?))
            }) {
                *of.entry((family, week)).or_default() += rate;
            }
            for ((_, week), rate) in of {
                add(vec![week.into()], rate);
            }
            percentiles(cells)
        }
        "follow_up" => {
            for (family, last, silent, ends) in each(network, "follow_up", |row| {
                Some((row.text("family"), row.whole("last_day"), row.whole("silent_days"), row.whole("ends_by_plan")?))
            }) {
                let followed = match last {
                    None => "unknown",
                    Some(..14) => "under 14 days",
                    Some(14..28) => "14 to 27 days",
                    Some(28..56) => "28 to 55 days",
                    Some(56..) => "56 days and more",
                };
                let silent = match (ends, silent) {
                    (1, _) => "ends by plan",
                    (_, None) => "no session",
                    (_, Some(..7)) => "no",
                    _ => "7 days and more",
                };
                add(vec![sites[&family].clone().into(), followed.into(), silent.into()], 1);
            }
            counts(cells)
        }
        other => panic!("{other} has no loops"),
    }
}

#[test]
fn every_report_is_what_plain_loops_give() {
    let network = Network::shared();
    for partitions in [1, 3] {
        let engine = Engine::with_partitions(&network.store, Some(partitions)).unwrap();
        for report in Report::all().unwrap() {
            let found = engine.run(&report.sql()).unwrap();
            let rows: BTreeSet<Row> = found.rows.iter().cloned().collect();
            assert_eq!(rows.len(), found.rows.len(), "{}: a cell stands once", report.name);
            assert!(!rows.is_empty(), "{}: the invented network has some", report.name);
            assert_eq!(rows, by_loops(network, report.name), "{}", report.name);
        }
    }
}

/// The cells of a report part the families of a stratum, and a family counts once in each.
#[test]
fn counts_are_of_families() {
    let network = Network::shared();
    let engine = Engine::over(&network.store).unwrap();
    for report in Report::all().unwrap() {
        let members = engine.run(&report.members()).unwrap();
        let found = engine.run(&report.sql()).unwrap();
        let at = found.columns.iter().position(|column| column == "families").unwrap();
        let told: i64 = found.rows.iter().filter_map(|row| row[at].whole()).sum();
        assert_eq!(members.rows.len() as i64, told, "{}", report.name);
        assert!(found.rows.iter().all(|row| row.iter().all(|cell| *cell != Cell::Null)), "{}", report.name);
    }
}

/// What is invented comes back: gestation, sessions, what was not known, pumps and their wear.
#[test]
fn the_rows_are_what_is_true_of_the_families() {
    let network = Network::shared();
    let mut made = Vec::new();
    let mut all: BTreeMap<(&str, String), Vec<Row>> = BTreeMap::new();
    for table in ["families", "sessions", "checks", "days"] {
        for row in network.rows(table) {
            all.entry((table, row[0].text().unwrap().to_owned())).or_default().push(row);
        }
    }
    for truth in network.counted() {
        let family = pseudonym(truth);
        let of = |table: &'static str| all.get(&(table, family.clone())).cloned().unwrap_or_default();
        let declared = |table: &str| Table::named(table).unwrap();
        let about = of("families").remove(0);
        let about = Read(declared("families"), &about);
        assert_eq!(about.whole("gestation_days"), truth.gestation_days);
        assert_eq!(about.text("site"), truth.site);
        assert_eq!(about.whole("sessions"), Some((truth.followed + 1) * truth.sessions));
        assert_eq!(about.whole("last_day"), Some(truth.followed));
        let sessions = of("sessions");
        let unknown = sessions.iter().filter(|row| Read(declared("sessions"), row).whole("milk_tenths").is_none());
        assert_eq!(unknown.count() as i64, truth.unknown);
        let checks = of("checks");
        assert_eq!(checks.len() as i64, truth.checks);
        assert!(checks.iter().all(|row| Read(declared("checks"), row).text("grade") == truth.grade));
        // From when it came to volume on, a day makes the plateau, give or take a sixth.
        for row in of("days") {
            let row = Read(declared("days"), &row);
            let settled = row.whole("day").unwrap() > truth.comes_in && row.whole("day").unwrap() < truth.followed;
            if let Some(tenths) = row.whole("made_tenths").filter(|_| settled) {
                made.push(tenths as f64 / (10 * truth.plateau) as f64);
            }
        }
    }
    let mean = made.iter().sum::<f64>() / made.len() as f64;
    assert!(made.len() > 500 && (0.95..1.05).contains(&mean), "{mean} of {} days", made.len());
    assert!(made.iter().all(|share| (0.7..1.35).contains(share)));
}

#[test]
fn a_report_is_written_as_table_lines_and_picture() {
    let network = Network::shared();
    let engine = Engine::over(&network.store).unwrap();
    for report in Report::all().unwrap() {
        let published = small_cells::suppress(&report, engine.run(&report.sql()).unwrap(), &Rule::CMS).unwrap();
        let csv = String::from_utf8(write(&report, &published, As::Csv).unwrap()).unwrap();
        assert_eq!(csv.lines().count(), published.rows.len() + 1);
        assert!(csv.lines().next().unwrap().ends_with(",suppressed"));
        let lines = String::from_utf8(write(&report, &published, As::JsonLines).unwrap()).unwrap();
        assert_eq!(lines.lines().count(), published.rows.len());
        let parquet = write(&report, &published, As::Parquet).unwrap();
        assert_eq!(parquet.get(..4), Some(b"PAR1".as_slice()));
        let svg = String::from_utf8(write(&report, &published, As::Picture).unwrap()).unwrap();
        assert!(svg.starts_with("<svg") && svg.trim_end().ends_with("</svg>"), "{}", report.name);
    }
}

#[test]
fn a_report_says_how_it_is_worked_out() {
    let network = Network::shared();
    let engine = Engine::over(&network.store).unwrap();
    let told = engine.explain(&Report::named("production").unwrap().sql()).unwrap();
    assert!(told.contains("files, ") && told.contains("bytes"), "{told}");
    assert!(Report::named("everything").unwrap_err().to_string().contains("production"));
}
