//! Taking in: families who said yes become rows, and those who took it back are no more there.

use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::Mutex;

use chrono::NaiveDate;
use drawwell_core::gather::consent;
use drawwell_core::record::ConsentScope;
use drawwell_core::time::{Instant, LocalDay, Moment, Zone};
use drawwell_core::trouble::Trouble;

use crate::family::{self, KnownAs, Rows};
use crate::pseudonym::{NetworkKey, Of};
use crate::source::{sources, Source};
use crate::store::ledger::Entry;
use crate::store::{Change, Store};
use crate::table::{IntoRow, Refused};
use crate::trouble::Stop;

/// Files that are worked out before their buckets are written: what is in memory at once.
const AT_ONCE: usize = 2000;

/// What came of taking in, in families or files.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Summary {
    /// Families whose rows were written.
    pub counted: u64,
    /// Those that had not changed.
    pub unchanged: u64,
    /// Those of whom a later copy was taken in before, here or by another desk.
    pub older: u64,
    /// Those that did not say yes, or not to this.
    pub no_consent: u64,
    /// Those that took their yes back, or whose yes ended: proved to be gone.
    pub withdrawn: u64,
    /// Files that could not be read.
    pub refused: u64,
}

/// Who takes in, for which unit, and when.
#[derive(Debug, Clone, Copy)]
pub struct TakeIn<'a> {
    /// The network's key.
    pub key: &'a NetworkKey,
    /// The unit.
    pub site: &'a str,
    /// The present.
    pub now: Instant,
}

/// What became of a file.
enum Outcome {
    Counted { pseudonym: String, rows: Rows, entry: Entry, changed: i64 },
    Silent { pseudonym: String, withdrawn: Option<i64>, changed: i64 },
    Unchanged,
    Refused { why: Trouble, heads: String },
}

/// Whether a unit's name can stand in a row.
///
/// # Errors
/// Where it can't.
pub fn check_site(site: &str) -> Result<(), Stop> {
    let plain = |c: char| c.is_ascii_alphanumeric() || matches!(c, '_' | '-');
    match (1..=32).contains(&site.len()) && site.chars().all(plain) {
        true => Ok(()),
        false => Err(Stop::refused("a site is named by 1 to 32 letters, figures, _ and -")),
    }
}

/// Takes in everything that was named. `progress` hears how many files of how many are done.
///
/// # Errors
/// Where the store can't be written. A file that can't be read is a row in `refused`.
pub fn run(
    store: &Store,
    by: TakeIn<'_>,
    named: &[PathBuf],
    progress: &(dyn Fn(usize, usize) + Sync),
) -> Result<Summary, Stop> {
    check_site(by.site)?;
    let scope = ConsentScope::named(store.scope()).ok_or_else(|| Stop::refused("the store has no scope"))?;
    let mut summary = Summary { withdrawn: forget_ended(store, today(by.now))?, ..Summary::default() };
    let mut all = Vec::new();
    for path in named {
        all.extend(sources(path)?);
    }
    let done = AtomicUsize::new(0);
    for some in all.chunks(AT_ONCE) {
        let heads = known_heads(store)?;
        let outcomes =
            work_out(some, by, scope, &heads, &|| progress(done.fetch_add(1, Ordering::Relaxed) + 1, all.len()));
        write(store, by, outcomes?, &mut summary)?;
    }
    Ok(summary)
}

/// Takes out the families whose yes has ended; how many there were.
///
/// # Errors
/// Where the store can't be read or written.
pub fn forget_ended(store: &Store, today: NaiveDate) -> Result<u64, Stop> {
    let today = iso(today);
    let mut count = 0;
    for bucket in 0..store.buckets() {
        let ended = |entry: &Entry| matches!(entry, Entry::Counted { until: Some(until), .. } if *until < today);
        let ledger = store.ledger(bucket)?;
        let gone: BTreeMap<_, _> =
            ledger.0.iter().filter(|(_, entry)| ended(entry)).map(|(family, _)| (family.clone(), None)).collect();
        if gone.is_empty() {
            continue;
        }
        let change = Change { gone, ..Change::default() };
        store.change(bucket, &change)?;
        change.gone.keys().try_for_each(|family| store.prove_gone(family))?;
        count += change.gone.len() as u64;
    }
    Ok(count)
}

