//! Networks for tests: an invented one that is taken in, and one of bare rows.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::OnceLock;

use drawwell_network::invented::{self, Truth};
use drawwell_network::pseudonym::{NetworkKey, Of};
use drawwell_network::store::ledger::Entry;
use drawwell_network::store::objects::Objects;
use drawwell_network::store::{Change, Store};
use drawwell_network::table::{Families, FollowUp, IntoRow, Row, Trends};
use drawwell_network::take_in::{self, Summary, TakeIn};
use tempfile::TempDir;

pub(crate) fn key() -> NetworkKey {
    NetworkKey::from_hex(&"5a".repeat(32)).unwrap()
}

pub(crate) fn store_in(folder: &Path, buckets: u32) -> Store {
    Store::create(Objects::in_folder(folder).unwrap(), &key(), "network", buckets).unwrap()
}

pub(crate) fn take(store: &Store, site: &str, from: &[PathBuf]) -> Summary {
    let by = TakeIn { key: &key(), site, now: invented::present() };
    take_in::run(store, by, from, &|_, _| ()).unwrap()
}

pub(crate) fn pseudonym(truth: &Truth) -> String {
    // A record in the exchange form is named after its file where it says no family.
    key().pseudonym(Of::Family, &format!("file:{}.jsonl", truth.family)).unwrap()
}

/// An invented network, taken in.
pub(crate) struct Network {
    pub(crate) folder: TempDir,
    pub(crate) store: Store,
    pub(crate) truth: Vec<Truth>,
}

impl Network {
    pub(crate) fn of(seed: u64, families: u64) -> Self {
        let folder = tempfile::tempdir().unwrap();
        let truth = invented::write(&folder.path().join("desks"), seed, families).unwrap();
        let store = store_in(&folder.path().join("store"), 8);
        for site in ["site-a", "site-b", "site-c", "site-d"] {
            let desk = folder.path().join("desks").join(site);
            if desk.is_dir() {
                take(&store, site, &[desk]);
            }
        }
        Self { folder, store, truth }
    }

    /// The one that tests only read.
    pub(crate) fn shared() -> &'static Self {
        static SHARED: OnceLock<Network> = OnceLock::new();
        SHARED.get_or_init(|| Self::of(24, 90))
    }

    pub(crate) fn counted(&self) -> impl Iterator<Item = &Truth> {
        self.truth.iter().filter(|truth| truth.consent == "yes")
    }

    /// The rows of a table, from the files themselves.
    pub(crate) fn rows(&self, table: &str) -> Vec<Row> {
        let mut all = Vec::new();
        for bucket in 0..self.store.buckets() {
            all.extend(self.store.read(bucket).unwrap().rows.remove(table).unwrap_or_default());
        }
        all
    }
}

/// A family as bare rows: for what only counts families.
pub(crate) fn bare(number: usize, site: &str, gestation_days: Option<i64>, heading: &'static str) -> (String, Change) {
    let family = key().pseudonym(Of::Family, &format!("bare-{number}")).unwrap();
    let about = Families {
        family: family.clone(),
        site: site.to_owned(),
        scope: "network",
        gestation_days,
        gestation_days_why: gestation_days.is_none().then_some("not_said"),
        children: 1,
        first_day: Some(0),
        first_day_why: None,
        last_day: Some(30),
        last_day_why: None,
        sessions: 200,
        pumps: 0,
    };
    let trend = Trends {
        family: family.clone(),
        level_tenths: None,
        level_low: None,
        level_high: None,
        level_tenths_why: Some("needs_days"),
        week_tenths: None,
        week_low: None,
        week_high: None,
        week_tenths_why: Some("needs_days"),
        heading,
        days: 28,
        complete_days: 20,
    };
    let follow_up = FollowUp {
        family: family.clone(),
        last_day: Some(30),
        last_day_why: None,
        silent_days: Some(0),
        silent_days_why: None,
        ends_by_plan: 0,
    };
    let rows: BTreeMap<&'static str, Vec<Row>> = BTreeMap::from([
        (Families::TABLE.name, vec![about.into_row()]),
        (Trends::TABLE.name, vec![trend.into_row()]),
        (FollowUp::TABLE.name, vec![follow_up.into_row()]),
    ]);
    let entry = Entry::Counted { heads: number.to_string(), changed: 1, given: 1, until: None };
    (family.clone(), Change { put: BTreeMap::from([(family, (rows, entry))]), gone: BTreeMap::new() })
}

/// Puts bare families into a store of one bucket, all at once.
pub(crate) fn put_all(store: &Store, all: impl IntoIterator<Item = Change>) {
    let mut together = Change::default();
    for change in all {
        together.put.extend(change.put);
        together.gone.extend(change.gone);
    }
    store.change(0, &together).unwrap();
}