fn iso(day: NaiveDate) -> String {
    day.format("%Y-%m-%d").to_string()
}

/// The date by UTC: a yes that ends today holds to the day's end.
pub fn today(now: Instant) -> NaiveDate {
    LocalDay::of(&Moment::new(now, Zone::UTC), drawwell_core::time::DayStart::MIDNIGHT).date()
}

fn known_heads(store: &Store) -> Result<BTreeSet<String>, Stop> {
    let mut known = BTreeSet::new();
    for bucket in 0..store.buckets() {
        known.extend(store.ledger(bucket)?.0.into_values().filter_map(|entry| match entry {
            Entry::Counted { heads, .. } => Some(heads),
            Entry::Withdrawn { .. } | Entry::Refused { .. } => None,
        }));
    }
    Ok(known)
}

/// Works files out on all cores; what came of each, in their order.
fn work_out(
    files: &[Source],
    by: TakeIn<'_>,
    scope: ConsentScope,
    known: &BTreeSet<String>,
    progress: &(dyn Fn() + Sync),
) -> Result<Vec<(Source, Outcome)>, Stop> {
    let next = AtomicUsize::new(0);
    let found: Mutex<Vec<(usize, Result<Outcome, Stop>)>> = Mutex::new(Vec::new());
    let threads = std::thread::available_parallelism().map_or(1, usize::from).min(files.len().max(1));
    std::thread::scope(|on| {
        for _ in 0..threads {
            on.spawn(|| loop {
                let at = next.fetch_add(1, Ordering::Relaxed);
                let Some(source) = files.get(at) else { break };
                let outcome = one(source, by, scope, known);
                if let Ok(mut found) = found.lock() {
                    found.push((at, outcome));
                }
                progress();
            });
        }
    });
    let mut found = found.into_inner().map_err(|_| Stop::refused("a thread stopped"))?;
    if found.len() != files.len() {
        return Err(Stop::refused("a thread stopped"));
    }
    found.sort_by_key(|(at, _)| *at);
    found.into_iter().zip(files).map(|((_, outcome), source)| Ok((source.clone(), outcome?))).collect()
}

fn one(source: &Source, by: TakeIn<'_>, scope: ConsentScope, known: &BTreeSet<String>) -> Result<Outcome, Stop> {
    let heads = match source.heads() {
        Ok(heads) if known.contains(&heads) => return Ok(Outcome::Unchanged),
        Ok(heads) => heads,
        Err(why) => return Ok(Outcome::Refused { why, heads: String::new() }),
    };
    match worked_out(source, by, scope, &heads) {
        Err(Stop::Record(why)) => Ok(Outcome::Refused { why, heads }),
        other => other,
    }
}

fn worked_out(source: &Source, by: TakeIn<'_>, scope: ConsentScope, heads: &str) -> Result<Outcome, Stop> {
    let opened = source.open(by.now)?;
    let pseudonym = by.key.pseudonym(Of::Family, &opened.family)?;
    let record = opened.record()?;
    // A yes holds or not by the present, and not by when the record was shared.
    let at_present = drawwell_core::gather::Record::new(&opened.journal, by.now, record.zone)?;
    let changed = opened.changed.unix_milliseconds();
    let withdrawn = consent::withdrawn(&at_present)?.map(Instant::unix_milliseconds);
    let given = consent::holding(&at_present)?.filter(|given| given.scope >= scope);
    let Some(given) = given else {
        return Ok(Outcome::Silent { pseudonym, withdrawn, changed });
    };
    let rows = family::rows(&record, KnownAs { pseudonym: &pseudonym, site: by.site, scope: given.scope })?;
    let entry = Entry::Counted {
        heads: heads.to_owned(),
        changed,
        given: given.at.unix_milliseconds(),
        until: given.until.map(iso),
    };
    Ok(Outcome::Counted { pseudonym, rows, entry, changed })
}

/// Brings what came of files together with what is kept, and writes the buckets that change.
fn write(
    store: &Store,
    by: TakeIn<'_>,
    mut outcomes: Vec<(Source, Outcome)>,
    summary: &mut Summary,
) -> Result<(), Stop> {
    // Of one family from two desks the later copy counts, whatever order they came in. Where
    // both changed last at once, one that holds no yes goes first.
    outcomes.sort_by_key(|(_, outcome)| match outcome {
        Outcome::Counted { changed, .. } => (*changed, 0),
        Outcome::Silent { changed, .. } => (*changed, 1),
        Outcome::Unchanged | Outcome::Refused { .. } => (0, 0),
    });
    let mut changes: BTreeMap<u32, Change> = BTreeMap::new();
    let mut ledgers: BTreeMap<u32, BTreeMap<String, Entry>> = BTreeMap::new();
    for (source, outcome) in outcomes {
        let of_source = by.key.pseudonym(Of::Source, &format!("{}/{}", by.site, source.name()))?;
        let pseudonym = match &outcome {
            Outcome::Counted { pseudonym, .. } | Outcome::Silent { pseudonym, .. } => pseudonym.clone(),
            Outcome::Unchanged | Outcome::Refused { .. } => of_source.clone(),
        };
        for bucket in [store.bucket_of(&pseudonym), store.bucket_of(&of_source)] {
            if let std::collections::btree_map::Entry::Vacant(vacant) = ledgers.entry(bucket) {
                vacant.insert(store.ledger(bucket)?.0);
            }
        }
        let bucket = store.bucket_of(&pseudonym);
        let of_sources = store.bucket_of(&of_source);
        let refused_before = ledgers.get(&of_sources).is_some_and(|ledger| ledger.contains_key(&of_source));
        if refused_before && !matches!(outcome, Outcome::Refused { .. }) {
            changes.entry(of_sources).or_default().gone.insert(of_source.clone(), None);
        }
        let Some(ledger) = ledgers.get_mut(&bucket) else { continue };
        let before = ledger.get(&pseudonym).cloned();
        let change = changes.entry(bucket).or_default();
        match outcome {
            Outcome::Unchanged => summary.unchanged += 1,
            Outcome::Refused { why, heads } => {
                summary.refused += 1;
                let row = Refused { family: pseudonym.clone(), site: by.site.to_owned(), why: why.key.to_owned() };
                let rows = Rows::from([(Refused::TABLE.name, vec![row.into_row()])]);
                change.put.insert(pseudonym, (rows, Entry::Refused { heads }));
            }
            Outcome::Counted { rows, entry, changed, .. } => {
                let given_at = match &entry {
                    Entry::Counted { given, .. } => *given,
                    Entry::Withdrawn { .. } | Entry::Refused { .. } => changed,
                };
                match before {
                    Some(Entry::Withdrawn { at }) if given_at <= at => summary.withdrawn += 1,
                    Some(Entry::Counted { changed: known, .. }) if known > changed => summary.older += 1,
                    _ => {
                        summary.counted += 1;
                        ledger.insert(pseudonym.clone(), entry.clone());
                        change.gone.remove(&pseudonym);
                        change.put.insert(pseudonym, (rows, entry));
                    }
                }
            }
            Outcome::Silent { withdrawn, changed, .. } => {
                let counted = match before {
                    Some(Entry::Counted { changed: known, given, .. }) => Some((known, given)),
                    _ => None,
                };
                let ends = match counted {
                    Some((known, given)) => changed >= known || withdrawn.is_some_and(|at| at >= given),
                    None => false,
                };
                let tombstone = match (&before, withdrawn) {
                    (Some(Entry::Withdrawn { at }), Some(again)) => Some((*at).max(again)),
                    (_, Some(at)) => Some(at),
                    (Some(Entry::Withdrawn { at }), None) => Some(*at),
                    (_, None) => None,
                };
                match (counted, ends) {
                    (Some(_), false) => summary.older += 1,
                    (counted, _) => {
                        if counted.is_some() {
                            summary.withdrawn += 1;
                        } else {
                            summary.no_consent += 1;
                        }
                        let entry = tombstone.map(|at| Entry::Withdrawn { at });
                        if counted.is_some() || (entry.is_some() && entry != before) {
                            change.put.remove(&pseudonym);
                            match &entry {
                                Some(entry) => ledger.insert(pseudonym.clone(), entry.clone()),
                                None => ledger.remove(&pseudonym),
                            };
                            change.gone.insert(pseudonym, entry);
                        }
                    }
                }
            }
        }
    }
    for (bucket, change) in changes.iter().filter(|(_, change)| !change.is_empty()) {
        store.change(*bucket, change)?;
        change.gone.keys().try_for_each(|family| store.prove_gone(family))?;
    }
    Ok(())
}
